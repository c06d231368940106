"""What a builder can still choose on a sheet, and in which steps: marks on a tape, degrees on a gauge, sizes on the shelf.

A lever moves one entry, or some that only make sense together, such as both inner pivots of an arm.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Mapping
from math import atan2, ceil, cos, floor, hypot, radians, sin
from typing import Any

from rules.graph.asking import AskedField
from rules.graph.worked import Worked
from rules.judging.reader import Name, answer, name, reads
from rules.judging.trade import trade
from rules.measure.display import show
from rules.measure.quantity import INCH, KINDS, Units
from rules.measure.records import dataclass
from rules.measure.units import Mm, Rad
from rules.motion.points import UprightPoints
from rules.sheet.choosable import (
    CHOICES,
    EMPTY_IS_NOUGHT,
    KEEPS_HALF,
    LARGER,
    NEVER_LESS,
    NEVER_MORE,
    NO_THICKER,
    OFFSETS,
    SEATS,
    TOGETHER,
    choosable,
)
from rules.tables.shelf import SHELF, SOLD_IN_MM

Answers = Mapping[str, Any]
"""Other answers to fields, by dotted name, in inside units: numbers, or words of a choice."""

_GRID: dict[str, tuple[float, float]] = {"mm": (INCH / 16, 1.0), "rad": (radians(0.5), radians(0.5)), "MPa": (0.5, 0.5)}
_FINE: dict[str, tuple[float, float]] = {"mm": (INCH / 64, 0.5), "rad": (radians(0.5), radians(0.5))}
"""What can be marked, in the inside unit: inch sheets, metric sheets. Fine: where few of the others fit in what is usual."""
_FEW = 16
_BOLD: dict[str, tuple[int, int]] = {"mm": (4, 5), "rad": (2, 2), "MPa": (1, 1)}
"""Steps of a change that is worth telling: 1/4 in or 5 mm, 1 deg."""

_ARM_END = name("steering.tie_rod_ahead").origin, name("steering.tie_rod_inboard").origin
_INNER = name("steering.inner_from_centre").origin, name("steering.inner_height").origin
_RELAY_ARM = name("steering.relay_arm_length").origin
_UPPER_SET, _LOWER_SET = name("joint_angles.upper_set").origin, name("joint_angles.lower_set").origin


@dataclass(frozen=True, slots=True)
class Lever:
    """Entries that move together. at: from steps, minus the other way, to the answers; None past the end.

    bold: steps of a change that is worth telling.
    """

    fields: tuple[str, ...]
    at: Callable[[int], Answers | None]
    bold: int = 1


def as_typed(name: str, answer: object, units: Units) -> str:
    """An answer as it would be typed, with its unit.

    >>> as_typed("pivots.spacing", 238.125, "inch"), as_typed("joint_angles.upper_bolt", "fore and aft", "inch")
    ('9 3/8 in', 'fore and aft')
    >>> as_typed("wheel.offset", 60.0, "inch"), as_typed("wheel.offset", 31.75, "inch")  # sold by the millimetre
    ('60 mm', '1 1/4 in')
    """
    asked = trade().fields[name]
    if not isinstance(answer, float):
        return str(answer)
    if name in SOLD_IN_MM and answer == round(answer):
        units = "metric"
    return show(answer, KINDS[asked.kind].unit, "inch" if asked.whole_inches else units)


def levers(worked: Worked, fields: Iterable[str], units: Units) -> list[Lever]:
    """Every lever over these fields that the sheet has, in their order."""
    wanted = dict.fromkeys(each for each in fields if choosable(each))
    made: list[Lever] = []
    for pair in TOGETHER:
        if set(pair) & wanted.keys() and all(answer(worked.known, Name(name)) is not None for name in pair):
            made.append(_coupled(worked, *pair, units))
            if now_of(worked, pair[0]) != now_of(worked, pair[1]):  # towards one height, or one line along the car
                made.append(_coupled(worked, *pair, units, way=-1))
    for one, other, marks in LARGER:
        if {one, other} & wanted.keys() and all(answer(worked.known, Name(name)) is not None for name in (one, other)):
            made.append(_coupled(worked, one, other, units, marks))
    if set(SEATS) <= wanted.keys() and all(isinstance(now_of(worked, name), float) for name in SEATS):
        made.append(_coupled(worked, *SEATS, units, way=-1))
        wanted = {name: None for name in wanted if name not in SEATS}
    singles = [lever for name in wanted if (lever := _single(worked, name, units)) is not None]
    if wanted.keys() >= set(_ARM_END) and (made_of_arm := _arm(worked.known, units=units)):
        made += made_of_arm
    return singles + made


def now_of(worked: Worked, name: str) -> object:
    """The answer that stands; nought where an empty entry counts as that; None where there is none."""
    now: object = answer(worked.known, Name(name))
    return 0.0 if now is None and name in EMPTY_IS_NOUGHT else now


def _single(worked: Worked, name: str, units: Units) -> Lever | None:
    """One entry by itself; None where nothing that can be moved is entered."""
    lever = _either_way(worked, name, units)
    if lever is None or name not in NEVER_LESS | NEVER_MORE:
        return lever
    at, way = lever.at, 1 if name in NEVER_LESS else -1
    return Lever(lever.fields, lambda n: at(n) if n * way > 0 else None, lever.bold)


def into_usual(worked: Worked, usual: Mapping[str, tuple[float, float]], units: Units) -> Answers | None:
    """These entries moved to the nearest mark or size on the shelf that is usual, all in one step. None where one has none.

    usual: the two ends, in inside units, by dotted name.
    """
    answers: dict[str, Any] = {}
    for field, (low, high) in usual.items():
        lever, now = _single(worked, field, units), now_of(worked, field)
        if lever is None or not isinstance(now, float):
            return None
        way = 1 if now < low else -1
        n, place = way, lever.at(way)
        while place is not None and not low - 1e-9 <= place[field] <= high + 1e-9:
            n += way
            place = lever.at(n)
        if place is None:
            return None
        answers |= place
    return answers


def _either_way(worked: Worked, name: str, units: Units) -> Lever | None:
    asked, now = trade().fields[name], now_of(worked, name)
    if name in CHOICES:
        others = [choice for choice in asked.choices if choice != now]
        return Lever((name,), lambda n: {name: others[n - 1]} if now and 1 <= n <= len(others) else None)
    if not isinstance(now, float):
        return None
    if name in SHELF:
        return _another_wheel(worked, name, now, units) or _from_shelf(name, now, SHELF[name][units])
    step, low, high = grid(asked, units), *_bounds(worked, name, now)
    if name in KEEPS_HALF:
        low = max(low, now / 2)

    def at(n: int) -> Answers | None:
        wanted = _stepped(now, n, step)
        return {name: wanted} if low - 1e-9 <= wanted <= high + 1e-9 else None

    return Lever((name,), at, _bold(asked, step, units))


def _coupled(worked: Worked, one: str, other: str, units: Units, marks: int = 1, way: int = 1) -> Lever:
    """Two entries moved together. marks: of the first for one of the second; way: -1 where the second goes the other way.

    Both are moved by as much as a mark of the first, so that what is between them stays as it is.
    """
    first, step = _single(worked, one, units), grid(trade().fields[one], units)
    now = now_of(worked, other)
    assert first is not None and isinstance(now, float)
    low, high = _bounds(worked, other, now)

    def at(n: int) -> Answers | None:
        moved = first.at(n * marks)
        place = _stepped(now, n * way, step)
        return {**moved, other: place} if moved is not None and low <= place <= high + 1e-9 else None

    return Lever((one, other), at, max(1, first.bold // marks))


@reads
def _arm(
    upright_points: UprightPoints,
    tie_rod_end_height: Mm,
    tie_rod_ahead: Mm,
    tie_rod_inboard: Mm,
    hub_face_offset: Mm,
    *,
    units: Units,
) -> list[Lever] | None:
    """The steering arm made longer as it leans, and leant otherwise at its length. Its end keeps its height."""
    foot = upright_points.on_axis(tie_rod_end_height)
    ahead, across = tie_rod_ahead - foot[0], hub_face_offset - tie_rod_inboard - foot[1]
    length, lean = hypot(ahead, across), atan2(across, ahead)
    if not length:
        return None
    step = _GRID["mm"][units == "metric"]

    def end(long: float, leant: float) -> Answers | None:
        place = foot[0] + long * cos(leant), hub_face_offset - foot[1] - long * sin(leant)
        rounded = {name: round(part / step) * step for name, part in zip(_ARM_END, place, strict=True)}
        asked = trade().fields
        inside = all(_within(asked[name], part) for name, part in rounded.items())
        return rounded if inside and long > 0 else None

    return [
        Lever(_ARM_END, lambda n: end(length + n * step, lean), _BOLD["mm"][units == "metric"]),
        Lever(_ARM_END, lambda n: end(length, lean + n * radians(1.0)), 2),
    ]


def _within(asked: AskedField, number: float) -> bool:
    return asked.least is not None and asked.most is not None and asked.least <= number <= asked.most


@reads
def best_inner_pivot(best_inner_from_centre: Mm, best_inner_height: Mm) -> Answers | None:
    """Where the tie rod's inner pivot would make bump steer least."""
    return dict(zip(_INNER, (best_inner_from_centre, best_inner_height), strict=True))


