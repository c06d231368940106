"""Whether tyre or rim touch arms, lower and upper joint or tie rod anywhere in travel and lock. Negative: they hit.

The tyre is the largest one, new and not bulged, square at the shoulders and so a little larger than the real one.
Solids and tubes take the sweep only so that nothing is guessed at for a front end that is not entered.
"""

from rules.graph.declare import value
from rules.graph.results import Estimate, OutsideRange
from rules.measure.units import Mm
from rules.measure.vectors import Vector
from rules.motion.points import Hinge, Pose, UprightPoints
from rules.motion.solids import Ring, inner_ends, least_gap
from rules.motion.sweep import Sweep, Worst
from rules.tables import sources
from rules.tables.rim_flange import RIM_FLANGE

USUAL_ARM_TUBE, USUAL_TIE_ROD = 38.0, 25.0
"""mm, until measured. Common practice, no source."""

SOLIDS = sources.GEOMETRY.saying(
    "simple solid shapes in every position of the sweep, to 0.05 mm; rules/motion/solids.py"
)
STAND_IN = sources.COMMON_PRACTICE.saying("until measured")
HOUSING = (
    "least of the tubes' and the housing's gap to the rim: tube as a line less half its diameter, housing as a ball"
)


@value(
    "rub",
    formula="section width wide, lip width where it leaves the flange, 45 deg between; from flange edge to outside diameter",
    source=(
        sources.JIS_D_4218.at("table 3", f"a J flange, {RIM_FLANGE} mm, taken beyond the nominal diameter"),
        sources.COMMON_PRACTICE.saying("a sidewall leans out from the flange by less than 45 deg, from memory"),
    ),
)
def tyre_solid(
    envelope: Sweep, largest_tyre_diameter: Mm, tyre_section_width: Mm, wheel_diameter: Mm, wheel_overall_width: Mm
) -> Ring:
    """The largest tyre as a ring round the wheel's axis, mm, once it can be moved. Below the flange's edge the rim covers it.

    Inner radius 381 / 2 + 17.5 = 208.0.

    >>> tyre_solid(Sweep(()), 889.0, 317.5, 381.0, 240.0)
    Ring(inner=208.0, outer=444.5, width=317.5, foot=240.0)
    """
    inner, outer = wheel_diameter / 2 + RIM_FLANGE, largest_tyre_diameter / 2
    foot = min(wheel_overall_width, tyre_section_width)
    if outer - inner <= (tyre_section_width - foot) / 2:
        raise OutsideRange(
            "the tyre hardly stands above the rim",
            change="Put right the tyres' sizes, wheel diameter or wheel width.",
        )
    return Ring(inner, outer, tyre_section_width, foot)


@value(
    "rub",
    formula=f"overall width wide, from barrel inside diameter / 2 to wheel diameter / 2 + {RIM_FLANGE} mm",
    source=sources.JIS_D_4218.at("table 3", f"a J flange, {RIM_FLANGE} mm, taken beyond the nominal diameter"),
)
def rim_solid(envelope: Sweep, barrel_inside_diameter: Mm, wheel_diameter: Mm, wheel_overall_width: Mm) -> Ring:
    """The rim as a ring round the wheel's axis, mm, once it can be moved; as thick all across as from barrel to flange edge.

    >>> rim_solid(Sweep(()), 360.0, 381.0, 240.0)
    Ring(inner=180.0, outer=208.0, width=240.0, foot=240.0)
    """
    return Ring(barrel_inside_diameter / 2, wheel_diameter / 2 + RIM_FLANGE, wheel_overall_width, wheel_overall_width)


def _tube(diameter: float | None, usual: float, field: str) -> float:
    return Estimate(usual, measure=field) if diameter is None else diameter


ARMS = ({"which": "upper"}, {"which": "lower"})


@value("rub", formula="as entered, else 38 mm", source=STAND_IN, each=ARMS)
def which_arm_tube(envelope: Sweep, which_tube: Mm | None, which_hinge: Hinge, which: str) -> Mm:
    """Outside diameter of the {which} arm's tube, mm, once it can be moved. An estimate until measured.

    An estimate too where the arm is known from the front only: nobody has said where its legs run, and one tube straight
    across is assumed for both.

    >>> float(which_arm_tube(Sweep(()), None, Hinge((100.0, -400.0, 300.0), (-100.0, -400.0, 300.0)), "upper"))
    38.0
    """
    if which_hinge.flat and which_tube is not None:
        return Estimate(which_tube, measure=f"arms.{which}_front_ahead")
    return _tube(which_tube, USUAL_ARM_TUBE, f"arms.{which}_tube")


@value("rub", formula="as entered, else 25 mm", source=STAND_IN)
def tie_rod_diameter(envelope: Sweep, tie_rod_tube: Mm | None) -> Mm:
    """Outside diameter of the tie rod, mm, once it can be moved. An estimate until measured.

    >>> float(tie_rod_diameter(Sweep(()), None))
    25.0
    """
    return _tube(tie_rod_tube, USUAL_TIE_ROD, "arms.tie_rod_tube")


