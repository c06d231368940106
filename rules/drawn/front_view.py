"""What is known so far as a picture: the vertical plane through the spindle, left wheel seen from the front.

Nothing is worked out here, and what is not known is absent. A shape that no one measures (the bulge of a
sidewall, the edge of a hub flange, the length of the plate) is a symbol, and named as one below.
"""

import math
from collections.abc import Iterator

from rules.drawn.scene import Box, Circle, Dimension, Item, Label, Line, Mark, Polyline, Scene
from rules.judging.reader import Known, Size, reads
from rules.measure.outline import Point
from rules.measure.units import Mm, Rad
from rules.tables.rim_flange import RIM_FLANGE

# Symbols, mm or a share of what is measured. They say "here", not "this big".
_FLANGE_THICKNESS = 12.0
_FLANGE_BEYOND_PILOT = 38.0
_PILOT, _PILOT_LENGTH = 70.0, 14.0
_BAND_SHARE = 0.64
_PLATE_HALF_LENGTH = 70.0
_AXIS_BEYOND_PIVOT = 95.0
_CROWN = 3.2
_FOOTPRINT = 5.0
_PIVOT_RADIUS = 20.0
_FAR = 1e5


def front_scene(known: Known) -> Scene:
    """The whole wheel, from above the tyre to below the ground.

    `known` maps names of values and fields ("wheel_offset", "rotor.diameter") to mm or radians. A name that
    is missing, or is not a finite number, leaves its part out. Never raises.
    """
    return Scene(tuple(_items(known, close_up=False)), _whole_frame(known))


def upright_scene(known: Known) -> Scene:
    """Closely framed on rim, rotor, hub, plate and pivots, with the shapes that only show at that scale.

    The whole wheel, as `front_scene`, until a wheel or a rotor is known.
    """
    frame = _upright_frame(known)
    return front_scene(known) if frame is None else Scene(tuple(_items(known, close_up=True)), frame)


def _items(known: Known, close_up: bool) -> Iterator[Item]:
    # Labels are given places in this order, so the figures a builder looks for come first.
    yield from _upper_pivot(known)
    yield from _lower_pivot(known)
    yield from _axis(known)
    yield from _pivot_spacing(known)
    yield from _caliper(known)
    yield from _tyre(known)
    yield from _rotor(known, close_up=close_up)
    yield from _hub(known, close_up=close_up)
    yield from _plate(known, close_up=close_up)
    yield from _rim(known)
    yield from _datum_lines(known, close_up=close_up)
    yield from _other_tyres(known)


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
def _tyre(
    wheel_centre_height: Size,
    design_tyre_diameter: Size,
    tyre_section_width: Size,
    wheel_diameter: Size | None,
    wheel_overall_width: Size | None,
) -> Iterator[Item]:
    centre, diameter, width = wheel_centre_height, design_tyre_diameter, tyre_section_width
    crown = diameter / 2
    yield Label("tyre", (width / 2, centre + 0.82 * crown), "tyre", "outboard", diameter)
    inner = _bead(wheel_diameter, wheel_overall_width, min(crown, centre))
    if inner is None:
        yield Polyline("tyre", _tyre_without_wheel(centre, crown, width), closed=True, filled=True)
        return
    for reach, direction, squareness in ((crown, 1, _CROWN), (centre, -1, _FOOTPRINT)):
        outline = _lobe(inner, width / 2, reach, squareness)
        yield Polyline("tyre", tuple((y, centre + direction * r) for y, r in outline), filled=True)


@reads
def _other_tyres(
    wheel_centre_height: Size,
    design_tyre_diameter: Size,
    tyre_section_width: Size,
    largest_tyre_diameter: Size | None,
    smallest_tyre_diameter: Size | None,
    wheel_diameter: Size | None,
    wheel_overall_width: Size | None,
) -> Iterator[Item]:
    """Only the tread of the other tyres: they share the wheel, and each sags by an amount of its own."""
    centre, width = wheel_centre_height, tyre_section_width
    for other, words in ((largest_tyre_diameter, "largest"), (smallest_tyre_diameter, "smallest")):
        if other is None or abs(other - design_tyre_diameter) < 1.0:
            continue
        crown = other / 2
        inner = _bead(wheel_diameter, wheel_overall_width, crown) or (width / 2, 0.6 * crown)
        tread = [(y, centre + r) for y, r in _lobe(inner, width / 2, crown, _CROWN) if r > 0.88 * crown]
        yield Polyline("tyre", tuple(tread), style="dotted")
        yield Label("tyre", (-0.42 * width, centre + 0.97 * crown), words, "inboard", other)


