"""Outlines of flat pieces by hand: their edges, round corners, narrowed ends and holes."""

from math import atan, hypot, pi, sqrt, tan

import pytest

from rules.measure.belt import Round
from rules.measure.outline import (
    FULL_WIDTH,
    UNLIGHTENED,
    LighterBy,
    Narrowed,
    Outline,
    PlainHole,
    PlateEnds,
    bracket_hole_places,
    circle_places,
    corners_of,
    ends_at,
    hub_bolt_places,
    inside_distance,
    outline_points,
    plate_outline,
)

CARD = Outline(-60.0, 80.0, -150.0, 110.0, 20.0)
"""140 x 260, round corners of 20; its middle is at (10, -20), those of its corners at -40 and 60, -130 and 90."""


@pytest.mark.parametrize(
    ("point", "inside"),
    [
        ((10.0, -20.0), 70.0),
        ((70.0, 0.0), 10.0), ((-55.0, 0.0), 5.0), ((0.0, 105.0), 5.0), ((0.0, -143.0), 7.0),
        ((90.0, 0.0), -10.0), ((0.0, 115.0), -5.0),
        # round a corner: 20 less from its middle, 3-4-5
        ((66.0, 98.0), 10.0), ((72.0, 106.0), 0.0), ((78.0, 114.0), -10.0), ((-46.0, 98.0), 10.0),
        ((66.0, -138.0), 10.0), ((-46.0, -138.0), 10.0), ((-60.0, 110.0), 20 - 20 * sqrt(2)),
    ],
)  # fmt: skip
def test_how_far_inside_a_rectangle_with_round_corners(point: tuple[float, float], inside: float) -> None:
    assert inside_distance(point, CARD) == pytest.approx(inside)


def test_outside_a_square_corner_the_corner_itself_is_nearest() -> None:
    square = Outline(-60.0, 80.0, -150.0, 110.0)
    assert inside_distance((83.0, 114.0), square) == pytest.approx(-5.0)
    assert inside_distance((77.0, 100.0), square) == pytest.approx(3.0)


@pytest.mark.parametrize(
    ("level", "ends"),
    [
        (0.0, (-60.0, 80.0)), (90.0, (-60.0, 80.0)), (-130.0, (-60.0, 80.0)), (110.0, (-40.0, 60.0)),
        (102.0, (-56.0, 76.0)), (-142.0, (-56.0, 76.0)), (110.1, None), (-150.1, None),
    ],
)  # fmt: skip
def test_the_edges_at_a_level(level: float, ends: tuple[float, float] | None) -> None:
    """12 above a corner's middle, 16 beside it: 3-4-5 of 20."""
    assert ends_at(CARD, level) == (None if ends is None else pytest.approx(ends))


def test_the_discs_in_the_corners() -> None:
    assert {(disc.x, disc.y, disc.radius) for disc in corners_of(CARD)} == {
        (-40.0, -130.0, 20.0), (-40.0, 90.0, 20.0), (60.0, -130.0, 20.0), (60.0, 90.0, 20.0),
    }  # fmt: skip


def test_where_the_corners_are_drawn() -> None:
    """Anticlockwise from the right side's upper end; a quarter circle's bulge is the tangent of 22.5 deg, root 2 less 1."""
    quarter = sqrt(2) - 1
    assert outline_points(CARD) == [
        (80.0, 90.0, pytest.approx(quarter)), (60.0, 110.0, 0.0), (-40.0, 110.0, pytest.approx(quarter)),
        (-60.0, 90.0, 0.0), (-60.0, -130.0, pytest.approx(quarter)), (-40.0, -150.0, 0.0),
        (60.0, -150.0, pytest.approx(quarter)), (80.0, -130.0, 0.0),
    ]  # fmt: skip
    assert outline_points(Outline(-60.0, 80.0, -150.0, 110.0)) == [
        (80.0, 110.0, 0.0), (-60.0, 110.0, 0.0), (-60.0, -150.0, 0.0), (80.0, -150.0, 0.0),
    ]  # fmt: skip


