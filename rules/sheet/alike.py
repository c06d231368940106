"""Questions whose answers hang together: one is often the other's too, or another entry comes to the same by a value.

Common practice, no source. It is offered, never taken for granted (`rules/judging/offers.py`).
"""

from collections.abc import Iterator, Mapping

from rules.sheet import FIELDS
from rules.sheet.pivots import AsFound, Pivots
from rules.sheet.welds import WELDS

WELD = tuple(f"weld_{weld['which']}" for weld in WELDS)
SAME_FOR_WELDS = ("made_from", "metal", "form", "leg", "thickness_two", "welded_by", "filler", "preheat")
TWIN_STEPS = ("pivots", "bolts", "joint_angles")
"""Steps that ask the same of the upper and of the lower pivot; a joint taped where it is has a place of its own."""


def _same() -> Iterator[tuple[str, str]]:
    """A question, and one whose answer is often its own too."""
    yield "tyre.largest", "tyre.smallest"
    yield "hub.mount_height", "hub.mount_width"
    yield "arms.upper_tube", "arms.lower_tube"
    for arm in ("lower", "upper"):
        yield from ((f"arms.{arm}_rear_{key}", f"arms.{arm}_front_{key}") for key in ("from_centre", "height"))
    yield "spring.frame_end_ahead", "spring.arm_end_ahead"
    yield "steering.tie_rod_inner_shank", "steering.tie_rod_outer_shank"
    yield "plate.bracket_thickness", "plate.thickness"
    yield "plate.bracket_hole_diameter", "plate.hole_diameter"
    yield from ((f"joint_angles.tie_rod_{end}_allowed", "joint_angles.upper_allowed") for end in ("outer", "inner"))
    yield "bolts.upper_thread", "hub.mount_bolt_thread"
    yield "bolts.upper_grade", "hub.mount_bolt_grade"
    yield "bolts.stud_grade", "bolts.upper_grade"
    yield "brakes.stop_from", "job.top_speed"
    for question in FIELDS:
        step, _, key = question.partition(".")
        twin = f"{step}.{key.replace('lower_', 'upper_', 1)}"
        if step in TWIN_STEPS and key.startswith("lower_") and twin in FIELDS and question not in TAPED:
            yield question, twin
    yield f"{WELD[0]}.thickness_two", "plate.thickness"
    yield f"{WELD[0]}.welded_by", "plate.weld_process"
    yield from (
        (f"{WELD[1]}.{key}", f"{WELD[0]}.{key}") for key in ("thickness_one", "run", "apart", "runs_lie", "apart_lies")
    )
    for step in WELD[1:]:
        yield from ((f"{step}.{key}", f"{WELD[0]}.{key}") for key in SAME_FOR_WELDS)
    for weld, width, depth in (
        (WELD[2], "upright.steering_arm_width", "upright.steering_arm_height"),
        (WELD[3], "upright.bracket_arm_width", "plate.bracket_thickness"),
    ):
        yield from ((f"{weld}.thickness_one", depth), (f"{weld}.run", width), (f"{weld}.apart", depth))


TAPED = frozenset(asked.name for asked in Pivots.asked_in(AsFound).values())
SAME_AS: Mapping[str, str] = dict(_same())
"""A question, and the one whose answer is often its own too. Common practice, no source.

Only what a builder makes or chooses twice: what is measured on two parts to see whether they fit is never copied.
"""

