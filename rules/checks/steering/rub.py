"""Does tyre or rim rub on arms or tie rod on the way."""

from rules.corner.kinds import TYRE
from rules.graph.bands import AtLeast
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.measure.records import replace
from rules.measure.said import capital
from rules.measure.units import Mm
from rules.motion.place_words import where
from rules.motion.sweep import Worst
from rules.tables import sources
from rules.tables.load_multiples import Use

TYRE_CLEAR = replace(TYRE.limits, other={"on_the_road": (6.0, "mm")})
"""As of every other pair with the tyre in it, but for the road, where 6 mm is enough."""
RIM_CLEAR = AtLeast("mm", 6.0, 3.0)
"""Less than the least counts as a touch, for what flexes."""
TYRE_ROOM = sources.COMMON_PRACTICE.saying(
    "no contact anywhere in travel and lock; 12 to 25 mm spare for soft off-road tyres and 6 to 10 "
    "mm on the road, from memory"
)
RIM_ROOM = sources.COMMON_PRACTICE.saying("1/4 in (6 mm) general, 1/8 in (3 mm) the bare minimum for flex")
LARGEST = "That is the largest tyre, new and not bulged."


def hold_back(worst: float) -> list[str]:
    """What to hold back, by where the worst was found."""
    if not isinstance(worst, Worst):
        return []
    travel = "a bump stop that touches sooner" if worst.travel > 0 else "a strap for less droop" if worst.travel else ""
    return [words for words in (travel, "a shorter lock" if worst.lock else "") if words]


def _rubs(limits: AtLeast, part: str, other: str, gap: float, change: str, beside: str = "") -> Judgement:
    """gap: a Worst, mm. part, other: "The rim" and "the tie rod". change: what to move, beside less lock and travel."""
    verdict = limits.verdict(gap)
    place, figures = where(gap)
    figures |= {"gap": (float(gap), "mm"), "hit": (-gap, "mm"), "wanted": (limits.good, "mm", "up")}
    if gap < 0:
        text = f"{part} hits {other} by {{hit}}, {place}."
    elif verdict == "good":
        text = f"{part} clears {other} by {{gap}}, least {place}."
    else:
        text = f"{part} clears {other} by only {{gap}}, {place}; {{wanted}} or more is wanted."
    text = f"{text} {beside}".rstrip()
    if verdict == "good":
        return Judgement(verdict, text, figures=figures)
    ways = ", ".join([*hold_back(gap), change])
    return Judgement(verdict, text, f"{capital(ways)}.", figures)


OTHER_PIVOTS = "another backspacing, or another place of the arm's inner pivots"


@check(
    "tyre-clears-{which}",
    step="arms",
    title="Tyre clear of the {which}",
    limits=TYRE_CLEAR,
    good="{good} or more; {on_the_road} on the road",
    watch="from {watch} up to that",
    stop="less than {watch}",
    source=TYRE_ROOM,
    each=(
        {"which": "upper_arm", "seen": "upper arm's tubes", "more": "", "change": OTHER_PIVOTS},
        {"which": "lower_arm", "seen": "lower arm's tubes", "more": "", "change": OTHER_PIVOTS},
        {"which": "tie_rod", "seen": "tie rod", "more": " Its joint wants its own look.", "change": "another "
         "backspacing, or another place of the tie rod's ends"},
    ),
)  # fmt: skip
def tyre_clears(tyre_which_gap: Mm, use: Use, limits: AtLeast, change: str) -> Judgement:
    """Room between the largest tyre and the {seen}, through all travel and both locks.{more}"""
    if use == "road":
        limits = replace(limits, good=limits.other["on_the_road"][0])
    return _rubs(limits, "The tyre", "the {which}", tyre_which_gap, change, LARGEST)


MOVED_JOINT = "a smaller housing, another backspacing, or another place of the joint"


@check(
    "rim-clears-{which}",
    step="arms",
    title="Rim clear of the {beside}",
    limits=RIM_CLEAR,
    source=RIM_ROOM,
    each=(
        {"which": "upper_joint", "beside": "upper arm", "other": "upper joint's housing or arm", "more": "",
         "seen": "upper joint's housing or the arm's tubes", "change": MOVED_JOINT},
        {"which": "lower_joint", "beside": "lower arm", "other": "lower joint's housing or arm", "more": "",
         "seen": "lower joint's housing or the arm's tubes", "change": MOVED_JOINT},
        {"which": "tie_rod", "beside": "tie rod", "other": "tie rod", "more": " Joint and steering arm want their own look.",
         "seen": "tie rod", "change": "another steering arm, another backspacing, or another place of the tie rod's outer end"},
    ),
)  # fmt: skip
def rim_clears(rim_which_gap: Mm, limits: AtLeast, change: str) -> Judgement:
    """Room between the rim and the {seen}, through all travel and both locks.{more}"""
    return _rubs(limits, "The rim", "the {other}", rim_which_gap, change)
