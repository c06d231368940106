"""Joints swung through all travel and lock on whole sheets: limits, advice, and what is not judged.

The angles themselves are checked in tests/rules/motion/test_joints.py against hand cases and a general library.
"""

from collections.abc import Callable
from math import degrees, radians

import pytest

from rules.judging.judge import Finding, Judged
from rules.measure.display import show
from rules.motion.joints import Angles, JointTable
from rules.motion.place_words import where
from rules.motion.sweep import Worst
from tests.support.declared import the_check

Changes = dict[str, object]
JudgedWith = Callable[[Changes], Judged]
FindingWith = Callable[[str, Changes], Finding]

JOINTS = ("upper_joint", "lower_joint", "tie_rod_outer", "tie_rod_inner")
CHECKS = {joint: f"{joint.replace('_', '-')}-angle" for joint in JOINTS}
ALLOWED = {joint: f"joint_angles.{joint.removesuffix('_joint')}_allowed" for joint in JOINTS}
STEP = "joint_angles"


def _without_joint_angles(moving: Changes) -> Changes:
    return {name: entry for name, entry in moving.items() if not name.startswith(f"{STEP}.")}


@pytest.mark.parametrize("joint", JOINTS)
def test_a_sound_front_end_has_every_joint_within_what_it_allows(
    finding: FindingWith, moving: Changes, joint: str
) -> None:
    found = finding(CHECKS[joint], moving)
    assert (found.verdict, found.change) == ("good", "")
    assert "it allows" in found.text and " deg" in found.text


@pytest.mark.parametrize(
    ("in_hand", "verdict"),
    [(3.01, "good"), (3.0, "good"), (2.99, "watch"), (0.01, "watch"), (0.0, "watch"), (-0.01, "stop")],
)
@pytest.mark.parametrize("joint", JOINTS)
def test_three_degrees_in_hand_are_good_and_none_is_a_stop(
    judged: JudgedWith, finding: FindingWith, moving: Changes, joint: str, in_hand: float, verdict: str
) -> None:
    needed = degrees(judged(moving).worked.known[f"{joint}_angle"])
    found = finding(CHECKS[joint], {**moving, ALLOWED[joint]: f"{needed + in_hand!r} deg"})
    assert found.verdict == verdict
    assert bool(found.change) == (verdict != "good")
    assert ("binds" in found.text) == (verdict == "stop")


@pytest.mark.parametrize("joint", JOINTS)
def test_a_finished_sheet_without_joint_angles_is_not_judged_for_them(
    judged: JudgedWith, finding: FindingWith, moving: Changes, joint: str
) -> None:
    assert judged({}).verdict == "good"
    found = finding(CHECKS[joint], {})
    assert found.verdict == "not judged" and "joint angles" in found.text
    # With arms there are joints that move: then they are waited for.
    assert finding(CHECKS[joint], _without_joint_angles(moving)).verdict == "waiting"


@pytest.mark.parametrize("joint", JOINTS)
def test_once_begun_a_joint_waits_for_its_bolt_and_for_what_it_allows(
    finding: FindingWith, moving: Changes, joint: str
) -> None:
    other = "joint_angles.upper_set" if joint != "upper_joint" else "joint_angles.lower_set"
    found = finding(CHECKS[joint], {**_without_joint_angles(moving), other: "2 deg"})
    assert found.verdict == "waiting"
    assert set(found.waits_for) == {ALLOWED[joint].replace("allowed", "bolt"), ALLOWED[joint]}


@pytest.mark.parametrize("joint", JOINTS)
def test_a_joint_waits_for_what_it_allows_alone(finding: FindingWith, moving: Changes, joint: str) -> None:
    found = finding(CHECKS[joint], {**moving, ALLOWED[joint]: None})
    assert (found.verdict, found.waits_for) == ("waiting", (ALLOWED[joint],))


@pytest.mark.parametrize("joint", JOINTS)
@pytest.mark.parametrize("step", ["arms", "steering"])
def test_without_arms_or_steering_a_joint_waits_for_them(
    finding: FindingWith, moving: Changes, joint: str, step: str
) -> None:
    found = finding(CHECKS[joint], {name: entry for name, entry in moving.items() if not name.startswith(f"{step}.")})
    assert found.verdict == "waiting" and any(name.startswith(f"{step}.") for name in found.waits_for)


