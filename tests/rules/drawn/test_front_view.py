"""The front view's geometry against figures worked out by hand for one wheel."""

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import FrozenInstanceError

import pytest

from rules.drawn.front_view import front_scene, upright_scene
from rules.drawn.scene import Circle, Dimension, Item, Label, Line, Mark, Polyline, Scene
from rules.measure.outline import Point

TYRES: dict[str, object] = {
    "design_tyre_diameter": 863.6,
    "smallest_tyre_diameter": 838.2,
    "largest_tyre_diameter": 889.0,
    "tyre_section_width": 317.5,
    "wheel_centre_height": 420.0,
}
WHEEL: dict[str, object] = {
    "wheel.diameter": 381.0,
    "wheel_overall_width": 241.0,
    "wheel_offset": -12.0,
    "barrel_inside_diameter": 361.0,
}
BRAKE: dict[str, object] = {
    "rotor.diameter": 285.0,
    "rotor_plane_offset": -50.0,
    "rotor_working_thickness": 22.0,
    "caliper.reach_above_rotor": 22.0,
    "caliper.outboard_reach": 45.0,
    "caliper_barrel_gap": 16.0,
}
HUB: dict[str, object] = {
    "hub_face_offset": -18.0,
    "bearing_offset": -60.0,
    "mount_face_offset": -85.0,
    "hub.pilot_diameter": 90.0,
}
PIVOTS: dict[str, object] = {
    "pivots.ground_offset": 30.0,
    "pivots.inclination": 0.1745,
    "pivots.spacing": 260.0,
    "hub_height_offset": 104.0,
    "lower_pivot_offset": -82.0,
    "lower_pivot_height": 295.0,
    "upper_pivot_offset": -127.0,
    "upper_pivot_height": 551.0,
    "pivots.lower_radius": 25.0,
    "pivots.upper_radius": 22.0,
}
EVERYTHING: dict[str, object] = {**TYRES, **WHEEL, **BRAKE, **HUB, **PIVOTS}


def points(item: Item) -> tuple[Point, ...]:
    match item:
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


def outlines(scene: Scene, style: str) -> list[Polyline]:
    return [item for item in drawn(scene, "tyre") if isinstance(item, Polyline) and item.style == style]


def extent(items: Sequence[Item]) -> tuple[float, float, float, float]:
    """Left, right, bottom, top."""
    found = [point for item in items for point in points(item)]
    offsets, heights = [point[0] for point in found], [point[1] for point in found]
    return min(offsets), max(offsets), min(heights), max(heights)


def dimension(scene: Scene, words: str) -> Dimension:
    return next(item for item in scene.items if isinstance(item, Dimension) and item.label.text == words)


def words(scene: Scene) -> set[str]:
    labels = [item.label if isinstance(item, Dimension) else item for item in scene.items]
    return {label.text for label in labels if isinstance(label, Label)}


def test_tyre_stands_on_the_ground_and_reaches_half_a_diameter_above_the_wheel_centre() -> None:
    solid = outlines(front_scene(EVERYTHING), "solid")
    assert extent(solid) == pytest.approx((-158.75, 158.75, 0.0, 851.8))


def test_squashed_lobe_is_shorter_than_the_upper_one() -> None:
    upper, lower = outlines(front_scene(EVERYTHING), "solid")
    _, _, upper_foot, upper_top = extent([upper])
    _, _, lower_foot, lower_top = extent([lower])
    assert (upper_foot, lower_top) == pytest.approx((628.0, 212.0))
    assert upper_top - upper_foot == pytest.approx(223.8)
    assert lower_top - lower_foot == pytest.approx(212.0)


def test_lower_lobe_is_flat_where_it_meets_the_ground() -> None:
    lower = outlines(front_scene(EVERYTHING), "solid")[1]
    at_ground = [offset for offset, height in points(lower) if height < 3.0]
    assert max(at_ground) > 80 and min(at_ground) < -80


def test_other_tyres_are_dotted_at_their_own_crowns() -> None:
    dotted = outlines(front_scene(EVERYTHING), "dotted")
    assert [extent([item])[3] for item in dotted] == pytest.approx([864.5, 839.1])


def test_other_tyres_are_absent_when_all_are_the_same() -> None:
    same = {**TYRES, "smallest_tyre_diameter": 863.6, "largest_tyre_diameter": 863.6}
    scene = front_scene(same)
    assert len(drawn(scene, "tyre")) == 1
    assert not {"largest", "smallest"} & words(scene)


def test_tyre_alone_is_one_closed_outline() -> None:
    (outline,) = outlines(front_scene(TYRES), "solid")
    assert isinstance(outline, Polyline) and outline.closed and outline.filled
    assert extent([outline]) == pytest.approx((-158.75, 158.75, 0.0, 851.8))


def test_rim_section() -> None:
    rims = [item for item in drawn(front_scene(EVERYTHING), "rim") if isinstance(item, Polyline)]
    assert extent(rims) == pytest.approx((-120.5, 120.5, 212.0, 628.0))
    upper, lower = rims
    assert min(height for _, height in points(upper)) == pytest.approx(600.5)
    assert max(height for _, height in points(lower)) == pytest.approx(239.5)


