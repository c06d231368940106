"""How far each page is, and where a sheet is opened."""

import tomllib
from typing import Any

from rules.judging.judge import Judged, judge
from rules.sheet import FIELDS, read_sheet
from sample_sheets import sample
from tests.support.judging import judged_document
from wizard.desk.pages import ASKED, PAGES, REVIEW, first_unfinished, page_of, page_state


def document(name: str = "dune_wren_finished") -> dict[str, Any]:
    return tomllib.loads(sample(name).read_text("utf-8"))


def judged(changed: dict[str, Any]) -> Judged:
    return judged_document(changed)


def test_every_field_is_asked_on_one_page() -> None:
    asked = [name for page in PAGES for name in page.fields]
    assert sorted(asked) == sorted([*FIELDS, "title", "units"])
    assert set(ASKED) == set(asked)
    assert page_of("caliper.kind") == page_of("rotor.style")


def test_a_finished_sheet_opens_at_the_review() -> None:
    assert first_unfinished(judged(document())) == REVIEW


def test_a_half_done_sheet_opens_at_the_first_page_with_something_missing() -> None:
    half = document("dune_wren_half_done")
    assert PAGES[first_unfinished(judged(half))].key == "rotor"
    del half["tyre"]["smallest"]
    assert PAGES[first_unfinished(judged(half))].key == "tyre"


def test_an_entry_that_cannot_be_read_opens_its_page_even_where_it_may_stay_empty() -> None:
    wrong = document()
    wrong["wheel"]["price_each"] = "cheap"
    assert PAGES[first_unfinished(judged(wrong))].key == "papers"


def test_states_in_words_most_urgent_first() -> None:
    page = next(page for page in PAGES if page.key == "wheel")
    wrong = document()
    assert page_state(page, judged(wrong)).words == "done"
    del wrong["wheel"]["width"]
    assert page_state(page, judged(wrong)).words == "1 left"
    wrong["wheel"]["offset"], wrong["wheel"]["backspacing"] = "4 in", "5 in"
    wrong["wheel"]["load_rating"] = "300 lb"
    assert page_state(page, judged(wrong)).words == "stop"
    assert page_state(page, judged(wrong)).more_words == "stop, 1 left"
    wrong["wheel"]["width"] = "wide"
    assert page_state(page, judged(wrong)).words == "1 to fix"


def test_a_page_that_may_be_left_out_says_what_is_left_once_it_is_asked_for() -> None:
    arms = next(page for page in PAGES if page.key == "arms")
    begun = document()
    assert page_state(arms, judged(begun)).words == "optional"
    begun["arms"] = {"lower_front_from_centre": "12 in", "bump_travel": "4 in"}
    # lower height; upper place and height; droop
    assert page_state(arms, judged(begun)).words == "4 left"
    assert PAGES[first_unfinished(judged(begun))].key == "arms"


def test_on_a_new_sheet_nothing_is_left_of_what_may_be_left_out() -> None:
    states = {page.title: page_state(page, judged({"sheet_version": 2, "units": "inch"})).words for page in PAGES}
    begun = {"Job", "Tyre", "Wheel", "Rotor and caliper", "Hub", "Pivots"}
    assert {title for title, words in states.items() if words != "optional"} == begun


def test_a_page_with_a_check_still_being_worked_out_does_not_read_done() -> None:
    moving = document("dune_wren_moving")
    before = judged(moving)
    moving["pivots"]["spacing"] = "8.65 in"
    arms = PAGES[page_of("arms.bump_travel")]
    light = page_state(arms, judge(read_sheet(moving), before=before, light=True))
    assert light.words in ("working", "stop")
    assert light.verdict != "good"
    assert page_state(arms, judged(moving)).words != "working"
