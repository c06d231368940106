"""What a channel closes with the plate it is welded to, by hand."""

from rules.values.strength.upright import Build


def test_the_cell_of_a_channel_on_a_plate_is_measured_between_the_middles_of_the_walls() -> None:
    """60 x 40 x 4 on 10 mm plate: across 60 - 4 = 56; out of the plate 40 - 2 + 5 = 43; 2408 mm2."""
    build = Build(120.0, 10.0, 60.0, 180.0, 180.0, "channel", 60.0, 40.0, 4.0)
    assert build.cell == 2408.0
