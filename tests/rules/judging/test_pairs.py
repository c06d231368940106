"""The second of two changes that are tried together."""

from types import SimpleNamespace
from typing import Any, cast

import pytest

from rules.judging import proposals
from rules.judging.following import Candidate
from rules.judging.probe import Score
from rules.judging.proposals import _Search

STOP, WATCH, GOOD = 1, 2, 3
HERE = Score(STOP, -5.0)


def candidate(name: str, score: Score) -> Candidate:
    return Candidate({name: 1.0}, score, 1.0)


FOUND = [
    candidate("arms.good", Score(GOOD, 1.0)),
    Candidate({"arms.good": 2.0, "arms.moved": 1.0}, Score(GOOD, 1.0), 1.0),
    candidate("arms.moved", Score(GOOD, 1.0)),
    candidate("arms.watch", Score(WATCH, -1.0)),
    candidate("arms.nearer", Score(STOP, -2.0)),
    candidate("arms.as_it_was", HERE),
]


@pytest.mark.parametrize(("most", "seconds"), [(1, ["arms.good"]), (2, ["arms.good", "arms.watch"]),
                                               (6, ["arms.good", "arms.watch"])])  # fmt: skip
def test_a_second_change_brings_a_better_verdict_and_moves_nothing_that_the_first_has_moved(
    monkeypatch: pytest.MonkeyPatch, most: int, seconds: list[str]
) -> None:
    """What is nearer to good and still a stop would be one more try for nothing."""

    def searched(trials: object, after: object, finding: object) -> Any:
        probe = SimpleNamespace(here=lambda: HERE, fields=())
        return SimpleNamespace(probe=probe, rounds=lambda fields: iter([FOUND]))

    monkeypatch.setattr(proposals, "_Search", searched)
    nothing = cast(Any, None)
    first = cast(_Search, SimpleNamespace(trials=None))
    assert _Search._mending(first, nothing, nothing, {"arms.moved": 3.0}, most) == [{name: 1.0} for name in seconds]
