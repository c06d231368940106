"""The engine that moves a front corner: links keep their lengths, the upright stays rigid, nothing jumps to another branch.

The outside check is scipy: the upright as a free rigid body, six unknowns, solved by least squares from the lengths of
its links alone. It shares nothing with the engine but the points at ride height.
"""

from dataclasses import replace
from itertools import pairwise
from math import acos, asin, cos, degrees, dist, isclose, pi, radians, sin
from typing import Any

import numpy as np
import pytest
import sympy
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, least_squares
from scipy.spatial.transform import Rotation

from rules.motion.circle import PivotCircle, hinged
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import CannotReach, Hinge, Pose, UprightPoints, mirrored
from rules.motion.sweep import Worst, envelope, highest, lowest, spread, straight_sweep
from tests.support.front_ends import meeting_arms, parallel_arms

Point = tuple[float, float, float]

# A front end in round figures, arms behind the axle: no two points share a plane, so nothing is nought by luck.
UPRIGHT = UprightPoints((12.0, -75.0, 280.0), (-16.0, -120.0, 540.0), (0.0, 0.0, 400.0), (-125.0, -140.0, 350.0))
LOWER = Hinge((170.0, -490.0, 300.0), (-190.0, -510.0, 285.0))
UPPER = Hinge((120.0, -420.0, 515.0), (-150.0, -400.0, 500.0))
INNER = (-140.0, -470.0, 345.0)
CENTRE_LINE = -800.0

RACK = SteeringLinkage("rack", INNER, CENTRE_LINE, travel=60.0)
RELAY = SteeringLinkage("relay rod", INNER, CENTRE_LINE, travel=60.0, relay_arm=-130.0)
ONE_ROD = SteeringLinkage("one rod across", None, CENTRE_LINE, stop=radians(28))


def built(linkage: SteeringLinkage = RACK) -> FrontEnd:
    return FrontEnd(UPRIGHT, (LOWER, UPPER), linkage)


def lengths(front: FrontEnd, pose: Pose) -> dict[str, float]:
    """Every length and angle that must never change, of one pose."""
    assert front.arms is not None and pose.tie_rod_end is not None and pose.inner_end is not None
    lower, upper = front.arms
    arm = np.subtract(pose.tie_rod_end, pose.wheel_centre)
    return {
        "lower arm, front": dist(pose.lower, lower.front),
        "lower arm, rear": dist(pose.lower, lower.rear),
        "upper arm, front": dist(pose.upper, upper.front),
        "upper arm, rear": dist(pose.upper, upper.rear),
        "between the pivots": dist(pose.lower, pose.upper),
        "lower pivot to wheel centre": dist(pose.lower, pose.wheel_centre),
        "upper pivot to wheel centre": dist(pose.upper, pose.wheel_centre),
        "lower pivot to tie-rod end": dist(pose.lower, pose.tie_rod_end),
        "upper pivot to tie-rod end": dist(pose.upper, pose.tie_rod_end),
        "wheel centre to tie-rod end": dist(pose.wheel_centre, pose.tie_rod_end),
        "spin axis": dist(pose.spin, (0.0, 0.0, 0.0)),
        "spin axis along the steering axis": float(np.dot(pose.spin, np.subtract(pose.upper, pose.lower))),
        "spin axis along the steering arm": float(np.dot(pose.spin, arm)),
        # The same three points and directions, mirrored, would pass all of the above: handedness tells them apart.
        "handedness": float(np.dot(np.cross(arm, pose.spin), np.subtract(pose.upper, pose.lower))) / 1000,
        "tie rod": dist(pose.tie_rod_end, pose.inner_end),
    }


def assert_rigid(front: FrontEnd, poses: list[Pose]) -> None:
    ride = lengths(front, front.at(0.0, 0.0))
    for pose in poses:
        for name, length in lengths(front, pose).items():
            assert isclose(length, ride[name], rel_tol=1e-9, abs_tol=1e-9), name


# --- every link keeps its length -------------------------------------------------------------------------------------


@pytest.mark.parametrize("linkage", [RACK, RELAY, ONE_ROD], ids=lambda linkage: linkage.how)
def test_every_link_keeps_its_length_over_all_travel_and_lock(linkage: SteeringLinkage) -> None:
    front = built(linkage)
    swept = envelope(front, 90.0, 110.0, 15, 15)
    assert len(swept.placed) == 225 and not swept.blocked
    assert_rigid(front, [placed.pose for placed in swept.placed])


def buildable() -> st.SearchStrategy[dict[str, Any]]:
    def near(x: float, y: float, z: float, by: float = 25.0) -> st.SearchStrategy[Point]:
        return st.tuples(st.floats(x - by, x + by), st.floats(y - by, y + by), st.floats(z - by, z + by))

    return st.fixed_dictionaries(
        {
            "lower": near(12.0, -75.0, 280.0),
            "upper": near(-16.0, -120.0, 540.0),
            "end": st.one_of(near(-125.0, -140.0, 350.0), near(125.0, -90.0, 350.0)),
            "lower_front": near(170.0, -490.0, 300.0, 40.0),
            "lower_rear": near(-190.0, -510.0, 285.0, 40.0),
            "upper_front": near(120.0, -420.0, 515.0, 40.0),
            "upper_rear": near(-150.0, -400.0, 500.0, 40.0),
            "inner_across": st.floats(-520.0, -420.0),
            "inner_up": st.floats(320.0, 380.0),
        }
    )


