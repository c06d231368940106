"""A scene in pixels: where its shapes fall and in which colour. The scale is worked out by hand in each test."""

from typing import get_args

import pytest
from PIL import Image

from rules.drawn.patches import Patch
from rules.drawn.scene import Body, Box, Circle, Dimension, Item, Label, Line, Mark, PartDrawn, Polyline, Scene
from wizard.pixels.painting import Paints, Panel, painted

PAGE, LINE, AREA = (0, 0, 0), (255, 255, 255), (0, 0, 255)
PARTS: tuple[PartDrawn, ...] = get_args(PartDrawn)
PAINTS = Paints(dict.fromkeys(PARTS, LINE), dict.fromkeys(PARTS, AREA), PAGE)
SQUARE = ((20.0, 20.0), (80.0, 20.0), (80.0, 80.0), (20.0, 80.0))
HOLE = ((40.0, 40.0), (60.0, 40.0), (60.0, 60.0), (40.0, 60.0))


def paint(*items: Item, frame: Box | None = None, words: tuple[tuple[int, int, int, int], ...] = ()) -> Image.Image:
    """100 by 100 mm in 20 by 10 cells of 10 by 20 px: 2 px to a mm, the origin at the lower left."""
    panel = Panel(Scene(items, frame or Box(0.0, 100.0, 0.0, 100.0)), 0, 0, 20, 10)
    return painted([panel], words, (20, 10), (10, 20), PAINTS)


def at(image: Image.Image, x: float, y: float) -> tuple[int, ...]:
    """The pixel at a place in mm."""
    pixel = image.getpixel((round(2 * x), round(200 - 2 * y)))
    assert isinstance(pixel, tuple)
    return pixel


def test_a_body_is_filled_but_for_its_hole_and_has_edges() -> None:
    image = paint(Body("plate", "plate", (Patch(SQUARE, HOLE),), ((*SQUARE, SQUARE[0]),)))
    assert at(image, 30.0, 30.0) == (*AREA, 255)
    assert at(image, 50.0, 50.0) == at(image, 10.0, 50.0) == (*PAGE, 255)
    assert at(image, 20.0, 50.0)[:2] != (0, 0)


def test_a_later_body_covers_an_earlier_one_and_one_that_does_not_cover_lets_it_through() -> None:
    line = Line("axis", (0.0, 50.0), (100.0, 50.0))
    for covers in (True, False):
        image = paint(line, Body("rim", "rim", (Patch(SQUARE),), (), covers=covers))
        assert (at(image, 50.0, 50.0) == (*AREA, 255)) is covers
        assert at(image, 10.0, 50.0) == (*LINE, 255)


def test_edges_are_smooth() -> None:
    """A slanted line has shades between the line's colour and the page's."""
    image = paint(Line("axis", (10.0, 10.0), (90.0, 37.0)))
    shades = {pixel[0] for _, pixel in image.getcolors(100_000) or ()}  # type: ignore[index,union-attr]
    assert len(shades) > 3 and {0, 255} <= shades


@pytest.mark.parametrize(("style", "least", "most"), [("solid", 1.0, 1.0), ("dashed", 0.5, 0.8), ("dotted", 0.2, 0.6)])
def test_dashes_leave_gaps(style: str, least: float, most: float) -> None:
    """Of 200 px, those that are drawn: 7 of 11 of a dashed line, 2 of 5.5 of a dotted one, each a little longer for its ends."""
    image = paint(Line("axis", (0.0, 50.0), (100.0, 50.0), style))  # type: ignore[arg-type]
    drawn = [at(image, x / 2, 50.0)[0] > 100 for x in range(200)]
    assert least <= sum(drawn) / 200 <= most


def test_one_scale_both_ways_and_the_frame_in_the_middle() -> None:
    """A frame of 200 by 50 mm: the width decides, 1 px to a mm, and 75 px stay free above and below."""
    image = paint(Circle("hub", (100.0, 25.0), 20.0), frame=Box(0.0, 200.0, 0.0, 50.0))
    drawn = [(x, y) for x in range(200) for y in range(200) if image.getpixel((x, y))[0] > 128]  # type: ignore[index]
    xs, ys = zip(*drawn, strict=True)
    assert (min(xs), max(xs)) == pytest.approx((80, 120), abs=1.5)
    assert (min(ys), max(ys)) == pytest.approx((80, 120), abs=1.5)


def test_a_dimension_has_an_arrow_at_each_end_that_points_outwards() -> None:
    label = Label("dimension", (50.0, 50.0), "words", "inboard")
    image = paint(Dimension((10.0, 50.0), (90.0, 50.0), label))
    high = {
        x: sum(image.getpixel((x, y))[0] > 128 for y in range(200))  # type: ignore[index]
        for x in range(20, 181)
    }
    assert high[26] > high[22] and high[174] > high[178] and high[100] <= 2


def test_where_words_stand_it_is_see_through_and_nowhere_else() -> None:
    image = paint(words=((3, 2, 8, 3),))
    free = [(x, y) for x in range(200) for y in range(200) if image.getpixel((x, y))[3] == 0]  # type: ignore[index]
    assert (min(free), max(free), len(free)) == ((30, 40), (79, 59), 50 * 20)


def test_outside_its_panels_a_picture_is_see_through() -> None:
    panel = Panel(Scene((), Box(0.0, 1.0, 0.0, 1.0)), 2, 1, 5, 3)
    image = painted([panel], (), (20, 10), (10, 20), PAINTS)
    opaque = [(x, y) for x in range(200) for y in range(200) if image.getpixel((x, y))[3]]  # type: ignore[index]
    assert (min(opaque), max(opaque)) == ((20, 20), (69, 79))


FAR = 1e300


@pytest.mark.parametrize(
    "item",
    [
        Line("axis", (float("nan"), 0.0), (50.0, 50.0)),
        Line("axis", (-FAR, 0.0), (FAR, 0.0), "dashed"),
        Line("axis", (0.0, float("inf")), (50.0, 50.0), "dotted"),
        Polyline("rim", ((FAR, FAR), (-FAR, FAR), (0.0, -FAR)), closed=True),
        Circle("hub", (0.0, 0.0), FAR),
        Circle("hub", (float("nan"), 0.0), 5.0),
        Circle("hub", (50.0, 50.0), -1.0),
        Mark("gap", (FAR, 0.0), "gap"),
        Mark("pivot", (float("nan"), 0.0), "pivot"),
        Dimension((5.0, 5.0), (5.0, 5.0), Label("dimension", (5.0, 5.0), "", "inboard")),
        Dimension((5.0, float("nan")), (FAR, 5.0), Label("dimension", (5.0, 5.0), "", "inboard")),
        Body("plate", "plate", (Patch(((-FAR, 0.0), (FAR, 0.0), (0.0, FAR)), HOLE), Patch(())), ((),)),
    ],
)
def test_what_is_no_real_place_stops_nothing(item: Item) -> None:
    image = paint(item, Body("rim", "rim", (Patch(SQUARE),), ()))
    assert at(image, 50.0, 50.0) == (*AREA, 255)


def test_in_greys_there_is_no_colour() -> None:
    greys = Paints({"axis": (200, 30, 90)}, {"rim": (1, 99, 200)}, (10, 20, 30)).in_greys()
    assert all(len(set(ink)) == 1 for ink in (greys.lines["axis"], greys.areas["rim"], greys.page))
