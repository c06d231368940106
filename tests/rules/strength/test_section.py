"""Sections against hand calculation and against figures made with sectionproperties 3.10.2 (finite elements).

The library draws many packages with it, so its figures stand here as literals; meshes of 1 to 2 mm, corners of 32 points.
"""

from math import pi

import pytest

from rules.graph.results import OutsideRange
from rules.strength.opening import twist_past_opening
from rules.strength.section import (
    NO_HOLES,
    Holes,
    Section,
    bending_stress,
    box_on_plate,
    channel_on_plate,
    flat_plate,
    hollow_rectangle,
    round_bar,
    round_tube,
    tube_on_plate,
)

PLATE = flat_plate(120.0, 10.0)

# section; area, inertia_u, inertia_v, torsion constant by sectionproperties 3.10.2; how close
FINITE_ELEMENTS = [
    (flat_plate(60.0, 10.0), 600.0, 5000.0, 180_000.0, 17_899.51, 1e-4),
    (PLATE, 1200.0, 10_000.0, 1_440_000.0, 37_899.49, 1e-4),
    (hollow_rectangle(60.0, 40.0, 4.0), 736.0, 178_005.33, 345_045.33, 369_332.09, 0.04),
    (hollow_rectangle(60.0, 40.0, 4.0, 8.0), 694.73, 162_778.88, 309_806.73, 367_703.07, 0.004),
    (round_tube(42.0, 5.0), 580.96, 101_191.85, 101_191.85, 202_383.71, 0.001),
    (channel_on_plate(PLATE, 60.0, 40.0, 4.0), 1728.0, 471_390.67, 1_738_176.0, 642_747.9, 0.07),
    (box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0), 1936.0, 473_129.30, 1_785_045.33, 653_318.3, 0.40),
]


@pytest.mark.parametrize("section, area, inertia_u, inertia_v, torsion, close", FINITE_ELEMENTS)
def test_a_section_is_that_of_a_finite_element_program(
    section: Section, area: float, inertia_u: float, inertia_v: float, torsion: float, close: float
) -> None:
    assert section.area == pytest.approx(area, rel=1e-3)
    assert section.inertia_u == pytest.approx(inertia_u, rel=1e-3)
    assert section.inertia_v == pytest.approx(inertia_v, rel=1e-3)
    assert torsion * (1 - close) <= section.torsion_constant <= torsion * 1.002  # never much stiffer than it is


def test_the_centroid_of_a_box_on_a_plate_by_hand() -> None:
    # plate 1200 mm2 at 5, box 2400 - 52 x 32 = 736 mm2 at 30: (6000 + 22 080) / 1936
    assert box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0).centroid == pytest.approx(14.5041, abs=1e-4)
    assert box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0).reach_v == pytest.approx(35.4959, abs=1e-4)  # of 50


def test_a_tube_on_a_plate_by_hand() -> None:
    # tube pi (400 - 256) = 452.389 at 30; plate 1200 at 5; middle (13 571.68 + 6000) / 1652.389 = 11.8445
    # own: pi/4 (160 000 - 65 536) = 74 192.0 and 10 000; moved: 452.389 x 18.1555^2 = 149 117, 1200 x 6.8445^2 = 56 217
    section = tube_on_plate(PLATE, 40.0, 4.0)
    assert section.centroid == pytest.approx(11.8445, abs=1e-4)
    assert section.inertia_u == pytest.approx(289_526, rel=1e-4)


def test_real_corners_take_metal_away_where_it_works_hardest() -> None:
    sharp, rolled = hollow_rectangle(60.0, 40.0, 4.0), hollow_rectangle(60.0, 40.0, 4.0, 8.0)
    assert sharp.modulus_v == pytest.approx(11_501.51, abs=0.01)
    assert rolled.modulus_v == pytest.approx(
        10_329, rel=2e-4
    )  # 10 321 by coarser finite elements: sharp reads 11 % high
    assert sharp.modulus_v / rolled.modulus_v == pytest.approx(1.1135, abs=1e-3)


def test_holes_and_an_opening_in_a_plate_by_hand() -> None:
    # 100 x 10, opening 40, two holes of 8 at 80 apart: 44 of 100 left. Upright axis: 10/12 (1e6 - 64 000) = 780 000,
    # less 2 x 80 x (1600 + 64/12) = 256 853
    section = flat_plate(100.0, 10.0, 40.0, Holes(8.0, (40.0,)))
    assert section.area == pytest.approx(440.0)
    assert section.inertia_u == pytest.approx(44 * 1000 / 12)
    assert section.inertia_v == pytest.approx(523_146.7, abs=0.1)


