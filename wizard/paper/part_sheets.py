"""The part sheets as PDF: the parts list, then a page for each piece to cut with every dimension, hole table and notes."""

from collections.abc import Iterator, Sequence

from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.items import items
from rules.drawn.piece_view import ARC, HoleRow, arc_rows, hole_rows, mark_rows, piece_view, slot_rows
from rules.drawn.pieces import DRILLED
from rules.judging.judge import Judged
from rules.judging.reader import answer, name
from rules.measure.quantity import Units
from rules.shop.checklist_line import BLANK
from rules.shop.layout import LOWER_MARKS, UPPER_MARKS, WHERE_FIGURES_STAND
from rules.shop.parts_list import PartsRow, metal
from rules.shop.weld_map import joints
from wizard.paper.drawing_items import draw_items
from wizard.paper.flow import CLOSE, Flow
from wizard.paper.pdf import POINT, WORDS, Document, line_height, paper_size, text_width, wrap
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

_FIGURE_HEIGHT = 118.0
_LESS = name("plate.left_for_drilling")
_ASIDE, _WIDEST_TABLE, _IN_CELL = 4.0, 160.0, 2.0
"""mm beside a drawing, that the table beside it may be wide, and round the words of its cells."""
_LEAST_FIGURE = 90.0
"""mm beside the table without which the drawing stands above it."""
_HEADED, _TO_SIGN, _LEAST_PADDING = 14.0, 7.0, 0.15
"""mm: of a drawing's heading, of the line to sign on, and round the words of a table that is long."""
_BEFORE_NOTE = 0.5
"""mm."""
_JOINTS = {
    "upper": ("upper_lug",), "lower": ("lower_lug",), "steering_arm": ("steering_arm",),
    "caliper_bracket": ("caliper_bracket",), "beam": ("beam_side",), "beam of strips": ("beam_side", "beam_back", "beam_face"),
    "gussets": ("upper_gusset", "lower_gusset"),
}  # fmt: skip
"""Which pieces a joint of the weld map holds."""
UNITS: dict[Units, str] = {"inch": "in", "metric": "mm"}
_SPELT: dict[Units, str] = {"inch": "inches", "metric": "mm"}
TOLERANCES: dict[Units, str] = {
    "inch": "edges +/- 1/64 in, places of holes +/- 0.010 in, holes +0.010 / -0 in",
    "metric": "edges +/- 0.5 mm, places of holes +/- 0.25 mm, holes +0.25 / -0 mm",
}
"""Trade custom; no published source."""

_PIVOT_MARKS = {"lower pivot": LOWER_MARKS, "upper pivot": UPPER_MARKS}
_PIVOTS = f"P1 and P2: the pivots square through the plate, scribed and not cut. {WHERE_FIGURES_STAND}."


@shop_paper
def part_sheets_pdf(judged: Judged, paper: str = "letter") -> bytes:
    """The sheets as a PDF file. paper: a name or a size with its unit, see `paper_size`."""
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    pieces = cut_pieces(judged)
    flow = Flow(judged, pages, paper_size(paper), "Parts list")
    _parts_list(flow, judged)
    for number, piece in enumerate(pieces, 1):
        short, long = sorted(paper_size(paper))
        size = (long, short) if piece.on_wheel_centre else (short, long)
        flow = Flow(judged, pages, size, f"Part sheet {number}: {piece.title}")
        _piece(flow, judged, number, piece)
    return pages.written()


# Parts list


def _parts_list(flow: Flow, judged: Judged) -> None:
    flow.padding = CLOSE
    flow.heading("Parts list: what one car takes is twice what one side takes", 40)
    figures, listed = FigureWriter.of(judged), items(judged)
    rows = [
        (
            item.got,
            item.number,
            *(_cut_row(item.entry, figures) if isinstance(item.entry, CutPiece) else _cells(item.entry)),
        )
        for item in listed
    ]
    flow.paragraph(
        f"Plate: {metal(judged)}. Lengths and widths are finished sizes. No. is the number in the circles of the general "
        "arrangement. Each piece to cut has its part sheet.",
        before=0.3,
    )
    flow.table(
        (10, 10, 32, 11.5, 55, 21, 63), ("", "No.", "What", "Per side", "Size", "Material, grade", "Notes"), rows
    )
    if not any(item.got == "Cut" for item in listed):
        flow.paragraph("No piece is drawn yet: the plate's outline is not on the sheet.", before=1.0)


