"""One table of the motion sheet, and the words and figures all of them are made of."""

from collections.abc import Iterator
from typing import NamedTuple

from rules.judging.judge import Judged, and_list, why_not
from rules.judging.reader import Name, to_measure
from rules.measure.quantity import INCH, Units

NOT_REACHED = "not reached"


class SheetTable(NamedTuple):
    """One table. notes: sentences above it; below: under it. A cell "" is to be written in; missing: why there is no table."""

    title: str
    notes: tuple[str, ...] = ()
    columns: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = ()
    missing: str = ""
    below: tuple[str, ...] = ()


def estimates(judged: Judged, *wanted: Name) -> Iterator[str]:
    """A sentence on what to measure, where one of them rests on an estimate."""
    if measure := to_measure(judged.worked, *wanted):
        yield f"Rests on an estimate: measure {and_list(measure)}."


def reason(judged: Judged, *absent: str) -> str:
    """Why fields and values, by name, are not known: what failed, why the question does not arise, or what to enter."""
    worked = judged.worked
    for name in absent:
        if why := why_not(name, judged):
            return why
    return f"enter {and_list(dict.fromkeys(field for name in absent for field in worked.waits.get(name, (name,))))}"


def unit_of(units: Units) -> str:
    """What lengths are in."""
    return "in" if units == "inch" else "mm"


def signed(number: float, decimals: int) -> str:
    """A number with its sign, none on nought.

    >>> signed(1.234, 2), signed(-0.001, 2)
    ('+1.23', '0.00')
    """
    text = f"{number:+.{decimals}f}"
    return text if text.strip("+-0.") else text[1:]


def length_of(length: float, units: Units, decimals: int) -> str:
    """mm, to so many decimals, or inches, to one more."""
    return signed(length / INCH, decimals + 1) if units == "inch" else signed(length, decimals)
