"""Sizes that leave a part of the wheel no metal are refused, with the answers that do not go together."""

import pytest

from rules.graph.results import OutsideRange
from rules.measure.marks import BoltCircle, Thread, read_tyre_mark
from rules.tables.rim_flange import RIM_FLANGE
from rules.values.corner.wheel_parts import rim_part, spokes_part, tyre_part


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
