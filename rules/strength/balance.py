"""The balance of the upright in three dimensions: what each joint must push back with.

Six unknowns and six equations: two along the arm without the spring (it can only push in its own plane), three at the
pivot of the arm with the spring, and one along the tie rod. Written out, the six equations fall apart into three short
steps, so that no matrix is needed: the moment about the steering axis gives the tie rod; the moment about the pivot of
the arm with the spring gives the other pivot; the sum of the forces gives the rest.
"""

from math import atan, radians, sin, tan

from rules.graph.results import OutsideRange
from rules.measure.records import dataclass
from rules.measure.vectors import NOUGHT, Vector, cross, dot, minus, plus, size, times

LEAST_SPACING = 1.0
"""mm between the two pivots."""

LEAST_TIE_ROD_LEVER = 1.0
"""mm between the tie rod's line and the steering axis. Less is a slip of the tape: nothing would steer the wheel."""

LEAST_ARM_ANGLE = sin(radians(1.0))
"""Sine of the angle between the steering axis and the plane of the arm without the spring."""

LEAST_LEG_ANGLE = sin(radians(1.0))
"""Sine of the angle between the two legs of an arm."""

MOST_OUT_OF_PLANE = sin(radians(1.0))
"""Part of a force that may point out of the arm's plane: slopes are read off to a degree."""


@dataclass(frozen=True, slots=True)
class Linkage:
    """How the upright hangs: points in mm, directions of any length.

    carrying: outer pivot of the arm the spring acts on. guiding: outer pivot of the other arm, and guiding_normal the
    direction square to that arm's plane. tie_rod: its outer end, and tie_rod_line the direction it lies in.
    """

    carrying: Vector
    guiding: Vector
    guiding_normal: Vector
    tie_rod: Vector
    tie_rod_line: Vector


@dataclass(frozen=True, slots=True)
class Reactions:
    """The joints' forces on the upright, N."""

    carrying: Vector
    guiding: Vector
    tie_rod: Vector


def arm_normal(slope: float, hinge_slope: float) -> Vector:
    """Direction square to an arm's plane.

    slope: rad, seen from the front, plus when the outer end is higher. hinge_slope: rad, the line through the inner
    pivots seen from the side, plus when its front end is higher. Both under a quarter turn.

    >>> arm_normal(0.0, 0.0)
    (0.0, 0.0, 1.0)
    """
    return (0.0 - tan(hinge_slope), 0.0 - tan(slope), 1.0)


def plane_slopes(front: Vector, rear: Vector, outer: Vector) -> tuple[float, float]:
    """Slopes of an arm's plane from its three pivots, mm: (across the car, along the car), rad, as `arm_normal` takes them.

    Raises OutsideRange where the three lie in a line or in an upright plane.

    >>> plane_slopes((100.0, -300.0, 500.0), (-100.0, -300.0, 500.0), (0.0, 0.0, 500.0))
    (0.0, 0.0)
    """
    normal = cross(minus(rear, front), minus(outer, front))
    if abs(normal[2]) < 1e-6 * size(normal) or not size(normal):
        raise OutsideRange("the arm's three pivots do not lie in a plane that can guide the upright")
    return atan(-normal[1] / normal[2]), atan(-normal[0] / normal[2])


def rod_line(slope: float, sweep: float) -> Vector:
    """Direction of a tie rod, from the inner to the outer end.

    slope: rad, seen from the front, plus when the outer end is higher. sweep: rad, seen from above, plus when the outer
    end is ahead of the inner. Both under a quarter turn.

    >>> rod_line(0.0, 0.0)
    (0.0, 1.0, 0.0)
    """
    return (tan(sweep), 1.0, tan(slope))


def balance(linkage: Linkage, force: Vector, moment: Vector) -> Reactions:
    """The joints' forces on the upright under a force, N, and its moment about the origin, N mm.

    The brake's torque is inside the upright when caliper and rotor sit on it, so the braking force acts at the ground;
    for a force that a freely turning wheel takes, or an inboard brake, it acts at the wheel centre. No friction in the
    joints; the upright's and the wheel's own weight count as nothing; any geometry but those refused.
    Raises OutsideRange where the joints cannot hold the upright.

    Source: statics, six equations of a rigid body. In a plane (all joints at x = 0, upper pivot 290 above the lower,
    load 4000 N inboard and 4000 N up at the ground) the upper pivot takes (80 x 4000 - 300 x 4000) / 290 N:

    >>> flat = Linkage((0, 700, 300), (0, 660, 590), (0, 0, 1), (-120, 690, 370), (0, 1, 0))
    >>> turned = balance(flat, (0, -4000, 4000), (780 * 4000, 0, 0))
    >>> [round(part, 4) for part in turned.guiding]
    [0.0, -3034.4828, 0.0]
    """
    return joints(linkage).under(force, moment)


