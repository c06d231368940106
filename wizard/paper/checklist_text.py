"""The checklist as plain text for any printer, and as Markdown."""

import re
import textwrap
import unicodedata
from collections.abc import Iterable, Mapping
from itertools import groupby, zip_longest
from typing import Literal

from rules.graph.asking import printable
from rules.judging.judge import Judged, shown
from rules.judging.reader import name
from rules.measure.records import dataclass
from rules.shop.checklist import (
    BLANK,
    NO_LONGER_ASKED,
    WELDER_SECTIONS,
    ChecklistLine,
    Marks,
    checklist,
    kept_marks,
    marked,
)
from rules.shop.checklist_line import AFTER, HELPER_SECTIONS, HOLD
from rules.shop.holds import BY_LINE
from rules.shop.layout import CUT, FIXTURE
from rules.shop.motion_sheet import is_known
from wizard.paper.stamp import stamp
from wizard.paper.wording import in_shop_words, shop_paper

ForWhom = Literal["whole", "welder", "helper", "builder"]
"""whole: all of it, to stand alone. welder: what the welder does. helper: what is done beside the car; figures are elsewhere.
builder: what neither the helper's list nor another paper of the folder has."""

VEHICLE, _USE = name("job.vehicle"), name("job.use")

WIDTH = 80
_INDENT = "    "

VERDICTS = {
    "good": "GOOD in what was judged",
    "watch": "WATCH: settle what is open first",
    "stop": "STOP: do not cut",
    "unfinished": "UNFINISHED: not ready to cut",
}
_UNITS = {"inch": "inches", "metric": "millimetres"}
HEADINGS = {
    "whole": "SHOP CHECKLIST",
    "welder": "SHOP CHECKLIST, WELDER'S PART",
    "helper": "HELPER'S CHECKLIST",
    "builder": "BUILDER'S CHECKLIST",
}
_TICK = "Tick left and right; write in results."
_SIGNED = f"{_TICK} HOLD 1 to 4: sign on the welding sheet."
LEGENDS: dict[ForWhom, str] = {
    "whole": _SIGNED,
    "welder": _SIGNED,
    "helper": _SIGNED,
    "builder": f"{_TICK} Pivots, plate face and angles from the hub face, and the tie-rod hole: on the welding sheet. Lengths of "
    "arms and tie rod: on the motion sheet. All work from mock-up to first drive: on the helper's checklist.",
}


@shop_paper
def as_text(judged: Judged, document: Mapping[str, object], part: ForWhom = "whole") -> str:
    """The checklist in plain ASCII, 80 columns at most. part: "welder" leaves out what the welder has no use for.

    document: the sheet as in its file; ticks and measured results on it are printed in place.
    """
    rows = [HEADINGS[part]]
    for what, words in head(judged):
        rows += textwrap.wrap(f"{what:<9}{ascii_line(words)}", WIDTH, subsequent_indent=" " * 9)
    rows += [f"Date     {BLANK}  Builder {BLANK}  Welder {BLANK}  Checked {BLANK}"]
    rows += textwrap.wrap(LEGENDS[part], WIDTH)
    for section, lines in sections(judged, document, part):
        page = _page(lines)
        rows += ["", _heading(section, page), *(row for line, marks in lines for row in _rows(line, marks, page))]
    return "\n".join(row.rstrip() for row in rows) + "\n"


@shop_paper
def as_markdown(judged: Judged, document: Mapping[str, object], part: ForWhom = "whole") -> str:
    """The checklist as Markdown, a table for each section. Nothing a person typed can break it or become markup."""
    rows = [f"# {HEADINGS[part].capitalize()}", ""]
    rows += [f"- {name}: {markdown_line(words)}" for name, words in head(judged)]
    rows += ["", f"Date {BLANK}, builder {BLANK}, welder {BLANK}, checked {BLANK}", "", LEGENDS[part]]
    for section, lines in sections(judged, document, part):
        rows += ["", f"## {section}", ""]
        plain = [(line, marks) for line, marks in lines if is_plain(line, marks)]
        rows += [f"- {markdown_line(line.text)}" for line, _ in plain]
        if len(plain) < len(lines):
            rows += [""] if plain else []
            rows += [
                "| Line | Target | Tolerance | Left | Right | Id |",
                "| --- | --- | --- | --- | --- | --- |",
            ]
            rows += [_table_row(line, marks) for line, marks in lines if not is_plain(line, marks)]
    return "\n".join(rows) + "\n"


