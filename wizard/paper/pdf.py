"""Pages in millimetres: a thin layer over reportlab, which is imported only when something is printed.

The origin of a page is its lower left corner, y up. Sizes of words are in points, all else in mm. Everything is black.
Pages are recorded first and written last, so that each can say "page 3 of 7".
"""

import io
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from math import ceil, cos, radians, sin, tan
from typing import Any, Literal

from rules.drawn.full_size.shapes import Align, PaperBox
from rules.measure.outline import Point
from rules.measure.records import dataclass
from wizard.paper.archive import save_to_keep
from wizard.paper.lettering import (
    POINT,
    WORDS,
    drawable,
    evenly,
    fonts,
    line_height,
    new_canvas,
    shortened,
    text_width,
    wrap,
)
from wizard.paper.papers import PAPERS, paper_size

__all__ = [
    "MARGIN", "PAPERS", "POINT", "WORDS", "Align", "Area", "Document", "PaperPage", "PaperPen", "Point", "bars_fit", "check_bars",
    "drawable",    "line_height", "paper_size", "row_height", "shortened", "text_width", "wrap",
]  # fmt: skip

MARGIN = 12.0
"""mm kept clear all round: nearly every printer reaches that far."""
FIGURE_HEIGHT = 0.73
"""Height of a figure or a capital, as a share of the letter size."""
PaperPen = Literal["outline", "thin", "hidden", "centre", "adjacent", "bar"]

WIDE, NARROW, _SEAM = 0.5, 0.25, 0.12
"""mm: the pair of line widths of ISO 128-2 used here, and the rim of what is wiped clean."""

_LONG, _DASH, _GAP, _DOT = 24 * NARROW, 12 * NARROW, 3 * NARROW, NARROW
PENS: dict[PaperPen, tuple[float, tuple[float, ...]]] = {
    "outline": (WIDE, ()),
    "thin": (NARROW, ()),
    "hidden": (NARROW, (_DASH, _GAP)),
    "centre": (NARROW, (_LONG, _GAP, _DOT, _GAP)),
    "adjacent": (NARROW, (_LONG, _GAP, _DOT, _GAP, _DOT, _GAP)),
    "bar": (1.2, ()),
}
"""Width in mm and dashes in mm of each kind of line (ISO 128-2): visible outlines; dimension, projection and leader
lines; hidden outlines; centre lines and axes (long dash, dot); outlines of neighbouring parts (long dash, two dots).
The check bars are lines too, 1.2 mm wide."""

MEASURE_THIS = "measure this before you trust the page: print at 100 %"
BARS: tuple[tuple[str, float], ...] = (("100 mm", 100.0), ("4 in", 101.6))
BARS_DEEP = 14.5
"""mm: how far the check bars reach in from the corner they start at."""


# Pages


@dataclass(frozen=True, slots=True)
class Area(PaperBox):
    """A rectangle on a page, mm."""

    def less(self, left: float = 0.0, bottom: float = 0.0, right: float = 0.0, top: float = 0.0) -> "Area":
        """The rectangle with so many mm taken off its sides."""
        return Area(self.left + left, self.bottom + bottom, self.right - right, self.top - top)


