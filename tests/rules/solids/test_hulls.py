"""The places of a point, a line and a triangle that are nearest to the origin, against many places of each."""

from itertools import permutations
from random import Random

import pytest

from rules.measure.vectors import Vector, cross, dot, minus, size
from rules.solids.hulls import Vertex, _face, _mixed, _on_line, _on_triangle, _tetrahedron, depth, distance
from rules.solids.pieces import Hull

STEPS = 40


def corner(place: tuple[float, float, float]) -> Vertex:
    """A point of a difference; what it is the difference of is left at the origin and at minus itself."""
    x, y, z = place
    return place, (0.0, 0.0, 0.0), (-x, -y, -z)


@pytest.mark.parametrize(
    ("start", "end", "nearest"),
    [
        # Level at 3 up, from 4 on: its end; past the origin: 3 straight up; up to -4: the other end.
        ((4.0, 0.0, 3.0), (9.0, 0.0, 3.0), (4.0, 0.0, 3.0)),
        ((-2.0, 0.0, 3.0), (9.0, 0.0, 3.0), (0.0, 0.0, 3.0)),
        ((-9.0, 0.0, 3.0), (-4.0, 0.0, 3.0), (-4.0, 0.0, 3.0)),
    ],
)
def test_the_place_of_a_line_nearest_to_the_origin(
    start: tuple[float, float, float], end: tuple[float, float, float], nearest: tuple[float, float, float]
) -> None:
    for ends in ((start, end), (end, start)):
        corners, weights = _on_line(corner(ends[0]), corner(ends[1]))
        assert _mixed(corners, weights, 0) == pytest.approx(nearest)
        assert sum(weights) == pytest.approx(1.0)
        assert len(corners) == (2 if nearest == (0.0, 0.0, 3.0) else 1)


@pytest.mark.parametrize("seed", range(60))
def test_the_place_of_a_triangle_nearest_to_the_origin(seed: int) -> None:
    """No other place of the triangle is nearer, and it lies in the triangle: its weights are shares of one whole. The dice put
    the origin over the inside, beside each edge and beyond each corner."""
    dice = Random(f"triangle {seed}")
    aside = (dice.uniform(-6, 6), dice.uniform(-6, 6), dice.uniform(-2, 2))
    places = [tuple(dice.uniform(-5, 5) + away for away in aside) for _ in range(3)]
    p, q, r = ((x, y, z) for x, y, z in places)
    corners, weights = _on_triangle(corner(p), corner(q), corner(r))
    assert sum(weights) == pytest.approx(1.0) and min(weights) >= 0
    assert all(one[0] in (p, q, r) for one in corners)
    found = size(_mixed(corners, weights, 0))
    others = (
        [(a * x + b * y + (STEPS - a - b) * z) / STEPS for x, y, z in zip(p, q, r, strict=True)]
        for a in range(STEPS + 1)
        for b in range(STEPS + 1 - a)
    )
    least = min(size((x, y, z)) for x, y, z in others)
    assert found <= least + 1e-9
    longest = max(size((a[0] - b[0], a[1] - b[1], a[2] - b[2])) for a, b in ((p, q), (q, r), (r, p)))
    assert least - found < longest / STEPS
    # What each of the two bodies has of the place is as far apart as the place is from the origin.
    on_a, on_b = _mixed(corners, weights, 1), _mixed(corners, weights, 2)
    assert [a - b for a, b in zip(on_a, on_b, strict=True)] == pytest.approx(_mixed(corners, weights, 0))


ALONG_Y = ((0.0, -5.0, 0.0), (0.0, 5.0, 0.0))
FLAT = ((-5.0, -5.0, 2.0), (5.0, -5.0, 2.0), (5.0, 5.0, 2.0), (-5.0, 5.0, 2.0))
BLOCK = tuple((x, y, z) for x in (-4.0, 4.0) for y in (-3.0, 3.0) for z in (-2.0, 2.0))


@pytest.mark.parametrize(
    ("one", "other", "square_to"),
    [
        # Two balls: the difference of their middles is a point, and any direction parts them.
        (((1.0, 2.0, 3.0),), ((1.0, 2.0, 3.0),), ()),
        # Two rods in line: any direction square to that
        (ALONG_Y, ALONG_Y, ((0.0, 1.0, 0.0),)),
        # Two flat things in one plane, or a rod on one
        (FLAT, FLAT, ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))),
        (FLAT, ALONG_Y, ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))),
        (ALONG_Y, ((-5.0, 0.0, 0.0), (5.0, 0.0, 0.0)), ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))),
    ],
)
def test_what_has_no_thickness_is_parted_square_to_itself(
    one: tuple[Vector, ...], other: tuple[Vector, ...], square_to: tuple[Vector, ...]
) -> None:
    way = _tetrahedron(Hull(one, 1.0), Hull(other, 1.0))
    assert isinstance(way, tuple) and size(way) == pytest.approx(1.0)
    assert all(dot(way, direction) == pytest.approx(0.0, abs=1e-9) for direction in square_to)
    found = depth(Hull(one, 1.0), Hull(other, 1.0))
    assert (found.least, found.most) == (0.0, 0.0)