def _bead(rim: float | None, width: float | None, least_reach: float) -> Point | None:
    """Where the sidewall leaves the rim flange, as (offset, radius); None while no wheel fits in the tyre."""
    if rim is None or width is None or rim / 2 + RIM_FLANGE >= least_reach:
        return None
    return width / 2, rim / 2 + RIM_FLANGE


def _quarter(half_width: float, start: float, end: float, squareness: float) -> list[Point]:
    """A rounded corner from the widest point at radius `start` to the middle of the tread at radius `end`."""
    points = []
    for step in range(13):
        angle = step / 12 * math.pi / 2
        across = half_width * max(0.0, math.cos(angle)) ** (2 / squareness)
        points.append((across, start + (end - start) * math.sin(angle) ** (2 / squareness)))
    return points


def _lobe(inner: Point, half_width: float, reach: float, squareness: float) -> list[Point]:
    """Half a tyre section from the outboard bead round the tread to the inboard one, as (offset, radius)."""
    seat, bead = inner
    widest = bead + 0.45 * (reach - bead)
    sidewall = []
    for step in range(8):
        angle = step / 8 * math.pi / 2
        sidewall.append((seat + (half_width - seat) * math.sin(angle), widest - (widest - bead) * math.cos(angle)))
    outboard = [*sidewall, *_quarter(half_width, widest, reach, squareness)]
    return [*outboard, *((-y, r) for y, r in reversed(outboard[:-1]))]


def _tyre_without_wheel(centre: float, crown: float, width: float) -> tuple[Point, ...]:
    """The tyre's outline before the wheel is known."""
    upper = _quarter(width / 2, crown - min(0.35 * width, crown), crown, 2.6)
    lower = _quarter(width / 2, centre - min(0.25 * width, centre), centre, 3.6)
    right = [*((y, centre - r) for y, r in reversed(lower)), *((y, centre + r) for y, r in upper)]
    return (*right, *((-y, z) for y, z in reversed(right)))


@reads
def _rim(
    wheel_centre_height: Size,
    wheel_diameter: Size,
    wheel_overall_width: Size,
    barrel_inside_diameter: Size | None,
    wheel_offset: Mm | None,
    wheel_centre_bore: Size | None,
    pilot_diameter: Size | None,
) -> Iterator[Item]:
    centre, offset = wheel_centre_height, wheel_offset
    seat, lip = wheel_diameter / 2, wheel_diameter / 2 + RIM_FLANGE
    barrel, half = (barrel_inside_diameter or wheel_diameter) / 2, wheel_overall_width / 2
    for direction in (1, -1):
        profile = [(-half, lip), (-half, seat), (-0.86 * half, barrel), (0.86 * half, barrel), (half, seat)]
        points = [*profile, (half, lip)]
        yield Polyline("rim", tuple((y, centre + direction * r) for y, r in points))
        if offset is not None:
            bore = min(barrel, (wheel_centre_bore or pilot_diameter or 0.0) / 2)
            yield Line("rim", (offset, centre + direction * bore), (offset, centre + direction * barrel))
    named = (half, centre - seat) if offset is None else (offset, centre - 0.84 * barrel)
    yield Label("rim", named, "wheel", "outboard")


@reads
def _rotor(
    wheel_centre_height: Size,
    rotor_diameter: Size,
    rotor_plane_offset: Mm,
    rotor_working_thickness: Size,
    band_inside_diameter: Size | None,
    hub_face_offset: Mm | None,
    pilot_diameter: Size | None,
    *,
    close_up: bool,
) -> Iterator[Item]:
    centre, plane, face = wheel_centre_height, rotor_plane_offset, hub_face_offset
    outer = rotor_diameter / 2
    inner = min(outer, (band_inside_diameter or _BAND_SHARE * rotor_diameter) / 2)
    left, right = plane - rotor_working_thickness / 2, plane + rotor_working_thickness / 2
    for direction in (1, -1):
        low, high = centre + direction * inner, centre + direction * outer
        yield Polyline("rotor", ((left, low), (left, high), (right, high), (right, low)), closed=True)
        if close_up and face is not None and pilot_diameter is not None:
            hat = ((right, low), (face, low), (face, centre + direction * min(inner, pilot_diameter / 2)))
            yield Polyline("rotor", hat)
    yield Label("rotor", (right, centre - 0.68 * outer), "rotor", "outboard")


