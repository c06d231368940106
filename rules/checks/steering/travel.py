"""Does it travel: what bump and droop do to toe, camber and castor, and whether arms, rods and shock reach that far."""

from math import asin, inf, radians

from rules.graph.bands import AtLeast, AtMost, Limits, at_most
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, Waits
from rules.measure.closeness import more_than
from rules.measure.units import Mm, Rad
from rules.motion.linkage import SteeringLinkage
from rules.motion.place_words import PlaceFigures, height, place, side
from rules.motion.points import Hinge
from rules.motion.sweep import Blocked, Sweep, Worst
from rules.tables import sources
from rules.tables.load_multiples import Use
from rules.tables.rim_flange import RIM_FLANGE
from rules.values.steering.bump_steer import USUAL_TRAVEL
from rules.values.steering.travel import STRETCH

MEMORY = sources.COMMON_PRACTICE.saying("the limits from memory")
TOE = Limits(
    other={
        "off_road": (3.0, "mm"),
        "on_the_road": (2.4, "mm"),
        "danger": (10.0, "mm"),
        "over": (150.0, "mm"),
        "each_way": (USUAL_TRAVEL, "mm"),
    }
)
"""Toe in all, for so much travel."""

HINGES = "How the two arms' hinges lie, seen from the side, and the castor decide it."


def _where(found: float) -> tuple[str, PlaceFigures]:
    """The place of a worst over the travel alone, the wheels straight all along."""
    words, figures = height(found.travel if isinstance(found, Worst) else 0.0)
    return f"at {words}", figures


@check(
    "travel-reached",
    step="arms",
    title="Arms and tie rods reach all the travel",
    good="every place from full droop to full bump is reached, at every lock where the steering is known",
    stop="something locks before, or no travel at all is entered",
    source=sources.GEOMETRY.saying("every link keeps its length"),
)
def travel_is_reached(
    travel_sweep: Sweep,
    envelope: Sweep | None,
    droop_travel: Mm,
    bump_travel: Mm,
    steering_begun: bool | None = None,
) -> Judgement:
    """Whether the links can take up every position that bump stop, strap and steering stop allow."""
    if not more_than(droop_travel + bump_travel, 0.0):
        return Judgement(
            "stop",
            "No travel at all is entered, neither bump nor droop: nothing was tried but ride height.",
            "Enter how far the wheel goes up to its bump stop and down to its strap or the shock's end.",
        )
    if travel_sweep.blocked:
        least = min(travel_sweep.blocked, key=lambda blocked: abs(blocked.locks_at))
        way, holds = side(least.travel), "the bump stop" if least.travel > 0 else "a strap"
        there, figures = height(least.locks_at)
        return Judgement(
            "stop",
            f"The arms lock at {there}, before the {{{way}_travel}} entered.",
            f"Less {way}, held by {holds}, or other lengths of the arms. Check the pivots' places for a slip.",
            figures,
        )
    if envelope is not None and envelope.blocked:
        return _rod_locks(min(envelope.blocked, key=lambda blocked: (abs(blocked.lock), abs(blocked.travel))))
    if envelope is None and steering_begun:
        raise Waits("envelope")
    reach = "at every lock" if envelope is not None else "with the wheels straight; the steering is not entered"
    return Judgement("good", f"Arms reach from {{droop_travel}} droop to {{bump_travel}} bump, {reach}.")


def _rod_locks(blocked: Blocked) -> Judgement:
    words, figures = place(blocked.travel, blocked.lock)
    change = "Less lock or less travel, or another steering arm or inner pivot of the tie rod."
    return Judgement("stop", f"The tie rod does not reach at {words}: the steering locks before.", change, figures)


@check(
    "static-toe",
    step="arms",
    title="Toe as set",
    limits=AtMost("mm", 10.0, 20.0),
    good="{good} or less, in or out, both wheels together",
    watch="more: few cars are set so",
    stop="more than {watch}: no car runs so",
    source=MEMORY,
)
def static_toe_is_usual(static_toe: Mm | None, limits: AtMost) -> Judgement:
    """How far the wheels are set out of straight at ride height. A slip of unit or of half and whole shows here."""
    if static_toe is None:
        raise DoesNotApply("no toe is entered; it counts as none")
    found, verdict = {"toe": (abs(static_toe), "mm")}, limits.verdict(abs(static_toe))
    text = f"Both wheels together are set {{toe}} toe-{'in' if static_toe >= 0 else 'out'}"
    if verdict == "good":
        return Judgement("good", f"{text}.", figures=found)
    why = (
        "few cars are set so"
        if verdict == "watch"
        else "no car runs so: the tyres scrub, and it does not hold its line"
    )
    change = "Measure again across the treads at wheel-centre height; half of it is one wheel's. Then set the tie rods."
    return Judgement(verdict, f"{text}; {why}.", change, found)


