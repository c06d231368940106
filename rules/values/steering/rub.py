"""Whether tyre or rim touch arms, lower and upper joint or tie rod anywhere in travel and lock. Negative: they hit.

The tyre is the largest one, new and not bulged, square at the shoulders and so a little larger than the real one.
Solids and tubes take the sweep only so that nothing is guessed at for a front end that is not entered.
"""

from rules.graph.declare import value
from rules.graph.results import Estimate, OutsideRange, Waits
from rules.measure.units import Mm
from rules.measure.vectors import Vector
from rules.motion.points import Hinge, Pose, Upright
from rules.motion.solids import Ring, inner_ends, least_gap
from rules.motion.sweep import Sweep, Worst
from rules.tables.rim_flange import RIM_FLANGE

USUAL_ARM_TUBE, USUAL_TIE_ROD = 38.0, 25.0
"""mm, until measured. Common practice, no source."""

SOLIDS = "geometry of simple solid shapes in every position of the sweep, to 0.05 mm; rules/motion/solids.py"
STAND_IN = "common practice, no source, until measured"
TUBE = "least distance of the tubes' middle lines, inner pivots to outer joint, from the {} - tube diameter / 2"
HOUSING = (
    "least of the tubes' and the housing's gap to the rim: tube as a line less half its diameter, housing as a ball"
)


@value(
    "rub",
    formula="section width wide, lip width where it leaves the flange, 45 deg between; from flange edge to outside diameter",
    source=f"from memory: the usual flange stands {RIM_FLANGE} mm; a sidewall leans out from the flange by less than 45 deg",
)
def tyre_solid(
    envelope: Sweep, largest_tyre_diameter: Mm, tyre_section_width: Mm, wheel_diameter: Mm, wheel_overall_width: Mm
) -> Ring:
    """The largest tyre as a ring round the spindle, mm, once it can be moved. Below the flange's edge the rim covers it.

    Inner radius 381 / 2 + 17.5 = 208.0.

    >>> tyre_solid(Sweep(()), 889.0, 317.5, 381.0, 240.0)
    Ring(inner=208.0, outer=444.5, width=317.5, foot=240.0)
    """
    inner, outer = wheel_diameter / 2 + RIM_FLANGE, largest_tyre_diameter / 2
    foot = min(wheel_overall_width, tyre_section_width)
    if outer - inner <= (tyre_section_width - foot) / 2:
        raise OutsideRange(
            "the tyre hardly stands above the rim: check the tyre's size and the wheel's diameter and width"
        )
    return Ring(inner, outer, tyre_section_width, foot)


@value(
    "rub",
    formula=f"overall width wide, from barrel inside diameter / 2 to wheel diameter / 2 + {RIM_FLANGE} mm",
    source=f"from memory: the usual flange stands {RIM_FLANGE} mm",
)
def rim_solid(envelope: Sweep, barrel_inside_diameter: Mm, wheel_diameter: Mm, wheel_overall_width: Mm) -> Ring:
    """The rim as a ring round the spindle, mm, once it can be moved; as thick all across as from barrel to flange edge.

    >>> rim_solid(Sweep(()), 360.0, 381.0, 240.0)
    Ring(inner=180.0, outer=208.0, width=240.0, foot=240.0)
    """
    return Ring(barrel_inside_diameter / 2, wheel_diameter / 2 + RIM_FLANGE, wheel_overall_width, wheel_overall_width)


def _tube(diameter: float | None, usual: float, field: str) -> float:
    return Estimate(usual, measure=field) if diameter is None else diameter


def _arm_tube(arm: str, diameter: float | None, hinge: Hinge) -> float:
    """Where only the front view is known, the legs are not: one tube straight across stands in for both."""
    if hinge.flat and diameter is not None:
        return Estimate(diameter, measure=f"arms.{arm}_front_ahead")
    return _tube(diameter, USUAL_ARM_TUBE, f"arms.{arm}_tube")


@value("rub", formula="as entered, else 38 mm", source=STAND_IN)
def upper_arm_tube(envelope: Sweep, upper_tube: Mm | None, upper_hinge: Hinge) -> Mm:
    """Outside diameter of the upper arm's tube, mm, once it can be moved. An estimate until measured.

    An estimate too where the arm is known from the front only: then nobody has said where its legs run.

    >>> float(upper_arm_tube(Sweep(()), None, Hinge((100.0, -400.0, 300.0), (-100.0, -400.0, 300.0))))
    38.0
    """
    return _arm_tube("upper", upper_tube, upper_hinge)


