"""Which answers a sheet still needs, and what its verdict is while it does."""

from types import SimpleNamespace
from typing import Any, cast

import pytest

from rules.graph.results import Verdict
from rules.judging.finding import Finding
from rules.judging.judge import _needed, _verdict, and_list, missing_answers, strength_is_asked
from rules.sheet import FIELDS, Sheet, read_sheet
from tests.support.base_sheet import changed


@pytest.mark.parametrize(
    ("name", "group", "needed"),
    [
        # Whatever a check of strength waits for; what it is to stand, whichever check waits for it.
        ("wheel.offset", "strength", True), ("wheel.offset", "fit", False),
        ("loads.bump", "fit", True), ("upright.beam_width", "room", True), ("bolts.upper_thread", "fit", True),
        ("weld_upper.leg", "fit", True), ("plate.width", "room", False), ("plate.width", "strength", True),
        # What is asked for further on, only where it can be taped at plate and beam.
        ("upright.beam_top", "strength", True), ("upright.beam_top", "room", False),
        ("plate.hole_above", "strength", True), ("plate.hole_above", "fit", False),
        ("loads.arm_wall", "strength", False), ("bolts.upper_lug_width", "strength", False),
    ],
)  # fmt: skip
def test_what_a_sheet_whose_strength_is_asked_for_needs(name: str, group: str, needed: bool) -> None:
    assert _needed(name, group) is needed


def sheet(**changes: Any) -> Sheet:
    return read_sheet(changed({name.replace("__", "."): entry for name, entry in changes.items()}))


@pytest.mark.parametrize(
    ("changes", "asked"),
    [
        ({}, False), ({"job__use": "dunes"}, True), ({"job__use": "race"}, True), ({"job__use": "road"}, False),
        ({"loads__judge_strength": True}, True), ({"upright__beam": "none"}, True), ({"bolts__upper_thread": "16 x 2 mm"}, True),
        ({"weld_steering_arm__leg": "6 mm"}, True), ({"brakes__pedal_ratio": "5"}, True), ({"plate__width": "140 mm"}, False),
    ],
)  # fmt: skip
def test_when_strength_is_asked_for(changes: dict[str, Any], asked: bool) -> None:
    assert strength_is_asked(sheet(**changes)) is asked


def waiting(*names: str, group: str = "strength") -> Finding:
    return Finding("some-check", "plate", cast(Any, group), "T", "waiting", "", "", "", "geometry", waits_for=names)


def test_the_answers_that_are_missing_come_in_the_order_they_are_asked() -> None:
    """What every sheet needs; what checks wait for once strength is asked for; and not what stands there."""
    waits = (waiting("upright.beam_width", "loads.bump", "wheel.width"), waiting("plate.width", group="room"))
    assert missing_answers(sheet(), waits) == ()
    strong = sheet(loads__judge_strength=True, wheel__diameter=None)
    found = missing_answers(strong, waits)
    assert set(found) == {"wheel.diameter", "upright.beam_width", "loads.bump"}
    assert list(found) == sorted(found, key=list(FIELDS).index)
    assert missing_answers(sheet(wheel__diameter=None), ()) == ("wheel.diameter",)
    assert missing_answers(sheet(wheel__diameter=None), (), stood_in=("wheel.diameter",)) == ()


def test_a_no_to_judging_strength_finishes_no_sheet_for_a_hard_use() -> None:
    asked = "loads.judge_strength"
    assert missing_answers(sheet(job__use="dunes", loads__judge_strength=False), ()) == (asked,)
    assert missing_answers(sheet(job__use="trail", loads__judge_strength=False), ()) == ()
    assert missing_answers(sheet(job__use="dunes", loads__judge_strength=True), ()) == ()


@pytest.mark.parametrize(
    ("bolts", "circle", "missing"),
    [
        (4, None, ()),
        (5, None, ("hub.mount_circle",)),
        (3, None, ("hub.mount_circle",)),
        (5, "120 mm", ()),
        (None, None, None),
    ],
)
def test_other_than_four_hub_bolts_want_their_circle(bolts: int | None, circle: str | None, missing: Any) -> None:
    found = missing_answers(sheet(hub__mount_bolts=bolts, hub__mount_circle=circle), ())
    assert found == (("hub.mount_bolts",) if missing is None else missing)


@pytest.mark.parametrize(
    ("verdicts", "missing", "faults", "whole", "verdict"),
    [
        (("good",), (), (), True, "good"), (("good", "does not apply", "not judged"), (), (), True, "good"),
        (("good", "watch"), (), (), True, "watch"), (("good", "shown"), (), (), True, "watch"),
        (("good", "waiting"), (), (), True, "watch"), (("good", "watch"), ("wheel.width",), (), True, "unfinished"),
        (("good",), (), ("x",), True, "unfinished"), (("good",), (), (), False, "unfinished"),
        (("stop", "watch"), ("wheel.width",), ("x",), False, "stop"),
    ],
)  # fmt: skip
def test_the_verdict_of_a_sheet(
    verdicts: tuple[Verdict, ...], missing: tuple[str, ...], faults: tuple[str, ...], whole: bool, verdict: str
) -> None:
    findings = [cast(Finding, SimpleNamespace(verdict=one)) for one in verdicts]
    assert _verdict(cast(Sheet, SimpleNamespace(faults=faults)), missing, findings, whole=whole) == verdict


def test_fields_as_a_list_in_words() -> None:
    """With its step where two steps ask the same, and no comma within one."""
    assert and_list(("pivots.castor",)) == "castor"
    assert and_list(("pivots.castor", "wheel.bolt_circle")) == "castor and wheel bolt circle"
    three = and_list(("pivots.castor", "wheel.bolt_circle", "upright.beam_width"))
    assert three == "castor, wheel bolt circle and beam width fore and aft"
