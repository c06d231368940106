"""What shapes look like and what a plane cuts of them, against a general mesh library (manifold3d) that projects and slices
meshes, and by hand."""

from collections.abc import Sequence
from itertools import pairwise
from math import cos, hypot, isclose, pi, radians, sin, sqrt
from random import Random

import manifold3d
import pytest

from rules.drawn.patches import EdgeLine, Patch, edges
from rules.drawn.projection import cut, seen
from rules.drawn.views import FROM_ABOVE, FROM_BEHIND, FROM_FRONT, FROM_OUTSIDE, Viewpoint, square_to_axis
from rules.solids.shapes import Ball, Bore, Cylinder, Prism, Revolved, Rod, block, ring, solid
from rules.solids.space import cross, square_to, turn, unit
from tests.support.meshes import Mesh, whole
from tests.support.random_shapes import KINDS, Make, Square, direction, somewhere

Area = manifold3d.CrossSection
NAMED = (FROM_FRONT, FROM_BEHIND, FROM_ABOVE, FROM_OUTSIDE)
OFF = 0.25
"""mm that an edge of the mesh may stand beside the true one, and a corner of a drawn one besides."""


def area_of(patches: Sequence[Patch]) -> Area:
    """The patches put together by the library."""
    found = Area()
    for outer, hole in ((patch.outer, patch.hole) for patch in patches):
        one = Area([outer], manifold3d.FillRule.Positive)
        found += one - Area([hole], manifold3d.FillRule.Positive) if hole else one
    return found


def inside(lines: Sequence[EdgeLine]) -> Area:
    """What closed lines go round, metal on their left."""
    return Area([line[:-1] for line in lines], manifold3d.FillRule.Positive)


def looked_at(mesh: Mesh, view: Viewpoint) -> Mesh:
    """The mesh turned so that the view's plane is the library's z = 0."""
    (a, b, c), o = (view.right, view.up, view.eye), view.origin
    rows = [[*axis, -sum(x * y for x, y in zip(axis, o, strict=True))] for axis in (a, b, c)]
    return mesh.transform(rows)


def border(area: Area) -> float:
    """Length of an area's edges, mm."""
    return sum(
        hypot(x2 - x1, y2 - y1)
        for line in area.to_polygons()
        for (x1, y1), (x2, y2) in zip(line, [*line[1:], line[0]], strict=True)
    )


def agree(found: Area, wanted: Area) -> None:
    """What is in one area and not in the other is a seam along the edges."""
    differ = (found - wanted).area() + (wanted - found).area()
    assert differ <= OFF * border(wanted) + 1.0


def any_view(r: Random) -> Viewpoint:
    if isinstance(r, Square):
        return r.choice(NAMED)
    eye = direction(r)
    up = square_to(eye)
    return Viewpoint(cross(up, eye), up)


@pytest.mark.parametrize("make", KINDS, ids=lambda make: make.__name__)
@pytest.mark.parametrize("kind", [Random, Square])
@pytest.mark.parametrize("seed", range(3))
def test_a_shape_looks_as_a_mesh_library_says(make: Make, kind: type[Random], seed: int) -> None:
    r = kind(f"seen {make.__name__} {seed}")
    shapes, view = make(r), any_view(r)
    patches = seen(shapes, view)
    wanted = looked_at(whole(shapes), view).project()
    agree(area_of(patches), wanted)
    agree(inside(edges(patches)), wanted)


@pytest.mark.parametrize("make", KINDS, ids=lambda make: make.__name__)
@pytest.mark.parametrize("kind", [Random, Square])
@pytest.mark.parametrize("seed", range(3))
def test_a_plane_cuts_of_a_shape_what_a_mesh_library_says(make: Make, kind: type[Random], seed: int) -> None:
    """Planes through a place near the shape's middle; those that just touch a face along its whole would differ by it."""
    r = kind(f"cut {make.__name__} {seed}")
    shapes = make(r)
    (x, y, z) = solid(*shapes).middle
    view = any_view(r).through((x + r.uniform(-9, 9), y + r.uniform(-9, 9), z + r.uniform(-9, 9)))
    patches = cut(shapes, view)
    wanted = looked_at(whole(shapes), view).slice(0.0)
    agree(area_of(patches), wanted)
    agree(inside(edges(patches)), wanted)


