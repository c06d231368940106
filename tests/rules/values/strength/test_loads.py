"""Strength asked for on the base sheet: loads, bearing and what gives first, judged from entries as typed."""

from collections.abc import Callable
from math import hypot
from typing import Any

import pytest

from rules.graph.results import NotJudged, Waits
from rules.judging.judge import Finding, Judged
from rules.strength.corner_loads import CornerLoads
from rules.strength.margin import CountedOn, Margin
from rules.values.strength.loads import part_loads
from sample_sheets import document
from tests.support.declared import the_check
from tests.support.judging import judged_document

Changes = dict[str, object]
JudgedWith = Callable[[Changes], Judged]
FindingWith = Callable[[str, Changes], Finding]

MULTIPLES = {
    "loads.bump": "3", "loads.braking": "1.1", "loads.cornering": "1", "loads.kerb": "1.25", "loads.landing": "3",
    "loads.rock": "4.5", "loads.steering_stop": "1.5",
}  # fmt: skip
LOW: Changes = {"job.centre_of_gravity_height": "200 mm"}
"""A centre of gravity so low, on a track of 1600, that the outer wheel of a corner of 1 g carries 1 + 2 x 200 / 1600 = 1.25."""
TIE_ROD = {"steering.tie_rod_ahead": "-120 mm", "steering.tie_rod_inboard": "90 mm", "steering.tie_rod_above": "-20 mm"}
LEVEL = {
    "loads.arm_slope": "0 deg", "loads.arm_hinge_slope": "0 deg", "loads.tie_rod_slope": "0 deg",
    "loads.tie_rod_sweep": "0 deg",
}  # fmt: skip
ASKED: Changes = {"loads.judge_strength": True, **TIE_ROD, **MULTIPLES, **LOW, **LEVEL}
UPRIGHT: Changes = {"pivots.castor": "0 deg", "pivots.inclination": "0 deg", "tyre.loaded_radius": "400 mm"}
RATED: Changes = {
    "hub.static_rating": "60 kN", "hub.dynamic_rating": "50 kN", "hub.rolling_element": "ball",
    "loads.pressure_centre_spread": "100 mm", "brakes.effective_radius": "120 mm",
}  # fmt: skip
ROWS_ALONE: Changes = {"loads.pressure_centre_spread": None, "hub.row_spread": "20 mm", "hub.body_diameter": "88 mm"}
DONOR: Changes = {"hub.donor_axle_weight": "1000 kg", "hub.donor_tyre_diameter": "640 mm"}
MINE = (
    "load-multiples", "landing-and-stop-multiples", "link-directions", "tie-rod-rating", "bearing-static",
    "bearing-life", "bearing-against-donor", "what-gives-first",
)  # fmt: skip
WEIGHT = 250 * 9.80665


def loads_of(judged: Judged) -> CornerLoads:
    found = judged.worked.known["corner_loads"]
    assert isinstance(found, CornerLoads)
    return found


def test_an_untouched_sheet_is_not_judged_for_strength_and_says_so(judged: JudgedWith) -> None:
    result = judged({})
    found = {finding.check: finding for finding in result.findings if finding.check in MINE}
    assert {check: finding.verdict for check, finding in found.items()} == dict.fromkeys(MINE, "not judged")
    assert "judge the strength" in found["bearing-static"].text
    assert result.verdict == "good"


def test_ratings_and_donor_in_the_hub_step_alone_ask_for_nothing(judged: JudgedWith) -> None:
    hub_only = {name: entry for name, entry in {**RATED, **DONOR}.items() if name.startswith("hub.")}
    assert judged({**hub_only, "hub.row_spread": "30 mm", "hub.dynamic_rating": "80 kN"}).verdict == "good"


