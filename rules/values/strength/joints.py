"""How close the outer joints and the lugs that stand out are to giving, by the direction of the force.

Nothing here applies while none of the entries a part needs is answered.
"""

from collections.abc import Iterable

from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged
from rules.measure.units import Mm, MPa, Newton
from rules.measure.vectors import Vector, dot, minus, size, times, unit
from rules.motion.kinds import OuterPivotBolt
from rules.strength.corner_loads import CornerLoads, Places
from rules.strength.margin import SafetyFactor
from rules.strength.pins import lug_root_stress
from rules.tables import sources
from rules.values.optional_step import needed, whole
from rules.values.strength.pivot_bolts import PIVOTS, PivotBolt
from rules.values.strength.upright import ENOUGH, factor_of, worst

INBOARD: Vector = (0.0, -1.0, 0.0)
RATED = sources.MAKERS_ADVICE.saying("a joint's static rating square to its bolt, and a far smaller one along it")


WIDEST_HOUSING = 40.0
"""mm; how far the housing of an outer joint reaches where nobody entered it, the most that is usual. Common practice."""


@value(
    "upright",
    formula="as entered, else [1 9/16 in | 40 mm], the most that is usual",
    source=sources.COMMON_PRACTICE,
    each=({"which": "upper"}, {"which": "lower"}),
)
def which_housing_reach(which_radius: Mm | None, which: str) -> Mm:
    """How far the housing of the {which} outer joint reaches from its pivot, mm. An estimate until it is entered.

    >>> which_housing_reach(25.0, "upper"), float(which_housing_reach(None, "upper"))
    (25.0, 40.0)
    """
    return Estimate(WIDEST_HOUSING, measure=f"pivots.{which}_radius") if which_radius is None else which_radius


def bolt_line(lies: OuterPivotBolt, places: Places) -> Vector:
    """Which way a bolt through an outer joint lies, a direction of length 1.

    >>> none = (0.0, 0.0, 0.0)
    >>> upright = Places(none, none, none, none, none, (0.0, -100.0, 560.0), (0.0, -100.0, 300.0), none)
    >>> bolt_line("along the steering axis", upright)
    (0.0, 0.0, 1.0)
    """
    if lies == "fore and aft":
        return (1.0, 0.0, 0.0)
    if lies == "across the car":
        return (0.0, 1.0, 0.0)
    return unit(minus(places.upper_pivot, places.lower_pivot))


def by_direction(loads: CornerLoads, place: str, line: Vector) -> Iterable[tuple[str, float, float]]:
    """Each case with the force at a pivot along its bolt and square to it, N, both plus."""
    for case in loads.cases:
        force = case.at(place)
        along = abs(dot(force, line))
        yield case.case, along, max(size(force) ** 2 - along**2, 0.0) ** 0.5


@value(
    "bolts",
    formula="1 / (force square to the bolt / rating square + force along it / rating along), worst case",
    source=RATED,
    each=[{**pivot, "joint": f"{pivot['which']} joint"} for pivot in PIVOTS],
)
def which_joint_safety(
    which_pivot_bolt: PivotBolt,
    which_radial_rating: Newton | None,
    which_axial_rating: Newton | None,
    which_bolt: OuterPivotBolt | None,
    part_loads: CornerLoads,
    which: str,
    place: str,
    joint: str,
) -> SafetyFactor:
    """The {which} outer joint's ratings over its load, by direction; both at once count as their sum, which is careful.

    >>> from rules.measure.marks import Thread
    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> from rules.tables.bolt_grades import BoltStrength
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("bump", none, none, none, (1000.0, 6000.0, 8000.0), none, none),))
    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(580, 640, 800), 12.0, 0.0, 0.0, 6.0, True)
    >>> float(which_joint_safety(bolt, 40_000.0, 4000.0, "fore and aft", loads, "upper", "upper_pivot", "upper joint"))
    2.0
    """
    asked = {f"bolts.{which}_radial_rating": which_radial_rating, f"bolts.{which}_axial_rating": which_axial_rating}
    square, along = whole(asked)
    lies: OuterPivotBolt = needed(f"joint_angles.{which}_bolt", which_bolt)
    line, factors = bolt_line(lies, part_loads.places), []
    for case, with_it, across in by_direction(part_loads, place, line):
        used = across / square + with_it / along
        factors.append((1 / used if used * ENOUGH > 1 else ENOUGH, case, f"rating of the {joint}"))
    return worst(joint, factors, "maker's rating")


