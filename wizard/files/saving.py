"""What goes into a sheet's file besides the answers: the warnings and the checklist, made anew on every save."""

from collections.abc import Mapping

from rules.judging.judge import Judged, judge
from rules.sheet import FIELDS, WORKED_OUT
from rules.sheet.confirmed import CONFIRMED, still_confirmed


def complete_document(document: Mapping[str, object], judged: Judged) -> dict[str, object]:
    """The document as it is saved: the answers as typed, then what was worked out from them.

    judged: this document's sheet, judged. Ticks and measured results in its checklist are kept, by line id. A confirmation
    goes with the answer it was given for.
    """
    from rules.shop.checklist import worked_out_tables  # only needed on saving

    own_units = judged if judged.shown_in == judged.sheet.shown_in else judge(judged.sheet)
    answers = {key: entry for key, entry in document.items() if key not in WORKED_OUT}
    held = answers.get(CONFIRMED)
    if isinstance(held, Mapping):
        kept = still_confirmed(held, judged.sheet.answers, FIELDS, judged.sheet.units)
        answers = {
            key: kept if key == CONFIRMED else entry for key, entry in answers.items() if key != CONFIRMED or kept
        }
    worked_out = worked_out_tables(document, own_units)
    return answers | {key: tables for key, tables in worked_out.items() if tables}
