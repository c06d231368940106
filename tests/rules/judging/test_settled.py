"""When no more need be tried for a finding: one offer mends it, and has no other cost; when no pairs: one mends it."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import product
from types import SimpleNamespace
from typing import Any, cast

import pytest

from rules.judging import proposals
from rules.judging.probe import RANK
from rules.judging.proposal import Moved, Proposal
from rules.judging.proposals import KEPT_FOR_PAIRS, ROUNDS, _Search

MENDS = Proposal((), "stop", "good", "")
FALLS_SHORT: dict[str, Any] = {
    "after": "watch",
    "worse": (Moved("castor-usual", "Castor", "good", "watch"),),
    "bought": ("another wheel",),
    "another_design": True,
}
"""What may be wrong with an offer, by its name there."""


def search(*offers: Proposal) -> _Search:
    return cast(_Search, SimpleNamespace(found=list(offers), probe=SimpleNamespace(best=RANK["good"])))


def settled(*offers: Proposal) -> bool:
    return _Search.is_settled.__get__(search(*offers))


def mended(*offers: Proposal) -> bool:
    return _Search.mends.__get__(search(*offers))


def test_an_offer_settles_it_only_where_nothing_at_all_is_wrong_with_it() -> None:
    for wrong in product((False, True), repeat=len(FALLS_SHORT)):
        short = {name: what for (name, what), is_so in zip(FALLS_SHORT.items(), wrong, strict=True) if is_so}
        assert settled(replace(MENDS, **short)) is not any(wrong), short


def test_one_of_several_is_enough_but_not_what_is_right_of_each() -> None:
    each = [replace(MENDS, **{name: what}) for name, what in FALLS_SHORT.items()]
    assert not settled() and not settled(*each)
    assert settled(*each, MENDS)


def test_an_offer_mends_it_whatever_it_costs_and_one_to_a_watch_does_not() -> None:
    in_part, *whole = [replace(MENDS, **{name: what}) for name, what in FALLS_SHORT.items()]
    assert all(mended(one) and mended(in_part, one) and mended(one, in_part) for one in (MENDS, *whole))
    assert not mended() and not mended(in_part) and not mended(in_part, in_part)


@pytest.mark.parametrize(
    ("mends", "is_settled", "left", "rounds", "cut_short"),
    [
        (False, False, KEPT_FOR_PAIRS, 5, False),  # all of them, with just as much left as pairs need
        (True, False, KEPT_FOR_PAIRS, ROUNDS, False),  # something mends it, at a cost: one more round is looked through
        (True, True, KEPT_FOR_PAIRS, 1, False),
        (False, False, KEPT_FOR_PAIRS - 1, 1, True),
        (True, True, KEPT_FOR_PAIRS - 1, 1, False),
    ],
)
def test_how_many_rounds_are_looked_through(
    monkeypatch: pytest.MonkeyPatch, mends: bool, is_settled: bool, left: int, rounds: int, cut_short: bool
) -> None:
    """Of five there are."""
    gone: list[int] = []

    def each(_: object) -> Iterator[int]:
        for number in range(5):
            gone.append(number)
            yield number

    found = SimpleNamespace(
        mends=mends, is_settled=is_settled, found=[], cut_short=False, tiers=lambda: (("arms.a",),), rounds=each,
        offers=lambda _: None, pairs=lambda: None, into_usual=lambda: [],
    )  # fmt: skip
    found.looked = lambda: found
    monkeypatch.setattr(proposals, "_Search", lambda *_: found)
    looked: Any = proposals._looked_into(
        cast(Any, SimpleNamespace(left=left, judged=None)), cast(Any, SimpleNamespace(check="castor-usual"))
    )
    assert (len(gone), looked.cut_short) == (rounds, cut_short)
