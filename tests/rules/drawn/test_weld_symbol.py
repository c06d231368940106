"""Weld symbols on both kinds of sheet. From memory of AWS A2.4 (weld on the arrow's side: below the line) and of ISO 2553,
system A (on the arrow's side: above the full line, with a dashed line below)."""

from math import dist, sqrt

import pytest

from rules.drawn.full_size.shapes import PaperCircle, PaperWords, Stroke, bounds
from rules.drawn.weld_symbol import weld_symbol
from rules.measure.quantity import Units
from rules.sheet.arranged import RINGS


def signs(form: str, units: Units) -> list[Stroke]:
    """The triangles or bevels: strokes of three points that have an upright side."""
    items = [item for item in weld_symbol(form, "6", "40", units) if isinstance(item, Stroke)]
    return [one for one in items if len(one.points) == 3 and any(y == 0 for _, y in one.points) and not one.filled]


@pytest.mark.parametrize(
    ("form", "units", "sides"),
    [
        ("fillet on one side", "inch", [-1]),
        ("fillet on one side", "metric", [1]),
        ("fillet on both sides", "inch", [1, -1]),
        ("fillet on both sides", "metric", [1, -1]),
        ("full bevel", "inch", [-1]),
        ("full bevel", "metric", [1]),
    ],
)
def test_the_sign_stands_on_its_side_of_the_line_with_its_upright_leg_at_the_left(
    form: str, units: Units, sides: list[int]
) -> None:
    found = signs(form, units)
    assert len(found) == len(sides)
    for sign, side in zip(found, sides, strict=True):
        (left, _), *_ = sign.points
        assert sorted(sign.points[:2], key=lambda point: abs(point[1])) == [
            (left, 0.0),
            (left, pytest.approx(side * 3.4)),
        ]
        last = sign.points[2]
        assert last == pytest.approx((left + 3.4, side * 3.4 if form == "full bevel" else 0.0))
        assert sign.closed is (form != "full bevel")


@pytest.mark.parametrize(("units", "size"), [("inch", "6"), ("metric", "z 6")])
def test_size_stands_left_of_the_sign_and_length_right_of_it(units: Units, size: str) -> None:
    items = weld_symbol("fillet on one side", "6", "40", units)
    words = {item.text: item.at[0] for item in items if isinstance(item, PaperWords)}
    (sign,) = signs("fillet on one side", units)
    left, right = min(x for x, _ in sign.points), max(x for x, _ in sign.points)
    assert set(words) == {size, "40"} and words[size] < left and words["40"] > right
    dashed = [item for item in items if isinstance(item, Stroke) and item.pen == "hidden"]
    assert len(dashed) == (units == "metric")


@pytest.mark.parametrize(
    ("leg", "run", "units", "said"),
    [("7/16 in", "4.2 in", "inch", {"7/16", "4.2"}), ("11.11 mm", "106.7 mm", "metric", {"z 11.11", "106.7"})],
)
def test_figures_stand_without_their_unit_and_keep_to_the_column(
    leg: str, run: str, units: Units, said: set[str]
) -> None:
    """The column of the welding sheet is 52/190 of 183 mm on A4: 50 mm."""
    items = weld_symbol("fillet on both sides", leg, run, units)
    assert {item.text for item in items if isinstance(item, PaperWords)} == said
    assert bounds(items).width < 48.0


def test_a_weld_all_round_has_a_ring_at_the_arrow_and_no_length() -> None:
    for form in RINGS:
        items = weld_symbol(form, "6", "40", "inch")
        assert [item.centre for item in items if isinstance(item, PaperCircle)] == [(0.0, 0.0)]
        assert not [item for item in items if isinstance(item, PaperWords) and item.text == "40"]
    assert weld_symbol("", "6", "40", "inch") == ()


def test_the_arrow_has_a_head_that_lies_evenly_about_its_line() -> None:
    """By hand: from the reference line to the tip it is 6 left and 5 down. The head is 2.4 long and 1 wide: the middle of its
    base is that far up the line, and both its corners are half a millimetre to the side of it, square to the line."""
    (head,) = (one for one in weld_symbol("full bevel", "", "", "inch") if isinstance(one, Stroke) and one.filled)
    tip, one, other = head.points
    assert tip == (-6.0, -5.0) and head.closed
    middle = ((one[0] + other[0]) / 2, (one[1] + other[1]) / 2)
    assert middle == pytest.approx((-6 + 2.4 * 6 / sqrt(61), -5 + 2.4 * 5 / sqrt(61)), abs=0.01)
    assert dist(one, other) == pytest.approx(1.0)
    assert dist(tip, one) == pytest.approx(sqrt(2.4**2 + 0.5**2)) == dist(tip, other)
