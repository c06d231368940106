"""The flat pieces to cut: the hub plate and the caliper bracket blank, as outline, holes and mark lines in mm.

A plate is seen from the hub side (from outboard), origin at the wheel centre, x to the right, y up. Front is to the
left on a left piece and to the right on a right piece, so the two are mirror images.
"""

import math
from collections.abc import Callable

from rules.corner.slots import PlateSlots
from rules.judging.reader import Known, reads
from rules.measure.outline import (
    LighterBy,
    Outline,
    PlateEnds,
    Point,
    Side,
    bracket_hole_places,
    inside_distance,
    outline_points,
    plate_outline,
)
from rules.measure.records import dataclass, replace
from rules.measure.units import Mm
from rules.values.wheel_end.hub_bolts import BoltPlaces

SIDES: tuple[Side, ...] = ("left", "right")

TICK = 10.0
"""mm, length of a scribed tick. It says "here", not "this big"."""
HUB_BOLT_HOLE, CALIPER_BOLT_HOLE = "hub bolt hole", "caliper bolt hole"
PIVOT_BOLT_HOLE, TIE_ROD_HOLE = "pivot bolt hole", "tie-rod hole"
CENTRE_BORE = "centre bore"
LIGHTENING = "lightening hole"
DRILLED = frozenset((HUB_BOLT_HOLE, CALIPER_BOLT_HOLE, PIVOT_BOLT_HOLE, TIE_ROD_HOLE))
"""Holes a bolt fits: they may be cut under size and drilled after."""
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
class SlotHole:
    """A slot with square ends to cut. corners: anticlockwise. turned: degrees of its length from level, to the left."""

    centre: Point
    length: float
    width: float
    turned: float
    corners: tuple[Point, ...]
    what: str


TO_THE_FRONT = "arrow to the front"


@dataclass(frozen=True, slots=True)
class Stamp:
    """Letters to scribe on the piece, starting at a point."""

    at: Point
    words: str


@dataclass(frozen=True, slots=True)
class Profile:
    """One flat piece. left_out: what the sheet does not know yet, and so is not in it, in words.

    edge: the closed outline where it is no rectangle with rounded corners, as `outline_points` gives one; `outline` is then
    the rectangle round it. radius: of that edge's round end, 0 for none.
    """

    outline: Outline
    holes: tuple[Hole, ...]
    marks: tuple[MarkLine, ...]
    stamp: Stamp | None = None
    left_out: tuple[str, ...] = ()
    edge: tuple[tuple[float, float, float], ...] = ()
    radius: float = 0.0
    slots: tuple[SlotHole, ...] = ()

    @property
    def points(self) -> list[tuple[float, float, float]]:
        """The closed outline, anticlockwise: x, y in mm, and the bulge of what leads to the next point."""
        return list(self.edge) or outline_points(self.outline)


def under_size(profile: Profile, less: float) -> Profile:
    """A piece as it is cut where its bolt holes are drilled after: so many mm smaller in diameter, and never nought."""
    holes = tuple(
        replace(hole, diameter=max(hole.diameter - less, 1.0)) if hole.what in DRILLED else hole
        for hole in profile.holes
    )
    return replace(profile, holes=holes)


def hub_plate(known: Known, side: Side) -> Profile | None:
    """The hub plate; None where `outline_of_plate` is not known."""
    outline = outline_of_plate(known, side=side)
    if outline is None:
        return None
    left_out: list[str] = []
    holes: list[Hole] = []
    bore = _bore(known)
    if bore is not None:
        holes.append(Hole((0.0, 0.0), bore, CENTRE_BORE))
    else:
        left_out.append(f"{CENTRE_BORE}: its diameter is not on the sheet")
    holes += _hub_bolt_holes(known, side=side, left_out=left_out)
    lighter = _lightening(known)
    if lighter is None:
        left_out.append("lightening hole: its diameter or its place is not on the sheet")
    holes += lighter or []
    marks = [*_spindle_ticks(outline, bore or 0.0), *_pivot_marks(known, side, outline, bore or 0.0, left_out)]
    arrow, stamp = _front_arrow(side, outline, bore or 0.0, holes)
    found = _slots(known, side=side)
    if found is None:
        left_out.append("slots for tabs: the pieces that stand in them are not all on the sheet")
    slots = tuple(found or ())
    return Profile(outline, tuple(holes), (*marks, *arrow), stamp, tuple(left_out), slots=slots)


@reads
def _slots(plate_slots: PlateSlots, *, side: Side) -> list[SlotHole] | None:
    """As seen from the hub side: x ahead is to the left on a left plate."""
    found = []
    for slot in plate_slots.slots:
        corners, (x, y), turned = slot.corners, slot.at, math.degrees(slot.turned)
        if side == "left":
            corners, x, turned = tuple((-x, y) for x, y in reversed(corners)), -x, -turned
        found.append(SlotHole((x, y), slot.length, slot.width, turned % 180, corners, f"slot, {slot.piece}"))
    return found


@reads
def outline_of_plate(
    plate_width: Mm,
    plate_height: Mm,
    spindle_from_top: Mm,
    spindle_from_front: Mm,
    plate_ends: PlateEnds,
    corner_radius: Mm | None,
    *,
    side: Side,
) -> Outline | None:
    """The plate's outline; None where its size or the wheel centre's place on it is not known."""
    size = (plate_width, plate_height, spindle_from_top, spindle_from_front)
    return plate_outline(*size, corner_radius or 0.0, side, plate_ends)


