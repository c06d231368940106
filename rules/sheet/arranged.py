"""How the questions of a step are arranged where they are asked: which come first, which apply, which come last of all."""

from collections.abc import Mapping

from rules.sheet import FIELDS

ASIDE = frozenset(
    {
        "job.front_brake_share",
        "tyre.design_diameter", "tyre.load_capacity", "tyre.speed_symbol",
        "wheel.nut_pocket",
        "rotor.ring_mass", "rotor.hat_outside_diameter",
        "caliper.piston_diameter", "caliper.pistons_per_side", "caliper.line_pressure", "caliper.pad_friction",
        "caliper.inboard_reach", "caliper.inward_reach", "caliper.length", "caliper.clock",
        "hub.row_spread", "hub.dynamic_rating", "hub.static_rating", "hub.rolling_element", "hub.body_diameter",
        "hub.body_length", "hub.flange_diameter", "hub.flange_thickness", "hub.stud_head_diameter",
        "hub.stud_head_height", "hub.mount_flange_thickness", "hub.shoulder_diameter", "hub.shoulder_length",
        "pivots.axis_ahead", "pivots.swap_spacing", "pivots.upper_inboard", "pivots.upper_above", "pivots.upper_ahead",
        "pivots.lower_inboard", "pivots.lower_below", "pivots.lower_ahead",
        "steering.copied_length", "steering.copied_angle", "steering.copied_side", "steering.travel_per_turn",
        "steering.steering_wheel_diameter",
        "caliper.bolts_inside", "hub.mount_circle", "hub.mount_turned", "hub.mount_places",
        "arms.static_camber", "arms.static_toe", "arms.body_roll", "steering.tie_rod_outer_shank", "steering.tie_rod_inner_shank",
        "steering.tie_rod_threads_in", "steering.tie_rod_thread",
        "spring.rate", "spring.preload", "spring.free_length", "spring.seats_apart",
        "spring.solid_length",
        "arms.lower_tube", "arms.upper_tube", "arms.tie_rod_tube", "spring.shock_diameter",
        "joint_angles.upper_set", "joint_angles.lower_set",
        "plate.condition", "plate.corner_radius", "plate.weld_process", "plate.filler", "plate.preheat",
        "loads.tie_rod_slope", "loads.tie_rod_sweep", "loads.arm_slope", "loads.arm_hinge_slope",
        "loads.pressure_centre_spread",
        "upright.certificate_yield", "upright.beam_corner_radius", "upright.beam_to_pivots", "upright.hub_bolt_access",
        "upright.snout_diameter", "upright.snout_yield",
        "bolts.threads_in_joint", "bolts.lubrication",
        *(f"weld_{part}.{key}" for part in ("upper", "lower", "steering_arm", "caliper_bracket")
          for key in ("parts", "preheat")),
        "brakes.deceleration", "brakes.pad_length", "brakes.pad_height",
        *(name for name, asked in FIELDS.items() if asked.further),
    }
)  # fmt: skip
"""Questions most builders leave empty: no verdict waits for them, or only one that few need."""

