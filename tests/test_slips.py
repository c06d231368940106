"""Slips of tape and keyboard on one sample; `python .ci/slips.py` does them all on every finished one."""

import importlib.util
import sys
from functools import cache
from pathlib import Path
from types import ModuleType

import pytest

from rules.sheet import read_sheet
from sample_sheets import document

SAMPLE = "pond_newt_finished"
MOVING = "dune_wren_moving"
TOLD_ELSEWHERE = {
    SAMPLE: {"pivots.castor"},
    MOVING: {"spring.preload", "spring.arm_end_ahead", "spring.frame_end_ahead"},
}
"""Answers of which a slip is silent though a check with a stop rests on what it moves; the reasons stand with those accepted."""


@pytest.fixture(scope="module")
def slips() -> ModuleType:
    for name in ("other_words", "slips"):
        spec = importlib.util.spec_from_file_location(name, Path(__file__).parent.parent / ".ci" / f"{name}.py")
        assert spec is not None and spec.loader is not None
        module = importlib.util.module_from_spec(spec)
        sys.modules[name] = module  # one takes the other, and a dataclass looks its module up
        spec.loader.exec_module(module)
    module.outcomes = cache(module.outcomes)  # type: ignore[attr-defined]  # two tests look at one sample's
    return module


@pytest.mark.parametrize("sample", [SAMPLE, MOVING])
def test_at_most_one_slip_in_twenty_is_silent_each_with_its_reason_and_hardly_one_is_dangerous(
    slips: ModuleType, sample: str
) -> None:
    found = slips.outcomes(sample, "figures")
    silent = [one for one in found if one.result == "silent"]
    assert len(found) > 300 and 20 * len(silent) <= len(found)
    assert [(one.field, one.slip) for one in silent if not one.reason] == []
    assert {one.field for one in silent if one.moves} <= TOLD_ELSEWHERE[sample]
    assert {one.result for one in found} >= {"refused", "asked about", "verdict worse"}


def test_a_slip_that_nothing_tells_is_silent_and_dangerous_where_a_stop_rests_on_it(slips: ModuleType) -> None:
    """A shock or a guessed lean of the body a little out moves nothing that is judged; other slips are seen beside a partner."""
    silent = {one.field: one for one in slips.outcomes(MOVING, "figures") if one.result == "silent"}
    assert (
        set(silent) <= {"spring.arm_end_ahead", "spring.frame_end_ahead", "spring.preload", "arms.body_roll"} and silent
    )
    car = document(SAMPLE)
    car["caliper"].pop("side")
    before = slips.judge(read_sheet(car))
    turned = read_sheet({**car, "caliper": {**car["caliper"], "clock": "-90 deg"}})
    result, moves = slips._told("caliper.clock", before, turned)
    assert result == "silent" and "room" in moves


@pytest.mark.parametrize("sample", [SAMPLE, MOVING])
def test_a_choice_or_mark_that_is_slipped_in_silence_is_another_sound_car_and_has_its_reason(
    slips: ModuleType, sample: str
) -> None:
    found = slips.outcomes(sample, "choices")
    silent = [one for one in found if one.result == "silent"]
    assert [(one.field, one.slip, one.entry) for one in silent if not one.reason] == []
    assert len(found) > 100 and 3 * len(silent) < len(found)


def test_the_neighbours_of_a_thread_a_tyre_and_a_bolt_circle_by_hand(slips: ModuleType) -> None:
    """ASME B1.1: 7/16 is sold with 14 or 20 threads an inch, 1/2 with 13 or 20, 9/16 with 12 or 18; ISO 262: M12 with a pitch of
    1.75, 1.5 or 1.25 mm, M14 with 2 or 1.5. 12.7 mm lies nearest to those two."""

    def wrong(name: str, entry: str) -> list[tuple[str, str]]:
        step, key = name.split(".")
        car = document(SAMPLE)
        return list(slips.slipped(name, read_sheet({**car, step: {**car[step], key: entry}})))

    assert wrong("hub.mount_bolt_thread", "1/2-20") == [
        ("other pitch", "1/2-13"),
        ("next size up", "9/16-12"), ("next size up", "9/16-18"),
        ("next size down", "7/16-14"), ("next size down", "7/16-20"),
        ("other system", "12 x 1.75 mm"), ("other system", "12 x 1.5 mm"), ("other system", "12 x 1.25 mm"),
        ("other system", "14 x 2 mm"), ("other system", "14 x 1.5 mm"),
    ]  # fmt: skip
    tyres = wrong("tyre.smallest", "175/80R13 86Q")
    assert ("other rim", "175/80R14 86Q") in tyres and ("other height", "175/75R13 86Q") in tyres
    assert ("other width", "185/80R13 86Q") in tyres and ("other load index", "175/80R13 81Q") in tyres
    assert ("other symbol", "175/80R13 86P") in tyres and ("other letters", "ST175/80R13 86Q") in tyres
    circles = wrong("hub.bolt_circle", "5 x 4.5 in")
    assert ("other count", "4 x 4.5 in") in circles and ("other circle", "5 x 120 mm") in circles
    assert ("other choice", "ball") in wrong("wheel.nut_seat", "flat")
    assert dict(wrong("caliper.clock", "100 deg"))["opposite"] == "-1.396263402 rad"  # 80 deg behind


def test_the_slips_of_one_answer_by_hand(slips: ModuleType) -> None:
    # 190 kg: x 25.4, / 25.4, x 10, / 10, x 2, / 2, minus, 190 / 0.45359237, 190 x 0.45359237, and the vehicle's 690 kg.
    wrong = dict(slips.slipped("job.corner_weight", read_sheet(document(SAMPLE))))
    assert {slip: round(float(entry.removesuffix(" kg")), 2) for slip, entry in wrong.items()} == {
        "x25.4": 4826.0, "/25.4": 7.48, "x10": 1900.0, "/10": 19.0, "x2": 380.0, "/2": 95.0, "sign": -190.0,
        "kg for lb": 418.88, "lb for kg": 86.18, "neighbour's": 690.0,
    }  # fmt: skip


def test_a_count_is_slipped_only_to_counts(slips: ModuleType) -> None:
    # Three bolts: a 25.4th, a tenth and a half of them are none; x 25.4 is none either.
    assert dict(slips.slipped("hub.mount_bolts", read_sheet(document(SAMPLE)))) == {"x10": 30, "x2": 6, "sign": -3}


def test_a_silent_slip_that_nobody_has_accepted_has_no_reason(slips: ModuleType) -> None:
    assert slips.accepted(SAMPLE, "job.corner_weight", "x2") == ""
    assert slips.accepted(SAMPLE, "brakes.stops_in_a_run", "x2") and not slips.accepted(
        SAMPLE, "brakes.stops_in_a_run", "x10"
    )
