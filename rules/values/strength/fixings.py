"""How close the smaller fixings are to giving: the caliper's two bolts, and the seam that joins beam and plate.

Nothing here applies while none of the entries a part needs is answered.
"""

from math import hypot

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate
from rules.measure.marks import Thread
from rules.measure.units import Mm, MPa, Share
from rules.strength.bolts import pull_and_shear_stress, round_area
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.strength.stress import level_cut
from rules.strength.threads import root_diameter, stress_area
from rules.strength.weld import limits, throat
from rules.tables import sources
from rules.tables.bolt_grades import BoltGrade, BoltStrength
from rules.tables.electrodes import ELECTRODES
from rules.values.optional_step import needed, whole_once_begun
from rules.values.strength.bolts import ELASTIC, GRADE_TABLE, strength_of
from rules.values.strength.plate_build import Build
from rules.values.strength.upright import ENOUGH, beyond, caliper_force, factor_of, worst

LEAST_SEAM = 0.5
"""Share of a seam that is welded where nobody says: as much gap as weld. Common practice, no source."""
SEAM = (
    sources.STATICS.saying(
        "shear flow V Q / I between plate and beam; the cell that a channel closes takes twist / 2 A"
    ),
    sources.AISC_360.at("Table J2.5", "strengths"),
)


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


@value("upright", formula="as entered, else half: as much gap as weld", source=sources.AS_ENTERED)
def seam_welded(seam_share: Share | None) -> Share:
    """How much of the seam between beam and plate is welded. An estimate, and a low one, until it is entered.

    >>> seam_welded(0.8), float(seam_welded(None))
    (0.8, 0.5)
    """
    return Estimate(LEAST_SEAM, measure="upright.seam_share") if seam_share is None else seam_share


@value("upright", formula="strength of one mm of weld / greatest force on one mm of the two seams: V Q / (2 I), and twist / 2 A "
       "of a channel; just above and below the hub, worst case", source=SEAM)  # fmt: skip
def seam_weld_safety(
    seam_leg: Mm | None,
    seam_welded: Share,
    upright_build: Build,
    upright_yield: MPa,
    section_above: Mm | None,
    section_below: Mm | None,
    steering_arm_root_above: Mm | None,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor of the two runs that join the beam to the plate, as a rule for steady loads counts it.

    The weakest electrode of the table and the upright's own yield count. What one load brings in at one place is not in it.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, push = (0.0, 0.0, 0.0), (0.0, 20_000.0, 0.0)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("kerb", none, none, none, push, none, none),))
    >>> build = Build(120.0, 10.0, 0.0, 180.0, 150.0, "box", 60.0, 40.0, 4.0, 0.0)
    >>> round(seam_weld_safety(5.0, 1.0, build, 250.0, 60.0, 60.0, 0.0, loads), 2)
    3.11
    """
    if upright_build.beam == "none":
        raise DoesNotApply("the upright has no beam")
    leg = needed("upright.seam_leg", seam_leg)
    electrode = min(one.tensile for one in ELECTRODES.values())
    ways = list(limits(throat(leg), leg, electrode, upright_yield, upright_yield))
    first = min(ways, key=lambda way: way.strength)
    levels = (needed("upright.section_above", section_above), -needed("upright.section_below", section_below))
    factors = []
    for above in levels:
        section, plate = upright_build.section(above), upright_build.section(above, beam=False)
        first_moment = plate.area * abs(section.centroid - plate.centroid)
        cell = upright_build.cell if upright_build.beam == "channel" else 0.0
        level = (0.0, part_loads.places.mount_face[1] - section.centroid, part_loads.places.mount_face[2] + above)
        for case in part_loads.cases:
            cut = level_cut(level, beyond(case, part_loads.places, above, above > 0, steering_arm_root_above))
            flow = abs(cut.shear_v) * first_moment / (2 * section.inertia_u)
            flow += abs(cut.twist) / (2 * cell) if cell else 0.0
            holds = first.strength * seam_welded
            factors.append((holds / flow if flow * ENOUGH > holds else ENOUGH, case.case, first.words))
    return worst("weld of beam to plate", factors, "weld", ways[-1].strength / first.strength)
