"""The hub bearing: what each of its two rows carries, how far that is from dents, and how long it runs.

A hub unit is two rows on one short stub, and the tyre levers on it. The catalogue's `P = X Fr + Y Fa` of a double row holds
no lever: in a corner at 1 g it can be a quarter of what one row really carries. So each row is judged on its own.
"""

from math import cos, hypot, pi, sin

from rules.graph.results import OutsideRange
from rules.measure.records import dataclass
from rules.measure.vectors import Vector
from rules.tables.static_safety import RollingElement

DYNAMIC_SHARE: dict[RollingElement, float] = {"ball": 2**-0.7, "roller": 2 ** (-7 / 9)}
"""Dynamic rating of one row, of a unit of two: the rows stand in the rating as i^0.7 and i^(7/9). ISO 281, from memory."""

STATIC_SHARE = 0.5
"""Static rating of one row, of a unit of two: the rows stand in the rating as i. ISO 76, from memory."""

STATIC_THRUST: dict[RollingElement, float] = {"ball": 0.38, "roller": 1.0}
"""Part of the thrust added to a row's static load. Ball: half of the 0.76 that bearing makers print for two rows at 25 deg,
the flattest, so the most careful, of their angles. Roller: the whole thrust, careful, from memory."""

DYNAMIC_THRUST: dict[RollingElement, float] = {"ball": 0.92, "roller": 1.5}
"""Part of the thrust added to a row's load for its life. Ball: the factor printed for two rows at 25 deg, taken for one row
alone, which is careful. Roller: careful, from memory."""

MOST_BEYOND_ROWS: dict[RollingElement, float] = {"ball": 0.72, "roller": 0.5}
"""How far apart from the rows pressure centres stand at most, over the hub body's diameter: pitch diameter x tangent of the
contact angle, balls at up to 40 deg, tapered rollers at up to 30, pitch diameter 0.85 of the body. Common practice, no source."""

LIFE_EXPONENT: dict[RollingElement, float] = {"ball": 3.0, "roller": 10 / 3}
WEIBULL_SLOPE: dict[RollingElement, float] = {"ball": 10 / 9, "roller": 9 / 8}
"""ISO 281 and ISO/TR 1281-1; the slopes from memory."""

ROLLING_SHARE = 0.97
"""Rolling radius over half the free diameter: 0.970 to 0.975 from tyre makers' turns per mile."""


@dataclass(frozen=True, slots=True)
class RowLoads:
    """Radial force on each row, N, up and forward as signed parts, and the thrust on the pair, N, either way."""

    outboard: tuple[float, float]
    """Forward, up."""
    inboard: tuple[float, float]
    thrust: float

    @property
    def outboard_size(self) -> float:
        """N."""
        return hypot(*self.outboard)

    @property
    def inboard_size(self) -> float:
        """N."""
        return hypot(*self.inboard)

    @property
    def worst(self) -> tuple[float, str]:
        """The larger radial force, N, and which row takes it."""
        return max((self.outboard_size, "outboard row"), (self.inboard_size, "inboard row"))


def row_loads(force: Vector, moment: Vector, spread: float) -> RowLoads:
    """What each row carries, from the hub's force, N, and moment, N mm, at the middle of the bearing.

    spread: mm between the two pressure centres on the wheel's axis, above nought. Each row holds at its pressure centre
    and takes no moment by itself. x forward, y outboard, z up; the moment about the wheel's axis is not the bearing's.
    Raises OutsideRange.

    Source: statics of a beam on two supports; one bearing maker's note sizes hub units on two pressure centres likewise.
    Standing 4000 N with the tyre's plane 10 mm outboard of the middle, spread 60 mm: 2666.67 and 1333.33 N.

    >>> rows = row_loads((0.0, 0.0, 4000.0), (40_000.0, 0.0, 0.0), 60.0)
    >>> round(rows.outboard[1], 2), round(rows.inboard[1], 2)
    (2666.67, 1333.33)
    """
    if spread <= 0:
        raise OutsideRange("the pressure centres of the bearing are not apart")
    along, thrust, up = force
    lift, push = moment[0] / spread, moment[2] / spread
    return RowLoads((along / 2 - push, up / 2 + lift), (along / 2 + push, up / 2 - lift), abs(thrust))


