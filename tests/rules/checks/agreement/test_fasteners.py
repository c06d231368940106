"""Fasteners, joints and ends that a wheel cannot hang on, as edits of sound cars. Common practice, no source."""

import copy
from typing import Any

import pytest

from rules.judging.judge import judge
from rules.sheet import read_sheet
from sample_sheets import document
from tests.support.judging import judged_document, judged_sample

WREN, MOVING, SCREE, NEWT = "dune_wren_finished", "dune_wren_moving", "scree_ox_strength", "pond_newt_finished"
CASES: list[tuple[str, dict[str, object], str, str]] = [
    # Five M6 studs: 20 mm2 each, and thinner than any car's.
    (WREN, {"hub.stud_thread": "6 x 1 mm", "hub.stud_length": "1.05 in"}, "wheel-studs-size", "stop"),
    (WREN, {"hub.mount_bolt_thread": "8 x 1.25 mm"}, "hub-bolts-size", "stop"),
    # Four 1/2-20 bolts have 4 x 103 mm2: 0.41 for each kg of 1,000, 0.55 for each of 751.
    (WREN, {"job.corner_weight": "1000 kg"}, "hub-bolts-size", "watch"),
    (WREN, {"job.corner_weight": "740 kg"}, "hub-bolts-size", "good"),
    (WREN, {"job.corner_weight": "1100 kg"}, "hub-bolts-size", "stop"),
    (WREN, {"hub.mount_bolt_grade": "grade 2"}, "hub-bolt-grade", "stop"),
    (WREN, {"hub.mount_bolt_grade": "whatever was there"}, "hub-bolt-grade", "stop"),
    (WREN, {"hub.mount_bolt_grade": None}, "hub-bolt-grade", "watch"),
    (WREN, {"hub.mount_bolt_grade": "grade 5"}, "hub-bolt-grade", "good"),
    # ASME B1.1: 1/2-13 and 9/16-12 are UNC, 1/2-20 and 9/16-18 UNF.
    (WREN, {"hub.stud_thread": "1/2-13"}, "wheel-stud-thread-sold", "watch"),
    (WREN, {"hub.stud_thread": "1/2-20"}, "wheel-stud-thread-sold", "good"),
    (WREN, {"hub.stud_thread": "12 x 1.75 mm"}, "wheel-stud-thread-sold", "watch"),  # nuts are 1.5 or 1.25
    (SCREE, {"hub.stud_thread": "9/16-12"}, "wheel-stud-thread-sold", "watch"),
    (SCREE, {}, "wheel-stud-thread-sold", "good"),
    (SCREE, {"hub.stud_thread": None}, "wheel-stud-thread-sold", "does not apply"),
    # 4 in on a pilot far smaller, flat nuts on flat seats; with a cone the nuts centre it.
    (WREN, {"wheel.centre_bore": "4 in", "wheel.nut_seat": "flat", "hub.nut_seat": "flat"}, "wheel-centred", "stop"),
    (WREN, {"wheel.nut_seat": "flat", "hub.nut_seat": "flat"}, "wheel-centred", "good"),
    (WREN, {"wheel.centre_bore": "4 in"}, "wheel-centred", "good"),
    # 100 mm circle, 12 mm studs: 114 leaves 1 mm outside, 118 leaves 3 (0.25 of 12), 122 leaves 5 (0.42).
    (NEWT, {"hub.flange_diameter": "114 mm"}, "studs-inside-flange", "stop"),
    (NEWT, {"hub.flange_diameter": "118 mm"}, "studs-inside-flange", "watch"),
    (NEWT, {"hub.flange_diameter": "122 mm"}, "studs-inside-flange", "good"),
    (NEWT, {"hub.flange_diameter": None}, "studs-inside-flange", "does not apply"),
    (SCREE, {"bolts.lower_ball_width": "0", "pivots.lower_kind": "spherical bearing"}, "lower-joint-has-ball", "stop"),
    (SCREE, {"bolts.upper_ball_width": "1 in", "pivots.upper_kind": "ball joint"}, "upper-joint-has-ball", "stop"),
    (SCREE, {"bolts.upper_side": "below"}, "upper-side-and-shear", "watch"),
    (SCREE, {"bolts.lower_side": "below", "pivots.lower_shear": "single"}, "lower-side-and-shear", "good"),
    (SCREE, {}, "lower-side-and-shear", "does not apply"),
    # A 3/4 in bolt: 0.6 in is 0.8 of it, 0.5 in 0.67, 0.75 in 1.
    (SCREE, {"bolts.upper_thread": "3/4-16", "pivots.upper_radius": "0.6 in"}, "upper-housing-round-bolt", "watch"),
    (SCREE, {"bolts.upper_thread": "3/4-16", "pivots.upper_radius": "0.5 in"}, "upper-housing-round-bolt", "stop"),
    (SCREE, {"bolts.upper_thread": "3/4-16", "pivots.upper_radius": "0.75 in"}, "upper-housing-round-bolt", "good"),
    # Three of 1 3/4 in are 5 1/4 in, on a pad of 5 in; on one of 5 1/2 in they are 0.95 of it.
    (SCREE, {"caliper.pistons_per_side": 3, "brakes.pad_length": "5 in"}, "pistons-along-pad", "stop"),
    (SCREE, {"caliper.pistons_per_side": 3, "brakes.pad_length": "5.4 in"}, "pistons-along-pad", "watch"),
    (SCREE, {"caliper.pistons_per_side": 2}, "pistons-along-pad", "good"),
    (WREN, {"plate.metal": "other", "plate.condition": "cast aluminium"}, "plate-of-known-metal", "stop"),
    (WREN, {"plate.metal": "other", "plate.condition": "as rolled"}, "plate-of-known-metal", "watch"),
    (SCREE, {"plate.weld_process": "tig"}, "one-process", "watch"),
    (SCREE, {"weld_upper.runs_lie": "up and down", "weld_upper.apart_lies": "fore and aft"}, "upper-weld-and-bolt", "watch"),
    # Its arm goes back from the channel's side: the weld lies up and down and in and out. An arm elsewhere is not asked about.
    (SCREE, {}, "arm-weld-and-wall", "good"),
    (SCREE, {"weld_steering_arm.apart_lies": "fore and aft"}, "arm-weld-and-wall", "watch"),
    (SCREE, {"weld_steering_arm.runs_lie": "fore and aft"}, "arm-weld-and-wall", "watch"),
    (SCREE, {"upright.arm_on_wall": "0", "weld_steering_arm.runs_lie": "fore and aft"}, "arm-weld-and-wall", "does not apply"),
    (SCREE, {"weld_steering_arm.runs_lie": None}, "arm-weld-and-wall", "not judged"),
    # Lugs that reach 3.27 in inboard: their runs lie across that way. The bracket's pads are 1.8 in ahead and 1.7 outboard.
    (SCREE, {}, "upper-weld-and-lever", "good"),
    (SCREE, {}, "steering-arm-weld-and-lever", "good"),
    (SCREE, {"weld_upper.runs_lie": "in and out"}, "upper-weld-and-lever", "watch"),
    (SCREE, {"weld_lower.apart_lies": "in and out"}, "lower-weld-and-lever", "watch"),
    (SCREE, {"weld_steering_arm.runs_lie": "fore and aft"}, "steering-arm-weld-and-lever", "watch"),
    (SCREE, {"weld_caliper_bracket.runs_lie": "fore and aft"}, "caliper-bracket-weld-and-lever", "does not apply"),
    (SCREE, {"weld_caliper_bracket.runs_lie": "fore and aft", "weld_caliper_bracket.load_inboard": "-1.4 in"},
     "caliper-bracket-weld-and-lever", "watch"),  # 1.8 in is 1.29 of it
    (SCREE, {"weld_upper.runs_lie": "in and out", "weld_upper.form": "fillet round a tube or cup"}, "upper-weld-and-lever",
     "does not apply"),
    (SCREE, {"weld_upper.load_ahead": None}, "upper-weld-and-lever", "not judged"),
    (SCREE, {"plate.filler": "E7018"}, "one-process", "watch"),
    (SCREE, {"plate.filler": "E70S"}, "one-process", "watch"),
    (SCREE, {"plate.filler": "the grey reel"}, "one-process", "good"),
    # Lugs 1.1 and twice 0.45 in apart: 2 in. 1.75 in is 0.875 of it, 1.7 in 0.85.
    (SCREE, {"arms.lower_tube": "1.75 in"}, "lower-tube-between-lugs", "watch"),
    (SCREE, {"arms.lower_tube": "1.7 in"}, "lower-tube-between-lugs", "good"),
    (WREN, {"tyre.smallest": "ST205/75R15 107M", "tyre.largest": "ST205/75R15 107M"}, "tyre-for-a-car", "stop"),
    (NEWT, {"tyre.smallest": "T135/80D13 86M"}, "tyre-for-a-car", "stop"),  # a spare to get home on
    # A gauge read on the next blade: M12 is sold with 1.75, 1.5 and 1.25 mm, 1/2 in with 13 and 20 threads an inch.
    (NEWT, {"hub.stud_thread": "12 x 1 mm"}, "wheel-stud-thread-sold", "watch"),
    (NEWT, {"hub.stud_thread": "12 x 1.25 mm"}, "wheel-stud-thread-sold", "good"),
    (NEWT, {"hub.stud_thread": "12 x 1.75 mm"}, "wheel-stud-thread-sold", "watch"),  # bolts have it, wheel nuts do not
    (NEWT, {"hub.stud_thread": "1/2-13"}, "wheel-stud-thread-sold", "watch"),
    (NEWT, {"hub.stud_thread": "1/2-20"}, "wheel-stud-thread-sold", "good"),
    (NEWT, {"hub.stud_thread": "14 x 2 mm"}, "wheel-stud-thread-sold", "good"),  # some half-ton trucks
    (NEWT, {"hub.stud_thread": "13 x 1.5 mm"}, "wheel-stud-thread-sold", "watch"),
    (WREN, {"hub.mount_bolt_thread": "1/2-18"}, "hub-bolt-thread-sold", "watch"),
    (WREN, {"hub.mount_bolt_thread": "1/2-13"}, "hub-bolt-thread-sold", "good"),
    (SCREE, {"bolts.upper_thread": "18 x 1 mm"}, "upper-pivot-thread-sold", "watch"),
    (SCREE, {"bolts.upper_thread": "18 x 1.5 mm"}, "upper-pivot-thread-sold", "good"),
    (SCREE, {"bolts.lower_thread": "19 x 1.5 mm"}, "lower-pivot-thread-sold", "watch"),  # M19 is sold by nobody
    (SCREE, {"bolts.caliper_thread": "12 x 1.75 mm"}, "caliper-bolt-thread-sold", "good"),
    (SCREE, {"steering.tie_rod_thread": "11/16-18"}, "tie-rod-end-thread-sold", "good"),  # sleeves of light trucks
    (SCREE, {"steering.tie_rod_thread": "5/8-16"}, "tie-rod-end-thread-sold", "watch"),
    # A solid rotor of a car is 7 to 16 mm thick, one with vanes 16 or more; one plate of two is less than half of both.
    (NEWT, {"rotor.style": "vented"}, "rotor-like-its-style", "watch"),
    (NEWT, {"rotor.thickness": "6.5 mm"}, "rotor-like-its-style", "watch"),
    (NEWT, {"rotor.thickness": "16 mm"}, "rotor-like-its-style", "good"),
    (NEWT, {"rotor.thickness": "17 mm"}, "rotor-like-its-style", "watch"),
    (WREN, {"rotor.style": "solid"}, "rotor-like-its-style", "watch"),
    (WREN, {"rotor.thickness": "16 mm"}, "rotor-like-its-style", "good"),
    (WREN, {"rotor.thickness": "20 mm", "rotor.style": "cut to one plate", "rotor.finished_thickness": "8 mm"},
     "rotor-like-its-style", "good"),
    (WREN, {"rotor.thickness": "20 mm", "rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm"},
     "rotor-like-its-style", "watch"),
    (WREN, {"rotor.thickness": "20 mm", "rotor.style": "cut to one plate", "rotor.finished_thickness": "11 mm"},
     "rotor-like-its-style", "stop"),
    # A leg of 1/2 in is entered with each weld: a full bevel has none.
    (SCREE, {"weld_caliper_bracket.form": "full bevel"}, "caliper-bracket-bevel-and-leg", "watch"),
    (SCREE, {"weld_upper.form": "full bevel", "weld_upper.leg": None}, "upper-bevel-and-leg", "does not apply"),
    (SCREE, {}, "steering-arm-bevel-and-leg", "good"),
    # The bracket is 5/8 in thick and its runs 5/8 in apart; ears 4 in apart are two parts.
    (SCREE, {"weld_caliper_bracket.apart_lies": "fore and aft"}, "caliper-bracket-weld-across", "watch"),
    (SCREE, {}, "caliper-bracket-weld-across", "good"),
    (SCREE, {"weld_caliper_bracket.apart": "4 in", "weld_caliper_bracket.apart_lies": "up and down"},
     "caliper-bracket-weld-across", "does not apply"),
    (SCREE, {"joint_angles.tie_rod_inner_bolt": "along the rack"}, "inner-joint-suits-linkage", "watch"),
    (SCREE, {"joint_angles.tie_rod_inner_bolt": "fore and aft"}, "inner-joint-suits-linkage", "good"),
    (MOVING, {}, "inner-joint-suits-linkage", "good"),
    # The lower arm is 15 in long: legs 2 in apart are 0.13 of it, 4 in 0.27.
    (MOVING, {"arms.lower_front_ahead": "1 in", "arms.lower_rear_ahead": "-1 in"}, "lower-arm-base", "stop"),
    (MOVING, {"arms.lower_front_ahead": "2 in", "arms.lower_rear_ahead": "-2 in"}, "lower-arm-base", "watch"),
    (MOVING, {"spring.arm_end_height": "8 in"}, "shock-on-its-arm", "watch"),
    (MOVING, {"spring.arm_end_height": "6 in"}, "shock-on-its-arm", "stop"),
    # 140 kg by index 40, under 190 kg; an index below 40 is no car's.
    (NEWT, {"tyre.smallest": "175/80R13 40Q", "tyre.largest": "175/80R13 40Q"}, "tyre-load", "stop"),
    (NEWT, {"tyre.smallest": "175/80R13 20Q", "tyre.largest": "175/80R13 20Q"}, "tyre-load", "stop"),
    # 12.50 in on a 7 in wheel: 0.56 of its width.
    (WREN, {"tyre.largest": "33x12.50R15LT 108Q"}, "wheel-suits-largest-tyre", "stop"),
    # The shock leans through the other arm's front leg.
    (MOVING, {"spring.arm_end_ahead": "3 in", "spring.frame_end_ahead": "3 in"}, "room", "stop"),
]  # fmt: skip


