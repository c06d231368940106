"""The front end as the sheet gives it, ready to be moved; and moved through all its travel and lock."""

from math import asin, cos, hypot, sin

from rules.graph.asking import given, need
from rules.graph.declare import value
from rules.graph.results import NotJudged, Waits
from rules.measure.records import replace
from rules.measure.units import Mm, Rad
from rules.measure.vectors import Vector
from rules.motion.front_end import FrontEnd
from rules.motion.kinds import StopOn
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import CannotReach, Hinge, UprightPoints
from rules.motion.sweep import Sweep
from rules.motion.sweep import envelope as through_travel_and_lock
from rules.motion.sweep import straight_sweep as through_travel
from rules.sheet.steering import RodMover, StoppedBy
from rules.tables import sources

EXACT = sources.GEOMETRY.saying("every link keeps its length; rules/motion/front_end.py")
NO_ARM = 1.0
"""mm: an arm shorter than the tape reads moves nothing."""
MIRRORED = "both wheels travel alike and the body stays level"


@value("motion", formula="as entered under steering", source=EXACT)
def steering_linkage(
    steering: RodMover,
    track: Mm,
    steering_begun: bool,
    stopped_by: StoppedBy | None,
    static_toe: Mm | None,
    design_tyre_diameter: Mm | None,
) -> SteeringLinkage:
    """What moves the left tie rod, how long the rod is set, and what its stop holds. Waits for what that kind needs.

    stopped_by: a stop on upright or arm, or where nothing is said, holds the wheel; one on rack or steering box the slide.
    A stop that is there and whose angle is not known is waited for: without it the lock would end where the rack does.
    static_toe: both wheels across the treads, in positive; nought if empty.

    >>> from rules.sheet.steering import Steering
    >>> rack = {"linkage": "rack", "inner_ahead": -150.0, "inner_from_centre": 400.0, "inner_height": 380.0, "rack_travel": 70.0}
    >>> steering_linkage(Steering.record(rack), 1600.0, True, None, None, 800.0).inner
    (-150.0, -400.0, 380.0)
    """
    toe = _toe_of_one_wheel(static_toe, design_tyre_diameter)
    stop_on: StopOn = "slide" if stopped_by in ("rack", "steering box") else "wheel"
    kind, stop, travel = steering.linkage, given(steering, "stop_angle"), given(steering, "rack_travel")
    if kind == "one rod across":
        return SteeringLinkage(kind, None, -track / 2, stop=steering.stop_angle, stop_on=stop_on, toe=toe)
    of_its_own = ("relay_arm_length",) if kind == "relay rod" else ()
    ends_at = () if stop is not None else ("stop_angle",) if stopped_by == "upright or arm" else ("rack_travel",)
    need(steering, "inner_ahead", "inner_from_centre", "inner_height", *of_its_own, *ends_at)
    inner = (steering.inner_ahead, steering.inner_from_centre - track / 2, steering.inner_height)
    relay_arm = given(steering, "relay_arm_length") or 0.0
    if of_its_own and abs(relay_arm) < NO_ARM:
        raise NotJudged("the arms the relay rod hangs on have no length; put that right first")
    return SteeringLinkage(kind, inner, -track / 2, travel, stop, relay_arm, stop_on, toe)


def _toe_of_one_wheel(toe: float | None, diameter: float | None) -> float:
    """From both wheels' toe across the treads, mm, to the angle of one, rad, in positive."""
    if not toe:
        return 0.0
    if diameter is None:
        raise Waits("design_tyre_diameter")
    return asin(toe / (2 * diameter))


@value("motion", formula="outer pivots and wheel centre at ride height", source=sources.GEOMETRY)
def upright_points(
    wheel_centre_height: Mm,
    lower_pivot_ahead: Mm,
    lower_pivot_offset: Mm,
    lower_pivot_height: Mm,
    upper_pivot_ahead: Mm,
    upper_pivot_offset: Mm,
    upper_pivot_height: Mm,
    static_camber: Rad | None = None,
) -> UprightPoints:
    """The points that move with the upright, mm; the tie rod left aside. static_camber: top outboard positive; nought if empty.

    >>> upright_points(400.0, 10.0, -80.0, 300.0, -15.0, -120.0, 590.0).upper
    (-15.0, -120.0, 590.0)
    """
    lower = (lower_pivot_ahead, lower_pivot_offset, lower_pivot_height)
    upper = (upper_pivot_ahead, upper_pivot_offset, upper_pivot_height)
    camber = static_camber or 0.0
    return UprightPoints(lower, upper, (0.0, 0.0, wheel_centre_height), spin=(0.0, cos(camber), -sin(camber)))


@value("motion", formula="outer pivots, wheel centre and tie-rod end at ride height", source=sources.GEOMETRY)
def steered_upright(
    upright_points: UprightPoints, tie_rod_end_ahead: Mm, tie_rod_end_offset: Mm, tie_rod_end_height: Mm
) -> UprightPoints:
    """The points that move with the upright, mm, with the tie rod's outer joint.

    >>> plain = UprightPoints((10.0, -80.0, 300.0), (-15.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    >>> steered_upright(plain, -130.0, -140.0, 360.0).tie_rod_end
    (-130.0, -140.0, 360.0)
    """
    return replace(upright_points, tie_rod_end=(tie_rod_end_ahead, tie_rod_end_offset, tie_rod_end_height))


def steering_arm_seen(upright: UprightPoints, end: Vector) -> float:
    """Length of the arm from the steering axis to a tie rod's end, level at that end's height, mm."""
    axis = upright.on_axis(end[2])
    return hypot(end[0] - axis[0], end[1] - axis[1])


