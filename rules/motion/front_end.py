"""Both front wheels through travel and lock, exactly: every link keeps its length.

Given the lower arm's angle, the upper outer pivot is held by the upper arm and by the upright, and the upright's turn
about the axis is held by the tie rod: each is one problem of `circle`, solved in closed form. Only the lower arm's angle
for a wanted travel is searched for.

Both wheels travel alike and the body stays level, so the right wheel is the left one's mirror image at the opposite lock.
"""

from collections.abc import Callable
from math import atan2, copysign, cos, hypot, pi, radians, sin

from rules.measure.vectors import Frame, Vector, cross, dot, minus, out_of, plus, size, times, unit, within
from rules.motion.circle import PivotCircle, hinged, nearest_turn
from rules.motion.kinds import FullLock
from rules.motion.linkage import SteeringLinkage, rod_length
from rules.motion.points import FORWARD, CannotReach, Hinge, Pose, UprightPoints, mirrored
from rules.motion.search import golden, last_that_holds
from rules.motion.turned import toed

STEP = 0.04
"""rad of the lower arm between two looks while its travel is searched for."""
CLOSE_ENOUGH = 1e-10
"""mm of travel."""
MOST_SWING = radians(80)
"""How far the lower arm is followed."""
AT_STOP = 1e-6
"""rad of the upright's turn."""
FARTHEST_CLOSE = 1e-9
"""rad of the lower arm; its travel hardly changes there."""


