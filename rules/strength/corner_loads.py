"""What one front corner carries: the loads of every case, as the strength values hand them on.

Axes as everywhere in `rules`, left wheel: x forward, y outboard, z up; origin on the ground under the tyre centre plane,
below the wheel centre. Points in mm, forces in N, moments in N mm.
"""

from dataclasses import dataclass

from rules.measure.vectors import Vector


@dataclass(frozen=True, slots=True)
class Places:
    """Where the forces act, mm."""

    contact: Vector
    wheel_centre: Vector
    bearing: Vector
    """Middle of the bearing, on the wheel's axis."""
    hub_face: Vector
    mount_face: Vector
    """Where the wheel's axis meets the hub plate's outboard face."""
    upper_pivot: Vector
    lower_pivot: Vector
    tie_rod: Vector

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return "wheel centre, bearing, hub, mounting face of the hub, both outer pivots, tie-rod end"


@dataclass(frozen=True, slots=True)
class CaseLoads:
    """One load case. Every force and moment is the one that acts on the upright.

    contact: ground on the tyre, carried into the upright through the hub. hub_force, hub_moment: what the hub hands to
    the upright, at the middle of the bearing; a brake torque that hub and caliper hand to it is left out of the moment,
    because it is inside the upright. brake_torque: about the wheel's axis, N mm, nought when not braking; the caliper bracket
    carries it. hinge: the inner pivots of the arm without the spring, mm, as they then lie seen from the upright. In rock
    and steering stop, part of contact acts at wheel-centre height and not at the ground: never work out a part's moments from
    contact, use hub_force and hub_moment.
    """

    case: str
    contact: Vector
    hub_force: Vector
    hub_moment: Vector
    upper_pivot: Vector
    lower_pivot: Vector
    tie_rod: Vector
    brake_torque: float = 0.0
    hinge: tuple[Vector, Vector] | None = None

    def at(self, place: str) -> Vector:
        """The force at `upper_pivot`, `lower_pivot` or `tie_rod`, N."""
        return {"upper_pivot": self.upper_pivot, "lower_pivot": self.lower_pivot, "tie_rod": self.tie_rod}[place]


@dataclass(frozen=True, slots=True)
class CornerLoads:
    """Every case of one corner, and where its forces act."""

    places: Places
    cases: tuple[CaseLoads, ...]

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"{len(self.cases)} load cases: {', '.join(case.case for case in self.cases)}"
