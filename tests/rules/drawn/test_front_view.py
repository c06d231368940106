"""The front view's geometry against figures worked out by hand for one wheel."""

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import FrozenInstanceError, replace

import pytest

from rules.corner.fixed import Overlaps
from rules.corner.part import Part
from rules.corner.placing import Ride
from rules.corner.room import BetweenTwo, Moves, Room
from rules.drawn.clash import worst_clash
from rules.drawn.corner_parts import turned_up
from rules.drawn.front_view import front_scene, upright_scene
from rules.drawn.scene import Body, Circle, Dimension, Item, Label, Line, Mark, Polyline, Scene
from rules.drawn.views import FROM_FRONT
from rules.measure.outline import Point
from rules.motion.points import UprightPoints
from rules.motion.sweep import Sweep
from rules.solids.shapes import Ball
from tests.support.one_wheel import CENTRE, EVERYTHING, PARTS, TYRES


def points(item: Item) -> tuple[Point, ...]:
    match item:
        case Body():
            return tuple(point for area in item.areas for point in area.outer)
        case Line() | Dimension():
            return item.start, item.end
        case Polyline():
            return item.points
        case Circle():
            return (item.centre,)
        case _:
            return (item.at,)


def drawn(scene: Scene, part: str) -> list[Item]:
    return [item for item in scene.items if item.part == part and not isinstance(item, Label)]


def body(scene: Scene, name: str) -> Body:
    return next(item for item in scene.items if isinstance(item, Body) and item.name == name)


def names(scene: Scene) -> set[str]:
    return {item.name for item in scene.items if isinstance(item, Body)}


def box(points: Sequence[Point]) -> tuple[float, float, float, float]:
    """Left, right, bottom, top."""
    offsets, heights = [point[0] for point in points], [point[1] for point in points]
    return min(offsets), max(offsets), min(heights), max(heights)


def dimension(scene: Scene, words: str) -> Dimension:
    return next(item for item in scene.items if isinstance(item, Dimension) and item.label.text.endswith(words))


def words(scene: Scene) -> set[str]:
    labels = [item.label if isinstance(item, Dimension) else item for item in scene.items]
    return {label.text for label in labels if isinstance(label, Label)}


def near(wanted: Sequence[float]) -> object:
    """To a millimetre, since round edges are drawn to less than that."""
    return pytest.approx(tuple(wanted), abs=0.5)


def test_the_tyre_is_cut_above_and_below_the_spindle() -> None:
    """420 + 889 / 2 at the top; the rim's flange stands out to 381 / 2 + 17.5."""
    upper, lower = body(front_scene(EVERYTHING), "tyre").areas
    assert box(upper.outer) == near((-158.75, 158.75, 420 + 190.5 + 17.5, 864.5))
    assert box(lower.outer) == near((-158.75, 158.75, 420 - 444.5, 420 - 190.5 - 17.5))


def test_other_tyres_are_dotted_at_their_own_crowns() -> None:
    dotted = [item for item in drawn(front_scene(EVERYTHING), "tyre") if isinstance(item, Line)]
    assert [(item.style, item.start[1]) for item in dotted] == [("dotted", 851.8), ("dotted", 839.1)]
    assert {"design", "smallest"} <= words(front_scene(EVERYTHING))


def test_other_tyres_are_absent_when_all_are_the_same() -> None:
    same = {**EVERYTHING, "smallest_tyre_diameter": 889.4, "design_tyre_diameter": 889.0}
    assert not [item for item in drawn(front_scene(same), "tyre") if isinstance(item, Line)]


def test_rim_rotor_hub_and_plate_are_cut_through_the_spindle() -> None:
    """Radii of 361 / 2 and 381 / 2 + 17.5; of 92.5 and 142.5; 150 / 2; the plate with its bore of 90."""
    scene = front_scene(EVERYTHING)
    assert [box(area.outer) for area in body(scene, "rim").areas] == [
        near((-120.5, 120.5, 420 + 180.5, 420 + 208.0)),
        near((-120.5, 120.5, 420 - 208.0, 420 - 180.5)),
    ]
    assert [box(area.outer) for area in body(scene, "rotor ring").areas] == [
        near((-61.0, -39.0, 420 + 92.5, 420 + 142.5)),
        near((-61.0, -39.0, 420 - 142.5, 420 - 92.5)),
    ]
    assert box(points(body(scene, "hub flange"))) == near((-30.0, -18.0, 345.0, 495.0))
    assert box(points(body(scene, "hub body"))) == near((-108.0, -30.0, 380.0, 460.0))
    assert box(points(body(scene, "plate"))) == near((-95.0, -85.0, 270.0, 570.0))
    above, below = sorted(body(scene, "plate").edges, key=lambda edge: -edge[0][1])
    assert (box(above)[2], box(below)[3]) == near((465.0, 375.0))


