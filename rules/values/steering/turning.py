"""How the wheels turn: inner against outer, the lock and how far it is reached, the tie rod over its arm, the turning circle.

Everything here is the steered front end at ride height, wheels turning about their leaning axes; where the arms are
known, the tie rod over its arm is looked at through the travel as well.
"""

from math import radians

from rules.graph.declare import value
from rules.graph.results import DoesNotApply, NotJudged, OutsideRange, Waits
from rules.measure.units import Mm, Rad, Ratio, Share
from rules.motion.front_end import FrontEnd
from rules.motion.linkage import SteeringLinkage
from rules.motion.points import CannotReach, Pose, UprightPoints
from rules.motion.steering_arm import BestArm, aim, arm_of, axis_of, outer_turn
from rules.motion.steering_arm import best_arm as search_best_arm
from rules.motion.sweep import Sweep, Worst, lowest
from rules.motion.sweep import envelope as through_travel_and_lock
from rules.motion.turned import steer_at, turn_at
from rules.motion.turning import (
    LockTable,
    Reach,
    Turned,
    ackermann,
    both_wheels,
    ideal_outer,
    ideal_outer_of,
    outer_edge_radius,
    reach,
    rod_to_arm,
)
from rules.tables import sources
from rules.values.steering.motion import EXACT, needs_an_arm, needs_two_ends

TURN = radians(20)
PLACES = 9
"""From straight ahead to full lock, both counted."""
GEOMETRY = "geometry"


@value("turning", formula="track - 2 x ground offset", source=sources.GEOMETRY)
def kingpin_track(track: Mm, ground_offset: Mm) -> Mm:
    """Distance between the two steering axes where they meet the ground, mm.

    >>> kingpin_track(1600.0, 25.0)
    1550.0
    """
    return track - 2 * ground_offset


@value("turning", formula="how far both wheels follow before tie rod and arm lie in a line", source=EXACT)
def lock_reached(
    steered_upright: UprightPoints, steering_linkage: SteeringLinkage, steered_front: FrontEnd | None
) -> Reach:
    """Whether the linkage reaches full lock at ride height, and the inner wheel's angle where it ends or locks.

    Nothing of it where the tie rod lies in a line with its arm as it stands, and so turns the wheel neither way.

    >>> front = trapezium()
    >>> lock_reached(front.upright, front.linkage, front).share, lock_reached(front.upright, front.linkage, None).share
    (1.0, 0.0)
    """
    if steered_front is None:
        needs_two_ends(steered_upright, steering_linkage)
        return Reach(0.0, 0.0)
    return reach(steered_front)


@value("turning", formula="nine places each way, where the linkage reaches full lock", source=EXACT)
def lock_sweep(steered_front: FrontEnd, lock_reached: Reach) -> Sweep:
    """The left corner at ride height from full right to full left. Not for a linkage that locks before: that is judged.

    >>> len(lock_sweep(trapezium(), Reach(1.0, 0.6)).placed)
    17
    """
    if lock_reached.share < 1.0:
        raise NotJudged(
            "the steering locks with the inner wheel at {inner}, before its full lock",
            figures={"inner": (lock_reached.inner, "rad")},
        )
    return through_travel_and_lock(steered_front, 0.0, 0.0, locks=2 * PLACES - 1)


@value(
    "turning",
    formula="inner and outer angle seen from above, and the ideal: cot(ideal) = cot(inner) + "
    "track of the steering axes / wheelbase",
    source=(
        sources.GEOMETRY.saying("every link keeps its length; rules/motion/front_end.py"),
        sources.KHURMI.saying("cot(outer) - cot(inner) = distance between steering axes / wheelbase"),
    ),
)
def lock_table(lock_sweep: Sweep, kingpin_track: Mm, wheelbase: Mm) -> LockTable:
    """Both wheels from straight ahead to full lock, in even steps of what moves the tie rods.

    >>> from math import degrees
    >>> round(degrees(lock_table(through_lock(trapezium()), 1400.0, 2600.0)[-1].inner), 6)
    35.0
    """
    ratio = kingpin_track / wheelbase
    return LockTable(
        Turned(wheels.inner.steer, -wheels.outer.steer, ideal_outer(wheels.inner.steer, ratio))
        for wheels in both_wheels(lock_sweep)
    )


