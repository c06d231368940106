"""Turns, ratio and effort at the steering wheel; and a rack that moves the wrong way."""

from collections.abc import Callable
from math import atan, cos, degrees, hypot, pi, radians, sqrt, tan

import pytest

from rules.judging.judge import Finding, Judged
from rules.values.steering.steering_wheel import ratio_at

Moving = dict[str, object]


def test_turns_are_the_slide_of_both_locks_over_the_slide_of_a_turn(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    known = judged(moving).worked.known
    assert known["turns_lock_to_lock"] == pytest.approx(2 * abs(known["steered_front"].full) / 50)
    by_rack = {"steering.stop_angle": None, "steering.stopped_by": "rack", "steering.rack_travel": "60 mm"}
    stopped_by_rack = judged({**moving, **by_rack}).worked.known
    assert stopped_by_rack["turns_lock_to_lock"] == pytest.approx(2.4)  # 2 x 60 / 50


def test_the_ratio_adds_up_to_the_turns_over_the_lock(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    """The mean ratio, by the turns and the mean of both wheels' angles, lies between that at straight ahead and at full lock."""
    known = judged(moving).worked.known
    mean = (known["full_lock_inner"] + known["full_lock_outer"]) / 2
    average = known["turns_lock_to_lock"] * 360 / 2 / degrees(mean)
    ends = sorted((known["steering_ratio_straight"], known["steering_ratio_full_lock"]))
    assert ends[0] < average < ends[1]


def test_scrub_standing_is_the_published_formula(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    """W x f x root(B^2 / 8 + E^2) for each wheel, f = 0.7: Taborek, from memory. 12.50 in wide tyre, 25 mm of offset."""
    known = judged(moving).worked.known
    each = 250 * 9.80665 * 0.7 * sqrt((12.5 * 25.4) ** 2 / 8 + 25**2) / 1000
    assert known["standing_scrub_moment"] == pytest.approx(2 * each)
    # Virtual work: moment x turn of both wheels for a turn of the steering wheel = pull x its rim.
    turn = 2 * pi / known["steering_ratio_straight"]
    assert known["standing_rim_effort"] == pytest.approx(known["standing_scrub_moment"] * turn / (pi * 0.35), rel=0.03)


def test_effort_rolling_is_what_the_side_force_behind_the_axis_asks_of_the_hands(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    """By hand: 2 x 250 kg x 0.1 g on a trail of 400 tan 6 deg, square to an axis that leans 10 and 6 deg.

    A moment M on both wheels is M / ratio at the steering wheel, and M / ratio / 0.175 m at its rim of 350 mm.
    """
    known = judged(moving).worked.known
    moment = 2 * 250 * 0.980665 * 0.4 * tan(radians(6)) * cos(atan(hypot(tan(radians(10)), tan(radians(6)))))
    assert known["rolling_rim_effort"] == pytest.approx(moment / known["steering_ratio_straight"] / 0.175, rel=0.03)
    ahead = judged({**moving, "pivots.axis_ahead": "-60 mm"}).worked.known
    assert ahead["mechanical_trail"] < 0 and ahead["rolling_rim_effort"] < 0  # it pulls further in


def test_the_ratio_over_the_lock_adds_up_to_the_turn_of_the_steering_wheel(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    """Simpson's rule over 1 / ratio gives back the mean of both wheels' angles at full lock."""
    known = judged(moving).worked.known
    front = known["steered_front"]
    turned = 2 * pi * abs(front.full) / 50
    parts = [1 / ratio_at(front, 50.0, lock / 20) for lock in range(21)]
    mean = turned * (parts[0] + 4 * sum(parts[1::2]) + 2 * sum(parts[2:-1:2]) + parts[-1]) / 60
    assert mean == pytest.approx((known["full_lock_inner"] + known["full_lock_outer"]) / 2, rel=1e-4)


def test_with_one_rod_across_there_is_no_rack(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    one: Moving = {"steering.linkage": "one rod across", "steering.inner_from_centre": None, "steering.inner_ahead": None,
                   "steering.inner_height": None, "steering.rack_moves": "left"}  # fmt: skip
    worked = judged({**moving, **one}).worked
    for name in (
        "turns_lock_to_lock",
        "steering_ratio_straight",
        "steering_ratio_full_lock",
        "standing_rim_effort",
        "rolling_rim_effort",
        "rack-way",
    ):
        assert name in worked.not_here


BEHIND, AHEAD = -126, 126


@pytest.mark.parametrize(
    ("place", "moves", "verdict"),
    # Behind the axle the rack must go right for a left turn: the arm's end goes right as the wheel's front goes left.
    [(BEHIND, "right", "good"), (BEHIND, "left", "stop"), (AHEAD, "left", "good"), (AHEAD, "right", "stop")],
)
def test_a_rack_the_wrong_way_round_is_caught(
    finding: Callable[[str, Moving], Finding], moving: Moving, place: int, moves: str, verdict: str
) -> None:
    ends: Moving = {"steering.tie_rod_ahead": f"{place} mm", "steering.inner_ahead": f"{place} mm"}
    found = finding("rack-way", {**moving, **ends, "steering.rack_moves": moves})
    assert found.verdict == verdict
    assert ("turned left, the car goes right" in found.text) == (verdict == "stop")


def test_which_way_the_rack_moves_may_stay_open(finding: Callable[[str, Moving], Finding], moving: Moving) -> None:
    found = finding("rack-way", moving)
    assert found.verdict == "not judged" and found.waits_for == ("steering.rack_moves",)


IMPOSSIBLE: dict[str, Moving] = {
    "no relay arm": {"steering.linkage": "relay rod", "steering.relay_arm_length": "0 mm"},
    "rod's end on the axis": {"steering.tie_rod_ahead": "4.2 mm", "steering.tie_rod_inboard": "92 mm"},
    "no travel": {"arms.bump_travel": "0 mm", "arms.droop_travel": "0 mm"},
    "rod that cannot reach": {
        "steering.rack_travel": "300 mm",
        "steering.stop_angle": None,
        "steering.stopped_by": "rack",
    },
    "inner end outboard of the outer one": {"steering.inner_from_centre": "700 mm"},
}


@pytest.mark.parametrize("entries", IMPOSSIBLE.values(), ids=IMPOSSIBLE.keys())
def test_what_cannot_be_is_told_in_shop_words(
    judged: Callable[[Moving], Judged], moving: Moving, entries: Moving
) -> None:
    result = judged({**moving, **entries})
    assert not result.worked.crashed
    group = [found for found in result.findings if found.group == "steering and travel"]
    assert any(found.verdict in ("stop", "not judged") for found in group)
    for found in group:
        assert not any(word in found.text for word in ("Error", "division", "could not be worked out", "None", "nan"))


def test_twenty_degrees_is_what_the_rim_turns_through(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    """Half the ratio's turn: at straight ahead 1 deg of both wheels takes the ratio in degrees of the steering wheel."""
    known = judged(moving).worked.known
    front = known["steered_front"]
    slide = radians(known["steering_ratio_straight"]) / (2 * pi) * 50
    lock = slide / abs(front.full)
    mean = (front.at(0.0, lock).steer - front.at(0.0, -lock).steer) / 2
    assert degrees(mean) == pytest.approx(1.0, rel=1e-3)
