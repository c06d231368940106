"""Runs every check on a sheet: findings, worst first, and the verdict of the whole."""

from collections import Counter
from collections.abc import Container, Iterable
from functools import cache

from rules.checks import FIRST, GROUP_OF
from rules.graph.declare import CheckNote, word_of
from rules.graph.engine import Graph
from rules.graph.node import Node
from rules.graph.results import WORST_FIRST, Judgement, Reason, SheetVerdict, Verdict
from rules.graph.worked import Worked
from rules.judging.banding import with_the_weakest_watched
from rules.judging.finding import Finding as Finding
from rules.judging.moved_most import moved_most
from rules.judging.reader import Name, answer, name
from rules.judging.scope import Groups, scope, standings
from rules.judging.trade import trade
from rules.measure.display import in_a_sentence, show
from rules.measure.quantity import Units
from rules.measure.records import dataclass, replace
from rules.measure.said import capital, filled, in_units, worked_out, written
from rules.sheet import FIELDS, STEPS, Sheet
from rules.values.wheel_end.hub_bolts import ON_A_RECTANGLE

BEING_WORKED_OUT = "Being worked out."
"""What is said of a check that rests on something put off."""
_WORSE = {verdict: place for place, verdict in enumerate(WORST_FIRST)}
_STEP_ORDER = {step.name: place for place, step in enumerate(STEPS)}


@dataclass(frozen=True, slots=True)
class Judged:
    """A sheet with everything worked out and judged. `findings` come worst first, then in step order; see `_order`.

    missing: fields without a readable answer that this sheet needs, in order: those every sheet needs, and once strength is
    asked for those its checks want.
    """

    sheet: Sheet
    worked: Worked
    findings: tuple[Finding, ...]
    missing: tuple[str, ...]
    groups: Groups
    verdict: SheetVerdict
    shown_in: Units

    @property
    def asks_about(self) -> tuple[str, ...]:
        """Dotted names of the answers the builder is asked to confirm: unusual by themselves, or beside another."""
        odd = (finding.asks_about for finding in self.findings if finding.asks_about)
        return tuple(dict.fromkeys((*self.sheet.unusual, *odd)))

    @property
    def scope(self) -> str:
        """What the verdict covers. It stands wherever the verdict does."""
        return scope(self.groups)

    @property
    def whole(self) -> bool:
        """Whether everything is judged, and nothing heavy still to be worked out."""
        return not self.worked.put_off


def judge(
    sheet: Sheet,
    shown_in: Units | None = None,
    before: Judged | None = None,
    *,
    light: bool = False,
    leaving: frozenset[str] = frozenset(),
    advice: bool = True,
) -> Judged:
    """Work out and judge a whole sheet. shown_in: the units the words are written in; the sheet's own by default.

    before: the same sheet judged before some of its answers changed; what they cannot change is taken from it.
    light: put off what is heavy to work out. What rests on it is then said to be being worked out, and the sheet is no
    better than unfinished. What is kept or printed is never judged so. leaving: values to put off where there is a sheet before.
    advice: False leaves out which answer moves a finding most, for a sheet that is only tried.
    """
    graph, units, known = trade(), shown_in or sheet.shown_in, {**sheet.answers, **sheet.facts}
    if before is None:
        worked = graph.work_out(known, light=light)
        findings = [found for node in graph.checks.values() for found in _findings(graph, node, worked, units, advice)]
    else:
        worked, touched = graph.work_again(before.worked, known, light=light, leaving=leaving)
        found_before: dict[str, list[Finding]] = {}
        for finding in before.findings if before.shown_in == units else ():  # in other units every word is new
            found_before.setdefault(finding.check, []).append(finding)
        findings = [
            found
            for name, node in graph.checks.items()
            for found in (
                _findings(graph, node, worked, units, advice)
                if name in touched or name not in found_before
                else found_before[name]
            )
        ]
    asked_about = {*sheet.unusual, *(finding.asks_about for finding in findings if finding.verdict == "watch")}
    findings = with_the_weakest_watched(findings, worked.known, asked_about, and_list)
    findings.sort(key=lambda finding: _order(finding, graph, worked))
    findings = _cause_and_what_follows(findings, graph, worked, units)
    missing = missing_answers(sheet, findings, worked.stood_in)
    worst = {finding.check: finding for finding in reversed(findings)}.values()
    groups = standings((finding.group, finding.verdict) for finding in worst)
    verdict = _verdict(sheet, missing, findings, whole=not worked.put_off)
    return Judged(sheet, worked, tuple(findings), missing, groups, verdict, units)


