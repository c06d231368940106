"""What the words on a cut piece's drawing speak of: each one's leader line begins on that, by hand from one sheet."""

from math import dist, sqrt
from typing import Any

import pytest

from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.shapes import PaperWords, Stroke
from rules.drawn.piece_view import HoleRow, arc_rows, hole_rows, mark_rows, piece_view, slot_rows
from rules.drawn.pieces import TO_THE_FRONT, Hole, MarkLine, Profile, SlotHole
from rules.measure.outline import Outline, Point
from sample_sheets import document
from tests.support.judging import judged_document

IN = 25.4
TABS = {"tab_length": "1 in"}
GUSSETS = {
    "gusset_at": "both", "gusset_along_plate": "1 in", "gusset_along_lug": "2 in", "gusset_thickness": "1/4 in",
}  # fmt: skip


def cut(key: str, **changes: dict[str, Any]) -> tuple[CutPiece, FigureWriter]:
    """A piece of the sheet with some entries changed, and what writes its figures."""
    sheet = document("scree_ox_strength")
    for table, entries in changes.items():
        sheet[table] |= entries
    judged = judged_document(sheet)
    (piece,) = (one for one in cut_pieces(judged) if one.key == key)
    return piece, FigureWriter.of(judged)


def drawn(key: str, **changes: dict[str, Any]) -> tuple[CutPiece, dict[str, Point]]:
    """A piece, and where on it the leader lines begin, in from the wheel's middle or its lower left corner, by their words."""
    piece, figures = cut(key, **changes)
    scale, view = piece_view(piece, figures, 180.0, 118.0)
    led = [item for item in view.items if isinstance(item, PaperWords) and item.led]
    return piece, {item.text: (item.led[0][0] * scale / IN, item.led[0][1] * scale / IN) for item in led}


@pytest.mark.parametrize("along", ["1 in", "2 in"])
def test_words_of_a_cut_corner_begin_in_the_middle_of_the_cut(along: str) -> None:
    """1/4 in off each way."""
    _, begins = drawn("upper_gusset", plate=GUSSETS | {"gusset_along_plate": along})
    assert begins == {"corner cut off 1/4 in each way": pytest.approx((0.125, 0.125))}


def test_words_of_a_round_corner_begin_half_way_round_it() -> None:
    """R 2 in; the plate ends 3.5 in behind the wheel's middle and 7.1 above it."""
    _, begins = drawn("hub_plate")
    assert begins["4 x R 2 in"] == pytest.approx((1.5 + sqrt(2), 5.1 + sqrt(2)))


def test_words_of_tabs_begin_on_their_outer_edges() -> None:
    """A side 4 5/8 in long has its two tabs at a quarter and at three quarters of that, on the left. One below a lug is in the
    middle of its foot. How far each stands out is in its words.
    """
    _, begins = drawn("beam_side", plate=TABS)
    assert {words.partition(", ")[2]: place for words, place in begins.items()} == {
        "its middle 3 15/32 in up": pytest.approx((-0.855, 0.75 * 4.625), abs=6e-4),
        "its middle 1 5/32 in up": pytest.approx((-0.855, 0.25 * 4.625), abs=6e-4),
    }
    assert all(words.startswith("tab 1 in by 0.855 in, ") for words in begins)
    _, begins = drawn("upper_lug", plate=TABS)
    assert begins["tab 1 in by 0.593 in"] == pytest.approx((0.0, -0.593), abs=6e-4)


@pytest.mark.parametrize("root", ["4.2 in", "3 in", "2 in"])
def test_words_of_a_round_end_begin_on_it_and_those_of_a_narrow_foot_at_its_end(root: str) -> None:
    """R 1 1/2 in about the hole, above it."""
    piece, begins = drawn("upper_lug", bolts={"upper_lug_width": root})
    (hole,) = piece.profile.holes
    middle = (hole.centre[0] / IN, hole.centre[1] / IN)
    assert dist(begins["R 1 1/2 in"], middle) == pytest.approx(1.5) and begins["R 1 1/2 in"][1] > middle[1]
    feet = {words: place for words, place in begins.items() if words.startswith("foot")}
    assert feet == ({"foot 2 in wide": pytest.approx((1.0, 0.0))} if root == "2 in" else {})


