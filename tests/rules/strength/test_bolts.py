"""Bolt groups by hand and against bolt-pattern-elastic-method 1.0.1, whose figures stand here as literals."""

from math import cos, inf, pi, sin

import numpy as np
import pytest

from rules.graph.results import OutsideRange
from rules.measure.outline import circle_places
from rules.strength.bolts import (
    Clamped,
    clamp_limits,
    group_pulls,
    group_shears,
    group_turns,
    least_preload,
    moments_about_middle,
    pull_and_shear_stress,
    tightening_torque,
)

TAPERED = [(-30.0, 40.0), (30.0, 40.0), (45.0, -44.0), (-45.0, -44.0)]


def test_a_tapered_group_is_that_of_the_library() -> None:
    # Library: Fx 3000, Fy -5000, Fz 2000 N, Mx 250 000, My -130 000, Mz 90 000 N mm, all at (0, 0), 2 above the middle.
    # Its plane is (x, y) with z out; here it is (x, z) with y out, so that a twist turns the other way.
    pulls = group_pulls(TAPERED, 2000.0, 250_000.0 + 2 * 2000.0, 130_000.0)
    assert pulls == pytest.approx([1345.23810, 2678.57143, -11.90476, -2011.90476], abs=1e-4)
    shears = group_shears(TAPERED, 3000.0, -5000.0, -(90_000.0 - 2 * 3000.0))
    assert shears == pytest.approx([1521.82629, 1157.43905, 1401.19001, 1851.42339], abs=1e-4)


def test_five_on_a_circle_share_a_moment_as_theory_says() -> None:
    # 2 M / (n r) on the farthest, M / (n r) each in twist: r 57.15, M 1000: 6.9991 and 3.4996
    places = [(57.15 * sin(turn * 2 * pi / 5), 57.15 * cos(turn * 2 * pi / 5)) for turn in range(5)]
    assert max(group_pulls(places, 0.0, 1000.0, 0.0)) == pytest.approx(6.9991, abs=1e-4)
    assert group_shears(places, 0.0, 0.0, 1000.0) == pytest.approx([3.4996] * 5, abs=1e-4)


def test_pulls_balance_force_and_moment() -> None:
    pulls = group_pulls(TAPERED, 500.0, 80_000.0, -30_000.0)
    assert sum(pulls) == pytest.approx(500.0)
    assert sum(pull * (z + 2) for pull, (_, z) in zip(pulls, TAPERED, strict=True)) == pytest.approx(80_000.0)
    assert sum(pull * x for pull, (x, _) in zip(pulls, TAPERED, strict=True)) == pytest.approx(-30_000.0)


ANYWHERE = [(-60.0, 10.0), (45.0, 70.0), (30.0, -55.0), (-20.0, -40.0), (5.0, 15.0)]


def test_bolts_that_lie_anywhere_balance_force_and_moment_and_stretch_as_a_flat_plate() -> None:
    pulls = group_pulls(ANYWHERE, 700.0, 90_000.0, -40_000.0)
    middle_x, middle_z = (sum(place[axis] for place in ANYWHERE) / 5 for axis in (0, 1))
    assert sum(pulls) == pytest.approx(700.0)
    off = [(x - middle_x, z - middle_z) for x, z in ANYWHERE]
    assert sum(pull * z for pull, (_, z) in zip(pulls, off, strict=True)) == pytest.approx(90_000.0)
    assert sum(pull * x for pull, (x, _) in zip(pulls, off, strict=True)) == pytest.approx(-40_000.0)
    # Alike bolts under a rigid plate: least squares of a plane through five places gives the same pulls.
    columns = np.array([[1.0, x, z] for x, z in off])
    wanted = np.array([700.0, -40_000.0, 90_000.0])
    plane = np.linalg.solve(columns.T @ columns, wanted)
    assert pulls == pytest.approx(list(columns @ plane))


@pytest.mark.parametrize("count", [3, 4, 5, 6])
def test_bolts_on_a_circle_share_a_moment_as_two_over_n_r(count: int) -> None:
    """The worst of n bolts on a circle of radius r, on the moment's own line, takes 2 M / (n r)."""
    pulls = group_pulls(circle_places(count, 120.0, 0.0), 0.0, 90_000.0, 0.0)
    assert max(pulls) == pytest.approx(2 * 90_000 / (count * 60.0))
    turned = group_pulls(circle_places(count, 120.0, 0.4), 0.0, 90_000.0, 0.0)
    assert max(turned) <= max(pulls) * (1 + 1e-9)


def test_bolts_on_one_slanting_line_hold_no_moment_across_it() -> None:
    with pytest.raises(OutsideRange, match="one line"):
        group_pulls([(-30.0, -40.0), (0.0, 0.0), (30.0, 40.0)], 0.0, 1000.0, 0.0)