def from_drawn(drawn: dict[str, Any], how: str) -> FrontEnd:
    upright = UprightPoints(drawn["lower"], drawn["upper"], (0.0, 0.0, 400.0), drawn["end"])
    arms = (Hinge(drawn["lower_front"], drawn["lower_rear"]), Hinge(drawn["upper_front"], drawn["upper_rear"]))
    inner = (drawn["end"][0], drawn["inner_across"], drawn["inner_up"])
    linkages = {
        "rack": SteeringLinkage("rack", inner, CENTRE_LINE, travel=40.0),
        "relay rod": SteeringLinkage("relay rod", inner, CENTRE_LINE, travel=40.0, relay_arm=120.0),
        "one rod across": SteeringLinkage("one rod across", None, CENTRE_LINE, stop=radians(20)),
    }
    return FrontEnd(upright, arms, linkages[how])


@pytest.mark.parametrize("how", ["rack", "relay rod", "one rod across"])
@settings(max_examples=20)
@given(drawn=buildable())
def test_every_link_keeps_its_length_whatever_the_points(how: str, drawn: dict[str, Any]) -> None:
    front = from_drawn(drawn, how)
    swept = envelope(front, 60.0, 60.0, 5, 5)
    assume(len(swept.placed) > 12)
    assert_rigid(front, [placed.pose for placed in swept.placed])


@pytest.mark.parametrize("travel", [-80.0, -30.0, 40.0, 90.0])
def test_a_stop_holds_the_inner_wheel_of_one_rod_at_every_travel(travel: float) -> None:
    """The outer wheel is closed by scipy: its end turned about the axis until the rod of 2 x (800 - 140) mm reaches."""
    front = built(ONE_ROD)
    inner, outer, ride = front.at(travel, 1.0), front.at(travel, -1.0), front.at(0.0, 1.0)
    assert inner.turn == pytest.approx(ride.turn, abs=1e-9)
    assert inner.steer != pytest.approx(ride.steer, abs=1e-4)  # seen from above the leaning axis shows another angle
    axis = np.subtract(inner.upper, inner.lower) / dist(inner.upper, inner.lower)

    def off(turn: float) -> float:
        end = np.add(inner.lower, Rotation.from_rotvec(axis * turn).apply(np.subtract(inner.tie_rod_end, inner.lower)))
        return dist(mirrored(tuple(end), CENTRE_LINE), inner.tie_rod_end or ()) - 1320.0

    turned = brentq(off, -1.4, -0.5, xtol=1e-14)
    assert outer.turn - inner.turn == pytest.approx(turned, abs=1e-9)
    assert front.held_by(travel) == "wheel"


def test_a_box_lets_the_wheels_of_one_rod_go_as_far_from_their_middle_as_at_ride_height() -> None:
    front = built(replace(ONE_ROD, stop_on="slide"))
    for travel in (-60.0, 0.0, 60.0):
        middle = front.at(travel, 0.0)
        assert front.at(travel, 1.0).turn - middle.turn == pytest.approx(front.full, abs=1e-12)
        assert front.rack_held(travel, 1.0).turn == pytest.approx(front.at(travel, 1.0).turn, abs=1e-12)
    assert front.held_by(60.0) == "slide"


def test_what_holds_full_lock_is_what_binds_first() -> None:
    """60 mm of rack: with no stop its end; a stop at 10 deg before it; one at 60 deg not before it."""
    assert built().held_by(0.0) == "end"
    assert {built(replace(RACK, stop=radians(10))).held_by(travel) for travel in (-60.0, 0.0, 60.0)} == {"wheel"}
    at_rack = built(replace(RACK, stop=radians(10), stop_on="slide"))
    assert {at_rack.held_by(travel) for travel in (-60.0, 0.0, 60.0)} == {"slide"}
    assert {built(replace(RACK, stop=radians(60))).held_by(travel) for travel in (-60.0, 0.0, 60.0)} == {"end"}
    assert built(replace(RACK, travel=None, stop=radians(85))).held_by(0.0) == "links"


# --- travel ----------------------------------------------------------------------------------------------------------


@given(travel=st.floats(-100.0, 130.0))
@settings(max_examples=60)
def test_travel_is_how_far_the_wheel_centre_rises_with_the_wheel_straight(travel: float) -> None:
    pose = built().straight(travel)
    assert pose.wheel_centre[2] - 400.0 == pytest.approx(travel, abs=1e-9)
    assert pose.steer == pytest.approx(0.0, abs=1e-12)


def test_equal_parallel_arms_carry_the_wheel_straight_up() -> None:
    # Both arms 300 long: at 60 mm the outer pivots, and all else, have come in by 300 - root(300^2 - 60^2).
    front = parallel_arms()
    for travel in (-60.0, -20.0, 35.0, 60.0):
        pose = front.straight(travel)
        inward = 300.0 - (300.0**2 - travel**2) ** 0.5
        assert pose.camber == pytest.approx(0.0, abs=1e-12)
        assert pose.castor == pytest.approx(front.straight(0.0).castor, abs=1e-12)
        assert pose.contact == pytest.approx((0.0, -inward, travel), abs=1e-9)


