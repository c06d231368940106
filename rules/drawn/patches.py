"""Flat areas as convex patches, and the edges of what several of them cover together. mm.

Whatever a convex piece of a solid looks like, or is cut to, is one convex outline, at most with one convex hole in it.
Outlines run counter-clockwise.
"""

from collections.abc import Iterable, Sequence
from functools import cached_property, lru_cache
from itertools import pairwise
from math import acos, ceil, cos, hypot, pi, sin

from rules.measure.outline import Point
from rules.measure.records import dataclass

EdgeLine = tuple[Point, ...]
"""Points joined by straight lines; closed where it ends as it begins."""
Stretch = tuple[float, float]
"""Part of a straight line, from share to share."""

Border = tuple[float, float, float]
"""A straight side of an outline: the direction square to it, inward, and how far along that it lies from 0, 0."""

MOST_CORNERS = 720
"""Of a circle, so that a mistyped size costs no time."""
TINY = 1e-6
"""mm: lines nearer than this lie on one another."""


@dataclass(frozen=True)
class Patch:
    """An area: everything within a convex outline but a convex hole. What of the hole lies beyond the outline is nothing."""

    outer: EdgeLine
    hole: EdgeLine = ()

    @cached_property
    def box(self) -> "Bounds":
        """The rectangle the outline fills: left, bottom, right, top."""
        return _box(self.outer)

    @cached_property
    def outer_sides(self) -> tuple[Border, ...]:
        """The sides of the outline."""
        return _as_sides(self.outer)

    @cached_property
    def hole_sides(self) -> tuple[Border, ...]:
        """The sides of the hole; none where there is none."""
        return _as_sides(self.hole)


@lru_cache(maxsize=256)
def turns(count: int) -> tuple[tuple[float, float], ...]:
    """Cosine and sine of so many equal parts of a full turn."""
    return tuple((cos(2 * pi * step / count), sin(2 * pi * step / count)) for step in range(count))


def corners_of_circle(radius: float, fine: float) -> int:
    """How many corners a circle is drawn with, so that it is nowhere further than `fine` from a true one. A multiple of 4.

    >>> corners_of_circle(100.0, 0.05)
    100
    """
    if radius <= fine:
        return 8
    return min(MOST_CORNERS, max(8, 4 * ceil(pi / acos(1 - fine / radius) / 4)))


def circle(centre: Point, radius: float, fine: float) -> EdgeLine:
    """A circle's corners, counter-clockwise."""
    return tuple((centre[0] + radius * c, centre[1] + radius * s) for c, s in turns(corners_of_circle(radius, fine)))


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def hull(points: Iterable[Point]) -> EdgeLine:
    """The convex outline round points, counter-clockwise; fewer than three corners where they lie on a line.

    >>> hull([(0.0, 0.0), (2.0, 0.0), (1.0, 0.5), (2.0, 2.0), (0.0, 2.0)])
    ((0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0))
    """
    ordered = sorted({(round(x, 9), round(y, 9)) for x, y in points})
    if len(ordered) < 3:
        return tuple(ordered)

    def half(way: Iterable[Point]) -> list[Point]:
        found: list[Point] = []
        for point in way:
            while len(found) > 1 and _turn(found[-2], found[-1], point) <= 0.0:
                found.pop()
            found.append(point)
        return found[:-1]

    return (*half(ordered), *half(reversed(ordered)))


def common(one: EdgeLine, other: EdgeLine) -> EdgeLine:
    """What two convex outlines have in common; empty where that is nothing.

    >>> common(((0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 4.0)), ((2.0, 1.0), (9.0, 1.0), (9.0, 9.0), (2.0, 9.0)))
    ((2.0, 1.0), (4.0, 1.0), (4.0, 4.0), (2.0, 4.0))
    """
    left: Sequence[Point] = one
    for a, b in _sides(other):
        kept: list[Point] = []
        for start, end in _sides(left):
            inside, then = _turn(a, b, start), _turn(a, b, end)
            if (inside > 0) != (then > 0):
                share = inside / (inside - then)
                kept.append((start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])))
            if then > 0:
                kept.append(end)
        if len(kept) < 3:
            return ()
        left = kept
    return tuple(left)


def _sides(outline: Sequence[Point]) -> Iterable[tuple[Point, Point]]:
    return zip(outline, (*outline[1:], outline[0]), strict=True) if outline else ()


