"""Words and tables that run down a page and over to the next."""

from collections.abc import Sequence

from rules.judging.judge import Judged
from wizard.paper.pdf import POINT, WORDS, Area, Document, PaperPage, check_bars, line_height, text_width, wrap
from wizard.paper.stops import stop_band

HEADING = 12.0
"""Points: the size of a section's heading."""
_PADDING, CLOSE = 0.8, 0.45
"""mm round the words of a table cell, and where room is short."""
_BEFORE_HEADING, _AFTER_HEADING = 2.5, 1.5
"""mm."""
_TOGETHER = 2
"""Rows of a table that stay together at its beginning and at its end."""


class Flow:
    """Puts things under each other and turns the page where the next one would not fit.

    Every page begins with DO NOT CUT, where that applies, and with what is wrong: at more length on the document's first.
    """

    def __init__(self, judged: Judged, document: Document, paper: tuple[float, float], heading: str) -> None:
        """paper: width and height, mm. heading: what the pages show."""
        self.judged, self.document, self.paper, self._heading = judged, document, paper, heading
        self.page: PaperPage
        self.area: Area
        self.y = 0.0
        self.padding = _PADDING
        self.turn_page()

    def turn_page(self) -> None:
        """Go on at the top of a new page."""
        self.page = self.document.page(self.paper, self._heading)
        self.area = stop_band(self.page, self.judged, brief=len(self.document.pages) > 1)
        self.y = self.area.top

    @property
    def room(self) -> float:
        """mm left above the footer."""
        return self.y - self.area.bottom

    def heading(self, words: str, room_after: float = 0.0, narrower: float = 0.0) -> None:
        """A section's heading with a line under it.

        room_after: mm that must fit below it on the same page. narrower: mm of the line it must leave free.
        """
        size = HEADING if text_width(words, HEADING, bold=True) <= self.area.width - narrower else WORDS
        if self.room < _BEFORE_HEADING + line_height(size) + _AFTER_HEADING + room_after:
            self.turn_page()
        base = self.y - _BEFORE_HEADING - size * POINT
        self.page.text((self.area.left, base), words, size, bold=True)
        self.y = base - _AFTER_HEADING
        self.page.line((self.area.left, self.y), (self.area.right, self.y), "outline")

    def paragraph(self, words: str, bold: bool = False, before: float = 0.0, indent: float = 0.0) -> None:
        """Wrapped words, kept on one page. before, indent: mm left free above and at the left."""
        width = self.area.width - indent
        if self.room < before + len(wrap(words, width, WORDS, bold)) * line_height():
            self.turn_page()
        self.y = self.page.paragraph((self.area.left + indent, self.y - before), width, words, WORDS, bold)

    def table(
        self, shares: Sequence[float], heading: Sequence[object], rows: Sequence[Sequence[object]], least: float = 0.0
    ) -> None:
        """A ruled table across the page, its heading again on each page it runs over to.

        shares: widths of the columns, in any unit. least: mm each row is at least high, for writing in.
        """
        widths = [share * self.area.width / sum(shares) for share in shares]
        heights = [max(self.row_height(widths, row), least) for row in rows]
        if self.room < 1.0 + self.row_height(widths, heading, bold=True) + sum(heights[:_TOGETHER]):
            self.turn_page()
        self.y -= 1.0
        self.row(widths, heading, 0.0, bold=True)
        for number, row in enumerate(rows):
            # The last row does not go over alone.
            together = heights[number:] if number == len(rows) - _TOGETHER and number else heights[number : number + 1]
            if self.room < sum(together):
                self.turn_page()
                self.y -= 1.0
                self.row(widths, heading, 0.0, bold=True)
            self.row(widths, row, least)

    def row(self, widths: Sequence[float], row: Sequence[object], least: float = 0.0, bold: bool = False) -> None:
        """One ruled row, its columns so many mm wide and itself at least `least` mm high, at this place of the page."""
        bottom = self.y - max(self.row_height(widths, row, bold), least)
        x = self.area.left
        for width, cell in zip(widths, row, strict=True):
            self.page.box(Area(x, bottom, x + width, self.y))
            inside = (x + _PADDING, self.y - self.padding)
            self.page.paragraph(inside, width - 2 * _PADDING, cell, WORDS, bold)
            x += width
        self.y = bottom

    def row_height(self, widths: Sequence[float], row: Sequence[object], bold: bool = False) -> float:
        """mm that a row takes in columns so wide."""
        lines = max(len(wrap(cell, width - 2 * _PADDING, WORDS, bold)) for width, cell in zip(widths, row, strict=True))
        return lines * line_height() + 2 * self.padding


class BarredFlow(Flow):
    """Running words on pages with check bars."""

    def turn_page(self) -> None:
        """Go on at the top of a new page."""
        super().turn_page()
        self.area = check_bars(self.page, self.area).less(left=2, top=1)
        self.y = self.area.top
