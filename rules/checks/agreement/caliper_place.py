"""Do the place of the caliper round the clock and its reaches agree with what else says where it stands."""

from math import degrees, pi, radians, sin

from rules.checks.agreement.tie import PRACTICE, impossible, not_compared, odd
from rules.graph.bands import AtLeast, AtMost, Limits
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, NotJudged
from rules.measure.closeness import more_than, reaches, within
from rules.measure.records import replace
from rules.measure.said import sided
from rules.measure.units import Mm, Rad
from rules.sheet.caliper import CaliperKind, CaliperSide
from rules.sheet.confirmed import Confirmed
from rules.sheet.welds import PadsStand, Way
from rules.tables import sources
from rules.tables.sources import GEOMETRY
from rules.values.corner.stand_ins import STANDS

USUAL = Limits(other={"least": (radians(60), "rad"), "most": (radians(115), "rad")})
"""From straight up, ahead or behind: above and below stand the pivots. Common practice, no source."""
QUARTER = 60.0
"""deg off the middle of a quarter turn: 45 is its end, and a tape is not an angle finder."""


@check(
    "caliper-beside-axle",
    step="caliper",
    title="Caliper ahead or behind",
    limits=USUAL,
    good="{least} to {most} from straight up",
    watch="beyond, and not confirmed",
    source=PRACTICE,
)
def caliper_beside_axle(clock: Rad | None, confirmed: Confirmed, limits: Limits) -> Judgement:
    """How far round from straight up the caliper stands."""
    if clock is None:
        raise DoesNotApply("the caliper's place is not entered")
    there, figures = sided("there", clock, "ahead of", "behind", "rad")
    text = f"The caliper stands {there} straight up"
    if within(abs(clock), limits.other["least"][0], limits.other["most"][0]):
        return Judgement("good", f"{text}.", figures=figures)
    return odd(f"{text}, where pivots and arms are near.", "caliper.clock", confirmed, figures)


@check(
    "caliper-on-its-side",
    step="caliper",
    title="Caliper's place and side",
    good="its place round the clock lies on the side that is said",
    stop="it lies on the other",
    source=GEOMETRY.saying("plus is ahead"),
    grade="common practice",
)
def caliper_on_its_side(clock: Rad | None, side: CaliperSide | None) -> Judgement:
    """The sign of the caliper's place against the side it is said to stand on."""
    if clock is not None and abs(sin(clock)) < 1e-6:
        raise DoesNotApply("the caliper stands straight above or below the axle")
    if clock is None or side is None:
        raise not_compared("place and side of the caliper are not both entered", clock, {"caliper.side": side})
    text = f"The caliper is said to stand {side}, and its place is {{clock}}"
    if (clock > 0) == (side == "ahead"):
        return Judgement("good", f"{text}: they agree.")
    return impossible(f"{text}: plus is ahead, minus behind.")


@check(
    "caliper-in-its-quarter",
    step="caliper",
    title="Caliper's place and its bracket's weld",
    good="its place round the clock lies in the quarter the weld's step names",
    stop="it lies in another",
    source=GEOMETRY.saying("the nearest quarter turn, with 15 deg to spare"),
    grade="common practice",
)
def caliper_in_its_quarter(clock: Rad | None, side: CaliperSide | None, caliper_stands: PadsStand | None) -> Judgement:
    """The caliper's place against what is entered where its bracket is welded."""
    if caliper_stands is None or (clock is None and side is None):
        why = "it is not entered both under caliper and under its bracket's weld"
        raise not_compared(why, caliper_stands, {"caliper.clock": clock})
    at = STANDS[side] if clock is None and side is not None else clock
    assert at is not None
    off = abs((at - STANDS[caliper_stands] + pi) % (2 * pi) - pi)
    where = "{place}" if clock is not None else str(side)
    figures = {"place": (at, "rad")}
    text = f"The caliper's place is {where}, and at its bracket's weld it stands {caliper_stands}"
    if degrees(off) <= QUARTER:
        return Judgement("good", f"{text}: they agree.", figures=figures)
    told = impossible(f"{text}.")
    return Judgement("stop", told.text, "Put right whichever is a slip.", figures)


