"""Fillet welds: their size, and what they carry when the weld is treated as a line.

A group of runs is worked out as lines without thickness; a force in N and a moment in N mm then give a force in N on
each mm of weld, and that over the throat gives a stress. Axes of the joint's own: p along the runs, q from one run to
the next, n square to both. Everything is elastic and for steady loads. None of it is a rule for fatigue.

Sources: unit properties, Shigley's Mechanical Engineering Design, 8th ed. Table 9-1 and 9th ed. Table 9-2; allowables,
same, Table 9-4, and AISC 360-16 Table J2.5 and clause J4.2; sizes, AISC 360-16 clause J2.2b.
"""

from collections.abc import Iterable
from math import cos, pi, sin, sqrt

from rules.graph.results import OutsideRange
from rules.measure.closeness import reaches
from rules.measure.quantity import INCH
from rules.measure.records import dataclass
from rules.measure.vectors import Vector

THROAT = 0.707
"""Throat over leg of a fillet with equal legs, to the three figures the tables use."""
WELD_METAL = 0.60
"""Shear strength of weld metal over the tensile strength of its electrode. AISC 360-16 Table J2.5."""
RUPTURE, YIELD = 0.60, 0.60
"""Shear strength of the parts beside the weld, over tensile strength and over yield. AISC 360-16 clause J4.2."""
OMEGA_RUPTURE, OMEGA_YIELD = 2.00, 1.50
"""What the code divides those by for steady loads: 0.30 of the electrode's tensile strength on the throat; on the part,
the lesser of 0.30 of its tensile strength and 0.40 of its yield."""
SHORTEST_IN_LEGS = 4.0
ROUND_POINTS = 36
"""Points looked at round a ring: the worst lies between two of them by 0.4 % at most."""


@dataclass(frozen=True, slots=True)
class WeldLines:
    """Runs of weld as lines. length in mm; about_run and about_cross in mm3, the lines' second moments about the axis
    along the runs and about the one across them; points (p, q) in mm, where the worst can lie."""

    length: float
    about_run: float
    about_cross: float
    points: tuple[tuple[float, float], ...]

    @property
    def about_normal(self) -> float:
        """Polar second moment, mm3: what carries a moment in the plane of the joint."""
        return self.about_run + self.about_cross


def one_line(run: float, throat: float) -> WeldLines:
    """One run, mm, whose own throat is all that carries bending about its line. mm, both above nought.

    >>> one_line(120.0, 0.0).about_cross == 120.0**3 / 12
    True
    """
    half, across = run / 2, throat / 2
    corners = tuple((p, q) for p in (-half, half) for q in (-across, across))
    return WeldLines(run, run * throat**2 / 12, run**3 / 12, corners)


def two_lines(run: float, apart: float) -> WeldLines:
    """Two parallel runs, mm, so far apart, mm: d (3 b^2 + d^2) / 6 in torsion.

    >>> round(two_lines(2.0, 2.0).about_normal, 4)
    5.3333
    """
    half, across = run / 2, apart / 2
    corners = tuple((p, q) for p in (-half, half) for q in (-across, across))
    return WeldLines(2 * run, run * apart**2 / 2, run**3 / 6, corners)


def rectangle(run: float, apart: float) -> WeldLines:
    """All round a rectangle, sides in mm: (b + d)^3 / 6 in torsion.

    >>> round(rectangle(2.0, 3.0).about_normal, 2)
    20.83
    """
    half, across = run / 2, apart / 2
    corners = tuple((p, q) for p in (-half, half) for q in (-across, across))
    about_run = apart**2 * (3 * run + apart) / 6
    return WeldLines(2 * (run + apart), about_run, run**2 * (3 * apart + run) / 6, corners)


def ring(diameter: float) -> WeldLines:
    """All round a tube or cup of this outside diameter, mm: 2 pi r^3 in torsion, half of it in bending.

    >>> round(ring(2.0).about_normal, 4)
    6.2832
    """
    radius = diameter / 2
    turns = (2 * pi * step / ROUND_POINTS for step in range(ROUND_POINTS))
    points = tuple((radius * cos(turn), radius * sin(turn)) for turn in turns)
    return WeldLines(2 * pi * radius, pi * radius**3, pi * radius**3, points)


