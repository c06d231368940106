"""What is asked of every builder, what lies further off, and which answers may be read off a part as a mark.

The program's own choice, one line a step: a question that moves from one list to the other is a change of what a sheet
needs to be finished, and should be one on purpose.
"""

import pytest

from rules.sheet import FIELDS

NEEDED = """
job: vehicle use corner_weight vehicle_weight wheelbase track top_speed
tyre: smallest largest rim_width_least rim_width_most
wheel: diameter width bolt_circle centre_bore
rotor: diameter thickness minimum_thickness style hat_thickness face_to_rotor bolt_circle centre_bore
caliper: kind reach_above_rotor outboard_reach made_for_thickness bleed_screw_on_top
hub: held_together_by bolt_circle pilot_diameter stud_thread stud_length flange_to_bearing_centre flange_to_mount_face
hub: mount_bolts mount_bolt_thread
pivots: spacing inclination castor ground_offset lower_below_spindle upper_kind lower_kind spring_on
"""
FURTHER = """
job: centre_of_gravity_height
spring: bump_rubber seats_apart
loads: tie_rod_wall tie_rod_yield arm_wall arm_yield tie_rod_stud_diameter tie_rod_stud_reach tie_rod_stud_yield
loads: tie_rod_shank_yield spring_arm_wall spring_arm_width spring_arm_yield
upright: arm_on_wall arm_on_wall_width seam_leg seam_share snout_bore beam_cut beam_top beam_bottom
bolts: upper_lug_width upper_lug_reach lower_lug_width lower_lug_reach lugs_tied upper_radial_rating upper_axial_rating
bolts: lower_radial_rating lower_axial_rating caliper_thread caliper_grade caliper_bolt_spacing pads_beyond_caliper_bolts
bolts: mount_bolt_torque wheel_nut_torque
weld_upper: wall_width
weld_lower: wall_width
brakes: pedal_ratio pedal_effort pedal_room master_bore rear_master_bore bar_to_front rear_pressure_share
brakes: rear_piston_diameter rear_pistons_per_side rear_caliper_kind rear_effective_radius rear_pad_friction piston_take_up
plate: left_for_drilling tab_length upper_end_width lower_end_width full_width_above full_width_below hole_above
plate: hole_above_spindle hole_below hole_below_spindle gusset_at gusset_thickness gusset_along_plate gusset_along_lug
loads: spring_arm_wall spring_arm_width spring_arm_yield
upright: beam_top beam_bottom beam_cut
bolts: wheel_nut_torque mount_bolt_torque
weld_upper: wall_width
weld_lower: wall_width
"""
SEVERAL_LINES = "job: rule_book notes"


def listed(table: str) -> set[str]:
    """The names of a table, each with its step in front."""
    rows = (line.split(": ") for line in table.strip().splitlines())
    return {f"{step}.{key}" for step, keys in rows for key in keys.split()}


@pytest.mark.parametrize(
    ("table", "attribute"), [(NEEDED, "needed"), (FURTHER, "further"), (SEVERAL_LINES, "several_lines")]
)
def test_which_questions_must_be_answered_lie_further_off_or_take_several_lines(table: str, attribute: str) -> None:
    assert {name for name, asked in FIELDS.items() if getattr(asked, attribute)} == listed(table)