def _order(finding: Finding, graph: Graph, worked: Worked) -> tuple[int, bool, bool, int, int]:
    """Worst first; what could not be judged at all after what was, for its cause is likely there; then by step.

    Of the stops first those that say what cannot be entered so, for the rest may only follow from them; of the stops of a
    step first what rests on the fewest entries.
    """
    failed, stop = finding.check in worked.broken, finding.verdict == "stop"
    follows = stop and not failed and finding.check not in FIRST
    rests_on = len(graph.needs(finding.check)) if stop else 0
    return _WORSE[finding.verdict], failed, follows, _STEP_ORDER[finding.step], rests_on


def _cause_and_what_follows(findings: list[Finding], graph: Graph, worked: Worked, units: Units) -> list[Finding]:
    """The findings, those that failed for one reason told as one cause and what follows from it.

    The cause is the stop that judges nothing but what the reason says to put right, else the first that failed for it.
    """
    failed: dict[Reason, list[Finding]] = {}
    for finding in findings:
        if finding.check in worked.broken and finding.check not in worked.crashed:
            failed.setdefault(worked.broken[finding.check], []).append(finding)
    if not failed:
        return findings
    stops = [one for one in findings if one.verdict == "stop" and one.check not in worked.broken]
    told: dict[str, Finding] = {}
    for why, ones in failed.items():
        cause = next((one for one in stops if _judges_only(graph, one.check, why.change)), None)
        for one in ones:
            text, change = _failed(graph, graph.checks[one.check], worked, units)
            if cause is not None:
                text = f"Not judged. This follows from “{cause.title}”: {reason(why, units)}."
            told[one.check] = replace(one, text=text, change=change)
            cause = cause or one
    return [told.get(one.check, one) for one in findings]


def _judges_only(graph: Graph, check: str, remedy: str) -> bool:
    """Whether every field a check rests on is one that a remedy names."""
    fields = graph.fields_of(check)
    return bool(fields) and all(label(name) in remedy for name in fields)


_STRENGTH_STEPS = frozenset(
    ("loads", "upright", "bolts", "weld_upper", "weld_lower", "weld_steering_arm", "weld_caliper_bracket", "brakes")
)
"""Steps that say what the car is to stand. One answer in any of them asks for all."""
_TAPED_STEPS = frozenset(("plate", "upright"))
_USE, _HARD_USES = name("job.use"), ("dunes", "race")
"""Uses in which a front upright is not sound until its strength has been judged."""
_ASKED = name("loads.judge_strength")
_MOUNT_BOLTS, _CIRCLE, _PLACES = name("hub.mount_bolts"), name("hub.mount_circle"), name("hub.mount_places")


def strength_is_asked(sheet: Sheet) -> bool:
    """Whether strength has to be judged before the sheet is finished: one answer about it, or a use that is hard on it."""
    steps = {asked.partition(".")[0] for asked in sheet.answers}
    return answer(sheet.answers, _USE) in _HARD_USES or not _STRENGTH_STEPS.isdisjoint(steps)


def missing_answers(sheet: Sheet, findings: Iterable[Finding], stood_in: Container[str] = ()) -> tuple[str, ...]:
    """Fields without an answer that this sheet needs, in order: see `Judged`. stood_in: those that a value answers."""
    missing = {name for name in sheet.missing if name not in stood_in}
    if strength_is_asked(sheet):
        waiting = (
            (name, finding.group) for finding in findings for name in finding.waits_for if name not in sheet.answers
        )
        missing |= {name for name, group in waiting if _needed(name, group)}
    if answer(sheet.answers, _USE) in _HARD_USES and answer(sheet.answers, _ASKED) is False:
        missing.add(_ASKED.origin)  # a no to judging what such a use breaks finishes nothing
    unplaced = not {_CIRCLE.origin, _PLACES.origin} & sheet.answers.keys()
    if answer(sheet.answers, _MOUNT_BOLTS) not in (None, ON_A_RECTANGLE) and unplaced:
        missing.add(_CIRCLE.origin)  # their two spacings place no other number of them
    return tuple(name for name in FIELDS if name in missing)


def _needed(name: str, group: str) -> bool:
    """Whether a sheet whose strength is asked for is unfinished without a field that a check of a group waits for.

    What can be taped at plate and beam is needed even where it is asked for further on: else a stop goes with the figure.
    """
    step = name.partition(".")[0]
    if FIELDS[name].further:
        return group == "strength" and step in _TAPED_STEPS
    return group == "strength" or step in _STRENGTH_STEPS


