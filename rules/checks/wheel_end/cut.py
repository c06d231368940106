"""Can the plate be cut and drilled so: metal around the holes, holes the process can make."""

from rules.graph.bands import at_least, at_most
from rules.graph.declare import check
from rules.graph.results import Judgement, NotForThisBuild, Waits
from rules.measure.closeness import more_than, reaches
from rules.measure.marks import Thread
from rules.measure.units import Mm
from rules.tables.edge_distance import least_edge_distance
from rules.values.wheel_end.plate import drawn

EDGE_SOURCE = (
    "floor: AISC 360-16 Table J3.4, least edge distance of standard holes, written for buildings (under 1/2 in, where it "
    "has no row, 1.5 bolt diameters, trade custom); the 2 diameters are trade custom, no source"
)
CUT_SOURCE = "cutting trade pages: plasma holes no smaller than 1.5 x the thickness, laser holes no smaller than 1 x; no standard"
SMALLEST_HOLE = {"plasma": 1.5, "laser": 1.0}
"""Times the thickness."""


@check(
    "corner-radius-fits",
    step="plate",
    title="Corners fit the plate",
    good="corner radius at most half of the shorter side",
    stop="more",
    source="plain geometry: there is no room for a larger radius",
    grade="common practice",
    try_changing=("plate.corner_radius",),
)
def corner_radius_fits(corner_radius: Mm | None, plate_width: Mm | None, plate_height: Mm | None) -> Judgement:
    """Whether the sides have room for the corners. Empty counts as square corners."""
    width, height = drawn("plate", width=plate_width, height=plate_height)
    radius = corner_radius or 0.0
    verdict = at_most(radius, good=min(width, height) / 2)
    if verdict == "good":
        return Judgement("good", "The corners fit the plate.")
    return Judgement(
        "stop", "The corner radius, {corner_radius}, is more than half of the shorter side.", "A smaller radius."
    )


@check(
    "hole-edge-distance",
    step="plate",
    title="Hub bolt holes clear of the plate's edge",
    good="2 bolt diameters or more from hole centre to edge, and the table's least",
    watch="the table's least edge distance or more",
    stop="less",
    source=EDGE_SOURCE,
    grade="standard",
    try_changing=("plate.width", "plate.height"),
)
def hole_edge_distance(hub_bolt_edge_distance: Mm, mount_bolt_thread: Thread) -> Judgement:
    """From the centre of the worst placed hub bolt hole to the edge of the plate, corners counted."""
    return _edge_distance("A hub bolt", hub_bolt_edge_distance, mount_bolt_thread.diameter)


def _edge_distance(whose: str, distance: float, bolt: float) -> Judgement:
    floor, custom = least_edge_distance(bolt), 2 * bolt
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
    )


@check(
    "hole-spacing",
    step="plate",
    title="Metal between the plate's holes",
    good="hub bolts 3 diameters apart or more, and one diameter of metal between any two holes, centre bore included",
    watch="2 2/3 to 3 diameters apart",
    stop="less",
    source="AISC 360-16 J3.3, written for bolt holes of buildings; to count the centre bore as a hole is trade custom",
    grade="standard",
    try_changing=("plate.bore",),
)
def hole_spacing(hub_bolt_spacing: Mm, metal_between_holes: Mm, mount_bolt_thread: Thread) -> Judgement:
    """Spacing of the hub bolts, and the narrowest metal between two holes."""
    bolt = mount_bolt_thread.diameter
    figures = {"bolt": (bolt, "mm")}
    if not reaches(metal_between_holes, bolt):
        return Judgement(
            "stop",
            "The narrowest metal between two holes is {metal_between_holes}; one bolt diameter, {bolt}, is the least.",
            "A smaller centre bore if the hub allows it, or another hub.",
            figures,
        )
    verdict = at_least(hub_bolt_spacing, good=3 * bolt, watch=8 / 3 * bolt)
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
    good="one hub bolt diameter of metal or more",
    watch="less",
    stop="the bore breaks out of the plate",
    source="no published figure",
    grade="no published figure",
    try_changing=("plate.width",),
)
def bore_edge_metal(metal_beside_bore: Mm, mount_bolt_thread: Thread) -> Judgement:
    """The narrowest metal between the centre bore and the plate's edge. It says nothing of strength."""
    bolt = mount_bolt_thread.diameter
    if not more_than(metal_beside_bore, 0.0):
        return Judgement(
            "stop", "The centre bore breaks out of the plate.", "A wider plate, or the spindle elsewhere in it."
        )
    verdict = at_least(metal_beside_bore, good=bolt, watch=0.0)
    change = "" if verdict == "good" else "More metal beside the bore: have somebody qualified size it."
    text = "Beside the centre bore {metal_beside_bore} of metal is left; a hub bolt is {bolt} thick."
    return Judgement(verdict, text, change, {"bolt": (bolt, "mm")})


