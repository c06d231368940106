"""A page's questions under each other, and below them all about the one the cursor is in."""

from collections.abc import Iterator
from typing import ClassVar

from textual import events
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical, VerticalScroll
from textual.message import Message
from textual.widget import Widget
from textual.widgets import Static

from rules.judging.questions import questions
from wizard.desk.keys import TYPING
from wizard.desk.pages import ASKED, Page
from wizard.desk.session import Session
from wizard.desk.words import lines, plain
from wizard.widgets.field_panel import FieldPanel
from wizard.widgets.field_row import FieldRow

YES = "As it is? Come up here and press Enter for yes, or mend it"
LEAVE_IT = "Backspace or an arrow mends it; Enter or the next answer leaves it marked"


class Form(VerticalScroll, can_focus=False):
    """The questions of one page. Scrolls up and down, never sideways."""

    # Here and not on the page: a scrolling container would take these keys to scroll with.
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("up", "go(-1)", show=False),
        Binding("down", "go(1)", show=False),
    ]

    def __init__(self, page: Page, session: Session) -> None:
        super().__init__()
        self.rows = {name: FieldRow(name, ASKED[name], session.entry(name), session.text(name)) for name in page.fields}
        self._page = page

    def compose(self) -> Iterator[Widget]:
        """Each step's heading and questions, then what to take care of."""
        headed: set[str] = set()
        for name, row in self.rows.items():
            step = next((step for step in self._page.steps if name.startswith(f"{step.name}.")), self._page.steps[0])
            if step.name not in headed:
                headed.add(step.name)
                yield Static(lines(plain(step.title, "bold"), plain(step.intro)), classes="intro", markup=False)
            yield row
        cautions = [f"- {caution}" for step in self._page.steps for caution in step.cautions]
        yield Static(lines(plain("Take care", "bold $text-warning"), *cautions), classes="cautions", markup=False)

    def watch_virtual_size(self) -> None:
        """A row that grows or shrinks moves those below it: the one the cursor is in must stay in view."""
        self.call_later(self.show_cursor)

    def show_cursor(self) -> None:
        """Scroll to the row the cursor is in."""
        for row in self.rows.values():
            if row.editor.has_focus:
                self.scroll_to_widget(row, animate=False)

    def action_go(self, by: int) -> None:
        """To the entry above or below."""
        names = list(self.rows)
        here = next((place for place, row in enumerate(self.rows.values()) if row.editor.has_focus), 0)
        self.screen.set_focus(self.rows[names[max(0, min(len(names) - 1, here + by))]].editor)


