"""A beam that is a tube, from the block that holds room for it; by hand."""

import pytest

from rules.corner.part import Part
from rules.drawn.upright_pieces import _tube
from rules.solids.shapes import Cylinder, Prism

OUTLINE = ((-20.0, -99.0), (40.0, -99.0), (40.0, 101.0), (-20.0, 101.0))
"""60 wide about a middle 10 to the rear, from 99 below to 101 above."""
BLOCK = Prism((0.0, -50.0, 400.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 1.0), OUTLINE, -60.0, 0.0)
"""On the back of a plate at y = -50."""


def test_a_tube_touches_the_plates_back_along_a_line() -> None:
    """Radius 30: its middle is 30 behind the plate's back and 10 to the rear."""
    found = _tube({"upright.beam": "tube"}, part=Part("beam", "upright", (BLOCK,)))
    assert found is not None and (found.name, found.group) == ("beam", "upright")
    assert found.shapes == (Cylinder((-10.0, -80.0, 301.0), (-10.0, -80.0, 501.0), 30.0),)


@pytest.mark.parametrize("beam", ["box", "channel", "none"])
def test_another_beam_is_no_tube(beam: str) -> None:
    assert _tube({"upright.beam": beam}, part=Part("beam", "upright", (BLOCK,))) is None


def test_a_beam_that_is_round_already_stays() -> None:
    rod = Cylinder((0.0, -80.0, 300.0), (0.0, -80.0, 500.0), 30.0)
    assert _tube({"upright.beam": "tube"}, part=Part("beam", "upright", (rod,))) is None
