"""One hold system: the same numbers and words in the list of holds and in the checklist, each signed in one place."""

from rules.shop.checklist import checklist
from rules.shop.holds import BY_LINE, HOLDS
from sample_sheets import document
from tests.support.judging import judged_document


def test_every_hold_is_a_line_of_the_checklist_in_order_and_every_hold_line_is_a_hold() -> None:
    lines = [line for line in checklist(judged_document(document("scree_ox_strength"))) if line.kind == "hold"]
    assert [line.id for line in lines] == [hold.line for hold in HOLDS]
    assert [hold.number for hold in HOLDS] == list(range(1, len(HOLDS) + 1))
    for line in lines:
        assert line.text.startswith(BY_LINE[line.id].text), "number and words are the same"


def test_initials_are_asked_for_on_one_paper_only() -> None:
    for line in checklist(judged_document(document("scree_ox_strength"))):
        if line.id in BY_LINE:
            assert line.text.endswith("Initials:") is (BY_LINE[line.id].signed_on == "helper's checklist")
