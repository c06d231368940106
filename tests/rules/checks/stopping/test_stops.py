"""The brakes step on the base sheet: every value by hand, every judgement on and beside its limit.

Base sheet: 900 kg, 65 % front, wheel centre 400 mm up, rotor 280 mm, sliding caliper made for 22 mm, minimum 20 mm.
"""

from collections.abc import Callable, Mapping

import pytest

from rules.checks.stopping.stops import (
    RISE,
    SPARE_TRAVEL,
    brake_can_lock_wheel,
    piston_travel_worn,
    rotor_heat_one_stop,
)
from rules.judging.judge import Finding, Judged
from rules.judging.trade import trade
from rules.sheet.brakes import Brakes
from rules.values.stopping.brakes import TRANSFER

FindingWith = Callable[[str, Mapping[str, object]], Finding]
JudgedWith = Callable[[Mapping[str, object]], Judged]

TORQUE: dict[str, object] = {
    "caliper.piston_diameter": "48 mm", "caliper.pistons_per_side": 1, "caliper.line_pressure": "8 MPa",
    "caliper.pad_friction": 0.38, "brakes.effective_radius": "115 mm", "brakes.road_grip": 0.9,
}  # fmt: skip
HEAT: dict[str, object] = {
    "brakes.stop_from": "128 km/h", "brakes.deceleration": 0.7, "rotor.ring_mass": "4 kg",
    "rotor.band_inside_diameter": "170 mm",
}  # fmt: skip
PADS: dict[str, object] = {
    "brakes.pad_thickness_new": "11 mm", "brakes.pad_thickness_worn": "2 mm", "brakes.piston_travel": "25 mm",
}  # fmt: skip
CUT: dict[str, object] = {
    "rotor.style": "cut to one plate", "rotor.finished_thickness": "9 mm", "rotor.kept_plate_carries_hat": True,
}  # fmt: skip
RUN: dict[str, object] = {"brakes.stops_in_a_run": 5, "brakes.cooling": "none"}

BY_HAND = [
    (TORQUE, "brake_effective_radius", 115.0),
    ({"rotor.band_inside_diameter": "170 mm"}, "brake_effective_radius", 112.5),  # (280 + 170) / 4
    (TORQUE, "pad_clamp_force", 14_476.459),  # 1809.5574 mm2 x 8
    (TORQUE, "front_brake_torque", 1265.2425),  # 2 x 0.38 x 14 476.459 x 0.115
    (TORQUE, "front_tyre_load_braking", 2868.4451),  # 0.65 x 450 kg x 9.80665; more than 250 kg
    (TORQUE | {"job.front_brake_share": "50 %"}, "front_tyre_load_braking", 2451.6625),  # 250 kg; half of 450 is less
    (TORQUE, "wheel_grip_torque", 1032.6402),  # 0.9 x 2868.4451 x 0.4
    # 100 mm at 115 is 0.8695652 rad; inner edge 95, height 40: 14 476.459 / 3304.3478
    (TORQUE | {"brakes.pad_length": "100 mm", "brakes.pad_height": "40 mm"}, "pad_pressure", 4.3810334),
    (HEAT, "stop_energy", 184_888.89),  # 450 x 35.5555556^2 x 0.65 / 2
    (HEAT, "friction_ring_mass", 4.0),
    (HEAT, "rotor_rise_one_stop", 100.483),  # 184 888.89 / 1840
    (HEAT | RUN, "rotor_rise_run", 502.4155),
    # Solid, 22 mm: pi / 4 x (0.28^2 - 0.17^2) = 0.0388772 m2; x 0.022 x 7200
    (HEAT | {"rotor.ring_mass": None, "rotor.style": "solid"}, "friction_ring_mass", 6.158155),
    (PADS, "pad_wear", 9.0),
    (PADS, "rotor_thickness_lost", 2.0),
    (PADS, "piston_travel_needed", 20.0),  # 2 x 9 + 2
    (PADS | {"caliper.kind": "fixed"}, "piston_travel_needed", 10.0),  # 9 + 1
    (PADS | CUT, "rotor_thickness_lost", 13.0),
    (PADS | CUT, "piston_travel_needed", 31.0),
    (PADS | {"caliper.made_for_thickness": "18 mm"}, "rotor_thickness_lost", 0.0),
    (CUT, "thickness_cut_away", 13.0),
]


