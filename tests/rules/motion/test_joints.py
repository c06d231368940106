"""Angles in the joints: hand cases, and the turns of upright and arm composed by a general library."""

from math import asin, atan, cos, degrees, pi, radians, sin

import numpy
import pytest
from scipy.spatial.transform import Rotation

from rules.motion.front_end import FrontEnd
from rules.motion.joints import (
    MOST_SET,
    Angles,
    Swing,
    between,
    bolt_direction,
    corners,
    out_of_square,
    outer_swing,
    tie_rod_inner,
    tie_rod_outer,
)
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import Hinge, UprightPoints
from rules.motion.sweep import Blocked, Placed, Sweep, envelope, straight_sweep

ARM = 400.0
ALONG, FORE_AND_AFT, ACROSS = "along the steering axis", "fore and aft", "across the car"


def _level(inclined: float = 0.0) -> FrontEnd:
    """Level parallel arms of 400 mm, axis upright but for `inclined` mm in 250; a level tie rod of 400 mm behind."""
    upright = UprightPoints(
        (0.0, -80.0, 300.0), (0.0, -80.0 - inclined, 550.0), (0.0, 0.0, 400.0), (-130.0, -80.0, 360.0)
    )
    lower = Hinge((150.0, -80.0 - ARM, 300.0), (-150.0, -80.0 - ARM, 300.0))
    upper = Hinge((120.0, -80.0 - inclined - ARM, 550.0), (-140.0, -80.0 - inclined - ARM, 550.0))
    return FrontEnd(upright, (lower, upper), SteeringLinkage("rack", (-130.0, -80.0 - ARM, 360.0), -800.0, travel=60.0))


def _skew() -> FrontEnd:
    """Nothing level, parallel or square: hinges that run inboard and uphill, castor, inclination, a tie rod out of line."""
    upright = UprightPoints((14.0, -75.0, 276.0), (-15.0, -121.0, 531.0), (0.0, 0.0, 400.0), (-126.0, -140.0, 350.0))
    lower = Hinge((170.0, -480.0, 300.0), (-190.0, -505.0, 270.0))
    upper = Hinge((120.0, -400.0, 525.0), (-150.0, -425.0, 500.0))
    return FrontEnd(upright, (lower, upper), SteeringLinkage("rack", (-150.0, -490.0, 365.0), -800.0, travel=50.0))


def _outer(front: FrontEnd, sweep: Sweep, upper: bool, lies: str) -> Swing:
    assert front.arms is not None
    return outer_swing(sweep, front.upright, upper, front.arms[upper], bolt_direction(lies, front.upright))


@pytest.mark.parametrize("upper", [False, True], ids=["lower", "upper"])
@pytest.mark.parametrize("lies", [ALONG, ACROSS])
@pytest.mark.parametrize("travel", [-120.0, -40.0, 0.0, 40.0, 120.0])
def test_level_parallel_arms_swing_by_the_arcsine_of_travel_over_their_length(
    upper: bool, lies: str, travel: float
) -> None:
    """The upright only moves up and sideways; the arm of length a turns by asin(travel / a), and the joint with it."""
    front = _level()
    sweep = Sweep((Placed(travel, 0.0, front.straight(travel)),))
    angles = _outer(front, sweep, upper, lies).angles(0.0)
    assert angles.at[travel, 0.0] == pytest.approx(asin(abs(travel) / ARM), abs=1e-9)


def test_a_bolt_fore_and_aft_lets_level_arms_swing_freely() -> None:
    front = _level()
    swing = _outer(front, straight_sweep(front, 120.0, 120.0), True, FORE_AND_AFT)
    assert swing.angles(0.0).worst == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize("lock", [-1.0, -0.5, 0.5, 1.0])
def test_at_ride_height_steering_swings_every_bolt_but_the_one_along_the_axis(lock: float) -> None:
    """About an upright axis a bolt that lies flat turns by just what the wheel turns."""
    front = _level()
    pose = front.at(0.0, lock)
    sweep = Sweep((Placed(0.0, lock, pose),))
    assert abs(pose.turn) > radians(10)
    assert _outer(front, sweep, True, ALONG).angles(0.0).worst == pytest.approx(0.0, abs=1e-9)
    for lies in (FORE_AND_AFT, ACROSS):
        assert _outer(front, sweep, False, lies).angles(0.0).worst == pytest.approx(abs(pose.turn), abs=1e-9)


