"""What a builder's yes does not make possible, by hand on round figures. Plain geometry; bands are common practice, no source."""

from math import hypot, radians
from typing import Any

import pytest

from rules.graph.results import DoesNotApply, NotJudged
from rules.judging.judge import judge
from rules.motion.joints import Angles
from rules.sheet import read_sheet
from rules.sheet.confirmed import Confirmed
from sample_sheets import document
from tests.support.base_sheet import edited
from tests.support.declared import the_check
from tests.support.judging import judged_sample

# Pads 130 mm ahead of the wheel centre; the plate reaches 90 mm ahead and behind, 150 up and down, from 40 mm inboard of the
# rotor's middle to 55, a beam 60 deep behind it.
BRACKET: dict[str, Any] = {
    "weld_caliper_bracket_load_ahead": 40.0,
    "weld_caliper_bracket_load_above": 0.0,
    "weld_caliper_bracket_load_inboard": -45.0,
    "caliper_stands": "ahead",
    "clock": None,
    "brake_effective_radius": 130.0,
    "rotor_plane_offset": -10.0,
    "mount_face_offset": -50.0,
    "plate_thickness": 15.0,
    "plate_width": 180.0,
    "plate_height": 300.0,
    "spindle_from_front": 90.0,
    "spindle_from_top": 150.0,
    "beam": "box",
    "beam_width": 80.0,
    "beam_depth": 60.0,
}


@pytest.mark.parametrize(
    ("changed", "verdict"),
    [
        ({}, "good"),
        ({"weld_caliper_bracket_load_ahead": 20.0}, "good"),  # weld 110 ahead, 20 off the plate's edge
        ({"weld_caliper_bracket_load_ahead": 19.9}, "stop"),
        ({"weld_caliper_bracket_load_ahead": -40.0}, "stop"),  # 170 ahead
        ({"weld_caliper_bracket_load_ahead": -40.0, "caliper_stands": "behind"}, "good"),
        ({"caliper_stands": "behind"}, "stop"),  # 170 behind
        ({"weld_caliper_bracket_load_inboard": -20.0}, "good"),  # 20 outboard of the plate's front
        ({"weld_caliper_bracket_load_inboard": -19.9}, "stop"),
        ({"weld_caliper_bracket_load_inboard": 45.0}, "stop"),
        ({"weld_caliper_bracket_load_inboard": -135.0}, "good"),  # 95 inboard of the front; plate and beam are 75 deep
        ({"weld_caliper_bracket_load_inboard": -135.1}, "stop"),
        ({"weld_caliper_bracket_load_inboard": -90.0, "beam": "none"}, "stop"),  # 50 inboard of the front of a bare plate
        ({"weld_caliper_bracket_load_above": 170.0}, "good"),  # weld 170 below the middle, 20 off the plate's end
        ({"weld_caliper_bracket_load_above": -170.1}, "stop"),
        ({"weld_caliper_bracket_load_above": 60.0, "clock": radians(120)}, "good"),  # pads 65 below, weld 125
        ({"weld_caliper_bracket_load_above": 106.0, "clock": radians(120)}, "stop"),  # 171
        ({"caliper_stands": "above", "weld_caliper_bracket_load_ahead": 0.0}, "good"),  # weld 130 up
        ({"caliper_stands": "above", "weld_caliper_bracket_load_ahead": 0.0, "plate_height": None,
          "weld_caliper_bracket_load_inboard": 45.0}, "stop"),
    ],
)  # fmt: skip
def test_a_brackets_weld_stands_on_the_upright(changed: dict[str, Any], verdict: str) -> None:
    assert the_check("caliper-weld-on-upright")(**BRACKET | changed).verdict == verdict


AHEAD, ABOVE, INBOARD = (f"weld_caliper_bracket_load_{way}" for way in ("ahead", "above", "inboard"))
ONLY_AHEAD = {ABOVE: None, INBOARD: None}
ONLY_ABOVE = {AHEAD: None, INBOARD: None}
ONLY_INBOARD = {AHEAD: None, ABOVE: None}


