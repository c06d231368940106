"""Figures that no builder entered, limits and those fixed in a text, as a person says them in either unit system."""

from collections.abc import Callable, Mapping
from math import ceil, floor, log10
from typing import Literal

from rules.measure.display import fraction, in_sheet, show
from rules.measure.patterns import Pattern
from rules.measure.quantity import INCH, Units

RoundedTo = Literal["up", "down", "near"]
"""Which way a figure may be rounded: up for a least that is wanted, down for a most, so that what is said always passes."""
_ROUND: dict[RoundedTo, Callable[[float], int]] = {"up": ceil, "down": floor, "near": round}
_NEAR = 0.06
"""How far a fraction of an inch may be off: 6 mm is a quarter, 12 mm a half."""

FINE, COARSE = 16, 0.125
"""Parts of an inch that a length is said in, and inches up to which finer ones are: 0.2 in is said so, 5/64 in is too."""

_IN_THREE_FIGURES = {"N", "N m", "MPa", "N/mm", "°C"}
"""Units of what rests on loads, friction and heat, which nobody knows to more than about a hundredth."""

_EITHER = Pattern(r"\[([^\[\]|]+) \| ([^\[\]|]+)\]")

OneFigure = tuple[float, str] | tuple[float, str, RoundedTo]
"""A number and its unit; with a way, a limit, which is rounded that way as a person says it."""
Figures = Mapping[str, OneFigure]
"""Figures by name, for the braces of a text."""


def said(number: float, unit: str, units: Units, way: RoundedTo = "near") -> tuple[str, str]:
    """A figure and its unit as a person says them in such a sheet.

    An inch sheet gets the coarsest fraction of an inch within 6 %, else two figures, or three where two would be more than a
    twentieth off.

    >>> said(12.0, "mm", "inch", "up"), said(25.0, "mm", "inch", "down"), said(12.0, "mm", "metric", "up")
    (('1/2', 'in'), ('15/16', 'in'), ('12', 'mm'))
    """
    shown, symbol = in_sheet(number, unit, units)
    if units == "inch" and unit == "mm":
        mark = _tape(number / INCH, way)
        return _figures(number / INCH, way) if mark is None else fraction(mark), "in"
    if symbol != in_sheet(number, unit, "metric")[1]:
        return _figures(shown, way), symbol
    return plain(shown), symbol


def sided(name: str, at: float, plus: str, minus: str, unit: str = "mm") -> tuple[str, Figures]:
    """A signed figure as a builder says it: its size and the word for its side. With it the figure for the text's braces.

    name: of no input of the check, for that would be shown with its sign.

    >>> sided("apart", -7.0, "outboard", "inboard"), sided("round", 1.5, "ahead", "behind", "rad")
    (('{apart} inboard', {'apart': (7.0, 'mm')}), ('{round} ahead', {'round': (1.5, 'rad')}))
    """
    return f"{{{name}}} {plus if at >= 0 else minus}", {name: (abs(at), unit)}


def in_units(text: str, units: Units | None) -> str:
    """A text with each `[1 in | 25 mm]` in it as the sheet's units say it; metric where there is no sheet, as in the catalogue.

    >>> in_units("no gap over [1/16 in | 1.5 mm]", "inch"), in_units("no gap over [1/16 in | 1.5 mm]", None)
    ('no gap over 1/16 in', 'no gap over 1.5 mm')
    """
    if "[" not in text:
        return text
    return _EITHER.sub(r"\1" if units == "inch" else r"\2", text)


def capital(text: str) -> str:
    """A text that begins with a capital letter, the rest as it is.

    >>> capital("upper weld, A36"), capital("")
    ('Upper weld, A36', '')
    """
    return text[:1].upper() + text[1:]


def either(words: Callable[[Units], str]) -> str:
    """Words of each unit system in one text, for `in_units` to choose from."""
    inch, metric = words("inch"), words("metric")
    return inch if inch == metric else f"[{inch} | {metric}]"


def filled(text: str, figures: Figures, units: Units) -> str:
    """A text with its figures filled in as the sheet's units show them. Without figures it stays as it is, braces and all.

    >>> filled("{far} droop", {"far": (50.8, "mm")}, "inch"), filled("{far} droop", {"far": (50.8, "mm")}, "metric")
    ('2 in droop', '50.8 mm droop')
    """
    text = in_units(text, units)
    if not figures:
        return text
    return text.format_map({name: written(figure, units) for name, figure in figures.items()})


