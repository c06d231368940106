"""Which part is the weakest: every safety factor of a judged sheet, worst first."""

from collections.abc import Container, Mapping

from rules.measure.closeness import more_than
from rules.measure.records import dataclass
from rules.strength.margin import CountedOn, Margin

CHEAP_AND_VISIBLE = frozenset({"tie rod", "steering arm"})
"""Parts that bend in plain sight and cost little. Every other part is dear or hidden: plate, hub, pivots, bolts, welds."""

UNLIKE_KINDS = "Factors are of unlike kinds (rating, proof, yield, clamp): close ones are a tie."
"""What a reader of the order has to know. A maker's rating, proof load, yield, dents and a joint that opens are not the same
distance from breaking."""

TIE = 1.1
"""Factors less than this many times each other are a tie. This program's own figure; nobody has published one."""


@dataclass(frozen=True, slots=True)
class Ranked:
    """One part's margin. factor: strength over load. estimated: it rests on something not measured or not chosen;
    doubted: on an answer that is asked about. beside: what else to know, in few words."""

    value: str
    part: str
    factor: float
    case: str
    limit: str
    cheap_and_visible: bool
    estimated: bool = False
    doubted: bool = False
    kind: CountedOn = "yield"
    on_yield: float | None = None
    beside: str = ""

    @property
    def marks(self) -> tuple[str, ...]:
        """What tells against its figure, in a word or two each."""
        return ("estimate",) * self.estimated + ("asked about",) * self.doubted


def rank(margins: Mapping[str, Margin], estimated: Container[str] = ()) -> tuple[Ranked, ...]:
    """Margins by the value that gives each, worst first; equal ones with the dear or hidden part first.

    estimated: the values among them that rest on an estimate.
    """
    found = [
        Ranked(
            value,
            one.part,
            float(one),
            one.case,
            one.limit,
            one.part in CHEAP_AND_VISIBLE,
            estimated=value in estimated,
            kind=one.kind,
            on_yield=one.on_yield,
            beside=one.beside,
        )
        for value, one in margins.items()
    ]
    return tuple(sorted(found, key=lambda one: (one.factor, one.cheap_and_visible)))


def tied(one: float, other: float) -> bool:
    """Whether two factors, both above 0, are too close to say which part is the weakest. Exactly 10 % apart is no tie.

    >>> tied(2.0, 2.19), tied(2.2, 2.0)
    (True, False)
    """
    return more_than(TIE * min(one, other), max(one, other))
