"""What holds for the gap between any two solids, whatever they are."""

from itertools import combinations
from math import cos, dist, pi, sin

import pytest

from rules.solids.gap import gap, nearer
from rules.solids.outline import convex_pieces
from rules.solids.shapes import Ball, Bore, Cylinder, Prism, Revolved, Rod, block, solid
from rules.solids.space import minus, plus, shift, size, times, turn, unit
from tests.support.some_solids import CONVEX, HERE, PAIRS, X, Y, Z, anyhow, some

SAME = 0.05
"""mm; what the kernel promises."""

TRIANGLE = ((-9.0, -9.0), (9.0, -9.0), (0.0, 9.0))


@pytest.mark.parametrize("pair", PAIRS, ids=" and ".join)
def test_moving_both_changes_nothing(pair: tuple[str, str]) -> None:
    for a, b, r in some(pair, 100.0):
        motion = anyhow(r, 500.0)
        before, after = gap(a, b), gap(a.moved(motion), b.moved(motion))
        assert (before.distance > 0) == (after.distance > 0)
        if before.distance > 0:
            assert after.distance == pytest.approx(before.distance, abs=SAME)


@pytest.mark.parametrize("pair", PAIRS, ids=" and ".join)
def test_straight_towards_each_other(pair: tuple[str, str]) -> None:
    """The places it names are that far apart, and moving b from its place towards a's closes the gap mm by mm."""
    for a, b, _ in some(pair, 200.0):
        found = gap(a, b)
        if found.distance <= 0:
            continue
        assert dist(found.on_a, found.on_b) == pytest.approx(found.distance, abs=1e-6)
        for part in (0.3, 0.9):
            step = times(part, minus(found.on_a, found.on_b))
            assert gap(a, b.moved(shift(step))).distance == pytest.approx((1 - part) * found.distance, abs=SAME)
        further = times(10.0 / found.distance, minus(found.on_b, found.on_a))
        assert gap(a, b.moved(shift(further))).distance <= found.distance + 10.0 + SAME


@pytest.mark.parametrize("pair", PAIRS, ids=" and ".join)
def test_the_places_are_on_the_solids(pair: tuple[str, str]) -> None:
    """A point there touches the solid, and is on its skin: a little towards the other is outside."""
    for a, b, _ in some(pair, 200.0):
        found = gap(a, b)
        if found.distance < 1:
            continue
        for part, place, other in ((a, found.on_a, found.on_b), (b, found.on_b, found.on_a)):
            assert gap(part, solid(Ball(place, 0.0))).distance == pytest.approx(0.0, abs=SAME)
            outside = plus(place, times(0.5 / found.distance, minus(other, place)))
            assert gap(part, solid(Ball(outside, 0.0))).distance == pytest.approx(0.5, abs=SAME)


@pytest.mark.parametrize("pair", list(combinations(CONVEX, 2)), ids=" and ".join)
def test_convex_solids_part_by_the_shift_that_it_names(pair: tuple[str, str]) -> None:
    """As long as the overlap, and nothing is left after it; a shift a tenth shorter any way leaves some."""
    parted = 0
    for a, b, r in some(pair, 15.0):
        found = gap(a, b)
        if found.distance >= 0:
            continue
        parted += 1
        out = minus(found.on_a, found.on_b)
        assert size(out) == pytest.approx(-found.distance, rel=0.05, abs=SAME)
        assert gap(a, b.moved(shift(times(1.05, out)))).distance > -SAME
        for _ in range(10):
            anyway = times(-0.9 * found.distance, unit((r.gauss(0, 1), r.gauss(0, 1), r.gauss(0, 1))))
            assert gap(a, b.moved(shift(anyway))).distance < 0
    assert parted


@pytest.mark.parametrize(("across", "overlap"), [(0.0, 24.0), (20.0, 4.0), (23.99, 0.01)])
def test_two_rods_that_cross(across: float, overlap: float) -> None:
    """Each of radius 12: they overlap by 24 less how far their lines are apart."""
    one, other = (
        solid(Rod((-50.0, 0.0, 0.0), (50.0, 0.0, 0.0), 12.0)),
        solid(Rod((0.0, -50.0, across), (0.0, 50.0, across), 12.0)),
    )
    assert gap(one, other).distance == pytest.approx(-overlap, abs=0.005)


