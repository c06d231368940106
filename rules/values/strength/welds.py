"""The welded joints: what was entered of each, and how much stronger each is than the worst case asks.

The caliper bracket carries the brake torque as a force at the middle of the pads; its own weight, and the caliper's, are
left out.
"""

from collections.abc import Mapping

from rules.graph.declare import value
from rules.graph.results import Waits
from rules.measure.units import Mm, SafetyFactor
from rules.measure.vectors import Vector
from rules.sheet.welds import JointQuestions
from rules.strength.corner_loads import CaseLoads, CornerLoads
from rules.values.strength.weld_joint import WeldJoint, entered, joint_margin

ENTERED = "as entered"
SOURCE = (
    "weld treated as a line: Shigley, Tables 9-1 and 9-2; strengths: AISC 360-16 Table J2.5 and J4.2, Shigley Table 9-4; "
    "metal beside the weld: rules/tables/materials.py"
)
ALONG_ROTATION: Mapping[str, Vector] = {
    "ahead": (0.0, 0.0, -1.0), "above": (1.0, 0.0, 0.0), "behind": (0.0, 0.0, 1.0), "below": (-1.0, 0.0, 0.0),
}  # fmt: skip
"""Which way a rotor that rolls forward and is braked drags the pads that stand there."""


WELDS = ({"which": "upper"}, {"which": "lower"}, {"which": "steering_arm"}, {"which": "caliper_bracket"})
"""The four welds of an upright."""


@value("welds", formula=ENTERED, source=ENTERED, each=WELDS)
def weld_which(joint_which: JointQuestions) -> WeldJoint:
    """The weld that holds a pivot, the steering arm or the caliper bracket, as entered.

    >>> from rules.sheet.welds import JointUpper
    >>> weld_which(JointUpper.record({"thickness_one": 6.0, "thickness_two": 10.0})).thinner
    6.0
    """
    return entered(joint_which)


FORMULA = (
    "strength of one mm of weld / greatest force on one mm, worst case and worst point: force shared evenly, moments by "
    "distance from the weld's middle"
)


@value(
    "welds",
    formula=FORMULA,
    source=SOURCE,
    each=(
        {"which": "upper", "place": "upper_pivot", "part": "upper pivot"},
        {"which": "lower", "place": "lower_pivot", "part": "lower pivot"},
        {"which": "steering_arm", "place": "tie_rod", "part": "steering arm"},
    ),
)
def which_weld_safety(weld_which: WeldJoint, part_loads: CornerLoads, place: str) -> SafetyFactor:
    """Strength over load of the {part}'s weld, a Margin. For steady loads; nothing about fatigue.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> joint = WeldJoint("joint_upper", metal="mild steel", form="fillet on both sides", leg=10.0, run=120.0, apart=30.0,
    ...     runs_lie="up and down", apart_lies="in and out", load_ahead=0.0, load_above=0.0, load_inboard=0.0, filler="e7018",
    ...     caliper_stands="behind")
    >>> push, none = (0.0, 0.0, 124_105.6), (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, push, 12_410_560.0),))
    >>> round(which_weld_safety(joint, loads, "upper_pivot"), 4)
    2.0
    """
    return joint_margin(weld_which, ((case.case, case.at(place)) for case in part_loads.cases))


@value(
    "welds",
    formula=f"{FORMULA}; the force is brake torque / effective radius, along the rotor's turning",
    source=SOURCE,
)
def caliper_bracket_weld_safety(
    weld_caliper_bracket: WeldJoint,
    brake_effective_radius: Mm | None,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Strength over load of the caliper bracket's weld, a Margin. For steady loads; nothing about fatigue.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> joint = WeldJoint("joint_upper", metal="mild steel", form="fillet on both sides", leg=10.0, run=120.0, apart=30.0,
    ...     runs_lie="up and down", apart_lies="in and out", load_ahead=0.0, load_above=0.0, load_inboard=0.0, filler="e7018",
    ...     caliper_stands="behind")
    >>> push, none = (0.0, 0.0, 124_105.6), (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, push, 12_410_560.0),))
    >>> round(caliper_bracket_weld_safety(joint, 100.0, loads), 4)
    2.0
    """
    if brake_effective_radius is None:
        raise Waits("brake_effective_radius")
    radius = brake_effective_radius
    (stands,) = weld_caliper_bracket.need("caliper_stands")
    return joint_margin(weld_caliper_bracket, ((case.case, _drag(case, stands, radius)) for case in part_loads.cases))


def _drag(case: CaseLoads, stands: str, radius: float) -> Vector:
    force, way = case.brake_torque / radius, ALONG_ROTATION[stands]
    return (force * way[0], force * way[1], force * way[2])
