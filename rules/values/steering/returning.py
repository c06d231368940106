"""What weight, stones and brakes do to steered wheels: lift, camber, return to straight, levers; castor by turning."""

from math import asin, atan, cos, hypot, pi, radians, sin, tan

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged, Waits
from rules.measure.quantity import GRAVITY
from rules.measure.units import Kg, Mm, Newton, NewtonMetre, Rad
from rules.measure.vectors import Vector, size, times
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import Pose
from rules.motion.sweep import Sweep, Worst
from rules.motion.turned import spin_at, turn_at
from rules.motion.turning import Steered, both_wheels, lift, return_lever, turn_per_slide
from rules.tables import sources
from rules.values.steering.motion import EXACT
from rules.values.steering.self_centring import return_moment_20_deg
from rules.values.steering.turning import TURN

VIRTUAL_WORK = sources.DERIVED.saying(
    "virtual work of the weight on both tyres; no friction, no side force on the tyres"
)


SIDE_ACCELERATION = 0.1
"""g. A gentle bend, such as is driven at walking pace: what the steering must come back from by itself."""
GENTLE = sources.OWN.saying("0.1 g, a gentle bend; the tyre's own trail, which returns the wheels too, is left out")


@value(
    "turning",
    formula="2 x corner weight x 0.1 g x mechanical trail x cos(axis tilt): both tyres' side force in a gentle bend",
    source=(sources.GILLESPIE.at("ch. 8", "the moment of the side force about the steering axis"), GENTLE),
)
def side_force_moment(corner_weight: Kg, mechanical_trail: Mm, axis_tilt: Rad) -> NewtonMetre:
    """Moment of both front tyres' side force about the steering axes in a gentle bend, N m. Positive returns.

    2 x 250 kg x 0.980665 m/s2 = 490.3325 N at 40 mm is 19.6133 N m.

    >>> round(side_force_moment(250.0, 40.0, 0.0), 4)
    19.6133
    """
    return 2 * corner_weight * SIDE_ACCELERATION * GRAVITY * mechanical_trail * cos(axis_tilt) / 1000


def _returns(
    what: str, weight: float, height: float, ground_offset: float, ahead: float, inclination: float, castor: float
) -> float:
    """What returns the wheels at 20 deg, N m. what: "weight" alone, or with the side force of a gentle "bend"."""
    trail = height * tan(castor) + ahead
    by_weight = return_moment_20_deg(weight, height, ground_offset, trail, inclination, castor)
    if what == "weight":
        return by_weight
    return by_weight + side_force_moment(weight, trail, atan(hypot(tan(inclination), tan(castor))))


@value(
    "turning",
    formula="{what_words} at 20 deg with half a degree more {angle}, less that with half a degree less",
    source=VIRTUAL_WORK,
    each=[
        {"what": what, "what_words": words, "angle": angle}
        for what, words in (("weight", "return moment"), ("bend", "return and side force moment"))
        for angle in ("castor", "inclination")
    ],
)
def what_return_per_angle(
    corner_weight: Kg,
    wheel_centre_height: Mm,
    ground_offset: Mm,
    axis_ahead: Mm | None,
    inclination: Rad,
    castor: Rad,
    what: str,
    angle: str,
) -> NewtonMetre:
    """What a degree more {angle} does to the moment that returns the wheels from 20 deg, N m; positive helps.

    A degree of castor on an axis without any moves the contact of a 400 mm wheel 6.98 mm back; the side force of 490.3 N
    does 3.4 N m more for it, times the cosine of the lean of 10 deg.

    >>> case = (250.0, 400.0, 50.0, None, radians(10), 0.0)
    >>> helps = [what_return_per_angle(*case, what, "castor") for what in ("bend", "weight")]
    >>> round((helps[0] - helps[1]) / cos(radians(10)), 1)
    3.4
    """
    axle, half = (corner_weight, wheel_centre_height, ground_offset, axis_ahead or 0.0), radians(0.5)
    up, back = (0.0, half) if angle == "castor" else (half, 0.0)
    more = _returns(what, *axle, inclination + up, castor + back)
    return more - _returns(what, *axle, inclination - up, castor - back)


def _return_moment(linkage: SteeringLinkage, wheels: Steered, corner_weight: float) -> float:
    return corner_weight * GRAVITY * return_lever(linkage, wheels) / 1000


@value(
    "turning",
    formula="corner weight x g x (rate of lift, inner wheel + outer wheel x its share of the turn), least from straight "
    "to full lock",
    source=VIRTUAL_WORK,
)
def least_return_moment(lock_sweep: Sweep, steering_linkage: SteeringLinkage, corner_weight: Kg) -> NewtonMetre:
    """Least moment about the inner wheel's axis that returns both wheels, N m, off straight ahead. Positive returns.

    Nought straight ahead, so the least is near it where the moment grows with the lock, as it should.

    >>> least_return_moment(through_lock(leaning()), leaning().linkage, 250.0).lock
    0.125
    """
    off_straight = both_wheels(lock_sweep)[1:]
    moments = ((_return_moment(steering_linkage, wheels, corner_weight), wheels.lock) for wheels in off_straight)
    moment, lock = min(moments)
    return Worst(moment, 0.0, lock)


