"""Room between a ring and a point, against hand cases and a general optimiser; where an arm's tubes start."""

from math import sqrt

import numpy
import pytest
from scipy.optimize import nnls

from rules.motion.points import Hinge
from rules.motion.solids import Ring, inner_ends

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


def test_a_point_is_measured_from_the_rings_own_axis() -> None:
    """The wheel leans so that its axis is (0, 0.8, 0.6): a point 50 along it and 100 square to it is 80 inside the barrel."""
    point = (100.0, 50.0 * 0.8, 400.0 + 50.0 * 0.6)
    assert RIM.from_point((0.0, 0.0, 400.0), (0.0, 0.8, 0.6), point) == pytest.approx(80.0, abs=1e-9)


def test_an_arm_has_a_tube_to_each_inner_pivot_and_one_straight_across_where_only_the_front_view_is_known() -> None:
    front, rear = (120.0, -400.0, 560.0), (-160.0, -390.0, 565.0)
    assert inner_ends(Hinge(front, rear)) == (front, rear)
    assert inner_ends(Hinge((110.0, -400.0, 330.0), (-90.0, -400.0, 330.0), flat=True)) == ((10.0, -400.0, 330.0),)


@pytest.mark.parametrize(("foot", "more"), [(240.0, ", 240 mm at its inner edge"), (300.0, "")])
def test_a_ring_says_its_sizes_in_a_line(foot: float, more: str) -> None:
    words = Ring(200.0, 440.0, 300.0, foot).words_in("metric")
    assert words == f"ring from 200 mm to 440 mm from the wheel's axis, 300 mm wide{more}"
