"""The general arrangement against plain arithmetic: true length, section, hidden lines, order of the views."""

from functools import cache
from math import hypot

import pytest

from rules.corner.part import Part
from rules.drawn.arrangement import ArrangedView, arrangement
from rules.drawn.full_size.shapes import PaperCircle, PaperWords, Stroke
from rules.drawn.hatching import hatching, without_hole
from rules.drawn.isometric import isometric
from rules.drawn.patches import Patch
from rules.drawn.pieces import hub_plate
from rules.judging.judge import Judged
from rules.solids.shapes import Cylinder
from sample_sheets import document
from tests.support.judging import judged_document

IN = 25.4


@cache
def ox() -> Judged:
    return judged_document(document("scree_ox_strength"))


def views(judged: Judged | None = None, *, third_angle: bool = True) -> tuple[float, dict[str, ArrangedView]]:
    scale, rows = arrangement(judged or ox(), 255.0, 140.0, third_angle=third_angle)
    return scale, {one.name: one for row in rows for one in row}


def strokes(one: ArrangedView, pen: str) -> list[Stroke]:
    return [item for item in one.view.items if isinstance(item, Stroke) and item.pen == pen and not item.white]


def test_views_stand_on_the_side_they_are_seen_from_in_third_angle_and_opposite_in_first() -> None:
    """ISO 5456-2. The front view has outboard to its right."""
    for third, order in ((True, ["back", "front", "from outside"]), (False, ["from outside", "front", "back"])):
        _, rows = arrangement(ox(), 255.0, 140.0, third_angle=third)
        assert [one.name.split(",")[0].removesuffix(" the car") for one in rows[0]] == order


def test_pivot_spacing_is_true_length_in_the_auxiliary_view_alone() -> None:
    """9.9 in between the tips of its arrowheads at 1:5."""
    scale, found = views()
    assert scale == 5
    tips = [item.points[0] for item in strokes(found["square to the axis"], "thin") if item.filled]
    assert hypot(tips[0][0] - tips[1][0], tips[0][1] - tips[1][1]) == pytest.approx(9.9 * IN / 5)
    for name, one in found.items():
        said = [item.text for item in one.view.items if isinstance(item, PaperWords)]
        assert ("F8" in said) is (name == "square to the axis")


def test_the_section_is_as_thick_as_the_plate_and_open_at_its_bore() -> None:
    """Plate 7/8 in thick, bore 2 1/2 in, wheel centre 7.1 in from the top of 14 3/8: metal from 1.25 to 7.1 in above it
    and from 1.25 to 7.275 in below."""
    _, found = views()
    points = [point for item in strokes(found["section A-A"], "outline") for point in item.points]
    heights = {round(y * 5 / IN, 3) for _, y in points}
    assert {7.1, 1.25, -1.25, -7.275} <= heights
    right = max(x for x, _ in points)
    plate = {round((right - x) * 5 / IN, 3) for x, y in points if abs(abs(y) * 5 / IN - 1.25) < 1e-3}
    assert {0.0, 0.875} <= plate


@pytest.mark.parametrize(
    ("cut", "back", "face"),
    [("not cut", False, False), (None, False, True), ("face on the plate", False, True), ("both faces", True, True)],
)
def test_a_box_is_cut_through_its_back_and_its_face(cut: str | None, back: bool, face: bool) -> None:
    """3.6 in deep with walls of 1/2 in behind a plate of 7/8 in: face from 0.875 to 1.375 in behind the plate's front, back
    from 3.975 to 4.475; where the bore of 2 1/2 in goes through a wall it ends 1.25 in from the wheel centre."""
    sheet = document("scree_ox_strength")
    sheet["upright"] |= {"beam": "box"} | ({"beam_cut": cut} if cut else {})
    if cut is None:
        del sheet["upright"]["beam_cut"]
    _, found = views(judged_document(sheet))
    points = [point for item in strokes(found["section A-A"], "outline") for point in item.points]
    right = max(x for x, _ in points)
    behind = {(round((right - x) * 5 / IN, 3), round(abs(y) * 5 / IN, 2)) for x, y in points}
    for wall, bored in (((0.875, 1.375), face), ((3.975, 4.475), back)):
        assert {(wall[1], 2.25), (wall[1], 2.38)} <= behind or {(wall[1], 2.25), (wall[1], 2.37)} <= behind
        assert ((wall[1], 1.25) in behind) is bored


