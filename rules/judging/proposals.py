"""Changes that would make a finding better: each tried on a copy of the whole sheet before anybody is told of it.

First one lever after another is moved until the finding's own check is satisfied; that is quick. What is found so is put
in a copy as it would be typed, and everything is judged again: a change that brings a new stop or goes deeper into one, or
leaves something unjudged that was judged, is not offered. Where nothing alone will do, two are tried together.
"""

from collections.abc import Callable, Iterable, Iterator

from rules.checks.agreement.geometry import AS_TAPED
from rules.graph.results import Verdict
from rules.judging.following import Candidate, after_a_stride, best_nearby, follow
from rules.judging.judge import Finding, Judged
from rules.judging.levers import Answers, Lever, best_places, into_usual, levers, now_of
from rules.judging.probe import RANK, Probe, Score
from rules.judging.proposal import RED, EntryChange, Proposal, compared
from rules.judging.reader import check_id
from rules.judging.second_look import UNUSUAL, is_settled_by_looking, second_look
from rules.judging.trade import trade
from rules.judging.trials import ALONE, Spent, Trials
from rules.measure.records import dataclass, field, replace
from rules.sheet import FIELDS
from rules.sheet.choosable import bought_anew, is_laid_out, of_an_own_part, too_large_to_be_meant

SHOWN = 3
"""Changes offered for a finding at most."""
TRIED = 5
"""Changes tried on the whole sheet, for a finding and again for pairs: each takes the working of everything that moves."""
FOLLOWED = 6
"""Levers followed to their end before what they came to is tried; those that help most first, then the next as many."""
ROUNDS = 2
"""Times so many are followed though something was found that makes other things worse."""
KEPT_FOR_PAIRS = ALONE // 3
"""Units that single levers leave over."""
FARTHER = 2
"""How often a change that was not enough on the whole sheet is made larger."""
MEASURED_TWICE = {check_id(tie.id): (tie.one, tie.other) for tie in AS_TAPED}
"""Two measurements of one thing: which of them is right is found with the tape, and not by choosing."""

SUM_UP = frozenset((check_id("strength-least"), check_id("what-gives-first")))
"""What only puts the figures of other findings together: what helps those helps there, and nothing is tried for it."""


@dataclass(frozen=True, slots=True)
class Looked:
    """What was found for one finding.

    offers: at most a few, the least change first. tried: fields that were moved. nearest: what came nearest where there is
    no offer; None where nothing came near. measure: fields to measure, where only that would make it better. second_look:
    answers that may be right as they stand, and want a yes. cut_short: not all was tried.
    """

    finding: Finding
    offers: tuple[Proposal, ...] = ()
    tried: tuple[str, ...] = ()
    nearest: Proposal | None = None
    measure: tuple[str, ...] = ()
    second_look: tuple[str, ...] = ()
    cut_short: bool = False


def in_trouble(judged: Judged) -> tuple[Finding, ...]:
    """The findings that a change may make better, worst first."""
    return tuple(finding for finding in judged.findings if finding.verdict in RED)


def look_for(
    judged: Judged, finding: Finding, wanted: Callable[[], bool] = lambda: True, first: Judged | None = None
) -> Looked:
    """Changes for one finding of a sheet that is judged whole.

    wanted: asked before each step; raises NoLongerWanted once it says no. first: the sheet as it was before earlier changes.
    """
    trials = Trials(judged, wanted=wanted, first=first)
    return _nothing_to_choose(trials, finding) or _looked_into(trials, finding)


def look_for_each(judged: Judged, findings: Iterable[Finding]) -> Iterator[Looked]:
    """Changes for many findings of one sheet, one after another: for each what it gets where it is asked for by itself.

    What was tried for one is kept for those after it, which saves time and changes nothing that is told.
    """
    trials = Trials(judged)
    for finding in findings:
        trials.begin()
        yield _nothing_to_choose(trials, finding) or _looked_into(trials, finding)


def _nothing_to_choose(trials: Trials, finding: Finding) -> Looked | None:
    """Where no other figure would be an answer: what to measure, or to look at again, or what others answer."""
    if finding.check in SUM_UP:
        return Looked(finding)
    if is_settled_by_looking(finding) or (finding.asks_about and finding.check in MEASURED_TWICE):
        return Looked(finding, measure=(finding.asks_about,), second_look=second_look(trials.judged, finding))
    if finding.check in MEASURED_TWICE:
        return Looked(finding, measure=_both_measured(*MEASURED_TWICE[finding.check]))
    probe = Probe(trials.judged.worked, finding.check, finding.about)
    if probe.here().rank >= probe.best:  # what holds it down is an estimate, or that nobody published
        return Looked(finding, measure=finding.estimated_from)
    return None


def _both_measured(one: str, other: str) -> tuple[str, ...]:
    """Both; where the other is worked out, what it is worked out from of the same step."""
    step = trade().fields[one].step
    fields = (other,) if other in trade().fields else trade().fields_of(other)
    return tuple(dict.fromkeys((one, *(field for field in fields if trade().fields[field].step == step))))


