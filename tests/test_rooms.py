"""The rooms of the program, floor by floor: a room may know those below it, and none of its own floor or above."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

HOME = Path(__file__).parents[1]
FLOORS: tuple[tuple[str, ...], ...] = (
    ("rules.measure",),
    ("rules.tables", "rules.solids", "rules.motion"),
    ("rules.graph",),
    ("rules.strength", "rules.sheet", "rules.corner"),
    ("rules.values",),
    ("rules.checks",),
    ("rules.judging",),
    ("rules.shop",),
    ("rules.drawn", "wizard.files"),
    ("wizard.paper", "wizard.pixels"),
    ("wizard.desk",),
    ("wizard.widgets",),
    ("wizard.screens",),
    ("wizard",),
)
"""From the ground up. `wizard` itself is the command, the running program and the terminal."""
FLOOR = {room: floor for floor, rooms in enumerate(FLOORS) for room in rooms}


def room_of(module: str) -> str | None:
    """The room a module is assumed: the longest name it begins with; None for one that is not ours."""
    parts = module.split(".")
    return next((room for end in (2, 1) if (room := ".".join(parts[:end])) in FLOOR), None)


def modules() -> Iterator[tuple[str, Path]]:
    for top in ("rules", "wizard"):
        for path in sorted((HOME / top).rglob("*.py")):
            yield ".".join(path.relative_to(HOME).with_suffix("").parts).removesuffix(".__init__"), path


def imported(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            # `from wizard import desk` names a room as well as `from wizard.desk import session`.
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def test_no_room_knows_one_above_it_or_beside_it(subtests: pytest.Subtests) -> None:
    for module, path in modules():
        room = room_of(module)
        if room is None:
            assert module == "rules", f"{module} stands in no room"
            continue
        with subtests.test(module):
            above = {
                other
                for name in imported(path)
                if (other := room_of(name)) and other != room and FLOOR[other] >= FLOOR[room]
            }
            assert above == set()


def test_every_room_is_there_and_says_what_it_is() -> None:
    for room in FLOOR:
        assert ast.get_docstring(ast.parse((HOME / room.replace(".", "/") / "__init__.py").read_text("utf-8"))), room


def test_a_room_above_is_found(tmp_path: Path) -> None:
    guilty = tmp_path / "guilty.py"
    guilty.write_text("def late():\n    from wizard import desk\n", "utf-8")
    assert [room_of(name) for name in imported(guilty)] == ["wizard.desk"]
    assert FLOOR["wizard.desk"] > FLOOR["rules.judging"]
