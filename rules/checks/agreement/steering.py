"""Do the entries of steering, arms and springs agree."""

from collections.abc import Mapping
from math import radians

from rules.checks.agreement.tie import PRACTICE, T, by_id, family, not_compared, odd, tied
from rules.graph.bands import AtLeast, AtMost, Between
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import more_than
from rules.measure.units import Mm, Rad, Ratio
from rules.measure.vectors import minus, plus, size, times
from rules.motion.kinds import LinkageKind, TieRodInnerBolt
from rules.motion.points import Hinge, UprightPoints
from rules.motion.shock import Shock
from rules.sheet import FIELDS
from rules.sheet.confirmed import Confirmed
from rules.solids.gap import Solid, gap
from rules.solids.pieces import Hull
from rules.tables import sources
from rules.values.steering.links import ArmPlane, tie_rod_slope_at_ride, tie_rod_sweep_at_ride
from rules.values.steering.motion import NO_ARM

HINGE = "an arm's two inner pivots stand about as far ahead of the axle as behind it"
LEVEL = "an arm's two inner pivots stand at about one height"
ALONG = "an arm's two inner pivots stand about as far from the middle of the car"
LENGTHS = (
    T("relay-arm-like-steering-arm", "Relay arms and steering arm", "steering.relay_arm_length", "tie_rod_end_ahead",
      usual=(0.72, 1.42), other_called="the place of the tie-rod end ahead of the wheel centre",
      why="the arms of a relay rod point the way the steering arms do, and are about as long", none_below=NO_ARM),
    T("tie-rod-level", "Heights of the tie rod's ends", "steering.inner_height", "inner_height_as_arms", how="more",
      usual=(-10.0, 10.0), other_called="the nearest height at which the tie rod lies level, or as the arms do,",
      why="a tie rod lies nearly so at ride height"),
    T("tie-rod-across", "Tie rod's ends, ahead", "steering.inner_ahead", "tie_rod_end_ahead",
      usual=(0.72, 1.42), other_called="the place of the tie-rod end ahead of the wheel centre",
      why="a tie rod runs nearly straight across the car"),
    T("rack-travel-suits-arm", "Rack travel and steering arm", "steering.rack_travel", "tie_rod_end_ahead", how="size",
      usual=(0.5, 0.98), never=(0.03, 3.0), other_called="the place of the tie-rod end ahead of the wheel centre",
      why="to turn the wheels 20 to 45 deg the rod's end moves four to nine tenths of its arm"),
    T("lower-hinge-straddles", "Lower arm, ahead and behind", "arms.lower_front_ahead", "arms.lower_rear_ahead",
      usual=(-1.36, -0.7), why=HINGE),
    T("upper-hinge-straddles", "Upper arm, ahead and behind", "arms.upper_front_ahead", "arms.upper_rear_ahead",
      usual=(-1.36, -0.7), why=HINGE),
    T("lower-hinge-along", "Lower arm, from centre", "arms.lower_front_from_centre", "arms.lower_rear_from_centre",
      usual=(0.72, 1.4), why=ALONG),
    T("upper-hinge-along", "Upper arm, from centre", "arms.upper_front_from_centre", "arms.upper_rear_from_centre",
      usual=(0.72, 1.4), why=ALONG),
    T("lower-hinge-level", "Lower arm, heights", "arms.lower_front_height", "arms.lower_rear_height", how="more",
      usual=(-60.0, 60.0), why=LEVEL),
    T("upper-hinge-level", "Upper arm, heights", "arms.upper_front_height", "arms.upper_rear_height", how="more",
      usual=(-60.0, 60.0), why=LEVEL),
    T("bump-and-droop", "Bump and droop", "arms.bump_travel", "arms.droop_travel",
      usual=(0.72, 1.42), why="a wheel travels about as far up as down from ride height"),
    T("arm-tubes-alike", "Tubes of the two arms", "arms.upper_tube", "arms.lower_tube",
      usual=(0.7, 1.38), why="the two arms of one corner are made of much the same tube"),
    T("tie-rod-and-arm-tube", "Tie rod and arm tube", "arms.tie_rod_tube", "arms.lower_tube",
      usual=(0.6, 1.18), why="a tie rod is somewhat thinner than the tube of the arms"),
    T("shock-closed-and-open", "Shock closed and open", "spring.shock_longest", "spring.shock_shortest",
      usual=(1.25, 1.75), never=(1.0, 2.0), why="its rod moves in its own body, so it opens to less than twice its length"),
    T("shock-leans-in", "Lean of the shock across", "spring.arm_end_from_centre", "spring.frame_end_from_centre", how="more",
      usual=(-40.0, 400.0), why="a shock leans inboard at its top"),
    T("seats-on-shock", "Spring's seats and shock", "spring.seats_apart", "spring.shock_longest",
      usual=(0.4, 0.85), never=(0.1, 1.2), why="a spring round its shock is shorter than the shock is from eye to eye"),
    T("spring-solid-and-free", "Spring solid and free", "spring.solid_length", "spring.free_length",
      usual=(0.27, 0.52), never=(0.1, 1.0), why="a spring's coils touch at about four tenths of its free length"),
    T("spring-squeezed-in-its-seats", "Spring squeezed and its room", "spring.preload", "squeeze_by_seats", how="more",
      usual=(-3.0, 3.0), never=(-25.0, 25.0), other_called="spring free less seats apart",
      why="what the room between the seats lacks of the free spring is what it is squeezed"),
    T("outer-shank-and-reach", "Outer tie-rod end", "steering.tie_rod_outer_shank", "steering.tie_rod_end_reach",
      usual=(2.0, 3.9), why="its thread ends two to four times as far from the ball as its housing reaches"),
    T("shock-rises", "Heights of the shock's ends", "spring.frame_end_height", "spring.arm_end_height",
      usual=(1.8, 3.5), why="a shock's top stands two to three times as high as its foot"),
    T("shock-across", "Shock's ends from the middle", "spring.frame_end_from_centre", "spring.arm_end_from_centre",
      usual=(0.56, 1.07), why="a shock leans inboard at its top, by a third at most"),
    T("shock-leans-along", "Lean of the shock along", "spring.arm_end_ahead", "spring.frame_end_ahead", how="more",
      usual=(-60.0, 60.0), why="seen from the side a shock stands nearly upright"),
)  # fmt: skip
TIES = by_id(LENGTHS)


