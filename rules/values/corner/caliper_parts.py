"""The caliper where it stands round the clock, and its bracket."""

from math import asin, cos, sin

from rules.corner.part import SPINDLE, AnyPart, Foot, Part, spindle
from rules.graph.declare import value
from rules.graph.results import OutsideRange, Waits
from rules.measure.units import Mm, Rad
from rules.measure.vectors import cross, plus, times
from rules.solids.shapes import Prism, Revolved, Shape
from rules.tables import sources
from rules.values.optional_step import whole_once_begun

SUBJECT = "corner"
STACK = sources.GEOMETRY
TRIMMED = 1.5
"""Hole diameters from the caliper bolts' middle to the trimmed edge of the bracket. Common practice, no source."""


@value(
    SUBJECT,
    formula="round the rotor's edge over its length: a bridge above the edge, a body on each side from the pads' faces out",
    source=STACK.saying("measured places joined by plain shapes"),
)
def caliper_part(
    rotor_diameter: Mm,
    rotor_plane_offset: Mm,
    rotor_working_thickness: Mm,
    reach_above_rotor: Mm,
    outboard_reach: Mm,
    caliper_inboard: Mm,
    caliper_inward: Mm,
    caliper_long: Mm,
    caliper_at: Rad,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The caliper with its bridge and pads, where it stands round the clock.

    >>> caliper_part(280.0, -40.0, 20.0, 22.0, 44.0, 60.0, 45.0, 180.0, 1.5, 400.0).text
    'caliper: 3 shapes, upright'
    """
    edge = rotor_diameter / 2
    inner, outer = edge - caliper_inward, edge + reach_above_rotor
    half = rotor_working_thickness / 2
    if min(outboard_reach, caliper_inboard) <= half:
        raise OutsideRange(
            "the caliper does not reach past the rotor's face: check its reach",
            change="Put right outboard reach, inboard reach or the rotor's thickness.",
        )
    if caliper_long / 2 >= edge or inner <= 0:
        raise OutsideRange(
            "the caliper is as large as the rotor: check its length and its reach towards the hub",
            change="Put right length along the rotor, reach towards the hub or rotor diameter.",
        )
    towards = (sin(caliper_at), 0.0, cos(caliper_at))
    turn = asin(caliper_long / 2 / edge)

    def part_of(low: float, high: float, start: float, end: float) -> Revolved:
        profile = ((low, start), (high, start), (high, end), (low, end))
        return Revolved(spindle(wheel_centre_height), SPINDLE, profile, towards=towards, half_angle=turn)

    plane = rotor_plane_offset
    shapes: list[Shape] = [
        part_of(inner, outer, plane + half, plane + outboard_reach),
        part_of(inner, outer, plane - caliper_inboard, plane - half),
    ]
    if reach_above_rotor > 0:
        shapes.append(part_of(edge, outer, plane - half, plane + half))
    return Part("caliper", "upright", tuple(shapes))


@value(
    SUBJECT,
    formula="flat, square to the wheel's axis; from the free length inside the line through the caliper's bolts, where it is as "
    "wide as its root, to 1.5 hole diameters beyond that line, where it is as wide or reaches so far past both bolts",
    source=sources.COMMON_PRACTICE.saying("how the blank is trimmed"),
)
def caliper_bracket_part(
    bracket_thickness: Mm | None,
    bracket_arm_length: Mm | None,
    bracket_arm_width: Mm | None,
    bracket_arm_offset: Mm | None,
    bracket_hole_diameter: Mm | None,
    bracket_hole_spacing: Mm | None,
    bolts_inside_edge: Mm,
    rotor_diameter: Mm,
    rotor_plane_offset: Mm,
    caliper_at: Rad,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The caliper's bracket, from its root to its outer edge, inboard of the rotor.

    >>> caliper_bracket_part(12.0, 40.0, 120.0, 45.0, 11.0, 140.0, 0.0, 280.0, -40.0, 1.5, 400.0).text
    'caliper bracket: prism, upright'
    """
    lengths = {"upright.bracket_arm_length": bracket_arm_length, "upright.bracket_arm_width": bracket_arm_width,
               "upright.bracket_arm_offset": bracket_arm_offset}  # fmt: skip
    free, wide, offset = whole_once_begun("the caliper's bracket is not entered under upright strength", lengths)
    if bracket_thickness is None and bracket_hole_diameter is not None:
        raise Waits("plate.bracket_thickness")
    drawn = {"plate.bracket_thickness": bracket_thickness}
    (thickness,) = whole_once_begun("the caliper bracket is not drawn yet", drawn)
    bolts = rotor_diameter / 2 - bolts_inside_edge
    low, high = bolts - free, bolts + TRIMMED * (bracket_hole_diameter or 0.0)
    if low <= 0:
        raise OutsideRange(
            "the caliper's bracket is larger than the rotor leaves room for: check its length",
            change="Put right the caliper bracket's free length, or bolts inside the rotor's edge.",
        )
    middle = rotor_plane_offset - offset
    back, front = middle - thickness / 2, middle + thickness / 2
    root = wide / 2
    end = max(root, (bracket_hole_spacing or 0.0) / 2 + TRIMMED * (bracket_hole_diameter or 0.0))
    corners = ((-root, low), (root, low), (end, bolts), (end, high), (-end, high), (-end, bolts))
    outline = tuple(dict.fromkeys(corners))  # without its holes it ends at their line
    towards, centre = (sin(caliper_at), 0.0, cos(caliper_at)), spindle(wheel_centre_height)
    shape = Prism(centre, cross(towards, SPINDLE), towards, outline, back, front)
    root_line = tuple(plus(centre, times(low, towards), times(along, SPINDLE)) for along in (back, front))
    return Part("caliper bracket", "upright", (shape,), foot=Foot(root_line, towards))
