"""What is cut out of the pieces stands where the bolts do, in the corner's own axes: x forward, z up."""

from math import cos, pi, sin
from typing import Any

import pytest

from rules.corner.part import Part
from rules.drawn.openings import _in_arm, _in_beam, openings
from rules.drawn.pieces import hub_plate
from rules.solids.shapes import Cylinder, Prism
from sample_sheets import document
from tests.support.judging import judged_document

IN = 25.4


def test_holes_of_bolts_placed_one_by_one_stand_where_the_clock_says() -> None:
    """12 up, 3 to the front: at 1 o'clock 3 in from the middle is 3 sin 30 ahead and 3 cos 30 up; half past 4 is at 135 deg."""
    sheet = document("scree_ox_strength")
    sheet["hub"]["mount_places"] = "1 at 3 in; 4:30 at 2.9 in; 8 at 3 in; 10:30 at 2.9 in"
    del sheet["hub"]["mount_width"], sheet["hub"]["mount_height"]
    judged = judged_document(sheet)
    height = judged.worked.known["wheel_centre_height"]
    holes = [shape for shape in openings(judged.worked.known)["plate"] if isinstance(shape, Cylinder)]
    assert {round(2 * hole.radius / IN, 3) for hole in holes} == {2.5, 0.58}
    placed = {(round(hole.start[0] / IN, 3), round((hole.start[2] - height) / IN, 3)) for hole in holes}
    by_hand = {(0.0, 0.0)} | {
        (round(far * sin(turn * pi / 180), 3), round(far * cos(turn * pi / 180), 3))
        for turn, far in ((30, 3), (135, 2.9), (240, 3), (315, 2.9))
    }
    assert placed == by_hand


def test_what_is_cut_out_of_the_plate_goes_through_it() -> None:
    """From 1 mm before its face, which lies on the hub's mounting face, to 1 mm behind its back. A slot is where it stands on
    the plate's own sheet, seen from the hub side, so that x is to the rear."""
    sheet = document("scree_ox_strength")
    sheet["plate"]["tab_length"] = "1 in"
    known = judged_document(sheet).worked.known
    face = known["hub_face_offset"] - known["hub.flange_to_mount_face"]
    thick = known["plate.thickness"]
    profile = hub_plate(known, "left")
    assert profile is not None and profile.slots
    found = openings(known)["plate"]
    for shape in found:
        if isinstance(shape, Cylinder):
            assert (shape.start[1], shape.end[1]) == pytest.approx((face - thick - 1.0, face + 1.0))
    slots = [shape for shape in found if isinstance(shape, Prism)]
    assert len(slots) == len(profile.slots)
    for slot, shape in zip(profile.slots, slots, strict=True):
        assert (shape.low, shape.high) == pytest.approx((face - thick - 1.0, face + 1.0))
        assert shape.origin == pytest.approx((0.0, 0.0, known["wheel_centre_height"]))
        assert (shape.across, shape.up) == ((-1.0, 0.0, 0.0), (0.0, 0.0, 1.0))
        assert tuple(shape.outline) == tuple(slot.corners)


def test_nothing_is_cut_out_of_what_is_not_there() -> None:
    assert not openings(judged_document({}).worked.known)
    without = document("scree_ox_strength")
    del without["plate"], without["upright"]
    assert "plate" not in openings(judged_document(without).worked.known)


@pytest.mark.parametrize("which", ["upper", "lower"])
def test_lugs_and_ball_lose_the_bolts_hole(which: str) -> None:
    """3/4-16: 3/8 in radius."""
    found = openings(judged_document(document("scree_ox_strength")).worked.known)
    assert found[f"{which} lugs"] == found[f"{which} joint housing"]
    (hole,) = found[f"{which} lugs"]
    assert isinstance(hole, Cylinder)
    assert hole.radius == pytest.approx(0.375 * IN)


SECTION = ((-30.0, -99.0), (30.0, -99.0), (30.0, 99.0), (-30.0, 99.0))
BLOCK = Prism((0.0, -50.0, 400.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 1.0), SECTION, -80.0, 0.0)
"""A beam 60 wide, 80 deep and 198 long behind a plate whose back is at y = -50."""


