"""The corner from above and from outside and the plate as cut, by hand; and every part in some picture."""

import math

import pytest

from rules.corner.part import PART, Part
from rules.drawn.full_size import corner as paper
from rules.drawn.full_size import front_parts
from rules.drawn.moving.scene import RIDE, moving, scene
from rules.drawn.other_views import PictureView, bounds_of, picture, plate_scene, view_for, with_arrow
from rules.drawn.pieces import hub_plate
from rules.drawn.plate import flat_plate
from rules.drawn.scene import Body, Box, Dimension, Label, Line, Scene
from rules.judging.judge import judge
from rules.judging.trade import trade
from rules.measure.outline import outline_points
from rules.sheet import FIELDS, read_sheet
from rules.solids.shapes import block
from sample_sheets import document, samples
from tests.support.judging import judged_sample
from tests.support.one_wheel import EVERYTHING

OX = "scree_ox_strength"
"""The sample of which every part can be placed."""
VIEWS: tuple[PictureView, ...] = ("front", "above", "side", "plate")


def known_of(name: str) -> dict[str, object]:
    return dict(judged_sample(name).worked.known)


def bodies(made: Scene) -> dict[str, Body]:
    return {item.name: item for item in made.items if isinstance(item, Body)}


def box(body: Body) -> tuple[float, float, float, float]:
    found = bounds_of([body])
    return found.left, found.right, found.bottom, found.top


def test_every_part_stands_in_some_picture_and_nothing_else_does() -> None:
    known = known_of(OX)
    parts = {known[name].name for name in trade().in_role(PART) if name in known}  # type: ignore[attr-defined]
    assert len(parts) == len(trade().in_role(PART))
    front = moving(known)
    assert front
    made = [picture(known, view)[1] for view in VIEWS] + [scene(front, RIDE, view, True) for view in ("front", "plan")]
    assert {name for each in made for name in bodies(each)} == parts


@pytest.mark.parametrize("name", [name for name in samples() if not name.startswith("wrong")])
@pytest.mark.parametrize("view", VIEWS)
def test_every_sheet_has_every_view_in_finite_figures(name: str, view: PictureView) -> None:
    _, made = picture(known_of(name), view)
    assert made.frame.left < made.frame.right and made.frame.bottom < made.frame.top
    for body in bodies(made).values():
        assert all(math.isfinite(figure) for area in body.areas for point in area.outer for figure in point)


def test_from_above_by_hand() -> None:
    """The tyre cut level: 889 / 2 ahead and behind. Housing 22 about 127 inboard, 12 behind: behind is up."""
    view, made = picture(EVERYTHING, "above")
    drawn = bodies(made)
    assert view == "above"
    assert box(drawn["tyre"]) == pytest.approx((-158.75, 158.75, -444.5, 444.5), abs=0.5)
    assert box(drawn["upper joint housing"]) == pytest.approx((-149.0, -105.0, -10.0, 34.0), abs=0.5)


