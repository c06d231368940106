"""Shop lines from a judged sheet: what is on them, what stays blank, and that nothing a person wrote is lost."""

import copy
import datetime
from typing import Any

import pytest

from rules.judging.judge import Judged, judge
from rules.sheet import FIELDS, STEPS, read_sheet
from rules.shop.checklist import ChecklistLine, Marks, checklist, kept_marks, marked, to_tables, worked_out_tables
from rules.shop.layout import least_by_tape
from sample_sheets import document as sample

Document = dict[str, Any]


def dune_car() -> Document:
    """Check values (common practice, no source), worked by hand where they are used: 34 in tyre, hub face in the tyre
    centre plane (offset = hat), 10 deg, 1 in ground offset, castor 0."""
    return {
        "sheet_version": 2, "title": "Dune car front", "units": "inch",
        "job": {"vehicle": "Dune car", "use": "trail", "corner_weight": "520 lb", "vehicle_weight": "1900 lb",
                "wheelbase": "104 in", "track": "64 in", "top_speed": "70 mph"},
        "tyre": {"smallest": "33x12.50R15LT 108Q", "largest": "35x12.50R15LT 113Q", "rim_width_least": "8 in",
                 "rim_width_most": "10 1/2 in"},
        "wheel": {"diameter": "15 in", "width": "8 1/2 in", "overall_width": "9 1/2 in", "offset": "1/4 in",
                  "bolt_circle": "6 x 5.5 in", "centre_bore": "4 1/4 in", "barrel_inside_diameter": "14 1/4 in",
                  "spoke_room": "1/2 in", "pad_thickness": "1/2 in", "nut_seat": "60 deg cone",
                  "load_rating": "2000 lb"},
        "rotor": {"diameter": "11 in", "thickness": "0.87 in", "minimum_thickness": "0.81 in", "style": "vented",
                  "hat_thickness": "1/4 in", "face_to_rotor": "2 in", "bolt_circle": "6 x 5.5 in",
                  "centre_bore": "4.25 in"},
        "caliper": {"kind": "sliding", "reach_above_rotor": "0.9 in", "outboard_reach": "1.9 in",
                    "made_for_thickness": "0.87 in", "bleed_screw_on_top": True},
        "hub": {"held_together_by": "itself", "bolt_circle": "6 x 5.5 in", "pilot_diameter": "4.24 in",
                "stud_thread": "12 x 1.5 mm", "stud_length": "1.7 in", "nut_seat": "60 deg cone",
                "flange_to_bearing_centre": "1.4 in", "flange_to_mount_face": "2.5 in", "mount_bolts": 4,
                "mount_bolt_thread": "12 x 1.75 mm", "mount_width": "3 1/2 in", "mount_height": "3 in"},
        "pivots": {"spacing": "10 1/4 in", "inclination": "10 deg", "castor": "0 deg", "ground_offset": "1 in",
                   "lower_below_spindle": "5 in", "upper_kind": "spherical bearing",
                   "lower_kind": "spherical bearing", "upper_radius": "0.9 in", "lower_radius": "0.7 in",
                   "upper_shear": "double", "lower_shear": "double", "spring_on": "lower arm"},
    }  # fmt: skip


def changed(**entries: object) -> Document:
    """The dune car with some entries changed: `pivots__castor="6 deg"`; None takes an entry away."""
    document = dune_car()
    for name, entry in entries.items():
        step, key = name.split("__")
        document[step].pop(key, None)
        if entry is not None:
            document[step][key] = entry
    return document


def judged(document: Document, **shown_in: Any) -> Judged:
    return judge(read_sheet(document), **shown_in)


def lines(document: Document, **shown_in: Any) -> dict[str, ChecklistLine]:
    return {line.id: line for line in checklist(judged(document, **shown_in))}


# What is on the lines