def test_travel_the_arms_cannot_reach_says_how_far_they_go() -> None:
    # Level lower arm of 300, level upper of 150 above it, 250 apart, pivots over each other: the upper arm and the
    # upright lie in one line when the lower pivot is 150 + 250 = 400 from the upper hinge. From (-380, 300) and
    # (-230, 550): x^2 + y^2 = 300^2 about the first, (x - 150)^2 + (y - 250)^2 = 400^2 about the second.
    upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -80.0, 550.0), (0.0, -80.0, 400.0))
    lower = Hinge((100.0, -380.0, 300.0), (-100.0, -380.0, 300.0))
    upper = Hinge((100.0, -230.0, 550.0), (-100.0, -230.0, 550.0))
    front = FrontEnd(upright, (lower, upper))
    # Difference: 300 x + 500 y = 300^2 + 150^2 + 250^2 - 400^2 = 15000, so x = 50 - 5 y / 3 and, in the circle,
    # (34/9) y^2 - (500/3) y + 2500 - 90000 = 0; the wheel falls, so y is the root that is minus: -131.7.
    y = (500 / 3 - ((500 / 3) ** 2 + 4 * (34 / 9) * 87500) ** 0.5) / (2 * 34 / 9)
    x = 50 - 5 * y / 3
    # There the upper pivot lies on the line from the upper hinge through the lower pivot, 150 of 400 along it; the
    # wheel centre, 100 of the 250 up the upright, 300 along it: 250 + (y - 250) 300 / 400 above the lower hinge.
    lowest_centre = 250 + (y - 250) * 300 / 400
    assert x**2 + y**2 == pytest.approx(90000)
    with pytest.raises(CannotReach) as limit:
        front.straight(-300.0)
    assert limit.value.reached == pytest.approx(lowest_centre - 100.0, abs=1e-3)
    assert front.straight(limit.value.reached + 0.01).wheel_centre[2] < 300.0


@pytest.mark.parametrize("hinge_height", [248.0, 250.0, 252.0, 254.0, 256.0])
def test_a_wheel_that_turns_back_before_anything_locks_says_how_far_it_went(hinge_height: float) -> None:
    # Seen from the front, the arms gone through by hand in 1/20000 rad: the upper pivot where its arm's circle and the
    # upright's about the lower pivot cross, the wheel centre carried along with the two; its lowest place is the limit.
    upright = UprightPoints((0.0, -68.0, 255.0), (0.0, -95.0, 515.0), (0.0, 0.0, 400.0))
    lower = Hinge((140.0, -460.0, hinge_height), (-140.0, -460.0, hinge_height))
    upper = Hinge((95.0, -405.0, 468.0), (-95.0, -405.0, 468.0))
    low, high, centre = (complex(*point[1:]) for point in (upright.lower, upright.upper, upright.wheel_centre))
    low_hinge, high_hinge = complex(-460.0, hinge_height), complex(-405.0, 468.0)
    pivot = low_hinge + (low - low_hinge) * np.exp(-1j * np.arange(0.0, 1.3, 5e-5))
    apart = np.abs(high_hinge - pivot)
    arm, spacing = abs(high - high_hinge), abs(high - low)
    reach = apart <= arm + spacing
    pivot, apart = pivot[reach], apart[reach]
    angle = np.arccos((spacing**2 + apart**2 - arm**2) / (2 * spacing * apart))
    top = pivot + spacing * (high_hinge - pivot) / apart * np.exp(-1j * angle)  # the side it is built on
    assert top[0] == pytest.approx(high)
    heights = (pivot + (centre - low) / (high - low) * (top - pivot)).imag
    assert heights[-1] > heights.min() + 0.5  # it turns back before it locks
    with pytest.raises(CannotReach) as limit:
        FrontEnd(upright, (lower, upper)).straight(-400.0)
    assert limit.value.reached == pytest.approx(heights.min() - 400.0, abs=1e-3)
    least = limit.value.reached + 1e-6
    assert FrontEnd(upright, (lower, upper)).straight(least).wheel_centre[2] == pytest.approx(400.0 + least, abs=1e-9)


@settings(max_examples=40)
@given(drawn=buildable(), way=st.sampled_from([1.0, -1.0]))
def test_a_corner_never_jumps_and_once_locked_stays_locked(drawn: dict[str, Any], way: float) -> None:
    front = from_drawn(drawn, "rack")
    reached, locked_at = [front.straight(0.0)], None
    for travel in range(4, 400, 4):
        try:
            pose = front.straight(way * travel)
        except CannotReach as limit:
            locked_at = locked_at or limit.reached
            assert abs(limit.reached) < travel and limit.reached == pytest.approx(locked_at, abs=1e-3)
            continue
        assert locked_at is None, "locked, then free again"
        reached.append(pose)
    for one, other in pairwise(reached[:-2]):  # just before it locks a pivot runs fast
        assert dist(one.upper, other.upper) < 60.0 and dist(one.lower, other.lower) < 40.0
    if locked_at is not None:
        assert abs(locked_at) >= abs(reached[-1].wheel_centre[2] - 400.0) - 1e-6


