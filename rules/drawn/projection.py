"""What a solid looks like in a view, and what a plane cuts of it: any shape to flat patches. mm and radians.

Exact but for round edges, which are drawn with corners no further than `fine` from true ones.
"""

from collections.abc import Iterable, Iterator
from functools import lru_cache
from itertools import combinations, pairwise
from math import atan2, ceil, cos, hypot, pi, sin, sqrt

from rules.drawn.patches import EdgeLine, Patch, circle, common, corners_of_circle, hull, turns
from rules.drawn.views import Viewpoint
from rules.measure.outline import Point
from rules.measure.records import replace
from rules.measure.vectors import Vector, cross, dot, minus, plus, times
from rules.solids.outline import Polygon, convex_pieces
from rules.solids.pieces import Hull, Piece, Wedge, inner_side
from rules.solids.shapes import Prism, Shape

FINE = 0.05
"""mm; drawn so fine, a round edge is as good as round on paper."""
ALIGNED = 1e-9
Substance = Shape | Piece


def seen(what: Iterable[Substance], view: Viewpoint, fine: float = FINE, *, closed: bool = False) -> tuple[Patch, ...]:
    """All that one sees of shapes, whatever lies behind what. closed: what one could look through counts as filled.

    >>> from rules.drawn.views import FROM_ABOVE
    >>> from rules.solids.shapes import block
    >>> seen([block((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 60.0, 40.0, 6.0)], FROM_ABOVE)[0].outer
    ((-20.0, -30.0), (20.0, -30.0), (20.0, 30.0), (-20.0, 30.0))
    """
    return _whole(patch for one in _pieces(what) for patch in _seen(one, view, fine, closed))


def cut(what: Iterable[Substance], view: Viewpoint, fine: float = FINE) -> tuple[Patch, ...]:
    """What the picture's plane, through the view's origin, cuts of shapes.

    >>> from rules.drawn.views import FROM_FRONT
    >>> from rules.solids.shapes import ring
    >>> upper, lower = cut([ring((0.0, 0.0, 0.0), (0.0, 1.0, 0.0), 90.0, 140.0, -10.0, 10.0)], FROM_FRONT)
    >>> upper.outer
    ((-10.0, 90.0), (10.0, 90.0), (10.0, 140.0), (-10.0, 140.0))
    """
    return _whole(patch for one in _pieces(what) for patch in _cut(one, view, fine))


def straightened(what: Iterable[Substance], fine: float = FINE) -> tuple[Piece, ...]:
    """Shapes as pieces that are quick to look at: bores are left out, and what goes part of the way round is straight
    from place to place."""
    found: list[Piece] = []
    for one in what:
        if isinstance(one, Prism):
            one = replace(one, bore=None)
        for piece in (one,) if isinstance(one, Hull | Wedge) else one.pieces:
            if isinstance(piece, Wedge) and not piece.full:
                found += (
                    Hull(tuple(points))
                    for points in _stretches(piece, _rounded(piece.profile, piece.radius, fine), fine)
                )
            else:
                found.append(piece)
    return tuple(found)


def _whole(patches: Iterable[Patch]) -> tuple[Patch, ...]:
    return tuple(patch for patch in patches if len(patch.outer) > 2)


def _pieces(what: Iterable[Substance]) -> Iterator[Hull | Wedge | Prism]:
    for one in what:
        if isinstance(one, Hull | Wedge) or (isinstance(one, Prism) and one.bore):
            yield one
        else:
            yield from one.pieces


# Seen


def _seen(one: Hull | Wedge | Prism, view: Viewpoint, fine: float, closed: bool) -> Iterator[Patch]:
    if isinstance(one, Hull):
        yield Patch(_grown([view.flat(point) for point in one.points], one.radius, fine))
    elif isinstance(one, Prism):
        yield from _bored(one, view, fine)
    else:
        yield from _turned(one, view, fine, closed)


def _grown(points: list[Point], radius: float, fine: float) -> EdgeLine:
    """The outline round points, each with a circle about it."""
    if radius > 0:
        points = [corner for point in points for corner in circle(point, radius, fine)]
    return hull(points)


