"""The figures above the moving picture: said as in the workshop, never wider than the screen."""

from collections.abc import Mapping
from typing import Any

import pytest

from rules.drawn.moving.gaps import NearTouch
from rules.drawn.moving.scene import RIDE, Moving, TravelAndLock, moving
from rules.measure.quantity import Units
from rules.motion.place_words import height, in_units
from rules.motion.sweep import Worst
from tests.support.base_sheet import MOVING, changed
from tests.support.judging import judged_document
from wizard.widgets.motion_state import (
    gap_line,
    place_words,
    return_words,
    state_lines,
    worst_gap,
    worst_line,
)


def known(changes: Mapping[str, object]) -> Mapping[str, Any]:
    return judged_document(changed(changes)).worked.known


def front_of(changes: Mapping[str, object]) -> Moving:
    found = moving(known(changes))
    assert found is not None
    return found


@pytest.fixture(scope="module")
def front() -> Moving:
    return front_of(MOVING)


@pytest.mark.parametrize(
    ("travel", "units", "words"),
    [
        (0.0, "metric", "ride height"),
        (40.0, "metric", "40 mm bump"),
        (-35.0, "metric", "35 mm droop"),
        (25.4 * 1.25, "inch", "1 1/4 in bump"),
    ],
)
def test_travel_in_words(travel: float, units: Units, words: str) -> None:
    assert in_units(height(travel), units) == words


@pytest.mark.parametrize(
    ("place", "words"),
    [
        (RIDE, "ride height, straight ahead"),
        (TravelAndLock(40.0, 0.6), "40 mm bump, 60 % lock left"),
        (TravelAndLock(-90.0, -1.0), "90 mm droop, full lock right"),
    ],
)
def test_place_in_words(front: Moving, place: TravelAndLock, words: str) -> None:
    assert place_words(place, front, "metric") == words


def test_place_names_only_what_moves() -> None:
    arms = front_of({name: MOVING[name] for name in MOVING if name.startswith("arms")})
    steering = front_of({name: MOVING[name] for name in MOVING if name.startswith("steering")})
    assert place_words(TravelAndLock(40.0), arms, "metric") == "40 mm bump, wheels held straight"
    assert place_words(TravelAndLock(0.0, 1.0), steering, "metric") == "full lock left"


def test_straight_ahead_one_line_stands_for_both_wheels(front: Moving) -> None:
    lines = state_lines(front, RIDE, "metric", 78)
    assert lines[0] == "Ride height, straight ahead; toe of each wheel 0 deg."
    # On level ground the sheet's 25 mm ground offset, and no camber.
    assert lines[1].split() == ["both", "wheels", "camber", "0", "deg", "ground", "offset", "25", "mm"]
    assert lines[2] == ""


def test_in_a_turn_each_wheel_has_its_line(front: Moving) -> None:
    """The stop is entered as 32 deg of the inner wheel; the wheels change their names with the side."""
    left, right = (state_lines(front, TravelAndLock(0.0, lock), "metric", 78) for lock in (1.0, -1.0))
    assert left[1].startswith("left, inner") and "turned 32 deg" in left[1]
    assert right[2].startswith("right, inner") and "turned 32 deg" in right[2]
    assert left[2].startswith("right, outer") and right[1].startswith("left, outer")
    assert left[2].split()[2:] == right[1].split()[2:]
    outer = float(left[2].split("turned ")[1].split()[0])
    assert left[0] == f"Ride height, full lock left; toe-out of the turn {32 - outer:g} deg."


def test_toe_says_which_way() -> None:
    """A rod behind the axle, 38 mm lower outside: in bump it levels and pushes the wheel's rear out, so the front goes in."""
    crooked = front_of({**MOVING, "steering.inner_height": "398 mm"})
    bump, droop = (state_lines(crooked, TravelAndLock(travel), "metric", 78)[0] for travel in (40.0, -80.0))
    assert bump.startswith("40 mm bump, straight ahead; toe of each wheel ") and bump.endswith(" deg in.")
    assert droop.endswith(" deg out.")


@pytest.mark.parametrize("units", ["metric", "inch"])
@pytest.mark.parametrize("place", [RIDE, TravelAndLock(107.0, 0.85), TravelAndLock(-90.0, -1.0)])
@pytest.mark.parametrize("width", [58, 78, 118])
def test_wheel_lines_fit(front: Moving, width: int, place: TravelAndLock, units: Units) -> None:
    lines = state_lines(front, place, units, width + 2)
    assert all(len(line) <= width for line in lines[1:])


def test_what_returns_the_wheels_is_that_of_full_lock_both_ways() -> None:
    facts = known(MOVING)
    full = facts["return_moment_full_lock"]
    assert isinstance(full, float)
    words = f"weight returns the wheels with {full:.2f} N m"
    assert (
        return_words(facts, TravelAndLock(0.0, 1.0), "metric")
        == return_words(facts, TravelAndLock(0.0, -1.0), "metric")
        == words
    )
    # 1 lbf ft = 1.355818 N m
    in_feet = float(return_words(facts, TravelAndLock(0.0, 1.0), "inch").removesuffix(" lbf ft").split()[-1])
    assert in_feet * 1.355818 == pytest.approx(full, abs=0.01)


