"""The changes that `python .ci/mutants.py` makes to a source, on planted pieces of source."""

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest


@pytest.fixture(scope="module")
def mutations() -> ModuleType:
    path = Path(__file__).parent.parent / ".ci" / "mutations.py"
    spec = importlib.util.spec_from_file_location("mutations", path)
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["mutations"] = module  # a dataclass looks its module up
    spec.loader.exec_module(module)
    return module


@pytest.mark.parametrize(
    ("source", "changed"),
    [
        ("x = 25.0", ["x = 27.500000000000004"]),  # a tenth more
        ("x = 0.0", ["x = 1.0"]),
        ("x = 3", ["x = 4"]),
        ("x = a < b", ["x = a <= b"]),
        ("x = (a) not in (b)", ["x = (a) in (b)"]),
        ("x = a is not b", ["x = a is b"]),
        ("x = a + b * c", ["x = a - b * c", "x = a + b / c"]),
        ("x = (  # a + b\n    a\n    - b\n)", ["x = (  # a + b\n    a\n    + b\n)"]),
        ("x = min(a, b)", ["x = max(a, b)"]),
        ("x = a and b and c", ["x = a or b and c", "x = a and b or c"]),
        ("x = not a", ["x = a"]),
        ("x = -a", ["x = a"]),
        ('x = "stop"', ["x = 'watch'"]),
        ("def f():\n    return True", ["def f():\n    return False"]),
        ("def f():\n    return None", ["def f():\n    return 1"]),
        ('x = "ü" if a > 1 else b', ['x = "ü" if a >= 1 else b', 'x = "ü" if a > 2 else b']),
    ],
)
def test_each_kind_of_change(mutations: ModuleType, source: str, changed: list[str]) -> None:
    assert [one.applied(source) for one in mutations.mutations(source)] == changed


def test_a_limit_reached_becomes_a_limit_passed_wherever_it_stands(mutations: ModuleType) -> None:
    source = "from rules.measure.closeness import reaches\nx = reaches(6.0, 6.0), reaches(7.0, 6.0)"
    first = next(one for one in mutations.mutations(source) if one.was == "reaches")
    known: dict[str, object] = {}
    exec(first.applied(source), known)
    assert known["x"] == (False, True)


@pytest.mark.parametrize(
    "source",
    [
        '"""Up to 25 mm."""',
        'def f(a: Literal["stop", 3]) -> int:\n    """Up to 25."""',
        "Side = Literal[1, 2]",
        "x = f'{a + 1}'",
        "x = 'a' + b",
        "class A:\n    x: Annotated[float, 3]",
        "x = dataclass(frozen=True, slots=True)",
    ],
)
def test_what_is_no_change_of_what_is_done_is_left_alone(mutations: ModuleType, source: str) -> None:
    assert mutations.mutations(source) == []


def test_a_change_knows_the_lines_of_its_statement_and_what_it_belongs_to(mutations: ModuleType) -> None:
    source = "LIMIT = 3.0\n\n\n@limits(\n    4.0,\n)\ndef f(a=5.0):\n    return (\n        a + 6.0\n    )\n"
    found = {one.was: one for one in mutations.mutations(source)}
    assert found["3.0"].names == ("LIMIT",) and not found["3.0"].in_function
    assert found["4.0"].names == ("f",) and not found["4.0"].in_function
    assert found["5.0"].names == ("f",) and not found["5.0"].in_function
    assert found["6.0"].in_function and (found["6.0"].first, found["6.0"].last) == (8, 10)
