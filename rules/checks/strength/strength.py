"""Does the metal carry it: upright, plate, steering arm, caliper bracket, snout, by factor on yield."""

from math import inf

from rules.graph.bands import AtLeast
from rules.graph.declare import check
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.closeness import reaches
from rules.measure.units import MPa
from rules.strength.margin import Margin, SafetyFactor
from rules.tables import sources
from rules.tables.materials import Metal

KNOWN_LOADS, CUSTOM = 2.0, 1.5
"""Factors on yield or proof load, where the loads are known. Trade custom; they make nothing good."""
ONCE = AtLeast("1", inf, 1.0)
"""Of a factor on yield or proof load: nobody has published a limit from which it would be good."""

NO_LIMIT = sources.NO_FIGURE.saying(
    "a factor of 1.5 to 2 on yield where the loads are known, from memory; nobody has published a "
    "limit for home-made uprights"
)
NEVER, HOLDS, GIVES = (
    "never: nobody has published a limit",
    "holds the worst load once or more",
    "less than once: it gives",
)
FATIGUE = (
    "One hard hit is counted, not thousands of small ones: welds crack at their edge long before. Inspect them often."
)


def carried(limits: AtLeast, margin: Margin, part: str, change: str, beside: str = "") -> Judgement:
    """How often a part carries its worst case, in words. part: as it begins a sentence. change: what would make it hold."""
    verdict = limits.verdict(margin)
    custom = " Nobody has published a limit; trade custom is {custom} to {known_loads}."
    if verdict == "watch" and not reaches(margin, CUSTOM):
        custom = " That is under even the {custom} of trade custom, and nobody has published a limit."
    worst = f"The worst case is {margin.case}: {margin.limit}."
    words = f"{part} holds {{factor}} times its worst load. {worst}{custom} {beside}".rstrip()
    figures = {"factor": (float(margin), "1"), "custom": (CUSTOM, "1"), "known_loads": (KNOWN_LOADS, "1")}
    return Judgement(verdict, words, "" if reaches(margin, KNOWN_LOADS) else change, figures)


@check(
    "upright-{where}-hub",
    step="upright",
    title="Upright just {where} the hub",
    limits=ONCE, never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT,
    try_changing=("plate.thickness",),
    each=({"where": "above"}, {"where": "below"}),
)  # fmt: skip
def upright_beside_hub(upright_where_hub_safety: SafetyFactor, limits: AtLeast) -> Judgement:
    """The section that holds all {where} it, bent, pulled and twisted at once."""
    change = "A beam on the back, a deeper beam, or thicker plate."
    return carried(limits, upright_where_hub_safety, "Just {where} the hub the upright", change, FATIGUE)


@check(
    "upright-at-{which}-pivot",
    step="upright",
    title="Upright at the {which} pivot",
    limits=ONCE, never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT,
    each=({"which": "upper"}, {"which": "lower"}),
)  # fmt: skip
def upright_at_pivot(upright_which_end_safety: SafetyFactor, limits: AtLeast) -> Judgement:
    """The plate where the {which} pivot's housing ends. The bracket itself wants its own drawing."""
    change = "Run the beam past the pivot, or thicker plate, or the pivot closer to the plate."
    return carried(limits, upright_which_end_safety, "At the {which} pivot the upright", change, FATIGUE)


@check(
    "hub-plate",
    step="upright",
    title="Plate between the hub bolts",
    limits=ONCE,
    never_good=NEVER,
    watch=HOLDS,
    stop=GIVES,
    source=sources.NO_FIGURE.saying(
        "simple model: level sections through the plate, and the plate that overhangs a narrow beam; a "
        "factor of 1.5 to 2 on yield where the loads are known, from memory; nobody has published a "
        "limit for home-made uprights"
    ),
)
def hub_plate(plate_safety: SafetyFactor, limits: AtLeast) -> Judgement:
    """The plate cut level through its bolt holes and through the spindle, and bent by the bolts beside a narrow beam."""
    change = "A beam as wide as the bolt pattern behind the bolts, thicker plate, or a smaller centre bore."
    beside = (
        "A simple model. Left out on the safe side: the stiffness of the hub's own flange. Left out on the other: the edges of "
        f"holes, the caliper's push through the hub, and sideways bending of a plate without a beam. {FATIGUE}"
    )
    return carried(limits, plate_safety, "Between its bolts the hub plate", change, beside)


@check(
    "steering-arm-strength",
    step="upright",
    title="Steering arm",
    limits=ONCE, never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT,
    try_changing=("upright.steering_arm_width",),
)  # fmt: skip
def steering_arm_strength(steering_arm_safety: SafetyFactor, limits: AtLeast) -> Judgement:
    """The arm's root under the tie rod's worst pull or push."""
    beside = f"An arm that steps up or down twists as well, and that is not counted. {FATIGUE}"
    return carried(limits, steering_arm_safety, "The steering arm", "A wider root, a shorter arm, or a gusset.", beside)


@check(
    "caliper-bracket-strength",
    step="upright",
    title="Caliper bracket",
    limits=ONCE, never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT,
    try_changing=("plate.bracket_thickness",),
)  # fmt: skip
def caliper_bracket_strength(caliper_bracket_safety: SafetyFactor, limits: AtLeast) -> Judgement:
    """The bracket's root under the caliper's drag in the hardest stop."""
    change = "A wider root, thicker bracket, or the caliper closer to its weld."
    return carried(limits, caliper_bracket_safety, "The caliper bracket", change, FATIGUE)


@check(
    "snout-strength",
    step="upright",
    title="Snout at its root",
    limits=ONCE, never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT,
    try_changing=("upright.snout_diameter",),
)  # fmt: skip
def snout_strength(snout_safety: SafetyFactor, limits: AtLeast) -> Judgement:
    """A fixed snout as a solid round bar, bent by the wheel."""
    beside = "A sharp corner or a weld at the root can halve this: turn a generous radius there, and weld elsewhere."
    return carried(
        limits, snout_safety, "The snout", "A larger snout, turned from bar, with a generous radius.", beside
    )


@check(
    "metal-known",
    step="upright",
    title="Strength of the metal is on paper",
    good="the yield is off the certificate of this very metal",
    watch="a published minimum stands in",
    source=sources.COMMON_PRACTICE.saying("bar of unknown origin has unknown strength"),
)
def metal_known(
    strength_asked: bool | None,
    upright_yield: MPa | None,
    upright_material: Metal | None,
    certificate_yield: MPa | None,
) -> Judgement:
    """Whether the yield used is the builder's own metal's. Beside a weld the softest published state counts."""
    if upright_material is None and certificate_yield is None:
        if strength_asked:
            raise Waits("upright.material")
        raise NotJudged("the metal of the upright is not entered", "upright.material")
    if upright_yield is None:
        raise Waits("upright_yield")
    text = "{upright_yield} of yield is counted on after welding."
    if certificate_yield is None:
        return Judgement(
            "watch", f"{text} It is a published least figure for the metal.", "Ask for the mill certificate."
        )
    if upright_material == "other":
        return Judgement(
            "watch", f"{text} Nothing is published here for this metal after welding.",
            "Have somebody who answers for it confirm the figure beside a weld.",
        )  # fmt: skip
    return Judgement("good", text)
