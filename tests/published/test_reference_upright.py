"""A worked upright, lower arm sprung, W = 4000 N.

Source: worked out for this project with numpy and sympy, and run again here on a three-dimensional frame program, PyNiteFEA
3.2.0 (stiff upright, pinned links, lower pivot a pinned support), which gave each figure below to nine digits. It is a
reference, not a published example: no complete one was found in print.
Points in mm: lower arm's outer pivot (10, 700, 300); upper arm's inner pivots (120, 400, 560) and (-160, 400, 560), outer
(-15, 660, 590); tie rod (-120, 360, 380) to (-130, 690, 370); contact (0, 780, 0). Links: plus when pulled.
"""

import numpy as np
import pytest

from rules.measure.vectors import Vector
from rules.strength.balance import Linkage, balance, leg_forces, moment_of

UPPER = (-15.0, 660.0, 590.0)
INNER = ((120.0, 400.0, 560.0), (-160.0, 400.0, 560.0))
LEGS = [np.subtract(inner, UPPER) for inner in INNER]
ROD = np.array((-120.0, 360.0, 380.0)) - np.array((-130.0, 690.0, 370.0))
UPRIGHT = Linkage((10, 700, 300), UPPER, tuple(np.cross(*LEGS)), (-130, 690, 370), tuple(ROD))

# force on the tyre; pull in upper front leg, upper rear leg, tie rod; lower pivot
CASES = [
    ((0, 0, 4000), (-834.296296, -469.843874, 248.348039), (147.244743, -896.739237, -4139.617974)),
    ((0, 0, 12000), (-2502.888889, -1409.531621, 745.044116), (441.734231, -2690.217711, -12418.853923)),
    ((0, -4000, 4000), (1774.086638, 1860.033795, -827.826795), (113.187669, 6355.536360, -3607.713801)),
    ((-6000, -3000, 14000), (-7206.487963, 6918.512403, -1676.349260), (12707.142366, 974.660869, -13989.693555)),
]
SIZES = [(4238.191, 1162.801), (12714.572, 3488.402), (7308.984, 3204.932)]
"""Lower and upper pivot, of the first three."""


@pytest.mark.parametrize("force, links, lower", CASES)
def test_links_and_lower_pivot(force: Vector, links: Vector, lower: Vector) -> None:
    held = balance(UPRIGHT, force, moment_of(((force, (0.0, 780.0, 0.0)),)))
    front, rear = leg_forces(held.guiding, UPPER, *INNER)
    rod = np.dot(held.tie_rod, ROD) / np.linalg.norm(ROD)
    assert (front, rear, rod) == pytest.approx(links, abs=1e-5)
    assert held.carrying == pytest.approx(lower, abs=1e-5)


@pytest.mark.parametrize("case, sizes", list(zip(CASES[:3], SIZES, strict=True)))
def test_sizes_at_the_pivots(case: tuple[Vector, Vector, Vector], sizes: tuple[float, float]) -> None:
    held = balance(UPRIGHT, case[0], moment_of(((case[0], (0.0, 780.0, 0.0)),)))
    assert (np.linalg.norm(held.carrying), np.linalg.norm(held.guiding)) == pytest.approx(sizes, abs=5e-4)