@pytest.mark.parametrize(("changes", "name", "by_hand"), BY_HAND)
def test_a_value_is_the_hand_figure(judged: JudgedWith, changes: dict[str, object], name: str, by_hand: float) -> None:
    assert judged(changes).worked.known[name] == pytest.approx(by_hand, rel=1e-6)


def test_the_hand_figures_cover_every_value_of_the_step_but_the_face(judged: JudgedWith) -> None:
    values = {
        name for name, node in trade().values.items()
        if node.note.subject == "brakes" and "hydraulics" not in node.function.__module__  # tested beside their checks
    }  # fmt: skip
    assert values - {name for _, name, _ in BY_HAND} == {"rotor_face_rise"}
    # The face: tests/published/test_brake_heat.py. Here only that it is more than the mean, and that a gentle stop is less.
    hard, gentle = judged(HEAT), judged(HEAT | {"brakes.deceleration": 0.2})
    assert hard.worked.known["rotor_face_rise"] > gentle.worked.known["rotor_face_rise"] > 95


def test_cooling_between_stops_by_hand(judged: JudgedWith) -> None:
    # Both faces 0.0777544 m2 x 10: 1840 / 0.777544 = 2366.4 s; exp(-60 / 2366.4) = 0.974964; sum of five terms 4.755829.
    still = HEAT | RUN | {"brakes.cooling": "still air", "brakes.seconds_between": 60}
    assert judged(still).worked.known["rotor_rise_run"] == pytest.approx(100.483 * 4.755829, rel=1e-5)
    moving = judged(still | {"brakes.cooling": "moving air"}).worked.known["rotor_rise_run"]
    assert moving < judged(still).worked.known["rotor_rise_run"] < 502.4


def test_every_way_of_cooling_is_worked_with() -> None:
    assert {*TRANSFER, "none"} == set(Brakes.asked()["cooling"].choices)


@pytest.mark.parametrize(
    ("changes", "name", "field"),
    [
        ({"rotor.band_inside_diameter": "170 mm"}, "brake_effective_radius", "brakes.effective_radius"),
        (HEAT | {"rotor.ring_mass": None, "rotor.style": "solid"}, "friction_ring_mass", "rotor.ring_mass"),
        (HEAT | CUT | {"rotor.ring_mass": None}, "friction_ring_mass", "rotor.ring_mass"),
    ],
)
def test_a_stand_in_is_an_estimate(judged: JudgedWith, changes: dict[str, object], name: str, field: str) -> None:
    assert judged(changes).worked.estimated[name] == (field,)


@pytest.mark.parametrize(
    ("changes", "name", "waits_for"),
    [
        ({}, "brake_effective_radius", ("brakes.effective_radius",)),
        (TORQUE | {"caliper.line_pressure": None}, "front_brake_torque", ("caliper.line_pressure",)),
        (TORQUE | {"job.front_brake_share": None}, "wheel_grip_torque", ("job.front_brake_share",)),
        (HEAT | {"rotor.ring_mass": None}, "rotor_rise_one_stop", ("rotor.ring_mass",)),
        (HEAT | {"job.front_brake_share": None}, "stop_energy", ("job.front_brake_share",)),
        (HEAT | {"job.vehicle_weight": None}, "stop_energy", ("job.vehicle_weight",)),
        (HEAT | {"brakes.deceleration": None}, "rotor_face_rise", ("brakes.deceleration",)),
        (HEAT | {"rotor.band_inside_diameter": None}, "rotor_face_rise", ("rotor.band_inside_diameter",)),
        (HEAT | {"brakes.cooling": "none"}, "rotor_rise_run", ("brakes.stops_in_a_run",)),
        (HEAT | {"brakes.stops_in_a_run": 3}, "rotor_rise_run", ("brakes.cooling",)),
        (HEAT | RUN | {"brakes.cooling": "still air"}, "rotor_rise_run", ("brakes.seconds_between",)),
        (PADS | {"brakes.pad_thickness_worn": None}, "piston_travel_needed", ("brakes.pad_thickness_worn",)),
        ({"brakes.pad_length": "90 mm"} | TORQUE, "pad_pressure", ("brakes.pad_height",)),
    ],
)
def test_a_value_waits(judged: JudgedWith, changes: dict[str, object], name: str, waits_for: tuple[str, ...]) -> None:
    assert judged(changes).worked.waits[name] == waits_for


