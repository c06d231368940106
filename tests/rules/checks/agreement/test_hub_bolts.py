"""Bolts of a hub placed one by one, against what is said of all of them. The base sheet has four, 84 by 86 mm apart.

Four on a clock at 1:29, 4:31, 7:29 and 10:31 at 60.1 mm: 60.1 sin 44.5 deg = 42.12, cos 42.87: 84.2 by 85.7 mm.
"""

from collections.abc import Mapping

import pytest

from rules.judging.judge import Finding
from tests.support.base_sheet import changed
from tests.support.judging import judged_document

FOUR = "1:29 at {0} mm; 4:31 at {0} mm; 7:29 at {0} mm; 10:31 at {0} mm"
APART = {"hub.mount_width": None, "hub.mount_height": None}


@pytest.mark.parametrize(
    ("changes", "verdict"),
    [
        ({}, "does not apply"),
        ({"hub.mount_places": FOUR.format(60.1)}, "good"),
        ({"hub.mount_places": FOUR.format(63)}, "watch"),  # 88.3 by 89.9: 4.3 mm out
        ({"hub.mount_places": FOUR.format(63), "confirmed": True}, "good"),
        ({"hub.mount_places": FOUR.format(70)}, "stop"),  # 98.1: 14 mm out
        ({"hub.mount_places": "12; 4; 8", **APART, "hub.mount_circle": "130 mm"}, "stop"),  # three for four
        ({"hub.mount_places": FOUR.format(60.1), **APART, "hub.mount_circle": "121 mm"}, "good"),  # 120.2
        ({"hub.mount_places": FOUR.format(60.1), **APART, "hub.mount_circle": "125 mm"}, "watch"),
        ({"hub.mount_places": FOUR.format(60.1), **APART, "hub.mount_circle": "240.4 mm"}, "stop"),
        # The first 44.5 deg from the top: 12 deg of 60 mm are 12.6 mm.
        ({"hub.mount_places": FOUR.format(60.1), **APART, "hub.mount_turned": "44 deg"}, "good"),
        ({"hub.mount_places": FOUR.format(60.1), **APART, "hub.mount_turned": "32 deg"}, "stop"),
        (
            {"hub.mount_places": "12 at 60 mm; 1 at 60 mm; 2:30 at 60 mm; 5 at 60 mm", **APART},
            "watch",
        ),  # one side: 210 deg bare
        ({"hub.mount_places": "12 at 60 mm; 1 at 60 mm; 2 at 60 mm; 4:28 at 60 mm", **APART}, "stop"),  # 226 deg bare
        ({"hub.mount_places": "12 at 60 mm; 3 at 60 mm; 6 at 60 mm; 9 at 80 mm", **APART}, "watch"),  # 1.33 times
        ({"hub.mount_places": "12 at 60 mm; 3 at 60 mm; 6 at 60 mm; 9 at 30 mm", **APART}, "stop"),  # inside the body
    ],
)
def test_places_agree_with_what_else_is_entered(changes: dict[str, object], verdict: str) -> None:
    entered = {name: entry for name, entry in changes.items() if name != "confirmed"}
    sheet = changed(entered)
    if "confirmed" in changes:
        sheet["confirmed"] = {"hub.mount_places": changes["hub.mount_places"]}
    found = next(one for one in judged_document(sheet).findings if one.check == "hub-bolts-one-by-one")
    assert found.verdict == verdict, found.text


@pytest.mark.parametrize(
    ("last", "verdict"),
    # Bolts at 0 and 120 deg and a third from which 165 deg are left to the first: at 195 deg, half past six.
    [("6:31", "good"), ("6:29", "watch")],
)
def test_three_bolts_stand_all_round_the_hub(last: str, verdict: str) -> None:
    places = f"12 at 60 mm; 4 at 60 mm; {last} at 60 mm"
    found = _found("hub-bolts-one-by-one", {"hub.mount_bolts": 3, "hub.mount_places": places, **APART})
    assert found.verdict == verdict and ("165" in found.text) == (verdict == "watch"), found.text


def test_two_bolts_opposite_each_other_stand_all_round() -> None:
    two = {"hub.mount_bolts": 2, "hub.mount_places": "3 at 60 mm; 9 at 60 mm", **APART}
    assert _found("hub-bolts-one-by-one", two).verdict == "good"


CIRCLE = {"hub.mount_circle": "130 mm", "hub.mount_width": None, "hub.mount_height": None}
SNOUT = {"hub.held_together_by": "the nut of a fixed snout"}


