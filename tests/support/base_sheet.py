"""One finished sheet in round metric figures, on which every check is good; tests change one entry at a time.

The figures are common practice, no source: round ones that a hand calculation is short with.
"""

import copy
from collections.abc import Mapping
from typing import Any

from rules.sheet import FIELDS

BASE: dict[str, Any] = {
    "sheet_version": 2,
    "title": "Round figures",
    "units": "metric",
    "job": {
        "vehicle": "Two-seat trail car", "use": "trail", "corner_weight": "250 kg", "vehicle_weight": "900 kg",
        "front_brake_share": "65 %", "wheelbase": "2600 mm", "track": "1600 mm", "top_speed": "110 km/h",
    },
    "tyre": {
        "smallest": "31x10.50R15LT 109Q", "largest": "33x12.50R15LT 108Q", "rim_width_least": "200 mm",
        "rim_width_most": "260 mm", "loaded_radius": "400 mm",
    },
    "wheel": {
        "diameter": "15 in", "width": "215 mm", "overall_width": "240 mm", "offset": "10 mm", "backspacing": "130 mm",
        "bolt_circle": "6 x 135 mm", "centre_bore": "108 mm", "barrel_inside_diameter": "360 mm",
        "spoke_room": "12 mm", "pad_thickness": "12 mm", "nut_seat": "60 deg cone", "load_rating": "900 kg",
    },
    "rotor": {
        "diameter": "280 mm", "thickness": "22 mm", "minimum_thickness": "20 mm", "style": "vented",
        "hat_thickness": "6 mm", "face_to_rotor": "44 mm", "bolt_circle": "6 x 135 mm", "centre_bore": "108 mm",
        "hat_outside_diameter": "175 mm",
    },
    "caliper": {
        "kind": "sliding", "reach_above_rotor": "22 mm", "outboard_reach": "44 mm", "made_for_thickness": "22 mm",
        "bleed_screw_on_top": True, "inboard_reach": "60 mm", "inward_reach": "45 mm", "length": "170 mm",
        "clock": "-90 deg",
    },
    "hub": {
        "held_together_by": "itself", "bolt_circle": "6 x 135 mm", "pilot_diameter": "107.8 mm",
        "stud_thread": "12 x 1.5 mm", "stud_length": "45 mm", "nut_seat": "60 deg cone",
        "flange_to_bearing_centre": "24 mm", "flange_to_mount_face": "60 mm", "mount_bolts": 4,
        "mount_bolt_thread": "12 x 1.75 mm", "mount_bolt_grade": "10.9", "mount_width": "84 mm", "mount_height": "86 mm",
        "body_diameter": "88 mm", "body_length": "80 mm",
        "flange_diameter": "160 mm", "flange_thickness": "10 mm", "stud_head_diameter": "18 mm",
        "stud_head_height": "5 mm", "mount_flange_thickness": "12 mm",
    },
    "pivots": {
        "spacing": "260 mm", "inclination": "10 deg", "castor": "6 deg", "ground_offset": "25 mm",
        "lower_below_spindle": "125 mm", "upper_kind": "spherical bearing", "lower_kind": "spherical bearing",
        "upper_radius": "22 mm", "lower_radius": "22 mm", "upper_shear": "double", "lower_shear": "double",
        "spring_on": "lower arm", "swap_spacing": "260 mm",
    },
}  # fmt: skip

MOVING: dict[str, object] = {
    "steering.tie_rod_ahead": "-126 mm", "steering.tie_rod_inboard": "144 mm", "steering.tie_rod_above": "-40 mm",
    "steering.linkage": "rack", "steering.inner_ahead": "-135 mm", "steering.inner_from_centre": "301 mm",
    "steering.inner_height": "358 mm", "steering.rack_travel": "80 mm", "steering.stop_angle": "32 deg",
    "steering.stopped_by": "upright or arm", "steering.travel_per_turn": "50 mm",
    "steering.steering_wheel_diameter": "350 mm",
    "arms.lower_front_ahead": "170 mm", "arms.lower_front_from_centre": "300 mm", "arms.lower_front_height": "285 mm",
    "arms.lower_rear_ahead": "-190 mm", "arms.lower_rear_from_centre": "300 mm", "arms.lower_rear_height": "285 mm",
    "arms.upper_front_ahead": "190 mm", "arms.upper_front_from_centre": "390 mm", "arms.upper_front_height": "512 mm",
    "arms.upper_rear_ahead": "-220 mm", "arms.upper_rear_from_centre": "390 mm", "arms.upper_rear_height": "512 mm",
    "arms.bump_travel": "110 mm", "arms.droop_travel": "90 mm", "arms.lower_tube": "25 mm", "arms.upper_tube": "32 mm",
    "arms.tie_rod_tube": "25 mm", "steering.tie_rod_end_reach": "20 mm",
    "joint_angles.upper_bolt": "along the steering axis", "joint_angles.upper_allowed": "28 deg",
    "joint_angles.upper_set": "0 deg", "joint_angles.lower_set": "0 deg",
    "joint_angles.lower_bolt": "along the steering axis", "joint_angles.lower_allowed": "28 deg",
    "joint_angles.tie_rod_outer_bolt": "up and down", "joint_angles.tie_rod_outer_allowed": "22 deg",
    "joint_angles.tie_rod_inner_bolt": "along the rack", "joint_angles.tie_rod_inner_allowed": "25 deg",
    "spring.arm_end_ahead": "0 mm", "spring.arm_end_from_centre": "620 mm", "spring.arm_end_height": "300 mm",
    "spring.frame_end_ahead": "0 mm", "spring.frame_end_from_centre": "470 mm", "spring.frame_end_height": "760 mm",
    "spring.shock_shortest": "360 mm", "spring.shock_longest": "580 mm", "spring.shock_diameter": "60 mm",
}  # fmt: skip
"""What steers and hangs the same front end: tie rods behind the axle, level arms. Added to BASE as changes."""

Changes = Mapping[str, object]


def changed(changes: Changes) -> dict[str, Any]:
    """The base sheet's document with some entries changed; None takes an entry out."""
    return edited(BASE, changes)


def edited(sheet: Mapping[str, Any], changes: Changes) -> dict[str, Any]:
    """A copy of a document with some entries changed; None takes an entry out."""
    document = copy.deepcopy(dict(sheet))
    for name, entry in changes.items():
        table, _, key = name.rpartition(".")
        target = document.setdefault(table, {}) if table else document
        assert not table or name in FIELDS or entry is not None
        if entry is None:
            target.pop(key, None)
        else:
            target[key] = entry
    return document