def clipped(area: Patch, start: Point, end: Point, over: Iterable[Patch] = ()) -> list[tuple[Point, Point]]:
    """What of a straight line lies on an area and not under others.

    >>> plate = Patch(((0.0, 0.0), (9.0, 0.0), (9.0, 9.0), (0.0, 9.0)), ((3.0, 3.0), (6.0, 3.0), (6.0, 6.0), (3.0, 6.0)))
    >>> clipped(plate, (-3.0, 5.0), (12.0, 5.0))
    [((0.0, 5.0), (3.0, 5.0)), ((6.0, 5.0), (9.0, 5.0))]
    """
    kept = _inside(area.outer_sides, start, end, on_it=False)
    hole = _inside(area.hole_sides, start, end, on_it=False)
    parts = without([kept], [hole] if hole else []) if kept else []
    for other in over:
        parts = without(parts, _covered(other, start, end, True)) if parts else []
    return [(_at(start, end, low), _at(start, end, high)) for low, high in parts]


# The edges of several patches


def edges(patches: Sequence[Patch], behind: Sequence[Patch] = ()) -> tuple[EdgeLine, ...]:
    """The edges of all that the patches cover together, as lines, closed where they close.

    Where two patches meet in one line there is no edge. behind: other patches, which hide what lies under them.

    >>> left, right = (Patch(((x, 0.0), (x + 2.0, 0.0), (x + 2.0, 1.0), (x, 1.0))) for x in (0.0, 2.0))
    >>> edges((left, right))
    (((0.0, 0.0), (4.0, 0.0), (4.0, 1.0), (0.0, 1.0), (0.0, 0.0)),)
    """
    return _edges(tuple(patches), tuple(behind))


@lru_cache(maxsize=1024)
def _edges(patches: tuple[Patch, ...], behind: tuple[Patch, ...]) -> tuple[EdgeLine, ...]:
    """Kept, because a picture is drawn again after each answer, and an answer moves few of its parts."""
    patches = tuple(patch for patch in patches if len(patch.outer) > 2)
    boxes = [_box(patch.outer) for patch in patches]
    over = [(patch, _box(patch.outer)) for patch in behind if len(patch.outer) > 2]
    runs: list[tuple[Point, Point]] = []
    alone: list[EdgeLine] = []
    for number, patch in enumerate(patches):
        near = [
            (patches[n], box, n < number) for n, box in enumerate(boxes) if n != number and _meet(box, boxes[number])
        ]
        near += [(other, box, True) for other, box in over if _meet(box, boxes[number])]
        if not near and not patch.hole:
            alone.append((*patch.outer, patch.outer[0]))
            continue
        for start, end, kept in _border(patch):
            room = _box((start, end))
            for other, box, first in near:
                if kept and _meet(box, room):
                    kept = without(kept, _covered(other, start, end, first))
            runs += [(_at(start, end, low), _at(start, end, high)) for low, high in kept]
    return (*alone, *joined(runs))


def hidden(patches: Sequence[Patch], under: Sequence[Patch]) -> tuple[EdgeLine, ...]:
    """What of the edges of patches lies under others.

    >>> bar = Patch(((0.0, 0.0), (9.0, 0.0), (9.0, 1.0), (0.0, 1.0)))
    >>> hidden([bar], [Patch(((6.0, -1.0), (12.0, -1.0), (12.0, 3.0), (6.0, 3.0)))])
    (((6.0, 0.0), (9.0, 0.0), (9.0, 1.0), (6.0, 1.0)),)
    """
    runs = [
        run
        for edge in edges(patches)
        for start, end in pairwise(edge)
        for one in under
        for run in clipped(one, start, end)
    ]
    return joined(runs)


Bounds = tuple[float, float, float, float]


def _box(outline: EdgeLine) -> Bounds:
    xs, ys = [x for x, _ in outline], [y for _, y in outline]
    return min(xs), min(ys), max(xs), max(ys)


def _meet(one: Bounds, other: Bounds) -> bool:
    return (
        one[0] <= other[2] + TINY
        and other[0] <= one[2] + TINY
        and one[1] <= other[3] + TINY
        and other[1] <= one[3] + TINY
    )


def _border(patch: Patch) -> Iterable[tuple[Point, Point, list[Stretch]]]:
    """The straight sides of a patch, metal on their left, and what of each is its border."""
    for start, end in _sides(patch.outer):
        inside = _inside(patch.hole_sides, start, end, on_it=True)
        yield start, end, without([(0.0, 1.0)], [inside] if inside else [])
    for end, start in _sides(patch.hole):
        inside = _inside(patch.outer_sides, start, end, on_it=False)
        if inside:
            yield start, end, [inside]


