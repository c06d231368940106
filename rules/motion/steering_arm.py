"""Which way a steering arm should point: both wheels through the lock in closed form, and the best inward angle by search.

Only the tie-rod end moves from try to try, so the inner wheel's turns stay the same and nothing but the outer wheel's
turn is worked out again.
"""

from collections.abc import Callable, Iterable
from math import atan2, copysign, cos, hypot, inf, radians, sin, sqrt

from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector, cross, dot, minus, plus, size, times, unit
from rules.motion.circle import PivotCircle
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import CannotReach, UprightPoints, mirrored
from rules.motion.search import golden
from rules.motion.turned import steer_at, toed
from rules.motion.turning import ideal_outer

WIDEST = radians(54)
"""How far the arm is swung either way from straight fore and aft while the best is looked for."""
LOOKS = 19
ANGLE_CLOSE = 4e-5
"""rad; finer than anyone sets an arm."""


class Arm(NamedTuple):
    """A steering arm seen from above, at the height of its tie-rod end.

    foot: where the steering axis passes that height. length: mm. inward: rad from straight fore and aft, its end inboard
    of the axis positive. side: 1 ahead of the axis, -1 behind.
    """

    foot: Vector
    length: float
    inward: float
    side: int

    def end(self, inward: float) -> Vector:
        """The tie-rod end with the arm swung to another angle, mm.

        >>> Arm((0.0, 0.0, 300.0), 150.0, 0.0, -1).end(0.0)
        (-150.0, 0.0, 300.0)
        """
        x, y, z = self.foot
        return (x + self.side * self.length * cos(inward), y - self.length * sin(inward), z)


class BestArm(NamedTuple):
    """The arm that comes nearest to the ideal. error: root mean square, largest: the largest, rad, over the lock."""

    end: Vector
    inward: float
    error: float
    largest: float

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return "the best of every arm angle within 54 deg of straight fore and aft"


def arm_of(upright: UprightPoints) -> Arm:
    """The steering arm as it is built.

    >>> from math import degrees
    >>> arm = arm_of(trapezium().upright)
    >>> round(arm.length, 6), round(degrees(arm.inward), 4), arm.side
    (150.0, 16.2602, -1)
    """
    assert upright.tie_rod_end is not None
    foot = upright.on_axis(upright.tie_rod_end[2])
    ahead, outboard, _ = minus(upright.tie_rod_end, foot)
    return Arm(foot, hypot(ahead, outboard), atan2(-outboard, abs(ahead)), int(copysign(1, ahead)))


def axis_of(upright: UprightPoints) -> Vector:
    """Direction of the steering axis at ride height, from the lower to the upper pivot, of length 1.

    >>> axis_of(trapezium().upright)
    (0.0, 0.0, 1.0)
    """
    return unit(minus(upright.upper, upright.lower))


def aim(arm: Arm, centre_line: float) -> float:
    """Where the line through axis and tie-rod end meets the car's centre line, mm ahead of the wheel centre.

    centre_line: mm from the tyre's centre plane, negative. Raises ZeroDivisionError for an arm straight fore and aft.

    Arm 144 behind and 42 inboard: 700 x 144 / 42 = 2400 behind.

    >>> round(aim(arm_of(trapezium().upright), -700.0), 6)
    -2400.0
    """
    ahead, outboard, _ = minus(arm.end(arm.inward), arm.foot)
    return arm.foot[0] + (centre_line - arm.foot[1]) * ahead / outboard


def outer_turn(upright: UprightPoints, linkage: SteeringLinkage, end: Vector) -> Callable[[float], float]:
    """The outer wheel's turn about its axis by the inner one's, rad, both into the bend, with the tie-rod end put here.

    Raises CannotReach where the links lock before.

    >>> from math import degrees
    >>> follow = outer_turn(trapezium().upright, trapezium().linkage, (-144.0, -42.0, 300.0))
    >>> round(degrees(follow(trapezium().at(0.0, 1.0).turn)) + degrees(trapezium().at(0.0, -1.0).turn), 9)
    0.0
    """
    axis = axis_of(upright)
    foot = plus(upright.lower, times(dot(minus(end, upright.lower), axis), axis))
    circle = PivotCircle(foot, minus(end, foot), cross(axis, minus(end, foot)))
    as_set = toed(upright, end, linkage.toe)
    inner_end = _other_inner_end(linkage, as_set)
    straight = inner_end(as_set)
    rod, side = size(minus(as_set, straight)), circle.side_of(straight)
    return lambda turn: -circle.angle(inner_end(circle.at(turn)), rod, side)


def _other_inner_end(linkage: SteeringLinkage, straight: Vector) -> Callable[[Vector], Vector]:
    """From one wheel's tie-rod end to the inner end of the other's tie rod, given as the left corner's."""
    if linkage.how == "one rod across":
        return lambda end: mirrored(end, linkage.centre_line)
    assert linkage.inner is not None
    own, middle = linkage.inner_for(straight), linkage.inner[1]
    return lambda end: mirrored(own(end), middle)


def errors(
    upright: UprightPoints, linkage: SteeringLinkage, end: Vector, turns: Iterable[float], ratio: float
) -> list[float]:
    """The outer wheel's angle less its ideal one, rad, at each turn of the inner wheel about its axis.

    ratio: distance between the steering axes over the wheelbase. Raises CannotReach where the links lock before.

    >>> errors(trapezium().upright, trapezium().linkage, (-144.0, -42.0, 300.0), [0.0], 0.5)
    [0.0]
    """
    axis = axis_of(upright)
    follow = outer_turn(upright, linkage, end)
    spin = upright.spin
    return [-steer_at(-follow(turn), axis, spin) - ideal_outer(steer_at(turn, axis, spin), ratio) for turn in turns]


def root_mean_square(numbers: list[float]) -> float:
    """The root of the mean of the squares.

    >>> root_mean_square([1.0, 7.0])
    5.0
    """
    return sqrt(sum(number * number for number in numbers) / len(numbers))


def best_arm(upright: UprightPoints, linkage: SteeringLinkage, turns: list[float], ratio: float) -> BestArm:
    """The arm of the same length, height and side whose error over the lock is least, the tie rod's length following.

    turns: of the inner wheel about its axis, rad, evenly over the lock. Scanned, then closed in on by golden section.
    Raises CannotReach where no arm of this length follows through all of them.

    >>> from math import degrees
    >>> best = best_arm(trapezium().upright, trapezium().linkage, [radians(turn) for turn in range(1, 36)], 1.4 / 2.6)
    >>> round(degrees(best.inward), 2), round(degrees(best.error), 4)
    (21.98, 0.2018)
    """
    arm = arm_of(upright)

    def error(inward: float) -> float:
        try:
            return root_mean_square(errors(upright, linkage, arm.end(inward), turns, ratio))
        except CannotReach:
            return inf

    stride = 2 * WIDEST / (LOOKS - 1)
    middle = min((look * stride - WIDEST for look in range(LOOKS)), key=error)
    inward = golden(error, middle - stride, middle + stride, ANGLE_CLOSE)
    found = errors(upright, linkage, arm.end(inward), turns, ratio)
    return BestArm(arm.end(inward), inward, root_mean_square(found), max(found, key=abs))