def test_one_rod_across_has_no_inner_joint(judged: JudgedWith, finding: FindingWith, moving: Changes) -> None:
    one_rod = {
        **moving, "steering.linkage": "one rod across", "steering.inner_ahead": None,
        "steering.inner_from_centre": None, "steering.inner_height": None, "steering.rack_travel": None,
        "joint_angles.tie_rod_inner_bolt": None, "joint_angles.tie_rod_inner_allowed": None,
    }  # fmt: skip
    inner = finding("tie-rod-inner-angle", one_rod)
    assert inner.verdict == "does not apply" and "no inner joints" in inner.text
    table = judged(one_rod).worked.known["joint_table"]
    assert [name for name, _ in table.joints] == ["upper joint", "lower joint", "outer tie-rod joint"]
    # The same rod seen from its other end: the right wheel's outer joint, of the same corner mirrored.
    assert finding("tie-rod-outer-angle", one_rod).verdict in ("good", "watch", "stop")


def test_a_relay_rods_inner_joint_is_measured_from_the_rod_as_a_racks_is(judged: JudgedWith, moving: Changes) -> None:
    """Both stay square to the car's centre line; straight ahead they are the same joint in the same place."""
    relay = {**moving, "steering.linkage": "relay rod", "steering.relay_arm_length": "150 mm"}
    angles = [judged(changes).worked.known["tie_rod_inner_angles"].at for changes in (moving, relay)]
    straight = [position for position in angles[0] if position[1] == 0.0]
    assert len(straight) == 9
    for position in straight:
        assert angles[1][position] == pytest.approx(angles[0][position], abs=1e-9)


def test_the_table_has_four_joints_at_nine_corners_and_agrees_with_the_worst(
    judged: JudgedWith, moving: Changes
) -> None:
    known = judged(moving).worked.known
    table = known["joint_table"]
    assert isinstance(table, JointTable)
    bump, droop = known["arms.bump_travel"], known["arms.droop_travel"]
    assert table.corners == tuple((travel, lock) for travel in (-droop, 0.0, bump) for lock in (-1.0, 0.0, 1.0))
    assert [name for name, _ in table.joints] == [
        "upper joint", "lower joint", "outer tie-rod joint", "inner tie-rod joint"
    ]  # fmt: skip
    for joint, (_, angles) in zip(JOINTS, table.joints, strict=True):
        assert len(angles) == 9
        worst = known[f"{joint}_angle"]
        assert isinstance(worst, Worst)
        assert max(angle for angle in angles if angle is not None) <= worst + 1e-12
        assert known[f"{joint}_angles"].at[worst.travel, worst.lock] == worst


def test_a_bolt_along_a_square_housing_needs_nothing_at_ride_whatever_the_lock(
    judged: JudgedWith, moving: Changes
) -> None:
    at = judged(moving).worked.known["upper_joint_angles"].at
    assert max(angle for (travel, _), angle in at.items() if travel == 0.0) == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize("which", ["upper", "lower"])
def test_a_bolt_fore_and_aft_is_named_as_the_cause_when_lock_alone_uses_the_joint_up(
    finding: FindingWith, moving: Changes, which: str
) -> None:
    """Full lock is 32 deg; a joint of 28 cannot follow a flat bolt, and along the axis it is good again."""
    wrong = {**moving, f"{STEP}.{which}_bolt": "fore and aft", f"{STEP}.{which}_allowed": "28 deg"}
    found = finding(f"{which}-joint-angle", wrong)
    assert found.verdict == "stop"
    assert "Lock alone swings it" in found.change
    assert "turn the bolt along the steering axis" in found.change
    assert "Clocked as" not in found.change
    assert finding(f"{which}-joint-angle", moving).verdict == "good"


def test_a_tie_rod_bolt_fore_and_aft_is_named_as_the_cause(finding: FindingWith, moving: Changes) -> None:
    found = finding("tie-rod-outer-angle", {**moving, "joint_angles.tie_rod_outer_bolt": "fore and aft"})
    assert found.verdict == "stop"
    assert "because its bolt lies fore and aft: turn the bolt up and down" in found.change


def test_a_joint_short_of_angle_with_the_right_bolt_is_not_blamed_on_it(finding: FindingWith, moving: Changes) -> None:
    found = finding("upper-joint-angle", {**moving, "joint_angles.upper_allowed": "8 deg"})
    assert found.verdict == "stop"
    assert "bolt lies" not in found.change
    assert "isalignment spacers" in found.change


