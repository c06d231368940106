"""How close the seam that joins beam and plate is to giving: along it, and where it brings the beam in at the beam's ends."""

from collections.abc import Iterator
from itertools import pairwise
from math import sqrt

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate, NotJudged, OutsideRange, Waits
from rules.measure.records import dataclass
from rules.measure.units import Mm, MPa, Share
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.margin import SafetyFactor
from rules.strength.seam import Seam, SeamForce, flow_of_one_cell, flow_of_two_cells, joint, seams_apart
from rules.strength.stress import level_cut
from rules.strength.weld import limits, throat
from rules.tables import sources
from rules.tables.electrodes import ELECTRODES
from rules.tables.materials import Metal, lowest
from rules.values.optional_step import needed
from rules.values.strength.hub_plate import bolt_forces, bolt_group, pressed_hubs
from rules.values.strength.plate_build import Build
from rules.values.strength.upright import Acting, BesideWeld, beyond, caliper_force, factor_of, worst
from rules.values.wheel_end.hub_bolts import BoltPlaces

WITHOUT_WELD_METAL: tuple[Metal, ...] = ("6061-t6",)
"""Metals for whose fillers no strength is held here: theirs is less than any electrode's of the table."""
LEAST_SEAM = 0.5
"""Share of a seam that is welded where nobody says: as much gap as weld. Common practice, no source."""
SEAM = (
    sources.STATICS.saying("shear flow V Q / I between plate and beam; at its end the beam's share of all the section carries"),
    sources.AISC_360.at("F13.3", "a plate on a beam's flange is fastened at its end for all it carries, over a length there",
                        read="memory"),
    sources.SHIGLEY_9.at("Table 9-2", "weld treated as a line"),
    sources.GERE.at("thin-walled closed tubes", "Bredt: shear flow T / (2 A)", read="memory"),
    sources.AISC_360.at("Table J2.5", "strengths"),
)  # fmt: skip


@value("upright", formula="as entered, else half: as much gap as weld", source=sources.AS_ENTERED)
def seam_welded(seam_share: Share | None) -> Share:
    """How much of the seam between beam and plate is welded. An estimate, and a low one, until it is entered.

    >>> seam_welded(0.8), float(seam_welded(None))
    (0.8, 0.5)
    """
    return Estimate(LEAST_SEAM, measure="upright.seam_share") if seam_share is None else seam_share


@value(
    "upright",
    formula="the lowest figure published of the metal beside a weld; of another metal its yield, which is less",
    source=sources.COMMON_PRACTICE.saying("each row of rules/tables/materials.py names its own"),
)
def upright_tensile(upright_material: Metal, upright_yield: MPa, metal_beside_weld: BesideWeld | None) -> MPa:
    """Tensile strength of the upright's metal beside a weld, MPa. Of another metal an estimate, and a low one.

    >>> from rules.tables.materials import BESIDE_WELD
    >>> rows = BesideWeld(BESIDE_WELD["a36 plate"])
    >>> round(upright_tensile("a36 plate", 228.0, rows)), float(upright_tensile("other", 600.0, None))
    (400, 600.0)
    """
    if metal_beside_weld is None:
        return Estimate(upright_yield, measure="upright.material")
    return lowest(metal_beside_weld.rows).ultimate


@dataclass(frozen=True, slots=True)
class Station:
    """A level of the seam, mm above the wheel centre. acts_at: a level in the stretch between two loads that it belongs to.

    bolts: which of the hub's stand beyond. end: where the beam's share comes in, as the middle of that length of seam, mm above
    the wheel centre, and the length; None further inside.
    """

    joint: Seam
    above: float
    acts_at: float
    bolts: tuple[int, ...]
    end: tuple[float, float] | None
    words: str


def _stations(build: Build, places: Places, leg: float, bolts: BoltPlaces, arm_root: float) -> Iterator[Station]:
    """Both ends of each stretch between two loads, from the beam's ends to the wheel centre or to a bore that cuts it."""
    radius = {"tube": build.beam_width / 2, "box": build.beam_radius}.get(build.beam, 0.0)
    apart = seams_apart(build.beam_width, radius, leg)
    cell = _twist_flow(build, apart)
    cut_to = sqrt(max(build.bore**2 - apart**2, 0.0)) / 2
    for way, which, pivot, end in (
        (1, "upper", places.upper_pivot, build.beam_top), (-1, "lower", places.lower_pivot, build.beam_bottom),
    ):  # fmt: skip
        to_pivot = (pivot[2] - places.mount_face[2]) * way
        if to_pivot <= 0:
            continue
        if end is None and not build.to_pivots:
            raise Waits("upright.beam_top" if way > 0 else "upright.beam_bottom")
        reach = to_pivot if build.to_pivots or end is None else min(end, to_pivot)
        rows = {up * way for _, up in bolts.places}
        if reach <= cut_to:
            raise OutsideRange(
                f"the centre bore is wider than the beam and ends beyond its {which} end: no seam is left there",
                change="A longer beam, a wider one, or a smaller centre bore.",
            )
        length = min(build.run_in, reach - cut_to)
        end_from = max(reach - length, min(max(rows), reach))
        loads = {reach, reach - length, cut_to, arm_root * way, *rows}
        levels = sorted(level for level in loads if cut_to <= level <= reach)
        for low, high in pairwise(levels):
            for level in (low, high):
                section, plate = (build.section(level * way, beam) for beam in (True, False))
                ends = low >= end_from or level == reach
                middle = (low + high) / 2
                yield Station(
                    joint(section, plate, apart, cell), level * way, middle * way,
                    tuple(at for at, (_, up) in enumerate(bolts.places) if up * way > middle),
                    ((reach - length / 2) * way, length) if ends else None,
                    f"at the beam's {which} end" if ends else f"{'above' if way > 0 else 'below'} the wheel centre",
                )  # fmt: skip


