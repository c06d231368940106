"""Does it steer: the lean of the axis, where it meets the ground, and whether it returns to straight."""

from math import inf, radians

from rules.checks.steering.returns import RETURN, RETURN_SOURCES, RETURNS_WORDS, returns
from rules.graph.bands import AtLeast, AtMost, Between, ByChoice
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, Waits
from rules.measure.closeness import more_than, within
from rules.measure.said import sided
from rules.measure.units import Mm, NewtonMetre, Rad
from rules.sheet.castor import CASTOR
from rules.tables import sources
from rules.tables.load_multiples import Use

DEGREE = radians(1)

OFF_ROAD: tuple[Use, ...] = ("trail", "dunes", "race")
"""Uses whose wide tyres stand far from any joint."""


@check(
    "inclination-usual",
    step="pivots",
    title="Steering-axis inclination in the usual range",
    limits=Between("rad", 8 * DEGREE, 12 * DEGREE),
    good="{usual}",
    watch="outside that",
    stop="nought or leaning outboard",
    source=sources.COMMON_PRACTICE.saying("no published range for off-road arms was found"),
    try_changing=("pivots.inclination",),
)
def inclination_usual(inclination: Rad, limits: Between) -> Judgement:
    """Lean of the axis seen from the front. Less puts the pivots deep in the wheel; more lifts the car in every turn."""
    if limits.verdict(inclination) == "good":
        return Judgement("good", f"The steering-axis inclination is {{inclination}}, in the usual {limits.usual()}.")
    if more_than(inclination, 0.0):
        return Judgement(
            "watch",
            f"The steering-axis inclination is {{inclination}}; {limits.usual()} is usual.",
            "It makes the ground offset, and lifts the car in every turn. Be sure you mean it.",
        )
    return Judgement(
        "stop",
        "The steering-axis inclination is {inclination}: the axis does not lean inboard at the top.",
        "Choose another inclination. Check that upper and lower were not swapped.",
    )


@check(
    "ground-offset-usual",
    step="pivots",
    title="Ground offset in the usual range",
    limits=Between("mm", -10.0, 40.0, most=100.0, other={"off_road": (80.0, "mm")}),
    good="{usual}; off the road to {off_road}",
    watch="to {most}, or below {low}",
    stop="beyond {most}",
    source=sources.COMMON_PRACTICE.saying(
        "small either side of nought on road cars, 50 to 80 mm everyday under wide off-road tyres, to 100 mm at the most"
    ),
    try_changing=("pivots.ground_offset",),
)
def ground_offset_usual(ground_offset: Mm, use: Use | None, limits: Between) -> Judgement:
    """Where the axis meets the ground from the tyre's centre plane: the lever of every stone and brake force."""
    verdict = limits.verdict(ground_offset)
    if use in OFF_ROAD and within(ground_offset, limits.low, limits.other["off_road"][0]):
        verdict = "good"
    if verdict == "good":
        figures = {"distance": (abs(ground_offset), "mm")}
        side = "outboard" if ground_offset < 0 else "inboard"
        text = f"The axis meets the ground {{distance}} {side} of the tyre's centre plane."
        return Judgement("good", text, figures=figures)
    change = "Wheel offset and the pivots' place in the wheel decide it."
    if ground_offset < 0:
        figures = {"outboard": (-ground_offset, "mm")}
        text = (
            "The axis meets the ground {outboard} outboard of the tyre's centre plane: the wheel toes in when braked."
        )
        return Judgement(verdict, text, change, figures)
    if verdict == "watch":
        return Judgement(
            verdict, "Ground offset is {ground_offset}: expect kickback, heavy steering and tramlining.", change
        )
    return Judgement(
        verdict, "Ground offset is {ground_offset}: a stone at speed can take the wheel out of your hands.", change
    )


@check(
    "ground-offset-across-tyres",
    step="pivots",
    title="Ground offset from smallest to largest tyre",
    limits=AtMost("mm", 10.0, inf),
    good="changes by {good} or less and keeps its sign",
    watch="changes more, or changes sign",
    source=sources.COMMON_PRACTICE,
    try_changing=("pivots.inclination",),
)
def ground_offset_across_tyres(
    ground_offset_smallest_tyre: Mm, ground_offset_largest_tyre: Mm, limits: AtMost
) -> Judgement:
    """How far the ground offset moves when the other tyre is fitted, and whether it passes through nought."""
    change = abs(ground_offset_smallest_tyre - ground_offset_largest_tyre)
    figures = {"moved": (change, "mm")}
    text = "Ground offset is {ground_offset_smallest_tyre} on the smallest tyre and {ground_offset_largest_tyre} on the largest"
    if ground_offset_smallest_tyre * ground_offset_largest_tyre < -1e-9:
        return Judgement(
            "watch", f"{text}: it changes sign, so the pull under braking changes side.",
            "Choose an offset that stays on one side with both tyres.", figures,
        )  # fmt: skip
    if limits.verdict(change) == "good":
        return Judgement("good", f"{text}.", figures=figures)
    return Judgement(
        "watch", f"{text}: a change of {{moved}}.", "Steering-axis inclination and the tyres' sizes decide it.", figures
    )


@check(
    "swap-spacing",
    step="pivots",
    title="Pivot spacing of the ready-made spare",
    limits=AtMost("mm", 0.8, inf),
    good="within {good}",
    watch="further apart",
    source=sources.COMMON_PRACTICE,
    try_changing=("pivots.spacing",),
)
def swap_spacing_matches(spacing: Mm | None, swap_spacing: Mm | None, limits: AtMost) -> Judgement:
    """Your pivot spacing against that of the ready-made upright you want to be able to change to."""
    if swap_spacing is None:
        raise DoesNotApply("no ready-made spare is asked for")
    if spacing is None:
        raise Waits("pivots.spacing")
    difference = abs(spacing - swap_spacing)
    figures = {"difference": (difference, "mm")}
    if limits.verdict(difference) == "good":
        return Judgement("good", "Spacing {spacing} matches the spare's {swap_spacing}.", figures=figures)
    return Judgement(
        "watch",
        "Spacing {spacing} differs from the spare's {swap_spacing} by {difference}: the spare will not bolt in.",
        "Lay out for the spare's spacing, or note that the spare does not fit.",
        figures,
    )


