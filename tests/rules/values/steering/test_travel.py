"""Travel on whole sheets: what the values say, and every limit of the checks just inside, on it and just outside."""

from collections.abc import Callable
from math import asin, atan2, degrees, radians, sin, tan
from typing import NamedTuple

import numpy as np
import pytest
from scipy.optimize import brentq, fsolve
from scipy.spatial.transform import Rotation

from rules.graph.results import DoesNotApply, Judgement, NotJudged
from rules.judging.judge import Finding, Judged, reason
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import Hinge
from rules.motion.sweep import Blocked, Sweep, Worst, straight_sweep
from rules.motion.travel import InnerPivot
from rules.values.steering import bump_steer
from rules.values.steering import travel as values
from tests.support.declared import the_check
from tests.support.front_ends import parallel_arms

JudgedWith = Callable[[dict[str, object]], Judged]
FindingOf = Callable[[str, dict[str, object]], Finding]
Moving = dict[str, object]

CHECKS = (
    "travel-reached", "bump-steer", "bump-steer-turned", "camber-change", "castor-in-travel", "lower-joint-with-tyre-flat",
)  # fmt: skip
RODS: dict[str, object] = {
    "steering.tie_rod_ahead": "-126 mm", "steering.tie_rod_inboard": "144 mm", "steering.tie_rod_above": "-40 mm",
    "steering.inner_ahead": "-135 mm", "steering.inner_from_centre": "301 mm", "steering.inner_height": "358 mm",
    "arms.lower_front_from_centre": "300 mm", "arms.lower_front_height": "285 mm",
    "arms.lower_rear_from_centre": "300 mm", "arms.lower_rear_height": "285 mm",
    "arms.upper_front_from_centre": "390 mm", "arms.upper_front_height": "512 mm",
    "arms.upper_rear_from_centre": "390 mm", "arms.upper_rear_height": "512 mm",
    "arms.bump_travel": "110 mm", "arms.droop_travel": "90 mm",
}  # fmt: skip
"""The points that the figures here are worked on."""
STEADY: dict[str, object] = {**RODS, "steering.inner_height": "357.5 mm"}
"""The same with the inner pivot where bump steer is small to both ends."""

# --- the same corner by scipy alone ------------------------------------------------------------------------------------

SPIN, UP, RADIUS = np.array([0.0, 1.0, 0.0]), np.array([0.0, 0.0, 1.0]), 400.0
LOWER_HINGE, UPPER_HINGE = np.array([0.0, -500.0, 285.0]), np.array([0.0, -410.0, 512.0])  # both run straight ahead
END, INNER = (
    np.array([-126.0, -140.0, 360.0]),
    np.array([-135.0, -499.0, 358.0]),
)  # hub face 4 outboard of the tyre plane
AXIS = np.array([-tan(radians(6)), -tan(radians(10)), 1.0])
LOWER = (
    np.array([0.0, -25.0, 0.0]) + 275.0 * AXIS + 400.0 * np.array([tan(radians(6)), 0.0, 0.0])
)  # over the wheel centre at 400
UPPER = LOWER + 260.0 * AXIS / np.linalg.norm(AXIS)


class Corner(NamedTuple):
    """What scipy finds at one place. Angles in rad."""

    camber: float
    castor: float
    steer: float
    ground_offset: float
    contact: np.ndarray


def pivots(travel: float) -> tuple[np.ndarray, np.ndarray, float]:
    """Outer pivots, and the turn about their axis that leaves the wheel straight, with its centre `travel` higher."""

    def swung(angle: float, point: np.ndarray, hinge: np.ndarray) -> np.ndarray:
        return Rotation.from_rotvec([angle, 0.0, 0.0]).apply(point - hinge) + hinge

    def off(unknown: np.ndarray) -> list[float]:
        lower, upper = swung(unknown[0], LOWER, LOWER_HINGE), swung(unknown[1], UPPER, UPPER_HINGE)
        turned = upright(lower, upper, unknown[2])
        centre = lower + turned.apply(RADIUS * UP - LOWER)
        apart = float(np.linalg.norm(upper - lower)) - 260.0
        return [apart, 100 * float(turned.apply(SPIN)[0]), float(centre[2]) - RADIUS - travel]

    found = fsolve(off, [travel / 430, travel / 290, 0.0], xtol=1e-11)
    return swung(found[0], LOWER, LOWER_HINGE), swung(found[1], UPPER, UPPER_HINGE), float(found[2])


def upright(lower: np.ndarray, upper: np.ndarray, turn: float) -> Rotation:
    """From ride height: the axis tipped the short way to where it is, then turned about it."""
    was, now = UPPER - LOWER, upper - lower
    across = np.cross(was, now)
    length = float(np.linalg.norm(across))
    tip = across * (atan2(length, float(was @ now)) / length) if length else across
    return Rotation.from_rotvec(turn * now / np.linalg.norm(now)) * Rotation.from_rotvec(tip)


