"""Every check on the base sheet with entries changed: inside, exactly on and just outside each limit."""

from collections.abc import Callable
from typing import Any

import pytest

from rules.checks import CHECKS, GROUP_OF
from rules.graph.declare import check, value
from rules.graph.engine import Graph
from rules.graph.results import WORST_FIRST, DoesNotApply, Judgement
from rules.judging.judge import Finding, Judged, judge, shown
from rules.judging.reader import name as named
from rules.judging.trade import trade
from rules.measure.units import Mm
from rules.sheet import FIELDS, STEPS, Sheet, read_sheet
from rules.sheet.confirmed import FACTS
from rules.tables.sources import COMMON_PRACTICE
from rules.values import VALUES
from sample_sheets import document
from tests.support.base_sheet import edited
from tests.support.judging import judged_document

FindingWith = Callable[[str, dict[str, object]], Finding]
JudgedWith = Callable[[dict[str, object]], Judged]
Read = Callable[[dict[str, object]], Sheet]

# The checks other people's scripts rely on, with the grade of their source.
CONTRACT = {
    "tyre-rim-diameter": "standard",
    "tyre-rim-width": "standard",
    "tyre-load": "standard",
    "loaded-radius": "common practice",
    "tyre-speed": "standard",
    "wheel-numbers-agree": "common practice",
    "wheel-load": "common practice",
    "bolt-circle-wheel-hub": "common practice",
    "bolt-circle-rotor-hub": "common practice",
    "wheel-bore": "common practice",
    "rotor-bore": "common practice",
    "nut-seat": "common practice",
    "stud-engagement": "handbook",
    "caliper-clears-barrel": "common practice",
    "caliper-clears-spokes": "common practice",
    "caliper-suits-rotor": "common practice",
    "rotor-thickness": "no published figure",
    "bleed-screw": "common practice",
    "hub-holds-together": "common practice",
    "bearing-near-tyre-centre": "common practice",
    "inclination-usual": "common practice",
    "ground-offset-usual": "common practice",
    "ground-offset-across-tyres": "common practice",
    "swap-spacing": "common practice",
    "castor-usual": "common practice",
    "trail-positive": "handbook",
    "self-centring": "handbook",
    "lower-pivot-clears-barrel": "common practice",
    "upper-pivot-clears-barrel": "common practice",
    "lower-pivot-clears-rotor": "common practice",
    "pivot-shear": "common practice",
    "no-rod-end-in-bending": "common practice",
    "pivots-straddle-spindle": "common practice",
}


def test_every_check_of_the_contract_is_there_with_its_grade() -> None:
    assert {name: node.note.grade for name, node in trade().checks.items() if name in CONTRACT} == CONTRACT


def test_every_check_is_good_on_the_base_sheet(judged: JudgedWith) -> None:
    result = judged({})
    found = {finding.check: finding.verdict for finding in result.findings}
    assert {name: found[name] for name in CONTRACT} == dict.fromkeys(CONTRACT, "good")
    assert result.verdict == "good"
    assert all(finding.change == "" for finding in result.findings if finding.verdict != "not judged")


CUT = {"rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm", "rotor.kept_plate_carries_hat": True}
SHAFT = {"hub.held_together_by": "a clamped stub shaft"}
STRAIGHT = {"pivots.castor": "0 deg"}
UPRIGHT = {"pivots.castor": "0 deg", "pivots.inclination": "0 deg"}  # axis straight up: offsets stay the ground offset
# Axis straight up 100 inboard of the tyre's plane, so 44 inboard of the mounting face at -56. Pivots 135 above and 125 below
# the wheel centre: the plate stands 30 beyond both.
BEHIND_PLATE = {**UPRIGHT, "pivots.ground_offset": "100 mm", "plate.thickness": "12 mm", "plate.height": "320 mm",
                "plate.spindle_from_top": "165 mm"}  # fmt: skip
POUNDS = {"job.corner_weight": "500 lb"}
INCH_GAPS = {"wheel.barrel_inside_diameter": "14 in", "rotor.diameter": "11 in"}  # 1 1/2 in between
INCH_STUD = {"hub.stud_thread": "1/2-20", "rotor.hat_thickness": "1/4 in", "wheel.pad_thickness": "1/2 in"}

