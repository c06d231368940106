"""Weld lines under forces, by hand, and where the formulas refuse."""

from math import hypot, inf, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.graph.results import OutsideRange
from rules.strength.weld import counted_length, greatest_force, limits, one_line, rectangle, ring, throat, two_lines

NONE = (0.0, 0.0, 0.0)
SIZES = st.floats(5.0, 300.0)
LOADS = st.tuples(*[st.floats(-1e4, 1e4)] * 3)


def test_even_force_is_shared_over_the_length() -> None:
    assert greatest_force(two_lines(50.0, 20.0), (300.0, 400.0, 0.0), NONE) == pytest.approx(5.0)  # 500 N on 100 mm


def test_two_runs_far_apart_carry_bending_as_a_couple() -> None:
    # 60 000 N mm about the runs, 30 mm apart: 2000 N on 50 mm each.
    assert greatest_force(two_lines(50.0, 30.0), NONE, (60_000.0, 0.0, 0.0)) == pytest.approx(40.0)


def test_bending_along_the_runs() -> None:
    # Two runs of 60 mm: section 2 x 60^2 / 6 = 1200 mm2.
    assert greatest_force(two_lines(60.0, 30.0), NONE, (0.0, 60_000.0, 0.0)) == pytest.approx(50.0)


def test_one_run_bent_about_its_own_line_has_only_its_throat() -> None:
    # 100 mm, throat 6 mm: section 100 x 6^2 / 6 = 600 mm3; 6000 N mm is 10 MPa, 60 N on a mm.
    assert greatest_force(one_line(100.0, 6.0), NONE, (6000.0, 0.0, 0.0)) == pytest.approx(60.0)


def test_a_ring_in_bending_and_in_twist() -> None:
    # Radius 25 mm: 2 pi r^2 = 3926.99 mm2 in twist, pi r^2 = 1963.50 in bending.
    assert greatest_force(ring(50.0), NONE, (0.0, 0.0, 39_269.9)) == pytest.approx(10.0, rel=1e-5)
    assert greatest_force(ring(50.0), NONE, (0.0, 19_635.0, 0.0)) == pytest.approx(10.0, rel=1e-5)
    assert greatest_force(ring(50.0), NONE, (11_781.0, 15_708.0, 0.0)) == pytest.approx(10.0, rel=0.004)  # 3-4-5


def test_all_round_a_rectangle() -> None:
    # 40 x 20: bending about the long way: 20^2 (3 x 40 + 20) / 6 = 9333.3; at 10 mm off: 933.33 mm2.
    assert greatest_force(rectangle(40.0, 20.0), NONE, (9333.333, 0.0, 0.0)) == pytest.approx(10.0, rel=1e-6)


@given(run=SIZES, apart=SIZES, force=LOADS, moment=LOADS)
def test_turning_the_joint_by_a_quarter_changes_nothing(
    run: float, apart: float, force: tuple[float, float, float], moment: tuple[float, float, float]
) -> None:
    turned = [(vector[1], -vector[0], vector[2]) for vector in (force, moment)]
    assert greatest_force(rectangle(run, apart), force, moment) == pytest.approx(
        greatest_force(rectangle(apart, run), *turned), abs=1e-9
    )


@given(run=SIZES, apart=SIZES, force=LOADS, moment=LOADS)
def test_all_round_is_never_worse_than_two_sides_in_any_one_load(
    run: float, apart: float, force: tuple[float, float, float], moment: tuple[float, float, float]
) -> None:
    for way in range(3):
        part = tuple(size if place == way else 0.0 for place, size in enumerate(moment))
        assert (
            greatest_force(rectangle(run, apart), NONE, part)
            <= greatest_force(two_lines(run, apart), NONE, part) + 1e-9
        )
    even = greatest_force(rectangle(run, apart), force, NONE)
    assert even == pytest.approx(hypot(*force) / (2 * (run + apart)))


def test_ring_length() -> None:
    assert ring(50.0).length == pytest.approx(50 * pi)


def test_limits_by_hand() -> None:
    # Leg 6, throat 4.242; electrode 480, part 250 / 400 MPa.
    weld_metal, tears, yields = limits(throat(6.0), 6.0, 480.0, 250.0, 400.0)
    assert (weld_metal.strength, weld_metal.omega) == (pytest.approx(1221.696), 2.0)  # 0.6 x 480 x 4.242
    assert (tears.strength, tears.omega) == (pytest.approx(1440.0), 2.0)
    assert (yields.strength, yields.omega) == (pytest.approx(900.0), 1.5)


@pytest.mark.parametrize("leg", [0.0, -1.0])
def test_no_leg_is_refused(leg: float) -> None:
    with pytest.raises(OutsideRange):
        counted_length(100.0, leg)


@pytest.mark.parametrize("leg", [0.5, 1.0, 6.0])
def test_a_leg_however_small_counts_in_its_own_measure(leg: float) -> None:
    """AISC 360-16 J2-1: of 50 legs all, of 200 legs 1.2 - 0.002 x 200 = 0.8, of 400 legs 180."""
    lengths = [counted_length(legs * leg, leg) / leg for legs in (50, 200, 400)]
    assert lengths == pytest.approx([50.0, 160.0, 180.0])


def test_nothing_is_infinite() -> None:
    assert greatest_force(one_line(10.0, 3.0), (1.0, 1.0, 1.0), (1.0, 1.0, 1.0)) < inf
