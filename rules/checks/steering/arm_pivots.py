"""Are the pivots where they can be: slips of the tape and swapped entries, before anything is moved."""

from rules.graph.asking import given
from rules.graph.bands import Limits
from rules.graph.declare import check
from rules.graph.results import Judgement, NotJudged, Waits
from rules.measure.units import Mm
from rules.motion.kinds import LinkageKind
from rules.motion.points import Hinge, UprightPoints
from rules.sheet.arms import ArmPivots
from rules.tables import sources
from rules.values.steering.asked_for import INNER_PIVOTS, NO_ARMS
from rules.values.steering.links import HALF_FLAT_HINGE, hinge_slip
from rules.values.steering.motion import NO_ARM, steering_arm_seen

PLAIN = sources.GEOMETRY.saying("double A-arms as they are built, inner pivots in the frame, outer pivots in the wheel")
AGREE = Limits(other={"close": (2.0, "mm")})
"""By how much a place entered and one copied from an arm may differ: twice a reading error."""


@check(
    "arm-pivots-placed",
    step="arms",
    title="Arm pivots in order",
    good="each arm's front pivot ahead of its rear one, inner pivots inboard of the outer one, upper arm above the lower",
    stop="any of these the other way round",
    source=PLAIN,
)
def arm_pivots_placed(arms: ArmPivots, lower_pivot_offset: Mm, upper_pivot_offset: Mm, track: Mm) -> Judgement:
    """Whether what is entered so far can be a pair of arms. One slip here would spoil everything that moves."""
    lower_height, upper_height = given(arms, "lower_front_height"), given(arms, "upper_front_height")
    across = (given(arms, "lower_front_from_centre"), given(arms, "upper_front_from_centre"))
    if all(part is None for part in (*across, lower_height, upper_height)):
        raise NotJudged(NO_ARMS, *INNER_PIVOTS)
    slips = []
    for arm, outer in (("lower", lower_pivot_offset), ("upper", upper_pivot_offset)):
        ahead, behind = given(arms, f"{arm}_front_ahead"), given(arms, f"{arm}_rear_ahead")
        if ahead is None or behind is None:
            ahead, behind = HALF_FLAT_HINGE, -HALF_FLAT_HINGE
        entered = (given(arms, f"{arm}_{end}_from_centre") for end in ("front", "rear"))
        sides = [part - track / 2 for part in entered if part is not None]
        if not sides:
            continue
        hinge = Hinge((ahead, sides[0], 0.0), (behind, sides[-1], 0.0))
        if slip := hinge_slip(hinge, outer):
            slips.append(f"the {arm} arm's {slip}")
    if lower_height is not None and upper_height is not None and upper_height <= lower_height:
        slips.append("the upper arm's inner pivots do not lie above the lower arm's")
    if not slips:
        half = [
            f"arms.{arm}_{end}_ahead"
            for arm in ("lower", "upper")
            for end, other in (("front", "rear"), ("rear", "front"))
            if given(arms, f"{arm}_{end}_ahead") is None and given(arms, f"{arm}_{other}_ahead") is not None
        ]
        if half:
            raise Waits(*half)
        return Judgement("good", "The arms' pivots entered so far are in order.")
    text = "; ".join(slips)
    return Judgement(
        "stop",
        f"{text[0].upper()}{text[1:]}.",
        "Check those entries for a swap or a slip: front and rear, upper and lower, from the centre line and not from the "
        "wheel. Nothing that moves is judged before.",
    )


@check(
    "tie-rod-placed",
    step="steering",
    title="Tie rod's ends in order",
    limits=AGREE,
    good="inner end inboard of the outer one; a place entered and an arm copied agree within {close}",
    watch="they disagree",
    stop="inner end outboard of the outer one; an end on the steering axis, or relay arms of no length",
    source=PLAIN,
)
def tie_rod_placed(
    upright_points: UprightPoints,
    steering_begun: bool | None,
    tie_rod_end_ahead: Mm | None,
    tie_rod_end_offset: Mm | None,
    tie_rod_end_height: Mm | None,
    inner_from_centre: Mm | None,
    tie_rod_ahead: Mm | None,
    copied_length: Mm | None,
    relay_arm_length: Mm | None,
    linkage: LinkageKind | None,
    track: Mm,
    limits: Limits,
) -> Judgement:
    """Whether the tie rod's two ends can be where they are entered, and something moves them."""
    if linkage == "relay rod" and relay_arm_length is not None and abs(relay_arm_length) < NO_ARM:
        text = "The arms the relay rod hangs on have no length, so nothing moves it."
        return Judgement("stop", text, "Enter the length of the arms the relay rod hangs on, from shaft to rod joint.")
    if tie_rod_end_ahead is not None and tie_rod_end_offset is not None and tie_rod_end_height is not None:
        end = tie_rod_end_ahead, tie_rod_end_offset, tie_rod_end_height
        if steering_arm_seen(upright_points, end) < NO_ARM:
            text = "The tie rod's outer end lies on the steering axis, so it has no arm to turn the wheel by."
            change = "Put right tie-rod end ahead of wheel centre or tie-rod end inboard of hub face."
            return Judgement("stop", text, change)
    one_rod = linkage == "one rod across"  # its other end is the other wheel's
    if not one_rod and inner_from_centre is None and (tie_rod_ahead is None or copied_length is None):
        if steering_begun:
            raise Waits("steering.inner_from_centre")
        why_not = "the tie rod's inner end is not entered, so its place was not judged"
        raise NotJudged(why_not, "steering.inner_from_centre")
    if tie_rod_end_ahead is None or tie_rod_end_offset is None or tie_rod_end_height is None:
        places = {"ahead": tie_rod_end_ahead, "offset": tie_rod_end_offset, "height": tie_rod_end_height}
        raise Waits(*(f"tie_rod_end_{name}" for name, part in places.items() if part is None))
    if not one_rod and inner_from_centre is not None and inner_from_centre - track / 2 >= tie_rod_end_offset:
        figures = {"inner": (inner_from_centre, "mm"), "outer": (tie_rod_end_offset + track / 2, "mm")}
        return Judgement(
            "stop",
            "The tie rod's inner pivot is entered {inner} from the car's centre line, and its outer end lies {outer} from it.",
            "Check both: the inner pivot is measured from the centre line, the outer end from the hub face inboard.",
            figures,
        )
    if tie_rod_ahead is not None and copied_length is not None:
        entered = steering_arm_seen(upright_points, (tie_rod_end_ahead, tie_rod_end_offset, tie_rod_end_height))
        if abs(entered - copied_length) > limits.other["close"][0]:
            return Judgement(
                "watch",
                "The tie-rod end as placed makes an arm of {entered}, but an arm of {copied_length} is copied. The place counts.",
                "Empty the one you do not mean.",
                {"entered": (entered, "mm")},
            )
    return Judgement("good", "The tie rod's ends entered so far are in order.")
