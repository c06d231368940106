"""How close the hub bolts and wheel studs are to giving, each in its worst load case; grades, threads and torque.

Nothing here applies while none of the entries a part needs is answered.
"""

import re
from math import hypot

from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged, OutsideRange
from rules.measure.marks import BoltCircle, Thread
from rules.measure.patterns import Pattern
from rules.measure.units import Mm, MPa, NewtonMetre, Ratio
from rules.sheet.bolts import ScrewedInto
from rules.strength.bolts import (
    PRELOAD_OF_PROOF,
    Clamped,
    ClampedCases,
    eccentricity,
    group_shears,
    moments_about_middle,
    pull_and_shear_stress,
    round_area,
    tightening_torque,
    unit_pulls,
)
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import Margin, SafetyFactor
from rules.strength.threads import least_engagement, root_diameter, stress_area
from rules.tables import sources
from rules.tables.bolt_grades import GRADES, BoltGrade, BoltStrength, bolt_strength
from rules.tables.materials import AS_BOUGHT, lowest
from rules.tables.torque_factors import TORQUE_FACTOR, ThreadState
from rules.values.optional_step import needed, whole_once_begun
from rules.values.strength.multiples import NOT_ASKED
from rules.values.strength.upright import caliper_force, factor_of, moment_at, worst
from rules.values.wheel_end.hub_bolts import BoltPlaces

ELASTIC = (
    sources.AISC_MANUAL.at(
        "part 7", "elastic bolt group; of bolts that stand unevenly no published example was found to check against"
    ),
    sources.SHIGLEY_9.at("eq. 5-15", "pull and shear by distortion energy, against the proof load"),
)
GRADE_TABLE = (sources.SAE_J429, sources.ISO_898)

RULE_OF_THUMB: dict[ScrewedInto, float] = {"nut": 0.0, "steel": 1.5, "iron": 2.0, "aluminium": 2.5}
"""Least thread engagement in bolt diameters. Steel: old rule of thumb in print; iron and aluminium from memory."""

TAPPED: dict[ScrewedInto, float] = {
    "steel": lowest(AS_BOUGHT["a36 plate"]).ultimate,
    "aluminium": lowest(AS_BOUGHT["6061-t6"]).ultimate,
}
"""Tensile strength of tapped metal, MPa: the weakest usual one. Iron has no figure here, only the rule of thumb."""

SOFTEST: BoltGrade = "grade 2"
"""What a bolt without a mark counts as."""
_CLASSES: dict[str, BoltGrade] = {"8.8": "8.8", "10.9": "10.9", "12.9": "12.9"}
_SAE_GRADES: dict[str, BoltGrade] = {"2": "grade 2", "5": "grade 5", "7": "grade 7", "8": "grade 8"}
_LINES: dict[str, BoltGrade] = {
    "three": "grade 5", "3": "grade 5", "five": "grade 7", "5": "grade 7", "six": "grade 8", "6": "grade 8",
}  # fmt: skip


DOUBT = Pattern(r"\?|\b(?:unmarked|no mark|not|unknown|looks?|like|maybe|may be|perhaps|probably|guess\w*|think)\b")
"""Words beside a class that say it was not read off the head. A bolt without a mark counts as the softest sold."""


def read_grade(mark: str) -> BoltGrade:
    """One of GRADES from what was written off a bolt's head. Raises OutsideRange where it says none of them.

    >>> read_grade("Grade 8"), read_grade("six lines"), read_grade("class 10.9"), read_grade("gr 5")
    ('grade 8', 'grade 8', '10.9', 'grade 5')
    """
    words = mark.strip().lower().replace(",", ".")
    classes = set(re.findall(r"\b(?:8\.8|10\.9|12\.9)\b", words))
    if len(classes) == 1 and not DOUBT.search(words):
        return _CLASSES[classes.pop()]
    if match := re.search(r"\b(three|five|six|[356])\s+(?:radial\s+)?lines?\b", words):
        return _LINES[match[1]]
    if match := re.fullmatch(r"(?:sae\s*)?(?:grade|gr\.?|g)?\s*([2578])", words):
        return _SAE_GRADES[match[1]]
    raise OutsideRange(f"the bolt mark “{mark}” says no grade known here; write one of {', '.join(GRADES)}")