@check(
    "bump-steer",
    step="arms",
    title="Bump steer, wheels straight",
    limits=TOE,
    good="{off_road} of toe or less in all for {over} of travel, on the road {on_the_road}: over the usual {each_way} each way, "
    "or less where the travel is less, and over all the travel",
    watch="to {danger} for {over} over the usual travel, or more than good over all of it",
    stop="more than {danger} for {over} over the usual travel",
    source=MEMORY,
)
def bump_steer(
    bump_toe: Mm,
    bump_toe_whole: Mm | None,
    usual_travel: Mm,
    bump_travel: Mm,
    droop_travel: Mm,
    toe_in_bump: Mm,
    steering_linkage: SteeringLinkage,
    use: Use,
    bump_toe_alone: Mm | None,
    limits: Limits,
) -> Judgement:
    """How far the wheels steer themselves over bumps, both moving alike; toe of both together across the treads."""
    figure = {name: number for name, (number, _) in limits.other.items()}
    whole_travel = bump_travel + droop_travel
    good = figure["on_the_road" if use == "road" else "off_road"] / figure["over"]
    danger = figure["danger"] / figure["over"]
    figures: PlaceFigures = {"allowed": (good * whole_travel, "mm")}
    left = good * usual_travel - bump_toe
    if bump_toe_whole is not None:
        left = min(left, good * whole_travel - bump_toe_whole)
    usual = at_most(bump_toe, good=good * usual_travel, watch=danger * usual_travel)
    far = bump_toe_whole is None or at_most(bump_toe_whole, good=good * whole_travel) != "good"
    verdict = "watch" if far and usual == "good" else usual
    sense = "in" if toe_in_bump > 0 else "out"
    text = f"Over the usual travel both wheels together change toe by {{bump_toe}}, toed {sense} at the top of it"
    if bump_toe_whole is None:
        text += "; over all the travel it is not known."
    elif more_than(whole_travel, usual_travel):
        text += f"; over all the travel by {{bump_toe_whole}}{', more than {allowed}' if far else ''}."
    else:
        text += "."
    if verdict == "stop":
        text += " The car steers itself over bumps: dangerous at speed."
    if steering_linkage.inner is None and bump_toe_alone is not None:
        text += " A wheel that travels alone, the other held straight at ride height, is steered by {bump_toe_alone} of toe."
    if verdict == "good":
        return Judgement("good", text, in_hand=left)
    if usual == "good":
        change = (
            "Measure toe at [1 in | 25 mm] steps to both ends. Where it goes the same way at both, move the tie rod's inner "
            "pivot in or out; where opposite ways, up or down. Or less travel."
        )
        return Judgement(verdict, text, change, figures, in_hand=left)
    change = "Another place of the tie rod's ends; shims under the outer one to try it, toe measured at [1 in | 25 mm] steps."
    return Judgement(verdict, text, change, figures, in_hand=left)


@check(
    "bump-steer-turned",
    step="arms",
    title="Bump steer at half lock",
    limits=AtMost("rad", radians(1), inf, other={"each_way": (USUAL_TRAVEL, "mm")}),
    good="neither wheel's angle changes by more than {good}, over {each_way} each way",
    watch="more",
    source=sources.NO_FIGURE.saying(
        "worked out here: front ends whose tie rods follow the arms within 1 mm of toe with the wheels "
        "straight change about 0.6 to 0.9 deg at half lock, for the best inner pivot is another at "
        "every lock"
    ),
)
def bump_steer_turned(bump_toe_turned: Mm, design_tyre_diameter: Mm, limits: AtMost) -> Judgement:
    """Bump steer of the worse wheel with the steering held at half lock; its toe is counted for two wheels alike."""
    angle = asin(min(1.0, bump_toe_turned / (2 * design_tyre_diameter)))
    figures = {"angle": (angle, "rad")}
    text = "Held at half lock, the worse wheel's angle changes by {angle} over the usual travel"
    if limits.verdict(angle) == "good":
        return Judgement("good", f"{text}.", figures=figures)
    return Judgement(
        "watch",
        f"{text}: in a turn over rough ground the wheel pulls.",
        "Put bump steer with the wheels straight right first. Then inclination and lock decide it.",
        figures,
    )


@check(
    "camber-change",
    step="arms",
    title="Camber change in travel",
    limits=AtMost("rad", radians(1), inf, other={"stretch": (STRETCH, "mm")}),
    good="{good} or less for {stretch} of travel",
    watch="more",
    source=sources.COMMON_PRACTICE.saying("the limits from memory: half a degree to one for 25 mm is usual"),
)
def camber_change(
    camber_per_25_mm: Rad, camber_change_bump: Rad, camber_change_droop: Rad, limits: AtMost
) -> Judgement:
    """How fast the wheel leans over as it travels."""
    place, figures = _where(camber_per_25_mm)
    text = (
        f"Camber changes by {{camber_per_25_mm}} for [1 in | 25 mm] of travel {place}, where it is fastest; by "
        "{camber_change_bump} to full bump and {camber_change_droop} to full droop, top outboard counted plus"
    )
    if limits.verdict(camber_per_25_mm) == "good":
        return Judgement("good", f"{text}.", figures=figures)
    return Judgement(
        "watch",
        f"{text}. More than {{most}} wears the tyres' edges and tugs at the wheel.",
        "How long the arms are and how high their inner pivots lie decides it.",
        figures | {"most": (limits.good, "rad", "down")},
    )


