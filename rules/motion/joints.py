"""How far a ball joint or spherical bearing swings: the angle between its bolt and the square of its housing.

An outer pivot's bolt moves with the upright and its housing with the arm. A tie rod is free to roll about itself, so its
joint needs only what the bolt leans out of square to the rod; what little the rod is twisted between two bolts is left
out. A bolt is a line: it has no head and no tail here.
"""

from math import asin, atan2, cos, pi, sin

from rules.measure.records import NamedTuple
from rules.measure.vectors import Frame, Vector, cross, dot, minus, out_of, size, times, unit, within
from rules.motion.kinds import OuterPivotBolt, TieRodInnerBolt, TieRodOuterBolt
from rules.motion.points import FORWARD, OUTBOARD, UP, Hinge, Pose, UprightPoints
from rules.motion.search import golden
from rules.motion.sweep import Sweep, Worst

MOST_SET = pi / 4
"""How far a housing can be clocked from square, either way."""
SET_CLOSE = 2e-6
"""rad; about a ten-thousandth of a degree."""

Position = tuple[float, float]
"""Travel, mm up positive, and lock, 1 full left."""


class Angles(NamedTuple):
    """What one joint needs in every position that can be reached, rad."""

    at: dict[Position, float]

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"angles in {len(self.at)} positions"

    @property
    def worst(self) -> Worst:
        """The largest, and where; with several alike, where the wheels are nearest to straight and then to ride height.

        >>> worst = Angles({(0.0, 0.0): 0.1, (90.0, -1.0): 0.3}).worst
        >>> worst, worst.travel, worst.lock
        (0.3, 90.0, -1.0)
        """
        (travel, lock), angle = max(
            self.at.items(), key=lambda item: (round(item[1], 9), -abs(item[0][1]), -abs(item[0][0]))
        )
        return Worst(angle, travel, lock)

    @property
    def from_lock_alone(self) -> float:
        """The largest at ride height: what steering needs without any travel.

        >>> Angles({(0.0, 0.0): 0.1, (0.0, 1.0): 0.2, (90.0, 1.0): 0.3}).from_lock_alone
        0.2
        """
        return max((angle for (travel, _), angle in self.at.items() if travel == 0.0), default=0.0)


class Clocking(float):
    """How far a housing is best clocked from square, rad, and `least`: the most the joint then needs, rad."""

    least: float

    def __new__(cls, clocking: float, least: float) -> "Clocking":
        """clocking: seen from the front, its top further inboard than the bolt's positive."""
        made = super().__new__(cls, clocking)
        made.least = least
        return made


class Swing(NamedTuple):
    """An outer pivot's bolt as its arm sees it. square: its direction at ride; at: its direction in every position.

    Both in the car's axes with the arm held at ride height, so that only what the joint does is left.
    """

    square: Vector
    at: dict[Position, Vector]

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"the bolt's direction in {len(self.at)} positions, seen from the arm"

    def angles(self, clocking: float) -> Angles:
        """What the joint needs with its housing clocked so far from square, rad.

        A housing 0.1 rad one way off an upright bolt, which then leans 0.2 rad the other way, needs 0.3 rad.

        >>> swing = Swing((0.0, 0.0, 1.0), {(50.0, 0.0): (0.0, sin(0.2), cos(0.2))})
        >>> round(swing.angles(0.1).at[50.0, 0.0], 9)
        0.3
        """
        housing = _clocked(self.square, clocking)
        return Angles({position: between(bolt, housing) for position, bolt in self.at.items()})

    def best(self) -> Clocking:
        """The clocking that makes the worst position least. A bolt that lies fore and aft has none: its is always 0.

        A bolt that leans from 0.1 rad inboard to 0.3 rad outboard is best met half way, 0.1 rad outboard: 0.2 rad each way.

        >>> leans = {(90.0, 0.0): (0.0, -sin(0.1), cos(0.1)), (-90.0, 0.0): (0.0, sin(0.3), cos(0.3))}
        >>> best = Swing((0.0, 0.0, 1.0), leans).best()
        >>> round(best, 5), round(best.least, 5)
        (-0.1, 0.2)
        """
        x, y, z = self.square
        if y == z == 0:
            return Clocking(0.0, self.angles(0.0).worst)
        # The cosine of each angle is fixed + a cos(set) + b sin(set): one hill each, so the least of them has one hill too.
        parts = [(x * bx, y * by + z * bz, y * bz - z * by) for bx, by, bz in self.at.values()]

        def least_cosine(clocking: float) -> float:
            c, s = cos(clocking), sin(clocking)
            return min(abs(fixed + a * c + b * s) for fixed, a, b in parts)

        clocking = golden(lambda clocking: -least_cosine(clocking), -MOST_SET, MOST_SET, SET_CLOSE)
        return Clocking(clocking, self.angles(clocking).worst)


class JointTable(NamedTuple):
    """What every joint needs at droop, ride and bump, each at full right, straight and full left.

    corners: travel, mm, and lock of the left wheel. joints: name, and for each corner its angle, rad; None out of reach.
    """

    corners: tuple[Position, ...]
    joints: tuple[tuple[str, tuple[float | None, ...]], ...]

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"{', '.join(name for name, _ in self.joints)}: angles at {len(self.corners)} corners of travel and lock"


