"""How far every joint has to tilt through all travel and lock, and how its housing is best clocked."""

from math import radians

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate, Waits
from rules.measure.units import Rad
from rules.motion.joints import Angles, JointTable, Swing, bolt_direction, corners, outer_swing
from rules.motion.joints import tie_rod_inner as inner_angles
from rules.motion.joints import tie_rod_outer as outer_angles
from rules.motion.kinds import OuterPivotBolt, TieRodInnerBolt, TieRodOuterBolt
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import Hinge, UprightPoints
from rules.motion.sweep import Sweep
from rules.tables import sources

RIGID_BODIES = sources.GEOMETRY.saying("upright and arm as rigid bodies; rules/motion/joints.py")
SEEN_FROM_ARM = "the bolt moves with the upright, the housing with the arm: the bolt's direction seen from the arm"
HOUSING = "angle between bolt and housing in every position, the housing square to the bolt at ride but for its set"
BEST = "set at which the worst angle of the sweep is least, by golden section"
NO_EFFECT = "a bolt that lies fore and aft has the same angle however the housing is clocked seen from the front"

BY_EYE = radians(5.0)
"""rad from square that a housing may stand which nobody has measured. Common practice, no source."""
OUTER_PIVOTS = ({"which": "upper"}, {"which": "lower"})


@value("misalignment angle", formula=SEEN_FROM_ARM, source=RIGID_BODIES, each=OUTER_PIVOTS, heavy=True)
def which_joint_swing(
    joint_angles_begun: bool,
    envelope: Sweep,
    upright_points: UprightPoints,
    which_hinge: Hinge,
    which_bolt: OuterPivotBolt,
    which: str,
) -> Swing:
    """The {which} outer joint's bolt in every position, seen from the {which} arm.

    Level parallel arms of 300 mm through 60 mm each way, wheel straight: the arm swings asin(60 / 300) under its bolt.

    >>> front = parallel_arms()
    >>> swing = which_joint_swing(True, parallel_sweep(), front.upright, front.arms[1], "across the car", "upper")
    >>> round(swing.angles(0.0).worst, 7)
    0.2013579
    """
    bolt = bolt_direction(which_bolt, upright_points)
    return outer_swing(envelope, upright_points, which == "upper", which_hinge, bolt)


@value(
    "misalignment angle",
    formula="as entered, else 5 deg from square, the way that asks more of the joint",
    source=sources.COMMON_PRACTICE.saying("a cup set by eye stands within 5 deg of square"),
    each=OUTER_PIVOTS,
)
def which_joint_set(which_joint_swing: Swing, which_set: Rad | None, which_bolt: OuterPivotBolt, which: str) -> Rad:
    """How the {which} joint's housing is set, rad. An estimate until measured; a bolt fore and aft has the same angle however.

    A bolt that leans 0.2 rad outboard at its top asks more of a housing whose top leans inboard, which is plus.

    >>> from math import cos, sin
    >>> swing = Swing((0.0, 0.0, 1.0), {(50.0, 0.0): (0.0, sin(0.2), cos(0.2))})
    >>> round(float(which_joint_set(swing, None, "up and down", "upper")), 4)
    0.0873
    """
    if which_set is not None or which_bolt == "fore and aft":
        return which_set or 0.0
    worst = max((BY_EYE, -BY_EYE), key=lambda set_to: which_joint_swing.angles(set_to).worst)
    return Estimate(worst, measure=f"joint_angles.{which}_set")


@value("misalignment angle", formula=HOUSING, source=RIGID_BODIES, each=OUTER_PIVOTS)
def which_joint_angles(which_joint_swing: Swing, which_joint_set: Rad) -> Angles:
    """What the {which} outer joint needs in every position, rad.

    >>> which_joint_angles(Swing((0.0, 0.0, 1.0), {(90.0, 0.0): (0.0, 0.6, 0.8)}), 0.0).at[90.0, 0.0]  # atan(0.6 / 0.8)
    0.6435011087932844
    """
    return which_joint_swing.angles(which_joint_set)


@value(
    "misalignment angle",
    formula="how far bolt and rod are from square in every position; the rod is free to roll about itself",
    source=RIGID_BODIES,
    heavy=True,
)
def tie_rod_outer_angles(
    joint_angles_begun: bool, envelope: Sweep, upright_points: UprightPoints, tie_rod_outer_bolt: TieRodOuterBolt
) -> Angles:
    """What the tie rod's outer joint needs in every position, rad. Its bolt moves with the upright.

    Rod 500 long that rises 300 over a run of 400, bolt upright: the rod leans asin(300 / 500) out of square.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> upright = UprightPoints((0.0, -100.0, 300.0), (0.0, -100.0, 600.0), (0.0, 0.0, 400.0))
    >>> rod = ((-90.0, -100.0, 700.0), (-90.0, -500.0, 400.0))
    >>> pose = Pose(upright.lower, upright.upper, upright.wheel_centre, (0.0, 1.0, 0.0), *rod, 0.0, 400.0)
    >>> tie_rod_outer_angles(True, Sweep((Placed(0.0, 0.0, pose),)), upright, "up and down").at[0.0, 0.0]
    0.6435011087932844
    """
    return outer_angles(envelope, upright_points, bolt_direction(tie_rod_outer_bolt, upright_points))


