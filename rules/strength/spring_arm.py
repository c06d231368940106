"""The arm the spring acts on: what the shock pushes it with, and what that bends its two legs by. mm, N, N mm."""

from collections.abc import Iterator
from dataclasses import dataclass

from rules.graph.results import OutsideRange
from rules.measure.vectors import Vector, cross, dot, minus, plus, size, times, unit
from rules.strength.balance import leg_forces
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


def shock_push(arm: SpringArm, outer: Vector, joint: Vector) -> float:
    """What spring and shock push the arm away from the frame with, N; minus where they hold it back, as a strap does.

    outer: the arm's outer joint, mm. joint: the arm's force on the upright there, N. The arm turns freely on its hinge line, so
    that the shock alone holds it: with the wheel just standing it is the standing load over the spring's ratio. Whatever holds
    the arm up, spring, bump stop or strap, counts as standing where the shock does. Source: statics, moments about the hinge.
    Raises OutsideRange where the shock points at the hinge.

    Hinge along the car, joint 400 outboard, shock straight up from half way: 2000 N on the wheel are 4000 N in the shock.

    >>> arm = SpringArm((200.0, 0.0, 0.0), (-200.0, 0.0, 0.0), (0.0, 200.0, 0.0), (0.0, 200.0, 500.0))
    >>> shock_push(arm, (0.0, 400.0, 0.0), (0.0, 0.0, -2000.0))
    4000.0
    """
    hinge = unit(minus(arm.front, arm.rear))
    lever = dot(hinge, cross(minus(arm.on_arm, arm.front), unit(minus(arm.on_arm, arm.on_frame))))
    if abs(lever) < LEAST_LEVER:
        raise OutsideRange(
            "the shock points straight at the hinge of its arm, so it holds nothing up",
            change="Put right where the shock stands: shock on the arm, from centre, or shock on the frame, from centre, first.",
        )
    return dot(hinge, cross(minus(outer, arm.front), joint)) / lever


def bent_legs(arm: SpringArm, outer: Vector, joint: Vector) -> Iterator[BentLeg]:
    """The front and the rear leg under the joint's force on the upright, N, and the shock's push that holds it.

    Legs run straight from their inner pivots to the outer joint, where they meet; a cross tube at the shock shares its push
    between them by where it stands along that tube. Each leg is then a beam on three points. What the shock pushes along the
    hinge line is not in it. Source: statics. Raises OutsideRange where the shock does not stand between hinge and joint.

    The arm above as a frame 400 by 400: each leg takes 1000 N up at its inner pivot, 2000 N down at the shock, half way out:

    >>> arm = SpringArm((200.0, 0.0, 0.0), (-200.0, 0.0, 0.0), (0.0, 200.0, 0.0), (0.0, 200.0, 500.0))
    >>> [round(leg.moment / leg.length, 6) for leg in bent_legs(arm, (0.0, 400.0, 0.0), (0.0, 0.0, -2000.0))]
    [500.0, 500.0]
    """
    push = times(shock_push(arm, outer, joint), unit(minus(arm.on_arm, arm.on_frame)))
    normal = unit(cross(minus(arm.front, outer), minus(arm.rear, outer)))
    hinge = unit(minus(arm.front, arm.rear))
    reach = cross(hinge, normal)  # square to the hinge, in the arm's plane
    out = dot(minus(arm.on_arm, arm.front), reach) / dot(minus(outer, arm.front), reach)
    if not 0 <= out <= 1:
        raise OutsideRange(
            "the shock does not stand between its arm's hinge and outer joint, and no simple formula holds",
            change="Put right shock on the arm, from centre.",
        )
    ends = [plus(inner, times(out, minus(outer, inner))) for inner in (arm.front, arm.rear)]
    apart = minus(ends[1], ends[0])
    across = dot(apart, apart)
    rear_share = dot(minus(arm.on_arm, ends[0]), apart) / across if across > LEAST_LEVER else 0.5
    joint_square, push_square = -dot(joint, normal), dot(push, normal)
    beyond, behind = abs(joint_square) * (1 - out), abs(joint_square + push_square) * out
    in_plane = plus(joint, times(joint_square, normal))
    pulls = leg_forces(in_plane, outer, arm.front, arm.rear)
    for inner, pull, share in zip((arm.front, arm.rear), pulls, (1 - rear_share, rear_share), strict=True):
        leg = minus(outer, inner)
        length = size(leg)
        along = dot(push, leg) / length * share
        yield BentLeg(length, pull, pull + along, abs(share) * max(beyond, behind) * length)