def _twist_flow(build: Build, apart: float) -> float:
    wall = build.beam_wall
    if build.beam == "channel":
        return flow_of_one_cell(build.cell)
    area, round_it, across = build.own_cell
    return flow_of_two_cells(area, round_it / wall, min(apart, across), wall, build.thickness)


@value("upright", formula="strength of one mm of weld / greatest force on one mm of two seams, worst level and case: V Q / (2 I) "
       "and the cell's twist, T / (2 A) in a channel; at the beam's ends what the beam carries, brought in over its own depth",
       source=SEAM)  # fmt: skip
def seam_weld_safety(
    seam_leg: Mm | None,
    seam_welded: Share,
    upright_build: Build,
    upright_yield: MPa,
    upright_tensile: MPa,
    upright_material: Metal | None,
    hub_bolts_stand: BoltPlaces,
    steering_arm_root_above: Mm | None,
    brake_effective_radius: Mm | None,
    rotor_plane_offset: Mm,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor of the two runs that join the beam to the plate, as a rule for steady loads counts it.

    The weakest electrode of the table and the upright's metal count, and no more of it than the beam's wall. A beam that
    goes past a pivot counts as ending there. The share of the seam that is welded counts as even, at the ends too. Left out:
    crowding at the very end, which yields and spreads; how one hub bolt or the arm's root loads the seam just beside it; what
    the hub's flange, which backs the plate between its bolts, takes off the seam there.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, push = (0.0, 0.0, 0.0), (0.0, 20_000.0, 0.0)
    >>> places = Places(none, none, none, none, none, (0.0, 0.0, 200.0), (0.0, 0.0, -150.0), none)
    >>> loads = CornerLoads(places, (CaseLoads("kerb", none, none, none, push, none, none),))
    >>> build = Build(120.0, 10.0, 0.0, 180.0, 150.0, "box", 60.0, 40.0, 4.0, 0.0, to_pivots=True)
    >>> bolts = BoltPlaces(((40.0, 40.0), (-40.0, 40.0), (0.0, -40.0)))
    >>> found = seam_weld_safety(5.0, 1.0, build, 250.0, 400.0, "a36 plate", bolts, 0.0, None, 0.0, loads)
    >>> round(found, 2), found.limit
    (1.28, "the weld metal breaks, at the beam's upper end")
    """
    build, places = upright_build, part_loads.places
    if build.beam == "none":
        raise DoesNotApply("the upright has no beam")
    leg = needed("upright.seam_leg", seam_leg)
    root = needed("upright.steering_arm_root_above", steering_arm_root_above)
    electrode = min(one.tensile for one in ELECTRODES.values())
    face = min(leg, build.beam_wall, build.thickness)
    ways = tuple(limits(throat(leg), face, electrode, upright_yield, upright_tensile))
    stations = list(_stations(build, places, leg, hub_bolts_stand, root))
    if not stations:
        raise DoesNotApply("both pivots are beside the hub, so there is no seam between them and it")
    group = bolt_group(places, hub_bolts_stand)
    lever, found = rotor_plane_offset - places.bearing[1], []
    for case in part_loads.cases:
        force = caliper_force(case, brake_effective_radius)
        hubs = tuple(pressed_hubs(case, force, lever)) if force else (case,)
        shared = [bolt_forces(hub, places, group) for hub in hubs]
        for station in stations:
            for bolts in shared if station.bolts else shared[:1]:  # beyond them it is all one how the caliper presses
                acting = [bolts[at] for at in station.bolts]
                found += [(one, case.case, station.words) for one in _carried(station, case, places, acting, root)]
    in_weld = max((one.in_the_weld, case_name, words) for one, case_name, words in found)
    in_part = max((one.in_the_part, case_name, words) for one, case_name, words in found)
    factors = [
        (factor_of(way.strength * seam_welded, counts), case_name, f"{way.words}, {words}")
        for way, (counts, case_name, words) in zip(ways, (in_weld, in_part, in_part), strict=True)
    ]
    margin = worst("weld of beam to plate", factors, "weld", factors[-1][0] / min(factors)[0])
    if upright_material in WITHOUT_WELD_METAL and not margin.gives:
        raise NotJudged("no strength of a filler for the upright's metal is held here, so its seam was not judged")
    return margin


def _carried(station: Station, case: CaseLoads, places: Places, bolts: Acting, root: float) -> Iterator[SeamForce]:
    """What the worst mm of the seam carries at a level: where beam and plate are one, and at the beam's end."""
    face = places.mount_face
    level = (0.0, face[1] - station.joint.whole.centroid, face[2] + station.above)
    cut = level_cut(level, [*beyond(case, places, station.acts_at, station.acts_at > 0, root), *bolts])
    yield station.joint.flow(cut)
    if station.end is not None:
        middle, length = station.end
        yield station.joint.brought_in(cut, length, station.above - middle)
