"""The general arrangement as PDF: one page with all views of the LEFT upright and its title block."""

from collections.abc import Sequence

from rules.drawn.arrangement import LEAST_WIDTH, NAME_ROOM, ArrangedView, arrangement
from rules.drawn.full_size import third_angle
from rules.drawn.items import items, not_drawn
from rules.judging.judge import Judged, shown
from rules.judging.reader import name
from rules.shop.checklist_line import BLANK
from rules.shop.layout import WHERE_FIGURES_STAND
from rules.shop.parts_list import metal
from wizard.paper.drawing_items import draw_items, projection_symbol
from wizard.paper.flow import Flow
from wizard.paper.lettering import first_lines, line_height, wrap
from wizard.paper.part_sheets import TOLERANCES
from wizard.paper.pdf import Document, paper_size
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

_THICKNESS, _VEHICLE = name("plate.thickness"), name("job.vehicle")
_NARROW = 230.0
_BLOCKS = {False: (44.0, 3), True: (68.0, 6)}
"""mm kept for the title block, and lines of each of its cells: on usual paper, and where it is narrower than that many mm.
Longer words stand whole on the part sheets; what a shop must not miss stands first."""
_SYMBOL_ROOM = 34.0
_SYMBOL_NAME, _SYMBOL_BELOW = 4.0, 17.0
"""mm from the block's top to the words beside it and to the foot of the symbol under them."""
_BEFORE_NOTE = 1.0
"""mm."""


@shop_paper
def arrangement_pdf(judged: Judged, paper: str = "letter") -> bytes:
    """Both pages as a PDF file. paper: a name or a size with its unit, see `paper_size`; it lies on its side."""
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    short, long = sorted(paper_size(paper))
    flow = Flow(judged, pages, (long, short), "General arrangement, LEFT; RIGHT is its mirror image")
    third = third_angle(judged)
    block, most = _BLOCKS[flow.area.width < _NARROW]
    note = not_drawn(judged)
    room = flow.room - block - (len(wrap(note, flow.area.width)) * line_height() + _BEFORE_NOTE if note else 0.0)
    scale, rows = arrangement(judged, flow.area.width, room, third_angle=third)
    if not rows:
        flow.paragraph(f"Nothing can be drawn yet: plate and pivots are not on the sheet. Sketch here. {BLANK}")
        return pages.written()
    shown = {number for row in rows for one in row for number in one.numbers}
    unseen = [str(item.number) for item in items(judged) if item.number not in shown]
    for number, row in enumerate(rows):
        if number:
            flow.turn_page()
        _row_of_views(flow, row, room)
        if note:
            flow.y = flow.y - room - _BEFORE_NOTE
            flow.paragraph(note, bold=True)
        flow.y = flow.area.bottom + block - 8
        _title_block(flow, judged, scale, unseen, most, third_angle=third)
    return pages.written()


def _row_of_views(flow: Flow, row: Sequence[ArrangedView], room: float) -> None:
    """Views with their wheel centres level, each under its name."""
    area = flow.area
    widths = [max(one.view.frame.width, LEAST_WIDTH) for one in row]
    spare = (area.width - sum(widths)) / len(row)
    high, low = max(one.view.frame.top for one in row), min(one.view.frame.bottom for one in row)
    level = flow.y - NAME_ROOM - (room - NAME_ROOM) / 2 - (high + low) / 2
    left = area.left + spare / 2
    for one, wide in zip(row, widths, strict=True):
        frame = one.view.frame
        with flow.page.moved(left + (wide - frame.width) / 2 - frame.left, level):
            draw_items(flow.page, one.view.items)
        flow.page.text((left + wide / 2, level + high + 4), one.name, bold=True, align="centre")
        left += wide + spare


def _title_block(
    flow: Flow, judged: Judged, scale: float, unseen: Sequence[str], most: int, *, third_angle: bool
) -> None:
    without = f", without one: {', '.join(unseen)}" if unseen else ""
    words = "Third angle" if third_angle else "First angle"
    rows = (
        (
            f"LEFT drawn; RIGHT is its mirror image. Front upright of {shown(_VEHICLE, judged) or BLANK}.",
            f"Plate {shown(_THICKNESS, judged) or BLANK}. Material {metal(judged)}",
            f"Scale 1:{scale:g}; never measure off it. {WHERE_FIGURES_STAND}.",
        ),
        (
            f"Tolerances, trade custom: {TOLERANCES[judged.shown_in]}",
            f"In circles: number in the parts list{without}. Dash, two dots: bought.",
            f"{stamp(judged)}. Drawn {BLANK} Checked {BLANK}",
        ),
    )
    area = flow.area
    widths = [(area.width - _SYMBOL_ROOM) * share for share in (0.36, 0.36, 0.28)]
    top = flow.y
    for row in rows:
        flow.row(widths, [first_lines(cell, wide - 2, most) for cell, wide in zip(row, widths, strict=True)])
    left = area.right - _SYMBOL_ROOM + 2
    flow.page.text((left, top - _SYMBOL_NAME), words)
    projection_symbol(flow.page, (left, top - _SYMBOL_BELOW), third_angle=third_angle)