@pytest.mark.parametrize("set_to", ["15 deg", "-15 deg"])
@pytest.mark.parametrize("which", ["upper", "lower"])
def test_a_badly_clocked_housing_is_told_what_it_needs_at_best_and_that_is_so(
    judged: JudgedWith, finding: FindingWith, moving: Changes, which: str, set_to: str
) -> None:
    clocked = {**moving, f"{STEP}.{which}_set": set_to, f"{STEP}.{which}_allowed": "20 deg"}
    found = finding(f"{which}-joint-angle", clocked)
    assert found.verdict == "stop"
    best = judged(clocked).worked.known[f"{which}_best_set"]
    assert f"it needs {show(best.least, 'rad', 'metric')}" in found.change
    followed = judged({**clocked, f"{STEP}.{which}_set": f"{degrees(best)!r} deg"}).worked.known
    assert followed[f"{which}_joint_angle"] == pytest.approx(best.least, abs=1e-9)
    for other in (-1.0, 1.0):
        beside = judged({**clocked, f"{STEP}.{which}_set": f"{degrees(best) + other!r} deg"}).worked.known
        assert beside[f"{which}_joint_angle"] > best.least


def test_clocking_is_not_offered_where_it_wins_less_than_a_gauge_reads(finding: FindingWith, moving: Changes) -> None:
    found = finding("upper-joint-angle", {**moving, "joint_angles.upper_allowed": "8 deg"})
    assert "Clock" not in found.change


def test_there_is_no_best_clocking_for_a_bolt_fore_and_aft(judged: JudgedWith, moving: Changes) -> None:
    worked = judged({**moving, "joint_angles.lower_bolt": "fore and aft"}).worked
    assert "lower_best_set" not in worked.known
    assert "fore and aft" in worked.not_here["lower_best_set"]


@pytest.mark.parametrize(
    ("travel", "lock", "said", "unsaid"),
    [
        (-90.0, 0.0, "a strap for less droop", "lock"),
        (110.0, 0.0, "a bump stop that touches sooner", "lock"),
        (0.0, 1.0, "a shorter lock", "strap"),
        (-90.0, -1.0, "a strap for less droop, a shorter lock", "bump stop"),
    ],
)
def test_what_to_hold_back_follows_from_where_the_joint_is_worst(
    travel: float, lock: float, said: str, unsaid: str
) -> None:
    change = the_check("tie-rod-inner-angle")(Worst(0.5, travel, lock), 0.4).change
    assert said in change and unsaid not in change


@pytest.mark.parametrize(
    ("travel", "lock", "words"),
    [
        (0.0, 0.0, "at ride height, straight ahead"),
        (110.0, 1.0, "at {travel_there} bump, full lock, inner wheel"),
        (-90.0, -1.0, "at {travel_there} droop, full lock, outer wheel"),
        (0.0, 0.75, "at ride height, {lock_there} lock, inner wheel"),
    ],
)
def test_the_place_is_said_in_words(travel: float, lock: float, words: str) -> None:
    said, figures = where(Worst(0.3, travel, lock))
    assert said == words
    assert figures == {"travel_there": (abs(travel), "mm"), "lock_there": (abs(lock), "share")}


def test_the_place_stands_in_the_finding(judged: JudgedWith, finding: FindingWith, moving: Changes) -> None:
    worst = judged(moving).worked.known["upper_joint_angle"]
    assert worst.travel == 110.0 or worst.travel == -90.0
    side = "110 mm bump" if worst.travel > 0 else "90 mm droop"
    assert f"at {side}" in finding("upper-joint-angle", moving).text


def test_lock_alone_counts_as_the_cause_from_less_than_three_degrees_in_hand() -> None:
    """Allowed 20 deg; lock alone 17 leaves the 3 that are wanted, 17.1 does not."""
    for alone, blamed in ((17.0, False), (17.1, True)):
        angles = Angles({(0.0, 1.0): radians(alone), (90.0, 1.0): radians(25)})
        found = the_check("tie-rod-outer-angle")(angles.worst, radians(20), angles, "fore and aft")
        assert ("because its bolt lies" in found.change) is blamed


def test_without_a_best_clocking_none_is_offered() -> None:
    angles = Angles({(0.0, 1.0): radians(30)})
    found = the_check("lower-joint-angle")(angles.worst, radians(20), angles, "fore and aft", None)
    assert found.verdict == "stop" and "Clock" not in found.change


def test_more_travel_never_needs_less_angle(judged: JudgedWith, moving: Changes) -> None:
    less = judged({**moving, "arms.bump_travel": "60 mm", "arms.droop_travel": "50 mm"}).worked.known
    more = judged(moving).worked.known
    assert all(less[f"{joint}_angle"] <= more[f"{joint}_angle"] + 1e-9 for joint in JOINTS)
