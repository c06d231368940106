"""Three corners of our own figures by hand, from the tyre's foot to the weakest part: light dune car, heavy rig, two-seater.

Each has a straight-up steering axis, level links and a tie rod straight across, so that the balance is that of a few levers.
Axes: x ahead, y outboard, z up; origin at the tyre's foot. Every hand figure stands in the text above what it is held against.
"""

from dataclasses import dataclass
from math import hypot, pi, sqrt

import pytest

from rules.measure.marks import Thread
from rules.measure.quantity import GRAVITY
from rules.strength.balance import Linkage
from rules.strength.bearing import row_loads, static_safety, with_pads
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.load_cases import Multiples, Stance, every_case
from rules.strength.section import flat_plate, round_bar, round_tube
from rules.strength.weakest import rank
from rules.tables.bolt_grades import BoltStrength
from rules.values.strength.arms import caliper_bracket_safety, steering_arm_safety
from rules.values.strength.links import tie_rod_column_safety
from rules.values.strength.pivot_bolts import PivotBolt, which_pivot_bolt_safety


@dataclass(frozen=True)
class Corner:
    """One corner: mass on the tyre, kg; wheel-centre height, axis inboard, pivots' heights, tie rod behind, mm."""

    mass: float
    radius: float
    axis: float
    lower: float
    upper: float
    rod_behind: float
    rod_height: float
    bearing: float
    multiples: Multiples

    @property
    def weight(self) -> float:
        return self.mass * GRAVITY

    @property
    def loads(self) -> CornerLoads:
        upper, lower, rod = (
            (0, -self.axis, self.upper),
            (0, -self.axis, self.lower),
            (-self.rod_behind, -self.axis, self.rod_height),
        )
        hub = (0.0, -self.bearing, self.radius)
        places = Places((0, 0, 0), (0, 0, self.radius), hub, (0, 0, self.radius), hub, upper, lower, rod)
        linkage = Linkage(lower, upper, (0, 0, 1), rod, (0, 1, 0))
        straight = Stance("ride", linkage, (1, 0, 0), (0, 1, 0), (0, 0, 1), (0, 0, 0))
        return CornerLoads(places, every_case([straight], places, True, self.weight, self.multiples))

    def case(self, name: str) -> CaseLoads:
        return next(case for case in self.loads.cases if case.case == name)


LIGHT = Corner(160.0, 350.0, 30.0, 250.0, 450.0, 110.0, 340.0, 20.0,
               Multiples(4.0, 1.75, 1.0, 1.75, 6.0, 4.5, 1.75, 1.8))  # fmt: skip
HEAVY = Corner(460.0, 450.0, 60.0, 320.0, 580.0, 150.0, 440.0, 10.0,
               Multiples(4.0, 1.75, 1.0, 1.75, 4.0, 4.5, 1.75, 1.9))  # fmt: skip
MIDDLE = Corner(280.0, 400.0, 40.0, 280.0, 530.0, 130.0, 380.0, 25.0,
                Multiples(3.0, 1.1, 1.0, 1.4, 3.0, 4.5, 1.75, 1.85))  # fmt: skip


def test_the_light_dune_cars_landing_reaches_its_pivots_and_its_bearing() -> None:
    """W = 160 x 9.80665 = 1569.064 N. Landing 6 W up, W outboard at the foot.

    About the lower pivot, 30 inboard and 250 up: 6 x 30 + 1 x 250 = 430 W mm tips the upright, upper pivot 200 above: 2.15 W
    outboard. Lower pivot: 2.15 + 1 = 3.15 W inboard and 6 W down: 6.776614 W. About the upright axis W outboard at the foot, no
    lever ahead: no tie rod. Bearing 20 inboard, rows 70 apart: M = 6 x 20 + 350 = 470 W mm; outboard row 3 + 470 / 70 = 9.714286
    W, thrust 1 x 0.38: 10.094286 W = 15 838.6 N; half of 60 kN over that is 1.8941.
    """
    weight = LIGHT.weight
    landing = LIGHT.case("landing, outboard")
    assert landing.upper_pivot == pytest.approx((0.0, 2.15 * weight, 0.0))
    assert landing.lower_pivot == pytest.approx((0.0, -3.15 * weight, -6 * weight))
    assert hypot(*landing.lower_pivot) == pytest.approx(6.776614 * weight)
    assert landing.tie_rod == pytest.approx((0.0, 0.0, 0.0), abs=1e-6)
    rows = row_loads(landing.hub_force, landing.hub_moment, 70.0)
    assert rows.outboard == pytest.approx((0.0, 9.714286 * weight))
    assert static_safety(60_000.0, *rows.worst[:1], rows.thrust, "ball") == pytest.approx(1.8941, abs=1e-4)


