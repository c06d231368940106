"""The moving front end as shapes: sizes as on the sheet, both views of one car, and where the links stop it."""

from collections.abc import Callable, Mapping
from math import atan2, degrees, hypot, pi, radians, tan
from typing import Any

import pytest

from rules.corner.placing import placed
from rules.drawn.moving.graphs import Curve, graphs
from rules.drawn.moving.scene import (
    LOCK_NOTCHES,
    NOTCH,
    RIDE,
    Moving,
    SeenFrom,
    TravelAndLock,
    frame,
    moved,
    scene,
    touches,
)
from rules.drawn.moving.scene import moving as front_end
from rules.drawn.scene import Body, Item, Label, Line, Mark
from rules.judging.judge import Judged
from rules.measure.outline import Point
from rules.motion.points import CannotReach
from rules.motion.sweep import Worst
from tests.support.front_ends import parallel_arms, straight_rack, trapezium

Judge = Callable[[Mapping[str, object]], Judged]
PLACES = [
    RIDE,
    TravelAndLock(110.0, 0.0),
    TravelAndLock(-90.0, 1.0),
    TravelAndLock(110.0, -1.0),
    TravelAndLock(35.0, 0.4),
]


@pytest.fixture
def known(judged: Judge, moving: dict[str, object]) -> Mapping[str, object]:
    return judged(moving).worked.known


@pytest.fixture
def front(known: Mapping[str, object]) -> Moving:
    found = front_end(known)
    assert found is not None
    return found


def without(changes: Mapping[str, object], *steps: str) -> dict[str, object]:
    return {name: entry for name, entry in changes.items() if name.split(".")[0] not in steps}


def outlines(front: Moving, place: TravelAndLock, view: SeenFrom, both: bool = False) -> list[tuple[Point, ...]]:
    """The tyres' outlines, the left one first."""
    return [area.outer for body in bodies(front, place, view, "tyre", both) for area in body.areas]


def bodies(front: Moving, place: TravelAndLock, view: SeenFrom, name: str, both: bool = False) -> list[Body]:
    """What is drawn of a part, the left one first."""
    items = scene(front, place, view, both).items
    return [item for item in items if isinstance(item, Body) and item.name == name]


def across(body: Body) -> tuple[float, float]:
    """From where to where a body reaches across the car."""
    return spread(tuple(point for area in body.areas for point in area.outer), 0)


ROUGH = 2.6
"""mm; round edges are drawn with corners no further than 2.5 from true ones."""


def spread(points: tuple[Point, ...], axis: int) -> tuple[float, float]:
    numbers = [point[axis] for point in points]
    return min(numbers), max(numbers)


def lines(front: Moving, place: TravelAndLock, view: SeenFrom, part: str, both: bool = False) -> list[Line]:
    return [item for item in scene(front, place, view, both).items if isinstance(item, Line) and item.part == part]


# Size and place


def test_at_ride_the_tyre_is_as_large_as_on_its_side(front: Moving) -> None:
    # 33x12.50R15: 33 in = 838.2 mm across, 12.50 in = 317.5 mm wide; wheel centre at the loaded radius, 400 mm.
    (tyre,) = outlines(front, RIDE, "front")
    assert spread(tyre, 0) == pytest.approx((-317.5 / 2, 317.5 / 2), abs=ROUGH)
    assert spread(tyre, 1) == pytest.approx((0.0, 400 + 838.2 / 2), abs=ROUGH)
    (tyre,) = outlines(front, RIDE, "plan")
    assert spread(tyre, 0) == pytest.approx((-317.5 / 2, 317.5 / 2), abs=ROUGH)
    assert spread(tyre, 1) == pytest.approx((-838.2 / 2, 838.2 / 2), abs=ROUGH)


def test_the_pivots_stand_where_the_sheet_has_them(front: Moving) -> None:
    """Lower arm's inner pivots 300 mm from the centre line at track 1600: 300 - 800 = -500; 285 mm up."""
    marks = [
        (round(item.at[0], 6), round(item.at[1], 6))
        for item in scene(front, RIDE, "front", False).items
        if isinstance(item, Mark)
    ]
    assert (-500.0, 285.0) in marks and (-410.0, 512.0) in marks
    marks = [
        (round(item.at[0], 6), round(item.at[1], 6))
        for item in scene(front, RIDE, "plan", False).items
        if isinstance(item, Mark)
    ]
    assert {(-500.0, -170.0), (-500.0, 190.0), (-410.0, -190.0), (-410.0, 220.0)} <= set(marks)


