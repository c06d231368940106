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


MOTION_KEYS = (
    ("Up, Down", "wheels up or down one notch; Page Up, Page Down: full bump, full droop"),
    ("Left, Right", "steer one notch; Shift with them: full lock; End: full lock, and again for the other side"),
    ("Home", "ride height, straight ahead"),
    ("w", "where the least gap is"),
    ("Tab or g", "picture or graphs, where there is no room for both"),
    ("F4", "left corner, or both wheels"),
    ("F6", "show inches or millimetres"),
    ("Ctrl+t or d", "another way of drawing, for terminals that show dots badly"),
    ("Escape or F12", "back to the sheet"),
)
MOTION_INTRO = (
    "Both wheels travel alike and the body stays level. Travel is the rise of the wheel's centre; full lock is where the "
    "stop touches, or the rack's end. The links keep their length exactly; nothing flexes and no joint has play.",
    "The tyre is the largest, new and round, with square shoulders; arms and rod are straight tubes. An X marks the least "
    "gap at this place. Graphs over travel hold the steering straight ahead; a mark shows where you are.",
)
MOTION_CAUTIONS = (
    "Worked out from the points entered, not measured. Move the real car through all of it, springs out, before you drive.",
    "Body roll, one wheel on a rock, rubber and flex are not in it.",
)


class MotionHelpScreen(ReadingScreen):
    """Help for the moving front end: what is shown, what is not in it, and the keys."""

    def __init__(self) -> None:
        super().__init__("Help: Motion", lines(*_motion_help()))


def _motion_help() -> Iterator[Content | str]:
    yield from MOTION_INTRO
    yield ""
    yield plain("Take care", "bold $text-warning")
    yield from (f"- {caution}" for caution in MOTION_CAUTIONS)
    yield ""
    yield plain("Keys", "bold $text-accent")
    yield from (Content.assemble((keys, "bold"), f": {words}.") for keys, words in MOTION_KEYS)
