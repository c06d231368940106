"""Do the bolts hold: pivots and their lugs, hub bolts, wheel studs, threads, grades, torque."""

import re

from rules.graph.bands import AtLeast, AtMost, Limits, at_least
from rules.graph.declare import check
from rules.graph.results import Judgement, NotJudged
from rules.measure.marks import Thread
from rules.measure.patterns import Pattern
from rules.measure.units import Mm, NewtonMetre, Ratio
from rules.sheet.bolts import ScrewedInto
from rules.tables import sources
from rules.tables.bolt_grades import WEAK, BoltGrade
from rules.tables.edge_distance import least_edge_distance
from rules.tables.torque_factors import ThreadState
from rules.values.optional_step import needed
from rules.values.strength.bolts import read_grade
from rules.values.strength.pivot_bolts import PivotBolt

EDGE_FLOOR = 1.5
"""Bolt diameters from centre to edge."""
EDGE = AtLeast("1", 2.0, EDGE_FLOOR)
PIVOTS = ({"which": "upper"}, {"which": "lower"})

GRADES_ASKED = ("upper_grade", "lower_grade", "stud_grade", "caliper_grade")
PLATED = Pattern(r"\b(zinc|zn|galvani[sz]ed|cadmium|plated)\b", re.IGNORECASE)
ELSEWHERE = ("wheel studs", "caliper bolts")
"""Bolts of which nobody is asked what is on their threads."""
THREADS_ASKED = ("bolts.upper_thread", "bolts.lower_thread")


@check(
    "hub-bolt-threads",
    step="bolts",
    title="Hub bolts have thread enough",
    limits=AtLeast("1", 1.0),
    good="the bolt breaks before the thread strips, and the rule of thumb is met",
    watch="the same in iron, where only a rule of thumb from memory is known",
    stop="less thread",
    source=(
        sources.FED_STD_H28.at("formula 14"),
        sources.COMMON_PRACTICE.saying(
            "steel 1.5 d, an old rule of thumb in print; iron 2 d and aluminium 2.5 d from memory"
        ),
    ),
    try_changing=("bolts.hub_bolt_engagement",),
)
def hub_bolt_threads(hub_bolt_thread_share: Ratio, hub_bolt_into: ScrewedInto | None, limits: AtLeast) -> Judgement:
    """A bolt that breaks is seen; a thread that strips is not."""
    verdict = limits.verdict(hub_bolt_thread_share)
    if verdict == "good" and hub_bolt_into == "iron":
        verdict = "watch"
    text = (
        "The hub bolts have {hub_bolt_thread_share} times the thread they need to break before it strips, a bolt being as strong "
        "as its mark allows."
    )
    change = {"good": "", "watch": "For iron only a rule of thumb is known: ask the maker of the part."}.get(
        verdict, "Longer bolts or a deeper hole; a through bolt with its own nut is best."
    )
    return Judgement(verdict, text, change)


@check(
    "{which}-lug-edge",
    step="bolts",
    title="{Which} pivot hole clear of the edge",
    limits=EDGE,
    good="{good} bolt diameters or more from centre to edge",
    watch="{watch} to {good}, and the table's least",
    stop="less",
    source=(
        sources.COMMON_PRACTICE.saying("1.5 to 2 d"),
        sources.AISC_360.at("Table J3.4", "the floor; written for buildings"),
    ),
    try_changing=("bolts.{which}_edge_distance",),
    each=PIVOTS,
)
def lug_edge(which_edge_distance: Mm | None, which_pivot_bolt: PivotBolt, limits: AtLeast, which: str) -> Judgement:
    """Metal between the {which} pivot bolt and the end of its lug."""
    edge = needed(f"bolts.{which}_edge_distance", which_edge_distance)
    diameter = which_pivot_bolt.thread.diameter
    floor, custom = max(EDGE_FLOOR * diameter, least_edge_distance(diameter)), limits.good * diameter
    figures = {"edge": (edge, "mm"), "floor": (floor, "mm"), "custom": (custom, "mm")}
    verdict = at_least(edge, good=max(custom, floor), watch=floor)
    text = "The {which} pivot hole's centre is {edge} from the edge of its lug; {floor} is the least, {custom} custom."
    return Judgement(verdict, text, "" if verdict == "good" else "More metal beyond the hole.", figures)


