"""The full-size drawing: positions by hand, nothing invented, no words over lines."""

import copy
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise
from math import cos, hypot, radians, sin
from typing import Any

import numpy as np
import pytest

from rules.drawn.full_size import Extent, LeftViews, full_size, of_views, title_block
from rules.drawn.full_size.auxiliary import auxiliary_view
from rules.drawn.full_size.front import front_view
from rules.drawn.full_size.shapes import (
    PaperArc,
    PaperBox,
    PaperCircle,
    PaperItem,
    PaperWords,
    Stroke,
    View,
    bounds,
    mirrored,
    points_on,
    words_width,
)
from rules.drawn.full_size.side import side_view
from rules.judging.judge import Judged, judge
from rules.judging.trade import trade
from rules.measure.outline import Side
from rules.sheet import FIELDS, read_sheet
from sample_sheets import document as sample
from tests.support.judging import judged_document, not_below

IN = 25.4

# A layout as builders draw it (common practice, no source), worked by hand below: 34 in tyre, 10 deg, 1 in at the ground.
EXAMPLE: dict[str, Any] = {
    "title": "Worked example", "units": "inch",
    "tyre": {"smallest": "33x12.50R15LT", "largest": "35x12.50R15LT"},
    "wheel": {"diameter": "15 in", "width": "8 1/2 in", "overall_width": "9 1/2 in", "offset": "3/4 in"},
    "rotor": {"hat_thickness": "1/4 in"},
    "hub": {"flange_to_mount_face": "2 1/2 in"},
    "pivots": {
        "spacing": "10 1/4 in", "inclination": "10 deg", "castor": "0 deg", "ground_offset": "1 in",
        "lower_below_spindle": "5 in", "upper_radius": "7/8 in", "lower_radius": "7/8 in",
    },
}  # fmt: skip


def on_side(view: View, side: Side) -> View:
    items = view.items if side == "left" else tuple(mirrored(item) for item in view.items)
    return View(items, bounds(items))


def front_layout(judged: Judged, side: Side, extent: Extent = "whole") -> View:
    """The front view of one upright by itself."""
    return on_side(front_view(judged, extent), side)


def side_layout(judged: Judged, side: Side, extent: Extent = "whole") -> View:
    """The view from outside the car by itself."""
    return on_side(side_view(judged, extent), side)


def example(**changes: object) -> Judged:
    document = copy.deepcopy(EXAMPLE)
    for name, entry in changes.items():
        table, key = name.split("__")
        document.setdefault(table, {})
        if entry is None:
            del document[table][key]
        else:
            document[table][key] = entry
    return judged_document(document)


def texts(items: tuple[PaperItem, ...]) -> list[str]:
    return [item.text for item in items if isinstance(item, PaperWords)]


def circle_at(view: View, x: float, y: float) -> PaperCircle:
    found = [
        item
        for item in view.items
        if isinstance(item, PaperCircle) and hypot(item.centre[0] - x, item.centre[1] - y) < 0.01
    ]
    assert found, f"no circle at {x:.3f}, {y:.3f}"
    return found[0]


def ends(items: tuple[PaperItem, ...], pen: str) -> list[tuple[tuple[float, float], tuple[float, float]]]:
    return [(item.points[0], item.points[-1]) for item in items if isinstance(item, Stroke) and item.pen == pen]


# Where things lie, by hand from the worked example; the hub face is 3/4 - 1/4 = 1/2 in outboard of the tyre plane.


def test_pivots_from_the_hub_face() -> None:
    view = front_layout(example(), "left")
    assert circle_at(view, -(3.1160 + 0.5) * IN, -5 * IN).radius == pytest.approx(0.875 * IN)
    assert circle_at(view, -(4.8959 + 0.5) * IN, 5.0943 * IN).radius == pytest.approx(0.875 * IN)


def test_right_is_the_mirror_image_and_words_are_not_mirrored() -> None:
    left, right = front_layout(example(), "left"), front_layout(example(), "right")
    circle_at(right, (3.1160 + 0.5) * IN, -5 * IN)
    circle_at(right, (4.8959 + 0.5) * IN, 5.0943 * IN)
    assert texts(left.items) == texts(right.items)
    assert all(-90 < item.angle <= 90 for item in right.items if isinstance(item, PaperWords))


