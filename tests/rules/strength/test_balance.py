"""The balance of the upright: forces and moments sum to nought, a matrix solve agrees, and bad geometry is refused."""

from math import radians, tan

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from rules.graph.results import OutsideRange
from rules.measure.vectors import Vector
from rules.strength.balance import Linkage, arm_normal, balance, leg_forces, moment_of, plane_slopes, rod_line

CLOSE = 1e-9


def between(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high, allow_nan=False)


@st.composite
def buildable(draw: st.DrawFn) -> Linkage:
    """Uprights somebody could weld: axis 100 to 500 high, leaning up to about 22 deg each way, tie rod 80 to 250 off it."""
    low = (draw(between(-60, 60)), draw(between(-200, 20)), draw(between(150, 400)))
    rise = draw(between(100, 500))
    lean = (draw(between(-0.4, 0.4)), draw(between(-0.4, 0.4)))
    high = (low[0] + rise * lean[0], low[1] + rise * lean[1], low[2] + rise)
    up = rise * draw(between(-0.2, 1.2))
    off = draw(st.sampled_from((-1.0, 1.0))) * draw(between(80, 250)), draw(between(-100, 100))
    rod = (low[0] + lean[0] * up + off[0], low[1] + lean[1] * up + off[1], low[2] + up)
    upper_carries = draw(st.booleans())
    return Linkage(
        carrying=high if upper_carries else low,
        guiding=low if upper_carries else high,
        guiding_normal=arm_normal(draw(between(-0.5, 0.5)), draw(between(-0.35, 0.35))),
        tie_rod=rod,
        tie_rod_line=rod_line(draw(between(-0.35, 0.35)), draw(between(-0.35, 0.35))),
    )


def some_load(size: float) -> st.SearchStrategy[Vector]:
    return st.tuples(between(-size, size), between(-size, size), between(-size, size))


@given(buildable(), some_load(50_000.0), some_load(1e7))
def test_forces_and_moments_sum_to_nought(linkage: Linkage, force: Vector, moment: Vector) -> None:
    held = balance(linkage, force, moment)
    joints = ((held.carrying, linkage.carrying), (held.guiding, linkage.guiding), (held.tie_rod, linkage.tie_rod))
    forces = np.array([force, *(joint for joint, _ in joints)])
    moments = np.array([moment, *(np.cross(point, joint) for joint, point in joints)])
    scale = np.abs(forces).max()
    reach = max(np.abs(moments).max(), scale * 100)
    assert np.abs(forces.sum(axis=0)).max() <= CLOSE * scale
    assert np.abs(moments.sum(axis=0)).max() <= CLOSE * reach


@given(buildable(), some_load(50_000.0), some_load(1e7))
def test_each_joint_pushes_only_the_way_it_can(linkage: Linkage, force: Vector, moment: Vector) -> None:
    held = balance(linkage, force, moment)
    scale = CLOSE * max(1.0, float(np.abs([held.carrying, held.guiding, held.tie_rod, force]).max()))
    assert abs(np.dot(held.guiding, linkage.guiding_normal)) <= scale * 2
    assert np.abs(np.cross(held.tie_rod, linkage.tie_rod_line)).max() <= scale * 2


@given(buildable(), some_load(50_000.0), some_load(1e7))
def test_a_matrix_of_six_equations_gives_the_same(linkage: Linkage, force: Vector, moment: Vector) -> None:
    slope_x, slope_y, _ = np.array(linkage.guiding_normal) / linkage.guiding_normal[2]
    legs = [np.array((1.0, 0.0, -slope_x)), np.array((0.0, 1.0, -slope_y))]
    columns = [(leg, linkage.guiding) for leg in legs]
    columns += [(axis, linkage.carrying) for axis in np.eye(3)]
    columns += [(np.array(linkage.tie_rod_line), linkage.tie_rod)]
    matrix = np.array([np.concatenate((way, np.cross(point, way) / 100)) for way, point in columns]).T
    assume(np.linalg.cond(matrix) < 1e5)
    found = np.linalg.solve(matrix, -np.concatenate((force, np.array(moment) / 100)))
    held = balance(linkage, force, moment)
    near = {"rtol": 1e-8, "atol": 1e-8 * max(1.0, float(np.abs(found).max()))}
    np.testing.assert_allclose(held.guiding, found[0] * legs[0] + found[1] * legs[1], **near)
    np.testing.assert_allclose(held.carrying, found[2:5], **near)
    np.testing.assert_allclose(held.tie_rod, found[5] * np.array(linkage.tie_rod_line), **near)