@pytest.mark.parametrize("arm", ["lower", "upper"])
@pytest.mark.parametrize("far_in", ["front", "rear"])
@pytest.mark.parametrize("higher", ["front", "rear"])
def test_the_name_of_an_arm_stands_at_its_pivot_that_is_farther_inboard(
    judged: Judge, moving: dict[str, object], arm: str, far_in: str, higher: str
) -> None:
    """40 mm farther in than the other, 20 higher or lower. At track 1600: 260 - 800 = -540."""
    typed = dict(moving)
    for end, ahead in (("front", 180), ("rear", -200)):
        across, up = 260 if end == far_in else 300, 400 if end == higher else 380
        typed |= {f"arms.{arm}_{end}_from_centre": f"{across} mm", f"arms.{arm}_{end}_height": f"{up} mm"}
        typed[f"arms.{arm}_{end}_ahead"] = f"{ahead} mm"
    front = front_end(judged(typed).worked.known)
    assert front is not None
    up, down = (400 if far_in == higher else 380), (-180 if far_in == "front" else 200)
    for view, at in (("front", (-540, up)), ("plan", (-540, down))):
        (name,) = (
            item
            for item in scene(front, RIDE, view, False).items  # type: ignore[arg-type]
            if isinstance(item, Label) and item.text == f"{arm} arm"
        )
        assert name.at == pytest.approx(at)


@pytest.mark.parametrize("place", PLACES)
def test_both_views_agree_across_the_car(front: Moving, place: TravelAndLock) -> None:
    """Every shape they share reaches equally far inboard and outboard; the lower edge is flattened in one only."""
    for one, other in zip(outlines(front, place, "front"), outlines(front, place, "plan"), strict=True):
        assert spread(one, 0) == pytest.approx(spread(other, 0), abs=ROUGH)
    for name in ("lower arm", "upper arm", "tie rod", "upper joint housing"):
        (one_body,), (other_body,) = (bodies(front, place, view, name) for view in ("front", "plan"))
        assert across(one_body) == pytest.approx(across(other_body), abs=ROUGH)


@pytest.mark.parametrize("place", PLACES)
@pytest.mark.parametrize("view", ["front", "plan"])
def test_the_tie_rod_reaches_from_joint_to_joint(front: Moving, place: TravelAndLock, view: SeenFrom) -> None:
    """Half its tube, 25 mm unless measured, beyond the joints that the links themselves give."""
    pose = front.corner(place.travel, place.lock)
    assert pose.inner_end and pose.tie_rod_end
    (rod,) = bodies(front, place, view, "tie rod")
    half = front.parts["tie rod"].shapes[0].radius  # type: ignore[attr-defined]
    ends = sorted((pose.inner_end[1], pose.tie_rod_end[1]))
    assert across(rod) == pytest.approx((ends[0] - half, ends[1] + half), abs=ROUGH)


@pytest.mark.parametrize("place", PLACES)
def test_parts_are_where_their_solids_are(front: Moving, place: TravelAndLock) -> None:
    """Against the solids that the room between parts is found from, as far as they reach each way."""
    assert front.ride
    motions = front.ride.motions(front.corner(place.travel, place.lock))
    for item in scene(front, place, "plan", False).items:
        if isinstance(item, Body):
            pieces = placed(front.parts[item.name], motions).pieces
            reach = (
                min(piece.support(0.0, -1.0, 0.0)[1] - piece.radius for piece in pieces),
                max(piece.support(0.0, 1.0, 0.0)[1] + piece.radius for piece in pieces),
            )
            assert across(item) == pytest.approx(reach, abs=ROUGH), item.name


