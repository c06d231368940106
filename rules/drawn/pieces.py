"""The flat pieces to cut: the hub plate and the caliper bracket blank, as outline, holes and mark lines in mm.

A plate is seen from the hub side (from outboard), origin at the spindle's centre, x to the right, y up. Front is to the
left on a left piece and to the right on a right piece, so the two are mirror images.
"""

import math
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from rules.measure.outline import (
    Outline,
    Point,
    Side,
    bracket_hole_places,
    hub_bolt_places,
    inside_distance,
    plate_outline,
)

SIDES: tuple[Side, ...] = ("left", "right")
PLATE_OUTLINE = ("plate.width", "plate.height", "plate.spindle_from_top", "plate.spindle_from_front")
"""Without these there is no plate to draw."""
BRACKET_OUTLINE = ("plate.bracket_width", "plate.bracket_height")

_TICK = 10.0
"""mm, length of a scribed tick. It says "here", not "this big"."""
_CLEAR = 2.0
"""mm between a hole's edge and a tick."""


@dataclass(frozen=True, slots=True)
class Hole:
    """A round hole to cut. what: its name on paper."""

    centre: Point
    diameter: float
    what: str


@dataclass(frozen=True, slots=True)
class MarkLine:
    """A line to scribe, not to cut."""

    start: Point
    end: Point
    what: str


@dataclass(frozen=True, slots=True)
class Stamp:
    """Letters to scribe on the piece, starting at a point."""

    at: Point
    words: str


@dataclass(frozen=True, slots=True)
class Profile:
    """One flat piece. left_out: what the sheet does not know yet, and so is not in it, in words."""

    outline: Outline
    holes: tuple[Hole, ...]
    marks: tuple[MarkLine, ...]
    stamp: Stamp | None = None
    left_out: tuple[str, ...] = ()


def missing(known: Mapping[str, object], wanted: Iterable[str]) -> tuple[str, ...]:
    """The names that are not known, in order."""
    return tuple(name for name in wanted if name not in known)


def hub_plate(known: Mapping[str, object], side: Side) -> Profile:
    """The hub plate. known: fields and values by name, with all of PLATE_OUTLINE in it."""
    width, height, top, front = (_number(known, name) for name in PLATE_OUTLINE)
    outline = plate_outline(width, height, top, front, _number(known, "plate.corner_radius"), side)
    left_out: list[str] = []
    holes: list[Hole] = []
    if "plate.bore" in known:
        holes.append(Hole((0.0, 0.0), _number(known, "plate.bore"), "centre bore"))
    else:
        left_out.append("centre bore: its diameter is not on the sheet")
    holes += _hub_bolt_holes(known, left_out)
    bore = _number(known, "plate.bore")
    marks = [*_spindle_ticks(outline, bore), *_pivot_marks(known, side, outline, left_out)]
    arrow, stamp = _front_arrow(side, outline, bore, holes)
    return Profile(outline, tuple(holes), (*marks, *arrow), stamp, tuple(left_out))


def bracket_blank(known: Mapping[str, object]) -> Profile:
    """The caliper bracket blank: square corners, to be trimmed to the mock-up. known holds all of BRACKET_OUTLINE."""
    width, height = (_number(known, name) for name in BRACKET_OUTLINE)
    wanted = ("plate.bracket_hole_spacing", "plate.bracket_hole_from_edge", "plate.bracket_hole_diameter")
    holes: tuple[Hole, ...] = ()
    left_out: tuple[str, ...] = ("caliper bolt holes: spacing, diameter or distance from the edge is not on the sheet",)
    if not missing(known, wanted):
        spacing, from_edge, diameter = (_number(known, name) for name in wanted)
        places = bracket_hole_places(width, height, spacing, from_edge)
        holes, left_out = tuple(Hole(place, diameter, "caliper bolt hole") for place in places), ()
    return Profile(Outline(0.0, width, 0.0, height), holes, (), left_out=left_out)


def _number(known: Mapping[str, object], name: str) -> float:
    found = known.get(name, 0.0)
    return float(found) if isinstance(found, int | float) else 0.0


def _hub_bolt_holes(known: Mapping[str, object], left_out: list[str]) -> list[Hole]:
    if known.get("hub.mount_bolts") != 4:
        left_out.append("hub bolt holes: their places are known for four bolts only; mark them off the hub")
        return []
    wanted = ("plate.hole_diameter", "hub.mount_width", "hub.mount_height")
    if missing(known, wanted):
        left_out.append("hub bolt holes: their diameter or spacing is not on the sheet; mark them off the hub")
        return []
    diameter, across, along = (_number(known, name) for name in wanted)
    return [Hole(place, diameter, "hub bolt hole") for place in hub_bolt_places(across, along)]