# check, what is changed, verdict
CASES = [
    ("tyre-rim-diameter", {"wheel.diameter": "381 mm"}, "good"),
    ("tyre-rim-diameter", {"wheel.diameter": "16 in"}, "stop"),
    ("tyre-rim-diameter", {"tyre.largest": "LT315/75R16 127S"}, "stop"),
    ("tyre-rim-diameter", {"tyre.smallest": "LT315/75R16 127S"}, "stop"),
    ("tyre-rim-diameter", {"wheel.diameter": "16.5 in", "tyre.smallest": "33x12.50R16.5LT 108Q",
                           "tyre.largest": "35x12.50R16.5LT 108Q"}, "good"),
    ("tyre-rim-diameter", {"wheel.diameter": "16.5 in", "tyre.smallest": "33x12.50R16LT 108Q",
                           "tyre.largest": "35x12.50R16LT 108Q"}, "stop"),
    ("tyre-rim-width", {"wheel.width": "200 mm"}, "good"),
    ("tyre-rim-width", {"wheel.width": "199.9 mm"}, "stop"),
    ("tyre-rim-width", {"wheel.width": "260 mm"}, "good"),
    ("tyre-rim-width", {"wheel.width": "260.1 mm"}, "stop"),
    ("tyre-rim-width", {"wheel.width": "8 1/2 in", "tyre.rim_width_least": "8.5 in"}, "good"),
    ("tyre-rim-width", {"wheel.width": "8 7/16 in", "tyre.rim_width_least": "8.5 in"}, "stop"),
    ("tyre-rim-width", {"wheel.width": "26 cm", "tyre.rim_width_most": "10 1/4 in"}, "good"),  # 260.35
    ("tyre-load", {"tyre.load_capacity": "275 kg"}, "good"),
    ("tyre-load", {"tyre.load_capacity": "274.9 kg"}, "watch"),
    ("tyre-load", {"tyre.load_capacity": "250 kg"}, "watch"),
    ("tyre-load", {"tyre.load_capacity": "249.9 kg"}, "stop"),
    ("tyre-load", {**POUNDS, "tyre.load_capacity": "550 lb"}, "good"),
    ("tyre-load", {**POUNDS, "tyre.load_capacity": "549.9 lb"}, "watch"),
    ("tyre-load", {**POUNDS, "tyre.load_capacity": "500 lb"}, "watch"),
    ("tyre-load", {**POUNDS, "tyre.load_capacity": "499.9 lb"}, "stop"),
    ("tyre-load", {"job.corner_weight": "909 kg"}, "good"),  # 108 is 1000 kg; 1.1 x 909 = 999.9
    ("tyre-load", {"job.corner_weight": "910 kg"}, "watch"),  # 1001
    ("tyre-load", {"job.corner_weight": "1000 kg"}, "watch"),
    ("tyre-load", {"job.corner_weight": "1001 kg"}, "stop"),
    ("loaded-radius", {"tyre.loaded_radius": "16 1/2 in"}, "good"),
    ("loaded-radius", {"tyre.loaded_radius": None}, "watch"),
    ("loaded-radius", {"tyre.loaded_radius": None, "pivots.inclination": None}, "watch"),
    ("tyre-speed", {"job.top_speed": "160 km/h"}, "good"),
    ("tyre-speed", {"job.top_speed": "160.1 km/h"}, "stop"),
    ("tyre-speed", {"job.top_speed": "99.4 mph"}, "good"),  # 159.97 km/h
    ("tyre-speed", {"job.top_speed": "99.5 mph"}, "stop"),  # 160.13 km/h
    ("tyre-speed", {"tyre.speed_symbol": "F"}, "stop"),  # 80 km/h for 110
    ("wheel-numbers-agree", {"wheel.offset": "11.6 mm"}, "good"),
    ("wheel-numbers-agree", {"wheel.offset": "11.7 mm"}, "watch"),
    ("wheel-numbers-agree", {"wheel.offset": "8.4 mm"}, "good"),
    ("wheel-numbers-agree", {"wheel.offset": "8.3 mm"}, "watch"),
    ("wheel-numbers-agree", {"wheel.offset": "16 mm"}, "watch"),
    ("wheel-numbers-agree", {"wheel.offset": "16.1 mm"}, "stop"),
    ("wheel-numbers-agree", {"wheel.offset": "4 mm"}, "watch"),
    ("wheel-numbers-agree", {"wheel.offset": "3.9 mm"}, "stop"),
    ("wheel-numbers-agree", {"wheel.overall_width": "10 in", "wheel.backspacing": "5 in", "wheel.offset": "1/16 in"}, "good"),
    ("wheel-numbers-agree", {"wheel.overall_width": "10 in", "wheel.backspacing": "5 in", "wheel.offset": "1/8 in"}, "watch"),
    ("wheel-numbers-agree", {"wheel.overall_width": "10 in", "wheel.backspacing": "5 in", "wheel.offset": "1/2 in"}, "stop"),
    ("wheel-load", {"wheel.load_rating": "275 kg"}, "good"),
    ("wheel-load", {"wheel.load_rating": "274.9 kg"}, "watch"),
    ("wheel-load", {"wheel.load_rating": "250 kg"}, "watch"),
    ("wheel-load", {"wheel.load_rating": "249.9 kg"}, "stop"),
    ("wheel-load", {**POUNDS, "wheel.load_rating": "550 lb"}, "good"),
    ("wheel-load", {**POUNDS, "wheel.load_rating": "500 lb"}, "watch"),
    ("wheel-load", {**POUNDS, "wheel.load_rating": "499.9 lb"}, "stop"),
    ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "6 x 5.315 in"}, "good"),
    ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "6 x 134.7 mm"}, "good"),
    ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "6 x 134.6 mm"}, "stop"),
    ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "5 x 135 mm"}, "stop"),
    ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "5 x 115 mm", "hub.bolt_circle": "5 x 114.3 mm"}, "stop"),
    ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "5 x 4.5 in", "hub.bolt_circle": "5 x 114.3 mm"}, "good"),
    ("bolt-circle-rotor-hub", {"rotor.bolt_circle": "6 x 5.5 in", "hub.bolt_circle": "6 x 139.7 mm"}, "good"),
    ("bolt-circle-rotor-hub", {"rotor.bolt_circle": "6 x 135.3 mm"}, "good"),
    ("bolt-circle-rotor-hub", {"rotor.bolt_circle": "6 x 135.4 mm"}, "stop"),
    ("bolt-circle-rotor-hub", {"rotor.bolt_circle": "8 x 135 mm"}, "stop"),
    ("wheel-bore", {"wheel.centre_bore": "107.8 mm"}, "good"),
    ("wheel-bore", {"wheel.centre_bore": "107.79 mm"}, "stop"),
    ("wheel-bore", {"wheel.centre_bore": "108.4 mm"}, "good"),
    ("wheel-bore", {"wheel.centre_bore": "108.41 mm"}, "watch"),
    ("wheel-bore", {"wheel.centre_bore": "4 1/4 in", "hub.pilot_diameter": "4.25 in"}, "good"),
    ("wheel-bore", {"wheel.centre_bore": "4 1/4 in", "hub.pilot_diameter": "4.251 in"}, "stop"),
    ("rotor-bore", {"rotor.centre_bore": "107.8 mm"}, "good"),
    ("rotor-bore", {"rotor.centre_bore": "107.79 mm"}, "stop"),
    ("rotor-bore", {"rotor.centre_bore": "108.4 mm"}, "good"),
    ("rotor-bore", {"rotor.centre_bore": "108.41 mm"}, "watch"),
    ("nut-seat", {"wheel.nut_seat": "ball", "hub.nut_seat": "ball"}, "good"),
    ("nut-seat", {"wheel.nut_seat": "90 deg cone"}, "stop"),
    ("nut-seat", {"hub.nut_seat": "flat"}, "stop"),
    ("stud-engagement", {"hub.stud_length": "30 mm"}, "good"),
    ("stud-engagement", {"hub.stud_length": "29.9 mm"}, "stop"),
    ("stud-engagement", {**INCH_STUD, "hub.stud_length": "1 1/4 in"}, "good"),
    ("stud-engagement", {**INCH_STUD, "hub.stud_length": "1 15/64 in"}, "stop"),
    ("stud-engagement", {"hub.stud_length": "15 mm"}, "stop"),
    ("caliper-clears-barrel", {"caliper.reach_above_rotor": "34 mm"}, "good"),
    ("caliper-clears-barrel", {"caliper.reach_above_rotor": "34.1 mm"}, "watch"),
    ("caliper-clears-barrel", {"caliper.reach_above_rotor": "37 mm"}, "watch"),
    ("caliper-clears-barrel", {"caliper.reach_above_rotor": "37.1 mm"}, "stop"),
    ("caliper-clears-barrel", {"caliper.reach_above_rotor": "45 mm"}, "stop"),
    ("caliper-clears-barrel", {**INCH_GAPS, "caliper.reach_above_rotor": "1 1/4 in"}, "good"),
    ("caliper-clears-barrel", {**INCH_GAPS, "caliper.reach_above_rotor": "1 3/8 in"}, "watch"),
    ("caliper-clears-barrel", {**INCH_GAPS, "caliper.reach_above_rotor": "1 7/16 in"}, "stop"),
    ("caliper-clears-spokes", {"caliper.outboard_reach": "50 mm"}, "good"),
    ("caliper-clears-spokes", {"caliper.outboard_reach": "50.1 mm"}, "watch"),
    ("caliper-clears-spokes", {"caliper.outboard_reach": "53 mm"}, "watch"),
    ("caliper-clears-spokes", {"caliper.outboard_reach": "53.1 mm"}, "stop"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "23 mm"}, "good"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "23.1 mm"}, "watch"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "24 mm"}, "watch"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "24.1 mm"}, "stop"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "21 mm"}, "good"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "20.9 mm"}, "watch"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "20 mm"}, "watch"),
    ("caliper-suits-rotor", {"caliper.made_for_thickness": "19.9 mm"}, "stop"),
    ("caliper-suits-rotor", {**CUT}, "stop"),
    ("rotor-thickness", {"rotor.minimum_thickness": "21 mm"}, "good"),
    ("rotor-thickness", {"rotor.minimum_thickness": "21.1 mm"}, "watch"),
    ("rotor-thickness", {"rotor.minimum_thickness": "22 mm"}, "watch"),
    ("rotor-thickness", {"rotor.minimum_thickness": "22.1 mm"}, "stop"),
    ("rotor-thickness", {"rotor.finished_thickness": "21 mm"}, "good"),
    ("rotor-thickness", {"rotor.finished_thickness": "20 mm"}, "watch"),
    ("rotor-thickness", {"rotor.finished_thickness": "19.9 mm"}, "stop"),
    ("rotor-thickness", {"rotor.thickness": "0.87 in", "rotor.minimum_thickness": "0.81 in"}, "good"),  # 1.524 over
    ("rotor-thickness", {**CUT}, "watch"),
    ("rotor-thickness", {**CUT, "rotor.minimum_thickness": "1 mm"}, "watch"),
    ("rotor-thickness", {**CUT, "rotor.finished_thickness": "22 mm"}, "watch"),
    ("rotor-thickness", {**CUT, "rotor.kept_plate_carries_hat": False}, "stop"),
    ("rotor-thickness", {**CUT, "rotor.kept_plate_carries_hat": False, "rotor.finished_thickness": None}, "stop"),
    ("bleed-screw", {"caliper.bleed_screw_on_top": False}, "stop"),
    ("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": False}, "stop"),
    ("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": False, "hub.stub_shaft_torque": "250 N m"}, "stop"),
    ("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": True}, "watch"),
    ("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": True, "hub.stub_shaft_torque": "250 N m"}, "good"),
    ("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": True, "hub.stub_shaft_torque": "100 N m"}, "good"),
    ("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": True, "hub.stub_shaft_torque": "99.9 N m"}, "stop"),
    ("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": True, "hub.stub_shaft_torque": "20 N m"}, "stop"),
    ("bearing-near-tyre-centre", {"hub.flange_to_bearing_centre": "64 mm"}, "good"),
    ("bearing-near-tyre-centre", {"hub.flange_to_bearing_centre": "64.1 mm"}, "watch"),
    ("bearing-near-tyre-centre", {"hub.flange_to_bearing_centre": "-56 mm"}, "good"),
    ("bearing-near-tyre-centre", {"hub.flange_to_bearing_centre": "-56.1 mm"}, "watch"),
    ("bearing-near-tyre-centre", {"hub.flange_to_bearing_centre": "300 mm"}, "watch"),
    ("inclination-usual", {"pivots.inclination": "8 deg"}, "good"),
    ("inclination-usual", {"pivots.inclination": "7.9 deg"}, "watch"),
    ("inclination-usual", {"pivots.inclination": "12 deg"}, "good"),
    ("inclination-usual", {"pivots.inclination": "12.1 deg"}, "watch"),
    ("inclination-usual", {"pivots.inclination": "0.1 deg"}, "watch"),
    ("inclination-usual", {"pivots.inclination": "0 deg"}, "stop"),
    ("inclination-usual", {"pivots.inclination": "-0.1 deg"}, "stop"),
    # At 25 mm the lower pivot lies 17.49 mm behind the mounting face (test_values.py), and it moves with the ground offset.
    ("lower-pivot-near-hub", {"pivots.ground_offset": "69 mm"}, "good"),  # 61.49
    ("lower-pivot-near-hub", {"pivots.ground_offset": "70 mm"}, "watch"),  # 62.49
    ("lower-pivot-near-hub", {"pivots.ground_offset": "23 mm"}, "good"),  # 15.49
    ("lower-pivot-near-hub", {"pivots.ground_offset": "22 mm"}, "watch"),  # 14.49
    ("ground-offset-usual", {"pivots.ground_offset": "-10 mm"}, "good"),
    ("ground-offset-usual", {"pivots.ground_offset": "-10.1 mm"}, "watch"),
    ("ground-offset-usual", {"pivots.ground_offset": "-300 mm"}, "watch"),
    ("ground-offset-usual", {"pivots.ground_offset": "40 mm", "job.use": "road"}, "good"),
    ("ground-offset-usual", {"pivots.ground_offset": "40.1 mm", "job.use": "road"}, "watch"),
    ("ground-offset-usual", {"pivots.ground_offset": "80 mm"}, "good"),
    ("ground-offset-usual", {"pivots.ground_offset": "80.1 mm"}, "watch"),
    ("ground-offset-usual", {"pivots.ground_offset": "100 mm"}, "watch"),
    ("ground-offset-usual", {"pivots.ground_offset": "100.1 mm"}, "stop"),
    ("ground-offset-usual", {"pivots.ground_offset": "1 9/16 in"}, "good"),  # 39.69
    ("ground-offset-usual", {"pivots.ground_offset": "3 7/8 in"}, "watch"),  # 98.4
    ("ground-offset-usual", {"pivots.ground_offset": "4 in"}, "stop"),  # 101.6
    # Between the tyres the wheel centre moves 400 x 50.8 / 812.8 = 25 mm: tan 21.8 deg 0.399971, tan 21.9 deg 0.401996.
    ("ground-offset-across-tyres", {"pivots.inclination": "21.8 deg"}, "good"),  # 9.999
    ("ground-offset-across-tyres", {"pivots.inclination": "21.9 deg"}, "watch"),  # 10.050
    # The largest tyre's offset is 2.2041 less than the design tyre's, the smallest's as much more.
    ("ground-offset-across-tyres", {"pivots.ground_offset": "2.3 mm"}, "good"),
    ("ground-offset-across-tyres", {"pivots.ground_offset": "2.2 mm"}, "watch"),
    ("ground-offset-across-tyres", {"pivots.ground_offset": "-2.2 mm"}, "watch"),
    ("ground-offset-across-tyres", {"pivots.ground_offset": "-2.3 mm"}, "good"),
    ("ground-offset-across-tyres", {"tyre.largest": "31x10.50R15LT 109Q"}, "good"),
    ("swap-spacing", {"pivots.swap_spacing": "260.8 mm"}, "good"),
    ("swap-spacing", {"pivots.swap_spacing": "260.9 mm"}, "watch"),
    ("swap-spacing", {"pivots.swap_spacing": "259.2 mm"}, "good"),
    ("swap-spacing", {"pivots.swap_spacing": "259.1 mm"}, "watch"),
    ("swap-spacing", {"pivots.spacing": "10 1/4 in", "pivots.swap_spacing": "10 9/32 in"}, "good"),
    ("swap-spacing", {"pivots.spacing": "10 1/4 in", "pivots.swap_spacing": "10 5/16 in"}, "watch"),
    ("castor-usual", {"pivots.castor": "4 deg"}, "good"),
    ("castor-usual", {"pivots.castor": "3.9 deg"}, "watch"),
    ("castor-usual", {"pivots.castor": "10 deg"}, "good"),
    ("castor-usual", {"pivots.castor": "10.1 deg"}, "watch"),
    ("castor-usual", {"job.use": "road", "pivots.castor": "10.1 deg"}, "watch"),
    ("castor-usual", {"job.use": "dunes", "pivots.castor": "15 deg"}, "good"),
    ("castor-usual", {"job.use": "dunes", "pivots.castor": "15.1 deg"}, "watch"),
    ("castor-usual", {"job.use": "race", "pivots.castor": "10.1 deg"}, "good"),
    ("castor-usual", {"job.use": "", "pivots.castor": "10.1 deg"}, "watch"),  # good only whatever the use
    ("castor-usual", {"pivots.castor": "0 deg"}, "watch"),
    ("castor-usual", {"pivots.castor": "-0.1 deg"}, "stop"),
    ("trail-positive", {"pivots.axis_ahead": "-42 mm"}, "good"),  # 42.0417 from castor
    ("trail-positive", {"pivots.axis_ahead": "-42.1 mm"}, "stop"),
    ("trail-positive", {**STRAIGHT}, "stop"),  # nought
    ("trail-positive", {**STRAIGHT, "pivots.axis_ahead": "0.1 mm"}, "good"),
    ("self-centring", {**UPRIGHT}, "stop"),  # an upright axis lifts nothing: nought
    ("self-centring", {**UPRIGHT, "pivots.inclination": "1 deg"}, "watch"),  # hardly anything, and nothing trails
    ("self-centring", {"pivots.castor": "12 deg"}, "good"),  # every day on sand and desert cars: common practice
    ("self-centring", {"pivots.castor": "15 deg"}, "watch"),  # the weight turns them out, the trail brings them back
    ("self-centring", {"pivots.inclination": "2 deg", "pivots.ground_offset": "0 mm", "pivots.castor": "12 deg"}, "watch"),
    ("self-centring", {**UPRIGHT, "pivots.inclination": "-1 deg"}, "stop"),  # the wheel centre, 18 outboard of the axis, sinks
    ("lower-pivot-clears-barrel", {**STRAIGHT, "pivots.lower_radius": "49 mm"}, "good"),  # 180 - 125 - 49 = 6
    ("lower-pivot-clears-barrel", {**STRAIGHT, "pivots.lower_radius": "49.1 mm"}, "watch"),
    ("lower-pivot-clears-barrel", {**STRAIGHT, "pivots.lower_radius": "52 mm"}, "watch"),
    ("lower-pivot-clears-barrel", {**STRAIGHT, "pivots.lower_radius": "52.1 mm"}, "stop"),
    ("lower-pivot-clears-barrel", {**STRAIGHT, "pivots.axis_ahead": "40 mm", "pivots.lower_radius": "49 mm"}, "stop"),
    ("upper-pivot-clears-barrel", {**UPRIGHT, "pivots.upper_radius": "39 mm"}, "good"),  # 180 - 135 - 39 = 6
    ("upper-pivot-clears-barrel", {**UPRIGHT, "pivots.upper_radius": "39.1 mm"}, "watch"),
    ("upper-pivot-clears-barrel", {**UPRIGHT, "pivots.upper_radius": "42 mm"}, "watch"),
    ("upper-pivot-clears-barrel", {**UPRIGHT, "pivots.upper_radius": "42.1 mm"}, "stop"),
    # Rotor's back at -45; pivot 72 inboard of the tyre plane: 27 less the housing's reach.
    ("lower-pivot-clears-rotor", {**UPRIGHT, "pivots.ground_offset": "72 mm"}, "good"),
    ("lower-pivot-clears-rotor", {**UPRIGHT, "pivots.ground_offset": "72 mm", "pivots.lower_radius": "22.1 mm"}, "watch"),
    ("lower-pivot-clears-rotor", {**UPRIGHT, "pivots.ground_offset": "72 mm", "pivots.lower_radius": "25 mm"}, "watch"),
    ("lower-pivot-clears-rotor", {**UPRIGHT, "pivots.ground_offset": "72 mm", "pivots.lower_radius": "25.1 mm"}, "stop"),
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "28.9 mm"}, "good"),
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "29 mm"}, "good"),  # 44 - 12 - 29 = 3
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "29.1 mm"}, "watch"),
    # 44 - 12 is 32 to the plate's back: a reach of 42 stands 10 in the plate.
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "42 mm"}, "watch"),
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "42.1 mm"}, "stop"),
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.ground_offset": "56.1 mm"}, "stop"),
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "29.1 mm", "plate.height": "261 mm"}, "watch"),
    ("upper-pivot-clears-plate", {**BEHIND_PLATE, "pivots.upper_radius": "28.9 mm"}, "good"),
    ("upper-pivot-clears-plate", {**BEHIND_PLATE, "pivots.upper_radius": "29 mm"}, "good"),
    ("upper-pivot-clears-plate", {**BEHIND_PLATE, "pivots.upper_radius": "29.1 mm"}, "watch"),
    ("upper-pivot-clears-plate", {**BEHIND_PLATE, "plate.thickness": "19 mm"}, "good"),  # 44 - 19 - 22 = 3
    ("upper-pivot-clears-plate", {**BEHIND_PLATE, "plate.thickness": "19.1 mm"}, "watch"),
    ("pivot-shear", {"pivots.upper_shear": "single", "pivots.upper_retained": True}, "watch"),
    ("pivot-shear", {"pivots.lower_shear": "single", "pivots.lower_retained": True}, "watch"),
    ("pivot-shear", {"pivots.upper_shear": "single", "pivots.upper_retained": False}, "stop"),
    ("pivot-shear", {"pivots.lower_shear": "single", "pivots.lower_retained": False}, "stop"),
    ("pivot-shear", {"pivots.lower_shear": "single", "pivots.lower_retained": False, "pivots.upper_shear": None}, "stop"),
    ("pivot-shear", {"pivots.upper_retained": False, "pivots.lower_retained": False}, "good"),
    # A ball joint's tapered stud is held at one end only.
    ("pivot-shear", {"pivots.lower_kind": "ball joint"}, "stop"),
    ("pivot-shear", {"pivots.upper_kind": "ball joint", "pivots.upper_retained": True}, "stop"),
    ("pivot-shear", {"pivots.lower_kind": "ball joint", "pivots.lower_shear": "single", "pivots.lower_retained": True},
     "watch"),
    ("no-rod-end-in-bending", {"pivots.upper_kind": "ball joint"}, "good"),
    ("no-rod-end-in-bending", {"pivots.upper_kind": "rod end"}, "stop"),
    ("no-rod-end-in-bending", {"pivots.lower_kind": "rod end"}, "stop"),
    ("pivots-straddle-spindle", {"pivots.lower_below_spindle": "0.1 mm"}, "good"),
    ("pivots-straddle-spindle", {"pivots.lower_below_spindle": "0 mm"}, "watch"),
    ("pivots-straddle-spindle", {"pivots.lower_below_spindle": "-100 mm"}, "watch"),
    ("pivots-straddle-spindle", {**UPRIGHT, "pivots.spacing": "125.1 mm"}, "good"),
    ("pivots-straddle-spindle", {**UPRIGHT, "pivots.spacing": "125 mm"}, "watch"),
    ("pivots-straddle-spindle", {**UPRIGHT, "pivots.spacing": "124.9 mm"}, "watch"),
]  # fmt: skip


