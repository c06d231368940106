"""What the code says of itself: examples that run, sources, limits, and how each figure is measured."""

import ast
import doctest
import importlib
import inspect
import pkgutil
import re
from collections.abc import Mapping
from types import ModuleType
from typing import Annotated, Literal, get_args, get_origin, get_type_hints

import pytest

import rules
from rules.graph.asking import AskedField
from rules.judging.explain import first_paragraph
from rules.judging.trade import trade
from rules.measure.quantity import KINDS
from rules.measure.units import SYMBOLS, Unit
from rules.sheet import FIELDS, STEPS
from rules.tables.sources import weakest
from tests.support import front_ends

MODULES = [importlib.import_module(found.name) for found in pkgutil.walk_packages(rules.__path__, "rules.")]
VALUES = trade().values
CHECKS = trade().checks
SIMPLE_FRONT_ENDS = {
    name: made
    for name, made in vars(front_ends).items()
    if inspect.isfunction(made) and made.__module__ == front_ends.__name__
}


@pytest.mark.parametrize("module", [*MODULES, front_ends], ids=lambda module: module.__name__)
def test_the_examples_in_the_docstrings_run(module: ModuleType) -> None:
    """They know the simple front ends by their names, so that not every one has to build its own."""
    assert doctest.testmod(module, extraglobs=SIMPLE_FRONT_ENDS).failed == 0


def test_every_module_and_every_public_function_says_what_it_is(subtests: pytest.Subtests) -> None:
    for module in MODULES:
        with subtests.test(module.__name__):
            assert module.__doc__
            for name, thing in vars(module).items():
                if inspect.isfunction(thing) and thing.__module__ == module.__name__ and not name.startswith("_"):
                    assert thing.__doc__, f"{module.__name__}.{name}"


def test_every_value_has_a_subject_a_formula_a_source_and_an_example(subtests: pytest.Subtests) -> None:
    for name in VALUES:
        with subtests.test(name):
            node = VALUES[name]
            assert node.note.subject and node.note.formula and node.note.source
            assert ">>>" in node.function.__doc__
            # A number, yes or no, or a table.
            assert node.unit in SYMBOLS or node.unit == "bool" or node.unit[0].isupper()


def test_every_check_has_a_title_a_source_with_its_grade_and_limits(subtests: pytest.Subtests) -> None:
    for name in CHECKS:
        with subtests.test(name):
            note = CHECKS[name].note
            assert note.title and note.source and note.good
            assert note.watch or note.stop
            assert note.grade in {"standard", "handbook", "common practice", "no published figure"}
            assert note.step in {step.name for step in STEPS}
            assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", name)
            assert CHECKS[name].function.__doc__


WITH_FIGURES_STILL = (
    "rules.checks.steering.steers",
    "rules.checks.steering.swings",
    "rules.checks.steering.travels",
    "rules.checks.steering.turns",
)
"""Modules whose limits still stand as figures in prose. It may only grow shorter: a module that has none must go."""


def bare_figures(source: str, constants: Mapping[str, object]) -> list[str]:
    """Every text handed on as good, watch, stop or never_good that holds a digit outside braces and names of sizes.

    constants: what the names in it stand for.
    """
    pieces = [
        constants.get(piece.id) if isinstance(piece, ast.Name) else getattr(piece, "value", None)
        for call in ast.walk(ast.parse(source))
        if isinstance(call, ast.Call)
        for keyword in call.keywords
        if keyword.arg in ("good", "watch", "stop", "never_good")
        for piece in ast.walk(keyword.value)
    ]
    texts = [piece for piece in pieces if isinstance(piece, str)]
    size = r"\d+ x [\d.]+ (in|mm)\b"
    return [text for text in texts if re.search(r"\d", re.sub(rf"\{{\w+\}}|{size}", "", text))]


CHECK_MODULES = [module for module in MODULES if module.__name__.startswith("rules.checks.")]


def test_the_words_of_limits_hold_no_figure_of_their_own(subtests: pytest.Subtests) -> None:
    for module in CHECK_MODULES:
        with subtests.test(module.__name__):
            found = bare_figures(inspect.getsource(module), vars(module))
            assert bool(found) == (module.__name__ in WITH_FIGURES_STILL)


