"""What a moving front corner is made of: its points at ride height, wheels straight, and where they are later.

Left wheel, axes of `rules`: x forward, y outboard, z up; origin on the ground under the tyre centre plane, below the
wheel centre; mm and radians. The frame stands still and the wheel moves.
"""

from math import asin, atan, atan2, hypot, sqrt

from rules.measure.records import NamedTuple, dataclass
from rules.measure.vectors import Vector, dot, minus, plus, size, times, unit

FORWARD: Vector = (1.0, 0.0, 0.0)
OUTBOARD: Vector = (0.0, 1.0, 0.0)
UP: Vector = (0.0, 0.0, 1.0)
FLAT = 1e-6
"""Of an axis of length 1, what of it lies level where the wheel lies flat."""


class CannotReach(Exception):  # noqa: N818 - says what happened to the linkage
    """The links cannot take up the position asked for. reached: how far they go, in what was asked for."""

    def __init__(self, reached: float = 0.0) -> None:
        super().__init__(reached)
        self.reached = reached


@dataclass(frozen=True, slots=True)
class Hinge:
    """The two inner pivots of an arm. flat: only the view from the front is known; the hinge then runs straight ahead."""

    front: Vector
    rear: Vector
    flat: bool = False

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return (
            "hinge line straight ahead, from the view from the front" if self.flat else "hinge line through two pivots"
        )


@dataclass(frozen=True, slots=True)
class UprightPoints:
    """The points that move with the upright, at ride height. The wheel points straight ahead.

    radius: from the wheel centre down the wheel to the ground. tie_rod_end: None where the steering is not known. spin: the
    wheel's spin axis, outboard, of length 1; level where the wheel stands upright.
    """

    lower: Vector
    upper: Vector
    wheel_centre: Vector
    tie_rod_end: Vector | None = None
    spin: Vector = OUTBOARD

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return "outer pivots, wheel centre" + (" and tie-rod end" if self.tie_rod_end else "")

    def on_axis(self, height: float) -> Vector:
        """Where the steering axis passes a height above the ground, mm.

        >>> UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 500.0), (0.0, 0.0, 400.0)).on_axis(400.0)
        (0.0, -100.0, 400.0)
        """
        return _at_height(self.lower, self.upper, height)

    @property
    def radius(self) -> float:
        """From the wheel centre down the wheel to the ground, mm: longer than its height where the wheel leans.

        >>> leant = UprightPoints((0.0, 0.0, 300.0), (0.0, 0.0, 500.0), (0.0, 0.0, 400.0), spin=(0.0, 0.8, -0.6))
        >>> leant.radius  # leaning 36.87 deg: 400 / 0.8
        500.0
        """
        return self.wheel_centre[2] / sqrt(1 - self.spin[2] ** 2)


class Pose(NamedTuple):
    """Where one corner is. turn: rad about the steering axis from straight ahead, seen from above positive to the left."""

    lower: Vector
    upper: Vector
    wheel_centre: Vector
    spin: Vector
    tie_rod_end: Vector | None
    inner_end: Vector | None
    turn: float
    radius: float

    @property
    def steer(self) -> float:
        """Angle of the wheel seen from above, rad, to the left positive."""
        return atan2(-self.spin[0], self.spin[1])

    @property
    def camber(self) -> float:
        """Lean of the wheel, rad, top outboard positive."""
        return asin(max(-1.0, min(1.0, -self.spin[2])))

    @property
    def axis(self) -> Vector:
        """Direction of the steering axis, from the lower to the upper pivot, of length 1."""
        return unit(minus(self.upper, self.lower))

    @property
    def castor(self) -> float:
        """Lean of the steering axis seen from the side, rad, top to the rear positive."""
        return atan(-self.axis[0] / self.axis[2])

    @property
    def contact(self) -> Vector:
        """Lowest point of the wheel's disc: where the tyre stands on level ground. Its middle where the disc lies flat."""
        x, y, z = self.spin
        across = hypot(x, y)
        if across < FLAT:
            return self.wheel_centre
        down = (z * x / across, z * y / across, -across)
        return plus(self.wheel_centre, times(self.radius, down))

    @property
    def landing(self) -> Vector:
        """Where the steering axis meets the ground."""
        return _at_height(self.lower, self.upper, self.contact[2])

    @property
    def ground_offset(self) -> float:
        """From where the steering axis meets the ground out to the contact, across the wheel, mm."""
        across = (self.spin[0], self.spin[1], 0.0)
        return dot(minus(self.contact, self.landing), across) / size(across)


def mirrored(point: Vector, centre_line: float) -> Vector:
    """A point on the other side of the car, in the left wheel's axes, mm. centre_line: mm from the tyre plane (minus).

    >>> mirrored((10.0, -300.0, 400.0), -800.0)
    (10.0, -1300.0, 400.0)
    """
    return (point[0], 2 * centre_line - point[1], point[2])


def _at_height(start: Vector, end: Vector, height: float) -> Vector:
    """Where the line through two points passes a height."""
    return plus(start, times((height - start[2]) / (end[2] - start[2]), minus(end, start)))
