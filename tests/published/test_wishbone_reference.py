"""A pair of A-arms seen from the front, by the figures of a reference worked out twice, and by its definitions.

No complete published example of double A-arms with its coordinates and its answers was found, so these are derived: two
solvers, agreeing to the last figure given. The definitions are common practice (workshop texts): instant centre, the
meeting of the two arms' lines; roll centre, where the line from contact to instant centre passes the centre line; swing-arm
length, from contact to instant centre. Castor as in SAE J670, as quoted elsewhere; inclination and offset at the ground as
chassis textbooks have it.

Left wheel, mm from the centre line: lower arm (350, 330) to (700, 300), upper arm (400, 560) to (660, 590); contact (780,
0). The wheel stands on the contact, so travel there is told as the contact's rise, which is not quite the wheel centre's.
"""

from math import atan, degrees

import numpy as np
import pytest
from scipy.optimize import brentq
from skspatial.objects import Line

from rules.motion.front_end import FrontEnd
from rules.motion.points import Hinge, Pose, UprightPoints
from rules.motion.travel import instant_centre, roll_centre_height
from rules.values.steering.travel import (
    instant_centre_from_tyre,
    instant_centre_height,
    swing_arm_length,
)
from rules.values.steering.travel import roll_centre_height as roll_centre_on_the_sheet

CONTACT = 780.0
LOWER = Hinge((100.0, 350.0 - CONTACT, 330.0), (-100.0, 350.0 - CONTACT, 330.0))
UPPER = Hinge((100.0, 400.0 - CONTACT, 560.0), (-100.0, 400.0 - CONTACT, 560.0))

# contact's rise mm, camber deg (top outboard plus), contact sideways mm, roll centre above the ground moved with it mm
TABLE = [
    (-50.0, 1.70035, -16.36774, 291.8278),
    (-25.0, 0.88764, -7.51747, 252.3181),
    (0.0, 0.0, 0.0, 214.848978),
    (25.0, -0.96909, 6.28758, 179.4227),
    (50.0, -2.02827, 11.44036, 146.1336),
]


def front(lower_ahead: float = 0.0, upper_ahead: float = 0.0) -> FrontEnd:
    upright = UprightPoints(
        (lower_ahead, 700.0 - CONTACT, 300.0), (upper_ahead, 660.0 - CONTACT, 590.0), (0.0, 0.0, 400.0)
    )
    return FrontEnd(upright, (LOWER, UPPER))


def with_contact_at(corner: FrontEnd, rise: float) -> Pose:
    travel = brentq(lambda travel: corner.straight(travel).contact[2] - rise, rise - 5, rise + 5, xtol=1e-12)
    return corner.straight(travel)


@pytest.mark.parametrize(("rise", "camber", "sideways", "roll_centre"), TABLE)
def test_camber_contact_and_roll_centre_over_the_travel(
    rise: float, camber: float, sideways: float, roll_centre: float
) -> None:
    corner = front()
    pose = with_contact_at(corner, rise)
    assert degrees(pose.camber) == pytest.approx(camber, abs=5e-6)
    assert pose.contact[1] == pytest.approx(sideways, abs=5e-6)
    assert corner.arms is not None
    assert roll_centre_height(corner.arms, pose, -CONTACT) == pytest.approx(roll_centre, abs=5e-5)


def test_the_instant_centre_is_where_the_two_arms_lines_meet() -> None:
    # Two points of each arm; the meeting solved as two unknown lengths along the lines.
    lower, upper = np.array([[350.0, 330.0], [700.0, 300.0]]), np.array([[400.0, 560.0], [660.0, 590.0]])
    along_lower, along_upper = lower[1] - lower[0], upper[1] - upper[0]
    part, _ = np.linalg.solve(np.column_stack([along_lower, -along_upper]), upper[0] - lower[0])
    meeting = lower[0] + part * along_lower
    assert meeting == pytest.approx((-765.027322, 425.573770), abs=5e-7)
    corner = front()
    assert corner.arms is not None
    found = instant_centre(corner.arms, corner.straight(0.0))
    assert found is not None
    assert (found[0] + CONTACT, found[1]) == pytest.approx(tuple(meeting), abs=1e-6)


def test_the_values_of_the_sheet_are_the_references() -> None:
    corner = front()
    across = instant_centre_from_tyre(corner)
    assert across == pytest.approx(1545.027322, abs=5e-7)
    assert instant_centre_height(corner) == pytest.approx(425.573770, abs=5e-7)
    assert swing_arm_length(across) == pytest.approx(1545.027322, abs=5e-7)
    assert roll_centre_on_the_sheet(corner, 2 * CONTACT) == pytest.approx(214.848978, abs=5e-7)


def test_camber_turns_by_one_over_the_swing_arm_and_the_contact_moves_by_its_slope() -> None:
    # Published rate: 1 rad over 1545.027322 mm is 0.0370839911 deg a mm, top inboard as the contact rises; the contact
    # goes 0.27544741 sideways for each mm up: instant centre height 425.573770 over 1545.027322.
    corner, small = front(), 0.01
    up, down = with_contact_at(corner, small), with_contact_at(corner, -small)
    assert degrees(up.camber - down.camber) / (2 * small) == pytest.approx(-0.0370839911, abs=5e-8)
    assert (up.contact[1] - down.contact[1]) / (2 * small) == pytest.approx(0.27544741, abs=5e-8)


def test_axis_through_two_ball_joints() -> None:
    # Joints (10, 700, 300) and (-15, 660, 590), wheel centre (0, 780, 400): castor 4.927110, inclination 7.853313 deg,
    # the axis meets the ground 38.620690 inboard of the contact.
    pose = front(10.0, -15.0).straight(0.0)
    assert degrees(pose.castor) == pytest.approx(4.927110, abs=5e-7)
    assert degrees(atan(-pose.axis[1] / pose.axis[2])) == pytest.approx(7.853313, abs=5e-7)  # seen from the front
    assert pose.ground_offset == pytest.approx(38.620690, abs=5e-7)
    meets = np.array(pose.lower) - pose.lower[2] / pose.axis[2] * np.array(pose.axis)
    assert meets == pytest.approx((35.862069, 741.379310 - CONTACT, 0.0), abs=5e-7)


def test_the_links_are_as_long_as_the_reference_says() -> None:
    corner = front()
    for travel in (0.0, 40.0):
        lower, upper = (np.array(point) for point in corner.held(travel))
        at = np.array([[1, 0, 0]])  # the hinge runs straight ahead: only what lies across counts
        for outer, hinge, length in ((lower, LOWER, 351.283361), (upper, UPPER, 261.725047)):
            spoke = np.subtract(outer, hinge.front)
            assert np.linalg.norm(spoke - spoke * at) == pytest.approx(length, abs=5e-7)
        assert np.linalg.norm(upper - lower) == pytest.approx(292.745623, abs=5e-7)


def test_the_instant_centre_is_where_a_geometry_library_has_it() -> None:
    """scikit-spatial 10: the meeting of two lines; mm from the centre line and the ground. -765.02732240, 425.57377049."""
    meeting = Line.from_points([700, 300], [350, 330]).intersect_line(Line.from_points([660, 590], [400, 560]))
    assert meeting == pytest.approx([-765.02732240, 425.57377049], abs=1e-8)
    found = instant_centre((LOWER, UPPER), front().straight(0.0))
    assert found is not None
    assert (found[0] + CONTACT, found[1]) == pytest.approx(tuple(meeting), abs=1e-9)
