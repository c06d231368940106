"""What has been worked out for one sheet: the engine's notebook."""

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
