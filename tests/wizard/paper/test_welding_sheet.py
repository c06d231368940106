"""The welding sheet, read back with another library: everything a welder would otherwise have to ask."""

import re
from typing import Any

import pytest

from rules.measure.said import in_units
from rules.shop.holds import HOLDS
from rules.shop.weld_words import VISUAL
from sample_sheets import document as whole
from tests.support.paper_reading import PLATE, document, is_black_and_white, judged, letter_sizes, pages, squeezed
from wizard.paper.arrangement_sheet import arrangement_pdf
from wizard.paper.part_sheets import part_sheets_pdf
from wizard.paper.welding_sheet import welding_sheet_pdf


def printed(sheet: dict[str, Any], paper: str = "letter") -> bytes:
    return welding_sheet_pdf(judged(sheet), sheet, paper)


def words(sheet: dict[str, Any], paper: str = "letter") -> str:
    return " ".join(pages(printed(sheet, paper)))


@pytest.mark.parametrize("name", ["dune_wren_finished", "fell_badger_finished_metric"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_a_finished_sheet_takes_two_pages(name: str, paper: str) -> None:
    assert len(pages(printed(document(name), paper))) == 2


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize(
    "name", ["wrong_plate_cut_too_light", "wrong_cannot_be_put_together", "wrong_figures_all_over"]
)
def test_many_stops_leave_it_two_pages_and_stand_on_both(name: str, paper: str) -> None:
    found = pages(printed(whole(name), paper))
    assert len(found) == 2 and all("DO NOT CUT." in words for words in found)
    assert "page 1 and the checklist have more" in found[1]


def test_long_joint_rows_leave_it_two_pages() -> None:
    """Preheat of each joint in words of its own, with a stop and parts in one another."""
    sheet = whole("wrong_cannot_be_put_together")
    for number, joint in enumerate((name for name in sheet if name.startswith("weld_")), 1):
        sheet[joint] |= {"preheat": f"{100 + number} C by torch, crayon checked, as the maker of rod {number} asks"}
    found = pages(printed(sheet))
    assert len(found) == 2 and squeezed("as the maker of rod 4 asks") in squeezed(found[0] + found[1])


@pytest.mark.parametrize("name", ["scree_ox_strength", "wrong_cannot_be_put_together"])
def test_very_long_names_leave_it_two_pages(name: str) -> None:
    long = "Upper lugs, both of them, cut from one strip and bevelled, to the back of the plate beside the bore " * 3
    sheet = whole(name)
    sheet["job"] |= {"vehicle": long}
    sheet["plate"] |= {"condition": long}
    for joint in (name for name in sheet if name.startswith("weld_")):
        sheet[joint] |= {"parts": long, "preheat": long}
    assert len(pages(printed(sheet))) == 2


def test_part_side_revision_people_and_date() -> None:
    said = words(document())
    for wanted in ("one LEFT and one RIGHT", "revision C", "written 2026-03-04", "Builder ____", "Welder ____", "Inspector ____",
                   "Dune Wren, two-seat sand car"):  # fmt: skip
        assert wanted in said


def test_metal_condition_process_filler_and_preheat() -> None:
    said = words(document())
    for wanted in ("mild steel plate", "hot rolled, heat 7731", "3/8 in", "Process MIG", "0.9 mm solid wire",
                   "Preheat: follow the filler maker", "measured L ____"):  # fmt: skip
        assert wanted in said
    assert "Preheat: 150 C, crayon" in words(document(plate={**PLATE, "preheat": "150 C, crayon"}))


def test_what_the_plate_step_does_not_say_is_a_labelled_blank() -> None:
    said = words(document(plate={}))
    for wanted in ("Plate: ____", "grade and condition ____", "Thickness ____", "Process ____", "Filler and gas ____",
                   "revision ____"):  # fmt: skip
        assert wanted in said
    assert "Preheat: follow the filler maker" in said


# By hand from the sample, inches. Hub face 1 outboard of the tyre's plane (offset 1.25 less hat 0.25); wheel centre 14.375 up:
# axis 1.5 + 14.375 x 0.1943803 = 4.2942 inboard at wheel-centre height. Lower pivot 4 below: 4.2942 - 0.7775 = 3.5167 from the
# plane, 4.5167 from the hub face. Spacing 8.6 at tilt cos 0.9745738: 8.3813 up, so 4.3813 above; upper pivot
# 4.2942 + 0.8516 = 5.1459 and 6.1459. Castor 7 deg: 4 x 0.1227846 = 0.4911 ahead, 4.3813 x 0.1227846 = 0.5380 behind.


def test_every_figure_stands_in_the_table_alone_and_the_views_have_its_mark() -> None:
    """The table goes: plate face, lower and upper pivot from the hub face, their heights, fore and aft, spacing, both angles.
    The spacing, F8, is no true length in either view of the welding sheet."""
    first, second = (" ".join(one.split()) for one in pages(printed(document())))
    rows = ("F1 Plate face from hub face 2.7 in inboard", "F2 Lower from hub face 4.517 in inboard",
            "F3 Upper from hub face 6.146 in inboard", "F4 Lower from wheel center 4 in below",
            "F5 Upper from wheel center 4.381 in above", "F6 Lower from wheel center 0.491 in ahead",
            "F7 Upper from wheel center 0.538 in behind", "F8 Pivot spacing along axis 8.6 in",
            "F9 Inclination 11 deg top inboard", "F10 Caster 7 deg top rearward")  # fmt: skip
    for row in rows:
        assert squeezed(row) in squeezed(second), row
    for mark in ("F1", "F2", "F3", "F4", "F5", "F6", "F7", "F9", "F10"):
        assert re.search(rf"\b{mark}\b", first), mark
    assert not re.search(r"\bF8\b", first)
    for figure in ("4.517", "6.146", "4.381", "0.491", "0.538", "8.6 in"):
        assert figure not in first, figure


def test_pivots_are_figured_on_the_welding_sheet_and_marked_on_the_arrangement_and_the_plates_sheet() -> None:
    """Two prints of which one is old then never say two different things of one place."""
    result = judged(document())
    arranged, parts = (" ".join(pages(made)) for made in (arrangement_pdf(result), part_sheets_pdf(result)))
    for words in (arranged, parts):
        assert squeezed("F: figures in the fixture table of the welding sheet") in squeezed(words)
        for figure in ("4.517", "6.146", "4.381", "0.491", "0.538", "8.6 in"):
            assert figure not in words, figure
    for mark in ("F2", "F3", "F4", "F5", "F6", "F7", "F8"):
        assert re.search(rf"\b{mark}\b", arranged), mark


def test_metric_sheets_are_in_mm() -> None:
    said = words(document("fell_badger_finished_metric"))
    assert " mm inboard" in said
    assert " in inboard" not in said
    assert "+/- 0.5 mm" in said


def test_the_figure_says_its_scale_side_and_views() -> None:
    said = words(document())
    for wanted in ("LEFT piece, scale 1:4. RIGHT is its mirror image.", "Never measure off it", "hub face", "plate face",
                   "front", "from hub face and wheel-center line only"):  # fmt: skip
        assert wanted in said


def test_joints_are_numbered_blank_rows_with_labels() -> None:
    said = words(document())
    for wanted in ("Parts joined", "Symbol", "In words", "form, leg, length, sides, prep, gap: ____", "Preheat",
                   "Order of runs, tacks first: ____"):  # fmt: skip
        assert wanted in said
    # 3/8 in plate: 3/16 in by the published table.
    assert "3/8 in plate is the thinner part: 3/16 in (AISC 360-16 Table J2.4" in said


def test_a_joint_on_the_sheet_is_printed_in_its_row() -> None:
    joint = {"parts": "cup to plate", "form": "full bevel", "leg": "5/16 in", "run": "2 3/4 in", "welded_by": "tig",
             "preheat": "60 C, crayon"}  # fmt: skip
    said = squeezed(words(document(weld_upper=joint)))
    assert squeezed("full bevel; welded through, back gouged or seen; gap ____; 2 3/4 in long") in said
    assert "TIG" in said and squeezed("60 C, crayon") in said
    for row in ("2 Lower pivot form,", "3 Steering arm form,", "4 Caliper bracket form,"):
        assert squeezed(row) in said


def test_looks_crack_test_machining_and_holds() -> None:
    said = squeezed(words(document()))
    for limit in VISUAL:
        assert squeezed(f"{limit.what} {in_units(limit.passes, 'inch')}") in said
        assert squeezed(limit.source) in said
    for hold in HOLDS:
        assert (squeezed(hold.text) in said) is (hold.signed_on == "welding sheet")
    for wanted in ("Machined after", "Any line is a crack", "no gap over 1/16 in", "Cool: in the fixture",
                   "opposite sides in turn", "never quench"):  # fmt: skip
        assert squeezed(wanted).lower() in said.lower()


def test_left_and_right_have_columns_of_their_own() -> None:
    said = words(document())
    for wanted in ("Set L", "Set R", "Tack L", "Tack R", "Weld L", "Weld R", "Left: sign, date", "Right: sign, date"):
        assert wanted in said


def test_cautions_that_hurt_a_welder_are_there() -> None:
    said = words(document())
    for wanted in ("people can die", "chlorinated", "Zinc", "Hub and bearing out", "cast or forged"):
        assert wanted in said


def test_what_was_measured_is_printed_in_its_column_unless_the_figure_has_changed() -> None:
    marks = [
        {"id": "hold.pivot-spacing", "target": "8.6 in", "left_measured": "8.63"},
        {"id": "after.castor", "target": "5 deg top rearward", "right_measured": "5.1"},
    ]
    said = words(document(checklist=marks))
    assert "8.6 in 8.63" in said
    assert "5.1" not in said


def test_a_stop_stands_with_its_reason_on_each_page() -> None:
    found = pages(printed(document("wrong_rotor_too_big_for_wheel")))
    assert all("DO NOT CUT." in page and "The caliper hits the wheel barrel" in page for page in found)
    assert "DO NOT CUT" not in words(document())


def test_an_estimate_says_so() -> None:
    sheet = document()
    del sheet["wheel"]["offset"], sheet["wheel"]["overall_width"]
    found = pages(printed(sheet))
    assert "estimate - measure" in " ".join(found[1:])  # in the table


def test_an_empty_sheet_is_all_blanks_and_no_figures() -> None:
    found = words({"title": "", "units": "inch"})
    assert "Nothing can be drawn yet" in found
    assert found.count("________ not worked out") == 10
    assert "NOT FINISHED" in found


def test_half_a_sheet_draws_what_it_knows() -> None:
    said = words(document("dune_wren_half_done"))
    assert "not worked out" in said


def test_letters_are_ten_points_or_more_and_black() -> None:
    data = printed(document())
    assert min(letter_sizes(data)) >= 9.99
    assert is_black_and_white(data)


@pytest.mark.parametrize("text", ["9⅜ “x” – 10°", "漢字", "a" * 1900, "word " * 390, "(\\) Tj ET"])
def test_hostile_words_stay_on_the_pages(text: str) -> None:
    sheet = document(title=text, plate={**PLATE, "condition": text, "filler": text, "preheat": text, "revision": text})
    sheet["job"]["vehicle"] = text
    found = pages(printed(sheet))
    assert len(found) <= 5
    assert all("Welding sheet" in page for page in found)
    assert "HOLD 4" in " ".join(found)


@pytest.mark.parametrize(
    "changed",
    [
        {"inclination": "0 deg", "castor": "0 deg"},
        {"inclination": "-8 deg", "castor": "-5 deg", "ground_offset": "-4 in"},
        {"lower_below_spindle": "-2 in", "spacing": "25 in"},
        {"inclination": "40 deg", "castor": "40 deg"},
    ],
)
def test_odd_geometry_still_draws_with_every_figure(changed: dict[str, str]) -> None:
    sheet = document()
    sheet["pivots"] = {**sheet["pivots"], **changed}
    first = squeezed(pages(printed(sheet))[0])
    assert squeezed("LEFT piece, scale 1:") in first
    assert squeezed("hub face") in first


@pytest.mark.parametrize("name", ["wrong_cannot_be_put_together", "wrong_plate_cut_too_light", "scree_ox_strength"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_a_figure_nobody_could_read_is_left_out_and_said_to_be(name: str, paper: str) -> None:
    """No more than 1:15: 14 3/8 in of plate are then 24 mm high. Reasons not to cut take room, never the reader's eyes."""
    first = pages(printed(whole(name), paper))[0]
    scale = re.search(r"scale 1:([\d.]+)", first)
    assert float(scale[1]) <= 15 if scale else squeezed("see the general arrangement") in squeezed(first)
    assert name != "scree_ox_strength" or (scale and float(scale[1]) <= 8)
