"""Turning on whole sheets: every value against figures worked out by scipy alone, every check at its limits.

The sheet is the base sheet with steering of its own. What is expected is found with general tools only:
points turned with scipy's rotation, rods closed with its root finder, the wheel's lowest point searched for, moments as
differences of the work of lifting. Axis of the sheet: inclination 10 deg, castor 6 deg, 25 mm inboard on the ground.
"""

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from itertools import product
from math import asin, atan2, cos, degrees, hypot, pi, radians, sin, tan

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, minimize_scalar
from scipy.spatial.transform import Rotation

from rules.graph.results import DoesNotApply, NotJudged, OutsideRange, Waits
from rules.judging.judge import Finding, Judged, reason
from rules.judging.trade import trade
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import Pose
from rules.motion.sweep import Blocked, Placed, Sweep, Worst
from rules.motion.turning import LockTable, Reach, Turned
from rules.values.steering.returning import rim_effort, side_force_moment
from rules.values.steering.self_centring import return_moment_20_deg
from rules.values.steering.turning import (
    ackermann_share,
    arm_aim,
    best_arm,
    lock_sweep,
    rack_left_at_stop,
    rack_left_in_travel,
    rod_to_arm_angle,
    turning_circle,
)
from tests.support.declared import the_check, the_value
from tests.support.front_ends import leaning, parallel_arms, parallel_sweep, straight_rack, through_lock, trapezium

lock_is_reached = the_check("lock-reached")
steering_sense = the_check("steering-sense")
ackermann_error_small = the_check("ackermann-error")
tie_rod_over_centre = the_check("tie-rod-over-centre")
steering_stops = the_check("steering-stops")
stop_before_rack_end = the_check("stop-before-rack-end")
returns_over_whole_lock = the_check("returns-over-whole-lock")
self_centring = the_check("self-centring")

Changes = dict[str, object]
JudgedWith = Callable[[Changes], Judged]
FindingOf = Callable[[str, Changes], Finding]

STEERING: Changes = {
    "steering.tie_rod_ahead": "-130 mm", "steering.tie_rod_inboard": "136 mm", "steering.tie_rod_above": "-45 mm",
    "steering.linkage": "rack", "steering.inner_ahead": "-125 mm", "steering.inner_from_centre": "310 mm",
    "steering.inner_height": "360 mm", "steering.rack_travel": "80 mm", "steering.stop_angle": "30 deg",
    "steering.stopped_by": "upright or arm", "steering.travel_per_turn": "50 mm",
    "steering.steering_wheel_diameter": "350 mm", "steering.rack_moves": "right",
    "steering.tie_rod_thread": "16 x 1.5 mm", "steering.tie_rod_threads_in": "24 mm",
}  # fmt: skip
"""Rack behind the axle. Hub face 4 mm outboard of the tyre plane, so the tie-rod end lies 132 mm inboard of that plane."""

# The same by general tools.

AXIS = np.array([-tan(radians(6)), -tan(radians(10)), 1.0])
AXIS /= np.linalg.norm(AXIS)
GROUND = np.array([400 * tan(radians(6)), -25.0, 0.0])
CENTRE, END, INNER = np.array([0.0, 0.0, 400.0]), np.array([-130.0, -132.0, 355.0]), np.array([-125.0, -490.0, 360.0])
WEIGHT = 250 * 9.80665
RATIO = 1550 / 2600
FULL = radians(30)


def turned(point: np.ndarray, turn: float) -> np.ndarray:
    return GROUND + Rotation.from_rotvec(AXIS * turn).apply(point - GROUND)


def spin(turn: float) -> np.ndarray:
    return Rotation.from_rotvec(AXIS * turn).apply([0.0, 1.0, 0.0])


def steer(turn: float) -> float:
    return atan2(-spin(turn)[0], spin(turn)[1])


def turn_for(angle: float) -> float:
    return float(brentq(lambda turn: steer(turn) - angle, -1.0, 1.0, xtol=1e-14))


@cache
def lowest(turn: float) -> np.ndarray:
    rotation = Rotation.from_rotvec(AXIS * turn)
    centre, fore, up = turned(CENTRE, turn), rotation.apply([1.0, 0.0, 0.0]), rotation.apply([0.0, 0.0, 1.0])

    def point(around: float) -> np.ndarray:
        return centre + 400 * (np.cos(around) * fore + np.sin(around) * up)

    found = minimize_scalar(
        lambda around: point(around)[2], bounds=(-2.6, -0.6), method="bounded", options={"xatol": 1e-10}
    )
    return point(float(found.x))


def closed(end: np.ndarray, slide: float, near: float) -> float:
    """Turn of the wheel whose inner tie-rod joint has slid to the left."""
    rod = np.linalg.norm(end - INNER)
    joint = INNER + np.array([0.0, slide, 0.0])
    return float(
        brentq(lambda turn: np.linalg.norm(turned(end, turn) - joint) - rod, near - 0.2, near + 0.2, xtol=1e-14)
    )


def slide_for(end: np.ndarray, turn: float) -> float:
    rod, moved = np.linalg.norm(end - INNER), turned(end, turn)
    return float(
        brentq(lambda slide: np.linalg.norm(moved - INNER - np.array([0.0, slide, 0.0])) - rod, -110, 5, xtol=1e-13)
    )


def both(slide: float) -> tuple[float, float]:
    near = -slide / 130
    return closed(END, slide, near), closed(END, -slide, -near)


def ideal(inner: float) -> float:
    return atan2(1, 1 / tan(inner) + RATIO)  # cot(outer) = cot(inner) + c / b


def work(slide: float) -> float:
    """Joules that lift both wheels."""
    inner, outer = both(slide)
    return WEIGHT * -(lowest(inner)[2] + lowest(outer)[2]) / 1000


