"""The plate as a solid: its round corners and its bore, by hand, and the bores that it cannot have."""

from math import hypot

import pytest

from rules.graph.results import NotJudged
from rules.measure.outline import Narrowed, PlateEnds
from rules.solids.gap import gap
from rules.solids.shapes import Ball, solid
from rules.values.corner.upright_parts import plate_part

FRONT, HIGH = -60.0, 400.0


def from_plate(corner: float, ahead: float, above: float, bore: float | None = 80.0) -> float:
    """From a plate 140 x 260 x 10 mm, its axis in the middle, to a ball of 1 mm beside its own middle plane, mm."""
    plate = plate_part(140.0, 260.0, 130.0, 70.0, corner, 10.0, bore, FRONT, HIGH)
    return gap(plate.solid, solid(Ball((ahead, FRONT - 5.0, HIGH + above), 1.0))).distance


@pytest.mark.parametrize("corner", [0.0, 20.0, 69.9, 70.0])
def test_from_the_plates_straight_sides(corner: float) -> None:
    assert from_plate(corner, 90.0, 0.0) == pytest.approx(90 - 70 - 1, abs=0.05)
    assert from_plate(corner, 0.0, 150.0) == pytest.approx(150 - 130 - 1, abs=0.05)


@pytest.mark.parametrize("ahead", [-1, 1])
@pytest.mark.parametrize("above", [-1, 1])
@pytest.mark.parametrize("corner", [20.0, 70.0])
def test_from_the_round_of_a_corner(corner: float, ahead: int, above: int) -> None:
    """Seen from the middle of the round, the ball's middle at the square corner is the radius x root 2 away."""
    assert from_plate(corner, ahead * 70.0, above * 130.0) == pytest.approx(corner * (2**0.5 - 1) - 1, abs=0.05)


def test_inside_the_bore() -> None:
    assert from_plate(70.0, 0.0, 0.0) == pytest.approx(40 - 1, abs=0.05)
    assert from_plate(20.0, 15.0, 20.0) == pytest.approx(40 - hypot(15, 20) - 1, abs=0.05)


@pytest.mark.parametrize(
    ("corner", "bore", "says"),
    [
        (0.0, 139.9, None),
        (0.0, 140.0, "does not lie inside its outline"),
        (20.0, 139.9, None),  # the squares of the corners begin 50 beside the wheel centre and 110 above it: 120.8 away
        (70.0, 119.9, None),  # 0 beside and 60 above: 60 away
        (70.0, 120.1, "reaches into the round of a corner"),
    ],
)
def test_bores_that_a_plate_cannot_have_or_that_are_not_drawn(corner: float, bore: float, says: str | None) -> None:
    if says is None:
        assert from_plate(corner, 0.0, 0.0, bore) == pytest.approx(bore / 2 - 1, abs=0.05)
        return
    with pytest.raises(NotJudged, match=says):
        from_plate(corner, 0.0, 0.0, bore)


ENDS = PlateEnds(Narrowed(80.0, -10.0, 50.0), None)
"""A round end 80 wide, 10 behind the wheel centre: its middle is 130 - 40 = 90 above the wheel centre."""


@pytest.mark.parametrize(("ahead", "above", "away"), [(-10.0, 150.0, 20.0), (-70.0, 170.0, 60.0), (90.0, 0.0, 20.0)])
def test_a_narrowed_end_is_round_about_the_axis(ahead: float, above: float, away: float) -> None:
    """Over the end, beside it (60 and 80 from its middle: 100 - 40), and beside the full width."""
    plate = plate_part(140.0, 260.0, 130.0, 70.0, 15.0, 10.0, 80.0, FRONT, HIGH, ENDS)
    ball = solid(Ball((ahead, FRONT - 5.0, HIGH + above), 1.0))
    assert gap(plate.solid, ball).distance == pytest.approx(away - 1, abs=0.05)


def test_a_bore_that_reaches_into_a_round_end_is_not_drawn() -> None:
    """The end's middle is 50 above; a bore of 104 reaches past its ring's inside, which is 40 cos 70 or so from that."""
    near = PlateEnds(Narrowed(130.0, 0.0, 0.0), None)
    with pytest.raises(NotJudged, match="bore"):
        plate_part(140.0, 260.0, 66.0, 70.0, 0.0, 10.0, 131.0, FRONT, HIGH, near)
