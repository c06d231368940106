"""Bolt circles.

One pattern under two names: exact arithmetic, x 25.4; the spelling 120.7 for 120.65 is from memory. Which patterns are in
use, and the near misses, are common practice, no source. Five studs: the circle is the chord over sin 36 deg, x 1.70130.
"""

from itertools import pairwise
from math import cos, hypot, pi, sin

import pytest

from rules.checks.wheel_end.fits import SAME_CIRCLE, bolt_circle_wheel_hub
from rules.measure.marks import read_bolt_circle
from rules.sheet import FIELDS

ONE_PATTERN = [
    ("4 x 4.5 in", "4 x 114.3 mm"),
    ("5 x 4.5 in", "5 x 114.3 mm"),
    ("5 x 4.75 in", "5 x 120.65 mm"),
    ("5 x 4.75 in", "5 x 120.7 mm"),
    ("5 x 5 in", "5 x 127 mm"),
    ("5 x 5.5 in", "5 x 139.7 mm"),
    ("6 x 4.5 in", "6 x 114.3 mm"),
    ("6 x 5.5 in", "6 x 139.7 mm"),
    ("8 x 6.5 in", "8 x 165.1 mm"),
]
TWO_PATTERNS = [
    ("5 x 114.3 mm", "5 x 115 mm"),
    ("4 x 98 mm", "4 x 100 mm"),
    ("5 x 100 mm", "5 x 101.6 mm"),
    ("5 x 120 mm", "5 x 120.65 mm"),
]


def verdict(one: str, other: str) -> tuple[str, str]:
    judgement = bolt_circle_wheel_hub(read_bolt_circle(one, None), read_bolt_circle(other, None), SAME_CIRCLE)
    return judgement.verdict, judgement.text


@pytest.mark.parametrize(("inch", "metric"), ONE_PATTERN)
def test_one_pattern_under_two_names_is_one_pattern(inch: str, metric: str) -> None:
    assert verdict(inch, metric)[0] == verdict(metric, inch)[0] == "good"


@pytest.mark.parametrize(("one", "other"), TWO_PATTERNS)
def test_near_misses_are_stopped_and_named(one: str, other: str) -> None:
    for first, second in ((one, other), (other, one)):
        found, text = verdict(first, second)
        assert found == "stop" and "near miss" in text


@pytest.mark.parametrize("other", ["6 x 114.3 mm", "5 x 112 mm", "5 x 120 mm", "5 x 127 mm", "4 x 114.3 mm"])
def test_common_metric_patterns_are_not_5_by_4_and_a_half(other: str) -> None:
    assert verdict("5 x 4.5 in", other)[0] == "stop"


def studs(count: int, circle: float) -> list[tuple[float, float]]:
    return [(circle / 2 * cos(2 * pi * i / count), circle / 2 * sin(2 * pi * i / count)) for i in range(count)]


def chord(one: tuple[float, float], other: tuple[float, float]) -> float:
    return hypot(one[0] - other[0], one[1] - other[1])


def test_the_factor_told_for_five_studs_gives_the_circle_back() -> None:
    how = FIELDS["wheel.bolt_circle"].how
    assert "1.701" in how
    assert chord(*studs(5, 114.3)[:2]) * 1.701 == pytest.approx(114.3, abs=0.05)


@pytest.mark.parametrize("count", [4, 6, 8])
def test_the_way_told_for_even_counts_gives_the_circle_itself(count: int) -> None:
    assert max(chord(studs(count, 139.7)[0], other) for other in studs(count, 139.7)) == pytest.approx(139.7)


def test_straight_across_is_wrong_on_five_studs() -> None:
    # The widest chord of five is 0.95106 of the circle.
    widest = max(chord(studs(5, 100.0)[0], other) for other in studs(5, 100.0))
    assert widest == pytest.approx(95.106, abs=0.001)
    assert all(chord(a, b) < 60 for a, b in pairwise(studs(5, 100.0)))
