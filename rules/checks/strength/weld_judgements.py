"""What is said of any welded joint: size, length, strength, filler and preheat, and what it was made from.

Said once here; `welds.py` asks it of each of the four joints.
"""

from collections.abc import Iterator
from typing import TypedDict

from rules.graph.results import Grade, Judgement, NotForThisBuild, Verdict, Waits
from rules.measure.closeness import more_than, reaches
from rules.strength.weld import SHORTEST_IN_LEGS, full_strength_leg, greatest_leg_along_an_edge
from rules.tables.electrodes import CHROMOLY_ROD, ELECTRODES
from rules.tables.fillet_size import least_leg
from rules.values.strength.weld_joint import BEVEL, ONE_SIDE, RECTANGLE, RING, WeldJoint, WeldMargin, counted_run

PRACTICE = "common practice, no source"
THIN_CHROMOLY = 0.120 * 25.4
"""mm: thinner 4130 needs no preheat from 21 °C up, all sources agree."""
HEAVY_CHROMOLY = 6.0
"""mm: over this every source wants preheat."""
THICK_MILD = 0.75 * 25.4
"""mm: up to this no preheat is asked of mild steel (AWS D1.1, from memory)."""
LONG_IN_LEGS = 100.0


class Said(TypedDict, total=False):
    """What a check says of itself, the same for all four joints."""

    good: str
    never_good: str
    watch: str
    stop: str
    source: str
    grade: Grade


LEG = Said(
    good="three quarters of the thinner part on both sides or all round, and no more than fits along its edge",
    watch="at least the least leg, but less than that, on one side only, or larger than fits along an edge",
    stop="under the least leg for the thinner part",
    source="AISC 360-16 Table J2.4 (least) and J2.2b (along an edge); three quarters: Blodgett 6.3, static strength only",
    grade="standard",
)
LENGTH = Said(
    good="at least four legs, one leg at each end not counted, and no more than 100",
    watch="shorter: its leg counts as a quarter of its length; longer: not all of it counts",
    stop="no longer than its two end craters",
    source="AISC 360-16 J2.2b and equation J2-1 (2016 edition; the 2005 edition differs beyond 300 legs); craters: "
    "common practice",
    grade="standard",
)
STRENGTH = Said(
    never_good="never: no published limit covers loads that come and go on a home-made upright",
    watch="the code for steady loads is met",
    stop="the code for steady loads is not met",
    source="AISC 360-16 Table J2.5 and J4.2 (allowable stress), Shigley Table 9-4: 0.30 of the electrode on the throat, "
    "0.30 of tensile strength and 0.40 of yield beside it. Steady loads only; nothing is published for this use",
    grade="handbook",
)
FILLER = Said(
    good="mild steel to 19 mm with a filler of the tables; 4130 under 3 mm by TIG with ER80S-D2 or ER70S-2",
    watch="sources differ, or nobody publishes for this metal or filler",
    stop="4130 with a cellulose electrode or with 4130 rod; a filler the process cannot use",
    source="common practice: a welding equipment maker's bulletin on 4130, some drag race cage rules, welding forums. No "
    "standard; they differ",
    grade="common practice",
)
MADE_FROM = Said(
    good="plate, bar or tube",
    watch="a production casting or forging, or not known, with rules and inspector written down",
    stop="the same, with nothing written of rules or inspector",
    source="common practice, no standard: inspectors in several countries refuse welds on production knuckles and arms",
    grade="common practice",
)

FATIGUE = (
    "This is a rule for steady loads. A wheel's loads come and go, and cracks a weld from its toe or its end far below this "
    "figure; nobody publishes a limit for that."
)


