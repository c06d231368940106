"""The hub bearing under the load cases: row loads, static safety, life, and the car the hub comes from.

A double row's catalogue load `P = X Fr + Y Fa` is not used anywhere: it holds no tilting moment.

Ratings and donor belong to the hub step, which every build fills in, so they ask for nothing by themselves: until strength is
asked for nothing here applies, and nothing rests on `part_loads`, which would wait.
"""

from math import degrees

from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged, OutsideRange, Waits
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.measure.records import dataclass
from rules.measure.units import Kg, Mm, Newton, Rad, Ratio
from rules.measure.vectors import Vector, plus, times
from rules.sheet.welds import PadsStand
from rules.strength.bearing import (
    DYNAMIC_SHARE,
    MOST_BEYOND_ROWS,
    RowLoads,
    basic_life,
    life_load,
    life_of_two_rows,
    mean_load,
    row_loads,
    static_row_load,
    static_safety,
    with_pads,
)
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import Margin, SafetyFactor
from rules.tables import sources
from rules.tables.bearing_reliability import ISO_281_2007
from rules.tables.static_safety import RollingElement
from rules.values.corner.stand_ins import STANDS
from rules.values.optional_step import needed

TWO_CENTRES = (
    sources.STATICS.saying("a beam on two pressure centres"),
    sources.MAKERS_ADVICE.saying("a race bearing note sizes hub units so"),
)

ROUGH = 1.2
"""Rough use: 20 % on every load, before life is worked out. Race bearing technical note."""

NO_RATING = "the bearing's {} rating is not known; it is compared with the car the hub comes from"

RELIABILITY = 95
"""Per cent of bearings that reach the life given."""

SHARES = (0.90, 0.08, 0.02)
"""Of the distance: straight ahead, at a quarter of the cornering case, in the cornering case. Rule of thumb, from memory."""


@value(
    "hub bearing",
    formula="spread of pressure centres as entered, else the spread of the rows",
    source=(
        sources.AS_ENTERED.saying("the bearing's drawing"),
        sources.GEOMETRY.saying("back-to-back rows hold further apart than they stand, so their own spread is careful"),
    ),
)
def bearing_spread(strength_asked: bool, pressure_centre_spread: Mm | None, row_spread: Mm | None) -> Mm:
    """Between the two points the bearing holds at, mm. An estimate while only the rows' own spread is known.

    >>> float(bearing_spread(True, None, 20.0))
    20.0
    """
    if pressure_centre_spread is not None:
        return pressure_centre_spread
    if row_spread is None:
        raise Waits("hub.row_spread", "loads.pressure_centre_spread")
    return Estimate(row_spread, measure="loads.pressure_centre_spread")


@value(
    "hub bearing",
    formula="spread of pressure centres as entered, else rows + what the steepest contact angle adds in a hub body so wide",
    source=sources.GEOMETRY.saying("pitch diameter x tangent of the contact angle, back-to-back"),
)
def widest_bearing_spread(
    strength_asked: bool,
    pressure_centre_spread: Mm | None,
    row_spread: Mm | None,
    body_diameter: Mm,
    rolling_element: RollingElement | None,
) -> Mm:
    """The most that lies between the two points the bearing holds at, mm: what is too much even so is too much.

    >>> widest_bearing_spread(True, None, 20.0, 70.0, "ball"), widest_bearing_spread(True, 60.0, 20.0, 70.0, "ball")
    (70.4, 60.0)
    """
    if pressure_centre_spread is not None:
        return pressure_centre_spread
    if row_spread is None:
        raise Waits("hub.row_spread", "loads.pressure_centre_spread")
    return row_spread + MOST_BEYOND_ROWS[needed("hub.rolling_element", rolling_element)] * body_diameter


@dataclass(frozen=True, slots=True)
class Pads:
    """How the pads press on the hub: radius they drag at, mm; lever, mm the rotor stands outboard of the bearing's middle;
    clock, rad from straight up, plus ahead, None where nobody said."""

    radius: float
    lever: float
    clock: float | None

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        where = "in the worst place" if self.clock is None else f"{degrees(self.clock):.0f} deg from straight up"
        radius, lever = (show(round(size, 1), "mm", units) for size in (self.radius, self.lever))
        return f"drag {radius} from the wheel centre, {lever} outboard of the bearing, {where}"


