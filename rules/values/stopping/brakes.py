"""What the front brakes can do: torque against grip, heat in the rotor, and how far the pistons must come out.

Load shifted forward in a stop is not worked out from the height of the centre of gravity, which is not asked: the front
share of braking as entered stands for it.
"""

from math import pi

from rules.graph.asking import given
from rules.graph.declare import value
from rules.graph.results import DoesNotApply, Estimate, NotJudged, OutsideRange, Waits
from rules.measure.quantity import GRAVITY
from rules.measure.units import Celsius, Kg, MetrePerSecond, Mm, MPa, Newton, NewtonMetre, Ratio, Share
from rules.sheet.brakes import Cooling, HardStop, PadFace, PadThickness, RunOfStops
from rules.sheet.caliper import CaliperKind
from rules.sheet.rotor import CUT, RotorStyle
from rules.strength import brake, heat
from rules.tables import sources
from rules.values.optional_step import need_once_begun

STATICS = "statics"
HEAT = sources.DAY.at("eq. 8.14", "energy balance, mass of the braking band alone; grey iron 460 J/(kg K) from memory")
HARD_STOP = ("stop_from", "deceleration", "road_grip")
RUN = ("stops_in_a_run", "seconds_between", "cooling")
"""One of the answers to either asks for what is judged by it."""
TRANSFER: dict[Cooling, float] = {"still air": 10.0, "moving air": 25.0}
"""W/(m2 K). A heat transfer text gives 2 to 25 for still air and 25 to 250 for moving air (from memory)."""


@value(
    "brakes",
    formula="wheel centre to middle of the pads as entered, else (rotor diameter + inside of the braking band) / 4",
    source=sources.WENTZELL.at("ch. 16", "uniform wear of a worn-in pad"),
)
def brake_effective_radius(
    effective_radius: Mm | None, rotor_diameter: Mm | None, band_inside_diameter: Mm | None
) -> Mm:
    """Radius the friction of worn-in pads acts at, mm.

    >>> brake_effective_radius(None, 300.0, 180.0)
    120.0
    """
    if effective_radius is not None:
        return effective_radius
    if rotor_diameter is None or band_inside_diameter is None:
        raise Waits("brakes.effective_radius")
    return Estimate(
        brake.worn_in_radius(rotor_diameter / 2, band_inside_diameter / 2), measure="brakes.effective_radius"
    )


@value("brakes", formula="line pressure x area of the pistons on one side", source=sources.STATICS)
def pad_clamp_force(line_pressure: MPa, piston_diameter: Mm, pistons_per_side: int) -> Newton:
    """Force of one pad on the rotor, N; a sliding caliper's other pad presses as hard.

    >>> round(pad_clamp_force(7.0, 54.0, 1), 2)
    16031.55
    """
    return brake.piston_force(line_pressure, piston_diameter, pistons_per_side)


@value("brakes", formula="2 x pad friction x clamp on one pad x effective radius", source=sources.STATICS)
def front_brake_torque(pad_friction: Ratio, pad_clamp_force: Newton, brake_effective_radius: Mm) -> NewtonMetre:
    """Torque of one front brake at the line pressure of a hard stop, N m.

    >>> round(front_brake_torque(0.38, 16031.55, 124.0), 2)
    1510.81
    """
    return brake.brake_torque(pad_friction, pad_clamp_force, brake_effective_radius) / 1000


@value(
    "brakes",
    formula="clamp on one pad / (angle the pad spans x its inner radius x its height)",
    source=sources.WENTZELL.at("ch. 16", "uniform wear of a worn-in pad"),
)
def pad_pressure(pad_clamp_force: Newton, brake_effective_radius: Mm, brakes: PadFace) -> MPa:
    """Greatest pressure on the friction material, at its inner edge, MPa. Its maker says what it stands.

    >>> from rules.sheet.brakes import Brakes
    >>> round(pad_pressure(16000.0, 120.0, Brakes.record({"pad_length": 100.0, "pad_height": 40.0})), 2)
    4.8
    """
    need_once_begun(brakes, "pad_length", "pad_height", why_not="the size of the pads is not entered")
    angle, half = brakes.pad_length / brake_effective_radius, brakes.pad_height / 2
    return brake.peak_pad_pressure(pad_clamp_force, angle, brake_effective_radius + half, brake_effective_radius - half)


@value(
    "brakes",
    formula="the greater of: load on one front tyre; front share of braking x whole vehicle / 2",
    source=sources.COMMON_PRACTICE.saying("the brakes' share stands for the load shifted forward"),
)
def front_tyre_load_braking(corner_weight: Kg, vehicle_weight: Kg, front_brake_share: Share) -> Newton:
    """Load on one front tyre in a hard stop, N.

    >>> round(front_tyre_load_braking(250.0, 900.0, 0.65))
    2868
    """
    return max(corner_weight, front_brake_share * vehicle_weight / 2) * GRAVITY


