"""What one front corner carries: the loads of every case, as the strength values hand them on.

Axes as everywhere in `rules`, left wheel: x forward, y outboard, z up; origin on the ground under the tyre centre plane,
below the wheel centre. Points in mm, forces in N, moments in N mm.
"""

from rules.measure.records import dataclass
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
    rock_aside: float = 0.0
    """How far beside the tread's middle the push of a rock may lie, mm; nought where it is not known."""

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return "wheel centre, bearing, hub, mounting face of the hub, both outer pivots, tie-rod end"


@dataclass(frozen=True, slots=True)
class SpringArm:
    """The arm the spring acts on, mm: its inner pivots and the shock's two ends."""

    front: Vector
    rear: Vector
    on_arm: Vector
    on_frame: Vector


@dataclass(frozen=True, slots=True)
class CaseLoads:
    """One load case. Every force and moment is the one that acts on the upright.

    contact: ground on the tyre, carried into the upright through the hub. hub_force, hub_moment: what the hub hands to
    the upright, at the middle of the bearing; a brake torque that hub and caliper hand to it is left out of the moment,
    because it is inside the upright. brake_torque: about the wheel's axis, N mm, nought when not braking; the caliper bracket
    carries it. hinge: the inner pivots of the arm without the spring, mm, as they then lie seen from the upright;
    spring_arm: the other arm alike. In rock and steering stop, part of contact acts at wheel-centre height and not at the ground:
    never work out a part's moments from contact, use hub_force and hub_moment.
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
    spring_arm: SpringArm | None = None

    def at(self, place: str) -> Vector:
        """The force at `upper_pivot`, `lower_pivot` or `tie_rod`, N."""
        return {"upper_pivot": self.upper_pivot, "lower_pivot": self.lower_pivot, "tie_rod": self.tie_rod}[place]

    def at_outer(self, lower: bool) -> Vector:
        """The force at the lower or the upper outer pivot, N."""
        return self.lower_pivot if lower else self.upper_pivot


@dataclass(frozen=True, slots=True)
class CornerLoads:
    """Every case of one corner, and where its forces act."""

    places: Places
    cases: tuple[CaseLoads, ...]

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"{len(self.cases)} load cases: {', '.join(case.case for case in self.cases)}"
