"""Changes that would make a finding better: each tried on a copy of the whole sheet before anybody is told of it.

First one lever after another is moved until the finding's own check is satisfied; that is quick. What is found so is put
in a copy as it would be typed, and everything is judged again: a change that brings a new stop or goes deeper into one, or
leaves something unjudged that was judged, is not offered. Where nothing alone will do, two are tried together.
"""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field

from rules.graph.results import JUDGED, Verdict
from rules.judging.following import Candidate, after_a_stride, follow
from rules.judging.judge import Finding, Judged, judge
from rules.judging.levers import Answers, Lever, as_typed, best_places, levers
from rules.judging.probe import RANK, Probe, Score
from rules.judging.reader import check_id
from rules.judging.trade import trade
from rules.sheet.changed import with_entries
from rules.sheet.choosable import bought_anew

SHOWN = 3
"""Changes offered for a finding at most."""
TRIED = 5
"""Changes tried on the whole sheet, for a finding and again for pairs: each takes the working of everything that moves."""
FOLLOWED = 6
"""Levers followed to their end where asking is slow; those that help most."""
FARTHER = 2
"""How often a change that was not enough on the whole sheet is made larger."""
MEASURED_TWICE = frozenset(
    check_id(f"{which}-joint-{way}-as-taped") for which in ("upper", "lower") for way in ("inboard", "height", "ahead")
)
"""Two measurements of one thing: which of them is right is found with the tape, and not by choosing."""
DEEPER = 0.02
"""Of what a stop is short of good by: more than this is further into the stop."""


@dataclass(frozen=True, slots=True)
class EntryChange:
    """One entry changed. now, to: as typed, with units; now is empty where nothing is entered."""

    name: str
    now: str
    to: str


