"""The nearest touch of a front end in one place, by hand."""

import pytest

from rules.corner.part import SPINDLE, Part, spindle, turning
from rules.corner.placing import Ride
from rules.drawn.moving.gaps import near_touch
from rules.motion.points import Pose, UprightPoints
from rules.solids.shapes import Ball, Rod, ring


def straight(inner_end: tuple[float, float, float], tie_rod_end: tuple[float, float, float]) -> Pose:
    return Pose(
        (0, -80.0, 300.0), (0, -120.0, 560.0), (0, 0, 400.0), (0.0, 1.0, 0.0), tie_rod_end, inner_end, 0.0, 400.0
    )


UPRIGHT = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0))


def ring_of(name: str, inner: float, outer: float, half: float) -> Part:
    return turning(name, 400.0, ring(spindle(400.0), SPINDLE, inner, outer, -half, half))


def test_a_gap_by_hand_with_its_place() -> None:
    """Tyre's side 150 inboard, the rod's outer end 200 inboard at wheel-centre height 300 behind, rod 25: 50 - 12.5 = 37.5."""
    ends = ((-300.0, -600.0, 400.0), (-300.0, -200.0, 400.0))
    parts = {"tyre": ring_of("tyre", 208.0, 444.5, 150.0), "tie rod": Part("tie rod", "tie rod", (Rod(*ends, 12.5),))}
    found = near_touch(parts, Ride(UPRIGHT, tie_rod=ends), straight(*ends))
    assert found is not None and (found.between, round(found.gap, 2)) == ("tyre to tie rod", 37.5)
    assert found.at == pytest.approx((-300.0, -187.5, 400.0), abs=0.1)


def test_the_nearer_of_two_is_told() -> None:
    """Housing 22, 100 below the wheel centre, barrel 180: 58. Upper arm 160 above it, tube 30: 180 - 160 - 15 = 5."""
    parts = {
        "rim": ring_of("rim", 180.0, 208.0, 120.0),
        "lower joint housing": Part(
            "lower joint housing", "lower arm", (Ball(UPRIGHT.lower, 22.0),), "housing", held_by="upright"
        ),
        "upper arm": Part("upper arm", "upper arm", (Rod((0.0, -500.0, 560.0), UPRIGHT.upper, 15.0),)),
    }
    found = near_touch(parts, Ride(UPRIGHT), straight((0, 0, 0), (0, 0, 0)))
    assert found is not None and (found.between, round(found.gap, 2)) == ("rim to upper arm", 5.0)
    assert found.at == pytest.approx((0.0, -120.0, 575.0), abs=0.5)
    del parts["upper arm"]
    without_arm = near_touch(parts, Ride(UPRIGHT), straight((0, 0, 0), (0, 0, 0)))
    assert without_arm is not None and (without_arm.between, round(without_arm.gap, 2)) == (
        "rim to lower joint housing",
        58.0,
    )


def test_no_parts_no_gap() -> None:
    assert near_touch({}, Ride(UPRIGHT), straight((0, 0, 0), (0, 0, 0))) is None