def test_what_stands_round_no_axis_is_not_turned_up() -> None:
    assert turned_up(Part("joint", "upright", (Ball((0.0, 0.0, 0.0), 10.0),)), FROM_FRONT) is None


def test_the_caliper_is_turned_up_to_where_the_rotor_is_cut_and_only_its_edges_are_drawn() -> None:
    """It stands ahead, at 9 o'clock seen from outside. Its edges: 142.5 + 22 and 142.5 - 45 from the wheel centre."""
    scene = front_scene(EVERYTHING)
    caliper = body(scene, "caliper")
    assert box(points(caliper)) == near((-50 - 60, -50 + 45, 420 + 97.5, 420 + 164.5))
    assert not caliper.covers and caliper.style == "dashed"
    gap = dimension(scene, "to barrel")
    assert (gap.start[1], gap.end[1], gap.label.mm) == near((584.5, 600.5, 16.0))
    assert gap.label.text.startswith("caliper, at 9 o'clock")


def test_caliper_without_a_barrel_has_a_name_and_no_gap() -> None:
    known = {name: value for name, value in EVERYTHING.items() if name != "caliper_barrel_gap"}
    assert "caliper, at 9 o'clock" in words(front_scene(known))
    assert not any("to barrel" in one for one in words(front_scene(known)))


def test_what_stands_in_no_plane_is_seen_from_the_front() -> None:
    """Balls as circles; a bar from its ball to its ball."""
    scene = front_scene(EVERYTHING)
    assert box(points(body(scene, "upper joint housing"))) == near((-149.0, -105.0, 529.0, 573.0))
    assert box(points(body(scene, "lower joint housing"))) == near((-107.0, -57.0, 270.0, 320.0))
    assert box(points(body(scene, "lower arm"))) == near((-419.0, -63.0, 261.0, 314.0))


def test_what_is_nearer_is_drawn_later() -> None:
    order = [item.name for item in front_scene(EVERYTHING).items if isinstance(item, Body)]
    assert order.index("lower arm") < order.index("tyre") < order.index("plate") < order.index("lower joint housing")


def test_the_shock_is_left_to_the_other_views() -> None:
    assert "shock" not in names(front_scene(EVERYTHING))


# A clash, and what is lit

STANDING = Moves(Ride(UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, CENTRE))), Sweep(()))


def room(gap: float, one: str, other: str, **places: object) -> dict[str, object]:
    parts: list[Part] = [PARTS[one], PARTS[other]]  # type: ignore[list-item]
    pair = BetweenTwo(one, other, (parts[0], parts[1]), gap, turns=parts[0].group == "wheel", **places)  # type: ignore[arg-type]
    return {"corner_room": Room((pair,), 1), "corner_moves": STANDING}


def test_the_two_parts_of_a_clash_are_in_its_colour_and_the_gap_is_written_between_them() -> None:
    """Rotor and housing come nearest 30 ahead of and 40 below the wheel centre, 50 from it: drawn straight below."""
    places = {"on_one": (30.0, -61.0, -40.0), "on_other": (30.0, -62.5, -40.0)}
    scene = front_scene({**EVERYTHING, **room(1.5, "rotor_ring_part", "lower_joint_housing_part", **places)})
    assert {item.name for item in scene.items if isinstance(item, Body) and item.part == "clash"} == {
        "rotor ring", "lower joint housing",
    }  # fmt: skip
    gap = next(item for item in scene.items if isinstance(item, Dimension) and item.part == "clash")
    assert gap.label.text == "gap"
    assert (*gap.start, *gap.end) == near((-61.0, 370.0, -62.5, 370.0))
    assert (gap.part, gap.label.part, gap.label.mm) == ("clash", "clash", 1.5)


@pytest.mark.parametrize(
    ("across", "side"), [(-62.5, "inboard"), (-0.5, "inboard"), (0.5, "outboard"), (40.0, "outboard")]
)
def test_the_words_of_a_clash_stand_on_its_own_side_of_the_tyres_middle(across: float, side: str) -> None:
    places = {"on_one": (30.0, across + 1.5, -40.0), "on_other": (30.0, across, -40.0)}
    scene = front_scene({**EVERYTHING, **room(1.5, "rotor_ring_part", "lower_joint_housing_part", **places)})
    gap = next(item for item in scene.items if isinstance(item, Dimension) and item.part == "clash")
    assert (gap.label.side, gap.label.at) == (side, near((across, 370.0)))


