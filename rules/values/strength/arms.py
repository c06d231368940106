"""How close the arms that stand out of the upright are to yielding: steering arm, caliper bracket, fixed snout.

Nothing here applies while none of the entries a part needs is answered.
"""

from math import hypot

from rules.graph.declare import value
from rules.graph.results import DoesNotApply
from rules.measure.units import Mm, MPa
from rules.measure.vectors import size
from rules.sheet.upright import ArmForm
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import SafetyFactor
from rules.strength.section import Section, flat_plate, hollow_rectangle, round_bar, round_tube
from rules.strength.stress import SectionLoads, section_stress
from rules.tables import sources
from rules.values.optional_step import answered, needed, whole
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
    begun = {"steering_arm_form": steering_arm_form, "steering_arm_length": steering_arm_length,
             "steering_arm_width": steering_arm_width}  # fmt: skip
    *_, width = answered("the steering arm is not entered, so it was not judged", "upright", **begun)
    form: ArmForm = needed("upright.steering_arm_form", steering_arm_form)
    height = {"upright.steering_arm_height": steering_arm_height}
    wall = {"upright.steering_arm_wall": steering_arm_wall}
    if form == "round bar":
        return round_bar(width)
    if form == "flat bar":
        return flat_plate(width, *whole(height))
    if form == "round tube":
        return round_tube(width, *whole(wall))
    high, thick = whole(height | wall)
    return hollow_rectangle(width, high, thick, 2 * thick)


@value("upright", formula="yield / bending stress at the root of the arm: tie-rod force, all of it square to the arm, x "
       "length", source=MISES)  # fmt: skip
def steering_arm_safety(
    steering_arm_section: Section,
    steering_arm_length: Mm | None,
    upright_yield: MPa,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of the steering arm at its root. An arm that steps up or down twists as well: that is not in it.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, push = (0.0, 0.0, 0.0), (0.0, 2000.0, 0.0)
    >>> places = Places(none, none, none, none, none, none, none, none)
    >>> loads = CornerLoads(places, (CaseLoads("rock", none, push, none, none, none, push, 200_000.0),))
    >>> round(steering_arm_safety(flat_plate(40.0, 12.0), 100.0, 250.0, loads), 3)
    3.941
    """
    length = steering_arm_length or 0.0
    factors = []
    for case in part_loads.cases:
        level, upward = hypot(case.tie_rod[0], case.tie_rod[1]), case.tie_rod[2]
        acting = SectionLoads(shear_u=level, shear_v=upward, moment_v=level * length, moment_u=upward * length)
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
    _, width, _ = answered(
        "the caliper bracket is not entered, so it was not judged", "upright", bracket_arm_length=bracket_arm_length,
        bracket_arm_width=bracket_arm_width, bracket_arm_offset=bracket_arm_offset,
    )  # fmt: skip
    return flat_plate(width, needed("plate.bracket_thickness", bracket_thickness))


@value("upright", formula="yield / von Mises stress at the root of the bracket: brake torque / pad radius as a force along "
       "the rotor's edge, x free length, and x offset as twist", source=MISES)  # fmt: skip
def caliper_bracket_safety(
    caliper_bracket_section: Section,
    bracket_arm_length: Mm | None,
    bracket_arm_offset: Mm | None,
    upright_yield: MPa,
    brake_effective_radius: Mm | None,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of the caliper bracket where it leaves its weld or bolts.

    >>> from rules.strength.corner_loads import CaseLoads, Places
    >>> none, push = (0.0, 0.0, 0.0), (0.0, 2000.0, 0.0)
    >>> places = Places(none, none, none, none, none, none, none, none)
    >>> loads = CornerLoads(places, (CaseLoads("rock", none, push, none, none, none, push, 200_000.0),))
    >>> round(caliper_bracket_safety(flat_plate(60.0, 10.0), 60.0, 0.0, 250.0, 100.0, loads), 3)
    11.471
    """
    factors = []
    for case in part_loads.cases:
        force = caliper_force(case, brake_effective_radius)
        acting = SectionLoads(shear_u=force, moment_v=force * (bracket_arm_length or 0.0),
                              twist=force * (bracket_arm_offset or 0.0))  # fmt: skip
        factors.append((factor_of(upright_yield, section_stress(caliper_bracket_section, acting)), case.case,
                        "yield at the root of the caliper bracket"))  # fmt: skip
    return worst("caliper bracket", factors)


@value("upright", formula="the snout as a solid round bar", source=sources.GEOMETRY)
def snout_section(snout_diameter: Mm | None, snout_yield: MPa | None) -> Section:
    """The section of a fixed snout at its root.

    >>> round(snout_section(40.0, 600.0).modulus_u, 1)
    6283.2
    """
    if snout_diameter is None and snout_yield is None:
        raise DoesNotApply("no fixed snout is entered")
    diameter, _ = whole({"upright.snout_diameter": snout_diameter, "upright.snout_yield": snout_yield})
    return round_bar(diameter)


@value("upright", formula="yield of the snout / von Mises stress at its root, worst case; 32 M / (pi d3) and the rest",
       source=MISES)  # fmt: skip
def snout_safety(
    snout_section: Section,
    snout_yield: MPa | None,
    brake_effective_radius: Mm | None,
    rotor_plane_offset: Mm,
    part_loads: CornerLoads,
) -> SafetyFactor:
    """Factor on yield of a fixed snout where it meets the upright's face, taken as solid, with no stress raiser.

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
