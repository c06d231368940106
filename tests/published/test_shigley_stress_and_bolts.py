"""Shigley's Mechanical Engineering Design: combined stress and a bolted joint.

9th ed. Example 5-1 p. 227, 5-3 p. 233, 5-4 p. 233-234 and 8-3 seen on stored pages; the inputs of 5-1 are from memory and
were recomputed. Table 8-2 (from ANSI B1.1-1974) and Table 8-15 read likewise. The torque of 8-3 (b) was not seen: it is the
book's T = K d F by hand, on the book's inputs.
"""

from math import pi

import pytest

from rules.measure.quantity import INCH
from rules.strength.bolts import WRENCH, Clamped, clamp_limits, least_preload, pull_and_shear_stress, tightening_torque
from rules.strength.section import round_bar, round_tube
from rules.strength.stress import SectionLoads, section_stress, von_mises
from rules.strength.threads import root_diameter, stress_area
from rules.tables.bolt_grades import bolt_strength
from rules.tables.electrodes import KSI
from rules.tables.torque_factors import TORQUE_FACTOR


@pytest.mark.parametrize(
    "stress, factor", [((70, 70, 0), 1.43), ((60, 40, -15), 1.70), ((0, 40, 45), 1.14), ((-40, -60, 15), 1.70)]
)
def test_example_5_1_distortion_energy(stress: tuple[float, float, float], factor: float) -> None:
    assert 100 / von_mises(*stress) == pytest.approx(factor, abs=0.005)


def test_example_5_3_a_bar_bent_and_twisted() -> None:
    # 1 in bar, F at arms of 14 and 15 in: 142.6 F and 76.4 F; von Mises 194.5 F; F = 416 lbf at 81 kpsi
    bar = round_bar(1.0)
    assert section_stress(bar, SectionLoads(moment_u=14.0)) == pytest.approx(142.6, abs=0.05)
    assert section_stress(bar, SectionLoads(twist=15.0)) / 3**0.5 == pytest.approx(76.4, abs=0.05)
    both = section_stress(bar, SectionLoads(moment_u=14.0, twist=15.0))
    assert both == pytest.approx(194.5, abs=0.1)
    assert 81_000 / both == pytest.approx(416, abs=1)


@pytest.mark.parametrize("wall, stress, factor", [(5.0, 60.43, 4.57), (4.0, 71.05, 3.88)])
def test_example_5_4_a_tube_pulled_bent_and_twisted(wall: float, stress: float, factor: float) -> None:
    # 42 mm tube, 1.75 kN at 120 mm, 9 kN, 72 N m, 276 MPa; at the point looked at the shear of 1.75 kN is nought
    loads = SectionLoads(axial=9000.0, moment_u=1750.0 * 120, twist=72_000.0)
    found = section_stress(round_tube(42.0, wall), loads)
    assert found == pytest.approx(stress, abs=0.01)
    assert 276 / found == pytest.approx(factor, abs=0.006)


def test_example_8_3_preload_and_torque_of_a_grade_5_bolt() -> None:
    # 3/4-16, 25 kip: 67.02 kpsi, 21 % under proof; T = 0.20 x 25 000 x 0.75 = 3750 lbf in
    area = stress_area(0.75 * INCH, INCH / 16) / INCH**2
    assert area == pytest.approx(0.373, abs=0.0005)
    assert 25 / area == pytest.approx(67.02, abs=0.06)
    strength = bolt_strength("grade 5", 0.75 * INCH)
    assert strength is not None
    assert strength.proof / KSI == pytest.approx(85.0)
    assert 1 - 67.02 / (strength.proof / KSI) == pytest.approx(0.21, abs=0.005)
    assert tightening_torque(TORQUE_FACTOR["zinc plated"], 0.75, 25_000.0) == pytest.approx(3750.0)


def test_example_8_3_service_load_on_a_tight_joint() -> None:
    # bolt 6.50, members 13.8 Mlbf/in: the bolt takes C = 6.50/20.30 = 0.320 of 6 kip on top of 25: 72.17 kpsi, 15 % under 85
    share = 6.50 / (6.50 + 13.8)
    assert share == pytest.approx(0.320, abs=0.0005)
    stress = pull_and_shear_stress(25.0 + share * 6.0, 0.0, 0.373, 0.373)
    assert stress == pytest.approx(72.17, abs=0.01)
    strength = bolt_strength("grade 5", 0.75 * INCH)
    assert strength is not None
    assert 1 - stress / (strength.proof / KSI) == pytest.approx(0.15, abs=0.005)


def test_example_8_3_the_same_joint_opens_later_than_is_counted_here() -> None:
    """25 kip by 3750 lbf in at K 0.20 on 3/4 in; 6 kip of load, of which the bolt takes C = 0.320: n0 = 25 / (6 x 0.68)."""
    preload = least_preload(3750.0, 0.20, 0.75) / WRENCH
    assert preload == pytest.approx(25_000)
    opens = clamp_limits(preload, Clamped("service", ((6000.0, 0.0),), 6000.0))["the joint opens"]
    assert opens == pytest.approx(25 / 6) and opens < 25 / (6 * (1 - 0.320))


def test_table_8_14_the_least_of_ten_bolts_has_three_quarters_of_the_pull() -> None:
    """Ten oiled bolts at 90 N m: mean 34.18 kN, standard deviation 2.88 kN."""
    assert pytest.approx(WRENCH, abs=0.005) == (34.18 - 3 * 2.88) / 34.18


def test_table_8_15_torque_factors() -> None:
    printed = {"black and dry": 0.30, "zinc plated": 0.20, "oiled": 0.18, "cadmium plated": 0.16, "anti-seize": 0.12}
    assert printed == TORQUE_FACTOR


COARSE = {1 / 4: (20, 0.0318), 5 / 16: (18, 0.0524), 3 / 8: (16, 0.0775), 7 / 16: (14, 0.1063), 1 / 2: (13, 0.1419),
          9 / 16: (12, 0.182), 5 / 8: (11, 0.226), 3 / 4: (10, 0.334), 7 / 8: (9, 0.462), 1: (8, 0.606),
          1.25: (7, 0.969), 1.5: (6, 1.405)}  # fmt: skip
FINE = {1 / 4: (28, 0.0364), 5 / 16: (24, 0.0580), 3 / 8: (24, 0.0878), 7 / 16: (20, 0.1187), 1 / 2: (20, 0.1599),
        9 / 16: (18, 0.203), 5 / 8: (18, 0.256), 3 / 4: (16, 0.373), 7 / 8: (14, 0.509), 1: (12, 0.663),
        1.25: (12, 1.073), 1.5: (12, 1.581)}  # fmt: skip


@pytest.mark.parametrize("size, row", [*COARSE.items(), *FINE.items()])
def test_table_8_2_stress_areas(size: float, row: tuple[int, float]) -> None:
    per_inch, area = row
    assert stress_area(size * INCH, INCH / per_inch) / INCH**2 == pytest.approx(area, rel=2e-3)


@pytest.mark.parametrize(
    "size, per_inch, area", [(1 / 2, 13, 0.1257), (1 / 2, 20, 0.1486), (3 / 4, 10, 0.302), (3 / 4, 16, 0.351),
                             (1, 8, 0.551), (1, 12, 0.625)]
)  # fmt: skip
def test_table_8_2_root_areas(size: float, per_inch: int, area: float) -> None:
    assert pi / 4 * (root_diameter(size * INCH, INCH / per_inch) / INCH) ** 2 == pytest.approx(area, abs=0.0006)