def _looked_into(trials: Trials, finding: Finding) -> Looked:
    search = _Search(trials, trials.judged, finding)
    try:
        if finding.check == UNUSUAL:
            search.offers(search.into_usual())
        for fields in search.tiers():
            for number, found in enumerate(search.rounds(fields), 1):
                search.offers(found)
                if search.is_settled or (search.mends and number >= ROUNDS):
                    break
                if trials.left < KEPT_FOR_PAIRS:
                    search.cut_short = True
                    break
            if search.found:
                break
        if not search.mends:
            search.pairs()
        if not search.found and finding.check != UNUSUAL:
            search.offers(search.into_usual())
    except Spent:
        search.cut_short = True
    return search.looked()


def meant(found: list[Proposal]) -> list[Proposal]:
    """All but what is rather another design where something smaller helps as much and costs no more, and what adds to another
    offer and helps no more than that."""

    def gains(offer: Proposal) -> tuple[int, int]:
        return RANK[offer.after], -len(offer.worse)

    best = max((gains(offer) for offer in found if not offer.another_design), default=(0, 0))
    kept = [one for one in found if not one.another_design or gains(one) > best]
    return [
        one
        for one in kept
        if not any({*other.entries} < {*one.entries} and RANK[other.after] >= RANK[one.after] for other in kept)
    ]


def _least_first(offer: Proposal) -> tuple[int, int, int]:
    """Of like ones the first found stays first: the least effort."""
    return -RANK[offer.after], len(offer.bought), len(offer.worse)


