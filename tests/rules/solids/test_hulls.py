"""The places of a point, a line and a triangle that are nearest to the origin, against many places of each."""

from random import Random

import pytest

from rules.measure.vectors import size
from rules.solids.hulls import Vertex, _mixed, _on_line, _on_triangle

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