def test_bolt_holes_through_a_box_weaken_it() -> None:
    whole = box_on_plate(PLATE, 80.0, 40.0, 4.0, 8.0)
    drilled = box_on_plate(PLATE, 80.0, 40.0, 4.0, 8.0, Holes(12.0, (25.0,)))
    assert whole.area - drilled.area == pytest.approx(2 * 2 * 12 * 4)  # two holes, two faces
    assert drilled.inertia_u < whole.inertia_u and drilled.inertia_v < whole.inertia_v
    channel = channel_on_plate(PLATE, 80.0, 40.0, 4.0)
    assert channel.area - channel_on_plate(PLATE, 80.0, 40.0, 4.0, Holes(12.0, (25.0,))).area == pytest.approx(
        2 * 12 * 4
    )


def test_one_hole_in_the_middle_and_a_pair_by_hand() -> None:
    # 100 x 10 less holes of 8 at 0 and 30 either side: 76 left; 10/12 x 1e6, less 8 x 10 (8^2/12 x 3 + 2 x 900) = 145 280
    section = flat_plate(100.0, 10.0, 0.0, Holes(8.0, (0.0, 30.0)))
    assert section.area == pytest.approx(760.0)
    assert section.inertia_v == pytest.approx(833_333.33 - 145_280, abs=0.1)


def test_a_box_cut_by_the_bore_loses_the_face_it_goes_through() -> None:
    """Box 60 x 40 x 4 on 120 x 10, sharp, bore 30: each face loses 30 x 4 = 120 mm2; by hand about the back's own level."""
    whole = box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0)
    front, both = (box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0, NO_HOLES, 30.0, back) for back in (0.0, 30.0))
    assert (whole.area - front.area, whole.area - both.area) == pytest.approx((120.0, 240.0))
    # 1936 x 14.504132 = 28 080; less 120 at 12 and 120 at 48: 20 880 over 1696 is 12.311321
    assert both.centroid == pytest.approx(12.311321, abs=1e-5)
    # 473 129.30 + 1936 (14.504132 - 12.311321)^2 - 120 (0.311321^2 + 35.688679^2) - 2 x 120 x 16 / 12
    assert both.inertia_u == pytest.approx(473_129.30 + 9309.15 - 11.63 - 152_841.82 - 320, abs=1.0)
    assert both.shear_u == PLATE.shear_u == front.shear_u
    gone = box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0, NO_HOLES, 0.0, 500.0)
    assert whole.area - gone.area == pytest.approx(60 * 4 + 2 * 4 * 32)  # the face and both walls


def test_a_bore_through_a_beam_takes_its_walls_bit_by_bit() -> None:
    """Box 60 x 40 x 4, 52 between its walls: a bore of 56 takes 2 of each, 32 deep, 128 mm2, beside 56 x 4 of each face.

    About the upright line: (60^3 - 56^3) x 4 / 12 for each face is left, and (60^3 - 56^3) x 32 / 12 of the walls. A channel's
    walls are 36 deep: 144 beside 224.
    """
    whole = box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0)
    half = box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0, NO_HOLES, 56.0, 56.0)
    assert whole.area - half.area == pytest.approx(2 * 224 + 128)
    assert half.inertia_v - PLATE.inertia_v == pytest.approx((60**3 - 56**3) * 40 / 12)
    assert half.shear_v == pytest.approx(whole.shear_v / 2)
    sections = [box_on_plate(PLATE, 60.0, 40.0, 4.0, 0.0, NO_HOLES, gap, gap) for gap in (51.99, 52.0, 52.01, 59.99)]
    assert sections[0].area - sections[2].area < 1.0 and sections[0].shear_v - sections[2].shear_v < 2.0
    assert sections[3].area - PLATE.area < 1.0
    cut, channel = (channel_on_plate(PLATE, 60.0, 40.0, 4.0, NO_HOLES, back) for back in (56.0, 0.0))
    assert channel.area - cut.area == pytest.approx(224 + 144)
    assert cut.shear_v == pytest.approx(channel.shear_v / 2)


def test_twist_goes_past_an_opening_by_bending_the_strips_beside_it() -> None:
    """Strip 30 x 10, 18 long between its ends, 3000 N across: M = 3000 x 9 = 27 000, Z = 1500. No strip, no way round."""
    assert 480_000 * twist_past_opening(2400.0, 60.0, 40.0, 30.0, 10.0) == pytest.approx(18.0)
    with pytest.raises(OutsideRange, match="no strip"):
        twist_past_opening(2400.0, 60.0, 60.0, 0.0, 10.0)


