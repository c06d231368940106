"""What a channel closes with the plate it is welded to, and how far inside its end a height is, by hand."""

from dataclasses import replace
from math import inf, pi

import pytest

from rules.corner.slots import PlateSlots, Slot
from rules.graph.results import OutsideRange
from rules.measure.outline import Outline, PlainHole
from rules.sheet.upright import Beam, BeamCut
from rules.values.strength.plate_build import Build


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


def test_the_closed_cell_that_a_box_or_a_tube_is_by_itself() -> None:
    """60 x 40 x 4: to the middles of the walls 56 x 36, 184 round. A tube of 40 x 4: 36 across."""
    box = Build(120.0, 10.0, 60.0, 180.0, 180.0, "box", 60.0, 40.0, 4.0)
    assert box.own_cell == (56.0 * 36.0, 184.0, 56.0)
    tube = Build(120.0, 10.0, 60.0, 180.0, 180.0, "tube", 40.0, 0.0, 4.0)
    assert tube.own_cell == pytest.approx((pi * 18**2, 2 * pi * 18, 36.0))


LIGHT = Build(
    120.0, 10.0, 60.0, 180.0, 180.0, "none", holes=(PlainHole(95.0, 30.0), PlainHole(-75.0, 30.0)),
    slots=PlateSlots((Slot((5.0, 105.0), 30.0, 12.0, 0.0, "upper lugs"), Slot((0.0, 60.0), 30.0, 12.0, 0.0, "beam"))),
)  # fmt: skip


def test_the_levels_at_which_a_plate_may_be_weakest() -> None:
    """Six from beside the hub towards the joint, 10 mm apart, and each hole and slot between; a plain plate at the hub alone."""
    assert LIGHT.weakest_levels(60.0, 120.0) == [60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 95.0, 105.0]
    assert LIGHT.weakest_levels(-60.0, -120.0) == [-60.0, -70.0, -80.0, -90.0, -100.0, -110.0, -75.0]
    assert LIGHT.weakest_levels(95.0, 105.0)[6:] == []
    plain = Build(120.0, 10.0, 60.0, 180.0, 180.0, "none")
    assert plain.plain and plain.weakest_levels(60.0, 120.0) == [60.0]
    for changed in ({"holes": LIGHT.holes}, {"slots": LIGHT.slots}, {"outline": Outline(-60.0, 60.0, -180.0, 180.0)}):
        assert not replace(plain, **changed).plain  # type: ignore[arg-type]


@pytest.mark.parametrize(("rear", "front", "width"), [(-60.0, 60.0, 120.0), (-80.0, 60.0, 120.0), (-50.0, 70.0, 100.0)])
def test_only_what_stands_on_both_sides_of_the_wheel_centre_counts_as_width(
    rear: float, front: float, width: float
) -> None:
    made = Build(110.0, 10.0, 0.0, 180.0, 180.0, "none", outline=Outline(rear, front, -180.0, 180.0))
    assert made.width_at(0.0) == width
    assert made.width_at(200.0) == 110.0  # past the outline's end its own


@pytest.mark.parametrize(
    ("beam", "cut", "pull"),
    [
        # A box welded on whole keeps its cell. Its face on the plate cut, strips of 40 x 10 of the plate hand it past.
        ("box", "not cut", 0.0),
        ("box", "face on the plate", 60 / (2 * 2016) / 2 * 0.45 * 40 / 2 * 6 / (10 * 40**2)),
        # The far face's strips, 10 x 4, bend far more.
        ("box", "both faces", 60 / (2 * 2016) / 2 * 0.45 * 40 / 2 * 6 / (4 * 10**2)),
        ("channel", "not cut", 60 / (2 * 2408) / 2 * 0.45 * 40 / 2 * 6 / (10 * 40**2)),
        ("channel", "both faces", 60 / (2 * 2408) / 2 * 0.45 * 40 / 2 * 6 / (4 * 10**2)),
    ],
)  # fmt: skip
def test_twist_past_the_bore_pulls_in_the_strips_beside_it(beam: Beam, cut: BeamCut, pull: float) -> None:
    """A plate of 120 x 10 with a bore of 40; a beam 60 x 40 x 4: its own cell 56 x 36, a channel's with the plate 56 x 43."""
    build = Build(120.0, 10.0, 40.0, 180.0, 180.0, beam, 60.0, 40.0, 4.0, cut=cut)
    assert build.section(0.0).twist_bends == pytest.approx(pull)
    assert build.section(20.1).twist_bends == 0.0  # above the bore


@pytest.mark.parametrize(("bore", "left"), [(59.9, True), (60.0, False), (70.0, False)])
def test_a_bore_as_wide_as_the_beam_leaves_no_far_face(bore: float, left: bool) -> None:
    build = Build(120.0, 10.0, bore, 180.0, 180.0, "channel", 60.0, 40.0, 4.0, cut="both faces")
    if left:
        assert build.section(0.0).twist_bends > 0
    else:
        with pytest.raises(OutsideRange, match="far face"):
            build.section(0.0)


def test_what_a_level_cut_leaves_of_the_plate() -> None:
    """Of 120 x 10: the bore's chord, a hole's or a lug's slot, whichever is widest, out of the middle; a beam's slots at the
    sides besides. 24 above a bore of 60 its chord is 2 x 18 = 36, 9 above the middle of a hole of 30 it is 2 x 12 = 24."""
    sides = PlateSlots(tuple(Slot((x, 100.0), 20.0, 6.0, pi / 2, "beam") for x in (-28.0, 28.0)))
    made = Build(120.0, 10.0, 60.0, 180.0, 180.0, "none", holes=LIGHT.holes, slots=sides)
    assert made.section(24.0).area == pytest.approx(840.0)
    assert made.section(86.0).area == pytest.approx(1200.0 - 240.0)  # below the beam's slots, which begin at 90
    assert made.section(95.0).area == pytest.approx(1200.0 - 300.0 - 120.0)
    assert made.section(104.0).area == pytest.approx(1200.0 - 240.0 - 120.0)
    assert LIGHT.section(105.0).area == pytest.approx(1200.0 - 400.0)  # a slot 5 off the middle counts as 40
