"""Room between a ring and a line, against hand cases, a general optimiser and the plain sampling of every place."""

from math import sqrt

import numpy
import pytest
from scipy.optimize import nnls

from rules.motion.points import Hinge, Pose
from rules.motion.solids import CLOSE, Ring, inner_ends, least_gap, nearest
from rules.motion.sweep import Placed, Sweep

TYRE = Ring(208.0, 444.5, 317.5, 240.0)
RIM = Ring(180.0, 208.0, 240.0, 240.0)
ACROSS = (0.0, 1.0, 0.0)
ORIGIN = (0.0, 0.0, 0.0)

# place along the axis, radius, signed distance: worked out by hand from TYRE, whose flare is (317.5 - 240) / 2 = 38.75
BY_HAND = [
    (0.0, 108.0, 100.0),  # under the inner face
    (0.0, 0.0, 208.0),  # on the axis
    (0.0, 454.5, 10.0),  # over the tread
    (168.75, 300.0, 10.0),  # beside the sidewall: half the width is 158.75
    (-168.75, 300.0, 10.0),  # and on the other side
    (161.75, 448.5, 5.0),  # off the shoulder, 3 and 4 away
    (123.0, 204.0, 5.0),  # off the edge of the foot, 3 beyond 120 and 4 under 208
    (150.0, 208.0, 30 / sqrt(2)),  # square to the flare: 30 out beside its start, which leans 45 deg
    (158.75, 208.0, 38.75 / sqrt(2)),  # the corner the flare cuts off
    (120.0, 208.0, 0.0),  # where the flare starts
    (158.75, 246.75, 0.0),  # where it ends
    (0.0, 218.0, -10.0),  # 10 inside the inner face
    (0.0, 434.5, -10.0),  # 10 inside the tread
    (148.75, 340.0, -10.0),  # 10 inside the sidewall
    (130.0, 232.0, -14 / sqrt(2)),  # 10 out and 24 up from the start of the flare: 14 within it
    (110.0, 213.0, -5.0),  # 10 within the foot and 5 up: the inner face is nearest
]  # fmt: skip


@pytest.mark.parametrize(("along", "radius", "by_hand"), BY_HAND)
def test_a_place_is_as_far_from_the_ring_as_by_hand(along: float, radius: float, by_hand: float) -> None:
    assert TYRE.distance(along, radius) == pytest.approx(by_hand, abs=1e-9)


@pytest.mark.parametrize(
    ("along", "radius", "by_hand"),
    [(0.0, 170.0, 10.0), (130.0, 190.0, 10.0), (123.0, 176.0, 5.0), (123.0, 212.0, 5.0), (118.0, 194.0, -2.0)],
)
def test_a_ring_without_a_flare_is_a_plain_rectangle(along: float, radius: float, by_hand: float) -> None:
    assert RIM.distance(along, radius) == pytest.approx(by_hand, abs=1e-9)


def _corners(ring: Ring) -> numpy.ndarray:
    """The six corners of a ring's section in (along, radius), in order."""
    flare = (ring.width - ring.foot) / 2
    right = [(ring.foot / 2, ring.inner), (ring.width / 2, ring.inner + flare), (ring.width / 2, ring.outer)]
    return numpy.array(right + [(-along, radius) for along, radius in reversed(right)])


def _section(ring: Ring) -> numpy.ndarray:
    """The outline of a ring's section, a place every 0.02 mm or closer."""
    corners = _corners(ring)
    parts = []
    for here, there in zip(corners, numpy.roll(corners, -1, axis=0), strict=True):
        steps = numpy.linspace(0, 1, max(2, int(numpy.linalg.norm(there - here) / 0.02)))[:, None]
        parts.append(here + steps * (there - here))
    return numpy.vstack(parts)


@pytest.mark.parametrize("seed", range(40))
def test_a_place_outside_is_as_far_as_a_general_optimiser_finds(seed: int) -> None:
    """The section is every mix of its corners in shares of nought or more that add up to one: scipy's nnls finds the
    nearest mix, the sum held by a heavy weight."""
    place = numpy.random.default_rng(seed).uniform((-300.0, 0.0), (300.0, 600.0))
    heavy = 1e6
    shares, _ = nnls(numpy.vstack([_corners(TYRE).T, numpy.full(6, heavy)]), numpy.append(place, heavy))
    away = numpy.linalg.norm(shares @ _corners(TYRE) - place)
    assert max(TYRE.distance(*place), 0.0) == pytest.approx(away, abs=1e-4)