@pytest.mark.parametrize(
    ("changes", "name", "reason"),
    [
        (PADS | {"brakes.pad_thickness_worn": "12 mm"}, "pad_wear", "worn pad is thicker"),
        (HEAT | {"rotor.band_inside_diameter": "280 mm"}, "rotor_face_rise", "not less than the rotor"),
    ],
)
def test_a_contradiction_is_not_worked_with(
    judged: JudgedWith, changes: dict[str, object], name: str, reason: str
) -> None:
    assert reason in judged(changes).worked.broken[name]


UNCOOLED = {"rotor.ring_mass": "4 kg", "brakes.cooling": "none"}
CHECKS = (
    "brake-can-lock-wheel",
    "rotor-heat-one-stop",
    "rotor-heat-run",
    "piston-travel-worn",
    "rotor-cut-consequence",
)


@pytest.mark.parametrize("check", CHECKS)
@pytest.mark.parametrize("taken", [{}, {"job.front_brake_share": None, "rotor.ring_mass": None}])
def test_while_the_step_is_untouched_nothing_of_it_is_judged(
    finding: FindingWith, check: str, taken: dict[str, object]
) -> None:
    wanted = "does not apply" if check == "rotor-cut-consequence" else "not judged"
    assert finding(check, taken).verdict == wanted


@pytest.mark.parametrize(
    ("check", "changes", "verdict"),
    [
        # The brake makes 1265.24 N m; the tyre asks for 1147.378 N m x grip, or x deceleration in g.
        ("brake-can-lock-wheel", TORQUE | {"brakes.road_grip": 1.10}, "good"),
        ("brake-can-lock-wheel", TORQUE | {"brakes.road_grip": 1.11}, "watch"),
        ("brake-can-lock-wheel", TORQUE | {"brakes.road_grip": 1.2, "brakes.deceleration": 1.10}, "watch"),
        ("brake-can-lock-wheel", TORQUE | {"brakes.road_grip": 1.2, "brakes.deceleration": 1.11}, "stop"),
        ("brake-can-lock-wheel", TORQUE | {"caliper.pad_friction": None}, "waiting"),
        # 184 888.89 J: 230 deg C at 1.7476 kg, 250 at 1.6077.
        ("rotor-heat-one-stop", HEAT | {"rotor.ring_mass": "1.75 kg"}, "good"),
        ("rotor-heat-one-stop", HEAT | {"rotor.ring_mass": "1.74 kg"}, "watch"),
        # 700 deg C at 0.5742 kg: the iron-carbon diagram's 727 deg C, from air at 27.
        ("rotor-heat-one-stop", HEAT | {"rotor.ring_mass": "0.575 kg"}, "watch"),
        ("rotor-heat-one-stop", HEAT | {"rotor.ring_mass": "0.57 kg"}, "stop"),
        ("rotor-heat-one-stop", HEAT | CUT | {"rotor.ring_mass": "0.57 kg"}, "stop"),
        ("rotor-heat-one-stop", HEAT | {"brakes.deceleration": None, "rotor.band_inside_diameter": None}, "good"),
        ("rotor-heat-one-stop", HEAT | CUT, "watch"),
        ("rotor-heat-one-stop", HEAT | {"rotor.ring_mass": None}, "waiting"),
        ("rotor-heat-run", HEAT | RUN | {"rotor.ring_mass": "40 kg", "brakes.stops_in_a_run": 1}, "watch"),
        ("rotor-heat-run", HEAT | RUN, "watch"),
        # 184 888.89 / (460 x 4) = 100.48 deg C a stop: six in a row 602.9, seven 703.4, nothing let go between them.
        ("rotor-heat-run", HEAT | UNCOOLED | {"brakes.stops_in_a_run": 6}, "watch"),
        ("rotor-heat-run", HEAT | UNCOOLED | {"brakes.stops_in_a_run": 7}, "stop"),
        ("rotor-heat-run", HEAT, "not judged"),
        ("piston-travel-worn", PADS | {"brakes.piston_travel": "21.1 mm"}, "good"),
        ("piston-travel-worn", PADS | {"brakes.piston_travel": "21 mm"}, "good"),
        ("piston-travel-worn", PADS | {"brakes.piston_travel": "20.9 mm"}, "watch"),
        ("piston-travel-worn", PADS | {"brakes.piston_travel": "20 mm"}, "watch"),
        ("piston-travel-worn", PADS | {"brakes.piston_travel": "19.9 mm"}, "stop"),
        ("piston-travel-worn", PADS | {"caliper.kind": "fixed", "brakes.piston_travel": "11 mm"}, "good"),
        ("piston-travel-worn", PADS | {"caliper.kind": "fixed", "brakes.piston_travel": "9.9 mm"}, "stop"),
        ("piston-travel-worn", PADS | CUT | {"brakes.piston_travel": "60 mm"}, "watch"),
        ("piston-travel-worn", PADS | CUT | {"brakes.piston_travel": "30.9 mm"}, "stop"),
        ("piston-travel-worn", PADS | {"brakes.piston_travel": None}, "waiting"),
        ("rotor-cut-consequence", CUT, "watch"),
        ("rotor-cut-consequence", CUT | {"rotor.finished_thickness": None}, "waiting"),
    ],
)
def test_a_judgement_beside_its_limit(
    finding: FindingWith, check: str, changes: dict[str, object], verdict: str
) -> None:
    found = finding(check, changes)
    assert found.verdict == verdict, found.text
    assert verdict not in ("watch", "stop") or found.change


