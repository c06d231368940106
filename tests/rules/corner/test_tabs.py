"""How long the frame's tabs may be beside a shock between two inner pivots, by hand. Straight rods, square to each other."""

import pytest

from rules.corner.kinds import band
from rules.corner.part import Part
from rules.corner.placing import Ride
from rules.corner.room import BetweenTwo
from rules.corner.tabs import Tabs, tabs_beside
from rules.measure.vectors import Vector
from rules.motion.points import UprightPoints
from rules.motion.sweep import Sweep
from rules.solids.shapes import Rod

RIDE = Ride(UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0)))
STANDING = Sweep(())


def frame(assumed: str = "") -> Part:
    line = Rod((200.0, -400.0, 470.0), (-200.0, -400.0, 470.0), 15.0)
    return Part("frame at the upper arm", "frame", (line,), assumed=assumed)


def shock(ahead: float, name: str = "shock", leans: float = 0.0) -> Part:
    """Straight up through the line, or leaning forward at its lower end."""
    ends: tuple[Vector, Vector] = ((ahead, -400.0, 870.0), (ahead + leans, -400.0, 270.0))
    return Part(name, "shock", (Rod(*ends, 30.0),))


@pytest.mark.parametrize(("ahead", "front", "rear"), [(0.0, 149.0, 149.0), (40.0, 109.0, 189.0)])
def test_the_shock_and_the_room_it_wants_part_the_tabs(ahead: float, front: float, rear: float) -> None:
    """15 + 30 + 6 wanted = 51 on either side of a shock that stands 200 - ahead behind the front pivot."""
    assert band(frame(), shock(0.0)).limits.good == 6.0
    for pair in ((frame(), shock(ahead)), (shock(ahead), frame())):
        tabs = tabs_beside(*pair, RIDE, STANDING)
        assert (
            tabs
            and tabs.from_front == pytest.approx(front, abs=1.01)
            and tabs.from_rear == pytest.approx(rear, abs=1.01)
        )


def test_a_shock_that_leans_crosses_the_line_where_it_is_there() -> None:
    """400 of 600 down it has gone 0.667 x 60 = 40 forward; its side is 51 x root(1 + 0.1^2) = 51.3 along the line."""
    tabs = tabs_beside(frame(), shock(0.0, leans=60.0), RIDE, STANDING)
    assert (
        tabs
        and tabs.from_front == pytest.approx(160 - 51.3, abs=1.5)
        and tabs.from_rear == pytest.approx(240 - 51.3, abs=1.5)
    )


@pytest.mark.parametrize("ahead", [110.0, -110.0, 200.0])  # 90 - 51 = 39 are left at one pivot: no tab fits
def test_a_shock_too_near_one_pivot_leaves_no_room_for_its_tabs(ahead: float) -> None:
    assert tabs_beside(frame(), shock(ahead), RIDE, STANDING) is None


def test_only_a_shock_and_a_frame_whose_run_is_known_have_tabs_beside() -> None:
    assert tabs_beside(frame(), shock(0.0, name="tie rod"), RIDE, STANDING) is None
    assert tabs_beside(frame("arms.upper_front_ahead"), shock(0.0), RIDE, STANDING) is None
    assert tabs_beside(frame(), shock(300.0), RIDE, STANDING) is None  # passes ahead of both


def test_tabs_that_clear_it_make_a_stop_a_watch() -> None:
    parts = (frame(), shock(0.0))
    assert BetweenTwo("one", "other", parts, -10.0).verdict == "stop"
    assert BetweenTwo("one", "other", parts, -10.0, tabs=Tabs(149.0, 149.0)).verdict == "watch"
