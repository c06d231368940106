"""What moves the corner, and the room between its parts."""

from collections.abc import Mapping
from typing import Annotated

from rules.corner.fixed import Overlaps, overlaps
from rules.corner.part import PART, MovesWith, Part
from rules.corner.placing import Ride
from rules.corner.room import Moves, Room, rooms
from rules.graph.declare import Every, Waiting, value
from rules.measure.units import Mm
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import CannotReach, Hinge, UprightPoints
from rules.motion.sweep import Placed, Sweep, spread
from rules.sheet.pivots import SpringOn
from rules.tables import sources
from rules.values.corner.linkage_parts import inner_end

LOCKS = 9
"""Positions from full lock to full lock at ride height, where the arms are not known."""
EXACT = sources.GEOMETRY.saying("exact gaps of plain solids; rules/solids")


def locks_at_ride(front: FrontEnd) -> Sweep:
    """Every lock at ride height that the links reach."""
    found = []
    for lock in spread(-1.0, 1.0, LOCKS):
        try:
            found.append(Placed(0.0, lock, front.at(0.0, lock)))
        except CannotReach:
            continue
    return Sweep(tuple(found))


@value("corner", formula="outer pivots, arms and tie rod at ride height, and how they move", source=sources.GEOMETRY)
def corner_ride(
    upright_points: UprightPoints,
    lower_hinge: Hinge | None,
    upper_hinge: Hinge | None,
    steered_upright: UprightPoints | None,
    steering_linkage: SteeringLinkage | None,
    moving_front: FrontEnd | None,
    hung_front: FrontEnd | None,
    steered_front: FrontEnd | None,
    spring_on: SpringOn | None,
) -> Ride:
    """Where the front end is at ride height, and what it moves as.

    >>> corner_ride(UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0)), *[None] * 8).text
    'standing still'
    """
    tie_rod = None
    if steering_linkage and steered_upright and steered_upright.tie_rod_end:
        outer = steered_upright.tie_rod_end
        tie_rod = (inner_end(steering_linkage, outer), outer)
    shock_on: MovesWith = "upper arm" if spring_on == "upper arm" else "lower arm"
    front = moving_front or hung_front or steered_front
    return Ride(upright_points, lower_hinge, upper_hinge, tie_rod, shock_on, front)


@value(
    "corner",
    formula="every travel at every lock where arms and steering are known, else every travel, else every lock, else none",
    source=sources.GEOMETRY.saying(
        "where a rack or relay rod holds the inner ends, one wheel travelling alone needs the same room as both together"
    ),
)
def corner_moves(
    corner_ride: Ride,
    envelope: Sweep | None,
    travel_sweep: Sweep | None,
    steered_front: FrontEnd | None,
    hung_front: FrontEnd | None,
    bump_travel: Mm | None,
    droop_travel: Mm | None,
) -> Moves:
    """Every position of the corner known so far, and where the front end is at ride height; and the travels arms wait for.

    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0))
    >>> corner_moves(Ride(upright), *[None] * 6).text
    'standing still'
    """
    sweep = envelope or travel_sweep or (locks_at_ride(steered_front) if steered_front else Sweep(()))
    travels = {"arms.bump_travel": bump_travel, "arms.droop_travel": droop_travel}
    lacks = tuple(name for name, travel in travels.items() if travel is None) if hung_front else ()
    return Moves(corner_ride, sweep, lacks)


@value(
    "corner",
    formula="smallest gap of every two parts of different motion groups, over a full turn of the wheel",
    source=EXACT,
    heavy=True,
)
def corner_room(
    rim_part: Part,
    rotor_ring_part: Part,
    hub_body_part: Part,
    caliper_part: Part,
    every_part: Annotated[Mapping[str, Part], Every(PART)],
    waiting_parts: Annotated[tuple[str, ...], Waiting(PART)],
    corner_moves: Moves,
) -> Room:
    """Every pair of parts too near each other, among all parts known so far; once rim, rotor, hub and caliper are.

    Arms that wait for their travel were not moved, and nothing is good of a corner that moves and was not.

    A ball that turns with the wheel, 1 mm from one that does not:

    >>> from rules.solids.shapes import Ball
    >>> one = Part("nut", "wheel", (Ball((0.0, 0.0, 0.0), 5.0),))
    >>> other = Part("bolt", "upright", (Ball((11.0, 0.0, 0.0), 5.0),))
    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0))
    >>> corner_room(one, one, other, other, {"one": one, "other": other}, (), Moves(Ride(upright), Sweep(()))).text
    '1 pairs of parts, 1 too close'
    """
    found = rooms(every_part, corner_moves)
    near = sorted((pair for pair in found if pair.verdict != "good"), key=lambda pair: pair.gap or 0.0)
    return Room(tuple(near), len(found), (*waiting_parts, *corner_moves.lacks))


@value(
    "corner",
    formula="every two parts of upright or wheel that are not made to touch, and stand in one another",
    source=EXACT,
    heavy=True,
)
def fixed_overlaps(every_part: Annotated[Mapping[str, Part], Every(PART)], upright_points: UprightPoints) -> Overlaps:
    """Fixed parts in one another, deepest first.

    Two bolts of 10 mm, 6 mm apart:

    >>> from rules.solids.shapes import Cylinder
    >>> one, other = (Part(f"bolt {x}", "upright", (Cylinder((x, 0.0, 0.0), (x, 50.0, 0.0), 5.0),)) for x in (0.0, 6.0))
    >>> upright = UprightPoints((0.0, -80.0, 300.0), (0.0, -120.0, 560.0), (0.0, 0.0, 400.0))
    >>> [round(pair.gap) for pair in fixed_overlaps({"one": one, "other": other}, upright).pairs]
    [-4]
    """
    return overlaps(every_part, upright_points)
