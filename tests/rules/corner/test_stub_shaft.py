"""The stub shaft that clamps a hub together: a part that turns in plate and beam. The sample with every step has one."""

import pytest

from rules.judging.judge import Judged, judge
from rules.sheet import read_sheet
from sample_sheets import document
from tests.support.base_sheet import edited


def changed(changes: dict[str, object]) -> Judged:
    sheet = read_sheet(edited(document("scree_ox_strength"), changes))
    assert not sheet.faults and not sheet.unknown
    return judge(sheet)


def verdicts(judged: Judged, check: str, about: str = "") -> list[str]:
    return [found.verdict for found in judged.findings if found.check == check and about in found.title]


@pytest.mark.parametrize(
    ("bore", "verdict"),
    [
        ("2.5 in", []),  # shoulder 1.9 in: 0.3 in = 7.6 mm round it
        ("2.2 in", ["watch"]),  # 0.15 in = 3.8 mm
        ("2 in", ["stop"]),  # 0.05 in = 1.3 mm
        ("1.8 in", ["stop"]),  # it does not go through
    ],
)
def test_it_turns_free_in_the_plates_bore(bore: str, verdict: list[str]) -> None:
    assert verdicts(changed({"plate.bore": bore}), "room", "stub shaft") == verdict


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({}, "good"),  # 3.25 + 0.7 - 3.25 - 0.875 in: ends 0.175 in before the plate's back
        (
            {"hub.shoulder_length": "1.5 in", "hub.shoulder_diameter": "1.6 in"},
            "good",
        ),  # channel 3.2 in less two walls of 1/2: 2.2, (2.2 - 1.6) / 2 = 0.3 in
        ({"hub.shoulder_length": "1.5 in", "hub.shoulder_diameter": "2.1 in"}, "stop"),  # 0.05 in = 1.3 mm beside it
        (
            {"hub.shoulder_length": "3.925 in", "hub.shoulder_diameter": "1.6 in"},
            "stop",
        ),  # 3.05 in behind the plate, the web 3.6 - 0.5 = 3.1 in: 1.3 mm
    ],
)
def test_it_turns_free_in_the_beams_hollow(changes: dict[str, object], verdict: str) -> None:
    assert verdicts(changed(changes), "stub-shaft-in-beam") == [verdict]


def test_until_it_is_measured_it_is_an_estimate() -> None:
    judged = changed({"hub.shoulder_diameter": None})
    assert verdicts(judged, "room") == ["watch"] * len(verdicts(judged, "room"))
    assert "hub.shoulder_diameter" in judged.worked.estimated["stub_shaft_part"]


@pytest.mark.parametrize(
    "changes",
    [
        # what is entered of a stub shaft beside a hub that holds itself would be asked about
        {"hub.held_together_by": "itself", "hub.stub_shaft_fitted": None},
        {"hub.stub_shaft_fitted": False},
    ],
)
def test_a_hub_without_one_has_no_such_part(changes: dict[str, object]) -> None:
    assert "stub_shaft_part" in changed(changes).worked.not_here


def test_a_plate_without_a_bore_is_asked_for_it() -> None:
    assert "plate.bore" in changed({"plate.bore": None}).worked.waits["stub_shaft_part"]
