"""Colours and short words that every screen uses alike. The word always stands beside the colour."""

from textual.content import Content

from rules.judging.judge import Judged
from rules.judging.scope import groups_judged

STYLES = {
    "stop": "bold $text-error",
    "watch": "bold $text-warning",
    "waiting": "$foreground 65%",
    "shown": "$foreground",
    "unfinished": "bold $text-accent",
    "good": "$text-success",
    "not judged": "$foreground 65%",
    "does not apply": "$foreground 65%",
    "being worked out": "$foreground 65%",
}
BEING_WORKED_OUT, WORKING = "being worked out", "working"
"""What stands in place of a verdict that is not worked out again yet; the short word in a narrow column."""


MARKS = {"stop": "✗", "watch": "!", "good": "✓", "waiting": "·"}
PLAIN_MARKS = {"stop": "x", "watch": "!", "good": "+", "waiting": "."}
"""One cell for a verdict where there is no room for its word; the second for terminals that show few characters."""


DASH = "- "
"""What a line of a list begins with."""


def mark(word: str, *, plain_only: bool = False) -> str:
    """The cell that stands for a verdict; what is neither good nor wrong has that of an answer awaited."""
    marks = PLAIN_MARKS if plain_only else MARKS
    return marks.get(word, marks["waiting"])


def verdict(word: str, *, width: int = 0) -> Content:
    """A verdict word in its colour."""
    return Content.styled(word.ljust(width), STYLES.get(word, ""))


def sheet_verdict(judged: Judged) -> Content:
    """The verdict of a sheet in its colour, never without how much of it was judged."""
    some, all_groups = groups_judged(judged.groups)
    return Content.assemble(verdict(judged.verdict), f" ({some} of {all_groups} groups)")


def plain(text: str, style: str = "") -> Content:
    """Text that is not ours, or not known beforehand: shown as it is, never read as markup."""
    return Content.styled(text, style) if style else Content(text)


def lines(*parts: Content | str) -> Content:
    """Parts under each other."""
    return Content("\n").join([Content(part) if isinstance(part, str) else part for part in parts])


def wrapped(content: Content, width: int) -> list[Content]:
    """A text in lines of at most `width` cells."""
    return content.wrap(max(1, width))


def hanging(content: Content, width: int) -> list[Content]:
    """The same where each line may have a dash before it: it then goes on under its words, not under the dash.

    >>> [line.plain for line in hanging(Content("- one two three"), 9)]
    ['- one two', '  three']
    """
    found: list[Content] = []
    for line in content.split("\n", allow_blank=True):
        if not line.plain.startswith(DASH):
            found += wrapped(line, width)
            continue
        words = wrapped(line[len(DASH) :], width - len(DASH))
        found += [Content(" " * len(DASH) if number else DASH) + part for number, part in enumerate(words)]
    return found


def answered_so(entry: str | bool) -> str:
    """An answer as a person says it: yes and no in place of true and false."""
    return {True: "yes", False: "no"}[entry] if isinstance(entry, bool) else entry


def count(number: int, one: str, many: str = "") -> str:
    """A number with its noun: "1 entry", "3 entries"."""
    return f"{number} {one if number == 1 else many or one + 's'}"
