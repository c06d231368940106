"""The ways a picture is drawn on a terminal: their names, what one dot is, and which suits a terminal."""

from collections.abc import Mapping
from typing import Literal, get_args

DrawingStyle = Literal["pixels", "braille", "blocks", "plain"]
DRAWINGS: tuple[DrawingStyle, ...] = get_args(DrawingStyle)
"""In the order one key goes through them, the finest first. Pixels need a terminal that said it can show them."""


def is_utf_8(encoding: str) -> bool:
    """Whether a coding, by any of its names, has every letter.

    >>> is_utf_8("UTF8"), is_utf_8("latin-1"), is_utf_8("")
    (True, False, False)
    """
    return encoding.lower().replace("-", "").replace("_", "") == "utf8"


def best_drawing(environment: Mapping[str, str], encoding: str) -> DrawingStyle:
    """The finest drawing this terminal can be expected to show.

    Plain ASCII where the output is not UTF-8; quadrant blocks on the Linux console, whose font has no braille; braille
    dots anywhere else.
    """
    if not is_utf_8(encoding):
        return "plain"
    return "blocks" if environment.get("TERM") == "linux" else "braille"


def next_drawing(drawing: DrawingStyle, *, pixels: bool = False) -> DrawingStyle:
    """The one after it; after the last, the first again. pixels: whether the terminal can show them.

    >>> next_drawing("plain"), next_drawing("plain", pixels=True)
    ('braille', 'pixels')
    """
    offered = DRAWINGS if pixels else DRAWINGS[1:]
    return offered[(offered.index(drawing) + 1) % len(offered)] if drawing in offered else offered[0]
