"""The seam of beam and plate by hand: box 60 x 40 x 4, sharp, on 120 x 10, pushed at a pivot 160 above the wheel centre."""

from dataclasses import replace
from math import hypot

import pytest

from rules.graph.results import DoesNotApply, Estimate, NotJudged, OutsideRange, Waits
from rules.measure.vectors import Vector
from rules.strength.corner_loads import CaseLoads, CornerLoads, Places
from rules.strength.margin import Margin
from rules.tables.materials import BESIDE_WELD, KSI, Metal
from rules.values.strength.plate_build import Build
from rules.values.strength.seam import seam_weld_safety, upright_tensile
from rules.values.strength.upright import BesideWeld
from rules.values.wheel_end.hub_bolts import BoltPlaces

NONE: Vector = (0.0, 0.0, 0.0)
PLACES = Places(NONE, (0.0, 0.0, 400.0), (0.0, -20.0, 400.0), NONE, (0.0, -55.0, 400.0), (0.0, -60.0, 560.0),
                (0.0, -60.0, 280.0), (-120.0, -60.0, 370.0))  # fmt: skip
BUILD = Build(120.0, 10.0, 0.0, 180.0, 150.0, "box", 60.0, 40.0, 4.0, 0.0, beam_top=100.0, beam_bottom=90.0)
BOLTS = BoltPlaces(((40.0, 40.0), (-40.0, 40.0), (0.0, -40.0)))
WELD = 0.707 * 5.0 * 0.6 * 60 * KSI
"""A leg of 5 mm with the weakest electrode of the table, 60 ksi: 877.4 N on 1 mm."""


PUSHED: dict[str, Vector] = {"upper_pivot": (0.0, 20_000.0, 0.0)}


def seam(
    build: Build = BUILD, forces: dict[str, Vector] = PUSHED, leg: float | None = 5.0, share: float = 1.0,
    tensile: float = 400.0, places: Places = PLACES, metal: Metal = "a36 plate",
) -> Margin:  # fmt: skip
    at_pivots = (forces.get("upper_pivot", NONE), forces.get("lower_pivot", NONE), NONE)
    case = CaseLoads("kerb", NONE, forces.get("hub_force", NONE), forces.get("hub_moment", NONE), *at_pivots)
    return seam_weld_safety(
        leg, share, build, 250.0, tensile, metal, BOLTS, -30.0, 125.0, -20.0, CornerLoads(places, (case,))
    )


def test_a_beam_s_end_brings_in_over_its_depth_what_the_section_there_carries() -> None:
    """Beam's top at 100: it comes in from there to 60, where 20 000 N stand 100 away: 2 000 000 N mm.

    Along: 48 211 N in the box over 2 x 40 mm, 602.6. Square: its shear 17 167 N over the same, 214.6; bending about the middle of
    the end, at 80: 0.85833 x 1 600 000 = 1 373 333, x 2 / 40^2 = 1716.7. Together 2022.6 against 877.4 of weld metal. Part: 4 mm
    of wall at 0.6 x 250, 600 N, for 602.6 along and 0.6 x 1931.3 square, 1306.
    """
    found = seam()
    assert found == pytest.approx(WELD / hypot(602.6, 1931.3), rel=1e-3)
    assert found.limit == "the weld metal breaks, at the beam's upper end" and found.case == "kerb"
    assert found.on_yield == pytest.approx(600 / 1306.1, rel=1e-3)
    assert seam(share=0.5) == pytest.approx(found / 2)
    below = seam(forces={"lower_pivot": (0.0, 20_000.0, 0.0)})
    assert below.limit.endswith("at the beam's lower end")


def test_a_beam_that_runs_past_its_pivots_comes_in_from_the_pivot_s_height_on() -> None:
    """From 160 to 120: 20 000 x 40 give 241.05 along. Square: 0.85833 x 400 000 about 140, x 2 / 1600, 429.2; 214.6."""
    past = seam(replace(BUILD, to_pivots=True))
    assert past == pytest.approx(WELD / hypot(241.05, 643.8), rel=1e-3)
    assert past > 2 * seam()
    assert seam(replace(BUILD, beam_top=170.0)) == pytest.approx(past)


def test_a_shorter_beam_brings_in_more_over_less() -> None:
    ends = [seam(replace(BUILD, beam_top=end)) for end in (160.0, 120.0, 80.0, 60.0, 40.0)]
    assert ends == sorted(ends, reverse=True)
    assert ends[-1] < 0.35 * ends[0]