def moment(slide: float) -> float:
    """N m about the inner wheel's axis: work over turn, as differences."""
    inner_more, inner_less = both(slide - 0.05)[0], both(slide + 0.05)[0]
    return (work(slide - 0.05) - work(slide + 0.05)) / (inner_more - inner_less)


def moment_at_20(inclination: float, castor: float, offset: float) -> float:
    """Both wheels turned 20 deg about an axis of the sheet with one thing changed, N m; lengths mm."""
    axis = np.array([-tan(radians(castor)), -tan(radians(inclination)), 1.0])
    axis /= np.linalg.norm(axis)
    ground = np.array([400 * tan(radians(castor)), -offset, 0.0])

    def arm(turn: float) -> float:
        rotation = Rotation.from_rotvec(axis * turn)
        centre, spun = ground + rotation.apply(CENTRE - ground), rotation.apply([0.0, 1.0, 0.0])
        down = np.array([0.0, 0.0, -1.0]) + spun * spun[2]
        contact = centre + 400 * down / np.linalg.norm(down)
        return float(-np.cross(contact - ground, [0.0, 0.0, 1.0]) @ axis)

    return WEIGHT * (arm(radians(20)) - arm(-radians(20))) / 1000


def rod_angle(turn: float, slide: float) -> float:
    """Angle between arm and tie rod seen along the axis, from lying in a line, deg."""
    end = turned(END, turn)
    out, rod = end - GROUND, INNER + np.array([0.0, slide, 0.0]) - end
    out, rod = out - (out @ AXIS) * AXIS, rod - (rod @ AXIS) * AXIS
    between = degrees(np.arccos(out @ rod / np.linalg.norm(out) / np.linalg.norm(rod)))
    return min(between, 180 - between)


def circle(inner: float, outer: float) -> float:
    """Kerb to kerb: both wheels' spin lines in plan cut the rear axle's line; the outer edge about the middle of the two."""
    left, right = lowest(inner), lowest(outer) * [1, -1, 1] - [0, 1600, 0]
    spun = spin(outer) * [1, -1, 1]
    across = [
        float(np.linalg.solve([[line[0], 0.0], [line[1], -1.0]], [-2600 - at[0], -at[1]])[1])
        for at, line in ((left, spin(inner)), (right, spun))
    ]
    edge = right[:2] + 317.5 / 2 * spun[:2] / np.linalg.norm(spun[:2])
    return 2 * hypot(edge[0] + 2600, edge[1] - sum(across) / 2)


def best() -> tuple[float, float, float, np.ndarray]:
    foot = GROUND + AXIS * 355 / AXIS[2]
    length = hypot(*(END - foot)[:2])
    turns = [turn_for(FULL) * place / 8 for place in range(1, 9)]

    def end(inward: float) -> np.ndarray:
        return foot + length * np.array([-cos(inward), -sin(inward), 0.0])

    def off(inward: float) -> np.ndarray:
        outers = [closed(end(inward), -slide_for(end(inward), turn), -turn) for turn in turns]
        return np.array([-steer(outer) - ideal(steer(turn)) for outer, turn in zip(outers, turns, strict=True)])

    found = minimize_scalar(
        lambda inward: np.mean(off(inward) ** 2), bounds=(0.1, 0.7), method="bounded", options={"xatol": 1e-8}
    )
    errors = off(found.x)
    return float(found.x), float(np.sqrt(np.mean(errors**2))), max(errors, key=abs), end(found.x)


@cache
def side_at(inclination: float, castor: float) -> float:
    """Moment of 0.1 g on 500 kg at the contact about the axis, N m; the force is to the left, as is the turn."""
    lean = np.array([-tan(radians(castor)), -tan(radians(inclination)), 1.0])
    foot = np.array([400 * tan(radians(castor)), -25.0, 0.0])
    force = np.array([0.0, 500 * 0.980665, 0.0])
    return -float(np.cross(-foot, force) @ lean / np.linalg.norm(lean)) / 1000


