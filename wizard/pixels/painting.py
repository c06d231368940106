"""A scene painted in pixels, with smooth edges: the shapes alone. The words over it stay the terminal's own."""

import math
from collections.abc import Iterator, Mapping, Sequence
from functools import partial
from itertools import pairwise
from typing import TYPE_CHECKING

from rules.drawn.patches import Patch, circle
from rules.drawn.scene import Body, Circle, Dimension, Item, Label, Line, Mark, PartDrawn, Polyline, Scene, Style
from rules.measure.outline import Point
from rules.measure.records import dataclass
from wizard.pixels.answers import Cell

if TYPE_CHECKING:
    from PIL.Image import Image

Ink = tuple[int, int, int]
"""Red, green and blue, 0 to 255."""
Block = tuple[int, int, int, int]
"""Cells: left, top, and to where, which is not in it."""
FAR = 1e5
"""px: nothing is drawn further away, nor what is not a number."""
LONGEST_DASHED = 2e4
"""px: a longer line is drawn without dashes; it would have too many."""
MOST_FINE = 1_000_000
"""px of a picture that is painted three times as fine as it is shown; a larger one twice."""
THIN, THICK = 1.3, 2.0
"""px of a line, and of one that is lit, in a clash or an axis."""
BOLD: frozenset[PartDrawn] = frozenset(("lit", "clash", "axis", "gap", "arm", "plate"))
DASHES: Mapping[Style, tuple[float, float]] = {"solid": (0.0, 0.0), "dashed": (7.0, 4.0), "dotted": (2.0, 3.5)}
"""px that are drawn, and left out."""
SMOOTH = 0.2
"""px that a circle may be off where it is painted."""
ARROW, PIVOT, CROSS = 8.0, 3.0, 5.0
"""px: length of an arrow head, radius of a pivot's mark, half the width of other marks."""


@dataclass(frozen=True, slots=True)
class Paints:
    """Colours: of a part's lines, of its areas, and of the page."""

    lines: Mapping[PartDrawn, Ink]
    areas: Mapping[PartDrawn, Ink]
    page: Ink

    def in_greys(self) -> "Paints":
        """The same for whoever asked for no colours."""
        lines, areas = ({part: _grey(ink) for part, ink in inks.items()} for inks in (self.lines, self.areas))
        return Paints(lines, areas, _grey(self.page))


def _grey(ink: Ink) -> Ink:
    red, green, blue = ink
    level = round(0.2126 * red + 0.7152 * green + 0.0722 * blue)
    return level, level, level


@dataclass(frozen=True, slots=True)
class Panel:
    """A scene in a block of cells of a widget. leaders: dotted lines beside words: row, first and last column.

    words: blocks of cells that hold words, which stay free.
    """

    scene: Scene
    left: int
    top: int
    width: int
    height: int
    leaders: tuple[tuple[int, int, int], ...] = ()


def painted(
    panels: Sequence[Panel], words: Sequence[Block], size: tuple[int, int], cell: Cell, paints: Paints
) -> "Image":
    """Panels in one picture of `size` cells, RGBA: opaque where they are, but see-through where the words stand."""
    from PIL import Image

    across, down = size[0] * cell[0], size[1] * cell[1]
    fine = 3 if across * down <= MOST_FINE else 2
    whole = Image.new("RGBA", (across, down), (*paints.page, 0))
    for panel in panels:
        whole.paste(_panel(panel, cell, paints, fine).convert("RGBA"), (panel.left * cell[0], panel.top * cell[1]))
    for left, top, right, bottom in words:
        whole.paste((*paints.page, 0), (left * cell[0], top * cell[1], right * cell[0], bottom * cell[1]))
    return whole


def _panel(panel: Panel, cell: Cell, paints: Paints, fine: int) -> "Image":
    brush = _Brush(panel, cell, paints, fine)
    for item in panel.scene.items:
        brush.item(item)
    for row, first, last in panel.leaders:
        level = (row + 0.5) * cell[1] * fine
        brush.line("dimension", [(first * cell[0] * fine, level), ((last + 1) * cell[0] * fine, level)], "dotted")
    return brush.image.reduce(fine)


