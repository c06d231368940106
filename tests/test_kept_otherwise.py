"""What other cars than the samples come to is kept: a line for each group of figures, verdicts, drawings and lists.

A sample goes through a function in one way. Here each is taken with about a third of its choices made otherwise, every figure a
little off and some answers left out, by dice that always fall alike: not cars that anybody would build, but all of it has to be
worked out, drawn and explained.
As in `tests/test_kept.py`, none of this says that an answer is right: it tells which group has moved that nobody meant to move.
Read the difference, see that each line is meant, and keep it with `pytest -m "" tests/test_kept_otherwise.py --snapshot-update`.
"""

import random
from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion

from rules.judging.compare import compare
from rules.judging.explain import explain
from rules.judging.judge import Judged, judge
from rules.judging.offers import offer
from rules.judging.proposal_words import as_data, no_offer_words
from rules.judging.proposals import in_trouble, look_for_each
from rules.judging.room_table import entry_behind, room_table
from rules.judging.trade import trade
from rules.sheet import FIELDS
from tests.support.judging import judged_sample
from tests.support.kept import as_text, mark, shown

CHOSEN_OTHERWISE = 0.35
"""The share of the choices for which the dice are thrown."""
OFF, LEFT_OUT = (0.1, 0.25, 0.05, 0.02), (0.0, 0.02, 0.01, 0.05)
"""The share by which a figure is more or less at most, and the share of answers that is left out: of each throw in turn."""
RICH = ("scree_ox_strength", "dune_wren_moving")
SMALL = ("dune_wren_finished", "fell_badger_finished_metric", "pond_newt_finished")


def otherwise(name: str, throw: int) -> Judged:
    """A sample as the dice make it."""
    sheet, dice = judged_sample(name).sheet, random.Random(f"{name} {throw}")
    off, left_out = OFF[throw % len(OFF)], LEFT_OUT[throw % len(LEFT_OUT)]
    answers = dict(sheet.answers)
    for field, asked in FIELDS.items():
        was, first, second, third = answers.get(field), dice.random(), dice.random(), dice.random()
        if third < left_out:
            answers.pop(field, None)
        elif type(was) is float:
            answers[field] = was * (1 - off + 2 * off * second)
        elif isinstance(was, bool):
            answers[field] = was != (first < CHOSEN_OTHERWISE)
        elif isinstance(was, str) and asked.choices and first < CHOSEN_OTHERWISE:
            answers[field] = asked.choices[int(second * len(asked.choices))]
    return judge(replace(sheet, answers=answers))


def grouped(pairs: Iterable[tuple[str, str]]) -> Iterator[str]:
    """A line for each group, with how much is in it and its mark."""
    groups: dict[str, list[str]] = {}
    for group, text in pairs:
        groups.setdefault(group, []).append(text)
    for group, texts in groups.items():
        yield f"{group}: {len(texts)} {mark(texts)}"


def worked_out_and_shown(judged: Judged) -> Iterator[tuple[str, str]]:
    """The group and the text of all that is known, found, drawn and listed. A group is a folder, or the kind of what is shown."""
    for value in trade().values:
        if value in judged.worked.known:
            yield _folder(trade().values[value]), f"{value} {as_text(judged.worked.known[value])}"
    for finding in judged.findings:
        checks = trade().checks
        yield _folder(checks[finding.check]) if finding.check in checks else "other findings", as_text(finding)
    for line in shown(judged):
        yield line.split()[0], line


def _folder(node: Any) -> str:
    return str(node.function.__module__.rpartition(".")[0])


def told(judged: Judged, before: Judged) -> Iterator[tuple[str, str]]:
    """The same of what is said about it: how each name is worked out, what would help, what differs from another sheet."""
    for name in (*trade().values, *trade().checks, *FIELDS):
        yield "explained", as_text(explain(judged, name))
    for looked in look_for_each(judged, in_trouble(judged)):
        yield "proposed", as_text((looked.finding.key, as_data(looked), no_offer_words(looked), looked.tried))
    for line in room_table(judged).lines:
        yield "behind the least room", entry_behind(line, judged)
    for name in FIELDS:
        yield "offered", as_text(offer(name, judged))
    yield "compared", as_text((compare(before, judged), compare(judged, before)))


@pytest.mark.parametrize("throw", range(8))
@pytest.mark.parametrize("name", RICH)
def test_another_car(name: str, throw: int, snapshot: SnapshotAssertion) -> None:
    assert "\n".join(grouped(worked_out_and_shown(otherwise(name, throw)))) == snapshot


@pytest.mark.parametrize("throw", range(8))
@pytest.mark.parametrize("name", SMALL)
def test_another_small_car(name: str, throw: int, snapshot: SnapshotAssertion) -> None:
    judged = otherwise(name, throw)
    pairs = [*worked_out_and_shown(judged), *told(judged, judged_sample(name))]
    assert "\n".join(grouped(pairs)) == snapshot
