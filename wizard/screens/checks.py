"""The list of all checks: what is good, watch and stop, and who says so."""

from collections.abc import Iterator, Sequence

from textual.content import Content

from rules.graph.asking import Step
from rules.graph.results import LIMITS_OF
from rules.judging.finding import who_says_so
from rules.judging.trade import trade
from rules.measure.quantity import Units
from rules.sheet import STEPS
from wizard.desk.words import lines, plain, verdict
from wizard.screens.reading import ReadingScreen

FIRST = 3
"""So many steps have more lines than a screen."""


def checks_screen(units: Units) -> ReadingScreen:
    """All checks, by step, their limits in these units. Those of the first steps fill every screen."""
    heading = f"All {len(trade().checks)} checks, their limits and sources"

    def of(steps: Sequence[type[Step]]) -> list[Content]:
        return [lines(*_of(step, units)) for step in steps]

    return ReadingScreen(heading, *of(STEPS[:FIRST]), rest=lambda: of(STEPS[FIRST:]))


def _of(step: type[Step], units: Units) -> Iterator[Content | str]:
    notes = [node.note for node in trade().checks.values() if node.note.step == step.name]
    if notes:
        yield plain(step.title.upper(), "bold $text-accent")
    for note in notes:
        yield Content.assemble((note.title, "bold"), plain(f" ({note.id})", "$foreground 65%"))
        words = note.words_in(units)
        for word in LIMITS_OF:
            if words[word]:
                yield Content.assemble(verdict(word, width=6), words[word])
        yield plain(who_says_so(note.grade, note.source), "$foreground 65%")
        yield ""
