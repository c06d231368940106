"""Does it turn: the sense of the steering arms, the lock and what stops it, the return to straight over the whole lock."""

from collections.abc import Mapping
from math import inf, radians

from rules.checks.steering.returns import RETURN, RETURN_SOURCES, RETURNS_WORDS, returns
from rules.graph.bands import AtLeast, AtMost, Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement, NotJudged, Waits
from rules.measure.closeness import more_than, reaches, within
from rules.measure.records import replace
from rules.measure.units import Mm, NewtonMetre, Rad, Ratio, Share
from rules.motion.front_end import FrontEnd
from rules.motion.kinds import LinkageKind
from rules.motion.place_words import turned, where
from rules.motion.sweep import Sweep, Worst
from rules.motion.turning import LockTable, Reach
from rules.sheet.steering import RackMoves, StoppedBy
from rules.tables import sources
from rules.values.steering.turning import TURN

LOCKS: Mapping[LinkageKind, str] = {
    "rack": "a tie rod lies in a line with its arm, or square to the rack",
    "relay rod": "a tie rod lies in a line with its arm, or the relay rod with its own arms",
    "one rod across": "the rod lies in a line with an arm",
}
"""What locks each kind of linkage."""
FURTHEST_AIM = 3.0
"""Wheelbases; an arm that aims further off runs all but straight fore and aft."""
IN_LINE = radians(0.01)
"""Closer than anyone can read."""
SWAPPED = (
    "Look first whether the uprights are swapped or turned over. Else the place of the tie rod's outer end decides it."
)
AIMED_BY = "How the arms lean, and how far ahead of their ends the inner tie-rod ends lie, decide it."
LOCK_BY = "Change the steering arm's length, the travel of what moves the tie rods, or where the stop touches."
"""What decides how far the wheels turn, and how alike. Which way helps is tried on the sheet."""


@check(
    "lock-reached",
    step="steering",
    title="Linkage reaches full lock",
    limits=AtLeast("rad", radians(20), radians(10)),
    good="both wheels follow to the stop or the end of the travel, the inner one to {good} or more",
    watch="the inner wheel to {watch} or more",
    stop="less than that; or the linkage locks before",
    source=(
        sources.COMMON_PRACTICE.saying("inner wheels turn 25 to 40 deg"),
        sources.RACE_RULES.saying("no inversion of the linkage"),
    ),
)
def lock_is_reached(lock_reached: Reach, linkage: LinkageKind, limits: AtLeast) -> Judgement:
    """Whether both wheels follow to full lock at ride height before two links lie in a line, where the steering locks."""
    figures = {"inner": (lock_reached.inner, "rad")}
    if reaches(lock_reached.share, 1.0):
        verdict, text = limits.verdict(lock_reached.inner), "Both wheels follow to full lock, the inner one to {inner}."
        if verdict == "good":
            return Judgement(verdict, text, figures=figures)
        return Judgement(verdict, f"{text} With so little lock the car hardly turns.", LOCK_BY, figures)
    if not lock_reached.share:
        text = f"The tie rod turns the wheel neither way: as the car stands, {LOCKS[linkage]}."
        change = "Put right tie-rod end ahead of wheel centre and tie-rod end inboard of hub face, or the inner pivot."
        return Judgement("stop", text, change)
    text = f"The steering locks with the inner wheel at {{inner}}, before its full lock: there {LOCKS[linkage]}."
    return Judgement("stop", text, LOCK_BY, figures)


