"""Where the tie rod takes hold of the upright, and which way the links lie."""

from math import atan, cos, sin, tan

from rules.graph.asking import given, need
from rules.graph.declare import value
from rules.graph.results import NotJudged, Waits
from rules.measure.records import NamedTuple
from rules.measure.units import Mm, Rad
from rules.measure.vectors import Vector, plus, times
from rules.motion.points import Hinge, UprightPoints
from rules.sheet.arms import ArmPivots
from rules.sheet.pivots import SpringOn
from rules.sheet.steering import TieRodEnd
from rules.strength.balance import plane_slopes
from rules.tables import sources
from rules.values.steering.asked_for import INNER_PIVOTS

GEOMETRY = "geometry"
PLACE = "as entered, or the copied arm's length and angle from the steering axis at that height"


@value("links", formula=PLACE, source=sources.GEOMETRY)
def tie_rod_end_ahead(steering: TieRodEnd, castor: Rad, axis_ahead: Mm | None) -> Mm:
    """Outer tie-rod joint ahead of the wheel centre, mm, wheels straight; minus behind.

    Copied arm 150 mm, 20 deg inward, behind, at wheel-centre height: -150 cos 20 deg = -140.954 mm.

    >>> from math import radians
    >>> from rules.sheet.steering import Steering
    >>> arm = {"copied_length": 150.0, "copied_angle": radians(20), "copied_side": "behind", "tie_rod_above": 0.0}
    >>> round(tie_rod_end_ahead(Steering.record(arm), radians(5), None), 3)
    -140.954
    """
    if not _copied(steering, instead_of="tie_rod_ahead"):
        return steering.tie_rod_ahead
    axis = (axis_ahead or 0.0) - steering.tie_rod_above * tan(castor)
    side = 1 if steering.copied_side == "ahead" else -1
    return axis + side * steering.copied_length * cos(steering.copied_angle)


@value("links", formula=PLACE, source=sources.GEOMETRY)
def tie_rod_end_offset(steering: TieRodEnd, hub_face_offset: Mm, hub_height_offset: Mm, inclination: Rad) -> Mm:
    """Outer tie-rod joint from the tyre centre plane, mm, outboard positive.

    Copied arm 150 mm, 20 deg inward, axis 100 mm inboard: -100 - 150 sin 20 deg = -151.303 mm.

    >>> from math import radians
    >>> from rules.sheet.steering import Steering
    >>> arm = {"copied_length": 150.0, "copied_angle": radians(20), "copied_side": "behind", "tie_rod_above": 0.0}
    >>> round(tie_rod_end_offset(Steering.record(arm), -20.0, 100.0, radians(10)), 3)
    -151.303
    """
    if not _copied(steering, instead_of="tie_rod_inboard"):
        return hub_face_offset - steering.tie_rod_inboard
    axis = -hub_height_offset - steering.tie_rod_above * tan(inclination)
    return axis - steering.copied_length * sin(steering.copied_angle)


def _copied(steering: TieRodEnd, instead_of: str) -> bool:
    """Whether an arm is copied, in full, where this place is not entered. Raises Waits for what misses."""
    if given(steering, instead_of) is not None:
        return False
    copied = ("copied_length", "copied_angle", "copied_side")
    if all(given(steering, key) is None for key in copied):
        raise Waits(f"steering.{instead_of}")
    need(steering, *copied, "tie_rod_above")
    return True


@value("links", formula="wheel centre height + tie-rod end above the wheel centre", source=sources.GEOMETRY)
def tie_rod_end_height(wheel_centre_height: Mm, tie_rod_above: Mm) -> Mm:
    """Outer tie-rod joint above the ground, mm.

    >>> tie_rod_end_height(400.0, -60.0)
    340.0
    """
    return wheel_centre_height + tie_rod_above


@value(
    "links", formula="atan(rise / run across the car) from the inner pivot, else as entered", source=sources.GEOMETRY
)
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
    if inner_from_centre is None or inner_height is None:
        if tie_rod_slope is None:
            raise Waits("loads.tie_rod_slope")
        return tie_rod_slope
    return atan((tie_rod_end_height - inner_height) / _run(tie_rod_end_offset, inner_from_centre, track))


@value(
    "links", formula="atan(ahead / run across the car) from the inner pivot, else as entered", source=sources.GEOMETRY
)
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
    if inner_from_centre is None or inner_ahead is None:
        if tie_rod_sweep is None:
            raise Waits("loads.tie_rod_sweep")
        return tie_rod_sweep
    return atan((tie_rod_end_ahead - inner_ahead) / _run(tie_rod_end_offset, inner_from_centre, track))


def _run(outer_offset: float, inner_from_centre: float, track: float) -> float:
    run = outer_offset + track / 2 - inner_from_centre
    if run < 1.0:
        raise NotJudged("the tie rod's inner pivot does not lie inboard of its outer end; put that right first")
    return run


ARMS = ({"which": "lower"}, {"which": "upper"})


