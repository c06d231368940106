"""What is known so far as a picture: the corner cut through the wheel centre, left wheel seen from the front.

What turns, the hub, plate and beam are cut by the upright plane through the wheel centre; what stands round its axis is cut
through its own middle and turned up into that plane, as edges alone; the rest is seen from the front. Nothing but the
corner's parts is drawn, and lines and words about them; a part that cannot be placed yet is absent.
"""

import math
from collections.abc import Collection, Iterator, Mapping

from rules.corner.part import Part
from rules.corner.words import clock
from rules.drawn.clash import Clash, worst_clash
from rules.drawn.corner_parts import bodies, body, parts_of, turned_up
from rules.drawn.scene import Body, Box, Dimension, FaceSide, Item, Label, Line, Mark, Scene
from rules.drawn.views import FROM_FRONT
from rules.judging.reader import Known, Size, reads
from rules.measure.outline import Point
from rules.measure.units import Mm, Rad
from rules.solids.shapes import Revolved
from rules.tables.rim_flange import RIM_FLANGE

CUT = (
    "tyre", "rim", "spokes", "wheel nuts", "stud heads", "rotor ring", "rotor hat", "hub flange", "stub shaft",
    "hub body", "hub mounting flange", "plate", "beam",
)  # fmt: skip
"""Parts cut by the plane through the wheel centre; `TURNED_UP` are cut through their own middle."""
TURNED_UP = ("caliper bracket", "caliper")
FAR_FROM_WHEEL = ("frame at the upper arm", "frame at the lower arm", "shock", "rack or relay")
"""Parts that the other views show; here they would only take the room that the words need."""

# Lengths of lines that say "here", mm.
_AXIS_BEYOND_PIVOT = 95.0
_PIVOT_RADIUS = 20.0
_FAR = 1e5


def front_scene(known: Known, lit: Collection[str] = ()) -> Scene:
    """The whole wheel, from above the tyre to below the ground.

    `known` maps names of values and fields ("wheel_offset", "rotor.diameter") to what was worked out. A name that
    is missing, or is not a finite number, leaves its part out. lit: names of parts to light. Never raises.
    """
    return Scene(tuple(_items(known, lit, close_up=False)), _whole_frame(known))


def upright_scene(known: Known, lit: Collection[str] = ()) -> Scene:
    """Closely framed on rim, rotor, hub, plate and pivots, with the words that only have room at that scale.

    The whole wheel, as `front_scene`, until a wheel or a rotor is known.
    """
    frame = _upright_frame(known)
    return front_scene(known, lit) if frame is None else Scene(tuple(_items(known, lit, close_up=True)), frame)


def _items(known: Known, lit: Collection[str], close_up: bool) -> Iterator[Item]:
    parts, clash = parts_of(known), worst_clash(known)
    yield from bodies(map(_drawn, parts.values()), lit=lit, clash=clash.names if clash else ())
    # Labels are given places in this order, so the figures a builder looks for come first.
    if clash:
        yield _clash_mark(clash)
    yield from _upper_pivot(known)
    yield from _lower_pivot(known)
    yield from _axis(known)
    yield from _pivot_spacing(known)
    yield from _caliper(known, parts=parts)
    yield from _names(known, parts, close_up=close_up)
    yield from _datum_lines(known, close_up=close_up)
    yield from _other_tyres(known)


def _drawn(part: Part) -> Body | None:
    if part.name in FAR_FROM_WHEEL:
        return None
    if part.name in TURNED_UP:
        view = turned_up(part, FROM_FRONT)
        return body(part, view, "cut", style="dashed", covers=False) if view else None
    return body(part, FROM_FRONT, "cut" if part.name in CUT else "seen")


def _clash_mark(clash: Clash) -> Dimension:
    up = clash.on_other[2] >= clash.centre[2] or any(name in TURNED_UP for name in clash.names)
    start, end = map(FROM_FRONT.flat, clash.places(up))
    words = f"{'overlap' if clash.gap < 0 else 'gap'}{' when moved' if clash.moved else ''}"
    side: FaceSide = "inboard" if end[0] < 0 else "outboard"
    return Dimension(start, end, Label("clash", end, words, side, abs(clash.gap)), "clash")


def _reach(drawn: Body) -> Box:
    """The rectangle a body fills."""
    points = [point for edge in drawn.edges for point in edge]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return Box(min(xs), max(xs), min(ys), max(ys))


