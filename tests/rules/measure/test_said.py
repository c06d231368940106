"""Figures as a person says them: an inch is 25.4 mm (the international inch of 1959), a pound 0.45359237 kg."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.measure.quantity import Units, parse
from rules.measure.said import RoundedTo, either, filled, in_units, said, span, worked_out, written


@pytest.mark.parametrize(
    ("number", "unit", "way", "inch", "metric"),
    [
        (12.0, "mm", "up", "1/2 in", "12 mm"),  # 0.4724 in, 5.8 % under a half
        (6.0, "mm", "up", "1/4 in", "6 mm"),  # 0.2362 in
        (3.0, "mm", "up", "1/8 in", "3 mm"),
        (5.0, "mm", "up", "0.2 in", "5 mm"),  # 0.19685 in: 3/16 is less, and 1/4 is 27 % more
        (2.0, "mm", "up", "0.079 in", "2 mm"),  # 0.07874 in: 5/64 is less, and 3/32 is 19 % more
        (25.0, "mm", "down", "15/16 in", "25 mm"),  # 0.9843 in: 1 is more
        (25.4, "mm", "down", "1 in", "25.4 mm"),
        (25.0, "mm", "near", "1 in", "25 mm"),
        (75.0, "mm", "up", "3 in", "75 mm"),
        (-10.0, "mm", "up", "-3/8 in", "-10 mm"),  # -0.3937 in
        (0.0, "mm", "up", "0 in", "0 mm"),
        (0.3, "mm", "near", "0.012 in", "0.3 mm"),  # 0.0118 in
        (5.0, "N m", "up", "3.7 lbf ft", "5 N m"),  # 3.688
        (230.0, "°C", "down", "410 °F", "230 °C"),  # a rise: 414
        (300.0, "kg", "down", "660 lb", "300 kg"),  # 661.4
        (100 / 3.6, "m/s", "down", "62 mph", "100 km/h"),  # 62.14
        (120_000.0, "N", "up", "27 000 lbf", "120 000 N"),  # 26 977
        (0.65, "share", "up", "65 %", "65 %"),
        (8 / 3, "1", "up", "2.667", "2.667"),
    ],
)
def test_a_limit_is_rounded_to_the_side_that_passes(
    number: float, unit: str, way: RoundedTo, inch: str, metric: str
) -> None:
    assert written((number, unit, way), "inch") == inch
    assert written((number, unit, way), "metric") == metric


@settings(max_examples=200)
@given(length=st.floats(-3000, 3000).filter(lambda length: abs(length) > 0.02))
def test_no_length_is_said_to_the_side_that_would_not_pass_nor_far_off(length: float) -> None:
    up, down = (parse(" ".join(said(length, "mm", "inch", way)), "length", "inch") for way in ("up", "down"))
    assert down - 1e-6 <= length <= up + 1e-6
    assert up - length <= 0.06 * abs(length) + 1e-4 and length - down <= 0.06 * abs(length) + 1e-4


def test_a_measured_figure_is_not_rounded_so() -> None:
    assert written((12.0, "mm"), "inch") == "0.472 in"
    assert filled("{gap} apart, {wanted} wanted", {"gap": (12.0, "mm"), "wanted": (12.0, "mm", "up")}, "inch") == (
        "0.472 in apart, 1/2 in wanted"
    )


@pytest.mark.parametrize(
    ("units", "text"),
    [("inch", "over 1/16 in, [or so]"), ("metric", "over 1.5 mm, [or so]"), (None, "over 1.5 mm, [or so]")],
)
def test_what_is_fixed_in_a_text_is_said_in_the_sheets_units(units: Units | None, text: str) -> None:
    assert in_units("over [1/16 in | 1.5 mm], [or so]", units) == text


def test_either_holds_what_each_system_says() -> None:
    assert either(lambda units: written((12.0, "mm", "up"), units)) == "[1/2 in | 12 mm]"
    assert either(lambda units: written((0.5, "share"), units)) == "50 %"


@pytest.mark.parametrize(
    ("number", "unit", "inch", "metric"),
    [
        (39541.0, "N", "8890 lbf", "39 500 N"),  # 39541 / 4.448222 = 8889.2
        (148.06, "N m", "109 lbf ft", "148 N m"),  # 148.06 / 1.355818 = 109.2
        (246.0, "°C", "443 °F", "246 °C"),  # a rise: 442.8
        (137.895, "MPa", "20 000 psi", "138 MPa"),  # 20 ksi
        (41.3, "N", "9.28 lbf", "41.3 N"),  # 9.285
        (1234.4, "mm", "48.598 in", "1234 mm"),  # a length is known closer
        (float("inf"), "N", "inf lbf", "inf N"),
    ],
)
def test_what_rests_on_loads_is_told_in_three_figures(number: float, unit: str, inch: str, metric: str) -> None:
    assert worked_out(number, unit, "inch") == inch
    assert worked_out(number, unit, "metric") == metric
    assert written((number, unit), "inch") == inch


@pytest.mark.parametrize(
    ("low", "high", "expected"),
    [
        (
            8.0,
            22.0,
            "3/8 to 13/16 in",
        ),  # 0.315 and 0.866 in: 5/16 is 0.3125 and lies outside, 7/8 is 0.875 and does too
        (5.0, 12.0, "7/32 to 7/16 in"),  # 0.197 and 0.472: 7/32 is 0.219, 15/32 would be finer than a person says
        (0.3, 1.2, "1/64 to 3/64 in"),  # 0.0118 and 0.0472
        (-4.0, 6.0, "-5/32 to 7/32 in"),  # -0.1575 and 0.236
        (0.0, 40.0, "0 to 1 1/2 in"),
        (150.0, 450.0, "6 to 17 in"),
        (0.5, 0.6, "0.02 to 0.023 in"),  # no two marks lie within
        # in sixteenths from 1/4 in up, in 32nds from 1/16 in up, in 64ths below
        (6.40, 20.0, "5/16 to 3/4 in"),  # 0.252: 9/32 would be nearer; 0.787
        (5.20, 20.0, "7/32 to 3/4 in"),  # 0.205: 1/4 is the next sixteenth
        (1.62, 20.0, "3/32 to 3/4 in"),  # 0.0638: 5/64 would be nearer
        (1.70, 20.0, "3/32 to 3/4 in"),  # 0.0669
        (0.90, 20.0, "3/64 to 3/4 in"),  # 0.0354: 1/16 is the next 32nd
        (0.30, 1.45, "1/64 to 3/64 in"),  # 0.0571: 1/32 is the next 32nd
    ],
)
def test_from_one_mark_of_a_tape_to_another(low: float, high: float, expected: str) -> None:
    assert span(low, high, "mm", "inch") == expected


@settings(max_examples=100)
@given(st.floats(-500, 500), st.floats(0.15, 3))
def test_both_ends_of_a_span_lie_within_it(low: float, share: float) -> None:
    """Ranges at least as wide as 15 % of what they begin with."""
    high = low + share * max(abs(low), 2.0)
    said_ends = span(low, high, "mm", "inch").removesuffix(" in").split(" to ")
    least, most = (parse(f"{end} in", "length", "inch") for end in said_ends)
    assert low - 1e-6 <= least <= most <= high + 1e-6
