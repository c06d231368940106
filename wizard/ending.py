"""Being told to stop: signals, whenever they come, lead to a saved sheet, a terminal given back and the usual exit status."""

import os
import select
import signal
import sys
import time
from collections.abc import Callable
from contextlib import suppress
from contextvars import Context, copy_context
from types import FrameType, TracebackType
from typing import TYPE_CHECKING, TextIO

if TYPE_CHECKING:
    import asyncio

SIGNALS: tuple[signal.Signals, ...] = tuple(
    getattr(signal, name) for name in ("SIGTERM", "SIGHUP", "SIGINT", "SIGQUIT") if hasattr(signal, name)
)
_LONGEST_WAIT = 2.0  # seconds to wait for a terminal that takes nothing, once the program was told to stop
TOLD_TO_STOP = 128
"""By custom the exit status of a program that a signal ended, less the signal's number."""
HANG_UP = 1
"""SIGHUP, also where the system has none: the terminal is gone."""


class Ending:
    """While it is entered, a signal ends the program in good order, by `end` where a screen is open.

    number: the first signal that came, or None.
    """

    def __init__(self) -> None:
        self.number: int | None = None
        self._loop: asyncio.AbstractEventLoop | None = None
        self._end: Callable[[], None] | None = None
        self._context: Context | None = None
        self._before: dict[int, object] = {}

    @property
    def status(self) -> int | None:
        """The exit status by custom, 128 and the signal's number; None where none came."""
        return None if self.number is None else TOLD_TO_STOP + self.number

    def __enter__(self) -> "Ending":
        self._before = {number: signal.signal(number, self._told) for number in SIGNALS}
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        for number, handler in self._before.items():
            signal.signal(number, handler)  # type: ignore[arg-type]

    def by(self, end: Callable[[], None]) -> None:
        """From here on the running loop is told, and `end` is called in it: never in the middle of a save."""
        import asyncio  # commands without a screen need no loop

        self._loop, self._end, self._context = asyncio.get_running_loop(), end, copy_context()
        if self.number is not None:
            self._tell()

    def screen_closed(self) -> None:
        """The screen is gone and the terminal given back: a signal now changes the exit status and nothing else."""
        self._loop = None

    def hung_up(self) -> None:
        """The terminal is gone without a signal, as happens to a program that does not lead its session."""
        self.number = self.number or HANG_UP
        self._tell()

    def _told(self, number: int, _: FrameType | None) -> None:
        # Before the screen is there this only makes a note: an error thrown into the start of it could hang it.
        self.number = self.number or number
        self._tell()

    def _tell(self) -> None:
        if self._loop is not None and self._end is not None:
            with suppress(RuntimeError):  # the loop has ended by itself
                self._loop.call_soon_threadsafe(self._end, context=self._context)


class PatientTerminal:
    """Writes to a terminal that may be closed, or stopped so that nobody reads it."""

    def __init__(self, file: TextIO) -> None:
        """file: a stream to the terminal, or to anything else."""
        self._file = file
        self._handle: int | None = None
        with suppress(OSError, ValueError, AttributeError):
            # Opened once more, so that writing need not wait: set on the shared handle, this would reach the shell.
            self._handle = os.open(os.ttyname(file.fileno()), os.O_WRONLY | os.O_NOCTTY | os.O_NONBLOCK)

    def write(self, text: str, told_to_stop: Callable[[], bool] = lambda: True) -> bool:
        """Whether a text could be written. It waits for the reader, but not for long once the program was told to stop."""
        try:
            if self._handle is None:
                self._file.write(text)
                self._file.flush()
                return True
            left, since = text.encode(self._file.encoding, self._file.errors or "replace"), time.monotonic()
            while left:
                if select.select([], [self._handle], [], _LONGEST_WAIT / 4)[1]:
                    with suppress(BlockingIOError):
                        left, since = left[os.write(self._handle, left) :], time.monotonic()
                elif told_to_stop() and time.monotonic() - since > _LONGEST_WAIT:
                    return False
        except (OSError, ValueError):
            return False
        return True

    def close(self) -> None:
        """Close what was opened here; the stream stays."""
        if self._handle is not None:
            os.close(self._handle)
            self._handle = None


def say(text: str, stream: TextIO | None) -> None:
    """Print a line where somebody may no longer be there to read it."""
    if stream is not None:
        terminal = PatientTerminal(stream)
        terminal.write(f"{text}\n")
        terminal.close()


def flush_or_forget() -> None:
    """Write out what is left for the standard streams; where nobody takes it, drop it.

    Left to itself Python tries once more at the very end, fails, and puts its own exit status in place of ours.
    """
    for stream in filter(None, (sys.stdout, sys.stderr)):
        try:
            stream.flush()
        except (OSError, ValueError):
            with suppress(OSError, ValueError):
                os.dup2(os.open(os.devnull, os.O_WRONLY), stream.fileno())
