"""Where the tie rod takes hold of the upright, and which way the links lie."""

from math import atan, cos, sin, tan
from typing import NamedTuple

from rules.graph.declare import value
from rules.graph.results import NotForThisBuild, Waits
from rules.measure.units import Mm, Rad
from rules.motion.points import Hinge
from rules.strength.balance import plane_slopes
from rules.values.optional_step import answered

GEOMETRY = "geometry"
PLACE = "as entered, or the copied arm's length and angle from the steering axis at that height"


@value("links", formula=PLACE, source=GEOMETRY)
def tie_rod_end_ahead(
    tie_rod_ahead: Mm | None,
    tie_rod_above: Mm | None,
    copied_length: Mm | None,
    copied_angle: Rad | None,
    copied_side: str | None,
    castor: Rad,
    axis_ahead: Mm | None,
) -> Mm:
    """Outer tie-rod joint ahead of the spindle, mm, wheels straight; minus behind.

    Copied arm 150 mm, 20 deg inward, behind, at spindle height: -150 cos 20 deg = -140.954 mm.

    >>> from math import radians
    >>> round(tie_rod_end_ahead(None, 0.0, 150.0, radians(20), "behind", radians(5), None), 3)
    -140.954
    """
    if tie_rod_ahead is not None:
        return tie_rod_ahead
    length, angle, side, above = _copied("tie_rod_ahead", copied_length, copied_angle, copied_side, tie_rod_above)
    axis = (axis_ahead or 0.0) - above * tan(castor)
    return axis + (1 if side == "ahead" else -1) * length * cos(angle)


@value("links", formula=PLACE, source=GEOMETRY)
def tie_rod_end_offset(
    tie_rod_inboard: Mm | None,
    tie_rod_above: Mm | None,
    copied_length: Mm | None,
    copied_angle: Rad | None,
    copied_side: str | None,
    hub_face_offset: Mm,
    hub_height_offset: Mm,
    inclination: Rad,
) -> Mm:
    """Outer tie-rod joint from the tyre centre plane, mm, outboard positive.

    Copied arm 150 mm, 20 deg inward, axis 100 mm inboard: -100 - 150 sin 20 deg = -151.303 mm.

    >>> from math import radians
    >>> round(tie_rod_end_offset(None, 0.0, 150.0, radians(20), "behind", -20.0, 100.0, radians(10)), 3)
    -151.303
    """
    if tie_rod_inboard is not None:
        return hub_face_offset - tie_rod_inboard
    length, angle, _, above = _copied("tie_rod_inboard", copied_length, copied_angle, copied_side, tie_rod_above)
    return -hub_height_offset - above * tan(inclination) - length * sin(angle)


def _copied(
    instead_of: str, length: float | None, angle: float | None, side: str | None, above: float | None
) -> tuple[float, float, str, float]:
    if length is None and angle is None and side is None:
        raise Waits(f"steering.{instead_of}")
    keys = {"copied_length": length, "copied_angle": angle, "copied_side": side, "tie_rod_above": above}
    found = answered("", "steering", **keys)
    return found[0], found[1], found[2], found[3]


@value("links", formula="wheel centre height + tie-rod end above the spindle", source=GEOMETRY)
def tie_rod_end_height(wheel_centre_height: Mm, tie_rod_above: Mm) -> Mm:
    """Outer tie-rod joint above the ground, mm.

    >>> tie_rod_end_height(400.0, -60.0)
    340.0
    """
    return wheel_centre_height + tie_rod_above


@value("links", formula="as entered, else from the inner pivot: atan(rise / run across the car)", source=GEOMETRY)
def tie_rod_slope_at_ride(
    tie_rod_slope: Rad | None,
    tie_rod_end_offset: Mm,
    tie_rod_end_height: Mm,
    inner_from_centre: Mm | None,
    inner_height: Mm | None,
    track: Mm,
) -> Rad:
    """Slope of the tie rod seen from the front, outer end higher positive.

    Outer end 100 mm inboard of the tyre plane and 340 mm up; inner 400 from centre, 380 up, track 1600: run 300.

    >>> from math import degrees
    >>> round(degrees(tie_rod_slope_at_ride(None, -100.0, 340.0, 400.0, 380.0, 1600.0)), 4)
    -7.5946
    """
    if tie_rod_slope is not None:
        return tie_rod_slope
    if inner_from_centre is None or inner_height is None:
        raise Waits("loads.tie_rod_slope")
    return atan((tie_rod_end_height - inner_height) / _run(tie_rod_end_offset, inner_from_centre, track))