def strength_of(grade: BoltGrade, thread: Thread) -> BoltStrength:
    """Strength of a bolt by its grade. Raises OutsideRange where the grade has no such size."""
    found = bolt_strength(grade, thread.diameter)
    if found is None:
        raise OutsideRange(
            f"there is no bolt of {thread.text} in {grade}; check the mark",
            change="Put right the thread, or upper or lower pivot bolt grade, wheel stud grade or mounting bolt grade.",
        )
    return found


@value(
    "bolts",
    formula="by the mark on the head and the size; unmarked, as the softest sold, an estimate",
    source=GRADE_TABLE,
)
def hub_bolt_tensile(mount_bolt_grade: str | None, mount_bolt_thread: Thread) -> MPa:
    """Tensile strength of the hub's mounting bolts, MPa. An estimate while no mark is entered: what nobody marked is soft.

    >>> round(hub_bolt_tensile("10.9", Thread("12 x 1.75 mm", 12.0, 1.75)))
    1040
    """
    strength = strength_of(read_grade(mount_bolt_grade or SOFTEST), mount_bolt_thread)
    return strength.tensile if mount_bolt_grade else Estimate(strength.tensile, measure="hub.mount_bolt_grade")


@value("bolts", formula="proof, yield and strongest of the grade that has this tensile strength", source=GRADE_TABLE)
def hub_bolt_strength(mount_bolt_grade: str | None, mount_bolt_thread: Thread, hub_bolt_tensile: MPa) -> BoltStrength:
    """Strength of the hub's mounting bolts.

    >>> hub_bolt_strength("10.9", Thread("12 x 1.75 mm", 12.0, 1.75), 1040.0).proof
    830
    """
    strength = strength_of(read_grade(mount_bolt_grade or SOFTEST), mount_bolt_thread)
    return BoltStrength(strength.proof, strength.yields, float(hub_bolt_tensile), strength.strongest)


@value(
    "bolts", formula="strength is asked for, or the hub bolts' engagement or hole is entered", source=sources.ARITHMETIC
)
def hub_bolts_begun(
    strength_asked: bool | None, hub_bolt_engagement: Mm | None, hub_bolt_into: ScrewedInto | None
) -> bool:
    """True once the hub bolts are to be judged; not judged before.

    >>> hub_bolts_begun(None, 24.0, None)
    True
    """
    # Their grade and places belong to the hub step, which every build fills in: those alone ask for nothing.
    if strength_asked or hub_bolt_engagement is not None or hub_bolt_into is not None:
        return True
    raise NotJudged(NOT_ASKED, "loads.judge_strength")


@value(
    "bolts",
    formula="where they stand, once strength is asked for or an entry of their own is there",
    source=sources.GEOMETRY,
)
def hub_bolts_at(hub_bolts_begun: bool, hub_bolts_stand: BoltPlaces) -> BoltPlaces:
    """Where the hub's mounting bolts stand, once they are to be judged.

    >>> hub_bolts_at(True, BoltPlaces(((0.0, 50.0), (0.0, -50.0)))).text
    "2 bolts about the wheel's axis"
    """
    return hub_bolts_stand


@value("bolts", formula="pull from the hub's tilting moment about the bolts' middle, share of the shear, and the caliper's force "
       "handed back through the hub", source=ELASTIC[0])  # fmt: skip
def hub_bolt_forces(
    hub_bolts_at: BoltPlaces, brake_effective_radius: Mm | None, rotor_plane_offset: Mm, part_loads: CornerLoads
) -> ClampedCases:
    """Pull and shear of every mounting bolt of the hub, preload left out.

    The caliper presses the hub as hard as the bracket, in a direction the sheet does not know: the worst is taken. A push
    of the hub against the plate relieves no bolt. Bolts that stand unevenly are tilted and turned by what passes through the
    axis, beside their middle.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, pull = (0.0, 0.0, 0.0), (0.0, 40_000.0, 0.0)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("rock", none, pull, none, none, none, none),))
    >>> four = BoltPlaces(((-40.0, 45.0), (40.0, 45.0), (40.0, -45.0), (-40.0, -45.0)))
    >>> hub_bolt_forces(four, None, 0.0, loads).cases[0].bolts[0]
    (10000.0, 0.0)
    """
    places, found = hub_bolts_at.places, []
    face, count = part_loads.places.mount_face, len(places)
    # The most that a moment of 1 N mm, turned the worst way, pulls any bolt with.
    straight, across = unit_pulls(places)
    worst_turn = max(hypot(*pull) for pull in zip(straight, across, strict=True))
    turned = group_shears(places, 0.0, 0.0, eccentricity(places))
    for case in part_loads.cases:
        x, y, z = case.hub_force
        moment = moment_at(case, part_loads.places, face)
        about_x, about_y, about_z = moments_about_middle(places, case.hub_force, moment)
        caliper = caliper_force(case, brake_effective_radius)
        even = max(y, 0.0) / count + caliper * abs(rotor_plane_offset - face[1]) * worst_turn
        pulls = [even - about_x * by_x + about_z * by_z for by_x, by_z in zip(straight, across, strict=True)]
        shears = [
            shear + caliper * (1 / count + turn)
            for shear, turn in zip(group_shears(places, x, z, about_y), turned, strict=True)
        ]
        found.append(Clamped(case.case, tuple(zip(pulls, shears, strict=True)), y))
    return ClampedCases(tuple(found))


