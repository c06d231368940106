"""Whether any two parts of the corner that move against each other come too near."""

from collections.abc import Mapping
from functools import partial
from typing import Annotated, Any

from rules.checks.wheel_end.clears import BEHIND_PLATE, BESIDE_ROTOR, CLEAR
from rules.corner.kinds import BANDS, EachBand
from rules.corner.room import BetweenTwo, Moves, Room, room_of
from rules.corner.words import inside, way, where
from rules.graph.bands import AtLeast
from rules.graph.declare import Every, check
from rules.graph.results import WORST_FIRST, Again, Judgement, Waits
from rules.measure.said import capital, in_units
from rules.tables import sources
from rules.values.wheel_end.gaps import CHECKED_GAP

SOURCES = sources.COMMON_PRACTICE.saying(in_units("; ".join(f"{band.words}: {band.why}" for band in BANDS), None))
OWN_CHECK: dict[frozenset[str], tuple[str, AtLeast | None]] = {
    frozenset(("rim", "caliper")): ("caliper_barrel_gap", CLEAR),
    frozenset(("spokes", "caliper")): ("caliper_spoke_gap", CLEAR),
    frozenset(("rim", "upper joint housing")): ("upper_pivot_barrel_gap", CLEAR),
    frozenset(("rim", "lower joint housing")): ("lower_pivot_barrel_gap", CLEAR),
    frozenset(("rotor ring", "lower joint housing")): ("lower_pivot_rotor_gap", BESIDE_ROTOR),
    frozenset(("rotor ring", "tie-rod end")): ("tie_rod_end_rotor_gap", BESIDE_ROTOR),
    frozenset(("rim", "tie-rod end")): ("tie_rod_end_wheel_gap", CLEAR),
    frozenset(("plate", "upper joint housing")): ("upper_pivot_plate_gap", BEHIND_PLATE),
    frozenset(("plate", "lower joint housing")): ("lower_pivot_plate_gap", BEHIND_PLATE),
    frozenset(("tyre", "upper arm")): ("tyre_upper_arm_gap", None),
    frozenset(("tyre", "lower arm")): ("tyre_lower_arm_gap", None),
    frozenset(("tyre", "tie rod")): ("tyre_tie_rod_gap", None),
    frozenset(("rim", "upper arm")): ("rim_upper_joint_gap", None),
    frozenset(("rim", "lower arm")): ("rim_lower_joint_gap", None),
    frozenset(("rim", "tie rod")): ("rim_tie_rod_gap", None),
}
"""Pairs that have a check of their own: the gap it judges, and its limits. It speaks for them unless the solids are worse.
No limits: its gap is that of the solids."""


@check(
    "room",
    step="pivots",
    title="Room between parts",
    limits=EachBand(),
    source=SOURCES,
)
def room(
    corner_room: Room, corner_moves: Moves, checked_gaps: Annotated[Mapping[str, float], Every(CHECKED_GAP)]
) -> tuple[Judgement, ...]:
    """Every two parts of the corner that move against each other, over a full turn and all travel and lock known so far.

    One finding for each pair that is too near. Parts made to touch are left out, and so are pairs whose own check has found
    them; `buildsheet room` lists all pairs.
    """
    near = [pair for pair in corner_room.near if not _found_already(pair, checked_gaps)]
    if not near and corner_room.absent:
        raise Waits(*corner_room.absent)
    if not near:
        figures = {"judged": (float(corner_room.judged), "1"), "own": (float(len(corner_room.near)), "1")}
        still = "" if corner_moves.sweep.placed else " Steering and travel are not known, so nothing was moved."
        own = ", but for {own} that a check of their own speaks for" if corner_room.near else ""
        return (Judgement("good", f"All {{judged}} pairs of parts have room{own}.{still}", figures=figures),)
    worst_first = sorted(near, key=lambda pair: (pair.verdict != "stop", pair.gap or 0.0))
    return tuple(map(_judgement, worst_first))


def _found_already(pair: BetweenTwo, checked_gaps: Mapping[str, float]) -> bool:
    """Whether the pair's own check says it as badly."""
    name, limits = OWN_CHECK.get(frozenset(part.name for part in pair.parts), ("", CLEAR))
    if name not in checked_gaps:
        return False
    if limits is None:
        return True
    return WORST_FIRST.index(limits.verdict(checked_gaps[name])) <= WORST_FIRST.index(pair.verdict)


def _judgement(pair: BetweenTwo) -> Judgement:
    one, other = (part.name for part in pair.parts)
    gap, wanted = pair.gap or 0.0, pair.band.limits.good
    words, figures = where(pair)
    figures |= {"gap": (abs(gap), "mm"), "wanted": (wanted, "mm", "up"), "short": (wanted - gap, "mm")}
    if gap < 0:
        text = f"{capital(one)} and {other} stand {inside(pair)}{{gap}} inside each other {words}."
    else:
        text = f"{capital(one)} and {other} are {{gap}} apart {words}; {{wanted}} is wanted."
    # The way out of an overlap of pieces is not always the shortest for the whole part: then it is not advised.
    change = (
        f"{{short}} more room is wanted: {other} {way(pair)}."
        if pair.exact
        else "At least {short} more room is wanted."
    )
    if pair.tabs:
        figures |= {"front": (pair.tabs.from_front, "mm", "down"), "rear": (pair.tabs.from_rear, "mm", "down")}
        text += " That is where one tube of the frame runs through both inner pivots, which is assumed."
        change = (
            "Hold each inner pivot in tabs of its own, with no tube between them here: up to {front} to the rear of the front "
            "pivot, and up to {rear} forward of the rear one, the shock passes between them."
        )
    if pair.assumed:
        text += " How the arm runs fore and aft is assumed, so this is a guess."
        change = ""  # there is something to measure, which is told by itself, and nothing to move
    again = None if pair.assumed else again_of(pair.one, pair.other, pair.travel, pair.lock)
    rests_on = (pair.one, pair.other) if pair.everywhere else (pair.one, pair.other, "corner_ride")
    return Judgement(pair.verdict, text, change, figures, about=f"{one} and {other}", rests_on=rests_on, again=again)


def again_of(one: str, other: str, travel: float, lock: float) -> Again:
    """From what is known to the room of two parts, by their values' names, at one travel and lock."""
    return partial(_again, pair=(one, other), at=(travel, lock))


def _again(known: Mapping[str, Any], pair: tuple[str, str], at: tuple[float, float]) -> float | None:
    """The room of one pair with other answers, mm; None where it cannot be said."""
    one, other = pair
    if not {one, other, "corner_ride"} <= known.keys():
        return None
    return room_of(known[one], known[other], known["corner_ride"], at)
