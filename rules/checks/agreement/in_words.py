"""Do the words a builder writes say the same as the choices beside them? The welder reads the words."""

import re

from rules.checks.agreement.metals import NOT_SAID
from rules.checks.agreement.tie import not_compared
from rules.checks.strength.welds import (
    HEAVY_CHROMOLY,
    LEAST_HEAVY,
    NO_PREHEAT,
    READING,
    SHOP,
    THICK_MILD,
    as_written,
    preheat_in_words,
)
from rules.graph.bands import Limits
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.closeness import more_than
from rules.measure.display import in_a_sentence
from rules.measure.patterns import Pattern
from rules.measure.units import Mm
from rules.sheet import FIELDS
from rules.sheet.confirmed import Confirmed
from rules.sheet.plate import PlateMetal
from rules.sheet.welds import WELDS, MadeFrom
from rules.tables import sources
from rules.tables.electrodes import WeldProcess


def _words(pattern: str) -> Pattern:
    return Pattern(rf"{NOT_SAID}({pattern})\b", re.IGNORECASE)


NAMED: dict[str, Pattern] = {
    "mild steel plate": _words(
        r"mild|low[- ]carbon|a36|a572|a283|a516|a101[18]|10(?:0[6-9]|1\d|2[0-6])|s(?:235|275|355)\w*|st ?(?:37|44|52)\w*"
        r"|q(?:235|345|355)\w*|ss ?400|(?:44|300|350)w|070m20|en ?3[ab]?"
    ),
    "4130": _words(r"4130|chromoly|chrome[- ]moly|25crmo4"),
    "aluminium": _words(r"alumini?um|60(?:61|82)|7075|50(?:52|83)|t6(?:51)?"),
    "another steel": _words(
        r"41(?:40|42)|4340|8620|10(?:3[5-9]|[4-9]\d)|11(?:17|4[14])|42crmo4|stainless|304l?|316l?|ar ?\d{3}|tool steel"
        r"|12l?1[345]|11smn\w*|leaded|free[- ](?:cutting|machining)|re-?sul(?:ph|f)uri[sz]ed"
        r"|en ?(?:1a|8|9|16|19|24|36|4[0-9])[a-z]?|0[78]0m[345]\d|7\d\dm40|817m40|c ?(?:35|4[05]|5[05]|60)[er]?"
        r"|5160|6150|9260|5[01]crv4|(?:leaf|coil) springs?|spring steel|wear plate|abrasion[- ]resist\w*"
        r"|s(?:690|890|960)\w*|a514|boron|manganese|rail|rebar|case[- ]hardening"
    ),
    "no steel": _words(r"titanium|brass|bronze|copper|magnesium|zinc alloy"),
}
"""What a certificate calls a metal. Names of grades, from memory."""
ROLLED = _words(r"as rolled|(?:hot|cold)[- ]rolled|normali[sz]ed|annealed|pickled")
"""What a certificate says of a plate without its grade, which the field itself asks for."""
NO_PAPERS = _words(
    r"unknown|not known|nobody knows|scrap\w*|no (?:certificate|papers?)|without (?:certificate|papers?)"
)
CAST = _words(r"cast|castings?|forged|forgings?|malleable|nodular|ductile|production|factory|donor")
ACTIVE_GAS = _words(r"co2|carbon dioxide|c ?25|75/25|oxygen")
ARGON_ALONE = _words(r"(?:pure|straight|neat|100 ?%) argon|argon (?:only|alone)|(?:argon|helium)(?=[ .;]*$)")
ANY_GAS = _words(r"argon|helium|co2|carbon dioxide")
NO_GAS = Pattern(r"\b((?:no|without)(?: shielding)? gas|gasless)\b", re.IGNORECASE)
CORED = Pattern(r"\b(e\d{2}t\w*|flux|cored?|self[- ]shield\w*)", re.IGNORECASE)
"""Wires that make their own gas, or may."""
ELECTRODE = _words(r"e\d{4}\w*")
ROD = _words(r"er\s?-?\d\w*")
FILLER = _words(r"er?\s?-?\d{2}\w*|70s-?\d|4130 rod|g ?\d? ?[234] ?si ?[12]?|[23]si1|sg ?[123]|a ?1[578]")
"""What packets call a class of filler: AWS A5.1, A5.18 and A5.28, ISO 14341 and older names, all from memory."""