@check(
    "steering-sense",
    step="steering",
    title="Inner wheel turns more than the outer",
    limits=Between("share", 0.4, 1.2, least=-0.2, other={"turn": (TURN, "rad")}),
    good="{usual} of the difference a bend asks for, at {turn}",
    watch="less than {low}, or above {high}",
    stop="less than {least}: the outer wheel turns more",
    source=sources.OWN.saying("-20, 40 and 120 %; arms aimed at the rear axle's middle give 54 to 80 %, derived"),
)
def steering_sense(ackermann_share: Share, full_lock_inner: Rad, arm_aim: Ratio | None, limits: Between) -> Judgement:
    """Toe-out in turns: how much of the difference between the wheels that a bend asks for the linkage gives."""
    figures = {"turned": (min(TURN, full_lock_inner), "rad")}
    verdict = limits.verdict(ackermann_share)
    if verdict == "stop":
        return Judgement(
            verdict,
            "Turned {turned}, the outer wheel turns more than the inner one: reversed, so the wheels fight each other in "
            "every bend. Uprights swapped side to side, or turned upside down, do this.",
            SWAPPED,
            figures,
        )
    text = (
        "Toes out in turns: with the inner wheel at {turned}, the outer one turns less by {ackermann_share} of the "
        "difference that rolling true asks for"
    )
    if ackermann_share < 0:
        text = (
            "Slightly reversed: with the inner wheel at {turned}, the outer one turns a little more than it, where rolling true "
            "asks for less; {ackermann_share} of that difference"
        )
    if verdict == "good":
        return Judgement(verdict, f"{text}.", figures=figures)
    if arm_aim is not None and within(arm_aim, -FURTHEST_AIM, FURTHEST_AIM):
        figures["aim"] = (abs(arm_aim), "share")
        side = "behind" if arm_aim > 0 else "ahead of"
        text += f"; the arms aim at a place {{aim}} of the wheelbase {side} the front axle"
    if ackermann_share < limits.low:
        return Judgement(verdict, f"{text}. The tyres scrub in tight bends.", AIMED_BY, figures)
    return Judgement(verdict, f"{text}. The inner tyre is dragged round.", AIMED_BY, figures)


@check(
    "steering-arm-sense",
    step="steering",
    title="Steering arm leans the right way",
    limits=AtLeast("rad", 0.0, radians(-5)),
    good="straight fore and aft, or aimed rearward: its end inboard of the axis behind the axle, outboard of it ahead",
    watch="the other way, down to {watch}",
    stop="the other way by more: reversed",
    source=sources.OWN.saying("5 deg; that arms must converge towards the rear axle is geometry"),
)
def steering_arm_sense(steering_arm_lean: Rad, limits: AtLeast) -> Judgement:
    """Known from the arm alone, before anything is known of rack or tie rod."""
    verdict = limits.verdict(steering_arm_lean)
    figures = {"lean": (abs(steering_arm_lean), "rad")}
    if verdict == "good":
        return Judgement(
            verdict, "The steering arm leans {lean} to the side that turns the inner wheel more.", figures=figures
        )
    how = "Reversed" if verdict == "stop" else "Slightly reversed"
    return Judgement(
        verdict,
        f"{how}: the steering arm leans {{lean}} to the side that turns the outer wheel more than the inner one. Uprights "
        "swapped side to side, or turned upside down, do this.",
        SWAPPED,
        figures,
    )


@check(
    "rack-way",
    step="steering",
    title="Turned left, the car goes left",
    good="rack or relay rod moves the way a left turn needs",
    stop="it moves the other way",
    source=sources.GEOMETRY.saying("the linkage as entered, moved"),
)
def rack_way(steered_front: FrontEnd, rack_moves: RackMoves | None) -> Judgement:
    """Whether the pinion moves the rack the way that turns the wheels as the steering wheel is turned."""
    if steered_front.linkage is None or steered_front.linkage.how == "one rod across":
        raise DoesNotApply("one rod across has no rack")
    if rack_moves is None:
        raise NotJudged("which way the rack moves when turned left is not entered", "steering.rack_moves")
    needed = "left" if steered_front.full > 0 else "right"
    if rack_moves == needed:
        return Judgement("good", f"For a left turn the rack must move to the {needed}, and it does.")
    return Judgement(
        "stop",
        f"For a left turn the rack must move to the {needed}, and it moves to the {rack_moves}: turned left, the car goes "
        "right. A rack turned round, or one made for the other side of the axle, does this.",
        "Turn the rack over so that its pinion lies on its other side, or put rack and steering arms on the other side of "
        "the axle.",
    )