# --- the whole linkage closed by scipy -------------------------------------------------------------------------------


def closed_by_scipy(
    upright: UprightPoints,
    arms: tuple[Hinge, Hinge],
    rod: tuple[Point, Point] | None,
    height: tuple[str, float],
    start: float,
) -> dict[str, np.ndarray]:
    """The upright as a free body held by its links' lengths. rod: inner end at ride and now; without it, held straight.

    height: which point's height is given, and it. start: mm upward where the search begins.
    """
    assert upright.tie_rod_end is not None
    ride = {
        "lower": np.array(upright.lower),
        "upper": np.array(upright.upper),
        "wheel_centre": np.array(upright.wheel_centre),
        "tie_rod_end": np.array(upright.tie_rod_end),
    }

    def moved(unknown: np.ndarray) -> dict[str, np.ndarray]:
        turn = Rotation.from_rotvec(unknown[:3])
        points = {name: turn.apply(point - ride["lower"]) + ride["lower"] + unknown[3:] for name, point in ride.items()}
        points["spin"] = turn.apply([0.0, 1.0, 0.0])
        return points

    def errors(unknown: np.ndarray) -> list[float]:
        now = moved(unknown)
        found = []
        for name, hinge in zip(("lower", "upper"), arms, strict=True):
            for inner in (hinge.front, hinge.rear):
                found.append(np.linalg.norm(now[name] - inner) - np.linalg.norm(ride[name] - inner))
        if rod is None:
            found.append(1000 * now["spin"][0])
        else:
            was, is_now = rod
            found.append(np.linalg.norm(now["tie_rod_end"] - is_now) - np.linalg.norm(ride["tie_rod_end"] - was))
        found.append(now[height[0]][2] - height[1])
        return found

    solved = least_squares(
        errors, [0, 0, 0, 0, 0, start], xtol=1e-15, ftol=1e-15, gtol=1e-15, x_scale=[0.01] * 3 + [1] * 3
    )
    assert np.max(np.abs(solved.fun)) < 1e-9
    return moved(solved.x)


@pytest.mark.parametrize("travel", [-90.0, -40.0, 0.0, 55.0, 110.0])
@pytest.mark.parametrize("lock", [-1.0, -0.4, 0.0, 0.6, 1.0])
def test_the_linkage_closed_by_scipy_stands_where_the_engine_puts_it(travel: float, lock: float) -> None:
    front = built()
    straight = closed_by_scipy(UPRIGHT, (LOWER, UPPER), None, ("wheel_centre", 400.0 + travel), travel)
    inner = (INNER[0], INNER[1] + lock * front.full, INNER[2])
    turned = closed_by_scipy(UPRIGHT, (LOWER, UPPER), (INNER, inner), ("lower", straight["lower"][2]), travel)
    for name, point in straight.items():
        assert getattr(front.straight(travel), name) == pytest.approx(tuple(point), abs=1e-6), name
    pose = front.at(travel, lock)
    assert pose.inner_end == pytest.approx(inner, abs=1e-9)
    for name, point in turned.items():
        assert getattr(pose, name) == pytest.approx(tuple(point), abs=1e-6), name


def mirror(point: Point) -> Point:
    return (point[0], 2 * CENTRE_LINE - point[1], point[2])


@pytest.mark.parametrize("lock", [-0.8, 0.3, 1.0])
def test_the_right_wheel_built_of_its_own_points_is_the_left_ones_mirror_image_at_the_opposite_lock(
    lock: float,
) -> None:
    front, travel = built(), 60.0
    upright = UprightPoints(
        mirror(UPRIGHT.lower), mirror(UPRIGHT.upper), mirror(UPRIGHT.wheel_centre), mirror(UPRIGHT.tie_rod_end)
    )  # type: ignore[arg-type]
    arms = tuple(Hinge(mirror(hinge.front), mirror(hinge.rear)) for hinge in (LOWER, UPPER))
    height = ("lower", front.held(travel)[0][2])
    was = mirror(INNER)
    now = (was[0], was[1] + lock * front.full, was[2])  # one rack: its other end moves the same way
    right = closed_by_scipy(upright, arms, (was, now), height, travel)  # type: ignore[arg-type]
    pose = front.at(travel, -lock)
    for name in ("lower", "upper", "wheel_centre", "tie_rod_end"):
        assert mirrored(getattr(pose, name), CENTRE_LINE) == pytest.approx(tuple(right[name]), abs=1e-6), name
    assert pose.inner_end is not None
    assert mirrored(pose.inner_end, CENTRE_LINE) == pytest.approx(now, abs=1e-9)
    # scipy's spin axis began pointing left; the engine's points outboard, to the right
    assert (pose.spin[0], -pose.spin[1], pose.spin[2]) == pytest.approx(tuple(-right["spin"]), abs=1e-9)