def test_the_light_dune_cars_lower_bolt_is_weakest_where_its_spacer_is_long() -> None:
    """12 mm bolt of class 10.9 (yield 940) in double shear, ball 16, gap 12, lugs 8: lever 8 / 2 + 12 + 16 / 4 = 20 mm.

    6.776614 W = 10 632.94 N: moment 10 632.94 / 2 x 20 = 106 329 N mm, over pi 12^3 / 32 = 169.646 mm3: 626.77 MPa; shear over
    2 x 113.097: 47.01. Root of 626.77^2 + 3 x 47.01^2 is 632.04: 1.4873. No case loads that pivot more: combined has 4 W up and
    1.75 W back, tipping 1.75 x 250 / 200, and is less. Tie rod 22 x 2, 380 long, of 350 MPa, by Johnson holds 40 kN and more.
    """
    pin = PivotBolt(Thread("12 x 1.75 mm", 12.0, 1.75), BoltStrength(830, 940, 1040), 12.0, 16.0, 12.0, 8.0, True)
    bolt = which_pivot_bolt_safety(pin, LIGHT.loads, "lower_pivot", "lower pivot bolt")
    assert bolt == pytest.approx(1.4873, abs=1e-3) and bolt.case.startswith("landing, outboard")
    rod = tie_rod_column_safety(round_tube(22.0, 2.0), 350.0, 380.0, LIGHT.loads)
    order = rank({"lower_pivot_bolt_safety": bolt, "tie_rod_column_safety": rod})
    assert [one.part for one in order] == ["lower pivot bolt", "tie rod as a column"]


def test_the_heavy_rigs_stop_bends_its_steering_arm_before_its_rod_buckles() -> None:
    """W = 460 x 9.80665 = 4511.059 N. Steering stop: 1.75 W inboard on the tread, 450 ahead of the axis; rod 150 behind.

    Rod: 1.75 x 450 / 150 = 5.25 W = 23 683.06 N, pull; outboard it is a push as large. Arm 60 x 25 flat, 120 long: Z = 15 000;
    2 841 967 / 15 000 = 189.46 MPa; joint 20 below the root: twist 473 661 N mm on a 60 x 25 bar, 0.25822 x 60 x 25^2 = 9683:
    48.9; shear 1.5 x 23 683 / 1500 = 23.7. Root of 189.46^2 + 3 x 72.6^2 is 227.4: on 250 MPa 1.0995 (to the 1 % of the bar's
    torsion tables). Rod 32 x 5 and 500 long of 400 MPa: A 424.1, k 9.70; l/k 51.5; Johnson 424.1 x 400 x (1 - 400 x 2656.7 /
    7.8957e6) = 146 800 N: 6.2.
    """
    stop, back = HEAVY.case("steering stop"), HEAVY.case("steering stop, outboard")
    assert stop.tie_rod == pytest.approx((0.0, -5.25 * HEAVY.weight, 0.0))
    assert back.tie_rod == pytest.approx((0.0, 5.25 * HEAVY.weight, 0.0))
    arm = steering_arm_safety(flat_plate(60.0, 25.0), 120.0, 10.0, -10.0, 250.0, HEAVY.loads)
    assert arm == pytest.approx(1.0995, rel=0.01) and arm.case.startswith("steering stop")
    rod = tie_rod_column_safety(round_tube(32.0, 5.0), 400.0, 500.0, HEAVY.loads)
    assert rod == pytest.approx(146_800 / (5.25 * HEAVY.weight), rel=2e-3) and rod.case == "steering stop, outboard"
    assert rank({"steering_arm_safety": arm, "tie_rod_column_safety": rod})[0].part == "steering arm"


