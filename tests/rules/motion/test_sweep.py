"""Which places a sweep takes where the parts do not reach all of them: a front end whose limits are known beforehand."""

from typing import Any, cast

import pytest

from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach, Pose
from rules.motion.sweep import Sweep, envelope


class Limited:
    """It goes so far in bump and droop, mm, and so far to either lock."""

    def __init__(self, travel: float, lock: float) -> None:
        self.travel, self.lock = travel, lock

    def at(self, travel: float, lock: float) -> Pose:
        if abs(travel) > self.travel or abs(lock) > self.lock:
            raise CannotReach(self.travel)
        return cast(Pose, None)


def swept(travel: float, lock: float) -> Sweep:
    """Asked to go 90 mm either way and to full lock: at -90, -45, 0, 45 and 90, locks 0, a half and 1 to either side."""
    return envelope(cast(FrontEnd, cast(Any, Limited(travel, lock))), 90.0, 90.0, 5, 5)


def places(found: Sweep) -> dict[float, list[float]]:
    taken: dict[float, list[float]] = {}
    for place in found.placed:
        taken.setdefault(round(place.travel, 3), []).append(round(place.lock, 3))
    return taken


def test_all_is_swept_where_all_is_reached() -> None:
    found = swept(200.0, 2.0)
    assert places(found) == {to: [-1.0, -0.5, 0.0, 0.5, 1.0] for to in (-90.0, -45.0, 0.0, 45.0, 90.0)}
    assert not found.blocked


def test_short_of_full_lock_and_of_the_travel_the_last_places_are_swept_too() -> None:
    found = swept(55.0, 0.7)
    assert places(found) == {to: [-0.7, -0.5, 0.0, 0.5, 0.7] for to in (-55.0, -45.0, 0.0, 45.0, 55.0)}
    straight_blocked = {round(one.travel, 3) for one in found.blocked if not one.lock}
    assert straight_blocked == {-90.0, 90.0}
    assert {round(one.travel, 3) for one in found.blocked} == {-90.0, -55.0, -45.0, 0.0, 45.0, 55.0, 90.0}
    assert {one.lock for one in found.blocked if abs(one.travel) < 60} == {-1.0, 1.0}


@pytest.mark.parametrize("travel", [0.5, 40.0])
def test_a_travel_shorter_than_the_first_step_is_still_found(travel: float) -> None:
    assert set(places(swept(travel, 1.0))) == {-travel, 0.0, travel}


def test_where_ride_height_itself_is_not_reached_nothing_is_swept() -> None:
    assert not swept(-1.0, 1.0).placed
