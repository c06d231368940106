"""How close the plate between the hub bolts is to yielding: level sections through them, and what overhangs a narrow beam."""

from collections.abc import Iterator
from math import cos, pi, sin, sqrt

from rules.graph.declare import value
from rules.measure.records import dataclass, replace
from rules.measure.units import Mm, MPa
from rules.measure.vectors import Vector, cross, plus
from rules.strength.bolts import group_turns, moments_about_middle, unit_pulls
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.margin import SafetyFactor
from rules.strength.section import Holes, Section
from rules.strength.stress import overhung_plate_stress
from rules.tables import sources
from rules.values.optional_step import needed
from rules.values.strength.plate_build import Build
from rules.values.strength.upright import Acting, beyond, caliper_force, cut_stress, factor_of, moment_at, worst
from rules.values.wheel_end.hub_bolts import BoltPlaces

OVERHUNG = (
    sources.SHIGLEY_9.at(
        "eq. 5-15", "von Mises on beam theory; worst bending, twist and shear of a section taken in one point"
    ),
    sources.AISC_MANUAL.at("part 7", "elastic bolt group"),
    sources.TIMOSHENKO.saying("cantilever plate under a point load"),
    sources.SCI_P355.saying("strips beside a round opening, where the bore opens a twisted cell"),
)
SAME_ROW = 0.01
"""mm: bolts no farther apart in height stand in one row."""


BoltGroup = list[tuple[Vector, float, float]]
"""Each hub bolt's place, mm, and its pull for 1 N mm about x and z, N."""


def bolt_group(places: Places, bolts: BoltPlaces) -> BoltGroup:
    """The hub's bolts on the plate's face, wherever they stand about the wheel's axis."""
    by_x, by_z = unit_pulls(bolts.places)
    x, y, z = places.mount_face
    at = ((x + ahead, y, z + up) for ahead, up in bolts.places)
    return list(zip(at, by_x, by_z, strict=True))


def bolt_forces(case: CaseLoads, places: Places, bolts: BoltGroup) -> Acting:
    """How the hub bolts share what the hub hands on; brake torque left out."""
    face, force = places.mount_face, case.hub_force
    at = [(place[0] - face[0], place[2] - face[2]) for place, _, _ in bolts]
    about_x, _, about_z = moments_about_middle(at, force, moment_at(case, places, face))
    twist = moments_about_middle(at, force, (0.0, 0.0, 0.0))[1]
    along, across, up = (part / len(bolts) for part in force)
    turns = group_turns(at, twist)
    return [
        (place, (along + by_turn[0], across - about_x * by_x + about_z * by_z, up + by_turn[1]))
        for (place, by_x, by_z), by_turn in zip(bolts, turns, strict=True)
    ]


@dataclass(frozen=True, slots=True)
class Cut:
    """One level through the plate: mm above the wheel centre, the half beyond it with its bolts, and what gives.

    sections: with what of the beam counts there, and the plate alone, of which the better holds.
    """

    sections: tuple[Section, ...]
    above: float
    up: bool
    bolts: tuple[int, ...]
    limit: str


def _cuts(build: Build, bolts: BoltPlaces, hole: float, ends: tuple[Mm | None, Mm | None]) -> Iterator[Cut]:
    """A level through each row of bolts, less their holes, and one through the wheel centre, each half beyond it.

    ends: how far above and below the wheel centre the beam runs, mm; None where no such end is known.
    """
    for above in sorted({0.0, *(round(z / SAME_ROW) * SAME_ROW for _, z in bolts.places)}, reverse=True):
        away = {round(abs(x) / SAME_ROW) * SAME_ROW for x, z in bolts.places if abs(z - above) < hole / 2}
        holes = Holes(hole, tuple(sorted(away)))
        named = (
            f"yield at the {'upper' if above > 0 else 'lower'} hub bolts" if above else "yield beside the centre bore"
        )
        for up in (True, False) if not above else (above > 0,):
            way, end = (1, ends[0]) if up else (-1, ends[1])
            held = tuple(at for at, (_, z) in enumerate(bolts.places) if (z - above) * way > SAME_ROW)
            for inside in build.beam_inside(above or way * SAME_ROW, end):
                ways = tuple(counted.section(above, holes=holes) for counted in build.counted_ways(inside))
                yield Cut(ways, above, up, held, named)


@value("upright", formula="yield / stress: level sections through the upper and lower hub bolts less their holes, through "
       "the wheel centre less the bore, and the plate overhanging a beam narrower than the bolts", source=OVERHUNG)  # fmt: skip