@value("links", formula="as entered, else from the inner pivot: atan(ahead / run across the car)", source=GEOMETRY)
def tie_rod_sweep_at_ride(
    tie_rod_sweep: Rad | None,
    tie_rod_end_offset: Mm,
    tie_rod_end_ahead: Mm,
    inner_from_centre: Mm | None,
    inner_ahead: Mm | None,
    track: Mm,
) -> Rad:
    """Sweep of the tie rod seen from above, outer end ahead of the inner positive.

    Outer end 100 mm inboard and 120 mm behind; inner 400 from centre, 150 behind, track 1600: run 300.

    >>> from math import degrees
    >>> round(degrees(tie_rod_sweep_at_ride(None, -100.0, -120.0, 400.0, -150.0, 1600.0)), 4)
    5.7106
    """
    if tie_rod_sweep is not None:
        return tie_rod_sweep
    if inner_from_centre is None or inner_ahead is None:
        raise Waits("loads.tie_rod_sweep")
    return atan((tie_rod_end_ahead - inner_ahead) / _run(tie_rod_end_offset, inner_from_centre, track))


def _run(outer_offset: float, inner_from_centre: float, track: float) -> float:
    run = outer_offset + track / 2 - inner_from_centre
    if run < 1.0:
        raise NotForThisBuild("the tie rod's inner pivot does not lie inboard of its outer end; put that right first")
    return run


@value("links", formula="the arm's inner pivots from the centre line, less half the track", source=GEOMETRY)
def lower_hinge(
    lower_front_ahead: Mm | None,
    lower_front_from_centre: Mm | None,
    lower_front_height: Mm | None,
    lower_rear_ahead: Mm | None,
    lower_rear_from_centre: Mm | None,
    lower_rear_height: Mm | None,
    travel_begun: bool,
    lower_pivot_ahead: Mm,
    lower_pivot_offset: Mm,
    track: Mm,
) -> Hinge:
    """Inner pivots of the lower arm, mm; without a rear pivot the hinge counts as level and straight ahead.

    >>> lower_hinge(None, 400.0, 330.0, None, None, None, True, 10.0, -80.0, 1600.0)
    Hinge(front=(110.0, -400.0, 330.0), rear=(-90.0, -400.0, 330.0), flat=True)
    """
    front = (lower_front_ahead, lower_front_from_centre, lower_front_height)
    rear = (lower_rear_ahead, lower_rear_from_centre, lower_rear_height)
    return _hinge("lower", front, rear, (lower_pivot_ahead, lower_pivot_offset), track)


@value("links", formula="the arm's inner pivots from the centre line, less half the track", source=GEOMETRY)
def upper_hinge(
    upper_front_ahead: Mm | None,
    upper_front_from_centre: Mm | None,
    upper_front_height: Mm | None,
    upper_rear_ahead: Mm | None,
    upper_rear_from_centre: Mm | None,
    upper_rear_height: Mm | None,
    travel_begun: bool,
    upper_pivot_ahead: Mm,
    upper_pivot_offset: Mm,
    track: Mm,
) -> Hinge:
    """Inner pivots of the upper arm, mm; without a rear pivot the hinge counts as level and straight ahead.

    >>> upper_hinge(120.0, 400.0, 560.0, -160.0, 410.0, 565.0, True, -15.0, -120.0, 1600.0)
    Hinge(front=(120.0, -400.0, 560.0), rear=(-160.0, -390.0, 565.0), flat=False)
    """
    front = (upper_front_ahead, upper_front_from_centre, upper_front_height)
    rear = (upper_rear_ahead, upper_rear_from_centre, upper_rear_height)
    return _hinge("upper", front, rear, (upper_pivot_ahead, upper_pivot_offset), track)


HALF_FLAT_HINGE = 100.0
"""mm; where only the front view is known, how far each pivot counts as ahead of and behind the outer one."""
Place = tuple[float | None, float | None, float | None]