def _names(known: Known, parts: Mapping[str, Part], *, close_up: bool) -> Iterator[Label]:
    """Words beside parts, where they stand free."""
    named = {name: drawn for name, part in parts.items() if (drawn := _drawn(part))}
    centre = _wheel_centre(known)
    if centre is None:
        return
    if "tyre" in named:
        tyre = _reach(named["tyre"])
        yield Label(
            "tyre", (tyre.right, centre + 0.82 * (tyre.top - centre)), "tyre", "outboard", 2 * (tyre.top - centre)
        )
    if "rotor ring" in named:
        ring = _reach(named["rotor ring"])
        yield Label("rotor", (ring.right, centre - 0.84 * (ring.top - centre)), "rotor", "outboard")
    if "hub flange" in named:
        flange = _reach(named["hub flange"])
        yield Label("hub", (flange.right, centre + 0.3 * (flange.top - centre)), "hub", "outboard")
    if close_up and "plate" in named:
        plate = _reach(named["plate"])
        yield Label("plate", (plate.left, centre + 0.55 * (plate.top - centre)), "plate", "inboard")
    if "rim" in named:
        rim = _reach(named["rim"])
        yield Label("rim", (rim.right, centre - 0.97 * (rim.top - centre)), "wheel", "outboard")
    for name in ("beam", "steering arm") if close_up else ():
        if name in named:
            box = _reach(named[name])
            yield Label(named[name].part, (box.left, box.bottom), name, "inboard")


@reads
def _wheel_centre(wheel_centre_height: Size) -> float | None:
    return wheel_centre_height


@reads
def _datum_lines(
    wheel_centre_height: Size, design_tyre_diameter: Size | None, tyre_section_width: Size | None, *, close_up: bool
) -> Iterator[Item]:
    centre = wheel_centre_height
    yield Line("ground", (-_FAR, 0.0), (_FAR, 0.0))
    top = centre + (design_tyre_diameter or 0.0) / 2
    yield Line("centre line", (0.0, -0.03 * top), (0.0, 1.02 * top), "dashed")
    reach = 0.5 * (tyre_section_width or centre / 2)
    beside = reach + 0.09 * top
    yield Line("centre line", (-reach, centre), (beside, centre), "dotted")
    if not close_up:
        label = Label("dimension", (beside, 0.36 * centre), "wheel centre", "outboard", centre)
        yield Dimension((beside, 0.0), (beside, centre), label)


@reads
def _other_tyres(
    wheel_centre_height: Size,
    design_tyre_diameter: Size,
    tyre_section_width: Size,
    largest_tyre_diameter: Size | None,
    smallest_tyre_diameter: Size | None,
) -> Iterator[Item]:
    """How high the tyres reach that are not drawn: the part is the largest, as it must have room."""
    largest = largest_tyre_diameter or design_tyre_diameter
    for other, words in ((design_tyre_diameter, "design"), (smallest_tyre_diameter, "smallest")):
        if other is None or abs(other - largest) < 1.0:
            continue
        crown, half = wheel_centre_height + other / 2, 0.42 * tyre_section_width
        yield Line("tyre", (-half, crown), (half, crown), "dotted")
        yield Label("tyre", (-half, crown), words, "inboard", other)


@reads
def _caliper(caliper_barrel_gap: Mm | None, *, parts: Mapping[str, Part]) -> Iterator[Item]:
    caliper = parts.get("caliper")
    drawn = _drawn(caliper) if caliper else None
    shape = caliper.shapes[0] if caliper else None
    if drawn is None or not isinstance(shape, Revolved) or shape.towards is None:
        return
    box, (ahead, _, above) = _reach(drawn), shape.towards
    words = f"caliper, at {clock(math.atan2(ahead, above))}"
    if caliper_barrel_gap is None:
        yield Label("caliper", (box.right, box.top), words, "outboard")
    else:
        at = box.left + 0.8 * (box.right - box.left)
        label = Label("caliper", (box.right, box.top), f"{words}, to barrel", "outboard", caliper_barrel_gap)
        yield Dimension((at, box.top), (at, box.top + caliper_barrel_gap), label)


@reads
def _upper_pivot(upper_pivot_offset: Mm, upper_pivot_height: Mm, upper_radius: Size | None) -> Iterator[Item]:
    yield from _pivot("upper pivot", (upper_pivot_offset, upper_pivot_height), upper_radius)


@reads
def _lower_pivot(lower_pivot_offset: Mm, lower_pivot_height: Mm, lower_radius: Size | None) -> Iterator[Item]:
    yield from _pivot("lower pivot", (lower_pivot_offset, lower_pivot_height), lower_radius)


