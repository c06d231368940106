"""Sizes of the parts that few people have measured yet: as entered, else an estimate, said to be one."""

from math import radians

from rules.graph.declare import value
from rules.graph.results import Estimate, Waits
from rules.measure.marks import BoltCircle, Thread
from rules.measure.units import Mm, Rad
from rules.motion.linkage import SteeringLinkage
from rules.sheet.caliper import CaliperKind, CaliperSide
from rules.sheet.welds import PadsStand
from rules.tables import sources

USUAL = sources.COMMON_PRACTICE.saying("assumed until measured")
SUBJECT = "corner"
FLANGE, MOUNT_FLANGE, CALIPER_LENGTH, SHOCK, TIE_ROD = 10.0, 12.0, 180.0, 70.0, 25.0
"""mm, until measured. Common practice, no source."""
SHOULDER, BEHIND_HUB = 55.0, 25.0
"""mm across a stub shaft's shoulder and behind the hub, until measured. Common practice, no source."""
PISTON_SIDE = 25.0
"""mm that a sliding caliper reaches further inboard than outboard, where its pistons are. Common practice, no source."""
BAND_LEFT = 5.0
"""mm of the braking band that a caliper leaves free towards the hat. Common practice, no source."""
STANDS = {"ahead": radians(90), "above": 0.0, "behind": radians(-90), "below": radians(180)}


def _measured(entered: float | None, usual: float, field: str) -> float:
    return Estimate(usual, measure=field) if entered is None else entered


@value(SUBJECT, formula="as entered, else the pilot diameter", source=USUAL)
def body_diameter(hub_body_diameter: Mm | None, pilot_diameter: Mm) -> Mm:
    """Diameter of the hub's body, which stands still, mm. An estimate until measured.

    >>> float(body_diameter(None, 71.5))
    71.5
    """
    return _measured(hub_body_diameter, pilot_diameter, "hub.body_diameter")


@value(SUBJECT, formula="as entered, else to the plate's back", source=USUAL)
def body_length(hub_body_length: Mm | None, flange_to_mount_face: Mm, plate_thickness: Mm | None) -> Mm:
    """From the hub face inboard to its end, mm. An estimate until measured.

    >>> float(body_length(None, 70.0, 12.0))
    82.0
    """
    return _measured(hub_body_length, flange_to_mount_face + (plate_thickness or 0.0), "hub.body_length")


@value(SUBJECT, formula="as entered, else [2 1/8 in | 55 mm]", source=USUAL)
def shaft_shoulder(shoulder_diameter: Mm | None) -> Mm:
    """Diameter of a clamped stub shaft's shoulder, mm. An estimate until measured.

    >>> float(shaft_shoulder(None))
    55.0
    """
    return _measured(shoulder_diameter, SHOULDER, "hub.shoulder_diameter")


@value(SUBJECT, formula="as entered, else [1 in | 25 mm]", source=USUAL)
def shaft_behind_hub(shoulder_length: Mm | None) -> Mm:
    """How far a clamped stub shaft stands out behind the hub, mm. An estimate until measured.

    >>> float(shaft_behind_hub(None))
    25.0
    """
    return _measured(shoulder_length, BEHIND_HUB, "hub.shoulder_length")


@value(SUBJECT, formula="as entered, else bolt circle + 3 x stud diameter", source=USUAL)
def flange_diameter(hub_flange_diameter: Mm | None, hub_bolt_circle: BoltCircle, stud_thread: Thread) -> Mm:
    """Diameter of the hub's flange, mm. An estimate until measured.

    >>> float(flange_diameter(None, BoltCircle("5 x 100 mm", 5, 100.0), Thread("12 x 1.5 mm", 12.0, 1.5)))
    136.0
    """
    return _measured(hub_flange_diameter, hub_bolt_circle.diameter + 3 * stud_thread.diameter, "hub.flange_diameter")


@value(SUBJECT, formula="as entered, else [3/8 in | 10 mm]", source=USUAL)
def flange_thickness(hub_flange_thickness: Mm | None) -> Mm:
    """Thickness of the hub's flange, mm. An estimate until measured.

    >>> float(flange_thickness(None))
    10.0
    """
    return _measured(hub_flange_thickness, FLANGE, "hub.flange_thickness")


