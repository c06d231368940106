"""Gere, Mechanics of Materials: pins, a hanger, and a shaft pulled and twisted.

Figures read in a public collection of textbook examples worked by students, and recomputed: example 1.5 p. 36, 1.7 p. 42,
1.8 p. 46, 8.4 p. 570. The figure of 1.8 is from memory; it reproduces the pin's force.
"""

from math import hypot, pi

import pytest

from rules.strength.pins import bearing_stress, lug_limits, shear_stress
from rules.strength.section import flat_plate, round_bar
from rules.strength.stress import SectionLoads, section_stress, von_mises


def test_example_1_5_a_strut_on_a_pin() -> None:
    # 12 kip, 0.75 in pin in double shear, strut walls 0.375, gussets 0.625 in: 21.3, 13.6, 12.8 ksi
    assert bearing_stress(12.0, 0.75, 2 * 0.375) == pytest.approx(21.3, abs=0.05)
    assert shear_stress(12.0, 0.75, 2) == pytest.approx(13.6, abs=0.05)
    assert bearing_stress(12.0, 0.75, 2 * 0.625) == pytest.approx(12.8, abs=0.05)


def test_example_1_7_the_bolt_of_a_hanger_governs() -> None:
    # strap 1.5 x 0.5 in: 12 000 lb at 16 ksi
    assert section_stress(flat_plate(1.5, 0.5), SectionLoads(axial=12_000.0)) == pytest.approx(16_000.0)
    # 1 in bolt in double shear at 6.5 ksi: 10 210 lb; bearing at 26 ksi on 0.5 in: 13 000 lb
    assert shear_stress(10_210.0, 1.0, 2) == pytest.approx(6500.0, rel=1e-3)
    assert bearing_stress(13_000.0, 1.0, 0.5) == pytest.approx(26_000.0)
    # 3 in wide, hole 1 in: 11 000 lb at 11 ksi on what is left beside the hole
    assert lug_limits(11_000.0, 11_000.0, 1.5, 1.0, 0.5)["metal beside the hole"] == pytest.approx(1.0)
    bolt = 6500 / shear_stress(1.0, 1.0, 2)
    assert bolt == pytest.approx(10_210.0, abs=1.0) and bolt < 11_000


def test_example_1_8_a_pin_by_its_shear() -> None:
    # Bar 3 m from the pin to the rod's end, 2700 N at 0.8 and at 2.6 m from the pin; the rod's other end 2 m above the pin.
    # Level 2700 x (0.8 + 2.6)/2 = 4590 N; upright 2700 x (2.2 + 0.4)/3 = 2340 N. At 45 MPa in double shear: 8.537 mm
    assert hypot(2700 * 3.4 / 2, 2700 * 2.6 / 3) == pytest.approx(5152.06, abs=0.005)
    assert shear_stress(5152.06, 8.537, 2) == pytest.approx(45.0, rel=1e-3)


def test_example_8_4_a_shaft_pulled_and_twisted() -> None:
    # 50 mm, 125 kN, 2400 N m: principal 134.666 and -71.004 MPa, of which von Mises follows by another formula
    bar = round_bar(50.0)
    pull, twist = 125_000 / bar.area, 2_400_000 / bar.torsion_modulus
    middle, radius = pull / 2, ((pull / 2) ** 2 + twist**2) ** 0.5
    assert middle + radius == pytest.approx(134.666, abs=0.01)
    assert middle - radius == pytest.approx(-71.004, abs=0.01)
    assert radius == pytest.approx(102.835, abs=0.01)
    by_principal = (134.666**2 + 134.666 * 71.004 + 71.004**2) ** 0.5
    assert section_stress(bar, SectionLoads(axial=125_000, twist=2_400_000)) == pytest.approx(by_principal, abs=0.02)
    assert von_mises(pull, 0, twist) == pytest.approx(180.938, abs=0.01)
    assert pull == pytest.approx(125_000 / (pi * 625), rel=1e-12)