def test_fixed_parts_in_one_another_are_in_the_colour_of_a_clash_too() -> None:
    ring, hat = PARTS["rotor_ring_part"], PARTS["lower_joint_housing_part"]
    deep = BetweenTwo("one", "other", (ring, hat), -4.0, on_one=(30.0, -61.0, -40.0), on_other=(30.0, -65.0, -40.0))  # type: ignore[arg-type]
    found = {"fixed_overlaps": Overlaps((deep,)), "corner_moves": STANDING}
    scene = front_scene({**EVERYTHING, **found})
    assert {item.name for item in scene.items if isinstance(item, Body) and item.part == "clash"} == {
        "rotor ring", "lower joint housing",
    }  # fmt: skip
    milder = room(-1.0, "rotor_ring_part", "upper_joint_housing_part")  # of two, the deeper is shown
    told = worst_clash({**EVERYTHING, **milder, **found})
    assert told is not None and told.names == ("rotor ring", "lower joint housing")


def test_a_pair_with_room_is_no_clash() -> None:
    scene = front_scene({**EVERYTHING, **room(80.0, "rotor_ring_part", "lower_joint_housing_part")})
    assert not [item for item in scene.items if item.part == "clash"]


def test_between_two_that_do_not_turn_the_gap_stands_where_it_is() -> None:
    places = {"on_one": (30.0, -90.0, -100.0), "on_other": (30.0, -90.0, -102.0)}
    scene = front_scene({**EVERYTHING, **room(-2.0, "plate_part", "lower_arm_part", **places)})
    gap = next(item for item in scene.items if isinstance(item, Dimension) and item.part == "clash")
    assert (gap.label.text, gap.label.mm) == ("overlap", 2.0)
    assert (*gap.start, *gap.end) == near((-90.0, 320.0, -90.0, 318.0))


def test_parts_are_lit_by_name() -> None:
    scene = front_scene(EVERYTHING, lit=("rim", "plate"))
    assert {item.name for item in scene.items if isinstance(item, Body) and item.part == "lit"} == {"rim", "plate"}


# Lines and words


def test_axis_goes_from_above_the_upper_pivot_through_both_pivots_to_its_landing() -> None:
    scene = front_scene(EVERYTHING)
    (axis,) = [item for item in drawn(scene, "axis") if isinstance(item, Line)]
    (landing,) = [item for item in drawn(scene, "axis") if isinstance(item, Mark)]
    assert landing.at == axis.start == (-30.0, 0.0)
    assert axis.end[1] > 551.0
    # The sample's pivots were worked out separately, rounded to 1 mm.
    slope = (axis.end[0] - axis.start[0]) / (axis.end[1] - axis.start[1])
    for offset, height in ((-82.0, 295.0), (-104.0, 420.0), (-127.0, 551.0)):
        assert axis.start[0] + slope * height == pytest.approx(offset, abs=1.0)


def test_dimensions_carry_their_quantity_in_mm() -> None:
    scene = front_scene(EVERYTHING)
    ground = dimension(scene, "ground offset")
    assert (ground.start[0], ground.end[0], ground.label.mm) == (0.0, -30.0, 30.0)
    assert ground.end[1] < 0
    hub_height = dimension(scene, "hub height offset")
    assert (hub_height.start, hub_height.end, hub_height.label.mm) == ((0.0, 420.0), (-104.0, 420.0), 104.0)
    centre = dimension(scene, "wheel centre")
    assert (centre.start[1], centre.end[1], centre.label.mm) == (0.0, 420.0, 420.0)
    (spacing,) = [item for item in scene.items if isinstance(item, Label) and item.text == "pivot spacing"]
    assert spacing.mm == 260.0


def test_negative_ground_offset_lands_outboard_and_is_named_there() -> None:
    ground = dimension(front_scene({**EVERYTHING, "pivots.ground_offset": -15.0}), "ground offset")
    assert (ground.end[0], ground.label.side, ground.label.mm) == (15.0, "outboard", -15.0)


@pytest.mark.parametrize("missing", sorted(PARTS))
def test_a_part_that_cannot_be_placed_is_absent(missing: str) -> None:
    part = PARTS[missing]
    assert isinstance(part, Part)
    fewer = {name: value for name, value in EVERYTHING.items() if name != missing}
    assert names(front_scene(fewer)) == names(front_scene(EVERYTHING)) - {part.name}


def test_nothing_known_draws_nothing() -> None:
    assert front_scene({}).items == ()
    assert upright_scene({}).items == ()


