"""Links, joints and small fixings by hand, from entries or from made-up loads."""

from dataclasses import replace
from math import hypot, sqrt
from typing import Any

import pytest

from rules.graph.results import DoesNotApply, Estimate, NotJudged, OutsideRange, Waits
from rules.measure.marks import Thread
from rules.measure.vectors import Vector
from rules.motion.points import Hinge
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.section import flat_plate, round_bar
from rules.tables.bolt_grades import BoltStrength
from rules.values.strength.arms import steering_arm_safety
from rules.values.strength.fixings import caliper_bolts_safety
from rules.values.strength.joints import which_joint_safety, which_lug_bending_safety
from rules.values.strength.links import (
    arm_legs_safety,
    spring_arm_section,
    tie_rod_column_safety,
)
from rules.values.strength.pivot_bolts import PivotBolt
from rules.values.strength.tie_rod_ends import tie_rod_shank_metal, tie_rod_shank_safety
from rules.values.strength.upright import ENOUGH

NONE: Vector = (0.0, 0.0, 0.0)
PLACES = Places(NONE, (0.0, 0.0, 400.0), (0.0, -20.0, 400.0), NONE, (0.0, -55.0, 400.0), (0.0, -60.0, 560.0),
                (0.0, -60.0, 280.0), (-120.0, -60.0, 370.0))  # fmt: skip
CASE = CaseLoads("bump", NONE, NONE, NONE, NONE, NONE, NONE)
PIN = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(580, 640, 800), 12.0, 0.0, 0.0, 10.0, True)


def loads(*cases: CaseLoads) -> CornerLoads:
    return CornerLoads(PLACES, cases)


def test_only_a_push_buckles_the_tie_rod() -> None:
    """A 20 mm bar of 1 m holds 15 503 N. A rod that pushes the upright outboard is pushed itself."""
    pushed, pulled = (
        replace(CASE, tie_rod=(0.0, 5000.0, 0.0)),
        replace(CASE, case="rock", tie_rod=(0.0, -90_000.0, 0.0)),
    )
    found = tie_rod_column_safety(round_bar(20.0), 300.0, 1000.0, loads(pushed, pulled))
    assert found == pytest.approx(3.1006, rel=1e-4)
    assert (found.case, found.kind) == ("bump", "buckling")
    assert found.on_yield == pytest.approx(314.159 * 300 / 5000, rel=1e-5)  # squashed, if it could not buckle
    with pytest.raises(DoesNotApply):
        tie_rod_column_safety(round_bar(20.0), 300.0, 1000.0, loads(pulled))


def test_the_longer_or_harder_pushed_leg_of_an_arm_counts() -> None:
    """Legs 3-4-5 to each side, 500 mm long: 8000 N outboard on the upright, each leg pushes 8000 / 2 / 0.8 = 5000 N.

    16 mm bar of 500 mm: l/k = 125 beyond where the curves meet (root of 2 pi^2 200 000 / 300 = 114.7), so Euler:
    pi^2 x 200 000 x 201.062 / 15 625 = 25 400.6 N.
    """
    places = replace(PLACES, upper_pivot=(0.0, 0.0, 560.0))
    hinge = Hinge((300.0, -400.0, 560.0), (-300.0, -400.0, 560.0))
    pushed = CornerLoads(places, (replace(CASE, upper_pivot=(0.0, 8000.0, 0.0)),))
    found = arm_legs_safety(round_bar(16.0), 300.0, "lower arm", None, hinge, pushed)
    assert found == pytest.approx(25_400.6 / 5000, rel=1e-4)
    pulled = CornerLoads(places, (replace(CASE, upper_pivot=(0.0, -8000.0, 0.0)),))
    with pytest.raises(DoesNotApply):
        arm_legs_safety(round_bar(16.0), 300.0, "lower arm", None, hinge, pulled)


JOINT = ("upper", "upper_pivot", "upper joint")


@pytest.mark.parametrize(
    "lies, along, square",
    [("fore and aft", 1000.0, 10_000.0), ("across the car", 6000.0, hypot(1000, 8000)),
     ("along the steering axis", 8000.0, hypot(1000, 6000))],
)  # fmt: skip
def test_a_joint_by_direction_by_hand(lies: str, along: float, square: float) -> None:
    """1000 ahead, 6000 outboard, 8000 up; rated 40 000 square and 4000 along its bolt; both shares add up."""
    force = loads(replace(CASE, upper_pivot=(1000.0, 6000.0, 8000.0)))
    found = which_joint_safety(PIN, 40_000.0, 4000.0, lies, force, *JOINT)  # type: ignore[arg-type]
    assert found == pytest.approx(1 / (square / 40_000 + along / 4000))
    assert found.kind == "maker's rating"


