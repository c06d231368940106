"""The plate between the hub bolts by hand: four bolts 60 x 80 mm about the wheel's axis, plate 100 x 10 mm, yield 250 MPa."""

from dataclasses import replace
from itertools import pairwise
from math import cos, pi, sin

import numpy as np
import pytest

from rules.graph.results import OutsideRange
from rules.measure.outline import circle_places, hub_bolt_places
from rules.measure.vectors import Vector, minus
from rules.sheet.upright import Beam, BeamCut
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.margin import Margin
from rules.values.strength.hub_plate import bolt_forces, bolt_group, plate_safety
from rules.values.strength.plate_build import Build
from rules.values.wheel_end.hub_bolts import BoltPlaces

NONE: Vector = (0.0, 0.0, 0.0)
PLACES = Places(
    contact=NONE, wheel_centre=(0.0, 0.0, 400.0), bearing=(0.0, -20.0, 400.0), hub_face=(0.0, 0.0, 400.0),
    mount_face=(0.0, -55.0, 400.0), upper_pivot=(0.0, -60.0, 550.0), lower_pivot=(0.0, -60.0, 250.0),
    tie_rod=(-120.0, -60.0, 370.0),
)  # fmt: skip
PLATE = Build(width=100.0, thickness=10.0, bore=0.0, top=180.0, bottom=180.0, beam="none")
BORED = Build(width=100.0, thickness=10.0, bore=50.0, top=180.0, bottom=180.0, beam="none")


FOUR = BoltPlaces(hub_bolt_places(60.0, 80.0))


def box(width: float, bore: float = 0.0) -> Build:
    return Build(100.0, 10.0, bore, 180.0, 180.0, "box", width, 40.0, 4.0, 0.0)


def safety(
    build: Build, force: Vector = NONE, moment: Vector = NONE, upper: Vector = NONE, lower: Vector = NONE,
    rod: Vector = NONE, root: float = -30.0, bolts: BoltPlaces = FOUR,
    hole: float = 12.0, brake: float = 0.0, rotor: float = -20.0, above: float | None = None,
) -> Margin:  # fmt: skip
    case = CaseLoads("bump", NONE, force, moment, upper, lower, rod, brake)
    return plate_safety(build, 250.0, bolts, hole, root, 125.0, rotor, CornerLoads(PLACES, (case,)), above)


def test_level_at_the_bolts_their_holes_are_taken_out() -> None:
    # Pivot 110 above the row: 110 000 N mm on (100 - 24) x 100/6 = 1266.67 mm3, shear 1000 x 1.5/760. A hub that takes the
    # push away again at the wheel centre: 500 at each row, so that there it is 130 000 on 1666.67
    found = safety(PLATE, force=(0.0, -1000.0, 0.0), upper=(0.0, 1000.0, 0.0))
    bending, shear = 110_000 / 1266.667, 1000 * 1.5 / 760
    assert found == pytest.approx(250 / (bending**2 + 3 * shear**2) ** 0.5, rel=1e-5)
    assert found.limit == "yield at the upper hub bolts"


def test_pushed_between_its_pivots_the_plate_gives_beside_the_bore_and_not_at_the_bolts() -> None:
    # 8000 N at the wheel centre, 4000 back at each pivot: 440 000 N mm from row to row. At a row 440 000/1266.67 = 347; beside a
    # bore of 50: 440 000/(50 x 100/6) = 528 MPa, and no shear there
    pushed = {"force": (0.0, 8000.0, 0.0), "upper": (0.0, -4000.0, 0.0), "lower": (0.0, -4000.0, 0.0)}
    found = safety(BORED, **pushed)  # type: ignore[arg-type]
    assert found == pytest.approx(250 / 528)
    assert found.limit == "yield beside the centre bore"
    whole = safety(PLATE, **pushed)  # type: ignore[arg-type]
    shear = 4000 * 1.5 / 760
    assert whole == pytest.approx(250 / ((440_000 / 1266.667) ** 2 + 3 * shear**2) ** 0.5, rel=1e-5)


def test_tilted_by_the_hub_the_rows_push_and_pull() -> None:
    # 320 N m about the fore-and-aft line, nothing at the pivots: 4000 N at each row, 160 000 N mm at the wheel centre:
    # 96 MPa, shear 4000 x 1.5/1000 = 6
    found = safety(PLATE, moment=(320_000.0, 0.0, 0.0))
    assert found == pytest.approx(250 / (96**2 + 3 * 6**2) ** 0.5)


