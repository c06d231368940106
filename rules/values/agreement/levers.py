"""Levers of the welds, as the other entries give them: what the entered ones are compared with.

Each stands for the usual place of the weld, which is said; a weld made elsewhere has another lever, and its builder says so.
What nobody entered of what gives a lever is named, so that the entered lever is not judged; where this build has no such weld,
there is none.
"""

from collections.abc import Mapping
from math import hypot

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate, NotJudged
from rules.measure.units import Mm
from rules.sheet.pivots import Shear
from rules.sheet.upright import Beam
from rules.sheet.welds import PadsStand, Way
from rules.tables.sources import GEOMETRY
from rules.values.wheel_end.pivots import PIVOTS

PLAIN = GEOMETRY.saying("the weld's place is the usual one")


@value(
    "levers of welds",
    formula="{which} pivot from the mounting face of the hub - plate thickness",
    source=PLAIN,
    each=({"which": "upper"}, {"which": "lower"}),
)
def which_weld_lever_inboard(which_pivot_from_mount_face: Mm, plate_thickness: Mm | None) -> Mm:
    """{Which} pivot inboard of a weld on the plate's back, mm.

    >>> which_weld_lever_inboard(60.0, 12.0)
    48.0
    """
    return which_pivot_from_mount_face - _plate(plate_thickness)


PLATE = "the plate is not all entered"


def _not_entered(why: str, entries: Mapping[str, object]) -> NotJudged:
    """What to raise where not all of these are there. why: a clause. entries: by dotted name or value, None what is not there."""
    return NotJudged(why, *(name for name, entry in entries.items() if entry is None))


def _between_lugs(shear: Shear | None, which: str) -> None:
    """See that the joint is held between two lugs: only their weld's place is known."""
    if shear is None:
        raise NotJudged(f"how the {which} joint's bolt is held is not entered", f"pivots.{which}_shear")
    if shear != "double":
        raise DoesNotApply("the joint is not held between two lugs")


def _from_plate(pivot: float, size: float, from_edge: float, extent: float) -> float:
    """From the middle of a weld of that extent, as near to a pivot as the plate lets it stand, to the pivot, mm.

    size: of the plate, that way; from_edge: of the wheel's axis from its top or front edge.
    """
    room, middle = max((size - extent) / 2, 0.0), from_edge - size / 2
    return pivot - min(max(pivot, middle - room), middle + room)


def _fore_and_aft(plate_width: Mm | None, spindle_from_front: Mm | None) -> Mapping[str, object]:
    return {"plate.width": plate_width, "plate.spindle_from_front": spindle_from_front}


def _extent(way: Way, runs_lie: Way | None, apart_lies: Way | None, run: Mm | None, apart: Mm | None) -> float:
    if runs_lie == way:
        return run or 0.0
    return (apart or 0.0) if apart_lies == way else 0.0


BETWEEN_LUGS = GEOMETRY.saying("two lugs alike on both sides of the joint, their weld where the plate is nearest to it")


@value(
    "levers of welds",
    formula="{which} pivot from the middle of its weld, which stands beside it, or as near as the plate lets it",
    source=BETWEEN_LUGS,
    each=PIVOTS,
)
def which_weld_lever_above(
    which_side_spindle: Mm,
    which_shear: Shear | None,
    plate_height: Mm | None,
    spindle_from_top: Mm | None,
    weld_which_runs_lie: Way | None,
    weld_which_apart_lies: Way | None,
    weld_which_run: Mm | None,
    weld_which_apart: Mm | None,
    which: str,
    side: str,
) -> Mm:
    """{Which} pivot above the middle of the weld of its two lugs on the plate, mm; minus below.

    >>> round(which_weld_lever_above(120.0, "double", 300.0, 140.0, "fore and aft", "up and down", 90.0, 60.0, "upper", "above"))
    10
    """
    extent = _extent("up and down", weld_which_runs_lie, weld_which_apart_lies, weld_which_run, weld_which_apart)
    up = which_side_spindle if side == "above" else -which_side_spindle
    _between_lugs(which_shear, which)
    if plate_height is None or spindle_from_top is None:
        places = {"plate.height": plate_height, "plate.spindle_from_top": spindle_from_top}
        raise _not_entered(PLATE, places)
    return _from_plate(up, plate_height, spindle_from_top, extent)


