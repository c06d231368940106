"""Levers of the welds by hand, on the base sheet with plate, beam, bracket and tie-rod end in round figures.

Mounting face 56 mm inboard of the tyre's middle, hub face 4 outboard of it, rotor's middle 34 inboard. Pivots from the
mounting face: lower 17.4899197, upper 62.3985161 (by hand in test_values.py).
"""

from collections.abc import Callable

import pytest

from rules.judging.judge import Judged
from rules.judging.trade import trade

JudgedWith = Callable[[dict[str, object]], Judged]

WELDED: dict[str, object] = {
    "plate.thickness": "12 mm", "plate.width": "160 mm", "plate.spindle_from_front": "70 mm",
    "plate.bracket_thickness": "12 mm", "upright.beam": "box", "upright.beam_width": "120 mm",
    "upright.beam_depth": "60 mm", "upright.steering_arm_root_above": "-50 mm", "brakes.effective_radius": "115 mm",
    "weld_caliper_bracket.caliper_stands": "ahead", "steering.tie_rod_ahead": "-126 mm",
    "steering.tie_rod_inboard": "144 mm", "steering.tie_rod_above": "-40 mm",
}  # fmt: skip
FLAT = {"upright.beam": "none"}
# Lugs on a plate that reaches 140 up and down, 70 ahead and 90 behind; runs of 150 fore and aft, 60 one above the other: a
# weld's middle lies at most 110 up or down, and 5 to 15 behind.
LUGS: dict[str, object] = {
    "plate.height": "280 mm", "plate.spindle_from_top": "140 mm",
    **{f"weld_{which}.{key}": entry for which in ("upper", "lower") for key, entry in (
        ("runs_lie", "fore and aft"), ("apart_lies", "up and down"), ("run", "150 mm"), ("apart", "60 mm"))},
}  # fmt: skip
BY_HAND: list[tuple[dict[str, object], str, float]] = [
    ({}, "upper_weld_lever_inboard", 50.3985161),  # 62.3985161 - 12
    ({}, "lower_weld_lever_inboard", 5.4899197),  # 17.4899197 - 12
    (LUGS, "upper_weld_lever_above", 19.6893061),  # pivot 129.6893061 up (by hand in test_values.py), less 110
    (LUGS, "lower_weld_lever_above", -15.0),  # pivot 125 down
    ({**LUGS, "plate.height": "320 mm", "plate.spindle_from_top": "160 mm"}, "upper_weld_lever_above", 0.0),
    (
        {**LUGS, "weld_upper.apart_lies": "in and out"},
        "upper_weld_lever_above",
        0.0,
    ),  # its middle up to the plate's end
    (LUGS, "upper_weld_lever_ahead", 0.0),  # pivot 13.6308953 behind
    (
        {**LUGS, "weld_upper.run": "170 mm"},
        "upper_weld_lever_ahead",
        -3.6308953,
    ),  # longer than the plate: on its middle
    (LUGS, "lower_weld_lever_ahead", 18.1380294),  # pivot 13.1380294 ahead, the weld 5 behind
    ({}, "steering_arm_lever_ahead", -66.0),  # 126 behind, the beam's side 60 behind
    ({"steering.tie_rod_ahead": "126 mm"}, "steering_arm_lever_ahead", 66.0),
    (FLAT, "steering_arm_lever_ahead", -36.0),  # the plate's rear edge 160 - 70 = 90 behind
    ({**FLAT, "steering.tie_rod_ahead": "126 mm"}, "steering_arm_lever_ahead", 56.0),  # its front edge 70 ahead
    ({}, "steering_arm_lever_above", 10.0),  # end 40 below the wheel centre, root 50 below
    (
        {},
        "steering_arm_lever_inboard",
        42.0,
    ),  # end 140 inboard of the tyre's middle; 56, 12 of plate and 30 of beam: 98
    (FLAT, "steering_arm_lever_inboard", 78.0),  # 140 less 56 and half of the plate
    ({}, "caliper_lever_ahead", 45.0),  # pads 115 ahead, the edge 70
    # An arm of 120 back and 50 inboard is 130 long; four bolts 60 by 80 stand on a circle of 100.
    (
        {
            "weld_steering_arm.load_ahead": "-120 mm",
            "weld_steering_arm.load_above": "0 mm",
            "weld_steering_arm.load_inboard": "50 mm",
        },
        "steering_arm_reach",
        130.0,
    ),
    # Pads 115 from the spindle, rotor 280 across with its bolts 40 inside the edge: 115 - 100.
    ({"caliper.bolts_inside": "40 mm"}, "pads_from_bolts", 15.0),
    ({"hub.mount_width": "60 mm", "hub.mount_height": "80 mm"}, "hub_bolts_across", 100.0),
    ({"weld_caliper_bracket.caliper_stands": "behind"}, "caliper_lever_ahead", -25.0),  # pads 115 behind, the edge 90
    # Rotor 280 across, the plate's edge 70 ahead or 90 behind, bracket 35 beyond it.
    ({"upright.bracket_arm_length": "35 mm"}, "bolts_inside_by_bracket", 35.0),
    (
        {"upright.bracket_arm_length": "35 mm", "weld_caliper_bracket.caliper_stands": "behind"},
        "bolts_inside_by_bracket",
        15.0,
    ),
    ({}, "bracket_rotor_distance", 28.0),  # bracket's middle 56 + 6 = 62 inboard, rotor's 34
    ({}, "caliper_lever_inboard", -28.0),
]


@pytest.mark.parametrize(("changes", "name", "by_hand"), BY_HAND)
def test_a_lever_is_the_hand_figure(judged: JudgedWith, changes: dict[str, object], name: str, by_hand: float) -> None:
    assert judged({**WELDED, **changes}).worked.known[name] == pytest.approx(by_hand, rel=1e-7, abs=1e-7)


def test_every_lever_has_a_hand_figure() -> None:
    levers = {name for name, node in trade().values.items() if node.note.subject == "levers of welds"}
    assert {name for _, name, _ in BY_HAND} == levers


@pytest.mark.parametrize(
    ("taken_out", "name"),
    [
        ("plate.thickness", "upper_weld_lever_inboard"),
        ("plate.thickness", "lower_weld_lever_inboard"),
        ("upright.beam_width", "steering_arm_lever_ahead"),
        ("upright.steering_arm_root_above", "steering_arm_lever_above"),
        ("upright.beam_depth", "steering_arm_lever_inboard"),
        ("plate.width", "caliper_lever_ahead"),
        ("weld_caliper_bracket.caliper_stands", "caliper_lever_ahead"),
        ("plate.bracket_thickness", "bracket_rotor_distance"),
        ("plate.height", "upper_weld_lever_above"),
        ("plate.width", "lower_weld_lever_ahead"),
        ("pivots.upper_shear", "upper_weld_lever_above"),
        ("pivots.lower_shear", "lower_weld_lever_ahead"),
    ],
)
def test_a_lever_that_rests_on_an_answer_left_out_is_not_worked_out_and_names_it(
    judged: JudgedWith, taken_out: str, name: str
) -> None:
    worked = judged({**WELDED, taken_out: None}).worked
    assert name not in worked.known and "not" in worked.not_judged[name] and taken_out in worked.waits[name]