class _Brush:
    """Paints items, `fine` times as large as they are shown."""

    def __init__(self, panel: Panel, cell: Cell, paints: Paints, fine: int) -> None:
        from PIL import Image, ImageDraw

        wide, high = panel.width * cell[0] * fine, panel.height * cell[1] * fine
        frame = panel.scene.frame
        across, up = frame.right - frame.left, frame.top - frame.bottom
        self.scale = 1 / max(across / wide, up / high, 1e-9)
        self.middle = (frame.left + across / 2, frame.bottom + up / 2)
        self.centre = (wide / 2, high / 2)
        self.fine, self.paints = fine, paints
        self.image = Image.new("RGB", (wide, high), paints.page)
        self.brush_on = ImageDraw.Draw
        self.draw = self.brush_on(self.image)
        self.new_mask = partial(Image.new, "L", color=0)

    def px(self, point: Point) -> Point:
        """Where a point in mm lies in the fine picture."""
        return (
            self.centre[0] + (point[0] - self.middle[0]) * self.scale,
            self.centre[1] - (point[1] - self.middle[1]) * self.scale,
        )

    def item(self, item: Item) -> None:
        """One item over those before it."""
        match item:
            case Line(part, start, end, style):
                self.line(part, [self.px(start), self.px(end)], style)
            case Body(part, _, areas, edges, style, covers):
                for area in areas if covers else ():
                    self.area(part, area)
                for edge in edges:
                    self.line(part, list(map(self.px, edge)), style)
            case Polyline(part, points, closed, style):
                self.line(part, [self.px(point) for point in (*points, *(points[:1] if closed else ()))], style)
            case Circle(part, centre, radius, style):
                self.line(part, _ring(self.px(centre), radius * self.scale), style)
            case Mark():
                self.mark(item)
            case Dimension(start, end, _, part):
                self.arrowed(part, self.px(start), self.px(end))
            case Label():
                pass

    def area(self, part: PartDrawn, area: Patch) -> None:
        """A filled area, with its hole left as it was."""
        outer, hole = (_near(map(self.px, outline)) for outline in (area.outer, area.hole))
        if len(outer) < 3:
            return
        colour = self.paints.areas.get(part, self.paints.page)
        if len(hole) < 3:
            self.draw.polygon(outer, fill=colour)
            return
        # Only as much as it fills is masked: a whole picture takes longer than all its lines.
        left, top = (max(0, math.floor(min(axis))) for axis in zip(*outer, strict=True))
        right, bottom = (math.ceil(max(axis)) + 1 for axis in zip(*outer, strict=True))
        right, bottom = min(right, self.image.width), min(bottom, self.image.height)
        if right <= left or bottom <= top:
            return
        mask = self.new_mask((right - left, bottom - top))
        brush = self.brush_on(mask)
        brush.polygon([(x - left, y - top) for x, y in outer], fill=255)
        brush.polygon([(x - left, y - top) for x, y in hole], fill=0)
        self.image.paste(colour, (left, top), mask)

    def line(self, part: PartDrawn, points: Sequence[Point], style: Style) -> None:
        """A line from point to point, given in fine px."""
        width = round((THICK if part in BOLD else THIN) * self.fine)
        for run in _dashed(_near(points), *(length * self.fine for length in DASHES[style])):
            self.draw.line(run, fill=self._ink(part), width=width, joint="curve")

    def mark(self, mark: Mark) -> None:
        """A point of interest."""
        x, y = self.px(mark.at)
        if not _is_near((x, y)):
            return
        ink = self._ink(mark.part)
        if mark.kind == "pivot":
            size = PIVOT * self.fine
            self.draw.ellipse((x - size, y - size, x + size, y + size), fill=ink)
            return
        size = CROSS * self.fine
        strokes = ((-1, -1, 1, 1), (-1, 1, 1, -1)) if mark.kind != "landing" else ((-1, -1, 0, 0), (1, -1, 0, 0))
        for left, top, right, bottom in strokes:
            ends = [(x + left * size, y + top * size), (x + right * size, y + bottom * size)]
            self.draw.line(ends, fill=ink, width=round(THICK * self.fine))

    def arrowed(self, part: PartDrawn, start: Point, end: Point) -> None:
        """A dimension line with an arrow head at each end; of a short one, ticks."""
        self.line(part, [start, end], "solid")
        long = math.dist(start, end)
        if not (_is_near(start) and _is_near(end)) or long == 0.0:
            return
        along = ((end[0] - start[0]) / long, (end[1] - start[1]) / long)
        size = ARROW * self.fine
        for (x, y), way in ((start, 1), (end, -1)):
            dx, dy = along[0] * way * size, along[1] * way * size
            if long > 2.5 * size:
                self.draw.polygon(
                    [(x, y), (x + dx - dy / 3, y + dy + dx / 3), (x + dx + dy / 3, y + dy - dx / 3)],
                    fill=self._ink(part),
                )
            else:
                self.line(part, [(x - dy / 2, y + dx / 2), (x + dy / 2, y - dx / 2)], "solid")

    def _ink(self, part: PartDrawn) -> Ink:
        return self.paints.lines.get(part, self.paints.page)


def _is_near(point: Point) -> bool:
    return all(abs(coordinate) < FAR for coordinate in point)


def _near(points: "Iterator[Point] | Sequence[Point] | map[Point]") -> list[Point]:
    """Those that can be drawn; one far away is brought to the edge of what can."""
    real = [point for point in points if all(map(math.isfinite, point))]
    return [(min(max(x, -FAR), FAR), min(max(y, -FAR), FAR)) for x, y in real]


def _ring(centre: Point, radius: float) -> Sequence[Point]:
    if not _is_near(centre) or not 0 < radius < FAR:
        return []
    corners = circle(centre, radius, SMOOTH)
    return [*corners, corners[0]]


def _dashed(points: Sequence[Point], drawn: float, free: float) -> Iterator[list[Point]]:
    """What of a line is drawn, dashes carried over its corners."""
    if len(points) < 2:
        return
    if drawn <= 0.0 or sum(math.dist(a, b) for a, b in pairwise(points)) > LONGEST_DASHED:
        yield list(points)
        return
    run, left, on = [points[0]], drawn, True
    for start, end in pairwise(points):
        long, done = math.dist(start, end), 0.0
        while long - done > left:
            done += left
            here = (start[0] + (end[0] - start[0]) * done / long, start[1] + (end[1] - start[1]) * done / long)
            if on:
                yield [*run, here]
            run, on = [here], not on
            left = drawn if on else free
        left -= long - done
        run.append(end)
    if on and len(run) > 1:
        yield run