def _verdict(sheet: Sheet, missing: tuple[str, ...], findings: Iterable[Finding], *, whole: bool) -> SheetVerdict:
    """An entry that cannot be read leaves the sheet unfinished, wherever it stands; so does what is not worked out yet."""
    verdicts = {finding.verdict for finding in findings}
    if "stop" in verdicts:
        return "stop"
    if missing or sheet.faults or not whole:
        return "unfinished"
    return "watch" if verdicts & {"watch", "waiting", "shown"} else "good"


def _findings(graph: Graph, node: Node, worked: Worked, units: Units, advice: bool) -> list[Finding]:
    """What one check says: one finding, or one for each thing it judges. Only of the first is told what moves it most."""
    judgements = graph.ask_each(node, worked)
    if judgements:
        first, *rest = judgements
        return [
            _judged(graph, node, first, worked, units, advice),
            *(_judged(graph, node, judgement, worked, units, False) for judgement in rest),
        ]
    waits: tuple[str, ...] = ()
    verdict: Verdict
    if node.name in worked.broken:
        verdict, (text, change) = "stop", _failed(graph, node, worked, units)
    elif node.name in worked.not_here:
        verdict, text, change = "does not apply", f"{capital(reason(worked.not_here[node.name], units))}.", ""
    elif node.name in worked.not_judged:
        verdict, waits = "not judged", worked.waits[node.name]
        text = f"{capital(reason(worked.not_judged[node.name], units))}."
        change = f"To have it judged, enter {and_list(waits)}." if waits else ""
    elif node.name in worked.put_off:
        verdict, text, change = "waiting", BEING_WORKED_OUT, ""
    else:
        verdict, waits = "waiting", worked.waits[node.name]
        text, change = f"Waits for {and_list(waits)}.", ""
    estimated = worked.estimated.get(node.name, ())
    return [_found(node, verdict, text, change, waits, estimated)]


def _found(
    node: Node,
    verdict: Verdict,
    text: str,
    change: str,
    waits: tuple[str, ...],
    estimated: tuple[str, ...],
    asks_about: str = "",
    about: str = "",
) -> Finding:
    note: CheckNote = node.note
    title, shows = f"{note.title}: {about}" if about else note.title, verdict == "shown"
    return Finding(
        node.name, note.step, GROUP_OF[node.name], title, verdict, text, change, note.source, note.grade, waits, estimated,
        asks_about, about, shows,
    )  # fmt: skip


def _failed(graph: Graph, node: Node, worked: Worked, units: Units) -> tuple[str, str]:
    """What to say, and what to do, where something a check rests on failed. Only a crash is a fault in the program.

    To check are, of the entries that what failed first rests on, those out of their usual range; else those it takes itself;
    where it takes none, those of the check's own step.
    """
    why = worked.broken[node.name]
    if node.name in worked.crashed:
        change = "Check the entries it rests on. If they are right, this is a fault in the program: do not build on it."
        return f"Not judged: {reason(why, units)}.", change
    first = next((graph.values[name] for name in graph.needs(node.name) if name in worked.broken), None)
    below = graph.fields_of(first.name) if first else ()
    known = worked.known
    odd = [name for name in below if name in known and graph.fields[name].is_unusual(known[name], known)]
    asked = odd or ([given.origin for given in first.inputs if given.origin in graph.fields] if first else [])
    asked = asked or [name for name in graph.fields_of(node.name) if graph.fields[name].step == node.note.step]
    entered = [name for name in asked if name in worked.known]
    told = f"Check {and_list(entered)}{', out of the usual range' if odd else ''}." if entered else ""
    change = why.change or told or "Check the entries it rests on."
    return f"{capital(reason(why, units))}.", change


def _judged(graph: Graph, node: Node, judgement: Judgement, worked: Worked, units: Units, advice: bool) -> Finding:
    """One judgement as a finding. It rests on the estimates of what it names, or of all its check takes."""
    names = judgement.rests_on or (node.name,)
    estimated = tuple(dict.fromkeys(field for name in names for field in worked.estimated.get(name, ())))
    verdict, text, change = _in_words(graph, node, judgement, worked, estimated, units, advice)
    asks_about = judgement.asks_about
    if asks_about in worked.stood_in:  # only what somebody entered can be confirmed as it stands
        entered = [name for name in graph.fields_of(asks_about) if name in worked.given]
        asks_about, change = "", f"Measure again what this is worked out from: {and_list(entered or (asks_about,))}."
    return _found(node, verdict, text, change, (), estimated, asks_about, judgement.about)


