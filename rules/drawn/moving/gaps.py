"""Where tyre and rim come nearest to the links while the front end moves: the corner's own solids, in one position."""

from collections.abc import Mapping
from math import inf

from rules.corner.part import Part
from rules.corner.placing import Ride, placed
from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector
from rules.motion.points import Pose
from rules.solids.gap import nearer

LINKS = ("upper arm", "lower arm", "tie rod")
WATCHED = {"tyre": LINKS, "rim": ("upper joint housing", "lower joint housing", *LINKS)}
"""The pairs of rules/values/steering/rub.py, by the parts' names."""


class NearTouch(NamedTuple):
    """Where two parts are nearest: which they are in words, mm between them, minus where they overlap, and the point."""

    between: str
    gap: float
    at: Vector


def near_touch(parts: Mapping[str, Part], ride: Ride, pose: Pose) -> NearTouch | None:
    """The smallest gap of one corner in one position; None where no two parts are known."""
    motions = ride.motions(pose)
    least = None
    for turning, others in WATCHED.items():
        if turning not in parts:
            continue
        standing = placed(parts[turning], motions)
        for other in (parts[name] for name in others if name in parts):
            found = nearer(standing, placed(other, motions), least.gap if least else inf)
            if found:
                least = NearTouch(f"{turning} to {other.name}", found.distance, found.on_b)
    return least
