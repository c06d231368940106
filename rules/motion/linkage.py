"""What moves the tie rods: rack, relay rod or one rod across, how far it goes, and how long the rod is."""

from collections.abc import Callable
from math import asin, copysign, cos, sqrt

from rules.measure.records import dataclass
from rules.measure.vectors import Vector, minus, size
from rules.motion.circle import PivotCircle
from rules.motion.kinds import LinkageKind, StopOn
from rules.motion.points import CannotReach, UprightPoints
from rules.motion.turned import toed


@dataclass(frozen=True, slots=True)
class SteeringLinkage:
    """What moves the left tie rod's inner end.

    inner: the inner end with the wheels straight; None with one rod.
    relay_arm: mm, minus where the arms point rearward. centre_line: the car's centre line, mm from the tyre plane (minus).
    travel: mm sideways each way, to the rack's own end; None where only the stop is known. stop: rad of the inner wheel
    at ride height where the stop touches; None where there is none. stop_on: a stop on "wheel" holds the wheel's turn at every
    travel; one on the "slide", rack or steering box, holds that, and the wheel's turn follows the travel: with one rod across,
    whose drag link nobody entered, the inner wheel is then as far from the middle as at ride height. toe: rad of each
    wheel at ride height, in positive: what the rod's length is set for.
    """

    how: LinkageKind
    inner: Vector | None
    centre_line: float
    travel: float | None = None
    stop: float | None = None
    relay_arm: float = 0.0
    stop_on: StopOn = "wheel"
    toe: float = 0.0

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        return f"{self.how}, as entered"

    def inner_at(self, slide: float) -> Vector:
        """The inner end moved sideways by `slide`, mm, to the left positive. Raises CannotReach beyond a relay arm's reach."""
        assert self.inner is not None
        x, y, z = self.inner
        if self.how == "relay rod":
            if abs(slide) > abs(self.relay_arm):
                raise CannotReach(self.relay_arm)
            x += self.relay_arm * (cos(asin(slide / self.relay_arm)) - 1)
        return (x, y + slide, z)

    def inner_for(self, straight: Vector) -> Callable[[Vector], Vector]:
        """From where the tie rod's outer end is to where its inner end then is; not with one rod across.

        straight: the outer end with the wheels as they are set at ride height. The function raises CannotReach where the rod
        does not reach.
        A rod of 300 straight across, its outer end moved 300 (1 - cos 30 deg) inboard and 150 back:

        >>> inner_for = SteeringLinkage("rack", (0.0, -400.0, 300.0), -800.0).inner_for((0.0, -100.0, 300.0))
        >>> round(inner_for((-150.0, -140.19238, 300.0))[1], 4)
        -400.0
        """
        assert self.inner is not None
        x, y, z = self.inner
        rod = size(minus(straight, self.inner))
        if self.how == "relay rod":
            arm = self.relay_arm
            joint = PivotCircle((x - arm, y, z), (arm, 0.0, 0.0), (0.0, arm, 0.0))
            side = joint.side_of(straight)
            return lambda end: joint.at(joint.angle(end, rod, side))
        outboard = copysign(1, straight[1] - y)

        def of_rack(end: Vector) -> Vector:
            squared = rod**2 - (end[0] - x) ** 2 - (end[2] - z) ** 2
            if squared < 0:
                raise CannotReach
            return (x, end[1] - outboard * sqrt(squared), z)

        return of_rack


def rod_length(upright: UprightPoints, linkage: SteeringLinkage) -> float:
    """The tie rod from joint to joint, mm, set for the toe; the whole rod where one runs across.

    Arm of 150 mm straight back and a rod of 400 mm straight across; toed in by 0.01 rad its end goes 1.5 mm outboard:

    >>> from rules.measure.records import replace
    >>> front = straight_rack()
    >>> round(rod_length(front.upright, replace(front.linkage, toe=0.01)), 3)
    401.5
    """
    assert upright.tie_rod_end is not None
    end = toed(upright, upright.tie_rod_end, linkage.toe)
    if linkage.how == "one rod across":
        return 2 * (end[1] - linkage.centre_line)
    assert linkage.inner is not None
    return size(minus(end, linkage.inner))
