"""Answers that the builder is asked to look at once more: possible, but odd by themselves or beside another.

A question about what was measured is settled with the tape, and a change is no answer to it. One about how the front end is
laid out has two: another figure, or a yes to the one that stands.
"""

from rules.judging.judge import Finding, Judged
from rules.judging.reader import check_id
from rules.judging.trade import trade
from rules.sheet.choosable import is_laid_out

UNUSUAL = check_id("unusual-answers")
"""The check that tells of every answer outside its usual range."""


def second_look(judged: Judged, finding: Finding) -> tuple[str, ...]:
    """The answers to look at again for a finding, by dotted name: what it asks about, or the unusual layout that it judges."""
    if finding.asks_about:
        return (finding.asks_about,)
    if finding.check == UNUSUAL:
        return tuple(judged.sheet.unusual)
    judges = trade().checks[finding.check].origins if finding.verdict == "watch" else frozenset()
    return tuple(name for name in judged.sheet.unusual if name in judges and is_laid_out(name))


def is_answered_by_yes(finding: Finding) -> bool:
    """Whether a yes to the answer as it stands leaves nothing of the finding."""
    return bool(finding.asks_about) or finding.check == UNUSUAL


def is_settled_by_looking(finding: Finding) -> bool:
    """Whether it asks about what no change would answer: a measurement, or a line that was perhaps read twice."""
    asks = finding.asks_about
    return bool(asks) and (bool(trade().checks[finding.check].gathers) or not is_laid_out(asks))
