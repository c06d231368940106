"""A straight rod or leg under push: where it buckles. mm, MPa, N."""

from math import pi, sqrt

from rules.graph.results import OutsideRange
from rules.strength.section import Section

STEEL_MODULUS = 200_000.0
"""MPa. Shigley 9th ed. Table A-5 has 207 GPa for carbon steel; 200 is the careful round figure, from memory."""


def column_strength(section: Section, length: float, yields: float) -> float:
    """Push, N, at which a straight steel rod with a pin at each end gives.

    length: between the pins, mm, above nought. yields: MPa. Slender rods by Euler, pi^2 E A / (l/k)^2; stocky ones by Johnson's
    parabola, A S (1 - S (l/k)^2 / (4 pi^2 E)), which meets Euler's curve at half of yield; it is never above yield. A bend in
    the rod, or a push beside its middle, is not in it. Source: Shigley's Mechanical Engineering Design, 9th ed., eqs 4-43 and
    4-48, ends both pinned (from memory). Raises OutsideRange for no length.

    >>> from rules.strength.section import round_bar
    >>> round(column_strength(round_bar(20.0), 1000.0, 300.0))
    15503
    """
    if length <= 0:
        raise OutsideRange("the two ends of the rod are in one place")
    least = min(section.inertia_u, section.inertia_v)
    slender = length / sqrt(least / section.area)
    where_they_meet = sqrt(2 * pi**2 * STEEL_MODULUS / yields)
    if slender >= where_they_meet:
        return pi**2 * STEEL_MODULUS * section.area / slender**2
    return section.area * yields * (1 - yields * slender**2 / (4 * pi**2 * STEEL_MODULUS))
