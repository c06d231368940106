"""Joints taped where they are: the angles worked out by hand, and both ways round the same car."""

import math

import pytest

from rules.judging.judge import Judged, judge
from rules.judging.offers import offer
from rules.sheet import read_sheet
from tests.support.base_sheet import changed

DERIVED = ("spacing", "inclination", "castor", "ground_offset", "lower_below_spindle")
WITHOUT: dict[str, object] = {f"pivots.{key}": None for key in DERIVED}
TAPED: dict[str, object] = {
    "pivots.upper_inboard": "100 mm",
    "pivots.upper_above": "120 mm",
    "pivots.upper_ahead": "-15 mm",
    "pivots.lower_inboard": "60 mm",
    "pivots.lower_below": "100 mm",
    "pivots.lower_ahead": "5 mm",
}


def judged(changes: dict[str, object], before: Judged | None = None) -> Judged:
    return judge(read_sheet(changed(changes)), before=before)


def test_spacing_angles_and_ground_offset_follow_from_the_tape() -> None:
    found = judged({**WITHOUT, **TAPED})
    known = found.worked.known
    # By hand: 220 mm up, 40 mm in, 20 mm back.
    assert known["pivots.spacing"] == pytest.approx(math.sqrt(220**2 + 40**2 + 20**2))
    assert math.degrees(known["pivots.inclination"]) == pytest.approx(10.3048, abs=1e-4)  # tangent 40 / 220
    assert math.degrees(known["pivots.castor"]) == pytest.approx(5.1944, abs=1e-4)  # tangent 20 / 220
    # From the lower joint down to the ground the axis runs outboard by height x 40 / 220.
    height = known["wheel_centre_height"] - 100
    assert known["pivots.ground_offset"] == pytest.approx(60 - known["hub_face_offset"] - height * 40 / 220)
    assert known["pivots.axis_ahead"] == pytest.approx(5 - 100 * 20 / 220)
    assert known["upper_pivot_from_hub_face"] == pytest.approx(100)
    assert known["upper_pivot_ahead"] == pytest.approx(-15)
    assert not set(found.missing) & WITHOUT.keys()


def test_the_other_way_round_shows_where_the_joints_are() -> None:
    known = judged({}).worked.known
    by_angles = {
        "pivots.upper_inboard": known["upper_pivot_from_hub_face"],
        "pivots.upper_above": known["upper_above_spindle"],
        "pivots.upper_ahead": known["upper_pivot_ahead"],
        "pivots.lower_inboard": known["lower_pivot_from_hub_face"],
        "pivots.lower_below": known["pivots.lower_below_spindle"],
        "pivots.lower_ahead": known["lower_pivot_ahead"],
    }
    assert all((shown := offer(name, judged({}))) and shown.origin == "worked out" for name in by_angles)
    back = judged({**WITHOUT, **{name: f"{mm} mm" for name, mm in by_angles.items()}}).worked.known
    assert all(back[name] == pytest.approx(known[name]) for name in WITHOUT)


@pytest.mark.parametrize("left_out", TAPED)
def test_one_joint_half_taped_gives_nothing_and_is_asked_for(left_out: str) -> None:
    found = judged({**WITHOUT, **TAPED, left_out: None})
    assert "pivots.inclination" not in found.worked.known
    assert "pivots.inclination" in found.missing
    assert found.worked.waits["taped_inclination"] == (left_out,)


def test_an_answer_of_its_own_comes_first_and_a_difference_is_told() -> None:
    found = judged({**TAPED})
    assert math.degrees(found.worked.known["pivots.inclination"]) == pytest.approx(
        math.degrees(judged({}).worked.known["pivots.inclination"])
    )
    assert {one.verdict for one in found.findings if one.check.endswith("-as-taped")} & {"watch", "stop"}


def test_judging_again_after_each_change_gives_what_judging_anew_does() -> None:
    before: Judged | None = None
    steps: list[dict[str, object]] = [
        {}, {**TAPED}, {**WITHOUT, **TAPED}, {**WITHOUT, **TAPED, "pivots.upper_ahead": "-30 mm"},
        {**WITHOUT, **TAPED, "pivots.castor": "6 deg"}, {**WITHOUT, **TAPED}, {**WITHOUT}, {},
    ]  # fmt: skip
    for changes in steps:
        again, anew = judged(changes, before), judged(changes)
        assert again.worked.known == anew.worked.known
        assert again.worked.stood_in == anew.worked.stood_in
        assert again.findings == anew.findings
        assert again.missing == anew.missing
        before = again
