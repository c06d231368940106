"""The dots of a picture: cells divided into dots, lines set in them, areas cleared, and how many mm a dot is.

Dots are OR-ed cell by cell, so that lines that cross both stay whole. The scale is the same both ways. One part owns a
cell and gives it its colour.
"""

import math
from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise

from rules.drawn.patches import Patch
from rules.drawn.scene import Box, PartDrawn, Style
from rules.measure.outline import Point
from rules.measure.records import dataclass
from wizard.desk.drawing_styles import DrawingStyle

TWICE_AS_HIGH = 2.0
"""How much higher than wide a cell counts where nothing better is known."""


@dataclass(frozen=True, slots=True)
class _Grid:
    """How a cell is divided: dots across and down, a character for every dot pattern, and the dashes."""

    across: int
    down: int
    bits: tuple[tuple[int, ...], ...]
    characters: str
    dashes: dict[Style, tuple[bool, ...]]

    @property
    def cleared(self) -> tuple[bytes, ...]:
        """For each row of dots in a cell, what every dot pattern is without that row's dots."""
        return _cleared(self.bits)


@lru_cache(maxsize=3)
def _cleared(bits: tuple[tuple[int, ...], ...]) -> tuple[bytes, ...]:
    return tuple(bytes(pattern & ~sum(line) for pattern in range(256)) for line in bits)


_FINE: dict[Style, tuple[bool, ...]] = {
    "solid": (True,),
    "dashed": (True, True, True, False, False),
    "dotted": (True, False, False),
}
_COARSE: dict[Style, tuple[bool, ...]] = {
    "solid": (True,),
    "dashed": (True, True, True, False),
    "dotted": (True, False, False),
}
_GRIDS: dict[DrawingStyle, _Grid] = {
    "braille": _Grid(
        2, 4, ((1, 8), (2, 16), (4, 32), (64, 128)), " " + "".join(map(chr, range(0x2801, 0x2900))), _FINE
    ),
    "blocks": _Grid(2, 2, ((1, 2), (4, 8)), " ▘▝▀▖▌▞▛▗▚▐▜▄▙▟█", _COARSE),
    "plain": _Grid(1, 1, ((1,),), "", _COARSE),
}
_GRIDS["pixels"] = _GRIDS["braille"]  # what the words must keep clear of is found by dots

_WEAKEST_FIRST: tuple[PartDrawn, ...] = (
    "centre line",
    "ground",
    "dimension",
    "tyre",
    "rim",
    "rotor",
    "caliper",
    "hub",
    "plate",
    "frame",
    "shock",
    "arm",
    "tie rod",
    "lit",
    "axis",
    "pivot",
    "clash",
    "gap",
)
RANK: dict[PartDrawn, int] = {part: rank for rank, part in enumerate(_WEAKEST_FIRST, start=1)}
PART_OF_RANK: dict[int, PartDrawn | None] = {0: None, **{rank: part for part, rank in RANK.items()}}

_PLAIN_SIGNS: dict[PartDrawn, str] = {
    "rim": "#",
    "axis": "*",
    "pivot": "O",
    "ground": "=",
    "plate": "H",
    "tie rod": "~",
}
"""In plain ASCII a part with a sign of its own is drawn with it; the others with - | / and a backslash."""


