"""How far a weld stands off what it is said to be on."""

import pytest

from rules.checks.agreement.weld_place import _beyond


@pytest.mark.parametrize(
    ("point", "off"),
    [
        ((0.0, 0.0), 0.0), ((60.0, 0.0), 0.0), ((-40.0, 10.0), 0.0), ((59.0, -30.0), 0.0),  # on it, or on its edge
        ((64.0, 0.0), 4.0), ((-45.0, 0.0), 5.0), ((0.0, 16.0), 6.0), ((0.0, -37.0), 7.0),
        ((63.0, 14.0), 5.0), ((-44.0, 13.0), 5.0), ((68.0, -36.0), 10.0), ((-46.0, -38.0), 10.0),  # 3-4-5
    ],
)  # fmt: skip
def test_how_far_outside_a_box_a_place_is(point: tuple[float, float], off: float) -> None:
    """From -40 to 60, and from -30 to 10."""
    assert _beyond(point, (-40.0, 60.0, -30.0, 10.0)) == pytest.approx(off)
