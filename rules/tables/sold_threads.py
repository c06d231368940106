"""Threads that bolts, studs and rod ends are sold with."""

from math import isclose

from rules.measure.coarse_threads import COARSE_PITCH, THREADS_PER_INCH
from rules.measure.marks import Thread
from rules.measure.quantity import INCH

FINE_PITCHES = {
    8: (1.0,), 10: (1.25, 1.0), 12: (1.5, 1.25), 14: (1.5,), 16: (1.5,), 18: (2.0, 1.5), 20: (2.0, 1.5), 22: (2.0, 1.5),
    24: (2.0, 1.5), 27: (2.0,), 30: (2.0,), 33: (2.0,), 36: (3.0,), 39: (3.0,),
}  # fmt: skip
"""Nominal diameter, mm: pitches, mm. ISO 262, sizes selected for bolts and nuts, from memory; 24 x 1.5 is common practice."""
COARSE = {**COARSE_PITCH, 7: 1.0, 33: 3.5, 36: 4.0, 39: 4.0}
ON_TIE_RODS = {11 / 16: (18,), 7 / 8: (18,), 1.0: (14,)}
"""Nominal diameter, in: threads per inch of tie-rod sleeves and rod ends beside UNC and UNF. Common practice, no source."""
WHEEL_NUTS_METRIC = {10: (1.25,), 12: (1.5, 1.25), 14: (2.0, 1.5, 1.25), 18: (1.5,), 20: (1.5,), 22: (1.5,)}
"""Nominal diameter, mm: pitches, mm, that wheel nuts are sold with. Common practice, no source."""
WHEEL_NUTS_INCH = {3 / 8: 24, 7 / 16: 20, 1 / 2: 20, 9 / 16: 18, 5 / 8: 18, 3 / 4: 16}
"""Nominal diameter, in: threads per inch of wheel nuts, which are all UNF. Common practice, no source."""


def _sold_counts(size: float) -> list[int]:
    """Threads per inch that an inch diameter is sold with, coarse first. size: in."""
    rows = (*THREADS_PER_INCH.values(), *({at: count} for at, counts in ON_TIE_RODS.items() for count in counts))
    return [row[at] for row in rows for at in row if isclose(at, size, abs_tol=1e-4)]


def sold_pitches(thread: Thread, *, on_wheels: bool = False) -> tuple[float, ...]:
    """The pitches, mm, that bolts of the thread's diameter are sold with, coarse first; none where nobody sells it.

    on_wheels: those that wheel nuts are sold with.

    >>> sold_pitches(Thread("M12x1", 12.0, 1.0)), sold_pitches(Thread("M12x1", 12.0, 1.0), on_wheels=True)
    ((1.75, 1.5, 1.25), (1.5, 1.25))
    """
    if on_wheels and thread.per_inch is None:
        return WHEEL_NUTS_METRIC.get(round(thread.diameter), ())
    if on_wheels:
        inches = thread.diameter / INCH
        return tuple(INCH / count for size, count in WHEEL_NUTS_INCH.items() if isclose(size, inches, abs_tol=1e-4))
    if thread.per_inch is None:
        size = round(thread.diameter)
        return ((COARSE[size],) if size in COARSE else ()) + FINE_PITCHES.get(size, ())
    return tuple(INCH / count for count in _sold_counts(thread.diameter / INCH))


def sold_with(thread: Thread, *, on_wheels: bool = False) -> str:
    """The same in words, as a builder reads them off a gauge; empty where nobody sells the diameter.

    >>> sold_with(Thread("1/2-18", 12.7, 25.4 / 18, 18)), sold_with(Thread("M12x1", 12.0, 1.0))
    ('13 or 20 threads an inch', 'a pitch of 1.75, 1.5 or 1.25 mm')
    """
    pitches = sold_pitches(thread, on_wheels=on_wheels)
    if not pitches:
        return ""
    if thread.per_inch is None:
        return f"a pitch of {_or([f'{pitch:g}' for pitch in pitches])} mm"
    return f"{_or([str(round(INCH / pitch)) for pitch in pitches])} threads an inch"


def _or(words: list[str]) -> str:
    return " or ".join(part for part in (", ".join(words[:-1]), words[-1]) if part)


def is_sold(thread: Thread, *, on_wheels: bool = False) -> bool:
    """Whether bolts, or wheel nuts, are sold with the thread.

    >>> is_sold(Thread("M12x1.5", 12.0, 1.5)), is_sold(Thread("M12x1", 12.0, 1.0))
    (True, False)
    >>> is_sold(Thread("1/2-13", 12.7, 25.4 / 13, 13)), is_sold(Thread("1/2-13", 12.7, 25.4 / 13, 13), on_wheels=True)
    (True, False)
    """
    return any(isclose(pitch, thread.pitch, rel_tol=0.01) for pitch in sold_pitches(thread, on_wheels=on_wheels))
