"""Curves of a front end whose angles are set by hand, as far as it reaches."""

from math import atan, degrees, radians, tan
from types import SimpleNamespace
from typing import Any

import pytest

from rules.drawn.moving.graphs import Curve, graphs
from rules.drawn.moving.scene import LOCK_NOTCHES, TravelAndLock
from rules.measure.outline import Point
from rules.motion.points import CannotReach


class Front:
    """0.02 deg of camber and 0.01 of toe a mm of travel, 40 deg at the inner wheel and 30 at the outer at full lock."""

    bump, droop = 70.0, 50.0

    def __init__(
        self, up: float = 1000.0, locks: int = LOCK_NOTCHES, travels: bool = True, steers: bool = True
    ) -> None:
        """up: mm of travel, and locks: notches, from which on nothing reaches."""
        self.up, self.locks, self.travels, self.steers = up, locks, travels, steers

    def corner(self, travel: float, lock: float) -> Any:
        assert lock == 0.0
        if travel > self.up:
            raise CannotReach(self.up)
        return SimpleNamespace(
            camber=radians(-0.02 * travel), steer=radians(-0.01 * travel), ground_offset=25.4 + 0.1 * travel
        )

    def corners(self, place: TravelAndLock) -> Any:
        if place.lock * LOCK_NOTCHES > self.locks + 1e-6:
            raise CannotReach
        return SimpleNamespace(steer=radians(40 * place.lock)), SimpleNamespace(steer=radians(-30 * place.lock))


def curves(front: Any, units: Any = "metric", **known: float) -> tuple[Curve, ...]:
    return graphs(front, known, units)


def test_curves_over_travel_in_both_units() -> None:
    """From 50 droop to 70 bump in 24 steps of 5 mm; at 25.4 mm, 1 in, camber is -0.508 deg and the offset 25.4 + 2.54."""
    for units, length in (("metric", 1.0), ("inch", 25.4)):
        camber, toe, offset = curves(Front(steers=True), units)[:3]
        for curve in (camber, toe, offset):
            assert (curve.by, len(curve.places)) == ("travel", 25)
            assert curve.places == pytest.approx([-50.0 + 5 * step for step in range(25)])
        place = TravelAndLock(25.4, 0.7)
        assert camber.at(place)[0] == pytest.approx((25.4 / length, -0.508))
        assert toe.at(place)[0] == pytest.approx((25.4 / length, 0.254))
        assert offset.at(place)[0] == pytest.approx((25.4 / length, 27.94 / length))
        assert camber.up_unit == toe.up_unit == "deg"
        assert (offset.up_unit, offset.across) == (("mm", "travel mm") if units == "metric" else ("in", "travel in"))


def test_a_place_beyond_a_curve_is_its_end() -> None:
    camber = curves(Front())[0]
    assert camber.at(TravelAndLock(-400.0, 0.0)) == ((-50.0, pytest.approx(1.0)), None)
    assert camber.at(TravelAndLock(400.0, 0.0)) == ((pytest.approx(70.0), pytest.approx(-1.4)), None)
    assert camber.told(TravelAndLock(33.0, 0.0)).startswith("Camber -0.66 deg")


@pytest.mark.parametrize(("up", "points"), [(-50.5, 0), (-49.0, 0), (-44.0, 2), (1000.0, 25)])
def test_what_the_links_do_not_reach_is_left_out_and_one_place_is_no_curve(up: float, points: int) -> None:
    """Reached are -50, -45, -40, ... as far as up."""
    found = curves(Front(up=up, steers=False))
    assert [len(curve.line) for curve in found] == [points] * (2 if points else 0)


@pytest.mark.parametrize(("locks", "points"), [(-1, 0), (0, 0), (1, 2), (2, 3), (LOCK_NOTCHES, LOCK_NOTCHES + 1)])
def test_locks_that_the_links_do_not_reach_are_left_out_and_one_is_no_curve(locks: int, points: int) -> None:
    found = curves(Front(locks=locks, travels=False))
    assert [len(curve.line) for curve in found] == ([points] if points else [])
    if points:
        assert found[0].places == pytest.approx([notch / LOCK_NOTCHES for notch in range(points)])


def test_outer_over_inner_angle_with_the_ideal_beside_it() -> None:
    """At half lock 20 and 15 deg, the same to both sides. Without scrub cot outer = cot inner + track / wheelbase."""
    (plain,) = curves(Front(travels=False))
    assert plain.at(TravelAndLock(0.0, -0.5)) == plain.at(TravelAndLock(0.0, 0.5))
    assert plain.at(TravelAndLock(9.0, 0.5)) == ((pytest.approx(20.0), pytest.approx(15.0)), None)
    assert plain.told(TravelAndLock(0.0, 0.5)) == "Outer 15 at inner 20 deg, ride"
    (beside,) = curves(Front(travels=False), **{"kingpin_track": 1400.0, "job.wheelbase": 2500.0})
    ideal = degrees(atan(1 / (1 / tan(radians(20.0)) + 1400.0 / 2500.0)))
    _, found = beside.at(TravelAndLock(0.0, 0.5))
    assert found == (pytest.approx(20.0), pytest.approx(ideal))
    assert beside.told(TravelAndLock(0.0, 0.5)) == f"Outer 15, dashed ideal {round(ideal, 2):g}, ride"


GRAPH = Curve(
    "{up} at {across}, {beside}", "travel", (-10.0, 0.0, 30.0), ((-10, 1.0), (0, 2.0), (30, 5.0)), "mm", "deg"
)


@pytest.mark.parametrize(
    ("travel", "point"), [(-10.0, (-10, 1)), (-5.0, (-5, 1.5)), (10.0, (10, 3)), (30.0, (30, 5)), (99.0, (30, 5))]
)
def test_between_two_places_a_curve_is_straight(travel: float, point: Point) -> None:
    assert GRAPH.at(TravelAndLock(travel, 0.3)) == (pytest.approx(point), None)


def test_a_curve_over_lock_does_not_ask_which_side() -> None:
    graph = GRAPH._replace(by="lock", places=(0.0, 0.5, 1.0), beside=((0, 0.0), (0, 4.0), (0, 8.0)))
    assert graph.at(TravelAndLock(50.0, -0.75)) == graph.at(TravelAndLock(0.0, 0.75)) == ((15.0, 3.5), (0.0, 6.0))
    assert graph.told(TravelAndLock(0.0, -0.75)) == "3.5 at 15, 6"
