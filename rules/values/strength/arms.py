"""How close the arms that stand out of the upright are to yielding: steering arm, caliper bracket, fixed snout.

Nothing here applies while none of the entries a part needs is answered.
"""

from math import hypot

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate, NotJudged
from rules.measure.units import Mm, MPa
from rules.measure.vectors import size
from rules.sheet.hub import HeldTogetherBy, turns_on_a_snout
from rules.sheet.upright import ArmForm
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.strength.section import Section, flat_plate, hollow_rectangle, round_bar, round_tube
from rules.strength.stress import SectionLoads, section_stress
from rules.tables import sources
from rules.values.optional_step import needed, whole, whole_once_begun
from rules.values.strength.upright import MISES, caliper_force, factor_of, moment_at, worst


@value("upright", formula="the arm's section by its form and sizes", source=sources.GEOMETRY)
def steering_arm_section(
    steering_arm_form: ArmForm | None,
    steering_arm_length: Mm | None,
    steering_arm_width: Mm | None,
    steering_arm_height: Mm | None,
    steering_arm_wall: Mm | None,
) -> Section:
    """The steering arm's section at its root.

    >>> steering_arm_section("flat bar", 110.0, 40.0, 12.0, None).modulus_v
    3200.0
    """
    begun = {"upright.steering_arm_form": steering_arm_form, "upright.steering_arm_length": steering_arm_length,
             "upright.steering_arm_width": steering_arm_width}  # fmt: skip
    *_, width = whole_once_begun("the steering arm is not entered, so it was not judged", begun)
    form: ArmForm = needed("upright.steering_arm_form", steering_arm_form)
    height = {"upright.steering_arm_height": steering_arm_height}
    wall = {"upright.steering_arm_wall": steering_arm_wall}
    if form == "round bar":
        return round_bar(width)
    if form == "flat bar":
        return flat_plate(width, whole(height)[0])
    if form == "round tube":
        return round_tube(width, *whole(wall))
    high, thick = whole(height | wall)
    return hollow_rectangle(width, high, thick, 2 * thick)


@value("upright", formula="yield / von Mises stress at the root of the arm: tie-rod force, all of it square to the arm, x "
       "length, and x what the joint stands above or below the root's middle as twist", source=MISES)  # fmt: skip
