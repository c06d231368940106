"""The caliper where it stands round the clock, and its bracket."""

from math import asin, cos, sin

from rules.corner.part import SPINDLE, AnyPart, Part, spindle
from rules.graph.declare import value
from rules.graph.results import OutsideRange, Waits
from rules.measure.units import Mm, Rad
from rules.solids.shapes import Revolved, Shape
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
    formula="round the wheel's axis, root width by free length by thickness, square to it; from the free length inside the line "
    "through the caliper's bolts to 1.5 hole diameters beyond it",
    source=sources.COMMON_PRACTICE.saying("how the blank is trimmed"),
)
def caliper_bracket_part(
    bracket_thickness: Mm | None,
    bracket_arm_length: Mm | None,
    bracket_arm_width: Mm | None,
    bracket_arm_offset: Mm | None,
    bracket_hole_diameter: Mm | None,
    bolts_inside_edge: Mm,
    rotor_diameter: Mm,
    rotor_plane_offset: Mm,
    caliper_at: Rad,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The caliper's bracket, from its root to its outer edge, inboard of the rotor.

    >>> caliper_bracket_part(12.0, 40.0, 120.0, 45.0, 11.0, 0.0, 280.0, -40.0, 1.5, 400.0).text
    'caliper bracket: revolved, upright'
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
    if low <= 0 or wide / 2 >= low:
        raise OutsideRange(
            "the caliper's bracket is larger than the rotor leaves room for: check its length and width",
            change="Put right the caliper bracket, free length or width at root, or bolts inside the rotor's edge.",
        )
    middle = rotor_plane_offset - offset
    back, front = middle - thickness / 2, middle + thickness / 2
    shape = Revolved(
        spindle(wheel_centre_height),
        SPINDLE,
        ((low, back), (high, back), (high, front), (low, front)),
        towards=(sin(caliper_at), 0.0, cos(caliper_at)),
        half_angle=asin(wide / 2 / low),
    )
    return Part("caliper bracket", "upright", (shape,))