def test_layout_figures_worked_by_hand() -> None:
    """tan 10 deg = 0.176327, cos 10 deg = 0.984808. Axis at the wheel centre: 1 + 17 x 0.176327 = 3.9976 in.

    Lower 3.99756 - 5 x 0.176327 = 3.11592; upper height 10.25 x 0.984808 - 5 = 5.0943; upper 3.9976 + 0.8983 = 4.8959.
    To the nearest 1/32: 3.1159 x 32 = 99.7, 3 4/32; 4.8959 x 32 = 156.7, 4 29/32; 5.0943 x 32 = 163.02, 5 3/32.
    The plate face is 2.5 in inboard of the hub face.
    """
    layout = lines(dune_car())
    assert layout["layout.lower-pivot-from-hub-face"].target == "3 1/8 in (3.116 in) inboard"
    assert layout["layout.upper-pivot-from-hub-face"].target == "4 29/32 in (4.896 in) inboard"
    assert layout["layout.upper-pivot-height"].target == "5 3/32 in (5.094 in) above"
    assert layout["layout.lower-pivot-height"].target == "5 in below"
    assert layout["layout.lower-pivot-from-plate-face"].target == "5/8 in (0.616 in) inboard"
    assert layout["layout.upper-pivot-from-plate-face"].target == "2 13/32 in (2.396 in) inboard"
    assert layout["layout.plate-face-from-hub-face"].target == "2 1/2 in inboard"
    assert layout["layout.bearing-centre-from-hub-face"].target == "1 13/32 in (1.4 in) inboard"
    assert layout["layout.tyre-centre-plane-from-hub-face"].target == "0 in"
    assert layout["layout.pivot-spacing"].target == "10 1/4 in"
    assert layout["layout.inclination"].target == "10 deg top inboard"
    assert layout["layout.axis-tilt"].target == "10 deg"
    assert layout["layout.mount-bolts-fore-aft"].target == "3 1/2 in"


def test_layout_figures_in_millimetres() -> None:
    """3.11592 in = 79.144 mm, 4.8959 in = 124.36 mm, 5.0943 in = 129.40 mm; to the nearest half."""
    layout = lines(dune_car(), shown_in="metric")
    assert layout["layout.lower-pivot-from-hub-face"].target == "79 mm (79.14 mm) inboard"
    assert layout["layout.upper-pivot-from-hub-face"].target == "124.5 mm (124.4 mm) inboard"
    assert layout["layout.upper-pivot-height"].target == "129.5 mm (129.4 mm) above"
    assert layout["layout.lower-pivot-from-hub-face"].tolerance == "+/- 0.5 mm"


def test_the_part_is_measured_again_before_and_after_welding_against_the_full_figure() -> None:
    layout = lines(dune_car())
    for prefix in ("hold", "after"):
        assert layout[f"{prefix}.lower-pivot-from-hub-face"].target == "3.116 in inboard"
        assert layout[f"{prefix}.upper-pivot-from-hub-face"].target == "4.896 in inboard"
        assert layout[f"{prefix}.castor"].tolerance == "+/- 0.25 deg"


def test_directions_stand_in_words() -> None:
    """Castor 6 deg: lower 5 x tan 6 = 0.5255 in ahead; upper 10.25 x cos(11.60) - 5 = 5.0407, x tan 6 = 0.5298 behind."""
    layout = lines(changed(pivots__castor="6 deg"))
    assert layout["layout.lower-pivot-fore-aft"].target == "17/32 in (0.526 in) ahead"
    assert layout["layout.upper-pivot-fore-aft"].target == "17/32 in (0.53 in) behind"
    assert layout["layout.castor"].target == "6 deg top rearward"


def test_directions_turn_round_with_the_sign() -> None:
    layout = lines(changed(pivots__castor="-6 deg", pivots__lower_below_spindle="-1 in", pivots__inclination="-10 deg"))
    assert layout["layout.castor"].target == "6 deg top forward"
    assert layout["layout.inclination"].target == "10 deg top outboard"
    assert layout["layout.lower-pivot-height"].target == "1 in above"


def test_nought_has_no_direction() -> None:
    layout = lines(dune_car())
    assert layout["layout.lower-pivot-fore-aft"].target == "0 in"
    assert layout["layout.castor"].target == "0 deg"


