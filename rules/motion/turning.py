"""How the wheels turn: what the linkage gives against what a bend asks for, and what the car's weight makes of it.

A pose is the left corner's. Full left it is the inner wheel of a bend, full right the outer one, so both wheels of a
left turn are two poses at opposite lock.
"""

from math import atan2, copysign, cos, hypot, sin, sqrt

from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector, cross, dot, minus, plus, size, times
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import UP, CannotReach, Pose, mirrored
from rules.motion.search import last_that_holds
from rules.motion.sweep import Sweep

LOOKS = 8
"""Places of the lock looked at; no linkage that is built lets go and takes hold again between two of them."""
STOP_CLOSE = 1e-6
"""rad within which the inner wheel counts as at its stop."""


class Steered(NamedTuple):
    """Both wheels of a left turn. lock: 0 to 1. outer: as the left corner of the opposite lock."""

    lock: float
    inner: Pose
    outer: Pose


class Turned(NamedTuple):
    """Angles seen from above, rad, all positive into the bend. ideal: of the outer wheel."""

    inner: float
    outer: float
    ideal: float


class LockTable(tuple[Turned, ...]):
    """Both wheels from straight ahead to full lock."""

    @property
    def worst(self) -> Turned:
        """Where the outer wheel is furthest from its ideal angle."""
        return max(self, key=lambda turned: abs(turned.outer - turned.ideal))

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"both wheels at {len(self)} places from straight ahead to full lock"


class Reach(NamedTuple):
    """How far the linkage goes. share: of the lock asked for, 1 where all of it. inner: rad, the inner wheel there.

    lock: that place as a part of the front end's own full lock, which ends where the links do if they end before the stop.
    """

    share: float
    inner: float
    lock: float = 1.0

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return "the whole lock" if self.share == 1.0 else f"{self.share:.0%} of the lock, then the linkage locks"


def reach(front: FrontEnd) -> Reach:
    """How far both wheels follow at ride height before two links lie in a line, where the linkage locks or turns back.

    >>> reach(trapezium()).text
    'the whole lock'
    """
    linkage = front.linkage
    assert linkage is not None
    lock = _last_lock(front)
    try:
        inner, stop = front.at(0.0, lock).steer, linkage.stop
    except CannotReach:  # rod and arm lie in a line as they stand, and rounding decides which way they miss each other
        return Reach(0.0, 0.0)
    at_end = linkage.travel is not None and abs(front.full) >= linkage.travel
    if lock == 1.0 and (stop is None or inner >= stop - STOP_CLOSE or at_end):
        return Reach(1.0, inner)
    return Reach(inner / stop if lock == 1.0 and stop is not None else lock, inner, lock)


def _last_lock(front: FrontEnd) -> float:
    """How much of full lock both wheels follow through, turning on all the way, 0 to 1."""
    linkage = front.linkage
    assert linkage is not None

    def follows(lock: float) -> bool:
        try:
            poses = front.at(0.0, lock), front.at(0.0, -lock)
            return linkage.inner is None or all(turn_per_slide(linkage, pose) * front.full > 0 for pose in poses)
        except (CannotReach, ZeroDivisionError):
            return False

    past = next((place / LOOKS for place in range(1, LOOKS + 1) if not follows(place / LOOKS)), None)
    if past is None:
        return 1.0
    return last_that_holds(follows, past - 1 / LOOKS, past)


def both_wheels(sweep: Sweep) -> list[Steered]:
    """Both wheels of a left turn, from straight ahead to full lock. sweep: one travel, from full right to full left.

    >>> from rules.motion.sweep import envelope
    >>> [wheels.lock for wheels in both_wheels(envelope(trapezium(), 0.0, 0.0, locks=5))]
    [0.0, 0.5, 1.0]
    """
    places = {placed.lock: placed.pose for placed in sweep.placed}
    return [Steered(lock, pose, places[-lock]) for lock, pose in places.items() if lock >= 0]