def test_axis_meets_the_ground_one_inch_inboard_of_the_tyre_plane() -> None:
    landing = (-(0.5 + 1) * IN, -17 * IN)
    assert any(
        hypot(start[0] - landing[0], start[1] - landing[1]) < 0.01
        for start, _ in ends(front_layout(example(), "left").items, "centre")
    )


def test_datum_and_tyre_plane_and_plate_face() -> None:
    view = front_layout(example(), "left")
    upright = [round(start[0] / IN, 3) for start, end in ends(view.items, "outline") if start[0] == end[0]]
    assert 0.0 in upright, "hub face"
    assert -2.5 in upright, "plate face"
    assert 0.25 in upright, "wheel face"
    assert any(start[0] == end[0] == pytest.approx(-0.5 * IN) for start, end in ends(view.items, "centre"))
    assert "DATUM: hub face" in texts(view.items)


def test_tyre_outline_for_every_size() -> None:
    view = front_layout(example(), "left")
    tops = {
        round(max(y for _, y in item.points), 2)
        for item in view.items
        if isinstance(item, Stroke) and item.pen == "adjacent"
    }
    assert {419.1, 431.8, 444.5} <= tops, "33, 34 and 35 in"
    lowest = {
        round(min(y for _, y in item.points), 2)
        for item in view.items
        if isinstance(item, Stroke) and item.pen == "adjacent"
    }
    assert {-419.1, -431.8, -444.5} <= lowest


def test_one_tyre_size_is_drawn_once() -> None:
    view = front_layout(judged_document(sample("dune_wren_finished")), "left")
    assert sum("tyre ø" in text for text in texts(view.items)) == 1


def test_side_view_with_six_degrees_of_castor() -> None:
    # 5 in x tan 6 deg = 0.5255 in; 17 in x tan 6 deg = 1.7868 in. Wheel centre to upper: 10.25 / sqrt(1 + tan2 10 + tan2 6) - 5.
    view = side_layout(example(pivots__castor="6 deg"), "left")
    circle_at(view, -0.52552 * IN, -5 * IN)
    circle_at(view, 0.52982 * IN, 5.04090 * IN)
    axis = [(start, end) for start, end in ends(view.items, "centre") if start[1] == pytest.approx(-17 * IN)]
    assert axis and axis[0][0][0] == pytest.approx(-1.78677 * IN, abs=0.01)
    assert "mechanical trail 1 25/32 in (1.787 in)" in texts(view.items)


def test_side_view_faces_the_other_way_on_the_right() -> None:
    circle_at(side_layout(example(pivots__castor="6 deg"), "right"), 0.52552 * IN, -5 * IN)


def test_a_pivot_ahead_and_one_behind_say_so() -> None:
    found = " | ".join(texts(side_layout(example(pivots__castor="6 deg"), "left").items))
    assert "lower pivot 17/32 in (0.526 in) ahead" in found
    assert "upper pivot 17/32 in (0.53 in) behind" in found


def test_figures_are_as_a_tape_shows_them_with_the_exact_one_beside() -> None:
    found = texts(front_layout(example(), "left").items)
    assert "lower pivot 3 5/8 in (3.616 in)" in found
    assert "upper pivot 5 13/32 in (5.396 in)" in found
    assert "plate face 2 1/2 in" in found
    assert "5 in" in found
    assert "ground offset 1 in" in found
    metric = judge(read_sheet(EXAMPLE), "metric")
    assert "lower pivot 92 mm (91.84 mm)" in texts(front_layout(metric, "left").items)


@pytest.mark.parametrize("castor", ["0 deg", "6 deg", "14 deg"])
def test_spacing_stands_only_where_it_is_as_long_as_it_says(castor: str) -> None:
    """Between the tips of the arrowheads of the dimension along the axis: 10 1/4 in, whatever the castor.

    In the front view a castor of 14 deg would shorten it to about 10.25 cos 14 = 9.95 in.
    """
    judged = example(pivots__castor=castor)
    view = auxiliary_view(judged)
    tips = [item.points[0] for item in view.items if isinstance(item, Stroke) and item.filled]
    assert len(tips) == 2 and hypot(tips[0][0] - tips[1][0], tips[0][1] - tips[1][1]) == pytest.approx(10.25 * IN)
    assert any("10 1/4 in along axis" in text for text in texts(view.items))
    for other in (front_layout(judged, "left"), side_layout(judged, "left")):
        assert not any("along axis" in text for text in texts(other.items))