def test_every_check_has_cases_for_every_verdict_it_can_give() -> None:
    given = {(name, verdict) for name, _, verdict in CASES}
    for name in CONTRACT:
        for verdict in ("watch", "stop"):
            assert ((name, verdict) in given) == bool(getattr(trade().checks[name].note, verdict)), (name, verdict)


@pytest.mark.parametrize(("check", "changes", "verdict"), CASES)
def test_a_check_gives_its_verdict(finding: FindingWith, check: str, changes: dict[str, object], verdict: str) -> None:
    found = finding(check, changes)
    assert found.verdict == verdict, found.text
    assert found.text and not found.waits_for and not found.estimated_from
    assert bool(found.change) == (verdict != "good")


NOT_JUDGED = [
    ("wheel-numbers-agree", {"wheel.offset": None}, "only one of offset and backspacing", ("wheel.offset",)),
    ("wheel-numbers-agree", {"wheel.backspacing": None}, "only one of offset and backspacing", ("wheel.backspacing",)),
    ("lower-pivot-clears-plate", {}, "the plate is not drawn yet", ("plate.height", "plate.spindle_from_top")),
    ("upper-pivot-clears-plate", {}, "the plate is not drawn yet", ("plate.height", "plate.spindle_from_top")),
]


@pytest.mark.parametrize(("check", "changes", "reason", "enter"), NOT_JUDGED)
def test_what_nobody_entered_is_not_judged_and_names_what_to_enter(
    finding: FindingWith, check: str, changes: dict[str, object], reason: str, enter: tuple[str, ...]
) -> None:
    found = finding(check, changes)
    assert found.verdict == "not judged" and reason in found.text.lower()
    assert found.waits_for == enter and found.change.startswith("To have it judged, enter ")


