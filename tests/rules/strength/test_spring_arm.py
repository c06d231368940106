"""The arm the spring acts on: by hand, against a general frame library (PyNiteFEA), and by the work the spring does."""

from math import hypot
from typing import Any

import pytest
from Pynite import FEModel3D

from rules.graph.results import OutsideRange
from rules.measure.quantity import GRAVITY
from rules.measure.vectors import Vector, minus, plus, times
from rules.strength.corner_loads import SpringArm
from rules.strength.spring_arm import arm_frame
from tests.support.judging import judged_sample

FRONT, REAR, OUTER = (200.0, 0.0, 0.0), (-200.0, 0.0, 0.0), (0.0, 400.0, 0.0)
STRAIGHT_UP = SpringArm(FRONT, REAR, (0.0, 200.0, 0.0), (0.0, 200.0, 500.0))


def test_the_shock_pushes_by_its_lever_and_its_lean() -> None:
    """Joint 400 from the hinge, shock 200: 2000 N are 4000. Leaning 3-4-5 inboard: only 4/5 of it turns the arm, 5000."""
    carried = (
        0.0,
        0.0,
        -2000.0,
    )  # the arm on the upright is -: the upright presses the arm's end up; here it hangs on it
    assert arm_frame(STRAIGHT_UP, OUTER).push((0.0, 0.0, 2000.0)) == pytest.approx(-4000.0)
    assert arm_frame(STRAIGHT_UP, OUTER).push(carried) == pytest.approx(4000.0)
    leaning = SpringArm(FRONT, REAR, (0.0, 200.0, 0.0), (0.0, -100.0, 400.0))
    assert arm_frame(leaning, OUTER).push(carried) == pytest.approx(5000.0)
    pointed = SpringArm(FRONT, REAR, (0.0, 200.0, 0.0), (0.0, -200.0, 0.0))
    with pytest.raises(OutsideRange, match="straight at the hinge"):
        arm_frame(pointed, OUTER)


def test_a_shock_may_stand_at_either_end_of_the_arm_and_no_farther() -> None:
    """At the joint it carries what the wheel does; over the hinge, 300 up and pulling inboard, by 400 / 300 of it."""
    at_the_joint = SpringArm(FRONT, REAR, OUTER, (0.0, 400.0, 500.0))
    assert arm_frame(at_the_joint, OUTER).push((0.0, 0.0, 2000.0)) == pytest.approx(-2000.0)
    over_the_hinge = SpringArm(FRONT, REAR, (0.0, 0.0, 300.0), (0.0, -500.0, 300.0))
    assert abs(arm_frame(over_the_hinge, OUTER).push((0.0, 0.0, 1500.0))) == pytest.approx(2000.0)
    for y in (400.1, -0.1):
        with pytest.raises(OutsideRange, match="does not stand between"):
            arm_frame(SpringArm(FRONT, REAR, (0.0, y, 300.0), (0.0, y - 500.0, 300.0)), OUTER)


def test_legs_are_bent_at_the_shock_and_share_it_by_where_it_stands() -> None:
    """Legs of root(200^2 + 400^2) = 447.214; each carries 1000 N at its end, half of its length from the shock: 223 607 N mm.

    A shock a quarter along the cross tube, 100 fore and aft of 200 long (from +100 to -100), at +50: front three quarters.
    """
    legs = list(arm_frame(STRAIGHT_UP, OUTER).bent((0.0, 0.0, -2000.0)))
    assert [leg.moment for leg in legs] == pytest.approx([223_607, 223_607], rel=1e-5)
    assert [leg.outer_pull for leg in legs] == pytest.approx([0.0, 0.0], abs=1e-9)
    ahead = SpringArm(FRONT, REAR, (50.0, 200.0, 0.0), (50.0, 200.0, 500.0))
    assert [leg.moment for leg in arm_frame(ahead, OUTER).bent((0.0, 0.0, -2000.0))] == pytest.approx(
        [1.5 * 223_607, 0.5 * 223_607], rel=1e-5
    )
    # 3000 N outboard on the upright is 3000 N of pull in the arm: half each, over the cosine 400 / 447.214
    pulled = list(arm_frame(STRAIGHT_UP, OUTER).bent((0.0, -3000.0, -2000.0)))
    assert [leg.outer_pull for leg in pulled] == pytest.approx([1677.05, 1677.05], rel=1e-5)