def test_auxiliary_view_is_the_pivots_looked_at_square_to_the_axis() -> None:
    """Against plain vectors: both pivots in space, projected on a plane that holds the axis and the car's length.

    Lower pivot 5 in below the wheel centre, castor 6 deg: the axis passes through the wheel centre, so the pivots
    stand 5 tan 6 deg = 0.5255 in ahead of it and (upper height) tan 6 deg behind it.
    """
    judged = example(pivots__castor="6 deg")
    lean, castor = np.tan(radians(10)), np.tan(radians(6))
    direction = np.array([-castor, -lean, 1.0]) / np.sqrt(castor**2 + lean**2 + 1)  # ahead, outboard, up
    lower = -5 * IN * direction / direction[2]
    upper = lower + 10.25 * IN * direction
    sight = np.array([0.0, cos(radians(10)), sin(radians(10))])  # square to the axis and to the car's length
    assert sight @ direction == pytest.approx(0.0, abs=1e-12)
    up = np.array([0.0, -sin(radians(10)), cos(radians(10))])
    view = auxiliary_view(judged)
    for place in (lower, upper):
        circle_at(view, -place[0], place @ up)


def test_no_dimension_along_a_slope_stands_in_front_or_side_view() -> None:
    """What leans in a view is shortened in it: there only level and upright dimensions are drawn."""
    for name in ("dune_wren_finished", "scree_ox_strength", "wrong_longer_hub"):
        judged = judged_document(sample(name))
        for view in (front_layout(judged, "left"), side_layout(judged, "left")):
            assert {item.angle for item in view.items if isinstance(item, PaperWords)} <= {0.0, 90.0}


# Nothing on paper that the sheet does not know


def test_a_housing_that_is_not_known_is_not_drawn_and_is_a_labelled_blank() -> None:
    judged = example(pivots__lower_radius=None)
    with pytest.raises(AssertionError, match="no circle"):
        circle_at(front_layout(judged, "left"), -(3.1160 + 0.5) * IN, -5 * IN)
    assert ("Lower housing reach", "________") in title_block(judged).missing


def test_without_the_hub_face_there_is_no_datum() -> None:
    judged = example(rotor__hat_thickness=None)
    view = front_layout(judged, "left")
    assert not any("DATUM" in text for text in texts(view.items))
    circle_at(view, -3.1160 * IN, -5 * IN)
    missing = dict(title_block(judged).missing)
    assert missing["Hub face to lower pivot"] == "________ not worked out: needs hat thickness at the studs"


def test_an_estimate_says_so_beside_its_figure() -> None:
    found = texts(full_size(example(), "left", "whole").items)
    assert any(text.startswith("barrel inside ø") and text.endswith("estimate - measure") for text in found)
    measured = example(wheel__barrel_inside_diameter="14 1/4 in")
    assert not any("estimate" in text for text in texts(full_size(measured, "left", "whole").items))


def test_the_plate_is_drawn_from_its_own_figures() -> None:
    plate = {"plate__thickness": "1/2 in", "plate__width": "5 in", "plate__height": "12 in", "plate__spindle_from_top": "6 in",
             "plate__spindle_from_front": "2 in", "plate__bore": "3 in"}  # fmt: skip
    judged = example(**plate)
    front = front_layout(judged, "left", "upright")
    sections = [item.points for item in front.items if isinstance(item, Stroke) and item.closed and not item.filled]
    assert any(
        {(round(x / IN, 3), round(y / IN, 3)) for x, y in points}
        == {(-3.0, 1.5), (-2.5, 1.5), (-2.5, 6.0), (-3.0, 6.0)}
        for points in sections
    )
    side = side_layout(judged, "left", "upright")
    edges = [
        item.points for item in side.items if isinstance(item, Stroke) and item.pen == "outline" and not item.filled
    ]
    assert {(round(x / IN, 3), round(y / IN, 3)) for points in edges for x, y in points} == {
        (-2.0, -6.0),
        (3.0, -6.0),
        (3.0, 6.0),
        (-2.0, 6.0),
    }


