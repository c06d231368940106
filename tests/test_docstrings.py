"""What the code says of itself: examples that run, sources, limits, and how each figure is measured."""

import doctest
import importlib
import inspect
import pkgutil
import re
from types import ModuleType
from typing import Annotated, Literal, get_args, get_origin, get_type_hints

import pytest

import rules
from rules.graph.asking import AskedField
from rules.judging.trade import trade
from rules.measure.quantity import KINDS
from rules.measure.units import SYMBOLS, Unit
from rules.sheet import FIELDS, STEPS
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


def test_a_check_of_common_practice_says_in_its_source_that_no_standard_stands_behind_it(
    subtests: pytest.Subtests,
) -> None:
    for name in CHECKS:
        with subtests.test(name):
            note = CHECKS[name].note
            if note.grade == "common practice":
                assert re.search("common practice|no standard|trade pages|geometry", note.source)


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
