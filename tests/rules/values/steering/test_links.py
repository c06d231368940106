"""Where the tie rod takes hold, the arms' inner pivots, and which way the links lie: on a whole sheet.

The sheet's axis: inclination 10 deg, castor 6 deg, 95.5308 mm inboard of the tyre plane at wheel-centre height (25 + 400 tan 10).
"""

from collections.abc import Callable
from math import cos, degrees, radians, sin, tan

import pytest
from skspatial.objects import Plane

from rules.judging.judge import Finding, Judged
from rules.sheet.confirmed import Confirmed
from rules.values.steering.links import ArmPlane
from tests.support.declared import the_check

JudgedWith = Callable[..., Judged]
FindingOf = Callable[..., Finding]

DIRECT = {"steering.tie_rod_ahead": None, "steering.tie_rod_inboard": None}
COPIED = {
    **DIRECT,
    "steering.copied_length": "140 mm",
    "steering.copied_angle": "20 deg",
    "steering.copied_side": "behind",
}


def test_a_copied_arm_stands_on_the_axis_at_the_height_of_its_end(
    judged: JudgedWith, moving: dict[str, object]
) -> None:
    known = judged({**moving, **COPIED}).worked.known
    # 40 mm below the wheel centre the axis is 40 tan 6 ahead of it and 95.5308 - 40 tan 10 inboard of the tyre plane.
    assert known["tie_rod_end_ahead"] == pytest.approx(40 * tan(radians(6)) - 140 * cos(radians(20)))
    assert known["tie_rod_end_offset"] == pytest.approx(
        -(25 + 400 * tan(radians(10))) + 40 * tan(radians(10)) - 140 * sin(radians(20))
    )
    assert known["tie_rod_end_height"] == pytest.approx(360.0)


def test_an_arm_that_points_ahead_is_mirrored_fore_and_aft(judged: JudgedWith, moving: dict[str, object]) -> None:
    known = judged({**moving, **COPIED, "steering.copied_side": "ahead"}).worked.known
    assert known["tie_rod_end_ahead"] == pytest.approx(40 * tan(radians(6)) + 140 * cos(radians(20)))


def test_the_place_entered_outweighs_a_copied_arm(judged: JudgedWith, moving: dict[str, object]) -> None:
    known = judged({**moving, **COPIED, "steering.tie_rod_ahead": "-100 mm"}).worked.known
    assert known["tie_rod_end_ahead"] == pytest.approx(-100.0)


@pytest.mark.parametrize("empty", ["copied_length", "copied_angle", "copied_side"])
def test_a_copied_arm_waits_for_what_is_not_copied_yet(
    judged: JudgedWith, moving: dict[str, object], empty: str
) -> None:
    waits = judged({**moving, **COPIED, f"steering.{empty}": None}).worked.waits
    assert f"steering.{empty}" in waits["tie_rod_end_ahead"]


def test_the_rods_slope_and_sweep_come_from_its_two_ends(judged: JudgedWith, moving: dict[str, object]) -> None:
    known = judged(moving).worked.known
    # Outer end 126 behind, 140 inboard (660 from the centre line), 360 up; inner 135 behind, 301 out, 358 up: run 359.
    assert tan(known["tie_rod_slope_at_ride"]) == pytest.approx(2 / 359)
    assert tan(known["tie_rod_sweep_at_ride"]) == pytest.approx(9 / 359)


def test_the_pivots_outweigh_an_angle_entered_beside_them(judged: JudgedWith, moving: dict[str, object]) -> None:
    """Every other way the wheel stands is worked out from them too. That the two differ has a check of its own."""
    slopes = {"loads.tie_rod_slope": "5 deg", "loads.tie_rod_sweep": "5 deg", "loads.arm_slope": "4 deg"}
    without, beside = judged(moving).worked.known, judged({**moving, **slopes}).worked.known
    for name in ("tie_rod_slope_at_ride", "tie_rod_sweep_at_ride", "guiding_arm_slope", "guiding_hinge_slope"):
        assert beside[name] == without[name]


def test_an_angle_entered_counts_where_the_pivots_are_not_known(judged: JudgedWith, moving: dict[str, object]) -> None:
    outer = {name: entry for name, entry in moving.items() if name.startswith("steering.tie_rod")}
    slopes = {"loads.tie_rod_slope": "5 deg", "loads.arm_slope": "4 deg", "loads.arm_hinge_slope": "3 deg"}
    known = judged({**outer, **slopes}).worked.known
    assert degrees(known["tie_rod_slope_at_ride"]) == pytest.approx(5.0)
    assert degrees(known["guiding_arm_slope"]) == pytest.approx(4.0)
    assert degrees(known["guiding_hinge_slope"]) == pytest.approx(3.0)


