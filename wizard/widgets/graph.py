"""Curves on the screen: axes with units and round ticks, and a mark at the present place."""

from collections.abc import Sequence
from itertools import pairwise
from math import ceil, floor, log10

from rules.drawn.moving.graphs import Curve
from rules.drawn.moving.scene import RIDE, TravelAndLock
from rules.drawn.scene import Box, Item, Line, Mark, Polyline, Scene
from rules.measure.outline import Point
from rules.measure.records import NamedTuple
from wizard.desk.drawing_styles import DrawingStyle
from wizard.pixels.painting import Panel
from wizard.widgets.dots import TWICE_AS_HIGH
from wizard.widgets.drawn import Drawn
from wizard.widgets.raster import Row, Run, draw

LEAST_SPAN = {"deg": 0.5, "mm": 2.0, "in": 0.1}
"""A curve flatter than this is drawn flat: what is smaller cannot be measured in a workshop."""
LEAST_WIDTH, LEAST_HEIGHT = 26, 5
ROWS_PER_TICK, COLUMNS_PER_TICK = 2, 7


class Scale(NamedTuple):
    """What an axis spans, and the round numbers in it that carry a label."""

    low: float
    high: float
    ticks: tuple[float, ...]

    @property
    def labels(self) -> tuple[str, ...]:
        """The ticks as text."""
        return tuple(f"{tick:g}" for tick in self.ticks)

    def share(self, number: float) -> float:
        """How far along the axis a number is, 0 to 1."""
        return (number - self.low) / (self.high - self.low)


def axis(numbers: Sequence[float], most: int, least_span: float = 0.0) -> Scale:
    """An axis that just holds the numbers, with as many round ticks as there are up to `most`, at least 2.

    Where the numbers differ by less than `least_span` it is that long.

    >>> axis((-80.0, 110.0), 5).ticks
    (-50.0, 0.0, 50.0, 100.0)
    """
    low, high = min(numbers), max(numbers)
    if high - low < least_span:
        middle = (low + high) / 2
        low, high = middle - least_span / 2, middle + least_span / 2
    step = 10.0 ** floor(log10((high - low) / most))
    while len(ticks := _ticks(low, high, step)) > max(2, most):
        step *= 2.5 if f"{step:e}"[0] == "2" else 2.0
    return Scale(low, high, ticks)


def _ticks(low: float, high: float, step: float) -> tuple[float, ...]:
    first, last = ceil(low / step - 1e-9), floor(high / step + 1e-9)
    return tuple(round(step * count, 9) + 0.0 for count in range(first, last + 1))


