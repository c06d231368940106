"""The judgements of upright, arms, bolts and pins: their limits, what they say, and whole sheets that trip each."""

from collections.abc import Callable
from typing import Any

import pytest

from rules.graph.declare import in_words
from rules.graph.results import Judgement
from rules.judging.judge import Finding, Judged, judge
from rules.judging.trade import trade
from rules.judging.weakest_part import ranked
from rules.measure.marks import Thread
from rules.shop.checklist import checklist
from rules.strength.margin import Margin
from rules.strength.weakest import CHEAP_AND_VISIBLE, tied
from rules.tables.bolt_grades import BoltStrength
from rules.values.strength.pivot_bolts import PivotBolt

JudgedWith = Callable[[dict[str, object]], Judged]

# Check: the value it judges
BY_FACTOR = {
    "upright-above-hub": "upright_above_hub_safety",
    "upright-below-hub": "upright_below_hub_safety",
    "upright-at-upper-pivot": "upright_upper_end_safety",
    "upright-at-lower-pivot": "upright_lower_end_safety",
    "plate-at-upper-beam-end": "plate_at_upper_beam_end_safety",
    "plate-at-lower-beam-end": "plate_at_lower_beam_end_safety",
    "hub-plate": "plate_safety",
    "steering-arm-strength": "steering_arm_safety",
    "caliper-bracket-strength": "caliper_bracket_safety",
    "snout-strength": "snout_safety",
    "upper-pivot-bolt": "upper_pivot_bolt_safety",
    "lower-pivot-bolt": "lower_pivot_bolt_safety",
    "upper-pivot-lug": "upper_pivot_lug_safety",
    "lower-pivot-lug": "lower_pivot_lug_safety",
    "hub-bolts": "hub_bolts_safety",
    "wheel-studs": "wheel_studs_safety",
    "wall-under-steering-arm": "wall_under_arm_safety",
    "beam-seam-weld": "seam_weld_safety",
    "upper-lug-bending": "upper_lug_bending_safety",
    "lower-lug-bending": "lower_lug_bending_safety",
    "caliper-bolts": "caliper_bolts_safety",
    "tie-rod-column": "tie_rod_column_safety",
    "arm-leg-columns": "arm_legs_safety",
    "tie-rod-end-stud": "tie_rod_stud_safety",
    "tie-rod-end-shank": "tie_rod_shank_safety",
}

# Every part of a stout corner, loads entered by the builder.
STOUT: dict[str, object] = {
    "loads.judge_strength": True, "steering.tie_rod_ahead": "-120 mm", "steering.tie_rod_above": "-60 mm",
    "steering.tie_rod_inboard": "70 mm", "loads.bump": 3, "loads.braking": 1, "loads.cornering": 1, "loads.landing": 4,
    "loads.rock": 2, "loads.steering_stop": 1,
    "brakes.effective_radius": "115 mm",
    "plate.thickness": "12 mm", "plate.width": "160 mm", "plate.height": "320 mm", "plate.spindle_from_top": "165 mm",
    "plate.spindle_from_front": "80 mm", "plate.bore": "60 mm", "plate.hole_diameter": "12.5 mm",
    "plate.bracket_thickness": "12 mm",
    "hub.mount_width": "80 mm", "hub.mount_height": "90 mm", "hub.mount_bolt_grade": "10.9",
    "upright.material": "a36 plate", "upright.certificate_yield": "300 MPa", "upright.beam": "box",
    "upright.beam_width": "120 mm", "upright.beam_depth": "60 mm", "upright.beam_wall": "5 mm",
    "upright.beam_corner_radius": "10 mm", "upright.beam_to_pivots": True, "upright.section_above": "60 mm",
    "upright.section_below": "60 mm", "upright.steering_arm_form": "flat bar", "upright.steering_arm_length": "100 mm",
    "upright.steering_arm_root_above": "-50 mm", "upright.steering_arm_width": "70 mm",
    "upright.steering_arm_height": "20 mm", "upright.bracket_arm_length": "30 mm", "upright.bracket_arm_width": "120 mm",
    "upright.bracket_arm_offset": "5 mm", "upright.snout_diameter": "60 mm", "upright.snout_yield": "500 MPa",
    "bolts.upper_thread": "16 x 2 mm", "bolts.upper_grade": "10.9", "bolts.upper_ball_width": "20 mm",
    "bolts.upper_gap": "2 mm", "bolts.upper_lug_thickness": "10 mm", "bolts.upper_edge_distance": "32 mm",
    "bolts.lower_thread": "16 x 2 mm", "bolts.lower_grade": "10.9", "bolts.lower_ball_width": "20 mm",
    "bolts.lower_gap": "2 mm", "bolts.lower_lug_thickness": "10 mm", "bolts.lower_edge_distance": "32 mm",
    "bolts.threads_in_joint": False, "bolts.hub_bolt_engagement": "20 mm", "bolts.hub_bolt_into": "steel",
    "bolts.stud_grade": "10.9", "bolts.lubrication": "oiled",
    "joint_angles.upper_bolt": "along the steering axis", "joint_angles.lower_bolt": "along the steering axis",
    "bolts.upper_lug_reach": "40 mm", "bolts.lower_lug_reach": "40 mm", "bolts.lugs_tied": True,
    "bolts.upper_radial_rating": "150 kN", "bolts.upper_axial_rating": "40 kN", "bolts.lower_radial_rating": "150 kN",
    "bolts.lower_axial_rating": "40 kN", "bolts.caliper_thread": "12 x 1.5 mm", "bolts.caliper_grade": "10.9",
    "bolts.wheel_nut_torque": "150 N m", "bolts.mount_bolt_torque": "113 N m",
    "bolts.caliper_bolt_spacing": "130 mm", "bolts.pads_beyond_caliper_bolts": "25 mm",
    "upright.arm_on_wall": "16 mm", "upright.arm_on_wall_width": "100 mm", "upright.seam_leg": "6 mm",
}  # fmt: skip
BEAM_ENDS = ("plate-at-upper-beam-end", "plate-at-lower-beam-end")
MINE = tuple(
    name
    for name, node in trade().checks.items()
    if node.note.step in ("upright", "bolts") and node.function.__module__.startswith("rules.checks.strength.")
)


