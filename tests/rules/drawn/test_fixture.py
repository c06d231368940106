"""The fixture against plain vectors: the bar passes both pivots, and the check figures are what a tape would find."""

from math import pi

import ezdxf
import numpy as np
import pytest
from ezdxf.math import Vec2, area
from ezdxf.path import make_path

from rules.drawn.fixture import Fixture, Hole, Post, Stock, _round_all, fixture
from rules.drawn.fixture_posts import bush, post_plates
from rules.drawn.pieces import Profile
from rules.measure.outline import Outline
from sample_sheets import document
from tests.support.judging import judged_document

IN = 25.4


def made(name: str = "scree_ox_strength", **changes: object) -> Fixture:
    sheet = document(name)
    for where, entry in changes.items():
        table, key = where.split("__")
        sheet[table][key] = entry
    found = fixture(judged_document(sheet))
    assert found is not None
    return found


# By hand from the sample, inches: hub face to lower pivot 5.478, to upper 7.273; lower 4.9 below, upper 4.783 above. The joints
# as taped, 0.5 ahead at 4.9 below and 0.5 behind at 4.75 above, put the axis 0.5 - 4.9 / 9.65 = -0.0078 ahead at its height.
# Castor 6 deg: lower 4.9 tan 6 - 0.0078 = 0.5072 ahead, upper 4.783 tan 6 + 0.0078 = 0.5105 behind.
# On the base x is ahead, y up, z over it.
LOWER, UPPER = np.array([0.5072, -4.9, 5.478]) * IN, np.array([-0.5105, 4.783, 7.273]) * IN


def test_the_bar_through_both_posts_passes_both_pivots() -> None:
    one, two, _ = made().posts
    start, end = (np.array([*post.at, post.height]) for post in (one, two))
    way = (end - start) / np.linalg.norm(end - start)
    for pivot in (LOWER, UPPER):
        apart = np.linalg.norm(np.cross(pivot - start, way))
        assert apart == pytest.approx(0, abs=0.05)


def test_posts_stand_clear_of_the_lugs() -> None:
    """Half the ball 0.55, gap 0.45 and lug 0.5: 1.5 in along the bar to the outer face, then the inch kept."""
    one, two, _ = made().posts
    for post, pivot in ((one, LOWER), (two, UPPER)):
        assert np.linalg.norm(np.array([*post.at, post.height]) - pivot) == pytest.approx(2.5 * IN, abs=0.05)


def test_the_bores_lean_and_turn_as_the_axis_does() -> None:
    """Rise of the bar: 1.795 in over 9.9 in along it, asin 0.1813 = 10.44 deg; turn: castor 6 deg as seen square on the base."""
    one, two, _ = made().posts
    for post in (one, two):
        assert post.rises == pytest.approx(10.44, abs=0.01) and post.turned == pytest.approx(6.0, abs=0.01)
        assert post.bore == pytest.approx(0.75 * IN)


def test_the_tie_rod_pin_and_stops_by_hand() -> None:
    """Tie rod's end 6.2 in behind, 0.3 below, 8.4 in inboard of the hub face. Plate 7 in wide, 3.5 to the front: its rear edge
    3.5 in behind, so a 3/8 in pin against it at 3.5 in + 3/16; mounting face 3 1/4 in plus 7/8 in of plate high."""
    found = made()
    pin = found.posts[2]
    assert (*pin.at, pin.height) == pytest.approx((-6.2 * IN, -0.3 * IN, 8.4 * IN), abs=0.05)
    rear = found.stops[0]
    assert rear.at[0] == pytest.approx(-(3.5 + 3 / 16) * IN) and rear.height == pytest.approx(4.125 * IN)


def test_the_tie_rod_post_stands_beside_the_arm_and_has_its_pins_hole() -> None:
    """In inches by hand: arm 1 9/16 high, which sinks 0.3 in 5.3, so half of it and 0.3 / 5.3 x 1.25 at the end of half a
    2 1/2 post, 1/4 for a sleeve and 1/4 to the middle of a 1/2 post: 0.7812 + 0.0708 + 0.25 + 0.25 = 1.3520 further down, at
    1.6520 down; bolts 3/4 either way. Pin 8.4 over the base less a foot of 1/2: 7.9; over it 1/2 pin and 1/4: 8.65."""
    made_one = made()
    bolts = sorted(hole.centre[1] / IN for hole in made_one.base.holes if hole.what == "post 3")
    assert bolts == pytest.approx([-1.6520 - 0.75, -1.6520 + 0.75], abs=1e-3)
    plate = next(piece for piece in post_plates(made_one) if piece.key == "fixture_post_3")
    (hole,) = plate.profile.holes
    assert (*hole.centre, hole.diameter) == pytest.approx((0.0, 7.9 * IN, IN), abs=1e-3)
    assert plate.profile.outline.top == pytest.approx(8.65 * IN)


