"""Judging again after some answers changed gives what judging the whole sheet gives, and leaves the earlier one alone."""

import copy
import random
from dataclasses import replace
from typing import Any

import pytest

from rules.judging.judge import BEING_WORKED_OUT, judge
from rules.judging.trade import trade
from rules.sheet import read_sheet
from sample_sheets import sample, samples
from tests.support.examples import more_in_a_long_run
from wizard.files.sheet_file import read

SHEETS = [name for name in samples() if not name.startswith("wrong_")]


def document(name: str) -> dict[str, Any]:
    return copy.deepcopy(dict(read(sample(name)).document))


@pytest.mark.parametrize("name", SHEETS)
def test_changed_emptied_and_added_answers_give_what_a_whole_judgement_gives(name: str) -> None:
    """Random edits one after the other, each taken from another sample, emptied or put back."""
    chance, entries = random.Random(name), document(name)
    others = [document(other) for other in SHEETS]
    judged = judge(read_sheet(entries))
    for _ in range(more_in_a_long_run(10)):
        source = chance.choice(others)
        step = chance.choice([step for step, table in source.items() if isinstance(table, dict)])
        key = chance.choice(list(source[step]))
        if chance.random() < 0.3:
            entries.get(step, {}).pop(key, None)
        else:
            entries.setdefault(step, {})[key] = source[step][key]
        sheet, earlier = read_sheet(entries), judged
        kept = copy.copy(earlier.worked.known)
        judged, whole = judge(sheet, before=earlier), judge(sheet)
        assert judged.findings == whole.findings
        assert judged.verdict == whole.verdict
        assert judged.worked.known.keys() == whole.worked.known.keys()
        assert judged.worked.estimated == whole.worked.estimated
        assert judged.worked.waits == whole.worked.waits
        assert earlier.worked.known == kept


STAND_INS = [node.note.stands_for for node in trade().values.values() if node.note.stands_for]


@pytest.mark.parametrize("question", STAND_INS)
@pytest.mark.parametrize("name", ["wrong_joints_taped_otherwise", "dune_wren_moving"])
def test_what_stands_in_for_an_answer_gives_way_to_it_and_comes_back(name: str, question: str) -> None:
    """Typed by itself, and taken out by itself: nothing else that the stand-in rests on changes."""
    graph = trade()
    answers = {key: answer for key, answer in read_sheet(document(name)).answers.items() if key != question}
    stood_in = graph.work_out(answers)
    typed = {**answers, question: 1.1 * stood_in.known.get(question, 100.0)}
    whole = graph.work_out(typed)
    again, _ = graph.work_again(stood_in, typed)
    back, _ = graph.work_again(again, answers)
    for one, other in ((again, whole), (back, stood_in)):
        assert one.known.keys() == other.known.keys()
        assert all(one.known[key] == answer for key, answer in other.known.items() if isinstance(answer, float))
        assert (one.stood_in, one.estimated, one.waits) == (other.stood_in, other.estimated, other.waits)


def test_an_answer_that_nothing_rests_on_works_nothing_out_again() -> None:
    graph = trade()
    sheet = read_sheet(document(SHEETS[0]))
    before = graph.work_out(sheet.answers)
    _, touched = graph.work_again(before, {**sheet.answers, "job.notes": "another word"})
    assert touched == frozenset()


@pytest.mark.parametrize("name", SHEETS)
def test_in_other_units_every_text_is_new_and_what_was_worked_out_is_kept(name: str) -> None:
    sheet = read_sheet(document(name))
    inch, metric = judge(sheet, "inch"), judge(sheet, "metric")
    again = judge(sheet, "metric", inch)
    assert again.findings == metric.findings and again.verdict == metric.verdict and again.missing == metric.missing
    assert (again.groups, again.shown_in, again.worked.waits) == (metric.groups, "metric", metric.worked.waits)
    assert inch.findings != metric.findings
    kept = again.worked.known
    assert all(kept[value] is inch.worked.known[value] for value in trade().values if value in kept)


@pytest.mark.parametrize("name", SHEETS)
def test_what_is_put_off_is_told_and_the_rest_is_as_in_a_whole_judgement(name: str) -> None:
    """Numeric answers a little larger: light, then whole from there."""
    sheet = read_sheet(document(name))
    before = judge(sheet)
    numbers = [field for field, answer in sheet.answers.items() if isinstance(answer, float)]
    for field in random.Random(name).sample(numbers, min(len(numbers), more_in_a_long_run(6))):
        changed = replace(sheet, answers={**sheet.answers, field: sheet.answers[field] * 1.004})
        light, whole = judge(changed, before=before, light=True), judge(changed)
        told = {finding.key: finding for finding in whole.findings}
        for finding in light.findings:
            if finding.check in light.worked.put_off:
                assert (finding.verdict, finding.text, finding.change) == ("waiting", BEING_WORKED_OUT, "")
            else:
                assert finding == told[finding.key]
        assert light.whole or light.verdict in ("stop", "unfinished")
        followed = judge(changed, before=light)
        assert followed.whole
        assert (followed.findings, followed.verdict) == (whole.findings, whole.verdict)


def test_the_pivots_of_a_sheet_that_moves_put_its_sweeps_off_and_the_weight_does_not() -> None:
    entries = document("dune_wren_moving")
    before = judge(read_sheet(entries))
    assert "moving_front" in before.worked.known
    entries["pivots"]["spacing"] = "8.7 in"
    light = judge(read_sheet(entries), before=before, light=True)
    assert not light.whole
    assert {"envelope", "tyre_upper_arm_gap", "best_inner", "bump_toe", "best_arm"} <= light.worked.put_off
    entries = document("dune_wren_moving")
    entries["job"]["corner_weight"] = "350 lb"
    light = judge(read_sheet(entries), before=before, light=True)
    assert light.worked.put_off.isdisjoint(trade().values)
    assert {"envelope", "tyre_upper_arm_gap", "best_inner"} <= light.worked.known.keys()


def test_a_sheet_without_steering_and_arms_has_only_the_room_between_its_parts_and_round_its_bolts_put_off() -> None:
    light = judge(read_sheet(document("dune_wren_finished")), light=True)
    assert {name for name in light.worked.put_off if name in trade().values} == {"corner_room", "fixed_overlaps"}
    checks = {name for name in light.worked.put_off if name in trade().checks}
    assert checks == {"room", "overlap", "joined-parts-touch", "assembly-hub-bolts"}


def test_a_sheet_that_is_not_far_enough_for_anything_heavy_is_whole() -> None:
    assert judge(read_sheet({"sheet_version": 1, "units": "inch", "wheel": {"width": "8 in"}}), light=True).whole
