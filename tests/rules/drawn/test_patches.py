"""The edges of what several convex patches cover together, by hand."""

from collections.abc import Sequence
from itertools import pairwise
from math import hypot, pi, sqrt
from random import Random

import pytest

from rules.drawn.patches import EdgeLine, Patch, clipped, common, edges, hidden
from rules.drawn.projection import seen
from rules.drawn.views import FROM_OUTSIDE
from rules.solids.shapes import Bore, Prism, Revolved, Shape
from rules.solids.space import Vector


def length(lines: Sequence[EdgeLine]) -> float:
    return sum(hypot(b[0] - a[0], b[1] - a[1]) for line in lines for a, b in pairwise(line))


def square(x: float, y: float, side: float = 10.0) -> EdgeLine:
    return ((x, y), (x + side, y), (x + side, y + side), (x, y + side))


def test_where_two_pieces_of_one_part_meet_there_is_no_edge() -> None:
    """Round 10 x 10 and 10 x 10 beside it: 60."""
    (line,) = edges([Patch(square(0.0, 0.0)), Patch(square(10.0, 0.0))])
    assert line[0] == line[-1] and len(line) == 5
    assert length([line]) == pytest.approx(60.0)


def test_where_they_lie_on_one_another_each_edge_stands_once() -> None:
    assert length(edges([Patch(square(0.0, 0.0)), Patch(square(0.0, 0.0))])) == pytest.approx(40.0)
    assert length(edges([Patch(square(0.0, 0.0)), Patch(square(0.0, 0.0, 4.0))])) == pytest.approx(40.0)


def test_what_fills_a_hole_leaves_no_edge_of_it() -> None:
    plate = Patch(square(0.0, 0.0, 30.0), square(10.0, 10.0))
    assert length(edges([plate])) == pytest.approx(160.0)
    assert length(edges([plate, Patch(square(10.0, 10.0))])) == pytest.approx(120.0)
    assert length(edges([plate, plate])) == pytest.approx(160.0)


def test_what_stands_on_a_notch_keeps_its_edge_there() -> None:
    """A square of 2 without its upper right quarter, 8 round; on the notch 3 by 2, 10 round: they meet in a corner alone."""
    notched = Patch(square(0.0, 0.0, 2.0), square(1.0, 1.0, 1.0))
    above = Patch(((1.0, 2.0), (4.0, 2.0), (4.0, 4.0), (1.0, 4.0)))
    for patches in ((above, notched), (notched, above)):
        assert length(edges(patches)) == pytest.approx(18.0)


def test_what_fills_a_notch_has_the_edge_on_its_open_sides() -> None:
    """The square of 2 whole again, 8 round; of its upper right quarter only the right half filled: a slit of half by one."""
    notched = Patch(square(0.0, 0.0, 2.0), square(1.0, 1.0, 1.0))
    half = Patch(((1.5, 1.0), (2.0, 1.0), (2.0, 2.0), (1.5, 2.0)))
    for filling, round_it in ((Patch(square(1.0, 1.0, 1.0)), 8.0), (half, 8.0 + 2.0)):
        for patches in ((filling, notched), (notched, filling)):
            assert length(edges(patches)) == pytest.approx(round_it)


def test_what_lies_behind_something_is_not_seen() -> None:
    """A bar 10 high behind a square of 4 in its middle, as high: its two long edges lose 4 each."""
    bar = Patch(((0.0, 0.0), (20.0, 0.0), (20.0, 10.0), (0.0, 10.0)))
    cover = Patch(((8.0, -1.0), (12.0, -1.0), (12.0, 11.0), (8.0, 11.0)))
    lines = edges([bar], [cover])
    assert length(lines) == pytest.approx(60.0 - 8.0)
    assert len(lines) == 2 and all(line[0] != line[-1] for line in lines)


def test_a_plate_with_round_corners_and_a_bore_has_two_edges() -> None:
    """A square of 100 with corners of 20 and a bore of 60: 4 x 60 + 2 pi 20, and 2 pi 30."""
    r = 20.0
    cross_ = tuple(
        (x, z)
        for x, z in (
            (-30, -50), (30, -50), (30, -30), (50, -30), (50, 30), (30, 30), (30, 50), (-30, 50), (-30, 30), (-50, 30),
            (-50, -30), (-30, -30),
        )
    )  # fmt: skip
    shapes: list[Shape] = [
        Prism((0.0, 0.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 1.0), cross_, 0.0, 8.0, Bore((0.0, 0.0), 30.0))
    ]
    for x, z in ((-30.0, -30.0), (30.0, -30.0), (30.0, 30.0), (-30.0, 30.0)):
        towards: Vector = (x / 30 / sqrt(2), 0.0, z / 30 / sqrt(2))
        profile = ((0.0, 0.0), (r, 0.0), (r, 8.0), (0.0, 8.0))
        shapes.append(Revolved((x, 0.0, z), (0.0, 1.0, 0.0), profile, towards=towards, half_angle=pi / 4))
    lines = edges(seen(shapes, FROM_OUTSIDE))
    lengths = sorted(length([line]) for line in lines)
    assert lengths == pytest.approx([60 * pi, 240 + 40 * pi], rel=2e-3)
    assert all(line[0] == line[-1] for line in lines)