@reads
def best_arm_end(best_tie_rod_ahead: Mm, best_tie_rod_inboard: Mm) -> Answers | None:
    """Where the end of an arm this long would bring the outer wheel nearest to its ideal angle."""
    return dict(zip(_ARM_END, (best_tie_rod_ahead, best_tie_rod_inboard), strict=True))


@reads
def best_relay_arm(tie_rod_end_ahead: Mm) -> Answers | None:
    """Arms of a relay rod as long as the steering arms, which point the same way."""
    return {_RELAY_ARM: tie_rod_end_ahead}


@reads
def best_upper_set(upper_best_set: Rad) -> Answers | None:
    """How the upper joint's housing is best clocked."""
    return {_UPPER_SET: upper_best_set}


@reads
def best_lower_set(lower_best_set: Rad) -> Answers | None:
    """How the lower joint's housing is best clocked."""
    return {_LOWER_SET: lower_best_set}


_BEST = (best_inner_pivot, best_arm_end, best_relay_arm, best_upper_set, best_lower_set)


def best_places(worked: Worked, fields: Iterable[str], units: Units) -> list[Answers]:
    """Places the sheet's own values find best, on the nearest marks around each; those whose entries are all there."""
    wanted, found = set(fields), []
    for best in _BEST:
        place = best(worked.known)
        if place and place.keys() <= wanted and all(now_of(worked, name) is not None for name in place):
            found += _on_marks(place, units)
    return found


