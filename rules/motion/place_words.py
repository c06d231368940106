"""The one wording for a place in travel and lock: words, and the figures that stand in their braces."""

from rules.measure.quantity import Units
from rules.measure.said import OneFigure, filled
from rules.motion.sweep import Worst

PlaceFigures = dict[str, OneFigure]
Words = tuple[str, PlaceFigures]
STRAIGHT = "straight ahead"


def side(travel: float) -> str:
    """Which way the wheel has gone from ride height. travel: mm, up positive, not nought.

    >>> side(110.0), side(-90.0)
    ('bump', 'droop')
    """
    return "bump" if travel > 0 else "droop"


def height(travel: float) -> Words:
    """Words for a travel, mm, up positive.

    >>> height(-90.0)
    ('{travel_there} droop', {'travel_there': (90.0, 'mm')})
    >>> height(0.0)[0]
    'ride height'
    """
    return f"{{travel_there}} {side(travel)}" if travel else "ride height", {"travel_there": (abs(travel), "mm")}


def turned(lock: float) -> Words:
    """Words for how far the wheels are turned, the side left open. lock: 1 full left, -1 full right.

    >>> turned(-1.0)[0], turned(0.5), turned(0.0)[0]
    ('full lock', ('{lock_there} lock', {'lock_there': (0.5, 'share')}), 'straight ahead')
    """
    words = "full lock" if abs(lock) == 1 else "{lock_there} lock" if lock else STRAIGHT
    return words, {"lock_there": (round(abs(lock), 2), "share")}


def place(travel: float, lock: float) -> Words:
    """Words for a travel, mm, up positive, and a lock of the left wheel, 1 full left.

    >>> place(110.0, -1.0)[0], place(0.0, 0.5)[0], place(0.0, 0.0)[0]
    ('{travel_there} bump, full lock, outer wheel', 'ride height, {lock_there} lock, inner wheel', 'ride height, straight ahead')
    """
    (high, travelled), (steered, locked) = height(travel), turned(lock)
    wheel = f", {'inner' if lock > 0 else 'outer'} wheel" if lock else ""
    return f"{high}, {steered}{wheel}", travelled | locked


def where(worst: float) -> Words:
    """Words for where in travel and lock a worst was found.

    >>> where(Worst(0.3, 110.0, 0.0))[0], where(0.3)[0]
    ('at {travel_there} bump, straight ahead', 'somewhere in the travel')
    """
    if not isinstance(worst, Worst):
        return "somewhere in the travel", {}
    words, figures = place(worst.travel, worst.lock)
    return f"at {words}", figures


def in_units(words: Words, units: Units) -> str:
    """Such words with their figures in one unit system.

    >>> in_units(place(-50.8, 0.5), "inch"), in_units(height(110.0), "metric")
    ('2 in droop, 50 % lock, inner wheel', '110 mm bump')
    """
    text, figures = words
    return filled(text, figures, units)
