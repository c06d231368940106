"""Both wheels through the lock: angles, levers and lift against general rotations, searches and root finders of scipy.

Nothing of the engine is used for what is expected: points are turned with scipy's rotation, rods closed with its root
finder, the lowest point of a wheel searched for, and rates taken as differences.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import atan2, cos, degrees, hypot, radians, sin, tan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize_scalar
from scipy.spatial.transform import Rotation

from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import CannotReach, Pose, UprightPoints
from rules.motion.steering_arm import aim, arm_of, axis_of, best_arm, errors, outer_turn, root_mean_square
from rules.motion.turned import spin_at, steer_at, turn_at
from rules.motion.turning import (
    Reach,
    Steered,
    ackermann,
    arm,
    both_wheels,
    ideal_outer,
    ideal_outer_of,
    lever,
    lift,
    lift_rate,
    outer_edge_radius,
    outer_per_inner,
    reach,
    return_lever,
    rod_to_arm,
    turn_per_slide,
)
from rules.values.steering.self_centring import Disc
from tests.support.front_ends import leaning, straight_rack, through_lock, trapezium, wheel_turned

LOWER, UPPER, CENTRE = np.array([13.1, -73.5, 275.0]), np.array([-13.6, -118.4, 529.7]), np.array([0.0, 0.0, 400.0])
BEHIND, AHEAD = np.array([-126.0, -140.0, 360.0]), np.array([130.0, -60.0, 370.0])
MIDDLE = -800.0


@dataclass(frozen=True)
class Case:
    """A linkage, its tie-rod end, and the wheel's camber, rad, top outboard positive."""

    end: np.ndarray
    linkage: SteeringLinkage
    camber: float = 0.0

    @property
    def spin(self) -> tuple[float, float, float]:
        return (0.0, cos(self.camber), -sin(self.camber))

    @property
    def upright(self) -> UprightPoints:
        return UprightPoints(tuple(LOWER), tuple(UPPER), tuple(CENTRE), tuple(self.end), self.spin)

    @property
    def straight(self) -> float:
        """The turn at which the wheel stands with its toe set, scipy alone."""
        return float(brentq(lambda turn: steer_of(turn, self.spin) + self.linkage.toe, -0.3, 0.3, xtol=1e-15))

    @property
    def front(self) -> FrontEnd:
        return FrontEnd(self.upright, linkage=self.linkage)


CASES = {
    "rack behind": Case(BEHIND, SteeringLinkage("rack", (-135.0, -499.0, 358.0), MIDDLE, travel=50.0)),
    "rack ahead": Case(AHEAD, SteeringLinkage("rack", (150.0, -480.0, 380.0), MIDDLE, travel=50.0)),
    "relay rod, arms rearward": Case(
        BEHIND, SteeringLinkage("relay rod", (-140.0, -480.0, 350.0), MIDDLE, 50.0, None, -160.0)
    ),
    "relay rod, arms forward": Case(
        AHEAD, SteeringLinkage("relay rod", (150.0, -480.0, 350.0), MIDDLE, 50.0, None, 140.0)
    ),
    "one rod behind": Case(BEHIND, SteeringLinkage("one rod across", None, MIDDLE, stop=radians(33))),
    "one rod ahead": Case(AHEAD, SteeringLinkage("one rod across", None, MIDDLE, stop=radians(30))),
    "rack behind, toed in": Case(
        BEHIND, SteeringLinkage("rack", (-135.0, -499.0, 358.0), MIDDLE, 50.0, toe=radians(0.4)), radians(-1.5)
    ),
    "rack ahead, toed out": Case(
        AHEAD, SteeringLinkage("rack", (150.0, -480.0, 380.0), MIDDLE, 50.0, toe=radians(-1.0)), radians(1.0)
    ),
    "relay rod, toed in": Case(
        BEHIND, SteeringLinkage("relay rod", (-140.0, -480.0, 350.0), MIDDLE, 50.0, None, -160.0, toe=radians(0.7))
    ),
    "one rod, toed in": Case(
        BEHIND, SteeringLinkage("one rod across", None, MIDDLE, stop=radians(33), toe=radians(0.5)), radians(-2.0)
    ),
}
AXIS = (UPPER - LOWER) / np.linalg.norm(UPPER - LOWER)
each_case = pytest.mark.parametrize("case", CASES.values(), ids=CASES)
UPRIGHT_WHEELS = {name: case for name, case in CASES.items() if not case.camber}
MIRROR = np.array([1.0, -1.0, 1.0])


