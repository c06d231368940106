"""The plate as a solid: its round corners and its bore, by hand, and the bores that it cannot have."""

from math import cos, hypot, pi, radians

import pytest

from rules.corner.part import Part
from rules.graph.results import NotJudged, OutsideRange, Waits
from rules.measure.belt import Arc, Round
from rules.measure.outline import Narrowed, PlateEnds
from rules.solids.gap import gap
from rules.solids.pieces import Hull
from rules.solids.shapes import Ball, Rod, solid
from rules.values.corner.upright_parts import _from_spindle, beam_part, plate_part

FRONT, HIGH = -60.0, 400.0


def from_plate(corner: float, ahead: float, above: float, bore: float | None = 80.0) -> float:
    """From a plate 140 x 260 x 10 mm, its axis in the middle, to a ball of 1 mm beside its own middle plane, mm."""
    plate = plate_part(140.0, 260.0, 130.0, 70.0, corner, 10.0, bore, FRONT, HIGH)
    return gap(plate.solid, solid(Ball((ahead, FRONT - 5.0, HIGH + above), 1.0))).distance


@pytest.mark.parametrize("corner", [0.0, 20.0, 69.9, 70.0])
def test_from_the_plates_straight_sides(corner: float) -> None:
    assert from_plate(corner, 90.0, 0.0) == pytest.approx(90 - 70 - 1, abs=0.05)
    assert from_plate(corner, 0.0, 150.0) == pytest.approx(150 - 130 - 1, abs=0.05)


@pytest.mark.parametrize("ahead", [-1, 1])
@pytest.mark.parametrize("above", [-1, 1])
@pytest.mark.parametrize("corner", [20.0, 70.0])
def test_from_the_round_of_a_corner(corner: float, ahead: int, above: int) -> None:
    """Seen from the middle of the round, the ball's middle at the square corner is the radius x root 2 away."""
    assert from_plate(corner, ahead * 70.0, above * 130.0) == pytest.approx(corner * (2**0.5 - 1) - 1, abs=0.05)


def test_inside_the_bore() -> None:
    assert from_plate(70.0, 0.0, 0.0) == pytest.approx(40 - 1, abs=0.05)
    assert from_plate(20.0, 15.0, 20.0) == pytest.approx(40 - hypot(15, 20) - 1, abs=0.05)


@pytest.mark.parametrize(
    ("corner", "bore", "says"),
    [
        (0.0, 139.9, None),
        (0.0, 140.0, "does not lie inside its outline"),
        (20.0, 139.9, None),  # the squares of the corners begin 50 beside the wheel centre and 110 above it: 120.8 away
        (70.0, 119.9, None),  # 0 beside and 60 above: 60 away
        (70.0, 120.1, "reaches into the round of a corner"),
    ],
)
def test_bores_that_a_plate_cannot_have_or_that_are_not_drawn(corner: float, bore: float, says: str | None) -> None:
    if says is None:
        assert from_plate(corner, 0.0, 0.0, bore) == pytest.approx(bore / 2 - 1, abs=0.05)
        return
    with pytest.raises(NotJudged, match=says):
        from_plate(corner, 0.0, 0.0, bore)


ENDS = PlateEnds(Narrowed(80.0, -10.0, 50.0), None)
"""A round end 80 wide, 10 behind the wheel centre: its middle is 130 - 40 = 90 above the wheel centre."""


@pytest.mark.parametrize(("ahead", "above", "away"), [(-10.0, 150.0, 20.0), (-70.0, 170.0, 60.0), (90.0, 0.0, 20.0)])
def test_a_narrowed_end_is_round_about_the_axis(ahead: float, above: float, away: float) -> None:
    """Over the end, beside it (60 and 80 from its middle: 100 - 40), and beside the full width."""
    plate = plate_part(140.0, 260.0, 130.0, 70.0, 15.0, 10.0, 80.0, FRONT, HIGH, ENDS)
    ball = solid(Ball((ahead, FRONT - 5.0, HIGH + above), 1.0))
    assert gap(plate.solid, ball).distance == pytest.approx(away - 1, abs=0.05)


