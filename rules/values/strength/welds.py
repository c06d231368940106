"""The welded joints: what was entered of each, and how much stronger each is than the worst case asks.

The caliper bracket carries the brake torque as a force at the middle of the pads; its own weight, and the caliper's, are
left out.
"""

from collections.abc import Mapping
from typing import Any

from rules.graph.declare import value
from rules.graph.results import NotForThisBuild, Waits
from rules.measure.units import Mm, Ratio
from rules.measure.vectors import Vector
from rules.strength.corner_loads import CaseLoads, CornerLoads
from rules.values.strength.weld_joint import WeldJoint, joint_margin

ENTERED = "as entered"
SOURCE = (
    "weld treated as a line: Shigley, Tables 9-1 and 9-2; strengths: AISC 360-16 Table J2.5 and J4.2, Shigley Table 9-4; "
    "metal beside the weld: rules/tables/materials.py"
)
ALONG_ROTATION: Mapping[str, Vector] = {
    "ahead": (0.0, 0.0, -1.0), "above": (1.0, 0.0, 0.0), "behind": (0.0, 0.0, 1.0), "below": (-1.0, 0.0, 0.0),
}  # fmt: skip
"""Which way a rotor that rolls forward and is braked drags the pads that stand there."""


def _entered(step: str, *answers: Any) -> WeldJoint:
    """The answers stand in the order of WeldJoint's own."""
    if all(answer is None for answer in answers):
        raise NotForThisBuild("nothing is entered of this weld, so it was not judged")
    return WeldJoint(step, *answers)


@value("welds", formula=ENTERED, source=ENTERED)
def weld_upper(
    joint_upper_made_from: str | None, joint_upper_metal: str | None, joint_upper_thickness_one: Mm | None,
    joint_upper_thickness_two: Mm | None, joint_upper_form: str | None, joint_upper_leg: Mm | None,
    joint_upper_run: Mm | None, joint_upper_apart: Mm | None, joint_upper_runs_lie: str | None,
    joint_upper_apart_lies: str | None, joint_upper_load_ahead: Mm | None, joint_upper_load_above: Mm | None,
    joint_upper_load_inboard: Mm | None, joint_upper_welded_by: str | None, joint_upper_filler: str | None,
    joint_upper_preheat: str | None,
) -> WeldJoint:  # fmt: skip
    """The weld that holds the upper pivot, as entered.

    >>> weld_upper(None, None, 6.0, 10.0, *[None] * 12).thinner
    6.0
    """
    return _entered("joint_upper", *locals().values())


@value("welds", formula=ENTERED, source=ENTERED)
def weld_lower(
    joint_lower_made_from: str | None, joint_lower_metal: str | None, joint_lower_thickness_one: Mm | None,
    joint_lower_thickness_two: Mm | None, joint_lower_form: str | None, joint_lower_leg: Mm | None,
    joint_lower_run: Mm | None, joint_lower_apart: Mm | None, joint_lower_runs_lie: str | None,
    joint_lower_apart_lies: str | None, joint_lower_load_ahead: Mm | None, joint_lower_load_above: Mm | None,
    joint_lower_load_inboard: Mm | None, joint_lower_welded_by: str | None, joint_lower_filler: str | None,
    joint_lower_preheat: str | None,
) -> WeldJoint:  # fmt: skip
    """The weld that holds the lower pivot, as entered.

    >>> weld_lower(None, None, 6.0, 10.0, *[None] * 12).step
    'joint_lower'
    """
    return _entered("joint_lower", *locals().values())


@value("welds", formula=ENTERED, source=ENTERED)
def weld_steering_arm(
    joint_steering_arm_made_from: str | None, joint_steering_arm_metal: str | None,
    joint_steering_arm_thickness_one: Mm | None, joint_steering_arm_thickness_two: Mm | None,
    joint_steering_arm_form: str | None, joint_steering_arm_leg: Mm | None, joint_steering_arm_run: Mm | None,
    joint_steering_arm_apart: Mm | None, joint_steering_arm_runs_lie: str | None,
    joint_steering_arm_apart_lies: str | None, joint_steering_arm_load_ahead: Mm | None,
    joint_steering_arm_load_above: Mm | None, joint_steering_arm_load_inboard: Mm | None,
    joint_steering_arm_welded_by: str | None, joint_steering_arm_filler: str | None,
    joint_steering_arm_preheat: str | None,
) -> WeldJoint:  # fmt: skip
    """The weld that holds the steering arm, as entered.

    >>> weld_steering_arm("not known", *[None] * 15).made_from
    'not known'
    """
    return _entered("joint_steering_arm", *locals().values())


