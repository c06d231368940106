"""From the foot to the pads: line pressure, effort and travel of the pedal, and which axle locks first.

Nothing here applies while none of the entries it needs is answered.
"""

from rules.graph.declare import value
from rules.graph.results import Estimate
from rules.measure.units import Kg, Mm, MPa, Newton, NewtonMetre, Ratio, Share
from rules.sheet.caliper import CaliperKind
from rules.strength import brake, hydraulics
from rules.tables import sources
from rules.values.optional_step import needed, whole, whole_once_begun
from rules.values.strength.multiples import HEIGHT_OF_TRACK

TAKE_UP = 0.6
"""mm a piston moves in a hard stop, pads, caliper and hoses yielding, until it is measured. From memory, no source."""
EVEN_BAR = 0.5


@value(
    "hydraulics", formula="foot x pedal ratio x share of the bar / area of the master cylinder", source=sources.STATICS
)
def worked_line_pressure(
    pedal_effort: Newton | None,
    pedal_ratio: Ratio | None,
    master_bore: Mm | None,
    rear_master_bore: Mm | None,
    bar_to_front: Share | None,
) -> MPa:
    """Front line pressure under the foot as entered, MPa.

    >>> round(worked_line_pressure(444.82, 6.0, 22.225, None, None), 2)
    6.88
    """
    asked = {"brakes.pedal_effort": pedal_effort, "brakes.pedal_ratio": pedal_ratio, "brakes.master_bore": master_bore}
    effort, ratio, bore = whole_once_begun("pedal and master cylinder are not entered, so they were not judged", asked)
    share = 1.0 if rear_master_bore is None else (EVEN_BAR if bar_to_front is None else bar_to_front)
    return hydraulics.pressure(effort, ratio, bore, share)


@value(
    "hydraulics", formula="foot as entered x line pressure wanted / line pressure worked out", source=sources.STATICS
)
def pedal_effort_needed(worked_line_pressure: MPa, pedal_effort: Newton, line_pressure: MPa) -> Newton:
    """Foot on the pedal for the line pressure entered under caliper, N.

    >>> pedal_effort_needed(5.0, 400.0, 7.0)
    560.0
    """
    return pedal_effort * line_pressure / worked_line_pressure


@value(
    "hydraulics",
    formula="pedal ratio x volume the pistons take / area of their cylinder; with two cylinders the farther of the two",
    source=sources.GEOMETRY.saying("a piston's movement in a stop until it is measured: 0.6 mm, from memory"),
)
def pedal_travel(
    pedal_ratio: Ratio | None,
    master_bore: Mm | None,
    rear_master_bore: Mm | None,
    piston_take_up: Mm | None,
    caliper_kind: CaliperKind | None,
    piston_diameter: Mm | None,
    pistons_per_side: int | None,
    rear_caliper_kind: CaliperKind | None,
    rear_piston_diameter: Mm | None,
    rear_pistons_per_side: int | None,
) -> Mm:
    """How far the foot goes in a hard stop, mm, both axles on their cylinders.

    >>> found = pedal_travel(6.0, 22.225, None, 0.5, "sliding", 54.0, 1, "sliding", 40.0, 1)
    >>> round(found, 1)
    54.9
    """
    pedal = {"brakes.pedal_ratio": pedal_ratio, "brakes.master_bore": master_bore}
    ratio, bore = whole_once_begun("pedal and master cylinder are not entered, so they were not judged", pedal)
    sizes = {"caliper.piston_diameter": piston_diameter, "brakes.rear_piston_diameter": rear_piston_diameter}
    diameter, across = whole(sizes)
    pistons = needed("caliper.pistons_per_side", pistons_per_side)
    count = needed("brakes.rear_pistons_per_side", rear_pistons_per_side)
    moves = TAKE_UP if piston_take_up is None else piston_take_up
    ahead = hydraulics.piston_volume(diameter, pistons, needed("caliper.kind", caliper_kind) == "fixed", moves)
    behind = hydraulics.piston_volume(
        across, count, needed("brakes.rear_caliper_kind", rear_caliper_kind) == "fixed", moves
    )
    if rear_master_bore is None:
        found = hydraulics.pedal_travel(ahead + behind, bore, ratio)
    else:
        found = max(
            hydraulics.pedal_travel(ahead, bore, ratio), hydraulics.pedal_travel(behind, rear_master_bore, ratio)
        )
    return found if piston_take_up is not None else Estimate(found, measure="brakes.piston_take_up")