def test_the_hub_s_lift_tilts_it_by_its_distance_from_the_plate() -> None:
    # 4000 N up, 35 outboard of the face, less the 140 N m that makes: each bolt lifts 1000 and pulls nothing. The upper two
    # stand 5 off the middle of the plate: 2000/1000 + 10 000/1666.67 = 8 MPa
    assert safety(PLATE, force=(0.0, 0.0, 4000.0), moment=(-140_000.0, 0.0, 0.0)) == pytest.approx(250 / 8)


@pytest.mark.parametrize("turned", [1, -1])
def test_what_the_caliper_presses_the_hub_with_bends_the_plate_too(turned: int) -> None:
    # 500 N m at 125 mm: 4000 N, as far out as the bearing. Up: 35 from the plate, 140 N m tilt the rows with 1750 N each, 70 000
    # N mm at the wheel centre, 42 MPa; with the lift 2000/1000 + 10 000/1666.67 = 8. Shear 1750 x 1.5/1000
    by_side = [safety(PLATE, force=(4000 * cos(n * pi / 4), 0.0, 4000 * sin(n * pi / 4))) for n in range(8)]
    assert by_side[2] == pytest.approx(250 / (50**2 + 3 * 2.625**2) ** 0.5)
    assert safety(PLATE, brake=turned * 500_000.0) == pytest.approx(min(by_side))
    # 50 farther out, up: 340 N m, 4250 N a row, 170 000 N mm or 102 MPa
    farther = safety(PLATE, force=(0.0, 0.0, 4000.0), moment=(200_000.0, 0.0, 0.0))
    assert farther == pytest.approx(250 / (110**2 + 3 * 6.375**2) ** 0.5)
    assert safety(PLATE, brake=500_000.0, rotor=30.0) <= farther


def test_turned_by_the_hub_half_of_it_twists_the_plate_level_through_the_spindle() -> None:
    # 200 000 N mm. Whole: Timoshenko's 0.312 w t2 at 10 : 1. Bored: two strips of 25 x 10, 0.258 w t2 each at 2.5 : 1
    turned = (0.0, 0.0, 400_000.0)
    assert safety(PLATE, moment=turned) == pytest.approx(250 / (200_000 / 3120 * 3**0.5), rel=5e-3)
    assert safety(BORED, moment=turned) == pytest.approx(250 / (200_000 / 1290 * 3**0.5), rel=5e-3)


def test_the_worse_half_counts_because_the_caliper_bracket_joins_one_of_them() -> None:
    # 1000 N along the car at one pivot: 150 000 N mm beside the bore, on 10 (100^3 - 50^3)/12/50 = 14 583.3 mm3, shear 3
    by_hand = 250 / ((150_000 / 14_583.333) ** 2 + 3 * 3**2) ** 0.5
    for found in (safety(BORED, upper=(1000.0, 0.0, 0.0)), safety(BORED, lower=(1000.0, 0.0, 0.0))):
        assert found == pytest.approx(by_hand)
        assert found.limit == "yield beside the centre bore"


@pytest.mark.parametrize("root", [30.0, 0.0, -30.0])
def test_the_tie_rod_is_in_one_half_wherever_its_arm_joins(root: float) -> None:
    # A rod of 1000 N along the car, 30 below the wheel centre: 30 000 over 16 666.7 mm3 and more at no row; shear 1.5. Level with
    # the middle of the plate it twists nothing.
    found = safety(PLATE, rod=(1000.0, 0.0, 0.0), root=root)
    assert found == pytest.approx(250 / (1.8**2 + 3 * 1.5**2) ** 0.5)


def test_the_plate_beside_a_narrow_beam_is_bent_by_each_bolt() -> None:
    # 180 N m over two rows 80 apart: 1125 N a bolt; beam 40, so 10 of overhang: 0.509 (1125 + 1125/65) 6/100
    tilted = (180_000.0, 0.0, 0.0)
    stress = 0.509 * (1125 + 1125 / 65) * 6 / 100
    found = safety(box(40.0), moment=tilted)
    assert found == pytest.approx(250 / stress)
    assert found.limit == "yield of the plate beside the beam"
    thickness_inside = safety(box(40.0, bore=20.0), moment=tilted)  # the bore's edge, of the beam's
    assert thickness_inside == pytest.approx(250 / stress)