@value(
    "turning",
    formula="corner weight x g x (rate of lift, inner wheel + outer wheel x its share of the turn) at full lock",
    source=VIRTUAL_WORK,
)
def return_moment_full_lock(lock_sweep: Sweep, steering_linkage: SteeringLinkage, corner_weight: Kg) -> NewtonMetre:
    """Moment about the inner wheel's axis that returns both wheels from full lock, N m. Positive returns.

    Inner wheel turned 20 deg: lever 6.8084 mm; the outer a little less far, and its lever a little less.

    >>> 0.9 < return_moment_full_lock(through_lock(leaning()), leaning().linkage, 250.0) / (250 * 9.80665 * 0.0136168) < 1
    True
    """
    return _return_moment(steering_linkage, both_wheels(lock_sweep)[-1], corner_weight)


@value("turning", formula="return moment at full lock x turn of the inner wheel by slide", source=VIRTUAL_WORK)
def rack_force_full_lock(
    lock_sweep: Sweep, steering_linkage: SteeringLinkage, return_moment_full_lock: NewtonMetre
) -> Newton:
    """Force along rack or relay rod that holds both wheels at full lock against the weight, N. No friction.

    Rod 56.847 deg to an arm of 150 mm, lever 125.584 mm, and 2.923 deg to the rack: 10 / 0.125584 x cos 2.923 deg.

    >>> round(rack_force_full_lock(through_lock(straight_rack()), straight_rack().linkage, 10.0), 1)
    79.5
    """
    if steering_linkage.how == "one rod across":
        raise DoesNotApply("with one rod across it is not asked what turns the arm")
    inner = lock_sweep.placed[-1].pose
    return 1000 * return_moment_full_lock * abs(turn_per_slide(steering_linkage, inner))


@value("turning", formula="rack force x travel per turn / (pi x steering wheel diameter)", source=VIRTUAL_WORK)
def rim_effort(rack_force_full_lock: Newton, travel_per_turn: Mm | None, steering_wheel_diameter: Mm | None) -> Newton:
    """Steering-wheel effort, at the rim, that holds full lock against the car's weight, N. No friction, no help.

    1000 N and 50 mm a turn are 50 N m of work; the rim of 350 mm goes 1.09956 m.

    >>> round(rim_effort(1000.0, 50.0, 350.0), 3)
    45.473
    """
    if travel_per_turn is None and steering_wheel_diameter is None:
        raise NotJudged(
            "neither travel per turn nor steering wheel diameter is entered",
            "steering.travel_per_turn",
            "steering.steering_wheel_diameter",
        )
    if travel_per_turn is None:
        raise Waits("steering.travel_per_turn")
    if steering_wheel_diameter is None:
        raise Waits("steering.steering_wheel_diameter")
    return rack_force_full_lock * travel_per_turn / (pi * steering_wheel_diameter)


@value("turning", formula="return moment at 20 deg with castor at nought, trail with it", source=VIRTUAL_WORK)
def return_moment_without_castor(
    corner_weight: Kg, wheel_centre_height: Mm, ground_offset: Mm, axis_ahead: Mm | None, inclination: Rad
) -> NewtonMetre:
    """What the return moment at 20 deg would be without castor, N m.

    The worked case without castor and trail: 2 x 250 kg x 9.80665 x 0.006808417 = 33.384 N m.

    >>> from math import radians
    >>> round(return_moment_without_castor(250.0, 400.0, 50.0, None, radians(10)), 3)
    33.384
    """
    trail = axis_ahead or 0.0
    return return_moment_20_deg(corner_weight, wheel_centre_height, ground_offset, trail, inclination, 0.0)


@value("turning", formula="return moment at 20 deg with inclination at nought", source=VIRTUAL_WORK)
def return_moment_without_inclination(
    corner_weight: Kg, wheel_centre_height: Mm, ground_offset: Mm, mechanical_trail: Mm, castor: Rad
) -> NewtonMetre:
    """What the return moment at 20 deg would be without inclination, the ground offset as it is, N m.

    An axis straight up lifts nothing.

    >>> return_moment_without_inclination(250.0, 400.0, 50.0, 0.0, 0.0)
    0.0
    """
    return return_moment_20_deg(corner_weight, wheel_centre_height, ground_offset, mechanical_trail, 0.0, castor)