def _hinge(arm: str, front: Place, rear: Place, outer: tuple[float, float], track: float) -> Hinge:
    ahead, from_centre, height = front
    if from_centre is None or height is None:
        places = {f"arms.{arm}_front_from_centre": from_centre, f"arms.{arm}_front_height": height}
        raise Waits(*(name for name, part in places.items() if part is None))
    outer_ahead, outer_offset = outer
    side = from_centre - track / 2
    if ahead is None and all(part is None for part in rear):
        flat_ahead, flat_behind = outer_ahead + HALF_FLAT_HINGE, outer_ahead - HALF_FLAT_HINGE
        hinge = Hinge((flat_ahead, side, height), (flat_behind, side, height), flat=True)
    else:
        keys = (f"{arm}_front_ahead", f"{arm}_rear_ahead", f"{arm}_rear_from_centre", f"{arm}_rear_height")
        first, behind, rear_across, rear_up = answered("", "arms", **dict(zip(keys, (ahead, *rear), strict=True)))
        hinge = Hinge((first, side, height), (behind, rear_across - track / 2, rear_up))
    if slip := hinge_slip(hinge, outer_offset):
        raise NotForThisBuild(f"the {arm} arm's {slip}; put its pivots right first")
    return hinge


LEAST_HINGE = 10.0
"""mm fore and aft between an arm's inner pivots."""
LEAST_ARM = 20.0
"""mm from an arm's inner pivots out to its outer one."""


def hinge_slip(hinge: Hinge, outer_offset: float) -> str:
    """What of an arm's pivots cannot be so, in words; empty where nothing. outer_offset: mm, outer pivot.

    >>> hinge_slip(Hinge((-100.0, -400.0, 300.0), (100.0, -400.0, 300.0)), -80.0)
    'front pivot is not ahead of its rear one'
    """
    if hinge.front[0] - hinge.rear[0] < LEAST_HINGE:
        return "front pivot is not ahead of its rear one"
    if max(hinge.front[1], hinge.rear[1]) > outer_offset - LEAST_ARM:
        return "inner pivots do not lie inboard of its outer one"
    return ""


class ArmPlane(NamedTuple):
    """The plane of an arm by its slopes, rad: across the car, outer end higher positive; along it, front end higher."""

    across: float
    along: float

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return "plane through the arm's three pivots"


@value("links", formula="plane through the inner and outer pivots of the arm without the spring", source=GEOMETRY)
def guiding_plane(
    spring_on: str,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    lower_pivot_ahead: Mm,
    lower_pivot_offset: Mm,
    lower_pivot_height: Mm,
    upper_pivot_ahead: Mm,
    upper_pivot_offset: Mm,
    upper_pivot_height: Mm,
) -> ArmPlane:
    """Which way the arm without the spring lies. It can push the upright only in its own plane.

    Hinge 300 mm inboard of the outer pivot and 30 mm below it, its front end 20 mm higher in 200: atan 0.1 both ways.

    >>> from math import degrees
    >>> hinge = Hinge((100.0, -420.0, 570.0), (-100.0, -420.0, 550.0))
    >>> plane = guiding_plane("lower arm", None, hinge, 0.0, -80.0, 300.0, 0.0, -120.0, 590.0)
    >>> round(degrees(plane.across), 4), round(degrees(plane.along), 4)
    (5.7106, 5.7106)
    """
    lower = (lower_pivot_ahead, lower_pivot_offset, lower_pivot_height)
    upper = (upper_pivot_ahead, upper_pivot_offset, upper_pivot_height)
    hinge, outer = (upper_hinge, upper) if spring_on == "lower arm" else (lower_hinge, lower)
    if hinge is None:
        raise NotForThisBuild("the inner pivots of the arm without the spring are not known")
    return ArmPlane(*plane_slopes(hinge.front, hinge.rear, outer))


@value("links", formula="as entered, else across the plane through the arm's pivots", source=GEOMETRY)
def guiding_arm_slope(arm_slope: Rad | None, guiding_plane: ArmPlane | None) -> Rad:
    """Slope of the arm without the spring, seen from the front, rad, outer end higher positive.

    >>> guiding_arm_slope(None, ArmPlane(0.1, 0.0))
    0.1
    """
    if arm_slope is not None:
        return arm_slope
    if guiding_plane is None:
        raise Waits("loads.arm_slope")
    return guiding_plane.across


@value("links", formula="as entered, else along the plane through the arm's pivots", source=GEOMETRY)
def guiding_hinge_slope(arm_hinge_slope: Rad | None, guiding_plane: ArmPlane | None) -> Rad:
    """Slope of the plane of the arm without the spring, seen from the side, rad, front end higher positive.

    >>> guiding_hinge_slope(None, ArmPlane(0.0, 0.1))
    0.1
    """
    if arm_hinge_slope is not None:
        return arm_hinge_slope
    if guiding_plane is None:
        raise Waits("loads.arm_hinge_slope")
    return guiding_plane.along