def test_the_limits_themselves_count_as_the_better_side() -> None:
    assert brake_can_lock_wheel(1000.0, 1000.0, None, 0.65, 900.0, 400.0).verdict == "good"
    assert brake_can_lock_wheel(1000.0, 999.9, None, 0.65, 900.0, 400.0).verdict == "watch"
    assert rotor_heat_one_stop(230.0, None, 4.0, "vented", RISE).verdict == "good"
    assert rotor_heat_one_stop(230.1, None, 4.0, "vented", RISE).verdict == "watch"
    assert piston_travel_worn(20.0, 2.0, 20.0, "sliding", "vented", SPARE_TRAVEL).verdict == "watch"


def test_the_trade_flag_speaks_up_over_250_only() -> None:
    assert "trade" not in rotor_heat_one_stop(250.0, None, 4.0, "vented", RISE).text
    assert "trade" in rotor_heat_one_stop(250.1, None, 4.0, "vented", RISE).text


def test_a_torque_from_the_bands_middle_is_never_better_than_watch(finding: FindingWith) -> None:
    found = finding(
        "brake-can-lock-wheel", TORQUE | {"brakes.effective_radius": None, "rotor.band_inside_diameter": "170 mm"}
    )
    assert found.verdict == "watch" and found.estimated_from == ("brakes.effective_radius",)


def test_a_ring_mass_that_would_do_is_named(finding: FindingWith) -> None:
    assert "1.75 kg" in finding("rotor-heat-one-stop", HEAT | {"rotor.ring_mass": "1 kg"}).change


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({}, ("half of the iron", "twice as much", "6.5 mm", "further outboard", "comes out 13 mm")),
        ({"rotor.kept_plate_carries_hat": False}, ("further inboard",)),
        ({"caliper.kind": "fixed"}, ("comes out 6.5 mm",)),
    ],
)
def test_the_cost_of_cutting_is_spelled_out(
    finding: FindingWith, changes: dict[str, object], words: tuple[str, ...]
) -> None:
    text = finding("rotor-cut-consequence", CUT | changes).text
    assert all(word in text for word in words), text


def test_a_whole_sheet_of_a_brake_too_small_and_pads_too_thin_stops(judged: JudgedWith) -> None:
    weak = TORQUE | HEAT | PADS | RUN | {"caliper.line_pressure": "3 MPa", "brakes.piston_travel": "12 mm"}
    result = judged(weak)
    stopped = {found.check for found in result.findings if found.verdict == "stop"}
    assert result.verdict == "stop" and {"brake-can-lock-wheel", "piston-travel-worn"} <= stopped
