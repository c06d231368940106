"""The written-out working of one value or check: formula, inputs and where each came from, result, reach of tape errors."""

import re
from collections.abc import Iterator
from math import hypot

from rules.graph.declare import in_words
from rules.graph.engine import Graph
from rules.graph.node import Node
from rules.graph.results import LIMITS_OF, WORST_FIRST, Verdict
from rules.judging.corner_table import corner_table
from rules.judging.finding import who_says_so
from rules.judging.judge import Finding, Judged, and_list, shown, to_measure, why_not
from rules.judging.reader import name as named
from rules.judging.trade import trade
from rules.measure.display import in_sheet, published, show
from rules.measure.patterns import Pattern
from rules.measure.quantity import INCH, KINDS, Units
from rules.measure.said import in_units
from rules.sheet import FIELDS
from rules.sheet.confirmed import FACTS
from rules.strength.corner_loads import CornerLoads

_UNITS_INSIDE = Pattern(r"(?<!\d )(?<!\d)\b(?:N/mm|N m|mm2|mm4|mm|MPa|m/s|kg|N)\b(?!/)")


def explain(judged: Judged, name: str) -> list[str]:
    """The working of a value, a check or a field, as lines of plain text.

    name: `hub_height_offset`, `caliper-clears-barrel` or `wheel.width`. Raises KeyError for a name that is none of these.
    """
    graph = trade()
    if name in graph.values:
        return list(_value(graph, graph.values[name], judged))
    if name in graph.checks:
        return list(_check(graph, graph.checks[name], judged))
    if name in FIELDS:
        return list(_field(graph, name, judged))
    raise KeyError(name)


def first_paragraph(node: Node, units: Units | None = None) -> str:
    """What the function is for, from its docstring, in the words of its member of a family. Angles are shown in degrees, other
    figures in the units of a sheet, where there is one."""
    said = in_words(" ".join((node.function.__doc__ or "").split("\n\n")[0].split()), node.member)
    return _in_sheet_units(re.sub(r"\brad(?:ians)?\b", "deg", said), units)


def _in_sheet_units(text: str, units: Units | None) -> str:
    """The text of a formula or docstring, which names the units figures have inside."""
    said = in_units(text, units)
    if units is None:
        return said
    return _UNITS_INSIDE.sub(lambda found: _unit_in(found[0], units), said)


def _unit_in(unit: str, units: Units) -> str:
    return "in" if (unit, units) == ("mm", "inch") else in_sheet(1.0, unit, units)[1]


def exactly(number: float, unit: str, units: Units) -> str:
    """A number to the last figure worth writing, in the sheet's units."""
    if unit == "mm":
        return f"{number / INCH:.4f} in" if units == "inch" else f"{number:.3f} mm"
    if unit == "rad":
        return f"{published(number, unit)[0]:.4f} deg"
    return show(number, unit, units)


def _value(graph: Graph, node: Node, judged: Judged) -> Iterator[str]:
    yield f"{node.name} - {first_paragraph(node, judged.shown_in)}"
    yield ""
    yield f"Formula: {node.name} = {_in_sheet_units(node.note.formula, judged.shown_in)}"
    yield from _inputs(graph, node, judged)
    yield from _on_the_way(graph, node, judged)
    yield ""
    yield f"Result: {_outcome(graph, node.name, judged)}"
    answer = judged.worked.known.get(node.name)
    if isinstance(answer, CornerLoads):
        yield ""
        yield from corner_table(answer, judged.shown_in)
        yield ""
    if estimated := judged.worked.estimated.get(node.name):
        yield f"This rests on an estimate. {to_measure(estimated)}"
    yield from _tape_errors(graph, node, judged)
    yield f"Source: {node.note.source}"


def _check(graph: Graph, node: Node, judged: Judged) -> Iterator[str]:
    findings = [found for found in judged.findings if found.check == node.name]
    finding = findings[0]
    yield f"{node.name} - {node.note.title}"
    yield first_paragraph(node, judged.shown_in)
    yield ""
    for found in findings:
        yield f"Verdict: {found.verdict}. {found.text}"
        if found.change:
            yield f"To change: {found.change}"
    for word, limit in limits(node, judged.shown_in):
        yield f"  {word}: {limit}"
    yield from _inputs(graph, node, judged)
    yield from _on_the_way(graph, node, judged)
    yield from _verdict_moves(graph, node, finding, judged)
    yield ""
    yield who_says_so(node.note.grade, node.note.source)


def limits(node: Node, units: Units) -> list[tuple[str, str]]:
    """A check's limits in words, only the verdicts it has."""
    words = node.note.words_in(units)
    return [(word, words[word]) for word in LIMITS_OF if words[word]]


def _field(graph: Graph, name: str, judged: Judged) -> Iterator[str]:
    asked = FIELDS[name]
    yield f"{name} - {asked.label}"
    yield f"How to measure: {asked.how_in(judged.shown_in)}"
    yield f"Entry: {_origin(name, judged)}"
    touched = ", ".join(graph.checks_touched_by(name)) or "no check yet"
    yield f"It is used by: {touched}"


def _inputs(graph: Graph, node: Node, judged: Judged) -> Iterator[str]:
    yield ""
    yield "Inputs:"
    for origin in _used(node, judged):
        yield f"  {origin}: {_outcome(graph, origin, judged)}  [{_origin(origin, judged)}]"


