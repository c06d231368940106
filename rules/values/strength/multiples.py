"""How hard each load case is: whether strength is asked for, the multiples, and what follows from them.

Nothing here applies until the builder asks for strength: a sheet is finished without it.
"""

from rules.graph.asking import given
from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged, Waits
from rules.measure.quantity import GRAVITY
from rules.measure.units import Kg, Mm, MPa, Newton, NewtonMetre, Ratio
from rules.sheet.loads import MultiplesAsked
from rules.strength.load_cases import Multiples
from rules.tables import sources
from rules.tables.load_multiples import LOAD_MULTIPLES, Case, Use
from rules.values.stopping.brakes import front_brake_torque, pad_clamp_force

OFFERED = "as entered, else the figure offered for the use of the car (rules/tables/load_multiples.py)"
NOT_ASKED = "strength was not asked for; answer yes to judge the strength under loads and links"
HEIGHT_OF_TRACK = 0.425
"""Height of the centre of gravity over the track where it is not entered: the outer wheel of a corner of 1 g then carries 1.85
times its standing load. Common practice, no source: cars lie near 0.35 to 0.45 of their track, and these are raised."""
BRAKE_OVER_GRIP = 2.0
"""Torque of a front brake that nobody worked out, in times what the tyre grips. This program's own."""
ALL_OF_THE_AXLE = 2.0
"""Times the standing load that the outer wheel can carry at most: the inner one is then in the air."""


@value(
    "loads",
    formula="yes where judge the strength says so, or where it is empty and any multiple is entered",
    source=sources.AS_ENTERED,
)
def strength_asked(loads: MultiplesAsked) -> bool:
    """True where strength is to be judged; not judged where it is not.

    >>> from rules.sheet.loads import Loads
    >>> strength_asked(Loads.record({"judge_strength": True})), strength_asked(Loads.record({"bump": 3.0}))
    (True, True)
    """
    wanted = given(loads, "judge_strength")
    if wanted or (wanted is None and vars(loads)):
        return True
    raise NotJudged(NOT_ASKED, "loads.judge_strength")


@value(
    "loads",
    formula=OFFERED,
    source=lambda member: LOAD_MULTIPLES[member["case"]].source,
    each=[{"case": case, "push": multiple.push} for case, multiple in LOAD_MULTIPLES.items()],
)
def case_multiple(strength_asked: bool, loads_case: Ratio | None, use: Use, case: Case) -> Ratio:
    """{Push}, times the standing load.

    >>> float(case_multiple(True, None, "dunes", "landing")), case_multiple(True, 2.5, "dunes", "landing")
    (6.0, 2.5)
    """
    if loads_case is not None:
        return loads_case
    return Estimate(LOAD_MULTIPLES[case].offered[use], measure=f"loads.{case}")


@value(
    "loads",
    formula="1 + 2 x corner in g x height of the centre of gravity / track, 2 at most",
    source=sources.STATICS.saying(
        "moments about the inner wheel's foot, the axle taking its own share of the weight over"
    ),
)
def outer_wheel_multiple(cornering_multiple: Ratio, centre_of_gravity_height: Mm | None, track: Mm) -> Ratio:
    """Load on the outer wheel of a corner, in times the standing load; the inner wheel keeps the rest of 2.

    A corner of 1 g, centre of gravity 640 up on a track of 1600: 1 + 2 x 640 / 1600.

    >>> outer_wheel_multiple(1.0, 640.0, 1600.0)
    1.8
    >>> round(outer_wheel_multiple(1.0, None, 1600.0), 2)
    1.85
    """
    height = HEIGHT_OF_TRACK * track if centre_of_gravity_height is None else centre_of_gravity_height
    found = min(1 + 2 * cornering_multiple * height / track, ALL_OF_THE_AXLE)
    if centre_of_gravity_height is None:
        return Estimate(found, measure="job.centre_of_gravity_height")
    return found


@value(
    "loads",
    formula="the greater of: line pressure as entered, line pressure the foot as entered makes",
    source=sources.STATICS,
)
def most_line_pressure(line_pressure: MPa | None, worked_line_pressure: MPa | None, pedal_effort: Newton | None) -> MPa:
    """Front line pressure under the harder of: the hard stop as counted, and the foot as entered, MPa.

    >>> most_line_pressure(7.0, 10.5, 500.0), most_line_pressure(None, 10.5, 500.0), most_line_pressure(7.0, None, None)
    (10.5, 10.5, 7.0)
    """
    if worked_line_pressure is None and pedal_effort is not None:
        raise Waits("worked_line_pressure")
    if worked_line_pressure is None and line_pressure is None:
        raise Waits("caliper.line_pressure")
    return max(pressure for pressure in (line_pressure, worked_line_pressure) if pressure is not None)


