"""Each load case by hand: which force acts where, and what reaches the hub. W = 4000 N, wheel centre 400 mm up."""

from collections.abc import Mapping
from dataclasses import replace
from math import cos, hypot, radians, sin
from typing import Any

import pytest

from rules.measure.vectors import Vector
from rules.sheet.loads import Loads
from rules.strength.balance import Linkage
from rules.strength.corner_loads import CaseLoads, Places
from rules.strength.load_cases import Multiples, Stance, every_case, load_cases
from rules.tables.load_multiples import LOAD_MULTIPLES

PLACES = Places(
    contact=(0, 0, 0), wheel_centre=(0, 0, 400), bearing=(0, -20, 400), hub_face=(0, 4, 400), mount_face=(0, -56, 400),
    upper_pivot=(0, -120, 590), lower_pivot=(0, -80, 300), tie_rod=(-130, -90, 370), rock_aside=75.0,
)  # fmt: skip
LINKAGE = Linkage(PLACES.lower_pivot, PLACES.upper_pivot, (0, 0, 1), PLACES.tie_rod, (0, 1, 0))


STRAIGHT = Stance("ride", LINKAGE, (1, 0, 0), (0, 1, 0), (0, 0, 1), (0, 0, 0))
MULTIPLES = Multiples(3.0, 0.8, 1.0, 1.5, 5.0, 4.5, 1.5, outer_wheel=1.8)


def worked(**changed: float) -> Mapping[str, CaseLoads]:
    multiples = replace(MULTIPLES, **changed)
    return {case.case: case for case in every_case([STRAIGHT], PLACES, True, 4000.0, multiples)}


# case; force of the ground on the tyre; moment at the middle of the bearing, 20 inboard of the tyre's plane and 400 up
BY_HAND = [
    ("standing", (0, 0, 4000), (80_000, 0, 0)),  # 20 x 4000 about the fore-and-aft line
    ("bump", (0, 0, 12_000), (240_000, 0, 0)),
    ("braking", (-3200, 0, 4000), (80_000, 0, 64_000)),  # 20 x 3200 steers the front of the wheel outboard
    ("braking backward", (3200, 0, 4000), (80_000, 0, -64_000)),
    ("cornering, outer", (0, -7200, 7200), (-2_736_000, 0, 0)),  # 20 x 7200 less 400 x 7200
    (
        "cornering, inner",
        (0, 800, 800),
        (336_000, 0, 0),
    ),  # what is left of twice 4000, pushed outboard: 420 x 800
    ("kerb", (0, -6000, 4000), (-2_320_000, 0, 0)),  # 80 000 less 400 x 6000
    ("rut's edge", (0, 7200, 4000), (2_960_000, 0, 0)),  # no softer than the outer tyre grips: 80 000 and 400 x 7200
    ("combined, outer", (-3200, -4000, 12_000), (-1_360_000, 0, 64_000)),  # 240 000 less 1 600 000
    ("combined, inner", (-3200, 4000, 12_000), (1_840_000, 0, 64_000)),
    ("landing, inboard", (0, -4000, 20_000), (-1_200_000, 0, 0)),  # 400 000 less 1 600 000
    ("landing, outboard", (0, 4000, 20_000), (2_000_000, 0, 0)),
    ("rock", (-18_000, 0, 4000), (80_000, 0, 360_000)),  # at wheel-centre height: no torque about the wheel's axis
    # the same push 30 and 60 deg up, aimed at the wheel centre: 15 588.457 and 9000; the tyre has left the ground
    ("low rock", (-15_588.457, 0, 9000), (180_000, 0, 311_769.15)),
    ("rock near the foot", (-9000, 0, 15_588.457), (311_769.15, 0, 180_000)),
    # 75 mm beside the tread's middle: 18 000 x 95 and 18 000 x -55 steer
    ("rock, outboard of middle", (-18_000, 0, 4000), (80_000, 0, 1_710_000)),
    ("rock, inboard of middle", (-18_000, 0, 4000), (80_000, 0, -990_000)),
    ("rock, brakes on", (-18_000, 0, 4000), (80_000, 0, 360_000)),
    ("steering stop", (0, -6000, 4000), (80_000, 0, -2_400_000)),  # on the front edge, 400 ahead
    ("steering stop, outboard", (0, 6000, 4000), (80_000, 0, 2_400_000)),
    # a rock met backward: the same the other way round, W up as before
    ("rock from behind", (18_000, 0, 4000), (80_000, 0, -360_000)),
    ("rock from behind, outboard of middle", (18_000, 0, 4000), (80_000, 0, -1_710_000)),
    ("rock from behind, inboard of middle", (18_000, 0, 4000), (80_000, 0, 990_000)),
]


