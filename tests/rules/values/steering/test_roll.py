"""A leaning body and a braked wheel: against front ends that can be worked out by hand."""

from collections.abc import Callable
from math import degrees, radians, tan

import pytest

from rules.judging.judge import Judged
from rules.motion.front_end import FrontEnd
from rules.motion.points import Hinge, UprightPoints
from rules.motion.sweep import straight_sweep
from tests.support.declared import the_value
from tests.support.front_ends import meeting_arms, parallel_arms, parallel_sweep

Moving = dict[str, object]
ROLL: Moving = {"arms.body_roll": "3 deg", "job.centre_of_gravity_height": "650 mm"}


def test_camber_in_roll_is_camber_at_that_travel_and_the_lean(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    known = judged({**moving, **ROLL}).worked.known
    rise = 800 * tan(radians(3))  # half of 1600
    assert known["rise_in_roll"] == pytest.approx(rise)
    for side, way in (("outer", 1), ("inner", -1)):
        own = degrees(known["hung_front"].straight(way * rise).camber)
        assert degrees(known[f"camber_in_roll_{side}"]) == pytest.approx(own + way * 3.0)


def test_hardly_leaning_the_roll_centre_is_that_at_ride_height(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    known = judged(moving).worked.known
    front = known["hung_front"]
    little = the_value("roll_centre_in_roll")(front, 1e-4, 1600.0)
    assert little == pytest.approx(known["roll_centre_height"], abs=1e-3)


def test_parallel_arms_have_no_roll_centre_in_roll_by_this_construction() -> None:
    with pytest.raises(Exception, match="meet nowhere"):
        the_value("roll_centre_in_roll")(parallel_arms(), 0.0, 1600.0)


@pytest.mark.parametrize("slope", [-8.0, 0.0, 3.0, 10.0])
def test_hinge_lines_that_rise_rearward_alike_hold_the_dive_up_by_their_slope(slope: float) -> None:
    """Both hinge lines turned by one angle about the axis across the car: every point goes square to them, so forward by its
    tangent for each mm of rise. Rear ends higher: against dive.
    """
    front = parallel_arms()
    assert front.arms is not None
    rise = 100 * tan(radians(slope))
    tilted = tuple(
        Hinge(
            (hinge.front[0], hinge.front[1], hinge.front[2] - rise),
            (hinge.rear[0], hinge.rear[1], hinge.rear[2] + rise),
        )
        for hinge in front.arms
    )
    found = the_value("side_view_slope")(FrontEnd(front.upright, (tilted[0], tilted[1])), parallel_sweep())
    assert found == pytest.approx(tan(radians(slope)), abs=2e-3)


def test_an_arm_known_from_the_front_only_has_no_slope_from_the_side_but_rolls(
    judged: Callable[[Moving], Judged], moving: Moving
) -> None:
    front_view = {
        name: None for name in moving if name.startswith("arms.upper_") and ("rear" in name or "ahead" in name)
    }
    worked = judged({**moving, **ROLL, **front_view}).worked
    assert "known from the front only" in worked.not_judged["side_view_slope"]
    assert {"camber_in_roll_outer", "roll_centre_in_roll", "toe_in_roll_inner"} <= worked.known.keys()


@pytest.mark.parametrize("rise", [15.0, 40.0])
def test_leaning_to_the_other_side_the_roll_centre_is_as_high(rise: float) -> None:
    """Left and right are mirror images, so which of the two wheels rises cannot matter."""
    front = meeting_arms()
    assert abs(front.straight(rise).contact[1]) > 0.5 and abs(front.straight(-rise).contact[1]) > 0.5
    height = the_value("roll_centre_in_roll")
    assert height(front, rise, 900.0) == pytest.approx(height(front, -rise, 900.0), rel=1e-9)


def test_more_roll_than_the_arms_reach_is_told_in_words() -> None:
    with pytest.raises(Exception, match="do not reach"):
        the_value("camber_in_roll_outer")(meeting_arms(), 5000.0, 0.3)


def test_without_a_roll_entered_nothing_is_told_of_it(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    worked = judged(moving).worked
    assert worked.waits["camber_in_roll_outer"] == ("arms.body_roll",)


def test_the_camber_entered_is_what_everything_starts_from(judged: Callable[[Moving], Judged], moving: Moving) -> None:
    upright, leant = judged(moving).worked.known, judged({**moving, "arms.static_camber": "-1.5 deg"}).worked.known
    assert degrees(leant["hung_front"].straight(0.0).camber) == pytest.approx(-1.5)
    assert leant["hung_front"].straight(0.0).contact[2] == pytest.approx(0.0, abs=1e-9)
    # The upright turns as before, so the wheel leans by so much more all along, but for the turn that holds it straight.
    for name in ("camber_change_bump", "camber_change_droop"):
        assert degrees(leant[name]) == pytest.approx(degrees(upright[name]), abs=0.02)
    # At ride height nothing has moved, so no part of the corner has.
    moved = leant["corner_ride"].motions(leant["hung_front"].straight(0.0))["wheel"]
    still = upright["corner_ride"].motions(upright["hung_front"].straight(0.0))["wheel"]
    for part in ("x", "y", "z", "shift"):
        assert getattr(moved, part) == pytest.approx(getattr(still, part), abs=1e-9)


@pytest.mark.parametrize("camber", [-2.0, 0.5])
def test_bolts_of_joints_start_from_the_camber_too(
    judged: Callable[[Moving], Judged], moving: Moving, camber: float
) -> None:
    """At ride height, wheels straight, no joint has swung, whatever camber the wheel stands with."""
    known = judged({**moving, "arms.static_camber": f"{camber} deg"}).worked.known
    for joint in ("upper", "lower"):
        assert known[f"{joint}_joint_angles"].at[0.0, 0.0] == pytest.approx(0.0, abs=1e-6)


@pytest.mark.parametrize("slope", [5.0, -5.0, 2.0])
def test_the_side_view_slope_of_one_sloping_hinge(slope: float) -> None:
    """Level arms of 300, joints 200 and 600 above the ground; the upper arm's hinge rises to the front.

    Seen from the side the lower joint goes straight up and the upper one square to its hinge, so back by tan slope for a mm up.
    The upright turns: a point is the farther forward the lower it is, nought at 200, so on the ground by half of tan slope.
    """
    rise = tan(radians(slope))
    upright = UprightPoints((0.0, 0.0, 200.0), (0.0, 0.0, 600.0), (0.0, 0.0, 400.0))
    lower = Hinge((100.0, -300.0, 200.0), (-100.0, -300.0, 200.0))
    upper = Hinge((100.0, -300.0, 600.0 + 100.0 * rise), (-100.0, -300.0, 600.0 - 100.0 * rise))
    front = FrontEnd(upright, (lower, upper))
    assert the_value("side_view_slope")(front, straight_sweep(front, 20.0, 20.0)) == pytest.approx(rise / 2, rel=1e-4)
