"""Whether tyre or rim touch arms, joint housings or tie rod anywhere in travel and lock. Negative: they are in one another.

The solids are those of the corner, and so is the room between them. A front end that is not entered whole has no sweep, and
nothing is guessed at for it.
"""

from rules.corner.part import Part
from rules.corner.room import Moves, least_of
from rules.graph.declare import value
from rules.motion.sweep import Sweep, Worst
from rules.tables import sources
from rules.values.wheel_end.gaps import CheckedGap

SOLIDS = sources.GEOMETRY.saying("simple solid shapes in every position of the sweep, to 0.05 mm; rules/solids")
ARMS = ({"which": "upper"}, {"which": "lower"})


def _least(turning: Part, others: tuple[Part, ...], moves: Moves) -> Worst:
    """The smallest gap of what turns to any of the others, and where; one that is the same everywhere is at ride height."""
    found = [least for other in others if (least := least_of(turning, other, moves))]
    least = min(found, key=lambda least: least.gap)
    return Worst(least.gap, least.travel, least.lock)


@value("rub", formula="least distance of the arm's tubes from the tyre", source=SOLIDS, each=ARMS, heavy=True)
def tyre_which_arm_gap(
    envelope: Sweep, tyre_part: Part, which_arm_part: Part, corner_moves: Moves, which: str
) -> CheckedGap:
    """Between the largest tyre and the {which} arm's tubes, mm; it knows where.

    Tyre's side 150 inboard, arm's end 200 inboard, tube 38: 50 - 19.

    >>> from rules.corner.part import SPINDLE, spindle, turning
    >>> from rules.corner.placing import Ride
    >>> from rules.motion.points import UprightPoints
    >>> from rules.solids.shapes import Rod, ring
    >>> tyre = turning("tyre", 400.0, ring(spindle(400.0), SPINDLE, 208.0, 444.5, -150.0, 150.0), kind="tyre")
    >>> arm = Part("upper arm", "upper arm", (Rod((0.0, -500.0, 640.0), (0.0, -200.0, 640.0), 19.0),))
    >>> still = Moves(Ride(UprightPoints((0.0, -80.0, 300.0), (0.0, -200.0, 640.0), (0.0, 0.0, 400.0))), Sweep(()))
    >>> round(tyre_which_arm_gap(Sweep(()), tyre, arm, still, "upper"), 2)
    31.0
    """
    return _least(tyre_part, (which_arm_part,), corner_moves)


@value(
    "rub",
    formula="least distance of the joint's housing, which turns with the wheel, and of the arm's tubes from the rim",
    source=SOLIDS,
    each=ARMS,
    heavy=True,
)
def rim_which_joint_gap(
    envelope: Sweep,
    rim_part: Part,
    which_joint_housing_part: Part,
    which_arm_part: Part,
    corner_moves: Moves,
    which: str,
) -> CheckedGap:
    """Between the rim and the {which} joint's housing or the {which} arm's tubes, mm; it knows where.

    Pivot 140 above the wheel centre, housing 22, tube 38, barrel at 180: 180 - 140 - 22.

    >>> from rules.corner.part import SPINDLE, spindle, turning
    >>> from rules.corner.placing import Ride
    >>> from rules.motion.points import UprightPoints
    >>> from rules.solids.shapes import Ball, Rod, ring
    >>> rim = turning("rim", 400.0, ring(spindle(400.0), SPINDLE, 180.0, 208.0, -120.0, 120.0))
    >>> arm = Part("upper arm", "upper arm", (Rod((0.0, -500.0, 540.0), (0.0, -80.0, 540.0), 19.0),))
    >>> housing = Part("joint", "upper arm", (Ball((0.0, -80.0, 540.0), 22.0),), "housing", held_by="upright")
    >>> still = Moves(Ride(UprightPoints((0.0, -80.0, 300.0), (0.0, -80.0, 540.0), (0.0, 0.0, 400.0))), Sweep(()))
    >>> round(rim_which_joint_gap(Sweep(()), rim, housing, arm, still, "upper"), 2)
    18.0
    """
    return _least(rim_part, (which_joint_housing_part, which_arm_part), corner_moves)


@value(
    "rub",
    formula="least distance of the tie rod from the {ring}",
    source=SOLIDS,
    each=({"ring": "tyre", "turning": "largest tyre"}, {"ring": "rim", "turning": "rim"}),
    heavy=True,
)
def ring_tie_rod_gap(envelope: Sweep, tie_rod_part: Part, ring_part: Part, corner_moves: Moves) -> CheckedGap:
    """Between the {turning} and the tie rod, mm; it knows where. Joint and steering arm are not in it.

    Rod's end 200 inboard of the wheel's middle, half as thick 12.5, tyre's side 150: 50 - 12.5.

    >>> from rules.corner.part import SPINDLE, spindle, turning
    >>> from rules.corner.placing import Ride
    >>> from rules.motion.points import UprightPoints
    >>> from rules.solids.shapes import Rod, ring
    >>> tyre = turning("tyre", 400.0, ring(spindle(400.0), SPINDLE, 208.0, 444.5, -150.0, 150.0), kind="tyre")
    >>> rod = Part("tie rod", "tie rod", (Rod((-300.0, -600.0, 400.0), (-300.0, -200.0, 400.0), 12.5),))
    >>> still = Moves(Ride(UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0))), Sweep(()))
    >>> round(ring_tie_rod_gap(Sweep(()), rod, tyre, still), 2)
    37.5
    """
    return _least(ring_part, (tie_rod_part,), corner_moves)
