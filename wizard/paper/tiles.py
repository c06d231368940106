"""How a large drawing is laid over several pages: rows from the top are letters, columns from the left are numbers."""

from collections.abc import Callable, Iterable
from functools import cache, cached_property
from math import ceil

from rules.drawn.full_size import Drawing
from rules.drawn.full_size.shapes import PaperBox, PaperItem, PaperWords
from rules.measure.outline import Point
from rules.measure.records import dataclass, replace
from wizard.paper.seams import holds, mark_places, touches, whole_words

OVERLAP = 10.0
"""mm that two neighbouring pages both show."""


@dataclass(frozen=True, slots=True)
class Tile:
    """One page's part of the drawing. room: in the drawing's own mm. blank: no line is drawn there, so it is not printed."""

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
    """All tiles of a drawing, row by row from the top. width, height: of one tile, mm. items: what is drawn on them."""

    width: float
    height: float
    tiles: tuple[Tile, ...]
    items: tuple[PaperItem, ...]

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

    def marks(self, tile: Tile) -> tuple[Point, ...]:
        """Where alignment marks stand on a tile: in the middle of what it shares with each printed neighbour."""
        room = tile.room
        found: list[Point] = []
        seams = (
            (0, 1, PaperBox(room.right - OVERLAP, room.bottom, room.right, room.top)),
            (0, -1, PaperBox(room.left, room.bottom, room.left + OVERLAP, room.top)),
            (-1, 0, PaperBox(room.left, room.top - OVERLAP, room.right, room.top)),
            (1, 0, PaperBox(room.left, room.bottom, room.right, room.bottom + OVERLAP)),
        )
        for down, right, seam in seams:
            if self.neighbour(tile, down, right):
                found += self._seam_marks(_to_a_hair(seam))
        return tuple(found)

    @cached_property
    def _seam_marks(self) -> Callable[[PaperBox], tuple[Point, ...]]:
        """Places of marks by seam: two neighbours must find the very same."""
        return cache(lambda seam: mark_places(self.items, seam))


def _to_a_hair(box: PaperBox) -> PaperBox:
    """Rounded, so that one seam reckoned from either side is one."""
    return PaperBox(*(round(side, 6) for side in (box.left, box.bottom, box.right, box.top)))


def tiling(drawing: Drawing, width: float, height: float) -> Tiling:
    """Lay a drawing over tiles so many mm wide and high, evenly about its middle. No tiles for an empty drawing.

    width, height: more than the overlap.
    """
    frame = drawing.frame
    if not drawing.items:
        return Tiling(width, height, (), ())
    columns, rows = _count(frame.width, width), _count(frame.height, height)
    spare_x = columns * (width - OVERLAP) + OVERLAP - frame.width
    spare_y = rows * (height - OVERLAP) + OVERLAP - frame.height
    lines = [item for item in drawing.items if not isinstance(item, PaperWords)]
    tiles = []
    for row in range(rows):
        for column in range(columns):
            left = frame.left - spare_x / 2 + column * (width - OVERLAP)
            top = frame.top + spare_y / 2 - row * (height - OVERLAP)
            room = PaperBox(left, top - height, left + width, top)
            tiles.append(Tile(row, column, room, not any(touches(room, item) for item in lines)))
    return Tiling(width, height, tuple(tiles), drawing.items)


def with_whole_words(tiling: Tiling) -> Tiling:
    """The same tiles; words that no printed one holds whole are moved onto one."""
    rooms = [tile.room for tile in tiling.printed]
    return replace(tiling, items=whole_words(tiling.items, rooms))


def _count(length: float, tile: float) -> int:
    return max(1, ceil((length - OVERLAP) / (tile - OVERLAP) - 1e-9))


def items_on(items: Iterable[PaperItem], room: PaperBox) -> tuple[PaperItem, ...]:
    """What of a drawing shows in a rectangle of it: every line that enters it, and words that stand whole in it."""
    return tuple(item for item in items if (holds(room, item) if isinstance(item, PaperWords) else touches(room, item)))
