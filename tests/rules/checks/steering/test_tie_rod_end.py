"""The tie-rod end's housing against rotor and rim: gaps by hand, limits, and when nothing is judged."""

from collections.abc import Callable

import pytest

from rules.judging.judge import Finding, Judged
from rules.judging.proposals import look_for
from rules.values.wheel_end.gaps import tie_rod_end_rotor_gap, tie_rod_end_wheel_gap

Changes = dict[str, object]
JudgedWith = Callable[[Changes], Judged]
FindingWith = Callable[[str, Changes], Finding]
Place = tuple[float, float, float]
ROTOR, RIM = "tie-rod-end-clears-rotor", "tie-rod-end-clears-rim"


# Gaps. A joint's place: ahead of the wheel centre, outboard of the tyre centre plane, above the wheel centre. Its ball: 20.


@pytest.mark.parametrize(
    ("joint", "away"),
    [
        ((-120.0, -80.0, 0.0), 30.0),  # behind the inboard face, which is 50 inboard
        ((120.0, -80.0, 0.0), 30.0),  # ahead of the axle alike
        ((0.0, -10.0, 120.0), 20.0),  # outboard of the outboard face, which is 30 inboard
        ((0.0, -40.0, -170.0), 30.0),  # below the edge, 140 from the wheel centre
        ((-143.0, -54.0, 0.0), 5.0),  # off its corner, 3 and 4 away
        ((0.0, -60.0, 0.0), 10.0),  # behind the hat: the middle counts as full
        ((0.0, -40.0, 0.0), -10.0),  # within the middle: 10 from either face
        ((0.0, -40.0, -138.0), -2.0),  # within it, 2 from the edge
    ],
)
def test_gap_to_a_rotor_of_280_by_20_with_its_middle_40_inboard(joint: Place, away: float) -> None:
    ahead, offset, above = joint
    gap = tie_rod_end_rotor_gap(True, 20.0, ahead, offset, above, -40.0, 20.0, 280.0)
    assert gap == pytest.approx(away - 20, abs=1e-9)


@pytest.mark.parametrize(
    ("joint", "away"),
    [
        ((-120.0, -60.0, -90.0), 30.0),  # inside the barrel, 3-4-5: 150 from the wheel centre
        ((-150.0, -160.0, 0.0), 50.0),  # inboard of the lip at 120, and under it: 40 and 30 away
        ((-190.0, -150.0, 0.0), 30.0),  # straight inboard of the rim
        ((0.0, -60.0, -183.0), -3.0),  # in the rim, 3 from its inside
    ],
)
def test_gap_to_a_rim_240_wide_with_a_barrel_of_360(joint: Place, away: float) -> None:
    """Flange edge at 381 / 2 + 17.5 = 208 from the wheel centre."""
    ahead, offset, above = joint
    gap = tie_rod_end_wheel_gap(True, 20.0, ahead, offset, above, 360.0, 381.0, 240.0)
    assert gap == pytest.approx(away - 20, abs=1e-9)


# Limits, on whole sheets


def placed(inboard: str, ahead: str = "-120 mm") -> Changes:
    """The finished sheet with a tie-rod end at wheel-centre height and nothing else of the steering."""
    return {
        "steering.tie_rod_ahead": ahead, "steering.tie_rod_inboard": inboard, "steering.tie_rod_above": "0 mm",
        "steering.tie_rod_end_reach": "20 mm",
    }  # fmt: skip


@pytest.mark.parametrize(
    ("inboard", "verdict", "says"),
    [
        ("74.1 mm", "good", "clears the rotor by 5.1 mm"),
        ("74 mm", "good", "clears the rotor by 5 mm"),
        ("73.9 mm", "watch", "clears the rotor by 4.9 mm; 5 mm or more is wanted."),
        ("71.1 mm", "watch", "by 2.1 mm"),
        ("71 mm", "watch", "by 2 mm"),
        ("70.9 mm", "stop", "by 1.9 mm"),
        ("68 mm", "stop", "The tie-rod end hits the rotor by 1 mm"),
    ],
)
def test_rotor(finding: FindingWith, inboard: str, verdict: str, says: str) -> None:
    """Hub face 4 outboard of the tyre's middle; rotor 22 thick, its middle 34 inboard, so its face 45: inboard - 69."""
    found = finding(ROTOR, placed(inboard))
    assert (found.verdict, says in found.text) == (verdict, True), found.text