def found(judged: Judged, check: str) -> Finding:
    return next(finding for finding in judged.findings if finding.check == check)


def judged_by(check: str, margin: Margin) -> Judgement:
    """What a check makes of a margin, the only value it takes."""
    node = trade().checks[check]
    (given,) = node.inputs
    assert given.origin == BY_FACTOR[check]
    judgement: Judgement = node.function(**node.fixed, **{given.parameter: margin})
    return judgement


@pytest.mark.parametrize("check", BY_FACTOR)
@pytest.mark.parametrize(
    "factor, verdict",
    [(9.0, "shown"), (2.0, "shown"), (1.5, "shown"), (1.49, "watch"), (1.0, "watch"), (0.99, "stop")],
)
def test_the_bands_of_every_factor(check: str, factor: float, verdict: str) -> None:
    judgement = judged_by(check, Margin(factor, "landing", "yield somewhere", part="it"))
    assert judgement.verdict == verdict
    assert bool(judgement.change) == (verdict != "shown")
    assert judgement.text == f"It: {factor:.2f} on yield; landing; yield somewhere."


@pytest.mark.parametrize("check", BY_FACTOR)
def test_every_factor_says_that_no_limit_is_published(check: str) -> None:
    assert "nobody has published" in trade().checks[check].note.source
    assert trade().checks[check].note.grade == "no published figure"
    assert trade().checks[check].note.best == "shown"


def test_what_is_common_to_all_parts_is_said_once(judged: JudgedWith) -> None:
    result = judged(STOUT)
    told = [finding.text for finding in result.findings if "welds crack at their edge" in finding.text]
    assert len(told) == 1 and "No published limit: trade custom is 1.5 to 2" in told[0]
    least = ranked(result)[0]
    assert told[0].startswith("Strength: least factor ") and f"{least.part}, {least.case} ({least.kind})" in told[0]
    assert found(result, "strength-least").verdict == "watch"


def test_a_stout_corner_gets_the_best_verdict_there_is_throughout_but_for_its_weakest(judged: JudgedWith) -> None:
    result = judged(STOUT)
    best = {check: trade().checks[check].note.best for check in MINE}
    order = ranked(result)
    tie = {one.value for one in order if tied(order[0].factor, one.factor)}
    weakest = {check for check, value in BY_FACTOR.items() if value in tie}
    assert weakest
    best |= dict.fromkeys(weakest, "watch") | dict.fromkeys(
        BEAM_ENDS, "does not apply"
    )  # the beam runs past both pivots
    assert {check: found(result, check).verdict for check in MINE} == best
    assert {trade().checks[check].note.best for check in BY_FACTOR} == {"shown"}