def test_a_tube_is_cut_through_both_its_walls_and_round_from_above() -> None:
    """3 in outside, wall 1/4 in, on a plate of 7/8 in: walls from 0.875 to 1.125 and from 3.625 to 3.875 in behind its front."""
    sheet = document("scree_ox_strength")
    sheet["upright"] |= {"beam": "tube", "beam_width": "3 in", "beam_wall": "1/4 in"}
    _, found = views(judged_document(sheet))
    points = [point for item in strokes(found["section A-A"], "outline") for point in item.points]
    right = max(x for x, _ in points)
    behind = {round((right - x) * 5 / IN, 3) for x, y in points if abs(y * 5 / IN - 2.25) < 0.01}
    assert {1.125, 3.625, 3.875} <= behind


@pytest.mark.parametrize("left", [{"beam": "none"}, {"beam_width": None}, {"beam_depth": None}])
def test_a_beam_that_is_not_there_or_has_no_size_is_not_in_the_section(left: dict[str, str | None]) -> None:
    """Its wall is still on the sheet. Of wall lines the channel has one 4.475 in behind the plate's front."""
    sheet = document("scree_ox_strength")
    sheet["upright"] = {key: entry for key, entry in {**sheet["upright"], **left}.items() if entry is not None}

    def backs(judged: Judged) -> set[float]:
        _, found = views(judged)
        points = [point for item in strokes(found["section A-A"], "outline") for point in item.points]
        right = max(x for x, _ in points)
        return {round((right - x) * 5 / IN, 3) for x, _ in points}

    assert 4.475 in backs(ox()) and {0.875} <= backs(judged_document(sheet)) <= backs(ox()) - {4.475}


def test_pieces_of_a_section_have_each_its_own_hatching() -> None:
    _, found = views()
    slopes = set()
    for item in strokes(found["section A-A"], "thin"):
        if len(item.points) == 2:
            (x1, y1), (x2, y2) = item.points
            if abs(x2 - x1) > 0.3:
                slopes.add(round((y2 - y1) / (x2 - x1), 2))
    assert {1.0, -1.0} <= slopes and len(slopes) >= 4


def test_what_the_plate_hides_is_dashed_and_bought_parts_are_neighbours() -> None:
    _, found = views()
    assert strokes(found["from outside the car"], "hidden")
    assert strokes(found["front"], "adjacent")
    letters = [item.text for item in found["from outside the car"].view.items if isinstance(item, PaperWords)]
    assert letters.count("A") == 2, "the cutting plane has its letter at both ends"


def test_from_outside_every_hub_bolt_has_its_hole() -> None:
    """Four holes of 0.58 in on a 4.7 x 3.7 in rectangle about the wheel centre, as the sample's sheet says."""
    scale, found = views()
    circles = [item for item in found["from outside the car"].view.items if isinstance(item, PaperCircle)]
    holes = [item for item in circles if item.radius * scale / IN == pytest.approx(0.29)]
    places = sorted((round(item.centre[0] * scale / IN, 3), round(item.centre[1] * scale / IN, 3)) for item in holes)
    assert places == [(-2.35, -1.85), (-2.35, 1.85), (2.35, -1.85), (2.35, 1.85)]


def test_without_a_plate_no_cutting_plane_and_all_views_in_one_row() -> None:
    """There is no section it could belong to, and one view alone is no page."""
    _, rows = arrangement(judged_document(document("fell_badger_finished_metric")), 267.0, 130.0, third_angle=False)
    (row,) = rows
    assert [one.name.split(",")[0] for one in row] == ["from outside the car", "front", "back", "square to the axis"]
    assert not [item for one in row for item in one.view.items if isinstance(item, PaperWords) and item.text == "A"]


