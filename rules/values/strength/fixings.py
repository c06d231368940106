"""How close the caliper's two bolts are to giving. Nothing here applies while none of the entries they need is answered."""

from math import hypot

from rules.graph.declare import value
from rules.measure.marks import Thread
from rules.measure.units import Mm
from rules.strength.bolts import pull_and_shear_stress, round_area
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.strength.threads import root_diameter, stress_area
from rules.tables.bolt_grades import BoltGrade, BoltStrength
from rules.values.optional_step import needed, whole_once_begun
from rules.values.strength.bolts import ELASTIC, GRADE_TABLE, strength_of
from rules.values.strength.upright import caliper_force, factor_of, worst


@value("bolts", formula="the caliper bolts' thread and strength as entered", source=GRADE_TABLE)
def caliper_bolt_strength(
    caliper_thread: Thread | None,
    caliper_grade: BoltGrade | None,
    caliper_bolt_spacing: Mm | None,
    pads_beyond_caliper_bolts: Mm | None,
) -> BoltStrength:
    """Strength of the two bolts that hold the caliper to its bracket.

    >>> caliper_bolt_strength(Thread("12 x 1.5 mm", 12.0, 1.5), "10.9", 100.0, 30.0).proof
    830
    """
    asked = {"bolts.caliper_thread": caliper_thread, "bolts.caliper_grade": caliper_grade,
             "bolts.caliper_bolt_spacing": caliper_bolt_spacing,
             "bolts.pads_beyond_caliper_bolts": pads_beyond_caliper_bolts}  # fmt: skip
    thread, grade, *_ = whole_once_begun("the caliper's bolts are not entered, so they were not judged", asked)
    return strength_of(grade, thread)


@value("bolts", formula="proof strength / von Mises stress of the worse of two bolts: drag / 2, drag x pads beyond the bolts / "
       "spacing square to it, and drag x rotor to bracket / spacing as pull", source=ELASTIC)  # fmt: skip
def caliper_bolts_safety(
    caliper_bolt_strength: BoltStrength,
    caliper_thread: Thread | None,
    caliper_bolt_spacing: Mm | None,
    pads_beyond_caliper_bolts: Mm | None,
    bracket_arm_offset: Mm | None,
    brake_effective_radius: Mm | None,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on proof load of the caliper's two bolts, which lie along the wheel's axis; preload and friction left out.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none = (0.0, 0.0, 0.0)
    >>> loads = CornerLoads(None, (CaseLoads("braking", none, none, none, none, none, none, 1_000_000.0),))
    >>> thread, strength = Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(830, 940, 1040)
    >>> round(caliper_bolts_safety(strength, thread, 100.0, 0.0, 0.0, 100.0, loads), 3)
    7.308
    """
    spacing = needed("bolts.caliper_bolt_spacing", caliper_bolt_spacing)
    thread = needed("bolts.caliper_thread", caliper_thread)
    aside = needed("upright.bracket_arm_offset", bracket_arm_offset)
    area = stress_area(thread.diameter, thread.pitch)
    shear_area = round_area(root_diameter(thread.diameter, thread.pitch))
    factors = []
    for case in part_loads.cases:
        drag = caliper_force(case, brake_effective_radius)
        shear = hypot(drag / 2, drag * (pads_beyond_caliper_bolts or 0.0) / spacing)
        stress = pull_and_shear_stress(drag * aside / spacing, shear, area, shear_area)
        factors.append((factor_of(caliper_bolt_strength.proof, stress), case.case, "proof load of a caliper bolt"))
    return worst("caliper bolts", factors, "proof load", caliper_bolt_strength.yields / caliper_bolt_strength.proof)
