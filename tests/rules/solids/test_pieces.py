"""Rings that turn about one axis and reach a part of the way round, each by hand: side by side, one past another, and apart."""

from math import cos, pi, radians, sin

import pytest

from rules.solids.gap import gap
from rules.solids.shapes import Revolved, solid
from rules.solids.space import Vector

Y: Vector = (0.0, 1.0, 0.0)


def sector(clock: float, half: float, inner: float = 10.0, outer: float = 20.0, low: float = 0.0) -> Revolved:
    """4 mm thick, so many degrees to each side of a place round the clock."""
    towards: Vector = (sin(radians(clock)), 0.0, cos(radians(clock)))
    profile = ((inner, low), (outer, low), (outer, low + 4.0), (inner, low + 4.0))
    return Revolved((0.0, 0.0, 0.0), Y, profile, towards=towards, half_angle=radians(half))


@pytest.mark.parametrize("turned", [0.0, 77.0, 180.0, -100.0])
@pytest.mark.parametrize(
    ("between", "half", "apart"),
    [
        # the chord of what is left open at the inner radius, 2 r sin(open / 2): of 30, of 120 and of 10 degrees
        (90.0, 30.0, 20 * sin(radians(15))),
        (180.0, 30.0, 20 * sin(radians(60))),
        (-90.0, 40.0, 20 * sin(radians(5))),
        # twice 45 degrees do not reach 91
        (91.0, 45.0, 20 * sin(radians(0.5))),
    ],
)
def test_parts_of_a_ring_that_share_no_angle(between: float, half: float, apart: float, turned: float) -> None:
    one, other = solid(sector(turned, half)), solid(sector(turned + between, half))
    assert gap(one, other).distance == pytest.approx(apart, abs=0.05)


@pytest.mark.parametrize("turned", [0.0, 77.0, 180.0])
def test_parts_of_a_ring_that_share_an_angle_are_as_far_apart_as_their_profiles(turned: float) -> None:
    """30 to 40 outside 10 to 20: 10. From 7 to 11 along beside 0 to 4: 3. Both at once, 10 and 3: the root of 109."""
    one = solid(sector(turned, 30.0))
    assert gap(one, solid(sector(turned + 50.0, 30.0, 30.0, 40.0))).distance == pytest.approx(10.0, abs=0.05)
    assert gap(one, solid(sector(turned - 50.0, 30.0, low=7.0))).distance == pytest.approx(3.0, abs=0.05)
    assert gap(one, solid(sector(turned, 5.0, 30.0, 40.0, 7.0))).distance == pytest.approx(109**0.5, abs=0.05)


def test_a_part_of_a_ring_beside_one_that_goes_all_round() -> None:
    """Inside one of 25 to 30: 5, wherever it is."""
    whole = solid(Revolved((0.0, 0.0, 0.0), Y, ((25.0, 0.0), (30.0, 0.0), (30.0, 4.0), (25.0, 4.0)), half_angle=pi))
    for turned in (0.0, 130.0, -90.0):
        assert gap(solid(sector(turned, 20.0)), whole).distance == pytest.approx(5.0, abs=0.05)