def test_a_corner_of_which_nothing_is_seen_from_above_is_shown_from_the_front() -> None:
    """A plate whose upper end is 50 below the wheel centre, where all is cut level; the ground is never drawn from above."""
    ground = Part("ground", "ground", (block((0.0, 0.0, -5.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 900.0, 900.0, 10.0),))
    plate = Part(
        "plate", "upright", (block((0.0, -66.0, 220.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), 140.0, 12.0, 300.0),)
    )
    view, made = picture({"wheel_centre_height": 420.0, "plate_part": plate, "ground_part": ground}, "above")
    assert view == "front" and "plate" in bodies(made)


def test_from_outside_by_hand() -> None:
    """Front to the left: the lower pivot, 10 ahead and 295 up; the caliper ahead, from 142.5 - 45 to 142.5 + 22."""
    view, made = picture(EVERYTHING, "side")
    drawn = bodies(made)
    assert view == "side"
    assert box(drawn["lower joint housing"]) == pytest.approx((-35.0, 15.0, 270.0, 320.0), abs=0.5)
    left, right, bottom, top = box(drawn["caliper"])
    assert left == pytest.approx(-164.5, abs=0.5)
    assert (bottom + top) / 2 == pytest.approx(420.0, abs=0.5) and right < -60.0
    assert not drawn["tyre"].covers and drawn["plate"].covers


def test_axis_and_trail_from_outside() -> None:
    known = known_of(OX)
    made = picture(known, "side")[1]
    (axis,) = [item for item in made.items if isinstance(item, Line) and item.part == "axis"]
    lean = math.atan2(axis.end[0] - axis.start[0], axis.end[1] - axis.start[1])
    assert lean == pytest.approx(known["pivots.castor"], abs=1e-6)
    trail = next(item for item in made.items if isinstance(item, Dimension))
    assert trail.end[0] == pytest.approx(axis.start[0], abs=0.5)
    assert "castor 6 deg" in {item.text for item in made.items if isinstance(item, Label)}


def test_plate_as_cut() -> None:
    known = known_of(OX)
    made = plate_scene(known)
    assert made
    plate = box(bodies(made)["plate"])
    assert plate[1] - plate[0] == pytest.approx(7 * 25.4) and plate[3] - plate[2] == pytest.approx(14.375 * 25.4)
    assert plate_scene({}) is None


def test_cut_piece_and_corner_have_one_plate(subtests: pytest.Subtests) -> None:
    """What is cut is what is judged: outline, bore, and the bolts where the holes are."""
    light = {name: judge(read_sheet(document(name)), light=True, advice=False).worked.known for name in samples()}
    with_a_plate = {name: known for name, known in light.items() if "plate_part" in known}
    assert len(with_a_plate) > 10
    for name, known in with_a_plate.items():
        with subtests.test(name):
            _compare_cut_with_corner(known)


def _compare_cut_with_corner(known: dict[str, object]) -> None:
    piece, solid = hub_plate(known, "left"), flat_plate(known["plate_part"])  # type: ignore[arg-type]
    assert piece
    cut, judged = outline_points(piece.outline), outline_points(solid.outline)
    assert len(cut) == len(judged)
    for one in cut:
        assert min(math.dist(one, other) for other in judged) == pytest.approx(0.0, abs=1e-6)
    bores = [hole.diameter for hole in piece.holes if hole.what == "centre bore"]
    assert bores == ([pytest.approx(solid.bore)] if solid.bore else [])
    if bolts := known.get("hub_bolts_part"):
        height = known["wheel_centre_height"]
        places = {(round(-bar.start[0], 6), round(bar.start[2] - height, 6)) for bar in bolts.shapes}  # type: ignore
        holes = {(round(x, 6), round(y, 6)) for x, y in (h.centre for h in piece.holes if h.what == "hub bolt hole")}
        assert not holes or holes == places


def test_every_entry_has_a_view() -> None:
    assert {view_for(field) for field in FIELDS} == set(VIEWS)


def test_a_circle_is_known_again_on_paper() -> None:
    ring = tuple((3 + 5 * math.cos(turn * math.pi / 8), 4 + 5 * math.sin(turn * math.pi / 8)) for turn in range(16))
    assert paper.centre_of((*ring, ring[0])) == pytest.approx((3.0, 4.0))
    assert paper.centre_of((*ring[:-1], (3.0, 4.0), ring[0])) is None


def test_paper_names_parts_that_exist() -> None:
    known = known_of(OX)
    parts = {known[name].name for name in trade().in_role(PART)}  # type: ignore[attr-defined]
    assert {one.name for one in (*front_parts.SHOWN, *front_parts.TURNED_UP)} <= parts


WIDE, HIGH = Label("plate", (1.0, 2.0), "wide", "inboard"), Label("plate", (3.0, 4.0), "high", "inboard")
SCENE = Scene((WIDE, Line("axis", (0.0, 0.0), (9.0, 9.0)), HIGH), Box(-50.0, 50.0, 0.0, 80.0))


def arrow_to(across: float) -> Dimension:
    return Dimension((0.0, 5.0), (across, 5.0), Label("lit", (across, 5.0), "high", "inboard", abs(across)), "lit")


def test_an_arrow_is_drawn_over_all_else_and_its_words_are_said_once_and_placed_first() -> None:
    made = with_arrow(SCENE, arrow_to(20.0))
    assert made.items[:3] == (arrow_to(20.0).label, SCENE.items[0], SCENE.items[1]) and len(made.items) == 4
    last = made.items[3]
    assert isinstance(last, Dimension) and (last.start, last.end, last.part) == ((0.0, 5.0), (20.0, 5.0), "lit")
    assert last.label.text == "" and made.frame == SCENE.frame
    assert with_arrow(SCENE, None) is SCENE


def test_a_picture_grows_inboard_to_hold_an_arrow_and_at_most_to_twice_its_width() -> None:
    """100 wide, from 50 inboard to 50 outboard: the left edge goes to where the arrow ends, and room for words; that is the
    same room wherever it ends. No farther than 150 inboard: an end beyond that is left out of the picture."""
    edge = with_arrow(SCENE, arrow_to(-60.0)).frame.left
    for_words = -60.0 - edge
    assert 5.0 < for_words < 40.0
    for across, left in (
        (-70.0, -70.0 - for_words), (-49.0, -49.0 - for_words), (-50.0 + for_words, -50.0), (49.0, -50.0),
        (-149.9 + for_words, -149.9), (-150.1 + for_words, -50.0), (-5000.0, -50.0),
    ):  # fmt: skip
        frame = with_arrow(SCENE, arrow_to(across)).frame
        assert frame.left == pytest.approx(left), across
        assert (frame.right, frame.bottom, frame.top) == (50.0, 0.0, 80.0)
