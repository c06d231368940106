"""The pages a newcomer reads: made from the program, and true."""

import re
from pathlib import Path

import pytest

from rules.judging.catalogue import as_markdown

HERE = Path(__file__).parent.parent
PAGES = ["README.md", "DEVELOPERS.md", "rules/checks/CATALOGUE.md"]


def test_the_catalogue_of_checks_is_fresh() -> None:
    assert (HERE / "rules/checks/CATALOGUE.md").read_text("utf-8") == as_markdown(), "run python .ci/pages.py"


def test_the_readme_starts_with_two_commands_that_set_up_by_themselves() -> None:
    blocks = re.findall(r"^```\n(.*?)^```", (HERE / "README.md").read_text("utf-8"), re.DOTALL | re.MULTILINE)
    demo, test = blocks[0].strip(), blocks[1].strip()
    assert "\n" not in demo and "\n" not in test
    for command in (demo, test):
        assert command.startswith("python3 -m venv .venv && .venv/bin/pip install")
        assert "--constraint constraints.txt" in command
    assert demo.endswith("buildsheet demo")
    assert test.endswith("pytest")


@pytest.mark.parametrize("name", ["wizard", "moving", "drawing"])
def test_a_picture_on_the_page_loads_nothing_from_elsewhere(name: str) -> None:
    picture = (HERE / f"wizard/{name}.svg").read_text("utf-8").replace('xmlns="http://www.w3.org/2000/svg"', "")
    assert "<svg" in picture
    assert not re.findall(r"https?:|url\((?!#)|@import|@font-face|<image|<script|xlink", picture)


def test_continuous_integration_runs_the_readmes_own_test_command() -> None:
    script = (HERE / ".ci/run").read_text("utf-8")
    assert "README.md" in script and "test command" in script
    assert "<!-- test command -->" in (HERE / "README.md").read_text("utf-8")


@pytest.mark.parametrize("page", PAGES)
def test_every_link_on_a_page_leads_somewhere(page: str) -> None:
    path = HERE / page
    for target in re.findall(r"\]\(([^)#]+)\)", path.read_text("utf-8")):
        assert (path.parent / target).exists(), target


def test_the_developers_map_names_every_module_group() -> None:
    text = (HERE / "DEVELOPERS.md").read_text("utf-8")
    for folder in ("rules", "wizard"):
        for path in (HERE / folder).iterdir():
            if path.name.startswith(("_", ".")) or path.suffix not in (".py", ""):
                continue
            assert path.stem in text, f"DEVELOPERS.md says nothing of {folder}/{path.name}"
