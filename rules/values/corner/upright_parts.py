"""The parts that stand still on the upright: hub, plate, beam, caliper with its bracket, hub bolts."""

from math import atan2, cos, dist, hypot, pi, remainder, sin

from rules.corner.part import SPINDLE, AnyPart, Part, spindle
from rules.graph.declare import value
from rules.graph.results import NotJudged, OutsideRange, Waits
from rules.measure.belt import Arc, arcs
from rules.measure.marks import Thread
from rules.measure.outline import (
    FULL_WIDTH,
    Outline,
    PlateEnds,
    inside_distance,
    outline_points,
    plate_outline,
)
from rules.measure.units import Mm
from rules.measure.vectors import Vector
from rules.sheet.bolts import ScrewedInto
from rules.sheet.hub import HeldTogetherBy, turns_on_a_snout
from rules.sheet.upright import Beam
from rules.solids.shapes import Bore, Cylinder, Prism, Revolved, Shape, block
from rules.tables import sources
from rules.tables.hexagons import hexagon_for
from rules.values.optional_step import needed, whole, whole_once_begun
from rules.values.wheel_end.hub_bolts import BoltPlaces

SUBJECT = "corner"
STACK = sources.GEOMETRY
TO_THE_REAR: Vector = (-1.0, 0.0, 0.0)
UP: Vector = (0.0, 0.0, 1.0)
EAR = 1.25
"""Bolt diameters of metal beside a hub bolt's middle in the hub's mounting flange. Common practice, no source."""
SAME = 1e-6
"""mm; corners of an outline nearer than this are one."""
PLATE_SIZES = (
    "plate.width", "plate.height", "plate.spindle_from_top", "plate.spindle_from_front", "plate.thickness",
)  # fmt: skip
NO_PLATE = "the plate is not drawn yet"


def begun_plate_thickness(thickness: float | None, width: float | None) -> float:
    """The plate's thickness, mm. Not judged while no plate is begun, waiting once its width is entered without it.

    >>> begun_plate_thickness(12.0, None)
    12.0
    """
    if thickness is None and width is not None:
        raise Waits("plate.thickness")
    if thickness is None:
        raise NotJudged(NO_PLATE, "plate.thickness")
    return thickness


@value(SUBJECT, formula="a round bar, body diameter, from behind the flange to the hub's end", source=STACK)
def hub_body_part(
    body_diameter: Mm,
    body_length: Mm,
    flange_thickness: Mm,
    hub_face_offset: Mm,
    wheel_centre_height: Mm,
    held_together_by: HeldTogetherBy | None,
) -> AnyPart:
    """The hub's body and spigot, which stand still; those of a hub on a fixed snout turn with the wheel.

    >>> hub_body_part(80.0, 90.0, 10.0, 0.0, 400.0, "itself").text
    'hub body: cylinder, upright'
    """
    if body_length <= flange_thickness:
        raise OutsideRange(
            "the hub's body ends within its flange", change="Put right hub body length or flange thickness."
        )
    front, back = ((0.0, hub_face_offset - along, wheel_centre_height) for along in (flange_thickness, body_length))
    turns = turns_on_a_snout(held_together_by)
    return Part("hub body", "wheel" if turns else "upright", (Cylinder(front, back, body_diameter / 2),))