def test_a_tie_rod_rating_entered_waits_for_the_word_to_judge_it(finding: FindingWith) -> None:
    rated: Changes = {"loads.tie_rod_rating": "30 kN"}
    waiting = finding("tie-rod-rating", rated)
    assert waiting.verdict == "waiting" and waiting.waits_for == ("loads.judge_strength",)
    asked = finding("tie-rod-rating", {**rated, "loads.judge_strength": True})
    assert asked.verdict == "waiting" and set(asked.waits_for) == set(TIE_ROD)
    refused = finding("tie-rod-rating", {**rated, "loads.judge_strength": False})
    assert refused.verdict == "not judged" and "strength was not asked for" in refused.text.lower()


def test_a_tie_rod_without_a_rating_waits_for_it_once_strength_is_asked_for(finding: FindingWith) -> None:
    assert "loads.tie_rod_rating" in finding("tie-rod-rating", {"loads.judge_strength": True}).waits_for


@pytest.mark.parametrize("strength", [None, False])
def test_a_tie_rod_without_a_rating_gives_its_own_reason(strength: bool | None, finding: FindingWith) -> None:
    found = finding("tie-rod-rating", {"loads.judge_strength": strength})
    assert found.waits_for[0] == "loads.tie_rod_rating"
    assert found.verdict == "not judged" and found.text.startswith("The tie rod's rating is not entered")


@pytest.mark.parametrize("entry", MULTIPLES)
def test_any_multiple_entered_asks_for_strength(entry: str, judged: JudgedWith) -> None:
    worked = judged({entry: MULTIPLES[entry]}).worked
    assert worked.known["strength_asked"] is True


def test_no_to_strength_outweighs_what_is_entered(judged: JudgedWith) -> None:
    worked = judged({**ASKED, "loads.judge_strength": False}).worked
    assert "corner_loads" in worked.not_judged and "bump_multiple" in worked.not_judged


def test_without_the_tie_rod_the_loads_wait_for_it(judged: JudgedWith) -> None:
    worked = judged({"loads.judge_strength": True}).worked
    assert set(worked.waits["corner_loads"]) == set(TIE_ROD)
    assert worked.waits["tie_rod_load"] == tuple(TIE_ROD)


@pytest.mark.parametrize("use, bump, landing", [("road", 3.0, 3.0), ("trail", 4.0, 4.0), ("dunes", 4.0, 6.0)])
def test_a_figure_for_the_use_stands_in_as_an_estimate(
    use: str, bump: float, landing: float, judged: JudgedWith
) -> None:
    worked = judged({"loads.judge_strength": True, **TIE_ROD, "job.use": use}).worked
    assert (worked.known["bump_multiple"], worked.known["landing_multiple"]) == (bump, landing)
    assert worked.estimated["bump_multiple"] == ("loads.bump",)
    assert set(worked.estimated["upper_pivot_load"]) == {*MULTIPLES, *LOW}


def test_entered_multiples_are_no_estimate(judged: JudgedWith) -> None:
    worked = judged(ASKED).worked
    assert worked.known["bump_multiple"] == 3.0
    assert not {"bump_multiple", "upper_pivot_load", "corner_loads"} & set(worked.estimated)


def test_places_are_those_of_the_layout(judged: JudgedWith) -> None:
    places = loads_of(judged(ASKED)).places
    # By hand in test_values.py: hub face +4, bearing -20, mounting face -56, pivots
    assert places.wheel_centre == (0.0, 0.0, 400.0)
    assert places.hub_face == pytest.approx((0, 4, 400))
    assert places.bearing == pytest.approx((0, -20, 400))
    assert places.mount_face == pytest.approx((0, -56, 400))
    assert places.lower_pivot == pytest.approx((13.1380294, -73.4899197, 275.0))
    assert places.upper_pivot == pytest.approx((-13.6308953, -118.3985161, 529.6893061))
    assert places.tie_rod == pytest.approx((-120, -86, 380))