class PaperPage:
    """One page. What is drawn on it is kept until the document is written."""

    def __init__(self, width: float, height: float, heading: str) -> None:
        """width, height: mm. heading: what this page shows, in its header."""
        self.width, self.height, self.heading = width, height, heading
        self._marks: list[Callable[[Any], None]] = []

    @property
    def area(self) -> Area:
        """The room inside the margins, the header and the footer."""
        band = line_height() + 2
        return Area(MARGIN, MARGIN + band, self.width - MARGIN, self.height - MARGIN - band)

    def line(self, start: Point, end: Point, pen: PaperPen = "thin") -> None:
        """A straight line."""
        self.polyline((start, end), pen)

    def polyline(
        self,
        points: Sequence[Point],
        pen: PaperPen = "thin",
        closed: bool = False,
        filled: bool = False,
        white: bool = False,
    ) -> None:
        """Straight lines from point to point. closed: the last joins the first. filled: solid black. white: wiped clean."""

        def draw(canvas: Any) -> None:
            path = _path(points, closed)
            _set_pen(canvas, pen)
            if white:  # with a thin rim, or what lies under the seam of two shows as specks
                canvas.setLineWidth(_SEAM)
                canvas.setFillGray(1)
                canvas.setStrokeGray(1)
            canvas.drawPath(path, stroke=int(not filled), fill=int(filled or white))
            canvas.setFillGray(0)
            canvas.setStrokeGray(0)

        self._marks.append(draw)

    def circle(self, centre: Point, radius: float, pen: PaperPen = "outline", filled: bool = False) -> None:
        """A circle of eight curves: round to a few thousandths of a mm at any size that fits on paper."""

        def draw(canvas: Any) -> None:
            path = _round_path(centre, radius, 0.0, 360.0, closed=True)
            _set_pen(canvas, pen)
            canvas.drawPath(path, stroke=int(not filled), fill=int(filled))

        self._marks.append(draw)

    def arc(self, centre: Point, radius: float, start: float, sweep: float, pen: PaperPen = "outline") -> None:
        """A part of a circle, from an angle in degrees on so many degrees to the left."""

        def draw(canvas: Any) -> None:
            path = _round_path(centre, radius, start, sweep, closed=False)
            _set_pen(canvas, pen)
            canvas.drawPath(path, stroke=1, fill=0)

        self._marks.append(draw)

    def box(self, area: Area, pen: PaperPen = "thin", filled: bool = False) -> None:
        """A rectangle."""
        corners = ((area.left, area.bottom), (area.right, area.bottom), (area.right, area.top), (area.left, area.top))
        self.polyline(corners, pen, closed=True, filled=filled)

    def text(
        self,
        at: Point,
        words: object,
        size: float = WORDS,
        bold: bool = False,
        align: Align = "left",
        angle: float = 0.0,
        middle: bool = False,
    ) -> None:
        """One line of words that starts, is centred or ends at a point of its base line.

        angle: degrees, turning left. middle: the point is at half the height of the figures instead.
        """
        line = drawable(words)
        back = {"left": 0.0, "centre": 0.5, "right": 1.0}[align] * text_width(line, size, bold)
        down = FIGURE_HEIGHT * size * POINT / 2 if middle else 0.0
        font = fonts()[bold].fontName

        def draw(canvas: Any) -> None:
            canvas.setFont(font, size * POINT)
            if not angle:
                canvas.drawString(at[0] - back, at[1] - down, line)
                return
            canvas.saveState()
            canvas.translate(*at)
            canvas.rotate(angle)
            canvas.drawString(-back, -down, line)
            canvas.restoreState()

        self._marks.append(draw)

    def paragraph(self, at: Point, width: float, words: object, size: float = WORDS, bold: bool = False) -> float:
        """Wrapped words with the top of the first line at a point. Returns the y where the next line may begin."""
        x, top = at
        for line in wrap(words, width, size, bold):
            self.text((x, top - size * POINT), line, size, bold)
            top -= line_height(size)
        return top

    def table(
        self,
        at: Point,
        widths: Sequence[float],
        rows: Sequence[Sequence[object]],
        bottom: float,
        size: float = WORDS,
        heading: Sequence[object] = (),
    ) -> tuple[float, Sequence[Sequence[object]]]:
        """A ruled table with its upper left corner at a point, as many rows as fit above `bottom` mm.

        widths: mm of each column. heading: a bold first row. Returns the y below the table and the rows left over;
        a row that would not fit on any page is drawn all the same when it is the first.
        """
        x, top = at
        if heading:
            top = self._row(x, top, widths, heading, size, bold=True)
        for number, row in enumerate(rows):
            if number and top - row_height(widths, row, size) < bottom:
                return top, rows[number:]
            top = self._row(x, top, widths, row, size)
        return top, ()

    def _row(
        self, x: float, top: float, widths: Sequence[float], row: Sequence[object], size: float, bold: bool = False
    ) -> float:
        bottom = top - row_height(widths, row, size, bold)
        for width, cell in zip(widths, row, strict=True):
            self.box(Area(x, bottom, x + width, top))
            self.paragraph((x + CELL_PADDING, top - CELL_PADDING), width - 2 * CELL_PADDING, cell, size, bold)
            x += width
        return bottom

    @contextmanager
    def only_inside(self, area: Area) -> Iterator[None]:
        """What is drawn in this block shows only inside the rectangle."""

        def start(canvas: Any) -> None:
            canvas.saveState()
            path = canvas.beginPath()
            path.rect(area.left, area.bottom, area.width, area.height)
            canvas.clipPath(path, stroke=0, fill=0)

        self._marks.append(start)
        yield
        self._marks.append(lambda canvas: canvas.restoreState())

    @contextmanager
    def moved(self, right: float, up: float) -> Iterator[None]:
        """What is drawn in this block stands so many mm further right and up."""

        def start(canvas: Any) -> None:
            canvas.saveState()
            canvas.translate(right, up)

        self._marks.append(start)
        yield
        self._marks.append(lambda canvas: canvas.restoreState())

    def write_on(self, canvas: Any) -> None:
        """Draw everything on a reportlab canvas; the unit is made mm first."""
        canvas.setPageSize((self.width / POINT, self.height / POINT))
        canvas.scale(1 / POINT, 1 / POINT)
        for mark in self._marks:
            mark(canvas)
        canvas.showPage()


