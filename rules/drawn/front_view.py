"""What is known so far as a picture: the vertical plane through the spindle, left wheel seen from the front.

Nothing is worked out here, and what is not known is absent. A shape that no one measures (the bulge of a
sidewall, the edge of a hub flange, the length of the plate) is a symbol, and named as one below.
"""

import math
from collections.abc import Iterator, Mapping

from rules.drawn.scene import Box, Circle, Dimension, Item, Label, Line, Mark, Point, Polyline, Scene
from rules.tables.rim_flange import RIM_FLANGE

_TYRES = ("design", "smallest", "largest")

# Symbols, mm or a share of what is measured. They say "here", not "this big".
_FLANGE_THICKNESS = 12.0
_FLANGE_BEYOND_PILOT = 38.0
_PILOT_LENGTH = 14.0
_BAND_SHARE = 0.64
_PLATE_HALF_LENGTH = 70.0
_AXIS_BEYOND_PIVOT = 95.0
_CROWN = 3.2
_FOOTPRINT = 5.0
_PIVOT_RADIUS = 20.0
_FAR = 1e5


class _Known:
    """Reads numbers out of what is known; anything else (text, nan, not there) counts as unknown."""

    def __init__(self, known: Mapping[str, object]) -> None:
        self._known = known

    def number(self, name: str) -> float | None:
        """A finite number, or None."""
        found = self._known.get(name)
        if isinstance(found, bool) or not isinstance(found, (int, float)):
            return None
        # An integer too long for a float is no length either.
        return float(found) if abs(found) < 1e12 else None

    def size(self, name: str) -> float | None:
        """A number above zero, or None."""
        found = self.number(name)
        return found if found is not None and found > 0 else None

    def size_or(self, name: str, symbol: float) -> float:
        """A number above zero, or the symbol's size."""
        found = self.size(name)
        return symbol if found is None else found


def front_scene(known: Mapping[str, object]) -> Scene:
    """The whole wheel, from above the tyre to below the ground.

    `known` maps names of values and fields ("wheel_offset", "rotor.diameter") to mm or radians. A name that
    is missing, or is not a finite number, leaves its part out. Never raises.
    """
    facts = _Known(known)
    return Scene(tuple(_items(facts, close_up=False)), _whole_frame(facts))


def upright_scene(known: Mapping[str, object]) -> Scene:
    """Closely framed on rim, rotor, hub, plate and pivots, with the shapes that only show at that scale.

    The whole wheel, as `front_scene`, until a wheel or a rotor is known.
    """
    facts = _Known(known)
    frame = _upright_frame(facts)
    return front_scene(known) if frame is None else Scene(tuple(_items(facts, close_up=True)), frame)


def _items(facts: _Known, close_up: bool) -> Iterator[Item]:
    # Labels are given places in this order, so the figures a builder looks for come first.
    yield from _pivots(facts)
    yield from _axis(facts)
    yield from _pivot_spacing(facts)
    yield from _caliper(facts)
    yield from _tyre(facts)
    yield from _rotor(facts, close_up)
    yield from _hub(facts, close_up)
    yield from _plate(facts, close_up)
    yield from _rim(facts)
    yield from _datum_lines(facts, close_up)
    yield from _other_tyres(facts)


def _datum_lines(facts: _Known, close_up: bool) -> Iterator[Item]:
    centre, diameter = facts.size("wheel_centre_height"), facts.size("design_tyre_diameter")
    if centre is None:
        return
    yield Line("ground", (-_FAR, 0.0), (_FAR, 0.0))
    top = centre + (diameter or 0.0) / 2
    yield Line("centre line", (0.0, -0.03 * top), (0.0, 1.02 * top), "dashed")
    reach = 0.5 * facts.size_or("tyre_section_width", centre / 2)
    beside = reach + 0.09 * top
    yield Line("centre line", (-reach, centre), (beside, centre), "dotted")
    if not close_up:
        label = Label("dimension", (beside, 0.36 * centre), "wheel centre", "outboard", centre)
        yield Dimension((beside, 0.0), (beside, centre), label)


