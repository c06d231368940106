"""Every piece to cut out of plate or bar: outline, holes, thickness, how many, and what has to be said of it.

The hub plate and the bracket blank are drawn by their own answers; lugs, strips of the beam and the steering arm are taken
from the corner's solids, so that paper and verdicts have one shape.
"""

from collections.abc import Iterator
from math import atan2, hypot, pi, tan

from rules.corner.part import Part
from rules.corner.slots import PlateSlots, beam_tabs, is_lug
from rules.drawn.corner_parts import parts_of
from rules.drawn.pieces import (
    CENTRE_BORE,
    PIVOT_BOLT_HOLE,
    TICK,
    TIE_ROD_HOLE,
    Hole,
    MarkLine,
    Profile,
    bracket_blank,
    hub_plate,
)
from rules.judging.judge import Judged
from rules.judging.reader import Known, reads
from rules.measure.display import show
from rules.measure.marks import Thread
from rules.measure.outline import Outline, Point
from rules.measure.quantity import Units
from rules.measure.records import dataclass, replace
from rules.measure.units import Mm
from rules.motion.kinds import TieRodOuterBolt
from rules.sheet.upright import ArmForm, Beam, BeamCut, HubBoltAccess
from rules.sheet.welds import WeldForm
from rules.solids.shapes import Prism
from rules.values.corner.joint_parts import LugGussets


@dataclass(frozen=True, slots=True)
class CutPiece:
    """One kind of piece. key: for file names. make: how many, in words. side: "" where left and right are alike.

    from_front: whether its x is counted from the front edge and the wheel's centre lines lie on it; thickness: mm, None where
    not known.
    """

    key: str
    title: str
    profile: Profile
    thickness: float | None
    make: str
    notes: tuple[str, ...] = ()
    on_wheel_centre: bool = False


def cut_pieces(judged: Judged) -> tuple[CutPiece, ...]:
    """Every piece whose shape is known, the LEFT one where there are two."""
    known = judged.worked.known
    return (
        *_plates(known),
        *_lugs(known),
        *(_gussets(known) or ()),
        *_strips(known),
        *_arm(known, units=judged.shown_in),
        *_bracket(known),
    )


def _plates(known: Known) -> Iterator[CutPiece]:
    profile = hub_plate(known, "left")
    if profile is not None:
        notes = (
            "LEFT drawn, seen from the hub side: front is to the left. RIGHT is its mirror image.",
            "The face towards the hub is to be flat: machine or grind it after welding.",
        )
        yield CutPiece("hub_plate", "Hub plate", profile, _plate_thickness(known), "1 left, 1 right", notes, True)


@reads
def _plate_thickness(plate_thickness: Mm) -> float | None:
    return plate_thickness


def _lugs(known: Known) -> Iterator[CutPiece]:
    parts = parts_of(known)
    for which, thread in (("upper", _upper_thread(known)), ("lower", _lower_thread(known))):
        if (part := parts.get(f"{which} lugs")) and (prism := _prism(part)):
            _, (across, up), (foot_half, long), _ = prism.outline
            end = hypot(across, up)  # of the round end, which the sides touch
            half, turn = max(end, foot_half), tan((pi + 2 * atan2(up, across)) / 4)
            holes = () if thread is None else (Hole((0.0, long), thread.diameter, PIVOT_BOLT_HOLE),)
            left_out = () if holes else (f"bolt hole: the {which} pivot bolt's thread is not on the sheet",)
            sides = ((across, long - up, turn), (-across, long - up, 0.0))
            edge = ((foot_half, 0.0, 0.0), *sides, (-foot_half, 0.0, 0.0))
            tabs = _tabs(known, piece=part.name, middles=(0.0,)) or ()
            foot = tuple((x, -depth, 0.0) if out else (x, 0.0, 0.0) for x, depth, out in tabs)
            profile = Profile(
                Outline(-half, half, 0.0, long + end), holes, (), left_out=left_out, edge=(*edge, *foot), radius=end
            )
            form = _upper_form(known) if which == "upper" else _lower_form(known)
            notes = (
                f"The straight end is the foot: cut square, then {FEET.get(form or '', 'ground to the plate in the fixture')}.",
                "Drill under size and ream both lugs of a pair together, in the fixture.",
                *(TAB_NOTE if tabs else ()),
            )
            yield CutPiece(
                f"{which}_lug", f"{which.capitalize()} lug", profile, prism.high - prism.low,
                "4: two left, two right, all alike", notes,
            )  # fmt: skip