# Derived for this project: a car-sized corner, spring on the lower arm, 4000 N on the tyre at (0, 780, 0). Points in mm.
UPPER, FRONT, REAR = (-15.0, 660.0, 590.0), (120.0, 400.0, 560.0), (-160.0, 400.0, 560.0)
LOWER, ROD, ROD_INNER = (10.0, 700.0, 300.0), (-130.0, 690.0, 370.0), (-120.0, 360.0, 380.0)
CONTACT = (0.0, 780.0, 0.0)


@pytest.mark.parametrize(
    "force, front, rear",
    [
        ((0.0, 0.0, 4000.0), -834.296, -469.844),
        ((0.0, 0.0, 12_000.0), -2502.889, -1409.532),
        ((0.0, -4000.0, 4000.0), 1774.087, 1860.034),
    ],
)
def test_the_legs_of_the_arm_as_a_matrix_of_six_equations_gives_them(force: Vector, front: float, rear: float) -> None:
    def pull(inner: Vector, outer: Vector) -> np.ndarray:
        along = np.subtract(inner, outer)
        return along / np.linalg.norm(along)

    ways = [(pull(FRONT, UPPER), UPPER), (pull(REAR, UPPER), UPPER), (pull(ROD_INNER, ROD), ROD)]
    ways += [(axis, LOWER) for axis in np.eye(3)]
    matrix = np.array([np.concatenate((way, np.cross(point, way))) for way, point in ways]).T
    solved = np.linalg.solve(matrix, -np.concatenate((force, np.cross(CONTACT, force))))
    assert solved[:2] == pytest.approx((front, rear), abs=5e-4)

    normal = tuple(np.cross(np.subtract(FRONT, UPPER), np.subtract(REAR, UPPER)))
    linkage = Linkage(LOWER, UPPER, normal, ROD, tuple(np.subtract(ROD, ROD_INNER)))
    held = balance(linkage, force, moment_of(((force, CONTACT),)))
    assert leg_forces(held.guiding, UPPER, FRONT, REAR) == pytest.approx(solved[:2], rel=1e-9)


def test_a_force_along_one_leg_leaves_the_other_empty_and_pushing_is_minus() -> None:
    # Front leg 300 ahead and 400 inboard of the outer pivot: 500 N along it, away from the car's middle, is a push.
    legs = ((0.0, 0.0, 500.0), (300.0, -400.0, 500.0), (-300.0, -400.0, 500.0))
    assert leg_forces((-300.0, 400.0, 0.0), *legs) == pytest.approx((-500.0, 0.0))
    assert leg_forces((-300.0, -400.0, 0.0), *legs) == pytest.approx((0.0, 500.0))
    # 600 N to the rear: the front leg pulls forward, so it pushes back: 300 x 5 / 3 each
    assert leg_forces((-600.0, 0.0, 0.0), *legs) == pytest.approx((-500.0, 500.0))


def test_the_rear_leg_of_an_arm_with_its_front_leg_straight_across() -> None:
    # Front leg straight across, rear leg 3-4-5 behind it: 600 N to the rear is 1000 N in the rear leg, whose 800 N inboard
    # the front leg holds off.
    legs = ((0.0, 0.0, 500.0), (0.0, -400.0, 500.0), (-300.0, -400.0, 500.0))
    assert leg_forces((-600.0, 0.0, 0.0), *legs) == pytest.approx((-800.0, 1000.0))


@pytest.mark.parametrize("degrees, refused", [(0.99, True), (1.01, False)])
def test_legs_within_a_degree_of_one_line_are_refused(degrees: float, refused: bool) -> None:
    legs = ((0.0, 0.0, 500.0), (0.0, -400.0, 500.0), (-400.0 * tan(radians(degrees)), -400.0, 500.0))
    if refused:
        with pytest.raises(OutsideRange, match="along one line"):
            leg_forces((0.0, -100.0, 0.0), *legs)
    else:
        assert leg_forces((0.0, -100.0, 0.0), *legs) == pytest.approx((100.0, 0.0))


