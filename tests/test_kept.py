"""What the samples come to is kept: each figure, each verdict, and a mark of all that is drawn, listed and explained.

None of this says that a figure is right; that is what the other tests are for. It tells when one has moved that nobody meant
to move. Read the difference, see that each line of it is meant, and keep it with
`pytest -m "" tests/test_kept.py --snapshot-update`.
"""

import tomllib
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest
from syrupy.assertion import SnapshotAssertion

import sample_sheets
from rules.judging.judge import judge
from rules.sheet import FIELDS
from sample_sheets import samples
from tests.support.judging import judged_sample
from tests.support.kept import as_text, explained, mark, shown, worked_out, written_down

CHANGED = {
    path.stem: tomllib.loads(path.read_text("utf-8"))["base"]
    for path in sorted((Path(sample_sheets.__file__).parent / "changed").glob("*.toml"))
    if not path.stem.endswith(".expected")
}
WHOLE = [name for name in samples() if name not in CHANGED]
MOVED_BY = 1.07
"""No answer of a car is out by more than one that a person might have taped so."""


@cache
def lines(name: str) -> tuple[str, ...]:
    """What a whole sample comes to, written out once for all that differ from it."""
    return tuple(worked_out(judged_sample(name)))


@pytest.mark.parametrize("name", WHOLE)
def test_figures_and_verdicts(name: str, snapshot: SnapshotAssertion) -> None:
    assert "\n".join(lines(name)) == snapshot


@pytest.mark.parametrize("name", WHOLE)
def test_what_is_drawn_and_listed(name: str, snapshot: SnapshotAssertion) -> None:
    assert "\n".join(shown(judged_sample(name))) == snapshot


def test_what_is_explained(snapshot: SnapshotAssertion) -> None:
    assert "\n".join(explained(judged_sample("fell_badger_finished_metric"))) == snapshot


def test_what_is_written_down(snapshot: SnapshotAssertion) -> None:
    assert "\n".join(written_down()) == snapshot


@pytest.mark.parametrize("name", CHANGED)
def test_what_a_change_changes(name: str, snapshot: SnapshotAssertion) -> None:
    base = set(lines(CHANGED[name]))
    assert "\n".join(line for line in worked_out(judged_sample(name)) if line not in base) == snapshot


def alike(now: object, was: object) -> bool:
    return now is was or now == was or as_text(now) == as_text(was)


def test_what_one_answer_in_four_moves(snapshot: SnapshotAssertion) -> None:
    before = judged_sample("scree_ox_strength")
    was, verdict = before.worked.known, {finding.key: finding.verdict for finding in before.findings}
    lines = []
    numbers = [name for name in FIELDS if isinstance(before.sheet.answers.get(name), float)]
    for name in numbers[::4]:
        answer = before.sheet.answers[name]
        moved = {**before.sheet.answers, name: answer * MOVED_BY}
        after = judge(replace(before.sheet, answers=moved), before=before, advice=False)
        values = {value: now for value, now in after.worked.known.items() if not alike(now, was.get(value))}
        findings = [finding for finding in after.findings if finding not in before.findings]
        worse = [f"{one.key} {one.verdict}" for one in findings if one.verdict != verdict.get(one.key)]
        lines.append(f"{name}: {len(values)} {mark(values)} {mark(findings)} {', '.join(worse)}".rstrip())
    assert "\n".join(lines) == snapshot
