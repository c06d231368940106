"""What a terminal would show of the pixels it was sent: sixels read as the VT330/340 manual tells, kitty's graphics as its
protocol page does. Written for the tests alone; nothing of the program is used."""

import re
import zlib
from base64 import standard_b64decode
from dataclasses import dataclass

Colour = tuple[int, int, int]
Pixels = dict[tuple[int, int], Colour]
"""Pixels by column and row; what is see-through is not in it."""


@dataclass(frozen=True)
class Shown:
    """A picture on the screen: the column and row of its corner, from 0; its size, and its pixels. name: kitty's."""

    column: int
    row: int
    wide: int
    high: int
    pixels: Pixels
    name: int = 0


def sixels(sent: str) -> list[Shown]:
    """Every sixel picture in what was sent, with the place the cursor was put before it."""
    found = re.findall(r"\x1b\[(\d+);(\d+)H\x1bP([\d;]*)q([^\x1b]*)\x1b\\", sent)
    return [_sixel(int(row) - 1, int(column) - 1, parameters, data) for row, column, parameters, data in found]


def _sixel(row: int, column: int, parameters: str, data: str) -> Shown:
    assert parameters.split(";")[1] == "1", "what is not drawn must stay as it is"
    size = re.match(r'"1;1;(\d+);(\d+)', data)
    assert size
    wide, high = int(size[1]), int(size[2])
    colours: dict[int, Colour] = {}
    pixels: Pixels = {}
    x = band = colour = 0
    for token in re.findall(r"#[\d;]+|![0-9]+.|[$\-?-~]", data[size.end() :]):
        if token[0] == "#":
            number, *mixed = (int(n) for n in token[1:].split(";"))
            if mixed:
                assert mixed[0] == 2 and all(0 <= share <= 100 for share in mixed[1:])
                red, green, blue = (round(2.55 * share) for share in mixed[1:])
                colours[number] = red, green, blue
            colour = number
        elif token == "$":
            x = 0
        elif token == "-":
            x, band = 0, band + 6
        else:
            many = int(token[1:-1]) if token[0] == "!" else 1
            bits = ord(token[-1]) - 63
            for _ in range(many):
                pixels |= {(x, band + bit): colours[colour] for bit in range(6) if bits >> bit & 1}
                x += 1  # noqa: SIM113
    assert all(x < wide and y < high for x, y in pixels)
    return Shown(column, row, wide, high, pixels)


def kitty(sent: str) -> list[Shown]:
    """Every picture of kitty's graphics in what was sent, with the place the cursor was put before it."""
    found = []
    for row, column, first, rest in re.findall(
        r"\x1b\[(\d+);(\d+)H\x1b_G(a=T[^;]*;[^\x1b]*)\x1b\\((?:\x1b_Gm=[01];[^\x1b]*\x1b\\)*)", sent
    ):
        keys, _, data = first.partition(";")
        told = dict(key.split("=") for key in keys.split(","))
        chunks = [data, *re.findall(r"\x1b_Gm=[01];([^\x1b]*)\x1b", rest)]
        assert all(len(chunk) <= 4096 for chunk in chunks) and all(len(chunk) % 4 == 0 for chunk in chunks[:-1])
        assert (told["f"], told["o"], told["q"], told["C"]) == ("32", "z", "2", "1")
        raw, wide, high = zlib.decompress(standard_b64decode("".join(chunks))), int(told["s"]), int(told["v"])
        assert len(raw) == 4 * wide * high
        pixels = {
            (n % wide, n // wide): (raw[4 * n], raw[4 * n + 1], raw[4 * n + 2])
            for n in range(wide * high)
            if raw[4 * n + 3] > 127
        }
        found.append(Shown(int(column) - 1, int(row) - 1, wide, high, pixels, int(told["i"])))
    return found


def taken_away(sent: str) -> list[int]:
    """The names of the pictures that kitty is told to take away."""
    return [int(name) for name in re.findall(r"\x1b_Ga=d,d=I,i=(\d+)", sent)]