def ideal_outer(inner: float, ratio: float) -> float:
    """The outer wheel's angle at which both spin axes meet on the rear axle's line, rad.

    cot(outer) - cot(inner) = ratio, the distance between the steering axes over the wheelbase. Low speed, no slip.
    1.4 by 2.6 m, inner 31.159305 deg: tan 31.159305 deg = 2.6 / (5 - 0.7), so tan outer = 2.6 / (5 + 0.7).

    >>> from math import degrees, radians
    >>> round(degrees(ideal_outer(radians(31.159305), 1.4 / 2.6)), 5)
    24.51964
    """
    return atan2(sin(inner), cos(inner) + ratio * sin(inner))


def ideal_outer_of(wheels: Steered, wheelbase: float, centre_line: float) -> float:
    """The outer wheel's angle at which it rolls about where the inner wheel's spin axis meets the rear axle's line, rad.

    From the true contacts, which wander as the wheels turn about leaning axes; `ideal_outer` holds both where the axes meet
    the ground. Raises ZeroDivisionError where the inner wheel points straight ahead.

    With axes straight up through the contacts both are one: 1.4 by 2.6 m, 31.159305 deg.

    >>> from math import degrees, radians
    >>> wheels = Steered(1.0, wheel_turned(radians(31.159305)), wheel_turned(radians(-24.519643)))
    >>> round(degrees(ideal_outer_of(wheels, 2600.0, -700.0)), 5)
    24.51964
    """
    inner, outer = wheels.inner.contact, mirrored(wheels.outer.contact, centre_line)
    spin = wheels.inner.spin
    centre = inner[1] - spin[1] * (wheelbase + inner[0]) / spin[0]
    return atan2(wheelbase + outer[0], centre - outer[1])


def ackermann(inner: float, outer: float, ratio: float) -> float:
    """The share of the ideal difference between the wheels that is there: (inner - outer) / (inner - ideal outer).

    inner, outer: rad, more than nought into the bend.

    >>> from math import radians
    >>> round(ackermann(radians(30), radians(25.65145), 1.4 / 2.6), 4)
    0.698
    """
    return (inner - outer) / (inner - ideal_outer(inner, ratio))


def arm(pose: Pose) -> Vector:
    """From the steering axis, square to it, out to the tie-rod end, mm.

    >>> tuple(round(part, 9) for part in arm(trapezium().at(0.0, 0.0)))
    (-144.0, -42.0, 0.0)
    """
    assert pose.tie_rod_end is not None
    out, axis = minus(pose.tie_rod_end, pose.lower), pose.axis
    return minus(out, times(dot(out, axis), axis))


def lever(pose: Pose) -> float:
    """Lever of the tie rod about the steering axis, mm: the moment of a unit pull inward along it.

    Arm 144 behind the axis, rod straight across: a pull to the right turns the wheel's front left with 144 mm.

    >>> lever(trapezium().at(0.0, 0.0))
    144.0
    """
    assert pose.tie_rod_end is not None and pose.inner_end is not None
    rod = minus(pose.inner_end, pose.tie_rod_end)
    return dot(cross(arm(pose), rod), pose.axis) / size(rod)


def rod_to_arm(pose: Pose, straight: Pose) -> float:
    """Angle left between tie rod and arm before they lie in a line, out straight or folded, rad, up to a right angle.

    Seen along the steering axis. Minus once the rod has passed over to the other side of the arm than it has with the
    wheels straight. Arm 42 in 144 inboard and rod straight across: atan(144 / 42).

    >>> from math import degrees
    >>> straight = trapezium().at(0.0, 0.0)
    >>> round(degrees(rod_to_arm(straight, straight)), 4)
    73.7398
    """
    assert pose.tie_rod_end is not None and pose.inner_end is not None
    out, rod = arm(pose), minus(pose.inner_end, pose.tie_rod_end)
    return atan2(copysign(1, lever(straight)) * dot(cross(out, rod), pose.axis), abs(dot(out, rod)))


