"""Where the hub's mounting bolts stand about the wheel's axis: the one place that says so, for plate, strength and drawings."""

from dataclasses import dataclass
from itertools import combinations
from math import dist, hypot

from rules.graph.declare import value
from rules.graph.results import Waits
from rules.measure.outline import Point, circle_places, hub_bolt_places
from rules.measure.units import Mm, Rad
from rules.tables import sources
from rules.values.optional_step import whole


@dataclass(frozen=True, slots=True)
class BoltPlaces:
    """Where the hub's mounting bolts stand about the wheel's axis, (ahead, up) in mm."""

    places: tuple[Point, ...]

    @property
    def nearest(self) -> float:
        """Centre to centre of the two nearest each other, mm."""
        return min(dist(one, other) for one, other in combinations(self.places, 2))

    @property
    def from_spindle(self) -> float:
        """From the wheel centre to the nearest of them, mm."""
        return min(hypot(*place) for place in self.places)

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        return f"{len(self.places)} bolts about the wheel's axis"


@value(
    "bolts", formula="four at the corners of a rectangle, else evenly on the circle entered", source=sources.GEOMETRY
)
def hub_bolts_stand(
    mount_bolts: int,
    mount_width: Mm | None,
    mount_height: Mm | None,
    mount_circle: Mm | None,
    mount_turned: Rad | None,
) -> BoltPlaces:
    """Where the hub's mounting bolts stand.

    >>> round(hub_bolts_stand(3, None, None, 100.0, None).nearest, 2)  # 50 root 3
    86.6
    """
    if mount_circle is not None:
        return BoltPlaces(circle_places(mount_bolts, mount_circle, mount_turned or 0.0))
    if mount_bolts != 4:
        raise Waits("hub.mount_circle")
    return BoltPlaces(hub_bolt_places(*whole({"hub.mount_width": mount_width, "hub.mount_height": mount_height})))