USED_AS: Mapping[str, str] = {
    "tyre.design_diameter": "design_tyre_diameter",
    "tyre.load_capacity": "tyre_load_capacity",
    "wheel.offset": "wheel_offset",
    "wheel.backspacing": "wheel_backspacing",
    "wheel.overall_width": "wheel_overall_width",
    "wheel.barrel_inside_diameter": "barrel_inside_diameter",
    "rotor.hat_outside_diameter": "hat_diameter",
    "rotor.band_inside_diameter": "band_inside",
    "caliper.inboard_reach": "caliper_inboard",
    "caliper.inward_reach": "caliper_inward",
    "caliper.length": "caliper_long",
    "caliper.clock": "caliper_at",
    "hub.body_diameter": "body_diameter",
    "hub.body_length": "body_length",
    "hub.flange_diameter": "flange_diameter",
    "hub.flange_thickness": "flange_thickness",
    "hub.stud_head_diameter": "stud_head_diameter",
    "hub.stud_head_height": "stud_head_height",
    "hub.mount_flange_thickness": "mount_flange_thickness",
    "hub.shoulder_diameter": "shaft_shoulder",
    "hub.shoulder_length": "shaft_behind_hub",
    "arms.tie_rod_tube": "tie_rod_outside",
    "spring.shock_diameter": "shock_outside",
    **{f"loads.{case}": f"{case}_multiple" for case in
       ("bump", "braking", "cornering", "kerb", "landing", "rock", "steering_stop")},
    **{f"pivots.{key}": f"taped_{key}" for key in
       ("spacing", "inclination", "castor", "ground_offset", "axis_ahead", "lower_below_spindle")},
    "pivots.upper_inboard": "upper_pivot_from_hub_face",
    "pivots.upper_above": "upper_above_spindle",
    "pivots.upper_ahead": "upper_pivot_ahead",
    "pivots.lower_inboard": "lower_pivot_from_hub_face",
    "pivots.lower_below": "pivots.lower_below_spindle",
    "pivots.lower_ahead": "lower_pivot_ahead",
    "upright.bracket_arm_offset": "bracket_rotor_distance",
    "weld_upper.load_inboard": "upper_weld_lever_inboard",
    "weld_lower.load_inboard": "lower_weld_lever_inboard",
    **{f"weld_{which}.load_{way}": f"{which}_weld_lever_{way}" for which in ("upper", "lower") for way in ("ahead", "above")},
    "weld_steering_arm.load_ahead": "steering_arm_lever_ahead",
    "weld_steering_arm.load_above": "steering_arm_lever_above",
    "weld_steering_arm.load_inboard": "steering_arm_lever_inboard",
    "weld_caliper_bracket.load_ahead": "caliper_lever_ahead",
    "weld_caliper_bracket.load_inboard": "caliper_lever_inboard",
}  # fmt: skip
"""A question, and the value that says what its answer comes to by the others."""
HALF_OF = {"plate.spindle_from_front": "plate.width", "plate.spindle_from_top": "plate.height"}
"""A place on the plate, and the side it is often the middle of."""
BY_NAME: Mapping[str, tuple[str, int]] = {
    "upright.beam_depth": ("upright.beam_width", 1),
    "upright.beam_wall": ("upright.beam_width", -1),
    "upright.steering_arm_height": ("upright.steering_arm_width", 1),
    "upright.steering_arm_wall": ("upright.steering_arm_width", -1),
    "loads.tie_rod_wall": ("arms.tie_rod_tube", -1),
}
"""A size, and where the stock it belongs to may have been entered by name, `3 x 2 x 1/4 box`: which of its sizes it is."""
WALLS_OF_ARMS: Mapping[str, tuple[str, str]] = {
    "loads.arm_wall": ("arms.upper_tube", "arms.lower_tube"),
    "loads.spring_arm_wall": ("arms.lower_tube", "arms.upper_tube"),
}
"""A wall, and where its tube may have been entered by name: with the spring on the lower arm, and on the upper."""
NOUGHT: Mapping[str, str] = {
    **{f"{step}.{key}": "beside the pivot" for step in WELD[:2] for key in ("load_ahead", "load_above")},
    f"{WELD[3]}.load_above": "level with it",
    "brakes.pad_thickness_worn": "to be safe",
}
"""Questions whose answer is nought at the usual place of the weld, or on the safe side, and the reason."""
OWN = ("pivots", "steering", "arms", "plate", "upright", *WELD)
"""Steps in which a builder chooses; what stands in the others is measured, and nobody offers a measurement."""
