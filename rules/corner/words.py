"""Where two parts come nearest, and what to do about it, in words."""

from math import degrees

from rules.corner.room import BetweenTwo
from rules.measure.vectors import minus
from rules.motion.place_words import PlaceFigures, place

NEAR_SPINDLE = 5.0
"""mm from the wheel's axis: no clock position there."""


def clock(angle: float) -> str:
    """A place round the clock, the left wheel seen from outside, so that 9 is straight ahead. angle: rad from up, plus ahead.

    >>> from math import radians
    >>> clock(0.0), clock(radians(90)), clock(radians(-60))
    ("12 o'clock", "9 o'clock", "2 o'clock")
    """
    hour = round(-degrees(angle) / 30) % 12
    return f"{hour or 12} o'clock"


def where(pair: BetweenTwo) -> tuple[str, PlaceFigures]:
    """Where the pair comes nearest, and the figures in the words.

    The clock is that of the left wheel seen from outside; inboard is counted from the tyre's centre plane.
    """
    outboard = pair.on_other[1]
    figures: PlaceFigures = {"out": (pair.from_spindle, "mm"), "in": (abs(outboard), "mm")}
    inboard = f"{{in}} {'outboard' if outboard > 0 else 'inboard'} of the tyre's middle"
    if pair.from_spindle > NEAR_SPINDLE:
        words = f"at {clock(pair.clock)} (left wheel from outside), {{out}} from the wheel's axis, {inboard}"
    else:
        words = f"on the wheel's axis, {inboard}"
    if pair.everywhere:
        return words, figures
    moved, more = place(pair.travel, pair.lock)
    return f"{words}, {moved}", figures | more


def inside(pair: BetweenTwo) -> str:
    """How a text begins to say how deep two parts are in one another: nothing, or that it may be more."""
    return "" if pair.exact else "at least "


def way(pair: BetweenTwo) -> str:
    """Which way the part that does not turn has to go for more room: along the wheel's axis, or to or from it where one turns.

    Where neither turns it is the second of the two.

    >>> from rules.corner.part import Part
    >>> from rules.solids.shapes import Ball
    >>> ball = Part("ball", "upright", (Ball((0.0, 0.0, 0.0), 1.0),))
    >>> way(BetweenTwo("a", "b", (ball, ball), 3.0, on_one=(0.0, 0.0, 0.0), on_other=(0.0, -3.0, 0.5)))
    'inboard'
    """
    apart = minus(pair.on_other, pair.on_one)
    if (pair.gap or 0.0) < 0:
        apart = minus(pair.on_one, pair.on_other)
    if not pair.turns or pair.from_spindle < NEAR_SPINDLE:
        axis = max(range(3), key=lambda i: abs(apart[i]))
        return (("forward", "to the rear"), ("outboard", "inboard"), ("up", "down"))[axis][apart[axis] < 0]
    outward = (apart[0] * pair.on_other[0] + apart[2] * pair.on_other[2]) / pair.from_spindle
    if abs(outward) < abs(apart[1]):
        return "outboard" if apart[1] > 0 else "inboard"
    return "away from the wheel's axis" if outward > 0 else "towards the wheel's axis"
