"""Are the welds right: the same five questions of each of the four joints."""

from rules.checks.strength.weld_judgements import (
    FILLER,
    LEG,
    LENGTH,
    MADE_FROM,
    STRENGTH,
    filler_judged,
    leg_judged,
    length_judged,
    made_from_judged,
    strength_judged,
)
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.units import Ratio
from rules.values.strength.weld_joint import WeldJoint


@check("upper-weld-leg", step="joint_upper", title="Upper pivot: leg of the weld", **LEG)
def weld_upper_leg(weld_upper: WeldJoint) -> Judgement:
    """Leg of the upper pivot's weld against the parts' thickness."""
    return leg_judged(weld_upper)


@check("upper-weld-length", step="joint_upper", title="Upper pivot: length of the weld", **LENGTH)
def weld_upper_length(weld_upper: WeldJoint) -> Judgement:
    """How much of each run of the upper pivot's weld counts."""
    return length_judged(weld_upper)


@check("upper-weld-strength", step="joint_upper", title="Upper pivot: strength of the weld", **STRENGTH)
def weld_upper_strength(upper_weld_safety: Ratio) -> Judgement:
    """The upper pivot's weld under the load cases, against the code for steady loads."""
    return strength_judged(upper_weld_safety)


@check("upper-weld-filler", step="joint_upper", title="Upper pivot: filler and preheat", **FILLER)
def weld_upper_filler(weld_upper: WeldJoint) -> Judgement:
    """Process, filler and preheat of the upper pivot's weld."""
    return filler_judged(weld_upper)


@check("upper-weld-metal", step="joint_upper", title="Upper pivot: what is welded", **MADE_FROM)
def weld_upper_metal(weld_upper: WeldJoint, rule_book: str | None) -> Judgement:
    """Whether the upper pivot's weld is on a production casting or forging."""
    return made_from_judged(weld_upper, rule_book)


@check("lower-weld-leg", step="joint_lower", title="Lower pivot: leg of the weld", **LEG)
def weld_lower_leg(weld_lower: WeldJoint) -> Judgement:
    """Leg of the lower pivot's weld against the parts' thickness."""
    return leg_judged(weld_lower)


@check("lower-weld-length", step="joint_lower", title="Lower pivot: length of the weld", **LENGTH)
def weld_lower_length(weld_lower: WeldJoint) -> Judgement:
    """How much of each run of the lower pivot's weld counts."""
    return length_judged(weld_lower)


@check("lower-weld-strength", step="joint_lower", title="Lower pivot: strength of the weld", **STRENGTH)
def weld_lower_strength(lower_weld_safety: Ratio) -> Judgement:
    """The lower pivot's weld under the load cases, against the code for steady loads."""
    return strength_judged(lower_weld_safety)


@check("lower-weld-filler", step="joint_lower", title="Lower pivot: filler and preheat", **FILLER)
def weld_lower_filler(weld_lower: WeldJoint) -> Judgement:
    """Process, filler and preheat of the lower pivot's weld."""
    return filler_judged(weld_lower)


@check("lower-weld-metal", step="joint_lower", title="Lower pivot: what is welded", **MADE_FROM)
def weld_lower_metal(weld_lower: WeldJoint, rule_book: str | None) -> Judgement:
    """Whether the lower pivot's weld is on a production casting or forging."""
    return made_from_judged(weld_lower, rule_book)


@check("steering-arm-weld-leg", step="joint_steering_arm", title="Steering arm: leg of the weld", **LEG)
def weld_steering_arm_leg(weld_steering_arm: WeldJoint) -> Judgement:
    """Leg of the steering arm's weld against the parts' thickness."""
    return leg_judged(weld_steering_arm)


@check("steering-arm-weld-length", step="joint_steering_arm", title="Steering arm: length of the weld", **LENGTH)
def weld_steering_arm_length(weld_steering_arm: WeldJoint) -> Judgement:
    """How much of each run of the steering arm's weld counts."""
    return length_judged(weld_steering_arm)


@check("steering-arm-weld-strength", step="joint_steering_arm", title="Steering arm: strength of the weld", **STRENGTH)
def weld_steering_arm_strength(steering_arm_weld_safety: Ratio) -> Judgement:
    """The steering arm's weld under the load cases, against the code for steady loads."""
    return strength_judged(steering_arm_weld_safety)


@check("steering-arm-weld-filler", step="joint_steering_arm", title="Steering arm: filler and preheat", **FILLER)
def weld_steering_arm_filler(weld_steering_arm: WeldJoint) -> Judgement:
    """Process, filler and preheat of the steering arm's weld."""
    return filler_judged(weld_steering_arm)


@check("steering-arm-weld-metal", step="joint_steering_arm", title="Steering arm: what is welded", **MADE_FROM)
def weld_steering_arm_metal(weld_steering_arm: WeldJoint, rule_book: str | None) -> Judgement:
    """Whether the steering arm's weld is on a production casting or forging."""
    return made_from_judged(weld_steering_arm, rule_book)


@check("caliper-bracket-weld-leg", step="joint_caliper_bracket", title="Caliper bracket: leg of the weld", **LEG)
def weld_caliper_bracket_leg(weld_caliper_bracket: WeldJoint) -> Judgement:
    """Leg of the caliper bracket's weld against the parts' thickness."""
    return leg_judged(weld_caliper_bracket)


@check(
    "caliper-bracket-weld-length", step="joint_caliper_bracket", title="Caliper bracket: length of the weld", **LENGTH
)
def weld_caliper_bracket_length(weld_caliper_bracket: WeldJoint) -> Judgement:
    """How much of each run of the caliper bracket's weld counts."""
    return length_judged(weld_caliper_bracket)


@check(
    "caliper-bracket-weld-strength",
    step="joint_caliper_bracket",
    title="Caliper bracket: strength of the weld",
    **STRENGTH,
)
def weld_caliper_bracket_strength(caliper_bracket_weld_safety: Ratio) -> Judgement:
    """The caliper bracket's weld under the load cases, against the code for steady loads."""
    return strength_judged(caliper_bracket_weld_safety)


@check(
    "caliper-bracket-weld-filler", step="joint_caliper_bracket", title="Caliper bracket: filler and preheat", **FILLER
)
def weld_caliper_bracket_filler(weld_caliper_bracket: WeldJoint) -> Judgement:
    """Process, filler and preheat of the caliper bracket's weld."""
    return filler_judged(weld_caliper_bracket)


@check("caliper-bracket-weld-metal", step="joint_caliper_bracket", title="Caliper bracket: what is welded", **MADE_FROM)
def weld_caliper_bracket_metal(weld_caliper_bracket: WeldJoint, rule_book: str | None) -> Judgement:
    """Whether the caliper bracket's weld is on a production casting or forging."""
    return made_from_judged(weld_caliper_bracket, rule_book)
