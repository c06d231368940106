"""The front end as the sheet gives it, ready to be moved; and moved through all its travel and lock."""

from rules.graph import value
from rules.motion.front_end import FrontEnd, Linkage
from rules.motion.points import CannotReach, Hinge, Upright
from rules.motion.sweep import Sweep
from rules.motion.sweep import envelope as through_travel_and_lock
from rules.motion.sweep import straight_sweep as through_travel
from rules.results import NotForThisBuild, OutsideRange, Waits
from rules.units import Mm, Rad
from rules.values.answered import answered

EXACT = "geometry: every link keeps its length; rules/motion/front_end.py"
MIRRORED = "both wheels travel alike and the body stays level"
NO_STEERING = "what moves the tie rods is not chosen under steering, so steering was not judged"


@value("motion", formula="as entered under steering", source=EXACT)
def steering_linkage(
    linkage: str | None,
    inner_ahead: Mm | None,
    inner_from_centre: Mm | None,
    inner_height: Mm | None,
    rack_travel: Mm | None,
    relay_arm_length: Mm | None,
    stop_angle: Rad | None,
    track: Mm,
) -> Linkage:
    """What moves the left tie rod. Does not apply until it is chosen; then waits for what that kind needs.

    >>> steering_linkage("rack", -150.0, 400.0, 380.0, 70.0, None, None, 1600.0).inner
    (-150.0, -400.0, 380.0)
    """
    if linkage is None:
        raise NotForThisBuild(NO_STEERING)
    if linkage == "one rod across":
        if stop_angle is None:
            raise Waits("steering.stop_angle")
        return Linkage(linkage, None, -track / 2, stop=stop_angle)
    needed = {"inner_ahead": inner_ahead, "inner_from_centre": inner_from_centre, "inner_height": inner_height}
    if linkage == "relay rod":
        needed["relay_arm_length"] = relay_arm_length
    if rack_travel is None and stop_angle is None:
        needed["rack_travel"] = None
    ahead, from_centre, height, *_ = answered("", "steering", linkage=linkage, **needed)[1:]
    inner = (ahead, from_centre - track / 2, height)
    return Linkage(linkage, inner, -track / 2, rack_travel, stop_angle, relay_arm_length or 0.0)


@value("motion", formula="outer pivots, spindle and tie-rod end at ride height", source="geometry")
def upright_points(
    wheel_centre_height: Mm,
    lower_pivot_ahead: Mm,
    lower_pivot_offset: Mm,
    lower_pivot_height: Mm,
    upper_pivot_ahead: Mm,
    upper_pivot_offset: Mm,
    upper_pivot_height: Mm,
    tie_rod_end_ahead: Mm | None,
    tie_rod_end_offset: Mm | None,
    tie_rod_end_height: Mm | None,
) -> Upright:
    """The points that move with the upright, mm.

    >>> upright_points(400.0, 10.0, -80.0, 300.0, -15.0, -120.0, 590.0, None, None, None).upper
    (-15.0, -120.0, 590.0)
    """
    lower = (lower_pivot_ahead, lower_pivot_offset, lower_pivot_height)
    upper = (upper_pivot_ahead, upper_pivot_offset, upper_pivot_height)
    end = None
    if tie_rod_end_ahead is not None and tie_rod_end_offset is not None and tie_rod_end_height is not None:
        end = (tie_rod_end_ahead, tie_rod_end_offset, tie_rod_end_height)
    return Upright(lower, upper, (0.0, 0.0, wheel_centre_height), end)


def _with_steering(upright: Upright, arms: tuple[Hinge, Hinge] | None, linkage: Linkage) -> FrontEnd:
    if upright.tie_rod_end is None:
        raise Waits("tie_rod_end_ahead", "tie_rod_end_offset", "tie_rod_end_height")
    try:
        return FrontEnd(upright, arms, linkage)
    except CannotReach:
        raise OutsideRange("the tie rod does not steer the wheel: check its two ends") from None


@value("motion", formula="steering axis, tie rod and what moves it, at ride height", source=EXACT)
def steered_front(upright_points: Upright, steering_linkage: Linkage) -> FrontEnd:
    """The front end at ride height, ready to be turned."""
    return _with_steering(upright_points, None, steering_linkage)


@value("motion", formula="outer pivots hung on the arms' inner pivots", source=EXACT)
def hung_front(upright_points: Upright, lower_hinge: Hinge, upper_hinge: Hinge) -> FrontEnd:
    """The front end on its arms, ready to be moved up and down with the wheels held straight."""
    return FrontEnd(upright_points, (lower_hinge, upper_hinge))


@value("motion", formula="the front end on its arms, steered", source=EXACT)
def moving_front(
    upright_points: Upright, lower_hinge: Hinge, upper_hinge: Hinge, steering_linkage: Linkage
) -> FrontEnd:
    """The front end on its arms with its steering, ready to be moved and turned."""
    return _with_steering(upright_points, (lower_hinge, upper_hinge), steering_linkage)


@value("motion", formula=f"the wheel held straight, from full droop to full bump; {MIRRORED}", source=EXACT)
def travel_sweep(hung_front: FrontEnd, droop_travel: Mm, bump_travel: Mm) -> Sweep:
    """The left corner through its travel, wheel held straight ahead."""
    return through_travel(hung_front, droop_travel, bump_travel)


@value("motion", formula=f"every travel at every lock, nine of each; {MIRRORED}", source=EXACT)
def envelope(moving_front: FrontEnd, droop_travel: Mm, bump_travel: Mm) -> Sweep:
    """The left corner at every travel and lock; the right wheel is its mirror image at the opposite lock."""
    return through_travel_and_lock(moving_front, droop_travel, bump_travel)
