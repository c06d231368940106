"""What the wheel does through travel and lock as curves, in the units they are shown in."""

from bisect import bisect_right
from collections.abc import Callable
from typing import Literal

from rules.drawn.moving.scene import LOCK_NOTCHES, Moving, TravelAndLock
from rules.judging.reader import Known, reads
from rules.measure.display import published
from rules.measure.outline import Point
from rules.measure.quantity import INCH, Units
from rules.measure.records import NamedTuple
from rules.measure.units import Mm
from rules.motion.place_words import STRAIGHT
from rules.motion.points import CannotReach, Pose
from rules.motion.turning import ideal_outer

_TRAVELS = 24


class Curve(NamedTuple):
    """One curve, and another beside it where there is something to compare with.

    title: what it shows; `{across}`, `{up}` and `{beside}` in it are the numbers at the present place. places: travel,
    mm, or lock that each point was worked out at, rising. line, beside: points, in the units that across and up name.
    """

    title: str
    by: Literal["travel", "lock"]
    places: tuple[float, ...]
    line: tuple[Point, ...]
    across: str
    up_unit: str
    beside: tuple[Point, ...] = ()

    def at(self, place: TravelAndLock) -> tuple[Point, Point | None]:
        """The point of each curve that belongs to a place; its end where the place lies beyond."""
        wanted = place.travel if self.by == "travel" else abs(place.lock)
        after = min(max(bisect_right(self.places, wanted), 1), len(self.places) - 1)
        low, high = self.places[after - 1], self.places[after]
        share = min(1.0, max(0.0, (wanted - low) / (high - low)))

        def on(line: tuple[Point, ...]) -> Point:
            (x, y), (next_x, next_y) = line[after - 1], line[after]
            return x + share * (next_x - x), y + share * (next_y - y)

        return on(self.line), on(self.beside) if self.beside else None

    def told(self, place: TravelAndLock) -> str:
        """The title with the numbers at a place."""
        (across, up), beside = self.at(place)
        numbers = {"across": across, "up": up, "beside": beside[1] if beside else 0.0}
        return self.title.format_map({name: f"{round(number, 2) + 0.0:g}" for name, number in numbers.items()})


def graphs(front: Moving, known: Known, units: Units) -> tuple[Curve, ...]:
    """Every curve that can be drawn of a front end: camber, toe and ground offset over travel, outer over inner angle."""
    length, unit = (1 / INCH, "in") if units == "inch" else (1.0, "mm")
    found: list[Curve] = []
    if front.travels:
        poses = _through_travel(front)

        def over_travel(title: str, up_unit: str, measure: Callable[[Pose], float]) -> None:
            line = tuple((travel * length, measure(pose)) for travel, pose in poses)
            found.append(Curve(title, "travel", tuple(travel for travel, _ in poses), line, f"travel {unit}", up_unit))

        over_travel(f"Camber {{up}} deg, {STRAIGHT}", "deg", lambda pose: _degrees(pose.camber))
        if front.steers:
            over_travel(f"Toe-in {{up}} deg, {STRAIGHT}", "deg", lambda pose: -_degrees(pose.steer))
        over_travel(f"Ground offset {{up}} {unit}, {STRAIGHT}", unit, lambda pose: length * pose.ground_offset)
        found = [graph for graph in found if len(graph.line) > 1]
    if front.steers:
        found += _outer_over_inner(front, known)
    return tuple(found)


def _degrees(angle: float) -> float:
    return published(angle, "rad")[0]


def _through_travel(front: Moving) -> list[tuple[float, Pose]]:
    """The wheels straight ahead, from full droop to full bump, as far as the links reach."""
    poses = []
    for step in range(_TRAVELS + 1):
        travel = -front.droop + (front.droop + front.bump) * step / _TRAVELS
        try:
            poses.append((travel, front.corner(travel, 0.0)))
        except CannotReach:
            continue
    return poses


@reads
def _track_over_wheelbase(kingpin_track: Mm, job_wheelbase: Mm) -> float | None:
    return kingpin_track / job_wheelbase


def _outer_over_inner(front: Moving, known: Known) -> list[Curve]:
    """Both wheels' angles at ride height over the lock, with the outer angle at which neither wheel would scrub."""
    places, line = [], []
    for notch in range(LOCK_NOTCHES + 1):
        try:
            left, right = front.corners(TravelAndLock(0.0, notch / LOCK_NOTCHES))
        except CannotReach:
            break
        places.append(notch / LOCK_NOTCHES)
        line.append((left.steer, -right.steer))
    if len(line) < 2:
        return []
    shown = tuple((_degrees(inner), _degrees(outer)) for inner, outer in line)
    title = "Outer {up} at inner {across} deg, ride"
    ideal: tuple[Point, ...] = ()
    ratio = _track_over_wheelbase(known)
    if ratio is not None:
        title = "Outer {up}, dashed ideal {beside}, ride"
        ideal = tuple((_degrees(inner), _degrees(ideal_outer(inner, ratio))) for inner, _ in line)
    return [Curve(title, "lock", tuple(places), shown, "inner deg", "deg", ideal)]
