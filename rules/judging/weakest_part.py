"""Which part of a judged sheet is the weakest."""

from rules.judging.banding import of_one_part
from rules.judging.judge import Judged
from rules.judging.reader import of_role
from rules.measure.records import replace
from rules.strength.margin import SAFETY, told
from rules.strength.weakest import Ranked, rank


def ranked(judged: Judged) -> tuple[Ranked, ...]:
    """Every known margin of a judged sheet, worst first; empty while strength is not judged."""
    doubted = {of_one_part()[one.check] for one in judged.findings if one.doubt}
    parts = rank(of_role(judged.worked.known, SAFETY), judged.worked.estimated)
    return tuple(replace(one, doubted=one.value in doubted) for one in parts)


def factor_table(judged: Judged) -> list[str]:
    """Every part on one line, worst first: factor, on yield, part, what it is counted on, case. Empty where none is judged."""
    rows = [
        (
            told(one.factor),
            "" if one.on_yield is None else told(one.on_yield),
            one.part,
            ", ".join(
                filter(
                    None,
                    (one.kind, one.beside, "estimate" if one.estimated else "", "asked about" if one.doubted else ""),
                )
            ),
            one.case,
        )
        for one in ranked(judged)
    ]
    if not rows:
        return []
    rows = [("factor", "on yield", "part", "counted on", "worst case"), *rows]
    wide = [max(len(row[column]) for row in rows) for column in range(5)]
    return [
        f"{row[0]:>{wide[0]}}  {row[1]:>{wide[1]}}  {row[2]:<{wide[2]}}  {row[3]:<{wide[3]}}  {row[4]}".rstrip()
        for row in rows
    ]