@check(
    "bolt-grade",
    step="bolts",
    title="Grade of the bolts",
    limits=Limits(other={"sae": (5.0, "1"), "iso": (8.8, "1"), "hardest": (12.9, "1")}),
    good="SAE grade {sae}, class {iso}, or better",
    watch="class {hardest} that is plated, or of which nobody says what is on its threads",
    stop="less, or unmarked",
    source=(
        sources.COMMON_PRACTICE.saying(
            "a bolt harder than 390 HV, as 12.9 is, may break by itself days after it was plated and tightened (hydrogen; what "
            "ISO 4042 says, from memory)"
        ),
        sources.RACE_RULES.saying("grade 5 or class 8.8 or better in suspension and steering joints"),
    ),
)
def bolt_grade(
    upper_grade: BoltGrade | None,
    lower_grade: BoltGrade | None,
    stud_grade: BoltGrade | None,
    caliper_grade: BoltGrade | None,
    mount_bolt_grade: str | None,
    lubrication: ThreadState | None,
) -> Judgement:
    """The weakest mark among pivot bolts, wheel studs, caliper bolts and hub bolts; and the hardest, whether it is plated.

    lubrication: of hub and pivot bolts.
    """
    bolts = {"upper pivot bolt": upper_grade, "lower pivot bolt": lower_grade, "wheel studs": stud_grade,
             "caliper bolts": caliper_grade}  # fmt: skip
    entered = {name: grade for name, grade in bolts.items() if grade is not None}
    plated_by_mark = PLATED.search(mount_bolt_grade or "")
    if not entered and not plated_by_mark:
        raise NotJudged("no bolt grade is entered on the bolts step", *(f"bolts.{key}" for key in GRADES_ASKED))
    if mount_bolt_grade is not None:
        entered["hub bolts"] = read_grade(mount_bolt_grade)
    weak = [name for name, grade in entered.items() if grade in WEAK]
    if weak:
        return Judgement(
            "stop", f"Too soft for a joint that carries or stops a wheel: {', '.join(weak)}.",
            "Bolts marked 8.8 or better, or with three lines (grade 5) or more.",
        )  # fmt: skip
    hard = [name for name, grade in entered.items() if grade == "12.9" and name not in ELSEWHERE]
    if hard and (plated_by_mark or lubrication is None or "plated" in lubrication):
        said = "plated" if plated_by_mark or lubrication else "12.9, and nobody says whether they are plated"
        return Judgement(
            "watch", f"The hardest class may break by itself once it is plated. These are {said}: {', '.join(hard)}.",
            "Class 12.9 black and oiled, or class 10.9.",
        )  # fmt: skip
    return Judgement("good", f"Grade 5, class 8.8 or better: {', '.join(entered)}.")


@check(
    "threads-out-of-joint",
    step="bolts",
    title="No thread in the pivot joints",
    good="plain shank through the whole joint",
    watch="thread in the joint, or not looked at",
    source=sources.COMMON_PRACTICE.saying("pick the grip length so that the shank fills the joint"),
)
def threads_out_of_joint(
    threads_in_joint: bool | None, upper_thread: Thread | None, lower_thread: Thread | None
) -> Judgement:
    """A thread in the shear plane is thinner, and every groove of it is a notch."""
    if threads_in_joint is None and upper_thread is None and lower_thread is None:
        raise NotJudged("no pivot bolt is entered on the bolts step", *THREADS_ASKED)
    if threads_in_joint is False:
        return Judgement("good", "The plain shank fills both pivot joints.")
    seen = "Thread lies" if threads_in_joint else "Nobody has looked whether thread lies"
    return Judgement(
        "watch", f"{seen} inside a pivot joint: the root of the thread is counted as all that carries.",
        "Bolts with a longer plain shank, and washers under the nut.",
    )  # fmt: skip