@check(
    "castor-usual",
    step="pivots",
    title="Castor in the usual range",
    limits=CASTOR,
    good="{usual}",
    watch="nought and more, but less than that; or above it",
    stop="negative",
    source=sources.COMMON_PRACTICE.saying(
        "10 to 15 deg is everyday on cars for sand and open desert; a technicians' textbook gives 2 to 8 deg for road cars"
    ),
    try_changing=("pivots.castor",),
)
def castor_usual(castor: Rad, use: Use | None, limits: ByChoice) -> Judgement:
    """Lean of the axis seen from the side, top to the rear, against what cars of that use have."""
    verdict, usual = limits.verdict(castor, use), limits.of(use)
    figures = {"low": (usual.low, "rad"), "high": (usual.high, "rad")}
    cars = f"for {use}" if use else "whatever the use"
    if verdict == "good":
        return Judgement(verdict, f"Castor is {{castor}}, in the usual {usual.usual()} {cars}.")
    if verdict == "stop":
        return Judgement(
            verdict,
            "Castor is {castor}: the top of the axis leans forward, and the steering can run to lock by itself.",
            "Choose another castor. Check that left and right arms were not swapped.",
        )
    if castor > usual.high:
        return Judgement(
            verdict,
            f"Castor is {{castor}}; {usual.usual()} is usual {cars}. Above {{high}} the steering grows heavy and the joints run "
            "out of angle.",
            "Choose another castor, or power steering and a check of the joint angles.",
            figures,
        )
    return Judgement(
        verdict,
        f"Castor is {{castor}}; {usual.usual()} is usual {cars}. With less than {{low}} the steering hardly returns by itself.",
        "Choose another castor.",
        figures,
    )


@check(
    "trail-positive",
    step="pivots",
    title="Mechanical trail",
    good="more than nought",
    stop="nought or less",
    source=sources.GILLESPIE.at("ch. 8", "the contact must trail the axis for the wheel to align itself"),
    try_changing=("pivots.castor", "pivots.axis_ahead"),
)
def trail_positive(mechanical_trail: Mm) -> Judgement:
    """The axis must meet the ground ahead of the tyre's contact."""
    if more_than(mechanical_trail, 0.0):
        return Judgement("good", "The axis meets the ground {mechanical_trail} ahead of the tyre's contact.")
    figures = {"behind": (-mechanical_trail, "mm")}
    return Judgement(
        "stop",
        "The axis meets the ground {behind} behind the tyre's contact: nothing trails, and the wheel does not align itself.",
        "Castor, and how far the axis passes ahead of the wheel centre, decide it.",
        figures,
    )


@check(
    "self-centring",
    step="pivots",
    title="Steering returns by itself",
    limits=RETURN,
    good=RETURNS_WORDS["good"],
    watch=RETURNS_WORDS["watch"],
    stop=RETURNS_WORDS["stop"],
    source=RETURN_SOURCES,
    grade="handbook",
    try_changing=("pivots.inclination", "pivots.castor", "pivots.ground_offset"),
)
def self_centring(
    return_moment_20_deg: NewtonMetre,
    least_return_moment: NewtonMetre | None,
    side_force_moment: NewtonMetre,
    mechanical_trail: Mm,
    weight_return_per_castor: NewtonMetre,
    weight_return_per_inclination: NewtonMetre,
    bend_return_per_castor: NewtonMetre,
    bend_return_per_inclination: NewtonMetre,
    limits: AtLeast,
) -> Judgement:
    """Whether weight and trail turn the wheels back to straight: at 20 deg, or over the lock once the linkage is known."""
    weight = return_moment_20_deg if least_return_moment is None else least_return_moment
    where = "turned 20 deg" if least_return_moment is None else "where it is least over the lock of this linkage"
    return returns(
        weight,
        side_force_moment,
        mechanical_trail,
        where,
        (weight_return_per_castor, weight_return_per_inclination),
        (bend_return_per_castor, bend_return_per_inclination),
        limits,
    )


@check(
    "pivots-straddle-spindle",
    step="pivots",
    title="Pivots above and below the wheel centre",
    good="lower pivot below and upper pivot above the wheel centre",
    watch="both on one side",
    source=sources.COMMON_PRACTICE,
    try_changing=("pivots.lower_below_spindle", "pivots.spacing"),
)
def pivots_straddle_spindle(lower_below_spindle: Mm, upper_above_spindle: Mm) -> Judgement:
    """With both pivots on one side of the wheel centre, every braking force levers on the joints."""
    if more_than(lower_below_spindle, 0.0) and more_than(upper_above_spindle, 0.0):
        return Judgement(
            "good",
            "The lower pivot is {lower_below_spindle} below the wheel centre, the upper {upper_above_spindle} above it.",
        )
    lower, of_lower = sided("lower", lower_below_spindle, "below", "above")
    upper, of_upper = sided("upper", upper_above_spindle, "above", "below")
    return Judgement(
        "watch",
        f"Both pivots are on one side of the wheel centre: the lower {lower} it, the upper {upper} it.",
        "Let the pivots straddle the wheel centre unless the wheel leaves no room; then size the joints for the leverage.",
        {**of_lower, **of_upper},
    )