def by_general_tools() -> dict[str, float]:
    """Every value of the subject; angles in deg."""
    inner = turn_for(FULL)
    full = slide_for(END, inner)
    outer = both(full)[1]
    places = [full * place / 8 for place in range(1, 9)]
    errors = [-steer(both(slide)[1]) - ideal(steer(both(slide)[0])) for slide in places]
    at_20 = -steer(both(slide_for(END, turn_for(radians(20))))[1])
    angle, error, largest, end = best()
    foot = GROUND + AXIS * 355 / AXIS[2]
    aimed = foot[0] + (-800 - foot[1]) * (END - foot)[0] / (END - foot)[1]
    rods = [rod_angle(both(slide)[side], (slide, -slide)[side]) for slide in [0.0, *places] for side in (0, 1)]
    moments = [moment(slide) for slide in places]
    force = (work(full - 0.05) - work(full + 0.05)) / 0.1 * 1000
    camber = {way: degrees(asin(-spin(turn_for(way * radians(20)))[2])) for way in (1, -1)}
    push = np.array([-1.0, 0.0, 0.0])
    by_castor = [moment_at_20(10, castor, 25) for castor in (6.5, 5.5)]
    by_lean = [moment_at_20(lean, 6, 25) for lean in (10.5, 9.5)]
    side = side_at(10, 6)
    return {
        "kingpin_track": 1550.0,  # 1600 less twice 25
        "full_lock_inner": 30.0,
        "full_lock_outer": -degrees(steer(outer)),
        "ackermann_error": degrees(max(errors, key=abs)),
        "ackermann_share": (radians(20) - at_20) / (radians(20) - ideal(radians(20))),
        "arm_aim": -aimed / 2600,
        "steering_arm_lean": degrees(np.arctan((END - foot)[1] / (END - foot)[0])),
        "best_tie_rod_ahead": float(end[0]),
        "best_tie_rod_inboard": 4 - float(end[1]),
        "best_arm_angle": degrees(angle),
        "best_ackermann_error": degrees(error),
        "best_ackermann_largest": degrees(largest),
        "turning_circle": circle(inner, outer),
        "rod_to_arm_angle": min(rods),
        "least_return_moment": min(moments),
        "return_moment_full_lock": moments[-1],
        "rack_force_full_lock": force,
        "rim_effort": force * 50 / (pi * 350),
        "return_moment_without_castor": moment_at_20(10, 0, 25),
        "return_moment_without_inclination": moment_at_20(0, 6, 25),
        "return_moment_without_ground_offset": moment_at_20(10, 6, 0),
        "side_force_moment": side,
        "weight_return_per_castor": by_castor[0] - by_castor[1],
        "weight_return_per_inclination": by_lean[0] - by_lean[1],
        "bend_return_per_castor": by_castor[0] - by_castor[1] + side_at(10, 6.5) - side_at(10, 5.5),
        "bend_return_per_inclination": by_lean[0] - by_lean[1] + side_at(10.5, 6) - side_at(9.5, 6),
        "lift_full_lock_inner": -float(lowest(inner)[2]),
        "lift_full_lock_outer": -float(lowest(outer)[2]),
        "camber_full_lock_inner": degrees(asin(-spin(inner)[2])),
        "camber_full_lock_outer": degrees(asin(-spin(outer)[2])),
        "kickback_lever": float(np.cross(CENTRE - GROUND, push) @ AXIS),
        "braking_lever": float(np.cross(-GROUND, push) @ AXIS),
        "camber_turned_20_out": camber[1],
        "camber_turned_20_in": camber[-1],
        "castor_by_turning": (camber[1] - camber[-1]) * 1.4619022,  # 1 / (2 x 0.3420201433)
        "rack_left_at_stop": 80 + full,  # the rack slides right, so full is minus
    }


NUMBERS = [name for name, node in trade().values.items() if node.note.subject == "turning" and trade().is_number(name)]


@pytest.mark.parametrize("name", NUMBERS)
def test_a_value_is_what_general_tools_find(judged: JudgedWith, name: str) -> None:
    found = judged(STEERING).worked.known[name]
    found = degrees(found) if trade().units[name] == "rad" else found
    close = {"abs": 0.02} if name == "best_arm_angle" else {"rel": 1e-4, "abs": 2e-4}
    close = {"abs": 0.05} if name.startswith("best_tie_rod") else close
    assert found == pytest.approx(by_general_tools()[name], **close)


def test_general_tools_cover_every_value() -> None:
    assert set(by_general_tools()) == set(NUMBERS)


def test_the_lock_table_runs_evenly_in_rack_travel_from_straight_ahead_to_full_lock(judged: JudgedWith) -> None:
    table = judged(STEERING).worked.known["lock_table"]
    full = slide_for(END, turn_for(FULL))
    assert len(table) == 9
    assert table[0] == pytest.approx((0.0, 0.0, 0.0), abs=1e-12)
    for place, row in enumerate(table[1:], start=1):
        inner, outer = both(full * place / 8)
        assert row == pytest.approx((steer(inner), -steer(outer), ideal(steer(inner))), abs=1e-9)


def test_the_return_grows_from_straight_ahead(judged: JudgedWith) -> None:
    least = judged(STEERING).worked.known["least_return_moment"]
    assert isinstance(least, Worst) and least.lock == 1 / 8


def test_below_20_deg_of_lock_the_share_is_taken_at_full_lock(judged: JudgedWith) -> None:
    known = judged(STEERING | {"steering.stop_angle": "12 deg"}).worked.known
    last = known["lock_table"][-1]
    assert degrees(last.inner) == pytest.approx(12, abs=1e-6)
    expected = (last.inner - last.outer) / (last.inner - ideal(last.inner))
    assert known["ackermann_share"] == pytest.approx(expected, abs=1e-6)


# Left alone, begun, and without what a kind of linkage has.

ALONE = (
    "kingpin_track", "kickback_lever", "braking_lever", "camber_turned_20_out", "camber_turned_20_in", "castor_by_turning",
    "return_moment_without_castor", "return_moment_without_inclination", "return_moment_without_ground_offset",
    "side_force_moment", "weight_return_per_castor", "weight_return_per_inclination", "bend_return_per_castor",
    "bend_return_per_inclination",
)  # fmt: skip
"""What the steering axis alone decides."""


def test_while_steering_is_untouched_only_what_the_axis_decides_is_worked_out(judged: JudgedWith) -> None:
    untouched = judged({})
    assert set(NUMBERS) & untouched.worked.known.keys() == set(ALONE)
    assert {name for name in NUMBERS if name not in untouched.worked.not_judged} == set(ALONE)
    assert untouched.verdict == "good"


@pytest.mark.parametrize("missing", ["steering.inner_ahead", "steering.tie_rod_above", "steering.inner_height"])
def test_once_begun_what_is_missing_is_waited_for(finding: FindingOf, missing: str) -> None:
    assert finding("steering-sense", STEERING | {missing: None}).waits_for == (missing,)


CHECKS = [name for name, node in trade().checks.items() if node.function.__module__ == "rules.checks.steering.turning"]


@pytest.mark.parametrize("check", CHECKS)
def test_the_sheet_with_sound_steering_is_good_and_without_any_is_not_judged(finding: FindingOf, check: str) -> None:
    assert finding(check, STEERING).verdict == "good"
    assert finding(check, {}).verdict == "not judged"


def test_one_rod_across_has_neither_rack_nor_its_end(judged: JudgedWith) -> None:
    one_rod = judged(STEERING | {"steering.linkage": "one rod across"}).worked
    assert {"rack_force_full_lock", "rim_effort", "rack_left_at_stop"} <= one_rod.not_here.keys()
    assert one_rod.known["full_lock_inner"] == pytest.approx(FULL, abs=1e-9)


