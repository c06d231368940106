"""Do the entries of the bought parts agree: tyre, wheel, rotor, caliper, hub."""

from math import inf, pi

from rules.checks.agreement.tie import PRACTICE, T, by_id, family, impossible, not_compared, odd, renamed, tied
from rules.graph.bands import AtMost, Between, Limits
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import more_than, reaches, within
from rules.measure.marks import BoltCircle, Thread
from rules.measure.units import Kg, Mm, Newton
from rules.sheet.confirmed import Confirmed
from rules.sheet.hub import HeldTogetherBy
from rules.sheet.rotor import RotorStyle
from rules.strength.heat import GREY_IRON
from rules.tables import sources
from rules.tables.static_safety import RollingElement
from rules.values.wheel_end.hub_bolts import needs_standing_body

LENGTHS = (
    T("loaded-radius-within-tyre", "Loaded radius and tyre", "tyre.loaded_radius", "design_tyre_diameter",
      usual=(0.44, 0.495), never=(0.3, 0.505), other_called="the tyre's diameter",
      why="a tyre under its load stands lower than half of its diameter, by 1 to 8 % of it"),
    T("loaded-radius-beyond-rim", "Loaded radius and rim", "tyre.loaded_radius", "wheel.diameter",
      usual=(0.6, 1.7), never=(0.5, 3.0), why="below half of it the rim would lie on the ground"),
    T("rim-list-in-order", "Narrowest and widest rim", "tyre.rim_width_most", "tyre.rim_width_least",
      usual=(1.0, 1.6), never=(1.0, 2.5), why="the widest rim a maker allows is up to half as wide again as the narrowest"),
    T("rim-list-suits-tyre", "Rim list and tyre width", "tyre.rim_width_least", "tyre_section_width",
      usual=(0.5, 0.9), never=(0.3, 1.3), other_called="the tyre's section width",
      why="a tyre's narrowest rim is six to eight tenths of its width"),
    T("barrel-inside-wheel", "Barrel inside the wheel", "wheel.barrel_inside_diameter", "wheel.diameter", how="more",
      usual=(-60.0, -5.0), never=(-150.0, 0.0), why="the barrel lies inside the bead seats, by the metal and the drop centre"),
    T("rotor-inside-wheel", "Rotor and wheel diameter", "rotor.diameter", "wheel.diameter",
      usual=(0.5, 0.87), never=(0.25, 0.97), why="the rotor turns inside the wheel, with room for the caliper round it"),
    T("minimum-below-new", "Minimum and new thickness", "rotor.minimum_thickness", "rotor.thickness",
      usual=(0.75, 0.98), never=(0.3, 1.0), why="[0.04 to 0.12 in | 1 to 3 mm] of a new rotor may wear away"),
    T("finished-below-new", "Finished and new thickness", "rotor.finished_thickness", "rotor.thickness",
      usual=(0.25, 1.0), never=(0.1, 1.0), why="turning takes metal off"),
    T("band-on-rotor", "Braking band and rotor", "rotor.band_inside_diameter", "rotor.diameter",
      usual=(0.45, 0.78), never=(0.2, 0.95), why="the band is a ring between the hat and the edge"),
    T("bearing-before-mount-face", "Bearing and hub's mounting face", "hub.flange_to_bearing_centre", "hub.flange_to_mount_face",
      usual=(0.39, 0.77), why="the middle of the bearing lies half way to the mounting face of the hub or behind that"),
    T("hub-bolts-square", "Hub bolt spacings", "hub.mount_height", "hub.mount_width",
      usual=(0.75, 1.45), never=(0.15, 7.0), why="a hub's bolts stand in a square, or nearly"),
    T("hub-bolts-on-circle", "Hub bolts' circle and spacings", "hub.mount_circle", "hub_bolts_across", how="more",
      usual=(-2.0, 2.0), never=(-10.0, 10.0), other_called="the circle through the bolts, by their two spacings",
      why="four bolts stand on one circle"),
    T("shoulder-and-pilot", "Stub shaft's shoulder and pilot", "hub.shoulder_diameter", "hub.pilot_diameter",
      usual=(0.38, 0.75), never=(0.15, 1.2), why="the shoulder bears on the bearing's inner ring, inside the hub's body"),
    T("shoulder-inside-body", "Stub shaft's shoulder and hub body", "hub.shoulder_diameter", "hub.body_diameter",
      usual=(0.36, 0.85), never=(0.1, 0.98), why="the shaft's shoulder bears on the bearing inside the hub's body"),
    T("shaft-behind-hub-and-body", "Stub shaft and hub body", "hub.shoulder_length", "hub.body_length",
      usual=(0.2, 0.39), why="a shaft stands out behind its hub by a fifth to two fifths of the hub's length"),
    T("rows-in-hub", "Bearing rows and hub", "hub.row_spread", "hub.flange_to_mount_face",
      usual=(0.4, 0.79), never=(0.0, 1.5), why="both rows lie in the hub's body"),
    T("hub-body-like-pilot", "Hub body and pilot", "hub.body_diameter", "hub.pilot_diameter",
      usual=(0.7, 1.2), why="the body behind the flange is about as thick as the pilot before it"),
    T("donor-tyre-like", "Donor tyre and tyre", "hub.donor_tyre_diameter", "design_tyre_diameter",
      usual=(0.62, 1.2), other_called="the tyre's diameter",
      why="a hub's own car ran a tyre of the same kind of size, seldom a larger one"),
)  # fmt: skip
MASSES = (
    T("wheel-rating-like-tyre", "Wheel rating and tyre capacity", "wheel.load_rating", "tyre_load_capacity",
      usual=(0.6, 1.18), other_called="what one tyre may carry",
      why="wheels and tyres that are sold for one kind of car carry about the same"),
    T("donor-axle-like", "Donor axle and corner", "hub.donor_axle_weight", "job.corner_weight",
      usual=(3.0, 5.9), why="a hub's own axle carries two corners, as heavy as this one or heavier"),
)  # fmt: skip
OVERALL = T(
    "overall-wider-than-nominal",
    "Overall width and width",
    "wheel.overall_width",
    "wheel.width",
    how="more",
    usual=(10.0, 40.0),
    never=(0.0, 80.0),
    why="the two lips add about [1 in | 25 mm] to the width between bead seats",
)
BACKSPACING = T(
    "backspacing-inside-wheel",
    "Backspacing and overall width",
    "wheel.backspacing",
    "wheel_overall_width",
    usual=(0.25, 0.95),
    never=(0.0, 1.0),
    other_called="the overall width",
    why="the wheel's mounting face lies between the two lips",
)
PAST_FACE = T(
    "hub-body-past-mount-face",
    "Hub body and its mounting face",
    "hub.body_length",
    "hub.flange_to_mount_face",
    usual=(0.9, 1.6),
    why="the body ends at the mounting face of the hub or reaches somewhat through the plate",
)
ROUND_BODY = T(
    "hub-bolts-round-body",
    "Hub bolts' circle and hub body",
    "hub.mount_circle",
    "hub.body_diameter",
    usual=(1.2, 2.3),
    never=(1.0, 5.0),
    why="the bolts stand outside the hub's body, in the ears round it",
)
"""Not in the families: there is a value of the same name as the answer."""
TIES = by_id((*LENGTHS, *MASSES, OVERALL, BACKSPACING, PAST_FACE, ROUND_BODY))


