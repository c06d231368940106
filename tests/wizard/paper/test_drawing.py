"""The full-size drawing on paper, looked at as pixels and as text."""

import copy
import re
from dataclasses import replace
from functools import cache
from typing import Any
from xml.etree import ElementTree

import numpy as np
import pytest

from rules.drawn.full_size import full_size
from rules.drawn.full_size.shapes import PaperCircle, PaperWords, bounds
from rules.judging.judge import Judged
from rules.measure.quantity import EntryError
from sample_sheets import document as sample_document
from tests.support.judging import judged_document
from wizard.paper.drawing import drawing_pdf, fewest_pages, one_sheet, one_sheet_pdf, window_on
from wizard.paper.drawing_items import draw_items
from wizard.paper.drawing_svg import drawing_svg
from wizard.paper.papers import paper_size
from wizard.paper.pdf import Area, Document, PaperPage, bars_fit
from wizard.paper.seams import holds
from wizard.paper.tiles import OVERLAP

BADGER, WREN = "fell_badger_finished_metric", "dune_wren_finished"
OX = "scree_ox_strength"
DPI = 150
"""Dots an inch at which distances are measured: to a tenth of a mm, since greys count in part."""
WRONG, HALF = "wrong_rotor_too_big_for_wheel", "dune_wren_half_done"


def document(name: str, **changes: object) -> dict[str, Any]:
    found = sample_document(name)
    for where, entry in changes.items():
        table, _, key = where.rpartition("__")
        (found[table] if table else found)[key] = entry
    return copy.deepcopy(found)


@cache
def judged(name: str, **changes: str) -> Judged:
    return judged_document(document(name, **changes))


@cache
def tiled(name: str, **options: Any) -> bytes:
    """The drawing on pages, made once for all tests that look at it."""
    return drawing_pdf(judged(name), **options)


@cache
def single(name: str, *side_and_view: Any) -> bytes:
    """The drawing on one sheet, made once for all tests that look at it."""
    return one_sheet_pdf(judged(name), *side_and_view)


def squeezed(text: str) -> str:
    return re.sub(r"\s+", "", text)


def dimensions(sheet: Judged, side: Any, view: Any) -> list[str]:
    return [item.text for item in full_size(sheet, side, view).items if isinstance(item, PaperWords)]


# Check bars


@pytest.mark.parametrize(("name", "paper"), [(WREN, "letter"), (BADGER, "500x700 mm"), (WRONG, "a4")])
def test_check_bars_on_every_page(name: str, paper: str, rasterised: Any, bar_lengths: Any) -> None:
    pages = rasterised(tiled(name, paper=paper), DPI)
    assert len(pages) >= 3
    for number in range(len(pages)):
        assert bar_lengths(pages, number, False) == pytest.approx([100.0, 101.6], abs=0.15), number
        assert bar_lengths(pages, number, True) == pytest.approx([100.0, 101.6], abs=0.15), number
        assert "measurethisbeforeyoutrustthepage:printat100%" in squeezed(pages.words(number))


def test_check_bars_on_the_one_sheet(rasterised: Any, bar_lengths: Any) -> None:
    pages = rasterised(single(BADGER, "right"), DPI)
    for upright in (False, True):
        assert {round(length, 1) for length in bar_lengths(pages, 0, upright)} >= {100.0, 101.6}


# Known distances, by hand from the metric sample: plate face 74 mm from the hub face, barrel 405 mm, rotor 298 mm


def places(sheet: Judged, side: Any) -> tuple[float, float, float]:
    """Page x of the datum, page y of the wheel-centre line, and which way outboard is, on the one sheet."""
    drawing = full_size(sheet, side)
    _, room = one_sheet(sheet, drawing)
    datum = next(item for item in drawing.items if isinstance(item, PaperWords) and item.text.startswith("DATUM"))
    spindle = next(item for item in drawing.items if isinstance(item, PaperWords) and item.text == "120 mm")
    return room.left + datum.at[0], room.bottom + spindle.at[1] + 60, 1.0 if datum.align == "left" else -1.0


