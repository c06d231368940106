"""A picture of the upright for somebody who reads no views: from behind, inside and above, what is nearer in front."""

from collections.abc import Collection, Iterator, Sequence
from math import cos, radians

from rules.corner.part import Part
from rules.drawn.full_size.board import Board
from rules.drawn.full_size.shapes import View, bounds, moved
from rules.drawn.hatching import without_hole
from rules.drawn.patches import EdgeLine, Patch, edges
from rules.drawn.projection import seen
from rules.drawn.views import Viewpoint
from rules.measure.outline import Point
from rules.measure.vectors import cross, dot, plus, times, unit
from rules.motion.points import UP
from rules.solids.shapes import Prism, Shape, solid

_EYE = unit((-1.0, -1.0, 0.8))
_RIGHT = unit(cross(UP, _EYE))
_VIEW = Viewpoint(_RIGHT, cross(_EYE, _RIGHT))
_FINE = 0.3
_BACKMOST = "plate"
"""All else stands on the side of it that is seen, or beside it; drawn as one, since it is put together from several shapes."""
_SOFT = cos(radians(25))
"""Sides that meet at less than this are one round side."""


def isometric(parts: Collection[Part], width: float, height: float) -> View:
    """The parts in a picture that fits into so many mm of paper, its middle at the origin; empty without parts."""
    if not parts:
        return View(())
    plates = [part.shapes for part in parts if part.name == _BACKMOST]
    rest = [(shape,) for part in parts if part.name != _BACKMOST for shape in part.shapes]
    bodies = [*plates, *sorted(rest, key=_depth)]
    box = bounds(_drawn(bodies, 1.0).shapes)
    board = _drawn(bodies, max(box.width / width, box.height / height))
    box = bounds(board.items)
    middle = ((box.left + box.right) / 2, (box.bottom + box.top) / 2)
    items = tuple(moved(item, -middle[0], -middle[1]) for item in board.items)
    return View(items, bounds(items))


def _depth(shapes: Sequence[Shape]) -> float:
    """How far towards the eye the middle of shapes lies."""
    depths = [_VIEW.depth(piece.middle) for piece in solid(*shapes).pieces]
    return (min(depths) + max(depths)) / 2


def _drawn(bodies: Collection[Sequence[Shape]], scale: float) -> Board:
    board = Board()

    def reduced(points: EdgeLine) -> tuple[Point, ...]:
        return tuple((x / scale, y / scale) for x, y in points)

    for body in bodies:
        areas = seen(body, _VIEW, _FINE)
        for area in areas:
            for points in without_hole(Patch(reduced(area.outer), reduced(area.hole))):
                board.blank(points)
        for line in edges(areas):
            board.line(*reduced(line), an_edge=False)
        if len(body) == 1 and isinstance(body[0], Prism):
            for line in _near_edges(body[0]):
                board.line(*reduced(line), pen="thin")
    return board


def _near_edges(prism: Prism) -> Iterator[EdgeLine]:
    """The edges of the end that faces the eye, and those between two sides that do."""
    normal = prism.normal
    near, far = (prism.high, prism.low) if dot(normal, _EYE) > 0 else (prism.low, prism.high)

    def at(corner: Point, level: float) -> Point:
        x, y = corner
        return _VIEW.flat(plus(prism.origin, times(x, prism.across), times(y, prism.up), times(level, normal)))

    outline = prism.outline
    yield tuple(at(corner, near) for corner in (*outline, outline[0]))
    turned = sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in zip(outline, (*outline[1:], outline[0]), strict=True))
    sides = []
    for (x1, y1), (x2, y2) in zip(outline, (*outline[1:], outline[0]), strict=True):
        out = plus(times(y2 - y1, prism.across), times(x1 - x2, prism.up))
        sides.append(unit(times(1.0 if turned > 0 else -1.0, out)))
    for corner, one, other in zip(outline, (sides[-1], *sides[:-1]), sides, strict=True):
        if dot(one, _EYE) > 0 and dot(other, _EYE) > 0 and dot(one, other) < _SOFT:
            yield at(corner, near), at(corner, far)
