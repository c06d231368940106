"""What each wheel does through its travel, held straight ahead."""

from collections.abc import Iterator
from math import degrees, floor, sin

from rules.judging.judge import Judged
from rules.judging.reader import name, reads
from rules.measure.display import show
from rules.measure.quantity import INCH, Units
from rules.measure.units import Mm
from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach, Hinge
from rules.shop.motion_sheet.section import (
    NOT_REACHED,
    SheetTable,
    estimates,
    length_of,
    reason,
    signed,
    unit_of,
)

_HUNG, _MOVING, _DESIGN_TYRE = name("hung_front"), name("moving_front"), name("design_tyre_diameter")

_STEP: dict[Units, float] = {"inch": INCH, "metric": 25.0}
"""mm of travel from one row to the next."""
_CLOSE = 1.0
"""mm: a row nearer than this to full droop or bump would only repeat it."""


@reads
def travel_section(
    hung_front: FrontEnd,
    bump_travel: Mm,
    droop_travel: Mm,
    lower_hinge: Hinge,
    upper_hinge: Hinge,
    moving_front: FrontEnd | None,
    design_tyre_diameter: Mm | None,
    *,
    judged: Judged,
) -> SheetTable | None:
    """Camber, castor, ground offset, track and toe at every step of the travel."""
    tread, units = design_tyre_diameter, judged.shown_in
    unit = unit_of(units)
    columns = (
        f"Travel ({unit})", "Camber (deg)", "Castor (deg)", f"Ground offset ({unit})", f"Track change ({unit})",
        f"Toe ({unit})", "Toe (deg)", "Toe left", "Toe right", "Camber left", "Camber right",
    )  # fmt: skip
    notes = [
        "Of one wheel. Plus: up (bump); camber, top outboard; castor, top rearward; ground offset, tyre's middle outboard of "
        "the steering axis; track change, outward; toe, in. Measure springs out, frame level on stands."
    ]
    if tread is not None:
        notes.append(
            "Toe as a length: how far the front of the tread is nearer the centre line than its rear, over the tyre's "
            f"{show(tread, 'mm', units)} at wheel-centre height; at ride it is the toe as set. The last four "
            "columns are for what you measure."
        )
    if moving_front is None:
        notes.append(f"Toe is not worked out: {reason(judged, _MOVING.origin)}.")
    if lower_hinge.flat or upper_hinge.flat:
        notes.append(
            "An arm entered from the front only counts as hinged level and straight ahead: castor is then a guess."
        )
    rows = tuple(
        _travel_row(hung_front, moving_front, tread, travel, words, units)
        for travel, words in _travels(droop_travel, bump_travel, units)
    )
    notes += estimates(judged, _HUNG, _MOVING, _DESIGN_TYRE)
    return SheetTable("", tuple(notes), columns, rows)


def _travels(droop: float, bump: float, units: Units) -> Iterator[tuple[float, str]]:
    """Travels in mm from full droop to full bump, ride always among them, and what each is called."""
    step = _STEP[units]
    between = {number * step for number in range(-floor((droop - _CLOSE) / step), floor((bump - _CLOSE) / step) + 1)}
    for travel in sorted({-droop, 0.0, bump} | {place for place in between if -droop < place < bump}):
        words = show(travel, "mm", units).rpartition(" ")[0]
        if travel == 0:
            yield 0.0, "0 RIDE"
        elif travel in (-droop, bump):
            yield travel, f"+{words} bump" if travel > 0 else f"{words} droop"
        else:
            yield travel, f"+{words}" if travel > 0 else words


def _travel_row(
    hung: FrontEnd, steered: FrontEnd | None, tread: float | None, travel: float, words: str, units: Units
) -> tuple[str, ...]:
    try:
        pose = hung.straight(travel)
    except CannotReach as limit:
        return (f"{words} {NOT_REACHED}: locks at {show(limit.reached, 'mm', units)}", *("-" for _ in range(10)))
    outward = pose.contact[1] - hung.straight(0.0).contact[1]
    toe = _toe(steered, travel)
    return (
        words,
        signed(degrees(pose.camber), 2),
        signed(degrees(pose.castor), 2),
        length_of(pose.ground_offset, units, 1),
        length_of(outward, units, 1),
        toe if isinstance(toe, str) else length_of(tread * sin(toe), units, 2) if tread is not None else "-",
        toe if isinstance(toe, str) else signed(degrees(toe), 2),
        *("" for _ in range(4)),
    )


def _toe(steered: FrontEnd | None, travel: float) -> float | str:
    """Toe of one wheel with the steering straight ahead, rad, in positive; words where there is none."""
    if steered is None:
        return "-"
    try:
        return -steered.at(travel, 0.0).steer
    except CannotReach:
        return "rod locks"