def _tyre(facts: _Known) -> Iterator[Item]:
    centre, diameter = facts.size("wheel_centre_height"), facts.size("design_tyre_diameter")
    width = facts.size("tyre_section_width")
    if centre is None or diameter is None or width is None:
        return
    crown = diameter / 2
    yield Label("tyre", (width / 2, centre + 0.82 * crown), "tyre", "outboard", diameter)
    inner = _bead(facts, min(crown, centre))
    if inner is None:
        yield Polyline("tyre", _tyre_without_wheel(centre, crown, width), closed=True, filled=True)
        return
    for reach, direction, squareness in ((crown, 1, _CROWN), (centre, -1, _FOOTPRINT)):
        outline = _lobe(inner, width / 2, reach, squareness)
        yield Polyline("tyre", tuple((y, centre + direction * r) for y, r in outline), filled=True)


def _other_tyres(facts: _Known) -> Iterator[Item]:
    """Only the tread of the other tyres: they share the wheel, and each sags by an amount of its own."""
    centre, diameter = facts.size("wheel_centre_height"), facts.size("design_tyre_diameter")
    width = facts.size("tyre_section_width")
    if centre is None or diameter is None or width is None:
        return
    for name, words in (("largest_tyre_diameter", "largest"), ("smallest_tyre_diameter", "smallest")):
        other = facts.size(name)
        if other is None or abs(other - diameter) < 1.0:
            continue
        crown = other / 2
        inner = _bead(facts, crown) or (width / 2, 0.6 * crown)
        tread = [(y, centre + r) for y, r in _lobe(inner, width / 2, crown, _CROWN) if r > 0.88 * crown]
        yield Polyline("tyre", tuple(tread), style="dotted")
        yield Label("tyre", (-0.42 * width, centre + 0.97 * crown), words, "inboard", other)


def _bead(facts: _Known, least_reach: float) -> Point | None:
    """Where the sidewall leaves the rim flange, as (offset, radius); None while no wheel fits in the tyre."""
    rim, width = facts.size("wheel.diameter"), facts.size("wheel_overall_width")
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


def _rim(facts: _Known) -> Iterator[Item]:
    centre, diameter = facts.size("wheel_centre_height"), facts.size("wheel.diameter")
    if centre is None or diameter is None:
        return
    seat, lip = diameter / 2, diameter / 2 + RIM_FLANGE
    width, barrel = facts.size("wheel_overall_width"), facts.size_or("barrel_inside_diameter", diameter) / 2
    offset = facts.number("wheel_offset")
    if width is None:
        return
    half = width / 2
    for direction in (1, -1):
        profile = [(-half, lip), (-half, seat), (-0.86 * half, barrel), (0.86 * half, barrel), (half, seat)]
        points = [*profile, (half, lip)]
        yield Polyline("rim", tuple((y, centre + direction * r) for y, r in points))
        if offset is not None:
            bore = facts.size_or("wheel.centre_bore", facts.size_or("hub.pilot_diameter", 0.0)) / 2
            bore = min(barrel, bore)
            yield Line("rim", (offset, centre + direction * bore), (offset, centre + direction * barrel))
    named = (half, centre - seat) if offset is None else (offset, centre - 0.84 * barrel)
    yield Label("rim", named, "wheel", "outboard")


