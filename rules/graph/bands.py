"""Limits as data: the verdict, the words of the catalogue and the usual range on a form come from the same figures.

The limit itself counts as the better side, decided once for all checks in rules/measure/closeness.py.
"""

from collections.abc import Mapping
from math import inf, isfinite
from typing import Any, Protocol, runtime_checkable

from rules.graph.results import Verdict
from rules.measure.closeness import reaches, within
from rules.measure.display import published, show
from rules.measure.quantity import INCH, Units
from rules.measure.records import dataclass, field
from rules.measure.said import RoundedTo, in_units, plain, said


def at_least(number: float, good: float, watch: float | None = None) -> Verdict:
    """More is better: good from `good` up, watch from `watch` up, else stop.

    >>> at_least(6.0, good=6.0, watch=3.0), at_least(4.0, good=6.0, watch=3.0), at_least(2.9, good=6.0, watch=3.0)
    ('good', 'watch', 'stop')
    """
    if reaches(number, good):
        return "good"
    return "watch" if watch is not None and reaches(number, watch) else "stop"


def at_most(number: float, good: float, watch: float | None = None) -> Verdict:
    """Less is better: good up to `good`, watch up to `watch`, else stop.

    >>> at_most(1.6, good=1.6, watch=6.0), at_most(6.1, good=1.6, watch=6.0)
    ('good', 'stop')
    """
    if reaches(good, number):
        return "good"
    return "watch" if watch is not None and reaches(watch, number) else "stop"


def figure(number: float, unit: str, units: Units | None = None, way: RoundedTo = "near") -> str:
    """A limit as a person would say it: `6 mm`, `12 deg`, `65 %`, `1.1`. units: the sheet's; without one, as it is kept.

    >>> figure(6.0, "mm"), figure(1.1, "1"), figure(12.0, "mm", "inch", "up")
    ('6 mm', '1.1', '1/2 in')
    """
    return " ".join(filter(None, _parts(number, unit, units, way)))


def in_both(number: float, unit: str) -> str:
    """The same, a length of 1.5 mm or more with the coarsest fraction of an inch that is within 6 % beside it.

    >>> in_both(6.0, "mm"), in_both(0.3, "mm"), in_both(40.0, "mm")
    ('6 mm (1/4 in)', '0.3 mm', '40 mm (1 1/2 in)')
    """
    if unit != "mm" or number < 1.5:
        return figure(number, unit)
    inches = number / INCH
    tapes = (round(inches * parts) / parts for parts in (4, 8, 16, 32, 64))
    near = next(tape for tape in tapes if abs(tape - inches) <= 0.06 * inches)
    return f"{figure(number, unit)} ({show(near * INCH, unit, 'inch')})"


def _bound(number: float, unit: str, units: Units | None, way: RoundedTo) -> str:
    return in_both(number, unit) if units is None else figure(number, unit, units, way)


def _from_to(low: float, high: float, unit: str, units: Units | None, ways: tuple[RoundedTo, RoundedTo]) -> str:
    return f"{_parts(low, unit, units, ways[0])[0]} to {figure(high, unit, units, ways[1])}"


def _parts(number: float, unit: str, units: Units | None, way: RoundedTo) -> tuple[str, str]:
    if units is not None:
        text, symbol = said(number, unit, units, way)
    else:
        shown, symbol = published(number, unit)
        text = plain(shown)
    return text, "" if symbol in ("1", "price") else symbol


@dataclass(frozen=True, slots=True)
class Limits:
    """Named figures of one unit. other: figures of a check's own besides, each with its unit, for its words."""

    unit: str = "1"
    other: Mapping[str, tuple[float, str]] = field(default_factory=dict, kw_only=True)

    def figures(self, units: Units | None = None) -> dict[str, str]:
        """Every figure by name, as its words show it. units: the sheet's, in which they are rounded as a person says them,
        a limit never to the side that would not pass; without a sheet they are as they are kept."""
        return {name: figure(number, unit, units) for name, (number, unit) in self.other.items()}

    def standard_words(self, units: Units | None = None) -> dict[str, str]:
        """What the catalogue says where a check does not say it in words of its own; in a sheet's units, or in both."""
        return {"good": "", "watch": "", "stop": ""}

    def in_words(self, texts: Mapping[str, str], units: Units | None = None) -> dict[str, str]:
        """The words of the three verdicts: those said, with the figures filled in, else the standard ones."""
        if not any(texts.values()):
            return self.standard_words(units)
        figures = self.figures(units)
        return {verdict: in_units(text, units).format_map(figures) for verdict, text in texts.items()}