def _on_marks(place: Mapping[str, float], units: Units) -> list[Answers]:
    made: list[dict[str, float]] = [{}]
    for field, number in place.items():
        asked = trade().fields[field]
        step = grid(asked, units)
        marks = [mark * step for mark in (floor(number / step), ceil(number / step))]
        made = [{**one, field: mark} for one in made for mark in marks if _within(asked, mark)]
    return list(made)


def next_marks(place: Answers, units: Units) -> list[Answers]:
    """The places one mark to either side, of each entry by itself."""
    marks = [
        (name, number + way * grid(trade().fields[name], units)) for name, number in place.items() for way in (1, -1)
    ]
    return [{**place, name: number} for name, number in marks if _within(trade().fields[name], number)]


def _another_wheel(worked: Worked, name: str, now: float, units: Units) -> Lever | None:
    """Another offset is another backspacing as well, where both are entered."""
    other = next((one for one in OFFSETS if name in OFFSETS and one != name), None)
    standing = now_of(worked, other) if other else None
    if other is None or not isinstance(standing, float):
        return None
    plain = _from_shelf(name, now, SHELF[name][units])

    def at(n: int) -> Answers | None:
        found = plain.at(n)
        if found is None or not _within(trade().fields[other], moved := standing + found[name] - now):
            return None
        return {**found, other: moved}

    return Lever((name, other), at)


def _from_shelf(name: str, now: float, sold: tuple[float, ...]) -> Lever:
    sizes = [size for size in sold if _within(trade().fields[name], size)]
    below, above = bisect_left(sizes, now - 0.1), bisect_right(sizes, now + 0.1)

    def at(n: int) -> Answers | None:
        place = above + n - 1 if n > 0 else below + n
        return {name: sizes[place]} if n and 0 <= place < len(sizes) else None

    return Lever((name,), at)


def grid(asked: AskedField, units: Units) -> float:
    """The step that can be marked, in the field's inside unit; a fine one only of what can be read that finely."""
    unit = KINDS[asked.kind].unit
    step = _GRID[unit][units == "metric"]
    fine = _FINE[unit][units == "metric"] if unit in _FINE else step
    few = asked.usual is not None and (asked.usual[1] - asked.usual[0]) < _FEW * step
    return fine if few and asked.reading_error < fine else step


def _bold(asked: AskedField, step: float, units: Units) -> int:
    """Steps worth telling; four of the fine ones."""
    unit = KINDS[asked.kind].unit
    return 4 if step < _GRID[unit][units == "metric"] else _BOLD[unit][units == "metric"]


def _bounds(worked: Worked, name: str, now: float) -> tuple[float, float]:
    """What can be typed at all. What is unusual is asked about, and shows as what gets worse."""
    asked = trade().fields[name]
    assert asked.least is not None and asked.most is not None
    parts = [part for other in NO_THICKER.get(name, ()) if isinstance(part := now_of(worked, other), float)]
    return min(asked.least, now), max(min((asked.most, *parts)), now)


def _stepped(now: float, n: int, step: float) -> float:
    """The nth mark beyond what stands now."""
    places = now / step
    if n > 0:
        return (floor(places + 1e-6) + n) * step
    return (ceil(places - 1e-6) + n) * step if n < 0 else now