def test_where_two_rods_cross_is_told() -> None:
    """One along y at x = 2, and one along x at y = 1: at (2, 1)."""
    one = Hull(((2.0, -5.0, 3.0), (2.0, 5.0, 3.0)), 1.0)
    other = Hull(((-5.0, 1.0, 3.0), (5.0, 1.0, 3.0)), 1.0)
    found = depth(one, other)
    assert found.on_a == pytest.approx((2.0, 1.0, 3.0)) and found.on_b == pytest.approx((2.0, 1.0, 3.0))


def test_four_corners_of_a_solid_difference_have_their_faces_outward() -> None:
    corners = _tetrahedron(Hull(BLOCK, 0.0), Hull(BLOCK, 0.0))
    assert isinstance(corners, list)
    middle = tuple(sum(one[0][n] for one in corners) / 4 for n in range(3))
    for i, j, k in ((0, 1, 2), (0, 3, 1), (1, 3, 2), (2, 3, 0)):
        face = _face(corners, i, j, k)
        assert face is not None
        off, normal, *numbers = face
        assert size(normal) == pytest.approx(1.0) and numbers == [i, j, k]
        assert all(dot(normal, corners[n][0]) == pytest.approx(off) for n in (i, j, k))
        assert dot(normal, (middle[0], middle[1], middle[2])) < off


def test_three_corners_in_a_line_are_no_face() -> None:
    in_line = [corner((x, 2 * x, 1.0)) for x in (0.0, 1.0, 3.0)]
    assert _face(in_line, 0, 1, 2) is None
    level = [corner(place) for place in ((0.0, 0.0, 5.0), (4.0, 0.0, 5.0), (0.0, 4.0, 5.0))]
    assert _face(level, 0, 1, 2) == (5.0, (0.0, 0.0, 1.0), 0, 1, 2)
    assert cross(minus(level[1][0], level[0][0]), minus(level[2][0], level[0][0]))[2] > 0


def test_how_deep_a_block_stands_in_another() -> None:
    """8 by 6 by 4 both: one 3 higher stands 1 in the other. One 2, 1 and 1 aside has 6, 5 and 3 of it left: 3."""
    for shift, deep in (
        ((0.0, 0.0, 3.0), 1.0),
        ((2.0, 1.0, 1.0), 3.0),
        ((7.5, 0.0, 0.0), 0.5),
        ((0.0, -5.0, 0.5), 1.0),
    ):
        moved = tuple((x + shift[0], y + shift[1], z + shift[2]) for x, y, z in BLOCK)
        found = depth(Hull(BLOCK, 0.0), Hull(moved, 0.0))
        assert -found.most == pytest.approx(deep, abs=0.05) and -found.least == pytest.approx(deep, abs=0.05)


def test_two_bodies_whose_middles_are_one_may_yet_be_apart() -> None:
    """A corner of a cube of 10, below x + y + z = 10, and the opposite one, above 20: 10 / sqrt 3 apart."""
    low = ((0.0, 0.0, 0.0), (10.0, 0.0, 0.0), (0.0, 10.0, 0.0), (0.0, 0.0, 10.0))
    high = tuple((10 - x, 10 - y, 10 - z) for x, y, z in low)
    one, other = Hull(low), Hull(high)
    assert one.middle == other.middle
    found = distance(one, other)
    assert found is not None
    assert (found.least, found.most) == (pytest.approx(10 / 3**0.5, abs=0.01), pytest.approx(10 / 3**0.5, abs=0.01))


@pytest.mark.parametrize(
    ("places", "nearest", "corners_of_it"),
    [
        # 3 up, a side 2 long passes the origin's foot 0.1 aside: the foot is inside.
        (((-1.0, -0.1, 3.0), (1.0, -0.1, 3.0), (0.0, 0.1, 3.0)), (0.0, 0.0, 3.0), 3),
        # Blunt at its second corner. The foot is (0.4, -0.1) from there, and the side to the third goes (2, 1), of which
        # (0.8 - 0.1) / 5 = 0.14 is nearest: (-0.4 + 0.28, 0.1 + 0.14).
        (((-1.4, 0.1, 3.0), (-0.4, 0.1, 3.0), (1.6, 1.1, 3.0)), (-0.12, 0.24, 3.0), 2),
    ],
)
def test_the_place_of_a_small_triangle_nearest_to_the_origin(
    places: tuple[Vector, Vector, Vector], nearest: Vector, corners_of_it: int
) -> None:
    """Whichever corner is told first."""
    for p, q, r in permutations(corner(place) for place in places):
        corners, weights = _on_triangle(p, q, r)
        assert len(corners) == corners_of_it
        assert _mixed(corners, weights, 0) == pytest.approx(nearest)
