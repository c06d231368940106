"""What a verdict covers: groups, their words, and that leaving something out never reads as better."""

import json
from dataclasses import replace

import pytest

from rules.checks import GROUP_OF
from rules.graph.results import GROUPS
from rules.judging.judge import judge
from rules.judging.report import as_data, check_list
from rules.judging.scope import Standing, scope, standings
from rules.judging.trade import trade
from rules.sheet import read_sheet
from sample_sheets import document, samples

BEGINS = {
    ("pivots.swap_spacing", "swap-spacing"): "the spare's spacing is what asks for the comparison",
    ("wheel.offset", "wheel-numbers-agree"): "the second of two figures for one thing is what begins their comparison",
    (
        "wheel.backspacing",
        "wheel-numbers-agree",
    ): "the second of two figures for one thing is what begins their comparison",
    ("steering.stop_angle", "stop-before-rack-end"): "without stops on the upright the rack's own end is the stop",
    (
        "steering.stop_angle",
        "bump-steer-turned",
    ): "to the rack's own end the linkage locks, and lock-reached stops for that",
    (
        "steering.stop_angle",
        "tie-rod-over-centre",
    ): "to the rack's own end the linkage locks, and lock-reached stops for that",
}
"""Answers that begin an optional thing themselves, with the check that then no longer speaks, and why that is right."""


@pytest.mark.parametrize("name", samples())
def test_leaving_out_one_answer_never_makes_a_stop_or_watch_unjudged(name: str, subtests: pytest.Subtests) -> None:
    sheet = read_sheet(document(name))
    whole = judge(sheet)
    spoke = {finding.check for finding in whole.findings if finding.verdict in ("stop", "watch")}
    for left_out in sheet.answers:
        rest = {asked: answer for asked, answer in sheet.answers.items() if asked != left_out}
        found = judge(replace(sheet, answers=rest), before=whole).findings
        silent = {one.check for one in found if one.verdict in ("not judged", "does not apply")}
        with subtests.test(left_out):
            assert {check for check in spoke & silent if (left_out, check) not in BEGINS} == set()


def test_every_check_has_a_group_and_the_list_shows_it() -> None:
    assert set(GROUP_OF) == set(trade().checks) and set(GROUP_OF.values()) == set(GROUPS)
    assert {entry["id"]: entry["group"] for entry in check_list()} == GROUP_OF


def test_a_group_is_as_bad_as_the_worst_of_what_was_judged() -> None:
    found = standings(
        [("fit", "good"), ("fit", "watch"), ("fit", "waiting"), ("room", "not judged"), ("room", "does not apply")]
    )
    assert found["fit"] == Standing("watch", 2, 3)
    assert found["room"] == Standing("not judged", 0, 1)
    assert found["cutting"] == Standing("does not apply", 0, 0)


def test_the_sentence_names_every_group_that_applies_worst_first() -> None:
    good, none = Standing("good", 8, 8), Standing("not judged", 0, 31)
    groups = {
        "fit": good,
        "room": good,
        "geometry": good,
        "steering and travel": none,
        "strength": none,
        "brakes": none,
    }
    wanted = "Fit, room and geometry good. Steering and travel, strength, brakes not judged."
    assert scope(groups) == wanted  # type: ignore[arg-type]
    part = {"fit": Standing("good", 17, 18), "room": Standing("stop", 7, 7), "brakes": Standing("does not apply", 0, 0)}
    assert scope(part) == "Room stop. Fit (17 of 18) good."  # type: ignore[arg-type]


def test_a_sheets_data_say_what_was_judged() -> None:
    data = json.loads(json.dumps(as_data(judge(read_sheet(document("pond_newt_finished"))), "x.toml")))
    assert data["verdict"] == "good" and data["groups"]["strength"]["verdict"] == "not judged"
    assert data["groups"]["strength"]["judged"] == 0 and data["groups"]["fit"]["verdict"] == "good"
    assert sum(found["of"] for found in data["groups"].values()) == sum(
        finding["verdict"] != "does not apply" for finding in data["findings"]
    )


@pytest.mark.parametrize("use", ["dunes", "race"])
def test_a_hard_use_is_unfinished_until_its_strength_is_entered(use: str) -> None:
    car = document("pond_newt_finished")
    assert judge(read_sheet(car)).missing == ()
    judged = judge(read_sheet({**car, "job": {**car["job"], "use": use}}))
    assert judged.verdict == "unfinished" and {"loads.judge_strength", "upright.material"} <= set(judged.missing)


@pytest.mark.parametrize(
    "begun", [{"loads": {"bump": 3}}, {"upright": {"beam": "none"}}, {"brakes": {"road_grip": 0.9}}]
)
def test_one_answer_about_strength_asks_for_all_of_it(begun: dict[str, dict[str, object]]) -> None:
    judged = judge(read_sheet({**document("pond_newt_finished"), **begun}))
    assert judged.sheet.faults == () and judged.verdict in ("unfinished", "stop") and judged.missing
