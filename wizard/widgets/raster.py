"""Flat shapes to characters: a scene in mm becomes rows of braille dots, quadrant blocks or plain ASCII.

Dots are OR-ed cell by cell, so that lines that cross both stay whole. A cell counts as twice as high as wide,
and the scale is the same both ways. One part owns a cell and gives it its colour. Labels come last, where
`labels.py` finds room for them.
"""

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import groupby, pairwise
from typing import NamedTuple

from rules.drawn.patches import Patch
from rules.drawn.scene import Body, Box, Circle, Dimension, Label, Line, Mark, PartDrawn, Polyline, Scene, Style
from rules.measure.outline import Point
from wizard.desk.drawing_styles import DrawingStyle
from wizard.widgets.labels import LabelWords, place


class Run(NamedTuple):
    """Characters side by side that share a part (None: nothing drawn), and the body whose area they stand on."""

    text: str
    part: PartDrawn | None
    filled: PartDrawn | None


Row = tuple[Run, ...]


@dataclass(frozen=True, slots=True)
class Picture:
    """Rows of runs, each row as wide as the picture."""

    rows: tuple[Row, ...]

    def text(self) -> str:
        """The picture without colour, a line a row, blanks at the end of a row removed."""
        return "\n".join("".join(run.text for run in row).rstrip() for row in self.rows)


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
_RANK: dict[PartDrawn, int] = {part: rank for rank, part in enumerate(_WEAKEST_FIRST, start=1)}
_PART_OF_RANK: dict[int, PartDrawn | None] = {0: None, **{rank: part for part, rank in _RANK.items()}}

_PLAIN_SIGNS: dict[PartDrawn, str] = {
    "rim": "#",
    "axis": "*",
    "pivot": "O",
    "ground": "=",
    "plate": "H",
    "tie rod": "~",
}
"""In plain ASCII a part with a sign of its own is drawn with it; the others with - | / and a backslash."""


class _Canvas:
    """Cells that dots are set in. In plain ASCII a cell holds the sign itself in place of a dot pattern."""

    def __init__(self, width: int, height: int, frame: Box, drawing: DrawingStyle) -> None:
        self.width, self.height, self.grid = width, height, _GRIDS[drawing]
        self.plain = drawing == "plain"
        self.cells = [bytearray(width) for _ in range(height)]
        self.owners = [bytearray(width) for _ in range(height)]
        self.filled = [bytearray(width) for _ in range(height)]
        across, up = frame.right - frame.left, frame.top - frame.bottom
        self.scale_x = 1 / mm_per_dot(frame, width, height, drawing)
        self.scale_y = self.scale_x * self.grid.down / (2 * self.grid.across)
        # Dot centres sit half a dot in, so the middle of the frame is the middle of the dots.
        self.origin_x = (width * self.grid.across - 1) / 2 - (frame.left + across / 2) * self.scale_x
        self.origin_y = (height * self.grid.down - 1) / 2 + (frame.bottom + up / 2) * self.scale_y

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
        cells, owners, bits, length, rank = self.cells, self.owners, self.grid.bits, len(pattern), _RANK[part]
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
                self.filled[row][left : right + 1] = bytes([_RANK[part]]) * many
                self.owners[row][left : right + 1] = bytes(many)
                if self.plain:
                    cells[left : right + 1] = bytes(many)


def mm_per_dot(frame: Box, width: int, height: int, drawing: DrawingStyle) -> float:
    """How wide one dot is when the frame fills `width` by `height` cells (both at least 1)."""
    across, up = frame.right - frame.left, frame.top - frame.bottom
    return max(across / width, up / (2 * height), 1e-9) / _GRIDS[drawing].across


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


def draw(scene: Scene, width: int, height: int, drawing: DrawingStyle, figure: Callable[[float], str]) -> Picture:
    """The scene in `width` by `height` character cells.

    figure: writes a length in mm as words ("101.5 mm"). Nothing outside the cells is drawn, labels that find
    no room are left out, and coordinates that are not finite are passed over.
    """
    if width < 1 or height < 1:
        return Picture(())
    canvas = _Canvas(width, height, scene.frame, drawing)
    labels: list[Label] = []
    for item in scene.items:
        match item:
            case Line(part, start, end, style):
                canvas.polyline(part, (canvas.dot(start), canvas.dot(end)), style)
            case Body(part, _, areas, edges, style, covers):
                for area in areas if covers else ():
                    canvas.cover(part, area)
                for edge in edges:
                    canvas.polyline(part, _finite(canvas, edge), style)
            case Polyline(part, points, closed, style):
                dots = _finite(canvas, points)
                canvas.polyline(part, [*dots, *dots[:1]] if closed else dots, style)
            case Circle(part, centre, radius, style):
                canvas.polyline(part, _ring(canvas, centre, radius), style)
            case Mark():
                _mark(canvas, item)
            case Dimension(start, end, label, part):
                _dimension(canvas, part, canvas.dot(start), canvas.dot(end))
                labels.append(label)
            case Label():
                labels.append(item)
    texts = _labels(canvas, labels, figure)
    return Picture(tuple(_runs(canvas, row, texts[row]) for row in range(height)))