NOT_HERE = [
    ("swap-spacing", {"pivots.swap_spacing": None}, "no ready-made spare is asked for"),
    ("swap-spacing", {"pivots.swap_spacing": None, "pivots.spacing": None}, "no ready-made spare is asked for"),
    ("upper-pivot-clears-barrel", {"wheel.overall_width": "236.7 mm"}, "inboard of the wheel's inner lip"),
    ("lower-pivot-clears-barrel", {"wheel.overall_width": "146.9 mm"}, "inboard of the wheel's inner lip"),
    ("lower-pivot-clears-barrel", {"wheel.overall_width": "146.9 mm", "pivots.lower_radius": None},
     "inboard of the wheel's inner lip"),
    ("lower-pivot-clears-rotor", {"rotor.diameter": "207.3 mm"}, "beyond the rotor's edge"),
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.ground_offset": "56 mm"}, "does not sit inboard"),
    ("upper-pivot-clears-plate", {**BEHIND_PLATE, "pivots.ground_offset": "55 mm"}, "does not sit inboard"),
    # 22 of housing: the plate's bottom edge 22 above the lower pivot at 165 + 103, its top 22 below the upper at 113
    ("lower-pivot-clears-plate", {**BEHIND_PLATE, "plate.height": "268 mm"}, "ends clear of the lower pivot"),
    ("upper-pivot-clears-plate", {**BEHIND_PLATE, "plate.spindle_from_top": "113 mm"}, "ends clear of the upper pivot"),
]  # fmt: skip


