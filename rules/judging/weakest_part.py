"""Which part of a judged sheet gives first."""

from rules.judging.judge import Judged
from rules.judging.trade import trade
from rules.strength.margin import SAFETY
from rules.strength.weakest import Ranked, rank


def ranked(judged: Judged) -> tuple[Ranked, ...]:
    """Every known margin of a judged sheet, worst first; empty while strength is not judged."""
    known = judged.worked.known
    margins = {name: known[name] for name in trade().of_role(SAFETY) if name in known}
    return rank(margins, judged.worked.estimated)
