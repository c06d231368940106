"""Can the plate be cut and drilled so: metal around the holes, holes the process can make."""

from math import hypot, inf

from rules.corner.part import Part
from rules.corner.slots import NarrowMetal, PlateSlots
from rules.graph.asking import given
from rules.graph.bands import AtLeast, Limits, at_least, at_most
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, NotJudged, Waits
from rules.measure.closeness import more_than, reaches
from rules.measure.marks import Thread
from rules.measure.outline import LighterBy, PlainHole, PlateEnds
from rules.measure.units import Mm
from rules.sheet.plate import BracketBlank, CutProcess, DrawnPlate
from rules.sheet.upright import Beam
from rules.solids.pieces import Hull
from rules.tables import sources
from rules.tables.edge_distance import least_edge_distance
from rules.values.optional_step import need_once_begun
from rules.values.wheel_end.plate import DRAWS_BRACKET, DRAWS_PLATE, NO_BRACKET, NOT_DRAWN

EDGE_SOURCE = (
    sources.AISC_360.at("Table J3.4", "least edge distance of standard holes, the floor; written for buildings"),
    sources.COMMON_PRACTICE.saying("2 diameters; 1.5 where the table has no row, under 1/2 in"),
)
CUT_SOURCE = sources.COMMON_PRACTICE.saying(
    "plasma holes no smaller than 1.5 x the thickness, laser holes no smaller than 1 x"
)
CUSTOM = AtLeast("1", good=2.0)
"""Bolt diameters from a hole's centre to the edge."""
SMALLEST_HOLE: dict[CutProcess, float] = {"plasma": 1.5, "laser": 1.0}
"""Times the thickness."""
RUN_TOGETHER = "Two holes run {over} into each other"
HALF = 0.5
"""Of that still comes out of the plate, tapered and rough."""
CUT_HOLES = Limits(other={process: (times, "1") for process, times in SMALLEST_HOLE.items()})
HOLES_IN_WORDS = "plasma: {plasma} x the thickness or more; laser: {laser} x or more; drilled: any"