def test_disc_stands_at_the_wheel_offset_between_bore_and_barrel() -> None:
    discs = [item for item in drawn(front_scene(EVERYTHING), "rim") if isinstance(item, Line)]
    assert extent(discs) == pytest.approx((-12.0, -12.0, 239.5, 600.5))
    assert sorted(item.start[1] for item in discs) == pytest.approx([375.0, 465.0])


def test_no_disc_without_an_offset() -> None:
    known = {**TYRES, **WHEEL}
    del known["wheel_offset"]
    assert not [item for item in drawn(front_scene(known), "rim") if isinstance(item, Line)]


def test_rotor_is_drawn_on_both_sides_of_the_spindle() -> None:
    upper, lower = drawn(front_scene(EVERYTHING), "rotor")
    assert extent([upper])[:2] == pytest.approx((-61.0, -39.0))
    assert extent([upper])[3] == pytest.approx(562.5)
    assert extent([lower])[2] == pytest.approx(277.5)


def test_caliper_reaches_above_and_outboard_of_the_rotor() -> None:
    (envelope,) = drawn(front_scene(EVERYTHING), "caliper")
    assert isinstance(envelope, Polyline) and envelope.style == "dashed" and not envelope.closed
    _, right, bottom, top = extent([envelope])
    assert (right, top) == pytest.approx((-5.0, 584.5))
    # It comes down over the rotor's edge (562.5) on the outboard side only.
    assert [offset for offset, height in points(envelope) if height == bottom] == [-5.0]
    assert bottom < 562.5


def test_caliper_gap_spans_from_the_caliper_to_the_barrel() -> None:
    gap = dimension(front_scene(EVERYTHING), "caliper to barrel")
    assert (gap.start[1], gap.end[1], gap.label.mm) == pytest.approx((584.5, 600.5, 16.0))


def test_caliper_without_a_barrel_has_a_name_and_no_gap() -> None:
    known = {**TYRES, **BRAKE}
    del known["caliper_barrel_gap"]
    assert "caliper" in words(front_scene(known))
    assert "caliper to barrel" not in words(front_scene(known))


def test_hub_lies_between_its_flange_face_and_the_mount_face() -> None:
    scene = front_scene(EVERYTHING)
    (outline,) = [item for item in drawn(scene, "hub") if isinstance(item, Polyline)]
    assert extent([outline])[:2] == pytest.approx((-85.0, -18.0))
    (bearing,) = [item for item in drawn(scene, "hub") if isinstance(item, Mark)]
    assert bearing.at == (-60.0, 420.0)


def test_plate_face_runs_from_pivot_to_pivot() -> None:
    (face,) = drawn(front_scene(EVERYTHING), "plate")
    assert points(face) == ((-85.0, 295.0), (-85.0, 551.0))


def test_pivots_and_their_housings() -> None:
    circles = [item for item in drawn(front_scene(EVERYTHING), "pivot") if isinstance(item, Circle)]
    assert [(item.centre, item.radius) for item in circles] == [((-127.0, 551.0), 22.0), ((-82.0, 295.0), 25.0)]


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


@pytest.mark.parametrize(
    ("known", "absent"),
    [
        (TYRES, {"rim", "rotor", "caliper", "hub", "plate", "pivot", "axis"}),
        ({**TYRES, **WHEEL}, {"rotor", "caliper", "hub", "plate", "pivot", "axis"}),
        ({**TYRES, **WHEEL, **PIVOTS}, {"rotor", "caliper", "hub", "plate"}),
        ({**TYRES, **HUB}, {"rim", "rotor", "caliper", "pivot", "axis"}),
    ],
)
def test_what_is_not_known_is_absent(known: dict[str, object], absent: set[str]) -> None:
    parts = {item.part for item in front_scene(known).items}
    every = {item.part for item in front_scene(EVERYTHING).items}
    assert every - parts == absent


def test_nothing_known_draws_nothing() -> None:
    assert front_scene({}).items == ()
    assert upright_scene({}).items == ()


@pytest.mark.parametrize("odd", [None, "285", math.nan, math.inf, -math.inf, True, 0.0, -5.0, 10**400, 1e300])
def test_a_rotor_diameter_that_is_no_size_leaves_the_rotor_out(odd: object) -> None:
    parts = {item.part for item in front_scene({**EVERYTHING, "rotor.diameter": odd}).items}
    assert not parts & {"rotor", "caliper"}
    assert {"tyre", "hub", "axis"} <= parts


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


def test_close_up_adds_the_hat_and_the_name_of_the_plate_face() -> None:
    close, whole = upright_scene(EVERYTHING), front_scene(EVERYTHING)
    assert len(drawn(close, "rotor")) > len(drawn(whole, "rotor"))
    assert words(close) - words(whole) == {"mount face"}
    assert words(whole) - words(close) == {"wheel centre"}


def test_close_up_of_tyres_alone_is_the_whole_wheel() -> None:
    assert upright_scene(TYRES) == front_scene(TYRES)


def test_scenes_cannot_be_changed() -> None:
    with pytest.raises(FrozenInstanceError):
        front_scene(TYRES).items = ()  # type: ignore[misc]
