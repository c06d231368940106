"""Hatched areas with a hole: what is left round the hole, by areas that a person adds up."""

import pytest

from rules.drawn.hatching import without_hole
from rules.drawn.patches import Patch
from rules.measure.outline import Point

CORNER = ((0.0, 0.0), (12.0, 0.0), (0.0, 12.0))
"""A triangle of 12 x 12 / 2 = 72."""


def area(outline: tuple[Point, ...]) -> float:
    """By the shoelace formula."""
    pairs = zip(outline, (*outline[1:], outline[0]), strict=True)
    return abs(sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in pairs)) / 2


@pytest.mark.parametrize(
    ("hole", "left"),
    [
        (((1.0, 1.0), (4.0, 1.0), (1.0, 4.0)), 72 - 3 * 3 / 2),
        (((2.0, 1.0), (5.0, 1.0), (5.0, 3.0), (2.0, 3.0)), 72 - 3 * 2),
        (((0.0, 0.0), (12.0, 0.0), (0.0, 12.0)), 0.0),
        ((), 72.0),
    ],
)
def test_what_is_left_round_a_hole_is_all_but_the_hole(hole: tuple[Point, ...], left: float) -> None:
    """Above the first edge of the triangular hole a triangle is left again, of which two more pieces are cut."""
    assert sum(map(area, without_hole(Patch(CORNER, hole)))) == pytest.approx(left)


def test_a_hole_that_sticks_out_leaves_what_lies_beside_it() -> None:
    """A hole from 3 below to 12 across: of the triangle, what lies above the level of 1 is left: 11 x 11 / 2."""
    wide = ((-1.0, -3.0), (13.0, -3.0), (13.0, 1.0), (-1.0, 1.0))
    assert sum(map(area, without_hole(Patch(CORNER, wide)))) == pytest.approx(11 * 11 / 2)
