"""What the car's weight does to both wheels at one lock and ride height.

The values of a lock's end (rules/values/steering/returning.py), worked out for a lock that ends there.
"""

from collections.abc import Mapping

from rules.motion.front_end import FrontEnd, SteeringLinkage
from rules.motion.sweep import Placed, Sweep
from rules.values.steering.returning import rack_force_full_lock, return_moment_full_lock, rim_effort


def lock_up_to(front: FrontEnd, lock: float) -> Sweep:
    """The left corner at ride height at a lock, 0 to 1, and at the opposite one: both wheels of that turn.

    >>> [placed.lock for placed in lock_up_to(leaning(), 0.5).placed]
    [-0.5, 0.5]
    """
    return Sweep(tuple(Placed(0.0, side, front.at(0.0, side)) for side in (-lock, lock)))


def return_moment_at(known: Mapping[str, object], lock: float) -> float | None:
    """Moment about the inner wheel's axis that returns both wheels, N m; None where it is not known. lock: 0 to 1."""
    steered, linkage, weight = (known.get(name) for name in ("steered_front", "steering_linkage", "job.corner_weight"))
    if "return_moment_full_lock" not in known:  # a linkage that locks before its full lock has no lock to look at
        return None
    assert isinstance(steered, FrontEnd) and isinstance(linkage, SteeringLinkage) and isinstance(weight, float)
    return return_moment_full_lock(lock_up_to(steered, lock), linkage, weight)


def rim_effort_at(known: Mapping[str, object], lock: float) -> float | None:
    """Pull on the steering wheel's rim that holds a lock against the weight, N; None where it is not known."""
    moment = return_moment_at(known, lock)
    if moment is None or "rim_effort" not in known:
        return None
    steered, linkage, travel, diameter = (
        known.get(name)
        for name in (
            "steered_front", "steering_linkage", "steering.travel_per_turn", "steering.steering_wheel_diameter",
        )
    )  # fmt: skip
    assert isinstance(steered, FrontEnd) and isinstance(linkage, SteeringLinkage)
    assert isinstance(travel, float) and isinstance(diameter, float)
    return rim_effort(rack_force_full_lock(lock_up_to(steered, lock), linkage, moment), travel, diameter)
