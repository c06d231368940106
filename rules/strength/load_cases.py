"""The load cases of one corner: which force acts on the tyre, and where.

Axes of `corner_loads`: x forward, y outboard, z up, origin under the wheel on the ground. The wheel stands straight ahead.
Multiples are of the load standing on the corner. A tyre pulls along the ground no harder than it is pressed down (a grip
of 1), so a braking or cornering multiple above 1 presses the wheel down as much: the car stands on its nose, or leans.
"""

from dataclasses import dataclass
from math import hypot

from rules.measure.vectors import Vector, minus, plus
from rules.strength.balance import Linkage, balance, moment_of
from rules.strength.corner_loads import CaseLoads, Places

Push = tuple[Vector, Vector]
"""A force, N, and the point it acts at, mm."""


@dataclass(frozen=True, slots=True)
class Multiples:
    """Times the standing load, each above nought."""

    bump: float
    braking: float
    cornering: float
    landing: float
    rock: float
    steering_stop: float


@dataclass(frozen=True, slots=True)
class LoadCase:
    """What the ground, or a rock, does to the tyre. braked: the wheel is held by its brake."""

    name: str
    pushes: tuple[Push, ...]
    braked: bool = False


def load_cases(standing: float, radius: float, multiples: Multiples) -> tuple[LoadCase, ...]:
    """Every case of a corner. standing: load on the tyre at rest, N. radius: spindle above the ground, mm.

    Source: common practice, after course notes on vehicle structures (ch. 9); see rules/tables/load_multiples.py.

    >>> cases = load_cases(4000.0, 400.0, Multiples(3.0, 1.0, 1.0, 5.0, 4.5, 2.5))
    >>> cases[3].name, cases[3].pushes
    ('cornering', (((0.0, -4000.0, 4000.0), (0.0, 0.0, 0.0)),))
    """
    ground, centre, front_edge = (0.0, 0.0, 0.0), (0.0, 0.0, radius), (radius, 0.0, radius)

    def on_the_ground(up: float, back: float = 0.0, inboard: float = 0.0) -> Push:
        return (0.0 - back * standing, 0.0 - inboard * standing, max(up, hypot(back, inboard)) * standing), ground

    up = on_the_ground(1.0)
    braking, cornering = multiples.braking, multiples.cornering
    return (
        LoadCase("standing", (up,)),
        LoadCase("bump", (on_the_ground(multiples.bump),)),
        LoadCase("braking", (on_the_ground(1.0, back=braking),), braked=True),
        LoadCase("cornering", (on_the_ground(1.0, inboard=cornering),)),
        LoadCase("combined", (on_the_ground(multiples.bump, back=braking, inboard=cornering),), braked=True),
        LoadCase("landing", (on_the_ground(multiples.landing),)),
        LoadCase("rock", (up, ((-multiples.rock * standing, 0.0, 0.0), centre))),
        LoadCase("steering stop", (up, ((0.0, -multiples.steering_stop * standing, 0.0), front_edge))),
    )


def case_loads(case: LoadCase, places: Places, linkage: Linkage, spring_on_lower: bool) -> CaseLoads:
    """What one case does to every joint and to the hub. Raises OutsideRange where the joints cannot hold the upright."""
    force = plus(*(push for push, _ in case.pushes))
    moment = moment_of(case.pushes)
    held = balance(linkage, force, moment)
    at_hub = moment_of(case.pushes, about=places.bearing)
    brake_torque = moment_of(case.pushes, about=places.wheel_centre)[1] if case.braked else 0.0
    upper, lower = (held.guiding, held.carrying) if spring_on_lower else (held.carrying, held.guiding)
    return CaseLoads(
        case=case.name,
        contact=force,
        hub_force=force,
        hub_moment=minus(at_hub, (0.0, brake_torque, 0.0)),
        upper_pivot=upper,
        lower_pivot=lower,
        tie_rod=held.tie_rod,
        brake_torque=brake_torque,
    )
