"""A point on a hinge at a fixed distance from another, by the cosine rule and by lengths that no turn changes."""

from math import acos, atan2, cos, degrees, pi, radians, sin, sqrt

import pytest

from rules.measure.vectors import Vector, minus, size
from rules.motion.circle import PivotCircle, hinged, nearest_turn
from rules.motion.points import CannotReach

CIRCLE = PivotCircle((0.0, 0.0, 0.0), (2.0, 0.0, 0.0), (0.0, 2.0, 0.0))
"""Radius 2 about the z axis, angle 0 on x."""


@pytest.mark.parametrize(
    ("angle", "place"),
    [(0, (3.0, 2.0, 5.0)), (90, (1.0, 2.0, 7.0)), (180, (-1.0, 2.0, 5.0)), (30, (1 + sqrt(3), 2.0, 6.0))],
)
def test_places_on_a_circle_that_stands_upright(angle: float, place: Vector) -> None:
    """Radius 2 about (1, 2, 5), angle 0 to x, growing upward."""
    circle = PivotCircle((1.0, 2.0, 5.0), (2.0, 0.0, 0.0), (0.0, 0.0, 2.0))
    assert circle.at(radians(angle)) == pytest.approx(place)


@pytest.mark.parametrize("off_plane", [0.0, 4.0])
@pytest.mark.parametrize("towards", [0, 35, 80, 170, -100])
@pytest.mark.parametrize("turn", [20, 60, 90, 150])
def test_both_answers_stand_as_far_as_the_cosine_rule_says(turn: int, towards: int, off_plane: float) -> None:
    """From a point 3 off the axis to a place on the circle, an angle apart: d^2 = 2^2 + 3^2 - 2 x 2 x 3 cos, and what the point
    is off the circle's plane squared. One place is so far round one way and one the other."""
    point = (3 * cos(radians(towards)), 3 * sin(radians(towards)), off_plane)
    distance = sqrt(13 - 12 * cos(radians(turn)) + off_plane**2)
    for side, found in ((1, towards - turn), (-1, towards + turn)):
        angle = CIRCLE.angle(point, distance, side)
        assert -pi <= angle <= pi
        assert degrees(angle) == pytest.approx((found + 180) % 360 - 180)
        # Where the circle begins at that place, the same side is told for it.
        begun = PivotCircle((0.0, 0.0, 0.0), CIRCLE.at(angle), CIRCLE.at(angle + pi / 2))
        assert begun.side_of(point) == side


def test_what_is_nearer_or_farther_than_the_circle_is_not_reached() -> None:
    """A point 3 off the middle of a circle of 2: from 1 to 5, and both ends just so."""
    point = (3.0, 0.0, 0.0)
    assert CIRCLE.angle(point, 1.0, 1) == pytest.approx(0.0, abs=1e-12)
    assert abs(CIRCLE.angle(point, 5.0, 1)) == pytest.approx(pi)
    for distance in (0.99, 5.01):
        with pytest.raises(CannotReach):
            CIRCLE.angle(point, distance, 1)


def test_from_the_axis_every_place_is_as_far_and_none_is_told() -> None:
    with pytest.raises(CannotReach):
        CIRCLE.angle((0.0, 0.0, 1.5), 2.5, 1)


@pytest.mark.parametrize("turned_round", [False, True])
def test_a_hinged_point_keeps_its_distances_and_rises_with_the_angle(turned_round: bool) -> None:
    """An arm hinged on a line that leans every way, whichever end of that is called its front."""
    front, rear, point = (120.0, 30.0, 210.0), (-150.0, -12.0, 190.0), (15.0, 330.0, 170.0)
    circle = hinged(rear, front, point) if turned_round else hinged(front, rear, point)
    assert circle.at(0.0) == pytest.approx(point)
    for angle in (0.3, 1.2, -0.8):
        moved = circle.at(angle)
        for end in (front, rear):
            assert size(minus(moved, end)) == pytest.approx(size(minus(point, end)))
    assert circle.at(0.2)[2] > point[2] > circle.at(-0.2)[2]
    # Turned by 0.3 it is 2 x radius x sin 0.15 from where it was.
    assert size(minus(circle.at(0.3), point)) == pytest.approx(2 * size(circle.u) * sin(0.15))


@pytest.mark.parametrize(
    ("a", "b", "c", "near", "wanted"),
    [
        (1.0, 0.0, 0.5, 1.0, 60),  # cos = 1/2: 60 or -60
        (1.0, 0.0, 0.5, -1.0, -60),
        (0.0, 1.0, 0.5, 0.0, 30),  # sin = 1/2: 30 or 150
        (0.0, 1.0, 0.5, 3.0, 150),
        (-1.0, 0.0, 0.5, 2.0, 120),  # cos = -1/2: 120 or -120
        (-1.0, 0.0, 0.5, -2.0, -120),
        (1.0, 0.0, 2.0, 0.0, 0),  # just out of reach
        (3.0, 4.0, 5.0, 0.0, degrees(atan2(4, 3))),  # 5 is all that 3 and 4 come to
        (3.0, 4.0, 2.5, 0.0, degrees(atan2(4, 3)) - 60),
        (3.0, 4.0, 2.5, 2.0, degrees(atan2(4, 3)) + 60),
        (3.0, 4.0, -1.0, 3.0, degrees(atan2(4, 3) + acos(-0.2))),
    ],
)
def test_the_nearest_turn_of_a_sum_of_cosine_and_sine(a: float, b: float, c: float, near: float, wanted: float) -> None:
    assert degrees(nearest_turn(a, b, c, near)) == pytest.approx(wanted)


def test_of_a_sum_far_out_of_reach_the_far_side_is_told() -> None:
    assert abs(nearest_turn(1.0, 0.0, -2.0)) == pytest.approx(pi)
