"""A machinery maker's torque table, plain finish, lbf ft: K = 0.20 at 75 % of yield (57, 92, 130 ksi).

Printed 43, 69, 98 ksi. 7/16-24 and 5/8-14 in the same manual are misprints and left out.
"""

import pytest

from rules.measure.quantity import INCH
from rules.strength.bolts import tightening_torque
from rules.strength.threads import stress_area
from rules.tables.bolt_grades import bolt_strength
from rules.tables.electrodes import KSI

PRINTED = {
    (1 / 4, 20): (6, 9, 13), (5 / 16, 18): (12, 19, 27), (3 / 8, 16): (21, 33, 47), (3 / 8, 24): (24, 38, 54),
    (1 / 2, 13): (51, 82, 116), (1 / 2, 20): (57, 92, 131), (5 / 8, 11): (101, 162, 231), (3 / 4, 10): (180, 288, 409),
    (3 / 4, 16): (200, 322, 457),
}  # fmt: skip


@pytest.mark.parametrize("thread, row", PRINTED.items())
@pytest.mark.parametrize("column, grade", [(0, "grade 2"), (1, "grade 5"), (2, "grade 8")])
def test_the_printed_torques(thread: tuple[float, int], row: tuple[int, int, int], column: int, grade: str) -> None:
    size, per_inch = thread
    strength = bolt_strength(grade, size * INCH)
    assert strength is not None
    pounds = 0.75 * strength.yields / KSI * 1000 * stress_area(size * INCH, INCH / per_inch) / INCH**2
    assert tightening_torque(0.20, size, pounds) / 12 == pytest.approx(row[column], rel=0.02, abs=0.6)