def test_between_the_hub_bolts_what_they_hand_over_flows_along_the_seam() -> None:
    """A hub tilted by 3 200 000 N mm, nothing at the pivots: 40 000 N up top, as much at the bottom; 482.1 N between the rows."""
    found = seam(forces={"hub_moment": (3_200_000.0, 0.0, 0.0)})
    assert found == pytest.approx(600 / 482.1, rel=1e-3)
    assert found.limit == "the part yields beside the weld, below the wheel centre"


def test_twist_of_a_closed_box_comes_in_at_its_end_and_flows_along_the_seam() -> None:
    """4000 N along the car at a pivot 80 up and 200 inboard of the two together, 14.504 from the face: 800 000 N mm of twist.

    Box and plate as two cells of 2016 and 392 mm2: 46 q1 - 14 q2 = 4032 and 19.6 q2 - 14 q1 = 784 give 127.556 and 131.111:
    800 000 x 131.111 / (4032 x 127.556 + 784 x 131.111) = 169.97 along the seam. The end is from 80 to 40. The box takes
    345 045 / 1 785 045 of the 4000 N: 773.2, over 80 mm 9.67 from run to run; 20 off its middle 15 464 N mm, / 82 667 x 30 =
    5.61 along and x 20 = 3.74 across; as much for the box beside the runs: 815 464 / (40 x 60) = 339.8 square. In the part
    175.58, 13.41 and 0.6 x 339.8: 269.4.
    """
    places = replace(PLACES, upper_pivot=(0.0, -269.504, 480.0))
    found = seam(forces={"upper_pivot": (4000.0, 0.0, 0.0)}, places=places)
    assert found == pytest.approx(600 / 269.4, rel=1e-3)
    assert found.limit == "the part yields beside the weld, at the beam's upper end"


def test_a_bore_wider_than_the_beam_cuts_the_seam_in_two() -> None:
    """Bore 100 in a plate 150 wide, runs 60 apart: none within 40 of the wheel centre, only 20 up to an end at 60."""
    wide = replace(BUILD, width=150.0, beam_top=60.0, beam_bottom=60.0)
    whole, cut = seam(wide), seam(replace(wide, bore=100.0))
    assert cut < 0.5 * whole
    with pytest.raises(OutsideRange, match="no seam is left"):
        seam(replace(wide, bore=140.0))


def test_the_seam_counts_no_more_of_a_leg_than_the_wall_it_holds() -> None:
    thick, thin = (seam(replace(BUILD, beam_wall=wall), leg=10.0) for wall in (8.0, 2.0))
    assert thin.limit.startswith("the part yields") and thin < thick


def test_what_the_seam_waits_for_and_where_there_is_none() -> None:
    with pytest.raises(Waits, match=r"upright\.seam_leg"):
        seam(leg=None)
    for build, field in (
        (replace(BUILD, beam_top=None), "beam_top"),
        (replace(BUILD, beam_bottom=None), "beam_bottom"),
    ):
        with pytest.raises(Waits, match=field):
            seam(build)
    for leg in (5.0, None):
        with pytest.raises(DoesNotApply, match="no beam"):
            seam(replace(BUILD, beam="none"), leg=leg)
    beside = replace(PLACES, upper_pivot=(0.0, -60.0, 390.0), lower_pivot=(0.0, -60.0, 410.0))
    with pytest.raises(DoesNotApply, match="beside the hub"):
        seam(places=beside)


def test_it_tears_at_the_metal_s_tensile_strength_and_yields_at_its_yield() -> None:
    """A36 beside a weld: 58 ksi (ASTM A36) over 33: never what tears before it yields; a tensile of half the yield would."""
    rows = BesideWeld(BESIDE_WELD["a36 plate"])
    assert upright_tensile("a36 plate", 33 * KSI, rows) == pytest.approx(399.9, abs=0.1)
    unknown = upright_tensile("other", 600.0, None)
    assert isinstance(unknown, Estimate) and (float(unknown), unknown.measure) == (600.0, "upright.material")
    assert "tears" in seam(replace(BUILD, beam_wall=1.0), tensile=125.0).limit
    assert "yields" in seam(replace(BUILD, beam_wall=1.0), tensile=400.0).limit


def test_a_seam_of_aluminium_is_judged_only_where_it_gives_with_a_steel_electrode_s_strength() -> None:
    """E60's throat holds more than any aluminium filler: a stop with it is one all the more, and beyond that nothing is known."""
    assert seam(metal="6061-t6").gives
    with pytest.raises(NotJudged, match="filler"):
        seam(leg=4.0, forces={"upper_pivot": (0.0, 1000.0, 0.0)}, metal="6061-t6")