SMALL_ROTOR = 0.35
"""Of the rotor's diameter: how far from the wheel centre the pads count as dragging until that is known. Close in, so careful."""


@value(
    "hub bearing",
    formula="effective radius of the brake, else 0.35 of the rotor's diameter",
    source=sources.COMMON_PRACTICE.saying("pads stand farther out than that, so their push counts as more than it is"),
)
def pads_radius(strength_asked: bool, brake_effective_radius: Mm | None, rotor_diameter: Mm) -> Mm:
    """How far from the wheel centre the pads drag, mm, for what they press on the hub.

    >>> pads_radius(True, 120.0, 300.0), float(pads_radius(True, None, 300.0))
    (120.0, 105.0)
    """
    if brake_effective_radius is not None:
        return brake_effective_radius
    return Estimate(SMALL_ROTOR * rotor_diameter, measure="brakes.effective_radius")


@value(
    "hub bearing",
    formula="by the caliper's place round the clock, else where its bracket's weld says",
    source=sources.GEOMETRY,
)
def pads_on_hub(
    pads_radius: Mm, rotor_plane_offset: Mm, bearing_offset: Mm, clock: Rad | None, caliper_stands: PadsStand | None
) -> Pads:
    """How the pads press on the hub. Where nobody said where the caliper stands, the worst place counts.

    >>> pads_on_hub(120.0, -34.0, -20.0, None, None).words_in("metric")
    'drag 120 mm from the wheel centre, -14 mm outboard of the bearing, in the worst place'
    """
    if clock is None and caliper_stands is not None:
        clock = STANDS[caliper_stands]
    return Pads(pads_radius, rotor_plane_offset - bearing_offset, clock)


@dataclass(frozen=True, slots=True)
class RowCases:
    """Each case by name with what the bearing's rows carry in it."""

    rows: tuple[tuple[str, RowLoads], ...]

    @property
    def text(self) -> str:
        """In words, for the written-out working."""
        return f"both rows in {len(self.rows)} cases"


@value("hub bearing", formula="force and moment at the hub as a pair on two pressure centres, and the pads' push",
       source=TWO_CENTRES)  # fmt: skip
def bearing_rows(corner_loads: CornerLoads, bearing_spread: Mm, pads_on_hub: Pads) -> RowCases:
    """What each row of the bearing carries in every case.

    >>> bearing_rows(CornerLoads(None, ()), 60.0, Pads(120.0, 0.0, None)).text
    'both rows in 0 cases'
    """
    spread, pads = bearing_spread, pads_on_hub
    found = []
    for case in corner_loads.cases:
        rows = row_loads(case.hub_force, case.hub_moment, spread)
        if case.brake_torque:
            rows = with_pads(rows, case.brake_torque / pads.radius, pads.lever, spread, pads.clock)
        found.append((case.case, rows))
    return RowCases(tuple(found))


@value(
    "hub bearing",
    formula="largest radial force on the {which} row, of all cases, with what the pads press on the hub",
    source=TWO_CENTRES,
    each=({"which": "outboard"}, {"which": "inboard"}),
)
def which_row_load(bearing_rows: RowCases, which: str) -> Newton:
    """Radial force on the {which} row in its worst case, N.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> case = CaseLoads("standing", nought, (0.0, 0.0, 4000.0), (40_000.0, 0.0, 0.0), nought, nought, nought)
    >>> rows = bearing_rows(CornerLoads(None, (case,)), 60.0, Pads(120.0, 0.0, None))
    >>> [round(which_row_load(rows, row), 2) for row in ("outboard", "inboard")]
    [2666.67, 1333.33]
    """
    return max(rows.outboard_size if which == "outboard" else rows.inboard_size for _, rows in bearing_rows.rows)


