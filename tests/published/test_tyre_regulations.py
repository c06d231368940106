"""49 CFR 571.110, tyre and rim selection, read as regulation text: S4.4.1(a) rim on the maker's list; S4.2.2.2
a passenger-car tyre on a truck carries its rating divided by 1.10. UN R30 footnote 5, as quoted elsewhere: a rim code
is x 25.4 mm. The list of rims is one maker's data sheet.
"""

import pytest

from rules.checks.wheel_end.carries import IN_HAND, tyre_load
from rules.checks.wheel_end.fits import tyre_rim_diameter, tyre_rim_width
from rules.judging.trade import trade
from rules.measure.marks import read_tyre_mark

# One maker's approved rims for LT285/75R16, all-terrain: 7.5 to 9.5 in.
LEAST, MOST = 7.5 * 25.4, 9.5 * 25.4


@pytest.mark.parametrize(
    ("inches", "verdict"), [(7.0, "stop"), (7.5, "good"), (8.0, "good"), (9.5, "good"), (10.0, "stop")]
)
def test_the_rim_must_be_on_the_tyre_makers_list(inches: float, verdict: str) -> None:
    assert tyre_rim_width(inches * 25.4, LEAST, MOST).verdict == verdict


def test_the_rim_rule_is_quoted_with_its_clause() -> None:
    for name in ("tyre-rim-width", "tyre-rim-diameter"):
        note = trade().checks[name].note
        assert "49 CFR 571.110 S4.4.1(a)" in note.source and note.grade == "standard"


def test_a_16_in_tyre_is_never_good_on_a_16_5_in_rim() -> None:
    mark = read_tyre_mark("LT265/75R16")
    assert tyre_rim_diameter(mark, mark, 16.5 * 25.4).verdict == "stop"
    assert tyre_rim_diameter(mark, mark, 406.4).verdict == "good"


def test_a_passenger_tyre_is_told_of_its_derating_and_a_light_truck_tyre_is_not() -> None:
    passenger, truck = read_tyre_mark("P265/70R16 111S"), read_tyre_mark("LT265/75R16 123/120Q")
    assert "divided by 1.10" in tyre_load(1090.0, 500.0, None, passenger, passenger, IN_HAND).text
    assert "1.10" not in tyre_load(1550.0, 500.0, None, truck, truck, IN_HAND).text
