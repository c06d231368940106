"""An answer left out never makes a check beside it read as if this build had no such thing.

A check of agreement holds one answer, the claim, against others. Without its claim there is nothing to compare, and it does not
apply; without one of the others it is not judged and names what to enter.
"""

from collections.abc import Iterator
from importlib import import_module
from pkgutil import iter_modules
from typing import Any

import pytest

from rules.checks import agreement
from rules.graph.results import JUDGED
from rules.judging.judge import judge
from rules.judging.trade import trade
from rules.sheet import FIELDS, read_sheet
from sample_sheets import document
from tests.support.base_sheet import edited
from tests.support.judging import judged_document, judged_sample, not_below

PIVOTS = ("upper", "lower")
CLAIMS = {
    "arm-wall-and-beam": "upright.arm_on_wall_width",
    "arm-within-its-wall": "upright.arm_on_wall_width",
    "caliper-beside-axle": "caliper.clock",
    "caliper-bolt-grade-of-its-system": "bolts.caliper_grade",
    "caliper-bracket-leg-suits-metal": "weld_caliper_bracket.leg",
    "caliper-in-its-quarter": "weld_caliper_bracket.caliper_stands",
    "caliper-near-spokes": "wheel.spoke_room",
    "caliper-on-its-side": "caliper.clock",
    "beam-cut-has-face": "upright.beam_cut",
    "caliper-weld-on-bracket": "weld_caliper_bracket.load_above",
    "plate-preheat": "plate.preheat",
    "corner-light-for-its-parts": "job.corner_weight",
    "one-size-one-tyre": "tyre.largest",
    "caliper-bracket-bevel-and-leg": "weld_caliper_bracket.leg",
    "caliper-bracket-weld-across": "weld_caliper_bracket.apart_lies",
    "caliper-bracket-weld-parts-in-words": "weld_caliper_bracket.parts",
    "caliper-bolt-thread-sold": "bolts.caliper_thread",
    "condition-can-be-welded": "plate.condition",
    "condition-names-metal": "plate.condition",
    "filler-and-gas-suit-process": "plate.filler",
    "hub-bolt-thread-sold": "hub.mount_bolt_thread",
    "inner-joint-suits-linkage": "joint_angles.tie_rod_inner_bolt",
    "steering-arm-bevel-and-leg": "weld_steering_arm.leg",
    "steering-arm-weld-parts-in-words": "weld_steering_arm.parts",
    "tie-rod-end-thread-sold": "steering.tie_rod_thread",
    "wheel-stud-thread-sold": "hub.stud_thread",
    "hub-bolt-grade-of-its-system": "hub.mount_bolt_grade",
    "hub-bolt-thread-there": "bolts.hub_bolt_engagement",
    "hub-bolts-outside-body": "hub.body_diameter",
    "inner-end-suits-linkage": "steering.tie_rod_inner_shank",
    "pad-fills-band": "brakes.pad_height",
    "pads-on-rotor": "brakes.effective_radius",
    "pistons-along-pad": "brakes.pad_length",
    "plate-of-known-metal": "plate.metal",
    "pressure-centres-and-hub": "loads.pressure_centre_spread",
    "ratings-like-their-kind": "hub.dynamic_rating",
    "ring-not-heavier-than-iron": "rotor.ring_mass",
    "speed-suits-use": "job.top_speed",
    "spoke-room-inside-wheel": "wheel.spoke_room",
    "steering-arm-leg-suits-metal": "weld_steering_arm.leg",
    "stud-grade-of-its-system": "bolts.stud_grade",
    "stud-not-too-long": "hub.stud_length",
    "studs-inside-flange": "hub.flange_diameter",
    "swap-spacing": "pivots.swap_spacing",
    "tie-rod-rating-and-reach": "loads.tie_rod_rating",
    "yield-suits-metal": "upright.certificate_yield",
    **{f"{which}-bevel-and-leg": f"weld_{which}.leg" for which in PIVOTS},
    **{f"{which}-pivot-thread-sold": f"bolts.{which}_thread" for which in PIVOTS},
    **{f"{which}-weld-parts-in-words": f"weld_{which}.parts" for which in PIVOTS},
    **{f"{which}-housing-round-bolt": f"bolts.{which}_thread" for which in PIVOTS},
    **{f"{which}-joint-has-ball": f"bolts.{which}_ball_width" for which in PIVOTS},
    **{f"{which}-leg-suits-metal": f"weld_{which}.leg" for which in PIVOTS},
    **{f"{which}-lugs-hold-ball": f"weld_{which}.apart" for which in PIVOTS},
    **{f"{which}-pivot-grade-of-its-system": f"bolts.{which}_grade" for which in PIVOTS},
    **{f"{which}-tube-between-lugs": f"arms.{which}_tube" for which in PIVOTS},
    **{f"{which}-weld-and-bolt": f"weld_{which}.apart_lies" for which in PIVOTS},
    **{f"{which}-weld-form": f"weld_{which}.form" for which in PIVOTS},
}
"""The one answer without which there is nothing to compare, by check. A tie names its own."""
SAMPLES = (
    "dune_wren_finished",
    "dune_wren_moving",
    "fell_badger_finished_metric",
    "pond_newt_finished",
    "scree_ox_strength",
)


