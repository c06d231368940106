"""Words for a place in travel and lock, for the checks that say where a worst was found. No check stands here."""

from rules.motion.sweep import Worst

Figures = dict[str, tuple[float, str]]


def side(travel: float) -> str:
    """Which way the wheel has gone from ride height. travel: mm, up positive, not nought.

    >>> side(110.0), side(-90.0)
    ('bump', 'droop')
    """
    return "bump" if travel > 0 else "droop"


def height(travel: float) -> tuple[str, Figures]:
    """Words for a travel, mm, and the figures in them.

    >>> height(-90.0)
    ('{travel_there} droop', {'travel_there': (90.0, 'mm')})
    >>> height(0.0)[0]
    'ride height'
    """
    return f"{{travel_there}} {side(travel)}" if travel else "ride height", {"travel_there": (abs(travel), "mm")}


def place(travel: float, lock: float) -> tuple[str, Figures]:
    """Words for a travel, mm, and a lock of the left wheel, and the figures in them.

    >>> place(110.0, -1.0)[0]
    'at {travel_there} bump and full lock, on the outer wheel'
    >>> place(0.0, 0.5)[0]
    'at ride height and {lock_there} of full lock, on the inner wheel'
    """
    words, figures = height(travel)
    figures["lock_there"] = (abs(lock), "share")
    if not lock:
        return f"at {words}, wheels straight", figures
    turned = "full lock" if abs(lock) == 1 else "{lock_there} of full lock"
    wheel = "inner" if lock > 0 else "outer"
    return f"at {words} and {turned}, on the {wheel} wheel", figures


def where(worst: float) -> tuple[str, Figures]:
    """Words for where in travel and lock a worst was found, and the figures in them.

    >>> where(Worst(0.3, 110.0, 0.0))[0], where(0.3)[0]
    ('at {travel_there} bump, wheels straight', 'somewhere in the travel')
    """
    return place(worst.travel, worst.lock) if isinstance(worst, Worst) else ("somewhere in the travel", {})
