"""Whether any two parts of the corner that move against each other come too near."""

from collections.abc import Mapping
from functools import partial
from typing import Any

from rules.corner.kinds import BANDS, EachBand
from rules.corner.room import BetweenTwo, Moves, Room, room_of
from rules.corner.words import way, where
from rules.graph.declare import check
from rules.graph.results import Judgement
from rules.tables import sources

SPEAKS_OF = 12
"""Findings at most; the table of all pairs holds the rest."""
TRACED = 1
"""Findings for which the answer that moves them most is looked for: each takes the working of every answer again."""
SOURCES = sources.COMMON_PRACTICE.saying("; ".join(f"{band.words}: {band.why}" for band in BANDS))


@check(
    "room",
    step="pivots",
    title="Room between parts",
    limits=EachBand(),
    source=SOURCES,
)
def room(corner_room: Room, corner_moves: Moves) -> tuple[Judgement, ...]:
    """Every two parts of the corner that move against each other, over a full turn and all travel and lock known so far.

    One finding for each pair that is too near. Parts made to touch are left out; `buildsheet room` lists all pairs.
    """
    if not corner_room.near:
        figures = {"judged": (float(corner_room.judged), "1")}
        still = "" if corner_moves.sweep.placed else " Steering and travel are not known, so nothing was moved."
        return (Judgement("good", f"All {{judged}} pairs of parts have room.{still}", figures=figures),)
    worst_first = sorted(corner_room.near, key=lambda pair: (pair.verdict != "stop", pair.gap or 0.0))
    return tuple(_judgement(pair, number < TRACED) for number, pair in enumerate(worst_first[:SPEAKS_OF]))


def _judgement(pair: BetweenTwo, traced: bool) -> Judgement:
    one, other = (part.name for part in pair.parts)
    gap, wanted = pair.gap or 0.0, pair.band.limits.good
    words, figures = where(pair)
    figures |= {"gap": (abs(gap), "mm"), "wanted": (wanted, "mm"), "short": (wanted - gap, "mm")}
    if gap < 0:
        text = f"{_capital(one)} and {other} stand at least {{gap}} inside each other {words}."
    else:
        text = f"{_capital(one)} and {other} are {{gap}} apart {words}; {{wanted}} is wanted."
    # The way out of an overlap of pieces is not always the way for the whole part, so it is said only of a gap.
    change = (
        f"{{short}} more room is wanted: {other} {way(pair)}." if gap >= 0 else "At least {short} more room is wanted."
    )
    again = None
    if traced:
        again = partial(_again, pair=(pair.one, pair.other), at=(pair.travel, pair.lock))
    rests_on = (pair.one, pair.other) if pair.everywhere else (pair.one, pair.other, "corner_moves")
    return Judgement(pair.verdict, text, change, figures, about=f"{one} and {other}", rests_on=rests_on, again=again)


def _again(known: Mapping[str, Any], pair: tuple[str, str], at: tuple[float, float]) -> float | None:
    """The room of one pair with other answers, mm; None where it cannot be said."""
    one, other = pair
    if not {one, other, "corner_moves"} <= known.keys():
        return None
    return room_of(known, known["corner_moves"], one, other, at)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