@pytest.mark.parametrize("side", ["left", "right"])
def test_plate_face_is_74_mm_from_the_datum(side: Any, rasterised: Any, dark_runs: Any) -> None:
    sheet = judged(BADGER)
    pages, (x, y, outboard) = rasterised(single(BADGER, side), DPI), places(sheet, side)
    row = pages.part(0, x - 80, y + 89, x + 80, y + 91)[round(DPI / 25.4)]
    wide = [(start + end) / 2 for start, end in dark_runs(row, least=0.35 * DPI / 25.4)]
    from_left = [pages.mm(place) for place in wide]
    datum = min(from_left, key=lambda place: abs(place - (80 - 2 * outboard)))
    assert datum == pytest.approx(80 - 2 * outboard, abs=1.0)
    plate = min(from_left, key=lambda place: abs(place - (datum - 74 * outboard)))
    assert plate == pytest.approx(datum - 74 * outboard, abs=0.15)
    assert sum(abs(place - plate) < 5 for place in from_left) == 1, "no other wide line is mistaken for it"


def test_barrel_of_405_mm_measures_that_up_and_down(rasterised: Any, dark_runs: Any) -> None:
    sheet = judged(BADGER)
    pages, (x, y, _) = rasterised(single(BADGER, "left"), DPI), places(sheet, "left")
    column = pages.part(0, x + 60, y - 228, x + 62, y + 228)[:, round(DPI / 25.4)]
    wide = [(start + end) / 2 for start, end in dark_runs(column, least=0.35 * DPI / 25.4)]
    assert pages.mm(wide[-1] - wide[0]) == pytest.approx(405.0, abs=0.15)


def test_rotor_circle_measures_298_mm(rasterised: Any, dark_runs: Any) -> None:
    """On a chord 60 mm above the wheel centre: 2 sqrt(149^2 - 60^2) = 272.771 mm."""
    sheet = judged(BADGER)
    pages, (_, y, _) = rasterised(single(BADGER, "left"), DPI), places(sheet, "left")
    row = pages.part(0, 28, y + 59, 330, y + 61)[round(DPI / 25.4)]
    exact = (round((y + 61) * DPI / 25.4) - round(DPI / 25.4) - 0.5) * 25.4 / DPI - y
    wide = [(start + end) / 2 for start, end in dark_runs(row, least=0.35 * DPI / 25.4)]
    assert pages.mm(wide[-1] - wide[0]) == pytest.approx(2 * (149**2 - exact**2) ** 0.5, abs=0.15)
    assert 2 * (149**2 - exact**2) ** 0.5 == pytest.approx(272.771, abs=0.3)


def test_pivots_in_the_auxiliary_view_measure_262_mm(rasterised: Any, dark_runs: Any) -> None:
    """From the edges of the two housings, R 22 and R 24 on the metric sample: their middles stand 262 mm apart."""
    sheet, dpi = judged(BADGER), 300
    drawing = full_size(sheet, "left")
    _, room = one_sheet(sheet, drawing)
    pages = rasterised(single(BADGER, "left"), dpi)
    housings = [item for item in drawing.items if isinstance(item, PaperCircle) and 21 < item.radius < 25]
    housings = sorted(housings, key=lambda item: -item.centre[0])[:2]  # the last view to the right
    middles = []
    for item in housings:
        x, y = room.left + item.centre[0], room.bottom + item.centre[1]
        reach = item.radius + 1.5
        row = pages.part(0, x - reach, y + 5, x + reach, y + 7)[round(dpi / 25.4)]
        column = pages.part(0, x + 5, y - reach, x + 7, y + reach)[:, round(dpi / 25.4)]
        ends = []
        for line in (row, column):
            wide = [(start + end) / 2 for start, end in dark_runs(line, least=0.3 * dpi / 25.4)]
            ends.append(pages.mm((wide[0] + wide[-1]) / 2))
        middles.append((x - reach + ends[0], y + reach - ends[1]))
    apart = np.hypot(middles[0][0] - middles[1][0], middles[0][1] - middles[1][1])
    assert apart == pytest.approx(262.0, abs=0.25)


