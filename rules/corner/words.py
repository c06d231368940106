"""Where two parts come nearest, and what to do about it, in words."""

from math import degrees

from rules.corner.room import Between
from rules.measure.vectors import Vector, minus
from rules.motion.place_words import Figures, place

NEAR_SPINDLE = 5.0
"""mm from the spindle's line: no clock position there."""


def clock(angle: float) -> str:
    """A place round the clock, the left wheel seen from outside, so that 9 is straight ahead. angle: rad from up, plus ahead.

    >>> from math import radians
    >>> clock(0.0), clock(radians(90)), clock(radians(-60))
    ("12 o'clock", "9 o'clock", "2 o'clock")
    """
    hour = round(-degrees(angle) / 30) % 12
    return f"{hour or 12} o'clock"


def where(pair: Between) -> tuple[str, Figures]:
    """Where the pair comes nearest, and the figures in the words.

    The clock is that of the left wheel seen from outside; inboard is counted from the tyre's centre plane.
    """
    ahead, outboard, above = pair.on_other
    figures: Figures = {"out": (pair.from_spindle, "mm"), "in": (abs(outboard), "mm")}
    side = "outboard" if outboard > 0 else "inboard"
    if pair.from_spindle > NEAR_SPINDLE:
        words = f"at {clock(pair.clock)} (left wheel from outside), {{out}} from the spindle's line, {{in}} {side} of the tyre's middle"
    else:
        words = f"on the spindle's line, {{in}} {side} of the tyre's middle"
    if pair.everywhere:
        return words, figures
    moved, more = place(pair.travel, pair.lock)
    return f"{words}, {moved}", figures | more


def way(pair: Between) -> str:
    """Which way the second part of a pair has to go from the first for more room, in words of one direction.

    >>> from rules.corner.part import Part
    >>> from rules.solids.shapes import Ball
    >>> ball = Part("ball", "upright", (Ball((0.0, 0.0, 0.0), 1.0),))
    >>> way(Between("a", "b", (ball, ball), 3.0, on_one=(0.0, 0.0, 0.0), on_other=(0.0, -3.0, 0.5)))
    'inboard'
    """
    apart = minus(pair.on_other, pair.on_one)
    if (pair.gap or 0.0) < 0:
        apart = minus(pair.on_one, pair.on_other)
    return _direction(apart)


def _direction(v: Vector) -> str:
    axis = max(range(3), key=lambda i: abs(v[i]))
    return (("forward", "to the rear"), ("outboard", "inboard"), ("up", "down"))[axis][v[axis] < 0]


def opposite(direction: str) -> str:
    """The other way.

    >>> opposite("inboard")
    'outboard'
    """
    pairs = (("forward", "to the rear"), ("outboard", "inboard"), ("up", "down"))
    return next(two[1 - two.index(direction)] for two in pairs if direction in two)
