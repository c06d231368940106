"""What changes as the wheel travels: camber, castor, track, roll centre, and the toe that the tie rod gives it."""

from rules.graph import value
from rules.motion.front_end import FrontEnd, Linkage
from rules.motion.points import CannotReach, Pose
from rules.motion.sweep import Sweep, lowest, spread
from rules.motion.travel import best_inner_pivot, instant_centre, largest_change, steepest, toe
from rules.motion.travel import roll_centre_height as height_of_roll_centre
from rules.results import NotForThisBuild
from rules.units import Mm, Rad

EXACT = "geometry: every link keeps its length; rules/motion"
CONSTRUCTION = "geometry: the usual front-view construction, the arms' planes cut through the contact"
USUAL_TRAVEL = 75.0
"""mm each way: how far bump steer is usually looked at; from memory."""
PLACES = 13
STRETCH = 25.0
"""mm of travel that camber change is told for."""
HALF_LOCK = 0.5


def place(travel: float) -> str:
    """A travel in words.

    >>> place(75.0), place(-30.0), place(0.0)
    ('75 mm bump', '30 mm droop', 'ride height')
    """
    if not travel:
        return "ride height"
    return f"{abs(travel):.3g} mm {'bump' if travel > 0 else 'droop'}"


@value("travel", formula="every place from full droop to full bump, where the arms reach them all", source=EXACT)
def travel_reached(travel_sweep: Sweep) -> Sweep:
    """The left corner through its travel, known to be reached in full. Refuses where the arms lock before: that is
    judged by itself.

    >>> from rules.motion.examples import parallel_sweep
    >>> len(travel_reached(parallel_sweep()).placed)
    9
    """
    if travel_sweep.blocked:
        least = min(travel_sweep.blocked, key=lambda blocked: abs(blocked.locks_at))
        raise NotForThisBuild(
            f"the arms lock at {place(least.locks_at)}, before the travel entered, so nothing more was judged in travel"
        )
    if len(travel_sweep.placed) == 1:
        raise NotForThisBuild("bump and droop travel are both nought, so travel was not judged")
    return travel_sweep


@value("travel", formula="camber at full bump - camber at ride height, wheel held straight", source=EXACT)
def camber_change_bump(hung_front: FrontEnd, travel_reached: Sweep, bump_travel: Mm) -> Rad:
    """Change of camber from ride height to full bump, rad, top outboard positive.

    Arms of one length, level: the upright stays upright.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(camber_change_bump(parallel_arms(), parallel_sweep(), 60.0), 9) + 0.0
    0.0
    """
    return hung_front.straight(bump_travel).camber - hung_front.straight(0.0).camber


@value("travel", formula="camber at full droop - camber at ride height, wheel held straight", source=EXACT)
def camber_change_droop(hung_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm) -> Rad:
    """Change of camber from ride height to full droop, rad, top outboard positive.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(camber_change_droop(parallel_arms(), parallel_sweep(), 60.0), 9) + 0.0
    0.0
    """
    return hung_front.straight(-droop_travel).camber - hung_front.straight(0.0).camber


@value(
    "travel",
    formula="largest change of camber between neighbouring places of the travel, brought to 25 mm, in size",
    source=EXACT,
)
def camber_per_25_mm(travel_reached: Sweep) -> Rad:
    """How fast camber changes where it changes fastest, rad for 25 mm of travel, and where.

    >>> from rules.motion.examples import parallel_sweep
    >>> round(camber_per_25_mm(parallel_sweep()), 9) + 0.0
    0.0
    """
    return steepest(travel_reached, lambda pose: pose.camber, STRETCH)


@value("travel", formula="the castor in the travel that differs most from ride height, less that at ride", source=EXACT)
def castor_change(hung_front: FrontEnd, travel_reached: Sweep) -> Rad:
    """Largest change of castor in the travel against ride height, rad, more castor positive, and where.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(castor_change(parallel_arms(), parallel_sweep()), 9) + 0.0
    0.0
    """
    _needs_side_view(hung_front)
    return largest_change(travel_reached, lambda pose: pose.castor, hung_front.straight(0.0))


