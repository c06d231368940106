"""Plain geometry of travel: where arms meet, the roll centre, the inner pivot that steers least, the shock on its arm."""

from math import asin, cos, degrees, dist, radians, sin

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import least_squares, minimize
from scipy.spatial.transform import Rotation

from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import CannotReach, Hinge, UprightPoints
from rules.motion.shock import Shock, shock_length, shock_ratio
from rules.motion.sweep import Placed, Sweep
from rules.motion.travel import (
    InnerPivot,
    best_inner_pivot,
    instant_centre,
    largest_change,
    least_steering,
    roll_centre_height,
    steepest,
    stretches,
    toe,
)
from tests.support.front_ends import meeting_arms, parallel_arms, shock_half_way

UPRIGHT = UprightPoints((12.0, -75.0, 280.0), (-16.0, -120.0, 540.0), (0.0, 0.0, 400.0), (-125.0, -140.0, 350.0))
LOWER = Hinge((170.0, -490.0, 300.0), (-190.0, -510.0, 285.0))
UPPER = Hinge((120.0, -420.0, 515.0), (-150.0, -400.0, 500.0))


def askew() -> FrontEnd:
    return FrontEnd(UPRIGHT, (LOWER, UPPER), SteeringLinkage("rack", (-140.0, -470.0, 345.0), -800.0, travel=60.0))


# --- instant centre and roll centre ----------------------------------------------------------------------------------


def test_the_instant_centre_lies_in_both_arms_planes_and_in_the_plane_across_through_the_contact() -> None:
    # Three planes as three equations, solved by numpy: through the arms' pivots, and x = the contact's.
    front = askew()
    pose = front.straight(45.0)
    rows, sides = [[1.0, 0.0, 0.0]], [pose.contact[0]]
    for hinge, outer in ((LOWER, pose.lower), (UPPER, pose.upper)):
        normal = np.cross(np.subtract(hinge.front, outer), np.subtract(hinge.rear, outer))
        rows.append(list(normal))
        sides.append(float(normal @ np.array(outer)))
    meeting = np.linalg.solve(np.array(rows), np.array(sides))
    assert instant_centre((LOWER, UPPER), pose) == pytest.approx((meeting[1], meeting[2]), rel=1e-9)
    height = (meeting[2] - pose.contact[2]) / (meeting[1] - pose.contact[1]) * (-800.0 - pose.contact[1])
    assert roll_centre_height((LOWER, UPPER), pose, -800.0) == pytest.approx(height, rel=1e-9)


def test_parallel_arms_meet_nowhere_and_their_roll_centre_lies_along_them() -> None:
    front = parallel_arms()
    assert front.arms is not None
    for travel in (0.0, 60.0, -60.0):
        assert instant_centre(front.arms, front.straight(travel)) is None
    # Swung up 60 of 300, the inner ends 60 lower over root(300^2 - 60^2); contact 6.0612310 further in.
    slope, across = 60.0 / (300.0**2 - 60.0**2) ** 0.5, 800.0 - 6.0612310
    assert roll_centre_height(front.arms, front.straight(0.0), -800.0) == pytest.approx(0.0, abs=1e-9)
    assert roll_centre_height(front.arms, front.straight(60.0), -800.0) == pytest.approx(-slope * across, abs=1e-6)


def test_arms_that_are_almost_parallel_lead_into_the_same_roll_centre() -> None:
    front = parallel_arms()
    assert front.arms is not None
    lower, upper = front.arms
    tilted = Hinge((upper.front[0], -380.0, 550.003), (upper.rear[0], -380.0, 550.003))
    assert instant_centre((lower, tilted), front.straight(0.0)) is not None
    assert roll_centre_height((lower, tilted), front.straight(0.0), -800.0) == pytest.approx(0.0, abs=0.01)