def edited(sheet: str, edits: dict[str, object]) -> dict[str, Any]:
    made = copy.deepcopy(document(sheet))
    for name, entry in edits.items():
        table, _, key = name.partition(".")
        if entry is None:
            made[table].pop(key, None)
        else:
            made.setdefault(table, {})[key] = entry
    return made


@pytest.mark.parametrize(
    ("sheet", "edits", "check", "verdict"), CASES, ids=[f"{check}: {verdict}" for *_, check, verdict in CASES]
)
def test_it_is_judged(sheet: str, edits: dict[str, object], check: str, verdict: str) -> None:
    findings = judge(read_sheet(edited(sheet, edits)), before=judged_sample(sheet)).findings
    assert verdict in {one.verdict for one in findings if one.check == check}


@pytest.mark.parametrize(
    ("flange", "said"),
    [("113 mm", "has 0.5 mm of metal."), ("111 mm", "ends 0.5 mm inside their holes' edges.")],
)
def test_the_metal_outside_the_studs_in_words(flange: str, said: str) -> None:
    """A 100 mm circle of 12 mm studs reaches 112 mm: a flange 1 mm larger leaves half of it on either side, one smaller less."""
    findings = judge(read_sheet(edited(NEWT, {"hub.flange_diameter": flange})), before=judged_sample(NEWT)).findings
    (found,) = (one for one in findings if one.check == "studs-inside-flange")
    assert found.verdict == "stop" and said in found.text


def test_a_stand_in_for_the_shock_says_nothing_of_the_hub_bolts() -> None:
    """What is not measured of arm and shock leaves the verdict on bolts of the upright alone."""
    without = {"spring.shock_diameter": None, "arms.upper_tube": None, "arms.lower_tube": None}
    findings = judged_document(edited(MOVING, without)).findings
    unmeasured = {"spring.shock_diameter", "arms.upper_tube", "arms.lower_tube"}
    for check in ("overlap", "assembly-hub-bolts"):
        assert not unmeasured & {name for one in findings if one.check == check for name in one.estimated_from}
    assert unmeasured & {name for one in findings if one.check == "room" for name in one.estimated_from}
