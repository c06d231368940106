"""The steps and how far each is: a column where there is room, two lines across where there is not."""

from textual import events
from textual.content import Content
from textual.message import Message
from textual.widget import Widget

from rules.judging.judge import Judged
from rules.judging.scope import groups_judged
from wizard.desk.pages import PAGES, REVIEW, Page, page_state
from wizard.desk.words import STYLES, WORKING, plain

CELL = 11
"""Columns of one step where they stand side by side: seven of them fit in 80."""


class StepChosen(Message):
    """A step was clicked."""

    def __init__(self, number: int) -> None:
        super().__init__()
        self.number = number


class _Steps(Widget):
    def __init__(self) -> None:
        super().__init__()
        self.current = 0
        self._states: list[tuple[str, str, str]] = []

    def show(self, judged: Judged, current: int) -> None:
        """The state of every step, and which one is open."""
        pages = [page_state(page, judged) for page in PAGES]
        states = [(state.words, state.more_words, state.verdict) for state in pages]
        whole = judged.whole or judged.verdict == "stop"
        states[REVIEW] = _review(judged) if whole else (WORKING, WORKING, judged.verdict)
        if (states, current) != (self._states, self.current):  # painting is what a keystroke waits for
            self._states, self.current = states, current
            self.refresh()

    def _in_view(self, room: int) -> range:
        """The steps shown where there is room for so many: the open one is always among them."""
        first = max(0, min(self.current - room // 2, len(self._states) - room))
        return range(first, min(first + room, len(self._states)))

    def _mark(self, number: int) -> str:
        return ">" if number == self.current else " "

    def _style(self, number: int) -> str:
        return "bold reverse" if number == self.current else ""


class StepStrip(_Steps):
    """Names above, states below; as many around the open one as there is room for."""

    def render(self) -> Content:
        """Two lines."""
        names, states = Content(""), Content("")
        for number in self._in_view(max(1, self.size.width // CELL)):
            words, _, verdict = self._states[number]
            names += plain(f"{self._mark(number)}{PAGES[number].short}".ljust(CELL), self._style(number))
            states += plain(f" {words}".ljust(CELL), STYLES[verdict])
        return Content("\n").join([names, states])

    def on_click(self, event: events.Click) -> None:
        """Open the step under the pointer."""
        view = self._in_view(max(1, self.size.width // CELL))
        self.post_message(StepChosen(view[min(event.x // CELL, len(view) - 1)]))


class StepList(_Steps):
    """One step under the other, its state below its name."""

    @property
    def _rows(self) -> int:
        """Lines a step: a blank one between them where there is room."""
        return 3 if 3 * len(PAGES) <= self.size.height else 2

    def render(self) -> Content:
        """Name, state, and perhaps a blank line for each step."""
        width, rows = self.size.width, []
        for number in self._in_view(max(1, self.size.height // self._rows)):
            _, words, verdict = self._states[number]
            name = f"{self._mark(number)}{number + 1} {_name(PAGES[number])}"
            rows += [
                plain(name.ljust(width)[:width], self._style(number) or "bold"),
                plain(f"   {words}"[:width], STYLES[verdict]),
                *([Content("")] if self._rows == 3 else []),
            ]
        return Content("\n").join(rows)

    def on_click(self, event: events.Click) -> None:
        """Open the step under the pointer."""
        view = self._in_view(max(1, self.size.height // self._rows))
        if event.y // self._rows < len(view):
            self.post_message(StepChosen(view[event.y // self._rows]))


def _review(judged: Judged) -> tuple[str, str, str]:
    """The verdict of the sheet; what reads well stands with how many groups of checks were judged."""
    some, all_groups = groups_judged(judged.groups)
    if judged.verdict in ("stop", "unfinished"):
        return judged.verdict, judged.verdict, judged.verdict
    return f"{judged.verdict} {some}/{all_groups}", f"{judged.verdict}, {some} of {all_groups}", judged.verdict


def _name(page: Page) -> str:
    return "Rotor, caliper" if page.key == "rotor" else page.short