@reads
def _gussets(
    lug_gussets: LugGussets, upper_lugs_part: Part | None, lower_lugs_part: Part | None
) -> list[CutPiece] | None:
    """A right-angled triangle for each joint that has them, its corner cut off so that the lug's weld runs through under it."""
    found = []
    for which, part in (("upper", upper_lugs_part), ("lower", lower_lugs_part)):
        if part is None or which not in lug_gussets.at:
            continue
        lugs = sum(isinstance(shape, Prism) and is_lug(shape) for shape in part.shapes)
        long, high, corner = lug_gussets.along_plate, lug_gussets.along_lug, lug_gussets.thickness
        corner = min(corner, long / 2, high / 2)
        edge = ((corner, 0.0, 0.0), (long, 0.0, 0.0), (0.0, high, 0.0), (0.0, corner, 0.0))
        make = (
            f"{2 * lugs}: {'two' if lugs == BOTH_LUGS else 'one'} left, {'two' if lugs == BOTH_LUGS else 'one'} right"
        )
        notes = (
            "The lower edge stands on the plate, the left one on the lug's outer face. The lug leans: grind the angle to it in "
            "the fixture. The cut corner lets the lug's weld run through.",
            "It counts for room and not for strength: no figure of this sheet rests on it.",
        )
        profile = Profile(Outline(0.0, long, 0.0, high), (), (), edge=edge)
        found.append(
            CutPiece(f"{which}_gusset", f"{which.capitalize()} gusset", profile, lug_gussets.thickness, make, notes)
        )
    return found


BOTH_LUGS = 2
FEET = {
    "full bevel": "bevelled to an edge for welding through: 45 deg, root face 1.5 mm (1/16 in), gap as on the weld map"
}
"""What a form of weld asks of the edge it joins. Common practice, no source."""


@reads
def _upper_form(weld_upper_form: WeldForm) -> str | None:
    return weld_upper_form


@reads
def _lower_form(weld_lower_form: WeldForm) -> str | None:
    return weld_lower_form


@reads
def _upper_thread(upper_thread: Thread) -> Thread | None:
    return upper_thread


@reads
def _lower_thread(lower_thread: Thread) -> Thread | None:
    return lower_thread


def _prism(part: Part) -> Prism | None:
    return next((shape for shape in part.shapes if isinstance(shape, Prism)), None)