def test_a_figure_in_the_words_of_a_limit_is_found_and_a_placeholder_or_a_size_is_not() -> None:
    planted = """check("a", good="{good} or more", watch="3 mm", stop=f"{x} under 2", title="6 mm", limits=At(good=3.0))
check("b", good="6 x 5.5 in alone", watch=LESS, stop=WORSE, never_good="10 % is unknown")"""
    found = bare_figures(planted, {"LESS": "under 4", "WORSE": "under {watch}", "x": 1.0})
    assert sorted(found) == [" under 2", "10 % is unknown", "3 mm", "under 4"]


def test_no_placeholder_is_left_in_what_is_said_of_a_value_or_check(subtests: pytest.Subtests) -> None:
    parts = ("subject", "formula", "id", "step", "title", "good", "watch", "stop")
    for node in (*VALUES.values(), *CHECKS.values()):
        with subtests.test(node.name):
            said = [getattr(node.note, part, "") for part in parts]
            assert not [text for text in (*said, first_paragraph(node)) if "{" in text or "}" in text]


GIVEN_GRADES = {"tyre-load": "standard", "self-centring": "handbook"}
"""The load index is a standard's; the tenth in hand that is asked for beyond it is common practice. That trail and weight
return the wheels is a handbook's; what friction takes of it is our own figure."""


def test_a_check_is_graded_by_its_weakest_source_unless_it_says_otherwise(subtests: pytest.Subtests) -> None:
    for name in CHECKS:
        with subtests.test(name):
            note = CHECKS[name].note
            assert note.grade == GIVEN_GRADES.get(name, weakest(note.sources))


def test_every_field_has_a_label_and_one_or_two_sentences_on_how_it_is_measured(subtests: pytest.Subtests) -> None:
    for name in FIELDS:
        with subtests.test(name):
            asked = FIELDS[name]
            assert asked.label and asked.label[0].isupper() and not asked.label.endswith(".")
            assert asked.how.endswith((".", "?"))
            assert 1 <= len(re.findall(r"[.?!](?=\s+[A-Z\"“]|$)", asked.how)) <= 2


def test_every_number_has_bounds_that_hold_something(subtests: pytest.Subtests) -> None:
    for name in [name for name, asked in FIELDS.items() if asked.kind in KINDS or asked.kind == "count"]:
        with subtests.test(name):
            asked = FIELDS[name]
            assert asked.least is not None and asked.most is not None
            assert asked.least < asked.most
            assert 0 <= asked.reading_error < (asked.most - asked.least) / 10


def test_a_choice_has_choices_and_nothing_else_has(subtests: pytest.Subtests) -> None:
    for name in FIELDS:
        with subtests.test(name):
            asked = FIELDS[name]
            assert bool(asked.choices) == (asked.kind == "choice")
            assert all(choice == choice.strip().lower() for choice in asked.choices)


def test_a_steps_annotations_are_the_units_its_questions_are_read_in(subtests: pytest.Subtests) -> None:
    for step in STEPS:
        with subtests.test(step.name):
            hints = get_type_hints(step, include_extras=True)
            for key, asked in step.asked().items():
                annotation = hints[key]
                if get_origin(annotation) is Literal:
                    assert asked.kind == "choice" and asked.choices == get_args(annotation), asked.name
                    continue
                unit = next((extra.symbol for extra in get_args(annotation) if isinstance(extra, Unit)), None)
                choice = get_origin(annotation) is Literal
                told = "str" if choice else unit if get_origin(annotation) is Annotated else annotation.__name__
                assert told == ("price" if asked.kind == "price" else asked.unit), asked.name


def test_every_step_has_a_title_an_introduction_and_cautions(subtests: pytest.Subtests) -> None:
    for step in STEPS:
        with subtests.test(step.name):
            assert step.title and step.intro.endswith(".") and step.cautions
            assert all(caution.endswith(".") for caution in step.cautions)
            assert all(isinstance(asked, AskedField) for asked in step.asked().values())