@pytest.mark.parametrize("seed", range(4))
def test_through_its_own_axis_and_square_to_it_a_ring_is_cut_as_its_profile_and_as_a_ring(seed: int) -> None:
    """By hand: 2 x 20 x 50; pi x (140^2 - 90^2)."""
    r = Random(f"axis {seed}")
    axis, origin = direction(r), somewhere(r)
    up = square_to(axis)
    shape = ring(origin, axis, 90.0, 140.0, -10.0, 10.0)
    assert area_of(cut([shape], Viewpoint(axis, up, origin))).area() == pytest.approx(2 * 20 * 50)
    square = cut([shape], Viewpoint(cross(up, axis), up, origin))
    assert area_of(square).area() == pytest.approx(pi * (140**2 - 90**2), rel=1e-3)


def test_seen_after_a_motion_is_the_moved_shape_seen() -> None:
    """A bar 10 forward of the axis, turned a quarter left about it, lies 10 outboard."""
    view = FROM_FRONT.after(turn((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), pi / 2))
    (patch,) = seen([Ball((10.0, 0.0, 5.0), 2.0)], view)
    xs, ys = zip(*patch.outer, strict=True)
    assert (min(xs), max(xs), min(ys), max(ys)) == pytest.approx((8.0, 12.0, 3.0, 7.0))


@pytest.mark.parametrize(
    ("view", "place"),
    [
        (FROM_FRONT, (20.0, 30.0)),
        (FROM_BEHIND, (-20.0, 30.0)),
        (FROM_ABOVE, (20.0, -10.0)),
        (FROM_OUTSIDE, (-10.0, 30.0)),
    ],
)
def test_the_named_views(view: Viewpoint, place: tuple[float, float]) -> None:
    """10 forward, 20 outboard, 30 up: from the front outboard is to the right; from above forward is down; from outside
    forward is to the left."""
    assert view.flat((10.0, 20.0, 30.0)) == pytest.approx(place)


def test_square_to_the_steering_axis_lengths_along_it_are_true() -> None:
    """Leaning 3 in and 4 back on 12 up: sqrt(9 + 16 + 144) = 13; outboard still lies to the right."""
    view = square_to_axis(unit((-4.0, -3.0, 12.0)))
    assert view.flat((-4.0, -3.0, 12.0)) == pytest.approx((0.0, 13.0))
    assert view.flat((0.0, 10.0, 0.0))[0] > 9.0


def test_nothing_is_cut_beside_a_shape() -> None:
    rod, bar = Rod((0.0, 0.0, 0.0), (0.0, 90.0, 0.0), 9.0), Cylinder((0.0, 0.0, 0.0), (0.0, 90.0, 0.0), 9.0)
    assert cut([rod, bar], FROM_FRONT.through((9.5, 0.0, 0.0))) == ()
    assert isclose(area_of(cut([bar], FROM_FRONT)).area(), 90.0 * 18.0)


def test_a_plane_in_which_a_rings_end_lies_cuts_the_whole_ring() -> None:
    """By hand: the end stands 10 ahead of the middle, pi x (140^2 - 90^2); half a millimetre farther there is nothing."""
    shape = ring((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), 90.0, 140.0, -10.0, 10.0)
    end = cut([shape], FROM_FRONT.through((10.0, 0.0, 0.0)))
    assert area_of(end).area() == pytest.approx(pi * (140**2 - 90**2), rel=1e-3)
    assert cut([shape], FROM_FRONT.through((10.5, 0.0, 0.0))) == ()