@check(
    "bolt-torque",
    step="bolts",
    title="Tightening torque",
    never_good="never: the figure of whoever made the part goes before any working",
    watch="worked out from thread, grade and what is on the threads, or nobody says what is on them",
    source=sources.SHIGLEY_9.at("eq. 8-27 and Table 8-15", "T = K d F; one K is good to about 10 % of preload"),
)
def bolt_torque(
    lubrication: ThreadState | None,
    upper_thread: Thread | None,
    lower_thread: Thread | None,
    hub_bolt_torque: NewtonMetre | None,
    upper_pivot_bolt_torque: NewtonMetre | None,
    lower_pivot_bolt_torque: NewtonMetre | None,
) -> Judgement:
    """The program's own working for three quarters of the bolts' proof load; never for a ball joint's tapered stud."""
    if lubrication is None:
        if upper_thread is None and lower_thread is None:
            raise NotJudged("what is on the threads is not entered, so no torque was worked out", "bolts.lubrication")
        return Judgement(
            "watch", "Nobody says what is on the threads: the torque changes more than twice with it.",
            "Name what is on the threads, and tighten to the figure that comes of it.",
        )  # fmt: skip
    torques = {"hub bolts": ("hub_bolt_torque", hub_bolt_torque),
               "upper pivot bolt": ("upper_pivot_bolt_torque", upper_pivot_bolt_torque),
               "lower pivot bolt": ("lower_pivot_bolt_torque", lower_pivot_bolt_torque)}  # fmt: skip
    known = [f"{name} {{{field}}}" for name, (field, torque) in torques.items() if torque is not None]
    if not known:
        raise NotJudged(
            "no bolt with a known grade is entered, so no torque was worked out", "hub.mount_bolt_grade", *THREADS_ASKED
        )
    return Judgement(
        "watch",
        f"Worked out by this program from thread, grade and threads {lubrication}, for three quarters of proof load: "
        f"{', '.join(known)}. No maker said so, and the pull that comes of a torque scatters.",
        "Tighten to the figure of whoever made hub or joint; where there is none, ask before you use these.",
    )


@check(
    "{which}-not-overtightened",
    step="bolts",
    title="{called} not pulled beyond what they bear",
    limits=AtMost("1", 0.9, 1.2),
    good="{good} of proof load or less",
    watch="to {watch}",
    stop="more",
    source=(
        sources.SHIGLEY_9.at("eq. 8-31", "0.75 of proof load, 0.90 for joints never undone; from memory"),
        sources.SHIGLEY_9.at("eq. 8-27 and Table 8-15", "T = K d F; one K is good to about 10 % of preload"),
        sources.COMMON_PRACTICE.saying("beyond 1.2 they stretch whatever is on the threads"),
    ),
    grade="common practice",
    each=(
        {"which": "wheel_studs", "called": "Wheel studs", "what": "wheel nuts"},
        {"which": "hub_bolts", "called": "Hub bolts", "what": "hub bolts"},
    ),
)
def not_overtightened(which_pull_share: Ratio, limits: AtMost, what: str) -> Judgement:
    """The torque entered against the bolt's proof load: more torque clamps better only until the bolt stretches."""
    verdict = limits.verdict(which_pull_share)
    text = f"The torque entered for the {what} pulls each bolt with {{which_pull_share}} x its proof load"
    if verdict == "good":
        return Judgement(verdict, f"{text}.")
    told = "it stretches, and clamps no better for it" if verdict == "stop" else "not much more and it stretches"
    return Judgement(
        verdict,
        f"{text}: {told}. What that torque adds to the clamp cannot be counted on.",
        "The torque of whoever made hub or wheel; check figure and unit.",
    )
