"""What has been worked out for one sheet: the engine's notebook."""

from collections.abc import Mapping
from typing import Any

from rules.graph.results import Reason
from rules.measure.records import dataclass, field, fields, is_dataclass

_NOTHING = object()


_PLAIN = (float, str, int, bool, type(None))
_given: dict[type, tuple[str, ...]] = {}


def _same(one: Any, other: Any) -> bool:
    """Whether two answers, or reasons for none, are alike in all that anybody can make of them.

    A number or a text may carry more than `==` sees, by itself or deep inside: the load case of a factor, a reason's figures.
    """
    if one is other:
        return True
    kind = type(one)
    if kind is not type(other):
        return False
    if kind in _PLAIN:
        return bool(one == other)
    if is_dataclass(one):
        if kind not in _given:
            _given[kind] = tuple(kept.name for kept in fields(one) if kept.init)
        return all(_same(getattr(one, name), getattr(other, name)) for name in _given[kind])
    if isinstance(one, Mapping):
        return (
            list(one) == list(other) and all(_same(one[key], other[key]) for key in one) and _carry_the_same(one, other)
        )
    if isinstance(one, tuple | list):
        return len(one) == len(other) and all(map(_same, one, other)) and _carry_the_same(one, other)
    return bool(one == other) and _carry_the_same(one, other)


def _carry_the_same(one: Any, other: Any) -> bool:
    return _same(getattr(one, "__dict__", None), getattr(other, "__dict__", None))


@dataclass(slots=True)
class Worked:
    """What has been worked out for one sheet.

    known: fields and values by name; of these nothing stands below but what they are estimated from, and that they are assumed.
    estimated: names that rest on an estimate, with the fields to measure.
    waits: names that cannot be worked out yet, with the fields they wait for. not_judged: those of them that nobody has
    asked for, with the reason. not_here: names that do not apply, with the reason. broken: names whose function failed, with
    the reason. crashed: those of them that failed otherwise than by `OutsideRange`, or rest on such a one: that is how a
    function refuses entries outside the range it holds in, and what is left is a mistake in the program.
    leaves: names that are put off on purpose. put_off: names that are still to be worked out: those and what rests on them.
    stood_in: questions without an answer of their own, for which a value stands. not_asked: names noted without asking their
    function, for something that they take was not there. given: the answers it was worked out from.
    """

    known: dict[str, Any]
    estimated: dict[str, tuple[str, ...]] = field(default_factory=dict)
    waits: dict[str, tuple[str, ...]] = field(default_factory=dict)
    not_judged: dict[str, Reason] = field(default_factory=dict)
    not_here: dict[str, Reason] = field(default_factory=dict)
    broken: dict[str, Reason] = field(default_factory=dict)
    crashed: set[str] = field(default_factory=set)
    put_off: set[str] = field(default_factory=set)
    leaves: frozenset[str] = frozenset()
    stood_in: set[str] = field(default_factory=set)
    not_asked: set[str] = field(default_factory=set)
    given: Mapping[str, Any] = field(default_factory=dict)

    def copy(self) -> "Worked":
        """One of its own with the same in it."""
        known, estimated, waits, not_judged, not_here, broken = (dict(kept) for kept in self._all())
        return Worked(
            known, estimated, waits, not_judged, not_here, broken, set(self.crashed), set(self.put_off), self.leaves,
            set(self.stood_in), set(self.not_asked), self.given,
        )  # fmt: skip

    def forget(self, name: str) -> None:
        """Drop what is known of a name."""
        if name in self.known:
            del self.known[name]
            self.estimated.pop(name, None)
            self.stood_in.discard(name)
            return
        for kept in self._why_not():
            kept.pop(name, None)
        for marks in self._marks():
            marks.discard(name)

    def stand_in(self, question: str, value: str) -> None:
        """Let a value that was worked out answer a question, unless somebody has."""
        if question not in self.known or question in self.stood_in:
            self.stood_in.add(question)
            self.known[question] = self.known[value]
            self.estimated.pop(question, None)
            if value in self.estimated:
                self.estimated[question] = self.estimated[value]

    def same(self, name: str, other: "Worked") -> bool:
        """Whether the same is known of a name, or why it is not."""
        if name in self.known or name in other.known:
            return (
                _same(self.known.get(name, _NOTHING), other.known.get(name, _NOTHING))
                and self.estimated.get(name) == other.estimated.get(name)
                and (name in self.stood_in) == (name in other.stood_in)
            )
        return all(
            _same(mine.get(name), its.get(name)) for mine, its in zip(self._why_not(), other._why_not(), strict=True)
        ) and all(
            (name in marks) == (name in others) for marks, others in zip(self._marks(), other._marks(), strict=True)
        )

    def take_over(self, name: str, other: "Worked") -> None:
        """Have of a name what another has of it. An equal number worked out anew would not be the very one handed on."""
        for mine, its in zip(self._all(), other._all(), strict=True):
            if name in its:
                mine[name] = its[name]
        for marks, others in zip(self._marks(), other._marks(), strict=True):
            if name in others:
                marks.add(name)

    def _all(self) -> tuple[dict[str, Any], ...]:
        return self.known, self.estimated, *self._why_not()

    def _why_not(self) -> tuple[dict[str, Any], ...]:
        return self.waits, self.not_judged, self.not_here, self.broken

    def _marks(self) -> tuple[set[str], ...]:
        return self.crashed, self.put_off, self.not_asked, self.stood_in
