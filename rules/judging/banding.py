"""Parts whose factor is only shown, and that are watched all the same while they are among the weakest."""

from collections.abc import Callable, Iterable, Set
from functools import cache

from rules.judging.finding import Finding
from rules.judging.reader import Known, name, of_role
from rules.judging.trade import trade
from rules.measure.records import replace
from rules.strength.margin import SAFETY
from rules.strength.weakest import tied

PART_LOADS = name("part_loads")
DOUBT = " It may read too high until this is confirmed or put right:"


@cache
def of_one_part() -> dict[str, str]:
    """Each check of one part's factor, with the value that gives the factor."""
    margins = trade().of_role(SAFETY)
    found = {
        name: [given.origin for given in node.inputs if given.origin in margins]
        for name, node in trade().checks.items()
    }
    return {check: factors[0] for check, factors in found.items() if len(factors) == 1}


@cache
def banded() -> dict[str, str]:
    """Those that only show the factor where it is far from giving."""
    checks = trade().checks
    return {check: factor for check, factor in of_one_part().items() if checks[check].note.best == "shown"}


@cache
def own_answers() -> dict[str, frozenset[str]]:
    """The answers that each of these checks rests on by itself, dotted: not those that every load rests on."""
    loads = set(trade().fields_of(PART_LOADS.origin))
    return {check: frozenset(trade().fields_of(check)) - loads for check in of_one_part()}


def with_the_weakest_watched(
    findings: Iterable[Finding], known: Known, asked_about: Set[str], in_words: Callable[[Iterable[str]], str]
) -> list[Finding]:
    """The findings with every part that ties with the least factor of all watched, and no other that only shows a figure.

    A part that rests on an answer of its own that is asked about says so: it may read too good until that is confirmed or put
    right. asked_about: dotted names. in_words: such names as a list.
    """
    margins = of_role(known, SAFETY)
    least = min(margins.values(), default=0.0)
    found = []
    for one in findings:
        if (factor := margins.get(of_one_part().get(one.check, ""))) is not None:
            doubted = sorted(own_answers()[one.check] & asked_about)
            one = _doubted(one, f"{DOUBT} {in_words(doubted)}." if doubted else "")
            if one.shows_a_figure:
                one = replace(one, verdict="watch" if tied(least, factor) else "shown")
        found.append(one)
    return found


def _doubted(finding: Finding, doubt: str) -> Finding:
    if doubt == finding.doubt:
        return finding
    return replace(finding, text=finding.text.removesuffix(finding.doubt) + doubt, doubt=doubt)