@dataclass(frozen=True, slots=True)
class Joints:
    """What of a linkage is the same under every load, so that many loads are balanced without working it out again."""

    linkage: Linkage
    axis: Vector
    """From the carrying to the guiding pivot, mm."""
    normal: Vector
    """Square to the guiding arm's plane, over its part along the axis."""
    line: Vector
    """Along the tie rod, of length 1."""
    rod_turns: Vector
    """Moment of 1 N in the rod about the carrying pivot, mm."""

    def under(self, force: Vector, moment: Vector) -> Reactions:
        """The joints' forces under a force and its moment about the origin; see `balance`."""
        axis, carrying = self.axis, self.linkage.carrying
        load_turns = minus(moment, cross(carrying, force))
        rod = -dot(load_turns, axis)
        tie_rod = times(rod / self.rod_lever, self.line)
        # Square to the axis by now: what the guiding pivot must turn back.
        left = times(-1.0, plus(load_turns, times(rod / self.rod_lever, self.rod_turns)))
        across = times(1 / dot(axis, axis), cross(left, axis))
        # A push along the axis turns nothing; as much of it as keeps the force in the arm's plane.
        guiding = plus(across, times(-dot(self.normal, across), axis))
        return Reactions(times(-1.0, plus(force, guiding, tie_rod)), guiding, tie_rod)

    @property
    def rod_lever(self) -> float:
        """Moment of 1 N in the rod about the axis, times the axis' length."""
        return dot(self.rod_turns, self.axis)


def joints(linkage: Linkage) -> Joints:
    """A linkage made ready to be balanced. Raises OutsideRange where the joints cannot hold the upright."""
    axis = minus(linkage.guiding, linkage.carrying)
    spacing = size(axis)
    if spacing < LEAST_SPACING:
        raise OutsideRange("the two pivots are in one place")
    normal = times(1 / size(linkage.guiding_normal), linkage.guiding_normal)
    if abs(dot(normal, axis)) < LEAST_ARM_ANGLE * spacing:
        raise OutsideRange("the arm without the spring lies along the steering axis, so it cannot hold the upright")
    line = times(1 / size(linkage.tie_rod_line), linkage.tie_rod_line)
    rod_turns = cross(minus(linkage.tie_rod, linkage.carrying), line)
    if abs(dot(rod_turns, axis)) < LEAST_TIE_ROD_LEVER * spacing:
        raise OutsideRange("the tie rod points straight at the steering axis, so nothing holds the wheel from turning")
    return Joints(linkage, axis, times(1 / dot(normal, axis), normal), line, rod_turns)


def leg_forces(force: Vector, outer: Vector, front: Vector, rear: Vector) -> tuple[float, float]:
    """Pull in the front and in the rear leg of an arm without the spring, N: plus in tension, minus in compression.

    force: the arm's force on the upright, N. outer, front, rear: the arm's outer and inner pivots, mm. Each leg runs
    straight from the outer to its inner pivot and carries nothing but pull or push: a spring, a bar or a bend in the leg
    is not in it. Source: statics, two forces along two lines.
    Raises OutsideRange where the legs lie within a degree of one line, or the force more than a degree off their plane.

    Legs 3-4-5 to each side, 800 N inboard: each takes half of it, 400 x 5 / 4:

    >>> leg_forces((0.0, -800.0, 0.0), (0.0, 0.0, 500.0), (300.0, -400.0, 500.0), (-300.0, -400.0, 500.0))
    (500.0, 500.0)
    """
    to_front, to_rear = minus(front, outer), minus(rear, outer)
    square = cross(to_front, to_rear)
    if size(square) <= LEAST_LEG_ANGLE * size(to_front) * size(to_rear):
        raise OutsideRange("the arm's two legs lie along one line, so neither can be told from the other")
    if abs(dot(force, square)) > MOST_OUT_OF_PLANE * size(force) * size(square):
        raise OutsideRange("the arm's slopes as entered are not those of its inner pivots: measure both again")
    area = dot(square, square)
    along_front, along_rear = dot(cross(force, to_rear), square) / area, dot(cross(to_front, force), square) / area
    return along_front * size(to_front), along_rear * size(to_rear)


def moment_of(pushes: tuple[tuple[Vector, Vector], ...], about: Vector = NOUGHT) -> Vector:
    """The moment of forces, N mm, about a point; each force, N, with the point it acts at, mm.

    >>> moment_of((((0.0, 0.0, 10.0), (0.0, 5.0, 0.0)),))
    (50.0, 0.0, 0.0)
    """
    return plus(NOUGHT, *(cross(minus(point, about), force) for force, point in pushes))
