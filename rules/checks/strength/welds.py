"""Are the welds right: size, length, strength, filler and preheat, and what is welded, the same of each."""

import re
from collections.abc import Iterator

from rules.checks.strength.parts import SHOWN, WATCH, Holds, one_line
from rules.graph.asking import given, need
from rules.graph.bands import Limits
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.closeness import more_than, reaches
from rules.measure.patterns import Pattern
from rules.sheet.welds import WELDS, WeldQuestions
from rules.strength.margin import WeldSafetyFactor
from rules.strength.weakest import TIE, tied
from rules.strength.weld import SHORTEST_IN_LEGS, full_strength_leg, greatest_leg_along_an_edge
from rules.tables import sources
from rules.tables.electrodes import ELECTRODES, Filler, WeldProcess
from rules.tables.fillet_size import least_leg
from rules.values.strength.weld import counted_run, thinner

THIN_CHROMOLY = 0.120 * 25.4
"""mm: thinner 4130 needs no preheat from 21 °C up, all sources agree."""
HEAVY_CHROMOLY = 6.0
"""mm: over this every source wants preheat."""
THICK_MILD = 0.75 * 25.4
"""mm: up to this no preheat is asked of mild steel (AWS D1.1, from memory)."""
LEAST_HEAVY = 150.0
"""°C: the least that any source wants for 4130 over HEAVY_CHROMOLY."""
READING = 5.0
"""°C that a crayon, or 300 °F in place of 150 °C, is short of it."""
NO_PREHEAT = 400.0
"""°C: no steel is warmed so far for welding; it is a slip, or a heat treatment. Common practice, no source."""
SHOP = 20.0
"""°C: what no preheat stands for."""
LEAST_WITH_HYDROGEN = 66.0
"""°C, 150 °F: the least a structural code wants for mild steel over THICK_MILD where the electrode is not low in hydrogen (AWS
D1.1, from memory)."""
_TEMPERATURE = Pattern(
    r"(\d{1,4})(?:\s*(?:to|and|[-–])\s*(\d{1,4}))?\s*(?:°|deg(?:rees)?\b)?\s*([fc])\b", re.IGNORECASE
)
_NO_HEAT = Pattern(r"\s*(?:none|nil|cold|without|no (?:preheat|heat)|not (?:needed|necessary))\b", re.IGNORECASE)
LONG_IN_LEGS = 100.0
FEW_HITS = 10_000.0
"""Hits to a crack, fewer of which are told: a hard hit a minute, in a few weeks of days off road. Common practice, no source."""


@check(
    "{which}-weld-leg",
    step="weld_{which}",
    title="{Part}: leg of the weld",
    good="three quarters of the thinner part on both sides or all round, and no more than fits along its edge",
    watch="at least the least leg, but less than that, on one side only, or larger than fits along an edge",
    stop="under the least leg for the thinner part",
    source=(
        sources.AISC_360.at("Table J2.4 and J2.2b", "least leg, and most along an edge"),
        sources.BLODGETT.at("6.3", "three quarters; static strength only"),
    ),
    each=WELDS,
)
def weld_leg(which_weld: WeldQuestions) -> Judgement:
    """Leg of the {part}'s weld against the parts' thickness.

    Against the least for the thinner part, three quarters of it, and what fits along its edge.
    """
    weld = which_weld
    if weld.form == "full bevel":
        raise DoesNotApply("a full bevel has no leg")
    leg, part = weld.leg, thinner(weld)
    least = min(least_leg(part, "inch"), least_leg(part, "metric"))
    full, greatest = full_strength_leg(part), greatest_leg_along_an_edge(part)
    figures = {"leg": (leg, "mm"), "part": (part, "mm"), "least": (least, "mm"), "full": (full, "mm"),
               "greatest": (greatest, "mm")}  # fmt: skip
    text = "The leg is {leg}; the thinner part is {part}."
    if not reaches(leg, least):
        text += " Under {least} such metal chills the weld too fast."
        return Judgement("stop", text, "A leg of {least} at least, in one single run.", figures)
    if weld.form == "fillet on one side":
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


