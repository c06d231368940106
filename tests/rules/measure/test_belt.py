"""A belt round discs against a general geometry library: the hull of finely drawn circles."""

import math
from functools import cache
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial import ConvexHull

from rules.measure.belt import Round, arcs, belt_distance, belt_ends, belt_points, straights

BOTTLE = (Round(-60.0, 20.0, 15.0), Round(60.0, 20.0, 15.0), Round(-60.0, -30.0, 15.0), Round(60.0, -30.0, 15.0),
          Round(8.0, 130.0, 30.0), Round(-5.0, -120.0, 25.0))  # fmt: skip
SHARP = tuple(Round(disc.x, disc.y, 0.0) for disc in BOTTLE[:4]) + BOTTLE[4:]
FINE = 2000
"""Sides to a circle: the drawn circle lies within 1 - cos(pi / 2000) = 1.2e-6 of its radius."""


@cache
def hull(discs: tuple[Round, ...]) -> ConvexHull:
    turns = [2 * math.pi * step / FINE for step in range(FINE)]
    return ConvexHull(
        [(disc.x + disc.radius * math.cos(t), disc.y + disc.radius * math.sin(t)) for disc in discs for t in turns]
    )


def ends(drawn: ConvexHull, level: float) -> tuple[float, float] | None:
    """Where a level line meets the hull's sides."""
    corners = drawn.points[drawn.vertices]
    xs = [
        x1 + (x2 - x1) * (level - y1) / (y2 - y1)
        for (x1, y1), (x2, y2) in zip(corners, np.roll(corners, -1, axis=0), strict=True)
        if min(y1, y2) <= level <= max(y1, y2) and y1 != y2
    ]
    return (min(xs), max(xs)) if xs else None


def area(points: list[tuple[float, float, float]]) -> float:
    """Triangles to the origin, and a segment of a circle, r r (t - sin t) / 2, for each bulge tan(t / 4)."""
    total = 0.0
    for (x1, y1, bulge), (x2, y2, _) in pairwise([*points, points[0]]):
        turn = 4 * math.atan(bulge)
        radius = math.dist((x1, y1), (x2, y2)) / 2 / math.sin(turn / 2) if bulge else 0.0
        total += (x1 * y2 - x2 * y1) / 2 + radius**2 * (turn - math.sin(turn)) / 2
    return total


@pytest.mark.parametrize("discs", [BOTTLE, SHARP, BOTTLE[:4], BOTTLE[4:]])
def test_area_and_ends_are_those_of_the_hull(discs: tuple[Round, ...]) -> None:
    drawn = hull(discs)
    assert area(belt_points(discs)) == pytest.approx(drawn.volume, rel=1e-5)  # in the plane its volume is the area
    for level in (-100.0, -31.0, 0.0, 33.3, 120.0):
        drawn_ends = ends(drawn, level)
        if drawn_ends is None:
            assert belt_ends(discs, level) is None
        else:
            assert belt_ends(discs, level) == pytest.approx(drawn_ends, abs=2e-3)


def test_lines_meet_circles_tangent() -> None:
    """From the middle of the disc that a straight ends on, it runs square to the radius there."""
    for side in straights(BOTTLE):
        along = (side.end[0] - side.start[0], side.end[1] - side.start[1])
        for x, y in (side.start, side.end):
            _, touched = min(
                ((abs(math.dist((x, y), (disc.x, disc.y)) - disc.radius), disc) for disc in BOTTLE),
                key=lambda found: found[0],
            )
            assert (x - touched.x) * along[0] + (y - touched.y) * along[1] == pytest.approx(0.0, abs=1e-5)
    assert sum(2 * arc.half for arc in arcs(BOTTLE)) == pytest.approx(2 * math.pi)


def test_a_disc_inside_the_others_changes_nothing() -> None:
    assert belt_points((*BOTTLE, Round(0.0, 0.0, 20.0))) == belt_points(BOTTLE)


@given(st.floats(-120, 120), st.floats(-200, 200))
def test_distance_to_the_edge_is_that_of_the_hull(x: float, y: float) -> None:
    """Inside, the nearest of the hull's sides; outside, the nearest place on one."""
    drawn = hull(BOTTLE)
    inside = -(drawn.equations[:, :2] @ (x, y) + drawn.equations[:, 2]).max()
    if inside >= 0:
        assert belt_distance((x, y), BOTTLE) == pytest.approx(inside, abs=1e-3)
    else:
        corners = drawn.points[drawn.vertices]
        runs = np.roll(corners, -1, axis=0) - corners
        share = np.clip(((np.array((x, y)) - corners) * runs).sum(axis=1) / (runs**2).sum(axis=1), 0.0, 1.0)
        away = np.hypot(*(corners + share[:, None] * runs - (x, y)).T).min()
        assert belt_distance((x, y), BOTTLE) == pytest.approx(-away, abs=1e-3)


def test_the_arcs_of_a_rectangle_with_three_round_corners() -> None:
    """Each a quarter of a turn, half of it either side of the middle, at 45, 135 and 225 deg; a sharp corner has none."""
    corners = (Round(40.0, 60.0, 10.0), Round(-30.0, 50.0, 20.0), Round(-35.0, -55.0, 15.0), Round(50.0, -70.0, 0.0))
    found = {arc.disc: (math.degrees(arc.middle) % 360, math.degrees(arc.half)) for arc in arcs(corners)}
    assert found == {
        corners[0]: (pytest.approx(45.0), pytest.approx(45.0)), corners[1]: (pytest.approx(135.0), pytest.approx(45.0)),
        corners[2]: (pytest.approx(225.0), pytest.approx(45.0)),
    }  # fmt: skip


def test_the_arcs_of_two_discs_side_by_side() -> None:
    """A half turn round each of two alike; round a disc of 30 and one of 10, 40 apart, 60 deg more and less than that."""
    alike = {arc.disc.x: (math.degrees(arc.middle) % 360, math.degrees(arc.half)) for arc in arcs(
        (Round(0.0, 0.0, 10.0), Round(40.0, 0.0, 10.0)))}  # fmt: skip
    assert alike == {0.0: (pytest.approx(180.0), pytest.approx(90.0)), 40.0: (pytest.approx(0.0), pytest.approx(90.0))}
    unlike = {arc.disc.radius: math.degrees(arc.half) for arc in arcs((Round(0.0, 0.0, 30.0), Round(40.0, 0.0, 10.0)))}
    assert unlike == {30.0: pytest.approx(120.0), 10.0: pytest.approx(60.0)}
