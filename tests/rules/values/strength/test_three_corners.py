"""Three corners of our own figures by hand, from the tyre's foot to the weakest part: light dune car, heavy rig, two-seater.

Each has a straight-up steering axis, level links and a tie rod straight across, so that the balance is that of a few levers.
Axes: x ahead, y outboard, z up; origin at the tyre's foot. Every hand figure stands in the text above what it is held against.
"""

from dataclasses import dataclass, replace
from math import hypot, pi, sqrt

import pytest

from rules.measure.marks import BoltCircle, Thread
from rules.measure.quantity import GRAVITY
from rules.strength.balance import Linkage
from rules.strength.bearing import row_loads, static_safety, with_pads
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places, SpringArm
from rules.strength.load_cases import Multiples, Stance, every_case
from rules.strength.section import flat_plate, round_bar, round_tube
from rules.strength.spring_arm import arm_frame
from rules.strength.weakest import rank
from rules.tables.bolt_grades import BoltStrength
from rules.values.strength.arms import caliper_bracket_safety, steering_arm_safety
from rules.values.strength.beam_ends import plate_at_which_beam_end_safety
from rules.values.strength.bolts import wheel_stud_forces
from rules.values.strength.clamps import wheel_clamp_safety, wheel_stud_preload
from rules.values.strength.links import spring_arm_safety, tie_rod_column_safety
from rules.values.strength.pivot_bolts import PivotBolt, which_pivot_bolt_safety
from rules.values.strength.upright import Build, upright_where_hub_safety


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

    def loads_at(self, places: Places, arm: SpringArm | None = None) -> CornerLoads:
        """The same corner with other places, or with its spring's arm."""
        linkage = Linkage(places.lower_pivot, places.upper_pivot, (0, 0, 1), places.tie_rod, (0, 1, 0))
        straight = Stance("ride", linkage, (1, 0, 0), (0, 1, 0), (0, 0, 1), (0, 0, 0), None, arm)
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


def test_a_rock_beside_the_middle_of_the_light_cars_tread_steers_harder_than_its_stop() -> None:
    """W = 1569.064 N, axis 30 inboard, rod 110 behind. Rock 4.5 W, 60 outboard of the middle: 4.5 x 90 / 110 = 3.681818 W.

    The stop is 1.75 x 350 / 110 = 5.568182 W; the rock ahead 4.5 x 30 / 110 = 1.227273 W, one 60 inboard -1.227273 W.
    """
    aside = replace(LIGHT.loads.places, rock_aside=60.0)
    found = {case.case: case.tie_rod[1] / LIGHT.weight for case in LIGHT.loads_at(aside).cases}
    assert found["rock, outboard of middle"] == pytest.approx(3.681818)
    assert found["rock"] == pytest.approx(1.227273) == -found["rock, inboard of middle"]
    assert found["steering stop"] == pytest.approx(-5.568182)


def test_the_light_dune_cars_landing_bends_its_lower_arm_at_the_shock_and_that_is_its_weakest_part() -> None:
    """Lower arm 300 by 300 to its hinge, level; shock straight up from two thirds of the way out. Landing, outboard.

    The joint presses up with 6 W = 9414.384 N, the shock down with 6 W x 3 / 2 = 9 W = 14 121.6 N. Legs root(150^2 + 300^2) =
    335.410 long; half of 6 W on each, a third of its length: 4707.192 x 111.803 = 526 280 N mm. The joint is pushed inboard with
    3.15 W = 4942.55 N: the arm is pulled with as much, 2763.0 N a leg (half over 300 / 335.410).
    Tube 38 x 3: A 329.87, Z = pi (38^4 - 32^4) / (32 x 38) = 2678.3 mm3: 526 280 / 2678.3 = 196.50 MPa, and 2763.0 / 329.87 =
    8.376: on 350 MPa 1 / (204.87 / 350) = 1.7084. Combined has 4 W up: less.
    """
    hinge = (150.0, -330.0, 250.0), (-150.0, -330.0, 250.0)
    arm = SpringArm(*hinge, (0.0, -130.0, 250.0), (0.0, -130.0, 700.0))
    loads = LIGHT.loads_at(LIGHT.loads.places, arm)
    case = next(case for case in loads.cases if case.case == "landing, outboard")
    frame = arm_frame(arm, loads.places.lower_pivot)
    assert frame.push(case.lower_pivot) == pytest.approx(9 * LIGHT.weight)
    assert [leg.moment for leg in frame.bent(case.lower_pivot)] == pytest.approx([526_280, 526_280], rel=1e-4)
    assert [leg.outer_pull for leg in frame.bent(case.lower_pivot)] == pytest.approx([2763.0, 2763.0], rel=1e-4)
    found = spring_arm_safety(round_tube(38.0, 3.0), 350.0, "lower arm", None, None, None, loads)
    assert found == pytest.approx(1.7084, rel=1e-3) and found.case.startswith("landing")
    stout = PivotBolt(Thread("16 x 2 mm", 16.0, 2.0), BoltStrength(830, 940, 1040), 16.0, 16.0, 2.0, 10.0, True)
    bolt = which_pivot_bolt_safety(stout, loads, "lower_pivot", "lower pivot bolt")
    assert rank({"spring_arm_safety": found, "lower_pivot_bolt_safety": bolt})[0].part == "arm with the spring"


