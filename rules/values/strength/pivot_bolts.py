"""How close the pivot bolts, pins or studs and the lugs around them are to giving, each in its worst load case.

Nothing here applies while none of the entries a part needs is answered.
"""

from dataclasses import dataclass

from rules.graph.declare import value
from rules.graph.results import Waits
from rules.measure.marks import Thread
from rules.measure.units import Mm, MPa, NewtonMetre, SafetyFactor
from rules.measure.vectors import Vector, size
from rules.strength.corner_loads import CornerLoads, Margin
from rules.strength.pins import cantilever_stress, lug_limits, pin_moment, shear_stress
from rules.strength.stress import von_mises
from rules.strength.threads import root_diameter
from rules.tables.bolt_grades import BoltStrength
from rules.values.optional_step import answered
from rules.values.strength.bolts import GRADE_TABLE, TORQUE, strength_of, torque_of
from rules.values.strength.upright import factor_of, worst

PIN = "statics of a pin as a beam; bending and mean shear by von Mises, against the bolt's yield"
LUG = "bearing stress and net section on yield; tear-out t (2 e - 0.766 d) on 0.577 yield"


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

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        shear = "double" if self.double_shear else "single"
        return f"{self.thread.text}, {self.diameter:.1f} mm carry, gap {self.gap:.3g} mm, {shear} shear"


def _pivot_bolt(which: str, threads_in_joint: bool | None, shear: str | None, entries: list[object]) -> PivotBolt:
    thread, grade, ball, gap, lug = entries
    assert isinstance(thread, Thread) and isinstance(grade, str)
    assert isinstance(ball, float) and isinstance(gap, float) and isinstance(lug, float)
    if shear is None:
        raise Waits(f"pivots.{which}_shear")
    threaded = threads_in_joint is not False
    carries = root_diameter(thread.diameter, thread.pitch) if threaded else thread.diameter
    return PivotBolt(thread, strength_of(grade, thread), carries, ball, gap, lug, shear == "double")


NO_UPPER = "the upper pivot bolt is not entered, so it was not judged"
NO_LOWER = "the lower pivot bolt is not entered, so it was not judged"


@value("bolts", formula="the upper pivot bolt as entered; its thread's root carries unless no thread is in the joint",
       source=GRADE_TABLE)  # fmt: skip
def upper_pivot_bolt(
    upper_thread: Thread | None, upper_grade: str | None, upper_ball_width: Mm | None, upper_gap: Mm | None,
    upper_lug_thickness: Mm | None, threads_in_joint: bool | None, upper_shear: str | None,
) -> PivotBolt:  # fmt: skip
    """The upper pivot bolt in its joint.

    >>> upper_pivot_bolt(Thread("14 x 1.5 mm", 14.0, 1.5), "10.9", 20.0, 0.0, 8.0, False, "double").text
    '14 x 1.5 mm, 14.0 mm carry, gap 0 mm, double shear'
    """
    entries = answered(NO_UPPER, "bolts", upper_thread=upper_thread, upper_grade=upper_grade,
                       upper_ball_width=upper_ball_width, upper_gap=upper_gap,
                       upper_lug_thickness=upper_lug_thickness)  # fmt: skip
    return _pivot_bolt("upper", threads_in_joint, upper_shear, entries)


@value("bolts", formula="the lower pivot bolt as entered; its thread's root carries unless no thread is in the joint",
       source=GRADE_TABLE)  # fmt: skip
def lower_pivot_bolt(
    lower_thread: Thread | None, lower_grade: str | None, lower_ball_width: Mm | None, lower_gap: Mm | None,
    lower_lug_thickness: Mm | None, threads_in_joint: bool | None, lower_shear: str | None,
) -> PivotBolt:  # fmt: skip
    """The lower pivot bolt in its joint.

    >>> lower_pivot_bolt(Thread("14 x 1.5 mm", 14.0, 1.5), "10.9", 20.0, 0.0, 8.0, False, "double").text
    '14 x 1.5 mm, 14.0 mm carry, gap 0 mm, double shear'
    """
    entries = answered(NO_LOWER, "bolts", lower_thread=lower_thread, lower_grade=lower_grade,
                       lower_ball_width=lower_ball_width, lower_gap=lower_gap,
                       lower_lug_thickness=lower_lug_thickness)  # fmt: skip
    return _pivot_bolt("lower", threads_in_joint, lower_shear, entries)


def _pin_factors(bolt: PivotBolt, forces: list[tuple[str, Vector]], name: str) -> Margin:
    """The whole force at the pivot counts as square to the bolt, whichever way the bolt lies."""
    factors = []
    for case, vector in forces:
        force = size(vector)
        moment = pin_moment(force, bolt.ball_width, bolt.gap, bolt.lug_thickness, bolt.double_shear)
        bending = cantilever_stress(moment, 1.0, bolt.diameter)
        shear = shear_stress(force, bolt.diameter, 2 if bolt.double_shear else 1)
        factors.append((factor_of(bolt.strength.yields, von_mises(bending, 0.0, shear)), case,
                        f"bending and shear of the {name} pivot bolt"))  # fmt: skip
    return worst(factors)