CELL_PADDING = 1.2
"""mm round the words of a table cell."""


def row_height(widths: Sequence[float], row: Sequence[object], size: float = WORDS, bold: bool = False) -> float:
    """mm that a row of a table takes."""
    deepest = max(
        len(wrap(cell, width - 2 * CELL_PADDING, size, bold)) for width, cell in zip(widths, row, strict=True)
    )
    return deepest * line_height(size) + 2 * CELL_PADDING


def _path(points: Sequence[Point], closed: bool) -> Any:
    """Straight lines as reportlab's path; the numbers are put into words here, which takes a tenth of the time."""
    from reportlab.pdfgen.pathobject import PDFPathObject  # type: ignore[import-untyped]

    first, *others = (f"{x:.4f} {y:.4f}" for x, y in points)
    return PDFPathObject([f"{first} m", *(f"{other} l" for other in others), *("h" * closed)])


def _round_path(centre: Point, radius: float, start: float, sweep: float, *, closed: bool) -> Any:
    """An arc, or a whole circle, as reportlab's path."""
    from reportlab.pdfgen.pathobject import PDFPathObject

    curves = [*_curves(centre, radius, start, sweep)]
    numbers = (" ".join(f"{number:.4f}" for point in curve[1:] for number in point) for curve in curves)
    (x, y), *_ = curves[0]
    return PDFPathObject([f"{x:.4f} {y:.4f} m", *(f"{each} c" for each in numbers), *("h" * closed)])


def _set_pen(canvas: Any, pen: PaperPen) -> None:
    width, dashes = PENS[pen]
    canvas.setLineWidth(width)
    canvas.setDash(list(dashes))


def _curves(centre: Point, radius: float, start: float, sweep: float) -> Iterator[tuple[Point, Point, Point, Point]]:
    """The curves of an arc, none over 45 degrees: start, two handles, end."""
    parts = max(1, ceil(sweep / 45 - 1e-9))
    step = radians(sweep / parts)
    handle = 4 / 3 * tan(step / 4)
    for part in range(parts):
        ends = []
        for angle, way in ((radians(start) + step * part, 1), (radians(start) + step * (part + 1), -1)):
            across, up = cos(angle), sin(angle)
            ends.append((centre[0] + radius * across, centre[1] + radius * up))
            ends.append(
                (centre[0] + radius * (across - way * handle * up), centre[1] + radius * (up + way * handle * across))
            )
        begin, first, end, second = ends
        yield begin, first, second, end


# The document

BLANK = "________"


