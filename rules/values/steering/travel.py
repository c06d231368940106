"""What changes as the wheel travels: camber, castor, track and roll centre."""

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged
from rules.measure.units import Mm, Rad
from rules.motion.front_end import FrontEnd
from rules.motion.place_words import height
from rules.motion.sweep import Sweep, lowest
from rules.motion.travel import instant_centre, largest_change, steepest, stretches
from rules.motion.travel import roll_centre_height as height_of_roll_centre
from rules.tables import sources
from rules.values.steering.motion import EXACT

CONSTRUCTION = sources.GEOMETRY.saying("the usual front-view construction, the arms' planes cut through the contact")
STRETCH = 25.0
"""mm of travel that camber change is told for."""

BOTH_TRAVELS = ("arms.bump_travel", "arms.droop_travel")
REAR_PIVOTS = ("arms.lower_rear_ahead", "arms.upper_rear_ahead")


@value("travel", formula="every place from full droop to full bump, where the arms reach them all", source=EXACT)
def travel_reached(travel_sweep: Sweep) -> Sweep:
    """The left corner through its travel, known to be reached in full. Refuses where the arms lock before: that is
    judged by itself.

    >>> len(travel_reached(parallel_sweep()).placed)
    9
    """
    if travel_sweep.blocked:
        least = min(travel_sweep.blocked, key=lambda blocked: abs(blocked.locks_at))
        there, figures = height(least.locks_at)
        raise NotJudged(
            f"the arms lock at {there}, before the travel entered, so nothing more was judged in travel",
            figures=figures,
        )
    if len(travel_sweep.placed) == 1:
        raise NotJudged("bump and droop travel are both nought, so travel was not judged", *BOTH_TRAVELS)
    return travel_sweep


BUMP_AND_DROOP = ({"which": "bump"}, {"which": "droop"})
"""The two ends of the travel."""


def end_of(which: str, travel: float) -> float:
    """The travel at one of its ends, mm, up positive.

    >>> end_of("droop", 60.0)
    -60.0
    """
    return travel if which == "bump" else -travel


@value(
    "travel",
    formula="camber at full {which} - camber at ride height, wheel held straight",
    source=EXACT,
    each=BUMP_AND_DROOP,
)
def camber_change_which(hung_front: FrontEnd, travel_reached: Sweep, which_travel: Mm, which: str) -> Rad:
    """Change of camber from ride height to full {which}, rad, top outboard positive.

    Arms of one length, level: the upright stays upright.

    >>> round(camber_change_which(parallel_arms(), parallel_sweep(), 60.0, "bump"), 9) + 0.0
    0.0
    """
    return hung_front.straight(end_of(which, which_travel)).camber - hung_front.straight(0.0).camber


@value(
    "travel",
    formula="largest change of camber over [1 in | 25 mm] of travel, in size: every so far from full droop up, and the last "
    "of it to full bump; over the whole travel where that is less",
    source=EXACT,
    heavy=True,
)
def camber_per_25_mm(hung_front: FrontEnd, travel_reached: Sweep, droop_travel: Mm, bump_travel: Mm) -> Rad:
    """How fast camber changes where it changes fastest, rad for [1 in | 25 mm] of travel, and where.

    >>> round(camber_per_25_mm(parallel_arms(), parallel_sweep(), 60.0, 60.0), 9) + 0.0
    0.0
    """
    places = stretches(-droop_travel, bump_travel, STRETCH)
    camber = {travel: hung_front.straight(travel).camber for stretch in places for travel in stretch}
    return steepest(places, camber.__getitem__)


@value("travel", formula="the castor in the travel that differs most from ride height, less that at ride", source=EXACT)
def castor_change(hung_front: FrontEnd, travel_reached: Sweep) -> Rad:
    """Largest change of castor in the travel against ride height, rad, more castor positive, and where.

    >>> round(castor_change(parallel_arms(), parallel_sweep()), 9) + 0.0
    0.0
    """
    _needs_side_view(hung_front)
    return largest_change(travel_reached, lambda pose: pose.castor, hung_front.straight(0.0))


@value("travel", formula="the smallest castor in the travel", source=EXACT)
def least_castor(hung_front: FrontEnd, travel_reached: Sweep) -> Rad:
    """Smallest castor anywhere in the travel, rad, and where.

    The axis leans 25 back in 250 and keeps its lean: atan(0.1).

    >>> from math import degrees
    >>> round(degrees(least_castor(parallel_arms(), parallel_sweep())), 4)
    5.7106
    """
    _needs_side_view(hung_front)
    return lowest(travel_reached, lambda pose: pose.castor)


