"""What the words on the view from outside speak of: each one's leader line begins on that, by hand from the round sheet."""

from math import hypot

import pytest

from rules.drawn.full_size.shapes import PaperCircle, PaperWords, Stroke, View
from rules.drawn.full_size.side import side_view
from tests.support.base_sheet import changed
from tests.support.judging import judged_document

PLATE = {
    "plate.thickness": "10 mm", "plate.width": "130 mm", "plate.height": "300 mm", "plate.spindle_from_top": "150 mm",
    "plate.spindle_from_front": "60 mm", "plate.bore": "90 mm",
}  # fmt: skip
UPPER, LOWER = (13.631, 129.689), (-13.138, -125.0)
"""x behind the wheel centre. The axis passes through that: 125 tan 6 = 13.138 ahead at the lower pivot. The pivots are 260
apart: 260 / sqrt(1 + tan2 10 + tan2 6) = 254.689 higher is 254.689 tan 6 = 26.769 farther behind."""


@pytest.fixture(scope="module")
def view() -> View:
    return side_view(judged_document(changed(PLATE)), "whole")


def begins(view: View, words: str) -> list[tuple[float, float]]:
    """Where the leader lines of words that begin so begin themselves."""
    return [one.led[0] for one in view.items if isinstance(one, PaperWords) and one.led and one.text.startswith(words)]


@pytest.mark.parametrize(
    ("words", "radius"),
    [
        ("rotor ø 280 mm", 140.0),
        ("rim ø 15 in", 190.5),
        ("barrel inside ø 360 mm", 180.0),
        ("hub pilot ø 107.8 mm", 53.9),
        ("studs, 6 on ø 135", 67.5),
        ("plate bore ø 90 mm", 45.0),
    ],
)
def test_words_of_a_circle_begin_on_it(view: View, words: str, radius: float) -> None:
    ((x, y),) = begins(view, words)
    assert hypot(x, y) == pytest.approx(radius)


def test_words_of_sizes_begin_where_they_are(view: View) -> None:
    """The plate ends 130 - 60 = 70 behind the wheel centre and from 150 above it to 150 below. Its bolts stand at 42 and 43."""
    ((x, y),) = begins(view, "plate 130 mm wide")
    assert x == pytest.approx(70.0) and -150.0 < y < 150.0
    ((x, y),) = begins(view, "hub bolts, 4 of")
    assert (abs(x), abs(y)) == pytest.approx((42.0, 43.0))
    for pivot, place in (("upper pivot", UPPER), ("lower pivot", LOWER)):
        assert any(one == pytest.approx(place, abs=2e-3) for one in begins(view, pivot))
    ((_, ground),) = begins(view, "ground, design tyre")
    assert ground == pytest.approx(-400.0)


def test_the_words_of_each_tyre_begin_on_its_crown(view: View) -> None:
    """31, 33 and, between them, 32 in across: their crowns are drawn a twentieth of that to either side. No two lines begin at
    one place across, or one would run along the other."""
    across = []
    for words, diameter in (("smallest tyre", 31 * 25.4), ("design tyre", 32 * 25.4), ("largest tyre", 33 * 25.4)):
        ((x, y),) = begins(view, words)
        assert y == pytest.approx(diameter / 2) and abs(x) <= diameter / 20
        across.append(x)
    assert min(abs(a - b) for n, a in enumerate(across) for b in across[:n]) > 5.0


def test_the_axis_runs_from_the_ground_to_above_the_upper_pivot(view: View) -> None:
    """On the ground 400 tan 6 = 42.042 ahead of the wheel centre: the mechanical trail."""
    leaning = [
        item.points
        for item in view.items
        if isinstance(item, Stroke) and item.pen == "centre" and item.points[0][0] != item.points[1][0]
    ]
    foot, top = next(points for points in leaning if points[0][1] == pytest.approx(-400.0))
    assert foot[0] == pytest.approx(-42.042, abs=1e-3)
    assert (top[0] - foot[0]) / (top[1] - foot[1]) == pytest.approx(0.105104, abs=1e-6), "tan 6 deg"
    assert top[1] > UPPER[1]
    assert begins(view, "steering axis") == [pytest.approx(top)]


