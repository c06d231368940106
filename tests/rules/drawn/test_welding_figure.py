"""The welder's figure by hand: where pivots, faces and their figures stand on paper, reduced five times.

Lower pivot 150 mm inboard of the hub face and 130 below the spindle, upper 200 and 120; mounting face 60 behind the hub face;
the lower pivot's housing reaches 30, the upper one's is not known and takes 12.
"""

from math import atan2, radians

import pytest

from rules.drawn.full_size.figures import FigureWriter
from rules.drawn.full_size.shapes import PaperItem, PaperWords, Stroke, View
from rules.drawn.welding_figure import _from_the_front, _from_the_hub_side
from rules.sheet import read_sheet

PIVOTS = {
    "hub.flange_to_mount_face": 60.0,
    "lower_pivot_from_hub_face": 150.0,
    "upper_pivot_from_hub_face": 200.0,
    "pivots.lower_below_spindle": 130.0,
    "upper_above_spindle": 120.0,
    "pivots.lower_radius": 30.0,
    "lower_pivot_ahead": 20.0,
    "upper_pivot_ahead": -10.0,
    "pivots.inclination": radians(11.3),
    "pivots.castor": radians(6.8),
}
FIGURES = FigureWriter(read_sheet({"units": "metric"}), "metric")
SCALE = 5.0


def front(known: dict[str, object] = PIVOTS) -> View:
    return _from_the_front(known, FIGURES, SCALE)


def lines(items: tuple[PaperItem, ...], pen: str) -> list[tuple[float, ...]]:
    """Every straight line of a pen as x1, y1, x2, y2."""
    found = [item.points for item in items if isinstance(item, Stroke) and item.pen == pen and len(item.points) == 2]
    return [(*start, *end) for start, end in found]


def words(view: View) -> list[str]:
    return [item.text for item in view.items if isinstance(item, PaperWords)]


def has(found: list[tuple[float, ...]], *line: float) -> bool:
    return any(one == pytest.approx(line, abs=1e-6) for one in found)


def test_the_two_faces_stand_as_far_apart_as_measured() -> None:
    outlines = lines(front().items, "outline")
    assert has(outlines, 0.0, -11.0, 0.0, 11.0)  # 55 mm each way
    assert has(outlines, -12.0, -26.0, -12.0, 24.0)  # 60 behind, from the pivot 130 below to that 120 above
    assert len(outlines) == 2


def test_each_pivot_is_a_cross_with_the_axis_between_them() -> None:
    centres = lines(front().items, "centre")
    assert has(centres, -38.0, -26.0, -22.0, -26.0) and has(
        centres, -30.0, -34.0, -30.0, -18.0
    )  # 150, 130; 30 + 2 on paper
    assert has(centres, -44.4, 24.0, -35.6, 24.0) and has(centres, -40.0, 19.6, -40.0, 28.4)  # 200, 120; 12
    assert has(centres, -30.0, -26.0, -40.0, 24.0)
    # The spindle from 6 beyond what reaches farthest inboard, -40 - 2.4, to 10 outboard.
    assert has(centres, -48.4, 0.0, 10.0, 0.0)
    assert len(centres) == 6


def test_every_distance_stands_beside_its_line() -> None:
    said = words(front())
    for figure in ("60 mm", "150 mm", "200 mm", "130 mm", "120 mm", "11.3 deg"):
        assert said.count(figure) == 1, (figure, said)
    assert {"weld 1", "weld 2", "hub face", "plate face"} <= set(said)
    thin = lines(front().items, "thin")
    # What is drawn reaches from -34 to 28.4 and -48.4 to the left: dimension lines stand 7 mm on from there and apart.
    assert has(thin, 0.0, 35.4, -12.0, 35.4)
    assert has(thin, 0.0, -41.0, -30.0, -41.0)
    assert has(thin, 0.0, 42.4, -40.0, 42.4)
    assert has(thin, -62.4, 0.0, -62.4, -26.0)
    assert has(thin, -55.4, 0.0, -55.4, 24.0)


def test_the_lean_is_the_angle_between_plumb_and_the_axis() -> None:
    arcs = [item.points for item in front().items if isinstance(item, Stroke) and len(item.points) == 25]
    (arc,) = arcs
    top = (arc[-1][0] + 30.0, arc[-1][1] + 26.0)
    assert atan2(-top[0], top[1]) == pytest.approx(atan2(10.0, 50.0))  # 50 over 250 mm
    assert top[0] ** 2 + top[1] ** 2 == pytest.approx((0.62 * 50) ** 2)


def test_without_pivots_only_the_faces_are_drawn() -> None:
    view = front({"hub.flange_to_mount_face": 60.0})
    assert words(view) == ["60 mm", "hub face", "plate face"]
    assert has(lines(view.items, "centre"), -18.0, 0.0, 10.0, 0.0)


def test_from_the_hub_side_front_is_at_the_left() -> None:
    view = _from_the_hub_side(PIVOTS, FIGURES, SCALE)
    centres = lines(view.items, "centre")
    assert has(centres, -12.0, -26.0, 4.0, -26.0)  # 20 ahead: 4 to the left
    assert has(centres, -2.4, 24.0, 6.4, 24.0)  # 10 behind
    assert has(centres, -16.0, 0.0, 16.0, 0.0)  # 4 beyond what reaches farthest, -12; the hub face takes 11
    assert has(centres, 0.0, -37.0, 0.0, 31.4)  # 3 beyond -34 and 28.4
    said = words(view)
    assert said.count("20 mm") == said.count("10 mm") == said.count("6.8 deg") == said.count("front") == 1
    thin = lines(view.items, "thin")
    assert has(thin, -16.0, -12.8, -25.0, -12.8)  # the arrow that says where the front is