@pytest.mark.parametrize(("check", "changes", "reason"), NOT_HERE)
def test_a_question_that_does_not_arise_says_why(
    finding: FindingWith, check: str, changes: dict[str, object], reason: str
) -> None:
    found = finding(check, changes)
    assert found.verdict == "does not apply"
    assert reason in found.text.lower() and found.change == "" and found.waits_for == ()


WAITING = [
    ("tyre-load", {"tyre.smallest": "31x10.50R15LT", "tyre.largest": "33x12.50R15LT"}, ("tyre.load_capacity",)),
    ("tyre-speed", {"tyre.smallest": "31x10.50R15LT", "tyre.largest": "33x12.50R15LT"}, ("tyre.speed_symbol",)),
    ("loaded-radius", {"tyre.loaded_radius": None, "tyre.smallest": None}, ("tyre.smallest",)),
    ("wheel-numbers-agree", {"wheel.offset": None, "wheel.backspacing": None}, ("wheel.offset", "wheel.backspacing")),
    ("wheel-numbers-agree", {"wheel.overall_width": None, "wheel.width": None}, ("wheel.width",)),
    ("wheel-load", {"wheel.load_rating": None}, ("wheel.load_rating",)),
    ("nut-seat", {"wheel.nut_seat": None}, ("wheel.nut_seat",)),
    ("nut-seat", {"wheel.nut_seat": None, "hub.nut_seat": None}, ("wheel.nut_seat", "hub.nut_seat")),
    ("stud-engagement", {"wheel.pad_thickness": None}, ("wheel.pad_thickness",)),
    ("caliper-clears-spokes", {"wheel.spoke_room": None}, ("wheel.spoke_room",)),
    ("rotor-thickness", {**CUT, "rotor.kept_plate_carries_hat": None}, ("rotor.kept_plate_carries_hat",)),
    ("rotor-thickness", {**CUT, "rotor.finished_thickness": None}, ("rotor.finished_thickness",)),
    ("rotor-thickness", {"rotor.minimum_thickness": None}, ("rotor.minimum_thickness",)),
    ("caliper-suits-rotor", {**CUT, "rotor.finished_thickness": None}, ("rotor.finished_thickness",)),
    ("bearing-near-tyre-centre", {"wheel.offset": None, "wheel.backspacing": None}, ("wheel.offset", "wheel.backspacing")),
    ("lower-pivot-clears-barrel", {"pivots.lower_radius": None}, ("pivots.lower_radius",)),
    ("upper-pivot-clears-barrel", {"pivots.upper_radius": None}, ("pivots.upper_radius",)),
    ("lower-pivot-clears-rotor", {"pivots.lower_radius": None}, ("pivots.lower_radius",)),
    ("pivot-shear", {"pivots.upper_kind": None, "pivots.upper_shear": None}, ("pivots.upper_shear",)),
    ("pivot-shear", {"pivots.lower_kind": None, "pivots.lower_shear": None}, ("pivots.lower_shear",)),
    ("swap-spacing", {"pivots.spacing": None}, ("pivots.spacing",)),
    ("trail-positive", {"pivots.castor": None}, ("pivots.castor",)),
    ("self-centring", {"job.corner_weight": None}, ("job.corner_weight",)),
]  # fmt: skip