def _bored(prism: Prism, view: Viewpoint, fine: float) -> Iterator[Patch]:
    bore = prism.bore
    assert bore
    frame = (prism.origin, prism.across, prism.up, prism.normal)
    rims = [_ring(frame, bore.middle, level, bore.radius, view, fine) for level in (prism.low, prism.high)]
    hole = common(*rims) if all(len(rim) > 2 for rim in rims) else ()
    for outline in convex_pieces(prism.outline):
        corners = [
            view.flat(plus(prism.origin, times(x, prism.across), times(y, prism.up), times(level, prism.normal)))
            for x, y in outline
            for level in (prism.low, prism.high)
        ]
        yield Patch(hull(corners), hole)


Axes = tuple[Vector, Vector, Vector, Vector]
"""An origin, two directions in a plane and the one square to it."""


def _ring(frame: Axes, middle: Point, level: float, radius: float, view: Viewpoint, fine: float) -> EdgeLine:
    """A circle in space as it looks."""
    origin, across, up, normal = frame
    centre = plus(origin, times(middle[0], across), times(middle[1], up), times(level, normal))
    (x, y), (ax, ay), (ux, uy) = view.flat(centre), _way(view, across), _way(view, up)
    around = turns(corners_of_circle(radius, fine))
    return hull((x + radius * (c * ax + s * ux), y + radius * (c * ay + s * uy)) for c, s in around)


def _way(view: Viewpoint, direction: Vector) -> Point:
    return dot(direction, view.right), dot(direction, view.up)


def _frame(wedge: Wedge) -> Axes:
    return wedge.origin, wedge.towards, wedge.across, wedge.axis


def _turned(wedge: Wedge, view: Viewpoint, fine: float, closed: bool) -> Iterator[Patch]:
    profile = _rounded(wedge.profile, wedge.radius, fine)
    facing = abs(dot(wedge.axis, view.eye))
    if facing > 1 - ALIGNED and not closed:
        yield _sector(wedge, min(r for r, _ in profile), max(r for r, _ in profile), view, fine)
    elif facing < ALIGNED or wedge.full:
        # Seen from beside its axis nothing of it is hollow; else one may look through it.
        frame, (start, end) = _frame(wedge), (-wedge.half_angle, wedge.half_angle)
        if wedge.full:  # what faces the axis is behind the rest
            profile = _outer_side(profile)
        arcs = {r: _arc(r, start, end, wedge, view, fine) for r, _ in profile}
        (x, y), (ax, ay) = view.flat(frame[0]), _way(view, wedge.axis)
        outer = hull((x + s * ax + px, y + s * ay + py) for r, s in profile for px, py in arcs[r])
        hole: EdgeLine = ()
        if wedge.full and facing >= ALIGNED and not closed:
            inner = inner_side(_rounded(wedge.profile, wedge.radius, fine))
            hole = _ring(frame, (0.0, 0.0), inner[0][1], inner[0][0], view, fine)
            for r, s in inner[1:]:
                hole = common(hole, _ring(frame, (0.0, 0.0), s, r, view, fine))
        yield Patch(outer, hole)
    else:
        for points in _stretches(wedge, profile, fine):
            yield Patch(hull(map(view.flat, points)))


@lru_cache(maxsize=256)
def _outer_side(profile: EdgeLine) -> EdgeLine:
    """A convex profile without the corners that lie between others as far out or further."""
    facing = set(inner_side(profile)[1:-1])
    return tuple(corner for corner in profile if corner not in facing)


def _arc(radius: float, start: float, end: float, wedge: Wedge, view: Viewpoint, fine: float) -> list[Point]:
    """Places of an arc about the axis as they look, from the axis."""
    (tx, ty), (ax, ay) = _way(view, wedge.towards), _way(view, wedge.across)
    count = max(1, ceil(corners_of_circle(radius, fine) * (end - start) / (2 * pi)))
    if abs(dot(wedge.axis, view.eye)) < ALIGNED:  # all of it lies in one line: its ends, and where it turns back
        out = [angle for angle in _turning_back(tx, ty, ax, ay) if start <= angle <= end]
        angles = [start, end, *out]
    else:
        angles = [start + (end - start) * step / count for step in range(count + 1)]
    return [
        (radius * (cos(angle) * tx + sin(angle) * ax), radius * (cos(angle) * ty + sin(angle) * ay)) for angle in angles
    ]