LAYOUT_VALUES = {
    "layout.plate-face-from-hub-face": "hub.flange_to_mount_face",
    "layout.bearing-centre-from-hub-face": "hub.flange_to_bearing_centre",
    "layout.lower-pivot-from-hub-face": "rotor.hat_thickness",
    "layout.upper-pivot-from-hub-face": "pivots.spacing",
    "layout.lower-pivot-from-plate-face": "hub.flange_to_mount_face",
    "layout.upper-pivot-from-plate-face": "pivots.ground_offset",
    "layout.lower-pivot-height": "pivots.lower_below_spindle",
    "layout.upper-pivot-height": "pivots.spacing",
    "layout.lower-pivot-fore-aft": "pivots.castor",
    "layout.upper-pivot-fore-aft": "pivots.inclination",
    "layout.pivot-spacing": "pivots.spacing",
    "layout.inclination": "pivots.inclination",
    "layout.castor": "pivots.castor",
    "layout.axis-tilt": "pivots.castor",
}


@pytest.mark.parametrize(("line", "field"), LAYOUT_VALUES.items())
def test_a_figure_that_is_not_known_is_a_blank_that_says_what_it_needs(line: str, field: str) -> None:
    whole = lines(dune_car())[line]
    assert "____" not in whole.target
    assert whole.kind == "measure"
    missing = lines(changed(**{field.replace(".", "__"): None}))[line]
    assert missing.target.startswith("________ not worked out: needs ")
    assert FIELDS[field].label.lower() in missing.target


def test_hub_bolt_spacing_that_nobody_entered_is_measured_on_the_hub() -> None:
    layout = lines(changed(hub__mount_width=None, hub__mount_height=None))
    assert layout["layout.mount-bolts-fore-aft"].target == "________ measure on the hub"
    assert layout["layout.mount-bolts-up-down"].target == "________ measure on the hub"


def test_a_figure_on_an_estimate_says_so_on_the_line() -> None:
    document = changed(wheel__offset=None, wheel__backspacing="5 1/4 in", wheel__overall_width=None)
    target = lines(document)["layout.lower-pivot-from-hub-face"].target
    assert target.endswith("; estimate - measure overall width lip to lip")
    assert target.startswith("3 ")


def test_no_reason_to_guess_a_torque() -> None:
    torques = [line for line in lines(dune_car()).values() if line.kind == "torque"]
    assert [line.id for line in torques] == [
        "torque.hub-mounting-bolts", "torque.upper-pivot-bolt", "torque.lower-pivot-bolt", "torque.bracket-bolts",
        "torque.caliper-bolts", "torque.wheel-nuts",
    ]  # fmt: skip
    assert all(line.target == "________ from the maker's data, dry / oiled: ____" for line in torques)


def test_stub_shaft_torque_is_the_builders_own_or_blank() -> None:
    shaft = {"hub__held_together_by": "a clamped stub shaft", "hub__stub_shaft_fitted": True}
    assert lines(changed(**shaft))["torque.stub-shaft-nut"].target.startswith("________ from the maker's data")
    written = lines(changed(**shaft, hub__stub_shaft_torque="180 lbf ft"))["torque.stub-shaft-nut"].target
    assert written.startswith("180 lbf ft from the maker's data")


def test_a_hub_nobody_has_said_anything_about_may_need_its_shaft() -> None:
    assert "torque.stub-shaft-nut" in lines(changed(hub__held_together_by=None))
    assert "torque.stub-shaft-nut" not in lines(dune_car())


def test_parts_list_known_answers_and_say_how_to_measure_the_rest() -> None:
    parts = lines(changed(wheel__centre_bore=None))
    assert parts["parts.rotor.diameter"].target == "11 in"
    assert parts["parts.wheel.centre-bore"].target == f"________ {FIELDS['wheel.centre_bore'].how}"
    assert parts["parts.wheel"].text == "Wheel, 15 in x 8 1/2 in, 6 x 5.5 in"
    assert parts["parts.tyre.loaded-radius"].target.startswith("________ Ground to wheel centre")


