"""What flows along the seam of a beam on a plate and what comes in at its end, by hand: box 60 x 40 x 4, sharp, on 120 x 10."""

from math import hypot, sqrt

import pytest

from rules.strength.seam import Seam, SeamForce, flow_of_one_cell, flow_of_two_cells, joint, seams_apart
from rules.strength.section import box_on_plate, flat_plate
from rules.strength.stress import SectionLoads


def box_seam(cell: float = 0.0) -> Seam:
    plate = flat_plate(120.0, 10.0)
    return joint(box_on_plate(plate, 60.0, 40.0, 4.0, 0.0), plate, 60.0, cell)


def test_shear_flows_evenly_to_both_runs_and_twist_round_the_cell() -> None:
    """I 473 129 mm4, Q 1200 x 9.504 = 11 404.8: 20 000 x 11 404.8 / 473 129 / 2 = 241.05; and 100 000 / 4000 = 25."""
    assert box_seam().flow(SectionLoads(shear_v=-20_000.0)) == pytest.approx((241.05, 0.0), abs=0.01)
    assert box_seam(1 / 4000).flow(SectionLoads(twist=-100_000.0)) == (25.0, 0.0)


def test_bending_at_the_beam_s_end_comes_in_along_the_runs_and_square_to_them() -> None:
    """2 000 000 N mm over 40 mm. Pull in the box: x 736 x 15.496 / 473 129 = 48 211 N, over 80 mm of runs 602.6.

    The box's own bending 2e6 x 178 005 / 473 129 = 752 462, and its pull 20 off the runs 964 220: 1 716 682 pulling over 20 mm of
    two runs and pushing over 20 more: x 2 / 1600 = 2145.9.
    """
    found = box_seam().brought_in(SectionLoads(moment_u=2_000_000.0), 40.0, 0.0)
    assert found == pytest.approx((602.6, 2145.9), rel=2e-4)


def test_shear_at_the_beam_s_end_is_what_the_beam_takes_of_it() -> None:
    """20 000 N: the box takes (178 005 + 11 404.8 x 20) / 473 129 = 0.85833 of it: 17 167 N, over 80 mm 214.6.

    Cut 20 above the middle of the end, it has that lever: 343 332 x 2 / 1600 = 429.2 more. A moment that undoes it is taken off:
    2145.9 / 5 = 429.2 for 400 000 N mm.
    """
    assert box_seam().brought_in(SectionLoads(shear_v=20_000.0), 40.0, 0.0) == pytest.approx((0.0, 214.6), rel=3e-4)
    lever = box_seam().brought_in(SectionLoads(shear_v=20_000.0), 40.0, 20.0)
    assert lever == pytest.approx((0.0, 214.6 + 429.2), rel=3e-4)
    balanced = box_seam().brought_in(SectionLoads(shear_v=20_000.0, moment_u=400_000.0), 40.0, 20.0)
    assert balanced.square == pytest.approx(214.6, rel=2e-3)
    assert balanced.along == pytest.approx(602.6 / 5, rel=2e-4)


def test_pull_twist_and_bending_in_the_plate_s_own_plane_at_the_beam_s_end() -> None:
    """19 360 N of pull: 736 / 1936 of it, 7360 N: 92 along; 20 off the runs, 147 200 N mm: x 2 / 1600 = 184 square.

    120 000 N mm of twist: 120 000 / (40 x 60) = 50 square, and what flows round a cell of 1000 mm2: 60 along.
    1 000 000 about the box's depth: its share (40 x 60^3 - 32 x 52^3) / 12 = 345 045 over that and 1 440 000: 193 301. Two runs
    of 40, 60 apart: 40 x 60^2 / 2 + 40^3 / 6 = 82 667: / that x 30 = 70.15 along and x 20 = 46.77 from one run to the other.
    """
    assert box_seam().brought_in(SectionLoads(axial=19_360.0), 40.0, 0.0) == pytest.approx((92.0, 184.0))
    twisted = box_seam(1 / 2000).brought_in(SectionLoads(twist=120_000.0), 40.0, 0.0)
    assert twisted == pytest.approx((60.0, 50.0))
    turned = box_seam().brought_in(SectionLoads(moment_v=1_000_000.0), 40.0, 0.0)
    assert turned == pytest.approx((hypot(70.15, 46.77), 0.0), rel=1e-3)


def test_the_two_add_as_vectors_and_a_part_pulled_square_to_its_face_holds_more() -> None:
    """AISC 360-16 J4 (from memory): 0.60 of yield in shear, all of it in pull. 300 along, 400 square: 500; 300 and 240: 384.2."""
    force = SeamForce(300.0, 400.0)
    assert force.in_the_weld == 500.0
    assert force.in_the_part == pytest.approx(384.187, abs=1e-3)


def test_two_like_cells_share_the_flow_and_nothing_runs_between_them() -> None:
    """By symmetry T / (2 x 2 A): a narrow cell of 60 x (4 + 16) / 2 = 600 mm2 with 60/4 + 60/16 round it, the beam's alike."""
    assert flow_of_two_cells(600.0, 18.75, 60.0, 4.0, 16.0) == pytest.approx(1 / 2400)


def test_a_beam_s_wall_on_the_plate_that_is_next_to_nothing_leaves_one_cell() -> None:
    """Bredt for the whole: 56 x 36 of the box and 56 x 5 to the plate's middle, 2296 mm2; a channel's flow."""
    thin = 1e-7
    found = flow_of_two_cells(56.0 * 36.0, 128.0 / 4.0 + 56.0 / thin, 56.0, thin, 10.0)
    assert found == pytest.approx(flow_of_one_cell(2296.0), rel=1e-5) == pytest.approx(1 / 4592, rel=1e-5)


def test_a_plate_like_paper_carries_none_of_the_flow() -> None:
    assert flow_of_two_cells(2016.0, 46.0, 56.0, 4.0, 1e-9) < 1e-9 * flow_of_one_cell(2016.0) * 1e3


def test_the_runs_stand_where_the_fillet_ends_on_a_round_corner() -> None:
    """Radius 8, leg 4: 60 - 16 + 2 sqrt(64 - 16) = 57.856; a tube of 40 with a leg of 4: 2 sqrt(400 - 256) = 24."""
    assert seams_apart(60.0, 8.0, 4.0) == pytest.approx(44.0 + 2 * sqrt(48.0))
    assert seams_apart(40.0, 20.0, 4.0) == pytest.approx(24.0)
    assert seams_apart(40.0, 20.0, 30.0) == 40.0  # never farther out than the beam
