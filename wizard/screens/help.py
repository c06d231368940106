"""Help for a step: what it is for, what to take care of, how to measure each entry, and the keys."""

from collections.abc import Iterator

from textual.content import Content

from wizard.pages import ASKED, Page
from wizard.screens.reading import ReadingScreen
from wizard.words import lines, plain

KEYS_IN_WORDS = (
    ("Enter", "accept the entry and go to the next one; after the last, on to the next step"),
    ("Tab, Shift+Tab, Up, Down", "move between entries"),
    ("Left, Right, Space", "choose where there are choices; Delete takes the answer away"),
    ("F1 or Ctrl+g", "this help"),
    ("F2", "all verdicts in full"),
    ("F3", "the picture, full screen"),
    ("F4", "picture: close up on the upright, or the whole wheel"),
    ("Ctrl+t", "picture: another way of drawing, for terminals that show dots badly"),
    ("F5", "explain a number or a verdict"),
    ("F6", "show inches or millimetres; entries stay as typed"),
    ("F7, F8 or Ctrl+b, Ctrl+n", "step back, next step; no answer is lost"),
    ("F9", "all checks with their limits and sources"),
    ("Ctrl+l", "the fabrication checklist"),
    ("Ctrl+r", "which part gives first, once strength is entered"),
    ("F12 or Ctrl+y", "both wheels moved through travel and lock, once steering or arms are entered"),
    ("Ctrl+s", "save now; it also saves after each entry"),
    ("Ctrl+o", "open another sheet"),
    ("Ctrl+p", "all of these as a list to pick from"),
    ("Ctrl+q", "save and quit"),
)
REVIEW_INTRO = (
    "Everything the checks say, worst first, and what is still missing. Enter on a line goes to the entry it rests on; "
    "F5 explains it. The line above the list writes the papers: a checklist, or the whole folder for the welder."
)


class HelpScreen(ReadingScreen):
    """Help for one page, with the entry the cursor is in on top."""

    def __init__(self, page: Page, current: str) -> None:
        """current: name of the entry the cursor is in; empty on the review."""
        super().__init__(f"Help: {page.title}", lines(*_help(page, current)))


def _help(page: Page, current: str) -> Iterator[Content | str]:
    if current in ASKED:
        yield plain("Where you are", "bold $text-accent")
        yield from _entry(current)
    if not page.steps:
        yield REVIEW_INTRO
        yield ""
    for step in page.steps:
        yield plain(step.title, "bold $text-accent")
        yield step.intro
        yield ""
        yield plain("Take care", "bold $text-warning")
        yield from (f"- {caution}" for caution in step.cautions)
        yield ""
    yield plain("Keys", "bold $text-accent")
    yield from (Content.assemble((keys, "bold"), f": {words}.") for keys, words in KEYS_IN_WORDS)
    yield ""
    if page.steps:
        yield plain("Every entry of this step", "bold $text-accent")
        for name in page.fields:
            yield from _entry(name)


def _entry(name: str) -> Iterator[Content | str]:
    asked = ASKED[name]
    units = dict.fromkeys(filter(None, (asked.bare_unit("inch"), asked.bare_unit("metric"))))
    notes = [f"a bare number is {' or '.join(units)}, as the sheet's units say"] if units else []
    notes += [] if asked.needed else ["may stay empty"]
    yield Content.assemble((asked.label, "bold"), "".join(f" · {note}" for note in notes))
    yield asked.how
    yield ""