def test_a_joint_waits_for_both_its_ratings_and_for_how_its_bolt_lies() -> None:
    for missing, (radial, axial, lies) in {
        "bolts.upper_radial_rating": (None, 4000.0, "fore and aft"),
        "bolts.upper_axial_rating": (40_000.0, None, "fore and aft"),
        "joint_angles.upper_bolt": (40_000.0, 4000.0, None),
    }.items():
        with pytest.raises(Waits) as waits:
            which_joint_safety(PIN, radial, axial, lies, loads(CASE), *JOINT)  # type: ignore[arg-type]
        assert waits.value.fields == (missing,)
    assert which_joint_safety(PIN, 40_000.0, 4000.0, "fore and aft", loads(CASE), *JOINT) == ENOUGH


def test_the_root_of_the_lugs_under_a_force_from_every_side_by_hand() -> None:
    """1000 N along the bolt, 8000 aside, 6000 of pull, 40 from the root of lugs 60 x 10.

    Along: 6 x 40 000 / 6000 = 40 MPa free, a quarter of that where two are tied. Aside, two of them: 6 x 320 000 / (20 x 3600) =
    26.667, pull 6000 / 1200 = 5, shear root(1000^2 + 8000^2) / 1200 = 6.7185. One lug has twice of these three.
    Bolt across the car: 6000 along, 240 MPa; root(1000^2 + 8000^2) = 8062.26 aside, 26.874; shear 10 049.88 / 1200 = 8.3749.
    """
    force = loads(replace(CASE, upper_pivot=(1000.0, 6000.0, 8000.0)))
    bent = ("upper", "upper_pivot", "upper lug, bent")

    def found(
        width: float | None, edge: float | None, tied: bool | None, pin: PivotBolt = PIN, lies: Any = "fore and aft"
    ) -> float:
        return which_lug_bending_safety(pin, 40.0, width, edge, tied, lies, 250.0, force, *bent)

    free = 250 / hypot(40 + 26.6667 + 5, sqrt(3) * 6.7185)
    assert found(60.0, None, None) == pytest.approx(free, rel=1e-4)
    assert found(None, 30.0, None) == pytest.approx(
        free, rel=1e-4
    )  # twice the distance to the edge until it is measured
    assert found(60.0, None, True) == pytest.approx(250 / hypot(10 + 26.6667 + 5, sqrt(3) * 6.7185), rel=1e-4)
    alone = replace(PIN, double_shear=False)  # one lug has none to share with
    assert found(60.0, None, True, alone) == pytest.approx(250 / hypot(40 + 53.3333 + 10, sqrt(3) * 13.437), rel=1e-4)
    across = found(60.0, None, None, lies="across the car")
    assert across == pytest.approx(250 / hypot(240 + 26.874, sqrt(3) * 8.3749), rel=1e-4)
    with pytest.raises(Waits):
        found(None, None, None)


def test_a_steering_arm_whose_joint_stands_lower_is_twisted_by_hand() -> None:
    """30 mm bar: Z 2650.719, J/r 5301.438. 2000 N at 100: 75.451 MPa; 2000 N x 40 of drop: 15.090; shear 4/3 x 2000 / 706.858."""
    pull = loads(replace(CASE, tie_rod=(0.0, 2000.0, 0.0)))
    level = steering_arm_safety(round_bar(30.0), 100.0, -20.0, -20.0, 250.0, pull)
    dropped = steering_arm_safety(round_bar(30.0), 100.0, 0.0, -40.0, 250.0, pull)
    shear = 4 / 3 * 2000 / 706.858
    assert level == pytest.approx(250 / sqrt(75.451**2 + 3 * shear**2), rel=1e-4)
    assert dropped == pytest.approx(250 / sqrt(75.451**2 + 3 * (shear + 15.090) ** 2), rel=1e-4)
    assert dropped == steering_arm_safety(round_bar(30.0), 100.0, -40.0, 0.0, 250.0, pull)
    with pytest.raises(Waits):
        steering_arm_safety(round_bar(30.0), 100.0, None, -40.0, 250.0, pull)


def test_caliper_bolts_by_hand() -> None:
    """1200 N m at 120 mm: 10 kN along two M12 100 apart, pads 25 beyond them, bracket 8 aside.

    Shear: 5000 and 10 000 x 25 / 100 = 2500 square to it: 5590.17 N on the root, 76.24 mm2: 73.32 MPa. Pull 800 N on 84.27:
    9.49. Root of 9.49^2 + 3 x 73.32^2 is 127.35; 830 over that.
    """
    braking = loads(replace(CASE, case="braking", brake_torque=1_200_000.0))
    thread, strength = Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(830, 940, 1040)
    found = caliper_bolts_safety(strength, thread, 100.0, 25.0, 8.0, 120.0, braking)
    assert found == pytest.approx(830 / 127.35, rel=1e-3)
    assert found.on_yield == pytest.approx(940 / 127.35, rel=1e-3)
    with pytest.raises(Waits):
        caliper_bolts_safety(strength, thread, 100.0, 25.0, None, 120.0, braking)


