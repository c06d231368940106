"""The flat pieces as geometry, by hand."""

import math
from math import radians

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.corner.slots import PlateSlots
from rules.drawn.pieces import Profile, _clipped, bracket_blank, hub_plate
from rules.measure.outline import LighterBy, Outline, PlateEnds, inside_distance, plate_outline
from rules.values.wheel_end.hub_bolts import BoltPlaces, hub_bolts_stand

KNOWN: dict[str, object] = {
    "plate.width": 200.0, "plate.height": 300.0, "plate.spindle_from_top": 140.0, "plate.spindle_from_front": 90.0,
    "plate.corner_radius": 20.0, "plate.bore": 70.0, "plate.hole_diameter": 12.5,
    "hub_bolts_stand": BoltPlaces(((-40.0, 45.0), (40.0, 45.0), (40.0, -45.0), (-40.0, -45.0))),
    "plate_ends": PlateEnds(), "lightening_holes": LighterBy(), "plate_slots": PlateSlots(),
    "pivots.lower_below_spindle": 120.0, "upper_above_spindle": 130.0, "lower_pivot_ahead": 12.0, "upper_pivot_ahead": -13.0,
}  # fmt: skip


def marks(profile: Profile, what: str) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    return [(mark.start, mark.end) for mark in profile.marks if mark.what == what]


def test_a_left_plate_has_its_front_at_the_left_and_a_right_one_at_the_right() -> None:
    left, right = hub_plate(KNOWN, "left").outline, hub_plate(KNOWN, "right").outline
    assert (left.left, left.right, left.bottom, left.top) == (-90.0, 110.0, -160.0, 140.0)
    assert (right.left, right.right, right.bottom, right.top) == (-110.0, 90.0, -160.0, 140.0)


def test_hub_bolts_stand_on_a_rectangle_about_the_spindle() -> None:
    holes = hub_plate(KNOWN, "left").holes
    assert [(hole.centre, hole.diameter, hole.what) for hole in holes] == [
        ((0.0, 0.0), 70.0, "centre bore"),
        ((40.0, 45.0), 12.5, "hub bolt hole"),
        ((-40.0, 45.0), 12.5, "hub bolt hole"),
        ((-40.0, -45.0), 12.5, "hub bolt hole"),
        ((40.0, -45.0), 12.5, "hub bolt hole"),
    ]


def test_the_pivots_are_marked_where_they_fall_square_on_the_plate() -> None:
    left = hub_plate(KNOWN, "left")
    # Lower pivot 12 ahead, so 12 to the left on a left plate, and 120 below.
    assert marks(left, "lower pivot") == [((-17.0, -120.0), (-7.0, -120.0))]
    assert marks(left, "upper pivot") == [((8.0, 130.0), (18.0, 130.0))]
    right = hub_plate(KNOWN, "right")
    assert marks(right, "lower pivot") == [((7.0, -120.0), (17.0, -120.0))]
    assert marks(right, "upper pivot") == [((-18.0, 130.0), (-8.0, 130.0))]


def test_the_pivot_line_runs_through_both_pivots_from_edge_to_edge_but_not_over_the_bore() -> None:
    parts = marks(hub_plate(KNOWN, "left"), "pivot line")
    ends = sorted((point for part in parts for point in part), key=lambda point: point[1])
    assert [round(y, 3) for _, y in (ends[0], ends[-1])] == [-160.0, 140.0]
    for x, y in ends:
        assert x == pytest.approx(0.1 * y, abs=1e-6)  # 25 across in 250 up, and through the wheel centre
    assert [round(math.hypot(x, y), 6) for x, y in ends[1:3]] == [35.0, 35.0]


def test_left_and_right_are_mirror_images() -> None:
    left, right = hub_plate(KNOWN, "left"), hub_plate(KNOWN, "right")
    assert {(-hole.centre[0], hole.centre[1], hole.diameter) for hole in left.holes} == {
        (*hole.centre, hole.diameter) for hole in right.holes
    }
    for what in ("pivot line", "upper pivot", "lower pivot", "arrow to the front"):
        mirrored = {frozenset((round(-x, 6) + 0.0, round(y, 6)) for x, y in ends) for ends in marks(left, what)}
        assert mirrored == {frozenset((round(x, 6) + 0.0, round(y, 6)) for x, y in ends) for ends in marks(right, what)}


