"""Where tyre and rim come nearest to the links while the front end moves.

The solids are those of rules/values/steering/rub.py.
"""

from collections.abc import Iterator
from math import inf
from typing import NamedTuple

from rules.judging.reader import reads
from rules.measure.units import Mm
from rules.measure.vectors import Vector, minus, plus, times
from rules.motion.points import Hinge, Pose
from rules.motion.solids import Ring, inner_ends, nearest

_PARTS = 24
"""Places along a tube among which the nearest is marked: finer than a picture on a screen shows."""


class NearTouch(NamedTuple):
    """Where two parts are nearest: which they are in words, mm between them, minus where they overlap, and the point."""

    between: str
    gap: float
    at: Vector


class Bodies(NamedTuple):
    """What may touch: rings round the wheel's axis, diameters of tubes and radii of housings, mm; None where not known."""

    tyre: Ring | None
    rim: Ring | None
    lower_tube: float | None
    upper_tube: float | None
    tie_rod: float | None
    lower_radius: float | None
    upper_radius: float | None


@reads
def bodies(
    tyre_solid: Ring | None,
    rim_solid: Ring | None,
    lower_arm_tube: Mm | None,
    upper_arm_tube: Mm | None,
    tie_rod_diameter: Mm | None,
    lower_radius: Mm | None,
    upper_radius: Mm | None,
) -> Bodies:
    """The bodies as the values and fields that are known give them."""
    return Bodies(tyre_solid, rim_solid, lower_arm_tube, upper_arm_tube, tie_rod_diameter, lower_radius, upper_radius)


def near_touch(known: Bodies, arms: tuple[Hinge, Hinge] | None, pose: Pose) -> NearTouch | None:
    """The smallest gap of one corner in one position; None where no two bodies are known."""
    least = min(_housing_gaps(known, pose), key=lambda touch: touch.gap, default=None)
    nearest_line = None
    for body, ring in (("tyre", known.tyre), ("rim", known.rim)):
        if ring is None:
            continue
        for name, tube, inner, outer in _tubes(known, arms, pose):
            so_far = inf if least is None else least.gap + tube / 2
            distance = nearest(ring, pose.wheel_centre, pose.spin, inner, outer, so_far)
            if distance < so_far:  # what comes no nearer gives back so_far
                least, nearest_line = NearTouch(f"{body} to {name}", distance - tube / 2, outer), (ring, inner, outer)
    if least is None or nearest_line is None:
        return least
    return least._replace(at=_nearest_place(pose, *nearest_line))


def _tubes(known: Bodies, arms: tuple[Hinge, Hinge] | None, pose: Pose) -> Iterator[tuple[str, float, Vector, Vector]]:
    """Each tube's name, diameter, and ends."""
    if arms is not None:
        named = (("lower arm", known.lower_tube, pose.lower), ("upper arm", known.upper_tube, pose.upper))
        for hinge, (name, tube, outer) in zip(arms, named, strict=True):
            if tube is not None:
                yield from ((name, tube, inner, outer) for inner in inner_ends(hinge))
    if known.tie_rod is not None and pose.inner_end is not None and pose.tie_rod_end is not None:
        yield "tie rod", known.tie_rod, pose.inner_end, pose.tie_rod_end


def _housing_gaps(known: Bodies, pose: Pose) -> Iterator[NearTouch]:
    """They turn with the wheel, so these stay the same wherever it goes."""
    if known.rim is not None:
        for name, radius, pivot in (
            ("lower joint", known.lower_radius, pose.lower),
            ("upper joint", known.upper_radius, pose.upper),
        ):
            if radius is not None:
                gap = known.rim.from_point(pose.wheel_centre, pose.spin, pivot) - radius
                yield NearTouch(f"rim to {name}", gap, pivot)


def _nearest_place(pose: Pose, ring: Ring, inner: Vector, outer: Vector) -> Vector:
    along = minus(outer, inner)
    places = (plus(inner, times(part / _PARTS, along)) for part in range(_PARTS + 1))
    return min(places, key=lambda place: ring.from_point(pose.wheel_centre, pose.spin, place))
