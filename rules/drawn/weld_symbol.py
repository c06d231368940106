"""Weld symbols as lines and words, by AWS A2.4 on inch sheets and by ISO 2553 (system A) on metric ones; both from memory.

The reference line runs level through the origin, which is where the arrow meets it; the arrow points left and down. Size
stands left of the symbol, length of one run right of it. In words beside it stands the same, for whoever reads no symbols.
"""

from math import cos, radians, sin

from rules.drawn.full_size.shapes import PaperCircle, PaperItem, PaperWords, Stroke, words_width
from rules.measure.quantity import Units

_SIDE = 3.4
"""mm, side of the fillet's triangle."""
_HIGH = _SIDE + 0.4


def weld_symbol(form: str, leg: str, run: str, units: Units) -> tuple[PaperItem, ...]:
    """The symbol of a weld of this form; empty where the form is not known."""
    if not form:
        return ()
    leg, run = (_bare(length, units) for length in (leg, run))
    size = (f"z {leg}" if units == "metric" else leg) if leg and form != "full bevel" else ""
    before = 3.0 + (words_width(size) if size else 0.0)
    after = before + _SIDE + 1.0
    end = after + (words_width(run) + 1.0 if run else 2.0)
    all_round = "round" in form
    items: list[PaperItem] = [
        Stroke(((0.0, 0.0), (end, 0.0)), "thin"),
        Stroke(((0.0, 0.0), (-6.0, -5.0)), "thin"),
        _arrowhead(),
    ]
    if all_round:
        items.append(PaperCircle((0.0, 0.0), 1.4, "thin"))
    sides = (1, -1) if form == "fillet on both sides" else (1,) if units == "metric" else (-1,)
    if units == "metric" and len(sides) == 1:
        items.append(Stroke(((0.0, -1.0), (end, -1.0)), "hidden"))
    for side in sides:
        items.append(_sign(form, before, side))
        middle = side * 0.55 * _HIGH
        if size:
            items.append(PaperWords((before - 0.8, middle), size, "right"))
        if run and "round" not in form:
            items.append(PaperWords((after, middle), run))
    return tuple(items)


def _bare(length: str, units: Units) -> str:
    """Both standards write figures without their unit, which the drawing says once."""
    return length.removesuffix(" in" if units == "inch" else " mm")


def _sign(form: str, left: float, side: int) -> Stroke:
    """The triangle of a fillet, its upright leg at the left; or the two lines of a bevel."""
    if form == "full bevel":
        return Stroke(((left, side * _SIDE), (left, 0.0), (left + _SIDE, side * _SIDE)), "thin")
    return Stroke(((left, 0.0), (left, side * _SIDE), (left + _SIDE, 0.0)), "thin", closed=True)


def _arrowhead() -> Stroke:
    turn = radians(180 + 39.8)
    tip = (-6.0, -5.0)
    back = (tip[0] - 2.4 * cos(turn), tip[1] - 2.4 * sin(turn))
    aside = (-0.5 * sin(turn), 0.5 * cos(turn))
    return Stroke(
        (tip, (back[0] + aside[0], back[1] + aside[1]), (back[0] - aside[0], back[1] - aside[1])), "thin", True, True
    )