@pytest.mark.parametrize("name", sorted(EVERYTHING))
@pytest.mark.parametrize("odd", [0, -300, 1e-9, 9e11, -9e11, 1.5707963])
@pytest.mark.parametrize("view", [front_scene, upright_scene])
def test_silly_values_still_give_finite_shapes(
    name: str, odd: float, view: Callable[[Mapping[str, object]], Scene]
) -> None:
    scene = view({**EVERYTHING, name: odd})
    assert all(math.isfinite(figure) for item in scene.items for point in points(item) for figure in point)
    frame = scene.frame
    assert frame.left < frame.right and frame.bottom < frame.top


def test_frame_holds_the_tyre_the_ground_and_the_pivots() -> None:
    frame = front_scene(EVERYTHING).frame
    assert frame.left < -158.75 and frame.right > 158.75
    assert frame.bottom < 0 and frame.top > 864.5


def test_a_mistyped_pivot_does_not_shrink_the_wheel() -> None:
    frame = front_scene({**EVERYTHING, "upper_pivot_offset": -127000.0}).frame
    assert frame.right - frame.left < 1000


def test_close_up_frames_rim_and_pivots_without_the_ground() -> None:
    frame = upright_scene(EVERYTHING).frame
    assert 0 < frame.bottom < 212 and 628 < frame.top < 700
    assert frame.left < -149 and frame.right > 120.5


def test_close_up_without_a_rim_frames_the_rotor_and_little_more() -> None:
    """285 across, 420 up: from 277.5 to 562.5."""
    frame = upright_scene({name: value for name, value in EVERYTHING.items() if name != "wheel.diameter"}).frame
    assert 277.5 - 0.25 * 142.5 < frame.bottom < 277.5 and 562.5 < frame.top < 562.5 + 0.25 * 142.5


def test_close_up_and_whole_wheel_show_the_same_parts() -> None:
    close, whole = upright_scene(EVERYTHING), front_scene(EVERYTHING)
    assert names(close) == names(whole)
    assert words(whole) - words(close) == {"wheel centre"}


def test_close_up_of_tyres_alone_is_the_whole_wheel() -> None:
    assert upright_scene(TYRES) == front_scene(TYRES)


def test_scenes_cannot_be_changed() -> None:
    with pytest.raises(FrozenInstanceError):
        front_scene(TYRES).items = ()  # type: ignore[misc]


def test_a_clash_is_told_in_one_line() -> None:
    """Also where the picture has no room for the figure beside it."""
    known = {**EVERYTHING, **room(-2.0, "plate_part", "lower_arm_part")}
    clash = worst_clash(known)
    assert clash and clash.told(lambda mm: f"{mm:g} mm") == "plate and lower arm: 2 mm in one another"
    apart = worst_clash({**EVERYTHING, **room(1.5, "rotor_ring_part", "lower_joint_housing_part", lock=1.0)})
    assert apart and apart.told(lambda mm: f"{mm:g} mm").endswith("1.5 mm apart, when moved")
    assert worst_clash({}) is None


@pytest.mark.parametrize("bore", [80.0, None])
def test_the_hubs_body_in_a_plate_whose_bore_is_not_entered_is_no_clash(bore: float | None) -> None:
    """Then it is not known yet what is cut out for it; once it is, the body must not stand in the metal."""
    body, plate = PARTS["hub_body_part"], PARTS["plate_part"]
    deep = BetweenTwo("one", "other", (body, plate), -4.0, on_one=(0.0, -61.0, -40.0), on_other=(0.0, -65.0, -40.0))  # type: ignore[arg-type]
    known = {name: found for name, found in EVERYTHING.items() if name != "plate.bore"}
    known |= {"fixed_overlaps": Overlaps((deep,)), "corner_moves": STANDING} | ({"plate.bore": bore} if bore else {})
    told = worst_clash(known)
    assert (told.names if told else None) == (("hub body", "plate") if bore else None)


def test_of_several_clashes_the_one_with_the_least_room_is_told() -> None:
    two, four = (
        room(gap, "rotor_ring_part", part)["corner_room"].near[0]  # type: ignore[attr-defined]
        for gap, part in ((-2.0, "upper_joint_housing_part"), (-4.0, "lower_joint_housing_part"))
    )
    for near_ones in ((two, four), (four, two)):
        known = {**EVERYTHING, **room(-2.0, "rotor_ring_part", "upper_joint_housing_part")}
        known["corner_room"] = replace(known["corner_room"], near=near_ones)  # type: ignore[type-var]
        told = worst_clash(known)
        assert told is not None and (told.gap, told.names) == (-4.0, ("rotor ring", "lower joint housing"))
