"""The parts list: every piece to cut, to buy and to bolt, by number, with how many a side, size, material and notes."""

from collections.abc import Iterator
from dataclasses import dataclass

from rules.corner.part import Part
from rules.judging.judge import Judged, shown
from rules.judging.reader import name, reads
from rules.measure.display import show
from rules.measure.marks import Thread
from rules.measure.quantity import Units
from rules.measure.units import Mm
from rules.sheet.bolts import ScrewedInto
from rules.sheet.upright import ArmForm, Beam
from rules.shop.checklist_line import BLANK
from rules.shop.named_sizes import at_the_counter
from rules.solids.pieces import Hull
from rules.tables.bolt_grades import BoltGrade

AND_NUT = "then washer, nut, two threads"
"""What a bolt with a nut is longer by than what it clamps."""
_METAL, _CONDITION = name("plate.metal"), name("plate.condition")
_BOUGHT = (
    ("Hub", "1", (name("hub.bolt_circle"), name("hub.stud_thread")), "{} studs {}"),
    ("Rotor", "1", (name("rotor.diameter"), name("rotor.style")), "ø {}, {}"),
    ("Caliper", "1", (name("caliper.kind"), name("caliper.made_for_thickness")), "{}, for a rotor {} thick"),
    ("Upper joint", "1", (name("pivots.upper_kind"), name("pivots.upper_radius")), "{}, housing reach {}"),
    ("Lower joint", "1", (name("pivots.lower_kind"), name("pivots.lower_radius")), "{}, housing reach {}"),
    ("Wheel", "1", (name("wheel.diameter"), name("wheel.width")), "{} x {}"),
)


@dataclass(frozen=True, slots=True)
class PartsRow:
    """One row. a_side: how many for one upright."""

    what: str
    a_side: str
    size: str
    material: str
    notes: str


def bars(judged: Judged) -> Iterator[PartsRow]:
    """What is cut to length from bar or tube: it has no sheet of its own."""
    known, units = judged.worked.known, judged.shown_in
    for what, size in (("Beam", _tube_beam(known, units=units)), ("Steering arm", _bar_arm(known, units=units))):
        if size:
            yield PartsRow(what, "1", size, "bar or tube", "cut square and ground to what it stands on, in the fixture")


@reads
def _tube_beam(beam: Beam, beam_width: Mm, beam_wall: Mm | None, beam_part: Part | None, *, units: Units) -> str | None:
    if beam != "tube":
        return None
    wall = BLANK if beam_wall is None else show(beam_wall, "mm", units)
    long = BLANK
    if beam_part is not None:
        heights = [point[2] for piece in beam_part.solid.pieces if isinstance(piece, Hull) for point in piece.points]
        long = show(max(heights) - min(heights), "mm", units)
    return f"ø {show(beam_width, 'mm', units)}, wall {wall}, {long} long"


@reads
def _bar_arm(
    steering_arm_form: ArmForm,
    steering_arm_length: Mm,
    steering_arm_width: Mm,
    steering_arm_height: Mm | None,
    steering_arm_wall: Mm | None,
    *,
    units: Units,
) -> str | None:
    if steering_arm_form == "flat bar":
        return None
    long = show(steering_arm_length, "mm", units)
    if steering_arm_form == "round bar":
        return f"ø {show(steering_arm_width, 'mm', units)}, {long} to the tie rod"
    wall = BLANK if steering_arm_wall is None else show(steering_arm_wall, "mm", units)
    if steering_arm_form == "round tube":
        return f"ø {show(steering_arm_width, 'mm', units)}, wall {wall}, {long} to the tie rod"
    high = BLANK if steering_arm_height is None else show(steering_arm_height, "mm", units)
    return f"{show(steering_arm_width, 'mm', units)} x {high}, wall {wall}, {long} to the tie rod"


def bought(judged: Judged) -> Iterator[PartsRow]:
    """Parts as bought, by what they are asked for at a counter."""
    for what, a_side, entries, words in _BOUGHT:
        answers = [at_the_counter(judged, entry) or BLANK for entry in entries]
        yield PartsRow(what, a_side, words.format(*answers), "as bought", "write the donor on it")


