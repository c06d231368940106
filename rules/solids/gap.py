"""The exact gap between two solids. mm."""

from heapq import heappop, heappush
from math import acos, dist, hypot, inf, pi

from rules.measure.records import NamedTuple, dataclass
from rules.solids.hulls import STEPS, depth, distance
from rules.solids.pieces import Piece, Slab, Wedge, same_axis, shared_direction
from rules.solids.space import NOUGHT, Motion, Vector, cross, dot, minus, plus, size, times

FINE = 0.02
"""mm; a gap is found to this, and what is filled in of a bore is never more."""
SMALL = 1e-9
NO_NEARER = -1e9
"""mm; of pieces that share a point, or seem to: the first to be looked at."""
SHAVING = 0.05
"""mm; an overlap no deeper is a touch."""
CLEAR_STEPS = 40
WAYS = 3
DEEPEST = 1.35
"""No two pieces of two solids are as many times deeper in one another than the two found: to clear the solids by so much more
than these is no way out that tells their depth, and looking farther takes seconds for one ring in another."""
SAME_WAY = 0.999
"""Cosine of the angle between two ways that are one."""
FEW = 6
"""How many steps are spent on how deep an overlap may be that may be only in what is filled in."""


class Gap(NamedTuple):
    """How far two solids are apart, mm, and the nearest places on each.

    Minus where they overlap, by the shortest shift that parts two of their convex pieces; no two others need a quarter more.
    The whole solids so need a shift of at least that length. Those two pieces part when b is moved by on_a - on_b.
    """

    distance: float
    on_a: Vector
    on_b: Vector


@dataclass(frozen=True, slots=True)
class Solid:
    """A part, ready to be moved and compared: its pieces, and a ball round all of them. Made by `shapes.solid`."""

    pieces: tuple[Piece, ...]
    middle: Vector
    reach: float

    @staticmethod
    def of(pieces: tuple[Piece, ...]) -> "Solid":
        """One solid of these pieces. Raises ValueError for none."""
        if not pieces:
            raise ValueError("a solid has at least one piece")
        count = len(pieces)
        middle = times(1 / count, plus(*(piece.middle for piece in pieces)))
        return Solid(pieces, middle, max(dist(middle, piece.middle) + piece.reach for piece in pieces))

    def moved(self, motion: Motion) -> "Solid":
        """The same after a rigid motion."""
        return Solid(tuple(piece.moved(motion) for piece in self.pieces), motion.point(self.middle), self.reach)


def narrowed(a: Piece, b: Piece) -> tuple[Piece, Piece]:
    """Two pieces that are as far apart as these, with less of their rings where it is plain that the rest cannot matter.

    The nearest place of a ring to a point is at the point's own angle about its axis. So rings about one axis that share an
    angle are as far apart as their profiles there, and of a full ring only what the other stands before counts.
    """
    if isinstance(a, Wedge) and isinstance(b, Wedge) and same_axis(a, b):
        shared = shared_direction(a, b)
        if shared:
            return _slab(a, shared), _slab(b, shared)
    if isinstance(a, Wedge) and a.full and a.error > FINE:
        a = _before(a, b)
    if isinstance(b, Wedge) and b.full and b.error > FINE:
        b = _before(b, a)
    return a, b


def _slab(ring: Wedge, direction: Vector) -> Slab:
    """A ring's profile in the half-plane of one direction, as a slab."""
    sideways = cross(ring.axis, direction)
    thick = 4 * (ring.reach + 1.0)
    (ox, oy, oz), (dx, dy, dz), (ax, ay, az), (tx, ty, tz) = ring.origin, direction, ring.axis, sideways
    points = tuple(
        (ox + r * dx + s * ax + t * tx, oy + r * dy + s * ay + t * ty, oz + r * dz + s * az + t * tz)
        for r, s in ring.profile
        for t in (thick, -thick)
    )
    return Slab(points, ring.radius, plane=(ring.origin, sideways))


def _before(ring: Wedge, other: Piece) -> Wedge:
    """What of a full ring another piece stands before."""
    angles = other.angles((ring.origin, ring.axis), ring.towards, ring.across)
    if not angles:
        return ring
    middle, half = (angles[0] + angles[1]) / 2, (angles[1] - angles[0]) / 2
    half = max(half, acos(1 - 0.999 * FINE / ring.error))  # as wide as it may be without being halved again
    return ring.stretch(middle - half, middle + half) if half < pi / 2 else ring


