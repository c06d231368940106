"""Part sheets on paper: the parts list, and a page for each piece to cut."""

import re

import pytest

from rules.drawn.cut_pieces import cut_pieces
from sample_sheets import document as whole
from tests.support.paper_reading import document, judged, letter_sizes, pages, squeezed
from wizard.paper.part_sheets import part_sheets_pdf


def test_the_list_first_then_a_page_for_each_piece() -> None:
    sheet = judged(whole("scree_ox_strength"))
    found = pages(part_sheets_pdf(sheet))
    pieces = cut_pieces(sheet)
    assert len(found) == 1 + len(pieces)
    for number, (piece, words) in enumerate(zip(pieces, found[1:], strict=True), 1):
        assert f"Part sheet {number}: {piece.title}" in words
        assert f"Make {piece.make}." in words and "Thickness" in words and "Tolerances" in words
        for left_out in piece.profile.left_out:
            assert squeezed(left_out) in squeezed(words)
    for piece in pieces:
        assert piece.title in found[0]


def test_bolts_have_thread_grip_grade_head_and_a_blank_for_torque() -> None:
    """Ball 1.1 in, 0.45 in free on each side, two lugs of 1/2 in: grip 3 in. Plate 7/8, mounting flange 1/2:
    grip 1 3/8 in. On the sample with bolts."""
    (first, *_) = pages(part_sheets_pdf(judged(whole("scree_ox_strength"))))
    said = squeezed(first)
    for wanted in ("3/4-16, grip 3 in, then washer, nut, two threads", "grade 8", "points down: head above, nut below",
                   "9/16-18, grip 1 3/8 in, then washer, nut, two threads", "Torque ________"):  # fmt: skip
        assert squeezed(wanted) in said
    assert said.count(squeezed("Torque ________")) == 5


@pytest.mark.parametrize("name", ["dune_wren_half_done", "fell_badger_finished_metric"])
def test_what_is_not_on_the_sheet_is_a_blank_and_no_page(name: str) -> None:
    found = pages(part_sheets_pdf(judged(document(name, plate={}))))
    assert "No piece is drawn yet" in found[0] and len(found) == 1
    assert "thread ________, grip ________" in found[0]


def test_letters_are_large_enough() -> None:
    assert min(letter_sizes(part_sheets_pdf(judged(document())))) >= 10


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("bolts", ["5", "6"])
def test_a_plate_with_everything_in_it_is_one_page(paper: str, bolts: str) -> None:
    """Slots for lugs and channel, two lightening holes, narrowed ends, five or six bolts, and more stops than one can tell."""
    sheet = whole("wrong_plate_cut_too_light")
    sheet["hub"] = {key: entry for key, entry in sheet["hub"].items() if key not in ("mount_width", "mount_height")}
    sheet["hub"] |= {"mount_bolts": int(bolts), "mount_circle": "6 in"}
    sheet["plate"]["tab_length"] = "1 in"
    result = judged(sheet)
    found = [words for words in pages(part_sheets_pdf(result, paper)) if "Part sheet 1: Hub plate" in words]
    assert len(found) == 1 and "DO NOT CUT." in found[0]
    for words in ("lightening hole", "arc of the edge", "S8", "P2", "Measured L"):
        assert words in found[0]
    assert found[0].count("hub bolt hole") == int(bolts)


def test_the_hole_table_has_uneven_mount_places_from_both_edges_and_the_wheel_centre() -> None:
    """By hand, mm: 4 at 55 is 55 sin 120 = 47.63 to the front, which is to the left, and 27.5 down. The plate's left edge is 63.5
    and its lower one 279.4 - 140 = 139.4 from the wheel centre: 15.87 and 111.9. 7:30 at 62 is 43.84 to the right and down:
    107.34 and 95.56. 12 at 60 stands on the upright line: 63.5 and 199.4."""
    sheet = whole("dune_wren_finished")
    sheet["units"] = "metric"
    sheet["plate"] |= {"width": "127 mm", "height": "279.4 mm", "spindle_from_top": "140 mm",
                       "spindle_from_front": "63.5 mm", "hole_diameter": "13 mm"}  # fmt: skip
    sheet["hub"] = {key: entry for key, entry in sheet["hub"].items() if not key.startswith("mount_")}
    sheet["hub"] |= {"mount_bolts": 3, "mount_places": "12 at 60 mm; 4 at 55 mm; 7:30 at 62 mm"}
    said = squeezed(next(page for page in pages(part_sheets_pdf(judged(sheet))) if "Part sheet 1: Hub plate" in page))
    for row in ("ø 13 63.5 199.4 on the line 60 up", "ø 13 15.87 111.9 47.63 left 27.5 down",
                "ø 13 107.3 95.56 43.84 right 43.84 down"):  # fmt: skip
        assert squeezed(row) in said


def test_a_wheel_is_asked_for_in_inches_on_a_metric_sheet_too() -> None:
    """17 in by 7.5 in as it is stamped; 431.8 mm by 190.5 mm is nothing that a counter sells."""
    said = " ".join(pages(part_sheets_pdf(judged(whole("fell_badger_finished_metric"))))[0].split())
    assert "17 in x 7 1/2 in" in said and "431.8" not in said


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize(("name", "scale"), [("scree_ox_strength", "1:3"), ("dune_wren_finished", "1:2.5")])
def test_the_plate_is_drawn_as_large_as_the_page_allows(name: str, scale: str, paper: str) -> None:
    """Letter on its side leaves 216 - 2 x 13 = 190 mm less head, foot and three lines. 14 3/8 in at 1:3 is 122 mm and 11 3/4 in
    at 1:2.5 119 mm, with two dimension lines of some 11 mm; at 1:2.5 the first would be 146 mm, and the second at 1:2 149."""
    (words,) = (page for page in pages(part_sheets_pdf(judged(whole(name)), paper)) if "Part sheet 1:" in page)
    assert f"Drawn reduced {scale};" in words
    for place in ("P1", "P2", "hub bolt hole", "Measured L", "mirror image"):
        assert place in words


def test_on_small_paper_the_plate_stands_above_its_table_and_large_enough_to_read() -> None:
    """210 x 210 mm: 186 mm within the margins, of which the table takes some 117; the plate is 5 x 11 3/4 in."""
    found = pages(part_sheets_pdf(judged(whole("dune_wren_finished")), "210x210 mm"))
    (drawn,) = [words for words in found if "HUB PLATE" in words]
    scale = re.search(r"Drawn reduced 1:(\d+)", drawn)
    assert scale and int(scale[1]) <= 5
    assert any("Holes and marks" in words for words in found)