def _strips(known: Known) -> Iterator[CutPiece]:
    part = parts_of(known).get("beam")
    wall = _wall(known)
    if part and wall and (prism := _prism(part)):
        kind, thickness = wall
        if kind not in ("box", "channel"):
            return
        ys, xs = [y for _, y in prism.outline], [x for x, _ in prism.outline]
        long, wide, deep = max(ys) - min(ys), max(xs) - min(xs), prism.high - prism.low
        from_spindle = (
            "Where a bought section is used instead, it is cut to this length. Length is along the plate, up and down."
        )
        tabs = _tabs(known, piece=part.name, middles=_beam_tabs(known, part=part) or ()) or ()
        foot = tuple((-depth if out else 0.0, y, 0.0) for y, depth, out in tabs[::-1])
        edge = ((deep, 0.0, 0.0), (deep, long, 0.0), (0.0, long, 0.0), *foot, (0.0, 0.0, 0.0))
        side = Profile(Outline(0.0, deep, 0.0, long), (), (), edge=edge if tabs else ())
        notes = (from_spindle, *(TAB_NOTE if tabs else ()))
        yield CutPiece("beam_side", f"Side of the {kind}", side, thickness, "4: two left, two right", notes)
        words = f"Stands between the two sides; over all the {kind} is as wide as this and two walls."
        between = Outline(0.0, wide - 2 * thickness, 0.0, long)
        cut_in_back, cut_in_face = _cut_by_the_bore(known) or (False, False)
        holes, missing = _bore_in_strip(known, strip=between, up=-min(ys)) or ((), ())
        back = Profile(between, holes if cut_in_back else (), (), left_out=_access_holes(known) or ())
        back = replace(back, left_out=(*back.left_out, *(missing if cut_in_back else ())))
        yield CutPiece(
            "beam_back", f"Back of the {kind}", back, thickness, "2: one left, one right", (words, from_spindle)
        )
        if kind == "box":
            face = Profile(between, holes if cut_in_face else (), (), left_out=missing if cut_in_face else ())
            on_plate = "Lies on the plate's back, between the two sides."
            yield CutPiece(
                "beam_face", "Face of the box", face, thickness, "2: one left, one right", (on_plate, from_spindle)
            )


@reads
def _cut_by_the_bore(beam: Beam, beam_cut: BeamCut | None) -> tuple[bool, bool] | None:
    """Whether the hub's bore goes through the beam's back, and through a box's face on the plate."""
    cut = beam_cut or ("face on the plate" if beam == "box" else "not cut")
    return cut == "both faces", cut != "not cut"


@reads
def _bore_in_strip(plate_bore: Mm | None, *, strip: Outline, up: float) -> tuple[tuple[Hole, ...], tuple[str, ...]]:
    """The bore in a strip, so far up from its lower end; where it is no hole in it, why."""
    if plate_bore is None:
        return (), (f"{CENTRE_BORE}: its diameter is not on the sheet",)
    if plate_bore >= strip.right - strip.left or not plate_bore / 2 < up < strip.top - plate_bore / 2:
        return (), (
            f"{CENTRE_BORE}: it runs out of this strip; cut it through the welded beam, along the plate's bore",
        )
    return (Hole(((strip.left + strip.right) / 2, up), plate_bore, CENTRE_BORE),), ()


@reads
def _access_holes(hub_bolt_access: HubBoltAccess) -> tuple[str, ...] | None:
    """Said of holes that are asked for and whose size and place nobody has entered."""
    if hub_bolt_access != "access holes":
        return None
    return (
        "access holes over the hub bolts: size and place are not on the sheet; mark them through the hub plate and try the "
        "tool before the beam is closed",
    )


TAB_NOTE = ("Its tabs stand in the plate's slots and end below the face towards the hub. Figures are from the foot.",)


@reads
def _tabs(
    plate_slots: PlateSlots, tab_length: Mm, *, piece: str, middles: tuple[float, ...]
) -> tuple[tuple[float, float, bool], ...] | None:
    """The corners of the tabs along a foot, in order: how far along, how deep, whether out on the tab."""
    depth, half = plate_slots.depth(piece), tab_length / 2
    if depth <= 0:
        return ()
    return tuple(
        corner
        for middle in middles
        for corner in (
            (middle - half, depth, False),
            (middle - half, depth, True),
            (middle + half, depth, True),
            (middle + half, depth, False),
        )
    )


@reads
def _beam_tabs(tab_length: Mm, *, part: Part) -> tuple[float, ...] | None:
    return beam_tabs(part, tab_length)


@reads
def _wall(beam: Beam, beam_wall: Mm) -> tuple[str, float] | None:
    return beam, beam_wall


