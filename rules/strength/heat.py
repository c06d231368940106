"""Heat in a brake rotor: the mean rise of the braking band, and the rise of its face while the stop lasts.

Grey iron: 50 W/(m K), 460 J/(kg K), 7200 kg/m3, the set most textbooks print (from memory). Papers give 36 to 54, 460 to
586 and 7085 to 7200; the lower heat capacity gives the higher rise. No heat leaves the ring during a stop, and none
goes into the pads: both on the safe side.
"""

from math import exp

from rules.graph.results import OutsideRange
from rules.measure.records import dataclass

LAYERS, TIME_STEPS = 12, 120
"""Of the difference scheme: for iron up to 20 mm deep, five times as many move the peak by less than 0.2 %."""


@dataclass(frozen=True, slots=True)
class Iron:
    """Conductivity, W/(m K); specific heat, J/(kg K); density, kg/m3."""

    conductivity: float = 50.0
    specific_heat: float = 460.0
    density: float = 7200.0


GREY_IRON = Iron()


def kinetic_energy(mass: float, speed: float) -> float:
    """J, for a mass in kg stopped from a speed in m/s. Rotating parts are not added.

    >>> round(kinetic_energy(1500.0, 128 / 3.6), 1)
    948148.1
    """
    return mass * speed**2 / 2


def bulk_rise(energy: float, ring_mass: float, iron: Iron = GREY_IRON) -> float:
    """Mean rise, deg C, of a braking band (no hat, no flange), kg, that takes in so many J.

    Source: Day, Braking of Road Vehicles, section 8.4, eq. 8.14.

    >>> round(bulk_rise(331851.9, 5.21153), 2)
    138.43
    """
    return energy / (ring_mass * iron.specific_heat)


def rise_after_run(one_stop: float, stops: int, seconds: float, time_constant: float | None) -> float:
    """Rise over the air, deg C, straight after the last of equal stops, each adding `one_stop`.

    Between stops the ring cools toward the air; time_constant in s, None when it does not cool at all.

    >>> rise_after_run(50.0, 4, 60.0, None)
    200.0
    >>> round(rise_after_run(50.0, 200, 60.0, 600.0), 1)
    525.4
    """
    kept = 1.0 if time_constant is None else exp(-seconds / time_constant)
    rise = 0.0
    for _ in range(stops):
        rise = rise * kept + one_stop
    return rise


def time_constant(ring_mass: float, area: float, transfer: float, iron: Iron = GREY_IRON) -> float:
    """s, in which the ring's rise over the air falls to 37 %. area in m2, transfer in W/(m2 K).

    >>> round(time_constant(5.0, 0.1, 10.0))
    2300
    """
    return ring_mass * iron.specific_heat / (transfer * area)


def peak_face_rise(
    energy: float,
    area: float,
    depth: float,
    seconds: float,
    iron: Iron = GREY_IRON,
    layers: int = LAYERS,
    time_steps: int = TIME_STEPS,
) -> float:
    """Greatest rise of a braked face, deg C, in one even stop: the flow of heat falls evenly to nought.

    energy: J into this face. area: its m2. depth: m of iron behind it that is this face's own, its far side passing no
    heat: half of a solid rotor heated on both sides, one plate of a vented one. seconds: the stop. One-dimensional,
    layers by the Crank-Nicolson scheme. Raises OutsideRange unless all are above nought.

    >>> round(peak_face_rise(331851.9 / 2, 0.0452389, 0.008, 5.17774))
    153
    """
    if min(energy, area, depth, seconds) <= 0:
        raise OutsideRange("a rotor's face needs heat, area, depth and time above nought")
    flow, step, thick = 2 * energy / (area * seconds), seconds / time_steps, depth / layers
    mesh = iron.conductivity / (iron.density * iron.specific_heat) * step / thick**2 / 2
    heated = step / (iron.density * iron.specific_heat * thick)
    to_face = thick / 2 / iron.conductivity
    # Half-sum of the differences before and after each step: one tridiagonal system, factored once.
    diagonal = [1 + mesh, *(1 + 2 * mesh for _ in range(layers - 2)), 1 + mesh]
    ratios = [-mesh / diagonal[0]]
    for row in range(1, layers - 1):
        ratios.append(-mesh / (diagonal[row] + mesh * ratios[-1]))
    rises, peak = [0.0] * layers, 0.0
    for count in range(time_steps):
        middle = flow * (1 - (count + 0.5) / time_steps)
        shared = _after_half(rises, mesh)
        shared[0] += middle * heated
        rises = _solved(shared, diagonal, ratios, mesh)
        peak = max(peak, rises[0] + flow * (1 - (count + 1) / time_steps) * to_face)
    return peak


def _after_half(rises: list[float], mesh: float) -> list[float]:
    """The explicit half of a step; no heat passes either end."""
    padded = [rises[0], *rises, rises[-1]]
    return [
        rise + mesh * (left - 2 * rise + right) for left, rise, right in zip(padded, rises, padded[2:], strict=False)
    ]


def _solved(right: list[float], diagonal: list[float], ratios: list[float], mesh: float) -> list[float]:
    """The implicit half: elimination downward, then back."""
    right[0] /= diagonal[0]
    for row in range(1, len(right)):
        pivot = diagonal[row] + mesh * ratios[row - 1]
        right[row] = (right[row] + mesh * right[row - 1]) / pivot
    for row in range(len(right) - 2, -1, -1):
        right[row] -= ratios[row] * right[row + 1]
    return right