@value(
    "hub bearing",
    formula="half the unit's static rating / (radial force on a row, pads counted, + its part of the thrust), least of all "
    "cases and rows",
    source=(
        sources.ISO_76.saying("s0 = C0 / P0, for each row"),
        sources.MAKERS_ADVICE.saying("the thrust factor, in rules/strength/bearing.py"),
    ),
)
def bearing_static_safety(
    strength_asked: bool,
    static_rating: Newton | None,
    dynamic_rating: Newton | None,
    rolling_element: RollingElement | None,
    bearing_rows: RowCases | None,
) -> SafetyFactor:
    """Static safety s0 of the worse row in the worst case, with what the pads press on the hub.

    At 1 the bearing is dented for good, not broken.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> case = CaseLoads("standing", nought, (0.0, 0.0, 4000.0), (40_000.0, 0.0, 0.0), nought, nought, nought)
    >>> rows = bearing_rows(CornerLoads(None, (case,)), 60.0, Pads(120.0, 0.0, None))
    >>> found = bearing_static_safety(True, 16_000.0, None, "ball", rows)
    >>> round(found, 9), found.limit
    (3.0, 'dents in the outboard row')
    """
    if static_rating is None:
        raise (
            Waits("hub.static_rating") if dynamic_rating else NotJudged(NO_RATING.format("static"), "hub.static_rating")
        )
    element: RollingElement = needed("hub.rolling_element", rolling_element)
    factors = []
    for name, rows in needed("bearing_rows", bearing_rows).rows:
        radial, row = rows.worst
        if static_row_load(radial, rows.thrust, element) > 0:  # the inner wheel of a hard corner may be in the air
            factors.append((static_safety(static_rating, radial, rows.thrust, element), name, f"dents in the {row}"))
    if not factors:
        raise OutsideRange("the bearing carries nothing", change="Put right load on one front tyre first.")
    factor, case, limit = min(factors)
    return Margin(factor, case, limit, part="hub bearing", kind="dents")


@value(
    "hub bearing",
    formula="the static safety with pressure centres as far apart as they can be",
    source=TWO_CENTRES,
)
def static_safety_at_most(
    strength_asked: bool,
    static_rating: Newton | None,
    dynamic_rating: Newton | None,
    rolling_element: RollingElement | None,
    corner_loads: CornerLoads,
    widest_bearing_spread: Mm,
    pads_on_hub: Pads,
) -> Ratio:
    """What the static safety is at most, wherever the pressure centres are.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> case = CaseLoads("standing", nought, (0.0, 0.0, 4000.0), (40_000.0, 0.0, 0.0), nought, nought, nought)
    >>> loads, pads = CornerLoads(None, (case,)), Pads(120.0, 0.0, None)
    >>> round(static_safety_at_most(True, 16_000.0, None, "ball", loads, 60.0, pads), 9)
    3.0
    """
    rows = bearing_rows(corner_loads, widest_bearing_spread, pads_on_hub)
    return float(bearing_static_safety(strength_asked, static_rating, dynamic_rating, rolling_element, rows))


@value(
    "hub bearing",
    formula="the life with pressure centres as far apart as they can be",
    source=TWO_CENTRES,
)
def bearing_life_at_most(
    corner_loads: CornerLoads,
    dynamic_rating: Newton | None,
    static_rating: Newton | None,
    widest_bearing_spread: Mm,
    rolling_element: RollingElement | None,
) -> Ratio:
    """Million turns that the bearing reaches at most, wherever its pressure centres are.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> cases = [CaseLoads(name, nought, (0.0, 0.0, 4000.0), nought, nought, nought, nought)
    ...     for name in ("standing", "cornering, outer")]
    >>> round(bearing_life_at_most(CornerLoads(None, cases), 40_000.0, None, 60.0, "ball"), 1)
    370.4
    """
    return hub_bearing_life(corner_loads, dynamic_rating, static_rating, widest_bearing_spread, rolling_element)


def _part_way(loads: CornerLoads, share: float) -> tuple[Vector, Vector]:
    """The hub's force and moment part of the way from standing to cornering."""
    named = {case.case: case for case in loads.cases}
    standing, cornering = named["standing"], named["cornering, outer"]
    return (
        plus(times(1 - share, standing.hub_force), times(share, cornering.hub_force)),
        plus(times(1 - share, standing.hub_moment), times(share, cornering.hub_moment)),
    )