def greatest_force(lines: WeldLines, force: Vector, moment: Vector) -> float:
    """N on one mm of weld at the worst point. force in N, moment in N mm about the lines' middle, both along (p, q, n).

    Direct force is shared evenly, moments by distance; the parts add as vectors.

    >>> round(greatest_force(two_lines(2.0, 2.0), (0.0, -1.0, 0.0), (0.0, 0.0, -7.0)) / (0.707 * 5 / 16), 3)
    9.236
    """
    even_p, even_q, even_n = (part / lines.length for part in force)
    bend_p = moment[0] / lines.about_run if moment[0] else 0.0
    bend_q, twist = moment[1] / lines.about_cross, moment[2] / lines.about_normal
    squares = (
        (even_p - twist * q) ** 2 + (even_q + twist * p) ** 2 + (even_n + bend_p * q - bend_q * p) ** 2
        for p, q in lines.points
    )
    return sqrt(max(squares))


def throat(leg: float) -> float:
    """Throat of a fillet with equal legs, mm.

    >>> round(throat(10.0), 9)
    7.07
    """
    return THROAT * leg


def greatest_leg_along_an_edge(part: float) -> float:
    """Largest leg, mm, along the edge of a part this thick, mm: its thickness under 1/4 in, else 1/16 in less.

    Source: AISC 360-16 clause J2.2b. It keeps the edge from melting away; a weld on a face has no such limit.

    >>> greatest_leg_along_an_edge(5.0), round(greatest_leg_along_an_edge(12.7) / 25.4, 4)
    (5.0, 0.4375)
    """
    return part - INCH / 16 if reaches(part, INCH / 4) else part


def full_strength_leg(part: float) -> float:
    """Leg, mm, on both sides that makes the joint as strong as a part this thick, mm, under steady loads.

    Source: Blodgett, Design of Welded Structures, 6.3: three quarters of the thickness.

    >>> full_strength_leg(8.0)
    6.0
    """
    return 0.75 * part


def counted_leg(leg: float, run: float) -> float:
    """Leg that may be counted, mm: a run under four legs long counts as a quarter of its length. AISC 360-16 J2.2b.

    >>> counted_leg(6.0, 24.0), counted_leg(6.0, 20.0)
    (6.0, 5.0)
    """
    return min(leg, run / SHORTEST_IN_LEGS)


def counted_length(run: float, leg: float) -> float:
    """Length that may be counted of a run loaded from its end, mm.

    Source: AISC 360-16 equation J2-1: all of it to 100 legs, then times 1.2 - 0.002 length / leg, and 180 legs beyond 300.
    The 2005 edition goes on with times 0.60 beyond 300 legs. Raises OutsideRange for a leg of nought.

    >>> counted_length(100.0, 5.0), round(counted_length(1000.0, 5.0), 6), counted_length(2000.0, 5.0)
    (100.0, 800.0, 900.0)
    """
    if leg <= 0:
        raise OutsideRange("a weld without a leg has no length that counts")
    slender = run / leg
    if slender > 300:
        return 180 * leg
    return min(1.0, 1.2 - 0.002 * slender) * run


@dataclass(frozen=True, slots=True)
class WeldLimit:
    """One way a weld gives: in words, N a mm of weld it stands at, and what the code divides that by."""

    words: str
    strength: float
    omega: float


def limits(throat_size: float, face: float, electrode: float, yields: float, tensile: float) -> Iterable[WeldLimit]:
    """Every way one mm of weld can give. throat_size and face, the width fused to the part, in mm; strengths in MPa.

    >>> [round(limit.strength / limit.omega) for limit in limits(7.07, 10.0, 480.0, 250.0, 400.0)]
    [1018, 1200, 1000]
    """
    return (
        WeldLimit("the weld metal breaks", WELD_METAL * electrode * throat_size, OMEGA_RUPTURE),
        WeldLimit("the part tears beside the weld", RUPTURE * tensile * face, OMEGA_RUPTURE),
        WeldLimit("the part yields beside the weld", YIELD * yields * face, OMEGA_YIELD),
    )
