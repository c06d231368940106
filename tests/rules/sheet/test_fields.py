"""What every question declares."""

from typing import Annotated, Literal, get_args, get_origin, get_type_hints

import pytest

from rules.measure.quantity import KINDS, parse
from rules.measure.units import Unit
from rules.sheet import FIELDS, STEPS


def declared_unit(annotation: object) -> str:
    if get_origin(annotation) is Annotated:
        return next(extra.symbol for extra in get_args(annotation) if isinstance(extra, Unit))
    if get_origin(annotation) is Literal:
        return "str"
    assert isinstance(annotation, type)
    return annotation.__name__


@pytest.mark.parametrize("step", STEPS, ids=lambda step: step.name)
def test_a_questions_annotation_is_what_its_answer_is(step: type) -> None:
    hints = get_type_hints(step, include_extras=True)
    for key, asked in step.asked().items():  # type: ignore[attr-defined]
        assert declared_unit(hints[key]) == asked.unit, asked.name


@pytest.mark.parametrize("asked", FIELDS.values(), ids=FIELDS)
def test_a_question_says_how_to_measure_and_bounds_every_number(asked: object) -> None:
    assert asked.label and len(asked.label) <= 34  # type: ignore[attr-defined]
    assert asked.how.endswith((".", "?")) and len(asked.how) <= 240  # type: ignore[attr-defined]
    if asked.kind in KINDS:  # type: ignore[attr-defined]
        assert asked.least is not None and asked.most is not None and asked.least < asked.most  # type: ignore[attr-defined]


@pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS)
def test_the_examples_in_messages_can_themselves_be_read(kind: object) -> None:
    for units in ("inch", "metric"):
        assert parse(kind.examples[units], kind.name, None if kind.bare[units] else units) > 0  # type: ignore[attr-defined]