def test_plate_corners_are_true_arcs() -> None:
    """Every point drawn of a corner lies on its circle: R 30 mm about a centre 30 mm in from both edges."""
    judged = example(plate__thickness="1/2 in", plate__width="5 in", plate__height="12 in", plate__spindle_from_top="6 in",
                     plate__spindle_from_front="2 in", plate__corner_radius="30 mm")  # fmt: skip
    arcs = [item for item in side_layout(judged, "left").items if isinstance(item, PaperArc)]
    centres = {(round(arc.centre[0], 6), round(arc.centre[1], 6)) for arc in arcs}
    assert centres == {(-20.8, 122.4), (46.2, 122.4), (-20.8, -122.4), (46.2, -122.4)}, (
        "2 in = 50.8, 3 in = 76.2, 6 in = 152.4"
    )
    for arc in arcs:
        x, y = arc.centre
        along = points_on(arc, 1.0)
        assert all(hypot(px - x, py - y) == pytest.approx(30) for px, py in along)
        out = (1 if x > 0 else -1, 1 if y > 0 else -1)
        assert any((px - x) * out[0] == pytest.approx((py - y) * out[1]) for px, py in along), "the middle is outermost"


def test_named_sizes_are_printed_as_named() -> None:
    """114.3 mm is no 4 1/2 in to whoever orders the drill; 4.24 in is no 4 1/4."""
    judged = example(hub__bolt_circle="5 x 114.3 mm", hub__pilot_diameter="4.24", hub__mount_width="73 mm",
                     hub__mount_height="91 mm", hub__mount_bolts=4, rotor__diameter="280 mm", wheel__centre_bore="4.25 in",
                     plate__bore="76.5 mm", plate__width="5 in", plate__height="12 in", plate__spindle_from_top="6 in",
                     plate__spindle_from_front="2 in")  # fmt: skip
    found = [*texts(full_size(judged, "left").items), *(figure for _, figure in title_block(judged).figures)]
    for words in (
        "studs, 5 on ø 114.3 mm",
        "hub pilot ø 4.24 in",
        "73 mm",
        "91 mm",
        "rotor ø 280 mm",
        "plate bore ø 76.5 mm",
    ):
        assert words in found, words
    assert not any("4 1/4" in text or "4 1/2" in text for text in found)


def test_the_plates_size_stands_beside_its_outline() -> None:
    judged = example(
        plate__width="5 in", plate__height="12 in", plate__spindle_from_top="6 in", plate__spindle_from_front="2 in"
    )
    assert "plate 5 in wide, 12 in high" in texts(side_layout(judged, "right", "upright").items)


@pytest.mark.parametrize("extent", ["upright", "whole"])
@pytest.mark.parametrize(
    "name", ["scree_ox_strength", "fell_badger_finished_metric", "pond_newt_finished", "dune_wren_half_done"]
)
def test_a_figure_stands_on_a_view_or_beside_the_drawing_and_none_is_lost(name: str, extent: Extent) -> None:
    judged = judged_document(sample(name))
    drawing = full_size(judged, "right", extent)
    on_views, beside = texts(drawing.items), dict(drawing.block.figures)
    for words, figure in title_block(judged).figures:
        exact = figure.split(" (")[-1].split(")")[0]
        exact = " ".join(exact.split()[:3] if "/" in exact else exact.split()[:2])
        assert beside.get(words) == figure or any(exact in text for text in on_views), words


def test_what_a_view_says_is_not_said_again_beside_it() -> None:
    """On this sample: lower pivot 5.478 in inboard, 4.9 in below and 0.507 in ahead; no view reaches the ground."""
    judged = judged_document(sample("scree_ox_strength"))
    upright, whole = (dict(full_size(judged, "left", extent).block.figures) for extent in ("upright", "whole"))
    for words in (
        "Hub face to lower pivot",
        "Wheel-centre line to lower pivot",
        "Wheel centre to lower pivot, fore and aft",
        "Hub face to tyre centre plane",
        "Pivot spacing along axis",
        "Rim diameter, bead seats",
        "Wheel, lip to lip",
        "Rotor thickness as used",
        "Barrel inside diameter",
    ):
        assert words not in upright and words not in whole, words
    assert "Mechanical trail" in upright and "Mechanical trail" not in whole
    assert "True lean of the axis from plumb" in upright and "True lean of the axis from plumb" in whole


def test_a_figure_that_rests_on_an_estimate_is_told_with_what_to_measure_though_a_view_has_it() -> None:
    judged = judged_document(sample("dune_wren_half_done"))
    beside = dict(full_size(judged, "left").block.figures)
    assert "estimate - measure" in beside["Barrel inside diameter"]


