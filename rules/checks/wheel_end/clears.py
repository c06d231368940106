"""Does anything that turns touch anything that does not."""

from rules.graph.bands import at_least
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.units import Mm

ROOM = "common practice, no source: 1/4 in (6 mm) general, 1/8 in (3 mm) the bare minimum for flex"
LIMITS = {"good": "6 mm (1/4 in) or more", "watch": "3 to 6 mm", "stop": "less than 3 mm (1/8 in)"}


def _clears(gap: float, name: str, what: str, change: str, good: float = 6.0, watch: float = 3.0) -> Judgement:
    """gap: mm. name: the input that holds it, for the text. what: 'The caliper ... the wheel barrel'."""
    verdict = at_least(gap, good=good, watch=watch)
    part, other = what.split(" ... ")
    figures = {"hit": (-gap, "mm"), "wanted": (good, "mm")}
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
    **LIMITS,
    source=ROOM,
    grade="common practice",
    try_changing=("rotor.diameter", "wheel.diameter", "wheel.barrel_inside_diameter"),
)
def caliper_clears_barrel(caliper_barrel_gap: Mm) -> Judgement:
    """Room between the caliper's highest point and the inside of the barrel. Stones and mud want more."""
    return _clears(
        caliper_barrel_gap,
        "caliper_barrel_gap",
        "The caliper ... the wheel barrel",
        "A smaller rotor, a lower caliper or a larger wheel; stick-on weights go outboard.",
    )


@check(
    "caliper-clears-spokes",
    step="caliper",
    title="Caliper behind the spokes",
    **LIMITS,
    source=ROOM,
    grade="common practice",
    try_changing=("wheel.spoke_room", "rotor.face_to_rotor"),
)
def caliper_clears_spokes(caliper_spoke_gap: Mm) -> Judgement:
    """Room between the caliper's outermost face and the back of the spokes, through a whole turn of the wheel."""
    return _clears(
        caliper_spoke_gap,
        "caliper_spoke_gap",
        "The caliper ... the back of the spokes",
        "A wheel with more room behind its spokes, a deeper rotor hat, or a slimmer caliper.",
    )


@check(
    "lower-pivot-clears-barrel",
    step="pivots",
    title="Lower pivot inside the wheel barrel",
    **LIMITS,
    source=ROOM,
    grade="common practice",
    try_changing=("pivots.lower_below_spindle", "wheel.barrel_inside_diameter"),
)
def lower_pivot_clears_barrel(lower_pivot_barrel_gap: Mm) -> Judgement:
    """Room between the lower pivot's housing and the barrel, when the pivot sits inside the wheel. Both locks too."""
    return _clears(
        lower_pivot_barrel_gap,
        "lower_pivot_barrel_gap",
        "The lower pivot's housing ... the wheel barrel",
        "Raise the pivot, use a smaller housing, or bring it inboard of the lip.",
    )


@check(
    "upper-pivot-clears-barrel",
    step="pivots",
    title="Upper pivot inside the wheel barrel",
    **LIMITS,
    source=ROOM,
    grade="common practice",
    try_changing=("pivots.spacing", "wheel.barrel_inside_diameter"),
)
def upper_pivot_clears_barrel(upper_pivot_barrel_gap: Mm) -> Judgement:
    """Room between the upper pivot's housing and the barrel, when the pivot sits inside the wheel. Both locks too."""
    return _clears(
        upper_pivot_barrel_gap,
        "upper_pivot_barrel_gap",
        "The upper pivot's housing ... the wheel barrel",
        "Lower the pivot, use a smaller housing, or carry it above and inboard of the wheel.",
    )


@check(
    "lower-pivot-clears-rotor",
    step="pivots",
    title="Lower pivot behind the rotor",
    good="5 mm or more",
    watch="2 to 5 mm",
    stop="less than 2 mm",
    source="common practice, no source: room for run-out, bearing play and stones",
    grade="common practice",
    try_changing=("pivots.ground_offset", "pivots.lower_below_spindle"),
)
def lower_pivot_clears_rotor(lower_pivot_rotor_gap: Mm) -> Judgement:
    """Room between the rotor's inboard face and the lower pivot's housing, when the housing reaches over the rotor."""
    return _clears(
        lower_pivot_rotor_gap,
        "lower_pivot_rotor_gap",
        "The lower pivot's housing ... the rotor",
        "Move the pivot inboard or below the rotor's edge, or use a smaller housing.",
        good=5.0,
        watch=2.0,
    )


