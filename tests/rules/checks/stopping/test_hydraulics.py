"""Pedal, cylinder and balance, judged from entries as typed, on each limit and just outside it."""

from collections.abc import Callable

import pytest

from rules.judging.judge import Finding, Judged

Changes = dict[str, object]
FindingWith = Callable[[str, Changes], Finding]

# 400 N at 6 to 1 on 20 mm (314.159 mm2): 7.639437 MPa.
PEDAL: Changes = {
    "brakes.pedal_effort": "400 N", "brakes.pedal_ratio": "6", "brakes.master_bore": "20 mm",
    "caliper.line_pressure": "7.639 MPa", "caliper.piston_diameter": "54 mm", "caliper.pistons_per_side": 1,
    "caliper.pad_friction": "0.4", "brakes.effective_radius": "120 mm", "brakes.road_grip": "0.8",
}  # fmt: skip
REAR: Changes = {
    "brakes.rear_piston_diameter": "38 mm", "brakes.rear_pistons_per_side": 1, "brakes.rear_caliper_kind": "sliding",
    "brakes.rear_effective_radius": "120 mm", "job.centre_of_gravity_height": "600 mm", "brakes.piston_take_up": "0.5 mm",
    "brakes.pedal_room": "100 mm", "brakes.rear_pad_friction": "0.4",
}  # fmt: skip

CASES = [
    ("line-pressure-made", PEDAL, "good"),
    ("line-pressure-made", {**PEDAL, "caliper.line_pressure": "7.64 MPa"}, "stop"),
    # 400 N x 9.549 / 7.6394 = 500 N; 13.369 is 700 N
    ("pedal-effort", {**PEDAL, "caliper.line_pressure": "9.549 MPa"}, "good"),
    ("pedal-effort", {**PEDAL, "caliper.line_pressure": "9.55 MPa"}, "watch"),
    ("pedal-effort", {**PEDAL, "caliper.line_pressure": "13.37 MPa"}, "stop"),
    # Front 2 x 2290.221 x 0.5 and rear 2 x 1134.115 x 0.5: 3424.336 mm3 / 314.159 x 6 = 65.4 mm
    ("pedal-travel", {**PEDAL, **REAR}, "good"),
    ("pedal-travel", {**PEDAL, **REAR, "brakes.pedal_room": "98 mm"}, "watch"),  # two thirds are 65.33
    ("pedal-travel", {**PEDAL, **REAR, "brakes.pedal_room": "65.5 mm"}, "watch"),
    ("pedal-travel", {**PEDAL, **REAR, "brakes.pedal_room": "65.3 mm"}, "stop"),
    ("pedal-travel", {**PEDAL, **REAR, "brakes.piston_take_up": None}, "watch"),  # an estimate
    # Same radius and pads: front share 54^2 / (54^2 + 38^2) = 0.668807; weight 500 / 900 = 0.555556; x 2600 / 600 = 0.490757 g
    ("front-locks-first", {**PEDAL, **REAR}, "stop"),
    # A tenth in hand: 0.490757 / 1.1 = 0.446143
    ("front-locks-first", {**PEDAL, **REAR, "brakes.road_grip": "0.4461"}, "good"),
    ("front-locks-first", {**PEDAL, **REAR, "brakes.road_grip": "0.4462"}, "watch"),
    ("front-locks-first", {**PEDAL, **REAR, "brakes.road_grip": "0.4907"}, "watch"),
    ("front-locks-first", {**PEDAL, **REAR, "brakes.road_grip": "0.4908"}, "stop"),
    # A valve that leaves half: 2916 / (2916 + 722) = 0.801539, so 1.0659 g
    ("front-locks-first", {**PEDAL, **REAR, "brakes.rear_pressure_share": "50 %"}, "good"),
    # A rear cylinder of its own on an even bar, 20 / 26 of the bore: rear pressure 0.591716: 2916 / 3770.438 = 0.773385, 0.944 g
    ("front-locks-first", {**PEDAL, **REAR, "brakes.rear_master_bore": "26 mm"}, "good"),
    # Until it is entered the height counts as 0.425 of 1600: 680; 0.113251 x 2600 / 680 = 0.433, with the valve 0.940
    ("front-locks-first", {**PEDAL, **REAR, "job.centre_of_gravity_height": None}, "stop"),
    (
        "front-locks-first",
        {**PEDAL, **REAR, "job.centre_of_gravity_height": None, "brakes.rear_pressure_share": "50 %"},
        "watch",
    ),
    ("front-locks-first", {**PEDAL, **REAR, "brakes.road_grip": "0.4461", "brakes.rear_pad_friction": None}, "watch"),
    ("line-pressure-made", {}, "not judged"),
    ("front-locks-first", {}, "not judged"),
    ("line-pressure-made", {**PEDAL, "brakes.pedal_ratio": None}, "waiting"),
    ("front-locks-first", {**PEDAL, **REAR, "brakes.rear_effective_radius": None}, "waiting"),
]


@pytest.mark.parametrize("check, changes, verdict", CASES)
def test_verdicts(check: str, changes: Changes, verdict: str, finding: FindingWith) -> None:
    found = finding(check, changes)
    assert found.verdict == verdict, found.text
    assert found.change or verdict in ("good", "waiting", "not judged")


def test_what_the_brake_makes_counts_where_it_is_more_than_the_multiple(judged: Callable[[Changes], Judged]) -> None:
    """2 x 0.4 x 7.639 MPa x 2290.221 mm2 x 120 mm = 1679.5 N m; the tyre grips 0.8 x 0.65 x 900 / 2 x 9.80665 x 0.4 = 917.9.

    Over 250 kg at 400 mm, 980.665 N m: 0.936, less than 1.1 entered; a grip of 1.2 makes it 1.404.
    """
    asked: Changes = {"loads.judge_strength": True, "loads.braking": "1.1"}
    assert judged({**PEDAL, **asked}).worked.known["hardest_braking"] == 1.1
    gripping = judged({**PEDAL, **asked, "brakes.road_grip": "1.2"}).worked.known["hardest_braking"]
    assert gripping == pytest.approx(1.404, abs=1e-3)
