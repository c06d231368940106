"""What is cut out of the pieces stands where the bolts do, in the corner's own axes: x forward, z up."""

from math import cos, pi, sin

import pytest

from rules.drawn.openings import openings
from rules.solids.shapes import Cylinder
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