@pytest.mark.parametrize(
    ("changed", "there", "weld", "low", "high"),
    [
        # pads 130 from the wheel centre; the plate from 90 ahead to 90 behind
        (ONLY_AHEAD | {AHEAD: 50.0}, "{weld} ahead of the wheel centre", 80.0, 90.0, 90.0),
        (ONLY_AHEAD | {AHEAD: 0.0}, "{weld} ahead of the wheel centre", 130.0, 90.0, 90.0),
        (ONLY_AHEAD | {AHEAD: 0.0, "caliper_stands": "behind"}, "{weld} behind the wheel centre", 130.0, 90.0, 90.0),
        (ONLY_AHEAD | {AHEAD: 60.0, "caliper_stands": "above"}, "{weld} behind the wheel centre", 60.0, 90.0, 90.0),
        # a beam wider than the plate, or than what is left of it in front
        (ONLY_AHEAD | {AHEAD: 50.0, "spindle_from_front": 30.0}, "{weld} ahead of the wheel centre", 80.0, 150.0, 40.0),
        (ONLY_AHEAD | {AHEAD: 50.0, "plate_width": 100.0}, "{weld} ahead of the wheel centre", 80.0, 40.0, 90.0),
        (ONLY_AHEAD | {AHEAD: 50.0, "plate_width": 100.0, "beam": "none"}, "{weld} ahead of the wheel centre", 80.0, 10.0, 90.0),
        (ONLY_AHEAD | {AHEAD: 50.0, "spindle_from_front": 0.0, "beam": None}, "{weld} ahead of the wheel centre",
         80.0, 180.0, 0.0),
        # up and down: the plate from 150 above to 150 below
        (ONLY_ABOVE | {ABOVE: 0.0}, "{weld} above the wheel centre", 0.0, 150.0, 150.0),
        (ONLY_ABOVE | {ABOVE: 30.0}, "{weld} below the wheel centre", 30.0, 150.0, 150.0),
        (ONLY_ABOVE | {ABOVE: 30.0, "caliper_stands": "above"}, "{weld} above the wheel centre", 100.0, 150.0, 150.0),
        (ONLY_ABOVE | {ABOVE: 0.0, "caliper_stands": "below"}, "{weld} below the wheel centre", 130.0, 150.0, 150.0),
        (ONLY_ABOVE | {ABOVE: 0.0, "clock": radians(60)}, "{weld} above the wheel centre", 65.0, 150.0, 150.0),
        (ONLY_ABOVE | {ABOVE: 0.0, "clock": radians(60), "caliper_stands": "above"}, "{weld} above the wheel centre",
         130.0, 150.0, 150.0),
        (ONLY_ABOVE | {ABOVE: 0.0, "spindle_from_top": 100.0}, "{weld} above the wheel centre", 0.0, 200.0, 100.0),
        # in and out: the rotor 40 outboard of the plate's front; plate and beam 75 deep
        (ONLY_INBOARD | {INBOARD: -45.0}, "{weld} inboard of the plate's front", 5.0, 0.0, 75.0),
        (ONLY_INBOARD | {INBOARD: 0.0}, "{weld} outboard of the plate's front", 40.0, 0.0, 75.0),
        (ONLY_INBOARD | {INBOARD: -45.0, "beam": "none"}, "{weld} inboard of the plate's front", 5.0, 0.0, 15.0),
        (ONLY_INBOARD | {INBOARD: -45.0, "rotor_plane_offset": 0.0}, "{weld} outboard of the plate's front", 5.0, 0.0, 75.0),
        (ONLY_INBOARD | {INBOARD: 5.0, "mount_face_offset": 0.0}, "{weld} inboard of the plate's front", 5.0, 0.0, 75.0),
    ],
)  # fmt: skip
def test_where_a_brackets_weld_stands_in_figures(
    changed: dict[str, Any], there: str, weld: float, low: float, high: float
) -> None:
    found = the_check("caliper-weld-on-upright")(**BRACKET | changed)
    assert f"weld stands {there}" in found.text
    assert {name: number for name, (number, *_) in found.figures.items()} == {
        name: pytest.approx(abs(number)) for name, number in (("weld", weld), ("low", low), ("high", high))
    }