def _rotor(facts: _Known, close_up: bool) -> Iterator[Item]:
    centre, diameter = facts.size("wheel_centre_height"), facts.size("rotor.diameter")
    plane, thickness = facts.number("rotor_plane_offset"), facts.size("rotor_working_thickness")
    if centre is None or diameter is None or plane is None or thickness is None:
        return
    outer = diameter / 2
    inner = min(outer, facts.size_or("rotor.band_inside_diameter", _BAND_SHARE * diameter) / 2)
    face, bore = facts.number("hub_face_offset"), facts.size("hub.pilot_diameter")
    for direction in (1, -1):
        low, high = centre + direction * inner, centre + direction * outer
        left, right = plane - thickness / 2, plane + thickness / 2
        yield Polyline("rotor", ((left, low), (left, high), (right, high), (right, low)), closed=True)
        if close_up and face is not None and bore is not None:
            hat = ((right, low), (face, low), (face, centre + direction * min(inner, bore / 2)))
            yield Polyline("rotor", hat)
    yield Label("rotor", (plane + thickness / 2, centre - 0.68 * outer), "rotor", "outboard")


def _caliper(facts: _Known) -> Iterator[Item]:
    centre, diameter = facts.size("wheel_centre_height"), facts.size("rotor.diameter")
    plane, reach = facts.number("rotor_plane_offset"), facts.size("caliper.reach_above_rotor")
    outboard = facts.size("caliper.outboard_reach")
    if centre is None or diameter is None or plane is None or reach is None or outboard is None:
        return
    # The inboard side is left open: how far the caliper reaches there is not asked.
    low, top = centre + 0.76 * diameter / 2, centre + diameter / 2 + reach
    outline = ((plane - outboard, top), (plane + outboard, top), (plane + outboard, low))
    yield Polyline("caliper", outline, style="dashed")
    gap = facts.number("caliper_barrel_gap")
    corner = (plane + outboard, top)
    if gap is None:
        yield Label("caliper", corner, "caliper", "outboard")
    else:
        label = Label("caliper", corner, "caliper to barrel", "outboard", gap)
        yield Dimension((plane + 0.6 * outboard, top), (plane + 0.6 * outboard, top + gap), label)


def _hub(facts: _Known, close_up: bool) -> Iterator[Item]:
    centre, face = facts.size("wheel_centre_height"), facts.number("hub_face_offset")
    if centre is None or face is None:
        return
    pilot = facts.size_or("hub.pilot_diameter", 70.0) / 2
    flange, mount = pilot + _FLANGE_BEYOND_PILOT, facts.number("mount_face_offset")
    nose, back = face + _PILOT_LENGTH, face - _FLANGE_THICKNESS
    inboard = back if mount is None else min(mount, back)
    half: tuple[Point, ...] = ((face, 0.0), (face, flange), (face, pilot), (inboard, pilot), (inboard, 0.0))
    if close_up:
        front = ((nose, 0.0), (nose, pilot), (face, pilot), (face, flange))
        half = (*front, (back, flange), (back, pilot), (inboard, pilot), (inboard, 0.0))
    outline = (*half, *((y, -r) for y, r in reversed(half[1:-1])))
    yield Polyline("hub", tuple((y, centre + r) for y, r in outline), closed=True)
    bearing = facts.number("bearing_offset")
    if bearing is not None:
        yield Mark("hub", (bearing, centre), "bearing")
    yield Label("hub", (nose, centre + 0.5 * pilot), "hub", "outboard")


def _plate(facts: _Known, close_up: bool) -> Iterator[Item]:
    centre, mount = facts.size("wheel_centre_height"), facts.number("mount_face_offset")
    if centre is None or mount is None:
        return
    lower, upper = facts.number("lower_pivot_height"), facts.number("upper_pivot_height")
    bottom = centre - _PLATE_HALF_LENGTH if lower is None else lower
    top = centre + _PLATE_HALF_LENGTH if upper is None else upper
    yield Line("plate", (mount, bottom), (mount, top))
    if close_up:
        yield Label("plate", (mount, centre + 0.55 * (top - centre)), "mount face", "inboard")


