"""Wrong entries of answers that are no figures: choices, yes or no, and marks that are read off a part or written on it.

What a builder's hand picks instead is the line beside it in a list, the part in the box beside it on the shelf, or the mark
of the other system. So a thread becomes its neighbours that are sold, a grade each other grade, a tyre its neighbours in
every figure of its mark, a bolt circle its neighbours in count and diameter, and a choice each other choice.
"""

import re
from collections.abc import Iterator
from math import isclose
from typing import Any

from rules.graph.asking import AskedField
from rules.measure.clock_places import ClockPlaces
from rules.measure.coarse_threads import COARSE_PITCH, THREADS_PER_INCH
from rules.measure.marks import BoltCircle, Thread, TyreMark
from rules.measure.quantity import INCH
from rules.tables.bolt_grades import GRADES
from rules.tables.electrodes import ELECTRODES
from rules.tables.sold_threads import sold_pitches
from rules.tables.speed_symbol import HIGHEST_SPEED

CIRCLES = (98.0, 100.0, 108.0, 112.0, 114.3, 120.0, 4.75 * INCH, 127.0, 130.0, 5.5 * INCH, 150.0, 6.5 * INCH, 170.0)
"""Diameters of bolt circles that wheels are sold with, mm. Common practice, no source."""
WORDS = {
    "hub.mount_bolt_grade": GRADES,
    "plate.condition": ("4130 normalised", "6061-T6", "4140 annealed", "cast steel", "galvanised sheet"),
    "plate.filler": (*(name.upper() for name in ELECTRODES), "ER4043", "ER308L"),
    "*.preheat": ("none, welded cold", "warmed to 600 C"),
}
"""What is written in words and says something of strength: the field's name, and what may stand there by a slip."""


def wrong_words(asked: AskedField, entry: Any, answer: Any) -> Iterator[tuple[str, Any]]:
    """Every wrong entry of one answer that is no figure: the slip's name and what would be written."""
    if asked.kind == "choice":
        yield from (("other choice", choice) for choice in asked.choices if choice != answer)
    elif asked.kind == "yes or no":
        yield "yes for no", not answer
    elif asked.kind == "speed symbol":
        yield from (("other symbol", symbol) for symbol in _other_symbols(answer))
    elif asked.kind == "text":
        yield from _other_text(asked.name, entry)
    elif isinstance(answer, Thread):
        yield from _other_threads(answer)
    elif isinstance(answer, TyreMark):
        yield from _other_tyres(answer)
    elif isinstance(answer, BoltCircle):
        yield from _other_circles(answer)
    elif isinstance(answer, ClockPlaces):
        yield from _other_places(answer)


def _other_text(name: str, entry: str) -> Iterator[tuple[str, str]]:
    words = WORDS.get(name) or WORDS.get(f"*.{name.partition('.')[2]}", ())
    yield from (("other words", word) for word in words if word.lower() not in entry.lower())


def _sold(thread: Thread) -> list[str]:
    """A diameter with each pitch it is sold with, as such threads are written."""
    if thread.per_inch is None:
        return [f"{thread.diameter:g} x {pitch:g} mm" for pitch in sold_pitches(thread)]
    return [f"{_fraction(thread.diameter / INCH)}-{round(INCH / pitch)}" for pitch in sold_pitches(thread)]


def _fraction(inches: float) -> str:
    whole, rest = divmod(round(inches * 16), 16)
    under = 16
    while rest and rest % 2 == 0:
        rest, under = rest // 2, under // 2
    return " ".join(part for part in (f"{whole}" if whole else "", f"{rest}/{under}" if rest else "") if part)


def _other_threads(thread: Thread) -> Iterator[tuple[str, str]]:
    """The other pitches of the diameter, each pitch of the next diameters, and the nearest ones of the other system."""
    inch, metric = sorted(size * INCH for size in THREADS_PER_INCH["UNF"]), sorted(map(float, COARSE_PITCH))
    own, other = (metric, inch) if thread.per_inch is None else (inch, metric)
    of_own, of_other = (None, 1) if thread.per_inch is None else (1, None)
    same = _sold(thread), sold_pitches(thread)
    yield from (
        ("other pitch", text)
        for text, pitch in zip(*same, strict=True)
        if not isclose(pitch, thread.pitch, rel_tol=0.01)
    )
    for slip, sizes in (
        ("next size up", [size for size in own if size > thread.diameter + 0.01][:1]),
        ("next size down", [size for size in own if size < thread.diameter - 0.01][-1:]),
    ):
        yield from ((slip, text) for size in sizes for text in _sold(Thread("", size, 1.0, of_own)))
    nearest = sorted(other, key=lambda size: abs(size - thread.diameter))[:2]
    yield from (("other system", text) for size in nearest for text in _sold(Thread("", size, 1.0, of_other)))


def _other_tyres(tyre: TyreMark) -> Iterator[tuple[str, str]]:
    """One figure of the mark after the other, each to its neighbours, and what stands before and after them."""
    text = tyre.text
    numbers = list(re.finditer(r"\d+(?:\.\d+)?", text))
    height, width, rim = (0, 1, 2) if tyre.flotation else (1, 0, 2)
    steps = {"other rim": (rim, (-2, -1, 1, 2)), "other width": (width, (-1, 1, -2, 2) if tyre.flotation else (-20, -10, 10, 20)),
             "other height": (height, (-4, -2, 2, 4) if tyre.flotation else (-10, -5, 5, 10))}  # fmt: skip
    for slip, (place, by) in steps.items():
        found = numbers[place]
        for step in by:
            figure = f"{float(found[0]) + step:.2f}" if "." in found[0] else f"{int(found[0]) + step}"
            yield slip, text[: found.start()] + figure + text[found.end() :]
    if tyre.load_index is not None:
        found = numbers[3]
        for step in (-20, -10, -5, 5, 10, 20):
            yield "other load index", text[: found.start()] + f"{tyre.load_index + step}" + text[found.end() :]
    if tyre.speed_symbol:
        yield from (
            ("other symbol", text[: -len(tyre.speed_symbol)] + other) for other in _other_symbols(tyre.speed_symbol)
        )
    yield from (("other letters", letters + text.removeprefix("LT").removeprefix("P")) for letters in ("P", "ST", "T"))


def _other_symbols(symbol: str) -> list[str]:
    """Two slower and two faster ones."""
    order = sorted(HIGHEST_SPEED, key=lambda one: HIGHEST_SPEED[one])
    place = order.index(symbol)
    return [other for other in order[max(place - 2, 0) : place + 3] if other != symbol]


def _other_circles(circle: BoltCircle) -> Iterator[tuple[str, str]]:
    for count in (circle.count - 1, circle.count + 1, circle.count + 2):
        yield "other count", f"{count} x {circle.across}"
    below = [size for size in CIRCLES if size < circle.diameter - 0.1][-2:]
    above = [size for size in CIRCLES if size > circle.diameter + 0.1][:2]
    for size in (*below, *above):
        yield "other circle", f"{circle.count} x {size:g} mm"


def _other_places(places: ClockPlaces) -> Iterator[tuple[str, str]]:
    words = [word.strip() for word in re.split(r"[;,]", places.text)]
    for at, word in enumerate(words):
        if found := re.match(r"(\d{1,2})(?=:|\s|$)", word):
            opposite = f"{(int(found[1]) + 5) % 12 + 1}{word[found.end() :]}"
            yield "opposite", "; ".join((*words[:at], opposite, *words[at + 1 :]))
