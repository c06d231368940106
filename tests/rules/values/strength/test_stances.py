"""A corner on a flatter tyre: its upright lower, its inner pivots where they were taped."""

from rules.values.strength.stances import _lowered
from tests.support.front_ends import meeting_arms, parallel_arms


def test_an_upright_is_lowered_whole_and_its_arms_stay() -> None:
    """64 mm: the pivots, the wheel centre and the tie rod's end alike, and nothing ahead or across."""
    front = parallel_arms()
    found = _lowered(front, 64.0)
    assert found is not None
    upright = found.upright
    assert (upright.lower, upright.upper) == ((20.0, -80.0, 236.0), (-5.0, -80.0, 486.0))
    assert (upright.wheel_centre, upright.tie_rod_end) == ((0.0, 0.0, 336.0), (-120.0, -80.0, 296.0))
    assert (found.arms, found.linkage) == (front.arms, front.linkage)


def test_a_corner_without_steering_or_without_arms_is_lowered_as_far_as_it_is_known() -> None:
    found = _lowered(meeting_arms(), 10.0)
    assert found is not None and found.upright.tie_rod_end is None
    assert (found.upright.lower[2], found.upright.upper[2]) == (290.0, 590.0)
    assert _lowered(None, 64.0) is None
