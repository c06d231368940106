"""The parts list: every piece to cut, to buy and to bolt, by number, with how many a side, size, material and notes."""

from collections.abc import Iterator

from rules.corner.part import Part
from rules.judging.judge import Judged, shown
from rules.judging.reader import name, reads
from rules.measure.display import show
from rules.measure.marks import Thread
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.units import Mm
from rules.motion.kinds import OuterPivotBolt, TieRodOuterBolt
from rules.sheet.bolts import JointSide, ScrewedInto
from rules.sheet.pivots import PivotKind, Shear
from rules.sheet.upright import ArmForm, Beam, HubBoltAccess
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
_BOUGHT_TIE_ROD_END = (
    (
        "Tie-rod end",
        "1",
        (name("steering.tie_rod_thread"), name("steering.tie_rod_end_reach")),
        "outer, thread {}, housing reach {}",
    ),
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
    tie_rod = _BOUGHT_TIE_ROD_END if _has_tie_rod_end(judged.worked.known) else ()
    for what, a_side, entries, words in (*_BOUGHT, *tie_rod):
        answers = [at_the_counter(judged, entry) or BLANK for entry in entries]
        yield PartsRow(what, a_side, words.format(*answers), "as bought", "write the donor on it")


@reads
def _has_tie_rod_end(tie_rod_end_part: Part) -> bool | None:
    return True


def bolts(judged: Judged) -> Iterator[PartsRow]:
    """Bolts and pins with thread, grip, grade, which way each points, and torque to fill in."""
    known, units = judged.worked.known, judged.shown_in
    for read in (_upper_pivot_bolt, _lower_pivot_bolt, _tie_rod_pin, _hub_bolts, _caliper_bolts):
        if row := read(known, units=units):
            yield row


_POINTS: dict[JointSide, str] = {
    "above": "up", "below": "down", "ahead": "forward", "behind": "rearward", "inboard": "inboard", "outboard": "outboard",
}  # fmt: skip
_HEAD: dict[JointSide, str] = {
    "above": "below", "below": "above", "ahead": "behind", "behind": "ahead", "inboard": "outboard", "outboard": "inboard",
}  # fmt: skip
_FALLS: dict[OuterPivotBolt, JointSide] = {"along the steering axis": "below", "fore and aft": "behind"}
"""Where the nut of a bolt through two lugs stands: head up or forward, so that it stays in when its nut is lost. Common practice,
no source. Of one that lies across the car there is no such custom."""


@reads
def _upper_pivot_bolt(
    upper_kind: PivotKind | None,
    upper_shear: Shear | None,
    upper_side: JointSide | None,
    upper_bolt: OuterPivotBolt | None,
    upper_thread: Thread | None,
    upper_ball_width: Mm | None,
    upper_gap: Mm | None,
    upper_lug_thickness: Mm | None,
    upper_grade: BoltGrade | None,
    *,
    units: Units,
) -> PartsRow | None:
    if upper_kind == "ball joint":
        return _joint_pin("Upper", upper_side, upper_thread)
    grip = _grip(upper_shear, upper_ball_width, upper_gap, upper_lug_thickness, units)
    way = _nut_side(upper_shear, upper_side, upper_bolt)
    return _pivot_bolt("Upper", upper_shear, way, upper_thread, grip, upper_grade)


@reads
def _lower_pivot_bolt(
    lower_kind: PivotKind | None,
    lower_shear: Shear | None,
    lower_side: JointSide | None,
    lower_bolt: OuterPivotBolt | None,
    lower_thread: Thread | None,
    lower_ball_width: Mm | None,
    lower_gap: Mm | None,
    lower_lug_thickness: Mm | None,
    lower_grade: BoltGrade | None,
    *,
    units: Units,
) -> PartsRow | None:
    if lower_kind == "ball joint":
        return _joint_pin("Lower", lower_side, lower_thread)
    grip = _grip(lower_shear, lower_ball_width, lower_gap, lower_lug_thickness, units)
    way = _nut_side(lower_shear, lower_side, lower_bolt)
    return _pivot_bolt("Lower", lower_shear, way, lower_thread, grip, lower_grade)


def _grip(shear: Shear | None, ball: float | None, gap: float | None, lug: float | None, units: Units) -> str:
    """The ball, and on each side where a lug stands the gap or spacer and the lug."""
    if shear is None or ball is None or lug is None:
        return BLANK
    lugs = 2 if shear == "double" else 1
    return show(ball + lugs * ((gap or 0.0) + lug), "mm", units)


def _nut_side(shear: Shear | None, side: JointSide | None, lies: OuterPivotBolt | None) -> JointSide | None:
    """One lug has the nut behind it, the head stands on the joint."""
    if shear == "single":
        return side
    return _FALLS.get(lies) if shear and lies else None


def _pivot_bolt(
    which: str, shear: Shear | None, nut: JointSide | None, thread: Thread | None, grip: str, grade: str | None
) -> PartsRow:
    points, head = (_POINTS[nut], _HEAD[nut]) if nut else (BLANK, BLANK)
    held = {"single": "head on the joint, washer wider than its ball; shank through the lug"}
    through = held.get(shear or "", "shank through both lugs")
    return PartsRow(
        f"{which} pivot bolt",
        "1",
        f"{_said(thread)}, grip {grip}, {AND_NUT}",
        grade or BLANK,
        f"points {points}: head {head}, nut {nut or BLANK}, pinned or self-locking; {through}. Torque {BLANK}",
    )


def _joint_pin(which: str, side: JointSide | None, thread: Thread | None) -> PartsRow:
    """A ball joint brings its own."""
    points = _POINTS[side] if side else BLANK
    return PartsRow(
        f"{which} joint's pin",
        "1",
        f"{_said(thread)}, taper {BLANK}",
        "as bought",
        f"points {points}: nut {side or BLANK}, pinned or self-locking. Torque {BLANK}",
    )


def _said(thread: Thread | None) -> str:
    return thread.text if thread else f"thread {BLANK}"


@reads
def _tie_rod_pin(
    tie_rod_end_part: Part,
    tie_rod_outer_bolt: TieRodOuterBolt | None,
    tie_rod_stud_diameter: Mm | None,
    *,
    units: Units,
) -> PartsRow | None:
    """On which side of the arm the joint stands is not asked."""
    across = BLANK if tie_rod_stud_diameter is None else show(tie_rod_stud_diameter, "mm", units)
    return PartsRow(
        "Tie-rod pin or bolt",
        "1",
        f"ø {across} where it leaves the arm, taper {BLANK}",
        "as bought",
        f"lies {tie_rod_outer_bolt or BLANK}, points {BLANK}: nut beyond the arm, pinned or self-locking. Torque {BLANK}",
    )


_IN_FRONT = "nut in front of the hub's flange"
_HUB_BOLT_HELD: dict[ScrewedInto | None, str] = {
    "nut": _IN_FRONT,
    None: f"nut or thread in front: {BLANK}",
}


@reads
def _hub_bolts(
    mount_bolts: int | None,
    mount_bolt_thread: Thread | None,
    plate_thickness: Mm | None,
    hub_bolt_engagement: Mm | None,
    hub_bolt_into: ScrewedInto | None,
    hub_bolt_access: HubBoltAccess | None,
    hub_mount_flange_thickness: Mm | None,
    mount_bolt_grade: str | None,
    *,
    units: Units,
) -> PartsRow | None:
    """Into a nut a bolt goes through plate and mounting flange; into the flange itself through the plate and its thread."""
    through, after = hub_bolt_engagement, "{} under the head"
    held = _HUB_BOLT_HELD.get(hub_bolt_into, "screwed into the hub's flange")
    way = f"points outboard: head behind the plate, {held}"
    if hub_bolt_into == "nut" or hub_bolt_access in ("welded nuts", "studs"):
        through, after = hub_mount_flange_thickness, f"grip {{}}, {AND_NUT}"
    if hub_bolt_access == "welded nuts":
        way = "points inboard: head in front of the hub's flange, nut welded to the plate's back before the beam closes it"
    elif hub_bolt_access == "studs":
        way = f"a stud, held behind the plate before the beam closes it, points outboard: {_IN_FRONT}"
    long = BLANK
    if plate_thickness is not None and through is not None:
        long = show(plate_thickness + through, "mm", units)
    return PartsRow(
        "Hub bolt",
        "____" if mount_bolts is None else f"{mount_bolts}",
        f"{_said(mount_bolt_thread)}, {after.format(long)}",
        mount_bolt_grade or BLANK,
        f"{way}. Torque {BLANK}",
    )


@reads
def _caliper_bolts(
    caliper_thread: Thread | None, caliper_grade: BoltGrade | None, bracket_thickness: Mm | None, *, units: Units
) -> PartsRow | None:
    """Two, as the sheet asks for their spacing."""
    through = f"through the bracket's {show(bracket_thickness, 'mm', units)}, " if bracket_thickness is not None else ""
    return PartsRow(
        "Caliper bolt",
        "2" if caliper_thread else "____",
        f"{_said(caliper_thread)}, {through}length {BLANK}",
        caliper_grade or BLANK,
        f"as the caliper's maker asks; points {BLANK}. Torque {BLANK}",
    )


def metal(judged: Judged) -> str:
    """The plate's metal and condition."""
    return f"{shown(_METAL, judged) or BLANK}, {shown(_CONDITION, judged) or BLANK}"
