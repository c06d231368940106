"""What a full-size drawing is made of: lines and words at true size, in mm, with no paper in them.

A drawing's x runs to the right and its y up. Line kinds are those of ISO 128-2. Words are anchored at half the height
of their figures, so that a mirrored drawing keeps its words clear of the same lines.
"""

from collections.abc import Iterable, Sequence
from functools import cached_property, lru_cache
from math import ceil, cos, radians, sin
from typing import Literal

from rules.measure.outline import Point
from rules.measure.records import dataclass, field, replace

Pen = Literal["outline", "thin", "hidden", "centre", "adjacent"]
"""outline: a visible edge. thin: dimension, projection and leader lines. hidden: an edge behind something. centre:
centre lines and axes. adjacent: a neighbouring part, or one of several places a part may take."""
Align = Literal["left", "centre", "right"]

POINT = 25.4 / 72
"""mm."""
WORDS = 10.0
"""Points: the size of words and figures; the figures are then 2.6 mm high."""
HEADING = 14.0
"""Points."""


@dataclass(frozen=True, slots=True)
class PaperBox:
    """A rectangle."""

    left: float
    bottom: float
    right: float
    top: float

    @property
    def width(self) -> float:
        """mm."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """mm."""
        return self.top - self.bottom


class _Placed:
    """Something on a drawing."""

    @cached_property
    def box(self) -> PaperBox:
        """The rectangle it fills."""
        return _around(_outline(self))  # type: ignore[arg-type]


@dataclass(frozen=True)
class Stroke(_Placed):
    """Straight lines from point to point; `closed` joins the last to the first, `filled` is solid black.

    white: an area wiped clean, which hides what was drawn there before it.
    """

    points: tuple[Point, ...]
    pen: Pen = "outline"
    closed: bool = False
    filled: bool = False
    white: bool = False


@dataclass(frozen=True)
class PaperCircle(_Placed):
    """A whole circle."""

    centre: Point
    radius: float
    pen: Pen = "outline"


@dataclass(frozen=True)
class PaperArc(_Placed):
    """A part of a circle. start: degrees from the right, turning left; sweep: so many more degrees, above 0."""

    centre: Point
    radius: float
    start: float
    sweep: float
    pen: Pen = "outline"


@dataclass(frozen=True)
class PaperWords(_Placed):
    """One line of words. angle: degrees, turning left. over_lines: no clear place was found, so lines are broken for it.

    stands_alone: a heading or the like, which belongs to no line and no point. led: the line drawn for these words alone, from
    what they speak of: a leader line, or what carries a figure beyond its arrows. It goes where they go.
    """

    at: Point
    text: str
    align: Align = "left"
    angle: float = 0.0
    size: float = WORDS
    bold: bool = False
    over_lines: bool = False
    stands_alone: bool = False
    led: tuple[Point, ...] = ()


PaperItem = Stroke | PaperCircle | PaperArc | PaperWords


@dataclass(frozen=True, slots=True)
class View:
    """One view: what is drawn, and the rectangle it fills."""

    items: tuple[PaperItem, ...]
    frame: PaperBox = field(default_factory=lambda: PaperBox(0, 0, 0, 0))


_WIDE, _NARROW = 0.72, 0.36
"""Widths of a character as a share of the letter size, on the safe side for the usual wide sans-serif faces."""


@lru_cache(maxsize=4096)  # each word is tried in many places
def words_width(text: str, size: float = WORDS, bold: bool = False) -> float:
    """mm that a line of words takes at most, more or less."""
    ems = sum(
        _NARROW if one in " .,:;()/-il'|!" else 1.0 if one in "mwMW%" else _WIDE if one.isupper() else 0.64
        for one in text
    )
    return ems * size * POINT * (1.1 if bold else 1.0)


def corners(words: PaperWords, clearance: float = 0.0) -> tuple[Point, Point, Point, Point]:
    """The four corners of the room that words take, with so many mm of clearance all round."""
    width, em = words_width(words.text, words.size, words.bold), words.size * POINT
    start = {"left": 0.0, "centre": -width / 2, "right": -width}[words.align] - clearance
    end, low, high = start + width + 2 * clearance, -0.62 * em - clearance, 0.45 * em + clearance
    across, up = cos(radians(words.angle)), sin(radians(words.angle))
    x, y = words.at
    first, second, third, fourth = (
        (x + along * across - rise * up, y + along * up + rise * across)
        for along, rise in ((start, low), (end, low), (end, high), (start, high))
    )
    return first, second, third, fourth


def bounds(items: Iterable[PaperItem]) -> PaperBox:
    """The rectangle that everything fills; a point at the origin when there is nothing."""
    boxes = [item.box for item in items]
    return _around(
        [corner for box in boxes for corner in ((box.left, box.bottom), (box.right, box.top))] or [(0.0, 0.0)]
    )


def _around(points: Sequence[Point]) -> PaperBox:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return PaperBox(min(xs), min(ys), max(xs), max(ys))


def _outline(item: PaperItem) -> tuple[Point, ...]:
    match item:
        case Stroke():
            return item.points
        case PaperCircle(centre=(x, y), radius=radius):
            return ((x - radius, y - radius), (x + radius, y + radius))
        case PaperArc():
            return points_on(item, 3.0)
        case PaperWords():
            return corners(item)


def points_on(arc: PaperArc, step: float) -> tuple[Point, ...]:
    """Points along an arc from end to end, at most `step` degrees apart."""
    (x, y), parts = arc.centre, max(1, ceil(arc.sweep / step))
    turns = (radians(arc.start + arc.sweep * part / parts) for part in range(parts + 1))
    return tuple((x + arc.radius * cos(turn), y + arc.radius * sin(turn)) for turn in turns)


def moved(item: PaperItem, right: float, up: float) -> PaperItem:
    """The same thing so many mm further right and up."""
    match item:
        case Stroke():
            return replace(item, points=tuple((x + right, y + up) for x, y in item.points))
        case PaperCircle(centre=(x, y)) | PaperArc(centre=(x, y)):
            return replace(item, centre=(x + right, y + up))
        case PaperWords(at=(x, y)):
            led = tuple((along + right, height + up) for along, height in item.led)
            return replace(item, at=(x + right, y + up), led=led)


_OTHER_END: dict[Align, Align] = {"left": "right", "centre": "centre", "right": "left"}


def mirrored(item: PaperItem) -> PaperItem:
    """The mirror image about x = 0; words stay readable."""
    match item:
        case Stroke():
            return replace(item, points=tuple((-x, y) for x, y in item.points))
        case PaperCircle(centre=(x, y)):
            return replace(item, centre=(-x, y))
        case PaperArc(centre=(x, y)):
            return replace(item, centre=(-x, y), start=180.0 - item.start - item.sweep)
        case PaperWords(at=(x, y)):
            led = tuple((-along, height) for along, height in item.led)
            if abs(item.angle - 90) < 1e-9:
                return replace(item, at=(-x, y), led=led)
            return replace(item, at=(-x, y), align=_OTHER_END[item.align], angle=-item.angle, led=led)
