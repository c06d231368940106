"""What goes into a sheet's file besides the answers: the warnings and the checklist, made anew on every save."""

from collections.abc import Mapping

from rules.judging.judge import Judged, judge
from rules.sheet import FIELDS, WORKED_OUT, is_worked_out
from rules.sheet.confirmed import CONFIRMED, of_nothing_entered, still_confirmed


def complete_document(document: Mapping[str, object], judged: Judged) -> dict[str, object]:
    """The document as it is saved: the answers as typed, then what was worked out from them.

    judged: this document's sheet, judged. Ticks and measured results in its checklist are kept, by line id. A confirmation
    goes with the answer it was given for; what a person typed in place of a list of the program's own stays.
    """
    from rules.shop.checklist import worked_out_tables  # only needed on saving

    own_units = judged if judged.shown_in == judged.sheet.shown_in else judge(judged.sheet)
    own = [key for key in WORKED_OUT if is_worked_out(document.get(key, []))]
    answers = {key: entry for key, entry in document.items() if key not in own}
    held = answers.get(CONFIRMED)
    if isinstance(held, Mapping):
        still = still_confirmed(held, judged.sheet.answers, FIELDS, judged.sheet.units)
        kept = {
            key: entry for key, entry in held.items() if key in still or of_nothing_entered(key, judged.sheet.answers)
        }
        answers = {
            key: kept if key == CONFIRMED else entry for key, entry in answers.items() if key != CONFIRMED or kept
        }
    worked_out = worked_out_tables(document, own_units)
    return answers | {key: tables for key, tables in worked_out.items() if tables and key in own}