@check(
    "caliper-away-from-arm",
    step="caliper",
    title="Caliper and steering arm",
    good="on two sides of the axle",
    watch="on one side, and not confirmed",
    source=PRACTICE,
)
def caliper_away_from_arm(
    clock: Rad | None,
    tie_rod_end_ahead: Mm | None,
    steering_begun: bool | None,
    confirmed: Confirmed,
) -> Judgement:
    """On which side of the axle caliper and steering arm stand: both want the same room."""
    if clock is None or tie_rod_end_ahead is None:
        why = "the places of caliper and tie-rod end are not both entered"
        claim = steering_begun if tie_rod_end_ahead is None else tie_rod_end_ahead
        raise not_compared(why, claim, {"caliper.clock": clock, "tie_rod_end_ahead": tie_rod_end_ahead})
    there, figures = sided("there", clock, "ahead of", "behind", "rad")
    end, of_end = sided("end", tie_rod_end_ahead, "ahead of", "behind")
    figures = {**figures, **of_end}
    text = f"The caliper stands {there} straight up, the tie-rod end {end} the wheel centre"
    if sin(clock) * tie_rod_end_ahead <= 0:
        return Judgement("good", f"{text}: on two sides of the axle.", figures=figures)
    return odd(f"{text}: on one side of the axle, where both want the same room.", "caliper.clock", confirmed, figures)


@check(
    "caliper-round-its-rotor",
    step="caliper",
    title="Caliper and rotor thickness",
    limits=AtLeast("mm", 10.0),
    good="the caliper reaches outboard and inboard beyond half of the rotor and a new pad's friction material, and above its "
    "edge by {good} or more",
    stop="it does not, on one side",
    source=(
        sources.GEOMETRY.saying("half of the rotor and a pad are the least there can be"),
        sources.COMMON_PRACTICE.saying("a bridge over the rotor's edge, with a gap under it, takes as much above it"),
    ),
    grade="common practice",
)
def caliper_round_its_rotor(
    outboard_reach: Mm,
    made_for_thickness: Mm,
    caliper_inboard_reach: Mm | None,
    pad_thickness_new: Mm | None,
    reach_above_rotor: Mm | None,
    limits: AtLeast,
) -> Judgement:
    """How far a caliper stands out, in and above, against the rotor it closes on and the pads it holds."""
    made_for, least = "the caliper was made for a rotor of {made_for_thickness}", made_for_thickness / 2
    where = "the rotor"
    if pad_thickness_new is not None:
        made_for += ", and its pads are {pad_thickness_new} of friction material thick"
        least, where = least + pad_thickness_new, "rotor or pad"
    text = f"Outboard reach is {{outboard_reach}}; {made_for}."
    if not more_than(outboard_reach, least):
        return impossible(f"{text} Its outboard wall would stand inside {where}.")
    if caliper_inboard_reach is not None and not more_than(caliper_inboard_reach, least):
        text = f"Inboard reach is {{caliper_inboard_reach}}; {made_for}."
        return impossible(f"{text} Its inboard wall would stand inside {where}.")
    if reach_above_rotor is not None and limits.verdict(reach_above_rotor) == "stop":
        text = (
            "The caliper reaches {reach_above_rotor} beyond the rotor's edge, where its bridge goes over it with a gap."
        )
        bridge = impossible(f"{text} That takes {{bridge}} at least.")
        return replace(bridge, figures={"bridge": (limits.good, "mm", "up")})
    return Judgement("good", text)


@check(
    "caliper-near-spokes",
    step="caliper",
    title="Room before the spokes",
    limits=AtMost("mm", 19.0),
    good="up to {good}",
    watch="more, and not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def caliper_near_spokes(
    caliper_spoke_gap: Mm | None, spoke_room: Mm | None, confirmed: Confirmed, limits: AtMost
) -> Judgement:
    """Much more room than is usual between caliper and spokes: a slip in one of three depths would look like that."""
    if caliper_spoke_gap is None:
        why = "spoke room and the depths it is held against are not all entered"
        raise not_compared(why, spoke_room, {"caliper_spoke_gap": caliper_spoke_gap})
    text = "By these entries the caliper clears the spokes by {caliper_spoke_gap}"
    if limits.verdict(caliper_spoke_gap) == "good":
        return Judgement("good", f"{text}.")
    return odd(f"{text}, where most builds have [1/4 to 3/4 in | 6 to 19 mm].", "wheel.spoke_room", confirmed)


OF_ITS_KIND = Limits(other={"sliding": (8.0, "mm"), "fixed": (32.0, "mm"), "pistons": (2.0, "1")})
"""sliding: how much further inboard than outboard one reaches at least, for its pistons. fixed: how much further one with pistons
on both sides reaches at most, with a hose bolt. pistons: of a sliding one. From the one to the other it may be either, and what
it is said to be is asked about once: how far its pistons come out rests on it. Common practice, no source."""


