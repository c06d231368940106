"""Entries compared otherwise than one against one: marks, metals, grades, pads, lugs. Limits by hand on the base sheet.

BASE in `tests/support/base_sheet.py`: tyres 31x10.50R15LT 109Q and 33x12.50R15LT 108Q, so 787.4 and 838.2 mm, middle 812.8 mm;
rotor 280 x 22 mm; wheel 240 mm overall, backspacing 130 mm, so 110 mm to the outer lip; stud 45, hat 6, wheel 12 mm, 12 mm
thread; bolt circles 135 mm; spoke room 12, face to rotor 44, outboard reach 44 mm, so 12 mm before the spokes.
"""

from collections.abc import Callable, Mapping
from typing import Any

import pytest

from rules.judging.judge import Finding, Judged
from tests.support.judging import judged_document

Ask = Callable[[str, Mapping[str, object]], Finding]
RING = {"rotor.band_inside_diameter": "180 mm"}
# pi / 4 x (280^2 - 180^2) x 22 = 794,823 mm3; x 7.2e-6 kg = 5.7227 kg of solid iron.
PADS = {**RING, "brakes.effective_radius": "115 mm", "brakes.pad_height": "50 mm"}
# Band from 90 to 140 mm: the pad of 50 mm at 115 mm fills it, 90 to 140.
LUGS = {"bolts.upper_ball_width": "20 mm", "bolts.upper_gap": "15 mm", "bolts.upper_lug_thickness": "10 mm"}
# 20 + 2 x 15 + 2 x 10 = 70 mm.
ARM = {"steering.tie_rod_inboard": "140 mm", "steering.tie_rod_above": "0 mm"}
TWO = {"caliper.piston_diameter": "30 mm", "caliper.pistons_per_side": 2}
THIN = {"weld_upper.thickness_one": "8 mm", "weld_upper.thickness_two": "12 mm"}
REACH = {"steering.tie_rod_end_reach": "20 mm"}
A36 = {"upright.material": "a36 plate"}
# The lowest of what is printed: 33 ksi = 227.53 MPa; 1.8 x = 409.5, 3 x = 682.6, 0.95 x = 216.2 MPa.


