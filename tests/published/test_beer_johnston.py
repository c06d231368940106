"""Beer, Johnston and DeWolf, Mechanics of Materials: a box beam and two pin joints.

Figures read in a public collection of textbook examples worked by students (it takes 22/7 for pi), and recomputed:
sample problem 4.1 p. 235, example 1.3 p. 34, example 1.4 p. 35. The loads of 1.3 and all inputs of 1.4 are from memory;
they reproduce every answer printed.
"""

from math import hypot

import pytest

from rules.strength.pins import bearing_stress, shear_stress
from rules.strength.section import hollow_rectangle, round_bar
from rules.strength.stress import SectionLoads, section_stress


def test_sample_problem_4_1_a_box_beam() -> None:
    # 3.25 x 5 x 0.25 in; ultimate 60 ksi, factor 3: I 12.97 in4, M 103.8 kip in, radius 110.4 ft at 10.6e6 psi
    box = hollow_rectangle(3.25, 5.0, 0.25)
    assert box.inertia_u == pytest.approx(12.97, abs=0.005)
    moment = 60 / 3 * box.modulus_u
    assert moment == pytest.approx(103.8, abs=0.05)
    assert 10.6e3 * box.inertia_u / moment / 12 == pytest.approx(110.4, abs=0.1)


def test_example_1_3_the_rod_and_the_pin_s_load() -> None:
    # 50 kN at 300 mm and 15 kN at 600 mm, held by the rod 600 mm off: 40 kN; pin hypot(40, 65) = 76.32 kN.
    # Ultimate 600 MPa, factor 3.3: 16.74 mm
    rod = (50.0 * 300 + 15.0 * 600) / 600
    assert rod == pytest.approx(40.0)
    assert hypot(rod, 65.0) == pytest.approx(76.32, abs=0.005)
    assert section_stress(round_bar(16.74), SectionLoads(axial=1000 * rod)) == pytest.approx(600 / 3.3, rel=1e-3)


def test_example_1_3_a_pin_and_a_bracket() -> None:
    # 76.32 kN; pin in double shear at 350/3.3 MPa: 21.40 mm; bracket bearing at 300 MPa on 22 mm, two plates: 5.78 mm
    assert shear_stress(76_320.0, 21.40, 2) == pytest.approx(350 / 3.3, rel=1e-3)
    assert bearing_stress(76_320.0, 22.0, 2 * 5.78) == pytest.approx(300.0, rel=1e-3)


def test_example_1_3_single_shear_would_not_do() -> None:
    assert shear_stress(76_320.0, 21.40, 1) > 2 * 350 / 3.3 * 0.999


# Rigid beam held at C, force C = 1.750 B = 2.333 D. Rod AB 7/16 in at 60 ksi, bolts at B and D 3/8 in, at C 1/2 in, in
# double shear at 40 ksi, factor 3
LIMITS = [("rod AB", 5.26), ("bolt at B", 5.16), ("bolt at D", 6.87), ("bolt at C", 5.24)]


def kips_at_c(limit: str) -> float:
    if limit == "rod AB":
        return 1.750 * 60 / 3 / section_stress(round_bar(7 / 16), SectionLoads(axial=1.0))
    diameter, lever = {"bolt at B": (3 / 8, 1.750), "bolt at D": (3 / 8, 2.333), "bolt at C": (1 / 2, 1.0)}[limit]
    return lever * 40 / 3 / shear_stress(1.0, diameter, 2)


@pytest.mark.parametrize(("limit", "printed"), LIMITS)
def test_example_1_4_four_limits_of_one_joint(limit: str, printed: float) -> None:
    assert kips_at_c(limit) == pytest.approx(printed, abs=0.006)  # 5.154 by exact arithmetic stands printed as 5.16


def test_example_1_4_the_bolt_at_b_governs() -> None:
    assert min((limit for limit, _ in LIMITS), key=kips_at_c) == "bolt at B"
