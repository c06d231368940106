"""Gaps of random pairs of every two kinds of shape, against general mesh libraries; see tests/support/meshes.py."""

from itertools import combinations_with_replacement
from math import inf
from random import Random

import pytest

from rules.solids import gap as solids_gap
from rules.solids.gap import Solid, deeper, gap, nearer
from rules.solids.shapes import solid
from rules.solids.space import plus, shift, times
from tests.support.meshes import WITHIN, Mesh, apart, whole
from tests.support.random_shapes import KINDS, Make, Square

TRIES = 2
"""Pairs of every two kinds."""


PAIRS = list(combinations_with_replacement(KINDS, 2))


def quick_answers_agree(one: Solid, other: Solid, mesh: Mesh, other_mesh: Mesh, share: float) -> None:
    """Whether they share a point, and whether more than so much, as the libraries and the whole answer have it."""
    room, back = solids_gap.apart(one, other, inf), solids_gap.apart(other, one, inf)
    assert room is not None and back is not None
    assert (room == 0) == (back == 0) or max(room, back) < 0.05
    if share > 20.0:  # mm3; more than the meshes' corners stand out by
        assert room == 0
    if share == 0:
        assert room == pytest.approx(apart(mesh, other_mesh), abs=WITHIN)
        assert not deeper(one, other, 2 * WITHIN) and not deeper(other, one, 2 * WITHIN)
        assert room < 0.2 or solids_gap.apart(one, other, room - 0.1) is None
    depth = -gap(one, other).distance
    for than in (0.1, 0.5, 5.0):
        if depth > 1.01 * than + 0.02:
            assert deeper(one, other, than)
        elif 1.35 * depth + 0.1 < than:  # no two pieces are more than a quarter deeper than the two found
            assert not deeper(one, other, than)


def agree(one: Solid, other: Solid, mesh: Mesh, other_mesh: Mesh) -> float:
    """Apart or overlapping as the libraries have it, as far apart, and both ways round. Gives the gap."""
    found, back = gap(one, other), gap(other, one)
    common = (mesh ^ other_mesh).volume()
    quick_answers_agree(one, other, mesh, other_mesh, common)
    if common > 0:
        assert found.distance < WITHIN and back.distance < WITHIN
        if found.distance >= 0:  # only what the meshes' corners stand out by may touch
            assert common < 20.0
    else:
        assert found.distance == pytest.approx(apart(mesh, other_mesh), abs=WITHIN)
        assert back.distance == pytest.approx(found.distance, abs=0.05)
        assert nearer(one, other, found.distance - 0.1) is None
    return found.distance


@pytest.mark.parametrize("kind", [Random, Square])
@pytest.mark.parametrize("pair", PAIRS, ids=lambda pair: f"{pair[0].__name__}-{pair[1].__name__}")
def test_random_pairs(pair: tuple[Make, Make], kind: type[Random]) -> None:
    """Where they happen to be, and then, if that is apart, 1 mm further together than would make them touch."""
    r = kind(f"{pair[0].__name__} and {pair[1].__name__}")
    for _ in range(TRIES):
        first, second = pair[0](r), pair[1](r)
        one, other, mesh, other_mesh = solid(*first), solid(*second), whole(first), whole(second)
        room = agree(one, other, mesh, other_mesh)
        if room > WITHIN:
            found = gap(one, other)
            step = times((room + 1) / room, plus(found.on_a, times(-1, found.on_b)))
            agree(one, other.moved(shift(step)), mesh, other_mesh.translate(step))


def test_both_cases_are_among_the_pairs() -> None:
    """The random pairs hold enough of each case to mean something: apart and overlapping, of all kinds."""
    overlapping = 0
    for one, other in PAIRS:
        r = Random(f"{one.__name__} and {other.__name__}")
        overlapping += sum(gap(solid(*one(r)), solid(*other(r))).distance < 0 for _ in range(TRIES))
    assert len(PAIRS) * TRIES * 0.2 < overlapping < len(PAIRS) * TRIES * 0.8
