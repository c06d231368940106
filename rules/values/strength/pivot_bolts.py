"""How close the pivot bolts, pins or studs and the lugs around them are to giving, each in its worst load case.

Nothing here applies while none of the entries a part needs is answered.
"""

from rules.graph.declare import value
from rules.graph.results import DoesNotApply
from rules.measure.display import show
from rules.measure.marks import Thread
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.units import Mm, MPa, NewtonMetre
from rules.measure.vectors import size
from rules.sheet.pivots import PivotKind, Shear
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.strength.pins import cantilever_stress, lug_limits, pin_moment, shear_stress
from rules.strength.stress import von_mises
from rules.strength.threads import root_diameter
from rules.tables import sources
from rules.tables.bolt_grades import BoltGrade, BoltStrength
from rules.tables.torque_factors import ThreadState
from rules.values.optional_step import whole_once_begun
from rules.values.strength.bolts import GRADE_TABLE, TORQUE, strength_of, torque_of
from rules.values.strength.upright import factor_of, worst

PIN = sources.STATICS.saying("a pin as a beam; bending and mean shear by von Mises, against the bolt's yield")
LUG = sources.COMMON_PRACTICE.saying(
    "bearing stress and net section on yield; tear-out t (2 e - 0.766 d) on 0.577 yield"
)


@dataclass(frozen=True, slots=True)
class PivotBolt:
    """A pivot bolt in its joint, mm. diameter: what carries, the thread's root where threads lie in the joint."""

    thread: Thread
    strength: BoltStrength
    diameter: float
    ball_width: float
    gap: float
    lug_thickness: float
    double_shear: bool
    assumes: tuple[str, ...] = ()
    """Dotted names of answers nobody gave, counted as the worst that is usual."""

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        shear = "double" if self.double_shear else "single"
        carry, gap = (show(size, "mm", units) for size in (self.diameter, self.gap))
        return f"{self.thread.text}, {carry} carry, gap {gap}, {shear} shear"


PIVOTS = (
    {"which": "upper", "place": "upper_pivot", "bolt": "upper pivot bolt", "lug": "upper pivot lug"},
    {"which": "lower", "place": "lower_pivot", "bolt": "lower pivot bolt", "lug": "lower pivot lug"},
)


@value(
    "bolts",
    formula="the {which} pivot bolt as entered; its thread's root carries unless no thread is in the joint",
    source=GRADE_TABLE,
    each=PIVOTS,
)
def which_pivot_bolt(
    which_thread: Thread | None,
    which_grade: BoltGrade | None,
    which_ball_width: Mm | None,
    which_gap: Mm | None,
    which_lug_thickness: Mm | None,
    threads_in_joint: bool | None,
    which_kind: PivotKind | None,
    which_shear: Shear | None,
    which: str,
) -> PivotBolt:
    """The {which} pivot bolt in its joint. A ball joint's stud is held at one end, whatever is said of it.

    A bolt of which nobody has said how it is held counts as held on one side, an estimate: it then bends most.

    >>> thread = Thread("14 x 1.5 mm", 14.0, 1.5)
    >>> bolt = which_pivot_bolt(thread, "10.9", 20.0, 0.0, 8.0, False, "rod end", "double", "upper")
    >>> bolt.words_in("metric")
    '14 x 1.5 mm, 14 mm carry, gap 0 mm, double shear'
    """
    entered = {"thread": which_thread, "grade": which_grade, "ball_width": which_ball_width, "gap": which_gap,
               "lug_thickness": which_lug_thickness}  # fmt: skip
    thread, grade, ball, gap, lug = whole_once_begun(
        f"the {which} pivot bolt is not entered, so it was not judged",
        {f"bolts.{which}_{key}": answer for key, answer in entered.items()},
    )
    ball_joint = which_kind == "ball joint"
    assumes = (f"pivots.{which}_shear",) if which_shear is None and not ball_joint else ()
    threaded = threads_in_joint is not False
    carries = root_diameter(thread.diameter, thread.pitch) if threaded else thread.diameter
    double = which_shear == "double" and not ball_joint
    return PivotBolt(thread, strength_of(grade, thread), carries, ball, gap, lug, double, assumes)


