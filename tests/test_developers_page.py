"""DEVELOPERS.md followed by a newcomer: every worked example put into a copy of the program, which is then tried out."""

import os
import re
import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

from tests.support.worked_examples import examples, follow

HOME = Path(__file__).parents[1]
PAGE = (HOME / "DEVELOPERS.md").read_text("utf-8")
COPIED = ("rules", "wizard", "sample_sheets", "tests", ".ci")

TRIED = """
from pathlib import Path
import rules
assert Path(rules.__file__).parents[1] == Path.cwd(), rules.__file__
from rules.drawn.full_size.side import side_view
from rules.graph.results import Waits
from rules.judging.judge import judge
from rules.sheet import FIELDS, read_sheet
from rules.tables.sources import SOURCES
from tests.support.base_sheet import changed
from wizard.desk.pages import PAGES, page_of

judged = judge(read_sheet(changed({"hub.weight": "4 kg"})))
assert judged.sheet.answers["hub.weight"] == 4.0
assert PAGES[page_of("hub.weight")].key == "hub" and PAGES[page_of("spare.stamped_offset")].key == "spare"
known = judged.worked.known
# 31 in and 33 in tyres; track 1600, and the pivots' own offsets
assert abs(known["tyre_size_difference"] - 50.8) < 1e-9
for which in ("lower", "upper"):
    assert abs(known[f"{which}_pivots_apart"] - 1600 - 2 * known[f"{which}_pivot_offset"]) < 1e-9
found = next(finding for finding in judged.findings if finding.check == "tyre-sizes-near")
assert found.verdict == "good" and "50.8 mm" in found.text, found
# nothing of the spare entered; half of it; all of it, beside a wheel of 130 mm backspacing
assert judged.worked.not_judged["spare_reaches_farther"] == "no spare wheel is entered"
half = judge(read_sheet(changed({"spare.stamped_offset": "30 mm"}))).worked
assert half.waits["spare_reaches_farther"] == ("spare.lip_to_lip",)
whole = judge(read_sheet(changed({"spare.stamped_offset": "30 mm", "spare.lip_to_lip": "220 mm"}))).worked
assert whole.known["spare_reaches_farther"] == 10.0
words = [getattr(item, "text", "") for item in side_view(judged, "whole").items]
assert any(text.startswith("wheel bore ø 108") for text in words), words
assert [source.key for source in SOURCES].count("wheel shop") == 1
# strength: 12 mm of class 8.8 in double shear, 640 / root 3 x 226.19 mm2 = 83 579 N
from sample_sheets import document
from rules.strength.weakest import rank
strong = document("scree_ox_strength")
untouched = judge(read_sheet(strong))
assert untouched.verdict == "watch" and not untouched.missing
strong["loads"]["inner_bolt_diameter"] = "12 mm"
judged = judge(read_sheet(strong))
found = next(finding for finding in judged.findings if finding.check == "tie-rod-inner-bolt")
factor = judged.worked.known["inner_bolt_safety"]
assert abs(factor * judged.worked.known["tie_rod_load"] - 83_579) < 50, factor
assert found.verdict == "shown" and "shear of the bolt" in found.text, found
"""


def run(folder: Path, *command: str) -> str:
    """What a command in the copy prints; fails with it where the command does."""
    environment = os.environ | {
        "PYTHONPATH": str(folder),
        "PYTHONDONTWRITEBYTECODE": "",
    }  # compiled once for all commands
    done = subprocess.run([sys.executable, *command], cwd=folder, env=environment, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def test_the_worked_examples_make_a_program_that_does_what_the_page_says(tmp_path: Path) -> None:
    for folder in COPIED:
        shutil.copytree(HOME / folder, tmp_path / folder, ignore=shutil.ignore_patterns("__pycache__", "__snapshots__"))
    for name in ("pyproject.toml", "README.md"):
        shutil.copy(HOME / name, tmp_path)
    touched = [name for name in follow(PAGE, tmp_path) if name.endswith(".py")]
    run(tmp_path, "-m", "ruff", "check", "--no-cache", *touched)
    run(tmp_path, "-m", "ruff", "format", "--no-cache", "--check", *touched)
    run(tmp_path, "-c", TRIED)
    # The new sample, and one whose tyres were 5 in apart already.
    samples = ("wrong_tyres_of_two_cars", "wrong_pivots_entered_upside_down", "dune_wren_finished")
    assert run(tmp_path, ".ci/expect.py", *samples).startswith("2 of 3 ")
    tripped = tomllib.loads((tmp_path / f"sample_sheets/changed/{samples[0]}.expected.toml").read_text("utf-8"))
    assert "tyre-sizes-near" in tripped["stop"]
    catalogue = run(tmp_path, "-c", "from rules.judging.catalogue import as_markdown; print(as_markdown())")
    assert "tyre-sizes-near" in catalogue
    tests = ["tests/rules/judging/test_judge.py", "tests/test_samples.py", "tests/test_docstrings.py"]
    chosen = "tyre-sizes-near or answers_every_step or program_writes_it or test_docstrings"
    said = run(tmp_path, "-m", "pytest", "-m", "", "-n", "0", "-p", "no:cacheprovider", *tests, "-k", chosen)
    assert " passed" in said


def test_a_check_touches_three_files() -> None:
    section = re.search(r"^## How to add a check$.*?(?=^## )", PAGE, re.DOTALL | re.MULTILINE)
    assert section is not None
    assert len({example.into for example in examples(section[0])}) == 3
    assert "three files**" in PAGE


def block(place: str, text: str = "x = 1\n") -> str:
    return f"Some words.\n\n{place}\n\n```python\n{text}```\n"


@pytest.mark.parametrize(
    ("place", "trouble"),
    [
        ("Put it somewhere:", "a block does not say where it goes: 'Put it somewhere:'"),
        ("In `there.py`, at the end of `ROWS`:", "there.py has no list ROWS"),
        ("In `there.py`, after the line `import z`:", "there.py has 0 lines 'import z'"),
        ("In `there.py`, after the line `import `:", "there.py has 2 lines 'import '"),
        ("In `absent.py`, at the end:", "absent.py is not there"),
        ("New, `there.py`:", "there.py is there"),
    ],
)
def test_a_block_that_cannot_be_put_where_the_page_says_is_refused(place: str, trouble: str, tmp_path: Path) -> None:
    (tmp_path / "there.py").write_text("import a\nimport b\nLIST = (\n    1,\n)\n", "utf-8")
    with pytest.raises(ValueError, match=f"^{re.escape(trouble)}$"):
        follow(block(place), tmp_path)


def test_blocks_go_where_the_page_says(tmp_path: Path) -> None:
    (tmp_path / "there.py").write_text("import a\nimport b\nLIST = (\n    1,\n)\n", "utf-8")
    page = (
        block("In `there.py`, at the end of `LIST`:", "    2,\n")
        + block("In `there.py`, after each line `import `:", "# above\n")
        + block("In `there.py`, at the end:")
        + block("New, `other.py`:")
    )
    assert follow(page, tmp_path) == ["there.py", "other.py"]
    assert (tmp_path / "there.py").read_text("utf-8") == (
        "import a\n# above\nimport b\n# above\nLIST = (\n    1,\n    2,\n)\n\n\nx = 1\n"
    )
    assert (tmp_path / "other.py").read_text("utf-8") == "x = 1\n"
