"""Outlines of flat pieces and the places of holes in them: plain shapes in mm, with no sheet in them.

A plate is seen from the hub side (from outboard), origin at the wheel centre, x to the right, y up. Front is to the
left on a left piece and to the right on a right piece, so the two are mirror images.
"""

import math
from typing import Literal

from rules.measure.belt import Point as Point
from rules.measure.belt import Round, belt_distance, belt_ends, belt_points
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import NamedTuple, dataclass

Side = Literal["left", "right"]

_QUARTER_ARC = math.tan(math.pi / 8)
"""Bulge of a quarter circle: the tangent of a quarter of its angle."""

_TOUCHING = 1e-6
"""mm: points closer than this are one."""


@dataclass(frozen=True, slots=True)
class Outline:
    """A rectangle with rounded corners. corner_radius: 0 to half of the shorter side.

    rounds: where the outline is a belt round discs instead, those discs; the rectangle is then the one round the belt.
    """

    left: float
    right: float
    bottom: float
    top: float
    corner_radius: float = 0.0
    rounds: tuple[Round, ...] = ()


class Narrowed(NamedTuple):
    """A rounded end that the sides run in to: its width, how far its middle is ahead of the wheel centre, and how far from that
    the full width goes. mm."""

    width: float
    ahead: float
    full_to: float


class PlateEnds(NamedTuple):
    """How the plate ends; None where it keeps its full width with round corners."""

    upper: Narrowed | None = None
    lower: Narrowed | None = None

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        ends = {"upper": self.upper, "lower": self.lower}
        wide = (f"{name} end {show(end.width, 'mm', units)} wide" for name, end in ends.items() if end)
        return "; ".join(wide) or "full width"


FULL_WIDTH = PlateEnds()


class PlainHole(NamedTuple):
    """A round hole on the upright line through the wheel centre. above: its middle over the wheel centre, minus below it. mm."""

    above: float
    diameter: float


class LighterBy(NamedTuple):
    """Holes that only take weight out of a plate."""

    holes: tuple[PlainHole, ...] = ()

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        holes = (f"{show(hole.diameter, 'mm', units)} at {show(hole.above, 'mm', units)}" for hole in self.holes)
        return ", ".join(holes) or "none"


UNLIGHTENED = LighterBy()


def inside_distance(point: Point, outline: Outline) -> float:
    """From a point to the nearest edge, mm; negative outside.

    >>> inside_distance((0.0, 0.0), Outline(-50.0, 50.0, -80.0, 60.0, 10.0))
    50.0
    """
    if outline.rounds:
        return belt_distance(point, outline.rounds)
    middle = ((outline.left + outline.right) / 2, (outline.bottom + outline.top) / 2)
    half = ((outline.right - outline.left) / 2, (outline.top - outline.bottom) / 2)
    across, along = (abs(point[i] - middle[i]) - half[i] + outline.corner_radius for i in (0, 1))
    beyond = math.hypot(max(across, 0.0), max(along, 0.0))
    return outline.corner_radius - beyond - min(max(across, along), 0.0)


def plate_outline(
    width: float,
    height: float,
    spindle_from_top: float,
    spindle_from_front: float,
    corner_radius: float,
    side: Side = "left",
    ends: PlateEnds = FULL_WIDTH,
) -> Outline:
    """The plate's outline about the wheel centre, seen from the hub side. All in mm.

    A corner radius the sides have no room for (a check says so) is drawn as large as they have room for; so is a narrowed end.
    """
    radius = min(corner_radius, width / 2, height / 2)
    front, rear = -spindle_from_front, width - spindle_from_front
    left, right = (front, rear) if side == "left" else (-rear, -front)
    whole = Outline(left, right, spindle_from_top - height, spindle_from_top, radius)
    if not (ends.upper or ends.lower):
        return whole
    ahead = -1.0 if side == "left" else 1.0
    discs = [disc for way, end in ((1.0, ends.upper), (-1.0, ends.lower)) for disc in _end(whole, end, way, ahead)]
    return Outline(left, right, whole.bottom, whole.top, radius, tuple(discs))


