"""Yield lines of the wall under an arm or lug, found by a general library: limit analysis as a linear programme (scipy).

The wall is cut into triangles that stay flat; it gives where the work in the lines between them is least for a rectangle that is
lifted or turned as one piece. Every mesh gives at least the true figure, and one whose lines can lie as the formula's mechanism
lies gives just that. Plastic moment of 1 mm of wall: S t^2 / 4.
"""

from collections.abc import Callable
from itertools import pairwise
from math import ceil, hypot

import numpy as np
import pytest
from scipy.optimize import linprog
from scipy.sparse import csr_matrix, hstack, identity, lil_matrix, vstack

from rules.strength.wall import wall_moment, wall_moment_across, wall_pull

YIELD, THICK, WALL = 250.0, 5.0, 100.0
Motion = Callable[[float, float], float]


def lines(start: float, end: float, pieces: int) -> list[float]:
    return [start + (end - start) * piece / pieces for piece in range(pieces)]


def least_work(across: float, along: float, motion: Motion) -> float:
    """Least work of the yield lines, N mm, for a motion of the rectangle, mm, by place from its middle across and along."""
    gap = (WALL - across) / 2
    step = gap / 2 * 2**0.5  # slanting lines of the mechanism then lie along diagonals
    half = along / 2
    xs = np.array(
        [
            *lines(-WALL / 2, -across / 2, 2),
            *lines(-across / 2, across / 2, 4),
            *lines(across / 2, WALL / 2, 2),
            WALL / 2,
        ]
    )
    in_it = 2 * ceil(half / step)
    ys = np.array(
        [
            *lines(-half - 4 * step, -half, 4),
            *lines(-half, half, in_it),
            *lines(half, half + 4 * step, 4),
            half + 4 * step,
        ]
    )
    places = np.array([(x, y) for x in xs for y in ys])
    triangles = []
    for i, (left, right) in enumerate(pairwise(xs)):
        for j, (low, high) in enumerate(pairwise(ys)):
            a, b, c, d = (p * len(ys) + q for p, q in ((i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)))
            falls = (left + right) * (low + high) > 0
            triangles += [(a, b, d), (b, c, d)] if falls else [(a, b, c), (a, c, d)]
    slopes = [np.linalg.inv(np.column_stack([places[list(corners)], np.ones(3)]))[:2] for corners in triangles]
    edges: dict[tuple[int, int], list[int]] = {}
    for number, corners in enumerate(triangles):
        for pair in ((0, 1), (1, 2), (2, 0)):
            edges.setdefault(tuple(sorted(corners[k] for k in pair)), []).append(number)  # type: ignore[arg-type]
    turns, lengths = lil_matrix((len(edges), len(places))), []
    for row, ((one, other), beside) in enumerate(edges.items()):
        way = places[other] - places[one]
        lengths.append(hypot(*way))
        for sign, number in zip((1, -1), beside, strict=False):
            part = np.array([way[1], -way[0]]) / lengths[-1] @ slopes[number]
            for corner, value in zip(triangles[number], part, strict=True):
                turns[row, corner] += sign * value
    held = {}
    for number, (x, y) in enumerate(places):
        if abs(x) >= WALL / 2 - 1e-9 or y in (ys[0], ys[-1]):
            held[number] = 0.0
        elif abs(x) <= across / 2 + 1e-9 and abs(y) <= half + 1e-9:
            held[number] = motion(x, y)
    free = [number for number in range(len(places)) if number not in held]
    turns = csr_matrix(turns)
    known = turns @ np.array([held.get(number, 0.0) for number in range(len(places))])
    size = identity(len(edges))
    both = vstack([hstack([turns[:, free], -size]), hstack([-turns[:, free], -size])])
    cost = np.concatenate([np.zeros(len(free)), YIELD * THICK**2 / 4 * np.array(lengths)])
    bounds = [(None, None)] * len(free) + [(0, None)] * len(edges)
    found = linprog(cost, A_ub=both, b_ub=np.concatenate([-known, known]), bounds=bounds, method="highs")
    assert found.success
    return float(found.fun)


# across and along; how far above the formula the lines of this mesh may lie: the along moment's own lines slant otherwise
@pytest.mark.parametrize("across, along, over", [(50.0, 50.0, 0.02), (60.0, 40.0, 0.01)])
def test_pull_and_both_moments_are_those_of_the_least_work(across: float, along: float, over: float) -> None:
    sizes = (YIELD, THICK, WALL, across, along)
    for formula, motion in (
        (wall_pull, lambda x, y: 1.0), (wall_moment, lambda x, y: y), (wall_moment_across, lambda x, y: x),
    ):  # fmt: skip
        assert 1 - 1e-3 <= least_work(across, along, motion) / formula(*sizes) <= 1 + over, formula.__name__