def test_a_wheel_is_asked_for_in_inches_whatever_the_sheet_is_in() -> None:
    assert lines(dune_car(), shown_in="metric")["parts.wheel"].text == "Wheel, 15 in x 8 1/2 in, 6 x 5.5 in"
    assert lines({})["parts.wheel"].text == "Wheel, ________ x ________, ________"


def test_an_empty_entry_that_a_figure_is_estimated_for_is_to_be_measured() -> None:
    assert "parts.wheel.barrel-inside-diameter" in lines(changed(wheel__barrel_inside_diameter=None))
    assert "parts.caliper.piston-diameter" not in lines(dune_car())


def test_gaps_carry_the_figure_and_the_limit() -> None:
    """Barrel 14.25 / 2 - rotor 11 / 2 - reach 0.9 = 0.725 in."""
    gap = lines(dune_car())["mock-up.caliper-barrel-gap"]
    assert (gap.target, gap.tolerance) == ("0.725 in", "1/4 in or more")


@pytest.mark.parametrize(
    ("least", "units", "said"),
    [
        (6.0, "inch", "1/4 in"),  # 7.56 thirty-seconds
        (5.0, "inch", "7/32 in"),  # 6.3 thirty-seconds: 3/16 in is 4.76 mm, under the limit
        (25.4 / 4, "inch", "1/4 in"),
        (6.0, "metric", "6 mm"),
        (4.76, "metric", "5 mm"),
    ],
)
def test_a_least_gap_is_never_written_under_its_limit(least: float, units: Any, said: str) -> None:
    assert least_by_tape(least, units) == said


def test_a_gap_that_does_not_arise_is_left_out() -> None:
    """Wheel 9.5 in wide, upper pivot 4.896 in in from its middle: inboard of the lip. Lower at 3.116: inside it."""
    assert "mock-up.upper-pivot-barrel-gap" not in lines(dune_car())
    assert "mock-up.lower-pivot-barrel-gap" in lines(dune_car())


# Order


def test_shop_order() -> None:
    sections = list(dict.fromkeys(line.section for line in lines(dune_car()).values()))
    assert sections == [
        "Cautions", "Parts in hand", "Settle before cutting", "Written in by the builder before hand-over",
        "Layout from the hub face", "Mock-up with wheel, rotor, hub and caliper", "Tack",
        "Hold point: measure before finish welding", "Weld", "Cool, measure again, crack test", "Caliper bracket",
        "Assemble and torque", "Turn and lock", "First drive",
    ]  # fmt: skip


def test_hold_point_is_signed_before_the_weld_and_the_weld_before_the_second_measurement() -> None:
    order = list(lines(dune_car()))
    steps = [
        "tack.in-fixture", "hold.lower-pivot-from-hub-face", "hold.before-finish-weld", "weld.balanced-runs",
        "after.cool", "after.lower-pivot-from-hub-face", "crack-test.dye", "bracket.clamp", "bracket.weld",
        "torque.wheel-nuts", "turn.one-revolution", "turn.full-lock", "drive.yard", "drive.re-torque",
    ]  # fmt: skip
    assert [order.index(step) for step in steps] == sorted(order.index(step) for step in steps)


@pytest.mark.parametrize("words", ["does not certify", "No chlorinated brake cleaner", "Zinc", "never on a jack",
                                   "Hub and bearing out", "No impact gun", "second person"])  # fmt: skip
def test_shop_cautions_come_first(words: str) -> None:
    said = [line.text for line in checklist(judged(dune_car())) if line.section == "Cautions"]
    assert any(words in text for text in said)


def test_two_lefts_and_the_source_of_the_tolerances_are_said_once() -> None:
    texts = [line.text for line in lines(dune_car()).values()]
    assert sum("two lefts" in text for text in texts) == 1
    assert sum("no published source" in text for text in texts) == 1


# Stops and open items


def test_a_stop_says_do_not_cut_first_and_why() -> None:
    first = checklist(judged(changed(caliper__bleed_screw_on_top=False, pivots__castor="6 deg")))[0]
    assert first.id == "caution.do-not-cut"
    assert first.text.startswith("DO NOT CUT. ")
    assert "The bleed screw is not at the top" in first.text