def plate_safety(
    upright_build: Build,
    upright_yield: MPa,
    hub_bolts_stand: BoltPlaces,
    hole_diameter: Mm | None,
    steering_arm_root_above: Mm | None,
    brake_effective_radius: Mm | None,
    rotor_plane_offset: Mm,
    part_loads: CornerLoads,
    beam_end_above: Mm | None = None,
    beam_end_below: Mm | None = None,
) -> SafetyFactor:
    """Factor on yield of the plate between the hub bolts, wherever they stand: a simple model.

    At each level the hub's force and moment are shared by the bolts beyond it; level through the wheel centre the worse of the
    upper and the lower half counts, because the caliper bracket joins one of them. What the caliper presses the hub with is
    handed on too, in the worst of eight directions: the sheet does not know which. A beam counts at each level as deep as it does
    so far inside its end on the side that is loaded, and beside it as wide as it is: narrower than the bolts, it leaves the
    plate overhanging at its sides, each bolt bending it; a tube holds it along its middle only. Left out: the stiffness of
    the hub's flange, stress raisers at holes, the brake torque between bracket and cut, and how bolt loads spread to the
    sides in a plate without a beam.

    >>> from rules.measure.outline import hub_bolt_places
    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, pull = (0.0, 0.0, 0.0), (0.0, 0.0, 100_000.0)
    >>> places = Places(none, none, none, none, (0.0, 5.0, 400.0), (0.0, 0.0, 600.0), (0.0, 0.0, 200.0), none)
    >>> loads = CornerLoads(places, (CaseLoads("bump", none, none, none, pull, pull, none),))
    >>> plate, four = Build(100.0, 10.0, 0.0, 250.0, 250.0, "none"), BoltPlaces(hub_bolt_places(60.0, 80.0))
    >>> float(plate_safety(plate, 250.0, four, 10.0, -50.0, None, 0.0, loads))
    2.0
    """
    build, places, bolts = upright_build, part_loads.places, hub_bolts_stand
    hole, ends = needed("plate.hole_diameter", hole_diameter), (beam_end_above, beam_end_below)
    cuts = tuple(_cuts(build, bolts, hole, ends))
    held = 0.0 if build.beam == "tube" else build.beam_width / 2
    group, factors = bolt_group(places, bolts), []
    lever = rotor_plane_offset - places.bearing[1]
    for case in part_loads.cases:
        joints = [beyond(case, places, cut.above, cut.up, steering_arm_root_above) for cut in cuts]
        force = caliper_force(case, brake_effective_radius)
        for pressed in pressed_hubs(case, force, lever) if force else (case,):
            shares = bolt_forces(pressed, places, group)
            for cut, acting in zip(cuts, joints, strict=True):
                held_there = [*acting, *(shares[bolt] for bolt in cut.bolts)]
                stress = min(cut_stress(section, places, cut.above, held_there) for section in cut.sections)
                factors.append((factor_of(upright_yield, stress), case.case, cut.limit))
            if build.beam != "none":
                pulls = [(x, z, share[1]) for (x, z), (_, share) in zip(bolts.places, shares, strict=True)]
                stress = max((_overhung(one, pulls, held, build) for one in pulls if abs(one[0]) > held), default=0.0)
                factors.append((factor_of(upright_yield, stress), case.case, "yield of the plate beside the beam"))
    return worst("plate", factors)


def pressed_hubs(case: CaseLoads, force: float, lever: float) -> Iterator[CaseLoads]:
    """The case with the caliper's force on the hub, N, from eight sides. lever: mm from the bearing out to the rotor."""
    for eighth in range(8):
        push = (force * cos(eighth * pi / 4), 0.0, force * sin(eighth * pi / 4))
        turning = cross((0.0, lever, 0.0), push)
        yield replace(case, hub_force=plus(case.hub_force, push), hub_moment=plus(case.hub_moment, turning))


def _overhung(
    one: tuple[float, float, float], bolts: list[tuple[float, float, float]], held: float, build: Build
) -> float:
    """Stress of the plate where the beam's edge holds it, MPa, under one bolt (x, z, pull) and the others on its side."""
    x, z, pull = one
    others = [(also, abs(up - z)) for side, up, also in bolts if side * x > 0 and (side, up) != (x, z)]
    return overhung_plate_stress(pull, others, abs(x) - held, build.thickness, *_opening(build, held, z))


def _opening(build: Build, held: float, above: float) -> tuple[float, float]:
    """How far along the beam's edge the bore ends it, mm from a bolt so high, and how much of what holds the plate it has taken.

    What holds it is counted from as far inside the beam's edge as the plate is thick: its wall, and the plate between the walls.
    """
    radius, counted_from = build.bore / 2, max(held - build.thickness, 0.0)
    ends_at = sqrt(max(radius**2 - held**2, 0.0))
    return max(abs(above) - ends_at, 0.0), min(max(radius - counted_from, 0.0) / build.thickness, 1.0)
