"""Bolts: how a group shares force and moment, how one stands pull and shear at once, and its torque. N, mm, MPa, N mm."""

from collections.abc import Sequence
from math import hypot, inf, pi, sqrt

from rules.graph.results import OutsideRange
from rules.measure.closeness import CLOSENESS
from rules.measure.records import dataclass
from rules.measure.vectors import cross, minus

SHEAR_OF_YIELD = 1 / sqrt(3)
"""Yield in shear over yield in pull, by distortion energy (1 / root 3; Shigley 9th ed. eq. 5-21, from memory)."""

PRELOAD_OF_PROOF = 0.75
"""Preload over proof load of a joint that comes apart again (Shigley 9th ed. eq. 8-31, from memory)."""


def group_pulls(places: Sequence[tuple[float, float]], pull: float, moment_x: float, moment_z: float) -> list[float]:
    """Pull on each bolt of a group in the plane (x, z), N, plus is pull. Elastic bolt group about its own centroid.

    pull: square to the plane, N. moment_x, moment_z: about the group's centroid, N mm, in the sense that plus moment_x
    pulls the bolts at plus z and plus moment_z those at plus x. Source: elastic method, AISC Manual part 7 (from memory):
    it takes the joint as tight, so that bolts are counted as pushing too, which gives more pull than tilting on an edge.
    They may lie anywhere; no published example of an uneven group was found to check against. Raises OutsideRange where they
    lie on one line and cannot hold the moment.

    >>> group_pulls([(-40.0, 50.0), (40.0, 50.0), (40.0, -50.0), (-40.0, -50.0)], 400.0, 100_000.0, 0.0)
    [600.0, 600.0, -400.0, -400.0]
    """
    middle_x, middle_z = _middle(places)
    off = [(x - middle_x, z - middle_z) for x, z in places]
    square_x, square_z, product = sum(x * x for x, _ in off), sum(z * z for _, z in off), sum(x * z for x, z in off)
    spread = square_x * square_z - product**2
    if abs(product) <= CLOSENESS * (square_x + square_z):  # even about x or z: each moment by itself
        if (moment_x and not square_z) or (moment_z and not square_x):
            raise OutsideRange("the bolts lie on one line and cannot hold this moment")
        by_x, by_z = moment_z / square_x if moment_z else 0.0, moment_x / square_z if moment_x else 0.0
    elif spread <= CLOSENESS * square_x * square_z:
        raise OutsideRange("the bolts lie on one line and cannot hold this moment")
    else:
        by_x = (moment_z * square_z - moment_x * product) / spread
        by_z = (moment_x * square_x - moment_z * product) / spread
    return [pull / len(places) + by_x * x + by_z * z for x, z in off]


def unit_pulls(places: Sequence[tuple[float, float]]) -> tuple[list[float], list[float]]:
    """Pull on each bolt, N, under 1 N mm about x and under 1 N mm about z, in the senses of `group_pulls`; pulls add.

    >>> unit_pulls([(-40.0, 50.0), (40.0, 50.0), (40.0, -50.0), (-40.0, -50.0)])[0]
    [0.005, 0.005, -0.005, -0.005]
    """
    return group_pulls(places, 0.0, 1.0, 0.0), group_pulls(places, 0.0, 0.0, 1.0)


def group_shears(places: Sequence[tuple[float, float]], force_x: float, force_z: float, twist: float) -> list[float]:
    """Shear on each bolt, N, plus: the equal share of the force and the share of the twist by distance.

    twist: about the group's centroid, N mm. Source: elastic method, as group_pulls.

    >>> group_shears([(-50.0, 0.0), (50.0, 0.0)], 0.0, 200.0, 0.0)
    [100.0, 100.0]
    """
    share_x, share_z = force_x / len(places), force_z / len(places)
    return [hypot(share_x + x, share_z + z) for x, z in group_turns(places, twist)]


def group_turns(places: Sequence[tuple[float, float]], twist: float) -> list[tuple[float, float]]:
    """Shear along x and z on each bolt under a twist alone, N, by its distance from the middle. As group_shears.

    >>> group_turns([(-50.0, 0.0), (50.0, 0.0)], 10_000.0)
    [(0.0, 100.0), (0.0, -100.0)]
    """
    middle_x, middle_z = _middle(places)
    square = sum((x - middle_x) ** 2 + (z - middle_z) ** 2 for x, z in places)
    if twist and not square:
        raise OutsideRange("one bolt cannot hold a twist")
    turn = twist / square if twist else 0.0
    return [(turn * (z - middle_z), -turn * (x - middle_x)) for x, z in places]


def eccentricity(places: Sequence[tuple[float, float]]) -> float:
    """How far a group's centroid lies from the origin of its places, mm.

    >>> eccentricity([(3.0, 24.0), (3.0, -16.0)])
    5.0
    """
    return hypot(*_middle(places))


