"""Do the entries of the tyres agree, with each other and with the wheel."""

import re

from rules.checks.agreement.tie import PRACTICE, T, by_id, family, not_compared, odd, tied_to_size
from rules.graph.bands import AtMost, Between
from rules.graph.declare import check
from rules.graph.results import DoesNotApply, Judgement
from rules.measure.closeness import reaches, within
from rules.measure.marks import TyreMark
from rules.measure.units import Kg, Mm
from rules.sheet.confirmed import Confirmed
from rules.tables import sources
from rules.tables.load_index import LOAD_CAPACITY

ON_WHEEL = tuple(
    T(f"wheel-suits-{size}-tyre", f"{size.title()} tyre's width and wheel", "wheel.width", f"tyre.{size}",
      usual=(0.62, 0.95), never=(0.575, 1.15), other_called=f"the {size} tyre's width by its mark",
      why="a tyre goes on a rim six to nine tenths as wide as it is; on a narrower one it rolls off its bead")
    for size in ("smallest", "largest")
)  # fmt: skip
TIES = by_id(ON_WHEEL)


@check("{tie}", **family(ON_WHEEL))
def tied_width_of_tyre(
    one_answer: Mm | None, other_figure: TyreMark | None, confirmed: Confirmed, tie: str
) -> Judgement:
    """{First} against the width that the mark states. The maker's list is one for both tyres; this is each tyre's own."""
    width = None if other_figure is None else other_figure.section_width
    return tied_to_size(TIES[tie], one_answer, width, confirmed)


@check(
    "tyres-in-order",
    step="tyre",
    title="Smallest and largest tyre",
    good="the smallest is no larger than the largest",
    stop="it is larger",
    source=sources.GEOMETRY.saying("the diameters that the two marks state"),
    grade="common practice",
)
def tyres_in_order(smallest_tyre_diameter: Mm, largest_tyre_diameter: Mm) -> Judgement:
    """The two tyres by their marks."""
    text = "The smallest tyre is {smallest_tyre_diameter} across by its mark, the largest {largest_tyre_diameter}."
    if reaches(largest_tyre_diameter, smallest_tyre_diameter):
        return Judgement("good", text)
    return Judgement("stop", f"{text} They are the wrong way round.", "Change them over.")


@check(
    "design-diameter-agrees",
    step="tyre",
    title="Design diameter and tyres",
    limits=AtMost("share", 0.02, 0.08),
    good="within {good} of the middle of the two tyres",
    watch="to {watch}",
    stop="beyond, and outside the two tyres",
    source=PRACTICE,
    grade="common practice",
)
def design_diameter_agrees(
    design_diameter: Mm | None,
    smallest_tyre_diameter: Mm | None,
    largest_tyre_diameter: Mm | None,
    confirmed: Confirmed,
    limits: AtMost,
) -> Judgement:
    """The diameter the layout is drawn for against the two marks. Measured tyres run up to 3 % under theirs."""
    if design_diameter is None or smallest_tyre_diameter is None or largest_tyre_diameter is None:
        why = "no design diameter is entered, so the middle of the two tyres is used"
        if design_diameter is not None:
            why = "not both tyres are entered that the design diameter is held against"
        bounds = {"smallest_tyre_diameter": smallest_tyre_diameter, "largest_tyre_diameter": largest_tyre_diameter}
        raise not_compared(why, design_diameter, bounds)
    middle = (smallest_tyre_diameter + largest_tyre_diameter) / 2
    figures = {"middle": (middle, "mm")}
    text = "The layout is drawn for {design_diameter}; the middle of the two tyres is {middle} by their marks."
    verdict = limits.verdict(abs(design_diameter / middle - 1))
    if verdict == "good":
        return Judgement("good", text, figures=figures)
    if verdict == "watch" or within(design_diameter, smallest_tyre_diameter, largest_tyre_diameter):
        return odd(text, "tyre.design_diameter", confirmed, figures)
    return Judgement(
        "stop", f"{text} It is neither of these tyres.", "Measure a mounted tyre, or correct the mark.", figures
    )


def _index_capacity(*marks: TyreMark | None) -> float | None:
    known = [LOAD_CAPACITY[one.load_index] for one in marks if one is not None and one.load_index in LOAD_CAPACITY]
    return float(min(known)) if known else None