@value("travel", formula="the smallest castor in the travel", source=EXACT)
def least_castor(hung_front: FrontEnd, travel_reached: Sweep) -> Rad:
    """Smallest castor anywhere in the travel, rad, and where.

    The axis leans 25 back in 250 and keeps its lean: atan(0.1).

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> from math import degrees
    >>> round(degrees(least_castor(parallel_arms(), parallel_sweep())), 4)
    5.7106
    """
    _needs_side_view(hung_front)
    return lowest(travel_reached, lambda pose: pose.castor)


def _needs_side_view(front: FrontEnd) -> None:
    assert front.arms is not None
    if any(hinge.flat for hinge in front.arms):
        raise NotForThisBuild("an arm is known from the front only, so castor in the travel was not judged")


@value("travel", formula="the ground offset in the travel that differs most from ride height, less that", source=EXACT)
def ground_offset_change(hung_front: FrontEnd, travel_reached: Sweep) -> Mm:
    """Largest change of ground offset in the travel, mm, the axis moving inboard positive, and where.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(ground_offset_change(parallel_arms(), parallel_sweep()), 9) + 0.0
    0.0
    """
    return largest_change(travel_reached, lambda pose: pose.ground_offset, hung_front.straight(0.0))


@value("travel", formula="the contact's largest sideways move in the travel, one wheel", source=EXACT)
def track_change(hung_front: FrontEnd, travel_reached: Sweep) -> Mm:
    """How far one tyre's contact moves sideways against ride height, mm, outboard positive, and where.

    Arms of 300 mm swung 60 mm: 300 - root(300^2 - 60^2) inboard.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(track_change(parallel_arms(), parallel_sweep()), 6)
    -6.061231
    """
    return largest_change(travel_reached, lambda pose: pose.contact[1], hung_front.straight(0.0))


def _instant_centre(front: FrontEnd) -> tuple[float, float]:
    assert front.arms is not None
    found = instant_centre(front.arms, front.straight(0.0))
    if found is None:
        raise NotForThisBuild("the arms are parallel seen from the front, so they meet nowhere")
    return found


@value("travel", formula="where the arms' planes meet, from the contact, seen from the front", source=CONSTRUCTION)
def instant_centre_from_tyre(hung_front: FrontEnd) -> Mm:
    """Where the arms point to at ride height, mm from the tyre centre plane, inboard positive.

    Lower arm level at 300 high; upper arm 600 high at the upright, falling 100 in 300: they meet 900 inboard, 300 up.

    >>> from rules.motion.examples import meeting_arms
    >>> round(instant_centre_from_tyre(meeting_arms()), 6)
    900.0
    """
    return -_instant_centre(hung_front)[0]


@value("travel", formula="where the arms' planes meet, above ground, seen from the front", source=CONSTRUCTION)
def instant_centre_height(hung_front: FrontEnd) -> Mm:
    """Where the arms point to at ride height, mm above ground.

    >>> from rules.motion.examples import meeting_arms
    >>> round(instant_centre_height(meeting_arms()), 6)
    300.0
    """
    return _instant_centre(hung_front)[1]


@value("travel", formula="size of the distance across from contact to instant centre", source=CONSTRUCTION)
def swing_arm_length(instant_centre_from_tyre: Mm) -> Mm:
    """Length of the arm the wheel seems to swing on, seen from the front, mm; camber turns by 1 / this a mm of travel.

    >>> swing_arm_length(-1500.0)
    1500.0
    """
    return abs(instant_centre_from_tyre)


def _roll_centre(front: FrontEnd, travel: float, track: float) -> float:
    assert front.arms is not None
    found = height_of_roll_centre(front.arms, front.straight(travel), -track / 2)
    if found is None:
        raise NotForThisBuild("the instant centre stands straight above the contact, so there is no roll centre")
    return found