def _needs_side_view(front: FrontEnd) -> None:
    assert front.arms is not None
    if any(hinge.flat for hinge in front.arms):
        raise NotJudged("an arm is known from the front only, so castor in the travel was not judged", *REAR_PIVOTS)


@value("travel", formula="the ground offset in the travel that differs most from ride height, less that", source=EXACT)
def ground_offset_change(hung_front: FrontEnd, travel_reached: Sweep) -> Mm:
    """Largest change of ground offset in the travel, mm, the axis moving inboard positive, and where.

    >>> round(ground_offset_change(parallel_arms(), parallel_sweep()), 9) + 0.0
    0.0
    """
    return largest_change(travel_reached, lambda pose: pose.ground_offset, hung_front.straight(0.0))


@value("travel", formula="the contact's largest sideways move in the travel, one wheel", source=EXACT)
def track_change(hung_front: FrontEnd, travel_reached: Sweep) -> Mm:
    """How far one tyre's contact moves sideways against ride height, mm, outboard positive, and where.

    Arms of 300 mm swung 60 mm: 300 - root(300^2 - 60^2) inboard.

    >>> round(track_change(parallel_arms(), parallel_sweep()), 6)
    -6.061231
    """
    return largest_change(travel_reached, lambda pose: pose.contact[1], hung_front.straight(0.0))


@value(
    "travel",
    formula="smallest distance in the travel from the contact forward to where the steering axis meets the ground",
    source=EXACT,
)
def least_trail(hung_front: FrontEnd, travel_reached: Sweep) -> Mm:
    """Smallest mechanical trail anywhere in the travel, mm, and where.

    The axis leans 25 back in 250 and keeps its lean; 20 ahead at 300 up, it meets the ground 50 ahead.

    >>> round(least_trail(parallel_arms(), parallel_sweep()), 6)
    50.0
    """
    _needs_side_view(hung_front)
    return lowest(travel_reached, lambda pose: pose.landing[0] - pose.contact[0])


def _instant_centre(front: FrontEnd) -> tuple[float, float]:
    assert front.arms is not None
    found = instant_centre(front.arms, front.straight(0.0))
    if found is None:
        raise DoesNotApply("the arms are parallel seen from the front, so they meet nowhere")
    return found


@value("travel", formula="where the arms' planes meet, from the contact, seen from the front", source=CONSTRUCTION)
def instant_centre_from_tyre(hung_front: FrontEnd) -> Mm:
    """Where the arms point to at ride height, mm from the tyre centre plane, inboard positive.

    Lower arm level at 300 high; upper arm 600 high at the upright, falling 100 in 300: they meet 900 inboard, 300 up.

    >>> round(instant_centre_from_tyre(meeting_arms()), 6)
    900.0
    """
    return -_instant_centre(hung_front)[0]


@value("travel", formula="where the arms' planes meet, above ground, seen from the front", source=CONSTRUCTION)
def instant_centre_height(hung_front: FrontEnd) -> Mm:
    """Where the arms point to at ride height, mm above ground.

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
        raise DoesNotApply("the instant centre stands straight above the contact, so there is no roll centre")
    return found


@value("travel", formula="height, on the centre line, of the line from contact to instant centre", source=CONSTRUCTION)
def roll_centre_height(hung_front: FrontEnd, track: Mm) -> Mm:
    """Roll centre at ride height, mm above ground. With parallel arms the line runs along them.

    Arms meet 900 mm inboard and 300 up; track 900: half way there, half as high.

    >>> round(roll_centre_height(meeting_arms(), 900.0), 6)
    150.0
    """
    return _roll_centre(hung_front, 0.0, track)


@value(
    "travel",
    formula="the same at full {which} of both wheels, above the ground moved with them",
    source=CONSTRUCTION,
    each=BUMP_AND_DROOP,
)
def roll_centre_which(hung_front: FrontEnd, travel_reached: Sweep, which_travel: Mm, track: Mm, which: str) -> Mm:
    """Roll centre at full {which}, mm above the ground the tyres stand on.

    Parallel arms of 300 mm swung up 60, so inboard ends 60 lower: slope 60 / root(300^2 - 60^2); the contact is 6.061231
    further inboard than at ride, so 793.938769 from the centre line: 162.062073 below ground. Swung down, above it.

    >>> front, sweep = parallel_arms(), parallel_sweep()
    >>> [round(roll_centre_which(front, sweep, 60.0, 1600.0, end), 6) for end in ("bump", "droop")]
    [-162.062073, 162.062073]
    """
    return _roll_centre(hung_front, end_of(which, which_travel), track)
