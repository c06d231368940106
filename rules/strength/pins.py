"""Pivot bolts, pins and studs, and the lugs around them. N, mm, MPa."""

from math import hypot, pi, sqrt

from rules.graph.results import OutsideRange
from rules.measure.closeness import reaches
from rules.strength.bolts import SHEAR_OF_YIELD, round_area

LEAST_EDGE = 1.5
"""Edge distance over hole diameter, under which a lug bends open and tear_out_area does not hold. Trade custom."""


def shear_stress(force: float, diameter: float, planes: int) -> float:
    """Mean shear stress of a round pin, MPa. planes: 1 in single shear, 2 in double.

    >>> round(shear_stress(12.0, 0.75, 2), 1)
    13.6
    """
    return force / (planes * round_area(diameter))


def cantilever_stress(force: float, length: float, diameter: float) -> float:
    """Bending stress at the root of a round stud or pin held at one end, MPa: 32 F L / (pi d3). Statics.

    length: from the root to the line of the force, mm.

    >>> round(cantilever_stress(10_000.0, 25.0, 20.0), 2)
    318.31
    """
    return 32 * force * length / (pi * diameter**3)


def pin_moment(force: float, ball_width: float, gap: float, lug_thickness: float, double_shear: bool) -> float:
    """Greatest bending moment in a pivot bolt, N mm, taken as a beam that its clamping does not help.

    Double shear: the bolt rests in the middle of each lug, and the ball spreads the force over its width:
    F/2 (lug/2 + gap + ball/4). Single shear: it stands out of the lug: F (gap + ball/2). gap: on one side, mm. Statics.

    >>> pin_moment(10_000.0, 20.0, 5.0, 8.0, True), pin_moment(10_000.0, 20.0, 5.0, 8.0, False)
    (70000.0, 150000.0)
    """
    if double_shear:
        return force / 2 * (lug_thickness / 2 + gap + ball_width / 4)
    return force * (gap + ball_width / 2)


def bearing_stress(force: float, diameter: float, thickness: float) -> float:
    """Pressure of a pin on the wall of its hole, MPa: force over diameter times thickness.

    >>> round(bearing_stress(12.0, 0.75, 2 * 0.375), 1)
    21.3
    """
    return force / (diameter * thickness)


def tear_out_area(edge: float, diameter: float, thickness: float) -> float:
    """Area that shears when a pin tears out of a lug, mm2: t (2 e - 0.766 d), two planes at 40 degrees to the pull.

    edge: from the hole's centre to the edge in line with the pull, mm. With the edge counted from the centre the second
    term is taken away, not added. Holds from 1.5 d of edge up; raises OutsideRange under that. Common practice;
    it stands in print with the sign wrong, and was worked out here.

    >>> tear_out_area(24.0, 12.0, 6.0)
    232.848
    """
    if not reaches(edge, LEAST_EDGE * diameter):
        raise OutsideRange(
            "under 1.5 hole diameters from centre to edge a lug bends open: no simple formula holds",
            change="A longer lug, 1.5 hole diameters or more from centre to edge, or a smaller bolt.",
        )
    return thickness * (2 * edge - 0.766 * diameter)


def lug_bending_stress(along: float, reach: float, width: float, thickness: float, lugs: int, tied: bool) -> float:
    """Bending stress at the root of a lug, MPa, under a force along the bolt, N, always plus: the lug's flat side gives.

    reach: root to bolt, mm. width: at the root, mm. Free, one lug takes it all as a cantilever: 6 F reach / (width t^2). Two
    lugs tied by bolt, ball and spacers share it, and neither can turn at the bolt: half the force on half the lever. Statics.

    >>> lug_bending_stress(1000.0, 40.0, 60.0, 10.0, 2, False), lug_bending_stress(1000.0, 40.0, 60.0, 10.0, 2, True)
    (40.0, 10.0)
    """
    free = 6 * abs(along) * reach / (width * thickness**2)
    return free / 4 if tied and lugs == 2 else free


def lug_root_stress(
    along: float, aside: float, pull: float, reach: float, width: float, thickness: float, lugs: int, tied: bool
) -> float:
    """Von Mises stress at the root of a lug, MPa, at the corner where all that acts on it adds up. Forces in N, sizes in mm.

    along: force along the bolt, which bends the lug's flat side. aside: in the lug's plane, square to the way it stands out; it
    bends the lug on edge. pull: the way it stands out. Lugs share the last two evenly. The mean shear counts. Statics.

    Alone, 1000 N aside on 40: 6 x 1000 x 40 / (10 x 60^2) = 6.667, shear 1000 / 600 = 1.667: root(6.667^2 + 3 x 1.667^2); 6000 N
    of pull are 10.

    >>> lug = (40.0, 60.0, 10.0, 1, False)
    >>> [round(lug_root_stress(*forces, *lug), 3) for forces in ((0.0, 1000.0, 0.0), (0.0, 0.0, 6000.0))]
    [7.265, 10.0]
    """
    area = lugs * width * thickness
    normal = lug_bending_stress(along, reach, width, thickness, lugs, tied)
    normal += 6 * abs(aside) * reach / (area * width) + abs(pull) / area
    return sqrt(normal**2 + 3 * (hypot(along, aside) / area) ** 2)


def lug_limits(
    force: float, yield_strength: float, edge: float, diameter: float, thickness: float, width: float | None = None
) -> dict[str, float]:
    """What gives in a round-ended lug, and the factor on yield of each: crushing, tearing out, pulling in two on the hole.

    The lug is taken as 2 edges wide until its width is known. force: on this lug, N. Raises OutsideRange where the hole takes
    the whole width.

    >>> {limit: round(factor, 2) for limit, factor in lug_limits(10_000.0, 250.0, 24.0, 12.0, 6.0).items()}
    {'bearing stress in the hole': 1.8, 'tear-out to the edge': 3.36, 'metal beside the hole': 5.4}
    """
    beside = (2 * edge if width is None else width) - diameter
    if beside <= 0:
        raise OutsideRange("the hole is as wide as the lug", change="A wider lug, or a smaller bolt.")
    return {
        "bearing stress in the hole": yield_strength / bearing_stress(force, diameter, thickness),
        "tear-out to the edge": SHEAR_OF_YIELD * yield_strength * tear_out_area(edge, diameter, thickness) / force,
        "metal beside the hole": yield_strength * beside * thickness / force,
    }