def _finite(canvas: _Canvas, points: Sequence[Point]) -> list[Point]:
    return [dot for dot in map(canvas.dot, points) if all(map(math.isfinite, dot))]


def _ring(canvas: _Canvas, centre: Point, radius: float) -> list[Point]:
    size = radius * canvas.scale_x
    # In plain ASCII a ring smaller than a few signs is only a blot beside its mark.
    if not math.isfinite(size) or (canvas.plain and size < 1.5):
        return []
    corners = min(90, max(8, math.ceil(2 * size)))
    turns = [2 * math.pi * corner / corners for corner in range(corners + 1)]
    y, z = centre
    return [canvas.dot((y + radius * math.cos(turn), z + radius * math.sin(turn))) for turn in turns]


_MARKS: dict[str, tuple[tuple[int, int, int, int], ...]] = {
    "pivot": ((0, 0, 0, 0),),
    "bearing": ((-1, -1, 1, 1), (-1, 1, 1, -1)),
    "landing": ((-3, -3, 0, 0), (3, -3, 0, 0)),
    "gap": ((-3, -3, 3, 3), (-3, 3, 3, -3)),
}
"""Strokes in dots from the point: across and down, twice each."""
_PLAIN_MARKS = {"pivot": "O", "bearing": "+", "landing": "V", "gap": "X"}


def _mark(canvas: _Canvas, mark: Mark) -> None:
    x, y = canvas.dot(mark.at)
    if canvas.plain:
        canvas.line(mark.part, (x, y), (x, y), (True,), sign=ord(_PLAIN_MARKS[mark.kind]))
        return
    flat = canvas.scale_y / canvas.scale_x
    for left, top, right, bottom in _MARKS[mark.kind]:
        canvas.line(mark.part, (x + left, y + top * flat), (x + right, y + bottom * flat), (True,))


def _dimension(canvas: _Canvas, part: PartDrawn, start: Point, end: Point) -> None:
    canvas.line(part, start, end, (True,))
    length = math.hypot(end[0] - start[0], end[1] - start[1])
    if canvas.plain or not 0 < length < math.inf:
        return
    tick_x, tick_y = (end[1] - start[1]) / length * 1.5, (end[0] - start[0]) / length * 1.5
    for x, y in (start, end):
        canvas.line(part, (x - tick_x, y + tick_y), (x + tick_x, y - tick_y), (True,))


_Letters = dict[int, tuple[str, int]]
"""One row's letters by column, each with the rank of its part."""


def _labels(canvas: _Canvas, labels: Sequence[Label], figure: Callable[[float], str]) -> list[_Letters]:
    """The letters of the labels, row by row."""
    words = []
    for label in labels:
        x, y = canvas.dot(label.at)
        column, row = (x + 0.5) / canvas.grid.across, (y + 0.5) / canvas.grid.down
        if 0 <= row < canvas.height and 0 <= column < canvas.width:
            shown = None if label.mm is None else figure(label.mm)
            cell = int(column), int(row)
            words.append(LabelWords(label.text, shown, *cell, label.side == "outboard", _RANK[label.part]))
    texts: list[_Letters] = [{} for _ in range(canvas.height)]
    for placed in place(words, canvas.owners, canvas.width):
        for row, line in enumerate(placed.lines, start=placed.row):
            for column, character in enumerate(line, start=placed.column):
                texts[row][column] = character, placed.rank
        if placed.leader is not None:
            row, first, last = placed.leader
            middle = row * canvas.grid.down + canvas.grid.down // 2
            canvas.line(
                "dimension",
                (first * canvas.grid.across, middle),
                (last * canvas.grid.across + canvas.grid.across - 1, middle),
                canvas.grid.dashes["dotted"],
            )
    return texts


def _runs(canvas: _Canvas, row: int, texts: _Letters) -> Row:
    characters, owners, filled = canvas.characters(row), bytearray(canvas.owners[row]), canvas.filled[row]
    for column, (character, rank) in texts.items():
        characters[column] = character
        owners[column] = rank
    line, runs, start = "".join(characters), [], 0
    for (rank, fill), group in groupby(zip(owners, filled, strict=True)):
        end = start + sum(1 for _ in group)
        runs.append(Run(line[start:end], _PART_OF_RANK[rank], _PART_OF_RANK[fill]))
        start = end
    return tuple(runs)
