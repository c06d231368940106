"""Marks of a wheel that stand for a length: `8JJx15`, `15x8`, `ET30`, and the whole inches of a wheel's diameter or width.

Sources: JIS D 4218 (modified ISO 4000-2), where a rim is named by its nominal width in inches, the letters of its flange and
its nominal diameter in inches; that width and diameter are inches in every country, UN R30. ET before an offset in
millimetres, plus where the wheel's mounting face is outboard of the middle, is common practice on wheels, no source.
"""

import re
from collections.abc import Callable

from rules.measure.patterns import Pattern
from rules.measure.quantity import INCH, Units, as_typed, parse, plain_number_text
from rules.measure.records import dataclass

_FLANGE = r"(?P<flange>JJ?|JK|K|B)"
_WIDTH = r"(?P<width>\d[\d ./,-]*?)\s*"
_DIAMETER = r"(?P<diameter>\d{2}(?:\.5)?)"
_RIM_MARKS = tuple(
    Pattern(form, re.ASCII | re.IGNORECASE)
    for form in (
        rf"{_WIDTH}{_FLANGE}(?:\s*[x×-]\s*{_DIAMETER})?",
        rf"{_DIAMETER}\s*[x×]\s*{_WIDTH}{_FLANGE}",
    )
)
_BOTH = Pattern(
    r"(?P<one>\d{1,2}(?:\.\d{1,2}| 1/2)?)\s*[x×]\s*(?P<other>\d{1,2}(?:\.\d{1,2}| 1/2)?)", re.ASCII | re.IGNORECASE
)
LEAST_DIAMETER = 8.0
"""in. No car's wheel is smaller; common practice, no source."""
_NUMBER = r"[-+]?\s*\d[\d.,]*"
_ET_MARK = Pattern(rf"(?:ET\s*(?P<behind>{_NUMBER})|(?P<before>{_NUMBER})\s*ET)\s*(?:mm)?", re.ASCII | re.IGNORECASE)
_RIM_CODE = Pattern(r"\d{1,2}(?:\.[05])?", re.ASCII)
LARGEST_CODE = 30.0
"""Whole or half inches that a bare number may name as a wheel's diameter; the smallest wheel in mm is far above."""


@dataclass(frozen=True, slots=True)
class RimMark:
    """A rim's mark: nominal width, mm, flange letters, and nominal diameter, mm; empty or None where the mark names none."""

    width: float
    flange: str
    diameter: float | None


def read_rim_mark(entry: object) -> RimMark | None:
    """Read `8J`, `8 1/2 J`, `8JJx15`, `15x8JJ`, or `15x8` and `8x15`, of which the larger is the diameter; None where the entry
    is no such mark. Raises EntryError for a slip in one."""
    text = plain_number_text(entry) if isinstance(entry, str) else ""
    match = next((found for form in _RIM_MARKS if (found := form.fullmatch(text))), None)
    if match is None and (both := _BOTH.fullmatch(text)):
        width, diameter = sorted(parse(both[name], "length", "inch") for name in ("one", "other"))
        return RimMark(width, "", diameter) if diameter >= LEAST_DIAMETER * INCH else None
    if match is None:
        return None
    assert isinstance(entry, str)
    width = parse(match["width"], "length", "inch", shown=entry, example="8JJx15")
    return RimMark(width, match["flange"].upper(), float(match["diameter"]) * INCH if match["diameter"] else None)


def rim_width(entry: object, units: Units | None) -> float | None:
    """The width that a rim's mark names, or a bare number of whole or half inches on a metric sheet, mm; None for neither."""
    mark = read_rim_mark(entry)
    return mark.width if mark else _code(entry, units)


def rim_diameter(entry: object, units: Units | None) -> float | None:
    """The diameter that a rim's mark names, or a bare number of whole or half inches on a metric sheet, mm; None for neither."""
    if mark := read_rim_mark(entry):
        return mark.diameter
    return _code(entry, units)


def _code(entry: object, units: Units | None) -> float | None:
    bare = as_typed(entry).strip().replace(",", ".")
    if units == "metric" and _RIM_CODE.fullmatch(bare) and float(bare) <= LARGEST_CODE:
        return float(bare) * INCH
    return None


def rim_offset(entry: object, units: Units | None) -> float | None:
    """The offset after or before `ET`, mm, plus outboard; None where the entry is no such mark.

    >>> rim_offset("ET30", None), rim_offset("-12 ET", None), rim_offset("30", None)
    (30.0, -12.0, None)
    """
    match = _ET_MARK.fullmatch(plain_number_text(entry)) if isinstance(entry, str) else None
    if match is None:
        return None
    assert isinstance(entry, str)
    return parse(match["behind"] or match["before"], "length", "metric", shown=entry, example="ET30")


Reader = Callable[[object, Units | None], float | None]
RIM_READERS: dict[str, Reader] = {"rim width": rim_width, "rim diameter": rim_diameter, "rim offset": rim_offset}
"""By the name a question gives as its mark."""
