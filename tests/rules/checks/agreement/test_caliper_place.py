"""Where the caliper stands round the clock, at each limit: 0 straight up, plus ahead. Common practice, no source."""

from math import radians
from typing import Any

import pytest

from rules.graph.results import DoesNotApply, NotJudged
from rules.judging.judge import judge
from rules.sheet import read_sheet
from rules.sheet.confirmed import Confirmed
from sample_sheets import document
from tests.support.base_sheet import edited
from tests.support.declared import the_check
from tests.support.judging import judged_document, judged_sample

STANDS = {"above": 0.0, "ahead": 90.0, "below": 180.0, "behind": -90.0}


@pytest.mark.parametrize("stands", STANDS)
@pytest.mark.parametrize(("off", "verdict"), [(0, "good"), (59.9, "good"), (60.1, "stop"), (180, "stop")])
@pytest.mark.parametrize("way", [1, -1])
def test_a_place_up_to_60_degrees_off_its_quarter_agrees(stands: Any, off: float, verdict: str, way: int) -> None:
    clock = (STANDS[stands] + way * off + 180) % 360 - 180
    assert the_check("caliper-in-its-quarter")(radians(clock), None, stands).verdict == verdict


def test_a_side_alone_counts_as_straight_ahead_or_behind() -> None:
    check = the_check("caliper-in-its-quarter")
    assert check(None, "ahead", "ahead").verdict == check(None, "behind", "behind").verdict == "good"
    assert check(None, "ahead", "above").verdict == "stop"  # a quarter off
    assert check(radians(90), "behind", "ahead").verdict == "good"  # the place, where it is entered
    with pytest.raises(DoesNotApply):
        check(radians(90), "ahead", None)
    with pytest.raises(NotJudged) as missing:
        check(None, None, "ahead")
    assert missing.value.fields == ("caliper.clock",)


@pytest.mark.parametrize(
    ("clock", "side", "verdict"),
    [
        (1, "ahead", "good"),
        (-1, "behind", "good"),
        (1, "behind", "stop"),
        (-1, "ahead", "stop"),
        (179, "ahead", "good"),
    ],
)
def test_plus_is_ahead(clock: float, side: Any, verdict: str) -> None:
    assert the_check("caliper-on-its-side")(radians(clock), side).verdict == verdict


@pytest.mark.parametrize("clock", [0.0, 180.0, -180.0, None])
def test_straight_up_and_down_are_on_no_side(clock: float | None) -> None:
    with pytest.raises(DoesNotApply):
        the_check("caliper-on-its-side")(None if clock is None else radians(clock), "ahead")


@pytest.mark.parametrize(
    ("clock", "verdict"),
    [(60, "good"), (59, "watch"), (115, "good"), (116, "watch"), (-60, "good"), (-115, "good"), (-116, "watch")],
)
def test_a_caliper_stands_60_to_115_degrees_from_straight_up(clock: float, verdict: str) -> None:
    assert the_check("caliper-beside-axle")(radians(clock), Confirmed()).verdict == verdict


@pytest.mark.parametrize(
    ("outboard", "inboard", "pad", "above", "verdict"),
    # A rotor of 22 mm: half of it is 11, with a pad of 12 it is 23.
    [
        (11.1, None, None, None, "good"), (11.1, 11.1, None, 22.0, "good"), (11.0, 60.0, None, None, "stop"),
        (44.0, 11.0, None, None, "stop"), (44.0, 11.1, None, None, "good"),
        (23.1, 23.1, 12.0, None, "good"), (23.0, 60.0, 12.0, None, "stop"), (44.0, 23.0, 12.0, None, "stop"),
        (44.0, 44.0, 12.0, 10.0, "good"), (44.0, 44.0, 12.0, 9.9, "stop"),
    ],
)  # fmt: skip
def test_a_caliper_reaches_round_its_rotor_and_pads(
    outboard: float, inboard: float | None, pad: float | None, above: float | None, verdict: str
) -> None:
    assert the_check("caliper-round-its-rotor")(outboard, 22.0, inboard, pad, above).verdict == verdict


