"""Sizes that have a name: a drill, a bolt circle, a bought part. They are printed as they were entered, never by a tape.

A bolt circle of 114.3 mm is ordered and drilled as 114.3 mm. On a tape it reads 4 1/2 in, and a pilot of 4.24 in reads 4 1/4.
"""

import re

from rules.graph.asking import printable
from rules.judging.reader import Name, name
from rules.measure.marks import BoltCircle
from rules.measure.quantity import KINDS, as_typed
from rules.sheet import Sheet

NAMED = frozenset(
    (
        name("wheel.diameter"), name("wheel.centre_bore"), name("wheel.barrel_inside_diameter"),
        name("rotor.diameter"), name("rotor.thickness"), name("rotor.centre_bore"), name("rotor.band_inside_diameter"),
        name("hub.pilot_diameter"), name("hub.mount_width"), name("hub.mount_height"), name("hub.body_diameter"),
        name("plate.thickness"), name("plate.bore"), name("plate.hole_diameter"),
        name("plate.bracket_thickness"), name("plate.bracket_hole_diameter"), name("plate.bracket_hole_spacing"),
    )
)  # fmt: skip
"""Lengths of bought parts, of holes, and from hole to hole."""

_LONGEST = 20
"""Characters; what is longer is written as a number."""


def as_named(sheet: Sheet, wanted: Name) -> str:
    """A named size as it was entered, with its unit; empty where nothing readable was entered, or it is no named size."""
    if wanted not in NAMED or wanted.origin not in sheet.answers:
        return ""
    entry = printable(as_typed(sheet.typed[wanted.origin])).strip()
    if entry[-1:].isdigit():
        entry += f" {KINDS['length'].bare[sheet.shown_in]}"
    return entry if len(entry) <= _LONGEST else ""


_AFTER_COUNT = re.compile(r"\d{1,2}\s*(?:[x×*/-]|on\b)\s*(.+)", re.IGNORECASE)


def across(circle: BoltCircle) -> str:
    """The diameter of a bolt circle as it was entered, with its unit.

    >>> across(BoltCircle("5 x 114.3 mm", 5, 114.3)), across(BoltCircle("5-4.5", 5, 114.3))
    ('114.3 mm', '4.5 in')
    """
    found = _AFTER_COUNT.fullmatch(circle.text.strip())
    entry = printable(found[1].strip()) if found else f"{circle.diameter:g}"
    if not entry[-1:].isdigit():
        return entry
    return f"{entry} mm" if entry.replace(",", ".") == f"{circle.diameter:g}" else f"{entry} in"