def test_bolts_in_a_row_hold_no_moment_across_it() -> None:
    row = [(-40.0, 0.0), (40.0, 0.0)]
    assert group_pulls(row, 0.0, 0.0, 8000.0) == [-100.0, 100.0]
    with pytest.raises(OutsideRange, match="on one line"):
        group_pulls(row, 0.0, 8000.0, 0.0)
    with pytest.raises(OutsideRange, match="one bolt"):
        group_shears([(5.0, 5.0)], 10.0, 0.0, 100.0)


def test_a_push_is_not_set_off_against_shear_and_not_added_to_it() -> None:
    assert pull_and_shear_stress(-9000.0, 1000.0, 80.0, 50.0) == pytest.approx(20 * 3**0.5)
    assert pull_and_shear_stress(8000.0, 0.0, 80.0, 50.0) == pytest.approx(100.0)


def test_torque_grows_with_each_of_its_factors() -> None:
    assert tightening_torque(0.2, 12.0, 50_000.0) == pytest.approx(120_000.0)


UNEVEN = [(0.0, 60.0), (58.0, 15.0), (40.0, -45.0), (-50.0, 20.0)]


def test_bolts_off_the_axis_hold_force_and_moment_about_the_axis() -> None:
    """Every force of the group, summed about the axis and not about its middle, gives back what was put on: statics."""
    force, moment = (300.0, 900.0, -500.0), (20_000.0, 7000.0, -35_000.0)
    about_x, about_y, about_z = moments_about_middle(UNEVEN, force, moment)
    pulls = group_pulls(UNEVEN, force[1], -about_x, about_z)
    turns = group_turns(UNEVEN, about_y)
    each = [
        np.array([force[0] / 4 + turn[0], pull, force[2] / 4 + turn[1]])
        for pull, turn in zip(pulls, turns, strict=True)
    ]
    arms = [np.array([x, 0.0, z]) for x, z in UNEVEN]
    assert sum(each) == pytest.approx(np.array(force))
    assert sum(np.cross(arm, one) for arm, one in zip(arms, each, strict=True)) == pytest.approx(np.array(moment))


def test_a_pull_through_the_axis_pulls_the_far_bolts_of_an_uneven_group_least() -> None:
    """Two bolts above, one below the axis, in a column: 3000 N at the axis, places 60, 40 and -40.

    By hand: middle 20 up; the pull lies 20 below it, 60 000 N mm; squares 40^2 + 20^2 + 60^2 = 5600: 10.714 N for each mm.
    1000 - 428.6, 1000 - 214.3, 1000 + 642.9 N.
    """
    places = [(0.0, 60.0), (0.0, 40.0), (0.0, -40.0)]
    about_x, _, about_z = moments_about_middle(places, (0.0, 3000.0, 0.0), (0.0, 0.0, 0.0))
    assert group_pulls(places, 3000.0, -about_x, about_z) == pytest.approx([571.43, 785.71, 1642.86], abs=0.01)


@pytest.mark.parametrize(
    ("bolts", "pull", "opens", "slips"),
    [
        # Preload 30 000 N each, of which 0.15 is friction: 4500 under each bolt.
        (((6000.0, 1000.0), (2000.0, 3000.0)), 4000.0, 30_000 / 6000, 4500 / (3000 + 0.15 * 4000 / 2)),
        (((2000.0, 3000.0), (6000.0, 1000.0)), 4000.0, 30_000 / 6000, 4500 / (3000 + 0.15 * 4000 / 2)),
        # a push presses the faces together, and is not counted on
        (((6000.0, 3000.0), (-9000.0, 1000.0)), -3000.0, 30_000 / 6000, 4500 / 3000),
        (((3000.0, 0.0),) * 3, 9000.0, 30_000 / 3000, 4500 / (0.15 * 9000 / 3)),
        (((-3000.0, 100.0), (0.0, 50.0)), -3000.0, inf, 4500 / 100),
        (((5.0, 0.0), (-5.0, 0.0)), 0.0, 30_000 / 5, inf),
        (((0.5, 0.0), (-0.5, 0.0)), 0.0, 30_000 / 0.5, inf),  # however little
    ],
)  # fmt: skip
def test_a_clamped_joint_opens_at_its_worst_bolt_and_slips_at_the_one_that_holds_most_sideways(
    bolts: tuple[tuple[float, float], ...], pull: float, opens: float, slips: float
) -> None:
    found = clamp_limits(30_000.0, Clamped("bump", bolts, pull))
    assert found == {"the joint opens": pytest.approx(opens), "the faces slip": pytest.approx(slips)}


def test_what_a_torque_leaves_at_worst() -> None:
    """Three quarters of T / (K d): 100 N m on an M12 at 0.2 is 41 667 N, of which 31 250 are counted on."""
    assert least_preload(100_000.0, 0.2, 12.0) == pytest.approx(31_250.0)
    assert least_preload(100_000.0, 0.1, 12.0) == pytest.approx(62_500.0)
    assert tightening_torque(0.2, 12.0, 41_666.67) == pytest.approx(100_000.0)
