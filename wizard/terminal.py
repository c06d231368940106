"""What the program has to set right about terminals, in one place."""

import sys
from codecs import getincrementaldecoder
from collections.abc import Sequence
from functools import lru_cache, partial
from typing import TYPE_CHECKING, Any, TextIO, cast
from unicodedata import combining, normalize

from rich.cells import cell_len
from rich.segment import Segment
from textual.color import Color
from textual.filter import LineFilter

from rules.graph.asking import printable
from wizard.ending import PatientTerminal
from wizard.pixels.answers import Cell, Incoming
from wizard.pixels.asking import cell_size

if TYPE_CHECKING:
    from textual.driver import Driver

    from wizard.ending import Ending


LARGEST_SIZE = (400, 150)
"""Columns and lines that are painted at most, whatever the terminal says it has."""


class _Decoder:
    """Bytes from the keyboard to text. Raises EOFError where the terminal is gone.

    A byte that is not UTF-8 arrives as a mark: Textual decodes strictly, and one such byte, as a serial line may send,
    would end its reading thread. No bytes at all is how a closed terminal reads; Textual would ask for ever.
    """

    def __init__(self, coding: str, incoming: Incoming) -> None:
        self._inner = getincrementaldecoder(coding)(errors="replace")
        self._incoming = incoming

    def decode(self, data: bytes, final: bool = False) -> str:
        """The text of these bytes and of what was kept back before, without answers that come late."""
        if not data and not final:
            raise EOFError
        return self._inner.decode(self._incoming.keys_in(data), final)


def driver_class(ending: "Ending | None", incoming: Incoming) -> "type[Driver] | None":
    """Textual's driver for this system, made to outlive its terminal; None where it needs nothing.

    incoming: takes out the terminal's answers to our questions; what was typed before the driver was there comes first.
    """
    if sys.platform == "win32":
        return None
    from textual._xterm_parser import XTermParser
    from textual.drivers import linux_driver
    from textual.drivers._writer_thread import WriterThread

    class PatientWriter(WriterThread):
        """Writes until nobody reads the terminal any more, and from then on drops what it is given.

        Textual's own thread ends with an error when the terminal is closed, and waits for ever when it is only stopped;
        everything that writes afterwards then waits for the thread.
        """

        def run(self) -> None:
            """Take text from the queue until the end is told."""
            terminal = PatientTerminal(cast(TextIO, self._file))
            read = True
            while (text := self._queue.get()) is not None:  # None tells the end
                read = read and terminal.write(text, lambda: ending is not None and ending.number is not None)
            terminal.close()

    class PatientDriver(linux_driver.LinuxDriver):
        """Tells when the terminal is gone, and is not stopped by Ctrl+z before it has taken the terminal over.

        Until then the terminal still makes a signal of that key. Half begun, Textual's driver could not give the terminal
        back: it would end in an error, or stop for good where no shell goes on with it.
        """

        _begun = False

        def __init__(self, *given: Any, **named: Any) -> None:
            super().__init__(*given, **named)
            # Textual paints on standard error, which many send elsewhere; the start has looked at this one.
            self._file: Any = sys.__stdout__
            self._size = self._size or self._get_terminal_size()

        def _get_terminal_size(self) -> tuple[int, int]:
            columns, lines = super()._get_terminal_size()
            return min(columns, LARGEST_SIZE[0]), min(lines, LARGEST_SIZE[1])

        def start_application_mode(self) -> None:
            """Take the terminal over."""
            super().start_application_mode()  # type: ignore[no-untyped-call]
            self._begun = True

        def _sigtstp_application(self, *given: object) -> None:
            if self._begun:
                super()._sigtstp_application(*given)

        def _sigcont_application(self, *given: object) -> None:
            if self._begun:
                super()._sigcont_application(*given)

        def _run_input_thread(self) -> None:
            try:
                for event in XTermParser().feed(incoming.typed.decode("utf-8", "replace")):
                    self.process_message(event)
                incoming.typed = b""
                self.run_input_thread()
            except (OSError, EOFError):
                if ending is not None:
                    ending.hung_up()

    module: Any = linux_driver  # its driver takes both from there
    module.getincrementaldecoder, module.WriterThread = (
        (lambda coding: lambda: _Decoder(coding, incoming)),
        PatientWriter,
    )
    return PatientDriver


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


def coding() -> str:
    """How letters are coded for the terminal: "utf-8" nearly everywhere, "ascii" where nothing is known."""
    return getattr(sys.__stdout__, "encoding", None) or "ascii"


def cell_now() -> Cell | None:
    """A cell's size in pixels, as the system knows it."""
    try:
        return cell_size(sys.__stdout__.fileno()) if sys.__stdout__ else None
    except (OSError, ValueError):
        return None


class LettersItHas(LineFilter):
    """For a terminal whose coding is not UTF-8: a letter it lacks becomes one that looks like it, as wide as it was."""

    def __init__(self, coding: str) -> None:
        """coding: the name of the terminal's coding, such as "ascii" or "latin-1"."""
        super().__init__()
        self._coding = coding
        self._like = lru_cache(4096)(self._in_letters_it_has)

    def apply(self, segments: Sequence[Segment], background: Color) -> list[Segment]:
        """The same segments in letters the terminal has."""
        return [
            segment if segment.control or segment.text.isascii() else Segment(self._like(segment.text), segment.style)
            for segment in segments
        ]

    def _in_letters_it_has(self, text: str) -> str:
        return "".join(letter if self._has(letter) else self._nearest(letter) for letter in text)

    def _has(self, letter: str) -> bool:
        try:
            letter.encode(self._coding)
        except UnicodeEncodeError:
            return False
        return True

    def _nearest(self, letter: str) -> str:
        if letter in _LOOK_ALIKE:
            return _LOOK_ALIKE[letter]
        apart = normalize("NFKD", letter)  # an accent is left off, but a half must not become a one
        return apart[0] if apart[0].isascii() and all(map(combining, apart[1:])) else "?" * cell_len(letter)


_LOOK_ALIKE = {
    letter: plain
    for letters, plain in (
        ("─━╌╍┄┅╴╶–—‐‑−▔▁·•", "-"),
        ("│┃╎╏┆┇▎▏▕", "|"),
        ("┌┐└┘├┤┬┴┼╭╮╰╯┏┓┗┛", "+"),
        ("█▉▊▋▌▐▇▆▅▄▃▂▀", "#"),
        ("‘’′", "'"),
        ("“”″", '"'),
        ("→▶", ">"),
        ("←◀", "<"),
        ("↑▲", "^"),
        ("↓▼", "v"),
        ("×", "x"),
        ("…", "~"),
        ("°", "o"),
        ("⁄", "/"),
    )
    for letter in letters
}


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
