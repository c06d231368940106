"""Asking the terminal whether it shows pixels: before anything else is loaded, so that its answer costs no time."""

import os
import re
import select
import signal
import struct
import sys
import time
from collections.abc import Collection, Mapping
from contextlib import suppress
from types import FrameType, TracebackType
from typing import Any

from wizard.pixels.answers import Able, Cell, Incoming, able, plausible

QUESTIONS = b"\x1b_Gi=1,s=1,v=1,a=q,t=d,f=24;AAAA\x1b\\\x1b[16t\x1b[?1;1;0S\x1b[?2;1;0S\x1b[c"
"""Kitty's graphics; a cell's size; colours and size of a sixel picture; and, last, what every terminal answers."""
LONGEST_WAIT = 0.1
"""s from the questions to the last answer that is waited for. Loading the program takes longer."""
SETTING = "BUILDSHEET_PICTURE"
CHOICES = ("pixels", "characters")
"""The setting: pixels also within tmux or screen, if they answer; characters: not even asked."""


def worth_asking(environment: Mapping[str, str], setting: str = "") -> bool:
    """Whether a terminal is asked at all: not the Linux console, and tmux or screen only where that was chosen.

    They answer for themselves, and what stands behind them may show nothing.

    >>> worth_asking({"TERM": "xterm-256color"}), worth_asking({"TERM": "tmux-256color"}), worth_asking({"TERM": "linux"})
    (True, False, False)
    """
    term = environment.get("TERM", "")
    if setting == "characters" or term in ("", "dumb", "linux"):
        return False
    within = "TMUX" in environment or "STY" in environment or re.match("tmux|screen", term)
    return setting == "pixels" or not within


def cell_size(handle: int) -> Cell | None:
    """A cell in pixels as the system knows it; None where the terminal never told."""
    with suppress(ImportError, OSError):
        import fcntl
        import termios

        rows, columns, wide, high = struct.unpack("HHHH", fcntl.ioctl(handle, termios.TIOCGWINSZ, bytes(8)))
        if rows and columns:
            return plausible((wide // columns, high // rows))
    return None


class Asked:
    """From here on the terminal answers, and echoes nothing, until `answered` or the end. On Windows it is never asked."""

    def __init__(self, *, ask: bool, ended_by: Collection[int]) -> None:
        """ask: False where it is not worth it. ended_by: signals that end the program; the terminal is given back before."""
        self.incoming = Incoming(patient=True)
        self._ask, self._ended_by = ask, ended_by
        self._handle = 0
        self._before: list[Any] | None = None
        self._handlers: dict[int, Any] = {}
        self._since = 0.0

    def __enter__(self) -> "Asked":
        if self._ask:
            with suppress(ImportError, OSError, ValueError, AttributeError):
                self._put()
        return self

    def _put(self) -> None:
        import termios

        assert sys.__stdin__ is not None and sys.__stdout__ is not None
        self._handle = sys.__stdin__.fileno()
        try:
            before = termios.tcgetattr(self._handle)
            quiet = list(before)
            quiet[0] &= ~termios.ICRNL  # Enter stays what the program knows
            quiet[3] &= ~(termios.ECHO | termios.ICANON)
            self._handlers = {number: signal.signal(number, self._end) for number in self._ended_by}
            self._before = before
            termios.tcsetattr(self._handle, termios.TCSANOW, quiet)  # what is typed already stays
        except termios.error:
            return
        self._since = time.monotonic()
        os.write(sys.__stdout__.fileno(), QUESTIONS)

    def answered(self, within: float = LONGEST_WAIT) -> Able | None:
        """What the terminal shows, and the terminal as it was. within: s from the questions on."""
        if self._before is None:
            self.incoming.hurry()
            return None
        try:
            while not self.incoming.complete:
                left = max(0.0, self._since + within - time.monotonic())
                if not select.select([self._handle], [], [], left)[0]:
                    break
                data = os.read(self._handle, 4096)
                if not data:  # the terminal is gone; whoever reads next finds out
                    break
                self.incoming.typed += self.incoming.keys_in(data)
            return able(self.incoming.answers, cell_size(self._handle))
        except OSError:
            return None
        finally:
            self.incoming.typed += self.incoming.hurry()
            self._give_back()

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._give_back()

    def _give_back(self) -> None:
        if self._before is not None:
            import termios

            with suppress(termios.error):
                termios.tcsetattr(self._handle, termios.TCSANOW, self._before)
            for number, handler in self._handlers.items():
                signal.signal(number, handler)
            self._before = None

    def _end(self, number: int, _: FrameType | None) -> None:
        """Told to end before there is anything to save: as it would have been without the questions."""
        self._give_back()
        signal.signal(number, signal.SIG_DFL)
        os.kill(os.getpid(), number)
