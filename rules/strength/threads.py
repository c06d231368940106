"""Screw threads: stress areas, and how much thread a joint needs. mm, mm2, MPa."""

from math import pi, sqrt

from rules.measure.closeness import CLOSENESS
from rules.measure.quantity import INCH


def unified(pitch: float) -> bool:
    """Whether a pitch in mm is a whole count of threads an inch. No ISO 261 pitch is.

    >>> unified(1.27), unified(1.25)
    (True, False)
    """
    per_inch = INCH / pitch
    return abs(per_inch - round(per_inch)) < CLOSENESS * per_inch


def stress_area(diameter: float, pitch: float) -> float:
    """Tensile stress area, mm2. Unified: pi/4 (d - 0.9743/n)2, ASME B1.1; metric: pi/4 (d - 0.9382 p)2, ISO 898-1.

    >>> round(stress_area(12.0, 1.75), 1), round(stress_area(12.7, 1.27) / 25.4**2, 4)
    (84.3, 0.16)
    """
    return pi / 4 * (diameter - (0.9743 if unified(pitch) else 0.9382) * pitch) ** 2


def root_diameter(diameter: float, pitch: float) -> float:
    """Diameter at the bottom of the bolt's thread, mm: d - 1.299 p unified (Shigley Table 8-2), d - 1.2269 p metric.

    >>> round(root_diameter(12.7, 25.4 / 13) ** 2 * 0.785398 / 25.4**2, 4)
    0.1257
    """
    return diameter - (1.299038 if unified(pitch) else 1.226869) * pitch


def least_engagement(diameter: float, pitch: float, bolt_tensile: float, hole_tensile: float) -> float:
    """Thread engagement, mm, at which the bolt breaks before either thread strips. Tensile strengths in MPa.

    Source: FED-STD-H28/2B (1991), formula 14 and its ratio J for a weaker hole, with the least metal that classes 2A and
    2B (unified) or 6g and 6H (metric) allow; tolerance formulas of ASME B1.1 and ISO 965-1 from memory. 6 to 40 mm.
    No allowance for thread lost at the chamfer: count full threads only.

    >>> round(least_engagement(12.7, 25.4 / 13, 800.0, 800.0) / 25.4, 2)
    0.36
    """
    pitch_least, minor_most, major_least, pitch_most = _thread_limits(diameter, pitch)
    bolt_strips = pi * minor_most * (0.5 + (pitch_least - minor_most) / (sqrt(3) * pitch))
    hole_strips = pi * major_least * (0.5 + (major_least - pitch_most) / (sqrt(3) * pitch))
    both_alike = 2 * stress_area(diameter, pitch) / bolt_strips
    return both_alike * max(1.0, bolt_strips * bolt_tensile / (hole_strips * hole_tensile))


def _thread_limits(diameter: float, pitch: float) -> tuple[float, float, float, float]:
    """Bolt's least pitch diameter, hole's greatest minor, bolt's least major, hole's greatest pitch diameter, mm."""
    basic_pitch, basic_minor = diameter - 0.649519 * pitch, diameter - 1.082532 * pitch
    if unified(pitch):
        large, fine = diameter / INCH, pitch / INCH
        tolerance = INCH * (0.0015 * large ** (1 / 3) + 0.0015 * sqrt(large) + 0.015 * fine ** (2 / 3))
        under, hole_tolerance = 0.3 * tolerance, 1.3 * tolerance
        major_tolerance, minor_tolerance = INCH * 0.06 * fine ** (2 / 3), INCH * (0.25 * fine - 0.4 * fine**2)
    else:
        tolerance = 0.09 * pitch**0.4 * diameter**0.1
        under, hole_tolerance = 0.015 + 0.011 * pitch, 1.32 * tolerance
        major_tolerance, minor_tolerance = 0.18 * pitch ** (2 / 3) - 0.00315 / sqrt(pitch), 0.23 * pitch**0.7
    return (
        basic_pitch - under - tolerance,
        basic_minor + minor_tolerance,
        diameter - under - major_tolerance,
        basic_pitch + hole_tolerance,
    )
