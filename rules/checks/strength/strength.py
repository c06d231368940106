"""Does the metal carry it: upright, plate, steering arm, caliper bracket, snout, by factor on yield."""

from rules.graph.declare import check
from rules.graph.results import Judgement, NotForThisBuild, Verdict, Waits
from rules.measure.closeness import reaches
from rules.measure.units import MPa, Ratio
from rules.strength.corner_loads import Margin

KNOWN_LOADS, CUSTOM, STOP = 2.0, 1.5, 1.0
"""Factors on yield or proof load. The first two are trade custom and make nothing good: nobody has published a limit."""

NO_LIMIT = (
    "common practice, no source: a factor of 1.5 to 2 on yield where the loads are known, from memory; nobody has published "
    "a limit for home-made uprights"
)
NEVER, HOLDS, GIVES = (
    "never: nobody has published a limit",
    "holds the worst load once or more",
    "less than once: it gives",
)
FATIGUE = (
    "One hard hit is counted, not thousands of small ones: welds crack at their edge long before. Inspect them often."
)


def carried(margin: float, part: str, change: str, beside: str = "") -> Judgement:
    """How often a part carries its worst case, in words. margin: a Margin; where it is none, no case is named."""
    verdict: Verdict = "watch" if reaches(margin, STOP) else "stop"
    case = f" The worst case is {margin.case}: {margin.limit}." if isinstance(margin, Margin) else ""
    custom = " Nobody has published a limit; trade custom is 1.5 to 2."
    if verdict == "watch" and not reaches(margin, CUSTOM):
        custom = " That is under even the 1.5 of trade custom, and nobody has published a limit."
    words = f"{part} holds {{factor}} times its worst load.{case}{custom} {beside}".rstrip()
    return Judgement(verdict, words, "" if reaches(margin, KNOWN_LOADS) else change, {"factor": (float(margin), "1")})


@check(
    "upright-above-hub",
    step="upright",
    title="Upright just above the hub",
    never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT, grade="no published figure",
    try_changing=("plate.thickness",),
)  # fmt: skip
def upright_above_hub(upright_above_hub_safety: Ratio) -> Judgement:
    """The section that holds all above it, bent, pulled and twisted at once."""
    change = "A beam on the back, a deeper beam, or thicker plate."
    return carried(upright_above_hub_safety, "Just above the hub the upright", change, FATIGUE)


@check(
    "upright-below-hub",
    step="upright",
    title="Upright just below the hub",
    never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT, grade="no published figure",
    try_changing=("plate.thickness",),
)  # fmt: skip
def upright_below_hub(upright_below_hub_safety: Ratio) -> Judgement:
    """The section that holds all below it, bent, pulled and twisted at once."""
    change = "A beam on the back, a deeper beam, or thicker plate."
    return carried(upright_below_hub_safety, "Just below the hub the upright", change, FATIGUE)


@check(
    "upright-at-upper-pivot",
    step="upright",
    title="Upright at the upper pivot",
    never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT, grade="no published figure",
)  # fmt: skip
def upright_at_upper_pivot(upright_upper_end_safety: Ratio) -> Judgement:
    """The plate where the upper pivot's housing ends. The bracket itself wants its own drawing."""
    change = "Run the beam past the pivot, or thicker plate, or the pivot closer to the plate."
    return carried(upright_upper_end_safety, "At the upper pivot the upright", change, FATIGUE)


@check(
    "upright-at-lower-pivot",
    step="upright",
    title="Upright at the lower pivot",
    never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT, grade="no published figure",
)  # fmt: skip
def upright_at_lower_pivot(upright_lower_end_safety: Ratio) -> Judgement:
    """The plate where the lower pivot's housing ends. The bracket itself wants its own drawing."""
    change = "Run the beam past the pivot, or thicker plate, or the pivot closer to the plate."
    return carried(upright_lower_end_safety, "At the lower pivot the upright", change, FATIGUE)


@check(
    "hub-plate",
    step="upright",
    title="Plate between the hub bolts",
    never_good=NEVER, watch=HOLDS, stop=GIVES,
    source=f"simple model: level sections through the plate, and the plate that overhangs a narrow beam; {NO_LIMIT}",
    grade="no published figure",
)  # fmt: skip
def hub_plate(plate_safety: Ratio) -> Judgement:
    """The plate cut level through its bolt holes and through the spindle, and bent by the bolts beside a narrow beam."""
    change = "A beam as wide as the bolt pattern behind the bolts, thicker plate, or a smaller centre bore."
    beside = (
        "A simple model. Left out on the safe side: the stiffness of the hub's own flange. Left out on the other: the edges of "
        f"holes, the caliper's push through the hub, and sideways bending of a plate without a beam. {FATIGUE}"
    )
    return carried(plate_safety, "Between its bolts the hub plate", change, beside)


@check(
    "steering-arm-strength",
    step="upright",
    title="Steering arm",
    never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT, grade="no published figure",
    try_changing=("upright.steering_arm_width",),
)  # fmt: skip
def steering_arm_strength(steering_arm_safety: Ratio) -> Judgement:
    """The arm's root under the tie rod's worst pull or push."""
    beside = f"An arm that steps up or down twists as well, and that is not counted. {FATIGUE}"
    return carried(steering_arm_safety, "The steering arm", "A wider root, a shorter arm, or a gusset.", beside)


@check(
    "caliper-bracket-strength",
    step="upright",
    title="Caliper bracket",
    never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT, grade="no published figure",
    try_changing=("plate.bracket_thickness",),
)  # fmt: skip
def caliper_bracket_strength(caliper_bracket_safety: Ratio) -> Judgement:
    """The bracket's root under the caliper's drag in the hardest stop."""
    change = "A wider root, thicker bracket, or the caliper closer to its weld."
    return carried(caliper_bracket_safety, "The caliper bracket", change, FATIGUE)


@check(
    "snout-strength",
    step="upright",
    title="Snout at its root",
    never_good=NEVER, watch=HOLDS, stop=GIVES, source=NO_LIMIT, grade="no published figure",
    try_changing=("upright.snout_diameter",),
)  # fmt: skip
def snout_strength(snout_safety: Ratio) -> Judgement:
    """A fixed snout as a solid round bar, bent by the wheel."""
    beside = "A sharp corner or a weld at the root can halve this: turn a generous radius there, and weld elsewhere."
    return carried(snout_safety, "The snout", "A larger snout, turned from bar, with a generous radius.", beside)


@check(
    "metal-known",
    step="upright",
    title="Strength of the metal is on paper",
    good="the yield is off the certificate of this very metal",
    watch="a published minimum stands in",
    source="common practice, no source: bar of unknown origin has unknown strength",
    grade="common practice",
)
def metal_known(upright_yield: MPa | None, upright_material: str | None, certificate_yield: MPa | None) -> Judgement:
    """Whether the yield used is the builder's own metal's. Beside a weld the softest published state counts."""
    if upright_material is None and certificate_yield is None:
        raise NotForThisBuild("the metal of the upright is not entered")
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
