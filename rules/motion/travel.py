"""What the wheel's travel does, seen from the front: instant centre, roll centre, and the tie rod that steers least.

Left wheel, axes of `rules`, mm and radians. Nothing here knows of sheets.
"""

from collections.abc import Callable, Sequence
from math import floor, sin

from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector, cross, dot, minus, size
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import Hinge, Pose
from rules.motion.search import golden
from rules.motion.sweep import Sweep, Worst

SLIDE = 25.0
"""mm each way of the rack that is assumed for whatever moves the tie rod; with the wheels straight it does not matter."""
NEAR, PIVOT_CLOSE = 5.0, 0.002
"""mm each way that a better inner pivot is looked for beside the sphere's centre, and how closely."""
PARALLEL = 1e-6
"""Sine of the angle between two arms below which they count as parallel: they would meet hundreds of metres away."""


def instant_centre(arms: tuple[Hinge, Hinge], pose: Pose) -> tuple[float, float] | None:
    """Where the two arms' planes meet in the upright plane across the car through the contact: (across, up), mm.

    It is the point the wheel swings about just then, seen from the front. None where the planes are parallel there.

    Lower arm level at 300 high; upper arm 600 high at the upright, falling 100 in its 300: it meets 300 high at y = -900.

    >>> front = meeting_arms()
    >>> [round(part, 6) for part in instant_centre(front.arms, front.straight(0.0))]
    [-900.0, 300.0]
    """
    across, up, nearness = _meeting(arms, pose)
    if abs(nearness) < PARALLEL:
        return None
    contact = pose.contact
    return contact[1] + across / nearness, contact[2] + up / nearness


def roll_centre_height(arms: tuple[Hinge, Hinge], pose: Pose, centre_line: float) -> float | None:
    """Where the line from contact to instant centre passes the car's centre line, mm above the contact.

    centre_line: mm from the tyre plane (minus). Arms that are parallel have the line along them. None where the instant
    centre stands straight above the contact.

    As above, half the track 450: half way to the instant centre, 300 / 2.

    >>> front = meeting_arms()
    >>> round(roll_centre_height(front.arms, front.straight(0.0), -450.0), 6)
    150.0
    """
    across, up, _ = _meeting(arms, pose)
    if abs(across) < PARALLEL * abs(up):
        return None
    return up / across * (centre_line - pose.contact[1])


def _meeting(arms: tuple[Hinge, Hinge], pose: Pose) -> Vector:
    """Instant centre from the contact as (across, up, nearness): over the nearness, mm; nearness nought is for ever away."""
    contact = pose.contact
    lines = []
    for hinge, outer in zip(arms, (pose.lower, pose.upper), strict=True):
        normal = cross(minus(hinge.front, hinge.rear), minus(outer, hinge.front))
        # On the plane and in the plane across through the contact: b y + c z = d, y and z from the contact.
        length = size((0.0, normal[1], normal[2]))
        lines.append((normal[1] / length, normal[2] / length, dot(normal, minus(outer, contact)) / length))
    (b, c, d), (f, g, h) = lines
    return d * g - h * c, b * h - f * d, b * g - f * c


def stretches(low: float, high: float, length: float) -> list[tuple[float, float]]:
    """Stretches of a length, one after another from the low end, and one that ends at the high end.

    The whole where it is shorter.

    >>> stretches(-30.0, 40.0, 25.0), stretches(0.0, 20.0, 25.0)
    ([(-30.0, -5.0), (-5.0, 20.0), (15.0, 40.0)], [(0.0, 20.0)])
    """
    if high - low <= length:
        return [(low, high)]
    starts = [low + length * count for count in range(floor((high - low) / length))]
    return [*((start, start + length) for start in starts), (high - length, high)]


def steepest(places: Sequence[tuple[float, float]], measure: Callable[[float], float]) -> Worst:
    """The largest change of a measure over one of several stretches of travel, in size.

    measure: of a travel, mm. The place told is the end of that stretch that is farther from ride height.

    >>> found = steepest([(-30.0, -5.0), (-5.0, 20.0)], lambda travel: travel**2)
    >>> found, found.travel
    (875.0, -30.0)
    """
    changes = [(abs(measure(high) - measure(low)), max(low, high, key=abs)) for low, high in places]
    change, travel = max(changes, key=lambda pair: pair[0])
    return Worst(change, travel, 0.0)


def largest_change(sweep: Sweep, measure: Callable[[Pose], float], ride: Pose) -> Worst:
    """The change of a measure against ride height that is largest in size, with its sign, and where."""
    at_ride = measure(ride)
    changes = [(measure(placed.pose) - at_ride, placed) for placed in sweep.placed]
    change, placed = max(changes, key=lambda pair: abs(pair[0]))
    return Worst(change, placed.travel, placed.lock)


