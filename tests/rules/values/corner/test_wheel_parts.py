"""Sizes that leave a part of the wheel no metal are refused, with the answers that do not go together."""

import pytest

from rules.graph.results import OutsideRange
from rules.measure.marks import BoltCircle, Thread
from rules.tables.rim_flange import RIM_FLANGE
from rules.values.corner.wheel_parts import rim_part, spokes_part


@pytest.mark.parametrize(("circle", "stud", "refused"), [(80.0, 40.0, False), (79.9, 40.0, True), (50.0, 40.0, True)])
def test_studs_side_by_side_fill_a_bolt_circle_of_twice_their_diameter(
    circle: float, stud: float, refused: bool
) -> None:
    sizes = (10.0, 0.0, 240.0, 360.0, BoltCircle("", 3, circle), Thread("", stud, 4.0), 12.0, 400.0)
    if not refused:
        assert spokes_part(*sizes).text == "spokes: 2 shapes, wheel"
        return
    with pytest.raises(OutsideRange, match="check bolt circle and stud thread"):
        spokes_part(*sizes)


@pytest.mark.parametrize(("wider", "refused"), [(-0.1, False), (0.0, True), (100.0, True)])
def test_a_barrel_is_narrower_inside_than_the_flanges_of_its_rim(wider: float, refused: bool) -> None:
    barrel = 381.0 + 2 * RIM_FLANGE + wider
    if not refused:
        assert rim_part(barrel, 381.0, 240.0, 400.0).text == "rim: revolved, wheel"
        return
    with pytest.raises(OutsideRange, match="barrel's inside diameter"):
        rim_part(barrel, 381.0, 240.0, 400.0)