@pytest.mark.parametrize(
    ("beam", "wall", "cut", "bore", "within", "bored"),
    [
        # Walls of 5 all round: 50 wide inside, 75 to 5 behind the plate; an opening goes 1 past the ends.
        ("box", 5.0, None, 40.0, (-75.0, -5.0), (-125.0, -49.0)),
        ("box", 5.0, "face on the plate", 40.0, (-75.0, -5.0), (-125.0, -49.0)),
        ("box", 5.0, "both faces", 40.0, (-75.0, -5.0), (-131.0, -49.0)),
        ("box", 5.0, "not cut", 40.0, (-75.0, -5.0), None),
        ("box", 5.0, "both faces", None, (-75.0, -5.0), None),
        # A channel is open to the plate.
        ("channel", 5.0, None, 40.0, (-75.0, 1.0), None),
        ("channel", 5.0, "both faces", 40.0, (-75.0, 1.0), (-131.0, -49.0)),
        # Walls that leave no inside: as thick as half the width; a wide box whose walls fill its depth.
        ("box", 30.0, None, 40.0, None, None),
        ("solid bar", 5.0, None, 40.0, None, None),
    ],
)
def test_the_inside_of_a_beam(
    beam: str, wall: float, cut: Any, bore: Any, within: tuple[float, float] | None, bored: tuple[float, float] | None
) -> None:
    known = {"upright.beam": beam, "upright.beam_wall": wall, "upright.beam_cut": cut, "plate.bore": bore}
    found = _in_beam(known, part=Part("beam", "upright", (BLOCK,))) or ()
    assert len(found) == bool(within) + bool(bored)
    if within:
        inside = found[0]
        assert isinstance(inside, Prism)
        assert inside.outline == ((-25.0, -100.0), (25.0, -100.0), (25.0, 100.0), (-25.0, 100.0))
        assert (inside.low, inside.high, inside.origin) == (*within, BLOCK.origin)
    if bored:
        assert found[1] == Cylinder((0.0, bored[0], 400.0), (0.0, bored[1], 400.0), 20.0)


def test_a_box_whose_walls_fill_its_depth_has_no_inside() -> None:
    flat = Prism(
        BLOCK.origin, BLOCK.across, BLOCK.up, ((-50.0, -99.0), (50.0, -99.0), (50.0, 99.0), (-50.0, 99.0)), -10.0, 0.0
    )
    known = {"upright.beam": "box", "upright.beam_wall": 5.0}
    assert _in_beam(known, part=Part("beam", "upright", (flat,))) is None
    assert len(_in_beam(known | {"upright.beam_wall": 4.9}, part=Part("beam", "upright", (flat,))) or ()) == 1


@pytest.mark.parametrize(("wall", "inside"), [(5.0, 25.0), (29.9, 0.1), (30.0, None), (31.0, None)])
def test_the_inside_of_a_tube(wall: float, inside: float | None) -> None:
    tube = Cylinder((0.0, -80.0, 300.0), (0.0, -80.0, 500.0), 30.0)
    found = _in_beam({"upright.beam": "tube", "upright.beam_wall": wall}, part=Part("beam", "upright", (tube,)))
    assert (found is None) == (inside is None)
    if found:
        (hollow,) = found
        assert isinstance(hollow, Cylinder) and hollow.radius == pytest.approx(inside)
        assert (hollow.start, hollow.end) == ((0.0, -80.0, 299.0), (0.0, -80.0, 501.0))


@pytest.mark.parametrize(
    ("form", "bolt", "eye", "drilled"),
    [
        ("flat bar", "up and down", True, True), ("flat bar", "up and down", False, False),
        ("flat bar", "fore and aft", True, False), ("round bar", "up and down", True, False),
    ],
)  # fmt: skip
def test_the_hole_in_a_flat_bars_eye(form: str, bolt: str, eye: bool, drilled: bool) -> None:
    """A stud of 12 in an eye 20 high: a hole of 12 that goes 1 past both faces."""
    round_end = Cylinder((100.0, -90.0, 380.0), (100.0, -90.0, 400.0), 18.0)
    part = Part("steering arm", "upright", (BLOCK, round_end) if eye else (BLOCK,))
    known = {
        "upright.steering_arm_form": form,
        "loads.tie_rod_stud_diameter": 12.0,
        "joint_angles.tie_rod_outer_bolt": bolt,
    }
    hole = Cylinder((100.0, -90.0, 379.0), (100.0, -90.0, 401.0), 6.0)
    assert _in_arm(known, part=part) == ((hole,) if drilled else None)