def test_a_relay_rod_on_very_long_arms_steers_as_a_rack(judged: JudgedWith) -> None:
    # Arms of 400 mm bring the rod fore or aft by 400 - root(400^2 - 70^2) = 6.2 mm at full lock: a little off, not more.
    rack = judged(STEERING).worked.known
    relay = judged(STEERING | {"steering.linkage": "relay rod", "steering.relay_arm_length": "400 mm"}).worked.known
    assert relay["full_lock_outer"] == pytest.approx(rack["full_lock_outer"], abs=radians(1.5))
    assert relay["full_lock_outer"] != pytest.approx(rack["full_lock_outer"], abs=radians(0.05))


@pytest.mark.parametrize("left_out", ["steering.travel_per_turn", "steering.steering_wheel_diameter"])
def test_effort_at_the_rim_waits_for_both_of_its_fields(judged: JudgedWith, left_out: str) -> None:
    assert judged(STEERING | {left_out: None}).worked.waits["rim_effort"] == (left_out,)


def test_effort_at_the_rim_is_not_asked_for_while_neither_is_entered() -> None:
    with pytest.raises(NotJudged):
        rim_effort(300.0, None, None)


def test_the_travel_left_at_the_stop_needs_both_stop_and_travel() -> None:
    front, sweep = straight_rack(), through_lock(straight_rack())
    with pytest.raises(Waits):
        rack_left_at_stop(front, sweep, None, radians(20))
    with pytest.raises(DoesNotApply, match="no angle at a stop"):
        rack_left_at_stop(front, sweep, 75.0, None)


def test_a_linkage_that_locks_before_full_lock_has_no_sweep() -> None:
    with pytest.raises(NotJudged, match="locks with the inner wheel at") as told:
        lock_sweep(trapezium(), Reach(0.6, radians(20.1)))
    assert "at 20.1 deg, before" in reason(told.value.reason, "inch")


def test_an_arm_straight_fore_and_aft_aims_at_no_place_and_says_so() -> None:
    with pytest.raises(DoesNotApply, match="straight fore and aft"):
        arm_aim(straight_rack(), 2600.0)


def test_no_best_arm_where_none_follows() -> None:
    # Short rods of 30 mm to arms of 150 straight back: turned 170 deg, every arm's end stands ahead of the axle, further
    # from the rack fore and aft than its rod is long (237 against 163 mm with the arm 54 deg out, the longest rod).
    rack = SteeringLinkage("rack", (-150.0, -30.0, 300.0), -700.0, travel=10.0)
    front = FrontEnd(straight_rack().upright, linkage=rack)
    sweep = through_lock(front)
    last = sweep.placed[-1]._replace(pose=sweep.placed[-1].pose._replace(turn=radians(170)))
    with pytest.raises(NotJudged, match="follows through the lock"):
        best_arm(front, Sweep((*sweep.placed[:-1], last)), 1400.0, 2600.0)


def test_an_outer_wheel_that_does_not_turn_in_has_no_circle() -> None:
    sweep = through_lock(trapezium())
    straight = sweep.placed[0]._replace(pose=sweep.placed[8].pose)
    with pytest.raises(OutsideRange, match="does not turn into the bend"):
        turning_circle(Sweep((straight, *sweep.placed[1:])), 2600.0, 1400.0, 200.0)


# The tie rod over its arm, through the travel.


def with_rod_at(angle: float) -> Pose:
    """Arm 150 behind an upright axis, tie rod at an angle to it, deg."""
    joint = (-150.0 - 400 * cos(radians(angle)), -400 * sin(radians(angle)), 300.0)
    return straight_rack().at(0.0, 0.0)._replace(inner_end=joint)


RIDE = Sweep((Placed(0.0, -1.0, with_rod_at(50)), Placed(0.0, 0.0, with_rod_at(80)), Placed(0.0, 1.0, with_rod_at(40))))


@pytest.mark.parametrize(
    ("there", "angle", "travel", "lock"),
    [
        (None, 40.0, 0.0, 1.0),
        (Sweep((Placed(60.0, -1.0, with_rod_at(33)),)), 33.0, 60.0, -1.0),
        (Sweep((Placed(60.0, -1.0, with_rod_at(45)),)), 40.0, 0.0, 1.0),
        (Sweep((Placed(60.0, 0.0, with_rod_at(60)),), (Blocked(60.0, 1.0, 0.9),)), 0.0, 60.0, 1.0),  # the tie rod locks
        (Sweep((Placed(0.0, 0.0, with_rod_at(60)),), (Blocked(60.0, 1.0, 40.0),)), 40.0, 0.0, 1.0),  # the arms do
        (Sweep((Placed(-50.0, 1.0, with_rod_at(-20)),)), -20.0, -50.0, 1.0),  # folded over
    ],
)
def test_the_angle_left_is_the_least_of_ride_height_and_travel(
    there: Sweep | None, angle: float, travel: float, lock: float
) -> None:
    found = rod_to_arm_angle(RIDE, there)
    assert isinstance(found, Worst)
    assert (degrees(found), found.travel, found.lock) == pytest.approx((angle, travel, lock), abs=1e-9)


def test_with_arms_entered_the_tie_rod_is_looked_at_through_the_travel(judged: JudgedWith, moving: Changes) -> None:
    steered = {name: entry for name, entry in moving.items() if name.startswith("steering.")}
    at_ride, hung = judged(steered).worked.known, judged(moving).worked.known
    assert hung["rod_to_arm_angle"] <= at_ride["rod_to_arm_angle"]
    assert hung["envelope"].placed and "envelope" not in at_ride


# Checks at their limits: just inside, on, just outside.


