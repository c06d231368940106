"""Shapes by hand, where no other page of tests puts something beside every side of one."""

import pytest

from rules.solids.gap import gap
from rules.solids.shapes import Ball, box_tube, solid

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
