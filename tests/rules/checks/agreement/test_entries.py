"""Entries compared otherwise than one against one: marks, metals, grades, pads, lugs. Limits by hand on the base sheet.

BASE in `tests/support/base_sheet.py`: tyres 31x10.50R15LT 109Q and 33x12.50R15LT 108Q, so 787.4 and 838.2 mm, middle 812.8 mm;
rotor 280 x 22 mm; wheel 240 mm overall, backspacing 130 mm, so 110 mm to the outer lip; stud 45, hat 6, wheel 12 mm, 12 mm
thread; bolt circles 135 mm; spoke room 12, face to rotor 44, outboard reach 44 mm, so 12 mm before the spokes.
"""

from collections.abc import Callable, Mapping

import pytest

from rules.judging.judge import Finding

Ask = Callable[[str, Mapping[str, object]], Finding]
RING = {"rotor.band_inside_diameter": "180 mm"}
# pi / 4 x (280^2 - 180^2) x 22 = 794,823 mm3; x 7.2e-6 kg = 5.7227 kg of solid iron.
PADS = {**RING, "brakes.effective_radius": "115 mm", "brakes.pad_height": "50 mm"}
# Band from 90 to 140 mm: the pad of 50 mm at 115 mm fills it, 90 to 140.
LUGS = {"bolts.upper_ball_width": "20 mm", "bolts.upper_gap": "15 mm", "bolts.upper_lug_thickness": "10 mm"}
# 20 + 2 x 15 + 2 x 10 = 70 mm.
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
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "110 mm"}, "good"),
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "111 mm"}, "stop"),
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "-130 mm"}, "good"),
        ("spoke-room-inside-wheel", {"wheel.spoke_room": "-131 mm"}, "stop"),
        # 0.82 x 135 = 110.7, 0.95 x 135 = 128.25.
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "110.6 mm"}, "good"),
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "110.8 mm"}, "watch"),
        ("wheel-inside-bolt-circle", {"wheel.centre_bore": "128.3 mm"}, "stop"),
        ("rotor-inside-bolt-circle", {"rotor.centre_bore": "128.3 mm"}, "stop"),
        ("hub-inside-bolt-circle", {"hub.pilot_diameter": "128.3 mm"}, "stop"),
        # 0.42 x 5.7227 = 2.404; 0.2 x = 1.1445; 1.02 x = 5.837.
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "2.41 kg"}, "good"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "2.40 kg"}, "watch"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "1.14 kg"}, "stop"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "5.83 kg"}, "good"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.ring_mass": "5.84 kg"}, "stop"),
        # A solid ring weighs what it measures: 0.85 x 5.7227 = 4.864.
        ("ring-not-heavier-than-iron", {**RING, "rotor.style": "solid", "rotor.ring_mass": "4.87 kg"}, "good"),
        ("ring-not-heavier-than-iron", {**RING, "rotor.style": "solid", "rotor.ring_mass": "4.86 kg"}, "watch"),
        # 2.3 x 12 = 27.6 mm, and 18 mm are passed through: 45.6 mm.
        ("stud-not-too-long", {"hub.stud_length": "45.6 mm"}, "good"),
        ("stud-not-too-long", {"hub.stud_length": "45.7 mm"}, "watch"),
        ("caliper-round-its-rotor", {"caliper.outboard_reach": "11.1 mm"}, "good"),
        ("caliper-round-its-rotor", {"caliper.outboard_reach": "11 mm"}, "stop"),
        ("caliper-near-spokes", {"wheel.spoke_room": "18 mm"}, "good"),
        ("caliper-near-spokes", {"wheel.spoke_room": "18.1 mm"}, "watch"),
        ("outboard-reach-its-own", {"caliper.outboard_reach": "22 mm"}, "watch"),
        ("outboard-reach-its-own", {"caliper.outboard_reach": "22.1 mm"}, "good"),
        # 2 mm off the band at one end is good, 5 mm is the most.
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "117 mm"}, "good"),
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "117.1 mm"}, "watch"),
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "110 mm"}, "watch"),
        ("pads-on-rotor", {**PADS, "brakes.effective_radius": "109.9 mm"}, "stop"),
        ("pad-fills-band", {**PADS, "brakes.pad_height": "35 mm"}, "good"),
        ("pad-fills-band", {**PADS, "brakes.pad_height": "34.9 mm"}, "watch"),
        # 0.85 x 70 = 59.5, 1.15 x = 80.5, 0.2 x = 14, 3 x = 210.
        ("upper-lugs-hold-ball", {**LUGS, "joint_upper.apart": "59.5 mm"}, "good"),
        ("upper-lugs-hold-ball", {**LUGS, "joint_upper.apart": "80.6 mm"}, "watch"),
        ("upper-lugs-hold-ball", {**LUGS, "joint_upper.apart": "13.9 mm"}, "stop"),
        ("upper-lugs-hold-ball", {**LUGS, "joint_upper.apart": "211 mm"}, "stop"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "409 MPa"}, "good"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "410 MPa"}, "watch"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "216 MPa"}, "watch"),
        ("yield-suits-metal", {**A36, "upright.certificate_yield": "683 MPa"}, "stop"),
        ("one-metal", {**A36, "plate.metal": "mild steel plate"}, "good"),
        ("one-metal", {**A36, "plate.metal": "4130"}, "stop"),
        ("one-metal", {"upright.material": "4130 normalised", "joint_lower.metal": "4130"}, "good"),
        ("one-metal", {"upright.material": "4130 normalised", "joint_lower.metal": "mild steel"}, "stop"),
        ("one-metal", A36, "does not apply"),
        ("filler-suits-metal", {**A36, "joint_upper.filler": "er70s-6"}, "good"),
        ("filler-suits-metal", {"upright.material": "6061-t6", "joint_upper.filler": "er70s-6"}, "stop"),
        ("filler-suits-metal", {"upright.material": "6061-t6", "joint_upper.filler": "other"}, "good"),
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
    [("ball", 0.8, "good"), ("ball", 0.79, "watch"), ("ball", 2.2, "good"), ("ball", 2.21, "watch"),
     ("roller", 0.4, "good"), ("roller", 0.39, "watch"), ("roller", 0.95, "good"), ("roller", 0.96, "watch")],
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