def test_an_empty_sheet_draws_nothing_and_lists_what_is_missing() -> None:
    drawing = full_size(judged_document({}), "left", "whole")
    assert not drawing.items
    assert ("Pivot spacing along axis", "________") in drawing.block.missing
    assert not drawing.block.figures


def test_an_entry_that_cannot_be_read_is_missing_with_its_reason() -> None:
    missing = title_block(example(rotor__diameter="eleven")).missing
    assert any(words == "Rotor diameter" and "eleven" in figure for words, figure in missing)


@pytest.mark.parametrize("step", ["tyre", "wheel", "rotor", "caliper", "hub", "pivots"])
def test_a_sheet_without_a_whole_step_is_still_drawn(step: str) -> None:
    document = sample("dune_wren_finished")
    del document[step]
    for extent in ("upright", "whole"):
        assert full_size(judged_document(document), "right", extent).items  # type: ignore[arg-type]


class Noted(dict[str, Any]):
    """Answers that note which names are looked up among them; going through them all is refused."""

    def __init__(self, answers: dict[str, Any], names: set[str]) -> None:
        super().__init__(answers)
        self.names = names

    def __getitem__(self, name: str) -> Any:
        self.names.add(name)
        return super().__getitem__(name)

    def __contains__(self, name: object) -> bool:
        self.names.add(str(name))
        return super().__contains__(name)

    def get(self, name: str, default: Any = None) -> Any:
        self.names.add(name)
        return super().get(name, default)

    def __iter__(self) -> Any:
        raise AssertionError("a drawing looks up names one by one")

    keys = values = items = __iter__  # type: ignore[assignment]


KEPT = ("known", "estimated", "waits", "not_here", "broken")


VIEWS: dict[str, Callable[[Judged], View]] = {
    "front": lambda judged: front_view(judged, "upright"),
    "from side": lambda judged: side_view(judged, "upright"),
    "square to the axis": auxiliary_view,
}


def looked_up(draw: Callable[[Judged], object], sound: Judged) -> list[tuple[str, str]]:
    """What a view looks up among what a sheet comes to: of which kind, and by which name."""
    names = {kept: set[str]() for kept in KEPT}
    worked = copy.copy(sound.worked)
    for kept in KEPT:
        setattr(worked, kept, Noted(getattr(sound.worked, kept), names[kept]))
    draw(replace(sound, worked=worked))
    every = sorted(set[str]().union(*names.values()))
    return [(kept, name) for kept in KEPT for name in every]


def test_every_length_at_its_bounds_can_be_drawn(subtests: pytest.Subtests) -> None:
    """A figure at the end of what is accepted may be wrong, but must still print, on paper of a size that exists.

    Each view is drawn once for whatever it looks up: where every name has the answer of an earlier sheet, the view is that
    sheet's; and three views that stood together before make the same drawing.
    """
    sound = judged_document(sample("dune_wren_finished"))
    reads = {name: looked_up(draw, sound) for name, draw in VIEWS.items()}
    shown = {name for read in (*reads.values(), looked_up(title_block, sound)) for _, name in read}
    undrawn = not_below(frozenset(trade().values.keys() & shown))
    drawn: dict[tuple[str, str], View] = {}
    frames: dict[tuple[int, ...], PaperBox] = {}

    def view(name: str, judged: Judged) -> View:
        answers = [(kept, read, getattr(judged.worked, kept).get(read)) for kept, read in reads[name]]
        key = name, repr([one for one in answers if one[2] != getattr(sound.worked, one[0]).get(one[1])])
        assert " at 0x" not in key[1], "an answer without words of its own cannot be told from another"
        if key not in drawn:
            drawn[key] = VIEWS[name](judged)
        return drawn[key]

    for name, asked in FIELDS.items():
        for limit in (asked.least, asked.most):
            if limit is None or asked.kind not in ("length", "angle"):
                continue
            with subtests.test(name, limit=limit):
                document = sample("dune_wren_finished")
                unit = "mm" if asked.kind == "length" else "rad"
                document.setdefault(asked.step, {})[asked.key] = f"{limit!r} {unit}"
                judged = judge(read_sheet(document), before=sound, leaving=undrawn, advice=False)
                assert judged.sheet.faults == sound.sheet.faults == ()
                front, from_side, auxiliary = views = [view(one, judged) for one in VIEWS]
                together = tuple(id(one) for one in views)
                if together not in frames:
                    frames[together] = of_views(judged, "left", LeftViews(front, from_side, auxiliary, "upright")).frame
                frame = frames[together]
                assert 0 < frame.width < 5000 and 0 < frame.height < 5000
    assert len(drawn) > 100