@pytest.mark.parametrize(
    ("share", "verdict"),
    [
        (1.201, "watch"), (1.2, "good"), (1.199, "good"), (0.401, "good"), (0.4, "good"), (0.399, "watch"),
        (0.001, "watch"), (0.0, "watch"), (-0.001, "watch"), (-0.2, "watch"), (-0.201, "stop"), (-2.0, "stop"),
    ],
)  # fmt: skip
def test_steering_sense(share: float, verdict: str) -> None:
    assert steering_sense(share, FULL, 0.7).verdict == verdict


@pytest.mark.parametrize(
    ("lean", "verdict"),
    [(15.0, "good"), (0.0, "good"), (-0.1, "watch"), (-5.0, "watch"), (-5.1, "stop"), (-40.0, "stop")],
)
def test_steering_arm_sense(lean: float, verdict: str) -> None:
    assert the_check("steering-arm-sense")(radians(lean)).verdict == verdict


@pytest.mark.parametrize(
    ("ahead", "inboard", "verdict"),
    [
        ("-130 mm", "136 mm", "good"),
        ("-130 mm", "30 mm", "stop"),
        ("130 mm", "30 mm", "good"),
        ("130 mm", "136 mm", "stop"),
    ],
)
def test_a_reversed_arm_is_known_from_the_arm_alone(finding: FindingOf, ahead: str, inboard: str, verdict: str) -> None:
    # The axis passes 79 inboard of the hub face at that height; nothing is said of rack or tie rod.
    arm: Changes = {
        "steering.tie_rod_ahead": ahead,
        "steering.tie_rod_inboard": inboard,
        "steering.tie_rod_above": "-45 mm",
    }
    assert finding("steering-arm-sense", arm).verdict == verdict
    sense = finding("steering-sense", arm)
    assert sense.verdict == "not judged" and "What moves the tie rods is not chosen" in sense.text


def test_steering_sense_says_where_the_arms_aim_and_leaves_the_way_open() -> None:
    little, much = steering_sense(0.1, FULL, -1.5), steering_sense(1.5, FULL, 0.4)
    assert little.change == much.change and "the arms lean" in little.change
    assert "ahead of the front axle" in little.text and "behind the front axle" in much.text
    assert "aim at" not in steering_sense(0.1, FULL, 70.0).text  # all but straight fore and aft
    assert "aim at" not in steering_sense(0.1, FULL, None).text
    assert steering_sense(0.5, radians(12), None).figures["turned"] == (radians(12), "rad")
    assert steering_sense(0.5, radians(32), None).figures["turned"] == (radians(20), "rad")


def test_an_arm_whose_end_lies_on_the_axis_leans_neither_way(finding: FindingOf) -> None:
    """Castor 6 deg, inclination 10 deg, the end 45 mm below the wheel centre: there the axis stands 45 tan 6 deg = 4.730 ahead.

    It is 25 + 355 tan 10 deg = 87.596 inboard of the tyre's middle; the hub's face is 10 - 6 of hat outboard of that: 91.596.
    """
    on_axis: Changes = {"steering.tie_rod_ahead": "4.730 mm", "steering.tie_rod_inboard": "91.596 mm"}
    assert finding("tie-rod-placed", STEERING | on_axis).verdict == "stop"
    lean = finding("steering-arm-sense", STEERING | on_axis)
    assert lean.verdict == "not judged" and "lies on the steering axis" in lean.text


@pytest.mark.parametrize(("inboard", "verdict"), [("136 mm", "good"), ("104 mm", "watch"), ("40 mm", "stop")])
def test_a_tie_rod_end_moved_out_behind_the_axle_reverses_the_sense(
    finding: FindingOf, inboard: str, verdict: str
) -> None:
    # The axis stands 89.4 inboard of the tyre plane there, 93.4 of the hub face: 40 mm puts the end 53 mm outboard of it.
    assert finding("steering-sense", STEERING | {"steering.tie_rod_inboard": inboard}).verdict == verdict


def test_flipped_uprights_are_named_as_the_cause(finding: FindingOf) -> None:
    assert "swapped side to side" in finding("steering-sense", STEERING | {"steering.tie_rod_inboard": "40 mm"}).text


def table(error: float) -> LockTable:
    return LockTable([Turned(0.0, 0.0, 0.0), Turned(0.5, 0.4 + error, 0.4)])


@pytest.mark.parametrize(
    ("error", "verdict"),
    [(1.99, "good"), (2.0, "good"), (2.01, "watch"), (-2.0, "good"), (-2.01, "watch"), (15, "watch")],
)
def test_ackermann_error(error: float, verdict: str) -> None:
    off = radians(error)
    assert ackermann_error_small(table(off), off, 0.001).verdict == verdict


@pytest.mark.parametrize(
    ("largest", "words"),
    [
        (radians(0.5), "leans otherwise leaves {left} at best"),
        (radians(-0.5), "leans otherwise leaves {left} at best"),
        (radians(3.0), "No lean of an arm this long does better"),
        (None, "No lean of an arm this long does better"),
    ],
)
def test_ackermann_error_says_what_the_best_lean_leaves(largest: float | None, words: str) -> None:
    off = radians(3.0)
    assert words in ackermann_error_small(table(off), off, largest).change


def test_the_best_tie_rod_end_does_what_it_says(finding: FindingOf, judged: JudgedWith) -> None:
    poor = STEERING | {"steering.tie_rod_inboard": "104 mm"}
    assert finding("ackermann-error", poor).verdict == "watch"
    known = judged(poor).worked.known
    offered = {
        "steering.tie_rod_ahead": f"{known['best_tie_rod_ahead']:.6f} mm",
        "steering.tie_rod_inboard": f"{known['best_tie_rod_inboard']:.6f} mm",
    }
    better = judged(poor | offered).worked.known
    assert abs(better["ackermann_error"]) <= abs(known["best_ackermann_largest"]) + radians(0.02)
    assert finding("ackermann-error", poor | offered).verdict == "good"


