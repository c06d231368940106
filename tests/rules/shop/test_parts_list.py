"""Bolts of the parts list by hand: grip and length from what lies under the head, and which way each points."""

import pytest

from rules.corner.part import Part
from rules.measure.marks import Thread
from rules.shop.checklist_line import BLANK
from rules.shop.parts_list import (
    PartsRow,
    _bar_arm,
    _caliper_bolts,
    _hub_bolts,
    _lower_pivot_bolt,
    _tie_rod_pin,
    _upper_pivot_bolt,
    bought,
)
from rules.solids.shapes import Ball
from tests.support.judging import judged_sample

M12 = Thread("M12 x 1.75", 12.0, 1.75)
BOTH = (("upper", _upper_pivot_bolt), ("lower", _lower_pivot_bolt))


def pivot(which: str, **known: object) -> dict[str, object]:
    """What a sheet knows of one pivot's bolt: ball 14, gaps 3, lugs 8 mm."""
    return {
        f"bolts.{which}_thread": M12, f"bolts.{which}_ball_width": 14.0, f"bolts.{which}_gap": 3.0,
        f"bolts.{which}_lug_thickness": 8.0, f"bolts.{which}_grade": "10.9", f"pivots.{which}_kind": "spherical bearing",
        f"pivots.{which}_shear": "double", **{f"{table}.{which}_{key}": entry for (table, key), entry in {
            ("pivots", "kind"): known.get("kind"), ("pivots", "shear"): known.get("shear"),
            ("bolts", "side"): known.get("side"), ("joint_angles", "bolt"): known.get("lies"),
        }.items() if entry is not None},
    }  # fmt: skip


def row(found: PartsRow | None) -> PartsRow:
    assert found is not None
    return found


def test_a_pivot_bolts_grip_is_ball_both_gaps_and_both_lugs() -> None:
    """14 + 2 x 3 + 2 x 8 = 36; without spacers 30."""
    for which, read in BOTH:
        known = pivot(which)
        found = row(read(known, units="metric"))
        assert (found.size, found.material) == ("M12 x 1.75, grip 36 mm, then washer, nut, two threads", "10.9")
        del known[f"bolts.{which}_gap"]
        assert "grip 30 mm" in row(read(known, units="metric")).size
        for unknown in ("ball_width", "lug_thickness", "shear"):
            less = {name: number for name, number in known.items() if not name.endswith(unknown)}
            assert f"grip {BLANK}," in row(read(less, units="metric")).size
        assert row(read({}, units="metric")).size.startswith(f"thread {BLANK}, grip {BLANK}")


def test_in_single_shear_one_lug_and_one_gap_are_gripped() -> None:
    """14 + 3 + 8 = 25."""
    for which, read in BOTH:
        found = row(read(pivot(which, shear="single", side="below"), units="metric"))
        assert "grip 25 mm" in found.size and "shank through the lug." in found.notes


@pytest.mark.parametrize(
    ("known", "said"),
    [
        ({"lies": "along the steering axis"}, "points down: head above, nut below"),
        ({"lies": "fore and aft"}, "points rearward: head ahead, nut behind"),
        ({"lies": "across the car"}, f"points {BLANK}: head {BLANK}, nut {BLANK}"),
        ({}, f"points {BLANK}: head {BLANK}, nut {BLANK}"),
        ({"shear": "single", "side": "above", "lies": "along the steering axis"}, "points up: head below, nut above"),
        ({"shear": "single", "side": "below"}, "points down: head above, nut below"),
        ({"shear": "single", "side": "ahead"}, "points forward: head behind, nut ahead"),
        ({"shear": "single", "side": "inboard"}, "points inboard: head outboard, nut inboard"),
        ({"shear": "single"}, f"points {BLANK}: head {BLANK}, nut {BLANK}"),
        ({"kind": "ball joint", "side": "above"}, "points up: nut above"),
        ({"kind": "ball joint", "side": "outboard"}, "points outboard: nut outboard"),
        ({"kind": "ball joint"}, f"points {BLANK}: nut {BLANK}"),
    ],
)
def test_which_way_a_bolt_or_pin_points(known: dict[str, object], said: str) -> None:
    """A nut stands behind the one lug, or on the side that a ball joint's pin leaves it on; through two lugs heads stand up
    or forward (common practice, no source), and of a bolt across the car nothing is said."""
    for which, read in BOTH:
        found = row(read(pivot(which, **known), units="metric"))
        assert found.notes.startswith(said + ", pinned or self-locking")
        assert ("shank" in found.notes) == (found.what == f"{which.capitalize()} pivot bolt")
        assert (found.what == f"{which.capitalize()} joint's pin") == (known.get("kind") == "ball joint")