def test_between_two_round_corners_that_meet_there_is_no_straight() -> None:
    """50 wide with corners of 25: the ends are half circles."""
    quarter = sqrt(2) - 1
    assert outline_points(Outline(-25.0, 25.0, -60.0, 60.0, 25.0)) == [
        (25.0, 35.0, pytest.approx(quarter)), (0.0, 60.0, pytest.approx(quarter)), (-25.0, 35.0, 0.0),
        (-25.0, -35.0, pytest.approx(quarter)), (0.0, -60.0, pytest.approx(quarter)), (25.0, -35.0, 0.0),
    ]  # fmt: skip
    assert len(outline_points(Outline(-25.0, 25.0, -60.0, 60.0, 24.9))) == 8


def test_a_plate_about_its_wheel_centre_and_its_mirror_image() -> None:
    """140 x 260; the wheel centre 60 behind its front and 110 below its top. A left piece has its front at the left."""
    assert plate_outline(140.0, 260.0, 110.0, 60.0, 20.0) == CARD
    assert plate_outline(140.0, 260.0, 110.0, 60.0, 20.0, "right") == Outline(-80.0, 60.0, -150.0, 110.0, 20.0)
    assert plate_outline(140.0, 260.0, 110.0, 60.0, 20.0, ends=FULL_WIDTH) == CARD


@pytest.mark.parametrize(("wide", "high", "radius"), [(140.0, 260.0, 70.0), (260.0, 140.0, 70.0), (400.0, 300.0, 90.0)])
def test_a_corner_is_drawn_as_large_as_there_is_room_for(wide: float, high: float, radius: float) -> None:
    assert plate_outline(wide, high, 100.0, 60.0, 90.0).corner_radius == radius


def ends(
    side: str, upper: Narrowed | None, lower: Narrowed | None, corner: float = 20.0
) -> set[tuple[float, float, float]]:
    """What the belt of such a plate runs round."""
    plate = plate_outline(140.0, 260.0, 110.0, 60.0, corner, side, PlateEnds(upper, lower))  # type: ignore[arg-type]
    assert (plate.left, plate.right) == ((-60.0, 80.0) if side == "left" else (-80.0, 60.0))
    assert (plate.bottom, plate.top, plate.corner_radius) == (-150.0, 110.0, corner)
    return {(disc.x, disc.y, disc.radius) for disc in plate.rounds}


LOWER = {(-40.0, -130.0, 20.0), (60.0, -130.0, 20.0)}


@pytest.mark.parametrize(
    ("end", "discs"),
    [
        # full width to 50, then to a round of 40 across, 10 ahead, at the left of a left piece
        (Narrowed(40.0, 10.0, 50.0), {(-40.0, 50.0, 20.0), (60.0, 50.0, 20.0), (-10.0, 90.0, 20.0)}),
        (Narrowed(80.0, -10.0, 30.0), {(-40.0, 30.0, 20.0), (60.0, 30.0, 20.0), (10.0, 70.0, 40.0)}),
        # no farther to the side than the plate goes: -60 + 30, 80 - 30
        (Narrowed(60.0, 50.0, 50.0), {(-40.0, 50.0, 20.0), (60.0, 50.0, 20.0), (-30.0, 80.0, 30.0)}),
        (Narrowed(60.0, -90.0, 50.0), {(-40.0, 50.0, 20.0), (60.0, 50.0, 20.0), (50.0, 80.0, 30.0)}),
        # no wider than the plate: a round of 70 in its middle
        (Narrowed(200.0, 0.0, 30.0), {(-40.0, 30.0, 20.0), (60.0, 30.0, 20.0), (10.0, 40.0, 70.0)}),
        # no higher than its corners, nor lower than the nearer end below the wheel centre, which is 110
        (Narrowed(40.0, 0.0, 100.0), {(-40.0, 90.0, 20.0), (60.0, 90.0, 20.0), (0.0, 90.0, 20.0)}),
        (Narrowed(40.0, 0.0, -120.0), {(-40.0, -110.0, 20.0), (60.0, -110.0, 20.0), (0.0, 90.0, 20.0)}),
    ],
)  # fmt: skip
def test_a_narrowed_upper_end(end: Narrowed, discs: set[tuple[float, float, float]]) -> None:
    assert ends("left", end, None) == discs | LOWER
    assert ends("right", end, None) == {(-x, y, radius) for x, y, radius in discs | LOWER}


