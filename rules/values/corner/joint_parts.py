"""The outer joints: their housings, the lugs and bolts that hold them, steering arm and tie-rod end."""

from math import copysign, hypot, isclose, sqrt

from rules.corner.part import AnyPart, Foot, MovesWith, Part
from rules.graph.asking import given, need
from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged, OutsideRange, Waits
from rules.measure.marks import Thread
from rules.measure.records import dataclass
from rules.measure.units import Mm, Ratio
from rules.measure.vectors import Vector, cross, dot, minus, plus, size, times, unit
from rules.motion.joints import bolt_direction
from rules.motion.kinds import OuterPivotBolt
from rules.motion.points import FORWARD, OUTBOARD, UP, UprightPoints
from rules.sheet.bolts import JointSide
from rules.sheet.pivots import PivotKind, Shear
from rules.sheet.plate import Gussets
from rules.sheet.steering import TieRodEnd
from rules.sheet.upright import ArmForm
from rules.solids.outline import Polygon
from rules.solids.shapes import Ball, Cylinder, Prism
from rules.tables import sources
from rules.tables.hexagons import hexagon_for
from rules.values.optional_step import whole, whole_once_begun

SUBJECT = "corner"
BOTH = ({"which": "upper"}, {"which": "lower"})
PLACE = sources.GEOMETRY
LEAST_LUG = 1.0
"""mm from the plate's back to the pivot, where lugs can stand."""


@value(SUBJECT, formula="a ball, {which} housing reach, round the {which} pivot", source=PLACE, each=BOTH)
def which_joint_housing_part(which: str, which_radius: Mm | None, upright_points: UprightPoints) -> AnyPart:
    """The {which} joint's housing, which belongs to its arm; its middle stays on the upright.

    >>> upright = UprightPoints((10.0, -80.0, 300.0), (-15.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    >>> which_joint_housing_part("upper", 22.0, upright).text
    'upper joint housing: ball, upper arm'
    """
    if which_radius is None:
        raise Waits(f"pivots.{which}_radius")
    arm: MovesWith = "upper arm" if which == "upper" else "lower arm"
    ball = Ball(_pivot(which, upright_points), which_radius)
    return Part(f"{which} joint housing", arm, (ball,), "housing", held_by="upright")


def _pivot(which: str, upright: UprightPoints) -> Vector:
    return upright.upper if which == "upper" else upright.lower


TOWARDS: dict[JointSide, Vector] = {
    "above": UP, "below": (0.0, 0.0, -1.0), "ahead": FORWARD, "behind": (-1.0, 0.0, 0.0), "outboard": OUTBOARD,
    "inboard": (0.0, -1.0, 0.0),
}  # fmt: skip
BOTH_SIDES = 0.0
NO_BOLTS = "nothing is entered of the bolts and lugs"


@value(
    SUBJECT,
    formula="double shear: 0, both; else 1 along the bolt's direction or -1 against it, as its side says; 0 until it does",
    source=PLACE,
    each=BOTH,
)
def which_lug_side(
    which: str,
    which_kind: PivotKind,
    which_shear: Shear | None,
    which_side: JointSide | None,
    which_gap: Mm | None,
    which_lug_thickness: Mm | None,
    which_bolt: OuterPivotBolt | None,
    upright_points: UprightPoints,
) -> Ratio:
    """On which side of the {which} joint metal stands. Both, an estimate, until it is said how it is held, and on which side.

    >>> upright = UprightPoints((0.0, -120.0, 300.0), (0.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    >>> which_lug_side("upper", "ball joint", None, "below", 18.0, 15.0, "along the steering axis", upright)
    -1.0
    """
    begun = {f"bolts.{which}_gap": which_gap, f"bolts.{which}_lug_thickness": which_lug_thickness}
    whole_once_begun(NO_BOLTS, begun)
    if which_kind != "ball joint" and which_shear is None:
        return Estimate(BOTH_SIDES, measure=f"pivots.{which}_shear")
    if which_kind != "ball joint" and which_shear == "double":
        return BOTH_SIDES
    along = _bolt(which, which_bolt, upright_points)
    if which_side is None:
        return Estimate(BOTH_SIDES, measure=f"bolts.{which}_side")
    leans = dot(TOWARDS[which_side], along)
    if abs(leans) < 0.5:
        raise OutsideRange(
            f"the {which} joint's stud or lug is said to stand {which_side}, but its bolt lies {which_bolt}",
            change=f"Put right side of the {which} stud or lug, or {which} joint's bolt or stud lies.",
        )
    return copysign(1.0, leans)


