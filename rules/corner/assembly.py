"""Whether a bolt goes in and a tool reaches it: each swept straight along the bolt's axis against what stands fixed. mm."""

from collections.abc import Collection, Iterable, Mapping
from functools import lru_cache
from math import cos, dist, pi, radians, sin
from typing import Literal, get_args

from rules.corner.part import Part
from rules.measure.records import dataclass
from rules.measure.vectors import Vector, cross, plus, times
from rules.solids.gap import Solid, deeper
from rules.solids.shapes import Cylinder, Rod, Shape, solid
from rules.solids.space import square_to
from rules.tables.sockets import SOCKET_LONG, SPANNER_LONG, socket_outside, spanner_outside, thin_socket_outside

Tool = Literal["socket", "thin-walled socket", "spanner", "nothing"]
BEST_FIRST: tuple[Tool, ...] = get_args(Tool)
CLEAR = 0.2
"""mm from the face a head sits on to where the tool begins."""
TOUCH = 0.1
WAYS = 12
"""Ways round in which a spanner's handle is tried."""
COMES_OFF = ("caliper", "upper pivot bolt", "lower pivot bolt", "caliper bolts")
"""Parts that are off the upright while its hub is bolted on."""


@dataclass(frozen=True, slots=True)
class Head:
    """A head or nut: the middle of the face it sits on, the direction away from it (length 1), its height, across flats."""

    seat: Vector
    out: Vector
    height: float
    across_flats: float

    def at(self, along: float) -> Vector:
        """A place on its axis so far from its seat, mm."""
        return plus(self.seat, times(along, self.out))


def head_of(shape: Cylinder, seat_first: bool) -> Head:
    """The head or nut that a cylinder, turned round, stands for. seat_first: whether its start is where it sits."""
    seat, end = (shape.start, shape.end) if seat_first else (shape.end, shape.start)
    run = tuple(b - a for a, b in zip(seat, end, strict=True))
    height = sum(part * part for part in run) ** 0.5
    out = (run[0] / height, run[1] / height, run[2] / height)
    return Head(seat, out, height, 2 * shape.radius * cos(radians(30)))


def in_the_way(path: Iterable[Shape], parts: Iterable[Part]) -> tuple[str, ...]:
    """The names of the parts a path runs into."""
    swept = tuple(path)
    return tuple(part.name for part in _near(swept, parts) if _meets(swept, part))


def is_free(path: Iterable[Shape], parts: Iterable[Part]) -> bool:
    """Whether a path runs into none of the parts."""
    swept = tuple(path)
    return not any(_meets(swept, part) for part in _near(swept, parts))


def _near(path: tuple[Shape, ...], parts: Iterable[Part]) -> list[Part]:
    """Those that it may meet: the balls round both do."""
    swept = _swept(path)
    return [part for part in parts if dist(swept.middle, part.solid.middle) < swept.reach + part.solid.reach]


@lru_cache(maxsize=4096)  # an answer changes few parts, and what is found of the others stays
def _meets(path: tuple[Shape, ...], part: Part) -> bool:
    return deeper(_swept(path), part.solid, TOUCH)


@lru_cache(maxsize=256)
def _swept(path: tuple[Shape, ...]) -> Solid:
    return solid(*path)


def fixed(parts: Mapping[str, Part], but: Collection[str], groups: Collection[str] = ("upright",)) -> list[Part]:
    """Parts of these groups, without those named."""
    return [part for part in parts.values() if part.group in groups and part.name not in but]


def reached(head: Head, parts: Collection[Part]) -> Tool:
    """What reaches a head from its free side."""
    across = head.across_flats
    if is_free([_socket(head, socket_outside(across))], parts):
        return "socket"
    if is_free([_socket(head, thin_socket_outside(across))], parts):
        return "thin-walled socket"
    jaw = Cylinder(head.at(CLEAR), head.at(head.height), spanner_outside(across) / 2)
    if not is_free([jaw], parts):
        return "nothing"
    one = square_to(head.out)
    two = cross(head.out, one)
    for step in range(WAYS):
        angle = 2 * pi * step / WAYS
        way = plus(times(cos(angle), one), times(sin(angle), two))
        middle = head.at(head.height / 2)
        if is_free([Rod(middle, plus(middle, times(SPANNER_LONG, way)), 0.4 * head.height)], parts):
            return "spanner"
    return "nothing"


def in_a_sockets_way(head: Head, parts: Collection[Part]) -> tuple[str, ...]:
    """What keeps a socket from a head."""
    return in_the_way([_socket(head, socket_outside(head.across_flats))], parts)


def _socket(head: Head, outside: float) -> Cylinder:
    return Cylinder(head.at(CLEAR), head.at(head.height + SOCKET_LONG), outside / 2)


def pushed_in(head: Head, length: float, parts: Collection[Part]) -> tuple[str, ...]:
    """What a bolt of this length below its head runs into on its way in, head included."""
    radius = head.across_flats / 2 / cos(radians(30))
    return in_the_way([Cylinder(head.at(CLEAR), head.at(length + head.height), radius)], parts)
