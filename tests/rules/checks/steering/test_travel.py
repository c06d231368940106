"""Bump steer by hand: 3 mm of toe for 150 mm of travel, on the road 2.4, dangerous from 10 mm on. Common practice."""

from types import SimpleNamespace
from typing import Any

import pytest

from rules.graph.results import Judgement
from rules.motion.sweep import Blocked, Sweep
from tests.support.declared import the_check

HELD: Any = SimpleNamespace(inner=(0.0, 0.0, 0.0))
RELAY: Any = SimpleNamespace(inner=None)


def judged(toe: float, whole: float | None, usual: float, bump: float, use: str, linkage: Any = HELD) -> Judgement:
    return the_check("bump-steer")(toe, whole, usual, bump, 100.0, 1.0, linkage, use, 2.0)


@pytest.mark.parametrize(
    ("toe", "usual", "use", "verdict"),
    [
        (3.0, 150.0, "sand", "good"),
        (3.1, 150.0, "sand", "watch"),
        (10.0, 150.0, "sand", "watch"),
        (10.1, 150.0, "sand", "stop"),
        (2.4, 150.0, "road", "good"),
        (2.5, 150.0, "road", "watch"),
        (10.1, 150.0, "road", "stop"),
        (1.5, 75.0, "sand", "good"),  # half the travel, half the toe
        (1.6, 75.0, "sand", "watch"),
        (5.0, 75.0, "sand", "watch"),
        (5.1, 75.0, "sand", "stop"),
    ],
)
def test_toe_over_the_usual_travel(toe: float, usual: float, use: str, verdict: str) -> None:
    assert judged(toe, 0.0, usual, 150.0, use).verdict == verdict


@pytest.mark.parametrize(("whole", "verdict"), [(5.0, "good"), (5.1, "watch"), (50.0, "watch"), (None, "watch")])
def test_toe_over_all_of_250_mm_is_never_more_than_a_watch(whole: float | None, verdict: str) -> None:
    """3 mm for 150 are 5 for 100 + 150."""
    found = judged(1.0, whole, 150.0, 150.0, "sand")
    assert found.verdict == verdict and found.figures.get("allowed", (5.0, "mm"))[0] == pytest.approx(5.0)


def test_what_is_told_of_the_rest_of_the_travel_and_of_a_wheel_alone() -> None:
    assert "over all the travel by" in judged(1.0, 1.0, 150.0, 50.1, "sand").text
    assert "over all the travel" not in judged(1.0, 1.0, 150.0, 50.0, "sand").text  # 100 + 50 is the usual travel
    assert "travels alone" in judged(1.0, 1.0, 150.0, 50.0, "sand", RELAY).text
    assert "travels alone" not in judged(1.0, 1.0, 150.0, 50.0, "sand").text


@pytest.mark.parametrize(
    ("travel", "said"),
    [
        (60.0, "Less bump, held by the bump stop,"),
        (0.5, "Less bump, held by the bump stop,"),
        (-0.5, "Less droop, held by a strap,"),
    ],
)
def test_what_holds_the_wheel_short_of_where_its_arms_lock(travel: float, said: str) -> None:
    """Up from ride height is bump, however little, and down is droop."""
    sweep = Sweep((), (Blocked(travel, 0.0, 0.9 * travel),))
    found = the_check("travel-reached")(sweep, None, 60.0, 60.0, None)
    assert found.verdict == "stop" and found.change.startswith(said)