def test_a_hole_as_wide_as_its_lug_is_refused_and_a_wider_lug_pulls_apart_later() -> None:
    from rules.strength.pins import lug_limits

    narrow, wide = (lug_limits(10_000.0, 250.0, 24.0, 12.0, 6.0, width) for width in (30.0, 48.0))
    # 18 and 36 mm of metal beside the hole, 6 thick, at 250 MPa
    assert narrow["metal beside the hole"] == pytest.approx(2.7) and wide["metal beside the hole"] == pytest.approx(5.4)
    with pytest.raises(OutsideRange, match="as wide as the lug"):
        lug_limits(10_000.0, 250.0, 24.0, 12.0, 6.0, 12.0)
    assert flat_plate(36.0, 6.0).area == 216.0


@pytest.mark.parametrize(
    "thread, root_area",
    [
        (Thread("12 x 1.75 mm", 12.0, 1.75), 76.2),  # metric handbook tables of the minor-diameter area, from memory
        (Thread("5/8-18", 15.875, 25.4 / 18), 0.240 * 25.4**2),  # Shigley Table 8-2, minor-diameter area, from memory
    ],
)
def test_the_shank_of_a_tie_rod_end_gives_at_its_root_in_pull_or_push(thread: Thread, root_area: float) -> None:
    """Makers of rod ends rate a solid shank at pi / 4 root diameter squared: at 300 MPa, pulled with 200 N a mm2 of that: 1.5."""
    for force in (200 * root_area, -200 * root_area):
        found = tie_rod_shank_safety(300.0, thread, loads(replace(CASE, tie_rod=(0.0, force, 0.0))))
        assert float(found) == pytest.approx(1.5, rel=2e-3) and found.part == "tie-rod end shank"


def test_a_shank_of_steel_nobody_named_is_the_softest_and_without_its_thread_it_is_not_judged() -> None:
    metal = tie_rod_shank_metal(None, Thread("5/8-18", 15.875, 25.4 / 18), True)
    assert isinstance(metal, Estimate) and metal.measure == "loads.tie_rod_shank_yield"
    assert float(metal) == pytest.approx(207, abs=1)  # 30 ksi: 1020 hot rolled, Shigley Table A-20
    with pytest.raises(NotJudged):
        tie_rod_shank_metal(600.0, None, True)


def test_a_shank_is_not_judged_until_strength_is_asked_for() -> None:
    with pytest.raises(NotJudged):
        tie_rod_shank_metal(None, Thread("12 x 1.75 mm", 12.0, 1.75), None)


def test_a_boxed_spring_arm_bends_as_a_hollow_rectangle_on_edge() -> None:
    """Width 40, height 50, wall 3, corners 6 outside and 3 inside, by hand.

    40 x 50^3 / 12 - 34 x 44^3 / 12 = 416 667 - 241 355 = 175 312 mm4 with sharp corners. Off each outer corner comes
    (1 - pi / 4) 36 = 7.7 mm2 about 25 - 0.2234 x 6 = 23.66 up, back come (1 - pi / 4) 9 = 1.93 about 22 - 0.67 = 21.33 up:
    4 x (7.726 x 559.8 - 1.931 x 455) = 13 786, leaving 161 530 mm4, over 25: 6461 mm3, within a thousandth.
    """
    box = spring_arm_section(3.0, None, 40.0, 50.0, 250.0)
    assert box.modulus_u == pytest.approx(6461, rel=1e-3)
    assert box.modulus_v < box.modulus_u < spring_arm_section(3.0, None, 60.0, 50.0, 250.0).modulus_u


def test_a_box_so_thin_that_its_sides_buckle_is_refused() -> None:
    """1.40 root(200 000 to 207 000 / 250) is 39.6 to 40.3 walls: 100 less two walls of 2.3 are 41.5 of them, of 2.5 38."""
    spring_arm_section(2.5, None, 60.0, 100.0, 250.0)
    with pytest.raises(OutsideRange, match="buckle"):
        spring_arm_section(2.3, None, 60.0, 100.0, 250.0)


def test_a_boxed_arm_waits_for_its_wall() -> None:
    with pytest.raises(Waits, match=r"spring_arm_wall"):
        spring_arm_section(None, None, 40.0, 50.0, None)