@reads
def _caliper(
    wheel_centre_height: Size,
    rotor_diameter: Size,
    rotor_plane_offset: Mm,
    reach_above_rotor: Size,
    outboard_reach: Size,
    caliper_barrel_gap: Mm | None,
) -> Iterator[Item]:
    centre, plane, gap = wheel_centre_height, rotor_plane_offset, caliper_barrel_gap
    # The inboard side is left open: how far the caliper reaches there is not asked.
    low, top = centre + 0.76 * rotor_diameter / 2, centre + rotor_diameter / 2 + reach_above_rotor
    corner = (plane + outboard_reach, top)
    yield Polyline("caliper", ((plane - outboard_reach, top), corner, (plane + outboard_reach, low)), style="dashed")
    if gap is None:
        yield Label("caliper", corner, "caliper", "outboard")
    else:
        label = Label("caliper", corner, "caliper to barrel", "outboard", gap)
        yield Dimension((plane + 0.6 * outboard_reach, top), (plane + 0.6 * outboard_reach, top + gap), label)


@reads
def _hub(
    wheel_centre_height: Size,
    hub_face_offset: Mm,
    pilot_diameter: Size | None,
    mount_face_offset: Mm | None,
    bearing_offset: Mm | None,
    *,
    close_up: bool,
) -> Iterator[Item]:
    centre, face, pilot = wheel_centre_height, hub_face_offset, (pilot_diameter or _PILOT) / 2
    flange, nose, back = pilot + _FLANGE_BEYOND_PILOT, face + _PILOT_LENGTH, face - _FLANGE_THICKNESS
    inboard = back if mount_face_offset is None else min(mount_face_offset, back)
    half: tuple[Point, ...] = ((face, 0.0), (face, flange), (face, pilot), (inboard, pilot), (inboard, 0.0))
    if close_up:
        front = ((nose, 0.0), (nose, pilot), (face, pilot), (face, flange))
        half = (*front, (back, flange), (back, pilot), (inboard, pilot), (inboard, 0.0))
    outline = (*half, *((y, -r) for y, r in reversed(half[1:-1])))
    yield Polyline("hub", tuple((y, centre + r) for y, r in outline), closed=True)
    if bearing_offset is not None:
        yield Mark("hub", (bearing_offset, centre), "bearing")
    yield Label("hub", (nose, centre + 0.5 * pilot), "hub", "outboard")


@reads
def _plate(
    wheel_centre_height: Size,
    mount_face_offset: Mm,
    lower_pivot_height: Mm | None,
    upper_pivot_height: Mm | None,
    *,
    close_up: bool,
) -> Iterator[Item]:
    centre, mount = wheel_centre_height, mount_face_offset
    bottom = centre - _PLATE_HALF_LENGTH if lower_pivot_height is None else lower_pivot_height
    top = centre + _PLATE_HALF_LENGTH if upper_pivot_height is None else upper_pivot_height
    yield Line("plate", (mount, bottom), (mount, top))
    if close_up:
        yield Label("plate", (mount, centre + 0.55 * (top - centre)), "mount face", "inboard")


@reads
def _upper_pivot(upper_pivot_offset: Mm, upper_pivot_height: Mm, upper_radius: Size | None) -> Iterator[Item]:
    yield from _pivot("upper pivot", (upper_pivot_offset, upper_pivot_height), upper_radius)


@reads
def _lower_pivot(lower_pivot_offset: Mm, lower_pivot_height: Mm, lower_radius: Size | None) -> Iterator[Item]:
    yield from _pivot("lower pivot", (lower_pivot_offset, lower_pivot_height), lower_radius)


def _pivot(words: str, centre: Point, reach: float | None) -> Iterator[Item]:
    radius = reach or _PIVOT_RADIUS
    yield Circle("pivot", centre, radius)
    yield Mark("pivot", centre, "pivot")
    yield Label("pivot", (centre[0] - radius, centre[1]), words, "inboard")


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
