"""Row loads, static safety, life and distance of a hub bearing, by hand."""

from math import pi

import pytest

from rules.graph.results import OutsideRange
from rules.strength.bearing import (
    DYNAMIC_SHARE,
    STATIC_SHARE,
    basic_life,
    life_load,
    life_of_two_rows,
    mean_load,
    row_loads,
    static_row_load,
    static_safety,
    turns_per_kilometre,
)
from rules.tables.static_safety import RollingElement


def test_a_central_load_is_shared_evenly_and_its_thrust_is_the_pairs() -> None:
    rows = row_loads((-600.0, -500.0, 800.0), (0.0, 0.0, 0.0), 60.0)
    assert rows.outboard == rows.inboard == (-300.0, 400.0)
    assert (rows.outboard_size, rows.inboard_size, rows.thrust) == (500.0, 500.0, 500.0)


def test_the_rows_give_back_the_moment_they_were_made_from() -> None:
    force, moment, spread = (-3000.0, -4000.0, 9000.0), (-1_360_000.0, 0.0, 64_000.0), 57.0
    rows = row_loads(force, moment, spread)
    (out_x, out_z), (in_x, in_z) = rows.outboard, rows.inboard
    assert (out_x + in_x, out_z + in_z) == pytest.approx((-3000.0, 9000.0))
    # y of the rows: +28.5 and -28.5. Moments about the middle: y Fz, and -y Fx.
    assert 28.5 * out_z - 28.5 * in_z == pytest.approx(-1_360_000.0)
    assert -28.5 * out_x + 28.5 * in_x == pytest.approx(64_000.0)


def test_a_steering_moment_loads_the_rows_fore_and_aft() -> None:
    rows = row_loads((0.0, 0.0, 0.0), (0.0, 0.0, 60_000.0), 60.0)
    assert (rows.outboard, rows.inboard) == ((-1000.0, 0.0), (1000.0, 0.0))


def test_the_worse_row_is_named() -> None:
    assert row_loads((0.0, 0.0, 4000.0), (40_000.0, 0.0, 0.0), 60.0).worst == (pytest.approx(2666.6667), "outboard row")
    assert row_loads((0.0, 0.0, 4000.0), (-40_000.0, 0.0, 0.0), 60.0).worst == (pytest.approx(2666.6667), "inboard row")


@pytest.mark.parametrize("spread", [0.0, -10.0])
def test_rows_that_are_not_apart_are_refused(spread: float) -> None:
    with pytest.raises(OutsideRange):
        row_loads((0.0, 0.0, 1.0), (0.0, 0.0, 0.0), spread)


@pytest.mark.parametrize("element, load", [("ball", 2380.0), ("roller", 3000.0)])
def test_static_load_of_a_row(element: RollingElement, load: float) -> None:
    assert static_row_load(2000.0, 1000.0, element) == pytest.approx(load)  # 0.38 of the thrust, or all of it


def test_static_safety_uses_half_the_units_rating() -> None:
    assert static_safety(40_000.0, 10_000.0, 0.0, "ball") == pytest.approx(2.0)
    with pytest.raises(OutsideRange):
        static_safety(40_000.0, 0.0, 0.0, "ball")


def test_a_purely_central_load_gives_the_units_own_catalogue_figures() -> None:
    # Two rows at half the load each must come out as the unit does: C0/P0, and (C/P)^3 for balls.
    assert static_safety(60_000.0, 6000.0, 0.0, "ball") == pytest.approx(60_000 / 12_000)
    row = basic_life(DYNAMIC_SHARE["ball"] * 40_000.0, life_load(2000.0, 0.0, "ball"), "ball")
    assert life_of_two_rows(row, row, "ball") == pytest.approx((40_000 / 4000) ** 3)
    # Rollers: the rating was derived with p = 4, and life is taken with 10/3, so the rows come out some 10 % careful.
    row = basic_life(DYNAMIC_SHARE["roller"] * 40_000.0, life_load(2000.0, 0.0, "roller"), "roller")
    assert 0.88 < life_of_two_rows(row, row, "roller") / (40_000 / 4000) ** (10 / 3) < 1.0


def test_shares_of_the_rating() -> None:
    assert STATIC_SHARE == 0.5
    assert pytest.approx({"ball": 1 / 1.62450, "roller": 1 / 1.71449}, rel=1e-5) == DYNAMIC_SHARE


def test_two_rows_live_shorter_than_the_worse_one() -> None:
    assert life_of_two_rows(100.0, 1e9, "ball") == pytest.approx(100.0, rel=1e-3)
    assert life_of_two_rows(100.0, 200.0, "ball") < 100.0


def test_doubling_the_load_of_a_ball_bearing_leaves_an_eighth_of_its_life() -> None:
    assert basic_life(40.0, 4.0, "ball") / basic_life(40.0, 8.0, "ball") == pytest.approx(8.0)
    with pytest.raises(OutsideRange):
        basic_life(40.0, 0.0, "ball")


def test_a_steady_load_is_its_own_mean() -> None:
    assert mean_load(((0.9, 3000.0), (0.1, 3000.0)), "roller") == pytest.approx(3000.0)


def test_a_smaller_tyre_turns_oftener() -> None:
    # 1000 mm round when rolling: 1000 turns in a kilometre
    assert turns_per_kilometre(1000.0 / pi / 0.97) == pytest.approx(1000.0)
    assert turns_per_kilometre(600.0) > turns_per_kilometre(800.0)
