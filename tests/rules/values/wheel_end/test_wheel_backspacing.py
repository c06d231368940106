"""Offset and backspacing, by arithmetic.

Offset is counted from the middle between the lips, backspacing from the inboard lip; that a lip stands 1/2 in out on each
side of the beads is common practice, no source. 9 in between the beads is then 10 in over all, and half of that is 5 in.
"""

import pytest

from rules.checks.wheel_end.fits import AGREEING, wheel_numbers_agree
from rules.values.wheel_end.wheel_stack import wheel_backspacing, wheel_offset, wheel_overall_width

INCH = 25.4


def test_a_9_in_wheel_of_nought_offset_has_5_in_of_backspacing() -> None:
    overall = wheel_overall_width(None, 9 * INCH)
    assert overall == pytest.approx(10 * INCH)
    assert wheel_backspacing(None, 0.0, overall) == pytest.approx(5 * INCH)
    assert wheel_offset(None, 5 * INCH, overall) == pytest.approx(0.0, abs=1e-9)


def test_plus_offset_puts_the_mounting_face_outboard_and_needs_more_backspacing() -> None:
    assert wheel_offset(None, 5.5 * INCH, 10 * INCH) == pytest.approx(0.5 * INCH)
    assert wheel_offset(None, 4.5 * INCH, 10 * INCH) == pytest.approx(-0.5 * INCH)


def test_a_backspacing_that_leaves_the_flanges_out_is_half_an_inch_off_and_is_named() -> None:
    # "An 8 in wheel is 4 in each side": its lips stand 9 in apart, so 4 in of backspacing is 1/2 in negative offset.
    judgement = wheel_numbers_agree(0.0, 4 * INCH, 9 * INCH, AGREEING)
    assert judgement.verdict == "stop"
    assert judgement.figures["difference"][0] == pytest.approx(12.7)
    assert "nominal, bead-to-bead width" in judgement.text