@check(
    "corner-radius-fits",
    step="plate",
    title="Corners fit the plate",
    good="corner radius at most half of the shorter side",
    stop="more",
    source=sources.GEOMETRY.saying("there is no room for a larger radius"),
    try_changing=("plate.corner_radius",),
)
def corner_radius_fits(plate: DrawnPlate) -> Judgement:
    """Whether the sides have room for the corners. Empty counts as square corners."""
    need_once_begun(plate, "width", "height", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    verdict = at_most(given(plate, "corner_radius") or 0.0, good=min(plate.width, plate.height) / 2)
    if verdict == "good":
        return Judgement("good", "The corners fit the plate.")
    return Judgement(
        "stop", "The corner radius, {corner_radius}, is more than half of the shorter side.", "A smaller radius."
    )


@check(
    "hole-edge-distance",
    step="plate",
    title="Hub bolt holes clear of the plate's edge",
    limits=CUSTOM,
    good="{good} bolt diameters or more from hole centre to edge, and the table's least",
    watch="the table's least edge distance or more",
    stop="less",
    source=EDGE_SOURCE,
    try_changing=("plate.width", "plate.height"),
)
def hole_edge_distance(hub_bolt_edge_distance: Mm, mount_bolt_thread: Thread, limits: AtLeast) -> Judgement:
    """From the centre of the worst placed hub bolt hole to the edge of the plate, corners counted."""
    return _edge_distance("A hub bolt", hub_bolt_edge_distance, mount_bolt_thread.diameter, limits)


def _edge_distance(whose: str, distance: float, bolt: float, limits: AtLeast) -> Judgement:
    floor, custom = least_edge_distance(bolt), limits.good * bolt
    verdict = at_least(distance, good=max(custom, floor), watch=floor)
    figures = {"distance": (distance, "mm"), "floor": (floor, "mm"), "custom": (custom, "mm"), "bolt": (bolt, "mm")}
    if distance <= 0:
        return Judgement("stop", f"{whose}'s centre is off the piece.", "Check the places of the holes.", figures)
    return Judgement(
        verdict,
        f"{whose}'s centre is {{distance}} from the edge; the least for a {{bolt}} bolt is {{floor}}, custom is {{custom}}.",
        ""
        if verdict == "good"
        else "More metal around the hole. To go lower than the least is an engineer's decision.",
        figures,
        in_hand=distance - max(custom, floor),
    )


@check(
    "hole-spacing",
    step="plate",
    title="Metal between the plate's holes",
    limits=AtLeast("1", good=3.0, watch=8 / 3, other={"metal": (1.0, "1")}),
    good="hub bolts {good} diameters apart or more, and {metal} diameter of metal between any two holes, bore included",
    watch="{watch} to {good} diameters apart",
    stop="less",
    source=sources.AISC_360.at(
        "J3.3", "written for bolt holes of buildings; to count the centre bore as a hole is common practice"
    ),
    try_changing=("plate.bore",),
)
def hole_spacing(
    hub_bolt_spacing: Mm, metal_between_holes: Mm, mount_bolt_thread: Thread, limits: AtLeast
) -> Judgement:
    """Spacing of the hub bolts, and the narrowest metal between two holes."""
    bolt = mount_bolt_thread.diameter
    figures = {"bolt": (bolt, "mm"), "over": (-metal_between_holes, "mm")}
    narrow = (
        "The narrowest metal between two holes is {metal_between_holes}" if metal_between_holes >= 0 else RUN_TOGETHER
    )
    if not reaches(metal_between_holes, limits.other["metal"][0] * bolt):
        return Judgement(
            "stop",
            f"{narrow}; one bolt diameter of metal, {{bolt}}, is the least.",
            "A smaller centre bore if the hub allows it, or another hub.",
            figures,
        )
    verdict = limits.verdict(hub_bolt_spacing / bolt)
    return Judgement(
        verdict,
        "The hub bolts are {hub_bolt_spacing} apart, with {metal_between_holes} of metal between the closest two holes.",
        "" if verdict == "good" else "The hub sets this spacing: smaller holes leave more metal, or use another hub.",
        figures,
    )


@check(
    "bore-edge-metal",
    step="plate",
    title="Metal beside the centre bore",
    limits=AtLeast("1", good=1.0, watch=-inf),
    good="{good} hub bolt diameter of metal or more",
    watch="less",
    stop="the bore breaks out of the plate",
    source=sources.NO_FIGURE,
    try_changing=("plate.width",),
)
def bore_edge_metal(metal_beside_bore: Mm, mount_bolt_thread: Thread, limits: AtLeast) -> Judgement:
    """The narrowest metal between the centre bore and the plate's edge. It says nothing of strength."""
    bolt = mount_bolt_thread.diameter
    change, figures = "A wider plate, or the wheel centre elsewhere in it.", {"bolt": (bolt, "mm")}
    none_left = Judgement("stop", "The centre bore breaks out of the plate.", change, figures)
    text = "Beside the centre bore {metal_beside_bore} of metal is left; a hub bolt is {bolt} thick."
    change = "More metal beside the bore: have somebody qualified size it."
    return _metal_left(metal_beside_bore, bolt, limits, none_left, text, change)


def _metal_left(
    metal: float, beside: float, limits: AtLeast, none_left: Judgement, text: str, change: str
) -> Judgement:
    """Metal beside a bore, a hole or a slot, against the size it is counted in; `none_left` where there is none."""
    if not more_than(metal, 0.0):
        return none_left
    verdict = limits.verdict(metal / beside)
    return Judgement(verdict, text, "" if verdict == "good" else change, none_left.figures)


@check(
    "hole-not-too-small",
    step="plate",
    title="Plate holes the process can cut",
    limits=CUT_HOLES,
    good=HOLES_IN_WORDS,
    watch="half of that or more",
    stop="less",
    source=CUT_SOURCE,
)
def hole_not_too_small(
    plate: DrawnPlate, process: CutProcess | None, left_for_drilling: Mm | None, limits: Limits
) -> Judgement:
    """The smallest hole of the plate, as it is cut, against its thickness."""
    need_once_begun(plate, "hole_diameter", "bore", "thickness", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE)
    return _smallest_hole(
        min(plate.hole_diameter - (left_for_drilling or 0.0), plate.bore), plate.thickness, process, limits
    )


def _smallest_hole(hole: float, thickness: float, process: CutProcess | None, limits: Limits) -> Judgement:
    if process is None:
        raise Waits("plate.process")
    if process == "saw and drill":
        return Judgement("good", "The holes are drilled.")
    if process not in limits.other:
        raise NotJudged(f"no figure is known here for the smallest hole of a {process}: ask the cutter")
    least = limits.other[process][0] * thickness
    verdict = at_least(hole, good=least, watch=HALF * least)
    text = f"The smallest hole is cut at {{hole}}; the least for {process} in {{plate}} plate is {{least}}."
    figures = {"hole": (hole, "mm"), "least": (least, "mm"), "plate": (thickness, "mm")}
    if verdict != "good":
        return Judgement(verdict, text, "Have the holes marked and drill them, or use another process.", figures)
    if process == "plasma":
        best = "[0.02 to 0.06 in | 0.5 to 1.5 mm]"
        text += f" Plasma cuts to {best} at best: have bolt holes cut under size, and drill or ream them."
    return Judgement(verdict, text, figures=figures)


@check(
    "plate-reaches-pivots",
    step="plate",
    title="Plate reaches both pivots",
    good="the plate ends beyond both pivot centres, up and down",
    watch="it ends short of one",
    source=sources.COMMON_PRACTICE.saying("what bridges the rest carries the pivot and needs a drawing of its own"),
    try_changing=("plate.height",),
)
def plate_reaches_pivots(plate_beyond_upper_pivot: Mm, plate_beyond_lower_pivot: Mm) -> Judgement:
    """How far the plate's top and bottom edges stand beyond the pivots' centres."""
    beyond = {"upper": plate_beyond_upper_pivot, "lower": plate_beyond_lower_pivot}
    short = {name: distance for name, distance in beyond.items() if not reaches(distance, 0.0)}
    if not short:
        return Judgement("good", "The plate reaches both pivots.")
    figures = {name: (-distance, "mm") for name, distance in short.items()}
    parts = " and ".join(f"{{{name}}} short of the {name} pivot's centre" for name in short)
    return Judgement(
        "watch",
        f"The plate ends {parts}. What bridges that carries the pivot.",
        "A taller plate, or a drawing of the piece that bridges it, sized by somebody qualified.",
        figures,
    )


@check(
    "plate-ends-fit",
    step="plate",
    title="Narrowed ends fit the plate",
    good="each rounded end, on the steering axis, lies within the plate's width and below its full width",
    stop="one does not",
    source=sources.GEOMETRY.saying("there is no room for it"),
    try_changing=("plate.upper_end_width", "plate.lower_end_width"),
)
def plate_ends_fit(plate: DrawnPlate, plate_ends: PlateEnds) -> Judgement:
    """Whether the rounded ends are where and as wide as they are entered, and not drawn smaller or shifted."""
    if not any(plate_ends):
        raise DoesNotApply("the plate keeps its full width to both ends")
    need_once_begun(
        plate, "width", "height", "spindle_from_top", "spindle_from_front", why_not=NOT_DRAWN, begun_by=DRAWS_PLATE
    )
    front, rear = plate.spindle_from_front, plate.width - plate.spindle_from_front
    tall = {"upper": plate.spindle_from_top, "lower": plate.height - plate.spindle_from_top}
    for name, end in (("upper", plate_ends.upper), ("lower", plate_ends.lower)):
        if end is None:
            continue
        past = max(end.ahead + end.width / 2 - front, end.width / 2 - end.ahead - rear)
        if more_than(past, 0.0):
            text = f"The {name} end, on the steering axis, would reach {{past}} beyond the plate's side."
            return Judgement("stop", text, "A narrower end, or a wider plate.", {"past": (past, "mm")})
        if more_than(end.full_to + (given(plate, "corner_radius") or 0.0), tall[name]):
            text = f"The plate ends before its full width does, which goes {{full}} from the wheel centre to the {name} end."
            return Judgement("stop", text, "A shorter full width.", {"full": (end.full_to, "mm")})
    return Judgement("good", "The narrowed ends fit the plate.")


@check(
    "lightening-hole-metal",
    step="plate",
    title="Metal round the lightening holes",
    limits=AtLeast("1", good=1.0, watch=-inf),
    good="{good} plate thickness of metal or more, and no weld over a hole",
    watch="less",
    stop="a hole breaks out, or a welded piece stands over it",
    source=sources.NO_FIGURE,
    try_changing=("plate.hole_above", "plate.hole_below"),
)
def lightening_hole_metal(
    metal_round_lightening: Mm,
    lightening_holes: LighterBy,
    plate_thickness: Mm,
    beam_part: Part | None,
    upper_lugs_part: Part | None,
    lower_lugs_part: Part | None,
    beam: Beam | None,
    upper_lug_thickness: Mm | None,
    lower_lug_thickness: Mm | None,
    wheel_centre_height: Mm,
    limits: AtLeast,
) -> Judgement:
    """The narrowest metal round a hole that lightens the plate, and what is welded over it. Strength is judged apart."""
    none_left = Judgement("stop", "A lightening hole runs out of the plate or into another hole.", "A smaller hole.")
    if not more_than(metal_round_lightening, 0.0):
        return none_left  # before anything waits
    begun = {
        "beam_part": (beam_part, beam not in (None, "none")),
        "upper_lugs_part": (upper_lugs_part, upper_lug_thickness is not None),
        "lower_lugs_part": (lower_lugs_part, lower_lug_thickness is not None),
    }
    if missing := [name for name, (part, wanted) in begun.items() if wanted and part is None]:
        raise Waits(*missing)
    for part in filter(None, (beam_part, upper_lugs_part, lower_lugs_part)):
        if any(
            more_than(hole.diameter / 2, _from_foot(part, hole, wheel_centre_height)) for hole in lightening_holes.holes
        ):
            text = f"The {part.name} would be welded over a lightening hole."
            return Judgement("stop", text, "A smaller hole, or one farther from the piece.", about=part.name)
    text = "Round the lightening holes {metal_round_lightening} of metal is left; the plate is {plate_thickness} thick."
    change = "More metal round the hole, or no hole."
    return _metal_left(metal_round_lightening, plate_thickness, limits, none_left, text, change)


def _from_foot(part: Part, hole: PlainHole, centre: float) -> float:
    """From a hole's middle to the rectangle round the foot of a welded piece, mm; 0 under it."""
    points = [point for piece in part.solid.pieces if isinstance(piece, Hull) for point in piece.points]
    foot = (max(y for _, y, _ in points) + min(y for _, y, _ in points)) / 2
    seen = [(x, z - centre) for x, y, z in points if y >= foot]
    aside = max(0.0, min(x for x, _ in seen), -max(x for x, _ in seen))
    over = max(0.0, min(z for _, z in seen) - hole.above, hole.above - max(z for _, z in seen))
    return hypot(aside, over)


@check(
    "slot-metal",
    step="plate",
    title="Metal round the slots for tabs",
    limits=AtLeast("1", good=0.5, watch=-inf),
    good="{good} plate thickness of metal or more",
    watch="less",
    stop="a slot breaks out or runs into a hole or another slot, or a tab is longer than its piece",
    source=sources.NO_FIGURE,
    try_changing=("plate.tab_length",),
)
def slot_metal(
    plate_slots: PlateSlots,
    narrowest_beside_slots: NarrowMetal,
    metal_round_slots: Mm,
    plate_thickness: Mm,
    tab_length: Mm,
    limits: AtLeast,
) -> Judgement:
    """The narrowest metal between a slot and the plate's edge, bore, another hole or slot, and tabs that fit their piece."""
    for piece, foot in plate_slots.short:
        text = f"The tabs, {{tab_length}} long, are longer than the foot of the {piece}, {{foot}}."
        return Judgement("stop", text, "Shorter tabs.", {"foot": (foot, "mm")})
    _, slot, beside = narrowest_beside_slots
    none_left = Judgement("stop", f"The {slot} runs into {beside}.", "Shorter tabs.")
    text = f"Between the {slot} and {beside} {{metal_round_slots}} of metal is left; the plate is {{plate_thickness}} thick."
    change = "Shorter tabs, or a larger plate."
    return _metal_left(metal_round_slots, plate_thickness, limits, none_left, text, change)


@check(
    "gusset-clears-bolt",
    step="plate",
    title="Gussets clear of the pivot bolts",
    limits=AtLeast("mm", good=3.0, watch=0.0),
    source=sources.COMMON_PRACTICE.saying("a head or nut needs a flat to lie on, and its socket room"),
    try_changing=("plate.gusset_along_lug",),
)
def gusset_clears_bolt(gusset_bolt_room: Mm, limits: AtLeast) -> Judgement:
    """From the end of a gusset, on the lug, to the head or nut of the pivot bolt."""
    verdict = limits.verdict(gusset_bolt_room)
    if verdict == "stop":
        return Judgement(
            "stop", "A gusset stands under the head or nut of its pivot bolt.", "A shorter gusset along the lug."
        )
    text = "Between gusset and pivot bolt's head or nut {gusset_bolt_room} is free."
    return Judgement(verdict, text, "" if verdict == "good" else "A shorter gusset: a socket has to go on.")


@check(
    "bracket-hole-edge-distance",
    step="plate",
    title="Caliper bolt holes clear of the edge",
    limits=CUSTOM,
    good="{good} hole diameters or more from hole centre to edge, and the table's least",
    watch="the table's least edge distance or more",
    stop="less",
    source=(
        sources.AISC_360.at("Table J3.4", "least edge distance of standard holes, the floor; written for buildings"),
        sources.COMMON_PRACTICE.saying(
            "2 diameters; 1.5 where the table has no row, under 1/2 in; the bolt is taken as large as its hole"
        ),
    ),
    try_changing=("plate.bracket_hole_from_edge",),
)
def bracket_hole_edge_distance(bracket_edge_distance: Mm, bracket_hole_diameter: Mm, limits: AtLeast) -> Judgement:
    """From a caliper bolt's centre to the edge of the bracket blank."""
    return _edge_distance("A caliper bolt", bracket_edge_distance, bracket_hole_diameter, limits)


@check(
    "bracket-hole-not-too-small",
    step="plate",
    title="Bracket holes the process can cut",
    limits=CUT_HOLES,
    good=HOLES_IN_WORDS,
    watch="half of that or more",
    stop="less",
    source=CUT_SOURCE,
)
def bracket_hole_not_too_small(
    plate: BracketBlank, process: CutProcess | None, left_for_drilling: Mm | None, limits: Limits
) -> Judgement:
    """The caliper bolt holes, as they are cut, against the bracket's thickness."""
    need_once_begun(plate, "bracket_hole_diameter", "bracket_thickness", why_not=NO_BRACKET, begun_by=DRAWS_BRACKET)
    cut = plate.bracket_hole_diameter - (left_for_drilling or 0.0)
    return _smallest_hole(cut, plate.bracket_thickness, process, limits)
