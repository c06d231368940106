"""An answer in words, as it was read: what a builder sees beside the entry, in the sheet's own units."""

from math import degrees
from typing import TYPE_CHECKING, Any

from rules.measure.clock_places import ClockPlaces
from rules.measure.display import show
from rules.measure.marks import BoltCircle, Thread, TyreMark
from rules.measure.quantity import INCH, KINDS, Units
from rules.measure.rim_marks import read_rim_mark
from rules.measure.section_marks import read_section
from rules.tables.load_index import LOAD_CAPACITY
from rules.tables.speed_symbol import HIGHEST_SPEED

if TYPE_CHECKING:
    from rules.graph.asking import AskedField


def in_words(asked: "AskedField", entry: object, answer: Any, units: Units) -> str:
    """What an accepted entry was read as. Empty for words, choices, and yes or no, which say it themselves.

    entry: as typed. answer: what `asked.read` gave for it.
    """
    if isinstance(answer, TyreMark):
        return tyre_in_words(answer, units)
    if isinstance(answer, BoltCircle):
        return f"{answer.count} holes on a circle of {show(answer.diameter, 'mm', units)}"
    if isinstance(answer, ClockPlaces):
        turns = ", ".join(f"{degrees(place.turn):.4g}" for place in answer.each)
        return f"{len(answer.each)} bolts, {turns} deg from the top toward the front"
    if isinstance(answer, Thread):
        return thread_in_words(answer, units)
    if asked.kind in KINDS:
        return show(answer, KINDS[asked.kind].unit, units) + _rim_words(asked, entry, answer, units)
    if asked.kind == "speed symbol":
        return f"{answer}, up to {_whole(HIGHEST_SPEED[answer] / 3.6, 'm/s', units)}"
    if asked.kind == "price":
        return f"{answer:.2f}"
    return str(answer) if asked.kind == "count" else ""


def tyre_in_words(mark: TyreMark, units: Units) -> str:
    """`31x10.50R15LT 109Q` on an inch sheet: 31.0 in tall, 10.5 in wide, 15 in wheel; load 109 = 2271 lb each; Q = 99 mph."""
    tall = f"{_tenths(mark.diameter, units)} tall" if mark.diameter is not None else "height not in the mark"
    wheel = f"{mark.rim_code:g} in wheel" if units == "inch" else f"size {mark.rim_code:g} wheel"
    words = [f"{tall}, {_tenths(mark.section_width, units)} wide, {wheel}"]
    if mark.load_index in LOAD_CAPACITY:
        words.append(f"load {mark.load_index} = {_whole(LOAD_CAPACITY[mark.load_index], 'kg', units)} each")
    if mark.speed_symbol in HIGHEST_SPEED:
        words.append(f"{mark.speed_symbol} = {_whole(HIGHEST_SPEED[mark.speed_symbol] / 3.6, 'm/s', units)}")
    if mark.diameter is None:
        words.append("measure it for the design tyre diameter")
    return "; ".join(words)


def thread_in_words(thread: Thread, units: Units) -> str:
    """A thread by its own standard, and how thick it is where the sheet's units are the other ones."""
    across = f", {show(thread.diameter, 'mm', units)} across"
    if thread.per_inch is None:
        named = f"metric thread {thread.diameter:g} x {thread.pitch:g}"
        return named + across if units == "inch" else f"{named} mm"
    named = f"inch thread {show(thread.diameter, 'mm', 'inch').removesuffix(' in')}, {thread.per_inch} threads an inch"
    return named + across if units == "metric" else named


def _rim_words(asked: "AskedField", entry: object, answer: float, units: Units) -> str:
    """What a mark says besides the length asked for, and which way an offset goes."""
    if asked.mark == "section":
        sizes = read_section(entry, units)
        return "".join(f" x {show(size, 'mm', units)}" for size in sizes[1:]) if sizes else ""
    if asked.mark == "rim offset":
        way = "outboard of" if answer > 0 else "inboard of" if answer < 0 else "in"
        return f", wheel's mounting face {way} its middle"
    if asked.mark and (mark := read_rim_mark(entry)):
        flange = f", {mark.flange} flange" if mark.flange else ""
        words = f" wide{flange}" if asked.mark == "rim width" else ""
        if mark.diameter is None or asked.mark == "rim diameter":
            return words
        code = f"{mark.diameter / INCH:g}"
        return f"{words}, {f'{code} in wheel' if units == 'inch' else f'size {code} wheel'}"
    if asked.mark == "rim diameter" and units == "metric":
        return f", size {answer / INCH:g}" if abs(answer / INCH * 2 - round(answer / INCH * 2)) < 1e-9 else ""
    return ""


def _tenths(length: float, units: Units) -> str:
    return f"{length / INCH:.1f} in" if units == "inch" else f"{length:.0f} mm"


def _whole(number: float, unit: str, units: Units) -> str:
    """A load or a speed that a table gives, in whole pounds or kilograms, miles or kilometres an hour."""
    figure, _, name = show(number, unit, units).partition(" ")
    return f"{float(figure):.0f} {name}"
