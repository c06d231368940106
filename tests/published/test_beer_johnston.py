"""Beer, Johnston and DeWolf, Mechanics of Materials: a box beam and two pin joints.

Figures read in a public collection of textbook examples worked by students (it takes 22/7 for pi), and recomputed:
sample problem 4.1 p. 235, example 1.3 p. 34, example 1.4 p. 35.
"""

import pytest

from rules.strength.pins import bearing_stress, shear_stress
from rules.strength.section import hollow_rectangle


def test_sample_problem_4_1_a_box_beam() -> None:
    # 3.25 x 5 x 0.25 in; ultimate 60 ksi, factor 3: I 12.97 in4, M 103.8 kip in, radius 110.4 ft at 10.6e6 psi
    box = hollow_rectangle(3.25, 5.0, 0.25)
    assert box.inertia_u == pytest.approx(12.97, abs=0.005)
    moment = 60 / 3 * box.modulus_u
    assert moment == pytest.approx(103.8, abs=0.05)
    assert 10.6e3 * box.inertia_u / moment / 12 == pytest.approx(110.4, abs=0.1)


def test_example_1_3_a_pin_and_a_bracket() -> None:
    # 76.32 kN; pin in double shear at 350/3.3 MPa: 21.40 mm; bracket bearing at 300 MPa on 22 mm, two plates: 5.78 mm
    assert shear_stress(76_320.0, 21.40, 2) == pytest.approx(350 / 3.3, rel=1e-3)
    assert bearing_stress(76_320.0, 22.0, 2 * 5.78) == pytest.approx(300.0, rel=1e-3)


def test_example_1_3_single_shear_would_not_do() -> None:
    assert shear_stress(76_320.0, 21.40, 1) > 2 * 350 / 3.3 * 0.999
