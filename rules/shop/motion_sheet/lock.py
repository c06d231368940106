"""What both wheels do from straight ahead to full lock; and castor as turn plates read it."""

from collections.abc import Callable, Iterator
from math import degrees, floor, radians

from rules.judging.judge import Judged, shown
from rules.judging.reader import Name, answer, name, reads
from rules.judging.return_at_lock import steering_ratio_at
from rules.judging.trade import trade
from rules.measure.display import show
from rules.measure.quantity import INCH, Units
from rules.measure.said import capital
from rules.measure.units import Mm, Rad
from rules.motion.front_end import FrontEnd
from rules.motion.kinds import FullLock
from rules.motion.points import CannotReach
from rules.motion.search import last_that_holds
from rules.motion.turning import Reach, ideal_outer
from rules.sheet.steering import StoppedBy
from rules.shop.motion_sheet.section import SheetTable, estimates, length_of, reason, signed, unit_of

_STEERED, _KINGPIN_TRACK = name("steered_front"), name("kingpin_track")
_ACKERMANN, _TURNING_CIRCLE = name("ackermann_share"), name("turning_circle")
_BY_CONTACTS = name("ideal_outer_by_contacts")
_CASTOR, _CASTOR_BY_TURNING = name("pivots.castor"), name("castor_by_turning")

NEITHER_WAY = "Left out: the tie rod turns the wheel neither way."
_TURN_STEP = 5
"""deg of the inner wheel from one row to the next."""


@reads
def lock_section(
    lock_reached: Reach, steered_front: FrontEnd, kingpin_track: Mm, job_wheelbase: Mm, *, judged: Judged
) -> SheetTable | None:
    """Outer against inner wheel at every step of the lock, as far as both wheels follow."""
    front, units = steered_front, judged.shown_in
    assert front.linkage is not None
    if not lock_reached.share:
        return SheetTable("", missing=NEITHER_WAY)
    unit = unit_of(units)
    ratio = kingpin_track / job_wheelbase
    slides = front.linkage.how != "one rod across"
    geared = steering_ratio_at(judged.worked.known, lock=0.0) is not None
    columns = (
        "Inner wheel (deg)", f"{front.linkage.how.capitalize()} ({unit})" if slides else "Axis turn (deg)",
        *(("Steering ratio",) if geared else ()), "Outer wheel (deg)", "Ideal outer (deg)", "Outer less ideal (deg)",
        "Right wheel, left turn", "Left wheel, right turn",
    )  # fmt: skip
    notes = ["Wheels on turn plates, car at ride height. Turn the inner wheel to the first column; read the outer one."]
    if slides:
        way = "left" if front.full > 0 else "right"
        notes[0] += f" For a left turn the {front.linkage.how} moves to the {way}."
    notes += ends_before(lock_reached)
    notes.append(
        "Ideal: at walking pace the axes of both front wheels meet on the rear axle's. Cot outer less cot inner is then "
        f"{show(kingpin_track, 'mm', units)} between the steering axes at the ground / "
        f"{show(job_wheelbase, 'mm', units)} wheelbase."
    )
    if (by_contacts := answer(judged.worked.known, _BY_CONTACTS)) is not None:
        notes.append(
            f"By the tyres' true contacts the ideal at full lock is {signed(degrees(by_contacts), 1)} deg from that."
        )
    if through_travel := _through_travel(judged.worked.known):
        notes.append(through_travel)
    notes.append(_defined(judged, "Ackermann", _ACKERMANN, lambda share: f"{round(100 * share)} %"))
    notes.append(_defined(judged, "Turning circle", _TURNING_CIRCLE, lambda circle: _long(circle, units)))
    notes += estimates(judged, _STEERED, _KINGPIN_TRACK, _TURNING_CIRCLE)
    rows = []
    for lock, inner, words in locks(front, lock_reached):
        outer, ideal = -front.at(0.0, -lock).steer, ideal_outer(inner, ratio)
        moved = length_of(abs(lock * front.full), units, 1) if slides else f"{degrees(lock * front.full):.1f}"
        rows.append(
            (words, moved.lstrip("+"), *([f"{steering_ratio_at(judged.worked.known, lock=lock):.1f}"] if geared else []),
             *(f"{degrees(one):.1f}" for one in (outer, ideal)),
             signed(degrees(outer - ideal), 1), "", "")
        )  # fmt: skip
    return SheetTable("", tuple(notes), columns, tuple(rows))


