"""The checklist on paper: 80 columns of plain ASCII, and Markdown that nothing typed can break."""

import copy
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from markdown_it import MarkdownIt
from syrupy.assertion import SnapshotAssertion

from rules.judging.judge import Judged
from rules.sheet import read_sheet
from rules.shop.checklist import checklist
from sample_sheets import FINISHED
from sample_sheets import document as sample_document
from tests.support.examples import more_in_a_long_run
from tests.support.judging import judged_document
from tests.support.paper_reading import on_paper
from wizard.paper.checklist_text import as_markdown, as_text

Document = dict[str, Any]

CAR: Document = sample_document(FINISHED) | {"title": "Sand car front"}
del CAR["plate"], CAR["confirmed"]
CAR["job"] = {"vehicle": "Two-seat sand car"} | {
    key: CAR["job"][key] for key in CAR["job"] if key not in ("vehicle", "notes", "rule_book")
}
CAR["hub"] |= {
    "held_together_by": "itself",
    "flange_to_mount_face": "2 3/4 in",
    "mount_bolts": 3,
    "mount_circle": "4.4 in",
}
for _key in (
    "stub_shaft_fitted", "stub_shaft_torque", "shoulder_diameter", "shoulder_length", "mount_width", "mount_height",
):  # fmt: skip
    del CAR["hub"][_key]
CAR["pivots"] |= {
    "spacing": "8 5/8 in",
    "upper_shear": "single",
    "upper_retained": True,
}  # a watch, so that the paper has one

MARKED: Document = CAR | {
    "checklist": [
        {"id": "layout.lower-pivot-from-hub-face", "target": "4 17/32 in (4.517 in) inboard", "left": True,
         "left_measured": "4 17/32", "right_measured": "4 9/16 too far, cut and set again"},
        {"id": "hold.pivot-spacing", "target": "10 in", "left": True, "right": True},
        {"id": "settle.swap-spacing", "text": "WATCH, Spare: it does not fit.", "left": True},
    ]
}  # fmt: skip


def judged(document: Document) -> Judged:
    return judged_document(document)


def titled(title: str) -> Document:
    return CAR | {"title": title}


def test_plain_text_as_printed(snapshot: SnapshotAssertion) -> None:
    assert as_text(judged(MARKED), MARKED) == snapshot


def test_markdown_as_written(snapshot: SnapshotAssertion) -> None:
    assert as_markdown(judged(MARKED), MARKED) == snapshot


# Plain text


def test_the_sheets_name_vehicle_units_and_verdict_come_first() -> None:
    top = as_text(judged(CAR), CAR).splitlines()[:7]
    assert any("Sand car front" in row for row in top)
    assert any("Two-seat sand car" in row for row in top)
    assert any("inches" in row for row in top)
    assert any("WATCH" in row for row in top)


def test_a_stop_is_the_first_thing_under_the_head() -> None:
    document = copy.deepcopy(CAR)
    document["caliper"]["bleed_screw_on_top"] = False
    for part in ("whole", "welder"):
        text = as_text(judged(document), document, part)
        assert (
            text.index("STOP: do not cut") < text.index("DO NOT CUT. The bleed screw") < text.index("does not certify")
        )


def test_every_line_of_the_checklist_is_printed() -> None:
    car = judged(CAR)
    text = " ".join(as_text(car, CAR).split())
    for line in checklist(car):
        assert " ".join(on_paper(line.text, car).replace("“", '"').split())[:20] in text


def test_left_and_right_have_a_box_and_a_blank() -> None:
    row = next(row for row in as_text(judged(CAR), CAR).splitlines() if row.startswith("Pivot spacing"))
    assert row == "Pivot spacing along axis  8 5/8 in +/- 1/64 in        [ ] ________ [ ] ________"


def test_ticks_and_results_are_printed_beside_their_line() -> None:
    rows = as_text(judged(MARKED), MARKED).splitlines()
    at = next(number for number, row in enumerate(rows) if row.startswith("Lower pivot center from hub face"))
    assert rows[at].endswith("[x] 4 17/32  [ ] 4 9/16")
    assert rows[at + 1].endswith("too far,")


def test_a_mark_against_another_figure_is_printed_as_changed() -> None:
    text = " ".join(as_text(judged(MARKED), MARKED).split())
    assert "CHANGED since it was marked: check again. It was 10 in" in text


def test_results_of_lines_no_longer_asked_are_printed_last() -> None:
    text = as_text(judged(MARKED), MARKED)
    assert text.index("NO LONGER ASKED") > text.index("FIRST DRIVE")
    assert "WATCH, Spare: it does not fit." in text


def test_the_welders_part_fits_two_pages_and_stops_at_the_bracket() -> None:
    text = as_text(judged(CAR), CAR, "welder")
    assert len(text.splitlines()) <= 2 * 66
    assert "CALIPER BRACKET" in text and "CAUTIONS" in text and "LAYOUT" in text
    assert "PARTS IN HAND" not in text and "TORQUE" not in text


