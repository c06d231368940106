"""Judging again after some answers changed gives what judging the whole sheet gives, and leaves the earlier one alone."""

import copy
import random
from typing import Any

import pytest

from rules.judging.judge import judge
from rules.judging.trade import trade
from rules.sheet import read_sheet
from sample_sheets import sample, samples
from wizard.files.sheet_file import read

SHEETS = [name for name in samples() if not name.startswith("wrong_")]


def document(name: str) -> dict[str, Any]:
    return copy.deepcopy(dict(read(sample(name)).document))


@pytest.mark.parametrize("name", SHEETS)
def test_changed_emptied_and_added_answers_give_what_a_whole_judgement_gives(name: str) -> None:
    """Twenty random edits one after the other, each taken from another sample, emptied or put back."""
    chance, entries = random.Random(name), document(name)
    others = [document(other) for other in SHEETS]
    judged = judge(read_sheet(entries))
    for _ in range(20):
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


def test_an_answer_that_nothing_rests_on_works_nothing_out_again() -> None:
    graph = trade()
    sheet = read_sheet(document(SHEETS[0]))
    before = graph.work_out(sheet.answers)
    _, touched = graph.work_again(before, {**sheet.answers, "job.notes": "another word"})
    assert touched == frozenset()


def test_other_units_are_judged_anew_because_every_text_changes() -> None:
    sheet = read_sheet(document(SHEETS[0]))
    inch = judge(sheet, "inch")
    assert judge(sheet, "metric", inch).findings == judge(sheet, "metric").findings
