"""How much room there is between every two parts of different motion groups, and where it is least."""

from collections.abc import Iterable, Mapping
from functools import lru_cache, partial
from itertools import combinations
from math import atan2, dist, hypot, inf

from rules.corner.kinds import Band, band, by_design
from rules.corner.part import MovesWith, Part
from rules.corner.placing import Ride, corners, from_upright, inverse, placed
from rules.corner.tabs import Tabs, tabs_beside
from rules.graph.results import Verdict
from rules.measure.records import NamedTuple, dataclass, field
from rules.measure.vectors import NOUGHT, Vector, dot, minus, times
from rules.motion.points import UP
from rules.motion.sweep import Placed, Sweep
from rules.solids.gap import SHAVING, Gap, Solid, nearer, told_whole
from rules.solids.space import STILL, Motion

TOGETHER: tuple[frozenset[MovesWith], ...] = (frozenset(("frame", "ground")), frozenset(("frame", "rack or relay")))
"""Groups that are not compared: nothing here says where the frame's other parts are."""
SAME = 1e-6
"""mm; less of a difference is none."""


@dataclass(frozen=True, slots=True)
class BetweenTwo:
    """The smallest gap between two parts, mm, minus where they overlap; and where that is.

    one, other: names of the two values. gap: None where it is more than was looked for. travel, lock: as in the front end.
    on_one, on_other: the nearest places, at ride height as seen from the wheel centre: ahead, outboard, above. clear_after: how
    far the second has to go the way of `on_one` from `on_other` until the two are clear; the overlap where that parts them.
    tabs: how long the frame's tabs may be for a shock that passes between two of an arm's inner pivots.
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
    clear_after: float = 0.0
    tabs: Tabs | None = None

    @property
    def exact(self) -> bool:
        """Whether an overlap is as deep as told: where parts are hollow or bent, no shorter way out than that is known."""
        return self.gap is None or self.clear_after <= 1.05 * -self.gap + 2 * SHAVING

    @property
    def band(self) -> Band:
        """What the two want between them."""
        return band(*self.parts)

    @property
    def verdict(self) -> Verdict:
        """good, watch or stop; watch at worst where the place of one is assumed and could be another, and where tabs clear it."""
        if self.gap is None:
            return "good"
        found = self.band.limits.verdict(self.gap)
        return "watch" if found == "stop" and (self.assumed or self.tabs) else found

    @property
    def assumed(self) -> str:
        """What to enter where a part's run fore and aft is a guess; empty where it is not, or where a wheel sweeps past it.

        A wheel turned by the lock reaches both legs of an arm sooner than the one that is assumed between them.
        """
        return "" if "wheel" in (part.group for part in self.parts) else self.parts[0].assumed or self.parts[1].assumed

    @property
    def clock(self) -> float:
        """About the wheel's axis from straight up, rad, plus ahead."""
        return atan2(self.on_other[0], self.on_other[2])

    @property
    def from_spindle(self) -> float:
        """How far the nearest place is from the wheel's axis, mm."""
        return hypot(self.on_other[0], self.on_other[2])


@dataclass(frozen=True, slots=True)
class Moves:
    """What moves the corner: its front end at ride height, and every position known so far; none: it stands still.

    lacks: dotted names of travels that arms which are there wait for, so that the sweep does not go through them.
    """

    ride: Ride
    sweep: Sweep
    lacks: tuple[str, ...] = ()
    number: int = field(init=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "number", hash((self.ride, self.sweep, self.lacks)))

    def __hash__(self) -> int:
        """Worked out once: what was found is looked up by it many times."""
        return self.number

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return self.sweep.text if self.sweep.placed else "standing still"


@dataclass(frozen=True, slots=True)
class Room:
    """What was found of a whole corner. near: pairs nearer than what they want. judged: how many pairs were looked at.

    absent: values' names of parts that are begun but wait for an entry, so that nothing is said of them; dotted names of
    travels the corner was not moved through.
    """

    near: tuple[BetweenTwo, ...]
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