def test_loads_on_a_straight_up_axis_by_hand(judged: JudgedWith) -> None:
    """Axis straight up 25 inboard, pivots 260 apart, the lower 275 up; tie rod 120 behind the axis."""
    worked = judged({**ASKED, **UPRIGHT}).worked
    rock = next(case for case in worked.known["corner_loads"].cases if case.case == "rock")
    # 4.5 W back at 25 from the axis, over 120: the rod pushes outboard
    assert rock.tie_rod == pytest.approx((0.0, 4.5 * WEIGHT * 25 / 120, 0.0))
    bump = next(case for case in worked.known["corner_loads"].cases if case.case == "bump")
    # 3 W at 25 outboard of the lower pivot, over 260
    assert bump.upper_pivot == pytest.approx((0.0, 3 * WEIGHT * 25 / 260, 0.0))
    assert bump.lower_pivot == pytest.approx((0.0, -3 * WEIGHT * 25 / 260, -3 * WEIGHT))
    # Steering stop: 1.5 W inboard 400 ahead of the axis, over 120: the rod pulls 5 W inboard.
    stop = next(case for case in worked.known["corner_loads"].cases if case.case == "steering stop")
    assert stop.tie_rod == pytest.approx((0.0, -5 * WEIGHT, 0.0))
    assert worked.known["tie_rod_load"] == pytest.approx(5 * WEIGHT)


def test_worst_loads_are_the_largest_of_the_cases(judged: JudgedWith) -> None:
    worked = judged(ASKED).worked
    for name, part in (
        ("upper_pivot_load", "upper_pivot"),
        ("lower_pivot_load", "lower_pivot"),
        ("tie_rod_load", "tie_rod"),
    ):
        assert worked.known[name] == max(hypot(*getattr(case, part)) for case in worked.known["corner_loads"].cases)
    # Steering stop: 1.5 W at 400 mm about the upward line, and W at 20 mm
    assert worked.known["hub_moment"] == pytest.approx(WEIGHT * hypot(0.6, 0.02))


# Upper arm level at the outer pivot's 535 up; 800 - 375 - 25 = 400 inboard of it, 300 ahead and behind: legs 3-4-5.
UPPER_INNER: Changes = {
    "arms.upper_front_ahead": "300 mm", "arms.upper_front_from_centre": "375 mm", "arms.upper_front_height": "535 mm",
    "arms.upper_rear_ahead": "-300 mm", "arms.upper_rear_from_centre": "375 mm", "arms.upper_rear_height": "535 mm",
}  # fmt: skip
NO_SLOPES: Changes = {"loads.arm_slope": None, "loads.arm_hinge_slope": None}


@pytest.mark.parametrize("slopes", [{}, NO_SLOPES])
def test_legs_of_the_arm_without_the_spring_by_hand(slopes: Changes, judged: JudgedWith) -> None:
    """Axis straight up 25 inboard, pivots 275 and 535 up, tie rod 120 behind the axis and 380 up. In W, x and y of the pivot.

    Rock: 4.5 back, 125 above the lower pivot: x 4.5 x 125 / 260 = 2.1634615. Tie rod 4.5 x 25 / 120 = 0.9375 outboard, 105
    up: y (25 - 98.4375) / 260 = -0.2824519. Legs (x / 0.6 - y / 0.8) / 2 = 1.9794171 and (-x / 0.6 - y / 0.8) / 2 = -1.6263522.
    The same rock a quarter of 12.50 in beside the middle, 79.375: outboard the rod takes 4.5 x 104.375 / 120 = 3.9140625, y
    (25 - 410.9765625) / 260 = -1.4845252, front leg 2.7307129; inboard it takes 4.5 x -54.375 / 120 = -2.0390625, y (25 +
    214.1015625) / 260 = 0.9196214, rear leg (-3.6057692 - 1.1495268) / 2 = -2.3776480.
    Met backward x is -2.1634615 and the rod is pulled: outboard of the middle y (25 + 410.9765625) / 260 = 1.6768329, front
    leg (-3.6057692 - 2.0960412) / 2 = -2.8509052; inboard y (25 - 214.1015625) / 260, rear leg 2.2574557.
    Steering stop: 1.5 inboard, 125 up; tie rod -5: y (25 + 187.5 + 525) / 260 = 2.8365385, each leg -y / 1.6 = -1.7728365.
    Combined: x -1.1634615, y -0.8617788: legs -0.4309395 and 1.5081631. Every other case is less.
    """
    known = judged({**ASKED, **UPRIGHT, **UPPER_INNER, **slopes}).worked.known
    assert known["guiding_front_leg_load"] == pytest.approx(2.8509052 * WEIGHT)
    assert known["guiding_rear_leg_load"] == pytest.approx(2.3776480 * WEIGHT)