def test_without_a_stop_nothing_says_do_not_cut() -> None:
    sheet = judged(changed(pivots__castor="6 deg"))
    assert sheet.verdict == "watch"
    assert not any("DO NOT CUT" in line.text for line in checklist(sheet))


def test_an_unfinished_sheet_says_so() -> None:
    document = changed(pivots__castor="6 deg", job__track=None)
    open_lines = lines(document)
    assert open_lines["caution.not-finished"].text.startswith("NOT FINISHED.")
    assert "front track" in open_lines["settle.answers-missing"].text


def test_an_entry_that_cannot_be_read_is_to_be_settled() -> None:
    line = lines(changed(wheel__width="8 1/0 in"))["settle.entries-that-cannot-be-read"]
    assert "wheel.width" in line.text and "8 1/0" in line.text


def test_stop_watch_and_waiting_become_things_to_settle_and_good_does_not() -> None:
    settle = lines(changed(pivots__castor="2 deg", caliper__bleed_screw_on_top=False, wheel__load_rating=None))
    assert settle["settle.bleed-screw"].text.startswith("STOP, Bleed screw at the top: ")
    assert settle["settle.castor-usual"].text.startswith("WATCH, Castor in the usual range: ")
    assert settle["settle.wheel-load"].text.startswith("WAITING, Wheel load rating: Waits for ")
    assert "settle.tyre-rim-width" not in settle
    assert settle["settle.bleed-screw"].kind == "settle"


@pytest.mark.parametrize(
    ("document", "caution"),
    [
        (changed(rotor__style="cut to one plate"), "caution.cut-rotor"),
        (changed(hub__held_together_by="a clamped stub shaft"), "caution.hub-needs-its-shaft"),
    ],
)
def test_cautions_for_what_this_build_has(document: Document, caution: str) -> None:
    assert caution in lines(document)
    assert caution not in lines(dune_car())


# Ids

SHEETS: dict[str, Document] = {
    "whole": dune_car(),
    "metric": dune_car() | {"units": "metric"},
    "stop": changed(pivots__castor="-3 deg", caliper__bleed_screw_on_top=False),
    "empty": {},
    "not one table": {step.name: 3 for step in STEPS},
    "nonsense": {step.name: dict.fromkeys(step.asked(), "x" * 50) for step in STEPS} | {"title": 3, "odd\n": 1},
}


@pytest.mark.parametrize("name", SHEETS)
def test_ids_are_unique_plain_words(name: str) -> None:
    ids = [line.id for line in checklist(judged(SHEETS[name]))]
    assert len(ids) == len(set(ids))
    assert all(set(id) <= set("abcdefghijklmnopqrstuvwxyz0123456789.-") for id in ids)


def test_ids_do_not_change_with_title_figures_or_units() -> None:
    """Other figures, of which each is judged alike: the lower housing, 0.7 in, is small for 10 1/4 in and for 10 1/2 in, under
    0.07 of either. A judgement that changes with a figure opens or closes its line, as it should."""
    one = changed(pivots__castor="6 deg")
    other = changed(pivots__castor="7 deg", wheel__offset="0.3 in", pivots__spacing="10 1/2 in")
    other["title"] = "Another | car"
    assert list(lines(other)) == list(lines(one)) == list(lines(one, shown_in="metric"))
    assert lines(other)["layout.castor"].target != lines(one)["layout.castor"].target
    housing = "settle.lower-housing-suits-pivots"
    assert lines(other)[housing].text != lines(one)[housing].text


def test_fixed_steps_are_there_on_an_empty_sheet_too() -> None:
    fixed = [id for id in lines(dune_car()) if id.split(".")[0] in ("layout", "tack", "hold", "weld", "after", "turn")]
    assert set(fixed) <= set(lines({}))


# Ticks and measured results


def test_ticks_and_results_are_kept_through_a_change_of_answers() -> None:
    document = dune_car()
    document["checklist"] = worked_out_tables(document, judged(document))["checklist"]
    entry = next(table for table in document["checklist"] if table["id"] == "hold.pivot-spacing")
    entry |= {"left": True, "left_measured": "10 17/64"}
    document["pivots"]["spacing"] = "10 1/2 in"
    again = worked_out_tables(document, judged(document))["checklist"]
    table = next(table for table in again if table["id"] == "hold.pivot-spacing")
    assert table["left"] is True and table["right"] is False
    assert table["left_measured"] == "10 17/64"
    assert table["target"] == "10 1/2 in"


