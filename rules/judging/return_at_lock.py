"""What the car's weight, the ground under standing tyres and the steering wheel do to both wheels at one lock and ride height.

The values of a lock's end (rules/values/steering/returning.py), worked out for a lock that ends there.
"""

from rules.judging.reader import reads
from rules.measure.units import Kg, Mm, Newton, NewtonMetre, Ratio
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.sweep import Placed, Sweep
from rules.motion.turning import turn_per_slide
from rules.values.steering.returning import rack_force_full_lock
from rules.values.steering.returning import return_moment_full_lock as moment_at_full_lock
from rules.values.steering.returning import rim_effort as effort_at_full_lock
from rules.values.steering.steering_wheel import ratio_at


def lock_up_to(front: FrontEnd, lock: float) -> Sweep:
    """The left corner at ride height at a lock, 0 to 1, and at the opposite one: both wheels of that turn.

    >>> [placed.lock for placed in lock_up_to(leaning(), 0.5).placed]
    [-0.5, 0.5]
    """
    return Sweep(tuple(Placed(0.0, side, front.at(0.0, side)) for side in (-lock, lock)))


@reads
def return_moment_at(
    steered_front: FrontEnd,
    steering_linkage: SteeringLinkage,
    job_corner_weight: Kg,
    return_moment_full_lock: NewtonMetre,
    *,
    lock: float,
) -> float | None:
    """Moment about the inner wheel's axis that returns both wheels, N m; None where it is not known. lock: 0 to 1.

    A linkage that locks before its full lock has no moment there, and so no lock to look at.
    """
    return _return_moment(steered_front, steering_linkage, job_corner_weight, lock)


@reads
def rim_effort_at(
    steered_front: FrontEnd,
    steering_linkage: SteeringLinkage,
    job_corner_weight: Kg,
    travel_per_turn: Mm,
    steering_wheel_diameter: Mm,
    rim_effort: Newton,
    *,
    lock: float,
) -> float | None:
    """Steering-wheel effort, at the rim, that holds a lock against the weight, N; None where it is not known."""
    moment = _return_moment(steered_front, steering_linkage, job_corner_weight, lock)
    force = rack_force_full_lock(lock_up_to(steered_front, lock), steering_linkage, moment)
    return effort_at_full_lock(force, travel_per_turn, steering_wheel_diameter)


@reads
def standing_effort_at(
    steered_front: FrontEnd,
    steering_linkage: SteeringLinkage,
    standing_scrub_moment: NewtonMetre,
    travel_per_turn: Mm,
    steering_wheel_diameter: Mm,
    standing_rim_effort: Newton,
    *,
    lock: float,
) -> float | None:
    """Steering-wheel effort, at the rim, that turns both standing wheels on dry ground from a lock on, N.

    Virtual work: each wheel takes half of the scrub moment, times its turn about its axis for a mm of slide. lock: 0 to 1.
    """
    wheels = (steered_front.at(0.0, side) for side in (lock, -lock))
    turned = sum(abs(turn_per_slide(steering_linkage, pose)) for pose in wheels)
    return effort_at_full_lock(1000 * standing_scrub_moment / 2 * turned, travel_per_turn, steering_wheel_diameter)


@reads
def steering_ratio_at(
    steered_front: FrontEnd, travel_per_turn: Mm, steering_ratio_full_lock: Ratio, *, lock: float
) -> float | None:
    """Steering ratio at a lock, 0 to 1; None where it is not known."""
    return ratio_at(steered_front, travel_per_turn, lock)


def _return_moment(front: FrontEnd, linkage: SteeringLinkage, weight: float, lock: float) -> float:
    return moment_at_full_lock(lock_up_to(front, lock), linkage, weight)
