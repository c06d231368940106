"""What a part's strength comes to: its factor, and what gives in which case."""

from math import inf
from typing import Annotated, Literal, Self

from rules.measure.closeness import reaches
from rules.measure.units import Unit

CountedOn = Literal["yield", "proof load", "maker's rating", "dents", "weld", "buckling", "clamp"]
"""What a factor is counted on. Those of unlike kinds are not the same distance from breaking."""


class Margin(float):
    """A safety factor: strength over load in the worst case, 1 is just enough.

    part: whose it is, in words, "upper pivot bolt". case: a name of a load case. limit: what gives, in words, "yield at the
    upper pivot". kind: what it is counted on. on_yield: the same counted on yield, None where that cannot be worked out.
    """

    part: str
    case: str
    limit: str
    kind: CountedOn
    on_yield: float | None

    def __new__(
        cls,
        factor: float,
        case: str,
        limit: str,
        *,
        part: str,
        kind: CountedOn = "yield",
        on_yield: float | None = None,
    ) -> Self:
        """factor: strength over load, above 0."""
        made = super().__new__(cls, factor)
        made.part, made.case, made.limit, made.kind = part, case, limit, kind
        made.on_yield = factor if kind == "yield" else on_yield
        return made

    @property
    def gives(self) -> bool:
        """Whether it gives under a load the builder expects."""
        return not reaches(self, 1.0)

    @property
    def beside(self) -> str:
        """What else its row of a table says, in few words; empty for most."""
        return ""


class WeldMargin(Margin):
    """A weld's, with what the code for steady loads makes of it.

    allowed: times the load that the code allows, 1 where it is just met. allowed_limit: what the code counts, in words.
    hits: how many such loads, from none to full and back, a weld stands until it cracks; nought where that is not known.
    swings: where the load turns round and that is worse, the two cases between which the hits swing, in words.
    """

    allowed: float
    allowed_limit: str
    hits: float
    swings: str

    def __new__(
        cls,
        factor: float,
        case: str,
        limit: str,
        *,
        part: str,
        kind: CountedOn = "weld",
        on_yield: float | None = None,
        allowed: float = inf,
        allowed_limit: str = "",
        hits: float = 0.0,
        swings: str = "",
    ) -> Self:
        """factor: strength over load, above 0."""
        made = super().__new__(cls, factor, case, limit, part=part, kind=kind, on_yield=on_yield)
        made.allowed, made.allowed_limit, made.hits, made.swings = allowed, allowed_limit, hits, swings
        return made

    @property
    def gives(self) -> bool:
        """Whether it gives, or the code for steady loads does not allow its load."""
        return not (reaches(self, 1.0) and reaches(self.allowed, 1.0))

    @property
    def beside(self) -> str:
        """How many times the load the code allows."""
        return f"code {self.allowed:.2f}"


class ClampMargin(Margin):
    """A clamped joint's, the factor being that at which it opens.

    preload: least pull that tightening leaves in each bolt, N. slips: times the load at which its faces slip; slip_case: in
    which case.
    """

    preload: float
    slips: float
    slip_case: str

    def __new__(
        cls, factor: float, case: str, limit: str, *, part: str, kind: CountedOn = "clamp", on_yield: float | None = None,
        preload: float = 0.0, slips: float = inf, slip_case: str = "",
    ) -> Self:  # fmt: skip
        """factor: strength over load, above 0."""
        made = super().__new__(cls, factor, case, limit, part=part, kind=kind, on_yield=on_yield)
        made.preload, made.slips, made.slip_case = preload, slips, slip_case
        return made

    @property
    def beside(self) -> str:
        """At how many times the load its faces slip, where that is before it opens."""
        return f"slips at {self.slips:.2f}" if self.slips < self else ""


def told(factor: float) -> str:
    """A factor as it is told, with two decimals up to 100: one just short of 1 does not read 1.

    >>> told(0.998), told(0.954), told(1.0), told(1.234), told(1130.4)
    ('0.99', '0.95', '1.00', '1.23', '1130')
    """
    shown = factor if reaches(factor, 1.0) else min(factor, 0.99)
    return f"{shown:.2f}" if shown < 100 else f"{shown:.0f}"


SAFETY = "safety factor"
"""The role of every value that says how much stronger a part is than its worst load asks."""
SafetyFactor = Annotated[Margin, Unit("1", SAFETY)]
WeldSafetyFactor = Annotated[WeldMargin, Unit("1", SAFETY)]
ClampSafetyFactor = Annotated[ClampMargin, Unit("1", SAFETY)]
