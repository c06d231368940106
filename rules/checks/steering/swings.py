"""Does anything bind or rub on the way: joints out of angle, tyre or rim on arms and tie rod."""

from math import radians

from rules.graph.bands import at_least
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.closeness import reaches
from rules.measure.units import Mm, Rad
from rules.motion.joints import Angles
from rules.motion.place_words import Figures, where
from rules.motion.sweep import Worst

DEGREE = radians(1)
IN_HAND = 3 * DEGREE
WORTH_CLOCKING = 1 * DEGREE
"""What clocking must win before it is offered: what an angle gauge reads."""
IN_HAND_OR_MORE, LESS_IN_HAND, NONE_IN_HAND = (
    "3 deg or more in hand",
    "0 to 3 deg in hand",
    "more than the joint allows",
)
MARGIN_SOURCE = "common practice, no source: 2 to 3 deg in hand, from memory; never more than the maker allows"


def _shorten(worst: float) -> list[str]:
    """What to hold back, by where the worst was found."""
    if not isinstance(worst, Worst):
        return []
    travel = "a bump stop that touches sooner" if worst.travel > 0 else "a strap for less droop" if worst.travel else ""
    return [words for words in (travel, "a shorter lock" if worst.lock else "") if words]


def _swings(part: str, needed: float, allowed: float, changes: list[str], figures: Figures) -> Judgement:
    """needed: a Worst. changes: what to do beside more angle and less travel."""
    margin = allowed - needed
    verdict = at_least(margin, good=IN_HAND, watch=0.0)
    place, there = where(needed)
    figures |= there | {"needed": (float(needed), "rad"), "allowed": (allowed, "rad"), "margin": (margin, "rad")}
    text = f"{part} swings {{needed}} at most, {place}; it allows {{allowed}}"
    if verdict == "good":
        return Judgement(verdict, f"{text}.", figures=figures)
    ways = ", ".join(["misalignment spacers or a joint that allows more", *_shorten(needed)])
    change = " ".join([*changes, f"{ways[:1].upper()}{ways[1:]}."])
    if verdict == "watch":
        return Judgement(verdict, f"{text}: {{margin}} in hand, and 3 deg are wanted.", change, figures)
    return Judgement(verdict, f"{text}: it binds there, and bends its bolt or tears open.", change, figures)


def _wrong_bolt(angles: Angles, allowed: float, lies: str, better: str) -> tuple[list[str], Figures]:
    """Whether lock alone, without any travel, uses the joint up because of how its bolt lies."""
    alone = angles.from_lock_alone
    if lies == better or reaches(allowed - alone, IN_HAND):
        return [], {}
    words = f"Lock alone swings it {{lock_alone}}, because its bolt lies {lies}: turn the bolt {better}."
    return [words], {"lock_alone": (alone, "rad")}


def _outer_pivot(
    part: str, needed: float, allowed: float, angles: Angles, bolt: str, clocked: float | None, best: float | None
) -> Judgement:
    """best: a Clocking, or None where clocking changes nothing."""
    changes, figures = _wrong_bolt(angles, allowed, bolt, "along the steering axis")
    left = getattr(best, "least", needed)
    if best is not None and reaches(needed - left, WORTH_CLOCKING):
        turn = best - (clocked or 0.0)
        outboard_end = "its outboard end higher" if turn > 0 else "its outboard end lower"
        top = "its top further inboard" if turn > 0 else "its top further outboard"
        way = outboard_end if bolt == "across the car" else top
        changes.append(f"Clock its housing {{turn}} from where it is, {way}: it then needs {{left}}.")
        figures |= {"turn": (abs(turn), "rad"), "left": (left, "rad")}
    return _swings(part, needed, allowed, changes, figures)


@check(
    "upper-joint-angle",
    step="joint_angles",
    title="Upper joint's swing",
    good=IN_HAND_OR_MORE, watch=LESS_IN_HAND, stop=NONE_IN_HAND, source=MARGIN_SOURCE, grade="common practice",
)  # fmt: skip
def upper_joint_swings(
    upper_joint_angle: Rad,
    upper_allowed: Rad,
    upper_joint_angles: Angles,
    upper_bolt: str,
    upper_set: Rad | None,
    upper_best_set: Rad | None,
) -> Judgement:
    """The upper outer joint through all travel and both locks, against what it allows each way."""
    return _outer_pivot(
        "The upper joint", upper_joint_angle, upper_allowed, upper_joint_angles, upper_bolt, upper_set, upper_best_set
    )