# Tiles


def inside(picture: Any) -> Any:
    """Without the outermost pixels, whose neighbours were cut off."""
    return picture[4:-4, 4:-4]


def grown(marked: Any) -> Any:
    """With all pixels within three steps of one that is marked."""
    for _ in range(3):
        wider = marked.copy()
        wider[1:] |= marked[:-1]
        wider[:-1] |= marked[1:]
        wider[:, 1:] |= marked[:, :-1]
        wider[:, :-1] |= marked[:, 1:]
        marked = wider
    return marked


def dark_and_near(picture: Any) -> tuple[Any, Any]:
    """Pixels that are surely dark, and all pixels within three of any that are at all grey: a drawing that starts between
    two pixels is rasterised a little differently, its letters by up to one more."""
    return picture < 110, grown(picture < 225)


@pytest.mark.parametrize(
    ("name", "paper", "side", "view"),
    [(WREN, "letter", "left", "upright"), (BADGER, "a4", "right", "upright"), (WRONG, "a4", "left", "upright"),
     (WREN, "500x700 mm", "left", "whole")],
)  # fmt: skip
def test_tiles_put_together_are_the_one_sheet(name: str, paper: str, side: Any, view: Any, rasterised: Any) -> None:
    sheet, dpi = judged(name), 200 if view == "upright" else 120
    drawing = full_size(sheet, side, view)
    pages = rasterised(tiled(name, paper=paper, side=side, view=view), dpi)
    turned, tiles = fewest_pages(sheet, drawing, paper_size(paper))
    document = Document("")
    page, room = one_sheet(sheet, drawing)
    document.pages.append(page)
    with page.moved(room.left, room.bottom):
        draw_items(page, tiles.items)
    whole = rasterised(document.written(), dpi)
    window = window_on(sheet, PaperPage(*turned, ""))
    first, ink, covered = len(pages) - len(tiles.printed), 0, 0.0
    for number, tile in enumerate(tiles.printed):
        assert pages.size(first + number) == pytest.approx(turned, abs=0.01)
        # The inside of the tile, without the strips it shares.
        sides = [getattr(tile.room, edge) for edge in ("left", "bottom", "right", "top")]
        inner = [max(sides[0] + OVERLAP, 0), max(sides[1] + OVERLAP, 0),
                 min(sides[2] - OVERLAP, drawing.frame.right), min(sides[3] - OVERLAP, drawing.frame.top)]  # fmt: skip
        on_tile = [
            value + shift
            for value, shift in zip(inner, (window.left - sides[0], window.bottom - sides[1]) * 2, strict=True)
        ]
        on_sheet = [value + shift for value, shift in zip(inner, (room.left, room.bottom) * 2, strict=True)]
        tile_part, sheet_part = pages.part(first + number, *on_tile), whole.part(0, *on_sheet)
        rows, columns = (min(one, two) for one, two in zip(tile_part.shape, sheet_part.shape, strict=True))
        tile_part, sheet_part = tile_part[:rows, :columns], sheet_part[:rows, :columns]
        for one, other in ((tile_part, sheet_part), (sheet_part, tile_part)):
            surely, (_, near) = dark_and_near(one)[0], dark_and_near(other)
            assert not inside(surely & ~near).any(), tile.name
        ink += (tile_part < 110).sum()
        covered += rows * columns
    assert ink > 1000 and covered > 0


def test_blank_tiles_are_not_printed_and_the_map_says_so(rasterised: Any) -> None:
    sheet = judged(WREN)
    drawing = full_size(sheet, "left", "whole")
    _, tiles = fewest_pages(sheet, drawing, paper_size("letter"))
    blank = [tile.name for tile in tiles.tiles if tile.blank]
    assert blank, "inside the tyre's circle there is room enough"
    pages = rasterised(tiled(WREN, view="whole"), 50)
    assert "crossed-out page is blank and is not printed" in pages.words(0)
    headings = " ".join(pages.words(number) for number in range(len(pages)))
    for tile in tiles.tiles:
        assert (f"page {tile.name} of the map" in headings) is not tile.blank


