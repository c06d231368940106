"""The corner's parts on a drawing board: visible edges, and cut metal hatched. mm on paper.

The shapes are those that the verdicts are made of; none is drawn by hand.
"""

from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise
from math import hypot

from rules.corner.part import Part
from rules.drawn.corner_parts import How, looks
from rules.drawn.full_size.board import Board
from rules.drawn.full_size.shapes import Pen
from rules.drawn.patches import EdgeLine, Patch, clipped, edges, joined
from rules.drawn.views import Viewpoint
from rules.measure.outline import Point
from rules.measure.records import NamedTuple

FINE = 0.05
"""mm that a round edge may be off on paper."""
FAR = 1e5
ROUND = 1e-6
"""mm within which the corners of an edge lie on one circle."""


class OnBoard(NamedTuple):
    """How a part is shown in a view. covers: it hides what lies behind it. broken_off: mm above and below the wheel centre at
    which it is broken off; its ends are left open."""

    name: str
    how: How = "seen"
    pen: Pen = "outline"
    hatched: bool = False
    covers: bool = True
    broken_off: float | None = None


def draw_parts(
    board: Board, parts: Mapping[str, Part], shown: Sequence[OnBoard], view: Viewpoint, scale: float = 1.0
) -> None:
    """The parts that are there, what is farthest away first; 1 : scale."""
    put_on(board, [(one, looks(part, view, one.how, FINE)[0]) for one in shown if (part := parts.get(one.name))], scale)


def put_on(board: Board, drawn: Sequence[tuple[OnBoard, tuple[Patch, ...]]], scale: float = 1.0) -> None:
    """Areas as edges, without what later ones cover."""
    for number, (one, areas) in enumerate(drawn):
        before = [patch for other, patches in drawn[number + 1 :] if other.covers and one.covers for patch in patches]
        for edge in _broken(edges(areas, before), one.broken_off):
            draw_edge(board, tuple((x / scale, y / scale) for x, y in edge), one.pen)
        if one.hatched:
            for area in areas:
                board.hatch(area, before)


def _broken(lines: Iterable[EdgeLine], at: float | None) -> Iterable[EdgeLine]:
    if at is None:
        return lines
    band = Patch(((-FAR, -at), (FAR, -at), (FAR, at), (-FAR, at)))
    return joined(run for line in lines for start, end in pairwise(line) for run in clipped(band, start, end))


def draw_edge(board: Board, edge: EdgeLine, pen: Pen) -> None:
    """A line, a closed outline, or a circle where it is one."""
    if edge[0] != edge[-1]:
        board.line(*edge, pen=pen)
    elif centre := centre_of(edge):
        board.circle(centre, hypot(edge[0][0] - centre[0], edge[0][1] - centre[1]), pen)
    else:
        board.line(*edge[:-1], pen=pen, closed=True)


def centre_of(edge: EdgeLine) -> Point | None:
    """The middle of a closed edge whose corners all lie evenly on one circle; None where they do not.

    >>> centre_of(((3.0, 0.0), (0.0, 3.0), (-3.0, 0.0), (0.0, -3.0), (3.0, 0.0)))
    >>> eight = ((5.0, 0.0), (4.0, 3.0), (0.0, 5.0), (-4.0, 3.0), (-5.0, 0.0), (-4.0, -3.0), (0.0, -5.0), (4.0, -3.0))
    >>> centre_of((*eight, eight[0])), centre_of((*eight[:-1], eight[0]))
    ((0.0, 0.0), None)
    """
    corners = edge[:-1]
    if len(corners) < 8:
        return None
    x, y = (sum(corner[axis] for corner in corners) / len(corners) for axis in (0, 1))
    radii = [hypot(corner[0] - x, corner[1] - y) for corner in corners]
    return (x, y) if max(radii) - min(radii) < ROUND else None
