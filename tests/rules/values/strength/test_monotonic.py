"""Tightening an input toward a one-sided limit never improves the verdict of the check that guards it."""

from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.judging.judge import Finding

FindingWith = Callable[[str, dict[str, object]], Finding]
RANK = {"good": 2, "watch": 1, "stop": 0}

# check, field, its unit, from the roomy end to the tight end
ONE_SIDED = [
    ("tyre-load", "job.corner_weight", "kg", 20, 5000),
    ("tyre-load", "tyre.load_capacity", "kg", 5000, 50),
    ("tyre-speed", "job.top_speed", "km/h", 1, 500),
    ("wheel-load", "job.corner_weight", "kg", 20, 5000),
    ("wheel-load", "wheel.load_rating", "kg", 5000, 50),
    ("stud-engagement", "hub.stud_length", "mm", 150, 5),
    ("stud-engagement", "wheel.pad_thickness", "mm", 0, 80),
    ("stud-engagement", "rotor.hat_thickness", "mm", 0, 60),
    ("caliper-clears-barrel", "caliper.reach_above_rotor", "mm", 0, 150),
    ("caliper-clears-barrel", "rotor.diameter", "mm", 100, 600),
    ("caliper-clears-barrel", "wheel.barrel_inside_diameter", "mm", 800, 150),
    ("caliper-clears-spokes", "caliper.outboard_reach", "mm", 0, 200),
    ("caliper-clears-spokes", "wheel.spoke_room", "mm", 300, -200),
    ("caliper-suits-rotor", "caliper.made_for_thickness", "mm", 22, 80),
    ("caliper-suits-rotor", "caliper.made_for_thickness", "mm", 22, 2),
    ("rotor-thickness", "rotor.finished_thickness", "mm", 22, 1),
    ("rotor-thickness", "rotor.minimum_thickness", "mm", 1, 80),
    ("bearing-near-tyre-centre", "hub.flange_to_bearing_centre", "mm", 4, 300),
    ("bearing-near-tyre-centre", "hub.flange_to_bearing_centre", "mm", 4, -100),
    ("ground-offset-usual", "pivots.ground_offset", "mm", 15, 300),
    ("ground-offset-usual", "pivots.ground_offset", "mm", 15, -300),
    ("ground-offset-across-tyres", "pivots.inclination", "deg", 10, 45),
    ("inclination-usual", "pivots.inclination", "deg", 10, 45),
    ("inclination-usual", "pivots.inclination", "deg", 10, -30),
    ("castor-usual", "pivots.castor", "deg", 7, 45),
    ("castor-usual", "pivots.castor", "deg", 7, -30),
    ("trail-positive", "pivots.axis_ahead", "mm", 150, -150),
    ("swap-spacing", "pivots.swap_spacing", "mm", 260, 800),
    ("swap-spacing", "pivots.swap_spacing", "mm", 260, 60),
    ("wheel-numbers-agree", "wheel.offset", "mm", 10, 200),
    ("wheel-numbers-agree", "wheel.offset", "mm", 10, -200),
    ("lower-pivot-clears-barrel", "pivots.lower_radius", "mm", 3, 120),
    ("upper-pivot-clears-barrel", "pivots.upper_radius", "mm", 3, 120),
    ("lower-pivot-clears-barrel", "pivots.axis_ahead", "mm", 0, 150),
]


@pytest.mark.parametrize(("check", "field", "unit", "roomy", "tight"), ONE_SIDED)
@settings(max_examples=12)
@given(shares=st.tuples(st.floats(0, 1), st.floats(0, 1)).map(sorted))
def test_tightening_an_input_never_improves_the_verdict(
    finding: FindingWith, check: str, field: str, unit: str, roomy: float, tight: float, shares: list[float]
) -> None:
    near, far = (f"{roomy + share * (tight - roomy):.6f} {unit}" for share in shares)
    assert RANK[finding(check, {field: far}).verdict] <= RANK[finding(check, {field: near}).verdict]


@pytest.mark.parametrize(("check", "field", "unit", "roomy", "tight"), ONE_SIDED)
def test_the_roomy_end_is_good_and_the_tight_end_is_not(
    finding: FindingWith, check: str, field: str, unit: str, roomy: float, tight: float
) -> None:
    assert finding(check, {field: f"{roomy} {unit}"}).verdict == "good"
    assert finding(check, {field: f"{tight} {unit}"}).verdict in ("watch", "stop")
