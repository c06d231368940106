"""Fillet welds in Shigley's Mechanical Engineering Design.

Ex. 9-2 (9th ed.); Tables 9-1, 9-2, 9-4 and 9-6; Probs 9-1, 9-2, 9-4 (10th ed. solutions), 9-5 (8th ed. solution). Each was
worked again by hand. Of Table 9-6 the rows 3/8 and 5/16 were seen, in solutions; the others are 0.707 x 0.30 x 70 x leg by
hand. The ring in bending, pi r3, is from memory, and half its figure in twist. Prob. 9-5 prints 9.22 F from rounded steps;
exact is 9.236 F. Prob. 9-8 (J 142 cm4, 2.82 F) is left out: the sizes in its figure could not be seen, and its printed 49.2
kN is not the quotient printed beside it (49.6).
"""

from math import pi

import pytest

from rules.strength.weld import greatest_force, limits, one_line, rectangle, ring, throat, two_lines

NONE = (0.0, 0.0, 0.0)


def weld_metal(leg: float, electrode: float) -> float:
    """Allowed on a unit of length, in the units given."""
    ways = limits(throat(leg), leg, electrode, 1e9, 1e9)
    return min(way.strength / way.omega for way in ways)


def test_example_9_2() -> None:
    # 3/8 in leg, 2 in on each side, E70: 5.57 kip/in and 22.28 kip against 16.5 kip.
    assert weld_metal(3 / 8, 70.0) == pytest.approx(5.57, abs=0.005)
    assert 4 * weld_metal(3 / 8, 70.0) == pytest.approx(22.28, rel=0.005)
    assert 16.5 / greatest_force(two_lines(2.0, 1.0), (16.5, 0.0, 0.0), NONE) == pytest.approx(4.0)


@pytest.mark.parametrize(
    ("leg", "kip_an_inch"),
    [(1, 14.85), (3 / 4, 11.14), (5 / 8, 9.28), (1 / 2, 7.42), (3 / 8, 5.57), (5 / 16, 4.64), (1 / 4, 3.71),
     (3 / 16, 2.78), (1 / 8, 1.86)],
)  # fmt: skip
def test_table_9_6_for_e70(leg: float, kip_an_inch: float) -> None:
    assert weld_metal(leg, 70.0) == pytest.approx(kip_an_inch, abs=0.006)


@pytest.mark.parametrize(("yields", "tensile", "allowed"), [(32.0, 58.0, 12.8), (27.5, 50.0, 11.0)])
def test_table_9_4_beside_the_weld_for_1018_and_1015(yields: float, tensile: float, allowed: float) -> None:
    ways = limits(1e9, 1.0, 1e9, yields, tensile)
    assert min(way.strength / way.omega for way in ways) == pytest.approx(allowed, rel=1e-9)


def test_table_9_4_tensile_strength_decides_where_yield_is_close_to_it() -> None:
    ways = limits(1e9, 1.0, 1e9, 90.0, 100.0)
    assert min(way.strength / way.omega for way in ways) == pytest.approx(30.0)


@pytest.mark.parametrize(
    ("run", "apart", "leg", "allowed", "force", "tolerance"),
    [
        (50.0, 50.0, 5.0, 140.0, 49_500.0, 0.005),  # 9-1, N and mm
        (2.0, 2.0, 5 / 16, 25.0, 22.1, 0.005),  # 9-2, kip and in
        (4.0, 2.0, 5 / 16, 25.0, 44.2, 0.005),  # 9-4
    ],
)
def test_probs_9_1_9_2_9_4_two_runs_in_plain_shear(
    run: float, apart: float, leg: float, allowed: float, force: float, tolerance: float
) -> None:
    found = allowed * throat(leg) / greatest_force(two_lines(run, apart), (1.0, 0.0, 0.0), NONE)
    assert found == pytest.approx(force, rel=tolerance)


def test_prob_9_5_two_runs_twisted() -> None:
    # b = d = 2 in, h = 5/16 in, arm 7 in.
    lines, size = two_lines(2.0, 2.0), throat(5 / 16)
    assert lines.about_normal == pytest.approx(5.333, abs=0.0005)
    assert size * lines.about_normal == pytest.approx(1.18, abs=0.005)
    primary = greatest_force(lines, (0.0, -1.0, 0.0), NONE) / size
    assert primary == pytest.approx(1.13, abs=0.005)
    stress = greatest_force(lines, (0.0, -1.0, 0.0), (0.0, 0.0, -7.0)) / size
    assert stress == pytest.approx(9.22, rel=0.005)
    assert stress == pytest.approx(9.236, abs=0.0005)
    assert 20.0 / stress == pytest.approx(2.17, abs=0.005)
    assert 11.0 / stress == pytest.approx(1.19, abs=0.005)


B, D = 7.0, 3.0


def test_tables_9_1_and_9_2_unit_properties() -> None:
    line = one_line(D, 0.0)
    assert (line.length, line.about_cross, line.about_normal) == pytest.approx((3.0, 2.25, 2.25))  # d^3 / 12 = 27 / 12
    pair = two_lines(D, B)
    assert pair.length == 6.0
    assert pair.about_normal == pytest.approx(3 * (3 * 49 + 9) / 6)  # d (3 b^2 + d^2) / 6
    assert pair.about_cross == pytest.approx(27 / 6)  # d^3 / 6, the runs bent along their length
    assert two_lines(B, D).about_run == pytest.approx(7 * 9 / 2)  # b d^2 / 2, the runs pulled and pushed
    box = rectangle(B, D)
    assert box.length == 20.0
    assert box.about_normal == pytest.approx(1000 / 6)  # (b + d)^3 / 6
    assert box.about_run == pytest.approx(9 * (3 * 7 + 3) / 6)  # d^2 (3 b + d) / 6
    cup = ring(4.0)
    assert cup.length == pytest.approx(4 * pi)
    assert cup.about_normal == pytest.approx(2 * pi * 8)  # 2 pi r^3
    assert cup.about_run == pytest.approx(pi * 8)


def test_table_9_1_figures_that_a_weld_group_library_also_gives() -> None:
    # ezweld 0.2.1, b = 2, d = 3: 2.25, 10.50 and 20.83.
    assert one_line(3.0, 0.0).about_normal == pytest.approx(2.25, abs=0.005)
    assert two_lines(3.0, 2.0).about_normal == pytest.approx(10.50, abs=0.005)
    assert rectangle(2.0, 3.0).about_normal == pytest.approx(20.83, abs=0.005)