@value(
    "hub bearing",
    formula="a1 x life of both rows, each (its part of the dynamic rating / (mean load x 1.2))^p; 90 % of the way standing, "
    "8 % at a quarter of the cornering case, 2 % in it",
    source=(
        sources.ISO_281.saying("a1 at 95 %"),
        sources.COMMON_PRACTICE.saying("the shares of the distance, a rule of thumb from memory"),
    ),
)
def hub_bearing_life(
    corner_loads: CornerLoads,
    dynamic_rating: Newton | None,
    static_rating: Newton | None,
    bearing_spread: Mm | None,
    rolling_element: RollingElement | None,
) -> Ratio:
    """Million turns that 95 of 100 such bearings reach, shock and dirt left out.

    Thrust nought and the load midway, so each row carries half, 2400 N with the 1.2: C of one row is 40 000 / 2^0.7 =
    24 622.9 N, its life 1079.88, both rows 578.7, times 0.64.

    >>> from rules.strength.corner_loads import CaseLoads
    >>> nought = (0.0, 0.0, 0.0)
    >>> cases = [CaseLoads(name, nought, (0.0, 0.0, 4000.0), nought, nought, nought, nought)
    ...     for name in ("standing", "cornering, outer")]
    >>> round(hub_bearing_life(CornerLoads(None, cases), 40_000.0, None, 60.0, "ball"), 1)
    370.4
    """
    if dynamic_rating is None:
        raise (
            Waits("hub.dynamic_rating")
            if static_rating
            else NotJudged(NO_RATING.format("dynamic"), "hub.dynamic_rating")
        )
    element: RollingElement = needed("hub.rolling_element", rolling_element)
    spread = needed("bearing_spread", bearing_spread)
    parts = [
        (share, row_loads(*_part_way(corner_loads, turned), spread))
        for share, turned in zip(SHARES, (0.0, 0.25, 1.0), strict=True)
    ]

    def life(row: str) -> float:
        loads = tuple((share, ROUGH * life_load(getattr(rows, row), rows.thrust, element)) for share, rows in parts)
        return basic_life(DYNAMIC_SHARE[element] * dynamic_rating, mean_load(loads, element), element)

    both = life_of_two_rows(life("outboard_size"), life("inboard_size"), element)
    return ISO_281_2007[RELIABILITY] * both


@value(
    "hub bearing",
    formula="load on the tyre x (half the tyre + bearing from the tyre's plane) / the same on the car the hub comes from; "
    "the planes are left out of both while its wheel's offset is not known",
    source=sources.SAE_J328.at(
        "eq. 1", "M = W (R mu + d), the moment a wheel fatigue test puts on a wheel, here at 1 g of cornering"
    ),
)
def bearing_load_against_donor(
    strength_asked: bool,
    corner_weight: Kg,
    design_tyre_diameter: Mm,
    bearing_offset: Mm,
    flange_to_bearing_centre: Mm,
    hat_thickness: Mm,
    donor_axle_weight: Kg,
    donor_tyre_diameter: Mm,
    donor_wheel_offset: Mm | None,
) -> Ratio:
    """How much of the donor car's load and leverage this build puts on the bearing: 1 is as much.

    The donor's rotor is taken to have this rotor's hat.

    >>> bearing_load_against_donor(True, 250.0, 800.0, -20.0, 24.0, 6.0, 1000.0, 600.0, None)
    0.6666666666666666
    >>> bearing_load_against_donor(True, 250.0, 800.0, -20.0, 24.0, 6.0, 1000.0, 600.0, 40.0)
    0.6774193548387096
    """
    here, there = design_tyre_diameter / 2, donor_tyre_diameter / 2
    if donor_wheel_offset is not None:
        here += abs(bearing_offset)
        there += abs(donor_wheel_offset - hat_thickness - flange_to_bearing_centre)
    return corner_weight * here / (donor_axle_weight / 2 * there)
