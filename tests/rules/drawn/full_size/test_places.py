"""Which lines run through a turned rectangle, by hand and by looking at many points of each line."""

from random import Random

import pytest

from rules.drawn.full_size.places import TAIL, Corners, Segment, crossed, crossed_by, crossing, meet, on_line

DIAMOND: Corners = ((0.0, -10.0), (10.0, 0.0), (0.0, 10.0), (-10.0, 0.0))
"""A square on its corner: inside, the sizes of x and y come to less than 10 together."""


@pytest.mark.parametrize(
    ("line", "inside"),
    [
        ((-20.0, 0.0, 20.0, 0.0), True),
        ((0.0, 20.0, 0.0, -20.0), True),
        ((2.0, 9.0, 9.0, 2.0), False),  # beside a side of it and along it: x and y come to 11
        ((9.0, 2.0, 2.0, 9.0), False),
        ((-2.0, -9.0, -9.0, -2.0), False),
        ((1.0, 8.0, 8.0, 1.0), True),  # they come to 9
        ((12.0, 12.0, 6.0, 6.0), False),  # ends before it
        ((12.0, 12.0, 4.0, 4.0), True),  # ends in it
        ((1.0, 1.0, 2.0, -1.0), True),  # all in it
        ((11.0, -9.0, 11.0, 9.0), False),
        ((-11.0, -9.0, -11.0, 9.0), False),
        ((-9.0, 11.0, 9.0, 11.0), False),
        ((-9.0, -11.0, 9.0, -11.0), False),
    ],
)
def test_a_line_through_a_turned_square(line: Segment, inside: bool) -> None:
    assert crossed(DIAMOND, [line]) is inside


def test_any_line_through_a_turned_square_has_a_point_in_it() -> None:
    dice = Random("lines")
    both = set()
    for _ in range(150):
        x1, y1, x2, y2 = (dice.uniform(-14, 14) for _ in range(4))
        line = (x1, y1, x2, y2)
        points = ((x1 + (x2 - x1) * step / 300, y1 + (y2 - y1) * step / 300) for step in range(301))
        nearest = min(abs(x) + abs(y) for x, y in points)
        if abs(nearest - 10.0) > 0.2:
            assert crossed(DIAMOND, [line]) is (nearest < 10.0), line
            both.add(nearest < 10.0)
    assert both == {True, False}


def test_the_first_line_that_runs_through_is_told() -> None:
    beside, through = (2.0, 9.0, 9.0, 2.0), (-20.0, 0.0, 20.0, 0.0)
    assert crossing(DIAMOND, [beside, beside, through, through]) == 2
    assert crossing(DIAMOND, [through]) == 0
    assert crossing(DIAMOND, [beside]) is None
    assert crossing(DIAMOND, []) is None


@pytest.mark.parametrize(
    ("edge", "crosses"),
    [
        ((5.0, -5.0, 5.0, 5.0), True),
        ((5.0, 5.0, 5.0, -5.0), True),
        ((5.0, 1.0, 5.0, 5.0), False),  # would meet it farther on
        ((12.0, -5.0, 12.0, 5.0), False),
        ((-2.0, -5.0, -2.0, 5.0), False),
        ((0.0, 1.0, 10.0, 1.0), False),  # beside it
        ((2.0, 0.0, 8.0, 0.0), True),  # along it
        ((2.0, 1e-12, 8.0, -1e-12), True),
        ((2.0, 1e-12, 8.0, 1e-12), True),
        ((5.0, 0.0, 5.0, 5.0), True),  # ends on it
        ((5.0, -1e-12, 5.0, -5.0), True),
    ],
)
def test_whether_two_straight_lines_cross(edge: Segment, crosses: bool) -> None:
    """One runs 10 along the level."""
    assert meet((0.0, 0.0), (10.0, 0.0), edge) is crosses


@pytest.mark.parametrize("way", [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0), (0.6, 0.8), (-0.8, 0.6)])
def test_a_line_is_not_crossed_by_one_that_is_in_line_with_it_farther_on(way: tuple[float, float]) -> None:
    """It runs from 0 to 10, whichever way; one from 12 to 15, one behind it and one from 9 on, each from either of its ends."""
    x, y = way
    end = (10 * x, 10 * y)
    beyond, behind, along = ((a * x, a * y, b * x, b * y) for a, b in ((12, 15), (-5, -2), (9, 15)))
    turned = tuple((x2, y2, x1, y1) for x1, y1, x2, y2 in (beyond, behind, along))
    for ends in (((0.0, 0.0), end), (end, (0.0, 0.0))):
        assert list(crossed_by(*ends, [beyond, behind, along, *turned])) == [along, turned[2]]


@pytest.mark.parametrize("last_bit", [-3e-14, 0.0, 3e-14])
@pytest.mark.parametrize("corner", [5.0, 0.5])
def test_a_line_through_a_corner_of_an_outline_crosses_both_its_sides(corner: float, last_bit: float) -> None:
    """Wherever rounding has put the corner."""
    sides = ((4.0, 3.0, corner, last_bit), (corner, last_bit, 6.0, -3.0))
    for start, end in (((0.0, 0.0), (10.0, 0.0)), ((10.0, 0.0), (0.0, 0.0))):
        assert all(meet(start, end, side) for side in sides)


@pytest.mark.parametrize(("outside", "tail"), [(False, 0.0), (True, TAIL)])
def test_a_figure_too_long_for_its_line_stands_beyond_one_end_and_then_beyond_the_other(
    outside: bool, tail: float
) -> None:
    """A millimetre past the arrow's tail, on a line of 2 from (10, 0) to (12, 0): from 13 on, or up to 9; then 3 further out."""
    found = [(words.align, words.at[0]) for words, _ in on_line("1234 mm", (10.0, 0.0), (12.0, 0.0), outside)]
    assert found[:4] == [
        ("left", 13.0 + tail), ("right", 9.0 - tail), ("left", 16.0 + tail), ("right", 6.0 - tail)
    ]  # fmt: skip
