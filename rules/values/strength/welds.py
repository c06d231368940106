"""The welds: what was entered of each, and how much stronger each is than the worst case asks.

The caliper bracket carries the brake torque as a force at the middle of the pads; its own weight, and the caliper's, are
left out.
"""

from collections.abc import Mapping

from rules.graph.asking import need
from rules.graph.declare import value
from rules.graph.results import NotJudged
from rules.measure.units import Mm
from rules.measure.vectors import Vector, times
from rules.sheet.welds import WELDS, PadsStand, WeldQuestions
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import WeldSafetyFactor
from rules.tables import sources
from rules.values.optional_step import needed
from rules.values.strength.weld import weld_margin

ENTERED = "as entered"
SOURCE = (
    sources.SHIGLEY_8.at("Table 9-1"),
    sources.SHIGLEY_9.at("Table 9-2", "weld treated as a line"),
    sources.AISC_360.at("Table J2.5", "strengths"),
    sources.AISC_360.at("J4.2", read="a quotation"),
    sources.SHIGLEY_9.at("Table 9-4", "metal beside the weld: rules/tables/materials.py", read="a quotation"),
)
ALONG_ROTATION: Mapping[PadsStand, Vector] = {
    "ahead": (0.0, 0.0, -1.0), "above": (1.0, 0.0, 0.0), "behind": (0.0, 0.0, 1.0), "below": (-1.0, 0.0, 0.0),
}  # fmt: skip
"""Which way a rotor that rolls forward and is braked drags the pads that stand there."""

FIRST = ("form", "leg", "run", "metal", "filler")
"""What begins a weld, and is named to whoever wants it judged."""


@value("welds", formula=ENTERED, source=sources.AS_ENTERED, each=WELDS)
def which_weld(weld_which: WeldQuestions) -> WeldQuestions:
    """The weld that holds a pivot, the steering arm or the caliper bracket, as entered.

    What its parts are called does not begin it.

    >>> from rules.sheet.welds import WeldUpper
    >>> which_weld(WeldUpper.record({"parts": "cup to plate", "leg": 6.0})).leg
    6.0
    """
    if not vars(weld_which).keys() - {"parts"}:
        raise NotJudged(
            "nothing is entered of this weld, so it was not judged",
            *(getattr(type(weld_which), key).name for key in FIRST),
        )
    return weld_which


FORMULA = (
    "strength of one mm of weld / greatest force on one mm, worst case and worst point: force shared evenly, moments by "
    "distance from the weld's middle"
)
AT_A_JOINT = {"upper": "upper_pivot", "lower": "lower_pivot", "steering_arm": "tie_rod"}
"""Where the load of a weld comes in, by its word in names; the caliper bracket's comes from the pads."""


@value(
    "welds",
    formula=FORMULA,
    source=SOURCE,
    each=[{**weld, "place": AT_A_JOINT[weld["which"]]} for weld in WELDS if weld["which"] in AT_A_JOINT],
)
def which_weld_safety(which_weld: WeldQuestions, part_loads: CornerLoads, place: str, weld: str) -> WeldSafetyFactor:
    """Strength over load of the {part}'s weld, a Margin. For steady loads; nothing about fatigue.

    >>> from rules.sheet.welds import WeldUpper
    >>> from rules.strength.corner_loads import CaseLoads
    >>> pair = WeldUpper.record({"metal": "mild steel", "form": "fillet on both sides", "leg": 10.0, "run": 120.0,
    ...     "apart": 30.0, "thickness_one": 20.0, "thickness_two": 20.0,
    ...     "runs_lie": "up and down", "apart_lies": "in and out", "load_ahead": 0.0, "load_above": 0.0,
    ...     "load_inboard": 0.0, "filler": "e7018"})
    >>> push, none = (0.0, 0.0, 124_105.6), (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, push, 12_410_560.0),))
    >>> round(which_weld_safety(pair, loads, "upper_pivot", "upper weld"), 4)
    2.0
    """
    need(which_weld, "thickness_one", "thickness_two")
    return weld_margin(weld, which_weld, ((case.case, case.at(place)) for case in part_loads.cases))


@value(
    "welds",
    formula=f"{FORMULA}; the force is brake torque / effective radius, along the rotor's turning",
    source=SOURCE,
)
def caliper_bracket_weld_safety(
    caliper_bracket_weld: WeldQuestions,
    caliper_stands: PadsStand | None,
    brake_effective_radius: Mm | None,
    part_loads: CornerLoads,
) -> WeldSafetyFactor:
    """Strength over load of the caliper bracket's weld, a Margin. For steady loads; nothing about fatigue.

    >>> from rules.sheet.welds import WeldCaliperBracket
    >>> from rules.strength.corner_loads import CaseLoads
    >>> pair = WeldCaliperBracket.record({"metal": "mild steel", "form": "fillet on both sides", "leg": 10.0, "run": 120.0,
    ...     "apart": 30.0, "thickness_one": 20.0, "thickness_two": 20.0,
    ...     "runs_lie": "up and down", "apart_lies": "in and out", "load_ahead": 0.0, "load_above": 0.0,
    ...     "load_inboard": 0.0, "filler": "e7018"})
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, none, none, none, 12_410_560.0),))
    >>> round(caliper_bracket_weld_safety(pair, "behind", 100.0, loads), 4)
    2.0
    """
    need(caliper_bracket_weld, "thickness_one", "thickness_two")
    radius = needed("brake_effective_radius", brake_effective_radius)
    stands: PadsStand = needed("weld_caliper_bracket.caliper_stands", caliper_stands)
    dragged = ((case.case, times(case.brake_torque / radius, ALONG_ROTATION[stands])) for case in part_loads.cases)
    return weld_margin("caliper bracket weld", caliper_bracket_weld, dragged)
