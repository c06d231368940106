"""How one finding would stand with other answers, worked out without judging anything else."""

from collections.abc import Callable, Iterable, Mapping
from math import inf
from typing import Any

from rules.graph.bands import Comparing
from rules.graph.node import Node
from rules.graph.results import Judgement, Verdict
from rules.graph.worked import Worked
from rules.judging.levers import now_of
from rules.judging.trade import trade
from rules.measure.records import NamedTuple, replace

RANK: Mapping[str, int] = {"good": 3, "shown": 3, "watch": 2, "stop": 1}
"""A figure that is only shown is as well as its check can stand: nobody has published a limit for it."""


class Score(NamedTuple):
    """How a finding stands: 3 good or shown, 2 watch, 1 stop, 0 not judged any more; and how far inside good, in its own unit.

    in_hand: minus outside good; nought where the check compares no single number.
    """

    rank: int
    in_hand: float


class _Listening:
    """Limits that remember the number they were asked about."""

    def __init__(self, limits: Comparing) -> None:
        self._limits = limits
        self.heard: float | None = None

    def verdict(self, number: float, *choice: object) -> Verdict:
        """As the limits themselves."""
        in_hand = self._limits.in_hand(number, *choice)
        self.heard = in_hand if self.heard is None else min(self.heard, in_hand)
        return self._limits.verdict(number, *choice)

    def __getattr__(self, name: str) -> Any:
        return getattr(self._limits, name)


class Probe:
    """Asks one check again and again, and hears what one of its findings says."""

    def __init__(
        self, worked: Worked, check: str, about: str, count: Callable[[Iterable[str]], None] = lambda names: None
    ) -> None:
        """about: what of many things of one kind the finding is about; empty where its check says one thing.

        count: told before each asking which values are worked out to answer.
        """
        self._worked, self._about, self._count = worked, about, count
        self._listening: _Listening | None = None
        self.moved = False
        """Whether any answer asked about made a difference."""
        self._node = self._with_ears(trade().checks[check])
        self.judgement = self._found(trade().ask_each(self._node, worked.copy()))
        self._here = self._score(self.judgement, worked.known)

    def _with_ears(self, node: Node) -> Node:
        for parameter, fixed in node.fixed.items():
            if isinstance(fixed, Comparing):
                self._listening = _Listening(fixed)
                return replace(node, fixed={**node.fixed, parameter: self._listening})
        return node

    @property
    def best(self) -> int:
        """The best rank its check can give."""
        return RANK[self._node.note.best]

    @property
    def fields(self) -> tuple[str, ...]:
        """The fields the finding rests on; those its check names as worth changing come first."""
        graph, names = trade(), self._rests_on()
        resting = dict.fromkeys(field for name in names for field in graph.fields_of(name))
        return tuple(dict.fromkeys((*(one for one in self._node.note.try_changing if one in resting), *resting)))

    def _rests_on(self) -> tuple[str, ...]:
        return (self.judgement.rests_on if self.judgement else ()) or (self._node.name,)

    def _found(self, judgements: Iterable[Judgement]) -> Judgement | None:
        """The judgement about the same. Where its check has many and none of them is about that, nothing is wrong with it."""
        first = None
        for judgement in judgements:
            first = first or judgement
            if judgement.about == self._about:
                return judgement
        return None if first is None else Judgement("good", "", about=self._about)

    def here(self) -> Score:
        """How it stands now."""
        return self._here

    def asking(self, fields: Iterable[str]) -> Callable[[Mapping[str, object]], Score]:
        """A function from other answers to these fields to how the finding then stands."""
        graph = trade()
        names, fields = self._rests_on(), tuple(fields)
        with_answers = graph.what_if_all(self._worked, fields, *names)
        again = graph.worked_again(fields, *names)
        before = {name: now_of(self._worked, name) for name in fields}

        def ask(answers: Mapping[str, object]) -> Score:
            score = asked(answers)
            self.moved = self.moved or score != self._here
            return score

        def asked(answers: Mapping[str, object]) -> Score:
            self._count(again)
            worked = with_answers({**before, **answers})
            if self._asks_again:
                return self._score(self.judgement, worked.known)
            if self._listening:
                self._listening.heard = None
            return self._score(self._found(graph.ask_each(self._node, worked)), worked.known)

        return ask

    @property
    def _asks_again(self) -> bool:
        """Whether the judgement itself says how its figure is worked out again."""
        found = self.judgement
        return found is not None and found.again is not None and "wanted" in found.figures

    def _score(self, found: Judgement | None, known: Mapping[str, Any]) -> Score:
        if found is None:
            return Score(0, -inf)
        if not self._asks_again:
            heard = found.in_hand if found.in_hand is not None else self._listening and self._listening.heard
            return Score(RANK[found.verdict], heard or 0.0)
        gap = found.again(known) if found.again else None
        if gap is None:
            return Score(0, -inf)
        in_hand = gap - found.figures["wanted"][0]
        return Score(self.best if in_hand >= 0 else RANK[found.verdict], in_hand)