def test_away_from_ride_height_it_says_that_it_is_that_of_ride_height() -> None:
    facts = known(MOVING)
    ride, bump = (return_words(facts, TravelAndLock(travel, 0.5), "metric") for travel in (0.0, 40.0))
    assert bump == f"{ride} at ride"


def test_a_weight_that_turns_the_wheels_further_is_said_to() -> None:
    """Axis upright seen from the front, 6 deg of castor: the outer wheel sinks faster than the inner one rises."""
    facts = known({**MOVING, "pivots.inclination": "0 deg"})
    assert return_words(facts, TravelAndLock(0.0, 0.5), "metric").startswith("weight turns them further with ")


LOCKS_BEFORE_FULL_LOCK: dict[str, object] = {
    "steering.rack_travel": "280 mm",
    "steering.stop_angle": None,
    "steering.stopped_by": "rack",
}


@pytest.mark.parametrize(
    "changes", [{"job.corner_weight": None}, {"steering.linkage": None}, LOCKS_BEFORE_FULL_LOCK], ids=str
)
def test_nothing_is_said_straight_ahead_or_where_it_is_not_known(changes: dict[str, object]) -> None:
    assert return_words(known(MOVING), TravelAndLock(40.0), "metric") == ""
    assert return_words(known({**MOVING, **changes}), TravelAndLock(0.0, 1.0), "metric") == ""


def test_it_ends_the_first_line_only_where_there_is_room(front: Moving) -> None:
    place, words = TravelAndLock(-90.0, -1.0), "weight returns the wheels with 24.34 N m at ride"
    bare = state_lines(front, place, "metric", 200)[0]
    fitting = len(bare) - 1 + len("; ") + len(words) + 1 + 2  # and a column free on each side
    assert state_lines(front, place, "metric", fitting, words)[0] == f"{bare[:-1]}; {words}."
    assert state_lines(front, place, "metric", fitting - 1, words)[0] == bare
    assert state_lines(front, place, "metric", 200)[0] == bare


@pytest.mark.parametrize("units", ["metric", "inch"])
@pytest.mark.parametrize(
    "place",
    [TravelAndLock(-60.0, 1.0), TravelAndLock(107.0, -0.85), TravelAndLock(-90.0, -1.0), TravelAndLock(0.0, 0.05)],
)
def test_there_is_room_for_it_at_120_columns(front: Moving, place: TravelAndLock, units: Units) -> None:
    words = return_words(known(MOVING), place, units)
    assert words and state_lines(front, place, units, 120, words)[0].endswith(f"; {words}.")


TOUCH = NearTouch("tyre to tie rod", 31.0, (0.0, 0.0, 0.0))


@pytest.mark.parametrize("both", [False, True])
def test_the_gap_names_its_wheel_and_its_sign(both: bool) -> None:
    nearer = TOUCH._replace(gap=12.0)
    assert gap_line((TOUCH, TOUCH), "metric", both) == "Wheel gap now 31 mm, tyre to tie rod, both wheels: at the X."
    assert "12 mm, tyre to tie rod, left wheel: at the X." in gap_line((nearer, TOUCH), "metric", both)
    seen = "at the X" if both else "F4 shows it"
    assert gap_line((TOUCH, nearer), "metric", both).endswith(f"12 mm, tyre to tie rod, right wheel: {seen}.")
    assert gap_line((None, None), "metric", both) == ""


def test_without_a_picture_no_sign_is_named() -> None:
    assert gap_line((TOUCH, TOUCH), "metric", None) == "Wheel gap now 31 mm, tyre to tie rod, both wheels."


def test_the_worst_gap_is_the_least_of_those_known() -> None:
    gaps = {"tyre_upper_arm_gap": Worst(20.0, 0.0, 0.0), "rim_tie_rod_gap": Worst(-3.0, 110.0, -1.0)}
    found = worst_gap(gaps)
    assert found is not None and found[0] == -3.0
    assert worst_gap({"tyre_upper_arm_gap": 20.0}) is None


def test_the_worst_gap_says_what_and_where() -> None:
    facts = known(MOVING)
    found = worst_gap(facts)
    assert found is not None
    worst, between = found
    line = worst_line(facts, "metric")
    assert (
        line.startswith(f"Smallest wheel gap {round(worst, 2):g} mm, {between.replace(' to ', '/')}: ")
        and in_units(height(worst.travel), "metric") in line
    )
    assert len(line) <= 78 and len(worst_line(facts, "inch")) <= 78
    assert worst_line({}, "metric") == ""


@pytest.mark.parametrize(
    ("lock", "words"), [(1.0, "full lock, inner"), (-0.5, "50 % lock, outer"), (0.0, "40 mm bump")]
)
def test_the_worst_gap_names_the_wheel_by_its_side_of_the_bend(lock: float, words: str) -> None:
    assert worst_line({"tyre_tie_rod_gap": Worst(9.0, 40.0, lock)}, "metric").endswith(words)
