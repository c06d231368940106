"""Spring and shock on whole sheets: lengths, ratio, and whether the shock has length to spare."""

from collections.abc import Callable
from math import atan2, cos, hypot, sin

import pytest

from rules.graph.results import Judgement, NotJudged, Waits
from rules.judging.judge import Finding, Judged
from rules.sheet import FIELDS
from rules.sheet.spring import Spring
from rules.values.steering.spring import shock_ends
from tests.support.declared import the_check

shock_spare = the_check("shock-spare")

JudgedWith = Callable[[dict[str, object]], Judged]
FindingOf = Callable[[str, dict[str, object]], Finding]
Moving = dict[str, object]

ENDS = tuple(f"{end}_end_{way}" for end in ("arm", "frame") for way in ("ahead", "from_centre", "height"))
LEVEL: dict[str, object] = {
    "arms.lower_front_from_centre": "300 mm", "arms.lower_front_height": "285 mm",
    "arms.lower_rear_from_centre": "300 mm", "arms.lower_rear_height": "285 mm",
    "arms.upper_front_from_centre": "390 mm", "arms.upper_front_height": "512 mm",
    "arms.upper_rear_from_centre": "390 mm", "arms.upper_rear_height": "512 mm",
    "spring.arm_end_from_centre": "620 mm", "spring.arm_end_height": "300 mm",
    "spring.frame_end_from_centre": "470 mm", "spring.frame_end_height": "760 mm",
}  # fmt: skip
"""The hinges and ends that the hand figures here are worked on."""


def test_the_shock_at_ride_is_the_distance_between_its_ends(judged: JudgedWith, moving: Moving) -> None:
    # Arm end 620 from centre and 300 up, frame end 470 and 760: 150 across, 460 up, root(234100).
    known = judged({**moving, **LEVEL}).worked.known
    assert known["shock_ends"].on_arm == (0.0, -180.0, 300.0)
    assert known["shock_at_ride"] == pytest.approx(483.838817, abs=1e-6)


@pytest.mark.parametrize(("name", "travel"), [("shock_at_bump", 110.0), ("shock_at_droop", -90.0)])
def test_the_shock_follows_the_lower_arms_turn(judged: JudgedWith, moving: Moving, name: str, travel: float) -> None:
    # By hand: level hinge straight ahead, 500 inboard of the tyre's plane and 285 up. The arm turns by the change of the
    # lower pivot's direction seen from the front; the arm's end turns about the hinge by as much.
    known = judged({**moving, **LEVEL}).worked.known
    before, after = (known["hung_front"].held(at)[0] for at in (0.0, travel))
    turn = atan2(after[2] - 285.0, after[1] + 500.0) - atan2(before[2] - 285.0, before[1] + 500.0)
    reach, lean = hypot(320.0, 15.0), atan2(15.0, 320.0)  # arm end: 320 outboard of the hinge, 15 above it
    across, up = -500.0 + reach * cos(lean + turn), 285.0 + reach * sin(lean + turn)
    assert known[name] == pytest.approx(hypot(-330.0 - across, 760.0 - up), abs=1e-9)
    assert (known[name] < known["shock_at_ride"]) == (travel > 0)


def test_the_spring_ratio_is_that_of_the_instant_centre(judged: JudgedWith, moving: Moving) -> None:
    # Seen from the front, mm from the tyre's plane. Lower arm from (-500, 285) to (-73.48992, 275), slope -0.02344611; upper
    # arm from (-410, 512) to (-118.39852, 529.68931), slope 0.06066261. They meet where 273.27695 - 0.02344611 y =
    # 536.87167 + 0.06066261 y: y = -3133.979. For each mm the wheel rises, the wheel turning about that point, the lower
    # pivot rises (3133.979 - 73.48992) / 3133.979 = 0.9765506; the arm, 426.51008 across, turns 0.9765506 / 426.51008 =
    # 0.002289631. The shock's foot, 320 out and 15 up from the hinge, moves 320 up and 15 inboard a rad; the shock, 150
    # inboard and 460 up of 483.838817, closes by (320 x 460 + 15 x 150) / 483.838817 = 308.883563 a rad.
    known = judged({**moving, **LEVEL}).worked.known
    assert known["spring_ratio"] == pytest.approx(0.002289631 * 308.883563, abs=1e-5)