def turned(point: np.ndarray, turn: float) -> np.ndarray:
    return LOWER + Rotation.from_rotvec(AXIS * turn).apply(point - LOWER)


def steer_of(turn: float, spin: tuple[float, float, float] = (0.0, 1.0, 0.0)) -> float:
    x, y, _ = Rotation.from_rotvec(AXIS * turn).apply(spin)
    return atan2(-x, y)


def mirrored(point: np.ndarray) -> np.ndarray:
    return point * MIRROR + np.array([0.0, 2 * MIDDLE, 0.0])


def inner_end(linkage: SteeringLinkage, slide: float) -> np.ndarray:
    assert linkage.inner is not None
    x, y, z = linkage.inner
    if (
        linkage.how == "relay rod"
    ):  # the joint runs on a circle about its shaft, which lies one arm behind or ahead of it
        angle = np.arcsin(slide / linkage.relay_arm)
        x += linkage.relay_arm * np.cos(angle) - linkage.relay_arm
    return np.array([x, y + slide, z])


def closed(case: Case, turn_about: Callable[[float], np.ndarray], rod: float, near: float) -> float:
    """The turn at which the tie-rod end is a rod's length from a point that may move with it."""

    def off(turn: float) -> float:
        return float(np.linalg.norm(turned(case.end, turn) - turn_about(turn))) - rod

    return float(brentq(off, near - 0.2, near + 0.2, xtol=1e-14))


def both_turns(case: Case, inner: float) -> tuple[float, float, float]:
    """Slide, and the turns of inner and outer wheel (the outer as a left wheel turned to the right), scipy alone."""
    if case.linkage.how == "one rod across":
        rod = float(np.linalg.norm(turned(case.end, case.straight) - mirrored(turned(case.end, case.straight))))
        other = mirrored(turned(case.end, inner))
        return 0.0, inner, closed(case, lambda _: other, rod, -inner)
    rod = float(np.linalg.norm(turned(case.end, case.straight) - inner_end(case.linkage, 0.0)))
    end = turned(case.end, inner)

    def off(slide: float) -> float:
        return float(np.linalg.norm(end - inner_end(case.linkage, slide))) - rod

    sense = -1.0 if case.end[0] < 0 else 1.0
    slide = float(brentq(off, sense * -10, sense * 110, xtol=1e-13))
    return slide, inner, closed(case, lambda _: inner_end(case.linkage, -slide), rod, -inner)


TURNS = [0.05, 0.2, 0.35]


@each_case
@pytest.mark.parametrize("inner", TURNS)
def test_both_wheels_stand_where_scipy_closes_the_rods(case: Case, inner: float) -> None:
    slide, _, outer = both_turns(case, inner)
    full = case.front.full
    lock = (inner - case.straight if case.linkage.how == "one rod across" else slide) / full
    assert case.front.at(0.0, lock).turn == pytest.approx(inner, abs=1e-9)
    assert case.front.at(0.0, -lock).turn == pytest.approx(outer, abs=1e-9)
    assert case.front.at(0.0, -lock).steer == pytest.approx(steer_of(outer, case.spin), abs=1e-9)
    assert case.front.at(0.0, 0.0).steer == pytest.approx(-case.linkage.toe, abs=1e-9)


@each_case
@pytest.mark.parametrize("inner", TURNS)
def test_the_short_way_from_inner_to_outer_turn_is_the_same(case: Case, inner: float) -> None:
    _, _, outer = both_turns(case, inner)
    follow = outer_turn(case.upright, case.linkage, tuple(case.end))
    assert -follow(inner) == pytest.approx(outer, abs=1e-9)


