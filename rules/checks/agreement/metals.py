"""One metal in one upright, filler that suits it, and grades of the thread's own system."""

import re
from typing import Any

from rules.checks.agreement.tie import not_compared
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, OutsideRange
from rules.measure.marks import Thread
from rules.measure.patterns import Pattern
from rules.sheet.plate import PlateMetal
from rules.sheet.welds import WeldedMetal
from rules.tables import sources
from rules.tables.bolt_grades import ISO, SAE, BoltGrade
from rules.tables.electrodes import ELECTRODES, Filler, WeldProcess
from rules.tables.materials import Metal
from rules.values.strength.bolts import read_grade

STEEL, CHROMOLY, OTHER = "mild steel", "4130", "another metal"


def _family(metal: str) -> str:
    """Which kind of metal a name of any step stands for."""
    if "4130" in metal:
        return CHROMOLY
    return STEEL if metal == "mild steel plate" or metal.startswith(("mild", "a36", "10")) else OTHER


@check(
    "one-metal",
    step="upright",
    title="One metal in one upright",
    good="plate, upright and welds are of one metal",
    stop="they are not",
    source=sources.COMMON_PRACTICE.saying("strength, filler and preheat are judged for one metal"),
    grade="common practice",
)
def one_metal(
    plate_metal: PlateMetal | None,
    upright_material: Metal | None,
    weld_upper_metal: WeldedMetal | None,
    weld_lower_metal: WeldedMetal | None,
    weld_steering_arm_metal: WeldedMetal | None,
    weld_caliper_bracket_metal: WeldedMetal | None,
) -> Judgement:
    """The metal as entered under plate, upright and each weld."""
    entered = {
        "plate": plate_metal, "upright": upright_material, "upper pivot's weld": weld_upper_metal,
        "lower pivot's weld": weld_lower_metal, "steering arm's weld": weld_steering_arm_metal,
        "caliper bracket's weld": weld_caliper_bracket_metal,
    }  # fmt: skip
    told = {where: metal for where, metal in entered.items() if metal is not None}
    if len(told) < 2:
        raise DoesNotApply("the metal is entered in fewer than two places")
    if len({_family(metal) for metal in told.values()}) == 1:
        return Judgement("good", f"One metal throughout: {_family(next(iter(told.values())))}.")
    listed = "; ".join(f"{where}: {metal}" for where, metal in told.items())
    return Judgement(
        "stop", f"The metal is not one: {listed}.", "Put right whichever is a slip, or build it of one metal."
    )


@check(
    "plate-of-known-metal",
    step="plate",
    title="Metal of the plate",
    good="a plate that is rolled, of a metal that can be welded as it is",
    watch="another metal: nothing here says whether it can be welded",
    stop="cast metal",
    source=sources.COMMON_PRACTICE.saying("uprights are welded of rolled plate; a casting cracks beside the weld"),
    grade="common practice",
)
def plate_of_known_metal(plate_metal: PlateMetal | None, plate_condition: str | None) -> Judgement:
    """The metal the upright is cut from, and the words of its certificate."""
    if plate_metal is None:
        raise DoesNotApply("no metal of the plate is entered")
    if re.search(
        r"\b(cast|castings?|(?:grey|gray|ductile|malleable|s\.?g\.?) iron|nodular)\b", (plate_condition or "").lower()
    ):
        text = "The plate is cast, by its grade and condition."
        return Judgement("stop", text, "Rolled plate with its certificate. No part that is welded here is cast.")
    if plate_metal == "other":
        text = "The plate's metal is entered as other: nothing here says whether, or how, it can be welded."
        return Judgement("watch", text, "Get the certificate, or cut a plate whose metal is known.")
    return Judgement("good", f"The plate is {plate_metal}.")


