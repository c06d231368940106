"""The front end moved through all its travel and lock, and the worst found there."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import NamedTuple

from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach, Pose


class Placed(NamedTuple):
    """A corner at a travel, mm up positive, and a lock: 1 full left (the left wheel is the inner one), -1 full right."""

    travel: float
    lock: float
    pose: Pose


class Blocked(NamedTuple):
    """A position the links do not reach, and the travel, mm, or lock, 0 to 1 in size, they lock at."""

    travel: float
    lock: float
    locks_at: float


@dataclass(frozen=True, slots=True)
class Sweep:
    """Every position looked at, and those that cannot be reached."""

    placed: tuple[Placed, ...]
    blocked: tuple[Blocked, ...] = ()

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"{len(self.placed)} positions of travel and lock" + (", some out of reach" if self.blocked else "")


class Worst(float):
    """The worst of a number over a sweep, and where it was found."""

    travel: float
    lock: float

    def __new__(cls, number: float, travel: float, lock: float) -> "Worst":
        """travel: mm, up positive. lock: 1 full left, -1 full right."""
        made = super().__new__(cls, number)
        made.travel, made.lock = travel, lock
        return made


def spread(least: float, most: float, count: int) -> list[float]:
    """`count` places from least to most, nought always among them where it lies between.

    >>> spread(-50.0, 100.0, 4)
    [-50.0, 0.0, 50.0, 100.0]
    """
    places = [least + (most - least) * place / (count - 1) for place in range(count)] if most > least else [least]
    if least < 0 < most:
        places[min(range(1, count - 1), key=lambda place: abs(places[place]))] = 0.0
    return places


def straight_sweep(front: FrontEnd, droop: float, bump: float, count: int = 9) -> Sweep:
    """The left corner through its travel with the wheel held straight ahead. droop, bump: mm, both positive."""
    return _sweep(spread(-droop, bump, count), (0.0,), lambda travel, _: front.straight(travel))


def envelope(front: FrontEnd, droop: float, bump: float, travels: int = 9, locks: int = 9) -> Sweep:
    """The left corner at every travel and every lock, from full right to full left. droop, bump: mm, both positive.

    Both wheels are in it: the right one at a lock is the left one's mirror image at the opposite lock.
    """
    return _sweep(spread(-droop, bump, travels), spread(-1.0, 1.0, locks), front.at)


def _sweep(travels: Iterable[float], locks: Iterable[float], at: Callable[[float, float], Pose]) -> Sweep:
    placed, blocked = [], []
    locks = tuple(locks)
    for travel in travels:
        for lock in locks:
            try:
                placed.append(Placed(travel, lock, at(travel, lock)))
            except CannotReach as limit:
                blocked.append(Blocked(travel, lock, limit.reached))
    return Sweep(tuple(placed), tuple(blocked))


def highest(sweep: Sweep, measure: Callable[[Pose], float]) -> Worst:
    """The largest of a measure over a sweep, and where. Raises ValueError where nothing could be reached."""
    found, placed = max(((measure(placed.pose), placed) for placed in sweep.placed), key=lambda pair: pair[0])
    return Worst(found, placed.travel, placed.lock)


def lowest(sweep: Sweep, measure: Callable[[Pose], float]) -> Worst:
    """The smallest of a measure over a sweep, and where. Raises ValueError where nothing could be reached."""
    found = highest(sweep, lambda pose: -measure(pose))
    return Worst(-found, found.travel, found.lock)
