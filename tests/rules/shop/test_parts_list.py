"""Bolts of the parts list by hand: grip and length from what lies under the head."""

from rules.measure.marks import Thread
from rules.shop.checklist_line import BLANK
from rules.shop.parts_list import _hub_bolts, _lower_pivot_bolt, _upper_pivot_bolt

M12 = Thread("M12 x 1.75", 12.0, 1.75)


def test_a_pivot_bolts_grip_is_ball_both_gaps_and_both_lugs() -> None:
    """14 + 2 x 3 + 2 x 8 = 36; without spacers 30."""
    for which, read in (("upper", _upper_pivot_bolt), ("lower", _lower_pivot_bolt)):
        known: dict[str, object] = {
            f"bolts.{which}_thread": M12, f"bolts.{which}_ball_width": 14.0, f"bolts.{which}_gap": 3.0,
            f"bolts.{which}_lug_thickness": 8.0, f"bolts.{which}_grade": "class 10.9",
        }  # fmt: skip
        size, grade = read(known, units="metric") or ("", "")
        assert size == "M12 x 1.75, grip 36 mm, then washer, nut, two threads"
        assert grade in ("class 10.9", BLANK)
        del known[f"bolts.{which}_gap"]
        assert "grip 30 mm" in (read(known, units="metric") or ("",))[0]
        for unknown in ("ball_width", "lug_thickness"):
            less = {name: number for name, number in known.items() if not name.endswith(unknown)}
            assert f"grip {BLANK}," in (read(less, units="metric") or ("",))[0]
        assert read({}, units="metric") is None


def test_a_hub_bolt_is_as_long_as_plate_and_engagement() -> None:
    """19 + 18 = 37."""
    known: dict[str, object] = {
        "hub.mount_bolts": 4, "hub.mount_bolt_thread": M12, "plate.thickness": 19.0, "bolts.hub_bolt_engagement": 18.0,
        "hub.mount_bolt_grade": "10.9",
    }  # fmt: skip
    assert _hub_bolts(known, units="metric") == ("4", "M12 x 1.75, 37 mm under the head", "10.9")
    for unknown in ("plate.thickness", "bolts.hub_bolt_engagement"):
        less = {name: number for name, number in known.items() if name != unknown}
        assert _hub_bolts(less, units="metric") == ("4", f"M12 x 1.75, {BLANK} under the head", "10.9")


def test_a_hub_bolt_with_a_nut_goes_through_plate_and_mounting_flange() -> None:
    """19 + 12 = 31, whatever of the nut's thread is engaged."""
    known: dict[str, object] = {
        "hub.mount_bolts": 4, "hub.mount_bolt_thread": M12, "plate.thickness": 19.0, "bolts.hub_bolt_engagement": 10.8,
        "bolts.hub_bolt_into": "nut", "hub.mount_flange_thickness": 12.0, "hub.mount_bolt_grade": "10.9",
    }  # fmt: skip
    said = "M12 x 1.75, grip {}, then washer, nut, two threads"
    assert _hub_bolts(known, units="metric") == ("4", said.format("31 mm"), "10.9")
    for unknown in ("plate.thickness", "hub.mount_flange_thickness"):
        less = {name: number for name, number in known.items() if name != unknown}
        assert _hub_bolts(less, units="metric") == ("4", said.format(BLANK), "10.9")