@pytest.mark.parametrize(
    ("ahead", "verdict", "says"),
    [
        ("-153.9 mm", "good", "clears the rim by 6.1 mm"),
        ("-154 mm", "good", "clears the rim by 6 mm"),
        ("-154.1 mm", "watch", "clears the rim by 5.9 mm; 6 mm or more is wanted."),
        ("-156.9 mm", "watch", "by 3.1 mm"),
        ("-157 mm", "watch", "by 3 mm"),
        ("-157.1 mm", "stop", "by 2.9 mm"),
        ("161 mm", "stop", "The tie-rod end hits the rim by 1 mm"),
    ],
)
def test_rim(finding: FindingWith, ahead: str, verdict: str, says: str) -> None:
    """Barrel of 360, joint 96 inboard and so within the lip at 120: 180 - 20 - ahead."""
    found = finding(RIM, placed("100 mm", ahead))
    assert (found.verdict, says in found.text) == (verdict, True), found.text


def test_the_place_that_would_pass_is_offered_for_the_rim(judged: JudgedWith) -> None:
    """The barrel's radius is 180: 154 from the wheel centre leaves the ball of 20 its 6."""
    told = judged(placed("100 mm", "-161 mm"))
    (found,) = (one for one in told.findings if one.check == RIM)
    offered = [{one.name: one.to for one in offer.entries} for offer in look_for(told, found).offers]
    assert {"steering.tie_rod_ahead": "-154 mm"} in offered


# When it is not judged


@pytest.mark.parametrize("check", [ROTOR, RIM])
def test_untouched_it_is_not_judged_and_once_begun_its_reach_is_waited_for(
    finding: FindingWith, moving: Changes, check: str
) -> None:
    untouched = finding(check, {})
    assert untouched.verdict == "not judged" and "Nothing is entered of the tie rod's outer end" in untouched.text
    begun = finding(check, {**moving, "steering.tie_rod_end_reach": None})
    assert begun.verdict == "waiting" and begun.waits_for == ("steering.tie_rod_end_reach",)


@pytest.mark.parametrize("check", [ROTOR, RIM])
def test_with_its_reach_it_waits_for_the_place(finding: FindingWith, check: str) -> None:
    found = finding(check, {**placed("90 mm"), "steering.tie_rod_inboard": None})
    assert found.verdict == "waiting" and found.waits_for == ("steering.tie_rod_inboard",)


def test_a_copied_arm_does_as_well(finding: FindingWith, judged: JudgedWith) -> None:
    """Castor 6 deg leans the axis fore and aft not at all at wheel-centre height: 120 straight back is 120 behind.

    Seen from the front it lies 25 + 400 tan 10 deg = 95.531 inboard there, so 95.531 - 45 - 20 = 30.531 to the rotor.
    """
    copied: Changes = {
        "steering.tie_rod_above": "0 mm", "steering.copied_length": "120 mm", "steering.copied_angle": "0 deg",
        "steering.copied_side": "behind", "steering.tie_rod_end_reach": "20 mm",
    }  # fmt: skip
    assert finding(ROTOR, copied).verdict == "good"
    assert judged(copied).worked.known["tie_rod_end_rotor_gap"] == pytest.approx(30.531, abs=0.001)


def test_a_barrel_that_is_not_measured_caps_it_at_watch(finding: FindingWith) -> None:
    found = finding(RIM, {**placed("100 mm"), "wheel.barrel_inside_diameter": None})
    assert found.verdict == "watch" and found.estimated_from == ("wheel.barrel_inside_diameter",)