def test_a_point_and_its_mirror_image_are_as_far_from_the_centre_line() -> None:
    # 240 outboard of a line 800 inboard of the tyre plane is y = -560; 240 beyond it is y = -1040.
    assert mirrored((5.0, -560.0, 30.0), CENTRE_LINE) == (5.0, -1040.0, 30.0)
    assert mirrored((5.0, -1040.0, 30.0), CENTRE_LINE) == (5.0, -560.0, 30.0)


def test_a_corner_steered_otherwise_is_as_if_built_so() -> None:
    front = built()
    front.held(60.0)  # found before, and kept
    steered, anew = front.steered(UPRIGHT, RELAY), built(RELAY)
    for travel, lock in ((0.0, 1.0), (60.0, -0.5), (-40.0, 0.3)):
        for one, other in zip(steered.at(travel, lock), anew.at(travel, lock), strict=True):
            assert one == pytest.approx(other, abs=1e-12)
    assert front.at(60.0, 0.5).steer != pytest.approx(steered.at(60.0, 0.5).steer)
    with pytest.raises(CannotReach):  # a rod straight fore and aft from the axis' own plane steers nothing
        front.steered(replace(UPRIGHT, tie_rod_end=UPRIGHT.lower), RACK)


STOPPED = SteeringLinkage("rack", RACK.inner, RACK.centre_line, travel=70.0, stop=radians(28))


def test_a_stop_on_the_upright_holds_the_wheels_turn_at_every_travel() -> None:
    front = built(STOPPED)
    turn = front.at(0.0, 1.0).turn
    assert degrees(front.at(0.0, 1.0).steer) == pytest.approx(28.0, abs=1e-9)
    for travel in (-60.0, 40.0, 90.0):
        inner = front.at(travel, 1.0)
        assert inner.turn == pytest.approx(turn, abs=1e-9)
        # the other wheel stands at the same place of the rack
        assert front.at(travel, -1.0).inner_end[1] - RACK.inner[1] == pytest.approx(RACK.inner[1] - inner.inner_end[1])
        assert dist(inner.tie_rod_end, inner.inner_end) == pytest.approx(
            dist(UPRIGHT.tie_rod_end, RACK.inner), abs=1e-9
        )


def test_a_stop_on_rack_or_box_holds_the_slide_and_the_wheel_follows_the_travel() -> None:
    front = built(replace(STOPPED, stop_on="slide"))
    assert degrees(front.at(0.0, 1.0).steer) == pytest.approx(28.0, abs=1e-9)  # where it was set, nothing differs
    for travel in (-60.0, 40.0, 90.0):
        inner = front.at(travel, 1.0)
        assert inner.inner_end == pytest.approx(front.at(0.0, 1.0).inner_end)
        assert abs(inner.turn - front.at(0.0, 1.0).turn) > radians(0.05)


@pytest.mark.parametrize("linkage", [RACK, RELAY, ONE_ROD], ids=lambda linkage: linkage.how)
@pytest.mark.parametrize("toe", [radians(-1.0), radians(0.3)])
def test_with_the_toe_set_every_link_keeps_its_length_from_there(linkage: SteeringLinkage, toe: float) -> None:
    front, plain = built(replace(linkage, toe=toe)), built(linkage)
    assert front.at(0.0, 0.0).steer == pytest.approx(-toe, abs=1e-9)  # the left wheel's front to the right is toe-in
    assert front.straight(0.0).steer == pytest.approx(0.0, abs=1e-12)  # held straight ahead, it is straight
    assert_rigid(
        front, [front.at(travel, lock) for travel in (-60.0, 0.0, 80.0) for lock in (-1.0, -0.3, 0.0, 0.7, 1.0)]
    )
    if linkage.stop is not None:  # a stop is where it was measured, whatever the toe
        assert front.at(0.0, 1.0).steer == pytest.approx(plain.at(0.0, 1.0).steer, abs=1e-9)


def test_with_the_rack_held_the_wheel_turns_with_the_travel() -> None:
    front = built(STOPPED)
    held = front.rack_held(90.0, 1.0)
    assert held.inner_end == pytest.approx(front.at(0.0, 1.0).inner_end)
    assert held.turn != pytest.approx(front.at(90.0, 1.0).turn, abs=1e-4)


def test_the_racks_own_end_comes_first_where_it_does() -> None:
    short = SteeringLinkage("rack", RACK.inner, RACK.centre_line, travel=20.0, stop=radians(28))
    for travel in (-60.0, 0.0, 90.0):
        assert abs(built(short).at(travel, 1.0).inner_end[1] - RACK.inner[1]) == pytest.approx(20.0)


def test_a_lock_out_of_reach_leaves_the_last_place_before_it_in_the_sweep() -> None:
    far = built(SteeringLinkage("rack", RACK.inner, RACK.centre_line, travel=400.0))
    swept = envelope(far, 0.0, 0.0)
    last = max(placed.lock for placed in swept.placed)
    assert last < min(blocked.lock for blocked in swept.blocked if blocked.lock > 0)
    far.at(0.0, last)
    with pytest.raises(CannotReach):
        far.at(0.0, last + 1e-4)


# --- steering --------------------------------------------------------------------------------------------------------


