"""A judged sheet to the tables of the motion sheet: lengths, travel, lock, return, castor, joints, gaps, driving, set-up.

Words only. Every figure is bare and its unit stands in its column's heading; a cell with nothing in it is for writing in.
"""

from collections.abc import Callable

from rules.judging.judge import Judged
from rules.judging.reader import absent, name, still_needed
from rules.shop.cautions import ALWAYS
from rules.shop.motion_sheet.lengths import driving_section, lengths_section
from rules.shop.motion_sheet.lock import castor_section, lock_section
from rules.shop.motion_sheet.return_to_straight import return_section
from rules.shop.motion_sheet.room import gaps_section, joints_section
from rules.shop.motion_sheet.section import SheetTable, reason
from rules.shop.motion_sheet.set_up import set_up_section
from rules.shop.motion_sheet.travel import one_wheel_section, spring_section, travel_section

__all__ = ["CAUTIONS", "NOT_ENTERED", "SheetTable", "is_known", "sections"]

_ENOUGH = (name("steered_front"), name("hung_front"))
"""One of them is enough for a motion sheet."""

NOT_ENTERED = "Neither steering nor arms are entered, so there is nothing for a motion sheet to show."
CAUTIONS = (
    dict(ALWAYS)["informs"],
    "Worked out from the points entered; nothing here was measured on the car. Play, rubber and flex are not counted.",
    "Both wheels move together and the body stays level, but where a table says otherwise. Each wheel with a tie rod of its own "
    "moves alike whether one travels or both.",
)


def is_known(judged: Judged) -> bool:
    """Whether steering or arms are known, so that there is something to show."""
    return len(absent(judged.worked.known, _ENOUGH)) < len(_ENOUGH)


def sections(judged: Judged) -> tuple[SheetTable, ...]:
    """Every table in the order the work is done, in the units the sheet is judged in."""
    makers: tuple[tuple[str, Callable[..., SheetTable | None]], ...] = (
        ("Lengths to cut", lengths_section),
        ("Travel, wheel straight ahead", travel_section),
        ("One wheel up or down, steering held", one_wheel_section),
        ("Spring over the travel", spring_section),
        ("Lock at ride height", lock_section),
        ("Return to straight", return_section),
        ("Castor by turning, on turn plates", castor_section),
        ("Joints: misalignment angle needed and allowed", joints_section),
        ("Smallest gaps over all travel and lock", gaps_section),
        ("Steering wheel, spring and roll", driving_section),
        ("Alignment, as set", set_up_section),
    )
    return tuple(_section(judged, *maker) for maker in makers)


def _section(judged: Judged, title: str, make: Callable[..., SheetTable | None]) -> SheetTable:
    """The section, or one sentence that says why it is left out."""
    known = judged.worked.known
    section = make(known, judged=judged)
    if section is None:
        return SheetTable(title, missing=f"Left out: {reason(judged, *still_needed(make, known))}.")
    return section._replace(title=title)
