"""What must stand on every paper of a sheet that is not fit to cut from."""

from rules.judging.judge import Finding, Judged
from rules.shop.cautions import cautions
from wizard.paper.pdf import WORDS, Area, PaperPage, line_height, wrap

_NOT_FINISHED = "caution.not-finished"
_OVERLAP = "overlap"
"""The check that looks for parts in one another."""
_PADDING = 1.5
"""mm between the words and the frame round them."""
_MOST = 3
"""Stops that are told on every page; the checklist has each in full."""
_MOST_PAIRS = 6
_LONGEST = 130
"""Characters of one stop; where a place in space is told as well, the rest of it is left to the checklist."""


def stops(judged: Judged) -> list[str]:
    """DO NOT CUT with what is wrong, parts in one another, and NOT FINISHED; empty for a sheet that can be cut from.

    What is wrong is said in the words of the check, never by its title: "Caliper inside the wheel barrel" reads as good news.
    """
    bars = []
    if wrong := whats_wrong(judged):
        more = len(wrong) - _MOST
        rest = f" And {more} more: the checklist has each." if more > 0 else ""
        bars.append(f"DO NOT CUT. {' '.join(wrong[:_MOST])}{rest}")
    pairs = [finding.about for finding in judged.findings if _overlaps(finding) and finding.about]
    if pairs:
        more = len(pairs) - _MOST_PAIRS
        rest = f"; and {more} more" if more > 0 else ""
        bars.append(f"OVERLAP, parts drawn in one another: {'; '.join(pairs[:_MOST_PAIRS])}{rest}.")
    bars += [line.text for line in cautions(judged) if line.id == _NOT_FINISHED]
    return bars


def whats_wrong(judged: Judged) -> list[str]:
    """The first sentence of each stop, each once."""
    return list(dict.fromkeys(_first(finding.text) for finding in judged.findings if finding.verdict == "stop"))


def _first(text: str) -> str:
    sentence, dot, _ = text.partition(". ")
    sentence += "." if dot else ""
    if len(sentence) <= _LONGEST:
        return sentence
    start = sentence[:_LONGEST].rpartition(", ")[0] or sentence[:_LONGEST]
    return f"{start} ..."


def _overlaps(finding: Finding) -> bool:
    return finding.check == _OVERLAP and finding.verdict in ("stop", "watch")


def stop_band(page: PaperPage, judged: Judged) -> Area:
    """The stops in a frame at the top of a page, where there are any. Returns the room left below."""
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