def _from_middle(which: str, width: float | None, gap: float | None) -> tuple[float, float]:
    """From the joint's middle to the ball's side and to the lug's inner face, mm."""
    names = {f"bolts.{which}_ball_width": width, f"bolts.{which}_gap": gap}
    wide, free = whole_once_begun(NO_BOLTS, names)
    return wide / 2, wide / 2 + free


def _bolt(which: str, lies: OuterPivotBolt | None, upright: UprightPoints) -> Vector:
    if lies is None:
        raise Waits(f"joint_angles.{which}_bolt")
    return bolt_direction(lies, upright)


@dataclass(frozen=True, slots=True)
class LugGussets:
    """The triangles that brace lugs. at: the joints that have them; sizes in mm."""

    at: tuple[str, ...] = ()
    thickness: float = 0.0
    along_plate: float = 0.0
    along_lug: float = 0.0

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        return f"gussets at {' and '.join(self.at)} lugs" if self.at else "no gussets"


NO_GUSSETS = LugGussets()


@value(SUBJECT, formula="as entered", source=sources.AS_ENTERED)
def lug_gussets(plate: Gussets) -> LugGussets:
    """The gussets at the lugs; none while nothing of them is entered.

    >>> from rules.sheet.plate import Plate
    >>> sizes = {"gusset_thickness": 6.0, "gusset_along_plate": 30.0, "gusset_along_lug": 25.0}
    >>> lug_gussets(Plate.record({"gusset_at": "both", **sizes})).text
    'gussets at upper and lower lugs'
    """
    keys = ("gusset_at", "gusset_thickness", "gusset_along_plate", "gusset_along_lug")
    if all(given(plate, key) is None for key in keys):
        return NO_GUSSETS
    need(plate, *keys)
    at = ("upper", "lower") if plate.gusset_at == "both" else (plate.gusset_at.removesuffix(" lugs"),)
    return LugGussets(at, plate.gusset_thickness, plate.gusset_along_plate, plate.gusset_along_lug)


@value(
    SUBJECT,
    formula="flat pieces square to the bolt, ball width and gap apart, as wide as entered at the plate's back and round the "
    "pivot at the hole's edge distance; two in double shear, else one on its side",
    source=PLACE,
    each=BOTH,
)
def which_lugs_part(
    which: str,
    which_lug_side: Ratio,
    which_ball_width: Mm | None,
    which_gap: Mm | None,
    which_lug_thickness: Mm | None,
    which_edge_distance: Mm | None,
    which_bolt: OuterPivotBolt | None,
    plate_thickness: Mm | None,
    mount_face_offset: Mm,
    upright_points: UprightPoints,
    lug_gussets: LugGussets = NO_GUSSETS,
    which_lug_width: Mm | None = None,
) -> AnyPart:
    """The lugs of the {which} joint with their gussets, or the one boss that holds a stud or a single bolt.

    A lug whose width is not entered is as wide at its root as round the bolt.

    >>> upright = UprightPoints((0.0, -120.0, 300.0), (0.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    >>> bolt = (0.0, 20.0, 5.0, 10.0, 20.0, "fore and aft")
    >>> which_lugs_part("upper", *bolt, 10.0, -70.0, upright).text
    'upper lugs: 4 shapes, upright'
    """
    _, inner = _from_middle(which, which_ball_width, which_gap)
    names = {f"bolts.{which}_lug_thickness": which_lug_thickness, f"bolts.{which}_edge_distance": which_edge_distance}
    thick, edge = whole_once_begun(NO_BOLTS, names)
    (plate,) = whole({"plate.thickness": plate_thickness})
    pivot, along = _pivot(which, upright_points), _bolt(which, which_bolt, upright_points)
    out = minus(OUTBOARD, times(dot(OUTBOARD, along), along))
    if size(out) < 0.1:
        raise NotJudged(f"the {which} joint's bolt lies across the car; how its lugs stand is not asked")
    out = unit(out)
    reach = (mount_face_offset - plate - pivot[1]) / out[1]
    if reach < LEAST_LUG:
        raise NotJudged(f"the {which} pivot does not lie behind the plate; how its lugs stand is not asked")
    outline = _flat(edge, reach, edge if which_lug_width is None else which_lug_width / 2)
    across = cross(out, along)
    shapes: list[Prism | Cylinder] = []
    sides = {1.0: (inner, inner + thick), -1.0: (-inner - thick, -inner)}
    for low, high in (both for side, both in sides.items() if which_lug_side in (side, BOTH_SIDES)):
        shapes.append(Prism(pivot, across, out, outline, low, high))
        shapes.append(Cylinder(plus(pivot, times(low, along)), plus(pivot, times(high, along)), edge))
    if which in lug_gussets.at:
        for way in (way for way in sides if which_lug_side in (way, BOTH_SIDES)):
            shapes.append(_gusset(lug_gussets, pivot, out, times(way, along), reach, inner + thick))
    return Part(f"{which} lugs", "upright", tuple(shapes))


