"""Parts whose factor is only shown, and that are watched all the same while they are among the weakest."""

from collections.abc import Iterable
from functools import cache

from rules.judging.finding import Finding
from rules.judging.reader import Known, of_role
from rules.judging.trade import trade
from rules.measure.record import replace
from rules.strength.margin import SAFETY
from rules.strength.weakest import tied


@cache
def banded() -> dict[str, str]:
    """Each check that only shows a part's factor where it is far from giving, with the value that gives the factor."""
    margins = trade().of_role(SAFETY)
    return {
        name: given.origin
        for name, node in trade().checks.items()
        if node.note.best == "shown"
        for given in node.inputs
        if given.origin in margins
    }


def with_the_weakest_watched(findings: Iterable[Finding], known: Known) -> list[Finding]:
    """The findings with every part that ties with the least factor of all watched, and no other that only shows a figure."""
    margins = of_role(known, SAFETY)
    least = min(margins.values(), default=0.0)
    return [_watched(one, margins.get(banded().get(one.check, "")), least) for one in findings]


def _watched(finding: Finding, factor: float | None, least: float) -> Finding:
    if not finding.shows_a_figure or factor is None:
        return finding
    return replace(finding, verdict="watch" if tied(least, factor) else "shown")