def test_of_an_arm_known_from_the_front_the_hinges_slope_counts_as_entered(judged: JudgedWith) -> None:
    """Seen from the front both its pivots are one point, and how its hinge slopes is not to be seen."""
    arms = ("lower", "285 mm"), ("upper", "520 mm")
    front = {f"arms.{which}_front_{key}": entry for which, height in arms
             for key, entry in (("from_centre", "300 mm"), ("height", height))}  # fmt: skip
    known = judged({**front, "loads.arm_hinge_slope": "3 deg"}).worked.known
    assert degrees(known["guiding_hinge_slope"]) == pytest.approx(3.0)


@pytest.mark.parametrize(
    ("check", "changes", "verdict"),
    [
        ("tie-rod-lies-as-entered", {}, "does not apply"),
        # By its ends atan(2/359) = 0.319 deg and atan(9/359) = 1.436 deg; within 2 deg agree, within 5 are asked about.
        ("tie-rod-lies-as-entered", {"loads.tie_rod_slope": "2.3 deg"}, "good"),
        ("tie-rod-lies-as-entered", {"loads.tie_rod_slope": "2.35 deg"}, "watch"),
        ("tie-rod-lies-as-entered", {"loads.tie_rod_slope": "5.35 deg"}, "stop"),
        ("tie-rod-lies-as-entered", {"loads.tie_rod_sweep": "-0.55 deg"}, "good"),
        ("tie-rod-lies-as-entered", {"loads.tie_rod_sweep": "-0.6 deg"}, "watch"),
        ("tie-rod-lies-as-entered", {"loads.tie_rod_sweep": "-3.6 deg"}, "stop"),
        ("tie-rod-lies-as-entered", {"loads.tie_rod_slope": "30 deg", "steering.inner_height": None}, "not judged"),
        ("arm-lies-as-entered", {}, "does not apply"),
        # Its hinge from 512 mm high in front to 512 behind lies level.
        ("arm-lies-as-entered", {"loads.arm_hinge_slope": "2 deg"}, "good"),
        ("arm-lies-as-entered", {"loads.arm_hinge_slope": "-2.1 deg"}, "watch"),
        ("arm-lies-as-entered", {"loads.arm_hinge_slope": "5.1 deg"}, "stop"),
        ("arm-lies-as-entered", {"loads.arm_slope": "24 deg"}, "stop"),
    ],
)
def test_angles_entered_agree_with_the_places_entered(
    finding: FindingOf, moving: dict[str, object], check: str, changes: dict[str, object], verdict: str
) -> None:
    found = finding(check, {**moving, **changes})
    assert found.verdict == verdict, found.text


@pytest.mark.parametrize(
    ("slope", "hinge", "plane", "verdict", "told"),
    [  # deg; two angles that agree may be large, and two that differ may add up to little
        (10.0, 2.0, (10.0, -1.0), "watch", "arm_hinge_slope"),
        (10.0, -20.0, (6.0, -19.5), "watch", "arm_slope"),
        (1.0, 5.0, (-3.0, 3.0), "watch", "arm_slope"),
        (-4.0, 1.0, (-5.0, -4.5), "stop", "arm_hinge_slope"),
        (-4.0, 1.0, (1.5, -2.0), "stop", "arm_slope"),
        (-8.0, 1.0, (-7.0, 2.5), "good", "arm_hinge_slope"),
    ],
)
def test_of_two_angles_the_one_farther_off_is_told(
    slope: float, hinge: float, plane: tuple[float, float], verdict: str, told: str
) -> None:
    entered = {"arm_slope": radians(slope), "arm_hinge_slope": radians(hinge)}
    lies = the_check("arm-lies-as-entered")
    found = lies(*entered.values(), ArmPlane(*map(radians, plane)), Confirmed())
    worked = dict(zip(entered, plane, strict=True))[told]
    assert (found.verdict, degrees(found.figures["worked"][0])) == (verdict, pytest.approx(worked))
    assert f"{{{told}}}" in found.text and found.asks_about == (f"loads.{told}" if verdict == "watch" else "")
    assert lies(*entered.values(), ArmPlane(*map(radians, plane)), Confirmed({f"loads.{told}"})).verdict == (
        "good" if verdict == "watch" else verdict
    )