def _overlap_at_most(a: Piece, b: Piece) -> float:
    """How far b would have to move to be clear of a along the line of their middles, mm; quickly found."""
    way = minus(b.middle, a.middle)
    length = size(way)
    x, y, z = times(1 / length, way) if length > SMALL else (1.0, 0.0, 0.0)
    one, other = a.support(x, y, z), b.support(-x, -y, -z)
    return x * (one[0] - other[0]) + y * (one[1] - other[1]) + z * (one[2] - other[2]) + a.radius + b.radius


def _shadows_apart(ring: Wedge, other: Piece) -> float:
    """No more than how far a full ring is from another piece, mm: how far apart their ranges of radius and along are."""
    shadow = other.shadow(ring.origin, ring.axis)
    beside = max(shadow.low - ring.high, ring.low - shadow.high)
    inside = ring.hole - shadow.far
    radii = ring.radius + other.radius
    return (hypot(beside, inside) if beside > 0 and inside > 0 else max(beside, inside)) - radii


class _Found(NamedTuple):
    """Two pieces with their radii: no gap between what they stand for is less than `least`; `most` is one that there is."""

    least: float
    most: float
    on_a: Vector
    on_b: Vector


def _between(a: Piece, b: Piece, beyond: float) -> _Found:
    """Signed distance of two pieces, and where; `most` is inf where they meet only in what they fill in."""
    radii = a.radius + b.radius
    apart = distance(a, b, beyond + radii)
    exact = max(a.error, b.error) <= FINE
    if not apart and not exact and beyond > 0:  # they have to be halved in any case
        return _Found(-_overlap_at_most(a, b), inf, a.middle, b.middle)
    found = apart or depth(a, b, STEPS if exact else FEW)
    on_a, on_b = a.onto(found.on_a), b.onto(found.on_b)
    length = dist(on_a, on_b)
    most = length if apart else found.most if exact else inf
    way = times(1 / length, minus(on_b, on_a)) if apart and length > SMALL else found.way
    return _Found(
        found.least - radii, most - radii, plus(on_a, times(a.radius, way)), minus(on_b, times(b.radius, way))
    )


def _worth(bound: float, finely: bool) -> float:
    """What must be less for a better answer to be looked for: FINE less, or a quarter more of an overlap."""
    return bound - (FINE if finely else max(FINE, -bound / 4))


_Pair = tuple[float, int, Piece, Piece]
"""Two pieces, with what they are no nearer than, mm, and a number that tells it from every other."""


def _pairs(a: Solid, b: Solid, than: float) -> list[_Pair]:
    """The pieces of two solids that may be less than so many mm apart, nearest first: a heap."""
    waiting: list[_Pair] = []
    if dist(a.middle, b.middle) - a.reach - b.reach >= than:
        return waiting
    for one in a.pieces:
        for other in b.pieces:
            least = dist(one.middle, other.middle) - one.reach - other.reach
            if least < than and isinstance(one, Wedge) and one.full:
                least = max(least, _shadows_apart(one, other))
            if least < than and isinstance(other, Wedge) and other.full:
                least = max(least, _shadows_apart(other, one))
            if least < than:
                heappush(waiting, (least, len(waiting), one, other))
    return waiting


def _are_in(one: Piece, other: Piece, than: float) -> bool:
    """Whether two pieces are more than so many mm in one another, with what they fill in."""
    enough = than - one.radius - other.radius
    found = distance(one, other, -enough)
    if found:
        return found.most < -enough
    return enough < 0 or depth(one, other, enough=enough).most < -enough


def _cores(one: Piece, other: Piece) -> tuple[Piece, Piece]:
    """Of each piece what is surely there, before the other's middle."""
    return (
        one if one.error <= FINE else one.core(other.middle),
        other if other.error <= FINE else other.core(one.middle),
    )


def _halved(one: Piece, other: Piece, least: float, count: int) -> list[_Pair]:
    """The pairs that come of halving the one of two pieces that fills in more; none where neither fills in anything."""
    coarse = max(one, other, key=lambda piece: piece.error)
    if coarse.error <= FINE:
        return []
    halves = enumerate(coarse.halves(), count)
    return [(least, n, half, other) if coarse is one else (least, n, one, half) for n, half in halves]


