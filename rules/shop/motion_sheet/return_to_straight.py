"""What brings the wheels back to straight over the lock, and the levers that stones and brakes have on them."""

from collections.abc import Iterator, Mapping, Sequence
from math import degrees

from rules.judging.judge import Judged, shown
from rules.judging.reader import is_known, name, reads
from rules.judging.return_at_lock import lock_up_to, return_moment_at, rim_effort_at, standing_effort_at
from rules.motion.front_end import FrontEnd
from rules.motion.turning import Reach, both_wheels, lift
from rules.shop.motion_sheet.lock import NEITHER_WAY, ends_before, locks
from rules.shop.motion_sheet.section import (
    SheetTable,
    estimates,
    figure_and_unit,
    length_of,
    reason,
    rise_and_fall,
    signed,
    unit_of,
)

_STEERED, _AT_20_DEG = name("steered_front"), name("return_moment_20_deg")
_STANDING = name("standing_rim_effort")
_BY_WEIGHT = {
    "Return": (name("return_moment_full_lock"), return_moment_at),
    "Steering-wheel effort": (name("rim_effort"), rim_effort_at),
    "Effort, standing": (_STANDING, standing_effort_at),
}
"""What weight and ground do at each lock: the value at one lock, and its figure at any."""

_PARTS = {
    "Castor": name("return_moment_without_castor"),
    "Steering-axis inclination": name("return_moment_without_inclination"),
    "Ground offset": name("return_moment_without_ground_offset"),
}
_LEVERS = {
    "Kickback lever, a rock pushes the wheel back at wheel-centre height": name("kickback_lever"),
    "Braking lever, the tyre brakes on the ground with the caliper on the upright": name("braking_lever"),
}


@reads
def return_section(lock_reached: Reach, steered_front: FrontEnd, *, judged: Judged) -> SheetTable | None:
    """Lift, camber, return moment and effort at every step of the lock, as far as both wheels follow."""
    if not lock_reached.share:
        return SheetTable("", missing=NEITHER_WAY)
    known, units = judged.worked.known, judged.shown_in
    by_weight = {words: given for words, given in _BY_WEIGHT.items() if is_known(known, given[0])}
    unit = unit_of(units)
    columns = (
        "Inner wheel (deg)", f"Lift, inner ({unit})", f"Lift, outer ({unit})", "Camber, inner (deg)",
        "Camber, outer (deg)",
        *(f"{words} ({figure_and_unit(0.0, given[0].unit, units)[1]})" for words, given in by_weight.items()),
    )  # fmt: skip
    notes = (
        "Lift: how far the body rises at that wheel, minus where it sinks. Camber: plus, top outboard.",
        "Return: moment of the weight on both tyres about the inner wheel's axis, plus to straight. "
        "Steering-wheel effort: what holds "
        "them there at the steering wheel. Car at ride height, no friction, no tyre side force. Effort, standing: what turns "
        "the wheels on from there on dry ground, friction 0.7, the car standing, no help.",
        *ends_before(lock_reached),
        *(f"{words} not worked out: {reason(judged, given[0].origin)}." for words, given in _BY_WEIGHT.items()
          if words not in by_weight),
        *estimates(judged, _STEERED, *(wanted for wanted, _ in by_weight.values())),
    )  # fmt: skip
    rows, over_lock = [], {words: list[float]() for words in by_weight}
    for lock, _, words in locks(steered_front, lock_reached):
        wheels = both_wheels(lock_up_to(steered_front, lock))[0]
        figures = [(at(known, lock=lock), wanted.unit) for wanted, at in by_weight.values()]
        for words_of, (figure, _) in zip(by_weight, figures, strict=True):
            over_lock[words_of] += [] if figure is None else [figure]
        rows.append(
            (
                words,
                *(length_of(lift(pose), units, 2) for pose in (wheels.inner, wheels.outer)),
                *(signed(degrees(pose.camber), 2) for pose in (wheels.inner, wheels.outer)),
                *("-" if figure is None else figure_and_unit(figure, inside, units)[0] for figure, inside in figures),
            )
        )
    return SheetTable("", notes, columns, tuple(rows), below=(*_over_lock(over_lock), *_below(judged)))


def _over_lock(figures: Mapping[str, Sequence[float]]) -> Iterator[str]:
    """How each of the figures goes from straight ahead to full lock, in one sentence."""
    went = [f"{words[0].lower()}{words[1:]} {rise_and_fall(found)}" for words, found in figures.items() if found]
    if went:
        yield f"From straight ahead to full lock: {'; '.join(went)}."


def _below(judged: Judged) -> Iterator[str]:
    """What castor, inclination and ground offset are worth, and the levers, as far as they are known."""
    known = judged.worked.known
    if is_known(known, _AT_20_DEG):
        yield (
            f"Return with both wheels turned 20 deg about their axes: {shown(_AT_20_DEG, judged)}. With one at nought:"
        )
        yield from (
            f"{words}: without it {shown(part, judged)}." for words, part in _PARTS.items() if is_known(known, part)
        )
    if is_known(known, _STANDING):
        yield f"Effort, standing, straight ahead: {shown(_STANDING, judged)}."
    yield from (f"{words}: {shown(lever, judged)}." for words, lever in _LEVERS.items() if is_known(known, lever))