@value(
    "loads", formula="2 x pad friction x clamp on one pad at that pressure x effective radius", source=sources.STATICS
)
def strongest_brake_torque(
    pad_friction: Ratio,
    most_line_pressure: MPa,
    piston_diameter: Mm,
    pistons_per_side: int,
    brake_effective_radius: Mm,
) -> NewtonMetre:
    """Torque of one front brake at the greatest line pressure known, N m.

    Clamp 7 MPa x pi x 54^2 / 4 = 16031.55 N; 2 x 0.38 x 16031.55 x 0.124 m.

    >>> round(strongest_brake_torque(0.38, 7.0, 54.0, 1, 124.0), 2)
    1510.81
    """
    clamp = pad_clamp_force(most_line_pressure, piston_diameter, pistons_per_side)
    return front_brake_torque(pad_friction, clamp, brake_effective_radius)


@value(
    "loads",
    formula="as worked out; where an entry of the brake misses, twice what the tyre grips, or a grip of 1 where that is not "
    "known either, and no less than braking multiple x standing load x wheel centre height",
    source=sources.COMMON_PRACTICE.saying("front brakes lie between what the tyre grips and twice that"),
)
def most_brake_torque(
    strongest_brake_torque: NewtonMetre | None,
    pad_friction: Ratio | None,
    piston_diameter: Mm | None,
    pistons_per_side: int | None,
    most_line_pressure: MPa | None,
    wheel_grip_torque: NewtonMetre | None,
    braking_multiple: Ratio,
    corner_weight: Kg,
    wheel_centre_height: Mm,
) -> NewtonMetre:
    """The hardest that one front brake can hold its wheel, N m. An estimate, and a high one, while an entry of it misses.

    100 kg at 400 mm are 392.266 N m: twice that where grip is not known; 2.5 times where that multiple asks for it.

    >>> part = (None, 0.38, None, 1, 7.0)
    >>> [round(float(most_brake_torque(*part, *known, 100.0, 400.0)), 1) for known in ((900.0, 1.5), (None, 1.5), (None, 2.5))]
    [1800.0, 784.5, 980.7]
    """
    if strongest_brake_torque is not None:
        return strongest_brake_torque
    if pad_friction is piston_diameter is pistons_per_side is most_line_pressure is None:
        raise NotJudged("the front brake is not entered, so what it makes is not counted", "strongest_brake_torque")
    standing = corner_weight * GRAVITY * wheel_centre_height / 1000
    grips = standing if wheel_grip_torque is None else wheel_grip_torque
    return Estimate(max(braking_multiple * standing, BRAKE_OVER_GRIP * grips), measure="strongest_brake_torque")


@value(
    "loads",
    formula="the greater of: braking multiple; what the brake makes, or the tyre grips if that is less, over standing load x "
    "wheel centre height",
    source=sources.STATICS,
)
def hardest_braking(
    braking_multiple: Ratio,
    most_brake_torque: NewtonMetre | None,
    wheel_grip_torque: NewtonMetre | None,
    corner_weight: Kg,
    wheel_centre_height: Mm,
) -> Ratio:
    """Rearward pull at the ground that braking is judged with, in times the standing load.

    The brake makes 2000 N m, the tyre grips 1500, and 100 kg at 400 mm are 392.266 N m: 3.8239 times.

    >>> round(hardest_braking(1.5, 2000.0, 1500.0, 100.0, 400.0), 4), hardest_braking(1.5, None, 1500.0, 100.0, 400.0)
    (3.8239, 1.5)
    """
    if most_brake_torque is None:
        return braking_multiple
    made = most_brake_torque if wheel_grip_torque is None else min(most_brake_torque, wheel_grip_torque)
    return max(braking_multiple, made / (corner_weight * GRAVITY * wheel_centre_height / 1000))


@value("loads", formula="every multiple together, and what the brake can hold", source=sources.AS_ENTERED)
def multiples(
    bump_multiple: Ratio,
    hardest_braking: Ratio,
    cornering_multiple: Ratio,
    kerb_multiple: Ratio,
    landing_multiple: Ratio,
    rock_multiple: Ratio,
    steering_stop_multiple: Ratio,
    outer_wheel_multiple: Ratio,
    most_brake_torque: NewtonMetre | None,
) -> Multiples:
    """How hard each case is, as the table of cases takes it.

    >>> multiples(3.0, 1.1, 1.0, 1.75, 5.0, 4.5, 1.75, 1.85, 1500.0).brake_holds
    1500000.0
    """
    return Multiples(
        bump_multiple, hardest_braking, cornering_multiple, kerb_multiple, landing_multiple, rock_multiple,
        steering_stop_multiple, outer_wheel_multiple, (most_brake_torque or 0.0) * 1000,
    )  # fmt: skip
