"""What is cut out of the LEFT upright's pieces and left in the corner's solids: bolt holes, slots, the inside of a beam.

A bolt fills its hole and nothing moves within a beam, so that verdicts need neither; a model of the piece does.
"""

from rules.corner.part import Part
from rules.drawn.pieces import Profile, hub_plate
from rules.drawn.upright_pieces import pieces_of
from rules.judging.reader import Known, reads
from rules.measure.outline import Point
from rules.measure.records import replace
from rules.measure.units import Mm
from rules.measure.vectors import Vector, minus, plus, times, unit
from rules.motion.kinds import TieRodOuterBolt
from rules.motion.points import UP
from rules.sheet.upright import ArmForm, Beam, BeamCut
from rules.solids.shapes import Cylinder, Prism, Shape
from rules.values.corner.upright_parts import TO_THE_REAR

_BEYOND = 1.0
"""mm that an opening reaches past the faces it goes through."""


def openings(known: Known) -> dict[str, tuple[Shape, ...]]:
    """The shapes to take away, by the names of the corner's parts."""
    parts = pieces_of(known)
    found: dict[str, tuple[Shape, ...]] = {}
    if (profile := hub_plate(known, "left")) and "plate" in parts:
        found["plate"] = _in_plate(known, profile=profile) or ()
    for which in ("upper", "lower"):
        if bolt := parts.get(f"{which} pivot bolt"):
            found[f"{which} lugs"] = found[f"{which} joint housing"] = _shank(bolt)
    if beam := parts.get("beam"):
        found["beam"] = _in_beam(known, part=beam) or ()
    if arm := parts.get("steering arm"):
        found["steering arm"] = _in_arm(known, part=arm) or ()
    return {name: shapes for name, shapes in found.items() if shapes}


@reads
def _in_plate(
    mount_face_offset: Mm, plate_thickness: Mm, wheel_centre_height: Mm, *, profile: Profile
) -> tuple[Shape, ...] | None:
    """Round holes and slots. profile: as the plate's own sheet has it, seen from the hub side, so that front is to the left."""
    back, front = mount_face_offset - plate_thickness - _BEYOND, mount_face_offset + _BEYOND

    def at(place: Point, along: float) -> Vector:
        return (-place[0], along, wheel_centre_height + place[1])

    holes = [Cylinder(at(hole.centre, back), at(hole.centre, front), hole.diameter / 2) for hole in profile.holes]
    middle = (0.0, 0.0, wheel_centre_height)
    return *holes, *(Prism(middle, TO_THE_REAR, UP, tuple(slot.corners), back, front) for slot in profile.slots)


def _shank(bolt: Part) -> tuple[Shape, ...]:
    """The hole in lugs and ball is the shank itself."""
    shank = bolt.shapes[0]
    assert isinstance(shank, Cylinder)
    return (_longer(shank),)


def _longer(hole: Cylinder) -> Cylinder:
    run = times(_BEYOND, unit(minus(hole.end, hole.start)))
    return replace(hole, start=minus(hole.start, run), end=plus(hole.end, run))


@reads
def _in_arm(
    steering_arm_form: ArmForm, tie_rod_stud_diameter: Mm, tie_rod_outer_bolt: TieRodOuterBolt, *, part: Part
) -> tuple[Shape, ...] | None:
    """The hole in a flat bar's eye, where its bolt runs up and down, as its sheet has it."""
    eye = part.shapes[-1]
    if steering_arm_form != "flat bar" or tie_rod_outer_bolt != "up and down" or not isinstance(eye, Cylinder):
        return None
    return (_longer(replace(eye, radius=tie_rod_stud_diameter / 2)),)


@reads
def _in_beam(
    beam: Beam, beam_wall: Mm, beam_cut: BeamCut | None, plate_bore: Mm | None, *, part: Part
) -> tuple[Shape, ...] | None:
    """The inside of a tube, box or channel, open at both ends, and the bore where it is cut through a wall."""
    block = part.shapes[0]
    if isinstance(block, Cylinder):
        return (_longer(replace(block, radius=block.radius - beam_wall)),) if beam_wall < block.radius else None
    if beam not in ("box", "channel") or not isinstance(block, Prism):
        return None
    xs, ys = zip(*block.outline, strict=True)
    left, right, low, high = min(xs) + beam_wall, max(xs) - beam_wall, min(ys) - _BEYOND, max(ys) + _BEYOND
    inner, outer = block.low + beam_wall, block.high + (_BEYOND if beam == "channel" else -beam_wall)
    if left >= right or inner >= outer:
        return None
    corners = ((left, low), (right, low), (right, high), (left, high))
    inside = replace(block, outline=corners, low=inner, high=outer)
    cut = beam_cut or ("face on the plate" if beam == "box" else "not cut")
    if plate_bore is None or cut == "not cut":
        return (inside,)
    start = block.low - _BEYOND if cut == "both faces" else inner
    first, last = (plus(block.origin, times(along, block.normal)) for along in (start, block.high + _BEYOND))
    return inside, Cylinder(first, last, plate_bore / 2)
