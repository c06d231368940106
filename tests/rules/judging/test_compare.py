"""Two sheets side by side: entries that differ, figures that moved, verdicts that changed."""

import pytest

from rules.judging.compare import compare
from tests.support.base_sheet import Changes, changed
from tests.support.judging import judged_document


def compared(one: Changes, other: Changes):  # type: ignore[no-untyped-def]
    return compare(*(judged_document(changed(changes)) for changes in (one, other)))


def test_a_sheet_and_itself_differ_in_nothing() -> None:
    found = compared({}, {})
    assert found.same and (found.entries, found.figures, found.verdicts) == ((), (), ())


def test_the_same_written_otherwise_is_no_difference() -> None:
    # 254 mm is 10 in.
    assert compared({"pivots.spacing": "254 mm"}, {"pivots.spacing": "10 in"}).same
    assert compared({"pivots.spacing": "254 mm"}, {"pivots.spacing": 254}).same


def test_what_differs_is_told_with_the_figures_it_moves_and_the_verdicts() -> None:
    # hub height offset = ground offset + 400 tan 10 deg: 60 mm more of the one is 60 mm more of the other; off the road,
    # 80 is common practice under wide tyres, so that 85 is a watch.
    found = compared({}, {"pivots.ground_offset": "85 mm"})
    assert [(one.name, one.one, one.other) for one in found.entries] == [("pivots.ground_offset", "25 mm", "85 mm")]
    moved = {one.name: one for one in found.figures}
    assert moved["hub_height_offset"].change == pytest.approx(60.0) and moved["hub_height_offset"].unit == "mm"
    assert "axis_tilt" not in moved  # it rests on the angles alone
    turned = {one.key: one for one in found.verdicts}["ground-offset-usual"]
    assert (turned.one, turned.other) == ("good", "watch") and turned.other_text


def test_an_entry_only_one_sheet_has_stands_against_nothing() -> None:
    found = compared({"pivots.swap_spacing": None}, {})
    assert [(one.name, one.one, one.other) for one in found.entries] == [("pivots.swap_spacing", "", "260 mm")]


def test_what_cannot_be_read_differs_by_what_stands_there() -> None:
    (entry,) = compared({}, {"pivots.castor": "steep"}).entries
    assert (entry.name, entry.one, entry.other) == ("pivots.castor", "6 deg", "steep")
    assert compared({"pivots.castor": "steep"}, {"pivots.castor": "steep"}).same


def test_figures_of_sheets_in_other_units_are_told_in_the_units_of_the_first() -> None:
    found = compared({}, {"units": "inch", "pivots.ground_offset": "70 mm"})
    assert all(" in" not in one.other for one in found.figures)


def test_a_figure_that_reads_alike_on_both_has_not_moved() -> None:
    """Another half a thousandth of a millimetre of castor's lever shows in no figure of four digits."""
    found = compared({}, {"pivots.axis_ahead": "0.0005 mm"})
    assert [one.name for one in found.entries] == ["pivots.axis_ahead"]
    assert all(one.one != one.other for one in found.figures)
