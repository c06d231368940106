"""Walls of a beam that cannot be, or that are said to be none. Plain geometry; the ranges are common practice, no source.

The rig's channel is 3.2 in wide and 3.6 in deep of 1/2 in: 3.1 in is free from plate to back, 2.2 in inside its two sides.
Its steering arm is 3 9/16 in wide and stands on the whole of its side, which its builder confirmed.
"""

from collections.abc import Mapping

import pytest

from rules.judging.judge import judge
from rules.sheet import read_sheet
from sample_sheets import document
from tests.support.judging import judged_sample

RIG = "scree_ox_strength"
ON_BOX = {"upright.beam": "box", "upright.steering_arm_width": "2 in"}
CASES: list[tuple[Mapping[str, str | None], str, str]] = [
    ({}, "arm-wall-and-beam", "good"),
    ({"upright.arm_on_wall_width": "4.2 in"}, "arm-wall-and-beam", "stop"),  # the beam is nowhere as wide
    ({"upright.arm_on_wall_width": "3.5 in"}, "arm-wall-and-beam", "watch"),  # 1.13 of 3.1
    ({"upright.arm_on_wall_width": "2.2 in"}, "arm-wall-and-beam", "watch"),  # that is its back, where no arm goes square
    ({"upright.beam_depth": "2.6 in"}, "arm-wall-and-beam", "watch"),  # 3.1 in beside 2.1 free: not wider than 3.2
    ({**ON_BOX, "upright.arm_on_wall_width": "2.6 in"}, "arm-wall-and-beam", "good"),  # a box has two walls: 3.6 less 1
    ({**ON_BOX, "upright.arm_on_wall_width": "3.1 in"}, "arm-wall-and-beam", "watch"),
    ({"upright.beam": "tube"}, "arm-wall-and-beam", "does not apply"),
    ({"weld_upper.wall_width": "2.2 in"}, "upper-lugs-wall-and-beam", "good"),
    ({"weld_upper.wall_width": "3.1 in"}, "upper-lugs-wall-and-beam", "good"),
    ({"weld_upper.wall_width": "2.6 in"}, "upper-lugs-wall-and-beam", "watch"),
    ({"weld_lower.wall_width": "4 in"}, "lower-lugs-wall-and-beam", "stop"),
    # The arm against its wall: said to be narrower than the arm, it is asked about until it is confirmed as it stands.
    ({}, "arm-within-its-wall", "good"),
    ({"upright.arm_on_wall_width": "3 in"}, "arm-within-its-wall", "watch"),
    ({"upright.arm_on_wall_width": "3 in", "upright.steering_arm_width": "2 in"}, "arm-within-its-wall", "good"),
    ({"weld_upper.wall_width": "3.1 in"}, "upper-lugs-within-their-wall", "good"),  # 3 in apart
    ({"weld_upper.wall_width": "2.2 in"}, "upper-lugs-within-their-wall", "watch"),
    # A channel is open on the plate.
    ({"upright.beam_cut": "face on the plate"}, "beam-cut-has-face", "watch"),
    ({"upright.beam_cut": "both faces"}, "beam-cut-has-face", "good"),
    ({**ON_BOX, "upright.beam_cut": "face on the plate"}, "beam-cut-has-face", "good"),
    ({"upright.beam_cut": None}, "beam-cut-has-face", "does not apply"),
    # Said to be none.
    ({"upright.arm_on_wall": "0"}, "arm-off-the-wall", "watch"),  # the weld stands on 1/2 in, as the channel is
    ({"upright.arm_on_wall": "0", "weld_steering_arm.thickness_two": "7/8 in"}, "arm-off-the-wall", "good"),  # the plate
    ({"upright.arm_on_wall": "0", "weld_steering_arm.thickness_two": None}, "arm-off-the-wall", "watch"),
    ({"upright.arm_on_wall": "0", "weld_steering_arm.thickness_two": "3/4 in", "upright.beam_wall": "3/4 in"},
     "arm-off-the-wall", "watch"),  # plate or wall: nobody can tell
    ({"upright.arm_on_wall": "0", "upright.beam": "none"}, "arm-off-the-wall", "does not apply"),
    ({}, "arm-off-the-wall", "does not apply"),
]  # fmt: skip


def found(edits: Mapping[str, str | None], check: str, confirmed: str = "") -> tuple[str, str]:
    sheet = document(RIG)
    for name, entry in edits.items():
        table, _, key = name.partition(".")
        if entry is None:
            sheet[table].pop(key, None)
        else:
            sheet[table][key] = entry
    if confirmed:
        table, _, key = confirmed.partition(".")
        sheet["confirmed"] = {confirmed: sheet[table][key]}
    one = next(one for one in judge(read_sheet(sheet), before=judged_sample(RIG)).findings if one.check == check)
    return one.verdict, one.text


@pytest.mark.parametrize(("edits", "check", "verdict"), CASES)
def test_it_is_judged(edits: Mapping[str, str | None], check: str, verdict: str) -> None:
    assert found(edits, check)[0] == verdict


@pytest.mark.parametrize(
    ("edits", "check", "field"),
    [
        ({"upright.arm_on_wall": "0"}, "arm-off-the-wall", "upright.arm_on_wall"),
        ({"upright.arm_on_wall_width": "3 in"}, "arm-within-its-wall", "upright.steering_arm_width"),
        ({"weld_upper.wall_width": "2.2 in"}, "upper-lugs-within-their-wall", "weld_upper.apart"),
    ],
)
def test_a_builder_may_confirm_what_is_odd(edits: Mapping[str, str | None], check: str, field: str) -> None:
    verdict, text = found(edits, check, confirmed=field)
    assert verdict == "good" and "confirmed as it stands" in text


def test_what_no_longer_is_judged_is_said() -> None:
    assert "Nothing then judges a wall under it" in found({"upright.arm_on_wall": "0"}, "arm-off-the-wall")[1]
