"""How close the outer joints and the lugs that stand out are to giving, by the direction of the force.

Nothing here applies while none of the entries a part needs is answered.
"""

from collections.abc import Iterable

from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged
from rules.measure.units import Mm, MPa, Newton
from rules.measure.vectors import Vector, dot, minus, size, unit
from rules.motion.kinds import OuterPivotBolt
from rules.strength.corner_loads import CornerLoads, Places
from rules.strength.margin import SafetyFactor
from rules.strength.pins import lug_bending_stress
from rules.tables import sources
from rules.values.optional_step import needed, whole
from rules.values.strength.pivot_bolts import PIVOTS, PivotBolt
from rules.values.strength.upright import ENOUGH, factor_of, worst

RATED = sources.MAKERS_ADVICE.saying("a joint's static rating square to its bolt, and a far smaller one along it")


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
    formula="yield / (6 x force along the bolt x reach / (width x thickness2)), a quarter of the stress where lugs are tied",
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
    """Factor on yield of the {which} pivot's lugs at their root, bent by the part of the force that lies along the bolt.

    >>> from rules.measure.marks import Thread
    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> from rules.tables.bolt_grades import BoltStrength
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("bump", none, none, none, (1000.0, 6000.0, 8000.0), none, none),))
    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(580, 640, 800), 12.0, 0.0, 0.0, 10.0, True)
    >>> asked = (bolt, 40.0, 60.0, None, None, "fore and aft", 250.0, loads, "upper", "upper_pivot", "upper lug, bent")
    >>> float(which_lug_bending_safety(*asked))
    6.25
    """
    width = which_lug_width
    if width is None:
        width = 2 * needed(f"bolts.{which}_edge_distance", which_edge_distance)
    lies: OuterPivotBolt = needed(f"joint_angles.{which}_bolt", which_bolt)
    pin, lugs = which_pivot_bolt, 2 if which_pivot_bolt.double_shear else 1
    line, factors = bolt_line(lies, part_loads.places), []
    for case, along, _ in by_direction(part_loads, place, line):
        stress = lug_bending_stress(along, which_lug_out, width, pin.lug_thickness, lugs, bool(lugs_tied))
        factors.append(
            (factor_of(upright_yield, stress), case, f"root of the lug, pushed along the bolt, {which} pivot")
        )
    return worst(bent, factors)
