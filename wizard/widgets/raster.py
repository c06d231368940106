"""Flat shapes to characters: a scene in mm becomes rows of braille dots, quadrant blocks or plain ASCII.

One part owns a cell and gives it its colour. Labels come last, where `labels.py` finds room for them. Where a picture is
painted in pixels, the labels alone are characters.
"""

import math
from collections.abc import Callable, Sequence
from itertools import groupby

from rules.drawn.scene import Body, Circle, Dimension, Label, Line, Mark, PartDrawn, Polyline, Scene
from rules.measure.outline import Point
from rules.measure.records import NamedTuple, dataclass
from wizard.desk.drawing_styles import DrawingStyle
from wizard.widgets.dots import PART_OF_RANK, RANK, TWICE_AS_HIGH, Canvas
from wizard.widgets.labels import LabelWords, place


class Run(NamedTuple):
    """Characters side by side that share a part (None: nothing drawn), and the body whose area they stand on."""

    text: str
    part: PartDrawn | None
    filled: PartDrawn | None


Row = tuple[Run, ...]


@dataclass(frozen=True, slots=True)
class Picture:
    """Rows of runs, each row as wide as the picture.

    leaders: where a dotted line leads from words to what they name: row, first and last column.
    """

    rows: tuple[Row, ...]
    leaders: tuple[tuple[int, int, int], ...] = ()

    def text(self) -> str:
        """The picture without colour, a line a row, blanks at the end of a row removed."""
        return "\n".join("".join(run.text for run in row).rstrip() for row in self.rows)


def draw(
    scene: Scene,
    width: int,
    height: int,
    drawing: DrawingStyle,
    figure: Callable[[float], str],
    aspect: float = TWICE_AS_HIGH,
) -> Picture:
    """The scene in `width` by `height` character cells, each `aspect` times as high as wide.

    figure: writes a length in mm as words ("101.5 mm"). Nothing outside the cells is drawn, labels that find
    no room are left out, and coordinates that are not finite are passed over.
    """
    if width < 1 or height < 1:
        return Picture(())
    canvas = Canvas(width, height, scene.frame, drawing, aspect)
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
    texts, leaders = _labels(canvas, labels, figure)
    runs = _letters_alone if drawing == "pixels" else _runs
    return Picture(tuple(runs(canvas, row, texts[row]) for row in range(height)), tuple(leaders))


def _finite(canvas: Canvas, points: Sequence[Point]) -> list[Point]:
    return [dot for dot in map(canvas.dot, points) if all(map(math.isfinite, dot))]


def _ring(canvas: Canvas, centre: Point, radius: float) -> list[Point]:
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


def _mark(canvas: Canvas, mark: Mark) -> None:
    x, y = canvas.dot(mark.at)
    if canvas.plain:
        canvas.line(mark.part, (x, y), (x, y), (True,), sign=ord(_PLAIN_MARKS[mark.kind]))
        return
    flat = canvas.scale_y / canvas.scale_x
    for left, top, right, bottom in _MARKS[mark.kind]:
        canvas.line(mark.part, (x + left, y + top * flat), (x + right, y + bottom * flat), (True,))


def _dimension(canvas: Canvas, part: PartDrawn, start: Point, end: Point) -> None:
    canvas.line(part, start, end, (True,))
    length = math.hypot(end[0] - start[0], end[1] - start[1])
    if canvas.plain or not 0 < length < math.inf:
        return
    tick_x, tick_y = (end[1] - start[1]) / length * 1.5, (end[0] - start[0]) / length * 1.5
    for x, y in (start, end):
        canvas.line(part, (x - tick_x, y + tick_y), (x + tick_x, y - tick_y), (True,))


_Letters = dict[int, tuple[str, int]]
"""One row's letters by column, each with the rank of its part."""


def _labels(
    canvas: Canvas, labels: Sequence[Label], figure: Callable[[float], str]
) -> tuple[list[_Letters], list[tuple[int, int, int]]]:
    """The letters of the labels, row by row, and the leaders, which are drawn."""
    words = []
    leaders = []
    for label in filter(lambda one: one.text, labels):
        x, y = canvas.dot(label.at)
        column, row = (x + 0.5) / canvas.grid.across, (y + 0.5) / canvas.grid.down
        if 0 <= row < canvas.height and 0 <= column < canvas.width:
            shown = None if label.mm is None else figure(label.mm)
            cell = int(column), int(row)
            words.append(LabelWords(label.text, shown, *cell, label.side == "outboard", RANK[label.part]))
    texts: list[_Letters] = [{} for _ in range(canvas.height)]
    for placed in place(words, canvas.owners, canvas.width):
        for row, line in enumerate(placed.lines, start=placed.row):
            for column, character in enumerate(line, start=placed.column):
                texts[row][column] = character, placed.rank
        if placed.leader is not None:
            row, first, last = placed.leader
            leaders.append(placed.leader)
            middle = row * canvas.grid.down + canvas.grid.down // 2
            canvas.line(
                "dimension",
                (first * canvas.grid.across, middle),
                (last * canvas.grid.across + canvas.grid.across - 1, middle),
                canvas.grid.dashes["dotted"],
            )
    return texts, leaders


def _letters_alone(canvas: Canvas, row: int, texts: _Letters) -> Row:
    """The words of a row on the areas they stand on; all else is blank, for the pixels to fill."""
    cells = [(" ", 0, 0)] * canvas.width
    for column, (character, rank) in texts.items():
        cells[column] = character, rank, canvas.filled[row][column]
    runs = []
    for (rank, fill), group in groupby(cells, key=lambda cell: cell[1:]):
        runs.append(Run("".join(cell[0] for cell in group), PART_OF_RANK[rank], PART_OF_RANK[fill]))
    return tuple(runs)


def _runs(canvas: Canvas, row: int, texts: _Letters) -> Row:
    characters, owners, filled = canvas.characters(row), bytearray(canvas.owners[row]), canvas.filled[row]
    for column, (character, rank) in texts.items():
        characters[column] = character
        owners[column] = rank
    line, runs, start = "".join(characters), [], 0
    for (rank, fill), group in groupby(zip(owners, filled, strict=True)):
        end = start + sum(1 for _ in group)
        runs.append(Run(line[start:end], PART_OF_RANK[rank], PART_OF_RANK[fill]))
        start = end
    return tuple(runs)