def test_a_plane_that_only_touches_an_edge_cuts_nothing_that_has_an_area() -> None:
    """A block on edge: its lowest edge lies in the plane of the view from the front, the rest of it behind."""
    half = 0.5**0.5
    on_edge = block((20.0 * half, 0.0, 0.0), (half, 0.0, half), (0.0, 1.0, 0.0), 20.0, 50.0, 20.0)
    for view in (FROM_FRONT, FROM_BEHIND):
        assert cut([on_edge], view) == ()


def ahead(x: float) -> Viewpoint:
    """The view from the front, cut so far ahead."""
    return FROM_FRONT.through((x, 0.0, 0.0))


@pytest.mark.parametrize(
    ("rod", "x", "area"),
    [
        # A ball of 10 cut 6 off its middle is a circle of 8, and one that the plane misses is not cut.
        (Ball((0.0, 0.0, 0.0), 10.0), 6.0, 64 * pi),
        (Ball((0.0, 0.0, 0.0), 10.0), -6.0, 64 * pi),
        (Ball((0.0, 0.0, 0.0), 10.0), 10.1, 0.0),
        # Along the plane, 90 long with its round ends 8 in radius there
        (Rod((0.0, 0.0, 0.0), (0.0, 90.0, 0.0), 10.0), 6.0, 90 * 16 + 64 * pi),
        (Rod((0.0, 0.0, 0.0), (0.0, 90.0, 0.0), 10.0), -10.1, 0.0),
        # Square to it: a circle of 10 between its ends, 8 where it is 6 past one, and nothing past the round end
        (Rod((0.0, 5.0, 0.0), (50.0, 5.0, 0.0), 10.0), 25.0, 100 * pi),
        (Rod((0.0, 5.0, 0.0), (50.0, 5.0, 0.0), 10.0), 56.0, 64 * pi),
        (Rod((0.0, 5.0, 0.0), (50.0, 5.0, 0.0), 10.0), -6.0, 64 * pi),
        (Rod((50.0, 5.0, 0.0), (0.0, 5.0, 0.0), 10.0), 56.0, 64 * pi),
        (Rod((0.0, 5.0, 0.0), (50.0, 5.0, 0.0), 10.0), 60.1, 0.0),
        # Leaning by 30 degrees from the line of sight: an ellipse, 10 by 10 / cos 30
        (Rod((-100 * cos(radians(30)), -100 * sin(radians(30)), 0.0), (100 * cos(radians(30)), 50.0, 0.0), 10.0), 0.0,
         100 * pi / cos(radians(30))),
    ],
)  # fmt: skip
def test_what_a_plane_cuts_of_what_is_round_by_hand(rod: Ball | Rod, x: float, area: float) -> None:
    assert area_of(cut([rod], ahead(x))).area() == pytest.approx(area, rel=8e-3), "drawn with straight lines"


PLATE = Prism(
    (0.0, 0.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, 1.0),
    ((-50.0, -30.0), (50.0, -30.0), (50.0, 30.0), (-50.0, 30.0)), 5.0, 15.0, Bore((10.0, 0.0), 20.0),
)  # fmt: skip
"""100 fore and aft, 60 high and 10 thick, outboard of 5. Its bore of 20 stands 10 behind the middle, so at x = -10."""


@pytest.mark.parametrize(
    ("x", "half"), [(-10.0, 20.0), (2.0, 16.0), (-22.0, 16.0), (9.9, sqrt(400 - 19.9**2)), (10.1, 0.0), (-30.1, 0.0)]
)
def test_a_plane_across_a_bored_plate_leaves_the_bore_out(x: float, half: float) -> None:
    """Two strips, or one beside the bore. Their edges run round each and nowhere across the bore's mouths."""
    patches = cut([PLATE], ahead(x))
    assert area_of(patches).area() == pytest.approx((60.0 - 2 * half) * 10.0, abs=0.5)
    round_it = 2 * (60.0 - 2 * half) + (4 * 10.0 if half else 20.0)
    lines = edges(patches)
    assert len(lines) == (2 if half else 1)
    assert sum(hypot(b[0] - a[0], b[1] - a[1]) for line in lines for a, b in pairwise(line)) == pytest.approx(round_it)