@value(
    "misalignment angle",
    formula="along the rack: angle between rod and rack in every position; else how far bolt and rod are from square",
    source=RIGID_BODIES,
)
def tie_rod_inner_angles(
    joint_angles_begun: bool,
    steering_linkage: SteeringLinkage,
    envelope: Sweep,
    upright_points: UprightPoints,
    tie_rod_inner_bolt: TieRodInnerBolt | None,
) -> Angles:
    """What the tie rod's inner joint needs in every position, rad. Rack and relay rod slide without turning.

    One rod across has no inner joint: its other end is the other wheel's outer one.

    A rod that runs 300 back over 400 across makes atan(300 / 400) with the rack.

    >>> from rules.motion.points import Pose
    >>> from rules.motion.sweep import Placed
    >>> upright = UprightPoints((0.0, -100.0, 300.0), (0.0, -100.0, 600.0), (0.0, 0.0, 400.0))
    >>> rod = ((-390.0, -100.0, 400.0), (-90.0, -500.0, 400.0))
    >>> pose = Pose(upright.lower, upright.upper, upright.wheel_centre, (0.0, 1.0, 0.0), *rod, 0.0, 400.0)
    >>> sweep, rack = Sweep((Placed(0.0, 0.0, pose),)), SteeringLinkage("rack", rod[1], -800.0, 70.0)
    >>> tie_rod_inner_angles(True, rack, sweep, upright, "along the rack").at[0.0, 0.0]
    0.6435011087932844
    """
    if steering_linkage.how == "one rod across":
        raise DoesNotApply("one rod runs from wheel to wheel, so it has no inner joints")
    if tie_rod_inner_bolt is None:
        raise Waits("joint_angles.tie_rod_inner_bolt")
    return inner_angles(envelope, tie_rod_inner_bolt, bolt_direction(tie_rod_inner_bolt, upright_points))


@value(
    "misalignment angle",
    formula="largest angle of the sweep",
    source=RIGID_BODIES,
    each=(
        {"which": "upper_joint", "joint": "upper outer joint"},
        {"which": "lower_joint", "joint": "lower outer joint"},
        {"which": "tie_rod_outer", "joint": "tie rod's outer joint"},
        {"which": "tie_rod_inner", "joint": "tie rod's inner joint"},
    ),
)
def which_angle(which_angles: Angles) -> Rad:
    """The greatest misalignment angle of the {joint}, rad; it knows where.

    >>> float(which_angle(Angles({(-50.0, 0.0): 0.1, (50.0, 1.0): 0.3})))
    0.3
    """
    return which_angles.worst


@value("misalignment angle", formula=BEST, source=RIGID_BODIES, each=OUTER_PIVOTS, heavy=True)
def which_best_set(which_joint_swing: Swing, which_bolt: OuterPivotBolt) -> Rad:
    """The {which} housing's best clocking, rad, signed like its set; it knows the angle that is left.

    A bolt that leans atan(0.75) outboard at one end and stands upright at the other is best met half way.

    >>> swing = Swing((0.0, 0.0, 1.0), {(-90.0, 0.0): (0.0, 0.6, 0.8), (90.0, 0.0): (0.0, 0.0, 1.0)})
    >>> round(which_best_set(swing, "along the steering axis"), 4)
    -0.3218
    """
    if which_bolt == "fore and aft":
        raise DoesNotApply(NO_EFFECT)
    return which_joint_swing.best()


@value(
    "misalignment angle",
    formula="each joint's angles at droop, ride and bump, full right, straight and full left",
    source=RIGID_BODIES,
)
def joint_table(
    joint_angles_begun: bool,
    envelope: Sweep,
    upper_joint_angles: Angles | None,
    lower_joint_angles: Angles | None,
    tie_rod_outer_angles: Angles | None,
    tie_rod_inner_angles: Angles | None,
) -> JointTable:
    """What each joint needs at the nine corners, rad, the left wheel; joints not entered are left out.

    >>> from rules.motion.sweep import Blocked
    >>> envelope = Sweep((), (Blocked(-90.0, 0.0, 0.0), Blocked(0.0, 0.0, 0.0)))
    >>> joint_table(True, envelope, None, Angles({(0.0, 0.0): 0.25}), None, None)
    JointTable(corners=((-90.0, 0.0), (0.0, 0.0)), joints=(('lower joint', (None, 0.25)),))
    """
    places = corners(envelope)
    joints = {
        "upper joint": upper_joint_angles,
        "lower joint": lower_joint_angles,
        "outer tie-rod joint": tie_rod_outer_angles,
        "inner tie-rod joint": tie_rod_inner_angles,
    }
    found = {name: angles.at for name, angles in joints.items() if angles is not None}
    return JointTable(places, tuple((name, tuple(at.get(place) for place in places)) for name, at in found.items()))