@check("{tie}", **family(LENGTHS))
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family(MASSES))
def tied_masses(one_answer: Kg | None, other_figure: Kg | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check("{tie}", **family((OVERALL,)))
def tied_overall_width(overall_width: Mm | None, wheel_width: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    names = {"one_answer": "overall_width", "other_figure": "wheel_width"}
    return renamed(tied(TIES[tie], overall_width, wheel_width, confirmed), names)


@check("{tie}", **family((BACKSPACING,)))
def tied_backspacing(
    backspacing: Mm | None, wheel_overall_width: Mm | None, confirmed: Confirmed, tie: str
) -> Judgement:
    """{First} against {second}."""
    names = {"one_answer": "backspacing", "other_figure": "wheel_overall_width"}
    return renamed(tied(TIES[tie], backspacing, wheel_overall_width, confirmed), names)


@check("{tie}", **family((PAST_FACE, ROUND_BODY)))
def tied_standing_body(
    one_answer: Mm | None,
    other_figure: Mm | None,
    held_together_by: HeldTogetherBy | None,
    confirmed: Confirmed,
    tie: str,
) -> Judgement:
    """{First} against {second}: of a body that stands still in its ears."""
    needs_standing_body(held_together_by)
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check(
    "spoke-room-inside-wheel",
    step="wheel",
    title="Spoke room inside the wheel",
    good="the back of the spokes lies between the two lips, and spokes as thick as the mounting pad end before the outer one",
    watch="spokes as thick as the pad would stand out of the wheel",
    stop="spokes half as thick would, or their back lies outside the lips",
    source=sources.GEOMETRY,
    grade="common practice",
)
def spoke_room_inside_wheel(
    spoke_room: Mm | None,
    wheel_overall_width: Mm | None,
    wheel_backspacing: Mm | None,
    wheel_pad_thickness: Mm | None,
) -> Judgement:
    """How far outboard the spokes' back lies against where the outer lip is. Spokes are seldom thinner than half of the pad."""
    if spoke_room is None or wheel_overall_width is None or wheel_backspacing is None:
        bounds = {"wheel_overall_width": wheel_overall_width, "wheel_backspacing": wheel_backspacing}
        raise not_compared("spoke room and the wheel's width are not both entered", spoke_room, bounds)
    front = wheel_overall_width - wheel_backspacing
    figures = {"front": (front, "mm")}
    text, pad = "Spoke room is {spoke_room}; from the wheel's mounting face to the outer lip it is {front}.", 0.0
    if wheel_pad_thickness is not None:
        text, pad = f"{text} The mounting pad is {{wheel_pad_thickness}} thick.", wheel_pad_thickness
    if reaches(front, spoke_room + pad / 2) and reaches(spoke_room, -wheel_backspacing):
        if reaches(front, spoke_room + pad):
            return Judgement("good", text, figures=figures)
        text = f"{text} Spokes as thick would stand outside the wheel, and the caliper's room rests on how far out they are."
        return Judgement(
            "watch", text, "Measure spoke room again, with the caliper's own shape held in the wheel.", figures
        )
    return Judgement("stop", f"{text} The spokes would stand outside the wheel.", "Measure spoke room again.", figures)


@check(
    "{part}-inside-bolt-circle",
    step="{part}",
    title="{Part} {called} inside the bolt circle",
    limits=AtMost("1", 0.82, 0.95),
    good="up to {good} of the bolt circle",
    watch="{good} to {watch}",
    stop="more, or so wide that it reaches the studs' holes: no metal is left beside the studs",
    source=PRACTICE,
    grade="common practice",
    each=(
        {"part": "wheel", "hole": "centre_bore", "called": "centre bore"},
        {"part": "rotor", "hole": "centre_bore", "called": "centre bore"},
        {"part": "hub", "hole": "pilot_diameter", "called": "pilot"},
    ),
)
def inside_bolt_circle(
    part_hole: Mm,
    part_bolt_circle: BoltCircle,
    stud_thread: Thread | None,
    confirmed: Confirmed,
    part: str,
    hole: str,
    limits: AtMost,
) -> Judgement:
    """{Part} {called} against the circle of the studs round it, and against the studs themselves."""
    figures = {"circle": (part_bolt_circle.diameter, "mm")}
    text = "{Part} {called} is {part_hole}, its bolt circle {circle}: the studs stand round the hole."
    verdict = limits.verdict(part_hole / part_bolt_circle.diameter)
    if verdict != "stop" and stud_thread is not None:
        left = (part_bolt_circle.diameter - stud_thread.diameter - part_hole) / 2
        if not more_than(left, 0.0):
            text = f"{text} It reaches into the {stud_thread.text} studs by {{into}}: no metal is left between them."
            return Judgement("stop", text, "Measure both again.", {**figures, "into": (-left, "mm")})
    if verdict == "good":
        return Judgement("good", text, figures=figures)
    if verdict == "watch":
        return odd(text, f"{part}.{hole}", confirmed, figures)
    return Judgement("stop", f"{text} That cannot be.", "Measure both again.", figures)


OF_ITS_STYLE = Limits(
    other={"thinnest": (7.0, "mm"), "solid": (16.5, "mm"), "vented": (15.5, "mm"),
           "cheek": (0.42, "1"), "half": (0.5, "1")}
)  # fmt: skip
"""thinnest, solid: a solid rotor of a car. vented: the thinnest with vanes. cheek, half: one plate of it over the whole: usual,
and the most there can be. Common practice, no source."""


@check(
    "rotor-like-its-style",
    step="rotor",
    title="Rotor's style and thickness",
    limits=OF_ITS_STYLE,
    good="solid {thinnest} to {solid} thick, vented {vented} or more; one plate of a vented one up to {cheek} of it",
    watch="beyond, and its thickness not confirmed",
    stop="one plate said to be more than {half} of the two",
    source=PRACTICE,
    grade="common practice",
)
def rotor_like_its_style(
    rotor_thickness: Mm,
    style: RotorStyle,
    finished_thickness: Mm | None,
    confirmed: Confirmed,
    limits: Limits,
) -> Judgement:
    """How thick a rotor is against how it is made: two plates with vanes between take more than one, and one takes less."""
    ends = {end: figure for end, (figure, _unit) in limits.other.items()}
    text = f"The rotor is entered as {style}, and is {{rotor_thickness}} thick"
    low, high = (ends["thinnest"], ends["solid"]) if style == "solid" else (ends["vented"], inf)
    if not within(rotor_thickness, low, high):
        return odd(f"{text}: few are.", "rotor.thickness", confirmed)
    if style == "cut to one plate" and finished_thickness is not None:
        text, share = f"{text}; the plate that is kept, {{finished_thickness}}", finished_thickness / rotor_thickness
        if more_than(share, ends["half"]):
            return impossible(f"{text}. Each of its two plates is less than half, for there are vanes between.")
        if more_than(share, ends["cheek"]):
            return odd(
                f"{text}: that leaves little for vanes and the other plate.", "rotor.finished_thickness", confirmed
            )
    return Judgement("good", f"{text}.")


@check(
    "ring-not-heavier-than-iron",
    step="rotor",
    title="Mass of the ring and its size",
    limits=Between("1", 0.46, 1.02, least=0.2, most=1.02),
    good="{low} to {most} x solid iron of its size",
    watch="down to {least}",
    stop="more than solid iron, or less than {least}",
    source=sources.COMMON_PRACTICE.saying(
        "density of grey iron; a vented ring is about six tenths of a solid one, at most nine"
    ),
    grade="common practice",
)
def ring_not_heavier_than_iron(
    ring_mass: Kg | None,
    rotor_diameter: Mm | None,
    band_inside_diameter: Mm | None,
    rotor_working_thickness: Mm | None,
    style: RotorStyle | None,
    confirmed: Confirmed,
    limits: Between,
) -> Judgement:
    """Entered mass of the braking band against the same ring solid. Solid: nine tenths of it or more."""
    if ring_mass is None or rotor_diameter is None or band_inside_diameter is None or rotor_working_thickness is None:
        bounds = {
            "rotor.diameter": rotor_diameter,
            "rotor.band_inside_diameter": band_inside_diameter,
            "rotor_working_thickness": rotor_working_thickness,
        }
        raise not_compared("mass and sizes of the ring are not all entered", ring_mass, bounds)
    area = pi / 4 * (rotor_diameter**2 - band_inside_diameter**2) / 1e6
    iron = area * rotor_working_thickness / 1000 * GREY_IRON.density
    figures = {"iron": (iron, "kg")}
    text = "The ring weighs {ring_mass}; solid iron of its size weighs {iron}."
    verdict = limits.verdict(ring_mass / iron) if iron > 0 else "stop"
    if verdict == "good" and reaches(ring_mass, 0.88 * iron) == (style == "vented"):
        verdict = "watch"
    if verdict == "good":
        return Judgement("good", text, figures=figures)
    if verdict == "watch":
        return odd(text, "rotor.ring_mass", confirmed, figures)
    return Judgement("stop", f"{text} That cannot be.", "Weigh the ring again, without its hat.", figures)


@check(
    "stud-not-too-long",
    step="hub",
    title="Wheel stud and what it passes through",
    limits=AtMost("1", 2.3),
    good="up to {good} diameters of thread for the nut",
    watch="more, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def stud_not_too_long(
    stud_engagement: Mm | None,
    stud_thread: Thread | None,
    stud_length: Mm | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """A stud is sold for the metal it passes through: much more thread than the nut takes is a slip, or a closed nut's end."""
    if stud_engagement is None or stud_thread is None:
        bounds = {"stud_engagement": stud_engagement, "hub.stud_thread": stud_thread}
        raise not_compared("the stud and what it passes through are not all entered", stud_length, bounds)
    text = "The stud leaves {stud_engagement} of thread beyond hat and wheel"
    if limits.verdict(stud_engagement / stud_thread.diameter) == "good":
        return Judgement("good", f"{text}.")
    return odd(f"{text}, more than twice its thickness.", "hub.stud_length", confirmed)


RATIO = {"ball": (0.95, 1.85), "roller": (0.48, 0.92)}
"""C over C0 of double-row hub bearings. Common practice, no source."""


@check(
    "ratings-like-their-kind",
    step="hub",
    title="Dynamic and static rating",
    limits=Limits(
        other={f"{kind}_{end}": (ends[end == "to"], "1") for kind, ends in RATIO.items() for end in ("from", "to")}
    ),
    good="dynamic over static {ball_from} to {ball_to} for balls, {roller_from} to {roller_to} for rollers",
    watch="beyond, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def ratings_like_their_kind(
    dynamic_rating: Newton | None,
    static_rating: Newton | None,
    rolling_element: RollingElement | None,
    confirmed: Confirmed,
) -> Judgement:
    """The two ratings of one bearing against each other."""
    if dynamic_rating is None or static_rating is None or rolling_element is None:
        bounds = {"hub.static_rating": static_rating, "hub.rolling_element": rolling_element}
        raise not_compared("both ratings and the kind of bearing are not all entered", dynamic_rating, bounds)
    text = "The dynamic rating is {dynamic_rating}, the static one {static_rating}."
    ratio, likely = dynamic_rating / static_rating, RATIO[rolling_element]
    if within(ratio, *likely):
        return Judgement("good", text)
    if any(within(ratio, *ends) for ends in RATIO.values()):
        asked = "hub.rolling_element"  # the ratings are those of the other kind
    else:
        asked = "hub.static_rating" if ratio < likely[0] else "hub.dynamic_rating"  # the one that reads too strong
    return odd(f"{text} For a {rolling_element} bearing they seldom stand so.", asked, confirmed)