def test_with_the_spring_on_the_upper_arm_the_lower_arms_legs_are_meant(judged: JudgedWith) -> None:
    """The same corner balanced about the upper pivot, 535 up; the tie rod lies 155 below it. In W, x and y of the lower pivot.

    Rock: 4.5 back, 135 below: x 4.5 x 135 / 260 = 2.3365385; rod 0.9375: y -(25 + 0.9375 x 155) / 260 = -0.6550481; front leg
    x / 1.2 - y / 1.6 = 2.3565204. Combined, at the ground: x 1.1 x 535 / 260 = 2.2634615; rod 1.1 x 25 / 120 = 0.2291667:
    y -(3 x 25 - 535 + 35.5208333) / 260 = 1.6326122; rear leg -x / 1.2 - y / 1.6 = -2.9066005. Every other leg is less:
    braking 2.04 in front; steering stop y (202.5 + 775 - 25) / 260 = 3.6634615, 2.29 in both. But for the rock at the
    tread's foot: 4.5 x 535 about the upper pivot, less the 1800 - 440 that turn the wheel against its brake: x 1047.5 / 260 =
    4.0288462, y as in the rock: front x / 1.2 - y / 1.6 = 3.7667769, rear -x / 1.2 - y / 1.6 = -2.9479667.
    """
    lower = {
        name.replace("upper", "lower"): "275 mm" if "height" in name else entry for name, entry in UPPER_INNER.items()
    }
    known = judged({**ASKED, **UPRIGHT, **UPPER_INNER, **lower, "pivots.spring_on": "upper arm"}).worked.known
    assert known["guiding_front_leg_load"] == pytest.approx(3.7667769 * WEIGHT)
    assert known["guiding_rear_leg_load"] == pytest.approx(2.9479667 * WEIGHT)


LEG_LOADS = ("guiding_front_leg_load", "guiding_rear_leg_load")


@pytest.mark.parametrize("name", LEG_LOADS)
def test_legs_are_not_judged_where_their_inner_pivots_are_not_known(name: str, judged: JudgedWith) -> None:
    assert "inner pivots of the arm" in judged({**ASKED}).worked.not_judged[name]
    front_view = {"arms.upper_front_from_centre": "375 mm", "arms.upper_front_height": "535 mm"}
    assert "from the front only" in judged({**ASKED, **front_view}).worked.not_judged[name]
    assert "not asked for" in judged({**UPPER_INNER}).worked.not_judged[name]


@pytest.mark.parametrize("name", LEG_LOADS)
def test_the_legs_lie_as_their_inner_pivots_say_whatever_slope_is_entered_with_them(
    name: str, judged: JudgedWith
) -> None:
    without = judged({**ASKED, **UPRIGHT, **UPPER_INNER, **NO_SLOPES}).worked.known[name]
    assert judged({**ASKED, **UPRIGHT, **UPPER_INNER, "loads.arm_slope": "10 deg"}).worked.known[name] == without


def test_a_tie_rod_on_the_steering_axis_is_refused_as_a_stop(judged: JudgedWith) -> None:
    broken = judged({**ASKED, **UPRIGHT, "steering.tie_rod_ahead": "0 mm"})
    assert "points straight at the steering axis" in broken.worked.broken["corner_loads"]
    assert "tie_rod_load" in broken.worked.broken and not broken.worked.crashed


