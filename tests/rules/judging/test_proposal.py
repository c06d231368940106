"""What a change costs other findings, counted from the sheet as it was first.

By hand from the base sheet: barrel 360 mm, rotor 280 mm, so the caliper stands (360 - 280) / 2 - its reach inside the barrel;
6 mm or more is good, less than 3 mm a stop.
"""

from rules.judging.judge import Judged
from rules.judging.proposal import DEEPER, Moved, compared, deeper, nearer_a_stop
from rules.judging.proposal_words import outcome_words
from tests.support.base_sheet import changed
from tests.support.judging import judged_document

BARREL = "caliper-clears-barrel"
OTHER = {"pivots.castor": "1 deg"}
"""Something to be mended, so that the caliper is another finding."""


def with_reach(reach: str) -> Judged:
    return judged_document(changed({**OTHER, "caliper.reach_above_rotor": reach}))


def stops(before: Judged, after: Judged, first: Judged | None = None) -> list[Moved]:
    mended = next(one for one in before.findings if one.check == "castor-usual")
    return [one for one in deeper(before, after, mended, first) if one.key == BARREL]


def test_small_steps_into_a_stop_count_from_where_the_first_began() -> None:
    """Reach 50 mm leaves -10 mm, 16 short of good, of which 2 % are 0.32 mm. Two steps of 0.25 mm are 0.5 mm."""
    first, second, third = map(with_reach, ("50 mm", "50.25 mm", "50.5 mm"))
    assert 0.25 < 16 * DEEPER < 0.5
    assert not stops(first, second) and not stops(second, third)
    assert [(one.before, one.after) for one in stops(second, third, first)] == [("stop", "stop")]
    assert stops(first, third) == stops(second, third, first)


def test_what_was_gained_meanwhile_is_not_to_be_lost_again() -> None:
    """Opened 16 mm short, now 11 short: 0.5 mm of that is more than 2 %, however much worse it was."""
    first, now, after = map(with_reach, ("50 mm", "45 mm", "45.5 mm"))
    assert stops(now, after, first)
    assert not stops(now, with_reach("44.9 mm"), first)


def test_what_is_better_than_now_is_never_deeper_even_if_worse_than_at_first() -> None:
    first, now, after = map(with_reach, ("45 mm", "50 mm", "49.75 mm"))
    assert not stops(now, after, first)


def test_a_watch_that_moves_nearer_to_a_stop_is_told_and_hinders_no_offer() -> None:
    """Reach 35 mm leaves 5 mm, a watch; 36.5 mm leaves 3.5 mm, still one."""
    before = judged_document(changed({**OTHER, "caliper.reach_above_rotor": "35 mm"}))
    after = judged_document(changed({"caliper.reach_above_rotor": "36.5 mm"}))
    mended = next(one for one in before.findings if one.check == "castor-usual")
    (told,) = (one for one in nearer_a_stop(before, after, mended) if one.key == BARREL)
    assert (told.before, told.after) == ("watch", "watch")
    offer = compared(before, after, mended, {"pivots.castor": "6 deg", "caliper.reach_above_rotor": "36.5 mm"}, "good")
    assert told in offer.worse and offer.may_be_offered
    assert any("Caliper inside the wheel barrel (nearer to a stop)" in words for words in outcome_words(offer))
    assert not any(one.key == BARREL for one in nearer_a_stop(after, before, mended))
