"""A caliper and its bracket as solids: every size by hand from what is entered."""

from math import asin, cos, pi, radians, sin

import pytest

from rules.corner.part import Part
from rules.graph.results import OutsideRange, Waits
from rules.solids.shapes import Prism, Revolved
from rules.values.corner.caliper_parts import caliper_bracket_part, caliper_part

PLANE = -40.0


def caliper(**changed: float) -> Part:
    """A rotor of 280 and 20 thick; the caliper 22 beyond its edge, 44 outboard, 60 inboard, 45 inward, 168 long, ahead."""
    sizes = {
        "rotor_diameter": 280.0, "rotor_plane_offset": PLANE, "rotor_working_thickness": 20.0, "reach_above_rotor": 22.0,
        "outboard_reach": 44.0, "caliper_inboard": 60.0, "caliper_inward": 45.0, "caliper_long": 168.0,
        "caliper_at": pi / 2, "wheel_centre_height": 400.0,
    }  # fmt: skip
    return caliper_part(**sizes | changed)


def profiles(part: Part) -> list[tuple[float, float, float, float]]:
    """Of each piece from what radius to what, and from how far outboard of the tyre's middle to how far."""
    found = []
    for shape in part.shapes:
        assert isinstance(shape, Revolved)
        radii, along = ([corner[i] for corner in shape.profile] for i in (0, 1))
        assert len(set(shape.profile)) == 4
        found.append((min(radii), max(radii), min(along), max(along)))
    return found


def test_a_caliper_is_a_half_on_each_side_of_its_rotor_and_a_bridge_over_its_edge() -> None:
    """95 to 162 from the wheel's axis; outboard from 10 to 44 of the rotor's middle, inboard from 10 to 60."""
    found = caliper()
    assert profiles(found) == [
        (95.0, 162.0, PLANE + 10, PLANE + 44), (95.0, 162.0, PLANE - 60, PLANE - 10), (140.0, 162.0, PLANE - 10, PLANE + 10),
    ]  # fmt: skip
    for shape in found.shapes:
        assert isinstance(shape, Revolved)
        # 84 of half its length at the rotor's edge of 140: 3-4-5
        assert shape.half_angle == pytest.approx(asin(0.6)) and shape.towards == pytest.approx((1.0, 0.0, 0.0))
        assert shape.origin == (0.0, 0.0, 400.0) and shape.axis == (0.0, 1.0, 0.0)
    (above, *_) = caliper(caliper_at=0.0).shapes
    assert isinstance(above, Revolved) and above.towards == pytest.approx((0.0, 0.0, 1.0))


@pytest.mark.parametrize(("reach", "pieces"), [(0.1, 3), (0.0, 2), (-5.0, 2)])
def test_a_caliper_that_does_not_reach_over_the_edge_has_no_bridge(reach: float, pieces: int) -> None:
    assert len(caliper(reach_above_rotor=reach).shapes) == pieces


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"outboard_reach": 10.0}, "does not reach past"), ({"caliper_inboard": 10.0}, "does not reach past"),
        ({"outboard_reach": 10.1, "caliper_inboard": 10.1}, None),
        ({"caliper_long": 280.0}, "as large as the rotor"), ({"caliper_long": 279.9}, None),
        ({"caliper_inward": 140.0}, "as large as the rotor"), ({"caliper_inward": 139.9}, None),
    ],
)  # fmt: skip
def test_sizes_that_a_caliper_cannot_have(changed: dict[str, float], words: str | None) -> None:
    if words is None:
        caliper(**changed)
        return
    with pytest.raises(OutsideRange, match=words):
        caliper(**changed)


def bracket(**changed: float | None) -> Part:
    """Bolts 20 inside the edge of a rotor of 280, holes of 12 and 100 apart; 60 free, 80 wide at its root, 10 thick, its middle
    45 inboard of the rotor's; ahead."""
    sizes: dict[str, float | None] = {
        "bracket_thickness": 10.0, "bracket_arm_length": 60.0, "bracket_arm_width": 80.0, "bracket_arm_offset": 45.0,
        "bracket_hole_diameter": 12.0, "bracket_hole_spacing": 100.0, "bolts_inside_edge": 20.0, "rotor_diameter": 280.0,
        "rotor_plane_offset": PLANE, "caliper_at": pi / 2, "wheel_centre_height": 400.0,
    }  # fmt: skip
    return caliper_bracket_part(**sizes | changed)  # type: ignore[arg-type]


def prism(part: Part) -> Prism:
    (shape,) = part.shapes
    assert isinstance(shape, Prism)
    return shape


def test_a_bracket_runs_from_its_root_past_both_bolts() -> None:
    """Its bolts 120 from the wheel's axis, its root 60 inside that; 1.5 x 12 = 18 beyond the bolts, out and to the sides: 68."""
    shape = prism(bracket())
    assert set(shape.outline) == {
        (-40.0, 60.0), (40.0, 60.0), (68.0, 120.0), (68.0, 138.0), (-68.0, 138.0), (-68.0, 120.0),
    }  # fmt: skip
    assert (shape.low, shape.high) == (PLANE - 50, PLANE - 40) and shape.origin == (0.0, 0.0, 400.0)
    assert shape.up == pytest.approx((1.0, 0.0, 0.0)) and shape.normal == pytest.approx((0.0, 1.0, 0.0))


def test_where_a_bracket_is_welded_on() -> None:
    """The line across its root, 60 ahead of the wheel's axis; turned half up to 45 deg it is as far off."""
    foot = bracket().foot
    assert foot is not None and foot.way == pytest.approx((1.0, 0.0, 0.0))
    assert foot.points == (pytest.approx((60.0, PLANE - 50, 400.0)), pytest.approx((60.0, PLANE - 40, 400.0)))
    up = bracket(caliper_at=radians(45)).foot
    assert up is not None and up.way == pytest.approx((sin(pi / 4), 0.0, cos(pi / 4)))
    assert up.points[0] == pytest.approx((60 * sin(pi / 4), PLANE - 50, 400 + 60 * cos(pi / 4)))


@pytest.mark.parametrize(
    ("changed", "end", "high"),
    [
        ({"bracket_arm_width": 160.0}, 80.0, 138.0),  # as wide as its root
        ({"bracket_hole_spacing": None}, 40.0, 138.0), ({"bracket_hole_diameter": None}, 50.0, 120.0),
        ({"bracket_hole_spacing": None, "bracket_arm_width": 20.0}, 18.0, 138.0),  # 1.5 x 12 about one bolt
    ],
)  # fmt: skip
def test_how_wide_and_how_long_a_bracket_is(changed: dict[str, float | None], end: float, high: float) -> None:
    outline = prism(bracket(**changed)).outline
    assert (max(x for x, _ in outline), max(y for _, y in outline)) == (end, high)


def test_what_a_bracket_waits_for_and_what_has_no_room() -> None:
    with pytest.raises(Waits) as waits:
        bracket(bracket_thickness=None)
    assert waits.value.fields == ("plate.bracket_thickness",)
    assert min(y for _, y in prism(bracket(bracket_arm_length=119.9)).outline) == pytest.approx(0.1)
    with pytest.raises(OutsideRange, match="larger than the rotor leaves room for"):
        bracket(bracket_arm_length=120.0)
