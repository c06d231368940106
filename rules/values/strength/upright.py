"""How close the upright is to yielding, section by section, each in its worst load case.

The upright is a plate, with or without a beam on its back, cut level where it is weakest: what lies beyond the cut, away from
the hub, is held by that section. Nothing here applies while none of the entries a part needs is answered.
"""

from collections.abc import Iterable
from math import inf

from rules.corner.slots import WITHOUT_SLOTS, PlateSlots
from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate, NotJudged, Waits
from rules.measure.outline import (
    FULL_WIDTH,
    UNLIGHTENED,
    LighterBy,
    PlateEnds,
    plate_outline,
)
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.said import worked_out
from rules.measure.units import Mm, MPa
from rules.measure.vectors import Vector, cross, minus, plus
from rules.sheet.upright import Beam, BeamCut
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.margin import CountedOn, Margin, SafetyFactor
from rules.strength.section import Section
from rules.strength.stress import level_cut, section_stress
from rules.tables import sources
from rules.tables.materials import AS_BOUGHT, BESIDE_WELD, Metal, Strength, lowest
from rules.values.optional_step import needed, whole, whole_once_begun
from rules.values.strength.plate_build import Build

MISES = sources.SHIGLEY_9.at(
    "eq. 5-15", "von Mises on beam theory; worst bending, twist and shear of a section taken in one point"
)
ENOUGH = 1000.0
"""A factor beyond this is shown as this: the part carries next to nothing."""


def worst(
    part: str, factors: Iterable[tuple[float, str, str]], kind: CountedOn = "yield", yield_over: float | None = None
) -> Margin:
    """The least of (factor; case; what gives). part: whose they are, in words. yield_over: yield over what they count on."""
    least, case, limit = min(factors)
    factor = min(least, ENOUGH)
    return Margin(factor, case, limit, part=part, kind=kind, on_yield=yield_over and min(factor * yield_over, ENOUGH))


def factor_of(strength: float, stress: float) -> float:
    """Strength over stress; ENOUGH where there is next to no stress."""
    return strength / stress if stress * ENOUGH > strength else ENOUGH


def moment_at(case: CaseLoads, places: Places, place: Vector) -> Vector:
    """What the hub hands on, as a moment about another place than the bearing, N mm; brake torque left out."""
    return plus(case.hub_moment, cross(minus(places.bearing, place), case.hub_force))


def caliper_force(case: CaseLoads, radius: float | None) -> float:
    """What the pads drag at the caliper with, N, along the rotor's edge: brake torque over the radius they act at, mm."""
    if not case.brake_torque:
        return 0.0
    return abs(case.brake_torque) / needed("brake_effective_radius", radius)


@dataclass(frozen=True, slots=True)
class BesideWeld:
    """Every figure that is published of a metal beside a weld. At least one."""

    rows: tuple[Strength, ...]

    def words_in(self, units: Units) -> str:
        """In words, for the written-out working, in the sheet's units."""
        figures = ", ".join(f"{worked_out(row.yields, 'MPa', units)} in {row.printed[0].key}" for row in self.rows)
        return f"{figures}; the lowest counts" if len(self.rows) > 1 else figures


@value(
    "upright",
    formula="what each source prints for the metal and its condition",
    source=sources.COMMON_PRACTICE.saying("each row of rules/tables/materials.py names its own"),
)
def metal_beside_weld(upright_material: Metal | None) -> BesideWeld:
    """Yield of the upright's metal beside a weld that is not heat treated after, by every source held here.

    >>> metal_beside_weld("1018 cold drawn").words_in("metric")
    '221 MPa in Shigley 8th ed.'
    """
    if upright_material is None:
        raise Waits("upright.material")
    if upright_material == "other":
        raise DoesNotApply("nothing is published here of another metal beside a weld")
    return BesideWeld(BESIDE_WELD[upright_material])


