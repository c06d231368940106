"""The full-size drawing as PDF: a map of the pages, the figures, then the drawing itself over as many pages as it needs.

Every page carries check bars, the side, and DO NOT CUT with its reasons where that applies.
"""

from collections.abc import Sequence
from functools import partial

from rules.drawn.full_size import PROJECTION, Drawing, Extent, TitleBlock, full_size, third_angle
from rules.drawn.reductions import REDUCTIONS
from rules.judging.judge import Judged
from rules.measure.outline import Side
from rules.measure.quantity import EntryError
from rules.measure.said import in_units
from wizard.paper.drawing_items import draw_items, draw_reduced, projection_symbol
from wizard.paper.flow import CLOSE, BarredFlow, Flow
from wizard.paper.pdf import (
    MARGIN,
    POINT,
    WORDS,
    Area,
    Document,
    PaperPage,
    bars_fit,
    check_bars,
    line_height,
    paper_size,
    text_width,
)
from wizard.paper.seams import MARK, room_for
from wizard.paper.stamp import stamp
from wizard.paper.stops import stop_band
from wizard.paper.tiles import OVERLAP, Tile, Tiling, items_on, tiling, with_whole_words
from wizard.paper.wording import shop_paper

_BAND = 7.0
"""mm above a tile for its name and its neighbours."""
_LEAST_TILE = 60.0
"""mm: a page with less room than that for the drawing is no use, even where every word would fit."""
_CROP, _CROP_GAP = 4.0, 0.8
_MAP_ROOM = 60.0

HOW_TO = (
    "Print every page on the same printer at 100 % (not “fit to page”). Measure both bars, both ways, on every page.",
    f"Pages overlap by [about 3/8 in | {OVERLAP:g} mm]. Trim each along its right and lower frame line, lay it over its "
    "neighbour so that the ringed crosses and the lines meet, and tape. Then measure a long dimension across the joins "
    "before you lay metal on it.",
)


@shop_paper
def drawing_pdf(judged: Judged, *, paper: str = "letter", side: Side = "left", view: Extent = "upright") -> bytes:
    """The drawing at 1:1 over pages of one paper, as a PDF file.

    paper: a name or a size with its unit, see `paper_size`. view: "upright" for rim, rotor, hub and pivots, "whole" for the
    tyres and the ground as well. Raises EntryError for a paper that cannot be read or is too small.
    """
    return on_pages(judged, full_size(judged, side, view), paper)


@shop_paper
def on_pages(judged: Judged, drawing: Drawing, paper: str) -> bytes:
    """The same of a drawing that is made already."""
    size = paper_size(paper)
    document = Document(drawing.block.title, stamp(judged), f"{drawing.side.upper()}, full size, 1:1")
    turned, tiles = fewest_pages(judged, drawing, size)
    _summary(judged, document, size, drawing, tiles)
    for tile in tiles.printed:
        _tile_page(judged, document, turned, drawing, tiles, tile)
    return document.written()


@shop_paper
def one_sheet_pdf(judged: Judged, side: Side = "left", view: Extent = "upright") -> bytes:
    """The drawing at 1:1 on one large page for a plotter, its figures on a second page."""
    drawing = full_size(judged, side, view)
    document = Document(drawing.block.title, stamp(judged), f"{side.upper()}, full size, 1:1")
    page, room = one_sheet(judged, drawing)
    document.pages.append(page)
    with page.moved(room.left - drawing.frame.left, room.bottom - drawing.frame.bottom):
        draw_items(page, drawing.items)
    _figures(BarredFlow(judged, document, paper_size("a3"), f"{side.upper()}, figures"), drawing.block)
    return document.written()


def one_sheet(judged: Judged, drawing: Drawing) -> tuple[PaperPage, Area]:
    """An empty page just large enough for a drawing, with its bars, and the room for the drawing on it."""
    width = max(drawing.frame.width, 250.0) + 2 * MARGIN + 20
    heading = f"{drawing.side.upper()}, whole drawing on one sheet"
    least = PaperPage(width, 1000.0, heading)
    spare = check_bars(least, stop_band(least, judged)).height
    page = PaperPage(width, 1000.0 - spare + max(drawing.frame.height, 150.0), heading)
    return page, check_bars(page, stop_band(page, judged))


# Pages


def fewest_pages(judged: Judged, drawing: Drawing, size: tuple[float, float]) -> tuple[tuple[float, float], Tiling]:
    """The paper upright or on its side, whichever needs fewer pages, with every word whole on one of them."""
    found = []
    widest, highest = room_for(drawing.items)
    for turned in (size, size[::-1]):
        page = PaperPage(*turned, "")
        window = window_on(judged, page)
        wide, high = window.width >= max(widest, _LEAST_TILE), window.height >= max(highest, _LEAST_TILE)
        if wide and high and bars_fit(stop_band(page, judged, brief=True)):
            found.append((turned, tiling(drawing, window.width, window.height)))
    if not found:
        raise EntryError(
            "this paper is too small for the drawing’s words and the reasons not to cut; take a larger one"
        )
    turned, tiles = min(found, key=lambda each: len(each[1].printed))
    return turned, with_whole_words(tiles)


def window_on(judged: Judged, page: PaperPage) -> Area:
    """Where a page shows its part of the drawing; draws what stands around it."""
    return check_bars(page, stop_band(page, judged, brief=True)).less(left=1, bottom=1, top=_BAND)


