"""Pieces to cut: shapes, numbers and sizes by hand from one sheet; and the same places in the table as in the DXF."""

from math import asin, atan, atan2, hypot, pi, sin, sqrt
from typing import Any

import pytest

from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.shapes import PaperArc, PaperCircle, PaperWords, Stroke
from rules.drawn.piece_view import hole_rows, mark_rows, piece_view
from rules.judging.judge import Judged
from sample_sheets import document
from tests.support.judging import judged_document

IN = 25.4


def ox(**changes: dict[str, Any]) -> Judged:
    sheet = document("scree_ox_strength")
    for table, entries in changes.items():
        sheet[table] = {key: entry for key, entry in {**sheet[table], **entries}.items() if entry is not None}
    return judged_document(sheet)


def pieces(**changes: dict[str, Any]) -> dict[str, CutPiece]:
    return {piece.key: piece for piece in cut_pieces(ox(**changes))}


def area(piece: CutPiece) -> float:
    """Of the outline, with its arcs: triangles to the origin, and a segment for each bulge."""
    points, total = piece.profile.points, 0.0
    for (x1, y1, bulge), (x2, y2, _) in zip(points, [*points[1:], points[0]], strict=True):
        total += (x1 * y2 - x2 * y1) / 2
        if bulge:  # the tangent of a quarter of the arc's sweep: of the sector, what lies outside its chord
            sweep = 4 * atan(bulge)
            radius = hypot(x2 - x1, y2 - y1) / 2 / sin(sweep / 2)
            total += radius**2 * (sweep - sin(sweep)) / 2
    return total


def test_each_piece_of_the_sheet_once() -> None:
    assert list(pieces()) == [
        "hub_plate", "upper_lug", "lower_lug", "beam_side", "beam_back", "steering_arm", "caliper_bracket",
    ]  # fmt: skip


def test_a_lug_is_as_its_answers_say() -> None:
    """Edge distance 1 1/2 in, 4.2 in wide at its root: R 1 1/2 round the hole, its sides straight from there to the root.

    With the hole's centre at height h its side runs s = sqrt(2.1^2 + h^2 - 1.5^2) from the root, and leans by
    b = atan(2.1 / h) - asin(1.5 / sqrt(2.1^2 + h^2)). Area: 2.1 h + 1.5 s + 1.5^2 (pi - 2 b) / 2.
    """
    lug = pieces()["upper_lug"]
    (hole,) = lug.profile.holes
    assert hole.diameter == pytest.approx(0.75 * IN) and lug.thickness == pytest.approx(0.5 * IN)
    assert lug.profile.outline.right - lug.profile.outline.left == pytest.approx(4.2 * IN)
    assert lug.profile.outline.top - hole.centre[1] == pytest.approx(1.5 * IN)
    high = hole.centre[1] / IN
    away = hypot(2.1, high)
    side, leans = sqrt(away**2 - 1.5**2), atan2(2.1, high) - asin(1.5 / away)
    assert area(lug) == pytest.approx((2.1 * high + 1.5 * side + 1.5**2 * (pi - 2 * leans) / 2) * IN**2)


def test_a_lug_whose_width_nobody_entered_is_as_wide_as_round_its_bolt() -> None:
    """Area with the hole's centre at height h: 3 h + pi 1.5^2 / 2."""
    lug = pieces(bolts={"upper_lug_width": None})["upper_lug"]
    (hole,) = lug.profile.holes
    assert area(lug) == pytest.approx((3 * hole.centre[1] / IN + pi * 1.5**2 / 2) * IN**2)


def test_a_foot_narrower_than_the_round_end_has_its_own_figure() -> None:
    assert {"3 in", "foot 2 in wide"} <= set(said("upper_lug", bolts={"upper_lug_width": "2 in"}))


