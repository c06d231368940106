"""The moving front end as flat shapes in mm: from the front, and from above.

Both are seen as by someone who stands in front of the car: y, outboard of the left wheel, goes to the right, and in the
view from above the front of the car is at the bottom. So the two stand under each other at one scale. The frame stands
still; the wheels and the ground under them move. The shapes are the corner's parts; axes and rolling lines are lines.
"""

from collections.abc import Callable, Iterator, Mapping
from functools import lru_cache
from typing import Literal

from rules.corner.part import Part
from rules.corner.placing import Ride
from rules.corner.room import Moves
from rules.drawn.corner_parts import parts_of
from rules.drawn.moving.corner import corner_bodies, mirrored_body
from rules.drawn.moving.gaps import NearTouch, near_touch
from rules.drawn.scene import Body, Box, Item, Label, Line, Mark, Scene
from rules.drawn.views import FROM_ABOVE, FROM_FRONT, Viewpoint
from rules.judging.reader import Known, reads
from rules.measure.outline import Point
from rules.measure.quantity import INCH, Units
from rules.measure.records import NamedTuple
from rules.measure.units import Mm
from rules.measure.vectors import Vector, cross, dot, minus, plus, times
from rules.motion.front_end import FrontEnd
from rules.motion.points import UP, CannotReach, Pose, mirrored
from rules.motion.search import last_that_holds

SeenFrom = Literal["front", "plan"]
VIEWS: tuple[SeenFrom, SeenFrom] = ("front", "plan")
VIEWPOINTS: Mapping[SeenFrom, Viewpoint] = {"front": FROM_FRONT, "plan": FROM_ABOVE}
NOTCH: dict[Units, float] = {"inch": INCH / 4, "metric": 5.0}
"""mm of travel at one press of a key."""
LOCK_NOTCHES = 20
"""Presses of a key from straight ahead to full lock."""
STAND_IN_TRAVEL = 100.0
"""mm each way that is shown while bump or droop travel is not entered."""
_BEYOND_PIVOT = 95.0
_ROOM_FOR_WORDS = 0.2
_HALVINGS = 14


class TravelAndLock(NamedTuple):
    """Where the front end is: travel, mm, up positive; lock, 1 full left, -1 full right."""

    travel: float = 0.0
    lock: float = 0.0


RIDE = TravelAndLock()


class PartsByName(dict[str, Part]):
    """The corner's parts by name: a key by which what was drawn of them is found again."""

    def __hash__(self) -> int:  # type: ignore[override]
        return hash(tuple(self))


class Moving(NamedTuple):
    """A front end to be moved, how far it goes, and what may touch.

    droop, bump: mm, both positive. entered: whether both were, or an assumed figure is shown. centre_line: of the car, mm from
    the tyre centre plane, minus. parts: the corner's, by name; ride: where they stand at ride height.
    """

    front: FrontEnd
    droop: float
    bump: float
    entered: bool
    centre_line: float
    parts: "PartsByName"
    ride: Ride | None

    @property
    def travels(self) -> bool:
        """Whether the arms are known."""
        return self.front.arms is not None

    @property
    def steers(self) -> bool:
        """Whether the steering is known."""
        return self.front.linkage is not None

    def corner(self, travel: float, lock: float) -> Pose:
        """The left corner; the right one at a lock is the mirror image of the left at the opposite lock."""
        return self.front.at(travel, lock) if self.steers else self.front.straight(travel)

    def corners(self, place: TravelAndLock) -> tuple[Pose, Pose]:
        """Left corner, and right corner as the left one it mirrors. Raises CannotReach where the links lock before."""
        left = self.corner(place.travel, place.lock)
        return left, self.corner(place.travel, -place.lock) if place.lock else left


def moving(known: Known) -> Moving | None:
    """What can be moved, from the values and fields that are known; None while neither steering nor arms are."""
    return _moving(known, parts=PartsByName(parts_of(known)))


@reads
def _moving(
    moving_front: FrontEnd | None,
    hung_front: FrontEnd | None,
    steered_front: FrontEnd | None,
    job_track: Mm,
    droop_travel: Mm | None,
    bump_travel: Mm | None,
    corner_moves: Moves | None,
    *,
    parts: PartsByName,
) -> Moving | None:
    front = moving_front or hung_front or steered_front
    if front is None:
        return None
    entered = droop_travel is not None and bump_travel is not None
    droop, bump = (STAND_IN_TRAVEL if travel is None else travel for travel in (droop_travel, bump_travel))
    if front.arms is None:
        droop = bump = 0.0
    ride = corner_moves.ride if corner_moves else None
    return Moving(front, droop, bump, entered, -job_track / 2, parts, ride)


