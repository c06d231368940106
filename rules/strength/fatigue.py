"""How many hits of one size a fillet weld takes until it cracks. MPa."""

from rules.graph.results import OutsideRange

CLASS_OF_FILLET = 36.0
"""MPa: stress range at two million cycles of a fillet weld that cracks from its root through the throat, or at its toe in a
short attachment of the worst kind. EN 1993-1-9 Table 8.5, detail category 36*, from memory."""
CYCLES_OF_CLASS, SLOPE = 2e6, 3.0
"""EN 1993-1-9 clause 7.1, from memory: N = 2e6 (class / range)^3, for ranges above about three quarters of the class."""


def hits_to_a_crack(stress_range: float) -> float:
    """Hits of this stress range on the throat, from least to greatest and back, until 19 of 20 such welds would still hold.

    stress_range: MPa, above nought. It counts a weld as in a dry building, made and inspected as the standard asks.

    >>> round(hits_to_a_crack(36.0)), round(hits_to_a_crack(72.0))
    (2000000, 250000)
    """
    if stress_range <= 0:
        raise OutsideRange("nothing loads this weld")
    return float(CYCLES_OF_CLASS * (CLASS_OF_FILLET / stress_range) ** SLOPE)
