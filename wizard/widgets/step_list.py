"""The steps and how far each is: a column where there is room, two lines across where there is not."""

from textual import events
from textual.content import Content
from textual.message import Message
from textual.widget import Widget

from rules.judge import Judged
from wizard.pages import PAGES, REVIEW, page_state
from wizard.words import STYLES, plain

CELL = 11
"""Columns of one step where they stand side by side: seven of them fit in 80."""


class StepChosen(Message):
    """A step was clicked."""

    def __init__(self, number: int) -> None:
        super().__init__()
        self.number = number


class _Steps(Widget):
    def __init__(self, **given: str) -> None:
        super().__init__(**given)
        self.current = 0
        self._states: list[tuple[str, str, str]] = []

    def show(self, judged: Judged, current: int) -> None:
        """The state of every step, and which one is open."""
        self.current = current
        states = [page_state(page, judged) for page in PAGES[:REVIEW]]
        self._states = [(state.words, state.more_words, state.verdict) for state in states]
        self._states.append((judged.verdict, judged.verdict, judged.verdict))
        self.refresh()


class StepStrip(_Steps):
    """Names above, states below."""

    def render(self) -> Content:
        """Two lines."""
        names, states = Content(""), Content("")
        for number, (page, (words, _, verdict)) in enumerate(zip(PAGES, self._states, strict=False)):
            here = number == self.current
            name = f">{page.short}" if here else f" {page.short}"
            names += plain(name.ljust(CELL), "bold reverse" if here else "")
            states += plain(f" {words}".ljust(CELL), STYLES[verdict])
        return Content("\n").join([names, states])

    def on_click(self, event: events.Click) -> None:
        """Open the step under the pointer."""
        self.post_message(StepChosen(min(event.x // CELL, REVIEW)))


class StepList(_Steps):
    """One step under the other, its state below its name."""

    ROWS = 3

    def render(self) -> Content:
        """Three lines a step."""
        width = self.size.width
        rows: list[Content] = []
        for number, (page, (_, words, verdict)) in enumerate(zip(PAGES, self._states, strict=False)):
            here = number == self.current
            short = "Rotor, caliper" if page.key == "rotor" else page.short
            name = f"{'>' if here else ' '}{number + 1} {short}"
            rows += [
                plain(name.ljust(width)[:width], "bold reverse" if here else "bold"),
                plain(f"   {words}"[:width], STYLES[verdict]),
                Content(""),
            ]
        return Content("\n").join(rows)

    def on_click(self, event: events.Click) -> None:
        """Open the step under the pointer."""
        if event.y // self.ROWS <= REVIEW:
            self.post_message(StepChosen(event.y // self.ROWS))