@pytest.mark.parametrize("case, force, moment", BY_HAND)
def test_force_and_moment_at_the_hub(case: str, force: Vector, moment: Vector) -> None:
    loads = worked()[case]
    assert loads.contact == loads.hub_force == pytest.approx(force)
    assert loads.hub_moment == pytest.approx(moment, abs=1e-2)


def test_the_cases_and_their_order() -> None:
    assert list(worked()) == [case for case, *_ in BY_HAND]


def test_only_a_braked_wheel_hands_on_a_brake_torque_and_no_more_than_its_brake_holds() -> None:
    torques = {case: loads.brake_torque for case, loads in worked().items() if loads.brake_torque}
    # 3200 N at 400 mm, the way a wheel rolls forward; the rock's 18 000 N turn the wheel on against the brake
    held = {"braking": 1_280_000, "combined, outer": 1_280_000, "combined, inner": 1_280_000,
            "rock, brakes on": 1_280_000, "braking backward": -1_280_000}  # fmt: skip
    assert torques == pytest.approx(held)
    stronger = worked(brake_holds=2_000_000.0)
    assert stronger["rock, brakes on"].brake_torque == pytest.approx(2_000_000)
    assert stronger["braking"].brake_torque == pytest.approx(1_280_000)


def test_the_inner_wheel_of_a_corner_that_lifts_it_carries_nothing() -> None:
    assert worked(outer_wheel=2.0)["cornering, inner"].contact == (0, 0, 0)


def test_a_stance_that_is_turned_turns_the_push_with_it_and_keeps_its_place_in_the_upright() -> None:
    """Seen from an upright that is steered 30 deg to the left, the car's straight ahead lies 30 deg to the right.

    The push goes along the wheel all the same, so only the links' directions change the loads: the tie rod now lies 30 deg off
    square, its lever about a straight-up axis 130 mm behind shrinks from 130 to 130 cos 30 deg.
    """
    upright = replace(
        LINKAGE, carrying=(0, -80, 300), guiding=(0, -80, 590), tie_rod=(-130, -80, 370),
        tie_rod_line=(sin(radians(30)), cos(radians(30)), 0),
    )  # fmt: skip
    straight = replace(upright, tie_rod_line=(0, 1, 0))
    turned = Stance("inner lock", upright, (1, 0, 0), (0, 1, 0), (0, 0, 1), (0, 0, 0))
    found = every_case([replace(turned, standing="ride", linkage=straight), turned], PLACES, True, 4000.0, MULTIPLES)
    by_name = {case.case: hypot(*case.tie_rod) for case in found}
    more = by_name["rock at inner lock"] / by_name["rock"]
    assert more == pytest.approx(1 / cos(radians(30)))
    everything = {case.name for case in load_cases(MULTIPLES)} - {"standing"}
    assert {name for name in by_name if "lock" in name} == {f"{case} at inner lock" for case in everything}


@pytest.mark.parametrize(
    ("travel", "ruled_out"),
    [
        ("bump", {"braking backward", "cornering, inner"}),
        ("droop", {"braking", "braking backward", "cornering, outer"}),
    ],
)
@pytest.mark.parametrize("lock", ["", " and inner lock", " and outer lock"])
def test_every_hit_is_tried_in_travel_and_at_lock_but_where_nature_rules_it_out(
    travel: str, ruled_out: set[str], lock: str
) -> None:
    """In a corner the outer wheel does not hang nor is the inner pushed up; braking forward the front goes down, not up."""
    standing: Any = f"{travel},{lock.removeprefix(' and')}" if lock else travel
    found = {case.case for case in every_case([replace(STRAIGHT, standing=standing)], PLACES, True, 4000.0, MULTIPLES)}
    everything = {case.name for case in load_cases(MULTIPLES)} - {"standing"}
    assert found == {f"{case} at full {travel}{lock}" for case in everything - ruled_out}