def test_the_arrow_points_to_the_front_and_the_piece_is_lettered() -> None:
    for side, way, letter in (("left", -1, "L"), ("right", 1, "R")):
        profile = hub_plate(KNOWN, side)  # type: ignore[arg-type]
        shaft = marks(profile, "arrow to the front")[0]
        assert (shaft[0][0] - shaft[1][0]) * way > 0
        assert profile.stamp is not None and profile.stamp.words == letter


@pytest.mark.parametrize(
    ("gone", "said"),
    [
        ("plate.bore", "centre bore"),
        ("plate.hole_diameter", "hub bolt holes: their diameter is not on the sheet"),
        ("hub_bolts_stand", "hub bolt holes: their places are not on the sheet"),
        ("upper_above_spindle", "pivot line"),
    ],
)
def test_what_is_not_known_is_left_out_and_named(gone: str, said: str) -> None:
    profile = hub_plate({name: known for name, known in KNOWN.items() if name != gone}, "left")
    assert len(profile.left_out) == 1
    assert profile.left_out[0].startswith(said)


def test_three_hub_bolts_are_mirrored_from_a_left_plate_to_a_right_one() -> None:
    """30 deg ahead of straight up on 100 mm: 25 ahead, 43.301 up; the others a third of a turn on."""
    known = {**KNOWN, "hub_bolts_stand": hub_bolts_stand(3, None, None, 100.0, radians(30), None)}
    left, right = (
        [hole.centre for hole in hub_plate(known, side).holes if hole.what == "hub bolt hole"]
        for side in ("left", "right")
    )
    assert right[0] == pytest.approx((25.0, 43.301), abs=1e-3) and left[0] == pytest.approx((-25.0, 43.301), abs=1e-3)
    assert right[1] == pytest.approx((25.0, -43.301), abs=1e-3) and right[2] == pytest.approx((-50.0, 0.0), abs=1e-3)


def test_a_pivot_off_the_plate_is_named() -> None:
    profile = hub_plate({**KNOWN, "upper_above_spindle": 150.0}, "left")
    assert profile.left_out == ("upper pivot mark: it falls off the plate",)


@pytest.mark.parametrize(("ahead", "marked"), [(-104.9, True), (-105.0, False), (84.9, True), (85.0, False)])
def test_a_pivots_tick_is_scribed_where_all_of_it_is_on_the_plate(ahead: float, marked: bool) -> None:
    """It reaches 5 to either side; the plate ends 90 ahead of the wheel centre and 110 behind it."""
    profile = hub_plate({**KNOWN, "lower_pivot_ahead": ahead}, "left")
    assert bool(marks(profile, "lower pivot")) is marked
    assert ("lower pivot mark: it falls off the plate" in profile.left_out) is not marked


@pytest.mark.parametrize(("from_front", "ways"), [(47.1, 4), (47.0, 3), (46.9, 3)])
def test_ticks_level_and_plumb_with_the_wheel_centre_stand_clear_of_the_bore_and_on_the_plate(
    from_front: float, ways: int
) -> None:
    """From 2 outside the bore of 70 on, 10 long: from 37 to 47, each way that the plate reaches farther than that."""
    ticks = marks(hub_plate({**KNOWN, "plate.spindle_from_front": from_front}, "left"), "wheel centre")
    wanted = [((37.0, 0.0), (47.0, 0.0)), ((0.0, 37.0), (0.0, 47.0)), ((0.0, -37.0), (0.0, -47.0))]
    assert sorted(ticks) == sorted([*wanted, *([((-37.0, 0.0), (-47.0, 0.0))] if ways == 4 else [])])


@pytest.mark.parametrize(("side", "x"), [("left", -1.0), ("right", 1.0)])
def test_the_arrow_stands_half_way_from_the_bore_to_the_top_and_its_letter_behind_it(side: str, x: float) -> None:
    """From 35 to 140: at 87.5. 15 long with its tail 10 before the middle, and barbs of 4 and 3; the letter begins behind the
    middle, a little below the line."""
    profile = hub_plate(KNOWN, side)  # type: ignore[arg-type]
    tip, level = (25.0 * x, 87.5), 87.5
    assert marks(profile, "arrow to the front") == [
        (pytest.approx(tip), pytest.approx((10.0 * x, level))),
        (pytest.approx(tip), pytest.approx((21.0 * x, level + 3.0))),
        (pytest.approx(tip), pytest.approx((21.0 * x, level - 3.0))),
    ]
    assert profile.stamp is not None and 80.0 < profile.stamp.at[1] < level
    assert 0.0 < profile.stamp.at[0] * -x < 20.0