@value(
    "bolts",
    formula="as entered, else the pivot's distance from the plate's back, an estimate",
    source=sources.GEOMETRY,
    each=PIVOTS,
)
def which_lug_out(which: str, which_lug_reach: Mm | None, which_weld_lever_inboard: Mm | None) -> Mm:
    """How far the {which} pivot's lugs stand out, from root to bolt, mm. An estimate until measured.

    >>> float(which_lug_out("upper", None, 62.0))
    62.0
    """
    field = f"bolts.{which}_lug_reach"
    if which_lug_reach is None and (which_weld_lever_inboard is None or which_weld_lever_inboard <= 0):
        raise NotJudged(
            f"how far the {which} pivot's lugs stand out is not entered, so their bending was not judged", field
        )
    return which_lug_reach if which_lug_reach is not None else Estimate(which_weld_lever_inboard or 0.0, measure=field)


@value(
    "bolts",
    formula="yield / von Mises stress at the root: 6 x force along the bolt x reach / (width x thickness^2), a quarter of that "
    "where lugs are tied; 6 x force aside x reach / (thickness x width^2) and pull / area, shared by the lugs; mean shear",
    source=sources.STATICS.saying("a lug as a flat bar held at its root; two tied ones can only bend together"),
    each=[{**pivot, "bent": f"{pivot['which']} lug, bent"} for pivot in PIVOTS],
)
def which_lug_bending_safety(
    which_pivot_bolt: PivotBolt,
    which_lug_out: Mm,
    which_lug_width: Mm | None,
    which_edge_distance: Mm | None,
    lugs_tied: bool | None,
    which_bolt: OuterPivotBolt | None,
    upright_yield: MPa,
    part_loads: CornerLoads,
    which: str,
    place: str,
    bent: str,
) -> SafetyFactor:
    """Factor on yield of the {which} pivot's lugs at their root, bent and pulled by the pivot's force in every direction.

    Lugs stand out inboard, from the plate's back; with the bolt across the car all that is square to it counts as aside.
    1000 N along: 6 x 1000 x 40 / (60 x 10^2) = 40 MPa of the one lug that takes it; 8000 aside on two are 26.667, 6000 of pull
    5, and root(1000^2 + 8000^2) / 1200 = 6.719 of shear: root(71.667^2 + 3 x 6.719^2) = 72.605.

    >>> from rules.measure.marks import Thread
    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> from rules.tables.bolt_grades import BoltStrength
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("bump", none, none, none, (1000.0, 6000.0, 8000.0), none, none),))
    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(580, 640, 800), 12.0, 0.0, 0.0, 10.0, True)
    >>> asked = (bolt, 40.0, 60.0, None, None, "fore and aft", 250.0, loads, "upper", "upper_pivot", "upper lug, bent")
    >>> round(float(which_lug_bending_safety(*asked)), 4)
    3.4433
    """
    width = which_lug_width
    if width is None:
        width = 2 * needed(f"bolts.{which}_edge_distance", which_edge_distance)
    lies: OuterPivotBolt = needed(f"joint_angles.{which}_bolt", which_bolt)
    pin, lugs = which_pivot_bolt, 2 if which_pivot_bolt.double_shear else 1
    line, factors = bolt_line(lies, part_loads.places), []
    for case in part_loads.cases:
        force = case.at(place)
        along = dot(force, line)
        square = minus(force, times(along, line))
        pull = 0.0 if lies == "across the car" else dot(square, unit(minus(INBOARD, times(dot(INBOARD, line), line))))
        aside = max(size(square) ** 2 - pull**2, 0.0) ** 0.5
        sizes = (which_lug_out, width, pin.lug_thickness, lugs, bool(lugs_tied))
        stress = lug_root_stress(along, aside, pull, *sizes)
        factors.append((factor_of(upright_yield, stress), case.case, f"yield at the root of the lug, {which} pivot"))
    return worst(bent, factors)