@pytest.mark.parametrize("place", [(0.0, 0.0, 500.0), (600.0, -800.0, 500.0), (-300.0, 400.0, 500.0)])
def test_an_inner_pivot_on_the_outer_one_or_both_on_one_line_is_refused(place: Vector) -> None:
    with pytest.raises(OutsideRange, match="along one line"):
        leg_forces((0.0, -100.0, 0.0), (0.0, 0.0, 500.0), (300.0, -400.0, 500.0), place)


@pytest.mark.parametrize("degrees, refused", [(1.01, True), (0.99, False), (-1.01, True), (-0.99, False)])
def test_a_force_more_than_a_degree_off_the_arms_plane_is_refused(degrees: float, refused: bool) -> None:
    force = (0.0, -800.0, 800.0 * tan(radians(degrees)))
    legs = ((0.0, 0.0, 500.0), (300.0, -400.0, 500.0), (-300.0, -400.0, 500.0))
    if refused:
        with pytest.raises(OutsideRange, match="not those of its inner pivots"):
            leg_forces(force, *legs)
    else:
        assert leg_forces(force, *legs) == pytest.approx((500.0, 500.0))


LEVEL = Linkage((0, -80, 300), (0, -120, 590), (0, 0, 1), (-130, -90, 370), (0, 1, 0))


def test_in_a_plane_the_moments_about_the_lower_pivot_give_the_upper() -> None:
    # 4000 N inboard and up at the ground, 80 outboard of the lower pivot: (80 x 4000 - 300 x 4000) / 290
    force = (0.0, -4000.0, 4000.0)
    held = balance(LEVEL, force, moment_of(((force, (0.0, 0.0, 0.0)),)))
    assert held.guiding == pytest.approx((0.0, -3034.48276, 0.0), abs=1e-5)
    assert held.carrying == pytest.approx((0.0, 7034.48276, -4000.0), abs=1e-5)
    assert held.tie_rod == pytest.approx((0.0, 0.0, 0.0), abs=1e-9)


def test_straight_up_axis_a_rearward_pull_turns_the_wheel_and_the_tie_rod_holds_it() -> None:
    # Axis 100 inboard, tie rod 125 behind it: 1000 N rearward turns by 100 000 N mm, the rod pushes 800 N outboard.
    upright = Linkage((0, -100, 300), (0, -100, 500), (0, 0, 1), (-125, -100, 400), (0, 1, 0))
    force = (-1000.0, 0.0, 0.0)
    held = balance(upright, force, moment_of(((force, (0.0, 0.0, 400.0)),)))
    assert held.tie_rod == pytest.approx((0.0, 800.0, 0.0))
    assert held.carrying == pytest.approx((500.0, -400.0, 0.0))
    assert held.guiding == pytest.approx((500.0, -400.0, 0.0))


def test_a_sloping_arm_without_the_spring_takes_some_of_the_weight() -> None:
    slope = radians(10)
    sloping = Linkage((0, -80, 300), (0, -120, 590), arm_normal(slope, 0.0), (-130, -90, 370), (0, 1, 0))
    force = (0.0, -4000.0, 4000.0)
    held = balance(sloping, force, moment_of(((force, (0.0, 0.0, 0.0)),)))
    assert held.guiding[2] == pytest.approx(held.guiding[1] * tan(slope))
    # About the lower pivot: 290 Y + 40 Y tan 10 deg (inboard of it) = 80 x 4000 - 300 x 4000; tan 10 deg 0.1763270
    assert held.guiding[1] == pytest.approx(-880_000 / 297.05308, rel=1e-6)


def test_an_inboard_brake_pulls_at_the_spindle_and_an_outboard_one_at_the_ground() -> None:
    force = (-1000.0, 0.0, 0.0)
    outboard = balance(LEVEL, force, moment_of(((force, (0.0, 0.0, 0.0)),)))
    inboard = balance(LEVEL, force, moment_of(((force, (0.0, 0.0, 400.0)),)))
    # About the lower pivot's cross-axis: 300 below it at the ground, 100 above it at the wheel centre; 290 between pivots.
    # The tie rod runs straight across, so it has no say in this.
    assert outboard.guiding[0] == pytest.approx(-300_000 / 290)
    assert inboard.guiding[0] == pytest.approx(100_000 / 290)


