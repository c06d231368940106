"""A changed copy is judged no further than it takes to refuse it, kept, and counted."""

import pytest

from rules.judging.judge import Finding, Judged, judge
from rules.judging.trials import NoLongerWanted, Spent, Trials
from tests.support.base_sheet import MOVING, changed
from tests.support.judging import judged_document

BARREL = {"rotor.diameter": "345 mm"}
"""Larger than goes into the barrel of the base sheet's wheel: a stop that needs nothing heavy."""


@pytest.fixture(scope="module")
def moving() -> Judged:
    return judged_document(changed(MOVING))


def a_finding(judged: Judged) -> Finding:
    return next(one for one in judged.findings if one.check == "camber-change")


def test_a_copy_with_a_new_stop_in_its_light_half_is_judged_no_further(moving: Judged) -> None:
    after = Trials(moving).of(BARREL, a_finding(moving))
    assert not after.whole and "stop" in {one.verdict for one in after.findings}


def test_a_copy_that_holds_is_judged_whole_and_as_from_the_beginning(moving: Judged) -> None:
    after = Trials(moving).of({"arms.bump_travel": "100 mm"}, a_finding(moving))
    fresh = judge(after.sheet, after.shown_in, advice=False)
    assert after.whole and {one.key: one.verdict for one in after.findings} == {
        one.key: one.verdict for one in fresh.findings
    }


def test_a_copy_is_judged_once_and_costs_nothing_again(moving: Judged) -> None:
    trials = Trials(moving)
    first = trials.of({"arms.bump_travel": "100 mm"}, a_finding(moving))
    left = trials.left
    assert trials.of({"arms.bump_travel": "100 mm"}, a_finding(moving)) is first and trials.left == left


def test_a_copy_left_by_another_finding_is_as_dear_as_a_new_one(moving: Judged) -> None:
    """Else a finding among many would be told more than by itself, and which came first would decide it."""
    trials = Trials(moving)
    first = trials.of({"arms.bump_travel": "100 mm"}, a_finding(moving))
    left = trials.left
    trials.begin()
    assert trials.of({"arms.bump_travel": "100 mm"}, a_finding(moving)) is first and trials.left == left


def test_a_copy_judged_farther_for_one_finding_is_refused_for_the_next_where_it_would_be_by_itself(
    moving: Judged,
) -> None:
    trials = Trials(moving)
    refused = trials.of(BARREL, a_finding(moving))
    heavy = next(one for one in moving.findings if one.check in refused.worked.put_off)
    assert heavy.check not in trials.as_far_as(BARREL, heavy).worked.put_off
    trials.begin()
    assert trials.of(BARREL, a_finding(moving)) is refused


def test_what_is_spent_ends_the_search(moving: Judged) -> None:
    with pytest.raises(Spent):
        Trials(moving, left=0).of(BARREL, a_finding(moving))


def test_nobody_waits_any_more(moving: Judged) -> None:
    with pytest.raises(NoLongerWanted):
        Trials(moving, wanted=lambda: False).spend(1)


def test_all_gaps_cost_more_than_one_and_one_more_than_what_moves_nothing(moving: Judged) -> None:
    left = []
    for name in ("corner_room", "tyre_upper_arm_gap", "moving_front", "pivot_offset"):
        trials = Trials(moving)
        trials.spend_on((name,))
        left.append(trials.left)
    assert left == sorted(left) and len(set(left)) == len(left)
