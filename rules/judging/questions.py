"""What the builder is asked to look at once more: answers that are possible, but unusual by themselves or beside others."""

from collections.abc import Mapping

from rules.judging.judge import Judged
from rules.judging.trade import trade
from rules.measure.said import span
from rules.sheet import FIELDS


def questions(judged: Judged) -> Mapping[str, str]:
    """Why each answer is asked about, in a sentence or two, by dotted name, in the order of the sheet. Empty without any."""
    odd = {finding.asks_about: finding.text for finding in reversed(judged.findings) if finding.asks_about}
    asked = frozenset(judged.asks_about)
    return {name: _usual(name, judged) or odd[name] for name in FIELDS if name in asked}


def _usual(name: str, judged: Judged) -> str:
    if name not in judged.sheet.unusual:
        return ""
    asked, answers = FIELDS[name], judged.sheet.answers
    low, high = asked.usual_among(answers) or (0.0, 0.0)
    return f"Unusual: {span(low, high, asked.unit if asked.unit != 'int' else '1', judged.shown_in)} is usual."


def beside(name: str, judged: Judged) -> tuple[str, ...]:
    """The other answers that what is asked about one rests on, in the order of the sheet: a yes covers them as they stand.

    A line that reads like the one before it is asked about by itself, although that looks at every line.
    """
    graph = trade()
    asking = {finding.check for finding in judged.findings if finding.asks_about == name}
    found = {
        field
        for check in asking
        if not graph.checks[check].gathers
        for field in graph.fields_of(check)
        if field != name
    }
    return tuple(field for field in FIELDS if field in found and field in judged.sheet.answers)