def test_the_way_in_which_a_brackets_weld_is_farthest_off_is_told() -> None:
    """110 ahead of 90, 200 below of 150, 140 inboard of 75: 20, 50 and 65 off. Without the last the second is told."""
    far = {AHEAD: 20.0, ABOVE: 200.0, INBOARD: -180.0}
    check = the_check("caliper-weld-on-upright")
    assert "inboard of the plate's front" in check(**BRACKET | far).text
    assert "below the wheel centre" in check(**BRACKET | far | {INBOARD: -45.0}).text
    assert "ahead of the wheel centre" in check(**BRACKET | far | {INBOARD: -45.0, ABOVE: 0.0}).text
    # good as far as it is known, with a lever that nothing places: not judged
    with pytest.raises(NotJudged) as why:
        check(**BRACKET | {"plate_height": None})
    assert why.value.fields == ("plate.height",)


def test_a_weld_of_which_too_little_is_entered_is_not_placed() -> None:
    levers = dict.fromkeys(f"weld_caliper_bracket_load_{way}" for way in ("ahead", "above", "inboard"))
    with pytest.raises(DoesNotApply):
        the_check("caliper-weld-on-upright")(**BRACKET | levers)
    for nothing, left in (
        ({"caliper_stands": None}, "weld_caliper_bracket.caliper_stands"),
        ({"plate_width": None}, "plate.width"),
    ):
        with pytest.raises(NotJudged) as why:
            the_check("caliper-weld-on-upright")(**BRACKET | nothing)
        assert why.value.fields == (left,)


@pytest.mark.parametrize(
    ("pad", "room", "verdict"),
    [
        (None, 60.0, "good"), (None, 60.1, "stop"),  # from the mounting face to the outer lip it is 200 - 140 = 60
        (12.0, 48.0, "good"), (12.0, 48.1, "watch"), (12.0, 54.0, "watch"), (12.0, 54.1, "stop"), (12.0, -140.1, "stop"),
    ],
)  # fmt: skip
def test_spokes_stay_within_the_outer_lip(pad: float | None, room: float, verdict: str) -> None:
    assert the_check("spoke-room-inside-wheel")(room, 200.0, 140.0, pad).verdict == verdict


@pytest.mark.parametrize(
    ("tube", "reach", "confirmed", "verdict"),
    [
        (29.0, 28.0, (), "good"),  # the lugs stand 25 + 2 x 5 = 35 apart, 0.85 of that is 29.75
        (34.0, 28.0, (), "watch"),
        (34.0, 28.0, ("arms.upper_tube",), "good"),
        (35.0, 28.0, (), "watch"),
        (36.0, 28.0, ("arms.upper_tube",), "stop"),
        (36.0, 40.0, ("arms.upper_tube",), "good"),  # an arm end that reaches 40 begins outside lugs that end at 40
        (36.0, None, ("arms.upper_tube",), "good"),
    ],
)
def test_a_tube_thicker_than_its_lugs_stand_apart(
    tube: float, reach: float | None, confirmed: tuple[str, ...], verdict: str
) -> None:
    check = the_check("upper-tube-between-lugs")
    asked = {"upper_ball_width": 25.0, "upper_gap": 5.0, "upper_edge_distance": 40.0, "confirmed": Confirmed(confirmed)}
    asked = {name.replace("upper", "which"): answer for name, answer in asked.items()}
    assert check(which_tube=tube, which_radius=reach, **asked).verdict == verdict