@pytest.mark.parametrize("clocking", [-20.0, 12.0])
def test_a_clocked_housing_needs_its_set_at_ride(clocking: float) -> None:
    front = _level()
    sweep = Sweep((Placed(0.0, 0.0, front.at(0.0, 0.0)),))
    for lies in (ALONG, ACROSS):
        worst = _outer(front, sweep, True, lies).angles(radians(clocking)).worst
        assert degrees(worst) == pytest.approx(abs(clocking), abs=1e-7)


def test_a_housing_clocked_outboard_by_the_inclination_stands_upright() -> None:
    """Axis 50 mm inboard over 250: bolt and axis lean atan(0.2) inboard, and a housing set that far outboard stands plumb.

    In bump the arm rises at the wheel and what stands on it leans inboard by asin(100 / 400), towards the bolt; in droop
    it leans as far outboard, away from the bolt.
    """
    front = _level(inclined=50.0)
    needed = _outer(front, straight_sweep(front, 100.0, 100.0, 3), True, ALONG).angles(-atan(0.2)).at
    assert needed[0.0, 0.0] == pytest.approx(atan(0.2), abs=1e-9)
    assert needed[100.0, 0.0] == pytest.approx(asin(0.25) - atan(0.2), abs=1e-9)
    assert needed[-100.0, 0.0] == pytest.approx(asin(0.25) + atan(0.2), abs=1e-9)


@pytest.mark.parametrize("upper", [False, True], ids=["lower", "upper"])
@pytest.mark.parametrize("lies", [ALONG, FORE_AND_AFT, ACROSS])
@pytest.mark.parametrize("clocking", [0.0, 0.2, -0.15])
def test_an_outer_pivot_against_turns_composed_by_a_general_library(upper: bool, lies: str, clocking: float) -> None:
    """scipy finds the upright's turn from where two of its directions went, and the arm's from its angle about its hinge."""
    front = _skew()
    assert front.arms is not None
    sweep = envelope(front, 80.0, 90.0, 5, 5)
    bolt = numpy.array(bolt_direction(lies, front.upright))
    angles = _outer(front, sweep, upper, lies).angles(clocking)
    hinge = front.arms[upper]
    rear, line = numpy.array(hinge.rear), numpy.subtract(hinge.front, hinge.rear)
    line = line / numpy.linalg.norm(line)
    axis_at_ride = numpy.subtract(front.upright.upper, front.upright.lower)

    def about_hinge(point: tuple[float, float, float]) -> numpy.ndarray:
        arm = numpy.array(point) - rear
        return arm - (arm @ line) * line

    at_ride = about_hinge(front.upright.upper if upper else front.upright.lower)
    for travel, lock, pose in sweep.placed:
        before = numpy.array([axis_at_ride / numpy.linalg.norm(axis_at_ride), (0.0, 1.0, 0.0)])
        upright_turn, misfit = Rotation.align_vectors(numpy.array([pose.axis, pose.spin]), before)
        assert misfit < 1e-6
        now = about_hinge(pose.upper if upper else pose.lower)
        angle = numpy.arctan2(numpy.cross(at_ride, now) @ line, at_ride @ now)
        housing = (Rotation.from_rotvec(angle * line) * Rotation.from_euler("x", clocking)).apply(bolt)
        needed = numpy.arccos(min(1.0, abs(upright_turn.apply(bolt) @ housing)))
        assert angles.at[travel, lock] == pytest.approx(needed, abs=1e-6)
    assert len(angles.at) == 25


