"""Do the entries of the upright, its bolts and its welds agree."""

from math import inf

from rules.checks.agreement.tie import PRACTICE, T, by_id, family, impossible, not_compared, odd, tied, tied_to_thread
from rules.graph.bands import AtMost, Between, at_most
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.closeness import within
from rules.measure.marks import Thread
from rules.measure.units import Mm, MPa, Newton, Ratio
from rules.sheet.confirmed import Confirmed
from rules.strength.bearing import MOST_BEYOND_ROWS
from rules.tables.materials import AS_BOUGHT, Metal, lowest
from rules.tables.sources import COMMON_PRACTICE, GEOMETRY
from rules.tables.static_safety import RollingElement

END = "the upright's end, from the wheel centre to the pivot"
AT_PIVOT = "the section lies between the wheel centre and the pivot, near the middle"
CLEAR_OF_HUB = "the section lies just clear of the hub and its bolts, so beyond half of their spacing"
ALIKE = "both are the thickness of the same piece"
ALONG = "a weld is not longer than what it runs along"
LENGTHS = (
    T("section-above-below-pivot", "Upper section and pivot", "upright.section_above", "upper_above_spindle",
      usual=(0.36, 0.7), never=(0.05, 1.0), other_called="the upper pivot's height above the wheel centre", why=AT_PIVOT),
    T("section-below-above-pivot", "Lower section and pivot", "upright.section_below", "pivots.lower_below_spindle",
      usual=(0.36, 0.7), never=(0.05, 1.0), why=AT_PIVOT),
    T("section-above-clear-of-hub", "Upper section and hub bolts", "upright.section_above", "hub.mount_height",
      usual=(0.5, 0.98), never=(0.5, 5.0), why=CLEAR_OF_HUB),
    T("section-below-clear-of-hub", "Lower section and hub bolts", "upright.section_below", "hub.mount_height",
      usual=(0.5, 0.98), never=(0.5, 5.0), why=CLEAR_OF_HUB),
    T("arm-length-and-tie-rod-end", "Steering arm and tie-rod end", "upright.steering_arm_length", "tie_rod_end_ahead",
      how="size", usual=(0.6, 1.18), never=(0.1, 4.0), other_called="the tie-rod end's distance ahead of the wheel centre",
      why="the arm begins beside the hub and ends at the tie rod"),
    T("arm-length-and-its-weld", "Steering arm and its weld", "upright.steering_arm_length", "steering_arm_reach",
      usual=(0.94, 1.07), never=(0.86, 1.16), other_called="the tie-rod end's distance from the arm's weld",
      why="the arm reaches from its weld to the tie-rod end"),
    T("arm-root-and-tie-rod-end", "Steering arm's root and end", "upright.steering_arm_root_above",
      "steering.tie_rod_above", how="more", usual=(-60.0, 60.0),
      why="an arm steps up or down little, for each step twists it"),
    T("beam-inside-plate", "Beam and plate width", "upright.beam_width", "plate.width",
      usual=(0.33, 0.65), never=(0.0, 1.0), why="the beam stands on the plate and leaves room for its welds"),
    T("beam-nearly-square", "Beam depth and width", "upright.beam_depth", "upright.beam_width",
      usual=(0.6, 1.18), why="boxes and channels are about as deep as wide"),
    T("beam-wall-and-plate", "Beam wall and plate", "upright.beam_wall", "plate.thickness",
      usual=(0.42, 0.82), why="a wall much thinner or thicker than the plate cannot be welded to it well"),
    T("bracket-offset-derived", "Bracket and rotor", "upright.bracket_arm_offset", "bracket_rotor_distance", how="more",
      usual=(-6.0, 6.0), other_called="the distance worked out from rotor, hub and bracket",
      why="a bracket in the plane of the plate stands so far from the rotor"),
    T("caliper-bolts-derived", "Caliper bolts and bracket", "caliper.bolts_inside", "bolts_inside_by_bracket", how="more",
      usual=(-8.0, 8.0), other_called="the place worked out from rotor, plate and bracket",
      why="a bracket on the plate's edge ends at the bolts' line"),
    T("pads-and-caliper-bolts", "Pads and the caliper's bolts", "bolts.pads_beyond_caliper_bolts", "pads_from_bolts",
      how="more", usual=(-4.0, 4.0), never=(-60.0, 60.0), other_called="the distance worked out from rotor, bolts and pads",
      why="the pads' radius and the bolts' place say how far apart they are"),
    T("caliper-bolts-apart", "Caliper bolts apart and bracket", "bolts.caliper_bolt_spacing", "plate.bracket_hole_spacing",
      how="more", usual=(-1.0, 1.0), never=(-3.0, 3.0), why="the same two bolts go through caliper and bracket"),
    T("caliper-weld-along-bracket", "Bracket weld and width", "weld_caliper_bracket.run", "upright.bracket_arm_width",
      usual=(0.9, 1.0), never=(0.1, 1.05), why="a bracket is welded along all of its width: the rest carries nothing"),
    T("caliper-weld-apart", "Bracket weld and thickness", "weld_caliper_bracket.apart", "plate.bracket_thickness",
      usual=(0.9, 1.1), never=(0.05, 15.0), why="the two runs stand on the two sides of the bracket"),
    T("arm-weld-along-arm", "Arm weld and width", "weld_steering_arm.run", "upright.steering_arm_width",
      usual=(0.6, 1.15), never=(0.1, 1.5), why=ALONG),
    T("bracket-width-in-blank", "Bracket and its blank", "upright.bracket_arm_width", "plate.bracket_width",
      usual=(0.5, 1.0), never=(0.1, 1.02), why="the bracket is cut from its blank"),
    T("arm-weld-apart", "Arm weld and height", "weld_steering_arm.apart", "upright.steering_arm_height",
      usual=(0.9, 1.1), never=(0.33, 3.0), why="the two runs stand on the two sides of the arm"),
    T("arm-weld-thickness", "Arm weld and arm", "weld_steering_arm.thickness_one", "upright.steering_arm_height",
      usual=(0.95, 1.05), why=ALIKE),
    T("upper-lug-thickness", "Upper lug and weld", "weld_upper.thickness_one", "bolts.upper_lug_thickness",
      usual=(0.95, 1.05), why=ALIKE),
    T("lower-lug-thickness", "Lower lug and weld", "weld_lower.thickness_one", "bolts.lower_lug_thickness",
      usual=(0.95, 1.05), why=ALIKE),
    T("upper-weld-along-plate", "Upper weld and plate", "weld_upper.run", "plate.width",
      usual=(0.2, 1.0), never=(0.02, 1.0), why=ALONG),
    T("lower-weld-along-plate", "Lower weld and plate", "weld_lower.run", "plate.width",
      usual=(0.2, 1.0), never=(0.02, 1.0), why=ALONG),
    T("upper-spacer-and-ball", "Upper spacer and ball", "bolts.upper_gap", "bolts.upper_ball_width",
      usual=(0.39, 0.76), why="a spacer beside a ball is about half as wide as the ball to as wide"),
    T("lower-spacer-and-ball", "Lower spacer and ball", "bolts.lower_gap", "bolts.lower_ball_width",
      usual=(0.39, 0.76), why="a spacer beside a ball is about half as wide as the ball to as wide"),
    *(
        T(f"{which}-weld-along-lug", f"{which.title()} weld and lug", f"weld_{which}.run", f"bolts.{which}_edge_distance",
          usual=(1.7, 3.3), why="the weld runs along a lug, twice as wide as its hole is from the edge or somewhat more")
        for which in ("upper", "lower")
    ),
    *(
        T(f"{which}-weld-and-lug-width", f"{which.title()} weld and lug's width", f"weld_{which}.run", f"bolts.{which}_lug_width",
          usual=(0.6, 1.0), never=(0.1, 1.05), why=ALONG)
        for which in ("upper", "lower")
    ),
    *(
        T(f"{which}-weld-on-plate", f"{called} weld and plate thickness", f"weld_{step}.thickness_two", "plate.thickness",
          usual=(0.95, 1.05), why="it stands on the plate")
        for which, called, step in (("upper", "Upper", "upper"), ("lower", "Lower", "lower"),
                                    ("bracket", "Bracket", "caliper_bracket"))
    ),
    T("bracket-weld-thickness", "Bracket weld and bracket", "weld_caliper_bracket.thickness_one", "plate.bracket_thickness",
      usual=(0.95, 1.05), why=ALIKE),
    T("arm-weld-on-beam", "Arm weld and beam", "weld_steering_arm.thickness_two", "upright.beam_wall",
      usual=(0.95, 1.05), why="the arm stands on the beam's wall"),
    T("beam-corner-and-wall", "Beam's corner and wall", "upright.beam_corner_radius", "upright.beam_wall",
      usual=(1.25, 2.45), why="the corner of a rolled section is about two walls round"),
    T("arm-wall-and-width", "Arm's wall and width", "upright.steering_arm_wall", "upright.steering_arm_width",
      usual=(0.08, 0.156), never=(0.01, 0.5), why="the wall of a tube is about a tenth of its width"),
    T("pressure-centres-and-rows", "Pressure centres and rows", "loads.pressure_centre_spread", "hub.row_spread",
      usual=(1.2, 2.35), why="the load lines of the rows meet the axle outside the rows, or between them"),
    T("tie-rod-wall-and-tube", "Tie rod's wall and tube", "loads.tie_rod_wall", "arms.tie_rod_tube",
      usual=(0.11, 0.21), never=(0.01, 0.5), why="a tie rod's wall is a tenth of its diameter to a fifth"),
    T("arm-wall-and-tube", "Arm's wall and tube", "loads.arm_wall", "arm_tube",
      usual=(0.08, 0.158), never=(0.01, 0.5), other_called="the tube of the arm without the spring",
      why="an arm's wall is about a tenth of its diameter"),
    T("spring-arm-width-and-height", "Boxed arm's width and height", "loads.spring_arm_width", "spring_arm_tube",
      usual=(0.5, 0.99), never=(0.2, 3.0), other_called="the height of the arm with the spring",
      why="a boxed arm stands on edge under its spring, half as wide as it is high or more"),
    T("seam-leg-and-wall", "Seam and wall of the beam", "upright.seam_leg", "upright.beam_wall",
      usual=(0.55, 1.05), never=(0.1, 2.0), why="a seam's leg is about as thick as the wall it holds"),
    *(
        tie
        for which in ("upper", "lower")
        for tie in (
            T(f"{which}-lug-width-and-edge", f"{which.title()} lug's width and edge", f"bolts.{which}_lug_width",
              f"bolts.{which}_edge_distance", usual=(1.5, 2.9), never=(1.0, 12.0),
              why="a lug is about twice as wide as its hole is from its edge"),
            T(f"{which}-lug-reach-derived", f"{which.title()} lug's reach", f"bolts.{which}_lug_reach",
              f"{which}_weld_lever_inboard", usual=(0.9, 1.15), never=(0.5, 2.0),
              other_called="the pivot's distance from the plate, by the other entries",
              why="a lug reaches from the plate's back to the pivot"),
        )
    ),
)  # fmt: skip
WALLS = (
    T("wall-under-arm-and-beam", "Wall under the arm and beam", "upright.arm_on_wall", "upright.beam_wall",
      usual=(0.95, 2.1), never=(0.8, 10.0), why="the arm stands on the beam's wall, bare or with a pad on it"),
)  # fmt: skip
FORCES = tuple(
    T(f"{which}-ratings-alike", f"{which.title()} joint's two ratings", f"bolts.{which}_axial_rating",
      f"bolts.{which}_radial_rating", usual=(0.13, 0.255), never=(0.005, 1.0),
      why="along its bolt a joint holds a seventh to a quarter of what it holds square to it")
    for which in ("upper", "lower")
)  # fmt: skip
STRESSES = (
    T("link-metals-alike", "Metal of arm and tie rod", "loads.arm_yield", "loads.tie_rod_yield",
      usual=(0.6, 1.18), never=(0.15, 5.0), why="the tubes of one corner are of much the same steel, the tie rod's the better"),
)  # fmt: skip
LEVER = "a weld in its usual place has this lever"
ON_THE_PLATE = (-20.0, 40.0)
"""mm; lugs stand on the plate's back, so how far inboard of it their pivot lies is no matter of where the weld is put."""
BOTH_TAPED = (-3.5, 3.5)
"""mm; the steering arm's root and end are both taped in height, and two tapes differ by an eighth of an inch."""
LEVERS = tuple(
    T(f"{name}-derived", title, f"{step}.load_{way}", derived, how="more",
      usual=BOTH_TAPED if derived == "steering_arm_lever_above" else (-6.0, 6.0),
      never=ON_THE_PLATE if derived.endswith("_weld_lever_inboard") else (-inf, inf),
      other_called="what the other entries give", why=LEVER)
    for name, title, step, way, derived in (
        ("upper-weld-lever-inboard", "Lever of the upper weld", "weld_upper", "inboard", "upper_weld_lever_inboard"),
        ("lower-weld-lever-inboard", "Lever of the lower weld", "weld_lower", "inboard", "lower_weld_lever_inboard"),
        *(
            (f"{which}-weld-lever-{way}", f"Lever of the {which} weld, {way}", f"weld_{which}", way, f"{which}_weld_lever_{way}")
            for which in ("upper", "lower")
            for way in ("ahead", "above")
        ),
        ("arm-weld-lever-ahead", "Lever of the arm's weld, ahead", "weld_steering_arm", "ahead", "steering_arm_lever_ahead"),
        ("arm-weld-lever-above", "Lever of the arm's weld, above", "weld_steering_arm", "above", "steering_arm_lever_above"),
        ("arm-weld-lever-inboard", "Lever of the arm's weld, inboard", "weld_steering_arm", "inboard",
         "steering_arm_lever_inboard"),
        ("caliper-weld-lever-ahead", "Lever of the bracket's weld, ahead", "weld_caliper_bracket", "ahead",
         "caliper_lever_ahead"),
        ("caliper-weld-lever-inboard", "Lever of the bracket's weld, inboard", "weld_caliper_bracket", "inboard",
         "caliper_lever_inboard"),
    )
)  # fmt: skip
ON_BOLTS = (
    *(
        T(f"{which}-{name}", f"{which.title()} {title}", f"bolts.{which}_{key}", f"bolts.{which}_thread", usual=usual,
          never=never, why=why, other_called="the bolt's diameter")
        for which in ("upper", "lower")
        for name, title, key, usual, never, why in (
            ("ball-and-bolt", "ball and bolt", "ball_width", (1.0, 1.95), (0.2, 6.0), "a ball is one to two bolts wide"),
            ("lug-and-bolt", "lug and bolt", "lug_thickness", (0.5, 0.98), (-inf, inf), "a lug is half a bolt thick to one"),
            ("edge-and-bolt", "lug's edge and bolt", "edge_distance", (1.4, 2.75), (0.5, 10.0),
             "a lug's edge is one and a half to three bolts from its hole"),
        )
    ),
    T("engagement-and-bolt", "Hub bolt thread and bolt", "bolts.hub_bolt_engagement", "hub.mount_bolt_thread",
      usual=(0.88, 1.75), never=(0.0, 3.0), other_called="the bolt's diameter",
      why="a nut is nearly one bolt high, a tapped hole in steel up to one and three quarters deep"),
)  # fmt: skip
RATIOS = (
    T("landing-and-bump", "Landing and bump", "loads.landing", "loads.bump",
      usual=(0.8, 1.55), why="coming down on a wheel is about as hard as a bump, to half as hard again"),
)  # fmt: skip
TIES = by_id((*LENGTHS, *WALLS, *FORCES, *STRESSES, *LEVERS, *ON_BOLTS, *RATIOS))