def moments_about_middle(
    places: Sequence[tuple[float, float]], force: tuple[float, float, float], moment: tuple[float, float, float]
) -> tuple[float, float, float]:
    """The moment about a group's own centroid, N mm, of a force and a moment given about the origin of its places.

    Bolts that stand unevenly have their centroid off the axis, so that a force through the axis tilts and turns them.
    x, z: in the plane, y square to it, right-handed. 1000 N outboard through the axis of a group whose middle is 10 above and
    5 ahead of it: 10 000 N mm about x and -5 000 about z.

    >>> moments_about_middle([(5.0, 30.0), (5.0, -10.0)], (0.0, 1000.0, 0.0), (0.0, 0.0, 0.0))
    (10000.0, 0.0, -5000.0)
    """
    middle_x, middle_z = _middle(places)
    return minus(moment, cross((middle_x, 0.0, middle_z), force))


def _middle(places: Sequence[tuple[float, float]]) -> tuple[float, float]:
    return sum(x for x, _ in places) / len(places), sum(z for _, z in places) / len(places)


def pull_and_shear_stress(pull: float, shear: float, area: float, shear_area: float) -> float:
    """Von Mises stress of a bolt under pull and shear at once, MPa. A push counts as no pull.

    area: stress area; shear_area: what is in the plane of the joint, mm2. Preload is not in it. Source: distortion energy.

    >>> round(pull_and_shear_stress(8000.0, 6000.0, 80.0, 80.0), 2)
    163.94
    """
    return sqrt((max(pull, 0.0) / area) ** 2 + 3 * (shear / shear_area) ** 2)


def round_area(diameter: float) -> float:
    """Area of a circle, mm2.

    >>> round(round_area(20.0), 2)
    314.16
    """
    return pi * diameter**2 / 4


WRENCH = 0.75
"""Least pull that a torque wrench leaves of what its torque should: three standard deviations of 8.4 % below the mean of ten
oiled bolts (Shigley 9th ed. Table 8-14)."""
FACES_GRIP = 0.15
"""Friction of two clean machined steel faces, the low end: EN 1993-1-8 Table 3.7 has 0.20 for its worst class, from memory, and
paint is slippier."""


@dataclass(frozen=True, slots=True)
class Clamped:
    """One load case of a clamped group: its name, pull and shear of every bolt, N; and the pull on the whole group, N."""

    case: str
    bolts: tuple[tuple[float, float], ...]
    pull: float


@dataclass(frozen=True, slots=True)
class ClampedCases:
    """Every load case of one group."""

    cases: tuple[Clamped, ...]

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        return f"pull and shear of every bolt in {len(self.cases)} cases"


def least_preload(torque: float, torque_factor: float, diameter: float) -> float:
    """Least pull, N, in a bolt tightened to a torque, N mm: 0.75 of torque / (K d). Source: Shigley 9th ed. eq. 8-27; WRENCH.

    >>> round(least_preload(100_000.0, 0.20, 12.0))
    31250
    """
    return WRENCH * torque / (torque_factor * diameter)


def clamp_limits(preload: float, loads: Clamped) -> dict[str, float]:
    """Times the load at which a clamped joint opens at its worst bolt, and at which its faces slip.

    preload: pull in each bolt, N, above nought. It opens where a bolt's share of the load is all of its preload, which is
    careful: faces spring back, and take part of it (Shigley 9th ed. eq. 8-30). It slips where what the worst bolt has to hold
    sideways is all the friction under it; a pull on the group takes from that, a tilt only moves it from bolt to bolt. A pilot
    that holds the joint sideways is not in it. Endless where nothing loads it so.

    Preload 30 kN each, four bolts, 6 kN pull on the worst, 4 kN on the group, 1 kN sideways each: 5, and 4500 / (1000 + 150):

    >>> limits = clamp_limits(30_000.0, Clamped("rock", ((6000.0, 1000.0), (-4000.0, 1000.0)) * 2, 4000.0))
    >>> {limit: round(factor, 3) for limit, factor in limits.items()}
    {'the joint opens': 5.0, 'the faces slip': 3.913}
    """
    pull = max(pull for pull, _ in loads.bolts)
    sideways = max(shear for _, shear in loads.bolts) + FACES_GRIP * max(loads.pull, 0.0) / len(loads.bolts)
    return {
        "the joint opens": preload / pull if pull > 0 else inf,
        "the faces slip": FACES_GRIP * preload / sideways if sideways else inf,
    }


def tightening_torque(torque_factor: float, diameter: float, preload: float) -> float:
    """Torque that gives a preload, N mm: K d F. Source: Shigley 9th ed. eq. 8-27. Scatter is about 10 % at one K.

    >>> round(tightening_torque(0.20, 0.75, 25_000.0))
    3750
    """
    return torque_factor * diameter * preload