@pytest.mark.parametrize(
    ("gap", "reach", "edge", "verdict"),
    [
        # Tilted 30 deg: a rim of 24 comes 12 along the bolt, a housing 9 wide of a ball 20 wide another 4.5 x 0.866 = 3.897.
        (7.9, 24.0, 40.0, "good"), (7.8, 24.0, 40.0, "watch"), (5.9, 24.0, 40.0, "watch"), (5.8, 24.0, 40.0, "stop"),
        (7.9, 40.0, 24.0, "good"), (5.8, 40.0, 24.0, "stop"),  # lugs that end at 24 meet what reaches farther there
    ],
)  # fmt: skip
def test_a_housing_tilts_between_its_lugs(gap: float, reach: float, edge: float, verdict: str) -> None:
    angles = Angles({(-50.0, 0.0): radians(30.0), (0.0, 0.0): 0.0})
    asked = {"which_radius": reach, "which_ball_width": 20.0, "which_gap": gap, "which_edge_distance": edge}
    assert the_check("lower-joint-between-lugs")(angles.worst, angles, **asked).verdict == verdict


def test_a_joint_without_lugs_or_of_which_too_little_is_entered() -> None:
    angles = Angles({(0.0, 0.0): 0.3})
    asked = {"which_radius": 20.0, "which_gap": 3.0, "which_edge_distance": 20.0}
    check = the_check("lower-joint-between-lugs")
    with pytest.raises(DoesNotApply):
        check(angles.worst, angles, which_ball_width=0.0, **asked)
    with pytest.raises(NotJudged) as why:
        check(angles.worst, angles, which_ball_width=None, **asked)
    assert why.value.fields == ("bolts.lower_ball_width",)


@pytest.mark.parametrize(
    ("centres", "rows", "element", "verdict"),
    [
        # A body 100 mm through: pitch diameter 85, times tan 30 deg = 49; tan 40 deg = 71; tan 45 deg = 85.
        (100.0, 50.0, "roller", "good"), (100.0, 49.9, "roller", "watch"), (100.0, 40.0, "roller", "watch"),
        (100.0, 39.9, "roller", "stop"), (10.0, 70.1, "roller", "stop"),
        (100.0, 28.0, "ball", "good"), (100.0, 27.9, None, "watch"), (100.0, 13.0, None, "watch"), (100.0, 12.9, "ball", "stop"),
    ],
)  # fmt: skip
def test_pressure_centres_are_no_further_from_the_rows_than_an_angle_can_carry_them(
    centres: float, rows: float, element: Any, verdict: str
) -> None:
    assert the_check("pressure-centres-and-hub")(centres, rows, 100.0, element).verdict == verdict


@pytest.mark.parametrize(
    ("access", "into", "verdict"),
    [
        ("welded nuts", "nut", "good"), ("welded nuts", "steel", "stop"), ("welded nuts", "aluminium", "stop"),
        ("studs", "nut", "good"), ("studs", "iron", "watch"), ("access holes", "steel", "good"),
    ],
)  # fmt: skip
def test_hub_bolts_have_one_thread(access: Any, into: Any, verdict: str) -> None:
    assert the_check("hub-bolts-in-one-thread")(access, into).verdict == verdict


def test_hub_bolts_of_which_one_is_not_said() -> None:
    with pytest.raises(DoesNotApply):
        the_check("hub-bolts-in-one-thread")(None, "nut")
    with pytest.raises(NotJudged):
        the_check("hub-bolts-in-one-thread")("studs", None)


