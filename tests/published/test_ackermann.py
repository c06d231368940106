"""Steering of the two front wheels: the ideal angles, the trapezium, and published figures that are wrong.

The relation cot(outer) - cot(inner) = c / b, c the distance between the steering axes and b the wheelbase: Khurmi and Gupta,
Theory of Machines, as quoted elsewhere; so is the gear of slides, its Ex. 9.1 p. 245, which was read in a collection of
worked examples. The trapezium's table is derived: no published example that survives checking was found; its equation is
written out and solved here again, and two solvers agreed on it to 12 digits.
"""

from math import atan, cos, degrees, hypot, radians, sin, sqrt, tan

import pytest
from scipy.optimize import brentq, minimize_scalar

from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import UprightPoints
from rules.motion.steering_arm import Arm, aim, arm_of, best_arm, errors, root_mean_square
from rules.motion.turning import Steered, ackermann, both_wheels, ideal_outer, outer_edge_radius
from tests.support.front_ends import through_lock, wheel_turned

TRACK, WHEELBASE, ARM = 1400.0, 2600.0, 150.0
RULE_OF_THUMB = atan(TRACK / 2 / WHEELBASE)


def trapezium(inward: float, full: float, arm: float = ARM, track: float = TRACK) -> FrontEnd:
    """Axes straight up through the tyres, arms behind, one rod across; full lock at an angle of the inner wheel, rad."""
    end = (-arm * cos(inward), -arm * sin(inward), 300.0)
    upright = UprightPoints((0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0), end)
    return FrontEnd(upright, linkage=SteeringLinkage("one rod across", None, -track / 2, stop=full))


# The centre of the bend 5 and 6 m from the middle of the rear axle: tan inner = 2.6 / (R - 0.7), tan outer = 2.6 / (R + 0.7).
BENDS = [(5.0, 31.159305, 24.519643), (6.0, 26.131001, 21.209226)]


@pytest.mark.parametrize(("radius", "inner", "outer"), BENDS)
def test_the_ideal_angles_meet_at_one_centre(radius: float, inner: float, outer: float) -> None:
    assert degrees(ideal_outer(radians(inner), 1.4 / 2.6)) == pytest.approx(outer, abs=1e-6)
    # Both wheels roll about one centre: the outer one, 0.7 further out and 2.6 ahead of the rear axle, goes round it.
    wheels = Steered(1.0, wheel_turned(radians(inner)), wheel_turned(-radians(outer)))
    around = hypot(1000 * (radius + 0.7), 2600.0)
    assert outer_edge_radius(wheels, 2600.0, -700.0, 0.0) == pytest.approx(around, abs=1e-3)


@pytest.mark.parametrize(("radius", "inner", "outer"), BENDS)
def test_twice_the_kingpin_distance_is_a_mistake_found_in_print(radius: float, inner: float, outer: float) -> None:
    assert abs(degrees(ideal_outer(radians(inner), 2 * 1.4 / 2.6)) - outer) > 3


def test_straight_ahead_the_ideal_is_straight_ahead() -> None:
    assert ideal_outer(0.0, 0.5) == 0.0


# A gear of slides that is exact by its principle: arm at a to the axle, tan a = c / 2b, a bar that slides by x a distance
# h away: tan(a + outer) = (d + x) / h, tan(a - inner) = (d - x) / h, with tan a = d / h. Textbook example: c 1.2, b 2.7 m.
SLIDES = [0.02, 0.05, 0.1]


@pytest.mark.parametrize("slide", SLIDES)
def test_the_exact_gear_of_slides_gives_the_ideal_angles(slide: float) -> None:
    arm = radians(12.528808)
    height, offset = 0.3, 0.3 * tan(arm)
    outer = atan((offset + slide) / height) - arm
    inner = arm - atan((offset - slide) / height)
    assert ideal_outer(inner, 1.2 / 2.7) == pytest.approx(outer, abs=1e-8)


