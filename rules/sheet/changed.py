"""A sheet with some of its entries changed, as if they had been typed."""

from collections.abc import Mapping

from rules.measure.records import replace
from rules.sheet import FIELDS, Sheet, confirmed_in


def with_entries(sheet: Sheet, entries: Mapping[str, object]) -> Sheet:
    """The sheet with these entries, by dotted name, in place of what stands there now.

    A yes to an unusual answer goes with the answer it was for, and with each it was said beside. Raises EntryError for an
    entry that cannot be read.
    """
    answers = {**sheet.answers, **{name: FIELDS[name].read(entry, sheet.units) for name, entry in entries.items()}}
    confirmed = confirmed_in(sheet.said_yes, answers, sheet.units)
    unusual = (n for n in FIELDS if n in answers and n not in confirmed and FIELDS[n].is_unusual(answers[n], answers))
    faults = tuple(fault for fault in sheet.faults if fault.where not in entries)
    return replace(
        sheet,
        answers=answers,
        typed={**sheet.typed, **entries},
        faults=faults,
        confirmed=confirmed,
        unusual=tuple(unusual),
    )