@check(
    "caliper-like-its-kind",
    step="caliper",
    title="Caliper's kind and its two sides",
    limits=OF_ITS_KIND,
    good="a sliding caliper reaches {sliding} or more further inboard than outboard, with up to {pistons} pistons; a fixed one "
    "up to {fixed} further; between the two it may be either, and is asked about",
    watch="beyond, and its kind is not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def caliper_like_its_kind(
    kind: CaliperKind,
    outboard_reach: Mm,
    inboard_reach: Mm | None,
    pistons_per_side: int | None,
    confirmed: Confirmed,
    limits: Limits,
) -> Judgement:
    """A sliding caliper has its pistons on the inboard side alone, a fixed one on both: it shows in how far each side reaches."""
    most = limits.other["pistons"][0]
    if kind == "sliding" and pistons_per_side is not None and pistons_per_side > most:
        text = f"The caliper is said to be sliding, with {pistons_per_side} pistons on one side: such calipers have one or two."
        return odd(text, "caliper.kind", confirmed)
    if inboard_reach is None:
        raise NotJudged("how far the caliper reaches inboard is not entered", "caliper.inboard_reach")
    further = inboard_reach - outboard_reach
    text = f"The caliper is said to be {kind}, and reaches {{outboard_reach}} outboard and {{inboard_reach}} inboard"
    if kind == "sliding" and not reaches(further, limits.other["sliding"][0]):
        return odd(f"{text}: one that slides has its pistons on the inboard side.", "caliper.kind", confirmed)
    if kind == "fixed" and more_than(further, limits.other["fixed"][0]):
        return odd(f"{text}: one that is fixed has its pistons on both sides.", "caliper.kind", confirmed)
    if "caliper.kind" not in confirmed and within(further, limits.other["sliding"][0], limits.other["fixed"][0]):
        text += ": a sliding one may, and a fixed one with its hose bolt. Confirm whether it slides."
        return Judgement("good", text, asks_about="caliper.kind")
    return Judgement("good", f"{text}.")


@check(
    "caliper-weld-on-bracket",
    step="weld_caliper_bracket",
    title="Bracket weld along the bracket",
    limits=AtMost("mm", 6.0),
    good="by their levers the runs end within the bracket's width at its root, or up to {good} past it",
    watch="further past it, and not confirmed",
    source=sources.GEOMETRY.saying("a bracket with its caliper in the middle of its width"),
    grade="common practice",
)
def weld_on_bracket(
    weld_caliper_bracket_run: Mm | None,
    weld_caliper_bracket_runs_lie: Way | None,
    weld_caliper_bracket_load_ahead: Mm | None,
    weld_caliper_bracket_load_above: Mm | None,
    caliper_stands: PadsStand | None,
    bracket_arm_width: Mm | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """What of a run reaches past the bracket's edge joins nothing. A caliper beside the middle of its bracket is asked about."""
    beside = caliper_stands in ("ahead", "behind")
    key = "load_above" if beside else "load_ahead"
    lever = weld_caliper_bracket_load_above if beside else weld_caliper_bracket_load_ahead
    weld = {"caliper_stands": caliper_stands, key: lever, "run": weld_caliper_bracket_run,
            "runs_lie": weld_caliper_bracket_runs_lie}  # fmt: skip
    if lever is None or weld_caliper_bracket_run is None or bracket_arm_width is None or None in weld.values():
        bounds = {f"weld_caliper_bracket.{name}": answer for name, answer in weld.items()}
        why = "the bracket, the run of its weld and its lever are not all entered"
        raise not_compared(why, lever, bounds | {"upright.bracket_arm_width": bracket_arm_width})
    if weld_caliper_bracket_runs_lie != ("up and down" if beside else "fore and aft"):
        raise DoesNotApply("the runs do not lie along the bracket's width")
    off = abs(lever) + (weld_caliper_bracket_run - bracket_arm_width) / 2
    text = "The runs are {weld_caliper_bracket_run} long on a bracket of {bracket_arm_width}, and by their lever"
    if limits.verdict(off) == "good":
        return Judgement("good", f"{text} they lie on it.")
    return odd(
        f"{text} they reach {{off}} past its edge, where there is nothing to join.",
        f"weld_caliper_bracket.{key}",
        confirmed,
        {"off": (off, "mm")},
    )
