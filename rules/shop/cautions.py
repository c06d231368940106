"""What can hurt somebody, said before anything is cut: first whatever is wrong with this very sheet."""

from collections.abc import Iterator

from rules.graph.asking import printable
from rules.judging.judge import Judged, label
from rules.judging.reader import answer, name
from rules.measure.said import in_units
from rules.sheet import FIELDS
from rules.sheet.rotor import CUT
from rules.shop.checklist_line import CAUTIONS, SETTLE, ChecklistLine

HELD_TOGETHER_BY, _ROTOR_STYLE = name("hub.held_together_by"), name("rotor.style")

ALWAYS = (
    ("informs", "This sheet informs; it does not certify. Local rules and the inspector decide."),
    ("holds-a-wheel-on", "This part holds a wheel on. If it breaks, people can die."),
    ("cast-or-forged", "Never weld, heat or re-drill a cast or forged knuckle, arm, hub or caliper."),
    ("used-parts", "Crack test used hubs, shafts and joints: a cracked one can look perfect."),
    ("cleaner", "No chlorinated brake cleaner near an arc: it makes poison gas. Acetone, dried."),
    ("zinc", "Zinc and cadmium off [1 in | 25 mm] back: poison fume. Weld nothing galvanised."),
    ("hub-and-bearing-out", "Hub and bearing out before any welding. Earth clamp next to the weld."),
    ("stands", "Car on stands on hard ground, wheels chocked, springs out; never on a jack."),
    ("impact-gun", "No impact gun on hub nuts. New nuts where the maker says use once."),
    ("second-person", "A second person checks and signs every hold point and every torque."),
)


def cautions(judged: Judged) -> Iterator[ChecklistLine]:
    """The cautions of a sheet: DO NOT CUT with its reasons, then the rest."""
    # In the words of each check: a title such as "Caliper inside the wheel barrel" reads as good news.
    if stops := dict.fromkeys(finding.text for finding in judged.findings if finding.verdict == "stop"):
        yield _caution("do-not-cut", f"DO NOT CUT. {' '.join(stops)}")
    if judged.missing or judged.sheet.faults:
        yield _caution(
            "not-finished", f"NOT FINISHED. Needed answers are missing or cannot be read; see “{SETTLE}”. "
            "A blank is not a figure: do not lay out from this sheet yet.",
        )  # fmt: skip
    if yes := [_as_it_stands(name, judged) for name in FIELDS if name in judged.sheet.confirmed]:
        yield _caution("confirmed", f"Asked about, and confirmed by the builder: {'; '.join(yes)}.")
    odd = {finding.asks_about for finding in judged.findings if finding.verdict == "watch"}
    if asked := [_as_it_stands(name, judged) for name in FIELDS if name in odd.union(judged.sheet.unusual)]:
        yield _caution("unusual", f"Unusual, and nobody has confirmed it: {'; '.join(asked)}.")
    for line, text in ALWAYS:
        yield _caution(line, in_units(text, judged.shown_in))
    if answer(judged.worked.known, HELD_TOGETHER_BY) == "a clamped stub shaft":
        yield _caution(
            "hub-needs-its-shaft",
            "Only its stub shaft, nut at torque, holds this hub together: never roll it bare.",
        )
    if answer(judged.worked.known, _ROTOR_STYLE) == CUT:
        yield _caution(
            "cut-rotor",
            "The rotor is cut to one plate: its maker's limits are void and nobody publishes a safe thickness. Look for "
            "cracks after every drive.",
        )


def _as_it_stands(field: str, judged: Judged) -> str:
    return f"{label(field)} {printable(judged.sheet.typed[field])}"


def _caution(line: str, text: str) -> ChecklistLine:
    return ChecklistLine(f"caution.{line}", CAUTIONS, text, kind="caution")