def test_the_arms_plane_is_that_of_a_geometry_library(judged: JudgedWith, moving: dict[str, object]) -> None:
    """scikit-spatial 10: plane through three points. The upper arm, its hinge tilted so that both slopes count."""
    tilted = {**moving, "arms.upper_front_height": "530 mm", "arms.upper_rear_from_centre": "360 mm"}
    known = judged(tilted).worked.known
    outer = [known[f"upper_pivot_{part}"] for part in ("ahead", "offset", "height")]
    x, y, z = Plane.from_points([190, 390 - 800, 530], [-220, 360 - 800, 512], outer).normal
    assert tan(known["guiding_arm_slope"]) == pytest.approx(-y / z, abs=1e-12)
    assert tan(known["guiding_hinge_slope"]) == pytest.approx(-x / z, abs=1e-12)


def test_inner_pivots_make_the_links_directions_known(finding: FindingOf, moving: dict[str, object]) -> None:
    asked = {"loads.judge_strength": True}
    ends_only = {name: entry for name, entry in moving.items() if name.startswith("steering.tie_rod")}
    assert finding("link-directions", {**asked, **ends_only}).verdict == "watch"
    assert finding("link-directions", {**asked, **moving}).verdict == "good"


def test_one_arm_begun_makes_the_other_wait(judged: JudgedWith) -> None:
    waits = judged({"arms.lower_front_from_centre": "300 mm", "arms.lower_front_height": "285 mm"}).worked.waits
    assert waits["upper_hinge"] == ("arms.upper_front_from_centre", "arms.upper_front_height")


def test_from_the_front_alone_the_hinge_runs_straight_ahead(judged: JudgedWith) -> None:
    front_view = {"arms.lower_front_from_centre": "300 mm", "arms.lower_front_height": "285 mm"}
    hinge = judged(front_view).worked.known["lower_hinge"]
    assert hinge.flat and hinge.front[1:] == hinge.rear[1:] == pytest.approx((-500.0, 285.0))


def test_a_tie_rod_that_points_outboard_has_no_slope(judged: JudgedWith, moving: dict[str, object]) -> None:
    worked = judged({**moving, "steering.inner_from_centre": "700 mm"}).worked
    assert "does not lie inboard of its outer end" in worked.not_judged["tie_rod_slope_at_ride"]


HEIGHTS = {
    "arms.lower_front_height": 285, "arms.lower_rear_height": 285, "arms.upper_front_height": 512,
    "arms.upper_rear_height": 512, "steering.inner_height": 358,
}  # fmt: skip


def test_a_tie_rod_may_slope_as_its_arms_do(judged: JudgedWith, moving: dict[str, object]) -> None:
    """Common practice, no source: cars with long travel stand with arms and tie rod falling outward.

    Tie-rod end: 400 - 40 = 360 up; 144 mm inboard of the hub's face, which a hat of 6 puts 4 outboard of the tyre's plane, so
    800 + 4 - 144 = 660 from the middle, and its inner end 301: a run of 359. Lower inner pivots at 285 + 40 = 325; the lower
    joint is 400 - 125 = 275 up and, with 25 of ground offset and 10 deg, 25 + 275 tan 10 = 73.49 inboard of the tyre's plane,
    so 726.51 - 300 = 426.51 of run for 50 of rise. The upper arm rises less; so 359 x 50 / 426.51 = 42.09 bounds it.
    """
    raised = {**moving, **{name: f"{height + 40} mm" for name, height in HEIGHTS.items()}}
    known = judged({**raised, "steering.inner_height": "450 mm"}).worked.known
    assert known["inner_height_as_arms"] == pytest.approx(360 + 42.09, abs=0.01)

    def verdict(changes: dict[str, object]) -> str:
        return next(found.verdict for found in judged(changes).findings if found.check == "tie-rod-level")

    assert verdict(raised) == "good"  # 398: between level and the arms
    assert verdict({**moving, "steering.inner_height": "398 mm"}) == "watch"  # 358 and 40 more, the arms as they were
    assert verdict({**raised, "steering.inner_height": "414 mm"}) == "watch"  # 11.9 past the arms
    assert verdict({**raised, "arms.lower_front_height": None, "arms.upper_front_height": None}) == "watch"  # no arms
