"""The two searches of this part: the bottom of a valley, and the last place at which something still holds."""

from collections.abc import Callable
from math import sqrt

GOLDEN = (sqrt(5) - 1) / 2
HALVINGS = 40
"""From a metre down to a thousand-millionth of a millimetre."""


def golden(function: Callable[[float], float], low: float, high: float, close: float) -> float:
    """Where a function with one valley between two places is least, to `close`, by golden section.

    Each step keeps 0.618 of the stretch and one of the two looks. (x - 2)^2 is least at 2.

    >>> round(golden(lambda x: (x - 2) ** 2, 0.0, 5.0, 1e-6), 5)
    2.0
    """
    left, right = high - GOLDEN * (high - low), low + GOLDEN * (high - low)
    at_left, at_right = function(left), function(right)
    while abs(high - low) > close:
        if at_left < at_right:
            high, right, at_right = right, left, at_left
            left = high - GOLDEN * (high - low)
            at_left = function(left)
        else:
            low, left, at_left = left, right, at_right
            right = low + GOLDEN * (high - low)
            at_right = function(right)
    return left if at_left < at_right else right


def last_that_holds(holds: Callable[[float], bool], within: float, past: float, halvings: int = HALVINGS) -> float:
    """The last place, on the way from one that holds to one past it that does not, by halving what lies between.

    4^2 is the last square that is no more than 16.

    >>> round(last_that_holds(lambda x: x * x <= 16, 0.0, 10.0), 9)
    4.0
    """
    for _ in range(halvings):
        middle = (within + past) / 2
        within, past = (middle, past) if holds(middle) else (within, middle)
    return within