def _flat(edge: float, reach: float, foot: float) -> Polygon:
    """A lug without its round end: from the foot, half so wide, straight to where its sides touch the circle round the bolt.

    The bolt is at 0, 0 and the foot `reach` up. Lugs of one width:

    >>> [(round(x, 9), round(y, 9)) for x, y in _flat(15.0, 40.0, 15.0)]
    [(-15.0, 0.0), (15.0, 0.0), (15.0, 40.0), (-15.0, 40.0)]
    """
    away = hypot(foot, reach)
    along = sqrt(max(away**2 - edge**2, 0.0))  # of a side, from the foot to where it touches
    x = edge * (edge * foot + along * reach) / away**2
    y = edge * (edge * reach - along * foot) / away**2
    return ((-x, y), (x, y), (foot, reach), (-foot, reach))


def _gusset(sizes: LugGussets, pivot: Vector, out: Vector, away: Vector, reach: float, face: float) -> Prism:
    """A triangle on a lug's outer face and the plate's back, in the middle of the lug's width."""
    outline = ((reach, face), (reach - sizes.along_lug, face), (reach, face + sizes.along_plate))
    return Prism(pivot, out, away, outline, -sizes.thickness / 2, sizes.thickness / 2)


@value(
    SUBJECT,
    formula="a shank through ball and lugs, a head on one side, a nut on the other, each turned round",
    source=(sources.ISO_4014, sources.ISO_4032, sources.ASME_B18_2_1, sources.ASME_B18_2_2),
    each=BOTH,
)
def which_pivot_bolt_part(
    which: str,
    which_kind: PivotKind,
    which_lug_side: Ratio,
    which_ball_width: Mm | None,
    which_gap: Mm | None,
    which_lug_thickness: Mm | None,
    which_thread: Thread | None,
    which_bolt: OuterPivotBolt | None,
    upright_points: UprightPoints,
) -> AnyPart:
    """The bolt of the {which} joint. Which end the head is on is not asked: a nut's height counts at both.

    A ball joint's stud has no head: it begins at the ball.

    >>> upright = UprightPoints((0.0, -120.0, 300.0), (0.0, -120.0, 590.0), (0.0, 0.0, 400.0))
    >>> bolt = ("spherical bearing", 0.0, 20.0, 5.0, 10.0, Thread("", 14.0, 1.5), "fore and aft")
    >>> which_pivot_bolt_part("upper", *bolt, upright).text
    'upper pivot bolt: 3 shapes, upright'
    """
    ball, inner = _from_middle(which, which_ball_width, which_gap)
    names = {f"bolts.{which}_lug_thickness": which_lug_thickness, f"bolts.{which}_thread": which_thread}
    thick, thread = whole_once_begun(NO_BOLTS, names)
    pivot, along = _pivot(which, upright_points), _bolt(which, which_bolt, upright_points)
    along = times(copysign(1.0, which_lug_side), along)
    hexagon, face = hexagon_for(thread.diameter), inner + thick
    end = face + hexagon.nut + 2 * thread.pitch

    def bar(low: float, high: float, radius: float) -> Cylinder:
        return Cylinder(plus(pivot, times(low, along)), plus(pivot, times(high, along)), radius)

    nut, name = bar(face, end, hexagon.corner_radius), f"{which} pivot bolt"
    if which_kind == "ball joint" and which_lug_side != BOTH_SIDES:
        return Part(name, "upright", (bar(0.0, face, thread.diameter / 2), nut))
    back = face if which_lug_side == BOTH_SIDES else ball
    head = bar(face - end - back, -back, hexagon.corner_radius)
    return Part(name, "upright", (bar(-back, face, thread.diameter / 2), nut, head))


