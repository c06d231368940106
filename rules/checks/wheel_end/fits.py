"""Do the bought parts fit each other: tyre to rim, wheel to hub, rotor to hub."""

from rules.graph.bands import AtLeast, AtMost, Between
from rules.graph.declare import check
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.closeness import within
from rules.measure.marks import BoltCircle, Thread, TyreMark
from rules.measure.quantity import INCH
from rules.measure.units import Mm
from rules.sheet.wheel import NutSeat
from rules.tables import sources
from rules.values.wheel_end.wheel_stack import LIPS

SAME_CIRCLE = AtMost("mm", 0.3)
"""Difference within which two bolt circles are one. Common practice: 4.5 in and 114.3 mm are one, 114.3 and 115 are not."""
AGREEING = AtMost("mm", good=1.6, watch=6.0, other={"lip": (LIPS / 2, "mm")})
"""Difference between offset as given and as worked out. lip: what one lip adds to the nominal width."""


@check(
    "tyre-rim-diameter",
    step="tyre",
    title="Tyre and wheel diameter",
    good="both tyres' rim code is the wheel's diameter",
    stop="anything else",
    source=(
        sources.CFR_571_110.at("S4.4.1(a)", "the rim must be one the tyre maker lists"),
        sources.UN_R30.at("footnote 5", "a rim code is in inches"),
    ),
    try_changing=("wheel.diameter",),
)
def tyre_rim_diameter(smallest: TyreMark, largest: TyreMark, wheel_diameter: Mm) -> Judgement:
    """The rim code in both size marks must be the wheel's diameter: a 16 in tyre never goes on a 16.5 in rim."""
    wrong = [mark for mark in (smallest, largest) if abs(mark.rim_code * INCH - wheel_diameter) > 0.05]
    if not wrong:
        return Judgement("good", "Both tyres are made for a {wheel_diameter} wheel.")
    codes = " and ".join(dict.fromkeys(f"{mark.text} for a {mark.rim_code:g} in wheel" for mark in wrong))
    return Judgement(
        "stop",
        f"The wheel is {{wheel_diameter}}, but {codes} is what the tyre mark says.",
        "Change the wheel or the tyre. Never force a bead over the wrong rim.",
    )


@check(
    "tyre-rim-width",
    step="tyre",
    title="Wheel width on the tyre maker's list",
    good="wheel width inside the tyre maker's list",
    stop="outside it",
    source=sources.CFR_571_110.at("S4.4.1(a)", "the rim must be on the tyre maker's list"),
    try_changing=("wheel.width",),
)
def tyre_rim_width(wheel_width: Mm, rim_width_least: Mm, rim_width_most: Mm) -> Judgement:
    """Bead-to-bead width of the wheel against the narrowest and widest rim the tyre maker lists."""
    if within(wheel_width, rim_width_least, rim_width_most):
        return Judgement(
            "good", "A wheel {wheel_width} wide is on the tyre maker's list, {rim_width_least} to {rim_width_most}."
        )
    return Judgement(
        "stop",
        "A wheel {wheel_width} wide is outside the tyre maker's list, {rim_width_least} to {rim_width_most}.",
        "Use a rim width on the list. The middle of the list is the safe pick.",
    )