def _pivot(words: str, centre: Point, reach: float | None) -> Iterator[Item]:
    yield Mark("pivot", centre, "pivot")
    yield Label("pivot", (centre[0] - (reach or 0.0), centre[1]), words, "inboard")


@reads
def _pivot_spacing(
    upper_pivot_offset: Mm, upper_pivot_height: Mm, lower_pivot_offset: Mm, lower_pivot_height: Mm, pivots_spacing: Size
) -> Iterator[Item]:
    # A little below the middle, because the hub height offset stands at the middle.
    at = (0.4 * upper_pivot_offset + 0.6 * lower_pivot_offset, 0.4 * upper_pivot_height + 0.6 * lower_pivot_height)
    yield Label("pivot", at, "pivot spacing", "inboard", pivots_spacing)


@reads
def _axis(
    wheel_centre_height: Size,
    ground_offset: Mm,
    inclination: Rad,
    upper_pivot_height: Mm | None,
    hub_height_offset: Mm | None,
) -> Iterator[Item]:
    centre = wheel_centre_height
    if abs(inclination) > 1.5:
        return
    top = (centre if upper_pivot_height is None else max(upper_pivot_height, centre)) + _AXIS_BEYOND_PIVOT
    landing, end = (-ground_offset, 0.0), (-ground_offset - top * math.tan(inclination), top)
    yield Line("axis", landing, end)
    yield Mark("axis", landing, "landing")
    yield _from_centre_plane("ground offset", ground_offset, -0.07 * centre)
    if hub_height_offset is not None:
        yield _from_centre_plane("hub height offset", hub_height_offset, centre)
    yield Label("axis", end, "steering axis", "inboard")


def _from_centre_plane(words: str, inboard: float, height: float) -> Dimension:
    """A dimension from the tyre centre plane to the axis; its words stand beyond the axis."""
    end = (-inboard, height)
    return Dimension((0.0, height), end, Label("axis", end, words, "inboard" if inboard >= 0 else "outboard", inboard))


@reads
def _whole_frame(
    wheel_centre_height: Size | None,
    design_tyre_diameter: Size | None,
    smallest_tyre_diameter: Size | None,
    largest_tyre_diameter: Size | None,
    tyre_section_width: Size | None,
    upper_pivot_offset: Mm | None,
    upper_radius: Size | None,
    lower_pivot_offset: Mm | None,
    lower_radius: Size | None,
) -> Box:
    centre = wheel_centre_height or design_tyre_diameter or 400.0
    tyres = (design_tyre_diameter, smallest_tyre_diameter, largest_tyre_diameter)
    top = centre + (max(diameter or 0.0 for diameter in tyres) / 2 or centre)
    half = (tyre_section_width or 0.35 * top) / 2
    pivots = ((upper_pivot_offset, upper_radius), (lower_pivot_offset, lower_radius))
    left = _leftmost(pivots, -half, -2 * half)
    # More room inboard, where the longer words stand.
    return Box(left - 0.17 * top, half + 0.1 * top, -0.06 * top, 1.02 * top)


@reads
def _upright_frame(
    wheel_centre_height: Size,
    wheel_diameter: Size | None,
    rotor_diameter: Size | None,
    wheel_overall_width: Size | None,
    upper_pivot_offset: Mm | None,
    upper_radius: Size | None,
    lower_pivot_offset: Mm | None,
    lower_radius: Size | None,
) -> Box | None:
    if wheel_diameter is None and rotor_diameter is None:
        return None
    reach = 1.12 * (wheel_diameter / 2 + RIM_FLANGE if wheel_diameter else (rotor_diameter or 0.0) / 2)
    half = (wheel_overall_width or reach) / 2
    pivots = ((upper_pivot_offset, upper_radius), (lower_pivot_offset, lower_radius))
    left = min(-half, _leftmost(pivots, -half, -2 * half))
    return Box(left - 0.05 * reach, 1.1 * half, wheel_centre_height - reach, wheel_centre_height + reach)


def _leftmost(pivots: tuple[tuple[float | None, float | None], ...], start: float, limit: float) -> float:
    """How far inboard the frame must reach; a mistyped pivot miles away must not shrink everything else."""
    for offset, radius in pivots:
        if offset is not None:
            start = min(start, offset - (radius or _PIVOT_RADIUS))
    return max(start, limit)