@check(
    "lower-joint-angle",
    step="joint_angles",
    title="Lower joint's swing",
    good=IN_HAND_OR_MORE, watch=LESS_IN_HAND, stop=NONE_IN_HAND, source=MARGIN_SOURCE, grade="common practice",
)  # fmt: skip
def lower_joint_swings(
    lower_joint_angle: Rad,
    lower_allowed: Rad,
    lower_joint_angles: Angles,
    lower_bolt: str,
    lower_set: Rad | None,
    lower_best_set: Rad | None,
) -> Judgement:
    """The lower outer joint through all travel and both locks, against what it allows each way."""
    return _outer_pivot(
        "The lower joint", lower_joint_angle, lower_allowed, lower_joint_angles, lower_bolt, lower_set, lower_best_set
    )


@check(
    "tie-rod-outer-angle",
    step="joint_angles",
    title="Outer tie-rod joint's swing",
    good=IN_HAND_OR_MORE, watch=LESS_IN_HAND, stop=NONE_IN_HAND, source=MARGIN_SOURCE, grade="common practice",
)  # fmt: skip
def tie_rod_outer_swings(
    tie_rod_outer_angle: Rad, tie_rod_outer_allowed: Rad, tie_rod_outer_angles: Angles, tie_rod_outer_bolt: str
) -> Judgement:
    """The tie rod's outer joint through all travel and both locks, against what it allows each way."""
    changes, figures = _wrong_bolt(tie_rod_outer_angles, tie_rod_outer_allowed, tie_rod_outer_bolt, "up and down")
    return _swings("The outer tie-rod joint", tie_rod_outer_angle, tie_rod_outer_allowed, changes, figures)


@check(
    "tie-rod-inner-angle",
    step="joint_angles",
    title="Inner tie-rod joint's swing",
    good=IN_HAND_OR_MORE, watch=LESS_IN_HAND, stop=NONE_IN_HAND, source=MARGIN_SOURCE, grade="common practice",
)  # fmt: skip
def tie_rod_inner_swings(tie_rod_inner_angle: Rad, tie_rod_inner_allowed: Rad) -> Judgement:
    """The tie rod's inner joint through all travel and both locks, against what it allows each way."""
    return _swings("The inner tie-rod joint", tie_rod_inner_angle, tie_rod_inner_allowed, [], {})


TOUCHES = 3.0
"""mm; less counts as a touch, for what flexes."""
OFF_ROAD, ON_THE_ROAD = 12.0, 6.0
TOUCHING = "less than 3 mm (1/8 in)"
TYRE_GOOD, TYRE_WATCH = "12 mm (1/2 in) or more; 6 mm (1/4 in) on the road", "from 3 mm up to that"
RIM_GOOD, RIM_WATCH = "6 mm (1/4 in) or more", "3 to 6 mm"
TYRE_ROOM = (
    "common practice, no source: no contact anywhere in travel and lock; 12 to 25 mm spare for soft off-road tyres and 6 to "
    "10 mm on the road, from memory"
)
RIM_ROOM = "common practice, no source: 1/4 in (6 mm) general, 1/8 in (3 mm) the bare minimum for flex"
LARGEST = "That is the largest tyre, new and not bulged."


def _rubs(what: str, gap: float, good: float, change: str, beside: str = "") -> Judgement:
    """gap: a Worst, mm. what: 'The rim ... the tie rod'. change: what to move, beside less lock and travel."""
    verdict = at_least(gap, good=good, watch=TOUCHES)
    part, other = what.split(" ... ")
    place, figures = where(gap)
    figures |= {"gap": (float(gap), "mm"), "hit": (-gap, "mm"), "wanted": (good, "mm")}
    if gap < 0:
        text = f"{part} hits {other} by {{hit}}, {place}."
    elif verdict == "good":
        text = f"{part} clears {other} by {{gap}}, least {place}."
    else:
        text = f"{part} clears {other} by only {{gap}}, {place}; {{wanted}} or more is wanted."
    text = f"{text} {beside}".rstrip()
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    ways = ", ".join([*_shorten(gap), change])
    return Judgement(verdict, text, f"{ways[:1].upper()}{ways[1:]}.", figures)


