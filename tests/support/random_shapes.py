"""Random shapes of every kind, for checks against general mesh libraries."""

from collections.abc import Callable
from math import cos, pi, sin
from random import Random

import manifold3d

from rules.solids.shapes import Ball, Bore, Cylinder, Prism, Revolved, Rod, Shape, box_tube, hexagon
from rules.solids.space import Vector, cross, plus, square_to, times, unit


class Square(Random):
    """Everything along the axes and at round figures, as parts of a corner are: faces parallel, axes in common."""


def direction(r: Random) -> Vector:
    if isinstance(r, Square):
        return r.choice(((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, -1.0, 0.0), (0.0, 0.0, 1.0)))
    return unit((r.gauss(0, 1), r.gauss(0, 1), r.gauss(0, 1)))


def somewhere(r: Random, spread: float = 120.0) -> Vector:
    if isinstance(r, Square):
        return (r.choice((0.0, 0.0, 50.0)), r.randrange(-200, 201, 40) + 0.5, r.choice((0.0, 0.0, -100.0)))
    return (r.uniform(-spread, spread), r.uniform(-spread, spread), r.uniform(-spread, spread))


def plane(r: Random) -> tuple[Vector, Vector]:
    normal = direction(r)
    across = square_to(normal)
    return across, cross(normal, across)


Make = Callable[[Random], tuple[Shape, ...]]


def ball(r: Random) -> tuple[Shape, ...]:
    return (Ball(somewhere(r), r.uniform(5, 40)),)


def rod(r: Random) -> tuple[Shape, ...]:
    start = somewhere(r, 200.0)
    return (Rod(start, plus(start, times(r.uniform(50, 400), direction(r))), r.uniform(5, 25)),)


def cylinder(r: Random) -> tuple[Shape, ...]:
    start = somewhere(r)
    return (Cylinder(start, plus(start, times(r.uniform(5, 150), direction(r))), r.uniform(4, 60)),)


def hollow_ring(r: Random) -> tuple[Shape, ...]:
    inner, low = r.uniform(30, 120), r.uniform(-50, 0)
    outer, high = inner + r.uniform(5, 60), low + r.uniform(5, 60)
    return (Revolved(somewhere(r), direction(r), ((inner, low), (outer, low), (outer, high), (inner, high))),)


def hat(r: Random) -> tuple[Shape, ...]:
    hub, deep = r.uniform(25, 35), r.uniform(30, 60)
    profile = (
        (hub, 0.0),
        (80.0, 0.0),
        (80.0, deep),
        (130.0, deep),
        (130.0, deep + 20),
        (74.0, deep + 20),
        (74.0, 6.0),
        (hub, 6.0),
    )
    return (Revolved(somewhere(r), direction(r), profile),)


def round_shouldered(r: Random) -> tuple[Shape, ...]:
    rounding, wide = r.uniform(10, 40), r.uniform(10, 60)
    profile = ((100.0, -wide), (160.0, -wide), (170.0, 0.0), (160.0, wide), (100.0, wide))
    return (Revolved(somewhere(r), direction(r), profile, rounding),)


def doughnut(r: Random) -> tuple[Shape, ...]:
    return (Revolved(somewhere(r), direction(r), ((r.uniform(50, 150), 0.0),), r.uniform(5, 40)),)


def sector(r: Random) -> tuple[Shape, ...]:
    axis = direction(r)
    inner = r.uniform(20, 100)
    profile = (
        (inner, -30.0),
        (inner + 60, -30.0),
        (inner + 60, 30.0),
        (inner + 40, 30.0),
        (inner + 20, 10.0),
        (inner, 20.0),
    )
    return (Revolved(somewhere(r), axis, profile, 0.0, square_to(axis), r.uniform(0.2, 3.0)),)


def convex_prism(r: Random) -> tuple[Shape, ...]:
    count = r.randint(3, 7)
    outline = tuple((60 * cos(2 * pi * i / count), r.uniform(30, 90) * sin(2 * pi * i / count)) for i in range(count))
    points = manifold3d.CrossSection.hull_points(outline).to_polygons()[0]
    return (Prism(somewhere(r), *plane(r), tuple((float(x), float(y)) for x, y in points), -10.0, r.uniform(-5, 60)),)


def bent_prism(r: Random) -> tuple[Shape, ...]:
    a, b = r.uniform(10, 40), r.uniform(10, 40)
    outline = ((0.0, 0.0), (100.0, 0.0), (100.0, a), (b, a + 5), (b, 90.0), (0.0, 90.0))
    return (Prism(somewhere(r), *plane(r), outline, 0.0, r.uniform(3, 40)),)


def bored_plate(r: Random) -> tuple[Shape, ...]:
    x, y = r.uniform(60, 110), r.uniform(60, 110)
    outline = ((-x, -y), (x, -60.0), (x, y), (0.0, y + 30), (-x, y))
    bore = Bore((r.uniform(-5, 5), r.uniform(-5, 5)), r.uniform(20, 50))
    return (Prism(somewhere(r), *plane(r), outline, -5.0, r.uniform(0, 20), bore),)


def bolt(r: Random) -> tuple[Shape, ...]:
    start, axis = somewhere(r), direction(r)
    under = plus(start, times(10.0, axis))
    return (hexagon(start, under, r.uniform(12, 36)), Cylinder(under, plus(under, times(80.0, axis)), r.uniform(4, 9)))


def box(r: Random) -> tuple[Shape, ...]:
    start, axis = somewhere(r), direction(r)
    return box_tube(start, plus(start, times(r.uniform(100, 300), axis)), square_to(axis), 80.0, 120.0, r.uniform(2, 8))


KINDS: tuple[Make, ...] = (
    ball, rod, cylinder, hollow_ring, hat, round_shouldered, doughnut, sector, convex_prism, bent_prism, bored_plate, bolt, box,
)  # fmt: skip