@value(
    "hydraulics",
    formula="2 x pad friction x clamp of one rear pad x its radius; pressure of its own cylinder, or the front's, less a valve",
    source=sources.STATICS,
)
def rear_brake_torque(
    line_pressure: MPa | None,
    worked_line_pressure: MPa | None,
    master_bore: Mm | None,
    rear_master_bore: Mm | None,
    bar_to_front: Share | None,
    rear_pressure_share: Share | None,
    rear_piston_diameter: Mm | None,
    rear_pistons_per_side: int | None,
    rear_effective_radius: Mm | None,
    rear_pad_friction: Ratio | None,
    pad_friction: Ratio | None,
) -> NewtonMetre:
    """Torque of one rear brake in the hard stop the front one is judged at, N m. Pads count as the front's until said.

    >>> found = rear_brake_torque(7.0, None, None, None, None, None, 40.0, 1, 110.0, None, 0.4)
    >>> round(found, 2)
    774.09
    """
    asked = {"brakes.rear_piston_diameter": rear_piston_diameter, "brakes.rear_pistons_per_side": rear_pistons_per_side,
             "brakes.rear_effective_radius": rear_effective_radius}  # fmt: skip
    across, count, radius = whole_once_begun("the rear brakes are not entered, so they were not judged", asked)
    friction = needed("caliper.pad_friction", pad_friction) if rear_pad_friction is None else rear_pad_friction
    front = needed("caliper.line_pressure", worked_line_pressure if line_pressure is None else line_pressure)
    if rear_master_bore is not None:
        bore, bar = needed("brakes.master_bore", master_bore), EVEN_BAR if bar_to_front is None else bar_to_front
        front *= (1 - bar) / bar * (bore / rear_master_bore) ** 2
    pressure = front * (1.0 if rear_pressure_share is None else rear_pressure_share)
    found = brake.brake_torque(friction, brake.piston_force(pressure, across, count), radius) / 1000
    return found if rear_pad_friction is not None else Estimate(found, measure="brakes.rear_pad_friction")


@value("hydraulics", formula="front brake torque / (front + rear brake torque)", source=sources.STATICS)
def worked_front_share(front_brake_torque: NewtonMetre, rear_brake_torque: NewtonMetre) -> Share:
    """Front share of the braking force, tyres alike front and rear.

    >>> worked_front_share(1400.0, 600.0)
    0.7
    """
    return front_brake_torque / (front_brake_torque + rear_brake_torque)


@value(
    "hydraulics",
    formula="(front share of braking - front share of weight) x wheelbase / height of the centre of gravity, which counts "
    "as 0.425 of the track until it is entered",
    source=sources.STATICS.saying("moments about a tyre's foot"),
)
def rear_locks_at(
    worked_front_share: Share,
    corner_weight: Kg,
    vehicle_weight: Kg,
    wheelbase: Mm,
    centre_of_gravity_height: Mm | None,
    track: Mm,
) -> Ratio:
    """Deceleration, g, from which the rear wheels lock before the front ones. An estimate until the height is entered.

    >>> round(rear_locks_at(0.7, 250.0, 1000.0, 2400.0, 600.0, 1500.0), 9)
    0.8
    """
    height = HEIGHT_OF_TRACK * track if centre_of_gravity_height is None else centre_of_gravity_height
    found = hydraulics.rear_locks_at(worked_front_share, 2 * corner_weight / vehicle_weight, height, wheelbase)
    return found if centre_of_gravity_height is not None else Estimate(found, measure="job.centre_of_gravity_height")
