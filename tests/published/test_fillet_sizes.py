"""Least sizes of fillet welds.

Source: AISC 360-16, Table J2.4 and J2.4M, typed in again from its text: by the thinner part joined.
"""

import pytest

from rules.tables.fillet_size import least_leg

INCH = 25.4


@pytest.mark.parametrize(
    ("thinner", "leg"),
    [
        (0.125, 0.125),
        (0.25, 0.125),
        (0.26, 0.1875),
        (0.5, 0.1875),
        (0.51, 0.25),
        (0.75, 0.25),
        (0.76, 0.3125),
        (2.0, 0.3125),
    ],
)
def test_inch_table(thinner: float, leg: float) -> None:
    assert least_leg(thinner * INCH, "inch") == pytest.approx(leg * INCH)


@pytest.mark.parametrize(
    ("thinner", "leg"), [(3, 3), (6, 3), (6.1, 5), (13, 5), (13.1, 6), (19, 6), (19.1, 8), (50, 8)]
)
def test_metric_table(thinner: float, leg: float) -> None:
    assert least_leg(thinner, "metric") == pytest.approx(leg)
