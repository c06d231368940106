"""Figures as they stand beside a dimension line, in the units of the sheet."""

from rules.graph.results import Estimate
from rules.judging.judge import Judged
from rules.judging.reader import Name
from rules.measure.display import show, tape
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.sheet import Sheet
from rules.shop.named_sizes import as_named

ESTIMATE = "estimate - measure"


@dataclass(frozen=True, slots=True)
class FigureWriter:
    """Writes sizes without their sign. One that rests on an estimate says so: it comes as an Estimate."""

    sheet: Sheet
    units: Units

    @classmethod
    def of(cls, judged: Judged) -> "FigureWriter":
        """For the drawings of a judged sheet."""
        return cls(judged.sheet, judged.shown_in)

    def length(self, mm: float, *rests_on: float) -> str:
        """As a tape shows it, the exact figure beside it where that differs. rests_on: what it was worked out from here."""
        first, full = tape(abs(mm), self.units), show(abs(mm), "mm", self.units)
        return marked(first if first == full else f"{first} ({full})", mm, *rests_on)

    def named(self, wanted: Name, mm: float) -> str:
        """A drill, a bought part's diameter and the like as they were entered; else as `length`."""
        return as_named(self.sheet, wanted) or self.length(mm)

    def angle(self, radians: float) -> str:
        """In degrees."""
        return marked(show(abs(radians), "rad", self.units), radians)

    def exact(self, mm: float) -> str:
        """In full, as a cutter enters it."""
        return marked(show(abs(mm), "mm", self.units), mm)

    def bare(self, mm: float) -> str:
        """In full and without its unit, for a column whose heading says it."""
        return marked(show(abs(mm), "mm", self.units).rpartition(" ")[0], mm)


def marked(words: str, *rests_on: float) -> str:
    """The words, and that they are an estimate where any of the numbers is."""
    return f"{words} {ESTIMATE}" if any(isinstance(number, Estimate) for number in rests_on) else words
