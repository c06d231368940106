"""The plain shapes that parts are described by, each where it stands in space. mm and radians.

`solid` makes one or several of them ready to be moved and compared.
"""

from math import cos, pi, radians, sin, tan
from typing import Protocol

from rules.measure.records import dataclass
from rules.solids.gap import Solid
from rules.solids.outline import Polygon, area, convex_pieces, edge_distance
from rules.solids.pieces import Corner, Hull, Piece, Wedge
from rules.solids.space import Vector, cross, minus, plus, size, square_to, times, unit


class Shape(Protocol):
    """Anything that is a union of pieces."""

    @property
    def pieces(self) -> tuple[Piece, ...]: ...


def solid(*shapes: Shape) -> Solid:
    """Shapes as one part that moves together. Raises ValueError for none.

    >>> from rules.solids.gap import gap
    >>> head = solid(Ball((0.0, 0.0, 0.0), 10.0), Rod((0.0, 0.0, 0.0), (0.0, 0.0, 50.0), 4.0))
    >>> round(gap(head, solid(Ball((0.0, 20.0, 50.0), 6.0))).distance, 3)
    10.0
    """
    return Solid.of(tuple(piece for shape in shapes for piece in shape.pieces))


@dataclass(frozen=True, slots=True)
class Ball:
    """A ball: a ball joint's or rod end's ball, a round joint housing.

    >>> from rules.solids.gap import gap
    >>> round(gap(solid(Ball((0.0, 0.0, 0.0), 10.0)), solid(Ball((30.0, 40.0, 0.0), 20.0))).distance, 3)
    20.0
    """

    centre: Vector
    radius: float

    @property
    def pieces(self) -> tuple[Piece, ...]:
        return (Hull((self.centre,), self.radius),)


@dataclass(frozen=True, slots=True)
class Rod:
    """A round rod with half-balls on its ends, which reach a radius beyond start and end: arm tubes, tie rods, relays.

    >>> from rules.solids.gap import gap
    >>> upper = solid(Rod((-200.0, 0.0, 30.0), (200.0, 0.0, 30.0), 12.0))
    >>> lower = solid(Rod((0.0, -200.0, 0.0), (0.0, 200.0, 0.0), 8.0))
    >>> round(gap(upper, lower).distance, 3)
    10.0
    """

    start: Vector
    end: Vector
    radius: float

    @property
    def pieces(self) -> tuple[Piece, ...]:
        return (Hull((self.start, self.end), self.radius),)


@dataclass(frozen=True, slots=True)
class Cylinder:
    """A round bar with flat ends: bolts, studs, heads turned round, shocks, cups. start and end differ.

    >>> from rules.solids.gap import gap
    >>> bolt = solid(Cylinder((0.0, 0.0, 0.0), (0.0, 0.0, 60.0), 6.0))
    >>> round(gap(bolt, solid(Ball((9.0, 0.0, 64.0), 1.0))).distance, 3)  # 3 beside the end's edge and 4 above it
    4.0
    """

    start: Vector
    end: Vector
    radius: float

    @property
    def pieces(self) -> tuple[Piece, ...]:
        run = minus(self.end, self.start)
        length = size(run)
        profile = ((0.0, 0.0), (self.radius, 0.0), (self.radius, length), (0.0, length))
        return Revolved(self.start, times(1 / length, run), profile).pieces


@dataclass(frozen=True, slots=True)
class Revolved:
    """A profile turned about an axis: tyre, barrel, lips, rotor and hat, hub and flange; in part, a caliper round a rotor.

    profile: corners (radius, along), mm, radius 0 or more, in order either way round; along is from origin in the axis's
    direction. It may be hollow and need not be convex. One or two corners are a circle or a line, for `rounding`.
    rounding: mm, by which all of it is grown, so that its corners are round: a tyre's shoulder.
    towards, half_angle: for a part turn, the direction of its middle, square to the axis, and how far it goes to each side,
    at most pi. All arcs are exact.

    >>> from rules.solids.gap import gap
    >>> section = ((240.0, -80.0), (340.0, -80.0), (340.0, 80.0), (240.0, 80.0))
    >>> tyre = solid(Revolved((0.0, 0.0, 0.0), (0.0, 1.0, 0.0), section, rounding=40.0))
    >>> round(gap(tyre, solid(Ball((370.0, 120.0, 0.0), 1.0))).distance, 3)  # 30 and 40 from the shoulder's centre: 50 - 40 - 1
    9.0
    >>> round(gap(tyre, solid(Ball((0.0, 0.0, 150.0), 20.0))).distance, 3)  # inside the hole: 200 - 150 - 20
    30.0
    """

    origin: Vector
    axis: Vector
    profile: Polygon
    rounding: float = 0.0
    towards: Vector | None = None
    half_angle: float = pi

    def __post_init__(self) -> None:
        if min(radius for radius, _ in self.profile) < 0:
            raise ValueError("a profile lies on one side of its axis: no radius below 0")
        if not 0 <= self.half_angle <= pi:
            raise ValueError("a part turn goes from 0 to pi to each side")

    @property
    def pieces(self) -> tuple[Piece, ...]:
        towards = self.towards or square_to(self.axis)
        across = cross(self.axis, towards)
        half = self.half_angle
        whole = [
            Wedge(self.origin, self.axis, towards, across, profile, half, self.rounding)
            for profile in convex_pieces(self.profile)
        ]
        if pi / 2 < half < pi:  # two stretches of at most half a turn
            return tuple(part for wedge in whole for part in wedge.halves())
        return tuple(whole)


@dataclass(frozen=True, slots=True)
class Bore:
    """A round hole: its middle in the outline's plane and its radius, mm."""

    middle: tuple[float, float]
    radius: float


