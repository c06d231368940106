"""Where words may stand on a drawing: places along a dimension line and round a point, and what crosses them."""

from collections.abc import Iterable, Iterator
from math import atan2, cos, degrees, hypot, radians, sin

from rules.drawn.full_size.shapes import Align, PaperWords, words_width
from rules.measure.outline import Point

ARROW = 3.5
"""mm, length of an arrowhead."""
OVER_LINE = 3.0
"""mm from a dimension line to half the height of its figure."""
TAIL = 7.0
_ROUND = (30, 150, 60, 120, -30, -150, -60, -120, 0, 180, 15, 165, -15, -165, 45, 135, -45, -135)
"""Directions of leader lines in degrees, the usual ones first; none hugs an upright line."""
_REACHES = (7, 10, 14, 18, 23, 28, 34, 40, 48, 56, 66, 78, 92, 108)
"""mm that leader lines are long, the first that will do."""

Segment = tuple[float, float, float, float]
Corners = tuple[Point, Point, Point, Point]
"""The corners of a (turned) rectangle, in order."""


def meet(start: Point, end: Point, edge: Segment) -> bool:
    """Whether two straight lines cross.

    What lies on a line counts as left of it. So a line through a corner of an outline crosses one of its two sides there, to
    whichever side the last bit of a figure puts the corner; were touching no crossing, it would cross neither.
    """
    (ax, ay), (bx, by), (x1, y1, x2, y2) = start, end, edge
    across, up = bx - ax, by - ay
    # On which side of the one the ends of the other lie, and the other way round.
    if (across * (y1 - ay) >= up * (x1 - ax)) == (across * (y2 - ay) >= up * (x2 - ax)):
        return False
    across, up = x2 - x1, y2 - y1
    return (across * (ay - y1) >= up * (ax - x1)) != (across * (by - y1) >= up * (bx - x1))


def crossed_by(start: Point, end: Point, edges: Iterable[Segment]) -> Iterator[Segment]:
    """Those of these straight lines that a straight line crosses."""
    (ax, ay), (bx, by) = start, end
    left, right = (ax, bx) if ax < bx else (bx, ax)
    bottom, top = (ay, by) if ay < by else (by, ay)
    for edge in edges:
        x1, y1, x2, y2 = edge
        if (x1 < left and x2 < left) or (x1 > right and x2 > right):
            continue
        if (y1 < bottom and y2 < bottom) or (y1 > top and y2 > top):
            continue
        if meet(start, end, edge):
            yield edge


def crossed(room: Corners, lines: Iterable[Segment]) -> bool:
    """Whether any of these straight lines has a part inside a (turned) rectangle."""
    return crossing(room, lines) is not None


def crossing(room: Corners, lines: Iterable[Segment]) -> int | None:
    """The number, from 0, of the first of these straight lines with a part inside a (turned) rectangle; None of none."""
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = room
    left, right, bottom, top = min(ax, bx, cx, dx), max(ax, bx, cx, dx), min(ay, by, cy, dy), max(ay, by, cy, dy)
    for number, line in enumerate(lines):
        x1, y1, x2, y2 = line
        if (x1 < left and x2 < left) or (x1 > right and x2 > right):
            continue
        if (y1 < bottom and y2 < bottom) or (y1 > top and y2 > top):
            continue
        if _enters(line, room):
            return number
    return None


def _enters(line: Segment, room: Corners) -> bool:
    """Whether anything is left of a line after cutting it off at each side of the rectangle (Cyrus and Beck)."""
    x1, y1, x2, y2 = line
    enter, leave = 0.0, 1.0
    for (ax, ay), (bx, by) in zip(room, (*room[1:], room[0]), strict=True):
        nx, ny = by - ay, ax - bx
        towards = nx * (x2 - x1) + ny * (y2 - y1)
        inside = nx * (ax - x1) + ny * (ay - y1)
        if abs(towards) < 1e-12:
            if inside < 0:
                return False
        elif towards > 0:
            leave = min(leave, inside / towards)
        else:
            enter = max(enter, inside / towards)
    return enter < leave


def on_line(
    text: str, start: Point, end: Point, outside: bool
) -> Iterator[tuple[PaperWords, tuple[Point, Point] | None]]:
    """Places for a figure along its dimension line: the middle, then further out, then beyond its ends.

    With each place beyond an end goes the line that carries the figure there.
    """
    upright = abs(end[0] - start[0]) <= 1e-9
    if end[1] < start[1] if upright else end[0] < start[0]:
        start, end = end, start
    length = hypot(end[0] - start[0], end[1] - start[1])
    ux, uy = (end[0] - start[0]) / length, (end[1] - start[1]) / length
    angle = degrees(atan2(uy, ux))
    width = words_width(text)

    def at(along: float, align: Align) -> PaperWords:
        return PaperWords(
            (start[0] + along * ux - OVER_LINE * uy, start[1] + along * uy + OVER_LINE * ux), text, align, angle
        )

    slack = (length - width) / 2 - (0 if outside else ARROW * 0.5)
    if slack >= 0:
        steps = int(slack // 2)
        for step in range(steps + 1):
            yield at(length / 2 + 2 * step, "centre"), None
            yield at(length / 2 - 2 * step, "centre"), None
    tail = TAIL if outside else 0.0
    for far in range(0, 90, 3):
        for along, way in ((length + tail + far, 1.0), (-tail - far, -1.0)):
            words = at(along + way, "left" if way > 0 else "right")
            root = length if way > 0 else 0.0
            reach = along + way * (width + 1)
            yield (
                words,
                (
                    (start[0] + root * ux, start[1] + root * uy),
                    (start[0] + reach * ux, start[1] + reach * uy),
                ),
            )
    yield at(length / 2, "centre"), None


def spokes(feature: Point) -> Iterator[tuple[float, Point]]:
    """Directions round a point in radians, nearest places first, and where a leader line ends there."""
    for distance in _REACHES:
        for degree in _ROUND:
            angle = radians(degree)
            yield angle, (feature[0] + distance * cos(angle), feature[1] + distance * sin(angle))


def round_about(text: str, feature: Point) -> Iterator[tuple[PaperWords, Point]]:
    """Places for a label round a point, nearest first, and where its leader line ends."""
    for distance in _REACHES:
        for degree in _ROUND:
            elbow = (feature[0] + distance * cos(radians(degree)), feature[1] + distance * sin(radians(degree)))
            align: Align = "left" if abs(degree) < 90 else "right"
            beside = 0.8 if align == "left" else -0.8
            yield PaperWords((elbow[0] + beside, elbow[1]), text, align), elbow
