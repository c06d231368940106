"""Edits that make a sound corner unbuildable: each must draw a stop or a watch, new against the sound sheet, that names a part.

The edits are what a slip or a wrong part does: a plate far too thick, a hub too short, a larger bolt. Common practice, no
source. Which part has to be named follows from the edit: it is the part the edit moves or makes larger.
"""

import copy
from functools import cache
from typing import Any

import pytest

from rules.judging.judge import Judged, judge
from rules.sheet import read_sheet
from sample_sheets import document
from tests.support.judging import judged_sample

Edits = dict[str, object]
SCREE, WREN, NEWT, BADGER = (
    "scree_ox_strength",
    "dune_wren_finished",
    "pond_newt_finished",
    "fell_badger_finished_metric",
)
MOVING = "dune_wren_moving"
EDITS: list[tuple[str, Edits, tuple[str, ...]]] = [
    (SCREE, {"plate.thickness": "1 1/2 in"}, ("plate",)),
    (SCREE, {"hub.flange_to_mount_face": "2 in"}, ("plate", "hub mounting flange")),
    (SCREE, {"bolts.upper_lug_thickness": "2 in"}, ("upper lugs", "upper pivot bolt", "beam")),
    (SCREE, {"bolts.lower_lug_thickness": "2 in"}, ("lower lugs", "lower pivot bolt", "beam")),
    (SCREE, {"bolts.upper_edge_distance": "5 in"}, ("upper lugs",)),
    (SCREE, {"bolts.lower_thread": "1 1/2-6"}, ("lower pivot", "beam")),
    (SCREE, {"bolts.upper_gap": "1.2 in"}, ("upper lugs", "upper pivot bolt", "beam")),
    (SCREE, {"caliper.inboard_reach": "4.6 in", "caliper.inward_reach": "3 in"}, ("caliper",)),
    (SCREE, {"caliper.clock": "0 deg"}, ("caliper",)),
    (SCREE, {"caliper.length": "11 in"}, ("caliper",)),
    (SCREE, {"caliper.inward_reach": "4 in"}, ("caliper",)),
    (SCREE, {"upright.beam_width": "7.4 in"}, ("beam",)),
    (SCREE, {"upright.beam_width": "5 in"}, ("hub bolts",)),
    (SCREE, {"upright.beam_depth": "5 1/2 in"}, ("beam",)),
    (SCREE, {"upright.beam_to_pivots": True}, ("beam",)),
    (SCREE, {"upright.section_below": "3.2 in"}, ("beam",)),
    (SCREE, {"hub.body_length": "6 in"}, ("hub body",)),
    (SCREE, {"hub.body_diameter": "7.4 in"}, ("hub body",)),
    (SCREE, {"hub.flange_diameter": "8 1/4 in"}, ("rotor",)),
    (SCREE, {"hub.mount_bolt_thread": "1 1/2-6", "hub.mount_height": "1.6 in"}, ("hub bolt",)),
    (SCREE, {"hub.mount_width": "2.2 in"}, ("hub bolts",)),
    (SCREE, {"wheel.nut_pocket": "15/16 in"}, ("wheel nuts",)),
    (SCREE, {"pivots.lower_below_spindle": "7.2 in"}, ("lower",)),
    (SCREE, {"steering.tie_rod_inboard": "3 in"}, ("tie-rod end", "tie rod", "steering arm")),
    (SCREE, {"spring.arm_end_from_centre": "33 in"}, ("shock",)),
    (SCREE, {"upright.steering_arm_width": "5 3/4 in"}, ("steering arm",)),
    (SCREE, {"arms.lower_tube": "5 in"}, ("lower arm",)),
    (SCREE, {"bolts.upper_ball_width": "3 in"}, ("upper",)),
    (WREN, {"plate.thickness": "1 1/2 in"}, ("plate",)),
    (WREN, {"hub.flange_to_mount_face": "1.6 in"}, ("plate", "hub mounting flange", "rotor")),
    (WREN, {"hub.body_diameter": "5.6 in"}, ("hub body",)),
    (WREN, {"hub.body_length": "5 in", "plate.bore": "2 in"}, ("hub body",)),
    (WREN, {"hub.mount_bolt_thread": "1 1/2-6", "hub.mount_width": "1.8 in"}, ("hub bolt",)),
    (WREN, {"pivots.lower_below_spindle": "6.7 in"}, ("lower pivot", "lower joint")),
    (WREN, {"caliper.inboard_reach": "5.2 in", "caliper.inward_reach": "3.6 in"}, ("caliper",)),
    (WREN, {"rotor.hat_outside_diameter": "5.8 in"}, ("rotor",)),
    (MOVING, {"arms.upper_tube": "6 in"}, ("upper arm",)),
    (MOVING, {"spring.shock_diameter": "9 in"}, ("shock",)),
    (NEWT, {"hub.flange_diameter": "140 mm"}, ("rotor",)),
    (NEWT, {"pivots.lower_radius": "80 mm"}, ("lower pivot", "lower joint")),
    (NEWT, {"caliper.inward_reach": "95 mm"}, ("caliper",)),
    (BADGER, {"hub.body_diameter": "170 mm"}, ("hub body",)),
    (BADGER, {"rotor.hat_outside_diameter": "150 mm"}, ("rotor",)),
    (BADGER, {"caliper.reach_above_rotor": "60 mm"}, ("caliper",)),
]


def changed(sample: str, edits: Edits) -> Judged:
    sheet: dict[str, Any] = copy.deepcopy(document(sample))
    for name, entry in edits.items():
        step, _, key = name.partition(".")
        sheet.setdefault(step, {})[key] = entry
    read = read_sheet(sheet)
    assert not read.faults and not read.unknown, (read.faults, read.unknown)
    return judge(read, before=judged_sample(sample))


@cache
def sound(sample: str) -> frozenset[tuple[str, str]]:
    return frozenset((found.key, found.verdict) for found in judged_sample(sample).findings)


@pytest.mark.parametrize(
    ("sample", "edits", "parts"), EDITS, ids=lambda given: str(given) if isinstance(given, dict) else None
)
def test_an_edit_that_makes_it_unbuildable_is_found_by_the_part_it_changes(
    sample: str, edits: Edits, parts: tuple[str, ...]
) -> None:
    worse = [
        found
        for found in changed(sample, edits).findings
        if found.verdict in ("stop", "watch")
        and found.group == "room"
        and (found.key, found.verdict) not in sound(sample)
    ]
    assert any(part in f"{found.title} {found.text}".lower() for found in worse for part in parts), [
        found.text for found in worse
    ]


def test_there_are_many_of_them_and_the_sound_sheets_draw_none() -> None:
    assert len(EDITS) >= 20
    for sample in (SCREE, WREN, MOVING, NEWT, BADGER):
        assert not [key for key, verdict in sound(sample) if verdict in ("stop", "watch") and key.startswith("room")]
        assert not [key for key, verdict in sound(sample) if verdict == "stop"]
