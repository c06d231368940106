"""Which parts are lit for an entry: what a builder would point at (common practice, no source)."""

import pytest

from rules.corner.part import PART
from rules.drawn.lit import lit_by, parts_of_field
from rules.judging.trade import trade
from rules.sheet import FIELDS
from sample_sheets import document
from tests.support.judging import judged_document


@pytest.mark.parametrize(
    ("field", "parts"),
    [
        ("tyre.largest", {"tyre_part"}),
        ("tyre.loaded_radius", {"tyre_part"}),
        ("wheel.spoke_room", {"spokes_part"}),
        ("rotor.hat_thickness", {"rotor_hat_part"}),
        ("caliper.clock", {"caliper_part", "caliper_bracket_part"}),
        ("hub.body_length", {"hub_body_part"}),
        ("pivots.inclination", {"upper_joint_housing_part", "lower_joint_housing_part"}),
        ("pivots.upper_radius", {"upper_joint_housing_part"}),
        ("arms.lower_front_ahead", {"lower_arm_part", "lower_frame_part"}),
        ("steering.tie_rod_ahead", {"tie_rod_end_part", "steering_arm_part"}),
        ("spring.shock_diameter", {"shock_part"}),
        ("plate.thickness", {"plate_part"}),
        ("plate.bore", {"plate_part"}),
        ("upright.beam_width", {"beam_part"}),
        ("bolts.upper_thread", {"upper_pivot_bolt_part"}),
        ("weld_steering_arm.leg", {"steering_arm_part"}),
        ("job.title", set()),
        ("plate.metal", {"plate_part"}),
    ],
)
def test_an_entry_lights_the_parts_it_is_about(field: str, parts: set[str]) -> None:
    assert set(parts_of_field(field)) == parts


def test_every_part_but_the_ground_is_lit_by_some_entry() -> None:
    lit = {part for field in FIELDS for part in parts_of_field(field)}
    assert set(trade().in_role(PART)) - lit == {"ground_part"}


def test_only_what_can_be_placed_is_lit() -> None:
    known = judged_document(document("dune_wren_half_done")).worked.known
    assert lit_by("tyre.largest", known) == ("tyre",)
    assert lit_by("hub.body_length", known) == ()