def _covered(patch: Patch, start: Point, end: Point, first: bool) -> list[Stretch]:
    """What of a border another patch covers. Of two borders on one another the first alone counts, and of a seam none."""
    inside = _inside(patch.outer_sides, start, end, on_it=first, seam=True)
    if not inside or not patch.hole:
        return [inside] if inside else []
    # What fills a hole meets it in a seam; of two that have one hole the first has its border. Where a hole opens on a side
    # there is neither metal nor border.
    on_a_side = _inside(patch.outer_sides, start, end, on_it=False) is None
    free = _inside(patch.hole_sides, start, end, on_it=on_a_side, seam=on_a_side or not first)
    return without([inside], [free] if free else [])


def _as_sides(outline: EdgeLine) -> tuple[Border, ...]:
    found: list[Border] = []
    for a, b in _sides(outline):
        dx, dy = b[0] - a[0], b[1] - a[1]
        long = hypot(dx, dy)
        if long >= TINY:
            across, along = -dy / long, dx / long
            found.append((across, along, across * a[0] + along * a[1]))
    return tuple(found)


def _inside(sides: Sequence[Border], start: Point, end: Point, *, on_it: bool, seam: bool = False) -> Stretch | None:
    """What of a straight line lies inside a convex outline. on_it, seam: whether along a side of it, the same way or the
    other, counts as inside."""
    if not sides:
        return None
    (x, y), (to_x, to_y) = start, end
    low, high = 0.0, 1.0
    for across, along, far in sides:
        here = across * x + along * y - far
        there = across * to_x + along * to_y - far
        if here >= TINY and there >= TINY:
            continue
        if here < TINY and there < TINY:
            if here <= -TINY or there <= -TINY:
                return None
            same_way = along * (to_x - x) - across * (to_y - y) > 0
            if not (on_it if same_way else seam):
                return None
        elif here < 0:
            low = max(low, here / (here - there))
        elif there < 0:
            high = min(high, here / (here - there))
    return (low, high) if high - low > 1e-9 else None


def without(kept: list[Stretch], taken: Iterable[Stretch]) -> list[Stretch]:
    """Stretches without what others take of them."""
    for start, end in taken:
        left: list[Stretch] = []
        for low, high in kept:
            left += [part for part in ((low, min(high, start)), (max(low, end), high)) if part[1] - part[0] > 1e-9]
        kept = left
    return kept


def _at(start: Point, end: Point, share: float) -> Point:
    if share == 0.0:
        return start
    if share == 1.0:
        return end
    return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])


def joined(runs: Iterable[tuple[Point, Point]]) -> tuple[EdgeLine, ...]:
    """Straight runs put end to end. Corners without a bend are left out."""

    def place(point: Point) -> tuple[int, int]:
        return round(point[0] * 1e4), round(point[1] * 1e4)

    beginning: dict[tuple[int, int], list[tuple[Point, Point]]] = {}
    real = [run for run in runs if place(run[0]) != place(run[1])]
    ends = {place(end) for _, end in real}
    for run in real:
        beginning.setdefault(place(run[0]), []).append(run)
    found: list[EdgeLine] = []
    # First what begins at a loose end, so that an open line is one.
    for run in sorted(real, key=lambda one: place(one[0]) in ends):
        if run not in beginning.get(place(run[0]), []):
            continue
        line = [run[0]]
        following: tuple[Point, Point] | None = run
        while following:
            beginning[place(following[0])].remove(following)
            line.append(following[1])
            following = next(iter(beginning.get(place(following[1]), [])), None)
        if place(line[0]) == place(line[-1]):
            line[-1] = line[0]
        found.append(_bends(line))
    return tuple(found)


def _bends(line: list[Point]) -> EdgeLine:
    kept = [line[0]]
    for here, after in pairwise(line[1:]):
        long = hypot(after[0] - kept[-1][0], after[1] - kept[-1][1])
        if abs(_turn(kept[-1], here, after)) > TINY * 10 * max(long, 1.0):
            kept.append(here)
    closed = line[0] == line[-1]
    if closed and len(kept) > 2 and abs(_turn(kept[-1], line[0], kept[1])) < TINY * 10:
        kept = kept[1:]
        return (*kept, kept[0])
    return (*kept, line[-1])
