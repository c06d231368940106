"""Levers of the welds, as the other entries give them: what the entered ones are compared with.

Each stands for the usual place of the weld, which is said; a weld made elsewhere has another lever, and its builder says so.
"""

from math import hypot

from rules.graph.declare import value
from rules.graph.results import DoesNotApply
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


def _from_plate(pivot: float, shear: Shear | None, size: Mm | None, from_edge: Mm | None, extent: float) -> float:
    """From the middle of a weld of that extent, as near to a pivot as the plate lets it stand, to the pivot.

    size: of the plate, that way; from_edge: of the wheel's axis from its top or front edge. Only for two lugs on a plate.
    """
    if shear != "double":
        raise DoesNotApply("the joint is not held between two lugs")
    if size is None or from_edge is None:
        raise DoesNotApply("the plate is not entered")
    room, middle = max((size - extent) / 2, 0.0), from_edge - size / 2
    return pivot - min(max(pivot, middle - room), middle + room)


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
    side: str,
) -> Mm:
    """{Which} pivot above the middle of the weld of its two lugs on the plate, mm; minus below.

    >>> round(which_weld_lever_above(120.0, "double", 300.0, 140.0, "fore and aft", "up and down", 90.0, 60.0, "above"))
    10
    """
    extent = _extent("up and down", weld_which_runs_lie, weld_which_apart_lies, weld_which_run, weld_which_apart)
    up = which_side_spindle if side == "above" else -which_side_spindle
    return _from_plate(up, which_shear, plate_height, spindle_from_top, extent)


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
) -> Mm:
    """{Which} pivot ahead of the middle of the weld of its two lugs on the plate, mm; minus behind.

    >>> round(which_weld_lever_ahead(-20.0, "double", 180.0, 90.0, "fore and aft", "up and down", 150.0, 60.0))
    -5
    """
    extent = _extent("fore and aft", weld_which_runs_lie, weld_which_apart_lies, weld_which_run, weld_which_apart)
    return _from_plate(which_pivot_ahead, which_shear, plate_width, spindle_from_front, extent)


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
            raise DoesNotApply("the beam's width is not entered")
        half = beam_width / 2
    elif plate_width is None or spindle_from_front is None:
        raise DoesNotApply("neither beam nor plate is entered")
    else:
        half = spindle_from_front if tie_rod_end_ahead > 0 else plate_width - spindle_from_front
    return tie_rod_end_ahead - half if tie_rod_end_ahead > 0 else tie_rod_end_ahead + half


@value(
    "levers of welds", formula="tie-rod end above the wheel centre - arm's root above the wheel centre", source=PLAIN
)
def steering_arm_lever_above(tie_rod_above: Mm | None, steering_arm_root_above: Mm | None) -> Mm:
    """Tie-rod end above the arm's root, mm; minus below.

    >>> steering_arm_lever_above(-10.0, -40.0)
    30.0
    """
    if tie_rod_above is None or steering_arm_root_above is None:
        raise DoesNotApply("the heights of the tie-rod end and of the arm's root are not both entered")
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
        return from_face - plate / 2
    if beam_depth is None:
        raise DoesNotApply("the beam's depth is not entered")
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
    if caliper_stands not in ("ahead", "behind"):
        raise DoesNotApply("the caliper does not stand ahead or behind")
    if brake_effective_radius is None or plate_width is None or spindle_from_front is None:
        raise DoesNotApply("the pads' radius and the plate are not all entered")
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
    if caliper_stands not in ("ahead", "behind") or bracket_arm_length is None:
        raise DoesNotApply("the caliper does not stand ahead or behind, or its bracket is not entered")
    if plate_width is None or spindle_from_front is None:
        raise DoesNotApply("the plate is not entered")
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
        raise DoesNotApply("the pads' radius and the place of the caliper's bolts are not both entered")
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
        raise DoesNotApply("the bracket's thickness is not entered")
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
        raise DoesNotApply("the plate's thickness is not entered")
    return thickness


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
    levers = (weld_steering_arm_load_ahead, weld_steering_arm_load_above, weld_steering_arm_load_inboard)
    if None in levers:
        raise DoesNotApply("the three levers of the steering arm's weld are not all entered")
    return hypot(*(lever or 0.0 for lever in levers))


@value("levers of welds", formula="across corners of the rectangle that the two spacings make", source=GEOMETRY)
def hub_bolts_across(mount_bolts: int, mount_width: Mm | None, mount_height: Mm | None) -> Mm:
    """Diameter of the circle through four hub bolts, mm, by their two spacings.

    >>> hub_bolts_across(4, 60.0, 80.0)
    100.0
    """
    if mount_bolts != 4 or mount_width is None or mount_height is None:
        raise DoesNotApply("the hub has other than four bolts, or their spacings are not both entered")
    return hypot(mount_width, mount_height)
