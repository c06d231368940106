"""Do the bought parts carry the load and the speed."""

from math import tan

from rules.graph.bands import AtLeast, Between
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import reaches
from rules.measure.marks import TyreMark
from rules.measure.said import sided
from rules.measure.units import Kg, MetrePerSecond, Mm, Rad
from rules.tables import sources

IN_HAND = AtLeast("1", good=1.1, watch=1.0)
"""Rating over the weighed load: a tenth in hand. Common practice, no source."""


@check(
    "tyre-load",
    step="tyre",
    title="Tyre load capacity",
    limits=IN_HAND,
    good="capacity at least {good} x the load on the tyre",
    watch="{watch} to {good} x",
    stop="less than the load",
    source=(
        sources.ARRETE_1994.at(
            "annex II", "load index table, as UN Regulations 30 and 54 have it; a sidewall's own figure goes first"
        ),
        sources.COMMON_PRACTICE.saying("the tenth in hand"),
    ),
    grade="standard",
    try_changing=("job.corner_weight", "tyre.load_capacity"),
)
def tyre_load(
    tyre_load_capacity: Kg,
    corner_weight: Kg,
    load_capacity: Kg | None,
    smallest: TyreMark | None,
    largest: TyreMark | None,
    limits: AtLeast,
) -> Judgement:
    """What one tyre may carry at the pressure actually run, against the weighed load. Landings come on top."""
    verdict = limits.verdict(tyre_load_capacity / corner_weight)
    text = "One tyre may carry {tyre_load_capacity}; it carries {corner_weight} standing."
    marks = [mark for mark in (smallest, largest) if mark is not None]
    if load_capacity is None and any(mark.load_index is None for mark in marks):
        text += " Only one of the two size marks carries a load index: look the other up on its sidewall."
    if load_capacity is None and any(mark.passenger for mark in marks):
        text += " A passenger-car tyre on a truck carries its index divided by 1.10 (49 CFR 571.110)."
    change = (
        ""
        if verdict == "good"
        else "A tyre with a higher load index, or a lighter corner. Low pressure lowers the capacity."
    )
    return Judgement(verdict, text, change)


@check(
    "tyre-speed",
    step="tyre",
    title="Tyre speed symbol",
    good="the symbol's speed reaches the top speed",
    stop="it does not",
    source=sources.ARRETE_1994.at("annex I", "speed symbols, as UN Regulations 30 and 54 have them"),
    try_changing=("job.top_speed",),
)
def tyre_speed(
    tyre_highest_speed: MetrePerSecond,
    top_speed: MetrePerSecond,
    speed_symbol: str | None,
    smallest: TyreMark | None,
    largest: TyreMark | None,
) -> Judgement:
    """The tyre's marked speed against the fastest the car will go."""
    marks = [mark for mark in (smallest, largest) if mark is not None]
    unmarked = speed_symbol is None and any(mark.speed_symbol is None for mark in marks)
    note = (
        " Only one of the two size marks carries a speed symbol: look the other up on its sidewall." if unmarked else ""
    )
    if reaches(tyre_highest_speed, top_speed):
        return Judgement("good", f"The tyres are marked for {{tyre_highest_speed}}; top speed is {{top_speed}}.{note}")
    return Judgement(
        "stop",
        f"The tyres are marked for {{tyre_highest_speed}}, less than the top speed of {{top_speed}}.{note}",
        "A tyre with a faster symbol, or a lower top speed.",
    )


@check(
    "loaded-radius",
    step="tyre",
    title="Loaded radius measured",
    good="measured",
    watch="not measured: half the diameter is used",
    source=sources.COMMON_PRACTICE.saying("a tyre under load stands lower than half its diameter"),
)
def loaded_radius_measured(loaded_radius: Mm | None, wheel_centre_height: Mm, inclination: Rad | None) -> Judgement:
    """Whether the wheel-centre height was measured under load, and what it moves if the tyre sags 3 % and 6 %."""
    if loaded_radius is not None:
        return Judgement("good", "Loaded radius measured: {loaded_radius}.")
    figures = {"little": (0.03 * wheel_centre_height, "mm"), "much": (0.06 * wheel_centre_height, "mm")}
    if inclination is None:
        text = (
            "If the tyre sags 3 to 6 %, the wheel centre drops {little} to {much}, and the ground offset moves with it."
        )
    else:
        figures |= {
            "offset_little": (0.03 * wheel_centre_height * tan(inclination), "mm"),
            "offset_much": (0.06 * wheel_centre_height * tan(inclination), "mm"),
        }
        text = (
            "If the tyre sags 3 %, the wheel centre drops {little} and the ground offset grows by {offset_little}; at 6 %, "
            "{much} and {offset_much}."
        )
    return Judgement(
        "watch",
        f"The loaded radius is not measured; half the diameter, {{wheel_centre_height}}, is used. {text} "
        "Inch-marked (flotation) tyres also measure [0.2 to 0.5 in | 5 to 13 mm] under the number on the sidewall.",
        "Mount the tyre, load it at running pressure, and measure ground to wheel centre.",
        figures,
    )


@check(
    "wheel-load",
    step="wheel",
    title="Wheel load rating",
    limits=IN_HAND,
    good="rating at least {good} x the load on the wheel",
    watch="{watch} to {good} x",
    stop="less than the load",
    source=sources.COMMON_PRACTICE,
    try_changing=("job.corner_weight", "wheel.load_rating"),
)
def wheel_load(wheel_load_rating: Kg, corner_weight: Kg, limits: AtLeast) -> Judgement:
    """The wheel's stamped rating against the weighed load. Trailer wheels are not made for braking and steering."""
    verdict = limits.verdict(wheel_load_rating / corner_weight)
    change = "" if verdict == "good" else "A wheel with a higher rating, made for a braked, steered car."
    return Judgement(
        verdict, "The wheel is rated for {wheel_load_rating}; it carries {corner_weight} standing.", change
    )


@check(
    "bearing-near-tyre-centre",
    step="hub",
    title="Bearing near the tyre's centre plane",
    limits=Between("mm", -60.0, 60.0),
    good="within {high}",
    watch="beyond",
    source=sources.COMMON_PRACTICE.saying(
        "distance from the tyre's plane is leverage on the bearing; wheels of little backspacing on trucks have 40 to 60 mm"
    ),
    try_changing=("wheel.offset", "wheel.backspacing"),
)
def bearing_near_tyre_centre(bearing_offset: Mm, limits: Between) -> Judgement:
    """Distance of the bearing's middle from the tyre centre plane, either side."""
    middle, figures = sided("middle", bearing_offset, "outboard", "inboard")
    text = f"The bearing's middle is {middle} of the tyre's centre plane"
    if limits.verdict(bearing_offset) == "good":
        return Judgement("good", f"{text}.", figures=figures)
    return Judgement(
        "watch",
        f"{text}; beyond {{limit}} the tyre levers on it.",
        "The wheel's offset decides it. Compare with the car the hub came from.",
        {**figures, "limit": (limits.high, "mm", "down")},
    )
