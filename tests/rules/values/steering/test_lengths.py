"""Cut lengths: against points laid out by hand, and the limits of the thread that is screwed in."""

from collections.abc import Callable
from math import dist

import pytest

from rules.judging.judge import Finding, Judged

Moving = dict[str, object]
WAYS = ("ahead", "from_centre", "height")
ENDS: Moving = {
    "steering.tie_rod_outer_shank": "60 mm", "steering.tie_rod_inner_shank": "80 mm", "steering.tie_rod_threads_in": "24 mm",
    "steering.tie_rod_thread": "16 x 1.5 mm",
}  # fmt: skip


def test_the_tie_rod_is_as_long_as_its_two_ends_are_apart(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    known = judged(moving).worked.known
    # Outer: 126 behind, 144 inboard of a hub face 4 outboard, 40 below 400. Inner: 135 behind, 301 of 800, 358 up.
    assert known["tie_rod_length"] == pytest.approx(dist((-126, 4 - 144, 360), (-135, 301 - 800, 358)), abs=1e-9)


def test_the_tube_is_what_the_ends_leave(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    known = judged({**moving, **ENDS}).worked.known
    assert known["tie_rod_tube_cut"] == pytest.approx(known["tie_rod_length"] - (60 - 24) - (80 - 24))


def test_one_rod_across_runs_from_arm_to_arm(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    one: Moving = {"steering.linkage": "one rod across", "steering.inner_from_centre": None, "steering.inner_ahead": None,
                   "steering.inner_height": None}  # fmt: skip
    known = judged({**moving, **one}).worked.known
    assert known["tie_rod_length"] == pytest.approx(2 * (800 + 4 - 144))


def test_each_leg_is_as_long_as_its_pivots_are_apart(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    known = judged(moving).worked.known
    for arm in ("lower", "upper"):
        outer = [known[f"{arm}_pivot_{way}"] for way in ("ahead", "offset", "height")]
        for end in ("front", "rear"):
            ahead, across, up = (float(str(moving[f"arms.{arm}_{end}_{way}"]).removesuffix(" mm")) for way in WAYS)
            assert known[f"{arm}_{end}_leg"] == pytest.approx(dist((ahead, across - 800, up), outer))


def test_an_arm_known_from_the_front_only_has_no_legs_but_still_travels(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    front_view = {
        name: None for name in moving if name.startswith("arms.upper_") and ("rear" in name or "ahead" in name)
    }
    worked = judged({**moving, **front_view}).worked
    assert "upper_front_leg" in worked.not_judged and "lower_front_leg" in worked.known
    assert {"camber_change_bump", "roll_centre_height", "track_change", "wheel_rate"} - {
        "wheel_rate"
    } <= worked.known.keys()


@pytest.mark.parametrize(
    ("screwed_in", "verdict"),
    # 16 mm of thread: 1.5 diameters are 24, one is 16.
    [("24 mm", "good"), ("23.9 mm", "watch"), ("16 mm", "watch"), ("15.9 mm", "stop")],
)
def test_thread_screwed_in(
    finding: Callable[[str, Moving], Finding], moving: Moving, screwed_in: str, verdict: str
) -> None:
    found = finding("tie-rod-threads", {**moving, **ENDS, "steering.tie_rod_threads_in": screwed_in})
    assert found.verdict == verdict and bool(found.change) == (verdict != "good")


def test_ends_longer_than_the_rod_are_found(finding: Callable[[str, Moving], Finding], moving: Moving) -> None:
    found = finding("tie-rod-holds-its-ends", {**moving, **ENDS, "steering.tie_rod_inner_shank": "400 mm"})
    assert found.verdict == "stop" and "too long" in found.text


def test_ends_that_meet_inside_the_tube_are_found(
    judged: Callable[[Moving], Judged], finding: Callable[[str, Moving], Finding], moving: Moving
) -> None:
    """Both ends stand on one line: an outer one of 60 mm leaves the rod's length less 60 for the inner one, tube or no tube."""
    left = judged(moving).worked.known["tie_rod_length"] - 60
    for inner, verdict in ((left - 1, "good"), (left + 1, "stop")):
        found = finding("tie-rod-holds-its-ends", {**moving, **ENDS, "steering.tie_rod_inner_shank": f"{inner:.3f} mm"})
        assert found.verdict == verdict and (": 1 mm too long" in found.text) == (verdict == "stop")


def test_without_its_ends_the_tube_is_not_judged(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    assert "ends are not measured" in judged(moving).worked.not_judged["tie_rod_tube_cut"]
    part = {key: entry for key, entry in ENDS.items() if "shank" in key}
    assert judged({**moving, **part}).worked.waits["tie_rod_tube_cut"] == ("steering.tie_rod_threads_in",)


@pytest.mark.parametrize(
    ("changed", "verdict", "says"),
    [
        # An outer end of 60 mm whose housing reaches 20 has 40 of shank; an inner one of 38 has no more than that.
        ({"steering.tie_rod_threads_in": "40 mm"}, "good", "screwed in"),
        ({"steering.tie_rod_threads_in": "40.5 mm"}, "stop", "outer end"),
        ({"steering.tie_rod_threads_in": "39 mm", "steering.tie_rod_inner_shank": "38 mm"}, "stop", "inner end"),
    ],
)
def test_no_more_thread_is_screwed_in_than_an_end_has(
    finding: Callable[[str, Moving], Finding], moving: Moving, changed: Moving, verdict: str, says: str
) -> None:
    reach: Moving = {"steering.tie_rod_end_reach": "20 mm", "steering.tie_rod_outer_shank": "60 mm"}
    found = finding("tie-rod-threads", {**moving, **ENDS, **reach, **changed})
    assert found.verdict == verdict and says in found.text