@value("travel", formula="height, on the centre line, of the line from contact to instant centre", source=CONSTRUCTION)
def roll_centre_height(hung_front: FrontEnd, track: Mm) -> Mm:
    """Roll centre at ride height, mm above ground. With parallel arms the line runs along them.

    Arms meet 900 mm inboard and 300 up; track 900: half way there, half as high.

    >>> from rules.motion.examples import meeting_arms
    >>> round(roll_centre_height(meeting_arms(), 900.0), 6)
    150.0
    """
    return _roll_centre(hung_front, 0.0, track)


@value("travel", formula="the same at full bump of both wheels, above the ground moved with them", source=CONSTRUCTION)
def roll_centre_bump(hung_front: FrontEnd, travel_reached: Sweep, bump_travel: Mm, track: Mm) -> Mm:
    """Roll centre at full bump, mm above the ground the tyres stand on.

    Parallel arms of 300 mm swung up 60, so inboard ends 60 lower: slope 60 / root(300^2 - 60^2); the contact is 6.061231
    further inboard than at ride, so 793.938769 from the centre line: 162.062073 below ground.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(roll_centre_bump(parallel_arms(), parallel_sweep(), 60.0, 1600.0), 6)
    -162.062073
    """
    return _roll_centre(hung_front, bump_travel, track)


@value("travel", formula="the same at full droop of both wheels, above the ground moved with them", source=CONSTRUCTION)
def roll_centre_droop(hung_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, track: Mm) -> Mm:
    """Roll centre at full droop, mm above the ground the tyres stand on.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(roll_centre_droop(parallel_arms(), parallel_sweep(), 60.0, 1600.0), 6)
    162.062073
    """
    return _roll_centre(hung_front, -droop_travel, track)


def _looked_at(droop: float, bump: float) -> list[float]:
    """Where bump steer is looked at: 75 mm each way, or the travel entered where that is less."""
    return spread(-min(USUAL_TRAVEL, droop), min(USUAL_TRAVEL, bump), PLACES)


def _steered(front: FrontEnd, travel: float, lock: float = 0.0) -> Pose:
    try:
        return front.at(travel, lock)
    except CannotReach:
        held = "half lock" if lock else "the wheels straight"
        raise NotForThisBuild(f"at {place(travel)} and {held} the tie rod does not reach") from None


def _steer_spread(front: FrontEnd, droop: float, bump: float, lock: float = 0.0) -> float:
    steers = [_steered(front, travel, lock).steer for travel in _looked_at(droop, bump)]
    return max(steers) - min(steers)


BUMP_TOE = (
    "2 x design tyre diameter x sin(largest - least angle of one wheel) over 75 mm each way, or the travel entered "
    "where that is less"
)


