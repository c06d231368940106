"""Where welds would stand by their levers and the ways of their runs: no yes of a builder lets one stand in the air."""

from collections.abc import Mapping
from itertools import product
from math import cos, hypot
from typing import Any

from rules.checks.agreement.tie import not_compared
from rules.checks.agreement.welds import ROUND
from rules.graph.bands import AtMost
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.said import sided
from rules.measure.units import Mm, Rad
from rules.sheet.upright import Beam
from rules.sheet.welds import PadsStand, Way, WeldForm
from rules.tables import sources
from rules.values.wheel_end.pivots import PIVOTS

AHEAD: dict[PadsStand, float] = {"ahead": 1.0, "behind": -1.0, "above": 0.0, "below": 0.0}
ABOVE: dict[PadsStand, float] = {"ahead": 0.0, "behind": 0.0, "above": 1.0, "below": -1.0}


@check(
    "caliper-weld-on-upright",
    step="weld_caliper_bracket",
    title="Bracket weld by its levers",
    limits=AtMost("mm", 20.0),
    good="by its three levers from the pads it stands on plate or beam, or up to {good} off them",
    stop="further off: in the air, or in the rotor",
    source=sources.GEOMETRY.saying("pads ahead of the wheel centre by their radius, rotor in front of the plate"),
    grade="common practice",
)
def caliper_weld_on_upright(
    weld_caliper_bracket_load_ahead: Mm | None,
    weld_caliper_bracket_load_above: Mm | None,
    weld_caliper_bracket_load_inboard: Mm | None,
    caliper_stands: PadsStand | None,
    clock: Rad | None,
    brake_effective_radius: Mm | None,
    rotor_plane_offset: Mm | None,
    mount_face_offset: Mm | None,
    plate_thickness: Mm | None,
    plate_width: Mm | None,
    plate_height: Mm | None,
    spindle_from_front: Mm | None,
    spindle_from_top: Mm | None,
    beam: Beam | None,
    beam_width: Mm | None,
    beam_depth: Mm | None,
    limits: AtMost,
) -> Judgement:
    """The pads' middle less each lever is the weld's middle, and that lies on the upright; with a wrong sign it does not."""
    has_beam = beam not in (None, "none")
    deep = (beam_depth or 0.0) if has_beam else 0.0
    half = (beam_width or 0.0) / 2 if has_beam else 0.0
    places: list[tuple[tuple[str, str], str, float, float, float]] = []
    levers = (weld_caliper_bracket_load_ahead, weld_caliper_bracket_load_above, weld_caliper_bracket_load_inboard)
    entered = [lever for lever in levers if lever is not None]
    if caliper_stands is None:
        why = "where the caliper stands is not entered with its bracket's weld"
        raise not_compared(why, entered or None, {"weld_caliper_bracket.caliper_stands": caliper_stands})
    radius = brake_effective_radius
    if None not in (weld_caliper_bracket_load_ahead, radius, plate_width, spindle_from_front):
        weld = AHEAD[caliper_stands] * (radius or 0.0) - (weld_caliper_bracket_load_ahead or 0.0)
        front = spindle_from_front or 0.0
        back = front - (plate_width or 0.0)
        places.append((("ahead of", "behind"), "the wheel centre", weld, min(back, -half), max(front, half)))
    if None not in (weld_caliper_bracket_load_above, radius, plate_height, spindle_from_top):
        level = cos(clock) if clock is not None and not ABOVE[caliper_stands] else ABOVE[caliper_stands]
        weld, top = level * (radius or 0.0) - (weld_caliper_bracket_load_above or 0.0), spindle_from_top or 0.0
        places.append((("above", "below"), "the wheel centre", weld, top - (plate_height or 0.0), top))
    if None not in (weld_caliper_bracket_load_inboard, rotor_plane_offset, mount_face_offset, plate_thickness):
        weld = (mount_face_offset or 0.0) - (rotor_plane_offset or 0.0) - (weld_caliper_bracket_load_inboard or 0.0)
        places.append((("inboard of", "outboard of"), "the plate's front", weld, 0.0, (plate_thickness or 0.0) + deep))
    why = "the weld's levers, pads and plate are not all entered"
    bounds = {
        "brake_effective_radius": radius, "rotor_plane_offset": rotor_plane_offset, "mount_face_offset": mount_face_offset,
        "plate.width": plate_width, "plate.spindle_from_front": spindle_from_front, "plate.height": plate_height,
        "plate.spindle_from_top": spindle_from_top, "plate.thickness": plate_thickness,
    }  # fmt: skip
    if not places:
        raise not_compared(why, entered or None, bounds)
    (plus, minus), of, weld, low, high = max(places, key=lambda place: max(place[3] - place[2], place[2] - place[4]))
    (there, at), (start, first), (end, last) = (
        sided(name, place, plus, minus) for name, place in (("weld", weld), ("low", low), ("high", high))
    )
    figures = {**at, **first, **last}
    text = f"By its levers from the pads the bracket's weld stands {there} {of}"
    if limits.verdict(max(low - weld, weld - high)) == "good":
        if len(places) < len(entered):
            raise not_compared(why, entered, bounds)
        return Judgement("good", f"{text}, on the upright.", figures=figures)
    return Judgement(
        "stop",
        f"{text}, and plate and beam reach from {start} to {end} it: the weld would stand in the air. That cannot be.",
        "Tape the lever again, from the weld's middle to the pads' middle, and see to its sign.",
        figures,
    )


