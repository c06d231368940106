"""The one reader: what it hands out, what it refuses, and that nothing that draws, lists or prints goes round it."""

import ast
import importlib
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from types import ModuleType

import pytest

import rules
from rules.graph.annotations import GraphError
from rules.graph.engine import Worked
from rules.graph.results import Estimate
from rules.judging.reader import (
    Size,
    _number,
    absent,
    answer,
    check_id,
    is_known,
    name,
    reads,
    still_needed,
    to_measure,
    with_estimates,
)  # fmt: skip
from rules.judging.trade import trade
from rules.measure.marks import Thread
from rules.measure.units import Kg, Mm, Rad

HOME = Path(rules.__file__).parents[1]
OUTPUTS = sorted(
    path for room in ("rules/drawn", "rules/shop", "rules/judging", "wizard") for path in (HOME / room).rglob("*.py")
)
WALKS_THE_GRAPH = {"judge.py", "explain.py", "report.py"}
"""Of `rules/judging`: these look at every field, value and check alike, by the names the graph itself gives."""
DOOR = {"name", "check_id"}


def shown(path: Path) -> str:
    return path.relative_to(HOME).as_posix()


@cache
def tree(path: Path) -> ast.Module:
    """A module as read, for all who only look at it."""
    return _parsed(path)


def _parsed(path: Path) -> ast.Module:
    return ast.parse(path.read_text("utf-8"))


# What it hands out


@reads
def mass_and_place(
    corner_weight: Kg, rotor_plane_offset: Mm | None, *, side: str
) -> tuple[str, float, float | None] | None:
    return side, corner_weight, rotor_plane_offset


@reads
def lines(rotor_diameter: Size, stud_thread: Thread | None) -> Iterator[object]:
    yield rotor_diameter
    yield stud_thread


def test_a_parameter_is_a_field_or_a_value_and_the_rest_is_handed_on() -> None:
    known = {"job.corner_weight": 300.0, "rotor_plane_offset": -50.0}
    assert mass_and_place(known, side="left") == ("left", 300.0, -50.0)


def test_without_what_it_can_do_without_it_answers() -> None:
    assert mass_and_place({"job.corner_weight": 300.0}, side="left") == ("left", 300.0, None)


def test_without_what_it_needs_it_answers_nothing() -> None:
    assert mass_and_place({"rotor_plane_offset": -50.0}, side="left") is None
    assert list(lines({})) == []


@pytest.mark.parametrize("odd", [None, True, "300", float("nan"), float("inf"), 10**400])
def test_what_is_no_finite_number_is_not_known(odd: object) -> None:
    assert mass_and_place({"job.corner_weight": odd}, side="left") is None


@pytest.mark.parametrize(("diameter", "drawn"), [(285.0, [285.0, None]), (0.0, []), (-1.0, [])])
def test_a_size_is_above_nought(diameter: float, drawn: list[object]) -> None:
    assert list(lines({"rotor.diameter": diameter})) == drawn


def test_an_answer_of_another_type_is_not_known() -> None:
    assert list(lines({"rotor.diameter": 285.0, "hub.stud_thread": "12 x 1.5"})) == [285.0, None]


def test_it_tells_what_is_still_needed() -> None:
    assert still_needed(lines, {}) == ("rotor.diameter",)
    assert still_needed(lines, {"rotor.diameter": 285.0}) == ()


def test_a_number_that_rests_on_an_estimate_comes_as_one() -> None:
    worked = Worked(
        {"job.corner_weight": 300.0, "rotor_plane_offset": -50.0}, {"rotor_plane_offset": ("rotor.hat_thickness",)}
    )
    found = mass_and_place(with_estimates(worked), side="left")
    assert found == ("left", 300.0, -50.0)
    assert [type(number) for number in found[1:]] == [float, Estimate]
    assert to_measure(worked, name("job.corner_weight"), name("rotor_plane_offset")) == ("rotor.hat_thickness",)


def test_names_in_tables() -> None:
    offset, diameter = name("hub_face_offset"), name("wheel.diameter")
    assert (offset.unit, diameter.unit, name("pivots.castor").unit, name("job.use").unit) == ("mm", "mm", "rad", "str")
    known = {"wheel.diameter": 381.0}
    assert (answer(known, diameter), answer(known, offset)) == (381.0, None)
    assert is_known(known, diameter) and not is_known(known, diameter, offset)
    assert absent(known, (diameter, offset)) == (offset,)


