"""A full-size drawing of one upright, at true size in mm, with no paper in it.

Two views, their wheel centres level: the front view, and the view from outside the car, in third angle on inch sheets and in
first angle on metric ones, unless answered otherwise; beside them an auxiliary view square to the steering axis. A dimension
stands only in a view in which it is true length. The right upright is the mirror image of the left; its words are not
mirrored.
"""

from collections.abc import Mapping

from rules.drawn.full_size.auxiliary import auxiliary_view
from rules.drawn.full_size.front import Extent, front_view
from rules.drawn.full_size.shapes import (
    HEADING,
    PaperBox,
    PaperItem,
    PaperWords,
    Stroke,
    View,
    bounds,
    mirrored,
    moved,
    words_width,
)
from rules.drawn.full_size.side import side_view
from rules.drawn.full_size.title_block import PROJECTION, TitleBlock, third_angle, title_block
from rules.judging.judge import Judged
from rules.measure.outline import Point, Side
from rules.measure.records import dataclass, replace
from rules.sheet.glossary import reworded
from rules.shop.wording import words_on_paper

__all__ = [
    "PROJECTION",
    "Drawing",
    "Extent",
    "LeftViews",
    "Side",
    "TitleBlock",
    "full_size",
    "left_views",
    "of_views",
    "third_angle",
    "title_block",
]

_BETWEEN_VIEWS = 12.0
_HEADING_ROOM = 12.0
_EDGE = 4.0


@dataclass(frozen=True, slots=True)
class Drawing:
    """All views on one sheet. frame: the rectangle they fill, its lower left corner at the origin."""

    side: Side
    extent: Extent
    items: tuple[PaperItem, ...]
    frame: PaperBox
    block: TitleBlock


@dataclass(frozen=True, slots=True)
class LeftViews:
    """The views of the left upright, of which both sides' drawings are made."""

    front: View
    from_side: View
    auxiliary: View
    extent: Extent


def left_views(judged: Judged, extent: Extent = "upright") -> LeftViews:
    """Every view, empty where nothing of it is known."""
    words = words_on_paper(judged)
    front, from_side = front_view(judged, extent), side_view(judged, extent)
    return LeftViews(
        _in_words(front, words), _in_words(from_side, words), _in_words(auxiliary_view(judged), words), extent
    )


def _in_words(view: View, words: Mapping[str, str]) -> View:
    """The view with its words as they stand on paper."""
    items = (replace(one, text=reworded(one.text, words)) if isinstance(one, PaperWords) else one for one in view.items)
    return replace(view, items=tuple(items))


def full_size(judged: Judged, side: Side, extent: Extent = "upright") -> Drawing:
    """The whole drawing. Views of which nothing is known are left out; with nothing known at all it has no items."""
    return of_views(judged, side, left_views(judged, extent))


def of_views(judged: Judged, side: Side, views: LeftViews) -> Drawing:
    """The same of views that are drawn already."""
    items: list[PaperItem] = []
    right_edge = 0.0
    seen_from_side = (views.from_side, "seen from outside the car", "front", "rear")
    in_front = (views.front, "seen from the front", "inboard", "outboard")
    pair = (in_front, seen_from_side) if third_angle(judged) else (seen_from_side, in_front)
    for view, *words in (*pair, (views.auxiliary, "square to the axis", "front", "rear")):
        if not view.items:
            continue
        shift = right_edge - view.frame.left
        items += (moved(item, shift, 0.0) for item in view.items)
        items += _heading(view.frame, shift, side, *words)
        right_edge = bounds(items).right + _BETWEEN_VIEWS
    if side == "right":
        items = [mirrored(item) for item in items]
    frame = bounds(items)
    placed = tuple(moved(item, _EDGE - frame.left, _EDGE - frame.bottom) for item in items)
    size = (
        PaperBox(0.0, 0.0, frame.width + 2 * _EDGE, frame.height + 2 * _EDGE) if items else PaperBox(0.0, 0.0, 0.0, 0.0)
    )
    said = [item.text for item in items if isinstance(item, PaperWords)]
    return Drawing(side, views.extent, placed, size, title_block(judged, said))


def _heading(frame: PaperBox, shift: float, side: Side, words: str, left: str, right: str) -> list[PaperItem]:
    """Above a view: which upright, seen from where, and which way its ends point."""
    middle, y = (frame.left + frame.right) / 2 + shift, frame.top + _HEADING_ROOM - 4
    heading = PaperWords((middle, y), f"{side.upper()}, {words}", "centre", size=HEADING, bold=True, stands_alone=True)
    beside = words_width(heading.text, HEADING, bold=True) / 2 + 6
    return [heading, *_arrow((middle - beside, y), -1, left), *_arrow((middle + beside, y), 1, right)]


def _arrow(start: Point, way: int, words: str) -> list[PaperItem]:
    """A direction arrow and its word."""
    x, y = start
    tip = x + way * (words_width(words) + 16)
    return [
        PaperWords((x, y), words, "left" if way > 0 else "right", stands_alone=True),
        Stroke(((tip - way * 14, y), (tip - way * 2, y)), "thin"),
        Stroke(((tip, y), (tip - way * 4, y + 1.2), (tip - way * 4, y - 1.2)), "thin", closed=True, filled=True),
    ]