ONE_RUN: tuple[WeldForm, ...] = ("fillet on one side", "full bevel")
ON_UPRIGHT = AtMost("mm", 19.0)
"""A doubler of half an inch, which is not entered, and 6 mm that a tape can be out by. Common practice, no source."""
IN_FRONT = 7.0
"""mm that count as further off in front of the plate, where hub and rotor are and no doubler is."""
ON_IT = "runs and the way between them lie on plate and beam, or up to {good} off them"
OFF_IT = "further off: in the air"


@check(
    "{which}-weld-on-upright", step="weld_{which}", title="{Which} weld by its levers and runs", limits=ON_UPRIGHT,
    good=ON_IT, stop=OFF_IT,
    source=sources.GEOMETRY.saying("the pivot less each lever is the weld's middle; seen from above"),
    grade="common practice", each=PIVOTS,
)  # fmt: skip
def pivot_weld_on_upright(
    weld_which_form: WeldForm | None,
    weld_which_runs_lie: Way | None,
    weld_which_apart_lies: Way | None,
    weld_which_run: Mm | None,
    weld_which_apart: Mm | None,
    weld_which_load_ahead: Mm | None,
    weld_which_load_inboard: Mm | None,
    which_pivot_ahead: Mm | None,
    which_pivot_from_mount_face: Mm | None,
    plate_thickness: Mm | None,
    plate_width: Mm | None,
    spindle_from_front: Mm | None,
    beam: Beam | None,
    beam_width: Mm | None,
    beam_depth: Mm | None,
    limits: AtMost,
    which: str,
) -> Judgement:
    """Where the runs of the {which} weld end, fore and aft and inboard: there is metal of the upright, whatever way they lie."""
    weld = {"form": weld_which_form, "runs_lie": weld_which_runs_lie, "apart_lies": weld_which_apart_lies,
            "run": weld_which_run, "apart": weld_which_apart, "load_ahead": weld_which_load_ahead,
            "load_inboard": weld_which_load_inboard}  # fmt: skip
    load = {f"{which}_pivot_ahead": which_pivot_ahead, f"{which}_pivot_from_mount_face": which_pivot_from_mount_face}
    metal = _metal(plate_thickness, plate_width, spindle_from_front, beam, beam_width, beam_depth)
    return _on_upright(f"weld_{which}", weld, load, metal, limits)


@check(
    "arm-weld-on-upright", step="weld_steering_arm", title="Arm weld by its levers and runs", limits=ON_UPRIGHT,
    good=ON_IT, stop=OFF_IT,
    source=sources.GEOMETRY.saying("the tie-rod end less each lever is the weld's middle; seen from above"),
    grade="common practice",
)  # fmt: skip
def arm_weld_on_upright(
    weld_steering_arm_form: WeldForm | None,
    weld_steering_arm_runs_lie: Way | None,
    weld_steering_arm_apart_lies: Way | None,
    weld_steering_arm_run: Mm | None,
    weld_steering_arm_apart: Mm | None,
    weld_steering_arm_load_ahead: Mm | None,
    weld_steering_arm_load_inboard: Mm | None,
    tie_rod_end_ahead: Mm | None,
    tie_rod_end_offset: Mm | None,
    mount_face_offset: Mm | None,
    plate_thickness: Mm | None,
    plate_width: Mm | None,
    spindle_from_front: Mm | None,
    beam: Beam | None,
    beam_width: Mm | None,
    beam_depth: Mm | None,
    limits: AtMost,
) -> Judgement:
    """Where the runs of the arm's weld end, fore and aft and inboard: there is metal of the upright, whatever way they lie."""
    weld = {"form": weld_steering_arm_form, "runs_lie": weld_steering_arm_runs_lie,
            "apart_lies": weld_steering_arm_apart_lies, "run": weld_steering_arm_run, "apart": weld_steering_arm_apart,
            "load_ahead": weld_steering_arm_load_ahead, "load_inboard": weld_steering_arm_load_inboard}  # fmt: skip
    load = {"tie_rod_end_ahead": tie_rod_end_ahead, "tie_rod_end_offset": tie_rod_end_offset,
            "mount_face_offset": mount_face_offset}  # fmt: skip
    metal = _metal(plate_thickness, plate_width, spindle_from_front, beam, beam_width, beam_depth)
    return _on_upright("weld_steering_arm", weld, load, metal, limits)


