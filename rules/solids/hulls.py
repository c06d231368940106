"""How far two convex pieces are apart, or how far inside each other. mm.

Both work on the difference of the pieces, the set of all vectors from a point of b to a point of a: it holds the origin
exactly where the pieces share a point, and its farthest point in a direction is known from theirs. `distance` walks towards
the origin from one simplex of such points to the next (the method of Gilbert, Johnson and Keerthi, 1988); `depth` grows a
polyhedron inside the set until its nearest face is the set's own (the expanding polytope of van den Bergen, 2001).
"""

from math import inf, sqrt

from rules.measure.records import NamedTuple
from rules.solids.pieces import Piece
from rules.solids.space import Vector, cross, dot, minus, size, square_to, times, unit

CLOSE = 0.002
"""mm; distances are found to this."""
DEPTH_CLOSE = 0.01
"""mm; depths are found to this, or to a part of them where that is more."""
DEPTH_PART = 0.03
TOUCHING = 1e-6
"""mm; what is less apart shares a point."""
STEPS = 100

Vertex = tuple[Vector, Vector, Vector]
"""A point of the difference, and the points of a and b it comes from."""

Weighed = tuple[list[Vertex], list[float]]
"""A place of the difference: the corners it lies between, and their weights."""


class HullGap(NamedTuple):
    """Two convex hulls without their radii: between which bounds their distance lies, and at which points. mm.

    Minus in each other: b has to be moved by that much to be clear of a. way: of length 1, the way b is, or has to go, from a.
    """

    least: float
    most: float
    on_a: Vector
    on_b: Vector
    way: Vector


def vertex(a: Piece, b: Piece, direction: Vector) -> Vertex:
    """The farthest point of the difference in a direction."""
    x, y, z = direction
    on_a, on_b = a.support(x, y, z), b.support(-x, -y, -z)
    return (on_a[0] - on_b[0], on_a[1] - on_b[1], on_a[2] - on_b[2]), on_a, on_b


def _on_line(p: Vertex, q: Vertex) -> Weighed:
    """The part of a line that is nearest to the origin: the corners it rests on and their weights."""
    a, b = p[0], q[0]
    run = minus(b, a)
    length_squared, along = dot(run, run), -dot(a, run)
    if along <= 0:
        return [p], [1.0]
    if along >= length_squared:
        return [q], [1.0]
    part = along / length_squared
    return [p, q], [1 - part, part]


def _on_triangle(p: Vertex, q: Vertex, r: Vertex) -> Weighed:
    """The same of a triangle; which of its seven regions holds the origin, by Ericson, Real-Time Collision Detection, 5.1.5."""
    (ax, ay, az), (bx, by, bz), (cx, cy, cz) = p[0], q[0], r[0]
    ux, uy, uz, vx, vy, vz = bx - ax, by - ay, bz - az, cx - ax, cy - ay, cz - az
    d1, d2 = -(ux * ax + uy * ay + uz * az), -(vx * ax + vy * ay + vz * az)
    if d1 <= 0 and d2 <= 0:
        return [p], [1.0]
    d3, d4 = -(ux * bx + uy * by + uz * bz), -(vx * bx + vy * by + vz * bz)
    if d3 >= 0 and d4 <= d3:
        return [q], [1.0]
    over_c = d1 * d4 - d3 * d2
    if over_c <= 0 <= d1 and d3 <= 0:
        return _on_line(p, q)
    d5, d6 = -(ux * cx + uy * cy + uz * cz), -(vx * cx + vy * cy + vz * cz)
    if d6 >= 0 and d5 <= d6:
        return [r], [1.0]
    over_b = d5 * d2 - d1 * d6
    if over_b <= 0 <= d2 and d6 <= 0:
        return _on_line(p, r)
    over_a = d3 * d6 - d5 * d4
    if over_a <= 0 and d4 >= d3 and d5 >= d6:
        return _on_line(q, r)
    whole = over_a + over_b + over_c
    if whole <= 0:
        return _on_line(p, q)
    return [p, q, r], [over_a / whole, over_b / whole, over_c / whole]


