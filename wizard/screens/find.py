"""Find a step or an entry by part of its name, or by what else builders call it, and go there."""

from collections.abc import Iterator
from typing import ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Input, Static

from rules.judging.search import farness, matches, names_like, title_of
from rules.sheet.glossary import also_called
from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.pages import ASKED, PAGES, place_of
from wizard.desk.session import Session
from wizard.desk.words import lines, plain
from wizard.widgets.entry import Entry
from wizard.widgets.items import Items, Listed, nothing_like
from wizard.widgets.lines import KeyLine

PLACE = 23
"""Cells of the step before an entry."""


class FindScreen(Screen[str | None]):
    """Closes with the name of the entry or the key of the page to go to, or None."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,ctrl+f", "back", "back", "back", first=True),
        Key("enter", "go", "go there", "go there", told=True),
        Key("down", "move(1)", "the next line of the list", "pick", first=True),
        Key("up", "move(-1)", "the line before", first=True),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session

    def compose(self) -> ComposeResult:
        """Search line, list, what the cursor is on, keys."""
        yield Static(
            plain("Go to a step or an entry. Type part of its name, or what you call it."),
            classes="heading",
            markup=False,
        )
        yield Entry("", longest=60, id="search")
        yield Items(list(self._items("")))
        back, go, down, up = self.KEYS
        yield KeyLine((back, go, (down, up), ALL_KEYS))

    def on_mount(self) -> None:
        """Typing narrows the list."""
        self.set_focus(self.query_one("#search"))

    def on_input_changed(self, event: Input.Changed) -> None:
        """Keep what holds all the words typed."""
        self.query_one(Items).show(list(self._items(event.value)), at_top=True)

    def on_input_submitted(self) -> None:
        """Enter goes to the line of the list that is marked."""
        self.action_go()

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """A click goes there too."""
        event.stop()
        self.dismiss(event.item_id or None)

    def _items(self, wanted: str) -> Iterator[Listed]:
        """Steps and entries first, the nearest to what was typed on top, then figures and verdicts called so: there is no row
        to type those in."""
        near: list[tuple[int, Listed]] = []
        for page in PAGES:
            if matches(wanted, f"step {page.title}"):
                step = Listed(page.key, plain(f"Step: {page.title}", "bold"), lambda page=page: _about_step(page.title))  # type: ignore[misc]
                near.append((min(farness(wanted, page.title), farness(wanted, page.short)), step))
            for name in page.fields:
                label = ASKED[name].label
                if matches(wanted, f"{page.title} {place_of(name)} {label} {name} {_choices(name)}"):
                    names = (label, *ASKED[name].choices)
                    near.append((min(farness(wanted, one) or one is not label for one in names), self._entry(name)))
        yield from (one for _, one in sorted(near, key=lambda pair: pair[0]))
        found = bool(near)
        for name in names_like(wanted):
            if name not in ASKED:
                found = True
                line = Content.assemble(plain(f"{'worked out':<{PLACE}} "), plain(title_of(name)))
                yield Listed(name, line, lambda: plain("Worked out, not asked. Enter shows how."))
        if not found:
            yield nothing_like(wanted)

    def _entry(self, name: str) -> Listed:
        asked, text = ASKED[name], self._session.text(name)
        others = also_called(asked.label)
        told = [
            plain(asked.how_in(self._session.shown_in)),
            plain(f"Also called: {', '.join(others)}." if others else ""),
        ]
        line = Content.assemble(plain(f"{place_of(name):<{PLACE}} "), plain(asked.label.ljust(34)), plain(text))
        return Listed(name, line, lambda: lines(*told))

    def action_go(self) -> None:
        """Go to the line that is marked."""
        if at := self.query_one(Items).at:
            self.dismiss(at)

    def action_move(self, by: int) -> None:
        """Mark the next line of the list or the one before; typing goes on."""
        self.query_one(Items).move(by)

    def action_back(self) -> None:
        """Back, going nowhere."""
        self.dismiss(None)


def _choices(name: str) -> str:
    """The choices of a row that has names for them: `rack`, `4130`. What is one word in many rows finds none of them."""
    return " ".join(ASKED[name].choices)


def _about_step(title: str) -> Content:
    return plain(f"Opens the step {title} where there is something to do.")
