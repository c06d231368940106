"""Slots for tabs, by hand on lugs that stand square and lugs that lean."""

from math import atan2, cos, pi, radians, sin, tan

import pytest

from rules.corner.part import Part
from rules.corner.slots import (
    PLAY,
    SHORT_OF_FACE,
    PlateSlots,
    Slot,
    _round,
    beam_slots,
    beam_tabs,
    lug_slots,
    missing_at,
    name_of,
)
from rules.solids.shapes import Cylinder, Prism
from rules.values.corner.upright_parts import plate_part

HIGH, FRONT, THICK = 400.0, -60.0, 12.0
PLATE = plate_part(140.0, 300.0, 150.0, 70.0, 20.0, THICK, 60.0, FRONT, HIGH)


def lugs(lean: float, turn: float = 0.0) -> Part:
    """One lug 10 mm thick, its foot's middle 50 mm outboard of the pivot, 100 mm above the centre there. lean: rad, its outer
    end down; turn: rad, of its width from ahead, upwards."""
    out = (0.0, cos(lean), -sin(lean))
    across = (cos(turn), sin(turn) * sin(lean), sin(turn) * cos(lean))
    reach = 50.0
    back = FRONT - THICK
    pivot = (0.0, back - reach * cos(lean), HIGH + 100.0 + reach * sin(lean))
    outline = ((-30.0, 0.0), (30.0, 0.0), (30.0, reach), (-30.0, reach))
    return Part("upper lugs", "upright", (Prism(pivot, across, out, outline, -5.0, 5.0),))


def test_a_square_lug_has_a_slot_of_its_tab_with_play() -> None:
    (slot,), deep = lug_slots(lugs(0.0), PLATE, 24.0)
    assert (slot.length, slot.width) == pytest.approx((24 + 2 * PLAY, 10 + 2 * PLAY))
    assert slot.at == pytest.approx((0.0, 100.0)) and slot.turned == pytest.approx(0.0)
    assert deep == pytest.approx(THICK - SHORT_OF_FACE)


def test_a_leaning_lug_takes_up_more_of_the_plate() -> None:
    """At 20 deg: its thickness over the cosine, and the plate's thickness times the tangent beside that; it goes down as it
    passes, by half the plate's thickness in the middle. Its tab's lower corner reaches the face first: the depth along the tab
    is (12 - 0.5) / cos 20 - 5 tan 20."""
    lean = radians(20)
    (slot,), deep = lug_slots(lugs(lean), PLATE, 24.0)
    assert slot.width == pytest.approx(10 / cos(lean) + THICK * tan(lean) + 2 * PLAY)
    assert slot.at[1] == pytest.approx(100 - THICK / 2 * tan(lean))
    assert deep == pytest.approx((THICK - SHORT_OF_FACE) / cos(lean) - 5 * tan(lean))


def test_a_turned_lug_has_its_slot_turned() -> None:
    (slot,), _ = lug_slots(lugs(0.0, radians(7)), PLATE, 24.0)
    assert slot.turned == pytest.approx(radians(7)) and slot.length == pytest.approx(24 + 2 * PLAY)


@pytest.mark.parametrize("along", [(0.8, 0.6), (0.4, 0.3), (-0.8, -0.6), (-1.6, -1.2)])
def test_a_slot_is_the_least_rectangle_along_its_piece_whichever_way_that_is_told(along: tuple[float, float]) -> None:
    """A rectangle of 30 x 10 on a slope of 3 in 4, its middle at (50, 20): its corners are 15 along and 5 across from there,
    15 x (0.8, 0.6) = (12, 9) and 5 x (-0.6, 0.8) = (-3, 4). A place inside it changes nothing."""
    places = [(59.0, 33.0), (65.0, 25.0), (35.0, 15.0), (41.0, 7.0), (51.0, 21.0)]
    slot = _round(places, along, "upper lugs")
    assert slot.at == pytest.approx((50.0, 20.0))
    assert (slot.length, slot.width) == pytest.approx((30 + 2 * PLAY, 10 + 2 * PLAY))
    assert slot.turned == pytest.approx(atan2(0.6, 0.8)) and slot.piece == "upper lugs"


def test_a_slot_that_falls_to_the_front_or_stands_upright() -> None:
    """The same rectangle with front and rear changed over; and 30 upright by 10."""
    falling = _round([(-59.0, 33.0), (-65.0, 25.0), (-35.0, 15.0), (-41.0, 7.0)], (0.8, -0.6), "upper lugs")
    assert falling.at == pytest.approx((-50.0, 20.0)) and falling.turned == pytest.approx(-atan2(0.6, 0.8))
    assert (falling.length, falling.width) == pytest.approx((30 + 2 * PLAY, 10 + 2 * PLAY))
    upright = _round([(-5.0, 0.0), (5.0, 0.0), (5.0, 30.0), (-5.0, 30.0)], (0.0, 1.0), "upper lugs")
    assert upright.at == pytest.approx((0.0, 15.0)) and upright.turned == pytest.approx(pi / 2)
    assert (upright.length, upright.width) == pytest.approx((30 + 2 * PLAY, 10 + 2 * PLAY))