def test_a_bore_that_reaches_into_a_round_end_is_not_drawn() -> None:
    """The end's middle is 50 above; a bore of 104 reaches past its ring's inside, which is 40 cos 70 or so from that."""
    near = PlateEnds(Narrowed(130.0, 0.0, 0.0), None)
    with pytest.raises(NotJudged, match="bore"):
        plate_part(140.0, 260.0, 66.0, 70.0, 0.0, 10.0, 131.0, FRONT, HIGH, near)


def beam(**changed: object) -> Part:
    """A box 60 x 40 behind a plate 140 x 300 x 10, 150 above and below the wheel centre, its front at -60; pivots 130 above and
    115 below the wheel centre in housings of 22 and 25."""
    entries: dict[str, object] = {
        "beam": "box", "beam_width": 60.0, "beam_depth": 40.0, "beam_to_pivots": False, "beam_top": None,
        "beam_bottom": None, "plate_width": 140.0, "plate_height": 300.0, "spindle_from_top": 150.0,
        "spindle_from_front": 70.0, "plate_thickness": 10.0, "upper_above_spindle": 130.0, "lower_below_spindle": 115.0,
        "upper_radius": 22.0, "lower_radius": 25.0, "mount_face_offset": FRONT, "wheel_centre_height": HIGH,
        "upper_lugs_part": None, "lower_lugs_part": None, "upper_pivot_bolt_part": None, "lower_pivot_bolt_part": None,
    }  # fmt: skip
    return beam_part(**entries | changed)  # type: ignore[arg-type]


def reaches(part: Part) -> tuple[float, float, float, float, float, float]:
    """Rear and front, inboard and outboard, bottom and top, mm; up from the wheel centre."""
    places = [point for piece in part.solid.pieces if isinstance(piece, Hull) for point in piece.points]
    (rear, front), (inboard, outboard), (low, high) = ((min(one), max(one)) for one in zip(*places, strict=True))
    return rear, front, inboard, outboard, low - HIGH, high - HIGH


def leaning(name: str, above: float, radius: float) -> Part:
    """Two rods with round ends: a level one through this height, and one whose other end leans 30 ahead and 20 inboard away
    from the wheel centre."""
    away = 20.0 if above > 0 else -20.0
    near = (0.0, FRONT - 40.0, HIGH + above)
    level = Rod((0.0, FRONT - 40.0, HIGH + above + away), (10.0, FRONT - 40.0, HIGH + above + away), radius)
    return Part(name, "upright", (level, Rod(near, (30.0, FRONT - 60.0, HIGH + above + away), radius)))


@pytest.mark.parametrize(
    ("changed", "low", "high"),
    [
        ({"beam_to_pivots": True}, -150.0, 150.0),  # along the whole plate
        ({"beam_top": 100.0, "beam_bottom": 90.0}, -90.0, 100.0),
        ({"beam_top": 200.0, "beam_bottom": 210.0}, -150.0, 150.0),  # no farther than the plate
        # Its ends not entered: 12 short of each housing. 115 - 25 - 12 = 78 below, 130 - 22 - 12 = 96 above.
        ({}, -78.0, 96.0),
        ({"beam_top": 100.0}, -78.0, 96.0),
        ({"beam_bottom": 100.0}, -78.0, 96.0),
        ({"upper_above_spindle": 200.0, "lower_below_spindle": 200.0}, -150.0, 150.0),
        # 5 short of lugs or a bolt that reach farther in: 80 - 11 - 5 = 64, 75 - 10 - 5 = 60.
        ({"upper_lugs_part": leaning("upper lugs", 80.0, 11.0)}, -78.0, 64.0),
        ({"upper_pivot_bolt_part": leaning("upper pivot bolt", 80.0, 11.0)}, -78.0, 64.0),
        ({"lower_lugs_part": leaning("lower lugs", -75.0, 10.0)}, -60.0, 96.0),
        ({"lower_pivot_bolt_part": leaning("lower pivot bolt", -75.0, 10.0)}, -60.0, 96.0),
    ],
)
def test_from_where_to_where_a_beam_runs(changed: dict[str, object], low: float, high: float) -> None:
    """Its back 40 behind the plate's, which is 10 behind its front."""
    assert reaches(beam(**changed)) == pytest.approx((-30.0, 30.0, FRONT - 50.0, FRONT - 10.0, low, high))


