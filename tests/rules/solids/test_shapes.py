"""Shapes by hand, where no other page of tests puts something beside every side of one."""

from itertools import pairwise
from math import dist, hypot, sqrt

import pytest

from rules.solids.gap import gap
from rules.solids.shapes import Ball, Bore, Prism, box_tube, hexagon, solid

TUBE = solid(*box_tube((0.0, 0.0, 0.0), (0.0, 0.0, 200.0), (1.0, 0.0, 0.0), 60.0, 40.0, 4.0))
"""60 along x and 40 along y, its walls 4 thick, running 200 along z."""


@pytest.mark.parametrize(
    ("x", "y", "clear"),
    [
        # a ball of 1 mm, 10 mm off the middle of each face: 9
        (40.0, 0.0, 9.0),
        (-40.0, 0.0, 9.0),
        (0.0, 30.0, 9.0),
        (0.0, -30.0, 9.0),
        # inside, its middle 6 off the inner face of each wall, which stand at 26 and at 16: 5
        (20.0, 0.0, 5.0),
        (-20.0, 0.0, 5.0),
        (0.0, 10.0, 5.0),
        (0.0, -10.0, 5.0),
        # in the middle of the tube: 16 - 1
        (0.0, 0.0, 15.0),
        # off a corner by 3 and 4: 5 - 1
        (33.0, -24.0, 4.0),
    ],
)
def test_a_box_tube_is_four_walls_round_a_hollow(x: float, y: float, clear: float) -> None:
    assert gap(TUBE, solid(Ball((x, y, 100.0), 1.0))).distance == pytest.approx(clear, abs=0.01)


def test_a_box_tube_is_open_at_its_ends() -> None:
    assert gap(TUBE, solid(Ball((0.0, 0.0, 205.0), 1.0))).distance == pytest.approx((16**2 + 5**2) ** 0.5 - 1, abs=0.01)


def test_a_hexagon_has_six_equal_sides() -> None:
    """17 across flats: corners 17 / sqrt(3) from the middle, and as far from one another."""
    bar = hexagon((0.0, 0.0, 0.0), (0.0, 0.0, 8.0), 17.0, (1.0, 0.0, 0.0))
    assert len(bar.outline) == 6
    assert [hypot(*corner) for corner in bar.outline] == pytest.approx([17 / sqrt(3)] * 6)
    assert [dist(*pair) for pair in pairwise((*bar.outline, bar.outline[0]))] == pytest.approx([17 / sqrt(3)] * 6)


@pytest.mark.parametrize(("left", "bottom", "at"), [(-40.0, -90.0, (-50.0, 0.0)), (-90.0, -40.0, (0.0, -50.0))])
def test_a_plate_with_a_bore_ends_at_its_edge_also_where_that_is_nearest(
    left: float, bottom: float, at: tuple[float, float]
) -> None:
    """A ball of 5, its middle 10 off the nearest edge: 5."""
    outline = ((left, bottom), (90.0, bottom), (90.0, 90.0), (left, 90.0))
    plate = Prism((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), outline, -4.0, 4.0, Bore((0.0, 0.0), 30.0))
    assert gap(solid(plate), solid(Ball((*at, 0.0), 5.0))).distance == pytest.approx(5.0, abs=0.05)
