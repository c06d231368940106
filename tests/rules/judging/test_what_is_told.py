"""Which of the changes found are told, in what order, how many are tried, and what is told where none holds."""

from collections.abc import Iterator
from dataclasses import replace
from types import SimpleNamespace
from typing import Any, cast

import pytest

from rules.graph.results import Verdict
from rules.judging.finding import Finding
from rules.judging.following import Candidate
from rules.judging.judge import Judged
from rules.judging.probe import Score
from rules.judging.proposal import EntryChange, Moved, Proposal, compared, new_stops
from rules.judging.proposals import _Search, meant
from rules.judging.trials import Spent

STOP, WATCH, GOOD = 1, 2, 3
CASTOR, STUDS, WHEEL = "castor-usual", "stud-engagement", "wheel-bore"


def entry(name: str) -> EntryChange:
    return EntryChange(name, "1 mm", "2 mm")


def offer(*names: str, **changed: Any) -> Proposal:
    """A change of these entries that mends a stop, at no cost."""
    return replace(Proposal(tuple(map(entry, names)), "stop", "good", ""), **changed)


def costs(key: str, before: Verdict = "good", after: Verdict = "watch") -> tuple[Moved, ...]:
    return (Moved(key, key, before, after),)


def test_another_design_is_told_only_where_it_does_more_or_costs_less() -> None:
    small, large = offer("arms.a"), offer("arms.b", another_design=True)
    assert meant([small, large]) == [small] and meant([large]) == [large]
    in_part, dear = offer("arms.a", after="watch"), offer("arms.a", worse=costs(CASTOR))
    assert meant([in_part, large]) == [in_part, large]
    assert meant([dear, large]) == [dear, large]
    assert meant([dear, replace(large, worse=costs(STUDS))]) == [dear]


def test_what_adds_to_another_offer_is_told_only_where_it_helps_more() -> None:
    one, both = offer("arms.a"), offer("arms.a", "arms.b")
    assert meant([one, both]) == [one] and meant([both, one]) == [one]
    assert meant([replace(one, after="watch"), both]) == [replace(one, after="watch"), both]
    other = offer("arms.c", "arms.d")
    assert meant([one, other]) == [one, other]
    assert meant([one, one]) == [one, one]  # the same entries add nothing to one another


def search(**changed: Any) -> _Search:
    """A search as it stands when all was tried: nothing found."""
    levers = ["arms.a", "arms.b", "arms.a"]
    plain = {
        "found": [], "refused": [], "partly": [], "cut_short": False, "finding": None, "tried": levers,
        "judged": None, "probe": SimpleNamespace(moved=True, best=GOOD), "_nearest": lambda: None,
    }  # fmt: skip
    return cast(_Search, SimpleNamespace(**{**plain, **changed}))


@pytest.fixture
def looked(monkeypatch: pytest.MonkeyPatch) -> Any:
    from rules.judging import proposals

    monkeypatch.setattr(proposals, "second_look", lambda judged, finding: ())
    return _Search.looked


def test_three_offers_are_told_the_better_and_the_cheaper_first(looked: Any) -> None:
    """What it comes to counts before what has to be bought, and that before what gets worse; else what was found first."""
    plain, later = offer("arms.a"), offer("arms.b")
    bought, worse = offer("arms.c", bought=("wheel",)), offer("arms.d", worse=costs(CASTOR))
    in_part = offer("arms.e", after="watch")
    assert looked(search(found=[in_part, bought, worse, plain, later])).offers == (plain, later, worse)
    assert looked(search(found=[in_part, bought, worse])).offers == (worse, bought, in_part)
    assert looked(search(found=[later, plain])).offers == (later, plain)


def test_what_was_tried_is_told_once_each_and_only_where_it_did_anything(looked: Any) -> None:
    still = SimpleNamespace(moved=False, best=GOOD)
    assert looked(search()).tried == ("arms.a", "arms.b")
    assert looked(search(probe=still)).tried == ()
    assert looked(search(probe=still, found=[offer("arms.a")])).tried == ("arms.a", "arms.b")
    assert looked(search(probe=still, refused=[(offer("arms.a"), None, {})])).tried == ("arms.a", "arms.b")


def test_a_near_miss_and_that_it_was_cut_short_are_told_where_there_is_no_offer(looked: Any) -> None:
    miss, kept = offer("arms.a", after="stop"), offer("arms.b")
    found = looked(search(_nearest=lambda: miss, cut_short=True))
    assert found.nearest == miss and found.cut_short
    found = looked(search(_nearest=lambda: miss, cut_short=True, found=[kept]))
    assert found.nearest is None and not found.cut_short and found.offers == (kept,)
    assert not looked(search()).cut_short


