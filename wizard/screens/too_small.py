"""What is shown in a terminal too small for anything else."""

from textual import events
from textual.app import ComposeResult
from textual.screen import Screen
from textual.widgets import Static

from wizard.desk.words import plain

LEAST = (60, 16)
"""Columns and rows: label, entry, and what is wrong with it, with the lines above and below."""


def too_small(width: int, height: int) -> bool:
    """Whether a terminal has no room for a form."""
    return width < LEAST[0] or height < LEAST[1]


class TooSmallScreen(Screen[None]):
    """One line that says what is needed. Takes no key but those of the app, which are to quit."""

    AUTO_FOCUS = None

    def compose(self) -> ComposeResult:
        """The line."""
        yield Static(f"Need {LEAST[0]}x{LEAST[1]}, ^q quits", id="needed", markup=False)

    def tell(self, trouble: str) -> None:
        """Say why quitting did not work."""
        self.query_one("#needed", Static).update(plain(trouble))

    def on_key(self, event: events.Key) -> None:
        """No key but to quit, which the app takes before it comes here."""
        event.stop()
        event.prevent_default()