def head(judged: Judged) -> list[tuple[str, str]]:
    """What heads a checklist: title, vehicle, verdict, units, and what tells this print from others, by name."""
    still_open = sum(finding.verdict in ("stop", "watch", "waiting") for finding in judged.findings)
    verdict = f"{VERDICTS[judged.verdict]} ({still_open} open)" if still_open else VERDICTS[judged.verdict]
    return [
        ("Title", judged.sheet.title or BLANK),
        ("Vehicle", f"{shown(VEHICLE, judged) or BLANK}; main use {shown(_USE, judged) or BLANK}"),
        ("Verdict", f"{verdict}. {judged.scope}"),
        ("Units", f"{_UNITS[judged.shown_in]}. {stamp(judged)}"),
    ]


def sections(
    judged: Judged, document: Mapping[str, object], part: ForWhom
) -> Iterable[tuple[str, list[tuple[ChecklistLine, Marks]]]]:
    """Each section with its lines and what is marked on them, in shop order."""
    lines = marked(checklist(judged), kept_marks(document))
    elsewhere = _elsewhere(judged, (line for line, _ in lines)) if part == "builder" else frozenset()
    # What somebody wrote on a line is printed, whoever else has the line.
    wanted = [(line, marks) for line, marks in lines if _is_for(part, line) and (line.id not in elsewhere or marks.any)]
    for section, group in groupby(wanted, lambda pair: pair[0].section):
        yield section, list(group)


_TIE_ROD_HOLE = "hand-over.tie-rod"
_SECTIONS = {"welder": WELDER_SECTIONS, "helper": HELPER_SECTIONS}


def _elsewhere(judged: Judged, lines: Iterable[ChecklistLine]) -> frozenset[str]:
    """Ids of lines whose figure stands on the welding or on the motion sheet, with room to write beside it.

    A figure that is still missing stands on the builder's list with what it waits for.
    """
    fixture = {f"layout.{place.name}" for place in FIXTURE}
    lengths = {f"layout.{place.name}" for place in CUT} if is_known(judged) else set()
    return frozenset(
        line.id
        for line in lines
        if (line.id in fixture | lengths or line.id.startswith(_TIE_ROD_HOLE)) and BLANK not in line.target
    )


def _is_for(part: ForWhom, line: ChecklistLine) -> bool:
    if part == "whole":
        return True
    if part == "builder":
        return line.section not in HELPER_SECTIONS
    if part == "helper" and line.kind == "measure" and line.section in (HOLD, AFTER):
        return False  # written on the welding sheet, and nowhere else
    return line.section in _SECTIONS[part]


def is_plain(line: ChecklistLine, marks: Marks) -> bool:
    """Whether a line is only to be read: a caution nobody has marked."""
    return line.kind == "caution" and not marks.any


def has_blank(line: ChecklistLine) -> bool:
    """Whether a person writes on the line besides ticking it."""
    signed_here = line.id not in BY_LINE or BY_LINE[line.id].on_this_list
    return line.kind in ("measure", "torque", "hold") and signed_here


# Plain text


@dataclass(frozen=True, slots=True)
class _Page:
    """Widths of a section's columns: the words, and one cell for each side."""

    body: int
    cell: int


_WRITING = _Page(body=53, cell=12)
_TICKING = _Page(body=68, cell=5)
_READING = _Page(body=WIDTH, cell=0)


def _page(lines: list[tuple[ChecklistLine, Marks]]) -> _Page:
    """The narrowest columns that hold a section: nothing to mark, boxes only, or boxes with room to write."""
    if all(is_plain(line, marks) for line, marks in lines):
        return _READING
    written = any(has_blank(line) or marks.left_measured or marks.right_measured for line, marks in lines)
    return _WRITING if written else _TICKING


def _heading(section: str, page: _Page) -> str:
    start = f"{section.upper()} ".ljust(page.body, "-")
    return f"{start} {'LEFT':-<{page.cell}} {'RIGHT':-<{page.cell}}" if page.cell else start


