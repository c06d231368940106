"""The list of the long part names tests that are there, each once; whoever runs all there is runs it too."""

import re
import subprocess
import sys
from pathlib import Path

from tests.conftest import LONG_PART

HERE = Path(__file__).resolve().parent.parent
LISTED = [line for line in LONG_PART.read_text("utf-8").splitlines() if not line.startswith("#")]


def test_each_line_names_a_test_that_is_there() -> None:
    for line in LISTED:
        path, _, name = line.partition("::")
        assert re.search(rf"^(?:async )?def {name}\(", (HERE / path).read_text("utf-8"), re.M), line


def test_it_is_in_order_and_names_each_once() -> None:
    assert sorted(set(LISTED)) == LISTED


def collected(*asked: str) -> set[str]:
    """The tests, without their cases, that a run of two files would run."""
    given = [
        "tests/test_slips.py",
        "tests/rules/measure/test_quantity.py",
        "-n",
        "0",
        "--collect-only",
        "-p",
        "no:cacheprovider",
    ]
    command = [sys.executable, "-m", "pytest", *given, *asked]
    ran = subprocess.run(command, cwd=HERE, capture_output=True, text=True, check=False)
    return {line.partition("[")[0] for line in ran.stdout.splitlines() if "::" in line}


def test_it_is_left_out_unless_it_is_asked_for() -> None:
    quick, long, both = collected(), collected("-m", "long"), collected("-m", "")
    assert long == both & set(LISTED)
    assert quick == both - long
    assert quick and long