def test_bump_lifts_wheel_and_ground_and_leaves_the_frame(front: Moving) -> None:
    (ride,), (bump,) = outlines(front, RIDE, "front"), outlines(front, TravelAndLock(50.0, 0.0), "front")
    assert spread(bump, 1)[0] - spread(ride, 1)[0] == pytest.approx(50.0, abs=0.5)
    assert bodies(front, RIDE, "front", "frame at the lower arm") == bodies(
        front, TravelAndLock(50.0, 0.0), "front", "frame at the lower arm"
    )
    ground = lines(front, TravelAndLock(50.0, 0.0), "front", "ground")
    assert {round(point[1]) for line in ground for point in (line.start, line.end)} == {50}
    pivots = [
        {item.at for item in scene(front, place, "front", False).items if isinstance(item, Mark)}
        for place in (RIDE, TravelAndLock(50.0, 0.0))
    ]
    assert {(-500.0, 285.0), (-410.0, 512.0)} <= pivots[0] & pivots[1]


def rolling(front: Moving, place: TravelAndLock, both: bool = False) -> list[float]:
    """Angle of each wheel's line from straight ahead, deg, to the car's left positive; front of the car is down."""
    found = []
    for line in lines(front, place, "plan", "centre line", both):
        along = (line.end[0] - line.start[0], line.end[1] - line.start[1])
        if line.style == "dashed" and hypot(*along) < 1000:
            found.append(degrees(atan2(along[0], -along[1])))
    return found


def test_left_lock_turns_the_front_of_both_wheels_to_the_cars_left(front: Moving) -> None:
    """Seen from in front the car's left is at the right of the drawing. The stop is entered as 32 deg."""
    left, right = rolling(front, TravelAndLock(0.0, 1.0), both=True)
    assert (left + 180) % 360 - 180 == pytest.approx(32.0, abs=1e-6)
    assert 20 < right < left
    right_lock = rolling(front, TravelAndLock(0.0, -1.0), both=True)
    assert right_lock == pytest.approx([-right, -left])


def mirrored(points: tuple[Point, ...]) -> list[Point]:
    """In the car's centre line, half of the 1600 mm track inboard."""
    return sorted((round(-1600.0 - y, 6), round(z, 6)) for y, z in points)


@pytest.mark.parametrize("view", ["front", "plan"])
def test_the_right_wheel_is_the_left_ones_mirror_image_at_the_other_lock(front: Moving, view: SeenFrom) -> None:
    _, right = outlines(front, TravelAndLock(40.0, 0.6), view, both=True)
    left, _ = outlines(front, TravelAndLock(40.0, -0.6), view, both=True)
    assert mirrored(left) == sorted((round(y, 6), round(z, 6)) for y, z in right)


@pytest.mark.parametrize("both", [False, True])
@pytest.mark.parametrize("view", ["front", "plan"])
@pytest.mark.parametrize("place", PLACES)
def test_the_frame_holds_every_place_and_never_moves(
    front: Moving, place: TravelAndLock, view: SeenFrom, both: bool
) -> None:
    box = scene(front, place, view, both).frame
    assert box == scene(front, RIDE, view, both).frame
    for outline in outlines(front, place, view, both):
        (left, right), (bottom, top) = spread(outline, 0), spread(outline, 1)
        assert box.left <= left and right <= box.right and box.bottom <= bottom and top <= box.top


def test_both_wheels_are_framed_about_the_centre_line(front: Moving) -> None:
    for view in ("front", "plan"):
        box = frame(front, view, True)
        assert (box.left + box.right) / 2 == pytest.approx(-800.0)


def test_the_rack_joins_both_tie_rods(front: Moving) -> None:
    """Pivots 301 mm from the centre line: 602 mm of rack and a tube's half at each end, wherever it slides."""
    for lock in (0.0, 0.5):
        rack = bodies(front, TravelAndLock(0.0, lock), "plan", "rack or relay")[0]
        left, right = across(rack)
        tube = 2 * front.parts["tie rod"].shapes[0].radius  # type: ignore[attr-defined]
        assert right - left == pytest.approx(602.0 + tube, abs=ROUGH)
        inner = front.corner(0.0, lock).inner_end
        assert inner and right == pytest.approx(inner[1] + tube / 2, abs=ROUGH)


# What is known


def test_nothing_can_be_moved_until_steering_or_arms_are_known(judged: Judge) -> None:
    assert front_end(judged({}).worked.known) is None