@check(
    "{which}-weld-length",
    step="weld_{which}",
    title="{Part}: length of the weld",
    limits=Limits(other={"shortest": (SHORTEST_IN_LEGS, "1"), "long": (LONG_IN_LEGS, "1")}),
    good="at least {shortest} legs, one leg at each end not counted, and no more than {long}",
    watch="shorter: its leg counts as a quarter of its length; longer: not all of it counts",
    stop="no longer than its two end craters",
    source=sources.AISC_360.at(
        "J2.2b and equation J2-1",
        "the 2005 edition differs beyond 300 legs; a leg taken off for each end crater is common practice",
    ),
    each=WELDS,
)
def weld_length(which_weld: WeldQuestions) -> Judgement:
    """How much of each run of the {part}'s weld counts."""
    weld, form = which_weld, which_weld.form
    if form == "full bevel" or form == "fillet round a tube or cup":
        raise DoesNotApply("a full bevel or a ring has no run to count in legs")
    need(weld, "leg", "run")
    leg, run = weld.leg, weld.run
    if form == "fillet round a rectangle":
        sound = min(run, weld.apart)
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
    if form != "fillet round a rectangle":
        text += " One leg at each end is not counted; carry the runs round the ends of the part where you can."
    return Judgement("good", text, figures=figures)


@check(
    "{which}-weld-strength",
    step="weld_{which}",
    title="{Part}: strength of the weld",
    limits=Holds(other={"few": (FEW_HITS, "1"), "spare": (TIE - 1, "share")}),
    never_good="never: no published limit covers loads that come and go on a home-made upright",
    shown=SHOWN,
    watch=f"{WATCH}, less than {{spare}} over what the code for steady loads allows, or fewer than {{few}} such hits to a crack",
    stop="the code for steady loads is not met",
    source=(
        sources.AISC_360.at("Table J2.5", "0.30 of the electrode on the throat"),
        sources.AISC_360.at("J4.2", read="a quotation"),
        sources.SHIGLEY_9.at(
            "Table 9-4",
            "0.30 of tensile strength and 0.40 of yield beside it. Steady loads only; nothing is published "
            "for this use",
            read="a quotation",
        ),
        sources.EN_1993_1_9.at("Table 8.5", "hits to a crack: detail category 36, slope 3, from memory"),
        sources.COMMON_PRACTICE.saying("how many hits are few"),
    ),
    each=WELDS,
)
def weld_strength(which_weld_safety: WeldSafetyFactor, limits: Holds) -> Judgement:
    """The {part}'s weld under the load cases, against the code for steady loads."""
    safety = which_weld_safety
    verdict = "stop" if safety.gives else limits.verdict(safety)
    if verdict == "shown" and (tied(safety.allowed, 1.0) or 0 < safety.hits < limits.other["few"][0]):
        verdict = "watch"
    found = one_line(verdict, safety, "A larger leg, longer runs, runs further apart, or welds all round.")
    text = f"{found.text} The code for steady loads allows {{allowed}} times this load ({safety.allowed_limit})."
    figures = {**found.figures, "allowed": (safety.allowed, "1")}
    if safety.hits:
        turned = f", one way and the other ({safety.swings})" if safety.swings else ""
        text += f" Sound welds of the worst kind crack after about {_hits(safety.hits)} such hits{turned}."
    left = min(limits.in_hand(safety), safety.allowed - 1.0 - limits.other["spare"][0])
    return Judgement(verdict, text, found.change, figures, in_hand=left)


def _hits(number: float) -> str:
    """A count with one figure: more is not known.

    >>> _hits(38_400.0), _hits(6.1), _hits(4e8)
    ('40 000', '6', 'a million or more')
    """
    if number >= 1e6:
        return "a million or more"
    whole = max(round(number), 1)
    return f"{round(whole, 1 - len(str(whole))):,}".replace(",", " ")


