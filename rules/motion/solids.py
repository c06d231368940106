"""Room between a turning wheel and a straight tube: tyre and rim as rings round the wheel's axis, the tube as a line.

Distances are signed: minus inside the ring, by how far it is to its nearest face.
"""

from collections.abc import Callable, Iterable
from math import hypot, inf, sqrt
from typing import NamedTuple

from rules.measure.vectors import Vector, dot, minus, plus, size, times
from rules.motion.points import Hinge, Pose
from rules.motion.sweep import Sweep, Worst

CLOSE = 0.05
"""mm; the nearest place is found to this, far finer than anybody measures."""
SAME = 1e-6
"""mm; less of a difference is none."""


class Ring(NamedTuple):
    """Everything from one radius to another round an axis, as wide to one side of its middle as to the other. mm.

    From `foot` wide at the inner radius it flares at 45 deg on both sides until it is `width` wide, and stays so to the
    outer radius. inner < outer - flare; foot at most width.
    """

    inner: float
    outer: float
    width: float
    foot: float

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        foot = f", {self.foot:.1f} mm at its inner edge" if self.foot < self.width else ""
        return (
            f"ring from {self.inner:.1f} to {self.outer:.1f} mm from the wheel's axis, {self.width:.1f} mm wide{foot}"
        )

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


def nearest(ring: Ring, centre: Vector, axis: Vector, start: Vector, end: Vector, known: float = inf) -> float:
    """Least signed distance from a straight line, start to end, to a ring, mm, at most CLOSE above the exact one.

    centre, axis: of the ring; axis of length 1. known: a distance already found elsewhere; what cannot be less is not
    looked at, and the answer is never more.

    A step of a millimetre along the line brings it nearer by a millimetre at most. So between two places the distance
    is at least half of (both distances - the length between), and a stretch where that is no improvement is left out.

    >>> tyre = Ring(200.0, 440.0, 300.0, 240.0)
    >>> nearest(tyre, (0.0, 0.0, 0.0), (0.0, 1.0, 0.0), (-500.0, -200.0, 9.0), (500.0, -200.0, 9.0))
    50.0
    """
    from_centre, line = minus(start, centre), minus(end, start)
    length = size(line)
    # At a part of the way: the place along the axis is linear, the squared distance from the centre a quadratic.
    along, along_rate = dot(from_centre, axis), dot(line, axis)
    squared, rate, length_squared = dot(from_centre, from_centre), 2 * dot(from_centre, line), length * length

    def at(part: float) -> float:
        place = along + part * along_rate
        radius_squared = squared + part * (rate + part * length_squared) - place * place
        return ring.distance(place, sqrt(radius_squared) if radius_squared > 0 else 0.0)

    stretches = [(0.0, at(0.0), 1.0, at(1.0))]
    least = min(known, stretches[0][1], stretches[0][3])
    while stretches:
        first, at_first, last, at_last = stretches.pop()
        if at_first + at_last - (last - first) * length >= 2 * (least - CLOSE):
            continue
        middle = (first + last) / 2
        at_middle = at(middle)
        least = min(least, at_middle)
        stretches.append((first, at_first, middle, at_middle))
        stretches.append((middle, at_middle, last, at_last))
    return least


Lines = Iterable[tuple[Vector, Vector]]


def least_gap(sweep: Sweep, ring: Ring, lines: Callable[[Pose], Lines]) -> Worst:
    """Least signed distance from lines that move to the ring round the wheel's axis, mm, over a sweep, and where.

    lines: where they run in a position, start and end. A gap that is the same everywhere counts as found at ride height.
    """
    most = max(abs(placed.travel) for placed in sweep.placed) or 1.0
    inside_out = sorted(sweep.placed, key=lambda placed: abs(placed.lock) + abs(placed.travel) / most)
    least, found = inf, inside_out[0]
    # Ride height, then from the corners inward: most things touch at a corner, and later positions are left out at once.
    for placed in (found, *reversed(inside_out)):
        pose = placed.pose
        for start, end in lines(pose):
            gap = nearest(ring, pose.wheel_centre, pose.spin, start, end, least)
            if gap < least - SAME:
                least, found = gap, placed
    return Worst(least, found.travel, found.lock)


def inner_ends(hinge: Hinge) -> tuple[Vector, ...]:
    """Where an arm's tubes start: at both inner pivots, or straight across from the outer one where no more is known.

    >>> inner_ends(Hinge((110.0, -400.0, 330.0), (-90.0, -400.0, 330.0), flat=True))
    ((10.0, -400.0, 330.0),)
    """
    if hinge.flat:
        return (times(0.5, plus(hinge.front, hinge.rear)),)
    return hinge.front, hinge.rear