@pytest.mark.parametrize(("y", "cuts"), [(4.9, False), (5.1, True), (10.0, True), (14.9, True), (15.1, False)])
@pytest.mark.parametrize("from_inside", [False, True])
def test_a_plane_along_a_bored_plate_cuts_it_between_its_faces(y: float, cuts: bool, from_inside: bool) -> None:
    side = Viewpoint((1.0, 0.0, 0.0), (0.0, 0.0, 1.0)) if from_inside else FROM_OUTSIDE
    found = area_of(cut([PLATE], side.through((0.0, y, 0.0)))).area()
    assert found == pytest.approx(100 * 60 - 400 * pi if cuts else 0.0, rel=2e-3)


def test_a_leaning_plane_through_a_bored_plate_by_hand() -> None:
    """Leaning by 45 degrees about the upright axis through the bore's middle: what it cuts lies 10 along the plate as it goes
    through 10 of its thickness, so 10 times the square root of two long. Half the plate's thickness from the middle the bore is
    still nearly as high: between 2 x 20 and 2 x the root of 400 - 25."""
    half = 0.5**0.5
    view = Viewpoint((half, half, 0.0), (0.0, 0.0, 1.0), (-10.0, 10.0, 0.0))
    found = area_of(cut([PLATE], view)).area()
    along = 10 * sqrt(2)
    # The mean height of a circle of 20 over 5 to either side: (5 x root of 375 + 400 asin(1/4)) / 10 x 2
    mean = 2 * (5 * sqrt(375) + 400 * 0.252680255) / 10
    assert found == pytest.approx(along * (60 - mean), rel=3e-3)


CONE = Revolved((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), ((10.0, 0.0), (30.0, 0.0), (20.0, 10.0), (10.0, 10.0)))
"""Hollow by 10, its outside from 30 at its foot to 20 at 10 ahead."""


@pytest.mark.parametrize(
    ("x", "outer"), [(0.0, 30.0), (2.5, 27.5), (5.0, 25.0), (10.0, 20.0), (10.1, None), (-0.1, None)]
)
@pytest.mark.parametrize("half_angle", [pi, radians(60)])
def test_a_plane_square_to_a_cone_cuts_a_ring_of_it(x: float, outer: float | None, half_angle: float) -> None:
    """All round or a third of that."""
    part = Revolved(CONE.origin, CONE.axis, CONE.profile, towards=(0.0, 0.0, 1.0), half_angle=half_angle)
    found = area_of(cut([part], ahead(x))).area()
    wanted = half_angle * (outer**2 - 100) if outer else 0.0
    assert found == pytest.approx(wanted, rel=6e-3)


@pytest.mark.parametrize(("towards", "sides"), [((0.0, 0.0, 1.0), 1), ((0.0, 0.0, -1.0), 1), ((0.0, 1.0, 0.0), 0)])
def test_along_its_axis_a_part_turn_is_cut_where_it_reaches(towards: tuple[float, float, float], sides: int) -> None:
    """The profile is 10 high and 20 to 10 wide: 150. The plane holds the axis and goes up and down; all round there are two."""
    upright = Viewpoint((1.0, 0.0, 0.0), (0.0, 0.0, 1.0))
    assert area_of(cut([CONE], upright)).area() == pytest.approx(300.0)
    part = Revolved(CONE.origin, CONE.axis, CONE.profile, towards=towards, half_angle=radians(60))
    found = cut([part], upright)
    assert area_of(found).area() == pytest.approx(150.0 * sides)
    assert all((y > 0) is (towards[2] > 0) for patch in found for _, y in patch.outer)
