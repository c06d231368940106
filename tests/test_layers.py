"""What each layer may know: `rules` no screen, disk or clock; `wizard` no trade arithmetic. Read from the source itself."""

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

import rules
import wizard

HOME = Path(rules.__file__).parents[1]
RULES = sorted(Path(rules.__file__).parent.rglob("*.py"))
WIZARD = sorted(Path(wizard.__file__).parent.rglob("*.py"))
LONGEST_MODULE = 400


def shown(path: Path) -> str:
    return path.relative_to(HOME).as_posix()


@cache
def tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text("utf-8"))


@cache
def nodes(path: Path) -> tuple[ast.AST, ...]:
    """Every part of a module."""
    return tuple(ast.walk(tree(path)))


def imports(path: Path) -> Iterator[str]:
    """Every imported module, and every name imported from it with a dot between: `math`, `math.tan`."""
    package = ".".join(path.relative_to(HOME).parts[:-1])
    for node in nodes(path):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            above = package.split(".")[: len(package.split(".")) - node.level + 1] if node.level else []
            module = ".".join([*above, *([node.module] if node.module else [])])
            yield module
            yield from (f"{module}.{alias.name}" for alias in node.names)


def calls(path: Path) -> Iterator[str]:
    for node in nodes(path):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            yield node.func.id


def attributes(path: Path) -> Iterator[str]:
    for node in nodes(path):
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
            yield f"{node.value.id}.{node.attr}"


def under(names: Iterator[str], forbidden: set[str]) -> set[str]:
    """The names that are one of the forbidden ones or lie inside it."""
    return {name for name in names if any(name == one or name.startswith(f"{one}.") for one in forbidden)}


def test_both_layers_are_found() -> None:
    assert len(RULES) > 20 and len(WIZARD) > 3


SCREEN_DISK_CLOCK = {
    "wizard", "sample_sheets", "textual", "rich", "tomllib", "tomli_w", "platformdirs", "os", "io", "pathlib", "shutil",
    "tempfile", "glob", "sys", "datetime", "time", "calendar", "random", "secrets", "uuid", "socket", "urllib", "http",
    "subprocess", "threading", "asyncio", "logging", "locale", "builtins", "importlib",
}  # fmt: skip


def test_rules_know_no_screen_no_disk_and_no_clock(subtests: pytest.Subtests) -> None:
    """Nor do they run a text, but for the one module that writes the methods of records from the names of their fields."""
    for path in RULES:
        with subtests.test(shown(path)):
            assert under(imports(path), SCREEN_DISK_CLOCK) == set()
            called = set(calls(path)) - ({"exec"} if path.name == "records.py" else set())
            assert not {"open", "print", "input", "exec", "eval", "compile", "__import__", "breakpoint"} & called
            assert not {"sys.stdout", "sys.stderr", "os.environ"} & set(attributes(path))


TRADE = {"rules.values", "rules.checks", "rules.tables", "rules.graph.bands", "rules.graph.engine"}
TRIGONOMETRY = {"math." + name for name in ("sin", "cos", "tan", "asin", "acos", "atan", "atan2", "radians", "degrees")}
CONVERSIONS = {
    25.4,
    304.8,
    0.0254,
    0.3048,
    0.45359237,
    4.4482216152605,
    9.80665,
    9.81,
    1.3558179483314,
    0.44704,
    1.609344,
}
DRAWS = {
    "wizard/widgets/raster.py": "a circle into dots",
    "wizard/paper/pdf.py": "a circle into curves",
    "wizard/paper/seams.py": "which pages a circle crosses, and places round a word",
    "wizard/paper/meshes.py": "a round face into flat ones",
    "wizard/paper/lettering.py": "millimetres of paper into points",
}
"""Modules that put marks on a screen or a sheet of paper, and what they need angles or 25.4 for."""


def test_the_wizard_imports_no_working_and_no_judgement(subtests: pytest.Subtests) -> None:
    for path in WIZARD:
        with subtests.test(shown(path)):
            assert under(imports(path), TRADE) == set()


def test_the_wizard_holds_no_angle_function_and_no_conversion_factor_outside_drawing(subtests: pytest.Subtests) -> None:
    """As near as the source can tell to: it does no trade arithmetic."""
    for path in [path for path in WIZARD if shown(path) not in DRAWS]:
        with subtests.test(shown(path)):
            assert not TRIGONOMETRY & (set(imports(path)) | set(attributes(path)))
            numbers = {node.value for node in nodes(path) if isinstance(node, ast.Constant)}
            assert not CONVERSIONS & {number for number in numbers if isinstance(number, float)}


def test_a_module_that_draws_does_not_know_the_sheet(subtests: pytest.Subtests) -> None:
    """It is handed shapes and words; so the angles in it cannot be the trade's."""
    for path in [path for path in WIZARD if shown(path) in DRAWS]:
        with subtests.test(shown(path)):
            assert under(imports(path), {"rules.sheet", "rules.judging.judge", "rules.judging.trade"}) == set()


def test_no_module_is_longer_than_four_hundred_lines(subtests: pytest.Subtests) -> None:
    for path in [*RULES, *WIZARD]:
        with subtests.test(shown(path)):
            assert len(path.read_text("utf-8").splitlines()) <= LONGEST_MODULE


def test_text_of_a_sheet_is_never_passed_through_the_screen_librarys_own_escape(subtests: pytest.Subtests) -> None:
    for path in WIZARD:
        with subtests.test(shown(path)):
            # It leaves some brackets live; text goes to the screen as content, not as markup.
            assert not {"textual.markup.escape", "rich.markup.escape"} & (set(imports(path)) | set(attributes(path)))
            assert "markup.escape" not in set(attributes(path))


OUTSIDE = re.compile(r"""(?<![\w.:/<~])/[a-z]+/[a-z]|\.\./|[A-Z]:\\\\|~/""")


def test_no_module_names_a_path_outside_the_project(subtests: pytest.Subtests) -> None:
    for path in [*RULES, *WIZARD]:
        with subtests.test(shown(path)):
            found = [line.strip() for line in path.read_text("utf-8").splitlines() if OUTSIDE.search(line)]
            assert found == []


@pytest.mark.parametrize(
    "guilty", ["import os", "from pathlib import Path", "import os.path as p", "from textual.app import App"]
)
def test_the_search_for_imports_finds_them(tmp_path: Path, guilty: str, monkeypatch: pytest.MonkeyPatch) -> None:
    module = tmp_path / "rules" / "guilty.py"
    module.parent.mkdir()
    module.write_text(f"def late():\n    {guilty}\n    print(open('x'))\n", "utf-8")
    monkeypatch.setitem(imports.__globals__, "HOME", tmp_path)
    assert under(imports(module), SCREEN_DISK_CLOCK)
    assert {"open", "print"} <= set(calls(module))


@pytest.mark.parametrize("line", ['open("/etc/hosts")', "see ../notes", 'Path("~/sheets")'])
def test_the_search_for_outside_paths_finds_them(line: str) -> None:
    assert OUTSIDE.search(line)


@pytest.mark.parametrize("line", ["110 km/h", "3/8 in", "https://example.org/page", "and/or", "n / m", "</b>"])
def test_the_search_for_outside_paths_leaves_ordinary_slashes(line: str) -> None:
    assert not OUTSIDE.search(line)