@pytest.mark.parametrize(
    ("check", "changes", "verdict"),
    [
        # Half of 84 and of 86 mm: root(42^2 + 43^2) = 60.11 mm from the middle, so with half of a bolt of 12 a body of 108.2.
        ("hub-bolts-outside-body", {}, "good"),
        ("hub-bolts-outside-body", {"hub.body_diameter": "108.1 mm"}, "good"),
        ("hub-bolts-outside-body", {"hub.body_diameter": "108.4 mm"}, "stop"),
        # No thread entered: clear of the thickest usual bolt, 16 mm; of a thin one only; of none.
        ("hub-bolts-outside-body", {"hub.body_diameter": "104.1 mm", "hub.mount_bolt_thread": None}, "good"),
        ("hub-bolts-outside-body", {"hub.body_diameter": "104.4 mm", "hub.mount_bolt_thread": None}, "waiting"),
        ("hub-bolts-outside-body", {"hub.body_diameter": "120.1 mm", "hub.mount_bolt_thread": None}, "waiting"),
        ("hub-bolts-outside-body", {"hub.body_diameter": "120.4 mm", "hub.mount_bolt_thread": None}, "stop"),
        # On a circle of 130 mm: 65 less 6.
        ("hub-bolts-outside-body", {**CIRCLE, "hub.body_diameter": "117.9 mm"}, "good"),
        ("hub-bolts-outside-body", {**CIRCLE, "hub.body_diameter": "118.1 mm"}, "stop"),
        ("hub-bolts-outside-body", {**SNOUT, "hub.body_diameter": "150 mm"}, "does not apply"),
        ("hub-bolts-outside-body", {"hub.body_diameter": None}, "does not apply"),
        # Mounting face 60 behind the hub face, flange 10 thick: ears of 50 would touch it.
        ("hub-ears-along-hub", {"hub.mount_flange_thickness": "49.8 mm"}, "good"),
        ("hub-ears-along-hub", {"hub.mount_flange_thickness": "50.2 mm"}, "stop"),
        # Ears of 12 begin at 48; a body within a tape's 2 mm of that.
        ("hub-ears-along-hub", {"hub.body_length": "46.2 mm"}, "good"),
        ("hub-ears-along-hub", {"hub.body_length": "45.8 mm"}, "stop"),
        ("hub-ears-along-hub", {"hub.body_length": None}, "good"),
        # A mounting face before the hub face is no such hub, whatever else is known.
        (
            "hub-ears-along-hub",
            {"hub.flange_to_mount_face": "-60 mm", "hub.mount_flange_thickness": None, "hub.flange_thickness": None},
            "stop",
        ),
        ("hub-bolts-turned", {}, "does not apply"),
        ("hub-bolts-turned", {"hub.mount_turned": "0 deg"}, "does not apply"),
        ("hub-bolts-turned", {"hub.mount_turned": "30 deg"}, "watch"),
        ("hub-bolts-turned", {"hub.mount_turned": "30 deg", "hub.mount_circle": "120.2 mm"}, "good"),
        # Four placed one by one, 44.5 deg from the top; another number of bolts stands on a circle, whether it is entered or not.
        (
            "hub-bolts-turned",
            {"hub.mount_turned": "44.5 deg", "hub.mount_places": FOUR.format(60.1), **APART},
            "good",
        ),
        ("hub-bolts-turned", {"hub.mount_turned": "30 deg", "hub.mount_bolts": 5, **APART}, "good"),
        ("hub-bolt-thread-there", {"bolts.hub_bolt_engagement": "12 mm", "bolts.hub_bolt_into": "steel"}, "good"),
        ("hub-bolt-thread-there", {"bolts.hub_bolt_engagement": "12.2 mm", "bolts.hub_bolt_into": "steel"}, "stop"),
        # ISO 4032: an M12 nut is at most 10.8 mm high; 1.08 times that is 11.66.
        ("hub-bolt-thread-there", {"bolts.hub_bolt_engagement": "11.6 mm", "bolts.hub_bolt_into": "nut"}, "good"),
        ("hub-bolt-thread-there", {"bolts.hub_bolt_engagement": "11.8 mm", "bolts.hub_bolt_into": "nut"}, "watch"),
        ("hub-bolt-thread-there", {"bolts.hub_bolt_engagement": "11.8 mm"}, "not judged"),
    ],
)
def test_bolts_and_ears_stand_on_the_hub_as_entered(check: str, changes: dict[str, object], verdict: str) -> None:
    found = _found(check, changes)
    assert found.verdict == verdict, found.text


def _found(check: str, changes: Mapping[str, object]) -> Finding:
    return next(one for one in judged_document(changed(changes)).findings if one.check == check)
