"""What a builder can still choose, and what is a fact of a part or of the car. Common practice, no source."""

import pytest

from rules.sheet.choosable import choosable, is_laid_out, of_an_own_part


@pytest.mark.parametrize(
    ("name", "can"),
    [
        ("pivots.castor", True), ("plate.width", True), ("arms.bump_travel", True),  # lengths and angles of his own
        ("wheel.diameter", True), ("rotor.diameter", True), ("spring.rate", True),  # another one is sold
        ("joint_angles.upper_bolt", True), ("steering.stopped_by", True),  # how it is put together
        ("weld_upper.leg", True), ("weld_caliper_bracket.run", True), ("caliper.line_pressure", True),
        ("rotor.finished_thickness", True),
        ("hub.flange_to_bearing_centre", False), ("job.track", False), ("tyre.loaded_radius", False),
        ("weld_upper.metal", False), ("weld_upper.load_ahead", False), ("pivots.upper_kind", False),
    ],
)  # fmt: skip
def test_what_can_be_chosen(name: str, can: bool) -> None:
    assert choosable(name) is can


def test_what_is_laid_out_and_what_is_a_size_of_an_own_part() -> None:
    assert [is_laid_out(name) for name in ("pivots.castor", "spring.arm_end_height", "plate.width", "pivots.upper_kind")] == [
        True, True, False, False,
    ]  # fmt: skip
    own = ("plate.width", "bolts.upper_lug_width", "arms.lower_tube", "weld_upper.leg", "rotor.finished_thickness")
    assert all(map(of_an_own_part, own)) and not any(map(of_an_own_part, ("pivots.castor", "arms.bump_travel")))