def test_a_turn_is_a_rotation_about_the_steering_axis_as_sympy_makes_it() -> None:
    pose = built().at(0.0, 0.75)
    axis = [
        sympy.Rational(str(upper)) - sympy.Rational(str(lower))
        for upper, lower in zip(UPRIGHT.upper, UPRIGHT.lower, strict=True)
    ]
    turn = sympy.Quaternion.from_axis_angle(axis, sympy.Float(pose.turn, 30))
    foot = sympy.Matrix(UPRIGHT.lower)
    for at_ride, now in ((UPRIGHT.wheel_centre, pose.wheel_centre), (UPRIGHT.tie_rod_end, pose.tie_rod_end)):
        turned = foot + turn.to_rotation_matrix() * (sympy.Matrix(at_ride) - foot)
        assert now == pytest.approx([float(part) for part in turned], abs=1e-9)
    assert pose.spin == pytest.approx([float(part) for part in turn.to_rotation_matrix() * sympy.Matrix([0, 1, 0])])


@pytest.mark.parametrize("linkage", [RACK, RELAY, ONE_ROD], ids=lambda linkage: linkage.how)
def test_full_lock_at_plus_one_points_the_left_wheel_to_the_left(linkage: SteeringLinkage) -> None:
    front = built(linkage)
    assert front.at(0.0, 1.0).steer > radians(15)
    assert front.at(0.0, -1.0).steer < -radians(15)
    assert front.at(0.0, 0.0).steer == pytest.approx(0.0, abs=1e-12)


def test_the_rack_stops_at_its_own_end_or_where_the_wheels_stop_touches_whichever_is_first() -> None:
    free = built()
    assert abs(free.full) == 60.0
    reached = free.at(0.0, 1.0).steer
    early = built(SteeringLinkage("rack", INNER, CENTRE_LINE, travel=60.0, stop=reached - 0.05))
    assert early.at(0.0, 1.0).steer == pytest.approx(reached - 0.05, abs=1e-9) and abs(early.full) < 60.0
    late = built(SteeringLinkage("rack", INNER, CENTRE_LINE, travel=60.0, stop=reached + 0.05))
    assert late.full == free.full
    stop_only = built(SteeringLinkage("rack", INNER, CENTRE_LINE, stop=reached))
    assert abs(stop_only.full) == pytest.approx(60.0, abs=1e-6)


def test_a_rack_ahead_of_the_axle_moves_the_other_way_for_the_same_lock() -> None:
    ahead = UprightPoints(UPRIGHT.lower, UPRIGHT.upper, UPRIGHT.wheel_centre, (125.0, -60.0, 350.0))
    front = FrontEnd(ahead, (LOWER, UPPER), SteeringLinkage("rack", (130.0, -470.0, 345.0), CENTRE_LINE, travel=40.0))
    assert front.full * built().full < 0
    assert front.at(0.0, 1.0).steer > 0


def test_the_relay_rods_ends_swing_on_their_arms() -> None:
    # Arms of 130 pointing rearward, shaft 130 ahead of the joint; 50 sideways: asin(50/130), 12/13 of 130 = 120 back.
    assert RELAY.inner_at(50.0) == pytest.approx((INNER[0] + 130.0 - 120.0, INNER[1] + 50.0, INNER[2]))
    with pytest.raises(CannotReach):
        RELAY.inner_at(130.1)
    assert RACK.inner_at(50.0) == (INNER[0], INNER[1] + 50.0, INNER[2])


def test_one_rod_joins_both_steering_arms_at_its_own_length() -> None:
    front = built(ONE_ROD)
    assert front.at(0.0, 1.0).steer == pytest.approx(radians(28), abs=1e-9)
    for travel in (-60.0, 0.0, 80.0):
        for lock in (0.0, 0.4, 1.0):
            left, right = front.at(travel, lock), front.at(travel, -lock)
            assert left.tie_rod_end is not None and right.tie_rod_end is not None
            other_end = mirrored(right.tie_rod_end, CENTRE_LINE)
            assert dist(left.tie_rod_end, other_end) == pytest.approx(2 * (-140.0 + 800.0), abs=1e-9)
            assert left.inner_end == pytest.approx(other_end, abs=1e-9)


@settings(max_examples=30)
@given(drawn=buildable(), how=st.sampled_from(["rack", "relay rod"]))
def test_a_wheel_turns_steadily_over_the_lock(drawn: dict[str, Any], how: str) -> None:
    front = from_drawn(drawn, how)
    steps = spread(0.0, 1.0, 21)
    swept = envelope(front, 0.0, 0.0, 1, 41).placed
    assert all(other.pose.turn - one.pose.turn > 0.0 for one, other in pairwise(swept))
    # fast only at the very place where it locks, which is in the sweep beside the even steps
    turns = [placed.pose.turn for placed in swept if abs(placed.lock) in steps]
    assert len(turns) > 10
    assert all(other - one < 0.25 for one, other in pairwise(turns))


def test_a_rod_that_cannot_steer_is_refused() -> None:
    on_the_axis = tuple((low + high) / 2 for low, high in zip(UPRIGHT.lower, UPRIGHT.upper, strict=True))
    with pytest.raises(CannotReach):
        FrontEnd(UprightPoints(UPRIGHT.lower, UPRIGHT.upper, UPRIGHT.wheel_centre, on_the_axis), None, RACK)  # type: ignore[arg-type]