@value(
    "bolts",
    formula="bolt yield / von Mises stress of bending over the gap and shear, worst case",
    source=PIN,
    each=PIVOTS,
)
def which_pivot_bolt_safety(
    which_pivot_bolt: PivotBolt, part_loads: CornerLoads, place: str, bolt: str
) -> SafetyFactor:
    """Factor on yield of the {which} pivot bolt, pin or stud.

        The whole force at the pivot counts as square to the bolt, whichever way the bolt lies.

    >>> from rules.strength.corner_loads import CaseLoads
        >>> none, push = (0.0, 0.0, 0.0), (6000.0, 8000.0, 0.0)
        >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, none),))
        >>> pin = PivotBolt(Thread("20 x 2.5 mm", 20.0, 2.5), BoltStrength(600, 660, 830), 20.0, 0.0, 25.0, 9.0, False)
        >>> round(which_pivot_bolt_safety(pin, loads, "upper_pivot", "upper pivot bolt"), 2)
        2.04
    """
    pin, factors = which_pivot_bolt, []
    for case in part_loads.cases:
        force = size(case.at(place))
        moment = pin_moment(force, pin.ball_width, pin.gap, pin.lug_thickness, pin.double_shear)
        bending = cantilever_stress(moment, 1.0, pin.diameter)
        shear = shear_stress(force, pin.diameter, 2 if pin.double_shear else 1)
        stress = von_mises(bending, 0.0, shear)
        factors.append((factor_of(pin.strength.yields, stress), case.case, f"bending and shear of the {bolt}"))
    return worst(bolt, factors)


@value(
    "bolts",
    formula="the least of bearing stress, tear-out and net section of one lug, on yield, worst case",
    source=LUG,
    each=PIVOTS,
)
def which_pivot_lug_safety(
    which_pivot_bolt: PivotBolt,
    which_edge_distance: Mm,
    which_lug_width: Mm | None,
    upright_yield: MPa,
    part_loads: CornerLoads,
    place: str,
    lug: str,
) -> SafetyFactor:
    """Factor on yield of the lugs that hold the {which} pivot bolt. Does not hold under 1.5 diameters of edge.

    >>> from rules.strength.corner_loads import CaseLoads
        >>> none, push = (0.0, 0.0, 0.0), (12_000.0, 16_000.0, 0.0)
        >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, none),))
        >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(580, 640, 800), 12.0, 0.0, 0.0, 6.0, True)
        >>> round(which_pivot_lug_safety(bolt, 24.0, None, 250.0, loads, "upper_pivot", "upper pivot lug"), 2)
        1.8
    """
    pin, factors = which_pivot_bolt, []
    for case in part_loads.cases:
        force = max(size(case.at(place)) / (2 if pin.double_shear else 1), 1.0)
        limits = lug_limits(
            force, upright_yield, which_edge_distance, pin.thread.diameter, pin.lug_thickness, which_lug_width
        )
        factors += [(factor, case.case, f"{limit}, {lug}") for limit, factor in limits.items()]
    return worst(lug, factors)


@value("bolts", formula=TORQUE, source=sources.SHIGLEY_9.at("eq. 8-27"), each=PIVOTS)
def which_pivot_bolt_torque(
    lubrication: ThreadState | None, which_kind: PivotKind, which_pivot_bolt: PivotBolt, which: str
) -> NewtonMetre:
    """Tightening torque of the {which} pivot bolt, N m. Not of a ball joint's tapered stud: K counts no taper.

    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(830, 940, 1040), 12.0, 0.0, 0.0, 6.0, True)
    >>> round(which_pivot_bolt_torque("zinc plated", "spherical bearing", bolt, "upper"))
    126
    """
    if which_kind == "ball joint":
        raise DoesNotApply(f"the {which} ball joint's tapered stud takes its maker's torque, and no other")
    return torque_of(lubrication, which_pivot_bolt.strength, which_pivot_bolt.thread)