@check(
    "tyre-load-agrees",
    step="tyre",
    title="Load entered and load index",
    limits=Between("1", 0.3, 1.02, most=1.02),
    good="at most what the load index stands for, and at least {low} of it",
    watch="less",
    stop="more",
    source=sources.ARRETE_1994.at("annex II", "load indices, as UN Regulations 30 and 54 have them"),
    grade="standard",
)
def tyre_load_agrees(
    load_capacity: Kg | None, smallest: TyreMark | None, largest: TyreMark | None, confirmed: Confirmed, limits: Between
) -> Judgement:
    """What was entered against what the load index in the size marks stands for, which is the most at full pressure."""
    index = _index_capacity(smallest, largest)
    if load_capacity is None or index is None:
        raise DoesNotApply("the load is not both entered and in a size mark, so there is nothing to compare")
    figures = {"index": (index, "kg")}
    text = "{load_capacity} is entered; the load index in the size marks stands for {index} at full pressure."
    verdict = limits.verdict(load_capacity / index)
    if verdict == "good":
        return Judgement("good", text, figures=figures)
    if verdict == "watch":
        return odd(text, "tyre.load_capacity", confirmed, figures)
    change = "Leave it empty, and the index counts; or enter what the sidewall gives at the pressure you run."
    return Judgement("stop", f"{text} A tyre carries no more than its index.", change, figures)


@check(
    "speed-symbol-agrees",
    step="tyre",
    title="Speed symbol entered and in the mark",
    good="the same, or no mark carries one",
    stop="they differ",
    source=sources.COMMON_PRACTICE.saying("a tyre carries one speed symbol"),
    grade="common practice",
)
def speed_symbol_agrees(speed_symbol: str | None, smallest: TyreMark | None, largest: TyreMark | None) -> Judgement:
    """The symbol as entered against those in the two size marks."""
    marked = sorted(
        {one.speed_symbol for one in (smallest, largest) if one is not None and one.speed_symbol is not None}
    )
    if speed_symbol is None or not marked:
        raise DoesNotApply("the speed symbol is not both entered and in a size mark, so there is nothing to compare")
    if speed_symbol in marked:
        return Judgement("good", f"The speed symbol {speed_symbol} is the one in the size mark.")
    text = f"The speed symbol entered is {speed_symbol}; the size marks carry {' and '.join(marked)}."
    return Judgement("stop", text, "Read the sidewall again, and leave the entry empty where the mark carries it.")


NOT_A_CARS = {
    "ST": "stands for a trailer's tyre, which is not made to steer or to take a car's side force.",
    "T": "stands for a temporary spare, which is made to bring a car home slowly.",
}
"""Letters before the size, and what they say. From memory of the sizes' own standard; common practice."""


@check(
    "tyre-for-a-car",
    step="tyre",
    title="Tyres for a wheel that steers",
    good="neither mark is a trailer tyre's or a temporary spare's",
    stop="one begins with ST or T",
    source=sources.COMMON_PRACTICE.saying(
        "ST in a size mark is for trailers only: made to follow, not to steer or brake a car; T is a temporary spare"
    ),
    grade="common practice",
)
def tyre_for_a_car(smallest: TyreMark, largest: TyreMark) -> Judgement:
    """The letters before the size: P and LT are car and light-truck tyres, ST is a trailer's, T a temporary spare's."""
    for letters, said in NOT_A_CARS.items():
        marked = sorted({mark.text for mark in (smallest, largest) if re.match(rf"{letters}\s?\d", mark.text.upper())})
        if marked:
            text = f"{' and '.join(marked)}: {letters} {said}"
            return Judgement("stop", text, "A P or LT tyre, or one without letters before its size.")
    return Judgement("good", "Neither size mark is a trailer tyre's or a temporary spare's.")


@check(
    "one-size-one-tyre",
    step="tyre",
    title="Two marks of one size",
    good="both marks of one size carry the same load index, speed symbol and letters",
    watch="they differ, and it is not confirmed",
    source=PRACTICE,
)
def one_size_one_tyre(smallest: TyreMark | None, largest: TyreMark | None, confirmed: Confirmed) -> Judgement:
    """A car that runs one size runs one tyre: where its two marks differ behind the size, one of them is read or typed wrong."""
    if smallest is None or largest is None:
        raise not_compared("not both size marks are entered", largest, {"tyre.smallest": smallest})
    if not smallest.same_size(largest):
        raise DoesNotApply("the two tyres are of two sizes")
    said = {
        "load index": (smallest.load_index, largest.load_index),
        "speed symbol": (smallest.speed_symbol, largest.speed_symbol),
        "letters before the size": (_letters(smallest), _letters(largest)),
    }
    differ = [what for what, (one, other) in said.items() if one is not None and other is not None and one != other]
    text = f"The tyres {smallest.text} and {largest.text} are of one size"
    if not differ:
        return Judgement("good", f"{text}.")
    return odd(f"{text}, and differ in {' and '.join(differ)}.", "tyre.largest", confirmed)


def _letters(mark: TyreMark) -> str:
    """What stands before the size: P, LT or nothing. LT may stand behind it as well."""
    text = mark.text.upper()
    found = re.match(r"[A-Z]+", text)
    return found[0] if found else "LT" if re.search(r"\d\s?LT\b", text) else ""
