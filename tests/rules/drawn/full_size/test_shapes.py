"""The rectangle that each kind of thing on a full-size drawing fills, by hand."""

from math import sqrt

import pytest

from rules.drawn.full_size.shapes import PaperArc, PaperBox, PaperCircle, PaperItem, PaperWords, Stroke, bounds

WORDS = PaperWords((0.0, 0.0), "plate", size=72.0)
"""One inch from line to line; its figures reach lower than its middle by 0.62 of that and higher by 0.45."""


def sides(box: PaperBox) -> tuple[float, float, float, float]:
    return box.left, box.bottom, box.right, box.top


@pytest.mark.parametrize(
    ("item", "filled"),
    [
        (Stroke(((3.0, 9.0), (-4.0, 2.0), (5.0, -7.0))), (-4.0, -7.0, 5.0, 9.0)),
        (PaperCircle((30.0, 20.0), 8.0), (22.0, 12.0, 38.0, 28.0)),
        (PaperCircle((-5.0, -60.0), 1.5), (-6.5, -61.5, -3.5, -58.5)),
        # a quarter turn from the right to the top; one about the top, from 45 degrees on either side of it
        (PaperArc((30.0, 20.0), 8.0, 0.0, 90.0), (30.0, 20.0, 38.0, 28.0)),
        (PaperArc((0.0, 0.0), 10.0, 45.0, 90.0), (-5 * sqrt(2), 5 * sqrt(2), 5 * sqrt(2), 10.0)),
        (PaperArc((0.0, 0.0), 10.0, 90.0, 180.0), (-10.0, -10.0, 0.0, 10.0)),
    ],
)
def test_what_a_thing_fills(item: PaperItem, filled: tuple[float, float, float, float]) -> None:
    assert sides(item.box) == pytest.approx(filled, abs=1e-9)


def test_words_that_are_turned_up_fill_as_much_the_other_way() -> None:
    level, upright = WORDS.box, PaperWords((0.0, 0.0), "plate", angle=90.0, size=72.0).box
    assert (level.bottom, level.top) == pytest.approx((-0.62 * 25.4, 0.45 * 25.4))
    assert level.left == 0.0 < level.right
    assert sides(upright) == pytest.approx((-level.top, 0.0, -level.bottom, level.right), abs=1e-9)


def test_all_together_reach_as_far_as_the_one_that_reaches_farthest_each_way() -> None:
    """Four circles of 2 about a square of 20, and nothing at all."""
    ring = [PaperCircle(at, 2.0) for at in ((0.0, 0.0), (20.0, 0.0), (20.0, 20.0), (0.0, 20.0))]
    assert sides(bounds(ring)) == (-2.0, -2.0, 22.0, 22.0)
    assert sides(bounds([])) == (0.0, 0.0, 0.0, 0.0)
