"""Numbers of the parts list, and the balloons on the general arrangement that say them."""

from itertools import pairwise
from math import dist

import pytest

from rules.corner.part import Part
from rules.drawn.arrangement import FROM_INSIDE, arrangement
from rules.drawn.corner_parts import looks
from rules.drawn.cut_pieces import cut_pieces
from rules.drawn.full_size.places import crossed
from rules.drawn.full_size.shapes import PaperCircle, PaperWords, Stroke, corners
from rules.drawn.items import DrawnPart, ListItem, _covers, balloons, items, not_drawn
from rules.drawn.patches import Patch
from rules.judging.judge import Judged
from rules.measure.records import replace
from rules.shop.parts_list import PartsRow, bars
from rules.solids.shapes import Ball, block
from sample_sheets import document
from tests.support.judging import judged_document

NAMES = ("scree_ox_strength", "wrong_plate_cut_too_light", "fell_badger_finished_metric")


def sheet(name: str) -> Judged:
    return judged_document(document(name))


@pytest.mark.parametrize("name", NAMES)
def test_the_list_is_numbered_from_one_pieces_first_as_their_sheets_are(name: str) -> None:
    judged = sheet(name)
    found = items(judged)
    assert [item.number for item in found] == list(range(1, len(found) + 1))
    pieces = cut_pieces(judged)
    assert [item.name for item in found][: len(pieces)] == [piece.key for piece in pieces]
    assert [item.got for item in found] == sorted((item.got for item in found), key=("Cut", "Buy", "Bolt").index)


TUBE = {"beam": "tube", "beam_width": "2 in", "beam_wall": "0.25 in"}


@pytest.mark.parametrize(
    ("upright", "beam", "arm"),
    [
        # The beam from 2 1/4 in above the wheel centre to 2 3/8 below it; the tie rod 5.3 in off, the arm 1 9/16 high.
        (TUBE, "ø 2 in, wall 1/4 in, 4 5/8 in long", None),
        (TUBE | {"beam_wall": None}, "ø 2 in, wall ________, 4 5/8 in long", None),
        ({"steering_arm_form": "round bar", "steering_arm_width": "1 in"}, None, "ø 1 in, 5.3 in to the tie rod"),
        (
            {"steering_arm_form": "round tube", "steering_arm_width": "2 in", "steering_arm_wall": "1/4 in"},
            None, "ø 2 in, wall 1/4 in, 5.3 in to the tie rod",
        ),
        (
            {"steering_arm_form": "round tube", "steering_arm_width": "2 in"},
            None, "ø 2 in, wall ________, 5.3 in to the tie rod",
        ),
        (
            {"steering_arm_form": "box", "steering_arm_width": "2 in", "steering_arm_wall": "1/4 in"},
            None, "2 in x 1 9/16 in, wall 1/4 in, 5.3 in to the tie rod",
        ),
        (
            {"steering_arm_form": "box", "steering_arm_width": "2 in", "steering_arm_height": None},
            None, "2 in x ________, wall ________, 5.3 in to the tie rod",
        ),
        ({}, None, None),  # a channel of strips, and an arm cut from plate
    ],
)  # fmt: skip
def test_bars_and_tubes_are_in_the_list_with_their_sizes(
    upright: dict[str, str | None], beam: str | None, arm: str | None
) -> None:
    changed = document("scree_ox_strength")
    changed["upright"] = {key: entry for key, entry in {**changed["upright"], **upright}.items() if entry is not None}
    rows = {row.what: row.size for row in bars(judged_document(changed))}
    assert rows == {name: size for name, size in (("Beam", beam), ("Steering arm", arm)) if size}


@pytest.mark.parametrize("name", NAMES[:2])
def test_each_piece_to_cut_and_each_pivot_bolt_has_one_balloon(name: str) -> None:
    judged = sheet(name)
    _, rows = arrangement(judged, 255.0, 140.0, third_angle=True)
    numbers = [number for row in rows for one in row for number in one.numbers]
    assert len(numbers) == len(set(numbers))
    wanted = {
        item.number for item in items(judged) if item.got == "Cut" or item.name.endswith(("pivot bolt", "Hub bolt"))
    }
    assert wanted <= set(numbers)
    for row in rows:
        for one in row:
            circles = {item.centre for item in one.view.items if isinstance(item, PaperCircle) and item.pen == "thin"}
            said = {item.text for item in one.view.items if isinstance(item, PaperWords) and item.at in circles}
            assert said == {str(number) for number in one.numbers}


@pytest.mark.parametrize("name", NAMES[:2])
def test_no_line_and_no_leader_crosses_a_balloons_number(name: str) -> None:
    _, rows = arrangement(sheet(name), 255.0, 140.0, third_angle=True)
    for one in (one for row in rows for one in row):
        words = [item for item in one.view.items if isinstance(item, PaperWords) and item.text.isdigit()]
        lines = [
            (*start, *end)
            for item in one.view.items
            if isinstance(item, Stroke) and not item.white
            for start, end in pairwise(item.points)
        ]
        assert not any(crossed(corners(number), lines) for number in words)


