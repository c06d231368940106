"""The flat wall under a pivot's lugs, by hand: 250 MPa, 5 mm thick, 100 mm wide, lugs 50 x 50 mm on its middle.

EN 1993-1-8 Tables 7.11 and 7.14, from memory: 6250 / 0.5 x (1 + 2.828427) = 47 855 N; along 312 500 x 4.828427 = 1 508 883 N mm;
across 6250 x 248.20508 = 1 551 282 N mm.
"""

import pytest

from rules.graph.results import NotJudged, OutsideRange, Waits
from rules.measure.vectors import Vector
from rules.sheet.welds import WeldUpper
from rules.strength.corner_loads import CaseLoads, CornerLoads
from rules.strength.margin import Margin
from rules.values.strength.walls import Wall, wall_under_arm_safety, wall_under_which_lug_safety

NONE: Vector = (0.0, 0.0, 0.0)
PAIR = {
    "form": "fillet on both sides", "run": 50.0, "apart": 50.0, "thickness_two": 5.0, "runs_lie": "up and down",
    "apart_lies": "fore and aft", "load_ahead": 0.0, "load_above": 0.0, "load_inboard": 40.0,
}  # fmt: skip


def found(force: Vector, width: float | None = 100.0, **changed: object) -> Margin:
    loads = CornerLoads(None, (CaseLoads("kerb", NONE, NONE, NONE, force, NONE, NONE),))
    weld = WeldUpper.record({**PAIR, **changed})
    return wall_under_which_lug_safety(weld, width, 5.0, 250.0, loads, "upper", "upper_pivot", "wall under upper lugs")


@pytest.mark.parametrize(
    "force, holds",
    [
        ((0.0, 1000.0, 0.0), 47_855),  # square to the wall
        ((0.0, 0.0, 1000.0), 1_508_883 / 40),  # up, 40 off the wall: turns the lugs up and down along it
        ((1000.0, 0.0, 0.0), 1_551_282 / 40),  # ahead: tips them from one edge of the wall to the other
    ],
)
def test_each_way_by_hand(force: Vector, holds: float) -> None:
    assert found(force) == pytest.approx(holds / 1000, rel=1e-4)


def test_all_ways_at_once_add_up() -> None:
    used = 1000 / 47_855 + 40_000 / 1_508_883 + 40_000 / 1_551_282
    assert found((1000.0, 1000.0, 1000.0)) == pytest.approx(1 / used, rel=1e-4)


def test_what_it_needs_and_where_it_does_not_hold() -> None:
    with pytest.raises(NotJudged, match="not said to stand"):
        found((0.0, 1000.0, 0.0), width=None)
    with pytest.raises(Waits):
        wall_under_which_lug_safety(
            WeldUpper.record({"form": "fillet on both sides"}),
            100.0,
            5.0,
            250.0,
            CornerLoads(None, ()),
            "upper",
            "upper_pivot",
            "",
        )
    with pytest.raises(OutsideRange, match="same way"):
        found((0.0, 1000.0, 0.0), apart_lies="up and down")


def test_lugs_as_far_apart_as_the_wall_is_wide_stand_on_the_walls_beside_it() -> None:
    """b = 0.85, h = 0.5: 6250 / 0.15 x (1 + 4 x root 0.15 = 1.549193) = 106 216 N by lines; 187 500 N at the edges,
    1250 x 150."""
    assert found((0.0, 1000.0, 0.0), apart=85.0) == pytest.approx(106.216, rel=1e-4)
    assert found((0.0, 1000.0, 0.0), apart=95.0) == pytest.approx((106.216 + 2 * 187.5) / 3, rel=1e-4)
    assert found((0.0, 1000.0, 0.0), apart=100.0) == found((0.0, 1000.0, 0.0), apart=120.0) == pytest.approx(187.5)


def test_another_form_of_weld_never_takes_the_wall_out_of_the_judgement() -> None:
    """A bevel or one run is as wide as its lug: b = 0.1: 6250 / 0.9 x (1 + 4 x root 0.9) = 33 297 N. A cup: pi / 4 of 47 855."""
    for form in ("full bevel", "fillet on one side"):
        assert found((0.0, 1000.0, 0.0), form=form, thickness_one=10.0) == pytest.approx(33.297, rel=1e-4)
    assert found((0.0, 1000.0, 0.0), form="fillet round a tube or cup") == pytest.approx(37.585, rel=1e-4)


def test_a_round_arm_reads_pi_over_4_of_a_square_one() -> None:
    """Square: 1 551 282 N mm against 1000 N x 50 mm, 31.03; round 24.37."""
    loads = CornerLoads(None, (CaseLoads("kerb", NONE, NONE, NONE, NONE, NONE, (0.0, 1000.0, 0.0)),))
    for rounded, factor in ((False, 31.026), (True, 24.367)):
        wall = Wall(5.0, 100.0, 5.0, 50.0, 50.0, 50.0, rounded)
        assert wall_under_arm_safety(wall, 250.0, loads) == pytest.approx(factor, rel=1e-4)


@pytest.mark.parametrize(
    ("rod", "factor"),
    [
        ((0.0, 0.0, 1000.0), 1_508_883 / 50_000),  # up, 50 off the wall: turns the arm along the wall
        ((800.0, 0.0, 0.0), 1_551_282 / 40_000),
        ((600.0, 800.0, 0.0), 1_551_282 / 50_000),  # level, either way: 1000 N in all
        ((600.0, -800.0, 1000.0), 1 / (50_000 / 1_508_883 + 50_000 / 1_551_282)),
    ],
)
def test_an_arm_on_a_wall_by_hand(rod: Vector, factor: float) -> None:
    """What is used rises with the force and begins at nothing, so a tenth of the force gives ten times the factor."""

    def safety(share: float) -> float:
        force = (rod[0] * share, rod[1] * share, rod[2] * share)
        loads = CornerLoads(None, (CaseLoads("kerb", NONE, NONE, NONE, NONE, NONE, force),))
        return wall_under_arm_safety(Wall(5.0, 100.0, 5.0, 50.0, 50.0, 50.0), 250.0, loads)

    assert safety(1.0) == pytest.approx(factor, rel=1e-4)
    assert safety(0.1) == pytest.approx(10 * safety(1.0), rel=1e-9)


@pytest.mark.parametrize("force", [(0.0, 1000.0, 0.0), (0.0, 0.0, 1000.0), (1000.0, 0.0, 0.0), (700.0, -300.0, 500.0)])
def test_lugs_on_a_wall_take_a_tenth_of_a_tenth(force: Vector) -> None:
    assert found((force[0] / 10, force[1] / 10, force[2] / 10)) == pytest.approx(10 * found(force), rel=1e-9)
