"""Places round the wheel's axis, as they are read off a hub with a clock in mind: `12 at 58 mm; 2:30 at 58 mm; 5; 7; 9:30`."""

import math
import re
from itertools import combinations

from rules.measure.display import show
from rules.measure.patterns import Pattern
from rules.measure.quantity import EntryError, Units, as_typed, parse, plain_number_text
from rules.measure.records import dataclass

LEAST_RADIUS, MOST_RADIUS = 20.0, 200.0
"""mm from the wheel's axis. Sane bounds, common practice, no source: half of those of a circle of mounting bolts."""
FEWEST, MOST = 2, 12
SAME_PLACE = math.radians(3)
"""Bolts no farther apart than this, seen from the axis, stand in one place. Six minutes of the clock."""
_PLACE = Pattern(
    r"(?:(?P<hour>1[0-2]|[1-9])(?::(?P<minute>[0-5]\d))?(?:\s*o'?clock)?|(?P<angle>[+-]?\d{1,3}(?:\.\d{1,2})?)\s*(?:deg|°))"
    r"(?:\s*(?:at|@)\s*(?P<radius>.+))?",
    re.ASCII | re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class ClockPlace:
    """One place. turn: rad from straight up, plus ahead. radius: mm from the wheel's axis, None where it is the circle's."""

    turn: float
    radius: float | None


@dataclass(frozen=True, slots=True)
class ClockPlaces:
    """Every place, in the order written."""

    text: str
    each: tuple[ClockPlace, ...]


def clock_places_example(units: Units | None) -> str:
    """Places as they may be typed."""
    radius = "58 mm" if units == "metric" else "2 1/4 in"
    return f"12 at {radius}; 2:30 at {radius}; 5 at {radius}; 7 at {radius}; 9:30 at {radius}"


def read_clock_places(entry: object, units: Units | None) -> ClockPlaces:
    """Read `12, 2:20, 5, 7, 9:40`, each with `at` and its distance from the axis or without; degrees as `70 deg`.

    12 is straight up and 3 ahead; 2 to 12 places, 20 to 200 mm from the axis. Two in one place are refused.

    >>> [round(math.degrees(place.turn), 3) for place in read_clock_places("12, 2:30; 8 at 50 mm", "metric").each]
    [0.0, 75.0, 240.0]
    """
    example = clock_places_example(units)
    text = plain_number_text(entry) if isinstance(entry, str) else ""
    words = [word.strip() for word in re.split(r";|,\s+|,(?=\s*$)", text) if word.strip()]
    if not isinstance(entry, str) or not words:
        raise EntryError(f"“{as_typed(entry)}”: one place for each bolt, as on a clock; for example {example}")
    each = tuple(_place(word, entry, units, example) for word in words)
    if not FEWEST <= len(each) <= MOST:
        raise EntryError(f"“{entry[:40]}”: {len(each)} places is outside {FEWEST} to {MOST}; for example {example}")
    for (number, one), (other, also) in combinations(enumerate(each, 1), 2):
        apart = abs(math.remainder(one.turn - also.turn, math.tau))
        if apart < SAME_PLACE and (one.radius is None or also.radius is None or abs(one.radius - also.radius) < 5):
            raise EntryError(
                f"“{entry[:40]}”: place {number} and place {other} are one and the same; for example {example}"
            )
    return ClockPlaces(entry.strip(), each)


def _place(word: str, entry: str, units: Units | None, example: str) -> ClockPlace:
    """One place. entry: all of what was typed, as a refusal quotes it."""
    match = _PLACE.fullmatch(word)
    if match is None:
        raise EntryError(f"“{entry[:40]}”: {word[:40]} is no place as on a clock; for example {example}")
    if match["angle"]:
        turn = math.radians(float(match["angle"]))
        if abs(turn) > math.tau:
            raise EntryError(f"“{entry[:40]}”: {word[:40]} is more than once round; for example {example}")
    else:
        turn = math.tau * (int(match["hour"]) % 12 + int(match["minute"] or 0) / 60) / 12
    if match["radius"] is None:
        return ClockPlace(turn, None)
    radius = parse(match["radius"], "length", units, shown=entry, example=example)
    if not LEAST_RADIUS <= radius <= MOST_RADIUS:
        shown_in = units or "inch"
        limits = "20 to 200 mm" if shown_in == "metric" else "0.8 to 7.8 in"
        raise EntryError(
            f"“{entry[:40]}”: {show(radius, 'mm', shown_in)} from the wheel's axis is outside {limits}; write its unit, "
            f"for example {example}"
        )
    return ClockPlace(turn, radius)
