"""What brings the wheels back to straight over the lock, and the levers that stones and brakes have on them."""

from collections.abc import Iterator
from math import degrees

from rules.judging.judge import Judged, shown
from rules.judging.return_at_lock import lock_up_to, return_moment_at, rim_effort_at
from rules.measure.display import show
from rules.measure.quantity import Units
from rules.motion.turning import both_wheels, lift
from rules.shop.motion_sheet.lock import locks
from rules.shop.motion_sheet.section import SheetTable, estimates, length_of, reason, signed, unit_of

_BY_WEIGHT = {
    "Return": ("return_moment_full_lock", "N m", return_moment_at),
    "Rim effort": ("rim_effort", "N", rim_effort_at),
}
"""What the weight does at each lock: the value that tells whether it is known, its unit, and its figure at a lock."""

_PARTS = {
    "Castor": "return_moment_without_castor",
    "Inclination": "return_moment_without_inclination",
    "Ground offset": "return_moment_without_ground_offset",
}
_LEVERS = {
    "Kickback lever, a rock pushes the wheel back at spindle height": "kickback_lever",
    "Braking lever, the tyre brakes on the ground with the caliper on the upright": "braking_lever",
}


def return_section(judged: Judged) -> SheetTable:
    """Lift, camber, return moment and effort at every step of the lock."""
    known, units = judged.worked.known, judged.shown_in
    by_weight = {words: given for words, given in _BY_WEIGHT.items() if given[0] in known}
    unit = unit_of(units)
    columns = (
        "Inner wheel (deg)", f"Lift, inner ({unit})", f"Lift, outer ({unit})", "Camber, inner (deg)",
        "Camber, outer (deg)",
        *(f"{words} ({_figure_and_unit(0.0, given[1], units)[1]})" for words, given in by_weight.items()),
    )  # fmt: skip
    notes = (
        "Lift: how far the body rises at that wheel, minus where it sinks. Camber: plus, top outboard.",
        "Return: moment of the weight on both tyres about the inner wheel's axis, plus to straight. Rim effort: what holds "
        "them there at the steering wheel. Car at ride height, no friction, no tyre side force.",
        *(f"{words} not worked out: {reason(judged, given[0])}." for words, given in _BY_WEIGHT.items()
          if words not in by_weight),
        *estimates(judged, "lock_sweep", *(name for name, *_ in by_weight.values())),
    )  # fmt: skip
    rows = []
    for lock, _, words in locks(known["steered_front"]):
        wheels = both_wheels(lock_up_to(known["steered_front"], lock))[0]
        figures = ((at(known, lock), unit_inside) for _, unit_inside, at in by_weight.values())
        rows.append(
            (
                words,
                *(length_of(lift(pose), units, 2) for pose in (wheels.inner, wheels.outer)),
                *(signed(degrees(pose.camber), 2) for pose in (wheels.inner, wheels.outer)),
                *("-" if figure is None else _figure_and_unit(figure, inside, units)[0] for figure, inside in figures),
            )
        )
    return SheetTable("", notes, columns, tuple(rows), below=tuple(_below(judged)))


def _figure_and_unit(number: float, unit: str, units: Units) -> tuple[str, str]:
    figure, _, symbol = show(number, unit, units).partition(" ")
    return figure, symbol


def _below(judged: Judged) -> Iterator[str]:
    """What castor, inclination and ground offset are worth, and the levers, as far as they are known."""
    known = judged.worked.known
    if "return_moment_20_deg" in known:
        yield (
            f"Return with both wheels turned 20 deg about their axes: {shown('return_moment_20_deg', judged)}. With one at "
            "nought:"
        )
        yield from (f"{words}: without it {shown(name, judged)}." for words, name in _PARTS.items() if name in known)
    yield from (f"{words}: {shown(name, judged)}." for words, name in _LEVERS.items() if name in known)