class Document:
    """Pages with one title, in order. `written()` gives the same bytes for the same pages: no date but the stamp's."""

    def __init__(self, title: str, stamp: str = "", note: str = "") -> None:
        """title: the sheet's. stamp: what tells this print from others. note: words for the footer of every page."""
        self.title, self.stamp, self.note = title, stamp, note
        self.pages: list[PaperPage] = []

    def page(self, size: tuple[float, float], heading: str) -> PaperPage:
        """A new page of a size in mm. heading: what it shows, for its header."""
        self.pages.append(PaperPage(*size, heading))
        return self.pages[-1]

    def written(self) -> bytes:
        """The PDF file. Readers are told not to scale it (not all obey: hence the check bars)."""
        stream = io.BytesIO()
        canvas = new_canvas(stream)
        canvas.setTitle(drawable(self.title))
        canvas.setAuthor("")
        canvas.setCreator("buildsheet")
        canvas.setViewerPreference("PrintScaling", "None")
        for number, page in enumerate(self.pages, 1):
            self._frame(page, f"page {number} of {len(self.pages)}").write_on(canvas)
        save_to_keep(canvas, drawable(self.title))
        return stream.getvalue()

    def _frame(self, page: PaperPage, number: str) -> PaperPage:
        """The page with its header and footer; drawn on a copy so that writing twice gives the same."""
        framed = PaperPage(page.width, page.height, page.heading)
        framed._marks = list(page._marks)
        left, right, size = MARGIN, page.width - MARGIN, WORDS
        top, bottom = page.height - MARGIN - size * POINT, MARGIN + 1
        half = (right - left) / 2 - 2
        heading = shortened(page.heading, half)
        beside = right - left - text_width(heading) - 4
        framed.text((left, top), shortened(self.title or f"Sheet title {BLANK}", beside, bold=True), bold=True)
        framed.text((right, top), heading, align="right")
        framed.line((left, page.area.top + 0.5), (right, page.area.top + 0.5))
        framed.line((left, page.area.bottom - 0.5), (right, page.area.bottom - 0.5))
        room = right - left - text_width(number) - 4
        framed.text((left, bottom), shortened(". ".join(filter(None, (self.stamp, self.note))), room))
        framed.text((right, bottom), number, align="right")
        return framed


# Check bars


_MOST_LINES, _LEAST_WORDS = 3, 30.0
"""Lines of words beside the bars, more would run off the paper; and mm: narrower, words are broken."""
_UPRIGHT_FROM = BARS_DEEP + 4
"""mm: the upright bars begin above the level ones, which have the corner, and clear of a drawing's crop marks."""


def bars_fit(area: Area) -> bool:
    """Whether both pairs of bars with their names stand inside a rectangle."""
    long = BARS[-1][1] + 2 + text_width(BARS[0][0])
    return area.width >= long and area.height >= _UPRIGHT_FROM + long


def check_bars(page: PaperPage, area: Area) -> Area:
    """A 100 mm and a 4 in bar along the bottom and along the left of a rectangle, and the words that go with them.

    Each black bar is exactly that long. Words stand beside them where they have room. Returns the rectangle that is left.
    """
    for turned in (False, True):
        start = _UPRIGHT_FROM if turned else 0.0
        for number, (name, long) in enumerate(BARS):
            across = 1.5 + 5.0 * number
            page.line(
                _turned(area, start, across + 0.6, turned), _turned(area, start + long, across + 0.6, turned), "bar"
            )
            _along(page, area, start + long + 2, across, name, turned)
        start += BARS[-1][1] + 2 + text_width("100 mm") + 3
        room = (area.height if turned else area.width) - start
        lines = evenly(MEASURE_THIS, room) if room > _LEAST_WORDS else []
        if len(lines) <= _MOST_LINES:
            for number, line in enumerate(reversed(lines)):
                _along(page, area, start, 1.5 + 4.4 * number, line, turned)
    return area.less(left=BARS_DEEP, bottom=BARS_DEEP)


def _turned(area: Area, along: float, across: float, turned: bool) -> Point:
    """A point so far along a bar and so far up from the lowest one; for upright bars up is to the left."""
    if turned:
        return area.left + BARS_DEEP - across - 1.2, area.bottom + along
    return area.left + along, area.bottom + across


def _along(page: PaperPage, area: Area, along: float, across: float, words: str, turned: bool) -> None:
    page.text(_turned(area, along, across, turned), words, angle=90 if turned else 0)
