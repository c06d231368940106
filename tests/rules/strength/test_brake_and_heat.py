"""Brake and heat formulas by hand, and where they refuse."""

from math import exp, pi, radians

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.graph.results import OutsideRange
from rules.strength.brake import (
    brake_torque,
    lock_up_torque,
    peak_pad_pressure,
    piston_force,
    piston_travel,
)
from rules.strength.heat import bulk_rise, peak_face_rise, rise_after_run, time_constant


def test_a_single_piston_brake() -> None:
    # 54 mm at 7 MPa: 2290.221 mm2 x 7 = 16 031.55 N; x 0.38 x 124 x 2.
    clamp = piston_force(7.0, 54.0, 1)
    assert clamp == pytest.approx(16_031.55, abs=0.01)
    assert brake_torque(0.38, clamp, 124.0) == pytest.approx(1_510_810, rel=1e-5)


def test_lock_up_and_the_clamp_it_asks_for() -> None:
    torque = lock_up_torque(0.9, 6000.0, 400.0)
    assert torque == pytest.approx(2_160_000)
    assert brake_torque(0.38, 22_920.2, 124.0) == pytest.approx(torque, rel=1e-5)


def test_four_small_pistons_are_one_large_one() -> None:
    assert piston_force(5.0, 20.0, 4) == pytest.approx(500 * pi * 4)


@pytest.mark.parametrize("inside", [100.0, 120.0, 0.0, -1.0])
def test_a_pad_without_height_is_refused(inside: float) -> None:
    with pytest.raises(OutsideRange):
        peak_pad_pressure(1000.0, radians(60), 100.0, inside)


def test_a_pad_that_reaches_near_the_middle_is_not_refused() -> None:
    """Two radians of a ring from 0.5 to 4 mm under 700 N: 700 / (2 x 0.5 x 3.5) = 200 MPa."""
    assert peak_pad_pressure(700.0, 2.0, 4.0, 0.5) == pytest.approx(200.0)


@pytest.mark.parametrize(
    ("wear", "lost", "sliding", "travel"), [(9, 4, True, 22), (9, 4, False, 11), (0, 6, True, 6), (0, 6, False, 3)]
)
def test_piston_travel(wear: float, lost: float, sliding: bool, travel: float) -> None:
    assert piston_travel(wear, lost, sliding) == travel


def test_a_run_without_cooling_adds_up_and_with_cooling_is_a_geometric_sum() -> None:
    assert rise_after_run(40.0, 5, 30.0, None) == pytest.approx(200.0)
    kept = exp(-60 / 600)
    assert rise_after_run(50.0, 8, 60.0, 600.0) == pytest.approx(50 * (1 - kept**8) / (1 - kept))
    assert rise_after_run(50.0, 1, 60.0, 600.0) == 50.0


def test_time_constant_by_hand() -> None:
    assert time_constant(5.0, 0.1, 10.0) == pytest.approx(2300.0)  # 5 x 460 / (10 x 0.1)


@given(depth=st.floats(0.003, 0.020), seconds=st.floats(1.0, 12.0))
def test_the_face_is_never_cooler_than_the_mean(depth: float, seconds: float) -> None:
    energy, area = 100_000.0, 0.045
    mean = bulk_rise(energy, 7200 * area * depth)
    assert peak_face_rise(energy, area, depth, seconds) >= mean * 0.999


def test_a_slow_stop_heats_face_and_middle_alike() -> None:
    assert peak_face_rise(100_000.0, 0.045, 0.003, 60.0) == pytest.approx(
        bulk_rise(100_000.0, 7200 * 0.045 * 0.003), rel=0.01
    )


@pytest.mark.parametrize("wrong", range(4))
def test_heat_into_nothing_is_refused(wrong: int) -> None:
    given_ = [100_000.0, 0.045, 0.008, 5.0]
    given_[wrong] = 0.0
    with pytest.raises(OutsideRange):
        peak_face_rise(*given_)