@reads
def _through_travel(
    moving_front: FrontEnd, droop_travel: Mm, bump_travel: Mm, stopped_by: StoppedBy | None
) -> str | None:
    """What holds the lock at the ends of the travel, and how far the inner wheel turns; nothing where it does not get there."""
    try:
        (droop_held, droop), (bump_held, bump) = (
            (
                _holds(moving_front.held_by(travel), moving_front, stopped_by),
                degrees(moving_front.at(travel, 1.0).steer),
            )
            for travel in (-droop_travel, bump_travel)
        )
    except CannotReach:
        return None
    if droop_held == bump_held:
        turns = f"the inner wheel turns {droop:.1f} deg at full droop, {bump:.1f} deg at full bump, seen from above"
        return f"{capital(droop_held)}: {turns}."
    return (
        f"At full droop {droop_held}: the inner wheel turns {droop:.1f} deg, seen from above. At full bump {bump_held}: "
        f"{bump:.1f} deg."
    )


def _holds(held_by: FullLock, front: FrontEnd, stopped_by: StoppedBy | None) -> str:
    """What holds full lock, in words."""
    assert front.linkage is not None
    if held_by == "end":
        return f"the {front.linkage.how}'s own end holds the lock"
    if held_by == "links":
        return "the links go no further, and nothing else holds the lock"
    if held_by == "slide":
        return f"the stop on the {stopped_by} holds what moves the tie rod"
    if stopped_by == "upright or arm":
        return "the stop on upright or arm holds the inner wheel's turn about its axis"
    said = "says that nothing stops the lock" if stopped_by == "nothing" else "does not say what stops the lock"
    return f"the sheet {said}, and the stop's angle counts as the inner wheel's turn about its axis"


def _defined(judged: Judged, words: str, wanted: Name, figure: Callable[[float], str]) -> str:
    """A value with its definition, or why it is not known."""
    found = answer(judged.worked.known, wanted)
    if found is None:
        return f"{words} not worked out: {reason(judged, wanted.origin)}."
    return f"{words} {figure(found)}: {trade().values[wanted.origin].note.formula}."


def _long(length: float, units: Units) -> str:
    """A long length in metres or feet.

    >>> _long(13063.0, "metric"), _long(13063.0, "inch")
    ('13.1 m', '42.9 ft')
    """
    return f"{length / (12 * INCH):.1f} ft" if units == "inch" else f"{length / 1000:.1f} m"


def locks(front: FrontEnd, reached: Reach) -> Iterator[tuple[float, float, str]]:
    """Lock, angle of the inner wheel in rad and in words: every so many degrees, then full lock or where the linkage locks."""
    end = degrees(reached.inner)
    for angle in range(_TURN_STEP, floor(end) + 1, _TURN_STEP):
        if angle < end - 0.5:
            yield _lock_at(front, radians(angle), reached.lock), radians(angle), str(angle)
    yield reached.lock, reached.inner, f"{end:.1f} {'FULL' if reached.share == 1.0 else 'LOCKS'}"


def _lock_at(front: FrontEnd, angle: float, end: float) -> float:
    """The lock at which the inner wheel has turned so far, between nought and the end."""
    return last_that_holds(lambda lock: front.at(0.0, lock).steer < angle, 0.0, end)


def ends_before(reached: Reach) -> Iterator[str]:
    """Where a table over the lock ends, if that is before full lock."""
    if reached.share < 1.0:
        inner = f"{degrees(reached.inner):.1f} deg"
        yield (
            f"The linkage LOCKS with the inner wheel at {inner}, before its full lock: a stop. The table ends there, and "
            "nothing beyond it can be set up."
        )


# Castor on turn plates


@reads
def castor_section(
    castor_by_turning: Rad, camber_turned_20_out: Rad, camber_turned_20_in: Rad, *, judged: Judged
) -> SheetTable | None:
    """Castor as camber read on turn plates gives it."""
    out, inward, by_turning = degrees(camber_turned_20_out), degrees(camber_turned_20_in), degrees(castor_by_turning)
    columns = ("Wheel", "Camber turned 20 deg out", "Camber turned 20 deg in", "Out less in", "x 1.46 = castor")
    notes = (
        "Brakes held. Turn the wheel's front 20 deg out on its plate and read camber, then 20 deg in; plus is top outboard. "
        f"1.46 is 1 / (2 sin 20 deg). On this sheet's wheels it reads {by_turning:.1f} deg where castor is "
        f"{shown(_CASTOR, judged)}.",
        *estimates(judged, _CASTOR_BY_TURNING),
    )
    sheet = ("This sheet", *(signed(angle, 2) for angle in (out, inward, out - inward)), signed(by_turning, 1))
    return SheetTable("", notes, columns, (sheet, ("Left", "", "", "", ""), ("Right", "", "", "", "")))
