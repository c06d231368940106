"""Stress where bending, pull, twist and shear meet in one section, by von Mises. N, mm, MPa, N mm."""

from collections.abc import Iterable
from math import inf, sqrt

from rules.measure.records import NamedTuple
from rules.measure.vectors import Vector
from rules.strength.opening import at_an_opening
from rules.strength.section import Section, bending_stress

CANTILEVER_PLATE = 0.509
"""Bending moment on 1 mm of root over the load: a long plate held along one edge, loaded in one point of its free edge.
Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells (from memory); worked out again in the tests."""


class SectionLoads(NamedTuple):
    """What a section hands on: pull and shear in N, moments in N mm. u is along the width, v along the depth."""

    axial: float = 0.0
    shear_u: float = 0.0
    shear_v: float = 0.0
    moment_u: float = 0.0
    moment_v: float = 0.0
    twist: float = 0.0


def von_mises(stress_x: float, stress_y: float, shear: float) -> float:
    """Stress that counts against yield, MPa, from plane stress in MPa. Source: Shigley 9th ed. eq. 5-15.

    >>> round(100 / von_mises(60.0, 40.0, -15.0), 2)
    1.7
    """
    return sqrt(stress_x**2 - stress_x * stress_y + stress_y**2 + 3 * shear**2)


def section_stress(section: Section, loads: SectionLoads) -> float:
    """The von Mises stress of a section, MPa, plus.

    The worst of pull, of bending, of twist and of shear are taken to meet in one point, which they do not quite: it is
    never less than the true one. Stress raisers (holes' edges, weld toes) are not in it.

    >>> from rules.strength.section import round_tube
    >>> tube = round_tube(42.0, 5.0)
    >>> round(section_stress(tube, SectionLoads(axial=9000, moment_u=1750 * 120, twist=72_000)), 2)
    60.43
    """
    twist = abs(loads.twist)
    bending = bending_stress(section, loads.moment_u, loads.moment_v)
    along = abs(loads.axial) / section.area + bending + twist * section.twist_bends
    shear = (
        twist / section.torsion_modulus + abs(loads.shear_u) / section.shear_u + abs(loads.shear_v) / section.shear_v
    )
    return sqrt(along**2 + 3 * shear**2)


def overhung_plate_stress(
    load: float,
    others: Iterable[tuple[float, float]],
    overhang: float,
    thickness: float,
    to_opening: float = inf,
    cut: float = 0.0,
) -> float:
    """Bending stress of a plate at the straight line it is held along, MPa, under point loads square to it; always plus.

    load: N, either way, `overhang` from the line, mm; the stress is the one under it. others: more such loads, N, each with how
    far along the line it stands from there, mm. It does not depend on the overhang of a single load, since more lever is spread
    over more width. to_opening: along the line to an opening that ends it, mm; cut: how much of what holds the plate it takes
    there, 0 to 1.
    A load inside the plate, and not at its free edge, bends it less.

    Above nought. The figure holds where the overhang is longer than the plate is thick. Below that the width that shares the
    moment is kept at what it is there, so that the stress falls with the lever to nought at no overhang: our own rule, no
    source.

    >>> round(overhung_plate_stress(1000.0, (), 20.0, 10.0), 2)
    30.54
    """
    holds = max(overhang, thickness)
    together = abs(load) + sum(abs(other) / (1 + (apart / holds) ** 2) for other, apart in others)
    together *= overhang / holds
    together *= at_an_opening(to_opening, holds, cut)
    return CANTILEVER_PLATE * together * 6 / thickness**2


def level_cut(place: Vector, acting: Iterable[tuple[Vector, Vector]]) -> SectionLoads:
    """What a level section at `place` hands on, from every (point, force) on one side of it.

    Width fore and aft (x), depth in and out (y). Signs follow the forces given; only sizes are used further on.

    >>> level_cut((0.0, 0.0, 100.0), [((0.0, 20.0, 200.0), (0.0, 50.0, -300.0))])
    SectionLoads(axial=-300.0, shear_u=0.0, shear_v=50.0, moment_u=-11000.0, moment_v=0.0, twist=0.0)
    """
    along = across = up = about_x = about_y = about_z = 0.0
    for (x, y, z), (a, b, c) in acting:
        x, y, z = x - place[0], y - place[1], z - place[2]
        along, across, up = along + a, across + b, up + c
        about_x, about_y, about_z = about_x + y * c - z * b, about_y + z * a - x * c, about_z + x * b - y * a
    return SectionLoads(up, along, across, about_x, about_y, about_z)