def test_a_full_bevel_is_said_on_the_piece_that_is_bevelled() -> None:
    bevelled = pieces(weld_upper={"form": "full bevel"})
    assert any("bevelled to an edge" in words for words in bevelled["upper_lug"].notes)
    assert not any("bevelled" in words for words in bevelled["lower_lug"].notes)


def test_strips_of_a_channel_of_3_2_by_3_6_in_with_walls_of_half_an_inch() -> None:
    """Back between the sides: 3.2 - 2 x 0.5 = 2.2 in."""
    side, back = pieces()["beam_side"].profile.outline, pieces()["beam_back"].profile.outline
    assert side.right - side.left == pytest.approx(3.6 * IN) and back.right - back.left == pytest.approx(2.2 * IN)
    assert side.top - side.bottom == pytest.approx(back.top - back.bottom)


BOX_BORE = {"bore": "2 in"}


def test_strips_of_a_box_are_two_sides_a_back_and_a_face_with_the_bore_in_it() -> None:
    """3.2 in wide, walls of 1/2 in, from 2 1/4 in above the wheel centre to 2 3/8 in below it: back and face 2.2 x 4 5/8 in,
    the bore's middle 1.1 in from the side and 2 3/8 in from the lower end."""
    box = pieces(upright={"beam": "box", "beam_cut": None}, plate=BOX_BORE)
    assert not box["beam_back"].profile.holes and not box["beam_side"].profile.holes
    face = box["beam_face"].profile
    assert (face.outline.right, face.outline.top) == (pytest.approx(2.2 * IN), pytest.approx(4.625 * IN))
    (hole,) = face.holes
    assert hole.centre == (pytest.approx(1.1 * IN), pytest.approx(2.375 * IN))
    assert hole.diameter == pytest.approx(2 * IN)
    assert box["beam_face"].make == "2: one left, one right"
    assert "beam_face" not in pieces(plate=BOX_BORE)  # a channel stands on its toes


def test_what_the_bore_cuts_of_a_beam_is_as_answered() -> None:
    for cut, of_back, of_face in (("not cut", 0, 0), ("face on the plate", 0, 1), ("both faces", 1, 1)):
        box = pieces(upright={"beam": "box", "beam_cut": cut}, plate=BOX_BORE)
        assert len(box["beam_back"].profile.holes) == of_back and len(box["beam_face"].profile.holes) == of_face
    channel = pieces(upright={"beam": "channel", "beam_cut": "both faces"}, plate=BOX_BORE)
    assert len(channel["beam_back"].profile.holes) == 1


def test_a_bore_that_is_no_hole_in_a_strip_is_said_to_be_left_out() -> None:
    """2 1/2 in is wider than the 2.2 in between the sides; of a bore nobody entered nothing is known."""
    for bore, said in (("2 1/2 in", "runs out of this strip"), (None, "diameter is not on the sheet")):
        face = pieces(upright={"beam": "box", "beam_cut": None}, plate={"bore": bore})["beam_face"].profile
        assert not face.holes
        assert any(said in words for words in face.left_out)


@pytest.mark.parametrize(
    ("upright", "bore", "whole"),
    [
        ({"beam_bottom": "1 in"}, "2 in", False),  # the bore's rim 1 in below the wheel centre is the strip's end
        ({"beam_bottom": "1 1/16 in"}, "2 in", True),
        ({"beam_top": "1 in"}, "2 in", False),
        ({"beam_top": "1 1/16 in"}, "2 in", True),
        ({"beam_width": "3 in"}, "2 in", False),  # 3 less two walls of 1/2 in leave 2 between the sides
        ({"beam_width": "3 1/16 in"}, "2 in", True),
    ],
)
def test_a_bore_that_just_touches_an_edge_of_a_strip_is_no_hole_in_it(
    upright: dict[str, str], bore: str, whole: bool
) -> None:
    face = pieces(upright={"beam": "box", "beam_cut": None, **upright}, plate={"bore": bore})["beam_face"].profile
    assert bool(face.holes) is whole
    assert any("runs out of this strip" in words for words in face.left_out) is not whole


