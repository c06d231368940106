"""The parts of the corner by margin, as rows with a bar: least first, the verdict always in a word."""

from collections.abc import Iterable, Mapping, Sequence

from rules.graph.results import WORST_FIRST
from rules.judging.judge import Finding, Judged
from rules.judging.reader import check_id
from rules.judging.trade import trade
from rules.measure.records import NamedTuple
from rules.strength.margin import SAFETY, told
from rules.strength.weakest import Ranked

FULL_BAR = 4.0
"""Strength over load at which the bar is full. It is a drawing's scale, no limit."""
LEAST_BAR, MOST_BAR = 6, 40
TENTH = 10
"""The bar takes at least such a part of the row: the case gives way to it, and is told in full below the list."""
WORD = 9
"""Cells for the verdict word, as in the list of verdicts."""
BLOCKS, ASCII = ("█", "░"), ("#", ".")
ORDERING = check_id("what-gives-first")
COMPARING = (ORDERING, check_id("strength-least"))
"""The checks that compare the parts with each other; every other one judges a part by itself."""


class MarginRow(NamedTuple):
    """One part: its value's name, the verdict word, and the rest of the row as text."""

    value: str
    word: str
    text: str

    @property
    def line(self) -> str:
        """The whole row."""
        return f"{self.word:<{WORD}}{self.text}"


def judging(judged: Judged) -> dict[str, Finding]:
    """Each safety value with the finding that judges it, the worst where there are several."""
    found = {finding.check: finding for finding in judged.findings}
    by_value: dict[str, Finding] = {}
    margins = trade().of_role(SAFETY)
    for name, node in trade().checks.items():
        for given in node.inputs:
            if name not in COMPARING and given.origin in margins:
                rivals = [found[name], by_value.get(given.origin, found[name])]
                by_value[given.origin] = min(rivals, key=lambda finding: WORST_FIRST.index(finding.verdict))
    return by_value


def margin_rows(
    ranked: Sequence[Ranked], words: Mapping[str, str], width: int, *, ascii_only: bool = False
) -> list[MarginRow]:
    """The parts in the order given, each in one row of at most `width` cells; empty when there are none.

    words: verdict by value name. A row too long for the width loses its end: word, part, bar, factor and the same on yield in
    brackets, a dash where that cannot be worked out, come first, then that it is an estimate or asked about, then the case.
    Where there is room, what the factor is counted on stands last.
    ascii_only: for terminals without block characters.
    """
    if not ranked:
        return []
    factors = [told(one.factor) for one in ranked]
    on_yield = ["-" if one.on_yield is None else told(one.on_yield) for one in ranked]
    cases = [", ".join((*one.marks, one.case)) for one in ranked]
    part_wide, factor_wide, case_wide = (_widest(texts) for texts in ([one.part for one in ranked], factors, cases))
    yield_wide = _widest(on_yield)
    spare = width - WORD - part_wide - factor_wide - yield_wide - case_wide - len("    x   ")
    least = max(LEAST_BAR, width // TENTH)
    kinds: list[str] = [one.kind for one in ranked]
    if spare - _widest(kinds) - 2 >= least:
        spare -= _widest(kinds) + 2
    else:
        kinds = ["" for _ in ranked]
    bar_wide = min(max(spare, least), MOST_BAR)
    rows = []
    for one, factor, yields, case, kind in zip(ranked, factors, on_yield, cases, kinds, strict=True):
        bar = _bar(one.factor, bar_wide, ASCII if ascii_only else BLOCKS)
        figures = f"{factor:>{factor_wide}} {f'({yields})':>{yield_wide + len('()')}}"
        text = f"{one.part:<{part_wide}}  {bar} {figures}  {case:<{case_wide}}  {kind}".rstrip()
        rows.append(
            MarginRow(one.value, words.get(one.value, ""), _within(text, width - WORD, "..." if ascii_only else "…"))
        )
    return rows


def counted_on(one: Ranked) -> str:
    """What a factor is counted on, what it would be on yield where that is another figure, and what else to know."""
    kind = one.kind if one.on_yield is None or one.kind == "yield" else f"{one.kind} ({told(one.on_yield)} on yield)"
    return f"{kind}; {one.beside}" if one.beside else kind


def _within(text: str, width: int, cut: str) -> str:
    return text if len(text) <= width else text[: max(0, width - len(cut))].rstrip() + cut[: max(0, width)]


def _widest(texts: Iterable[str]) -> int:
    return max(map(len, texts))


def _bar(factor: float, width: int, marks: tuple[str, str]) -> str:
    """As much of the bar as the factor is of FULL_BAR; never empty, never longer than it is."""
    filled = min(width, max(1, round(width * factor / FULL_BAR)))
    return marks[0] * filled + marks[1] * (width - filled)
