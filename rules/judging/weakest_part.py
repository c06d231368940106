"""Which part of a judged sheet gives first."""

from rules.judging.judge import Judged
from rules.judging.reader import of_role
from rules.strength.margin import SAFETY
from rules.strength.weakest import Ranked, rank


def ranked(judged: Judged) -> tuple[Ranked, ...]:
    """Every known margin of a judged sheet, worst first; empty while strength is not judged."""
    return rank(of_role(judged.worked.known, SAFETY), judged.worked.estimated)