def bolts(judged: Judged) -> Iterator[PartsRow]:
    """Bolts with thread, grip, grade, torque to fill in, where the head stands."""
    known, units = judged.worked.known, judged.shown_in
    for which, read in (("Upper", _upper_pivot_bolt), ("Lower", _lower_pivot_bolt)):
        size, grade = read(known, units=units) or (f"thread {BLANK}, grip {BLANK}", BLANK)
        yield PartsRow(
            f"{which} pivot bolt", "1", size, grade,
            f"head on top, nut below, pinned or self-locking; shank through both lugs. Torque {BLANK}",
        )  # fmt: skip
    count, size, grade = _hub_bolts(known, units=units) or ("____", f"thread {BLANK}", BLANK)
    held = "nut in front of the hub's flange" if _into_nuts(known) else "screwed into the hub's flange"
    yield PartsRow("Hub bolt", count, size, grade, f"head behind the plate, {held}. Torque {BLANK}")
    count, size, grade = _caliper_bolts(known, units=units) or ("____", f"thread {BLANK}, length {BLANK}", BLANK)
    yield PartsRow("Caliper bolt", count, size, grade, f"as the caliper's maker asks. Torque {BLANK}")


@reads
def _upper_pivot_bolt(
    upper_thread: Thread,
    upper_ball_width: Mm | None,
    upper_gap: Mm | None,
    upper_lug_thickness: Mm | None,
    upper_grade: BoltGrade | None,
    *,
    units: Units,
) -> tuple[str, str] | None:
    return _pivot_bolt(upper_thread, upper_ball_width, upper_gap, upper_lug_thickness, upper_grade, units)


@reads
def _lower_pivot_bolt(
    lower_thread: Thread,
    lower_ball_width: Mm | None,
    lower_gap: Mm | None,
    lower_lug_thickness: Mm | None,
    lower_grade: BoltGrade | None,
    *,
    units: Units,
) -> tuple[str, str] | None:
    return _pivot_bolt(lower_thread, lower_ball_width, lower_gap, lower_lug_thickness, lower_grade, units)


@reads
def _into_nuts(hub_bolt_into: ScrewedInto | None) -> bool:
    return hub_bolt_into == "nut"


def _pivot_bolt(
    thread: Thread, ball: float | None, gap: float | None, lug: float | None, grade: str | None, units: Units
) -> tuple[str, str]:
    """Grip: the ball, the gap or spacer on each side of it, and both lugs."""
    grip = BLANK
    if ball is not None and lug is not None:
        grip = show(ball + (gap or 0.0) * 2 + 2 * lug, "mm", units)
    return f"{thread.text}, grip {grip}, {AND_NUT}", grade or BLANK


@reads
def _hub_bolts(
    mount_bolts: int,
    mount_bolt_thread: Thread,
    plate_thickness: Mm | None,
    hub_bolt_engagement: Mm | None,
    hub_bolt_into: ScrewedInto | None,
    hub_mount_flange_thickness: Mm | None,
    mount_bolt_grade: str | None,
    *,
    units: Units,
) -> tuple[str, str, str] | None:
    """Into a nut a bolt goes through plate and mounting flange; into the flange itself through the plate and its thread."""
    through, after = hub_bolt_engagement, "{} under the head"
    if hub_bolt_into == "nut":
        through, after = hub_mount_flange_thickness, f"grip {{}}, {AND_NUT}"
    long = BLANK
    if plate_thickness is not None and through is not None:
        long = show(plate_thickness + through, "mm", units)
    return f"{mount_bolts}", f"{mount_bolt_thread.text}, {after.format(long)}", mount_bolt_grade or BLANK


@reads
def _caliper_bolts(
    caliper_thread: Thread, caliper_grade: BoltGrade | None, bracket_thickness: Mm | None, *, units: Units
) -> tuple[str, str, str] | None:
    """Two, as the sheet asks for their spacing."""
    through = f"through the bracket's {show(bracket_thickness, 'mm', units)}, " if bracket_thickness is not None else ""
    return "2", f"{caliper_thread.text}, {through}length {BLANK}", caliper_grade or BLANK


def metal(judged: Judged) -> str:
    """The plate's metal and condition."""
    return f"{shown(_METAL, judged) or BLANK}, {shown(_CONDITION, judged) or BLANK}"
