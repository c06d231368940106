"""Areas on paper: hatched, and covered so that they hide what is behind. mm on paper."""

from collections.abc import Iterator
from math import cos, radians, sin, sqrt

from rules.drawn.patches import EdgeLine, Patch
from rules.measure.outline import Point


def without_hole(area: Patch) -> Iterator[EdgeLine]:
    """An area as convex outlines that together leave its hole free.

    >>> square = ((0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0))
    >>> len(list(without_hole(Patch(square)))), len(list(without_hole(Patch(square, ((1.0, 1.0), (2.0, 1.0), (1.0, 2.0))))))
    (1, 3)
    """
    rest = area.outer
    if len(area.hole) > 2:
        for start, end in zip(area.hole, (*area.hole[1:], area.hole[0]), strict=True):
            outside = _one_side(rest, end, start)
            if len(outside) > 2:
                yield outside
            rest = _one_side(rest, start, end)
            if len(rest) < 3:
                return
    else:
        yield rest


def _one_side(outline: EdgeLine, start: Point, end: Point) -> EdgeLine:
    """What of a convex outline lies to the left of a straight line."""
    (x1, y1), (x2, y2) = start, end
    sides = [(x2 - x1) * (y - y1) - (y2 - y1) * (x - x1) for x, y in outline]
    kept: list[Point] = []
    for (here, one), (there, other) in zip(
        zip(outline, sides, strict=True),
        zip((*outline[1:], outline[0]), (*sides[1:], sides[0]), strict=True),
        strict=True,
    ):
        if one >= 0:
            kept.append(here)
        if one * other < 0:
            share = one / (one - other)
            kept.append((here[0] + share * (there[0] - here[0]), here[1] + share * (there[1] - here[1])))
    return tuple(kept)


def hatching(area: Patch, angle: float, apart: float) -> Iterator[tuple[Point, Point]]:
    """Straight lines across an area, so many mm apart and turned by so many degrees, in one pattern wherever the area is.

    >>> square = Patch(((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)))
    >>> [(a, b) for a, b in hatching(square, 0.0, 6.0)]
    [((0.0, 0.0), (10.0, 0.0)), ((0.0, 6.0), (10.0, 6.0))]
    """
    turn = radians(angle)
    along, aside = (cos(turn), sin(turn)), (-sin(turn), cos(turn))
    levels = [x * aside[0] + y * aside[1] for x, y in area.outer]
    step = -(-min(levels) // apart)
    while step * apart < max(levels) - 1e-9:
        origin = (step * apart * aside[0], step * apart * aside[1])
        inside = _within(origin, along, area.outer)
        hole = _within(origin, along, area.hole) if len(area.hole) > 2 else None
        for start, end in _less(inside, hole):
            if end - start > 1e-6:
                yield (
                    (origin[0] + start * along[0], origin[1] + start * along[1]),
                    (origin[0] + end * along[0], origin[1] + end * along[1]),
                )
        step += 1


def _within(origin: Point, way: Point, outline: EdgeLine) -> tuple[float, float] | None:
    """From where to where a whole straight line lies in a convex outline that runs counter-clockwise."""
    start, end = -1e9, 1e9
    for (x1, y1), (x2, y2) in zip(outline, (*outline[1:], outline[0]), strict=True):
        nx, ny = y1 - y2, x2 - x1  # inwards
        towards, room = nx * way[0] + ny * way[1], nx * (origin[0] - x1) + ny * (origin[1] - y1)
        if abs(towards) < 1e-12 * sqrt(nx * nx + ny * ny + 1e-12):
            if room < 0:
                return None
        elif towards > 0:
            start = max(start, -room / towards)
        else:
            end = min(end, -room / towards)
    return (start, end) if end > start else None


def _less(run: tuple[float, float] | None, hole: tuple[float, float] | None) -> Iterator[tuple[float, float]]:
    if run is None:
        return
    if hole is None:
        yield run
        return
    yield run[0], min(run[1], hole[0])
    yield max(run[0], hole[1]), run[1]
