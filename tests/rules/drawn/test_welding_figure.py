"""The welder's figure by hand: where pivots, faces and the marks of their figures stand on paper, reduced five times.

Lower pivot 150 mm inboard of the hub face and 130 below the spindle, upper 200 and 120; mounting face 60 behind the hub face;
the lower pivot's housing reaches 30, the upper one's is not known and takes 12.
"""

from math import atan2, cos, radians, sin

import pytest

from rules.drawn.full_size.places import Segment, crossed
from rules.drawn.full_size.shapes import PaperCircle, PaperItem, PaperWords, Stroke, View
from rules.drawn.welding_figure import _from_the_front, _from_the_hub_side, _view, figures, numbered
from sample_sheets import document as sample
from tests.support.judging import judged_document

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
SCALE = 5.0


def front(known: dict[str, object] = PIVOTS) -> View:
    return _view(_from_the_front(known, SCALE))


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
    # 60 behind, past the housing of 30 round the pivot 130 below and the cross of 12 round that 120 above.
    assert has(outlines, -12.0, -32.0, -12.0, 26.4)
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


def test_the_mark_of_every_figure_stands_beside_its_line() -> None:
    """In the order of the fixture's table: plate face, lower and upper pivot inboard, below and above; the lean is ninth."""
    said = words(front())
    for mark in ("F1", "F2", "F3", "F4", "F5", "F9"):
        assert said.count(mark) == 1, (mark, said)
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


@pytest.mark.parametrize(("apart", "said"), [(7.5, True), (5.5, True), (4.5, False), (0.0, False)])
def test_an_axis_of_less_than_a_millimetre_on_paper_has_no_lean(apart: float, said: bool) -> None:
    """The upper pivot so many mm above the lower one, reduced five times."""
    known = PIVOTS | {"upper_above_spindle": apart - 130.0}
    assert ("F9" in words(front(known))) is said
    assert ("F10" in words(_view(_from_the_hub_side(known, SCALE)))) is said


def test_without_pivots_only_the_faces_are_drawn() -> None:
    view = front({"hub.flange_to_mount_face": 60.0})
    assert words(view) == ["F1", "hub face", "plate face"]
    assert has(lines(view.items, "centre"), -18.0, 0.0, 10.0, 0.0)


def test_from_the_hub_side_front_is_at_the_left() -> None:
    view = _view(_from_the_hub_side(PIVOTS, SCALE))
    centres = lines(view.items, "centre")
    assert has(centres, -12.0, -26.0, 4.0, -26.0)  # 20 ahead: 4 to the left
    assert has(centres, -2.4, 24.0, 6.4, 24.0)  # 10 behind
    assert has(centres, -16.0, 0.0, 15.0, 0.0)  # 4 beyond what reaches farthest, -12 and the hub face's 11
    assert has(centres, 0.0, -37.0, 0.0, 31.4)  # 3 beyond -34 and 28.4
    said = words(view)
    assert said.count("F6") == said.count("F7") == said.count("F10") == said.count("front") == 1
    thin = lines(view.items, "thin")
    # The arrow that says where the front is: 9 long, 3 beside the lower housing, which reaches from -4 to -10.
    assert has(thin, -13.0, -29.6, -22.0, -29.6)


@pytest.mark.parametrize(
    ("known", "left", "bottom", "top"),
    [
        ((), -15.0, -14.0, 14.0),  # the hub face alone, 55 mm each way
        (("upper_above_spindle", "upper_pivot_ahead"), -15.0, -14.0, 31.4),
        (("pivots.lower_below_spindle", "pivots.lower_radius", "lower_pivot_ahead"), -16.0, -37.0, 14.0),
    ],
)
def test_the_spindles_lines_reach_past_the_hub_face_also_where_nothing_is_drawn(
    known: tuple[str, ...], left: float, bottom: float, top: float
) -> None:
    """4 beyond it fore and aft and 3 up and down, or beyond what reaches farther."""
    centres = lines(_view(_from_the_hub_side({name: PIVOTS[name] for name in known}, SCALE)).items, "centre")
    assert has(centres, left, 0.0, 15.0, 0.0)
    assert has(centres, 0.0, bottom, 0.0, top)