def corner(travel: float, slide: float | None = None, end: np.ndarray = END, inner: np.ndarray = INNER) -> Corner:
    """The left corner at a travel, the wheel held straight, or steered by a rack that has slid, mm to the left."""
    lower, upper, turn = pivots(travel)
    if slide is not None:
        rod, moved = np.linalg.norm(end - inner), inner + slide * SPIN

        def off(turn: float) -> float:
            return float(np.linalg.norm(lower + upright(lower, upper, turn).apply(end - LOWER) - moved) - rod)

        turn = brentq(off, -0.8, 0.8, xtol=1e-14)
    turned, axis = upright(lower, upper, turn), upper - lower
    spin = turned.apply(SPIN)
    down = -UP + (UP @ spin) * spin
    contact = lower + turned.apply(RADIUS * UP - LOWER) + RADIUS * down / np.linalg.norm(down)
    meets = lower + (contact[2] - lower[2]) / axis[2] * axis
    level = np.array([spin[0], spin[1], 0.0])
    return Corner(
        asin(-spin[2]), atan2(-axis[0], axis[2]), atan2(-spin[0], spin[1]),
        float((contact - meets) @ level / np.linalg.norm(level)), contact,
    )  # fmt: skip


def slide_to_stop(end: np.ndarray = END, inner: np.ndarray = INNER) -> float:
    """Slide that turns the left wheel 32 deg to the left at ride height, the stop's angle; less than the rack's 80."""

    def off_angle(turn: float) -> float:
        spin = upright(LOWER, UPPER, turn).apply(SPIN)
        return atan2(-spin[0], spin[1]) - radians(32)

    turned = LOWER + upright(LOWER, UPPER, brentq(off_angle, 0.0, 0.8, xtol=1e-14)).apply(end - LOWER)

    def off_length(slide: float) -> float:
        return float(np.linalg.norm(turned - inner - slide * SPIN) - np.linalg.norm(end - inner))

    return float(brentq(off_length, 0.0, -80.0 if end[0] < 0 else 80.0, xtol=1e-12))


def spread_of(travels: list[float], slide: float, end: np.ndarray = END, inner: np.ndarray = INNER) -> float:
    """Largest less least angle of the left wheel, rad."""
    steers = [corner(travel, slide, end, inner).steer for travel in travels]
    return max(steers) - min(steers)


USUAL = [-75.0 + 12.5 * step for step in range(13)]


# --- values ----------------------------------------------------------------------------------------------------------


def test_camber_castor_offset_and_track_are_what_scipy_finds(judged: JudgedWith, moving: Moving) -> None:
    known = judged({**moving, **RODS}).worked.known
    ride, bump, droop = (corner(at) for at in (0.0, 110.0, -90.0))
    assert known["camber_change_bump"] == pytest.approx(bump.camber - ride.camber, abs=1e-9)
    assert known["camber_change_droop"] == pytest.approx(droop.camber - ride.camber, abs=1e-9)
    assert known["camber_change_bump"] < 0 < known["camber_change_droop"]  # short upper arm: leans in, then out
    assert known["track_change"] == pytest.approx(
        droop.contact[1] - ride.contact[1], abs=1e-7
    )  # the farther from level
    assert known["track_change"].travel == -90.0
    assert known["castor_change"] == pytest.approx(bump.castor - ride.castor, abs=1e-9)
    assert known["castor_change"].travel == 110.0
    assert known["least_castor"] == pytest.approx(min(ride.castor, bump.castor, droop.castor), abs=1e-9)
    assert known["ground_offset_change"] == pytest.approx(bump.ground_offset - ride.ground_offset, abs=1e-7)


def test_castor_in_travel_is_that_of_pivots_that_keep_their_distance_ahead(judged: JudgedWith, moving: Moving) -> None:
    # Hinges straight ahead: no outer pivot moves fore or aft. 26.76892 stays between them, of 254.68931 of height at ride.
    known = judged({**moving, **RODS}).worked.known
    lower, upper = known["hung_front"].held(110.0)
    assert lower[0] - upper[0] == pytest.approx(26.76892, abs=1e-5)
    assert known["castor_change"] == pytest.approx(atan2(26.76892, upper[2] - lower[2]) - radians(6), abs=1e-6)


@pytest.mark.parametrize("bump", [110.0, 117.0])
def test_camber_over_25_mm_is_that_of_the_last_25_mm_of_bump(judged: JudgedWith, moving: Moving, bump: float) -> None:
    # From -90 up, 110 is a whole number of 25 mm; with 117 the last 25 mm begin at 92, between two of those places.
    known = judged({**moving, **RODS, "arms.bump_travel": f"{bump} mm"}).worked.known
    expected = abs(corner(bump).camber - corner(bump - 25.0).camber)
    assert known["camber_per_25_mm"] == pytest.approx(expected, abs=1e-9)
    assert known["camber_per_25_mm"].travel == bump


def test_camber_over_less_than_25_mm_is_that_of_all_the_travel(judged: JudgedWith, moving: Moving) -> None:
    short = {"arms.bump_travel": "10 mm", "arms.droop_travel": "12 mm"}
    known = judged({**moving, **RODS, **short}).worked.known
    expected = abs(corner(10.0).camber - corner(-12.0).camber)
    assert known["camber_per_25_mm"] == pytest.approx(expected, abs=1e-9)


