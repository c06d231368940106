"""Disc brakes and clutches in textbooks, in their own inch units.

Wentzell, Machine Design, Ex. 16.1, p. 358 (read through a notebook of its examples). Ugural, Ex. 13.6 (title from the page
it was read on). A sector pad by hand: 45/360 x 2 pi x 100 x 4 x (6 - 4) = 628.32. Shigley's caliper example, Ex. 16-3, from
memory, recomputed.
"""

from math import radians

import pytest

from rules.strength.brake import brake_torque, peak_pad_pressure, piston_force, worn_in_radius


def test_wentzell_16_1_one_face() -> None:
    assert brake_torque(0.3, 120.0, worn_in_radius(12.0, 9.0), faces=1) == pytest.approx(378.0)


def test_uniform_wear_radii() -> None:
    assert worn_in_radius(5.5, 3.875) == pytest.approx(4.6875)
    assert worn_in_radius(148.0, 100.0) == pytest.approx(124.0)


def test_a_sector_pad_worked_by_hand() -> None:
    # 45 deg, radii 6 and 4 in, friction 0.4, 100 psi: 628.32 lb; 1256.64 lb in a pad, 2513.28 both.
    assert peak_pad_pressure(628.32, radians(45), 6.0, 4.0) == pytest.approx(100.0, abs=0.001)
    assert brake_torque(0.4, 628.32, worn_in_radius(6.0, 4.0), faces=1) == pytest.approx(1256.64)
    assert brake_torque(0.4, 628.32, worn_in_radius(6.0, 4.0)) == pytest.approx(2513.28)


def test_ugural_13_6_is_one_pad() -> None:
    # 60 deg, diameters 10 and 5 in, friction 0.2, 200 psi. The page calls 982 lb in "both shoes"; it is one.
    assert peak_pad_pressure(1309.0, radians(60), 5.0, 2.5) == pytest.approx(200.0, abs=0.01)
    assert brake_torque(0.2, 1309.0, worn_in_radius(5.0, 2.5), faces=1) == pytest.approx(982.0, abs=0.5)
    assert brake_torque(0.2, 1309.0, worn_in_radius(5.0, 2.5)) == pytest.approx(1963.5, abs=0.1)
    assert brake_torque(0.2, 1309.0, worn_in_radius(5.0, 2.5)) != pytest.approx(982.0, rel=0.1)


def test_shigley_16_3_from_memory() -> None:
    # Radii 5.5 and 3.875 in, 108 deg, friction 0.37, 1.5 in cylinders, 13 000 lbf in.
    radius = worn_in_radius(5.5, 3.875)
    assert brake_torque(0.37, 3747.75, radius) == pytest.approx(13_000, rel=1e-5)
    assert peak_pad_pressure(3747.75, radians(108), 5.5, 3.875) == pytest.approx(315.75, abs=0.01)
    assert piston_force(2120.79, 1.5, 1) == pytest.approx(3747.75, rel=1e-5)