def test_arms_alone_travel_and_steering_alone_steers(judged: Judge, moving: dict[str, object]) -> None:
    hung = front_end(judged(without(moving, "steering", "joint_angles")).worked.known)
    assert hung is not None and hung.travels and not hung.steers
    assert hung.corners(TravelAndLock(60.0, 0.0))[0].steer == pytest.approx(0.0, abs=1e-12)
    assert not bodies(hung, RIDE, "front", "tie rod") and bodies(hung, RIDE, "front", "lower arm")
    steered = front_end(judged({name: moving[name] for name in moving if name.startswith("steering")}).worked.known)
    assert steered is not None and steered.steers and not steered.travels
    assert (steered.droop, steered.bump) == (0.0, 0.0)
    assert not bodies(steered, RIDE, "front", "lower arm") and bodies(steered, RIDE, "front", "tie rod")
    for each in (hung, steered):
        assert scene(each, RIDE, "plan", True).items


def test_a_stand_in_for_travel_is_told(judged: Judge, front: Moving, moving: dict[str, object]) -> None:
    assert front.entered and (front.droop, front.bump) == (90.0, 110.0)
    guessed = front_end(judged({**moving, "arms.bump_travel": None}).worked.known)
    assert guessed is not None and not guessed.entered and (guessed.droop, guessed.bump) == (90.0, 100.0)


# Where the links stop it


def test_a_place_that_is_reached_is_reached_exactly(front: Moving) -> None:
    assert moved(front, RIDE, TravelAndLock(110.0, -1.0)) == TravelAndLock(110.0, -1.0)


def test_it_stops_where_the_links_lock(judged: Judge, moving: dict[str, object]) -> None:
    """Bump beyond anything the arms can do: it stops on the way, and a millimetre further is not reached."""
    front = front_end(judged({**moving, "arms.bump_travel": "500 mm"}).worked.known)
    assert front is not None
    stopped = moved(front, TravelAndLock(100.0, 0.0), TravelAndLock(500.0, 0.0))
    assert 110 < stopped.travel < 500 and stopped.lock == 0
    front.corners(stopped)
    with pytest.raises(CannotReach):
        front.corners(TravelAndLock(stopped.travel + 1.0, 0.0))
    both = moved(
        front, TravelAndLock(100.0, 0.5), TravelAndLock(500.0, 0.1)
    )  # all that moves comes as far: 400 and 0.4
    assert (both.travel - 100.0) / 400.0 == pytest.approx((0.5 - both.lock) / 0.4, abs=1e-6) and 0.1 < both.lock < 0.5
    assert moved(front, stopped, TravelAndLock(500.0, 0.0)).travel == pytest.approx(stopped.travel, abs=0.1)
    for view in ("front", "plan"):
        (outline,), box = outlines(front, stopped, view), frame(front, view, False)
        assert spread(outline, 1)[1] <= box.top + 1


def test_a_notch_is_what_a_tape_shows() -> None:
    assert NOTCH == {"inch": 25.4 / 4, "metric": 5.0}


# Gaps


def test_moving_finds_what_the_judged_values_found_at_their_worst(front: Moving, known: Mapping[str, object]) -> None:
    worst = min(gap for name, gap in known.items() if name.endswith("_gap") and isinstance(gap, Worst))
    here, _ = touches(front, TravelAndLock(worst.travel, worst.lock))
    assert here is not None and here.gap == pytest.approx(worst, abs=0.1)
    for travel in (-90.0, 0.0, 60.0, 110.0):
        for lock in (-1.0, -0.5, 0.0, 0.5, 1.0):
            each, _ = touches(front, TravelAndLock(travel, lock))
            assert each is not None and each.gap >= worst - 0.1


@pytest.mark.parametrize("place", [RIDE, TravelAndLock(110.0, 1.0)])
def test_the_near_touch_is_marked_on_its_wheel(front: Moving, place: TravelAndLock) -> None:
    near = touches(front, place)

    def marks(both: bool) -> list[Point]:
        items: tuple[Item, ...] = scene(front, place, "front", both, near).items
        return [item.at for item in items if isinstance(item, Mark) and item.kind == "gap"]

    assert near[0] is not None
    assert marks(False) == [(near[0].at[1], near[0].at[2])]
    assert len(marks(True)) == 2 and marks(True)[1][0] < -800 < marks(True)[0][0]


# Curves


def curves(front: Moving, known: Mapping[str, object], units: Any = "metric") -> dict[str, Curve]:
    return {graph.title.split()[0]: graph for graph in graphs(front, known, units)}