@value(
    "upright",
    formula="the least of: certificate, else the lowest published figure as bought; the figure beside a weld",
    source=(
        sources.ASTM_A36,
        sources.SHIGLEY_8.at("Table A-20"),
        sources.MOTT.at("Table A-3", "each row of rules/tables/materials.py names its own"),
    ),
)
def upright_yield(
    upright_material: Metal | None, certificate_yield: MPa | None, metal_beside_weld: BesideWeld | None
) -> MPa:
    """Yield strength of the upright's metal after welding, MPa. A table's figure is an estimate until a certificate says.

    >>> round(upright_yield("4130 normalised", 480.0, metal_beside_weld("4130 normalised")))
    359
    """
    if upright_material is None:
        raise Waits("upright.material")
    beside = inf if metal_beside_weld is None else lowest(metal_beside_weld.rows).yields
    if certificate_yield is not None:
        return min(certificate_yield, beside)
    rows = () if upright_material == "other" else AS_BOUGHT[upright_material]
    if not rows:
        raise Waits("upright.certificate_yield")
    return Estimate(min(lowest(rows).yields, beside), measure="upright.certificate_yield")


@value(
    "upright",
    formula="the plate's sizes from the plate step, the beam's from the upright step; the metal that stands "
    "on both sides of the wheel centre alike",
    source=sources.GEOMETRY.saying("a welded-on beam counts as one with the plate"),
)
def upright_build(
    upright_material: Metal | None,
    beam: Beam | None,
    beam_width: Mm | None,
    beam_depth: Mm | None,
    beam_wall: Mm | None,
    beam_corner_radius: Mm | None,
    beam_to_pivots: bool | None,
    plate_width: Mm | None,
    plate_height: Mm | None,
    plate_thickness: Mm | None,
    spindle_from_top: Mm | None,
    spindle_from_front: Mm | None,
    bore: Mm | None,
    corner_radius: Mm | None = None,
    plate_ends: PlateEnds = FULL_WIDTH,
    lightening_holes: LighterBy = UNLIGHTENED,
    plate_slots: PlateSlots = WITHOUT_SLOTS,
    beam_top: Mm | None = None,
    beam_bottom: Mm | None = None,
    beam_cut: BeamCut | None = None,
) -> Build:
    """The plate with its beam, as sections are cut from it.

    >>> build = upright_build("a36 plate", "none", None, None, None, None, None, 140.0, 260.0, 10.0, 130.0, 65.0, 70.0)
    >>> build.words_in("metric")
    'plate 130 mm x 10 mm alone'
    """
    begun = {"upright.material": upright_material, "upright.beam": beam}
    whole_once_begun("the upright's metal and beam are not entered, so it was not judged", begun)
    form: Beam = needed("upright.beam", beam)
    plate = {"plate.width": plate_width, "plate.height": plate_height, "plate.thickness": plate_thickness,
             "plate.bore": bore, "plate.spindle_from_top": spindle_from_top,
             "plate.spindle_from_front": spindle_from_front}  # fmt: skip
    sizes = {"upright.beam_width": beam_width, "upright.beam_wall": beam_wall}
    if form == "box" or form == "channel":
        sizes["upright.beam_depth"] = beam_depth
    width, height, thickness, hole, top, front, *_ = whole(plate | ({} if form == "none" else sizes))
    wide, deep, wall = beam_width or 0.0, beam_depth or 0.0, beam_wall or 0.0
    radius = 2 * wall if beam_corner_radius is None else beam_corner_radius
    alike = 2 * min(front, width - front)
    edge = (
        plate_outline(width, height, top, front, corner_radius or 0.0, "right", plate_ends) if any(plate_ends) else None
    )
    past = bool(beam_to_pivots)
    sizes_of_beam = (wide, deep, wall, radius, past)
    cut: BeamCut = beam_cut or ("face on the plate" if form == "box" else "not cut")
    ends = (beam_top, beam_bottom)
    return Build(
        alike,
        thickness,
        hole,
        top,
        height - top,
        form,
        *sizes_of_beam,
        edge,
        lightening_holes.holes,
        plate_slots,
        *ends,
        cut,
    )