def test_a_mark_made_against_another_figure_is_flagged_until_it_is_cleared() -> None:
    document = dune_car()
    document["checklist"] = [{"id": "hold.pivot-spacing", "target": "10 1/4 in", "left": True}]
    document["pivots"]["spacing"] = "10 1/2 in"
    for _ in range(2):  # a second save still knows
        document |= worked_out_tables(document, judged(document))
        table = next(table for table in document["checklist"] if table["id"] == "hold.pivot-spacing")
        assert table["marked_for"] == "10 1/4 in"
    table["left"] = False
    document |= worked_out_tables(document, judged(document))
    table = next(table for table in document["checklist"] if table["id"] == "hold.pivot-spacing")
    assert "marked_for" not in table


def test_going_back_to_the_old_figure_makes_a_mark_good_again() -> None:
    marks = kept_marks({"checklist": [{"id": "x", "target": "11 in", "marked_for": "10 in", "left": True}]})["x"]
    assert marks.stale_for(ChecklistLine("x", "s", "t", "11 in"))
    assert not marks.stale_for(ChecklistLine("x", "s", "t", "10 in"))


def test_a_settled_item_that_has_since_become_worse_is_flagged() -> None:
    marks = Marks(left=True, asked_for="WATCH, small gap", text="WATCH, small gap")
    assert marks.stale_for(ChecklistLine("settle.x", "s", "STOP, it hits", kind="settle"))
    assert not marks.stale_for(ChecklistLine("tack.x", "s", "only worded anew"))


def test_results_of_lines_that_are_no_longer_asked_are_kept_at_the_end() -> None:
    gone = {"id": "settle.swap-spacing", "text": "WATCH, spare", "left": False, "right_measured": "10 in"}
    document = dune_car() | {"checklist": [gone]}
    for _ in range(2):
        document |= worked_out_tables(document, judged(document))
    assert document["checklist"][-1] == {
        "id": "settle.swap-spacing", "section": "No longer asked", "text": "WATCH, spare", "target": "",
        "tolerance": "", "left": False, "right": False, "right_measured": "10 in",
    }  # fmt: skip


def test_a_line_that_comes_back_has_its_results_again() -> None:
    table = {"id": "torque.stub-shaft-nut", "text": "Stub shaft nut", "left": True, "left_measured": "180"}
    document = dune_car() | {"checklist": [table]}
    document |= worked_out_tables(document, judged(document))
    assert document["checklist"][-1]["section"] == "No longer asked"
    document["hub"]["held_together_by"] = "a clamped stub shaft"
    document |= worked_out_tables(document, judged(document))
    back = [table for table in document["checklist"] if table["id"] == "torque.stub-shaft-nut"]
    assert len(back) == 1
    assert (back[0]["section"], back[0]["left_measured"]) == ("Assemble and torque", "180")


def test_a_line_without_marks_that_is_no_longer_asked_goes() -> None:
    document = dune_car() | {"checklist": [{"id": "old.line", "text": "Old", "left": False, "left_measured": "  "}]}
    assert all(table["id"] != "old.line" for table in worked_out_tables(document, judged(document))["checklist"])


@pytest.mark.parametrize(
    "found",
    [
        None, 3, "text", {"id": "a"}, [3, None, "x", []], [{}], [{"id": 3, "left": True}], [{"left": True}],
        [{"id": "a", "left": "yes", "right": 1, "left_measured": [1], "right_measured": {"a": 1}}],
        [{"id": "a", "left_measured": datetime.date(2025, 1, 1), "right_measured": 10**20, "left": None}],
    ],
)  # fmt: skip
def test_a_hand_written_checklist_of_the_wrong_kind_is_passed_over(found: object) -> None:
    assert kept_marks({"checklist": found}) == {}


def test_a_document_without_a_checklist_has_no_marks() -> None:
    assert kept_marks({}) == {}