def steering_arm_safety(
    steering_arm_section: Section,
    steering_arm_length: Mm | None,
    steering_arm_root_above: Mm | None,
    tie_rod_above: Mm | None,
    upright_yield: MPa,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of the steering arm at its root, bent and, where its joint stands higher or lower, twisted.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, push = (0.0, 0.0, 0.0), (0.0, 2000.0, 0.0)
    >>> places = Places(none, none, none, none, none, none, none, none)
    >>> loads = CornerLoads(places, (CaseLoads("rock", none, push, none, none, none, push, 200_000.0),))
    >>> round(steering_arm_safety(flat_plate(40.0, 12.0), 100.0, 0.0, 0.0, 250.0, loads), 3)
    3.941
    """
    heights = {"upright.steering_arm_root_above": steering_arm_root_above, "steering.tie_rod_above": tie_rod_above}
    root, joint = whole(heights)
    length, factors = steering_arm_length or 0.0, []
    for case in part_loads.cases:
        level, upward = hypot(case.tie_rod[0], case.tie_rod[1]), case.tie_rod[2]
        acting = SectionLoads(
            shear_u=level,
            shear_v=upward,
            moment_v=level * length,
            moment_u=upward * length,
            twist=level * abs(joint - root),
        )
        factors.append((factor_of(upright_yield, section_stress(steering_arm_section, acting)), case.case,
                        "yield at the root of the steering arm"))  # fmt: skip
    return worst("steering arm", factors)


@value("upright", formula="the bracket's section at its root", source=sources.GEOMETRY)
def caliper_bracket_section(
    bracket_arm_length: Mm | None, bracket_arm_width: Mm | None, bracket_arm_offset: Mm | None,
    bracket_thickness: Mm | None,
) -> Section:  # fmt: skip
    """The caliper bracket's section at its root.

    >>> caliper_bracket_section(40.0, 60.0, 12.0, 10.0).modulus_v
    6000.0
    """
    begun = {"upright.bracket_arm_length": bracket_arm_length, "upright.bracket_arm_width": bracket_arm_width,
             "upright.bracket_arm_offset": bracket_arm_offset}  # fmt: skip
    _, width, _ = whole_once_begun("the caliper bracket is not entered, so it was not judged", begun)
    return flat_plate(width, needed("plate.bracket_thickness", bracket_thickness))


@value("upright", formula="as entered, else by the places of pads and bolts on the rotor", source=sources.GEOMETRY)
def pads_beyond_bolts(pads_beyond_caliper_bolts: Mm | None, pads_from_bolts: Mm | None) -> Mm:
    """From the line through the caliper's bolts to the middle of the pads, mm. An estimate until it is entered.

    >>> pads_beyond_bolts(18.0, 20.0), float(pads_beyond_bolts(None, 20.0))
    (18.0, 20.0)
    """
    if pads_beyond_caliper_bolts is not None:
        return pads_beyond_caliper_bolts
    field = "bolts.pads_beyond_caliper_bolts"
    return Estimate(needed(field, pads_from_bolts), measure=field)


@value("upright", formula="yield / von Mises stress at the root of the bracket: brake torque / pad radius as a force along "
       "the rotor's edge, x free length and the pads' reach beyond the bolts, and x offset as twist", source=MISES)  # fmt: skip
def caliper_bracket_safety(
    caliper_bracket_section: Section,
    bracket_arm_length: Mm | None,
    bracket_arm_offset: Mm | None,
    pads_beyond_bolts: Mm | None,
    upright_yield: MPa,
    brake_effective_radius: Mm | None,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of the caliper bracket where it leaves its weld or bolts.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, push = (0.0, 0.0, 0.0), (0.0, 2000.0, 0.0)
    >>> places = Places(none, none, none, none, none, none, none, none)
    >>> loads = CornerLoads(places, (CaseLoads("rock", none, push, none, none, none, push, 200_000.0),))
    >>> round(caliper_bracket_safety(flat_plate(60.0, 10.0), 60.0, 0.0, None, 250.0, 100.0, loads), 3)
    11.471
    """
    lever, factors = (bracket_arm_length or 0.0) + (pads_beyond_bolts or 0.0), []
    for case in part_loads.cases:
        force = caliper_force(case, brake_effective_radius)
        acting = SectionLoads(shear_u=force, moment_v=force * lever,
                              twist=force * (bracket_arm_offset or 0.0))  # fmt: skip
        factors.append((factor_of(upright_yield, section_stress(caliper_bracket_section, acting)), case.case,
                        "yield at the root of the caliper bracket"))  # fmt: skip
    return worst("caliper bracket", factors)


WIDEST_BORE = 2 / 3
"""Bore of a hollow snout over its diameter, the widest that is usual. Common practice, no source."""


@value("upright", formula="as entered, else two thirds of the snout's diameter", source=sources.AS_ENTERED)
def snout_hollow(snout_diameter: Mm | None, snout_bore: Mm | None) -> Mm:
    """Diameter of the hole in a fixed snout at its root, mm. An estimate until it is entered: 0 is a solid one.

    >>> snout_hollow(45.0, 0.0), float(snout_hollow(45.0, None))
    (0.0, 30.0)
    """
    if snout_bore is not None:
        return snout_bore
    return Estimate(WIDEST_BORE * needed("upright.snout_diameter", snout_diameter), measure="upright.snout_bore")


@value("upright", formula="the snout as a round bar, less its bore", source=sources.GEOMETRY)
def snout_section(
    snout_diameter: Mm | None, snout_yield: MPa | None, snout_hollow: Mm | None, held_together_by: HeldTogetherBy | None
) -> Section:
    """The section of a fixed snout at its root.

    >>> [round(snout_section(40.0, 600.0, bore, None).modulus_u, 1) for bore in (0.0, 20.0)]
    [6283.2, 5890.5]
    """
    if snout_diameter is None and snout_yield is None and turns_on_a_snout(held_together_by):
        why = "nothing is entered of the snout the hub turns on, so it was not judged"
        raise NotJudged(why, "upright.snout_diameter", "upright.snout_yield")
    if snout_diameter is None and snout_yield is None:
        raise DoesNotApply("no fixed snout is entered")
    diameter, _ = whole({"upright.snout_diameter": snout_diameter, "upright.snout_yield": snout_yield})
    return round_bar(diameter) if not snout_hollow else round_tube(diameter, (diameter - snout_hollow) / 2)


@value("upright", formula="yield of the snout / von Mises stress at its root, worst case; 32 M / (pi d3) and the rest",
       source=MISES)  # fmt: skip
def snout_safety(
    snout_section: Section,
    snout_yield: MPa | None,
    brake_effective_radius: Mm | None,
    rotor_plane_offset: Mm,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of a fixed snout where it meets the upright's face, with no stress raiser.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, push = (0.0, 0.0, 0.0), (0.0, 2000.0, 0.0)
    >>> places = Places(none, none, none, none, none, none, none, none)
    >>> loads = CornerLoads(places, (CaseLoads("rock", none, push, none, none, none, push, 200_000.0),))
    >>> round(snout_safety(round_bar(20.0), 600.0, 100.0, 0.0, loads), 3)
    37.45
    """
    places, factors = part_loads.places, []
    for case in part_loads.cases:
        brake = caliper_force(case, brake_effective_radius)
        lever = abs(rotor_plane_offset - places.mount_face[1])
        moment = size(moment_at(case, places, places.mount_face)) + brake * lever
        shear = hypot(case.hub_force[0], case.hub_force[2]) + brake
        stress = section_stress(snout_section, SectionLoads(axial=case.hub_force[1], moment_u=moment, shear_u=shear))
        factors.append((factor_of(snout_yield or 0.0, stress), case.case, "yield at the root of the snout"))
    return worst("snout", factors)