def turn_per_slide(linkage: SteeringLinkage, pose: Pose) -> float:
    """Rate of the wheel's turn about its axis with the slide of rack or relay rod to the left, rad per mm.

    Raises ZeroDivisionError where the rod lies in a line with the arm, or the relay rod with its own arms.

    The rod keeps its length, so both its ends move alike along it. Rack straight across behind, arm 150 mm: it must
    slide right for a turn to the left.

    >>> round(turn_per_slide(straight_rack().linkage, straight_rack().at(0.0, 0.0)) * 150, 9)
    -1.0
    """
    assert linkage.inner is not None and pose.tie_rod_end is not None and pose.inner_end is not None
    rod = minus(pose.inner_end, pose.tie_rod_end)
    along = rod[1]
    if linkage.how == "relay rod":
        slide = pose.inner_end[1] - linkage.inner[1]
        along -= rod[0] * slide / (linkage.relay_arm * sqrt(max(0.0, 1 - (slide / linkage.relay_arm) ** 2)))
    return along / size(rod) / lever(pose)


def outer_per_inner(linkage: SteeringLinkage, wheels: Steered) -> float:
    """How much the outer wheel turns about its axis for a little more of the inner one, both positive into the bend.

    >>> outer_per_inner(trapezium().linkage, Steered(0.0, trapezium().at(0.0, 0.0), trapezium().at(0.0, 0.0)))
    1.0
    """
    if linkage.how == "one rod across":
        return lever(wheels.inner) / lever(wheels.outer)
    return turn_per_slide(linkage, wheels.outer) / turn_per_slide(linkage, wheels.inner)


def lift(pose: Pose) -> float:
    """Rise of the body at this wheel, mm: how far the wheel's lowest point would sink if the body were held.

    >>> round(lift(leaning().at(0.0, 1.0)), 5)
    1.22178
    """
    return -pose.contact[2]


def lift_rate(pose: Pose) -> float:
    """Rise of the body per turn of the wheel to the left about its axis, mm per rad.

    By virtual work this is the lever of the weight on the wheel: of an upward force at its lowest point.

    >>> round(lift_rate(leaning().at(0.0, 1.0)), 4)
    6.8084
    """
    return -dot(cross(minus(pose.contact, pose.lower), UP), pose.axis)


def return_lever(linkage: SteeringLinkage, wheels: Steered) -> float:
    """Rise of the body at both wheels per turn of the inner one, mm per rad. Positive: the weight returns the wheels.

    >>> return_lever(leaning().linkage, Steered(0.0, leaning().at(0.0, 0.0), leaning().at(0.0, 0.0)))
    0.0
    """
    return lift_rate(wheels.inner) - outer_per_inner(linkage, wheels) * lift_rate(wheels.outer)


def outer_edge_radius(wheels: Steered, wheelbase: float, centre_line: float, tyre_width: float) -> float:
    """Radius the outer tyre's outer edge runs on, mm, low speed, no slip, level ground.

    The two front wheels seldom ask for the same centre on the rear axle's line: the middle of the two is taken.
    Raises ZeroDivisionError where a wheel points straight ahead.

    Ideal angles for 5 m at the middle of the rear axle put the outer wheel at (5.0 + 0.7) m across and 2.6 m ahead:

    >>> from math import radians
    >>> wheels = Steered(1.0, wheel_turned(radians(31.159305)), wheel_turned(radians(-24.519643)))
    >>> round(outer_edge_radius(wheels, 2600.0, -700.0, 0.0), 1), round(hypot(5700.0, 2600.0), 1)
    (6265.0, 6265.0)
    """

    def centre(contact: Vector, spin: Vector) -> float:
        return contact[1] - spin[1] * (wheelbase + contact[0]) / spin[0]

    x, y, z = wheels.outer.spin
    spin = (x, -y, z)
    contact = mirrored(wheels.outer.contact, centre_line)
    middle = (centre(wheels.inner.contact, wheels.inner.spin) + centre(contact, spin)) / 2
    edge = plus(contact, times(tyre_width / 2 / hypot(x, y), (spin[0], spin[1], 0.0)))
    return hypot(edge[0] + wheelbase, edge[1] - middle)
