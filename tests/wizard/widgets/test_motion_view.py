"""The two moving views on the screen: true to scale both ways, one scale for both, within their cells."""

import pytest

from rules.drawn.moving.scene import RIDE, Moving, TravelAndLock, frame, moving, touches
from tests.support.base_sheet import MOVING, changed
from tests.support.judging import judged_document
from wizard.desk.drawing_styles import DrawingStyle
from wizard.widgets.motion_view import Arrangement, arranged, motion_rows
from wizard.widgets.raster import Row

BRAILLE = ((1, 8), (2, 16), (4, 32), (64, 128))
"""Bits of a braille character's dots, by row and column: Unicode chapter 21, Braille Patterns."""


@pytest.fixture(scope="module")
def front() -> Moving:
    found = moving(judged_document(changed(MOVING)).worked.known)
    assert found is not None
    return found


def drawn(
    front: Moving,
    place: TravelAndLock,
    width: int,
    height: int,
    *,
    both: bool = False,
    drawing: DrawingStyle = "braille",
) -> tuple[Row, ...]:
    return motion_rows(front, place, (None, None), both, width, height, drawing, lambda mm: f"{mm:g} mm")


def text(rows: tuple[Row, ...]) -> list[str]:
    return ["".join(run.text for run in row) for row in rows]


def tyre_dots(rows: tuple[Row, ...], first: int, last: int) -> set[tuple[int, int]]:
    """Dots, across and down, of braille cells that belong to the tyre, from column `first` to before `last`."""
    found = set()
    for down, row in enumerate(rows):
        column = 0
        for run in row:
            for sign in run.text:
                if run.part == "tyre" and first <= column < last and 0x2800 <= ord(sign) < 0x2900:
                    bits = ord(sign) - 0x2800
                    found |= {
                        (2 * column + x, 4 * down + y) for y in range(4) for x in range(2) if bits & BRAILLE[y][x]
                    }
                column += 1
    return found


def size(dots: set[tuple[int, int]]) -> tuple[int, int]:
    """How far apart the outmost dots are: across in the upper third, where no other line touches, and down."""
    top, bottom = min(down for _, down in dots), max(down for _, down in dots)
    upper = [across for across, down in dots if down < top + (bottom - top) / 3]
    return max(upper) - min(upper), bottom - top


def layout(front: Moving, width: int, height: int, both: bool = False) -> Arrangement:
    return arranged((frame(front, "front", both), frame(front, "plan", both)), width, height)


@pytest.mark.parametrize(("width", "height"), [(78, 17), (118, 33), (198, 53)])
def test_millimetres_are_that_many_dots_both_ways_in_both_views(front: Moving, width: int, height: int) -> None:
    """The tyre, 317.5 by 838.2 mm; a column is two dots wide and a row four high, so a dot is as wide as high."""
    made = layout(front, width, height)
    assert not made.under_each_other
    rows, (across, _), dot = drawn(front, RIDE, width, height), made.cells[0], made.mm_per_column / 2
    wide, high = size(tyre_dots(rows, 0, across))
    assert wide == pytest.approx(317.5 / dot, abs=1.01)
    # From the ground, where it is flattened, to the crown: 400 + 838.2 / 2.
    assert high == pytest.approx(819.1 / dot, abs=1.01)
    wide, long = size(tyre_dots(rows, across, width))
    assert wide == pytest.approx(317.5 / dot, abs=1.01)
    assert long == pytest.approx(838.2 / dot, abs=1.01)


def test_under_each_other_the_same_point_is_in_the_same_column(front: Moving) -> None:
    made = layout(front, 72, 33, both=True)
    assert made.under_each_other and made.cells[0][0] == made.cells[1][0] == 72
    rows = drawn(front, RIDE, 72, 33, both=True)
    upper, lower = rows[: made.cells[0][1] + 1], rows[made.cells[0][1] + 1 :]
    edges = []
    for part in (upper, lower):
        dots = tyre_dots(part, 0, 72)
        crown = [across for across, down in dots if down == min(down for _, down in dots)]
        edges.append((min(crown), max(crown)))
    assert edges[0] == edges[1]


def test_the_scale_is_told(front: Moving) -> None:
    made = layout(front, 78, 17)
    title = text(drawn(front, RIDE, 78, 17))[0]
    bar, words = title.split()[3:5]
    assert float(words) / made.mm_per_column == pytest.approx(len(bar) - 1, abs=1.0)
    assert "From the front" in title and "front of the car down" in title


@pytest.mark.parametrize("drawing", ["braille", "blocks", "plain"])
@pytest.mark.parametrize("both", [False, True])
@pytest.mark.parametrize(("width", "height"), [(58, 10), (78, 17), (72, 33), (118, 33), (30, 40)])
@pytest.mark.parametrize("place", [RIDE, TravelAndLock(110.0, 1.0), TravelAndLock(-90.0, -1.0)])
def test_it_fills_its_cells_exactly(
    front: Moving, place: TravelAndLock, width: int, height: int, both: bool, drawing: DrawingStyle
) -> None:
    lines = text(drawn(front, place, width, height, both=both, drawing=drawing))
    assert len(lines) == height and {len(line) for line in lines} == {width}
    assert drawing != "plain" or all(line.isascii() for line in lines)


def test_links_are_named_where_there_is_room(front: Moving) -> None:
    whole = "\n".join(text(drawn(front, RIDE, 118, 33)))
    assert all(name in whole for name in ("upper arm", "lower arm", "tie rod"))


def test_the_gap_is_marked_by_a_sign(front: Moving) -> None:
    place = TravelAndLock(110.0, 1.0)
    near = touches(front, place)
    plain = motion_rows(front, place, near, False, 78, 17, "plain", str)
    assert sum(line.count("X") for line in text(plain)) == 2  # once in each view
    assert not any("X" in line for line in text(drawn(front, place, 78, 17, drawing="plain")))


@pytest.mark.parametrize(("width", "height"), [(0, 0), (7, 30), (80, 3)])
def test_where_there_is_no_room_there_is_nothing(front: Moving, width: int, height: int) -> None:
    assert drawn(front, RIDE, width, height) == ()