@dataclass(frozen=True, slots=True)
class Moved:
    """A finding with another verdict than before; key: see `Finding`. before, after: "good" where there was no such finding.

    Both are "stop" for one that is further from good than it was.
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
    neither of these. bought: what has to be bought.
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

    @property
    def helps(self) -> bool:
        """Whether the finding is better for it."""
        return RANK[self.after] > RANK[self.before]

    @property
    def may_be_offered(self) -> bool:
        """Whether it helps, brings no new stop and no blind spot, and goes no deeper into a stop that is there."""
        deeper = any(moved.before == moved.after == "stop" for moved in self.worse)
        return self.helps and not self.stops and not self.unjudged and not deeper


@dataclass(frozen=True, slots=True)
class Looked:
    """What was found for one finding.

    offers: at most a few, the least change first. tried: fields that were moved. nearest: what came nearest where there is
    no offer; None where nothing came near. measure: fields to measure, where only that would make it better.
    """

    finding: Finding
    offers: tuple[Proposal, ...] = ()
    tried: tuple[str, ...] = ()
    nearest: Proposal | None = None
    measure: tuple[str, ...] = ()


RED: tuple[Verdict, ...] = ("stop", "watch")
UNJUDGED: tuple[Verdict, ...] = ("waiting", "not judged")


def in_trouble(judged: Judged) -> tuple[Finding, ...]:
    """The findings that a change may make better, worst first."""
    return tuple(finding for finding in judged.findings if finding.verdict in RED)


class NoLongerWanted(Exception):  # noqa: N818 - not a fault: somebody went elsewhere
    """Raised out of a search that nobody waits for any more."""


def look_for(judged: Judged, finding: Finding, wanted: Callable[[], bool] = lambda: True) -> Looked:
    """Changes for one finding of a sheet that is judged whole.

    wanted: asked before each step; raises NoLongerWanted once it says no.
    """
    if finding.asks_about:  # a question; another figure would be no answer to it
        return Looked(finding, measure=(finding.asks_about,))
    if finding.check in MEASURED_TWICE:
        return Looked(finding, measure=trade().fields_of(finding.check)[:1])
    probe = Probe(judged.worked, finding.check, finding.about)
    here = probe.here()
    if (
        here.rank >= probe.best
    ):  # as good as its check can say: what holds it down is an estimate, or that nobody published
        return Looked(finding, measure=finding.estimated_from)
    search = _Search(judged, finding, wanted)
    found = search.singles(probe, here)
    offers = search.offers(found)
    if not any(RANK[offer.after] == probe.best for offer in offers):
        offers += search.pairs(probe.best)
    tried = tuple(dict.fromkeys(name for lever in search.levers for name in lever.fields))
    kept = tuple(sorted(offers, key=_least_first)[:SHOWN])
    return Looked(finding, kept, tried, None if kept else search.nearest(), ())


def _least_first(offer: Proposal) -> tuple[int, int, int]:
    """Of like ones the first found stays first: the least effort."""
    return -RANK[offer.after], len(offer.bought), len(offer.worse)


@dataclass(slots=True)
class _Search:
    """The search for one finding: what was tried on the whole sheet is kept, for pairs and for the nearest miss."""

    judged: Judged
    finding: Finding
    wanted: Callable[[], bool]
    levers: list[Lever] = field(default_factory=list)
    refused: list[tuple[Proposal, Judged, Answers]] = field(default_factory=list)
    partly: list[Candidate] = field(default_factory=list)

    def singles(self, probe: Probe, here: Score) -> list[Candidate]:
        """Places of single levers that satisfy the check by itself, the least effort first."""
        units = self.judged.sheet.shown_in
        self.levers = levers(self.judged.worked, probe.fields, units)
        found = [
            Candidate(place, score, 1.0)
            for place in best_places(self.judged.worked, probe.fields, units)
            if (score := probe.asking(place)(place)) > here
        ]
        found = sorted(found, key=lambda one: one.score, reverse=True)[:1]
        for lever in self._worth_following(probe, here):
            self._go_on()
            reached, nearest = follow(lever, probe, here)
            if reached is not None:
                found.append(reached)
            if nearest is not None and (reached is None or nearest.score > reached.score):
                self.partly.append(nearest)
        found += [one for one in self.partly if one.score.rank > here.rank]
        found.sort(key=lambda one: (-one.score.rank, _bought(one.answers), one.effort))
        return found

    def _worth_following(self, probe: Probe, here: Score) -> list[Lever]:
        """The levers that do something when moved by a stride, those that help most first."""
        helps: list[tuple[Score, int, Lever]] = []
        for place, lever in enumerate(self.levers):
            self._go_on()
            score = after_a_stride(lever, probe, here)
            if score is not None and (score > here or not here.in_hand):
                helps.append((score, -place, lever))
        helps.sort(key=lambda one: one[:2], reverse=True)
        return [lever for _, _, lever in helps[:FOLLOWED]]

    def offers(self, found: Iterable[Candidate]) -> list[Proposal]:
        """Those that hold on the whole sheet."""
        offers: list[Proposal] = []
        for tried, candidate in enumerate(found):
            if tried == TRIED or len(offers) == SHOWN:
                break
            for answers in _and_farther(candidate):
                proposal, after = self.attempt(answers)
                if proposal.may_be_offered:
                    offers.append(proposal)
                    break
                self.refused.append((proposal, after, answers))
                if proposal.helps:  # larger would only bring the same trouble
                    break
        return offers

    def attempt(self, answers: Answers) -> tuple[Proposal, Judged]:
        """A change put in a copy as it would be typed, and the whole of it judged again."""
        self._go_on()
        judged = self.judged
        typed = {name: as_typed(name, answer, judged.sheet.shown_in) for name, answer in answers.items()}
        sheet = with_entries(judged.sheet, typed)
        after = judge(sheet, judged.shown_in, judged, light=True, advice=False)
        if not _new_stops(judged, after):  # the quick half alone may be enough to refuse it
            after = judge(sheet, judged.shown_in, after, advice=False)
        return compared(judged, after, self.finding, typed), after

    def _go_on(self) -> None:
        if not self.wanted():
            raise NoLongerWanted

    def pairs(self, goal: int) -> list[Proposal]:
        """Two levers together: one that went wrong elsewhere with one that mends that, or two that each do part of it."""
        offers: list[Proposal] = []
        for tried, answers in enumerate(self._pairs(goal)):
            if tried == TRIED or offers:
                break
            proposal, after = self.attempt(answers)
            if proposal.may_be_offered:
                offers.append(proposal)
            else:
                self.refused.append((proposal, after, answers))
        return offers

    def _pairs(self, goal: int) -> Iterator[Answers]:
        helped = [(after, answers, proposal) for proposal, after, answers in self.refused if proposal.helps]
        for after, first, proposal in sorted(helped, key=lambda one: len(one[2].stops))[:2]:
            if len(proposal.stops) == 1:
                stop = next(found for found in after.findings if found.key == proposal.stops[0].key)
                yield from ({**first, **second} for second in _mending(after, stop, first, self.wanted, 3))
        for one in sorted(self.partly, key=lambda one: one.score, reverse=True)[:2]:
            typed = {name: as_typed(name, to, self.judged.sheet.shown_in) for name, to in one.answers.items()}
            after = judge(with_entries(self.judged.sheet, typed), self.judged.shown_in, self.judged, advice=False)
            finding = next((found for found in after.findings if found.key == self.finding.key), None)
            if finding is not None:
                yield from (
                    {**one.answers, **second} for second in _mending(after, finding, one.answers, self.wanted, 2)
                )

    def nearest(self) -> Proposal | None:
        """What came nearest: it helps, and brings the fewest new stops; else what leaves the finding least bad."""
        if self.refused:
            return min(
                (one for one, _, _ in self.refused), key=lambda one: (not one.helps, len(one.stops), len(one.entries))
            )
        for one in sorted(self.partly, key=lambda one: one.score, reverse=True)[:1]:
            return self.attempt(one.answers)[0]
        return None


def _mending(after: Judged, finding: Finding, moved: Answers, wanted: Callable[[], bool], most: int) -> list[Answers]:
    """Single levers that mend a finding of a changed sheet, those that were moved already left alone."""
    probe = Probe(after.worked, finding.check, finding.about)
    search, here = _Search(after, finding, wanted), probe.here()
    found = [one for one in search.singles(probe, here) if not moved.keys() & one.answers.keys()]
    return [one.answers for one in found if one.score.rank > here.rank][:most]


def _bought(answers: Answers) -> int:
    return sum(bool(bought_anew(name)) for name in answers)


def _and_farther(candidate: Candidate) -> Iterator[Answers]:
    """A change, then the same made larger, for where the whole sheet asks for a little more than the check alone."""
    yield candidate.answers
    lever, n = candidate.lever, candidate.n
    for _ in range(FARTHER if lever is not None else 0):
        assert lever is not None
        n += (1 if n > 0 else -1) * max(1, abs(n) // 4)
        farther = lever.at(n)
        if farther is None:
            return
        yield farther


def compared(before: Judged, after: Judged, finding: Finding, typed: dict[str, str]) -> Proposal:
    """What a change came to. typed: the entries changed, as typed."""
    entries = tuple(EntryChange(name, now, to) for name, to in typed.items() if (now := _shown_now(before, name)) != to)
    had, has = {found.key: found for found in before.findings}, {found.key: found for found in after.findings}
    moved = [
        Moved(key, (has.get(key) or had[key]).title, _verdict(had, key), _verdict(has, key))
        for key in dict.fromkeys((*had, *has))
    ]
    others = [one for one in moved if one.key != finding.key and one.before != one.after]
    target = has.get(finding.key)
    return Proposal(
        entries,
        finding.verdict,
        _verdict(has, finding.key) if target is None or target.verdict in RANK else "stop",
        "" if target is None else target.text,
        better=tuple(one for one in others if RANK.get(one.after, 3) > RANK.get(one.before, 3)),
        worse=(
            *(one for one in others if one.after == "watch" and one.before not in RED),
            *_deeper(before, after, finding),
        ),
        stops=_new_stops(before, after),
        unjudged=tuple(one.title for one in others if after.whole and one.before in JUDGED and one.after in UNJUDGED),
        bought=tuple(dict.fromkeys(part for name in typed if (part := bought_anew(name)))),
    )


def _deeper(before: Judged, after: Judged, finding: Finding) -> Iterator[Moved]:
    """Stops that stay, and are further from good."""
    if not after.whole:
        return
    stays = {found.key for found in after.findings if found.verdict == "stop"}
    for had in before.findings:
        if had.verdict == "stop" and had.key in stays and had.key != finding.key:
            was, now = (Probe(one.worked, had.check, had.about).here().in_hand for one in (before, after))
            if now < was - DEEPER * abs(was):
                yield Moved(had.key, had.title, "stop", "stop")


def _shown_now(judged: Judged, name: str) -> str:
    """What stands there, in the sheet's units; empty where nothing does."""
    if name in judged.sheet.answers:
        return as_typed(name, judged.sheet.answers[name], judged.sheet.shown_in)
    return str(judged.sheet.typed.get(name, ""))


def _verdict(found: dict[str, Finding], key: str) -> Verdict:
    return found[key].verdict if key in found else "good"


def _new_stops(before: Judged, after: Judged) -> tuple[Moved, ...]:
    had = {found.key: found.verdict for found in before.findings}
    return tuple(
        Moved(found.key, found.title, had.get(found.key, "good"), "stop")
        for found in after.findings
        if found.verdict == "stop" and had.get(found.key) != "stop"
    )
