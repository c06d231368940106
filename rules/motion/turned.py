"""A wheel turned about its steering axis at ride height, by itself: where its spin then points, and back from there."""

from math import atan2, cos, sin

from rules.measure.vectors import Vector, cross, dot, minus, plus, times, unit
from rules.motion.circle import nearest_turn
from rules.motion.points import OUTBOARD, UprightPoints


def rotated(part: Vector, turn: float, axis: Vector) -> Vector:
    """A direction or a way after a turn about an axis: Rodrigues' rotation. turn: rad; axis: of length 1.

    >>> [round(each, 9) for each in rotated((1.0, 0.0, 5.0), 0.5, (0.0, 0.0, 1.0))]
    [0.877582562, 0.479425539, 5.0]
    """
    c, s = cos(turn), sin(turn)
    return plus(times(c, part), times(s, cross(axis, part)), times((1 - c) * dot(axis, part), axis))


def spin_at(turn: float, axis: Vector, spin: Vector = OUTBOARD) -> Vector:
    """Direction of the wheel's spin, outboard, after a turn about the axis.

    turn: rad from straight ahead, to the left positive. axis: of length 1, upward. spin: straight ahead, at its camber.

    >>> spin_at(0.0, (0.0, 0.0, 1.0))
    (0.0, 1.0, 0.0)
    """
    return rotated(spin, turn, axis)


def steer_at(turn: float, axis: Vector, spin: Vector = OUTBOARD) -> float:
    """The wheel's angle seen from above, rad, after a turn about the axis; both to the left positive. spin: see `spin_at`.

    Axis leaning 10 deg inboard, turned 20 deg:

    >>> from math import degrees, radians
    >>> round(degrees(steer_at(radians(20), (0.0, -sin(radians(10)), cos(radians(10))))), 5)
    19.68459
    """
    x, y, _ = spin_at(turn, axis, spin)
    return atan2(-x, y)


def turn_at(steer: float, axis: Vector, spin: Vector = OUTBOARD) -> float:
    """The turn about the axis at which the wheel's angle seen from above is `steer`, rad; both to the left positive.

    The turned spin has nothing along the wheel's heading h = (cos steer, sin steer, 0): a sum a cos(turn) + b sin(turn) is
    what the spin has of h along the axis; the answer nearest to steer. spin: see `spin_at`.

    >>> from math import degrees, radians
    >>> round(degrees(turn_at(radians(19.684588), (0.0, -sin(radians(10)), cos(radians(10))))), 5)
    20.0
    """
    heading = (cos(steer), sin(steer), 0.0)
    along = dot(axis, spin)
    a, b = dot(heading, minus(spin, times(along, axis))), dot(heading, cross(axis, spin))
    return nearest_turn(a, b, -dot(heading, axis) * along, near=steer)


def toed(upright: UprightPoints, end: Vector, toe: float) -> Vector:
    """Where a tie-rod end given with the wheel straight ahead is once the toe is set, mm. toe: rad of one wheel, in positive.

    Axis straight up, end 150 behind it; toed in, the wheel's front comes inboard and the arm's end goes outboard:

    >>> [round(part, 3) for part in toed(straight_rack().upright, (-150.0, 0.0, 300.0), 0.01)]
    [-149.993, 1.5, 300.0]
    """
    if not toe:
        return end
    axis = unit(minus(upright.upper, upright.lower))
    return plus(upright.lower, rotated(minus(end, upright.lower), turn_at(-toe, axis, upright.spin), axis))