@dataclass(frozen=True, slots=True)
class Prism:
    """An outline in a plane, pushed straight along the plane's normal: plates, lugs, blocks, hexagons, walls of a tube.

    origin: where the outline's (0, 0) is. across, up: the outline's directions, square to each other, of length 1; the
    normal is across x up. outline: corners in order, either way round; simple, not necessarily convex. low, high: from
    where to where along the normal, low < high. bore: a hole right through; the whole outline must be seen from its middle.

    >>> from rules.solids.gap import gap
    >>> square = ((-50.0, -50.0), (50.0, -50.0), (50.0, 50.0), (-50.0, 50.0))
    >>> plate = solid(Prism((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 0.0, 1.0), square, -4.0, 4.0, Bore((0.0, 0.0), 30.0)))
    >>> round(gap(plate, solid(Ball((0.0, 0.0, 10.0), 5.0))).distance, 3)  # 30 - 10 - 5
    15.0
    """

    origin: Vector
    across: Vector
    up: Vector
    outline: Polygon
    low: float
    high: float
    bore: Bore | None = None

    @property
    def normal(self) -> Vector:
        return cross(self.across, self.up)

    @property
    def pieces(self) -> tuple[Piece, ...]:
        if self.bore:
            return self._round_the_bore(self.bore)
        normal = self.normal
        return tuple(
            Hull(
                tuple(
                    plus(self.origin, times(x, self.across), times(y, self.up), times(level, normal))
                    for x, y in outline
                    for level in (self.low, self.high)
                )
            )
            for outline in convex_pieces(self.outline)
        )

    def _round_the_bore(self, bore: Bore) -> tuple[Piece, ...]:
        """A ring from the bore to the circle that just fits in the outline, and what is left beyond it at each edge."""
        x0, y0 = bore.middle
        outline = tuple((x - x0, y - y0) for x, y in self.outline)
        if area(outline) < 0:
            outline = outline[::-1]
        edges = list(zip(outline, outline[1:] + outline[:1], strict=True))
        if any(x1 * y2 - y1 * x2 <= 0 for (x1, y1), (x2, y2) in edges):
            raise ValueError("from the middle of a bore the whole outline must be seen")
        circle = min(edge_distance((0.0, 0.0), start, end) for start, end in edges)
        if circle <= bore.radius:
            raise ValueError("a bore lies inside its outline")
        middle, normal = plus(self.origin, times(x0, self.across), times(y0, self.up)), self.normal
        low, high = self.low, self.high
        ring = ((bore.radius, low), (circle, low), (circle, high), (bore.radius, high))
        frame = (middle, self.across, self.up, normal)
        corners = (Corner.cut(frame, start, end, (low, high), circle) for start, end in edges)
        return (Wedge(middle, normal, self.across, self.up, ring, pi), *corners)


def ring(origin: Vector, axis: Vector, inner: float, outer: float, low: float, high: float) -> Revolved:
    """Everything from one radius to another and from one place along the axis to another: a tube, a rotor, a barrel."""
    return Revolved(origin, axis, ((inner, low), (outer, low), (outer, high), (inner, high)))


def block(middle: Vector, across: Vector, up: Vector, width: float, height: float, thickness: float) -> Prism:
    """A rectangular block round its middle; width is along across, height along up, thickness square to both.

    >>> block((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 60.0, 40.0, 6.0).outline[2]
    (30.0, 20.0)
    """
    x, y = width / 2, height / 2
    return Prism(middle, across, up, ((-x, -y), (x, -y), (x, y), (-x, y)), -thickness / 2, thickness / 2)


def hexagon(start: Vector, end: Vector, across_flats: float, flat: Vector | None = None) -> Prism:
    """A hexagon bar from start to end: a bolt's head or a nut. flat: square to it, towards the middle of one flat.

    >>> hexagon((0.0, 0.0, 0.0), (0.0, 0.0, 8.0), 17.0, (1.0, 0.0, 0.0)).outline[0]
    (8.5, 4.907477288111819)
    """
    run = minus(end, start)
    axis = unit(run)
    across = flat or square_to(axis)
    half = across_flats / 2
    corner = half / cos(radians(30))
    outline = tuple((corner * cos(radians(a)), corner * sin(radians(a))) for a in range(30, 390, 60))
    outline = ((half, half * tan(radians(30))), *outline[1:])
    return Prism(start, across, cross(axis, across), outline, 0.0, size(run))


def box_tube(
    start: Vector, end: Vector, across: Vector, width: float, height: float, wall: float
) -> tuple[Prism, Prism, Prism, Prism]:
    """A rectangular tube, open at both ends, as its four walls. across: square to it; width is along it. wall < half of both.

    >>> from rules.solids.gap import gap
    >>> beam = box_tube((0.0, 0.0, 0.0), (0.0, 0.0, 200.0), (1.0, 0.0, 0.0), 60.0, 40.0, 4.0)
    >>> round(gap(solid(*beam), solid(Ball((5.0, 0.0, 100.0), 10.0))).distance, 3)  # 20 - 4 - 10 to the nearer walls
    6.0
    """
    run = minus(end, start)
    axis, length = unit(run), size(run)
    up = cross(axis, across)
    x, y = width / 2, height / 2

    def wall_of(left: float, right: float, bottom: float, top: float) -> Prism:
        return Prism(start, across, up, ((left, bottom), (right, bottom), (right, top), (left, top)), 0.0, length)

    return (
        wall_of(-x, x, y - wall, y),
        wall_of(-x, x, -y, wall - y),
        wall_of(-x, wall - x, -y, y),
        wall_of(x - wall, x, -y, y),
    )
