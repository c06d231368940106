"""Shapes to characters: what the dots are, decoded again from the characters."""

import math
from collections.abc import Sequence
from itertools import pairwise

import pytest

from rules.drawn.patches import Patch, edges
from rules.drawn.scene import Body, Box, Circle, Item, Label, Line, Mark, PartDrawn, Polyline, Scene
from rules.measure.outline import Point
from wizard.desk.drawing_styles import DrawingStyle
from wizard.widgets.dots import mm_per_dot
from wizard.widgets.raster import Picture, Row, draw

FRAME = Box(-200.0, 200.0, -200.0, 200.0)
EVERY_DRAWING: tuple[DrawingStyle, ...] = ("braille", "blocks", "plain")
# Unicode chart of the quadrant block elements: upper left, upper right, lower left, lower right.
QUADRANTS = {
    "▘": "1000",
    "▝": "0100",
    "▀": "1100",
    "▖": "0010",
    "▌": "1010",
    "▞": "0110",
    "▛": "1110",
    "▗": "0001",
    "▚": "1001",
    "▐": "0101",
    "▜": "1101",
    "▄": "0011",
    "▙": "1011",
    "▟": "0111",
    "█": "1111",
}


def picture(*items: Item, width: int = 40, height: int = 20, drawing: DrawingStyle = "braille") -> Picture:
    return draw(Scene(items, FRAME), width, height, drawing, lambda mm: f"{mm:g} mm")


def braille_dots(shown: Picture) -> set[tuple[int, int]]:
    """(across, down) of every dot. Braille dots 1-2-3-7 are the left column, 4-5-6-8 the right one."""
    places = [(0, 0), (0, 1), (0, 2), (1, 0), (1, 1), (1, 2), (0, 3), (1, 3)]
    found = set()
    for row, line in enumerate(shown.text().split("\n")):
        for column, character in enumerate(line):
            for bit, (across, down) in enumerate(places):
                if character != " " and (ord(character) - 0x2800) >> bit & 1:
                    found.add((2 * column + across, 4 * row + down))
    return found


