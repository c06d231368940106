"""How far one solid has to go to be clear of another, each by hand from blocks with corners on whole mm."""

from math import inf

import pytest

from rules.solids.gap import gap, told_whole
from rules.solids.shapes import Prism, block, ring, solid
from rules.solids.space import Vector

X: Vector = (1.0, 0.0, 0.0)
Y: Vector = (0.0, 1.0, 0.0)


def slab(low: float, high: float, wide: float = 400.0) -> Prism:
    """From one place to another along x, and far more the other ways, so that along x is the shortest way out."""
    return block(((low + high) / 2, 0.0, 0.0), X, Y, high - low, wide, wide)


def test_two_blocks_are_clear_after_the_depth_itself() -> None:
    """0 to 30 and 27 to 50 share 3 mm."""
    one, other = solid(slab(0, 30)), solid(slab(27, 50))
    overlap = gap(one, other)
    assert overlap.distance == pytest.approx(-3.0, abs=0.1)
    assert told_whole(one, other, overlap)[1] == pytest.approx(3.0, abs=0.1)


def test_past_a_first_piece_stands_a_second() -> None:
    """7 to 9 stands in 0 to 10, three mm from where that ends. There 10 to 30 begins, so the way out is back: 9, three times
    the depth of the two, which so is not how deep the whole is.
    """
    one, other = solid(slab(0, 10), slab(10, 30)), solid(slab(7, 9))
    deepest, clear = told_whole(one, other, gap(one, other))
    assert deepest.distance == pytest.approx(-3.0, abs=0.1)
    assert clear == inf


def test_what_is_still_in_one_another_shows_another_way() -> None:
    """0 to 10 in x with its top at 50 in y, and 0 to 108 with its top at 4. What stands from 8 in x and from 0 in y is 2 mm in
    the first along x and 4 mm in the second along y. Neither shift by itself parts both. 50
    along y does, which is no depth of theirs.
    """
    low, high = block((54.0, -48.0, 0.0), X, Y, 108.0, 104.0, 400.0), block((5.0, 0.0, 0.0), X, Y, 10.0, 100.0, 400.0)
    one, other = solid(low, high), solid(block((58.0, 50.0, 0.0), X, Y, 100.0, 100.0, 400.0))
    deepest, clear = told_whole(one, other, gap(one, other))
    assert deepest.distance == pytest.approx(-4.0, abs=0.1)
    assert clear == inf


def test_two_rings_side_by_side_share_the_depth_along_their_axis() -> None:
    """-10 to 10 and 6 to 26 along y share 4 mm, and every other way out is across 100 mm of ring or more."""
    one, other = (
        solid(ring((0.0, 0.0, 0.0), Y, 60.0, 160.0, -10.0, 10.0)),
        solid(ring((0.0, 0.0, 0.0), Y, 60.0, 160.0, 6.0, 26.0)),
    )
    assert told_whole(one, other, gap(one, other))[1] == pytest.approx(4.0, abs=0.2)