def test_each_letter_begins_on_the_rim_of_its_hole() -> None:
    """Bolts at 2.35 in fore and aft and 1.85 in up and down of the bore; lettered from the top left."""
    _, begins = drawn("hub_plate")
    for letter, middle, across in (
        ("A", (-2.35, 1.85), 0.58), ("B", (2.35, 1.85), 0.58), ("C", (0.0, 0.0), 2.5),
        ("D", (-2.35, -1.85), 0.58), ("E", (2.35, -1.85), 0.58),
    ):  # fmt: skip
        assert dist(begins[letter], middle) == pytest.approx(across / 2)


@pytest.mark.parametrize(("width", "height"), [(1.0, 1.0), (1.0, 118.0), (180.0, 1.0)])
@pytest.mark.parametrize("key", ["hub_plate", "beam_side"])
def test_a_piece_that_no_paper_holds_is_drawn_at_the_last_reduction(key: str, width: float, height: float) -> None:
    """One to fifty: the plate is 7 in wide, the side 3.6."""
    piece, figures = cut(key)
    scale, view = piece_view(piece, figures, width, height)
    outlines = [
        point for item in view.items if isinstance(item, Stroke) and item.pen == "outline" for point in item.points
    ]
    across = [x for x, _ in outlines]
    assert scale == 50
    assert (max(across) - min(across)) * scale / IN == pytest.approx({"hub_plate": 7.0, "beam_side": 3.6}[key])


ENDS = {"upper_end_width": "5 in", "lower_end_width": "5 in"}


def test_the_arcs_of_an_edge_have_their_middles_from_both_edges_and_from_the_wheel_centre() -> None:
    """Plate 7 x 14 3/8 in, the wheel centre 3.5 from the left and 7.275 from the lower edge. The ends are R 2 1/2, with their
    middles as far from the plate's ends and as far fore and aft as the joints: 0.507 ahead below and 0.510 behind above. The
    sides' corners of R 2 are level with the wheel centre, because nothing says how far it is as wide as it is there.
    """
    piece, _ = cut("hub_plate", plate=ENDS)
    rows = {
        tuple(round(size / IN, 3) for size in (row.from_left, row.from_bottom, *row.from_centre, row.diameter / 2))
        for row in arc_rows(piece)
    }
    assert rows == {
        (2.993, 2.5, -0.507, -4.775, 2.5), (4.010, 11.875, 0.510, 4.6, 2.5),
        (2.0, 7.275, -1.5, 0.0, 2.0), (5.0, 7.275, 1.5, 0.0, 2.0),
    }  # fmt: skip


def test_words_of_an_arc_of_the_edge_begin_on_it() -> None:
    _, begins = drawn("hub_plate", plate=ENDS)
    assert {words for words in begins if words.startswith("R ")} == {"R 2 1/2 in", "R 2 in"}
    middles = {"R 2 1/2 in": [(-0.507, -4.775), (0.510, 4.6)], "R 2 in": [(-1.5, 0.0), (1.5, 0.0)]}
    for words, radius in (("R 2 1/2 in", 2.5), ("R 2 in", 2.0)):
        assert min(abs(dist(begins[words], middle) - radius) for middle in middles[words]) < 1e-3