class FormPage(Vertical):
    """A page to fill in. The answers live in the session; the widgets come and go with the page."""

    KEYS = TYPING

    class Edited(Message):
        """An entry has changed in the session, or the cursor has moved: what is told of it is of the past."""

    class Left(Message):
        """The cursor left an entry, or Enter was pressed in it: time to save."""

    class Finished(Message):
        """Enter was pressed in the last entry."""

    def __init__(self, page: Page, session: Session) -> None:
        super().__init__(id="page")
        self._session = session
        self.form = Form(page, session)
        self.rows = self.form.rows
        self.current = next(iter(self.rows))
        self._settled = {name for name in self.rows if session.entry(name) is not None}
        """Entries that are not being typed for the first time: only those are marked when they cannot be read."""
        self._refused = ""
        """The entry whose Enter was refused just now, because it cannot be read."""
        self._walked = self.current
        """The entry that Enter brought the cursor to, or that is being typed: Enter there goes on and confirms nothing."""

    def compose(self) -> ComposeResult:
        """The questions, and the panel about one of them."""
        yield self.form
        yield FieldPanel(self._session)

    def on_mount(self) -> None:
        """Show what stands in the sheet."""
        self.show_all()

    def show_all(self) -> None:
        """Show every row anew, in the units now chosen."""
        for name in self.rows:
            self._show(name)
        self.show_panel()

    def _show(self, name: str) -> None:
        error = self._session.faults.get(name, "") if name in self._settled else ""
        if name == self._refused:
            error = f"{self.rows[name].unread or error}. {LEAVE_IT}"
        self.rows[name].show(self._session.echo(name), self._session.units, error)

    def show_questions(self) -> None:
        """Ask about what is unusual, under its row. No key is waited for: what is typed meanwhile goes where the cursor is."""
        asked = questions(self._session.judged_so_far)
        for name, row in self.rows.items():
            being_typed = row.editor.has_focus and name == self._walked
            wanted = name in asked and name in self._settled and not being_typed
            row.ask(f"{asked[name]} {YES}." if wanted else "")

    def show_panel(self) -> None:
        """Tell about the entry the cursor is in."""
        self.query_one(FieldPanel).show(self.current, being_typed=self.current not in self._settled)

    def on_field_row_typed(self, event: FieldRow.Typed) -> None:
        """Take the entry over at once, so that everything else can follow the typing."""
        event.stop()
        self._refused, self._walked = "", event.field_name
        self._put(event.field_name, event.entry)

    def _put(self, name: str, entry: str | bool | None) -> None:
        self._session.put(name, entry)
        if self._session.entry(name) is None:
            self._settled.discard(name)
        if name == "units":  # bare numbers may have got their old unit written behind them
            for row in self.rows.values():
                row.reload(self._session.text(row.field_name))
            self.show_all()
        self._show(name)
        self.post_message(self.Edited())

    def flush(self) -> None:
        """Take over what was typed a moment ago and is still on its way here as a message."""
        for name, row in self.rows.items():
            row.leave()
            if row.edited:
                self._session.put(name, row.entry)

    def on_field_row_done(self, event: FieldRow.Done) -> None:
        """Enter: the entry counts, go to the next. Where it cannot be read, only a second Enter goes on."""
        event.stop()
        name = event.row.field_name
        if name != self._walked and event.row.question:
            self._session.confirm(name)
        self._settle(name)
        if self._refused != name and (name in self._session.faults or event.row.unread):
            self._refused = name
            self._show(name)
        elif not self.go_on():
            self.post_message(self.Finished())

    def go_on(self) -> bool:
        """Put the cursor in the next entry. False where there is none on this page."""
        names = list(self.rows)
        self._leave(self.current)
        place = names.index(self.current) + 1
        if place < len(names):
            self.focus_on(names[place])
        return place < len(names)

    def begins_the_next(self, key: events.Key) -> bool:
        """Whether a key belongs to the next answer: somebody types on after an Enter that was refused.

        A key that mends the refused answer, such as Backspace or an arrow, ends that: what follows goes in here. So does
        a space, which no answer begins with, and which comes before a unit that was left out.
        """
        if not self._refused:
            return False
        if key.is_printable and key.character != " ":
            return True
        if key.key != "enter":
            self._refused = ""
        return False

    def on_click(self) -> None:
        """Who clicks into the entry mends it."""
        self._refused = ""

    def on_descendant_focus(self, event: events.DescendantFocus) -> None:
        """Tell about the entry the cursor came to."""
        row = event.widget.parent
        if isinstance(row, FieldRow):
            if self.current != row.field_name:
                self._refused = self._walked = ""
            self.current = row.field_name
            row.refresh()
            self.post_message(self.Edited())
            self.form.show_cursor()

    def on_descendant_blur(self, event: events.DescendantBlur) -> None:
        """An entry that was left is judged as it stands."""
        row = event.widget.parent
        if isinstance(row, FieldRow):
            self._leave(row.field_name)

    def _leave(self, name: str) -> None:
        if text := self.rows[name].leave():
            self._put(name, text)
        self._settle(name)

    def _settle(self, name: str) -> None:
        if self._session.entry(name) is not None:
            self._settled.add(name)
        self._show(name)
        self.post_message(self.Left())

    def focus_on(self, name: str, *, walked: bool = True) -> None:
        """Put the cursor in an entry, at once: the next key is for it. walked: on the way through the sheet, not to this one."""
        self.current, self._refused, self._walked = name, "", name if walked else ""
        self.screen.set_focus(self.rows[name].editor, scroll_visible=False)

    def start(self) -> None:
        """Put the cursor where there is something to do: an entry to fix, a needed one to fill in, else the first."""
        missing = self._session.judged.missing
        to_fix = [name for name in self.rows if name in self._session.faults]
        to_fill = [name for name in self.rows if name in missing]
        self.focus_on((to_fix or to_fill or list(self.rows))[0])
