"""Why something is not judged, in the units of the sheet, wherever it is said."""

from collections.abc import Callable

import pytest

from rules.graph.results import Reason
from rules.judging.explain import explain
from rules.judging.judge import Judged, judge, reason, why_not
from rules.judging.report import as_data
from tests.support.base_sheet import MOVING

Changes = dict[str, object]


@pytest.fixture(scope="module")
def locked(judged: Callable[[Changes], Judged]) -> Judged:
    """The arms lock long before so much travel."""
    return judged({**MOVING, "arms.bump_travel": "500 mm"})


def test_a_reason_shows_its_figures_in_the_sheets_units(locked: Judged) -> None:
    assert locked.shown_in == "metric"
    inch, metric = judge(locked.sheet, "inch"), locked
    assert " in bump, before the travel entered" in why_not("travel_reached", inch)
    assert " mm bump, before the travel entered" in why_not("travel_reached", metric)
    for judged in (inch, metric):
        found = next(finding for finding in judged.findings if finding.check == "bump-steer")
        assert found.verdict == "not judged"
        assert found.text[1:] == f"{why_not('travel_reached', judged)}."[1:]


def test_no_brace_is_left_where_a_reason_is_said(locked: Judged) -> None:
    assert "{" in locked.worked.not_judged["bump_toe"]
    assert "{" not in "".join(finding.text for finding in locked.findings)
    assert "{" not in as_data(locked, "sheet.toml")["values"]["bump_toe"]["not_judged"]
    assert "{" not in "".join(explain(locked, "bump_toe"))


def test_what_a_crash_says_is_not_taken_for_figures() -> None:
    assert reason(Reason("x could not be worked out: '{}' {odd"), "inch") == "x could not be worked out: '{}' {odd"


def test_a_value_that_is_there_or_waits_has_no_reason(judged: Callable[[Changes], Judged]) -> None:
    found = judged({"wheel.offset": None, "wheel.backspacing": None})
    assert why_not("design_tyre_diameter", found) == ""
    assert found.worked.waits and all(
        why_not(name, found) == "" for name in found.worked.waits.keys() - found.worked.not_judged.keys()
    )