@value("rub", formula="as entered, else 38 mm", source=STAND_IN)
def lower_arm_tube(envelope: Sweep, lower_tube: Mm | None, lower_hinge: Hinge) -> Mm:
    """Outside diameter of the lower arm's tube, mm, once it can be moved. An estimate until measured.

    An estimate too where the arm is known from the front only: then nobody has said where its legs run.

    >>> float(lower_arm_tube(Sweep(()), None, Hinge((100.0, -400.0, 300.0), (-100.0, -400.0, 300.0))))
    38.0
    """
    return _arm_tube("lower", lower_tube, lower_hinge)


@value("rub", formula="as entered, else 25 mm", source=STAND_IN)
def tie_rod_diameter(envelope: Sweep, tie_rod_tube: Mm | None) -> Mm:
    """Outside diameter of the tie rod, mm, once it can be moved. An estimate until measured.

    >>> float(tie_rod_diameter(Sweep(()), None))
    25.0
    """
    return _tube(tie_rod_tube, USUAL_TIE_ROD, "arms.tie_rod_tube")


Line = tuple[Vector, Vector]


def _thinner(gap: Worst, tube: float) -> Worst:
    return Worst(gap - tube / 2, gap.travel, gap.lock)


def _upper_arm(envelope: Sweep, ring: Ring, hinge: Hinge, tube: float) -> Worst:
    ends = inner_ends(hinge)
    return _thinner(least_gap(envelope, ring, lambda pose: [(end, pose.upper) for end in ends]), tube)


def _lower_arm(envelope: Sweep, ring: Ring, hinge: Hinge, tube: float) -> Worst:
    ends = inner_ends(hinge)
    return _thinner(least_gap(envelope, ring, lambda pose: [(end, pose.lower) for end in ends]), tube)


def _tie_rod_line(pose: Pose) -> list[Line]:
    assert pose.inner_end is not None and pose.tie_rod_end is not None
    return [(pose.inner_end, pose.tie_rod_end)]


def _tie_rod(envelope: Sweep, ring: Ring, tube: float) -> Worst:
    return _thinner(least_gap(envelope, ring, _tie_rod_line), tube)


def _or_housing(tube_gap: Worst, rim: Ring, upright: Upright, pivot: Vector, radius: float) -> Worst:
    """The tube's gap or the housing's, whichever is less; the housing turns with the wheel and keeps its gap everywhere."""
    housing = rim.from_point(upright.wheel_centre, (0.0, 1.0, 0.0), pivot) - radius
    return tube_gap if tube_gap <= housing else Worst(housing, 0.0, 0.0)


@value("rub", formula=TUBE.format("tyre"), source=SOLIDS)
def tyre_upper_arm_gap(envelope: Sweep, upper_hinge: Hinge, upper_arm_tube: Mm, tyre_solid: Ring) -> Mm:
    """Between the largest tyre and the upper arm's tubes, mm; it knows where.

    Tyre's side 150 inboard, arm's middle straight across ends 200 inboard, tube 38: 50 - 19.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> pose = Pose((0.0, -80.0, 300.0), (0.0, -200.0, 640.0), (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), None, None, 0.0, 400.0)
    >>> hinge = Hinge((100.0, -500.0, 640.0), (-100.0, -500.0, 640.0), flat=True)
    >>> tyre = Ring(208.0, 444.5, 300.0, 240.0)
    >>> float(tyre_upper_arm_gap(Sweep((Placed(0.0, 0.0, pose),)), hinge, 38.0, tyre))
    31.0
    """
    return _upper_arm(envelope, tyre_solid, upper_hinge, upper_arm_tube)


@value("rub", formula=TUBE.format("tyre"), source=SOLIDS)
def tyre_lower_arm_gap(envelope: Sweep, lower_hinge: Hinge, lower_arm_tube: Mm, tyre_solid: Ring) -> Mm:
    """Between the largest tyre and the lower arm's tubes, mm; it knows where.

    Arm's middle 100 below the spindle, straight across, tyre from 208: 208 - 100 - 19.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> pose = Pose((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), None, None, 0.0, 400.0)
    >>> hinge = Hinge((100.0, -500.0, 300.0), (-100.0, -500.0, 300.0), flat=True)
    >>> tyre = Ring(208.0, 444.5, 240.0, 240.0)
    >>> round(tyre_lower_arm_gap(Sweep((Placed(0.0, 0.0, pose),)), hinge, 38.0, tyre), 6)
    89.0
    """
    return _lower_arm(envelope, tyre_solid, lower_hinge, lower_arm_tube)


