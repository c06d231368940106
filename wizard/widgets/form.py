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

from wizard.pages import ASKED, Page
from wizard.session import Session
from wizard.widgets.field_panel import FieldPanel
from wizard.widgets.field_row import FieldRow
from wizard.words import lines, plain


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

    def action_go(self, by: int) -> None:
        """To the entry above or below."""
        names = list(self.rows)
        here = next((place for place, row in enumerate(self.rows.values()) if row.editor.has_focus), 0)
        self.rows[names[max(0, min(len(names) - 1, here + by))]].editor.focus()


class FormPage(Vertical):
    """A page to fill in. The answers live in the session; the widgets come and go with the page."""

    class Edited(Message):
        """An entry has changed in the session."""

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
        self._show_panel()

    def _show(self, name: str) -> None:
        error = self._session.faults.get(name, "") if name in self._settled else ""
        self.rows[name].show(self._session.echo(name), self._session.units, error)

    def _show_panel(self) -> None:
        self.query_one(FieldPanel).show(self.current, being_typed=self.current not in self._settled)

    def on_field_row_typed(self, event: FieldRow.Typed) -> None:
        """Take the entry over at once, so that everything else can follow the typing."""
        event.stop()
        self._put(event.field_name, event.entry)
        self.post_message(self.Edited())

    def _put(self, name: str, entry: str | bool | None) -> None:
        self._session.put(name, entry)
        if self._session.entry(name) is None:
            self._settled.discard(name)
        if name == "units":  # bare numbers may have got their old unit written behind them
            for row in self.rows.values():
                row.reload(self._session.text(row.field_name))
            self.show_all()
        self._show(name)
        self._show_panel()

    def flush(self) -> None:
        """Take over what was typed a moment ago and is still on its way here as a message."""
        for name, row in self.rows.items():
            if row.edited:
                self._session.put(name, row.entry)

    def on_field_row_done(self, event: FieldRow.Done) -> None:
        """Enter: the entry counts, go to the next."""
        event.stop()
        self._settle(event.row.field_name)
        names = list(self.rows)
        place = names.index(event.row.field_name) + 1
        if place < len(names):
            self.focus_on(names[place])
        else:
            self.post_message(self.Finished())

    def on_descendant_focus(self, event: events.DescendantFocus) -> None:
        """Tell about the entry the cursor came to."""
        row = event.widget.parent
        if isinstance(row, FieldRow):
            self.current = row.field_name
            row.refresh()
            self._show_panel()
            self.form.scroll_to_widget(row, animate=False)

    def on_descendant_blur(self, event: events.DescendantBlur) -> None:
        """An entry that was left is judged as it stands."""
        row = event.widget.parent
        if isinstance(row, FieldRow):
            self._settle(row.field_name)

    def _settle(self, name: str) -> None:
        if self._session.entry(name) is not None:
            self._settled.add(name)
        self._show(name)
        self.post_message(self.Left())

    def focus_on(self, name: str) -> None:
        """Put the cursor in an entry and bring its row into view."""
        self.rows[name].editor.focus()

    def start(self) -> None:
        """Put the cursor where there is something to do: an entry to fix, a needed one to fill in, else the first."""
        missing = self._session.judged.missing
        to_fix = [name for name in self.rows if name in self._session.faults]
        to_fill = [name for name in self.rows if name in missing]
        self.focus_on((to_fix or to_fill or list(self.rows))[0])
