"""The way through all of travel and lock that is shown by itself, by hand."""

from itertools import pairwise
from types import SimpleNamespace
from typing import Any

import pytest

from rules.drawn.moving.scene import RIDE, TravelAndLock, whole_sweep


def way(travels: bool, steers: bool) -> list[TravelAndLock]:
    front: Any = SimpleNamespace(travels=travels, steers=steers, bump=100.0, droop=50.0)
    return list(whole_sweep(front))


OUT_AND_BACK = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0.0]


def test_what_only_travels_goes_to_bump_and_to_droop_and_back_by_tenths() -> None:
    found = way(True, False)
    wanted = [*(100 * share for share in OUT_AND_BACK), *(-50 * share for share in OUT_AND_BACK), 0.0]
    assert [place.travel for place in found] == pytest.approx(wanted)
    assert all(place.lock == 0.0 for place in found)


def test_what_only_steers_goes_to_both_locks_and_back_by_tenths() -> None:
    found = way(False, True)
    assert [place.lock for place in found] == pytest.approx([*OUT_AND_BACK, *(-share for share in OUT_AND_BACK), 0.0])
    assert all(place.travel == 0.0 for place in found)


def test_what_does_both_steers_at_ride_at_bump_and_at_droop_and_ends_at_ride() -> None:
    found = way(True, True)
    steered = [place for place in found if place.lock]
    assert [{place.travel for place in steered if place.lock == lock} for lock in (1.0, -1.0)] == [
        {0.0, 100.0, -50.0}
    ] * 2
    assert found[-1] == RIDE
    assert all(abs(other.lock - one.lock) < 0.1001 for one, other in pairwise(found))
