"""What a full-size drawing may show: numbers that are known, and figures as they stand beside a dimension line."""

from rules.judging.judge import Judged
from rules.judging.trade import trade
from rules.measure.display import show, tape

ESTIMATE = "estimate - measure"


class Facts:
    """Reads a judged sheet for the drawing. What is not known is None, and then its part is not drawn."""

    def __init__(self, judged: Judged) -> None:
        self.judged = judged

    def number(self, name: str) -> float | None:
        """A value or a field in mm or radians."""
        found = self.judged.worked.known.get(name)
        return float(found) if isinstance(found, float) else None

    def size(self, name: str) -> float | None:
        """A number above zero."""
        found = self.number(name)
        return found if found is not None and found > 0 else None

    def figure(self, name: str) -> str:
        """The size of a known number as a tape shows it, the exact figure beside it where that differs."""
        number = self.number(name)
        assert number is not None
        if trade().units[name] == "mm":
            return self.length(number, name)
        return self._marked(show(abs(number), trade().units[name], self.judged.shown_in), name)

    def length(self, mm: float, *rests_on: str) -> str:
        """The same for a length in mm; rests_on: the names it is worked out from, where there are any."""
        units = self.judged.shown_in
        first, full = tape(abs(mm), units), show(abs(mm), "mm", units)
        return self._marked(first if first == full else f"{first} ({full})", *rests_on)

    def _marked(self, words: str, *rests_on: str) -> str:
        return f"{words} {ESTIMATE}" if self.estimated(*rests_on) else words

    def estimated(self, *names: str) -> bool:
        """Whether any of the numbers rests on something that nobody has measured."""
        return any(name in self.judged.worked.estimated for name in names)