def test_a_rack_that_runs_past_the_rods_reach_is_refused_there_and_not_before() -> None:
    far = built(SteeringLinkage("rack", INNER, CENTRE_LINE, travel=400.0))
    with pytest.raises(CannotReach):
        far.at(0.0, 1.0)
    assert far.at(0.0, 0.1).steer > 0


def test_without_arms_there_is_no_travel_and_ride_height_still_steers() -> None:
    front = FrontEnd(UPRIGHT, None, RACK)
    assert front.at(0.0, 1.0).steer == pytest.approx(built().at(0.0, 1.0).steer, abs=1e-12)
    with pytest.raises(CannotReach) as limit:
        front.at(10.0, 0.0)
    assert limit.value.reached == 0.0


# --- a point on an arm -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("arm", "hinge"), [("lower arm", LOWER), ("upper arm", UPPER)])
@pytest.mark.parametrize("travel", [-80.0, 45.0, 100.0])
def test_a_point_on_an_arm_keeps_its_distance_from_the_hinge_and_from_the_outer_pivot(
    arm: str, hinge: Hinge, travel: float
) -> None:
    front, point = built(), (30.0, -300.0, 420.0)
    outer = {"lower arm": (UPRIGHT.lower, front.held(travel)[0]), "upper arm": (UPRIGHT.upper, front.held(travel)[1])}
    was, now = outer[arm]
    moved = front.on_arm(arm, point, travel)
    assert front.on_arm(arm, was, travel) == pytest.approx(now, abs=1e-9)
    assert front.on_arm(arm, hinge.front, travel) == pytest.approx(hinge.front, abs=1e-9)
    assert dist(moved, now) == pytest.approx(dist(point, was), abs=1e-9)
    for inner in (hinge.front, hinge.rear):
        assert dist(moved, inner) == pytest.approx(dist(point, inner), abs=1e-9)
    assert front.on_arm(arm, point, 0.0) == pytest.approx(point, abs=1e-9)


def test_a_point_inboard_of_the_hinge_goes_down_as_the_wheel_rises() -> None:
    # Parallel level arms of 300: at 60 the arm has turned asin(0.2); 100 inboard of the hinge that is 20 down.
    moved = parallel_arms().on_arm("lower arm", (0.0, -480.0, 300.0), 60.0)
    assert moved == pytest.approx((0.0, -380.0 - 100.0 * cos(asin(0.2)), 280.0), abs=1e-9)


