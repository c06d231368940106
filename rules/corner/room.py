"""How much room there is between every two parts of different motion groups, and where it is least."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from math import atan2, dist, hypot

from rules.corner.kinds import Band, band, by_design
from rules.corner.part import Group, Part
from rules.corner.placing import Ride, placed
from rules.graph.results import Verdict
from rules.measure.vectors import Vector, minus
from rules.motion.sweep import Placed, Sweep
from rules.solids.gap import Gap, Solid, nearer
from rules.solids.space import STILL, Motion

TOGETHER: tuple[frozenset[Group], ...] = (frozenset(("frame", "ground")), frozenset(("frame", "rack or relay")))
"""Groups that are not compared: nothing here says where the frame's other parts are."""


@dataclass(frozen=True, slots=True)
class Between:
    """The least room between two parts, mm, minus where they overlap; and where that is.

    one, other: names of the two values. gap: None where it is more than was looked for. travel, lock: as in the front end.
    on_one, on_other: the nearest places, at ride height as seen from the wheel centre: ahead, outboard, above.
    """

    one: str
    other: str
    parts: tuple[Part, Part]
    gap: float | None
    travel: float = 0.0
    lock: float = 0.0
    on_one: Vector = (0.0, 0.0, 0.0)
    on_other: Vector = (0.0, 0.0, 0.0)
    turns: bool = False
    everywhere: bool = True

    @property
    def band(self) -> Band:
        """What the two want between them."""
        return band(*self.parts)

    @property
    def verdict(self) -> Verdict:
        """good, watch or stop."""
        return "good" if self.gap is None else self.band.limits.verdict(self.gap)

    @property
    def clock(self) -> float:
        """About the spindle from straight up, rad, plus ahead."""
        return atan2(self.on_other[0], self.on_other[2])

    @property
    def from_spindle(self) -> float:
        """How far the nearest place is from the spindle's line, mm."""
        return hypot(self.on_other[0], self.on_other[2])


@dataclass(frozen=True, slots=True)
class Moves:
    """What moves the corner: its front end at ride height, and every position known so far; none: it stands still."""

    ride: Ride
    sweep: Sweep = Sweep(())

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return self.sweep.text if self.sweep.placed else "standing still"


@dataclass(frozen=True, slots=True)
class Room:
    """What was found of a whole corner. near: pairs nearer than what they want. judged: how many pairs were looked at."""

    near: tuple[Between, ...]
    judged: int
    absent: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"{self.judged} pairs of parts, {len(self.near)} too close"


def pairs(parts: Mapping[str, Part]) -> list[tuple[str, str]]:
    """Every two parts that can move against each other and are not made to touch."""
    return [
        (one, other)
        for one, other in combinations(parts, 2)
        if parts[one].group != parts[other].group
        and frozenset((parts[one].group, parts[other].group)) not in TOGETHER
        and not by_design(parts[one], parts[other])
    ]


def rooms(parts: Mapping[str, Part], moves: Moves, within: float | None = None) -> list[Between]:
    """The room of every pair. within: mm, how far is looked; None: only as far as the pair's own band asks.

    Parts that are rigid with each other are compared once; wheel and upright so too, since a turning part is everything
    it passes through.
    """
    return list(_rooms(parts, moves, pairs(parts), within))


def room_of(parts: Mapping[str, Part], moves: Moves, one: str, other: str, at: tuple[float, float]) -> float | None:
    """The room of one pair at one travel and lock, mm; None where that position is not in reach."""
    still = _still(parts[one], parts[other]) or not moves.sweep.placed
    if still:
        found = nearer(parts[one].solid, parts[other].solid)
        return found and found.distance
    here = next((place for place in moves.sweep.placed if (place.travel, place.lock) == at), None)
    if here is None:
        return None
    motions = moves.ride.motions(here.pose)
    found = nearer(placed(parts[one], motions), placed(parts[other], motions))
    return found and found.distance


def _still(one: Part, other: Part) -> bool:
    on_wheel: set[Group] = {"wheel", "upright"}
    return {one.moves_with, other.moves_with} <= on_wheel or one.moves_with == other.moves_with


def _rooms(
    parts: Mapping[str, Part], moves: Moves, wanted: Iterable[tuple[str, str]], within: float | None
) -> Iterable[Between]:
    centre = moves.ride.upright.wheel_centre
    places = [
        _Place(place.travel, place.lock, moves.ride.motions(place.pose)) for place in _extremes_first(moves.sweep.placed)
    ]
    for one, other in wanted:
        a, b = parts[one], parts[other]
        look = band(a, b).limits.good if within is None else within
        turns = "wheel" in (a.group, b.group)
        still = _still(a, b)
        if still or not places:
            found = nearer(a.solid, b.solid, look)
            yield _between((one, other), (a, b), found, centre, turns, still)
            continue
        best: Gap | None = None
        at: _Place | None = None
        for place in places:
            if place.apart(a, b) < look and (found := nearer(place.solid(a), place.solid(b), look)):
                best, at, look = found, place, found.distance
        yield _between((one, other), (a, b), best, centre, turns, False, at)


def _between(
    names: tuple[str, str],
    parts: tuple[Part, Part],
    found: Gap | None,
    centre: Vector,
    turns: bool,
    everywhere: bool,
    at: "_Place | None" = None,
) -> Between:
    if found is None:
        return Between(*names, parts, None, turns=turns, everywhere=everywhere)
    back = at.back if at else STILL
    one, other = (minus(back.point(place), centre) for place in (found.on_a, found.on_b))
    travel, lock = (at.travel, at.lock) if at else (0.0, 0.0)
    return Between(*names, parts, found.distance, travel, lock, one, other, turns, everywhere)


def _extremes_first(places: Sequence[Placed]) -> list[Placed]:
    """Where parts come nearest is mostly at an end of travel or lock; found early, it saves looking closely elsewhere."""
    most = max((abs(place.travel) for place in places), default=0.0) or 1.0
    return sorted(places, key=lambda place: -(abs(place.travel) / most + abs(place.lock)))


class _Place:
    """The corner at one travel and lock, its parts moved there only where somebody asks for them."""

    def __init__(self, travel: float, lock: float, motions: dict[Group, Motion]) -> None:
        self.travel, self.lock, self._motions = travel, lock, motions
        self._solids: dict[int, Solid] = {}
        self._middles: dict[int, Vector] = {}

    def apart(self, one: Part, other: Part) -> float:
        """No more than how far two parts are apart, mm, from the balls round them."""
        if "shock" in (one.group, other.group):
            return -1.0
        return dist(self._middle(one), self._middle(other)) - one.solid.reach - other.solid.reach

    def _middle(self, part: Part) -> Vector:
        if id(part) not in self._middles:
            self._middles[id(part)] = self._motions[part.moves_with].point(part.solid.middle)
        return self._middles[id(part)]

    def solid(self, part: Part) -> Solid:
        """A part moved here."""
        if id(part) not in self._solids:
            self._solids[id(part)] = placed(part, self._motions)
        return self._solids[id(part)]

    @property
    def back(self) -> Motion:
        """From here to the upright's own place at ride height."""
        return inverse(self._motions["upright"])


def inverse(motion: Motion) -> Motion:
    """The motion that undoes this one."""
    x, y, z, s = motion.x, motion.y, motion.z, motion.shift
    turned = Motion((x[0], y[0], z[0]), (x[1], y[1], z[1]), (x[2], y[2], z[2]))
    return Motion(turned.x, turned.y, turned.z, minus((0.0, 0.0, 0.0), turned.direction(s)))
