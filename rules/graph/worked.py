"""What has been worked out for one sheet: the engine's notebook."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

from rules.graph.results import Reason


@dataclass(slots=True)
class Worked:
    """What has been worked out for one sheet.

    known: fields and values by name. estimated: names that rest on an estimate, with the fields to measure.
    waits: names that cannot be worked out yet, with the fields they wait for. not_judged: those of them that nobody has
    asked for, with the reason. not_here: names that do not apply, with the reason. broken: names whose function failed, with
    the reason. crashed: those of them that failed otherwise than by `OutsideRange`, or rest on such a one: that is how a
    function refuses entries outside the range it holds in, and what is left is a mistake in the program.
    leaves: names that are put off on purpose. put_off: names that are still to be worked out: those and what rests on them.
    stood_in: questions without an answer of their own, for which a value stands.
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

    def copy(self) -> "Worked":
        """One of its own with the same in it."""
        known, estimated, waits, not_judged, not_here, broken = (dict(kept) for kept in self._all())
        return Worked(
            known, estimated, waits, not_judged, not_here, broken, set(self.crashed), set(self.put_off), self.leaves,
            set(self.stood_in),
        )  # fmt: skip

    def forget(self, name: str) -> None:
        """Drop what is known of a name."""
        for kept in self._all():
            kept.pop(name, None)
        self.crashed.discard(name)
        self.put_off.discard(name)
        self.stood_in.discard(name)

    def take_over(self, name: str, other: "Worked") -> None:
        """What another has of a name, in place of what there is."""
        for kept, others in zip(self._all(), other._all(), strict=True):
            if name in others:
                kept[name] = others[name]
            else:
                kept.pop(name, None)
        for mine, theirs in ((self.crashed, other.crashed), (self.put_off, other.put_off)):
            (mine.add if name in theirs else mine.discard)(name)

    def is_as_in(self, other: "Worked", name: str) -> bool:
        """Whether a name was worked out, from what is measured, and to the same as in another."""
        if name not in self.known or name not in other.known or self.estimated.get(name) != other.estimated.get(name):
            return False
        return bool(self.known[name] == other.known[name])

    def note_waiting(self, name: str, wanted: Iterable[str], not_judged: Reason | None = None) -> None:
        """Note what a name waits for: fields, a value standing for whatever that waits for itself.

        What waits for a value that no entry would give is not judged, for that value's reason.
        """
        wanted = tuple(wanted)
        self.waits[name] = tuple(dict.fromkeys(field for each in wanted for field in self.waits.get(each, (each,))))
        if not self.waits[name]:  # no entry would help: it is not judged, for the reason its value is not
            not_judged = not_judged or next((self.not_judged[each] for each in wanted if each in self.not_judged), None)
        if not_judged:
            self.not_judged[name] = not_judged

    def stand_in(self, question: str, value: str) -> None:
        """Let a value that was worked out answer a question, unless somebody has."""
        if question not in self.known or question in self.stood_in:
            self.stood_in.add(question)
            self.known[question] = self.known[value]
            self.estimated.pop(question, None)
            if value in self.estimated:
                self.estimated[question] = self.estimated[value]

    def _all(self) -> tuple[dict[str, Any], ...]:
        return self.known, self.estimated, self.waits, self.not_judged, self.not_here, self.broken