Edge = tuple[Vector, Vector]


def _thinner(gap: Worst, tube: float) -> Worst:
    return Worst(gap - tube / 2, gap.travel, gap.lock)


def _pivot(points: Pose | UprightPoints, which: str) -> Vector:
    return points.upper if which == "upper" else points.lower


def _arm(envelope: Sweep, ring: Ring, hinge: Hinge, tube: float, which: str) -> Worst:
    ends = inner_ends(hinge)
    return _thinner(least_gap(envelope, ring, lambda pose: [(end, _pivot(pose, which)) for end in ends]), tube)


def _tie_rod_line(pose: Pose) -> list[Edge]:
    assert pose.inner_end is not None and pose.tie_rod_end is not None
    return [(pose.inner_end, pose.tie_rod_end)]


@value(
    "rub",
    formula="least distance of the tubes' middle lines, inner pivots to outer joint, from the tyre - tube diameter / 2",
    source=SOLIDS,
    each=ARMS,
    heavy=True,
)
def tyre_which_arm_gap(envelope: Sweep, which_hinge: Hinge, which_arm_tube: Mm, tyre_solid: Ring, which: str) -> Mm:
    """Between the largest tyre and the {which} arm's tubes, mm; it knows where.

    Tyre's side 150 inboard, arm's middle straight across ends 200 inboard, tube 38: 50 - 19.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> pose = Pose((0.0, -80.0, 300.0), (0.0, -200.0, 640.0), (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), None, None, 0.0, 400.0)
    >>> upper = Hinge((100.0, -500.0, 640.0), (-100.0, -500.0, 640.0), flat=True)
    >>> float(tyre_which_arm_gap(Sweep((Placed(0.0, 0.0, pose),)), upper, 38.0, Ring(208.0, 444.5, 300.0, 240.0), "upper"))
    31.0

    Arm's middle 100 below the wheel centre, straight across, tyre from 208: 208 - 100 - 19.

    >>> lower = Hinge((100.0, -500.0, 300.0), (-100.0, -500.0, 300.0), flat=True)
    >>> gap = tyre_which_arm_gap(Sweep((Placed(0.0, 0.0, pose),)), lower, 38.0, Ring(208.0, 444.5, 240.0, 240.0), "lower")
    >>> round(gap, 6)
    89.0
    """
    return _arm(envelope, tyre_solid, which_hinge, which_arm_tube, which)


@value("rub", formula=HOUSING, source=SOLIDS, each=ARMS, heavy=True)
def rim_which_joint_gap(
    envelope: Sweep,
    upright_points: UprightPoints,
    which_hinge: Hinge,
    which_arm_tube: Mm,
    which_radius: Mm,
    rim_solid: Ring,
    which: str,
) -> Mm:
    """Between the rim and the {which} joint's housing or the {which} arm's tubes, mm; it knows where.

    The housing turns with the wheel and keeps its gap everywhere.
    Pivot 140 above the wheel centre, housing 22, barrel at 180: 180 - 140 - 22.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -80.0, 540.0), (0.0, 0.0, 400.0))
    >>> pose = Pose(upright.lower, upright.upper, (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), None, None, 0.0, 400.0)
    >>> hinge, rim = Hinge((100.0, -500.0, 540.0), (-100.0, -500.0, 540.0), flat=True), Ring(180.0, 208.0, 240.0, 240.0)
    >>> float(rim_which_joint_gap(Sweep((Placed(0.0, 0.0, pose),)), upright, hinge, 38.0, 22.0, rim, "upper"))
    18.0
    """
    tube = _arm(envelope, rim_solid, which_hinge, which_arm_tube, which)
    pivot = _pivot(upright_points, which)
    housing = rim_solid.from_point(upright_points.wheel_centre, (0.0, 1.0, 0.0), pivot) - which_radius
    return tube if tube <= housing else Worst(housing, 0.0, 0.0)


@value(
    "rub",
    formula="least distance of the rod's middle line, inner to outer joint, from the {ring} - tube diameter / 2",
    source=SOLIDS,
    each=({"ring": "tyre", "turning": "largest tyre"}, {"ring": "rim", "turning": "rim"}),
    heavy=True,
)
def ring_tie_rod_gap(envelope: Sweep, tie_rod_diameter: Mm, ring_solid: Ring) -> Mm:
    """Between the {turning} and the tie rod, mm; it knows where. Joint and steering arm are not in it.

    Rod's middle ends 200 inboard of the wheel's middle, tyre's side 150: 50 - 12.5.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> rod = ((-300.0, -200.0, 400.0), (-300.0, -600.0, 400.0))
    >>> pose = Pose((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0), (0.0, 1.0, 0.0), *rod, 0.0, 400.0)
    >>> float(ring_tie_rod_gap(Sweep((Placed(0.0, 0.0, pose),)), 25.0, Ring(208.0, 444.5, 300.0, 240.0)))
    37.5
    """
    return _thinner(least_gap(envelope, ring_solid, _tie_rod_line), tie_rod_diameter)
