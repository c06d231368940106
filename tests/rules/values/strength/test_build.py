"""What a channel closes with the plate it is welded to, and how far inside its end a height is, by hand."""

from math import inf

import pytest

from rules.values.strength.upright import Build


def test_the_cell_of_a_channel_on_a_plate_is_measured_between_the_middles_of_the_walls() -> None:
    """60 x 40 x 4 on 10 mm plate: across 60 - 4 = 56; out of the plate 40 - 2 + 5 = 43; 2408 mm2."""
    build = Build(120.0, 10.0, 60.0, 180.0, 180.0, "channel", 60.0, 40.0, 4.0)
    assert build.cell == 2408.0


@pytest.mark.parametrize(
    ("above", "said", "usual"),
    [
        # Ends 100 mm above and 90 mm below the wheel centre. Where nobody said so, a beam may run on past them.
        (60.0, (40.0,), (40.0,)),
        (99.5, (0.5,), (0.5,)),
        (100.0, (0.0,), (0.0,)),
        (100.5, (-0.5,), (-inf, inf)),
        (-89.5, (0.5,), (0.5,)),
        (-90.5, (-0.5,), (-inf, inf)),
    ],
)
def test_how_far_inside_its_end_a_beam_is_at_a_height(
    above: float, said: tuple[float, ...], usual: tuple[float, ...]
) -> None:
    channel = (120.0, 10.0, 60.0, 180.0, 180.0, "channel", 60.0, 40.0, 4.0)
    end = 100.0 if above > 0 else 90.0
    assert Build(*channel, beam_top=100.0, beam_bottom=90.0).beam_inside(above, None) == said
    assert Build(*channel, beam_top=100.0, beam_bottom=90.0).beam_inside(above, end) == said
    assert Build(*channel).beam_inside(above, end) == usual
    assert Build(*channel).beam_inside(above, None) == (inf,)
    assert Build(*channel, to_pivots=True).beam_inside(above, end) == (inf,)
    assert Build(120.0, 10.0, 60.0, 180.0, 180.0, "none").beam_inside(above, end) == (-inf,)