def _mixed(corners: list[Vertex], weights: list[float], which: int) -> Vector:
    x = y = z = 0.0
    for c, weight in zip(corners, weights, strict=True):
        point = c[which]
        x, y, z = x + weight * point[0], y + weight * point[1], z + weight * point[2]
    return x, y, z


def _nearest_of(places: list[Weighed]) -> Weighed:
    """Which of several places is nearest to the origin."""
    return min(places, key=lambda place: size(_mixed(place[0], place[1], 0)))


def _nearest(corners: list[Vertex]) -> Weighed:
    """The nearest place of a simplex to the origin; all four corners, with no weights, where the origin is inside."""
    if len(corners) == 1:
        return corners, [1.0]
    if len(corners) == 2:
        return _on_line(*corners)
    if len(corners) == 3:
        return _on_triangle(*corners)
    p, q, r, s = corners
    best: Weighed | None = None
    least = inf
    for one, two, three, other in ((p, q, r, s), (p, q, s, r), (p, r, s, q), (q, r, s, p)):
        normal = cross(minus(two[0], one[0]), minus(three[0], one[0]))
        here, there = -dot(normal, one[0]), dot(normal, minus(other[0], one[0]))
        if here * there > 0:  # the origin is on the inner side of this face
            continue
        found = _on_triangle(one, two, three)
        v = _mixed(*found, 0)
        if dot(v, v) < least:
            best, least = found, dot(v, v)
    return best or (corners, [])


def distance(a: Piece, b: Piece, beyond: float = inf) -> HullGap | None:
    """How far apart two hulls are without their radii, to CLOSE; None where one lies in the other.

    Found to be more than `beyond`, the search ends with what is known then.
    """
    m, n = a.middle, b.middle
    x, y, z = m[0] - n[0], m[1] - n[1], m[2] - n[2]
    away = sqrt(x * x + y * y + z * z)
    if away < 1e-9:
        x, away = 1.0, 1.0
    least, most = -inf, inf
    corners: list[Vertex] = []
    weights: list[float] = []
    for _ in range(STEPS):
        on_a, on_b = a.support(-x, -y, -z), b.support(x, y, z)
        new = (on_a[0] - on_b[0], on_a[1] - on_b[1], on_a[2] - on_b[2])
        # Nothing of the difference is nearer the origin than the plane through its farthest point towards it.
        plane = (x * new[0] + y * new[1] + z * new[2]) / away
        least = max(least, plane)
        if least > beyond and least > 0:
            if not corners:
                corners, weights = [(new, on_a, on_b)], [1.0]
                most = sqrt(new[0] * new[0] + new[1] * new[1] + new[2] * new[2])
            break
        if most - least < CLOSE:
            break
        tried, tried_weights = _nearest([*corners, (new, on_a, on_b)])
        if len(tried) == 4:
            return None
        x, y, z = _mixed(tried, tried_weights, 0)
        nearer = sqrt(x * x + y * y + z * z)
        if nearer >= most:  # no progress that rounding can show
            break
        corners, weights, most, away = tried, tried_weights, nearer, nearer
        if nearer < TOUCHING:
            return None
    on_a, on_b = _mixed(corners, weights, 1), _mixed(corners, weights, 2)
    return HullGap(max(least, 0.0), most, on_a, on_b, times(-1 / away, (x, y, z)))


Face = tuple[float, Vector, int, int, int]
"""How far its plane is from the origin, its outward direction, its corners counter-clockwise seen from outside."""


def _face(corners: list[Vertex], i: int, j: int, k: int) -> Face | None:
    a = corners[i][0]
    normal = cross(minus(corners[j][0], a), minus(corners[k][0], a))
    if dot(normal, normal) < 1e-18:
        return None
    normal = unit(normal)
    return dot(normal, a), normal, i, j, k


