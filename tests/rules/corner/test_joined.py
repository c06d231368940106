"""Pieces that are joined touch. The sample with every step; distances by hand from its own entries, mm and inches as said."""

import re

import pytest

from rules.corner.fixed import JOINED
from rules.corner.joined import JOINTS, distance, standing
from rules.corner.part import Foot, Part
from rules.drawn.corner_parts import COLOURS
from rules.judging.finding import Finding
from rules.judging.judge import Judged, judge
from rules.measure.quantity import parse
from rules.sheet import read_sheet
from rules.solids.shapes import Cylinder
from sample_sheets import document, samples
from tests.support.base_sheet import edited

SAMPLE = "scree_ox_strength"


def changed(changes: dict[str, object]) -> Judged:
    sheet = read_sheet(edited(document(SAMPLE), changes))
    assert not sheet.faults and not sheet.unknown
    return judge(sheet)


def told(judged: Judged) -> list[Finding]:
    return [found for found in judged.findings if found.check == "joined-parts-touch"]


def off_by(found: Finding) -> float:
    """The distance that is told, mm."""
    match = re.search(r"(?:stands|lies) (.+? in) ", found.text)
    assert match
    return parse(match[1], "length", "inch")


def test_every_piece_of_a_joint_is_a_part_of_the_corner() -> None:
    names = {name for joint in JOINTS for name in (joint.piece, *joint.stands_on)}
    assert names <= COLOURS.keys()


def test_what_is_joined_is_no_overlap_of_fixed_parts() -> None:
    spoken_for = {frozenset((one, other)) for touch in JOINED for one in touch.ones for other in touch.others}
    lugs_in_beam = {frozenset((lug, "beam")) for lug in ("upper lugs", "lower lugs")}  # a notch, which is told
    assert {frozenset((joint.piece, on)) for joint in JOINTS for on in joint.stands_on} - lugs_in_beam <= spoken_for


@pytest.mark.parametrize("name", [name for name in samples() if not name.startswith("wrong")])
def test_the_pieces_of_a_sound_sample_touch(name: str) -> None:
    verdicts = {found.verdict for found in judge(read_sheet(document(name)), advice=False).findings
                if found.check == "joined-parts-touch"}  # fmt: skip
    assert verdicts <= {"good", "not judged", "waiting"}


def test_all_seven_joints_of_the_whole_sample_are_judged() -> None:
    (found,) = told(changed({}))
    assert found.verdict == "good" and "All 7" in found.text


# The tie-rod end is 6.2 in behind the spindle, the beam 3.2 in wide: its side is 1.6 in behind, 4.6 in ahead of the end.
@pytest.mark.parametrize(
    ("ahead", "verdict", "off", "moved_by"),
    [
        ("-4.6 in", "good", 0.0, ""),
        ("-4.53 in", "good", 0.0, ""),  # 0.07 in = 1.8 mm
        ("-4.45 in", "watch", 3.81, "load ahead of the weld"),  # 0.15 in
        ("-4.3 in", "stop", 7.62, "load ahead of the weld"),  # 0.3 in
        # 0.7 in behind the plate's edge, 5.9 - 4.125 = 1.775 in inboard of its back: 1.908 in, and the beam is farther
        ("-2 in", "stop", 48.46, "inboard of hub face"),
        ("-4.9 in", "good", 0.0, ""),  # 0.3 in in the beam: 7.6 mm
        # 0.6 in in the beam's side; along an arm of 5.2, 2.5 and 0.3 in: 0.6 x 5.778 / 5.2 = 0.667 in
        ("-5.2 in", "watch", 16.93, ""),
    ],
)
def test_a_steering_arm_whose_root_is_in_the_air_or_in_the_beam(
    ahead: str, verdict: str, off: float, moved_by: str
) -> None:
    first = told(changed({"weld_steering_arm.load_ahead": ahead}))[0]
    assert first.verdict == verdict
    if verdict != "good":
        assert "steering arm" in first.title and moved_by in first.change
        assert off_by(first) == pytest.approx(off, abs=0.15)


