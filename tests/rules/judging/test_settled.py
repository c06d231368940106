"""When no more need be tried for a finding: one offer mends it, and has no other cost."""

from dataclasses import replace
from itertools import product
from types import SimpleNamespace
from typing import Any, cast

from rules.judging.probe import RANK
from rules.judging.proposal import Moved, Proposal
from rules.judging.proposals import _Search

MENDS = Proposal((), "stop", "good", "")
FALLS_SHORT: dict[str, Any] = {
    "after": "watch",
    "worse": (Moved("castor-usual", "Castor", "good", "watch"),),
    "bought": ("another wheel",),
    "another_design": True,
}
"""What may be wrong with an offer, by its name there."""


def settled(*offers: Proposal) -> bool:
    search = SimpleNamespace(found=list(offers), probe=SimpleNamespace(best=RANK["good"]))
    return _Search.is_settled.__get__(cast(_Search, search))


def test_an_offer_settles_it_only_where_nothing_at_all_is_wrong_with_it() -> None:
    for wrong in product((False, True), repeat=len(FALLS_SHORT)):
        short = {name: what for (name, what), is_so in zip(FALLS_SHORT.items(), wrong, strict=True) if is_so}
        assert settled(replace(MENDS, **short)) is not any(wrong), short


def test_one_of_several_is_enough_but_not_what_is_right_of_each() -> None:
    each = [replace(MENDS, **{name: what}) for name, what in FALLS_SHORT.items()]
    assert not settled() and not settled(*each)
    assert settled(*each, MENDS)