@value("turning", formula="return moment at 20 deg with ground offset at nought", source=VIRTUAL_WORK)
def return_moment_without_ground_offset(
    corner_weight: Kg, wheel_centre_height: Mm, mechanical_trail: Mm, inclination: Rad, castor: Rad
) -> NewtonMetre:
    """What the return moment at 20 deg would be if the axis met the ground in the tyre's centre plane, N m.

    >>> return_moment_without_ground_offset(250.0, 400.0, 0.0, 0.0, 0.0)
    0.0
    """
    return return_moment_20_deg(corner_weight, wheel_centre_height, 0.0, mechanical_trail, inclination, castor)


WHEELS = ({"which": "inner"}, {"which": "outer"})
"""Of a turn."""


def _at_full_lock(lock_sweep: Sweep, which: str) -> Pose:
    """The left wheel where it is the inner or the outer one of a turn at full lock."""
    return lock_sweep.placed[-1 if which == "inner" else 0].pose


@value(
    "turning",
    formula="how far the disc's lowest point would sink, {which} wheel at full lock",
    source=EXACT,
    each=WHEELS,
)
def lift_full_lock_which(lock_sweep: Sweep, which: str) -> Mm:
    """Rise of the body at the {which} wheel at full lock, mm; minus where it sinks, as with castor the outer often does.

    >>> round(lift_full_lock_which(through_lock(leaning()), "inner"), 5)
    1.22178
    >>> 0 < lift_full_lock_which(through_lock(leaning()), "outer") < 1.22178
    True
    """
    return lift(_at_full_lock(lock_sweep, which))


@value("turning", formula="lean of the {which} wheel at full lock", source=EXACT, each=WHEELS)
def camber_full_lock_which(lock_sweep: Sweep, which: str) -> Rad:
    """Camber of the {which} wheel at full lock, rad, top outboard positive.

    >>> from math import degrees
    >>> round(degrees(camber_full_lock_which(through_lock(leaning()), "inner")), 5)
    0.59091
    >>> 0 < degrees(camber_full_lock_which(through_lock(leaning()), "outer")) < 0.59091
    True
    """
    return _at_full_lock(lock_sweep, which).camber


@value(
    "turning",
    formula="hub height offset x cos(axis tilt): a rock pushes at wheel-centre height",
    source=sources.GEOMETRY,
)
def kickback_lever(hub_height_offset: Mm, axis_tilt: Rad) -> Mm:
    """Lever about the steering axis of a rearward force through the wheel centre, mm: a rock pushes at wheel-centre height.

    The wheel rolls free, so whatever a rock does at the tread reaches the upright through the bearing.

    >>> from math import radians
    >>> round(kickback_lever(100.0, radians(60)), 9)
    50.0
    """
    return hub_height_offset * cos(axis_tilt)


@value("turning", formula="ground offset x cos(axis tilt)", source=sources.GEOMETRY)
def braking_lever(ground_offset: Mm, axis_tilt: Rad) -> Mm:
    """Lever about the steering axis of a brake force on the tyre at the ground, caliper on the upright, mm.

    >>> from math import radians
    >>> round(braking_lever(50.0, radians(60)), 9)
    25.0
    """
    return ground_offset * cos(axis_tilt)


@value(
    "turning",
    formula="lean of the wheel turned 20 deg seen from above, its front {side}",
    source=EXACT,
    each=({"way": "out", "side": "outboard"}, {"way": "in", "side": "inboard"}),
)
def camber_turned_20_way(inclination: Rad, castor: Rad, way: str, static_camber: Rad | None = None) -> Rad:
    """Camber on a turn plate with the wheel turned {way} by 20 deg, rad, top outboard positive. static_camber: nought if empty.

    Without castor the wheel leans alike both ways; turned 19.684588 deg, 0.590912 deg.

    >>> from math import degrees, radians
    >>> [round(degrees(camber_turned_20_way(radians(10), 0.0, way)), 2) for way in ("out", "in")]
    [0.61, 0.61]
    """
    lean: Vector = (-tan(castor), -tan(inclination), 1.0)
    axis = times(1 / size(lean), lean)
    steer = TURN if way == "out" else -TURN
    spin = (0.0, cos(static_camber or 0.0), -sin(static_camber or 0.0))
    return asin(-spin_at(turn_at(steer, axis, spin), axis, spin)[2])


@value(
    "turning",
    formula="(camber turned 20 deg out - camber turned 20 deg in) / (2 x sin 20 deg), a factor of 1.46",
    source=sources.DERIVED.saying("from the rotation, for small castor; the factor 1.46 at 20 deg is common practice"),
)
def castor_by_turning(camber_turned_20_out: Rad, camber_turned_20_in: Rad) -> Rad:
    """Castor as turn plates and a camber gauge will read it, rad: close to the true one, not equal to it.

    4.1 deg of difference x 1.4619 = 5.99 deg.

    >>> from math import degrees, radians
    >>> round(degrees(castor_by_turning(radians(2.6), radians(-1.5))), 2)
    5.99
    """
    return (camber_turned_20_out - camber_turned_20_in) / (2 * sin(TURN))