def test_what_lies_wholly_inside_overlaps() -> None:
    """No skins cross, and still there is no room: a pin in a block, 20 from the nearest face, with a radius of 3."""
    pin, around = solid(Ball((0.0, 0.0, 30.0), 3.0)), solid(block(HERE, X, Y, 200.0, 200.0, 100.0))
    assert gap(pin, around).distance == pytest.approx(-23.0, abs=SAME)


def test_a_loose_fit_has_room_all_round() -> None:
    """A 40 mm hub in a 41 mm bore, on one axis and 0.4 aside: 1 and 0.6 of room; 1.2 aside: into it by 0.2."""
    square = ((-80.0, -80.0), (80.0, -80.0), (80.0, 80.0), (-80.0, 80.0))
    plate = solid(Prism(HERE, X, Y, square, -5.0, 5.0, Bore((0.0, 0.0), 41.0)))
    for aside, room in ((0.0, 1.0), (0.4, 0.6), (1.2, -0.2)):
        hub = solid(Cylinder((aside, 0.0, -50.0), (aside, 0.0, 50.0), 40.0))
        assert gap(plate, hub).distance == pytest.approx(room, abs=SAME)


def test_less_than_a_limit_only() -> None:
    """30 and 40 aside, radii 10 and 20: 20 apart. Found where 20.1 is asked for, not where 19.9 is."""
    one, other = solid(Ball(HERE, 10.0)), solid(Ball((30.0, 40.0, 0.0), 20.0))
    assert nearer(one, other, 19.9) is None
    found = nearer(one, other, 20.1)
    assert found and found.distance == pytest.approx(20.0, abs=1e-6)


def test_motions() -> None:
    """A quarter turn about a line through (10, 0, 0) along z, then 5 up: (12, 0, 0) goes to (10, 2, 5)."""
    motion = turn((10.0, 0.0, 0.0), Z, pi / 2).then(shift((0.0, 0.0, 5.0)))
    assert motion.point((12.0, 0.0, 0.0)) == pytest.approx((10.0, 2.0, 5.0))
    assert motion.direction(X) == pytest.approx(Y)


def test_an_outline_is_cut_into_convex_ones() -> None:
    """A star of ten corners: as many mm2 in pieces as whole, and every piece turns one way only."""
    star = tuple(
        ((40.0 if i % 2 else 100.0) * cos(i * pi / 5), (40.0 if i % 2 else 100.0) * sin(i * pi / 5)) for i in range(10)
    )
    pieces = convex_pieces(star)

    def area(corners: tuple[tuple[float, float], ...]) -> float:
        return sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in zip(corners, corners[1:] + corners[:1], strict=True)) / 2

    assert sum(map(area, pieces)) == pytest.approx(10 * 100.0 * 40.0 * sin(pi / 5) / 2)
    for piece in pieces:
        for i in range(len(piece)):
            (ax, ay), (bx, by), (cx, cy) = piece[i - 2], piece[i - 1], piece[i]
            assert (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > -1e-9


@pytest.mark.parametrize(
    ("make", "word"),
    [
        (lambda: Revolved(HERE, Y, ((-1.0, 0.0), (5.0, 0.0), (5.0, 5.0))), "one side of its axis"),
        (lambda: Revolved(HERE, Y, ((1.0, 0.0), (5.0, 0.0), (5.0, 5.0)), 0.0, X, 4.0), "part turn"),
        (lambda: solid(Revolved(HERE, Y, ((1.0, 0.0), (5.0, 5.0), (5.0, 0.0), (1.0, 5.0)))), "crosses itself"),
        (lambda: solid(Prism(HERE, X, Y, TRIANGLE, 0.0, 1.0, Bore((0.0, -3.0), 7.0))), "inside its outline"),
        (lambda: solid(Prism(HERE, X, Y, TRIANGLE, 0.0, 1.0, Bore((0.0, -30.0), 7.0))), "must be seen"),
        (lambda: solid(), "at least one piece"),
    ],
)  # fmt: skip
def test_what_is_no_solid_is_refused(make: object, word: str) -> None:
    assert callable(make)
    with pytest.raises(ValueError, match=word):
        make()
