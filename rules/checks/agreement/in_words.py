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
from rules.measure.patterns import Pattern
from rules.measure.units import Mm
from rules.sheet.plate import PlateMetal
from rules.sheet.welds import WELDS, MadeFrom
from rules.tables import sources
from rules.tables.electrodes import WeldProcess


def _words(pattern: str) -> Pattern:
    return Pattern(rf"{NOT_SAID}({pattern})\b", re.IGNORECASE)


NAMED: dict[str, Pattern] = {
    "mild steel plate": _words(r"mild steel|a36|a572|10(?:18|20|26)|s(?:235|275|355)\w*"),
    "4130": _words(r"4130|chromoly|chrome[- ]moly|25crmo4"),
    "aluminium": _words(r"alumini?um|60(?:61|82)|7075|50(?:52|83)|t6(?:51)?"),
    "another steel": _words(
        r"41(?:40|42)|4340|8620|10(?:45|50)|1144|42crmo4|stainless|304l|316l|ar ?[45]00|tool steel"
    ),
}
"""What a certificate calls a metal. Names of grades, from memory."""
CAST = _words(r"cast|castings?|forged|forgings?|malleable|nodular")
ACTIVE_GAS = _words(r"co2|carbon dioxide|c ?25|75/25|oxygen")
ARGON_ALONE = _words(r"(?:pure|straight|neat|100 ?%) argon|argon (?:only|alone)")
ANY_GAS = _words(r"argon|helium|co2|carbon dioxide")
ELECTRODE = _words(r"e\d{4}\w*")
ROD = _words(r"er\s?-?\d\w*")


def _shown(found: re.Match[str]) -> str:
    return found[0].replace("{", "(").replace("}", ")")


@check(
    "condition-names-metal",
    step="plate",
    title="Plate's metal, chosen and in words",
    good="its grade and condition name no metal but the one chosen",
    watch="they name another",
    source=sources.COMMON_PRACTICE.saying(
        "the certificate names the metal; filler, preheat and strength follow from it"
    ),
)
def condition_names_metal(plate_metal: PlateMetal | None, plate_condition: str | None) -> Judgement:
    """The metal chosen for the plate against what is written of its grade and condition."""
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
    return Judgement("good", f"Grade and condition name no metal but {plate_metal}.")


@check(
    "{which}-weld-parts-in-words",
    step="weld_{which}",
    title="{Part}: parts in words and what they were",
    good="nothing cast or forged is named of parts entered as plate, bar or tube",
    watch="something cast or forged is named, and is not entered as such",
    source=sources.COMMON_PRACTICE.saying("a casting or forging cracks beside the weld, unseen"),
    each=WELDS,
)
def weld_parts_in_words(weld_which_parts: str | None, weld_which_made_from: MadeFrom | None) -> Judgement:
    """The two parts as the builder calls them, against what they are said to be made from."""
    if weld_which_parts is None or weld_which_made_from == "production casting or forging":
        raise DoesNotApply("the parts are not named, or are entered as cast or forged, which is judged")
    found = CAST.search(weld_which_parts)
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
    watch="one of them is another process's",
    source=sources.COMMON_PRACTICE.saying(
        "AWS marks electrodes E and wires and rods ER; tungsten burns away in any gas but argon and helium, steel wire wants "
        "carbon dioxide or oxygen in it, a coated electrode makes its own"
    ),
)
def filler_and_gas_suit_process(
    weld_process: WeldProcess | None, plate_metal: PlateMetal | None, plate_filler: str | None
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