def test_instant_centre_and_roll_centre_of_level_hinges(judged: JudgedWith, moving: Moving) -> None:
    # Seen from the front, mm from the tyre's plane. Lower arm from (-500, 285) to (-73.48992, 275): slope -10 in 426.51008.
    # Upper arm from (-410, 512) to (-118.39852, 529.68931): slope 17.68931 in 291.60148.
    lower, upper = -10.0 / 426.5100803, 17.6893061 / 291.6014839
    across = (512.0 + upper * 410.0 - 285.0 - lower * 500.0) / (lower - upper)  # where both lines are as high
    height = 285.0 + lower * (across + 500.0)
    known = judged({**moving, **RODS}).worked.known
    assert known["instant_centre_from_tyre"] == pytest.approx(-across, rel=1e-6)
    assert known["instant_centre_height"] == pytest.approx(height, rel=1e-6)
    assert known["swing_arm_length"] == pytest.approx(abs(across), rel=1e-6)
    assert known["roll_centre_height"] == pytest.approx(height * 800.0 / -across, rel=1e-6)  # half the track of 1600
    assert known["roll_centre_bump"] < known["roll_centre_height"] < known["roll_centre_droop"]


def test_parallel_arms_have_a_roll_centre_and_no_instant_centre() -> None:
    front = parallel_arms()
    for asked in (values.instant_centre_from_tyre, values.instant_centre_height):
        with pytest.raises(DoesNotApply, match="parallel"):
            asked(front)
    assert values.roll_centre_height(front, 1600.0) == pytest.approx(0.0, abs=1e-9)


def test_an_instant_centre_straight_above_the_contact_leaves_no_roll_centre() -> None:
    # Lower rises 15 in 300 to 320 at the tyre's plane, upper falls 135 in 300 to 320 there.
    lower = Hinge((100.0, -400.0, 300.0), (-100.0, -400.0, 300.0))
    upper = Hinge((100.0, -400.0, 500.0), (-100.0, -400.0, 500.0))
    upright = parallel_arms().upright
    points = type(upright)((0.0, -100.0, 315.0), (0.0, -100.0, 365.0), (0.0, 0.0, 340.0))
    with pytest.raises(DoesNotApply, match="straight above the contact"):
        values.roll_centre_height(FrontEnd(points, (lower, upper)), 1600.0)


def test_bump_toe_is_the_spread_of_one_wheels_angle_across_two_treads(judged: JudgedWith, moving: Moving) -> None:
    # Half way between 31 and 33 in: 812.8 mm. Travel is more than 75 mm each way: looked at from -75 to 75 by 12.5.
    known = judged({**moving, **RODS}).worked.known
    assert known["bump_toe"] == pytest.approx(2 * 812.8 * sin(spread_of(USUAL, 0.0)), abs=1e-5)
    assert known["toe_in_bump"] == pytest.approx(-2 * 812.8 * sin(corner(75.0, 0.0).steer), abs=1e-5)
    assert known["usual_travel"] == 150.0


def test_bump_toe_over_all_the_travel_reaches_both_ends(judged: JudgedWith, moving: Moving) -> None:
    known = judged({**moving, **RODS}).worked.known
    assert known["bump_toe_whole"] == pytest.approx(2 * 812.8 * sin(spread_of([-90.0, *USUAL, 110.0], 0.0)), abs=1e-5)
    assert known["bump_toe_whole"] > 5 * known["bump_toe"]  # flat where it is usually looked at, and not beyond
    within = judged({**moving, **RODS, "arms.bump_travel": "75 mm", "arms.droop_travel": "60 mm"}).worked.known
    assert within["bump_toe_whole"] == within["bump_toe"] and within["usual_travel"] == 135.0


@pytest.mark.parametrize(
    ("arms", "end", "inner", "worse"),
    [
        ({}, END, INNER, "inner"),
        (
            {"steering.tie_rod_ahead": "126 mm", "steering.inner_ahead": "110 mm"},
            END * [-1, 1, 1],
            np.array([110.0, -499.0, 358.0]),
            "outer",
        ),
    ],
)
def test_at_half_lock_the_wheel_that_does_it_more_is_told(
    judged: JudgedWith, moving: Moving, arms: dict[str, object], end: np.ndarray, inner: np.ndarray, worse: str
) -> None:
    known = judged({**moving, **RODS, **arms}).worked.known
    half = slide_to_stop(end, inner) / 2
    spreads = {"inner": spread_of(USUAL, half, end, inner), "outer": spread_of(USUAL, -half, end, inner)}
    assert max(spreads, key=spreads.__getitem__) == worse
    assert known["bump_toe_turned"] == pytest.approx(2 * 812.8 * sin(spreads[worse]), abs=1e-5)


def test_a_left_wheel_that_points_inward_in_bump_toes_in(judged: JudgedWith, moving: Moving) -> None:
    # Arm behind the axle. Rod's inner pivot too high: as the wheel rises towards level with it, the rod pushes its end
    # outboard; the end behind the axle going out points the wheel's front in.
    high = judged({**moving, **RODS, "steering.inner_height": "400 mm"}).worked.known
    low = judged({**moving, **RODS, "steering.inner_height": "320 mm"}).worked.known
    assert high["toe_in_bump"] > 20 and low["toe_in_bump"] < -20
    assert high["moving_front"].at(75.0, 0.0).steer < 0 < low["moving_front"].at(75.0, 0.0).steer