@value("brakes", formula="road grip x load on the tyre when braking x wheel centre height", source=sources.STATICS)
def wheel_grip_torque(
    brakes: HardStop, front_tyre_load_braking: Newton | None, wheel_centre_height: Mm | None
) -> NewtonMetre:
    """Torque about the wheel's axis at which a front tyre slides, N m.

    >>> from rules.sheet.brakes import Brakes
    >>> round(wheel_grip_torque(Brakes.record({"road_grip": 0.9}), 6000.0, 400.0), 6)
    2160.0
    """
    why_not = "road grip is not entered, so brake torque was not judged"
    need_once_begun(brakes, "road_grip", why_not=why_not, begun_by=HARD_STOP)
    if front_tyre_load_braking is None or wheel_centre_height is None:
        raise Waits("front_tyre_load_braking" if front_tyre_load_braking is None else "wheel_centre_height")
    return brake.lock_up_torque(brakes.road_grip, front_tyre_load_braking, wheel_centre_height) / 1000


@value(
    "brakes",
    formula="front share / 2 x half of whole vehicle x speed squared",
    source=sources.PHYSICS.saying("energy balance"),
)
def stop_energy(brakes: HardStop, vehicle_weight: Kg | None, front_brake_share: Share | None) -> NewtonMetre:
    """Heat one front brake takes in one stop to a standstill, N m (which is J). Engine braking and drag are left out.

    >>> from rules.sheet.brakes import Brakes
    >>> round(stop_energy(Brakes.record({"stop_from": 128 / 3.6}), 1500.0, 0.7), 1)
    331851.9
    """
    why_not = "the speed a stop starts from is not entered, so heat in the rotor was not judged"
    need_once_begun(brakes, "stop_from", why_not=why_not, begun_by=HARD_STOP)
    if vehicle_weight is None or front_brake_share is None:
        raise Waits("job.vehicle_weight" if vehicle_weight is None else "job.front_brake_share")
    return heat.kinetic_energy(vehicle_weight, brakes.stop_from) * front_brake_share / 2


def _band_area(outside: float, inside: float | None) -> float:
    """One face of the braking band, m2."""
    if inside is None:
        raise Waits("rotor.band_inside_diameter")
    if inside >= outside:
        raise OutsideRange(
            "the inside of the braking band is not less than the rotor's diameter",
            change="Put right inside of the braking band or rotor diameter.",
        )
    return pi / 4 * (outside**2 - inside**2) / 1e6


@value(
    "brakes",
    formula="mass of the braking band as entered, else for a rotor of one plate its volume x 7.2 g a cubic centimetre",
    source=sources.ARITHMETIC.saying("density of grey iron from memory"),
)
def friction_ring_mass(
    ring_mass: Kg | None,
    rotor_style: RotorStyle,
    rotor_diameter: Mm,
    band_inside_diameter: Mm | None,
    rotor_working_thickness: Mm,
) -> Kg:
    """Mass of the iron that is rubbed, kg, as used: no hat, and for a cut rotor the one plate that is left.

    >>> round(friction_ring_mass(None, "solid", 300.0, 180.0, 10.0), 4)
    3.2572
    """
    if ring_mass is not None:
        return ring_mass
    if rotor_style == "vented":
        raise Waits("rotor.ring_mass")
    area = _band_area(rotor_diameter, band_inside_diameter)
    return Estimate(area * rotor_working_thickness / 1000 * heat.GREY_IRON.density, measure="rotor.ring_mass")


@value("brakes", formula="energy of one stop / (mass of the braking band x 460 J/(kg K))", source=HEAT)
def rotor_rise_one_stop(stop_energy: NewtonMetre, friction_ring_mass: Kg) -> Celsius:
    """How much hotter the ring is on average after one stop, deg C.

    >>> round(rotor_rise_one_stop(331851.9, 3.2572), 2)
    221.48
    """
    return heat.bulk_rise(stop_energy, friction_ring_mass)


@value(
    "brakes",
    formula="heat conducted into the ring's own depth, layer by layer, while the flow falls evenly to nought",
    source=sources.DERIVED.saying("one-dimensional conduction by differences, checked against exact solutions"),
)
def rotor_face_rise(
    stop_energy: NewtonMetre,
    friction_ring_mass: Kg,
    stop_from: MetrePerSecond | None,
    deceleration: Ratio | None,
    rotor_diameter: Mm,
    band_inside_diameter: Mm | None,
) -> Celsius:
    """How much hotter the face gets during one stop, deg C. Spots and cracks see more than this even face.

    The depth that is each face's own comes from the ring's mass: half of a solid rotor, one plate of a vented one.

    >>> round(rotor_face_rise(331851.9, 5.21153, 128 / 3.6, 0.7, 300.0, 180.0))
    153
    """
    if stop_from is None or deceleration is None:
        raise Waits("brakes.deceleration" if deceleration is None else "brakes.stop_from")
    area = _band_area(rotor_diameter, band_inside_diameter)
    depth = friction_ring_mass / heat.GREY_IRON.density / (brake.FACES * area)
    seconds = stop_from / (deceleration * GRAVITY)
    return heat.peak_face_rise(stop_energy / brake.FACES, area, depth, seconds)