@pytest.mark.parametrize(("check", "changes", "waits_for"), WAITING)
def test_a_check_without_what_it_needs_waits_for_it_and_is_never_skipped(
    finding: FindingWith, judged: JudgedWith, check: str, changes: dict[str, object], waits_for: tuple[str, ...]
) -> None:
    found = finding(check, changes)
    assert (found.verdict, found.waits_for) == ("waiting", waits_for)
    assert found.text.startswith("Waits for ") and found.change == ""
    assert judged(changes).verdict != "good"


@pytest.mark.parametrize("name", [name for name, asked in FIELDS.items() if asked.needed])
def test_leaving_out_any_needed_field_keeps_the_sheet_from_reading_as_clear(judged: JudgedWith, name: str) -> None:
    assert judged({name: None}).verdict == "unfinished"


ESTIMATED = [
    ("caliper-clears-barrel", {"wheel.barrel_inside_diameter": None}, "watch", ("wheel.barrel_inside_diameter",)),
    ("caliper-clears-barrel", {"wheel.barrel_inside_diameter": None, "caliper.reach_above_rotor": "34.5 mm"}, "watch",
     ("wheel.barrel_inside_diameter",)),  # 361 / 2 - 140 - 34.5 = 6: would be good if measured
    ("caliper-clears-barrel", {"wheel.barrel_inside_diameter": None, "caliper.reach_above_rotor": "38 mm"}, "stop",
     ("wheel.barrel_inside_diameter",)),
    ("lower-pivot-clears-barrel", {"wheel.barrel_inside_diameter": None, "wheel.overall_width": None}, "watch",
     ("wheel.barrel_inside_diameter", "wheel.overall_width")),
    ("upper-pivot-clears-barrel", {"wheel.overall_width": None}, "watch", ("wheel.overall_width",)),
    ("wheel-numbers-agree", {"wheel.overall_width": None}, "watch", ("wheel.overall_width",)),
    ("wheel-numbers-agree", {"wheel.overall_width": None, "wheel.offset": "22 mm"}, "stop", ("wheel.overall_width",)),
    ("bearing-near-tyre-centre", {"wheel.overall_width": None, "wheel.offset": None}, "watch", ("wheel.overall_width",)),
    ("lower-pivot-clears-rotor", {"wheel.overall_width": None, "wheel.offset": None}, "watch", ("wheel.overall_width",)),
]  # fmt: skip


@pytest.mark.parametrize(("check", "changes", "verdict", "measure"), ESTIMATED)
def test_a_verdict_on_an_estimate_is_never_better_than_watch_and_says_what_to_measure(
    finding: FindingWith, check: str, changes: dict[str, object], verdict: str, measure: tuple[str, ...]
) -> None:
    found = finding(check, changes)
    assert (found.verdict, found.estimated_from) == (verdict, measure)
    assert "This rests on an estimate." in found.text and found.change.startswith("Measure ")


def test_an_estimate_that_a_check_does_not_rest_on_leaves_it_good(finding: FindingWith) -> None:
    changes = {"wheel.overall_width": None, "wheel.backspacing": None}
    assert finding("bearing-near-tyre-centre", changes).verdict == "good"
    assert finding("lower-pivot-clears-rotor", changes).verdict == "good"


@pytest.mark.parametrize(
    ("check", "changes", "says"),
    [
        ("wheel-numbers-agree", {"wheel.offset": "22.7 mm"}, "nominal, bead-to-bead width"),
        ("wheel-numbers-agree", {"wheel.offset": "-2.7 mm"}, "nominal, bead-to-bead width"),
        ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "5 x 115 mm", "hub.bolt_circle": "5 x 114.3 mm"}, "near miss"),
        ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "5 x 4 1/2 in", "hub.bolt_circle": "5 x 115 mm"}, "near miss"),
        ("bolt-circle-wheel-hub", {"wheel.bolt_circle": "4 x 98 mm", "hub.bolt_circle": "4 x 100 mm"}, "near miss"),
        ("bolt-circle-rotor-hub", {"rotor.bolt_circle": "6 x 140.1 mm", "hub.bolt_circle": "6 x 139.7 mm"}, "near miss"),
        ("caliper-clears-barrel", {"caliper.reach_above_rotor": "45 mm"}, "hits the wheel barrel by 5 mm"),
        ("wheel-bore", {"wheel.centre_bore": "107 mm"}, "0.8 mm larger than the wheel's bore"),
        # 406.4 x 3 % = 12.192 and 6 % = 24.384; by tan 10 deg 2.150 and 4.300
        ("loaded-radius", {"tyre.loaded_radius": None}, "drops 12.19 mm and the ground offset grows by 2.15 mm"),
        ("loaded-radius", {"tyre.loaded_radius": None}, "24.38 mm and 4.3 mm"),
        ("tyre-load", {"tyre.smallest": "31x10.50R15LT"}, "Only one of the two size marks carries a load index"),
        ("tyre-load", {"tyre.smallest": "P225/70R15 100S"}, "divided by 1.10 (49 CFR 571.110)"),
        ("ground-offset-across-tyres", {"pivots.ground_offset": "0 mm"}, "changes sign"),
        # 44 - 12 - 35; and with 31, 1 mm of room
        ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "35 mm"}, "overlaps the plate by 3 mm"),
        ("lower-pivot-clears-plate", {**BEHIND_PLATE, "pivots.lower_radius": "31 mm"}, "clears the back of the plate by 1 mm"),
        ("upper-pivot-clears-plate", {**BEHIND_PLATE, "pivots.upper_radius": "35 mm"}, "upper pivot's housing overlaps"),
        ("pivot-shear", {"pivots.lower_shear": "single", "pivots.lower_retained": False}, "The lower pivot is in single"),
        ("no-rod-end-in-bending", {"pivots.lower_kind": "rod end", "pivots.upper_kind": "rod end"}, "upper and the lower"),
        ("tyre-rim-diameter", {"wheel.diameter": "16 in"}, "for a 15 in wheel"),
        ("rotor-thickness", {**CUT}, "nobody publishes"),
    ],
)  # fmt: skip
def test_what_a_check_says_names_the_trouble(
    finding: FindingWith, check: str, changes: dict[str, object], says: str
) -> None:
    assert says in finding(check, changes).text


