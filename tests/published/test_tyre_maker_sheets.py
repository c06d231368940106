"""Tyre size marks against tyre makers' data sheets.

Diameters in inches as printed. All-terrain and mud-terrain rows: one maker's "Sizes and Specifications" sheets, read in
stored copies. Flotation rows: another maker's web page for one pattern, 781, 832 and 883 mm. Rounded to 0.1 in in print.
Other sizes: plain arithmetic, rim code x 25.4 and two walls of width x aspect.
"""

import pytest

from rules.measure.marks import read_tyre_mark

ALL_TERRAIN = [
    ("LT235/85R16", 31.7),
    ("LT245/75R16", 30.5),
    ("LT265/75R16", 31.7),
    ("LT285/75R16", 32.8),
    ("LT315/75R16", 34.6),
]
MUD_TERRAIN = [
    ("LT235/85R16", 32.0),
    ("LT245/75R16", 30.7),
    ("LT265/75R16", 31.8),
    ("LT285/75R16", 33.0),
    ("LT315/75R16", 34.9),
    ("LT315/70R17", 34.57),  # another maker's mud tyre, as quoted in a road test
]
FLOTATION_MEASURED_MM = [
    ("31x10.50R15LT 109Q", 781, 268),
    ("33x12.50R15LT 108Q", 832, 318),
    ("35x12.50R15LT 113Q", 883, 318),
    ("33x12.50R20LT 119Q", 832, 318),
    ("35x12.50R20LT 121Q", 883, 318),
]


@pytest.mark.parametrize(("mark", "printed"), ALL_TERRAIN)
def test_all_terrain_tyres_measure_what_the_mark_says_within_six_hundredths(mark: str, printed: float) -> None:
    assert read_tyre_mark(mark).diameter / 25.4 == pytest.approx(printed, abs=0.06)


@pytest.mark.parametrize(("mark", "printed"), MUD_TERRAIN)
def test_mud_terrain_tyres_stand_over_the_mark_by_15_to_48_hundredths(mark: str, printed: float) -> None:
    assert 0.15 <= printed - read_tyre_mark(mark).diameter / 25.4 <= 0.48


@pytest.mark.parametrize(("mark", "diameter", "width"), FLOTATION_MEASURED_MM)
def test_flotation_tyres_measure_two_to_five_tenths_of_an_inch_under_the_number_on_them(
    mark: str, diameter: float, width: float
) -> None:
    read = read_tyre_mark(mark)
    assert read.flotation
    assert 0.2 <= (read.diameter - diameter) / 25.4 <= 0.5
    assert read.section_width == pytest.approx(width, abs=2)


def test_the_design_rule_on_a_size_without_letters() -> None:
    # By hand: 18 x 25.4 = 457.2, two walls of 245 x 0.55 = 134.75, together 726.7.
    assert read_tyre_mark("245/55-18").diameter == pytest.approx(726.7, abs=0.05)


def test_a_wrong_figure_in_circulation_is_not_reproduced() -> None:
    # By hand: 17 x 25.4 = 431.8, two walls of 220.5, together 872.8. Seen in print as 865.3: not that.
    diameter = read_tyre_mark("LT315/70R17").diameter
    assert diameter == pytest.approx(872.8, abs=1e-6)
    assert abs(diameter - 865.3) > 7


def test_passenger_sizes_by_the_design_rule() -> None:
    # P225/70R16: 406.4 + 2 x 157.5; P265/70R16 (an example size of 49 CFR 571.110): 406.4 + 2 x 185.5.
    assert read_tyre_mark("P225/70R16").diameter == pytest.approx(721.4, abs=1e-6)
    assert read_tyre_mark("P265/70R16").diameter == pytest.approx(777.4, abs=1e-6)