@pytest.mark.parametrize(
    ("angle", "verdict"),
    [
        (30.01, "good"), (30.0, "good"), (29.99, "watch"), (25.01, "watch"), (25.0, "watch"), (24.99, "stop"),
        (0.0, "stop"), (-10.0, "stop"),
    ],
)  # fmt: skip
def test_tie_rod_over_centre(angle: float, verdict: str) -> None:
    assert tie_rod_over_centre(Worst(radians(angle), 110.0, 1.0), None).verdict == verdict


def test_tie_rod_over_centre_says_where_and_what_it_looked_at(finding: FindingOf) -> None:
    there = tie_rod_over_centre(Worst(radians(27), 110.0, -1.0), RIDE)
    assert "travel and lock" in there.text and "bump" in there.text and "outer wheel" in there.text
    assert there.change
    assert "lie in a line" in tie_rod_over_centre(Worst(0.0, -60.0, 1.0), RIDE).text
    assert "the lock at ride height" in finding("tie-rod-over-centre", STEERING).text


@pytest.mark.parametrize(
    ("stopped_by", "linkage", "stop_angle", "left", "verdict"),
    [
        ("upright or arm", "rack", FULL, 20.0, "good"),
        ("upright or arm", "one rod across", FULL, None, "good"),
        ("rack", "rack", None, None, "good"),
        ("rack", "rack", FULL, 0.0, "good"),  # the stop entered never touches
        ("rack", "rack", FULL, 0.01, "watch"),
        ("rack", "one rod across", FULL, None, "watch"),
        ("steering box", "relay rod", FULL, 20.0, "stop"),
        ("nothing", "rack", None, None, "stop"),
        ("nothing", None, None, None, "stop"),
    ],
)
def test_steering_stops(
    stopped_by: str, linkage: str | None, stop_angle: float | None, left: float | None, verdict: str
) -> None:
    assert steering_stops(True, stopped_by, linkage, stop_angle, left).verdict == verdict


def test_a_stop_on_upright_or_arm_waits_for_its_angle(finding: FindingOf) -> None:
    assert finding("steering-stops", STEERING | {"steering.stop_angle": None}).waits_for == ("steering.stop_angle",)


def test_once_a_linkage_is_chosen_its_stop_is_waited_for(finding: FindingOf) -> None:
    assert finding("steering-stops", STEERING | {"steering.stopped_by": None}).waits_for == ("steering.stopped_by",)


@pytest.mark.parametrize(("left", "verdict"), [(0.01, "good"), (20.0, "good"), (0.0, "watch")])
def test_stop_before_rack_end(left: float, verdict: str) -> None:
    assert stop_before_rack_end(left, FULL, None).verdict == verdict


def slide_at_stop(travel: float, steer: float) -> float:
    """Slide of the parallel arms' rack at a travel with the inner wheel turned as its stop lets it, by scipy alone.

    The upright keeps its lean and goes inboard by 300 - root(300^2 - travel^2); the wheel's turn about its axis is the stop's.
    """
    lower, end = np.array([20.0, -80.0, 300.0]), np.array([-120.0, -80.0, 360.0])
    axis = np.array([-25.0, 0.0, 250.0]) / hypot(25.0, 250.0)

    def pointing(turn: float) -> float:
        spin = Rotation.from_rotvec(turn * axis).apply([0.0, 1.0, 0.0])
        return atan2(-spin[0], spin[1]) - steer

    turned = Rotation.from_rotvec(brentq(pointing, 0.0, 1.0) * axis).apply(end - lower) + lower
    x, y, z = turned + np.array([0.0, -(300.0 - (300.0**2 - travel**2) ** 0.5), travel])
    return float(y - (300.0**2 - (x + 120.0) ** 2 - (z - 360.0) ** 2) ** 0.5 + 380.0)


def test_the_stop_takes_another_slide_as_the_wheel_travels() -> None:
    arms = parallel_arms()
    assert arms.linkage is not None
    front = arms.steered(arms.upright, replace(arms.linkage, stop=radians(20)))
    left = {travel: 60.0 - abs(slide_at_stop(travel, radians(20))) for travel in (-60.0, -30.0, 0.0, 30.0, 60.0)}
    assert {travel: front.left_at_stop(travel) for travel in left} == pytest.approx(left, abs=1e-6)
    least = rack_left_in_travel(front, parallel_sweep(), left[0.0])
    assert isinstance(least, Worst) and abs(least.travel) == 60.0 and least.lock == 1.0
    assert least == pytest.approx(min(left.values()), abs=1e-6) and left[0.0] - least > 0.1
    on_rack = arms.steered(arms.upright, replace(arms.linkage, stop=radians(20), stop_on="slide"))
    assert on_rack.left_at_stop(60.0) == pytest.approx(left[0.0], abs=1e-6)
    with pytest.raises(DoesNotApply, match="no stop holds"):
        rack_left_in_travel(on_rack, parallel_sweep(), left[0.0])


@pytest.mark.parametrize(("left", "verdict"), [(0.5, "good"), (-0.5, "watch")])
def test_a_rack_that_ends_before_the_stop_somewhere_in_the_travel(left: float, verdict: str) -> None:
    judged = stop_before_rack_end(10.0, FULL, Worst(left, -60.0, 1.0))
    assert judged.verdict == verdict
    if verdict == "watch":
        assert "rack or relay rod comes to its own end first there" in judged.text and judged.figures["short"] == (
            0.5,
            "mm",
        )


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({}, "good"),  # 30 deg take about 60 mm of the 80
        ({"steering.rack_travel": "40 mm"}, "watch"),
        (
            {"steering.stop_angle": None, "steering.stopped_by": "rack", "steering.rack_travel": "55 mm"},
            "does not apply",
        ),
        ({"steering.rack_travel": None}, "waiting"),
    ],
)
def test_stop_before_rack_end_on_a_sheet(finding: FindingOf, changes: Changes, verdict: str) -> None:
    assert finding("stop-before-rack-end", STEERING | changes).verdict == verdict