def rooms(parts: Mapping[str, Part], moves: Moves, within: float | None = None) -> list[BetweenTwo]:
    """The room of every pair. within: mm, how far is looked; None: only as far as the pair's own band asks.

    Parts that are rigid with each other are compared once; wheel and upright so too, since a turning part is everything
    it passes through.
    """
    return list(_rooms(parts, moves, pairs(parts), within))


def room_of(one: Part, other: Part, ride: Ride, at: tuple[float, float]) -> float | None:
    """The room of one pair at one travel and lock, mm; None where that position is not in reach."""
    if _still(one, other) or ride.front is None:
        found = nearer(one.solid, other.solid)
    elif motions := ride.motions_at(*at):
        found = nearer(placed(one, motions), placed(other, motions))
    else:
        return None
    return found and found.distance


def _still(one: Part, other: Part) -> bool:
    on_wheel: set[MovesWith] = {"wheel", "upright"}
    return {one.moves_with, other.moves_with} <= on_wheel or one.moves_with == other.moves_with


def _rooms(
    parts: Mapping[str, Part], moves: Moves, wanted: Iterable[tuple[str, str]], within: float | None
) -> Iterable[BetweenTwo]:
    centre = moves.ride.upright.wheel_centre
    for one, other in wanted:
        a, b = parts[one], parts[other]
        look = band(a, b).limits.good if within is None else within
        made = partial(BetweenTwo, one, other, (a, b), turns="wheel" in (a.group, b.group), everywhere=_still(a, b))
        least = least_of(a, b, moves, look)
        if least is None:
            yield made(gap=None)
            continue
        on_one, on_other = (minus(place, centre) for place in (least.on_one, least.on_other))
        yield made(
            gap=least.gap, travel=least.travel, lock=least.lock, on_one=on_one, on_other=on_other,
            clear_after=least.clear_after, tabs=tabs_beside(a, b, moves.ride, moves.sweep),
        )  # fmt: skip


class Least(NamedTuple):
    """The smallest gap of two parts, mm, where in travel and lock, and the nearest places, the upright being at ride height.

    clear_after: of an overlap, how far the second has to go to be clear, mm; see `BetweenTwo`.
    """

    gap: float
    travel: float
    lock: float
    on_one: Vector
    on_other: Vector
    clear_after: float


def least_of(a: Part, b: Part, moves: Moves, look: float = inf) -> Least | None:
    """The smallest gap of two parts over every position known so far; None where it is `look` mm or more."""
    return still_least(a, b, look) if _still(a, b) or not moves.sweep.placed else _moving_least(a, b, look, moves)


@lru_cache(maxsize=8192)  # an answer changes few parts, and what is found of the others stays
def still_gap(a: Part, b: Part, look: float) -> Gap | None:
    """The gap of two parts as they stand at ride height, if it is less than `look` mm."""
    return nearer(a.solid, b.solid, look)


@lru_cache(maxsize=8192)
def still_least(a: Part, b: Part, look: float) -> Least | None:
    found = still_gap(a, b, look)
    if found is None:
        return None
    found, clear = _whole(a.solid, b.solid, found)
    return Least(found.distance, 0.0, 0.0, found.on_a, found.on_b, clear)


def _whole(a: Solid, b: Solid, found: Gap) -> tuple[Gap, float]:
    return told_whole(a, b, found) if found.distance < 0 else (found, 0.0)


@lru_cache(maxsize=8192)
def _moving_least(a: Part, b: Part, look: float, moves: Moves) -> Least | None:
    found, at, back, clear = _positions(moves).nearest(a, b, look)
    if found is None or at is None:
        return None
    return Least(found.distance, at.travel, at.lock, back.point(found.on_a), back.point(found.on_b), clear)


@lru_cache(maxsize=2)
def _positions(moves: Moves) -> "_Positions":
    return _Positions(moves)


Motions = dict[MovesWith, Motion]


