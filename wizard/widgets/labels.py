"""Where the words of a picture go: beside what they name, never over each other, never over a line."""

from collections.abc import Iterator, Sequence
from textwrap import wrap

from rules.measure.records import dataclass

_REACH = 2
"""Rows a label may stand above or below what it names."""
_MOST_LINES = 3
_NARROWEST = 8
"""Columns: a label is not broken into lines shorter than this to make it fit."""

_Form = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class LabelWords:
    """A label asking for a place: its words and figure, the cell it names, and the side it prefers."""

    text: str
    figure: str | None
    column: int
    row: int
    rightwards: bool
    rank: int


@dataclass(frozen=True, slots=True)
class PlacedWords:
    """A label's lines from (row, column) down; `leader` is its leader's (row, first column, last column)."""

    lines: _Form
    row: int
    column: int
    rank: int
    leader: tuple[int, int, int] | None


class _Cells:
    """What is taken, row by row. A free cell at each end of a row lets a label touch the picture's edge."""

    def __init__(self, drawn: Sequence[bytes | bytearray], width: int) -> None:
        self.width, self.height = width, len(drawn)
        self.taken = [bytearray((0, *map(bool, row), 0)) for row in drawn]
        self.lettered = [bytearray(width + 2) for _ in drawn]

    def rows_for(self, top: int, tall: int) -> bytes:
        """The rows from `top` down laid over each other.

        Lines that belong together must not touch other words, or both read as one: the rows above and below
        count too, as far as there are words in them.
        """
        rows = self.taken[top : top + tall]
        if tall == 1:
            return bytes(rows[0])
        around = [self.lettered[edge] for edge in (top - 1, top + tall) if 0 <= edge < self.height]
        together = 0
        for row in (*rows, *around):
            together |= int.from_bytes(row)
        return together.to_bytes(self.width + 2)

    def take(self, placed: PlacedWords) -> None:
        """Marks a label's cells, one more at each end, and the rows round a label of several lines."""
        first, tall = placed.column, len(placed.lines)
        last = first + len(placed.lines[0]) + 2
        for row in range(placed.row, placed.row + tall):
            self.taken[row][first:last] = b"\1" * (last - first)
            self.lettered[row][first:last] = b"\1" * (last - first)
        for row in (placed.row - 1, placed.row + tall):
            if tall > 1 and 0 <= row < self.height:
                self.taken[row][first:last] = b"\1" * (last - first)
        if placed.leader is not None:
            row, start, end = placed.leader
            self.taken[row][start + 1 : end + 2] = b"\1" * (end + 1 - start)


def place(labels: Sequence[LabelWords], drawn: Sequence[bytes | bytearray], width: int) -> list[PlacedWords]:
    """A place for each label that finds one, first come first served.

    drawn: a row of cells each, not zero where something is drawn. A label keeps a cell's distance from what
    is drawn and from other labels. One that fits nowhere near what it names is left out.
    """
    cells = _Cells(drawn, width)
    found = []
    for label in labels:
        placed = min(_places(label, cells), key=lambda choice: choice[0], default=None)
        if placed is not None:
            found.append(placed[1])
            cells.take(placed[1])
    return found


def _places(label: LabelWords, cells: _Cells) -> Iterator[tuple[float, PlacedWords]]:
    """The nearest place in every row near the label, for every way to break it into lines, with its cost."""
    for lines in _forms(label, cells.width):
        long, tall = max(map(len, lines)), len(lines)
        for top in range(label.row - tall + 1 - _REACH, label.row + _REACH + 1):
            if top < 0 or top + tall > cells.height:
                continue
            start = _free(cells.rows_for(top, tall), long, label)
            if start is None:
                continue
            away = start - label.column if label.rightwards else label.column - (start + long - 1)
            off = max(0, top - label.row, label.row - (top + tall - 1))
            # Straight beside it is best; one row off is worth five columns, one line more about four.
            yield 3.0 * off + 0.6 * away + 2.5 * (tall - 1), _aligned(lines, top, start, long, label)


def _free(row: bytes, long: int, label: LabelWords) -> int | None:
    """First column of the nearest free run on the label's side, with a free cell before and after it."""
    # Because of the free cell at each end, a run that starts at n in `row` leaves its words to start at n.
    gap = bytes(long + 2)
    start = row.find(gap, label.column + 1) if label.rightwards else row.rfind(gap, 0, label.column + 2)
    return None if start < 0 else start


def _forms(label: LabelWords, width: int) -> list[_Form]:
    """The label in one line, and in as many as it takes to fit beside what it names."""
    whole = label.text if label.figure is None else f"{label.text} {label.figure}"
    room = width - label.column - 2 if label.rightwards else label.column - 1
    forms: list[_Form] = [(whole,)]
    if label.figure is not None:
        forms.append((label.text, label.figure))
        narrow = max(_NARROWEST, min(room, len(label.text) * 2 // 3))
        forms.append((*wrap(label.text, narrow), label.figure))
    if _NARROWEST <= room < len(whole):
        forms.append(tuple(wrap(whole, room)))
    return [form for form in dict.fromkeys(forms) if len(form) <= _MOST_LINES]


def _aligned(lines: _Form, top: int, start: int, long: int, label: LabelWords) -> PlacedWords:
    lines = tuple(line.ljust(long) if label.rightwards else line.rjust(long) for line in lines)
    first, last = (label.column + 1, start - 2) if label.rightwards else (start + long + 1, label.column - 1)
    leader = (label.row, first, last) if top <= label.row < top + len(lines) and last > first else None
    return PlacedWords(lines, top, start, label.rank, leader)