def _used(node: Node, judged: Judged) -> list[str]:
    """The inputs a node's answer rests on: one alone where it was handed through unchanged, as a measured figure is."""
    known = judged.worked.known
    answer = known.get(node.name)
    handed = [given.origin for given in node.inputs if isinstance(answer, float) and known.get(given.origin) is answer]
    return handed or [given.origin for given in node.inputs if given.origin not in FACTS]


def _rests_on(graph: Graph, node: Node, judged: Judged) -> set[str]:
    above: set[str] = set()
    to_look_at = _used(node, judged)
    while to_look_at:
        name = to_look_at.pop()
        if name not in above:
            above.add(name)
            if name in graph.values:
                to_look_at += _used(graph.values[name], judged)
    return above


def _on_the_way(graph: Graph, node: Node, judged: Judged) -> Iterator[str]:
    direct = set(_used(node, judged))
    above = _rests_on(graph, node, judged)
    between = [name for name in graph.needs(node.name) if name in graph.values and name in above]
    if not between:
        return
    yield ""
    yield "Worked out on the way:"
    for name in between:
        yield f"  {name} = {_in_sheet_units(graph.values[name].note.formula, judged.shown_in)}"
        if name not in direct:
            yield f"    = {_outcome(graph, name, judged)}"
        for origin in _used(graph.values[name], judged):
            if origin in FIELDS and origin in judged.worked.known:
                yield f"    {origin}: {_outcome(graph, origin, judged)}  [{_origin(origin, judged)}]"


def _outcome(graph: Graph, name: str, judged: Judged) -> str:
    worked = judged.worked
    if name in worked.known:
        answer = worked.known[name]
        return (
            exactly(answer, graph.units[name], judged.shown_in)
            if isinstance(answer, float)
            else shown(named(name), judged)
        )
    if name in worked.not_here:
        return f"does not apply: {why_not(name, judged)}"
    if name in worked.not_judged:
        return f"not judged: {why_not(name, judged)}"
    if name in worked.broken:
        return why_not(name, judged)
    if name in FIELDS:
        return "not entered"
    return f"not known yet; waits for {and_list(worked.waits[name])}"


def _origin(name: str, judged: Judged) -> str:
    """Where a number came from: typed, estimated, or worked out."""
    if name in FIELDS:
        typed = judged.sheet.typed.get(name)
        if typed is None:
            return "left empty"
        return f"typed: {str(typed).lower() if isinstance(typed, bool) else typed}"
    if measure := judged.worked.estimated.get(name):
        return f"rests on an estimate until measured: {', '.join(measure)}"
    return "worked out"


def _readings(graph: Graph, node: Node, judged: Judged) -> Iterator[tuple[str, float]]:
    """The measured fields a node rests on, with what a careful reading may be out by."""
    for name in graph.fields_of(node.name):
        error = FIELDS[name].reading_error
        if error and isinstance(judged.worked.known.get(name), float):
            yield name, error


def _tape_errors(graph: Graph, node: Node, judged: Judged) -> Iterator[str]:
    here = judged.worked.known.get(node.name)
    if not isinstance(here, float):
        return
    moves = []
    for name, error in _readings(graph, node, judged):
        trial = graph.what_if(judged.worked, name, node.name)(judged.worked.known[name] + error)
        moved = trial.known.get(node.name)
        if isinstance(moved, float) and abs(moved - here) > 1e-9:
            moves.append((abs(moved - here), name, error))
    if not moves:
        return
    yield "If a reading is out:"
    for size, name, error in sorted(moves, reverse=True):
        reading = show(error, KINDS[FIELDS[name].kind].unit, judged.shown_in)
        yield f"  {name} by {reading} moves it {show(size, node.unit, judged.shown_in)}"
    if len(moves) > 1:
        worst, likely = sum(size for size, *_ in moves), hypot(*(size for size, *_ in moves))
        yield f"  all at once: {show(worst, node.unit, judged.shown_in)} at worst,"
        yield f"    {show(likely, node.unit, judged.shown_in)} likely (root of the sum of squares)"


def _verdict_moves(graph: Graph, node: Node, finding: Finding, judged: Judged) -> Iterator[str]:
    if finding.verdict not in ("good", "shown", "watch"):
        return
    lines = []
    for name, error in _readings(graph, node, judged):
        worse = max((_verdict_with(graph, node, judged, name, sign * error) for sign in (-1, 1)), key=_badness)
        if _badness(worse) > _badness(finding.verdict):
            reading = show(error, KINDS[FIELDS[name].kind].unit, judged.shown_in)
            lines.append(f"  {name} out by {reading} would make it {worse}")
    yield ""
    yield "If a reading is out:" if lines else "No single reading error moves this verdict."
    yield from lines


def _badness(verdict: Verdict) -> int:
    return -WORST_FIRST.index(verdict)


def _verdict_with(graph: Graph, node: Node, judged: Judged, name: str, error: float) -> Verdict:
    trial = graph.what_if(judged.worked, name, node.name)(judged.worked.known[name] + error)
    judgement = graph.ask_check(node, trial)
    return judgement.verdict if judgement else "does not apply"