def leg_judged(joint: WeldJoint) -> Judgement:
    """The leg against the least for the thinner part, three quarters of it, and what fits along its edge."""
    (form,) = joint.need("form")
    if form == BEVEL:
        raise NotForThisBuild("a full bevel has no leg")
    (leg,), part = joint.need("leg"), joint.thinner
    least = min(least_leg(part, "inch"), least_leg(part, "metric"))
    full, greatest = full_strength_leg(part), greatest_leg_along_an_edge(part)
    figures = {"leg": (leg, "mm"), "part": (part, "mm"), "least": (least, "mm"), "full": (full, "mm"),
               "greatest": (greatest, "mm")}  # fmt: skip
    text = "The leg is {leg}; the thinner part is {part}."
    if not reaches(leg, least):
        text += " Under {least} such metal chills the weld too fast."
        return Judgement("stop", text, "A leg of {least} at least, in one single run.", figures)
    if form == ONE_SIDE:
        text += " A fillet on one side opens at its root when the joint bends."
        return Judgement("watch", text, "Weld both sides, or bevel the part and weld it through.", figures)
    if not reaches(leg, full):
        text += " It is less than three quarters of that, {full}: the joint is weaker than the part."
        change = (
            "{full} on both sides makes it as strong as the part under steady loads; else rest on the strength figure."
        )
        return Judgement("watch", text, change, figures)
    if more_than(leg, greatest):
        text += " Along the edge of the part no more than {greatest} fits without melting the edge away."
        return Judgement("watch", text, "Less leg, or see that no run lies along an edge.", figures)
    return Judgement("good", f"{text} That is at least three quarters of it.", figures=figures)


def length_judged(joint: WeldJoint) -> Judgement:
    """The run that counts, in legs."""
    (form,) = joint.need("form")
    if form in (BEVEL, RING):
        raise NotForThisBuild("a full bevel or a ring has no run to count in legs")
    leg, run = joint.need("leg", "run")
    if form == RECTANGLE:
        (apart,) = joint.need("apart")
        sound = min(run, apart)
    elif run <= 2 * leg:
        return Judgement(
            "stop",
            "The run of {run} is no longer than the craters at its two ends, one leg of {leg} each.",
            "A longer run, or weld all round.",
            {"run": (run, "mm"), "leg": (leg, "mm")},
        )
    else:
        sound = counted_run(run, leg)
    figures = {"sound": (sound, "mm"), "leg": (leg, "mm"), "shortest": (SHORTEST_IN_LEGS * leg, "mm")}
    text = "{sound} of each run counts."
    if not reaches(sound, SHORTEST_IN_LEGS * leg):
        text += " Four legs are {shortest}: the leg counts as a quarter of the length only."
        return Judgement("watch", text, "A longer run, or a smaller leg.", figures)
    if more_than(sound, LONG_IN_LEGS * leg):
        text += " That is over 100 legs: loaded from its end, the far part of it carries less."
        return Judgement("watch", text, "Count less of it, or use a larger leg.", figures)
    if form != RECTANGLE:
        text += " One leg at each end is not counted; carry the runs round the ends of the part where you can."
    return Judgement("good", text, figures=figures)


def strength_judged(safety: float) -> Judgement:
    """The worst case against the code for steady loads. Never better than watch."""
    assert isinstance(safety, WeldMargin)
    figures = {"factor": (float(safety), "1"), "allowed": (safety.allowed, "1")}
    text = f"Worst in {safety.case}: strength is {{factor}} times the load, where {safety.limit}. "
    if not reaches(safety.allowed, 1.0):
        text += f"The code for steady loads allows {{allowed}} times this load only ({safety.allowed_limit})."
        return Judgement(
            "stop",
            text,
            "A larger leg, longer runs, runs further apart, welds all round, or the load closer to the weld.",
            figures,
        )
    text += f"The code for steady loads allows {{allowed}} times this load. {FATIGUE}"
    return Judgement(
        "watch", text, "Crack test the weld when made, after the first drive, and at every strip.", figures
    )


