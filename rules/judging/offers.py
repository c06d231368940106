"""What a sheet can offer for a question that is not answered: worked out, the same as another, or a start that fits."""

from collections.abc import Callable, Mapping
from math import radians
from typing import Any

from rules.judging.judge import Judged, judge
from rules.judging.reader import answer, name
from rules.judging.trade import trade
from rules.judging.usual import usual_range
from rules.measure.display import in_a_sentence, show
from rules.measure.marks import TyreMark
from rules.measure.quantity import INCH, KINDS, Units
from rules.measure.records import dataclass
from rules.measure.section_marks import read_section
from rules.sheet import FIELDS
from rules.sheet.alike import BY_NAME, HALF_OF, NOUGHT, OWN, SAME_AS, USED_AS, WALLS_OF_ARMS

BY_VALUE = {question: name(value) for question, value in USED_AS.items()}
WHEEL_DIAMETER, SMALLEST, USE = name("wheel.diameter"), name("tyre.smallest"), name("job.use")
SPRING_ON = name("pivots.spring_on")


@dataclass(frozen=True, slots=True)
class Offer:
    """entry: as it would be typed. origin: where it comes from, in a few words. measured: False for an assumed figure that only a
    measurement can replace: it is shown and not taken over, for then it would count as measured."""

    entry: str | bool
    origin: str
    measured: bool = True


def offer(field_name: str, judged: Judged) -> Offer | None:
    """What can be offered for a question without an answer; None where nothing can, or where it is answered."""
    if field_name in judged.sheet.typed:
        return None
    found = _wheel_diameter(judged) if field_name == WHEEL_DIAMETER.origin else None
    return found or _worked_out(field_name, judged) or _same_as(field_name, judged)


def _same_as(field_name: str, judged: Judged) -> Offer | None:
    asked, like = FIELDS[field_name], SAME_AS.get(field_name, "")
    entry = judged.sheet.typed.get(like)
    if like not in judged.sheet.answers or not isinstance(entry, str | bool) or not _reads(asked, entry, judged):
        return None
    there = FIELDS[like].step.replace("weld_", "").replace("_", " ")
    return Offer(
        entry, f"as {there}" if FIELDS[like].label == asked.label else f"as {in_a_sentence(FIELDS[like].label)}"
    )


def _reads(asked: Any, entry: object, judged: Judged) -> bool:
    try:
        asked.read(entry, judged.sheet.units)
    except ValueError:
        return False
    return True


def _worked_out(field_name: str, judged: Judged) -> Offer | None:
    asked, worked = FIELDS[field_name], judged.worked
    if field_name in NOUGHT:
        return Offer("0", NOUGHT[field_name])
    if whole := HALF_OF.get(field_name):
        side = judged.sheet.answers.get(whole)
        return Offer(show(side / 2, "mm", judged.shown_in), "the middle") if isinstance(side, float) else None
    if field_name in BY_NAME:
        return _by_name(*BY_NAME[field_name], judged)
    if field_name in WALLS_OF_ARMS and (spring := answer(judged.sheet.answers, SPRING_ON)):
        return _by_name(WALLS_OF_ARMS[field_name][spring == "upper arm"], -1, judged)
    if field_name not in BY_VALUE:
        return None
    found = answer(worked.known, BY_VALUE[field_name])
    if not isinstance(found, int | float):
        return None
    entry = show(float(found), KINDS[asked.kind].unit, judged.shown_in)
    if field_name.startswith("loads."):
        return Offer(entry, f"usual for {answer(worked.known, USE)}")
    if BY_VALUE[field_name].origin in worked.estimated:
        return Offer(entry, "an estimate", measured=False)
    return Offer(entry, "worked out")


def _by_name(other: str, place: int, judged: Judged) -> Offer | None:
    """A size of stock that was entered by name in another row. place: which of the sizes in its name."""
    if other not in judged.sheet.answers:
        return None
    sizes = read_section(judged.sheet.typed[other], judged.sheet.units)
    return Offer(show(sizes[place], "mm", judged.shown_in), "by its name") if sizes else None


def _wheel_diameter(judged: Judged) -> Offer | None:
    mark = answer(judged.worked.known, SMALLEST)
    return Offer(show(mark.rim_code * INCH, "mm", "inch"), "by the tyre") if isinstance(mark, TyreMark) else None


ROUND: Mapping[tuple[str, Units], tuple[float, ...]] = {
    ("mm", "inch"): (INCH / 4, INCH / 8, INCH / 16, INCH / 32),
    ("mm", "metric"): (5.0, 1.0, 0.5),
    ("rad", "inch"): (radians(1.0), radians(0.5)),
    ("rad", "metric"): (radians(1.0), radians(0.5)),
}
"""Round figures a shop chooses in, in the inside unit, coarsest first."""


def _round_figure(number: float, width: float, unit: str, units: Units) -> float:
    """The nearest round one, in the coarsest step that leaves at least four in a range so wide.

    >>> _round_figure(300.0, 300.0, "mm", "inch") / INCH, _round_figure(7.3, 10.0, "mm", "metric")
    (11.75, 7.0)
    """
    steps = ROUND[unit, units]
    step = next((step for step in steps if step * 4 <= width), steps[-1])
    return round(number / step) * step


TRIALS = 13
"""So many answers are tried over the usual range."""


def can_start(field_name: str) -> bool:
    """Whether a start value is offered: a number of the builder's own choosing, with a usual range."""
    asked = FIELDS.get(field_name)
    return (
        asked is not None and asked.step in OWN and asked.kind in ("length", "angle") and bool(usual_range(field_name))
    )


def start_value(field_name: str, judged: Judged, with_answer: Callable[[str], Any]) -> str | None:
    """An answer within the usual range that leaves the fewest verdicts stopping, then watching; of those the middle one.

    with_answer: gives the sheet with this entry in place. None where there is no usual range.
    """
    bounds = usual_range(field_name, judged.sheet.answers)
    if bounds is None:
        return None
    low, high = bounds
    unit = KINDS[FIELDS[field_name].kind].unit
    touched = set(trade().checks_touched_by(field_name))
    tried: list[tuple[int, int, int, str]] = []
    for place in range(TRIALS):
        number = _round_figure(low + (high - low) * place / (TRIALS - 1), high - low, unit, judged.shown_in)
        if not low <= number <= high:
            continue
        entry = show(number, unit, judged.shown_in)
        found = judge(with_answer(entry), judged.shown_in, judged, light=True).findings
        verdicts = [each.verdict for each in found if each.check in touched]
        tried.append((verdicts.count("stop"), verdicts.count("watch"), abs(place - TRIALS // 2), entry))
    return min(tried)[-1] if tried else None
