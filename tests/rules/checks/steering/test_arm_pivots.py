"""Slips of the tape and swapped entries among the pivots: each is one stop in words, and nothing that moves is judged.

Half the track is 800 mm. Outer pivots from the tyre plane: lower 73.48992, upper 118.39852 mm inboard; so from the centre
line 726.51 and 681.60. The tie rod's outer end: hub face 4 mm outboard, end 144 mm inboard of it: 660 from the centre line.
"""

from collections.abc import Callable

import pytest

from rules.checks.steering.arm_pivots import tie_rod_placed
from rules.graph.results import Waits
from rules.judging.judge import Finding, Judged
from rules.judging.trade import trade
from rules.motion.points import UprightPoints

JudgedWith = Callable[..., Judged]
FindingOf = Callable[..., Finding]
Moving = dict[str, object]

# what is changed; verdict; words
ARMS = [
    ({}, "good", "in order"),
    ({"arms.lower_rear_ahead": "160 mm"}, "good", "in order"),  # 170 - 160 = 10 mm
    ({"arms.lower_rear_ahead": "160.1 mm"}, "stop", "The lower arm's front pivot is not ahead of its rear one"),
    ({"arms.upper_front_ahead": "-150 mm", "arms.upper_rear_ahead": "120 mm"}, "stop", "The upper arm's front pivot"),
    ({"arms.lower_front_from_centre": "706.5 mm"}, "good", "in order"),  # 726.51 - 20 = 706.51
    ({"arms.lower_front_from_centre": "706.6 mm"}, "stop", "The lower arm's inner pivots do not lie inboard"),
    ({"arms.upper_rear_from_centre": "661.7 mm"}, "stop", "The upper arm's inner pivots do not lie inboard"),
    ({"arms.upper_front_height": "285.1 mm", "arms.upper_rear_height": "285.1 mm"}, "good", "in order"),
    ({"arms.upper_front_height": "285 mm"}, "stop", "do not lie above the lower arm's"),
]


@pytest.mark.parametrize(("changes", "verdict", "words"), ARMS)
def test_arm_pivots(finding: FindingOf, moving: Moving, changes: Moving, verdict: str, words: str) -> None:
    found = finding("arm-pivots-placed", {**moving, **changes})
    assert found.verdict == verdict and words in found.text


def test_what_is_entered_so_far_is_judged_before_the_rest(finding: FindingOf) -> None:
    found = finding("arm-pivots-placed", {"arms.lower_front_from_centre": "800 mm"})
    assert found.verdict == "stop" and "lower arm's inner pivots" in found.text


@pytest.mark.parametrize("changes", [changes for changes, verdict, _ in ARMS if verdict == "stop"])
def test_after_a_slip_one_check_of_the_arms_stops_and_the_rest_wait_for_it_to_be_put_right(
    judged: JudgedWith, moving: Moving, changes: Moving
) -> None:
    findings = judged({**moving, **changes}).findings
    # Arms entered through each other do lie in one another as well, and the room between the parts says so.
    stops = [finding.check for finding in findings if finding.verdict == "stop" and finding.check != "room"]
    assert stops == ["arm-pivots-placed"]
    assert not [finding.text for finding in findings if "fault in the program" in finding.change]
    rub = next(finding for finding in findings if finding.check == "tyre-clears-lower-arm")
    assert rub.verdict == "not judged" and "put" in rub.text


# what is changed; verdict; words
ROD = [
    ({}, "good", "in order"),
    ({"steering.inner_from_centre": "659.9 mm"}, "good", "in order"),
    ({"steering.inner_from_centre": "660 mm"}, "stop", "660 mm"),
    # The axis at the end's height: 4.2042 ahead, 88.4778 inboard; arm hypot(130.2042, 51.5222) = 140.027 mm.
    ({"steering.copied_length": "142 mm"}, "good", "in order"),
    ({"steering.copied_length": "142.1 mm"}, "watch", "an arm of 142.1 mm"),
    ({"steering.copied_length": "138 mm"}, "watch", "an arm of 138 mm"),
]