@pytest.mark.parametrize("lies", ["up and down", FORE_AND_AFT])
def test_the_outer_tie_rod_joint_against_turns_composed_by_a_general_library(lies: str) -> None:
    front = _skew()
    sweep = envelope(front, 80.0, 90.0, 5, 5)
    bolt = numpy.array(bolt_direction(lies, front.upright))
    angles = tie_rod_outer(sweep, front.upright, tuple(bolt))
    axis_at_ride = numpy.subtract(front.upright.upper, front.upright.lower)
    before = numpy.array([axis_at_ride / numpy.linalg.norm(axis_at_ride), (0.0, 1.0, 0.0)])
    for travel, lock, pose in sweep.placed:
        upright_turn, _ = Rotation.align_vectors(numpy.array([pose.axis, pose.spin]), before)
        rod = numpy.subtract(pose.tie_rod_end, pose.inner_end)
        between_them = numpy.arccos(upright_turn.apply(bolt) @ rod / numpy.linalg.norm(rod))
        assert angles.at[travel, lock] == pytest.approx(abs(pi / 2 - between_them), abs=1e-6)


def test_a_level_tie_rod_leans_with_travel_and_its_upright_bolt_with_it() -> None:
    """Rod of 400 mm beside arms of 400 mm: at 100 mm of bump all lie asin(0.25) off level, and the upright stays upright."""
    front = _level()
    sweep = Sweep((Placed(100.0, 0.0, front.at(100.0, 0.0)),))
    assert tie_rod_outer(sweep, front.upright, (0.0, 0.0, 1.0)).worst == pytest.approx(asin(0.25), abs=1e-9)
    assert tie_rod_outer(sweep, front.upright, (1.0, 0.0, 0.0)).worst == pytest.approx(0.0, abs=1e-9)
    assert tie_rod_inner(sweep, "along the rack", (0.0, 1.0, 0.0)).worst == pytest.approx(asin(0.25), abs=1e-9)
    assert tie_rod_inner(sweep, "up and down", (0.0, 0.0, 1.0)).worst == pytest.approx(asin(0.25), abs=1e-9)
    assert tie_rod_inner(sweep, FORE_AND_AFT, (1.0, 0.0, 0.0)).worst == pytest.approx(0.0, abs=1e-9)


def test_at_lock_an_outer_bolt_fore_and_aft_turns_with_the_steering_arm() -> None:
    front = _level()
    pose = front.at(0.0, 1.0)
    assert pose.tie_rod_end is not None and pose.inner_end is not None
    sweep = Sweep((Placed(0.0, 1.0, pose),))
    rod_sweeps = asin((pose.tie_rod_end[0] - pose.inner_end[0]) / ARM)  # seen from above, the rod's own angle
    needed = tie_rod_outer(sweep, front.upright, (1.0, 0.0, 0.0)).worst
    # Turned to the left by t a bolt that pointed ahead points to the left by t; the rod points outboard and ahead by s.
    assert needed == pytest.approx(abs(pose.turn + rod_sweeps), abs=1e-9)
    assert tie_rod_outer(sweep, front.upright, (0.0, 0.0, 1.0)).worst == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize("lies", [ALONG, ACROSS])
@pytest.mark.parametrize("upper", [False, True], ids=["lower", "upper"])
def test_the_best_clocking_is_the_best_of_every_tenth_of_a_degree(lies: str, upper: bool) -> None:
    front = _skew()
    swing = _outer(front, envelope(front, 60.0, 120.0, 5, 5), upper, lies)
    best = swing.best()
    tried = [swing.angles(radians(tenths / 10)).worst for tenths in range(-450, 451)]
    assert best.least <= min(tried) + 1e-6
    assert best.least == pytest.approx(min(tried), abs=radians(0.1))
    assert swing.angles(best).worst == pytest.approx(best.least, abs=1e-12)


def test_level_arms_with_more_bump_than_droop_are_best_clocked_half_way() -> None:
    """The housing leans asin(200 / 400) = 30 deg inboard in bump and asin(100 / 400) = 14.4775 deg outboard in droop.

    Set half the difference, 7.7612 deg, outboard, it needs half the sum, 22.2388 deg, either way.
    """
    front = _level()
    best = _outer(front, straight_sweep(front, 100.0, 200.0), True, ALONG).best()
    assert degrees(best) == pytest.approx(-7.7612, abs=1e-3)
    assert degrees(best.least) == pytest.approx(22.2388, abs=1e-3)


