"""What the weight and the ground do to both wheels at any lock: at its end as the values say, between by the steering ratio."""

from collections.abc import Callable, Mapping
from typing import Any

import pytest

from rules.judging.judge import Judged
from rules.judging.return_at_lock import return_moment_at, rim_effort_at, standing_effort_at, steering_ratio_at

AtLock = Callable[..., float | None]


@pytest.fixture(scope="module")
def known(judged: Callable[[dict[str, object]], Judged]) -> Mapping[str, Any]:
    from tests.support.base_sheet import MOVING

    return judged(dict(MOVING)).worked.known


@pytest.mark.parametrize(
    ("at", "value", "lock"),
    [
        (return_moment_at, "return_moment_full_lock", 1.0),
        (rim_effort_at, "rim_effort", 1.0),
        (standing_effort_at, "standing_rim_effort", 0.0),
        (steering_ratio_at, "steering_ratio_full_lock", 1.0),
    ],
)
def test_at_the_end_of_the_lock_it_is_the_value(known: Mapping[str, Any], at: AtLock, value: str, lock: float) -> None:
    assert at(known, lock=lock) == pytest.approx(known[value])
    without = {name: number for name, number in known.items() if name != value}
    assert at(without, lock=lock) is None


@pytest.mark.parametrize("lock", [0.25, 0.5, 0.75, 1.0])
def test_standing_the_wheel_is_as_much_heavier_as_the_steering_is_quicker(
    known: Mapping[str, Any], lock: float
) -> None:
    """Dry ground holds with one moment at every lock: effort times ratio stays, but for the two wheels' unlike turns."""
    straight = (standing_effort_at(known, lock=0.0) or 0.0) * (steering_ratio_at(known, lock=0.0) or 0.0)
    turned = (standing_effort_at(known, lock=lock) or 0.0) * (steering_ratio_at(known, lock=lock) or 0.0)
    assert turned == pytest.approx(straight, rel=0.01)


def test_the_weight_returns_the_wheels_more_the_farther_they_are_turned(known: Mapping[str, Any]) -> None:
    """Straight ahead both wheels hold each other; what the rim is held with goes the same way."""
    for at in (return_moment_at, rim_effort_at):
        found = [at(known, lock=lock) or 0.0 for lock in (0.001, 0.25, 0.5, 0.75, 1.0)]
        assert found == sorted(found) and 0 <= found[0] < 0.01 * found[-1]
