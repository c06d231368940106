"""Which part gives first: every safety factor of a judged sheet, worst first."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from rules.graph.results import OutsideRange
from rules.measure.closeness import more_than
from rules.strength.corner_loads import Margin

ENDING = "_safety"
"""Values of this ending return a Margin."""

CHEAP_AND_VISIBLE = frozenset({"tie rod", "steering arm"})
"""Parts that bend in plain sight and cost little. Every other part is dear or hidden: plate, hub, pivots, bolts, welds."""

UNLIKE_KINDS = "Factors are of unlike kinds (rating, proof, yield): close ones are a tie."
"""What a reader of the order has to know. A maker's rating, proof load, yield and dents are not the same distance from
breaking."""

TIE = 1.1
"""Factors less than this many times each other are a tie. This program's own figure; nobody has published one."""


@dataclass(frozen=True, slots=True)
class Ranked:
    """One part's margin. factor: strength over load. estimated: it rests on something not measured or not chosen."""

    value: str
    part: str
    factor: float
    case: str
    limit: str
    cheap_and_visible: bool
    estimated: bool = False


def part_of(value: str) -> str:
    """The part a safety value speaks of, in words.

    >>> part_of("upper_pivot_bolt_safety")
    'upper pivot bolt'
    """
    return value.removesuffix(ENDING).replace("_", " ")


def rank(known: Mapping[str, Any], estimated: Mapping[str, object] | None = None) -> tuple[Ranked, ...]:
    """The margins among worked-out values, worst first; equal ones with the dear or hidden part first."""
    found = []
    for name, answer in known.items():
        if not name.endswith(ENDING):
            continue
        if not isinstance(answer, Margin):
            raise OutsideRange(f"{part_of(name)} has a factor, but not the case it is for")
        part, rests = part_of(name), name in (estimated or {})
        cheap = part in CHEAP_AND_VISIBLE
        found.append(Ranked(name, part, float(answer), answer.case, answer.limit, cheap, rests))
    return tuple(sorted(found, key=lambda one: (one.factor, one.cheap_and_visible)))


def tied(one: float, other: float) -> bool:
    """Whether two factors, both above 0, are too close to say which part gives first. Exactly 10 % apart is no tie.

    >>> tied(2.0, 2.19), tied(2.2, 2.0)
    (True, False)
    """
    return more_than(TIE * min(one, other), max(one, other))