def _turning_back(tx: float, ty: float, ax: float, ay: float) -> list[float]:
    """The angles at which an arc seen from its own plane turns back."""
    first = atan2(ax, tx) if hypot(ax, tx) > hypot(ay, ty) else atan2(ay, ty)
    return [first, first - pi if first > 0 else first + pi]


def _sector(wedge: Wedge, inner: float, outer: float, view: Viewpoint, fine: float) -> Patch:
    """A ring, or a sector of one, seen along its axis."""
    frame = _frame(wedge)
    hole = _ring(frame, (0.0, 0.0), 0.0, inner, view, fine) if inner > 0 else ()
    if wedge.full:
        return Patch(_ring(frame, (0.0, 0.0), 0.0, outer, view, fine), hole)
    middle = view.flat(wedge.origin)
    arc = _arc(outer, -wedge.half_angle, wedge.half_angle, wedge, view, fine)
    return Patch(hull([middle, *((middle[0] + x, middle[1] + y) for x, y in arc)]), hole)


def _stretches(wedge: Wedge, profile: EdgeLine, fine: float) -> Iterator[list[Vector]]:
    """A part turn as convex pieces, each between two angles near each other: their corners."""
    outer = max(r for r, _ in profile)
    count = max(1, ceil(corners_of_circle(outer, fine) * wedge.half_angle / pi))
    ends = []
    for step in range(count + 1):
        angle = wedge.half_angle * (2 * step / count - 1)
        out = plus(times(cos(angle), wedge.towards), times(sin(angle), wedge.across))
        ends.append([plus(wedge.origin, times(r, out), times(s, wedge.axis)) for r, s in profile])
    for one, other in pairwise(ends):
        yield one + other


@lru_cache(maxsize=64)
def _rounded(profile: Polygon, radius: float, fine: float) -> EdgeLine:
    """A profile grown all round; it stays on its side of the axis."""
    if radius <= 0:
        return profile
    return tuple((max(0.0, r), s) for r, s in _grown(list(profile), radius, fine))


# Cut


def _cut(one: Hull | Wedge | Prism, view: Viewpoint, fine: float) -> Iterator[Patch]:
    if isinstance(one, Hull):
        yield Patch(_slice_of_hull(one, view, fine))
    elif isinstance(one, Prism):
        yield from _cut_bored(one, view, fine)
    else:
        yield from _cut_turned(one, view, fine)


def _slice_of_hull(piece: Hull, view: Viewpoint, fine: float) -> EdgeLine:
    if piece.radius <= 0:
        return _slice(piece.points, view)
    start, end = piece.points[0], piece.points[-1]
    here, there = view.depth(start), view.depth(end)
    if abs(there - here) < ALIGNED:
        low, high = (0.0, 1.0) if abs(here) < piece.radius else (0.0, -1.0)
    else:  # where the plane comes within the radius
        ends = sorted((way * piece.radius - here) / (there - here) for way in (-1, 1))
        low, high = max(0.0, ends[0]), min(1.0, ends[1])
    if high < low:
        return ()
    points: list[Point] = []
    steps = 1 if abs(there - here) < ALIGNED else 32
    for step in range(steps + 1):
        share = low + (high - low) * step / steps
        at = plus(start, times(share, minus(end, start)))
        radius = sqrt(max(0.0, piece.radius**2 - view.depth(at) ** 2))
        points += circle(view.flat(at), radius, fine)
    return hull(points)


