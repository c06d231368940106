"""The picture of the upright by hand: which edges of a block are seen from behind, inside and above.

The eye is in the direction (-1, -1, 0.8), of length sqrt(2.64). Of an upright length sqrt(1 - 0.64 / 2.64) is seen, of one fore
and aft or across the car sqrt(1 - 1 / 2.64).
"""

from itertools import pairwise
from math import dist, sqrt

import pytest

from rules.corner.part import Part
from rules.drawn.full_size.shapes import Stroke
from rules.drawn.isometric import isometric
from rules.measure.outline import Point
from rules.solids.shapes import Prism
from rules.solids.space import Vector
from rules.values.corner.caliper_parts import caliper_bracket_part

X: Vector = (1.0, 0.0, 0.0)
Y: Vector = (0.0, 1.0, 0.0)
ORIGIN: Vector = (0.0, 0.0, 0.0)
UPRIGHT, LEVEL = sqrt(1 - 0.64 / 2.64), sqrt(1 - 1 / 2.64)


def thin(prism: Prism) -> list[tuple[Point, ...]]:
    """What is drawn of a block within its silhouette."""
    view = isometric([Part("steering arm", "upright", (prism,))], 90.0, 60.0)
    return [item.points for item in view.items if isinstance(item, Stroke) and item.pen == "thin" and not item.white]


@pytest.mark.parametrize(("across", "up"), [(X, Y), (Y, X)])
@pytest.mark.parametrize("backwards", [False, True])
@pytest.mark.parametrize("first", [0, 1, 2, 3])
@pytest.mark.parametrize("off", [(-20.0, -20.0), (0.0, 0.0), (-40.0, 0.0), (300.0, 7.0), (-90.0, -700.0), (3.0, -50.0)])
def test_a_block_shows_its_upper_end_and_the_edge_nearest_to_the_eye(
    off: Point, first: int, backwards: bool, across: Vector, up: Vector
) -> None:
    """40 by 40 and 100 high, wherever it stands about its own origin and whichever way its outline runs."""
    x, y = off
    square = ((x, y), (x + 40.0, y), (x + 40.0, y + 40.0), (x, y + 40.0))
    outline = (*square[first:], *square[:first])
    end, *between = thin(Prism((0.0, 0.0, 0.0), across, up, outline[::-1] if backwards else outline, -30.0, 70.0))
    assert len(end) == 5 and end[0] == end[-1]
    scale = 40.0 * LEVEL / dist(end[0], end[1])
    assert all(dist(one, other) * scale == pytest.approx(40.0 * LEVEL) for one, other in pairwise(end))
    # Of the four corners of the upper end the nearest to the eye is lowest in the picture.
    ((top, bottom),) = between
    assert top == pytest.approx(min(end, key=lambda point: point[1]))
    assert top[0] == pytest.approx(bottom[0], abs=1e-9) and (top[1] - bottom[1]) * scale == pytest.approx(
        100.0 * UPRIGHT
    )


def test_a_caliper_bracket_without_its_holes_ends_at_their_line() -> None:
    """120 wide and 40 long: with no hole there is nothing beyond the line of the bolts, and four corners in all."""
    bracket = caliper_bracket_part(12.0, 40.0, 120.0, 45.0, None, None, 0.0, 280.0, -40.0, 1.5, 400.0)
    assert isinstance(bracket, Part)
    (prism,) = bracket.shapes
    assert isinstance(prism, Prism) and prism.outline == ((-60.0, 100.0), (60.0, 100.0), (60.0, 140.0), (-60.0, 140.0))
    assert isometric([bracket], 90.0, 60.0).items


@pytest.mark.parametrize("backwards", [False, True])
def test_a_block_is_drawn_alike_whatever_its_size(backwards: bool) -> None:
    """The block above, and one of a hundredth of it, 0.4 by 0.4 and 1 high: the picture is scaled to its paper."""
    square = ((0.0, 0.0), (40.0, 0.0), (40.0, 40.0), (0.0, 40.0))
    outline = square[::-1] if backwards else square
    small = tuple((x / 100, y / 100) for x, y in outline)
    one, other = thin(Prism(ORIGIN, X, Y, outline, -30.0, 70.0)), thin(Prism(ORIGIN, X, Y, small, -0.3, 0.7))
    assert len(one) == len(other) == 2
    for line, alike in zip(one, other, strict=True):
        for point, place in zip(line, alike, strict=True):
            assert point == pytest.approx(place, abs=1e-6)