@check(
    "castor-in-travel",
    step="arms",
    title="Castor keeps in travel",
    limits=AtMost("rad", radians(2), inf),
    good="within {good} of ride height, and above nought",
    watch="changes by more",
    stop="nought or less anywhere",
    source=sources.OWN.saying("2 deg; that castor stays above nought is common practice"),
)
def castor_in_travel(castor: Rad, least_castor: Rad, castor_change: Rad, limits: AtMost) -> Judgement:
    """Whether the axis goes on trailing at full bump and droop; it leans with the arms' hinges seen from the side."""
    if not more_than(least_castor, 0.0):
        place, figures = _where(least_castor)
        return Judgement(
            "stop",
            f"Castor falls to {{least_castor}} {place}: there the steering no longer returns by itself.",
            HINGES,
            figures,
        )
    place, figures = _where(castor_change)
    figures["change"] = (abs(castor_change), "rad")
    if limits.verdict(abs(castor_change)) == "good":
        text = f"Castor is {{castor}} at ride height and changes by {{change}} at most, {place}."
        return Judgement("good", text, figures=figures)
    return Judgement(
        "watch",
        f"Castor is {{castor}} at ride height and changes by {{change}} {place}: the steering's feel changes with it.",
        HINGES,
        figures,
    )


@check(
    "lower-joint-with-tyre-flat",
    step="arms",
    title="Lower joint with the tyre flat",
    limits=AtLeast("mm", 0.0),
    good="the lower joint is no lower than the rim's edge",
    stop="lower than the rim's edge",
    source=(
        sources.COMMON_PRACTICE.saying(
            "some inspection rules ask that with a tyre flat nothing but tyre and wheel touches the road"
        ),
        sources.JIS_D_4218.at("table 3", f"a J flange, {RIM_FLANGE} mm, taken beyond the nominal diameter"),
    ),
    try_changing=("pivots.lower_below_spindle",),
)
def lower_joint_with_tyre_flat(
    lower_hinge: Hinge, lower_below_spindle: Mm, lower_radius: Mm, wheel_diameter: Mm, limits: AtLeast
) -> Judgement:
    """With the tyre flat the car runs on the rim; a joint that hangs lower digs into the road first."""
    spare = wheel_diameter / 2 + RIM_FLANGE - (lower_below_spindle + lower_radius)
    figures = {"spare": (abs(spare), "mm")}
    if limits.verdict(spare) == "good":
        return Judgement("good", "The lower joint's lowest point is {spare} above the rim's edge.", figures=figures)
    return Judgement(
        "stop",
        "The lower joint's lowest point hangs {spare} below the rim's edge: with the tyre flat it digs into the road.",
        "How far the lower pivot lies below the wheel centre, its housing and the rim's size decide it.",
        figures,
    )


@check(
    "shock-spare",
    step="spring",
    title="Shock has length to spare",
    limits=AtLeast("mm", 6.0, 0.0),
    good="{good} or more left before it is closed or open",
    watch="less than {good} left",
    stop="it closes or opens fully before the wheel is there",
    source=MEMORY,
)
def shock_spare(
    shock_at_ride: Mm, shock_at_bump: Mm, shock_at_droop: Mm, shock_shortest: Mm, shock_longest: Mm, limits: AtLeast
) -> Judgement:
    """Whether bump stop and strap hold the wheel before the shock does."""
    lengths = (shock_at_ride, shock_at_bump, shock_at_droop)
    closing, opening = min(lengths) - shock_shortest, shock_longest - max(lengths)
    verdict = limits.verdict(min(closing, opening))
    figures = {
        "closing": (abs(closing), "mm"),
        "opening": (abs(opening), "mm"),
        "closed": (min(lengths) - limits.good, "mm"),
        "open": (max(lengths) + limits.good, "mm"),
    }
    text = (
        "The shock is {shock_at_droop} long at full droop, {shock_at_ride} at ride height, {shock_at_bump} at full bump"
    )
    if verdict == "stop":
        short = "closes {closing} too early" if closing < opening else "is {opening} too short when open"
        text = f"{text}: it {short}, and its mounts take the blow."
    else:
        text = f"{text}: {{closing}} are left before it is closed, {{opening}} before it is open."
    if verdict == "good":
        return Judgement("good", text, figures=figures)
    if min(lengths) <= limits.good:
        return Judgement(
            verdict, text, "Put right the shock's two ends: no shock is as short as they stand apart.", figures
        )
    change = "A shock that closes to {closed} or less and opens to {open} or more; or move its mount; or less travel."
    return Judgement(verdict, text, change, figures)