PER_DEGREE = (1.0, 1.0, 1.0, 1.0)


@pytest.mark.parametrize(
    ("weight", "side", "trail", "verdict"),
    [
        (5.0, 0.0, 0.1, "good"),  # friction takes 5 N m
        (4.9, 0.0, 0.1, "watch"),
        (0.1, 0.0, 0.0, "watch"),
        (0.1, 4.9, 10.0, "good"),
        (0.1, 4.8, 10.0, "watch"),
        (-5.0, 10.0, 20.0, "good"),  # friction holds what little turns them out
        (-5.1, 30.0, 60.0, "watch"),
        (-500.0, 30.0, 60.0, "watch"),  # weight alone never stops a car
        (0.0, 0.0, 0.0, "stop"),
        (-0.1, -5.0, -10.0, "stop"),
        (50.0, -60.0, -10.0, "watch"),
        (80.0, -60.0, -10.0, "good"),
    ],
)
def test_the_limits_of_what_returns_the_wheels(weight: float, side: float, trail: float, verdict: str) -> None:
    assert returns_over_whole_lock(Worst(weight, 0.0, 0.5), side, trail, *PER_DEGREE).verdict == verdict
    assert self_centring(weight, None, side, trail, *PER_DEGREE).verdict == verdict
    assert self_centring(-weight, Worst(weight, 0.0, 0.5), side, trail, *PER_DEGREE).verdict == verdict


def test_the_figure_of_the_linkage_decides_once_it_is_known(finding: FindingOf) -> None:
    for inclination, castor, offset in product(("2 deg", "10 deg"), ("1 deg", "6 deg", "14 deg"), ("-10 mm", "40 mm")):
        changes = {"pivots.inclination": inclination, "pivots.castor": castor, "pivots.ground_offset": offset}
        with_linkage = STEERING | changes
        over_lock = finding("returns-over-whole-lock", with_linkage)
        if over_lock.verdict != "not for this build":
            assert finding("self-centring", with_linkage).verdict == over_lock.verdict, changes


@settings(max_examples=60, deadline=None)
@given(
    weight=st.floats(80, 700), height=st.floats(280, 520), offset=st.floats(-10, 40), lean=st.floats(8, 12),
    castor=st.floats(4, 10),
)  # fmt: skip
def test_no_car_inside_the_three_usual_bands_is_stopped(
    weight: float, height: float, offset: float, lean: float, castor: float
) -> None:
    trail = height * tan(radians(castor))
    by_weight = return_moment_20_deg(weight, height, offset, trail, radians(lean), radians(castor))
    side = side_force_moment(weight, trail, radians(hypot(lean, castor)))
    assert self_centring(by_weight, None, side, trail, *PER_DEGREE).verdict != "stop"


@pytest.mark.parametrize("castor", [0.0, 3.0, 6.0, 12.0, 15.0, 20.0])
@pytest.mark.parametrize("lean", [2.0, 6.0, 10.0, 14.0])
def test_the_advice_makes_the_moment_it_speaks_of_grow(lean: float, castor: float) -> None:
    def by_weight(lean: float, castor: float) -> float:
        trail = 400.0 * tan(radians(castor))
        return return_moment_20_deg(250.0, 400.0, 0.0, trail, radians(lean), radians(castor))

    now = by_weight(lean, castor)
    case = (250.0, 400.0, 0.0, None, radians(lean), radians(castor))
    per_degree = [the_value(f"weight_return_per_{angle}")(*case) for angle in ("castor", "inclination")]
    assert per_degree == pytest.approx(
        [
            by_weight(lean, castor + 0.5) - by_weight(lean, castor - 0.5),
            by_weight(lean + 0.5, castor) - by_weight(lean - 0.5, castor),
        ]
    )
    change = self_centring(-50.0, None, 60.0, 80.0, *per_degree, 1.0, 1.0).change
    for angle, effect, along in zip(("castor", "inclination"), per_degree, ((0.0, 0.5), (0.5, 0.0)), strict=True):
        way = 1 if effect > 0 else -1
        words = f"{'more' if effect > 0 else 'less'} {angle}"
        assert (words in change) == (abs(effect) >= 0.1)  # less is not worth a word
        if words in change:
            assert by_weight(lean + way * along[0], castor + way * along[1]) > now


def test_little_inclination_with_castor_runs_to_lock_by_itself(finding: FindingOf) -> None:
    # With castor alone the outer wheel's fall outdoes the inner one's rise once the wheels are turned.
    found = finding(
        "returns-over-whole-lock",
        STEERING | {"pivots.inclination": "2 deg", "pivots.ground_offset": "0 mm", "pivots.castor": "12 deg"},
    )
    assert found.verdict == "watch" and "run to the stop" in found.text
    assert "less castor" in found.change


def test_an_axis_straight_up_returns_nothing(finding: FindingOf) -> None:
    upright = {"pivots.inclination": "0 deg", "pivots.castor": "0 deg", "steering.tie_rod_inboard": "70 mm"}
    assert finding("returns-over-whole-lock", STEERING | upright).verdict == "stop"


@pytest.mark.parametrize(("share", "verdict"), [(1.0, "good"), (0.999, "stop"), (0.5, "stop")])
def test_lock_reached(share: float, verdict: str) -> None:
    assert lock_is_reached(Reach(share, 0.4), "rack").verdict == verdict


