"""Where the corner comes to rest on its spring, and whether the spring is still held at full droop."""

from rules.graph.asking import given, need
from rules.graph.declare import value
from rules.graph.results import NotJudged, OutsideRange
from rules.measure.display import show
from rules.measure.quantity import GRAVITY, Units
from rules.measure.records import NamedTuple
from rules.measure.units import Kg, Mm, NewtonPerMm
from rules.motion.front_end import FrontEnd
from rules.motion.search import last_that_holds
from rules.motion.shock import NEAR_RIDE, Shock, shock_length, shock_ratio_at
from rules.motion.sweep import Sweep
from rules.sheet.spring import Spring
from rules.tables import sources
from rules.values.steering.spring import TURNS_WITH_ARM
from rules.values.steering.spring_load import NO_SPRING

CARRIED = (0.7, 0.9)
"""Share of a front corner's weight that its spring carries: wheel, tyre, hub and brake, a tenth to three tenths of it, stand
below. Common practice, no source."""
HALVINGS = 14
"""From a travel of 200 mm down to about a hundredth of one."""


class SpringRest(NamedTuple):
    """Travel of the wheel, mm, up positive, at which the spring carries the least, the middle and the most of what is usual.

    At -droop travel it pushes the wheel down to strap or shock; at bump travel it does not hold the corner up at all.
    """

    least: float
    middle: float
    most: float

    def words_in(self, units: Units) -> str:
        """In one line, in a sheet's units, for the written-out working of what rests on it."""
        middle, least, most = (show(travel, "mm", units) for travel in (self.middle, self.least, self.most))
        return f"the wheel stands {middle} above ride height as drawn ({least} to {most})"


@value(
    "spring",
    formula="the travel at which rate x squeeze there x spring ratio there is 0.8 of the corner's weight; and 0.7, 0.9 of it",
    source=(TURNS_WITH_ARM, sources.STATICS),
)
def rest_on_spring(
    spring_rate: NewtonPerMm,
    spring_squeeze: Mm,
    wheel_rate: NewtonPerMm,
    shock_at_ride: Mm,
    shock_ends: Shock,
    hung_front: FrontEnd,
    travel_reached: Sweep,
    bump_travel: Mm,
    droop_travel: Mm,
    corner_weight: Kg,
) -> SpringRest:
    """Where between full droop and full bump the wheel stands when the spring carries its share, for 0.7, 0.8 and 0.9.

    The shock is root(182500 - 400 x rise) long and its ratio 200 / length, so 8000 x (507.2002 / length - 1) N stand against
    0.7, 0.8 and 0.9 of 2451.66 N: lengths of 417.614 and 407.335 are rises of 20.25 and 41.44; the last is beyond full bump.

    >>> front, sweep, shock = parallel_arms(), parallel_sweep(), shock_half_way()
    >>> rest = rest_on_spring(40.0, 80.0, 10.4, 427.2002, shock, front, sweep, 60.0, 60.0, 250.0)
    >>> [round(travel, 1) for travel in rest]
    [20.2, 41.4, 60.0]
    """
    if wheel_rate <= 0:
        raise OutsideRange(
            "the spring would not hold the car up",
            change="Put right the shock's ends first: shock on the arm, from centre, or shock on the frame, from centre.",
        )

    def push(travel: float) -> float:
        squeeze = spring_squeeze + shock_at_ride - shock_length(hung_front, shock_ends, travel)
        inside = min(max(travel, NEAR_RIDE - droop_travel), bump_travel - NEAR_RIDE)
        return spring_rate * max(0.0, squeeze) * shock_ratio_at(hung_front, shock_ends, inside)

    def rest(share: float) -> float:
        load = share * corner_weight * GRAVITY
        if push(-droop_travel) >= load:
            return -droop_travel
        if push(bump_travel) < load:
            return bump_travel
        return last_that_holds(lambda travel: push(travel) < load, -droop_travel, bump_travel, HALVINGS)

    least, most = CARRIED
    return SpringRest(rest(least), rest((least + most) / 2), rest(most))


@value(
    "spring",
    formula="ride height as drawn - where it rests with 0.8 of the corner's weight on the spring",
    source=sources.STATICS,
)
def settles_higher(rest_on_spring: SpringRest) -> Mm:
    """How much higher than drawn the corner comes to rest on its spring, mm; minus lower. Scale and tape decide.

    >>> settles_higher(SpringRest(20.0, 41.0, 60.0))
    -41.0
    """
    return -rest_on_spring.middle


@value("spring", formula="squeezed with the shock open + shock open - shock at full droop", source=sources.GEOMETRY)
def spring_squeeze_at_droop(spring: Spring, shock_at_droop: Mm) -> Mm:
    """How much shorter than free the spring stands at full droop, mm; minus where it hangs loose by as much.

    10 loose with the shock open at 560; a strap holds it at 555.

    >>> spring_squeeze_at_droop(Spring.record({"rate": 40.0, "preload": -10.0, "shock_longest": 560.0}), 555.0)
    -5.0
    """
    if given(spring, "rate") is None and given(spring, "preload") is None:
        raise NotJudged(NO_SPRING, "spring.rate", "spring.preload")
    need(spring, "preload", "shock_longest")
    return spring.preload + spring.shock_longest - shock_at_droop
