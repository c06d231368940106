"""The digest that tells prints apart: it changes with every answer, and with nothing else."""

import copy

import pytest

from rules.sheet import read_sheet
from rules.shop.digest import sheet_digest
from sample_sheets import document


def of(sheet: dict[str, object]) -> str:
    return sheet_digest(read_sheet(sheet))


@pytest.mark.parametrize(
    ("table", "key", "entry"), [("plate", "width", "5 1/64 in"), ("job", "notes", "other"), ("hub", "mount_bolts", 5)]
)
def test_it_changes_with_an_answer(table: str, key: str, entry: object) -> None:
    sheet = document("dune_wren_finished")
    changed = copy.deepcopy(sheet)
    changed[table][key] = entry
    assert of(sheet) != of(changed)


def test_it_changes_with_title_and_units_and_a_missing_answer() -> None:
    sheet = document("dune_wren_finished")
    without = copy.deepcopy(sheet)
    del without["plate"]["bore"]
    assert len({of(sheet), of({**sheet, "title": "other"}), of({**sheet, "units": "metric"}), of(without)}) == 4


def test_no_text_in_one_answer_reads_as_two_answers() -> None:
    one, other = document("dune_wren_finished"), document("dune_wren_finished")
    one["job"] |= {"notes": "x", "rule_book": "y"}
    other["job"]["notes"] = "x\njob.rule_book = y"
    del other["job"]["rule_book"]
    assert of(one) != of(other)
    assert of({**one, "title": "a\nNone"}) != of({**one, "title": "a"})


def test_it_changes_with_the_last_letter_of_a_long_answer() -> None:
    places = "1 at 3 in; 4:30 at 2.9 in; 8 at 3 in; 10:30 at 2.9 in"
    one, other = document("scree_ox_strength"), document("scree_ox_strength")
    one["hub"]["mount_places"], other["hub"]["mount_places"] = places, places.replace("10:30 at 2.9", "10:30 at 2.8")
    assert of(one) != of(other)


def test_it_changes_with_what_was_confirmed() -> None:
    """A confirmed answer is asked about no more, so that the papers differ."""
    sheet = document("scree_ox_strength")
    less = copy.deepcopy(sheet)
    del less["confirmed"]["plate.thickness"]
    assert of(sheet) != of(less)


def test_ticks_warnings_and_the_order_of_tables_do_not_change_it() -> None:
    sheet = document("dune_wren_finished")
    marked = {**sheet, "checklist": [{"id": "x", "left": True}], "warning": [{"check": "y"}]}
    turned = dict(reversed(list(sheet.items())))
    assert of(sheet) == of(marked) == of(turned)
    assert len(of(sheet)) == 8