@each_case
def test_a_right_turn_is_the_mirror_image_of_a_left_turn(case: Case) -> None:
    """The right wheel, closed by scipy on its own mirrored points, points where the left one does at the opposite lock."""
    _, inner, outer = both_turns(case, 0.3)
    mirrored_axis = Rotation.from_rotvec(-AXIS * MIRROR * outer)  # a mirror image turns the other way about its axis
    spin = mirrored_axis.apply([0.0, -1.0, 0.0])
    assert atan2(spin[0], -spin[1]) == pytest.approx(-steer_of(outer), abs=1e-12)  # whatever the camber
    follow = outer_turn(case.upright, case.linkage, tuple(case.end))
    assert follow(-follow(inner)) == pytest.approx(-inner, abs=1e-9)  # the same bend, told from the other wheel


@each_case
def test_a_sweep_holds_both_wheels_from_straight_ahead_to_full_lock(case: Case) -> None:
    wheels = both_wheels(through_lock(case.front))
    assert [pair.lock for pair in wheels] == [place / 8 for place in range(9)]
    assert wheels[0].inner.turn == pytest.approx(case.straight, abs=1e-12)
    assert all(pair.inner.steer > 0 > pair.outer.steer for pair in wheels[1:])


LEANS = st.tuples(st.floats(-0.25, 0.35), st.floats(-0.1, 0.4))


def axis_leaning(castor: float, inclination: float) -> tuple[float, float, float]:
    axis = np.array([-tan(castor), -tan(inclination), 1.0])
    return tuple(axis / np.linalg.norm(axis))


@settings(max_examples=60)
@given(lean=LEANS, turn=st.floats(-0.9, 0.9))
def test_the_spin_turns_as_scipy_turns_it_and_back(lean: tuple[float, float], turn: float) -> None:
    axis = axis_leaning(*lean)
    spin = Rotation.from_rotvec(np.array(axis) * turn).apply([0.0, 1.0, 0.0])
    assert spin_at(turn, axis) == pytest.approx(tuple(spin), abs=1e-12)
    assert steer_at(turn, axis) == pytest.approx(atan2(-spin[0], spin[1]), abs=1e-12)
    assert turn_at(steer_at(turn, axis), axis) == pytest.approx(turn, abs=1e-9)


# Derived table of a wheel on an axis leaning 10 deg inboard, no castor: turn about the axis, angle on the ground, deg.
@pytest.mark.parametrize(
    ("turn", "ground"), [(10, 9.846586), (20, 19.684588), (30, 29.507215), (40, 39.311003), (-30, -29.507215)]
)
def test_a_wheel_points_less_far_than_it_is_turned(turn: float, ground: float) -> None:
    axis = axis_leaning(0.0, radians(10))
    assert degrees(steer_at(radians(turn), axis)) == pytest.approx(ground, abs=5e-7)


def lowest_point(turn: float, camber: float = 0.0) -> float:
    """Height of the turned wheel's lowest point, by search. camber: straight ahead, where it stands on the ground, rad."""
    rotation = Rotation.from_rotvec(AXIS * turn)
    fore, up = rotation.apply([1.0, 0.0, 0.0]), rotation.apply([0.0, sin(camber), cos(camber)])
    centre = turned(CENTRE, turn)

    def height(around: float) -> float:
        return float(centre[2] + 400 / cos(camber) * (np.cos(around) * fore[2] + np.sin(around) * up[2]))

    found = minimize_scalar(height, bounds=(-2.6, -0.6), method="bounded", options={"xatol": 1e-10})
    return float(found.fun)


@each_case
def test_the_lift_is_that_of_the_searched_lowest_point_over_the_whole_lock(case: Case) -> None:
    for placed in through_lock(case.front).placed:
        assert lift(placed.pose) == pytest.approx(-lowest_point(placed.pose.turn, case.camber), abs=1e-8)


def standing_disc() -> Disc:
    ground = LOWER - AXIS / AXIS[2] * LOWER[2]
    return Disc(400.0, -ground[1], ground[0], *AXIS)


@pytest.mark.parametrize("case", UPRIGHT_WHEELS.values(), ids=UPRIGHT_WHEELS)
def test_lift_and_its_rate_are_the_exact_disc_s_over_the_whole_lock(case: Case) -> None:
    disc = standing_disc()
    for placed in through_lock(case.front).placed:
        assert lift(placed.pose) == pytest.approx(disc.lift(placed.pose.turn), abs=1e-9)
        assert lift_rate(placed.pose) == pytest.approx(disc.lift_rate(placed.pose.turn), abs=1e-9)


