"""From foot to pads by hand, and which axle locks first against both axles balanced as a rigid car."""

from math import pi

import pytest

from rules.graph.results import OutsideRange
from rules.strength.hydraulics import pedal_travel, piston_volume, pressure, rear_locks_at
from tests.support.declared import the_value


def test_pressure_by_hand() -> None:
    """100 lbf at 6 to 1 on a 7/8 in bore: 600 lbf over 0.601320 in2 is 997.8 psi, 6.8796 MPa (1 psi = 6894.757 Pa)."""
    assert pressure(100 * 4.4482216, 6.0, 22.225) == pytest.approx(997.8 * 0.006894757, rel=1e-4)
    assert pressure(100 * 4.4482216, 6.0, 22.225, 0.6) == pytest.approx(0.6 * 6.8796, rel=1e-4)


@pytest.mark.parametrize(("rear_bore", "travel"), [(15.875, 38.095), (22.225, 35.42)])
def test_of_two_cylinders_on_one_pedal_the_one_that_moves_farther_counts(rear_bore: float, travel: float) -> None:
    """Front 2290.2 mm3 and rear 1256.6 mm3 at 0.5 mm a pad. 387.95 mm2 of 22.225: 35.42 at a ratio of 6; the rear one of as much
    less, 19.4; of 15.875, 197.93 mm2, it is 38.09."""
    worked = the_value("pedal_travel")(6.0, 22.225, rear_bore, 0.5, "sliding", 54.0, 1, "sliding", 40.0, 1)
    assert worked == pytest.approx(travel, rel=1e-3)


def test_pedal_travel_by_hand() -> None:
    """Two sliding calipers, one 54 mm piston each, 0.5 mm: 2 x 2290.221 x 0.5 = 2290.2 mm3; two fixed ones take twice that.

    Over 387.95 mm2 and times 6: 35.42 mm.
    """
    volume = piston_volume(54.0, 1, False, 0.5)
    assert volume == pytest.approx(2290.2, rel=1e-4)
    assert piston_volume(54.0, 1, True, 0.5) == pytest.approx(2 * volume)
    assert pedal_travel(volume, 22.225, 6.0) == pytest.approx(35.42, rel=1e-3)
    assert pi * 22.225**2 / 4 == pytest.approx(387.95, rel=1e-4)


@pytest.mark.parametrize("share, front_weight", [(0.7, 0.5), (0.62, 0.48), (0.9, 0.55)])
def test_at_the_deceleration_found_both_axles_use_the_same_grip(share: float, front_weight: float) -> None:
    """Moments about the rear tyre's foot: front load = front weight + deceleration x height / wheelbase, of the car's weight."""
    height, wheelbase = 640.0, 2500.0
    found = rear_locks_at(share, front_weight, height, wheelbase)
    front, rear = front_weight + found * height / wheelbase, 1 - front_weight - found * height / wheelbase
    assert share * found / front == pytest.approx((1 - share) * found / rear)
    harder = found * 1.1
    front, rear = front_weight + harder * height / wheelbase, 1 - front_weight - harder * height / wheelbase
    assert (1 - share) * harder / rear > share * harder / front  # the rear slides first


def test_a_car_braked_more_at_the_rear_than_it_weighs_there_locks_it_at_any_deceleration() -> None:
    assert rear_locks_at(0.45, 0.5, 600.0, 2500.0) == 0.0
    with pytest.raises(OutsideRange):
        rear_locks_at(0.7, 0.5, 0.0, 2500.0)