def test_less_travel_than_75_mm_is_looked_at_as_entered(judged: JudgedWith, moving: Moving) -> None:
    short = {
        **moving,
        **RODS,
        "arms.bump_travel": "40 mm",
        "arms.droop_travel": "20 mm",
        "steering.inner_height": "370 mm",
    }
    known = judged(short).worked.known
    inner = np.array([-135.0, -499.0, 370.0])
    spread = corner(-20.0, 0.0, inner=inner).steer - corner(40.0, 0.0, inner=inner).steer  # off one way: steady so far
    assert known["bump_toe"] == pytest.approx(2 * 812.8 * sin(spread), abs=1e-5)
    assert known["usual_travel"] == 60.0


def test_the_best_inner_pivot_makes_bump_steer_small_and_is_worked_out_again(
    judged: JudgedWith, moving: Moving
) -> None:
    wrong = {**moving, **RODS, "steering.inner_height": "400 mm"}
    known = judged(wrong).worked.known
    moved = {
        **wrong,
        "steering.inner_from_centre": f"{known['best_inner_from_centre']:.6f} mm",
        "steering.inner_height": f"{known['best_inner_height']:.6f} mm",
    }
    again = judged(moved).worked.known
    assert known["bump_toe"] > 100 and known["best_bump_toe"] < 1.5
    assert again["bump_toe"] == pytest.approx(known["best_bump_toe"], abs=1e-4)


def test_the_best_inner_pivot_does_not_depend_on_where_the_inner_pivot_is_now(
    judged: JudgedWith, moving: Moving
) -> None:
    here = judged({**moving, **RODS}).worked.known
    there = judged({**moving, **RODS, "steering.inner_height": "390 mm"}).worked.known
    for name in ("best_inner_from_centre", "best_inner_height"):
        assert here[name] == pytest.approx(there[name], abs=1e-9)


def test_one_rod_across_has_no_inner_pivot_to_move(judged: JudgedWith, moving: Moving) -> None:
    worked = judged({**moving, **RODS, "steering.linkage": "one rod across"}).worked
    assert "no inner pivot" in worked.not_here["best_inner_height"]
    assert worked.not_here["best_bump_toe"] == worked.not_here["best_inner_from_centre"]
    assert worked.known["bump_toe"] > 0


def test_an_outer_end_that_travels_straight_has_no_best_pivot() -> None:
    front = parallel_arms()
    linkage = front.linkage
    assert linkage is not None
    with pytest.raises(DoesNotApply, match="straight line"):
        bump_steer.best_inner(front, straight_sweep(front, 0.0, 1e-4), linkage, 0.0, 1e-4)


@pytest.mark.parametrize(("from_centre", "height"), [(690.0, 340.0), (720.0, 300.0)])
def test_a_best_pivot_too_near_to_steer_from_is_not_offered(from_centre: float, height: float) -> None:
    # 110 or 80 inboard of the tyre's plane: the rod would be 36 or 60 long, and the arm's end goes 60 up and down.
    pivot = InnerPivot(from_centre - 800.0, height)
    with pytest.raises(NotJudged, match="would not steer"):
        bump_steer.best_bump_toe(parallel_arms(), pivot, 60.0, 60.0, 800.0)


def test_arms_that_lock_both_ways_are_told_by_the_nearer() -> None:
    both = Sweep((), (Blocked(-200.0, 0.0, -150.4), Blocked(300.0, 0.0, 120.6)))
    with pytest.raises(NotJudged, match=r"the arms lock at \{travel_there\} bump") as told:
        values.travel_reached(both)
    assert reason(told.value.reason, "metric").startswith("the arms lock at 120.6 mm bump, before")
    assert reason(told.value.reason, "inch").startswith("the arms lock at 4.748 in bump, before")
    judgement = the_check("travel-reached")(both, None, 200.0, 300.0)
    assert judgement.figures["travel_there"] == (120.6, "mm") and "before the {bump_travel} entered" in judgement.text


def test_a_tie_rod_that_does_not_reach_names_the_place() -> None:
    # The rod's outer end goes from 20 above its inner one to 80 above: more than the rod's root(30^2 + 20^2) = 36.
    front = parallel_arms()
    short = FrontEnd(front.upright, front.arms, SteeringLinkage("rack", (-120.0, -110.0, 340.0), -800.0, travel=2.0))
    with pytest.raises(NotJudged, match=r"the tie rod does not reach at \{travel_there\} bump, straight ahead") as told:
        bump_steer.toe_in_bump(short, straight_sweep(front, 60.0, 60.0), 60.0, 60.0, 800.0)
    assert told.value.reason.figures["travel_there"] == (60.0, "mm")


# --- optional steps --------------------------------------------------------------------------------------------------


def test_a_sheet_without_arms_is_finished_and_nothing_of_travel_is_judged(
    judged: JudgedWith, finding: Callable[..., Finding]
) -> None:
    assert judged({}).verdict == "good"
    for check in CHECKS:
        assert finding(check, {}).verdict == "not judged", check


def test_arms_without_steering_are_judged_with_the_wheels_straight(
    finding: Callable[..., Finding], moving: Moving
) -> None:
    steers = ("steering.", "joint_angles.")
    hung = {name: (None if name.startswith(steers) else entry) for name, entry in {**moving, **RODS}.items()}
    for check in ("bump-steer", "bump-steer-turned"):
        assert finding(check, hung).verdict == "not judged", check
    reached = finding("travel-reached", hung)
    assert reached.verdict == "good" and "the steering is not entered" in reached.text
    assert finding("castor-in-travel", hung).verdict == "good"


