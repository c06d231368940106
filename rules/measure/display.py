"""A number back to text, as a tape, a scale or a torque wrench shows it."""

import math
from functools import lru_cache

from rules.measure.quantity import INCH, POUND, POUND_FORCE, Units

_PUBLISHED = {"rad": ("deg", 180 / math.pi), "share": ("%", 100.0)}
"""Units that leave `rules` under another name: nobody reads radians off a protractor."""

_IN_INCH_SHEETS = {
    "kg": ("lb", 1 / POUND),
    "N": ("lbf", 1 / POUND_FORCE),
    "MPa": ("psi", INCH**2 / POUND_FORCE),
    "m/s": ("mph", 1 / 0.44704),
    "N m": ("lbf ft", 1 / (POUND_FORCE * 0.3048)),
    "N/mm": ("lbf/in", INCH / POUND_FORCE),
    "°C": ("°F", 1.8),
    "km": ("miles", 1 / 1.609344),
    "mm2": ("in2", INCH**-2),
    "mm2/kg": ("in2 for each 1000 lb", 1000 * POUND / INCH**2),
    "mm4": ("in4", INCH**-4),
}
_IN_METRIC_SHEETS = {"m/s": ("km/h", 3.6), "mm2/kg": ("mm2 for each kg", 1.0)}


def published(number: float, unit: str) -> tuple[float, str]:
    """The number and unit as given outside `rules`: degrees for radians, per cent for shares, else unchanged.

    >>> published(0.5, "share")
    (50.0, '%')
    """
    symbol, factor = _PUBLISHED.get(unit, (unit, 1.0))
    return number * factor, symbol


@lru_cache(maxsize=4096)  # a sheet is judged anew at every keystroke, and most figures stay
def show(number: float, unit: str, units: Units) -> str:
    """One number with its unit, in the sheet's units, rounded to what a person can read off.

    >>> show(238.125, "mm", "inch"), show(238.125, "mm", "metric")
    ('9 3/8 in', '238.1 mm')
    """
    if unit == "mm" and units == "inch":
        return _inches(number / INCH)
    shown, symbol = in_sheet(number, unit, units)
    figure = f"{shown:.3g}" if symbol in ("in2", "in4") and abs(shown) < 100 else _rounded(shown)
    if symbol in ("1", "price"):
        return figure
    return f"{figure} {symbol}"


def in_sheet(number: float, unit: str, units: Units) -> tuple[float, str]:
    """A number, but a length, in the unit such a sheet shows it in, not rounded.

    >>> in_sheet(10.0, "m/s", "metric"), in_sheet(0.5, "share", "inch")
    ((36.0, 'km/h'), (50.0, '%'))
    """
    symbol, factor = (
        _PUBLISHED.get(unit) or (_IN_INCH_SHEETS if units == "inch" else _IN_METRIC_SHEETS).get(unit) or (unit, 1.0)
    )
    return number * factor, symbol


def in_a_sentence(label: str) -> str:
    """A label as it reads inside a sentence.

    >>> in_a_sentence("Rotor diameter")
    'rotor diameter'
    """
    return label[:1].lower() + label[1:]


def other(units: Units) -> Units:
    """The unit system that is not the given one."""
    return "metric" if units == "inch" else "inch"


def tape(length: float, units: Units) -> str:
    """A length in mm as a tape shows it: the nearest 1/32 in or 0.5 mm.

    >>> tape(101.54, "inch"), tape(101.54, "metric")
    ('4 in', '101.5 mm')
    """
    if units == "inch":
        return fraction(round(length / INCH * 32) / 32) + " in"
    return f"{_plain(round(length * 2) / 2, 1)} mm"


def _inches(inches: float) -> str:
    sixty_fourths = round(inches * 64) if abs(inches) < 1e6 else 0
    if abs(inches * 64 - sixty_fourths) < 1e-6 and abs(inches) < 1e6:
        return fraction(sixty_fourths / 64) + " in"
    return f"{_plain(inches, 3)} in"


def fraction(inches: float) -> str:
    """A whole number of halves, quarters and so on of an inch as a tape has it.

    >>> fraction(9.375), fraction(-0.5)
    ('9 3/8', '-1/2')
    """
    sign = "-" if inches < 0 else ""
    parts, size = abs(inches).as_integer_ratio()  # such a number is held exactly
    whole, part = divmod(parts, size)
    if part == 0:
        return f"{sign}{whole}"
    return f"{sign}{whole} {part}/{size}" if whole else f"{sign}{part}/{size}"


def _rounded(number: float) -> str:
    size = abs(number)
    return _plain(number, 0 if size >= 1000 else 1 if size >= 100 else 2)


def _plain(number: float, decimals: int) -> str:
    text = f"{number:.{decimals}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return "0" if text in ("-0", "") else text
