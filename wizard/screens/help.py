"""Help for a step: what it is for, what to take care of, how to measure each entry, and the keys."""

from collections.abc import Iterable, Iterator

from textual.content import Content

from rules.measure.quantity import Units
from rules.sheet.glossary import also_called
from wizard.desk.keys import APP, Key
from wizard.desk.pages import ASKED, Page
from wizard.desk.session import Session
from wizard.desk.words import lines, plain
from wizard.screens.reading import ReadingScreen

REVIEW_INTRO = (
    "Everything the checks say, worst first, and what is still missing. Enter on a line goes to the entry it rests on; "
    "F5 explains it. The line above the list writes the papers: a checklist, or the whole folder for the welder."
)


class HelpScreen(ReadingScreen):
    """Help for one page, with the entry the cursor is in on top."""

    def __init__(self, page: Page, current: str, keys: Iterable[Key], session: Session) -> None:
        """current: name of the entry the cursor is in; empty on the review. keys: those of the page."""
        super().__init__(f"Help: {page.title}", lines(*_help(page, current, keys, session.shown_in, session.units)))


def _help(
    page: Page, current: str, keys: Iterable[Key], shown_in: Units, bare: Units | None
) -> Iterator[Content | str]:
    if current in ASKED:
        yield plain("Where you are", "bold $text-accent")
        yield from _entry(current, shown_in, bare)
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
    yield from _in_words((*keys, *APP))
    yield ""
    if page.steps:
        yield plain("Every entry of this step", "bold $text-accent")
        for name in page.fields:
            yield from _entry(name, shown_in, bare)


def _entry(name: str, shown_in: Units, bare: Units | None) -> Iterator[Content | str]:
    asked = ASKED[name]
    systems: tuple[Units, ...] = (bare,) if bare else ("inch", "metric")
    units = dict.fromkeys(filter(None, map(asked.bare_unit, systems)))
    notes = (
        [f"a bare number is {' or '.join(units)}{'' if bare else ', as the units of the sheet say'}"] if units else []
    )
    notes += [] if asked.needed else ["may stay empty"]
    others = also_called(asked.label)[:2]
    notes += [f"also called {' or '.join(others)}"] if others else []
    yield Content.assemble((asked.label, "bold"), "".join(f" · {note}" for note in notes))
    yield asked.how_in(shown_in)
    yield ""


MOTION_INTRO = (
    "Both wheels travel alike and the body stays level. Travel is the rise of the wheel's centre; full lock is where the "
    "stop touches, or the rack's end. The links keep their length exactly; nothing flexes and no joint has play.",
    "The tyre is the largest, new and round, not bulged; arms and rod are straight tubes. An X marks the smallest "
    "gap at this place. Graphs over travel hold the steering straight ahead; a mark shows where you are.",
)
MOTION_CAUTIONS = (
    "Worked out from the points entered, not measured. Move the real car through all of it, springs out, before you drive.",
    "Body roll and one wheel on a rock are not in it; their figures stand in the tables. Rubber and flex are in neither.",
)


class MotionHelpScreen(ReadingScreen):
    """Help for the moving front end: what is shown, what is not in it, and the keys."""

    def __init__(self, keys: Iterable[Key]) -> None:
        super().__init__("Help: Motion", lines(*_motion_help(keys)))


def _motion_help(keys: Iterable[Key]) -> Iterator[Content | str]:
    yield from MOTION_INTRO
    yield ""
    yield plain("Take care", "bold $text-warning")
    yield from (f"- {caution}" for caution in MOTION_CAUTIONS)
    yield ""
    yield plain("Keys", "bold $text-accent")
    yield from _in_words(keys)


def _in_words(keys: Iterable[Key]) -> Iterator[Content]:
    return (Content.assemble((key.names, "bold"), f": {key.does}.") for key in keys)