def _spindle_ticks(outline: Outline, bore: float) -> list[MarkLine]:
    """Level and plumb through the spindle, outside the bore."""
    start, end = bore / 2 + _CLEAR, bore / 2 + _CLEAR + _TICK
    ways = ((1, 0), (0, 1), (-1, 0), (0, -1))
    ticks = [((x * start, y * start), (x * end, y * end)) for x, y in ways]
    return [MarkLine(*tick, "spindle") for tick in ticks if inside_distance(tick[1], outline) > 0]


def _front_arrow(side: Side, outline: Outline, bore: float, holes: list[Hole]) -> tuple[list[MarkLine], Stamp | None]:
    """An arrow to the front, and L or R behind it, half way from the bore to the top edge; none where there is no room."""
    forward = -1.0 if side == "left" else 1.0
    y = (bore / 2 + outline.top) / 2
    tip, tail, barb = (forward * 2.5 * _TICK, y), (forward * _TICK, y), forward * 2.1 * _TICK
    ends = [tip, tail, (barb, y + 0.3 * _TICK), (barb, y - 0.3 * _TICK)]
    clear = all(math.dist(end, hole.centre) > hole.diameter / 2 + _CLEAR for end in ends for hole in holes)
    if not clear or any(inside_distance(end, outline) < _CLEAR for end in ends):
        return [], None
    arrow = [MarkLine(tip, end, "arrow to the front") for end in ends[1:]]
    return arrow, Stamp((-forward * _TICK if side == "left" else -1.6 * _TICK, y - _CLEAR), side[0].upper())


def _outside_bore(start: Point, end: Point, bore: float) -> list[tuple[Point, Point]]:
    """A straight line without the part of it that falls into the bore."""
    length = math.dist(start, end)
    way = ((end[0] - start[0]) / length, (end[1] - start[1]) / length)
    middle = -(start[0] * way[0] + start[1] * way[1])
    off = abs(start[0] * way[1] - start[1] * way[0])
    if off >= bore / 2:
        return [(start, end)]
    half = math.sqrt((bore / 2) ** 2 - off**2)
    edges = [
        (start[0] + (middle + turn * half) * way[0], start[1] + (middle + turn * half) * way[1]) for turn in (-1, 1)
    ]
    return [(start, edges[0]), (edges[1], end)]


def _pivot_marks(known: Mapping[str, object], side: Side, outline: Outline, left_out: list[str]) -> list[MarkLine]:
    """The line through both pivots as it falls square on the plate, and a tick across it at each pivot."""
    wanted = ("lower_pivot_ahead", "pivots.lower_below_spindle", "upper_pivot_ahead", "upper_above_spindle")
    if missing(known, wanted):
        left_out.append("pivot line: the pivots are not worked out yet")
        return []
    forward = -1.0 if side == "left" else 1.0
    lower = (forward * _number(known, wanted[0]), -_number(known, wanted[1]))
    upper = (forward * _number(known, wanted[2]), _number(known, wanted[3]))
    line = _clipped(lower, upper, outline)
    if line is None:
        left_out.append("pivot line: it does not cross the plate")
        return []
    marks = [MarkLine(*part, "pivot line") for part in _outside_bore(*line, _number(known, "plate.bore"))]
    for name, (x, y) in (("lower pivot", lower), ("upper pivot", upper)):
        ends = (x - _TICK / 2, y), (x + _TICK / 2, y)
        if all(inside_distance(end, outline) > 0 for end in ends):
            marks.append(MarkLine(*ends, name))
        else:
            left_out.append(f"{name} mark: it falls off the plate")
    return marks


def _clipped(start: Point, end: Point, outline: Outline) -> tuple[Point, Point] | None:
    """The part of a whole straight line that lies on the plate; None where it misses. The outline is convex."""
    length = math.dist(start, end)
    if length < 1e-6:
        return None
    way = ((end[0] - start[0]) / length, (end[1] - start[1]) / length)
    near = -(start[0] * way[0] + start[1] * way[1])  # the point of the line nearest the spindle

    def at(distance: float) -> Point:
        return start[0] + distance * way[0], start[1] + distance * way[1]

    if inside_distance(at(near), outline) <= 0:
        return None
    return at(_last_inside(at, near, -1, outline)), at(_last_inside(at, near, 1, outline))


def _last_inside(at: Callable[[float], Point], near: float, direction: int, outline: Outline) -> float:
    inside, outside = near, near + direction * 2 * (outline.right - outline.left + outline.top - outline.bottom)
    for _ in range(60):
        middle = (inside + outside) / 2
        inside, outside = (middle, outside) if inside_distance(at(middle), outline) >= 0 else (inside, middle)
    return inside
