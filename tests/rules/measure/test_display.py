"""Numbers back to text."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.measure.display import in_a_sentence, other, published, show, tape
from rules.measure.quantity import parse


@pytest.mark.parametrize(
    ("number", "unit", "inch", "metric"),
    [
        (238.125, "mm", "9 3/8 in", "238.1 mm"),  # 9.375 x 25.4
        (-238.125, "mm", "-9 3/8 in", "-238.1 mm"),
        (9.525, "mm", "3/8 in", "9.53 mm"),
        (-9.525, "mm", "-3/8 in", "-9.53 mm"),
        (25.4, "mm", "1 in", "25.4 mm"),
        (0.396875, "mm", "1/64 in", "0.4 mm"),  # 25.4 / 64
        (0.0, "mm", "0 in", "0 mm"),
        (-0.0, "mm", "0 in", "0 mm"),
        (10.0, "mm", "0.394 in", "10 mm"),  # 10 / 25.4 = 0.3937
        (1234.4, "mm", "48.598 in", "1234 mm"),  # 1234.4 / 25.4 = 48.5984
        (math.radians(8.25), "rad", "8.25 deg", "8.25 deg"),
        (236.0, "kg", "520.3 lb", "236 kg"),  # 236 / 0.45359237 = 520.291
        (12000.0, "N", "2698 lbf", "12000 N"),  # 12000 / 4.44822 = 2697.7
        (6.9, "MPa", "1001 psi", "6.9 MPa"),  # 6.9 / 0.00689476 = 1000.8
        (31.2928, "m/s", "70 mph", "112.7 km/h"),  # 31.2928 x 3.6 = 112.65
        (122.0, "N m", "89.98 lbf ft", "122 N m"),  # 122 / 1.35582 = 89.983
        (0.65, "share", "65 %", "65 %"),
        (0.38, "1", "0.38", "0.38"),
        (85.5, "price", "85.5", "85.5"),
        (645.16, "mm2", "1 in2", "645.2 mm2"),  # 25.4 squared
        (5000.0, "mm4", "0.012 in4", "5000 mm4"),  # 25.4 to the fourth is 416231.4
    ],
)
def test_each_unit_is_shown_as_a_person_reads_it(number: float, unit: str, inch: str, metric: str) -> None:
    assert show(number, unit, "inch") == inch
    assert show(number, unit, "metric") == metric


@pytest.mark.parametrize("number", [1e7, 1e20, 1e300, -1e300, 1e-300])
def test_the_largest_and_smallest_numbers_are_shown_without_fault(number: float) -> None:
    for unit in ("mm", "rad", "kg", "N", "MPa", "m/s", "N m", "share", "1"):
        assert show(number, unit, "inch") and show(number, unit, "metric")


def test_outside_rules_radians_are_degrees_and_shares_per_cent() -> None:
    assert published(math.pi / 6, "rad") == (pytest.approx(30.0), "deg")
    assert published(0.65, "share") == (65.0, "%")
    assert published(12.0, "N m") == (12.0, "N m")


@pytest.mark.parametrize(
    ("length", "inch", "metric"),
    [
        (101.54, "4 in", "101.5 mm"),  # 3.9976 in: 4 to the nearest 1/32
        (79.1464, "3 1/8 in", "79 mm"),  # 3.1160 in: 99.7 thirty-seconds, so 100
        (124.3559, "4 29/32 in", "124.5 mm"),  # 4.8959 in: 156.67 thirty-seconds, so 157
        (-79.1464, "-3 1/8 in", "-79 mm"),
        (0.1, "0 in", "0 mm"),
        (0.0, "0 in", "0 mm"),
    ],
)
def test_a_tape_shows_the_nearest_thirty_second_or_half_millimetre(length: float, inch: str, metric: str) -> None:
    assert tape(length, "inch") == inch
    assert tape(length, "metric") == metric


@settings(max_examples=100)
@given(length=st.floats(-3000, 3000))
def test_a_tape_reading_is_never_further_off_than_half_its_division(length: float) -> None:
    assert abs(parse(tape(length, "inch"), "length", "inch") - length) <= 25.4 / 64 + 1e-9
    assert abs(parse(tape(length, "metric"), "length", "metric") - length) <= 0.25 + 1e-9


def test_small_words() -> None:
    assert in_a_sentence("Rotor diameter") == "rotor diameter"
    assert in_a_sentence("") == ""
    assert (other("inch"), other("metric")) == ("metric", "inch")