def written(figure: OneFigure, units: Units) -> str:
    """A figure as text in the sheet's units.

    >>> written((12.0, "mm"), "inch"), written((12.0, "mm", "up"), "inch")
    ('0.472 in', '1/2 in')
    """
    if len(figure) == 2:
        return worked_out(*figure, units)
    number, unit, way = figure
    text, symbol = said(number, unit, units, way)
    return text if symbol in ("1", "price") else f"{text} {symbol}"


def span(low: float, high: float, unit: str, units: Units) -> str:
    """From one figure to another as a person says them, the unit once; both rounded inward, so that what is said passes.

    On an inch sheet both stand on marks of a tape, small ones in 32nds or 64ths, wherever two such marks lie within.

    >>> span(20.5, 80.0, "mm", "inch"), span(20.5, 80.0, "mm", "metric"), span(15e3, 25e4, "N", "metric")
    ('13/16 to 3 in', '20.5 to 80 mm', '15 000 to 250 000 N')
    >>> span(8.0, 22.0, "mm", "inch"), span(3.5, 36.0, "mm", "inch"), span(0.5, 0.6, "mm", "inch")
    ('3/8 to 13/16 in', '5/32 to 1 3/8 in', '0.02 to 0.023 in')
    """
    if units == "inch" and unit == "mm":
        first, last = _mark(low / INCH, "up"), _mark(high / INCH, "down")
        if first < last:
            return f"{fraction(first)} to {fraction(last)} in"
        return f"{_figures(low / INCH, 'up')} to {_figures(high / INCH, 'down')} in"
    (least, _), most = said(low, unit, units, "up"), written((high, unit, "down"), units)
    return f"{least} to {most}"


def worked_out(number: float, unit: str, units: Units) -> str:
    """A figure that this program worked out, as a sentence has it: what comes of loads and heat in three figures, no more.

    >>> worked_out(39541.0, "N", "inch"), worked_out(148.06, "N m", "metric"), worked_out(12.0, "mm", "metric")
    ('8890 lbf', '148 N m', '12 mm')
    """
    shown, symbol = in_sheet(number, unit, units)
    if unit not in _IN_THREE_FIGURES or not 100 <= abs(shown) < float("inf"):
        return show(number, unit, units)
    return f"{plain(float(f'{shown:.3g}'))} {symbol}"


def plain(number: float) -> str:
    """A figure that is already round: `6`, `2.667`, `10 000`."""
    return f"{number:.4g}" if abs(number) < 1e4 else f"{number:,.0f}".replace(",", " ")


def inward(number: float, way: RoundedTo) -> float:
    """Rounded one way to two figures, or to three where two would move it by more than a twentieth."""
    short = number
    for figures in (2, 3):
        if number == 0:
            break
        step = 10.0 ** (floor(log10(abs(number))) + 1 - figures)
        steps = number / step
        whole = round(steps)
        short = (whole if abs(steps - whole) < 1e-6 else _ROUND[way](steps)) * step
        if abs(short - number) <= abs(number) / 20:
            break
    return short


def _tape(inches: float, way: RoundedTo) -> float | None:
    """The coarsest fraction that is near enough; None where there is none, or it is finer than a person would say."""
    for parts in (1, 2, 4, 8, 16, 32, 64):
        if parts > FINE and inches > COARSE:
            break
        steps = inches * parts
        whole = round(steps) if abs(steps - round(steps)) < 1e-6 else _ROUND[way](steps)
        if abs(whole - steps) <= _NEAR * abs(steps):
            return whole / parts
    return None


def _mark(inches: float, way: RoundedTo) -> float:
    """The coarsest fraction that is near enough, else the next sixteenth that way, of small ones the next 32nd or 64th."""
    parts = 16 if abs(inches) >= 0.25 else 32 if abs(inches) >= 0.0625 else 64
    near = _tape(inches, way)
    return _ROUND[way](inches * parts) / parts if near is None else near


def _figures(number: float, way: RoundedTo) -> str:
    """Written out, without a power of ten and without noughts behind."""
    text = f"{inward(number, way):.6f}".rstrip("0").rstrip(".")
    return plain(float(text)) if abs(number) >= 1e4 else text