@value(
    "levers of welds",
    formula="{which} pivot from the middle of its weld, which stands beside it, or as near as the plate lets it",
    source=BETWEEN_LUGS,
    each=PIVOTS,
)
def which_weld_lever_ahead(
    which_pivot_ahead: Mm,
    which_shear: Shear | None,
    plate_width: Mm | None,
    spindle_from_front: Mm | None,
    weld_which_runs_lie: Way | None,
    weld_which_apart_lies: Way | None,
    weld_which_run: Mm | None,
    weld_which_apart: Mm | None,
    which: str,
) -> Mm:
    """{Which} pivot ahead of the middle of the weld of its two lugs on the plate, mm; minus behind.

    >>> round(which_weld_lever_ahead(-20.0, "double", 180.0, 90.0, "fore and aft", "up and down", 150.0, 60.0, "upper"))
    -5
    """
    extent = _extent("fore and aft", weld_which_runs_lie, weld_which_apart_lies, weld_which_run, weld_which_apart)
    _between_lugs(which_shear, which)
    if plate_width is None or spindle_from_front is None:
        raise _not_entered(PLATE, _fore_and_aft(plate_width, spindle_from_front))
    return _from_plate(which_pivot_ahead, plate_width, spindle_from_front, extent)


@value(
    "levers of welds",
    formula="tie-rod end from the wheel's axis, less half of the beam's width, or the plate's edge where there is no beam",
    source=PLAIN,
)
def steering_arm_lever_ahead(
    tie_rod_end_ahead: Mm,
    beam: Beam | None,
    beam_width: Mm | None,
    plate_width: Mm | None,
    spindle_from_front: Mm | None,
) -> Mm:
    """Tie-rod end ahead of a weld on the beam's side, else on the plate's edge, mm; minus behind.

    >>> steering_arm_lever_ahead(-160.0, "box", 80.0, None, None), steering_arm_lever_ahead(150.0, "none", None, 180.0, 90.0)
    (-120.0, 60.0)
    """
    if beam not in (None, "none"):
        if beam_width is None:
            raise NotJudged("the beam's width is not entered", "upright.beam_width")
        half = beam_width / 2
    elif plate_width is None or spindle_from_front is None:
        raise _not_entered(PLATE, _fore_and_aft(plate_width, spindle_from_front))
    else:
        half = spindle_from_front if tie_rod_end_ahead > 0 else plate_width - spindle_from_front
    return _of_no_beam(tie_rod_end_ahead - half if tie_rod_end_ahead > 0 else tie_rod_end_ahead + half, beam)


@value(
    "levers of welds", formula="tie-rod end above the wheel centre - arm's root above the wheel centre", source=PLAIN
)
def steering_arm_lever_above(tie_rod_above: Mm | None, steering_arm_root_above: Mm | None) -> Mm:
    """Tie-rod end above the arm's root, mm; minus below.

    >>> steering_arm_lever_above(-10.0, -40.0)
    30.0
    """
    if tie_rod_above is None or steering_arm_root_above is None:
        heights = {"steering.tie_rod_above": tie_rod_above, "upright.steering_arm_root_above": steering_arm_root_above}
        raise _not_entered("the heights of the tie-rod end and of the arm's root are not both entered", heights)
    return tie_rod_above - steering_arm_root_above