def between(first: Vector, second: Vector) -> float:
    """Angle between two lines, rad, 0 to a right angle.

    >>> between((1.0, 0.0, 0.0), (-1.0, 0.0, 0.0)), between((1.0, 0.0, 0.0), (0.0, 2.0, 0.0)) == pi / 2
    (0.0, True)
    """
    return atan2(size(cross(first, second)), abs(dot(first, second)))


def out_of_square(first: Vector, second: Vector) -> float:
    """How far two lines, both of length 1, are from square to each other, rad, 0 to a right angle.

    >>> out_of_square((1.0, 0.0, 0.0), (0.0, 1.0, 0.0)), out_of_square((1.0, 0.0, 0.0), (1.0, 0.0, 0.0)) == pi / 2
    (0.0, True)
    """
    return asin(min(1.0, abs(dot(first, second))))


def bolt_direction(lies: OuterPivotBolt | TieRodOuterBolt | TieRodInnerBolt, upright: UprightPoints) -> Vector:
    """Direction of a bolt at ride height, of length 1.

    >>> bolt_direction("fore and aft", UprightPoints((0.0, 0.0, 300.0), (0.0, 0.0, 600.0), (0.0, 100.0, 400.0)))
    (1.0, 0.0, 0.0)
    """
    if lies == "along the steering axis":
        return unit(minus(upright.upper, upright.lower))
    return {"fore and aft": FORWARD, "across the car": OUTBOARD, "along the rack": OUTBOARD, "up and down": UP}[lies]


def outer_swing(sweep: Sweep, upright: UprightPoints, upper: bool, hinge: Hinge, bolt: Vector) -> Swing:
    """How the bolt of the upper or lower outer pivot swings, seen from its arm. bolt: at ride, of length 1."""
    line = minus(hinge.front, hinge.rear)
    arm_at_ride = _frame(line, minus(upright.upper if upper else upright.lower, hinge.rear))
    upright_at_ride = _upright_at_ride(upright)
    seen = {}
    for travel, lock, pose in sweep.placed:
        moved = _moved(bolt, upright_at_ride, _frame(pose.axis, pose.spin))
        pivot = pose.upper if upper else pose.lower
        seen[travel, lock] = _moved(moved, _frame(line, minus(pivot, hinge.rear)), arm_at_ride)
    return Swing(bolt, seen)


def tie_rod_outer(sweep: Sweep, upright: UprightPoints, bolt: Vector) -> Angles:
    """What the tie rod's outer joint needs; its bolt moves with the upright. bolt: at ride, of length 1."""
    at_ride = _upright_at_ride(upright)
    return Angles({
        (travel, lock): out_of_square(_moved(bolt, at_ride, _frame(pose.axis, pose.spin)), _rod(pose))
        for travel, lock, pose in sweep.placed
    })  # fmt: skip


def tie_rod_inner(sweep: Sweep, lies: TieRodInnerBolt, bolt: Vector) -> Angles:
    """What the tie rod's inner joint needs. Rack and relay rod slide without turning, so its bolt or shank stays put.

    lies: "along the rack" is a shank that a ball sits on, measured from its own line; any other a bolt through the rod.
    """
    needed = between if lies == "along the rack" else out_of_square
    return Angles({(travel, lock): needed(bolt, _rod(pose)) for travel, lock, pose in sweep.placed})


def corners(sweep: Sweep) -> tuple[Position, ...]:
    """Full droop, ride and full bump, each at full right, straight and full left.

    >>> from rules.motion.sweep import Blocked
    >>> corners(Sweep((), tuple(Blocked(travel, lock, 0.0) for travel in (-9.0, 0.0, 5.0) for lock in (-1.0, 0.0))))
    ((-9.0, -1.0), (-9.0, 0.0), (0.0, -1.0), (0.0, 0.0), (5.0, -1.0), (5.0, 0.0))
    """
    positions = [(place[0], place[1]) for place in (*sweep.placed, *sweep.blocked)]
    travels, locks = ({place[axis] for place in positions} for axis in (0, 1))
    return tuple(
        (travel, lock)
        for travel in sorted({min(travels), max(travels)} | {0.0} & travels)
        for lock in sorted({min(locks), max(locks)} | {0.0} & locks)
    )


def _clocked(direction: Vector, clocking: float) -> Vector:
    """Turned about the line fore and aft, the top inboard positive."""
    x, y, z = direction
    c, s = cos(clocking), sin(clocking)
    return (x, c * y - s * z, s * y + c * z)


def _rod(pose: Pose) -> Vector:
    assert pose.tie_rod_end is not None and pose.inner_end is not None
    return unit(minus(pose.tie_rod_end, pose.inner_end))


def _frame(first: Vector, second: Vector) -> Frame:
    """Three square directions: the first along one vector, the second as near the other as it can be."""
    one = unit(first)
    two = unit(minus(second, times(dot(second, one), one)))
    return one, two, cross(one, two)


def _upright_at_ride(upright: UprightPoints) -> Frame:
    return _frame(minus(upright.upper, upright.lower), upright.spin)


def _moved(vector: Vector, before: Frame, after: Frame) -> Vector:
    """What has become of a vector fixed in a body, whose directions were those before and are those after."""
    return out_of(after, within(before, vector))
