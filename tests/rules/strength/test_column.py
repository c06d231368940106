"""Columns against hand figures of a handbook's formulas, and against a rod cut into short pieces and solved as a matrix."""

from math import cos, pi, sqrt

import numpy as np
import pytest

from rules.graph.results import OutsideRange
from rules.strength.column import STEEL_MODULUS, column_strength
from rules.strength.section import flat_plate, round_bar, round_tube


def test_a_slender_rod_by_euler_by_hand() -> None:
    """20 mm bar, 1 m between pins: I = pi 20^4 / 64 = 7853.98 mm4; pi^2 x 200 000 x 7853.98 / 10^6 = 15 503 N."""
    assert column_strength(round_bar(20.0), 1000.0, 300.0) == pytest.approx(15_503, rel=1e-4)


def test_a_stocky_rod_by_johnson_by_hand() -> None:
    """20 mm bar, 300 mm: l/k = 300 / 5 = 60; A = 314.159; 1 - 300 x 3600 / (39.4784 x 200 000) = 0.863217; x 300 = 81 357 N."""
    assert column_strength(round_bar(20.0), 300.0, 300.0) == pytest.approx(81_357, rel=1e-4)


@pytest.mark.parametrize(("width", "thickness"), [(40.0, 10.0), (10.0, 40.0)])
def test_a_flat_bar_buckles_over_its_thin_way(width: float, thickness: float) -> None:
    """40 x 10, 1 m between pins: I = 40 x 10^3 / 12 = 3333.33 mm4; pi^2 x 200 000 x 3333.33 / 10^6 = 6579.7 N."""
    assert column_strength(flat_plate(width, thickness), 1000.0, 300.0) == pytest.approx(6579.7, rel=1e-4)


def test_the_two_curves_meet_at_half_of_yield() -> None:
    tube, yields = round_tube(30.0, 3.0), 400.0
    radius = sqrt(tube.inertia_u / tube.area)
    there = radius * sqrt(2 * pi**2 * STEEL_MODULUS / yields)
    for length in (there * (1 - 1e-9), there * (1 + 1e-9)):
        assert column_strength(tube, length, yields) == pytest.approx(tube.area * yields / 2, rel=1e-6)


def test_euler_against_a_rod_in_pieces() -> None:
    """A pinned rod in 200 pieces: -E I y'' = P y as a matrix, whose least eigenvalue is the push it buckles at."""
    tube, length, pieces = round_tube(25.0, 2.0), 900.0, 200
    step = length / pieces
    matrix = (2 * np.eye(pieces - 1) - np.eye(pieces - 1, k=1) - np.eye(pieces - 1, k=-1)) / step**2
    least = float(np.linalg.eigvalsh(matrix)[0]) * STEEL_MODULUS * tube.inertia_u
    assert column_strength(tube, length, 2000.0) == pytest.approx(least, rel=1e-4)
    assert cos(pi / pieces) < 1  # the matrix is exact but for this cosine


def test_it_never_holds_more_than_yield_and_less_the_longer_it_is() -> None:
    tube = round_tube(32.0, 3.0)
    found = [column_strength(tube, length, 350.0) for length in range(10, 2000, 10)]
    assert found[0] < tube.area * 350.0
    assert found == sorted(found, reverse=True)


def test_a_rod_of_no_length_is_refused() -> None:
    with pytest.raises(OutsideRange):
        column_strength(round_bar(20.0), 0.0, 300.0)