def beam(long: float) -> Part:
    outline = ((-30.0, -80.0), (30.0, -80.0), (30.0, long - 80.0), (-30.0, long - 80.0))
    shape = Prism((0.0, 0.0, HIGH), (-1.0, 0.0, 0.0), (0.0, 0.0, 1.0), outline, -112.0, FRONT - THICK)
    return Part("beam", "upright", (shape,))


@pytest.mark.parametrize(("long", "places"), [(160.0, (40.0, 120.0)), (80.0, (20.0, 60.0)), (79.9, (39.95,))])
def test_a_beams_side_has_two_tabs_or_one_where_it_is_short(long: float, places: tuple[float, ...]) -> None:
    assert beam_tabs(beam(long), 20.0) == pytest.approx(places)


def test_a_beams_slots_are_under_the_middles_of_its_walls() -> None:
    """60 wide, walls of 4: 28 beside the wheel centre. Quarters of 160 from 80 below: 40 below and 40 above."""
    found = {slot.at for slot in beam_slots(beam(160.0), PLATE, 20.0, 4.0)}
    assert found == {(-28.0, -40.0), (-28.0, 40.0), (28.0, -40.0), (28.0, 40.0)}


def test_what_a_level_cut_leaves_out() -> None:
    """A lug's slot of 30 whose middle is 5 ahead counts as alike on both sides: 2 x 20. Two of the beam's, 6 wide each."""
    slots = PlateSlots((
        Slot((5.0, 100.0), 30.0, 12.0, 0.0, "upper lugs"),
        Slot((-28.0, 40.0), 20.0, 6.0, pi / 2, "beam"),
        Slot((28.0, 40.0), 20.0, 6.0, pi / 2, "beam"),
    ))  # fmt: skip
    assert missing_at(slots, 100.0) == pytest.approx((40.0, 0.0))
    assert missing_at(slots, 45.0) == pytest.approx((0.0, 12.0))
    assert missing_at(slots, 60.0) == (0.0, 0.0)


@pytest.mark.parametrize("half", [28.0, 0.5])
def test_each_of_a_beams_slots_is_told_from_the_other_on_its_own_side(half: float) -> None:
    """Two on each side, those at the front all above those at the rear; and one lug's."""
    places = {
        "front upper": (half, 90.0), "front lower": (half, 70.0), "rear upper": (-half, 20.0), "rear lower": (-half, -20.0),
    }  # fmt: skip
    slots = {words: Slot(at, 20.0, 6.0, pi / 2, "beam") for words, at in places.items()}
    lug = Slot((0.0, 95.0), 30.0, 9.0, 0.0, "upper lugs")
    for words, slot in slots.items():
        assert name_of(slot, (*slots.values(), lug)) == f"{words} slot for the beam"
    assert name_of(lug, (*slots.values(), lug)) == "slot for the upper lugs"
    assert name_of(slots["rear upper"], (slots["front upper"], slots["rear upper"])) == "rear slot for the beam"


@pytest.mark.parametrize("way", [1, -1])
def test_metal_between_two_slots_that_stand_askew(way: int) -> None:
    """30 x 10 level, and another at 45 deg above it, which reaches 15 sin 45 + 5 cos 45 = 14.142 down: 25 apart leave 25 - 5 -
    14.142, and 15 apart lie 4.142 in one another, whichever is asked."""
    level = Slot((0.0, 0.0), 30.0, 10.0, 0.0, "beam")
    for apart, left in ((25.0, 20 - 20 / 2**0.5), (15.0, 10 - 20 / 2**0.5)):
        askew = Slot((0.0, apart), 30.0, 10.0, way * pi / 4, "upper lugs")
        assert level.apart(askew) == pytest.approx(left) and askew.apart(level) == pytest.approx(left)


def test_lugs_without_flats_and_a_foot_at_the_plates_front_have_no_tab() -> None:
    """A cup has no lug's flat. A foot level with the plate's front would have its tab end 0.5 short of itself."""
    cup = Part("upper lugs", "upright", (Cylinder((0.0, -90.0, HIGH), (0.0, -72.0, HIGH), 20.0),))
    assert lug_slots(cup, PLATE, 24.0) == ((), 0.0)
    farther_in = plate_part(140.0, 300.0, 150.0, 70.0, 20.0, THICK, 60.0, FRONT - THICK, HIGH)
    (_,), deep = lug_slots(lugs(0.0), farther_in, 24.0)
    assert deep == 0.0
