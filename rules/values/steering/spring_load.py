"""What the spring does at the wheel: what it carries, how stiff it is there, how often the car swings on it, coil bind."""

from math import copysign, pi, sqrt

from rules.graph.asking import given, need
from rules.graph.declare import value
from rules.graph.results import NotJudged, OutsideRange, Waits
from rules.measure.quantity import GRAVITY
from rules.measure.units import Kg, Mm, NewtonPerMm, PerMinute, Ratio, Share
from rules.motion.front_end import FrontEnd
from rules.motion.points import CannotReach
from rules.motion.search import last_that_holds
from rules.motion.shock import BEND, Shock, rate_at_wheel, shock_length, shock_ratio_at
from rules.motion.sweep import Sweep
from rules.sheet.spring import Spring
from rules.tables import sources
from rules.values.steering.spring import TURNS_WITH_ARM
from rules.values.steering.travel import BUMP_AND_DROOP, end_of

NO_SPRING = "the spring's rate is not entered, so the spring was not judged"
VIRTUAL_WORK = sources.STATICS.saying("virtual work: what the wheel feels is the spring's force times the ratio")


@value(
    "spring",
    formula="how much the shock closes for a mm the wheel rises, at full {which}",
    source=TURNS_WITH_ARM,
    each=BUMP_AND_DROOP,
)
def spring_ratio_which(
    shock_ends: Shock, hung_front: FrontEnd, travel_reached: Sweep, which_travel: Mm, which: str
) -> Ratio:
    """Spring ratio at full {which}, over the last [0.08 in | 2 mm] of the travel.

    Its end half way along an arm of 300 mm, 400 below the hinge's own end: the shock is root(182500 - 800 x half the rise)
    long, so the ratio is 200 / length: 200 / 398.1206 = 0.5024 in bump, 200 / 454.4227 = 0.4401 in droop.

    >>> front, sweep, shock = parallel_arms(), parallel_sweep(), shock_half_way()
    >>> [round(spring_ratio_which(shock, front, sweep, 60.0, end), 3) for end in ("bump", "droop")]
    [0.502, 0.441]
    """
    end = end_of(which, which_travel)
    return shock_ratio_at(hung_front, shock_ends, end - BEND if end > 0 else end + BEND)


@value(
    "spring",
    formula="spring free - seats apart with the shock open",
    source=sources.GEOMETRY,
    stands_for="spring.preload",
)
def squeeze_by_seats(free_length: Mm | None, seats_apart: Mm | None) -> Mm:
    """How much shorter than free the spring stands with the shock open, by the room it has, mm; minus where it hangs loose.

    >>> squeeze_by_seats(360.0, 350.0)
    10.0
    """
    if seats_apart is None:
        raise NotJudged("how far apart the spring's seats are is not entered", "spring.seats_apart")
    if free_length is None:
        raise Waits("spring.free_length")
    return free_length - seats_apart


@value("spring", formula="squeezed with the shock open + shock open - shock at ride height", source=sources.GEOMETRY)
def spring_squeeze(spring: Spring, shock_at_ride: Mm) -> Mm:
    """How much shorter than free the spring stands at ride height, mm.

    >>> spring_squeeze(Spring.record({"rate": 40.0, "preload": 20.0, "shock_longest": 560.0}), 500.0)
    80.0
    """
    if given(spring, "rate") is None:
        if any(given(spring, key) is not None for key in ("preload", "free_length", "solid_length")):
            raise Waits("spring.rate")  # a spring is begun, so whether it holds the corner up is asked
        raise NotJudged(NO_SPRING, "spring.rate")
    need(spring, "preload", "shock_longest")
    return spring.preload + spring.shock_longest - shock_at_ride


@value("spring", formula="rate x squeeze x spring ratio / (corner weight x g)", source=sources.STATICS)
def spring_carries(spring_squeeze: Mm, spring_rate: NewtonPerMm, spring_ratio: Ratio, corner_weight: Kg) -> Share:
    """How much of the corner's weight the spring carries at ride height as entered. Wheel and hub are not carried by it.

    80 mm of 40 N/mm at a ratio of 0.6 are 1920 N; 250 kg weigh 2451.66.

    >>> round(spring_carries(80.0, 40.0, 0.6, 250.0), 4)
    0.7831
    """
    return spring_rate * spring_squeeze * spring_ratio / (corner_weight * GRAVITY)


@value(
    "spring",
    formula="rate x ratio^2 + rate x squeeze x change of the ratio for a mm of travel, at ride height",
    source=VIRTUAL_WORK,
)
def wheel_rate(spring_rate: NewtonPerMm, spring_squeeze: Mm, shock_ends: Shock, hung_front: FrontEnd) -> NewtonPerMm:
    """How stiff the spring is at the wheel at ride height, N/mm.

    The ratio is 200 / root(182500 - 400 x rise), so it grows by 40000 / 427.2002^3 = 0.000513 for a mm:
    40 x (0.46816^2 + 80 x 0.000513) = 10.409.

    >>> front, shock = parallel_arms(), shock_half_way()
    >>> round(wheel_rate(40.0, 80.0, shock, front), 3)
    10.409
    """
    try:
        return rate_at_wheel(hung_front, shock_ends, 0.0, spring_rate, spring_squeeze)
    except CannotReach:
        raise OutsideRange(
            "the arms lock at ride height",
            change="Put right the arms' inner pivots: lower arm front, height, or upper arm front, height, first.",
        ) from None


