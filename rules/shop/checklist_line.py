"""One line of the shop checklist, and the sections that hold them."""

from typing import Literal

from rules.judging.reader import name
from rules.measure.records import dataclass

LineKind = Literal["caution", "do", "measure", "hold", "settle", "torque"]

BLANK = "________"
"""Where a person writes. The program never fills one in with a guess."""

REVISION = name("plate.revision")
"""What tells one issue of a paper from the next."""

CAUTIONS = "Cautions"
PARTS = "Parts in hand"
SETTLE = "Settle before cutting"
HAND_OVER = "Written in by the builder before hand-over"
LAYOUT = "Layout from the hub face"
MOCK_UP = "Mock-up with wheel, rotor, hub and caliper"
TACK = "Tack"
HOLD = "Hold point: measure before finish welding"
WELD = "Weld"
AFTER = "Cool, measure again, crack test"
BRACKET = "Caliper bracket"
TORQUE = "Assemble and torque"
TURN = "Turn and lock"
DRIVE = "First drive"
NO_LONGER_ASKED = "No longer asked"

WELDER_SECTIONS = (CAUTIONS, HAND_OVER, LAYOUT, MOCK_UP, TACK, HOLD, WELD, AFTER, BRACKET)
"""What is handed to the welder on its own. The working sections follow each other without a break."""
HELPER_SECTIONS = (MOCK_UP, TACK, HOLD, WELD, AFTER, BRACKET, TORQUE, TURN, DRIVE)
"""What a helper works through beside the car, once the parts are in hand; figures are on the welding sheet."""


@dataclass(frozen=True, slots=True)
class ChecklistLine:
    """One thing to do, measure, settle or sign.

    id: stable words; it never depends on titles, figures, units or the order of lines. target: what it should be, in
    the units the sheet is shown in, or a labelled blank. tolerance: empty where there is none.
    """

    id: str
    section: str
    text: str
    target: str = ""
    tolerance: str = ""
    kind: LineKind = "do"