def test_an_ordinary_bolt_circle_mismatch_is_not_called_a_near_miss(finding: FindingWith) -> None:
    for circle in ("5 x 135 mm", "6 x 5 in", "5 x 115 mm"):
        assert "near miss" not in finding("bolt-circle-wheel-hub", {"wheel.bolt_circle": circle}).text


def test_a_quarter_inch_is_beyond_a_limit_of_6_mm_and_the_limit_does_not_say_otherwise(finding: FindingWith) -> None:
    assert "1/4 in" not in trade().checks["wheel-numbers-agree"].note.watch
    changes = {"wheel.overall_width": "10 in", "wheel.backspacing": "5 in", "wheel.offset": "1/4 in"}
    assert finding("wheel-numbers-agree", changes).verdict == "stop"


def test_a_ground_offset_a_little_outboard_is_not_called_minus_something_inboard(finding: FindingWith) -> None:
    found = finding("ground-offset-usual", {"pivots.ground_offset": "-5 mm"})
    assert found.verdict == "good"
    assert "-5 mm" not in found.text or "inboard" not in found.text


def test_a_sheet_shown_in_inches_speaks_inches_alone_and_rounds_its_limits(
    read: Callable[[dict[str, object]], Sheet],
) -> None:
    found = judge(read({"caliper.reach_above_rotor": "35 mm"}), shown_in="inch").findings[0]
    assert found.check == "caliper-clears-barrel"
    assert "0.197 in" in found.text and "1/4 in or more is wanted" in found.text and "mm" not in found.text


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({}, "good"),
        ({"rotor.minimum_thickness": "21.5 mm"}, "watch"),
        ({"wheel.load_rating": None}, "watch"),  # only waits
        ({"pivots.swap_spacing": None}, "good"),  # what does not arise does not count
        ({"job.track": None}, "unfinished"),
        ({"job.track": None, "rotor.minimum_thickness": "21.5 mm"}, "unfinished"),
        ({"caliper.bleed_screw_on_top": False}, "stop"),
        ({"caliper.bleed_screw_on_top": False, "job.track": None}, "stop"),
        ({"caliper.bleed_screw_on_top": False, "rotor.minimum_thickness": "21.5 mm"}, "stop"),
        ({"wheel.barrel_inside_diameter": None}, "watch"),  # rests on an estimate
        ({"job.front_brake_share": None}, "good"),  # nothing needs it
    ],
)
def test_the_verdict_of_a_sheet(judged: JudgedWith, changes: dict[str, object], verdict: str) -> None:
    assert judged(changes).verdict == verdict


def test_an_entry_that_cannot_be_read_keeps_the_sheet_from_reading_as_clear(
    document: Callable[[dict[str, object]], dict[str, Any]],
) -> None:
    assert judged_document(document({"wheel.load_rating": "a lot"})).verdict == "unfinished"
    assert judged_document(document({"tyre.price_each": "cheap"})).verdict == "unfinished"


def test_findings_come_worst_first_then_in_step_order(judged: JudgedWith) -> None:
    result = judged({"pivots.inclination": "7 deg", "wheel.load_rating": None, "caliper.bleed_screw_on_top": False,
                     "tyre.loaded_radius": None, "pivots.swap_spacing": None})  # fmt: skip
    steps = [step.name for step in STEPS]
    places = [(WORST_FIRST.index(found.verdict), steps.index(found.step)) for found in result.findings]
    assert [verdict for verdict, _ in places] == sorted(verdict for verdict, _ in places)
    assert places == sorted(places)


def test_of_the_stops_entries_that_cannot_be_come_before_what_may_only_follow_from_them(judged: JudgedWith) -> None:
    """Mounting ears in the turning flange, of the hub's step, before a caliper that cannot be bled, of the step before it."""
    result = judged({"hub.mount_flange_thickness": "55 mm", "caliper.bleed_screw_on_top": False})
    stops = [found.check for found in result.findings if found.verdict == "stop"]
    assert stops.index("hub-ears-along-hub") < stops.index("bleed-screw")


def planted(function: Callable[..., Any]) -> Graph:
    """The real graph with one more check, or with one more value and a check on it."""
    if function is planted_value:
        return Graph(FIELDS, [*VALUES, function], [*CHECKS, planted_on_value], STEPS, FACTS)
    return Graph(FIELDS, VALUES, [*CHECKS, function], STEPS, FACTS)


@check("planted", step="wheel", title="Planted", good="x", source=COMMON_PRACTICE, grade="standard")
def planted_check_that_crashes(wheel_offset: Mm) -> Judgement:
    raise RuntimeError("the planted reason")


@value("planted", formula="x", source=COMMON_PRACTICE)
def planted_value(wheel_offset: Mm) -> Mm:
    raise RuntimeError("the planted reason")


@check("planted", step="wheel", title="Planted", good="x", source=COMMON_PRACTICE, grade="standard")
def planted_on_value(planted_value: Mm | None) -> Judgement:
    return Judgement("good", "fine")


@pytest.mark.parametrize("function", [planted_check_that_crashes, planted_value])
def test_a_check_that_crashes_or_rests_on_a_crash_is_a_stop_with_its_reason(
    monkeypatch: pytest.MonkeyPatch, read: Read, function: Callable[..., Any]
) -> None:
    graph = planted(function)
    monkeypatch.setitem(GROUP_OF, "planted", "fit")
    monkeypatch.setattr("rules.judging.judge.trade", lambda: graph)
    result = judge(read({}))
    assert result.verdict == "stop"
    assert (result.findings[0].check, result.findings[0].verdict) == ("planted", "stop")
    assert "the planted reason" in result.findings[0].text
    assert "do not build on it" in result.findings[0].change
    assert [found.check for found in result.findings if found.verdict == "stop"] == ["planted"]


@check(
    "planted",
    step="wheel",
    title="Planted",
    good="x",
    source=COMMON_PRACTICE,
    grade="standard",
    try_changing=("wheel.offset",),
)
def planted_check_with_a_lever(wheel_offset: Mm) -> Judgement:
    return Judgement("good" if wheel_offset < 15 else "watch" if wheel_offset < 25 else "stop", "So it is.")


@pytest.mark.parametrize(("offset", "verdict"), [("10 mm", "good"), ("20 mm", "watch"), ("30 mm", "stop")])
def test_what_is_not_good_and_says_no_change_names_what_can_be_changed(
    monkeypatch: pytest.MonkeyPatch, read: Read, offset: str, verdict: str
) -> None:
    graph = planted(planted_check_with_a_lever)
    monkeypatch.setitem(GROUP_OF, "planted", "fit")
    monkeypatch.setattr("rules.judging.judge.trade", lambda: graph)
    found = next(found for found in judge(read({"wheel.offset": offset})).findings if found.check == "planted")
    change = "" if verdict == "good" else "What can be changed for it: offset."
    assert (found.verdict, found.change) == (verdict, change)