# Common practice, no source: inner wheels turn 25 to 40 deg.
@pytest.mark.parametrize(
    ("degrees", "verdict"), [(20.01, "good"), (19.9, "watch"), (10.01, "watch"), (9.9, "stop"), (2.2, "stop")]
)
def test_a_lock_that_hardly_turns_the_car_is_not_good(degrees: float, verdict: str) -> None:
    found = lock_is_reached(Reach(1.0, radians(degrees)), "rack")
    assert found.verdict == verdict and ("hardly turns" in found.text) == (verdict != "good")


def test_lock_reached_names_the_relay_rods_own_arms_too() -> None:
    assert "relay rod with its own arms" in lock_is_reached(Reach(0.5, 0.4), "relay rod").text
    assert "the rod lies in a line with an arm" in lock_is_reached(Reach(0.5, 0.4), "one rod across").text


GAP: Changes = {
    "steering.linkage": "relay rod", "steering.tie_rod_ahead": "165 mm", "steering.tie_rod_inboard": "178 mm",
    "steering.tie_rod_above": "-72 mm", "steering.inner_ahead": "-41 mm", "steering.inner_from_centre": "385 mm",
    "steering.inner_height": "487 mm", "steering.relay_arm_length": "201 mm", "steering.rack_travel": "188 mm",
    "steering.stop_angle": "5 deg", "pivots.castor": "4 deg", "pivots.inclination": "17 deg",
}  # fmt: skip
"""Nonsense, found by trying: the inner wheel turns to 39 deg, then back and over to the other side."""
ROUND: Changes = GAP | {
    "steering.tie_rod_ahead": "-277 mm", "steering.tie_rod_inboard": "4 mm", "steering.tie_rod_above": "140 mm",
    "steering.inner_ahead": "197 mm", "steering.inner_from_centre": "440 mm", "steering.inner_height": "455 mm",
    "steering.relay_arm_length": "-133 mm", "steering.rack_travel": "126 mm", "steering.stop_angle": None,
    "steering.stopped_by": "rack",
    "pivots.castor": "0 deg", "pivots.inclination": "7 deg",
}  # fmt: skip
"""Nonsense again: the outer wheel's links come apart on the way and meet again, turned the wrong way, at full lock."""
ARMS_ACROSS: Changes = {
    "steering.linkage": "relay rod", "steering.relay_arm_length": "25 mm", "steering.rack_travel": "25 mm",
    "steering.stop_angle": None, "steering.stopped_by": "rack",
}  # fmt: skip
"""At the end of the travel the relay rod lies in a line with its own arms, which stand straight across."""


@pytest.mark.parametrize(
    "changes",
    [
        {"steering.rack_travel": "160 mm", "steering.stop_angle": "68 deg"},
        {"steering.rack_travel": None, "steering.stop_angle": "68 deg"},
        {"steering.rack_travel": "160 mm", "steering.stop_angle": None, "steering.stopped_by": "rack"},
        {"steering.linkage": "relay rod", "steering.relay_arm_length": "35 mm"},
        GAP,
        ROUND,
        ARMS_ACROSS,
    ],
)
def test_a_linkage_that_locks_is_stopped_once_and_the_rest_is_not_judged(judged: JudgedWith, changes: Changes) -> None:
    result = judged(STEERING | changes)
    verdicts = {found.check: found.verdict for found in result.findings if found.check in CHECKS}
    assert verdicts.pop("lock-reached") == "stop"
    for alone in ("steering-arm-sense", "rack-way", "tie-rod-threads"):
        del verdicts[alone]  # of the arm, the rack or the rod by itself, whatever the linkage does
    assert verdicts.pop("steering-stops") == "good"
    assert set(verdicts.values()) == {"not judged"}
    assert not {name for name in result.worked.broken if name in NUMBERS}


def test_a_stop_whose_angle_is_not_entered_is_waited_for_and_the_lock_is_not_taken_to_the_racks_end(
    judged: JudgedWith,
) -> None:
    """80 mm of rack would turn the wheels far beyond any stop, and be told to lock or to rub on the way."""
    result = judged(STEERING | {"steering.stop_angle": None})
    found = {one.check: one for one in result.findings}
    for check in ("steering-stops", "lock-reached", "steering-sense"):
        assert found[check].verdict == "waiting" and "steering.stop_angle" in found[check].waits_for


def test_leaning_one_rod_lifts_alike_at_both_ends_of_its_lock_where_both_turn_20_deg(judged: JudgedWith) -> None:
    # Derived table: 1.221782 mm and 0.590912 deg for a wheel turned 20 deg about an axis leaning 10 deg, offset 50.
    inner = through_lock(leaning()).placed[-1].pose
    assert degrees(inner.turn) == pytest.approx(20, abs=1e-5)
    assert -inner.contact[2] == pytest.approx(1.221782, abs=5e-7)
    assert sin(inner.camber) == pytest.approx(sin(radians(0.590912)), abs=1e-8)


def test_a_linkage_that_locks_short_of_twenty_degrees_has_no_share_and_says_what_to_change() -> None:
    # Arms of 150 ahead, 60 deg inboard, one rod of 2 x (700 - 129.9) = 1140.2 across: an end reaches 1290.2 from the other
    # axis at most. The inner wheel turned 20 deg, its arm 40 deg inboard: hypot(1400 - 96.4, 114.9) = 1308.7 away.
    end = (150 * cos(radians(60)), -150 * sin(radians(60)), 300.0)
    front = FrontEnd(replace(trapezium().upright, tie_rod_end=end), linkage=trapezium().linkage)
    with pytest.raises(OutsideRange, match="locks before the wheels are turned") as told:
        ackermann_share(front, radians(35), 1400.0, 2600.0)
    assert "tie-rod end ahead of wheel centre" in told.value.reason.change
