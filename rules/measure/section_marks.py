"""Sizes of stock by name: `1 3/4 x 0.120 tube`, `45 x 3 mm tube`, `3 x 2 x 1/4 box`, `2 x 1/2 flat bar`.

How steel yards and shops name stock: outside first, wall or thickness last. Common practice, no source.
"""

import re

from rules.measure.patterns import Pattern
from rules.measure.quantity import Units, parse, plain_number_text

_SIZE = r"\.?\d[\d ./,-]*?(?:\s*(?:in|mm|cm|\"))?"
_FORM = r"(?P<form>round tube|tube|box|channel|flat bar|flat|bar)"
_MADE = r"(?:dom|erw|hrew|cds|seamless)"
"""How a tube was made, as its name has it: drawn over a mandrel, resistance welded, cold drawn seamless."""
_MARK = Pattern(
    rf"(?P<one>{_SIZE})\s*[x×]\s*(?P<two>{_SIZE})(?:\s*[x×]\s*(?P<three>{_SIZE}))?(?:\s*wall)?(?:\s*{_MADE})?\s*{_FORM}?",
    re.ASCII | re.IGNORECASE,
)
_UNIT = Pattern(r"(?:in|mm|cm|\")$", re.IGNORECASE)


def read_section(entry: object, units: Units | None) -> tuple[float, ...] | None:
    """The sizes that the name of a piece of stock holds, mm, outside first; None where the entry is no such name.

    A unit behind the last size holds for all; fractions are inches. Raises EntryError for a slip in one.

    >>> [round(size, 3) for size in read_section("1 3/4 x 0.120 tube", "inch")], read_section("45 x 3 mm", "inch")
    ([44.45, 3.048], (45.0, 3.0))
    >>> read_section("1 3/4 in", "inch") is None
    True
    """
    text = plain_number_text(entry) if isinstance(entry, str) else ""
    match = _MARK.fullmatch(text)
    if match is None:
        return None
    sizes = [size.strip() for size in match.group("one", "two", "three") if size]
    last = _UNIT.search(sizes[-1])
    # No stock is named in fractions of a millimetre.
    unit = last[0] if last else "in" if units == "metric" and "/" in text else ""
    return tuple(
        parse(
            _whole(size) if _UNIT.search(size) or not unit else f"{_whole(size)} {unit}",
            "length",
            units,
            shown=str(entry),
            example="1 3/4 x 0.120 tube",
        )
        for size in sizes
    )


def _whole(size: str) -> str:
    """With the nought that shops leave out: `.120`."""
    return f"0{size}" if size.startswith(".") else size


def section_outside(entry: object, units: Units | None) -> float | None:
    """The first of them, mm: outside of a tube, width of a box or bar."""
    sizes = read_section(entry, units)
    return sizes[0] if sizes else None
