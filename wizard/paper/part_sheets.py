"""The part sheets as PDF: the parts list, then a page for each piece to cut with every dimension, hole table and notes."""

from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.piece_view import ARC, HoleRow, arc_rows, hole_rows, mark_rows, piece_view, slot_rows
from rules.drawn.pieces import DRILLED
from rules.judging.judge import Judged
from rules.judging.reader import answer, name
from rules.measure.quantity import Units
from rules.shop.checklist_line import BLANK
from rules.shop.parts_list import PartsRow, bolts, bought, metal
from wizard.paper.drawing_items import draw_items
from wizard.paper.flow import Flow
from wizard.paper.pdf import Document, paper_size
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

_FIGURE_HEIGHT = 118.0
_LESS = name("plate.left_for_drilling")
_ASIDE = 4.0
"""mm."""
TOLERANCES: dict[Units, str] = {
    "inch": "edges +/- 1/64 in, places of holes +/- 0.010 in, holes +0.010 / -0 in",
    "metric": "edges +/- 0.5 mm, places of holes +/- 0.25 mm, holes +0.25 / -0 mm",
}
"""Trade custom; no published source."""


@shop_paper
def part_sheets_pdf(judged: Judged, paper: str = "letter") -> bytes:
    """The sheets as a PDF file. paper: a name or a size with its unit, see `paper_size`."""
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    pieces = cut_pieces(judged)
    flow = Flow(judged, pages, paper_size(paper), "Parts list")
    _parts_list(flow, judged, pieces)
    for number, piece in enumerate(pieces, 1):
        flow = Flow(judged, pages, paper_size(paper), f"Part sheet {number}: {piece.title}")
        _piece(flow, judged, number, piece)
    return pages.written()


# Parts list


def _parts_list(flow: Flow, judged: Judged, pieces: tuple[CutPiece, ...]) -> None:
    flow.heading("Parts list: what one car takes is twice what one side takes", 40)
    figures = FigureWriter.of(judged)
    rows = [("Cut", number, *_cut_row(piece, figures, judged)) for number, piece in enumerate(pieces, 1)]
    number = len(rows)
    for kind, found in (("Buy", bought(judged)), ("Bolt", bolts(judged))):
        for row in found:
            number += 1
            rows.append((kind, number, *_cells(row)))
    flow.paragraph(f"Plate: {metal(judged)}. Lengths and widths are finished sizes.", before=0.3)
    flow.table((11, 10, 36, 15, 56, 26, 52), ("", "No.", "What", "A side", "Size", "Material, grade", "Notes"), rows)
    if not pieces:
        flow.paragraph("No piece is drawn yet: the plate's outline is not on the sheet.", before=1.0)


def _cells(row: PartsRow) -> tuple[str, str, str, str, str]:
    return row.what, row.a_side, row.size, row.material, row.notes


def _cut_row(piece: CutPiece, figures: FigureWriter, judged: Judged) -> tuple[str, str, str, str, str]:
    outline = piece.profile.outline
    size = f"{figures.exact(outline.right - outline.left)} x {figures.exact(outline.top - outline.bottom)}"
    thick = figures.exact(piece.thickness) if piece.thickness else BLANK
    a_side = "2" if piece.make.startswith("4") else "1"
    return piece.title, a_side, f"{size}, {thick} thick", "plate", f"its part sheet; {piece.make}"


# A piece


def _piece(flow: Flow, judged: Judged, number: int, piece: CutPiece) -> None:
    figures = FigureWriter.of(judged)
    thick = figures.exact(piece.thickness) if piece.thickness else BLANK
    flow.paragraph(f"{piece.title.upper()}. Item {number} of the parts list. Make {piece.make}.", bold=True)
    flow.paragraph(f"Metal {metal(judged)}. Thickness {thick}, measured {BLANK}.", before=0.3)
    flow.paragraph(
        f"Tolerances, trade custom: {TOLERANCES[judged.shown_in]}. Edges square and clean; sharp ones broken.",
        before=0.3,
    )
    scale, view = piece_view(piece, figures, flow.area.width - 2 * _ASIDE, _FIGURE_HEIGHT)
    reduced = "full size" if scale == 1 else f"reduced 1:{scale:g}"
    flow.heading(f"Drawn {reduced}; never measure off it", _FIGURE_HEIGHT)
    left = flow.area.left + (flow.area.width - view.frame.width) / 2 - view.frame.left
    with flow.page.moved(left, flow.y - 2 - view.frame.top):
        draw_items(flow.page, view.items)
    flow.y -= view.frame.height + 4
    rows = hole_rows(piece) + slot_rows(piece) + arc_rows(piece)
    if piece.on_wheel_centre:
        rows += mark_rows(piece)
    if rows:
        flow.heading("Holes and marks, from the left and the lower edge", 20)
        heading = ["Hole", "What", "Diameter, size", "From left edge", "From lower edge"]
        table = [
            [
                row.letter,
                row.what,
                _size(row, figures),
                figures.exact(row.from_left),
                figures.exact(row.from_bottom),
            ]
            for row in rows
        ]
        if piece.on_wheel_centre:
            heading += ["From wheel centre, across", "Up or down"]
            for cells, row in zip(table, rows, strict=True):
                cells += [
                    _way(row.from_centre[0], "right", "left", figures),
                    _way(row.from_centre[1], "up", "down", figures),
                ]
        flow.table((12, 34, 40, 24, 26, 32, 26)[: len(heading)], heading, table)
    less = answer(judged.worked.known, _LESS)
    if less is not None and any(hole.what in DRILLED for hole in piece.profile.holes):
        flow.paragraph(
            f"Diameters are finished sizes. Bolt holes are CUT {figures.exact(less)} smaller; drill or ream them.",
            before=0.5,
        )
    for words in (*piece.notes, *(f"NOT DRAWN: {left_out}" for left_out in piece.profile.left_out)):
        flow.paragraph(words, before=0.5)
    flow.paragraph(f"Drawn {BLANK}   Checked {BLANK}   Left measured {BLANK}   Right measured {BLANK}", before=1.5)


def _size(row: HoleRow, figures: FigureWriter) -> str:
    if row.what == ARC:
        return f"R {figures.exact(row.diameter / 2)}"
    if row.wide:
        turned = f" at {row.turned:.1f} deg" if row.turned % 90 else ""
        return f"{figures.exact(row.diameter)} x {figures.exact(row.wide)}{turned}"
    return figures.exact(row.diameter) if row.diameter else "scribe"


def _way(distance: float, plus: str, minus: str, figures: FigureWriter) -> str:
    if abs(distance) < 1e-6:
        return "on the line"
    return f"{figures.exact(distance)} {plus if distance > 0 else minus}"