@check(
    "hole-not-too-small",
    step="plate",
    title="Plate holes the process can cut",
    good="plasma: 1.5 x the thickness or more; laser: 1 x or more; drilled: any",
    stop="less",
    source=CUT_SOURCE,
    grade="common practice",
)
def hole_not_too_small(
    hole_diameter: Mm | None, bore: Mm | None, plate_thickness: Mm | None, process: str | None
) -> Judgement:
    """The smallest hole of the plate against its thickness."""
    hole, centre, thickness = drawn("plate", hole_diameter=hole_diameter, bore=bore, thickness=plate_thickness)
    if process is None:
        raise Waits("plate.process")
    return _smallest_hole(min(hole, centre), thickness, process)


def _smallest_hole(hole: float, thickness: float, process: str) -> Judgement:
    if process == "saw and drill":
        return Judgement("good", "The holes are drilled.")
    if process not in SMALLEST_HOLE:
        raise NotForThisBuild(f"no figure is known here for the smallest hole of a {process}: ask the cutter")
    least = SMALLEST_HOLE[process] * thickness
    verdict = at_least(hole, good=least)
    text = f"The smallest hole is {{hole}}; the least for {process} in {{plate}} plate is {{least}}."
    figures = {"hole": (hole, "mm"), "least": (least, "mm"), "plate": (thickness, "mm")}
    if verdict == "stop":
        return Judgement(verdict, text, "Have the holes marked and drill them, or use another process.", figures)
    if process == "plasma":
        text += " Plasma cuts to 0.5 to 1.5 mm at best: have bolt holes cut under size, and drill or ream them."
    return Judgement(verdict, text, figures=figures)


@check(
    "hub-bolt-fits-hole",
    step="plate",
    title="Hub bolts go through their holes",
    good="hole 0 to 1 mm larger than the bolt",
    watch="more than 1 mm larger",
    stop="smaller than the bolt",
    source="common practice, no source: a loose hole lets the hub shift",
    grade="common practice",
    try_changing=("plate.hole_diameter",),
)
def hub_bolt_fits_hole(hub_bolt_hole_clearance: Mm) -> Judgement:
    """The finished hole against the hub bolt's diameter."""
    if not reaches(hub_bolt_hole_clearance, 0.0):
        figures = {"under": (-hub_bolt_hole_clearance, "mm")}
        return Judgement("stop", "The hole is {under} smaller than the hub bolt.", "Enter the finished size.", figures)
    verdict = at_most(hub_bolt_hole_clearance, good=1.0, watch=float("inf"))
    change = "" if verdict == "good" else "A smaller hole: a loose one lets the hub shift under braking."
    return Judgement(verdict, "The hole is {hub_bolt_hole_clearance} larger than the hub bolt.", change)


@check(
    "plate-reaches-pivots",
    step="plate",
    title="Plate reaches both pivots",
    good="the plate ends beyond both pivot centres, up and down",
    watch="it ends short of one",
    source="common practice, no source: what bridges the rest carries the pivot and needs a drawing of its own",
    grade="common practice",
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
    "bracket-hole-edge-distance",
    step="plate",
    title="Caliper bolt holes clear of the edge",
    good="2 hole diameters or more from hole centre to edge, and the table's least",
    watch="the table's least edge distance or more",
    stop="less",
    source=f"{EDGE_SOURCE}; the bolt is taken as large as its hole",
    grade="standard",
    try_changing=("plate.bracket_hole_from_edge",),
)
def bracket_hole_edge_distance(bracket_edge_distance: Mm, bracket_hole_diameter: Mm) -> Judgement:
    """From a caliper bolt's centre to the edge of the bracket blank."""
    return _edge_distance("A caliper bolt", bracket_edge_distance, bracket_hole_diameter)


@check(
    "bracket-hole-not-too-small",
    step="plate",
    title="Bracket holes the process can cut",
    good="plasma: 1.5 x the thickness or more; laser: 1 x or more; drilled: any",
    stop="less",
    source=CUT_SOURCE,
    grade="common practice",
)
def bracket_hole_not_too_small(
    bracket_hole_diameter: Mm | None, bracket_thickness: Mm | None, process: str | None
) -> Judgement:
    """The caliper bolt holes against the bracket's thickness."""
    hole, thickness = drawn("bracket", bracket_hole_diameter=bracket_hole_diameter, bracket_thickness=bracket_thickness)
    if process is None:
        raise Waits("plate.process")
    return _smallest_hole(hole, thickness, process)
