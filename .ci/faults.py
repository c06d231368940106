"""Saves in which one call to the system fails with each of many errors, or two in a row do, or the program is killed there.

python .ci/faults.py     prints how many trials there were and what went wrong
"""

import errno
import os
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent.parent))

from tests.support.faults import CASES, Case, calls_of, failing, kill, trial

ERRORS = (
    errno.EIO,
    errno.ENOSPC,
    errno.EACCES,
    errno.EPERM,
    errno.EROFS,
    errno.EDQUOT,
    errno.EMFILE,
    errno.ENOMEM,
    errno.ESTALE,
)


def trials(case: Case) -> Iterator[tuple[str, str]]:
    """Each trial of a case: what was done, and what it left wrong."""
    with tempfile.TemporaryDirectory() as folder:
        calls = calls_of(case, Path(folder))
    for number, name in enumerate(calls):
        faults = {"killed": kill} | {os.strerror(error): failing(error) for error in ERRORS}
        for said, fault in faults.items():
            with tempfile.TemporaryDirectory() as folder:
                yield f"{case.name}, call {number} {name}, {said}", trial(case, Path(folder), number, fault)


def main() -> int:
    """Run, print, and fail if anything was left wrong."""
    done = bad = 0
    for case in CASES:
        for what, wrong in trials(case):
            done += 1
            if wrong:
                bad += 1
                print(f"{what}: {wrong}", flush=True)
    print(f"{done} trials: {bad} left wrong")
    return 1 if bad else 0


if __name__ == "__main__":
    raise SystemExit(main())