def test_of_the_places_that_values_find_best_the_one_is_followed_that_its_check_likes_best(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """And only where it is better than what stands there: -2 and -3 are not, of a watch at -2."""
    from rules.judging import proposals

    at: dict[str, Score] = {f"arms.{name}": Score(WATCH, n) for name, n in (("a", -2.0), ("b", -1.0), ("c", -3.0))}
    at |= {"arms.d": Score(GOOD, 0.0), "arms.e": Score(STOP, -1.0)}
    monkeypatch.setattr(proposals, "best_places", lambda *_: [{name: 1.0} for name in at])
    monkeypatch.setattr(proposals, "best_nearby", lambda place, score, *_: (place, score))
    monkeypatch.setattr(proposals, "levers", lambda *_: [])
    probe = SimpleNamespace(
        here=lambda: Score(WATCH, -2.0), asking=lambda _: lambda place: next(at[name] for name in place)
    )
    judged = SimpleNamespace(sheet=SimpleNamespace(shown_in="metric"), worked=None)
    searched = search(probe=probe, judged=judged, _worth_following=lambda *_: [], _in_order=lambda one: 0, tried=[])
    first, *_ = _Search.rounds(searched, ())
    assert first == [Candidate({"arms.d": 1.0}, Score(GOOD, 0.0), 1.0)]


def nearest(*refused: Proposal, **changed: Any) -> Proposal | None:
    return _Search._nearest(search(refused=[(one, None, {}) for one in refused], **changed))


def test_the_near_miss_helps_is_no_other_design_brings_few_stops_and_moves_few_entries() -> None:
    stops = tuple(Moved(key, key, "good", "stop") for key in (CASTOR, STUDS))
    best = offer("arms.a", stops=stops[:1])
    two_entries = offer("arms.a", "arms.b", stops=stops[:1])
    two_stops = offer("arms.a", stops=stops)
    design = offer("arms.a", stops=stops[:1], another_design=True)
    no_help = offer("arms.a", after="stop")
    order = [best, two_entries, two_stops, design, no_help]
    for place in range(len(order)):
        assert nearest(*reversed(order[place:])) == order[place]
    assert nearest() is None


def test_what_came_nearest_by_itself_is_tried_where_nothing_else_was() -> None:
    low, high = (
        Candidate({f"arms.{name}": 1.0}, Score(WATCH, at), 1.0) for name, at in (("low", -2.0), ("high", -1.0))
    )
    tried: list[tuple[object, str]] = []
    nearest(partly=[low, high], attempt=lambda answers, expected: tried.append((answers, expected)))
    assert tried == [({"arms.high": 1.0}, "watch")]
    nearest(partly=[low], cut_short=True, attempt=lambda answers, expected: tried.append((answers, expected)))
    nearest(offer("arms.a"), partly=[low], attempt=lambda answers, expected: tried.append((answers, expected)))
    assert len(tried) == 1

    def spent(answers: object, expected: object) -> None:
        raise Spent

    assert nearest(partly=[low], attempt=spent) is None


def candidates(count: int) -> Iterator[Candidate]:
    return (Candidate({"arms.a": float(n)}, Score(GOOD, 0.0), 1.0) for n in range(count))


def offered(holds: Any, count: int) -> tuple[list[float], bool]:
    """Which of some changes were tried on the whole sheet, and whether it was cut short there."""
    tried: list[float] = []
    found: list[Proposal] = []

    def attempt(answers: Any, expected: str) -> Proposal:
        assert expected == "good"
        tried.append(answers["arms.a"])
        made = offer("arms.a", stops=() if holds(len(tried)) else costs(CASTOR, after="stop"))
        if made.may_be_offered:
            found.append(made)
        return made

    one = search(found=found, attempt=attempt)
    _Search.offers(one, candidates(count))
    return tried, one.cut_short


def test_three_that_hold_are_enough_and_five_are_tried() -> None:
    assert offered(lambda tried: True, 9) == ([0.0, 1.0, 2.0], False)
    assert offered(lambda tried: tried % 2 == 1, 9) == ([0.0, 1.0, 2.0, 3.0, 4.0], False)
    assert offered(lambda tried: False, 9) == ([0.0, 1.0, 2.0, 3.0, 4.0], True)
    assert offered(lambda tried: False, 5) == ([0.0, 1.0, 2.0, 3.0, 4.0], False)


def test_pairs_are_tried_until_one_holds_and_five_at_most() -> None:
    tried: list[int] = []

    def pairs(holds_at: int, count: int) -> tuple[int, bool]:
        tried.clear()

        def attempt(answers: Any, expected: str) -> Proposal:
            assert expected == "good"
            tried.append(answers)
            return offer("arms.a", stops=() if len(tried) == holds_at else costs(CASTOR, after="stop"))

        one = search(attempt=attempt, _pairs=lambda: iter(range(count)))
        _Search.pairs(one)
        return len(tried), one.cut_short

    assert [pairs(2, 9), pairs(9, 9), pairs(9, 5), pairs(5, 9)] == [(2, False), (5, True), (5, False), (5, False)]


def finding(check: str, verdict: Verdict, text: str = "") -> Finding:
    return Finding(check, "pivots", "steering", check.title(), verdict, text, "", "", "common practice")


def sheet(*findings: Finding, whole: bool = True, put_off: tuple[str, ...] = (), **typed: str) -> Judged:
    """A judged sheet on which nothing that is judged goes deeper."""
    return cast(
        Judged,
        SimpleNamespace(
            findings=findings,
            whole=whole,
            worked=SimpleNamespace(put_off=put_off),
            sheet=SimpleNamespace(answers={}, typed={name.replace("__", "."): text for name, text in typed.items()}),
            shown_in="metric",
        ),
    )


VERDICTS: list[tuple[Verdict, Verdict, str]] = [
    ("stop", "good", "better"), ("stop", "watch", "better"), ("watch", "good", "better"), ("watch", "shown", "better"),
    ("waiting", "stop", "stops"), ("good", "stop", "stops"), ("watch", "stop", "stops"),
    ("good", "watch", "worse"), ("shown", "watch", "worse"), ("not judged", "watch", "worse"),
    ("good", "waiting", "unjudged"), ("stop", "not judged", "unjudged"), ("waiting", "not judged", ""),
    ("good", "does not apply", ""), ("good", "shown", ""),
]  # fmt: skip


@pytest.mark.parametrize(("before", "after", "where"), VERDICTS)
def test_what_becomes_of_the_other_findings(before: Verdict, after: Verdict, where: str) -> None:
    was, now = finding(CASTOR, "stop"), finding(CASTOR, "good", "5 deg.")
    made = compared(
        sheet(was, finding(STUDS, before)), sheet(now, finding(STUDS, after)), was, {"pivots.castor": "5 deg"}, "watch"
    )
    assert (made.before, made.after, made.then, made.whole) == ("stop", "good", "5 deg.", True)
    told = Moved(STUDS, STUDS.title(), before, after)
    for name in ("better", "worse", "stops"):
        assert getattr(made, name) == ((told,) if name in where.split() else ()), name
    assert made.unjudged == ((told.title,) if "unjudged" in where else ())


def test_a_finding_that_is_gone_counts_as_good_and_a_new_one_as_good_before() -> None:
    was = finding(CASTOR, "stop")
    before, after = sheet(was, finding(STUDS, "watch")), sheet(finding(WHEEL, "stop"))
    made = compared(before, after, was, {}, "watch")
    assert (made.after, made.then) == ("good", "")
    assert made.better == (Moved(STUDS, STUDS.title(), "watch", "good"),)
    assert made.stops == new_stops(before, after) == (Moved(WHEEL, WHEEL.title(), "good", "stop"),)
    stays = sheet(finding(WHEEL, "stop"), finding(CASTOR, "stop"))
    assert [one.key for one in new_stops(sheet(finding(WHEEL, "stop")), stays)] == [CASTOR]


def test_a_finding_that_is_not_judged_any_more_is_no_better_than_a_stop() -> None:
    was = finding(CASTOR, "watch")
    made = compared(sheet(was), sheet(finding(CASTOR, "not judged")), was, {}, "good")
    assert made.after == "stop" and not made.helps


def test_what_is_not_worked_out_yet_is_as_expected_and_nothing_is_told_of_it() -> None:
    was, heavy = finding(CASTOR, "stop"), finding(STUDS, "good")
    part = sheet(finding(CASTOR, "waiting"), finding(STUDS, "waiting"), whole=False, put_off=(CASTOR, STUDS))
    made = compared(sheet(was, heavy), part, was, {}, "watch")
    assert (made.after, made.whole) == ("watch", False)
    assert made.better == made.worse == made.stops == () and made.unjudged == ()
    # what is not whole tells nothing of what could not be judged
    assert (
        compared(sheet(was, heavy), sheet(was, finding(STUDS, "waiting"), whole=False), was, {}, "good").unjudged == ()
    )


def test_only_entries_that_change_are_told_with_what_has_to_be_bought_once() -> None:
    was = finding(CASTOR, "stop")
    before = sheet(was, wheel__offset="10 mm", wheel__diameter="15 in", pivots__castor="4 deg")
    typed = {"wheel.offset": "20 mm", "wheel.diameter": "16 in", "pivots.castor": "4 deg", "plate.bore": "80 mm"}
    made = compared(before, sheet(was), was, typed, "good")
    assert made.entries == (
        EntryChange("wheel.offset", "10 mm", "20 mm"),
        EntryChange("wheel.diameter", "15 in", "16 in"),
        EntryChange("plate.bore", "", "80 mm"),
    )
    assert made.bought == ("wheel",)


@pytest.mark.parametrize(
    ("changed", "may"),
    [
        ({}, True), ({"worse": costs(CASTOR)}, True), ({"worse": costs(CASTOR, "watch", "watch")}, True),
        ({"worse": costs(CASTOR, "stop", "stop")}, False), ({"stops": costs(CASTOR, "good", "stop")}, False),
        ({"unjudged": ("Castor",)}, False), ({"whole": False}, False), ({"after": "stop"}, False), ({"after": "watch"}, True),
    ],
)  # fmt: skip
def test_what_may_be_offered(changed: dict[str, Any], may: bool) -> None:
    assert offer("arms.a", **changed).may_be_offered is may
