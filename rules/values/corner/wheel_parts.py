"""The parts that turn with the wheel."""

from math import cos, pi, sin, sqrt

from rules.corner.part import SPINDLE, AnyPart, spindle, turning
from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged, OutsideRange, Waits
from rules.measure.marks import BoltCircle, Thread, TyreMark
from rules.measure.quantity import INCH
from rules.measure.units import Mm
from rules.measure.vectors import Vector
from rules.sheet.hub import HeldTogetherBy
from rules.solids.outline import Polygon
from rules.solids.shapes import Cylinder, Revolved, ring
from rules.tables import sources
from rules.tables.hexagons import hexagon_for
from rules.tables.rim_flange import RIM_FLANGE

SUBJECT = "corner"
STACK = sources.GEOMETRY
SHOULDER = 1 / 8
"""Of the section width: radius of a tyre's shoulder. Common practice, no source; a worn one is rounder."""
SPOKE_DEPTH = 10.0
"""mm; spokes count at least so thick. Nothing that stands still lies outboard of them."""
BARE = 1.0
"""mm of a nut left to turn past a stud's end."""


def _round_about(circle: BoltCircle, height: float, start: float, end: float, radius: float) -> tuple[Cylinder, ...]:
    """One cylinder for each stud, along the wheel's axis. start, end: mm from the tyre's centre plane."""

    def at(number: int, along: float) -> Vector:
        angle = 2 * pi * number / circle.count
        return (circle.diameter / 2 * sin(angle), along, height + circle.diameter / 2 * cos(angle))

    # In a full turn one sweeps what all sweep.
    return (Cylinder(at(0, start), at(0, end), radius),)