@runtime_checkable
class Comparing(Protocol):
    """Limits that one number is compared with, and that say how far inside good it is."""

    def verdict(self, number: float, /, *choice: Any) -> Verdict:
        """The number's verdict."""

    def in_hand(self, number: float, /, *choice: Any) -> float:
        """How far inside good, in the limits' unit; minus outside."""


@dataclass(frozen=True, slots=True)
class AtLeast(Limits):
    """More is better. watch: -inf where it is never a stop; None where there is no watch."""

    good: float = 0.0
    watch: float | None = None

    def verdict(self, number: float) -> Verdict:
        """good from `good` up, watch from `watch` up, else stop.

        >>> AtLeast("mm", 6.0, 3.0).verdict(4.0)
        'watch'
        """
        return at_least(number, self.good, self.watch)

    def in_hand(self, number: float) -> float:
        """How far inside good, in the limits' unit; minus outside."""
        return number - self.good

    def figures(self, units: Units | None = None) -> dict[str, str]:
        """good and watch, and the check's own."""
        named: dict[str, tuple[float | None, RoundedTo]] = {"good": (self.good, "up"), "watch": (self.watch, "up")}
        return _figures(self.unit, named, units) | Limits.figures(self, units)

    def standard_words(self, units: Units | None = None) -> dict[str, str]:
        """In words.

        >>> AtLeast("mm", 6.0, 3.0).standard_words()
        {'good': '6 mm (1/4 in) or more', 'watch': '3 to 6 mm', 'stop': 'less than 3 mm (1/8 in)'}
        """
        good = _bound(self.good, self.unit, units, "up")
        if self.watch is None:
            return {"good": f"{good} or more", "watch": "", "stop": f"less than {good}"}
        if self.watch == -inf:
            return {"good": f"{good} or more", "watch": f"less than {good}", "stop": ""}
        between = _from_to(self.watch, self.good, self.unit, units, ("up", "up"))
        return {
            "good": f"{good} or more",
            "watch": between,
            "stop": f"less than {_bound(self.watch, self.unit, units, 'up')}",
        }


@dataclass(frozen=True, slots=True)
class AtMost(Limits):
    """Less is better. watch: inf where it is never a stop; None where there is no watch."""

    good: float = 0.0
    watch: float | None = None

    def verdict(self, number: float) -> Verdict:
        """good up to `good`, watch up to `watch`, else stop.

        >>> AtMost("mm", 1.6, 6.0).verdict(6.1)
        'stop'
        """
        return at_most(number, self.good, self.watch)

    def in_hand(self, number: float) -> float:
        """How far inside good, in the limits' unit; minus outside."""
        return self.good - number

    def figures(self, units: Units | None = None) -> dict[str, str]:
        """good and watch, and the check's own."""
        named: dict[str, tuple[float | None, RoundedTo]] = {"good": (self.good, "down"), "watch": (self.watch, "down")}
        return _figures(self.unit, named, units) | Limits.figures(self, units)

    def standard_words(self, units: Units | None = None) -> dict[str, str]:
        """In words.

        >>> AtMost("mm", 25.0, inf).standard_words()
        {'good': 'up to 25 mm (1 in)', 'watch': 'more than 25 mm (1 in)', 'stop': ''}
        """
        good = _bound(self.good, self.unit, units, "down")
        if self.watch is None:
            return {"good": f"up to {good}", "watch": "", "stop": f"more than {good}"}
        if self.watch == inf:
            return {"good": f"up to {good}", "watch": f"more than {good}", "stop": ""}
        between = _from_to(self.good, self.watch, self.unit, units, ("down", "down"))
        return {
            "good": f"up to {good}",
            "watch": between,
            "stop": f"more than {_bound(self.watch, self.unit, units, 'down')}",
        }