def apart(a: Solid, b: Solid, than: float) -> float | None:
    """How far two solids are apart, to 0.05 mm; nought where they share a point, None where it is so many mm or more.

    Sooner found than by `nearer`, which tells how deep they are in one another: it ends at the first point they share, and
    what may be one is halved before anything else.
    """
    waiting, bound, count = _pairs(a, b, than), than, 0
    while waiting:
        least, _, one, other = heappop(waiting)
        if least >= bound - FINE:
            break
        one, other = narrowed(one, other)
        radii = one.radius + other.radius
        found = distance(one, other, bound + radii)
        if found and found.most > radii:
            least = found.least - radii
            bound = min(bound, dist(one.onto(found.on_a), other.onto(found.on_b)) - radii)
        elif max(one.error, other.error) <= FINE or _are_in(*_cores(one, other), -SMALL):
            return 0.0
        else:
            least = NO_NEARER
        if least < bound - FINE:
            count -= 2
            for pair in _halved(one, other, least, count):
                heappush(waiting, pair)
    return max(0.0, bound) if bound < than else None


def deeper(a: Solid, b: Solid, than: float) -> bool:
    """Whether two pieces of two solids are more than so many mm in one another; the first that are will do."""
    waiting, count = _pairs(a, b, -than), 0
    while waiting:
        _, _, one, other = heappop(waiting)
        one, other = narrowed(one, other)
        enough = than - one.radius - other.radius
        found = distance(one, other, -enough)
        if found and found.least >= -enough:
            continue
        if _are_in(*_cores(one, other), than):
            return True
        count -= 2
        for pair in _halved(one, other, NO_NEARER, count):
            heappush(waiting, pair)
    return False


def nearer(a: Solid, b: Solid, than: float = inf, *, finely: bool = False) -> Gap | None:
    """The gap between two solids, to 0.05 mm, if it is less than so many mm; None if it is not.

    finely: no other two pieces need more than an overlap that is found, instead of no more than a quarter more.

    Pairs of pieces are taken nearest first. What a hull fills in of a bore counts only until it is found nearest: then it is
    halved, which leaves a quarter of it, until less than FINE is left.
    """
    waiting = _pairs(a, b, than)
    count = len(waiting)
    best: Gap | None = None
    bound = than
    while waiting:
        least, _, one, other = heappop(waiting)
        if least >= _worth(bound, finely):
            break
        one, other = narrowed(one, other)
        found = _between(one, other, bound)
        if found.most < bound:
            best, bound = Gap(found.most, found.on_a, found.on_b), found.most
        if found.least < _worth(bound, finely):
            for pair in _halved(one, other, found.least, count):
                heappush(waiting, pair)
            count += 2
    return best


def told_whole(a: Solid, b: Solid, overlap: Gap) -> tuple[Gap, float]:
    """An overlap looked at once more for the whole solids: the deepest two pieces, and how far b has to go to be clear, mm.

    Tried are the way that parts the deepest pieces, and those that part what is then still in one another. Where the depth is
    as much as that, no shorter shift parts the solids any other way. inf where none of these ways leads out within
    DEEPEST times the overlap, so that it is no depth of the whole. overlap: what `nearer` found, below nought.
    """
    soon = DEEPEST * -overlap.distance + 3 * SHAVING
    best, out, ways, still = inf, NOUGHT, list[Vector](), overlap
    for _ in range(WAYS):
        way = minus(still.on_a, still.on_b)
        way = times(1 / size(way), way) if size(way) > SMALL else (0.0, 1.0, 0.0)
        if any(dot(way, tried) > SAME_WAY for tried in ways):
            break
        ways.append(way)
        shift, left = _clear_along(a, b, way, -overlap.distance, min(best, soon))
        if shift < best:
            best, out = shift, way
        if left is None:
            break
        still = left
    deepest = nearer(a, b, SHAVING - 0.97 * best, finely=True) if best < inf else None
    if deepest is None:
        return overlap, best
    # Of the ways that part these two pieces, the one that parts the solids.
    return Gap(deepest.distance, plus(deepest.on_b, times(-deepest.distance, out)), deepest.on_b), best


def _clear_along(a: Solid, b: Solid, way: Vector, shift: float, enough: float) -> tuple[float, Gap | None]:
    """How far b has to go one way to be clear of a, mm, inf for `enough` or more; and what is in one another after `shift`."""
    first: Gap | None = None
    for _ in range(CLEAR_STEPS):
        still = nearer(a, b.moved(Motion(shift=times(shift, way))), -SHAVING - FINE)
        if still is None:
            return shift, first
        first = first or still
        shift += -still.distance  # none of the pieces parts sooner
        if shift >= enough:
            break
    return inf, first


def gap(a: Solid, b: Solid) -> Gap:
    """The gap between two solids, to 0.05 mm, and where."""
    found = nearer(a, b)
    if found is None:
        raise ArithmeticError("no gap found between two solids")
    return found
