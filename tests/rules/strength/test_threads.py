"""Stress areas and engagement: formulas against a general thread library, and their directions."""

import pytest
from screw_thread_lib.threads import Assembly

from rules.measure.quantity import INCH
from rules.strength.threads import least_engagement, root_diameter, stress_area, unified


@pytest.mark.parametrize("pitch", [0.8, 1.0, 1.25, 1.5, 1.75, 2.0, 2.5, 3.0, 3.5])
def test_no_metric_pitch_passes_for_an_inch_thread(pitch: float) -> None:
    assert not unified(pitch)


@pytest.mark.parametrize("per_inch", [7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 24, 28, 32])
def test_every_inch_pitch_is_known_for_one(per_inch: int) -> None:
    assert unified(INCH / per_inch)


@pytest.mark.parametrize("mark", ["1/4-20", "1/4-28", "1/2-13", "1/2-20", "3/4-10", "3/4-16", "1-8", "1-12"])
def test_engagement_of_inch_threads_is_the_librarys(mark: str) -> None:
    size, per_inch = mark.rsplit("-", 1)
    top, _, bottom = size.partition("/")
    diameter, pitch = int(top) / int(bottom or 1) * INCH, INCH / int(per_inch)
    alike = Assembly.from_ASME_B11_UN_2A2B(mark, UTSs=120, UTSn=120).LEr_FEDSTD_14()
    assert least_engagement(diameter, pitch, 827.0, 827.0) / INCH == pytest.approx(alike, rel=0.01)
    weaker = Assembly.from_ASME_B11_UN_2A2B(mark, UTSs=120, UTSn=42).LEr_FEDSTD_16()
    assert least_engagement(diameter, pitch, 120.0, 42.0) / INCH == pytest.approx(weaker, rel=0.01)


@pytest.mark.parametrize("mark, diameter, pitch", [("M8-1.25", 8, 1.25), ("M12-1.75", 12, 1.75), ("M24-3", 24, 3.0)])
def test_engagement_of_metric_threads_is_the_librarys_but_for_its_inch_stress_area(
    mark: str, diameter: float, pitch: float
) -> None:
    other = Assembly.from_database("ASME_M_6g6H", mark, UTSs=800, UTSn=800)
    lengthened = other.LEr_FEDSTD_14() * stress_area(diameter, pitch) / (other.As_FEDSTD_1a() * INCH**2) * INCH
    assert least_engagement(diameter, pitch, 800.0, 800.0) == pytest.approx(lengthened, rel=0.01)


def test_a_weaker_hole_needs_more_thread_and_a_stronger_one_no_less() -> None:
    alike = least_engagement(12.0, 1.75, 800.0, 800.0)
    assert least_engagement(12.0, 1.75, 800.0, 400.0) > 1.4 * alike
    assert least_engagement(12.0, 1.75, 800.0, 1600.0) == alike


def test_the_root_lies_inside_the_stress_circle() -> None:
    assert root_diameter(12.0, 1.75) == pytest.approx(9.853, abs=1e-3)  # d3 of M12 in ISO 724: 9.853
    assert root_diameter(12.0, 1.75) ** 2 * 0.785398 < stress_area(12.0, 1.75)
