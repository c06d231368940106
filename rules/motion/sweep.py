"""The front end moved through all its travel and lock, and the worst found there."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from typing import NamedTuple

from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach, Pose
from rules.motion.search import last_that_holds

HALVINGS = 20
"""From a step of the sweep down to less than a thousandth of a millimetre."""


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
    """Every travel at every lock; where one is not reached, the last place before it as well."""
    locks = tuple(locks)
    placed, blocked = [], []
    for travel in travels:
        for lock in locks:
            try:
                placed.append(Placed(travel, lock, at(travel, lock)))
            except CannotReach as limit:
                blocked.append(Blocked(travel, lock, limit.reached))
    if placed and blocked:
        placed += _at_the_limits(placed, blocked, locks, at)
    return Sweep(tuple(placed), tuple(blocked))


def _at_the_limits(
    placed: list[Placed], blocked: list[Blocked], locks: tuple[float, ...], at: Callable[[float, float], Pose]
) -> Iterator[Placed]:
    """The last places reached: of each travel towards more lock, and of all travel towards bump and droop."""

    def reached(travel: float, lock: float) -> bool:
        try:
            at(travel, lock)
        except CannotReach:
            return False
        return True

    def furthest(travel: float, within: float, past: float) -> float:
        return last_that_holds(lambda lock: reached(travel, lock), within, past, HALVINGS)

    rows = {place.travel for place in placed if not place.lock}
    shut = [place.travel for place in blocked if not place.lock]
    for past in (
        min((travel for travel in shut if travel > 0), default=0.0),
        max((t for t in shut if t < 0), default=0.0),
    ):
        near = [travel for travel in rows if travel * past >= 0 and abs(travel) < abs(past)]
        if past and near:
            last = last_that_holds(lambda travel: reached(travel, 0.0), max(near, key=abs), past, HALVINGS)
            rows.add(last)
            yield from (Placed(last, lock, at(last, lock)) for lock in locks if reached(last, lock))
    for travel in rows:
        for side in (-1.0, 1.0):
            tried = sorted((lock for lock in locks if lock * side > 0), key=abs)
            held = 0.0
            for lock in tried:
                if not reached(travel, lock):
                    last = furthest(travel, held, lock)
                    yield Placed(travel, last, at(travel, last))
                    break
                held = lock


def highest(sweep: Sweep, measure: Callable[[Pose], float]) -> Worst:
    """The largest of a measure over a sweep, and where. Raises ValueError where nothing could be reached."""
    found, placed = max(((measure(placed.pose), placed) for placed in sweep.placed), key=lambda pair: pair[0])
    return Worst(found, placed.travel, placed.lock)


def lowest(sweep: Sweep, measure: Callable[[Pose], float]) -> Worst:
    """The smallest of a measure over a sweep, and where. Raises ValueError where nothing could be reached."""
    found = highest(sweep, lambda pose: -measure(pose))
    return Worst(-found, found.travel, found.lock)