@value(
    SUBJECT,
    formula="largest tyre, section width wide, lip width where it leaves the flange, 45 deg between, shoulders rounded by "
    "an eighth of the section width; the smallest as well where it is wider; until the wheel is entered, on the rim its mark "
    "names, with straight sides",
    source=(sources.JIS_D_4218, sources.COMMON_PRACTICE.saying("the shoulder")),
)
def tyre_part(
    largest: TyreMark,
    smallest: TyreMark | None,
    wheel_diameter: Mm | None,
    wheel_overall_width: Mm | None,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The tyre: the largest one, new and not bulged. Below the flange's edge the rim covers it.

    Room is judged once there is a rim, and so never of a tyre whose wheel is not entered.

    >>> from rules.measure.marks import read_tyre_mark
    >>> mark = read_tyre_mark("35x12.50R15LT")
    >>> tyre_part(mark, mark, 381.0, 240.0, 400.0).text
    'tyre: revolved, wheel'
    """
    marks = [largest]
    if smallest is not None and smallest.section_width > largest.section_width:
        marks.append(smallest)
    shapes = (_tyre(mark, wheel_diameter, wheel_overall_width, wheel_centre_height) for mark in marks)
    return turning("tyre", wheel_centre_height, *shapes, kind="tyre")


def _tyre(mark: TyreMark, wheel_diameter: float | None, overall_width: float | None, height: float) -> Revolved:
    if mark.diameter is None:  # an old numeric mark states none
        raise Waits("tyre.design_diameter")
    rim = mark.rim_code * INCH if wheel_diameter is None else wheel_diameter
    inner, outer, half = rim / 2 + RIM_FLANGE, mark.diameter / 2, mark.section_width / 2
    foot = half if overall_width is None else min(overall_width / 2, half)
    leaning = half - foot
    if outer - inner <= leaning:
        raise OutsideRange(
            "the tyre hardly stands above the rim",
            change="Put right the tyres' sizes, wheel diameter or wheel width.",
        )
    rounding = min(SHOULDER * mark.section_width, (outer - inner - leaning) / 3, foot)
    corner = (sqrt(2) - 1) * rounding  # how far the corner of a side at 45 deg moves when all is drawn in by `rounding`
    base = (inner + rounding, foot - corner if leaning + corner > rounding else half - rounding)
    bend = (inner + leaning + corner, half - rounding)
    side = (base, *((bend,) if leaning + corner > rounding else ()), (outer - rounding, half - rounding))
    profile = (*side, *((radius, -along) for radius, along in reversed(side)))
    return Revolved(spindle(height), SPINDLE, profile, rounding)


@value(
    SUBJECT,
    formula=f"overall width wide, from barrel inside diameter / 2 to wheel diameter / 2 + [11/16 in | {RIM_FLANGE} mm]",
    source=sources.JIS_D_4218,
)
def rim_part(
    barrel_inside_diameter: Mm, wheel_diameter: Mm, wheel_overall_width: Mm, wheel_centre_height: Mm
) -> AnyPart:
    """Barrel and lips of the rim, as thick all across as from barrel to flange edge.

    >>> rim_part(360.0, 381.0, 240.0, 400.0).text
    'rim: revolved, wheel'
    """
    outer, half = wheel_diameter / 2 + RIM_FLANGE, wheel_overall_width / 2
    if barrel_inside_diameter / 2 >= outer:
        raise OutsideRange(
            "the barrel is as wide inside as the rim's flanges are outside",
            change="Put right barrel inside diameter or wheel diameter.",
        )
    whole = ring(spindle(wheel_centre_height), SPINDLE, barrel_inside_diameter / 2, outer, -half, half)
    return turning("rim", wheel_centre_height, whole)


@value(
    SUBJECT,
    formula="a disc from the bolt circle + 3 stud diameters (across) out to the barrel, its back spoke room outboard "
    "of the wheel's mounting face; inside that, metal at the stud hole thick from the same face",
    source=(STACK, sources.COMMON_PRACTICE.saying("how far the wheel's pad reaches beyond its bolts")),
)
def spokes_part(
    spoke_room: Mm,
    wheel_offset: Mm,
    wheel_overall_width: Mm,
    barrel_inside_diameter: Mm,
    wheel_bolt_circle: BoltCircle,
    stud_thread: Thread,
    pad_thickness: Mm | None,
    wheel_centre_height: Mm,
) -> AnyPart:
    """Spokes and centre of the wheel, over a full turn.

    >>> spokes_part(10.0, 0.0, 240.0, 360.0, BoltCircle("", 5, 100.0), Thread("", 12.0, 1.5), 12.0, 400.0).text
    'spokes: 2 shapes, wheel'
    """
    middle, pad = spindle(wheel_centre_height), wheel_bolt_circle.diameter / 2 + 1.5 * stud_thread.diameter
    back, inside = wheel_offset + spoke_room, wheel_bolt_circle.diameter / 2 - stud_thread.diameter
    if inside < 0:
        raise OutsideRange(
            "the wheel's bolt circle is smaller than two studs side by side",
            change="Put right the wheel's bolt circle or the stud thread.",
        )
    if pad >= barrel_inside_diameter / 2:
        raise OutsideRange(
            "the bolt circle does not fit inside the barrel: check the wheel's figures",
            change="Put right wheel bolt circle, barrel inside diameter or wheel diameter.",
        )
    front = max(wheel_overall_width / 2, back + SPOKE_DEPTH)
    centre = (inside, pad)
    return turning(
        "spokes",
        wheel_centre_height,
        ring(middle, SPINDLE, pad, barrel_inside_diameter / 2, back, front),
        ring(middle, SPINDLE, *centre, wheel_offset, wheel_offset + (pad_thickness or SPOKE_DEPTH)),
    )


@value(
    SUBJECT,
    formula="hexagons by the stud's thread on the bolt circle, from the nut seat outboard",
    source=(sources.ISO_4032.saying("wheel nuts are often wider"), sources.ASME_B18_2_2),
)
def wheel_nuts_part(
    wheel_offset: Mm, pad_thickness: Mm, stud_thread: Thread, hub_bolt_circle: BoltCircle, wheel_centre_height: Mm
) -> AnyPart:
    """Wheel nuts, turned round.

    >>> wheel_nuts_part(0.0, 12.0, Thread("", 12.0, 1.5), BoltCircle("", 5, 100.0), 400.0).text
    'wheel nuts: cylinder, wheel'
    """
    hexagon, seat = hexagon_for(stud_thread.diameter), wheel_offset + pad_thickness
    ends = (seat, seat + hexagon.nut + BARE)
    nuts = _round_about(hub_bolt_circle, wheel_centre_height, *ends, hexagon.corner_radius)
    return turning("wheel nuts", wheel_centre_height, *nuts)


@value(
    SUBJECT, formula="rotor diameter, inside of the braking band, working thickness, rotor plane offset", source=STACK
)
def rotor_ring_part(
    rotor_diameter: Mm,
    band_inside: Mm,
    rotor_working_thickness: Mm,
    rotor_plane_offset: Mm,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The rotor's braking band as used, where a cut one really lies.

    >>> rotor_ring_part(280.0, 180.0, 20.0, -40.0, 400.0).text
    'rotor ring: revolved, wheel'
    """
    if band_inside >= rotor_diameter:
        raise OutsideRange(
            "the inside of the braking band, or the hat, is as large as the rotor",
            change="Put right inside of the braking band, outside of the hat or rotor diameter.",
        )
    half = rotor_working_thickness / 2
    faces = (rotor_plane_offset - half, rotor_plane_offset + half)
    whole = ring(spindle(wheel_centre_height), SPINDLE, band_inside / 2, rotor_diameter / 2, *faces)
    return turning("rotor ring", wheel_centre_height, whole)


@value(
    SUBJECT,
    formula="hat thickness at the studs and down its wall, hat outside diameter, from the wheel's face to the ring",
    source=STACK,
)
def rotor_hat_part(
    hat_diameter: Mm,
    hat_thickness: Mm,
    rotor_centre_bore: Mm,
    wheel_offset: Mm,
    rotor_plane_offset: Mm,
    rotor_working_thickness: Mm,
    band_inside: Mm,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The rotor's hat: its disc between wheel and hub, its wall to the ring, and the web between the two.

    A flat disc has no web of its own: the caliper closes on its middle as it does on the ring.

    >>> rotor_hat_part(160.0, 6.0, 70.0, 0.0, -40.0, 20.0, 180.0, 400.0).text
    'rotor hat: 3 shapes, wheel'
    """
    if hat_thickness <= 0:
        raise NotJudged("the rotor bolts on behind the flange, and the shape of its middle is not asked")
    middle, bore, wall = spindle(wheel_centre_height), rotor_centre_bore / 2, hat_diameter / 2 - hat_thickness
    if wall <= bore:
        raise OutsideRange(
            "the rotor's hat is hardly larger than its centre bore",
            change="Put right hat outside diameter or rotor centre bore.",
        )
    low, high = sorted((rotor_plane_offset, wheel_offset))
    shapes = [
        ring(middle, SPINDLE, bore, hat_diameter / 2, wheel_offset - hat_thickness, wheel_offset),
        ring(middle, SPINDLE, wall, hat_diameter / 2, low, high),
    ]
    if band_inside > hat_diameter + 0.1 and hat_thickness < rotor_working_thickness:
        web = (rotor_plane_offset - hat_thickness / 2, rotor_plane_offset + hat_thickness / 2)
        shapes.append(ring(middle, SPINDLE, wall, band_inside / 2, *web))
    return turning("rotor hat", wheel_centre_height, *shapes)


@value(SUBJECT, formula="a disc, flange diameter by flange thickness, behind the hub's face", source=STACK)
def hub_flange_part(flange_diameter: Mm, flange_thickness: Mm, hub_face_offset: Mm, wheel_centre_height: Mm) -> AnyPart:
    """The hub's turning flange.

    >>> hub_flange_part(140.0, 10.0, 0.0, 400.0).text
    'hub flange: revolved, wheel'
    """
    faces = (hub_face_offset - flange_thickness, hub_face_offset)
    profile: Polygon = (
        (0.0, faces[0]),
        (flange_diameter / 2, faces[0]),
        (flange_diameter / 2, faces[1]),
        (0.0, faces[1]),
    )
    return turning("hub flange", wheel_centre_height, Revolved(spindle(wheel_centre_height), SPINDLE, profile))


@value(SUBJECT, formula="stud head diameter and height on the bolt circle, behind the flange", source=STACK)
def stud_heads_part(
    stud_head_diameter: Mm,
    stud_head_height: Mm,
    flange_thickness: Mm,
    hub_bolt_circle: BoltCircle,
    hub_face_offset: Mm,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The heads of the wheel studs, turned round.

    >>> stud_heads_part(18.0, 6.0, 10.0, BoltCircle("", 5, 100.0), 0.0, 400.0).text
    'stud heads: cylinder, wheel'
    """
    if stud_head_height <= 0:
        raise DoesNotApply("the stud heads are sunk into the flange")
    back = hub_face_offset - flange_thickness
    heads = _round_about(hub_bolt_circle, wheel_centre_height, back - stud_head_height, back, stud_head_diameter / 2)
    return turning("stud heads", wheel_centre_height, *heads)


@value(
    SUBJECT,
    formula="a round bar, shoulder diameter, behind the hub; inside the hub as thick as the shoulder too",
    source=STACK.saying("its nut stands in the pilot, where nothing stands still"),
)
def stub_shaft_part(
    held_together_by: HeldTogetherBy,
    stub_shaft_fitted: bool | None,
    shaft_shoulder: Mm,
    shaft_behind_hub: Mm,
    body_length: Mm,
    plate_thickness: Mm | None,
    bore: Mm | None,
    hub_face_offset: Mm,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The stub shaft that clamps a hub together: it turns with the wheel, in plate and beam, which stand still.

    >>> stub_shaft_part("a clamped stub shaft", True, 50.0, 25.0, 80.0, 12.0, 66.0, 0.0, 400.0).text
    'stub shaft: revolved, wheel'
    """
    if stub_shaft_fitted is False or (held_together_by != "a clamped stub shaft" and not stub_shaft_fitted):
        raise DoesNotApply("no stub shaft holds this hub together")
    if plate_thickness is not None and bore is None:
        raise Waits("plate.bore")
    back = hub_face_offset - body_length - shaft_behind_hub
    whole = ((0.0, back), (shaft_shoulder / 2, back), (shaft_shoulder / 2, hub_face_offset), (0.0, hub_face_offset))
    return turning("stub shaft", wheel_centre_height, Revolved(spindle(wheel_centre_height), SPINDLE, whole))
