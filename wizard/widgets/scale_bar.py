"""A bar of a round length under a picture, at the picture's own scale."""

from collections.abc import Callable
from itertools import takewhile

from rules.drawn.scene import Box, Polyline, Scene
from rules.measure.quantity import INCH, Units
from wizard.desk.drawing_styles import DrawingStyle
from wizard.pixels.painting import Panel
from wizard.widgets.dots import TWICE_AS_HIGH
from wizard.widgets.raster import Row, Run, draw

LENGTHS: dict[Units, tuple[float, ...]] = {
    "metric": (1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0),
    "inch": tuple(INCH * inches for inches in (0.125, 0.25, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0)),
}
"""mm."""
MOST_COLUMNS, SHARE = 16, 0.3
"""Columns of the bar, and how much of the width it may take."""


def scale_bar(
    mm_per_column: float,
    width: int,
    drawing: DrawingStyle,
    units: Units,
    figure: Callable[[float], str],
    aspect: float = TWICE_AS_HIGH,
) -> tuple[Row, Panel | None]:
    """The bar with its length, one row of at most `width` cells, and what of it is painted in pixels; the panel at its left.

    Empty where no round length is short enough.
    """
    room = mm_per_column * min(MOST_COLUMNS, SHARE * width)
    fitting = list(takewhile(lambda length: length <= room, LENGTHS[units]))
    if not fitting or mm_per_column <= 0.0:
        return (), None
    long = fitting[-1]
    words = f" {figure(long)}"
    columns = int(0.5 + long / mm_per_column) + 1  # it begins in the middle of a cell
    if columns + len(words) > width:
        return (), None
    high = aspect * mm_per_column
    low, up, start = 0.3 * high, 0.75 * high, 0.5 * mm_per_column
    points = ((start, up), (start, low), (start + long, low), (start + long, up))
    scene = Scene((Polyline("dimension", points),), Box(0.0, columns * mm_per_column, 0.0, high))
    drawn = draw(scene, columns, 1, drawing, figure, aspect).rows[0]
    panel = Panel(scene, 0, 0, columns, 1) if drawing == "pixels" else None
    return (*drawn, Run(words, "dimension", None)), panel