def test_each_tile_names_its_neighbours(rasterised: Any) -> None:
    pages = rasterised(tiled(WREN), 50)
    words = {
        name: pages.words(number)
        for number in range(len(pages))
        for name in ("A1", "B2")
        if f"page {name} of the map" in pages.words(number)
    }
    assert "joins below B1, right A2" in words["A1"]
    assert "joins above A2, left B1, right B3" in words["B2"]


def test_a_plotter_page_takes_the_upright_on_one_tile(rasterised: Any) -> None:
    pages = rasterised(tiled(BADGER, paper="a0"), 20)
    assert sum("of the map" in pages.words(number) for number in range(len(pages))) == 1


@pytest.mark.parametrize(
    ("name", "paper", "most"), [(WREN, "letter", 12), (BADGER, "a4", 18), (BADGER, "a3", 10), (WREN, "tabloid", 8)]
)
def test_the_default_drawing_needs_few_pages(name: str, paper: str, most: int, rasterised: Any) -> None:
    assert len(rasterised(tiled(name, paper=paper), 20)) <= most


# Words and marks at the joins


def lines_in(page: Any, left: float, bottom: float, right: float, top: float) -> str:
    """What a reader finds inside a rectangle of a page, mm, without blanks."""
    sides = (value * 72 / 25.4 for value in (left, bottom, right, top))
    return squeezed(page.get_textpage().get_text_bounded(*sides))


@pytest.mark.parametrize(
    ("name", "paper", "side"),
    [(WREN, "letter", "left"), (WREN, "a4", "right"), (BADGER, "a4", "left"), (OX, "letter", "right"), (OX, "tabloid", "left")],
)  # fmt: skip
def test_words_stand_whole_on_a_page_or_not_at_all(name: str, paper: str, side: Any, rasterised: Any) -> None:
    sheet = judged(name)
    drawing = full_size(sheet, side)
    pages = rasterised(tiled(name, paper=paper, side=side), 20)
    turned, tiles = fewest_pages(sheet, drawing, paper_size(paper))
    window = window_on(sheet, PaperPage(*turned, ""))
    wanted = {squeezed(text) for text in dimensions(sheet, side, "upright")}
    first, found = len(pages) - len(tiles.printed), set()
    for number, tile in enumerate(tiles.printed):
        right, up = window.left - tile.room.left, window.bottom - tile.room.bottom
        page = pages.document[first + number]
        whole = [words for words in tiles.items if isinstance(words, PaperWords) and holds(tile.room, words)]
        for words in whole:
            box = bounds([words])
            inside = lines_in(page, box.left + right, box.bottom + up, box.right + right, box.top + up)
            assert squeezed(words.text) in inside, (tile.name, words.text)
            found.add(squeezed(words.text))
        # And nothing else: all that is read in the window are those words.
        read = lines_in(page, window.left, window.bottom, window.right, window.top)
        assert len(read) == sum(len(squeezed(words.text)) for words in whole), tile.name
    assert found == wanted


def test_a_figure_on_a_join_is_not_cut_into_another_figure(rasterised: Any) -> None:
    """Every figure read on a page is one of the drawing's own: 3 17/32 in is never .7/32."""
    for paper in ("letter", "a4"):
        own = " ".join(dimensions(judged(OX), "left", "upright"))
        pages = rasterised(tiled(OX, paper=paper), 20)
        for number in range(len(pages)):
            if "of the map" in pages.words(number):
                for figure in re.findall(r"[\d.]*\d/\d+ in", pages.words(number)):
                    assert re.search(rf"(?<![\d.]){re.escape(figure)}", own), figure


