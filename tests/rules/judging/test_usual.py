"""The usual range of a question comes from the check that judges it alone."""

from collections.abc import Callable
from math import degrees
from typing import Any, get_args

import pytest

from rules.graph.asking import AskedField
from rules.graph.bands import AtLeast, AtMost, Between, ByChoice, Limits
from rules.graph.declare import check
from rules.graph.engine import Graph
from rules.graph.results import Judgement
from rules.judging.judge import Judged
from rules.judging.questions import questions
from rules.judging.usual import usual, usual_range, usual_words
from rules.measure.quantity import Units
from rules.measure.units import Mm, Rad
from rules.sheet import FIELDS as ASKED
from rules.tables.load_multiples import Use

JudgedWith = Callable[[dict[str, object]], Judged]
FIELDS = {
    f"pivots.{key}": AskedField("pivots", key, key, kind, "Tape.")
    for key, kind in {"castor": "angle", "spacing": "length", "housing": "length", "kept": "yes or no"}.items()
}
CASTOR = Between("deg", 3.0, 8.0)


def planted(name: str, limits: Limits | None) -> Any:
    return check(name, step="pivots", title="x", limits=limits, good="x", source="x", grade="common practice")


@planted("castor", CASTOR)
def castor_alone(castor: Rad, kept: bool | None) -> Judgement:
    return Judgement("good", "")


@planted("both", AtLeast("mm", 3.0))
def both(spacing: Mm, housing: Mm | None) -> Judgement:
    return Judgement("good", "")


def test_the_limits_of_the_check_that_has_no_other_number_are_the_usual_range() -> None:
    assert usual("pivots.castor", Graph(FIELDS, [], [castor_alone, both])) == CASTOR


def test_a_field_judged_together_with_another_number_has_none_nor_has_one_that_is_not_judged() -> None:
    graph = Graph(FIELDS, [], [castor_alone, both])
    assert usual("pivots.spacing", graph) is usual("pivots.housing", graph) is usual("pivots.kept", graph) is None


@pytest.mark.parametrize(
    "limits",
    [None, Limits(other={"least": (3.0, "mm")}), AtMost("1", 3.0)],
    ids=["no limits", "figures only", "another unit"],
)
def test_limits_that_are_no_range_of_this_field_are_none(limits: Limits | None) -> None:
    @planted("alone", limits)
    def alone(spacing: Mm) -> Judgement:
        return Judgement("good", "")

    assert usual("pivots.spacing", Graph(FIELDS, [], [alone])) is None


def test_two_checks_that_disagree_leave_it_open_and_two_that_agree_do_not() -> None:
    def alone(name: str, limits: Limits) -> Any:
        @planted(name, limits)
        def judged(spacing: Mm) -> Judgement:
            return Judgement("good", "")

        return judged

    one, same, other = (
        alone("one", AtLeast("mm", 3.0)),
        alone("same", AtLeast("mm", 3.0)),
        alone("two", AtMost("mm", 9.0)),
    )
    assert usual("pivots.spacing", Graph(FIELDS, [], [one, same])) == AtLeast("mm", 3.0)
    assert usual("pivots.spacing", Graph(FIELDS, [], [one, other])) is None


def test_what_hangs_on_another_answer_is_as_that_one_has_it_and_narrow_without() -> None:
    by_use = ByChoice("deg", "job.use", {"road": Between("deg", 2.0, 8.0), "dunes": Between("deg", 4.0, 12.0)})
    graph = Graph(FIELDS, [], [planted("castor", by_use)(castor_alone)])
    bounds = {use: usual_range("pivots.castor", {"job.use": use}, graph) for use in ("road", "dunes", None)}
    assert [round(degrees(end), 6) for end in bounds["dunes"] or ()] == [4.0, 12.0]
    assert [round(degrees(end), 6) for end in bounds["road"] or ()] == [2.0, 8.0]
    assert [round(degrees(end), 6) for end in bounds[None] or ()] == [4.0, 8.0]


@pytest.mark.parametrize(("use", "most"), [("trail", 10), ("road", 10), ("dunes", 15), ("race", 15)])
def test_form_check_and_question_name_the_same_castor(judged: JudgedWith, use: str, most: int) -> None:
    sheet = judged({"job.use": use, "pivots.castor": "3 deg"})
    words = f"4 to {most} deg"
    assert usual_words("pivots.castor", "metric", sheet.sheet.answers) == words
    (told,) = (finding.text for finding in sheet.findings if finding.check == "castor-usual")
    assert f"{words} is usual for {use}" in told
    (asked,) = (finding.text for finding in sheet.findings if finding.check == "unusual-answers")
    assert f"(usual: 4 deg to {most} deg)" in asked
    assert questions(sheet)["pivots.castor"] == f"Unusual: 4 to {most} deg is usual."


def test_form_and_question_write_one_range_alike(judged: JudgedWith) -> None:
    """Wheels are sold by the inch: 4 to 12 in are 101.6 to 304.8 mm, and no rounder figure is where the question begins."""
    sheet = judged({"wheel.width": "320 mm", "tyre.rim_width_least": "320 mm", "hub.stub_shaft_torque": "400 N m"})
    asked = questions(sheet)
    assert usual_words("wheel.width", "metric") == "101.6 to 304.8 mm"
    for name in ("wheel.width", "tyre.rim_width_least", "hub.stub_shaft_torque"):
        assert asked[name] == f"Unusual: {usual_words(name, 'metric', sheet.sheet.answers)} is usual."


def test_a_name_that_nothing_has_is_a_mistake_in_the_program() -> None:
    with pytest.raises(KeyError):
        usual("pivots.spacng")


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("use", get_args(Use))
def test_no_range_on_the_form_is_called_unusual_by_the_question(units: Units, use: Use) -> None:
    answers = {"job.use": use}
    for name, asked in ASKED.items():
        own, told = asked.usual_among(answers), usual_range(name, answers)
        if own and told:
            assert own[0] <= told[0] < told[1] <= own[1], name
    # 20.5 mm is 0.807 in, so 13/16; 80 mm is 3.15 in, 5 % over 3
    assert usual_words("pivots.ground_offset", units, answers) == (
        "13/16 to 3 in" if units == "inch" else "20.5 to 80 mm"
    )