def test_a_beam_is_as_wide_all_the_way() -> None:
    (piece,) = beam(beam_to_pivots=True).solid.pieces
    assert isinstance(piece, Hull)
    seen = {(round(x), round(z - HIGH)) for x, _, z in piece.points}
    assert seen == {(-30, -150), (30, -150), (30, 150), (-30, 150)}


def test_a_tube_is_as_deep_as_it_is_wide() -> None:
    assert reaches(beam(beam="tube", beam_depth=None))[2:4] == pytest.approx((FRONT - 70.0, FRONT - 10.0))


@pytest.mark.parametrize(
    ("changed", "fields"),
    [
        ({"beam": None}, ("upright.beam",)),
        ({"beam": None, "beam_width": None}, ("upright.beam",)),
        ({"beam_width": None}, ("upright.beam_width",)),
        ({"beam_depth": None}, ("upright.beam_depth",)),
        ({"beam_to_pivots": None}, ("upright.beam_to_pivots",)),
        ({"upper_radius": None}, ("pivots.upper_radius",)),
        ({"lower_radius": None}, ("pivots.lower_radius",)),
        ({"upper_radius": None, "lower_radius": None}, ("pivots.upper_radius", "pivots.lower_radius")),
    ],
)
def test_what_a_beam_waits_for(changed: dict[str, object], fields: tuple[str, ...]) -> None:
    with pytest.raises(Waits) as waits:
        beam(**changed)
    assert waits.value.fields == fields


def test_a_build_without_a_beam_and_one_that_has_no_height_for_it() -> None:
    for none in ({"beam": "none"}, {"beam": None, "beam_width": None, "beam_depth": None}):
        with pytest.raises(NotJudged, match="no beam is entered"):
            beam(**none)
    # 12 + 22 + 12 + 25 = 71 of what is between the joints
    assert reaches(beam(upper_above_spindle=36.0, lower_below_spindle=35.1))[4:] == pytest.approx((1.9, 2.0))
    with pytest.raises(OutsideRange, match="no height is left"):
        beam(upper_above_spindle=36.0, lower_below_spindle=35.0)


@pytest.mark.parametrize(
    ("disc", "half", "away"),
    [
        # upwards over the disc, 60 deg to either side: from 20 to 40 of it
        (Round(0.0, -30.0, 40.0), 60.0, 0.0), (Round(0.0, -50.0, 40.0), 60.0, 10.0), (Round(0.0, -10.0, 40.0), 60.0, 10.0),
        # above the wheel centre its ends are nearest, at their chord: 30 cos 30 at 30 deg from upright
        (Round(0.0, 100.0, 30.0), 30.0, hypot(15 * cos(pi / 6), 100 + 30 * cos(pi / 6) ** 2)),
    ],
)  # fmt: skip
def test_from_the_wheel_centre_to_the_ring_over_an_arc(disc: Round, half: float, away: float) -> None:
    assert _from_spindle(Arc(disc, pi / 2, radians(half))) == pytest.approx(away, abs=1e-9)


@pytest.mark.parametrize(
    ("wide", "high", "top", "front"),
    [
        (200.0, 160.0, 60.0, 100.0),
        (200.0, 160.0, 100.0, 100.0),
        (160.0, 200.0, 100.0, 60.0),
        (160.0, 200.0, 100.0, 100.0),
    ],
)
def test_a_bore_ends_inside_the_edge_that_is_nearest(wide: float, high: float, top: float, front: float) -> None:
    """60 off the wheel's axis: the top, the bottom, the front and the rear."""
    assert plate_part(wide, high, top, front, 0.0, 10.0, 119.9, FRONT, HIGH)
    with pytest.raises(NotJudged, match="does not lie inside its outline"):
        plate_part(wide, high, top, front, 0.0, 10.0, 120.1, FRONT, HIGH)


@pytest.mark.parametrize("top", [60.0, 100.0])
@pytest.mark.parametrize("front", [60.0, 100.0])
def test_a_bore_ends_before_the_round_of_whichever_corner_is_nearest(top: float, front: float) -> None:
    """60 off two edges of four, corners of 30: their squares begin 30 beside the axis and 30 above or below it, 42.43 away."""
    assert plate_part(160.0, 160.0, top, front, 30.0, 10.0, 84.8, FRONT, HIGH)
    with pytest.raises(NotJudged, match="reaches into the round"):
        plate_part(160.0, 160.0, top, front, 30.0, 10.0, 84.9, FRONT, HIGH)