@pytest.mark.parametrize(
    ("check", "changes", "verdict"),
    [
        ("tyres-in-order", {}, "good"),
        ("tyres-in-order", {"tyre.smallest": "33x12.50R15LT 108Q"}, "good"),
        ("tyres-in-order", {"tyre.smallest": "34x12.50R15LT 113Q"}, "stop"),
        # 812.8 x 0.98 = 796.54, x 0.92 = 747.8 and x 1.08 = 877.8.
        ("design-diameter-agrees", {"tyre.design_diameter": "797 mm"}, "good"),
        ("design-diameter-agrees", {"tyre.design_diameter": "797 mm", "tyre.largest": None}, "not judged"),
        ("design-diameter-agrees", {"tyre.design_diameter": "796 mm"}, "watch"),
        ("design-diameter-agrees", {"tyre.design_diameter": "748 mm"}, "watch"),
        ("design-diameter-agrees", {"tyre.design_diameter": "747 mm"}, "stop"),
        ("design-diameter-agrees", {"tyre.design_diameter": "878 mm"}, "stop"),
        # Index 108 is 1000 kg, 109 is 1030: the smaller counts. 1.02 x = 1020, 0.3 x = 300.
        ("tyre-load-agrees", {"tyre.load_capacity": "1020 kg"}, "good"),
        ("tyre-load-agrees", {"tyre.load_capacity": "1021 kg"}, "stop"),
        ("tyre-load-agrees", {"tyre.load_capacity": "300 kg"}, "good"),
        ("tyre-load-agrees", {"tyre.load_capacity": "299 kg"}, "watch"),
        ("speed-symbol-agrees", {"tyre.speed_symbol": "Q"}, "good"),
        ("speed-symbol-agrees", {"tyre.speed_symbol": "S"}, "stop"),
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "98 mm"}, "good"),  # 110 to the outer lip, a pad of 12
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "104 mm"}, "watch"),
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "105 mm"}, "stop"),
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "-130 mm"}, "good"),
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "-131 mm"}, "stop"),
        # 0.82 x 135 = 110.7, 0.95 x 135 = 128.25.
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "110.6 mm"}, "good"),
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "110.8 mm"}, "watch"),
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "128.3 mm"}, "stop"),
        # Studs of 12 mm on 135 mm: at 123 mm the bore touches them.
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "122.8 mm"}, "watch"),
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "123.2 mm"}, "stop"),
        ("rotor-inside-bolt-circle", {"rotor.centre_bore": "123.2 mm"}, "stop"),
        ("rotor-inside-bolt-circle", {"rotor.centre_bore": "128.3 mm"}, "stop"),
        ("hub-inside-bolt-circle", {"hub.pilot_diameter": "128.3 mm"}, "stop"),
        # 0.46 x 5.7227 = 2.632; 0.88 x = 5.036; 0.2 x = 1.1445; 1.02 x = 5.837.
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "2.64 kg"}, "good"),
        # A small one: pi / 4 x (160^2 - 140^2) x 22 = 103,673 mm3, 0.746 kg of solid iron, of which 0.45 kg is 0.6.
        (
            "ring-not-heavier-than-iron",
            {"rotor.diameter": "160 mm", "rotor.band_inside_diameter": "140 mm", "rotor.ring_mass": "0.45 kg"},
            "good",
        ),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "2.63 kg"}, "watch"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "5.03 kg"}, "good"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "5.04 kg"}, "watch"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "1.14 kg"}, "stop"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.style": "solid", "rotor.ring_mass": "5.83 kg"}, "good"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "5.84 kg"}, "stop"),
        # A solid ring weighs what it measures, nearly: 5.036 kg and more.
        ("ring-not-heavier-than-iron", {**RING, "rotor.style": "solid", "rotor.ring_mass": "5.04 kg"}, "good"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.style": "solid", "rotor.ring_mass": "5.03 kg"}, "watch"),
        # One plate of 25 mm: 10.5 is 0.42 of it, 12.5 half.
        *(
            (
                "rotor-like-its-style",
                {"rotor.style": "cut to one plate", "rotor.thickness": "25 mm", "rotor.finished_thickness": finished},
                verdict,
            )
            for finished, verdict in (
                ("10.5 mm", "good"),
                ("10.6 mm", "watch"),
                ("12.5 mm", "watch"),
                ("12.6 mm", "stop"),
            )
        ),
        # 2.3 x 12 = 27.6 mm, and 18 mm are passed through: 45.6 mm.
        ("stud-not-too-long", {"hub.stud_length": "45.6 mm"}, "good"),
        ("stud-not-too-long", {"hub.stud_length": "45.7 mm"}, "watch"),
        ("caliper-round-its-rotor", {"caliper.outboard_reach": "11.1 mm"}, "good"),
        ("caliper-round-its-rotor", {"caliper.outboard_reach": "11 mm"}, "stop"),
        ("caliper-near-spokes", {"wheel.spoke_room": "19 mm"}, "good"),
        ("caliper-near-spokes", {"wheel.spoke_room": "19.1 mm"}, "watch"),
        ("line-read-twice", {}, "good"),
        ("line-read-twice", {"caliper.outboard_reach": "22 mm"}, "watch"),  # and the rotor it was made for, 22 mm
        ("line-read-twice", {"caliper.outboard_reach": "22.1 mm"}, "good"),
        # 110 km/h on the base sheet, a trail car.
        ("speed-suits-use", {"job.top_speed": "150 km/h"}, "good"),
        ("speed-suits-use", {"job.top_speed": "151 km/h"}, "watch"),
        ("speed-suits-use", {"job.top_speed": "69 km/h"}, "watch"),
        ("speed-suits-use", {"job.use": "race", "job.top_speed": "210 km/h"}, "good"),
        # The base caliper stands straight behind.
        ("caliper-beside-axle", {"caliper.clock": "-60 deg"}, "good"),
        ("caliper-beside-axle", {"caliper.clock": "-59 deg"}, "watch"),
        ("caliper-beside-axle", {"caliper.clock": "116 deg"}, "watch"),
        ("caliper-on-its-side", {"caliper.side": "behind"}, "good"),
        ("caliper-on-its-side", {"caliper.side": "ahead"}, "stop"),
        ("caliper-on-its-side", {}, "not judged"),
        ("caliper-on-its-side", {"caliper.clock": "180 deg"}, "does not apply"),
        ("caliper-in-its-quarter", {"weld_caliper_bracket.caliper_stands": "behind"}, "good"),
        ("caliper-in-its-quarter", {"weld_caliper_bracket.caliper_stands": "ahead"}, "stop"),
        (
            "caliper-in-its-quarter",
            {"caliper.clock": "-149 deg", "weld_caliper_bracket.caliper_stands": "below"},
            "good",
        ),
        (
            "caliper-in-its-quarter",
            {"caliper.clock": "170 deg", "weld_caliper_bracket.caliper_stands": "below"},
            "good",
        ),
        (
            "caliper-in-its-quarter",
            {"caliper.clock": None, "caliper.side": "ahead", "weld_caliper_bracket.caliper_stands": "behind"},
            "stop",
        ),
        ("caliper-away-from-arm", {**ARM, "steering.tie_rod_ahead": "120 mm"}, "good"),
        ("caliper-away-from-arm", {**ARM, "steering.tie_rod_ahead": "-120 mm"}, "watch"),
        # Two pistons of 30 mm are 60 mm long: 0.45 and 0.88 of the pad are 133.3 and 68.2 mm.
        ("pistons-along-pad", {**TWO, "brakes.pad_length": "133 mm"}, "good"),
        ("pistons-along-pad", {**TWO, "brakes.pad_length": "134 mm"}, "watch"),
        ("pistons-along-pad", {**TWO, "brakes.pad_length": "68 mm"}, "watch"),
        # The thinner part is 8 mm: half of it is 4, 0.98 of it 7.84.
        ("upper-leg-suits-metal", {**THIN, "weld_upper.leg": "4 mm"}, "good"),
        ("upper-leg-suits-metal", {**THIN, "weld_upper.leg": "3.9 mm"}, "watch"),
        ("upper-leg-suits-metal", {**THIN, "weld_upper.leg": "7.9 mm"}, "watch"),
        # A reach of 20 mm is 400 mm2: 52 and 102 kN.
        ("tie-rod-rating-and-reach", {**REACH, "loads.tie_rod_rating": "52 kN"}, "good"),
        ("tie-rod-rating-and-reach", {**REACH, "loads.tie_rod_rating": "51 kN"}, "watch"),
        ("tie-rod-rating-and-reach", {**REACH, "loads.tie_rod_rating": "103 kN"}, "watch"),
        # 2 mm off the band at one end is good, 5 mm is the most.
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "117 mm"}, "good"),
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "117.1 mm"}, "watch"),
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "110 mm"}, "watch"),
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "109.9 mm"}, "stop"),
        ("pad-fills-band", {**PADS, "brakes.pad_height": "35 mm"}, "good"),
        ("pad-fills-band", {**PADS, "brakes.pad_height": "34.9 mm"}, "watch"),
        # 0.85 x 70 = 59.5, 1.15 x = 80.5, 0.2 x = 14, 3 x = 210.
        ("upper-lugs-hold-ball", {**LUGS, "weld_upper.apart": "59.5 mm"}, "good"),
        ("upper-lugs-hold-ball", {**LUGS, "weld_upper.apart": "80.6 mm"}, "watch"),
        ("upper-lugs-hold-ball", {**LUGS, "weld_upper.apart": "13.9 mm"}, "stop"),
        ("upper-lugs-hold-ball", {**LUGS, "weld_upper.apart": "211 mm"}, "stop"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "409 MPa"}, "good"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "410 MPa"}, "watch"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "216 MPa"}, "watch"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "546 MPa"}, "watch"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "547 MPa"}, "stop"),
        ("one-metal", {**A36, "plate.metal": "mild steel plate"}, "good"),
        ("one-metal", {**A36, "plate.metal": "4130"}, "stop"),
        ("one-metal", {"upright.material": "4130 normalised", "weld_lower.metal": "4130"}, "good"),
        ("one-metal", {"upright.material": "4130 normalised", "weld_lower.metal": "mild steel"}, "stop"),
        ("one-metal", A36, "does not apply"),
        ("filler-suits-metal", {**A36, "weld_upper.filler": "er70s-6"}, "good"),
        ("filler-suits-metal", {"upright.material": "6061-t6", "weld_upper.filler": "er70s-6"}, "stop"),
        ("filler-suits-metal", {"upright.material": "6061-t6", "weld_upper.filler": "other"}, "good"),
        # SAE J429 is of inch bolts, ISO 898-1 of metric ones; BASE has 12 x 1.75 mm hub bolts and 12 x 1.5 mm studs.
        ("hub-bolt-grade-of-its-system", {"hub.mount_bolt_grade": "8.8"}, "good"),
        ("hub-bolt-grade-of-its-system", {"hub.mount_bolt_grade": "8"}, "stop"),
        ("hub-bolt-grade-of-its-system", {"hub.mount_bolt_grade": "six lines"}, "stop"),
        ("hub-bolt-grade-of-its-system", {"hub.mount_bolt_thread": "1/2-13", "hub.mount_bolt_grade": "8"}, "good"),
        ("hub-bolt-grade-of-its-system", {"hub.mount_bolt_thread": "1/2-13", "hub.mount_bolt_grade": "8.8"}, "stop"),
        ("stud-grade-of-its-system", {"bolts.stud_grade": "10.9"}, "good"),
        ("stud-grade-of-its-system", {"bolts.stud_grade": "grade 8"}, "stop"),
        (
            "upper-pivot-grade-of-its-system",
            {"bolts.upper_thread": "14 x 2 mm", "bolts.upper_grade": "grade 5"},
            "stop",
        ),
        ("lower-pivot-grade-of-its-system", {"bolts.lower_thread": "5/8-18", "bolts.lower_grade": "12.9"}, "stop"),
        ("unusual-answers", {}, "good"),
        ("unusual-answers", {"wheel.pad_thickness": "20 mm"}, "good"),
        ("unusual-answers", {"wheel.pad_thickness": "20.1 mm"}, "watch"),
    ],
)
def test_the_verdict_at_and_beyond_each_limit(
    finding: Ask, check: str, changes: Mapping[str, object], verdict: str
) -> None:
    assert finding(check, changes).verdict == verdict