def _tile_page(
    judged: Judged, document: Document, size: tuple[float, float], drawing: Drawing, tiles: Tiling, tile: Tile
) -> None:
    page = document.page(size, f"{drawing.side.upper()}, page {tile.name} of the map")
    window = window_on(judged, page)
    neighbours = (("above", -1, 0), ("below", 1, 0), ("left", 0, -1), ("right", 0, 1))
    named = [
        f"{words} {found.name}" for words, down, right in neighbours if (found := tiles.neighbour(tile, down, right))
    ]
    page.text((window.left + 6, window.top + 2), tile.name, bold=True)
    if named:
        page.text((window.left + 18, window.top + 2), f"joins {', '.join(named)}")
    right, up = window.left - tile.room.left, window.bottom - tile.room.bottom
    with page.only_inside(window), page.moved(right, up):
        draw_items(page, items_on(tiles.items, tile.room))
        for mark in tiles.marks(tile):
            _alignment_mark(page, mark)
    page.box(window)
    _crop_marks(page, window)


def _alignment_mark(page: PaperPage, at: tuple[float, float]) -> None:
    x, y = at
    page.circle(at, MARK / 2, "thin")
    page.line((x - MARK, y), (x + MARK, y))
    page.line((x, y - MARK), (x, y + MARK))


def _crop_marks(page: PaperPage, window: Area) -> None:
    for x, way_x in ((window.left, -1), (window.right, 1)):
        for y, way_y in ((window.bottom, -1), (window.top, 1)):
            page.line((x + way_x * _CROP_GAP, y), (x + way_x * _CROP, y))
            page.line((x, y + way_y * _CROP_GAP), (x, y + way_y * _CROP))


# The map and the figures


def _summary(judged: Judged, document: Document, size: tuple[float, float], drawing: Drawing, tiles: Tiling) -> None:
    flow = BarredFlow(judged, document, size, f"{drawing.side.upper()}, map of the pages")
    flow.paragraph(drawing.block.title or "No sheet title", bold=True)
    what = "rim, rotor, hub and pivots" if drawing.extent == "upright" else "the whole wheel down to the ground"
    flow.paragraph(f"{drawing.side.upper()} upright: {what}. Scale 1:1, full size.", bold=True)
    flow.paragraph(drawing.block.scope, before=2)
    flow.paragraph(f"{stamp(judged)}.   Drawn ____________   Checked ____________", before=2)
    third = third_angle(judged)
    symbol = projection_symbol(flow.page, (flow.area.left + 2, flow.y - 13), third_angle=third)
    below = flow.page.paragraph((symbol.right + 3, flow.y - 4), flow.area.right - symbol.right - 3, PROJECTION[third])
    flow.y = min(symbol.bottom, below) - 2
    if tiles.tiles:
        for words in (in_units(told, judged.shown_in) for told in HOW_TO):
            flow.paragraph(words)
        if flow.room < _MAP_ROOM:
            flow.turn_page()
        _map(flow, drawing, tiles)
    else:
        flow.paragraph("Nothing can be drawn yet: see what is missing below.", bold=True)
    _figures(flow, drawing.block)


def _map(flow: Flow, drawing: Drawing, tiles: Tiling) -> None:
    page, area = flow.page, flow.area.less(top=flow.area.top - flow.y + 2 * line_height() + 2)
    left, right = (
        pick(getattr(tile.room, edge) for tile in tiles.tiles) for pick, edge in ((min, "left"), (max, "right"))
    )
    bottom, top = (
        pick(getattr(tile.room, edge) for tile in tiles.tiles) for pick, edge in ((min, "bottom"), (max, "top"))
    )
    fits = partial(_fits, area, right - left, top - bottom)
    reduction = next((each for each in REDUCTIONS[1:] if fits(each)), REDUCTIONS[-1])
    blank = any(tile.blank for tile in tiles.tiles)
    crossed = " A crossed-out page is blank and is not printed." if blank else ""
    flow.paragraph(
        f"Map, and the drawing reduced to 1:{reduction:g}: not to measure from.{crossed}", bold=True, before=1
    )
    flow.y -= 2
    shift_x = area.left + (area.width - (right - left) / reduction) / 2 - left / reduction
    shift_y = flow.y - top / reduction
    with page.moved(shift_x, shift_y):
        draw_reduced(page, drawing.items, reduction)
        for tile in tiles.tiles:
            room = Area(
                *(side / reduction for side in (tile.room.left, tile.room.bottom, tile.room.right, tile.room.top))
            )
            page.box(room)
            if tile.blank:
                page.line((room.left, room.bottom), (room.right, room.top))
                page.line((room.left, room.top), (room.right, room.bottom))
            at = (room.left + OVERLAP / reduction + 1, room.top - OVERLAP / reduction - WORDS * POINT)
            left, low = at[0] - 0.4, at[1] - 0.6
            right, high = at[0] + text_width(tile.name, bold=True) + 0.4, at[1] + 0.8 * WORDS * POINT
            under = ((left, low), (right, low), (right, high), (left, high))
            page.polyline(under, "thin", closed=True, white=True)  # no line runs through the letters
            page.text(at, tile.name, bold=True)
    flow.y = shift_y + bottom / reduction - 3


def _fits(area: Area, width: float, height: float, reduction: float) -> bool:
    return width / reduction <= area.width and height / reduction <= area.height


def _figures(flow: Flow, block: TitleBlock) -> None:
    flow.padding = CLOSE
    _table(flow, "Missing: fill in by hand, or in the sheet", ("What", "Figure"), block.missing)
    flow.heading("How to read it", room_after=2 * line_height())
    for words in block.notes:
        flow.paragraph(words, before=0.5)
    _table(flow, "Figures that no view shows", ("What", "Figure"), block.figures)


def _table(flow: Flow, words: str, heading: Sequence[str], rows: Sequence[tuple[str, str]]) -> None:
    if rows:
        flow.heading(words, room_after=4 * line_height())
        flow.table((0.5, 0.5), heading, rows)