def needs_an_arm(upright: UprightPoints) -> None:
    """Refuses a tie rod's end that turns nothing, because it lies on the steering axis: that is judged by itself."""
    if upright.tie_rod_end and steering_arm_seen(upright, upright.tie_rod_end) < NO_ARM:
        raise NotJudged("the tie rod's outer end lies on the steering axis; put that right first")


def needs_two_ends(upright: UprightPoints, linkage: SteeringLinkage) -> None:
    """Refuses a tie rod whose ends cannot be where they are entered: that is judged by itself."""
    if linkage.inner and upright.tie_rod_end and linkage.inner[1] >= upright.tie_rod_end[1]:
        raise NotJudged("the tie rod's inner pivot does not lie inboard of its outer end; put that right first")
    needs_an_arm(upright)


def _with_steering(hung: FrontEnd | None, upright: UprightPoints, linkage: SteeringLinkage) -> FrontEnd:
    needs_two_ends(upright, linkage)
    try:
        return hung.steered(upright, linkage) if hung is not None else FrontEnd(upright, linkage=linkage)
    except CannotReach:
        raise NotJudged("the tie rod does not turn the wheel; put that right first") from None


@value("motion", formula="steering axis, tie rod and what moves it, at ride height", source=EXACT, heavy=True)
def steered_front(steered_upright: UprightPoints, steering_linkage: SteeringLinkage) -> FrontEnd:
    """The front end at ride height, ready to be turned. Not for a tie rod that cannot be: that is judged by itself.

    A rack 150 mm behind the axle, 60 mm of travel: to turn left it moves to the right.

    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (-140.0, -130.0, 360.0))
    >>> steered_front(upright, SteeringLinkage("rack", (-150.0, -480.0, 370.0), -800.0, 60.0)).full
    -60.0
    """
    return _with_steering(None, steered_upright, steering_linkage)


def _arms(lower: Hinge, upper: Hinge) -> tuple[Hinge, Hinge]:
    if upper.front[2] <= lower.front[2]:
        raise NotJudged("the upper arm's inner pivots do not lie above the lower arm's; put them right first")
    return lower, upper


@value("motion", formula="outer pivots hung on the arms' inner pivots", source=EXACT)
def hung_front(upright_points: UprightPoints, lower_hinge: Hinge, upper_hinge: Hinge) -> FrontEnd:
    """The front end on its arms, ready to be moved up and down with the wheels held straight.

    Level parallel arms of equal length: the lower pivot rises as the wheel does.

    >>> upright = UprightPoints((0.0, -100.0, 300.0), (0.0, -100.0, 500.0), (0.0, 0.0, 400.0))
    >>> lower, upper = (Hinge((100.0, -400.0, height), (-100.0, -400.0, height)) for height in (300.0, 500.0))
    >>> round(hung_front(upright, lower, upper).straight(50.0).lower[2], 6)
    350.0
    """
    return FrontEnd(upright_points, _arms(lower_hinge, upper_hinge))


@value("motion", formula="the front end on its arms, steered", source=EXACT, heavy=True)
def moving_front(steered_upright: UprightPoints, hung_front: FrontEnd, steering_linkage: SteeringLinkage) -> FrontEnd:
    """The front end on its arms with its steering, ready to be moved and turned.

    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (-140.0, -130.0, 360.0))
    >>> lower, upper = (Hinge((100.0, -450.0, height), (-100.0, -450.0, height)) for height in (300.0, 540.0))
    >>> rack = SteeringLinkage("rack", (-150.0, -480.0, 370.0), -800.0, 60.0)
    >>> moving_front(upright, hung_front(upright, lower, upper), rack).text
    "the front end's points, with arms and steering"
    """
    return _with_steering(hung_front, steered_upright, steering_linkage)


@value("motion", formula=f"the wheel held straight, from full droop to full bump; {MIRRORED}", source=EXACT, heavy=True)
def travel_sweep(hung_front: FrontEnd, droop_travel: Mm, bump_travel: Mm) -> Sweep:
    """The left corner through its travel, wheel held straight ahead. droop_travel, bump_travel: mm, both positive.

    >>> upright = UprightPoints((0.0, -100.0, 300.0), (0.0, -100.0, 500.0), (0.0, 0.0, 400.0))
    >>> lower, upper = (Hinge((100.0, -400.0, height), (-100.0, -400.0, height)) for height in (300.0, 500.0))
    >>> [round(placed.travel) for placed in travel_sweep(hung_front(upright, lower, upper), 80.0, 80.0).placed]
    [-80, -60, -40, -20, 0, 20, 40, 60, 80]
    """
    return through_travel(hung_front, droop_travel, bump_travel)


@value("motion", formula=f"every travel at every lock, nine of each; {MIRRORED}", source=EXACT, heavy=True)
def envelope(moving_front: FrontEnd, droop_travel: Mm, bump_travel: Mm) -> Sweep:
    """The left corner at every travel and lock; the right wheel is its mirror image at the opposite lock.

    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (-140.0, -130.0, 360.0))
    >>> lower, upper = (Hinge((100.0, -450.0, height), (-100.0, -450.0, height)) for height in (300.0, 540.0))
    >>> rack = SteeringLinkage("rack", (-150.0, -480.0, 370.0), -800.0, 60.0)
    >>> len(envelope(moving_front(upright, hung_front(upright, lower, upper), rack), 60.0, 60.0).placed)
    81
    """
    return through_travel_and_lock(moving_front, droop_travel, bump_travel)
