"""A screen to read: a heading, a text to scroll, and Escape to go back. Help, lists and explanations are such."""

from typing import Any, ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import VerticalScroll
from textual.content import Content
from textual.screen import Screen
from textual.widgets import Static

from wizard.widgets.lines import KeyLine
from wizard.words import plain

BACK = ("Esc", "back", "screen.back")


class ReadingScreen(Screen[Any]):
    """Shows a text."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("escape,f1,f2,f3,f5,f9", "back", show=False)]

    def __init__(self, heading: str, text: Content) -> None:
        super().__init__()
        self.heading, self.text = heading, text

    def compose(self) -> ComposeResult:
        """Heading, text, keys."""
        yield Static(plain(self.heading), classes="heading", markup=False)
        with VerticalScroll(classes="reading"):
            yield Static(self.text, markup=False)
        yield KeyLine([BACK, ("Up Down", "scroll", "screen.back")])

    def on_mount(self) -> None:
        """The arrow keys scroll at once."""
        self.query_one(".reading").focus()

    def action_back(self) -> None:
        """Back to where it was opened."""
        self.dismiss(None)
