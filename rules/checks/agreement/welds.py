"""Do the entries of the welds agree with each other, and with what they hold."""

from collections.abc import Mapping

from rules.checks.agreement.tie import PRACTICE, not_compared, odd
from rules.graph.bands import Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.closeness import within
from rules.measure.units import Mm
from rules.motion.kinds import OuterPivotBolt
from rules.sheet.confirmed import Confirmed
from rules.sheet.pivots import Shear
from rules.sheet.welds import Way, WeldForm
from rules.tables import sources


@check(
    "{which}-lugs-hold-ball",
    step="weld_{which}",
    title="{Which} lugs and what is between them",
    limits=Between("1", 0.85, 1.15, least=0.2, most=3.0),
    good="the runs are {low} to {high} as far apart as ball, spacers and both lugs are wide",
    watch="beyond, and not confirmed",
    stop="less than {least} or more than {most}",
    source=PRACTICE,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def lugs_hold_ball(
    weld_which_apart: Mm | None,
    which_ball_width: Mm | None,
    which_gap: Mm | None,
    which_lug_thickness: Mm | None,
    confirmed: Confirmed,
    which: str,
    limits: Between,
) -> Judgement:
    """Two lugs welded on their outsides, against the stack that stands between and in them."""
    if weld_which_apart is None or not which_ball_width or which_gap is None or which_lug_thickness is None:
        bounds = {
            f"bolts.{which}_ball_width": which_ball_width,
            f"bolts.{which}_gap": which_gap,
            f"bolts.{which}_lug_thickness": which_lug_thickness,
        }
        raise not_compared(
            "ball, spacer, lug and the distance of the runs are not all entered", weld_which_apart, bounds
        )
    stack = which_ball_width + 2 * which_gap + 2 * which_lug_thickness
    figures = {"stack": (stack, "mm")}
    text = "The runs are {weld_which_apart} apart; ball, two spacers and two lugs are {stack} wide."
    verdict = limits.verdict(weld_which_apart / stack)
    if verdict == "good":
        return Judgement("good", text, figures=figures)
    if verdict == "watch":
        return odd(text, f"weld_{which}.apart", confirmed, figures)
    return Judgement("stop", f"{text} That cannot be.", "Measure them again.", figures)


ALONG_BOLT: Mapping[OuterPivotBolt, Way] = {
    "along the steering axis": "up and down", "fore and aft": "fore and aft", "across the car": "in and out",
}  # fmt: skip


@check(
    "{which}-weld-and-bolt",
    step="weld_{which}",
    title="{Which} weld and the way of the bolt",
    good="from one run to the next is along the bolt, across the lugs",
    watch="it is not, and not confirmed",
    source=PRACTICE,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def weld_and_bolt(
    weld_which_apart_lies: Way | None,
    weld_which_form: WeldForm | None,
    which_bolt: OuterPivotBolt | None,
    confirmed: Confirmed,
    which: str,
) -> Judgement:
    """Lugs stand square to the bolt through them, so that the runs along them lie side by side along the bolt."""
    if weld_which_apart_lies is None or which_bolt is None or weld_which_form != "fillet on both sides":
        claim = weld_which_apart_lies if weld_which_form in (None, "fillet on both sides") else None
        bounds = {f"weld_{which}.form": weld_which_form, f"joint_angles.{which}_bolt": which_bolt}
        raise not_compared("weld and bolt are not both entered, or the weld is of another form", claim, bounds)
    text = f"The {which} bolt lies {which_bolt}, and from one run to the next it is {weld_which_apart_lies}."
    if ALONG_BOLT[which_bolt] == weld_which_apart_lies:
        return Judgement("good", text)
    return odd(f"{text} Lugs stand square to their bolt.", f"weld_{which}.apart_lies", confirmed)


@check(
    "{which}-weld-form",
    step="weld_{which}",
    title="{Which} weld and its lugs",
    good="lugs have a run on either side of each, or one run, or a bevel",
    watch="one fillet all round two lugs, as round a tube or a bar, and it is not confirmed",
    source=PRACTICE,
    grade="common practice",
    each=({"which": "upper"}, {"which": "lower"}),
)
def weld_form(
    weld_which_form: WeldForm | None,
    which_shear: Shear | None,
    which_lug_thickness: Mm | None,
    confirmed: Confirmed,
    which: str,
) -> Judgement:
    """A fillet all round holds one part. Two lugs apart are two parts, and what lies between them is no weld."""
    if weld_which_form is None or which_lug_thickness is None or which_shear != "double":
        claim = weld_which_form if which_shear != "single" else None
        bounds = {f"pivots.{which}_shear": which_shear, f"bolts.{which}_lug_thickness": which_lug_thickness}
        raise not_compared("no weld of two lugs is entered", claim, bounds)
    text = f"The {which} pivot has two lugs, and its weld is a {weld_which_form}."
    if weld_which_form not in ("fillet round a rectangle", "fillet round a tube or cup"):
        return Judgement("good", text)
    return odd(f"{text} That goes round one part.", f"weld_{which}.form", confirmed)


@check(
    "arm-weld-and-wall",
    step="weld_steering_arm",
    title="Arm weld and the wall under it",
    good="runs and the way between them lie in the wall that the arm leaves square",
    watch="one of them lies fore and aft, the way the arm goes, and it is not confirmed",
    source=PRACTICE,
    grade="common practice",
)
def arm_weld_and_wall(
    weld_steering_arm_runs_lie: Way | None,
    weld_steering_arm_apart_lies: Way | None,
    arm_on_wall: Mm | None,
    tie_rod_end_ahead: Mm | None,
    confirmed: Confirmed,
) -> Judgement:
    """An arm that goes ahead or behind from a flat wall leaves it square, so that its weld lies up and down and in and out."""
    ways = {"runs_lie": weld_steering_arm_runs_lie, "apart_lies": weld_steering_arm_apart_lies}
    if arm_on_wall == 0 or tie_rod_end_ahead == 0:
        raise DoesNotApply("the arm stands on no wall, or goes neither ahead nor behind")
    if arm_on_wall is None or tie_rod_end_ahead is None or None in ways.values():
        claim = [way for way in ways.values() if way is not None]
        bounds = {
            "weld_steering_arm.runs_lie": weld_steering_arm_runs_lie,
            "weld_steering_arm.apart_lies": weld_steering_arm_apart_lies,
            "upright.arm_on_wall": arm_on_wall,
            "tie_rod_end_ahead": tie_rod_end_ahead,
        }
        raise not_compared(
            "the arm's weld, the wall under it and the tie-rod end are not all entered", claim or None, bounds
        )
    where = "ahead" if tie_rod_end_ahead > 0 else "behind"
    along = [key for key, way in ways.items() if way == "fore and aft"]
    if not along:
        return Judgement("good", f"The arm goes {where} from a flat wall, and its weld lies in that wall.")
    text = f"The arm goes {where} from a flat wall, and its weld is said to lie fore and aft, square to that wall."
    return odd(text, f"weld_steering_arm.{along[0]}", confirmed)


WELDS_CALLED = (
    {"which": "upper", "called": "Upper weld's"},
    {"which": "lower", "called": "Lower weld's"},
    {"which": "steering_arm", "called": "Steering arm weld's"},
    {"which": "caliper_bracket", "called": "Caliper bracket weld's"},
)
ROUND: WeldForm = "fillet round a tube or cup"
PLAIN_WAY = 1.25
"""How many times the next lever the greatest must be, for the part to reach plainly that way."""


@check(
    "{which}-weld-and-lever",
    step="weld_{which}",
    title="{called} runs and the way to the load",
    good="the load stands off the weld square to its runs and to the way between them",
    watch="it stands off along one of them, as at a part lapped on another, and it is not confirmed",
    source=PRACTICE,
    grade="common practice",
    each=WELDS_CALLED,
)
def weld_and_lever(
    weld_which_form: WeldForm | None,
    weld_which_runs_lie: Way | None,
    weld_which_apart_lies: Way | None,
    weld_which_load_ahead: Mm | None,
    weld_which_load_above: Mm | None,
    weld_which_load_inboard: Mm | None,
    confirmed: Confirmed,
    which: str,
) -> Judgement:
    """A lug or arm stands up from its weld. One whose load lies along the runs is lapped, or the way of its runs is a slip."""
    ahead, above, inboard = weld_which_load_ahead, weld_which_load_above, weld_which_load_inboard
    ways = {"runs_lie": weld_which_runs_lie, "apart_lies": weld_which_apart_lies}
    if weld_which_form == ROUND:
        raise DoesNotApply("the weld is a ring, which has no runs")
    if ahead is None or above is None or inboard is None or weld_which_form is None or None in ways.values():
        entries = {"form": weld_which_form, **ways, "load_ahead": ahead, "load_above": above, "load_inboard": inboard}
        claim = [entry for entry in entries.values() if entry is not None]
        why = "the ways of the runs and of the load are not all entered"
        raise not_compared(why, claim or None, {f"weld_{which}.{key}": entry for key, entry in entries.items()})
    levers: dict[Way, float] = {"fore and aft": abs(ahead), "up and down": abs(above), "in and out": abs(inboard)}
    *_, next_way, way = sorted(levers, key=lambda one: levers[one])
    if levers[way] <= PLAIN_WAY * levers[next_way]:
        raise DoesNotApply("the load stands off the weld no one way plainly")
    along = [key for key, lies in ways.items() if lies == way]
    text = f"The load stands off the weld farthest {way}"
    if not along:
        return Judgement("good", f"{text}, square to its runs.")
    said = "its runs lie" if along[0] == "runs_lie" else "the way from one run to the next lies"
    text += f", and {said} that way too. A part that stands up from its weld is welded across that way."
    return odd(text, f"weld_{which}.{along[0]}", confirmed)


@check(
    "{which}-leg-suits-metal",
    step="weld_{which}",
    title="{called} leg and metal",
    limits=Between("1", 0.5, 0.98),
    good="{low} to {high} of the thinner part",
    watch="beyond, and not confirmed",
    source=PRACTICE,
    grade="common practice",
    each=WELDS_CALLED,
)
def leg_suits_metal(
    weld_which_leg: Mm | None,
    weld_which_thickness_one: Mm | None,
    weld_which_thickness_two: Mm | None,
    confirmed: Confirmed,
    which: str,
    limits: Between,
) -> Judgement:
    """A fillet's leg against the thinner of the two parts it joins."""
    if weld_which_leg is None or weld_which_thickness_one is None or weld_which_thickness_two is None:
        bounds = {
            f"weld_{which}.thickness_one": weld_which_thickness_one,
            f"weld_{which}.thickness_two": weld_which_thickness_two,
        }
        raise not_compared("leg and both thicknesses are not all entered", weld_which_leg, bounds)
    thinner = min(weld_which_thickness_one, weld_which_thickness_two)
    figures = {"thinner": (thinner, "mm")}
    text = "The leg is {weld_which_leg}, the thinner part {thinner}"
    if limits.verdict(weld_which_leg / thinner) == "good":
        return Judgement("good", f"{text}: they agree.", figures=figures)
    return odd(f"{text}: a leg is a half of it to nearly all.", f"weld_{which}.leg", confirmed, figures)


@check(
    "{which}-bevel-and-leg",
    step="weld_{which}",
    title="{called} form and leg",
    good="a fillet has a leg, a full bevel none",
    watch="a full bevel with the leg of a fillet, and it is not confirmed",
    source=PRACTICE,
    grade="common practice",
    each=WELDS_CALLED,
)
def bevel_and_leg(
    weld_which_form: WeldForm | None, weld_which_leg: Mm | None, confirmed: Confirmed, which: str
) -> Judgement:
    """A weld through the whole thickness is judged as strong as the part: said of a fillet, it hides what the fillet bears."""
    if weld_which_form is None or weld_which_leg is None:
        raise not_compared("form and leg are not both entered", weld_which_leg, {f"weld_{which}.form": weld_which_form})
    text = f"The weld is a {weld_which_form}, and a leg of {{weld_which_leg}} is entered"
    if weld_which_form != "full bevel":
        return Judgement("good", f"{text}.")
    text += ": fillets have legs, and only a bevel through the whole thickness is as strong as the part."
    return odd(text, f"weld_{which}.leg", confirmed)


THROUGH = (0.7, 1.4)
"""How far apart two runs are over the thickness of a part, within which they lie on its two faces."""


@check(
    "caliper-bracket-weld-across",
    step="weld_caliper_bracket",
    title="Bracket weld and the way of the bracket",
    good="from the run on one face to that on the other is in and out, as the bracket's faces lie",
    watch="it is another way, and not confirmed",
    source=sources.GEOMETRY.saying("the caliper's bolts go through the bracket along the wheel's axis"),
    grade="common practice",
)
def bracket_weld_across_bracket(
    weld_caliper_bracket_form: WeldForm | None,
    weld_caliper_bracket_apart: Mm | None,
    weld_caliper_bracket_thickness_one: Mm | None,
    weld_caliper_bracket_apart_lies: Way | None,
    confirmed: Confirmed,
) -> Judgement:
    """A bracket that stands beside the rotor has its two faces outboard and inboard, and a run on each of them."""
    apart, thick, lies = weld_caliper_bracket_apart, weld_caliper_bracket_thickness_one, weld_caliper_bracket_apart_lies
    form = weld_caliper_bracket_form
    if form is not None and form != "fillet on both sides":
        raise DoesNotApply("the bracket's weld is of another form")
    if form is None or apart is None or not thick or lies is None:
        bounds = {"form": form, "apart": apart, "thickness_one": thick or None}
        bounds = {f"weld_caliper_bracket.{key}": answer for key, answer in bounds.items()}
        raise not_compared("the two runs of the bracket's weld are not all entered", lies, bounds)
    if not within(apart / thick, *THROUGH):
        raise DoesNotApply("the runs do not lie on the two faces of one bracket")
    text = f"The bracket's two runs lie on its two faces, and from one to the other it is {lies}"
    if lies == "in and out":
        return Judgement("good", f"{text}, as its faces lie.")
    return odd(f"{text}; its faces lie outboard and inboard.", "weld_caliper_bracket.apart_lies", confirmed)
