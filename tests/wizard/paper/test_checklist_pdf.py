"""The checklist as PDF, read back with another library."""

from typing import Any

import pypdfium2
import pytest

from rules.measure.quantity import EntryError
from rules.shop.checklist import checklist
from sample_sheets import document as sample_document
from tests.support.paper_reading import document, is_black_and_white, judged, letter_sizes, on_paper, pages, squeezed
from wizard.paper.checklist_pdf import checklist_pdf
from wizard.paper.motion_sheet import motion_sheet_pdf
from wizard.paper.welding_sheet import welding_sheet_pdf


def printed(sheet: dict[str, Any], paper: str = "a4") -> bytes:
    return checklist_pdf(judged(sheet), sheet, paper)


@pytest.mark.parametrize(
    "name", ["dune_wren_finished", "fell_badger_finished_metric", "dune_wren_half_done", "scree_ox_strength"]
)
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_every_line_is_printed_with_its_target_and_tolerance(name: str, paper: str) -> None:
    sheet = sample_document(name)
    car, whole = judged(sheet), squeezed(" ".join(pages(printed(sheet, paper))))
    for line in checklist(car):
        for words in (line.text, line.target, line.tolerance):
            # A row that runs into a footer never happens: rows stay whole.
            assert squeezed(on_paper(words, car)) in whole, line.id


def test_title_revision_and_number_stand_on_every_page() -> None:
    found = pages(printed(document()))
    assert 4 <= len(found) <= 6
    for number, words in enumerate(found, 1):
        assert "Dune Wren, front uprights" in words
        assert "revision C" in words
        assert f"page {number} of {len(found)}" in words


def test_an_unknown_title_and_revision_are_blanks() -> None:
    words = pages(printed(document(title="", plate={})))[1]
    assert "Sheet title ____" in words
    assert "revision ____" in words


@pytest.mark.parametrize(("paper", "width", "height"), [("letter", 612.0, 792.0), ("a4", 595.28, 841.89)])
def test_pages_are_of_the_paper_asked_for(paper: str, width: float, height: float) -> None:
    for page in pypdfium2.PdfDocument(printed(document(), paper)):
        assert page.get_size() == pytest.approx((width, height), abs=0.02)


def test_an_unreadable_paper_is_refused() -> None:
    with pytest.raises(EntryError, match="not a paper"):
        printed(document(), "napkin")


def test_letters_are_ten_points_or_more_and_black() -> None:
    data = printed(document())
    assert min(letter_sizes(data)) >= 9.99
    assert is_black_and_white(data)


def test_a_stop_stands_with_its_reason_on_each_page_and_a_good_sheet_has_none() -> None:
    for words in pages(printed(document("wrong_rotor_too_big_for_wheel"))):
        assert "DO NOT CUT." in words
        assert "The caliper hits the wheel barrel" in words
    assert "DO NOT CUT" not in " ".join(pages(printed(document())))


def test_many_stops_are_told_in_short_so_that_a_page_is_still_a_page() -> None:
    """The first in the words of its check on each page, three on the first, none by its title; all of them in the cautions."""
    sheet = document()
    sheet["plate"] = {**sheet["plate"], "thickness": "1 in", "hole_diameter": "9 mm", "width": "41 mm",
                      "spindle_from_front": "20 mm"}  # fmt: skip
    result = judged(sheet)
    stops = [finding for finding in result.findings if finding.verdict == "stop"]
    assert len(stops) == 5
    found = pages(checklist_pdf(result, sheet, "letter"))
    for words in found:
        assert "DO NOT CUT. Plate width, fore and aft is 1.614 in" in words
    assert "And 2 more: the checklist has each." in found[0]
    assert all("And 4 more: page 1 and the checklist have more." in words for words in found[1:])
    for stop in stops:
        assert squeezed(on_paper(stop.text, result)) in squeezed(" ".join(found))
        assert squeezed(f"DO NOT CUT. {stop.title}") not in squeezed(" ".join(found))


def test_an_unfinished_sheet_says_so_on_each_page() -> None:
    assert all("NOT FINISHED" in words for words in pages(printed(document("dune_wren_half_done"))))


def test_ticks_and_results_are_printed_in_place() -> None:
    asked = next(line for line in checklist(judged(document())) if line.id == "hold.pivot-spacing")
    entry = {"id": asked.id, "target": asked.target, "left": True, "right_measured": "10 17/64"}
    blank, marked = printed(document()), printed(document(checklist=[entry]))
    assert "10 17/64" in " ".join(pages(marked))
    assert "10 17/64" not in " ".join(pages(blank))
    assert _ink(marked) > _ink(blank)