def test_how_far_a_bolt_stands_beside_a_beam_counts_and_not_how_high() -> None:
    """67.5 N m over two rows 30 apart: 1125 N a bolt again. 10 of overhang and the other bolt 30 off: 0.509 (1125 + 1125/10)."""
    stress = 0.509 * (1125 + 1125 / 10) * 6 / 100
    low = safety(box(40.0), moment=(67_500.0, 0.0, 0.0), bolts=BoltPlaces(hub_bolt_places(60.0, 30.0)))
    assert low == pytest.approx(250 / stress) and low.limit == "yield of the plate beside the beam"


def test_a_bore_that_nears_the_beam_s_edge_ends_what_holds_the_plate_bit_by_bit() -> None:
    """As above, plate 10 thick. Bore 30: half of what holds, 40 from the bolts' rows, 4 overhangs: 1 + 0.825 / (1 + 11.6^2).

    Bore 60: all of it, and the edge ends sqrt(30^2 - 20^2) = 22.36 from the middle, 17.64 from the row: 1 + 1.65 / (1 + 5.116^2).
    """
    tilted = (180_000.0, 0.0, 0.0)
    stress = 0.509 * (1125 + 1125 / 65) * 6 / 100
    for bore, times in ((30.0, 1.006086), (60.0, 1.060724)):
        assert safety(box(40.0, bore=bore), moment=tilted) == pytest.approx(250 / stress / times, rel=1e-4)
    tube = Build(100.0, 10.0, 4.0, 180.0, 180.0, "tube", 60.0, 0.0, 4.0)
    assert safety(replace(tube, bore=30.0), moment=tilted) < safety(tube, moment=tilted)


@pytest.mark.parametrize("beam", ["box", "channel", "tube"])
@pytest.mark.parametrize("cut", ["not cut", "face on the plate", "both faces"])
def test_the_plate_loses_no_more_than_a_little_for_each_tenth_of_a_millimetre_of_bore(beam: Beam, cut: BeamCut) -> None:
    """No cliff where the bore passes a wall's inside, at 32, or its outside: 0.1 mm never costs more than a twentieth.

    Through both faces it goes to nothing at the beam's width, by the square of the strip that is left.
    """
    hit = {"force": (3000.0, -2000.0, 5000.0), "moment": (200_000.0, 0.0, 90_000.0), "upper": (-900.0, 700.0, 0.0)}
    build = Build(100.0, 10.0, 0.0, 180.0, 180.0, beam, 40.0, 40.0, 4.0, 0.0, cut=cut)
    most = 34.0 if cut == "both faces" and beam != "tube" else 60.0
    found = [safety(replace(build, bore=most - tenths / 10), **hit) for tenths in range(round(most * 5))]  # type: ignore[arg-type]
    assert all(wider <= narrower * (1 + 1e-9) for wider, narrower in pairwise(found))
    assert all(wider >= 0.95 * narrower for wider, narrower in pairwise(found))


def test_a_beam_as_wide_as_the_bolts_leaves_nothing_overhanging() -> None:
    assert safety(box(60.0), moment=(180_000.0, 0.0, 0.0)).limit != "yield of the plate beside the beam"


def test_a_tube_holds_the_plate_along_its_middle_only() -> None:
    # 30 of overhang: other bolt counts 1/(1 + 64/9)
    tube = Build(100.0, 10.0, 0.0, 180.0, 180.0, "tube", 60.0, 0.0, 4.0)
    stress = 0.509 * (1125 + 1125 / (1 + 64 / 9)) * 6 / 100
    assert safety(tube, moment=(180_000.0, 0.0, 0.0)) == pytest.approx(250 / stress)


