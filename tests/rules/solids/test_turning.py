"""What turns about the wheel's axis, over a full turn, against what does not."""

from math import pi

import pytest

from rules.solids.gap import gap
from rules.solids.shapes import Ball, Bore, Cylinder, Prism, Revolved, Rod, Shape, block, box_tube, hexagon, ring, solid
from rules.solids.space import Motion, Vector, shift, turn
from rules.solids.turning import all_round, turning_gap

HUB: Vector = (10.0, -20.0, 380.0)
SPINDLE: Vector = (0.0, 1.0, 0.0)
X: Vector = (1.0, 0.0, 0.0)
Z: Vector = (0.0, 0.0, 1.0)
STEPS = 720

TURNING: dict[str, tuple[Shape, ...]] = {
    "ball": (Ball((70.0, 0.0, 380.0), 12.0),),
    "stud": (Rod((60.0, -10.0, 400.0), (60.0, 40.0, 400.0), 6.0),),
    "stud head": (Cylinder((60.0, -22.0, 400.0), (60.0, -14.0, 400.0), 11.0),),
    "nut": (hexagon((60.0, 0.0, 400.0), (60.0, 20.0, 400.0), 19.0),),
}
STANDING = {
    "beam": solid(*box_tube((20.0, -110.0, 300.0), (0.0, -90.0, 470.0), X, 60.0, 40.0, 4.0)),
    "rod": solid(Rod((150.0, -30.0, 330.0), (120.0, -300.0, 340.0), 11.0)),
    "arm": solid(block((60.0, 70.0, 330.0), X, Z, 120.0, 20.0, 12.0)),
    "bolt": solid(Cylinder((5.0, -50.0, 375.0), (5.0, -45.0, 381.0), 8.0)),
}


@pytest.mark.parametrize("still", STANDING)
@pytest.mark.parametrize("turns", TURNING)
def test_as_little_as_at_the_worst_of_many_positions(turns: str, still: str) -> None:
    """Never more than in any of 720 positions of the wheel, and no less than one half a step further might have.

    On a circle of 90 mm half a step is 0.4 mm; near its least a gap changes by far less, but at a corner it may do so.
    """
    swept = turning_gap(all_round(TURNING[turns], HUB, SPINDLE), STANDING[still])
    part = solid(*TURNING[turns])
    least = min(
        gap(part.moved(turn(HUB, SPINDLE, 2 * pi * step / STEPS)), STANDING[still]).distance for step in range(STEPS)
    )
    assert swept
    if least > 0:
        assert least - 0.4 < swept.distance < least + 0.05
    else:
        assert swept.distance < 0.05


@pytest.mark.parametrize(
    ("place", "clock"),
    [((0.0, 0.0, 200.0), 0.0), ((200.0, 0.0, 0.0), pi / 2), ((-200.0, 0.0, 0.0), -pi / 2), ((150.0, 0.0, -150.0), 3 * pi / 4)],
)  # fmt: skip
@pytest.mark.parametrize("axis", [(0.0, 1.0, 0.0), (0.0, -1.0, 0.0)])
def test_where_round_the_clock(axis: Vector, place: Vector, clock: float) -> None:
    """From straight up, plus forwards, whichever way along the wheel's axis the axis is given."""
    found = turning_gap(all_round((Ball((0.0, 0.0, 50.0), 5.0),), (0.0, 0.0, 0.0), axis), solid(Ball(place, 10.0)))
    assert found and found.clock == pytest.approx(clock, abs=1e-6)


def test_a_plate_beside_a_rotor() -> None:
    """The rotor's inboard face is at -55.45 and the plate's front at -50.8: the plate stands 4.65 in the rotor."""
    hub = (0.0, 0.0, 0.0)
    rotor = all_round((ring(hub, SPINDLE, 70.0, 140.0, -55.45, -33.0),), hub, SPINDLE)
    square = ((-90.0, -90.0), (90.0, -90.0), (90.0, 90.0), (-90.0, 90.0))
    plate = solid(Prism((0.0, -50.8 - 9.5, 0.0), Z, X, square, 0.0, 9.5, Bore((0.0, 0.0), 45.0)))
    found = turning_gap(rotor, plate)
    assert found and found.distance == pytest.approx(-4.65, abs=0.05)
    clear = turning_gap(rotor, plate.moved(shift((0.0, -10.0, 0.0))))
    assert clear and clear.distance == pytest.approx(10.0 - 4.65, abs=0.05)


def test_a_ring_given_the_other_way_along_its_axis() -> None:
    """A rotor 20 thick, drawn on an axis that runs inboard; a ball of radius 5, 31 inboard of its middle: 31 - 10 - 5."""
    rotor = all_round((ring((10.0, -70.0, 380.0), (0.0, -1.0, 0.0), 70.0, 120.0, -10.0, 10.0),), HUB, SPINDLE)
    found = turning_gap(rotor, solid(Ball((10.0, -101.0, 480.0), 5.0)))
    assert found and found.distance == pytest.approx(16.0, abs=0.01)
    assert (found.radius, found.along) == pytest.approx((100.0, -96.0 + 20.0), abs=0.1)


def test_it_moves_with_its_axis() -> None:
    """Steered by a quarter turn about the vertical through the hub, and the rest with it, nothing changes; alone, it does."""
    tyre = all_round(
        (Revolved(HUB, SPINDLE, ((230.0, -80.0), (340.0, -80.0), (340.0, 80.0), (230.0, 80.0)), 40.0),), HUB, SPINDLE
    )
    arm = solid(Rod((0.0, -200.0, 380.0), (0.0, -500.0, 380.0), 15.0))
    steered: Motion = turn(HUB, Z, pi / 2)
    before, with_it = turning_gap(tyre, arm), turning_gap(tyre.moved(steered), arm.moved(steered))
    assert before and with_it and with_it.distance == pytest.approx(before.distance, abs=0.05)
    alone = turning_gap(tyre.moved(steered), arm)
    assert alone and alone.distance < 0 < before.distance


def test_what_is_not_known_over_a_full_turn_is_refused() -> None:
    """A bolt across the axis, and a plate with a bore; and a part that was never taken all round."""
    for shape in (Cylinder((50.0, 0.0, 0.0), (60.0, 0.0, 0.0), 5.0), Rod((50.0, 0.0, 0.0), (60.0, 3.0, 0.0), 5.0)):
        with pytest.raises(ValueError, match="stands along the axis"):
            all_round((shape,), (0.0, 0.0, 0.0), SPINDLE)
    whole = ring(HUB, SPINDLE, 70.0, 140.0, -10.0, 10.0)
    half = Revolved(HUB, SPINDLE, whole.profile, towards=Z, half_angle=pi / 2)
    for shapes in ((Ball(HUB, 5.0),), (half,), (whole, Ball(HUB, 5.0)), (Ball(HUB, 5.0), whole), (whole, half)):
        with pytest.raises(ValueError, match="goes all round"):
            turning_gap(solid(*shapes), solid(Ball(HUB, 5.0)))
