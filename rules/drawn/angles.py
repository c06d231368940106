"""The angle that an entry asks for, as an arc with an arrow in the picture: from which direction to which it is measured.

It is drawn where its corner is known, in the one view that shows it in its true size; so the arc is the answer.
"""

from collections.abc import Callable, Mapping
from math import atan2, ceil, cos, dist, pi, radians, sin
from typing import Literal

from rules.drawn.scene import Item, Label, Line, Polyline
from rules.drawn.views import FROM_ABOVE, FROM_FRONT, FROM_OUTSIDE, Viewpoint
from rules.judging.reader import Known, Name, Size, answer, name, reads
from rules.measure.display import show
from rules.measure.outline import Point
from rules.measure.records import dataclass
from rules.measure.vectors import Vector
from rules.motion.points import UprightPoints
from rules.sheet.pivots import SpringOn
from rules.sheet.steering import ArmPoints

FEWEST = radians(0.2)
"""A smaller angle is no arc."""
STEP = radians(3)
"""Between two points of an arc."""
HEAD = 0.1
"""Of the arc's radius: how long its arrow's head is, where the arc is long enough for one."""
PAST = 1.1
"""Times the radius: how far the two directions are drawn."""
CLEAR = 1.5
"""Times what the angle is of, how far out its arc is: there is room for words."""
ROD = 150.0
"""mm: the radius of an arc on a rod or an arm."""

FromWay = Literal["up", "ahead", "behind", "inboard"]
_WAYS: Mapping[FromWay, Vector] = {
    "up": (0.0, 0.0, 1.0),
    "ahead": (1.0, 0.0, 0.0),
    "behind": (-1.0, 0.0, 0.0),
    "inboard": (0.0, -1.0, 0.0),
}


@dataclass(frozen=True, slots=True)
class AngleArc:
    """An angle at a point of the corner, mm: the direction it is measured from, the one that a plus turns it towards, and
    how far from the point the arc is drawn, mm."""

    at: Vector
    start: FromWay
    plus: Vector
    radius: float


Finds = Callable[[Known], AngleArc | None]


@reads
def _upright(upright_points: UprightPoints) -> UprightPoints | None:
    return upright_points


@reads
def _rod_end(steered_upright: UprightPoints) -> Vector | None:
    return steered_upright.tie_rod_end


@reads
def _centre(wheel_centre_height: Size) -> Vector | None:
    return 0.0, 0.0, wheel_centre_height


@reads
def _rotor(rotor_diameter: Size) -> float | None:
    return rotor_diameter / 2


def _inside(known: Known) -> float | None:
    """Not so far out as the others: from above a tyre's width is all there is beside it."""
    centre = _centre(known)
    return 0.5 * centre[2] / CLEAR if centre else None


@reads
def _spring_on(pivots_spring_on: SpringOn) -> str | None:
    return pivots_spring_on


@reads
def _points(steering_copied_side: ArmPoints) -> str | None:
    return steering_copied_side


INBOARD, OUTBOARD = (0.0, -1.0, 0.0), (0.0, 1.0, 0.0)
AHEAD, BEHIND, DOWN = (1.0, 0.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, -1.0)


def _axis(plus: Vector) -> Finds:
    """The lean of the steering axis, at the lower pivot."""

    def found(known: Known) -> AngleArc | None:
        points = _upright(known)
        return AngleArc(points.lower, "up", plus, CLEAR * dist(points.lower, points.upper)) if points else None

    return found


def _camber(known: Known) -> AngleArc | None:
    centre = _centre(known)
    return AngleArc((0.0, 0.0, 0.0), "up", OUTBOARD, 1.7 * centre[2]) if centre else None


def _about_the_wheel(start: FromWay, plus: Vector, radius: Callable[[Known], float | None]) -> Finds:
    """About the wheel's centre."""

    def found(known: Known) -> AngleArc | None:
        centre = _centre(known)
        return AngleArc(centre, start, plus, CLEAR * (radius(known) or 0.3 * centre[2])) if centre else None

    return found


def _rod(plus: Vector) -> Finds:
    """The tie rod at its outer end, from where it runs inboard."""

    def found(known: Known) -> AngleArc | None:
        end = _rod_end(known)
        return AngleArc(end, "inboard", plus, ROD) if end else None

    return found


