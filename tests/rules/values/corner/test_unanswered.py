"""What nobody has answered counts as the worst that is usual, or is waited for; never as the best."""

from collections.abc import Callable, Mapping
from math import degrees

import pytest

from rules.judging.judge import Judged, judge
from rules.sheet import read_sheet
from sample_sheets import document

Changes = Mapping[str, object]


@pytest.mark.parametrize(
    ("changes", "at"),
    [
        ({"caliper.clock": None}, -90.0),
        ({"caliper.clock": None, "caliper.side": "ahead"}, 90.0),
        ({"caliper.clock": None, "weld_caliper_bracket.caliper_stands": "above"}, 0.0),
        # Both want the same room: the side of the steering arm is the worse.
        ({"caliper.clock": None, "steering.tie_rod_ahead": "120 mm"}, 90.0),
        ({"caliper.clock": None, "steering.tie_rod_ahead": "-120 mm"}, -90.0),
    ],
)
def test_a_caliper_whose_place_is_not_entered(judged: Callable[[Changes], Judged], changes: Changes, at: float) -> None:
    found = judged(changes)
    assert degrees(found.worked.known["caliper_at"]) == pytest.approx(at)
    assert found.worked.estimated["caliper_at"] == ("caliper.clock",)


def test_a_joint_whose_set_is_not_measured_counts_as_five_degrees_the_worse_way(
    judged: Callable[[Changes], Judged], moving: dict[str, object]
) -> None:
    def needs(set_to: str | None) -> float:
        return degrees(judged({**moving, "joint_angles.upper_set": set_to}).worked.known["upper_joint_angle"])

    unmeasured = judged({**moving, "joint_angles.upper_set": None})
    assert needs(None) == pytest.approx(max(needs("5 deg"), needs("-5 deg")))
    assert needs(None) > needs("0 deg")
    told = next(one for one in unmeasured.findings if one.check == "upper-joint-angle")
    assert told.verdict != "good" and "joint_angles.upper_set" in told.estimated_from


@pytest.mark.parametrize(
    ("left_out", "check"),
    [
        ("upright.beam", "assembly-hub-bolts"),
        ("upright.beam_depth", "assembly-hub-bolts"),
        ("plate.thickness", "assembly-hub-bolts"),
        ("upright.beam_to_pivots", "assembly-upper-pivot-bolt"),
        ("plate.bracket_thickness", "assembly-caliper-bolts"),
        ("upright.bracket_arm_offset", "assembly-hub-bolts"),
    ],
)
def test_a_part_that_is_begun_is_waited_for_where_it_could_be_in_the_way(left_out: str, check: str) -> None:
    car = document("scree_ox_strength")
    table, key = left_out.split(".")
    del car[table][key]
    found = next(one for one in judge(read_sheet(car), advice=False).findings if one.check == check)
    assert found.verdict == "waiting" and left_out in found.waits_for