def filler_judged(joint: WeldJoint) -> Judgement:
    """Process, filler and preheat for the metal, and where those who publish about it differ."""
    metal, process, filler = joint.need("metal", "welded_by", "filler")
    if filler in ELECTRODES and process not in ELECTRODES[filler].processes:
        made_for = " or ".join(ELECTRODES[filler].processes)
        text = f"{filler.upper()} is made for {made_for}, and the process is {process}."
        return Judgement("stop", text, "Put right whichever of the two is a slip.")
    if metal == "4130":
        return _chromoly(joint, process, filler)
    if metal == "other" or filler not in ELECTRODES:
        text = "No guidance is held here for this metal or filler."
        return Judgement("watch", text, "Follow the filler maker's data, and make a test piece and break it.")
    thick = max(joint.need("thickness_one", "thickness_two"))
    if more_than(thick, THICK_MILD):
        text = "Mild steel this thick, {thick}, chills the weld: a structural code wants it warmed (from memory)."
        return Judgement(
            "watch", text, "Ask the filler maker for the preheat and write it down.", {"thick": (thick, "mm")}
        )
    text = f"{filler.upper()} on mild steel up to 19 mm: no preheat above freezing (a structural code, from memory)."
    return Judgement("good", text)


def _chromoly(joint: WeldJoint, process: str, filler: str) -> Judgement:
    if filler == CHROMOLY_ROD:
        return Judgement(
            "stop",
            "Weld metal from 4130 rod is hard and brittle unless the whole part is heat treated after.",
            "ER80S-D2 comes near 4130's strength as welded; ER70S-2 is a little softer and more forgiving.",
        )
    if filler in ELECTRODES and not ELECTRODES[filler].low_hydrogen:
        return Judgement(
            "stop",
            f"{filler.upper()} puts hydrogen into the weld, and 4130 cracks from it, often a day later.",
            "TIG with ER80S-D2 or ER70S-2.",
        )
    thick = max(joint.need("thickness_one", "thickness_two"))
    preheat = joint.preheat
    if more_than(thick, THIN_CHROMOLY) and preheat is None:
        raise Waits(f"{joint.step}.preheat")
    doubts = [*_filler_doubts(process, filler), *_preheat_doubts(thick, preheat or "")]
    if not doubts:
        text = f"{filler.upper()} by TIG on 4130 of 3 mm at most: no preheat from 21 °C up; sources agree."
        return Judgement("good", text)
    return Judgement(
        "watch",
        " ".join(doubts),
        "Follow the filler maker's data for this metal and thickness, cool in still air or under a blanket, never quench, and "
        "bend or break a test piece of the same joint.",
        {"thick": (thick, "mm")},
    )


def _filler_doubts(process: str, filler: str) -> Iterator[str]:
    if process != "tig":
        yield "Some cage rules ask for TIG on 4130; no source here speaks for anything else."
    if filler == "er70s-6":
        yield "One source takes ER70S-6 on 4130, others name ER80S-D2 and ER70S-2 only."
    elif filler not in ("er80s-d2", "er70s-2"):
        yield "The sources held here name ER80S-D2 and ER70S-2 for 4130 left as welded, not this."


def _preheat_doubts(thick: float, preheat: str) -> Iterator[str]:
    if not more_than(thick, THIN_CHROMOLY):
        return
    yield (
        "Sources differ on preheat for 4130 of {thick}: a welding equipment maker says 150 to 205 °C (300 to 400 °F) over "
        "3 mm; a welding society's forum only over 6 mm; a procedure writer 200 to 250 °C for heavy parts."
    )
    if more_than(thick, HEAVY_CHROMOLY):
        yield "All of them want it at this thickness."
    words = preheat.replace("{", "(").replace("}", ")")
    yield f"You wrote: “{words}”."


def made_from_judged(joint: WeldJoint, rule_book: str | None) -> Judgement:
    """A production casting or forging that holds a wheel is not welded without the inspector."""
    (made_from,) = joint.need("made_from")
    if made_from == "plate, bar or tube":
        return Judgement("good", "Both parts are plate, bar or tube.")
    what = "a production casting or forging" if made_from != "not known" else "metal that nobody knows"
    named = bool(rule_book)
    verdict: Verdict = "watch" if named else "stop"
    text = f"The weld is on {what}: its steel may crack beside the weld, at once or later, with nothing to be seen."
    if named:
        text += " Rules and inspector are written down in the job."
    return Judgement(
        verdict,
        text,
        "See that the inspector has agreed to this very weld in writing."
        if named
        else "Buy or machine the part instead. Else ask the inspector first, and write under rules and inspector who agreed.",
    )