def test_sloping_arm_and_rod_move_the_loads(judged: JudgedWith) -> None:
    level, sloping = judged(ASKED).worked.known, judged({**ASKED, "loads.arm_slope": "10 deg"}).worked.known
    assert sloping["corner_loads"].cases[1].upper_pivot[2] != pytest.approx(0.0, abs=1.0)
    assert level["corner_loads"].cases[1].upper_pivot[2] == pytest.approx(0.0, abs=1e-6)


TRAIL: Changes = {
    "loads.bump": "4", "loads.braking": "1.75", "loads.kerb": "1.75", "loads.landing": "4", "loads.steering_stop": "1.75",
}  # fmt: skip
ROAD: Changes = {"loads.bump": "3", "loads.braking": "1.1", "loads.kerb": "1.4"}

# check, what is changed beside ASKED, verdict
CASES = [
    ("load-multiples", {}, "watch"),  # a trail car is offered 4, 1.75, 1, 1.75 and 4.5
    ("load-multiples", TRAIL, "good"),
    ("load-multiples", {**TRAIL, "loads.bump": "3.99"}, "watch"),
    ("load-multiples", {**TRAIL, "loads.braking": "1.74"}, "watch"),
    ("load-multiples", {**TRAIL, "loads.cornering": "0.99"}, "watch"),
    ("load-multiples", {**TRAIL, "loads.kerb": "1.74"}, "watch"),
    ("load-multiples", {**TRAIL, "loads.rock": "4.49"}, "watch"),
    ("load-multiples", {**TRAIL, "loads.rock": None}, "watch"),
    ("load-multiples", {**TRAIL, **ROAD, "job.use": "road"}, "good"),  # 3, 1.1, 1, 1.4 and 4.5
    ("load-multiples", {**TRAIL, **ROAD, "job.use": "road", "loads.braking": "1.09"}, "watch"),
    ("landing-and-stop-multiples", {}, "watch"),
    ("landing-and-stop-multiples", TRAIL, "shown"),
    ("landing-and-stop-multiples", {**TRAIL, "loads.landing": "3.99"}, "watch"),
    ("landing-and-stop-multiples", {**TRAIL, "loads.steering_stop": "1.74"}, "watch"),
    ("stances-counted", {}, "watch"),
    ("link-directions", {}, "good"),
    ("link-directions", {"loads.arm_slope": None}, "watch"),
    ("link-directions", {"loads.arm_hinge_slope": None}, "watch"),
    ("link-directions", {"loads.tie_rod_slope": None}, "watch"),
    ("link-directions", {"loads.tie_rod_sweep": None}, "watch"),
    ("tie-rod-rating", {}, "waiting"),
    # 5 W = 12 258.3125 N on a straight-up axis: five times is 61 291.5625 N, twice is 24 516.625 N
    ("tie-rod-rating", {**UPRIGHT, "loads.tie_rod_rating": "61291.5625 N"}, "good"),
    ("tie-rod-rating", {**UPRIGHT, "loads.tie_rod_rating": "61291 N"}, "watch"),
    ("tie-rod-rating", {**UPRIGHT, "loads.tie_rod_rating": "24516.625 N"}, "watch"),
    ("tie-rod-rating", {**UPRIGHT, "loads.tie_rod_rating": "24516 N"}, "stop"),
    ("bearing-static", {}, "not judged"),
    ("bearing-static", {"hub.static_rating": "60 kN"}, "waiting"),
    ("bearing-static", {**RATED, "hub.rolling_element": None}, "waiting"),
    ("bearing-static", {**RATED, "loads.pressure_centre_spread": None}, "waiting"),
    # A rock 79.375 outboard of the middle, 99.375 of the bearing's: back 4.5 W / 2 and 4.5 W x 0.99375 = 6.721875 W in the
    # outboard row, up W/2 + 0.02 / 0.1 W = 0.7 W; root of 45.6736 is 6.7582247, W = 2451.6625 N: 16 568.89 N; twice that for the
    # unit is 33 137.77 N at a safety of 1. The steering stop's rows carry 6.0406953 W, and with its thrust 6.6106953 W.
    ("bearing-static", {**RATED, "hub.static_rating": "66276 N"}, "good"),
    ("bearing-static", {**RATED, "hub.static_rating": "66275 N"}, "watch"),
    ("bearing-static", {**RATED, "hub.static_rating": "33138 N"}, "watch"),
    ("bearing-static", {**RATED, "hub.static_rating": "33137 N"}, "stop"),
    # Rollers, steering stop: root of 36.49 is 6.0406953; the whole thrust, 7.5406953 W = 18 487.24 N; twice that for the unit is
    # 36 974.48 N, and 4 is 147 897.9 N. Dents are no stop while the rating itself holds.
    ("bearing-static", {**RATED, "hub.rolling_element": "roller", "hub.static_rating": "147898 N"}, "good"),
    ("bearing-static", {**RATED, "hub.rolling_element": "roller", "hub.static_rating": "147897 N"}, "watch"),
    ("bearing-static", {**RATED, "hub.rolling_element": "roller", "hub.static_rating": "36975 N"}, "watch"),
    ("bearing-static", {**RATED, "hub.rolling_element": "roller", "hub.static_rating": "36974 N"}, "stop"),
    # The rows' own spread is an estimate, so never better than watch
    ("bearing-static", {**RATED, "loads.pressure_centre_spread": None, "hub.row_spread": "100 mm",
                        "hub.static_rating": "64829 N"}, "watch"),
    # Rows 20 mm apart and nothing said of the pressure centres: in a body of 88 mm balls at 40 deg put them
    # 20 + 0.72 x 88 = 83.36 mm apart at most. Steering stop: back 600 / 83.36 = 7.1977, up 0.5 + 20 / 83.36 = 0.73992 W;
    # root of 52.3543 is 7.23563 W, with its thrust 0.38 x 1.5 W 7.80563 W = 19 136.8 N, twice 38 273.5 N.
    ("bearing-static", {**RATED, **ROWS_ALONE, "hub.static_rating": "38274 N"}, "watch"),
    ("bearing-static", {**RATED, **ROWS_ALONE, "hub.static_rating": "38273 N"}, "stop"),
    ("bearing-life", {**RATED, **ROWS_ALONE}, "watch"),
    ("bearing-life", {**RATED, **ROWS_ALONE, "hub.dynamic_rating": "5 kN"}, "stop"),
    ("bearing-life", {}, "not judged"),
    ("bearing-life", {**RATED, "hub.rolling_element": None}, "waiting"),
    ("bearing-life", RATED, "watch"),
    ("bearing-life", {**RATED, "hub.dynamic_rating": "5 kN"}, "stop"),
    ("bearing-against-donor", {}, "waiting"),
    ("bearing-against-donor", RATED, "does not apply"),
    # 250 kg on 812.8 mm: half of a 635 mm donor tyre at 320 kg is as much: 250 x 812.8 = 320 x 635
    ("bearing-against-donor", {"hub.donor_axle_weight": "640 kg", "hub.donor_tyre_diameter": "635 mm"}, "watch"),
    ("bearing-against-donor", {"hub.donor_axle_weight": "640 kg", "hub.donor_tyre_diameter": "634 mm"}, "stop"),
    ("bearing-against-donor", {"hub.donor_axle_weight": "900 kg", "hub.donor_tyre_diameter": "680 mm"}, "watch"),
]  # fmt: skip