@pytest.mark.parametrize("paper", ["letter", "a4", "a3", "tabloid", "280x400 mm"])
@pytest.mark.parametrize("name", [WREN, BADGER, OX, WRONG])
def test_alignment_marks_keep_off_words_and_pivots_and_agree(name: str, paper: str) -> None:
    sheet = judged(name)
    drawing = full_size(sheet, "left")
    _, tiles = fewest_pages(sheet, drawing, paper_size(paper))
    seen: dict[tuple[float, float], int] = {}
    for tile in tiles.printed:
        joins = sum(bool(tiles.neighbour(tile, *way)) for way in ((0, 1), (0, -1), (1, 0), (-1, 0)))
        marks = tiles.marks(tile)
        assert len(marks) >= joins, "at least one a join"
        for x, y in marks:
            room = tile.room
            assert room.left < x < room.right and room.bottom < y < room.top
            seen[round(x, 3), round(y, 3)] = seen.get((round(x, 3), round(y, 3)), 0) + 1
            for item in tiles.items:
                if isinstance(item, PaperWords):
                    box = bounds([item])
                    beyond = max(box.left - x, x - box.right, box.bottom - y, y - box.top)
                    assert beyond > 4 or item.angle % 90, item.text
                if isinstance(item, PaperCircle) and item.radius < 60:
                    assert np.hypot(x - item.centre[0], y - item.centre[1]) > item.radius + 4
    assert all(times >= 2 for times in seen.values()), "both pages of a join show the same mark"


@pytest.mark.parametrize(
    ("name", "paper"), [(WRONG, "letter"), (WREN, "220x300 mm"), (WREN, "tabloid"), (OX, "a4"), (BADGER, "350x220 mm")]
)
def test_all_words_stay_on_the_paper(name: str, paper: str, rasterised: Any) -> None:
    """No letter nearer than 10 mm to the paper's edge, beside the bars of landscape pages and of small ones too."""
    for data in (tiled(name, paper=paper), tiled(name, paper=paper, view="whole")):
        pages = rasterised(data, 20)
        for number in range(len(pages)):
            width, height = pages.size(number)
            text = pages.document[number].get_textpage()
            for index in range(text.count_chars()):
                if text.get_text_range(index, 1).strip():
                    left, bottom, right, top = (value * 25.4 / 72 for value in text.get_charbox(index))
                    assert left > 10 and bottom > 10 and right < width - 10 and top < height - 10, pages.words(number)


def test_a_paper_that_cannot_hold_the_bars_is_refused() -> None:
    """Both bars stand upright as well: 18.5 + 101.6 mm, 2 mm and the words "100 mm", which are over 10 mm long."""
    assert not bars_fit(Area(0, 0, 300, 130)) and bars_fit(Area(0, 0, 300, 145))
    assert not bars_fit(Area(0, 0, 110, 300))


# Words


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("name", [WREN, BADGER, HALF, WRONG])
def test_every_dimension_is_in_the_text_of_the_one_sheet(name: str, side: Any, rasterised: Any) -> None:
    sheet = judged(name)
    found = squeezed(rasterised(single(name, side, "whole"), 20).words(0))
    for text in dimensions(sheet, side, "whole"):
        # A line that passes close by a figure puts a blank in it for some readers: compared without blanks.
        assert squeezed(text) in found, text


def test_tiles_together_hold_every_dimension(rasterised: Any) -> None:
    pages = rasterised(tiled(WREN, view="whole"), 20)
    found = squeezed(" ".join(pages.words(number) for number in range(len(pages))))
    for text in dimensions(judged(WREN), "left", "whole"):
        assert squeezed(text) in found, text


def test_figures_by_hand_from_the_metric_sample(rasterised: Any) -> None:
    """Axis at wheel-centre height: 38 + 384 tan 9.5 = 102.260. Lower pivot: 102.260 - 120 tan 9.5 + 37 = 119.18 mm from hub face.
    Trail: 384 tan 5.5 = 36.975 mm."""
    pages = rasterised(tiled(BADGER, paper="a4", view="whole"), 20)
    found = " ".join(pages.words(number) for number in range(len(pages)))
    assert "lower pivot 119 mm (119.2 mm)" in found
    assert "mechanical trail 37 mm (36.97 mm)" in found
    assert "Axis to tyre centre plane at wheel-centre height 102.5 mm (102.3 mm) inboard" in found