def _tetrahedron(a: Piece, b: Piece) -> list[Vertex] | Vector:
    """Four corners of the difference that are not in one plane; or the direction in which it is flat."""
    first = vertex(a, b, (1.0, 0.0, 0.0))
    second = max(
        (
            vertex(a, b, d)
            for d in ((-1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, -1.0, 0.0), (0.0, 0.0, 1.0), (0.0, 0.0, -1.0))
        ),
        key=lambda c: dot(minus(c[0], first[0]), minus(c[0], first[0])),
    )
    run = minus(second[0], first[0])
    if dot(run, run) < 1e-12:
        return (1.0, 0.0, 0.0)
    line = unit(run)
    aside = square_to(line)
    across = cross(line, aside)

    def off_line(c: Vertex) -> float:
        out = cross(line, minus(c[0], first[0]))
        return dot(out, out)

    third = max((vertex(a, b, d) for d in (aside, times(-1, aside), across, times(-1, across))), key=off_line)
    if off_line(third) < 1e-12:
        return aside
    normal = unit(cross(run, minus(third[0], first[0])))
    fourth = max(
        (vertex(a, b, d) for d in (normal, times(-1, normal))), key=lambda c: abs(dot(normal, minus(c[0], first[0])))
    )
    height = dot(normal, minus(fourth[0], first[0]))
    if abs(height) < 1e-6:
        return normal
    return [first, second, third, fourth] if height < 0 else [first, third, second, fourth]


def _crossing(a: Piece, b: Piece) -> tuple[Vector, Vector]:
    """A point of each where two hulls of a flat difference cross: two lines, or a line and a point on it."""
    ends_a, ends_b = ((p.support(1.0, 0.6, 0.3), p.support(-1.0, -0.6, -0.3)) for p in (a, b))
    corners = [(minus(p, q), p, q) for p in ends_a for q in ends_b]
    there = _nearest_of([_on_triangle(*corners[:3]), _on_triangle(*corners[1:])])
    return _mixed(*there, 1), _mixed(*there, 2)


def depth(a: Piece, b: Piece, steps: int = STEPS, enough: float = inf) -> HullGap:
    """How far two hulls that share a point are in each other without their radii: the shortest shift that parts them.

    `most` is minus that length, not too much by at most DEPTH_CLOSE or DEPTH_PART of it. Found to be more than `enough`, or no
    more, the search ends with what is known then.
    """
    start = _tetrahedron(a, b)
    if isinstance(start, tuple):  # a flat difference: any shift out of its plane parts them
        return HullGap(0.0, 0.0, *_crossing(a, b), start)
    corners = start
    faces = [f for ijk in ((0, 1, 2), (0, 3, 1), (1, 3, 2), (2, 3, 0)) if (f := _face(corners, *ijk))]
    shortest = inf
    for _ in range(steps):
        offset, normal = min(faces)[:2]
        if offset > enough or shortest <= enough < inf:
            break
        new = vertex(a, b, normal)
        reach = dot(normal, new[0])
        shortest = min(shortest, reach)
        if shortest - offset < max(DEPTH_CLOSE, DEPTH_PART * shortest):
            break
        seen = [f for f in faces if dot(f[1], new[0]) - f[0] > 1e-9]
        edges = {edge for _, _, i, j, k in seen for edge in ((i, j), (j, k), (k, i))}
        corners.append(new)
        last = len(corners) - 1
        grown = [_face(corners, i, j, last) for i, j in edges if (j, i) not in edges]
        whole = [f for f in grown if f]
        if len(whole) < len(grown):
            break
        faces = [f for f in faces if f not in seen] + whole
    offset, normal = min(faces)[:2]
    foot = times(offset, normal)
    flat = [
        _on_triangle(*((minus(corners[n][0], foot), *corners[n][1:]) for n in face[2:]))
        for face in faces
        if face[0] < offset + TOUCHING  # a facet may be several triangles; the foot is in one of them
    ]
    there = _nearest_of(flat)
    return HullGap(-shortest, -min(offset, shortest), _mixed(*there, 1), _mixed(*there, 2), normal)