def test_a_part_is_watched_only_while_it_is_among_the_weakest_however_it_came_to_be_judged(judged: JudgedWith) -> None:
    """The weakest of a sheet is watched; once another is far weaker, judged anew from there, it is a figure again."""
    before = judged(STOUT)
    weakest = ranked(before)[0]
    check = next(check for check, value in BY_FACTOR.items() if value == weakest.value)
    assert found(before, check).verdict == "watch"
    thin = "bolts.upper_thread" if weakest.value.removesuffix("_safety") != "upper_pivot_bolt" else "bolts.lower_thread"
    changed = judged({**STOUT, thin: "8 x 1.25 mm", thin.replace("thread", "gap"): "40 mm"})
    again = judge(changed.sheet, before=before)
    assert found(again, check).verdict == "shown"
    assert judge(before.sheet, before=again).findings == before.findings


def test_on_paper_strength_is_one_line_to_settle(judged: JudgedWith) -> None:
    result = judged(STOUT)
    lines = [line.id for line in checklist(result) if line.id.startswith("settle.")]
    assert "settle.strength-least" in lines
    assert not {f"settle.{check}" for check in BY_FACTOR} & set(lines)
    giving = judged({**STOUT, "upright.steering_arm_width": "20 mm"})
    assert "settle.steering-arm-strength" in [line.id for line in checklist(giving)]


def test_the_parts_of_a_whole_corner_each_by_a_name_of_its_own(judged: JudgedWith) -> None:
    parts = [one.part for one in ranked(judged({**STOUT, "loads.tie_rod_rating": "60 kN"}))]
    assert sorted(parts) == [
        "caliper bolts", "caliper bracket", "hub bolts", "hub clamp", "lower joint", "lower lug, bent",
            "lower pivot bolt",
        "lower pivot lug", "plate", "snout", "steering arm", "tie rod", "upper joint", "upper lug, bent", "upper pivot bolt",
        "upper pivot lug", "upright above hub", "upright below hub", "upright lower end", "upright upper end",
        "wall under the steering arm", "weld of beam to plate", "wheel clamp", "wheel studs",
    ]  # fmt: skip
    assert set(parts) >= CHEAP_AND_VISIBLE


def test_untouched_nothing_of_it_is_judged_and_the_sheet_stays_good(judged: JudgedWith) -> None:
    result = judged({})
    no_snout = {"snout-strength": "does not apply"}  # most hubs have none
    assert {check: found(result, check).verdict for check in MINE} == dict.fromkeys(MINE, "not judged") | no_snout
    assert result.verdict == "good"


# What is changed on the stout corner, the check it trips, and the verdict
TRIPS: list[tuple[dict[str, object], str, str]] = [
    ({"upright.beam": "none", "plate.thickness": "6 mm"}, "upright-above-hub", "stop"),
    ({"upright.beam": "none", "plate.thickness": "6 mm"}, "upright-below-hub", "stop"),
    ({"upright.beam_to_pivots": None, "plate.thickness": "5 mm"}, "upright-at-upper-pivot", "stop"),
    ({"upright.beam_to_pivots": None, "plate.thickness": "5 mm"}, "upright-at-lower-pivot", "stop"),
    *(
        (
            {"upright.beam_to_pivots": None, f"upright.beam_{end}": "65 mm", "plate.thickness": "6 mm"},
            f"plate-at-{which}-beam-end",
            "stop",
        )
        for which, end in (("upper", "top"), ("lower", "bottom"))
    ),
    ({"upright.beam": "none", "plate.thickness": "6 mm"}, "hub-plate", "stop"),
    ({"upright.steering_arm_width": "20 mm"}, "steering-arm-strength", "stop"),
    ({"plate.bracket_thickness": "3 mm"}, "caliper-bracket-strength", "stop"),
    ({"upright.snout_diameter": "22 mm"}, "snout-strength", "stop"),
    ({"bolts.upper_thread": "8 x 1.25 mm", "bolts.upper_gap": "40 mm"}, "upper-pivot-bolt", "stop"),
    ({"bolts.lower_thread": "8 x 1.25 mm", "bolts.lower_gap": "40 mm"}, "lower-pivot-bolt", "stop"),
    ({"bolts.upper_edge_distance": "20 mm"}, "upper-pivot-lug", "stop"),  # outside the formula
    ({"bolts.lower_lug_thickness": "2 mm", "loads.landing": 6}, "lower-pivot-lug", "stop"),
    ({"hub.mount_bolt_thread": "6 x 1 mm", "hub.mount_bolt_grade": "grade 2"}, "hub-bolts", "stop"),
    ({"hub.stud_thread": "5 x 0.8 mm", "bolts.stud_grade": "grade 2"}, "wheel-studs", "stop"),
    ({"bolts.hub_bolt_engagement": "15 mm"}, "hub-bolt-threads", "stop"),
    ({"bolts.hub_bolt_into": "iron", "bolts.hub_bolt_engagement": "30 mm"}, "hub-bolt-threads", "watch"),
    ({"bolts.upper_edge_distance": "23 mm"}, "upper-lug-edge", "stop"),
    ({"bolts.lower_edge_distance": "25 mm"}, "lower-lug-edge", "watch"),
    ({"bolts.stud_grade": "grade 2"}, "bolt-grade", "stop"),
    ({"hub.mount_bolt_grade": "4.6"}, "bolt-grade", "stop"),
    ({"bolts.caliper_grade": "grade 2"}, "bolt-grade", "stop"),
    ({"bolts.caliper_grade": "grade 8"}, "caliper-bolt-grade-of-its-system", "stop"),  # 12 x 1.5 mm
    ({"bolts.threads_in_joint": None}, "threads-out-of-joint", "watch"),
    ({"bolts.threads_in_joint": True}, "threads-out-of-joint", "watch"),
    ({"bolts.lubrication": None}, "bolt-torque", "watch"),
    ({"upright.certificate_yield": None}, "metal-known", "watch"),
    ({"upright.material": "other"}, "metal-known", "watch"),
]


