"""A program in a pseudo-terminal of its own: keys in, what it paints out, signals, how it ended, how it left the terminal."""

import fcntl
import os
import pty
import select
import signal
import struct
import sys
import termios
import time
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path

LONGEST_WAIT = 300.0
"""s: so long that only a program that hangs takes it, however busy the machine."""
LEAVES_SCREEN = b"\x1b[?1049l"
ROOT = Path(__file__).parents[2]


class Terminal:
    """A program in a pseudo terminal: what it wrote so far, and how it ended.

    arguments: of the `buildsheet` command. environment: what differs from this process's.
    """

    def __init__(
        self,
        *arguments: str,
        environment: Mapping[str, str],
        folder: Path | None = None,
        size: tuple[int, int, int, int] = (24, 80, 0, 0),
        elsewhere: Mapping[int, str] | None = None,
    ) -> None:
        """size: rows, columns, and pixels across and down, none where the terminal does not tell.

        elsewhere: standard streams that do not go to the terminal, and to which file; empty where one is closed.
        """
        self.output = b""
        self._typed_at = 0
        self.handle, slave = pty.openpty()
        self.attributes = termios.tcgetattr(slave)
        fcntl.ioctl(self.handle, termios.TIOCSWINSZ, struct.pack("HHHH", *size))
        self.pid = os.fork()
        if self.pid == 0:
            os.login_tty(slave) if hasattr(os, "login_tty") else _login(slave)
            os.environ |= {
                "TERM": "xterm-256color",
                "PYTHONPATH": os.pathsep.join([str(ROOT), *sys.path]),
                **environment,
            }
            for number, file in (elsewhere or {}).items():
                os.close(number) if not file else os.dup2(os.open(file, os.O_RDWR), number)
            os.chdir(folder or Path.cwd())
            for one in (signal.SIGINT, signal.SIGQUIT):  # ignored where these tests run in the background of a shell
                signal.signal(one, signal.SIG_DFL)
            os.execv(sys.executable, [sys.executable, "-m", "wizard", *arguments])
        self._slave = slave

    def until(self, wanted: bytes) -> None:
        """Read until something was written since the last key."""
        end = time.monotonic() + LONGEST_WAIT
        while wanted not in self.output[self._typed_at :]:
            assert time.monotonic() < end, self.output[-2000:]
            self.read()

    def read(self, wait: float = 0.1) -> bool:
        """Read what was written. False once the other end has been closed."""
        if select.select([self.handle], [], [], wait)[0]:
            try:
                self.output += os.read(self.handle, 65536)
            except OSError:  # how Linux says that the other end has been closed
                return False
        return True

    def type(self, keys: bytes) -> None:
        """Send keys."""
        self._typed_at = len(self.output)
        os.write(self.handle, keys)

    def send(self, number: int) -> None:
        """Send a signal."""
        os.kill(self.pid, number)

    def status(self, *, reading: bool = True) -> int:
        """Wait for the end and give the exit status, negative for death by a signal. reading: whether somebody looks."""
        end = time.monotonic() + LONGEST_WAIT
        while time.monotonic() < end:
            if reading:
                self.read(0.02)
            else:
                time.sleep(0.02)
            pid, status = os.waitpid(self.pid, os.WNOHANG)
            if pid:
                self.pid = 0
                while reading and select.select([self.handle], [], [], 0)[0] and self.read():
                    pass
                return os.waitstatus_to_exitcode(status)
        raise AssertionError("it did not end")

    def hang_up(self) -> None:
        """Close the terminal under the program."""
        os.close(self._slave)
        os.close(self.handle)
        self.handle = self._slave = -1

    @property
    def given_back(self) -> bool:
        """Whether the terminal echoes and breaks lines as it did, and shows the shell's screen with its cursor, no mouse."""
        then, now = self.attributes, termios.tcgetattr(self._slave)
        modes = all(self.output.rfind(off) >= self.output.rfind(on) for on, off in _MODES)
        return then == now and modes

    def close(self) -> None:
        """End the program if it still runs."""
        for handle in (self.handle, self._slave):
            with suppress(OSError):
                os.close(handle)
        if self.pid:
            with suppress(ProcessLookupError):
                os.kill(self.pid, signal.SIGKILL)
            os.waitpid(self.pid, 0)


_MODES = (
    (b"\x1b[?1049h", LEAVES_SCREEN),
    (b"\x1b[?25l", b"\x1b[?25h"),
    (b"\x1b[?1000h", b"\x1b[?1000l"),
    (b"\x1b[?1003h", b"\x1b[?1003l"),
    (b"\x1b[?2004h", b"\x1b[?2004l"),
    (b"\x1b[?1004h", b"\x1b[?1004l"),
    (b"\x1b[?1006h", b"\x1b[?1006l"),
    (b"\x1b[>1u", b"\x1b[<u"),
)
"""Sequences that turn a mode of the terminal on, and off again: ECMA-48 private modes as xterm documents them, and, last,
the keyboard protocol as kitty documents it."""


def _login(slave: int) -> None:
    """Make the slave the controlling terminal and the standard streams."""
    os.setsid()
    fcntl.ioctl(slave, termios.TIOCSCTTY, 0)
    for number in (0, 1, 2):
        os.dup2(slave, number)
    if slave > 2:
        os.close(slave)