@check(
    "{which}-weld-filler",
    step="weld_{which}",
    title="{Part}: filler and preheat",
    limits=Limits(other={"thick": (THICK_MILD, "mm"), "thin": (THIN_CHROMOLY, "mm"), "heavy": (HEAVY_CHROMOLY, "mm")}),
    good="mild steel to {thick} with a filler of the tables; chromoly to {thin} by TIG with a filler the sources name",
    watch="sources differ, or nobody publishes for this metal or filler",
    stop="chromoly with a cellulose electrode or with rod of its own kind, or over {heavy} with less preheat than any "
    "source asks; mild steel over {thick} with a cellulose electrode and less preheat than a structural code asks; a filler the "
    "process cannot use; more preheat than any weld is given",
    source=sources.COMMON_PRACTICE.saying(
        "a welding equipment maker's bulletin on 4130, some drag race cage rules, welding forums; they differ"
    ),
    each=WELDS,
)
def weld_filler(which_weld: WeldQuestions) -> Judgement:
    """Process, filler and preheat of the {part}'s weld."""
    weld = which_weld
    need(weld, "metal", "welded_by", "filler")
    metal, process, filler = weld.metal, weld.welded_by, weld.filler
    if filler != "4130 rod" and filler != "other" and process not in ELECTRODES[filler].processes:
        made_for = " or ".join(ELECTRODES[filler].processes)
        text = f"{filler.upper()} is made for {made_for}, and the process is {process}."
        return Judgement("stop", text, "Put right whichever of the two is a slip.")
    temperature = preheat_in_words(given(weld, "preheat") or "")
    if temperature is not None and temperature[0] > NO_PREHEAT:
        text = f"No weld is warmed so far beforehand. {_preheat_written(weld)}"
        return Judgement("stop", text, "Put right the figure, or its unit: what the filler maker says for this metal.")
    if metal == "4130":
        return _chromoly(weld)
    if metal == "other" or filler == "other" or filler == "4130 rod":
        text = "No guidance is held here for this metal or filler."
        return Judgement("watch", text, "Follow the filler maker's data, and make a test piece and break it.")
    thick = _thicker(weld)
    if more_than(thick, THICK_MILD):
        need(weld, "preheat")
        hydrogen = not ELECTRODES[filler].low_hydrogen
        if hydrogen and temperature is not None and temperature[1] < LEAST_WITH_HYDROGEN - READING:
            text = (
                f"Mild steel of {{thick}} is to be welded with {filler.upper()}, which puts hydrogen into it, and with less heat "
                "than the [150 °F | 66 °C] that a structural code asks (from memory): it cracks beside the weld, and a day later."
            )
            change = "A wire or electrode low in hydrogen, or the preheat of its maker, measured with a crayon."
            return Judgement("stop", f"{text} {_preheat_written(weld)}", change, {"thick": (thick, "mm")})
        text = "Mild steel this thick, {thick}, chills the weld: a structural code wants it warmed (from memory)."
        change = "Ask the filler maker for the preheat and write it down."
        return Judgement("watch", f"{text} {_preheat_written(weld)}", change, {"thick": (thick, "mm")})
    text = f"{filler.upper()} on mild steel up to [3/4 in | 19 mm]: no preheat above freezing (a structural code, from memory)."
    return Judgement("good", f"{text} {_preheat_written(weld)}")


def _preheat_written(weld: WeldQuestions) -> str:
    """What the sheet says of preheat, or that it says nothing."""
    preheat = given(weld, "preheat")
    if not preheat:
        return "No preheat is written down: the welder is told to follow the filler maker."
    return as_written(preheat)


def as_written(preheat: str) -> str:
    """What somebody wrote of preheat, quoted."""
    return f"You wrote: “{preheat.replace('{', '(').replace('}', ')').replace('|', '/')}”."


def preheat_in_words(text: str) -> tuple[float, float] | None:
    """The lowest and the highest temperature, °C, that a text about preheat names; None where it names none. "None" is 20.

    >>> preheat_in_words("300 to 400 F, by crayon"), preheat_in_words("none"), preheat_in_words("as the maker says")
    ((148.9, 204.4), (20.0, 20.0), None)
    """
    found = []
    for low, high, scale in _TEMPERATURE.findall(text):
        found += [float(one) if scale in "cC" else round((float(one) - 32) / 1.8, 1) for one in (low, high) if one]
    if not found and _NO_HEAT.match(text):
        found = [SHOP]
    return (min(found), max(found)) if found else None