def graph_rows(
    graph: Curve,
    place: TravelAndLock,
    width: int,
    height: int,
    drawing: DrawingStyle,
    aspect: float = TWICE_AS_HIGH,
    panels: list[Panel] | None = None,
    corner: tuple[int, int] = (0, 0),
) -> tuple[Row, ...]:
    """Title with the numbers at the place, curve, and ticks along both axes, in `width` by `height` cells.

    panels: where what is to be painted in pixels is put. corner: the cell of the whole drawing at its upper left.
    """
    if width < LEAST_WIDTH or height < LEAST_HEIGHT:
        return _blank(width, height)
    points = (*graph.line, *graph.beside)
    down = height - 2
    up_axis = axis([up for _, up in points], down // ROWS_PER_TICK, LEAST_SPAN[graph.up_unit])
    margin = max(map(len, up_axis.labels)) + 1
    columns = width - margin
    across_axis = axis([x for x, _ in points], columns // COLUMNS_PER_TICK)
    plot = _plot(graph, place, across_axis, up_axis, columns, down, aspect)
    picture = draw(plot, columns, down, drawing, str, aspect)
    if panels is not None:
        panels.append(Panel(plot, corner[0] + margin, corner[1] + 1, columns, down))
    beside = _ticks_beside(up_axis, margin, down)
    title = _words(graph.told(place), width)
    body = ((Run(words, "dimension", None), *row) for words, row in zip(beside, picture.rows, strict=True))
    below = _words(" " * margin + _ticks_below(across_axis, columns, graph.across), width)
    return (title, *body, below)


def _words(text: str, width: int) -> Row:
    return (Run(text[:width].ljust(width), "dimension", None),)


def _blank(width: int, height: int) -> tuple[Row, ...]:
    return ((Run(" " * width, None, None),),) * height


def _plot(
    graph: Curve, place: TravelAndLock, across: Scale, up: Scale, columns: int, rows: int, aspect: float
) -> Scene:
    """The curves in cells from the lower left corner: a cell is 1 wide and `aspect` high, as the drawing takes it."""

    def cell(point: Point) -> Point:
        return across.share(point[0]) * (columns - 1) + 0.5, (up.share(point[1]) * (rows - 1) + 0.5) * aspect

    left, right, bottom, top = across.low, across.high, up.low, up.high
    mark, _ = graph.at(place)
    items: list[Item] = [
        Line("dimension", cell((left, bottom)), cell((left, top))),
        Line("dimension", cell((left, bottom)), cell((right, bottom))),
        Line("centre line", cell((mark[0], bottom)), cell((mark[0], top)), "dotted"),
    ]
    if bottom < 0 < top:
        items.append(Line("centre line", cell((left, 0.0)), cell((right, 0.0)), "dotted"))
    if graph.beside:
        items.append(Polyline("rim", tuple(map(cell, graph.beside)), style="dashed"))
    items += [Polyline("axis", tuple(map(cell, graph.line))), Mark("gap", cell(mark), "bearing")]
    return Scene(tuple(items), Box(0.0, columns, 0.0, aspect * rows))


def _ticks_beside(up: Scale, margin: int, rows: int) -> list[str]:
    """A label in the row of each tick, where the row is free."""
    found = [""] * rows
    for tick, label in zip(up.ticks, up.labels, strict=True):
        found[rows - 1 - round(up.share(tick) * (rows - 1))] = label
    return [label.rjust(margin - 1) + " " for label in found]


def _ticks_below(across: Scale, columns: int, words: str) -> str:
    """Labels under their ticks and what they measure at the end; a label that would touch it is left out."""
    line = list(words.rjust(columns))
    for tick, label in zip(across.ticks, across.labels, strict=True):
        start = max(0, round(across.share(tick) * (columns - 1)) - len(label) // 2)
        if start + len(label) < columns - len(words):
            line[start : start + len(label)] = label
    return "".join(line)


class Graphs(Drawn):
    """Several curves side by side and under each other, as large as they go."""

    def __init__(self) -> None:
        super().__init__()
        self._graphs: tuple[Curve, ...] = ()
        self._place = RIDE
        self._made: tuple[object, tuple[Row, ...]] = (None, ())
        self._panels: tuple[Panel, ...] = ()

    def show(self, graphs: tuple[Curve, ...], place: TravelAndLock) -> None:
        """Draw these curves with the mark at a place."""
        before, self._graphs, self._place = self._made[1], graphs, place
        self.repaint(before)

    def rows(self) -> tuple[Row, ...]:
        """The drawing, made again only when something it depends on has changed."""
        width, height = self.size
        key = (self._graphs, self._place, self.size, self.drawing, self.able)
        if self._made[0] != key:
            panels: list[Panel] = []
            rows = grid_rows(self._graphs, self._place, width, height, self.drawing, self.aspect, panels)
            self._made, self._panels = (key, rows), tuple(panels)
        return self._made[1]

    def panels(self) -> tuple[Panel, ...]:
        """The curves; titles and ticks stay letters."""
        self.rows()
        return self._panels


def grid_rows(
    graphs: Sequence[Curve],
    place: TravelAndLock,
    width: int,
    height: int,
    drawing: DrawingStyle,
    aspect: float = TWICE_AS_HIGH,
    panels: list[Panel] | None = None,
) -> tuple[Row, ...]:
    """The graphs in one column, or in two where they would be too flat in one. panels: see `graph_rows`."""
    if not graphs:
        return ()
    columns = 2 if height // len(graphs) < LEAST_HEIGHT + 2 and width >= 2 * LEAST_WIDTH + 1 else 1
    across = (width - columns + 1) // columns
    lines = [graphs[first : first + columns] for first in range(0, len(graphs), columns)]
    edges = [height * line // len(lines) for line in range(len(lines) + 1)]
    rows: list[Row] = []
    for line, (top, bottom) in zip(lines, pairwise(edges), strict=True):
        drawn = [
            graph_rows(
                graph, place, across, bottom - top, drawing, aspect, panels,
                (width - columns * across + across if number else 0, top),
            )
            for number, graph in enumerate(line)
        ]  # fmt: skip
        if len(drawn) < columns:
            drawn.append(_blank(across, bottom - top))
        spare = Run(" " * (width - columns * across), None, None)
        rows += [
            (*beside[0], spare, *(run for row in beside[1:] for run in row)) for beside in zip(*drawn, strict=True)
        ]
    return tuple(rows)
