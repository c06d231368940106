"""Which way an entry is worth following after one stride: an entry of 10 mm, a stride of 4, and a finding worked out by hand."""

from collections.abc import Callable
from typing import Any, cast

import pytest

from rules.judging.following import after_a_stride
from rules.judging.levers import Lever
from rules.judging.probe import Probe, Score

STOP, WATCH, GOOD = 1, 2, 3


class Asked:
    """A finding that depends on the one entry."""

    def __init__(self, score: Callable[[float], Score]) -> None:
        self._score = score

    def asking(self, fields: tuple[str, ...]) -> Callable[[Any], Score]:
        return lambda answers: self._score(answers["planted.length"])


def stride(score: Callable[[float], Score], least: float = 0.0, most: float = 100.0) -> object:
    """After a stride from 10, within what can be typed."""

    def at(n: int) -> dict[str, Any] | None:
        return {"planted.length": 10.0 + n} if least <= 10.0 + n <= most else None

    return after_a_stride(Lever(("planted.length",), at, 4), cast(Probe, Asked(score)), score(10.0))


@pytest.mark.parametrize(
    ("score", "expected"),
    [
        # 20 is wanted: 14 is 6 short
        (lambda x: Score(STOP, x - 20), (Score(STOP, -6.0), (1,))),
        # 5 at most: 14 is 9 over where 10 was 5 over, so 6 is taken to be 1 over, without asking
        (lambda x: Score(STOP, 5 - x), (Score(STOP, -1.0), (-1,))),
        # it has no effect: either way
        (lambda x: Score(WATCH, -3.0), (Score(WATCH, -3.0), (1, -1))),
        # words alone, no number: 6 is asked too, and good
        (lambda x: Score(GOOD if x < 8 else STOP, 0.0), (Score(GOOD, 0.0), (-1,))),
        # words alone that stay the same both ways
        (lambda x: Score(STOP, 0.0), (Score(STOP, 0.0), (1, -1))),
        # longer it is not judged any more, shorter it is good
        (
            lambda x: Score(0, 0.0) if x > 10 else Score(GOOD, 1.0) if x < 10 else Score(WATCH, -1.0),
            (Score(GOOD, 1.0), (-1,)),
        ),
    ],
)
def test_which_way_is_better(score: Callable[[float], Score], expected: object) -> None:
    assert stride(score) == expected


def test_where_one_way_cannot_be_typed() -> None:
    assert stride(lambda x: Score(STOP, 5 - x), least=8.0) == (Score(STOP, -9.0), (1, -1))
    assert stride(lambda x: Score(STOP, 5 - x), most=12.0) == (Score(STOP, -1.0), (-1,))
    assert stride(lambda x: Score(STOP, 5 - x), least=8.0, most=12.0) is None