@pytest.mark.parametrize(("name", "third"), [("scree_ox_strength", True), ("wrong_plate_cut_too_light", False)])
def test_no_line_goes_through_a_balloon_but_its_own_leader_to_its_rim(name: str, third: bool) -> None:
    """Not through the circle either: a leader through another balloon reads as that one's."""
    _, rows = arrangement(sheet(name), 255.0, 105.0, third_angle=third)
    balloons = 0
    for one in (one for row in rows for one in row):
        said = {item.at for item in one.view.items if isinstance(item, PaperWords) and item.text.isdigit()}
        circles = [item for item in one.view.items if isinstance(item, PaperCircle) and item.centre in said]
        balloons += len(circles)
        lines = [
            (start, end)
            for item in one.view.items
            if isinstance(item, Stroke) and not item.white
            for start, end in pairwise(item.points)
        ]
        for circle in circles:
            assert min(_to_line(circle.centre, *line) for line in lines) > circle.radius - 0.01
    assert balloons > 8


def _to_line(at: tuple[float, float], start: tuple[float, float], end: tuple[float, float]) -> float:
    """From a point to the nearest of a straight line's."""
    run, to = (end[0] - start[0], end[1] - start[1]), (at[0] - start[0], at[1] - start[1])
    length = run[0] ** 2 + run[1] ** 2
    share = min(max((run[0] * to[0] + run[1] * to[1]) / length, 0.0), 1.0) if length else 0.0
    return dist(at, (start[0] + share * run[0], start[1] + share * run[1]))


def test_what_is_hidden_has_no_balloon() -> None:
    """From inside the car, y grows away from the eye: a ball of 5 behind one of 30 is not seen, beside it it is."""
    plate, arm = (
        ListItem(1, "Cut", PartsRow("Beam", "", "", "", "")),
        ListItem(2, "Cut", PartsRow("Steering arm", "", "", "", "")),
    )
    near = Part("beam", "upright", (Ball((0.0, -50.0, 0.0), 30.0),))
    for x, seen in ((0.0, [1]), (60.0, [1, 2])):
        far = Part("steering arm", "upright", (Ball((x, 50.0, 0.0), 5.0),))
        drawn = [DrawnPart(part, *looks(part, FROM_INSIDE, "seen", 0.2)) for part in (far, near)]
        assert [balloon.number for balloon in balloons((plate, arm), drawn, FROM_INSIDE)] == seen


def test_lugs_and_their_gusset_are_one_part_with_a_balloon_on_each() -> None:
    """A rectangle from 0 to 40 outward and a triangle behind its end from 30 to 60: each is pointed at where only it is."""
    lug, gusset = (
        ListItem(number, "Cut", PartsRow(name, "", "", "", ""))
        for number, name in ((1, "upper_lug"), (2, "upper_gusset"))
    )
    flat = block((20.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 40.0, 10.0, 10.0)
    triangle = replace(flat, outline=((10.0, -4.0), (40.0, -4.0), (40.0, 4.0)))
    part = Part("upper lugs", "upright", (flat, triangle))
    drawn = [DrawnPart(part, *looks(part, FROM_INSIDE, "seen", 0.2))]
    on_lug, on_gusset = balloons((lug, gusset), drawn, FROM_INSIDE)
    assert (on_lug.number, abs(on_lug.at[0])) == (1, 0.0) and (on_gusset.number, abs(on_gusset.at[0])) == (2, 60.0)


NO_PLATE = "the plate: its sizes or its place are not known"
NO_LUGS = "no lugs or cups are on the sheet"


@pytest.mark.parametrize(
    ("left_out", "missing"),
    [
        ((), ""),
        (("plate.width",), f"NOT DRAWN: {NO_PLATE}."),
        (("bolts.upper_lug_thickness",), f"NOT DRAWN: what holds the upper joint: {NO_LUGS}."),
        (("bolts.lower_lug_thickness",), f"NOT DRAWN: what holds the lower joint: {NO_LUGS}."),
        (
            ("bolts.upper_lug_thickness", "bolts.lower_lug_thickness"),
            f"NOT DRAWN: what holds the upper and lower joint: {NO_LUGS}.",
        ),
    ],
)
def test_what_the_sheet_does_not_know_is_told_as_not_drawn(left_out: tuple[str, ...], missing: str) -> None:
    changed = document("scree_ox_strength")
    for entry in left_out:
        table, _, key = entry.partition(".")
        del changed[table][key]
    assert not_drawn(judged_document(changed)) == missing


def test_of_joints_that_are_not_known_nothing_is_missing_round_them() -> None:
    assert not_drawn(judged_document({})) == f"NOT DRAWN: {NO_PLATE}."


@pytest.mark.parametrize(
    ("x", "y", "covered"), [(2.0, 3.0, True), (3.0, 2.0, True), (8.0, 3.0, False), (3.0, 8.0, False)]
)
def test_an_area_covers_what_lies_in_it_and_not_all_within_its_height_and_width(
    x: float, y: float, covered: bool
) -> None:
    """A triangle below x + y = 10. At 8 across and 3 up one is past its slope, level with a part of it that begins at 3."""
    triangle = Patch(((0.0, 0.0), (10.0, 0.0), (0.0, 10.0)))
    assert _covers(triangle, (x, y)) is covered
