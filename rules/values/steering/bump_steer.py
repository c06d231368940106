"""Bump steer: the toe that the tie rod gives the wheel as it travels, and the inner pivot that makes it least."""

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged
from rules.measure.units import Mm
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.place_words import place
from rules.motion.points import CannotReach, mirrored
from rules.motion.sweep import Sweep, spread
from rules.motion.travel import SLIDE, InnerPivot, best_inner_pivot, from_inner_pivot, least_steering, toe
from rules.tables import sources
from rules.values.steering.motion import EXACT

USUAL_TRAVEL = 75.0
"""mm each way: how far bump steer is usually looked at; from memory."""
PLACES = 13
HALF_LOCK = 0.5
NOT_STEERED = "from the best inner pivot the tie rod would not steer the wheel"


def _looked_at(droop: float, bump: float) -> list[float]:
    """Where bump steer is looked at: 75 mm each way, or the travel entered where that is less."""
    return spread(-min(USUAL_TRAVEL, droop), min(USUAL_TRAVEL, bump), PLACES)


@value(
    "travel",
    formula="[3 in | 75 mm] each way, or the travel entered where that is less; both ways together",
    source=sources.COMMON_PRACTICE.saying("from memory"),
)
def usual_travel(droop_travel: Mm, bump_travel: Mm) -> Mm:
    """How much travel bump steer is usually looked at over, mm.

    >>> usual_travel(90.0, 60.0)
    135.0
    """
    return min(USUAL_TRAVEL, droop_travel) + min(USUAL_TRAVEL, bump_travel)


def _steer(front: FrontEnd, travel: float, lock: float = 0.0) -> float:
    try:
        return front.rack_held(travel, lock).steer
    except CannotReach:
        there, figures = place(travel, lock)
        raise NotJudged(f"the tie rod does not reach at {there}", figures=figures) from None


def _steer_spread(front: FrontEnd, travels: list[float], lock: float = 0.0) -> float:
    steers = [_steer(front, travel, lock) for travel in travels]
    return max(steers) - min(steers)


BUMP_TOE = (
    "2 x design tyre diameter x sin(largest - least angle of one wheel) over [3 in | 75 mm] each way, or the travel "
    "entered where that is less"
)