def test_its_angle_in_the_textbook_example_is_12_53_and_not_12_9() -> None:
    # tan a = c / 2b is an arm that aims at the middle of the rear axle: 0.6 from the centre line, 2.7 behind.
    assert aim(Arm((0.0, 0.0, 300.0), 150.0, radians(12.528808), -1), -600.0) == pytest.approx(-2700.0, abs=1e-3)
    wrong = radians(12.9)  # printed in one companion to the textbook: tan was taken for arctan
    outer = atan((0.3 * tan(wrong) + 0.1) / 0.3) - wrong
    inner = wrong - atan((0.3 * tan(wrong) - 0.1) / 0.3)
    assert abs(degrees(ideal_outer(inner, 1.2 / 2.7) - outer)) > 0.05


# Rule of thumb: arms at atan(700 / 2600) = 15.068488 deg. Inner, outer by the linkage, outer ideal, share of the difference.
TABLE = [
    (5, 4.87817, 4.77612, 54.42),
    (10, 9.51930, 9.14821, 56.43),
    (20, 18.09322, 16.92642, 62.04),
    (30, 25.65145, 23.77010, 69.80),
]


@pytest.mark.parametrize(("inner", "outer", "ideal", "share"), TABLE)
def test_the_trapezium_of_the_rule_of_thumb(inner: float, outer: float, ideal: float, share: float) -> None:
    front = trapezium(RULE_OF_THUMB, radians(inner))
    full = both_wheels(through_lock(front))[-1]
    assert degrees(full.inner.steer) == pytest.approx(inner, abs=1e-6)
    assert degrees(-full.outer.steer) == pytest.approx(outer, abs=5e-6)
    assert degrees(ideal_outer(full.inner.steer, TRACK / WHEELBASE)) == pytest.approx(ideal, abs=5e-6)
    assert 100 * ackermann(full.inner.steer, -full.outer.steer, TRACK / WHEELBASE) == pytest.approx(share, abs=5e-3)


def by_the_closing_equation(inner: float, inward: float, track: float, arm: float) -> float:
    """[w - d(sin(B+i) + sin(B-o))]^2 + d^2 [cos(B-o) - cos(B+i)]^2 = (w - 2 d sin B)^2, solved for o."""

    def gap(outer: float) -> float:
        across = track - arm * (sin(inward + inner) + sin(inward - outer))
        along = arm * (cos(inward - outer) - cos(inward + inner))
        return across**2 + along**2 - (track - 2 * arm * sin(inward)) ** 2

    return float(brentq(gap, 0.0, 1.2, xtol=1e-13))


@pytest.mark.parametrize("inward", [5, 10, 15, 22, 28])
@pytest.mark.parametrize("inner", [3, 14, 27, 38])
def test_the_front_end_obeys_the_closing_equation(inner: float, inward: float) -> None:
    front = trapezium(radians(inward), radians(inner))
    expected = by_the_closing_equation(radians(inner), radians(inward), TRACK, ARM)
    assert -front.at(0.0, -1.0).steer == pytest.approx(expected, abs=1e-9)


DEGREES = [radians(turn) for turn in range(1, 36)]


def test_the_rule_of_thumb_leaves_1_2276_deg_over_35_deg_of_lock() -> None:
    front = trapezium(RULE_OF_THUMB, radians(35))
    assert front.linkage is not None and front.upright.tie_rod_end is not None
    found = errors(front.upright, front.linkage, front.upright.tie_rod_end, DEGREES, TRACK / WHEELBASE)
    assert degrees(root_mean_square(found)) == pytest.approx(1.2276, abs=5e-5)
    assert degrees(found[29]) == pytest.approx(1.8814, abs=5e-5)