def test_bolt_holes_through_both_faces_of_a_box_by_hand() -> None:
    """Two holes of 12, 50 apart, through walls of 4 whose middles stand 12 and 48 from the plate's face: 96 mm2 a face.

    Upright axis: 2 x 96 x (25^2 + 12^2 / 12) = 122 304. The other: about the plate's face each takes 96 x 4^2 / 12 = 128 and
    96 x 12^2 = 13 824 or 96 x 48^2 = 221 184; then about the middle of what is left.
    """
    whole = box_on_plate(PLATE, 80.0, 40.0, 4.0, 8.0)
    drilled = box_on_plate(PLATE, 80.0, 40.0, 4.0, 8.0, Holes(12.0, (25.0,)))
    assert whole.inertia_v - drilled.inertia_v == pytest.approx(122_304)
    moment = whole.area * whole.centroid - 96 * 12 - 96 * 48
    assert drilled.centroid == pytest.approx(moment / (whole.area - 192))
    about_face = whole.inertia_u + whole.area * whole.centroid**2 - 2 * 128 - 13_824 - 221_184
    assert drilled.inertia_u == pytest.approx(about_face - drilled.area * drilled.centroid**2)


def test_shear_of_simple_sections_by_hand() -> None:
    assert PLATE.shear_u == PLATE.shear_v == pytest.approx(800.0)  # 1.5 V / A
    assert round_bar(20.0).shear_u == pytest.approx(pi * 100 * 3 / 4)  # 4/3 V / A
    assert round_tube(42.0, 0.01).shear_v == pytest.approx(round_tube(42.0, 0.01).area / 2, rel=1e-3)  # thin: 2 V / A
    # 60 x 40 x 4 on edge: Q = (60 x 1600 - 52 x 1024)/8 = 5344, I = 178 005.3, b = 8
    assert hollow_rectangle(60.0, 40.0, 4.0).shear_v == pytest.approx(178_005.33 * 8 / 5344, rel=1e-6)


def test_a_round_section_bends_as_a_resultant_and_a_flat_one_corner_by_corner() -> None:
    bar = round_bar(20.0)  # 785.398 mm3
    assert bending_stress(bar, 300_000.0, -400_000.0) == pytest.approx(500_000 / 785.398, rel=1e-6)
    flat = flat_plate(60.0, 10.0)  # 1000 and 6000 mm3
    assert bending_stress(flat, -50_000.0, 60_000.0) == pytest.approx(50 + 10)


@pytest.mark.parametrize(
    "no_metal",
    [
        lambda: flat_plate(60.0, 0.0),
        lambda: flat_plate(60.0, 10.0, 60.0),
        lambda: flat_plate(60.0, 10.0, 40.0, Holes(10.0, (25.0,))),
        lambda: hollow_rectangle(60.0, 40.0, 20.0),
        lambda: hollow_rectangle(60.0, 40.0, 4.0, 21.0),
        lambda: round_tube(40.0, 21.0),
        lambda: channel_on_plate(PLATE, 8.0, 40.0, 4.0),
    ],
)
def test_a_section_without_metal_is_refused(no_metal: object) -> None:
    with pytest.raises(OutsideRange, match="no metal"):
        no_metal()  # type: ignore[operator]


def test_an_opening_as_wide_as_the_box_leaves_its_face_on_the_plate_alone() -> None:
    """Plate 120 x 10 and a face 60 x 4 on it: 1200 mm2 at 5 and 240 at 12, together at 6.1667. About that 10 000 + 1200 x
    1.1667^2 and 320 + 240 x 5.8333^2, 20 120 mm4. 4 mm less wide, 2 x 2 mm of walls 32 deep are left, 128 mm2 at 30.
    """
    plate = flat_plate(120.0, 10.0)
    whole = box_on_plate(plate, 60.0, 40.0, 4.0, 0.0, back_gap=60.0)
    assert (whole.area, whole.centroid, whole.inertia_u) == pytest.approx((1440.0, 6.16667, 20_120.0), rel=1e-5)
    less = box_on_plate(plate, 60.0, 40.0, 4.0, 0.0, back_gap=56.0)
    # 128 mm2 of walls and 2 x 2 x 4 = 16 mm2 of the far face, at 48
    centroid = (1440 * 6.16667 + 128 * 30 + 16 * 48) / 1584
    assert (less.area, less.centroid) == pytest.approx((1584.0, centroid), rel=1e-5)
