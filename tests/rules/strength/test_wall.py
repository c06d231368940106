"""Yield lines of a wall under an arm: the mechanism of the published formulas worked out again, and limits they must have."""

from math import pi, sqrt

import pytest

from rules.graph.results import OutsideRange
from rules.strength.wall import (
    WIDEST,
    beside_moment,
    beside_moment_across,
    beside_pull,
    wall_holds,
    wall_moment,
    wall_moment_across,
    wall_pull,
)


def least_pull_by_lines(yields: float, thick: float, wall: float, across: float, along: float) -> float:
    """The pull of the usual fan-free mechanism with its free length tried out: work in every yield line over the rise.

    Straight lines along both edges of the wall and of the rectangle, slanting lines from its corners to the edges `reach`
    beyond its ends, and a line across each end. Plastic moment of 1 mm of wall: S t^2 / 4.
    """
    plastic, gap = yields * thick**2 / 4, (wall - across) / 2

    def work(reach: float) -> float:
        sides = 2 * ((along + 2 * reach) + along) / gap  # lines along the wall, at its edges and at the rectangle's
        ends = 2 * (wall + across) / reach  # lines across it, beyond each end and at each end
        slanting = 4 * (reach / gap + gap / reach)  # four, each by its parts along and across
        return plastic * (sides + ends + slanting)

    return min(work(0.01 * step * wall) for step in range(1, 400))


@pytest.mark.parametrize("across, along", [(30.0, 30.0), (50.0, 50.0), (60.0, 20.0), (40.0, 120.0)])
def test_the_pull_is_that_of_its_mechanism(across: float, along: float) -> None:
    """EN 1993-1-8 Table 7.11 from memory: S t^2 / (1 - b) (2 h + 4 root(1 - b)); the tried-out length may only be higher."""
    formula = wall_pull(250.0, 5.0, 100.0, across, along)
    tried = least_pull_by_lines(250.0, 5.0, 100.0, across, along)
    assert tried == pytest.approx(formula, rel=0.02)


def test_the_pull_by_hand() -> None:
    # 250 x 25 = 6250; over 0.5 is 12 500; 2 x 0.5 + 4 x 0.7071068 = 3.8284271
    assert wall_pull(250.0, 5.0, 100.0, 50.0, 50.0) == pytest.approx(12_500 * (1 + 4 * sqrt(0.5)))


def test_the_moments_by_hand() -> None:
    # along: 6250 x 50 x (1 + 2.8284271 + 1); across: 6250 x (50 x 3 / 2 + root(2 x 100 x 50 x 3) = 173.2050808)
    assert wall_moment(250.0, 5.0, 100.0, 50.0, 50.0) == pytest.approx(312_500 * 4.8284271)
    assert wall_moment_across(250.0, 5.0, 100.0, 50.0, 50.0) == pytest.approx(6250 * 248.2050808)


@pytest.mark.parametrize("holds", [wall_pull, wall_moment, wall_moment_across])
def test_thicker_holds_more_as_the_square_and_too_wide_an_arm_is_refused(holds: object) -> None:
    assert callable(holds)
    assert holds(250.0, 10.0, 100.0, 50.0, 50.0) == pytest.approx(4 * holds(250.0, 5.0, 100.0, 50.0, 50.0))
    holds(250.0, 5.0, 100.0, WIDEST * 100.0, 50.0)
    with pytest.raises(OutsideRange, match=r"0\.85 of the wall"):
        holds(250.0, 5.0, 100.0, WIDEST * 100.0 + 0.1, 50.0)


def test_what_the_walls_beside_it_hold_by_hand() -> None:
    """EN 1993-1-8 Tables 7.11 and 7.14, from memory: 250 MPa, walls 6 mm, an arm 40 mm along, 88 mm between them."""
    assert beside_pull(250.0, 6.0, 40.0) == pytest.approx(1500 * 140)  # 2 x 40 + 10 x 6
    assert beside_moment(250.0, 6.0, 40.0) == pytest.approx(1500 * 70**2 / 2)  # 40 + 5 x 6
    assert beside_moment_across(250.0, 6.0, 88.0, 40.0) == pytest.approx(1500 * 94 * 70)


def test_an_arm_as_wide_as_its_wall_is_held_by_the_walls_beside_it_and_never_by_nothing() -> None:
    """At 0.85 of the wall its lines alone, at all of it the edges alone, half way (0.925) the mean; wider counts no more."""

    def across(wide: float, beside: float = 5.0) -> float:
        return wall_holds(250.0, 5.0, beside, 100.0, wide, 50.0).across

    lines, edges = wall_moment_across(250.0, 5.0, 100.0, 85.0, 50.0), beside_moment_across(250.0, 5.0, 100.0, 50.0)
    assert lines < edges
    assert across(85.0) == pytest.approx(lines)
    assert across(92.5) == pytest.approx((lines + edges) / 2)
    assert across(100.0) == across(130.0) == pytest.approx(edges)
    thin = beside_moment_across(
        250.0, 1.5, 100.0, 50.0
    )  # 250 x 1.5 x 101.5 x 57.5: less than the lines hold at any such width
    assert thin < lines and across(85.0, 1.5) == across(100.0, 1.5) == pytest.approx(thin)


def test_a_narrower_wall_than_the_arm_never_makes_it_hold_more() -> None:
    for held in ("pull", "along", "across"):
        narrower = [getattr(wall_holds(250.0, 5.0, 5.0, wall, 100.0, 50.0), held) for wall in (100.0, 80.0, 60.0, 30.0)]
        assert narrower == sorted(narrower, reverse=True), held


def test_a_round_arm_holds_pi_over_4_of_a_square_one() -> None:
    """EN 1993-1-8 Table 7.11, last line, from memory. The pull of a square of 50 mm is 47 855 N by hand above: 37 585 N."""
    square, ring = (wall_holds(250.0, 5.0, 5.0, 100.0, 50.0, 50.0, rounded) for rounded in (False, True))
    assert ring.pull == pytest.approx(37_585, rel=1e-4)
    assert ring.along == pytest.approx(pi / 4 * square.along) and ring.across == pytest.approx(pi / 4 * square.across)
