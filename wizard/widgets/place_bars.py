"""Travel and lock as two bars in one line: how far each has gone of what it can."""

from textual.content import Content

from rules.drawn.moving.scene import Moving, TravelAndLock
from wizard.desk.words import plain

LONGEST, SHORTEST = 41, 9
"""Cells of one bar."""
_WORDS = "droop   bump   left   right"
"""What stands at the ends, with the blanks round it, as it takes room from the bars."""


def place_bars(front: Moving, place: TravelAndLock, width: int, *, plain_only: bool = False) -> Content:
    """Both bars, or the one of what moves, in at most `width` cells where the shortest fit. Left lock is at the left.

    plain_only: for a terminal with few characters.
    """
    each = (width - len(_WORDS)) // 2 if front.travels and front.steers else width - len("droop  bump")
    cells = max(SHORTEST, min(LONGEST, each))
    bars = []
    if front.travels:
        middle = front.droop / (front.droop + front.bump) if front.droop + front.bump > 0 else 0.5
        share = (place.travel + front.droop) / (front.droop + front.bump) if front.droop + front.bump > 0 else 0.5
        bars.append(_bar("droop", "bump", share, middle, cells, plain_only))
    if front.steers:
        bars.append(_bar("left", "right", (1 - place.lock) / 2, 0.5, cells, plain_only))
    return Content("   ").join(bars)


def _bar(low: str, high: str, share: float, middle: float, cells: int, plain_only: bool) -> Content:
    """A bar from 0 to 1, its rest position, a mark where it stands, and what lies between filled."""
    left, line, full, right, rest, here = "|-=|+O" if plain_only else "├─━┤┼●"
    at, home = (round(part * (cells - 1)) for part in (share, middle))
    signs = [line] * cells
    signs[0], signs[-1] = left, right
    signs[home] = rest
    for between in range(min(at, home), max(at, home) + 1):
        signs[between] = full
    signs[home], signs[at] = rest, here
    return Content.assemble(
        plain(f"{low} ", "$foreground 65%"),
        plain("".join(signs[:at]), "$foreground 65%"),
        plain(signs[at], "bold $text-accent"),
        plain("".join(signs[at + 1 :]), "$foreground 65%"),
        plain(f" {high}", "$foreground 65%"),
    )
