"""Plate held along one edge under a point load, against its exact solution.

A strip of width a, endless along the held edge, by Fourier transform along it: for each wave number the deflection is
A cosh + B sinh + C x cosh + D x sinh on each side of the load, held at nought, free of moment and force at a; Poisson 0.3.
A half plane held along its edge has the closed form P / pi under the load (Timoshenko and Woinowsky-Krieger, from memory).
"""

from math import pi

import numpy as np
import pytest

from rules.strength.stress import overhung_plate_stress

POISSON = 0.3


def derivatives(wave: float, x: float) -> np.ndarray:
    """The four forms and their first three derivatives, one a row."""
    c, s, k = np.cosh(wave * x), np.sinh(wave * x), wave
    return np.array(
        [
            [c, s, x * c, x * s],
            [k * s, k * c, c + k * x * s, s + k * x * c],
            [k**2 * c, k**2 * s, 2 * k * s + k**2 * x * c, 2 * k * c + k**2 * x * s],
            [k**3 * s, k**3 * c, 3 * k**2 * c + k**3 * x * s, 3 * k**2 * s + k**3 * x * c],
        ]
    )


def root_moment(place: float, edge: float, along: float) -> float:
    """Moment on a unit of root at `along` from the load, for a load of 1 at `place` from the root, free edge at `edge`."""
    waves = np.linspace(1e-4, 14 / place, 1500)
    roots = []
    for wave in waves:
        held, load, free = (derivatives(wave, x) for x in (0.0, place, edge))
        equations, right = np.zeros((8, 8)), np.zeros(8)
        equations[:2, :4] = held[:2]
        equations[2:6, :4], equations[2:6, 4:], right[5] = load, -load, -1.0
        equations[6, 4:] = free[2] - POISSON * wave**2 * free[0]
        equations[7, 4:] = free[3] - (2 - POISSON) * wave**2 * free[1]
        scale = np.abs(equations).max(axis=0)
        roots.append(held[2] @ (np.linalg.solve(equations / scale, right) / scale)[:4])
    return abs(float(np.trapezoid(np.array(roots) * np.cos(waves * along), waves))) / pi


def by_rule(apart: float) -> float:
    """Moment on a unit of root, load 1 at 1 from it, on a plate 6**0.5 thick: stress is moment."""
    alone = overhung_plate_stress(1.0, (), 100.0, 6**0.5)
    return alone if not apart else overhung_plate_stress(0.0, [(1.0, 100 * apart)], 100.0, 6**0.5)


def test_a_load_at_the_free_edge_is_the_published_figure() -> None:
    assert root_moment(1.0, 1.0001, 0.0) == pytest.approx(0.509, abs=0.001)
    assert by_rule(0.0) == pytest.approx(0.509)


def test_far_from_the_free_edge_it_is_the_half_plane() -> None:
    assert root_moment(1.0, 8.0, 0.0) == pytest.approx(1 / pi, rel=0.02)


@pytest.mark.parametrize("edge", [1.0001, 1.25, 2.0, 4.0])
@pytest.mark.parametrize("apart", [0.0, 0.5, 1.0, 2.0, 4.0])
def test_the_rule_is_never_less_than_the_exact_solution(edge: float, apart: float) -> None:
    assert root_moment(1.0, edge, apart) <= 1.001 * by_rule(apart)


def test_two_loads_by_hand() -> None:
    # 0.509 (1125 + 675 / (1 + 16)) 6 / 100; beside an opening 10 away that takes half of what holds it: 1 + 0.825 / (1 + 1.45^2)
    assert overhung_plate_stress(-1125.0, [(675.0, 80.0)], 20.0, 10.0) == pytest.approx(35.5702, abs=1e-3)
    beside = overhung_plate_stress(-1125.0, [(675.0, 80.0)], 20.0, 10.0, 10.0, 0.5)
    assert beside == pytest.approx(35.5702 * 1.26592, rel=1e-5)


def test_an_overhang_shorter_than_the_plate_is_thick_bends_it_the_less_the_shorter_it_is() -> None:
    def stress(overhang: float) -> float:
        return overhung_plate_stress(1000.0, [(400.0, 80.0)], overhang, 10.0)

    assert stress(5.0) == pytest.approx(stress(10.0) / 2, rel=1e-9)
    assert stress(0.0) == 0.0
    for step in range(1, 400):  # a tenth of a millimetre never moves it by more than a tenth of what it is at the limit
        assert abs(stress(step * 0.1) - stress((step - 1) * 0.1)) <= 0.011 * stress(40.0)
