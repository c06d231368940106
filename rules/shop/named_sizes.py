"""Sizes that have a name: a drill, a bolt circle, a bought part. They are printed as they were entered, never by a tape.

So is a bolt circle, see `BoltCircle.across`. On a tape 114.3 mm reads 4 1/2 in, and a pilot of 4.24 in reads 4 1/4. A wheel is
sold in inches everywhere.
"""

from rules.graph.asking import printable
from rules.judging.judge import Judged, shown
from rules.judging.reader import Name, name
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

_SOLD_IN_INCHES = (name("wheel.diameter"), name("wheel.width"))
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


def at_the_counter(judged: Judged, wanted: Name) -> str:
    """An answer as it is asked for where the part is sold; empty when it is not known."""
    return shown(wanted, judged, "inch" if wanted in _SOLD_IN_INCHES else None)
