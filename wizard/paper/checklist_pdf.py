"""The checklist as PDF: a box for each piece, room to write, left and right side by side."""

from collections.abc import Mapping

from rules.judging.judge import Judged
from rules.measure.records import replace
from rules.shop.checklist import BLANK, ChecklistLine, Marks
from wizard.paper.checklist_text import HEADINGS, LEGENDS, ForWhom, has_blank, head, is_plain, sections
from wizard.paper.flow import Flow
from wizard.paper.pdf import POINT, WORDS, Area, Document, line_height, paper_size, text_width, wrap
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

_CELL = 34.0
"""mm: room for a box and a measured figure."""
_BOX = 4.2
"""mm: a tick box."""
_LONGEST = 1000
"""Characters of one text: what a person put into the file may be longer than a page."""
_LONGEST_RESULT = 120
_WRITING = 7.6
"""mm: the least height of a row a person writes in."""
_PADDING = 1.2
"""mm above and below the words of a row."""


@shop_paper
def checklist_pdf(
    judged: Judged, document: Mapping[str, object], paper: str = "letter", part: ForWhom = "whole"
) -> bytes:
    """The checklist as a PDF file.

    document: the sheet as in its file; ticks and measured results on it are printed in place. paper: a name or a size with its
    unit, see `paper_size`. part: for whom it is, which leaves out what he has no use for.
    """
    pages = Document(judged.sheet.title, stamp(judged))
    written = _Checklist(judged, pages, paper_size(paper), HEADINGS[part].capitalize())
    written.front_matter(LEGENDS[part])
    for section, lines in sections(judged, document, part):
        written.section(section, [(line, _fitting(marks)) for line, marks in lines])
    return written.document.written()


class _Checklist(Flow):
    """The rows of a checklist."""

    def front_matter(self, legend: str) -> None:
        """What the sheet is, who signs, and how to fill it in."""
        left, width = self.area.left, self.area.width
        for name, words in head(self.judged):
            self.page.text((left, self.y - WORDS * POINT), name, bold=True)
            self.y = self.page.paragraph((left + 20, self.y), width - 20, _capped(words))
        self.y -= 2
        signs = "   ".join(f"{name} {BLANK}{BLANK}" for name in ("Date", "Builder", "Welder", "Checked"))
        self.y = self.page.paragraph((left, self.y), width, signs) - 2
        self.y = self.page.paragraph((left, self.y), width, legend)

    def section(self, name: str, lines: list[tuple[ChecklistLine, Marks]]) -> None:
        """A section's heading, then its rows; the heading again where the section runs over."""
        boxes = any(not is_plain(line, marks) for line, marks in lines)
        self._section_heading(name, boxes, self._height(*lines[0]))
        for line, marks in lines:
            if self.room < self._height(line, marks):
                self.turn_page()
                self._section_heading(f"{name} (continued)", boxes)
            self._row(line, marks)

    def _section_heading(self, name: str, boxes: bool, room_after: float = 0.0) -> None:
        self.heading(name, room_after, narrower=2 * _CELL if boxes else 0.0)
        if boxes:
            for number, side in enumerate(("RIGHT", "LEFT"), 1):
                self.page.text((self.area.right - number * _CELL + 1, self.y + 1.5), side, bold=True)

    def _words_width(self, line: ChecklistLine, marks: Marks) -> float:
        return self.area.width - 6 if is_plain(line, marks) else self.area.width - 2 * _CELL - 3

    def _height(self, line: ChecklistLine, marks: Marks) -> float:
        width = self._words_width(line, marks)
        rows = sum(len(wrap(words, width, WORDS, bold)) for words, bold in _paragraphs(line, marks))
        if _beside(line, width):
            rows -= 1
        cells = [len(wrap(measured, _CELL - _BOX - 3)) for measured in (marks.left_measured, marks.right_measured)]
        return max(max(rows, *cells) * line_height() + 2 * _PADDING, _WRITING if has_blank(line) else 0)

    def _row(self, line: ChecklistLine, marks: Marks) -> None:
        height, width = self._height(line, marks), self._words_width(line, marks)
        left, right, bottom = self.area.left, self.area.right, self.y - height
        plain, y = is_plain(line, marks), self.y - _PADDING
        paragraphs = _paragraphs(line, marks)
        if plain:
            self.page.text((left + 1, y - WORDS * POINT), "!", bold=True)
        if _beside(line, width):
            detail, bold = paragraphs.pop(1)
            self.page.text((left + width, y - WORDS * POINT), detail, WORDS, bold, align="right")
        for words, bold in paragraphs:
            y = self.page.paragraph((left + (5 if plain else 0), y), width, words, WORDS, bold)
        if not plain:
            self._cell(right - 2 * _CELL, bottom, marks.left, marks.left_measured, has_blank(line))
            self._cell(right - _CELL, bottom, marks.right, marks.right_measured, has_blank(line))
        self.page.line((left, bottom), (right, bottom))
        self.y = bottom

    def _cell(self, x: float, bottom: float, ticked: bool, measured: str, blank: bool) -> None:
        self.page.line((x, self.y), (x, bottom))
        box = Area(x + 1, self.y - 1 - _BOX, x + 1 + _BOX, self.y - 1)
        self.page.box(box)
        if ticked:
            self.page.line((box.left, box.bottom), (box.right, box.top), "outline")
            self.page.line((box.left, box.top), (box.right, box.bottom), "outline")
        start = box.right + 1.5
        if measured:
            self.page.paragraph((start, self.y - _PADDING), x + _CELL - start, measured)
        elif blank:
            line = BLANK
            while text_width(line + "_") < x + _CELL - start - 1:
                line += "_"
            self.page.text((start, self.y - _BOX - 1.4), line)


def _fitting(marks: Marks) -> Marks:
    """Measured results short enough for their cell."""
    left, right = (text[:_LONGEST_RESULT] for text in (marks.left_measured, marks.right_measured))
    return replace(marks, left_measured=left, right_measured=right)


def _capped(text: str) -> str:
    """A text no longer than fits a page; what is cut off ends in "..."."""
    return text if len(text) <= _LONGEST else f"{text[:_LONGEST]}..."


def _detail(line: ChecklistLine) -> str:
    return f"{line.target}{'  ' if line.tolerance.startswith('+/-') else '; '}{line.tolerance}".strip("; ")


def _beside(line: ChecklistLine, width: float) -> bool:
    """Whether what a line asks for stands at the end of its first row."""
    detail, bold = _detail(line), line.kind == "hold"
    return bool(detail) and text_width(line.text, WORDS, bold) + text_width(detail, WORDS, bold=True) + 5 <= width


def _paragraphs(line: ChecklistLine, marks: Marks) -> list[tuple[str, bool]]:
    """The words of a row, and whether each stands out."""
    paragraphs = [(line.text, line.kind == "hold"), (_detail(line), True)]
    if marks.stale_for(line):
        paragraphs.append((f"CHANGED since it was marked: check again. It was {marks.asked_for}", True))
    return [(_capped(words), bold) for words, bold in paragraphs if words]