@pytest.mark.parametrize(("side", "other"), [("left", "RIGHT"), ("right", "LEFT")])
def test_every_page_says_which_side_it_is_for(side: Any, other: str, rasterised: Any) -> None:
    pages = rasterised(tiled(WREN, side=side), 20)
    for number in range(len(pages)):
        words = pages.words(number)
        assert side.upper() in words and other not in words
        assert f"page {number + 1} of {len(pages)}" in words
        assert "Dune Wren, front uprights" in words


@pytest.mark.parametrize("paper", ["letter", "a4", "500x700 mm"])
def test_a_stop_prints_do_not_cut_with_its_reason_on_every_page(paper: str, rasterised: Any) -> None:
    pages = rasterised(tiled(WRONG, paper=paper), 20)
    for number in range(len(pages)):
        assert "DO NOT CUT. The caliper hits the wheel barrel by 1 mm" in pages.words(number)
    one = rasterised(single(WRONG), 20)
    assert all("DO NOT CUT. The caliper" in one.words(number) for number in range(len(one)))
    assert "DO NOT CUT" in drawing_svg(judged(WRONG))


def test_a_good_sheet_does_not_say_do_not_cut(rasterised: Any) -> None:
    pages = rasterised(tiled(BADGER), 20)
    assert not any("DO NOT CUT" in pages.words(number) for number in range(len(pages)))
    assert "DO NOT CUT" not in drawing_svg(judged(BADGER))


def test_unknowns_are_labelled_blanks_and_estimates_say_so(rasterised: Any) -> None:
    pages = rasterised(tiled(HALF), 20)
    found = " ".join(pages.words(number) for number in range(len(pages)))
    assert "Pivot spacing along axis ________" in found
    assert "Hub face to lower pivot ________ not worked out: needs" in found
    assert "estimate - measure" in found
    assert all("NOT FINISHED" in pages.words(number) for number in range(len(pages)))


def test_projection_and_line_kinds_are_spelled_out(rasterised: Any) -> None:
    pages = rasterised(tiled(BADGER), 20)
    assert "First-angle projection" in pages.words(0) and "reduced to 1:" in pages.words(0)
    found = " ".join(pages.words(number) for number in range(len(pages)))
    assert "Line kinds (ISO 128)" in found and "Dimensions as ISO 129" in found and "Scale 1:1" in found


def test_an_empty_sheet_prints_what_is_missing_and_no_tiles(rasterised: Any) -> None:
    pages = rasterised(drawing_pdf(judged_document({})), 20)
    assert not any("of the map" in pages.words(number) for number in range(1, len(pages)))
    assert "Nothing can be drawn yet" in pages.words(0)
    assert len(rasterised(one_sheet_pdf(judged_document({})), 20)) >= 1
    assert ElementTree.fromstring(drawing_svg(judged_document({})).encode())


def test_papers_that_cannot_be_used_are_refused() -> None:
    with pytest.raises(EntryError, match="letter"):
        tiled(BADGER, paper="napkin")


def test_the_same_sheet_gives_the_same_bytes() -> None:
    for make in (drawing_pdf, one_sheet_pdf, drawing_svg):
        one, other = (replace(judged_document(document(WREN))) for _ in "12")  # each drawn by itself
        assert make(one) == make(other)  # type: ignore[operator]


HOSTILE = [
    "(((",
    ") Tj ET (",
    "\\\\(",
    "мост 車",
    "Upright " * 200,
    "]]>&<script>alert(1)</script>",
    "\x1b[2J\x00",
    "9⅜ in",
]