# What it refuses


def test_an_unknown_name_is_refused_with_module_and_function() -> None:
    with pytest.raises(GraphError, match=r"test_reader: wheel: nothing is called wheel_diametre"):

        @reads
        def wheel(wheel_diametre: Mm) -> None: ...


def test_another_unit_is_refused() -> None:
    with pytest.raises(GraphError, match=r"wheel_diameter is taken in rad, but wheel.diameter gives mm"):

        @reads
        def wheel(wheel_diameter: Rad) -> None: ...


def test_a_name_that_two_steps_have_is_refused() -> None:
    with pytest.raises(GraphError, match=r"diameter could be any of .*put the step in front"):

        @reads
        def wheel(diameter: Mm) -> None: ...


def test_an_annotation_that_hides_that_nothing_may_come_is_refused() -> None:
    with pytest.raises(GraphError, match=r"half may answer None"):

        @reads
        def half(wheel_diameter: Mm) -> float:
            return wheel_diameter / 2


@pytest.mark.parametrize("wrong", ["hub_face_ofset", "wheel.diametre", "diameter", "wheel_diameter", "wheel-load"])
def test_a_table_takes_no_name_that_nothing_has(wrong: str) -> None:
    with pytest.raises(GraphError, match=rf"test_reader: nothing is called {wrong}"):
        name(wrong)


def test_a_table_takes_no_id_that_no_check_has() -> None:
    assert check_id("wheel-load") == "wheel-load"
    with pytest.raises(GraphError, match=r"test_reader: no check is called wheel-lode"):
        check_id("wheel-lode")


# Every name there is, changed by one letter, is refused at import


def names_in(module: ast.Module) -> Iterator[ast.Constant | ast.arg]:
    """The strings handed to the reader, and the parameters of the functions marked with it."""
    for node in ast.walk(module):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in DOOR:
            yield from (one for one in ast.walk(node) if isinstance(one, ast.Constant) and isinstance(one.value, str))
        if isinstance(node, ast.FunctionDef) and any(
            isinstance(mark, ast.Name) and mark.id == "reads" for mark in node.decorator_list
        ):
            yield from node.args.args


MAY_USE_IT = re.compile(r"\bname\(|\bcheck_id\(|\breads\b")
USERS = [
    path
    for path in OUTPUTS
    if path.name != "reader.py" and MAY_USE_IT.search(path.read_text("utf-8")) and any(names_in(_parsed(path)))
]


def test_the_outputs_use_the_reader() -> None:
    assert {"rules/drawn/front_view.py", "rules/shop/layout.py", "wizard/screens/motion.py"} <= set(map(shown, USERS))
    assert sum(len(list(names_in(tree(path)))) for path in USERS) > 400


@pytest.mark.parametrize("path", USERS, ids=shown)
def test_no_name_can_be_mistyped(path: Path) -> None:
    dotted = shown(path).removesuffix(".py").replace("/", ".").removesuffix(".__init__")
    importlib.import_module(dotted)
    module = _parsed(path)  # its names are changed
    for found in names_in(module):
        kind, right = ("value", found.value) if isinstance(found, ast.Constant) else ("arg", found.arg)
        setattr(found, kind, f"{right}x")
        mistyped = ModuleType(dotted)
        mistyped.__file__ = str(path)
        mistyped.__package__ = dotted if path.name == "__init__.py" else dotted.rpartition(".")[0]
        with pytest.raises(GraphError, match=r"nothing is called|no check is called"):
            exec(compile(module, str(path), "exec"), vars(mistyped))
        setattr(found, kind, right)


# Nothing goes round it


def in_front_of_the_door(module: ast.Module) -> set[ast.AST]:
    """Every part of a call of `name` or `check_id`."""
    return {
        part
        for node in ast.walk(module)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in DOOR
        for part in ast.walk(node)
    }