def test_a_result_typed_as_a_number_counts() -> None:
    kept = kept_marks({"checklist": [{"id": "a", "left_measured": 83.2, "right_measured": 83, "right": True}]})
    assert kept["a"] == Marks(right=True, left_measured="83.2", right_measured="83")


def test_two_entries_of_one_line_are_put_together() -> None:
    kept = kept_marks({"checklist": [
        {"id": "a", "left": True, "left_measured": "1"}, {"id": "a", "right": True, "left_measured": "2"},
    ]})  # fmt: skip
    assert kept["a"] == Marks(True, True, "1 / 2", "")


@pytest.mark.parametrize(
    ("first", "second", "is_right_for"),
    [
        ({"target": "10 in"}, {"target": "10 in"}, {"10 in"}),
        ({"target": "10 in"}, {}, {"10 in"}),
        ({}, {"target": "10 in"}, {"10 in"}),
        ({"target": "11 in", "marked_for": "10 in"}, {"target": "10 in"}, {"10 in"}),
        # one side was done to each: no line asks for both
        ({"target": "10 in"}, {"target": "11 in"}, set()),
        ({"target": "11 in", "marked_for": "10 in"}, {"target": "11 in"}, set()),
    ],
)
def test_two_entries_of_one_line_are_right_for_what_both_were_made_for(
    first: dict[str, str], second: dict[str, str], is_right_for: set[str]
) -> None:
    entries = [{"id": "a", "left": True, **first}, {"id": "a", "right": True, **second}]
    marks = kept_marks({"checklist": entries})["a"]
    assert {
        asks for asks in ("10 in", "11 in") if not marks.stale_for(ChecklistLine("a", "S", "Do it", asks))
    } == is_right_for
    # what is written back says the same when it is read again
    line = ChecklistLine("a", "S", "Do it", "11 in")
    again = kept_marks({"checklist": to_tables([line], {"a": marks})})["a"]
    assert (again.left, again.right, again.stale_for(line)) == (True, True, "11 in" not in is_right_for)


def test_tables_leave_out_results_nobody_wrote() -> None:
    table = to_tables([ChecklistLine("a.b", "S", "Do it", "1 in", "+/- 0.1")], {})[0]
    assert table == {
        "id": "a.b", "section": "S", "text": "Do it", "target": "1 in", "tolerance": "+/- 0.1", "left": False,
        "right": False,
    }  # fmt: skip


def test_marked_pairs_every_line() -> None:
    line = ChecklistLine("a.b", "S", "Do it")
    assert marked([line], {}) == [(line, Marks())]


def test_warnings_hold_what_is_open_worst_first_and_nothing_good() -> None:
    document = changed(pivots__castor="2 deg", caliper__bleed_screw_on_top=False, wheel__load_rating=None)
    warnings = worked_out_tables(document, judged(document))["warning"]
    verdicts = [warning["verdict"] for warning in warnings]
    assert verdicts == sorted(verdicts, key=["stop", "watch", "waiting"].index)
    assert set(verdicts) == {"stop", "watch", "waiting"}
    bleed = next(warning for warning in warnings if warning["check"] == "bleed-screw")
    assert bleed["step"] == "caliper" and bleed["change"].startswith("Swap the calipers")
    assert all(entry for warning in warnings for entry in warning.values())


def test_working_out_leaves_the_document_alone() -> None:
    document = dune_car() | {"checklist": [{"id": "tack.clean", "left": True}]}
    before = copy.deepcopy(document)
    worked_out_tables(document, judged(document))
    assert document == before


def test_the_programs_own_torque_is_not_printed() -> None:
    """It is worked out and shown on the screen; on paper somebody would tighten to it."""
    result = judged(sample("scree_ox_strength"))
    (finding,) = [one for one in result.findings if one.check == "bolt-torque"]
    assert finding.verdict == "watch" and " lbf ft" in finding.text
    line = {one.id: one for one in checklist(result)}["settle.bolt-torque"]
    assert "whoever made hub and joint" in line.text and not any(letter.isdigit() for letter in line.text)
