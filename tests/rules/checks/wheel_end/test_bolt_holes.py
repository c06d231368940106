"""Bolts and their holes, by hand on round figures. Hub and caliper bolts are M12: 18 mm across flats (ISO 4014, from memory).

Clearance holes from memory: ISO 273 medium and coarse, M12: 13.5 and 14.5 mm; ASME B18.2.8 normal and loose, 1/2 in: 0.562 and
0.609 in. A ring of a tenth of 12 mm on each side of the hole leaves 15.6 mm of 18.
"""

from collections.abc import Callable

import pytest

from rules.judging.judge import Finding

FindingWith = Callable[[str, dict[str, object]], Finding]


def hub(hole: str) -> dict[str, object]:
    return {"plate.hole_diameter": hole, "hub.mount_bolt_thread": "12 x 1.75 mm"}


@pytest.mark.parametrize(
    ("hole", "verdict"),
    [("11.9 mm", "stop"), ("12 mm", "good"), ("13 mm", "good"), ("13.1 mm", "watch"), ("15.6 mm", "watch"),
     ("15.7 mm", "stop"), ("18 mm", "stop")],
)  # fmt: skip
def test_hub_bolts_go_through_and_their_heads_do_not(finding: FindingWith, hole: str, verdict: str) -> None:
    assert finding("hub-bolt-fits-hole", hub(hole)).verdict == verdict


def test_a_head_that_falls_through_is_told_from_one_that_bears_on_little(finding: FindingWith) -> None:
    assert "18 mm across flats and go through it" in finding("hub-bolt-fits-hole", hub("18.2 mm")).text.replace(
        "18 mm", "18 mm"
    )
    assert "hardly any metal" in finding("hub-bolt-fits-hole", hub("17 mm")).text


def test_an_unknown_bolt_is_waited_for(finding: FindingWith) -> None:
    found = finding("hub-bolt-fits-hole", {**hub("12.5 mm"), "hub.mount_bolt_thread": None})
    assert found.waits_for == ("hub.mount_bolt_thread",)


@pytest.mark.parametrize(
    ("hole", "thread", "verdict"),
    [
        ("11.9 mm", "12 x 1.5 mm", "stop"),
        ("12 mm", "12 x 1.5 mm", "good"),
        ("13.5 mm", "12 x 1.5 mm", "good"),
        ("14.5 mm", "12 x 1.5 mm", "watch"),
        ("15.1 mm", "12 x 1.5 mm", "stop"),
        ("0.562 in", "1/2-20", "good"),
        ("0.609 in", "1/2-20", "watch"),
        ("0.4 in", "1/2-20", "stop"),
        ("0.56 in", "3/8-24", "stop"),  # 4.7 mm larger
    ],
)
def test_caliper_bolts_and_the_holes_of_their_bracket(
    finding: FindingWith, hole: str, thread: str, verdict: str
) -> None:
    changed = {"plate.bracket_hole_diameter": hole, "bolts.caliper_thread": thread}
    assert finding("caliper-bolt-fits-hole", changed).verdict == verdict


@pytest.mark.parametrize(
    ("changed", "verdict", "waits_for"),
    [
        ({"plate.bracket_hole_diameter": "12.5 mm"}, "not judged", ("bolts.caliper_thread",)),
        ({}, "not judged", ("plate.bracket_hole_diameter",)),
        (
            {"plate.bracket_hole_diameter": "12.5 mm", "bolts.caliper_grade": "10.9"},
            "waiting",
            ("bolts.caliper_thread",),
        ),
        (
            {"plate.bracket_hole_spacing": "120 mm", "bolts.caliper_thread": "12 x 1.5 mm"},
            "waiting",
            ("plate.bracket_hole_diameter",),
        ),
    ],
)
def test_a_hole_or_a_bolt_that_is_begun_is_waited_for(
    finding: FindingWith, changed: dict[str, object], verdict: str, waits_for: tuple[str, ...]
) -> None:
    found = finding("caliper-bolt-fits-hole", changed)
    assert (found.verdict, found.waits_for) == (verdict, waits_for)
