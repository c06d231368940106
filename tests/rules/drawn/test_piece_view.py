"""What the words on a cut piece's drawing speak of: each one's leader line begins on that, by hand from one sheet."""

from math import dist, sqrt
from typing import Any

import pytest

from rules.drawn.cut_pieces import CutPiece, cut_pieces
from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.shapes import PaperWords, Stroke
from rules.drawn.piece_view import piece_view
from rules.measure.outline import Point
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