class Canvas:
    """Cells that dots are set in. In plain ASCII a cell holds the sign itself in place of a dot pattern."""

    def __init__(
        self, width: int, height: int, frame: Box, drawing: DrawingStyle, aspect: float = TWICE_AS_HIGH
    ) -> None:
        """aspect: how much higher than wide a cell is."""
        self.width, self.height, self.grid = width, height, _GRIDS[drawing]
        self.plain = drawing == "plain"
        self.cells = [bytearray(width) for _ in range(height)]
        self.owners = [bytearray(width) for _ in range(height)]
        self.filled = [bytearray(width) for _ in range(height)]
        across, up = frame.right - frame.left, frame.top - frame.bottom
        self.scale_x = 1 / mm_per_dot(frame, width, height, drawing, aspect)
        self.scale_y = self.scale_x * self.grid.down / (aspect * self.grid.across)
        # Dot centres sit half a dot in, so the middle of the frame is the middle of the dots.
        self.origin_x = (width * self.grid.across - 1) / 2 - (frame.left + across / 2) * self.scale_x
        self.origin_y = (height * self.grid.down - 1) / 2 + (frame.bottom + up / 2) * self.scale_y

    @property
    def mm_per_column(self) -> float:
        """The scale, as mm to a column of cells."""
        return self.grid.across / self.scale_x

    def dot(self, point: Point) -> Point:
        """Where a point in mm lies, in dots from the upper left corner, not yet rounded."""
        return self.origin_x + point[0] * self.scale_x, self.origin_y - point[1] * self.scale_y

    def line(
        self, part: PartDrawn, start: Point, end: Point, pattern: Sequence[bool], phase: int = 0, sign: int = 0
    ) -> int:
        """Sets the dots of a line given in dots. Returns the phase of the dash pattern at its end.

        sign: in plain ASCII, the sign to use in place of the one that suits the line.
        """
        across, down = self.grid.across, self.grid.down
        clipped = _clip(start, end, self.width * across - 0.5, self.height * down - 0.5)
        if clipped is None:
            return phase
        (x, y), (end_x, end_y) = clipped
        steps = max(1, math.ceil(max(abs(end_x - x), abs(end_y - y))))
        step_x, step_y = (end_x - x) / steps, (end_y - y) / steps
        cells, owners, bits, length, rank = self.cells, self.owners, self.grid.bits, len(pattern), RANK[part]
        sign = sign or self._sign(part, step_x, step_y)
        x, y = x + 0.5, y + 0.5
        for step in range(steps + 1):
            if pattern[(phase + step) % length]:
                column, row = int(x), int(y)
                cell_row, cell_column = row // down, column // across
                owner = owners[cell_row]
                if sign == 0:
                    cells[cell_row][cell_column] |= bits[row % down][column % across]
                elif rank >= owner[cell_column]:
                    cells[cell_row][cell_column] = sign
                if rank > owner[cell_column]:
                    owner[cell_column] = rank
            x, y = x + step_x, y + step_y
        return (phase + steps) % length

    def _sign(self, part: PartDrawn, step_x: float, step_y: float) -> int:
        if not self.plain:
            return 0
        if part in _PLAIN_SIGNS:
            return ord(_PLAIN_SIGNS[part])
        if abs(step_y) < 0.3 * abs(step_x):
            return ord("-")
        if abs(step_x) < 0.3 * abs(step_y):
            return ord("|")
        return ord("\\") if step_x * step_y > 0 else ord("/")

    def characters(self, row: int) -> list[str]:
        """One row as characters."""
        if not self.plain:
            return list(map(self.grid.characters.__getitem__, self.cells[row]))
        cells = zip(self.cells[row], self.filled[row], strict=True)
        return [chr(sign) if sign else "." if fill else " " for sign, fill in cells]

    def polyline(self, part: PartDrawn, points: Sequence[Point], style: Style) -> None:
        """Lines from point to point, given in dots, with the dashes carried over the corners."""
        phase = 0
        for start, end in pairwise(points):
            phase = self.line(part, start, end, self.grid.dashes[style], phase)

    def cover(self, part: PartDrawn, area: Patch) -> None:
        """Clears the dots within an area, and gives its cells the part's background."""
        spans, holes = self._spans(area.outer), self._spans(area.hole)
        for y, (left, right) in spans.items():
            stretches = [(left, right)]
            if y in holes:
                stretches = [(left, min(right, holes[y][0])), (max(left, holes[y][1]), right)]
            for start, end in stretches:
                if end >= start:
                    self._clear(part, y, start, end)

    def _spans(self, outline: Sequence[Point]) -> dict[int, tuple[float, float]]:
        """From where to where a convex outline in mm reaches in each row of dots."""
        spans: dict[int, tuple[float, float]] = {}
        dots = [dot for dot in map(self.dot, outline) if all(map(math.isfinite, dot))]
        last = self.height * self.grid.down - 1
        for (x1, y1), (x2, y2) in zip(dots, [*dots[1:], *dots[:1]], strict=True):
            if y1 > y2:
                x1, y1, x2, y2 = x2, y2, x1, y1
            for y in range(max(0, math.ceil(y1)), min(last, math.floor(y2)) + 1):
                x = x1 if y1 == y2 else x1 + (y - y1) / (y2 - y1) * (x2 - x1)
                low, high = spans.get(y, (x, x))
                spans[y] = min(low, x, x2 if y1 == y2 else x), max(high, x, x2 if y1 == y2 else x)
        return spans

    def _clear(self, part: PartDrawn, y: int, start: float, end: float) -> None:
        across, down = self.grid.across, self.grid.down
        first, last = max(0, math.ceil(max(start, -1e6))), min(self.width * across - 1, math.floor(min(end, 1e6)))
        if last < first:
            return
        row, line = y // down, y % down
        cells = self.cells[row]
        if not self.plain:
            whole, after = -(-first // across), (last + 1) // across
            for dot in (*range(first, min(whole * across, last + 1)), *range(max(after * across, first), last + 1)):
                cells[dot // across] &= ~self.grid.bits[line][dot % across]
            if after > whole:
                cells[whole:after] = cells[whole:after].translate(self.grid.cleared[line])
        if line == down // 2:
            middle = (across - 1) / 2
            left = max(0, math.ceil((max(start, -1e6) - middle) / across))
            right = min(self.width - 1, math.floor((min(end, 1e6) - middle) / across))
            if right >= left:
                many = right + 1 - left
                self.filled[row][left : right + 1] = bytes([RANK[part]]) * many
                self.owners[row][left : right + 1] = bytes(many)
                if self.plain:
                    cells[left : right + 1] = bytes(many)


def mm_per_dot(frame: Box, width: int, height: int, drawing: DrawingStyle, aspect: float = TWICE_AS_HIGH) -> float:
    """How wide one dot is when the frame fills `width` by `height` cells, both at least 1. aspect: see `Canvas`."""
    across, up = frame.right - frame.left, frame.top - frame.bottom
    return max(across / width, up / (aspect * height), 1e-9) / _GRIDS[drawing].across


def _clip(start: Point, end: Point, right: float, bottom: float) -> tuple[Point, Point] | None:
    """What lies inside the window from (-0.5, -0.5), or None; also None for ends that are no real place."""
    # A dot belongs to the next cell from its far edge on, so that edge itself is outside.
    right, bottom = right - 1e-6, bottom - 1e-6
    (x, y), (end_x, end_y) = start, end
    if -0.5 <= x <= right and -0.5 <= y <= bottom and -0.5 <= end_x <= right and -0.5 <= end_y <= bottom:
        return start, end
    dx, dy = end_x - x, end_y - y
    # Beyond this a coordinate is off by whole dots; nan fails the comparison as well.
    if not all(abs(coordinate) < 1e13 for coordinate in (x, y, dx, dy)):
        return None
    enter, leave = 0.0, 1.0
    for towards, room in ((-dx, x + 0.5), (dx, right - x), (-dy, y + 0.5), (dy, bottom - y)):
        if towards == 0:
            if room < 0:
                return None
        elif towards < 0:
            enter = max(enter, room / towards)
        else:
            leave = min(leave, room / towards)
    if enter > leave:
        return None
    # Far ends lose digits: the result is held to the window.
    (first_x, first_y), (last_x, last_y) = (
        (min(max(x + share * dx, -0.5), right), min(max(y + share * dy, -0.5), bottom)) for share in (enter, leave)
    )
    return (first_x, first_y), (last_x, last_y)