def test_a_narrowed_lower_end() -> None:
    """The lower end is 150 below the wheel centre: a round of 60 has its middle 120 below."""
    upper = {(-40.0, 90.0, 20.0), (60.0, 90.0, 20.0)}
    assert ends("left", None, Narrowed(60.0, 10.0, 40.0)) == upper | {
        (-40.0, -40.0, 20.0), (60.0, -40.0, 20.0), (-10.0, -120.0, 30.0),
    }  # fmt: skip
    both = ends("left", Narrowed(40.0, 0.0, 50.0), Narrowed(60.0, 10.0, 40.0), 0.0)
    assert both == {
        (-60.0, 50.0, 0.0), (80.0, 50.0, 0.0), (0.0, 90.0, 20.0), (-60.0, -40.0, 0.0), (80.0, -40.0, 0.0),
        (-10.0, -120.0, 30.0),
    }  # fmt: skip


def test_a_narrowed_end_is_what_distances_and_edges_go_by() -> None:
    """Its round end of 40 across stands with its middle at (0, 90): 7-24-25 of its radius is on it. On its front the straight to
    the corner at (-40, 50) leans by 45 deg, on its rear the one to (60, 50) falls 40 on 60."""
    plate = plate_outline(140.0, 260.0, 110.0, 60.0, 20.0, "left", PlateEnds(Narrowed(40.0, 0.0, 50.0), None))
    assert inside_distance((0.0, 95.0), plate) == pytest.approx(15.0)
    assert inside_distance((5.6, 109.2), plate) == pytest.approx(0.0)
    assert ends_at(plate, 108.0) == (pytest.approx(-sqrt(400 - 18**2)), pytest.approx(sqrt(400 - 18**2)))
    rear = (20 * hypot(40, 60) - 60 * 12) / 40
    assert ends_at(plate, 102.0) == (pytest.approx(12 - 20 * sqrt(2)), pytest.approx(rear))
    assert len(outline_points(plate)) == 10  # three rounds above, two corners below, each with two ends
    assert Round(0.0, 90.0, 20.0) in plate.rounds


def test_places_of_holes() -> None:
    assert circle_places(4, 100.0, pi / 2) == tuple(
        (pytest.approx(x, abs=1e-9), pytest.approx(y, abs=1e-9)) for x, y in ((50, 0), (0, -50), (-50, 0), (0, 50))
    )
    ahead, up = circle_places(5, 120.0, 0.0)[1]
    assert atan(ahead / up) == pytest.approx(2 * pi / 5) and hypot(ahead, up) == pytest.approx(60.0)
    assert set(hub_bolt_places(80.0, 90.0)) == {(-40.0, 45.0), (40.0, 45.0), (40.0, -45.0), (-40.0, -45.0)}
    assert bracket_hole_places(180.0, 80.0, 120.0, 25.0) == ((30.0, 55.0), (150.0, 55.0))


def test_ends_and_holes_in_words() -> None:
    upper, lower = Narrowed(40.0, 0.0, 50.0), Narrowed(50.8, 0.0, 50.0)
    assert PlateEnds(upper, lower).words_in("metric") == "upper end 40 mm wide; lower end 50.8 mm wide"
    assert PlateEnds(None, lower).words_in("inch") == "lower end 2 in wide"
    assert FULL_WIDTH.words_in("inch") == "full width" and UNLIGHTENED.words_in("inch") == "none"
    holes = LighterBy((PlainHole(76.2, 25.4), PlainHole(-50.8, 12.7)))
    assert holes.words_in("inch") == "1 in at 3 in, 1/2 in at -2 in"


def test_the_bulge_of_an_eighth_of_a_turn() -> None:
    """Of a belt round four discs on the corners of a square set on its corner."""
    discs = tuple(Round(x, y, 10.0) for x, y in ((50.0, 0.0), (0.0, 50.0), (-50.0, 0.0), (0.0, -50.0)))
    points = outline_points(Outline(-60.0, 60.0, -60.0, 60.0, 0.0, discs))
    assert len(points) == 8
    assert sorted({round(bulge, 9) for _, _, bulge in points}) == [0.0, round(tan(pi / 8), 9)]
