"""A drawing is painted again only where it has changed."""

import pytest
from textual.geometry import Region

from wizard.widgets.drawn import changed
from wizard.widgets.raster import Row, Run


def row(*texts: str) -> Row:
    return tuple(Run(text, "arm" if place % 2 else None, False) for place, text in enumerate(texts))


@pytest.mark.parametrize(
    ("old", "new", "first", "width"),
    [
        (row("abc", "de", "fgh"), row("abc", "xy", "fgh"), 3, 2),
        (row("abc", "de", "fgh"), row("abX", "de", "fgh"), 0, 3),
        (row("abc", "de", "fgh"), row("abc", "de", "fgX"), 5, 3),
        (row("abcdefgh"), row("abc", "de", "fgh"), 0, 8),
        (row("abc", "de", "fgh"), row("abc", "d", "efgh"), 3, 5),
    ],
)
def test_the_stretch_that_changed_and_no_more(old: Row, new: Row, first: int, width: int) -> None:
    assert changed(old, new, 7) == Region(first, 7, width, 1)


def test_a_change_of_colour_alone_is_a_change() -> None:
    old, new = (Run("abc", "arm", False), Run("d", None, False)), (Run("abc", "arm", True), Run("d", None, False))
    assert changed(old, new, 0) == Region(0, 0, 3, 1)
