"""One metal in one upright, filler that suits it, and grades of the thread's own system."""

from rules.graph.declare import check
from rules.graph.results import Judgement, NotForThisBuild, OutsideRange
from rules.measure.marks import Thread
from rules.sheet.plate import PlateMetal
from rules.tables.bolt_grades import ISO, SAE
from rules.tables.electrodes import ELECTRODES
from rules.values.strength.bolts import read_grade

PRACTICE = "common practice, no source"
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
    source=f"{PRACTICE}: strength, filler and preheat are judged for one metal",
    grade="common practice",
)
def one_metal(
    plate_metal: PlateMetal | None,
    upright_material: str | None,
    joint_upper_metal: str | None,
    joint_lower_metal: str | None,
    joint_steering_arm_metal: str | None,
    joint_caliper_bracket_metal: str | None,
) -> Judgement:
    """The metal as entered under plate, upright and each weld."""
    entered = {
        "plate": plate_metal, "upright": upright_material, "upper pivot's weld": joint_upper_metal,
        "lower pivot's weld": joint_lower_metal, "steering arm's weld": joint_steering_arm_metal,
        "caliper bracket's weld": joint_caliper_bracket_metal,
    }  # fmt: skip
    told = {where: metal for where, metal in entered.items() if metal is not None}
    if len(told) < 2:
        raise NotForThisBuild("the metal is entered in fewer than two places")
    if len({_family(metal) for metal in told.values()}) == 1:
        return Judgement("good", f"One metal throughout: {_family(next(iter(told.values())))}.")
    listed = "; ".join(f"{where}: {metal}" for where, metal in told.items())
    return Judgement(
        "stop", f"The metal is not one: {listed}.", "Put right whichever is a slip, or build it of one metal."
    )


@check(
    "filler-suits-metal",
    step="upright",
    title="Steel filler on steel",
    good="no steel filler on aluminium",
    stop="a steel filler on aluminium",
    source=f"{PRACTICE}: steel weld metal does not join aluminium",
    grade="common practice",
)
def filler_suits_metal(
    upright_material: str | None,
    joint_upper_filler: str | None,
    joint_lower_filler: str | None,
    joint_steering_arm_filler: str | None,
    joint_caliper_bracket_filler: str | None,
) -> Judgement:
    """Filler of every weld against the upright's metal. What suits which steel is judged weld by weld."""
    fillers = (joint_upper_filler, joint_lower_filler, joint_steering_arm_filler, joint_caliper_bracket_filler)
    told = sorted({filler for filler in fillers if filler is not None})
    if not told or upright_material is None:
        raise NotForThisBuild("metal and filler are not both entered")
    steel = [filler for filler in told if filler in ELECTRODES]
    if upright_material.startswith("6061") and steel:
        text = f"The upright is {upright_material}, and {' and '.join(steel).upper()} is a steel filler."
        return Judgement(
            "stop", text, "An aluminium filler by TIG or MIG, or another metal; aluminium loses half beside a weld."
        )
    return Judgement("good", f"{', '.join(told).upper()} on {upright_material}.")


def is_inch(thread: Thread) -> bool:
    """Whether a thread is of the inch system, by how it is written: 1/2-20 is, 12 x 1.5 mm and M12 are not.

    >>> is_inch(Thread("1/2-20", 12.7, 1.27)), is_inch(Thread("12 x 1.5 mm", 12.0, 1.5))
    (True, False)
    """
    return "-" in thread.text


@check(
    "{bolts}-grade-of-its-system",
    step="{table}",
    title="Grade and thread of the {called}",
    good="an SAE grade on an inch thread, an ISO class on a metric one",
    stop="a grade of the other system",
    source="SAE J429 covers inch bolts only, ISO 898-1 metric bolts only",
    grade="standard",
    each=(
        {"bolts": "upper-pivot", "table": "bolts", "called": "upper pivot bolt", "given": "bolts", "grade": "upper_grade",
         "cut": "bolts", "thread": "upper_thread"},
        {"bolts": "lower-pivot", "table": "bolts", "called": "lower pivot bolt", "given": "bolts", "grade": "lower_grade",
         "cut": "bolts", "thread": "lower_thread"},
        {"bolts": "stud", "table": "bolts", "called": "wheel studs", "given": "bolts", "grade": "stud_grade",
         "cut": "hub", "thread": "stud_thread"},
        {"bolts": "hub-bolt", "table": "hub", "called": "hub bolts", "given": "hub", "grade": "mount_bolt_grade",
         "cut": "hub", "thread": "mount_bolt_thread"},
    ),
)  # fmt: skip
def grade_of_its_system(given_grade: str | None, cut_thread: Thread | None, called: str) -> Judgement:
    """Mark on the {called} against the thread's system: a metric bolt marked 8 is not SAE grade 8."""
    if given_grade is None or cut_thread is None:
        raise NotForThisBuild("grade and thread are not both entered")
    try:
        sort = read_grade(given_grade)
    except OutsideRange as unknown:
        raise NotForThisBuild(str(unknown)) from None  # said where its strength is judged
    own = SAE if is_inch(cut_thread) else ISO
    if sort in {row[0] for row in own}:
        return Judgement("good", f"{sort} is a grade of the thread's own system.")
    system, classes = ("inch", "grade 5 or grade 8") if is_inch(cut_thread) else ("metric", "8.8, 10.9 or 12.9")
    marked = given_grade.replace("{", "(").replace("}", ")")
    return Judgement(
        "stop",
        f"The {called} have an {system} thread, and “{marked}” is a grade of the other system." if system == "inch"
        else f"The {called} have a metric thread, and “{marked}” reads as {sort}, which is a grade of inch bolts.",
        f"Read the mark on the head again: {classes} for such a thread. Unknown bolts are not used.",
    )  # fmt: skip