def _metal(
    plate_thickness: float | None, plate_width: float | None, spindle_from_front: float | None,
    beam: Beam | None, beam_width: float | None, beam_depth: float | None,
) -> dict[str, Any]:  # fmt: skip
    """What of plate and beam is needed to see them from above, by dotted name; None what is not entered."""
    metal: dict[str, Any] = {"plate.thickness": plate_thickness, "plate.width": plate_width,
                             "plate.spindle_from_front": spindle_from_front, "upright.beam": beam}  # fmt: skip
    if beam != "none":
        metal["upright.beam_width"] = beam_width
    if beam not in ("none", "tube"):
        metal["upright.beam_depth"] = beam_depth
    return metal


def _on_upright(
    weld_of: str, weld: Mapping[str, Any], load: Mapping[str, float | None], metal: Mapping[str, Any], limits: AtMost
) -> Judgement:
    """weld_of: its step. weld: its answers. metal: see `_metal`.

    load: where the load is, ahead of the wheel centre and inboard of the plate's front, mm; or its offset and that of the front.
    """
    if weld["form"] == ROUND:
        raise DoesNotApply("the weld is a ring, which has no runs")
    across = () if weld["form"] in ONE_RUN else ("apart", "apart_lies")
    entries = {
        f"{weld_of}.{key}": weld[key] for key in ("form", "runs_lie", "run", "load_ahead", "load_inboard", *across)
    }
    bounds = {**entries, **load, **metal}
    if None in bounds.values():
        entered = [answer for answer in entries.values() if answer is not None]
        raise not_compared(
            "the weld, where its load is, and plate and beam are not all entered", entered or None, bounds
        )
    ahead, inboard, *outboard = (float(place or 0.0) for place in load.values())
    if outboard:  # both from the tyre's middle
        inboard = outboard[0] - inboard
    thick, front = metal["plate.thickness"], metal["plate.spindle_from_front"]
    boxes = [(front - metal["plate.width"], front, 0.0, thick)]
    if metal["upright.beam"] != "none":
        half = metal["upright.beam_width"] / 2
        boxes.append((-half, half, thick, thick + metal.get("upright.beam_depth", 2 * half)))
    apart = weld["apart"] if across else 0.0
    ahead_by, inboard_by = (
        ((weld["run"] if weld["runs_lie"] == way else 0.0) + (apart if weld["apart_lies"] == way else 0.0)) / 2
        for way in ("fore and aft", "in and out")
    )
    x, y = ahead - weld["load_ahead"], inboard - weld["load_inboard"]
    ends = [(x + one * ahead_by, y + other * inboard_by) for one, other in product((-1, 1), repeat=2)]
    each = [(min(_beyond(end, box) for box in boxes), *end) for end in ends]
    counted, off, x, y = max((off + (IN_FRONT if y < 0 else 0.0), off, x, y) for off, x, y in each)
    if limits.verdict(counted) == "good":
        return Judgement("good", "By its levers and the ways of its runs the weld lies on the upright.")
    figures = {"off": (off, "mm"), "x": (abs(x), "mm"), "y": (abs(y), "mm")}
    text = (
        f"By its levers and the ways of its runs the weld reaches {{x}} {'ahead of' if x >= 0 else 'behind'} the wheel centre "
        f"and {{y}} {'inboard' if y >= 0 else 'outboard'} of the plate's front, {{off}} off plate and beam: it would stand in "
        "the air. That cannot be."
    )
    return Judgement(
        "stop", text, "See which way the runs lie and how far apart they are, and tape the levers again.", figures
    )


def _beyond(point: tuple[float, float], box: tuple[float, float, float, float]) -> float:
    """How far a point lies outside a box, mm; box: least and most of the first, then of the second coordinate."""
    (x, y), (left, right, low, high) = point, box
    return hypot(max(left - x, 0.0, x - right), max(low - y, 0.0, y - high))