@check(
    "wheel-numbers-agree",
    step="wheel",
    title="Offset and backspacing agree",
    limits=AGREEING,
    good="within {good}",
    watch="to {watch}",
    stop="beyond {watch}; {lip} is the mark of nominal width used for lip to lip",
    source=sources.COMMON_PRACTICE.saying("the arithmetic is geometry"),
)
def wheel_numbers_agree(
    offset: Mm | None, backspacing: Mm | None, wheel_overall_width: Mm | None, limits: AtMost
) -> Judgement:
    """Offset as given against backspacing - overall width / 2. Needs both figures; else there is nothing to compare."""
    if offset is None and backspacing is None:
        raise Waits("wheel.offset", "wheel.backspacing")
    if offset is None or backspacing is None:
        other = "wheel.offset" if offset is None else "wheel.backspacing"
        raise NotJudged("only one of offset and backspacing is given, so there is nothing to compare", other)
    if wheel_overall_width is None:
        raise Waits("wheel_overall_width")
    worked_out = backspacing - wheel_overall_width / 2
    difference = abs(offset - worked_out)
    figures = {"worked_out": (worked_out, "mm"), "difference": (difference, "mm")}
    verdict = limits.verdict(difference)
    text = (
        "Offset is given as {offset}; backspacing {backspacing} less half of {wheel_overall_width} gives {worked_out}. "
    )
    if verdict == "good":
        return Judgement(verdict, text + "They agree.", figures=figures)
    if limits.verdict(abs(difference - LIPS / 2)) == "good":
        text += (
            "They differ by {difference}: that is what comes of working with the nominal, bead-to-bead width instead "
            "of lip to lip."
        )
    else:
        text += "They differ by {difference}."
    return Judgement(
        verdict,
        text,
        "Lay the wheel face down and measure again: lip-to-lip width, and straightedge on the back lip to its mounting face.",
        figures,
    )


NEAR_MISSES = ((114.3, 115.0), (98.0, 100.0), (139.7, 140.0), (100.0, 101.6), (120.0, 120.65))
"""mm. Circles that are taken for one another. Common practice; 100 / 101.6 seen named as a trap."""

AS_NAMED = 0.05
"""mm within which a circle is the named one of a near miss, and not a measurement of its neighbour."""


def _near_miss(low: float, high: float, closeness: float) -> bool:
    return any(abs(low - near) <= closeness and abs(high - far) <= closeness for near, far in NEAR_MISSES)


def _bolt_circles(limits: AtMost, one: BoltCircle, other: BoltCircle, one_name: str, other_name: str) -> Judgement:
    difference = abs(one.diameter - other.diameter)
    low, high = sorted((one.diameter, other.diameter))
    same = one.count == other.count and limits.verdict(difference) == "good"
    if same and not _near_miss(low, high, AS_NAMED):
        return Judgement("good", f"{one_name} and {other_name} share one circle: {one.count} x {one.across}.")
    text = (
        f"{one_name} has {one.count} x {one.across}, {other_name} {other.count} x {other.across}: not one bolt circle."
    )
    if one.count == other.count and _near_miss(low, high, limits.good):
        text += " This is a well-known near miss: the nuts start, and the studs are bent or the wheel works loose."
    return Judgement("stop", text, "Change one of the parts, or have it drilled by its maker. Never slot holes.")


@check(
    "bolt-circle-wheel-hub",
    step="hub",
    title="Wheel and hub bolt circle",
    limits=SAME_CIRCLE,
    good="same count, within {good}",
    stop="anything else; near misses are named",
    source=sources.COMMON_PRACTICE.saying("6 x 5.5 in and 6 x 139.7 mm are one circle by arithmetic"),
)
def bolt_circle_wheel_hub(wheel_bolt_circle: BoltCircle, hub_bolt_circle: BoltCircle, limits: AtMost) -> Judgement:
    """Count and diameter of the wheel's holes against the hub's studs."""
    return _bolt_circles(limits, wheel_bolt_circle, hub_bolt_circle, "The wheel", "the hub")


@check(
    "bolt-circle-rotor-hub",
    step="hub",
    title="Rotor and hub bolt circle",
    limits=SAME_CIRCLE,
    good="same count, within {good}",
    stop="anything else; near misses are named",
    source=(
        sources.COMMON_PRACTICE,
        sources.SAE_J2696.saying("a matching pattern alone does not make hub and rotor interchangeable"),
    ),
)
def bolt_circle_rotor_hub(rotor_bolt_circle: BoltCircle, hub_bolt_circle: BoltCircle, limits: AtMost) -> Judgement:
    """Count and diameter of the rotor's holes against the hub's studs."""
    return _bolt_circles(limits, rotor_bolt_circle, hub_bolt_circle, "The rotor", "the hub")


