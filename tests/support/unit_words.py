"""Figures that a text shows in the other unit system than its sheet's, and the few that may stand there."""

import re
from collections.abc import Iterable, Mapping

from rules.judging.judge import Judged
from rules.measure.quantity import Units

_FIGURE = r"(?:\d[\d.]*|\d+/\d+)"
_NO_LENGTH = "a|all|each|front|hand|its|one|the|their|this|total|trouble|turn"
"""What follows “in” where a count stands before it and no length: “12 in the way”."""
_OTHERS: dict[Units, re.Pattern[str]] = {
    "inch": re.compile(
        rf"{_FIGURE} ?(?:mm[24]?|cm|m|km|km/h|kg|kN|N|N m|N/mm|MPa|kPa|bar|°C|C|litres?)\b(?!/)"
        r"|\b(?:mm[24]?|kg|kN|MPa|kPa|N/mm|km/h|km|millimet\w*|kilogram\w*)\b|°C|\bN m\b"
    ),
    "metric": re.compile(
        rf"{_FIGURE} ?(?:in[24]?(?! (?:{_NO_LENGTH})\b)|feet|foot|lb|lbf|psi|ft|mph|°F|miles)\b"
        r"|\b(?:lbf?|psi|ft|mph|in[24]|inch(?:es)?|miles?|pounds?)\b|°F"
    ),
}

NAMED: Mapping[str, str] = {
    r"(?:M ?)?\d+(?:\.\d+)? ?x ?\d+(?:\.\d+)?(?: mm)?(?= |$|[,.;:)”])": "a metric thread is named in mm, its pitch with it",
    r"\bM\d+(?= |$|[,.;:)])": "the same by its diameter alone",
    r"\d+(?:\.\d+)? x \d+(?:\.\d+)? (?:mm|in)(?= circle| in |$|[,.;:)])": "a bolt circle is named as it was drilled",
    r"\d on ø [\d.]+ (?:mm|in)\b": "the same on a drawing",
    r"\b\d+(?:\.5)? in (?:tyre|wheel|rim)\b": "tyres and wheels are called by inches of diameter everywhere",
    r"Wheel(?:,| 1) [\d. /in]+ x [\d. /]+ in": "the same, and by inches of width",
    r": 15, 16, 17 in\.|: 8, 8 1/2, 10 in\.": "the same, as they are stamped",
    r"(?:inch|metric) (?:threads?|sheet|series|marked|bolts?|one)": "the name of a standard",
    r"\bInch-marked\b": "a kind of tyre mark",
    r"threads an inch": "how an inch thread is named everywhere",
}
"""What the trade calls by a size in one system only, and why."""


NOTHING_TYPED = r"(?!)"


def others(text: str, units: Units, typed: str = NOTHING_TYPED) -> list[str]:
    """Figures and unit words of the other system, each with what stands about it.

    Not counted: what the trade names so, and what the builder of a sheet typed: see `_typed`.
    """
    text = re.sub(r"\[typed: [^\]]*\]", "TYPED", text)
    if not _OTHERS[units].search(text):  # what is left out below can only take away from it
        return []
    for named in (*NAMED, typed):
        text = re.sub(named, "NAMED", text)
    return [text[max(0, found.start() - 60) : found.end() + 20] for found in _OTHERS[units].finditer(text)]


def wrong(lines: Iterable[str], judged: Judged) -> list[str]:
    """The same of many lines, those that say who says it left out: a source is quoted as it was published."""
    said = (line for line in lines if not line.startswith(("Source (", "Source: ")))
    typed = _typed(judged)
    return [found for line in said for found in others(line, judged.shown_in, typed)]


def _typed(judged: Judged) -> str:
    """Entries as typed that name a unit or say words, longest first, so that none is taken for part of another."""
    entries = {
        entry for entry in judged.sheet.typed.values() if isinstance(entry, str) and re.search("[A-Za-z]", entry)
    }
    any_of = "|".join(map(re.escape, sorted(entries, key=len, reverse=True)))
    return rf"(?<![\w.])(?:{any_of})(?!\.?\w)" if entries else NOTHING_TYPED
