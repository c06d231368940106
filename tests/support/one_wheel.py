"""One wheel of a left corner with everything known about it, its parts built from figures that are easy to follow by hand."""

import math

from rules.corner.part import Part
from rules.measure.marks import read_tyre_mark
from rules.solids.shapes import Ball, Rod
from rules.values.corner.caliper_parts import caliper_part
from rules.values.corner.upright_parts import hub_body_part, plate_part
from rules.values.corner.wheel_parts import hub_flange_part, rim_part, rotor_ring_part, tyre_part

TYRES: dict[str, object] = {
    "design_tyre_diameter": 863.6,
    "smallest_tyre_diameter": 838.2,
    "largest_tyre_diameter": 889.0,
    "tyre_section_width": 317.5,
    "wheel_centre_height": 420.0,
}
WHEEL: dict[str, object] = {
    "wheel.diameter": 381.0,
    "wheel_overall_width": 241.0,
    "wheel_offset": -12.0,
    "barrel_inside_diameter": 361.0,
}
BRAKE: dict[str, object] = {
    "rotor.diameter": 285.0,
    "rotor_plane_offset": -50.0,
    "rotor_working_thickness": 22.0,
    "caliper.reach_above_rotor": 22.0,
    "caliper.outboard_reach": 45.0,
    "caliper_barrel_gap": 16.0,
}
HUB: dict[str, object] = {
    "hub_face_offset": -18.0,
    "bearing_offset": -60.0,
    "mount_face_offset": -85.0,
    "hub.pilot_diameter": 90.0,
}
PIVOTS: dict[str, object] = {
    "pivots.ground_offset": 30.0,
    "pivots.inclination": 0.1745,
    "pivots.spacing": 260.0,
    "hub_height_offset": 104.0,
    "lower_pivot_offset": -82.0,
    "lower_pivot_height": 295.0,
    "upper_pivot_offset": -127.0,
    "upper_pivot_height": 551.0,
    "pivots.lower_radius": 25.0,
    "pivots.upper_radius": 22.0,
}
CENTRE = 420.0
TYRE = tyre_part(read_tyre_mark("35x12.50R15LT"), None, 381.0, 241.0, CENTRE)
"""35 in = 889 high, 12.5 in = 317.5 wide."""
PARTS: dict[str, object] = {
    "tyre_part": TYRE,
    "rim_part": rim_part(361.0, 381.0, 241.0, CENTRE),
    "rotor_ring_part": rotor_ring_part(285.0, 185.0, 22.0, -50.0, CENTRE),
    "caliper_part": caliper_part(285.0, -50.0, 22.0, 22.0, 45.0, 60.0, 45.0, 160.0, math.pi / 2, CENTRE),
    "hub_flange_part": hub_flange_part(150.0, 12.0, -18.0, CENTRE),
    "hub_body_part": hub_body_part(80.0, 90.0, 12.0, -18.0, CENTRE, "itself"),
    "plate_part": plate_part(140.0, 300.0, 150.0, 70.0, 20.0, 10.0, 90.0, -85.0, CENTRE),
    "upper_joint_housing_part": Part(
        "upper joint housing", "upper arm", (Ball((-12.0, -127.0, 551.0), 22.0),), "housing", held_by="upright"
    ),
    "lower_joint_housing_part": Part(
        "lower joint housing", "lower arm", (Ball((10.0, -82.0, 295.0), 25.0),), "housing", held_by="upright"
    ),
    "lower_arm_part": Part("lower arm", "lower arm", (Rod((10.0, -82.0, 295.0), (150.0, -400.0, 280.0), 19.0),)),
    "shock_part": Part("shock", "shock", (Rod((0.0, -300.0, 700.0), (0.0, -200.0, 300.0), 35.0),)),
}
EVERYTHING: dict[str, object] = {**TYRES, **WHEEL, **BRAKE, **HUB, **PIVOTS, **PARTS}