@pytest.mark.parametrize("changed, check, verdict", TRIPS, ids=[f"{check}-{verdict}" for _, check, verdict in TRIPS])
def test_a_whole_sheet_that_trips_a_check(
    judged: JudgedWith, changed: dict[str, object], check: str, verdict: str
) -> None:
    finding = found(judged({**STOUT, **changed}), check)
    assert finding.verdict == verdict
    assert finding.change


def test_stand_in_loads_or_metal_are_told_with_the_figure(judged: JudgedWith) -> None:
    finding = found(judged({**STOUT, "loads.bump": None}), "upright-above-hub")
    assert finding.verdict == "shown" and "loads.bump" in finding.estimated_from
    assert "rests on an estimate" in finding.text
    finding = found(judged({**STOUT, "upright.certificate_yield": None}), "hub-plate")
    assert finding.verdict in ("shown", "watch") and "upright.certificate_yield" in finding.estimated_from


def test_beside_a_weld_of_aluminium_every_source_is_named_and_the_lowest_counts(judged: JudgedWith) -> None:
    """MMPDS note 20 ksi (138 MPa); Aluminum Design Manual 15 ksi (103) and EN 1999-1-1 115 MPa, both from memory."""
    text = found(judged({**STOUT, "upright.material": "6061-t6"}), "metal-known").text
    assert "103 MPa of yield is counted on after welding" in text
    for named in (
        "138 MPa in MMPDS",
        "103 MPa in Aluminum",
        "115 MPa in EN 1999-1-1",
    ):
        assert named in text


# One entry of a part taken out again: the check waits for it
WAITS = [
    ("upright.section_above", "upright-above-hub"),
    ("upright.steering_arm_root_above", "upright-below-hub"),
    ("upright.steering_arm_length", "steering-arm-strength"),
    ("upright.bracket_arm_offset", "caliper-bracket-strength"),
    ("upright.snout_yield", "snout-strength"),
    ("plate.hole_diameter", "hub-plate"),
    ("hub.mount_width", "hub-plate"),
    ("bolts.upper_grade", "upper-pivot-bolt"),
    ("bolts.lower_edge_distance", "lower-pivot-lug"),
    ("bolts.lower_edge_distance", "lower-lug-edge"),
    ("hub.mount_width", "hub-bolts"),
    ("hub.mount_bolt_grade", "hub-bolt-threads"),
    ("bolts.hub_bolt_into", "hub-bolt-threads"),
    ("upright.material", "upright-above-hub"),
    ("steering.tie_rod_ahead", "wheel-studs"),
]


@pytest.mark.parametrize("taken_out, check", WAITS)
def test_a_part_begun_waits_for_the_rest(judged: JudgedWith, taken_out: str, check: str) -> None:
    finding = found(judged({**STOUT, taken_out: None}), check)
    assert finding.verdict == "waiting" and taken_out in finding.waits_for


