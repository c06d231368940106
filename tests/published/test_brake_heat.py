"""Energy of a stop and the heat it puts in a rotor.

Two magazine articles in US units (2 % and 0.3 %: one rounds 1 ft lb to 0.0013 Btu); Day, Braking of Road Vehicles, eq.
8.14; and one derived case: 1500 kg from 128 km/h at 0.7 g of 9.81, 70 % front, rotor 300 / 180 mm, iron 50 W/(m K), 460
J/(kg K), 7200 kg/m3. Its exact answers: a half space under a flow that falls evenly to nought peaks at half time with
sqrt(8 / (9 pi)) q0 sqrt(ts / (k rho c)); a textbook prints sqrt(5 / 18) (from memory), 0.9 % less. A plate of finite depth
has a series.
"""

from math import exp, pi, sqrt

import pytest
from scipy.optimize import minimize_scalar

from rules.strength.heat import GREY_IRON, Iron, bulk_rise, kinetic_energy, peak_face_rise

POUND, FOOT_POUND, BTU, MILE_AN_HOUR, FAHRENHEIT = 0.45359237, 1.3558179, 1055.06, 0.44704, 5 / 9
ENERGY, SECONDS = 331_851.9, 5.17774
FACE = pi / 4 * (0.3**2 - 0.18**2)
Q0 = 2 * ENERGY / SECONDS / (2 * FACE)


def test_a_workshop_article() -> None:
    # 3000 lb from 88 ft/s: 361 306 ft lb, 469.7 Btu; four rotors of 10 lb at 0.130 Btu/(lb F): 90.3 F.
    energy = kinetic_energy(3000 * POUND, 88 * 0.3048)
    assert energy / FOOT_POUND == pytest.approx(361_306, rel=0.002)
    assert energy / BTU == pytest.approx(469.7, rel=0.02)
    iron = Iron(specific_heat=0.130 * BTU / POUND / FAHRENHEIT)
    assert bulk_rise(energy, 40 * POUND, iron) / FAHRENHEIT == pytest.approx(90.3, rel=0.02)


def test_a_trade_article() -> None:
    assert kinetic_energy(6400 * POUND, 60 * MILE_AN_HOUR) / BTU == pytest.approx(988, rel=0.003)


def test_the_derived_case_mean_rise() -> None:
    assert kinetic_energy(1500, 128 / 3.6) * 0.7 / 2 == pytest.approx(ENERGY, rel=1e-6)
    assert pytest.approx(1.416744e6, rel=1e-5) == Q0
    assert bulk_rise(ENERGY, 5.21153) == pytest.approx(138.427, abs=0.001)  # vented, two plates of 8 mm
    assert bulk_rise(ENERGY, 3.25720) == pytest.approx(221.484, abs=0.001)  # solid, 10 mm


def test_one_plate_of_two_is_half_of_the_iron_and_twice_the_rise() -> None:
    assert bulk_rise(ENERGY, 5.21153 / 2) == pytest.approx(2 * 138.427, abs=0.002)


def half_space_peak(coefficient: float) -> float:
    return coefficient * Q0 * sqrt(SECONDS) / sqrt(50 * 460 * 7200)


def test_a_deep_slab_is_the_half_space() -> None:
    found = peak_face_rise(ENERGY / 2, FACE, 0.120, SECONDS, layers=120, time_steps=2000)
    assert half_space_peak(sqrt(8 / (9 * pi))) == pytest.approx(133.254, abs=0.001)
    assert half_space_peak(sqrt(5 / 18)) == pytest.approx(132.032, abs=0.001)
    assert found == pytest.approx(133.254, abs=0.03)


def test_a_plate_of_8_mm() -> None:
    assert peak_face_rise(ENERGY / 2, FACE, 0.008, SECONDS) == pytest.approx(152.86, abs=0.05)


def plate_face(time: float, depth: float) -> float:
    """Exact series of a plate heated on one side, the other passing no heat."""
    rho_c, alpha = GREY_IRON.density * GREY_IRON.specific_heat, 50 / (7200 * 460)
    total = time - time**2 / (2 * SECONDS)
    for number in range(1, 400):
        k = alpha * (number * pi / depth) ** 2
        died = 1 - exp(-k * time)
        total += 2 * (died / k - (time / k - died / k**2) / SECONDS)
    return Q0 * total / (rho_c * depth)


@pytest.mark.parametrize("depth", [0.004, 0.005, 0.008, 0.012, 0.020])
def test_thin_plates_are_the_exact_series(depth: float) -> None:
    exact = -minimize_scalar(lambda time: -plate_face(time, depth), bounds=(0.1, SECONDS), method="bounded").fun
    assert peak_face_rise(ENERGY / 2, FACE, depth, SECONDS) == pytest.approx(exact, rel=0.002)


def test_the_half_space_formula_reads_far_too_little_on_a_thin_rotor() -> None:
    # Solid 10 mm: its mean rise alone is 221 deg C, where the formula says 132 for the hottest face.
    thin = peak_face_rise(ENERGY / 2, FACE, 0.005, SECONDS)
    assert thin > 221.484
    assert half_space_peak(sqrt(5 / 18)) < 0.6 * thin


def test_a_light_car_by_hand() -> None:
    # 900 x 27.778^2 / 2 x 0.65 / 2 = 112 847 J; over 1.8 x 460 it is 136.3 deg C, over 3.5 x 460 it is 70.1.
    energy = kinetic_energy(900, 100 / 3.6) * 0.65 / 2
    assert bulk_rise(energy, 1.8) == pytest.approx(136, abs=0.5)
    assert bulk_rise(energy, 3.5) == pytest.approx(70, abs=0.5)
