"""Room between a ring round the wheel's axis and a point; and where an arm's tubes start.

Distances are signed: minus inside the ring, by how far it is to its nearest face.
"""

from math import hypot, sqrt

from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector, dot, minus, plus, size, times
from rules.motion.points import Hinge


class Ring(NamedTuple):
    """Everything from one radius to another round an axis, as wide to one side of its middle as to the other. mm.

    From `foot` wide at the inner radius it flares at 45 deg on both sides until it is `width` wide, and stays so to the
    outer radius. inner < outer - flare; foot at most width.
    """

    inner: float
    outer: float
    width: float
    foot: float

    def words_in(self, units: Units) -> str:
        """In one line, in a sheet's units, for the written-out working of what rests on it."""
        inner, outer, width, edge = (
            show(size, "mm", units) for size in (self.inner, self.outer, self.width, self.foot)
        )
        foot = f", {edge} at its inner edge" if self.foot < self.width else ""
        return f"ring from {inner} to {outer} from the wheel's axis, {width} wide{foot}"

    def distance(self, along: float, radius: float) -> float:
        """From a place to the ring's surface, mm, minus inside. along: from the middle, along the axis; radius: from it.

        >>> tyre = Ring(200.0, 440.0, 300.0, 240.0)
        >>> tyre.distance(153.0, 444.0), tyre.distance(0.0, 190.0), tyre.distance(-140.0, 400.0)
        (5.0, 10.0, -10.0)
        """
        over, above, tread = abs(along) - self.foot / 2, radius - self.inner, radius - self.outer
        flare = (self.width - self.foot) / 2
        if 0 < over + above < 2 * flare:  # beside the flare itself, or straight behind it
            return max((over - above) / sqrt(2), over - flare, -above, tread)
        if over + above <= 0:
            beside, beyond = over, max(-above, tread)
        else:
            beside, beyond = over - flare, max(flare - above, tread)
        return hypot(beside, beyond) if beside > 0 and beyond > 0 else max(beside, beyond)

    def from_point(self, centre: Vector, axis: Vector, point: Vector) -> float:
        """Signed distance to a point, mm. centre, axis: of the ring; axis of length 1.

        >>> Ring(200.0, 440.0, 300.0, 240.0).from_point((0.0, 0.0, 400.0), (0.0, 1.0, 0.0), (0.0, 0.0, 300.0))
        100.0
        """
        from_centre = minus(point, centre)
        along = dot(from_centre, axis)
        return self.distance(along, size(minus(from_centre, times(along, axis))))


def inner_ends(hinge: Hinge) -> tuple[Vector, ...]:
    """Where an arm's tubes start: at both inner pivots, or straight across from the outer one where no more is known.

    >>> inner_ends(Hinge((110.0, -400.0, 330.0), (-90.0, -400.0, 330.0), flat=True))
    ((10.0, -400.0, 330.0),)
    """
    if hinge.flat:
        return (times(0.5, plus(hinge.front, hinge.rear)),)
    return hinge.front, hinge.rear
