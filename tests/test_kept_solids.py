"""What comes of solids of each kind, put anyhow by dice that always fall alike, is kept to a thousandth of a millimetre.

As in `tests/test_kept.py`, none of this says that an answer is right, which `tests/rules/solids` does: it tells what has moved
that nobody meant to move. Keep it with `pytest -m "" tests/test_kept_solids.py --snapshot-update`.
"""

from collections.abc import Iterator
from math import cos, inf, pi, sin
from random import Random
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion

from rules.solids.gap import Gap, Solid, apart, deeper, nearer, told_whole
from rules.solids.hulls import depth, distance
from rules.solids.outline import area, contains, convex_pieces, edge_distance, nearest_and_farthest
from rules.solids.pieces import inner_radius, inner_side
from rules.solids.shapes import Ball, Cylinder, Prism, Revolved, solid
from rules.solids.space import Vector, square_to
from rules.solids.turning import all_round, turning_gap
from tests.support.kept import mark
from tests.support.some_solids import HERE, PAIRS, Y, anyhow, some

TIMES = 40


def coarse(what: Any) -> Any:
    """The same in thousandths, off the halves, so that no machine's last bit settles a figure."""
    if isinstance(what, float):
        return what if abs(what) == inf else round(what * 1000 + 0.0137)
    if isinstance(what, tuple | list):
        return [coarse(one) for one in what]
    return what


def of_two(a: Solid, b: Solid) -> Iterator[Any]:
    """All that is asked about two solids."""
    found = nearer(a, b)
    assert found is not None
    yield from (found, nearer(a, b, finely=True), nearer(a, b, 20.0), apart(a, b, 1000.0), apart(a, b, 30.0))
    yield from (deeper(a, b, than) for than in (0.0, 0.1, 5.0, 20.0))
    if found.distance < 0:
        yield told_whole(a, b, Gap(*found))
    for one in a.pieces[:3]:
        for other in b.pieces[:3]:
            yield distance(one, other)
            yield distance(one, other, 25.0)
            yield depth(one, other)


@pytest.mark.parametrize("pair", PAIRS, ids=" and ".join)
def test_two_solids(pair: tuple[str, str], snapshot: SnapshotAssertion) -> None:
    near, far = ([list(of_two(a, b)) for a, b, _ in some(pair, spread)] for spread in (40.0, 160.0))
    assert f"{mark(coarse(near))} {mark(coarse(far))}" == snapshot


def crooked(dice: Random) -> list[tuple[float, float]]:
    """An outline that goes once round the origin, in and out."""
    corners = dice.randrange(4, 9)
    turns = [2 * pi * (corner + dice.uniform(0.0, 0.8)) / corners for corner in range(corners)]
    reach = [dice.uniform(20.0, 90.0) for _ in turns]
    return [(far * cos(angle), far * sin(angle)) for far, angle in zip(reach, turns, strict=True)]


def of_an_outline(dice: Random) -> Iterator[Any]:
    outline = tuple(crooked(dice))
    spots = [(dice.uniform(-100, 100), dice.uniform(-100, 100)) for _ in range(6)]
    yield area(outline)
    yield from ((contains(outline, spot), nearest_and_farthest(outline, spot)) for spot in spots)
    yield from (edge_distance(spot, outline[0], outline[1]) for spot in spots)
    pieces = convex_pieces(outline)
    yield from (len(pieces), sum(map(area, pieces)))


def of_a_profile(dice: Random) -> Iterator[Any]:
    profile = tuple((radius + 100.0, along) for radius, along in crooked(dice))
    inner = inner_side(profile)
    yield inner
    yield [inner_radius(inner, along) for along in (-60.0, -20.0, 0.0, 3.0, 50.0)]


def of_what_turns(dice: Random) -> Iterator[Any]:
    """Parts of a hub that goes round, near something that stands still."""
    start: Vector = (dice.uniform(20, 90), dice.uniform(-40, 0), dice.uniform(-60, 60))
    profile = ((60.0, -20.0), (dice.uniform(70, 120), -20.0), (90.0, dice.uniform(0.0, 40.0)))
    for shape in (
        Ball(start, dice.uniform(3, 20)),
        Cylinder(start, (start[0], start[1] + dice.uniform(5, 60), start[2]), dice.uniform(3, 20)),
        Revolved(HERE, Y, profile, dice.uniform(0, 8)),
        Prism(
            start, (1.0, 0.0, 0.0), (0.0, 0.0, 1.0), ((-9.0, -9.0), (9.0, -9.0), (0.0, 9.0)), -4.0, dice.uniform(4, 9)
        ),
    ):
        whole, motion = all_round((shape,), HERE, Y), anyhow(dice, 30.0)
        fixed = solid(Ball((dice.uniform(-200, 200), dice.uniform(-50, 50), dice.uniform(-200, 200)), 20.0))
        yield turning_gap(whole, fixed)
        yield turning_gap(whole.moved(motion), fixed, 60.0)


def of_a_direction(dice: Random) -> Iterator[Any]:
    yield square_to((dice.gauss(0, 1), dice.gauss(0, 1), dice.gauss(0, 1)))


@pytest.mark.parametrize("of", [of_an_outline, of_a_profile, of_what_turns, of_a_direction])
def test_of_one(of: Any, snapshot: SnapshotAssertion) -> None:
    dice = Random(of.__name__)
    assert [mark(coarse(list(of(dice)))) for _ in range(TIMES)] == snapshot