class _Positions:
    """Every position of a corner, and the motions to each, seen from the road and seen from the upright."""

    def __init__(self, moves: Moves) -> None:
        self._places = moves.sweep.placed
        self._from_road = [moves.ride.motions(place.pose) for place in self._places]
        self._from_upright = [from_upright(motions) for motions in self._from_road]
        self._solids: dict[tuple[Part, int, bool], Solid] = {}
        self._shifts: dict[tuple[Part, bool], list[float]] = {}

    def nearest(self, a: Part, b: Part, look: float) -> tuple[Gap | None, Placed | None, Motion, float]:
        """The smallest gap under `look` over all positions, where, and from its frame to the upright's own at ride height; and
        how far the second has to go from an overlap to be clear.

        A part's gap to another changes by no more than the two move: the gap at ride height says where it is worth looking.
        """
        on_upright = bool({a.moves_with, b.moves_with} & {"wheel", "upright"})
        if "ground" in (a.group, b.group):
            return self._over_ground(a, b, look, on_upright)
        moved = [x + y for x, y in zip(self._shift(a, on_upright), self._shift(b, on_upright), strict=True)]
        ride = nearer(a.solid, b.solid, look + max(moved))
        if ride is None:
            return None, None, STILL, 0.0
        # Where the lock moves neither of the two, the wheels count as straight ahead.
        order = sorted(range(len(moved)), key=lambda n: (-round(moved[n], 6), abs(self._places[n].lock)))
        best: Gap | None = None
        at = order[-1]
        if (
            moved[at] < SAME and ride.distance < look
        ):  # a gap that is the same everywhere counts as found at ride height
            best, look = ride, ride.distance
        for n in order:
            if ride.distance - moved[n] >= look:
                break
            found = nearer(self._solid(a, n, on_upright), self._solid(b, n, on_upright), look)
            if found and found.distance < look - SAME:
                best, at, look = found, n, found.distance
        clear = 0.0
        if best:
            best, clear = _whole(self._solid(a, at, on_upright), self._solid(b, at, on_upright), best)
        return best, self._places[at], self._back(at, on_upright), clear

    def _back(self, at: int, on_upright: bool) -> Motion:
        return STILL if on_upright else inverse(self._from_road[at]["upright"])

    def _over_ground(
        self, a: Part, b: Part, look: float, on_upright: bool
    ) -> tuple[Gap | None, Placed | None, Motion, float]:
        """The same over level ground: a plane sees no more of a part than its farthest points."""
        part, first = (b, False) if a.group == "ground" else (a, True)
        best: Gap | None = None
        at = 0
        for n, motions in enumerate(self._from_upright if on_upright else self._from_road):
            up, level = motions["ground"].direction(UP), motions["ground"].point(NOUGHT)
            standing = self._solid(part, n, on_upright)
            if dot(minus(standing.middle, level), up) - standing.reach >= look:
                continue
            for piece in standing.pieces:
                lowest = minus(piece.support(-up[0], -up[1], -up[2]), times(piece.radius, up))
                height = dot(minus(lowest, level), up)
                if height < look:
                    below = minus(lowest, times(height, up))
                    best = Gap(height, lowest, below) if first else Gap(height, below, lowest)
                    at, look = n, height
        return best, self._places[at], self._back(at, on_upright), max(0.0, -best.distance) if best else 0.0

    def _motions(self, n: int, on_upright: bool) -> Motions:
        return (self._from_upright if on_upright else self._from_road)[n]

    def _solid(self, part: Part, n: int, on_upright: bool) -> Solid:
        if on_upright and part.moves_with in ("wheel", "upright"):
            return part.solid
        key = (part, n, on_upright)
        if key not in self._solids:
            self._solids[key] = placed(part, self._motions(n, on_upright))
        return self._solids[key]

    def _shift(self, part: Part, on_upright: bool) -> list[float]:
        """How far the part's farthest moved place is from where it is at ride height, mm, at each position."""
        key = (part, on_upright)
        if key not in self._shifts:
            if on_upright and part.moves_with in ("wheel", "upright"):
                self._shifts[key] = [0.0] * len(self._places)
            else:
                points = corners(part)
                self._shifts[key] = [
                    max(dist(point, motions[carrier].point(point)) for point, carrier in points)
                    for motions in (self._from_upright if on_upright else self._from_road)
                ]
        return self._shifts[key]