def test_arms_that_meet_straight_above_the_contact_have_no_roll_centre() -> None:
    arms = (
        Hinge((100.0, -400.0, 300.0), (-100.0, -400.0, 300.0)),
        Hinge((100.0, -400.0, 500.0), (-100.0, -400.0, 500.0)),
    )
    # Lower rises 15 in 300: at y = 0, 300 + 20 = 320. Upper falls 135 in 300: at y = 0, 500 - 180 = 320.
    upright = UprightPoints((0.0, -100.0, 315.0), (0.0, -100.0, 365.0), (0.0, 0.0, 340.0))
    pose = FrontEnd(upright, arms).straight(0.0)
    assert instant_centre(arms, pose) == pytest.approx((0.0, 320.0), abs=1e-9)
    assert roll_centre_height(arms, pose, -800.0) is None
    assert (
        roll_centre_height((arms[0], Hinge((100.0, -400.0, 501.0), (-100.0, -400.0, 501.0))), pose, -800.0) is not None
    )


# --- what changes over a sweep ---------------------------------------------------------------------------------------


def swept(*pairs: tuple[float, float]) -> Sweep:
    """Places whose wheel centre stands at a height that is the measure."""
    ride = meeting_arms().straight(0.0)
    return Sweep(tuple(Placed(travel, 0.0, ride._replace(wheel_centre=(0, 0, height))) for travel, height in pairs))


def test_stretches_reach_both_ends_and_are_as_long_as_asked() -> None:
    # 200 mm is eight of 25; 210 is eight and one more that ends at the top; 20 is less than one.
    assert stretches(-90.0, 110.0, 25.0)[0] == (-90.0, -65.0) and stretches(-90.0, 110.0, 25.0)[-1] == (85.0, 110.0)
    assert len(set(stretches(-90.0, 110.0, 25.0))) == 8
    assert stretches(-90.0, 120.0, 25.0)[-2:] == [(85.0, 110.0), (95.0, 120.0)]
    assert stretches(0.0, 25.0, 25.0) == [(0.0, 25.0)]
    assert stretches(-8.0, 12.0, 25.0) == [(-8.0, 12.0)]


def test_the_steepest_stretch_is_found_and_told_by_its_far_end() -> None:
    # Heights 3, 0, 2, 1 at -50, -25, 0, 25: changes of 3, 2 and 1.
    heights = {-50.0: 3.0, -25.0: 0.0, 0.0: 2.0, 25.0: 1.0}
    found = steepest([(-50.0, -25.0), (-25.0, 0.0), (0.0, 25.0)], heights.__getitem__)
    assert (found, found.travel) == (3.0, -50.0)
    rising = steepest([(-25.0, 0.0), (0.0, 25.0)], {**heights, 25.0: 9.0}.__getitem__)
    assert (rising, rising.travel) == (7.0, 25.0)
    with pytest.raises(ValueError, match="empty"):
        steepest([], heights.__getitem__)


def test_the_largest_change_keeps_its_sign_and_its_place() -> None:
    ride = meeting_arms().straight(0.0)  # its wheel centre stands 400 up
    found = largest_change(swept((-50, 407), (0, 400), (50, 391)), lambda pose: pose.wheel_centre[2], ride)
    assert (found, found.travel) == (-9.0, 50)


# --- bump steer ------------------------------------------------------------------------------------------------------


def test_toe_is_the_difference_across_both_treads() -> None:
    # One wheel of 800 turned 1 deg: its front edge 400 sin 1 deg in, its rear edge as much out; two wheels.
    assert toe(800.0, radians(1)) == pytest.approx(4 * 400 * 0.0174524064)
    assert toe(800.0, -radians(1)) == -toe(800.0, radians(1))


@given(
    centre=st.tuples(st.floats(-600, -300), st.floats(200, 500)),
    radius=st.floats(200, 450),
    ends=st.tuples(st.floats(-0.4, -0.1), st.floats(0.1, 0.4)),
    ahead=st.floats(-200, 200),
)
@settings(max_examples=60)
def test_points_on_a_sphere_give_its_centre(
    centre: tuple[float, float], radius: float, ends: tuple[float, float], ahead: float
) -> None:
    path = [
        (ahead, centre[0] + radius * cos(angle), centre[1] + radius * sin(angle)) for angle in np.linspace(*ends, 13)
    ]
    assert best_inner_pivot(path, ahead) == pytest.approx(centre, abs=1e-5)


