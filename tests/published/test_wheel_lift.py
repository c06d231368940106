"""Lift of the body and moment of return when a wheel is turned about a leaning axis.

No published table. Case A is derived: a thin disc rotated about the axis, the body standing on its lowest point; found once
in closed form and once with numerical rotation and search, and checked against the energy balance. Here it is done again
three ways: scipy rotation with a search for the lowest point, sympy with exact matrices, and differences of the lift for
the moment. Gillespie, Fundamentals of Vehicle Dynamics, ch. 8 (from memory; the formula read in restatements of it) holds
the contact fixed to the upright: its arm, ground offset x sin inclination x sin turn, is about half and must not be
reproduced.
"""

from math import asin, degrees, radians, sin

import numpy as np
import pytest
import sympy
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import minimize_scalar
from scipy.spatial.transform import Rotation

from rules.values.steering.self_centring import Disc, disc, return_moment_20_deg
from tests.support.declared import the_value

lift_inner_20_deg, lift_outer_20_deg = the_value("lift_inner_20_deg"), the_value("lift_outer_20_deg")

# Radius 400, inclination 10 deg, no castor, ground offset 50 mm: turn deg, lift mm, camber deg, arm mm, textbook arm mm
CASE_A = [
    (10, 0.311792, 0.148856, 3.548373, 1.507684),
    (20, 1.221782, 0.590912, 6.808417, 2.969559),
    (30, 2.656485, 1.312819, 9.522181, 4.341204),
    (40, 4.502019, 2.292945, 11.488560, 5.580945),
]


def case_a() -> Disc:
    return disc(400.0, 50.0, 0.0, radians(10), 0.0)


@pytest.mark.parametrize(("turn", "lift", "camber", "arm", "textbook"), CASE_A)
def test_case_a(turn: float, lift: float, camber: float, arm: float, textbook: float) -> None:
    wheel = case_a()
    assert wheel.lift(radians(turn)) == pytest.approx(lift, abs=5e-7)
    assert wheel.lift_rate(radians(turn)) == pytest.approx(arm, abs=5e-7)
    rise, _ = wheel._spin_axis_rise(radians(turn))  # the camber itself is not a value of the sheet
    assert degrees(asin(-rise)) == pytest.approx(camber, abs=5e-7)


@pytest.mark.parametrize(("turn", "lift", "camber", "arm", "textbook"), CASE_A)
def test_the_textbook_form_is_about_half_and_is_not_reproduced(
    turn: float, lift: float, camber: float, arm: float, textbook: float
) -> None:
    assert 50 * sin(radians(10)) * sin(radians(turn)) == pytest.approx(textbook, abs=5e-7)
    assert 0.4 < textbook / case_a().lift_rate(radians(turn)) < 0.5


def test_the_values_of_the_sheet_are_case_a_at_20_deg() -> None:
    assert lift_inner_20_deg(400.0, 50.0, 0.0, radians(10), 0.0) == pytest.approx(1.221782, abs=5e-7)
    assert lift_outer_20_deg(400.0, 50.0, 0.0, radians(10), 0.0) == pytest.approx(1.221782, abs=5e-7)
    # Two wheels of 250 kg: 2 x 2451.6625 N x 6.808417 mm = 33.3839 N m
    assert return_moment_20_deg(250.0, 400.0, 50.0, 0.0, radians(10), 0.0) == pytest.approx(33.3839, abs=5e-5)


def test_the_wheel_centre_falls_by_the_figure_of_an_independent_rotation() -> None:
    # Axis rotation with a symbolic mechanics package: -2.7614816208 mm after 30 deg, body held still.
    height, _ = case_a()._centre(radians(30))
    assert height - 400.0 == pytest.approx(-2.7614816208, abs=5e-9)


def turned(
    radius: float, offset: float, trail: float, inclination: float, castor: float, turn: float, side: int = 1
) -> tuple[np.ndarray, Rotation]:
    """The wheel's centre and its rotation. side: 1 left wheel (y outboard), -1 its mirror image."""
    axis = np.array([-np.tan(castor), -side * np.tan(inclination), 1.0])
    rotation = Rotation.from_rotvec(axis / np.linalg.norm(axis) * side * turn)
    pierce = np.array([trail, -side * offset, 0.0])
    return pierce + rotation.apply(np.array([0.0, 0.0, radius]) - pierce), rotation


def searched_lift(radius: float, *geometry: float, side: int = 1) -> float:
    """Lift by searching the turned rim for its lowest point."""
    centre, rotation = turned(radius, *geometry, side=side)
    fore, up = rotation.apply([1.0, 0.0, 0.0]), rotation.apply([0.0, 0.0, 1.0])

    def height(around: float) -> float:
        return float(centre[2] + radius * (np.cos(around) * fore[2] + np.sin(around) * up[2]))

    lowest = minimize_scalar(
        height, bounds=(-np.pi / 2 - 1.2, -np.pi / 2 + 1.2), method="bounded", options={"xatol": 1e-9}
    )
    return -float(lowest.fun)


GEOMETRY = st.tuples(
    st.floats(250, 600),  # radius
    st.floats(-60, 120),  # ground offset
    st.floats(-40, 120),  # trail
    st.floats(0, 0.4),  # inclination
    st.floats(-0.1, 0.3),  # castor
)
TURN = st.floats(-0.75, 0.75)