def test_three_bolts_are_cut_in_the_row_of_one_and_in_the_row_of_two() -> None:
    """Three on a circle of 80, one straight up: 320 N m tilts it: 2 M / (3 r) = 5333.3 N on the top one, half on each lower one.

    Under the top bolt, level through the spindle: 5333.3 x 40 = 213 333 N mm over 1666.67 mm3 is 128 MPa, shear 8. Beside the
    lower two, 20 down, nothing stands beyond. A pivot pulled 1000 N inboard 150 above: level with the top bolt's one hole of 12,
    (100 - 12) x 100 / 6 = 1466.67 mm3: 110 000 / 1466.67 = 75 MPa, shear 1.5 x 1000 / 880.
    """
    three = BoltPlaces(circle_places(3, 80.0, 0.0))
    found = safety(PLATE, moment=(320_000.0, 0.0, 0.0), bolts=three)
    assert found == pytest.approx(250 / (128**2 + 3 * 8**2) ** 0.5, rel=1e-4)
    assert found.limit == "yield beside the centre bore"
    pulled = safety(PLATE, force=(0.0, -1000.0, 0.0), upper=(0.0, 1000.0, 0.0), bolts=three)
    assert pulled.limit in ("yield at the upper hub bolts", "yield beside the centre bore")
    alone = safety(PLATE, upper=(0.0, 1000.0, 0.0), bolts=three)  # no hub: 150 000 / 1666.67 = 90 through the spindle
    assert alone == pytest.approx(250 / (90**2 + 3 * 1.5**2) ** 0.5, rel=1e-4)


@pytest.mark.parametrize("count", [3, 4, 5, 6])
def test_the_bolts_beyond_the_spindle_balance_the_hub_however_many_they_are(count: int) -> None:
    """A hub that is pushed inboard without tilting: the bolts above and below share it, and a plate held at both pivots alike

    carries half on each side but for a row that stands level with the spindle, which is on neither.
    """
    bolts = BoltPlaces(circle_places(count, 80.0, 0.3))  # turned, so that none stands level
    above = sum(1 for _, z in bolts.places if z > 0)
    # 8000 N at the spindle, 4000 at each pivot 150 away; bolts beyond give 8000 / n each at their height
    moment = 4000 * 150 - sum(8000 / count * z for _, z in bolts.places if z > 0)
    shear = abs(-4000 + 8000 / count * above)
    below = 4000 * 150 - sum(8000 / count * -z for _, z in bolts.places if z < 0)
    shear_below = abs(-4000 + 8000 / count * (count - above))
    by_hand = min(
        250 / ((bent / 1666.667) ** 2 + 3 * (cut * 1.5 / 1000) ** 2) ** 0.5
        for bent, cut in ((moment, shear), (below, shear_below))
    )
    found = safety(
        PLATE, force=(0.0, 8000.0, 0.0), upper=(0.0, -4000.0, 0.0), lower=(0.0, -4000.0, 0.0), bolts=bolts, hole=0.01
    )
    assert found <= by_hand * (1 + 1e-6)
    assert found == pytest.approx(by_hand, rel=0.25)


def test_the_same_four_bolts_read_alike_as_a_rectangle_and_on_their_circle() -> None:
    """A square of 60 is a circle of 84.853 turned by an eighth: one upright, one verdict."""
    square, ring = BoltPlaces(hub_bolt_places(60.0, 60.0)), BoltPlaces(circle_places(4, 60.0 * 2**0.5, pi / 4))
    hit = {"force": (3000.0, -2000.0, 5000.0), "moment": (200_000.0, 0.0, 90_000.0), "upper": (-900.0, 700.0, 0.0)}
    one, other = (safety(box(40.0), bolts=bolts, **hit) for bolts in (square, ring))  # type: ignore[arg-type]
    assert one == pytest.approx(other) and one.limit == other.limit


def test_where_the_bore_opens_the_channel_s_cell_twist_bends_the_strips_beside_it() -> None:
    """Channel 60 x 40 x 4 on 100 x 10: cell 56 x (40 - 2 + 5) = 2408 mm2. 200 N m at the upper pivot about the upright's axis.

    Without a hub all of it is twist at the spindle: 200 000 / (2 x 2408) x 60 = 2491.7 N in the plate, 1245.8 a strip of
    (100 - 50) / 2 = 25 x 10: 1245.8 x 0.45 x 50 / 2 / (10 x 625 / 6 = 1041.67) = 13.455 MPa beside the bore.
    """
    channel = Build(100.0, 10.0, 50.0, 180.0, 180.0, "channel", 60.0, 40.0, 4.0)
    section = channel.section(0.0)
    assert 200_000 * section.twist_bends == pytest.approx(13.455, abs=1e-3)
    assert channel.section(30.0).twist_bends == 0.0  # above the bore
    closed, open_ = (replace(box(60.0, 50.0), cut=cut) for cut in ("not cut", "face on the plate"))
    assert closed.section(0.0).twist_bends == 0.0 < open_.section(0.0).twist_bends
    assert open_.section(0.0).area < closed.section(0.0).area
    both = replace(box(80.0, 50.0), cut="both faces")
    # the far face: 80 / (2 x 76 x 36) / 2 x 0.45 x 50 / 2 x 6 / (4 x 15^2), N mm to MPa
    assert both.section(0.0).twist_bends == pytest.approx(80 / 5472 / 2 * 11.25 * 6 / 900)
    with pytest.raises(OutsideRange, match="whole of the beam's far face"):
        replace(box(50.0, 50.0), cut="both faces").section(0.0)