def test_a_path_that_is_straight_or_a_single_point_has_no_centre() -> None:
    assert best_inner_pivot([(0.0, -100.0, float(height)) for height in range(300, 400, 10)], 0.0) is None
    assert best_inner_pivot([(0.0, -100.0, 300.0)] * 5, 0.0) is None


def rod_length_left_over(path: list[tuple[float, float, float]], pivot: tuple[float, float], ahead: float) -> float:
    lengths = [dist(point, (ahead, *pivot)) for point in path]
    return max(lengths) - min(lengths)


def test_the_best_inner_pivot_is_the_one_scipy_finds() -> None:
    # scipy seeks centre and length together, by the rod's own error in length, not by the squares used here.
    front = askew()
    path = [front.straight(travel).tie_rod_end for travel in np.linspace(-75, 75, 13)]
    ends = [end for end in path if end is not None]
    solved = least_squares(
        lambda unknown: [dist(end, (-140.0, unknown[0], unknown[1])) - unknown[2] for end in ends],
        [-470.0, 345.0, 330.0],
        xtol=1e-14,
        ftol=1e-14,
    )
    found = best_inner_pivot(ends, -140.0)
    assert found is not None
    assert found == pytest.approx(tuple(solved.x[:2]), abs=0.5)
    left = rod_length_left_over(ends, found, -140.0)
    assert left < 0.2
    for aside, up in ((5, 0), (-5, 0), (0, 5), (0, -5)):
        assert rod_length_left_over(ends, (found[0] + aside, found[1] + up), -140.0) > left


def test_over_a_little_travel_the_best_rod_points_at_the_instant_centre() -> None:
    # Trade practice: the tie rod aims at the point the arms aim at. Exact where all moves in one plane across the car.
    upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 590.0), (0.0, 0.0, 400.0), (0.0, -110.0, 430.0))
    arms = (
        Hinge((100.0, -430.0, 330.0), (-100.0, -430.0, 330.0)),
        Hinge((100.0, -380.0, 560.0), (-100.0, -380.0, 560.0)),
    )
    front = FrontEnd(upright, arms)
    ends = [front.straight(travel).tie_rod_end for travel in np.linspace(-5, 5, 13)]
    found = best_inner_pivot([end for end in ends if end is not None], 0.0)
    centre = instant_centre(arms, front.straight(0.0))
    assert found is not None and centre is not None and upright.tie_rod_end is not None
    rod = (found[1] - 430.0) / (found[0] + 110.0)
    assert rod == pytest.approx((centre[1] - 430.0) / (centre[0] + 110.0), abs=1e-4)


def test_a_rod_from_the_best_pivot_steers_less_than_one_from_beside_it() -> None:
    front = askew()
    ends = [front.straight(travel).tie_rod_end for travel in np.linspace(-75, 75, 13)]
    found = best_inner_pivot([end for end in ends if end is not None], -140.0)
    assert found is not None

    def steered(across: float, up: float) -> float:
        rack = SteeringLinkage("rack", (-140.0, across, up), -800.0, travel=60.0)
        moved = FrontEnd(UPRIGHT, (LOWER, UPPER), rack)
        steers = [moved.at(travel, 0.0).steer for travel in np.linspace(-75, 75, 13)]
        return degrees(max(steers) - min(steers))

    best = steered(*found)
    assert best < 0.05
    for aside, up in ((10, 0), (-10, 0), (0, 10), (0, -10)):
        assert steered(found[0] + aside, found[1] + up) > 2 * best


