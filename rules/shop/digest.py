"""What tells the prints of one sheet from those of another: a short digest of its answers."""

import hashlib

from rules.measure.quantity import as_typed
from rules.sheet import Sheet

_LENGTH = 8


def sheet_digest(sheet: Sheet) -> str:
    """Eight characters that change with title, units or any answer as entered; ticks and warnings do not count."""
    lines = [
        sheet.title,
        str(sheet.units),
        *(f"{name} = {as_typed(sheet.typed[name])}" for name in sorted(sheet.typed)),
    ]
    return hashlib.sha256("\n".join(lines).encode("utf-8", "replace")).hexdigest()[:_LENGTH]
