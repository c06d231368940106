"""One step's part of a form: its heading, which of its rows come first, and the line that stands for those set aside."""

from collections.abc import Sequence

from textual import events
from textual.message import Message
from textual.widgets import Static

from rules.graph.asking import Step
from rules.measure.display import in_a_sentence
from rules.sheet import STEPS
from rules.sheet.arranged import ASIDE
from wizard.desk.keys import MORE
from wizard.desk.pages import ASKED, Page
from wizard.desk.session import Session
from wizard.desk.words import lines, mark, plain
from wizard.widgets.laid_out_once import LaidOutOnce

NAMED = 3
"""So many of the rows set aside are named in their line."""


class TellingLine(Static, LaidOutOnce):
    """A line of the form that is no question: it tells, and may be clicked."""

    class Clicked(Message):
        """The line was clicked. name: a row of its part."""

        def __init__(self, line: "TellingLine") -> None:
            super().__init__()
            self.line = line

    def on_click(self, event: events.Click) -> None:
        """The form knows what to do."""
        event.stop()
        self.post_message(self.Clicked(self))


class StepRows:
    """is_open: its rows are in sight. more_open: those set aside as well."""

    def __init__(self, step: type[Step], names: Sequence[str], page: Page) -> None:
        self.step, self.names, self._page = step, names, page
        self.aside = [name for name in names if name in ASIDE]
        self.first = [name for name in names if name not in ASIDE]
        self.is_open = self.more_open = False
        told = [] if page.is_by_part or page.names else [plain(step.intro)]
        self.heading = TellingLine(
            lines(plain(step.title, "bold"), *told), classes="intro short" if page.names else "intro", markup=False
        )
        self.more = TellingLine("", classes="more", markup=False)
        self._said: object = None
        self._told: object = None

    def show(self, away: Sequence[str], session: Session) -> None:
        """Say which rows are set aside, and on a page of like parts how each part stands."""
        if self._page.is_by_part:
            self._tell_part(session)
        seen = bool(away) and self.is_open
        if self.more.display != seen:
            self.more.display = seen
        said = (self.more_open, tuple(away))
        if said != self._said:
            self._said = said
            labels = [in_a_sentence(ASKED[name].label) for name in away[:NAMED]]
            named = f": {', '.join(labels)}{' ...' if len(away) > NAMED else ''}"
            sign = "-" if self.more_open else "+"
            self.more.update(
                plain(f"{sign} more ({len(away)}){'' if self.more_open else named}  {MORE.short}", "$text-accent")
            )

    def _tell_part(self, session: Session) -> None:
        """A line for the part: its mark, its name, what is entered of it."""
        entered = [session.text(name) for name in self.names if session.entry(name) is not None]
        found = [one.verdict for one in session.judged_so_far.findings if one.step == self.step.name]
        worst = found[0] if found and entered else "waiting"
        self.heading.set_class(not self.is_open, "closed")
        told = ", ".join(entered[:4]) if entered else "nothing entered"
        if (worst, told) == self._told:
            return
        self._told = worst, told
        self.heading.update(
            lines(
                plain(f"{mark(worst)} {self.step.title.removeprefix('Weld: ').capitalize()}", "bold")
                + plain(f"  {told}", "$foreground 65%")
            )
        )


def by_step(page: Page) -> dict[type[Step], list[str]]:
    """The entries of a page under the step each belongs to; those of no step under the first."""
    steps = {step.name: step for step in STEPS}
    first = page.steps[0] if page.steps else steps[page.fields[0].partition(".")[0]]
    found: dict[type[Step], list[str]] = {}
    for name in page.fields:
        found.setdefault(steps.get(name.partition(".")[0], first), []).append(name)
    return found
