"""The wizard in a terminal of its own."""

import fcntl
import os
import pty
import select
import signal
import struct
import sys
import termios
import time
from contextlib import suppress
from pathlib import Path

START = "import sys; from pathlib import Path; from wizard.app import run; sys.exit(run(Path(sys.argv[1])))"
LONGEST_WAIT = 30.0
"""Seconds without any output after which nothing more is expected."""
LEAVES_SCREEN = b"\x1b[?1049l"


class Terminal:
    """A program in a pseudo terminal: what it wrote so far, and how it ended."""

    def __init__(self, path: Path, state: Path) -> None:
        self.output = b""
        self._typed_at = 0
        self.pid, self.handle = pty.fork()
        if self.pid == 0:
            os.environ |= {
                "BUILDSHEET_STATE": str(state),
                "TERM": "xterm-256color",
                "PYTHONPATH": os.pathsep.join(sys.path),
            }
            os.execv(sys.executable, [sys.executable, "-c", START, str(path)])
        fcntl.ioctl(self.handle, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))

    def until(self, wanted: bytes) -> None:
        """Read until something was written since the last key."""
        end = time.monotonic() + LONGEST_WAIT
        while wanted not in self.output[self._typed_at :]:
            assert time.monotonic() < end, self.output[-2000:]
            self._read()

    def _read(self) -> bool:
        if select.select([self.handle], [], [], 0.1)[0]:
            try:
                self.output += os.read(self.handle, 65536)
            except OSError:  # how Linux says that the other end has been closed
                return False
        return True

    def type(self, keys: bytes) -> None:
        self._typed_at = len(self.output)
        os.write(self.handle, keys)

    def status(self) -> int:
        """Wait for the end and give the exit status."""
        end = time.monotonic() + LONGEST_WAIT
        while time.monotonic() < end:
            seen = len(self.output)
            self._read()
            if len(self.output) > seen:
                end = time.monotonic() + LONGEST_WAIT
            pid, status = os.waitpid(self.pid, os.WNOHANG)
            if pid:
                self.pid = 0
                while self._read() and select.select([self.handle], [], [], 0)[0]:
                    pass
                return os.waitstatus_to_exitcode(status)
        raise AssertionError("it did not end")

    def close(self) -> None:
        with suppress(OSError):
            os.close(self.handle)
        if self.pid:
            with suppress(ProcessLookupError):
                os.kill(self.pid, signal.SIGKILL)
            os.waitpid(self.pid, 0)
