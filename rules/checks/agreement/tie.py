"""A tie: one answer bounded by another, because physics or the trade leaves it no more room.

`T("overall-wider-than-nominal", "Overall width and width", "wheel.overall_width", "wheel.width", how="more", never=(0, 80),
usual=(10, 40), why="the lips add about an inch")`. Beyond `never` the two cannot both be right: stop. Beyond `usual` they may
be, and the program asks: watch, until the builder confirms the first of them as it stands.
"""

from collections.abc import Iterable, Mapping
from math import inf, isfinite
from typing import Any, Literal

from rules.graph.bands import Between
from rules.graph.declare import Member
from rules.graph.results import DoesNotApply, Judgement, NotJudged, Verdict
from rules.measure.closeness import within
from rules.measure.display import in_a_sentence
from rules.measure.marks import Thread
from rules.measure.records import dataclass
from rules.measure.said import Figures, either
from rules.sheet import FIELDS
from rules.sheet.confirmed import Confirmed
from rules.tables.sources import COMMON_PRACTICE

PRACTICE = COMMON_PRACTICE.saying("what cannot be is plain geometry or arithmetic")
Range = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Tie:
    """One answer and what bounds it.

    id, title: the check's. one: a field; other: a field or a value. how: whether one is so many `times` the other, so many
    mm `more`, or so many times its `size` whatever the signs. never, usual: what cannot be, and what is odd, lies outside
    these. why: the reason, as the end of a sentence. other_called: what to call it where it is no field. none_below: mm; a
    `one` so small is none at all, which another check judges.
    """

    id: str
    title: str
    one: str
    other: str
    usual: Range
    never: Range = (-inf, inf)
    why: str = ""
    how: Literal["times", "more", "size"] = "times"
    other_called: str = ""
    step: str = ""
    none_below: float = 0.0

    @property
    def member(self) -> Member:
        """Its member of the family of checks: `one_answer` and `other_figure` are its two inputs."""
        one, answer = self.one.replace(".", "_").split("_", 1)
        other, figure = self.other.replace(".", "_").split("_", 1)
        return {
            "tie": self.id,
            "table": self.step or self.one.partition(".")[0],
            "name": self.title,
            "one": one, "answer": answer, "other": other, "figure": figure,
            "first": in_a_sentence(FIELDS[self.one].label),
            "second": self._second,
        }  # fmt: skip

    @property
    def _second(self) -> str:
        return self.other_called or in_a_sentence(FIELDS[self.other].label)

    @property
    def agrees(self) -> str:
        """In words: what is usual."""
        return self._in_words(self.usual, "good")

    @property
    def cannot(self) -> str:
        """In words: what cannot be; empty where nothing is said of it."""
        return self._in_words(self.never, "stop")

    def _in_words(self, limits: Range, verdict: str) -> str:
        second = self._second
        low, high = limits
        if self.how == "more":
            inside, beyond = Between("mm", low, high), Between("mm", least=low, most=high)
            said = either(inside.usual if verdict == "good" else lambda units: beyond.standard_words(units)["stop"])
            return f"{said} more than {second}" if any(map(isfinite, limits)) else ""
        if verdict == "good":
            return f"{low:g} to {high:g} of {second}"
        ends = [f"{word} than {end:g}" for word, end in (("less", low), ("more", high)) if isfinite(end)]
        return f"{' or '.join(ends)} of {second}" if ends else ""


T = Tie


def family(ties: Iterable[Tie]) -> dict[str, Any]:
    """What a family of checks says of itself, of which each member judges one tie."""
    known = by_id(ties)
    return {
        "each": tuple(tie.member for tie in known.values()),
        "step": "{table}",
        "title": "{name}",
        "good": lambda member: known[member["tie"]].agrees,
        "watch": "beyond, and not confirmed",
        "stop": lambda member: known[member["tie"]].cannot,
        "source": PRACTICE,
        "grade": "common practice",
    }


def not_compared(why: str, claim: Any, bounds: Mapping[str, Any]) -> DoesNotApply | NotJudged:
    """What to raise where an answer cannot be held against what bounds it. Nobody made a claim: there is nothing to compare.

    why: a clause. claim: the answer, None where it is not entered. bounds: what it is held against by dotted name, None what
    is not there; that is to be entered.
    """
    left = [name for name, answer in bounds.items() if answer is None]
    return NotJudged(why, *left) if claim is not None and left else DoesNotApply(why)


def by_id(ties: Iterable[Tie]) -> Mapping[str, Tie]:
    """Ties by the id of their check."""
    return {tie.id: tie for tie in ties}


def tied(tie: Tie, one: float | None, other: float | None, confirmed: Confirmed) -> Judgement:
    """One answer against what bounds it, both in one unit. Does not apply until it is there; not judged until its bound is."""
    if one is None or other is None:
        raise not_compared("not both of these are entered, so they are not compared", one, {tie.other: other})
    if abs(one) < tie.none_below:
        raise DoesNotApply(f"{in_a_sentence(FIELDS[tie.one].label)} is as good as nought, which is judged by itself")
    if tie.how == "more":
        number = one - other
    elif other == 0:
        raise DoesNotApply("what it is compared with is nought")
    else:
        number = abs(one / other) if tie.how == "size" else one / other
    text = "{First} is {one_answer}, and {second} {other_figure}"
    if within(number, *tie.usual):
        return Judgement("good", f"{text}: they agree.")
    if within(number, *tie.never):
        return odd(f"{text}: {tie.why}.", tie.one, confirmed)
    return impossible(f"{text}: {tie.why}.")


def renamed(judgement: Judgement, names: Mapping[str, str], **figures: tuple[float, str]) -> Judgement:
    """The judgement of a tie whose check has other parameters than the families: what each of theirs is called there."""
    text = judgement.text
    for parameter, name in names.items():
        text = text.replace(f"{{{parameter}}}", f"{{{name}}}")
    return Judgement(judgement.verdict, text, judgement.change, figures, asks_about=judgement.asks_about)


def tied_to_thread(tie: Tie, one: float | None, thread: Thread | None, confirmed: Confirmed) -> Judgement:
    """One length against the diameter of a stud or bolt."""
    return tied_to_size(tie, one, None if thread is None else thread.diameter, confirmed)


def tied_to_size(tie: Tie, one: float | None, size: float | None, confirmed: Confirmed) -> Judgement:
    """One length against a size, mm, that a mark, a bolt circle or a thread states."""
    judged = tied(tie, one, size or None, confirmed)
    assert size  # it was compared
    return renamed(judged, {"other_figure": "size"}, size=(size, "mm"))


def impossible(text: str) -> Judgement:
    """Two entries that cannot both be right."""
    return Judgement("stop", f"{text} That cannot be.", "Measure both again, and see that each has its own unit.")


def odd(text: str, name: str, confirmed: Confirmed, figures: Figures | None = None) -> Judgement:
    """What is possible but odd about an answer: watch, and good once the builder has confirmed it. name: dotted."""
    verdict: Verdict = "good" if name in confirmed else "watch"
    if verdict == "good":
        return Judgement(verdict, f"{text} Unusual, and confirmed as it stands.", figures=dict(figures or {}))
    change = f"Measure again. If it is so, confirm {in_a_sentence(FIELDS[name].label)} as it stands."
    return Judgement(verdict, f"{text} Possible, but unusual.", change, dict(figures or {}), asks_about=name)