@pytest.mark.parametrize(
    ("kind", "ratio", "verdict"),
    [("ball", 0.95, "good"), ("ball", 0.94, "watch"), ("ball", 1.85, "good"), ("ball", 1.86, "watch"),
     ("roller", 0.48, "good"), ("roller", 0.47, "watch"), ("roller", 0.92, "good"), ("roller", 0.93, "watch")],
)  # fmt: skip
def test_the_two_ratings_of_one_bearing(finding: Ask, kind: str, ratio: float, verdict: str) -> None:
    ratings = {"hub.rolling_element": kind, "hub.static_rating": "50 kN", "hub.dynamic_rating": f"{50 * ratio} kN"}
    assert finding("ratings-like-their-kind", ratings).verdict == verdict


@pytest.mark.parametrize(
    ("arm_end", "frame_end", "verdict"),
    # Hinge 300 from the centre, outer pivot 800 - 25 - 275 x tan 10 deg = 726.5: an arm of 426.5. A shock upright moves
    # 110 / 426.5 = 0.26, 170 / 426.5 = 0.40 or 460 / 426.5 = 1.08 of what the wheel does.
    [("410 mm", "410 mm", "watch"), ("470 mm", "470 mm", "good"), ("760 mm", "760 mm", "watch")],
)
def test_a_shock_at_the_hinge_or_beyond_the_arms_end_is_odd(
    finding: Ask, moving: dict[str, object], arm_end: str, frame_end: str, verdict: str
) -> None:
    ends = {"spring.arm_end_from_centre": arm_end, "spring.frame_end_from_centre": frame_end}
    assert finding("shock-moves-with-wheel", {**moving, **ends}).verdict == verdict


def test_the_words_say_both_figures_and_what_to_do(finding: Ask) -> None:
    found = finding("barrel-inside-wheel", {"wheel.barrel_inside_diameter": "412 mm"})
    assert found.verdict == "stop" and "412 mm" in found.text and "381 mm" in found.text and "cannot be" in found.text
    assert "own unit" in found.change


def test_two_lines_that_often_are_alike_are_asked_about_and_stay_good(
    judged: Callable[[Mapping[str, object]], Judged], document: Callable[[Mapping[str, object]], dict[str, Any]]
) -> None:
    alike = judged({})  # both housings of the base sheet reach 22 mm
    assert "pivots.lower_radius" in alike.asks_about and "wheel.pad_thickness" in alike.asks_about
    assert {found.verdict for found in alike.findings if found.check == "line-read-twice"} == {"good"}
    apart = judged({"pivots.lower_radius": "23 mm"})
    assert "pivots.lower_radius" not in apart.asks_about
    yes = judged_document({**document({}), "confirmed": {"pivots.lower_radius": "22 mm"}})
    assert "pivots.lower_radius" not in yes.asks_about
    assert any("confirmed as it stands" in found.text for found in yes.findings if found.check == "line-read-twice")
