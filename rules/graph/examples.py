"""What would work in the row of a question: an example of its own, and its bounds as a person says them."""

from functools import cache
from math import floor, sqrt
from typing import TYPE_CHECKING

from rules.measure.clock_places import clock_places_example
from rules.measure.display import show
from rules.measure.marks import THREAD_EXAMPLES, TYRE_EXAMPLES, bolt_circle_example
from rules.measure.quantity import INCH, KINDS, Units, parse
from rules.measure.said import inward, said

if TYPE_CHECKING:
    from rules.graph.asking import AskedField

_OTHERS = {
    "tyre mark": TYRE_EXAMPLES,
    "thread": THREAD_EXAMPLES,
    "price": "85 or 85.50",
    "speed symbol": "Q",
    "yes or no": "true",
}
_TAPE = (1.0, 1 / 4, 1 / 16, 1 / 64)
"""in. An example is in the coarsest of these that leaves at least four steps."""


@cache  # every entry that is read is given one, in case it cannot be
def example_of(asked: "AskedField", units: Units) -> str:
    """An entry that this row takes, as it may be typed; two or three of them for marks. Empty where any words will do."""
    if asked.kind in KINDS:
        return _quantity(asked, units)
    if asked.kind == "bolt circle":
        return bolt_circle_example(units)
    if asked.kind == "clock places":
        return clock_places_example(units)
    if asked.kind == "count":
        return str(floor(_middling(asked.least or 0.0, asked.most or 8.0)))
    if asked.kind == "choice":
        return asked.choices[0]
    return _OTHERS.get(asked.kind, "")


def limits_of(asked: "AskedField", units: Units) -> str:
    """The bounds of a quantity in the sheet's units: “8 to 30 in”. Empty without bounds.

    Rounded inward, so that what is named is also taken: to a fraction of an inch, else to two figures, or to three where two
    would move them by more than a twentieth.
    """
    if asked.least is None or asked.most is None:
        return ""
    unit, size = _unit(asked, units)
    if unit == "in":
        (low, _), (high, _) = said(asked.least, "mm", units, "up"), said(asked.most, "mm", units, "down")
        return f"{low} to {high} in"
    return (
        f"{_figure(inward(asked.least / size, 'up'))} to {_figure(inward(asked.most / size, 'down'))} {unit}".rstrip()
    )


def _unit(asked: "AskedField", units: Units) -> tuple[str, float]:
    """The unit a bare number takes, and its size in the inside unit."""
    unit = KINDS[asked.kind].bare[units]
    return unit, parse(f"1 {unit}", asked.kind, units)


def _middling(least: float, most: float) -> float:
    """A figure well inside the bounds: as many times the least as the most is times it, or a quarter of the most."""
    return sqrt(least * most) if least > 0 else most / 4 if most > 0 else least / 4


def _quantity(asked: "AskedField", units: Units) -> str:
    if asked.least is None or asked.most is None:
        return KINDS[asked.kind].examples[units]
    unit, size = _unit(asked, units)
    number = _middling(asked.least, asked.most) / size
    if asked.whole_inches:
        return f"{_middling(asked.least, asked.most) / INCH:.0f}{' in' if units == 'inch' else ''}"
    if unit == "in":
        step = next((step for step in _TAPE if abs(number) >= 4 * step), _TAPE[-1])
        if steps := round(number / step):
            return show(steps * step * INCH, "mm", "inch")
    return f"{_figure(float(f'{number:.2g}'))} {unit}".rstrip()


def _figure(number: float) -> str:
    """Written out, without a power of ten and without noughts behind."""
    return f"{number:.6f}".rstrip("0").rstrip(".")