@value(
    SUBJECT,
    formula="a block round the hub bolts, or a disc where they stand on a circle, 1.25 bolt diameters beyond them, in front of "
    "the mounting face of the hub",
    source=sources.COMMON_PRACTICE.saying("the metal beside the bolts"),
)
def hub_mounting_flange_part(
    hub_bolts_stand: BoltPlaces,
    mount_bolt_thread: Thread,
    mount_flange_thickness: Mm,
    mount_face_offset: Mm,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The ears of the hub that the plate bolts to.

    >>> bolts = BoltPlaces(((40.0, 45.0), (-40.0, 45.0), (-40.0, -45.0), (40.0, -45.0)))
    >>> hub_mounting_flange_part(bolts, Thread("", 12.0, 1.75), 12.0, -60.0, 400.0).text
    'hub mounting flange: prism, upright'
    """
    beyond = EAR * mount_bolt_thread.diameter
    if hub_bolts_stand.in_a_circle:
        back, front = (
            (0.0, along, wheel_centre_height)
            for along in (mount_face_offset, mount_face_offset + mount_flange_thickness)
        )
        return Part("hub mounting flange", "upright", (Cylinder(back, front, hub_bolts_stand.farthest + beyond),))
    wide, high = (2 * (max(abs(place[i]) for place in hub_bolts_stand.places) + beyond) for i in (0, 1))
    middle = (0.0, mount_face_offset + mount_flange_thickness / 2, wheel_centre_height)
    return Part("hub mounting flange", "upright", (block(middle, TO_THE_REAR, UP, wide, high, mount_flange_thickness),))


@value(
    SUBJECT,
    formula="shanks from the heads behind the plate to the mounting flange's front, or to nuts in front of it",
    source=(sources.ISO_4014, sources.ISO_4032, sources.ASME_B18_2_1, sources.ASME_B18_2_2),
)
def hub_bolts_part(
    hub_bolts_stand: BoltPlaces | None,
    mount_bolt_thread: Thread,
    mount_flange_thickness: Mm,
    plate_thickness: Mm | None,
    plate_width: Mm | None,
    hub_bolt_into: ScrewedInto | None,
    mount_face_offset: Mm,
    wheel_centre_height: Mm,
) -> AnyPart:
    """The hub's mounting bolts with their heads, turned round, and with nuts where they go into nuts.

    >>> bolts, thread = BoltPlaces(((40.0, 45.0), (-40.0, -45.0))), Thread("", 12.0, 1.75)
    >>> hub_bolts_part(bolts, thread, 12.0, 10.0, 140.0, "nut", -60.0, 400.0).text
    'hub bolts: 6 shapes, upright'
    """
    thickness = begun_plate_thickness(plate_thickness, plate_width)
    hexagon = hexagon_for(mount_bolt_thread.diameter)
    back, front = mount_face_offset - thickness, mount_face_offset + mount_flange_thickness
    shapes: list[Shape] = []
    for x, z in needed("hub_bolts_stand", hub_bolts_stand).places:

        def bar(start: float, end: float, radius: float, x: float = x, z: float = z) -> Cylinder:
            return Cylinder((x, start, wheel_centre_height + z), (x, end, wheel_centre_height + z), radius)

        shapes.append(bar(back - hexagon.head, back, hexagon.corner_radius))
        shapes.append(bar(back, front, mount_bolt_thread.diameter / 2))
        if hub_bolt_into == "nut":
            shapes.append(bar(front, front + hexagon.nut + 2 * mount_bolt_thread.pitch, hexagon.corner_radius))
    return Part("hub bolts", "upright", tuple(shapes))


def _outline(
    width: float | None,
    height: float | None,
    top: float | None,
    front: float | None,
    corner: float | None,
    thickness: float | None,
    ends: PlateEnds = FULL_WIDTH,
) -> tuple[Outline, float]:
    """The plate's outline, x forward, and its thickness."""
    sizes = {"plate.width": width, "plate.height": height, "plate.thickness": thickness, "plate.spindle_from_top": top,
             "plate.spindle_from_front": front}  # fmt: skip
    wide, high, thick, from_top, from_front = whole_once_begun(NO_PLATE, sizes)
    outline = plate_outline(
        wide, high, from_top, from_front, corner or 0.0, "right", ends
    )  # a right piece has its front at the right: x is forward
    if not (outline.left < 0 < outline.right and outline.bottom < 0 < outline.top):
        raise NotJudged("the wheel centre does not lie inside the plate's outline; put that right first")
    return outline, thick


@value(
    SUBJECT,
    formula="the plate's own outline with its bore, thickness inboard of the mounting face of the hub",
    source=STACK,
)
def plate_part(
    plate_width: Mm | None,
    plate_height: Mm | None,
    spindle_from_top: Mm | None,
    spindle_from_front: Mm | None,
    corner_radius: Mm | None,
    plate_thickness: Mm | None,
    bore: Mm | None,
    mount_face_offset: Mm,
    wheel_centre_height: Mm,
    plate_ends: PlateEnds = FULL_WIDTH,
) -> AnyPart:
    """The upright's plate, exact: round corners and bore. Its bolt holes, full of bolts, are not taken out.

    >>> plate_part(140.0, 260.0, 140.0, 70.0, 20.0, 10.0, 80.0, -60.0, 400.0).text
    'plate: 5 shapes, upright'
    """
    placed = (plate_width, plate_height, spindle_from_top, spindle_from_front)
    outline, thickness = _outline(*placed, corner_radius, plate_thickness, plate_ends)
    back, front = mount_face_offset - thickness, mount_face_offset
    middle = spindle(wheel_centre_height)
    hole = Bore((0.0, 0.0), bore / 2) if bore else None
    if hole and not inside_distance((0.0, 0.0), outline) > hole.radius:
        raise NotJudged("the plate's bore does not lie inside its outline; put that right first")
    if hole and not _bore_clear_of_rounds(outline, hole.radius):
        raise NotJudged("the plate's bore reaches into the round of a corner, and such a plate is not drawn in space")
    shapes = _belt(outline, middle, back, front, hole) if outline.rounds else _plate(outline, middle, back, front, hole)
    return Part("plate", "upright", tuple(shapes))


def _bore_clear_of_rounds(outline: Outline, radius: float) -> bool:
    """Whether a bore about the wheel's axis ends before what is drawn apart: the round corners' squares, the rings of a belt."""
    if outline.rounds:
        return all(_from_spindle(arc) > radius for arc in arcs(outline.rounds))
    r = outline.corner_radius
    beside = min(max(0.0, -outline.left - r), max(0.0, outline.right - r))
    along = min(max(0.0, -outline.bottom - r), max(0.0, outline.top - r))
    return r <= 0 or hypot(beside, along) > radius


def _plate(outline: Outline, middle: Vector, back: float, front: float, bore: Bore | None) -> list[Shape]:
    """The plate with its corners cut straight off and the bore in it, and four quarter discs: exact, with few pieces.

    x of the outline is forward.
    """
    left, right, bottom, top, r = outline.left, outline.right, outline.bottom, outline.top, outline.corner_radius
    corners = (
        (left + r, bottom), (right - r, bottom), (right, bottom + r), (right, top - r), (right - r, top), (left + r, top),
        (left, top - r), (left, bottom + r),
    )  # fmt: skip
    apart = tuple(
        here for here, before in zip(corners, corners[-1:] + corners[:-1], strict=True) if dist(here, before) > SAME
    )
    shapes: list[Shape] = [_flat(middle, apart, back, front, bore)]
    if r <= SAME:
        return shapes
    for x, ahead in ((left + r, -1), (right - r, 1)):
        for z, up in ((bottom + r, -1), (top - r, 1)):
            towards = (ahead * cos(pi / 4), 0.0, up * sin(pi / 4))
            quarter = ((0.0, back), (r, back), (r, front), (0.0, front))
            origin = (middle[0] + x, middle[1], middle[2] + z)
            shapes.append(Revolved(origin, SPINDLE, quarter, towards=towards, half_angle=pi / 4))
    return shapes


def _belt(outline: Outline, middle: Vector, back: float, front: float, bore: Bore | None) -> list[Shape]:
    """The plate from tangent point to tangent point, and over each of its arcs a part of a ring: exact. x is forward."""
    corners = tuple((x, y) for x, y, _ in outline_points(outline))
    shapes: list[Shape] = [_flat(middle, corners, back, front, bore)]
    for arc in arcs(outline.rounds):
        inner, outer = _ring_inside(arc), arc.disc.radius
        origin = (middle[0] + arc.disc.x, middle[1], middle[2] + arc.disc.y)
        part = ((inner, back), (outer, back), (outer, front), (inner, front))
        towards = (cos(arc.middle), 0.0, sin(arc.middle))
        shapes.append(Revolved(origin, SPINDLE, part, towards=towards, half_angle=arc.half))
    return shapes


def _from_spindle(arc: Arc) -> float:
    """From the wheel centre to the nearest place of the ring over an arc."""
    disc = arc.disc
    turn = remainder(atan2(-disc.y, -disc.x) - arc.middle, 2 * pi)
    angle = arc.middle + min(max(turn, -arc.half), arc.half)
    along = min(max(-disc.x * cos(angle) - disc.y * sin(angle), _ring_inside(arc)), disc.radius)
    return hypot(disc.x + along * cos(angle), disc.y + along * sin(angle))


def _ring_inside(arc: Arc) -> float:
    """A ring from this radius on holds all between the arc and its chord."""
    return arc.disc.radius * max(cos(arc.half), 0.0)


def _flat(
    middle: Vector, corners: tuple[tuple[float, float], ...], back: float, front: float, bore: Bore | None
) -> Prism:
    """An outline, x forward and y up, standing square to the wheel's axis; its own x then runs to the rear."""
    return Prism(middle, TO_THE_REAR, UP, tuple((-x, z) for x, z in corners), back, front, bore)


@value(
    SUBJECT,
    formula="beam width by beam depth behind the plate, up and down the plate; clear of the joints where it "
    "does not run past both pivots, else to its ends as entered",
    source=STACK.saying("the beam counts as standing straight behind the wheel's axis"),
)
def beam_part(
    beam: Beam | None,
    beam_width: Mm | None,
    beam_depth: Mm | None,
    beam_to_pivots: bool | None,
    beam_top: Mm | None,
    beam_bottom: Mm | None,
    plate_width: Mm | None,
    plate_height: Mm | None,
    spindle_from_top: Mm | None,
    spindle_from_front: Mm | None,
    plate_thickness: Mm | None,
    upper_above_spindle: Mm,
    lower_below_spindle: Mm,
    upper_radius: Mm | None,
    lower_radius: Mm | None,
    mount_face_offset: Mm,
    wheel_centre_height: Mm,
    upper_lugs_part: Part | None,
    lower_lugs_part: Part | None,
    upper_pivot_bolt_part: Part | None,
    lower_pivot_bolt_part: Part | None,
) -> AnyPart:
    """The beam on the back of the plate, as what it takes up from outside: box, channel or tube.

    >>> sizes = (140.0, 300.0, 150.0, 70.0, 10.0, 120.0, 120.0, 22.0, 22.0, -60.0, 400.0)
    >>> beam_part("box", 60.0, 40.0, True, None, None, *sizes, *[None] * 4).text
    'beam: prism, upright'
    """
    if beam is None and (beam_width is not None or beam_depth is not None):
        raise Waits("upright.beam")
    if beam is None or beam == "none":
        raise NotJudged("no beam is entered under upright strength", "upright.beam")
    if beam_width is None or (beam_depth is None and beam != "tube"):
        raise Waits("upright.beam_width" if beam_width is None else "upright.beam_depth")
    if beam_to_pivots is None:
        raise Waits("upright.beam_to_pivots")
    placed = (plate_width, plate_height, spindle_from_top, spindle_from_front)
    whole(dict(zip(PLATE_SIZES, (*placed, plate_thickness), strict=True)))
    outline, thickness = _outline(*placed, None, plate_thickness)
    low, high = outline.bottom, outline.top
    if not beam_to_pivots and beam_top is not None and beam_bottom is not None:
        low, high = max(low, -beam_bottom), min(high, beam_top)
    elif not beam_to_pivots:
        if upper_radius is None or lower_radius is None:
            raise Waits(
                *(
                    f"pivots.{which}_radius"
                    for which, r in (("upper", upper_radius), ("lower", lower_radius))
                    if r is None
                )
            )
        low = max(low, lower_radius + CLEAR_OF_JOINT - lower_below_spindle)
        high = min(high, upper_above_spindle - upper_radius - CLEAR_OF_JOINT)
        below, above = (lower_lugs_part, lower_pivot_bolt_part), (upper_lugs_part, upper_pivot_bolt_part)
        low = max([low, *(_end(part, 1.0) - wheel_centre_height + CLEAR_OF_BOLT for part in below if part)])
        high = min([high, *(-_end(part, -1.0) - wheel_centre_height - CLEAR_OF_BOLT for part in above if part)])
    if low >= high:
        raise OutsideRange(
            "no height is left for the beam between the two joints",
            change="Another pivot spacing, smaller housings, or a beam that runs past both pivots: enter which.",
        )
    depth, back = beam_depth or beam_width, mount_face_offset - thickness
    half = beam_width / 2
    corners = ((-half, low), (half, low), (half, high), (-half, high))
    return Part("beam", "upright", (_flat(spindle(wheel_centre_height), corners, back - depth, back, None),))


def _end(part: Part, way: float) -> float:
    """How far up, or with -1 how far down, a part reaches, mm from the ground."""
    return max(way * piece.support(0.0, 0.0, way)[2] + piece.radius for piece in part.solid.pieces)


CLEAR_OF_BOLT = 5.0
"""mm that such a beam leaves free beside the lugs and the bolt of a joint. Common practice, no source."""
CLEAR_OF_JOINT = 12.0
"""mm that a beam which ends before the pivots leaves free beside a joint's housing. Common practice, no source."""