def test_a_spring_on_the_upper_arm_moves_with_the_upper_arm(judged: JudgedWith, moving: Moving) -> None:
    # Upper hinge 410 inboard of the tyre's plane and 512 up: the shock's foot 200 out from it on the pivot's own line.
    on_upper = {
        **moving, **LEVEL, "pivots.spring_on": "upper arm", "spring.arm_end_from_centre": "590 mm",
        "spring.arm_end_height": "512 mm", "spring.frame_end_from_centre": "590 mm", "spring.frame_end_height": "900 mm",
    }  # fmt: skip
    known = judged(on_upper).worked.known
    before, after = (known["hung_front"].held(at)[1] for at in (0.0, 110.0))
    turn = atan2(after[2] - 512.0, after[1] + 410.0) - atan2(before[2] - 512.0, before[1] + 410.0)
    foot = (-410.0 + 200.0 * cos(turn), 512.0 + 200.0 * sin(turn))
    assert known["shock_at_bump"] == pytest.approx(hypot(-210.0 - foot[0], 900.0 - foot[1]), abs=1e-9)


# --- optional step ---------------------------------------------------------------------------------------------------


def test_an_untouched_spring_step_is_not_judged(finding: FindingOf, moving: Moving) -> None:
    untouched = {name: (None if name.startswith("spring.") else entry) for name, entry in moving.items()}
    assert finding("shock-spare", untouched).verdict == "waiting"  # arms are entered, and a shock ends their travel
    assert finding("shock-spare", {}).verdict == "not judged"


@pytest.mark.parametrize("key", [*ENDS, "shock_shortest", "shock_longest"])
def test_a_begun_spring_step_waits_for_what_is_missing(finding: FindingOf, moving: Moving, key: str) -> None:
    found = finding("shock-spare", {**moving, f"spring.{key}": None})
    assert (found.verdict, found.waits_for) == ("waiting", (f"spring.{key}",))


def test_a_shock_without_arms_waits_for_the_arms(finding: FindingOf, moving: Moving) -> None:
    alone = {name: (None if name.startswith("arms.") else entry) for name, entry in moving.items()}
    found = finding("shock-spare", alone)
    assert found.verdict == "waiting" and all(field.startswith("arms.") for field in found.waits_for)


def test_the_ends_wait_by_name_and_do_not_apply_when_empty() -> None:
    with pytest.raises(NotJudged):
        shock_ends(Spring.record({}), "lower arm", 1600.0, None)
    with pytest.raises(Waits) as wait:
        shock_ends(Spring.record({"shock_shortest": 360.0}), "lower arm", 1600.0, None)
    assert wait.value.fields == tuple(f"spring.{key}" for key in ENDS)
    assert all(name in FIELDS for name in wait.value.fields)


# --- the check -------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("shortest", "longest", "verdict"),
    [
        (394.0, 556.0, "good"),  # 6 left at both ends: the limit itself
        (394.1, 600.0, "watch"),
        (300.0, 555.9, "watch"),
        (400.0, 600.0, "watch"),  # nothing left, but it does not take the blow yet
        (300.0, 550.0, "watch"),
        (400.1, 600.0, "stop"),
        (300.0, 549.9, "stop"),
        (600.0, 300.0, "stop"),  # the two lengths swapped
    ],
)
def test_length_left_closed_and_open(shortest: float, longest: float, verdict: str) -> None:
    assert shock_spare(480.0, 400.0, 550.0, shortest, longest).verdict == verdict


def test_a_shock_that_opens_as_the_wheel_rises_is_judged_at_its_own_ends() -> None:
    # Longest at bump, shortest at droop.
    assert shock_spare(480.0, 550.0, 400.0, 394.0, 556.0).verdict == "good"
    assert shock_spare(480.0, 550.0, 400.0, 400.1, 600.0).verdict == "stop"


def test_a_shock_longest_at_ride_height_counts_there_too() -> None:
    assert shock_spare(560.0, 500.0, 550.0, 394.0, 556.0).verdict == "stop"


def told(judgement: Judgement, name: str) -> float:
    return judgement.figures[name][0]


def test_the_shock_that_would_do_is_named() -> None:
    short = shock_spare(480.0, 400.0, 550.0, 420.0, 600.0)
    assert (told(short, "closed"), told(short, "open"), told(short, "closing")) == (394.0, 556.0, 20.0)
    assert "closes {closing} too early" in short.text and "{closed} or less" in short.change
    opened = shock_spare(480.0, 400.0, 550.0, 300.0, 530.0)
    assert told(opened, "opening") == 20.0 and "too short when open" in opened.text


def test_whole_sheets(finding: FindingOf, moving: Moving) -> None:
    assert finding("shock-spare", moving).verdict == "good"
    bottoms = finding("shock-spare", {**moving, "spring.shock_shortest": "430 mm"})
    assert bottoms.verdict == "stop" and "too early" in bottoms.text
    tight = finding("shock-spare", {**moving, "spring.shock_shortest": "401 mm"})
    assert tight.verdict == "watch" and "or move its mount" in tight.change