@value(
    "rub",
    formula=TUBE.format("tyre").replace("tubes' middle lines, inner pivots", "rod's middle line, inner"),
    source=SOLIDS,
)
def tyre_tie_rod_gap(envelope: Sweep, tie_rod_diameter: Mm, tyre_solid: Ring) -> Mm:
    """Between the largest tyre and the tie rod, mm; it knows where. Joint and steering arm are not in it.

    Rod's middle ends 200 inboard of the wheel's middle, tyre's side 150: 50 - 12.5.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> rod = ((-300.0, -200.0, 400.0), (-300.0, -600.0, 400.0))
    >>> pose = Pose((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), *rod, 0.0, 400.0)
    >>> float(tyre_tie_rod_gap(Sweep((Placed(0.0, 0.0, pose),)), 25.0, Ring(208.0, 444.5, 300.0, 240.0)))
    37.5
    """
    return _tie_rod(envelope, tyre_solid, tie_rod_diameter)


@value("rub", formula=HOUSING, source=SOLIDS)
def rim_upper_joint_gap(
    envelope: Sweep,
    upright_points: Upright,
    upper_hinge: Hinge,
    upper_arm_tube: Mm,
    upper_radius: Mm | None,
    rim_solid: Ring,
) -> Mm:
    """Between the rim and the upper joint's housing or the upper arm's tubes, mm; it knows where.

    Pivot 140 above the spindle, housing 22, barrel at 180: 180 - 140 - 22.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> upright = Upright((0.0, -80.0, 300.0), (0.0, -80.0, 540.0), (0.0, 0.0, 400.0))
    >>> pose = Pose(upright.lower, upright.upper, (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), None, None, 0.0, 400.0)
    >>> hinge = Hinge((100.0, -500.0, 540.0), (-100.0, -500.0, 540.0), flat=True)
    >>> float(rim_upper_joint_gap(Sweep((Placed(0.0, 0.0, pose),)), upright, hinge, 38.0, 22.0, Ring(180.0, 208.0, 240.0, 240.0)))
    18.0
    """
    if upper_radius is None:
        raise Waits("pivots.upper_radius")
    tube = _upper_arm(envelope, rim_solid, upper_hinge, upper_arm_tube)
    return _or_housing(tube, rim_solid, upright_points, upright_points.upper, upper_radius)


@value("rub", formula=HOUSING, source=SOLIDS)
def rim_lower_joint_gap(
    envelope: Sweep,
    upright_points: Upright,
    lower_hinge: Hinge,
    lower_arm_tube: Mm,
    lower_radius: Mm | None,
    rim_solid: Ring,
) -> Mm:
    """Between the rim and the lower joint's housing or the lower arm's tubes, mm; it knows where.

    Pivot 140 below the spindle, housing 22, barrel at 180: 180 - 140 - 22.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> upright = Upright((0.0, -80.0, 260.0), (0.0, -80.0, 540.0), (0.0, 0.0, 400.0))
    >>> pose = Pose(upright.lower, upright.upper, (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), None, None, 0.0, 400.0)
    >>> hinge = Hinge((100.0, -500.0, 260.0), (-100.0, -500.0, 260.0), flat=True)
    >>> float(rim_lower_joint_gap(Sweep((Placed(0.0, 0.0, pose),)), upright, hinge, 38.0, 22.0, Ring(180.0, 208.0, 240.0, 240.0)))
    18.0
    """
    if lower_radius is None:
        raise Waits("pivots.lower_radius")
    tube = _lower_arm(envelope, rim_solid, lower_hinge, lower_arm_tube)
    return _or_housing(tube, rim_solid, upright_points, upright_points.lower, lower_radius)


@value(
    "rub",
    formula=TUBE.format("rim").replace("tubes' middle lines, inner pivots", "rod's middle line, inner"),
    source=SOLIDS,
)
def rim_tie_rod_gap(envelope: Sweep, tie_rod_diameter: Mm, rim_solid: Ring) -> Mm:
    """Between the rim and the tie rod, mm; it knows where. Joint and steering arm are not in it.

    Rod's outer end 150 inboard at 190 from the spindle, rim's lip 120: 30 - 12.5.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> rod = ((-190.0, -150.0, 400.0), (-190.0, -600.0, 400.0))
    >>> pose = Pose((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), *rod, 0.0, 400.0)
    >>> float(rim_tie_rod_gap(Sweep((Placed(0.0, 0.0, pose),)), 25.0, Ring(180.0, 208.0, 240.0, 240.0)))
    17.5
    """
    return _tie_rod(envelope, rim_solid, tie_rod_diameter)
