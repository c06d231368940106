"""All keys of a page, in words: to read, and to pick one from."""

from collections.abc import Sequence
from textwrap import wrap
from typing import ClassVar

from textual.app import ComposeResult
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from wizard.desk.keys import Key, bindings
from wizard.desk.words import plain
from wizard.widgets.items import Items, Listed
from wizard.widgets.lines import KeyLine

COLUMN = 28
"""Cells of the keys' own column."""
BESIDE, LEAST_ROOM = 5, 20
"""Cells that the list takes for its edges, its scroll bar and the gap between the columns; and that the words get at least."""


class AllKeysScreen(Screen[str | None]):
    """Closes with the action of the key picked, or None."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,ctrl+p", "back", "back", "back"),
        Key("enter", "run", "do what the key does", "do it", told=True),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, keys: Sequence[Key]) -> None:
        """keys: those of the screen it is opened from."""
        super().__init__()
        self._keys = {key.keys: key for key in keys}

    def compose(self) -> ComposeResult:
        """A line for each key."""
        yield Static(plain("All keys of this page"), classes="heading", markup=False)
        yield Items(self._listed())
        yield KeyLine(self.KEYS)

    def on_resize(self) -> None:
        """What does not fit in its line goes on below itself, not below the keys."""
        self.query_one(Items).show(self._listed())

    def _listed(self) -> list[Listed]:
        room = max(LEAST_ROOM, self.app.size.width - COLUMN - BESIDE)
        return [Listed(name, _line(key, room), lambda key=key: _about(key)) for name, key in self._keys.items()]  # type: ignore[misc]

    def on_mount(self) -> None:
        """The arrow keys move in the list."""
        self.query_one(Items).focus_list()

    def on_items_chosen(self, event: Items.Chosen) -> None:
        """Enter does what the key does."""
        event.stop()
        self.dismiss(self._keys[event.item_id].run)

    def action_run(self) -> None:
        """Do what the key under the cursor does."""
        self.dismiss(self._keys[self.query_one(Items).at].run)

    def action_back(self) -> None:
        """Back, doing nothing."""
        self.dismiss(None)


def _line(key: Key, room: int) -> Content:
    """A key's line. room: cells for what it does, in as many rows as that takes."""
    first, *rest = wrap(key.does, room)
    below = "".join(f"\n{' ' * COLUMN} {each}" for each in rest)
    return Content.assemble(plain(key.names.ljust(COLUMN), "bold"), plain(f" {first}{below}"))


def _about(key: Key) -> Content:
    how = "Enter does it." if key.run else "A key of entries and lists: it works there."
    return plain(f"{key.names}: {key.does}. {how}")
