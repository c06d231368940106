"""What tells the prints of one sheet from those of another: a short digest of its answers."""

import hashlib
import json

from rules.measure.quantity import as_typed
from rules.sheet import Sheet

_LENGTH = 8


def sheet_digest(sheet: Sheet) -> str:
    """Eight characters that change with title, units, any answer as entered and any that was confirmed.

    Ticks and warnings do not count. Entries are kept apart, so that no text in one can stand for two.
    """
    entries = [(name, _whole(sheet.typed[name])) for name in sorted(sheet.typed)]
    whole = json.dumps([sheet.title, sheet.units, entries, sorted(sheet.confirmed)])
    return hashlib.sha256(whole.encode()).hexdigest()[:_LENGTH]


def _whole(entry: object) -> str:
    """An entry to its last letter: a bolt's place may be what stands there."""
    return entry if isinstance(entry, str) else as_typed(entry)