def _arm(known: Known) -> AngleArc | None:
    """The arm that the spring does not stand on, at its outer pivot."""
    points, spring_on = _upright(known), _spring_on(known)
    if points is None or spring_on is None:
        return None
    return AngleArc(points.upper if spring_on == "lower arm" else points.lower, "inboard", DOWN, ROD)


def _copied(known: Known) -> AngleArc | None:
    """The steering arm at the steering axis, seen from above."""
    points, side = _upright(known), _points(known)
    if points is None or side is None:
        return None
    at = points.on_axis(points.wheel_centre[2])
    return AngleArc(at, "ahead" if side == "ahead" else "behind", INBOARD, ROD)


_SEEN: Mapping[Name, tuple[str, Viewpoint, Finds]] = {
    name("pivots.inclination"): ("inclination", FROM_FRONT, _axis(INBOARD)),
    name("pivots.castor"): ("castor", FROM_OUTSIDE, _axis(BEHIND)),
    name("arms.static_camber"): ("camber", FROM_FRONT, _camber),
    name("caliper.clock"): ("clock", FROM_OUTSIDE, _about_the_wheel("up", AHEAD, _rotor)),
    name("hub.mount_turned"): ("first bolt", FROM_OUTSIDE, _about_the_wheel("up", AHEAD, _rotor)),
    name("steering.stop_angle"): ("at the stop", FROM_ABOVE, _about_the_wheel("ahead", OUTBOARD, _inside)),
    name("steering.copied_angle"): ("arm angle", FROM_ABOVE, _copied),
    name("loads.tie_rod_slope"): ("tie-rod slope", FROM_FRONT, _rod(DOWN)),
    name("loads.tie_rod_sweep"): ("tie-rod sweep", FROM_ABOVE, _rod(BEHIND)),
    name("loads.arm_slope"): ("arm slope", FROM_FRONT, _arm),
}
TURNED: Mapping[str, tuple[Name, str, Viewpoint, Finds]] = {
    asked.origin: (asked, *seen) for asked, seen in _SEEN.items()
}
"""The entries that are an angle in the picture: its word there, the view that shows it, and how it is found."""


def turned(field: str, known: Known, view: Viewpoint) -> tuple[Item, ...]:
    """The entry's angle: its words first, then arc, arrow and the two directions.

    Nothing where it is no angle of this view, is not known, or is too small to be seen.
    """
    if field not in TURNED or TURNED[field][2] != view:
        return ()
    asked, word, _, finds = TURNED[field]
    angle, found = answer(known, asked), finds(known)
    if not isinstance(angle, int | float) or abs(angle) < FEWEST or found is None:
        return ()
    centre, first, plus = view.flat(found.at), _way(view, _WAYS[found.start]), _way(view, found.plus)
    sense = 1.0 if sin(plus - first) > 0 else -1.0
    count = max(2, ceil(abs(angle) / STEP))
    arc = tuple(_out(centre, first + sense * angle * part / count, found.radius) for part in range(count + 1))
    last = first + sense * angle
    words = f"{word} {show(float(angle), 'rad', 'metric')}"
    return (
        Label(
            "lit", arc[count // 2], words, "outboard" if found.start == "up" and arc[-1][0] > arc[0][0] else "inboard"
        ),
        Line("lit", centre, _out(centre, first, PAST * found.radius), "dotted"),
        Line("lit", centre, _out(centre, last, PAST * found.radius)),
        Polyline("lit", arc),
        *_head(arc, found.radius),
    )


def _way(view: Viewpoint, direction: Vector) -> float:
    """A direction in the picture, rad, from the right round by the top."""
    right, up = view.through((0.0, 0.0, 0.0)).flat(direction)
    return atan2(up, right)


def _out(centre: Point, direction: float, far: float) -> Point:
    return centre[0] + far * cos(direction), centre[1] + far * sin(direction)


def _head(arc: tuple[Point, ...], radius: float) -> tuple[Item, ...]:
    """Two strokes at the end of an arc that is long enough for them."""
    (x1, y1), end = arc[-2], arc[-1]
    back = atan2(y1 - end[1], x1 - end[0])
    if dist(arc[0], end) < 2 * HEAD * radius:
        return ()
    return tuple(Line("lit", end, _out(end, back + aside, HEAD * radius)) for aside in (-pi / 6, pi / 6))
