"""The vectors the solids are made of, and rigid motion. mm, radians."""

from math import cos, sin

from rules.measure.records import dataclass
from rules.measure.vectors import NOUGHT, Vector, cross, dot, minus, plus, size, times, unit

__all__ = (
    "NOUGHT", "STILL",
    "Motion", "Vector", "cross", "dot", "minus", "plus", "shift", "size", "square_to", "times", "turn",
    "unit",
)  # fmt: skip


def square_to(direction: Vector) -> Vector:
    """Some direction of length 1 square to this one of length 1; the same each time.

    >>> square_to((0.0, 1.0, 0.0))
    (0.0, 0.0, 1.0)
    """
    least = min(range(3), key=lambda i: abs(direction[i]))
    return unit(cross(((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))[least], direction))


@dataclass(frozen=True, slots=True)
class Motion:
    """A rigid motion: where the three axes turn to, then a shift. Made by `turn`, `shift` and `then`."""

    x: Vector = (1.0, 0.0, 0.0)
    y: Vector = (0.0, 1.0, 0.0)
    z: Vector = (0.0, 0.0, 1.0)
    shift: Vector = NOUGHT

    def direction(self, v: Vector) -> Vector:
        """Where a direction turns to."""
        (a, b, c), x, y, z = v, self.x, self.y, self.z
        return (
            a * x[0] + b * y[0] + c * z[0],
            a * x[1] + b * y[1] + c * z[1],
            a * x[2] + b * y[2] + c * z[2],
        )

    def point(self, p: Vector) -> Vector:
        """Where a point goes to."""
        (a, b, c), x, y, z, s = p, self.x, self.y, self.z, self.shift
        return (
            a * x[0] + b * y[0] + c * z[0] + s[0],
            a * x[1] + b * y[1] + c * z[1] + s[1],
            a * x[2] + b * y[2] + c * z[2] + s[2],
        )

    def then(self, later: "Motion") -> "Motion":
        """This motion, and another after it.

        >>> quarter = turn((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), 1.5707963267948966)
        >>> [round(part, 9) for part in shift((5.0, 0.0, 0.0)).then(quarter).point((0.0, 0.0, 0.0))]
        [0.0, 5.0, 0.0]
        """
        return Motion(
            later.direction(self.x), later.direction(self.y), later.direction(self.z), later.point(self.shift)
        )


STILL = Motion()
"""No motion at all."""


def shift(by: Vector) -> Motion:
    """A shift without a turn, mm."""
    return Motion(shift=by)


def turn(origin: Vector, axis: Vector, angle: float) -> Motion:
    """A turn about a line through origin, radians, right-handed about axis (of length 1). Rodrigues' formula.

    >>> steered = turn((10.0, 0.0, 0.0), (0.0, 0.0, 1.0), 1.5707963267948966)
    >>> [round(part, 9) for part in steered.point((11.0, 0.0, 7.0))]
    [10.0, 1.0, 7.0]
    """
    c, s = cos(angle), sin(angle)

    def turned(v: Vector) -> Vector:
        return plus(times(c, v), times(s, cross(axis, v)), times((1 - c) * dot(axis, v), axis))

    return Motion(
        turned((1.0, 0.0, 0.0)), turned((0.0, 1.0, 0.0)), turned((0.0, 0.0, 1.0)), minus(origin, turned(origin))
    )