# No words over lines


def inside(points: np.ndarray, words: PaperWords, clearance: float) -> np.ndarray:
    """Which of these points lie on the letters: by turning them into the words' own direction."""
    x, y = points[:, 0] - words.at[0], points[:, 1] - words.at[1]
    turn = radians(words.angle)
    along, up = x * cos(turn) + y * sin(turn), -x * sin(turn) + y * cos(turn)
    width = words_width(words.text, words.size, words.bold)
    start = {"left": 0.0, "centre": -width / 2, "right": -width}[words.align]
    em = words.size * 25.4 / 72
    level = (start - clearance < along) & (along < start + width + clearance)
    return level & (-0.6 * em - clearance < up) & (up < 0.4 * em + clearance)


def points_of(item: PaperItem) -> np.ndarray:
    """Points 0.7 mm apart or closer along a line; on a circle every 1/200 rad."""
    if isinstance(item, PaperCircle):
        turn = np.arange(1257) / 200
        return np.column_stack((np.cos(turn), np.sin(turn))) * item.radius + item.centre
    if isinstance(item, PaperArc):
        return np.array(points_on(item, 0.25))
    assert isinstance(item, Stroke)
    corners = np.array([*item.points, item.points[0]] if item.closed else item.points)
    return np.concatenate(
        [np.linspace(start, end, max(1, int(hypot(*(end - start)) / 0.7)) + 1) for start, end in pairwise(corners)]
    )


@pytest.mark.parametrize("extent", ["upright", "whole"])
@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(
    "name",
    ["dune_wren_finished", "fell_badger_finished_metric", "dune_wren_half_done", "wrong_longer_hub",
     "wrong_offset_from_nominal_width"],
)  # fmt: skip
def test_no_words_stand_over_a_line_or_over_other_words(name: str, side: Any, extent: Any) -> None:
    items = full_size(judged_document(sample(name)), side, extent).items
    words = [item for item in items if isinstance(item, PaperWords)]
    lines = np.concatenate([points_of(item) for item in items if not isinstance(item, PaperWords)])
    assert not [one.text for one in words if one.over_lines]
    for one in words:
        assert not inside(lines, one, 0.1).any(), one.text
        others = np.array([other.at for other in words if other is not one])
        assert not inside(others, one, 0.0).any(), one.text


def test_words_are_large_enough_to_read() -> None:
    """A figure is 0.73 of the letter size high in the typeface used: 2.5 mm needs 9.8 points; words need 10."""
    items = full_size(judged_document(sample("dune_wren_finished")), "left", "whole").items
    assert all(item.size >= 10 for item in items if isinstance(item, PaperWords))


@pytest.mark.parametrize(("units", "left_first", "right_first"),
                         [("metric", "seen from outside", "seen from the front"),
                          ("inch", "seen from the front", "seen from outside")])  # fmt: skip
def test_views_stand_level_and_in_their_angle(units: Any, left_first: str, right_first: str) -> None:
    """ISO 5456-2. Seen from the front a left upright has its outboard side to the right, so the view from outside stands to
    the left in first angle, which metric sheets take, and to the right in third, which inch sheets take."""
    for side, first in (("left", left_first), ("right", right_first)):
        judged = judge(example(pivots__castor="6 deg").sheet, units)
        drawing = full_size(judged, side)  # type: ignore[arg-type]
        headings = sorted(
            (item.at[0], item.text)
            for item in drawing.items
            if isinstance(item, PaperWords) and item.size > 12 and "square to the axis" not in item.text
        )
        assert first in headings[0][1] and all(text.startswith(side.upper()) for _, text in headings)
        housings = [
            item.centre[1]
            for item in drawing.items
            if isinstance(item, PaperCircle) and abs(item.radius - 22.225) < 1e-6
        ]
        level = [y for y in housings if sum(abs(y - other) < 1e-6 for other in housings) == 2]
        assert len(housings) == 6 and len(level) == 4, "front and side level; the auxiliary view is tilted"