def test_the_refined_inner_pivot_steers_as_little_as_scipy_can_make_it() -> None:
    front = askew()
    travels = list(np.linspace(-75, 75, 13))
    ends = [front.straight(travel).tie_rod_end for travel in travels]
    fitted = best_inner_pivot([end for end in ends if end is not None], -140.0)
    assert fitted is not None

    def changes(pivot: np.ndarray) -> float:
        """Millionths of a radian."""
        rack = SteeringLinkage("rack", (-140.0, float(pivot[0]), float(pivot[1])), -800.0, travel=60.0)
        moved = FrontEnd(UPRIGHT, (LOWER, UPPER), rack)
        found = [moved.at(travel, 0.0).steer for travel in travels]
        return 1e6 * (max(found) - min(found))

    least = minimize(changes, fitted, method="Nelder-Mead", options={"xatol": 1e-7, "fatol": 1e-6})
    found = least_steering(front, travels, fitted)
    assert changes(np.array(found)) == pytest.approx(least.fun, abs=1.0)  # 0.002 mm of toe
    assert changes(np.array(fitted)) > 1.1 * least.fun  # the sphere's own centre is close by, and not the best
    assert found == pytest.approx(least.x, abs=0.01)


def test_a_pivot_from_which_the_rod_does_not_follow_is_refused() -> None:
    # The parallel arms' outer end goes 60 up and down, 36 from this pivot: a rod of 36 does not reach.
    with pytest.raises(CannotReach):
        least_steering(parallel_arms(), [-60.0, 0.0, 60.0], InnerPivot(-110.0, 340.0))


# --- shock -----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("arm", "hinge"), [("lower arm", LOWER), ("upper arm", UPPER)])
@pytest.mark.parametrize("travel", [-80.0, 0.0, 100.0])
def test_the_shock_is_as_long_as_its_arm_turned_by_scipy_makes_it(arm: str, hinge: Hinge, travel: float) -> None:
    front, shock = askew(), Shock((10.0, -250.0, 360.0), (-20.0, -380.0, 780.0), arm)
    place = 0 if arm == "lower arm" else 1
    ride, now = (np.array(front.held(at)[place]) for at in (0.0, travel))
    rear, line = np.array(hinge.rear), np.subtract(hinge.front, hinge.rear)
    line /= np.linalg.norm(line)
    # The turn that takes the outer pivot from where it was to where it is, both seen along the hinge.
    was, is_now = (point - rear - line * ((point - rear) @ line) for point in (ride, now))
    angle = np.arctan2(np.cross(was, is_now) @ line, was @ is_now)
    moved = Rotation.from_rotvec(angle * line).apply(np.array(shock.on_arm) - rear) + rear
    assert shock_length(front, shock, travel) == pytest.approx(dist(moved, shock.on_frame), abs=1e-9)


def test_half_way_along_the_arm_the_shock_moves_half_as_far() -> None:
    # The parallel arms' 300: at 60 the shock's foot is 30 up and 150 cos(asin 0.2) out; its top 400 above the hinge.
    front, shock = parallel_arms(), shock_half_way()
    out = 150.0 * cos(asin(0.2))
    assert shock_length(front, shock, 60.0) == pytest.approx((out**2 + 370.0**2) ** 0.5)
    assert shock_length(front, shock, -60.0) == pytest.approx((out**2 + 430.0**2) ** 0.5)
    assert shock_ratio(front, shock) == pytest.approx(0.5 * 400.0 / (150.0**2 + 400.0**2) ** 0.5, abs=1e-6)


def test_a_shock_below_the_arm_opens_as_the_wheel_rises() -> None:
    assert shock_ratio(
        parallel_arms(), Shock((0.0, -230.0, 300.0), (0.0, -230.0, 100.0), "lower arm")
    ) == pytest.approx(-0.5, abs=1e-6)


def test_an_inner_end_is_told_from_the_tyres_middle_and_the_ground() -> None:
    words = InnerPivot(-460.0, 350.0)
    assert words.words_in("metric") == "460 mm inboard of the tyre centre plane, 350 mm above ground"
    assert words.words_in("inch").startswith("18.11 in inboard"), "460 / 25.4"
