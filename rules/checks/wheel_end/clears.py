"""Does anything that turns touch anything that does not."""

from rules.graph.bands import AtLeast
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.said import Figures
from rules.measure.units import Mm
from rules.tables import sources

ROOM = sources.COMMON_PRACTICE.saying("1/4 in (6 mm) general, 1/8 in (3 mm) the bare minimum for flex")
CLEAR = AtLeast("mm", 6.0, 3.0)
RUN_OUT = sources.COMMON_PRACTICE.saying("room for run-out, bearing play and stones")
BESIDE_ROTOR = AtLeast("mm", 5.0, 2.0)
BEHIND_PLATE = AtLeast("mm", 3.0, -10.0)

ARM_BY = "Another place of the rod's outer end, or a smaller housing."


def _clears(limits: AtLeast, gap: float, name: str, part: str, other: str, change: str) -> Judgement:
    """gap: mm. name: the input that holds it, for the text. part, other: "The caliper" and "the wheel barrel"."""
    verdict = limits.verdict(gap)
    figures: Figures = {"hit": (-gap, "mm"), "wanted": (limits.good, "mm", "up")}
    if gap < 0:
        return Judgement(verdict, f"{part} hits {other} by {{hit}}.", change, figures)
    text = f"{part} clears {other} by {{{name}}}"
    if verdict == "good":
        return Judgement(verdict, f"{text}.")
    return Judgement(verdict, f"{text}; {{wanted}} or more is wanted.", change, figures)


@check(
    "caliper-clears-barrel",
    step="caliper",
    title="Caliper inside the wheel barrel",
    limits=CLEAR,
    source=ROOM,
    try_changing=("rotor.diameter", "wheel.diameter", "wheel.barrel_inside_diameter"),
)
def caliper_clears_barrel(caliper_barrel_gap: Mm, limits: AtLeast) -> Judgement:
    """Room between the caliper's highest point and the inside of the barrel. Stones and mud want more."""
    return _clears(
        limits,
        caliper_barrel_gap,
        "caliper_barrel_gap",
        "The caliper",
        "the wheel barrel",
        "The rotor's diameter, how high the caliper stands over it and the wheel's size decide it; stick-on weights go outboard.",
    )


@check(
    "caliper-clears-spokes",
    step="caliper",
    title="Caliper behind the spokes",
    limits=CLEAR,
    source=ROOM,
    try_changing=("wheel.spoke_room", "rotor.face_to_rotor"),
)
def caliper_clears_spokes(caliper_spoke_gap: Mm, limits: AtLeast) -> Judgement:
    """Room between the caliper's outermost face and the back of the spokes, through a whole turn of the wheel."""
    return _clears(
        limits,
        caliper_spoke_gap,
        "caliper_spoke_gap",
        "The caliper",
        "the back of the spokes",
        "A wheel with more room behind its spokes, a deeper rotor hat, or a slimmer caliper.",
    )


@check(
    "{which}-pivot-clears-barrel",
    step="pivots",
    title="{Which} pivot inside the wheel barrel",
    limits=CLEAR,
    source=ROOM,
    try_changing=("{moved_by}", "wheel.barrel_inside_diameter"),
    each=(
        {"which": "lower", "moved_by": "pivots.lower_below_spindle", "remedy": "Another place of the pivot, or "
         "a smaller housing."},
        {"which": "upper", "moved_by": "pivots.spacing", "remedy": "Another place of the pivot, in the "
         "wheel or above and inboard of it, or a smaller housing."},
    ),
)  # fmt: skip
def pivot_clears_barrel(which_pivot_barrel_gap: Mm, limits: AtLeast, remedy: str) -> Judgement:
    """Room between the {which} pivot's housing and the barrel, when the pivot sits inside the wheel. Both locks too."""
    return _clears(
        limits,
        which_pivot_barrel_gap,
        "which_pivot_barrel_gap",
        "The {which} pivot's housing",
        "the wheel barrel",
        remedy,
    )