Acting = list[tuple[Vector, Vector]]
"""Forces, N, each behind the point it acts at, mm."""


def beyond(case: CaseLoads, places: Places, above: float, up: bool, arm_root: float | None) -> Acting:
    """What acts on the upright beyond a level: the pivot, and the tie rod where the steering arm's root is beyond too."""
    root = needed("upright.steering_arm_root_above", arm_root)
    pivot = (places.upper_pivot, case.upper_pivot) if up else (places.lower_pivot, case.lower_pivot)
    rod_beyond = root > above if up else root <= above
    return [pivot, (places.tie_rod, case.tie_rod)] if rod_beyond else [pivot]


def cut_stress(section: Section, places: Places, above: float, acting: Acting) -> float:
    """The stress of a level section, MPa, from what acts beyond it."""
    level = (0.0, places.mount_face[1] - section.centroid, places.mount_face[2] + above)
    return section_stress(section, level_cut(level, acting))


def cut_factors(
    section: Section, loads: CornerLoads, above: float, arm_root: float | None, strength: float, limit: str
) -> list[tuple[float, str, str]]:
    """Every case's factor at one level, from what acts beyond it, away from the hub."""
    factors = []
    for case in loads.cases:
        acting = beyond(case, loads.places, above, above > 0, arm_root)
        factors.append((factor_of(strength, cut_stress(section, loads.places, above, acting)), case.case, limit))
    return factors


def counted_factors(
    build: Build, inside: float, loads: CornerLoads, above: float, arm_root: float | None, strength: float, limit: str
) -> list[tuple[float, str, str]]:
    """As cut_factors, so far inside the beam's end, mm: with what of the beam counts there or of the plate alone, the better."""
    ways = (way.section(above) for way in build.counted_ways(inside))
    return max((cut_factors(way, loads, above, arm_root, strength, limit) for way in ways), key=min)


SHORTEST_BEAM = 55.0
"""mm from the wheel centre: the nearest that a beam which stops short usually ends. Common practice, no source."""


@value(
    "upright",
    formula="as entered; past both pivots where it is said to run so; until somebody says, as near the hub as beams usually end",
    source=sources.AS_ENTERED,
    each=({"where": "above", "field": "top"}, {"where": "below", "field": "bottom"}),
)
def beam_end_where(upright_build: Build, where: str, field: str) -> Mm:
    """How far {where} the wheel centre the beam runs, mm. An estimate, and the least favourable usual one, until it is entered.

    >>> box = Build(100.0, 10.0, 0.0, 250.0, 250.0, "box", 60.0, 40.0, 4.0, beam_top=150.0)
    >>> beam_end_where(box, "above", "top"), beam_end_where(box, "below", "bottom").measure
    (150.0, 'upright.beam_bottom')
    >>> float(beam_end_where(box, "below", "bottom"))
    55.0
    """
    if upright_build.beam == "none":
        raise DoesNotApply("the upright has no beam")
    end = upright_build.beam_top if field == "top" else upright_build.beam_bottom
    if end is not None and not upright_build.to_pivots:
        return end
    if upright_build.to_pivots:
        return max(upright_build.top, upright_build.bottom) + upright_build.whole_from
    return Estimate(SHORTEST_BEAM, measure=f"upright.beam_{field}")