@pytest.mark.parametrize("key", ["bump_travel", "upper_front_height", "lower_rear_height"])
def test_begun_arms_wait_for_what_is_missing(finding: Callable[..., Finding], moving: Moving, key: str) -> None:
    for check in CHECKS[:-1]:
        found = finding(check, {**moving, f"arms.{key}": None})
        assert (found.verdict, found.waits_for) == ("waiting", (f"arms.{key}",)), check


def test_begun_steering_keeps_bump_steer_waiting(finding: Callable[..., Finding], moving: Moving) -> None:
    found = finding("bump-steer", {**moving, "steering.inner_height": None})
    assert (found.verdict, found.waits_for) == ("waiting", ("steering.inner_height",))


def test_arms_known_from_the_front_only_say_nothing_of_castor(
    judged: JudgedWith, finding: Callable[..., Finding], moving: Moving
) -> None:
    front_view = {**moving, **STEADY} | {
        f"arms.{arm}_{key}": None
        for arm in ("lower", "upper")
        for key in ("front_ahead", "rear_ahead", "rear_from_centre", "rear_height")
    }
    castor = finding("castor-in-travel", front_view)
    assert castor.verdict == "not judged" and "from the front only" in castor.text
    not_judged = judged(front_view).worked.not_judged
    assert not_judged["castor_change"] == not_judged["least_castor"]
    assert finding("bump-steer", front_view).verdict == "good"


def test_no_travel_at_all_is_not_judged(finding: Callable[..., Finding], moving: Moving) -> None:
    still = {**moving, "arms.bump_travel": "0 mm", "arms.droop_travel": "0 mm"}
    for check in ("bump-steer", "camber-change", "castor-in-travel"):
        assert finding(check, still).verdict == "not judged", check


# --- travel-reached --------------------------------------------------------------------------------------------------


def test_no_travel_at_all_is_a_stop(finding: Callable[..., Finding], moving: dict[str, object]) -> None:
    found = finding("travel-reached", {**moving, "arms.bump_travel": "0 mm", "arms.droop_travel": "0 mm"})
    assert found.verdict == "stop" and found.text.startswith("No travel at all is entered")
    assert finding("travel-reached", {**moving, "arms.bump_travel": "0 mm"}).verdict != "stop"


# Common practice, no source: 0 to 3 mm is set on most cars; twice ten of it on none.
@pytest.mark.parametrize(
    ("toe", "verdict"),
    [("10 mm", "good"), ("-10 mm", "good"), ("10.1 mm", "watch"), ("-20 mm", "watch"), ("20.1 mm", "stop"),
     ("-28 mm", "stop"), (None, "does not apply")],
)  # fmt: skip
def test_toe_beyond_what_any_car_runs(
    finding: Callable[..., Finding], moving: dict[str, object], toe: str | None, verdict: str
) -> None:
    assert finding("static-toe", {**moving, "arms.static_toe": toe}).verdict == verdict


def test_a_tie_rod_end_on_the_steering_axis_is_said_so(judged: JudgedWith, moving: dict[str, object]) -> None:
    known = judged({**moving, **RODS}).worked.known
    height = known["tie_rod_end_height"]
    ahead, across, _ = known["upright_points"].on_axis(height)
    inboard = known["hub_face_offset"] - across
    on_axis = {"steering.tie_rod_ahead": f"{ahead:.2f} mm", "steering.tie_rod_inboard": f"{inboard:.2f} mm"}
    told = [one for one in judged({**moving, **RODS, **on_axis}).findings if "lies on the steering axis" in one.text]
    assert [one.check for one in told if one.verdict == "stop"] == ["tie-rod-placed"]
    assert {one.verdict for one in told} == {"stop", "not judged"}


def test_relay_arms_of_no_length_are_said_so_once(judged: JudgedWith, moving: dict[str, object]) -> None:
    relay = {**moving, **RODS, "steering.linkage": "relay rod", "steering.relay_arm_length": "0 mm"}
    findings = judged(relay).findings
    told = [one for one in findings if "have no length" in one.text]
    assert not any(one.asks_about == "steering.relay_arm_length" for one in findings)  # a stop is no question besides
    assert [one.check for one in told if one.verdict == "stop"] == ["tie-rod-placed"]
    assert {one.verdict for one in told} == {"stop", "not judged"}
    assert "from shaft to rod joint" in next(one for one in told if one.verdict == "stop").change
    assert not any(
        "have no length" in one.text for one in judged({**relay, "steering.relay_arm_length": "-150 mm"}).findings
    )


def test_a_tie_rod_in_line_with_its_arm_as_it_stands_is_said_so_once(
    judged: JudgedWith, moving: dict[str, object]
) -> None:
    """An arm that points straight inboard, and a rod that runs on along it, level: the wheel is turned neither way."""
    known = judged({**moving, **RODS}).worked.known
    ahead, across, height = known["upright_points"].on_axis(known["tie_rod_end_height"])
    straight_in = {
        "steering.tie_rod_ahead": f"{ahead:.9f} mm", "steering.inner_ahead": f"{ahead:.9f} mm",
        "steering.tie_rod_inboard": f"{known['hub_face_offset'] - across + 120:.9f} mm",
        "steering.inner_height": f"{height:.9f} mm",
    }  # fmt: skip
    told = [
        one
        for one in judged({**moving, **RODS, **straight_in}).findings
        if "does not turn the wheel" in one.text or "neither way" in one.text
    ]
    assert [one.check for one in told if one.verdict == "stop"] == ["lock-reached"]


