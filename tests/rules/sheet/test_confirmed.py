"""Unusual answers, the builder's yes, and where both are shown."""

from collections.abc import Callable, Mapping
from typing import Any

import pytest

from rules.judging.judge import Judged
from rules.judging.questions import beside
from rules.judging.report import as_data
from rules.measure.quantity import KINDS
from rules.sheet import FIELDS, read_sheet
from rules.shop.cautions import cautions
from sample_sheets import document as sample
from tests.support.judging import judged_document

Document = Callable[[Mapping[str, object]], dict[str, Any]]
JudgedWith = Callable[[Mapping[str, object]], Judged]
ODD = {"wheel.pad_thickness": "30 mm", "hub.stud_length": "63 mm"}
"""30 mm of metal at the stud hole is outside 8 to 20 mm; the stud is longer by as much."""


def test_every_number_has_a_usual_range_within_what_is_taken(subtests: pytest.Subtests) -> None:
    for name, asked in FIELDS.items():
        with subtests.test(name):
            if asked.kind in KINDS or asked.kind == "count":
                assert asked.usual is not None and asked.least is not None and asked.most is not None
                assert asked.least <= asked.usual[0] < asked.usual[1] <= asked.most
            else:
                assert asked.usual is None


def test_the_limits_of_what_is_usual_are_usual(document: Document) -> None:
    for entry, unusual in (("8 mm", False), ("7.9 mm", True), ("20 mm", False), ("20.1 mm", True)):
        sheet = read_sheet(document({"wheel.pad_thickness": entry}))
        assert (sheet.unusual == ("wheel.pad_thickness",)) is unusual


@pytest.mark.parametrize(
    ("yes", "counts"),
    [
        ("30 mm", True),
        ("3 cm", True),
        (30, True),
        ("30.1 mm", False),
        ("30 in", False),
        ("thick", False),
        (True, False),
    ],
)
def test_a_yes_counts_for_the_answer_it_was_given_for(document: Document, yes: object, counts: bool) -> None:
    sheet = read_sheet({**document(ODD), "confirmed": {"wheel.pad_thickness": yes}})
    assert (sheet.confirmed == {"wheel.pad_thickness"}) is counts
    assert (sheet.unusual == ()) is counts
    assert not sheet.faults and not sheet.unknown


def test_a_bare_yes_goes_with_the_units_of_the_sheet(document: Document) -> None:
    changed = {**document({"wheel.pad_thickness": "30 mm"}), "confirmed": {"wheel.pad_thickness": 30}, "units": "inch"}
    assert read_sheet(changed).unusual == ("wheel.pad_thickness",)


def test_a_yes_to_what_is_not_asked_or_not_answered_confirms_nothing(document: Document) -> None:
    held = {"wheel.nonsense": "1 mm", "wheel": {"width": "215 mm"}, "brakes.pad_height": "50 mm"}
    sheet = read_sheet({**document({}), "confirmed": held})
    assert not sheet.confirmed and not sheet.faults


def test_confirmed_must_be_a_table(document: Document) -> None:
    [fault] = read_sheet({**document({}), "confirmed": "all of it"}).faults
    assert fault.where == "confirmed" and "table" in fault.text


def test_an_unusual_answer_keeps_the_sheet_at_watch_until_it_is_confirmed(document: Document) -> None:
    from rules.judging.judge import judge

    asked = judged_document(document(ODD))
    finding = next(found for found in asked.findings if found.check == "unusual-answers")
    assert asked.verdict == finding.verdict == "watch"
    assert "metal at the stud hole 30 mm" in finding.text and "8 mm" in finding.text and "20 mm" in finding.text
    yes = read_sheet({**document(ODD), "confirmed": {"wheel.pad_thickness": "30 mm"}})
    assert judge(yes, before=asked).verdict == judge(yes).verdict == "good"


def test_what_is_odd_beside_another_answer_is_asked_about_by_name(judged: JudgedWith) -> None:
    result = judged({"job.track": "1000 mm"})  # 2.6 times as long as wide; 1000 mm is below 1100 mm too
    # In round figures two lines are alike: spoke room and metal at the stud hole 12 mm, both housings' reach 22 mm. The caliper
    # reaches 16 mm further inboard, as either kind may.
    anyway = ("wheel.pad_thickness", "pivots.lower_radius", "caliper.kind")
    assert result.asks_about == ("job.track", "job.wheelbase", *anyway)
    assert judged({}).asks_about == anyway


def test_paper_says_what_is_unusual_and_what_was_confirmed(document: Document) -> None:

    told = {line.id: line.text for line in cautions(judged_document(document(ODD)))}
    assert "metal at the stud hole 30 mm" in told["caution.unusual"] and "caution.confirmed" not in told
    yes = {**document(ODD), "confirmed": {"wheel.pad_thickness": "30 mm"}}
    told = {line.id: line.text for line in cautions(judged_document(yes))}
    assert "metal at the stud hole 30 mm" in told["caution.confirmed"] and "caution.unusual" not in told


def test_the_report_names_both(judged: JudgedWith) -> None:
    report = as_data(judged(ODD), "x.toml")
    assert report["unusual"] == ["wheel.pad_thickness"] and report["confirmed"] == []


@pytest.mark.parametrize(
    "name", ["dune_wren_moving", "fell_badger_finished_metric", "pond_newt_finished", "scree_ox_strength"]
)
def test_nothing_on_a_sound_sample_is_unusual(name: str) -> None:
    assert read_sheet(sample(name)).unusual == ()


ODD_TIE = {"hub.body_diameter": "60 mm", "hub.body_length": "80 mm"}
"""The pilot is 107.8 mm: a body of 0.56 of it is odd beside it, and 60 mm by itself is not."""


@pytest.mark.parametrize(
    ("changes", "stands"),
    [({}, True), ({"hub.pilot_diameter": "107.7 mm"}, False), ({"hub.body_diameter": "61 mm"}, False)],
)
def test_a_yes_covers_what_was_odd_together_and_goes_when_either_changes(
    document: Document, changes: dict[str, object], stands: bool
) -> None:
    yes = {"hub.body_diameter": "60 mm", "hub.body_diameter beside hub.pilot_diameter": "107.8 mm"}
    sheet = read_sheet({**document({**ODD_TIE, **changes}), "confirmed": yes})
    assert (sheet.confirmed == {"hub.body_diameter"}) is stands


def test_what_an_answer_was_confirmed_beside_confirms_nothing_by_itself(document: Document) -> None:
    yes = {"hub.body_diameter beside hub.pilot_diameter": "107.8 mm"}
    assert read_sheet({**document(ODD_TIE), "confirmed": yes}).confirmed == frozenset()


def test_a_yes_names_the_other_answers_of_what_was_odd(judged: JudgedWith) -> None:
    result = judged(ODD_TIE)
    assert "hub.body_diameter" in result.asks_about
    assert beside("hub.body_diameter", result) == ("hub.pilot_diameter",)
    alike = judged({"wheel.spoke_room": "12 mm", "wheel.pad_thickness": "12 mm"})  # asked of every line: by itself
    assert beside("wheel.pad_thickness", alike) == ()
