"""An app that can be told to stop at any time, by a signal or by a terminal that is gone, and loses nothing typed."""

import asyncio
import traceback

from rich.text import Text
from textual.app import App

from wizard import terminal
from wizard.ending import Ending
from wizard.pixels.answers import Incoming


class EndableApp(App[None]):
    """ended: it was told to stop, and has saved."""

    def __init__(self, ending: Ending | None, incoming: Incoming | None = None) -> None:
        """ending: what tells that the program is to stop; None where nothing does. incoming: see `terminal.driver_class`."""
        super().__init__(driver_class=terminal.driver_class(ending, incoming or Incoming()))
        self._ending = ending
        self.ended = False

    def keep_what_is_typed(self) -> None:
        """Save what is open, without asking anything."""
        raise NotImplementedError

    def on_load(self) -> None:
        """From here on, before the terminal is taken over, a signal saves and ends."""
        if self._ending is not None:
            self._ending.by(self.end_now)

    def end_now(self) -> None:
        """Told to stop, or the terminal is gone: save without asking and end."""
        if self.ended:
            return
        if not (self.screen_stack and self.screen.is_mounted):  # half built, it could neither be asked nor closed
            asyncio.get_running_loop().call_later(0.02, self.end_now)
            return
        self.keep_what_is_typed()
        self.ended = True
        self.exit(return_code=0)

    def _handle_exception(self, error: Exception) -> None:
        # Told to stop, a page may be taken apart before it was built, and then looks for its parts. The sheet is saved.
        if self._ending is None or self._ending.number is None:
            super()._handle_exception(error)
        else:
            self._close_messages_no_wait()

    def _fatal_error(self) -> None:
        # Textual's own report writes out every variable: whole sheets, for minutes.
        self._exit_renderables.append(Text(traceback.format_exc()))
        self._close_messages_no_wait()
