"""Weld groups under all six loads at once, against a general library.

Figures written down from ezweld 0.2.1 (patches of 0.05, throat 1): force 800, -1200, 500 N; moment 30 000, -20 000,
45 000 N mm. It takes the middle of each patch, so it reads a little less at a corner.
"""

import pytest

from rules.strength.weld import WeldLines, greatest_force, rectangle, ring, two_lines

FORCE, MOMENT = (800.0, -1200.0, 500.0), (30_000.0, -20_000.0, 45_000.0)


@pytest.mark.parametrize(
    ("lines", "greatest"),
    [(two_lines(80.0, 60.0), 22.5845), (rectangle(80.0, 60.0), 11.7675), (ring(60.0), 18.4183)],
    ids=["two runs", "rectangle", "ring"],
)
def test_greatest_force_on_a_unit_of_weld(lines: WeldLines, greatest: float) -> None:
    assert greatest_force(lines, FORCE, MOMENT) == pytest.approx(greatest, rel=5e-4)
