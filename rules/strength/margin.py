"""What a part's strength comes to: its factor, and what gives in which case."""

from typing import Annotated, Self

from rules.measure.units import Unit


class Margin(float):
    """A safety factor: strength over load in the worst case, 1 is just enough.

    part: whose it is, in words, "upper pivot bolt". case: a name of a load case. limit: what gives, in words, "yield at the
    upper pivot".
    """

    part: str
    case: str
    limit: str

    def __new__(cls, factor: float, case: str, limit: str, *, part: str) -> Self:
        """factor: strength over load, above 0."""
        made = super().__new__(cls, factor)
        made.part, made.case, made.limit = part, case, limit
        return made


class WeldMargin(Margin):
    """A weld's, with what the code for steady loads makes of it.

    allowed: times the load that the code allows, 1 where it is just met. allowed_limit: what the code counts, in words.
    """

    allowed: float
    allowed_limit: str

    def __new__(cls, factor: float, case: str, limit: str, *, part: str, allowed: float, allowed_limit: str) -> Self:
        """factor: strength over load, above 0."""
        made = super().__new__(cls, factor, case, limit, part=part)
        made.allowed, made.allowed_limit = allowed, allowed_limit
        return made


SAFETY = "safety factor"
"""The role of every value that says how much stronger a part is than its worst load asks."""
SafetyFactor = Annotated[Margin, Unit("1", SAFETY)]
WeldSafetyFactor = Annotated[WeldMargin, Unit("1", SAFETY)]