def _pivots(facts: _Known) -> Iterator[Item]:
    for which in ("upper", "lower"):
        offset, height = facts.number(f"{which}_pivot_offset"), facts.number(f"{which}_pivot_height")
        if offset is None or height is None:
            continue
        radius = facts.size_or(f"pivots.{which}_radius", _PIVOT_RADIUS)
        yield Circle("pivot", (offset, height), radius)
        yield Mark("pivot", (offset, height), "pivot")
        yield Label("pivot", (offset - radius, height), f"{which} pivot", "inboard")


def _pivot_spacing(facts: _Known) -> Iterator[Item]:
    upper_y, upper_z = facts.number("upper_pivot_offset"), facts.number("upper_pivot_height")
    lower_y, lower_z = facts.number("lower_pivot_offset"), facts.number("lower_pivot_height")
    spacing = facts.size("pivots.spacing")
    if upper_y is None or upper_z is None or lower_y is None or lower_z is None or spacing is None:
        return
    # A little below the middle, because the hub height offset stands at the middle.
    at = (0.4 * upper_y + 0.6 * lower_y, 0.4 * upper_z + 0.6 * lower_z)
    yield Label("pivot", at, "pivot spacing", "inboard", spacing)


def _axis(facts: _Known) -> Iterator[Item]:
    ground_offset, tilt = facts.number("pivots.ground_offset"), facts.number("pivots.inclination")
    centre, upper = facts.size("wheel_centre_height"), facts.number("upper_pivot_height")
    if centre is None or ground_offset is None or tilt is None or abs(tilt) > 1.5:
        return
    top = (centre if upper is None else max(upper, centre)) + _AXIS_BEYOND_PIVOT
    landing, end = (-ground_offset, 0.0), (-ground_offset - top * math.tan(tilt), top)
    yield Line("axis", landing, end)
    yield Mark("axis", landing, "landing")
    yield _from_centre_plane("ground offset", ground_offset, -0.07 * centre)
    hub_height_offset = facts.number("hub_height_offset")
    if hub_height_offset is not None:
        yield _from_centre_plane("hub height offset", hub_height_offset, centre)
    yield Label("axis", end, "steering axis", "inboard")


def _from_centre_plane(words: str, inboard: float, height: float) -> Dimension:
    """A dimension from the tyre centre plane to the axis; its words stand beyond the axis."""
    end = (-inboard, height)
    return Dimension((0.0, height), end, Label("axis", end, words, "inboard" if inboard >= 0 else "outboard", inboard))


def _whole_frame(facts: _Known) -> Box:
    centre = facts.size("wheel_centre_height") or facts.size("design_tyre_diameter") or 400.0
    crown = max((facts.size_or(f"{which}_tyre_diameter", 0.0) for which in _TYRES), default=0.0) / 2
    top = centre + (crown or centre)
    half = facts.size_or("tyre_section_width", 0.35 * top) / 2
    left = _leftmost_pivot(facts, -half, -2 * half)
    # More room inboard, where the longer words stand.
    return Box(left - 0.17 * top, half + 0.1 * top, -0.06 * top, 1.02 * top)


def _upright_frame(facts: _Known) -> Box | None:
    centre = facts.size("wheel_centre_height")
    wheel, rotor = facts.size("wheel.diameter"), facts.size("rotor.diameter")
    if centre is None or (wheel is None and rotor is None):
        return None
    reach = 1.12 * ((wheel or 0.0) / 2 + RIM_FLANGE if wheel else (rotor or 0.0) / 2)
    half = facts.size_or("wheel_overall_width", reach) / 2
    left = min(-half, _leftmost_pivot(facts, -half, -2 * half))
    return Box(left - 0.05 * reach, 1.1 * half, centre - reach, centre + reach)


def _leftmost_pivot(facts: _Known, start: float, limit: float) -> float:
    """How far inboard the frame must reach; a mistyped pivot miles away must not shrink everything else."""
    for which in ("upper", "lower"):
        offset = facts.number(f"{which}_pivot_offset")
        if offset is not None:
            start = min(start, offset - facts.size_or(f"pivots.{which}_radius", _PIVOT_RADIUS))
    return max(start, limit)