@value(SUBJECT, formula="a ball, tie-rod end housing reach, round the outer tie-rod joint", source=sources.AS_ENTERED)
def tie_rod_end_part(
    tie_rod_end_reach: Mm | None,
    steering: TieRodEnd,
    tie_rod_end_ahead: Mm | None,
    tie_rod_end_offset: Mm | None,
    tie_rod_end_height: Mm | None,
) -> AnyPart:
    """The tie-rod end's housing, which belongs to the tie rod; its middle stays on the upright.

    >>> from rules.sheet.steering import Steering
    >>> tie_rod_end_part(20.0, Steering.record({"tie_rod_ahead": -120.0}), -120.0, -90.0, 360.0).text
    'tie-rod end: ball, tie rod'
    """
    if tie_rod_end_reach is None and all(given(steering, key) is None for key in ("tie_rod_ahead", "copied_length")):
        raise NotJudged(
            "no tie-rod end is entered under steering", "steering.tie_rod_ahead", "steering.tie_rod_end_reach"
        )
    (reach,) = whole({"steering.tie_rod_end_reach": tie_rod_end_reach})
    middle = _tie_rod_end(tie_rod_end_ahead, tie_rod_end_offset, tie_rod_end_height)
    return Part("tie-rod end", "tie rod", (Ball(middle, reach),), "housing", held_by="upright")


def _tie_rod_end(ahead: float | None, offset: float | None, height: float | None) -> Vector:
    """The middle of the outer tie-rod joint, which waits for what its place rests on."""
    x, y, z = whole({"tie_rod_end_ahead": ahead, "tie_rod_end_offset": offset, "tie_rod_end_height": height})
    return (x, y, z)


@value(
    SUBJECT,
    formula="a bar of the root's section, from the middle of its root, as the weld's levers place it, to the tie-rod end; a flat "
    "bar goes on round about the hole, half its width from it",
    source=PLACE.saying("the arm counts as thick all along as at its root"),
)
def steering_arm_part(
    steering_arm_form: ArmForm | None,
    steering_arm_width: Mm | None,
    steering_arm_height: Mm | None,
    steering_arm_length: Mm | None,
    arm_end_ahead_of_root: Mm | None,
    arm_end_above_root: Mm | None,
    arm_end_inboard_of_root: Mm | None,
    tie_rod_end_ahead: Mm | None,
    tie_rod_end_offset: Mm | None,
    tie_rod_end_height: Mm | None,
) -> AnyPart:
    """The steering arm from root to tie-rod end.

    >>> steering_arm_part("flat bar", 60.0, 25.0, None, -110.0, 0.0, 60.0, -150.0, -120.0, 400.0).text
    'steering arm: 2 shapes, upright'
    """
    if steering_arm_form is None:
        if steering_arm_width is not None or steering_arm_height is not None or steering_arm_length is not None:
            raise Waits("upright.steering_arm_form")
        raise NotJudged("the steering arm's form is not entered under upright strength", "upright.steering_arm_form")
    round_arm = steering_arm_form.startswith("round")
    sizes = {"upright.steering_arm_width": steering_arm_width}
    if not round_arm:
        sizes["upright.steering_arm_height"] = steering_arm_height
    wide, *rest = whole(sizes)
    levers = {"arm_end_ahead_of_root": arm_end_ahead_of_root, "arm_end_above_root": arm_end_above_root,
              "arm_end_inboard_of_root": arm_end_inboard_of_root}  # fmt: skip
    ahead, above, inboard = whole(levers)
    end = _tie_rod_end(tie_rod_end_ahead, tie_rod_end_offset, tie_rod_end_height)
    root = minus(end, (ahead, -inboard, above))
    length = size(minus(end, root))
    if isclose(length, 0.0, abs_tol=1.0):
        raise OutsideRange(
            "the steering arm's weld lies at the tie-rod end itself",
            change="Put right the steering arm weld's load ahead of the weld, above it and inboard of it.",
        )
    along = times(1 / length, minus(end, root))
    foot = Foot((root,), along)
    if round_arm:
        return Part("steering arm", "upright", (Cylinder(root, end, wide / 2),), foot=foot)
    level = cross(UP, along)
    level = unit(level) if size(level) > 1e-6 else OUTBOARD
    x, y = wide / 2, rest[0] / 2
    outline = ((-x, -y), (x, -y), (x, y), (-x, y))
    bar = Prism(root, level, cross(along, level), outline, 0.0, length)
    if steering_arm_form != "flat bar":
        return Part("steering arm", "upright", (bar,), foot=foot)
    through = times(y, cross(along, level))
    eye = Cylinder(minus(end, through), plus(end, through), x)
    return Part("steering arm", "upright", (bar, eye), foot=foot)
