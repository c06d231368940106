"""The motion sheet for the alignment shop and the builder: tables with room to write, as text, Markdown and PDF."""

import textwrap
from collections.abc import Sequence

from rules.judging.judge import Judged
from rules.shop.checklist import BLANK
from rules.shop.motion_sheet import CAUTIONS, SheetTable, sections
from wizard.paper.checklist_text import WIDTH, ascii_line, head, markdown_line
from wizard.paper.flow import Flow
from wizard.paper.pdf import Document, paper_size, text_width
from wizard.paper.stamp import stamp
from wizard.paper.stops import stops
from wizard.paper.text_table import text_table
from wizard.paper.wording import shop_paper

HEADING = "MOTION SHEET, FRONT END"
_PEOPLE = ("Date", "Builder", "Measured by")


# Plain text


@shop_paper
def as_text(judged: Judged) -> str:
    """The motion sheet in plain ASCII, 80 columns at most."""
    rows = [HEADING]
    for name, words in head(judged):
        rows += textwrap.wrap(f"{name:<9}{ascii_line(words)}", WIDTH, subsequent_indent=" " * 9)
    for stop in stops(judged):
        rows += textwrap.wrap(ascii_line(stop), WIDTH, initial_indent="! ", subsequent_indent="  ")
    rows.append("  ".join(f"{name} {BLANK}" for name in _PEOPLE))
    for caution in CAUTIONS:
        rows += textwrap.wrap(ascii_line(caution), WIDTH, initial_indent="! ", subsequent_indent="  ")
    for number, section in enumerate(sections(judged), 1):
        rows += ["", f"{number} {ascii_line(section.title).upper()} ".ljust(WIDTH, "-")]
        for note in section.above:
            rows += textwrap.wrap(ascii_line(note), WIDTH)
        cells = [[ascii_line(cell) for cell in row] for row in (section.columns, *section.rows)]
        rows += text_table(cells, WIDTH) if section.rows else []
        for line in section.below:
            rows += textwrap.wrap(ascii_line(line), WIDTH)
    return "\n".join(row.rstrip() for row in rows) + "\n"


# Markdown


@shop_paper
def as_markdown(judged: Judged) -> str:
    """The motion sheet as Markdown, a table for each section. Nothing a person typed can break it or become markup."""
    rows = [f"# {HEADING.capitalize()}", ""]
    rows += [f"- {name}: {markdown_line(words)}" for name, words in head(judged)]
    rows += [f"- **{markdown_line(stop)}**" for stop in stops(judged)]
    rows += ["", ", ".join(f"{name} {BLANK}" for name in _PEOPLE), ""]
    rows += [f"- {markdown_line(caution)}" for caution in CAUTIONS]
    for number, section in enumerate(sections(judged), 1):
        rows += ["", f"## {number} {markdown_line(section.title)}", ""]
        rows += [f"- {markdown_line(note)}" for note in section.above]
        if section.rows:
            rows += ["", _markdown_row(section.columns), _markdown_row(["---"] * len(section.columns))]
            rows += [_markdown_row([markdown_line(cell) or BLANK for cell in row]) for row in section.rows]
        if section.below:
            rows += ["", *(f"- {markdown_line(line)}" for line in section.below)]
    return "\n".join(rows) + "\n"


def _markdown_row(cells: Sequence[str]) -> str:
    return f"| {' | '.join(cells)} |"


# PDF

_WRITING = 6.2
"""mm: the least height of a row a person writes in."""
_TO_WRITE_IN = 15.0
"""mm: the least width of a column to write in."""
_WIDEST = 60.0
"""mm that one column asks for at most; longer words wrap."""
_PADDING = 1.8
"""mm round the words of a cell, both sides together."""
_LONGEST = 1000
"""Characters of one text: what a person put into the file may be longer than a page."""


@shop_paper
def motion_sheet_pdf(judged: Judged, paper: str = "letter") -> bytes:
    """The motion sheet as a PDF file. paper: a name or a size with its unit, see `paper_size`."""
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    flow = Flow(judged, pages, paper_size(paper), HEADING.capitalize())
    for name, words in head(judged):
        flow.paragraph(f"{name}: {words if len(words) <= _LONGEST else words[:_LONGEST] + '...'}")
    flow.paragraph("   ".join(f"{name} {BLANK}{BLANK}" for name in _PEOPLE), before=1.5)
    flow.paragraph(f"CAUTIONS. {' '.join(CAUTIONS)}", before=0.5)
    for number, section in enumerate(sections(judged), 1):
        flow.heading(f"{number} {section.title}", 35 if section.rows else 6)
        for note in section.above:
            flow.paragraph(note, before=0.5)
        if section.rows:
            written_in = any("" in row for row in section.rows)
            flow.table(_shares(section), section.columns, section.rows, _WRITING if written_in else 0.0)
        for line in section.below:
            flow.paragraph(line, before=0.5)
    return pages.written()


def _shares(section: SheetTable) -> list[float]:
    """mm each column asks for."""
    shares = []
    for heading, *cells in zip(section.columns, *section.rows, strict=True):
        words = max(text_width(word, bold=True) for word in heading.split())
        least = _TO_WRITE_IN if "" in cells else 0.0
        shares.append(max(least, words, min(_WIDEST, max(map(text_width, cells)))) + _PADDING)
    return shares
