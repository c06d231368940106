"""Every piece to cut out of plate or bar: outline, holes, thickness, how many, and what has to be said of it.

The hub plate and the bracket blank are drawn by their own answers; lugs, strips of the beam and the steering arm are taken
from the corner's solids, so that paper and verdicts have one shape.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from rules.corner.part import Part
from rules.drawn.corner_parts import parts_of
from rules.drawn.pieces import Hole, Profile, bracket_blank, hub_plate
from rules.judging.judge import Judged
from rules.judging.reader import Known, reads
from rules.measure.marks import Thread
from rules.measure.outline import Outline
from rules.measure.units import Mm
from rules.sheet.upright import ArmForm, Beam
from rules.sheet.welds import WeldForm
from rules.solids.shapes import Prism


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
        *_strips(known),
        *_arm(known),
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
            half = max(x for x, _ in prism.outline)
            long = max(y for _, y in prism.outline)
            holes = () if thread is None else (Hole((0.0, long), thread.diameter, "pivot bolt hole"),)
            left_out = () if holes else (f"bolt hole: the {which} pivot bolt's thread is not on the sheet",)
            edge = ((half, 0.0, 0.0), (half, long, 1.0), (-half, long, 0.0), (-half, 0.0, 0.0))
            profile = Profile(Outline(-half, half, 0.0, long + half), holes, (), left_out=left_out, edge=edge)
            form = _upper_form(known) if which == "upper" else _lower_form(known)
            notes = (
                f"The straight end is the foot: cut square, then {FEET.get(form or '', 'ground to the plate in the fixture')}.",
                "Drill under size and ream both lugs of a pair together, in the fixture.",
            )
            yield CutPiece(
                f"{which}_lug", f"{which.capitalize()} lug", profile, prism.high - prism.low,
                "4: two left, two right, all alike", notes,
            )  # fmt: skip


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
        side = Profile(Outline(0.0, deep, 0.0, long), (), ())
        yield CutPiece("beam_side", f"Side of the {kind}", side, thickness, "4: two left, two right", (from_spindle,))
        back = Profile(Outline(0.0, wide - 2 * thickness, 0.0, long), (), ())
        words = f"Stands between the two sides; over all the {kind} is as wide as this and two walls."
        yield CutPiece(
            "beam_back", f"Back of the {kind}", back, thickness, "2: one left, one right", (words, from_spindle)
        )


@reads
def _wall(beam: Beam, beam_wall: Mm) -> tuple[str, float] | None:
    return beam, beam_wall


@reads
def _arm(
    steering_arm_form: ArmForm, steering_arm_length: Mm, steering_arm_width: Mm, steering_arm_height: Mm
) -> Iterator[CutPiece]:
    if steering_arm_form == "flat bar":
        profile = Profile(
            Outline(0.0, steering_arm_length, 0.0, steering_arm_width), (), (),
            left_out=("tie-rod hole: mark it in the fixture, where the tie rod's pin puts it",),
        )  # fmt: skip
        notes = (
            "Length from the root to the tie rod's hole; leave the end over the hole on, one hole diameter or more.",
        )
        yield CutPiece("steering_arm", "Steering arm", profile, steering_arm_height, "1 left, 1 right", notes)


def _bracket(known: Known) -> Iterator[CutPiece]:
    profile = bracket_blank(known)
    if profile is not None:
        notes = ("A blank: trimmed to the mock-up, left and right apart. The outer edge is the upper one.",)
        yield CutPiece(
            "caliper_bracket", "Caliper bracket blank", profile, _bracket_thickness(known), "1 left, 1 right", notes
        )  # fmt: skip


@reads
def _bracket_thickness(bracket_thickness: Mm) -> float | None:
    return bracket_thickness