def with_pads(rows: RowLoads, drag: float, lever: float, spread: float, clock: float | None) -> RowLoads:
    """The rows with what the pads press on the rotor, which only the bearing holds.

    drag: N along the rotor's edge, plus where the wheel rolls forward. lever: middle of the rotor outboard of the middle of the
    bearing, mm. spread: as in `row_loads`, above nought. clock: rad from straight up round to the pads, plus ahead; None where
    it is not known, and then each row takes it in its worst direction. Source: statics of a beam on two supports.

    Pads behind a wheel that rolls forward drag the rotor down, against the ground's push; rotor in the middle, so half a row:

    >>> from math import pi
    >>> standing = row_loads((0.0, 0.0, 4000.0), (0.0, 0.0, 0.0), 60.0)
    >>> round(with_pads(standing, 10_000.0, 0.0, 60.0, -pi / 2).outboard[1], 6)
    -3000.0
    >>> with_pads(standing, 10_000.0, 0.0, 60.0, None).outboard_size
    7000.0
    """

    def pushed(row: tuple[float, float], share: float) -> tuple[float, float]:
        force = drag * share
        if clock is None:
            length = hypot(*row)
            more = 1 + abs(force) / length if length else 0.0
            return (row[0] * more, row[1] * more) if length else (abs(force), 0.0)
        return row[0] - force * cos(clock), row[1] + force * sin(clock)

    beyond = lever / spread
    return RowLoads(pushed(rows.outboard, 0.5 + beyond), pushed(rows.inboard, 0.5 - beyond), rows.thrust)


def static_row_load(radial: float, thrust: float, element: RollingElement) -> float:
    """Static equivalent load of one row, N; which row takes the thrust is not known, so either may.

    Source: `P0 = Fr + 0.76 Fa` of a pair at 25 deg (bearing makers' tables), halved to one row.

    >>> static_row_load(8000.0, 1000.0, "ball")
    8380.0
    """
    return radial + STATIC_THRUST[element] * thrust


def static_safety(static_rating: float, radial: float, thrust: float, element: RollingElement) -> float:
    """Static safety s0 of one row: its share of the unit's static rating C0, N, over its static load. Source: ISO 76.

    >>> round(static_safety(33_520.0, 8000.0, 1000.0, "ball"), 9)
    2.0
    """
    load = static_row_load(radial, thrust, element)
    if load <= 0:
        raise OutsideRange("the row carries nothing")
    return STATIC_SHARE * static_rating / load


def life_load(radial: float, thrust: float, element: RollingElement) -> float:
    """Dynamic equivalent load of one row, N. Source: `P = Fr + 0.92 Fa` of a pair at 25 deg, the thrust all on one row.

    >>> life_load(2000.0, 1000.0, "ball")
    2920.0
    """
    return radial + DYNAMIC_THRUST[element] * thrust


def basic_life(dynamic_rating: float, load: float, element: RollingElement) -> float:
    """L10, million turns, which 90 of 100 bearings reach. Ratings and loads in one unit. Raises OutsideRange.

    Source: ISO 281, L10 = (C / P)^p. Wentzell, Machine Design, Ex. 20.4 p. 436, as quoted elsewhere: C 3350,
    P 1095 lb, 28.63 million turns.

    >>> round(basic_life(3350.0, 1095.0, "ball"), 2)
    28.63
    """
    if load <= 0:
        raise OutsideRange("the bearing carries nothing")
    return float((dynamic_rating / load) ** LIFE_EXPONENT[element])


def mean_load(shares: tuple[tuple[float, float], ...], element: RollingElement) -> float:
    """The steady load of equal life, from (share of the distance, load, N). Shares add up to 1.

    Source: the cubic mean, from memory. 90 % at 4000, 8 % at 4780, 2 % at 11 220 N:

    >>> round(mean_load(((0.90, 4000.0), (0.08, 4780.0), (0.02, 11_220.0)), "ball"), 3)
    4556.274
    """
    p = LIFE_EXPONENT[element]
    return float(sum(share * load**p for share, load in shares) ** (1 / p))


def life_of_two_rows(first: float, second: float, element: RollingElement) -> float:
    """L10 of the pair from the L10 of each row: less than the worse one, because either may fail. Source: ISO/TR 1281-1,
    from memory.

    >>> round(life_of_two_rows(100.0, 100.0, "ball"), 1)
    53.6
    """
    e = WEIBULL_SLOPE[element]
    return float((first**-e + second**-e) ** (-1 / e))


def turns_per_kilometre(diameter: float) -> float:
    """Turns of the wheel in a kilometre, from the tyre's outside diameter, mm. 0.80 m gives 410.193.

    >>> round(turns_per_kilometre(800.0), 3)
    410.193
    """
    return 1e6 / (pi * diameter * ROLLING_SHARE)


def life_distance(million_turns: float, diameter: float) -> float:
    """Kilometres that so many million turns are, on a tyre of this diameter, mm.

    >>> round(life_distance(585.998, 800.0) / 1e6, 5)
    1.42859
    """
    return million_turns * 1e6 / turns_per_kilometre(diameter)