@check("{tie}", **family(LENGTHS))
def tied_lengths(one_answer: Mm | None, other_figure: Mm | None, confirmed: Confirmed, tie: str) -> Judgement:
    """{First} against {second}."""
    return tied(TIES[tie], one_answer, other_figure, confirmed)


@check(
    "{which}-arm-base",
    step="arms",
    title="{Which} arm's two legs apart",
    limits=AtLeast("1", 0.4, 0.15),
    good="its inner pivots stand {good} of its length apart, or more",
    watch="at least {watch}, and not confirmed",
    stop="less",
    source=PRACTICE,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def arm_base(
    which: str,
    which_hinge: Hinge | None,
    upright_points: UprightPoints | None,
    arms_begun: bool | None,
    confirmed: Confirmed,
    limits: AtLeast,
) -> Judgement:
    """What holds the wheel fore and aft is the distance of the two legs at the frame: on a narrow base braking tears them out."""
    if which_hinge is None or which_hinge.flat or upright_points is None:
        bounds = {f"{which}_hinge": which_hinge, "upright_points": upright_points}
        if which_hinge is not None and which_hinge.flat:
            bounds[f"arms.{which}_rear_ahead"] = None
        raise not_compared("the arm's two inner pivots are not known fore and aft", arms_begun, bounds)
    outer = upright_points.upper if which == "upper" else upright_points.lower
    base = size(minus(which_hinge.front, which_hinge.rear))
    long = size(minus(outer, times(0.5, plus(which_hinge.front, which_hinge.rear))))
    figures = {"base": (base, "mm"), "long": (long, "mm")}
    text = "The {which} arm is {long} long, and its inner pivots stand {base} apart."
    verdict = limits.verdict(base / long)
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    if verdict == "watch":
        return odd(text, f"arms.{which}_rear_ahead", confirmed, figures)
    return Judgement(
        "stop", f"{text} Braking would tear it out.", "Change how far apart its inner pivots stand.", figures
    )


@check(
    "{which}-tube-between-lugs",
    step="arms",
    title="{Which} arm's tube and the lugs",
    limits=AtMost("1", 0.85),
    good="the tube is up to {good} as thick as the lugs of its joint stand apart",
    watch="thicker, and not confirmed",
    stop="thicker than they stand apart, and it begins before they end",
    source=PRACTICE,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def tube_between_lugs(
    which: str,
    which_tube: Mm | None,
    which_ball_width: Mm | None,
    which_gap: Mm | None,
    which_radius: Mm | None,
    which_edge_distance: Mm | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """The arm swings between the lugs of its joint: a tube nearly as thick as they stand apart has to end well short of them."""
    if which_tube is None or not which_ball_width or which_gap is None:
        bounds = {f"bolts.{which}_ball_width": which_ball_width, f"bolts.{which}_gap": which_gap}
        raise not_compared("tube and joint are not both entered", which_tube, bounds)
    apart = which_ball_width + 2 * which_gap
    figures = {"apart": (apart, "mm")}
    text = "The {which} arm's tube is {which_tube} thick, and the lugs of its joint stand {apart} apart."
    if limits.verdict(which_tube / apart) == "good":
        return Judgement("good", text, figures=figures)
    ends_apart = which_radius is not None and which_edge_distance is not None and which_radius < which_edge_distance
    if ends_apart and more_than(which_tube, apart):
        text += " The tube begins where the housing ends, {which_radius} from the pivot; the lugs reach {which_edge_distance}."
        return Judgement(
            "stop",
            f"{text} It does not go between them.",
            "A thinner tube, longer spacers, or an arm end that reaches out from between the lugs, entered as housing reach.",
            figures,
        )
    return odd(
        f"{text} It ends well short of them, or it binds on them as the joint tilts.",
        f"arms.{which}_tube",
        confirmed,
        figures,
    )


@check(
    "shock-on-its-arm",
    step="spring",
    title="Shock's end on its arm",
    limits=AtMost("mm", 60.0, 110.0),
    good="up to {good} from the arm's tubes, or the plate between them",
    watch="to {watch}, and not confirmed",
    stop="further: it hangs in the air",
    source=PRACTICE,
    grade="common practice",
)
def shock_on_its_arm(
    shock_ends: Shock | None,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    upright_points: UprightPoints | None,
    travel_begun: bool | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """From the shock's lower eye to the triangle that the arm's pivots span: it needs a bracket that long."""
    hinge = None if shock_ends is None else upper_hinge if shock_ends.arm == "upper arm" else lower_hinge
    if shock_ends is None or hinge is None or upright_points is None:
        bounds: dict[str, object] = {"shock_ends": shock_ends, "upright_points": upright_points}
        if shock_ends is not None:
            bounds["upper_hinge" if shock_ends.arm == "upper arm" else "lower_hinge"] = hinge
        raise not_compared("shock and arm are not both entered", travel_begun, bounds)
    outer = upright_points.upper if shock_ends.arm == "upper arm" else upright_points.lower
    front, rear, on_arm = hinge.front, hinge.rear, shock_ends.on_arm
    if hinge.flat:  # known from the front only
        on_arm = (outer[0], on_arm[1], on_arm[2])
    off = max(0.0, gap(Solid.of((Hull((on_arm,)),)), Solid.of((Hull((front, rear, outer)),))).distance)
    figures = {"off": (off, "mm")}
    text = f"The shock's eye stands {{off}} from the {shock_ends.arm}."
    verdict = limits.verdict(off)
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    if verdict == "watch":
        return odd(text, "spring.arm_end_height", confirmed, figures)
    return Judgement("stop", f"{text} It hangs in the air.", "Measure its three places again.", figures)


@check(
    "shock-moves-with-wheel",
    step="spring",
    title="Shock travel for the wheel's",
    limits=Between("1", 0.35, 1.0),
    good="{low} to {high} of the wheel's travel",
    watch="beyond, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def shock_moves_with_wheel(
    spring_ratio: Ratio | None, travel_begun: bool | None, confirmed: Confirmed, limits: Between
) -> Judgement:
    """How far the shock moves for each mm of the wheel: it stands out along the arm, not near its hinge nor beyond its end."""
    if spring_ratio is None:
        why = "how the shock moves is not known"
        raise not_compared(why, travel_begun, {"spring_ratio": spring_ratio})
    if spring_ratio < 0:
        text = "The shock opens by {opens} of what the wheel rises, so that a spring round it holds nothing up."
        return odd(text, "spring.arm_end_from_centre", confirmed, {"opens": (-spring_ratio, "1")})
    text = "The shock moves {spring_ratio} of what the wheel does."
    if limits.verdict(spring_ratio) == "good":
        return Judgement("good", text)
    return odd(f"{text} Most stand where it moves a half to nine tenths.", "spring.arm_end_from_centre", confirmed)


@check(
    "tie-rod-holds-its-ends",
    step="steering",
    title="Tie rod and its two ends",
    good="the two ends, each from ball to end of thread, are no longer than the tie rod",
    stop="they are longer: they meet in the tube, or no tube goes between them",
    source=sources.GEOMETRY,
    grade="common practice",
)
def tie_rod_holds_its_ends(
    tie_rod_outer_shank: Mm | None, tie_rod_inner_shank: Mm | None, tie_rod_length: Mm | None
) -> Judgement:
    """Both ends stand on one line: however the tube is cut, they share the length of the rod."""
    shanks = {"steering.tie_rod_outer_shank": tie_rod_outer_shank, "steering.tie_rod_inner_shank": tie_rod_inner_shank}
    entered = [shank for shank in shanks.values() if shank is not None]
    ends, both = sum(entered), len(entered) == len(shanks)
    why = "the tie rod's ends and its length are not all known"
    if tie_rod_length is None or not (both or more_than(ends, tie_rod_length)):
        raise not_compared(why, entered or None, {**shanks, "tie_rod_length": tie_rod_length})
    figures = {"ends": (ends, "mm"), "over": (ends - tie_rod_length, "mm")}
    those = "its two ends, ball to end of thread, are {ends} together" if both else "one of its ends alone is {ends}"
    text = f"From joint to joint the tie rod is {{tie_rod_length}}; {those}"
    if not more_than(ends, tie_rod_length):
        return Judgement("good", f"{text}.", figures=figures)
    return Judgement(
        "stop",
        f"{text}: {{over}} too long. They meet before the wheels are straight.",
        "Shorter ends, or measure each again from its ball to the end of its thread.",
        figures,
    )


LIES = AtMost("rad", radians(2.0), radians(5.0))
"""An angle finder on a rod or an arm is good to a degree, and so are two taped points. Common practice, no source."""


@check(
    "tie-rod-lies-as-entered",
    step="loads",
    title="Tie rod's angles and its two ends",
    limits=LIES,
    good="slope and sweep as entered within {good} of the line between the ends",
    watch="within {watch}, and not confirmed",
    stop="further off",
    source=PRACTICE,
    grade="common practice",
)
def tie_rod_lies_as_entered(
    tie_rod_slope: Rad | None,
    tie_rod_sweep: Rad | None,
    tie_rod_end_offset: Mm | None,
    tie_rod_end_ahead: Mm | None,
    tie_rod_end_height: Mm | None,
    inner_from_centre: Mm | None,
    inner_ahead: Mm | None,
    inner_height: Mm | None,
    track: Mm | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """The rod's angles against where its inner pivot is entered under steering, on which strength counts."""
    both: dict[str, tuple[float, float]] = {}
    bounds = {
        "tie_rod_end_offset": tie_rod_end_offset,
        "steering.inner_from_centre": inner_from_centre,
        "job.track": track,
    }
    if tie_rod_slope is not None:
        bounds |= {"tie_rod_end_height": tie_rod_end_height, "steering.inner_height": inner_height}
    if tie_rod_sweep is not None:
        bounds |= {"tie_rod_end_ahead": tie_rod_end_ahead, "steering.inner_ahead": inner_ahead}
    if tie_rod_end_offset is not None and inner_from_centre is not None and track is not None:
        if tie_rod_slope is not None and tie_rod_end_height is not None and inner_height is not None:
            by = tie_rod_slope_at_ride(
                None, tie_rod_end_offset, tie_rod_end_height, inner_from_centre, inner_height, track
            )
            both["tie_rod_slope"] = (tie_rod_slope, by)
        if tie_rod_sweep is not None and tie_rod_end_ahead is not None and inner_ahead is not None:
            by = tie_rod_sweep_at_ride(
                None, tie_rod_end_offset, tie_rod_end_ahead, inner_from_centre, inner_ahead, track
            )
            both["tie_rod_sweep"] = (tie_rod_sweep, by)
    entered = tie_rod_sweep if tie_rod_slope is None else tie_rod_slope
    return _lies(both, "the rod's two ends", entered, bounds, confirmed, limits)


@check(
    "arm-lies-as-entered",
    step="loads",
    title="Arm's slopes and its pivots",
    limits=LIES,
    good="both slopes of the arm without the spring as entered within {good} of those of its pivots",
    watch="within {watch}, and not confirmed",
    stop="further off",
    source=PRACTICE,
    grade="common practice",
)
def arm_lies_as_entered(
    arm_slope: Rad | None,
    arm_hinge_slope: Rad | None,
    guiding_plane: ArmPlane | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """The arm's slopes against the plane through its pivots as entered under arms, on which strength counts."""
    both: dict[str, tuple[float, float]] = {}
    if guiding_plane is not None and arm_slope is not None:
        both["arm_slope"] = (arm_slope, guiding_plane.across)
    if guiding_plane is not None and not guiding_plane.flat and arm_hinge_slope is not None:
        both["arm_hinge_slope"] = (arm_hinge_slope, guiding_plane.along)
    entered = arm_hinge_slope if arm_slope is None else arm_slope
    return _lies(both, "the arm's pivots", entered, {"guiding_plane": guiding_plane}, confirmed, limits)


def _lies(
    both: dict[str, tuple[float, float]],
    by: str,
    entered: float | None,
    bounds: Mapping[str, object],
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """Angles as entered against those worked out, the worse told. entered: one of them. bounds: see `not_compared`."""
    if not both:
        raise not_compared("no angle is entered of what has its places entered too", entered, bounds)
    key, (entered, worked) = max(both.items(), key=lambda one: abs(one[1][0] - one[1][1]))
    figures = {"worked": (worked, "rad")}
    text = f"{FIELDS[f'loads.{key}'].label} is {{{key}}}, and by {by} {{worked}}"
    verdict = limits.verdict(abs(entered - worked))
    if verdict == "good":
        return Judgement(verdict, f"{text}: they agree.", figures=figures)
    if verdict == "watch":
        return odd(f"{text}.", f"loads.{key}", confirmed, figures)
    change = "Empty the angle, and the places count; or measure both again."
    return Judgement("stop", f"{text}. One rod or arm lies in one way only.", change, figures)


@check(
    "inner-joint-suits-linkage",
    step="joint_angles",
    title="Tie rod's inner joint and the linkage",
    good="a ball on a shank along the rack is a rack's own; a relay rod and one rod across have bolts",
    watch="a shank along the rack where there is none, and it is not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def inner_joint_suits_linkage(
    tie_rod_inner_bolt: TieRodInnerBolt | None, linkage: LinkageKind | None, confirmed: Confirmed
) -> Judgement:
    """How the inner joint is held says which way it tilts freely; along the rack it lies in line with the tie rod."""
    if tie_rod_inner_bolt is None or linkage is None:
        bounds = {"steering.linkage": linkage}
        raise not_compared("linkage and inner joint are not both entered", tie_rod_inner_bolt, bounds)
    text = f"The linkage is entered as {linkage}, and the tie rod's inner joint as held {tie_rod_inner_bolt}"
    if linkage == "rack" or tie_rod_inner_bolt != "along the rack":
        return Judgement("good", f"{text}.")
    return odd(f"{text}: it has no rack.", "joint_angles.tie_rod_inner_bolt", confirmed)