def test_a_finished_sheet_is_about_three_pages() -> None:
    assert len(as_text(judged(CAR), CAR).splitlines()) <= 3.5 * 66


@pytest.mark.parametrize(
    ("title", "printed"),
    [
        ("Früher, “große” Ø", 'Fruher, "grosse" O'),
        ("9⅜ in – 8° ± 1", "9 3/8 in - 8 deg +/- 1"),
        ("½ in, 5 m²", "1/2 in, 5 m^2"),
        ("×", "x"),
        ("車", "?"),
        ("first\nsecond\tthird", "first?second?third"),
        ("\x1b[2J", "?[2J"),
        ("", "________"),
    ],
)
def test_titles_in_characters_every_printer_has(title: str, printed: str) -> None:
    assert f"Title    {printed}\n" in as_text(judged(titled(title)), titled(title))


def marks(text: str) -> Document:
    """The car with one text wherever a person can type one."""
    return titled(text) | {
        "job": CAR["job"] | {"vehicle": text},
        "checklist": [
            {"id": "tack.clean", "left": True, "left_measured": text, "target": text},
            {"id": "hold.castor", "left": True, "left_measured": text, "right_measured": text, "target": text},
            {"id": text, "left": True, "text": text, "target": text},
        ],
    }


TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=300)


@given(TEXTS)
@settings(max_examples=more_in_a_long_run(15))
def test_never_wider_than_the_page_and_only_printable_ascii(text: str) -> None:
    document = marks(text)
    for row in as_text(judged(document), document).splitlines():
        assert len(row) <= 80
        assert all(" " <= character <= "~" for character in row)


def test_an_empty_and_a_nonsense_sheet_still_print() -> None:
    for document in ({}, {"title": 3, "wheel": {"width": "é" * 300}, "checklist": 7}):
        text = as_text(judged(document), document)
        assert "UNFINISHED" in text
        assert max(map(len, text.splitlines())) <= 80


# Markdown

READER = MarkdownIt("commonmark").enable("table")

HOSTILE = [
    "| a | b |", "**bold** _it_ `code`", "<script>alert(1)</script>", "[link](http://x.y)", "![p](q)", "# Head",
    "a\\|b", "&lt;b&gt;", "x\n| --- |\n\n# y", "~~gone~~", "<!-- ", "```", "________b________", "- [ ] x", "`\\", "[x]: /y",
]  # fmt: skip


def tokens(document: Document) -> list[Any]:
    return READER.parse(as_markdown(judged(document), document))


def kinds(found: list[Any]) -> set[str]:
    return {child.type for token in found for child in token.children or ()}


def shape(found: list[Any]) -> list[str]:
    return [token.type for token in found]


@cache
def plain_shape(faulty: bool) -> list[str]:
    """The shape with a harmless text instead; with a fault in the title where the text at test is one."""
    return shape(tokens(marks("plain\x07" if faulty else "plain")))


@pytest.mark.parametrize("text", HOSTILE)
def test_what_is_typed_stays_text(text: str) -> None:
    found = tokens(marks(text))
    assert kinds(found) <= {"text", "code_inline", "text_special"}
    assert shape(found) == plain_shape(bool(read_sheet(marks(text)).faults))


@given(TEXTS)
@settings(max_examples=more_in_a_long_run(15))
def test_nothing_typed_changes_the_shape_of_the_markdown(text: str) -> None:
    if not text.strip() or text.strip() in {line.id for line in checklist(judged(CAR))}:
        return
    found = tokens(marks(text))
    assert kinds(found) <= {"text", "code_inline", "text_special"}
    assert shape(found) == plain_shape(bool(read_sheet(marks(text)).faults))


def test_a_typed_title_reads_as_typed() -> None:
    title = "5 < 6 & *not* bold | [x](y) www.z http://z"
    said = "".join(child.content for token in tokens(titled(title)) for child in token.children or ())
    assert f"Title: {title}" in said


def test_markdown_gives_each_line_with_its_id() -> None:
    written = as_markdown(judged(CAR), CAR)
    rows = [line for line in checklist(judged(CAR)) if line.kind != "caution"]
    assert all(f"| `{line.id}` |" in written for line in rows)


def test_markdown_shows_marks() -> None:
    written = as_markdown(judged(MARKED), MARKED)
    assert "| [x] 4 17/32 | [ ] 4 9/16 too far, cut and set again | `layout.lower-pivot-from-hub-face` |" in written
    assert "CHANGED since it was marked: check again. It was 10 in" in written


def test_markdown_welders_part() -> None:
    written = as_markdown(judged(CAR), CAR, "welder")
    assert "## Caliper bracket" in written
    assert "## Assemble and torque" not in written
