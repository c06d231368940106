"""What each wheel does through its travel, held straight ahead."""

from collections.abc import Iterator
from math import degrees, floor, sin

from rules.judging.judge import Judged
from rules.judging.reader import answer, name, reads
from rules.measure.display import show
from rules.measure.quantity import INCH, Units
from rules.measure.units import Mm, NewtonPerMm
from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach, Hinge
from rules.motion.shock import BEND, Shock, rate_at_wheel, shock_length, shock_ratio_at
from rules.shop.motion_sheet.section import (
    NOT_REACHED,
    SheetTable,
    estimates,
    figure_and_unit,
    length_of,
    reason,
    rise_and_fall,
    signed,
    unit_of,
)

_HUNG, _MOVING, _DESIGN_TYRE = name("hung_front"), name("moving_front"), name("design_tyre_diameter")
_SHOCK, _RATE = name("shock_ends"), name("wheel_rate")
_LONE, _LINKAGE = name("lone_front"), name("steering.linkage")

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
            f"{show(tread, 'mm', units)} at wheel-centre height; at ride it is the toe as set."
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
    return SheetTable("", tuple(notes), columns, rows, to_write="The last four columns are for what you measure.")


@reads
def one_wheel_section(
    lone_front: FrontEnd,
    bump_travel: Mm,
    droop_travel: Mm,
    lower_hinge: Hinge,
    upper_hinge: Hinge,
    design_tyre_diameter: Mm | None,
    *,
    judged: Judged,
) -> SheetTable | None:
    """One wheel up or down, the other at ride height, the steering held: toe, camber to the ground and trail."""
    tread, units, flat = design_tyre_diameter, judged.shown_in, lower_hinge.flat or upper_hinge.flat
    unit = unit_of(units)
    across = answer(judged.worked.known, _LINKAGE) == "one rod across"
    notes = (
        "The body level, the other wheel straight ahead at ride height with the toe as set, which it keeps. Signs as above; "
        "trail: from the contact forward to where the steering axis meets the ground.",
        "One rod across: its other end is held as by the steering box; a drag link's own steering of the wheel is not in it."
        if across
        else "Each wheel has a tie rod of its own, so its toe is that of the table above.",
        *(("Trail is left out: an arm is entered from the front only.",) if flat else ()),
        *estimates(judged, _LONE, _DESIGN_TYRE),
    )
    columns = (
        f"Travel ({unit})",
        "Toe (deg)",
        f"Toe ({unit})",
        "Camber (deg)",
        f"Trail ({unit})",
        "Toe left",
        "Toe right",
    )
    rows = tuple(
        _lone_row(lone_front, tread, flat, *place, units)
        for place in _ends_and_halves(droop_travel, bump_travel, units)
    )
    return SheetTable("", notes, columns, rows)


def _ends_and_halves(droop: float, bump: float, units: Units) -> Iterator[tuple[float, str]]:
    """Full droop, half of it, ride, half bump and full bump: travels in mm, and what each is called."""
    for travel, called in ((-droop, " droop"), (-droop / 2, ""), (0.0, ""), (bump / 2, ""), (bump, " bump")):
        yield travel, f"{_with_its_sign(travel, units)}{called}" if travel else "0 RIDE"


def _with_its_sign(travel: float, units: Units) -> str:
    """A travel without its unit."""
    words = show(travel, "mm", units).rpartition(" ")[0]
    return words if words.startswith("-") else f"+{words}"


def _lone_row(
    front: FrontEnd, tread: float | None, flat: bool, travel: float, words: str, units: Units
) -> tuple[str, ...]:
    toe = _toe(front, travel)
    if isinstance(toe, str):
        return (words, toe, *("-" for _ in range(5)))
    pose = front.at(travel, 0.0)
    return (
        words,
        signed(degrees(toe), 2),
        "-" if tread is None else length_of(tread * sin(toe), units, 2),
        signed(degrees(pose.camber), 2),
        "-" if flat else length_of(pose.landing[0] - pose.contact[0], units, 1),
        "",
        "",
    )


@reads
def spring_section(
    hung_front: FrontEnd,
    shock_ends: Shock,
    bump_travel: Mm,
    droop_travel: Mm,
    spring_rate: NewtonPerMm | None,
    spring_squeeze: Mm | None,
    shock_at_ride: Mm | None,
    *,
    judged: Judged,
) -> SheetTable | None:
    """Shock and spring at every step of the travel: length, ratio, and where the spring is known its rate at the wheel."""
    units = judged.shown_in
    known = spring_rate is not None and spring_squeeze is not None and shock_at_ride is not None
    columns = [f"Travel ({unit_of(units)})", f"Shock, eye to eye ({unit_of(units)})", "Spring ratio"]
    columns += [f"Rate at the wheel ({figure_and_unit(0.0, 'N/mm', units)[1]})"] if known else []
    rows, ratios, rates = [], [], []
    inside = 2 * BEND
    for travel, words in _travels(droop_travel, bump_travel, units):
        near = min(max(travel, inside - droop_travel), bump_travel - inside)
        try:
            long, ratio = shock_length(hung_front, shock_ends, travel), shock_ratio_at(hung_front, shock_ends, near)
            cells = [length_of(long, units, 1).lstrip("+"), f"{ratio:.3f}"]
            ratios.append(ratio)
            if spring_rate is not None and spring_squeeze is not None and shock_at_ride is not None:
                squeezed = spring_squeeze + shock_at_ride - long
                rates.append(
                    rate_at_wheel(hung_front, shock_ends, near, spring_rate, squeezed) if squeezed > 0 else 0.0
                )
                cells.append(figure_and_unit(rates[-1], "N/mm", units)[0])
        except CannotReach as limit:
            words += f" {NOT_REACHED}: locks at {show(limit.reached, 'mm', units)}"
            cells = ["-"] * (len(columns) - 1)
        rows.append((words, *cells, "", ""))
    notes = (
        "Spring ratio: how far the shock closes for a unit the wheel rises. Rate: the spring's alone, no bump rubber, 0 where it "
        "is loose.",
        *([] if known else [f"Rate is not worked out: {reason(judged, _RATE.origin)}."]),
        *estimates(judged, _HUNG, _SHOCK, *([_RATE] if known else [])),
    )
    below = [f"From full droop to full bump the spring ratio {rise_and_fall(ratios)}"] if ratios else []
    if below:
        below = [f"{below[0]}, the rate at the wheel {rise_and_fall(rates)}." if rates else f"{below[0]}."]
    columns += ["Shock left", "Shock right"]
    return SheetTable(
        "",
        notes,
        tuple(columns),
        tuple(rows),
        below=tuple(below),
        to_write="The last columns are for the shock as measured.",
    )


def _travels(droop: float, bump: float, units: Units) -> Iterator[tuple[float, str]]:
    """Travels in mm from full droop to full bump, ride always among them, and what each is called."""
    step = _STEP[units]
    between = {number * step for number in range(-floor((droop - _CLOSE) / step), floor((bump - _CLOSE) / step) + 1)}
    ends = {-droop: " droop", bump: " bump"}
    for travel in sorted({-droop, 0.0, bump} | {place for place in between if -droop < place < bump}):
        if travel == 0:
            yield 0.0, "0 RIDE"
        else:
            yield travel, f"{_with_its_sign(travel, units)}{ends.get(travel, '')}"


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
