"""What other cars than the samples come to is kept: a line for each group of figures, verdicts, drawings and lists.

A sample goes through a function in one way. Here each is taken with about half of its choices made otherwise, and every figure
a little off, by dice that always fall alike: not cars that anybody would build, but all of it has to be worked out and drawn.
As in `tests/test_kept.py`, none of this says that an answer is right: it tells which group has moved that nobody meant to move.
Read the difference, see that each line is meant, and keep it with `pytest -m "" tests/test_kept_otherwise.py --snapshot-update`.
"""

import random
from collections.abc import Iterable, Iterator
from dataclasses import replace

import pytest
from syrupy.assertion import SnapshotAssertion

from rules.judging.judge import Judged, judge
from rules.judging.trade import trade
from rules.sheet import FIELDS
from tests.support.judging import judged_sample
from tests.support.kept import as_text, mark, shown

CHOSEN_OTHERWISE = 0.5
"""The share of the choices for which the dice are thrown."""
OFF = 0.1
"""The share by which a figure is more or less at most."""


def otherwise(name: str, throw: int) -> Judged:
    """A sample as the dice make it."""
    sheet, dice = judged_sample(name).sheet, random.Random(f"{name} {throw}")
    answers = dict(sheet.answers)
    for field, asked in FIELDS.items():
        was, first, second = answers.get(field), dice.random(), dice.random()
        if type(was) is float:
            answers[field] = was * (1 - OFF + 2 * OFF * second)
        elif isinstance(was, bool):
            answers[field] = was != (first < CHOSEN_OTHERWISE)
        elif isinstance(was, str) and asked.choices and first < CHOSEN_OTHERWISE:
            answers[field] = asked.choices[int(second * len(asked.choices))]
    return judge(replace(sheet, answers=answers), advice=False)


def grouped(pairs: Iterable[tuple[str, str]]) -> Iterator[str]:
    """A line for each group, with how much is in it and its mark."""
    groups: dict[str, list[str]] = {}
    for group, text in pairs:
        groups.setdefault(group, []).append(text)
    for group, texts in groups.items():
        yield f"{group}: {len(texts)} {mark(texts)}"


def worked_out_and_shown(judged: Judged) -> Iterator[tuple[str, str]]:
    """The group and the text of all that is known, found, drawn and listed. A group is a module, or the kind of what is shown."""
    for value in trade().values:
        if value in judged.worked.known:
            yield trade().values[value].function.__module__, f"{value} {as_text(judged.worked.known[value])}"
    for finding in judged.findings:
        checks = trade().checks
        home = checks[finding.check].function.__module__ if finding.check in checks else "other findings"
        yield home, as_text(finding)
    for line in shown(judged):
        words = line.split()
        yield " ".join(words[: 2 if words[0] in ("motion", "checklist") else 1]), line


@pytest.mark.parametrize("throw", range(4))
@pytest.mark.parametrize("name", ["scree_ox_strength", "dune_wren_moving"])
def test_another_car(name: str, throw: int, snapshot: SnapshotAssertion) -> None:
    assert "\n".join(grouped(worked_out_and_shown(otherwise(name, throw)))) == snapshot