@reads
def _arm(
    steering_arm_form: ArmForm,
    steering_arm_length: Mm,
    steering_arm_width: Mm,
    steering_arm_height: Mm,
    tie_rod_stud_diameter: Mm | None,
    tie_rod_outer_bolt: TieRodOuterBolt | None,
    arm_end_ahead_of_root: Mm | None,
    arm_end_above_root: Mm | None,
    arm_end_inboard_of_root: Mm | None,
    *,
    units: Units,
) -> Iterator[CutPiece]:
    """A flat bar seen from above, root at the left, round about the tie rod's hole."""
    if steering_arm_form == "flat bar":
        long, wide, half = steering_arm_length, steering_arm_width, steering_arm_width / 2
        edge = ((0.0, 0.0, 0.0), (long, 0.0, 1.0), (long, wide, 0.0), (0.0, wide, 0.0))
        hole, marks, left_out = _tie_rod_hole((long, half), tie_rod_stud_diameter, tie_rod_outer_bolt)
        box = Outline(0.0, long + half, 0.0, wide)
        profile = Profile(box, hole, marks, left_out=left_out, edge=edge, radius=half)
        notes = (
            "Length from the root to the tie rod's hole; the root is cut and bevelled to what it stands on, in the fixture.",
            "Tie-rod hole as the stud is where it leaves the arm. For a tapered stud drill to its small end and ream with the "
            "joint maker's taper, from the side the joint stands on.",
            *_how_it_stands((arm_end_ahead_of_root, arm_end_inboard_of_root, arm_end_above_root), units),
        )
        yield CutPiece("steering_arm", "Steering arm", profile, steering_arm_height, "1 left, 1 right", notes)


_WAYS = (("ahead of", "behind"), ("inboard of", "outboard of"), ("above", "below"))


def _how_it_stands(end: tuple[float | None, float | None, float | None], units: Units) -> tuple[str, ...]:
    """Where a straight arm's end lies from the middle of its root; nothing where that is not known."""
    if None in end:
        return ()
    lies = [
        f"{show(abs(far), 'mm', units)} {ways[far < 0]}"
        for far, ways in zip(end, _WAYS, strict=True)
        if far and abs(far) >= _TO_SET
    ]
    said = " and ".join(filter(None, (", ".join(lies[:-1]), *lies[-1:])))
    return (f"Straight, not bent: on the car the hole's middle lies {said} the middle of its root.",)


_TO_SET = 0.1
"""mm; less is nothing that anybody sets."""


def _tie_rod_hole(
    at: Point, diameter: float | None, lies: str | None
) -> tuple[tuple[Hole, ...], tuple[MarkLine, ...], tuple[str, ...]]:
    """The hole seen from above; where it cannot be cut, a cross to scribe where it is, and why."""
    x, y = at
    if lies not in (None, "up and down"):
        return (), (), ("tie-rod hole: its bolt does not run up and down; drill it square to the bolt, in the fixture",)
    if diameter is not None and lies is not None:
        return (Hole(at, diameter, TIE_ROD_HOLE),), (), ()
    cross = (MarkLine((x - TICK, y), (x + TICK, y), TIE_ROD_HOLE), MarkLine((x, y - TICK), (x, y + TICK), TIE_ROD_HOLE))
    missing = "which way its bolt runs" if lies is None else "the stud's diameter"
    return (), cross, (f"tie-rod hole: {missing} is not on the sheet; its middle is scribed",)


def _bracket(known: Known) -> Iterator[CutPiece]:
    profile = bracket_blank(known)
    if profile is not None:
        notes = (
            "The outer edge is the upper one; the lower one is welded. It is longer and wider than it stays: trim it to the "
            "mock-up, left and right apart, the caliper bolted on.",
        )
        yield CutPiece(
            "caliper_bracket", "Caliper bracket", profile, _bracket_thickness(known), "1 left, 1 right", notes
        )  # fmt: skip


@reads
def _bracket_thickness(bracket_thickness: Mm) -> float | None:
    return bracket_thickness
