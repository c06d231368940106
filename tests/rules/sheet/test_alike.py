"""Whose answer is often another's too. Common practice, no source."""

import pytest

from rules.sheet import FIELDS
from rules.sheet.alike import SAME_AS, TAPED, TWIN_STEPS


def test_two_alike_are_two_questions_of_one_kind() -> None:
    for question, other in SAME_AS.items():
        assert question != other and {question, other} <= FIELDS.keys()
        # The hub bolts' grade is asked as the mark on their heads.
        assert FIELDS[question].kind == FIELDS[other].kind or question == "bolts.upper_grade", question


def test_the_lower_joint_is_offered_the_upper_ones_answers_and_no_other_row_of_its_steps_is() -> None:
    twins = {question: other for question, other in SAME_AS.items() if question.startswith("pivots.")}
    twins |= {question: other for question, other in SAME_AS.items() if question.startswith("joint_angles.lower_")}
    assert twins["pivots.lower_kind"] == "pivots.upper_kind"
    for question, other in twins.items():
        assert question.partition(".")[0] in TWIN_STEPS
        assert question.replace("lower_", "upper_", 1) == other


def test_where_a_joint_was_taped_is_never_copied_from_the_other_joint() -> None:
    assert TAPED and not TAPED & SAME_AS.keys()


@pytest.mark.parametrize(
    ("question", "other"),
    [
        ("tyre.largest", "tyre.smallest"),
        ("arms.lower_rear_height", "arms.lower_front_height"),
        ("bolts.lower_thread", "bolts.upper_thread"),
        ("weld_lower.leg", "weld_upper.leg"),
        ("weld_caliper_bracket.filler", "weld_upper.filler"),
        ("weld_caliper_bracket.thickness_one", "plate.bracket_thickness"),
        ("weld_caliper_bracket.run", "upright.bracket_arm_width"),
        ("weld_caliper_bracket.apart", "plate.bracket_thickness"),
        ("weld_caliper_bracket.metal", "weld_upper.metal"),
        ("weld_steering_arm.thickness_one", "upright.steering_arm_height"),
        ("weld_steering_arm.run", "upright.steering_arm_width"),
        ("weld_steering_arm.apart", "upright.steering_arm_height"),
        ("weld_steering_arm.thickness_two", "weld_upper.thickness_two"),
        ("weld_upper.thickness_two", "plate.thickness"),
        ("weld_upper.welded_by", "plate.weld_process"),
        ("weld_lower.welded_by", "weld_upper.welded_by"),
        ("weld_lower.thickness_one", "weld_upper.thickness_one"),
        ("weld_lower.runs_lie", "weld_upper.runs_lie"),
        ("weld_lower.apart_lies", "weld_upper.apart_lies"),
        ("arms.upper_rear_from_centre", "arms.upper_front_from_centre"),
        ("joint_angles.tie_rod_inner_allowed", "joint_angles.upper_allowed"),
    ],
)
def test_some_by_name(question: str, other: str) -> None:
    assert SAME_AS[question] == other
