"""Figures as they stand beside a dimension line, in the units of the sheet."""

from dataclasses import dataclass

from rules.graph.results import Estimate
from rules.measure.display import show, tape
from rules.measure.quantity import Units

ESTIMATE = "estimate - measure"


@dataclass(frozen=True, slots=True)
class FigureWriter:
    """Writes sizes without their sign. One that rests on an estimate says so: it comes as an Estimate."""

    units: Units

    def length(self, mm: float, *rests_on: float) -> str:
        """As a tape shows it, the exact figure beside it where that differs. rests_on: what it was worked out from here."""
        first, full = tape(abs(mm), self.units), show(abs(mm), "mm", self.units)
        return marked(first if first == full else f"{first} ({full})", mm, *rests_on)

    def angle(self, radians: float) -> str:
        """In degrees."""
        return marked(show(abs(radians), "rad", self.units), radians)

    def short_length(self, mm: float) -> str:
        """As a tape shows it, and no more."""
        return marked(tape(abs(mm), self.units), mm)


def marked(words: str, *rests_on: float) -> str:
    """The words, and that they are an estimate where any of the numbers is."""
    return f"{words} {ESTIMATE}" if any(isinstance(number, Estimate) for number in rests_on) else words
