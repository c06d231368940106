"""Which way a lever is worth following, and a narrow good place past which it gets worse again; figures by hand."""

from collections.abc import Callable, Iterable, Mapping
from types import SimpleNamespace
from typing import Any, cast

import pytest

from rules.judging.following import Candidate, _top, after_a_stride, best_nearby, follow
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


Scored = Callable[[int], Score]


def walked(
    score: Scored, ways: tuple[int, ...] = (1, -1), ends: int = 1000
) -> tuple[int | None, int | None, list[int]]:
    """Where a lever with strides of 4 is good and where it comes nearest, and all it asked about. ends: its last place."""
    asked: list[int] = []

    def ask(answers: Mapping[str, object]) -> Score:
        asked.append(int(cast(float, answers[NAME])))
        return score(asked[-1])

    probe = cast(Probe, SimpleNamespace(best=GOOD, asking=lambda fields: ask))
    lever = Lever((NAME,), lambda n: {NAME: float(n)} if abs(n) <= ends else None, 4)
    reached, nearest = follow(lever, probe, score(0), ways)
    return reached and reached.n, nearest and nearest.n, list(dict.fromkeys(asked))


def words(good: Callable[[int], bool]) -> Scored:
    """A check that says no number."""
    return lambda n: Score(GOOD if good(n) else STOP, 0.0)


def hills(*tops: tuple[int, float]) -> Scored:
    """How far inside good, by the highest of some hills: each with the square of how far off its top one is."""

    def score(n: int) -> Score:
        in_hand = max(high - (n - top) ** 2 for top, high in tops)
        return Score(GOOD if in_hand >= 0 else STOP, in_hand)

    return score


def test_strides_double_where_a_check_says_no_number() -> None:
    """4, 8 more, 16 more, 32 more; then halving between 28 and 60."""
    for way in (1, -1):
        reached, _, asked = walked(words(lambda n: abs(n) >= 40), (way,))
        assert (reached, asked) == (way * 40, [way * n for n in (4, 12, 28, 60, 44, 36, 40, 38, 39)])


@pytest.mark.parametrize("way", [1, -1])
@pytest.mark.parametrize("ends", [4, 5, 12, 28, 29, 30, 44, 59, 60])
def test_where_a_stride_goes_past_a_levers_end_its_last_place_is_tried(ends: int, way: int) -> None:
    assert walked(words(lambda n: abs(n) >= ends), (way,), ends)[0] == way * ends
    assert walked(words(lambda n: abs(n) > ends), (way,), ends)[:2] == (None, None)


def test_sixteen_strides_are_the_farthest() -> None:
    assert walked(words(lambda n: n >= 64), (1,))[0] == 64
    assert walked(words(lambda n: n >= 65), (1,))[0] is None


def test_a_hill_that_strides_go_over_is_climbed() -> None:
    """Good on its top alone, good two places either side of it, and nowhere: as near as its top."""
    for top in range(5, 41):
        for way in (1, -1):
            assert walked(hills((way * top, 0.5)), (way,))[0] == way * top
            assert walked(hills((way * top, 4.5)), (way,))[0] == way * (top - 2)
            assert walked(hills((way * top, -0.5)), (way,))[:2] == (None, way * top)


def test_of_two_hills_the_nearer_good_one_counts_and_of_two_that_are_not_good_the_higher() -> None:
    for one, other, expected in ((25, 22, -22), (22, 25, 22), (22, 22, 22)):
        assert walked(hills((one, 0.5), (-other, 0.5)))[0] == expected
    for one, other, expected in ((-0.5, -1.5, 25), (-1.5, -0.5, -25), (-0.5, -0.5, 25)):
        assert walked(hills((25, one), (-25, other)))[:2] == (None, expected)


def test_of_two_ways_that_are_good_the_shorter_is_gone_and_the_first_of_two_as_long() -> None:
    for up, down, expected in ((10, 7, -7), (7, 10, 7), (10, 10, 10)):
        assert walked(words(lambda n, up=up, down=down: n >= up or n <= -down))[0] == expected  # type: ignore[misc]


def test_a_good_place_before_the_first_stride_is_found_once_strides_have_gone_past_it() -> None:
    """From 0.95 short at 0 to 1.1 inside at 2.05, and 0.85 short at 4: good at 1, 2 and 3."""
    assert followed(2.05, 1.1)[0] == 1


def test_it_ends_where_it_gets_worse_and_where_nothing_is_gained() -> None:
    """The first place that is better stays the nearest as long as none is better still."""
    assert walked(lambda n: Score(WATCH if 1 <= n < 12 else STOP, 0.0), (1,)) == (None, 4, [4, 12])
    assert walked(lambda n: Score(WATCH if n >= 1 else STOP, 0.0), (1,))[:2] == (None, 4)
    assert walked(lambda n: Score(STOP, -5.0), (1,)) == (None, None, [4])
    assert walked(lambda n: Score(STOP, -5.0 if n else -6.0), (1,))[:2] == (None, 4)


def test_a_top_between_two_places_is_found_by_thirds() -> None:
    """Each time the outer third beside the worse of two places falls away; any good place will do."""

    def top(near: int, far: int, score: Scored, way: int = 1) -> tuple[int, list[int]]:
        asked: dict[int, None] = {}

        def at(n: int) -> Candidate:
            asked[n] = None
            return Candidate({NAME: float(n)}, score(n), 1.0, None, n)

        return _top(at, way, near, far, GOOD).n, list(asked)

    assert top(0, 27, hills((13, -0.5))) == (13, [27, 9, 18, 6, 12, 10, 14, 16, 11, 13])
    assert top(0, 27, hills((13, 1.0))) == (12, [27, 9, 18, 6, 12])
    for near in (0, 10):
        for far in (*range(near + 1, near + 12), near + 30):
            for place in range(near + 1, far + 1):
                assert top(near, far, hills((place, -0.5)))[0] == place
                assert top(near, far, hills((-place, -0.5)), -1)[0] == -place


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