@value(SUBJECT, formula="as entered, else 1.5 x stud diameter", source=USUAL)
def stud_head_diameter(hub_stud_head_diameter: Mm | None, stud_thread: Thread) -> Mm:
    """Diameter of a stud's head, mm. An estimate until measured.

    >>> float(stud_head_diameter(None, Thread("12 x 1.5 mm", 12.0, 1.5)))
    18.0
    """
    return _measured(hub_stud_head_diameter, 1.5 * stud_thread.diameter, "hub.stud_head_diameter")


@value(SUBJECT, formula="as entered, else half the stud diameter", source=USUAL)
def stud_head_height(hub_stud_head_height: Mm | None, stud_thread: Thread) -> Mm:
    """How far a stud's head stands out behind the flange, mm. An estimate until measured.

    >>> float(stud_head_height(None, Thread("12 x 1.5 mm", 12.0, 1.5)))
    6.0
    """
    return _measured(hub_stud_head_height, 0.5 * stud_thread.diameter, "hub.stud_head_height")


@value(SUBJECT, formula="as entered, else [1/2 in | 12 mm]", source=USUAL)
def mount_flange_thickness(hub_mount_flange_thickness: Mm | None) -> Mm:
    """Thickness of the hub's mounting flange, mm. An estimate until measured.

    >>> float(mount_flange_thickness(None))
    12.0
    """
    return _measured(hub_mount_flange_thickness, MOUNT_FLANGE, "hub.mount_flange_thickness")


@value(
    SUBJECT,
    formula="as entered, else the inside of the braking band, else bolt circle + 4 x stud diameter",
    source=USUAL,
)
def hat_diameter(
    hat_outside_diameter: Mm | None,
    band_inside_diameter: Mm | None,
    rotor_bolt_circle: BoltCircle | None,
    stud_thread: Thread | None,
) -> Mm:
    """Outside diameter of the rotor's hat, mm. An estimate until measured.

    >>> float(hat_diameter(None, 175.0, BoltCircle("5 x 100 mm", 5, 100.0), Thread("12 x 1.5 mm", 12.0, 1.5)))
    175.0
    """
    if hat_outside_diameter is None and band_inside_diameter is None:
        asked = {"rotor.bolt_circle": rotor_bolt_circle, "hub.stud_thread": stud_thread}
        if missing := [name for name, found in asked.items() if found is None]:
            raise Waits(*missing)
    usual = band_inside_diameter or 0.0
    if rotor_bolt_circle and stud_thread:
        usual = usual or rotor_bolt_circle.diameter + 4 * stud_thread.diameter
    return _measured(hat_outside_diameter, usual, "rotor.hat_outside_diameter")


@value(SUBJECT, formula="as entered, else the hat's outside diameter", source=sources.GEOMETRY)
def band_inside(band_inside_diameter: Mm | None, hat_diameter: Mm) -> Mm:
    """Where the ring of the rotor begins, mm across: at the hat, where the braking band is not known to begin further out.

    >>> band_inside(None, 160.0)
    160.0
    """
    return band_inside_diameter if band_inside_diameter is not None else hat_diameter


@value(SUBJECT, formula="as entered, else the outboard reach, [1 in | 25 mm] more for a sliding caliper", source=USUAL)
def caliper_inboard(inboard_reach: Mm | None, outboard_reach: Mm, caliper_kind: CaliperKind) -> Mm:
    """From the rotor's middle to the caliper's innermost point, mm. An estimate until measured.

    >>> float(caliper_inboard(None, 45.0, "sliding")), float(caliper_inboard(None, 45.0, "fixed"))
    (70.0, 45.0)
    """
    usual = outboard_reach + (PISTON_SIDE if caliper_kind == "sliding" else 0.0)
    return _measured(inboard_reach, usual, "caliper.inboard_reach")