def test_one_rod_across_waits_for_no_inner_pivot(finding: Callable[..., Finding], moving: dict[str, object]) -> None:
    across = {"steering.linkage": "one rod across", "steering.stop_angle": "30 deg"}
    gone = dict.fromkeys(("steering.inner_ahead", "steering.inner_from_centre", "steering.inner_height"))
    assert finding("tie-rod-placed", {**moving, **across, **gone}).verdict == "good"


@pytest.mark.parametrize("droop", ["4 mm", "8 mm", "60 mm"])
def test_arms_that_only_rise_do_not_count_as_drooping(
    judged: JudgedWith, finding: Callable[..., Finding], moving: Moving, droop: str
) -> None:
    # Leaned in this far, the upright and the upper arm lie almost in a line: whichever way the lower arm swings, the wheel
    # rises. A rise of 8 mm is no droop of 8 mm.
    leaned = {**moving, "pivots.inclination": "36 deg", "arms.droop_travel": droop}
    found = finding("travel-reached", leaned)
    assert found.verdict == "stop" and "lock at ride height" in found.text
    placed = judged(leaned).worked.known["travel_sweep"].placed
    straight = [at for at in placed if at.lock == 0.0]
    assert min(at.travel for at in straight) > -0.01
    assert all(abs(at.pose.wheel_centre[2] - 400.0 - at.travel) < 1e-3 for at in straight)


def test_travel_the_arms_do_not_reach_stops_with_the_place(
    judged: JudgedWith, finding: Callable[..., Finding], moving: Moving
) -> None:
    far = {**moving, **RODS, "arms.bump_travel": "400 mm"}
    found = finding("travel-reached", far)
    assert found.verdict == "stop"
    assert "The arms lock at 398" in found.text and "before the 400 mm" in found.text and "bump" in found.text
    for check in ("bump-steer", "camber-change", "castor-in-travel", "shock-spare"):
        other = finding(check, far)
        assert other.verdict == "not judged" and "arms lock at 398.4 mm bump" in other.text, check
    assert finding("travel-reached", {**moving, **RODS, "arms.bump_travel": "398 mm"}).text.count("arms lock") == 0


def test_droop_the_arms_do_not_reach_asks_for_a_strap(finding: Callable[..., Finding], moving: Moving) -> None:
    found = finding("travel-reached", {**moving, **RODS, "arms.droop_travel": "500 mm"})
    assert found.verdict == "stop" and "droop" in found.text and "a strap" in found.change


NO_STOP = {"steering.stop_angle": None, "steering.rack_travel": "57 mm", "steering.stopped_by": "rack"}


def test_a_tie_rod_that_locks_first_stops_with_the_place(finding: Callable[..., Finding], moving: Moving) -> None:
    found = finding("travel-reached", {**moving, **RODS, **NO_STOP, "steering.inner_height": "400 mm"})
    assert found.verdict == "stop"
    assert found.text.startswith("The tie rod does not reach at 90 mm")
    assert "droop, full lock, inner wheel: the steering locks before" in found.text


@pytest.mark.parametrize(
    ("blocked", "words"),
    [
        (Blocked(60.0, 0.0, 0.0), "at {travel_there} bump, straight ahead:"),
        (Blocked(0.0, -1.0, 0.0), "at ride height, full lock, outer wheel:"),
        (Blocked(-60.0, 0.75, 0.0), "at {travel_there} droop, {lock_there} lock, inner wheel:"),
    ],
)
def test_where_the_tie_rod_locks_in_words(blocked: Blocked, words: str) -> None:
    straight = straight_sweep(parallel_arms(), 60.0, 60.0)
    judgement = the_check("travel-reached")(straight, Sweep((), (blocked,)), 60.0, 60.0)
    assert judgement.verdict == "stop" and judgement.text.startswith(f"The tie rod does not reach {words}")


def test_the_least_lock_that_locks_is_named() -> None:
    straight = straight_sweep(parallel_arms(), 60.0, 60.0)
    several = Sweep((), (Blocked(60.0, 1.0, 0.0), Blocked(60.0, -0.5, 0.0), Blocked(45.0, -0.75, 0.0)))
    judgement = the_check("travel-reached")(straight, several, 60.0, 60.0)
    assert judgement.figures == {"travel_there": (60.0, "mm"), "lock_there": (0.5, "share")}


# --- bump-steer ------------------------------------------------------------------------------------------------------

RACK = SteeringLinkage("rack", (-120.0, -380.0, 360.0), -800.0, travel=60.0)


def told(
    toe: float, whole: float | None = 0.0, use: str = "trail", usual: float = 150.0, bump: float = 75.0,
    droop: float = 75.0, sense: float = 1.0, linkage: SteeringLinkage = RACK, alone: float | None = None,
) -> Judgement:  # fmt: skip
    """What the check says; alone: toe of a wheel that travels alone, one rod across."""
    return the_check("bump-steer")(toe, whole, usual, bump, droop, sense, linkage, use, alone)


