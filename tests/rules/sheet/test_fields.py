"""What every question declares."""

from math import radians
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


def test_a_questions_annotation_is_what_its_answer_is(subtests: pytest.Subtests) -> None:
    for step in STEPS:
        with subtests.test(step.name):
            hints = get_type_hints(step, include_extras=True)
            for key, asked in step.asked().items():
                assert declared_unit(hints[key]) == asked.unit, asked.name


def test_a_question_says_how_to_measure_and_bounds_every_number(subtests: pytest.Subtests) -> None:
    for asked in FIELDS.values():
        with subtests.test(asked.name):
            assert asked.label and len(asked.label) <= 34
            assert asked.how.endswith((".", "?")) and len(asked.how) <= 240
            if asked.kind in KINDS:
                assert asked.least is not None and asked.most is not None and asked.least < asked.most


def test_the_examples_in_messages_can_themselves_be_read(subtests: pytest.Subtests) -> None:
    for kind in KINDS.values():
        with subtests.test(kind.name):
            for units in ("inch", "metric"):
                assert parse(kind.examples[units], kind.name, None if kind.bare[units] else units) > 0


@pytest.mark.parametrize(
    ("bolt", "allowed", "asked"),
    [
        ("along the steering axis", 31.0, False), ("along the steering axis", 32.0, True), ("fore and aft", 38.0, False),
        ("across the car", 46.0, False), ("fore and aft", 47.0, True), ("fore and aft", 15.0, True), (None, 32.0, True),
    ],
)  # fmt: skip
def test_a_joint_whose_bolt_lies_level_has_more_angle_and_is_asked_nothing(
    bolt: str | None, allowed: float, asked: bool
) -> None:
    """Such a bolt tilts by the whole lock: 35 deg and the 3 deg that are wanted in hand make 38. Common practice, no source."""
    answers = {"joint_angles.lower_bolt": bolt} if bolt else {}
    assert FIELDS["joint_angles.lower_allowed"].is_unusual(radians(allowed), answers) is asked