@value(
    "upright",
    formula="yield / von Mises stress of the section just {where} the hub, worst case",
    source=MISES,
    each=({"where": "above", "part": "upright above hub"}, {"where": "below", "part": "upright below hub"}),
)
def upright_where_hub_safety(
    upright_build: Build,
    upright_yield: MPa,
    section_where: Mm | None,
    steering_arm_root_above: Mm | None,
    part_loads: CornerLoads,
    where: str,
    part: str,
    upper_housing_reach: Mm = 0.0,
    lower_housing_reach: Mm = 0.0,
    beam_end_where: Mm | None = None,
) -> SafetyFactor:
    """Factor on yield of the upright just {where} the hub. The caliper bracket is taken to join between the two sections.

    Where the plate narrows or has a lightening hole, the weakest level from there to the joint's housing counts instead.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, pull = (0.0, 0.0, 0.0), (0.0, 0.0, 100_000.0)
    >>> places = Places(none, none, none, none, (0.0, 5.0, 400.0), (0.0, 0.0, 600.0), (0.0, 0.0, 200.0), none)
    >>> loads = CornerLoads(places, (CaseLoads("bump", none, none, none, pull, pull, none),))
    >>> plate = Build(100.0, 10.0, 0.0, 250.0, 250.0, "none")
    >>> float(upright_where_hub_safety(plate, 250.0, 60.0, -50.0, loads, "above", "upright above hub"))
    2.5
    """
    reach = needed(f"upright.section_{where}", section_where)
    above = reach if where == "above" else -reach
    limit = f"yield just {where} the hub" if upright_build.plain else f"yield {where} the hub, at the weakest level"
    factors = []
    for level in upright_build.weakest_levels(
        above, _before_housing(part_loads.places, where, upper_housing_reach, lower_housing_reach)
    ):
        for inside in upright_build.beam_inside(level, beam_end_where):
            held = (part_loads, level, steering_arm_root_above, upright_yield, limit)
            factors += counted_factors(upright_build, inside, *held)
    return worst(part, factors)


def _before_housing(places: Places, where: str, upper: float, lower: float) -> float:
    """Where a joint's housing begins, from the wheel centre."""
    if where == "above":
        return places.upper_pivot[2] - places.mount_face[2] - upper
    return places.lower_pivot[2] - places.mount_face[2] + lower


@value(
    "upright",
    formula="yield / von Mises stress of the plate where the {which} pivot's housing ends",
    source=MISES,
    each=({"which": "upper", "part": "upright upper end"}, {"which": "lower", "part": "upright lower end"}),
)
def upright_which_end_safety(
    upright_build: Build,
    upright_yield: MPa,
    which_housing_reach: Mm,
    steering_arm_root_above: Mm | None,
    part_loads: CornerLoads,
    which: str,
    part: str,
) -> SafetyFactor:
    """Factor on yield of the upright at its {which} pivot; the bracket that carries the joint itself is not in it.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> none, pull = (0.0, 0.0, 0.0), (0.0, 0.0, 100_000.0)
    >>> places = Places(none, none, none, none, (0.0, 5.0, 400.0), (0.0, 0.0, 600.0), (0.0, 0.0, 200.0), none)
    >>> loads = CornerLoads(places, (CaseLoads("bump", none, none, none, pull, pull, none),))
    >>> plate = Build(100.0, 10.0, 0.0, 250.0, 250.0, "none")
    >>> float(upright_which_end_safety(plate, 250.0, 20.0, -50.0, loads, "upper", "upright upper end"))
    2.5
    """
    places, inward = part_loads.places, -1 if which == "upper" else 1
    pivot = places.upper_pivot if which == "upper" else places.lower_pivot
    above = pivot[2] - places.mount_face[2] + inward * which_housing_reach
    if above * inward >= 0:
        raise DoesNotApply(f"the {which} pivot is beside the hub, so there is no end of the upright to judge")
    if not -upright_build.bottom <= above <= upright_build.top:
        raise NotJudged(
            f"the plate ends short of the {which} pivot; what bridges the rest is not drawn here, and was not judged"
        )
    inside = min(upright_build.beam_inside(above, upright_build.own_end(above) or 0.0))
    held = (part_loads, above, steering_arm_root_above, upright_yield, f"yield at the {which} pivot")
    return worst(part, counted_factors(upright_build, inside, *held))