def test_a_part_that_no_page_holds_is_drawn_at_the_last_reduction() -> None:
    scale, rows = arrangement(ox(), 30.0, 2.0, third_angle=True)
    assert scale == 50 and rows


def test_nothing_known_draws_nothing() -> None:
    assert arrangement(judged_document({}), 255.0, 140.0, third_angle=True)[1] == ()
    assert isometric([], 60.0, 60.0).items == ()


def test_hatching_keeps_inside_the_outline_and_out_of_the_hole() -> None:
    square = ((0.0, 0.0), (20.0, 0.0), (20.0, 20.0), (0.0, 20.0))
    hole = ((5.0, 5.0), (15.0, 5.0), (15.0, 15.0), (5.0, 15.0))
    lines = list(hatching(Patch(square, hole), 45.0, 2.0))
    assert lines
    for (x1, y1), (x2, y2) in lines:
        for share in (0.01, 0.25, 0.5, 0.75, 0.99):
            x, y = x1 + share * (x2 - x1), y1 + share * (y2 - y1)
            assert -1e-9 <= x <= 20 + 1e-9 and -1e-9 <= y <= 20 + 1e-9
            assert not (5 < x < 15 and 5 < y < 15)


def test_an_area_without_its_hole_has_the_area_left() -> None:
    """20 x 20 less 10 x 10 is 300; and a hole that reaches past the edge takes only what is there: 400 - 10 x 5."""
    square = ((0.0, 0.0), (20.0, 0.0), (20.0, 20.0), (0.0, 20.0))

    def area(hole: tuple[tuple[float, float], ...]) -> float:
        total = 0.0
        for points in without_hole(Patch(square, hole)):
            total += sum(
                (x1 * y2 - x2 * y1) / 2 for (x1, y1), (x2, y2) in zip(points, (*points[1:], points[0]), strict=True)
            )
        return total

    assert area(((5.0, 5.0), (15.0, 5.0), (15.0, 15.0), (5.0, 15.0))) == pytest.approx(300)
    assert area(((5.0, -5.0), (15.0, -5.0), (15.0, 5.0), (5.0, 5.0))) == pytest.approx(350)


def test_a_picture_fits_its_paper_and_has_its_middle_at_the_origin() -> None:
    away = Part("beam", "upright", (Cylinder((100.0, -300.0, 400.0), (100.0, -300.0, 600.0), 20.0),))
    view = isometric([away], 90.0, 60.0)
    frame = view.frame
    assert frame.left + frame.right == pytest.approx(0.0, abs=1e-6)
    assert frame.bottom + frame.top == pytest.approx(0.0, abs=1e-6)
    assert frame.right - frame.left <= 90.0 + 1e-6 and frame.top - frame.bottom == pytest.approx(60.0)


@pytest.mark.parametrize("height", [95.0, 110.0, 125.0, 140.0])
def test_a_row_leaves_room_for_its_names_with_the_wheel_centres_level(height: float) -> None:
    """Views whose middles differ take more together than the highest of them."""
    scale, rows = arrangement(
        judged_document(document("wrong_cannot_be_put_together")), 255.0, height, third_angle=True
    )
    assert 4 <= scale <= 8, "as large as the page holds, not the next round reduction"
    for row in rows:
        top, bottom = max(one.view.frame.top for one in row), min(one.view.frame.bottom for one in row)
        assert top - bottom <= height - 10


def test_from_outside_every_slot_of_the_plate_is_drawn_all_round() -> None:
    """Where the plate's own sheet has it, seen from the hub side, which is from outside."""
    sheet = document("scree_ox_strength")
    sheet["plate"]["tab_length"] = "1 in"
    judged = judged_document(sheet)
    profile = hub_plate(judged.worked.known, "left")
    assert profile is not None and profile.slots
    scale, found = views(judged)
    closed = [item.points for item in strokes(found["from outside the car"], "outline") if item.closed]
    for slot in profile.slots:
        wanted = [pytest.approx((x / scale, y / scale)) for x, y in slot.corners]
        assert any(list(points) == wanted for points in closed)
