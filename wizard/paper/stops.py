"""What must stand on every paper of a sheet that is not fit to cut from."""

from rules.judging.judge import Judged
from rules.shop.cautions import cautions
from wizard.paper.pdf import WORDS, Area, PaperPage, line_height, wrap

_BARS = ("caution.do-not-cut", "caution.not-finished")
_PADDING = 1.5
"""mm between the words and the frame round them."""


_MOST_IN_FULL = 3


def stops(judged: Judged) -> list[str]:
    """DO NOT CUT with its reasons, and NOT FINISHED; empty for a sheet that can be cut from.

    Many reasons are given by their titles, so that a page is still a page; the checklist has each in full.
    """
    bars = {line.id: line.text for line in cautions(judged) if line.id in _BARS}
    titles = [finding.title for finding in judged.findings if finding.verdict == "stop"]
    if len(titles) > _MOST_IN_FULL:
        bars[_BARS[0]] = f"DO NOT CUT. {len(titles)} checks stop: {'; '.join(titles)}."
    return list(bars.values())


def stop_band(page: PaperPage, judged: Judged) -> Area:
    """DO NOT CUT and NOT FINISHED in a frame at the top of a page, where they apply. Returns the room left below."""
    area = page.area
    words = stops(judged)
    if not words:
        return area
    lines = sum(len(wrap(text, area.width - 2 * _PADDING, WORDS, bold=True)) for text in words)
    frame = area.less(bottom=area.height - lines * line_height() - 2 * _PADDING)
    page.box(frame, "outline")
    y = frame.top - _PADDING
    for text in words:
        y = page.paragraph((frame.left + _PADDING, y), frame.width - 2 * _PADDING, text, bold=True)
    return area.less(top=frame.height + 2)