def test_the_heavy_rigs_rock_and_its_corner_by_levers() -> None:
    """Rock 4.5 W back at the wheel centre, 130 above the lower pivot, pivots 260 apart: upper 4.5 x 130 / 260 = 2.25 W ahead.

    Rod: 4.5 W x 60 / 150 = 1.8 W outboard, 120 above the lower pivot; W up 60 outboard of it: (60 - 1.8 x 120) / 260 = -0.6 W
    outboard at the upper pivot. Corner, outer wheel: 1.9 W up and inboard at the foot, 320 under the lower pivot: (1.9 x 60 -
    1.9 x 320) / 260 = -1.9 W at the upper pivot, and 1.9 + 1.9 = 3.8 W outboard at the lower one.
    """
    weight, rock, outer = HEAVY.weight, HEAVY.case("rock"), HEAVY.case("cornering, outer")
    assert rock.tie_rod == pytest.approx((0.0, 1.8 * weight, 0.0))
    assert rock.upper_pivot == pytest.approx((2.25 * weight, -0.6 * weight, 0.0))
    assert outer.upper_pivot == pytest.approx((0.0, -1.9 * weight, 0.0))
    assert outer.lower_pivot == pytest.approx((0.0, 3.8 * weight, -1.9 * weight))


def test_the_two_seaters_stop_reaches_its_bracket_and_presses_on_its_bearing() -> None:
    """W = 280 x 9.80665 = 2745.862 N. Braking 1.1 W back and 1.1 W up at the foot: torque 1.1 x 400 = 440 W mm = 1208.18 N m.

    Pads at 115 mm: 10 505.9 N. Bracket 70 x 12, 30 free, rotor 10 aside: 315 177 / (12 x 70^2 / 6 = 9800) = 32.16 MPa; twist
    105 059 N mm over 70 x 12^2 x 0.3005 = 3029: 34.7; shear 1.5 x 10 505.9 / 840 = 18.8. Root of 32.16^2 + 3 x 53.5^2 is 98.0:
    on 250 MPa 2.55. Bearing 25 inboard, rows 60 apart, rotor in their middle, caliper behind, so the pads drag the rotor down,
    5253 N on each row. Outboard row: up 0.55 W + 1.1 x 25 / 60 W = 1.008333 W less 5253, back 1.008333 W: (2768.8 - 5253)
    = -2484.2 and 2768.8: 3719.9 N; without the pads 3915.6 N. Inboard: up 0.091667 W = 251.7 less 5253 = -5001.2, back 251.7:
    5007.6 N, where without the pads it carries 356.0.
    """
    braking = MIDDLE.case("braking")
    assert braking.brake_torque == pytest.approx(1_208_179, rel=1e-5)
    bracket = caliper_bracket_safety(flat_plate(70.0, 12.0), 30.0, 10.0, None, 250.0, 115.0, MIDDLE.loads)
    assert bracket == pytest.approx(2.55, rel=0.01)
    rows = row_loads(braking.hub_force, braking.hub_moment, 60.0)
    pressed = with_pads(rows, braking.brake_torque / 115.0, 0.0, 60.0, -pi / 2)
    assert (rows.outboard_size, rows.inboard_size) == pytest.approx((3915.6, 356.0), abs=0.3)
    assert (pressed.outboard_size, pressed.inboard_size) == pytest.approx((3719.9, 5007.6), abs=0.5)
    unsaid = with_pads(rows, braking.brake_torque / 115.0, 0.0, 60.0, None)
    assert unsaid.inboard_size == pytest.approx(356.0 + 5253.0, abs=0.5)


def test_the_two_seaters_steering_arm_is_its_weakest_part() -> None:
    """Stop: 1.75 x 400 / 130 = 5.384615 W = 14 785.4 N; 28 mm bar, 100 long, level: Z = 2155.13: 686.06 MPa; shear 4/3 x
    14 785.4 / 615.752 = 32.0. Root of 686.06^2 + 3 x 32.0^2 is 688.3: on 350 MPa 0.5085. It gives, and so it should say.
    """
    arm = steering_arm_safety(round_bar(28.0), 100.0, 0.0, 0.0, 350.0, MIDDLE.loads)
    assert arm == pytest.approx(350 / sqrt(686.06**2 + 3 * 32.0**2), rel=1e-3)
    bracket = caliper_bracket_safety(flat_plate(70.0, 12.0), 30.0, 10.0, None, 250.0, 115.0, MIDDLE.loads)
    order = rank({"steering_arm_safety": arm, "caliper_bracket_safety": bracket})
    assert order[0].part == "steering arm" and order[0].factor < 1