@pytest.mark.parametrize("seed", range(40))
def test_a_place_inside_is_as_deep_as_its_outline_is_near(seed: int) -> None:
    along, radius = numpy.random.default_rng(seed).uniform((-118.0, 209.0), (118.0, 444.0))
    away = numpy.hypot(*(_section(TYRE) - (along, radius)).T).min()
    assert TYRE.distance(along, radius) == pytest.approx(-away, abs=1e-3)


def _brute(ring: Ring, centre: numpy.ndarray, axis: numpy.ndarray, start: numpy.ndarray, end: numpy.ndarray) -> float:
    """A line's least signed distance by looking at 4001 places of it, each against the whole outline of the section."""
    places = start + numpy.linspace(0, 1, 4001)[:, None] * (end - start) - centre
    along = places @ axis
    radius = numpy.linalg.norm(places - along[:, None] * axis, axis=1)
    outline = _section(ring)[::10]
    flare = (ring.width - ring.foot) / 2
    half = ring.foot / 2 + numpy.clip(radius - ring.inner, 0, flare)
    inside = (radius > ring.inner) & (radius < ring.outer) & (numpy.abs(along) < half)
    away = numpy.array(
        [numpy.hypot(outline[:, 0] - a, outline[:, 1] - r).min() for a, r in zip(along, radius, strict=True)]
    )
    return float(numpy.where(inside, -away, away).min())


@pytest.mark.parametrize("ring", [TYRE, RIM], ids=["tyre", "rim"])
@pytest.mark.parametrize("seed", range(8))
def test_a_line_is_as_near_as_looking_at_every_place_of_it_finds(ring: Ring, seed: int) -> None:
    random = numpy.random.default_rng(seed)
    axis = random.normal((0.0, 1.0, 0.0), 0.3)
    axis /= numpy.linalg.norm(axis)
    centre, start, end = random.uniform(-50, 50, 3), random.uniform(-600, 600, 3), random.uniform(-600, 600, 3)
    found = nearest(ring, tuple(centre), tuple(axis), tuple(start), tuple(end))
    brute = _brute(ring, centre, axis, start, end)
    assert found == pytest.approx(brute, abs=0.2)  # 4001 places on up to 2 m, and an outline every 0.2 mm
    assert found <= brute + CLOSE + 1e-9


def test_a_line_past_the_sidewall_of_a_tilted_wheel_is_as_near_as_by_hand() -> None:
    """The wheel turned 90 deg about the vertical: its axis runs fore and aft, its sidewall 158.75 ahead and behind."""
    found = nearest(TYRE, (10.0, 0.0, 400.0), (1.0, 0.0, 0.0), (200.0, -900.0, 400.0), (200.0, 900.0, 400.0))
    assert found == pytest.approx(190.0 - 158.75, abs=CLOSE)


def test_the_nearest_place_may_be_in_the_middle_of_the_line_or_at_an_end() -> None:
    across_the_top = nearest(TYRE, ORIGIN, ACROSS, (-700.0, 0.0, 480.0), (600.0, 0.0, 480.0))
    assert across_the_top == pytest.approx(480.0 - 444.5, abs=CLOSE)
    straight_at_it = nearest(TYRE, ORIGIN, ACROSS, (0.0, 0.0, 900.0), (0.0, 0.0, 460.0))
    assert straight_at_it == pytest.approx(15.5, abs=1e-9)


def test_a_line_through_the_ring_reads_minus_by_how_far_it_is_within() -> None:
    middle = (208.0 + 444.5) / 2
    through = nearest(TYRE, ORIGIN, ACROSS, (0.0, -400.0, middle), (0.0, 0.0, middle))
    assert through == pytest.approx(-(444.5 - 208.0) / 2, abs=CLOSE)
    skimming = nearest(TYRE, ORIGIN, ACROSS, (-300.0, -150.0, 350.0), (300.0, -150.0, 350.0))
    assert skimming == pytest.approx(-8.75, abs=CLOSE)  # half the width is 158.75


def test_a_line_inside_the_barrel_clears_the_rim_all_round() -> None:
    found = nearest(RIM, ORIGIN, ACROSS, (0.0, -80.0, -100.0), (0.0, -600.0, -100.0))
    assert found == pytest.approx(80.0, abs=1e-9)