RINGS = ("fillet round a tube or cup",)
FILLETS = (
    "fillet on both sides", "fillet on one side", "fillet round a rectangle", "fillet round a tube or cup",
)  # fmt: skip
ONLY_WHERE: Mapping[str, tuple[str, tuple[str, ...]]] = {
    "rotor.finished_thickness": ("rotor.style", ("cut to one plate",)),
    "rotor.kept_plate_carries_hat": ("rotor.style", ("cut to one plate",)),
    "hub.stub_shaft_fitted": ("hub.held_together_by", ("a clamped stub shaft",)),
    "hub.stub_shaft_torque": ("hub.held_together_by", ("a clamped stub shaft",)),
    "hub.shoulder_diameter": ("hub.held_together_by", ("a clamped stub shaft",)),
    "hub.shoulder_length": ("hub.held_together_by", ("a clamped stub shaft",)),
    "pivots.upper_retained": ("pivots.upper_shear", ("single",)),
    "pivots.lower_retained": ("pivots.lower_shear", ("single",)),
    "steering.relay_arm_length": ("steering.linkage", ("relay rod",)),
    "upright.beam_width": ("upright.beam", ("box", "channel", "tube")),
    "upright.beam_depth": ("upright.beam", ("box", "channel")),
    "upright.beam_wall": ("upright.beam", ("box", "channel", "tube")),
    "upright.beam_corner_radius": ("upright.beam", ("box",)),
    "upright.beam_to_pivots": ("upright.beam", ("box", "channel", "tube")),
    "upright.beam_top": ("upright.beam", ("box", "channel", "tube")),
    "upright.beam_bottom": ("upright.beam", ("box", "channel", "tube")),
    "upright.beam_cut": ("upright.beam", ("box", "channel")),
    "upright.hub_bolt_access": ("upright.beam", ("box", "channel", "tube")),
    "upright.steering_arm_height": ("upright.steering_arm_form", ("flat bar", "box")),
    "upright.steering_arm_wall": ("upright.steering_arm_form", ("box", "round tube")),
    **{
        f"weld_{part}.{key}": (f"weld_{part}.form", forms)
        for part in ("upper", "lower", "steering_arm", "caliper_bracket")
        for key, forms in {
            "leg": FILLETS,
            "run": tuple(form for form in (*FILLETS, "full bevel") if form not in RINGS),
            "apart": tuple(form for form in FILLETS if form != "fillet on one side"),
        }.items()
    },
}
"""A question, and the answers of another one with which alone it applies."""

PAPERS = (
    "job.rule_book", "job.notes", "plate.revision", "plate.projection",
    "tyre.price_each", "wheel.price_each", "rotor.price_each", "caliper.price_each", "hub.price_each", "pivots.price_each",
    "hub.donor_axle_weight", "hub.donor_tyre_diameter", "loads.donor_wheel_offset",
)  # fmt: skip
"""Questions asked last: for the papers, what it costs, where the hub came from."""


def applies(name: str, answers: Mapping[str, object]) -> bool:
    """Whether a question applies to this build. One that rests on another waits for that one's answer.

    answers: by dotted name. A question that is answered applies.

    >>> applies("hub.stub_shaft_torque", {"hub.held_together_by": "a clamped stub shaft"}), applies("hub.stub_shaft_torque", {})
    (True, False)
    """
    if name not in ONLY_WHERE or name in answers:
        return True
    other, fitting = ONLY_WHERE[name]
    return answers.get(other) in fitting


BESIDE: Mapping[str, tuple[int, ...]] = {
    "job.vehicle": (0, 1),
    "tyre.smallest": (1,), "tyre.rim_width_least": (0,),
    "wheel.overall_width": (0,), "wheel.bolt_circle": (1,),
    "rotor.diameter": (3,), "rotor.style": (0, 2), "rotor.minimum_thickness": (1,),
    "caliper.made_for_thickness": (0,), "caliper.bleed_screw_on_top": (1,),
    "hub.held_together_by": (0,), "hub.stub_shaft_torque": (1,),
    "pivots.upper_shear": (0,), "pivots.lower_shear": (0,), "pivots.upper_kind": (1,), "pivots.lower_kind": (1,),
    "pivots.castor": (2,),
    "steering.tie_rod_ahead": (0,), "steering.stop_angle": (1,),
    "arms.bump_travel": (0,), "arms.droop_travel": (0,), "arms.lower_front_ahead": (1,),
    "joint_angles.upper_bolt": (0,), "joint_angles.tie_rod_outer_bolt": (1,),
    "spring.shock_shortest": (0,), "spring.shock_longest": (0, 1),
    "plate.process": (0, 3), "plate.hole_diameter": (1,), "plate.metal": (2,),
    "loads.landing": (0,), "loads.judge_strength": (1,),
    "upright.material": (0, 2), "upright.section_above": (1,),
    "bolts.upper_grade": (0,), "bolts.lower_grade": (0,), "bolts.upper_lug_thickness": (1,),
    "bolts.hub_bolt_engagement": (2,),
    **{f"weld_{part}.{key}": told for part in ("upper", "lower", "steering_arm", "caliper_bracket")
       for key, told in {"form": (0,), "run": (1,), "made_from": (2,), "welded_by": (3, 4)}.items()},
    "brakes.stop_from": (0,), "brakes.cooling": (1,), "brakes.effective_radius": (2,),
}  # fmt: skip
"""A question, and the numbers of those cautions of its step that belong to it: they are told where it is answered."""
