"""Steering axis definitions, with two worked cases.

Castor: SAE J670, Vehicle Dynamics Terminology, item 6.2.1, as quoted in a paper on castor measurement. Trail, inclination,
ground offset: The Multibody Systems Approach to Vehicle Dynamics, 4.5.5 and 4.5.6, and Automotive Chassis Engineering,
3.1.5, read as pages of the books (Blundell and Harty, Barton and Fieldhouse: the names from memory). Numbers derived from
the definitions by joining the two pivots and cutting the ground, and redone here that way.
"""

from math import degrees, radians

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.values.steering.self_centring import disc
from rules.values.wheel_end.pivots import upper_above_spindle, which_pivot_ahead, which_pivot_offset
from rules.values.wheel_end.steering_axis import axis_tilt, hub_height_offset, mechanical_trail


def test_the_round_case_400_mm_10_deg_5_deg_50_mm() -> None:
    s, t = radians(10), radians(5)
    assert hub_height_offset(50.0, 400.0, s) == pytest.approx(120.5308, abs=5e-5)
    assert mechanical_trail(400.0, t, 0.0) == pytest.approx(34.9955, abs=5e-5)
    assert degrees(axis_tilt(s, t)) == pytest.approx(11.13566, abs=5e-6)
    wheel = disc(400.0, 50.0, 0.0, s, t)
    assert (wheel.kx, wheel.ky, wheel.kz) == pytest.approx((-0.0858415, -0.1730072, 0.9811726), abs=5e-8)


def test_true_tilt_is_not_the_root_of_the_squares() -> None:
    assert degrees(axis_tilt(radians(30), radians(30))) == pytest.approx(39.2315, abs=5e-5)  # arctan of root 2/3
    assert pytest.approx(42.4264, abs=5e-5) == (30**2 + 30**2) ** 0.5


# A measured upright, x forward, y outboard, z up: lower ball (10, 700, 300), upper (-15, 660, 590), wheel centre
# (0, 780, 400). Castor and inclination by the slopes of the line: arctan 25/290 and 40/290.
CASTOR, INCLINATION = radians(4.927110), radians(7.853313)


def test_the_two_ball_joint_case() -> None:
    assert hub_height_offset(38.620690, 400.0, INCLINATION) == pytest.approx(93.793103, abs=2e-5)
    assert mechanical_trail(400.0, CASTOR, 1.379310) == pytest.approx(35.862069, abs=2e-5)


def test_the_two_ball_joint_case_read_backwards_gives_the_joints() -> None:
    # Spacing: root of 25^2 + 40^2 + 290^2 = 293.8112; the lower joint 100 below the wheel centre, 80 inboard of it.
    tilt = axis_tilt(INCLINATION, CASTOR)
    above = upper_above_spindle(293.811163, tilt, 100.0)
    assert above == pytest.approx(190.0, abs=1e-4)
    assert which_pivot_offset(93.793103, 100.0, INCLINATION, "below") == pytest.approx(-80.0, abs=1e-4)
    assert which_pivot_offset(93.793103, above, INCLINATION, "above") == pytest.approx(-120.0, abs=1e-4)
    assert which_pivot_ahead(100.0, CASTOR, 1.379310, "below") == pytest.approx(10.0, abs=1e-4)
    assert which_pivot_ahead(above, CASTOR, 1.379310, "above") == pytest.approx(-15.0, abs=1e-4)


@settings(max_examples=60)
@given(
    height=st.floats(250, 600),
    offset=st.floats(-50, 100),
    inclination=st.floats(0, 20),
    castor=st.floats(-5, 15),
    ahead=st.floats(-30, 30),
    below=st.floats(-50, 250),
    spacing=st.floats(150, 450),
)
def test_the_line_through_the_two_pivots_cuts_ground_and_spindle_height_where_it_was_asked_to(
    height: float, offset: float, inclination: float, castor: float, ahead: float, below: float, spacing: float
) -> None:
    s, t = radians(inclination), radians(castor)
    hub = hub_height_offset(offset, height, s)
    above = upper_above_spindle(spacing, axis_tilt(s, t), below)
    lower = np.array(
        [which_pivot_ahead(below, t, ahead, "below"), which_pivot_offset(hub, below, s, "below"), height - below]
    )
    upper = np.array(
        [which_pivot_ahead(above, t, ahead, "above"), which_pivot_offset(hub, above, s, "above"), height + above]
    )
    assert np.linalg.norm(upper - lower) == pytest.approx(spacing, rel=1e-9)
    along = (upper - lower) / (upper - lower)[2]
    ground, spindle = lower - along * lower[2], lower + along * (height - lower[2])
    assert ground[1] == pytest.approx(-offset, abs=1e-6)
    assert ground[0] == pytest.approx(mechanical_trail(height, t, ahead), abs=1e-6)
    assert spindle[0] == pytest.approx(ahead, abs=1e-6)


def test_ground_offset_moves_176_thousandths_a_millimetre_of_spindle_height_at_10_deg() -> None:
    rise = hub_height_offset(0.0, 401.0, radians(10)) - hub_height_offset(0.0, 400.0, radians(10))
    assert rise == pytest.approx(0.1763, abs=5e-5)