@dataclass(frozen=True, slots=True)
class Between(Limits):
    """Good from `low` to `high`; watch from `least` to `most`, without end where these are -inf and inf; else stop."""

    low: float = 0.0
    high: float = 0.0
    least: float = -inf
    most: float = inf

    def verdict(self, number: float) -> Verdict:
        """good inside low to high, watch inside least to most, else stop.

        >>> Between("deg", 8.0, 12.0, least=0.0).verdict(13.0)
        'watch'
        """
        if within(number, self.low, self.high):
            return "good"
        return "watch" if within(number, self.least, self.most) else "stop"

    def in_hand(self, number: float) -> float:
        """How far inside good, in the limits' unit; minus outside."""
        return min(number - self.low, self.high - number)

    def figures(self, units: Units | None = None) -> dict[str, str]:
        """usual: low to high; low, high, least and most by themselves; and the check's own."""
        named: dict[str, tuple[float | None, RoundedTo]] = {
            "low": (self.low, "up"), "high": (self.high, "down"), "least": (self.least, "up"), "most": (self.most, "down"),
        }  # fmt: skip
        return {"usual": self.usual(units)} | _figures(self.unit, named, units) | Limits.figures(self, units)

    def usual(self, units: Units | None = None) -> str:
        """The good range in words.

        >>> Between("mm", -10.0, 40.0).usual()
        '-10 to 40 mm'
        """
        return _from_to(self.low, self.high, self.unit, units, ("up", "down"))

    def standard_words(self, units: Units | None = None) -> dict[str, str]:
        """In words.

        >>> Between("mm", -10.0, 40.0, most=100.0).standard_words()
        {'good': '-10 to 40 mm', 'watch': 'anything else up to 100 mm', 'stop': 'more than 100 mm'}
        """
        beyond = [
            f"{word} than {figure(number, self.unit, units, way)}"
            for word, number, way in self._ends("less", "more")
            if isfinite(number)
        ]
        ends = [
            f"{word} {figure(number, self.unit, units, way)}"
            for word, number, way in self._ends("down to", "up to")
            if isfinite(number)
        ]
        return {
            "good": self.usual(units),
            "watch": " and ".join(["anything else", *ends]).replace("else and", "else"),
            "stop": " or ".join(beyond),
        }

    def _ends(self, low: str, high: str) -> tuple[tuple[str, float, RoundedTo], tuple[str, float, RoundedTo]]:
        return (low, self.least, "up"), (high, self.most, "down")


@dataclass(frozen=True, slots=True)
class ByChoice(Limits):
    """A range for each choice of a list. asked: the question, dotted, that the choice answers. by: the ranges, all in `unit`.

    Without that answer only what is good whatever the choice is good.
    """

    asked: str = ""
    by: Mapping[str, Between] = field(default_factory=dict)

    def of(self, choice: object) -> Between:
        """The range of one choice; where there is none, what all of them share.

        >>> limits = ByChoice("deg", "job.use", {"road": Between("deg", 2.0, 8.0), "dunes": Between("deg", 4.0, 12.0)})
        >>> limits.of("dunes").usual(), limits.of(None).usual()
        ('4 to 12 deg', '4 to 8 deg')
        """
        if isinstance(choice, str) and choice in self.by:
            return self.by[choice]
        return Between(
            self.unit,
            max(one.low for one in self.by.values()),
            min(one.high for one in self.by.values()),
            max(one.least for one in self.by.values()),
            min(one.most for one in self.by.values()),
        )

    @property
    def widest(self) -> tuple[float, float]:
        """From the least to the most that is good of any choice.

        >>> ByChoice("deg", by={"road": Between("deg", 2.0, 8.0), "dunes": Between("deg", 4.0, 12.0)}).widest
        (2.0, 12.0)
        """
        return min(one.low for one in self.by.values()), max(one.high for one in self.by.values())

    def verdict(self, number: float, choice: object = None) -> Verdict:
        """As the range of that choice has it."""
        return self.of(choice).verdict(number)

    def in_hand(self, number: float, choice: object = None) -> float:
        """How far inside good, in the limits' unit; minus outside."""
        return self.of(choice).in_hand(number)

    def figures(self, units: Units | None = None) -> dict[str, str]:
        """usual: every range with its choices, those alike together; and the check's own.

        >>> same = Between("deg", 2.0, 8.0)
        >>> limits = ByChoice("deg", by={"trail": same, "road": same, "dunes": Between("deg", 4.0, 12.0)})
        >>> limits.figures()["usual"]
        'trail, road 2 to 8 deg; dunes 4 to 12 deg'
        """
        alike: dict[str, list[str]] = {}
        for choice, limits in self.by.items():
            alike.setdefault(limits.usual(units), []).append(choice)
        usual = "; ".join(f"{', '.join(choices)} {words}" for words, choices in alike.items())
        return {"usual": usual} | Limits.figures(self, units)


def _figures(unit: str, named: Mapping[str, tuple[float | None, RoundedTo]], units: Units | None) -> dict[str, str]:
    return {
        name: figure(number, unit, units, way)
        for name, (number, way) in named.items()
        if number is not None and isfinite(number)
    }