def _in_words(
    graph: Graph,
    node: Node,
    judgement: Judgement,
    worked: Worked,
    estimated: tuple[str, ...],
    units: Units,
    advice: bool,
) -> tuple[Verdict, str, str]:
    """The judgement's sentences with every figure filled in; capped at `watch` when it rests on an estimate."""
    figures = _Figures(graph, node, judgement, worked, units)
    verdict = judgement.verdict
    text, change = (in_units(said, units).format_map(figures) for said in (judgement.text, judgement.change))
    best: Verdict = node.note.best
    if verdict in ("stop", "watch") and verdict != best:
        if advice and judgement.again:
            change = f"{change} {moved_most(graph, judgement, worked, units)}".strip()
        if not change and node.note.try_changing:
            change = f"What can be changed for it: {and_list(node.note.try_changing)}."
    if estimated:
        verdict = "watch" if verdict == "good" else verdict
        text = f"{text} This rests on an estimate."
        change = f"{to_measure(estimated)} {change}".strip()
    return verdict, text, change


class _Figures(dict[str, str]):
    """The words for the names in a text's braces, each put into words when the text asks for it: most are never asked for."""

    def __init__(self, graph: Graph, node: Node, judgement: Judgement, worked: Worked, units: Units) -> None:
        super().__init__()
        self._graph, self._node, self._judgement, self._worked, self._units = graph, node, judgement, worked, units

    def __missing__(self, name: str) -> str:
        origin = next((given.origin for given in self._node.inputs if given.parameter == name), "")
        found = self._worked.known.get(origin)
        if isinstance(found, float):
            words = show if origin in FIELDS else worked_out
            self[name] = words(found, self._graph.units[origin], self._units)
        elif name in self._judgement.figures:
            self[name] = written(self._judgement.figures[name], self._units)
        else:
            self[name] = word_of(name, self._node.member)
        return self[name]


def reason(why: Reason, units: Units) -> str:
    """Why something is not worked out, in words with the sheet's units.

    >>> reason(Reason("the arms lock at {locks} bump", {"locks": (76.2, "mm")}), "inch")
    'the arms lock at 3 in bump'
    """
    return filled(why, why.figures, units)


def why_not(name: str, judged: Judged) -> str:
    """Why a value is not there: what failed, why it does not apply or is not judged; empty where it is for none of these."""
    worked = judged.worked
    why = worked.broken.get(name) or worked.not_here.get(name) or worked.not_judged.get(name)
    return reason(why, judged.shown_in) if why else ""


_LABELS = Counter(asked.label for asked in FIELDS.values())


@cache
def label(name: str) -> str:
    """A field's label as words in a sentence, with its step where two steps ask the same: "wheel bolt circle"."""
    words = in_a_sentence(FIELDS[name].label)
    return f"{FIELDS[name].step.replace('_', ' ')} {words}" if _LABELS[FIELDS[name].label] > 1 else words


def and_list(names: Iterable[str]) -> str:
    """Fields as a list in words."""
    words = [label(name).replace(",", "") for name in names]
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"


def to_measure(estimated: Iterable[str]) -> str:
    """What to do about estimates, in a sentence or two: fields with a figure are measured, the others are answered.

    >>> to_measure(("pivots.upper_radius", "hub.stub_shaft_fitted"))
    'Measure upper housing reach. Answer stub shaft fitted.'
    """
    unmeasured = {"choice", "yes or no"}
    by_word = {"Measure": [name for name in estimated if FIELDS[name].kind not in unmeasured]}
    by_word["Answer"] = [name for name in estimated if FIELDS[name].kind in unmeasured]
    return " ".join(f"{word} {and_list(names)}." for word, names in by_word.items() if names)


def shown(wanted: Name, judged: Judged, units: Units | None = None) -> str:
    """A worked-out value or a field's answer as text in the given units; empty when it is not known."""
    found = answer(judged.worked.known, wanted)
    if found is None:
        return ""
    if isinstance(found, float):
        return show(found, wanted.unit, units or judged.shown_in)
    if isinstance(found, bool):
        return "yes" if found else "no"
    if words_in := getattr(found, "words_in", None):
        return str(words_in(units or judged.shown_in))
    return str(getattr(found, "text", found))
