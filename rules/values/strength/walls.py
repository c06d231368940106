"""How close a flat wall of the beam is to giving, under the steering arm or a pivot's lugs that are welded to its middle."""

from rules.graph.asking import need
from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.units import Mm, MPa
from rules.measure.vectors import size
from rules.sheet.upright import ArmForm, Beam
from rules.sheet.welds import WeldForm, WeldQuestions
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.strength.wall import WallHolds, wall_holds
from rules.tables import sources
from rules.values.optional_step import needed, whole, whole_once_begun
from rules.values.strength.upright import ENOUGH, worst
from rules.values.strength.weld import at_the_weld

ROUND_ARMS: tuple[ArmForm, ...] = ("round bar", "round tube")
FLAT_WALLED: tuple[Beam, ...] = ("box", "channel")
"""Beams with a flat wall that a steering arm or lugs may be welded to the middle of."""
TABLES = sources.EN_1993_1_8.at("Tables 7.10 to 7.14", "chord face failure, side wall crushing, and pi / 4 of it round")
GIVES = "yield lines in the wall, or its edges"


@dataclass(frozen=True, slots=True)
class Wall:
    """The wall an arm is welded to: thickness and free width, and the thickness of the walls beside it; across and along:
    the arm's on it; lever: to its joint; rounded: a round arm. mm."""

    thickness: float
    width: float
    beside: float
    across: float
    along: float
    lever: float
    rounded: bool = False

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        sizes = (self.thickness, self.width, self.across, self.along)
        thickness, width, across, along = (show(size, "mm", units) for size in sizes)
        under = f"a round arm of {across}" if self.rounded else f"{across} x {along}"
        return f"{thickness} thick, {width} wide, under {under}"

    def holds(self, yields: float) -> WallHolds:
        """What it holds of a metal, MPa."""
        return wall_holds(yields, self.thickness, self.beside, self.width, self.across, self.along, self.rounded)


@value("upright", formula="the wall as entered, the arm's root on it", source=sources.AS_ENTERED)
def wall_under_arm(
    strength_asked: bool | None,
    beam: Beam | None,
    beam_wall: Mm | None,
    arm_on_wall: Mm | None,
    arm_on_wall_width: Mm | None,
    steering_arm_form: ArmForm | None,
    steering_arm_length: Mm | None,
    steering_arm_width: Mm | None,
    steering_arm_height: Mm | None,
) -> Wall:
    """The wall under the steering arm's weld: the arm's width lies across it, its height along.

    >>> wall_under_arm(True, "box", 5.0, 8.0, 100.0, "round bar", 50.0, 40.0, None).words_in("metric")
    '8 mm thick, 100 mm wide, under a round arm of 40 mm'
    """
    if beam == "none":
        raise DoesNotApply("the upright has no beam, so there is no wall under the steering arm")
    if arm_on_wall == 0:
        raise DoesNotApply("the steering arm does not stand on the middle of a flat wall")
    asked = {"upright.arm_on_wall": arm_on_wall, "upright.arm_on_wall_width": arm_on_wall_width}
    arm_begun = not (steering_arm_form is None and steering_arm_length is None and steering_arm_width is None)
    if strength_asked and beam in FLAT_WALLED and arm_begun:
        thick, wide = whole(asked)
    else:
        thick, wide = whole_once_begun("no wall under the steering arm is entered, so none was judged", asked)
    arm = {"upright.steering_arm_length": steering_arm_length, "upright.steering_arm_width": steering_arm_width}
    length, across = whole(arm)
    rounded = steering_arm_form in ROUND_ARMS
    height = across if rounded else needed("upright.steering_arm_height", steering_arm_height)
    return Wall(thick, wide, needed("upright.beam_wall", beam_wall), across, height, length, rounded)