def test_holes_slots_and_marks_are_told_from_the_top_left() -> None:
    """A piece from 50 left of the wheel's centre to 50 right of it and from 80 below to 60 above. A slot turned by 100 degrees to
    the left is turned by 80 to the right."""
    slots = tuple(
        SlotHole(at, 20.0, 5.0, turned, (), what)
        for at, turned, what in (
            ((30.0, 10.0), 0.0, "right"), ((-20.0, 10.0), 90.0, "left"), ((0.0, -40.0), 100.0, "low"), ((5.0, 40.0), 30.0, "high")
        )
    )  # fmt: skip
    holes = tuple(
        Hole(at, across, what)
        for at, across, what in (
            ((30.0, 20.0), 8.0, "right"), ((-20.0, 20.0), 9.0, "left"), ((0.0, 0.0), 30.0, "bore"), ((40.0, 50.0), 10.0, "top")
        )
    )  # fmt: skip
    ticks = (
        MarkLine((-17.0, -60.0), (-7.0, -60.0), "lower pivot"),
        MarkLine((8.0, 50.0), (18.0, 50.0), "upper pivot"),
    )
    piece = CutPiece("", "", Profile(Outline(-50.0, 50.0, -80.0, 60.0), holes, ticks, slots=slots), 10.0, "")
    assert slot_rows(piece) == (
        HoleRow("S1", 55.0, 120.0, (5.0, 40.0), 20.0, "high", 5.0, 30.0),
        HoleRow("S2", 30.0, 90.0, (-20.0, 10.0), 20.0, "left", 5.0, 90.0),
        HoleRow("S3", 80.0, 90.0, (30.0, 10.0), 20.0, "right", 5.0, 0.0),
        HoleRow("S4", 50.0, 40.0, (0.0, -40.0), 20.0, "low", 5.0, -80.0),
    )
    assert hole_rows(piece) == (
        HoleRow("A", 90.0, 130.0, (40.0, 50.0), 10.0, "top"),
        HoleRow("B", 30.0, 100.0, (-20.0, 20.0), 9.0, "left"),
        HoleRow("C", 80.0, 100.0, (30.0, 20.0), 8.0, "right"),
        HoleRow("D", 50.0, 80.0, (0.0, 0.0), 30.0, "bore"),
    )
    assert [
        (row.letter, row.from_left, row.from_bottom, row.from_centre, row.diameter) for row in mark_rows(piece)
    ] == [
        ("P1", 38.0, 20.0, (-12.0, -60.0), 0.0),
        ("P2", 63.0, 130.0, (13.0, 50.0), 0.0),
    ]


def test_letters_go_on_after_z_and_leave_out_what_is_taken_for_a_figure() -> None:
    """The alphabet without I, O and Q is 23 letters: the 24th hole is AA, the 47th AAA."""
    holes = tuple(Hole((float(number), 0.0), 1.0, "") for number in range(47))
    letters = [
        row.letter for row in hole_rows(CutPiece("", "", Profile(Outline(0.0, 50.0, -5.0, 5.0), holes, ()), 1.0, ""))
    ]
    assert letters[7:9] == ["H", "J"] and letters[22:25] == ["Z", "AA", "BB"] and letters[46] == "AAA"
    assert not {"I", "O", "Q"} & set("".join(letters))


def lengths(profile: Profile) -> list[str]:
    """The words of a piece's drawing that tell a length."""
    _, figures = cut("hub_plate")
    _, view = piece_view(CutPiece("", "", profile, 10.0, ""), figures, 180.0, 118.0)
    return sorted(item.text for item in view.items if isinstance(item, PaperWords) and item.text.endswith(" in"))


@pytest.mark.parametrize(
    ("x", "told"),
    [
        (1.0, ["1 in", "2 in", "3 in", "4 in"]),
        (0.02, ["0.02 in", "2 in", "3 in", "4 in"]),
        (0.0, ["2 in", "3 in", "4 in"]),
    ],
)
def test_one_hole_is_told_from_the_left_and_the_lower_edge_and_not_from_an_edge_it_stands_on(
    x: float, told: list[str]
) -> None:
    """3 by 4 in, the hole 2 in up."""
    hole = Hole((x * IN, 2 * IN), 6.0, "pin")
    assert lengths(Profile(Outline(0.0, 3 * IN, 0.0, 4 * IN), (hole,), ())) == told


@pytest.mark.parametrize(("tip", "tail", "align"), [(-40.0, -20.0, "right"), (40.0, 20.0, "left")])
def test_the_word_front_stands_over_its_arrows_tail_and_runs_the_way_it_points(
    tip: float, tail: float, align: str
) -> None:
    """At full size: 2.4 mm over the tail, whose height is 30."""
    _, figures = cut("hub_plate")
    arrow = MarkLine((tip, 30.0), (tail, 30.0), TO_THE_FRONT)
    piece = CutPiece("", "", Profile(Outline(-50.0, 50.0, -50.0, 50.0), (), (arrow,)), 10.0, "")
    scale, view = piece_view(piece, figures, 300.0, 300.0)
    (front,) = (item for item in view.items if isinstance(item, PaperWords) and item.text == "front")
    assert scale == 1.0 and (front.at, front.align) == ((tail, pytest.approx(32.4)), align)