def touches(front: Moving, place: TravelAndLock) -> tuple[NearTouch | None, NearTouch | None]:
    """The smallest gap on the left and on the right wheel; the right one's place as on the left wheel it mirrors."""
    if front.ride is None:
        return None, None
    left, right = front.corners(place)
    here = near_touch(front.parts, front.ride, left)
    return here, here if right is left else near_touch(front.parts, front.ride, right)


def moved(front: Moving, start: TravelAndLock, target: TravelAndLock) -> TravelAndLock:
    """The target, or the last place on the way to it that the links reach. The start is one they reach."""
    if _reached(front, target):
        return target
    share = last_that_holds(lambda share: _reached(front, _between(start, target, share)), 0.0, 1.0, _HALVINGS)
    return _between(start, target, share)


def _between(start: TravelAndLock, target: TravelAndLock, share: float) -> TravelAndLock:
    return TravelAndLock(*(a + share * (b - a) for a, b in zip(start, target, strict=True)))


def _reached(front: Moving, place: TravelAndLock) -> bool:
    try:
        front.corners(place)
    except CannotReach:
        return False
    return True


SWEEP_STEPS = 10
"""From ride height to full bump, and from straight ahead to full lock, when the sweep is shown by itself."""


def whole_sweep(front: Moving) -> Iterator[TravelAndLock]:
    """From ride height through all of travel and lock and back: up and down straight ahead, then lock to lock at each end.

    What cannot move is left out.
    """
    steps = range(1, SWEEP_STEPS + 1)
    shares = [step / SWEEP_STEPS for step in steps]
    out_and_back = [*shares, *shares[-2::-1], 0.0]
    both_ways = [*out_and_back, *(-share for share in out_and_back)]
    if front.travels:
        yield from (TravelAndLock(share * (front.bump if share > 0 else front.droop), 0.0) for share in both_ways)
    if front.steers:
        for travel in (0.0, front.bump, -front.droop) if front.travels else (0.0,):
            yield from (TravelAndLock(travel, share) for share in both_ways)
    yield RIDE


Flat = Callable[[Vector], Point]
"""A point of the car as a point of the drawing."""


def _flat(view: SeenFrom) -> Flat:
    """Looking rearward, or down with the front of the car at the bottom."""
    return VIEWPOINTS[view].flat


def _right(flat: Flat, centre_line: float) -> Flat:
    return lambda point: flat(mirrored(point, centre_line))


def scene(
    front: Moving,
    place: TravelAndLock,
    view: SeenFrom,
    both: bool,
    nearest: tuple[NearTouch | None, NearTouch | None] = (None, None),
) -> Scene:
    """One view of the front end at a place it reaches.

    both: both wheels, else the left corner. nearest: the near touch to mark on the left and on the right wheel.
    """
    flat, (left, right) = _flat(view), front.corners(place)
    bodies = _bodies(front, left, view)
    items: list[Item] = [*bodies]
    if both:
        others = bodies if right is left else _bodies(front, right, view)
        items += (mirrored_body(body, front.centre_line) for body in others)
    items += [*_nearest(nearest[0], flat), *_names(front, left, flat), *_lines(front, left, view, flat)]
    if both:
        across = _right(flat, front.centre_line)
        items += [*_nearest(nearest[1], across), *_lines(front, right, view, across)]
        limits = frame(front, view, both)
        middle = (limits.left + limits.right) / 2
        items.append(Line("centre line", (middle, limits.bottom), (middle, limits.top), "dashed"))
    items += _between_the_wheels(front, left, right, view, flat)
    return Scene(tuple(items), frame(front, view, both))


def _nearest(touch: NearTouch | None, flat: Flat) -> Iterator[Item]:
    if touch is not None:
        yield Mark("gap", flat(touch.at), "gap")


def _names(front: Moving, pose: Pose, flat: Flat) -> Iterator[Item]:
    if front.front.arms is not None:
        for hinge, name in zip(front.front.arms, ("lower arm", "upper arm"), strict=True):
            inmost = min((hinge.front, hinge.rear), key=lambda pivot: pivot[1])
            yield Label("arm", flat(inmost), name, "inboard")
    if pose.inner_end is not None:
        yield Label("tie rod", flat(pose.inner_end), "tie rod", "inboard")