class FrontEnd:
    """One front corner and its mirror image, ready to be moved."""

    def __init__(
        self, upright: UprightPoints, arms: tuple[Hinge, Hinge] | None = None, linkage: SteeringLinkage | None = None
    ) -> None:
        """arms: lower and upper; None where travel is not known. linkage: None where the steering is not known.

        Raises CannotReach where the linkage does not steer at all.
        """
        self.upright, self.arms, self.linkage = upright, arms, linkage
        self._spacing = size(minus(upright.upper, upright.lower))
        frame = _frame(upright.lower, upright.upper)
        self._wheel_centre = within(frame, minus(upright.wheel_centre, upright.lower))
        self._spin = within(frame, upright.spin)
        self._outer = None if upright.tie_rod_end is None else within(frame, minus(upright.tie_rod_end, upright.lower))
        if arms is not None:
            lower, upper = arms
            self._lower = hinged(lower.front, lower.rear, upright.lower)
            self._upper = hinged(upper.front, upper.rear, upright.upper)
            self._upper_side = self._upper.side_of(upright.lower)
        self._held: dict[float, tuple[Vector, Vector]] = {0.0: (upright.lower, upright.upper)}
        self._farthest: dict[float, float] = {}  # by way, up 1 and down -1: where a travel past it was found to end
        self._outer_circles: dict[float, PivotCircle] = {}
        if linkage is not None:
            self._prepare(linkage)

    def _prepare(self, linkage: SteeringLinkage) -> None:
        straight = self.upright.tie_rod_end
        assert straight is not None
        end = toed(self.upright, straight, linkage.toe)
        self._rod = rod_length(self.upright, linkage)
        if linkage.how == "one rod across":
            self._rod_side = self._outer_circle(0.0).side_of(mirrored(straight, linkage.centre_line))
            assert linkage.stop is not None
            middle = self._middle_of_one_rod(self._outer_circle(0.0), linkage.centre_line) if linkage.toe else 0.0
            self._stop_turn = self._turn_to(linkage.stop)
            self._full = self._stop_turn - middle
            return
        assert linkage.inner is not None
        self._rod_side = self._outer_circle(0.0).side_of(linkage.inner)
        steered = self._steered(0.0, self._held[0.0], 0.001 * self._rod).steer + linkage.toe
        if not steered:
            raise CannotReach
        most = copysign(linkage.travel if linkage.travel is not None else self._rod, steered)
        self._full = most
        self._full_slides: dict[float, float] = {}
        if linkage.stop is not None:
            self._inner_for = linkage.inner_for(end)
            self._stop_turn = self._turn_to(linkage.stop)
            self._full = self._slide_to_stop(most, ends_there=linkage.travel is not None)

    def _slide_to_stop(self, most: float, ends_there: bool) -> float:
        """Slide at which the inner wheel meets its stop at ride height, or where rack or links end before."""
        if ends_there and self._short_of_stop(most):
            return most
        slide = self._slide_at(0.0, self._stop_turn)
        if slide is not None and slide * most > 0 and self._turns_to_stop(0.0, slide):
            return slide
        return last_that_holds(self._short_of_stop, 0.0, most)  # a rod past its dead point, or that locks before

    def _slide_at(self, travel: float, turn: float) -> float | None:
        """Slide at which the upright stands turned so far about its axis; None where the rod does not reach."""
        assert self.linkage is not None and self.linkage.inner is not None
        try:
            return self._inner_for(self._outer_circle(travel).at(turn))[1] - self.linkage.inner[1]
        except CannotReach:
            return None

    def _turns_to_stop(self, travel: float, slide: float) -> bool:
        """Whether the wheel stands at its stop with the inner ends there, and not on the other side of a dead point."""
        try:
            return abs(self._steered(travel, self.held(travel), slide).turn - self._stop_turn) < AT_STOP
        except CannotReach:
            return False

    def _short_of_stop(self, slide: float) -> bool:
        """Whether the links reach, and the wheel has not met its stop, with the inner ends there."""
        try:
            return self._steered(0.0, self._held[0.0], slide).turn < self._stop_turn
        except CannotReach:
            return False

    @property
    def text(self) -> str:
        """In one line, for the written-out working of what rests on it."""
        known = [words for words, part in (("arms", self.arms), ("steering", self.linkage)) if part is not None]
        return f"the front end's points, with {' and '.join(known) or 'the steering axis alone'}"

    @property
    def full(self) -> float:
        """Full lock to the left at ride height: mm the inner ends move to the left, or rad of the left wheel with one rod."""
        return self._full

    def steered(self, upright: UprightPoints, linkage: SteeringLinkage) -> "FrontEnd":
        """The same corner steered so. upright: with a tie-rod end; otherwise as here. What was found of the arms is kept.

        Raises CannotReach where the linkage does not steer at all.
        """
        made = FrontEnd(upright, self.arms, linkage)
        made._held = self._held
        made._farthest = self._farthest
        return made

    def _outer_circle(self, travel: float) -> PivotCircle:
        """Where the tie rod's outer joint can be at a travel: turned about the steering axis."""
        if travel not in self._outer_circles:
            lower, upper = self.held(travel)
            assert self._outer is not None
            self._outer_circles[travel] = _circle(lower, _frame(lower, upper), self._outer)
        return self._outer_circles[travel]

    def held(self, travel: float) -> tuple[Vector, Vector]:
        """Lower and upper outer pivot at a travel of the wheel centre, mm, up positive, the wheel held straight ahead.

        Raises CannotReach with the travel reached.
        """
        if travel not in self._held:
            self._held[travel] = self._outer_pivots(self._lower_angle(travel))
        return self._held[travel]

    def _outer_pivots(self, angle: float) -> tuple[Vector, Vector]:
        lower = self._lower.at(angle)
        return lower, self._upper.at(self._upper.angle(lower, self._spacing, self._upper_side))

    def _rise(self, angle: float) -> float:
        pivots = self._outer_pivots(angle)
        return self._pose(pivots, self._straight(pivots), None).wheel_centre[2] - self.upright.wheel_centre[2]

    def _lower_angle(self, travel: float) -> float:
        """The lower arm's angle at a travel: stepped towards, then closed in on."""
        if self.arms is None:
            raise CannotReach(0.0)
        way = copysign(1.0, travel)
        wanted, step = abs(travel), copysign(STEP, travel)
        if wanted > self._farthest.get(way, wanted):
            raise CannotReach(max(self._farthest[way], 0.0) * way)

        def goes(angle: float) -> float:
            """How far the wheel goes the way it is wanted to; minus where the arm takes it the other way."""
            return self._rise(angle) * way

        near, gone = 0.0, 0.0
        while abs(near) < MOST_SWING:
            far = near + step
            try:
                beyond = goes(far)
                turned_back = beyond <= gone
            except CannotReach:
                far, turned_back = last_that_holds(self._reaches, near, far), True
            if turned_back:  # the farthest the wheel goes lies within these two steps
                near = near - step if near else near
                far = golden(lambda angle: -goes(angle), near, far, FARTHEST_CLOSE)
                gone, beyond = goes(near), goes(far)
                if beyond < wanted:
                    self._farthest[way] = beyond
                    raise CannotReach(max(beyond, 0.0) * way)
            if beyond >= wanted:
                return _root(lambda angle: goes(angle) - wanted, near, far, gone - wanted, beyond - wanted)
            near, gone = far, beyond
        raise CannotReach(gone * way)

    def _reaches(self, angle: float) -> bool:
        try:
            self._rise(angle)
        except CannotReach:
            return False
        return True

    def _straight(self, pivots: tuple[Vector, Vector]) -> float:
        """The turn about the axis that leaves the wheel pointing straight ahead."""
        frame = _frame(*pivots)
        a, b, c = self._spin
        along = a * frame[0][0] + b * frame[1][0]
        across = a * frame[1][0] - b * frame[0][0]
        return nearest_turn(along, across, -c * frame[2][0])

    def _turn_to(self, steer: float) -> float:
        """Turn about the axis at which the wheel points `steer` to the left at ride height."""
        e1, e2, e3 = _frame(*self._held[0.0])
        a, b, c = self._spin

        def short(turn: float) -> bool:
            first, second = a * cos(turn) - b * sin(turn), a * sin(turn) + b * cos(turn)
            return (
                atan2(-first * e1[0] - second * e2[0] - c * e3[0], first * e1[1] + second * e2[1] + c * e3[1]) < steer
            )

        return last_that_holds(short, 0.0, pi / 2)

    def _pose(self, pivots: tuple[Vector, Vector], turn: float, inner: Vector | None) -> Pose:
        lower, upper = pivots
        frame = _frame(lower, upper)
        c, s = cos(turn), sin(turn)
        e1, e2, e3 = frame
        turned = (plus(times(c, e1), times(s, e2)), plus(times(c, e2), times(-s, e1)), e3)
        end = None if self._outer is None else plus(lower, out_of(turned, self._outer))
        centre = plus(lower, out_of(turned, self._wheel_centre))
        return Pose(lower, upper, centre, out_of(turned, self._spin), end, inner, turn, self.upright.radius)

    def on_arm(self, arm: str, point: Vector, travel: float) -> Vector:
        """Where a point fixed to the "lower arm" or "upper arm", given at ride height, is at a travel.

        Raises CannotReach with the travel reached.
        """
        lower, upper = self.held(travel)
        circle, outer = (self._lower, lower) if arm == "lower arm" else (self._upper, upper)
        squared = dot(circle.u, circle.u)
        spoke = minus(outer, circle.centre)
        c, s = dot(spoke, circle.u) / squared, dot(spoke, circle.v) / squared
        line = times(1 / squared, cross(circle.u, circle.v))
        reach = minus(point, circle.centre)
        along = times(dot(reach, line), line)
        u = minus(reach, along)
        return plus(circle.centre, along, times(c, u), times(s, cross(line, u)))

    def straight(self, travel: float) -> Pose:
        """The left corner at a travel with the wheel held straight ahead, whatever the tie rod says."""
        pivots = self.held(travel)
        return self._pose(pivots, self._straight(pivots), None)

    def at(self, travel: float, lock: float) -> Pose:
        """The left corner at a travel, mm, and lock: 1 full to the left, where it is the inner wheel, -1 full right.

        Raises CannotReach where the links lock before.
        """
        assert self.linkage is not None
        pivots = self.held(travel)
        if self.linkage.how == "one rod across":
            return self._at_one_rod(travel, pivots, lock, stop_holds=self.linkage.stop_on == "wheel")
        return self._steered(travel, pivots, lock * self._full_at(travel))

    def held_by(self, travel: float) -> FullLock:
        """What holds full lock at a travel. Raises CannotReach where the links do not get there."""
        linkage = self.linkage
        assert linkage is not None
        if linkage.how == "one rod across":
            return linkage.stop_on
        full = self._full_at(travel)
        where = 0.0 if linkage.stop_on == "slide" else travel  # a stop on the slide was set at ride height
        if (
            linkage.stop is not None
            and abs(self._steered(where, self.held(where), full).turn - self._stop_turn) < AT_STOP
        ):
            return linkage.stop_on
        return "end" if linkage.travel is not None and abs(full) >= linkage.travel else "links"

    def left_at_stop(self, travel: float) -> float | None:
        """Travel of rack or relay rod left at a travel of the wheel when the inner wheel stands turned as its stop lets it, mm.

        Minus: so much more than there is would be wanted, so its own end comes first. None with one rod across, where no stop
        or no end is known, or where the links do not turn the wheel so far.
        """
        linkage = self.linkage
        assert linkage is not None
        if linkage.inner is None or linkage.stop is None or linkage.travel is None:
            return None
        where = 0.0 if linkage.stop_on == "slide" else travel  # a stop on the slide was set at ride height
        slide = self._slide_at(where, self._stop_turn)
        if slide is None or slide * self._full <= 0 or not self._turns_to_stop(where, slide):
            return None
        return linkage.travel - abs(slide)

    def rack_held(self, travel: float, lock: float) -> Pose:
        """The left corner at a travel with rack or relay rod held where it is at this lock at ride height.

        `at` turns the wheel as far as its stop lets it at that travel; this holds the steering wheel. With one rod across the
        left wheel is as far from the middle as at ride height. Raises CannotReach where the links lock before.
        """
        assert self.linkage is not None
        if self.linkage.how == "one rod across":
            return self._at_one_rod(travel, self.held(travel), lock, stop_holds=False)
        return self._steered(travel, self.held(travel), lock * self._full)

    def _steered(self, travel: float, pivots: tuple[Vector, Vector], slide: float) -> Pose:
        assert self.linkage is not None
        inner = self.linkage.inner_at(slide)
        return self._pose(pivots, self._outer_circle(travel).angle(inner, self._rod, self._rod_side), inner)

    def _full_at(self, travel: float) -> float:
        """Slide of full lock at a travel: a stop on upright or arm holds the wheel's turn, one on rack or box the slide."""
        linkage = self.linkage
        assert linkage is not None
        if not travel or linkage.stop is None or linkage.stop_on == "slide":
            return self._full
        if travel not in self._full_slides:
            assert linkage.inner is not None
            most = self._full if linkage.travel is None else copysign(linkage.travel, self._full)
            at_stop = self._slide_at(travel, self._stop_turn)
            slide = most if at_stop is None else at_stop
            within = slide * most > 0 and (linkage.travel is None or abs(slide) <= linkage.travel)
            self._full_slides[travel] = slide if within and self._turns_to_stop(travel, slide) else most
        return self._full_slides[travel]

    def _at_one_rod(self, travel: float, pivots: tuple[Vector, Vector], lock: float, *, stop_holds: bool) -> Pose:
        """stop_holds: the stop holds the inner wheel's turn at every travel, not its way from the middle."""
        assert self.linkage is not None
        circle, centre_line = self._outer_circle(travel), self.linkage.centre_line
        straight = self._middle_of_one_rod(circle, centre_line)
        turned = abs(lock) * (self._stop_turn - straight if stop_holds else self._full)
        other = mirrored(circle.at(straight + turned), centre_line)
        if lock >= 0:
            inner = mirrored(circle.at(circle.angle(other, self._rod, self._rod_side)), centre_line)
            return self._pose(pivots, straight + turned, inner)
        return self._pose(pivots, circle.angle(other, self._rod, self._rod_side), other)

    def _middle_of_one_rod(self, circle: PivotCircle, centre_line: float) -> float:
        """With one rod both ends lie half its length from the centre line when both wheels turn alike."""
        wanted = centre_line + self._rod / 2 - circle.centre[1]
        if abs(wanted) > hypot(circle.u[1], circle.v[1]):
            raise CannotReach
        return nearest_turn(circle.u[1], circle.v[1], wanted)


def _frame(lower: Vector, upper: Vector) -> Frame:
    """Three square directions on the steering axis: the third along it, the first as far forward as it can be."""
    up = unit(minus(upper, lower))
    first = unit(minus(FORWARD, times(up[0], up)))
    return first, cross(up, first), up


def _circle(lower: Vector, frame: Frame, parts: Vector) -> PivotCircle:
    (a, b, c), (e1, e2, e3) = parts, frame
    return PivotCircle(
        plus(lower, times(c, e3)), plus(times(a, e1), times(b, e2)), plus(times(a, e2), times(-b, e1))
    )  # fmt: skip


def _root(function: Callable[[float], float], a: float, b: float, at_a: float, at_b: float) -> float:
    """Where a function is nought between two places of different sign: false position, never stuck on one side."""
    if abs(at_a) < CLOSE_ENOUGH:
        return a
    for _ in range(100):
        middle = b - at_b * (b - a) / (at_b - at_a)
        at_middle = function(middle)
        if abs(at_middle) < CLOSE_ENOUGH:
            return middle
        if at_middle * at_b < 0:
            a, at_a = b, at_b
        else:
            at_a /= 2
        b, at_b = middle, at_middle
    return b