@value(
    "upright",
    formula="1 / (moment across the wall / what it holds + moment along it / what it holds), worst case",
    source=TABLES,
)
def wall_under_arm_safety(wall_under_arm: Wall, upright_yield: MPa, part_loads: CornerLoads) -> SafetyFactor:
    """Factor on yield lines of the wall under the steering arm's weld, and on the walls that hold its edges.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("rock", none, none, none, none, none, (0.0, 15_512.0, 0.0)),))
    >>> round(wall_under_arm_safety(Wall(5.0, 100.0, 5.0, 50.0, 50.0, 50.0), 250.0, loads), 2)
    2.0
    """
    holds, factors = wall_under_arm.holds(upright_yield), []
    for case in part_loads.cases:
        ahead, outboard, upward = (part * wall_under_arm.lever for part in case.tie_rod)
        used = holds.used(0.0, upward, size((ahead, outboard, 0.0)))
        factors.append((1 / used if used * ENOUGH > 1 else ENOUGH, case.case, GIVES))
    return worst("wall under the steering arm", factors)


LUGS = (
    {"which": "upper", "place": "upper_pivot", "part": "wall under upper lugs"},
    {"which": "lower", "place": "lower_pivot", "part": "wall under lower lugs"},
)
AS_WIDE_AS_APART: tuple[WeldForm, ...] = ("fillet on both sides", "fillet round a rectangle")


@value(
    "welds",
    formula="1 / (pull / what the wall holds + moment along it / what it holds + moment across it / what it holds), worst case",
    source=TABLES,
    each=LUGS,
)
def wall_under_which_lug_safety(
    which_weld: WeldQuestions,
    weld_which_wall_width: Mm | None,
    beam_wall: Mm | None,
    upright_yield: MPa,
    part_loads: CornerLoads,
    which: str,
    place: str,
    part: str,
) -> SafetyFactor:
    """Factor on yield lines of the flat wall under the {which} pivot's lugs, their weld's runs along it, and on its edges.

    A single run or a bevel is as wide as its part is thick; a cup is round.

    >>> from rules.sheet.welds import WeldUpper
    >>> from rules.strength.corner_loads import CaseLoads
    >>> pair = WeldUpper.record({"form": "fillet on both sides", "run": 50.0, "apart": 50.0, "thickness_two": 5.0,
    ...     "runs_lie": "up and down", "apart_lies": "fore and aft", "load_ahead": 0.0, "load_above": 0.0,
    ...     "load_inboard": 0.0})
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("kerb", none, none, none, (0.0, 23_927.5, 0.0), none, none),))
    >>> asked = ("upper", "upper_pivot", "wall under upper lugs")
    >>> round(wall_under_which_lug_safety(pair, 100.0, 5.0, 250.0, loads, *asked), 3)
    2.0
    """
    if weld_which_wall_width is None:
        why = f"the {which} pivot's lugs are not said to stand on a tube's or channel's wall, so none was judged"
        raise NotJudged(why, f"weld_{which}.wall_width")
    weld, wall = which_weld, weld_which_wall_width
    need(weld, "form", "thickness_two", "runs_lie", "apart_lies", "load_ahead", "load_above", "load_inboard")
    beside = needed("upright.beam_wall", beam_wall)
    across, along, rounded = _on_the_wall(weld)
    holds, factors = wall_holds(upright_yield, weld.thickness_two, beside, wall, across, along, rounded), []
    for case in part_loads.cases:
        force, moment = at_the_weld(weld, case.at(place))
        used = holds.used(force[2], moment[1], moment[0])
        factors.append((1 / used if used * ENOUGH > 1 else ENOUGH, case.case, GIVES))
    return worst(part, factors)


def _on_the_wall(weld: WeldQuestions) -> tuple[float, float, bool]:
    """What a weld holds on a wall: its size across it and along it, mm, and whether it is round."""
    if weld.form == "fillet round a tube or cup":
        need(weld, "apart")
        return weld.apart, weld.apart, True
    need(weld, "run")
    if weld.form in AS_WIDE_AS_APART:
        need(weld, "apart")
        return weld.apart, weld.run, False
    need(weld, "thickness_one")
    return weld.thickness_one, weld.run, False