def bare_names(module: ast.Module) -> Iterator[tuple[int, str]]:
    """Strings that are a field's, value's or check's name, and f-strings that can become one, with their lines.

    A name of one plain word, such as `envelope`, may be meant as that word: it is no key, since nothing is looked up here.
    """
    every = [one for one in (*trade().units, *trade().checks) if re.search(r"[._-]", one)]
    through = in_front_of_the_door(module)
    for node in ast.walk(module):
        if node in through:
            continue
        if isinstance(node, ast.Constant) and node.value in every:
            yield node.lineno, str(node.value)
        elif isinstance(node, ast.JoinedStr):
            words = [part.value if isinstance(part, ast.Constant) else None for part in node.values]
            if re.search(r"[._][a-z]|[a-z][._]", "".join(str(word) for word in words if word)):
                pattern = "".join("[a-z_]+" if word is None else re.escape(str(word)) for word in words)
                yield from ((node.lineno, one) for one in every if re.fullmatch(pattern, one))


def lookups(module: ast.Module) -> Iterator[int]:
    """Lines that look something up in what is known."""

    def is_the_known(node: ast.expr) -> bool:
        found = node.attr if isinstance(node, ast.Attribute) else node.id if isinstance(node, ast.Name) else ""
        return found.lstrip("_") == "known"

    for node in ast.walk(module):
        if (
            (isinstance(node, ast.Subscript) and is_the_known(node.value))
            or (isinstance(node, ast.Attribute) and node.attr in ("get", "keys", "items") and is_the_known(node.value))
            or (
                isinstance(node, ast.Compare)
                and isinstance(node.ops[0], ast.In | ast.NotIn)
                and is_the_known(node.comparators[0])
            )
        ):
            yield node.lineno


def unlooked(module: ast.Module) -> Iterator[int]:
    """Lines on which a written name is looked up only when a function runs, not at import."""
    for function in ast.walk(module):
        if not isinstance(function, ast.FunctionDef | ast.Lambda):
            continue
        yield from (
            node.lineno
            for node in ast.walk(function)
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in DOOR
            if any(isinstance(part, ast.Constant | ast.JoinedStr) for part in node.args)
        )


@pytest.mark.parametrize("path", OUTPUTS, ids=shown)
def test_no_name_stands_bare(path: Path) -> None:
    assert [f"{shown(path)}:{line}: {one}" for line, one in bare_names(tree(path))] == []


@pytest.mark.parametrize("path", OUTPUTS, ids=shown)
def test_nothing_else_looks_into_what_is_known(path: Path) -> None:
    if path.parent.name != "judging" or path.name not in {*WALKS_THE_GRAPH, "reader.py"}:
        assert [f"{shown(path)}:{line}" for line in lookups(tree(path))] == []


@pytest.mark.parametrize("path", OUTPUTS, ids=shown)
def test_written_names_are_looked_up_at_import(path: Path) -> None:
    assert [f"{shown(path)}:{line}" for line in unlooked(tree(path))] == []


@pytest.mark.parametrize(
    ("source", "found"),
    [
        ("x = 'wheel.diameter'", [(1, "wheel.diameter")]),
        ("x = 'hub_face_offset'", [(1, "hub_face_offset")]),
        ("x = 'wheel-load'", [(1, "wheel-load")]),
        ("x = f'{which}_pivot_height'", [(1, "lower_pivot_height"), (1, "upper_pivot_height")]),
        ("x = name('wheel.diameter'), check_id('wheel-load')", []),
        ("x = 'envelope', f'{a}: {b}', f'{a}_b.c'", []),
    ],
)
def test_the_search_for_bare_names_finds_them(source: str, found: list[tuple[int, str]]) -> None:
    assert sorted(bare_names(ast.parse(source))) == found


@pytest.mark.parametrize(
    "source", ["known[x]", "judged.worked.known.get(x)", "x in self._known", "x not in worked.known", "known.items()"]
)
def test_the_search_for_lookups_finds_them(source: str) -> None:
    assert list(lookups(ast.parse(source))) == [1]


def test_the_search_for_late_names_finds_them() -> None:
    assert list(unlooked(ast.parse("a = name('x')\ndef f():\n    return name('x'), name(x)"))) == [2 + 1]


@pytest.mark.parametrize(("size", "there"), [(0.5, True), (1e-6, True), (0.0, False), (-0.5, False)])
def test_a_size_is_above_nought_however_small(size: float, there: bool) -> None:
    assert (_number(size, above_nought=True) is not None) is there and _number(size, above_nought=False) == size
