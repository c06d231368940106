"""What nobody has said of hub and joints counts as the worst that is usual, as an estimate. Common practice, no source."""

from collections.abc import Callable

import pytest

from rules.judging.judge import Finding, Judged

FindingWith = Callable[[str, dict[str, object]], Finding]

SHAFT = {"hub.held_together_by": "a clamped stub shaft"}
SINGLE = {"pivots.lower_shear": "single"}
BALL = {**SINGLE, "pivots.lower_kind": "ball joint"}
NOBODY = {"pivots.lower_shear": None}


@pytest.mark.parametrize(
    ("changed", "verdict", "to_answer"),
    [
        (SINGLE, "stop", ("pivots.lower_retained",)),
        ({**SINGLE, "pivots.lower_retained": True}, "watch", ()),
        ({**SINGLE, "pivots.lower_retained": False}, "stop", ()),
        (BALL, "watch", ("pivots.lower_retained",)),  # a ball joint's own housing usually closes over the ball
        ({**BALL, "pivots.lower_retained": False}, "stop", ()),
        ({**NOBODY, "pivots.lower_kind": "ball joint", "pivots.lower_retained": True}, "watch", ()),  # no need to say
        (NOBODY, "watch", ("pivots.lower_shear", "pivots.lower_retained")),
        ({**NOBODY, "pivots.lower_retained": False}, "stop", ("pivots.lower_shear",)),
        ({**NOBODY, "pivots.lower_retained": True}, "watch", ("pivots.lower_shear",)),
    ],
)
def test_a_joint_nobody_says_is_kept_is_not(
    changed: dict[str, object], verdict: str, to_answer: tuple[str, ...], finding: FindingWith
) -> None:
    found = finding("pivot-shear", changed)
    assert (found.verdict, found.estimated_from) == (verdict, to_answer)
    assert ("estimate" in found.text) is bool(to_answer)


def test_a_stop_on_a_known_joint_says_nothing_of_the_other(finding: FindingWith) -> None:
    other = {"pivots.upper_shear": "single", "pivots.upper_retained": False}
    found = finding("pivot-shear", {**SINGLE, **other})
    assert found.verdict == "stop" and found.text.startswith("The upper pivot") and not found.estimated_from


@pytest.mark.parametrize(
    ("changed", "verdict"),
    [
        ({}, "stop"),
        ({"hub.stub_shaft_torque": "250 N m"}, "watch"),  # a torque says that there is a nut
        ({"hub.stub_shaft_torque": "20 N m"}, "stop"),
    ],
)
def test_a_stub_shaft_nobody_says_is_fitted_is_not(
    changed: dict[str, object], verdict: str, finding: FindingWith
) -> None:
    found = finding("hub-holds-together", {**SHAFT, **changed})
    assert (found.verdict, found.estimated_from) == (verdict, ("hub.stub_shaft_fitted",))
    assert found.change.startswith("Answer stub shaft fitted.")


def test_a_torque_is_told_as_it_was_entered(finding: FindingWith) -> None:
    """What is worked out is told in three figures, and what is typed is not."""
    said = finding("hub-holds-together", {**SHAFT, "hub.stub_shaft_fitted": True, "hub.stub_shaft_torque": "248.6 N m"})
    assert said.verdict == "good" and "at 248.6 N m" in said.text


SNOUT: dict[str, object] = {"hub.held_together_by": "the nut of a fixed snout"}


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        (SNOUT, "its nut alone"),
        ({**SNOUT, "hub.stub_shaft_fitted": True}, "a stub shaft is entered with it"),
        ({**SNOUT, "hub.stub_shaft_torque": "30 N m"}, "a stub shaft is entered with it"),
        ({"upright.snout_diameter": "45 mm", "upright.snout_yield": "500 MPa"}, "a fixed snout is entered with it"),
    ],
)
def test_a_hub_on_a_snout_is_held_by_its_nut_and_by_no_shaft(
    changed: dict[str, object], said: str, finding: FindingWith
) -> None:
    found = finding("hub-holds-together", changed)
    assert found.verdict == "watch" and said in found.text


@pytest.mark.parametrize("measured", ["hub.shoulder_diameter", "hub.shoulder_length", "hub.stub_shaft_torque"])
def test_a_hub_that_holds_itself_has_no_stub_shaft_to_measure(measured: str, finding: FindingWith) -> None:
    """Either it is the shaft that holds it, or there is nothing there to put a vernier across."""
    entry = "250 N m" if measured.endswith("torque") else "40 mm"
    found = finding("hub-holds-together", {measured: entry})
    assert found.verdict == "watch" and "a stub shaft is entered with it" in found.text


def test_a_snout_that_the_hub_turns_on_is_not_judged_until_it_is_entered(finding: FindingWith) -> None:
    assert finding("snout-strength", {}).verdict == "does not apply"
    found = finding("snout-strength", SNOUT)
    assert (found.verdict, found.waits_for) == (
        "not judged",
        ("upright.snout_diameter", "upright.snout_yield", "loads.judge_strength"),
    )


def test_the_body_of_a_hub_on_a_snout_turns_and_stands_in_front_of_its_bolts(
    judged: Callable[[dict[str, object]], Judged], finding: FindingWith
) -> None:
    assert judged({}).worked.known["hub_body_part"].group == "upright"
    assert judged(SNOUT).worked.known["hub_body_part"].group == "wheel"
    wide: dict[str, object] = {
        "hub.mount_circle": "60 mm",
        "hub.body_diameter": "64 mm",
        "hub.mount_width": None,
        "hub.mount_height": None,
    }
    assert finding("hub-bolts-round-body", wide).verdict == "stop"
    assert finding("hub-bolts-round-body", {**wide, **SNOUT}).verdict == "does not apply"
