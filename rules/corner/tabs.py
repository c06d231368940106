"""Where a shock passes between an arm's two inner pivots: how long the frame's tabs may be that hold each of them.

Nobody is asked how the frame runs between the pivots. One tube through both is what most have, and tabs leave the middle free.
"""

from rules.corner.kinds import FRAMES, band
from rules.corner.part import Part
from rules.corner.placing import Ride
from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector, dot, minus, plus, size, times, unit
from rules.motion.sweep import Sweep
from rules.solids.shapes import Rod

LEAST_TAB = 40.0
"""mm from a pivot's middle along the line of the two, which half of a bushing and the tab beside it take. Common practice."""
STEP = 1.0
"""mm between the places along that line that are looked at."""


class Tabs(NamedTuple):
    """How far from the front pivot to the rear, and from the rear one to the front, the frame may reach, mm."""

    from_front: float
    from_rear: float


def tabs_beside(one: Part, other: Part, ride: Ride, sweep: Sweep) -> Tabs | None:
    """How far tabs may reach from an arm's inner pivots beside a shock that passes between them, in every position.

    None where the two are no shock and no such frame, or where it leaves too little at either pivot.
    """
    shock, frame = (one, other) if one.name == "shock" else (other, one)
    if shock.name != "shock" or frame.name not in FRAMES or frame.assumed:
        return None
    (line,), (bar,) = frame.shapes, shock.shapes
    assert isinstance(line, Rod) and isinstance(bar, Rod)
    apart = line.radius + bar.radius + band(one, other).limits.good
    ends = {bar.end} | {ride.motions(place.pose)[shock.moves_with].point(bar.end) for place in sweep.placed}
    long, way = size(minus(line.end, line.start)), unit(minus(line.end, line.start))
    near = [
        STEP * step
        for step in range(int(long / STEP) + 1)
        if any(_from(plus(line.start, times(STEP * step, way)), bar.start, end) < apart for end in ends)
    ]
    if not near:
        return None
    tabs = Tabs(near[0] - STEP, long - near[-1] - STEP)
    return tabs if min(tabs) >= LEAST_TAB else None


def _from(point: Vector, start: Vector, end: Vector) -> float:
    """How far a point is from a straight piece, mm."""
    along = minus(end, start)
    share = max(0.0, min(1.0, dot(minus(point, start), along) / dot(along, along)))
    return size(minus(point, plus(start, times(share, along))))