@value(
    "turning",
    formula="the {which} wheel's angle at the end of the lock",
    source=EXACT,
    each=({"which": "inner"}, {"which": "outer"}),
)
def full_lock_which(lock_table: LockTable, which: str) -> Rad:
    """Angle of the {which} wheel at full lock, seen from above, rad, into the bend positive.

    >>> table = LockTable([Turned(0.0, 0.0, 0.0), Turned(0.6, 0.5, 0.48)])
    >>> full_lock_which(table, "inner"), full_lock_which(table, "outer")
    (0.6, 0.5)
    """
    return lock_table[-1].inner if which == "inner" else lock_table[-1].outer


@value("turning", formula="outer angle - ideal outer angle, where it is largest over the lock", source=EXACT)
def ackermann_error(lock_table: LockTable) -> Rad:
    """Largest error of the outer wheel over the lock, rad; positive where it turns too far.

    >>> round(ackermann_error(LockTable([Turned(0.3, 0.25, 0.28), Turned(0.6, 0.5, 0.48)])), 9)
    -0.03
    """
    return lock_table.worst.outer - lock_table.worst.ideal


@value(
    "contacts",
    formula="ideal outer angle from the true contacts - ideal outer angle from fixed steering axes, at full lock",
    source=EXACT,
)
def ideal_outer_by_contacts(lock_sweep: Sweep, lock_table: LockTable, wheelbase: Mm, track: Mm) -> Rad:
    """What it makes that the tyres' contacts wander as the wheels turn about leaning axes, rad, at full lock.

    Axes straight up through the contacts: nothing.

    >>> front = trapezium()
    >>> table = LockTable([Turned(0.0, 0.0, 0.0), Turned(radians(35), 0.4, ideal_outer(radians(35), 1.4 / 2.6))])
    >>> round(ideal_outer_by_contacts(through_lock(front), table, 2600.0, 1400.0), 9) + 0.0
    0.0
    """
    return ideal_outer_of(both_wheels(lock_sweep)[-1], wheelbase, -track / 2) - lock_table[-1].ideal


@value(
    "turning",
    formula="(inner - outer) / (inner - ideal outer) at the same inner angle: 20 deg, or full lock where less",
    source=sources.COMMON_PRACTICE.saying(
        "one of two definitions in use, from memory; the other is by where the spin axes meet"
    ),
)
def ackermann_share(steered_front: FrontEnd, full_lock_inner: Rad, kingpin_track: Mm, wheelbase: Mm) -> Share:
    """How much of the ideal difference between the wheels the linkage gives; negative where the sense is reversed.

    Arm leaning 16.2602 deg on a 1400 by 2600 mm car: more than the 62 % of the 15.07 deg that aim at the rear axle.

    >>> 0.62 < ackermann_share(trapezium(), radians(35), 1400.0, 2600.0) < 0.8
    True
    """
    upright, linkage = steered_front.upright, steered_front.linkage
    assert linkage is not None and upright.tie_rod_end is not None
    axis, inner = axis_of(upright), min(TURN, full_lock_inner)
    try:
        turn = outer_turn(upright, linkage, upright.tie_rod_end)(turn_at(inner, axis, upright.spin))
    except CannotReach:
        raise OutsideRange(
            "the linkage locks before the wheels are turned far enough to compare them",
            change="Put right tie-rod end ahead of wheel centre and tie-rod end inboard of hub face, or the inner pivot.",
        ) from None
    return ackermann(inner, -steer_at(-turn, axis, upright.spin), kingpin_track / wheelbase)


@value(
    "turning",
    formula="angle of the arm from straight fore and aft, seen from above, plus where it aims rearward",
    source=sources.GEOMETRY,
)
def steering_arm_lean(
    steered_upright: UprightPoints | None, tie_rod_ahead: Mm | None, tie_rod_inboard: Mm | None
) -> Rad:
    """How the steering arm leans, rad: plus inboard of the axis behind the axle and outboard of it ahead; minus reversed.

    Arm 144 behind and 42 inboard: atan(42 / 144).

    >>> from math import degrees
    >>> round(degrees(steering_arm_lean(trapezium().upright, -144.0, 46.0)), 4)
    16.2602
    """
    if tie_rod_ahead is None and tie_rod_inboard is None:
        fields = ("steering.tie_rod_ahead", "steering.tie_rod_inboard")
        raise NotJudged("the tie rod's outer end is not entered under steering, so its arm was not judged", *fields)
    if steered_upright is None:
        raise Waits("steered_upright")
    needs_an_arm(steered_upright)
    arm = arm_of(steered_upright)
    return -arm.side * arm.inward


