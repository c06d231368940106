"""Outlines in a plane: simple polygons, split into convex ones. mm."""

from functools import lru_cache
from itertools import pairwise
from math import hypot, inf

from rules.measure.outline import Point

Polygon = tuple[Point, ...]

SMALL = 1e-9


def _turn(a: Point, b: Point, c: Point) -> float:
    """Twice the area of the triangle, plus when it runs counter-clockwise."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def area(outline: Polygon) -> float:
    """mm2, plus when it runs counter-clockwise.

    >>> area(((0.0, 0.0), (4.0, 0.0), (4.0, 3.0)))
    6.0
    """
    return sum(_turn(outline[0], a, b) for a, b in pairwise(outline[1:])) / 2


def edge_distance(point: Point, start: Point, end: Point) -> float:
    """From a point to a straight edge, mm.

    >>> edge_distance((3.0, 5.0), (0.0, 0.0), (10.0, 0.0)), edge_distance((13.0, 4.0), (0.0, 0.0), (10.0, 0.0))
    (5.0, 5.0)
    """
    along, up = end[0] - start[0], end[1] - start[1]
    length_squared = along * along + up * up
    part = ((point[0] - start[0]) * along + (point[1] - start[1]) * up) / length_squared if length_squared else 0.0
    part = min(1.0, max(0.0, part))
    return hypot(point[0] - start[0] - part * along, point[1] - start[1] - part * up)


def contains(outline: Polygon, point: Point) -> bool:
    """Whether the outline goes round the point (its edge itself may count either way).

    >>> contains(((0.0, 0.0), (4.0, 0.0), (4.0, 3.0)), (3.0, 1.0))
    True
    """
    x, y = point
    inside = False
    for (x1, y1), (x2, y2) in zip(outline, outline[1:] + outline[:1], strict=True):
        if (y1 > y) != (y2 > y) and x < x1 + (y - y1) / (y2 - y1) * (x2 - x1):
            inside = not inside
    return inside


def _clear(outline: Polygon, first: int, second: int) -> bool:
    """Whether the straight cut between two corners runs inside the outline and touches no other part of it."""
    a, b, count = outline[first], outline[second], len(outline)
    for i in range(count):
        c, d = outline[i], outline[(i + 1) % count]
        if i not in (first, second) and edge_distance(c, a, b) < SMALL:
            return False
        if {i, (i + 1) % count} & {first, second}:
            continue
        if _turn(a, b, c) * _turn(a, b, d) < 0 and _turn(c, d, a) * _turn(c, d, b) < 0:
            return False
    return contains(outline, ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2))


@lru_cache(maxsize=1024)
def convex_pieces(outline: Polygon) -> tuple[Polygon, ...]:
    """The outline, cut into convex outlines that run counter-clockwise. Points or a line are left as they are.

    At each corner that points inward it is cut straight across to another corner: one that leaves no inward corner there if
    there is one, and of these the nearest. Raises ValueError for an outline that crosses itself.

    >>> [len(piece) for piece in convex_pieces(((0.0, 0.0), (9.0, 0.0), (9.0, 3.0), (3.0, 3.0), (3.0, 9.0), (0.0, 9.0)))]
    [4, 4]
    """
    if len(outline) < 3:
        return (outline,)
    if area(outline) < 0:
        outline = outline[::-1]
    count = len(outline)
    inward = [i for i in range(count) if _turn(outline[i - 1], outline[i], outline[(i + 1) % count]) < -SMALL]
    if not inward:
        return (outline,)
    i = inward[0]
    before, corner, after = outline[i - 1], outline[i], outline[(i + 1) % count]

    def cost(j: int) -> tuple[bool, float]:
        end = outline[j]
        still_inward = _turn(before, corner, end) < 0 or _turn(end, corner, after) < 0
        return still_inward, hypot(end[0] - corner[0], end[1] - corner[1])

    others = [j for j in range(count) if j not in (i, (i - 1) % count, (i + 1) % count) and _clear(outline, i, j)]
    if not others:
        raise ValueError("the outline crosses itself")
    low, high = sorted((i, min(others, key=cost)))
    return convex_pieces(outline[low : high + 1]) + convex_pieces(outline[high:] + outline[: low + 1])


def nearest_and_farthest(outline: Polygon, point: Point) -> tuple[float, float]:
    """Least and greatest distance from a point to the area inside the outline, mm; the least is 0 where it is inside.

    >>> nearest_and_farthest(((3.0, 0.0), (6.0, 0.0), (6.0, 8.0), (3.0, 8.0)), (0.0, 0.0))
    (3.0, 10.0)
    """
    farthest = max(hypot(x - point[0], y - point[1]) for x, y in outline)
    if contains(outline, point):
        return 0.0, farthest
    nearest = inf
    for start, end in zip(outline, outline[1:] + outline[:1], strict=True):
        nearest = min(nearest, edge_distance(point, start, end))
    return nearest, farthest