def test_strength_entered_without_loads_waits_for_the_word_to_judge_it(judged: JudgedWith) -> None:
    without = {name: entry for name, entry in STOUT.items() if not name.startswith("loads.")}
    finding = found(judged(without), "upper-pivot-bolt")
    assert finding.verdict == "waiting" and finding.waits_for == ("loads.judge_strength",)
    refused = found(judged({**without, "loads.judge_strength": False}), "upper-pivot-bolt")
    assert refused.verdict == "not judged"


HUB_STEP = ("hub.mount_width", "hub.mount_height", "hub.mount_bolt_grade")


def test_what_the_hub_step_says_of_the_hub_bolts_alone_asks_for_nothing(judged: JudgedWith) -> None:
    result = judged({name: STOUT[name] for name in HUB_STEP})
    finding = found(result, "hub-bolts")
    assert finding.verdict == "not judged" and "strength was not asked for" in finding.text.lower()
    assert result.verdict == "good"


@pytest.mark.parametrize("entry", ["bolts.hub_bolt_engagement", "bolts.hub_bolt_into"])
def test_hub_bolts_begun_on_the_bolts_step_wait_for_the_word_to_judge_them(judged: JudgedWith, entry: str) -> None:
    begun = {name: STOUT[name] for name in (*HUB_STEP, entry)}
    finding = found(judged(begun), "hub-bolts")
    assert finding.verdict == "waiting" and finding.waits_for == ("loads.judge_strength",)
    refused = found(judged({**begun, "loads.judge_strength": False}), "hub-bolts")
    assert refused.verdict == "not judged" and "strength was not asked for" in refused.text.lower()


@pytest.mark.parametrize(
    "check", ["upright-above-hub", "upper-pivot-bolt", "lower-pivot-lug", "wheel-studs", "hub-bolts"]
)
def test_a_part_begun_waits_for_its_rest_and_for_the_loads_at_once(judged: JudgedWith, check: str) -> None:
    taken_out = {
        "upright-above-hub": "plate.bore", "upper-pivot-bolt": "bolts.upper_gap",
        "lower-pivot-lug": "bolts.lower_edge_distance", "wheel-studs": "hub.stud_thread",
        "hub-bolts": "hub.mount_width",
    }[check]  # fmt: skip
    begun = {name: entry for name, entry in STOUT.items() if not name.startswith("loads.")} | {taken_out: None}
    finding = found(judged(begun), check)
    assert finding.verdict == "waiting" and set(finding.waits_for) == {taken_out, "loads.judge_strength"}
    refused = found(judged({**begun, "loads.judge_strength": False}), check)
    assert refused.verdict == "not judged" and "strength was not asked for" in refused.text.lower()


@pytest.mark.parametrize(
    "taken_out, check, says",
    [
        ("hub.stud_thread", "wheel-studs", "The wheel studs' grade is not entered"),
        ("hub.mount_bolt_thread", "hub-bolt-threads", "The hub bolts' thread engagement is not entered"),
        ("hub.bolt_circle", "wheel-studs", "The wheel studs' grade is not entered"),
        ("pivots.spacing", "upper-pivot-bolt", "The upper pivot bolt is not entered"),
        ("wheel.offset", "upright-below-hub", "The upright's metal and beam are not entered"),
    ],
)
@pytest.mark.parametrize("strength", [None, True, False])
def test_a_part_left_alone_gives_its_own_reason_on_a_half_done_sheet(
    judged: JudgedWith, taken_out: str, check: str, says: str, strength: bool | None
) -> None:
    finding = found(judged({taken_out: None, "loads.judge_strength": strength}), check)
    if check == "wheel-studs" and strength:  # every car has its studs: once strength is judged, theirs is wanted
        assert finding.verdict == "waiting" and {"bolts.stud_grade", taken_out} <= set(finding.waits_for)
        return
    assert finding.verdict == "not judged" and finding.text.startswith(says)


@pytest.mark.parametrize(
    "share, into, verdict",
    [
        (1.0, "steel", "good"),
        (0.999, "steel", "stop"),
        (1.0, "iron", "watch"),
        (0.999, "iron", "stop"),
        (1.0, "nut", "good"),
    ],
)
def test_the_limit_of_thread_engagement(share: float, into: str, verdict: str) -> None:
    node = trade().checks["hub-bolt-threads"]
    assert node.function(share, into, **node.fixed).verdict == verdict