def _shown(found: re.Match[str]) -> str:
    return found[0].replace("{", "(").replace("}", ")")


@check(
    "condition-names-metal",
    step="plate",
    title="Plate's metal, chosen and in words",
    good="its grade and condition name the metal chosen, or say how it was rolled, and name no other",
    watch="they name another, or say that nobody knows it; or name no metal known here, and are not confirmed",
    source=sources.COMMON_PRACTICE.saying(
        "the certificate names the metal; filler, preheat and strength follow from it"
    ),
)
def condition_names_metal(
    plate_metal: PlateMetal | None, plate_condition: str | None, confirmed: Confirmed
) -> Judgement:
    """The metal chosen for the plate against what is written of its grade and condition.

    No list holds every steel that must not be welded; so what names neither the metal chosen nor its rolling is asked about.
    """
    if plate_metal is None or plate_condition is None:
        why = "the plate's metal is not both chosen and written in words"
        raise not_compared(why, plate_condition, {"plate.metal": plate_metal})
    if plate_metal == "other":
        raise DoesNotApply("the plate is of another metal than those that are told apart")
    for metal, pattern in NAMED.items():
        if metal != plate_metal and (found := pattern.search(plate_condition)):
            text = f"The plate is entered as {plate_metal}, and its grade and condition name “{_shown(found)}”"
            change = "Read the certificate again, and put right whichever is a slip."
            return Judgement("watch", f"{text}, which is {metal.removesuffix(' plate')}.", change)
    if found := NO_PAPERS.search(plate_condition):
        text = f"Grade and condition of the plate say “{_shown(found)}”: nothing then says that it is {plate_metal}."
        return Judgement("watch", text, "Get the certificate, or cut a plate whose metal is known.")
    if NAMED[plate_metal].search(plate_condition) or ROLLED.search(plate_condition):
        return Judgement("good", f"Grade and condition name no metal but {plate_metal}.")
    return _asked(
        f"Grade and condition of the plate name no {plate_metal} that is known here", "plate.condition", confirmed
    )


def _asked(text: str, name: str, confirmed: Confirmed) -> Judgement:
    """Words in which nothing known was found: the builder says once whether they are right. name: dotted."""
    if name in confirmed:
        return Judgement("good", f"{text}; confirmed as written.")
    what = in_a_sentence(FIELDS[name].label)
    return Judgement(
        "watch", f"{text}.", f"Read it off again. If it is right, confirm {what} as written.", asks_about=name
    )


@check(
    "{which}-weld-parts-in-words",
    step="weld_{which}",
    title="{Part}: parts in words and what they were",
    good="nothing cast or forged, and no other steel, is named of parts entered as plate, bar or tube",
    watch="something cast or forged is named, and is not entered as such; or another steel",
    source=sources.COMMON_PRACTICE.saying("a casting or forging cracks beside the weld, unseen"),
    each=WELDS,
)
def weld_parts_in_words(weld_which_parts: str | None, weld_which_made_from: MadeFrom | None) -> Judgement:
    """The two parts as the builder calls them, against what they are said to be made from."""
    if weld_which_parts is None or weld_which_made_from == "production casting or forging":
        raise DoesNotApply("the parts are not named, or are entered as cast or forged, which is judged")
    found = CAST.search(weld_which_parts)
    if found is None and (other := NAMED["another steel"].search(weld_which_parts)):
        return Judgement(
            "watch",
            f"The parts of this weld name “{_shown(other)}”, which is another steel than those judged here.",
            "Say what the parts are of; filler and preheat are judged for the metal chosen.",
        )
    if found is None:
        return Judgement("good", "Nothing cast or forged is named.")
    return Judgement(
        "watch",
        f"The parts of this weld are called “{_shown(found)}”, and are not entered as a casting or forging.",
        "Say what the parts were. No casting or forging that holds a wheel or steers it is welded.",
    )