def test_curves_are_what_the_wheel_does(front: Moving, known: Mapping[str, object]) -> None:
    found = curves(front, known)
    assert list(found) == ["Camber", "Toe-in", "Ground", "Outer"]
    for name, measure in (
        ("Camber", lambda pose: pose.camber * 180 / pi),
        ("Toe-in", lambda pose: -pose.steer * 180 / pi),
        ("Ground", lambda pose: pose.ground_offset),
    ):
        graph = found[name]
        assert graph.places[0] == -90 and graph.places[-1] == 110
        for travel, (across, up) in zip(graph.places, graph.line, strict=True):
            assert across == travel and up == pytest.approx(measure(front.corner(travel, 0.0)))


def test_lengths_of_the_curves_follow_the_units(front: Moving, known: Mapping[str, object]) -> None:
    metric, inch = curves(front, known), curves(front, known, "inch")
    assert inch["Ground"].up_unit == "in" and inch["Camber"].across == "travel in"
    (across, up), (across_inch, up_inch) = metric["Ground"].line[-1], inch["Ground"].line[-1]
    assert across_inch == pytest.approx(across / 25.4) and up_inch == pytest.approx(up / 25.4)
    assert inch["Camber"].line[-1][1] == metric["Camber"].line[-1][1]


def test_the_ideal_line_has_both_wheels_roll_about_one_centre(front: Moving, known: Mapping[str, object]) -> None:
    """cot(outer) - cot(inner) = track of the steering axes / wheelbase (any theory of machines): (1600 - 2 x 25) / 2600."""
    graph = curves(front, known)["Outer"]
    assert graph.line[-1][0] == pytest.approx(32.0)  # the stop as entered
    for inner, outer in graph.beside[1:]:
        assert 1 / tan(radians(outer)) - 1 / tan(radians(inner)) == pytest.approx(1550 / 2600, rel=1e-6)


def test_without_a_wheelbase_there_is_no_ideal_line(front: Moving, known: Mapping[str, object]) -> None:
    graph = curves(front, {name: known[name] for name in known if name != "job.wheelbase"})["Outer"]
    assert graph.beside == () and "ideal" not in graph.told(RIDE)


def test_without_steering_there_is_no_toe(judged: Judge, moving: dict[str, object]) -> None:
    known = judged(without(moving, "steering", "joint_angles")).worked.known
    front = front_end(known)
    assert front is not None and list(curves(front, known)) == ["Camber", "Ground"]


def test_curves_end_where_the_links_lock(judged: Judge, moving: dict[str, object]) -> None:
    known = judged({**moving, "arms.bump_travel": "500 mm"}).worked.known
    front = front_end(known)
    assert front is not None
    assert 300 < curves(front, known)["Camber"].places[-1] < 400


def test_lock_notches_are_places_of_the_curve(front: Moving, known: Mapping[str, object]) -> None:
    graph = curves(front, known)["Outer"]
    assert len(graph.places) == LOCK_NOTCHES + 1
    left, right = front.corners(TravelAndLock(0.0, 0.55))
    assert graph.at(TravelAndLock(0.0, 0.55))[0] == pytest.approx((degrees(left.steer), -degrees(right.steer)))


@pytest.mark.parametrize("alone", ["moving_front", "hung_front", "steered_front"])
def test_what_is_known_of_the_front_end_moves_whether_it_hangs_steers_or_both(alone: str) -> None:
    whole, less = parallel_arms(), straight_rack()
    found = front_end({alone: whole, "job.track": 1600.0})
    assert found is not None and found.front is whole and found.centre_line == -800.0
    every = {"moving_front": whole, "hung_front": less, "steered_front": less, "job.track": 1600.0}
    best = front_end(every)
    assert best is not None and best.front is whole
    assert front_end({"job.track": 1600.0}) is None


@pytest.mark.parametrize("view", ["front", "plan"])
def test_the_frame_reaches_to_a_racks_end_and_not_across_the_car(view: SeenFrom) -> None:
    """No parts are known. The rack's end is 400 inboard and slides 75 each way; one rod across ends at the other wheel, 1400 off,
    and its wheel with its arm of 42 leaves no more than 150 beside the axis however it turns."""
    rack, across = (
        front_end({"steered_front": front, "job.track": 1400.0}) for front in (straight_rack(), trapezium())
    )
    assert rack is not None and across is not None
    assert frame(rack, view, False).left <= -475.0
    assert frame(across, view, False).left > -400.0