@check(
    "lower-pivot-clears-rotor",
    step="pivots",
    title="Lower pivot behind the rotor",
    limits=BESIDE_ROTOR,
    source=RUN_OUT,
    try_changing=("pivots.ground_offset", "pivots.lower_below_spindle"),
)
def lower_pivot_clears_rotor(lower_pivot_rotor_gap: Mm, limits: AtLeast) -> Judgement:
    """Room between the rotor's inboard face and the lower pivot's housing, when the housing reaches over the rotor."""
    return _clears(
        limits,
        lower_pivot_rotor_gap,
        "lower_pivot_rotor_gap",
        "The lower pivot's housing",
        "the rotor",
        "Another place of the pivot, or a smaller housing.",
    )


@check(
    "tie-rod-end-clears-rotor",
    step="steering",
    title="Tie-rod end clear of the rotor",
    limits=BESIDE_ROTOR,
    source=RUN_OUT,
)
def tie_rod_end_clears_rotor(tie_rod_end_rotor_gap: Mm, limits: AtLeast) -> Judgement:
    """Room between the rotor and the housing or bolt head of the outer tie-rod joint. Both are fixed to the upright."""
    return _clears(
        limits,
        tie_rod_end_rotor_gap,
        "tie_rod_end_rotor_gap",
        "The tie-rod end",
        "the rotor",
        ARM_BY,
    )


@check(
    "tie-rod-end-clears-rim",
    step="steering",
    title="Tie-rod end clear of the rim",
    limits=CLEAR,
    source=ROOM,
    try_changing=("steering.tie_rod_inboard",),
)
def tie_rod_end_clears_rim(tie_rod_end_wheel_gap: Mm, limits: AtLeast) -> Judgement:
    """Room between the rim and the housing or bolt head of the outer tie-rod joint. The wheel turns round it."""
    return _clears(
        limits,
        tie_rod_end_wheel_gap,
        "tie_rod_end_wheel_gap",
        "The tie-rod end",
        "the rim",
        ARM_BY,
    )


@check(
    "{which}-pivot-clears-plate",
    step="plate",
    title="{Which} pivot behind the plate",
    limits=BEHIND_PLATE,
    good="{good} or more",
    watch="down to {watch}, for which the plate needs a notch",
    stop="less: such a notch leaves no plate",
    source=ROOM,
    try_changing=("pivots.ground_offset",),
    each=({"which": "lower"}, {"which": "upper"}),
)
def pivot_clears_plate(which_pivot_plate_gap: Mm, limits: AtLeast) -> Judgement:
    """Room between the plate's back and the {which} pivot's housing, where the plate stands in front of it.

    A housing let into a notch of the plate is a good way to build, but somebody must draw the notch, and plate must be left.
    """
    gap, verdict = which_pivot_plate_gap, limits.verdict(which_pivot_plate_gap)
    figures: Figures = {"gap": (gap, "mm"), "overlap": (-gap, "mm"), "wanted": (limits.good, "mm", "up")}
    if gap < 0:
        text = "The {which} pivot's housing overlaps the plate by {overlap}."
        if verdict == "stop":
            change = "Move the pivot, use a smaller housing, or let the plate end short of it."
            return Judgement(verdict, f"{text} A notch that deep leaves no plate.", change, figures)
        change = (
            "Notch the plate for it, which leaves less metal there and is not in any strength here; or move the "
            "pivot, use a smaller housing, or let the plate end short of it."
        )
        return Judgement(verdict, text, change, figures)
    text = "The {which} pivot's housing clears the back of the plate by {gap}"
    if verdict == "good":
        return Judgement(verdict, f"{text}.", figures=figures)
    change = "Another place of the pivot, or a smaller housing."
    return Judgement(verdict, f"{text}; {{wanted}} or more is wanted.", change, figures)
