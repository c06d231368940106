"""The drawing board's strokes by hand: where each line begins and ends, and where words go when a line is in the way.

Arrowheads 3.5 mm long and 1.2 mm wide, projection lines that start 1.5 mm off the feature and run 1.5 mm past the dimension
line, hatching every 5 mm measured level: the board's own sizes, after the habits of ISO 128 and ISO 129-1.
"""

from math import hypot, pi, radians, sqrt

import pytest

from rules.drawn.full_size.board import Board
from rules.drawn.full_size.places import crossed
from rules.drawn.full_size.shapes import PaperArc, PaperCircle, PaperWords, Stroke, bounds, words_width
from rules.drawn.patches import Patch
from rules.measure.outline import Point


def near(points: list[Point]) -> list[object]:
    return [pytest.approx(point, abs=1e-9) for point in points]


def strokes(board: Board) -> list[list[Point]]:
    return [list(item.points) for item in board.shapes if isinstance(item, Stroke)]


def words(board: Board) -> list[PaperWords]:
    return [item for item in board.items if isinstance(item, PaperWords)]


def test_the_centre_lines_of_a_round_thing_cross_on_its_centre() -> None:
    board = Board()
    board.cross((30.0, 20.0), 8.0)
    assert strokes(board) == [[(22.0, 20.0), (38.0, 20.0)], [(30.0, 12.0), (30.0, 28.0)]]


@pytest.mark.parametrize(
    ("towards", "corners"),
    [
        (0.0, [(10.0, 5.0), (6.5, 5.6), (6.5, 4.4)]),
        (pi / 2, [(10.0, 5.0), (9.4, 1.5), (10.6, 1.5)]),
        (pi, [(10.0, 5.0), (13.5, 4.4), (13.5, 5.6)]),
    ],
)
def test_an_arrowhead_points_where_it_should(towards: float, corners: list[Point]) -> None:
    board = Board()
    board.arrowhead((10.0, 5.0), towards)
    (head,) = board.shapes
    assert isinstance(head, Stroke) and head.closed and head.filled and list(head.points) == near(corners)


def test_a_level_dimension_has_projection_lines_a_line_and_two_arrowheads_that_point_outwards() -> None:
    board = Board()
    board.across((0.0, 0.0), (40.0, 10.0), 30.0, "40")
    first, second, line, left, right = strokes(board)
    assert first == near([(0.0, 1.5), (0.0, 31.5)]) and second == near([(40.0, 11.5), (40.0, 31.5)])
    assert line == near([(0.0, 30.0), (40.0, 30.0)])
    assert left == near([(0.0, 30.0), (3.5, 29.4), (3.5, 30.6)])
    assert right == near([(40.0, 30.0), (36.5, 30.6), (36.5, 29.4)])


def test_an_upright_dimension_stands_on_its_side() -> None:
    board = Board()
    board.up((0.0, 0.0), (10.0, 40.0), -20.0, "40")
    first, second, line, *_ = strokes(board)
    assert first == near([(-1.5, 0.0), (-21.5, 0.0)]) and second == near([(8.5, 40.0), (-21.5, 40.0)])
    assert line == near([(-20.0, 0.0), (-20.0, 40.0)])
    board.settle()
    (figure,) = words(board)  # read from the right, left of its line: half its height is 3 mm off
    assert figure.at == pytest.approx((-23.0, 20.0)) and figure.angle == pytest.approx(90.0)


def test_a_dimension_along_a_slope_lies_to_the_left_of_its_way() -> None:
    board = Board()
    board.along((0.0, 0.0), (30.0, 40.0), 10.0, "50")  # 3, 4, 5: ten mm to the left is 8 back and 6 up
    *_, line, _, _ = strokes(board)
    assert line == near([(-8.0, 6.0), (22.0, 46.0)])


def test_a_short_dimension_has_its_arrowheads_outside_and_its_line_runs_seven_past_each_end() -> None:
    board = Board()
    board.across(
        (0.0, 0.0), (10.0, 0.0), 0.0, "10"
    )  # less than three arrowheads, 10.5 mm; no projection lines on itself
    line, left, right = strokes(board)
    assert line == near([(-7.0, 0.0), (17.0, 0.0)])
    assert left == near([(0.0, 0.0), (-3.5, 0.6), (-3.5, -0.6)])
    assert right == near([(10.0, 0.0), (13.5, -0.6), (13.5, 0.6)])
    board.settle()
    (figure,) = words(board)
    assert figure.at == pytest.approx((5.0, 3.0)) and figure.align == "centre"


