"""Where a formula is asked outside its range, the finding says which answer to put right."""

import ast
from pathlib import Path

import pytest

import rules.values
from rules.sheet import FIELDS

WORDS = tuple(asked.label.replace(",", "").lower() for asked in FIELDS.values())
SAID_IN_THE_TEXT = ("the bolt mark",)
"""Reasons that hold the entry itself and what to write instead."""


def raised() -> list[tuple[str, ast.Call]]:
    """Every OutsideRange that the values raise, with the module's name and line."""
    found = []
    for path in sorted(Path(rules.values.__file__).parent.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "OutsideRange":
                found.append((f"{path.name}:{node.lineno}", node))
    return found


def test_every_range_left_names_an_answer_to_change(subtests: pytest.Subtests) -> None:
    calls = raised()
    assert len(calls) > 12
    for where, call in calls:
        with subtests.test(where):
            text = ast.unparse(call.args[0]).lower()
            if any(said in text for said in SAID_IN_THE_TEXT):
                continue
            change = [ast.unparse(word.value) for word in call.keywords if word.arg == "change"]
            assert change, f"{where} says not what to change"
            told = change[0].replace(",", "").replace("{which}", "upper").lower()
            assert any(word in told for word in WORDS), f"{where} names no answer: {change[0]}"
