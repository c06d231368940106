"""One change and what comes of it on this very sheet: what gets better, what worse, and what has to be bought."""

from collections.abc import Iterator, Mapping

from rules.graph.results import JUDGED, Verdict
from rules.judging.judge import Finding, Judged
from rules.judging.levers import as_typed
from rules.judging.probe import RANK, Probe
from rules.measure.records import dataclass
from rules.sheet.choosable import bought_anew

RED: tuple[Verdict, ...] = ("stop", "watch")
UNJUDGED: tuple[Verdict, ...] = ("waiting", "not judged")
DEEPER = 0.02
"""Of what a stop is short of good by: more than this is further into the stop, a watch nearer to one."""
MOVED = 1e-6
"""The same, of what counts as moved at all."""


@dataclass(frozen=True, slots=True)
class EntryChange:
    """One entry changed. now, to: as typed, with units; now is empty where nothing is entered."""

    name: str
    now: str
    to: str


@dataclass(frozen=True, slots=True)
class Moved:
    """A finding with another verdict than before; key: see `Finding`. before, after: "good" where there was no such finding.

    Both are "stop", or "watch", for one that is further from good than it was.
    """

    key: str
    title: str
    before: Verdict
    after: Verdict


@dataclass(frozen=True, slots=True)
class Proposal:
    """A change, and what comes of it on this very sheet.

    before, after: the finding's verdict. then: what its check says afterwards; empty where it has nothing to say any more.
    better, worse: other findings. unjudged: titles of checks that could not judge any more. stops: new stops; an offer has
    neither of these. bought: what has to be bought. whole: False where a part of the sheet was enough to refuse it; what is
    said of the rest is then what was expected. another_design: so large a change that it is rather another design.
    """

    entries: tuple[EntryChange, ...]
    before: Verdict
    after: Verdict
    then: str
    better: tuple[Moved, ...] = ()
    worse: tuple[Moved, ...] = ()
    stops: tuple[Moved, ...] = ()
    unjudged: tuple[str, ...] = ()
    bought: tuple[str, ...] = ()
    whole: bool = True
    another_design: bool = False

    @property
    def helps(self) -> bool:
        """Whether the finding is better for it."""
        return RANK[self.after] > RANK[self.before]

    @property
    def may_be_offered(self) -> bool:
        """Whether it helps, brings no new stop and no blind spot, and goes no deeper into a stop that is there."""
        deeper = any(moved.before == moved.after == "stop" for moved in self.worse)
        return self.whole and self.helps and not self.stops and not self.unjudged and not deeper


def compared(
    before: Judged,
    after: Judged,
    finding: Finding,
    typed: Mapping[str, str],
    expected: Verdict,
    first: Judged | None = None,
) -> Proposal:
    """What a change came to. typed: the entries changed, as typed. expected: of a finding that is not judged so far.

    first: the sheet as it was before any change, where other changes were made before this one.
    """
    entries = tuple(EntryChange(name, now, to) for name, to in typed.items() if (now := _shown_now(before, name)) != to)
    had, has = {found.key: found for found in before.findings}, {found.key: found for found in after.findings}
    put_off = {key for found in (had, has) for key, one in found.items() if one.check in after.worked.put_off}
    moved = [
        Moved(key, (has.get(key) or had[key]).title, _verdict(had, key), _verdict(has, key))
        for key in dict.fromkeys((*had, *has))
    ]
    others = [one for one in moved if one.key != finding.key and one.before != one.after and one.key not in put_off]
    target = has.get(finding.key)
    then = _verdict(has, finding.key) if target is None or target.verdict in RANK else "stop"
    return Proposal(
        entries,
        finding.verdict,
        expected if finding.check in after.worked.put_off else then,
        "" if target is None else target.text,
        better=tuple(
            one for one in others if one.after not in UNJUDGED and RANK.get(one.after, 3) > RANK.get(one.before, 3)
        ),
        worse=(
            *(one for one in others if one.after == "watch" and one.before not in RED),
            *deeper(before, after, finding, first),
            *nearer_a_stop(before, after, finding),
        ),
        stops=new_stops(before, after),
        unjudged=tuple(one.title for one in others if after.whole and one.before in JUDGED and one.after in UNJUDGED),
        bought=tuple(dict.fromkeys(part for name in typed if (part := bought_anew(name)))),
        whole=after.whole,
    )


def deeper(before: Judged, after: Judged, finding: Finding, first: Judged | None = None) -> Iterator[Moved]:
    """Stops that stay, and are further from good; of what is judged so far.

    What may be lost is counted from the sheet as it was first, so that many small steps do not add up; from where it stands
    now, if that is better or it was no stop then.
    """
    stops_first = {found.key for found in first.findings if found.verdict == "stop"} if first else set[str]()
    for had, was, now in _staying(before, after, finding, "stop"):
        best = was
        if first is not None and had.key in stops_first:
            best = max(was, _in_hand(first, had))
        if now < was - MOVED * abs(was) and now < best - DEEPER * abs(best):
            yield Moved(had.key, had.title, "stop", "stop")


def nearer_a_stop(before: Judged, after: Judged, finding: Finding) -> Iterator[Moved]:
    """Watches that stay, and are further from good, which is nearer to a stop; of what is judged so far."""
    for had, was, now in _staying(before, after, finding, "watch"):
        if now < was - DEEPER * abs(was):
            yield Moved(had.key, had.title, "watch", "watch")


def _staying(
    before: Judged, after: Judged, finding: Finding, verdict: Verdict
) -> Iterator[tuple[Finding, float, float]]:
    """Other findings that keep this verdict, with how far inside good they were and are."""
    stays = {found.key: found for found in after.findings if found.verdict == verdict}
    for had in before.findings:
        if had.verdict == verdict and had.key != finding.key and stays.get(had.key, had) is not had:
            yield had, _in_hand(before, had), _in_hand(after, had)


def _in_hand(judged: Judged, finding: Finding) -> float:
    return Probe(judged.worked, finding.check, finding.about).here().in_hand


def _shown_now(judged: Judged, name: str) -> str:
    """What stands there, in the sheet's units; empty where nothing does."""
    if name in judged.sheet.answers:
        return as_typed(name, judged.sheet.answers[name], judged.sheet.shown_in)
    return str(judged.sheet.typed.get(name, ""))


def _verdict(found: dict[str, Finding], key: str) -> Verdict:
    return found[key].verdict if key in found else "good"


def new_stops(before: Judged, after: Judged) -> tuple[Moved, ...]:
    """What is a stop and was none; of what is judged so far."""
    had = {found.key: found.verdict for found in before.findings}
    return tuple(
        Moved(found.key, found.title, had.get(found.key, "good"), "stop")
        for found in after.findings
        if found.verdict == "stop" and had.get(found.key) != "stop"
    )
