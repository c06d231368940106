"""Does it stop, and again, and again: torque, heat, and pads worn to the end."""

from rules.graph.bands import AtLeast, AtMost, Limits, at_least
from rules.graph.declare import check
from rules.graph.results import Judgement, Waits
from rules.measure.closeness import more_than, reaches
from rules.measure.quantity import GRAVITY
from rules.measure.said import Figures
from rules.measure.units import Celsius, Kg, Mm, NewtonMetre, Ratio, Share
from rules.sheet.brakes import RunOfStops
from rules.sheet.caliper import CaliperKind
from rules.sheet.rotor import CUT, RotorStyle
from rules.tables import sources

IRON_CHANGES = 700.0
"""deg C over the air: at 727 deg C the pearlite of plain iron turns, by the iron-carbon diagram (from memory; the silicon in
grey iron moves that up by some tens of degrees). Pads and fluid are past all they are made for long before."""
RISE = AtMost("°C", good=230.0, watch=IRON_CHANGES)
"""deg C rise in one stop from 128 km/h at 0.7 g: a brake maker's published goal. No standard."""
GLOWS = "At {iron} over the air the iron glows and begins to change; no road pad or fluid works there."
COOLER = "A heavier braking band, slower stops, fewer of them or more time between them; or put right the figure that is a slip."
SPARE_TRAVEL = AtLeast("mm", good=1.0, watch=0.0)
"""Common practice: what a rotor may differ from what the caliper was made for."""
TRADE_FLAG = 250.0
"""deg C rise in one stop at which the trade speaks up. From memory, no source."""


@check(
    "brake-can-lock-wheel",
    step="brakes",
    title="Brake torque against tyre grip",
    good="the brake can use all the grip entered",
    watch="less than that",
    stop="less than the deceleration entered asks for",
    source=(
        sources.STATICS,
        sources.COMMON_PRACTICE.saying("a brake that cannot slide its tyre stops longer than the tyre could"),
    ),
    try_changing=("caliper.line_pressure", "caliper.piston_diameter"),
)
def brake_can_lock_wheel(
    wheel_grip_torque: NewtonMetre,
    front_brake_torque: NewtonMetre | None,
    deceleration: Ratio | None,
    front_brake_share: Share,
    vehicle_weight: Kg,
    wheel_centre_height: Mm,
) -> Judgement:
    """Torque of one front brake against the torque at which its tyre slides, and against what the stop asks for."""
    if front_brake_torque is None:
        raise Waits("front_brake_torque")
    figures, text = {}, "One front brake makes {front_brake_torque}; its tyre slides at {wheel_grip_torque}."
    if deceleration is not None:
        asked = front_brake_share * vehicle_weight / 2 * deceleration * GRAVITY * wheel_centre_height / 1000
        figures["asked"] = (asked, "N m")
        if more_than(asked, front_brake_torque):
            return Judgement(
                "stop",
                text + " The deceleration entered asks for {asked}: this brake cannot make it.",
                "Pistons, rotor, line pressure and the pads' friction decide it.",
                figures,
            )
    verdict = at_least(front_brake_torque, good=wheel_grip_torque, watch=0.0)
    if verdict == "good":
        text += " The tyre sets the limit: see that the front locks before the rear."
        return Judgement(verdict, text, "", figures)
    return Judgement(
        verdict,
        f"{text} The brake sets the limit, not the tyre, and hot pads make less still.",
        "Pistons, rotor, line pressure and the pads' friction decide it.",
        figures,
    )


@check(
    "rotor-heat-one-stop",
    step="brakes",
    title="Rotor heat in one stop",
    limits=RISE,
    good="the ring rises {good} at most",
    watch="to {watch}; every rotor cut to one plate",
    stop="more: the iron itself changes",
    source=sources.NO_FIGURE.saying(
        "230 °C is one brake maker's goal for 128 km/h at 0.7 g, gross weight; 250 °C is common practice from memory"
    ),
)
def rotor_heat_one_stop(
    rotor_rise_one_stop: Celsius,
    rotor_face_rise: Celsius | None,
    friction_ring_mass: Kg,
    rotor_style: RotorStyle,
    limits: AtMost,
) -> Judgement:
    """Mean rise of the braking band in one hard stop; the face gets hotter than that while it lasts."""
    verdict = limits.verdict(rotor_rise_one_stop)
    needed = friction_ring_mass * rotor_rise_one_stop / limits.good
    figures: Figures = {
        "needed": (needed, "kg"),
        "goal": (limits.good, "°C", "down"),
        "flag": (TRADE_FLAG, "°C", "down"),
    }
    text = "One stop heats the {friction_ring_mass} braking band by {rotor_rise_one_stop} on average"
    text += "." if rotor_face_rise is None else ", and its face by {rotor_face_rise} while it lasts."
    change = ""
    if verdict != "good":
        text += " A brake maker's goal is {goal} at most."
        change = "A braking band of {needed} would meet the goal: a thicker or larger rotor. Or start stops slower."
    if more_than(rotor_rise_one_stop, TRADE_FLAG):
        text += " It is also over the {flag} at which the trade speaks up: pads fade and fluid boils."
    if verdict == "stop":
        return Judgement(verdict, f"{text} {GLOWS}", COOLER, {**figures, "iron": (IRON_CHANGES, "°C")})
    if rotor_style == CUT and verdict == "good":
        verdict, change = "watch", "A solid or vented rotor that its maker sells for such a car."
        text += " Nobody publishes a limit for a rotor cut to one plate."
    return Judgement(verdict, text, change, figures)


