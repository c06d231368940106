"""Where the caliper bracket's weld would stand by its levers: no yes of a builder lets it stand in the air."""

from math import cos

from rules.checks.agreement.tie import not_compared
from rules.graph.bands import AtMost
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.said import sided
from rules.measure.units import Mm, Rad
from rules.sheet.upright import Beam
from rules.sheet.welds import PadsStand
from rules.tables import sources

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
