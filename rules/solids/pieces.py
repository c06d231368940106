"""What every solid is made of: convex hulls with a simple answer to "how far do you reach that way?", rounded by a radius.

A piece may be the hull of something hollow, which it fills in: a stretch of a ring fills in the chord of its bore. `error`
is how far the filling stands out of what it stands for; `halves` are two pieces of the same with about a quarter of it;
`onto` moves a place of the filling to the nearest real one; `core` is a hull with nothing filled in. An error of 0 is a piece
that is what it says.
"""

from itertools import pairwise
from math import acos, asin, atan2, cos, dist, hypot, inf, pi, sin, sqrt

from rules.measure.outline import Point
from rules.measure.records import NamedTuple, dataclass, field
from rules.solids.outline import Polygon
from rules.solids.space import Motion, Vector, cross, dot, minus, plus, size, times

Axis = tuple[Vector, Vector]
"""A line: a point on it and its direction, of length 1."""


class Shadow(NamedTuple):
    """How a piece, without its radius, lies about a line: from where to where along it, and how far out from it at most."""

    origin: Vector
    axis: Vector
    low: float
    high: float
    far: float


@dataclass(slots=True)
class Hull:
    """The hull of a few points, grown by a radius all round: a ball (one point), a rod (two), any block."""

    points: tuple[Vector, ...]
    radius: float = 0.0
    middle: Vector = field(init=False)
    reach: float = field(init=False)
    cast: Shadow | None = field(init=False, repr=False, default=None)

    def __post_init__(self) -> None:
        xs, ys, zs = zip(*self.points, strict=True)
        self.middle = ((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2, (min(zs) + max(zs)) / 2)
        self.reach = self.radius + max(dist(p, self.middle) for p in self.points)

    @property
    def error(self) -> float:
        return 0.0

    def support(self, x: float, y: float, z: float) -> Vector:
        """The farthest point in a direction of any length, without the radius."""
        best = self.points[0]
        most = x * best[0] + y * best[1] + z * best[2]
        for point in self.points:
            reach = x * point[0] + y * point[1] + z * point[2]
            if reach > most:
                best, most = point, reach
        return best

    def halves(self) -> "tuple[Piece, ...]":
        """Two pieces that are this one with less filled in; a plain hull fills nothing in."""
        return (self,)

    def onto(self, place: Vector) -> Vector:
        """The place of what the piece stands for that is nearest to a place of the piece."""
        return place

    def core(self, before: Vector) -> "Hull":
        """A hull that is all inside what the piece stands for; where there is a choice, towards a place."""
        return self

    def moved(self, motion: Motion) -> "Hull":
        """The same after a rigid motion."""
        same = object.__new__(Hull)
        same.points = tuple(map(motion.point, self.points))
        same.radius, same.reach, same.cast = self.radius, self.reach, None
        same.middle = motion.point(self.middle)
        return same

    def angles(self, axis: Axis, from_: Vector, across: Vector) -> tuple[float, float] | None:
        """Between which angles about a line it lies, or None where it may lie all round. The radius does not count."""
        seen = [minus(p, axis[0]) for p in self.points]
        first = atan2(dot(seen[0], across), dot(seen[0], from_))
        turned = [(atan2(dot(v, across), dot(v, from_)) - first + pi) % (2 * pi) - pi for v in seen]
        low, high = min(turned), max(turned)
        return (first + low, first + high) if high - low < 3.1 else None

    def shadow(self, origin: Vector, axis: Vector) -> Shadow:
        """How it lies about a line; remembered, because many rings turn about one."""
        if self.cast and self.cast.origin == origin and self.cast.axis == axis:
            return self.cast
        (ox, oy, oz), (ax, ay, az) = origin, axis
        low, high, square = inf, -inf, 0.0
        for px, py, pz in self.points:
            x, y, z = px - ox, py - oy, pz - oz
            along = x * ax + y * ay + z * az
            low, high = min(low, along), max(high, along)
            square = max(square, x * x + y * y + z * z - along * along)
        self.cast = Shadow(origin, axis, low, high, sqrt(square))
        return self.cast


@dataclass(slots=True)
class Slab(Hull):
    """A flat outline made so thick that nothing slips past it sideways. plane: the middle of its thickness, with its normal."""

    plane: Axis = field(kw_only=True)

    def onto(self, place: Vector) -> Vector:
        point, normal = self.plane
        return minus(place, times(dot(minus(place, point), normal), normal))


@dataclass(slots=True)
class Corner(Hull):
    """What lies between one straight edge of a plate's outline and a circle round its bore inside it, through the plate.

    frame: the circle's middle, two directions in the plate and the one square to it. start, end: of the edge.
    """

    frame: tuple[Vector, Vector, Vector, Vector] = field(kw_only=True)
    start: Point = field(kw_only=True)
    end: Point = field(kw_only=True)
    levels: tuple[float, float] = field(kw_only=True)
    circle: float = field(kw_only=True)

    @staticmethod
    def cut(
        frame: tuple[Vector, Vector, Vector, Vector],
        start: Point,
        end: Point,
        levels: tuple[float, float],
        circle: float,
    ) -> "Corner":
        """The piece beyond the circle, from the direction of one point of the outline to that of another."""
        flat = [start, end]
        flat += [(x * circle / hypot(x, y), y * circle / hypot(x, y)) for x, y in (start, end)]
        middle, across, up, normal = frame
        points = tuple(
            plus(middle, times(x, across), times(y, up), times(level, normal)) for x, y in flat for level in levels
        )
        return Corner(points, frame=frame, start=start, end=end, levels=levels, circle=circle)

    @property
    def error(self) -> float:
        (x1, y1), (x2, y2) = self.start, self.end
        return self.circle * (1 - cos(atan2(x1 * y2 - y1 * x2, x1 * x2 + y1 * y2) / 2))

    def halves(self) -> "tuple[Piece, ...]":
        (x1, y1), (x2, y2) = self.start, self.end
        near, far = hypot(x1, y1), hypot(x2, y2)
        part = near / (near + far)  # the bisector divides the edge as the two sides are to each other
        between = (x1 + part * (x2 - x1), y1 + part * (y2 - y1))
        return (
            Corner.cut(self.frame, self.start, between, self.levels, self.circle),
            Corner.cut(self.frame, between, self.end, self.levels, self.circle),
        )

    def onto(self, place: Vector) -> Vector:
        middle, across, up, _ = self.frame
        seen = minus(place, middle)
        x, y = dot(seen, across), dot(seen, up)
        radius = hypot(x, y)
        if not 0 < radius < self.circle:
            return place
        out = self.circle / radius - 1
        return plus(place, times(out * x, across), times(out * y, up))

    def core(self, before: Vector) -> Hull:
        """What lies between the edge and the circle's tangent square to the bisector of its two sides."""
        (x1, y1), (x2, y2) = self.start, self.end
        half = atan2(x1 * y2 - y1 * x2, x1 * x2 + y1 * y2) / 2
        inner = [(x, y, self.circle / cos(half) / hypot(x, y)) for x, y in (self.end, self.start)]
        tangent = [(x * part, y * part) for x, y, part in inner] if all(part < 1 for *_, part in inner) else []
        middle, across, up, normal = self.frame
        flat = [self.start, self.end, *tangent]
        return Hull(
            tuple(
                plus(middle, times(x, across), times(y, up), times(level, normal))
                for x, y in flat
                for level in self.levels
            )
        )

    def moved(self, motion: Motion) -> "Corner":
        middle, across, up, normal = self.frame
        turned = (motion.point(middle), motion.direction(across), motion.direction(up), motion.direction(normal))
        points = tuple(map(motion.point, self.points))
        return Corner(points, frame=turned, start=self.start, end=self.end, levels=self.levels, circle=self.circle)


@dataclass(slots=True)
class Wedge:
    """A convex profile turned about an axis from half_angle before `towards` to half_angle after it, grown by a radius.

    profile: (radius, along) mm, radius 0 or more. half_angle: pi for a full turn, else at most pi / 2. towards, across:
    square to the axis and each other; axis = towards x across.
    """

    origin: Vector
    axis: Vector
    towards: Vector
    across: Vector
    profile: Polygon
    half_angle: float
    radius: float = 0.0
    inner: tuple[Point, ...] = field(init=False)
    low: float = field(init=False)
    high: float = field(init=False)
    hole: float = field(init=False)
    middle: Vector = field(init=False)
    reach: float = field(init=False)
    cast: Shadow | None = field(init=False, repr=False, default=None)
    error: float = field(init=False)
    _cosine: float = field(init=False)
    _sine: float = field(init=False)

    def __post_init__(self) -> None:
        half = self.half_angle
        self._cosine, self._sine = (-1.0, 0.0) if self.full else (cos(half), sin(half))
        self.inner = inner_side(self.profile)
        hollow = max(r for r, _ in self.inner)
        self.error = hollow * (1 - max(0.0, self._cosine))
        radii, places = [r for r, _ in self.profile], [s for _, s in self.profile]
        self.hole, self.low, self.high = min(radii), min(places), max(places)
        along = (self.low + self.high) / 2
        out = (self.hole * self._cosine + max(radii)) / 2 if self._cosine > 0 else 0.0
        self.middle = plus(self.origin, times(out, self.towards), times(along, self.axis))
        square = max(r * r - 2 * r * out * self._cosine + out * out + (s - along) ** 2 for r, s in self.profile)
        self.reach = self.radius + sqrt(max(0.0, square))

    @property
    def full(self) -> bool:
        return self.half_angle >= pi

    def support(self, x: float, y: float, z: float) -> Vector:
        """The farthest point in a direction of any length, without the radius."""
        a, t, c = self.axis, self.towards, self.across
        along = x * a[0] + y * a[1] + z * a[2]
        ahead = x * t[0] + y * t[1] + z * t[2]
        aside = x * c[0] + y * c[1] + z * c[2]
        outward = sqrt(ahead * ahead + aside * aside)
        if outward < 1e-12:
            cosine, sine = 1.0, 0.0
        elif ahead >= outward * self._cosine:
            cosine, sine = ahead / outward, aside / outward
        else:
            cosine, sine = self._cosine, self._sine if aside > 0 else -self._sine
            outward = ahead * cosine + aside * sine
        r, s = self.profile[0]
        most = r * outward + s * along
        for point in self.profile:
            reach = point[0] * outward + point[1] * along
            if reach > most:
                (r, s), most = point, reach
        o, ahead, aside = self.origin, r * cosine, r * sine
        return (
            o[0] + ahead * t[0] + aside * c[0] + s * a[0],
            o[1] + ahead * t[1] + aside * c[1] + s * a[1],
            o[2] + ahead * t[2] + aside * c[2] + s * a[2],
        )

    def stretch(self, low: float, high: float) -> "Wedge":
        """The part of it between two angles from `towards`, in the sense from it to `across`."""
        middle = (low + high) / 2
        c, s = cos(middle), sin(middle)
        (tx, ty, tz), (ux, uy, uz) = self.towards, self.across
        towards = (c * tx + s * ux, c * ty + s * uy, c * tz + s * uz)
        across = (c * ux - s * tx, c * uy - s * ty, c * uz - s * tz)
        return Wedge(self.origin, self.axis, towards, across, self.profile, (high - low) / 2, self.radius)

    def halves(self) -> "tuple[Piece, ...]":
        return self.stretch(-self.half_angle, 0.0), self.stretch(0.0, self.half_angle)

    def seen(self, place: Vector) -> tuple[float, float, float]:
        """A place as it is seen from the axis: along it, and the parts along `towards` and `across`."""
        v = minus(place, self.origin)
        return dot(v, self.axis), dot(v, self.towards), dot(v, self.across)

    def onto(self, place: Vector) -> Vector:
        along, ahead, aside = self.seen(place)
        radius, least = hypot(ahead, aside), inner_radius(self.inner, along)
        if not 0 < radius < least:
            return place
        out = least / radius - 1
        return plus(place, times(out * ahead, self.towards), times(out * aside, self.across))

    def core(self, before: Vector) -> Hull:
        """Its profile in one half-plane: that of a place for a full ring, else the middle one."""
        out = self.towards
        if self.full:
            _, ahead, aside = self.seen(before)
            away = hypot(ahead, aside)
            out = plus(times(ahead / away, out), times(aside / away, self.across)) if away > 0 else out
        return Hull(tuple(plus(self.origin, times(r, out), times(s, self.axis)) for r, s in self.profile), self.radius)

    def shadow(self, origin: Vector, axis: Vector) -> Shadow:
        """How it lies about a line; remembered, because many rings turn about one."""
        if self.cast and self.cast.origin == origin and self.cast.axis == axis:
            return self.cast
        ax, ay, az = axis
        top, bottom = minus(self.support(ax, ay, az), origin), minus(self.support(-ax, -ay, -az), origin)
        away = minus(self.middle, origin)
        along = dot(away, axis)
        aside = minus(away, times(along, axis))
        if size(aside) < 1e-6 and size(cross(self.axis, axis)) < 1e-6:
            far = max(r for r, _ in self.profile)
        else:
            far = size(aside) + self.reach - self.radius
        self.cast = Shadow(origin, axis, dot(bottom, axis), dot(top, axis), far)
        return self.cast

    def moved(self, motion: Motion) -> "Wedge":
        same = object.__new__(Wedge)
        same.origin, same.middle = motion.point(self.origin), motion.point(self.middle)
        same.axis, same.towards = motion.direction(self.axis), motion.direction(self.towards)
        same.across = motion.direction(self.across)
        same.profile, same.half_angle, same.radius, same.inner = self.profile, self.half_angle, self.radius, self.inner
        same.cast = None
        same.low, same.high, same.hole = self.low, self.high, self.hole
        same.reach, same.error, same._cosine, same._sine = self.reach, self.error, self._cosine, self._sine
        return same

    def angles(self, axis: Axis, from_: Vector, across: Vector) -> tuple[float, float] | None:
        """Between which angles about a line it lies at most, or None where it may lie all round."""
        v = minus(self.middle, axis[0])
        ahead, aside, reach = dot(v, from_), dot(v, across), self.reach - self.radius
        away = hypot(ahead, aside)
        if reach >= away:
            return None
        middle, half = atan2(aside, ahead), asin(reach / away)
        return middle - half, middle + half


Piece = Hull | Wedge


def inner_side(profile: Polygon) -> tuple[Point, ...]:
    """The side of a convex profile that faces the axis, lowest along first.

    >>> inner_side(((5.0, 0.0), (9.0, 0.0), (9.0, 4.0), (7.0, 4.0)))
    ((5.0, 0.0), (7.0, 4.0))
    """
    first = min(profile, key=lambda point: (point[1], point[0]))
    last = max(profile, key=lambda point: (point[1], -point[0]))
    run, rise = last[0] - first[0], last[1] - first[1]
    facing = [p for p in profile if (p[1] - first[1]) * run - (p[0] - first[0]) * rise > 0]
    return (first, *sorted(facing, key=lambda point: point[1]), last)


def inner_radius(inner: tuple[Point, ...], along: float) -> float:
    """The radius of that side at a place along the axis; at its ends' beyond them.

    >>> inner_radius(((5.0, 0.0), (7.0, 4.0)), 2.0)
    6.0
    """
    if along <= inner[0][1]:
        return inner[0][0]
    for (r1, s1), (r2, s2) in pairwise(inner):
        if along <= s2:
            return r1 + (r2 - r1) * (along - s1) / (s2 - s1)
    return inner[-1][0]


def same_axis(first: Wedge, second: Wedge) -> bool:
    """Whether both turn about one line, to a millionth of a mm and of a radian."""
    away = minus(second.origin, first.origin)
    return size(cross(first.axis, second.axis)) < 1e-6 and size(cross(first.axis, away)) < 1e-6


def shared_direction(first: Wedge, second: Wedge) -> Vector | None:
    """A direction from their common axis in which both lie, or None."""
    between = acos(max(-1.0, min(1.0, dot(first.towards, second.towards))))
    if between > first.half_angle + second.half_angle:
        return None
    ahead, aside = dot(second.towards, first.towards), dot(second.towards, first.across)
    angle = atan2(aside, ahead)
    turned = max(-first.half_angle, min(first.half_angle, angle))
    return plus(times(cos(turned), first.towards), times(sin(turned), first.across))
