"""How hard each load case is: whether strength is asked for, the multiples, and what follows from them.

Nothing here applies until the builder asks for strength: a sheet is finished without it.
"""

from rules.graph.asking import given
from rules.graph.declare import value
from rules.graph.results import Estimate, NotJudged
from rules.measure.quantity import GRAVITY
from rules.measure.units import Kg, Mm, MPa, NewtonMetre, Ratio
from rules.sheet.loads import MultiplesAsked
from rules.strength.load_cases import Multiples
from rules.tables import sources
from rules.tables.load_multiples import LOAD_MULTIPLES, Case, Use

OFFERED = "as entered, else the figure offered for the use of the car (rules/tables/load_multiples.py)"
NOT_ASKED = "strength was not asked for; answer yes to judge the strength under loads and links"
HEIGHT_OF_TRACK = 0.425
"""Height of the centre of gravity over the track where it is not entered: the outer wheel of a corner of 1 g then carries 1.85
times its standing load. Common practice, no source: cars lie near 0.35 to 0.45 of their track, and these are raised."""
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
    formula="torque of one front brake x the greater of: 1; line pressure the foot makes / line pressure it is counted with",
    source=sources.STATICS,
)
def most_brake_torque(
    front_brake_torque: NewtonMetre, line_pressure: MPa, worked_line_pressure: MPa | None
) -> NewtonMetre:
    """Torque of one front brake under the harder of: the hard stop as counted, and the foot as entered, N m.

    >>> most_brake_torque(1500.0, 7.0, 10.5), most_brake_torque(1500.0, 7.0, None)
    (2250.0, 1500.0)
    """
    return front_brake_torque * max(1.0, (worked_line_pressure or 0.0) / line_pressure)


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
