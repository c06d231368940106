"""A point on a hinge, held at a fixed distance from another: the one problem every link of the front end comes down to.

The distance from a point to a place on a circle is a sum A cos(a) + B sin(a); setting it to a length has two answers in
closed form, one on either side. Which side a link is built on never changes without the link passing through a dead
point, where it locks; so the side is taken once, at ride height, and kept.
"""

from math import acos, atan2, cos, hypot, remainder, sin, tau

from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector, cross, dot, minus, plus, times, unit
from rules.motion.points import CannotReach


class PivotCircle(NamedTuple):
    """What a point on a hinge can reach: at angle a it is at centre + cos(a) u + sin(a) v; u and v square, of one length."""

    centre: Vector
    u: Vector
    v: Vector

    def at(self, angle: float) -> Vector:
        """The point at an angle, rad.

        >>> PivotCircle((0.0, 0.0, 5.0), (2.0, 0.0, 0.0), (0.0, 2.0, 0.0)).at(0.0)
        (2.0, 0.0, 5.0)
        """
        c, s = cos(angle), sin(angle)
        (cx, cy, cz), (ux, uy, uz), (vx, vy, vz) = self.centre, self.u, self.v
        return (cx + c * ux + s * vx, cy + c * uy + s * vy, cz + c * uz + s * vz)

    def _sum(self, point: Vector) -> tuple[float, float, float]:
        """Middle angle of the two answers, size of the swing, and what is constant, of half the squared distance."""
        to_centre = minus(self.centre, point)
        along, across = dot(self.u, to_centre), dot(self.v, to_centre)
        return atan2(across, along), hypot(along, across), (dot(self.u, self.u) + dot(to_centre, to_centre)) / 2

    def side_of(self, point: Vector) -> int:
        """Which of the two answers the angle 0 is, for a link from this point.

        >>> PivotCircle((0.0, 0.0, 0.0), (2.0, 0.0, 0.0), (0.0, 2.0, 0.0)).side_of((0.0, 3.0, 0.0))
        1
        """
        middle, _, _ = self._sum(point)
        return -1 if middle > 0 else 1

    def angle(self, point: Vector, distance: float, side: int) -> float:
        """The angle at which the place on the circle is `distance` from the point, rad in -pi to pi.

        Raises CannotReach where no place on the circle is.

        >>> circle = PivotCircle((0.0, 0.0, 0.0), (2.0, 0.0, 0.0), (0.0, 2.0, 0.0))
        >>> abs(circle.angle((0.0, 3.0, 0.0), 13**0.5, 1)) < 1e-12
        True
        """
        middle, swing, constant = self._sum(point)
        wanted = distance * distance / 2 - constant
        if not swing or abs(wanted) > swing:
            raise CannotReach
        return remainder(middle + side * acos(wanted / swing), tau)


def hinged(front: Vector, rear: Vector, point: Vector) -> PivotCircle:
    """The circle of a point on a hinge, angle 0 where it is now, growing as the point rises.

    >>> hinged((100.0, 0.0, 0.0), (-100.0, 0.0, 0.0), (0.0, 300.0, 0.0)).v[2] > 0
    True
    """
    line = unit(minus(front, rear))
    centre = plus(rear, times(dot(minus(point, rear), line), line))
    u = minus(point, centre)
    v = cross(line, u)
    return PivotCircle(centre, u, v if v[2] >= 0 else times(-1.0, v))


def nearest_turn(a: float, b: float, c: float, near: float = 0.0) -> float:
    """The angle, of those at which a cos + b sin is c, that is nearest to `near`, rad. A c just out of reach counts as in it.

    >>> round(nearest_turn(1.0, 0.0, 0.5, near=-1.0), 6) == round(-tau / 6, 6)
    True
    """
    middle, swing = atan2(b, a), acos(max(-1.0, min(1.0, c / hypot(a, b))))
    turns = (remainder(turn, tau) for turn in (middle + swing, middle - swing))
    return min(turns, key=lambda turn: abs(turn - near))