@pytest.mark.parametrize(
    ("kind", "inboard", "pistons", "verdict"),
    [
        # 40 mm outboard. Common practice, no source: pistons on the inboard side take 8 mm more at least, a hose bolt up to 32.
        ("sliding", 48.1, 2, "good"), ("sliding", 47.9, 2, "watch"), ("sliding", 65.0, 3, "watch"),
        ("sliding", 65.0, None, "good"),
        ("fixed", 40.0, 3, "good"), ("fixed", 71.9, 2, "good"), ("fixed", 72.1, 2, "watch"),
    ],
)  # fmt: skip
def test_a_sliding_caliper_has_its_pistons_inboard_and_a_fixed_one_on_both_sides(
    kind: Any, inboard: float, pistons: int | None, verdict: str
) -> None:
    check = the_check("caliper-like-its-kind")
    assert check(kind, 40.0, inboard, pistons, Confirmed()).verdict == verdict
    assert check(kind, 40.0, inboard, pistons, Confirmed({"caliper.kind"})).verdict == "good"


@pytest.mark.parametrize("kind", ["sliding", "fixed"])
@pytest.mark.parametrize(("inboard", "asked"), [(47.9, False), (48.1, True), (71.9, True), (72.1, False)])
def test_a_caliper_that_may_be_of_either_kind_is_asked_about_once(kind: Any, inboard: float, asked: bool) -> None:
    """From 8 to 32 mm further inboard: a sliding one has a piston there, a fixed one its hose bolt."""
    check = the_check("caliper-like-its-kind")
    found = check(kind, 40.0, inboard, None, Confirmed())
    assert (found.verdict == "good" and found.asks_about == "caliper.kind") == asked
    assert check(kind, 40.0, inboard, None, Confirmed({"caliper.kind"})).asks_about in ("", "caliper.kind")
    assert not asked or not check(kind, 40.0, inboard, None, Confirmed({"caliper.kind"})).asks_about


@pytest.mark.parametrize(
    ("name", "kind"),
    [
        ("dune_wren_finished", "fixed"),
        ("dune_wren_moving", "fixed"),
        ("fell_badger_finished_metric", "sliding"),
        ("pond_newt_finished", "fixed"),
        ("scree_ox_strength", "sliding"),
    ],
)
def test_the_other_kind_said_of_a_finished_caliper_is_asked_about(name: str, kind: str) -> None:
    assert "caliper.kind" not in judged_sample(name).asks_about
    wrong = judged_document(edited(document(name), {"caliper.kind": kind}))
    assert "caliper.kind" in wrong.asks_about


def test_without_its_inboard_reach_a_caliper_is_not_held_against_its_kind() -> None:
    with pytest.raises(NotJudged) as why:
        the_check("caliper-like-its-kind")("sliding", 40.0, None, None, Confirmed())
    assert why.value.fields == ("caliper.inboard_reach",)


@pytest.mark.parametrize(
    ("above", "verdict"),
    # 5.8 in of run on 6.2 in of bracket: 0.2 in is left at either end. 0.43 in is 5.8 mm past it, 0.45 in 6.4, 1/2 in 7.6.
    [
        ("0 in", "good"),
        ("0.2 in", "good"),
        ("0.43 in", "good"),
        ("-0.43 in", "good"),
        ("0.45 in", "watch"),
        ("-1/2 in", "watch"),
    ],
)
def test_runs_that_reach_past_the_edge_of_the_bracket_are_asked_about(above: str, verdict: str) -> None:
    car = edited(document("scree_ox_strength"), {"weld_caliper_bracket.load_above": above})
    judged = judge(read_sheet(car), before=judged_sample("scree_ox_strength"))
    found = next(one for one in judged.findings if one.check == "caliper-weld-on-bracket")
    assert found.verdict == verdict
    assert ("weld_caliper_bracket.load_above" in judged.asks_about) == (verdict == "watch")
    yes = {"weld_caliper_bracket.load_above": above}
    confirmed = judge(read_sheet({**car, "confirmed": {**car["confirmed"], **yes}}), before=judged)
    assert next(one.verdict for one in confirmed.findings if one.check == "caliper-weld-on-bracket") == "good"


def test_a_bracket_over_the_axle_is_held_against_its_lever_ahead() -> None:
    check = the_check("caliper-weld-on-bracket")
    # 100 mm of run on 100 mm of bracket: the lever alone is what it stands off.
    assert check(100.0, "fore and aft", 6.0, 50.0, "above", 100.0, Confirmed()).verdict == "good"
    assert check(100.0, "fore and aft", -6.1, 50.0, "above", 100.0, Confirmed()).verdict == "watch"
    with pytest.raises(DoesNotApply):
        check(100.0, "in and out", 30.0, 50.0, "above", 100.0, Confirmed())
    with pytest.raises(NotJudged) as missing:
        check(100.0, "up and down", 30.0, 50.0, "ahead", None, Confirmed())
    assert missing.value.fields == ("upright.bracket_arm_width",)
