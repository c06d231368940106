"""What the driver's hands do: turns from lock to lock, ratio, and the steering-wheel effort, standing and rolling."""

from math import hypot, pi

from rules.graph.declare import value
from rules.graph.results import DoesNotApply
from rules.measure.quantity import GRAVITY
from rules.measure.units import Kg, Mm, Newton, NewtonMetre, Ratio
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.sweep import Sweep
from rules.motion.turning import turn_per_slide
from rules.tables import sources
from rules.values.steering.motion import EXACT
from rules.values.steering.returning import GENTLE, rim_effort

LITTLE = 1e-3
"""Of full lock; the ratio is taken over so much either side."""
DRY = 0.7
"""Friction of tyre on dry ground in the formula of scrub, as published with it; from memory."""
NO_RACK = "with one rod across it is not asked what turns the arm"


@value("steering wheel", formula="2 x slide at full lock / travel per turn", source=EXACT)
def turns_lock_to_lock(steered_front: FrontEnd, lock_sweep: Sweep, travel_per_turn: Mm) -> Ratio:
    """Whole turns of the steering wheel from one full lock to the other.

    75 mm each way, 50 mm a turn:

    >>> turns_lock_to_lock(straight_rack(), through_lock(straight_rack()), 50.0)
    3.0
    """
    if steered_front.linkage is None or steered_front.linkage.how == "one rod across":
        raise DoesNotApply(NO_RACK)
    return 2 * abs(steered_front.full) / travel_per_turn


def ratio_at(front: FrontEnd, travel_per_turn: float, lock: float) -> float:
    """Turn of the steering wheel for the turn of the wheels about a lock, 0 to 1, both wheels' mean, seen from above.

    Arms of 150 mm and a rack square to them: a mm of slide is 1 / 150 rad straight ahead, and 2 pi / 50 of the steering wheel.

    >>> round(ratio_at(straight_rack(), 50.0, 0.0), 3), round(2 * pi / 50 * 150, 3)
    (18.85, 18.85)
    """
    near, far = max(lock - LITTLE, 0.0), min(lock + LITTLE, 1.0)

    def mean(lock: float) -> float:
        return (front.at(0.0, lock).steer - front.at(0.0, -lock).steer) / 2

    return 2 * pi * abs(front.full) * (far - near) / travel_per_turn / (mean(far) - mean(near))


@value(
    "steering wheel",
    formula="turn of the steering wheel / turn of a wheel seen from above, both wheels' mean, {place_words}",
    source=EXACT,
    each=(
        {"place": "straight", "place_words": "straight ahead"},
        {"place": "full_lock", "place_words": "at the end of the lock"},
    ),
)
def steering_ratio_place(steered_front: FrontEnd, lock_sweep: Sweep, travel_per_turn: Mm, place: str) -> Ratio:
    """Steering ratio {place_words}.

    Arms of 150 mm and a rack square to them: a mm of slide is 1 / 150 rad, and 2 pi / 50 of the steering wheel.

    >>> front = straight_rack()
    >>> round(steering_ratio_place(front, through_lock(front), 50.0, "straight"), 3), round(2 * pi / 50 * 150, 3)
    (18.85, 18.85)
    """
    if steered_front.linkage is None or steered_front.linkage.how == "one rod across":
        raise DoesNotApply(NO_RACK)
    return ratio_at(steered_front, travel_per_turn, 0.0 if place == "straight" else 1.0)


@value(
    "steering wheel",
    formula="2 x corner weight x g x 0.7 x root(tyre width^2 / 8 + ground offset^2)",
    source=sources.TABOREK.saying("the tyre's contact as a disc as wide as the tread, turned on dry ground"),
)
def standing_scrub_moment(
    steering_begun: bool, corner_weight: Kg, tyre_section_width: Mm, ground_offset: Mm
) -> NewtonMetre:
    """Moment that turns both standing wheels about their axes against the ground, N m; the tyre rolls about its offset.

    250 kg, 240 mm wide, no offset: 2 x 250 x 9.80665 x 0.7 x 0.24 / root 8 = 291.25.

    >>> round(standing_scrub_moment(True, 250.0, 240.0, 0.0), 2)
    291.24
    """
    lever = hypot(tyre_section_width / 8**0.5, ground_offset) / 1000
    return 2 * corner_weight * GRAVITY * DRY * lever


@value(
    "steering wheel",
    formula="standing scrub moment x turn of a wheel by slide x travel per turn / (pi x steering wheel diameter)",
    source=sources.STATICS.saying("virtual work, wheels straight ahead; no friction, no help"),
)
def standing_rim_effort(
    steered_front: FrontEnd,
    lock_sweep: Sweep,
    standing_scrub_moment: NewtonMetre,
    travel_per_turn: Mm | None,
    steering_wheel_diameter: Mm | None,
) -> Newton:
    """Steering-wheel effort, at the rim, that begins to turn the standing car's wheels, N. No friction in the linkage, no help.

    300 N m on arms of 150 mm: 2000 N on the rack, times 50 / (pi x 350).

    >>> round(standing_rim_effort(straight_rack(), through_lock(straight_rack()), 300.0, 50.0, 350.0), 2)
    90.95
    """
    return _rim_effort(steered_front, standing_scrub_moment, travel_per_turn, steering_wheel_diameter)


@value(
    "steering wheel",
    formula="side force moment x turn of a wheel by slide x travel per turn / (pi x steering wheel diameter)",
    source=(sources.STATICS.saying("virtual work, wheels nearly straight ahead; no friction, no help"), GENTLE),
)
def rolling_rim_effort(
    steered_front: FrontEnd,
    lock_sweep: Sweep,
    side_force_moment: NewtonMetre,
    travel_per_turn: Mm | None,
    steering_wheel_diameter: Mm | None,
) -> Newton:
    """Steering-wheel effort, at the rim, that holds a gentle bend, N; minus where the tyres' side force pulls further in.

    20 N m on arms of 150 mm: 133.3 N on the rack, times 50 / (pi x 350).

    >>> round(rolling_rim_effort(straight_rack(), through_lock(straight_rack()), 20.0, 50.0, 350.0), 3)
    6.063
    """
    return _rim_effort(steered_front, side_force_moment, travel_per_turn, steering_wheel_diameter)


def _rim_effort(front: FrontEnd, moment: float, travel_per_turn: float | None, diameter: float | None) -> float:
    """From the moment about both axes, N m, wheels straight ahead, to the steering-wheel effort, N."""
    linkage: SteeringLinkage | None = front.linkage
    if linkage is None or linkage.how == "one rod across":
        raise DoesNotApply(NO_RACK)
    rack = 1000 * moment * abs(turn_per_slide(linkage, front.at(0.0, 0.0)))
    return rim_effort(rack, travel_per_turn, diameter)