@check(
    "{part}-bore",
    step="{part}",
    title="{Part} bore on the hub pilot",
    limits=Between("mm", 0.0, 0.6, least=0.0),
    good="bore up to {high} over the pilot",
    watch="larger{so}",
    stop="bore smaller than the pilot",
    source=sources.COMMON_PRACTICE,
    each=(
        {
            "part": "wheel",
            "so": ": the nuts must centre the wheel",
            "loose": "The nuts must centre the wheel.",
            "mend": "Use tapered nuts that centre it, or a fitted ring.",
        },
        {
            "part": "rotor",
            "so": "",
            "loose": "It will not run true until something centres it.",
            "mend": "A fitted ring between rotor and pilot, or a rotor of the right bore.",
        },
    ),
)
def bore_on_pilot(part_centre_bore: Mm, pilot_diameter: Mm, limits: Between) -> Judgement:
    """{Part} centre bore less hub pilot diameter."""
    play = part_centre_bore - pilot_diameter
    verdict = limits.verdict(play)
    figures = {"play": (play, "mm"), "over": (-play, "mm")}
    if verdict == "good":
        return Judgement(verdict, "The {part} sits on the hub pilot with {play} of play.", figures=figures)
    if verdict == "watch":
        text = "The {part}'s bore is {play} larger than the hub pilot. {loose}"
        return Judgement(verdict, text, "{mend}", figures)
    return Judgement(
        verdict,
        "The hub pilot is {over} larger than the {part}'s bore: it does not go on.",
        "Use another {part} or hub. Have a bore opened only with its maker's agreement.",
        figures,
    )


@check(
    "nut-seat",
    step="hub",
    title="Nut seat in wheel and on nuts",
    good="the same",
    stop="they differ",
    source=sources.COMMON_PRACTICE,
)
def nut_seat(wheel_nut_seat: NutSeat, hub_nut_seat: NutSeat) -> Judgement:
    """The seat in the wheel and the seat on the nuts must have one shape: cone of the same angle, ball or flat."""
    if wheel_nut_seat == hub_nut_seat:
        return Judgement("good", f"Wheel and nuts both have a {wheel_nut_seat} seat.")
    return Judgement(
        "stop",
        f"The wheel has a {wheel_nut_seat} seat, the nuts have {hub_nut_seat}: they touch on a line and work loose.",
        "Get nuts whose seat matches the wheel.",
    )


@check(
    "stud-engagement",
    step="hub",
    title="Wheel stud engagement",
    limits=AtLeast("1", good=1.0),
    good="at least {good} thread diameter",
    stop="less",
    source=sources.FED_STD_H28.at(
        "formula 14",
        "0.7 to 0.8 diameter for bolt and nut of equal strength, rounded up to one as the trade does; "
        "count turns x pitch",
    ),
    try_changing=("hub.stud_length",),
)
def stud_engagement_enough(stud_engagement: Mm, stud_thread: Thread, limits: AtLeast) -> Judgement:
    """Thread left for the nut against the stud's diameter. A soft alloy nut wants one and a half."""
    figures = {"needed": (limits.good * stud_thread.diameter, "mm")}
    turns = f"{max(stud_engagement, 0.0) / stud_thread.pitch:.1f} turns"
    if limits.verdict(stud_engagement / stud_thread.diameter) == "good":
        return Judgement(
            "good", f"The nut gets {{stud_engagement}} of thread ({turns}); {{needed}} is the least.", figures=figures
        )
    return Judgement(
        "stop",
        f"The nut gets {{stud_engagement}} of thread ({turns}); one diameter, {{needed}}, is the least.",
        "Fit longer studs. Never make up for short studs with open nuts or spacers.",
        figures,
    )
