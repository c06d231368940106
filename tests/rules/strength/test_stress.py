"""Combined stress, and the level cut, by hand."""

import pytest

from rules.strength.section import flat_plate, round_bar
from rules.strength.stress import SectionLoads, level_cut, section_stress, von_mises


def test_equal_pull_all_round_in_the_plane_is_that_pull_and_pure_shear_root_three_of_it() -> None:
    assert von_mises(70.0, 70.0, 0.0) == pytest.approx(70.0)
    assert von_mises(0.0, 0.0, 10.0) == pytest.approx(17.3205, abs=1e-4)


# 100 x 10: area 1000, 1666.67 and 16 666.7 mm3, shear area 666.67
PARTS = [
    (SectionLoads(axial=-50_000.0), 50.0),
    (SectionLoads(moment_u=-100_000.0), 60.0),
    (SectionLoads(moment_v=500_000.0), 30.0),
    (SectionLoads(shear_u=-2000.0), 3.0 * 3**0.5),
    (SectionLoads(shear_v=4000.0), 6.0 * 3**0.5),
    (SectionLoads(axial=50_000.0, moment_u=-100_000.0, moment_v=-500_000.0), 140.0),
]


@pytest.mark.parametrize("loads, by_hand", PARTS)
def test_each_part_of_the_load_and_their_sum(loads: SectionLoads, by_hand: float) -> None:
    assert section_stress(flat_plate(100.0, 10.0), loads) == pytest.approx(by_hand)


def test_twist_of_a_round_bar_and_of_a_plate() -> None:
    # 16 T / (pi d3) = 63.662 for 100 N m in 20 mm; 3 T / (w t2 x ...) in a plate, Roark: T / (0.3130 w t2) at 10 : 1
    assert section_stress(round_bar(20.0), SectionLoads(twist=100_000.0)) == pytest.approx(63.662 * 3**0.5, rel=1e-4)
    plate = section_stress(flat_plate(100.0, 10.0), SectionLoads(twist=100_000.0))
    assert plate == pytest.approx(100_000 / (0.3123 * 100 * 100) * 3**0.5, rel=5e-3)  # Timoshenko's table: 0.312


def test_a_cut_by_hand() -> None:
    # cut at (0, -60, 450); pivot at (-20, -120, 530) pushed (1000, -2000, 300)
    # arm (-20, -60, 80): x: -60 x 300 - 80 x -2000 = 142 000; y: 80 x 1000 + 20 x 300 = 86 000; z: 40 000 + 60 000
    cut = level_cut((0.0, -60.0, 450.0), [((-20.0, -120.0, 530.0), (1000.0, -2000.0, 300.0))])
    assert cut == SectionLoads(300.0, 1000.0, -2000.0, 142_000.0, 86_000.0, 100_000.0)


def test_what_acts_adds_up() -> None:
    push = ((0.0, 0.0, 100.0), (0.0, 50.0, 0.0))
    back = ((0.0, 0.0, 40.0), (0.0, -50.0, 0.0))
    assert level_cut((0.0, 0.0, 0.0), [push, back]) == SectionLoads(moment_u=-3000.0)  # -5000 + 2000