@each_case
def test_energy_the_rate_of_the_searched_lift_is_the_moment_of_the_weight_over_the_whole_lock(case: Case) -> None:
    step = 1e-3
    for placed in through_lock(case.front).placed:
        lowest = [lowest_point(placed.pose.turn + way * step, case.camber) for way in (-1, 1)]
        rate = (lowest[0] - lowest[1]) / (2 * step)
        assert lift_rate(placed.pose) == pytest.approx(rate, abs=2e-3)


@each_case
@pytest.mark.parametrize("inner", TURNS)
def test_energy_the_return_lever_is_the_rate_of_both_wheels_lift(case: Case, inner: float) -> None:
    step = 1e-3

    def work(turn: float) -> float:
        _, left, right = both_turns(case, turn)
        return -lowest_point(left, case.camber) - lowest_point(right, case.camber)

    rate = (work(inner + step) - work(inner - step)) / (2 * step)
    slide, _, _ = both_turns(case, inner)
    lock = (inner - case.straight if case.linkage.how == "one rod across" else slide) / case.front.full
    wheels = Steered(lock, case.front.at(0.0, lock), case.front.at(0.0, -lock))
    assert return_lever(case.linkage, wheels) == pytest.approx(rate, abs=5e-3)


@each_case
@pytest.mark.parametrize("inner", TURNS)
def test_rates_of_turn_are_the_differences_of_the_closed_rods(case: Case, inner: float) -> None:
    step = 1e-4
    before, after, here = both_turns(case, inner - step), both_turns(case, inner + step), both_turns(case, inner)
    lock = (inner - case.straight if case.linkage.how == "one rod across" else here[0]) / case.front.full
    wheels = Steered(lock, case.front.at(0.0, lock), case.front.at(0.0, -lock))
    assert outer_per_inner(case.linkage, wheels) == pytest.approx((before[2] - after[2]) / (2 * step), rel=1e-6)
    if case.linkage.how != "one rod across":
        rate = 2 * step / (after[0] - before[0])
        assert turn_per_slide(case.linkage, wheels.inner) == pytest.approx(rate, rel=1e-6)


@each_case
def test_the_tie_rods_lever_is_its_distance_from_the_axis_times_the_sine_between(case: Case) -> None:
    pose = case.front.at(0.0, 0.5)
    end, inner = np.array(pose.tie_rod_end), np.array(pose.inner_end)
    rod = (inner - end) / np.linalg.norm(inner - end)
    moment = np.cross(end - LOWER, rod) @ AXIS
    assert lever(pose) == pytest.approx(moment, abs=1e-9)


# Tie-rod end 150 behind an upright axis; inner end at an angle to the arm: straight across, 30 deg off it, folded, in line.
@pytest.mark.parametrize(
    ("inner", "left"),
    [
        ((-150.0, -400.0, 300.0), 90.0),
        ((-150.0 - 100 * cos(radians(30)), -100 * sin(radians(30)), 300.0), 30.0),  # almost straight through
        ((-150.0 + 100 * cos(radians(20)), -100 * sin(radians(20)), 300.0), 20.0),  # almost folded back
        ((-150.0 + 100 * cos(radians(20)), 100 * sin(radians(20)), 300.0), 20.0),
        ((-260.0, 0.0, 300.0), 0.0),
        ((-150.0 - 50.0, -50.0, 460.0), 45.0),  # seen along the axis: its rise does not count
    ],
)
def test_the_angle_left_between_rod_and_arm(inner: tuple[float, float, float], left: float) -> None:
    pose = wheel_turned(0.0)._replace(tie_rod_end=(-150.0, 0.0, 300.0), inner_end=inner)
    straight = pose._replace(inner_end=(-150.0, -400.0 if inner[1] <= 0 else 400.0, 300.0))
    assert degrees(rod_to_arm(pose, straight)) == pytest.approx(left, abs=1e-9)


def test_the_arm_of_a_leaning_axis_is_square_to_it() -> None:
    out = arm(CASES["rack behind"].front.at(0.0, 0.3))
    assert np.dot(out, AXIS) == pytest.approx(0.0, abs=1e-9)
    across = np.cross(BEHIND - LOWER, AXIS)
    assert hypot(*out) == pytest.approx(np.linalg.norm(across), abs=1e-9)  # distance of the joint from the line