@pytest.mark.parametrize(
    "unknown",
    [("joint_angles", "tie_rod_outer_bolt"), ("loads", "tie_rod_stud_diameter"), ("upright", "steering_arm_height")],
)
def test_without_bolt_stud_or_arm_the_tie_rod_post_has_no_plate_and_says_why(unknown: tuple[str, str]) -> None:
    sheet = document("scree_ox_strength")
    del sheet[unknown[0]][unknown[1]]
    found = fixture(judged_document(sheet))
    assert found is not None and found.posts[2].at == pytest.approx((-6.2 * IN, -0.3 * IN), abs=0.05)
    assert "fixture_post_3" not in {piece.key for piece in post_plates(found)}
    assert any(words.startswith("plate of the tie-rod post") for words in found.left_out)


def test_a_bolt_that_runs_fore_and_aft_has_no_level_pin_up_and_down() -> None:
    found = made(joint_angles__tie_rod_outer_bolt="fore and aft")
    assert found.posts[2].pin == 0 and any(words.startswith("plate of the tie-rod post") for words in found.left_out)


def test_hub_holes_are_its_own_bolt_circle_and_pilot() -> None:
    found = made()
    studs = [hole for hole in found.base.holes if hole.what == "wheel stud"]
    assert len(studs) == 8
    assert all(np.hypot(*hole.centre) == pytest.approx(6.5 / 2 * IN) for hole in studs)
    (pilot,) = [hole for hole in found.base.holes if hole.what.startswith("hub pilot")]
    assert pilot.diameter == pytest.approx(4.885 * IN) and pilot.centre == (0.0, 0.0)


def test_holes_for_right_are_mirror_images_and_run_into_no_other() -> None:
    holes = made().base.holes
    left = {hole.what: [] for hole in holes}
    for hole in holes:
        left[hole.what].append(hole.centre)
    for what, places in left.items():
        if what.endswith(", RIGHT"):
            mirrored = {(round(-x, 6), round(y, 6)) for x, y in places}
            assert mirrored == {(round(x, 6), round(y, 6)) for x, y in left[what.removesuffix(", RIGHT")]}
    for number, one in enumerate(holes):
        for other in holes[number + 1 :]:
            apart = np.hypot(one.centre[0] - other.centre[0], one.centre[1] - other.centre[1])
            assert apart < 1e-6 or apart > (one.diameter + other.diameter) / 2 + 2.9


def test_where_left_and_right_would_run_together_a_second_base_is_asked_for() -> None:
    """Castor half a degree, posts 186.9 mm below and 185.2 above, the axis 0.2 mm behind at the wheel centre: they stand
    186.9 tan 0.5 - 0.2 = 1.4 mm and 185.2 tan 0.5 + 0.2 = 1.8 mm off the middle, their mirrored holes as far on the other."""
    found = made(pivots__castor="0.5 deg")
    assert not any(hole.what.endswith("RIGHT") for hole in found.base.holes)
    assert any("second base" in words for words in found.left_out)


def test_check_figures_are_measured_another_way_than_set() -> None:
    figures = {check.what: check.figure for check in made().checks}
    assert figures["Between the two pivots, along the bar"] == pytest.approx(9.9 * IN)
    assert figures["Middle of the bar over the base, at the lower pivot"] == pytest.approx(LOWER[2], abs=0.02)
    one, two, _ = made().posts
    diagonal = np.hypot(one.at[0] + two.at[0], two.at[1] - one.at[1])
    assert figures["Diagonal, middle of post 1 LEFT to middle of post 2 RIGHT"] == pytest.approx(diagonal)