@pytest.mark.parametrize(
    ("toe", "use", "verdict"),
    [
        (2.99, "trail", "good"), (3.0, "trail", "good"), (3.01, "trail", "watch"),
        (3.0, "dunes", "good"), (3.01, "race", "watch"),
        (2.39, "road", "good"), (2.4, "road", "good"), (2.41, "road", "watch"),
        (9.99, "road", "watch"), (10.0, "trail", "watch"), (10.01, "trail", "stop"), (10.01, "road", "stop"),
    ],
)  # fmt: skip
def test_bump_steer(toe: float, use: str, verdict: str) -> None:
    judgement = told(toe, toe if verdict == "good" else 0.0, use)
    assert judgement.verdict == verdict
    assert ("dangerous at speed" in judgement.text) == (verdict == "stop")
    assert bool(judgement.change) == (verdict != "good")
    assert "over all the travel" not in judgement.text


@pytest.mark.parametrize(
    ("toe", "use", "verdict"),
    # 40 + 20 = 60 mm looked at: 3 x 60 / 150 = 1.2, on the road 0.4 x 60 / 25 = 0.96, danger 10 x 60 / 150 = 4.
    [
        (1.19, "trail", "good"), (1.2, "trail", "good"), (1.21, "trail", "watch"), (0.95, "road", "good"),
        (0.96, "road", "good"), (0.97, "road", "watch"), (4.0, "road", "watch"), (4.01, "trail", "stop"),
    ],
)  # fmt: skip
def test_less_travel_has_less_toe_to_change(toe: float, use: str, verdict: str) -> None:
    assert told(toe, toe, use, usual=60.0, bump=40.0, droop=20.0).verdict == verdict


@pytest.mark.parametrize(
    ("whole", "use", "verdict"),
    # 200 + 150 = 350 mm: 3 x 350 / 150 = 7, on the road 0.4 x 350 / 25 = 5.6.
    [
        (6.99, "trail", "good"), (7.0, "trail", "good"), (7.01, "trail", "watch"), (80.0, "trail", "watch"),
        (5.59, "road", "good"), (5.6, "road", "good"), (5.61, "road", "watch"), (None, "trail", "watch"),
    ],
)  # fmt: skip
def test_all_the_travel_counts_where_the_usual_travel_is_good(whole: float | None, use: str, verdict: str) -> None:
    judgement = told(1.0, whole, use, bump=200.0, droop=150.0)
    assert judgement.verdict == verdict
    words = "it is not known" if whole is None else "by {bump_toe_whole}"
    assert f"; over all the travel {words}" in judgement.text
    assert ("more than {allowed}" in judgement.text) == (verdict == "watch" and whole is not None)
    assert ("to both ends" in judgement.change) == (verdict == "watch")


def test_the_limit_over_all_the_travel_is_told() -> None:
    assert told(1.0, 9.0, bump=200.0, droop=150.0).figures["allowed"] == (pytest.approx(7.0), "mm")


@pytest.mark.parametrize(("toe", "verdict"), [(5.0, "watch"), (11.0, "stop")])
def test_all_the_travel_makes_nothing_better(toe: float, verdict: str) -> None:
    for whole in (0.0, 60.0):
        assert told(toe, whole, bump=200.0, droop=150.0).verdict == verdict


def test_bump_steer_names_its_sense_and_no_direction_it_has_not_tried() -> None:
    assert "toed in at the top of it" in told(5.0).text
    assert "toed out at the top of it" in told(5.0, sense=-1.0).text
    assert not {"raise", "lower", "inboard", "outboard"} & set(told(5.0).change.lower().split())


def test_one_rod_across_tells_what_a_wheel_that_travels_alone_does() -> None:
    one_rod = SteeringLinkage("one rod across", None, -800.0, stop=0.5)
    judgement = told(2.0, 2.0, linkage=one_rod, alone=1.5)
    assert judgement.verdict == "good" and "steered by {bump_toe_alone} of toe" in judgement.text
    assert "alone" not in told(2.0, 2.0).text


def test_a_wheel_that_travels_alone_is_steered_by_the_rod_to_the_wheel_that_stands(
    judged: JudgedWith, moving: Moving
) -> None:
    """One rod across from arm to arm, level, of length 2 x 656 - 2 x 0: the far end stands still, so the near end is drawn in.

    By hand: the arms are level and of one length below and above only in part, so only the sense is checked: with each wheel
    on its own rod there is no such figure, and with one rod across there is one.
    """
    assert "bump_toe_alone" in judged(moving).worked.not_here
    across = {name: None for name in moving if name.startswith("steering.inner") or name == "steering.rack_travel"}
    known = judged({**moving, **across, "steering.linkage": "one rod across"}).worked.known
    assert known["bump_toe_alone"] > 0.0


def test_bump_steer_on_whole_sheets(finding: Callable[..., Finding], moving: Moving) -> None:
    sound = finding("bump-steer", {**moving, **STEADY})
    assert sound.verdict == "good" and sound.grade == "common practice"
    wrong = finding("bump-steer", {**moving, **RODS, "steering.inner_height": "400 mm"})
    assert wrong.verdict == "stop"
    slightly = finding("bump-steer", {**moving, **RODS, "steering.inner_height": "359 mm"})
    assert slightly.verdict == "watch"


