"""Which way a lever is worth following, and a narrow good place past which it gets worse again; figures by hand."""

from collections.abc import Callable, Iterable, Mapping
from types import SimpleNamespace
from typing import Any, cast

import pytest

from rules.judging.following import after_a_stride, best_nearby, follow
from rules.judging.levers import Lever
from rules.judging.probe import Probe, Score

NAME = "plate.width"
STOP, WATCH, GOOD = 1, 2, 3


class Valley:
    """Good within `wide` of a bottom, else a stop by as much as it is away."""

    best = 3

    def __init__(self, bottom: float, wide: float) -> None:
        self._bottom, self._wide = bottom, wide

    def asking(self, fields: Iterable[str]) -> Callable[[Mapping[str, object]], Score]:
        """As a probe."""

        def ask(answers: Mapping[str, object]) -> Score:
            in_hand = self._wide - abs(cast(float, answers[NAME]) - self._bottom)
            return Score(3 if in_hand >= 0 else 1, in_hand)

        return ask


def followed(bottom: float, wide: float) -> tuple[int | None, int | None]:
    valley = cast(Probe, Valley(bottom, wide))
    lever = Lever((NAME,), lambda n: {NAME: float(n)}, 4)
    reached, nearest = follow(lever, valley, valley.asking((NAME,))({NAME: 0.0}))
    return reached and reached.n, nearest and nearest.n


@pytest.mark.parametrize("bottom", [9, 17, 23, 37, 50, -23, -37])
def test_a_good_place_that_strides_go_past_is_found_between_them(bottom: int) -> None:
    """One step either side of the bottom is good: the nearer of those is the least move."""
    assert followed(bottom, 1.0)[0] == (bottom - 1 if bottom > 0 else bottom + 1)


@pytest.mark.parametrize("bottom", [9.5, 23.5, 36.5])
def test_where_none_is_good_the_bottom_is_the_nearest_miss(bottom: float) -> None:
    reached, nearest = followed(bottom, 0.1)
    assert reached is None and nearest is not None and abs(nearest - bottom) == 0.5


@pytest.mark.parametrize("unit", [1 / 1024, 1 / 8, 1.0, 1024.0])
def test_a_stride_goes_where_the_last_one_points_whatever_unit_the_check_counts_in(unit: float) -> None:
    """A straight line, good from step 30, strides of 4. At 4 it is 26 short, and 4 steps brought 4: 26 more and one, but no
    more than three times as far, 12. At 16 it is 14 short, and 12 brought 12: 14 more and one. Then halving, from 16 to 31.
    """
    asked: list[int] = []

    def ask(answers: Mapping[str, object]) -> Score:
        asked.append(int(cast(float, answers[NAME])))
        return Score(GOOD if asked[-1] >= 30 else STOP, (asked[-1] - 30) * unit)

    probe = cast(Probe, SimpleNamespace(best=GOOD, asking=lambda fields: ask))
    lever = Lever((NAME,), lambda n: {NAME: float(n)}, 4)
    reached, _ = follow(lever, probe, Score(STOP, -30 * unit), (1,))
    assert asked == [4, 16, 31, 23, 27, 29, 30]
    assert reached is not None and reached.n == 30


def test_marks_beside_the_best_place_are_tried_until_one_is_good() -> None:
    """From 100 mm to 103 mm in whole marks, and not one further; where the bottom is too far off, as far as it goes."""
    near, far = (cast(Probe, Valley(bottom, 0.5)) for bottom in (103.0, 150.0))
    start = {NAME: 100.0}
    place, score = best_nearby(start, near.asking(start)(start), near, "metric")
    assert place == {NAME: 103.0} and score.rank == 3
    place, score = best_nearby(start, far.asking(start)(start), far, "metric")
    assert place == {NAME: 112.0} and score.rank == 1


@pytest.mark.parametrize(("wide", "stops_at"), [(0.5, 103.0), (1.0, 102.0), (1.5, 102.0), (2.0, 101.0), (3.0, 100.0)])
def test_marks_beside_a_place_end_at_the_first_that_is_good(wide: float, stops_at: float) -> None:
    """Good within wide of 103 mm: farther in is no better, and farther to go."""
    valley, start = cast(Probe, Valley(103.0, wide)), {NAME: 100.0}
    place, score = best_nearby(start, valley.asking(start)(start), valley, "metric")
    assert place == {NAME: stops_at} and score.rank == 3


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