@value(
    "turning",
    formula="how far behind the wheel centres the line through steering axis and tie-rod end, at that joint's height, meets "
    "the centre line, by the wheelbase",
    source=sources.GEOMETRY,
)
def arm_aim(steered_front: FrontEnd, wheelbase: Mm) -> Ratio:
    """Where the steering arms aim: 1 at the rear axle, less before it; negative ahead of the front axle.

    Arm 144 behind and 42 inboard, axis 700 from the centre line: 2400 behind, of 2600.

    >>> round(arm_aim(trapezium(), 2600.0), 4)
    0.9231
    """
    assert steered_front.linkage is not None
    try:
        return -aim(arm_of(steered_front.upright), steered_front.linkage.centre_line) / wheelbase
    except ZeroDivisionError:
        raise DoesNotApply("the steering arm runs straight fore and aft and aims at no place") from None


@value(
    "turning",
    formula="arm of the same length, height and side whose root mean square error over the lock is least; tie rod's "
    "length follows, its inner end stays",
    source=sources.DERIVED.saying("scan of the arm's inward angle, then golden section"),
    heavy=True,
)
def best_arm(steered_front: FrontEnd, lock_sweep: Sweep, kingpin_track: Mm, wheelbase: Mm) -> BestArm:
    """The tie-rod end that brings the outer wheel nearest to its ideal angle, over the lock there is now.

    >>> from math import degrees
    >>> round(degrees(best_arm(trapezium(), through_lock(trapezium()), 1400.0, 2600.0).inward), 1)
    21.7
    """
    assert steered_front.linkage is not None
    straight, full = (wheels.inner.turn for wheels in (both_wheels(lock_sweep)[0], both_wheels(lock_sweep)[-1]))
    turns = [straight + (full - straight) * place / (PLACES - 1) for place in range(1, PLACES)]
    try:
        return search_best_arm(steered_front.upright, steered_front.linkage, turns, kingpin_track / wheelbase)
    except CannotReach:
        raise NotJudged("no arm of this length, near straight fore and aft, follows through the lock") from None


@value("turning", formula="from the best arm", source=sources.GEOMETRY)
def best_tie_rod_ahead(best_arm: BestArm) -> Mm:
    """Tie-rod end of the best arm ahead of the wheel centre, mm; minus behind.

    >>> best_tie_rod_ahead(BestArm((-139.1, -56.2, 300.0), 0.384, 0.003, 0.006))
    -139.1
    """
    return best_arm.end[0]


@value("turning", formula="hub face offset - the best arm's tie-rod end from the tyre plane", source=sources.GEOMETRY)
def best_tie_rod_inboard(best_arm: BestArm, hub_face_offset: Mm) -> Mm:
    """Tie-rod end of the best arm inboard of the hub face, mm.

    >>> best_tie_rod_inboard(BestArm((-139.1, -56.0, 300.0), 0.384, 0.003, 0.006), 4.0)
    60.0
    """
    return hub_face_offset - best_arm.end[1]


@value("turning", formula="from the best arm", source=sources.GEOMETRY)
def best_arm_angle(best_arm: BestArm) -> Rad:
    """Angle of the best arm from straight fore and aft, rad, its end inboard of the axis positive.

    >>> best_arm_angle(BestArm((-139.1, -56.2, 300.0), 0.384, 0.003, 0.006))
    0.384
    """
    return best_arm.inward


@value(
    "turning", formula="root mean square of outer - ideal outer angle over the lock, with the best arm", source=EXACT
)
def best_ackermann_error(best_arm: BestArm) -> Rad:
    """What error even the best arm leaves, rad, root mean square over the lock.

    >>> best_ackermann_error(BestArm((-139.1, -56.2, 300.0), 0.384, 0.003, 0.006))
    0.003
    """
    return best_arm.error


@value("turning", formula="outer - ideal outer angle with the best arm, largest over the lock", source=EXACT)
def best_ackermann_largest(best_arm: BestArm) -> Rad:
    """Largest error even the best arm leaves over the lock, rad; positive where the outer wheel turns too far.

    >>> best_ackermann_largest(BestArm((-139.1, -56.2, 300.0), 0.384, 0.003, -0.006))
    -0.006
    """
    return best_arm.largest


