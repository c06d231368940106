"""A full-size drawing's shapes and words onto a page."""

from collections.abc import Iterable

from rules.drawn.full_size.shapes import PaperArc, PaperCircle, PaperItem, PaperWords, Stroke, corners
from rules.measure.outline import Point
from wizard.paper.pdf import Area, PaperPage

_SYMBOL = 9.0
"""mm, height of the projection symbol."""


def draw_items(page: PaperPage, items: Iterable[PaperItem]) -> None:
    """Draw at true size, the drawing's origin on the page's."""
    for item in items:
        match item:
            case Stroke():
                page.polyline(item.points, item.pen, item.closed, item.filled, item.white)
            case PaperCircle():
                page.circle(item.centre, item.radius, item.pen)
            case PaperArc():
                page.arc(item.centre, item.radius, item.start, item.sweep, item.pen)
            case PaperWords():
                if item.over_lines:
                    page.polyline(corners(item, 0.4), closed=True, white=True)
                page.text(item.at, item.text, item.size, item.bold, item.align, item.angle, middle=True)


def draw_reduced(page: PaperPage, items: Iterable[PaperItem], reduction: float) -> None:
    """Edges, axes and neighbouring parts at 1 to `reduction`, without dimensions and words."""

    def at(point: Point) -> Point:
        return point[0] / reduction, point[1] / reduction

    for item in items:
        match item:
            case Stroke(pen=pen) if pen != "thin":
                page.polyline([at(point) for point in item.points], pen, item.closed, item.filled)
            case PaperCircle():
                page.circle(at(item.centre), item.radius / reduction, item.pen)
            case PaperArc():
                page.arc(at(item.centre), item.radius / reduction, item.start, item.sweep, item.pen)


def projection_symbol(page: PaperPage, at: Point, *, third_angle: bool = False) -> Area:
    """The symbol of ISO 5456-2 with its lower left corner at a point. Returns the room it takes.

    A cone with its small end to the left; seen from there, its circles stand right of it in first angle, left in third.
    """
    x, y = at
    middle, half = y + _SYMBOL / 2, _SYMBOL / 2
    cone = x + (_SYMBOL + 4 if third_angle else 2)
    end = cone + 1.2 * _SYMBOL - 2
    round_at = (x + half + 2 if third_angle else end + 1.2 * _SYMBOL, middle)
    page.polyline(
        ((cone, middle - half / 2), (end, middle - half), (end, middle + half), (cone, middle + half / 2)),
        "outline", closed=True,
    )  # fmt: skip
    page.circle(round_at, half)
    page.circle(round_at, half / 2)
    page.line((cone - 2, middle), (end + 2, middle), "centre")
    page.line((round_at[0] - half - 2, middle), (round_at[0] + half + 2, middle), "centre")
    page.line((round_at[0], middle - half - 2), (round_at[0], middle + half + 2), "centre")
    return Area(x, y - 2, max(round_at[0] + half, end) + 2, y + _SYMBOL + 2)
