"""Sheets of version 1: what their weld tables are called now, with every entry kept. Worked out by hand."""

import pytest

from rules.sheet import STEPS, read_sheet
from rules.sheet.earlier import EARLIER_NAMES, TwoAnswers, carried_over, told

FILLET = {"form": "fillet on both sides", "leg": "6 mm"}


def test_every_table_becomes_one_that_is_asked() -> None:
    names = {step.name for step in STEPS}
    assert set(EARLIER_NAMES.values()) <= names
    assert not EARLIER_NAMES.keys() & names
    assert {name for name in names if name.startswith("weld_")} == set(EARLIER_NAMES.values())


def test_entries_and_order_stay() -> None:
    document = {
        "sheet_version": 1, "units": "metric", "joint_lower": {"leg": "8 mm", "own": 3}, "notes_of_mine": {"a": 1},
        "joint_upper": FILLET, "confirmed": {"joint_upper.leg": "6 mm", "wheel.width": "1 in"}, "joint_angles": {},
    }  # fmt: skip
    assert list(carried_over(document).items()) == [
        ("sheet_version", 2), ("units", "metric"), ("weld_lower", {"leg": "8 mm", "own": 3}), ("notes_of_mine", {"a": 1}),
        ("weld_upper", FILLET), ("confirmed", {"weld_upper.leg": "6 mm", "wheel.width": "1 in"}), ("joint_angles", {}),
    ]  # fmt: skip
    assert document["sheet_version"] == 1, "what was read stays as it was"


def test_a_confirmed_answer_is_still_confirmed() -> None:
    document = {
        "sheet_version": 1, "units": "metric", "joint_upper": {"leg": "20 mm"}, "confirmed": {"joint_upper.leg": "20 mm"},
    }  # fmt: skip
    assert read_sheet(carried_over(document)).confirmed == {"weld_upper.leg"}


@pytest.mark.parametrize(
    ("document", "line"),
    [
        ({"sheet_version": 1, "wheel": {}}, ""),
        ({"joint_upper": {}}, "[joint_upper] is now [weld_upper]; its entries are kept."),
        (
            {"joint_caliper_bracket": {}, "joint_steering_arm": 1},
            "[joint_steering_arm] is now [weld_steering_arm], [joint_caliper_bracket] is now [weld_caliper_bracket]; their",
        ),
    ],
)
def test_which_table_became_which_is_told_in_one_line(document: dict[str, object], line: str) -> None:
    assert line in told(document)
    assert bool(told(document)) == bool(line)
    assert "\n" not in told(document)


def test_both_names_in_one_sheet_are_put_together_where_they_agree() -> None:
    document = {
        "sheet_version": 2,
        "weld_upper": {"leg": "6 mm", "run": "80 mm"},
        "joint_upper": {"leg": "6 mm", "apart": 9},
    }
    assert carried_over(document)["weld_upper"] == {"leg": "6 mm", "run": "80 mm", "apart": 9}


@pytest.mark.parametrize(
    ("document", "named"),
    [
        ({"joint_upper": {"leg": "6 mm"}, "weld_upper": {"leg": "7 mm"}}, "weld_upper.leg stands twice"),
        ({"weld_upper": {"leg": 1}, "joint_upper": {"leg": True}}, "weld_upper.leg stands twice"),
        ({"weld_lower": {"leg": 1}, "joint_lower": "later"}, "[weld_lower] stands twice"),
        ({"confirmed": {"weld_lower.leg": 1, "joint_lower.leg": 2}}, '"weld_lower.leg" in [confirmed] stands twice'),
    ],
)
def test_both_names_that_do_not_agree_are_refused_by_name(document: dict[str, object], named: str) -> None:
    with pytest.raises(TwoAnswers) as refused:
        carried_over(document)
    place = "upper" if "upper" in named else "lower"
    assert named in str(refused.value)
    assert f"[joint_{place}] is the earlier name of [weld_{place}]" in str(refused.value)


@pytest.mark.parametrize("version", [True, "1", 0, -1, 3, None, 1.0])
def test_a_version_that_is_none_is_left_to_the_reader(version: object) -> None:
    assert carried_over({"sheet_version": version})["sheet_version"] is version
