"""One name for one thing: no class, and no name of a type, stands for two things in two modules."""

import ast
from collections import defaultdict
from pathlib import Path

HOME = Path(__file__).parents[1]
SAME_THING = {
    "Finding": {"rules/judging/finding.py", "wizard/schemas.py"},
    "Standing": {"rules/judging/scope.py", "wizard/schemas.py"},
}
"""What is found, and its description in the published schema."""


def names_of_types(source: str) -> set[str]:
    """The classes of a module, and what it names like one at its top: `Side = Literal[...]`."""
    tree = ast.parse(source)
    classes = {node.name for node in ast.walk(tree) if isinstance(node, ast.ClassDef)}
    assigned = {
        target.id
        for node in tree.body
        if isinstance(node, ast.Assign)
        for target in node.targets
        if isinstance(target, ast.Name)
    }
    return classes | {name for name in assigned if name[0].isupper() and not name.isupper()}


def test_no_name_of_a_type_stands_in_two_modules() -> None:
    found: dict[str, set[str]] = defaultdict(set)
    for top in ("rules", "wizard"):
        for path in (HOME / top).rglob("*.py"):
            for name in names_of_types(path.read_text("utf-8")):
                found[name].add(path.relative_to(HOME).as_posix())
    assert {name: where for name, where in found.items() if len(where) > 1} == SAME_THING


def test_classes_and_named_types_are_found_and_constants_are_not() -> None:
    planted = "Side = Literal['left']\nLIMIT = 3.0\nlow = 1\nclass Part:\n    class Inner: ...\n"
    assert names_of_types(planted) == {"Side", "Part", "Inner"}
