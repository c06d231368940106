"""Hexagon heads and nuts by their thread: width across flats, height of a head, height of a nut.

From memory: ISO 4014 (heads) and ISO 4032 (nuts) for metric threads, ASME B18.2.1 (hex cap screws and bolts) and ASME
B18.2.2 (hex nuts) for inch threads; greatest heights. Flange heads and lock nuts are larger: those want measuring.
"""

from math import cos, radians

from rules.measure.quantity import INCH
from rules.measure.records import dataclass

ISO = {
    5.0: (8.0, 3.5, 4.7), 6.0: (10.0, 4.0, 5.2), 8.0: (13.0, 5.3, 6.8), 10.0: (16.0, 6.4, 8.4), 12.0: (18.0, 7.5, 10.8),
    14.0: (21.0, 8.8, 12.8), 16.0: (24.0, 10.0, 14.8), 18.0: (27.0, 11.5, 15.8), 20.0: (30.0, 12.5, 18.0),
    22.0: (34.0, 14.0, 19.4), 24.0: (36.0, 15.0, 21.5), 27.0: (41.0, 17.0, 23.8), 30.0: (46.0, 18.7, 25.6),
    33.0: (50.0, 21.0, 28.7), 36.0: (55.0, 22.5, 31.0), 39.0: (60.0, 25.0, 33.4),
}  # fmt: skip
"""Thread, mm: across flats, head, nut, mm."""

ASME = {
    1 / 4: (7 / 16, 5 / 32, 7 / 32), 5 / 16: (1 / 2, 13 / 64, 17 / 64), 3 / 8: (9 / 16, 15 / 64, 21 / 64),
    7 / 16: (11 / 16, 9 / 32, 3 / 8), 1 / 2: (3 / 4, 5 / 16, 7 / 16), 9 / 16: (7 / 8, 23 / 64, 31 / 64),
    5 / 8: (15 / 16, 25 / 64, 35 / 64), 3 / 4: (1 + 1 / 8, 15 / 32, 41 / 64), 7 / 8: (1 + 5 / 16, 35 / 64, 3 / 4),
    1.0: (1 + 1 / 2, 39 / 64, 55 / 64), 1 + 1 / 8: (1 + 11 / 16, 11 / 16, 31 / 32),
    1 + 1 / 4: (1 + 7 / 8, 25 / 32, 1 + 1 / 16), 1 + 3 / 8: (2 + 1 / 16, 27 / 32, 1 + 11 / 64),
    1 + 1 / 2: (2 + 1 / 4, 15 / 16, 1 + 9 / 32),
}  # fmt: skip
"""Thread, in: across flats (of nut or head, whichever is more), head, nut, in."""

_ROWS = sorted({**ISO, **{size * INCH: tuple(part * INCH for part in row) for size, row in ASME.items()}}.items())


@dataclass(frozen=True, slots=True)
class Hexagon:
    """Sizes of a head and a nut, mm."""

    across_flats: float
    head: float
    nut: float

    @property
    def corner_radius(self) -> float:
        """From the middle to a corner: what it takes up when turned, mm."""
        return self.across_flats / 2 / cos(radians(30))


def hexagon_for(diameter: float) -> Hexagon:
    """Head and nut of a thread diameter, mm; between rows, those of the next larger; above the last, in its proportion.

    >>> hexagon_for(12.0)
    Hexagon(across_flats=18.0, head=7.5, nut=10.8)
    """
    for size, row in _ROWS:
        if size >= diameter - 0.01:
            return Hexagon(*row)
    size, row = _ROWS[-1]
    return Hexagon(*(part * diameter / size for part in row))
