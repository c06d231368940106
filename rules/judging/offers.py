"""What a sheet can offer for a question that is not answered: worked out, the same as another, or a start that fits."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from rules.judging.judge import Judged, judge
from rules.judging.reader import Name, answer, name
from rules.judging.trade import trade
from rules.judging.usual import usual_range
from rules.measure.display import in_a_sentence, show
from rules.measure.marks import TyreMark
from rules.measure.quantity import INCH, KINDS
from rules.measure.section_marks import read_section
from rules.sheet import FIELDS
from rules.sheet.pivots import AsFound, Pivots
from rules.sheet.welds import WELDS

WELD = tuple(f"joint_{weld['which']}" for weld in WELDS)
SAME_FOR_WELDS = ("made_from", "metal", "form", "leg", "thickness_two", "welded_by", "filler", "preheat")
TWIN_STEPS = ("pivots", "bolts", "joint_angles")
"""Steps that ask the same of the upper and of the lower pivot; a joint taped where it is has a place of its own."""


def _same() -> Iterator[tuple[str, str]]:
    """A question, and one whose answer is often its own too."""
    yield "tyre.largest", "tyre.smallest"
    yield "hub.mount_height", "hub.mount_width"
    yield "arms.upper_tube", "arms.lower_tube"
    for arm in ("lower", "upper"):
        yield from ((f"arms.{arm}_rear_{key}", f"arms.{arm}_front_{key}") for key in ("from_centre", "height"))
    yield "spring.frame_end_ahead", "spring.arm_end_ahead"
    yield "plate.bracket_thickness", "plate.thickness"
    yield "plate.bracket_hole_diameter", "plate.hole_diameter"
    yield from ((f"joint_angles.tie_rod_{end}_allowed", "joint_angles.upper_allowed") for end in ("outer", "inner"))
    yield "bolts.upper_thread", "hub.mount_bolt_thread"
    yield "bolts.upper_grade", "hub.mount_bolt_grade"
    yield "bolts.stud_grade", "bolts.upper_grade"
    yield "brakes.stop_from", "job.top_speed"
    for question in FIELDS:
        step, _, key = question.partition(".")
        twin = f"{step}.{key.replace('lower_', 'upper_', 1)}"
        if step in TWIN_STEPS and key.startswith("lower_") and twin in FIELDS and question not in TAPED:
            yield question, twin
    yield f"{WELD[0]}.thickness_two", "plate.thickness"
    yield f"{WELD[0]}.welded_by", "plate.weld_process"
    yield from (
        (f"{WELD[1]}.{key}", f"{WELD[0]}.{key}") for key in ("thickness_one", "run", "apart", "runs_lie", "apart_lies")
    )
    for step in WELD[1:]:
        yield from ((f"{step}.{key}", f"{WELD[0]}.{key}") for key in SAME_FOR_WELDS)
    for weld, width, depth in (
        (WELD[2], "upright.steering_arm_width", "upright.steering_arm_height"),
        (WELD[3], "upright.bracket_arm_width", "plate.bracket_thickness"),
    ):
        yield from ((f"{weld}.thickness_one", depth), (f"{weld}.run", width), (f"{weld}.apart", depth))


TAPED = frozenset(asked.name for asked in Pivots.asked_in(AsFound).values())
SAME_AS: Mapping[str, str] = dict(_same())
"""A question, and the one whose answer is often its own too. Common practice, no source.

