"""Pins and lugs by hand, and the two wrong formulas this program must not follow."""

import pytest

from rules.graph.results import OutsideRange
from rules.strength.pins import cantilever_stress, lug_limits, pin_moment, shear_stress, tear_out_area
from rules.strength.section import round_bar
from rules.strength.stress import SectionLoads, section_stress


def test_single_shear_is_exactly_twice_double_shear() -> None:
    assert shear_stress(10_000.0, 16.0, 1) == 2 * shear_stress(10_000.0, 16.0, 2)


# A ball stud as a cantilever, 10 kN at 25 mm: derived by hand from 32 F L / (pi d3)
@pytest.mark.parametrize("diameter, stress", [(18.0, 436.639), (20.0, 318.310), (22.0, 239.151)])
def test_a_stud_as_a_cantilever(diameter: float, stress: float) -> None:
    assert cantilever_stress(10_000.0, 25.0, diameter) == pytest.approx(stress, abs=1e-3)


def test_bending_of_a_pin_by_hand_grows_with_the_gap() -> None:
    # 10 kN, ball 20, lug 8. Double: 5 kN at 4 + gap outside the ball's edge, and a quarter of the ball: 45, 70 N m
    assert pin_moment(10_000.0, 20.0, 0.0, 8.0, True) == pytest.approx(45_000.0)
    assert pin_moment(10_000.0, 20.0, 5.0, 8.0, True) == pytest.approx(70_000.0)
    assert pin_moment(10_000.0, 20.0, 0.0, 8.0, False) == pytest.approx(100_000.0)
    assert pin_moment(10_000.0, 20.0, 5.0, 8.0, False) == pytest.approx(150_000.0)


def test_tear_out_takes_the_hole_away_and_does_not_add_it() -> None:
    # Found printed as t (2 e + 0.766 d) with e to the hole's centre: the planes would be longer than the metal.
    edge, diameter, thickness = 18.0, 12.0, 6.0
    assert tear_out_area(edge, diameter, thickness) == pytest.approx(6 * (36 - 9.192))
    assert tear_out_area(edge, diameter, thickness) < 2 * thickness * edge < thickness * (2 * edge + 0.766 * diameter)


def test_tear_out_has_its_range() -> None:
    assert tear_out_area(18.0, 12.0, 6.0) > 0  # 1.5 d: just inside
    with pytest.raises(OutsideRange, match=r"1\.5 hole diameters"):
        tear_out_area(17.9, 12.0, 6.0)


def test_a_knuckle_joint_for_150_kN_is_not_sized_for_15() -> None:
    # A worked joint in print sizes its rod 16 mm at 80 MPa for "150 kN": it was solved with 15 000 N. 150 kN needs a rod of
    # 48.86 mm, and at 60 MPa in double shear a pin of 39.89 mm.
    assert section_stress(round_bar(48.86), SectionLoads(axial=150_000.0)) == pytest.approx(80.0, rel=1e-3)
    assert section_stress(round_bar(16.0), SectionLoads(axial=150_000.0)) > 9 * 80.0
    assert shear_stress(150_000.0, 39.89, 2) == pytest.approx(60.0, rel=1e-3)
    assert shear_stress(150_000.0, 16.0, 2) > 6 * 60.0


def test_the_three_ways_a_lug_gives_by_hand() -> None:
    # 10 kN, yield 250, e 24, d 12, t 6: 250/138.89; 0.57735 x 250 x 232.848/10 000; 250 x 36 x 6/10 000
    assert list(lug_limits(10_000.0, 250.0, 24.0, 12.0, 6.0).values()) == pytest.approx([1.8, 3.36085, 5.4], rel=1e-4)