@pytest.mark.parametrize("along", [-10.0, 410.0])
def test_a_shock_beyond_hinge_or_joint_is_refused(along: float) -> None:
    outside = SpringArm(FRONT, REAR, (0.0, along, 0.0), (0.0, along, 500.0))
    with pytest.raises(OutsideRange, match="between its arm's hinge and outer joint"):
        arm_frame(outside, OUTER)


def frame_of(arm: SpringArm, outer: Vector, out: float, on_arm: Vector) -> Any:
    """The arm as a frame of bars: two legs in two pieces, a cross tube in two, and the shock as a bar to the frame of the car."""
    ends = {name: plus(inner, times(out, minus(outer, inner))) for name, inner in (("a", arm.front), ("b", arm.rear))}
    model = FEModel3D()
    for name, point in {
        "front": arm.front, "rear": arm.rear, "outer": outer, "shock": on_arm, "top": arm.on_frame, **ends,
    }.items():  # fmt: skip
        model.add_node(name, *point)
    model.add_material("steel", 200e3, 77e3, 0.3, 7.85e-9)
    model.add_section("tube", 400.0, 60e3, 60e3, 120e3)
    pieces = [
        ("front", "a"),
        ("a", "outer"),
        ("rear", "b"),
        ("b", "outer"),
        ("a", "shock"),
        ("shock", "b"),
        ("shock", "top"),
    ]
    for start, end in pieces:
        model.add_member(f"{start} {end}", start, end, "steel", "tube")
    model.def_releases("b outer", Ryj=True, Rzj=True)
    model.def_releases("a shock", Ryi=True, Rzi=True)
    model.def_releases("shock b", Ryj=True, Rzj=True)
    model.def_releases("shock top", Ryi=True, Rzi=True, Ryj=True, Rzj=True)
    for name in ("front", "rear"):
        model.def_support(name, True, True, True)
        model.def_support_spring(name, "RY", 1.0)  # the leg's spin about itself, held by next to nothing
    model.def_support("top", *[True] * 6)
    return model


@pytest.mark.parametrize("share", [0.5, 0.25])
def test_push_and_bending_are_those_of_a_frame(share: float) -> None:
    """Push and bending are settled by statics, so that the frame's own stiffness hardly tells."""
    front, rear, outer, out = (180.0, 10.0, 20.0), (-230.0, -15.0, 20.0), (15.0, 420.0, -40.0), 0.6
    ends = [plus(inner, times(out, minus(outer, inner))) for inner in (front, rear)]
    on_arm = plus(ends[0], times(share, minus(ends[1], ends[0])))
    arm = SpringArm(front, rear, on_arm, (on_arm[0], on_arm[1] - 150.0, on_arm[2] + 480.0))
    joint = (900.0, -2500.0, -7000.0)  # on the upright; the frame gets its opposite
    model = frame_of(arm, outer, out, on_arm)
    for direction, part in zip(("FX", "FY", "FZ"), joint, strict=True):
        model.add_node_load("outer", direction, -part)
    model.analyze_linear()
    push = model.members["shock top"].max_axial()  # PyNiteFEA counts compression as positive
    assert arm_frame(arm, outer).push(joint) == pytest.approx(push, rel=5e-3)
    bent = [
        hypot(model.members[piece].moment("My", 0.0), model.members[piece].moment("Mz", 0.0))
        for piece in ("a outer", "b outer")
    ]
    found = arm_frame(arm, outer).bent(joint)
    assert [leg.moment for leg in found] == pytest.approx(bent, rel=0.03)
    pulls = [-model.members[piece].axial(1.0) for piece in ("a outer", "b outer")]
    # What the shock pushes across a leg in the arm's plane goes round by the cross tube: a tenth of the joint's force at most.
    assert [leg.outer_pull for leg in found] == pytest.approx(pulls, abs=750.0)


def test_standing_the_shock_carries_the_standing_load_over_the_springs_measured_ratio() -> None:
    """Virtual work: 1 mm of wheel closes the shock by the ratio, found by moving the front end; no force is in that at all."""
    known = judged_sample("scree_ox_strength").worked.known
    loads = known["corner_loads"]
    weight, ratios = known["job.corner_weight"] * GRAVITY, {"": "spring_ratio", " at full droop": "spring_ratio_droop"}
    for where, ratio in ratios.items():
        case = next(case for case in loads.cases if case.case == f"bump{where}")
        push = arm_frame(case.spring_arm, loads.places.lower_pivot).push(case.lower_pivot)
        assert push == pytest.approx(known["bump_multiple"] * weight / known[ratio], rel=2e-3)
