"""Does the foot make the pressure that is counted on, with travel to spare, and does the front lock first."""

from rules.graph.bands import AtLeast, AtMost
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import more_than
from rules.measure.units import Mm, MPa, Newton, NewtonMetre, Ratio, Share
from rules.tables import sources

HARDEST_FOOT = AtMost("N", 500.0, 700.0)
BEYOND_GRIP = AtLeast("1", 1.1, 1.0)
"""Deceleration at which the rear locks first, over the road's grip. A tenth in hand is common practice, no source: friction of
one set of pads differs as much from that of the next."""
OF_THE_ROOM = AtMost("1", 2 / 3, 1.0)


@check(
    "line-pressure-made",
    step="brakes",
    title="Line pressure the foot makes",
    limits=AtLeast("1", 1.0),
    good="as much as the brakes are counted with, or more",
    stop="less",
    source=sources.STATICS.saying("pedal ratio and master cylinder, no booster beside what is entered"),
    try_changing=("brakes.pedal_ratio", "brakes.master_bore"),
)
def line_pressure_made(
    worked_line_pressure: MPa,
    line_pressure: MPa,
    pedal_effort: Newton,
    strongest_brake_torque: NewtonMetre | None,
    limits: AtLeast,
) -> Judgement:
    """Foot, pedal and cylinder against the line pressure that brake torque rests on."""
    verdict = limits.verdict(worked_line_pressure / line_pressure)
    text = "A foot of {pedal_effort} makes {worked_line_pressure}; the brakes are counted with {line_pressure}."
    if more_than(worked_line_pressure, line_pressure):
        judged = (
            "is judged with what the foot makes"
            if strongest_brake_torque
            else "is not judged with it: the brake is not known"
        )
        text += f" All that the brake bends {judged}."
    if verdict == "good":
        return Judgement(verdict, text)
    return Judgement(
        verdict,
        text,
        "The master cylinder's bore and the pedal's ratio decide it, or a booster; or count with the pressure the foot makes.",
    )


@check(
    "pedal-effort",
    step="brakes",
    title="Foot a hard stop takes",
    limits=HARDEST_FOOT,
    source=sources.UN_R13H.at("Annex 3", "500 N at most in its tests; 700 N is this program's own"),
    try_changing=("brakes.pedal_ratio", "brakes.master_bore"),
)
def pedal_effort_for_stop(pedal_effort_needed: Newton, line_pressure: MPa, limits: AtMost) -> Judgement:
    """Foot on the pedal for the line pressure the brakes are counted with."""
    verdict = limits.verdict(pedal_effort_needed)
    text = "{line_pressure} takes a foot of {pedal_effort_needed}."
    change = (
        ""
        if verdict == "good"
        else "The master cylinder's bore, the pedal's ratio and the caliper's pistons decide it, or a booster."
    )
    return Judgement(verdict, text, change)


@check(
    "pedal-travel",
    step="brakes",
    title="Pedal travel",
    limits=OF_THE_ROOM,
    good="two thirds of the way to the floor at most",
    watch="to the floor",
    stop="more than there is",
    source=sources.COMMON_PRACTICE.saying("a third is kept for worn pads, warm hoses and fluid, from memory"),
)
def pedal_travel_there_is(pedal_travel: Mm, pedal_room: Mm, limits: AtMost) -> Judgement:
    """How far the pedal goes in a hard stop against how far it can."""
    verdict = limits.verdict(pedal_travel / pedal_room)
    text = "In a hard stop the pedal goes {pedal_travel} of the {pedal_room} there is."
    return Judgement(
        verdict,
        text,
        ""
        if verdict == "good"
        else "The master cylinder's bore, the pedal's ratio and the caliper's pistons decide it.",
    )


@check(
    "front-locks-first",
    step="brakes",
    title="Front wheels lock before the rear",
    limits=BEYOND_GRIP,
    good="up to {good} x the road's grip or more",
    watch="up to that grip, with less than a tenth in hand for pads, tyres and loads that are not alike",
    stop="the rear locks first below that: the car swaps ends",
    source=(
        sources.STATICS.saying(
            "weight shifts forward by deceleration x height / wheelbase; brakes and tyres cold and alike"
        ),
        sources.COMMON_PRACTICE.saying("a tenth in hand"),
    ),
    try_changing=("brakes.rear_pressure_share",),
)
def front_locks_first(rear_locks_at: Ratio, road_grip: Ratio, worked_front_share: Share, limits: AtLeast) -> Judgement:
    """The deceleration from which the rear locks first, against the most grip the road gives."""
    verdict = limits.verdict(rear_locks_at / road_grip)
    text = (
        "Front brakes make {worked_front_share} of the braking; the rear would lock first from {rear_locks_at} g on, and the "
        "road grips to {road_grip} g."
    )
    if verdict == "good":
        return Judgement(verdict, text)
    return Judgement(verdict, text, "Pressure, pistons and rotors of the rear against those in front decide it.")