@value("welds", formula=ENTERED, source=ENTERED)
def weld_caliper_bracket(
    joint_caliper_bracket_made_from: str | None, joint_caliper_bracket_metal: str | None,
    joint_caliper_bracket_thickness_one: Mm | None, joint_caliper_bracket_thickness_two: Mm | None,
    joint_caliper_bracket_form: str | None, joint_caliper_bracket_leg: Mm | None, joint_caliper_bracket_run: Mm | None,
    joint_caliper_bracket_apart: Mm | None, joint_caliper_bracket_runs_lie: str | None,
    joint_caliper_bracket_apart_lies: str | None, joint_caliper_bracket_load_ahead: Mm | None,
    joint_caliper_bracket_load_above: Mm | None, joint_caliper_bracket_load_inboard: Mm | None,
    joint_caliper_bracket_welded_by: str | None, joint_caliper_bracket_filler: str | None,
    joint_caliper_bracket_preheat: str | None, caliper_stands: str | None,
) -> WeldJoint:  # fmt: skip
    """The weld that holds the caliper bracket, as entered.

    >>> weld_caliper_bracket(*[None] * 16, "behind").caliper_stands
    'behind'
    """
    return _entered("joint_caliper_bracket", *locals().values())


FORMULA = (
    "strength of one mm of weld / greatest force on one mm, worst case and worst point: force shared evenly, moments by "
    "distance from the weld's middle"
)


@value("welds", formula=FORMULA, source=SOURCE)
def upper_weld_safety(
    weld_upper: WeldJoint,
    part_loads: CornerLoads,
) -> Ratio:
    """Strength over load of the upper pivot's weld, a Margin. For steady loads; nothing about fatigue.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> joint = WeldJoint("joint_upper", metal="mild steel", form="fillet on both sides", leg=10.0, run=120.0, apart=30.0,
    ...     runs_lie="up and down", apart_lies="in and out", load_ahead=0.0, load_above=0.0, load_inboard=0.0, filler="e7018",
    ...     caliper_stands="behind")
    >>> push, none = (0.0, 0.0, 124_105.6), (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, push, 12_410_560.0),))
    >>> round(upper_weld_safety(joint, loads), 4)
    2.0
    """
    return joint_margin(weld_upper, ((case.case, case.upper_pivot) for case in part_loads.cases))


@value("welds", formula=FORMULA, source=SOURCE)
def lower_weld_safety(
    weld_lower: WeldJoint,
    part_loads: CornerLoads,
) -> Ratio:
    """Strength over load of the lower pivot's weld, a Margin. For steady loads; nothing about fatigue.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> joint = WeldJoint("joint_upper", metal="mild steel", form="fillet on both sides", leg=10.0, run=120.0, apart=30.0,
    ...     runs_lie="up and down", apart_lies="in and out", load_ahead=0.0, load_above=0.0, load_inboard=0.0, filler="e7018",
    ...     caliper_stands="behind")
    >>> push, none = (0.0, 0.0, 124_105.6), (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, push, 12_410_560.0),))
    >>> round(lower_weld_safety(joint, loads), 4)
    2.0
    """
    return joint_margin(weld_lower, ((case.case, case.lower_pivot) for case in part_loads.cases))


@value("welds", formula=FORMULA, source=SOURCE)
def steering_arm_weld_safety(
    weld_steering_arm: WeldJoint,
    part_loads: CornerLoads,
) -> Ratio:
    """Strength over load of the steering arm's weld, a Margin. For steady loads; nothing about fatigue.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> joint = WeldJoint("joint_upper", metal="mild steel", form="fillet on both sides", leg=10.0, run=120.0, apart=30.0,
    ...     runs_lie="up and down", apart_lies="in and out", load_ahead=0.0, load_above=0.0, load_inboard=0.0, filler="e7018",
    ...     caliper_stands="behind")
    >>> push, none = (0.0, 0.0, 124_105.6), (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, push, 12_410_560.0),))
    >>> round(steering_arm_weld_safety(joint, loads), 4)
    2.0
    """
    return joint_margin(weld_steering_arm, ((case.case, case.tie_rod) for case in part_loads.cases))


@value(
    "welds",
    formula=f"{FORMULA}; the force is brake torque / effective radius, along the rotor's turning",
    source=SOURCE,
)
def caliper_bracket_weld_safety(
    weld_caliper_bracket: WeldJoint,
    brake_effective_radius: Mm | None,
    part_loads: CornerLoads,
) -> Ratio:
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
