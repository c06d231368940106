"""Strength and stress area of bolts: SAE J429 and ISO 898-1, typed in again, with the sizes at which they change.

SAE J429 as Shigley & Mischke, 5th ed. p. 341, prints it. ISO 898-1: stress areas and proof loads from published EN ISO 898-1
load tables; yield from Shigley Table 8-11 and the class rule. Fine metric areas follow from the formula alone.
"""

import pytest

from rules.measure.coarse_threads import COARSE_PITCH
from rules.measure.quantity import INCH
from rules.strength.threads import stress_area
from rules.tables.bolt_grades import GRADES, bolt_strength
from rules.tables.electrodes import KSI

J429 = [
    ("grade 2", 3 / 4, 55, 57, 74), ("grade 2", 7 / 8, 33, 36, 60),
    ("grade 5", 1.0, 85, 92, 120), ("grade 5", 1 + 1 / 8, 74, 81, 105), ("grade 5", 1.5, 74, 81, 105),
    ("grade 7", 1.5, 105, 115, 133), ("grade 8", 1 / 4, 120, 130, 150),
]  # fmt: skip


@pytest.mark.parametrize("grade, size, proof, yields, tensile", J429)
def test_j429_with_its_size_breaks(grade: str, size: float, proof: float, yields: float, tensile: float) -> None:
    found = bolt_strength(grade, size * INCH)
    assert found is not None
    assert (found.proof / KSI, found.yields / KSI, found.tensile / KSI) == pytest.approx((proof, yields, tensile))


# 8.8 changes at M16; the table reprinted in textbooks shows only the row above it
ISO_898 = [
    ("8.8", 12.0, 580, 640, 800), ("8.8", 16.0, 580, 640, 800), ("8.8", 18.0, 600, 660, 830), ("8.8", 39.0, 600, 660, 830),
    ("10.9", 12.0, 830, 940, 1040), ("12.9", 12.0, 970, 1100, 1220),
]  # fmt: skip


@pytest.mark.parametrize("grade, size, proof, yields, tensile", ISO_898)
def test_iso_898_with_its_size_break(grade: str, size: float, proof: float, yields: float, tensile: float) -> None:
    found = bolt_strength(grade, size)
    assert found is not None and (found.proof, found.yields, found.tensile) == (proof, yields, tensile)


def test_no_strength_is_made_up_beyond_the_last_size() -> None:
    assert bolt_strength("grade 8", 1.51 * INCH) is None and bolt_strength("10.9", 39.1) is None


def test_proof_stands_under_yield_and_yield_under_tensile() -> None:
    for grade in GRADES:
        found = bolt_strength(grade, 12.0)
        assert found is not None and found.proof < found.yields < found.tensile


def test_the_strongest_a_mark_allows_is_that_of_its_greatest_hardness() -> None:
    """From memory: HRC 34 is 152 ksi, HRC 39 177 (SAE J429 by ASTM A370); 320 HV 1030 MPa, 380 HV 1220 (ISO 898-1, ISO 18265)."""
    found = {grade: bolt_strength(grade, 12.0) for grade in GRADES}
    assert found["grade 5"].strongest / KSI == pytest.approx(152) and found["grade 8"].strongest / KSI == pytest.approx(
        177
    )
    assert (found["8.8"].strongest, found["10.9"].strongest) == (1030, 1220)
    for strength in found.values():
        assert 1.1 * strength.tensile < strength.strongest < 1.6 * strength.tensile


AREAS = {6: 20.1, 8: 36.6, 10: 58.0, 12: 84.3, 14: 115, 16: 157, 18: 192, 20: 245, 22: 303, 24: 353}


@pytest.mark.parametrize("size, area", AREAS.items())
def test_coarse_metric_stress_areas(size: int, area: float) -> None:
    assert stress_area(size, COARSE_PITCH[size]) == pytest.approx(area, rel=4e-3)


@pytest.mark.parametrize("size, grade, kilonewton", [(12, "8.8", 48.9), (16, "8.8", 91.0), (20, "8.8", 147.0)])
def test_proof_loads_of_the_load_table(size: int, grade: str, kilonewton: float) -> None:
    found = bolt_strength(grade, float(size))
    assert found is not None
    assert found.proof * stress_area(size, COARSE_PITCH[size]) / 1000 == pytest.approx(kilonewton, rel=4e-3)


def test_a_waist_bolts_area_is_not_a_stress_area() -> None:
    # A table of reduced-shank bolts in print gives 69.7 for M12 x 1.25: not this.
    assert stress_area(12.0, 1.25) == pytest.approx(92.1, abs=0.05)