@value("bolts", formula="bolt yield / von Mises stress of bending over the gap and shear, worst case", source=PIN)
def upper_pivot_bolt_safety(
    upper_pivot_bolt: PivotBolt,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of the upper pivot bolt, pin or stud.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, push = (0.0, 0.0, 0.0), (6000.0, 8000.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, none),))
    >>> bolt = PivotBolt(Thread("20 x 2.5 mm", 20.0, 2.5), BoltStrength(600, 660, 830), 20.0, 0.0, 25.0, 9.0, False)
    >>> round(upper_pivot_bolt_safety(bolt, loads), 2)
    2.04
    """
    return _pin_factors(upper_pivot_bolt, [(case.case, case.upper_pivot) for case in part_loads.cases], "upper")


@value("bolts", formula="bolt yield / von Mises stress of bending over the gap and shear, worst case", source=PIN)
def lower_pivot_bolt_safety(
    lower_pivot_bolt: PivotBolt,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of the lower pivot bolt, pin or stud.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, push = (0.0, 0.0, 0.0), (6000.0, 8000.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, none),))
    >>> bolt = PivotBolt(Thread("20 x 2.5 mm", 20.0, 2.5), BoltStrength(600, 660, 830), 20.0, 0.0, 25.0, 9.0, False)
    >>> round(lower_pivot_bolt_safety(bolt, loads), 2)
    2.04
    """
    return _pin_factors(lower_pivot_bolt, [(case.case, case.lower_pivot) for case in part_loads.cases], "lower")


def _lug_factors(bolt: PivotBolt, edge: float, strength: float, forces: list[tuple[str, Vector]], name: str) -> Margin:
    share = 2 if bolt.double_shear else 1
    factors = []
    for case, vector in forces:
        force = max(size(vector) / share, 1.0)
        limits = lug_limits(force, strength, edge, bolt.thread.diameter, bolt.lug_thickness)
        factors += [(factor, case, f"{limit}, {name} pivot lug") for limit, factor in limits.items()]
    return worst(factors)


@value(
    "bolts",
    formula="the least of bearing stress, tear-out and net section of one lug, on yield, worst case",
    source=LUG,
)
def upper_pivot_lug_safety(
    upper_pivot_bolt: PivotBolt, upper_edge_distance: Mm, upright_yield: MPa, part_loads: CornerLoads
) -> SafetyFactor:
    """Factor on yield of the lugs that hold the upper pivot bolt. Does not hold under 1.5 diameters of edge.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, push = (0.0, 0.0, 0.0), (12_000.0, 16_000.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, none),))
    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(580, 640, 800), 12.0, 0.0, 0.0, 6.0, True)
    >>> round(upper_pivot_lug_safety(bolt, 24.0, 250.0, loads), 2)
    1.8
    """
    forces = [(case.case, case.upper_pivot) for case in part_loads.cases]
    return _lug_factors(upper_pivot_bolt, upper_edge_distance, upright_yield, forces, "upper")


@value(
    "bolts",
    formula="the least of bearing stress, tear-out and net section of one lug, on yield, worst case",
    source=LUG,
)
def lower_pivot_lug_safety(
    lower_pivot_bolt: PivotBolt, lower_edge_distance: Mm, upright_yield: MPa, part_loads: CornerLoads
) -> SafetyFactor:
    """Factor on yield of the lugs that hold the lower pivot bolt. Does not hold under 1.5 diameters of edge.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, push = (0.0, 0.0, 0.0), (12_000.0, 16_000.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("bump", none, none, none, push, push, none),))
    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(580, 640, 800), 12.0, 0.0, 0.0, 6.0, True)
    >>> round(lower_pivot_lug_safety(bolt, 24.0, 250.0, loads), 2)
    1.8
    """
    forces = [(case.case, case.lower_pivot) for case in part_loads.cases]
    return _lug_factors(lower_pivot_bolt, lower_edge_distance, upright_yield, forces, "lower")


@value("bolts", formula=TORQUE, source="Shigley 9th ed. eq. 8-27")
def upper_pivot_bolt_torque(lubrication: str | None, upper_pivot_bolt: PivotBolt) -> NewtonMetre:
    """Tightening torque of the upper pivot bolt, N m. A ball joint's nut takes its maker's figure instead.

    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(830, 940, 1040), 12.0, 0.0, 0.0, 6.0, True)
    >>> round(upper_pivot_bolt_torque("zinc plated", bolt))
    126
    """
    return torque_of(lubrication, upper_pivot_bolt.strength, upper_pivot_bolt.thread)


@value("bolts", formula=TORQUE, source="Shigley 9th ed. eq. 8-27")
def lower_pivot_bolt_torque(lubrication: str | None, lower_pivot_bolt: PivotBolt) -> NewtonMetre:
    """Tightening torque of the lower pivot bolt, N m. A ball joint's nut takes its maker's figure instead.

    >>> bolt = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(830, 940, 1040), 12.0, 0.0, 0.0, 6.0, True)
    >>> round(lower_pivot_bolt_torque("zinc plated", bolt))
    126
    """
    return torque_of(lubrication, lower_pivot_bolt.strength, lower_pivot_bolt.thread)
