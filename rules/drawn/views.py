"""Where a picture is looked at from: its directions in space, and where a point of the corner falls in it. mm.

Axes are those of the corner: x forward, y outboard, z up, left wheel. A view's own origin falls on the picture's.
"""

from rules.measure.outline import Point
from rules.measure.records import dataclass
from rules.measure.vectors import NOUGHT, Vector, cross, dot, minus, times, unit
from rules.motion.points import FORWARD, OUTBOARD, UP
from rules.solids.space import Motion


@dataclass(frozen=True, slots=True)
class Viewpoint:
    """right, up: the picture's directions in space, square to each other, of length 1. origin: a point of the picture's plane.

    >>> FROM_FRONT.flat((10.0, 20.0, 30.0)), FROM_FRONT.depth((10.0, 20.0, 30.0))
    ((20.0, 30.0), 10.0)
    """

    right: Vector
    up: Vector
    origin: Vector = NOUGHT

    @property
    def eye(self) -> Vector:
        """Towards whoever looks."""
        return cross(self.right, self.up)

    def flat(self, point: Vector) -> Point:
        """Where a point falls in the picture."""
        away = minus(point, self.origin)
        return dot(away, self.right), dot(away, self.up)

    def depth(self, point: Vector) -> float:
        """How far a point stands out of the picture's plane towards whoever looks, mm."""
        return dot(minus(point, self.origin), self.eye)

    def through(self, origin: Vector) -> "Viewpoint":
        """The same directions through another point."""
        return Viewpoint(self.right, self.up, origin)

    def after(self, motion: Motion) -> "Viewpoint":
        """A view in which what has not moved yet looks as it does in this one after a rigid motion.

        >>> from rules.solids.space import shift
        >>> FROM_FRONT.after(shift((0.0, 5.0, 7.0))).flat((0.0, 0.0, 0.0))
        (5.0, 7.0)
        """
        away = minus(self.origin, motion.shift)

        def back(v: Vector) -> Vector:
            return dot(v, motion.x), dot(v, motion.y), dot(v, motion.z)

        return Viewpoint(back(self.right), back(self.up), back(away))


def _other_way(v: Vector) -> Vector:
    return times(-1.0, v)


FROM_FRONT = Viewpoint(OUTBOARD, UP)
"""Outboard is to the right."""
FROM_BEHIND = Viewpoint(_other_way(OUTBOARD), UP)
FROM_ABOVE = Viewpoint(OUTBOARD, _other_way(FORWARD))
"""The front of the car is at the bottom, so that it stands under the view from the front."""
FROM_OUTSIDE = Viewpoint(_other_way(FORWARD), UP)
"""Front is to the left."""


def square_to_axis(axis: Vector) -> Viewpoint:
    """From the front, square to the steering axis: it stands upright in the picture and lengths along it are true.

    axis: upward, of length 1.

    >>> square_to_axis((0.0, 0.0, 1.0)) == FROM_FRONT
    True
    """
    return Viewpoint(unit(cross(axis, FORWARD)), axis)
