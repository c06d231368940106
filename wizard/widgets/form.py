"""A page's questions under each other. Scrolls up and down, never sideways."""

from collections.abc import Iterator
from typing import ClassVar

from textual.binding import Binding, BindingType
from textual.containers import VerticalScroll
from textual.widget import Widget
from textual.widgets import Static

from wizard.pages import ASKED, Page
from wizard.session import Session
from wizard.widgets.field_row import FieldRow
from wizard.words import lines, plain


class Form(VerticalScroll, can_focus=False):
    """The questions of one page at a time; the entries themselves live in the session."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("up", "go(-1)", show=False),
        Binding("down", "go(1)", show=False),
    ]

    def __init__(self, page: Page, session: Session, **given: str) -> None:
        super().__init__(**given)
        self.page = page
        self.rows: dict[str, FieldRow] = {}
        self._session = session

    def compose(self) -> Iterator[Widget]:
        """The page as it was given."""
        yield from self._parts()

    async def turn_to(self, page: Page) -> None:
        """Another page in place of this one."""
        self.page = page
        with self.app.batch_update():
            await self.remove_children()
            await self.mount_all(list(self._parts()))
            self.scroll_home(animate=False)

    def _parts(self) -> Iterator[Widget]:
        self.rows = {}
        first = self.page.steps[0]
        for name in self.page.fields:
            asked = ASKED[name]
            step = next((step for step in self.page.steps if name.startswith(f"{step.name}.")), first)
            if name == self.page.fields[0] or name == next(iter(step.asked().values())).name != f"{first.name}.vehicle":
                yield Static(lines(plain(step.title, "bold"), plain(step.intro)), classes="intro", markup=False)
            row = FieldRow(name, asked, self._session.entry(name), self._session.text(name))
            self.rows[name] = row
            yield row
        cautions = [f"- {caution}" for step in self.page.steps for caution in step.cautions]
        yield Static(lines(plain("Take care", "bold $text-warning"), *cautions), classes="cautions", markup=False)

    def action_go(self, by: int) -> None:
        """To the entry above or below."""
        names = list(self.rows)
        here = next((number for number, name in enumerate(names) if self.rows[name].editor.has_focus), 0)
        self.focus_on(names[max(0, min(len(names) - 1, here + by))])

    def focus_on(self, name: str) -> None:
        """Put the cursor in an entry and bring its row into view, error and all."""
        self.rows[name].editor.focus()
        self.scroll_to_widget(self.rows[name], animate=False)

    def after(self, row: FieldRow) -> str | None:
        """The entry after a row's; None after the last."""
        names = list(self.rows)
        place = names.index(row.field_name) + 1
        return names[place] if place < len(names) else None