@pytest.mark.parametrize("check, changes, verdict", CASES)
def test_verdicts(check: str, changes: Changes, verdict: str, finding: FindingWith) -> None:
    found = finding(check, {**ASKED, **changes})
    assert found.verdict == verdict, found.text
    assert found.change or verdict in ("good", "shown", "waiting", "not judged", "does not apply")


def test_defaults_cap_every_verdict_that_rests_on_them(finding: FindingWith) -> None:
    strong = {**RATED, "hub.static_rating": "400 kN"}
    assert finding("bearing-static", {**ASKED, **strong}).verdict == "good"
    capped = finding("bearing-static", {**ASKED, **strong, "loads.bump": None})
    assert capped.verdict == "watch" and capped.estimated_from == ("loads.bump",)


def test_the_offset_of_the_donors_wheel_counts_when_it_is_known(judged: JudgedWith) -> None:
    # Here 406.4 + 20; there 320 + |40 - 6 - 24| = 330; 250 against 500
    known = judged({**ASKED, **DONOR, "loads.donor_wheel_offset": "40 mm"}).worked.known
    assert known["bearing_load_against_donor"] == pytest.approx(250 * 426.4 / (500 * 330))
    without = judged({**ASKED, **DONOR}).worked.known
    assert without["bearing_load_against_donor"] == pytest.approx(250 * 406.4 / (500 * 320))