def _thicker(weld: WeldQuestions) -> float:
    need(weld, "thickness_one", "thickness_two")
    return max(weld.thickness_one, weld.thickness_two)


def _chromoly(weld: WeldQuestions) -> Judgement:
    process, filler = weld.welded_by, weld.filler
    if filler == "4130 rod":
        return Judgement(
            "stop",
            "Weld metal from 4130 rod is hard and brittle unless the whole part is heat treated after.",
            "ER80S-D2 comes near 4130's strength as welded; ER70S-2 is a little softer and more forgiving.",
        )
    if filler != "other" and not ELECTRODES[filler].low_hydrogen:
        return Judgement(
            "stop",
            f"{filler.upper()} puts hydrogen into the weld, and 4130 cracks from it, often a day later.",
            "TIG with ER80S-D2 or ER70S-2.",
        )
    thick = _thicker(weld)
    temperature = preheat_in_words(given(weld, "preheat") or "")
    if more_than(thick, HEAVY_CHROMOLY) and temperature is not None and temperature[1] < LEAST_HEAVY - READING:
        text = (
            "4130 of {thick} is to be welded with less heat in it than any source asks, [300 °F | 150 °C]: it cracks beside the "
            "weld, and a day later."
        )
        change = "Preheat by the filler maker's data, measured with a crayon, and let it cool slowly."
        return Judgement("stop", f"{text} {_preheat_written(weld)}", change, {"thick": (thick, "mm")})
    doubts = [
        *_filler_doubts(process, filler),
        *(_preheat_doubts(thick, weld) if more_than(thick, THIN_CHROMOLY) else ()),
    ]
    if not doubts:
        text = f"{filler.upper()} by TIG on 4130 of [1/8 in | 3 mm] at most: no preheat from [70 °F | 21 °C] up; sources agree."
        return Judgement("good", text)
    return Judgement(
        "watch",
        " ".join(doubts),
        "Follow the filler maker's data for this metal and thickness, cool in still air or under a blanket, never quench, and "
        "bend or break a test piece of the same joint.",
        {"thick": (thick, "mm")},
    )


def _filler_doubts(process: WeldProcess, filler: Filler) -> Iterator[str]:
    if process != "tig":
        yield "Some cage rules ask for TIG on 4130; no source here speaks for anything else."
    if filler == "er70s-6":
        yield "One source takes ER70S-6 on 4130, others name ER80S-D2 and ER70S-2 only."
    elif filler != "er80s-d2" and filler != "er70s-2":
        yield "The sources held here name ER80S-D2 and ER70S-2 for 4130 left as welded, not this."


def _preheat_doubts(thick: float, weld: WeldQuestions) -> Iterator[str]:
    need(weld, "preheat")
    yield (
        "Sources differ on preheat for 4130 of {thick}: a welding equipment maker says [300 to 400 °F | 150 to 205 °C] "
        "over [1/8 in | 3 mm]; a welding society's forum only over [1/4 in | 6 mm]; a procedure writer "
        "[390 to 480 °F | 200 to 250 °C] for heavy parts."
    )
    if more_than(thick, HEAVY_CHROMOLY):
        yield "All of them want it at this thickness."
    yield _preheat_written(weld)


@check(
    "{which}-weld-metal",
    step="weld_{which}",
    title="{Part}: what is welded",
    good="plate, bar or tube",
    stop="a production casting or forging, or not known, whoever agreed to it",
    source=sources.COMMON_PRACTICE.saying(
        "inspectors in several countries refuse welds on production knuckles and arms"
    ),
    each=WELDS,
)
def weld_metal(which_weld: WeldQuestions) -> Judgement:
    """Whether the {part}'s weld is on a production casting or forging."""
    made_from = which_weld.made_from
    if made_from == "plate, bar or tube":
        return Judgement("good", "Both parts are plate, bar or tube.")
    what = "a production casting or forging" if made_from != "not known" else "metal that nobody knows"
    return Judgement(
        "stop",
        f"The weld is on {what}: its steel may crack beside the weld, at once or later, with nothing to be seen.",
        "Buy or machine the part instead. An inspector who agrees to such a weld does not make it hold.",
    )
