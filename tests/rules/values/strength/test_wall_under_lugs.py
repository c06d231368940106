"""The flat wall under a pivot's lugs, by hand: 250 MPa, 5 mm thick, 100 mm wide, lugs 50 x 50 mm on its middle.

EN 1993-1-8 Tables 7.11 and 7.14, from memory: 6250 / 0.5 x (1 + 2.828427) = 47 855 N; along 312 500 x 4.828427 = 1 508 883 N mm;
across 6250 x 248.20508 = 1 551 282 N mm.
"""

import pytest

from rules.graph.results import DoesNotApply, NotJudged, OutsideRange, Waits
from rules.measure.vectors import Vector
from rules.sheet.welds import WeldUpper
from rules.strength.corner_loads import CaseLoads, CornerLoads
from rules.strength.margin import Margin
from rules.values.strength.welds import wall_under_which_lug_safety

NONE: Vector = (0.0, 0.0, 0.0)
PAIR = {
    "form": "fillet on both sides", "run": 50.0, "apart": 50.0, "thickness_two": 5.0, "runs_lie": "up and down",
    "apart_lies": "fore and aft", "load_ahead": 0.0, "load_above": 0.0, "load_inboard": 40.0,
}  # fmt: skip


def found(force: Vector, width: float | None = 100.0, **changed: object) -> Margin:
    loads = CornerLoads(None, (CaseLoads("kerb", NONE, NONE, NONE, force, NONE, NONE),))
    weld = WeldUpper.record({**PAIR, **changed})
    return wall_under_which_lug_safety(weld, width, 250.0, loads, "upper", "upper_pivot", "wall under upper lugs")


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
    with pytest.raises(DoesNotApply, match="both sides or all round"):
        found((0.0, 1000.0, 0.0), form="full bevel")
    with pytest.raises(Waits):
        wall_under_which_lug_safety(
            WeldUpper.record({"form": "fillet on both sides"}),
            100.0,
            250.0,
            CornerLoads(None, ()),
            "upper",
            "upper_pivot",
            "",
        )
    with pytest.raises(OutsideRange, match="same way"):
        found((0.0, 1000.0, 0.0), apart_lies="up and down")


def test_lugs_nearly_as_far_apart_as_the_wall_count_as_0_85_of_it_and_as_far_apart_stand_on_its_edges() -> None:
    """b = 0.85, h = 0.5: 6250 / 0.15 x (1 + 4 x root 0.15 = 1.549193) = 106 216 N."""
    assert found((0.0, 1000.0, 0.0), apart=95.0) == pytest.approx(106.216, rel=1e-4)
    with pytest.raises(DoesNotApply, match="as far apart as that wall is wide"):
        found((0.0, 1000.0, 0.0), apart=100.0)