@dataclass(slots=True)
class _Search:
    """The search for one finding: what was tried on the whole sheet is kept, for pairs and for the nearest miss.

    judged: where it is searched from; the sheet itself, or a changed copy of it where a second lever is looked for.
    """

    trials: Trials
    judged: Judged
    finding: Finding
    tried: list[str] = field(default_factory=list)
    seen: set[tuple[EntryChange, ...]] = field(default_factory=set)
    found: list[Proposal] = field(default_factory=list)
    refused: list[tuple[Proposal, Judged, Answers]] = field(default_factory=list)
    partly: list[Candidate] = field(default_factory=list)
    cut_short: bool = False
    probe: Probe = field(init=False)

    def __post_init__(self) -> None:
        self.probe = Probe(self.judged.worked, self.finding.check, self.finding.about, self.trials.spend_on)

    def tiers(self) -> tuple[tuple[str, ...], ...]:
        """The fields to move, together; where a part is too weak its own sizes first, and all others only if those do nothing."""
        fields = self.probe.fields
        if self.finding.group != "strength":
            return (fields,)
        own = tuple(filter(of_an_own_part, fields))
        return own, tuple(name for name in fields if name not in own)

    @property
    def mends(self) -> bool:
        """Whether something found mends it wholly."""
        return any(RANK[offer.after] == self.probe.best for offer in self.found)

    @property
    def is_settled(self) -> bool:
        """Whether something mends it wholly, with nothing to buy and nothing that gets worse, so that no more need be tried."""
        return any(
            RANK[offer.after] == self.probe.best and not offer.worse and not offer.bought and not offer.another_design
            for offer in self.found
        )

    def rounds(self, fields: tuple[str, ...]) -> Iterator[list[Candidate]]:
        """Places of single levers that satisfy the check by itself, the least effort first; of some levers, then of more."""
        units, probe = self.judged.sheet.shown_in, self.probe
        here, moved = probe.here(), levers(self.judged.worked, fields, units)
        self.tried += (name for lever in moved for name in lever.fields)
        found = [
            Candidate(place, score, 1.0)
            for place in best_places(self.judged.worked, fields, units)
            if (score := probe.asking(place)(place)) > here
        ]
        found = [
            Candidate(*best_nearby(one.answers, one.score, probe, units), 1.0)
            for one in sorted(found, key=lambda one: one.score, reverse=True)[:1]
        ]
        worth = self._worth_following(moved, here)
        for first in range(0, max(len(worth), 1), FOLLOWED):
            for lever, ways in worth[first : first + FOLLOWED]:
                reached, nearest = follow(lever, probe, here, ways)
                if reached is not None:
                    found.append(reached)
                if nearest is not None and (reached is None or nearest.score > reached.score):
                    self.partly.append(nearest)
                    found += [nearest] if nearest.score.rank > here.rank else []
            yield sorted(found, key=self._in_order)
            found = []

    def into_usual(self) -> list[Candidate]:
        """Every answer that is unusual made usual, where all of them say how the front end is laid out and one is behind this."""
        sheet = self.judged.sheet
        if not all(map(is_laid_out, sheet.unusual)) or not {*sheet.unusual, UNUSUAL} & {
            *self.probe.fields,
            self.finding.check,
        }:
            return []
        usual = {name: ends for name in sheet.unusual if (ends := FIELDS[name].usual_among(sheet.answers))}
        answers = into_usual(self.judged.worked, usual, sheet.shown_in)
        if answers is None:
            return []
        self.tried += answers
        return [Candidate(answers, Score(self.probe.best, 0.0), 1.0)]

    def _in_order(self, one: Candidate) -> tuple[int, bool, int, float]:
        """What is too large to be meant comes last."""
        return -one.score.rank, self._too_large(one.answers), _bought(one.answers), one.effort

    def _too_large(self, answers: Answers) -> bool:
        return any(too_large_to_be_meant(name, now_of(self.judged.worked, name), to) for name, to in answers.items())

    def _worth_following(self, moved: list[Lever], here: Score) -> list[tuple[Lever, tuple[int, ...]]]:
        """The levers that do something when moved by a stride, those that help most first; and which ways to go."""
        helps: list[tuple[Score, int, Lever, tuple[int, ...]]] = []
        for place, lever in enumerate(moved):
            after = after_a_stride(lever, self.probe, here)
            if after is not None and (after[0] > here or not here.in_hand):
                helps.append((after[0], -place, lever, after[1]))
        helps.sort(key=lambda one: one[:2], reverse=True)
        return [(lever, ways) for _, _, lever, ways in helps]

    def offers(self, found: Iterable[Candidate]) -> None:
        """Keep those that hold on the whole sheet."""
        had = len(self.found)
        for tried, candidate in enumerate(found):
            if len(self.found) - had == SHOWN:
                break
            if tried == TRIED:
                self.cut_short = True
                break
            for answers in _and_farther(candidate):
                proposal = self.attempt(answers, _VERDICTS[candidate.score.rank])
                if proposal.may_be_offered or proposal.helps:  # larger would only bring the same trouble
                    break

    def attempt(self, answers: Answers, expected: Verdict) -> Proposal:
        """A change put in a copy as it would be typed, and the whole of it judged again; kept with the others."""
        typed = self.trials.typed(answers)
        after = self.trials.of(typed, self.finding)
        proposal = compared(self.judged, after, self.finding, typed, expected, self.trials.first)
        proposal = replace(proposal, another_design=self._too_large(answers))
        if proposal.entries in self.seen:
            return proposal
        self.seen.add(proposal.entries)
        if proposal.may_be_offered:
            self.found.append(proposal)
        else:
            self.refused.append((proposal, after, answers))
        return proposal

    def pairs(self) -> None:
        """Two levers together: one that went wrong elsewhere with one that mends that, or two that each do part of it."""
        best = _VERDICTS[self.probe.best]
        for tried, answers in enumerate(self._pairs()):
            if tried == TRIED:
                self.cut_short = True
                break
            if self.attempt(answers, best).may_be_offered:
                break

    def _pairs(self) -> Iterator[Answers]:
        helped = [(after, answers, proposal) for proposal, after, answers in self.refused if proposal.helps]
        for after, first, proposal in sorted(helped, key=lambda one: len(one[2].stops))[:2]:
            if len(proposal.stops) == 1:
                stop = next(found for found in after.findings if found.key == proposal.stops[0].key)
                yield from ({**first, **second} for second in self._mending(after, stop, first, 3))
        for one in sorted(self.partly, key=lambda one: one.score, reverse=True)[:2]:
            after = self.trials.as_far_as(self.trials.typed(one.answers), self.finding)
            finding = next((found for found in after.findings if found.key == self.finding.key), None)
            if finding is not None:
                yield from ({**one.answers, **second} for second in self._mending(after, finding, one.answers, 2))

    def _mending(self, after: Judged, finding: Finding, moved: Answers, most: int) -> list[Answers]:
        """Single levers that mend a finding of a changed copy, those that were moved already left alone."""
        search = _Search(self.trials, after, finding)
        here = search.probe.here()
        found = [one for one in next(search.rounds(search.probe.fields)) if not moved.keys() & one.answers.keys()]
        return [one.answers for one in found if one.score.rank > here.rank][:most]

    def looked(self) -> Looked:
        """What came of it."""
        tried = tuple(dict.fromkeys(self.tried)) if self.probe.moved or self.found or self.refused else ()
        kept = tuple(sorted(meant(self.found), key=_least_first)[:SHOWN])
        return Looked(
            self.finding,
            kept,
            tried,
            None if kept else self._nearest(),
            second_look=second_look(self.judged, self.finding),
            cut_short=self.cut_short and not kept,
        )

    def _nearest(self) -> Proposal | None:
        """What came nearest: it helps, and brings the fewest new stops; else what leaves the finding least bad."""
        if not self.refused and self.partly and not self.cut_short:
            best = max(self.partly, key=lambda one: one.score)
            try:
                self.attempt(best.answers, _VERDICTS[best.score.rank])
            except Spent:
                return None
        return min(
            (one for one, _, _ in self.refused),
            key=lambda one: (not one.helps, one.another_design, len(one.stops), len(one.entries)),
            default=None,
        )


_VERDICTS: dict[int, Verdict] = {3: "good", 2: "watch", 1: "stop", 0: "stop"}


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
