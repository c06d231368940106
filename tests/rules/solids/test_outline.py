"""Outlines cut into convex pieces: each piece convex, and together just as large; by hand on outlines with few ways to cut."""

import pytest

from rules.solids.outline import Polygon, area, convex_pieces

ARROWHEAD: Polygon = ((0.0, 0.0), (10.0, 0.0), (3.0, 3.0), (0.0, 10.0))
"""Its one inward corner sees no corner that is not beside it but the tip: two triangles of 10 x 3 / 2."""
FLAG: Polygon = ((0.0, 0.0), (10.0, 0.0), (6.0, 5.0), (10.0, 10.0), (0.0, 10.0))
"""A swallow-tailed flag: 100 less the notch of 10 x 4 / 2."""
ZIGZAG: Polygon = ((0.0, 0.0), (4.0, 3.0), (8.0, 0.0), (8.0, 5.0), (4.0, 8.0), (0.0, 5.0))
"""5 high everywhere, 8 wide, with an inward corner at the bottom."""
CROSS: Polygon = (
    (1.0, 0.0), (2.0, 0.0), (2.0, 1.0), (3.0, 1.0), (3.0, 2.0), (2.0, 2.0), (2.0, 3.0), (1.0, 3.0), (1.0, 2.0), (0.0, 2.0),
    (0.0, 1.0), (1.0, 1.0),
)  # fmt: skip

SLITS: Polygon = (
    (-100.0, 0.0), (18.75, 0.0), (25.0, 10.0), (24.0, 0.0), (60.0, 0.0), (-60.0, 40.0), (70.0, 0.0), (100.0, 0.0), (100.0, 50.0),
    (50.0, 50.0), (50.0, 100.0), (-100.0, 100.0),
)  # fmt: skip
"""A plate of 200 x 100 less a corner of 50 x 50, with two slits from below, of 10 x 40 / 2 and of 5.25 x 10 / 2. From the corner
at 50, 50 both ends of a side of the small slit lie in one line ahead, nearest of all, but the long slit lies between. Two cuts
at each of its three inward corners at most."""

COMB: Polygon = (
    (0.0, 0.0), (10.0, 0.0), (10.0, 2.0), (5.0, 2.0), (5.0, 4.0), (10.0, 4.0), (10.0, 6.0), (5.0, 6.0), (5.0, 8.0), (10.0, 8.0),
    (10.0, 10.0), (0.0, 10.0),
)  # fmt: skip
"""Three teeth with two gaps of 5 x 2, whose four inward corners lie in one line."""


def turn(one: tuple[float, float], middle: tuple[float, float], other: tuple[float, float]) -> float:
    (ax, ay), (bx, by), (cx, cy) = one, middle, other
    return (bx - ax) * (cy - by) - (by - ay) * (cx - bx)


@pytest.mark.parametrize(
    ("outline", "size", "most"),
    [(ARROWHEAD, 30.0, 2), (FLAG, 80.0, 3), (ZIGZAG, 40.0, 3), (CROSS, 5.0, 5), (COMB, 80.0, 5), (SLITS, 17273.75, 7)],
)
@pytest.mark.parametrize("backwards", [False, True])
def test_pieces_are_convex_and_as_large_as_the_whole(outline: Polygon, size: float, most: int, backwards: bool) -> None:
    """Whichever corner the outline begins at, and whichever way it runs."""
    for first in range(len(outline)):
        begun = outline[first:] + outline[:first]
        pieces = convex_pieces(begun[::-1] if backwards else begun)
        assert len(pieces) <= most
        assert sum(map(area, pieces)) == pytest.approx(size)
        for piece in pieces:
            assert area(piece) > 0.1 and set(piece) <= set(outline)
            assert all(
                turn(*three) > -1e-9 for three in zip(piece, piece[1:] + piece[:1], piece[2:] + piece[:2], strict=True)
            )


def test_an_arrowhead_is_cut_from_its_inward_corner_to_its_tip() -> None:
    pieces = convex_pieces(ARROWHEAD)
    assert [area(piece) for piece in pieces] == [15.0, 15.0]
    assert all({(0.0, 0.0), (3.0, 3.0)} <= set(piece) and len(piece) == 3 for piece in pieces)