Only what a builder makes or chooses twice: what is measured on two parts to see whether they fit is never copied.
"""

USED_AS: Mapping[str, Name] = {
    "tyre.design_diameter": name("design_tyre_diameter"),
    "tyre.load_capacity": name("tyre_load_capacity"),
    "wheel.offset": name("wheel_offset"),
    "wheel.backspacing": name("wheel_backspacing"),
    "wheel.overall_width": name("wheel_overall_width"),
    "wheel.barrel_inside_diameter": name("barrel_inside_diameter"),
    "rotor.hat_outside_diameter": name("hat_diameter"),
    "rotor.band_inside_diameter": name("band_inside"),
    "caliper.inboard_reach": name("caliper_inboard"),
    "caliper.inward_reach": name("caliper_inward"),
    "caliper.length": name("caliper_long"),
    "caliper.clock": name("caliper_at"),
    "hub.body_diameter": name("body_diameter"),
    "hub.body_length": name("body_length"),
    "hub.flange_diameter": name("flange_diameter"),
    "hub.flange_thickness": name("flange_thickness"),
    "hub.stud_head_diameter": name("stud_head_diameter"),
    "hub.stud_head_height": name("stud_head_height"),
    "hub.mount_flange_thickness": name("mount_flange_thickness"),
    "arms.tie_rod_tube": name("tie_rod_outside"),
    "spring.shock_diameter": name("shock_outside"),
    **{f"loads.{case}": name(f"{case}_multiple") for case in
       ("bump", "braking", "cornering", "landing", "rock", "steering_stop")},
    **{f"pivots.{key}": name(f"taped_{key}") for key in
       ("spacing", "inclination", "castor", "ground_offset", "axis_ahead", "lower_below_spindle")},
    "pivots.upper_inboard": name("upper_pivot_from_hub_face"),
    "pivots.upper_above": name("upper_above_spindle"),
    "pivots.upper_ahead": name("upper_pivot_ahead"),
    "pivots.lower_inboard": name("lower_pivot_from_hub_face"),
    "pivots.lower_below": name("pivots.lower_below_spindle"),
    "pivots.lower_ahead": name("lower_pivot_ahead"),
    "upright.bracket_arm_offset": name("bracket_rotor_distance"),
    "joint_upper.load_inboard": name("upper_weld_lever_inboard"),
    "joint_lower.load_inboard": name("lower_weld_lever_inboard"),
    "joint_steering_arm.load_ahead": name("steering_arm_lever_ahead"),
    "joint_steering_arm.load_above": name("steering_arm_lever_above"),
    "joint_steering_arm.load_inboard": name("steering_arm_lever_inboard"),
    "joint_caliper_bracket.load_ahead": name("caliper_lever_ahead"),
    "joint_caliper_bracket.load_inboard": name("caliper_lever_inboard"),
}  # fmt: skip
"""A question, and the value that says what its answer comes to by the others."""
HALF_OF = {"plate.spindle_from_front": "plate.width", "plate.spindle_from_top": "plate.height"}
"""A place on the plate, and the side it is often the middle of."""
BY_NAME: Mapping[str, tuple[str, int]] = {
    "upright.beam_depth": ("upright.beam_width", 1),
    "upright.beam_wall": ("upright.beam_width", -1),
    "upright.steering_arm_height": ("upright.steering_arm_width", 1),
    "upright.steering_arm_wall": ("upright.steering_arm_width", -1),
}
"""A size, and where the stock it belongs to may have been entered by name, `3 x 2 x 1/4 box`: which of its sizes it is."""
NOUGHT: Mapping[str, str] = {
    **{f"{step}.{key}": "beside the pivot" for step in WELD[:2] for key in ("load_ahead", "load_above")},
    f"{WELD[3]}.load_above": "level with it",
    "brakes.pad_thickness_worn": "to be safe",
}
"""Questions whose answer is nought at the usual place of the weld, or on the safe side, and the reason."""


@dataclass(frozen=True, slots=True)
class Offer:
    """entry: as it would be typed. origin: where it comes from, in a few words. measured: False for a stand-in that only a
    measurement can replace: it is shown and not taken over, for then it would count as measured."""

    entry: str | bool
    origin: str
    measured: bool = True


def offer(field_name: str, judged: Judged) -> Offer | None:
    """What can be offered for a question without an answer; None where nothing can, or where it is answered."""
    if field_name in judged.sheet.typed:
        return None
    found = _wheel_diameter(judged) if field_name == "wheel.diameter" else None
    return found or _worked_out(field_name, judged) or _same_as(field_name, judged)


def _same_as(field_name: str, judged: Judged) -> Offer | None:
    asked, like = FIELDS[field_name], SAME_AS.get(field_name, "")
    entry = judged.sheet.typed.get(like)
    if like not in judged.sheet.answers or not isinstance(entry, str | bool) or not _reads(asked, entry, judged):
        return None
    there = FIELDS[like].step.replace("joint_", "").replace("_", " ")
    return Offer(
        entry, f"as {there}" if FIELDS[like].label == asked.label else f"as {in_a_sentence(FIELDS[like].label)}"
    )


def _reads(asked: Any, entry: object, judged: Judged) -> bool:
    try:
        asked.read(entry, judged.sheet.units)
    except ValueError:
        return False
    return True


def _worked_out(field_name: str, judged: Judged) -> Offer | None:
    asked, worked = FIELDS[field_name], judged.worked
    if field_name in NOUGHT:
        return Offer("0", NOUGHT[field_name])
    if whole := HALF_OF.get(field_name):
        side = judged.sheet.answers.get(whole)
        return Offer(show(side / 2, "mm", judged.shown_in), "the middle") if isinstance(side, float) else None
    if field_name in BY_NAME:
        return _by_name(field_name, judged)
    if field_name not in USED_AS:
        return None
    found = answer(worked.known, USED_AS[field_name])
    if not isinstance(found, int | float):
        return None
    entry = show(float(found), KINDS[asked.kind].unit, judged.shown_in)
    if field_name.startswith("loads."):
        return Offer(entry, f"usual for {judged.sheet.answers.get('job.use', 'this use')}")
    if USED_AS[field_name].origin in worked.estimated:
        return Offer(entry, "an estimate", measured=False)
    return Offer(entry, "worked out")


def _by_name(field_name: str, judged: Judged) -> Offer | None:
    """A size of stock that was entered by name in another row."""
    other, place = BY_NAME[field_name]
    if other not in judged.sheet.answers:
        return None
    sizes = read_section(judged.sheet.typed[other], judged.sheet.units)
    return Offer(show(sizes[place], "mm", judged.shown_in), "by its name") if sizes else None


def _wheel_diameter(judged: Judged) -> Offer | None:
    mark = judged.sheet.answers.get("tyre.smallest")
    return Offer(show(mark.rim_code * INCH, "mm", "inch"), "by the tyre") if isinstance(mark, TyreMark) else None


TRIALS = 13
"""So many answers are tried over the usual range."""


def can_start(field_name: str) -> bool:
    """Whether a start value is offered: a number of the builder's own choosing, with a usual range."""
    asked = FIELDS.get(field_name)
    return (
        asked is not None and asked.step in OWN and asked.kind in ("length", "angle") and bool(usual_range(field_name))
    )


OWN = ("pivots", "steering", "arms", "plate", "upright", *WELD)
"""Steps in which a builder chooses; what stands in the others is measured, and nobody offers a measurement."""


def start_value(field_name: str, judged: Judged, with_answer: Callable[[str], Any]) -> str | None:
    """An answer within the usual range that leaves the fewest verdicts stopping, then watching; of those the middle one.

    with_answer: gives the sheet with this entry in place. None where there is no usual range.
    """
    bounds = usual_range(field_name)
    if bounds is None:
        return None
    low, high = bounds
    unit = KINDS[FIELDS[field_name].kind].unit
    touched = set(trade().checks_touched_by(field_name))
    tried: list[tuple[int, int, int, str]] = []
    for place in range(TRIALS):
        entry = show(low + (high - low) * place / (TRIALS - 1), unit, judged.shown_in)
        found = judge(with_answer(entry), judged.shown_in, judged, light=True).findings
        verdicts = [each.verdict for each in found if each.check in touched]
        tried.append((verdicts.count("stop"), verdicts.count("watch"), abs(place - TRIALS // 2), entry))
    return min(tried)[-1]
