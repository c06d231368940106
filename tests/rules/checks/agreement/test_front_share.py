"""The front share of braking against the brakes it comes of, all of them entered or not.

By hand: pistons of 50 at 120 mm ahead make 50^2 x 120 = 300 000, of 40 at 100 behind 160 000: 65.2 % of both. A rear piston not
entered is usually 28 to 60 mm: 78 400 to 360 000, a share of 79.3 to 45.5 %. The pressure of both axles cancels out.
"""

import pytest

from rules.judging.judge import Finding
from tests.support.base_sheet import changed
from tests.support.judging import judged_document

BRAKES: dict[str, object] = {
    "caliper.piston_diameter": "50 mm", "caliper.pistons_per_side": 1, "brakes.effective_radius": "120 mm",
    "caliper.pad_friction": 0.4, "brakes.rear_piston_diameter": "40 mm", "brakes.rear_pistons_per_side": 1,
    "brakes.rear_effective_radius": "100 mm", "brakes.rear_pad_friction": 0.4,
}  # fmt: skip
NO_PISTON = {"brakes.rear_piston_diameter": None}


def found(share: float, changes: dict[str, object]) -> Finding:
    judged = judged_document(changed({**BRAKES, "job.front_brake_share": f"{share} %", **changes}))
    return next(finding for finding in judged.findings if finding.check == "front-share-worked")


@pytest.mark.parametrize(
    ("share", "verdict"),
    [
        (33, "stop"),
        (35, "watch"),
        (40, "watch"),
        (42, "not judged"),
        (65, "not judged"),
        (86, "not judged"),
        (90, "watch"),
    ],
)
def test_a_share_that_no_usual_rear_piston_makes_is_told_and_any_other_is_not_judged(
    share: float, verdict: str
) -> None:
    """Nine tenths of 45.5 % are 40.9, three quarters 34.1; a tenth more than 79.3 % are 87.2."""
    finding = found(share, NO_PISTON)
    assert finding.verdict == verdict
    named = finding.waits_for if verdict == "not judged" else finding.estimated_from
    assert named == ("brakes.rear_piston_diameter",)
    assert verdict == "not judged" or "45.45 % to 79.28 %" in finding.text


@pytest.mark.parametrize(
    ("changes", "share"),
    [
        ({}, 65.2),  # no pressure is entered
        ({"brakes.rear_pressure_share": "50 %"}, 78.9),  # 300 000 of 380 000
        ({"brakes.rear_pad_friction": 0.5}, 60.0),  # 300 000 x 0.4 of 200 000
        ({"brakes.rear_master_bore": "20 mm", "brakes.master_bore": "25 mm"}, 54.5),  # 1.2 of 2.2, for 25^2 : 20^2
        ({"brakes.rear_master_bore": "20 mm", "brakes.master_bore": "20 mm", "brakes.bar_to_front": "60 %"}, 73.8),
    ],
)
def test_the_share_needs_no_pressure(changes: dict[str, object], share: float) -> None:
    assert found(share, changes).verdict == "good"
    assert found(share * 0.89, changes).verdict == found(share * 1.12, changes).verdict == "watch"
    assert found(share * 0.74, changes).verdict == "stop"


@pytest.mark.parametrize("missing", [name for name in BRAKES if name != "brakes.rear_pad_friction"])
def test_no_answer_left_out_turns_a_stop_into_silence(missing: str) -> None:
    """24 % where the brakes make 65: even the widest range of one usual answer ends above it."""
    assert found(24, {}).verdict == found(24, {missing: None}).verdict == "stop"


def test_pads_said_of_one_axle_alone_count_alike_as_an_estimate() -> None:
    finding = found(65.2, {"brakes.rear_pad_friction": None, "caliper.pad_friction": None})
    assert finding.verdict == "watch" and finding.estimated_from == ("brakes.rear_pad_friction",)


def test_without_rear_brakes_there_is_nothing_to_compare() -> None:
    none = {name: None for name in BRAKES if name.startswith("brakes.rear")}
    assert found(24, dict(none)).verdict == "does not apply"
