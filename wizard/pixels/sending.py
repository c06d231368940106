"""A painted picture as what a terminal is sent: in pieces, of which only those that changed are sent again.

Sixel graphics as in the manual of DEC's VT330/340, chapter 14: a band of six rows a line, a character a column, once for
each colour. Kitty's graphics as its protocol says: raw pixels, deflated and in base 64, placed where the cursor stands.
Libraries that do the same ask the terminal when they are loaded, and eat what is typed meanwhile.
"""

import os
import re
import zlib
from base64 import standard_b64encode
from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import TYPE_CHECKING

from rules.measure.records import dataclass, replace
from wizard.pixels.answers import Able

if TYPE_CHECKING:
    from PIL.Image import Image

TALL = 6
"""Rows of cells in a piece: whatever a cell measures, that is a whole number of sixel bands."""
FREE, MOST_COLOURS = 255, 48
"""The colour in a palette that stands for nothing; and how many a sixel picture is painted in at most: each costs time."""
CHUNK = 4096
"""Characters of base 64 in one of kitty's commands."""
_MASK = 2**32 - 1


@dataclass(frozen=True, slots=True)
class PicturePiece:
    """A part of a picture: its number in it, its block of cells, and its pixels, None where they are not on the screen."""

    number: int
    left: int
    top: int
    right: int
    bottom: int
    image: "Image | None"

    def without_image(self) -> "PicturePiece":
        """The same place, with nothing on the screen."""
        return replace(self, image=None)

    def meets(self, top: int, bottom: int) -> bool:
        """Whether it lies in one of these rows of cells, the last not included."""
        return self.top < bottom and top < self.bottom


def pieces(image: "Image", able: Able) -> Iterator[PicturePiece]:
    """An RGBA picture from the top down, in pieces no larger than the terminal takes."""
    wide, high = able.cell
    columns, rows = image.width // wide, image.height // high
    across = max(1, able.largest[0] // wide) if able.how == "sixel" else max(1, columns)
    number = 0
    for top in range(0, rows, TALL):
        for left in range(0, columns, across):
            right, bottom = min(columns, left + across), min(rows, top + TALL)
            yield PicturePiece(
                number, left, top, right, bottom, image.crop((left * wide, top * high, right * wide, bottom * high))
            )
            number += 1


def sent(piece: PicturePiece, able: Able, at: tuple[int, int], base: int, palette: "Image | None" = None) -> str:
    """What puts a piece on the screen.

    at: column and row of the picture's corner there. base: its pictures' first name. palette: the colours, for sixels.
    """
    if piece.image is None:
        return ""
    here = f"\x1b7\x1b[{at[1] + piece.top + 1};{at[0] + piece.left + 1}H"
    if palette is None:
        cells = (piece.right - piece.left, piece.bottom - piece.top)
        return f"{here}{_kitty(piece.image, _name(base, piece.number), cells)}\x1b8"
    return f"{here}{sixel(in_colours(piece.image, palette))}\x1b8"


def taken_away(numbers: Iterable[int], able: Able, base: int) -> str:
    """What takes pieces off the screen again. Sixels are overwritten by what is written in their place."""
    if able.how == "sixel":
        return ""
    return "".join(f"\x1b_Ga=d,d=I,i={_name(base, number)},q=2\x1b\\" for number in numbers)


def _name(base: int, number: int) -> int:
    """The terminal's name for a piece; other programs in the same window use other names."""
    return (os.getpid() * 65536 + base * 1024 + number) & _MASK or 1


def _kitty(image: "Image", name: int, cells: tuple[int, int]) -> str:
    """Nothing is answered, and the cursor stays. It lies over the cells, and words are seen through where it is free."""
    data = standard_b64encode(zlib.compress(image.tobytes(), 1)).decode()
    first = f"a=T,f=32,o=z,s={image.width},v={image.height},i={name},p=1,c={cells[0]},r={cells[1]},C=1,q=2,z=1,"
    chunks = [data[start : start + CHUNK] for start in range(0, len(data), CHUNK)]
    return "".join(
        f"\x1b_G{'' if number else first}m={int(number < len(chunks) - 1)};{chunk}\x1b\\"
        for number, chunk in enumerate(chunks)
    )


def palette(image: "Image", colours: int) -> "Image":
    """The commonest colours of an RGBA picture, those of its areas among them, as Pillow wants a palette."""
    from PIL import Image

    flat = image.convert("RGB")
    counted: list[tuple[int, tuple[int, int, int]]] = flat.getcolors(flat.width * flat.height) or []  # type: ignore[assignment]
    most = [colour for _, colour in sorted(counted, reverse=True)[: min(colours, MOST_COLOURS)]]
    held = Image.new("P", (1, 1))
    held.putpalette([part for colour in most for part in colour])
    return held


def in_colours(image: "Image", palette: "Image") -> "Image":
    """An RGBA picture in a palette's colours; what is see-through has the colour `FREE`."""
    from PIL.Image import Dither

    flat = image.convert("RGB").quantize(palette=palette, dither=Dither.NONE)
    flat.paste(FREE, mask=image.getchannel("A").point(lambda alpha: 255 * (alpha < 128)))
    return flat


def sixel(flat: "Image") -> str:
    """A picture with a palette as sixels. What has the colour `FREE` is left as it is on the screen."""
    palette, data, wide = flat.getpalette() or [], flat.tobytes(), flat.width
    said = [f'\x1bP0;1;0q"1;1;{wide};{flat.height}']
    for n in sorted(set(data) - {FREE}):
        said.append(f"#{n};2;" + ";".join(str(round(part / 2.55)) for part in palette[3 * n : 3 * n + 3]))
    for top in range(0, flat.height, 6):
        rows = [data[start : start + wide] for start in range(top * wide, min(top + 6, flat.height) * wide, wide)]
        lines = [f"#{colour}{_line(rows, colour)}" for colour in sorted({*b"".join(rows)} - {FREE})]
        said.append("$".join(lines) + "-")
    return "".join(said).removesuffix("-") + "\x1b\\"


def _line(rows: list[bytes], colour: int) -> str:
    """Which of six rows have the colour, a character a column, what stands more than three times counted."""
    bits = 0
    for row, line in enumerate(rows):
        if colour in line:
            bits |= int.from_bytes(line.translate(_only(colour, 1 << row)))
    text = bits.to_bytes(len(rows[0])).translate(_LETTERS).decode().rstrip("?")
    return _LONG.sub(lambda run: f"!{len(run[0])}{run[1]}", text)


_LETTERS = bytes(63 + n for n in range(64)) + bytes(192)
_LONG = re.compile(r"(.)\1{3,}")


@lru_cache(maxsize=6 * MOST_COLOURS)
def _only(colour: int, bit: int) -> bytes:
    table = bytearray(256)
    table[colour] = bit
    return bytes(table)