@check(
    "tie-rod-end-clears-rotor",
    step="steering",
    title="Tie-rod end clear of the rotor",
    good="5 mm or more",
    watch="2 to 5 mm",
    stop="less than 2 mm",
    source="common practice, no source: room for run-out, bearing play and stones",
    grade="common practice",
)
def tie_rod_end_clears_rotor(tie_rod_end_rotor_gap: Mm, tie_rod_end_ahead: Mm) -> Judgement:
    """Room between the rotor and the housing or bolt head of the outer tie-rod joint. Both are fixed to the upright."""
    behind = ", the rod behind the axle" if tie_rod_end_ahead > 0 else ""
    return _clears(
        tie_rod_end_rotor_gap,
        "tie_rod_end_rotor_gap",
        "The tie-rod end ... the rotor",
        f"A shorter arm{behind}, or the rod's end lower or further inboard.",
        good=5.0,
        watch=2.0,
    )


@check(
    "tie-rod-end-clears-rim",
    step="steering",
    title="Tie-rod end clear of the rim",
    **LIMITS,
    source=ROOM,
    grade="common practice",
    try_changing=("steering.tie_rod_inboard",),
)
def tie_rod_end_clears_rim(tie_rod_end_wheel_gap: Mm) -> Judgement:
    """Room between the rim and the housing or bolt head of the outer tie-rod joint. The wheel turns round it."""
    return _clears(
        tie_rod_end_wheel_gap,
        "tie_rod_end_wheel_gap",
        "The tie-rod end ... the rim",
        "A shorter arm, or the rod's end inboard of the wheel.",
    )


PLATE_LIMITS = {"good": "3 mm (1/8 in) or more", "watch": "less, or the housing runs into the plate"}


def _behind_plate(which: str, gap: float) -> Judgement:
    """Never a stop: a housing let into a notch of the plate is a good way to build, but somebody must draw the notch."""
    verdict = at_least(gap, good=3.0, watch=float("-inf"))
    figures = {"gap": (gap, "mm"), "overlap": (-gap, "mm"), "wanted": (3.0, "mm")}
    if verdict == "good":
        return Judgement(
            verdict, f"The {which} pivot's housing clears the back of the plate by {{gap}}.", figures=figures
        )
    if gap < 0:
        text = f"The {which} pivot's housing overlaps the plate by {{overlap}}."
        change = (
            "Notch the plate for it, which leaves less metal there and is not in any strength here; or move the pivot "
            "inboard, use a smaller housing, or let the plate end short of it."
        )
        return Judgement(verdict, text, change, figures)
    text = f"The {which} pivot's housing clears the back of the plate by {{gap}}; {{wanted}} or more is wanted."
    return Judgement(verdict, text, "Move the pivot inboard, or use a smaller housing or a thinner plate.", figures)


@check(
    "lower-pivot-clears-plate",
    step="plate",
    title="Lower pivot behind the plate",
    **PLATE_LIMITS,
    source=ROOM,
    grade="common practice",
    try_changing=("pivots.ground_offset",),
)
def lower_pivot_clears_plate(lower_pivot_plate_gap: Mm) -> Judgement:
    """Room between the plate's back and the lower pivot's housing, where the plate stands in front of it."""
    return _behind_plate("lower", lower_pivot_plate_gap)


@check(
    "upper-pivot-clears-plate",
    step="plate",
    title="Upper pivot behind the plate",
    **PLATE_LIMITS,
    source=ROOM,
    grade="common practice",
    try_changing=("pivots.ground_offset",),
)
def upper_pivot_clears_plate(upper_pivot_plate_gap: Mm) -> Judgement:
    """Room between the plate's back and the upper pivot's housing, where the plate stands in front of it."""
    return _behind_plate("upper", upper_pivot_plate_gap)