def quadrant_dots(shown: Picture) -> set[tuple[int, int]]:
    found = set()
    for row, line in enumerate(shown.text().split("\n")):
        for column, character in enumerate(line):
            for place, dot in enumerate(QUADRANTS.get(character, "0000")):
                if dot == "1":
                    found.add((2 * column + place % 2, 2 * row + place // 2))
    return found


def spans(dots: set[tuple[int, int]]) -> tuple[int, int]:
    across, down = [dot[0] for dot in dots], [dot[1] for dot in dots]
    return max(across) - min(across) + 1, max(down) - min(down) + 1


def test_circle_is_round_in_braille() -> None:
    # 400 mm over 20 rows of 4 dots: 5 mm a dot both ways, so a diameter of 300 mm is 60 or 61 dots.
    assert spans(braille_dots(picture(Circle("pivot", (0.0, 0.0), 150.0)))) == (61, 61)


def test_circle_is_round_in_blocks_where_a_dot_is_twice_as_high_as_wide() -> None:
    across, down = spans(quadrant_dots(picture(Circle("pivot", (0.0, 0.0), 150.0), drawing="blocks")))
    assert across == 61 and down in (30, 31)


def test_circle_is_round_in_plain_signs() -> None:
    lines = [line for line in picture(Circle("pivot", (0.0, 0.0), 150.0), drawing="plain").text().split("\n") if line]
    across = max(map(len, lines)) - min(len(line) - len(line.lstrip()) for line in lines)
    assert across in (30, 31) and len(lines) in (15, 16)


def test_scale_is_set_by_the_tighter_way() -> None:
    # 1200 mm over 60 columns are 20 mm a column; 24 rows of 40 mm leave 960 mm, more than is needed.
    assert mm_per_dot(Box(0, 1200, 0, 100), 60, 24, "braille") == pytest.approx(10.0)
    assert mm_per_dot(Box(0, 10, 0, 960), 60, 24, "blocks") == pytest.approx(10.0)
    assert mm_per_dot(Box(0, 10, 0, 960), 60, 24, "plain") == pytest.approx(20.0)


def test_outboard_is_to_the_right_and_up_is_up() -> None:
    ((across, down),) = braille_dots(picture(Mark("pivot", (100.0, 150.0), "pivot")))
    # The middle is between dots 39 and 40; 100 mm are 20 dots of 5 mm, 150 mm are 30.
    assert across in (59, 60) and down in (9, 10)


def test_crossing_lines_keep_all_their_dots() -> None:
    falling = Line("axis", (-150.0, 190.0), (150.0, -170.0))
    rising = Line("tyre", (-150.0, -190.0), (150.0, 180.0))
    both = braille_dots(picture(falling, rising))
    assert both == braille_dots(picture(falling)) | braille_dots(picture(rising))
    assert len(both) > 140


@pytest.mark.parametrize("order", [1, -1])
def test_a_cell_takes_the_colour_of_the_part_that_matters_most(order: int) -> None:
    parts = ("tyre", "rim", "rotor", "pivot")
    for weaker, stronger in pairwise(parts):
        lines = [
            Line(weaker, (-200.0, 2.0), (200.0, 2.0)),  # type: ignore[arg-type]
            Line(stronger, (2.0, -200.0), (2.0, 200.0)),  # type: ignore[arg-type]
        ]
        rows = picture(*lines[::order]).rows
        (crossing,) = [row for row in rows if any(run.part == weaker for run in row)]
        assert [run.part for run in crossing] == [weaker, stronger, weaker]


def test_the_axis_keeps_its_sign_in_plain_ascii_whatever_is_drawn_after_it() -> None:
    axis, rim = Line("axis", (0.0, -200.0), (0.0, 200.0)), Line("rim", (-200.0, 5.0), (200.0, 5.0))
    text = picture(axis, rim, drawing="plain").text()
    assert text.count("*") == 20 and text.count("#") == 39


def test_lines_are_cut_off_at_the_edge() -> None:
    across = braille_dots(picture(Line("ground", (-1e9, 2.0), (1e9, 2.0))))
    assert len(across) == 80 and len({down for _, down in across}) == 1
    slanted = braille_dots(picture(Line("axis", (-1e6, -1e6), (1e6, 1e6))))
    assert spans(slanted) == (80, 80)


@pytest.mark.parametrize(
    "line",
    [
        Line("axis", (300.0, -1e7), (300.0, 1e7)),
        Line("axis", (-1e7, 250.0), (1e7, 250.0)),
        Line("axis", (300.0, 0.0), (0.0, 600.0)),
        Line("axis", (math.nan, 0.0), (10.0, 0.0)),
        Line("axis", (0.0, 0.0), (math.inf, 0.0)),
        Line("axis", (-1e308, -1e308), (1e308, 1e308)),
        Circle("axis", (0.0, 0.0), math.inf),
        Circle("axis", (math.nan, 0.0), 10.0),
        Polyline("axis", ((math.nan, 0.0), (math.inf, 1.0), (0.0, -math.inf)), closed=True),
        Mark("axis", (1e30, 0.0), "landing"),
        Label("axis", (math.nan, 0.0), "words", "inboard"),
        Label("axis", (0.0, 900.0), "words", "inboard"),
    ],
)
@pytest.mark.parametrize("drawing", EVERY_DRAWING)
def test_what_is_outside_or_not_finite_draws_nothing(line: Item, drawing: DrawingStyle) -> None:
    assert picture(line, drawing=drawing).text().strip() == ""


def test_dashes_and_dots_leave_gaps() -> None:
    counts = [
        len(braille_dots(picture(Line("rim", (-200.0, 2.0), (200.0, 2.0), style))))
        for style in ("solid", "dashed", "dotted")
    ]
    assert counts == [80, 48, 27]


def test_dashes_are_carried_round_corners() -> None:
    corners = tuple((-190.0 + 3.0 * step, 2.0) for step in range(120))
    dashed = braille_dots(picture(Polyline("rim", corners, style="dashed")))
    whole = braille_dots(picture(Polyline("rim", corners)))
    assert len(dashed) < 0.9 * len(whole)


def body(*areas: Patch, part: PartDrawn = "tyre", covers: bool = True) -> Body:
    return Body(part, part, areas, edges(areas), covers=covers)


def square(half: float) -> tuple[Point, ...]:
    return ((-half, -half), (half, -half), (half, half), (-half, half))


def filled(rows: Sequence[Row]) -> list[int]:
    """Cells of each row that stand on a body."""
    return [sum(len(run.text) for run in row if run.filled) for row in rows]


def test_a_body_covers_its_inside_and_nothing_else() -> None:
    rows = picture(body(Patch(square(100.0)))).rows
    # 200 of 400 mm both ways: the middle 10 of 20 rows, 20 of 40 columns.
    assert filled(rows) == [0] * 5 + [20] * 10 + [0] * 5
    left = sum(len(run.text) for run in rows[10][: [run.filled for run in rows[10]].index("tyre")])
    assert left == 10


def test_a_body_leaves_its_hole_free() -> None:
    """Of 40 columns the middle 30 without the middle 10."""
    hollow = Patch(square(150.0), square(50.0))
    row = picture(body(hollow)).rows[10]
    assert sum(len(run.text) for run in row if run.filled) == 20
    assert [run.filled for run in row if len(run.text) > 3] == [None, "tyre", None, "tyre", None]


def test_a_hole_beyond_the_outline_is_nothing() -> None:
    """A plate of 200 on 200 whose bore runs out at its right side: 20 columns without the right 10."""
    plate = Patch(square(100.0), ((0.0, -50.0), (500.0, -50.0), (500.0, 50.0), (0.0, 50.0)))
    assert filled(picture(body(plate)).rows)[10] == 10


def test_what_is_drawn_later_hides_what_it_covers() -> None:
    """Of a level line 80 dots long, a square 200 of 400 mm wide hides half but for its own two edges."""
    line = Line("rim", (-200.0, 2.0), (200.0, 2.0))
    assert len(braille_dots(picture(line))) == 80
    hidden = braille_dots(picture(line, body(Patch(square(100.0)))))
    seen_dots = {dot for dot in hidden if dot[1] == 39}
    assert 40 <= len(seen_dots) <= 44
    through = braille_dots(picture(line, body(Patch(square(100.0)), covers=False)))
    assert len({dot for dot in through if dot[1] == 39}) == 80


def test_of_two_bodies_the_later_has_the_cells_of_both() -> None:
    row = picture(body(Patch(square(100.0))), body(Patch(square(50.0)), part="hub")).rows[10]
    assert [run.filled for run in row if len(run.text) > 3] == [None, "tyre", "hub", "tyre", None]


@pytest.mark.parametrize("drawing", EVERY_DRAWING)
def test_a_body_that_is_no_real_place_covers_nothing(drawing: DrawingStyle) -> None:
    nowhere = body(Patch(((math.nan, 0.0), (math.inf, 1.0), (0.0, -math.inf))))
    assert filled(picture(nowhere, drawing=drawing).rows) == [0] * 20


def test_plain_is_ascii_and_marks_are_letters() -> None:
    shown = picture(
        body(Patch(((-150.0, -100.0), (150.0, -100.0), (150.0, 100.0)))),
        Line("axis", (-50.0, -200.0), (-90.0, 200.0)),
        Circle("pivot", (-100.0, 150.0), 10.0),
        Mark("pivot", (-100.0, 150.0), "pivot"),
        Mark("axis", (-50.0, -190.0), "landing"),
        Mark("hub", (100.0, 150.0), "bearing"),
        Line("ground", (-1e5, -190.0), (1e5, -190.0), "dotted"),
        drawing="plain",
    ).text()
    assert shown.isascii()
    assert shown.count("O") == 1 and shown.count("V") == 1 and shown.count("+") == 1
    assert "*" in shown and "=" in shown and "..." in shown


@pytest.mark.parametrize(
    ("line", "sign"),
    [
        (Line("tyre", (-100.0, 2.0), (100.0, 2.0)), "-"),
        (Line("tyre", (2.0, -100.0), (2.0, 100.0)), "|"),
        (Line("tyre", (-100.0, -200.0), (100.0, 200.0)), "/"),
        (Line("tyre", (-100.0, 200.0), (100.0, -200.0)), "\\"),
    ],
)
def test_plain_lines_show_their_slope(line: Line, sign: str) -> None:
    assert set(picture(line, drawing="plain").text()) - {" ", "\n"} == {sign}


def test_label_stands_on_its_side_of_what_it_names() -> None:
    text = picture(
        Line("rim", (0.0, -200.0), (0.0, 200.0)),
        Label("rim", (0.0, 0.0), "left one", "inboard"),
        Label("rim", (0.0, 0.0), "right one", "outboard", 12.5),
    ).text()
    (row,) = [line for line in text.split("\n") if "one" in line]
    assert row.index("left one") < 20 < row.index("right one 12.5 mm")


def test_labels_do_not_run_into_each_other_or_over_lines() -> None:
    lines = [Line("rim", (offset, -200.0), (offset, 200.0)) for offset in (-60.0, 60.0)]
    labels = [Label("hub", (60.0, height), f"name {number}", "outboard") for number, height in enumerate((0, 2, 4, 6))]
    bare, labelled = picture(*lines), picture(*lines, *labels)
    text = labelled.text()
    assert all(text.count(f"name {number}") == 1 for number in range(4))
    assert len([line for line in text.split("\n") if "name" in line]) == 4
    for before, after in zip(bare.text().split("\n"), text.split("\n"), strict=True):
        for character, now in zip(before, after, strict=False):
            assert character in (" ", now)


def test_label_that_finds_no_room_is_left_out_whole() -> None:
    shown = picture(Label("rim", (0.0, 0.0), "a name much too long for this picture", "outboard"), width=16, height=3)
    assert shown.text().strip() == ""


def test_label_is_written_in_its_part_and_literally() -> None:
    shown = picture(Label("rotor", (0.0, 0.0), "[red]rotor[/]", "outboard"))
    (run,) = [run for row in shown.rows for run in row if run.part == "rotor"]
    assert run.text == "[red]rotor[/]"


@pytest.mark.parametrize("drawing", EVERY_DRAWING)
@pytest.mark.parametrize(("width", "height"), [(1, 1), (3, 40), (60, 24), (90, 2)])
def test_rows_are_always_as_wide_as_the_picture(drawing: DrawingStyle, width: int, height: int) -> None:
    items = (
        Circle("tyre", (0.0, 0.0), 199.0),
        Label("tyre", (0.0, 0.0), "tyre", "outboard", 863.6),
        Label("axis", (-200.0, -200.0), "axis", "inboard"),
    )
    rows = picture(*items, width=width, height=height, drawing=drawing).rows
    assert [sum(len(run.text) for run in row) for row in rows] == [width] * height


def test_no_room_gives_no_rows() -> None:
    assert picture(width=0).rows == () and picture(height=0).rows == ()


def test_a_frame_without_size_still_draws() -> None:
    scene = Scene((Line("rim", (-1.0, 0.0), (1.0, 0.0)),), Box(0.0, 0.0, 0.0, 0.0))
    assert len(braille_dots(draw(scene, 10, 5, "braille", str))) == 20
