"""Joints taped from the hub face, odd beside each other: only what was entered is asked about, and the sheet can be saved."""

from rules.judging.judge import label
from tests.support.base_sheet import changed
from tests.support.judging import judged_document
from wizard.files.saving import complete_document

ENTERED_NOT = ("lower_below_spindle", "spacing", "inclination", "castor", "ground_offset")
TAPED = {
    "upper_inboard": "60 mm", "upper_above": "60 mm", "upper_ahead": "-10 mm", "lower_inboard": "40 mm",
    "lower_below": "190 mm", "lower_ahead": "10 mm",
}  # fmt: skip


def test_what_is_worked_out_in_an_answers_place_is_not_asked_about() -> None:
    """190 below of about 250 in all is three quarters, beyond the usual 0.7: a watch, but of nothing that was typed."""
    document = changed({f"pivots.{key}": TAPED.get(key) for key in (*ENTERED_NOT, *TAPED)})
    judged = judged_document(document)
    (found,) = [finding for finding in judged.findings if finding.check == "spindle-between-pivots"]
    assert found.verdict == "watch" and "Lower pivot below wheel centre is 190 mm" in found.text
    assert "confirm" not in found.change and all(
        label(f"pivots.{key}").replace(",", "") in found.change for key in TAPED
    )
    alike = [one.about for one in judged.findings if one.check == "line-read-twice" and one.verdict != "good"]
    # Of the angles worked out from them, two of which are alike, nothing.
    assert alike == ["upper joint above centre, taped"]
    assert set(judged.asks_about) <= judged.sheet.answers.keys()
    assert complete_document(document, judged)["checklist"]