def _proof(part: str, limit: str, forces: ClampedCases, strength: BoltStrength, thread: Thread) -> Margin:
    """The margin on proof load of the worst bolt in the worst case; the thread's root counts in shear."""
    area = stress_area(thread.diameter, thread.pitch)
    shear_area = round_area(root_diameter(thread.diameter, thread.pitch))
    factors = []
    for case in forces.cases:
        stress = max(pull_and_shear_stress(pull, shear, area, shear_area) for pull, shear in case.bolts)
        factors.append((factor_of(strength.proof, stress), case.case, limit))
    return worst(part, factors, "proof load", strength.yields / strength.proof)


@value("bolts", formula="proof strength / von Mises stress of the worst bolt", source=ELASTIC)
def hub_bolts_safety(
    hub_bolt_forces: ClampedCases, hub_bolt_strength: BoltStrength, mount_bolt_thread: Thread
) -> SafetyFactor:
    """Factor on proof load of the hub's mounting bolts, preload left out; the thread's root counts in shear.

    >>> forces, thread = ClampedCases((Clamped("rock", ((10_000.0, 0.0),) * 4, 0.0),)), Thread("12 x 1.75 mm", 12.0, 1.75)
    >>> round(hub_bolts_safety(forces, BoltStrength(830, 940, 1040), thread), 3)
    6.994
    """
    return _proof("hub bolts", "proof load of a hub bolt", hub_bolt_forces, hub_bolt_strength, mount_bolt_thread)


@value(
    "bolts",
    formula="full thread in the hole / the larger of FED-STD-H28 engagement and the rule of thumb",
    source=(
        sources.FED_STD_H28.at("formula 14"),
        sources.COMMON_PRACTICE.saying(
            "steel 1.5 d, an old rule of thumb in print; iron 2 d and aluminium 2.5 d from memory"
        ),
    ),
)
def hub_bolt_thread_share(
    hub_bolt_engagement: Mm | None,
    hub_bolt_into: ScrewedInto | None,
    mount_bolt_grade: str | None,
    hub_bolt_strength: BoltStrength | None,
    mount_bolt_thread: Thread | None,
) -> Ratio:
    """How much of the thread a hub bolt needs is there: from 1 up the bolt breaks before the thread strips.

    A bolt may be stronger than the least its mark promises, and then strips a thread that would have held the least: the
    strongest counts, against a nut or hole of the least.

    >>> thread = Thread("12 x 1.75 mm", 12.0, 1.75)
    >>> hub_bolt_thread_share(24.0, "iron", "8.8", BoltStrength(580, 640, 800), thread)
    1.0
    """
    begun = {"bolts.hub_bolt_engagement": hub_bolt_engagement, "bolts.hub_bolt_into": hub_bolt_into}
    engaged, _ = whole_once_begun("the hub bolts' thread engagement is not entered, so it was not judged", begun)
    into: ScrewedInto = needed("bolts.hub_bolt_into", hub_bolt_into)
    thread = needed("hub.mount_bolt_thread", mount_bolt_thread)
    needed("hub.mount_bolt_grade", mount_bolt_grade)  # a soft bolt needs less thread: an unknown one may need more
    strength = needed("hub_bolt_strength", hub_bolt_strength)
    bolt, hole = max(strength.strongest, strength.tensile), TAPPED.get(into, strength.tensile)
    formula = least_engagement(thread.diameter, thread.pitch, bolt, hole)
    return float(engaged / max(formula, RULE_OF_THUMB[into] * thread.diameter))


