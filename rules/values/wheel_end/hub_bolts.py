"""Where the hub's mounting bolts stand about the wheel's axis: the one place that says so, for plate, strength and drawings."""

from itertools import combinations, pairwise
from math import atan2, cos, dist, hypot, sin, tau

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, OutsideRange, Waits
from rules.measure.clock_places import ClockPlaces
from rules.measure.outline import Point, circle_places, hub_bolt_places
from rules.measure.records import dataclass
from rules.measure.units import Mm, Rad
from rules.sheet.hub import HeldTogetherBy, turns_on_a_snout
from rules.tables import sources
from rules.values.optional_step import whole

ON_A_RECTANGLE = 4
"""Bolts that two spacings place. Any other number of them stands on a circle, or each is placed by itself."""


def needs_standing_body(held_together_by: HeldTogetherBy | None) -> None:
    """Nothing, or DoesNotApply: of a hub on a fixed snout the bolts hold the snout's flange, and no ears of its body."""
    if turns_on_a_snout(held_together_by):
        raise DoesNotApply("the hub's body turns before the snout's flange, which the bolts hold")


@dataclass(frozen=True, slots=True)
class BoltPlaces:
    """Where the hub's mounting bolts stand about the wheel's axis, (ahead, up) in mm.

    in_a_circle: the hub's flange is round, out to the farthest of them; else it is a rectangle.
    """

    places: tuple[Point, ...]
    in_a_circle: bool = False

    @property
    def nearest(self) -> float:
        """Centre to centre of the two nearest each other, mm."""
        return min(dist(one, other) for one, other in combinations(self.places, 2))

    @property
    def from_spindle(self) -> float:
        """From the wheel centre to the nearest of them, mm."""
        return min(hypot(*place) for place in self.places)

    @property
    def farthest(self) -> float:
        """From the wheel centre to the farthest of them, mm."""
        return max(hypot(*place) for place in self.places)

    def across(self, axis: int) -> float:
        """From the first to the last of them fore and aft (0) or up and down (1), mm."""
        along = [place[axis] for place in self.places]
        return max(along) - min(along)

    @property
    def widest_gap(self) -> float:
        """Between two that follow each other round the wheel's axis, rad, at its widest. From pi up all stand on one side.

        >>> round(BoltPlaces(((0.0, 50.0), (0.0, -50.0), (50.0, 0.0))).widest_gap, 4)
        3.1416
        """
        turns = sorted(atan2(*place) for place in self.places)
        return max(after - before for before, after in pairwise([*turns, turns[0] + tau]))

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        return f"{len(self.places)} bolts about the wheel's axis"


@value(
    "bolts",
    formula="each where it is entered, else evenly on the circle entered, else four at the corners of a rectangle",
    source=sources.GEOMETRY,
)
def hub_bolts_stand(
    mount_bolts: int,
    mount_width: Mm | None,
    mount_height: Mm | None,
    mount_circle: Mm | None,
    mount_turned: Rad | None,
    mount_places: ClockPlaces | None,
) -> BoltPlaces:
    """Where the hub's mounting bolts stand.

    >>> round(hub_bolts_stand(3, None, None, 100.0, None, None).nearest, 2)  # 50 root 3
    86.6
    """
    if mount_places is not None:
        return _one_by_one(mount_places, mount_bolts, mount_circle)
    if mount_circle is not None:
        return BoltPlaces(circle_places(mount_bolts, mount_circle, mount_turned or 0.0), in_a_circle=True)
    if mount_bolts != ON_A_RECTANGLE:
        raise Waits("hub.mount_circle")
    return BoltPlaces(hub_bolt_places(*whole({"hub.mount_width": mount_width, "hub.mount_height": mount_height})))


def _one_by_one(entered: ClockPlaces, count: int, circle: float | None) -> BoltPlaces:
    """Bolts where each is said to stand; those without a distance on the circle."""
    if len(entered.each) != count:
        raise OutsideRange(
            f"{len(entered.each)} places are entered for {count} mounting bolts",
            change="Put right mounting bolts one by one, or mounting bolts.",
        )
    if circle is None and any(place.radius is None for place in entered.each):
        raise Waits("hub.mount_circle")
    placed = []
    for place in entered.each:
        radius = (circle or 0.0) / 2 if place.radius is None else place.radius
        placed.append((radius * sin(place.turn), radius * cos(place.turn)))
    return BoltPlaces(tuple(placed), in_a_circle=True)


@value("bolts", formula="2 x from the wheel centre to the nearest hub bolt", source=sources.GEOMETRY)
def hub_bolts_nearest_circle(hub_bolts_stand: BoltPlaces) -> Mm:
    """Diameter of the circle about the wheel's axis through the nearest hub bolt, mm.

    >>> hub_bolts_nearest_circle(BoltPlaces(((30.0, 40.0), (-30.0, 40.0))))
    100.0
    """
    return 2 * hub_bolts_stand.from_spindle