@pytest.mark.parametrize(("way", "said"), [("access holes", True), ("studs", False), (None, False)])
def test_access_holes_that_are_asked_for_are_said_not_to_be_drawn(way: str | None, said: bool) -> None:
    back = pieces(upright={"hub_bolt_access": way})["beam_back"]
    assert not back.profile.holes
    assert any("access holes over the hub bolts" in words for words in back.profile.left_out) is said


def test_what_is_not_known_is_left_out_and_said() -> None:
    found = pieces(bolts={"upper_thread": None}, upright={"beam_wall": None, "steering_arm_form": None})
    assert not {"beam_side", "beam_back", "steering_arm"} & set(found)
    assert not any("upper_lug" in key and piece.profile.holes for key, piece in found.items())
    assert not cut_pieces(judged_document({}))


def test_places_of_holes_from_two_edges_and_from_the_wheel_centre() -> None:
    """Plate 7 x 14 3/8 in, wheel centre 7.1 from the top and 3.5 from the front; bolts 4.7 fore and aft and 3.7 up and down.

    Top front bolt: 3.5 - 2.35 = 1.15 from the left edge, 14.375 - 7.1 + 1.85 = 9.125 from the lower one.
    """
    rows = hole_rows(pieces()["hub_plate"])
    assert [row.letter for row in rows] == list("ABCDE")
    first = rows[0]
    assert (first.from_left / IN, first.from_bottom / IN) == pytest.approx((1.15, 9.125))
    assert (first.from_centre[0] / IN, first.from_centre[1] / IN) == pytest.approx((-2.35, 1.85))
    (bore,) = [row for row in rows if row.what == "centre bore"]
    assert (bore.from_left / IN, bore.from_bottom / IN, bore.diameter / IN) == pytest.approx((3.5, 7.275, 2.5))


def test_pivots_are_marks_in_the_same_table() -> None:
    """The joints as taped: lower 0.5 in ahead and 4.9 below, upper 0.5 behind and 4.75 above, so at the wheel centre the axis is
    0.5 - 4.9 / 9.65 = -0.0078 in ahead. Castor 6 deg puts the lower pivot 4.9 tan 6 = 0.515 in ahead of that: 0.5072 in, which
    is left on a left piece."""
    marks = {row.what: row.from_centre for row in mark_rows(pieces()["hub_plate"])}
    x, y = marks["lower pivot"]
    assert (x / IN, y / IN) == pytest.approx((-0.5072, -4.9), abs=5e-4)


@pytest.mark.parametrize("key", ["hub_plate", "upper_lug", "caliper_bracket"])
def test_the_drawing_is_to_its_scale_and_fits(key: str) -> None:
    piece, figures = pieces()[key], FigureWriter.of(ox())
    scale, view = piece_view(piece, figures, 180.0, 118.0)
    assert view.frame.width <= 180 and view.frame.height <= 118
    radii = sorted(item.radius for item in view.items if isinstance(item, PaperCircle))
    assert radii == pytest.approx(sorted(hole.diameter / 2 / scale for hole in piece.profile.holes))
    arcs = [item for item in view.items if isinstance(item, PaperArc)]
    # The lug's sides lean by 10.199 deg: 3.201 in from the root to the bolt, atan(2.1 / 3.201) - asin(1.5 / 3.828).
    sweep = {"hub_plate": 4 * 90, "upper_lug": 180 - 2 * 10.1993, "caliper_bracket": 0}[key]
    assert sum(arc.sweep for arc in arcs) == pytest.approx(sweep)


def said(key: str, **changes: dict[str, Any]) -> list[str]:
    """The figures and words on a piece's drawing."""
    _, view = piece_view(pieces(**changes)[key], FigureWriter.of(ox()), 180.0, 118.0)
    return [item.text for item in view.items if isinstance(item, PaperWords)]


