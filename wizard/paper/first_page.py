"""The one page that opens the folder: what is in it and for whom, what is not to be cut, and what is to be signed where."""

from collections.abc import Sequence

from rules.drawn.full_size.shapes import View
from rules.drawn.isometric import isometric
from rules.drawn.items import not_drawn
from rules.drawn.upright_pieces import pieces_of
from rules.judging.judge import Judged
from rules.sheet import FIELDS
from rules.shop.checklist_line import BLANK
from rules.shop.holds import HOLDS
from wizard.paper.checklist_text import head
from wizard.paper.drawing_items import draw_items
from wizard.paper.flow import CLOSE, Flow
from wizard.paper.pdf import Document, paper_size, text_width
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

NAME = "first_page.pdf"
_FOR = {
    "welding_sheet.pdf": ("Welder", "weld map, fixture figures, what passes; HOLD 1 to 4 are signed on it"),
    "checklist_helper.pdf": ("Helper", "mock-up to first drive, left and right; HOLD 5 and 6 are signed on it"),
    "general_arrangement.pdf": ("Welder", "the whole LEFT upright, in every view the sheet allows"),
    "part_sheets.pdf": ("Cutter", "parts list, and one page for each piece to cut with every dimension"),
    "fixture.pdf": ("Welder", "the fixture that both uprights come from, and how to check it"),
    "coping.pdf": ("Fitter", "patterns at full size to wrap round the arms' tubes; measure the bars first"),
    "drawing_left.pdf": ("Welder", "LEFT at full size over several pages; measure the bars first"),
    "drawing_right.pdf": ("Welder", "RIGHT at full size over several pages"),
    "motion_sheet.pdf": ("Aligner", "travel, lock and return, with room for what is measured"),
    "checklist_builder.pdf": ("Builder", "parts in hand, what is open before cutting, and what no other paper has"),
}
"""Whom each paper is for and what it is; the same as text, Markdown or SVG is not named again."""
_NOT_YET = {"general_arrangement.pdf": "general arrangement", "fixture.pdf": "fixture"}
"""Papers that stand in the folder once there is anything to draw on them."""
_MOST = 8
_PICTURE_WIDTH, _LEAST_PICTURE = 66.0, 62.0
"""mm that the picture takes beside what is to be signed, which is as high as that least."""
_SAYS_PICTURE = 6.0
_HEADING = "First page: read this before anything else"


@shop_paper
def first_page_pdf(judged: Judged, names: Sequence[str], paper: str = "letter", *, cut_left_out: bool = False) -> bytes:
    """The page as a PDF file. names: the files of the folder. cut_left_out: cut files are kept back because of a stop."""
    for close in (False, True):
        pages = _pages(judged, names, paper, close=close, cut_left_out=cut_left_out)
        if len(pages.pages) == 1:
            break
    return pages.written()


def _pages(judged: Judged, names: Sequence[str], paper: str, *, close: bool, cut_left_out: bool) -> Document:
    """close: tables stand close, so that it keeps to its one page on usual paper."""
    pages = Document(judged.sheet.title, stamp(judged), "Informs, does not certify.")
    flow = Flow(judged, pages, paper_size(paper), _HEADING)
    if close:
        flow.padding = CLOSE
    title, vehicle, verdict, _ = head(judged)
    cut_short = text_width(judged.sheet.title, bold=True) + text_width(_HEADING) + 4 > flow.area.width
    # The header may hold only the title's beginning.
    said = [f"{name}: {words}" for name, words in (*((title,) if cut_short else ()), vehicle, verdict)]
    for words in ["; ".join(said)] if close else said:
        flow.paragraph(words, before=0.3)
    flow.paragraph(
        "One LEFT and one RIGHT, mirror images. This part holds a wheel on: if it breaks, people can die.", bold=True
    )
    _contents(flow, names)
    _not_to_cut(flow, judged, names, cut_left_out=cut_left_out)
    _to_sign(flow, judged)
    return pages


