"""What must stand on every paper of a sheet that is not fit to cut from."""

import re

from rules.judging.judge import Finding, Judged
from rules.shop.cautions import cautions
from wizard.paper.pdf import WORDS, Area, PaperPage, line_height, wrap

_NOT_FINISHED = "caution.not-finished"
_UNFINISHED = "NOT FINISHED: page 1 says why. A blank is not a figure."
_OVERLAP = "overlap"
"""The check that looks for parts in one another."""
_PADDING = 1.5
"""mm between the words and the frame round them."""
_MOST = 3
"""Stops that are told on every page; the checklist has each in full."""
_MOST_PAIRS = 6
_LONGEST = 130
"""Characters of one stop; where a place in space is told as well, the rest of it is left to the checklist."""
_BRIEF_PAIRS, _BRIEFEST = 2, 110
"""The same on the pages after the first."""


def stops(judged: Judged, *, brief: bool = False) -> list[str]:
    """DO NOT CUT with what is wrong, parts in one another, and NOT FINISHED; empty for a sheet that can be cut from.

    What is wrong is said in the words of the check, never by its title: "Caliper inside the wheel barrel" reads as good news.
    brief: for the pages after the first, how it begins, how much more there is, and where all of it stands.
    """
    bars = []
    if wrong := whats_wrong(judged):
        told = 1 if brief else _MOST
        more = len(wrong) - told
        where = "page 1 and the checklist have more" if brief else "the checklist has each"
        rest = f" And {more} more: {where}." if more > 0 else ""
        said = [_cut(words, _BRIEFEST) for words in wrong[:1]] if brief else wrong[:_MOST]
        bars.append(f"DO NOT CUT. {' '.join(said)}{rest}")
    pairs = [finding.about for finding in judged.findings if _overlaps(finding) and finding.about]
    if pairs:
        most = _BRIEF_PAIRS if brief else _MOST_PAIRS
        more = len(pairs) - most
        rest = f"; and {more} more" if more > 0 else ""
        what = "OVERLAP" if brief else "OVERLAP, parts drawn in one another"
        bars.append(f"{what}: {'; '.join(pairs[:most])}{rest}.")
    for line in cautions(judged):
        if line.id == _NOT_FINISHED:
            bars.append(_UNFINISHED if brief else line.text)
    return bars


def whats_wrong(judged: Judged) -> list[str]:
    """The first sentence of each stop, each once."""
    return list(dict.fromkeys(_first(finding.text) for finding in judged.findings if finding.verdict == "stop"))


def _first(text: str) -> str:
    sentence, dot, _ = text.partition(". ")
    return _cut(sentence + ("." if dot else ""), _LONGEST)


def _cut(words: str, longest: int) -> str:
    """The words to where they may pause, in so many characters: never between two things of which one is wrong beside the other,
    since the first alone may read as good news."""
    if len(words) <= longest:
        return words
    pauses = [found.start() for found in _PAUSE.finditer(words[: longest + 2]) if found.start() <= longest]
    end = pauses[-1] if pauses else max(words[:longest].rfind(" "), 0) or longest
    return f"{words[:end].removesuffix(' ...')} ..."


_PAUSE = re.compile(r"(?:[:;] |, (?!and |or )| \()")


def _overlaps(finding: Finding) -> bool:
    return finding.check == _OVERLAP and finding.verdict in ("stop", "watch")


def stop_band(page: PaperPage, judged: Judged, *, brief: bool = False) -> Area:
    """The stops in a frame at the top of a page, where there are any. Returns the room left below.

    brief: for a page that comes after the one that says more.
    """
    area = page.area
    words = stops(judged, brief=brief)
    if not words:
        return area
    lines = sum(len(wrap(text, area.width - 2 * _PADDING, WORDS, bold=True)) for text in words)
    frame = area.less(bottom=area.height - lines * line_height() - 2 * _PADDING)
    page.box(frame, "outline")
    y = frame.top - _PADDING
    for text in words:
        y = page.paragraph((frame.left + _PADDING, y), frame.width - 2 * _PADDING, text, bold=True)
    return area.less(top=frame.height + 2)
