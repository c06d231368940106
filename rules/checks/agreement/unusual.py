"""Answers that are possible but unusual, which nobody has confirmed."""

from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.display import in_a_sentence
from rules.measure.said import OneFigure
from rules.sheet import FIELDS
from rules.sheet.confirmed import Unusual
from rules.tables.sources import COMMON_PRACTICE


@check(
    "unusual-answers",
    step="job",
    title="Unusual answers",
    good="every answer is usual, or confirmed as it stands",
    watch="an answer is outside what is usual, and not confirmed",
    source=COMMON_PRACTICE.saying("what a fabricator would call usual from a small buggy to a heavy rig"),
    grade="common practice",
)
def unusual_answers(unusual: Unusual) -> Judgement:
    """Every answer outside its usual range. A usual range is no limit: it only marks what is worth a second look."""
    if not unusual:
        return Judgement("good", "Every answer is usual, or confirmed as it stands.")
    figures: dict[str, OneFigure] = {}
    told = []
    for place, (name, (answer, low, high)) in enumerate(unusual.items()):
        asked = FIELDS[name]
        unit = asked.unit if asked.unit != "int" else "1"
        figures |= {f"answer_{place}": (float(answer), unit)}
        figures |= {f"low_{place}": (low, unit, "up"), f"high_{place}": (high, unit, "down")}
        told.append(f"{in_a_sentence(asked.label)} {{answer_{place}}} (usual: {{low_{place}}} to {{high_{place}}})")
    return Judgement(
        "watch",
        f"Possible, but unusual: {'; '.join(told)}.",
        "Check figure and unit of each, and confirm those that are so.",
        figures,
    )
