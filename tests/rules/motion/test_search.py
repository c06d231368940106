"""The two searches against scipy and by hand."""

from math import cos, sqrt

import pytest
from scipy.optimize import brentq, minimize_scalar

from rules.motion.search import golden, last_that_holds


def test_the_bottom_of_a_valley_is_where_scipy_finds_it() -> None:
    def valley(x: float) -> float:
        return x**4 - 3 * x + cos(x)

    assert golden(valley, -2.0, 3.0, 1e-7) == pytest.approx(minimize_scalar(valley).x, abs=1e-6)


@pytest.mark.parametrize(("low", "high"), [(0.0, 5.0), (5.0, 0.0)])
def test_a_bent_valley_is_found_from_either_side(low: float, high: float) -> None:
    # |x - 1.7| has a corner for its bottom.
    assert golden(lambda x: abs(x - 1.7), low, high, 1e-9) == pytest.approx(1.7, abs=1e-9)


def test_a_valley_at_the_end_is_found_at_the_end() -> None:
    assert golden(lambda x: x, 2.0, 3.0, 1e-6) == pytest.approx(2.0, abs=1e-6)


def test_it_looks_once_for_each_step() -> None:
    # A stretch of 1 shrinks by 0.618 a step: 15 steps make 0.618^15 = 0.00073, less than 0.001, and 14 do not.
    looks: list[float] = []
    golden(lambda x: looks.append(x) or (x - 0.3) ** 2, 0.0, 1.0, 0.001)  # type: ignore[func-returns-value]
    assert len(looks) == 2 + 15


def test_the_last_that_holds_is_a_root() -> None:
    assert last_that_holds(lambda x: x * x <= 2, 0.0, 2.0) == pytest.approx(sqrt(2), abs=1e-11)
    assert last_that_holds(lambda x: cos(x) >= x, 0.0, 1.0) == pytest.approx(
        brentq(lambda x: cos(x) - x, 0, 1), abs=1e-11
    )


def test_what_is_found_holds_and_lies_within_one_part() -> None:
    # Backwards from 0 to -8 in three halvings: parts of 1; -5 holds, -6 would not.
    assert last_that_holds(lambda x: x >= -5.5, 0.0, -8.0, halvings=3) == -5.0


def test_where_nothing_holds_the_beginning_is_the_answer() -> None:
    assert last_that_holds(lambda x: False, 3.0, 4.0) == 3.0