def test_a_dimension_of_three_arrowheads_has_them_inside() -> None:
    board = Board()
    board.across((0.0, 0.0), (10.5, 0.0), 0.0, "10")
    line, left, _ = strokes(board)
    assert line == near([(0.0, 0.0), (10.5, 0.0)]) and left[1] == pytest.approx((3.5, -0.6))


def test_a_figure_wider_than_its_dimension_stands_beyond_its_end_on_a_line_of_its_own() -> None:
    board = Board()
    board.across((0.0, 0.0), (12.0, 0.0), 0.0, "a figure far wider than that")
    board.settle()
    (figure,) = words(board)
    assert figure.at == pytest.approx((13.0, 3.0)) and figure.align == "left"  # one mm past the arrow's point
    carrier = strokes(board)[-1]
    assert carrier[0] == pytest.approx((12.0, 0.0)) and carrier[1][0] == pytest.approx(13.0 + words_width(figure.text))


def test_two_points_in_one_place_have_words_and_no_dimension_line() -> None:
    board = Board()
    board.across((5.0, 0.0), (5.0, 0.0), 0.0, "0")
    assert board.shapes == []
    board.settle()
    (figure,) = words(board)
    assert figure.text == "0"


def test_a_leaning_line_is_dimensioned_from_plumb_by_an_arc() -> None:
    board = Board()
    board.lean((0.0, 0.0), radians(30), 100.0, "30 deg")
    plumb, arc, head, foot = strokes(board)
    assert plumb == near([(0.0, 1.5), (0.0, 101.5)])
    assert len(arc) == 25 and arc[0] == pytest.approx((0.0, 100.0))
    assert arc[-1] == pytest.approx((-50.0, 50 * sqrt(3)))  # sin 30 to the left, cos 30 up
    assert all(hypot(*point) == pytest.approx(100.0) for point in arc)
    assert head[0] == pytest.approx(arc[-1]) and foot[0] == pytest.approx(arc[0])
    assert head[1][0] > head[0][0] and foot[1][0] < foot[0][0]  # each lies back along the arc
    small = Board()
    small.lean((0.0, 0.0), 0.08, 100.0, "5 deg")  # 8 mm of arc: no room for two arrowheads of 3.5 mm and a gap
    assert len(strokes(small)) == 2


def test_hatching_runs_at_45_degrees_through_one_area_and_its_neighbour() -> None:
    def runs(left: float, right: float) -> list[list[Point]]:
        board = Board()
        board.hatch(Patch(((left, 0.0), (right, 0.0), (right, 10.0), (left, 10.0))))
        return strokes(board)

    ten = runs(0.0, 10.0)
    # y = x - c for c = -5, 0 and 5; the corners' own lines, c = -10 and 10, have no length.
    long = sorted([sorted(run) for run in ten if hypot(run[1][0] - run[0][0], run[1][1] - run[0][1]) > 1e-6])
    assert long == [near([(0.0, 0.0), (10.0, 10.0)]), near([(0.0, 5.0), (5.0, 10.0)]), near([(5.0, 0.0), (10.0, 5.0)])]
    # The line of c = 5 leaves the first area at (10, 5), and goes on from there in the next.
    assert any(min(run) == pytest.approx((10.0, 5.0)) for run in runs(10.0, 20.0))


def test_an_edge_of_a_quarter_turn_is_a_true_arc() -> None:
    board = Board()
    # From (10, 0) to (0, 10) round the origin: the bulge is tan(90 / 4 degrees).
    board.edge([(10.0, 0.0, 0.41421356237309503), (0.0, 10.0, 0.0), (0.0, 0.0, 0.0)])
    arc, *lines = board.shapes
    assert isinstance(arc, PaperArc)
    assert arc.centre == pytest.approx((0.0, 0.0), abs=1e-9) and arc.radius == pytest.approx(10.0)
    assert arc.start % 360 == pytest.approx(0.0, abs=1e-9) and arc.sweep == pytest.approx(90.0)
    assert [list(line.points) for line in lines if isinstance(line, Stroke)] == [
        [(0.0, 10.0), (0.0, 0.0)],
        [(0.0, 0.0), (10.0, 0.0)],
    ]


def test_a_closed_stroke_is_in_the_way_along_its_last_side_too_and_an_open_one_is_not() -> None:
    for closed, aside in ((True, True), (False, False)):
        board = Board()
        board.line((0.0, 0.0), (0.0, 60.0), (60.0, 60.0), (60.0, 0.0), pen="thin", closed=closed)
        board.across((10.0, -4.0), (50.0, -4.0), -3.0, "4")  # its figure in the middle would stand at y = 0
        board.settle()
        (figure,) = words(board)
        assert (abs(figure.at[0] - 30.0) > 1.0) is aside