@pytest.mark.parametrize("title", HOSTILE)
def test_hostile_titles_neither_break_the_drawing_nor_vanish(title: str, rasterised: Any) -> None:
    sheet = judged(BADGER, title=title)
    pages = rasterised(drawing_pdf(sheet, paper="a3"), 20)
    assert "LEFT" in pages.words(len(pages) - 1) and "page 1 of" in pages.words(0)
    kept = {"мост 車": "most [U+8ECA]", "\x1b[2J\x00": "?[2J?", "9⅜ in": "9 3/8 in"}.get(title, title)
    assert squeezed(kept) in squeezed(pages.words(0)), "all of it on the first page"
    assert squeezed(kept)[:12] in squeezed(pages.words(len(pages) - 1)), "its beginning on every page"
    root = ElementTree.fromstring(drawing_svg(sheet).encode())
    assert not root.findall(".//{http://www.w3.org/2000/svg}script")
    shown = "".join(root.itertext())
    assert squeezed(title.translate({0x1B: "\ufffd", 0: "\ufffd"})) in squeezed(shown)


# Mirrored


def test_left_and_right_are_mirror_images_in_pixels(rasterised: Any) -> None:
    """Lines only: words are wiped from both by comparing where neither has any."""
    sheet, dpi = judged(BADGER), 100
    left, right = full_size(sheet, "left"), full_size(sheet, "right")
    one, two = rasterised(single(BADGER, "left"), dpi), rasterised(single(BADGER, "right"), dpi)
    (_, room), (_, other_room) = one_sheet(sheet, left), one_sheet(sheet, right)
    # Turned words at the outer end have other room above than below.
    assert left.frame.width == pytest.approx(right.frame.width, abs=4)
    part = one.part(0, room.left, room.bottom, room.left + left.frame.width, room.bottom + left.frame.height)
    other = two.part(
        0,
        other_room.left,
        other_room.bottom,
        other_room.left + right.frame.width,
        other_room.bottom + left.frame.height,
    )
    flipped = other[:, ::-1]
    rows, columns = (min(a, b) for a, b in zip(part.shape, flipped.shape, strict=True))
    part, flipped = part[:rows, :columns], flipped[:rows, :columns]
    words = np.zeros(part.shape, dtype=bool)
    for item in left.items:
        if isinstance(item, PaperWords):
            x, y, reach = item.at[0] * dpi / 25.4, rows - item.at[1] * dpi / 25.4, 400
            words[
                max(0, int(y) - reach) : int(y) + reach if item.angle else int(y) + 12,
                max(0, int(x) - reach) : int(x) + reach,
            ] |= item.angle != 0
            words[max(0, int(y) - 12) : int(y) + 12, max(0, int(x) - reach) : int(x) + reach] = True
    compared = ~words
    # Headings differ, and so may the dashes of a chain-dotted circle, which has no other start when mirrored: compared is
    # the front view below its heading.
    compared[: rows // 10], compared[:, : int(0.55 * columns)] = False, False
    surely, near = part < 110, grown(flipped < 225)
    assert (surely & compared).sum() > 1000
    assert not inside(surely & compared & ~near).any()
    shifted = np.roll(near, 12, axis=1)
    assert inside(surely & compared & ~shifted).any(), "three mm aside it would be seen"


# SVG


def test_svg_is_at_true_scale() -> None:
    root = ElementTree.fromstring(drawing_svg(judged(BADGER)).encode())
    width, height = root.attrib["width"], root.attrib["height"]
    assert width.endswith("mm") and height.endswith("mm")
    assert [float(part) for part in root.attrib["viewBox"].split()] == [0, 0, float(width[:-2]), float(height[:-2])]
    radii = {float(circle.attrib["r"]) for circle in root.iter("{http://www.w3.org/2000/svg}circle")}
    assert {149.0, 22.0, 24.0, 33.1} <= radii, "rotor, housings, pilot"
    lengths = {
        float(bar.attrib[key]) for bar in root.iter("{http://www.w3.org/2000/svg}rect") for key in ("width", "height")
    }
    assert {100.0, 101.6} <= lengths


def test_svg_holds_every_dimension_and_its_side() -> None:
    sheet = judged(BADGER)
    for side in ("left", "right"):
        found = {element.text for element in ElementTree.fromstring(drawing_svg(sheet, side, "whole").encode()).iter()}  # type: ignore[arg-type]
        assert set(dimensions(sheet, side, "whole")) <= found
        assert any(text and text.startswith(f"{side.upper()} upright") for text in found)