def toe(diameter: float, steer: float) -> float:
    """Front against rear across the treads of both wheels, mm, each wheel turned by `steer`, rad.

    Two wheels of 800 mm turned 30 deg: 2 x 800 x 1/2.

    >>> from math import radians
    >>> round(toe(800.0, radians(30)), 6)
    800.0
    """
    return 2 * diameter * sin(steer)


class InnerPivot(NamedTuple):
    """Where a tie rod's inner end is put with the wheels straight, mm; how far ahead stays as it is."""

    across: float
    up: float

    def words_in(self, units: Units) -> str:
        """In one line, in a sheet's units, for the written-out working of what rests on it."""
        inboard, up = (show(size, "mm", units) for size in (-self.across, self.up))
        return f"{inboard} inboard of the tyre centre plane, {up} above ground"


def best_inner_pivot(path: Sequence[Vector], ahead: float) -> InnerPivot | None:
    """Centre of the sphere that best fits the path of the tie rod's outer end, `ahead` being given.

    path: where that end goes when the wheel is held straight. A rod about this centre follows it most closely, so the
    wheel steers little. Least squares of |P - C|^2 = r^2, which is linear in C and in k = r^2 - |C|^2; with y, z, q
    measured from their means over the path k drops out, and of 2 y Cy + 2 z Cz = q, q = |P|^2 - 2 Px Cx, two equations
    are left. None where the path is too straight, or too short, to have a centre.

    Four points of a circle of 5 about (-3, 4):

    >>> points = [(7.0, 2.0, 4.0), (7.0, 1.0, 7.0), (7.0, 1.0, 1.0), (7.0, 0.0, 8.0)]
    >>> [round(part, 9) for part in best_inner_pivot(points, 7.0)]
    [-3.0, 4.0]
    """
    y, z = _from_mean([point[1] for point in path]), _from_mean([point[2] for point in path])
    q = _from_mean([dot(point, point) - 2 * point[0] * ahead for point in path])
    yy, zz, yz = _products(y, y), _products(z, z), _products(y, z)
    yq, zq = _products(y, q) / 2, _products(z, q) / 2
    determinant = yy * zz - yz * yz
    if determinant <= STRAIGHT * (yy + zz) ** 2:
        return None
    return InnerPivot((yq * zz - zq * yz) / determinant, (zq * yy - yq * yz) / determinant)


STRAIGHT = 1e-9
"""Of the path's two spreads, the lesser over the greater, squared: below this, a path is a straight line."""


def _from_mean(numbers: Sequence[float]) -> list[float]:
    mean = sum(numbers) / len(numbers)
    return [number - mean for number in numbers]


def _products(one: Sequence[float], other: Sequence[float]) -> float:
    return sum(a * b for a, b in zip(one, other, strict=True))


def from_inner_pivot(front: FrontEnd, pivot: InnerPivot) -> FrontEnd:
    """The front end with its tie rod's inner end put elsewhere, wheels straight. It is held there as by a rack.

    Raises CannotReach where the tie rod then does not steer.

    >>> from_inner_pivot(parallel_arms(), InnerPivot(-300.0, 350.0)).at(0.0, 0.0).inner_end
    (-120.0, -300.0, 350.0)
    """
    linkage = front.linkage
    assert linkage is not None and linkage.inner is not None
    inner = (linkage.inner[0], pivot.across, pivot.up)
    return front.steered(
        front.upright, SteeringLinkage("rack", inner, linkage.centre_line, travel=SLIDE, toe=linkage.toe)
    )


def least_steering(front: FrontEnd, travels: Sequence[float], near: InnerPivot) -> InnerPivot:
    """The inner pivot, close by one that is nearly best, from which the wheel's angle changes least over the travels.

    So near to it every angle changes with the pivot's place as along a straight line, and the largest less the least of
    straight lines has one valley: searched up and down for each place across. Raises CannotReach.

    >>> best = least_steering(parallel_arms(), [-60.0, -30.0, 0.0, 30.0, 60.0], InnerPivot(-380.3, 360.1))
    >>> round(best.across, 1), round(best.up, 1)
    (-380.0, 360.0)
    """

    def angles_from(across: float, up: float) -> list[float]:
        moved = from_inner_pivot(front, InnerPivot(near.across + across, near.up + up))
        return [moved.at(travel, 0.0).steer for travel in travels]

    measured = zip(angles_from(0.0, 0.0), angles_from(1.0, 0.0), angles_from(0.0, 1.0), strict=True)
    lines = [(here, aside - here, above - here) for here, aside, above in measured]

    def change(across: float, up: float) -> float:
        angles = [angle + across * per_across + up * per_up for angle, per_across, per_up in lines]
        return max(angles) - min(angles)

    def best_up(across: float) -> float:
        return golden(lambda up: change(across, up), -NEAR, NEAR, PIVOT_CLOSE)

    across = golden(lambda across: change(across, best_up(across)), -NEAR, NEAR, PIVOT_CLOSE)
    return InnerPivot(near.across + across, near.up + best_up(across))