def test_the_heavy_rigs_plate_gives_where_its_beam_stops_short() -> None:
    """Upper pivot 580 up, wheel centre 450: 130 above; beam to 70. The steering arm's root is below that level, so the rod is not
    beyond it: the pivot alone bends a plate 150 x 16, Z = 150 x 256 / 6 = 6400, by 60.

    Steering stop: W up at 60, 1.75 W inboard 130 above the lower pivot, the rod's 5.25 W inboard 120 above it: (60 + 227.5 + 630)
    / 260 = 3.5288 W = 15 918.8 N outboard at the upper pivot: 955 128 / 6400 = 149.24 MPa; shear 1.5 x 15 918.8 / 2400 = 9.949:
    root of 149.24^2 + 3 x 9.949^2 is 150.23: on 250 MPa 1.6641. Rut's edge, 1.9 W outboard at the foot: (60 + 608) / 260 =
    2.5692 W, less. Combined, inner, 4 W up, 1.75 W back, W outboard: (240 + 320) / 260 = 2.1538 W, and as much ahead the plate's
    broad way, less.
    """
    build = Build(150.0, 16.0, 0.0, 180.0, 180.0, "box", 80.0, 50.0, 5.0, beam_top=70.0)
    end = plate_at_which_beam_end_safety(
        build, 250.0, 20.0, 70.0, -10.0, HEAVY.loads, "upper", "above", "top", "plate at beam's upper end"
    )
    assert (end.case, end.limit) == ("steering stop", "yield of the plate at the beam's upper end")
    assert end == pytest.approx(1.6641, rel=1e-3)
    hub = upright_where_hub_safety(build, 250.0, 15.0, -10.0, HEAVY.loads, "above", "upright above hub")
    assert rank({"end": end, "hub": hub})[0].part == "plate at beam's upper end"


def test_the_two_seaters_wheel_stays_clamped_in_its_corner_and_slips_on_a_rock_with_its_brakes_on() -> None:
    """W = 2745.862 N, hub's face 25 inboard of the tyre. Corner, outer, 1.85 W each way: M = 1.85 (25 - 400) W = -693.75 W mm.

    Five studs on 114.3: 2 x 693.75 W / (5 x 57.15) = 4.85564 W = 13 332.9 N: nuts at 110 N m leave 0.75 x 110 000 / 2.4 = 34 375
    N: opens at 2.5782. Kerb 1.4 W inboard, W up: 535 W. Rut's edge 1.85 W outboard, W up: M = 25 + 740 = 765 W: 5.35433 W and
    1.85 / 5 = 0.37 W: 5.72433 W = 15 718.2 N: 2.1870, the least. Rock, brakes on: 4.5 W back and W up: 4.609772 W / 5 and 440 W
    mm / (5 x 57.15) = 1.539808 W: 2.461762 W = 6759.7 N a stud; 0.15 x 34 375 = 5156.25: slips at 0.7628.
    """
    forces = wheel_stud_forces(BoltCircle("5 x 114.3 mm", 5, 114.3), MIDDLE.loads_at(
        replace(MIDDLE.loads.places, hub_face=(0.0, -25.0, 400.0))))  # fmt: skip
    found = wheel_clamp_safety(wheel_stud_preload(110.0, Thread("12 x 1.5 mm", 12.0, 1.5), True), forces)
    assert (found.case, found) == ("rut's edge", pytest.approx(2.1870, rel=1e-3))
    assert (found.slip_case, found.slips) == ("rock, brakes on", pytest.approx(0.7628, rel=1e-3))
