"""What a verdict covers: groups, their words, and that leaving something out never reads as better."""

import json
from dataclasses import replace

import pytest

from rules.checks import GROUP_OF, agreement
from rules.graph.results import GROUPS, Verdict
from rules.judging.judge import Judged, judge
from rules.judging.report import as_data, check_list
from rules.judging.scope import Standing, scope, standings
from rules.judging.trade import trade
from rules.sheet import FIELDS, Sheet, read_sheet
from sample_sheets import document, samples
from tests.support.judging import judged_document, not_below

OTHER_FIGURE = "the second of two figures for one thing is what begins their comparison"
RACK_LOCKS = "to the rack's own end the linkage locks, and lock-reached stops for that"
TORQUE = "the torque is itself what is too much"
NO_SUCH_RADIUS = (
    "the estimate that stands in for a false loaded radius puts the pivot where there is no barrel beside it"
)
TAPED = "the joints as taped, which then count, lie elsewhere; that the two differ is told while both are there"
ENDS_CLEAR = "a beam whose ends nobody entered counts as ending clear of joints and lugs"
BEGINS = {
    ("upright.beam_top", "overlap"): ENDS_CLEAR,
    ("upright.beam_bottom", "overlap"): ENDS_CLEAR,
    ("pivots.swap_spacing", "swap-spacing"): "the spare's spacing is what asks for the comparison",
    ("wheel.offset", "wheel-numbers-agree"): OTHER_FIGURE,
    ("wheel.backspacing", "wheel-numbers-agree"): OTHER_FIGURE,
    ("hub.mount_circle", "hole-spacing"): "the bolts' two spacings, which then count, put them elsewhere; that the two "
    "differ stops as well while both are there",
    ("pivots.castor", "castor-usual"): TAPED,
    ("pivots.ground_offset", "upper-pivot-clears-barrel"): TAPED,
    ("pivots.ground_offset", "upper-pivot-clears-plate"): TAPED,
    ("tyre.smallest", "tyre-speed"): "the largest tyre's speed symbol, which then counts, is a published figure",
    ("steering.rack_moves", "rack-way"): "the way the rack moves is what asks whether that is the right one",
    ("wheel.nut_pocket", "assembly-wheel-nuts"): "the width of the pocket is what asks whether a socket goes in",
    ("tyre.loaded_radius", "lower-pivot-clears-barrel"): NO_SUCH_RADIUS,
    ("tyre.loaded_radius", "upper-pivot-clears-barrel"): NO_SUCH_RADIUS,
    ("tyre.loaded_radius", "upper-pivot-clears-plate"): NO_SUCH_RADIUS,
    ("wheel.offset", "upper-pivot-clears-plate"): "the backspacing, which then counts, puts the whole hub elsewhere",
    ("tyre.load_capacity", "tyre-load"): "the mark's own load index, which then counts, is a published figure",
    ("plate.corner_radius", "corner-radius-fits"): "square corners, which it is then cut with, fit any plate",
    ("plate.tab_length", "slot-metal"): "without tabs there are no slots",
    ("bolts.mount_bolt_torque", "hub-bolts-not-overtightened"): TORQUE,
    ("bolts.wheel_nut_torque", "wheel-studs-not-overtightened"): TORQUE,
    ("steering.stop_angle", "stop-before-rack-end"): "without stops on the upright the rack's own end is the stop",
    ("steering.stop_angle", "bump-steer-turned"): RACK_LOCKS,
    ("steering.stop_angle", "tie-rod-over-centre"): RACK_LOCKS,
    ("arms.static_toe", "static-toe"): "a toe that is not entered counts as none, and the tie rods are set for none",
}
"""Answers that begin an optional thing themselves, with the check that then no longer speaks, and why that is right."""


def judges_the_part(check: str) -> bool:
    """Whether a check judges the part itself.

    Those of `rules/checks/agreement` compare entries with each other to find slips of the tape or the pen. Without one of
    the two there is nothing to compare, and no judgement of the part is lost with it.
    """
    return not trade().checks[check].function.__module__.startswith(agreement.__name__)


@pytest.mark.parametrize("name", samples())
def test_leaving_out_one_answer_never_makes_a_stop_or_watch_unjudged_or_good(name: str) -> None:
    """Of every judgement of the part. What is heavy to work out is put off: it waits whatever is left out.

    Where an entry that cannot be is itself the stop (a ring larger than its rotor), the stop goes with the entry.
    """
    sheet = read_sheet(document(name))
    whole = judge(sheet, light=True, advice=False)
    spoke = {
        check
        for check, verdict in worst_of(whole).items()
        if verdict in ("stop", "watch") and judges_the_part(check) and check not in whole.worked.broken
    }
    touching = {field for check in spoke for field in trade().fields_of(check)}
    left = trade().heavy | not_below(frozenset(spoke))
    silenced = {
        (left_out, check)
        for left_out in sheet.answers
        if left_out in touching
        for check, verdict in worst_of(
            judge(without(sheet, left_out), before=whole, leaving=left, advice=False)
        ).items()
        if verdict in ("not judged", "does not apply", "good") and check in spoke
    }
    assert silenced - BEGINS.keys() == set()


def worst_of(judged: Judged) -> dict[str, Verdict]:
    """The worst verdict of every check: findings stand worst first."""
    return {finding.check: finding.verdict for finding in reversed(judged.findings)}


def test_every_reason_for_a_silence_names_an_answer_and_a_check() -> None:
    assert {check for _, check in BEGINS} <= trade().checks.keys() and {field for field, _ in BEGINS} <= FIELDS.keys()


def without(sheet: Sheet, left_out: str) -> Sheet:
    rest = {asked: answer for asked, answer in sheet.answers.items() if asked != left_out}
    return replace(sheet, answers=rest, unusual=tuple(asked for asked in sheet.unusual if asked != left_out))


def test_what_compares_entries_is_told_from_what_judges_the_part() -> None:
    assert not judges_the_part("finished-below-new") and not judges_the_part("tyre-load-agrees")
    assert judges_the_part("wheel-load") and judges_the_part("assembly-hub-bolts") and judges_the_part("room")


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
    data = json.loads(json.dumps(as_data(judged_document(document("pond_newt_finished")), "x.toml")))
    assert data["verdict"] == "good" and data["groups"]["strength"]["verdict"] == "not judged"
    assert data["groups"]["strength"]["judged"] == 0 and data["groups"]["fit"]["verdict"] == "good"
    assert sum(found["of"] for found in data["groups"].values()) == sum(
        finding["verdict"] != "does not apply" for finding in data["findings"]
    )


@pytest.mark.parametrize("use", ["dunes", "race"])
def test_a_hard_use_is_unfinished_until_its_strength_is_entered(use: str) -> None:
    car = document("pond_newt_finished")
    assert judged_document(car).missing == ()
    judged = judged_document({**car, "job": {**car["job"], "use": use}})
    assert judged.verdict == "unfinished" and {"loads.judge_strength", "upright.material"} <= set(judged.missing)


@pytest.mark.parametrize(
    "begun", [{"loads": {"bump": 3}}, {"upright": {"beam": "none"}}, {"brakes": {"road_grip": 0.9}}]
)
def test_one_answer_about_strength_asks_for_all_of_it(begun: dict[str, dict[str, object]]) -> None:
    judged = judged_document({**document("pond_newt_finished"), **begun})
    assert judged.sheet.faults == () and judged.verdict in ("unfinished", "stop") and judged.missing
