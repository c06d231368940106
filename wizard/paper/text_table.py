"""A table in lines of plain text, for paper and screen alike."""

import textwrap
from collections.abc import Iterator, Sequence
from itertools import zip_longest

_LEAST_TO_WRITE = 6
"""Characters of a column to write in."""
_HEADING = 1
"""Rows of headings."""


def text_table(rows: Sequence[Sequence[str]], width: int) -> Iterator[str]:
    """The lines of a table whose first row is its headings; no longer than `width`. A cell "" is to be written in.

    >>> for line in text_table([("Travel (mm)", "Toe", "Left"), ("+25", "0.5", ""), ("0 RIDE", "0.0", "")], 24):
    ...     print(line)
    Travel Toe Left
    (mm)
    ------ --- ------
    +25    0.5 ______
    0 RIDE 0.0 ______
    """
    widths = _widths(list(zip(*rows, strict=True)), width)
    for number, row in enumerate(rows):
        if number == _HEADING:
            yield " ".join("-" * width for width in widths)
        yield from _row([cell or "_" * width for cell, width in zip(row, widths, strict=True)], widths)


def _widths(columns: Sequence[Sequence[str]], width: int) -> list[int]:
    """Each column wide enough for its cells and for the longest word of its heading; the widest give way to the page."""
    widths = []
    for heading, *cells in columns:
        least = _LEAST_TO_WRITE if "" in cells else 0
        widths.append(max(least, *map(len, heading.split()), *map(len, cells)))
    while sum(widths) + len(widths) - 1 > width:
        widths[widths.index(max(widths))] -= 1
    return widths


def _row(cells: Sequence[str], widths: Sequence[int]) -> Iterator[str]:
    wrapped = [textwrap.wrap(cell, width) or [""] for cell, width in zip(cells, widths, strict=True)]
    for line in zip_longest(*wrapped, fillvalue=""):
        yield " ".join(words.ljust(width) for words, width in zip(line, widths, strict=True)).rstrip()
