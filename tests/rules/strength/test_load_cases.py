"""Each load case by hand: which force acts where, and what reaches the hub. W = 4000 N, spindle 400 mm up."""

from collections.abc import Mapping

import pytest

from rules.measure.vectors import Vector
from rules.sheet.loads import Loads
from rules.strength.balance import Linkage
from rules.strength.corner_loads import CaseLoads, Places
from rules.strength.load_cases import Multiples, case_loads, load_cases
from rules.tables.load_multiples import LOAD_MULTIPLES

PLACES = Places(
    contact=(0, 0, 0), wheel_centre=(0, 0, 400), bearing=(0, -20, 400), hub_face=(0, 4, 400), mount_face=(0, -56, 400),
    upper_pivot=(0, -120, 590), lower_pivot=(0, -80, 300), tie_rod=(-130, -90, 370),
)  # fmt: skip
LINKAGE = Linkage(PLACES.lower_pivot, PLACES.upper_pivot, (0, 0, 1), PLACES.tie_rod, (0, 1, 0))


def worked(**changed: float) -> Mapping[str, CaseLoads]:
    multiples = {"bump": 3.0, "braking": 0.8, "cornering": 1.0, "landing": 5.0, "rock": 4.5, "steering_stop": 1.5}
    cases = load_cases(4000.0, 400.0, Multiples(**multiples | changed))
    return {case.name: case_loads(case, PLACES, LINKAGE, True) for case in cases}


# case; force of the ground on the tyre; moment at the middle of the bearing, 20 inboard of the tyre's plane and 400 up
BY_HAND = [
    ("standing", (0, 0, 4000), (80_000, 0, 0)),  # 20 x 4000 about the fore-and-aft line
    ("bump", (0, 0, 12_000), (240_000, 0, 0)),
    ("braking", (-3200, 0, 4000), (80_000, 0, 64_000)),  # 20 x 3200 steers the front of the wheel outboard
    ("cornering", (0, -4000, 4000), (-1_520_000, 0, 0)),  # 80 000 less 400 x 4000
    ("combined", (-3200, -4000, 12_000), (-1_360_000, 0, 64_000)),  # 240 000 less 1 600 000
    ("landing", (0, 0, 20_000), (400_000, 0, 0)),
    ("rock", (-18_000, 0, 4000), (80_000, 0, 360_000)),  # at spindle height: no torque about the spindle
    ("steering stop", (0, -6000, 4000), (80_000, 0, -2_400_000)),  # on the front edge, 400 ahead
]


@pytest.mark.parametrize("case, force, moment", BY_HAND)
def test_force_and_moment_at_the_hub(case: str, force: Vector, moment: Vector) -> None:
    loads = worked()[case]
    assert loads.contact == loads.hub_force == pytest.approx(force)
    assert loads.hub_moment == pytest.approx(moment, abs=1e-6)


def test_the_cases_and_their_order() -> None:
    assert list(worked()) == [case for case, *_ in BY_HAND]


def test_only_a_braked_wheel_hands_on_a_brake_torque() -> None:
    torques = {case: loads.brake_torque for case, loads in worked().items() if loads.brake_torque}
    # 3200 N at 400 mm, the way a wheel rolls forward
    assert torques == pytest.approx({"braking": 1_280_000, "combined": 1_280_000})


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
    bump = load_cases(4000.0, 400.0, Multiples(3.0, 1.0, 1.0, 5.0, 4.5, 1.5))[1]
    upper = case_loads(bump, PLACES, linkage, spring_on_lower=False)
    assert upper.upper_pivot[2] == pytest.approx(-12_000.0)
    assert upper.lower_pivot[2] == pytest.approx(0.0)
    assert worked()["bump"].lower_pivot[2] == pytest.approx(-12_000.0)


def test_a_tyre_pulls_no_harder_than_it_is_pressed_down() -> None:
    hard = worked(braking=1.75, cornering=1.2, bump=1.0)
    assert hard["braking"].contact == pytest.approx((-7000, 0, 7000))
    assert hard["cornering"].contact == pytest.approx((0, -4800, 4800))
    # root of 1.75^2 + 1.2^2 = 4.5025 is 2.1219096
    assert hard["combined"].contact == pytest.approx((-7000, -4800, 8487.6384))


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