def test_a_rock_between_the_heights_that_are_tried_loads_no_joint_by_4_per_cent_more() -> None:
    """Any height from the hub down to where it is a bump: the loads of a rock t deg lower are cos t and sin t of two cases."""
    by_name = worked()
    push = {30: by_name["low rock"], 60: by_name["rock near the foot"]}
    c30, s30, c60, s60 = cos(radians(30)), sin(radians(30)), cos(radians(60)), sin(radians(60))
    for place in ("upper_pivot", "lower_pivot", "tie_rod"):
        low, foot = (push[at].at(place) for at in (30, 60))
        level = tuple((a * s60 - b * s30) / (c30 * s60 - c60 * s30) for a, b in zip(low, foot, strict=True))
        upward = tuple((b * c30 - a * c60) / (c30 * s60 - c60 * s30) for a, b in zip(low, foot, strict=True))
        most = max(hypot(*one) for one in (level, low, foot))
        for under in range(0, 76, 5):
            c, s = cos(radians(under)), sin(radians(under))
            assert hypot(*(a * c + b * s for a, b in zip(level, upward, strict=True))) <= most / cos(radians(15)) + 1e-6


@pytest.mark.parametrize("case", [case for case, *_ in BY_HAND])
def test_hub_and_brake_and_joints_balance_about_the_origin(case: str) -> None:
    loads = worked()[case]
    hub = (loads.hub_force, PLACES.bearing)
    joints = [
        (loads.upper_pivot, PLACES.upper_pivot),
        (loads.lower_pivot, PLACES.lower_pivot),
        (loads.tie_rod, PLACES.tie_rod),
    ]
    for axis in range(3):
        assert sum(force[axis] for force, _ in [hub, *joints]) == pytest.approx(0.0, abs=1e-6)
        after, last = (axis + 1) % 3, (axis + 2) % 3
        turned = sum(point[after] * force[last] - point[last] * force[after] for force, point in [hub, *joints])
        own = loads.hub_moment[axis] + (loads.brake_torque if axis == 1 else 0.0)
        assert turned + own == pytest.approx(0.0, abs=1e-3)


def test_the_spring_on_the_upper_arm_puts_the_weight_on_the_upper_pivot() -> None:
    linkage = Linkage(PLACES.upper_pivot, PLACES.lower_pivot, (0, 0, 1), PLACES.tie_rod, (0, 1, 0))
    upper = every_case([replace(STRAIGHT, linkage=linkage)], PLACES, False, 4000.0, MULTIPLES)[1]
    assert upper.upper_pivot[2] == pytest.approx(-12_000.0)
    assert upper.lower_pivot[2] == pytest.approx(0.0)
    assert worked()["bump"].lower_pivot[2] == pytest.approx(-12_000.0)


def test_a_tyre_pulls_no_harder_than_it_is_pressed_down() -> None:
    hard = worked(braking=1.75, cornering=1.2, bump=1.0, outer_wheel=1.0)
    assert hard["braking"].contact == pytest.approx((-7000, 0, 7000))
    assert hard["cornering, outer"].contact == pytest.approx((0, -4800, 4000))
    # root of 1.75^2 + 1.2^2 = 4.5025 is 2.1219096
    assert hard["combined, outer"].contact == pytest.approx((-7000, -4800, 8487.6384))


@pytest.mark.parametrize("case", LOAD_MULTIPLES)
def test_the_question_names_the_figures_that_stand_in(case: str) -> None:
    how = Loads.asked()[case.replace(" ", "_")].how
    for offered in LOAD_MULTIPLES[case].offered.values():  # type: ignore[index]
        assert f"{offered:g}" in how


@pytest.mark.parametrize("case", LOAD_MULTIPLES)
def test_what_stands_in_lies_in_the_range_it_is_said_to_come_from(case: str) -> None:
    multiple = LOAD_MULTIPLES[case]  # type: ignore[index]
    assert set(multiple.offered) == {"trail", "dunes", "race", "road"}
    assert all(multiple.low <= offered <= multiple.high for offered in multiple.offered.values())