# From the spindle to the bolts' line 6.4 - 1.5 = 4.9 in, to the plate's front edge 3.5 in: 1.4 in between, the free length.
@pytest.mark.parametrize(
    ("free", "verdict", "off"),
    [("1.4 in", "good", 0.0), ("1.3 in", "watch", 2.54), ("1 in", "stop", 10.16), ("2.6 in", "stop", 30.48)],
)
def test_a_caliper_bracket_that_stands_off_the_plate(free: str, verdict: str, off: float) -> None:
    first = told(changed({"upright.bracket_arm_length": free}))[0]
    assert first.verdict == verdict
    assert verdict == "good" or off_by(first) == pytest.approx(off, abs=0.15)


def test_a_narrower_plate_leaves_the_bracket_in_the_air() -> None:
    stops = [found for found in told(changed({"plate.width": "5.6 in", "plate.spindle_from_front": "2.8 in"}))
             if found.verdict == "stop"]  # fmt: skip
    assert any("caliper bracket" in found.title and "0.7 in" in found.text for found in stops)  # 3.5 - 2.8 = 0.7 in


def test_a_bracket_that_does_not_reach_its_caliper() -> None:
    # The caliper reaches 2.3 in inboard of the rotor's middle; the bracket's face is 3.5 - 0.625 / 2 = 3.19 in inboard of it.
    first = told(changed({"upright.bracket_arm_offset": "3.5 in"}))[0]
    assert first.verdict == "stop" and "caliper" in first.title


@pytest.mark.parametrize("left_out", ["upright.bracket_arm_length", "upright.steering_arm_form", "plate.width"])
def test_a_piece_that_is_begun_and_not_whole_is_waited_for(left_out: str) -> None:
    (found,) = told(changed({left_out: None}))
    assert found.verdict == "waiting" and left_out in found.waits_for


def test_without_the_welds_levers_the_root_stands_where_it_usually_does_as_an_estimate() -> None:
    levers = {f"weld_steering_arm.load_{way}": None for way in ("ahead", "above", "inboard")}
    (found,) = told(changed(dict(levers)))
    assert found.verdict == "watch" and set(found.estimated_from) >= set(levers)


def test_a_foot_inside_is_told_by_its_depth_and_a_piece_without_one_only_touches() -> None:
    post = Part("plate", "upright", (Cylinder((0.0, 0.0, 0.0), (0.0, 0.0, 100.0), 10.0),))
    bar = (Cylinder((4.0, 0.0, 50.0), (90.0, 0.0, 50.0), 5.0),)
    assert distance(
        Part("beam", "upright", bar, foot=Foot(((4.0, 0.0, 50.0),), (1.0, 0.0, 0.0))), post
    ) == pytest.approx(-6.0, abs=0.2)
    assert distance(Part("beam", "upright", bar), post) == 0.0
    (stands,) = standing({"a": post, "b": Part("beam", "upright", bar)})
    assert (stands.piece, stands.on) == ("b", "a")


def test_what_may_yet_stand_on_a_piece_that_is_not_whole_is_not_in_the_air() -> None:
    """Without the beam the arm is off the plate; but a beam is begun, and waits for where it ends."""
    (found,) = told(changed({"upright.beam_to_pivots": None}))
    assert found.verdict == "waiting" and found.waits_for == ("upright.beam_to_pivots",)


def test_a_steering_arm_shorter_than_the_way_to_its_weld_is_a_stop() -> None:
    """From the weld's middle to the tie-rod end: root of 4.6, 0.3 and 3.2 in squared is 5.61 in; 4.5 is 0.80 of it."""
    short = changed({"upright.steering_arm_length": "4.5 in"})
    assert next(one for one in short.findings if one.check == "arm-length-and-its-weld").verdict == "stop"