def test_every_bearing_verdict_says_why_the_catalogue_load_is_not_used(finding: FindingWith) -> None:
    for check, changes in (("bearing-static", RATED), ("bearing-life", RATED), ("bearing-against-donor", DONOR)):
        assert "P = X Fr + Y Fa is not used" in finding(check, {**ASKED, **changes}).text


def test_the_life_names_its_table_and_the_spread_its_assumption(finding: FindingWith) -> None:
    rows = {**RATED, "loads.pressure_centre_spread": None, "hub.row_spread": "60 mm"}
    found = finding("bearing-life", {**ASKED, **rows})
    assert "a1 = 0.64 of the 2007 edition" in found.text
    assert "rows' own spread is assumed" in found.text and "face-to-face" in found.text
    assert found.estimated_from == ("loads.pressure_centre_spread",)


def test_life_by_hand(judged: JudgedWith) -> None:
    """Ball, C 50 kN a unit, 30 778.61 N a row (2^0.7 = 1.6245048); centres 100 apart; loads in W = 2451.6625 N.

    Standing: M = 0.02 W m, so rows 0.7 and 0.3. Cornering, 1.25 up and inboard: M = 0.025 - 0.5 = -0.475, rows 0.625 - 4.75 =
    -4.125 and 5.375, thrust 1.25 x 0.92 = 1.15: 5.275 and 6.525. A quarter of the way: 1.0625 up, M = 0.015 - 0.11875 =
    -0.10375, rows 0.53125 - 1.0375 = -0.50625 and 1.56875, thrust 0.3125 x 0.92 = 0.2875: 0.79375 and 1.85625.
    Cubes: outboard 0.9 x 0.343 + 0.08 x 0.5000935 + 0.02 x 146.7802 = 3.284311, root 1.486442;
    inboard 0.9 x 0.027 + 0.08 x 6.396014 + 0.02 x 277.8060 = 6.092100, root 1.826371. Times 1.2 W.
    Lives: (30 778.61 / 4373.11)^3 = 348.64 and (30 778.61 / 5373.17)^3 = 187.96.
    Both: (348.64^-10/9 + 187.96^-10/9)^-0.9 = 130.23; times 0.64 is 83.345.
    """
    known = judged({**ASKED, **RATED}).worked.known
    assert known["hub_bearing_life"] == pytest.approx(83.345, rel=1e-4)


def test_what_gives_first_needs_two_parts(finding: FindingWith) -> None:
    assert finding("what-gives-first", ASKED).verdict == "not judged"
    alone = {
        **ASKED,
        **RATED,
        "hub.mount_width": None,
    }  # the hub's bolts, whose places are not known then, are a part too
    assert "fewer than two" in finding("what-gives-first", alone).text