@reads
def _bore(plate_bore: Mm) -> float | None:
    return plate_bore


@reads
def bracket_blank(
    bracket_width: Mm,
    bracket_height: Mm,
    bracket_hole_spacing: Mm | None,
    bracket_hole_from_edge: Mm | None,
    bracket_hole_diameter: Mm | None,
) -> Profile | None:
    """The caliper bracket blank: square corners, to be trimmed to the mock-up. None while width or height is not known."""
    holes: tuple[Hole, ...] = ()
    left_out: tuple[str, ...] = ("caliper bolt holes: spacing, diameter or distance from the edge is not on the sheet",)
    spacing, from_edge, diameter = bracket_hole_spacing, bracket_hole_from_edge, bracket_hole_diameter
    if spacing is not None and from_edge is not None and diameter is not None:
        places = bracket_hole_places(bracket_width, bracket_height, spacing, from_edge)
        holes, left_out = tuple(Hole(place, diameter, CALIPER_BOLT_HOLE) for place in places), ()
    return Profile(Outline(0.0, bracket_width, 0.0, bracket_height), holes, (), left_out=left_out)


def _hub_bolt_holes(known: Known, *, side: Side, left_out: list[str]) -> list[Hole]:
    diameter, places = _hole_diameter(known), _hub_bolts(known)
    if places is None:
        left_out.append("hub bolt holes: their places are not on the sheet; mark them off the hub")
    elif diameter is None:
        left_out.append("hub bolt holes: their diameter is not on the sheet; mark them off the hub")
    else:
        ahead = -1.0 if side == "left" else 1.0
        return [Hole((ahead * x, y), diameter, HUB_BOLT_HOLE) for x, y in places]
    return []


@reads
def _hub_bolts(hub_bolts_stand: BoltPlaces) -> tuple[Point, ...] | None:
    """The hub bolts, x ahead."""
    return hub_bolts_stand.places


@reads
def _hole_diameter(hole_diameter: Mm) -> float | None:
    return hole_diameter


@reads
def _lightening(lightening_holes: LighterBy) -> list[Hole] | None:
    return [Hole((0.0, hole.above), hole.diameter, LIGHTENING) for hole in lightening_holes.holes]


def _spindle_ticks(outline: Outline, bore: float) -> list[MarkLine]:
    """Level and plumb through the wheel centre, outside the bore."""
    start, end = bore / 2 + _CLEAR, bore / 2 + _CLEAR + TICK
    ways = ((1, 0), (0, 1), (-1, 0), (0, -1))
    ticks = [((x * start, y * start), (x * end, y * end)) for x, y in ways]
    return [MarkLine(*tick, "wheel centre") for tick in ticks if inside_distance(tick[1], outline) > 0]


def _front_arrow(side: Side, outline: Outline, bore: float, holes: list[Hole]) -> tuple[list[MarkLine], Stamp | None]:
    """An arrow to the front, and L or R behind it, half way from the bore to the top edge; none where there is no room."""
    forward = -1.0 if side == "left" else 1.0
    y = (bore / 2 + outline.top) / 2
    tip, tail, barb = (forward * 2.5 * TICK, y), (forward * TICK, y), forward * 2.1 * TICK
    ends = [tip, tail, (barb, y + 0.3 * TICK), (barb, y - 0.3 * TICK)]
    clear = all(math.dist(end, hole.centre) > hole.diameter / 2 + _CLEAR for end in ends for hole in holes)
    if not clear or any(inside_distance(end, outline) < _CLEAR for end in ends):
        return [], None
    arrow = [MarkLine(tip, end, TO_THE_FRONT) for end in ends[1:]]
    return arrow, Stamp((-forward * TICK if side == "left" else -1.6 * TICK, y - _CLEAR), side[0].upper())


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


@reads
def _pivot_ends(
    lower_pivot_ahead: Mm, lower_below_spindle: Mm, upper_pivot_ahead: Mm, upper_above_spindle: Mm, *, side: Side
) -> tuple[Point, Point] | None:
    forward = -1.0 if side == "left" else 1.0
    return (forward * lower_pivot_ahead, -lower_below_spindle), (forward * upper_pivot_ahead, upper_above_spindle)


def _pivot_marks(known: Known, side: Side, outline: Outline, bore: float, left_out: list[str]) -> list[MarkLine]:
    """The line through both pivots as it falls square on the plate, and a tick across it at each pivot."""
    ends_of_axis = _pivot_ends(known, side=side)
    if ends_of_axis is None:
        left_out.append("pivot line: the pivots are not worked out yet")
        return []
    lower, upper = ends_of_axis
    line = _clipped(lower, upper, outline)
    if line is None:
        left_out.append("pivot line: it does not cross the plate")
        return []
    marks = [MarkLine(*part, "pivot line") for part in _outside_bore(*line, bore)]
    for name, (x, y) in (("lower pivot", lower), ("upper pivot", upper)):
        ends = (x - TICK / 2, y), (x + TICK / 2, y)
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
    near = -(start[0] * way[0] + start[1] * way[1])  # the point of the line nearest the wheel centre

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