def _rows(line: ChecklistLine, marks: Marks, page: _Page) -> list[str]:
    text = ascii_line(line.text)
    if is_plain(line, marks):
        return textwrap.wrap(text, WIDTH, initial_indent="! ", subsequent_indent="  ")
    body = textwrap.wrap(text, page.body, subsequent_indent=_INDENT) or [""]
    detail = ascii_line(f"{line.target}{' ' if line.tolerance.startswith('+/-') else '; '}{line.tolerance}".strip("; "))
    if detail and len(body[-1]) + 2 + len(detail) <= page.body:
        body[-1] += f"  {detail}"
    elif detail:
        body += _indented(detail, page)
    if marks.stale_for(line):
        body += _indented(ascii_line(f"CHANGED since it was marked: check again. It was {marks.asked_for}"), page)
    left = _cell(marks.left, marks.left_measured, has_blank(line), page)
    right = _cell(marks.right, marks.right_measured, has_blank(line), page)
    return [
        f"{words:<{page.body}} {one:<{page.cell}} {other}"
        for words, one, other in zip_longest(body, left, right, fillvalue="")
    ]


def _indented(text: str, page: _Page) -> list[str]:
    return textwrap.wrap(text, page.body, initial_indent=_INDENT, subsequent_indent=_INDENT)


def _cell(ticked: bool, measured: str, blank: bool, page: _Page) -> list[str]:
    box = "[x] " if ticked else "[ ] "
    written = ascii_line(measured) or (BLANK if blank else "")
    return textwrap.wrap(box + written, page.cell, subsequent_indent=_INDENT) if written else [box]


_SPELT_OUT = {
    "“": '"', "”": '"', "„": '"', "«": '"', "»": '"', "″": '"', "‘": "'", "’": "'", "′": "'", "–": "-", "—": "-", "−": "-",
    "‑": "-", "×": "x", "°": " deg", "±": "+/-", "ß": "ss", "ø": "o", "Ø": "O", "æ": "ae", "Æ": "AE", "ł": "l", "Ł": "L",
    "đ": "d", "·": ".", "⁄": "/", "µ": "u", "\ufffd": "?",
}  # fmt: skip


def ascii_line(text: str) -> str:
    """One line of characters that every printer has. What has no such spelling becomes a question mark."""
    flat = printable(in_shop_words(" ".join(text.split())))
    return " ".join(
        "".join(_plain(character, before) for before, character in zip(" " + flat, flat, strict=False)).split()
    )


def _plain(character: str, before: str) -> str:
    if character in _SPELT_OUT:
        return _SPELT_OUT[character]
    if character.isascii():
        return character
    spelt = "".join(_SPELT_OUT.get(one, one) for one in unicodedata.normalize("NFKD", character))
    spelt = "".join(one for one in spelt if not unicodedata.combining(one))
    if not spelt.isascii() or (not spelt and not unicodedata.combining(character)):
        return "?"
    decomposition = unicodedata.decomposition(character)
    if decomposition.startswith("<fraction>") and before.isdigit():
        return f" {spelt}"  # 9⅜ is nine and three eighths, never 93/8
    return f"^{spelt}" if decomposition.startswith("<super>") else spelt


# Markdown

_MARKUP = re.compile(r"[\\`*_{}\[\]#|~$]|(?<=:)/|(?<=www)\.", re.IGNORECASE)
"""Marks that act inside a line. None of the text stands at the start of a line, where others would."""
_OUR_BLANK = re.compile(r"(?<!\S)(?:\\_)+(?!\S)")


def markdown_line(text: str) -> str:
    """Text on one line that Markdown shows as it is: no markup, no HTML, no link, no table cell of its own."""
    flat = (
        printable(in_shop_words(" ".join(text.split()))).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    )
    escaped = _MARKUP.sub(lambda found: f"\\{found[0]}", flat)
    return _OUR_BLANK.sub(lambda blank: blank[0].replace("\\", ""), escaped)


def _table_row(line: ChecklistLine, marks: Marks) -> str:
    target = markdown_line(line.target)
    if marks.stale_for(line):
        target += f" (CHANGED since it was marked: check again. It was {markdown_line(marks.asked_for)})"
    cells = [
        markdown_line(line.text),
        target,
        markdown_line(line.tolerance),
        _markdown_cell(marks.left, marks.left_measured, has_blank(line)),
        _markdown_cell(marks.right, marks.right_measured, has_blank(line)),
        markdown_line(line.id) if line.section == NO_LONGER_ASKED else f"`{line.id}`",
    ]
    return f"| {' | '.join(cells)} |"


def _markdown_cell(ticked: bool, measured: str, blank: bool) -> str:
    return f"{'[x]' if ticked else '[ ]'} {markdown_line(measured) or (BLANK if blank else '')}".rstrip()