@value(
    "links",
    formula="height of the tie-rod end + what the tie rod may rise to its inner end, from level to the steeper arm",
    source=sources.GEOMETRY.saying(
        "with no bump steer tie rod and both arms, seen from the front, aim at one point: its slope lies between theirs"
    ),
)
def inner_height_as_arms(
    inner_height: Mm,
    tie_rod_end_height: Mm,
    tie_rod_end_offset: Mm,
    inner_from_centre: Mm | None,
    track: Mm,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    upright_points: UprightPoints | None,
) -> Mm:
    """The height of the tie rod's inner end nearest to its own at which the rod lies level, or as an arm does, or between, mm.

    Arms that rise 30 mm in 300 to their inner pivots, and a tie rod as long: 20 mm up is as it is, 40 mm is 10 too high.

    >>> upright = UprightPoints((0.0, -100.0, 300.0), (0.0, -100.0, 500.0), (0.0, 0.0, 400.0))
    >>> lower, upper = (Hinge((100.0, -400.0, height), (-100.0, -400.0, height)) for height in (330.0, 530.0))
    >>> [inner_height_as_arms(350.0 + up, 350.0, -100.0, 400.0, 1600.0, lower, upper, upright) for up in (20.0, 40.0, -5.0)]
    [370.0, 380.0, 350.0]
    """
    rises = [0.0]
    if inner_from_centre is not None and upright_points is not None:
        run = track / 2 + tie_rod_end_offset - inner_from_centre
        arms = ((lower_hinge, upright_points.lower), (upper_hinge, upright_points.upper))
        rises += [run * _rise(hinge, outer) for hinge, outer in arms if hinge is not None]
    return tie_rod_end_height + min(max(inner_height - tie_rod_end_height, min(rises)), max(rises))


def _rise(hinge: Hinge, outer: Vector) -> float:
    """How far an arm rises for each mm from its outer joint inboard to the middle of its inner pivots; 0 for one of no length."""
    _, across, height = times(0.5, plus(hinge.front, hinge.rear))
    run = outer[1] - across
    return (height - outer[2]) / run if run > 0 else 0.0


@value(
    "links",
    formula="the arm's inner pivots from the centre line, less half the track",
    source=sources.GEOMETRY,
    each=({"which": "lower"}, {"which": "upper"}),
)
def which_hinge(
    arms: ArmPivots, travel_begun: bool, which_pivot_ahead: Mm, which_pivot_offset: Mm, track: Mm, which: str
) -> Hinge:
    """Inner pivots of the {which} arm, mm; without a rear pivot the hinge counts as level and straight ahead.

    >>> from rules.sheet.arms import Arms
    >>> front_view = Arms.record({"lower_front_from_centre": 400.0, "lower_front_height": 330.0})
    >>> which_hinge(front_view, True, 10.0, -80.0, 1600.0, "lower")
    Hinge(front=(110.0, -400.0, 330.0), rear=(-90.0, -400.0, 330.0), flat=True)
    """
    across, height = f"{which}_front_from_centre", f"{which}_front_height"
    rest = ahead, rear_ahead, rear_across, rear_height = [
        f"{which}_{place}" for place in ("front_ahead", "rear_ahead", "rear_from_centre", "rear_height")
    ]
    need(arms, across, height)
    side, up = given(arms, across) - track / 2, given(arms, height)
    if all(given(arms, key) is None for key in rest):
        ends = which_pivot_ahead + HALF_FLAT_HINGE, which_pivot_ahead - HALF_FLAT_HINGE
        hinge = Hinge((ends[0], side, up), (ends[1], side, up), flat=True)
    else:
        need(arms, *rest)
        rear = (given(arms, rear_ahead), given(arms, rear_across) - track / 2, given(arms, rear_height))
        hinge = Hinge((given(arms, ahead), side, up), rear)
    if slip := hinge_slip(hinge, which_pivot_offset):
        raise NotJudged(f"the {which} arm's {slip}; put its pivots right first")
    return hinge


HALF_FLAT_HINGE = 100.0
"""mm; where only the front view is known, how far each pivot counts as ahead of and behind the outer one."""
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
    flat: bool = False

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return "plane through the arm's three pivots"


@value(
    "links", formula="plane through the inner and outer pivots of the arm without the spring", source=sources.GEOMETRY
)
def guiding_plane(
    spring_on: SpringOn,
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
        raise NotJudged("the inner pivots of the arm without the spring are not known", *INNER_PIVOTS)
    return ArmPlane(*plane_slopes(hinge.front, hinge.rear, outer), hinge.flat)


@value("links", formula="across the plane through the arm's pivots, else as entered", source=sources.GEOMETRY)
def guiding_arm_slope(arm_slope: Rad | None, guiding_plane: ArmPlane | None) -> Rad:
    """Slope of the arm without the spring, seen from the front, rad, outer end higher positive.

    >>> guiding_arm_slope(None, ArmPlane(0.1, 0.0))
    0.1
    """
    if guiding_plane is not None:
        return guiding_plane.across
    if arm_slope is None:
        raise Waits("loads.arm_slope")
    return arm_slope


@value("links", formula="along the plane through the arm's pivots, else as entered", source=sources.GEOMETRY)
def guiding_hinge_slope(arm_hinge_slope: Rad | None, guiding_plane: ArmPlane | None) -> Rad:
    """Slope of the plane of the arm without the spring, seen from the side, rad, front end higher positive.

    >>> guiding_hinge_slope(None, ArmPlane(0.0, 0.1))
    0.1
    """
    if guiding_plane is not None and not (guiding_plane.flat and arm_hinge_slope is not None):
        return guiding_plane.along
    if arm_hinge_slope is None:
        raise Waits("loads.arm_hinge_slope")
    return arm_hinge_slope
