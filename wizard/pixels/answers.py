"""What a terminal answers about pixels, told apart from what is typed in the meantime.

The answers, from the terminals' own published control sequences: primary device attributes, `CSI ? ... c`, in which a 4
means sixel graphics; `CSI 6 ; height ; width t`, a cell in pixels; `CSI ? 1 ; 0 ; n S` and `CSI ? 2 ; 0 ; w ; h S`,
xterm's number of colours and largest picture; `APC G ... ; OK ST`, kitty's graphics.
"""

import re
from typing import Literal

from rules.measure.records import dataclass

Cell = tuple[int, int]
"""Width and height of a character cell, pixels."""
ANSWER = re.compile(rb"\x1b\[\?[\d;]*[cS]|\x1b\[6;\d+;\d+t|\x1b_G[^\x1b]*\x1b\\")
_BEGUN = re.compile(rb"\x1b(\[(\?[\d;]*|6[\d;]*)|_(G[^\x1b]*\x1b?)?)$")
"""The beginning of an answer, of which the rest is still on its way. No key begins so but Page Down, held with Ctrl or not."""
_MAY_BE = re.compile(_BEGUN.pattern + rb"|\x1b\[?$")
"""The same, or a key Escape."""
LARGEST_CELL = 200
"""px: an answer beyond that is no cell's size."""


@dataclass(frozen=True, slots=True)
class Able:
    """What a terminal said it can show.

    cell: width and height, px. colours: of one sixel picture. largest: px across and down of one sixel picture.
    """

    how: Literal["kitty", "sixel"]
    cell: Cell
    colours: int = 256
    largest: tuple[int, int] = (1000, 1000)


class Incoming:
    """Bytes from a terminal: its answers are kept here, all else is handed on.

    typed: what was typed before anybody took it. patient: whether a key Escape may wait for the byte after it.
    """

    def __init__(self, *, patient: bool = False) -> None:
        self.patient = patient
        self.answers: list[bytes] = []
        self.typed = b""
        self._begun = b""

    def keys_in(self, data: bytes) -> bytes:
        """What of these bytes is no answer. The beginning of an answer is kept back for the bytes that follow.

        >>> Incoming().keys_in(b"42\\x1b[?62;4c5")
        b'425'
        """
        data, self._begun = self._begun + data, b""
        self.answers += ANSWER.findall(data)
        data = ANSWER.sub(b"", data)
        if begun := (_MAY_BE if self.patient else _BEGUN).search(data):
            data, self._begun = data[: begun.start()], begun[0]
        return data

    def hurry(self) -> bytes:
        """From here on Escape waits no more; what of it was kept back."""
        self.patient = False
        if _BEGUN.search(self._begun):
            return b""
        kept, self._begun = self._begun, b""
        return kept

    @property
    def complete(self) -> bool:
        """Whether the terminal has answered the last question, which every terminal knows: nothing more will come."""
        return any(answer.startswith(b"\x1b[?") and answer.endswith(b"c") for answer in self.answers)


def able(answers: list[bytes], cell: Cell | None) -> Able | None:
    """What the answers say; None where they say nothing of pixels. cell: as the system knows it, if it does."""
    told = _cell_told(answers) or cell
    if told is None:
        return None
    if any(answer.startswith(b"\x1b_G") and b";OK\x1b" in answer for answer in answers):
        return Able("kitty", told)
    attributes = next((answer[3:-1].split(b";") for answer in answers if answer.endswith(b"c")), [])
    if b"4" not in attributes[1:]:  # the first tells the kind of terminal
        return None
    colours = next((n for (n,) in _graphics(answers, 1, 1) if n >= 2), 256)
    largest = next(((w, h) for w, h in _graphics(answers, 2, 2) if min(w, h) >= LARGEST_CELL), (1000, 1000))
    return Able("sixel", told, min(256, colours), largest)


def _graphics(answers: list[bytes], what: int, many: int) -> list[tuple[int, ...]]:
    """The figures of xterm's answers about its graphics: 1 colours, 2 size."""
    found = []
    for answer in answers:
        numbers = [int(n or 0) for n in answer[3:-1].split(b";")] if answer.endswith(b"S") else []
        if numbers[:2] == [what, 0] and len(numbers) == 2 + many:
            found.append(tuple(numbers[2:]))
    return found


def _cell_told(answers: list[bytes]) -> Cell | None:
    for answer in answers:
        if answer.startswith(b"\x1b[6;"):
            height, width = (int(n) for n in answer[4:-1].split(b";"))
            return plausible((width, height))
    return None


def plausible(cell: Cell) -> Cell | None:
    """A cell's size, or None where it cannot be one.

    >>> plausible((9, 18)), plausible((0, 0))
    ((9, 18), None)
    """
    return cell if all(2 <= size <= LARGEST_CELL for size in cell) else None
