"""A belt round discs: the outline that runs over round ends on straight lines tangent to them. Plain plane geometry, mm.

A point of the plane is as far inside a convex outline as the least, over all directions, of how far the outline reaches that
way beyond it. Only the outline's own straights and the ways from a disc's middle through the point can be the least.
"""

import math
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache

from rules.measure.records import dataclass

Point = tuple[float, float]

_ONE = 1e-7
"""mm: what differs by less is one."""


@dataclass(frozen=True, slots=True)
class Round:
    """What the belt runs round. radius: 0 for a sharp corner."""

    x: float
    y: float
    radius: float


@dataclass(frozen=True, slots=True)
class Straight:
    """From where the belt leaves one disc to where it meets the next, anticlockwise; normal: its way out, rad."""

    start: Point
    end: Point
    normal: float


def _reach(discs: Iterable[Round], way: Point) -> float:
    """How far discs reach in a direction of length 1."""
    return max(disc.x * way[0] + disc.y * way[1] + disc.radius for disc in discs)


def _way(angle: float) -> Point:
    return math.cos(angle), math.sin(angle)


def _tangents(one: Round, other: Round) -> Iterator[float]:
    """The normals, rad, of both outer tangents of two discs; none where one lies within the other."""
    apart = math.dist((one.x, one.y), (other.x, other.y))
    less = one.radius - other.radius
    if apart > abs(less) + _ONE:
        along, turn = math.atan2(other.y - one.y, other.x - one.x), math.acos(less / apart)
        yield along + turn
        yield along - turn


def straights(discs: Sequence[Round]) -> tuple[Straight, ...]:
    """The belt's straights, anticlockwise, beginning with the one whose way out turns least from straight up.

    >>> [straight.end for straight in straights((Round(0.0, 0.0, 10.0), Round(0.0, 50.0, 10.0)))]
    [(-10.0, 0.0), (10.0, 50.0)]
    """
    return _straights(tuple(discs))


@lru_cache(maxsize=64)  # one outline is asked about many points
def _straights(discs: tuple[Round, ...]) -> tuple[Straight, ...]:
    found: dict[float, Straight] = {}
    for number, one in enumerate(discs):
        for other in discs[number + 1 :]:
            for normal in _tangents(one, other):
                way = _way(normal)
                most = _reach(discs, way)
                along = (-way[1], way[0])
                touching = [disc for disc in discs if most - _reach((disc,), way) < _ONE]
                if one not in touching or other not in touching:
                    continue
                first, last = (
                    pick(touching, key=lambda disc: disc.x * along[0] + disc.y * along[1]) for pick in (min, max)
                )
                turn = round((normal - math.pi / 2) % (2 * math.pi), 9) % round(2 * math.pi, 9)
                found[turn] = Straight(_on(first, way), _on(last, way), normal)
    return tuple(found[turn] for turn in sorted(found))


def _on(disc: Round, way: Point) -> Point:
    return round(disc.x + disc.radius * way[0], 9), round(disc.y + disc.radius * way[1], 9)


def belt_points(discs: Sequence[Round]) -> list[tuple[float, float, float]]:
    """The closed belt, anticlockwise: x, y in mm, and the bulge of what leads to the next point."""
    sides = straights(discs)
    points: list[tuple[float, float, float]] = []
    for side, following in zip(sides, (*sides[1:], *sides[:1]), strict=True):
        points.append((*side.start, 0.0))
        if math.dist(side.end, following.start) > _ONE:
            points.append((*side.end, math.tan(((following.normal - side.normal) % (2 * math.pi)) / 4)))
    return points


@dataclass(frozen=True, slots=True)
class Arc:
    """Where the belt lies on a disc. middle: the direction of its middle, half: how far it goes to each side, rad."""

    disc: Round
    middle: float
    half: float


def arcs(discs: Sequence[Round]) -> tuple[Arc, ...]:
    """The belt's arcs, anticlockwise; a sharp corner has none."""
    sides, found = straights(discs), []
    for side, following in zip(sides, (*sides[1:], *sides[:1]), strict=True):
        half = ((following.normal - side.normal) % (2 * math.pi)) / 2
        way = _way(side.normal)
        disc = next(disc for disc in discs if math.dist(_on(disc, way), side.end) < 10 * _ONE)
        if disc.radius > _ONE and half > 1e-6:
            found.append(Arc(disc, side.normal + half, half))
    return tuple(found)


def belt_distance(point: Point, discs: Sequence[Round]) -> float:
    """From a point to the nearest place of the belt, mm; negative outside.

    >>> belt_distance((0.0, 25.0), (Round(0.0, 0.0, 10.0), Round(0.0, 50.0, 10.0)))
    10.0
    """
    ways = [_way(side.normal) for side in straights(discs)]
    for disc in discs:
        apart = math.dist(point, (disc.x, disc.y))
        ways.append(((point[0] - disc.x) / apart, (point[1] - disc.y) / apart) if apart > _ONE else (0.0, 1.0))
    return round(min(_reach(discs, way) - point[0] * way[0] - point[1] * way[1] for way in ways), 9)


def belt_ends(discs: Sequence[Round], level: float) -> tuple[float, float] | None:
    """Left and right end of the belt at a height, mm; None above and below it.

    >>> belt_ends((Round(0.0, 0.0, 20.0), Round(0.0, 50.0, 20.0)), 25.0)
    (-20.0, 20.0)
    """
    xs = []
    for disc in discs:
        if abs(level - disc.y) <= disc.radius + _ONE:
            half = math.sqrt(max(disc.radius**2 - (level - disc.y) ** 2, 0.0))
            xs += [disc.x - half, disc.x + half]
    for side in straights(discs):
        (x1, y1), (x2, y2) = side.start, side.end
        if min(y1, y2) <= level <= max(y1, y2) and abs(y2 - y1) > _ONE:
            xs.append(x1 + (x2 - x1) * (level - y1) / (y2 - y1))
    return (min(xs), max(xs)) if xs else None
