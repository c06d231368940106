"""The fabrication checklist on screen: tick left and right, write what was measured."""

from collections.abc import Iterator
from itertools import groupby
from typing import Any, ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen, Screen
from textual.widgets import Input, Static

from rules.judging.judge import judge
from rules.measure.records import replace
from rules.shop.checklist import ChecklistLine, Marks, checklist, marked
from wizard.desk.house import house_of
from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.session import Session
from wizard.desk.words import lines, plain
from wizard.widgets.entry import Entry, Refused
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine

LONGEST_MEASURED = 60


class ChecklistScreen(Screen[Any]):
    """Every line in shop order. Ticks and results are saved in the sheet at once, by line."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("l", "tick('left')", "tick the left piece, or take the tick away", "tick left"),
        Key("r", "tick('right')", "tick the right piece, or take the tick away", "tick right"),
        Key("enter", "measure", "write what you measured", "write a result", told=True),
        Key("escape,ctrl+l", "back", "back", "back"),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        # The targets are those of the file: in the sheet's own units, whatever is shown at the moment.
        self._lines = checklist(judge(session.judged.sheet))

    def compose(self) -> ComposeResult:
        """Heading, lines, keys."""
        yield Static("", id="tally", classes="heading", markup=False)
        yield Items(list(self._items()))
        yield KeyLine((*self.KEYS, ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys move in the list."""
        self._tell()
        self.query_one(Items).focus_list()

    def _marked(self) -> list[tuple[ChecklistLine, Marks]]:
        return marked(self._lines, self._session.marks)

    def _tell(self) -> None:
        to_do = [marks for line, marks in self._marked() if line.kind != "caution"]
        done = sum(marks.left and marks.right for marks in to_do)
        words = f"Checklist: {done} of {len(to_do)} lines ticked left and right"
        self.query_one("#tally", Static).update(plain(words))

    def _items(self) -> Iterator[Listed]:
        for section, group in groupby(self._marked(), key=lambda pair: pair[0].section):
            yield Listed(f"# {section}", plain(section.upper(), "bold $text-accent"), None)
            for line, marks in group:
                yield Listed(line.id, _line(line, marks), lambda line=line, marks=marks: _about(line, marks))  # type: ignore[misc]

    def _at(self) -> tuple[ChecklistLine, Marks] | None:
        at = self.query_one(Items).at
        return next((pair for pair in self._marked() if pair[0].id == at), None)

    def action_tick(self, side: str) -> None:
        """Tick one side of the line under the cursor, or take the tick away."""
        if found := self._at():
            self._mark(found[0], found[1], **{side: not getattr(found[1], side)})

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Enter: write what was measured."""
        event.stop()
        self.action_measure()

    def action_measure(self) -> None:
        """Write what was measured on the line under the cursor."""
        if not (found := self._at()):
            return
        line, marks = found

        def answered(measured: tuple[str, str] | None) -> None:
            if measured is not None:
                self._mark(line, marks, left_measured=measured[0], right_measured=measured[1])

        self.app.push_screen(Measured(line, marks), answered)

    def _mark(self, line: ChecklistLine, marks: Marks, **changed: Any) -> None:
        # A tick from before a target changed proves nothing now, and a new one beside it does not change that.
        asked_for = marks.asked_for if marks.stale_for(line) else line.target or line.text
        marks = replace(marks, **changed, asked_for=asked_for, text=marks.text or line.text)
        self._session.mark(self._lines, line, marks)
        house_of(self).save_sheet()
        self.query_one(Items).show(list(self._items()))
        self._tell()

    def action_back(self) -> None:
        """Back to the sheet."""
        self.dismiss(None)


def _line(line: ChecklistLine, marks: Marks) -> Content:
    """Ticks, text, target. A line is cut at the edge; the cursor tells it in full."""
    if line.kind == "caution":
        return plain(f"- {line.text}")
    ticks = f"L[{'x' if marks.left else ' '}] R[{'x' if marks.right else ' '}] "
    again = plain("measure again: ", "bold $text-warning") if marks.stale_for(line) else ""
    target = plain(f"{line.target}: ", "bold") if line.target else ""
    return Content.assemble(plain(ticks, "bold"), again, target, plain(line.text))


def _about(line: ChecklistLine, marks: Marks) -> Content:
    told = [plain(line.section, "bold"), plain(line.text)]
    if line.target:
        tolerance = f", tolerance {line.tolerance}" if line.tolerance else ""
        told.append(plain(f"Target: {line.target}{tolerance}"))
    if marks.stale_for(line):
        told.append(
            plain(
                f"Marked when it asked for: {marks.asked_for}. Clear the marks and do it again.", "bold $text-warning"
            )
        )
    for side, measured in (("Left", marks.left_measured), ("Right", marks.right_measured)):
        if measured:
            told.append(Content.assemble((f"{side} measured: ", "bold"), plain(measured)))
    return lines(*told)


class Measured(ModalScreen[tuple[str, str] | None]):
    """What was measured, left and right."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape", "away", show=False),
        Binding("down", "app.focus_next", show=False),
        Binding("up", "app.focus_previous", show=False),
    ]

    def __init__(self, line: ChecklistLine, marks: Marks) -> None:
        super().__init__()
        self._line, self._marks = line, marks

    def compose(self) -> ComposeResult:
        """The line, two entries."""
        with Vertical(classes="box"):
            yield Static(plain(self._line.text, "bold"), markup=False)
            yield Static(plain(f"Target: {self._line.target}" if self._line.target else ""), markup=False)
            yield Static(plain("Left measured"), markup=False)
            yield Entry(self._marks.left_measured, longest=LONGEST_MEASURED, id="left")
            yield Static(plain("Right measured"), markup=False)
            yield Entry(self._marks.right_measured, longest=LONGEST_MEASURED, id="right")
            yield Static(
                plain("Enter goes on and keeps it. Escape leaves it.", "$foreground 65%"), id="hint", markup=False
            )

    def on_input_submitted(self, event: Input.Submitted) -> None:
        """From left to right, then keep both."""
        right = self.query_one("#right", Entry)
        if event.input is right:
            self.dismiss((self.query_one("#left", Entry).value.strip(), right.value.strip()))
        else:
            self.set_focus(right)

    def on_refused(self, event: Refused) -> None:
        """Say why a paste was not taken."""
        self.query_one("#hint", Static).update(plain(event.reason, "bold $text-error"))

    def action_away(self) -> None:
        """Close and change nothing."""
        self.dismiss(None)