def _ink(data: bytes) -> int:
    """How many straight strokes are drawn: a tick is two."""
    import pypdfium2.raw as pdfium

    return sum(len(list(page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH]))) for page in pypdfium2.PdfDocument(data))


def test_a_result_against_another_figure_is_marked_as_changed() -> None:
    entry = {"id": "hold.pivot-spacing", "target": "9 in", "left_measured": "9"}
    words = " ".join(pages(printed(document(checklist=[entry]))))
    assert "CHANGED since it was marked: check again. It was 9 in" in words


def test_the_welders_part_is_shorter() -> None:
    sheet = document()
    words = " ".join(pages(checklist_pdf(judged(sheet), sheet, "a4", "welder")))
    assert "Layout from the hub face" in words
    assert "First drive" not in words


@pytest.mark.parametrize(
    "title",
    ["9⅜ in car “x” – 10°", "漢字 \U0001f600", "a" * 3000, "word " * 2000, "(\\) Tj ET", "\x1b[31m", "%PDF", ""],
)
def test_hostile_titles_print(title: str) -> None:
    found = pages(printed(document(title=title)))
    assert len(found) <= 8
    assert all("Shop checklist" in words for words in found)


def test_fractions_and_degrees_are_held_by_the_typeface() -> None:
    assert "9 3/8 in car, 10° ± 1" in pages(printed(document(title="9⅜ in car, 10° ± 1")))[0]


def test_endless_marks_in_the_file_stay_on_the_page() -> None:
    entry = {"id": "gone", "text": "t" * 50000, "left": True, "left_measured": "m" * 50000}
    data = printed(document(checklist=[entry]))
    assert len(pages(data)) <= 8


def test_an_empty_sheet_prints() -> None:
    sheet: dict[str, Any] = {}
    assert "NOT FINISHED" in pages(printed(sheet))[0]


def test_the_same_sheet_gives_the_same_bytes() -> None:
    assert printed(document()) == printed(document())


def test_the_builders_list_has_no_figure_that_the_welding_sheet_the_motion_sheet_or_the_helpers_list_has() -> None:
    """On this sample: lower pivot 5.478 in from the hub face, 9.9 in apart, 10.5 deg; a lower arm's leg of 21.501 in."""
    sheet = sample_document("scree_ox_strength")
    result = judged(sheet)
    builders, helpers = (
        " ".join(pages(checklist_pdf(result, sheet, "letter", part))) for part in ("builder", "helper")
    )
    welders, aligners = (" ".join(pages(made)) for made in (welding_sheet_pdf(result, sheet), motion_sheet_pdf(result)))
    for figure in ("5.478 in", "7.273 in", "4.783 in", "0.507 in", "9.9 in", "10.5 deg", "8.4 in inboard"):
        assert figure not in builders and figure in welders, figure
    for figure in ("17.627 in", "14.877 in", "21.501 in"):
        assert figure not in builders and figure in aligners, figure
    for words in ("Caliper to barrel", "HOLD 5", "First drive"):
        assert words not in builders and words in helpers, words
    for words in ("Parts in hand", "Pilot diameter", "Settle before cutting", "2.228 in", "True lean from plumb",
                  "Written in by the builder"):  # fmt: skip
        assert words in builders and words not in helpers, words


def test_every_line_is_on_one_of_the_folders_lists_or_sheets() -> None:
    """Between them the builder's and the helper's list hold every section, whatever else they leave to a sheet."""
    sheet = document()
    result = judged(sheet)
    either = " ".join(
        words for part in ("builder", "helper") for words in pages(checklist_pdf(result, sheet, "letter", part))
    )
    for section in {line.section for line in checklist(result)}:
        assert section in either, section


def test_what_somebody_wrote_is_on_the_builders_list_though_another_paper_has_the_figure() -> None:
    sheet = sample_document("scree_ox_strength")
    sheet["checklist"] = [
        {"id": "layout.pivot-spacing", "left": True, "left_measured": "9 29/32", "target": "9 29/32 in (9.9 in)"}
    ]
    words = " ".join(pages(checklist_pdf(judged(sheet), sheet, "letter", "builder")))
    assert "Pivot spacing along axis" in words and "9.9 in" in words


def test_a_figure_that_is_missing_stands_on_the_builders_list_with_what_it_waits_for() -> None:
    sheet = document()
    del sheet["rotor"]["hat_thickness"]
    words = squeezed(" ".join(pages(checklist_pdf(judged(sheet), sheet, "letter", "builder"))))
    assert squeezed("Lower pivot centre from hub face") in words.replace("center", "centre")
    assert squeezed("not worked out: needs hat thickness") in words