@check("{tie}", **family(RATIOS))
def tied_ratios(one_answer: Ratio | None, other_figure: Ratio | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family((*LENGTHS, *LEVERS)))
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(WALLS))
def tied_walls(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    if one_answer == 0:
        raise DoesNotApply("the steering arm does not stand on the middle of a flat wall")
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(FORCES))
def tied_forces(one_answer: Newton | None, other_figure: Newton | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(STRESSES))
def tied_stresses(one_answer: MPa | None, other_figure: MPa | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(ON_BOLTS))
def tied_to_bolt(one_answer: Mm | None, other_figure: Thread | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    if one_answer == 0:
        raise DoesNotApply("a ball joint's stud has no ball that a bolt goes through")
    return tied_to_thread(TIES[tie], one_answer, other_figure, confirmed)


@check(
    "pressure-centres-and-hub",
    step="loads",
    title="Pressure centres and the hub's body",
    limits=AtMost(
        "1",
        MOST_BEYOND_ROWS["ball"],
        0.87,
        other={"rollers": (MOST_BEYOND_ROWS["roller"], "1"), "least_rollers": (0.6, "1")},
    ),
    good="apart from the rows by up to {good} of the hub body's diameter, {rollers} with rollers",
    watch="to {watch}, {least_rollers} with rollers",
    stop="more: no contact angle gives that",
    source=(
        GEOMETRY.saying("apart from the rows by pitch diameter x tangent of the contact angle"),
        COMMON_PRACTICE.saying(
            "balls at up to 40 deg, seldom 45; tapered rollers at up to 30; pitch diameter 0.85 of the body"
        ),
    ),
    grade="common practice",
)
def pressure_centres_and_hub(
    pressure_centre_spread: Mm | None,
    row_spread: Mm | None,
    body_diameter: Mm | None,
    rolling_element: RollingElement | None,
    limits: AtMost,
) -> Judgement:
    """How far the load lines carry the pressure centres out of, or in from, the rows: a row is smaller than the hub round it."""
    if pressure_centre_spread is None or row_spread is None or body_diameter is None:
        bounds = {"hub.row_spread": row_spread, "body_diameter": body_diameter}
        raise not_compared(
            "pressure centres, rows and the hub's body are not all entered", pressure_centre_spread, bounds
        )
    beyond = abs(pressure_centre_spread - row_spread)
    text = (
        "Pressure centres are {pressure_centre_spread} apart and the rows {row_spread}: {beyond} from each other, in a hub "
        "{body_diameter} through its body."
    )
    figures = {"beyond": (beyond, "mm")}
    good, least = limits.good, limits.watch
    if rolling_element == "roller":
        good, least = limits.other["rollers"][0], limits.other["least_rollers"][0]
    verdict = at_most(beyond / body_diameter, good, least)
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    if verdict == "watch":
        return Judgement(
            verdict,
            f"{text} That takes a steeper contact angle than hubs have.",
            "Read both off the bearing's drawing; if there is none, leave the pressure centres out.",
            figures,
        )
    return Judgement(
        verdict,
        f"{text} The bearing's life is counted on pressure centres so far apart. That cannot be.",
        "Measure both again, or leave the pressure centres out: the rows then count.",
        figures,
    )


@check(
    "tie-rod-rating-and-reach",
    step="loads",
    title="Rating of the tie rod's joints and their size",
    limits=Between("MPa", 130.0, 255.0),
    good="{usual} on a square as wide as the housing reaches",
    watch="beyond, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def tie_rod_rating_and_reach(
    tie_rod_rating: Newton | None, tie_rod_end_reach: Mm | None, confirmed: Confirmed, limits: Between
) -> Judgement:
    """What a joint is rated for grows with the square of its size."""
    if tie_rod_rating is None or tie_rod_end_reach is None:
        bounds = {"steering.tie_rod_end_reach": tie_rod_end_reach}
        raise not_compared("the rating and the reach of the tie-rod end are not both entered", tie_rod_rating, bounds)
    text = "The joints are rated for {tie_rod_rating}, and their housing reaches {tie_rod_end_reach}"
    if limits.verdict(tie_rod_rating / tie_rod_end_reach**2) == "good":
        return Judgement("good", f"{text}: they agree.")
    return odd(f"{text}: joints of that size are seldom rated so.", "loads.tie_rod_rating", confirmed)


@check(
    "yield-suits-metal",
    step="upright",
    title="Yield on the certificate and metal",
    limits=AtMost("1", 1.8, 2.4, other={"least": (0.95, "1")}),
    good="{least} to {good} x the published figure of that metal",
    watch="to {watch} x, or less than {least} x",
    stop="more than {watch} x",
    source=COMMON_PRACTICE.saying("the range; the published figure has its own source"),
    grade="common practice",
)
def yield_suits_metal(
    certificate_yield: MPa | None, upright_material: Metal | None, confirmed: Confirmed, limits: AtMost
) -> Judgement:
    """The certificate's yield against what is published of the metal that was chosen."""
    rows = () if upright_material is None or upright_material == "other" else AS_BOUGHT[upright_material]
    if certificate_yield is None or not rows:
        why = "no yield is entered, or none is published of this metal"
        raise not_compared(why, certificate_yield, {"upright.material": upright_material})
    published = lowest(rows).yields
    figures = {"published": (published, "MPa")}
    text = f"The certificate says {{certificate_yield}}; {upright_material} has {{published}} at least."
    times = certificate_yield / published
    if within(times, limits.other["least"][0], limits.good):
        return Judgement("good", text, figures=figures)
    if limits.verdict(times) != "stop":
        return odd(text, "upright.certificate_yield", confirmed, figures)
    return impossible_of_metal(text, figures)


def impossible_of_metal(text: str, figures: dict[str, tuple[float, str]]) -> Judgement:
    """A certificate that is not of the metal that was chosen."""
    told = impossible(f"{text} It is the certificate of another metal, or in another unit.")
    return Judgement("stop", told.text, "Read yield and unit off the certificate again.", figures)