def test_the_bracket_shows_its_bolts_spacing_and_edges() -> None:
    """Blank 8.4 x 3 1/2 in, bolts 5.4 in apart and 1.2 in from the outer edge."""
    assert {"8.4 in", "3 1/2 in", "5.4 in", "1.2 in"} <= set(said("caliper_bracket"))


def test_a_lugs_and_an_arms_hole_are_measured_from_foot_and_root() -> None:
    """Lug 4.2 in wide, so its hole 2.1 in from the left; arm 5.3 in from the root to the tie rod, 3 9/16 in wide."""
    assert {"4.2 in", "2.1 in", "R 1 1/2 in"} <= set(said("upper_lug"))
    assert {"5.3 in", "1 25/32 in"} <= set(said("steering_arm"))


@pytest.mark.parametrize("tab", ["1 in", "4 in"])
def test_a_tab_is_figured_as_it_is_entered_also_where_it_is_longer_than_its_lug(tab: str) -> None:
    assert any(words.startswith(f"tab {tab} by ") for words in said("upper_lug", plate={"tab_length": tab}))


@pytest.mark.parametrize("key", ["upper_lug", "lower_lug"])
def test_a_lugs_foot_is_straight_but_for_its_tab(key: str) -> None:
    """A tab of 1 in in the middle, square, all its corners sharp."""
    points = pieces(plate={"tab_length": "1 in"})[key].profile.points
    foot = [(x / IN, y / IN, bulge) for x, y, bulge in points if y < 1e-6]
    deep = min(y for _, y, _ in foot)
    assert deep < -0.5 and foot[0][1] == foot[1][1] == 0.0  # the lug's own corners, right and left
    assert foot[2:] == [
        (pytest.approx(x), pytest.approx(y), 0.0) for x, y in ((-0.5, 0.0), (-0.5, deep), (0.5, deep), (0.5, 0.0))
    ]


@pytest.mark.parametrize("key", ["beam_side", "upper_lug", "lower_lug"])
def test_no_dimension_stands_between_a_tab_and_its_words(key: str) -> None:
    """A side's height is written on the side away from its tabs, a lug's width below the words of its tab."""
    piece = pieces(plate={"tab_length": "1 in"})[key]
    scale, view = piece_view(piece, FigureWriter.of(ox()), 180.0, 118.0)
    tabs = [item for item in view.items if isinstance(item, PaperWords) and item.text.startswith("tab")]
    arrowed = [item.points[0] for item in view.items if isinstance(item, Stroke) and item.filled]
    outline = piece.profile.outline
    assert tabs
    if key == "beam_side":
        assert all(tab.box.right < outline.left / scale for tab in tabs)
        assert not [tip for tip in arrowed if tip[0] < outline.left / scale - 1]
    else:
        below = [y for _, y in arrowed if y < outline.bottom / scale - 1]
        assert len(below) == 2 and max(below) < min(tab.box.bottom for tab in tabs)


def test_the_cut_corner_of_a_gusset_is_figured() -> None:
    """As much as its plate is thick."""
    gussets = {
        "gusset_at": "both",
        "gusset_along_plate": "1 in",
        "gusset_along_lug": "2 in",
        "gusset_thickness": "1/4 in",
    }
    assert "corner cut off 1/4 in each way" in said("upper_gusset", plate=gussets)


def test_how_a_straight_arm_stands_is_said_on_its_sheet() -> None:
    """The weld's levers: 4.6 in behind, 2.5 inboard, 0.3 below; together its length, sqrt(4.6^2 + 2.5^2 + 0.3^2) = 5.24 in."""
    assert pieces()["steering_arm"].notes[-1] == (
        "Straight, not bent: on the car the hole's middle lies 4.6 in behind, 2 1/2 in inboard of and 0.3 in below "
        "the middle of its root."
    )