def test_clocking_seen_from_the_front_does_nothing_for_a_bolt_fore_and_aft() -> None:
    front = _level()
    swing = _outer(front, Sweep((Placed(0.0, 1.0, front.at(0.0, 1.0)),)), True, FORE_AND_AFT)
    assert (swing.best(), swing.best().least) == (0.0, swing.angles(0.0).worst)
    assert swing.angles(0.4).worst == pytest.approx(swing.angles(0.0).worst, abs=1e-12)


def test_a_best_clocking_beyond_the_search_stops_at_its_edge() -> None:
    leans = Swing((0.0, 0.0, 1.0), {(0.0, 0.0): (0.0, -sin(1.2), cos(1.2))})
    assert leans.best() == pytest.approx(MOST_SET, abs=1e-4)


def test_the_worst_of_several_alike_is_the_one_nearest_to_straight_and_ride() -> None:
    worst = Angles({(-90.0, -1.0): 0.3, (-90.0, 0.0): 0.3 - 1e-13, (110.0, 1.0): 0.3, (0.0, 0.0): 0.1}).worst
    assert (worst.travel, worst.lock) == (-90.0, 0.0)
    assert worst == pytest.approx(0.3, abs=1e-12)


def test_lock_alone_is_read_at_ride_height() -> None:
    assert Angles({(0.0, -1.0): 0.2, (0.0, 1.0): 0.25, (90.0, 1.0): 0.6}).from_lock_alone == 0.25
    assert Angles({(90.0, 1.0): 0.6}).from_lock_alone == 0.0


def test_the_corners_of_an_envelope_are_nine_and_stay_nine_where_some_cannot_be_reached() -> None:
    full = envelope(_level(), 90.0, 110.0)
    nine = tuple((travel, lock) for travel in (-90.0, 0.0, 110.0) for lock in (-1.0, 0.0, 1.0))
    assert corners(full) == nine
    gone = tuple(placed for placed in full.placed if placed.travel > -90.0)
    blocked = tuple(Blocked(placed.travel, placed.lock, -60.0) for placed in full.placed if placed.travel == -90.0)
    assert corners(Sweep(gone, blocked)) == nine


def test_without_droop_there_are_six_corners() -> None:
    assert {travel for travel, _ in corners(envelope(_level(), 0.0, 110.0))} == {0.0, 110.0}
    assert len(corners(envelope(_level(), 0.0, 110.0))) == 6


def test_a_line_has_no_head_and_no_tail() -> None:
    assert between((0.0, 1.0, 0.0), (0.0, -1.0, 0.1)) == pytest.approx(atan(0.1), abs=1e-12)
    assert out_of_square((0.0, 0.6, 0.8), (0.0, 0.0, -1.0)) == pytest.approx(asin(0.8), abs=1e-12)


@pytest.mark.parametrize(
    ("lies", "direction"),
    [
        ("fore and aft", (1.0, 0.0, 0.0)),
        ("across the car", (0.0, 1.0, 0.0)),
        ("along the rack", (0.0, 1.0, 0.0)),
        ("up and down", (0.0, 0.0, 1.0)),
        ("along the steering axis", (0.0, -0.6, 0.8)),
    ],
)
def test_a_bolts_direction(lies: str, direction: tuple[float, float, float]) -> None:
    upright = UprightPoints((0.0, -50.0, 300.0), (0.0, -200.0, 500.0), (0.0, 0.0, 400.0))
    assert bolt_direction(lies, upright) == pytest.approx(direction, abs=1e-12)


def test_a_bolt_that_lies_fore_and_aft_has_no_clocking() -> None:
    """Turned about its own direction it stays as it is; one that then leans by 0.3 rad to the side needs that."""
    best = Swing((1.0, 0.0, 0.0), {(0.0, 0.0): (1.0, 0.0, 0.0), (60.0, 0.0): (cos(0.3), sin(0.3), 0.0)}).best()
    assert best == 0.0 and best.least == pytest.approx(0.3)
