"""Where the moving front end is and what that does to its wheels, in a few lines that keep their places."""

from rules.drawn.moving.gaps import NearTouch
from rules.drawn.moving.scene import Moving, TravelAndLock
from rules.judging.reader import Known, answer, name
from rules.judging.return_at_lock import return_moment_at
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.motion.place_words import height, in_units, turned
from rules.motion.place_words import place as place_of
from rules.motion.points import Pose
from rules.motion.sweep import Worst

GAPS = {
    name("tyre_upper_arm_gap"): "tyre to upper arm",
    name("tyre_lower_arm_gap"): "tyre to lower arm",
    name("tyre_tie_rod_gap"): "tyre to tie rod",
    name("rim_upper_joint_gap"): "rim to upper joint",
    name("rim_lower_joint_gap"): "rim to lower joint",
    name("rim_tie_rod_gap"): "rim to tie rod",
}
"""The values that hold the smallest gap over all travel and lock, and what each is between."""
NARROW = 70
MARGIN = 5
"""Columns of a line that are not its words: one free on each side, `; ` between and the full stop."""


def place_words(place: TravelAndLock, front: Moving, units: Units) -> str:
    """Travel and lock, as far as the front end has either."""
    steered = in_units(turned(place.lock), units)
    if place.lock:
        steered += " left" if place.lock > 0 else " right"
    if not front.steers:
        steered = "wheels held straight"
    return f"{in_units(height(place.travel), units)}, {steered}" if front.travels else steered


def toe_words(place: TravelAndLock, left: Pose, right: Pose, units: Units) -> str:
    """Toe of one wheel straight ahead; in a turn, how much further the inner wheel is turned than the outer."""
    if place.lock:
        inner, outer = (left.steer, -right.steer) if place.lock > 0 else (right.steer, -left.steer)
        apart = inner - outer
        return f"toe-{'out' if apart >= 0 else 'in'} of the turn {show(abs(apart), 'rad', units)}"
    toe = show(abs(left.steer), "rad", units)
    side = "" if toe.startswith("0 ") else " out" if left.steer > 0 else " in"
    return f"toe of each wheel {toe}{side}"


def wheel_line(wheel: str, pose: Pose, turned: float | None, units: Units, width: int) -> str:
    """One wheel's angle, camber and ground offset in columns. turned: rad towards the bend; None where it is straight."""
    word, offset = ("", "offset") if width < NARROW else ("turned ", "ground offset")
    steered = "" if turned is None else f"{word}{show(turned, 'rad', units):<11}"
    return (
        f"{wheel:<12} {steered}camber {show(pose.camber, 'rad', units):<10} "
        f"{offset} {show(pose.ground_offset, 'mm', units)}"
    )


def state_lines(front: Moving, place: TravelAndLock, units: Units, width: int, returning: str = "") -> list[str]:
    """Place and toe, then a line for each wheel. returning: what else the first line says where there is room."""
    left, right = front.corners(place)
    first = place_words(place, front, units)
    first = first[:1].upper() + first[1:]
    if front.steers:
        first += f"; {toe_words(place, left, right, units)}"
    if returning and len(first) + len(returning) + MARGIN <= width:
        first += f"; {returning}"
    if not place.lock:
        return [first + ".", wheel_line("both wheels", left, None, units, width), ""]
    bend = 1 if place.lock > 0 else -1
    names = ("left, inner", "right, outer") if bend > 0 else ("left, outer", "right, inner")
    turned = (bend * left.steer, -bend * right.steer)
    wheels = zip(names, (left, right), turned, strict=True)
    return [first + ".", *(wheel_line(wheel, pose, angle, units, width) for wheel, pose, angle in wheels)]


def return_words(known: Known, place: TravelAndLock, units: Units) -> str:
    """With what the weight returns the wheels from the present lock, at ride height; empty straight ahead or unknown."""
    moment = return_moment_at(known, lock=abs(place.lock)) if place.lock else None
    if moment is None:
        return ""
    what = "returns the wheels" if moment >= 0 else "turns them further"
    where = " at ride" if place.travel else ""
    return f"weight {what} with {show(abs(moment), 'N m', units)}{where}"


ALIKE = 0.01
"""mm; gaps of both wheels that differ by less are one, whatever rounding makes of the last digit."""


def gap_line(near: tuple[NearTouch | None, NearTouch | None], units: Units, both: bool | None) -> str:
    """The smallest gap at the present place, on either wheel; empty where none is known.

    both: whether both wheels are in the picture, or the left one; None where there is no picture.
    """
    left, right = near
    if left is None or right is None:
        return ""
    touch = min(left, right, key=lambda one: one.gap)
    alike = left.between == right.between and abs(left.gap - right.gap) < ALIKE
    wheel = "both wheels" if alike else "left wheel" if touch is left else "right wheel"
    seen = "" if both is None else ": at the X" if both or wheel != "right wheel" else ": F4 shows it"
    return f"Wheel gap now {show(touch.gap, 'mm', units)}, {touch.between}, {wheel}{seen}."


def worst_gap(known: Known) -> tuple[Worst, str] | None:
    """The smallest gap over all travel and lock, which knows where it is, and what it is between; None while not known."""
    gaps = [(gap, between) for one, between in GAPS.items() if isinstance(gap := answer(known, one), Worst)]
    return min(gaps, key=lambda pair: pair[0], default=None)


def worst_line(known: Known, units: Units) -> str:
    """The smallest gap of tyre and rim over all travel and lock, to what, and where; empty where none is worked out."""
    found = worst_gap(known)
    if found is None:
        return ""
    worst, between = found
    there = in_units(place_of(worst.travel, worst.lock) if worst.lock else height(worst.travel), units)
    parts, at = between.replace(" to ", "/"), there.removesuffix(" wheel")  # or it would not fit one line of 80 columns
    return f"Smallest wheel gap {show(worst, 'mm', units)}, {parts}: {at}"
