"""A screen to read: a heading, a text to scroll, and Escape to go back. Help, lists and explanations are such."""

from typing import Any, ClassVar

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from wizard.desk.keys import ALL_KEYS, Key, bindings
from wizard.desk.words import lines, plain
from wizard.widgets.lines import KeyLine


class ReadingScreen(Screen[Any]):
    """Shows a text."""

    KEYS: ClassVar[tuple[Key, ...]] = (
        Key("escape,f1,f2,f3,f5,f9", "back", "back", "back"),
        Key("up,down,pageup,pagedown", "", "scroll", told=True),
    )
    BINDINGS = bindings(KEYS)

    def __init__(self, heading: str, *text: Content) -> None:
        """text: in parts where it is long, so that only the parts in sight are painted."""
        super().__init__()
        self.heading, self.text, self._parts = heading, lines(*text), text

    def compose(self) -> ComposeResult:
        """Heading, text, keys."""
        yield Static(plain(self.heading), classes="heading", markup=False)
        with VerticalScroll(classes="reading"):
            yield from (Static(part, markup=False) for part in self._parts)
        yield KeyLine((self.KEYS[0], ALL_KEYS))

    def on_mount(self) -> None:
        """The arrow keys scroll at once."""
        self.set_focus(self.query_one(".reading"))

    def action_back(self) -> None:
        """Back to where it was opened."""
        self.dismiss(None)