# How far the linkage goes.


def test_a_linkage_that_reaches_its_stop_reaches_the_whole_lock() -> None:
    found = reach(trapezium())
    assert found.share == 1.0
    assert degrees(found.inner) == pytest.approx(35.0, abs=1e-6)


def test_a_rack_that_ends_before_the_stop_reaches_the_whole_lock() -> None:
    front = FrontEnd(
        straight_rack().upright, linkage=SteeringLinkage("rack", (-150.0, -400.0, 300.0), -700.0, 75.0, radians(40))
    )
    assert reach(front).share == 1.0


def test_past_the_place_where_rod_and_inner_arm_lie_in_a_line_one_rod_brings_the_outer_wheel_back() -> None:
    # There the rod, turned further by the inner arm, no longer moves along itself: the outer wheel has turned its most.
    front = FrontEnd(trapezium().upright, linkage=SteeringLinkage("one rod across", None, -700.0, stop=radians(80)))
    straight = front.at(0.0, 0.0)
    most = minimize_scalar(lambda lock: front.at(0.0, -lock).steer, bounds=(0.5, 1.0), method="bounded")
    lock = float(most.x)
    assert rod_to_arm(front.at(0.0, lock), straight) == pytest.approx(0.0, abs=1e-4)
    assert rod_to_arm(front.at(0.0, lock - 0.05), straight) > radians(3)
    assert rod_to_arm(front.at(0.0, lock + 0.05), straight) < -radians(3)


def test_one_rod_across_locks_where_rod_and_outer_arm_lie_in_a_line() -> None:
    # Arms ahead, 42 inboard: the outer joint runs inboard. Rod 1316; the inner joint ahead runs outboard and pulls it until
    # the outer arm lies along the rod, its joint towards the inner wheel: the other axis 1316 + 150 = 1466 from the joint.
    upright = UprightPoints((0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0), (144.0, -42.0, 300.0))
    found = reach(FrontEnd(upright, linkage=SteeringLinkage("one rod across", None, -700.0, stop=radians(80))))
    assert found.share < 1.0

    def left(inner: float) -> float:
        x, y = 144 * cos(inner) + 42 * sin(inner), 144 * sin(inner) - 42 * cos(inner)
        return hypot(x, y + 1400) - 1466

    assert found.inner == pytest.approx(brentq(left, 0.3, 1.3), abs=1e-6)


@pytest.mark.parametrize(
    "linkage",
    [
        SteeringLinkage("rack", (-150.0, -400.0, 300.0), -700.0, travel=200.0),
        SteeringLinkage("rack", (-150.0, -400.0, 300.0), -700.0, travel=200.0, stop=radians(85)),
        SteeringLinkage("rack", (-150.0, -400.0, 300.0), -700.0, stop=radians(85)),
    ],
    ids=["travel too long", "stop too late", "stop alone"],
)
def test_a_rack_locks_where_rod_and_arm_lie_in_a_line(linkage: SteeringLinkage) -> None:
    # In line beyond the axis: rod of 400 from (-150, -y), arm of 150: sqrt(550^2 - 150^2) = 529.150, slide 129.150. There the
    # arm of the outer wheel points inboard along the rod. The inner wheel folds at sqrt(250^2 - 150^2) = 200 from its axis.
    front = FrontEnd(straight_rack().upright, linkage=linkage)
    found = reach(front)
    assert found.share < 1.0
    slide = 550 * cos(np.arcsin(150 / 550)) - 400
    assert slide == pytest.approx(129.150, abs=5e-4)
    most = FrontEnd(
        front.upright, linkage=SteeringLinkage("rack", (-150.0, -400.0, 300.0), -700.0, travel=slide - 1e-6)
    )
    assert found.inner == pytest.approx(most.at(0.0, 1.0).steer, abs=1e-3)