INSIDE_END = 2.0
"""mm inside an end of the travel where the rate there is worked out: how the ratio bends is looked for on both sides."""


@value(
    "spring",
    formula="as at ride height, [0.08 in | 2 mm] inside full {which}; nought where the spring is loose there",
    source=VIRTUAL_WORK,
    each=BUMP_AND_DROOP,
)
def wheel_rate_which(
    spring_rate: NewtonPerMm,
    spring_squeeze: Mm,
    shock_at_ride: Mm,
    shock_at_which: Mm,
    shock_ends: Shock,
    hung_front: FrontEnd,
    which_travel: Mm,
    which: str,
) -> NewtonPerMm:
    """How stiff the spring is at the wheel at full {which}, N/mm; a bump rubber is not in it.

    58 up the ratio is 200 / 399.1240 and grows by 40000 / 399.1240^3 for a mm, the spring 80 + 29.0796 short:
    40 x (0.25110 + 109.0796 x 0.000629) = 12.789. 58 down 200 / 453.5416, 40000 / 453.5416^3 and 80 - 27.2225: 8.683.

    >>> front, shock = parallel_arms(), shock_half_way()
    >>> ends = {"bump": 398.1206, "droop": 454.4227}
    >>> [round(wheel_rate_which(40.0, 80.0, 427.2002, long, shock, front, 60.0, end), 3) for end, long in ends.items()]
    [12.789, 8.683]
    """
    end = end_of(which, which_travel)
    inside = end - copysign(INSIDE_END, end)
    squeezed = spring_squeeze + shock_at_ride - shock_at_which
    return rate_at_wheel(hung_front, shock_ends, inside, spring_rate, squeezed) if squeezed > 0 else 0.0


@value(
    "spring",
    formula="60 x root(wheel rate / corner weight) / (2 x pi): the whole corner swings on the spring, no tyre",
    source=sources.PHYSICS,
)
def ride_frequency(wheel_rate: NewtonPerMm, corner_weight: Kg) -> PerMinute:
    """How often a minute the corner would swing up and down on its spring.

    25 N/mm under 250 kg: root(25000 / 250) = 10 rad/s, 95.49 a minute.

    >>> round(ride_frequency(25.0, 250.0), 2)
    95.49
    """
    if wheel_rate <= 0:
        raise OutsideRange(
            "at ride height the spring pushes less as the wheel rises: it would not hold the car up",
            change="Put right where the shock stands: shock on the arm, from centre, or shock on the frame, from centre, "
            "first; or the spring's free length.",
        )
    return 60 * sqrt(1000 * wheel_rate / corner_weight) / (2 * pi)


@value(
    "spring",
    formula="the travel at which the shock is as long as closed and the rubber together; beyond full bump in a straight line",
    source=TURNS_WITH_ARM,
)
def bump_rubber_touched(
    spring: Spring,
    shock_ends: Shock,
    hung_front: FrontEnd,
    travel_reached: Sweep,
    bump_travel: Mm,
    droop_travel: Mm,
) -> Mm:
    """How far the wheel rises from ride height until the rubber on the shock's rod is touched, mm; minus below ride height.

    The shock is root(182500 - 400 x rise) long; closed 380 with a rubber of 30: 410^2 = 168100 is left at 36.

    >>> entered = Spring.record({"shock_shortest": 380.0, "bump_rubber": 30.0})
    >>> round(bump_rubber_touched(entered, shock_half_way(), parallel_arms(), parallel_sweep(), 60.0, 60.0), 3)
    36.0
    """
    if given(spring, "bump_rubber") is None:
        raise NotJudged(
            "no bump rubber on the shock's rod is entered, so where it is touched was not judged", "spring.bump_rubber"
        )
    need(spring, "shock_shortest")
    touched = spring.shock_shortest + spring.bump_rubber

    def free(travel: float) -> bool:
        return shock_length(hung_front, shock_ends, travel) >= touched

    if free(bump_travel):
        left = shock_length(hung_front, shock_ends, bump_travel) - touched
        closes = shock_ratio_at(hung_front, shock_ends, bump_travel - BEND)
        return bump_travel + left / max(closes, 0.05)
    return last_that_holds(free, -droop_travel, bump_travel) if free(-droop_travel) else -droop_travel


@value(
    "spring",
    formula="free length - squeezed with the shock open - (shock open - shock at full bump) - solid length",
    source=sources.GEOMETRY,
)
def spring_left_at_bump(spring: Spring, shock_at_bump: Mm) -> Mm:
    """Room left between the spring's coils at full bump, mm; minus where they touch before.

    Free 300, 20 squeezed, the shock closes by 160: 120, of which 100 are solid.

    >>> entered = {"free_length": 300.0, "solid_length": 100.0, "preload": 20.0, "shock_longest": 560.0}
    >>> spring_left_at_bump(Spring.record(entered), 400.0)
    20.0
    """
    if given(spring, "free_length") is None and given(spring, "solid_length") is None:
        fields = ("spring.free_length", "spring.solid_length")
        raise NotJudged("the spring's free and solid length are not entered, so coil bind was not judged", *fields)
    wanted = [key for key in ("free_length", "solid_length", "preload", "shock_longest") if given(spring, key) is None]
    if wanted:
        raise Waits(*(f"spring.{key}" for key in wanted))
    closes = spring.shock_longest - shock_at_bump
    return spring.free_length - spring.preload - closes - spring.solid_length
