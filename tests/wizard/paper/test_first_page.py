"""The page that opens the folder."""

import pytest

from rules.shop.holds import HOLDS
from sample_sheets import document as sample
from tests.support.paper_reading import document, judged, pages, squeezed
from wizard.paper.first_page import first_page_pdf
from wizard.paper.folder import _files

NAMES = [
    "welding_sheet.pdf",
    "checklist_helper.pdf",
    "drawing_left.pdf",
    "checklist_builder.pdf",
    "hub_plate_left_in.dxf",
]


@pytest.mark.parametrize("name", ["dune_wren_finished", "scree_ox_strength", "dune_wren_half_done"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_it_is_one_page_and_names_what_is_there_and_what_is_signed(name: str, paper: str) -> None:
    (words,) = pages(first_page_pdf(judged(document(name)), NAMES, paper))
    for wanted in (*NAMES, "Welder", "Helper", "Cutter", "What is in this folder", "written 2026-03-04"):
        assert wanted in words
    for hold in HOLDS:
        assert squeezed(hold.text) in squeezed(words) and hold.signed_on in words
    assert "motion_sheet.pdf" not in words, "only what is there"


@pytest.mark.parametrize("name", ["wrong_longer_shocks", "wrong_figures_all_over", "wrong_cannot_be_put_together"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_it_stays_one_page_however_much_is_wrong(name: str, paper: str) -> None:
    sheet = sample(name)
    files = dict.fromkeys(("part_sheets.pdf", "fixture.pdf", "coping.pdf", "motion_sheet.pdf", *NAMES[:-1]))
    assert len(pages(first_page_pdf(judged(sheet), [*files], paper, cut_left_out=True))) == 1
    cut = ("hub_plate_left", "hub_plate_right", "upper_lug", "lower_lug", "upper_gusset", "lower_gusset", "beam_side",
           "beam_back", "steering_arm", "caliper_bracket", "fixture_base", "fixture_post_1", "fixture_post_2",
           "fixture_foot")  # fmt: skip
    every = [*files, *(f"{piece}_in.dxf" for piece in cut)]
    assert len(pages(first_page_pdf(judged(sheet), every, paper))) == 1


def test_a_stop_says_that_nothing_is_to_be_cut() -> None:
    wrong = document()
    wrong["caliper"] = {**wrong["caliper"], "reach_above_rotor": "3 in"}
    (words,) = pages(first_page_pdf(judged(wrong), NAMES[:-1], cut_left_out=True))
    assert "DO NOT CUT. The caliper hits the wheel barrel" in words
    assert "Cut nothing. Cut files are left out" in words


def test_cut_files_of_a_stop_that_were_asked_for_are_not_said_to_be_free_to_cut() -> None:
    wrong = document()
    wrong["caliper"] = {**wrong["caliper"], "reach_above_rotor": "3 in"}
    (words,) = pages(first_page_pdf(judged(wrong), NAMES))
    assert "Cut nothing before what stands in the frame above is settled" in words
    assert "keeps it from being cut" not in words


def test_estimates_and_missing_answers_are_named() -> None:
    sheet = document()
    del sheet["wheel"]["overall_width"]
    (words,) = pages(first_page_pdf(judged(sheet), NAMES))
    assert "Estimates, to be measured before anything that rests on them is cut: Overall width" in words
    del sheet["pivots"]["castor"]
    (words,) = pages(first_page_pdf(judged(sheet), NAMES))
    assert "Answers that are missing: Caster" in words


def test_every_paper_of_a_folder_has_its_row() -> None:
    sheet = document("scree_ox_strength")
    result = judged(sheet)
    files = dict(_files(result, sheet, "letter", as_is=False))
    (words,) = pages(first_page_pdf(result, [*files]))
    for name in files:
        if name.endswith((".pdf", ".dxf")):
            assert squeezed(name) in squeezed(words)


def test_a_title_longer_than_the_header_stands_whole_on_it() -> None:
    sheet = sample("dune_wren_finished")
    sheet["title"] = (
        "Dune Wren, front uprights as drawn again after the bearing of the donor hub turned out to be another one " * 2
    )
    (words,) = pages(first_page_pdf(judged(sheet), NAMES))
    assert squeezed(sheet["title"]) in squeezed(words)


def test_an_unfinished_sheet_with_cut_files_says_not_to_cut_them_yet() -> None:
    """A title with an invisible letter in it: all else is answered, so its cut files stand in the folder."""
    sheet = judged(sample("scree_ox_strength") | {"title": "Scree \u202eOx"})
    assert sheet.verdict == "unfinished"
    said = squeezed(
        pages(first_page_pdf(sheet, ["hub_plate_left_in.dxf", "general_arrangement.pdf", "fixture.pdf"]))[0]
    )
    assert squeezed("Cut nothing before what stands in the frame above is settled") in said
    assert squeezed("Nothing on this sheet keeps it from being cut") not in said