@pytest.mark.parametrize("name", ["dune_wren_finished", "scree_ox_strength", "fell_badger_finished_metric"])
def test_no_leader_to_a_pivots_weld_runs_through_its_joint(name: str) -> None:
    drawn = figures(judged_document(sample(name)), 184.0, 102.0)
    assert drawn is not None
    view = drawn[1]
    housings = [item for item in view.items if isinstance(item, PaperCircle)]
    leaders = [item.led for item in view.items if isinstance(item, PaperWords) and item.text in ("weld 1", "weld 2")]
    assert len(leaders) == 2 and len(housings) >= 2
    for (x, y), radius in ((item.centre, item.radius - 0.3) for item in housings):
        inside = tuple(
            (x + radius * cos(radians(turn)), y + radius * sin(radians(turn))) for turn in (45, 135, 225, 315)
        )
        for start, end in leaders:
            led: Segment = (*start, *end)
            assert not crossed((inside[0], inside[1], inside[2], inside[3]), (led,))


def test_the_sheet_says_which_joints_the_figure_shows() -> None:
    dune, ox = (
        figures(judged_document(sample(name)), 184.0, 102.0) for name in ("dune_wren_finished", "scree_ox_strength")
    )
    assert dune is not None and numbered(dune[1:]) == (1, 2)
    assert ox is not None and numbered(ox[1:]) == (1, 2, 3, 4, 5)
    assert numbered(()) == ()


def test_a_plate_of_fourteen_inches_is_no_smaller_than_one_to_six() -> None:
    """Letter is 215.9 mm wide: 26 of margins and 6 between the views leave 184."""
    drawn = figures(judged_document(sample("scree_ox_strength")), 184.0, 102.0)
    assert drawn is not None and drawn[0] <= 6.0


@pytest.mark.parametrize(("ahead", "way"), [("-6.2 in", 1), ("6.2 in", -1)])
def test_leaders_to_the_welds_from_the_hub_side_begin_where_they_are(ahead: str, way: int) -> None:
    """A beam 3.2 in wide that ends 2 3/8 in below the wheel centre; the arm on its side, towards the tie rod's end, 0.3 in below;
    the caliper ahead, which is left, where the plate ends 3.5 in from the wheel centre."""
    sheet = sample("scree_ox_strength")
    sheet["steering"]["tie_rod_ahead"] = ahead
    drawn = figures(judged_document(sheet), 184.0, 102.0)
    assert drawn is not None
    led = {item.text: item.led[0] for item in drawn[2].items if isinstance(item, PaperWords) and item.led}
    begins = {words: (x * drawn[0] / 25.4, y * drawn[0] / 25.4) for words, (x, y) in led.items()}
    assert begins["weld 3"] == pytest.approx((way * 1.6, -0.3))
    assert begins["weld 4"][0] == pytest.approx(-3.5)
    assert 0.0 < begins["weld 4"][1] < 7.1  # on the edge of the plate, which ends there
    assert begins["weld 5"] == pytest.approx((1.6, -2.375))


@pytest.mark.parametrize(("clock", "stands", "edge"), [("0 deg", "above", 7.1), ("180 deg", "below", -7.275)])
def test_the_leader_to_a_bracket_above_or_below_begins_on_that_edge_of_the_plate(
    clock: str, stands: str, edge: float
) -> None:
    """The wheel centre 7.1 in from the top of a plate of 14 3/8; the bracket is 8.4 in wide."""
    sheet = sample("scree_ox_strength")
    sheet["caliper"]["clock"] = clock
    sheet["weld_caliper_bracket"]["caliper_stands"] = stands
    drawn = figures(judged_document(sheet), 184.0, 102.0)
    assert drawn is not None
    (led,) = (item.led for item in drawn[2].items if isinstance(item, PaperWords) and item.text == "weld 4")
    x, y = (size * drawn[0] / 25.4 for size in led[0])
    assert y == pytest.approx(edge) and 0.0 < x < 8.4
