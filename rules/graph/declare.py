"""How a value and a check are declared: what they say of themselves, beside the plain function."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeVar

from rules.graph.results import Grade, Verdict

F = TypeVar("F", bound=Callable[..., Any])


@dataclass(frozen=True, slots=True)
class ValueNote:
    """What a value says of itself: subject, formula in words, source."""

    subject: str
    formula: str
    source: str


@dataclass(frozen=True, slots=True)
class CheckNote:
    """What a check says of itself. step: the table it belongs to. try_changing: fields worth solving for."""

    id: str
    step: str
    title: str
    good: str
    watch: str
    stop: str
    source: str
    grade: Grade
    try_changing: tuple[str, ...]

    @property
    def best(self) -> Verdict:
        """The best verdict it can give: some are never good, because nobody has published a limit."""
        return "watch" if self.good.startswith("never") else "good"


def value(subject: str, *, formula: str, source: str) -> Callable[[F], F]:
    """Mark a pure function as a value. formula: in words, as `explain` prints it."""

    def mark(function: F) -> F:
        function.note = ValueNote(subject, formula, source)  # type: ignore[attr-defined]
        return function

    return mark


def check(
    id: str,
    *,
    step: str,
    title: str,
    good: str,
    watch: str = "",
    stop: str = "",
    source: str,
    grade: Grade,
    try_changing: tuple[str, ...] = (),
) -> Callable[[F], F]:
    """Mark a function as a check. good, watch, stop: its limits in words; empty where it has no such verdict."""

    def mark(function: F) -> F:
        function.note = CheckNote(id, step, title, good, watch, stop, source, grade, try_changing)  # type: ignore[attr-defined]
        return function

    return mark