@check("planted", step="wheel", title="Planted", good="x", source=COMMON_PRACTICE, grade="standard")
def planted_check_not_here(wheel_offset: Mm) -> Judgement:
    raise DoesNotApply("no such part")


def test_a_check_that_does_not_apply_leaves_the_sheet_good(monkeypatch: pytest.MonkeyPatch, read: Read) -> None:
    graph = planted(planted_check_not_here)
    monkeypatch.setitem(GROUP_OF, "planted", "fit")
    monkeypatch.setattr("rules.judging.judge.trade", lambda: graph)
    result = judge(read({}))
    assert result.verdict == "good"
    assert next(found.text for found in result.findings if found.check == "planted") == "No such part."


COMPARE_THICKNESSES = {"finished-below-new"}
"""Checks that compare the two entries themselves, and say both figures."""


def test_a_rotor_finished_thicker_than_new_stops_what_rests_on_it(judged: JudgedWith) -> None:
    result = judged({"rotor.finished_thickness": "23 mm"})
    stopped = {found.check for found in result.findings if found.verdict == "stop"}
    assert stopped >= {
        "rotor-thickness", "caliper-suits-rotor", "caliper-clears-spokes", "lower-pivot-clears-rotor", "room",
        "finished-below-new",
    }  # fmt: skip
    told = [found for found in result.findings if found.verdict == "stop" and found.check not in COMPARE_THICKNESSES]
    why = "he finished thickness is more than the new thickness."
    # Both are told by what takes nothing else, and all that cannot be judged for it says so.
    assert [found.text for found in told if not found.text.startswith("Not judged")] == [f"T{why}"]
    follows = f"Not judged. This follows from “{told[0].title}”: t{why}"
    assert {found.text for found in told[1:]} == {follows}
    assert not any("fault in the program" in found.change for found in result.findings)
    assert all(found.change for found in told)


@pytest.mark.parametrize(
    ("wanted", "text"),
    [
        ("wheel_offset", "10 mm"),
        ("axis_tilt", "11.6 deg"),
        ("return_moment_20_deg", "19.26 N m"),
        ("wheel.diameter", "381 mm"),
        ("pivots.inclination", "10 deg"),
        ("job.use", "trail"),
        ("hub.mount_bolts", "4"),
        ("hub.stud_thread", "12 x 1.5 mm"),
        ("wheel.bolt_circle", "6 x 135 mm"),
        ("tyre.smallest", "31x10.50R15LT 109Q"),
        ("caliper.bleed_screw_on_top", "yes"),
        ("pivots.upper_retained", ""),
    ],
)
def test_a_value_or_answer_is_shown_in_the_sheets_units(judged: JudgedWith, wanted: str, text: str) -> None:
    assert shown(named(wanted), judged({})) == text


def test_a_value_can_be_shown_in_the_other_units(judged: JudgedWith) -> None:
    assert shown(named("wheel.diameter"), judged({}), "inch") == "15 in"
    assert shown(named("caliper.bleed_screw_on_top"), judged({"caliper.bleed_screw_on_top": False}), "inch") == "no"


def test_entries_that_cannot_stand_together_are_not_called_a_fault_in_the_program(finding: FindingWith) -> None:
    found = finding("rotor-thickness", {"rotor.finished_thickness": "23 mm"})
    assert found.verdict == "stop"
    assert found.text == "The finished thickness is more than the new thickness."
    assert "fault in the program" not in found.change
    assert found.change.startswith("Put right finished thickness or thickness new.")


@pytest.mark.parametrize("check", ["caliper-clears-spokes", "lower-pivot-clears-rotor", "room"])
def test_the_entries_to_check_are_those_that_cannot_stand_together(finding: FindingWith, check: str) -> None:
    """Wherever it shows: the reach of a caliper or the place of a pivot has nothing to do with a rotor's thickness."""
    found = finding(check, {"rotor.finished_thickness": "23 mm"})
    assert found.change.startswith("Put right finished thickness or thickness new.")


def test_one_wrong_figure_is_told_once_and_the_rest_follows_from_it() -> None:
    """A caliper as long as its rotor is wide has a check of its own; what needs the caliper's shape cannot be judged."""
    sheet = document("dune_wren_finished")
    findings = judge(read_sheet({**sheet, "caliper": {**sheet["caliper"], "length": "14 in"}})).findings
    stops = [one for one in findings if one.verdict == "stop"]
    assert stops[0].check == "caliper-along-rotor" and len(stops) > 3
    assert all(one.text.startswith(f"Not judged. This follows from “{stops[0].title}”:") for one in stops[1:])
    assert all(one.change for one in stops)


def test_an_axis_that_leans_outboard_is_named_first_and_in_what_could_not_be_judged_for_it() -> None:
    sheet = document("scree_ox_strength")
    leaning = {**sheet, "pivots": {**sheet["pivots"], "inclination": "-8 deg"}}
    findings = judge(read_sheet(leaning)).findings
    assert findings[0].check == "inclination-usual" and findings[0].verdict == "stop"
    failed = [one for one in findings if "straight at the steering axis" in one.text]
    assert failed and {one.change for one in failed} == {"Check steering-axis inclination, out of the usual range."}
    assert findings.index(failed[0]) > max(
        place for place, one in enumerate(findings) if one.verdict == "stop" and one not in failed
    )


@pytest.mark.parametrize("bolts", [2, 3, 5])
def test_hub_bolts_that_two_spacings_do_not_place_ask_for_their_circle(bolts: int) -> None:
    sheet = document("dune_wren_finished")
    hub = {**sheet["hub"], "mount_bolts": bolts}
    asked = judge(read_sheet({**sheet, "hub": hub}), light=True)
    assert asked.missing == ("hub.mount_circle",) and asked.verdict in ("stop", "unfinished")
    told = judge(read_sheet({**sheet, "hub": {**hub, "mount_circle": "5 in"}}), light=True)
    assert told.missing == ()


@pytest.mark.parametrize(
    ("weak", "half"),
    [
        ({"upright.beam_bottom": "2 in"}, {"upright.beam_bottom": None}),
        ({"plate.thickness": "3/4 in"}, {"plate.hole_above": "1 in"}),
        ({"plate.thickness": "3/4 in"}, {"plate.hole_above_spindle": "3 in"}),
    ],
)
def test_a_stop_of_the_upright_does_not_go_with_a_figure_left_out(
    weak: dict[str, object], half: dict[str, object]
) -> None:
    """A plate too thin, or a beam that ends too soon: with its end or half of a hole blank they wait, and so does the sheet."""
    sheet = edited(document("scree_ox_strength"), weak)
    assert judge(read_sheet(sheet), advice=False).verdict == "stop"
    judged = judge(read_sheet(edited(sheet, half)), advice=False)
    assert judged.verdict == "unfinished" and len(judged.missing) == 1
    assert any(one.verdict == "waiting" and one.check == "beam-seam-weld" for one in judged.findings)
