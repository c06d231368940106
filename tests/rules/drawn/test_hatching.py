"""Hatched areas with a hole: what is left round the hole, by areas that a person adds up; and where their lines run."""

import pytest

from rules.drawn.hatching import _one_side, hatching, without_hole
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
        # one edge in line with the corner at the origin
        (((2.0, 2.0), (4.0, 2.0), (4.0, 4.0)), 72 - 2 * 2 / 2),
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


def lines(area: Patch, angle: float, apart: float) -> list[tuple[float, ...]]:
    """Each line of a hatching as x, y of one end and of the other."""
    return [(*start, *end) for start, end in hatching(area, angle, apart)]


@pytest.mark.parametrize(
    ("hole", "broken"),
    [
        # level lines at 0, 3, 6 and 9; a square hole from 4 to 7 each way meets the one at 6
        (((4.0, 4.0), (7.0, 4.0), (7.0, 7.0), (4.0, 7.0)), [(0, 6, 4, 6), (7, 6, 10, 6)]),
        # a hole of three corners, 4 at its foot: half as high it is half as wide
        (((4.0, 4.0), (8.0, 4.0), (4.0, 8.0)), [(0, 6, 4, 6), (6, 6, 10, 6)]),
        # one that ends below that line
        (((4.0, 4.0), (7.0, 4.0), (7.0, 5.5), (4.0, 5.5)), [(0, 6, 10, 6)]),
        ((), [(0, 6, 10, 6)]),
    ],
)
def test_hatching_leaves_a_hole_free(hole: tuple[Point, ...], broken: list[tuple[float, ...]]) -> None:
    """A square of 10, lines 3 apart."""
    whole = Patch(((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)), hole)
    wanted = [(0, 0, 10, 0), (0, 3, 10, 3), *broken, (0, 9, 10, 9)]
    assert lines(whole, 0.0, 3.0) == [pytest.approx(one) for one in wanted]


@pytest.mark.parametrize(
    ("x", "y", "wanted"),
    [
        # They lie where y - x is a whole number of twos: one through both corners and one on either side of it.
        (0.0, 0.0, [(2, 0, 4, 2), (0, 0, 4, 4), (0, 2, 2, 4)]),
        # The same pattern under a square 1 to the right and half of 1 up
        (1.0, 0.5, [(4.5, 0.5, 5, 1), (2.5, 0.5, 5, 3), (1, 1, 4.5, 4.5), (1, 3, 2.5, 4.5)]),
    ],
)
def test_leaning_lines_keep_their_places_wherever_the_area_is(
    x: float, y: float, wanted: list[tuple[float, ...]]
) -> None:
    """A square of 4 and lines at 45 degrees, the square root of 2 apart; turned by 90 more they run the other way."""
    square = Patch(((x, y), (x + 4, y), (x + 4, y + 4), (x, y + 4)))
    assert lines(square, 45.0, 2**0.5) == [pytest.approx(one) for one in wanted]
    mirrored = Patch(tuple((-x, y) for x, y in reversed(square.outer)))
    back = sorted(tuple(sorted(((-x1, y1), (-x2, y2)))) for x1, y1, x2, y2 in lines(mirrored, -45.0, 2**0.5))
    assert back == [(pytest.approx((x1, y1)), pytest.approx((x2, y2))) for x1, y1, x2, y2 in sorted(wanted)]


def test_a_line_through_two_corners_of_a_square_leaves_half_of_it_on_either_side() -> None:
    """Both corners belong to both halves: 10 x 10 / 2 each."""
    square = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    left, right = (_one_side(square, *ends) for ends in (((0.0, 0.0), (10.0, 10.0)), ((10.0, 10.0), (0.0, 0.0))))
    assert set(left) == {(0.0, 0.0), (10.0, 10.0), (0.0, 10.0)} and area(left) == 50.0
    assert set(right) == {(0.0, 0.0), (10.0, 10.0), (10.0, 0.0)} and area(right) == 50.0
