"""Which part of a judged sheet gives first."""

from rules.judging.judge import Judged
from rules.strength.weakest import Ranked, rank


def ranked(judged: Judged) -> tuple[Ranked, ...]:
    """Every known margin of a judged sheet, worst first; empty while strength is not judged."""
    return rank(judged.worked.known, judged.worked.estimated)
