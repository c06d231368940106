"""Sizes that leave a part of the wheel no metal are refused, with the answers that do not go together."""

import pytest

from rules.corner.part import Part
from rules.graph.results import OutsideRange
from rules.measure.marks import BoltCircle, Thread, read_tyre_mark
from rules.tables.rim_flange import RIM_FLANGE
from rules.values.corner.wheel_parts import (
    hub_flange_part,
    rim_part,
    rotor_hat_part,
    rotor_ring_part,
    spokes_part,
    stud_heads_part,
    tyre_part,
    wheel_nuts_part,
)


@pytest.mark.parametrize(("circle", "stud", "refused"), [(80.0, 40.0, False), (79.9, 40.0, True), (50.0, 40.0, True)])
def test_studs_side_by_side_fill_a_bolt_circle_of_twice_their_diameter(
    circle: float, stud: float, refused: bool
) -> None:
    sizes = (10.0, 0.0, 240.0, 360.0, BoltCircle("", 3, circle), Thread("", stud, 4.0), 12.0, 400.0)
    if not refused:
        assert spokes_part(*sizes).text == "spokes: 2 shapes, wheel"
        return
    with pytest.raises(OutsideRange, match="smaller than two studs side by side"):
        spokes_part(*sizes)


@pytest.mark.parametrize(("wider", "refused"), [(-0.1, False), (0.0, True), (100.0, True)])
def test_a_barrel_is_narrower_inside_than_the_flanges_of_its_rim(wider: float, refused: bool) -> None:
    barrel = 381.0 + 2 * RIM_FLANGE + wider
    if not refused:
        assert rim_part(barrel, 381.0, 240.0, 400.0).text == "rim: revolved, wheel"
        return
    with pytest.raises(OutsideRange, match="as wide inside as the rim"):
        rim_part(barrel, 381.0, 240.0, 400.0)


def test_a_tyre_whose_wheel_is_not_entered_stands_on_the_rim_its_mark_names() -> None:
    """35x12.50R15: rim 15 in = 381, flange 17.5 beyond; sides straight, half of 12.5 in = 158.75 from the middle."""
    part = tyre_part(read_tyre_mark("35x12.50R15LT"), None, None, None, 400.0)
    (piece,) = part.solid.pieces
    reach = [piece.support(*way) for way in ((0.0, 0.0, 1.0), (0.0, 1.0, 0.0))]
    assert reach[0][2] + piece.radius == pytest.approx(400.0 + 444.5)
    assert reach[1][1] + piece.radius == pytest.approx(158.75)
    assert min(radius for radius, _ in piece.profile) - piece.radius == pytest.approx(190.5 + 17.5)  # type: ignore[union-attr]


@pytest.mark.parametrize("overall_width", [76.2, 20.0])
def test_a_tyre_far_too_wide_for_its_rim_has_an_outline_that_does_not_cross_itself(overall_width: float) -> None:
    """40 in wide and 99 tall on a rim of a few inches: shoulders no rounder than its foot is wide."""
    part = tyre_part(read_tyre_mark("99x40R15"), None, 381.0, overall_width, 400.0)
    assert all(piece.profile and piece.radius <= overall_width / 2 for piece in part.solid.pieces)  # type: ignore[union-attr]


FIVE, M12 = BoltCircle("", 5, 100.0), Thread("", 12.0, 1.5)
# Where each part stands, mm, the axle 400 up: from inboard to outboard, its top, and its inside radius where it is a ring.
PLACES = [
    # 381 / 2 + 17.5 = 208 up; 240 wide.
    (rim_part(360.0, 381.0, 240.0, 400.0), -120.0, 120.0, 608.0, 180.0),
    # The disc from 5 + 10 to the lip at 120; the centre from the mounting face at 5; inside radius 50 - 12.
    (spokes_part(10.0, 5.0, 240.0, 360.0, FIVE, M12, 12.0, 400.0), 5.0, 120.0, 580.0, 38.0),
    # A narrow wheel: spokes count 10 thick at least: 15 to 25.
    (spokes_part(10.0, 5.0, 30.0, 360.0, FIVE, M12, 12.0, 400.0), 5.0, 25.0, 580.0, 38.0),
    # The seat at 5 + 12; ISO 4032 M12: 10.8 high, 18 across flats, so 18 / 2 / cos 30 = 10.392; 1 bare thread.
    (wheel_nuts_part(5.0, 12.0, M12, FIVE, 400.0), 17.0, 28.8, 460.392, None),
    (rotor_ring_part(280.0, 180.0, 20.0, -40.0, 400.0), -50.0, -30.0, 540.0, 90.0),
    # The web is as thick as the hat, in the middle of the ring: -40 - 3; it reaches to the band at 90.
    (rotor_hat_part(160.0, 6.0, 70.0, 0.0, -40.0, 20.0, 180.0, 400.0), -43.0, 0.0, 490.0, 35.0),
    # A hat that reaches outboard of the face, and no web to a band as small as itself.
    (rotor_hat_part(160.0, 6.0, 70.0, 0.0, 40.0, 20.0, 160.0, 400.0), -6.0, 40.0, 480.0, 35.0),
    (hub_flange_part(140.0, 10.0, -5.0, 400.0), -15.0, -5.0, 470.0, None),
    (stud_heads_part(18.0, 6.0, 10.0, FIVE, 0.0, 400.0), -16.0, -10.0, 459.0, None),
    (stud_heads_part(18.0, 0.5, 10.0, FIVE, 0.0, 400.0), -10.5, -10.0, 459.0, None),
]  # fmt: skip


def farthest(part: Part, *way: float) -> float:
    return max(
        sum(one * other for one, other in zip(piece.support(*way), way, strict=True)) + piece.radius
        for piece in part.solid.pieces
    )


@pytest.mark.parametrize(("part", "inboard", "outboard", "top", "inside"), PLACES)
def test_each_part_of_the_wheel_stands_where_its_sizes_put_it(
    part: Part, inboard: float, outboard: float, top: float, inside: float | None
) -> None:
    assert farthest(part, 0.0, -1.0, 0.0) == pytest.approx(-inboard, abs=1e-3)
    assert farthest(part, 0.0, 1.0, 0.0) == pytest.approx(outboard, abs=1e-3)
    assert farthest(part, 0.0, 0.0, 1.0) == pytest.approx(top, abs=1e-3)
    if inside is not None:
        radii = [radius for piece in part.solid.pieces for radius, _ in getattr(piece, "profile", ())]
        assert min(radii) == pytest.approx(inside)