# The plate reaches 90 mm ahead and behind and is 15 thick, the beam 40 ahead and behind and from 15 to 75 inboard. The pivot is
# 10 behind the wheel centre and 100 inboard of the plate's front; its weld is on the plate's back, level with the wheel centre:
# two runs of 100 fore and aft, one 60 above the other.
LUGS: dict[str, Any] = {
    "weld_which_form": "fillet on both sides",
    "weld_which_runs_lie": "fore and aft",
    "weld_which_apart_lies": "up and down",
    "weld_which_run": 100.0,
    "weld_which_apart": 60.0,
    "weld_which_load_ahead": -10.0,
    "weld_which_load_inboard": 85.0,
    "which_pivot_ahead": -10.0,
    "which_pivot_from_mount_face": 100.0,
    "plate_thickness": 15.0,
    "plate_width": 180.0,
    "spindle_from_front": 90.0,
    "beam": "box",
    "beam_width": 80.0,
    "beam_depth": 60.0,
}
IN_AND_OUT = {"weld_which_runs_lie": "in and out"}


@pytest.mark.parametrize(
    ("changed", "verdict"),
    [
        ({}, "good"),
        ({"weld_which_run": 217.9}, "good"),  # 108.95 ahead and behind, the plate 90: the most there may be off it is 19
        ({"weld_which_run": 218.1}, "stop"),
        ({"weld_which_load_ahead": 48.9}, "good"),  # the weld's middle 58.9 behind, its run to 108.9
        ({"weld_which_load_ahead": 49.1}, "stop"),
        (IN_AND_OUT, "stop"),  # from 15 - 50 = 35 in front of the plate
        (IN_AND_OUT | {"weld_which_run": 53.9}, "good"),  # 11.95 in front: no more than 12 there
        (IN_AND_OUT | {"weld_which_run": 54.1}, "stop"),
        ({"weld_which_apart_lies": "in and out"}, "stop"),  # 15 in front
        ({"weld_which_apart_lies": "in and out", "weld_which_form": "fillet on one side"}, "good"),  # one run alone
        ({"weld_which_load_inboard": 66.1, "beam": "none"}, "good"),  # 33.9 inboard of the front: on a doubler 18.9 thick
        ({"weld_which_load_inboard": 65.9, "beam": "none"}, "stop"),
        # On the beam's side, 40 behind and 45 inboard: a run of 40 from 25 to 65, and one of 98 up to 94, 19 beyond the beam.
        (IN_AND_OUT | {"weld_which_run": 40.0, "weld_which_load_ahead": 30.0, "weld_which_load_inboard": 55.0}, "good"),
        (IN_AND_OUT | {"weld_which_run": 97.9, "weld_which_load_ahead": 30.0, "weld_which_load_inboard": 55.0}, "good"),
        (IN_AND_OUT | {"weld_which_run": 98.1, "weld_which_load_ahead": 30.0, "weld_which_load_inboard": 55.0}, "stop"),
        ({"weld_which_run": 40.0, "weld_which_load_ahead": 30.0, "weld_which_load_inboard": 55.0}, "stop"),  # to 60, beam 40
        ({"weld_which_run": 40.0, "weld_which_load_ahead": 30.0, "weld_which_load_inboard": 55.0, "beam": "none",
          "beam_width": None, "beam_depth": None}, "stop"),
        ({"beam": "tube", "beam_depth": None, "weld_which_load_inboard": 5.0, "weld_which_run": 60.0}, "good"),  # 80 deep
    ],
)  # fmt: skip
def test_a_welds_runs_lie_on_the_upright(changed: dict[str, Any], verdict: str) -> None:
    assert the_check("upper-weld-on-upright")(**LUGS | changed).verdict == verdict