def test_where_a_hole_is_in_its_way_there_is_no_arrow() -> None:
    """A bolt hole of 12.5 in the middle of the arrow's shaft, and one 2.1 clear of its tip: 25 + 6.25 + 2.1."""
    for place, drawn in (((10.0, 87.5), False), ((33.35, 87.5), True), ((33.2, 87.5), False)):
        known = {**KNOWN, "hub_bolts_stand": BoltPlaces((place,))}
        profile = hub_plate(known, "left")
        assert bool(marks(profile, "arrow to the front")) is drawn
        assert (profile.stamp is not None) is drawn


def test_a_pivot_line_that_misses_the_plate_is_named() -> None:
    profile = hub_plate({**KNOWN, "lower_pivot_ahead": 300.0, "upper_pivot_ahead": 300.0}, "left")
    assert "pivot line: it does not cross the plate" in profile.left_out


def test_the_bracket_has_its_bolts_in_the_middle_of_its_length_from_the_upper_edge() -> None:
    known = {
        "plate.bracket_width": 180.0, "plate.bracket_height": 80.0, "plate.bracket_hole_spacing": 120.0,
        "plate.bracket_hole_from_edge": 25.0, "plate.bracket_hole_diameter": 12.0,
    }  # fmt: skip
    profile = bracket_blank(known)
    assert [hole.centre for hole in profile.holes] == [(30.0, 55.0), (150.0, 55.0)]
    del known["plate.bracket_hole_diameter"]
    assert bracket_blank(known).holes == ()
    assert bracket_blank(known).left_out[0].startswith("caliper bolt holes")


def test_a_corner_larger_than_the_plate_is_drawn_as_large_as_there_is_room() -> None:
    assert plate_outline(100.0, 60.0, 30.0, 50.0, 80.0).corner_radius == 30.0


ROUNDED = Outline(-50.0, 50.0, -80.0, 60.0, 10.0)


@pytest.mark.parametrize(
    ("point", "distance"),
    [
        ((0.0, 0.0), 50.0),
        ((45.0, 0.0), 5.0),
        ((0.0, 58.0), 2.0),
        ((60.0, 0.0), -10.0),
        ((0.0, -83.0), -3.0),
        ((40.0, 50.0), 10.0),  # the corner's centre
        ((46.0, 58.0), 0.0),  # 6 and 8 from it: on the arc
        ((50.0, 60.0), 10 - math.sqrt(200)),  # the corner that was cut off
    ],
)
def test_distance_to_the_edge(point: tuple[float, float], distance: float) -> None:
    assert inside_distance(point, ROUNDED) == pytest.approx(distance)


@given(st.floats(-49, 49), st.floats(-79, 59))
def test_no_point_of_the_edge_is_nearer_than_the_distance(x: float, y: float) -> None:
    edge = [(50.0, -70.0 + t) for t in range(121)] + [(-50.0, -70.0 + t) for t in range(121)]
    edge += [(-40.0 + t, level) for t in range(81) for level in (60.0, -80.0)]
    centres = ((40, 50, 0), (-40, 50, 90), (-40, -70, 180), (40, -70, 270))
    edge += [
        (cx + 10 * math.cos(math.radians(start + turn)), cy + 10 * math.sin(math.radians(start + turn)))
        for cx, cy, start in centres
        for turn in range(91)
    ]
    nearest = min(math.dist((x, y), point) for point in edge)
    assert abs(inside_distance((x, y), ROUNDED)) == pytest.approx(nearest, abs=0.6)


def test_a_leaning_line_through_the_wheel_centre_is_found_on_a_small_plate() -> None:
    """From (50, -100) to (-50, 100) on 20 each way: it leaves by the top, 10 to a side, and by the bottom, 10 to the other."""
    small = Outline(-20.0, 20.0, -20.0, 20.0)
    ends = _clipped((50.0, -100.0), (-50.0, 100.0), small)
    assert ends is not None
    assert ends[0] == pytest.approx((10.0, -20.0), abs=0.01) and ends[1] == pytest.approx((-10.0, 20.0), abs=0.01)
    assert _clipped((50.0, -40.0), (50.0, 40.0), small) is None