@check(
    "tie-rod-threads",
    step="steering",
    title="Tie rod's threads screwed in",
    limits=AtLeast("1", 1.5, 1.0),
    good="{good} diameters or more at each end",
    watch="down to {watch}",
    stop="less than {watch}, or more than the end has",
    source=sources.COMMON_PRACTICE.saying(
        "one to one and a half diameters in steel; more where it is screwed into aluminium"
    ),
)
def tie_rod_threads(
    tie_rod_threads_share: Ratio,
    tie_rod_threads_in: Mm | None,
    tie_rod_outer_shank: Mm | None,
    tie_rod_inner_shank: Mm | None,
    tie_rod_end_reach: Mm | None,
    limits: AtLeast,
) -> Judgement:
    """Whether enough thread holds each end of the tie rod, and whether it has so much: a shank ends at its housing."""
    assert tie_rod_threads_in is not None  # or there were no share
    for which, shank, housing in (
        ("outer", tie_rod_outer_shank, tie_rod_end_reach or 0.0),
        ("inner", tie_rod_inner_shank, 0.0),
    ):
        if shank is not None and more_than(tie_rod_threads_in, shank - housing):
            figures = {"shank": (shank - housing, "mm")}
            text = (
                f"{{tie_rod_threads_in}} are screwed in, and the {which} end has {{shank}} of shank beyond its housing."
            )
            return Judgement(
                "stop", text, "Measure the ends again; the toe is set with less of them screwed in.", figures
            )
    verdict = limits.verdict(tie_rod_threads_share)
    text = "Each end is screwed in {tie_rod_threads_share} diameters of its thread"
    if verdict == "good":
        return Judgement(verdict, f"{text}.")
    return Judgement(verdict, f"{text}; {{wanted}} are wanted.", "Screw them in further: a shorter gap, a longer tube.",
                     {"wanted": (limits.good, "1")})  # fmt: skip


@check(
    "ackermann-error",
    step="steering",
    title="Outer wheel's error over the lock",
    limits=AtMost("rad", radians(2), inf),
    good="{good} or less from the ideal",
    watch="more",
    source=sources.OWN.saying("2 deg is what arms aimed at the rear axle's middle leave at 30 deg of lock, derived"),
)
def ackermann_error_small(
    lock_table: LockTable,
    ackermann_error: Rad,
    best_ackermann_largest: Rad | None,
    limits: AtMost,
) -> Judgement:
    """How far the outer wheel is from rolling true, where it is worst; and whether another lean of the arm does better."""
    error = abs(ackermann_error)
    figures = {"inner": (lock_table.worst.inner, "rad"), "error": (error, "rad")}
    text = "With the inner wheel at {inner} the outer one is {error} off the angle the bend asks for, at worst"
    verdict = limits.verdict(error)
    if verdict == "good":
        return Judgement("good", f"{text}.", figures=figures)
    change = "No lean of an arm this long does better: its length, or the inner tie-rod ends moved fore or aft."
    if best_ackermann_largest is not None and not reaches(left := abs(best_ackermann_largest), error):
        figures["left"] = (left, "rad")
        change = "An arm this long that leans otherwise leaves {left} at best, rotor and wheel not counted."
    return Judgement(verdict, f"{text}; it scrubs there.", change, figures)


@check(
    "tie-rod-over-centre",
    step="steering",
    title="Tie rod against its arm",
    limits=AtLeast("rad", radians(30), radians(25)),
    good="{good} or more from lying in a line",
    watch="down to {watch}",
    stop="less than {watch}",
    source=(
        sources.COMMON_PRACTICE.saying("25 to 30 deg from memory"),
        sources.RACE_RULES.saying("no inversion of the linkage"),
    ),
)
def tie_rod_over_centre(rod_to_arm_angle: Rad, envelope: Sweep | None, limits: AtLeast) -> Judgement:
    """How near tie rod and arm come to lying in a line, where the steering locks or folds over to the wrong side."""
    place, figures = where(rod_to_arm_angle)
    change = "Change the steering arm's length or the rack's travel, or let a stop touch before."
    if reaches(IN_LINE, rod_to_arm_angle):
        text = f"Tie rod and arm lie in a line {place}, or did before: the steering locks, or folds over to the wrong side."
        return Judgement("stop", text, change, figures)
    looked = "travel and lock" if envelope is not None else "the lock at ride height"
    text = f"Over {looked}, tie rod and arm stay {{rod_to_arm_angle}} from lying in a line; nearest {place}."
    verdict = limits.verdict(rod_to_arm_angle)
    return Judgement(verdict, text, "" if verdict == "good" else change, figures)


