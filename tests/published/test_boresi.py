"""Boresi and Schmidt, Advanced Mechanics of Materials: distortion energy, example 3 p. 124, and example 5 p. 46.

Read in a public collection of textbook examples worked by students, and recomputed. Its plate examples have nothing to
stand against here: clamped discs and panels under an even pressure are no part of an upright.
"""

import numpy as np
import pytest

from rules.strength.stress import von_mises


def test_example_3_of_page_124() -> None:
    # 100, -14, shear 50 MPa, yield 300: von Mises factor 2.17. Tresca's 1.98 is another rule and lower.
    assert 300 / von_mises(100.0, -14.0, 50.0) == pytest.approx(2.17, abs=0.005)


def test_example_5_of_page_46() -> None:
    # 80, 60, 20 with shears xy 20, xz 40, yz 10: principal 110, 50, 0; octahedral shear 44.97 is root 2/3 of von Mises
    least, middle, most = np.linalg.eigvalsh([[80.0, 20.0, 40.0], [20.0, 60.0, 10.0], [40.0, 10.0, 20.0]])
    assert (most, middle, least) == pytest.approx((110.0, 50.0, 0.0), abs=1e-9)
    assert 2**0.5 / 3 * von_mises(most, middle, 0.0) == pytest.approx(44.97, abs=0.005)