@pytest.mark.parametrize(
    ("changed", "where", "off", "x", "y"),
    [
        # The weld's middle at nought and 15 inboard, a run of 240: to 120 ahead, the plate 90.
        ({"weld_which_run": 240.0}, "{x} ahead of the wheel centre and {y} inboard of", 30.0, 120.0, 15.0),
        ({"weld_which_run": 240.0, "weld_which_load_ahead": 10.0}, "{x} behind the wheel centre and {y} inboard of",
         50.0, 140.0, 15.0),
        (IN_AND_OUT, "{y} outboard of", 35.0, 0.0, 35.0),
        ({"weld_which_load_inboard": 0.0, "beam": "none"}, "{y} inboard of", 85.0, 50.0, 100.0),
        ({"weld_which_load_ahead": 90.0, "weld_which_load_inboard": 55.0}, "{x} behind the wheel centre and {y} inboard of",
         hypot(60.0, 30.0), 150.0, 45.0),
    ],
)  # fmt: skip
def test_how_far_a_welds_runs_reach_off_the_upright_in_figures(
    changed: dict[str, Any], where: str, off: float, x: float, y: float
) -> None:
    found = the_check("upper-weld-on-upright")(**LUGS | changed)
    assert found.verdict == "stop" and where in found.text
    figures = {name: number for name, (number, *_) in found.figures.items()}
    assert figures == {"off": pytest.approx(off), "x": pytest.approx(x), "y": pytest.approx(y)}


def test_a_weld_that_is_not_all_entered_is_not_placed_and_a_ring_has_no_runs() -> None:
    check = the_check("lower-weld-on-upright")
    for nothing, left in (("weld_which_run", "weld_lower.run"), ("beam", "upright.beam"), ("plate_width", "plate.width"),
                          ("which_pivot_ahead", "lower_pivot_ahead")):  # fmt: skip
        with pytest.raises(NotJudged) as why:
            check(**LUGS | {nothing: None})
        assert left in why.value.fields
    for changed in (
        {"weld_which_form": "fillet round a tube or cup"},
        dict.fromkeys(key for key in LUGS if key.startswith("weld")),
    ):
        with pytest.raises(DoesNotApply):
            check(**LUGS | changed)


def test_the_arms_weld_is_placed_from_the_tie_rod_end() -> None:
    """End 140 behind and 95 inboard of the plate's front, its weld on the beam's side, 40 behind and 45 inboard."""
    arm = {
        key.replace("which", "steering_arm"): entry
        for key, entry in LUGS.items()
        if key.startswith(("weld", "plate", "sp", "beam"))
    }
    arm |= {
        "weld_steering_arm_load_ahead": -100.0, "weld_steering_arm_load_inboard": 50.0, "tie_rod_end_ahead": -140.0,
        "tie_rod_end_offset": -145.0, "mount_face_offset": -50.0, "weld_steering_arm_run": 50.0,
    }  # fmt: skip
    check = the_check("arm-weld-on-upright")
    assert check(**arm | {"weld_steering_arm_runs_lie": "in and out"}).verdict == "good"
    assert check(**arm).verdict == "stop"  # to 65 behind: 25 off the beam, and 30 off the plate
    assert check(**arm | {"weld_steering_arm_run": 37.9}).verdict == "good"  # to 58.95, 18.95 off


@pytest.mark.parametrize(
    ("weld", "key", "way"),
    [
        *((f"weld_{which}", key, "in and out") for which in ("upper", "lower") for key in ("runs_lie", "apart_lies")),
        *(("weld_steering_arm", key, "fore and aft") for key in ("runs_lie", "apart_lies")),
    ],
)
def test_a_way_that_is_confirmed_is_told_all_the_same(weld: str, key: str, way: str) -> None:
    """Scree Ox, whose lugs stand on the plate and whose arm stands on the channel's side."""
    sheet = edited(document("scree_ox_strength"), {f"{weld}.{key}": way})
    sheet["confirmed"] |= {f"{weld}.{one}": sheet[weld][one] for one in ("runs_lie", "apart_lies")}
    judged = judge(read_sheet(sheet), before=judged_sample("scree_ox_strength"), light=True, advice=False)
    name = "arm" if weld == "weld_steering_arm" else weld.removeprefix("weld_")
    assert [one.verdict for one in judged.findings if one.check == f"{name}-weld-on-upright"] == ["stop"]