@check(
    "one-process",
    step="plate",
    title="One process and filler on paper",
    good="each weld's process and filler are those entered for the upright",
    watch="they differ: the welder reads both",
    source=sources.COMMON_PRACTICE,
    grade="common practice",
)
def one_process(
    weld_process: WeldProcess | None,
    weld_upper_welded_by: WeldProcess | None,
    weld_lower_welded_by: WeldProcess | None,
    weld_steering_arm_welded_by: WeldProcess | None,
    weld_caliper_bracket_welded_by: WeldProcess | None,
    plate_filler: str | None,
    weld_upper_filler: Filler | None,
    weld_lower_filler: Filler | None,
    weld_steering_arm_filler: Filler | None,
    weld_caliper_bracket_filler: Filler | None,
) -> Judgement:
    """Process and class of filler as entered under plate against what is entered under each weld."""
    welds = {
        "upper pivot": weld_upper_welded_by, "lower pivot": weld_lower_welded_by,
        "steering arm": weld_steering_arm_welded_by, "caliper bracket": weld_caliper_bracket_welded_by,
    }  # fmt: skip
    fillers = dict(zip(welds, (weld_upper_filler, weld_lower_filler, weld_steering_arm_filler,
                               weld_caliper_bracket_filler), strict=True))  # fmt: skip
    said = set(re.findall(r"\ber?\d{2,4}s?-?\w*", (plate_filler or "").lower())) or None
    other = [
        f"{where}: {process}"
        for where, process in welds.items()
        if weld_process and process not in (None, weld_process)
    ]
    other += [
        f"{where}: {filler.upper()}" for where, filler in fillers.items() if said and filler and filler not in said
    ]
    if not ((weld_process and any(welds.values())) or (said and any(fillers.values()))):
        raise DoesNotApply("process and filler are not entered both for the upright and for a weld")
    if not other:
        return Judgement("good", "Process and filler of every weld are those of the upright.")
    stated = " with ".join(part for part in (weld_process, " and ".join(sorted(said or ())).upper()) if part)
    text = f"The upright is entered as welded by {stated}, but {'; '.join(other)}."
    return Judgement("watch", text, "Put right whichever is a slip; the welder gets both on paper.")


ALUMINIUM_FILLER = Pattern(r"\bER\s?-?[1245]\d{3}\b", re.IGNORECASE)


@check(
    "filler-suits-metal",
    step="upright",
    title="Steel filler on steel",
    good="no steel filler on aluminium, nor the other way round",
    stop="a steel filler on aluminium, or the other way round",
    source=sources.COMMON_PRACTICE.saying(
        "steel weld metal does not join aluminium; AWS A5.10 names aluminium rods ER and four digits, from memory"
    ),
    grade="common practice",
)
def filler_suits_metal(
    upright_material: Metal | None,
    weld_upper_filler: Filler | None,
    weld_lower_filler: Filler | None,
    weld_steering_arm_filler: Filler | None,
    weld_caliper_bracket_filler: Filler | None,
    plate_filler: str | None,
) -> Judgement:
    """Filler of every weld, and of the plate, against the upright's metal. What suits which steel is judged weld by weld."""
    fillers = (weld_upper_filler, weld_lower_filler, weld_steering_arm_filler, weld_caliper_bracket_filler)
    told = sorted({filler for filler in fillers if filler is not None})
    aluminium = ALUMINIUM_FILLER.search(plate_filler or "")
    if aluminium and upright_material is not None and not upright_material.startswith("6061"):
        return Judgement(
            "stop",
            f"The upright is {upright_material}, and {aluminium[0].upper()} is an aluminium filler.",
            "A steel filler by the maker's table, or put right the metal.",
        )
    if not told or upright_material is None:
        raise not_compared(
            "metal and filler are not both entered", told or None, {"upright.material": upright_material}
        )
    steel = [filler for filler in told if filler in ELECTRODES]
    if upright_material.startswith("6061") and steel:
        text = f"The upright is {upright_material}, and {' and '.join(steel).upper()} is a steel filler."
        return Judgement(
            "stop", text, "An aluminium filler by TIG or MIG, or another metal; aluminium loses half beside a weld."
        )
    return Judgement("good", f"{', '.join(told).upper()} on {upright_material}.")


NOT_SAID = r"(?<!not )(?<!never )(?<!no )\b"
COATED = Pattern(NOT_SAID + r"(galvani[sz]\w*|zinc\w*|cadmium\w*|hot[- ]dip\w*|chromed|chrome plated)\b", re.IGNORECASE)
HARDENED = Pattern(
    NOT_SAID + r"(\w*hardened|quenched\w*|tempered|carburi[sz]ed|nitrided|heat[- ]treated|hrc)\b", re.IGNORECASE
)