def test_a_rack_goes_no_further_than_where_it_lies_square_to_a_rod() -> None:
    # Outer joint 100 behind and 80 outboard of the axis, rod of 50 to a rack 130 behind. Slid 60 outboard its joint is at
    # (-130, 100), and the outer joint at (-80, 100), as far from the axis as before: the rod runs straight fore and aft.
    # There more slide no longer turns the outer wheel, and beyond would turn it back: 60 of the 70 mm.
    upright = UprightPoints((0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0), (-100.0, 80.0, 300.0))
    front = FrontEnd(upright, linkage=SteeringLinkage("rack", (-130.0, 40.0, 300.0), -700.0, travel=70.0))
    found = reach(front)
    assert found.share == pytest.approx(60 / 70, abs=1e-9)
    assert front.at(0.0, -found.share).tie_rod_end == pytest.approx((-80.0, 100.0, 300.0), abs=1e-4)


# The turning circle.


@pytest.mark.parametrize("radius", [4000.0, 5000.0, 9000.0])
def test_ideal_wheels_run_round_one_centre(radius: float) -> None:
    inner, outer = atan2(2600, radius - 700), atan2(2600, radius + 700)
    wheels = Steered(1.0, wheel_turned(inner), wheel_turned(-outer))
    # The outer wheel stands square to its radius, so half the tyre's width adds to it straight.
    expected = hypot(2600, radius + 700) + 100
    assert outer_edge_radius(wheels, 2600.0, -700.0, 200.0) == pytest.approx(expected, rel=1e-12)


def test_wheels_that_disagree_run_round_the_middle_of_what_they_ask_for() -> None:
    # Both at 30 deg: centres 2600 / tan 30 deg = 4503.33 from each axis, so 4503.33 and 3103.33 from the inner one.
    wheels = Steered(1.0, wheel_turned(radians(30)), wheel_turned(-radians(30)))
    middle = (4503.3321 + 3103.3321) / 2
    assert outer_edge_radius(wheels, 2600.0, -700.0, 0.0) == pytest.approx(hypot(2600, middle + 1400), abs=1e-3)


def test_a_wheel_that_points_straight_ahead_has_no_centre() -> None:
    wheels = Steered(1.0, wheel_turned(0.4), Pose(*wheel_turned(0.0))._replace(spin=(0.0, 1.0, 0.0)))
    with pytest.raises(ZeroDivisionError):
        outer_edge_radius(wheels, 2600.0, -700.0, 200.0)


def test_the_share_is_nought_for_parallel_wheels_and_less_where_the_outer_turns_more() -> None:
    assert ackermann(0.4, 0.4, 0.5) == 0.0
    assert ackermann(0.4, 0.45, 0.5) < 0
    assert ackermann(0.4, ideal_outer(0.4, 0.5), 0.5) == pytest.approx(1.0)


# The best arm.


@each_case
def test_a_general_minimiser_finds_the_same_best_arm(case: Case) -> None:
    front, ratio = case.front, 1550 / 2600
    full = front.at(0.0, 1.0).turn
    turns = [full * place / 8 for place in range(1, 9)]
    found = best_arm(case.upright, case.linkage, turns, ratio)
    foot = LOWER + (UPPER - LOWER) * (case.end[2] - LOWER[2]) / (UPPER[2] - LOWER[2])
    length = hypot(*(case.end - foot)[:2])
    side = np.sign(case.end[0])

    def error(inward: float) -> float:
        end = foot + length * np.array([side * cos(inward), -sin(inward), 0.0])
        moved, spin = replace(case, end=end), case.spin
        off = [-steer_of(both_turns(moved, turn)[2], spin) - ideal_outer(steer_of(turn, spin), ratio) for turn in turns]
        return float(np.sqrt(np.mean(np.square(off))))

    near = found.inward
    least = minimize_scalar(error, bounds=(near - 0.1, near + 0.1), method="bounded", options={"xatol": 1e-7})
    assert found.inward == pytest.approx(least.x, abs=1e-4)
    assert found.error == pytest.approx(least.fun, abs=1e-7)
    assert found.end == pytest.approx(tuple(foot + length * np.array([side * cos(near), -sin(near), 0.0])), abs=1e-9)


@each_case
def test_no_arm_of_a_coarse_scan_does_better_than_the_best(case: Case) -> None:
    turns = [case.front.at(0.0, 1.0).turn * place / 8 for place in range(1, 9)]
    found, built = best_arm(case.upright, case.linkage, turns, 0.6), arm_of(case.upright)
    tried = 0
    for inward in range(-40, 41, 4):
        try:
            off = errors(case.upright, case.linkage, built.end(radians(inward)), turns, 0.6)
        except CannotReach:  # some arms of the scan lock before
            continue
        assert root_mean_square(off) >= found.error - 1e-12
        tried += 1
    assert tried > 8
    assert abs(found.largest) >= found.error