@pytest.mark.parametrize(
    "change, words",
    [
        ({"guiding": (0, -80, 300.5)}, "two pivots are in one place"),
        ({"guiding_normal": (0, 290, 40)}, "lies along the steering axis"),
        ({"tie_rod": (0, -90, 370)}, "points straight at the steering axis"),
        ({"tie_rod_line": (0, -40, 290)}, "points straight at the steering axis"),
    ],
)
def test_joints_that_cannot_hold_the_upright_are_refused_in_words(change: dict[str, Vector], words: str) -> None:
    fields = ("carrying", "guiding", "guiding_normal", "tie_rod", "tie_rod_line")
    broken = Linkage(**{field: getattr(LEVEL, field) for field in fields} | change)
    with pytest.raises(OutsideRange, match=words):
        balance(broken, (0.0, 0.0, 1000.0), (0.0, 0.0, 0.0))


@pytest.mark.parametrize(("apart", "refused"), [(0.99, True), (1.0, False), (1.01, False)])
def test_pivots_less_than_a_millimetre_apart_are_one_place(apart: float, refused: bool) -> None:
    linkage = Linkage((0, 0, 300), (0, 0, 300 + apart), (0, 0, 1), (-130, -10, 300), (0, 1, 0))
    if refused:
        with pytest.raises(OutsideRange, match="in one place"):
            balance(linkage, (0.0, 0.0, 1000.0), (0.0, 0.0, 0.0))
    else:
        assert balance(linkage, (0.0, 0.0, 1000.0), (0.0, 0.0, 0.0)).carrying == pytest.approx((0.0, 0.0, -1000.0))


@pytest.mark.parametrize("ahead, refused", [(-0.9, True), (-1.1, False)])
def test_a_tie_rod_a_millimetre_off_the_axis_is_the_edge(ahead: float, refused: bool) -> None:
    near = Linkage((0, -100, 300), (0, -100, 500), (0, 0, 1), (ahead, -100, 400), (0, 1, 0))
    if refused:
        with pytest.raises(OutsideRange):
            balance(near, (0.0, 0.0, 1000.0), (0.0, 0.0, 0.0))
    else:
        assert balance(near, (0.0, 0.0, 1000.0), (0.0, 0.0, 0.0)).carrying[2] == pytest.approx(-1000.0)


def test_signs_of_the_angles() -> None:
    # Outer end higher: going outboard in the arm's plane goes up. Front of the hinge line higher: going forward goes up.
    assert np.dot(arm_normal(radians(10), 0.0), (0.0, 1.0, tan(radians(10)))) == pytest.approx(0.0)
    assert np.dot(arm_normal(0.0, radians(5)), (1.0, 0.0, tan(radians(5)))) == pytest.approx(0.0)
    assert rod_line(radians(10), 0.0)[2] > 0 and rod_line(0.0, radians(10))[0] > 0


@pytest.mark.parametrize(
    ("front", "rear", "outer"),
    [
        ((200.0, -300.0, 500.0), (-200.0, -300.0, 500.0), (0.0, -300.0, 500.0)),  # all in a line
        ((200.0, -300.0, 500.0), (200.0, -300.0, 500.0), (0.0, 0.0, 500.0)),  # both inner pivots in one place
        ((200.0, -300.0, 500.0), (-200.0, -300.0, 500.0), (0.0, -300.0, 300.0)),  # in a plane that stands upright
        ((0.0, -300.0, 500.0), (0.0, -300.0, 300.0), (0.0, 0.0, 400.0)),
    ],
)
def test_three_pivots_in_a_line_or_upright_plane_guide_nothing(front: Vector, rear: Vector, outer: Vector) -> None:
    with pytest.raises(OutsideRange, match="three pivots do not lie in a plane"):
        plane_slopes(front, rear, outer)


@pytest.mark.parametrize(("across", "along"), [(5.0, 0.0), (0.0, 5.0), (-12.0, 7.0), (60.0, -3.0)])
def test_slopes_of_a_plane_come_back(across: float, along: float) -> None:
    """z rises by tan across for a mm outboard and by tan along for a mm ahead."""

    def at(x: float, y: float) -> Vector:
        return (x, y, 500.0 + x * tan(radians(along)) + y * tan(radians(across)))

    found = plane_slopes(at(210.0, -300.0), at(-180.0, -330.0), at(20.0, 5.0))
    assert found == pytest.approx((radians(across), radians(along)), abs=1e-12)