def test_a_hub_bolt_is_as_long_as_plate_and_engagement() -> None:
    """19 + 18 = 37."""
    known: dict[str, object] = {
        "hub.mount_bolts": 4, "hub.mount_bolt_thread": M12, "plate.thickness": 19.0, "bolts.hub_bolt_engagement": 18.0,
        "hub.mount_bolt_grade": "10.9", "bolts.hub_bolt_into": "steel",
    }  # fmt: skip
    found = row(_hub_bolts(known, units="metric"))
    assert (found.a_side, found.size, found.material) == ("4", "M12 x 1.75, 37 mm under the head", "10.9")
    assert found.notes.startswith("points outboard: head behind the plate, screwed into the hub's flange")
    for unknown in ("plate.thickness", "bolts.hub_bolt_engagement"):
        less = {name: number for name, number in known.items() if name != unknown}
        assert row(_hub_bolts(less, units="metric")).size == f"M12 x 1.75, {BLANK} under the head"


def test_a_hub_bolt_with_a_nut_goes_through_plate_and_mounting_flange() -> None:
    """19 + 12 = 31, whatever of the nut's thread is engaged."""
    known: dict[str, object] = {
        "hub.mount_bolts": 4, "hub.mount_bolt_thread": M12, "plate.thickness": 19.0, "bolts.hub_bolt_engagement": 10.8,
        "bolts.hub_bolt_into": "nut", "hub.mount_flange_thickness": 12.0, "hub.mount_bolt_grade": "10.9",
    }  # fmt: skip
    said = "M12 x 1.75, grip {}, then washer, nut, two threads"
    assert row(_hub_bolts(known, units="metric")).size == said.format("31 mm")
    for unknown in ("plate.thickness", "hub.mount_flange_thickness"):
        less = {name: number for name, number in known.items() if name != unknown}
        assert row(_hub_bolts(less, units="metric")).size == said.format(BLANK)


@pytest.mark.parametrize(
    ("known", "said"),
    [
        ({}, f"points outboard: head behind the plate, nut or thread in front: {BLANK}"),
        ({"bolts.hub_bolt_into": "nut"}, "points outboard: head behind the plate, nut in front of the hub's flange"),
        ({"upright.hub_bolt_access": "access holes", "bolts.hub_bolt_into": "nut"}, "points outboard: head behind the plate"),
        ({"upright.hub_bolt_access": "welded nuts", "bolts.hub_bolt_into": "nut"}, "points inboard: head in front of the hub's"),
        ({"upright.hub_bolt_access": "studs", "bolts.hub_bolt_into": "nut"}, "a stud, held behind the plate"),
    ],
)  # fmt: skip
def test_which_way_a_hub_bolt_points(known: dict[str, object], said: str) -> None:
    """A nut welded behind the plate has its bolt's head in front."""
    found = row(_hub_bolts(known, units="metric"))
    assert found.notes.startswith(said)
    assert (found.a_side, found.material) == ("____", BLANK)


def test_a_tie_rods_pin_says_how_it_lies_and_leaves_its_way_to_be_filled_in() -> None:
    end = Part("tie-rod end", "tie rod", (Ball((0.0, 0.0, 0.0), 20.0),), "housing", held_by="upright")
    known: dict[str, object] = {"tie_rod_end_part": end}
    assert row(_tie_rod_pin(known, units="metric")).notes.startswith(f"lies {BLANK}, points {BLANK}")
    known |= {"joint_angles.tie_rod_outer_bolt": "fore and aft", "loads.tie_rod_stud_diameter": 16.0}
    found = row(_tie_rod_pin(known, units="metric"))
    assert found.notes.startswith(f"lies fore and aft, points {BLANK}")
    assert found.size.startswith("ø 16 mm")
    assert _tie_rod_pin({}, units="metric") is None


def test_a_tie_rod_end_is_bought_where_there_is_one() -> None:
    assert "Tie-rod end" in [one.what for one in bought(judged_sample("scree_ox_strength"))]
    assert "Tie-rod end" not in [one.what for one in bought(judged_sample("fell_badger_finished_metric"))]


def test_caliper_bolts_nobody_entered_are_blanks() -> None:
    found = row(_caliper_bolts({}, units="metric"))
    assert (found.a_side, found.size, found.material) == ("____", f"thread {BLANK}, length {BLANK}", BLANK)
    assert f"points {BLANK}" in found.notes


@pytest.mark.parametrize(
    ("form", "high", "wall", "words"),
    [
        ("flat bar", 12.0, None, None),  # it is cut from plate
        ("round bar", 20.0, 3.0, "ø 30 mm, 150 mm to the tie rod"),
        ("round tube", 20.0, 3.0, "ø 30 mm, wall 3 mm, 150 mm to the tie rod"),
        ("round tube", None, None, f"ø 30 mm, wall {BLANK}, 150 mm to the tie rod"),
        ("box", 20.0, 3.0, "30 mm x 20 mm, wall 3 mm, 150 mm to the tie rod"),
        ("box", None, None, f"30 mm x {BLANK}, wall {BLANK}, 150 mm to the tie rod"),
    ],
)
def test_what_a_steering_arm_is_cut_from(form: str, high: float | None, wall: float | None, words: str | None) -> None:
    known = {"form": form, "length": 150.0, "width": 30.0, "height": high, "wall": wall}
    known = {f"upright.steering_arm_{key}": entry for key, entry in known.items() if entry is not None}
    assert _bar_arm(known, units="metric") == words