def test_circles_of_the_hub_and_the_bolts_stand_about_their_middles(view: View) -> None:
    """Bolt holes at 42 fore and aft and 43 up and down; the bore, the pilot and the studs' circle about the wheel's axis."""
    circles = [(*item.centre, item.radius) for item in view.items if isinstance(item, PaperCircle)]
    for radius in (45.0, 53.9, 67.5):
        assert any(one == pytest.approx((0.0, 0.0, radius)) for one in circles), radius
    for x in (-42.0, 42.0):
        for y in (-43.0, 43.0):
            assert any(one[:2] == pytest.approx((x, y)) for one in circles), (x, y)


def crosses(view: View, x: float, y: float) -> list[float]:
    """How far the centre lines of a cross at a place reach to the right of it."""
    return [
        max(end[0] for end in item.points) - x
        for item in view.items
        if isinstance(item, Stroke) and item.pen == "centre" and len(item.points) == 2
        and all(end[1] == pytest.approx(y, abs=2e-3) for end in item.points)
        and sum(end[0] for end in item.points) / 2 == pytest.approx(x, abs=2e-3)
    ]  # fmt: skip


def test_the_wheel_centre_has_a_cross_out_to_the_rotor_or_a_small_one(view: View) -> None:
    """8 beyond the rotor's edge of 140; without a rotor's size 30."""
    assert crosses(view, 0.0, 0.0) == [pytest.approx(148.0)]
    without = side_view(judged_document(changed({**PLATE, "rotor.diameter": None})), "whole")
    assert crosses(without, 0.0, 0.0) == [pytest.approx(30.0)]


def test_crosses_stand_on_the_bolts_and_the_pivots(view: View) -> None:
    """5 beyond a housing of 22, and 3 beyond a hole."""
    for pivot in (UPPER, LOWER):
        assert crosses(view, *pivot) == [pytest.approx(27.0, abs=2e-3)]
    for x in (-42.0, 42.0):
        for y in (-43.0, 43.0):
            assert len(crosses(view, x, y)) == 1


def test_bolts_on_a_circle_have_that_drawn_and_named() -> None:
    """Three on 100 mm, the first straight up: the others at 120 deg, 50 sin 120 = 43.301 fore and aft and 25 down."""
    circle = {
        "hub.mount_bolts": 3, "hub.mount_circle": "100 mm", "hub.mount_turned": "0 deg", "hub.mount_width": None,
        "hub.mount_height": None,
    }  # fmt: skip
    view = side_view(judged_document(changed({**PLATE, **circle})), "whole")
    circles = [(*item.centre, item.radius) for item in view.items if isinstance(item, PaperCircle)]
    assert any(one == pytest.approx((0.0, 0.0, 50.0)) for one in circles)
    ((x, y),) = begins(view, "hub bolts, 3 of 12 x 1.75 mm on ø 100 mm")
    assert (abs(x), y) == (pytest.approx(43.301, abs=1e-3), pytest.approx(-25.0)) or (x, y) == pytest.approx(
        (0.0, 50.0)
    )
    for place in ((0.0, 50.0), (43.301, -25.0), (-43.301, -25.0)):
        assert any(one[:2] == pytest.approx(place, abs=1e-3) for one in circles), place


def test_bolts_placed_one_by_one_are_named_by_their_clock_and_their_distance() -> None:
    """At 1 o'clock, 30 deg, 60 from the middle: 60 sin 30 = 30 ahead, so to the left, and 51.962 up."""
    placed = {
        "hub.mount_places": "1 at 60 mm; 4:30 at 58 mm; 8 at 60 mm; 10:30 at 58 mm", "hub.mount_width": None,
        "hub.mount_height": None,
    }  # fmt: skip
    view = side_view(judged_document(changed({**PLATE, **placed})), "whole")
    assert begins(view, "hub bolts, 4 of 12 x 1.75 mm 30 deg from the top, R 60 mm") == [
        pytest.approx((-30.0, 51.962), abs=1e-3)
    ]
    assert begins(view, "hub bolt 135 deg from the top, R 58 mm") == [
        pytest.approx((-41.012, -41.012), abs=1e-3)
    ]  # 58 sin 135
    assert len(begins(view, "hub bolt ")) == 3