@value(
    "levers of welds",
    formula="offset of the mounting face of the hub - tie-rod end offset - plate thickness - half of the beam's depth",
    source=PLAIN,
)
def steering_arm_lever_inboard(
    mount_face_offset: Mm, tie_rod_end_offset: Mm, plate_thickness: Mm | None, beam: Beam | None, beam_depth: Mm | None
) -> Mm:
    """Tie-rod end inboard of a weld in the middle of the beam's side, else in the middle of the plate's edge, mm.

    >>> steering_arm_lever_inboard(-40.0, -170.0, 16.0, "box", 60.0), steering_arm_lever_inboard(-40.0, -60.0, 16.0, "none", None)
    (84.0, 12.0)
    """
    from_face, plate = mount_face_offset - tie_rod_end_offset, _plate(plate_thickness)
    if beam in (None, "none"):
        return _of_no_beam(from_face - plate / 2, beam)
    if beam_depth is None:
        raise NotJudged("the beam's depth is not entered", "upright.beam_depth")
    return from_face - plate - beam_depth / 2


@value(
    "levers of welds",
    formula="middle of the pads from the wheel centre - the plate's edge on that side",
    source=PLAIN,
)
def caliper_lever_ahead(
    caliper_stands: PadsStand | None,
    brake_effective_radius: Mm | None,
    plate_width: Mm | None,
    spindle_from_front: Mm | None,
) -> Mm:
    """Middle of the pads ahead of a weld on the plate's edge, mm, minus behind; for a caliper ahead or behind.

    >>> caliper_lever_ahead("ahead", 130.0, 180.0, 90.0), caliper_lever_ahead("behind", 130.0, 180.0, 80.0)
    (40.0, -30.0)
    """
    _beside_the_axle(caliper_stands)
    if brake_effective_radius is None or plate_width is None or spindle_from_front is None:
        places = {"brake_effective_radius": brake_effective_radius, **_fore_and_aft(plate_width, spindle_from_front)}
        raise _not_entered("the pads' radius and the plate are not all entered", places)
    if caliper_stands == "ahead":
        return brake_effective_radius - spindle_from_front
    return plate_width - spindle_from_front - brake_effective_radius


@value(
    "levers of welds",
    formula="half the rotor's diameter - the plate's edge on that side - the bracket's free length",
    source=PLAIN,
)
def bolts_inside_by_bracket(
    rotor_diameter: Mm,
    bracket_arm_length: Mm | None,
    caliper_stands: PadsStand | None,
    plate_width: Mm | None,
    spindle_from_front: Mm | None,
) -> Mm:
    """Where the line through the caliper's bolts lies inside the rotor's edge, mm, by a bracket on the plate's edge.

    >>> bolts_inside_by_bracket(280.0, 35.0, "ahead", 180.0, 90.0)
    15.0
    """
    if bracket_arm_length is None and caliper_stands is None:
        raise DoesNotApply("nothing is entered of the caliper's bracket")
    _beside_the_axle(caliper_stands)
    if bracket_arm_length is None or plate_width is None or spindle_from_front is None:
        places = {"upright.bracket_arm_length": bracket_arm_length, **_fore_and_aft(plate_width, spindle_from_front)}
        raise _not_entered("bracket and plate are not all entered", places)
    edge = spindle_from_front if caliper_stands == "ahead" else plate_width - spindle_from_front
    return rotor_diameter / 2 - edge - bracket_arm_length


@value(
    "levers of welds",
    formula="middle of the pads from the wheel's axis - (half the rotor's diameter - bolts inside its edge), without sign",
    source=GEOMETRY,
)
def pads_from_bolts(brake_effective_radius: Mm | None, rotor_diameter: Mm, bolts_inside: Mm | None) -> Mm:
    """From the line through the caliper's bolts to the middle of the pads, mm.

    >>> pads_from_bolts(130.0, 280.0, 30.0)
    20.0
    """
    if brake_effective_radius is None or bolts_inside is None:
        places = {"brake_effective_radius": brake_effective_radius, "caliper.bolts_inside": bolts_inside}
        raise _not_entered("the pads' radius and the place of the caliper's bolts are not both entered", places)
    return abs(brake_effective_radius - (rotor_diameter / 2 - bolts_inside))