@value(
    "turning",
    formula="circle of the outer tyre's outer edge at full lock, about the middle of the two centres the wheels ask for "
    "on the rear axle's line; low speed, no slip, level ground",
    source=sources.GEOMETRY,
)
def turning_circle(lock_sweep: Sweep, wheelbase: Mm, track: Mm, tyre_section_width: Mm) -> Mm:
    """Turning circle, kerb to kerb, mm in diameter.

    Inner wheel at 35 deg asks for a centre 3713.2 from its axis, outer at 28.5561 for 4777.4 - 1400 = 3377.4 from there;
    middle 3545.3. The outer edge: 3545.3 + 1400 + 100 cos 28.5561 across, 2600 + 100 sin 28.5561 ahead: 5687.13 away.

    >>> round(turning_circle(through_lock(trapezium()), 2600.0, 1400.0, 200.0), 1)
    11374.3
    """
    wheels = both_wheels(lock_sweep)[-1]
    if wheels.outer.steer >= 0:
        raise OutsideRange(
            "at full lock the outer wheel does not turn into the bend",
            change="Change tie-rod end ahead of wheel centre or tie-rod end inboard of hub face, or the angle at the stop.",
        )
    return 2 * outer_edge_radius(wheels, wheelbase, -track / 2, tyre_section_width)


@value(
    "turning",
    formula="angle between tie rod and arm seen along the steering axis, from lying in a line, least over the lock; "
    "over travel and lock where the arms are known",
    source=EXACT,
)
def rod_to_arm_angle(lock_sweep: Sweep, envelope: Sweep | None) -> Rad:
    """Angle left before tie rod and arm lie in a line, where the linkage locks or folds over, rad; minus beyond that.

    Arm turned 30.23 deg from square to the rack, rod sloping 2.92 deg to it: 90 - 30.23 - 2.92.

    >>> from math import degrees
    >>> round(degrees(rod_to_arm_angle(through_lock(straight_rack()), None)), 2)
    56.85
    """
    straight = both_wheels(lock_sweep)[0].inner

    def left(pose: Pose) -> float:
        return rod_to_arm(pose, straight)

    least = lowest(lock_sweep, left)
    if envelope is None:
        return least
    hung = {placed.travel for placed in envelope.placed}
    for blocked in envelope.blocked:
        if blocked.travel in hung:  # the arms reach it, so it is the tie rod that locks
            return Worst(0.0, blocked.travel, blocked.lock)
    return min(least, lowest(envelope, left))


@value("turning", formula="travel each way - what full lock takes of it", source=EXACT)
def rack_left_at_stop(steered_front: FrontEnd, lock_sweep: Sweep, rack_travel: Mm | None, stop_angle: Rad | None) -> Mm:
    """Travel of rack or relay rod left when the stop touches, mm; nought where its own end comes first.

    >>> rack_left_at_stop(straight_rack(), through_lock(straight_rack()), 75.0, radians(40))
    0.0
    """
    if steered_front.linkage is None or steered_front.linkage.how == "one rod across":
        raise DoesNotApply("one rod across has no end of its own")
    if stop_angle is None:
        raise DoesNotApply("no angle at a stop is entered: rack or relay rod stops at its own end")
    if rack_travel is None:
        raise Waits("steering.rack_travel")
    return rack_travel - abs(steered_front.full)


@value(
    "travel",
    formula="travel each way - what the inner wheel's stop takes of it, least over the travel; minus where that is more than "
    "there is",
    source=EXACT,
)
def rack_left_in_travel(moving_front: FrontEnd, travel_reached: Sweep, rack_left_at_stop: Mm) -> Mm:
    """Travel of rack or relay rod left when the stop on upright or arm touches, mm, where least, and where that is.

    >>> rack_left_in_travel(parallel_arms(), parallel_sweep(), 0.0)
    Traceback (most recent call last):
    ...
    rules.graph.results.DoesNotApply: no stop holds the wheel's own turn
    """
    linkage = moving_front.linkage
    if linkage is None or linkage.stop_on != "wheel" or linkage.stop is None:
        raise DoesNotApply("no stop holds the wheel's own turn")
    travels = [placed.travel for placed in travel_reached.placed]
    left = [Worst(part, travel, 1.0) for travel in travels if (part := moving_front.left_at_stop(travel)) is not None]
    if not left:
        raise DoesNotApply("the links do not turn the wheel as far as its stop")
    return min(left)