def _cells(row: PartsRow) -> tuple[str, str, str, str, str]:
    return row.what, row.a_side, row.size, row.material, row.notes


def _cut_row(piece: CutPiece, figures: FigureWriter) -> tuple[str, str, str, str, str]:
    outline = piece.profile.outline
    size = f"{figures.exact(outline.right - outline.left)} x {figures.exact(outline.top - outline.bottom)}"
    thick = figures.exact(piece.thickness) if piece.thickness else BLANK
    a_side = "2" if piece.make.startswith("4") else "1"
    return piece.title, a_side, f"{size}, {thick} thick", "plate", piece.make


# A piece


def _piece(flow: Flow, judged: Judged, number: int, piece: CutPiece) -> None:
    """One page: a piece on the wheel's centre lines with its table beside it, another with its table below."""
    figures = FigureWriter.of(judged)
    thick = figures.exact(piece.thickness) if piece.thickness else BLANK
    to_sign = f"Drawn {BLANK} Checked {BLANK} Measured L {BLANK} R {BLANK}"
    title = f"{piece.title.upper()}. Item {number} of the parts list. Make {piece.make}."
    beside = text_width(title, bold=True) + text_width(to_sign) + _ASIDE < flow.area.width
    if beside:
        flow.page.text((flow.area.right, flow.y - WORDS * POINT), to_sign, align="right")
    flow.paragraph(title, bold=True)
    flow.paragraph(f"Metal {metal(judged)}. Thickness {thick}, measured {BLANK}.", before=0.3)
    flow.paragraph(
        f"Tolerances, trade custom: {TOLERANCES[judged.shown_in]}. Edges square and clean; sharp ones broken.",
        before=0.3,
    )
    notes, table = [*_notes(judged, piece, figures)], _Table(piece, figures)
    to_sign_below = () if beside else (to_sign,)
    if piece.on_wheel_centre and flow.area.width >= table.width + _LEAST_FIGURE:
        notes = [" ".join(notes)]
        if _height(notes, table.width) + table.height(flow.padding) <= flow.room - _TO_SIGN:
            _side_by_side(flow, piece, figures, table, notes, flow.room - _TO_SIGN * len(to_sign_below))
            notes = []
        else:
            below = _height(notes, flow.area.width) + _TO_SIGN * len(to_sign_below)
            _side_by_side(flow, piece, figures, table, (), flow.room - below)
    else:
        _figure(flow, piece, figures, _FIGURE_HEIGHT)
        if table.rows:
            flow.heading(f"Holes and marks, {_SPELT[figures.units]} from the left and the lower edge", 20)
            flow.table(table.widths, table.heading, table.rows)
    for words in notes:
        flow.paragraph(words, before=_BEFORE_NOTE)
    for words in to_sign_below:
        flow.paragraph(words, before=1.5)


def _height(notes: Sequence[str], width: float) -> float:
    return sum(_BEFORE_NOTE + len(wrap(words, width)) * line_height() for words in notes)


def _figure(flow: Flow, piece: CutPiece, figures: FigureWriter, height: float) -> None:
    scale, view = piece_view(piece, figures, flow.area.width - 2 * _ASIDE, height)
    reduced = "full size" if scale == 1 else f"reduced 1:{scale:g}"
    flow.heading(f"Drawn {reduced}; never measure off it", view.frame.height)
    left = flow.area.left + (flow.area.width - view.frame.width) / 2 - view.frame.left
    with flow.page.moved(left, flow.y - 2 - view.frame.top):
        draw_items(flow.page, view.items)
    flow.y -= view.frame.height + 4


def _side_by_side(
    flow: Flow, piece: CutPiece, figures: FigureWriter, table: "_Table", notes: Sequence[str], room: float
) -> None:
    """The drawing, and right of it the table with notes under it; the table stands as close as it must to leave `room` mm."""
    top, whole, loose = flow.y, flow.area, flow.padding
    flow.area = whole.less(right=table.width + _ASIDE)
    _figure(flow, piece, figures, room - _HEADED)
    left, flow.y, flow.area = flow.y, top - 1.5, whole.less(left=whole.width - table.width)
    spare = (room - 3 - _height(notes, table.width) - table.height(0.0)) / table.lines / 2
    flow.padding = min(loose, max(spare, _LEAST_PADDING))
    flow.table(table.widths, table.heading, table.rows)
    for words in notes:
        flow.paragraph(words, before=_BEFORE_NOTE)
    flow.y, flow.area, flow.padding = min(left, flow.y), whole, loose