def test_bump_steer_that_grows_beyond_the_usual_travel_is_not_good(
    finding: Callable[..., Finding], moving: Moving
) -> None:
    # 0.8 mm over 150 mm, and 4.2 over 200 where 4 would be good.
    found = finding("bump-steer", {**moving, **RODS})
    assert found.verdict == "watch" and "over all the travel by 4.2 mm" in found.text and "more than 4 mm" in found.text


# --- bump-steer-turned -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("angle", "verdict"), [(0.99, "good"), (1.0, "good"), (1.01, "watch")])
def test_bump_steer_turned(angle: float, verdict: str) -> None:
    judgement = the_check("bump-steer-turned")(2 * 812.8 * sin(radians(angle)), 812.8)
    assert judgement.verdict == verdict
    assert degrees(judgement.figures["angle"][0]) == pytest.approx(angle)


def test_bump_steer_turned_on_whole_sheets(finding: Callable[..., Finding], moving: Moving) -> None:
    assert finding("bump-steer-turned", {**moving, **RODS}).verdict == "good"
    wrong = finding("bump-steer-turned", {**moving, **RODS, "steering.inner_height": "400 mm"})
    assert wrong.verdict == "watch" and wrong.grade == "no published figure"


# --- camber-change ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("angle", "verdict"), [(0.99, "good"), (1.0, "good"), (1.01, "watch")])
def test_camber_change(angle: float, verdict: str) -> None:
    found = Worst(radians(angle), 110.0, 0.0)
    judgement = the_check("camber-change")(found, -0.05, 0.01)
    assert judgement.verdict == verdict
    assert "at {travel_there} bump" in judgement.text and judgement.figures["travel_there"] == (110.0, "mm")


def test_camber_change_on_whole_sheets(finding: Callable[..., Finding], moving: Moving) -> None:
    lower_front = {"arms.upper_front_height": "530 mm", "arms.upper_rear_height": "530 mm"}
    assert finding("camber-change", {**moving, **RODS, **lower_front}).verdict == "good"
    steep = {"arms.upper_front_height": "470 mm", "arms.upper_rear_height": "470 mm"}
    found = finding("camber-change", {**moving, **RODS, **steep})
    assert found.verdict == "watch" and "at 110 mm bump" in found.text


# --- castor-in-travel ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("least", "change", "verdict"),
    [
        (4.0, 1.99, "good"), (4.0, 2.0, "good"), (4.0, 2.01, "watch"), (4.0, -2.0, "good"), (3.9, -2.01, "watch"),
        (0.01, -1.0, "good"), (0.0, -1.0, "stop"), (-0.01, -3.0, "stop"),
    ],
)  # fmt: skip
def test_castor_in_travel(least: float, change: float, verdict: str) -> None:
    at = Worst(radians(least), -90.0, 0.0)
    judgement = the_check("castor-in-travel")(radians(6), at, Worst(radians(change), 110.0, 0.0))
    assert judgement.verdict == verdict
    assert judgement.figures["travel_there"] == ((90.0 if verdict == "stop" else 110.0), "mm")
    assert ("droop" in judgement.text) == (verdict == "stop")


def test_castor_that_does_not_change_is_told_at_ride_height() -> None:
    judgement = the_check("castor-in-travel")(radians(6), Worst(radians(6), 0.0, 0.0), Worst(0.0, 0.0, 0.0))
    assert judgement.verdict == "good" and "at ride height." in judgement.text


def test_castor_in_travel_on_whole_sheets(finding: Callable[..., Finding], moving: Moving) -> None:
    assert finding("castor-in-travel", {**moving, **RODS}).verdict == "good"
    # Lower hinge falling 85 to the rear: the lower pivot runs forward and back as it rises and falls.
    changes = finding("castor-in-travel", {**moving, **RODS, "arms.lower_rear_height": "200 mm"})
    assert changes.verdict == "watch"
    falls = finding(
        "castor-in-travel", {**moving, **RODS, "arms.lower_rear_height": "200 mm", "pivots.castor": "2 deg"}
    )
    assert falls.verdict == "stop" and "no longer returns by itself" in falls.text


# --- lower-joint-with-tyre-flat --------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("below", "verdict"),
    # A 15 in rim: 190.5 and 17.5 of edge are 208 below the wheel centre; a housing of 22 leaves 186 for the pivot.
    [("185.9 mm", "good"), ("186 mm", "good"), ("186.1 mm", "stop")],
)
def test_lower_joint_with_the_tyre_flat(
    finding: Callable[..., Finding], moving: Moving, below: str, verdict: str
) -> None:
    found = finding("lower-joint-with-tyre-flat", {**moving, "pivots.lower_below_spindle": below})
    assert found.verdict == verdict
    assert ("digs into the road" in found.text) == (verdict == "stop")


def test_a_lower_joint_below_the_rim_is_told_how_far_up_it_must_go(
    finding: Callable[..., Finding], moving: Moving
) -> None:
    found = finding("lower-joint-with-tyre-flat", {**moving, "pivots.lower_below_spindle": "200 mm"})
    assert "14 mm" in found.text
