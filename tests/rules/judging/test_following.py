"""A lever followed to a narrow good place, past which it gets worse again. The figures are counted by hand."""

from collections.abc import Callable, Iterable, Mapping
from typing import cast

import pytest

from rules.judging.following import best_nearby, follow
from rules.judging.levers import Lever
from rules.judging.probe import Probe, Score

NAME = "plate.width"


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


def test_marks_beside_the_best_place_are_tried_until_one_is_good() -> None:
    """From 100 mm to 103 mm in whole marks, and not one further; where the bottom is too far off, as far as it goes."""
    near, far = (cast(Probe, Valley(bottom, 0.5)) for bottom in (103.0, 150.0))
    start = {NAME: 100.0}
    place, score = best_nearby(start, near.asking(start)(start), near, "metric")
    assert place == {NAME: 103.0} and score.rank == 3
    place, score = best_nearby(start, far.asking(start)(start), far, "metric")
    assert place == {NAME: 112.0} and score.rank == 1
