"""One figure in two lines that follow each other, among the answers alone."""

from typing import Any

import pytest

from rules.checks.agreement.same_figure import OFTEN_ALIKE
from rules.graph.results import Judgement
from tests.support.declared import the_check

# Of the caliper step the lengths reach_above_rotor, outboard_reach and made_for_thickness are asked in this order.
ABOVE, OUTBOARD, MADE_FOR = (f"caliper.{key}" for key in ("reach_above_rotor", "outboard_reach", "made_for_thickness"))


def told(answers: dict[str, Any], *confirmed: str) -> list[tuple[str, str]]:
    """Of each finding its verdict and the answer that it asks about."""
    found: Any = the_check("line-read-twice")(answers, frozenset(confirmed))
    assert all(isinstance(one, Judgement) for one in found)
    return [(one.verdict, one.asks_about) for one in found]


def test_a_figure_that_stands_in_the_line_before_too() -> None:
    assert told({ABOVE: 22.0, OUTBOARD: 22.0}) == [("watch", OUTBOARD)]
    assert told({ABOVE: 22.0, OUTBOARD: 22.1}) == [("good", "")]
    assert told({ABOVE: 22.0, OUTBOARD: 22.0}, OUTBOARD) == [("good", "")]
    assert told({ABOVE: 22.0, OUTBOARD: 22.0}, ABOVE) == [("watch", OUTBOARD)]  # the second is the one read twice


def test_only_the_line_before_it_in_its_own_step_counts() -> None:
    assert told({ABOVE: 22.0, OUTBOARD: 44.0, MADE_FOR: 22.0}) == [("good", "")]
    assert told({ABOVE: 22.0, MADE_FOR: 22.0}) == [("watch", MADE_FOR)]  # what is empty between is no line read
    assert told({ABOVE: 22.0, OUTBOARD: 0.0, MADE_FOR: 22.0}) == [("watch", MADE_FOR)]  # nor is a nought
    assert told({ABOVE: 22.0, OUTBOARD: 22.0, MADE_FOR: 22.0}) == [("watch", OUTBOARD), ("watch", MADE_FOR)]
    assert told({"rotor.thickness": 22.0, ABOVE: 22.0}) == [("good", "")]
    assert told({}) == told({ABOVE: 0.0, OUTBOARD: 0.0}) == [("good", "")]


@pytest.mark.parametrize(("second", "verdict"), [(-22.0, "good"), (22.00001, "watch"), (22.0001, "good")])
def test_the_same_figure_and_not_a_near_one(second: float, verdict: str) -> None:
    """A millionth part is the rounding of one unit into the other."""
    assert told({ABOVE: 22.0, OUTBOARD: second})[0][0] == verdict
    assert told({ABOVE: -22.0, OUTBOARD: -second})[0][0] == verdict


def test_what_often_is_alike_is_asked_and_no_watch() -> None:
    bump, droop = "arms.bump_travel", "arms.droop_travel"
    assert (bump, droop) in OFTEN_ALIKE
    assert told({bump: 90.0, droop: 90.0}) == [("good", droop)]
    assert told({bump: 90.0, droop: 90.0}, droop) == [("good", "")]
    both: Any = the_check("line-read-twice")({bump: 90.0, droop: 90.0, ABOVE: 22.0, OUTBOARD: 22.0}, frozenset())
    assert [(one.verdict, one.asks_about) for one in both] == [("watch", OUTBOARD), ("good", droop)]  # worst first
    assert both[0].figures == {"both": (22.0, "mm")} and both[1].figures == {"both": (90.0, "mm")}
    assert "one line may have been read twice" in both[0].text and "often are alike" in both[1].text
