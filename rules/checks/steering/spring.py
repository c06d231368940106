"""Does the spring suit the corner: what it carries, where the car rests on it, and whether its coils touch or hang loose."""

from math import inf

from rules.checks.agreement.tie import odd
from rules.graph.bands import AtLeast, AtMost, Between
from rules.graph.declare import check
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.closeness import more_than, reaches
from rules.measure.units import Mm, PerMinute, Ratio, Share
from rules.motion.shock import Shock
from rules.sheet.confirmed import Confirmed
from rules.tables import sources
from rules.values.steering.spring_rest import CARRIED, SpringRest

SOLID_BY = "Free and solid length, the squeeze with the shock open and the bump travel decide it."
REST_SOURCE = sources.OWN.saying("what stands below the spring is a tenth to three tenths of a front corner")


@check(
    "spring-carries-corner",
    step="spring",
    title="Spring holds the ride height",
    limits=Between("share", *CARRIED, least=0.5, most=1.3),
    good="{usual} of the corner's weight: the rest, a tenth to three tenths, is wheel, tyre, hub and brake",
    watch="from {least} to {most}",
    stop="less or more",
    source=REST_SOURCE,
)
def spring_carries_corner(
    spring_carries: Share,
    spring_ratio: Ratio,
    ride_frequency: PerMinute | None,
    limits: Between,
) -> Judgement:
    """Whether the spring, squeezed as entered, carries this corner at the ride height everything else is drawn for."""
    verdict = limits.verdict(spring_carries)
    if spring_ratio < 0:
        text = (
            "The shock opens as the wheel rises: a spring round it lifts the wheel, and holds nothing of the corner up."
        )
        return Judgement(verdict, text, "Put right shock on the arm, from centre, or shock on the frame, from centre.")
    if spring_carries < 0:
        text = "At ride height the spring hangs loose between its seats, and carries nothing."
        return Judgement(verdict, text, "The squeeze with the shock open and the shock's ends decide it.")
    text = "At ride height the spring carries {spring_carries} of the corner's weight"
    if ride_frequency is not None:
        text += "; the corner swings on it {ride_frequency}"
    if verdict == "good":
        return Judgement(verdict, f"{text}.")
    high = more_than(spring_carries, limits.high)
    stands = "stands higher" if high else "sinks lower"
    change = (
        "Rate, squeeze and the shock's ends decide it; or the ride height is another, and all that is drawn for it."
    )
    return Judgement(verdict, f"{text}: the car {stands} than this sheet is drawn.", change)


@check(
    "comes-to-rest",
    step="spring",
    title="Where the car comes to rest on its spring",
    limits=AtMost("mm", 25.0, inf),
    good="within {good} of the ride height drawn, with a fifth of the corner below the spring",
    watch="further, or on its bump stop, bump rubber or strap",
    stop="there even with a tenth to three tenths of the corner below the spring",
    source=(REST_SOURCE, sources.COMMON_PRACTICE.saying("an inch of ride height is set by the spring's seat")),
    try_changing=("spring.preload", "spring.rate"),
)
def comes_to_rest(
    rest_on_spring: SpringRest,
    bump_rubber_touched: Mm | None,
    bump_travel: Mm,
    droop_travel: Mm,
    limits: AtMost,
) -> Judgement:
    """The place in the travel where rate, squeeze and ratio carry the corner, against the ride height all else is drawn for."""
    rest = rest_on_spring
    stop = bump_travel if bump_rubber_touched is None else min(bump_travel, bump_rubber_touched)
    change = "Rate, squeeze and the shock's ends decide it; or draw for the height at which it stands."
    verdict = limits.verdict(abs(rest.middle))
    if reaches(rest.middle, stop):
        on = "bump stop, with no" if reaches(stop, bump_travel) else "bump rubber, with no free"
        text = f"The spring does not hold the corner up: the car comes to rest on its {on} bump travel left."
        return Judgement("stop" if reaches(rest.least, stop) else "watch", text, change)
    if reaches(-droop_travel, rest.middle):
        text = "The spring lifts the corner until strap or shock holds it: the car stands with no droop travel left."
        return Judgement("stop" if reaches(-droop_travel, rest.most) else "watch", text, change)
    figures = {"about": (abs(rest.middle), "mm"), "lowest": (abs(rest.most), "mm"), "highest": (abs(rest.least), "mm")}
    text = (
        f"On its spring the car comes to rest about {{about}} {_side(rest.middle)} than drawn, a fifth of the corner's weight "
        f"being wheel, tyre, hub and brake; with a tenth {{lowest}} {_side(rest.most)}, with three tenths {{highest}} "
        f"{_side(rest.least)}."
    )
    return Judgement(verdict, text, "" if verdict == "good" else change, figures)


def _side(travel: float) -> str:
    return "lower" if travel > 0 else "higher"


