"""The room between all parts of a corner as plain data: least first, and what cannot be judged yet."""

from rules.checks.corner.room import again_of
from rules.corner.kinds import BY_DESIGN
from rules.corner.part import PART, Part
from rules.corner.room import BetweenTwo, Moves, rooms
from rules.corner.words import where
from rules.graph.results import WORST_FIRST, Reason, Verdict
from rules.judging.judge import Judged, and_list, reason
from rules.judging.moved_most import entry_that_moves_most
from rules.judging.reader import answer, name, of_role
from rules.judging.trade import trade
from rules.measure.records import dataclass
from rules.measure.said import filled, in_units

WITHIN = 60.0
"""mm; pairs further apart than this everywhere are listed as more than that."""
_MOVES = name("corner_moves")
_RIDE = name("corner_ride")


@dataclass(frozen=True, slots=True)
class RoomLine:
    """One pair. gap: mm, minus where they overlap, None where it is more than `WITHIN`. measure: fields it rests on that
    are not measured. where: in words, empty where the gap is not known. travel: mm. lock: 1 full left, -1 full right.
    values: the names of the two parts' values. exact: False where an overlap may be deeper than the gap says.
    """

    one: str
    other: str
    verdict: Verdict
    gap: float | None
    wanted: float
    least: float
    kind: str
    why: str
    where: str
    travel: float
    lock: float
    measure: tuple[str, ...]
    values: tuple[str, str]
    exact: bool


@dataclass(frozen=True, slots=True)
class RoomNotJudged:
    """A part that is not in it yet, and why: the fields to enter, or that this build has no such thing."""

    part: str
    enter: tuple[str, ...]
    why: str


@dataclass(frozen=True, slots=True)
class RoomTable:
    """Every pair, smallest gap first; parts that are not in it; pairs made to touch, in words; positions looked at.

    lacks: dotted names of the travels that were not looked at, for want of an entry.
    """

    lines: tuple[RoomLine, ...]
    absent: tuple[RoomNotJudged, ...]
    touching: tuple[str, ...]
    positions: int
    lacks: tuple[str, ...] = ()


def room_table(judged: Judged) -> RoomTable:
    """The room of every two parts of different motion groups among those that can be built from what is entered."""
    known = judged.worked.known
    there: dict[str, Part] = of_role(known, PART)
    parts = {part: there[part] for part in trade().in_role(PART) if part in there}  # in the order they are declared
    moves: Moves | None = answer(known, _MOVES)
    found = rooms(parts, moves, WITHIN) if moves else []
    lines = sorted((_line(pair, judged) for pair in found), key=lambda line: WITHIN if line.gap is None else line.gap)
    present = {part.name for part in parts.values()}
    touching = tuple(
        f"{' and '.join(touch.ones)} with {' and '.join(touch.others)}: {touch.why}"
        for touch in BY_DESIGN
        if present & set(touch.ones) and present & set(touch.others)
    )
    positions, lacks = (len(moves.sweep.placed), moves.lacks) if moves else (0, ())
    return RoomTable(tuple(lines), absent_parts(judged), touching, positions, lacks)


def absent_parts(judged: Judged) -> tuple[RoomNotJudged, ...]:
    """The parts that are not in the table, each with why."""
    parts = of_role(judged.worked.known, PART)
    return tuple(_absent(part, judged) for part in trade().in_role(PART) if part not in parts)


def entry_behind(line: RoomLine, judged: Judged) -> str:
    """The entry to go to for a pair: one to measure, else the answer that moves its room most, else the first it rests on."""
    if line.measure:
        return line.measure[0]
    graph, (one, other) = trade(), line.values
    again = again_of(one, other, line.travel, line.lock)
    found = entry_that_moves_most(graph, (one, other, _RIDE.origin), again, judged.worked)
    return found[0] if found else graph.fields_of(one)[0]


def _line(pair: BetweenTwo, judged: Judged) -> RoomLine:
    estimated = judged.worked.estimated
    rests_on = (pair.one, pair.other) if pair.everywhere else (pair.one, pair.other, _RIDE.origin)
    measure = tuple(dict.fromkeys(field for each in rests_on for field in estimated.get(each, ())))
    words, figures = where(pair) if pair.gap is not None else ("", {})
    verdict: Verdict = max((pair.verdict, "watch" if measure else "good"), key=lambda one: -WORST_FIRST.index(one))
    band, (one, other) = pair.band, pair.parts
    limits, why = band.limits, in_units(band.why, judged.shown_in)
    return RoomLine(
        one.name, other.name, verdict, pair.gap, limits.good, limits.watch or 0.0, band.words, why,
        filled(words, figures, judged.shown_in), pair.travel, pair.lock, measure, (pair.one, pair.other), pair.exact,
    )  # fmt: skip


def _absent(part: str, judged: Judged) -> RoomNotJudged:
    worked = judged.worked
    words = part.removesuffix("_part").replace("_", " ")
    if fields := worked.waits.get(part):
        return RoomNotJudged(words, fields, f"enter {and_list(fields)}")
    why = _why_not(part, judged)
    return RoomNotJudged(words, (), reason(why, judged.shown_in) if why else "not known")


def _why_not(wanted: str, judged: Judged) -> Reason | None:
    """Why a value is not there: its own reason, or that of what it is worked out from."""
    worked = judged.worked
    for reasons in (worked.not_here, worked.broken, worked.not_judged):
        if why := reasons.get(wanted):
            return why
    inputs = trade().values[wanted].inputs if wanted in trade().values else ()
    return next((why for given in inputs if (why := _why_not(given.origin, judged))), None)