@pytest.mark.parametrize(
    ("cover", "hides", "below"),
    [
        # a triangle 20 wide at its foot and 10 high: 1 above its foot it is 18 wide; its sides lean by 45 degrees
        (((0.0, -1.0), (20.0, -1.0), (10.0, 9.0)), 18.0, 20.0 + 2 * sqrt(2)),
        (((5.0, -1.0), (12.0, -1.0), (12.0, 9.0), (5.0, 9.0)), 7.0, 7.0 + 2 * 1.0),
        # a pentagon, 8 wide where it stands over the edge
        (((6.0, -1.0), (14.0, -1.0), (14.0, 5.0), (10.0, 9.0), (6.0, 5.0)), 8.0, 8.0 + 2 * 1.0),
    ],
)
def test_what_covers_has_three_corners_or_more(cover: EdgeLine, hides: float, below: float) -> None:
    """It stands over the lower edge of a bar 20 by 10, 1 below it. Where the bar covers it, what is below the bar is left."""
    bar, over = Patch(((0.0, 0.0), (20.0, 0.0), (20.0, 10.0), (0.0, 10.0))), Patch(cover)
    assert length(edges([bar], [over])) == pytest.approx(60.0 - hides)
    assert length(hidden([bar], [over])) == pytest.approx(hides)
    assert length(edges([over], [bar])) == pytest.approx(below)


def test_what_lies_under_something_is_hidden_and_the_rest_is_not() -> None:
    """A bar 20 by 10 under a square of 4 in its middle: 4 of each long edge is hidden."""
    bar = Patch(((0.0, 0.0), (20.0, 0.0), (20.0, 10.0), (0.0, 10.0)))
    cover = Patch(((8.0, -1.0), (12.0, -1.0), (12.0, 11.0), (8.0, 11.0)))
    assert length(hidden([bar], [cover])) == pytest.approx(8.0)
    assert length(hidden([bar], [cover])) + length(edges([bar], [cover])) == pytest.approx(60.0)
    assert hidden([bar], []) == ()


def test_a_line_over_an_area_with_a_hole_and_something_on_it() -> None:
    """30 long; a hole of 10 in the middle; something 5 wide on its left."""
    plate, on_it = Patch(square(0.0, 0.0, 30.0), square(10.0, 10.0)), Patch(square(0.0, 10.0, 5.0))
    found = clipped(plate, (-10.0, 12.0), (40.0, 12.0), [on_it])
    assert [(start[0], end[0]) for start, end in found] == [pytest.approx((5.0, 10.0)), pytest.approx((20.0, 30.0))]


def test_outlines_apart_have_nothing_in_common() -> None:
    assert common(square(0.0, 0.0), square(20.0, 0.0)) == ()
    assert len(common(square(0.0, 0.0), square(5.0, 5.0))) == 4


@pytest.mark.parametrize("low", [0.0, -2.0])
def test_a_hole_that_opens_on_a_side_is_a_notch(low: float) -> None:
    """4 wide and to 4 up in a square of 10, its lower edge on the square's or below it: round the square without the mouth
    36, and 4 + 4 + 4 round the notch, in one line."""
    hole = ((3.0, low), (7.0, low), (7.0, 4.0), (3.0, 4.0))
    lines = edges([Patch(square(0.0, 0.0), hole)])
    assert length(lines) == pytest.approx(48.0) and len(lines) == 1
    assert lines[0][0] == lines[0][-1]
    assert not any(a[1] == b[1] == 0.0 and 3.0 < (a[0] + b[0]) / 2 < 7.0 for a, b in pairwise(lines[0]))


def test_one_direction_of_two_borders_on_one_another_stands() -> None:
    """Two squares of 10, one over the other by half: what of each border lies in the other is left out, 60 round both. Where
    their lower edges lie on one another that is drawn once."""
    one, other = Patch(square(0.0, 0.0)), Patch(square(5.0, 0.0))
    for patches in ((one, other), (other, one)):
        lines = edges(patches)
        assert length(lines) == pytest.approx(2 * 15.0 + 2 * 10.0) and len(lines) == 1


def test_a_hole_that_lies_beside_an_area_changes_nothing_of_its_edge() -> None:
    """4 by 4 below a square of 10, its upper side on the square's lower one: 40 round the square."""
    hole = ((3.0, -4.0), (7.0, -4.0), (7.0, 0.0), (3.0, 0.0))
    lines = edges([Patch(square(0.0, 0.0), hole)])
    assert len(lines) == 1 and length(lines) == pytest.approx(40.0)


Cells = tuple[int, int, int, int]
"""From where to where across and up, in whole squares."""


def rectangle(cells: Cells) -> EdgeLine:
    left, bottom, right, top = map(float, cells)
    return ((left, bottom), (right, bottom), (right, top), (left, top))


def squares(cells: Cells) -> set[tuple[int, int]]:
    return {(x, y) for x in range(cells[0], cells[2]) for y in range(cells[1], cells[3])}


def test_round_squares_put_anyhow_the_edge_is_as_long_as_counted_square_by_square() -> None:
    """Two to four rectangles, many with a hole that may open on one or two of their sides. Counted: every side of a covered
    square beyond which there is none."""
    dice = Random(5)
    for _ in range(150):
        patches, covered = list[Patch](), set[tuple[int, int]]()
        for _ in range(dice.randrange(2, 5)):
            x, y, wide, high = (dice.randrange(low, low + 4) for low in (0, 0, 1, 1))
            left, low, right, top = (dice.randrange(2) for _ in range(4))
            hole: Cells = (x + left, y + low, x + wide - right, y + high - top)
            holed = dice.random() < 0.6 and hole[0] < hole[2] and hole[1] < hole[3] and any((left, low, right, top))
            whole: Cells = (x, y, x + wide, y + high)
            covered |= squares(whole) - (squares(hole) if holed else set())
            patches.append(Patch(rectangle(whole), rectangle(hole) if holed else ()))
        counted = sum(
            (x + to_x, y + to_y) not in covered for x, y in covered for to_x, to_y in ((1, 0), (-1, 0), (0, 1), (0, -1))
        )
        assert length(edges(patches)) == pytest.approx(counted), patches
