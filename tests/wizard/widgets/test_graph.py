"""Curves on the screen: round ticks, a mark at the present place, nothing wider or higher than its cells."""

from math import floor

import pytest

from rules.drawn.moving.graphs import Curve
from rules.drawn.moving.scene import TravelAndLock
from wizard.desk.drawing_styles import DRAWINGS, DrawingStyle
from wizard.pixels.painting import Panel
from wizard.widgets.graph import LEAST_HEIGHT, LEAST_WIDTH, axis, graph_rows, grid_rows
from wizard.widgets.raster import Row

RISING = Curve("Rise {up} deg at {across} mm", "travel", (0.0, 100.0), ((0.0, 0.0), (100.0, 10.0)), "travel mm", "deg")
TWO = RISING._replace(beside=((0.0, 0.0), (100.0, 5.0)))
FLAT = RISING._replace(line=((0.0, 3.0), (100.0, 3.0)))


def text(rows: tuple[Row, ...]) -> list[str]:
    return ["".join(run.text for run in row) for row in rows]


def dots(rows: tuple[Row, ...], part: str) -> set[tuple[int, int]]:
    """Cells that a part owns, as (column, row)."""
    found = set()
    for down, row in enumerate(rows):
        column = 0
        for run in row:
            if run.part == part:
                found |= {(column + place, down) for place, sign in enumerate(run.text) if sign not in (" ", "⠀")}
            column += len(run.text)
    return found


@pytest.mark.parametrize(
    ("numbers", "most", "ticks"),
    [
        ((-80.0, 110.0), 5, (-50, 0, 50, 100)),
        ((0.0, 32.0), 4, (0, 10, 20, 30)),
        ((0.0, 1.0), 3, (0, 0.5, 1)),
        ((-3.5, 4.3), 4, (-2, 0, 2, 4)),
        ((24.6, 25.2), 4, (24.6, 24.8, 25, 25.2)),
        ((1.02, 1.98), 2, (1.5,)),
    ],
)
def test_ticks_are_round_and_few(numbers: tuple[float, float], most: int, ticks: tuple[float, ...]) -> None:
    found = axis(numbers, most)
    assert found.ticks == pytest.approx(ticks)
    assert (found.low, found.high) == numbers


def test_a_curve_that_hardly_moves_is_drawn_flat() -> None:
    found = axis((3.0, 3.001), 4, least_span=0.5)
    assert (found.low, found.high) == pytest.approx((2.7505, 3.2505))
    assert len(found.ticks) >= 2


def test_no_axis_stretches_to_nothing() -> None:
    assert axis((3.0, 3.0), 4, least_span=0.5).share(3.0) == 0.5


@pytest.mark.parametrize("drawing", DRAWINGS)
@pytest.mark.parametrize("graph", [RISING, TWO, FLAT])
@pytest.mark.parametrize(("width", "height"), [(26, 5), (38, 8), (60, 20)])
def test_it_fills_its_cells_exactly(graph: Curve, width: int, height: int, drawing: DrawingStyle) -> None:
    rows = graph_rows(graph, TravelAndLock(40.0), width, height, drawing)
    assert len(rows) == height and {len(line) for line in text(rows)} == {width}


def test_axes_carry_numbers_and_units_and_the_title_tells_the_present_ones() -> None:
    lines = text(graph_rows(RISING, TravelAndLock(40.0), 60, 12, "braille"))
    assert lines[0].rstrip() == "Rise 4 deg at 40 mm"
    assert lines[-1].split() == ["0", "20", "40", "60", "80", "travel", "mm"]
    labels = [line[:3].strip() for line in lines[1:-1]]
    assert [label for label in labels if label] == ["10", "5", "0"]
    assert labels[0] == "10" and labels[-1] == "0"


def test_the_curve_runs_from_corner_to_corner() -> None:
    """From 0 at the lower left to the highest at the upper right; a cell half way stands half way up."""
    curve = dots(graph_rows(RISING, TravelAndLock(0.0), 63, 21, "plain"), "axis")
    left, right = min(column for column, _ in curve), max(column for column, _ in curve)
    assert (right, 1) in curve
    middle = [row for column, row in curve if column == (left + right) // 2]
    assert middle and abs(middle[0] - 10) <= 1


@pytest.mark.parametrize(("travel", "share"), [(0.0, 0.0), (50.0, 0.5), (100.0, 1.0)])
def test_the_mark_is_at_the_present_place(travel: float, share: float) -> None:
    rows = graph_rows(RISING, TravelAndLock(travel), 63, 22, "plain")
    ((column, row),) = dots(rows, "gap")
    margin = 3  # "10" and a blank
    assert column == margin + floor(share * 59 + 0.5) and abs(row - (20 - share * 19)) <= 0.5 + 1e-9


def test_the_other_curve_is_told_apart_without_colour() -> None:
    alone, beside = (dots(graph_rows(graph, TravelAndLock(0.0), 63, 21, "plain"), "rim") for graph in (RISING, TWO))
    assert not alone
    columns = {column for column, _ in beside}
    assert len(columns) < max(columns) - min(columns), "dashed: some columns on the way are left out"


@pytest.mark.parametrize(("width", "height"), [(LEAST_WIDTH - 1, 20), (60, LEAST_HEIGHT - 1), (0, 0)])
def test_where_there_is_no_room_it_stays_blank(width: int, height: int) -> None:
    rows = graph_rows(RISING, TravelAndLock(0.0), width, height, "braille")
    assert len(rows) == height and not "".join(text(rows)).strip()


@pytest.mark.parametrize(
    ("count", "width", "height", "columns"),
    [(4, 78, 17, 2), (4, 46, 33, 1), (4, 40, 17, 1), (3, 78, 17, 2), (1, 78, 17, 1)],
)
def test_graphs_stand_in_a_grid(count: int, width: int, height: int, columns: int) -> None:
    rows = grid_rows((RISING,) * count, TravelAndLock(10.0), width, height, "braille")
    lines = text(rows)
    assert len(lines) == height and {len(line) for line in lines} == {width}
    titles = [line.count("Rise") for line in lines if "Rise" in line]
    assert max(titles, default=0) == columns or height // count < LEAST_HEIGHT
    assert sum(titles) == count or height // count < LEAST_HEIGHT


def test_without_curves_there_is_nothing() -> None:
    assert grid_rows((), TravelAndLock(0.0), 78, 17, "braille") == ()


def test_in_pixels_each_curve_is_painted_where_its_dots_stand_and_the_letters_stay() -> None:
    panels: list[Panel] = []
    letters = text(grid_rows([TWO, FLAT], TravelAndLock(0.0), 60, 24, "pixels", 2.0, panels))
    in_dots = grid_rows([TWO, FLAT], TravelAndLock(0.0), 60, 24, "braille")
    assert [(panel.top, panel.height) for panel in panels] == [(1, 10), (13, 10)]  # title above, ticks below
    for panel in panels:
        owned = [(column, row) for column, row in dots(in_dots, "axis") if panel.top <= row < panel.top + panel.height]
        assert owned and all(panel.left <= column < panel.left + panel.width == 60 for column, _ in owned)
    assert letters[0].startswith("Rise 0 deg at 0 mm") and "travel mm" in letters[11]
    assert not any(sign in "".join(letters) for sign in "⠁⡇⣀")


def test_in_two_columns_the_curves_in_pixels_stand_beside_each_other() -> None:
    panels: list[Panel] = []
    grid_rows([RISING, FLAT], TravelAndLock(0.0), 61, 8, "pixels", 2.0, panels)
    (left, right) = panels
    assert left.top == right.top and left.left + left.width == 30 and right.left + right.width == 61
