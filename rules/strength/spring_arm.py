"""The arm the spring acts on: what the shock pushes it with, and what that bends its two legs by. mm, N, N mm.

The arm turns freely on its hinge line, so that the shock alone holds it: with the wheel just standing it pushes with the standing
load over the spring's ratio. Whatever holds the arm up, spring, bump stop or strap, counts as standing where the shock does. Legs
run straight from their inner pivots to the outer joint, where they meet; a cross tube at the shock shares its push between them
by where it stands along that tube. Each leg is then a beam on three points. What the shock pushes across a leg in the arm's own
plane is not in it. Source: statics. All of it goes with the joint's force, so an arm is worked out once for many loads.
"""

from rules.graph.results import OutsideRange
from rules.measure.records import dataclass
from rules.measure.vectors import Vector, cross, dot, minus, plus, size, times, unit
from rules.strength.balance import LEAST_LEG_ANGLE
from rules.strength.corner_loads import SpringArm

LEAST_LEVER = 1.0
"""mm between the shock's line and the arm's hinge line. Less is a slip of the tape: no spring would hold the car up."""


@dataclass(frozen=True, slots=True)
class BentLeg:
    """One leg from its inner pivot to the outer joint: length, mm; pull, N, plus in tension, on both sides of the shock; the
    greatest bending moment, N mm, at the shock, plus."""

    length: float
    outer_pull: float
    inner_pull: float
    moment: float


@dataclass(frozen=True, slots=True)
class Leg:
    """What of a leg is the same under every load. pulls: N of pull for the joint's force; along: N of pull for 1 N of shock.

    share: of the shock's push.
    """

    length: float
    pulls: Vector
    along: float
    share: float


@dataclass(frozen=True, slots=True)
class ArmFrame:
    """An arm and its shock. pushes: N of shock for the joint's force; normal: square to the arm; out: where the shock stands,
    nought at the hinge, 1 at the joint; square: part of the shock's push along the normal."""

    pushes: Vector
    normal: Vector
    out: float
    square: float
    legs: tuple[Leg, Leg]

    def push(self, joint: Vector) -> float:
        """What spring and shock push the arm away from the frame with, N; minus where they hold it back, as a strap does.

        joint: the arm's force on the upright, N. Hinge along the car, joint 400 outboard, shock straight up from half way:

        >>> arm = SpringArm((200.0, 0.0, 0.0), (-200.0, 0.0, 0.0), (0.0, 200.0, 0.0), (0.0, 200.0, 500.0))
        >>> arm_frame(arm, (0.0, 400.0, 0.0)).push((0.0, 0.0, -2000.0))
        4000.0
        """
        return dot(joint, self.pushes)

    def bent(self, joint: Vector) -> tuple[BentLeg, BentLeg]:
        """The front and the rear leg under the joint's force on the upright, N, and the push that holds it.

        The arm above: each leg takes 1000 N up at either end and 2000 N down at the shock, half way out:

        >>> arm = SpringArm((200.0, 0.0, 0.0), (-200.0, 0.0, 0.0), (0.0, 200.0, 0.0), (0.0, 200.0, 500.0))
        >>> [leg.moment / leg.length for leg in arm_frame(arm, (0.0, 400.0, 0.0)).bent((0.0, 0.0, -2000.0))]
        [500.0, 500.0]
        """
        push, across = dot(joint, self.pushes), dot(joint, self.normal)
        moment = max(abs(across) * (1 - self.out), abs(push * self.square - across) * self.out)
        front, rear = self.legs
        return _bent(front, dot(joint, front.pulls), push, moment), _bent(rear, dot(joint, rear.pulls), push, moment)


def _bent(leg: Leg, pull: float, push: float, moment: float) -> BentLeg:
    return BentLeg(leg.length, pull, pull + push * leg.along, abs(leg.share) * moment * leg.length)


def arm_frame(arm: SpringArm, outer: Vector) -> ArmFrame:
    """An arm made ready to be loaded at its outer joint, mm.

    Raises OutsideRange where the shock points at the hinge or does not stand between hinge and joint, or the legs lie along one
    line.
    """
    hinge, way = unit(minus(arm.front, arm.rear)), unit(minus(arm.on_arm, arm.on_frame))
    reached, from_outer = minus(arm.on_arm, arm.front), (minus(arm.front, outer), minus(arm.rear, outer))
    lever = dot(hinge, cross(reached, way))
    if abs(lever) < LEAST_LEVER:
        raise OutsideRange(
            "the shock points straight at the hinge of its arm, so it holds nothing up",
            change="Put right where the shock stands: shock on the arm, from centre, or shock on the frame, from centre, first.",
        )
    plane, lengths = cross(*from_outer), (size(from_outer[0]), size(from_outer[1]))
    if size(plane) <= LEAST_LEG_ANGLE * lengths[0] * lengths[1]:
        raise OutsideRange("the arm's two legs lie along one line, so neither can be told from the other")
    normal = unit(plane)
    outward = cross(hinge, normal)  # square to the hinge, in the arm's plane
    out = dot(reached, outward) / dot(minus(outer, arm.front), outward)
    if not 0 <= out <= 1:
        raise OutsideRange(
            "the shock does not stand between its arm's hinge and outer joint, and no simple formula holds",
            change="Put right shock on the arm, from centre.",
        )
    ends = [plus(inner, times(out, minus(outer, inner))) for inner in (arm.front, arm.rear)]
    apart = minus(ends[1], ends[0])
    tube = dot(apart, apart)
    rear = dot(minus(arm.on_arm, ends[0]), apart) / tube if tube > LEAST_LEVER else 0.5
    # The force in the arm's plane as two along its legs: see `leg_forces` in rules/strength/balance.py.
    area = dot(plane, plane)
    pulls = times(lengths[0] / area, cross(from_outer[1], plane)), times(lengths[1] / area, cross(plane, from_outer[0]))
    along = [-dot(way, leg) / length for leg, length in zip(from_outer, lengths, strict=True)]
    return ArmFrame(
        times(1 / lever, cross(hinge, minus(outer, arm.front))),
        normal,
        out,
        dot(way, normal),
        (Leg(lengths[0], pulls[0], along[0] * (1 - rear), 1 - rear), Leg(lengths[1], pulls[1], along[1] * rear, rear)),
    )
