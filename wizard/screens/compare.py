"""The sheet as it stands beside the sheet as it was opened: entries that differ, figures that moved, verdicts that changed."""

from collections.abc import Iterator

from textual.content import Content

from rules.judging.compare import Comparison, Differs, compare
from rules.judging.judge import judge
from wizard.desk.session import Session
from wizard.desk.words import lines, plain, verdict
from wizard.screens.reading import ReadingScreen

TITLE, COLUMN = 30, 16
"""Cells of what it is, and of a figure."""


def compare_screen(session: Session) -> ReadingScreen:
    """What differs since the sheet was opened."""
    before = judge(session.opened, session.shown_in, advice=False)
    found = compare(before, session.judged)
    return ReadingScreen("Before and after: since the sheet was opened", lines(*_told(found)))


def _told(found: Comparison) -> Iterator[Content | str]:
    if found.same:
        yield "Nothing differs from the sheet as it was opened."
    if found.verdicts:
        yield plain("Verdicts that changed", "bold $text-accent")
    for turned in found.verdicts:
        yield Content.assemble(verdict(turned.one), " to ", verdict(turned.other), plain(f"  {turned.title}"))
        if turned.other in ("stop", "watch") and turned.other_text:
            yield plain(f"  {turned.other_text}", "$foreground 65%")
    for heading, told in (("Entries that differ", found.entries), ("Figures that moved", found.figures)):
        if told:
            yield ""
            yield plain(f"{heading:<{TITLE}}{'before':>{COLUMN}}{'after':>{COLUMN}}", "bold $text-accent")
        yield from map(_row, told)


def _row(one: Differs) -> Content:
    was, now = (text or "-" for text in (one.one, one.other))
    if max(len(was), len(now)) > COLUMN - 1:
        return plain(f"{one.title}: before {was}; after {now}")
    figures = f"{was:>{COLUMN}}{now:>{COLUMN}}"
    return plain(f"{one.title:<{TITLE}}{figures}" if len(one.title) < TITLE else f"{one.title}\n{'':<{TITLE}}{figures}")
