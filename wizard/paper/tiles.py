"""How a large drawing is laid over several pages: rows from the top are letters, columns from the left are numbers."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import ceil, cos, radians, sin

from rules.drawn.full_size import Drawing
from rules.drawn.full_size.board import Segment, crossed
from rules.drawn.full_size.shapes import PaperArc, PaperBox, PaperCircle, PaperItem, PaperWords, Stroke, corners, points_on
from rules.measure.outline import Point

OVERLAP = 10.0
"""mm that two neighbouring pages both show."""


@dataclass(frozen=True, slots=True)
class Tile:
    """One page's part of the drawing. room: in the drawing's own mm. blank: nothing is drawn there, so it is not printed."""

    row: int
    column: int
    room: PaperBox
    blank: bool

    @property
    def name(self) -> str:
        """Such as B2: second row from the top, second column from the left."""
        return _name(self.row, self.column)


def _name(row: int, column: int) -> str:
    letters = ""
    while row >= 0:
        letters, row = chr(ord("A") + row % 26) + letters, row // 26 - 1
    return f"{letters}{column + 1}"


@dataclass(frozen=True)
class Tiling:
    """All tiles of a drawing, row by row from the top. width, height: of one tile, mm."""

    width: float
    height: float
    tiles: tuple[Tile, ...]

    @property
    def printed(self) -> tuple[Tile, ...]:
        """The tiles that show something."""
        return tuple(tile for tile in self.tiles if not tile.blank)

    @cached_property
    def _by_place(self) -> dict[tuple[int, int], Tile]:
        return {(tile.row, tile.column): tile for tile in self.tiles}

    def neighbour(self, tile: Tile, down: int, right: int) -> Tile | None:
        """The printed tile next to one, if there is one."""
        found = self._by_place.get((tile.row + down, tile.column + right))
        return found if found is not None and not found.blank else None

    def marks(self, tile: Tile) -> Iterator[Point]:
        """Where alignment marks stand on a tile: in the middle of what it shares with a printed neighbour."""
        room = tile.room
        for down, right in ((0, 1), (0, -1)):
            if self.neighbour(tile, down, right):
                x = room.right - OVERLAP / 2 if right > 0 else room.left + OVERLAP / 2
                yield from ((x, room.bottom + share * room.height) for share in (0.25, 0.75))
        for down, right in ((-1, 0), (1, 0)):
            if self.neighbour(tile, down, right):
                y = room.top - OVERLAP / 2 if down < 0 else room.bottom + OVERLAP / 2
                yield from ((room.left + share * room.width, y) for share in (0.25, 0.75))


def tiling(drawing: Drawing, width: float, height: float) -> Tiling:
    """Lay a drawing over tiles so many mm wide and high, evenly about its middle. No tiles for an empty drawing.

    width, height: more than the overlap.
    """
    frame = drawing.frame
    if not drawing.items:
        return Tiling(width, height, ())
    columns, rows = _count(frame.width, width), _count(frame.height, height)
    spare_x = columns * (width - OVERLAP) + OVERLAP - frame.width
    spare_y = rows * (height - OVERLAP) + OVERLAP - frame.height
    tiles = []
    for row in range(rows):
        for column in range(columns):
            left = frame.left - spare_x / 2 + column * (width - OVERLAP)
            top = frame.top + spare_y / 2 - row * (height - OVERLAP)
            room = PaperBox(left, top - height, left + width, top)
            tiles.append(Tile(row, column, room, not items_on(drawing, room)))
    return Tiling(width, height, tuple(tiles))


def _count(length: float, tile: float) -> int:
    return max(1, ceil((length - OVERLAP) / (tile - OVERLAP) - 1e-9))


def items_on(drawing: Drawing, room: PaperBox) -> tuple[PaperItem, ...]:
    """What of a drawing shows in a rectangle of it."""
    around = ((room.left, room.bottom), (room.right, room.bottom), (room.right, room.top), (room.left, room.top))
    return tuple(item for item in drawing.items if crossed(around, _segments(item)))


def _segments(item: PaperItem) -> Iterator[Segment]:
    match item:
        case Stroke():
            points = (*item.points, item.points[0]) if item.closed else item.points
        case PaperCircle(centre=(x, y), radius=radius):
            points = tuple(
                (x + radius * cos(radians(turn)), y + radius * sin(radians(turn))) for turn in range(0, 361, 3)
            )
        case PaperArc():
            points = points_on(item, 3.0)
        case PaperWords():
            one, two, three, four = corners(item)
            points = (one, two, three, four, one, three)
    for (x1, y1), (x2, y2) in pairwise(points):
        yield x1, y1, x2, y2