@pytest.mark.parametrize(("changes", "verdict", "words"), ROD)
def test_tie_rod_ends(finding: FindingOf, moving: Moving, changes: Moving, verdict: str, words: str) -> None:
    found = finding("tie-rod-placed", {**moving, **changes})
    assert found.verdict == verdict and words in found.text


def test_a_tie_rod_that_points_outboard_is_one_stop(judged: JudgedWith, moving: Moving) -> None:
    findings = judged({**moving, "steering.inner_from_centre": "700 mm"}).findings
    # The rack then stands within the wheel, and the room between the parts says so as well.
    stops = [finding for finding in findings if finding.verdict == "stop"]
    assert [finding.check for finding in stops if finding.check != "room"] == ["tie-rod-placed"]
    assert all("rack" in finding.about or "tie rod" in finding.about for finding in stops if finding.check == "room")


# One answer on a page that needs steering or travel asks for them: nothing is passed over.
@pytest.mark.parametrize(
    ("entry", "check", "field"),
    [
        ({"steering.rack_travel": "80 mm"}, "steering-sense", "steering.linkage"),
        ({"steering.stop_angle": "30 deg"}, "lock-reached", "steering.linkage"),
        ({"arms.bump_travel": "100 mm"}, "camber-change", "arms.lower_front_from_centre"),
        ({"spring.shock_shortest": "360 mm"}, "travel-reached", "arms.lower_front_from_centre"),
        ({"joint_angles.upper_allowed": "20 deg"}, "steering-sense", "steering.linkage"),
    ],
)
def test_one_answer_makes_the_rest_wait(finding: FindingOf, entry: Moving, check: str, field: str) -> None:
    found = finding(check, entry)
    assert found.verdict == "waiting" and field in found.waits_for


def test_the_tie_rods_outer_end_alone_asks_for_no_steering(judged: JudgedWith, moving: Moving) -> None:
    ends = {name: entry for name, entry in moving.items() if name.startswith("steering.tie_rod")}
    ends.pop("steering.tie_rod_end_reach", None)
    findings = judged(ends).findings
    waiting = {field for finding in findings if finding.verdict == "waiting" for field in finding.waits_for}
    assert waiting == {"steering.tie_rod_end_reach"}  # its own room, and nothing of rack or linkage
    away = {"caliper-away-from-arm"}  # the base car has caliper and arm both behind, and is asked whether that is so
    assert {one.verdict for one in findings if one.check not in away} <= {
        "good",
        "waiting",
        "not judged",
        "does not apply",
    }


@pytest.mark.parametrize("missing", ["steering.tie_rod_ahead", "steering.tie_rod_inboard", "steering.tie_rod_above"])
def test_the_ends_order_waits_for_the_outer_end(finding: FindingOf, moving: Moving, missing: str) -> None:
    assert missing in finding("tie-rod-placed", {**moving, missing: None}).waits_for


@pytest.mark.parametrize(
    ("ahead", "copied", "verdict"),
    [
        (-126.0, 140.0, "good"),
        (-126.0, 150.0, "watch"),
        (None, 140.0, "waits"),
        (-126.0, None, "waits"),
        (None, None, "waits"),
    ],
)
def test_a_place_and_a_copied_arm_are_compared_before_the_inner_end_is_there(
    ahead: float | None, copied: float | None, verdict: str
) -> None:
    """An upright axis at the wheel centre, the rod's end 140 behind it."""
    upright = UprightPoints((0.0, 0.0, 270.0), (0.0, 0.0, 520.0), (0.0, 0.0, 400.0))
    limits = trade().checks["tie-rod-placed"].note.limits
    asked = (upright, True, -140.0, 0.0, 380.0, None, ahead, copied, None, "rack", 1600.0, limits)
    if verdict == "waits":
        with pytest.raises(Waits, match="inner_from_centre"):
            tie_rod_placed(*asked)  # type: ignore[arg-type]
    else:
        assert tie_rod_placed(*asked).verdict == verdict  # type: ignore[arg-type]
