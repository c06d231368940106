"""Least distance from the centre of a standard hole to the edge of the part.

Source: AISC 360-16 (Specification for Structural Steel Buildings), Table J3.4 (inch) and Table J3.4M (metric). A lesser
distance is allowed there only with the strength checked, and never under one bolt diameter without the engineer.
"""

from rules.measure.closeness import reaches
from rules.measure.quantity import INCH

INCH_ROWS = {
    1 / 2: 3 / 4, 5 / 8: 7 / 8, 3 / 4: 1.0, 7 / 8: 1 + 1 / 8, 1.0: 1 + 1 / 4, 1 + 1 / 8: 1 + 1 / 2, 1 + 1 / 4: 1 + 5 / 8,
}  # fmt: skip
"""Bolt diameter, in: least edge distance, in."""

METRIC_ROWS = {16.0: 22.0, 20.0: 26.0, 22.0: 28.0, 24.0: 30.0, 27.0: 34.0, 30.0: 38.0, 36.0: 46.0}
"""Bolt diameter, mm: least edge distance, mm."""

ABOVE = 1.25
"""Times the bolt diameter, above the last row."""

BELOW = 1.5
"""Times the bolt diameter, under 1/2 in, where the table has no row. Trade custom; it is also the table's first row."""

_ROWS = sorted({**{bolt * INCH: edge * INCH for bolt, edge in INCH_ROWS.items()}, **METRIC_ROWS}.items())


def least_edge_distance(bolt: float) -> float:
    """mm, for a bolt diameter in mm; between rows, that of the next larger bolt.

    >>> least_edge_distance(12.0), least_edge_distance(16.0), least_edge_distance(17.0), least_edge_distance(40.0)
    (18.0, 22.0, 25.4, 50.0)
    """
    if not reaches(bolt, _ROWS[0][0]):
        return BELOW * bolt
    return next((edge for row, edge in _ROWS if reaches(row, bolt)), ABOVE * bolt)
