"""Least leg of a fillet weld, by the thickness of the thinner part joined.

Source: AISC 360-16, Table J2.4 (inch) and Table J2.4M (metric); one single run at the least size. It keeps the weld from
cooling too fast. It says nothing of strength or of fatigue.
"""

from rules.measure.closeness import reaches
from rules.measure.quantity import INCH, Units

INCH_ROWS = ((1 / 4, 1 / 8), (1 / 2, 3 / 16), (3 / 4, 1 / 4), (float("inf"), 5 / 16))
"""Thinner part up to and including, in: leg, in."""

METRIC_ROWS = ((6.0, 3.0), (13.0, 5.0), (19.0, 6.0), (float("inf"), 8.0))
"""Thinner part up to and including, mm: leg, mm."""


def least_leg(thinner: float, units: Units) -> float:
    """mm, for a thickness in mm, by the table written in these units.

    >>> least_leg(6.0, "metric"), least_leg(6.35, "inch")
    (3.0, 3.175)
    """
    size, rows = (INCH, INCH_ROWS) if units == "inch" else (1.0, METRIC_ROWS)
    return next(leg * size for up_to, leg in rows if reaches(up_to, thinner / size))
