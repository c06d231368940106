"""What the program has to set right about terminals, in one place."""

import asyncio
import signal
import sys
from codecs import getincrementaldecoder
from collections.abc import Callable, Sequence
from functools import partial

from rich.segment import Segment
from textual.color import Color
from textual.filter import LineFilter

from rules.graph.asking import printable


def forgive_invalid_bytes() -> None:
    """Let a byte that is not UTF-8 arrive as a mark instead of ending the program.

    Textual decodes the keyboard strictly: one such byte, as a serial line or another keyboard coding may send, raises
    in its reading thread and closes the program as if all were well. Its driver takes the decoder from this name.
    """
    if sys.platform == "win32":
        return
    from textual.drivers import linux_driver

    linux_driver.getincrementaldecoder = lambda coding: partial(getincrementaldecoder(coding), errors="replace")  # type: ignore[attr-defined]


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