@value("travel", formula=f"{BUMP_TOE}, steering straight ahead", source=EXACT)
def bump_toe(
    moving_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Bump steer: toe change of both wheels together, front against rear across the treads, mm, both wheels moving alike.

    A tie rod level with the level arms, of their length and over their hinge lines, follows the upright.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(bump_toe(parallel_arms(), parallel_sweep(), 60.0, 60.0, 800.0), 6) + 0.0
    0.0
    """
    return toe(design_tyre_diameter, _steer_spread(moving_front, droop_travel, bump_travel))


@value(
    "travel",
    formula="2 x design tyre diameter x sin(angle) at the highest place looked at for bump toe, toe-in positive",
    source=EXACT,
)
def toe_in_bump(
    moving_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Toe of both wheels together at the top of the travel looked at, against ride height, mm: toe-in positive.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> round(toe_in_bump(parallel_arms(), parallel_sweep(), 60.0, 60.0, 800.0), 6) + 0.0
    0.0
    """
    top = _looked_at(droop_travel, bump_travel)[-1]
    return toe(design_tyre_diameter, _steered(moving_front, 0.0).steer - _steered(moving_front, top).steer)


@value("travel", formula=f"{BUMP_TOE}, steering held at half lock, of the wheel that does it more", source=EXACT)
def bump_toe_turned(
    moving_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm, design_tyre_diameter: Mm
) -> Mm:
    """Bump steer at half lock, mm: as bump_toe, with the angle of the inner or the outer wheel, whichever moves more.

    Below, the axis leans 25 mm in 250, so at lock the tie rod's end no longer moves level with the arms.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> bump_toe_turned(parallel_arms(), parallel_sweep(), 60.0, 60.0, 800.0) > 0.0
    True
    """
    spreads = (_steer_spread(moving_front, droop_travel, bump_travel, lock) for lock in (HALF_LOCK, -HALF_LOCK))
    return toe(design_tyre_diameter, max(spreads))


def _best_inner(front: FrontEnd, linkage: Linkage, droop: float, bump: float) -> tuple[float, float]:
    if linkage.inner is None:
        raise NotForThisBuild("one rod across has no inner pivot to move")
    path = [front.straight(travel).tie_rod_end for travel in _looked_at(droop, bump)]
    found = best_inner_pivot([end for end in path if end is not None], linkage.inner[0])
    if found is None:
        raise NotForThisBuild("the tie rod's outer end travels in a straight line, which no inner pivot can follow")
    return found


FIT = (
    "centre of the sphere that best fits the path of the tie rod's outer end, wheel held straight, over the travel "
    "that bump toe is looked at; its place ahead kept"
)
LEAST_SQUARES = "geometry: linear least squares, rules/motion/travel.py"


@value("travel", formula=f"{FIT}; from the centre line", source=LEAST_SQUARES)
def best_inner_from_centre(
    moving_front: FrontEnd,
    travel_reached: Sweep,
    steering_linkage: Linkage,
    droop_travel: Mm,
    bump_travel: Mm,
    track: Mm,
) -> Mm:
    """Where the tie rod's inner pivot would make bump steer least, mm from the centre line; minus lies beyond it.

    Level arms of 300 mm: their hinge line, 380 inboard of the tyre plane, so 420 from the centre of a track of 1600.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> front = parallel_arms()
    >>> round(best_inner_from_centre(front, parallel_sweep(), front.linkage, 60.0, 60.0, 1600.0), 6)
    420.0
    """
    return _best_inner(moving_front, steering_linkage, droop_travel, bump_travel)[0] + track / 2


@value("travel", formula=f"{FIT}; above ground at ride height", source=LEAST_SQUARES)
def best_inner_height(
    moving_front: FrontEnd, travel_reached: Sweep, steering_linkage: Linkage, droop_travel: Mm, bump_travel: Mm
) -> Mm:
    """Where the tie rod's inner pivot would make bump steer least, mm above ground at ride height.

    >>> from rules.motion.examples import parallel_arms, parallel_sweep
    >>> front = parallel_arms()
    >>> round(best_inner_height(front, parallel_sweep(), front.linkage, 60.0, 60.0), 6)
    360.0
    """
    return _best_inner(moving_front, steering_linkage, droop_travel, bump_travel)[1]


@value("travel", formula="bump toe, worked out again with the best inner pivot", source=EXACT)
def best_bump_toe(
    moving_front: FrontEnd,
    steering_linkage: Linkage,
    best_inner_from_centre: Mm,
    best_inner_height: Mm,
    droop_travel: Mm,
    bump_travel: Mm,
    design_tyre_diameter: Mm,
    track: Mm,
) -> Mm:
    """Bump steer that is left with the best inner pivot, mm, as bump_toe.

    >>> from rules.motion.examples import parallel_arms
    >>> front = parallel_arms()
    >>> round(best_bump_toe(front, front.linkage, 420.0, 360.0, 60.0, 60.0, 800.0, 1600.0), 6) + 0.0
    0.0
    """
    assert steering_linkage.inner is not None
    inner = (steering_linkage.inner[0], best_inner_from_centre - track / 2, best_inner_height)
    try:
        front = FrontEnd(moving_front.upright, moving_front.arms, Linkage("rack", inner, -track / 2, travel=STRETCH))
        return toe(design_tyre_diameter, _steer_spread(front, droop_travel, bump_travel))
    except (CannotReach, NotForThisBuild):
        raise NotForThisBuild("from the best inner pivot the tie rod would not steer the wheel") from None
