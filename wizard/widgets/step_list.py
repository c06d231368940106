"""The steps and how far each is: a column where there is room, one line across where there is not."""

from collections.abc import Iterator, Sequence

from textual import events
from textual.content import Content
from textual.message import Message
from textual.widget import Widget

from rules.judging.judge import Judged
from rules.measure.records import NamedTuple
from wizard.desk.house import house_of
from wizard.desk.pages import PAGES, REVIEW, page_state
from wizard.desk.words import STYLES, WORKING, mark, plain

BETWEEN = 2
"""Cells between two steps that stand side by side."""
LESS, MORE = "<", ">"
"""What says that there are steps to the left, to the right."""


class StepChosen(Message):
    """A step was clicked."""

    def __init__(self, number: int) -> None:
        super().__init__()
        self.number = number


class StepStands(NamedTuple):
    """How a step stands: in a word or two, and the verdict whose colour and mark go with them."""

    words: str
    verdict: str


def standings(judged: Judged) -> list[StepStands]:
    """How every step stands."""
    told = [StepStands(state.words, state.verdict) for state in (page_state(page, judged) for page in PAGES)]
    whole = judged.whole or judged.verdict == "stop"
    told[REVIEW] = StepStands(judged.verdict if whole else WORKING, judged.verdict)
    return told


class _Steps(Widget):
    def __init__(self) -> None:
        super().__init__()
        self.current = 0
        self._standings: Sequence[StepStands] = ()

    def show(self, standings: Sequence[StepStands], current: int) -> None:
        """The state of every step, and which one is open."""
        if (standings, current) != (self._standings, self.current):  # painting is what a keystroke waits for
            self._standings, self.current = standings, current
            self.refresh()

    def _mark(self, standing: StepStands) -> str:
        return mark(standing.verdict, plain_only=house_of(self).few_characters)


class StepStrip(_Steps):
    """One line: as many steps round the open one as there is room for, each with its mark, the open one with its words."""

    def render(self) -> Content:
        """One line."""
        view = self._in_view()
        parts = [self._step(number) for number in view]
        left = LESS if view and view[0] > 0 else " "
        line = Content.assemble(plain(f"{left} ", "bold $text-accent"), Content(" " * BETWEEN).join(parts))
        if view and view[-1] < len(PAGES) - 1:
            line = Content.assemble(
                line.pad_right(max(0, self.size.width - len(line) - 1)), (MORE, "bold $text-accent")
            )
        return line

    def _step(self, number: int) -> Content:
        standing = self._standings[number]
        sign = plain(self._mark(standing), STYLES[standing.verdict])
        if number != self.current:
            return Content.assemble(sign, plain(PAGES[number].short))
        return plain(f" {self._mark(standing)} {PAGES[number].short}: {standing.words} ", "bold reverse")

    def _in_view(self) -> list[int]:
        """The steps that fit, the open one as near the middle as can be."""
        if not self._standings:
            return []
        room = self.size.width - 4
        first = last = self.current
        used = len(self._step(self.current))
        while True:
            before = len(self._step(first - 1)) + BETWEEN if first > 0 else None
            after = len(self._step(last + 1)) + BETWEEN if last < len(PAGES) - 1 else None
            to_left = before is not None and (after is None or self.current - first <= last - self.current)
            for left in (to_left, not to_left):
                cells = before if left else after
                if cells is not None and used + cells <= room:
                    used += cells
                    first, last = (first - 1, last) if left else (first, last + 1)
                    break
            else:
                return list(range(first, last + 1))

    def on_click(self, event: events.Click) -> None:
        """Open the step under the pointer."""
        at = 2
        for number in self._in_view():
            at += len(self._step(number)) + BETWEEN
            if event.x < at:
                self.post_message(StepChosen(number))
                break


class StepList(_Steps):
    """One line a step, in groups: mark, name, and how it stands."""

    def render(self) -> Content:
        """The lines that fit, the open step among them."""
        return Content("\n").join([self._line(row) for row in self._rows()])

    def _rows(self) -> list[str | int]:
        """Headings and step numbers from above to below; without headings where they do not fit."""
        rows = list(_grouped())
        height = max(1, self.size.height)
        if len(rows) > height:
            rows = [row for row in rows if row != ""]
        if len(rows) > height:
            rows = [row for row in rows if isinstance(row, int)]
        first = max(0, min(rows.index(self.current) - height // 2, len(rows) - height))
        return rows[first : first + height]

    def _line(self, row: str | int) -> Content:
        width = self.size.width
        if isinstance(row, str):
            return plain(row[:width], "$foreground 65%")
        if row >= len(self._standings):
            return Content("")
        standing = self._standings[row]
        name = f"{self._mark(standing)} {PAGES[row].short}"
        words = standing.words.rjust(max(1, width - len(name) - 1))
        if row == self.current:
            return plain(f"{name}{words} ", "bold reverse")
        style = STYLES[standing.verdict]
        return Content.assemble(plain(name[:1], style), plain(name[1:]), plain(words, style))

    def on_click(self, event: events.Click) -> None:
        """Open the step under the pointer."""
        rows = self._rows()
        if event.y < len(rows) and isinstance(row := rows[event.y], int):
            self.post_message(StepChosen(row))


def _grouped() -> Iterator[str | int]:
    """Every step under the heading of its group, with a blank line before each heading but the first."""
    group = ""
    for number, page in enumerate(PAGES):
        if page.group != group:
            if group:
                yield ""
            yield page.group
            group = page.group
        yield number