def test_axis_ahead_of_the_spindle_shows_in_the_bars_distance() -> None:
    """The axis 1/2 in ahead at wheel-centre height: over the base it passes the pilot's middle at 0.5 cos 6 deg = 0.4973 in."""
    figures = {check.what: check.figure for check in made(pivots__axis_ahead="1/2 in").checks}
    (found,) = [figure for what, figure in figures.items() if "from the middle of the pilot" in what]
    assert found == pytest.approx(0.4973 * IN, abs=0.01)


def test_what_is_not_known_is_said_and_nothing_known_gives_no_fixture() -> None:
    found = made("dune_wren_finished")
    assert any(words.startswith("bar:") for words in found.left_out)
    assert any(words.startswith("tie-rod pin:") for words in found.left_out)
    assert fixture(judged_document({})) is None


def test_a_fixture_in_inches_is_of_inch_stock_and_one_in_mm_of_metric() -> None:
    """Posts of 1/2 in or 12 mm plate; the base's edges on quarters of an inch or fives of mm from the wheel centre."""
    for name, unit, post in (("scree_ox_strength", IN / 4, IN / 2), ("fell_badger_finished_metric", 5.0, 12.0)):
        found = made(name)
        outline = found.base.outline
        for edge in (outline.left, outline.right, outline.bottom, outline.top):
            assert edge / unit == pytest.approx(round(edge / unit), abs=1e-6)
        assert all(piece.thickness == pytest.approx(post) for piece in post_plates(found)) and post_plates(found)


# Plates of the posts

NOTHING = Profile(Outline(0.0, 1.0, 0.0, 1.0), (), ())


def test_a_post_is_as_high_as_its_bar_less_its_foot_and_its_saddle_lets_the_bush_lean() -> None:
    """Bar 20, so a bush of 20 + 2 x 6 = 32. Its middle 150 over the base, 12 of it foot: 138. At 10 deg the bush is
    16 / cos 10 = 16.247 deep under its middle, and goes 6 tan 10 = 1.058 lower across half the plate: 17.305 in all."""
    made = Fixture(NOTHING, 20.0, (Post("Post 1, below", (0.0, 0.0), 150.0, 20.0, 10.0, 6.0),), (), (), ())
    post, foot = post_plates(made)
    outline = post.profile.outline
    assert outline.top - outline.bottom == pytest.approx(138.0) and bush(made) == 32.0
    (saddle,) = [(x, y) for x, y, bulge in post.profile.points if bulge]
    assert saddle == pytest.approx((16.0, 138 - 17.305 + 16), abs=1e-3)
    assert sorted(hole.centre for hole in foot.profile.holes) == [(0.0, -20.0), (0.0, 20.0)]
    assert foot.make.startswith("2:")


def test_the_saddle_is_let_in_and_not_out() -> None:
    """60 x 138 less a slot 32 wide and 1.305 deep and half a circle of 16: by the general reader of cut files."""
    made = Fixture(NOTHING, 20.0, (Post("Post 1, below", (0.0, 0.0), 150.0, 20.0, 10.0, 6.0),), (), (), ())
    points = post_plates(made)[0].profile.points
    line = ezdxf.new("R2010").modelspace().add_lwpolyline(points, format="xyb", close=True)
    flat = [Vec2(point) for point in make_path(line).flattening(0.001)]
    assert area(flat) == pytest.approx(60 * 138 - 32 * 1.305 - pi * 16**2 / 2, rel=1e-4)


def test_a_bar_that_lies_too_low_for_a_post_has_none() -> None:
    low = Post("Post 1, below", (0.0, 0.0), 40.0, 20.0, 10.0, 6.0)
    assert post_plates(Fixture(NOTHING, 20.0, (low,), (), (), ())) == ()


@pytest.mark.parametrize(("diameter", "half"), [(60.0, 70.0), (60.1, 75.0), (69.9, 75.0), (70.0, 75.0), (70.1, 80.0)])
def test_the_base_is_the_next_whole_step_and_no_more(diameter: float, half: float) -> None:
    """One hole in the middle, 40 kept to the edge, steps of 5: 30 + 40 is 70 already."""
    stock = Stock(40.0, 5.0, 25.0, 60.0, 40.0, 10.5, 0.5, 10.0, 12.0, 6.0, 12.0, "20 mm")
    base = _round_all([Hole((0.0, 0.0), diameter, "hub pilot")], [], None, stock)
    assert (base.left, base.right, base.bottom, base.top) == (-half, half, -half, half)
