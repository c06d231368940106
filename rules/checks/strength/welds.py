"""Are the welds right: the same five questions of each of the four."""

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
from rules.measure.units import SafetyFactor
from rules.values.strength.weld_joint import WeldJoint

WELDS = (
    {"which": "upper", "part": "upper pivot"},
    {"which": "lower", "part": "lower pivot"},
    {"which": "steering_arm", "part": "steering arm"},
    {"which": "caliper_bracket", "part": "caliper bracket"},
)


@check("{which}-weld-leg", step="joint_{which}", title="{Part}: leg of the weld", each=WELDS, **LEG)
def weld_leg(weld_which: WeldJoint) -> Judgement:
    """Leg of the {part}'s weld against the parts' thickness."""
    return leg_judged(weld_which)


@check("{which}-weld-length", step="joint_{which}", title="{Part}: length of the weld", each=WELDS, **LENGTH)
def weld_length(weld_which: WeldJoint) -> Judgement:
    """How much of each run of the {part}'s weld counts."""
    return length_judged(weld_which)


@check("{which}-weld-strength", step="joint_{which}", title="{Part}: strength of the weld", each=WELDS, **STRENGTH)
def weld_strength(which_weld_safety: SafetyFactor) -> Judgement:
    """The {part}'s weld under the load cases, against the code for steady loads."""
    return strength_judged(which_weld_safety)


@check("{which}-weld-filler", step="joint_{which}", title="{Part}: filler and preheat", each=WELDS, **FILLER)
def weld_filler(weld_which: WeldJoint) -> Judgement:
    """Process, filler and preheat of the {part}'s weld."""
    return filler_judged(weld_which)


@check("{which}-weld-metal", step="joint_{which}", title="{Part}: what is welded", each=WELDS, **MADE_FROM)
def weld_metal(weld_which: WeldJoint, rule_book: str | None) -> Judgement:
    """Whether the {part}'s weld is on a production casting or forging."""
    return made_from_judged(weld_which, rule_book)