def test_near_its_end_a_beam_counts_at_the_bolts_only_as_deep_as_its_seams_have_brought_it_in() -> None:
    """1000 N at the upper pivot and taken away at the wheel centre: 110 000 N mm and 1000 N at the row 40 up.

    Plate alone, less two holes of 12: (100 - 24) x 100 / 6 = 1266.67 mm3. Of a box of 60 x 40 x 4 that ends 50 up, 10 inside:
    7.5 deep with walls of 2.5; all of it from 40 / 0.75 = 53.3 inside on.
    """
    pushed = {"force": (0.0, -1000.0, 0.0), "upper": (0.0, 1000.0, 0.0)}

    def ending(at: float) -> Margin:
        return safety(replace(box(60.0), beam_top=at, beam_bottom=180.0), above=at, **pushed)  # type: ignore[arg-type]

    alone = 250 / ((110_000 / 1266.667) ** 2 + 3 * (1000 * 1.5 / 760) ** 2) ** 0.5
    assert ending(39.0) == pytest.approx(alone, rel=1e-5)
    # The row's two holes stand 30 from the middle, at the box's own edge, so not through it. Plate 760 mm2 at 5, its own
    # 760 x 100 / 12; box 7.5 deep, 2.5 walls: 60 x 7.5 - 55 x 2.5 = 312.5 at 13.75, its own (60 x 7.5^3 - 55 x 2.5^3) / 12
    centroid = (760 * 5 + 312.5 * 13.75) / 1072.5
    own = 760 * 100 / 12 + (60 * 7.5**3 - 55 * 2.5**3) / 12
    second = own + 760 * (centroid - 5) ** 2 + 312.5 * (13.75 - centroid) ** 2
    near = ending(50.0)
    assert near.limit == "yield at the upper hub bolts"
    bending = 110_000 * (17.5 - centroid) / second
    # Shear is the box's alone: I = (60 x 7.5^3 - 55 x 2.5^3) / 12, Q = (60 x 7.5^2 - 55 x 2.5^2) / 8, through two walls of 2.5
    shear = 1000 * ((60 * 7.5**2 - 55 * 2.5**2) / 8) / ((60 * 7.5**3 - 55 * 2.5**3) / 12 * 5)
    assert near == pytest.approx(250 / (bending**2 + 3 * shear**2) ** 0.5, rel=1e-5)
    inside = [ending(at) for at in (39.0, 45.0, 50.0, 60.0, 80.0, 93.4, 180.0)]
    assert inside == sorted(inside) and inside[0] < 0.5 * inside[-1]


def test_bolts_off_the_wheels_axis_hold_what_the_hub_hands_on() -> None:
    """Their forces, summed about the middle of the plate's face, are the hub's own: statics.

    Bearing 35 outboard of the face: 300, 900, -500 N there add (35 x -500, 0, -35 x 300) N mm to the moment; none is about the
    wheel's axis, which is the brake's.
    """
    uneven = BoltPlaces(((0.0, 60.0), (58.0, 15.0), (40.0, -45.0), (-50.0, 20.0)))
    force, moment = (300.0, 900.0, -500.0), (20_000.0, 0.0, -35_000.0)
    case = CaseLoads("bump", NONE, force, moment, NONE, NONE, NONE)
    forces = bolt_forces(case, PLACES, bolt_group(PLACES, uneven))
    assert [sum(one[axis] for _, one in forces) for axis in range(3)] == pytest.approx(force)
    turned = [np.cross(minus(place, PLACES.mount_face), one) for place, one in forces]
    assert sum(turned) == pytest.approx(np.array([20_000 - 35 * 500, 0.0, -35_000 - 35 * 300]), abs=1e-6)
