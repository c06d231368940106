"""Which one answer moves a number most, found by changing each a little."""

from math import radians

from rules.graph.engine import Graph
from rules.graph.results import Again, Judgement
from rules.graph.worked import Worked
from rules.judging.reader import Name, answer
from rules.measure.display import in_a_sentence, show
from rules.measure.quantity import KINDS, Units

NUDGE = {"mm": 0.5, "rad": radians(0.25)}
"""How much an answer is changed by to see what it does, in the inside unit."""
SAID = {"mm": (10.0, 25.4 / 4), "rad": (radians(1.0), radians(1.0))}
"""What the change is told for: metric and inch sheets."""
GIVEN = "job"
"""The step whose answers are facts about the car."""
LEAST = 0.05
"""Of the number for one of the answer (a mm for a mm, a mm for a degree): less is not worth saying."""
ALIKE = 6
"""Decimals of mm to which two answers that move a number are compared: below that only the reckoning differs."""


def moved_most(graph: Graph, judgement: Judgement, worked: Worked, units: Units) -> str:
    """In a sentence, which answer adds most to the number judged, and how much; empty where none does.

    Lengths and angles the number rests on are changed a little, one at a time, all others held.
    """
    assert judgement.again is not None
    found = entry_that_moves_most(graph, judgement.rests_on, judgement.again, worked)
    if found is None:
        return ""
    name, rate = found
    unit, asked = _unit(graph, name), graph.fields[name]
    step = SAID[unit][units == "inch"]
    more = "more" if rate > 0 else "less"
    only = f", only with another {asked.bought}" if asked.bought else ""
    return (
        f"Moved most by {in_a_sentence(asked.label)} ({asked.step.replace('_', ' ')}{only}): "
        f"{show(step, unit, units)} {more} gives "
        f"{show(abs(rate) * step, 'mm', units)} {judgement.gives}."
    )


def entry_that_moves_most(
    graph: Graph, rests_on: tuple[str, ...], again: Again, worked: Worked
) -> tuple[str, float] | None:
    """The answer that moves a number most, and by how many mm for one inside unit of it; None where none does.

    rests_on: the values the number is worked out from. again: from fields and values by name to the number, mm.
    What a builder chooses comes before a fact about a bought part or about the car. Of two that move it alike, the one asked
    last does: what was settled before it stays.
    """
    rates = _rates(graph, rests_on, again, worked)
    asked_at = {name: place for place, name in enumerate(graph.fields)}

    def rank(name: str) -> tuple[bool, float, int]:
        asked = graph.fields[name]
        moves = round(abs(rates[name]) * SAID[_unit(graph, name)][0], ALIKE)
        return bool(asked.bought) or asked.step == GIVEN, -moves, -asked_at[name]

    name = min(rates, key=rank, default=None)
    return None if name is None else (name, rates[name])


def _rates(graph: Graph, rests_on: tuple[str, ...], again: Again, worked: Worked) -> dict[str, float]:
    """mm of the number for one inside unit of each answer that matters."""
    now = again(worked.known)
    fields = dict.fromkeys(field for name in rests_on for field in graph.fields_of(name))
    rates: dict[str, float] = {}
    for field in fields:
        entered = answer(worked.known, Name(field))
        if not isinstance(entered, float) or KINDS[graph.fields[field].kind].unit not in NUDGE or now is None:
            continue
        nudge = NUDGE[_unit(graph, field)]
        nudged = graph.what_if(worked, field, *rests_on)(entered + nudge)
        if all(worked.same(name, nudged) for name in rests_on):
            continue
        then = again(nudged.known)
        if then is not None and abs(then - now) * SAID[_unit(graph, field)][0] > LEAST * nudge * 10:
            rates[field] = (then - now) / nudge
    return rates


def _unit(graph: Graph, field: str) -> str:
    return graph.units[field]