def claims() -> dict[str, str]:
    """The claim of every check that has one, by its name."""
    modules = (import_module(f"{agreement.__name__}.{module.name}") for module in iter_modules(agreement.__path__))
    ties = [tie for module in modules for tie in getattr(module, "TIES", {}).values()]
    return CLAIMS | {tie.id: tie.one for tie in ties}


def gone_with(name: str) -> Iterator[tuple[str, str]]:
    """Every answer of a sample, and every check that was judged with it and without it neither is nor names anything to enter."""
    whole = judged_sample(name)
    spoke = {finding.check for finding in whole.findings if finding.verdict in JUDGED}
    for left_out in whole.sheet.answers:
        rest = read_sheet(edited(document(name), {left_out: None}))
        for finding in judge(rest, before=whole, light=True, advice=False).findings:
            quiet = finding.verdict == "does not apply" or (finding.verdict == "not judged" and not finding.waits_for)
            if quiet and finding.check in spoke:
                yield left_out, finding.check


@pytest.mark.parametrize("name", SAMPLES)
def test_a_check_that_was_judged_applies_without_any_answer_but_its_claim(name: str) -> None:
    claim = claims()
    assert [(left_out, check) for left_out, check in gone_with(name) if claim.get(check) != left_out] == []


def test_every_claim_is_one_that_its_check_takes() -> None:
    assert {check for check, claim in CLAIMS.items() if claim not in trade().fields_of(check)} == set()
    assert set(CLAIMS.values()) <= FIELDS.keys()


SCREE_OX: list[tuple[str, str]] = [
    *((f"{which}-weld-lever-inboard-derived", "plate.thickness") for which in PIVOTS),
    *((f"{which}-lug-reach-derived", "plate.thickness") for which in PIVOTS),
    *((f"{which}-weld-lever-above-derived", "plate.height") for which in PIVOTS),
    *((f"{which}-weld-lever-ahead-derived", "plate.spindle_from_front") for which in PIVOTS),
    *((f"{which}-weld-lever-ahead-derived", f"pivots.{which}_shear") for which in PIVOTS),
    *((f"{which}-weld-and-lever", f"weld_{which}.{key}") for which in PIVOTS for key in ("runs_lie", "load_ahead")),
    *((f"{which}-arm-base", f"arms.{which}_rear_height") for which in PIVOTS),
    ("arm-weld-lever-ahead-derived", "upright.beam_width"),
    ("arm-weld-lever-above-derived", "steering.tie_rod_above"),
    ("arm-weld-lever-above-derived", "upright.steering_arm_root_above"),
    ("arm-weld-lever-inboard-derived", "upright.beam_depth"),
    ("arm-length-and-its-weld", "weld_steering_arm.load_inboard"),
    ("arm-weld-and-wall", "upright.arm_on_wall"),
    ("arm-weld-and-wall", "weld_steering_arm.apart_lies"),
    ("steering-arm-weld-and-lever", "weld_steering_arm.form"),
    ("caliper-weld-lever-ahead-derived", "weld_caliper_bracket.caliper_stands"),
    ("caliper-weld-lever-ahead-derived", "plate.width"),
    ("caliper-weld-lever-inboard-derived", "plate.bracket_thickness"),
    ("bracket-offset-derived", "plate.bracket_thickness"),
    ("caliper-bolts-derived", "upright.bracket_arm_length"),
    ("caliper-bolts-derived", "weld_caliper_bracket.caliper_stands"),
    ("caliper-bolts-derived", "plate.spindle_from_front"),
    ("pads-and-caliper-bolts", "caliper.bolts_inside"),
    ("caliper-on-its-side", "caliper.side"),
    ("caliper-near-spokes", "caliper.outboard_reach"),
    ("caliper-away-from-arm", "steering.tie_rod_ahead"),
    ("stud-not-too-long", "wheel.pad_thickness"),
    ("stud-not-too-long", "hub.stud_thread"),
    ("speed-suits-use", "job.use"),
    ("inner-end-suits-linkage", "steering.linkage"),
    ("shock-on-its-arm", "pivots.spring_on"),
    ("shock-on-its-arm", "arms.lower_front_height"),
    ("shock-moves-with-wheel", "spring.arm_end_from_centre"),
    ("slides-before-it-tips", "job.centre_of_gravity_height"),
]