def _bodies(front: Moving, pose: Pose, view: SeenFrom) -> list[Body]:
    return list(corner_bodies(front.parts, front.ride, pose, VIEWPOINTS[view])) if front.ride else []


def _lines(front: Moving, pose: Pose, view: SeenFrom, flat: Flat) -> Iterator[Item]:
    """Axes and pivots."""
    yield from _upright(pose, view, flat)
    for hinge in front.front.arms or ():
        yield Mark("pivot", flat(hinge.front), "pivot")
        yield Mark("pivot", flat(hinge.rear), "pivot")
        yield Line("centre line", flat(hinge.front), flat(hinge.rear), "dotted")
    if pose.tie_rod_end is not None and pose.inner_end is not None:
        yield Mark("pivot", flat(pose.inner_end), "pivot")
        yield Mark("pivot", flat(pose.tie_rod_end), "pivot")


def _upright(pose: Pose, view: SeenFrom, flat: Flat) -> Iterator[Item]:
    """Steering axis, wheel centre and steering arm; from above, the line the wheel rolls along."""
    lower, axis, centre = pose.lower, pose.axis, pose.wheel_centre
    yield Line("centre line", flat(centre), flat(_foot(centre, lower, axis)), "dotted")
    if pose.tie_rod_end is not None:
        yield Line("centre line", flat(pose.tie_rod_end), flat(_foot(pose.tie_rod_end, lower, axis)), "dotted")
    if view == "front":
        yield Line("axis", flat(pose.landing), flat(plus(pose.upper, times(_BEYOND_PIVOT, axis))))
        yield Mark("axis", flat(pose.landing), "landing")
    else:
        yield Line("axis", flat(lower), flat(pose.upper))
        ahead = times(pose.radius, cross(pose.spin, UP))
        yield Line("centre line", flat(minus(centre, ahead)), flat(plus(centre, ahead)), "dashed")
    yield Mark("pivot", flat(lower), "pivot")
    yield Mark("pivot", flat(pose.upper), "pivot")


def _foot(point: Vector, on: Vector, along: Vector) -> Vector:
    """The place on a line nearest a point."""
    return plus(on, times(dot(minus(point, on), along), along))


def _between_the_wheels(front: Moving, left: Pose, right: Pose, view: SeenFrom, flat: Flat) -> Iterator[Item]:
    """The ground under each wheel, and from one to the other."""
    other = _right(flat, front.centre_line)
    if view == "front":
        limits = frame(front, view, both=True)
        (here, level), (there, far_level) = flat(left.contact), other(right.contact)
        yield Line("ground", (limits.left, far_level), (there, far_level))
        yield Line("ground", (there, far_level), (here, level))
        yield Line("ground", (here, level), (limits.right, level))


@lru_cache(maxsize=16)
def frame(front: Moving, view: SeenFrom, both: bool) -> Box:
    """What holds one view through all travel and lock, so that nothing jumps while it moves, mm."""
    points = [point for pose in _extremes(front) for point in _reached_by(front, pose, view)]
    across, up = [point[0] for point in points], [point[1] for point in points]
    left, right, bottom, top = min(across), max(across), min(up), max(up)
    room = 0.04 * (top - bottom)
    left -= _ROOM_FOR_WORDS * (right - left)
    if both:
        left = 2 * front.centre_line - right
    return Box(left - room, right + room, bottom - room, top + room)


def _extremes(front: Moving) -> Iterator[Pose]:
    for travel in (-front.droop, 0.0, front.bump):
        for lock in (-1.0, 0.0, 1.0) if front.steers else (0.0,):
            yield front.corner(*moved(front, RIDE, TravelAndLock(travel, lock)))


def _reached_by(front: Moving, pose: Pose, view: SeenFrom) -> Iterator[Point]:
    """Points of a picture of the left corner that nothing of it lies beyond."""
    flat = _flat(view)
    yield from map(flat, (pose.lower, pose.upper, pose.contact))
    for hinge in front.front.arms or ():
        yield from map(flat, (hinge.front, hinge.rear))
    linkage = front.front.linkage
    if linkage is not None and linkage.how != "one rod across" and pose.inner_end:
        yield flat(pose.inner_end)
    for body in _bodies(front, pose, view):
        if body.name not in ("rack or relay", "shock"):
            yield from (point for area in body.areas for point in area.outer)
