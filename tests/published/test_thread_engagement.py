"""Least thread engagement, bolt and nut of equal strength, in.

FED-STD-H28 figures as a reference site for units and sizes prints them; formula (14) of FED-STD-H28/2B (1991) gives them
again. Three further figures for a weaker hole were worked out with screw-thread-lib 0.0.6.
"""

import pytest

from rules.measure.quantity import INCH
from rules.strength.threads import least_engagement

PRINTED = {
    (1 / 4, 20): 0.173, (1 / 4, 28): 0.195, (5 / 16, 18): 0.223, (5 / 16, 24): 0.242, (3 / 8, 16): 0.269,
    (3 / 8, 24): 0.304, (7 / 16, 14): 0.31, (7 / 16, 20): 0.347, (1 / 2, 13): 0.36, (1 / 2, 20): 0.400,
    (9 / 16, 12): 0.41, (9 / 16, 18): 0.450, (5 / 8, 11): 0.45, (5 / 8, 18): 0.513, (3 / 4, 10): 0.55,
    (3 / 4, 16): 0.605, (7 / 8, 9): 0.64, (7 / 8, 14): 0.709, (1, 8): 0.73, (1, 12): 0.797,
}  # fmt: skip


@pytest.mark.parametrize("thread, printed", PRINTED.items())
def test_every_printed_size(thread: tuple[float, int], printed: float) -> None:
    size, per_inch = thread
    found = least_engagement(size * INCH, INCH / per_inch, 800.0, 800.0) / INCH
    assert found == pytest.approx(printed, rel=0.015)


@pytest.mark.parametrize("bolt, hole, engagement", [(120, 58, 0.612), (150, 58, 0.765), (120, 42, 0.845)])
def test_half_inch_fine_in_a_weaker_hole(bolt: float, hole: float, engagement: float) -> None:
    assert least_engagement(12.7, 1.27, bolt, hole) / INCH == pytest.approx(engagement, abs=0.001)