def test_the_best_arm_stands_at_21_984_deg_and_leaves_0_2018() -> None:
    front = trapezium(RULE_OF_THUMB, radians(35))
    assert front.linkage is not None
    best = best_arm(front.upright, front.linkage, DEGREES, TRACK / WHEELBASE)
    assert degrees(best.inward) == pytest.approx(21.984, abs=0.005)
    assert degrees(best.error) == pytest.approx(0.2018, abs=5e-5)
    aimed = aim(arm_of(front.upright)._replace(inward=best.inward), -TRACK / 2)
    assert -aimed / WHEELBASE == pytest.approx(0.67, abs=0.005)


def test_a_general_minimiser_over_the_closing_equation_finds_the_same_arm() -> None:
    def error(inward: float) -> float:
        off = [by_the_closing_equation(i, inward, TRACK, ARM) - ideal_outer(i, TRACK / WHEELBASE) for i in DEGREES]
        return sqrt(sum(one * one for one in off) / len(off))

    found = minimize_scalar(error, bounds=(0.1, 0.7), method="bounded", options={"xatol": 1e-6})
    assert degrees(found.x) == pytest.approx(21.984, abs=5e-4)


def test_arms_aimed_at_the_rear_axle_give_54_to_80_per_cent_and_not_100() -> None:
    front = trapezium(RULE_OF_THUMB, radians(35))
    assert -aim(arm_of(front.upright), -TRACK / 2) == pytest.approx(WHEELBASE)
    for wheels in both_wheels(through_lock(front))[1:]:
        assert 0.54 < ackermann(wheels.inner.steer, -wheels.outer.steer, TRACK / WHEELBASE) < 0.80


# Seen in print, no publication to name: "10 deg arms: outer 20, inner 23; outer 40, inner 51." No trapezium gives both.
@pytest.mark.parametrize(("outer", "claimed", "least", "most"), [(20, 23, 21.4, 21.5), (40, 51, 48.2, 49.4)])
@pytest.mark.parametrize("arm", [0.10, 0.12, 0.14])
def test_the_published_pairs_of_10_deg_arms_are_not_reproduced(
    arm: float, outer: float, claimed: float, least: float, most: float
) -> None:
    front = trapezium(radians(10), radians(58), arm=arm * TRACK)
    lock = brentq(lambda lock: -front.at(0.0, -lock).steer - radians(outer), 0.1, 1.0)
    inner = degrees(front.at(0.0, lock).steer)
    assert least - 0.05 < inner < most + 0.05
    assert abs(inner - claimed) > 1.4


# Read in service data of three cars: inner, outer at one lock. Far below c / b, which is 0.5 to 0.6: they are not ideal.
SERVICE = [(36 + 40 / 60, 31 + 47 / 60, 0.27065), (33.5, 29 + 46 / 60, 0.23762), (20.0, 18.51, 0.23947)]


@pytest.mark.parametrize(("inner", "outer", "difference"), SERVICE)
def test_service_figures_as_they_stand(inner: float, outer: float, difference: float) -> None:
    # The difference of their cotangents is the ratio of distance between steering axes and wheelbase they would be ideal for.
    assert degrees(ideal_outer(radians(inner), difference)) == pytest.approx(outer, abs=1e-4)
    assert ackermann(radians(inner), radians(outer), difference) == pytest.approx(1.0, abs=1e-4)
    assert ideal_outer(radians(inner), 0.5) < radians(outer)


@pytest.mark.parametrize(("between_axes", "share"), [(62.2, 49.1), (56.0, 53.8)])
def test_a_saloon_of_117_3_in_wheelbase_stands_between_45_and_58_per_cent(between_axes: float, share: float) -> None:
    # How far its steering axes stand apart is not known: the two are the widest and the narrowest it can be, in inches. Its
    # wheelbase was read on one page of no standing, so this holds no closer than the range below.
    found = 100 * ackermann(radians(20), radians(18.51), between_axes / 117.3)
    assert found == pytest.approx(share, abs=0.05)
    assert 45 < found < 58
