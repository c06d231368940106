"""Boresi and Schmidt, Advanced Mechanics of Materials: distortion energy, example 3 p. 124.

Read in a public collection of textbook examples worked by students, and recomputed. Its plate examples have nothing to
stand against here: no plate formula is used.
"""

import pytest

from rules.strength.stress import von_mises


def test_example_3_of_page_124() -> None:
    # 100, -14, shear 50 MPa, yield 300: von Mises factor 2.17. Tresca's 1.98 is another rule and lower.
    assert 300 / von_mises(100.0, -14.0, 50.0) == pytest.approx(2.17, abs=0.005)
