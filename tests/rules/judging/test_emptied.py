"""Emptying a table or an answer never makes a sheet read better: what was stopped is asked for by name, or told again."""

from dataclasses import replace

import pytest

from rules.graph.results import Verdict
from rules.judging.judge import Judged, judge
from rules.judging.trade import trade
from rules.sheet import Sheet
from sample_sheets import samples
from tests.rules.judging.test_scope import BEGINS, judges_the_part, without, worst_of
from tests.support.judging import judged_sample, not_below

GONE = {
    "plate": ("room", "overlap", "assembly-upper-pivot-bolt", "assembly-lower-pivot-bolt"),
    "upright": (
        "room", "overlap", "assembly-hub-bolts", "assembly-upper-pivot-bolt", "assembly-lower-pivot-bolt",
        "assembly-caliper-bolts", "joined-parts-touch", "stands-on-plate",
    ),
    "bolts": ("room", "overlap", "assembly-hub-bolts", "assembly-caliper-bolts", "joined-parts-touch", "stands-on-plate"),
}  # fmt: skip
"""Tables that a sheet is finished without. With its table a part is gone from the corner: these checks then speak of the rest,
and the sheet's scope counts fewer judged."""
TOE = "a toe that is not entered counts as none, and with none the wheels turn as they should"
BEGUN_BY_TABLE = {
    ("arms", "static-toe"): TOE,
    ("arms", "steering-sense"): TOE,
    ("arms", "ackermann-error"): TOE,
    ("arms", "stop-before-rack-end"): "without arms it is judged at ride height alone, and says so",
    ("pivots", "swap-spacing"): "the spare's spacing is what asks for the comparison",
    ("plate", "plate-ends-fit"): "only a narrowed end's own entries say that there is one",
    ("upright", "snout-strength"): "only a snout's own entries say that there is one",
}
QUIET: tuple[Verdict, ...] = ("good", "not judged", "does not apply")


def emptied(sheet: Sheet, table: str) -> Sheet:
    def goes(name: str) -> bool:
        return name.startswith(f"{table}.")

    rest = {name: answer for name, answer in sheet.answers.items() if not goes(name)}
    return replace(sheet, answers=rest, unusual=tuple(name for name in sheet.unusual if not goes(name)))


def spoke(judged: Judged) -> set[str]:
    """Checks of the part that stopped or watched, but for those whose entry cannot be: with the entry such a stop goes."""
    return {
        check
        for check, verdict in worst_of(judged).items()
        if verdict in ("stop", "watch") and judges_the_part(check) and check not in judged.worked.broken
    }


@pytest.mark.parametrize("name", samples())
def test_an_emptied_table_is_asked_for_and_never_reads_good(name: str) -> None:
    whole = judged_sample(name)
    sheet, heard = whole.sheet, spoke(whole)
    silent = set()
    for table in dict.fromkeys(name.partition(".")[0] for name in sheet.answers):
        rest = emptied(sheet, table)
        judged = judge(rest, before=whole, leaving=not_below(frozenset(heard)), advice=False)
        if whole.verdict != "good" and judged.verdict == "unfinished" and not judged.missing:
            judged = judge(rest, before=whole, advice=False)  # by what else it stands is worth the work
        assert judged.verdict != "good" or whole.verdict == "good", table
        for check in heard:
            found = next(one for one in judged.findings if one.check == check)
            asked_for = found.verdict == "not judged" and any(
                field.startswith(f"{table}.") for field in found.waits_for
            )
            if found.verdict in QUIET and not asked_for and check not in GONE.get(table, ()):
                silent.add((table, check, found.verdict))
    assert {one for one in silent if one[:2] not in BEGUN_BY_TABLE} == set()


@pytest.mark.parametrize(
    ("table", "asked"),
    [("joint_angles", "joint_angles.upper_bolt"), ("spring", "spring.arm_end_ahead"), ("steering", "steering.linkage")],
)
def test_arms_ask_for_what_ends_and_limits_their_travel(table: str, asked: str) -> None:
    whole = judged_sample("dune_wren_moving")
    judged = judge(emptied(whole.sheet, table), before=whole, advice=False)
    waits = {field for finding in judged.findings if finding.verdict == "waiting" for field in finding.waits_for}
    assert judged.verdict not in ("good", "stop") and asked in waits


@pytest.mark.parametrize("name", ["wrong_cannot_be_put_together", "wrong_steering_arm_too_short"])
def test_no_single_answer_left_out_makes_room_quiet(name: str) -> None:
    """Of what rests on anything heavy to work out, which test_scope puts off."""
    whole, graph = judged_sample(name), trade()
    sheet = whole.sheet
    heard = {check for check in spoke(whole) if not graph.heavy.isdisjoint({check, *graph.needs(check)})}
    assert "room" in heard
    left = not_below(frozenset(heard))
    silenced = {
        (left_out, check)
        for left_out in sheet.answers
        if any(left_out in graph.fields_of(check) for check in heard)
        for check, verdict in worst_of(
            judge(without(sheet, left_out), before=whole, leaving=left, advice=False)
        ).items()
        if verdict in QUIET and check in heard
    }
    assert silenced - BEGINS.keys() == set()


MOVES = ("arms", "steering", "joint_angles", "spring")


@pytest.mark.parametrize("name", ["wrong_travel_of_another_car", "wrong_longer_shocks"])
def test_one_answer_of_what_moves_left_out_silences_nothing(name: str) -> None:
    """With all that is heavy: room over travel and lock too. `test_scope.py` leaves out each answer of all steps, light."""
    whole = judged_sample(name)
    heard = spoke(whole)
    silenced = set()
    for left_out in whole.sheet.answers:
        if left_out.partition(".")[0] not in MOVES:
            continue
        rest = without(whole.sheet, left_out)
        judged = judge(rest, before=whole, leaving=not_below(frozenset(heard)), advice=False)
        for check, verdict in worst_of(judged).items():
            if check in heard and verdict in ("good", "does not apply") and (left_out, check) not in BEGINS:
                silenced.add((left_out, check))
    assert silenced == set()
