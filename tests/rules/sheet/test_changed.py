"""Entries put in a read sheet are what reading the changed document gives."""

import pytest

from rules.measure.quantity import EntryError
from rules.sheet import read_sheet
from rules.sheet.changed import with_entries
from tests.support.base_sheet import changed


def test_it_is_as_if_the_document_had_been_read() -> None:
    entries = {"pivots.castor": "9 deg", "pivots.axis_ahead": "5 mm", "wheel.offset": "1/2 in"}
    assert with_entries(read_sheet(changed({})), entries) == read_sheet(changed(dict(entries)))


def test_a_fault_goes_with_the_entry_it_was_of_and_no_other() -> None:
    broken = changed({"pivots.castor": "steep", "pivots.spacing": "wide"})
    mended = with_entries(read_sheet(broken), {"pivots.castor": "6 deg"})
    assert [fault.where for fault in mended.faults] == ["pivots.spacing"]
    assert "pivots.castor" in mended.answers


def test_a_yes_goes_with_the_answer_it_was_for() -> None:
    sheet = changed({"pivots.castor": "20 deg"})
    sheet["confirmed"] = {"pivots.castor": "20 deg"}
    read = read_sheet(sheet)
    assert read.unusual == () and "pivots.castor" in read.confirmed
    assert with_entries(read, {"pivots.castor": "21 deg"}).unusual == ("pivots.castor",)
    assert "pivots.castor" in with_entries(read, {"pivots.spacing": "261 mm"}).confirmed


def test_an_entry_that_cannot_be_read_is_refused() -> None:
    with pytest.raises(EntryError):
        with_entries(read_sheet(changed({})), {"pivots.castor": "steep"})


def test_a_yes_said_beside_another_answer_goes_when_that_changes_and_comes_back_with_it() -> None:
    """As the file reads it: confirmed beside a 215 mm wheel, an overall width is asked about beside another."""
    document = changed({})
    document["confirmed"] = {"wheel.overall_width": "240 mm", "wheel.overall_width beside wheel.width": "215 mm"}
    sheet = read_sheet(document)
    other = with_entries(sheet, {"wheel.width": "220 mm"})
    assert "wheel.overall_width" in sheet.confirmed and "wheel.overall_width" not in other.confirmed
    assert "wheel.overall_width" in with_entries(other, {"wheel.width": "215 mm"}).confirmed