@check(
    "spring-held-at-droop",
    step="spring",
    title="Spring held at full droop",
    limits=AtLeast("mm", 0.0, -inf),
    good="still held between its seats at full droop",
    watch="it hangs loose",
    source=(
        sources.GEOMETRY,
        sources.COMMON_PRACTICE.saying("a loose spring leaves its seat, and lands askew on it or beside it"),
    ),
    try_changing=("spring.preload", "arms.droop_travel"),
)
def spring_held_at_droop(spring_squeeze_at_droop: Mm, limits: AtLeast) -> Judgement:
    """Whether the spring, with the wheel hanging, is still as long as the room between its seats."""
    verdict = limits.verdict(spring_squeeze_at_droop)
    if verdict == "good":
        return Judgement(verdict, "At full droop the spring is still squeezed {spring_squeeze_at_droop}.")
    return Judgement(
        verdict,
        "At full droop the spring hangs loose by {loose}: it leaves its seat, and may land askew on it or beside it.",
        "The squeeze with the shock open and the droop travel decide it. Else a helper spring that is {loose} or more longer "
        "free than squeezed flat, or seats that hold the spring.",
        {"loose": (-spring_squeeze_at_droop, "mm")},
    )


@check(
    "bump-rubber",
    step="spring",
    title="Bump rubber in the travel",
    limits=Between("share", 0.4, 0.9, least=0.0, most=1.0),
    good="touched at {usual} of the bump travel",
    watch="sooner, or in the last tenth; none is entered of a shock that is, and the bump travel is not confirmed",
    stop="touched at ride height, or not before full bump; no bump travel at all",
    source=sources.COMMON_PRACTICE.saying(
        "a rubber works over the last part of the travel, and before anything of metal does"
    ),
)
def bump_rubber_in_time(
    bump_rubber_touched: Mm | None,
    bump_travel: Mm | None,
    bump_rubber: Mm | None,
    shock_ends: Shock | None,
    confirmed: Confirmed,
    limits: Between,
) -> Judgement:
    """Whether the rubber on the shock's rod meets the wheel in time, and leaves it free at ride height.

    One that nobody entered counts as none, and what else ends the travel is for the builder to say.
    """
    if bump_travel is not None and bump_travel <= 0:
        text = "No bump travel is left: the car stands on its bump stop, and the first stone breaks something."
        return Judgement("stop", text, "Enter how far the wheel rises to the bump stop; none at all is no suspension.")
    if bump_rubber_touched is None and bump_rubber is None and shock_ends is None:
        why = "no bump rubber on the shock's rod is entered, so where it is touched was not judged"
        raise NotJudged(why, "spring.bump_rubber")
    if bump_travel is None:
        raise Waits("arms.bump_travel")
    if bump_rubber_touched is None and bump_rubber is not None:
        raise Waits("bump_rubber_touched")
    if bump_rubber_touched is None:
        text = (
            "No bump rubber on the shock's rod is entered, so it counts as none: where no other stop ends the bump travel of "
            "{bump_travel}, tyre, arm or shock takes the blow."
        )
        return odd(text, "arms.bump_travel", confirmed)
    verdict = limits.verdict(bump_rubber_touched / bump_travel)
    if more_than(bump_rubber_touched, bump_travel):
        beyond = {"beyond": (bump_rubber_touched - bump_travel, "mm")}
        text = "At full bump {beyond} are left before the rubber is touched: tyre, arm or shock takes the blow."
        return Judgement(verdict, text, "A higher rubber, or say a bump travel that the rubber ends.", beyond)
    if verdict == "stop":
        text = "The rubber is touched at ride height already: the car stands on it."
        return Judgement(verdict, text, "A lower rubber, or a shock that is shorter closed.")
    text = "The rubber is touched {bump_rubber_touched} above ride height, of {bump_travel} of bump travel."
    if verdict == "good":
        return Judgement(verdict, text)
    early = more_than(limits.low, bump_rubber_touched / bump_travel)
    change = "A lower rubber leaves more free travel." if early else "A higher rubber takes the blow over a longer way."
    return Judgement(verdict, text, change)


@check(
    "spring-coil-bind",
    step="spring",
    title="Spring's coils at full bump",
    limits=AtLeast("mm", 6.0, 0.0),
    good="{good} or more left between them, all together",
    watch="less than {good} left",
    stop="they touch before full bump",
    source=sources.COMMON_PRACTICE.saying("1/4 in in hand"),
)
def spring_coil_bind(spring_left_at_bump: Mm, limits: AtLeast) -> Judgement:
    """Whether the bump stop holds the wheel before the spring goes solid."""
    verdict = limits.verdict(spring_left_at_bump)
    if verdict == "stop":
        figures = {"before": (-spring_left_at_bump, "mm")}
        text = (
            "The spring goes solid while the shock has {before} to close until full bump: it takes the blow, and its "
            "seats with it."
        )
        return Judgement(verdict, text, SOLID_BY, figures)
    text = "At full bump {spring_left_at_bump} are left before the spring goes solid."
    change = "" if verdict == "good" else SOLID_BY
    return Judgement(verdict, text, change)
