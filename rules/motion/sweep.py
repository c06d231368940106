"""The front end moved through all its travel and lock, and the worst found there."""

from collections.abc import Callable, Iterable, Iterator, Sequence

from rules.measure.records import NamedTuple, dataclass
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

    locks: how many, an odd number. Both wheels are in it: the right one at a lock is the left one's mirror image at the
    opposite lock.
    """
    return _sweep(spread(-droop, bump, travels), spread(0.0, 1.0, locks // 2 + 1), front.at)


def _sweep(travels: Iterable[float], sizes: Sequence[float], at: Callable[[float, float], Pose]) -> Sweep:
    """Every travel at every lock; where one is not reached, the last place before it as well.

    sizes: of the lock to either side, from nought up. A lock counts as reached where both wheels follow, from straight
    ahead all the way: one rack moves both.
    """
    placed: list[Placed] = []
    blocked: list[Blocked] = []

    def both(travel: float, size: float) -> list[Placed]:
        return [Placed(travel, lock, at(travel, lock)) for lock in ((-size, size) if size else (0.0,))]

    def reached(travel: float, size: float) -> bool:
        try:
            both(travel, size)
        except CannotReach:
            return False
        return True

    def row(travel: float) -> bool:
        """Out from straight ahead to full lock, or to where the links lock; whether it can be entered at all."""
        held = 0.0
        for number, size in enumerate(sizes):
            try:
                placed.extend(both(travel, size))
            except CannotReach:
                if size:
                    placed.extend(
                        both(travel, last_that_holds(lambda lock: reached(travel, lock), held, size, HALVINGS))
                    )
                blocked.extend(_blocked(travel, sizes[number:], at))
                return bool(size)
            held = size
        return True

    places = sorted(travels, key=abs)
    for side in (-1.0, 1.0):
        held, ends = 0.0, not reached(0.0, 0.0)
        for travel in (place for place in places if place * side > 0):
            if row(travel):
                held = travel
            elif not ends:
                ends = True
                if last := last_that_holds(lambda to: reached(to, 0.0), held, travel, HALVINGS):
                    row(last)
    if 0.0 in places:
        row(0.0)
    return Sweep(tuple(sorted(placed, key=lambda place: (place.travel, place.lock))), tuple(blocked))


def _blocked(travel: float, sizes: Iterable[float], at: Callable[[float, float], Pose]) -> Iterator[Blocked]:
    for size in sizes:
        for lock in (-size, size) if size else (0.0,):
            try:
                at(travel, lock)
            except CannotReach as limit:
                yield Blocked(travel, lock, limit.reached)


def highest(sweep: Sweep, measure: Callable[[Pose], float]) -> Worst:
    """The largest of a measure over a sweep, and where. Raises ValueError where nothing could be reached."""
    found, placed = max(((measure(placed.pose), placed) for placed in sweep.placed), key=lambda pair: pair[0])
    return Worst(found, placed.travel, placed.lock)


def lowest(sweep: Sweep, measure: Callable[[Pose], float]) -> Worst:
    """The smallest of a measure over a sweep, and where. Raises ValueError where nothing could be reached."""
    found = highest(sweep, lambda pose: -measure(pose))
    return Worst(-found, found.travel, found.lock)
