"""Every call to the system that a save makes fails once, and the program is killed once before each of them."""

import errno
from pathlib import Path

import pytest

from tests.support.faults import CASES, Case, calls_of, failing, kill, trial


def folders(tmp_path: Path) -> "list[Path]":
    made = []
    for number in range(100):
        made.append(tmp_path / f"{number}")
        made[-1].mkdir()
    return made


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_what_is_saved_is_whole_whatever_call_fails(case: Case, tmp_path: Path) -> None:
    first, *rest = folders(tmp_path)
    calls = calls_of(case, first)
    assert {"open", "write", "fsync"} <= set(calls)
    for number, name in enumerate(calls):
        assert trial(case, rest[number], number, failing(errno.EIO)) == "", (number, name)


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_what_is_saved_is_whole_wherever_the_program_is_killed(case: Case, tmp_path: Path) -> None:
    first, *rest = folders(tmp_path)
    for number, name in enumerate(calls_of(case, first)):
        assert trial(case, rest[number], number, kill) == "", (number, name)
