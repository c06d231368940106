"""Which part is the weakest, of all whose strength was judged."""

from collections.abc import Mapping
from typing import Annotated

from rules.checks.strength.loads import not_tried
from rules.checks.strength.parts import CUSTOM, HOLDS, KNOWN_LOADS, ONCE
from rules.graph.bands import Limits
from rules.graph.declare import Every, Waiting, check
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.closeness import reaches
from rules.measure.said import capital
from rules.strength.corner_loads import CornerLoads
from rules.strength.load_cases import Stances
from rules.strength.margin import SAFETY, Margin, told
from rules.strength.weakest import TIE, UNLIKE_KINDS, rank, tied
from rules.tables import sources

COMMON = (
    "No published limit: trade custom is {custom} to {known_loads} on yield where the loads are known. Each factor counts one "
    "hard hit, not thousands of small ones: welds crack at their edge long before."
)
"""What holds for every part, said once."""


@check(
    "strength-least",
    step="loads",
    title="All parts together",
    limits=HOLDS,
    never_good="never: nobody has published a limit for home-made uprights",
    watch="{once} or more: every part shown, whatever its factor",
    stop="less than {once}: a part gives under a load the builder expects; or a weld its code does not allow",
    source=sources.NO_FIGURE.saying("a factor of 1.5 to 2 on yield where the loads are known, from memory"),
)
def strength_least(
    margins: Annotated[Mapping[str, Margin], Every(SAFETY)],
    waiting: Annotated[tuple[str, ...], Waiting(SAFETY, or_not_begun=True)],
    strength_asked: bool | None,
    corner_loads: CornerLoads | None,
    stances: Stances | None,
) -> Judgement:
    """The least safety factor of all parts: the one line to settle for the whole group."""
    order = rank(margins)
    if not order:
        if strength_asked and corner_loads is None:
            raise Waits("corner_loads")
        fields = () if strength_asked else ("loads.judge_strength",)
        raise NotJudged("the strength of no part was judged", *fields)
    first = order[0]
    parts = f"{len(order)} part{'s' if len(order) > 1 else ''} judged"
    if waiting:
        parts += f", {len(waiting)} more not, for want of an entry or a figure: any of them may be weaker"
    text = f"Strength: least factor {told(first.factor)}, {first.part}, {first.case} ({first.kind}); {parts}."
    if stances is not None and (untried := not_tried(stances)):
        text += f" Nothing was tried with the wheel at {' or '.join(untried)}."
    text += f" {COMMON}"
    figures = {"custom": (CUSTOM, "1"), "known_loads": (KNOWN_LOADS, "1")}
    weak = next((one.part for one in order if one.kind != "dents" and not reaches(one.factor, ONCE)), "")
    if weak:  # a bearing that dents does not give way, and its own check says when that is a stop
        return Judgement("stop", text, f"Strengthen {weak}, and every part below 1.", figures)
    if refused := [one.part for one in margins.values() if one.gives and one.kind != "dents"]:
        text += f" The code for steady loads does not allow it of {', '.join(refused)}."
        return Judgement("stop", text, f"Strengthen {refused[0]} first.", figures)
    return Judgement("watch", text, f"Have the figures gone over by somebody qualified, {first.part} first.", figures)


@check(
    "what-gives-first",
    step="loads",
    title="Weakest part",
    limits=Limits(other={"tie": (TIE - 1, "share")}),
    good="a cheap part in plain sight, tie rod or steering arm, at least {tie} before every dear or hidden one",
    watch="a dear or hidden part gives before both of those, or less than {tie} after",
    source=sources.COMMON_PRACTICE.saying(
        "let the part give that is seen and cheap, before upright, hub, pivot or weld. "
        f"{UNLIKE_KINDS} The 10 % is this program's own"
    ),
)
def what_gives_first(
    margins: Annotated[Mapping[str, Margin], Every(SAFETY)],
    strength_asked: bool | None,
    corner_loads: CornerLoads | None,
) -> Judgement:
    """The least safety factor of all, and whether it is that of a part that bends in plain sight.

    The factors are of unlike kinds: a tie rod's is on its maker's rating, a bolt's on proof load or yield, metal's on yield, a
    bearing's on dents. So those less than 10 % apart are a tie, which is never good.
    """
    order = rank(margins)
    if len(order) < 2:
        if strength_asked and corner_loads is None:
            raise Waits("corner_loads")
        fields = () if strength_asked else ("loads.judge_strength",)
        raise NotJudged("the strength of fewer than two parts was judged, so nothing can be ranked", *fields)
    first, second = order[0], order[1]
    text = (
        f"{capital(first.part)} at {told(first.factor)} ({first.case}, {first.limit}); then {second.part} at "
        f"{told(second.factor)} ({second.case}, {second.limit})."
    )
    cheap = next((one for one in order if one.cheap_and_visible), None)
    dear = next((one for one in order if not one.cheap_and_visible), None)
    if cheap and dear and tied(cheap.factor, dear.factor):
        beside = [one.part for one in order if not one.cheap_and_visible and tied(cheap.factor, one.factor)]
        return Judgement(
            "watch",
            f"{text} Less than 10 % from {cheap.part}, so a tie in which any may be the weakest part: {', '.join(beside)}.",
            f"Strengthen {', '.join(beside)}. Inspect them and {cheap.part} first.",
        )
    if first.cheap_and_visible:
        return Judgement("good", text)
    after = f"before {cheap.part}" if cheap else "and no tie rod or steering arm was judged beside it"
    return Judgement(
        "watch",
        f"{text} {capital(first.part)} is dear or hidden, and gives {after}.",
        f"Strengthen {first.part}, or let the tie rod or steering arm be the part that bends. Inspect {first.part} first.",
    )