def test_behind_the_axle_the_best_arm_leans_in_and_ahead_of_it_out() -> None:
    for name, sense in (("rack behind", 1), ("one rod behind", 1), ("rack ahead", -1), ("one rod ahead", -1)):
        case = CASES[name]
        best = best_arm(case.upright, case.linkage, [0.1, 0.2, 0.3, 0.4], 0.6)
        assert sense * best.inward > radians(5), name


def test_the_axis_of_the_upright_runs_from_lower_to_upper_pivot() -> None:
    assert axis_of(CASES["rack behind"].upright) == pytest.approx(tuple(AXIS), abs=1e-12)


def test_an_arm_straight_fore_and_aft_aims_at_no_place() -> None:
    with pytest.raises(ZeroDivisionError):
        aim(arm_of(straight_rack().upright), -700.0)


def test_an_arm_ahead_of_the_axle_that_leans_out_aims_behind_it_too() -> None:
    # 144 ahead and 42 outboard: the line runs back to the centre line 700 x 144 / 42 = 2400 behind the axis.
    upright = UprightPoints((0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0), (144.0, 42.0, 300.0))
    assert aim(arm_of(upright), -700.0) == pytest.approx(-2400.0, abs=1e-9)
    assert degrees(arm_of(upright).inward) == pytest.approx(-16.2602, abs=5e-5)


@pytest.mark.parametrize(
    ("end", "across", "height"),
    [
        (-280.3185945445526, 47.32340106813079, 268.771917354847),
        (-155.66949530440127, 50.14590623519218, 336.55341358101066),
    ],
)
def test_a_rod_in_a_line_with_its_arm_as_it_stands_reaches_no_lock(end: float, across: float, height: float) -> None:
    # The arm points straight across at the other one; found by trying: rounding alone put the rod out of its own reach.
    upright = UprightPoints((0.0, -100.0, 250.0), (0.0, -100.0 - across, 600.0), (0.0, 0.0, 400.0), (0.0, end, height))
    front = FrontEnd(upright, linkage=SteeringLinkage("one rod across", None, -800.0, None, 0.5))
    assert reach(front)[:2] == (0.0, 0.0)


def test_the_ideal_by_true_contacts_rolls_about_one_centre_on_the_rear_axles_line() -> None:
    """The centre is where the inner wheel's spin line and the rear axle's line meet, by numpy; the outer wheel's spin line at the
    ideal angle, drawn from its own contact, must pass through it.
    """
    front = leaning()
    wheels = Steered(1.0, front.at(0.0, 1.0), front.at(0.0, -1.0))
    wheelbase, centre_line = 2600.0, front.linkage.centre_line if front.linkage else 0.0
    contact, spin = np.array(wheels.inner.contact[:2]), np.array(wheels.inner.spin[:2])
    along, back = np.linalg.solve(np.column_stack([spin, -np.array([0.0, 1.0])]), np.array([-wheelbase, 0.0]) - contact)
    centre = np.array([-wheelbase, back])
    assert contact + along * spin == pytest.approx(centre)
    angle = ideal_outer_of(wheels, wheelbase, centre_line)
    outer = np.array([wheels.outer.contact[0], 2 * centre_line - wheels.outer.contact[1]])
    to_centre = centre - outer
    # A wheel that points `angle` to the left has its spin axis along (-sin, cos).
    assert np.cross(np.append(to_centre, 0.0), (-np.sin(angle), np.cos(angle), 0.0))[2] == pytest.approx(0.0, abs=1e-6)
    assert abs(degrees(angle - ideal_outer(wheels.inner.steer, -2 * centre_line / wheelbase))) < 1.0


@pytest.mark.parametrize(
    ("share", "words"), [(1.0, "the whole lock"), (0.8, "80% of the lock, then the linkage locks")]
)
def test_how_far_the_wheels_follow_is_told_in_a_line(share: float, words: str) -> None:
    assert Reach(share, 0.4).text == words