@pytest.mark.parametrize(("check", "left_out"), SCREE_OX)
def test_without_what_bounds_it_an_answer_is_not_judged_and_what_to_enter_is_named(check: str, left_out: str) -> None:
    whole = judged_sample("scree_ox_strength")
    assert {finding.verdict for finding in whole.findings if finding.check == check} <= set(JUDGED)
    rest = read_sheet(edited(document("scree_ox_strength"), {left_out: None}))
    judged = judge(rest, before=whole, leaving=not_below(frozenset((check,))), light=True, advice=False)
    (found,) = [finding for finding in judged.findings if finding.check == check]
    assert found.verdict == "not judged" and left_out in found.waits_for


def of_pond_newt(changes: dict[str, Any], check: str) -> str:
    judged = judged_document(edited(document("pond_newt_finished"), changes))
    return next(finding.verdict for finding in judged.findings if finding.check == check)


def test_what_was_never_begun_does_not_apply() -> None:
    """No bracket, no second figure for the hub's bolts, no arms: there is nothing to hold an answer against."""
    bolts = {"caliper.bolts_inside": "20 mm"}
    assert of_pond_newt(bolts, "caliper-bolts-derived") == "does not apply"
    stands = {**bolts, "weld_caliper_bracket.caliper_stands": "behind"}
    assert of_pond_newt(stands, "caliper-bolts-derived") == "not judged"
    four = {"hub.mount_bolts": 4}
    assert of_pond_newt(four, "hub-bolts-on-circle") == "does not apply"
    assert of_pond_newt({**four, "hub.mount_width": "80 mm"}, "hub-bolts-on-circle") == "not judged"
    for check in ("lower-arm-base", "shock-on-its-arm", "caliper-away-from-arm", "lower-weld-and-lever"):
        assert of_pond_newt({}, check) == "does not apply"


def test_what_this_build_does_not_have_does_not_apply() -> None:
    """A bolt held on one side, a caliper above the axle, a lower joint whose place is taped."""
    single = {"weld_upper.load_above": "5 mm", "pivots.upper_shear": "single"}
    assert of_pond_newt(single, "upper-weld-lever-above-derived") == "does not apply"
    above = {"weld_caliper_bracket.load_ahead": "5 mm", "weld_caliper_bracket.caliper_stands": "above"}
    assert of_pond_newt(above, "caliper-weld-lever-ahead-derived") == "does not apply"
    assert of_pond_newt({"pivots.lower_inboard": "60 mm"}, "lower-pivot-near-hub") == "does not apply"


def test_without_a_word_of_the_beam_the_arms_weld_is_assumed_on_the_plates_edge() -> None:
    """The entered levers are those of a beam 3.2 in wide and 3.6 deep: the plate's edge gives others, as an estimate."""
    judged = judged_document(edited(document("scree_ox_strength"), {"upright.beam": None}))
    found = {finding.check: finding for finding in judged.findings}
    for way in ("ahead", "inboard"):
        finding = found[f"arm-weld-lever-{way}-derived"]
        assert finding.verdict == "watch" and finding.estimated_from == ("upright.beam",)
