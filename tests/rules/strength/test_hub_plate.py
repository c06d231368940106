"""The plate between the hub bolts by hand: four bolts 60 x 80 mm about the wheel's axis, plate 100 x 10 mm, yield 250 MPa."""

import pytest

from rules.graph.results import NotJudged
from rules.measure.vectors import Vector
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.margin import Margin
from rules.values.strength.plate_build import Build
from rules.values.strength.upright import plate_safety

NONE: Vector = (0.0, 0.0, 0.0)
PLACES = Places(
    contact=NONE, wheel_centre=(0.0, 0.0, 400.0), bearing=(0.0, -20.0, 400.0), hub_face=(0.0, 0.0, 400.0),
    mount_face=(0.0, -55.0, 400.0), upper_pivot=(0.0, -60.0, 550.0), lower_pivot=(0.0, -60.0, 250.0),
    tie_rod=(-120.0, -60.0, 370.0),
)  # fmt: skip
PLATE = Build(width=100.0, thickness=10.0, bore=0.0, top=180.0, bottom=180.0, beam="none")
BORED = Build(width=100.0, thickness=10.0, bore=50.0, top=180.0, bottom=180.0, beam="none")


def box(width: float, bore: float = 0.0) -> Build:
    return Build(100.0, 10.0, bore, 180.0, 180.0, "box", width, 40.0, 4.0, 0.0)


def safety(
    build: Build, force: Vector = NONE, moment: Vector = NONE, upper: Vector = NONE, lower: Vector = NONE,
    rod: Vector = NONE, root: float = -30.0, bolts: int = 4,
) -> Margin:  # fmt: skip
    case = CaseLoads("bump", NONE, force, moment, upper, lower, rod)
    return plate_safety(build, 250.0, bolts, 60.0, 80.0, 12.0, root, CornerLoads(PLACES, (case,)))


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
    assert safety(box(40.0, bore=40.0), moment=tilted) == pytest.approx(250 / stress)  # the bore is all behind the beam
    assert safety(box(40.0, bore=42.0), moment=tilted) == pytest.approx(250 / stress / 2)


def test_a_beam_as_wide_as_the_bolts_leaves_nothing_overhanging() -> None:
    assert safety(box(60.0), moment=(180_000.0, 0.0, 0.0)).limit != "yield of the plate beside the beam"


def test_a_tube_holds_the_plate_along_its_middle_only() -> None:
    # 30 of overhang: other bolt counts 1/(1 + 64/9)
    tube = Build(100.0, 10.0, 0.0, 180.0, 180.0, "tube", 60.0, 0.0, 4.0)
    stress = 0.509 * (1125 + 1125 / (1 + 64 / 9)) * 6 / 100
    assert safety(tube, moment=(180_000.0, 0.0, 0.0)) == pytest.approx(250 / stress)


def test_other_than_four_bolts_are_not_judged() -> None:
    with pytest.raises(NotJudged, match="four bolts only"):
        safety(PLATE, bolts=5)