def _slice(points: Iterable[Vector], view: Viewpoint) -> EdgeLine:
    """What the plane cuts of the hull of points."""
    places = [(view.flat(point), view.depth(point)) for point in points]
    depths = [depth for _, depth in places]
    if not (min(depths) < ALIGNED and max(depths) > -ALIGNED):
        return ()
    found = [place for place, depth in places if abs(depth) <= ALIGNED]
    for ((x1, y1), here), ((x2, y2), there) in combinations(places, 2):
        if here * there < 0:
            share = here / (here - there)
            found.append((x1 + share * (x2 - x1), y1 + share * (y2 - y1)))
    return hull(found)


def _cut_bored(prism: Prism, view: Viewpoint, fine: float) -> Iterator[Patch]:
    bore, normal = prism.bore, prism.normal
    assert bore
    facing = dot(normal, view.eye)
    level = prism.low - 1.0
    if abs(facing) > 1 - ALIGNED:  # flat on the plate
        level = -view.depth(prism.origin) / facing
    if prism.low <= level <= prism.high:
        yield from _bored(prism, view, fine)
    elif abs(facing) < ALIGNED:
        middle = plus(prism.origin, times(bore.middle[0], prism.across), times(bore.middle[1], prism.up))
        off = abs(view.depth(middle))
        hole: EdgeLine = ()
        if off < bore.radius:
            along, half = cross(view.eye, normal), sqrt(bore.radius**2 - off**2)
            hole = hull(
                view.flat(plus(middle, times(side * half, along), times(depth, normal)))
                for side in (-1, 1)
                for depth in (prism.low - 1.0, prism.high + 1.0)
            )
        for piece in Prism(prism.origin, prism.across, prism.up, prism.outline, prism.low, prism.high).pieces:
            assert isinstance(piece, Hull)
            yield Patch(_slice(piece.points, view), hole)
    elif abs(facing) <= 1 - ALIGNED:
        for piece in prism.pieces:
            yield from _cut(piece, view, fine) if isinstance(piece, Wedge) else _cut_corner(piece, view, fine)


def _cut_corner(piece: Piece, view: Viewpoint, fine: float) -> Iterator[Patch]:
    parts = [piece]
    while any(part.error > fine for part in parts):
        parts = [half for part in parts for half in (part.halves() if part.error > fine else (part,))]
    for part in parts:
        assert isinstance(part, Hull)
        yield Patch(_slice(part.points, view))


def _cut_turned(wedge: Wedge, view: Viewpoint, fine: float) -> Iterator[Patch]:
    profile = _rounded(wedge.profile, wedge.radius, fine)
    facing, away = dot(wedge.axis, view.eye), view.depth(wedge.origin)
    if abs(facing) < ALIGNED and abs(away) < ALIGNED:  # along the axis: the profile itself, on either side
        out = cross(view.eye, wedge.axis)
        for way in (1.0, -1.0):
            spoke = times(way, out)
            if wedge.full or dot(spoke, wedge.towards) >= cos(wedge.half_angle) - ALIGNED:
                yield Patch(
                    hull(view.flat(plus(wedge.origin, times(r, spoke), times(s, wedge.axis))) for r, s in profile)
                )
    elif abs(facing) > 1 - ALIGNED:  # square to the axis
        radii = _radii_at(profile, -away / facing)
        if radii and radii[1] - radii[0] > ALIGNED:
            yield _sector(wedge, *radii, view, fine)
    elif abs(view.depth(wedge.middle)) <= wedge.reach:
        for part in _quarters(wedge) if wedge.full else (wedge,):
            for points in _stretches(part, profile, fine):
                yield Patch(_slice(points, view))


def _quarters(wedge: Wedge) -> Iterator[Wedge]:
    for quarter in range(4):
        yield wedge.stretch(quarter * pi / 2, (quarter + 1) * pi / 2)


def _radii_at(profile: EdgeLine, along: float) -> tuple[float, float] | None:
    """From which to which radius a convex profile reaches at a place along its axis."""
    found = [r for r, s in profile if abs(s - along) <= ALIGNED]
    for (r1, s1), (r2, s2) in zip(profile, (*profile[1:], profile[0]), strict=True):
        if (s1 - along) * (s2 - along) < 0:
            found.append(r1 + (r2 - r1) * (along - s1) / (s2 - s1))
    return (min(found), max(found)) if found else None
