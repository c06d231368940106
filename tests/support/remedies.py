"""The texts that say what to change, as they stand in the program: found by following what is given as `change`."""

import ast
from collections.abc import Iterable, Iterator
from functools import cache
from pathlib import Path

HOME = Path(__file__).parents[2]
ROOMS = ("rules/checks", "rules/values", "rules/strength")
TOLD = ("change", "changes", "remedy")
"""What holds such a text, whether a name, a parameter or the key of a table."""
THIRD = 2
"""Where `Judgement` takes it, when it is given by its place."""

Said = dict[str, list[ast.AST]]
"""What a name or a function stands for: what is assigned to it, or what it returns."""


Nodes = tuple[ast.AST, ...]
"""All of a module, looked through once."""


@cache
def _modules() -> tuple[tuple[ast.Module, Nodes], ...]:
    paths = sorted(path for room in ROOMS for path in (HOME / room).rglob("*.py"))
    modules = (ast.parse(path.read_text("utf-8")) for path in paths)
    return tuple((module, tuple(ast.walk(module))) for module in modules)


def _taken_at() -> dict[str, int]:
    """Where a function takes such a text, by the function's name."""
    places = {"Judgement": THIRD}
    for node in (node for _, nodes in _modules() for node in nodes):
        if isinstance(node, ast.FunctionDef):
            names = [argument.arg for argument in node.args.args]
            for told in filter(names.__contains__, TOLD):
                places[node.name] = names.index(told)
    return places


def _said(nodes: Iterable[ast.AST]) -> Said:
    said: Said = {}
    for node in nodes:
        if isinstance(node, ast.Assign | ast.AugAssign | ast.AnnAssign) and node.value is not None:
            for target in node.targets if isinstance(node, ast.Assign) else [node.target]:
                if isinstance(target, ast.Name):
                    said.setdefault(target.id, []).append(node.value)
        elif isinstance(node, ast.FunctionDef):
            returns = (part.value for part in ast.walk(node) if isinstance(part, ast.Return) and part.value is not None)
            said.setdefault(node.name, []).extend(returns)
    return said


def _names(called: ast.expr) -> tuple[str, str]:
    """The first and the last name of what is called: ("change", "append") of `change.append`. Empty where it is no name."""
    last = called.attr if isinstance(called, ast.Attribute) else ""
    while isinstance(called, ast.Attribute):
        called = called.value
    first = called.id if isinstance(called, ast.Name) else ""
    return first, last or first


def _given(nodes: Nodes, taken_at: dict[str, int]) -> Iterator[ast.AST]:
    """What is given as what to change."""
    for node in nodes:
        if isinstance(node, ast.Call):
            first, last = _names(node.func)
            if (place := taken_at.get(last)) is not None:
                yield from node.args[place : place + 1]
            yield from (keyword.value for keyword in node.keywords if keyword.arg in TOLD)
            if first in TOLD:
                yield from node.args
        elif isinstance(node, ast.Dict):
            for key, value in zip(node.keys, node.values, strict=True):
                if isinstance(key, ast.Constant) and key.value in TOLD:
                    yield value


def written(node: ast.AST) -> str | None:
    """A text as written, what is filled in left open; None where it is none."""
    if isinstance(node, ast.Constant):
        return node.value if isinstance(node.value, str) else None
    if isinstance(node, ast.JoinedStr):
        return "".join(str(part.value) if isinstance(part, ast.Constant) else "{}" for part in node.values)
    return None


@cache
def remedies() -> frozenset[str]:
    """Every text, or piece of one, that tells what to change. What is imported is looked for in all the rooms."""
    taken_at = _taken_at()
    everywhere = _said(node for module, _ in _modules() for node in module.body)
    found: set[str] = set()
    for _, nodes in _modules():
        said = _said(nodes)
        imported = {alias.name for node in nodes if isinstance(node, ast.ImportFrom) for alias in node.names}
        followed: set[str] = set()
        waiting = [*_given(nodes, taken_at), *(node for told in TOLD for node in said.get(told, []))]
        while waiting:
            node = waiting.pop()
            text = written(node)
            if text is not None:
                found.add(text)
            if isinstance(node, ast.Name) and node.id not in followed:
                followed.add(node.id)
                waiting += said.get(node.id) or (everywhere.get(node.id, []) if node.id in imported else [])
            parts = ast.iter_child_nodes(node)
            waiting += (part for part in parts if not isinstance(node, ast.JoinedStr) or written(part) is None)
    return frozenset(found)