def _end(whole: Outline, end: Narrowed | None, way: float, ahead: float) -> list[Round]:
    """What the belt runs round at the upper end, way 1, or the lower one, way -1: two corners, and a rounded end."""
    r = whole.corner_radius
    edge = way * whole.top if way > 0 else way * whole.bottom  # from the wheel centre to the end's edge
    level = edge - r if end is None else max(min(end.full_to, edge - r), -min(whole.top, -whole.bottom))
    found = [Round(x, way * level, r) for x in (whole.left + r, whole.right - r)]
    if end is not None:
        half = min(end.width, whole.right - whole.left) / 2
        x = min(max(ahead * end.ahead, whole.left + half), whole.right - half)
        found.append(Round(x, way * (edge - half), half))
    return found


def ends_at(outline: Outline, level: float) -> tuple[float, float] | None:
    """Left and right edge of an outline at a height, mm; None above and below it.

    >>> ends_at(Outline(-50.0, 60.0, -80.0, 60.0, 10.0), 60.0)
    (-40.0, 50.0)
    """
    return belt_ends(outline.rounds or corners_of(outline), level)


def corners_of(outline: Outline) -> tuple[Round, ...]:
    """The discs in the four corners of a rectangle, of radius 0 where they are square."""
    r = outline.corner_radius
    ys = (outline.bottom + r, outline.top - r)
    return tuple(Round(x, y, r) for x in (outline.left + r, outline.right - r) for y in ys)


def circle_places(count: int, diameter: float, turned: float) -> tuple[Point, ...]:
    """Bolts evenly on a circle about the wheel's axis, (ahead, up) in mm. turned: rad of the first from straight up, plus ahead.

    >>> [tuple(round(part, 6) for part in place) for place in circle_places(4, 100.0, 0.0)]
    [(0.0, 50.0), (50.0, 0.0), (0.0, -50.0), (-50.0, -0.0)]
    """
    turns = (turned + 2 * math.pi * bolt / count for bolt in range(count))
    return tuple((diameter / 2 * math.sin(turn), diameter / 2 * math.cos(turn)) for turn in turns)


def hub_bolt_places(mount_width: float, mount_height: float) -> tuple[Point, ...]:
    """The four hub bolts about the wheel centre, mm: a rectangle."""
    x, y = mount_width / 2, mount_height / 2
    return (-x, y), (x, y), (x, -y), (-x, -y)


def bracket_hole_places(width: float, height: float, spacing: float, from_edge: float) -> tuple[Point, Point]:
    """The two caliper bolts in the middle of the blank's length, mm; origin at its lower left corner."""
    y = height - from_edge
    return ((width - spacing) / 2, y), ((width + spacing) / 2, y)


def outline_points(outline: Outline) -> list[tuple[float, float, float]]:
    """The closed outline, anticlockwise: x, y in mm, and the bulge of what leads to the next point."""
    if outline.rounds:
        return belt_points(outline.rounds)
    radius = outline.corner_radius
    around = (
        ((outline.right, outline.top), (0, -1), (-1, 0)),
        ((outline.left, outline.top), (1, 0), (0, -1)),
        ((outline.left, outline.bottom), (0, 1), (1, 0)),
        ((outline.right, outline.bottom), (-1, 0), (0, 1)),
    )
    if radius <= 0:
        return [(*corner, 0.0) for corner, _, _ in around]
    points: list[tuple[float, float, float]] = []
    for (x, y), before, after in around:
        points.append((x + radius * before[0], y + radius * before[1], _QUARTER_ARC))
        points.append((x + radius * after[0], y + radius * after[1], 0.0))
    # Where an arc begins as the last one ends there is no straight between them.
    return [
        point
        for point, following in zip(points, (*points[1:], points[0]), strict=True)
        if point[2] or math.dist(point[:2], following[:2]) > _TOUCHING
    ]
