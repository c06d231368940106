"""Coping patterns as PDF at full size: cut out, wrap round the tube, mark along the curved edge."""

from rules.drawn.coping import Coping, copings, edge, quarters
from rules.drawn.full_size.figures import FigureWriter
from rules.judging.judge import Judged
from wizard.paper.flow import BarredFlow
from wizard.paper.pdf import Document, line_height, paper_size
from wizard.paper.stamp import stamp
from wizard.paper.wording import shop_paper

_TAIL = 20.0
"""mm of pattern beyond the highest place of its edge, to wrap square by."""
_HOW = (
    "Print at 100 %, measure the bars, cut out along the outer lines. Wrap it round the tube so that its two ends meet and the "
    "straight edge comes out even all round; the sharp side lies where the two tubes make the sharper angle. Mark along the "
    "curve and grind to it. The pattern is for the outside of the tube; the wall is bevelled to lie close."
)


@shop_paper
def coping_pdf(judged: Judged, paper: str = "letter") -> bytes:
    """The patterns as a PDF file. paper: a name or a size with its unit, see `paper_size`."""
    pages = Document(judged.sheet.title, stamp(judged), "Full size, 1:1")
    flow = BarredFlow(judged, pages, paper_size(paper), "Coping patterns, full size")
    figures = FigureWriter.of(judged)
    flow.paragraph(_HOW)
    found, left_out = copings(judged)
    for pattern in found:
        _pattern(flow, pattern, figures)
    for words in left_out:
        flow.paragraph(f"NOT DRAWN: {words}.", before=1.0)
    return pages.written()


def _pattern(flow: BarredFlow, pattern: Coping, figures: FigureWriter) -> None:
    points = edge(pattern)
    high, long = max(y for _, y in points) + _TAIL, points[-1][0]
    flow.heading(pattern.name, high + 3 * line_height() + 4)
    meets = f"round ø {figures.exact(pattern.meets)}" if pattern.meets else "flat plate"
    flow.paragraph(
        f"Tube ø {figures.exact(pattern.tube)} to {meets} at {figures.angle(pattern.angle)}. RIGHT: turned over."
    )
    page, bottom = flow.page, flow.y - high - 4
    with page.moved(flow.area.left + 2, bottom):
        page.polyline(points, "outline")
        page.polyline(((0.0, points[0][1]), (0.0, high), (long, high), points[-1]), "thin")
        for along, words in quarters(pattern):
            start = min(points, key=lambda point: abs(point[0] - along))
            page.line((along, start[1]), (along, high), "centre")
            if along < long - 1:
                page.text((along + 1, high - 4), words)
    flow.y = bottom - 2
