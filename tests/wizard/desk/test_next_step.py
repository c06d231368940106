"""What the review names as the next thing to do, the most urgent first."""

import copy

import pytest

from rules.judging.judge import Judged
from sample_sheets import SHOWN, document
from tests.support.judging import judged_document
from wizard.desk.next_step import next_step

WREN, MOVING = "dune_wren_finished", "dune_wren_moving"


def with_changes(sheet: str, **changes: object) -> Judged:
    made = copy.deepcopy(document(sheet))
    for name, entry in changes.items():
        table, _, key = name.partition("__")
        made[table].pop(key, None) if entry is None else made[table].update({key: entry})
    return judged_document(made)


@pytest.mark.parametrize(
    ("changes", "begins", "entry"),
    [
        ({"rotor__diameter": "round"}, "Mend “Rotor diameter”", "rotor.diameter"),
        ({"rotor__diameter": None}, "Answer “Rotor diameter” (Rotor); 1 left", "rotor.diameter"),
        ({"hub__bolt_circle": "5 x 4.5 in"}, "Clear the stop “Wheel and hub bolt circle”", "hub.bolt_circle"),
        ({"hub__body_diameter": None}, "Measure ", "hub.body_diameter"),
        (
            {"pivots__inclination": "16 deg"},
            "Look again at “Steering-axis inclination” (Pivots): it is unusual",
            "pivots.inclination",
        ),
    ],
)
def test_the_most_urgent(changes: dict[str, object], begins: str, entry: str) -> None:
    told = next_step(with_changes(WREN, **changes))
    assert told.words.startswith(begins) and told.entry == entry


@pytest.mark.parametrize("sheet", [WREN, MOVING])
def test_two_lines_that_often_are_alike_do_not_stand_before_the_papers(sheet: str) -> None:
    made = copy.deepcopy(document(sheet))
    made.pop("confirmed", None)
    judged = judged_document(made)
    assert judged.verdict == "good" and judged.asks_about
    assert next_step(judged).words == "Write the whole folder for the welder."


def test_nothing_is_asked_about_on_the_sample_that_is_shown_first() -> None:
    assert not with_changes(SHOWN).asks_about


def test_a_stop_is_named_with_the_finding_that_changes_are_looked_for_of() -> None:
    told = next_step(with_changes(WREN, hub__bolt_circle="5 x 4.5 in"))
    assert told.stop is not None and told.stop.verdict == "stop"
    assert next_step(with_changes(WREN, rotor__diameter=None)).stop is None
