"""Sizes and lengths of fillet welds.

AISC 360-16, J2.2b and equation J2-1, read as text; what the 2005 edition does instead was read in a handbook that prints
it. Blodgett, Design of Welded Structures, 6.3, read in a scanned copy: three quarters of the thickness.
"""

import pytest

from rules.strength.weld import counted_leg, counted_length, full_strength_leg, greatest_leg_along_an_edge

INCH = 25.4


@pytest.mark.parametrize(
    ("part", "leg"), [(3 / 16, 3 / 16), (0.249, 0.249), (1 / 4, 3 / 16), (3 / 8, 5 / 16), (1 / 2, 7 / 16)]
)
def test_j2_2b_largest_leg_along_an_edge(part: float, leg: float) -> None:
    assert greatest_leg_along_an_edge(part * INCH) == pytest.approx(leg * INCH)


@pytest.mark.parametrize(("run", "leg"), [(25.0, 6.0), (24.0, 6.0), (23.9, 5.975), (12.0, 3.0)])
def test_j2_2b_shortest_run_is_four_legs_or_the_leg_is_a_quarter_of_it(run: float, leg: float) -> None:
    assert counted_leg(6.0, run) == pytest.approx(leg)


@pytest.mark.parametrize(
    ("legs", "counted"),
    [
        (10, 10),
        (100, 100),
        (150, 135),
        (200, 160),
        (300, 180),
        (301, 180),
        (400, 180),
    ],  # 150 x 0.9, 200 x 0.8, 300 x 0.6
)
def test_j2_1_long_runs(legs: float, counted: float) -> None:
    assert counted_length(legs * 5.0, 5.0) == pytest.approx(counted * 5.0)


def test_the_2005_edition_is_not_what_stands_here() -> None:
    # There 0.60 of the length goes on beyond 300 legs: 240 of 400.
    assert counted_length(2000.0, 5.0) != pytest.approx(0.60 * 2000.0)


@pytest.mark.parametrize(("part", "leg"), [(8.0, 6.0), (10.0, 7.5), (12.7, 9.525)])
def test_blodgett_three_quarters(part: float, leg: float) -> None:
    assert full_strength_leg(part) == pytest.approx(leg)