@check(
    "condition-can-be-welded",
    step="plate",
    title="Condition of the plate and its welds",
    good="no zinc, cadmium, chromium or hardening named in it",
    watch="one of them is named",
    source=sources.COMMON_PRACTICE.saying(
        "zinc and cadmium boil off into fume and pores, and a weld's heat takes back what hardening gave"
    ),
)
def condition_can_be_welded(plate_condition: str | None) -> Judgement:
    """What the plate's condition, as written, means to whoever welds it. Words with "not" or "no" before them are not meant."""
    if plate_condition is None:
        raise DoesNotApply("nothing is written of the plate's condition")
    coat, hard = COATED.search(plate_condition), HARDENED.search(plate_condition)
    if coat:
        return Judgement(
            "watch",
            f"The plate's condition names “{coat[0]}”: beside a weld it boils off, into the weld and into the welder's lungs.",
            "Plate without it, or ground bright well beyond every weld, with the fume drawn off.",
        )
    if hard:
        return Judgement(
            "watch",
            f"The plate's condition names “{hard[0]}”: beside a weld the heat takes back what that gave, and thick plate of that "
            "kind cracks. Strength counts on plate as rolled.",
            "Plate as rolled or normalised; else whoever made the steel must say how it is welded and treated after.",
        )
    return Judgement("good", "The plate's condition names no coat and no hardening that a weld would spoil.")


def is_inch(thread: Thread) -> bool:
    """Whether a thread is of the inch system, by how it is written: 1/2-20 is, 12 x 1.5 mm and M12 are not.

    >>> is_inch(Thread("1/2-20", 12.7, 1.27)), is_inch(Thread("12 x 1.5 mm", 12.0, 1.5))
    (True, False)
    """
    return "-" in thread.text


SYSTEM: dict[str, Any] = {
    "title": "Grade and thread of the {called}",
    "good": "an SAE grade on an inch thread, an ISO class on a metric one",
    "stop": "a grade of the other system",
    "source": (sources.SAE_J429.saying("inch bolts only"), sources.ISO_898.saying("metric bolts only")),
    "grade": "standard",
}
CHOSEN = (
    {"bolts": "upper-pivot", "called": "upper pivot bolt", "which": "upper", "cut": "bolts", "thread": "upper_thread"},
    {"bolts": "lower-pivot", "called": "lower pivot bolt", "which": "lower", "cut": "bolts", "thread": "lower_thread"},
    {"bolts": "stud", "called": "wheel studs", "which": "stud", "cut": "hub", "thread": "stud_thread"},
    {
        "bolts": "caliper-bolt",
        "called": "caliper bolts",
        "which": "caliper",
        "cut": "bolts",
        "thread": "caliper_thread",
    },
)


@check("{bolts}-grade-of-its-system", step="bolts", each=CHOSEN, **SYSTEM)
def chosen_grade_of_its_system(
    which_grade: BoltGrade | None, cut_thread: Thread | None, called: str, cut: str, thread: str
) -> Judgement:
    """Mark on the {called} against the thread's system: a metric bolt marked 8 is not SAE grade 8."""
    return _of_its_system(which_grade, cut_thread, called, f"{cut}.{thread}")


@check("hub-bolt-grade-of-its-system", step="hub", each=({"called": "hub bolts"},), **SYSTEM)
def hub_bolt_grade_of_its_system(
    mount_bolt_grade: str | None, mount_bolt_thread: Thread | None, called: str
) -> Judgement:
    """Mark on the {called} against the thread's system: a metric bolt marked 8 is not SAE grade 8."""
    return _of_its_system(mount_bolt_grade, mount_bolt_thread, called, "hub.mount_bolt_thread")


def _of_its_system(mark: str | None, thread: Thread | None, called: str, cut: str) -> Judgement:
    """cut: the thread's dotted name."""
    if mark is None or thread is None:
        raise not_compared("grade and thread are not both entered", mark, {cut: thread})
    try:
        sort = read_grade(mark)
    except OutsideRange as unknown:
        raise DoesNotApply(str(unknown)) from None  # said where its strength is judged
    own = SAE if is_inch(thread) else ISO
    if sort in {row[0] for row in own}:
        return Judgement("good", f"{sort} is a grade of the thread's own system.")
    marked = mark.replace("{", "(").replace("}", ")")
    if is_inch(thread):
        text, classes = f"an inch thread, and “{marked}” is a class of metric bolts", "grade 5 or grade 8"
    else:
        text = f"a metric thread, and “{marked}” reads as {sort}, which is a grade of inch bolts"
        classes = "8.8, 10.9 or 12.9"
    return Judgement(
        "stop",
        f"Thread and mark of the {called} do not belong together: {text}.",
        f"Read the mark on the head again: {classes} for such a thread. Unknown bolts are not used.",
    )
