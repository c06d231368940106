"""How rows are arranged: every name is a question's, and no caution is left without a row."""

import pytest

from rules.sheet import FIELDS, STEPS
from rules.sheet.arranged import ASIDE, BESIDE, ONLY_WHERE, PAPERS, applies
from wizard.desk.pages import cautions_beside


def test_every_name_is_a_question() -> None:
    named = {*ASIDE, *PAPERS, *BESIDE, *ONLY_WHERE, *(other for other, _ in ONLY_WHERE.values())}
    assert named <= FIELDS.keys()


def test_a_needed_question_is_never_set_aside_nor_asked_last() -> None:
    assert not [name for name in {*ASIDE, *PAPERS} if FIELDS[name].needed]


def test_every_step_asks_something_first() -> None:
    for step in STEPS:
        assert any(asked.name not in {*ASIDE, *PAPERS, *ONLY_WHERE} for asked in step.asked().values()), step.name


def test_every_caution_is_told_beside_a_row_of_its_step() -> None:
    for step in STEPS:
        told = {caution for asked in step.asked().values() for caution in cautions_beside(asked.name)}
        assert told == set(step.cautions), step.name
        assert all(
            number < len(step.cautions) for key in step.asked() for number in BESIDE.get(f"{step.name}.{key}", ())
        )


def test_no_caution_is_left_to_the_first_row_because_nobody_said_where_it_belongs() -> None:
    for step in STEPS:
        beside = {number for key in step.asked() for number in BESIDE.get(f"{step.name}.{key}", ())}
        assert beside == set(range(len(step.cautions))), step.name


def test_what_a_question_rests_on_is_a_choice_that_is_offered() -> None:
    for name, (other, fitting) in ONLY_WHERE.items():
        assert set(fitting) < set(FIELDS[other].choices), name
        assert other not in ONLY_WHERE, name


@pytest.mark.parametrize(
    ("answers", "shown"),
    [
        ({}, False),
        ({"rotor.style": "solid"}, False),
        ({"rotor.style": "cut to one plate"}, True),
        ({"rotor.style": "solid", "rotor.finished_thickness": 8.0}, True),  # what was typed is never out of sight
    ],
)
def test_a_question_that_rests_on_another_waits_for_its_answer(answers: dict[str, object], shown: bool) -> None:
    assert applies("rotor.finished_thickness", answers) is shown


@pytest.mark.parametrize("part", ["upper", "lower", "steering_arm", "caliper_bracket"])
def test_which_sizes_a_weld_has_by_its_form(part: str) -> None:
    """One run has nothing apart from it, a ring no length of one run, and a full bevel no leg."""
    sizes = {key: set(ONLY_WHERE[f"weld_{part}.{key}"][1]) for key in ("leg", "run", "apart")}
    assert "fillet on one side" in sizes["leg"] and "full bevel" not in sizes["leg"]
    assert sizes["apart"] == sizes["leg"] - {"fillet on one side"}
    assert sizes["run"] == (sizes["leg"] | {"full bevel"}) - {"fillet round a tube or cup"}
