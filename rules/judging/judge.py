"""Runs every check on a sheet: findings, worst first, and the verdict of the whole."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache

from rules.graph.declare import CheckNote, words_of
from rules.graph.engine import Graph, Node
from rules.graph.results import WORST_FIRST, Judgement, Reason, SheetVerdict, Verdict
from rules.graph.worked import Worked
from rules.judging.reader import Name, answer
from rules.judging.remedy import remedies
from rules.judging.trade import trade
from rules.measure.display import both, filled, in_a_sentence, show
from rules.measure.quantity import Units
from rules.sheet import FIELDS, STEPS, Sheet
from rules.tables.sources import Grade


@dataclass(frozen=True, slots=True)
class Finding:
    """What one check says of a sheet, in words.

    change: what to do about it, empty when nothing. waits_for and estimated_from: dotted field names.
    """

    check: str
    step: str
    title: str
    verdict: Verdict
    text: str
    change: str
    source: str
    grade: Grade
    waits_for: tuple[str, ...] = ()
    estimated_from: tuple[str, ...] = ()


_STEP_ORDER = {step.name: place for place, step in enumerate(STEPS)}


@dataclass(frozen=True, slots=True)
class Judged:
    """A sheet with everything worked out and judged. `findings` come worst first, then in step order."""

    sheet: Sheet
    worked: Worked
    findings: tuple[Finding, ...]
    verdict: SheetVerdict
    shown_in: Units


def judge(sheet: Sheet, shown_in: Units | None = None, before: Judged | None = None) -> Judged:
    """Work out and judge a whole sheet. shown_in: the units the words are written in; the sheet's own by default.

    before: the same sheet judged before some of its answers changed; what they cannot change is taken from it.
    """
    graph, units = trade(), shown_in or sheet.shown_in
    if before is None or before.shown_in != units:
        worked = graph.work_out(sheet.answers)
        findings = [_finding(graph, node, worked, units) for node in graph.checks.values()]
    else:
        worked, touched = graph.work_again(before.worked, sheet.answers)
        known = {finding.check: finding for finding in before.findings}
        findings = [
            _finding(graph, node, worked, units) if name in touched or name not in known else known[name]
            for name, node in graph.checks.items()
        ]
    findings.sort(key=lambda finding: (WORST_FIRST.index(finding.verdict), _STEP_ORDER[finding.step]))
    return Judged(sheet, worked, tuple(findings), _verdict(sheet, findings), units)


def _verdict(sheet: Sheet, findings: Iterable[Finding]) -> SheetVerdict:
    """An entry that cannot be read leaves the sheet unfinished, wherever it stands."""
    verdicts = {finding.verdict for finding in findings}
    if "stop" in verdicts:
        return "stop"
    if sheet.missing or sheet.faults:
        return "unfinished"
    return "watch" if verdicts & {"watch", "waiting"} else "good"


def _finding(graph: Graph, node: Node, worked: Worked, units: Units) -> Finding:
    note: CheckNote = node.note
    judgement = graph.ask_check(node, worked)
    estimated = worked.estimated.get(node.name, ())
    waits: tuple[str, ...] = ()
    verdict: Verdict
    if judgement is not None:
        verdict, text, change = _in_words(graph, node, judgement, worked, estimated, units)
    elif node.name in worked.broken:
        verdict = "stop"
        text, change = _broken(worked, worked.broken[node.name], units)
    elif node.name in worked.not_here:
        verdict, text, change = "not for this build", f"{_sentence(reason(worked.not_here[node.name], units))}.", ""
    else:
        verdict, waits = "waiting", worked.waits[node.name]
        text, change = f"Waits for {and_list(waits)}.", ""
    return Finding(node.name, note.step, note.title, verdict, text, change, note.source, note.grade, waits, estimated)


def _broken(worked: Worked, why: Reason, units: Units) -> tuple[str, str]:
    """What is said of answers that cannot stand together; and, apart from that, of a fault in the program."""
    told = reason(why, units)
    name, _, refused = told.partition(" could not be worked out: ")
    if name in worked.crashed or not refused:
        return (
            f"Not judged: {told}.",
            "Check the entries it rests on. If they are right, this is a fault in the program: do not build on it.",
        )
    return (
        f"As entered it cannot be worked out: {refused}.",
        "Put right the entries this rests on. If they are right, change the part: nothing vouches for it as it is.",
    )


def _in_words(
    graph: Graph, node: Node, judgement: Judgement, worked: Worked, estimated: tuple[str, ...], units: Units
) -> tuple[Verdict, str, str]:
    """The judgement's sentences with every figure filled in; capped at `watch` when it rests on an estimate."""
    figures = _figures(graph, node, judgement, worked, units)
    verdict, text, change = judgement.verdict, judgement.text.format_map(figures), judgement.change.format_map(figures)
    best: Verdict = node.note.best
    if verdict in ("stop", "watch") and verdict != best and node.note.try_changing:
        offers = remedies(graph, node, worked, units)
        if offers:
            change = f"{change} Would be {best} with {'; or with '.join(offers)}."
    if estimated:
        verdict = "watch" if verdict == "good" else verdict
        text = f"{text} This rests on an estimate."
        change = f"Measure {and_list(estimated)}. {change}".strip()
    return verdict, text, change


def _figures(graph: Graph, node: Node, judgement: Judgement, worked: Worked, units: Units) -> Mapping[str, str]:
    figures = words_of(node.member)
    figures |= {name: both(number, unit, units) for name, (number, unit) in judgement.figures.items()}
    for given in node.inputs:
        found = worked.known.get(given.origin)
        if isinstance(found, float):
            figures[given.parameter] = both(found, graph.units[given.origin], units)
    return figures


def reason(why: Reason, units: Units) -> str:
    """Why something is not worked out, in words with the sheet's units.

    >>> reason(Reason("the arms lock at {locks} bump", {"locks": (76.2, "mm")}), "inch")
    'the arms lock at 3 in (76.2 mm) bump'
    """
    return filled(why, why.figures, units)


def why_not(name: str, judged: Judged) -> str:
    """Why a value is not there: what failed, or why the question does not arise; empty where it is not for either."""
    why = judged.worked.broken.get(name) or judged.worked.not_here.get(name)
    return reason(why, judged.shown_in) if why else ""


@cache
def label(name: str) -> str:
    """A field's label as words in a sentence, with its step where two steps ask the same: "wheel bolt circle"."""
    words = in_a_sentence(FIELDS[name].label)
    twice = sum(asked.label == FIELDS[name].label for asked in FIELDS.values()) > 1
    return f"{FIELDS[name].step.replace('_', ' ')} {words}" if twice else words


def and_list(names: Iterable[str]) -> str:
    """Fields as a list in words."""
    words = [label(name).replace(",", "") for name in names]
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


def shown(wanted: Name, judged: Judged, units: Units | None = None) -> str:
    """A worked-out value or a field's answer as text in the given units; empty when it is not known."""
    found = answer(judged.worked.known, wanted)
    if found is None:
        return ""
    if isinstance(found, float):
        return show(found, wanted.unit, units or judged.shown_in)
    if isinstance(found, bool):
        return "yes" if found else "no"
    return str(getattr(found, "text", found))


def shown_in_both(wanted: Name, judged: Judged) -> str:
    """A number as text in the sheet's units and in the other ones; empty when it is not known."""
    found = answer(judged.worked.known, wanted)
    return "" if found is None else both(found, wanted.unit, judged.shown_in)