class _Table:
    """Holes, slots, arcs and marks: what, its size, and its place from two edges and from the wheel's centre."""

    def __init__(self, piece: CutPiece, figures: FigureWriter) -> None:
        unit = UNITS[figures.units]
        found = hole_rows(piece) + slot_rows(piece) + arc_rows(piece)
        if piece.on_wheel_centre:
            found += mark_rows(piece)
        turned = any(row.turned % 90 for row in found)
        self.heading = ["No.", "What", f"Size, {unit}", *(["Deg"] if turned else []), "Left edge", "Lower edge"]
        if piece.on_wheel_centre:
            self.heading += ["Wheel centre", "up or down"]
        self.rows: list[list[str]] = []
        for row in found:
            cells = [row.letter, row.what, _size(row, figures)]
            if turned:
                cells.append(f"{row.turned:.1f}" if row.turned % 90 else "")
            cells += [figures.bare(row.from_left), figures.bare(row.from_bottom)]
            if marks := _PIVOT_MARKS.get(row.what):
                cells += [marks.fore_and_aft, marks.up]
            elif piece.on_wheel_centre:
                across, up = row.from_centre
                cells += [_way(across, "right", "left", figures), _way(up, "up", "down", figures)]
            self.rows.append(cells)
        self.widths = [_IN_CELL + _needs(*column) for column in zip(self.heading, *self.rows, strict=True)]
        if self.width > _WIDEST_TABLE:
            self.widths = [width * _WIDEST_TABLE / self.width for width in self.widths]

    @property
    def width(self) -> float:
        """mm."""
        return sum(self.widths)

    @property
    def lines(self) -> int:
        """Lines of words, its heading among them."""
        return round(self.height(0.0) / line_height())

    def height(self, padding: float) -> float:
        """mm, with so many above and below the words of each row."""
        rows = [(self.heading, True), *((row, False) for row in self.rows)]
        lines = [
            max(len(wrap(cell, wide - _IN_CELL, bold=bold)) for wide, cell in zip(self.widths, row, strict=True))
            for row, bold in rows
        ]
        return sum(lines) * line_height() + 2 * padding * len(rows)


def _needs(heading: str, *cells: str) -> float:
    """mm that a column needs so that no figure in it is broken: its heading may run over several lines."""
    return max(*(text_width(word, bold=True) for word in heading.split()), *(text_width(cell) for cell in cells), 0.0)


def _notes(judged: Judged, piece: CutPiece, figures: FigureWriter) -> Iterator[str]:
    less = answer(judged.worked.known, _LESS)
    if less is not None and any(hole.what in DRILLED for hole in piece.profile.holes):
        yield f"Diameters are finished sizes. Bolt holes are CUT {figures.exact(less)} smaller; drill or ream them."
    if piece.on_wheel_centre:
        yield (
            f"Places are in {_SPELT[figures.units]} from two edges, and again from the wheel-centre lines."
            f"{f' {_PIVOTS}' if mark_rows(piece) else ''}"
        )
    if any(slot.turned % 90 for slot in piece.profile.slots):
        yield "Deg: how far a slot's length is turned from level, to the left."
    yield from piece.notes
    yield from (
        f"Welded as joint {joint.number} of the weld map: {joint.parts}; {joint.words}."
        for joint in joints(judged)
        if piece.key in _JOINTS[joint.which]
    )
    yield from (f"NOT DRAWN: {left_out}." for left_out in piece.profile.left_out)


def _size(row: HoleRow, figures: FigureWriter) -> str:
    if row.what == ARC:
        return f"R {figures.bare(row.diameter / 2)}"
    if row.wide:
        return f"{figures.bare(row.diameter)} x {figures.bare(row.wide)}"
    return f"ø {figures.bare(row.diameter)}" if row.diameter else "scribe"


def _way(distance: float, plus: str, minus: str, figures: FigureWriter) -> str:
    if abs(distance) < 1e-6:
        return "on the line"
    return f"{figures.bare(distance)} {plus if distance > 0 else minus}"