@value("travel", formula=f"{BUMP_TOE}, steering straight ahead", source=EXACT, heavy=True)
def bump_toe(
    moving_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Bump steer: toe change of both wheels together, front against rear across the treads, mm, both wheels moving alike.

    A tie rod level with the level arms, of their length and over their hinge lines, follows the upright.

    >>> round(bump_toe(parallel_arms(), parallel_sweep(), 60.0, 60.0, 800.0), 6) + 0.0
    0.0
    """
    return toe(design_tyre_diameter, _steer_spread(moving_front, _looked_at(droop_travel, bump_travel)))


@value("travel", formula="as bump toe, over all the travel entered", source=EXACT, heavy=True)
def bump_toe_whole(
    moving_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Bump steer over all the travel, mm, as bump_toe; the same where there is no more travel than is usually looked at.

    >>> round(bump_toe_whole(parallel_arms(), parallel_sweep(), 60.0, 60.0, 800.0), 6) + 0.0
    0.0
    """
    usual = _looked_at(droop_travel, bump_travel)
    beyond = [placed.travel for placed in travel_reached.placed if not usual[0] <= placed.travel <= usual[-1]]
    return toe(design_tyre_diameter, _steer_spread(moving_front, usual + beyond))


@value(
    "travel",
    formula="2 x design tyre diameter x sin(angle) at the highest place looked at for bump toe, toe-in positive",
    source=EXACT,
    heavy=True,
)
def toe_in_bump(
    moving_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Toe of both wheels together at the top of the travel looked at, against ride height, mm: toe-in positive.

    >>> round(toe_in_bump(parallel_arms(), parallel_sweep(), 60.0, 60.0, 800.0), 6) + 0.0
    0.0
    """
    top = _looked_at(droop_travel, bump_travel)[-1]
    return toe(design_tyre_diameter, _steer(moving_front, 0.0) - _steer(moving_front, top))


@value(
    "travel",
    formula=f"{BUMP_TOE}, steering held at half lock, of the wheel that does it more",
    source=EXACT,
    heavy=True,
)
def bump_toe_turned(
    moving_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Bump steer at half lock, mm: as bump_toe, with the angle of the inner or the outer wheel, whichever moves more.

    Below, the axis leans 25 mm in 250, so at lock the tie rod's end no longer moves level with the arms.

    >>> bump_toe_turned(parallel_arms(), parallel_sweep(), 60.0, 60.0, 800.0) > 0.0
    True
    """
    travels = _looked_at(droop_travel, bump_travel)
    return toe(
        design_tyre_diameter, max(_steer_spread(moving_front, travels, lock) for lock in (HALF_LOCK, -HALF_LOCK))
    )


@value(
    "travel",
    formula="as it moves; with one rod across the other wheel's end of the rod stands still, straight at ride height",
    source=EXACT,
)
def lone_front(moving_front: FrontEnd, steering_linkage: SteeringLinkage) -> FrontEnd:
    """The left corner as it travels alone, the steering held.

    A tie rod of its own does as when both travel. One rod across then is a tie rod from a fixed inner end: the other wheel's
    arm, held as by the steering box.

    >>> front = parallel_arms()
    >>> lone_front(front, front.linkage) is front
    True
    """
    if steering_linkage.inner is not None:
        return moving_front
    end = moving_front.at(0.0, 0.0).tie_rod_end
    assert end is not None
    centre = steering_linkage.centre_line
    other = SteeringLinkage("rack", mirrored(end, centre), centre, travel=SLIDE, toe=steering_linkage.toe)
    return moving_front.steered(moving_front.upright, other)


@value(
    "travel",
    formula="2 x design tyre diameter x sin(largest - least angle of a wheel that travels as bump toe is looked at), while "
    "the other stands straight at ride height; one rod across only",
    source=EXACT,
    heavy=True,
)
def bump_toe_alone(
    lone_front: FrontEnd,
    travel_reached: Sweep,
    steering_linkage: SteeringLinkage,
    droop_travel: Mm,
    bump_travel: Mm,
    design_tyre_diameter: Mm,
) -> Mm:
    """Bump steer of a wheel that travels alone, one rod across, mm as bump_toe is told: the rod's other end stands still.

    Level arms of 300 mm and a rod of 1200 mm from arm to arm, 60 mm up: the arm's end goes in by 6.0612, the rod's own end by
    1200 - root(1200^2 - 60^2) = 1.501; what is left, 4.560 mm, turns an arm of some 130 mm by 0.035 rad, 56 mm on 800 mm of
    tyre, both wheels' worth.

    >>> front = parallel_arms()
    >>> across = SteeringLinkage("one rod across", None, -800.0, stop=0.5)
    >>> alone = lone_front(front.steered(front.upright, across), across)
    >>> 50.0 < bump_toe_alone(alone, parallel_sweep(), across, 60.0, 60.0, 800.0) < 60.0
    True
    """
    if steering_linkage.inner is not None:
        raise DoesNotApply("each wheel has a tie rod of its own, so it is steered alike whether one travels or both")
    return toe(design_tyre_diameter, _steer_spread(lone_front, _looked_at(droop_travel, bump_travel)))


FIT = (
    "where bump toe is least by the largest less the least angle: beside the centre of the sphere that best fits the path of "
    "the tie rod's outer end, wheel held straight; its place ahead kept"
)


@value(
    "travel",
    formula=FIT,
    source=sources.GEOMETRY.saying("linear least squares, then golden section; rules/motion/travel.py"),
    heavy=True,
)
def best_inner(
    moving_front: FrontEnd, travel_reached: Sweep, steering_linkage: SteeringLinkage, droop_travel: Mm, bump_travel: Mm
) -> InnerPivot:
    """Where the tie rod's inner pivot would make bump steer least, over the travel that bump_toe is looked at.

    Level arms of 300 mm: on their hinge line, as high as the rod's outer end.

    >>> front = parallel_arms()
    >>> best_inner(front, parallel_sweep(), front.linkage, 60.0, 60.0).words_in("metric")
    '380 mm inboard of the tyre centre plane, 360 mm above ground'
    """
    if steering_linkage.inner is None:
        raise DoesNotApply("one rod across has no inner pivot to move")
    travels = _looked_at(droop_travel, bump_travel)
    path = [moving_front.straight(travel).tie_rod_end for travel in travels]
    fitted = best_inner_pivot([end for end in path if end is not None], steering_linkage.inner[0])
    if fitted is None:
        raise DoesNotApply("the tie rod's outer end travels in a straight line, which no inner pivot can follow")
    try:
        return least_steering(moving_front, travels, fitted)
    except CannotReach:
        raise NotJudged(NOT_STEERED) from None


@value("travel", formula="half the track - the best inner pivot's distance from the tyre plane", source=EXACT)
def best_inner_from_centre(best_inner: InnerPivot, track: Mm) -> Mm:
    """Where the tie rod's inner pivot would make bump steer least, mm from the centre line; minus lies beyond it.

    >>> best_inner_from_centre(InnerPivot(-380.0, 360.0), 1600.0)
    420.0
    """
    return best_inner.across + track / 2


@value("travel", formula="from the best inner pivot", source=EXACT)
def best_inner_height(best_inner: InnerPivot) -> Mm:
    """Where the tie rod's inner pivot would make bump steer least, mm above ground at ride height.

    >>> best_inner_height(InnerPivot(-380.0, 360.0))
    360.0
    """
    return best_inner.up


@value("travel", formula="bump toe, worked out again with the best inner pivot", source=EXACT, heavy=True)
def best_bump_toe(
    moving_front: FrontEnd, best_inner: InnerPivot, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Bump steer that is left with the best inner pivot, mm, as bump_toe.

    >>> round(best_bump_toe(parallel_arms(), InnerPivot(-380.0, 360.0), 60.0, 60.0, 800.0), 6) + 0.0
    0.0
    """
    try:
        moved = from_inner_pivot(moving_front, best_inner)
        return toe(design_tyre_diameter, _steer_spread(moved, _looked_at(droop_travel, bump_travel)))
    except (CannotReach, NotJudged):
        raise NotJudged(NOT_STEERED) from None