@check(
    "filler-and-gas-suit-process",
    step="plate",
    title="Filler, gas and process",
    good="filler and gas as written are those the process is welded with",
    watch="one of them is another process's; or no class of filler is named, and that is not confirmed",
    source=sources.COMMON_PRACTICE.saying(
        "AWS marks electrodes E and wires and rods ER; tungsten burns away in any gas but argon and helium, steel wire wants "
        "carbon dioxide or oxygen in it, a coated electrode or a cored wire makes its own"
    ),
)
def filler_and_gas_suit_process(
    weld_process: WeldProcess | None, plate_metal: PlateMetal | None, plate_filler: str | None, confirmed: Confirmed
) -> Judgement:
    """The filler and its shielding gas, as written, against the welding process."""
    if weld_process is None or plate_filler is None:
        raise not_compared(
            "process and filler are not both entered", plate_filler, {"plate.weld_process": weld_process}
        )
    other = ROD if weld_process == "stick" else ELECTRODE
    if found := other.search(plate_filler) or (weld_process == "stick" and ANY_GAS.search(plate_filler)) or None:
        why = f"“{_shown(found)}” goes with {'tig or mig' if weld_process == 'stick' else 'stick'}"
    elif weld_process == "tig" and (found := ACTIVE_GAS.search(plate_filler)):
        why = f"with “{_shown(found)}” in it the tungsten burns away, and ends up in the weld"
    elif weld_process == "mig" and plate_metal != "other" and (found := ARGON_ALONE.search(plate_filler)):
        why = f"under “{_shown(found)}” a steel wire's arc wanders, and the weld does not bite into its edges"
    elif weld_process in ("mig", "tig") and (found := NO_GAS.search(plate_filler)) and not CORED.search(plate_filler):
        why = f"with “{_shown(found)}” nothing keeps the air from a bare wire or rod, and the weld is full of holes"
    elif not FILLER.search(plate_filler):
        return _asked("Filler and gas as written name no class of filler that is known here", "plate.filler", confirmed)
    else:
        return Judgement("good", "Filler and gas as written suit the process.")
    text = f"The welds are entered as {weld_process}: {why}."
    return Judgement("watch", text, "Put right process, filler or gas; the welder gets them on paper.")


@check(
    "plate-preheat",
    step="plate",
    title="Preheat of the plate in words",
    limits=Limits(other={"heavy": (HEAVY_CHROMOLY, "mm"), "thick": (THICK_MILD, "mm")}),
    good="no more than any weld is given, no less than any source asks",
    watch="none on mild steel over {thick}",
    stop="more than any weld is given; of chromoly over {heavy} less than any source asks",
    source=sources.COMMON_PRACTICE.saying(
        "no steel is warmed so far for welding; what the sources ask of 4130 and of thick mild steel is said at each weld"
    ),
)
def plate_preheat(
    plate_preheat: str | None, plate_metal: PlateMetal | None, plate_thickness: Mm | None, limits: Limits
) -> Judgement:
    """The preheat that the welder reads for the whole upright, where it names a temperature."""
    temperature = preheat_in_words(plate_preheat or "")
    if temperature is None or plate_preheat is None:
        raise DoesNotApply("no temperature is written for the plate")
    written = as_written(plate_preheat)
    if temperature[0] > NO_PREHEAT:
        change = "Put right the figure, or its unit: what the filler maker says for this metal."
        return Judgement("stop", f"No weld is warmed so far beforehand. {written}", change)
    if plate_metal is None or plate_thickness is None:
        bounds = {"plate.metal": plate_metal, "plate.thickness": plate_thickness}
        raise not_compared("the plate's metal and thickness are not both entered", plate_preheat, bounds)
    heavy, thick = (more_than(plate_thickness, limits.other[name][0]) for name in ("heavy", "thick"))
    if plate_metal == "mild steel plate" and thick and temperature[1] <= SHOP:
        text = (
            f"Mild steel this thick, {{plate_thickness}}, chills the weld: a structural code wants it warmed. {written}"
        )
        return Judgement("watch", text, "Ask the filler maker for the preheat and write it down.")
    if plate_metal == "4130" and heavy and temperature[1] < LEAST_HEAVY - READING:
        text = f"4130 of {{plate_thickness}} with less heat in it than any source asks, [300 °F | 150 °C]. {written}"
        return Judgement("stop", text, "Preheat by the filler maker's data, measured with a crayon.")
    return Judgement("good", f"No more heat, and no less, than welds of such plate are given. {written}")