def test_a_circle_is_in_the_way_of_words_all_round() -> None:
    for place in ((20.0, 0.0), (0.0, 20.0), (-20.0, 0.0), (0.0, -20.0)):
        board = Board()
        board.circle((0.0, 0.0), 20.0)
        assert isinstance(board.shapes[0], PaperCircle)
        board.across((place[0] - 20.0, place[1] - 3.0), (place[0] + 20.0, place[1] - 3.0), place[1] - 3.0, "4")
        board.settle()
        (figure,) = words(board)
        assert abs(figure.at[0] - place[0]) > 1.0


ROOM = ((0.0, 0.0), (0.0, 10.0), (20.0, 10.0), (20.0, 0.0))


@pytest.mark.parametrize(
    ("line", "in_it"),
    [
        ((-5.0, 5.0, 25.0, 5.0), True),
        ((5.0, 4.0, 6.0, 5.0), True),
        ((-5.0, 12.0, 25.0, 12.0), False),
        ((-5.0, -2.0, 25.0, -2.0), False),
        ((-5.0, 0.0, -5.0, 10.0), False),
        ((25.0, 0.0, 25.0, 10.0), False),
        ((-6.0, 5.0, 5.0, 16.0), False),  # past the corner: its box overlaps, itself it does not
        ((-4.0, 5.0, 6.0, 15.0), True),  # enters at (0, 9)
        ((-5.0, 5.0, -1.0, 5.0), False),
    ],
)
def test_what_part_of_a_line_is_in_a_rectangle(line: tuple[float, float, float, float], in_it: bool) -> None:
    turned = [(ROOM[index % 4]) for index in (3, 2, 1, 0)]
    assert crossed((turned[0], turned[1], turned[2], turned[3]), [line]) is in_it


def test_a_label_takes_the_first_clear_place_7_mm_off_at_30_degrees() -> None:
    board = Board()
    board.label((0.0, 0.0), "word")
    board.settle()
    (label,) = words(board)
    assert label.at == pytest.approx((7 * sqrt(3) / 2 + 0.8, 3.5)) and label.align == "left"
    assert strokes(board) == [near([(0.0, 0.0), (7 * sqrt(3) / 2, 3.5)])]


def test_a_leader_line_goes_round_a_hole_and_round_a_projection_line() -> None:
    """At 30 degrees the first place is 7 mm off; a hole of 1.5 mm radius lies in its way, 5 mm off."""
    board = Board()
    hole = (5 * sqrt(3) / 2, 2.5)
    board.circle(hole, 1.5)
    board.label((0.0, 0.0), "word")
    board.settle()
    ((x1, y1), (x2, y2)) = words(board)[0].led
    steps = [(x1 + (x2 - x1) * step / 100, y1 + (y2 - y1) * step / 100) for step in range(101)]
    assert min(hypot(x - hole[0], y - hole[1]) for x, y in steps) > 1.5
    board = Board()
    board.across((3.0, -20.0), (60.0, -20.0), 20.0, "57")  # its projection line stands at x = 3
    board.label((0.0, 0.0), "word")
    board.settle()
    label = next(one for one in words(board) if one.text == "word")
    assert max(x for x, _ in label.led) < 3.0


def test_a_label_keeps_off_a_line_that_its_leader_would_end_on() -> None:
    """The first place ends 6.06 mm to the right: words there would be read as those of an edge that stands at 6.2."""
    board = Board()
    board.line((6.2, 2.0), (6.2, 5.0), pen="thin")
    board.label((0.0, 0.0), "word")
    board.settle()
    (label,) = words(board)
    assert label.at[0] < 5.2 or not 1.0 < label.at[1] < 6.0


def test_a_label_makes_no_drawing_higher_that_has_room_beside() -> None:
    """An upright edge 40 mm high: a label at its upper end stands beside it, where a little of it would stand out above."""
    board = Board()
    board.line((0.0, -40.0), (0.0, 0.0))
    board.label((0.0, 0.0), "word")
    board.settle()
    assert bounds(board.items).top < 1e-6


def test_a_line_is_neither_closed_nor_filled_unless_it_is_to_be() -> None:
    board, corner = Board(), ((0.0, 0.0), (10.0, 0.0), (10.0, 5.0))
    board.line(*corner)
    board.line(*corner, closed=True)
    board.line(*corner, filled=True)
    made = [(item.closed, item.filled) for item in board.shapes if isinstance(item, Stroke)]
    assert made == [(False, False), (True, False), (False, True)]
