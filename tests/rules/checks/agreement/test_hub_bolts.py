"""Bolts of a hub placed one by one, against what is said of all of them. The base sheet has four, 84 by 86 mm apart.

Four on a clock at 1:29, 4:31, 7:29 and 10:31 at 60.1 mm: 60.1 sin 44.5 deg = 42.12, cos 42.87: 84.2 by 85.7 mm.
"""

import pytest

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
        ({"hub.mount_places": "12 at 60 mm; 1 at 60 mm; 2:30 at 60 mm; 5 at 60 mm", **APART}, "watch"),  # one side
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
