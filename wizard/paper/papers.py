"""Papers by name or by size."""

import re

from rules.graph.asking import printable
from rules.measure.quantity import EntryError, parse

PAPERS: dict[str, tuple[float, float]] = {
    "letter": (215.9, 279.4),
    "a4": (210.0, 297.0),
    "legal": (215.9, 355.6),
    "tabloid": (279.4, 431.8),
    "a3": (297.0, 420.0),
    "a2": (420.0, 594.0),
    "a1": (594.0, 841.0),
    "a0": (841.0, 1189.0),
}
"""Width and height in mm, upright. ISO 216 and ANSI/ASME Y14.1 sizes."""

SMALLEST_PAPER, LARGEST_PAPER = 210.0, 5000.0
"""mm: the check bars and the margins need the one, PDF readers end near the other."""


def paper_size(text: str) -> tuple[float, float]:
    """Width and height of a paper in mm, from its name or from its size with a unit ("500x700 mm", "11 in x 17 in").

    Raises EntryError with what would be right, also for a size outside 210 to 5000 mm.
    """
    name = text.strip().lower()
    if name in PAPERS:
        return PAPERS[name]
    wanted = f"a paper is one of {', '.join(PAPERS)}, or a width and height with their unit such as 500x700 mm"
    first, cross, second = re.sub(r"[*×]", "x", name).partition("x")
    if not cross or not second.strip() or len(name) > 80:
        raise EntryError(f"“{printable(text)[:40]}” is not a paper known here; {wanted}")
    if not re.search(r"[^\d\s./,-]", first):
        first += re.sub(r"^[\d\s./,-]+", " ", second.strip())
    try:
        width, height = (parse(side, "length", None) for side in (first, second))
    except EntryError as fault:
        raise EntryError(f"“{printable(text)[:40]}” is not a paper known here: {fault}; {wanted}") from None
    if not all(SMALLEST_PAPER <= side <= LARGEST_PAPER for side in (width, height)):
        raise EntryError(
            f"“{printable(text)[:40]}”: each side must be {SMALLEST_PAPER:g} to {LARGEST_PAPER:g} mm; {wanted}"
        )
    return width, height