@settings(max_examples=60)
@given(geometry=GEOMETRY, turn=TURN)
def test_the_lift_of_any_geometry_is_that_of_the_searched_lowest_point(
    geometry: tuple[float, ...], turn: float
) -> None:
    assert disc(*geometry).lift(turn) == pytest.approx(searched_lift(*geometry, turn), abs=1e-6)


@settings(max_examples=40)
@given(geometry=GEOMETRY, turn=TURN)
def test_the_right_wheel_turned_the_other_way_is_the_mirror_image(geometry: tuple[float, ...], turn: float) -> None:
    assert searched_lift(*geometry, turn, side=-1) == pytest.approx(disc(*geometry).lift(turn), abs=1e-6)


@settings(max_examples=40)
@given(geometry=GEOMETRY, turn=TURN)
def test_without_castor_and_trail_both_directions_lift_alike(geometry: tuple[float, ...], turn: float) -> None:
    radius, offset, _, inclination, _ = geometry
    wheel = disc(radius, offset, 0.0, inclination, 0.0)
    assert wheel.lift(turn) == pytest.approx(wheel.lift(-turn), abs=1e-9)


@settings(max_examples=40)
@given(geometry=GEOMETRY, turn=TURN)
def test_energy_the_arm_is_the_rate_of_the_searched_lift(geometry: tuple[float, ...], turn: float) -> None:
    step = 1e-3
    rate = (searched_lift(*geometry, turn + step) - searched_lift(*geometry, turn - step)) / (2 * step)
    assert disc(*geometry).lift_rate(turn) == pytest.approx(rate, abs=2e-3)


@settings(max_examples=30)
@given(geometry=GEOMETRY, weight=st.floats(100, 800))
def test_energy_the_return_moment_is_the_rate_of_the_work_of_lifting_both_wheels(
    geometry: tuple[float, ...], weight: float
) -> None:
    def work(turn: float) -> float:
        """Joules: the left wheel turned one way about its axis and the right wheel with it."""
        rise = searched_lift(*geometry, turn) + searched_lift(*geometry, -turn)
        return weight * 9.80665 * rise / 1000

    step = 1e-3
    rate = (work(radians(20) + step) - work(radians(20) - step)) / (2 * step)
    assert return_moment_20_deg(weight, *geometry) == pytest.approx(rate, abs=0.02)


@settings(max_examples=30)
@given(geometry=GEOMETRY, turn=TURN)
def test_the_arm_is_the_moment_of_a_unit_load_at_the_lowest_point(geometry: tuple[float, ...], turn: float) -> None:
    radius, offset, trail, inclination, castor = geometry
    centre, rotation = turned(*geometry, turn)
    spin = rotation.apply([0.0, 1.0, 0.0])
    down = np.array([0.0, 0.0, -1.0])
    downhill = down - spin * (down @ spin)
    contact = centre + radius * downhill / np.linalg.norm(downhill)
    axis = np.array([-np.tan(castor), -np.tan(inclination), 1.0])
    axis /= np.linalg.norm(axis)
    moment = np.cross(contact - np.array([trail, -offset, 0.0]), [0.0, 0.0, 1.0]) @ axis
    assert disc(*geometry).lift_rate(turn) == pytest.approx(-moment, abs=1e-6)


def test_sympy_turns_the_same_disc_with_exact_matrices() -> None:
    # Inclination and castor of tangents 1/6 and 1/10, radius 400, offset 50, trail 40, turned 1/3 rad.
    axis = sympy.Matrix([sympy.Rational(-1, 10), sympy.Rational(-1, 6), 1])
    axis /= axis.norm()
    turn = sympy.Rational(1, 3)
    skew = sympy.Matrix([[0, -axis[2], axis[1]], [axis[2], 0, -axis[0]], [-axis[1], axis[0], 0]])
    rotation = sympy.eye(3) + sympy.sin(turn) * skew + (1 - sympy.cos(turn)) * skew**2
    pierce = sympy.Matrix([40, -50, 0])
    centre = pierce + rotation * (sympy.Matrix([0, 0, 400]) - pierce)
    spin = rotation * sympy.Matrix([0, 1, 0])
    lift = sympy.N(400 * sympy.sqrt(1 - spin[2] ** 2) - centre[2], 20)
    wheel = disc(400.0, 50.0, 40.0, np.arctan(1 / 6), np.arctan(1 / 10))
    assert wheel.lift(1 / 3) == pytest.approx(float(lift), abs=1e-9)


def test_the_inner_wheel_of_a_car_with_castor_lifts_more_than_the_outer() -> None:
    # Castor jacks the inner front corner up and lets the outer one down.
    inner = lift_inner_20_deg(400.0, 25.0, 42.0417, radians(10), radians(6))
    outer = lift_outer_20_deg(400.0, 25.0, 42.0417, radians(10), radians(6))
    assert inner > 0 > outer


def test_a_wheel_that_is_not_turned_neither_lifts_nor_is_held() -> None:
    assert case_a().lift(0.0) == 0.0
    assert case_a().lift_rate(0.0) == 0.0