@value(
    "levers of welds",
    formula="rotor plane offset - offset of the mounting face of the hub + half of the bracket's thickness",
    source=PLAIN,
)
def bracket_rotor_distance(rotor_plane_offset: Mm, mount_face_offset: Mm, bracket_thickness: Mm | None) -> Mm:
    """Middle of the rotor outboard of the middle of a bracket whose face lies where the plate's does, mm.

    >>> bracket_rotor_distance(-10.0, -45.0, 16.0)
    43.0
    """
    if bracket_thickness is None:
        raise NotJudged("the bracket's thickness is not entered", "plate.bracket_thickness")
    return rotor_plane_offset - mount_face_offset + bracket_thickness / 2


@value("levers of welds", formula="- distance from the bracket's middle to the rotor's", source=PLAIN)
def caliper_lever_inboard(bracket_rotor_distance: Mm) -> Mm:
    """Middle of the pads inboard of the bracket's middle, mm: minus, for the rotor lies outboard of the plate.

    >>> caliper_lever_inboard(43.0)
    -43.0
    """
    return -bracket_rotor_distance


def _plate(thickness: float | None) -> float:
    if thickness is None:
        raise NotJudged("the plate's thickness is not entered", "plate.thickness")
    return thickness


def _of_no_beam(lever: float, beam: Beam | None) -> float:
    """A lever of the steering arm's weld, assumed on the plate's edge until a beam is entered or said to be none."""
    return Estimate(lever, measure="upright.beam") if beam is None else lever


def _beside_the_axle(caliper_stands: PadsStand | None) -> None:
    """See that the caliper stands ahead or behind, beside the plate's edge."""
    if caliper_stands is None:
        raise NotJudged("where the caliper stands is not entered", "weld_caliper_bracket.caliper_stands")
    if caliper_stands not in ("ahead", "behind"):
        raise DoesNotApply("the caliper does not stand ahead or behind")


@value(
    "levers of welds",
    formula="straight from the middle of the arm's weld to the tie-rod end, by the three levers entered for it",
    source=GEOMETRY,
)
def steering_arm_reach(
    weld_steering_arm_load_ahead: Mm | None,
    weld_steering_arm_load_above: Mm | None,
    weld_steering_arm_load_inboard: Mm | None,
) -> Mm:
    """How long the steering arm is from its root to the tie-rod end, mm.

    >>> steering_arm_reach(-120.0, 0.0, 50.0)
    130.0
    """
    ahead, above, inboard = weld_steering_arm_load_ahead, weld_steering_arm_load_above, weld_steering_arm_load_inboard
    if ahead is None or above is None or inboard is None:
        levers = {"load_ahead": ahead, "load_above": above, "load_inboard": inboard}
        why = "the three levers of the steering arm's weld are not all entered"
        raise _not_entered(why, {f"weld_steering_arm.{key}": lever for key, lever in levers.items()})
    return hypot(ahead, above, inboard)


@value("levers of welds", formula="across corners of the rectangle that the two spacings make", source=GEOMETRY)
def hub_bolts_across(mount_bolts: int, mount_width: Mm | None, mount_height: Mm | None) -> Mm:
    """Diameter of the circle through four hub bolts, mm, by their two spacings.

    >>> hub_bolts_across(4, 60.0, 80.0)
    100.0
    """
    if mount_bolts != 4:
        raise DoesNotApply("the hub has other than four bolts")
    if mount_width is None and mount_height is None:
        raise DoesNotApply("no spacing of the hub's bolts is entered beside their circle")
    if mount_width is None or mount_height is None:
        spacings = {"hub.mount_width": mount_width, "hub.mount_height": mount_height}
        raise _not_entered("the two spacings of the hub's bolts are not both entered", spacings)
    return hypot(mount_width, mount_height)
