"""Two sheets side by side, or one before and after: entries that differ, figures that moved, verdicts that changed."""

from collections.abc import Iterator
from math import isclose
from typing import Any

from rules.graph.asking import printable
from rules.graph.results import Verdict
from rules.judging.judge import Finding, Judged, label, shown
from rules.judging.reader import Name, answer
from rules.judging.trade import trade
from rules.measure.display import published
from rules.measure.records import dataclass
from rules.sheet import FIELDS

CLOSE = 1e-9
"""Relative; figures nearer than this are the same."""


@dataclass(frozen=True, slots=True)
class Differs:
    """One thing that differs, as text in the first sheet's units. name: dotted field, value or finding key.

    one, other: empty where there is none. change: of a figure, in the unit scripts are given; None otherwise.
    """

    name: str
    title: str
    one: str
    other: str
    change: float | None = None
    unit: str = ""


@dataclass(frozen=True, slots=True)
class TurnedVerdict:
    """A finding whose verdict differs. other_text: what the second sheet's check says."""

    key: str
    title: str
    one: Verdict
    other: Verdict
    one_text: str
    other_text: str


@dataclass(frozen=True, slots=True)
class Comparison:
    """What differs between two judged sheets, in the order of the sheet; verdicts worst first as in the second."""

    entries: tuple[Differs, ...]
    figures: tuple[Differs, ...]
    verdicts: tuple[TurnedVerdict, ...]

    @property
    def same(self) -> bool:
        """Whether nothing differs."""
        return not (self.entries or self.figures or self.verdicts)


def compare(one: Judged, other: Judged) -> Comparison:
    """What differs. Entries are compared by what they mean, so 1 in and 25.4 mm are the same; figures as they are shown."""
    return Comparison(tuple(_entries(one, other)), tuple(_figures(one, other)), tuple(_verdicts(one, other)))


def _entries(one: Judged, other: Judged) -> Iterator[Differs]:
    for name in FIELDS:
        was, now = one.sheet.answers.get(name), other.sheet.answers.get(name)
        unread = name not in one.sheet.answers and name not in other.sheet.answers
        if unread and one.sheet.typed.get(name) == other.sheet.typed.get(name):
            continue
        if unread or not _same(was, now):
            yield Differs(name, label(name), _entry(one, name), _entry(other, name))


def _entry(judged: Judged, name: str) -> str:
    """As typed, with the sheet's unit behind a bare number and a mark for what a terminal would obey."""
    typed = judged.sheet.typed.get(name)
    if typed is None:
        return ""
    if isinstance(typed, bool):
        return "yes" if typed else "no"
    units = judged.sheet.units
    bare = isinstance(typed, int | float) or str(typed).strip().lstrip("+-").replace(".", "", 1).isdigit()
    unit = FIELDS[name].bare_unit(units) if units and bare else ""
    return "\n".join(map(printable, f"{typed} {unit}".strip().split("\n")))


def _figures(one: Judged, other: Judged) -> Iterator[Differs]:
    graph = trade()
    for name in graph.values:
        if not graph.is_number(name):
            continue
        wanted = Name(name)
        was, now = answer(one.worked.known, wanted), answer(other.worked.known, wanted)
        if _same(was, now):
            continue
        (_, unit), change = published(0.0, wanted.unit), None
        if was is not None and now is not None:
            change = published(now, wanted.unit)[0] - published(was, wanted.unit)[0]
        before, after = shown(wanted, one), shown(wanted, other, one.shown_in)
        if change is not None and before == after:
            continue  # what moved is less than anybody is shown
        yield Differs(name, name.replace("_", " "), before, after, change, unit)


def _same(one: Any, other: Any) -> bool:
    if isinstance(one, float) and isinstance(other, float):
        return isclose(one, other, rel_tol=CLOSE, abs_tol=CLOSE)
    return bool(one == other)


def _verdicts(one: Judged, other: Judged) -> Iterator[TurnedVerdict]:
    had, has = ({found.key: found for found in judged.findings} for judged in (one, other))
    for key in dict.fromkeys((*has, *had)):
        before, after = had.get(key), has.get(key)
        if _verdict(before) != _verdict(after):
            title = (after or before or had[key]).title
            yield TurnedVerdict(key, title, _verdict(before), _verdict(after), _text(before), _text(after))


def _verdict(finding: Finding | None) -> Verdict:
    """A finding about one of many things is there only while something is wrong with it."""
    return "good" if finding is None else finding.verdict


def _text(finding: Finding | None) -> str:
    return "" if finding is None else finding.text