@pytest.mark.parametrize("seed", range(6))
def test_a_mirrored_or_turned_line_is_as_near(seed: int) -> None:
    start, end = (tuple(point) for point in numpy.random.default_rng(seed).uniform(-500, 500, (2, 3)))
    found = nearest(TYRE, ORIGIN, ACROSS, start, end)
    other_side = nearest(TYRE, ORIGIN, ACROSS, *((x, -y, z) for x, y, z in (start, end)))
    quarter_turn = nearest(TYRE, ORIGIN, ACROSS, *((z, y, -x) for x, y, z in (start, end)))
    backwards = nearest(TYRE, ORIGIN, ACROSS, end, start)
    assert other_side == pytest.approx(found, abs=1e-9)
    assert quarter_turn == pytest.approx(found, abs=1e-9)
    assert backwards == pytest.approx(found, abs=CLOSE)


def test_what_cannot_beat_a_known_distance_leaves_it_as_it_is() -> None:
    line = (-500.0, -200.0, 300.0), (500.0, -200.0, 300.0)
    assert nearest(TYRE, ORIGIN, ACROSS, *line) == pytest.approx(41.25, abs=CLOSE)
    assert nearest(TYRE, ORIGIN, ACROSS, *line, known=20.0) == 20.0
    assert nearest(TYRE, ORIGIN, ACROSS, *line, known=60.0) == pytest.approx(41.25, abs=CLOSE)


def test_a_point_is_measured_from_the_rings_own_axis() -> None:
    """The wheel leans so that its axis is (0, 0.8, 0.6): a point 50 along it and 100 square to it is 80 inside the barrel."""
    point = (100.0, 50.0 * 0.8, 400.0 + 50.0 * 0.6)
    assert RIM.from_point((0.0, 0.0, 400.0), (0.0, 0.8, 0.6), point) == pytest.approx(80.0, abs=1e-9)


def _pose(height: float, spin: tuple[float, float, float] = ACROSS) -> Pose:
    return Pose((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, height), spin, None, None, 0.0, 400.0)


def test_the_least_gap_knows_where_it_was_found() -> None:
    """A line 600 up, straight across: the tread stands 444.5 over the wheel centre, so 55.5 and 5.5 clear."""
    sweep = Sweep(
        (
            Placed(-50.0, 1.0, _pose(50.0)),
            Placed(0.0, 0.0, _pose(100.0)),
            Placed(50.0, -1.0, _pose(150.0)),
            Placed(40.0, 1.0, _pose(140.0)),
        )
    )
    least = least_gap(sweep, TYRE, lambda pose: [((0.0, -500.0, 600.0), (0.0, 500.0, 600.0))])
    assert (round(least, 6), least.travel, least.lock) == (5.5, 50.0, -1.0)


def test_the_nearest_of_several_lines_counts() -> None:
    sweep = Sweep((Placed(0.0, 0.0, _pose(100.0)),))
    lines = [((0.0, -500.0, height), (0.0, 500.0, height)) for height in (600.0, 560.0, 640.0)]
    assert least_gap(sweep, TYRE, lambda pose: lines) == pytest.approx(15.5, abs=CLOSE)


def test_a_gap_that_is_the_same_everywhere_is_found_at_ride_height() -> None:
    """A line that goes with the wheel: what differs between its positions is only how numbers are stored."""
    sweep = Sweep(
        tuple(
            Placed(travel, lock, _pose(400.0 + travel / 3))
            for travel in (-90.0, 0.0, 110.0)
            for lock in (-1.0, 0.0, 1.0)
        )
    )

    def beside(pose: Pose) -> list[tuple[tuple[float, float, float], tuple[float, float, float]]]:
        height = pose.wheel_centre[2]
        return [((0.0, -200.0, height + 300.0), (0.0, -600.0, height + 300.0))]

    least = least_gap(sweep, TYRE, beside)
    assert (round(least, 6), least.travel, least.lock) == (41.25, 0.0, 0.0)


def test_a_sweep_of_one_position_is_judged_there() -> None:
    sweep = Sweep((Placed(0.0, 0.0, _pose(100.0)),))
    least = least_gap(sweep, TYRE, lambda pose: [((0.0, -500.0, 600.0), (0.0, 500.0, 600.0))])
    assert (round(least, 6), least.travel, least.lock) == (55.5, 0.0, 0.0)


def test_an_arm_has_a_tube_to_each_inner_pivot_and_one_straight_across_where_only_the_front_view_is_known() -> None:
    front, rear = (120.0, -400.0, 560.0), (-160.0, -390.0, 565.0)
    assert inner_ends(Hinge(front, rear)) == (front, rear)
    assert inner_ends(Hinge((110.0, -400.0, 330.0), (-90.0, -400.0, 330.0), flat=True)) == ((10.0, -400.0, 330.0),)