@value(
    SUBJECT,
    formula="as entered, else (rotor diameter - inside of the braking band) / 2 - [3/16 in | 5 mm]",
    source=USUAL,
)
def caliper_inward(inward_reach: Mm | None, rotor_diameter: Mm, band_inside: Mm) -> Mm:
    """From the rotor's edge towards the hub to the caliper's lowest point, mm. An estimate until measured.

    >>> float(caliper_inward(None, 280.0, 180.0))
    45.0
    """
    return _measured(inward_reach, max(5.0, (rotor_diameter - band_inside) / 2 - BAND_LEFT), "caliper.inward_reach")


@value(SUBJECT, formula="as entered, else 0: at the edge", source=USUAL)
def bolts_inside_edge(bolts_inside: Mm | None) -> Mm:
    """From the rotor's edge towards the hub to the line through the caliper's two bolts, mm. An estimate until measured.

    >>> float(bolts_inside_edge(None))
    0.0
    """
    return _measured(bolts_inside, 0.0, "caliper.bolts_inside")


@value(SUBJECT, formula="as entered, else [7 1/8 in | 180 mm]", source=USUAL)
def caliper_long(caliper_length: Mm | None) -> Mm:
    """Length of the caliper along the rotor, mm, straight from end to end. An estimate until measured.

    >>> float(caliper_long(None))
    180.0
    """
    return _measured(caliper_length, CALIPER_LENGTH, "caliper.length")


@value(
    SUBJECT,
    formula="as entered, else ahead or behind as its side says, else the quarter its bracket's weld names, else the steering "
    "arm's side, where room is least, else behind",
    source=USUAL,
)
def caliper_at(
    clock: Rad | None, side: CaliperSide | None, caliper_stands: PadsStand | None, tie_rod_ahead: Mm | None
) -> Rad:
    """Where the caliper's middle stands about the wheel's axis, rad from straight up, ahead positive. An estimate until entered.

    >>> from math import degrees
    >>> round(degrees(caliper_at(None, None, "ahead", -120.0))), round(degrees(caliper_at(None, None, None, 120.0)))
    (90, 90)
    """
    worst: CaliperSide = "ahead" if tie_rod_ahead is not None and tie_rod_ahead > 0 else "behind"
    return _measured(clock, STANDS[side or caliper_stands or worst], "caliper.clock")


@value(SUBJECT, formula="as entered, else [1 in | 25 mm]", source=USUAL)
def tie_rod_outside(tie_rod_tube: Mm | None, steering_linkage: SteeringLinkage) -> Mm:
    """Outside diameter of the tie rod, mm, once it is known where it runs. An estimate until measured.

    >>> float(tie_rod_outside(None, SteeringLinkage("rack", (-150.0, -480.0, 370.0), -800.0, 60.0)))
    25.0
    """
    return _measured(tie_rod_tube, TIE_ROD, "arms.tie_rod_tube")


@value(SUBJECT, formula="as entered, else [2 3/4 in | 70 mm]", source=USUAL)
def shock_outside(shock_diameter: Mm | None) -> Mm:
    """Outside diameter of shock and spring, mm. An estimate until measured.

    >>> float(shock_outside(None))
    70.0
    """
    return _measured(shock_diameter, SHOCK, "spring.shock_diameter")


@value(
    SUBJECT,
    formula="as entered for its weld, else from a root in the middle of the beam's side or, without a beam, of the plate's edge",
    source=sources.COMMON_PRACTICE.saying("where the root usually stands"),
    each=({"way": "ahead", "of": "ahead_of"}, {"way": "above", "of": "above"}, {"way": "inboard", "of": "inboard_of"}),
)
def arm_end_of_root(way: str, of: str, weld_steering_arm_load_way: Mm | None, steering_arm_lever_way: Mm | None) -> Mm:
    """How far the tie-rod end lies {way} of the middle of the steering arm's root, mm. An estimate until measured.

    >>> float(arm_end_of_root("ahead", "ahead_of", None, -120.0)), float(arm_end_of_root("above", "above", None, None))
    (-120.0, 0.0)
    """
    field = f"weld_steering_arm.load_{way}"
    if weld_steering_arm_load_way is None and steering_arm_lever_way is None and way != "above":
        raise Waits(field)
    return _measured(weld_steering_arm_load_way, steering_arm_lever_way or 0.0, field)
