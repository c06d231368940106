"""Strength of bolts by the mark on the head, with the sizes at which it changes.

Sources: SAE J429 as Shigley & Mischke, 5th ed., p. 341, prints it (inch bolts, 1/4 to 1 1/2 in); ISO 898-1 (metric bolts):
proof and tensile from load tables that quote it, yield from Shigley Table 8-11 and, up to M16, from the class rule. ISO
898-1 class 8.8 changes at M16: books that print it from M16 up only show the upper row. The strongest that a mark allows
follows from its greatest hardness (SAE J429 Rockwell, ISO 898-1 Vickers) by the tables of ASTM A370 and ISO 18265, all from
memory: a thread that is to outlive the bolt has to outlive that one.
"""

from typing import Literal, get_args

from rules.measure.closeness import reaches
from rules.measure.display import show
from rules.measure.quantity import INCH, Units
from rules.measure.records import dataclass
from rules.tables.electrodes import KSI

BoltGrade = Literal["grade 2", "grade 5", "grade 7", "grade 8", "8.8", "10.9", "12.9"]
GRADES: tuple[BoltGrade, ...] = get_args(BoltGrade)

SAE: tuple[tuple[BoltGrade, float, float, float, float, float], ...] = (
    ("grade 2", 3 / 4, 55, 57, 74, 116),
    ("grade 2", 1 + 1 / 2, 33, 36, 60, 116),
    ("grade 5", 1, 85, 92, 120, 152),
    ("grade 5", 1 + 1 / 2, 74, 81, 105, 138),
    ("grade 7", 1 + 1 / 2, 105, 115, 133, 152),
    ("grade 8", 1 + 1 / 2, 120, 130, 150, 177),
)
"""Grade; up to and including, in; proof, yield, tensile, strongest, ksi."""

ISO: tuple[tuple[BoltGrade, float, float, float, float, float], ...] = (
    ("8.8", 16, 580, 640, 800, 1030),
    ("8.8", 39, 600, 660, 830, 1080),
    ("10.9", 39, 830, 940, 1040, 1220),
    ("12.9", 39, 970, 1100, 1220, 1400),
)
"""Class; up to and including, mm; proof, yield, tensile, strongest, MPa."""

WEAK: tuple[BoltGrade, ...] = ("grade 2",)
"""Below what student racing rules ask of a suspension bolt: SAE grade 5 or class 8.8."""


@dataclass(frozen=True, slots=True)
class BoltStrength:
    """Least proof, yield and tensile strength, MPa. strongest: the most tensile strength such a bolt may have, nought where
    nobody said."""

    proof: float
    yields: float
    tensile: float
    strongest: float = 0.0

    def words_in(self, units: Units) -> str:
        """In words in a sheet's units, for the written-out working."""
        proof, yields, tensile = (show(stress, "MPa", units) for stress in (self.proof, self.yields, self.tensile))
        return f"proof {proof}, yield {yields}, tensile {tensile}"


def bolt_strength(grade: BoltGrade, diameter: float) -> BoltStrength | None:
    """Strength of a bolt by grade and nominal diameter, mm. None where the standard has no such size.

    >>> bolt_strength("8.8", 16.0), bolt_strength("8.8", 18.0).proof
    (BoltStrength(proof=580, yields=640, tensile=800, strongest=1030), 600)
    """
    for rows, size, stress in ((SAE, INCH, KSI), (ISO, 1, 1)):
        for name, up_to, *strengths in rows:
            if name == grade and reaches(up_to * size, diameter):
                return BoltStrength(*(strength * stress for strength in strengths))
    return None
