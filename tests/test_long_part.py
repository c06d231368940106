"""The list of the long part names tests that are there, each once; whoever runs all there is runs it too."""

import re
import subprocess
import sys
from pathlib import Path

from tests.conftest import LONG_PART

HERE = Path(__file__).resolve().parent.parent
LISTED = [line for line in LONG_PART.read_text("utf-8").splitlines() if not line.startswith("#")]
ALL_BUT_THE_FIRST = "[1:]"
LOOKED_AT = ("tests/test_slips.py", "tests/rules/measure/test_quantity.py", "tests/rules/drawn/test_front_view.py")


def test_each_line_names_a_test_that_is_there() -> None:
    for line in LISTED:
        path, _, name = line.removesuffix(ALL_BUT_THE_FIRST).partition("::")
        assert re.search(rf"^(?:async )?def {name}\(", (HERE / path).read_text("utf-8"), re.M), line


def test_it_is_in_order_and_names_each_once() -> None:
    assert sorted(LISTED) == LISTED
    assert len({line.removesuffix(ALL_BUT_THE_FIRST) for line in LISTED}) == len(LISTED)


def collected(*asked: str) -> list[str]:
    """The cases that a run of a few files would run."""
    given = [*LOOKED_AT, "-n", "0", "--collect-only", "-p", "no:cacheprovider"]
    command = [sys.executable, "-m", "pytest", *given, *asked]
    ran = subprocess.run(command, cwd=HERE, capture_output=True, text=True, check=False)
    return [line for line in ran.stdout.splitlines() if "::" in line]


def test_it_is_left_out_unless_it_is_asked_for() -> None:
    both = collected("-m", "")
    names = [case.partition("[")[0] for case in both]
    long = [
        case
        for place, (case, name) in enumerate(zip(both, names, strict=True))
        if name in LISTED or (name + ALL_BUT_THE_FIRST in LISTED and name in names[:place])
    ]
    assert any(case.startswith(LOOKED_AT[0]) for case in long)
    assert any(case.startswith(LOOKED_AT[2]) for case in long)
    assert collected("-m", "long") == long
    assert collected() == [case for case in both if case not in long]
