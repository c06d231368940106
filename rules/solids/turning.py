"""What turns about the wheel's axis, over a full turn, against what does not turn with it. mm and radians."""

from math import atan2, hypot, inf

from rules.measure.records import NamedTuple
from rules.solids.gap import Solid, nearer
from rules.solids.outline import nearest_and_farthest
from rules.solids.pieces import Wedge
from rules.solids.shapes import Ball, Cylinder, Prism, Revolved, Rod, Shape, solid
from rules.solids.space import Vector, cross, dot, minus, plus, size, times, unit

ALIGNED = 1e-6
"""Radians; what is less out of line with an axis stands along it."""


class TurningGap(NamedTuple):
    """The smallest gap over a full turn, mm, minus as in Gap, and where on what stands still.

    radius, along: from the axis, and along it from its origin. clock: about the axis from straight up, plus forwards (x).
    """

    distance: float
    on_turning: Vector
    on_fixed: Vector
    radius: float
    along: float
    clock: float


def swept(shape: Shape, origin: Vector, axis: Vector) -> Revolved:
    """Everything a shape passes through in a full turn about an axis (direction of length 1).

    Exact for a ball; for a rod, cylinder or prism that stands along the axis; for anything revolved about the axis itself.
    Raises ValueError for anything else.

    >>> stud = Cylinder((57.0, 0.0, 0.0), (57.0, 40.0, 0.0), 6.0)
    >>> swept(stud, (0.0, 0.0, 0.0), (0.0, 1.0, 0.0)).profile
    ((51.0, 0.0), (63.0, 0.0), (63.0, 40.0), (51.0, 40.0))
    >>> swept(Ball((30.0, 9.0, 40.0), 10.0), (0.0, 0.0, 0.0), (0.0, 1.0, 0.0)).profile
    ((50.0, 9.0),)
    """

    def seen(point: Vector) -> tuple[float, float]:
        from_origin = minus(point, origin)
        along = dot(from_origin, axis)
        return size(minus(from_origin, times(along, axis))), along

    def lies_along(direction: Vector) -> bool:
        return size(cross(direction, axis)) < ALIGNED * size(direction)

    def band(near: float, far: float, one: float, other: float) -> Revolved:
        low, high = min(one, other), max(one, other)
        return Revolved(origin, axis, ((near, low), (far, low), (far, high), (near, high)))

    if isinstance(shape, Ball):
        return Revolved(origin, axis, (seen(shape.centre),), shape.radius)
    if isinstance(shape, Rod) and lies_along(minus(shape.end, shape.start)):
        (radius, one), (_, other) = seen(shape.start), seen(shape.end)
        return Revolved(origin, axis, ((radius, one), (radius, other)), shape.radius)
    if isinstance(shape, Cylinder) and lies_along(minus(shape.end, shape.start)):
        (radius, one), (_, other) = seen(shape.start), seen(shape.end)
        return band(max(0.0, radius - shape.radius), radius + shape.radius, one, other)
    if isinstance(shape, Prism) and lies_along(shape.normal) and not shape.bore:
        to_axis = minus(origin, shape.origin)
        near, far = nearest_and_farthest(shape.outline, (dot(to_axis, shape.across), dot(to_axis, shape.up)))
        ends = [seen(plus(shape.origin, times(level, shape.normal)))[1] for level in (shape.low, shape.high)]
        return band(near, far, *ends)
    if isinstance(shape, Revolved) and lies_along(shape.axis) and seen(shape.origin)[0] < ALIGNED:
        same_way, start = dot(shape.axis, axis), seen(shape.origin)[1]
        profile = tuple((radius, start + same_way * along) for radius, along in shape.profile)
        return Revolved(origin, axis, profile, shape.rounding)
    raise ValueError("what turns stands along the axis it turns about, is a ball, or is revolved about it")


def all_round(shapes: tuple[Shape, ...], origin: Vector, axis: Vector) -> Solid:
    """A part that turns about an axis, as everything it passes through in a full turn; ready to be moved with the axis."""
    return solid(*(swept(shape, origin, axis) for shape in shapes))


def turning_gap(turning: Solid, fixed: Solid, than: float = inf) -> TurningGap | None:
    """The smallest gap over a full turn, to 0.05 mm, and where, if it is less than so many mm; None if it is not.

    turning: from `all_round`, moved or not. Raises ValueError for what does not go all round.

    >>> nut = all_round((Cylinder((50.0, 0.0, 0.0), (50.0, 20.0, 0.0), 10.0),), (0.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    >>> found = turning_gap(nut, solid(Ball((90.0, 10.0, 0.0), 5.0)))  # 90 - 5 - 60, straight forward of the spindle
    >>> round(found.distance, 3), round(found.radius, 3), round(found.clock, 4)
    (25.0, 85.0, 1.5708)
    """
    first = turning.pieces[0]
    if not all(isinstance(piece, Wedge) and piece.full for piece in turning.pieces) or not isinstance(first, Wedge):
        raise ValueError("what turns goes all round")
    found = nearer(turning, fixed, than)
    if found is None:
        return None
    origin, axis = first.origin, first.axis
    from_origin = minus(found.on_b, origin)
    along = dot(from_origin, axis)
    upright: Vector = (0.0, 0.0, 1.0)
    up = unit(minus(upright, times(dot(upright, axis), axis)))
    forward = cross(axis, up)
    if forward[0] < 0:
        forward = times(-1, forward)
    ahead, above = dot(from_origin, forward), dot(from_origin, up)
    return TurningGap(found.distance, found.on_a, found.on_b, hypot(ahead, above), along, atan2(ahead, above))