def _tyre_room(use: str) -> float:
    return ON_THE_ROAD if use == "road" else OFF_ROAD


@check(
    "tyre-clears-upper-arm",
    step="arms",
    title="Tyre clear of the upper arm",
    good=TYRE_GOOD, watch=TYRE_WATCH, stop=TOUCHING, source=TYRE_ROOM, grade="common practice",
)  # fmt: skip
def tyre_clears_upper_arm(tyre_upper_arm_gap: Mm, use: str) -> Judgement:
    """Room between the largest tyre and the upper arm's tubes, through all travel and both locks."""
    change = "less backspacing, or the arm's inner pivots closer together"
    return _rubs("The tyre ... the upper arm", tyre_upper_arm_gap, _tyre_room(use), change, LARGEST)


@check(
    "tyre-clears-lower-arm",
    step="arms",
    title="Tyre clear of the lower arm",
    good=TYRE_GOOD, watch=TYRE_WATCH, stop=TOUCHING, source=TYRE_ROOM, grade="common practice",
)  # fmt: skip
def tyre_clears_lower_arm(tyre_lower_arm_gap: Mm, use: str) -> Judgement:
    """Room between the largest tyre and the lower arm's tubes, through all travel and both locks."""
    change = "less backspacing, or the arm's inner pivots closer together"
    return _rubs("The tyre ... the lower arm", tyre_lower_arm_gap, _tyre_room(use), change, LARGEST)


@check(
    "tyre-clears-tie-rod",
    step="arms",
    title="Tyre clear of the tie rod",
    good=TYRE_GOOD, watch=TYRE_WATCH, stop=TOUCHING, source=TYRE_ROOM, grade="common practice",
)  # fmt: skip
def tyre_clears_tie_rod(tyre_tie_rod_gap: Mm, use: str) -> Judgement:
    """Room between the largest tyre and the tie rod, through all travel and both locks. Its joint wants its own look."""
    change = "less backspacing, or the tie rod's ends moved inboard"
    return _rubs("The tyre ... the tie rod", tyre_tie_rod_gap, _tyre_room(use), change, LARGEST)


@check(
    "rim-clears-upper-joint",
    step="arms",
    title="Rim clear of the upper arm",
    good=RIM_GOOD, watch=RIM_WATCH, stop=TOUCHING, source=RIM_ROOM, grade="common practice",
)  # fmt: skip
def rim_clears_upper_joint(rim_upper_joint_gap: Mm) -> Judgement:
    """Room between the rim and the upper joint's housing or the arm's tubes, through all travel and both locks."""
    change = "a smaller housing, thinner tube or less backspacing, or the joint moved inboard or nearer the spindle"
    return _rubs("The rim ... the upper joint's housing or arm", rim_upper_joint_gap, 6.0, change)


@check(
    "rim-clears-lower-joint",
    step="arms",
    title="Rim clear of the lower arm",
    good=RIM_GOOD, watch=RIM_WATCH, stop=TOUCHING, source=RIM_ROOM, grade="common practice",
)  # fmt: skip
def rim_clears_lower_joint(rim_lower_joint_gap: Mm) -> Judgement:
    """Room between the rim and the lower joint's housing or the arm's tubes, through all travel and both locks."""
    change = "a smaller housing, thinner tube or less backspacing, or the joint moved inboard or nearer the spindle"
    return _rubs("The rim ... the lower joint's housing or arm", rim_lower_joint_gap, 6.0, change)


@check(
    "rim-clears-tie-rod",
    step="arms",
    title="Rim clear of the tie rod",
    good=RIM_GOOD, watch=RIM_WATCH, stop=TOUCHING, source=RIM_ROOM, grade="common practice",
)  # fmt: skip
def rim_clears_tie_rod(rim_tie_rod_gap: Mm) -> Judgement:
    """Room between the rim and the tie rod, through all travel and both locks. Joint and steering arm want their own look."""
    change = "a shorter steering arm, less backspacing, or the tie rod's outer end moved inboard"
    return _rubs("The rim ... the tie rod", rim_tie_rod_gap, 6.0, change)