# --- pose and sweep --------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("spin", [(0.0, 0.0, -1.0), (0.0, 1e-9, 1.0000000000000002)])
def test_a_wheel_that_lies_flat_stands_on_nothing_lower_than_its_middle(spin: tuple[float, float, float]) -> None:
    lying = Pose((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (10.0, 20.0, 400.0), spin, None, None, 0.0, 400.0)
    assert lying.contact == (10.0, 20.0, 400.0)


def test_the_contact_is_the_lowest_point_of_the_wheels_rim() -> None:
    # The rim gone round in ten-thousandths of a turn: nothing lower than the contact, and the lowest is next to it.
    pose = built().at(70.0, 0.9)
    spin = np.array(pose.spin)
    first = np.cross(spin, [0.0, 0.0, 1.0])
    first /= np.linalg.norm(first)
    second = np.cross(spin, first)
    angles = np.linspace(0, 2 * pi, 10001)
    rim = np.array(pose.wheel_centre) + 400.0 * (np.outer(np.cos(angles), first) + np.outer(np.sin(angles), second))
    lowest_point = rim[np.argmin(rim[:, 2])]
    assert pose.contact[2] <= lowest_point[2] + 1e-9
    assert dist(pose.contact, lowest_point) < 400.0 * 2 * pi / 10000


def test_at_ride_the_pose_reads_what_the_points_say() -> None:
    # Pivots 28 apart along, 45 across, 260 up: tangents 28/260 and 45/260. Lower pivot 280 up and 75 inboard: the axis
    # meets the ground 280 x 45/260 = 48.4615 further out, 26.5385 inboard of the contact.
    pose = built().at(0.0, 0.0)
    assert degrees(pose.castor) == pytest.approx(6.1466, abs=1e-4)  # 28/260 = 0.1076923, its arctangent
    assert -pose.axis[1] / pose.axis[2] == pytest.approx(0.1730769, abs=1e-7)  # 45/260
    assert pose.ground_offset == pytest.approx(26.5385, abs=1e-4)
    assert (pose.camber, pose.turn) == pytest.approx((0.0, 0.0), abs=1e-12)
    assert pose.contact == pytest.approx((0.0, 0.0, 0.0), abs=1e-9)


def test_a_wheel_leaning_outboard_at_the_top_has_plus_camber() -> None:
    pose = meeting_arms().straight(0.0)._replace(spin=(0.0, cos(0.1), -sin(0.1)))
    assert pose.camber == pytest.approx(0.1)
    assert pose.contact == pytest.approx((0.0, -400.0 * sin(0.1), 400.0 - 400.0 * cos(0.1)))


def test_a_sweep_lists_what_it_cannot_reach_and_names_the_worst_place() -> None:
    front = built()
    swept = straight_sweep(front, 900.0, 100.0)
    reached = {placed.travel for placed in swept.placed}
    assert {blocked.travel for blocked in swept.blocked} | reached >= set(spread(-900.0, 100.0, 9))
    # and the last place before the arms lock
    assert min(reached) == pytest.approx(max(blocked.locks_at for blocked in swept.blocked), abs=1e-3)
    assert all(-900.0 < blocked.locks_at < 0.0 for blocked in swept.blocked) and swept.blocked
    assert "out of reach" in swept.text
    whole = envelope(front, 50.0, 100.0)
    assert len(whole.placed) == 81 and "out of reach" not in whole.text
    most, least = highest(whole, lambda pose: pose.steer), lowest(whole, lambda pose: pose.wheel_centre[2])
    assert isinstance(most, Worst) and most.lock == 1.0 and front.at(most.travel, most.lock).steer == most
    assert isinstance(least, Worst) and least.travel == -50.0


@pytest.mark.parametrize(
    ("least", "most", "count", "places"),
    [
        (
            -90.0,
            110.0,
            9,
            [-90.0, -65.0, -40.0, -15.0, 0.0, 35.0, 60.0, 85.0, 110.0],
        ),  # 10 is nearest nought: moved to it
        (0.0, 100.0, 3, [0.0, 50.0, 100.0]),
        (-100.0, 0.0, 3, [-100.0, -50.0, 0.0]),
        (0.0, 0.0, 9, [0.0]),
    ],
)
def test_places_are_spread_from_end_to_end_with_ride_height_among_them(
    least: float, most: float, count: int, places: list[float]
) -> None:
    assert spread(least, most, count) == places


# --- the one problem of the circle -----------------------------------------------------------------------------------


@given(
    angle=st.floats(-1.5, 1.5),
    point=st.tuples(st.floats(-900, -500), st.floats(-200, 200), st.floats(-200, 200)),
)
@settings(max_examples=60)
def test_a_circle_finds_the_angle_a_link_was_made_for(angle: float, point: Point) -> None:
    circle = hinged((100.0, 0.0, 0.0), (-100.0, 20.0, 10.0), (0.0, 300.0, 40.0))
    length = dist(circle.at(angle), point)
    found = [circle.angle(point, length, side) for side in (1, -1)]
    assert all(dist(circle.at(turn), point) == pytest.approx(length, rel=1e-9) for turn in found)
    assert min(abs(turn - angle) for turn in found) < 1e-4


def test_on_a_hinge_a_growing_angle_lifts_the_point_on_either_side_of_it() -> None:
    for across in (300.0, -300.0):
        circle = hinged((100.0, 0.0, 0.0), (-100.0, 0.0, 0.0), (0.0, across, 0.0))
        assert circle.at(0.0) == (0.0, across, 0.0)
        assert circle.at(0.1)[2] == pytest.approx(300.0 * sin(0.1))


def test_a_link_too_long_or_too_short_for_the_circle_cannot_reach() -> None:
    circle = PivotCircle((0.0, 0.0, 0.0), (2.0, 0.0, 0.0), (0.0, 2.0, 0.0))
    assert circle.angle((5.0, 0.0, 0.0), 3.0, 1) == pytest.approx(0.0, abs=1e-7)  # the near point
    assert abs(circle.angle((5.0, 0.0, 0.0), 7.0, 1)) == pytest.approx(pi, abs=1e-7)  # the far one
    # (2 cos a - 5)^2 + (2 sin a)^2 = 25 where 20 cos a = 4
    assert sorted(circle.angle((5.0, 0.0, 0.0), 5.0, side) for side in (1, -1)) == pytest.approx(
        [-acos(0.2), acos(0.2)]
    )
    for length in (2.9, 7.1):
        with pytest.raises(CannotReach):
            circle.angle((5.0, 0.0, 0.0), length, 1)
    with pytest.raises(CannotReach):
        circle.angle((0.0, 0.0, 0.0), 2.0, 1)  # every place on the circle is as far: nothing is found


def test_past_the_place_where_one_wheel_locks_the_other_is_not_looked_at_either() -> None:
    far = built(SteeringLinkage("rack", RACK.inner, RACK.centre_line, travel=400.0))
    swept = envelope(far, 60.0, 60.0)
    locks = {(placed.travel, placed.lock) for placed in swept.placed}
    assert locks == {(travel, -lock) for travel, lock in locks}
    for travel in {travel for travel, _ in locks}:
        most = max(lock for there, lock in locks if there == travel)
        assert most < 1.0
        for lock in (most, -most):
            far.at(travel, lock)


def test_a_front_end_says_in_a_line_what_is_known_of_it() -> None:
    """Its arms, its steering, both or neither."""
    both = built()
    for arms, linkage, known in (
        (both.arms, RACK, "arms and steering"), (both.arms, None, "arms"), (None, RACK, "steering"),
        (None, None, "the steering axis alone"),
    ):  # fmt: skip
        assert FrontEnd(both.upright, arms, linkage).text == f"the front end's points, with {known}"