@pytest.mark.parametrize("rating, verdict", [("15 kN", "good"), ("100 kN", "watch")])
def test_the_tie_rod_should_give_before_the_hub(rating: str, verdict: str, finding: FindingWith) -> None:
    tight: dict[str, object] = {"bolts.mount_bolt_torque": "100 N m", "bolts.lubrication": "oiled"}
    found = finding("what-gives-first", {**ASKED, **RATED, **tight, "loads.tie_rod_rating": rating})
    assert found.verdict == verdict
    first = "tie rod" if verdict == "good" else "hub bearing"
    assert found.text.startswith(f"{first.capitalize()} at ")
    assert bool(found.change) == (verdict == "watch")


def test_a_margin_carries_its_case_and_what_gives(judged: JudgedWith) -> None:
    known: dict[str, Any] = judged({**ASKED, **RATED, "loads.tie_rod_rating": "30 kN"}).worked.known
    assert isinstance(known["bearing_static_safety"], Margin) and isinstance(known["tie_rod_safety"], Margin)
    beside = "rock from behind, outboard of middle"
    assert (known["bearing_static_safety"].case, known["tie_rod_safety"].case) == (beside, beside)
    assert known["bearing_static_safety"].limit == "dents in the outboard row"


def test_a_part_with_its_own_entries_waits_for_the_loads_rather_than_being_passed_over() -> None:
    with pytest.raises(Waits, match=r"loads\.judge_strength"):
        part_loads(None, None, None)
    with pytest.raises(Waits, match="corner_loads"):
        part_loads(None, True, None)
    with pytest.raises(NotJudged):
        part_loads(None, None, False)


def test_what_the_foot_makes_is_counted_where_it_is_more_than_the_pressure_entered() -> None:
    """A harder foot on the sample's pedal: all that the brake bends is loaded by as much, until the tyre would slide."""
    sample = document("scree_ox_strength")
    as_it_is, harder = (
        judged_document({**sample, "brakes": {**sample["brakes"], "pedal_effort": effort}}).worked.known
        for effort in ("100 lbf", "200 lbf")
    )
    made = harder["worked_line_pressure"] / harder["caliper.line_pressure"]
    assert made > 1.5 and as_it_is["worked_line_pressure"] < as_it_is["caliper.line_pressure"]
    assert as_it_is["most_brake_torque"] == as_it_is["front_brake_torque"]
    assert harder["most_brake_torque"] == pytest.approx(made * harder["front_brake_torque"])
    assert harder["multiples"].brake_holds == pytest.approx(1000 * harder["most_brake_torque"])
    assert harder["caliper_bracket_safety"] < as_it_is["caliper_bracket_safety"]


def test_a_rear_pad_that_nobody_named_counts_as_the_front_s_and_is_an_estimate() -> None:
    sample = document("scree_ox_strength")
    brakes = {name: entry for name, entry in sample["brakes"].items() if name != "rear_pad_friction"}
    found = judged_document({**sample, "brakes": brakes})
    (first,) = (one for one in found.findings if one.check == "front-locks-first")
    assert first.verdict in ("watch", "stop") and "rear pad friction" in first.change.lower()


def test_the_foot_is_not_said_to_be_counted_where_the_brake_is_not_known() -> None:
    sample = document("scree_ox_strength")
    caliper = {name: entry for name, entry in sample["caliper"].items() if name != "pad_friction"}
    found = judged_document({**sample, "caliper": caliper})
    (made,) = (one for one in found.findings if one.check == "line-pressure-made")
    assert "is not judged with it" in made.text


@pytest.mark.parametrize(("kind", "verdict"), [("dents", "watch"), ("yield", "stop")])
def test_a_bearing_that_dents_does_not_give_way(kind: CountedOn, verdict: str) -> None:
    """Its own check says when dents are a stop; what yields at half of its load is one here."""
    margins = {
        "one": Margin(0.5, "rock", "dents in the outboard row", part="hub bearing", kind=kind),
        "two": Margin(1.6, "rock", "shear", part="tie rod"),
    }
    assert the_check("strength-least")(margins, (), True, None, None).verdict == verdict
