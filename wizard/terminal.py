"""What the program has to set right about terminals, in one place."""

import asyncio
import signal
import sys
from codecs import getincrementaldecoder
from collections.abc import Callable, Sequence
from functools import lru_cache, partial
from typing import Any

from rich.segment import Segment
from textual.color import Color
from textual.filter import LineFilter

from rules.sheet.asking import printable


def forgive_invalid_bytes() -> None:
    """Let a byte that is not UTF-8 arrive as a mark instead of ending the program.

    Textual decodes the keyboard strictly: one such byte, as a serial line or another keyboard coding may send, raises
    in its reading thread and closes the program as if all were well. Its driver takes the decoder from this name.
    """
    if sys.platform == "win32":
        return
    from textual.drivers import linux_driver

    linux_driver.getincrementaldecoder = lambda coding: partial(getincrementaldecoder(coding), errors="replace")  # type: ignore[attr-defined]


def let_go_of_closed_screens() -> None:
    """Let the memory of a screen go when it is closed: about 1.4 MB for the moving front end.

    Textual remembers the two background colours of a widget by the widget's own store of painted lines, so that the
    last thousand stores are kept alive. The colours depend on the colours given alone; they are remembered by those.
    """
    from textual._styles_cache import StylesCache

    remembered: Any = vars(StylesCache).get("get_inner_outer")
    if hasattr(remembered, "__wrapped__") and not isinstance(remembered, staticmethod):
        by_colours = lru_cache(1024)(partial(remembered.__wrapped__, None))
        StylesCache.get_inner_outer = staticmethod(by_colours)  # type: ignore[assignment,method-assign]


def on_being_ended(end: Callable[[int], None]) -> None:
    """Call `end` with the exit status when the program is told to stop or its terminal is closed.

    Without this the answers since the last save are lost, and the terminal is left with the mouse on.
    """
    if sys.platform == "win32":
        return
    loop = asyncio.get_running_loop()
    for number in (signal.SIGTERM, signal.SIGHUP):
        loop.add_signal_handler(number, end, 128 + number)


class NothingToObey(LineFilter):
    """The last net: no character from a sheet that a terminal would obey is ever written to one."""

    def apply(self, segments: Sequence[Segment], background: Color) -> list[Segment]:
        """The same segments, with a mark in place of such characters."""
        return [
            segment
            if segment.control or segment.text.isprintable()
            else Segment(printable(segment.text), segment.style)
            for segment in segments
        ]