@value(
    "brakes",
    formula="one stop's rise added at each stop, what is there cooling toward the air between stops",
    source=HEAT,
)
def rotor_rise_run(
    rotor_rise_one_stop: Celsius,
    friction_ring_mass: Kg,
    brakes: RunOfStops,
    rotor_diameter: Mm,
    band_inside_diameter: Mm | None,
) -> Celsius:
    """How much hotter than the air the ring is straight after the last stop of the run, deg C.

    >>> from rules.sheet.brakes import Brakes
    >>> rotor_rise_run(50.0, 5.0, Brakes.record({"stops_in_a_run": 4, "cooling": "none"}), 300.0, None)
    200.0
    >>> cooled = Brakes.record({"stops_in_a_run": 4, "seconds_between": 60, "cooling": "still air"})
    >>> round(rotor_rise_run(50.0, 5.0, cooled, 300.0, 180.0), 1)
    193.1
    """
    if all(given(brakes, key) is None for key in RUN):
        raise NotJudged("no run of stops is entered, so none was judged", *(f"brakes.{key}" for key in RUN))
    stops, cooling = brakes.stops_in_a_run, brakes.cooling
    if cooling == "none":
        return heat.rise_after_run(rotor_rise_one_stop, stops, 0.0, None)
    seconds = brakes.seconds_between
    faces = brake.FACES * _band_area(rotor_diameter, band_inside_diameter)
    slowness = heat.time_constant(friction_ring_mass, faces, TRANSFER[cooling])
    return heat.rise_after_run(rotor_rise_one_stop, stops, seconds, slowness)


@value(
    "brakes",
    formula="thickness the caliper was made for - thinnest the rotor may be, nought at least",
    source=sources.ARITHMETIC,
)
def rotor_thickness_lost(
    made_for_thickness: Mm, minimum_thickness: Mm, rotor_working_thickness: Mm, rotor_style: RotorStyle
) -> Mm:
    """How much thinner than it expects the caliper will find the rotor at the end of its life, mm.

    A cut rotor has no minimum any more: its thickness as finished is taken, and wear comes on top.

    >>> rotor_thickness_lost(22.0, 20.0, 22.0, "vented"), rotor_thickness_lost(22.0, 20.0, 9.0, "cut to one plate")
    (2.0, 13.0)
    """
    thinnest = rotor_working_thickness if rotor_style == CUT else minimum_thickness
    return max(0.0, made_for_thickness - thinnest)


@value("brakes", formula="friction material new - worn out", source=sources.ARITHMETIC)
def pad_wear(brakes: PadThickness) -> Mm:
    """Friction material one pad loses before it is changed, mm.

    >>> from rules.sheet.brakes import Brakes
    >>> pad_wear(Brakes.record({"pad_thickness_new": 11.0, "pad_thickness_worn": 2.0}))
    9.0
    """
    why_not = "pad thicknesses are not entered, so piston travel was not judged"
    need_once_begun(brakes, "pad_thickness_new", "pad_thickness_worn", why_not=why_not)
    if brakes.pad_thickness_worn > brakes.pad_thickness_new:
        raise OutsideRange(
            "the worn pad is thicker than the new one",
            change="Put right friction material worn out or friction material new.",
        )
    return brakes.pad_thickness_new - brakes.pad_thickness_worn


@value(
    "brakes",
    formula="sliding: wear of both pads + thickness lost; fixed: wear of one pad + half of the thickness lost",
    source=sources.GEOMETRY.saying("the caliper"),
)
def piston_travel_needed(pad_wear: Mm, rotor_thickness_lost: Mm, caliper_kind: CaliperKind) -> Mm:
    """How far a piston comes out, mm, from new pads on the rotor it was made for to worn pads on the thinnest rotor.

    >>> piston_travel_needed(9.0, 4.0, "sliding"), piston_travel_needed(9.0, 4.0, "fixed")
    (22.0, 11.0)
    """
    return brake.piston_travel(pad_wear, rotor_thickness_lost, sliding=caliper_kind == "sliding")


@value(
    "brakes",
    formula="thickness as new - finished thickness, of a vented rotor cut to one plate",
    source=sources.ARITHMETIC,
)
def thickness_cut_away(rotor_style: RotorStyle, rotor_thickness: Mm | None, finished_thickness: Mm | None) -> Mm:
    """What cutting to one plate takes off the rotor, mm.

    >>> thickness_cut_away("cut to one plate", 22.0, 9.0)
    13.0
    """
    if rotor_style != CUT:
        raise DoesNotApply("the rotor is not cut to one plate")
    if rotor_thickness is None or finished_thickness is None:
        raise Waits("rotor.thickness" if rotor_thickness is None else "rotor.finished_thickness")
    return rotor_thickness - finished_thickness