@value("bolts", formula="the studs' thread and strength as entered", source=GRADE_TABLE)
def wheel_stud_strength(
    strength_asked: bool | None, stud_grade: BoltGrade | None, stud_thread: Thread | None
) -> BoltStrength:
    """Strength of the wheel studs.

    >>> wheel_stud_strength(None, "8.8", Thread("12 x 1.5 mm", 12.0, 1.5)).proof
    580
    """
    if stud_grade is None and not strength_asked:
        raise NotJudged("the wheel studs' grade is not entered, so they were not judged", "bolts.stud_grade")
    grade: BoltGrade = needed("bolts.stud_grade", stud_grade)
    return strength_of(grade, needed("hub.stud_thread", stud_thread))


@value("bolts", formula="2 M / (n r) + pull / n, shear / n + brake torque / (n r)", source=ELASTIC[0])
def wheel_stud_forces(hub_bolt_circle: BoltCircle, part_loads: CornerLoads) -> ClampedCases:
    """Pull and shear of the worst wheel stud, as if every stud were it: preload and the grip of the clamped faces left out.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, pull = (0.0, 0.0, 0.0), (0.0, 50_000.0, 0.0)
    >>> loads = CornerLoads(Places(*[none] * 8), (CaseLoads("rock", none, pull, none, none, none, none),))
    >>> wheel_stud_forces(BoltCircle("5 x 114.3 mm", 5, 114.3), loads).cases[0].bolts[0]
    (10000.0, 0.0)
    """
    count, radius, found = hub_bolt_circle.count, hub_bolt_circle.diameter / 2, []
    for case in part_loads.cases:
        x, y, z = case.hub_force
        about_x, _, about_z = moment_at(case, part_loads.places, part_loads.places.hub_face)
        pull = 2 * hypot(about_x, about_z) / (count * radius) + max(y, 0.0) / count
        shear = hypot(x, z) / count + abs(case.brake_torque) / (count * radius)
        found.append(Clamped(case.case, ((pull, shear),) * count, y))
    return ClampedCases(tuple(found))


@value("bolts", formula="proof strength / von Mises stress of the worst stud", source=ELASTIC)
def wheel_studs_safety(
    wheel_stud_strength: BoltStrength, stud_thread: Thread, wheel_stud_forces: ClampedCases
) -> SafetyFactor:
    """Factor on proof load of the wheel studs, preload and the grip of the clamped faces left out.

    >>> forces, thread = ClampedCases((Clamped("rock", ((10_000.0, 0.0),) * 5, 0.0),)), Thread("12 x 1.75 mm", 12.0, 1.75)
    >>> round(wheel_studs_safety(BoltStrength(830, 940, 1040), thread, forces), 3)
    6.994
    """
    return _proof("wheel studs", "proof load of a wheel stud", wheel_stud_forces, wheel_stud_strength, stud_thread)


def torque_of(lubrication: ThreadState | None, strength: BoltStrength, thread: Thread) -> float:
    """Torque for a preload of 0.75 of proof load, N m. Raises NotJudged where nobody says what is on the threads."""
    if lubrication is None:
        raise NotJudged("what is on the threads is not entered, so no torque was worked out", "bolts.lubrication")
    preload = PRELOAD_OF_PROOF * strength.proof * stress_area(thread.diameter, thread.pitch)
    return tightening_torque(TORQUE_FACTOR[lubrication], thread.diameter, preload) / 1000


TORQUE = "T = K d F, K by what is on the threads (Shigley 9th ed. Table 8-15), F = 0.75 of proof load"


@value("bolts", formula=TORQUE, source=sources.SHIGLEY_9.at("eq. 8-27"))
def hub_bolt_torque(
    lubrication: ThreadState | None,
    mount_bolt_grade: str | None,
    hub_bolt_strength: BoltStrength,
    mount_bolt_thread: Thread,
) -> NewtonMetre:
    """Tightening torque of the hub bolts, N m. The hub maker's own figure goes before it.

    >>> round(hub_bolt_torque("zinc plated", "10.9", BoltStrength(830, 940, 1040), Thread("12 x 1.75 mm", 12.0, 1.75)))
    126
    """
    needed("hub.mount_bolt_grade", mount_bolt_grade)
    return torque_of(lubrication, hub_bolt_strength, mount_bolt_thread)