# 16 mm bolt: 1.5 d is 24, the table's row for 16 mm is 22, 2 d is 32. 1/2 in: 19.05 both ways, 2 d 25.4
@pytest.mark.parametrize("which", ["upper", "lower"])
@pytest.mark.parametrize(
    "diameter, edge, verdict",
    [(16.0, 32.0, "good"), (16.0, 31.9, "watch"), (16.0, 24.0, "watch"), (16.0, 23.9, "stop"), (12.7, 19.05, "watch"),
     (12.7, 19.0, "stop"), (12.7, 25.4, "good")],
)  # fmt: skip
def test_the_limits_of_edge_distance(which: str, diameter: float, edge: float, verdict: str) -> None:
    bolt = PivotBolt(Thread("bolt", diameter, 2.0), BoltStrength(1, 1, 1), diameter, 0.0, 0.0, 8.0, True)
    node = trade().checks[f"{which}-lug-edge"]
    judgement: Judgement = node.function(edge, bolt, **node.fixed)
    assert judgement.verdict == verdict and which in in_words(judgement.text, node.member)


@pytest.mark.parametrize(
    "grades, verdict",
    [(("8.8", None, None, None, None), "good"), (("grade 5", "grade 8", "10.9", "8.8", "8.8"), "good"),
     (("grade 2", None, None, None, None), "stop"), (("8.8", "8.8", "8.8", "8.8", "grade 2"), "stop"),
     (("8.8", "8.8", "8.8", "grade 2", "8.8"), "stop"), ((None, None, None, "grade 2", None), "stop")],
)  # fmt: skip
def test_the_limit_of_grade(grades: tuple[Any, ...], verdict: str) -> None:
    assert trade().checks["bolt-grade"].function(*grades, "oiled").verdict == verdict


@pytest.mark.parametrize(
    ("upper", "hub", "on_threads", "verdict"),
    [("12.9", "8.8", "oiled", "good"), ("12.9", "8.8", "black and dry", "good"), ("12.9", "8.8", "zinc plated", "watch"),
     ("12.9", "8.8", "cadmium plated", "watch"), ("12.9", "8.8", None, "watch"), ("10.9", "10.9", "zinc plated", "good"),
     ("10.9", "12.9 zinc plated", "oiled", "watch"), (None, "12.9, zinc plated", None, "watch"),
     ("10.9", "12.9", "oiled", "good"), ("12.9", "grade 2", "zinc plated", "stop")],
)  # fmt: skip
def test_the_hardest_class_is_not_plated(upper: str | None, hub: str, on_threads: str | None, verdict: str) -> None:
    """12.9 is 385 HV at the least (ISO 898-1, from memory), and from 390 HV up a plated bolt may crack of hydrogen (ISO 4042)."""
    judgement = trade().checks["bolt-grade"].function(upper, None, None, None, hub, on_threads)
    assert judgement.verdict == verdict


def test_the_torque_is_given_in_the_sheets_units(judged: JudgedWith) -> None:
    # M12 10.9 oiled: 0.18 x 12 mm x 0.75 x 830 x 84.27 = 113.3 N m
    assert "hub bolts 113 N m" in found(judged(STOUT), "bolt-torque").text


def test_a_torque_is_the_programs_own_working_and_never_good(judged: JudgedWith) -> None:
    torque = found(judged(STOUT), "bolt-torque")
    assert torque.verdict == "watch"
    assert "Worked out by this program from thread, grade" in torque.text


def test_no_torque_is_worked_out_for_the_tapered_stud_of_a_ball_joint(judged: JudgedWith) -> None:
    ball = judged({**STOUT, "pivots.lower_kind": "ball joint", "pivots.lower_shear": "single"})
    assert "lower_pivot_bolt_torque" in ball.worked.not_here
    torque = found(ball, "bolt-torque")
    assert "lower pivot bolt" not in torque.text and "upper pivot bolt" in torque.text


def test_a_ball_joints_stud_said_to_be_in_double_shear_is_counted_in_single(judged: JudgedWith) -> None:
    double = judged({**STOUT, "pivots.lower_kind": "ball joint", "pivots.lower_shear": "double"})
    single = judged({**STOUT, "pivots.lower_kind": "ball joint", "pivots.lower_shear": "single"})
    safety = single.worked.known["lower_pivot_bolt_safety"]
    assert double.worked.known["lower_pivot_bolt_safety"] == safety
    assert safety < judged(STOUT).worked.known["lower_pivot_bolt_safety"]