@check(
    "rotor-heat-run",
    step="brakes",
    title="Rotor heat after a run of stops",
    limits=Limits(other={"iron": (IRON_CHANGES, "°C")}),
    never_good="never: nobody publishes a limit for a home-made front end",
    watch="to {iron}; the figure is for the pad and fluid makers' limits",
    stop="more: the iron itself changes",
    source=sources.NO_FIGURE.saying(
        "energy balance; pads, fluid and seals each have their maker's own limit; 727 °C is where iron changes, by the "
        "iron-carbon diagram, from memory"
    ),
)
def rotor_heat_run(
    rotor_rise_run: Celsius, rotor_rise_one_stop: Celsius, brakes: RunOfStops, limits: Limits
) -> Judgement:
    """Mean rise of the ring over the air after the last stop of a run."""
    text = f"After {brakes.stops_in_a_run} stops the braking band is {{rotor_rise_run}} hotter than the air"
    text += ", no cooling counted." if brakes.cooling == "none" else f", cooled between them by {brakes.cooling} only."
    if more_than(rotor_rise_run, limits.other["iron"][0]):
        return Judgement("stop", f"{text} {GLOWS}", COOLER, {"iron": limits.other["iron"]})
    return Judgement(
        "watch",
        text + " Nobody publishes a limit for this.",
        "Compare it, air temperature added, with what the makers of pads and fluid allow. Paint or crayons on the rotor tell "
        "what it really reaches.",
    )


@check(
    "piston-travel-worn",
    step="brakes",
    title="Piston travel on worn pads",
    limits=SPARE_TRAVEL,
    good="at least {good} to spare on worn pads and the thinnest rotor",
    watch="less to spare; every rotor cut to one plate",
    stop="the piston comes out further than its travel",
    source=(
        sources.GEOMETRY,
        sources.COMMON_PRACTICE.saying("the discard thickness of a rotor is set mainly by this; the 1 mm"),
    ),
    try_changing=("brakes.pad_thickness_worn",),
)
def piston_travel_worn(
    piston_travel_needed: Mm,
    rotor_thickness_lost: Mm,
    brakes_piston_travel: Mm | None,
    caliper_kind: CaliperKind,
    rotor_style: RotorStyle,
    limits: AtLeast,
) -> Judgement:
    """How far a piston must come out at the end of pads and rotor, against the travel at which its seal still holds."""
    if brakes_piston_travel is None:
        raise Waits("brakes.piston_travel")
    verdict = limits.verdict(brakes_piston_travel - piston_travel_needed)
    follows = (
        "The pistons of a sliding caliper follow both pads and the whole loss of thickness, {rotor_thickness_lost}."
        if caliper_kind == "sliding"
        else "The pistons of a fixed caliper follow one pad and half of the loss of thickness, {rotor_thickness_lost}, "
        "if the caliper is centred on the rotor."
    )
    text = (
        "On worn pads and the thinnest rotor a piston comes out {piston_travel_needed} of {brakes_piston_travel}. "
        + follows
    )
    if verdict == "good" and rotor_style == CUT:
        return Judgement(
            "watch",
            f"{text} A cut rotor has no minimum any more: its wear comes on top.",
            "Write down the thickness at which you will scrap it, and measure it.",
        )
    change = {
        "good": "",
        "watch": "Change pads sooner: there is next to nothing to spare.",
        "stop": "Change pads sooner, or use a rotor of the thickness the caliper was made for: a piston that leaves its seal "
        "loses all brakes on that circuit. Never stack worn pads or spacers behind new ones.",
    }[verdict]
    return Judgement(verdict, text, change)


@check(
    "rotor-cut-consequence",
    step="brakes",
    title="What cutting to one plate costs",
    never_good="never: nobody publishes a safe figure",
    watch="always, for a vented rotor cut to one plate",
    source=(
        sources.ARITHMETIC.saying("one plate of two is half of the iron"),
        sources.NO_FIGURE.saying("the least for one plate"),
    ),
)
def rotor_cut_consequence(thickness_cut_away: Mm, rotor_plane_shift: Mm, caliper_kind: CaliperKind) -> Judgement:
    """Half of the iron gone, its middle moved, and more travel for pads and pistons."""
    extra = thickness_cut_away if caliper_kind == "sliding" else thickness_cut_away / 2
    way = "outboard" if reaches(rotor_plane_shift, 0.0) else "inboard"
    return Judgement(
        "watch",
        "One plate of two is left: about half of the iron, so each stop heats it about twice as much, and the air that the "
        "vanes pumped is gone. The plate that balanced the clamp is gone too, so this one dishes when hot. "
        f"The middle of the rotor lies {{shift}} further {way}: caliper and bracket must move as far. "
        "Each piston comes out {extra} further, and the pads stand further out of their guides.",
        "A solid rotor of the right thickness is the sound choice. If it stays: weigh the ring as cut and enter its mass, "
        "re-make the bracket, and enter the pistons' travel.",
        {"shift": (abs(rotor_plane_shift), "mm"), "extra": (extra, "mm")},
    )
