"""What is said of tyres and wheels under load, with the figures worked out by hand."""

from math import atan, radians
from typing import Any

import pytest

from rules.graph.results import Judgement
from rules.sheet import FIELDS
from tests.support.declared import the_check


def figures(found: Judgement) -> dict[str, float]:
    return {name: number for name, (number, *_) in found.figures.items()}


def test_a_radius_nobody_measured_under_load() -> None:
    """3 and 6 % of 400 mm are 12 and 24; an axis that leans 1 in 4 moves the offset by 3 and 6."""
    check = the_check("loaded-radius")
    assert check(400.0, 400.0, radians(10)).verdict == "good"
    known, unknown = check(None, 400.0, atan(0.25)), check(None, 400.0, None)
    assert known.verdict == unknown.verdict == "watch"
    assert figures(known) == pytest.approx({"little": 12.0, "much": 24.0, "offset_little": 3.0, "offset_much": 6.0})
    assert figures(unknown) == pytest.approx({"little": 12.0, "much": 24.0})
    assert "grows by {offset_little}; at 6 %, {much} and {offset_much}" in known.text
    assert "drops {little} to {much}" in unknown.text


def tyre(mark: str) -> Any:
    return FIELDS["tyre.smallest"].read(mark, "metric")


@pytest.mark.parametrize(
    ("symbol", "smallest", "largest", "note"),
    [
        ("Q", "31x10.50R15LT 109", "33x12.50R15LT 108", False), (None, "31x10.50R15LT 109Q", "33x12.50R15LT 108Q", False),
        (None, "31x10.50R15LT 109", "33x12.50R15LT 108Q", True), (None, "31x10.50R15LT 109Q", None, False),
        (None, "31x10.50R15LT 109Q", "33x12.50R15LT", True),
    ],
)  # fmt: skip
@pytest.mark.parametrize(("highest", "verdict"), [(44.4, "good"), (40.0, "good"), (39.9, "stop")])
def test_the_speed_marked_on_the_tyres(
    symbol: str | None, smallest: str, largest: str | None, note: bool, highest: float, verdict: str
) -> None:
    found = the_check("tyre-speed")(highest, 40.0, symbol, tyre(smallest), largest and tyre(largest))
    assert found.verdict == verdict and ("look the other up" in found.text) is note


@pytest.mark.parametrize(("rating", "verdict"), [(250.0, "watch"), (249.9, "stop"), (1000.0, "good")])
def test_a_wheels_rating_against_what_it_carries(rating: float, verdict: str) -> None:
    found = the_check("wheel-load")(rating, 250.0)
    assert found.verdict == verdict and bool(found.change) is (verdict != "good")