@check(
    "steering-stops",
    step="steering",
    title="What stops the lock",
    good="a stop on upright or arm, or the rack's own end",
    watch="the entries contradict each other",
    stop="the steering box, or nothing",
    source=(sources.COMMON_PRACTICE, sources.RACE_RULES.saying("positive stops on upright or rack")),
)
def steering_stops(
    steering_begun: bool,
    stopped_by: StoppedBy | None,
    linkage: LinkageKind | None,
    stop_angle: Rad | None,
    rack_left_at_stop: Mm | None,
) -> Judgement:
    """What touches first at full lock. It must touch before a joint binds or a tyre rubs."""
    if stopped_by is None:
        raise Waits("steering.stopped_by")
    change = "Weld or bolt an adjustable stop to upright or arm, set to touch before any joint binds or tyre rubs."
    if stopped_by == "nothing":
        text = "Nothing stops the lock: a joint binds, a tyre rubs or the linkage folds over first."
        return Judgement("stop", text, change)
    if stopped_by == "steering box":
        text = "The steering box stops the lock: every kerb hit at full lock goes into its shaft and its inner stops."
        return Judgement("stop", text, change)
    if stopped_by == "upright or arm":
        if stop_angle is None:
            raise Waits("steering.stop_angle")
        return Judgement("good", "The lock is stopped by a stop on upright or arm.")
    if linkage == "one rod across":
        return Judgement("watch", "The rack is said to stop the lock, but one rod across has no rack.", change)
    if rack_left_at_stop is not None and more_than(rack_left_at_stop, 0.0):
        text = "The rack's end is said to stop the lock, but a stop touches at {stop_angle}, {rack_left_at_stop} before it."
        return Judgement("watch", text, "Say which of the two is there, or empty the stop's angle.")
    return Judgement("good", "The lock is stopped by the rack's own end.")


@check(
    "stop-before-rack-end",
    step="steering",
    title="Stop touches before the rack's end",
    good="travel left when the stop touches, at ride height and through the wheel's travel",
    watch="none: rack or relay rod comes to its own end first",
    source=sources.COMMON_PRACTICE,
)
def stop_before_rack_end(rack_left_at_stop: Mm, full_lock_inner: Rad, rack_left_in_travel: Mm | None) -> Judgement:
    """Where a stop is fitted, whether it is what touches: the slide it takes changes as the wheel travels."""
    if more_than(rack_left_at_stop, 0.0):
        text = "The stop touches with the inner wheel at {full_lock_inner} and {rack_left_at_stop} of the travel left"
        if rack_left_in_travel is None:
            return Judgement("good", f"{text}, at ride height; how it is through the travel is not worked out.")
        place, figures = where(rack_left_in_travel)
        if more_than(rack_left_in_travel, 0.0):
            return Judgement(
                "good", f"{text}; through the travel {{rack_left_in_travel}} at least, {place}.", figures=figures
            )
        return Judgement(
            "watch",
            f"At ride height the stop touches, with {{rack_left_at_stop}} of the travel left; {place} it would take {{short}} "
            "more than there is: rack or relay rod comes to its own end first there.",
            "Another angle of the stop, or another travel each way.",
            {**figures, "short": (-rack_left_in_travel, "mm")},
        )
    return Judgement(
        "watch",
        "Rack or relay rod comes to its own end with the inner wheel at {full_lock_inner}: the stop never touches.",
        "Another angle of the stop; or leave it empty if the rack's own end is the stop you mean.",
    )


@check(
    "returns-over-whole-lock",
    step="steering",
    title="Steering returns over the whole lock",
    limits=RETURN,
    good=RETURNS_WORDS["good"],
    watch=RETURNS_WORDS["watch"],
    stop=RETURNS_WORDS["stop"],
    source=RETURN_SOURCES,
)
def returns_over_whole_lock(
    least_return_moment: NewtonMetre,
    side_force_moment: NewtonMetre,
    mechanical_trail: Mm,
    weight_return_per_castor: NewtonMetre,
    weight_return_per_inclination: NewtonMetre,
    bend_return_per_castor: NewtonMetre,
    bend_return_per_inclination: NewtonMetre,
    limits: AtLeast,
) -> Judgement:
    """The same over the lock of the linkage there is: where the weight on both tyres does least to turn the wheels back."""
    there, figures = turned(least_return_moment.lock if isinstance(least_return_moment, Worst) else 1.0)
    judgement = returns(
        least_return_moment,
        side_force_moment,
        mechanical_trail,
        f"at {there}, where it is least",
        (weight_return_per_castor, weight_return_per_inclination),
        (bend_return_per_castor, bend_return_per_inclination),
        limits,
    )
    return replace(judgement, figures={**judgement.figures, **figures})