def _picture(judged: Judged, height: float) -> View:
    """The upright as it will look; empty while there is no plate, since joints alone are no picture of anything."""
    made = pieces_of(judged.worked.known)
    parts = [*made.values()] if "plate" in made else []
    return isometric(parts, _PICTURE_WIDTH - 6, height)


def _contents(flow: Flow, names: Sequence[str]) -> None:
    flow.heading("What is in this folder", 30)
    rows = [(name, *words) for name, words in _FOR.items() if name in names]
    cut = [name for name in names if name.endswith(".dxf")]
    if cut:
        rows.append((f"{len(cut)} of .dxf", "Cutter", f"CUT is cut, SCRIBE scribed, NOTES neither: {', '.join(cut)}"))
    flow.table((48, 20, 122), ("File", "For", "What it is"), rows)
    flow.paragraph(
        ".txt, .md and .svg: the same for a screen or a plain printer; checklist.txt and .md hold both lists.",
        before=0.5,
    )


def _not_to_cut(flow: Flow, judged: Judged, names: Sequence[str], *, cut_left_out: bool) -> None:
    flow.heading("Not to be cut, and not yet known", 12)
    said = False
    if cut_left_out:
        flow.paragraph(
            "Cut nothing. Cut files are left out because of what stands in the frame above.", bold=True, before=0.3
        )
        said = True
    elif judged.verdict == "stop":
        flow.paragraph(
            "Cut nothing before what stands in the frame above is settled. The cut files were asked for as they are.",
            bold=True,
            before=0.3,
        )
        said = True
    elif not any(name.endswith(".dxf") for name in names):
        flow.paragraph("Nothing can be cut from this folder: the plate is not drawn on the sheet.", before=0.3)
        said = True
    elif judged.verdict == "unfinished":
        flow.paragraph("Cut nothing before what stands in the frame above is settled.", bold=True, before=0.3)
        said = True
    not_yet = [words for name, words in _NOT_YET.items() if name not in names]
    if not_yet:
        flow.paragraph(f"Not drawn yet, since plate or pivots cannot be placed: {' and '.join(not_yet)}.", before=0.3)
        said = True
    if "general_arrangement.pdf" in names and (missing_here := not_drawn(judged)):
        flow.paragraph(missing_here, before=0.3)
        said = True
    estimates = list(dict.fromkeys(field for fields in judged.worked.estimated.values() for field in fields))
    for words, fields in (
        ("Estimates, to be measured before anything that rests on them is cut", estimates),
        ("Answers that are missing", judged.missing),
    ):
        if fields:
            labels = [FIELDS[field].label for field in fields]
            more = f" and {len(labels) - _MOST} more" if len(labels) > _MOST else ""
            flow.paragraph(f"{words}: {'; '.join(labels[:_MOST])}{more}.", before=0.3)
            said = True
    if not said:
        flow.paragraph(
            "Nothing on this sheet keeps it from being cut. A blank is still to be filled in first.", before=0.3
        )


def _to_sign(flow: Flow, judged: Judged) -> None:
    """What is signed where, and beside it the picture, where the page has room for it."""
    flow.heading("To sign: work stops at each HOLD until it is signed, left and right, on the paper named", 30)
    whole, view = flow.area, View(())
    height = flow.room - _SAYS_PICTURE - 2
    if height >= _LEAST_PICTURE:
        view = _picture(judged, height)
    if view.items:
        flow.area = whole.less(right=_PICTURE_WIDTH)
        middle = (flow.area.right + whole.right) / 2 + 2
        with flow.page.moved(middle, whole.bottom + _SAYS_PICTURE - view.frame.bottom):
            draw_items(flow.page, view.items)
        flow.page.text((middle, whole.bottom + 1), "LEFT, from inside and above", align="centre")
    rows = [(hold.text, hold.signed_on) for hold in HOLDS]
    flow.table((92, 32), ("HOLD", "Signed on"), rows)
    close = flow.padding == CLOSE
    for pair in (
        (("Builder", "Welder", "Helper", "Second"),) if close else (("Builder", "Welder"), ("Helper", "Second"))
    ):
        flow.paragraph("  ".join(f"{who} {BLANK}{BLANK}" for who in pair), before=1.5)
    flow.area = whole
